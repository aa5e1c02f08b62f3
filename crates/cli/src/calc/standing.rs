//! What several calculations ask first: a machine with its attachment, boom position and load, standing
//! somewhere.

use super::input::Input;
use super::stability::{REAR, failure, in_range};
use crate::args::Said;
use crate::failure::Failure;
use crate::text;
use geometry::{DVec2, DVec3};
use jobfile::{Bound, Reader};
use machine::{Attachment, AttachmentKind, BoomPosition, Machine, SupportState, kinematics};
use quantity::Dimension;
use quantity::Si;
use stability::{
    LineOnSprings, LoadOnBoom, Loading, Masses, RearAxleState, Springs, Stance, Support, gravity_for_slopes,
    tipping_lines, wind::WindLoad,
};

/// Keys as read; none where missing or wrong.
pub(super) struct Keys {
    file: Option<String>,
    attachment: Option<String>,
    angle: Option<f64>,
    extension: Option<f64>,
    tilt: f64,
    mass: Option<f64>,
    offset: [Option<f64>; 3],
    state: Option<SupportState>,
    rear: Option<RearAxleState>,
    slopes: [Option<f64>; 2],
}

/// What a calculation leaves open of the keys.
#[derive(Debug, Clone, Copy, Default)]
pub(super) struct Asks {
    /// Set where it is for one support only.
    pub(super) state: Option<SupportState>,
    /// True where it stands level.
    pub(super) level: bool,
}

/// A machine as it stands.
pub(super) struct Standing {
    pub(super) machine: Machine,
    pub(super) attachment: Attachment,
    pub(super) boom: BoomPosition,
    pub(super) stance: Stance,
    pub(super) load: LoadOnBoom,
    /// With the load, without wind.
    pub(super) loading: Loading,
    /// Fork heel or hook, m.
    pub(super) tool: DVec3,
}

/// Reads the keys.
fn keys(root: &Reader<'_>, asks: Asks) -> Keys {
    Keys {
        file: root.text("machine", "machine = \"machine.toml\""),
        attachment: root.text("attachment", "attachment = \"forks\""),
        angle: root.decision("boom_angle", Dimension::Angle, Bound::Any),
        extension: root.decision("extension", Dimension::Length, Bound::NotNegative),
        tilt: root.decision_or_none("fork_tilt", Dimension::Angle, Bound::Within(-1.0, 1.0)).unwrap_or(0.0),
        mass: root.decision("load", Dimension::Mass, Bound::NotNegative),
        offset: [
            root.decision("load_ahead", Dimension::Length, Bound::NotNegative),
            root.decision("load_left", Dimension::Length, Bound::Any),
            root.decision("load_up", Dimension::Length, Bound::NotNegative),
        ],
        state: asks.state.or_else(|| root.choice("support", &SupportState::WORDS)),
        rear: root.choice("rear_axle", &REAR),
        slopes: ["slope_along", "slope_across"].map(|key| {
            if asks.level { Some(0.0) } else { root.decision(key, Dimension::Slope, Bound::Within(-1.0, 1.0)) }
        }),
    }
}

/// The machine as it stands, and what else the calculation asks; every fault at once.
pub(super) fn given<T>(
    input: &Input,
    said: Said,
    asks: Asks,
    asked: impl FnOnce(&Reader<'_>) -> Option<T>,
) -> Result<(Standing, T), Failure> {
    let root = input.document.root();
    let keys = keys(&root, asks);
    let asked = asked(&root);
    root.done();
    if let Some(failure) = input.faults(said) {
        return Err(failure);
    }
    let (Some(asked), Some(standing)) = (asked, keys.stand(input, &root, said)?) else {
        return Err(failure(input, said));
    };
    input.faults(said).map_or(Ok((standing, asked)), Err)
}

impl Standing {
    /// What its tyres and pads give.
    pub(super) fn springs(&self) -> Springs {
        Springs::of(&self.machine, self.stance.support.state)
    }

    /// Its tipping lines on contacts that give.
    pub(super) fn soft_lines(&self, springs: Springs) -> [LineOnSprings; 6] {
        tipping_lines(&self.machine, self.stance)
            .map(|line| LineOnSprings::of(&self.machine, self.stance, &line, springs))
    }

    /// Boom angle and extension at most as the maker has them for driving.
    pub(super) fn carried(&self) -> bool {
        let carry = &self.machine.limits.carry;
        let slack = 1e-9;
        self.boom.angle <= carry.angle.si() + slack && self.boom.extension <= carry.extension.si() + slack
    }
}

impl Keys {
    /// The machine that they name, as it stands. `None` where a key is missing: its fault is noted already.
    pub(super) fn stand(self, input: &Input, root: &Reader<'_>, said: Said) -> Result<Option<Standing>, Failure> {
        let [ahead, left, up] = self.offset;
        let (Some(file), Some(attachment), Some(angle), Some(extension), Some(mass)) =
            (self.file, self.attachment, self.angle, self.extension, self.mass)
        else {
            return Ok(None);
        };
        let (Some(ahead), Some(left), Some(up), Some(state), Some(rear), [Some(along), Some(across)]) =
            (ahead, left, up, self.state, self.rear, self.slopes)
        else {
            return Ok(None);
        };
        let machine = input.machine(&file, said)?;
        in_range(root, &machine, angle, extension, state);
        let Some(found) = machine.attachment(&attachment).cloned() else {
            let known: Vec<_> = machine.attachments.iter().map(|a| a.id.as_str()).collect();
            let message = text::NO_ATTACHMENT.with("attachment", &attachment).with("known", known.join(", "));
            root.fault("attachment", message, None);
            return Err(failure(input, said));
        };
        if matches!(found.kind, AttachmentKind::Platform(_)) {
            root.fault("attachment", text::NO_PEOPLE.message(), Some(text::HINT_NO_PEOPLE.message()));
            return Err(failure(input, said));
        }
        let boom = BoomPosition { angle, extension, fork_tilt: self.tilt };
        let tool = kinematics::tool_point(&machine.boom, &found, boom);
        // A hung load acts at its hook, wherever its centre is below.
        let offset = if found.hangs() { DVec2::ZERO } else { DVec2::new(ahead, up) };
        let at = kinematics::on_carriage(&machine.boom, boom, found.tool_point() + offset) + DVec3::Y * left;
        let stance = Stance::from(Support { state, rear });
        let load = LoadOnBoom { mass, at };
        let masses = Masses::standing(&machine, &found, boom, stance).with(load);
        let loading = Loading { masses, gravity: gravity_for_slopes(along, across), wind: WindLoad::NONE };
        Ok(Some(Standing { machine, attachment: found, boom, stance, load, loading, tool }))
    }
}

/// One answer for each way it goes over, of those in the order of [`stability::tipping_lines`]: for either
/// side the worse of the two ways in which wheels may hold the machine along its length.
pub(crate) fn one_a_side<T>(lines: impl IntoIterator<Item = T>, worse: impl Fn(T, T) -> T) -> Vec<T> {
    let mut all: Vec<T> = lines.into_iter().collect();
    while all.len() > 4 {
        let i = all.len() - 3;
        if let Some(last) = all.pop() {
            let first = all.remove(i);
            all.insert(i, worse(first, last));
        }
    }
    all
}
