//! Absolute stops: no number can mend them.

use crate::context::Context;
use crate::text;
use evidence::{Finding, Source, Status, TextId};

/// Stops that apply, with what to do instead.
fn applying(ctx: &Context<'_>) -> impl Iterator<Item = (TextId, TextId)> {
    let l = ctx.lift;
    [
        (l.raises_people, text::STOP_PEOPLE, text::DO_NO_PEOPLE),
        (l.shared_load, text::STOP_SHARED, text::DO_ONE_MACHINE),
        (l.drags, text::STOP_DRAG, text::DO_LIFT_CLEAR),
        (l.drives_boom_up, text::STOP_BOOM_UP, text::DO_BOOM_DOWN),
        (l.hand_steadied, text::STOP_HAND, text::DO_TAG_LINES),
        (l.leaves_seat, text::STOP_SEAT, text::DO_STAY_SEATED),
    ]
    .into_iter()
    .filter(|(applies, ..)| *applies)
    .map(|(_, stop, instead)| (stop, instead))
}

pub(crate) fn status(ctx: &Context<'_>) -> Status {
    if applying(ctx).next().is_some() { Status::Stop } else { Status::Go }
}

/// One finding a stop, or one that says there is none.
pub(crate) fn findings(ctx: &Context<'_>) -> Vec<Finding> {
    let out: Vec<_> = applying(ctx)
        .map(|(stop, instead)| Finding::new("stops", Status::Stop, stop).remedy(instead).source(Source::CommonPractice))
        .collect();
    if out.is_empty() {
        vec![Finding::new("stops", Status::Go, text::STOP_NONE).source(Source::CommonPractice)]
    } else {
        out
    }
}
