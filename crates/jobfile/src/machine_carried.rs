//! A machine that would fall over empty, boom as carried, is described wrongly.

use crate::table::Reader;
use crate::text;
use machine::{Attachment, BoomPosition, Machine};
use quantity::{Si, metres};
use stability::{Masses, RearAxleState, Support, TipsOver, tipping_lines};

/// True where its centre lies between the axles with each attachment on, the boom as carried; else the faults are
/// said, with how far out it lies and which axle would lift.
pub(crate) fn carried(root: &Reader<'_>, machine: &Machine) -> bool {
    // Every one is looked at, whatever the others do.
    machine.attachments.iter().filter(|a| !stands(root, machine, a)).count() == 0
}

fn stands(root: &Reader<'_>, machine: &Machine, attachment: &Attachment) -> bool {
    let (carry, boom) = (&machine.limits.carry, &machine.boom);
    let at = BoomPosition::level(
        carry.angle.si().clamp(boom.angle_min.si(), boom.angle_max.si()),
        carry.extension.si().min(boom.extension_max.si()),
    );
    let centre = Masses::of(machine, attachment, at).centre();
    let support = Support { state: machine::SupportState::Tyres, rear: RearAxleState::Locked };
    // Over front and rear, how far outside.
    let out = tipping_lines(machine, support).into_iter().take(2).find_map(|line| {
        let out = match line.over {
            TipsOver::Rear => line.point.x - centre.x,
            TipsOver::Front | TipsOver::Left | TipsOver::Right => centre.x - line.point.x,
        };
        // What is no number does not stand.
        (out.is_nan() || out >= 0.0).then_some((line.over, out))
    });
    let Some((over, out)) = out else { return true };
    let id = if over == TipsOver::Rear { text::TIPS_BACK_EMPTY } else { text::TIPS_FORWARD_EMPTY };
    let message = id.with("attachment", &attachment.name).with("by", metres(out));
    root.fault("limits", message, Some(text::HINT_CENTRES.message()));
    false
}
