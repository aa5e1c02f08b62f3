//! What goes where on the forks: which face against the carriage, and how far aside.

use super::metres;
use crate::context::Context;
use crate::{Task, text};
use evidence::{Message, TextId};
use machine::{AttachmentKind, Face, Forks, Turned};
use quantity::Si;

/// Gains below this are not worth turning a load half round, m (ours).
const WORTH_TURNING: f64 = 0.02;

/// Gains below this are not worth taking a load from another side, m (ours).
const WORTH_ANOTHER_SIDE: f64 = 0.05;

/// Advice for a load on forks; none for a hung one.
pub(crate) fn advice(ctx: &Context<'_>) -> Vec<Message> {
    let Some(forks) = ctx.attachment.and_then(|a| match &a.kind {
        AttachmentKind::Forks(forks) => Some(forks),
        _ => None,
    }) else {
        return Vec::new();
    };
    if ctx.load.hanging.is_some() {
        return Vec::new();
    }
    let mut out = Vec::new();
    if let Some(turned) = better_face(ctx, forks) {
        out.push(
            text::DO_TURN_LOAD
                .with("face", face(turned.face))
                .with("centre", metres(turned.centre_ahead))
                .with("distance", metres(turned.nearer)),
        );
    }
    let left = ctx.load.centre_left.nominal;
    if left.abs() >= WORTH_TURNING {
        let side = if left > 0.0 { text::SIDE_RIGHT } else { text::SIDE_LEFT };
        out.push(text::DO_SHIFT_LOAD.with("distance", metres(left.abs())).with("side", side));
    }
    out
}

/// The face whose load centre is nearest, where that is worth it. From another side only where the
/// load centre is beyond the rated one (nearer than that gives no credit), where the blades go under,
/// and where the landing takes it so.
fn better_face(ctx: &Context<'_>, forks: &Forks) -> Option<Turned> {
    let beyond = ctx.load.centre_ahead.high > forks.rated_load_centre.si();
    let worth = |t: &Turned| match t.face {
        Face::Far => t.nearer >= WORTH_TURNING,
        Face::Left | Face::Right => {
            let (depth, width) = t.size;
            let lies = ctx.lift.task == Task::PickUp || (depth <= ctx.landing.size.x && width <= ctx.landing.size.y);
            beyond && lies && width >= forks.spread && t.nearer >= WORTH_ANOTHER_SIDE
        }
    };
    ctx.load.turned().into_iter().filter(worth).min_by(|a, b| a.centre_ahead.total_cmp(&b.centre_ahead))
}

fn face(face: Face) -> TextId {
    match face {
        Face::Far => text::FACE_FAR,
        Face::Left => text::FACE_LEFT,
        Face::Right => text::FACE_RIGHT,
    }
}
