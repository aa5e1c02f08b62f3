//! Which movement of the boom the lift is judged with, and what is said of it.

use crate::boom_path::blocked::{self, Blocked};
use crate::boom_path::{End, NoWay};
use crate::check::LiftCheck;
use crate::checks::metres;
use crate::posed::Posed;
use crate::text;
use evidence::{Finding, Message, Source, Status};
use machine::Attachment;

/// How the movement came about.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Outcome {
    /// The plain movement: it passes, or nothing else was looked for.
    Plain,
    /// Another one; what refuses the plain one.
    Other(Message),
    /// None passes.
    None(NoWay),
}

impl Outcome {
    /// `None`: nothing to say besides what other checks say.
    pub(crate) fn status(&self) -> Option<Status> {
        match self {
            Self::Plain | Self::None(NoWay::Landing) => None,
            Self::Other(_) => Some(Status::Condition),
            Self::None(_) => Some(Status::NoGo),
        }
    }
}

pub(crate) fn finding(check: &LiftCheck<'_>) -> Option<Finding> {
    let status = check.way.status()?;
    let said = |message: Message| Finding::new("movement", status, message).source(Source::Mechanics);
    match &check.way {
        Outcome::Plain => None,
        Outcome::Other(what) => {
            let message = text::MOVEMENT_OTHER.with("what", what.clone());
            Some(said(message).remedy(text::DO_MOVE_IN_ORDER))
        }
        Outcome::None(why) => {
            let (Ok(posed), Some(attachment)) = (&check.posed, check.ctx.attachment) else { return None };
            let named = |origin| blocked::name(&check.ctx, origin);
            let message = match *why {
                // How much is missing of a distance that is no number nobody knows.
                NoWay::End(_, room) if !room.required.is_finite() => {
                    text::MOVEMENT_NONE_TOUCHES.with("thing", room.origin.map(named).unwrap_or_default())
                }
                NoWay::End(end, room) => {
                    let id = match end {
                        End::Frame => text::MOVEMENT_FRAME,
                        End::Carry => text::MOVEMENT_CARRY,
                        End::Landing => text::MOVEMENT_LANDING,
                    };
                    let missing = metres((-room.left).clamp(0.0, room.required));
                    id.with("thing", room.origin.map(named).unwrap_or_default()).with("missing", missing)
                }
                NoWay::Bare => text::MOVEMENT_NONE_BACK.with("what", between(check, posed, attachment, true)),
                NoWay::Loaded | NoWay::Landing => between(check, posed, attachment, false),
            };
            Some(match blocked::other_stand(&check.ctx) {
                Some(back) if back > 0.0 => said(message).remedy(text::DO_STAND_BACK.with("distance", metres(back))),
                Some(back) => said(message).remedy(text::DO_STAND_NEARER.with("distance", metres(-back))),
                None => said(message).remedy(text::DO_CLEAR_WAY),
            })
        }
    }
}

/// What stands between carry and the landing.
fn between(check: &LiftCheck<'_>, posed: &Posed, attachment: &Attachment, bare: bool) -> Message {
    let named = |origin| blocked::name(&check.ctx, origin);
    match blocked::blocked(&check.ctx, posed, attachment, bare) {
        Blocked::Chart => text::MOVEMENT_NONE_CHART.message(),
        Blocked::Touches(origin) => text::MOVEMENT_NONE_TOUCHES.with("thing", named(origin)),
        Blocked::Short(origin, missing) => {
            text::MOVEMENT_NONE.with("thing", named(origin)).with("missing", metres(missing))
        }
        Blocked::TooLow { origin, missing, needed } => text::MOVEMENT_NONE_LOW
            .with("thing", named(origin))
            .with("missing", metres(missing))
            .with("height", metres(needed)),
        Blocked::TooNarrow { origin, missing, needed } => text::MOVEMENT_NONE_NARROW
            .with("thing", named(origin))
            .with("missing", metres(missing))
            .with("width", metres(needed)),
    }
}
