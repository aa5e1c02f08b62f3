//! Why there is no way, in words.

use super::bar::Bar;
use super::map::RouteMap;
use super::route_plan::{RefusalKind, RouteRefusal};
use crate::text;
use driving::{NoRoute, PlanPose};
use evidence::Message;
use quantity::{Dimension, Quantity};

pub(crate) fn refusal(map: &RouteMap<'_>, none: NoRoute<Bar>) -> RouteRefusal {
    let words = |bars: Vec<Bar>| -> Vec<Message> { bars.into_iter().map(|b| b.message(map.job)).collect() };
    let metres = |m: f64| Quantity::new(m, Dimension::Length);
    let kind = match &none {
        NoRoute::StartBarred(_) => RefusalKind::StartBarred,
        NoRoute::TargetBarred(_) => RefusalKind::TargetBarred,
        NoRoute::Narrow(_) => RefusalKind::Narrow,
        NoRoute::WalledIn { .. } => RefusalKind::WalledIn,
        NoRoute::GaveUp { .. } => RefusalKind::GaveUp,
        NoRoute::Stopped => RefusalKind::Stopped,
        NoRoute::NotANumber | NoRoute::Vehicle(_) => RefusalKind::Missing,
    };
    let (message, because, at, remedy) = match none {
        NoRoute::StartBarred(bars) => (text::DRIVE_START_BARRED.message(), words(bars), None, text::DO_DRIVE_START),
        NoRoute::TargetBarred(bars) => (text::DRIVE_TARGET_BARRED.message(), words(bars), None, text::DO_DRIVE_TARGET),
        NoRoute::Narrow(narrow) => {
            let message = text::DRIVE_NARROW
                .with("width", metres(narrow.width))
                .with("needed", metres(narrow.needed))
                .with("lacking", metres(narrow.needed - narrow.width));
            (message, words(narrow.between), Some(narrow.at), text::DO_DRIVE_CLEAR)
        }
        NoRoute::WalledIn { nearest, short, by } => {
            (text::DRIVE_WALLED_IN.with("short", metres(short)), words(by), Some(nearest.at), text::DO_DRIVE_CLEAR)
        }
        NoRoute::GaveUp { nearest, short, by, .. } => {
            (text::DRIVE_GAVE_UP.with("short", metres(short)), words(by), Some(nearest.at), text::DO_DRIVE_BETWEEN)
        }
        NoRoute::Stopped => (text::DRIVE_STOPPED.message(), Vec::new(), None, text::DO_DRIVE_AGAIN),
        NoRoute::NotANumber => (text::DRIVE_NO_PLACE.message(), Vec::new(), None, text::DO_DRIVE_STATE),
        NoRoute::Vehicle(_) => (text::DRIVE_NO_TURNING.message(), Vec::new(), None, text::DO_DRIVE_STATE),
    };
    RouteRefusal { kind, message, because, at: at.map(|p| p.to_array()), remedy: remedy.message() }
}

/// A way that was found has a pose at which the machine may not drive: another may be free, so nothing is ruled out.
pub(crate) fn spoilt(map: &RouteMap<'_>, pose: &PlanPose, bar: Bar) -> RouteRefusal {
    RouteRefusal {
        kind: RefusalKind::GaveUp,
        message: text::DRIVE_SPOILT.message(),
        because: vec![bar.message(map.job)],
        at: Some(pose.at.to_array()),
        remedy: text::DO_DRIVE_BETWEEN.message(),
    }
}
