//! Absolute stops: no number can mend them.

use crate::context::Context;
use crate::{StopKind, text};
use evidence::{Finding, Source, Status, TextId};
use machine::AttachmentKind;

/// What is wrong and what to do instead.
fn said(stop: StopKind) -> (TextId, TextId) {
    match stop {
        StopKind::RaisesPeople => (text::STOP_PEOPLE, text::DO_NO_PEOPLE),
        StopKind::Riders => (text::STOP_RIDERS, text::DO_NO_RIDERS),
        StopKind::UnderLoad => (text::STOP_UNDER_LOAD, text::DO_KEEP_OUT),
        StopKind::SharedLoad => (text::STOP_SHARED, text::DO_ONE_MACHINE),
        StopKind::Drags => (text::STOP_DRAG, text::DO_LIFT_CLEAR),
        StopKind::DrivesBoomUp => (text::STOP_BOOM_UP, text::DO_BOOM_DOWN),
        StopKind::HandSteadied => (text::STOP_HAND, text::DO_TAG_LINES),
        StopKind::LeavesSeat => (text::STOP_SEAT, text::DO_STAY_SEATED),
        StopKind::NoBelt => (text::STOP_BELT, text::DO_BELT),
        StopKind::Thunderstorm => (text::STOP_THUNDER, text::DO_WAIT_STORM),
    }
}

/// Stops that apply, with what to do instead: those that the lift states, and those that follow from
/// its attachment and charts.
fn applying(ctx: &Context<'_>) -> impl Iterator<Item = (TextId, TextId)> {
    let platform = ctx.attachment.is_some_and(|a| matches!(a.kind, AttachmentKind::Platform(_)));
    let no_chart = super::chart::choose(ctx, None).is_none();
    let follow =
        [(platform, text::STOP_PLATFORM, text::DO_NO_PEOPLE), (no_chart, text::STOP_NO_CHART, text::DO_OTHER_MACHINE)];
    let stated = StopKind::ALL.into_iter().filter(|stop| ctx.lift.stops.contains(stop)).map(said);
    stated.chain(follow.into_iter().filter(|(applies, ..)| *applies).map(|(_, stop, instead)| (stop, instead)))
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
