//! What `counterpoise stands` is asked; everything that is wrong is said at once.

use super::text;
use crate::args::StandsArgs;
use crate::failure::Failure;
use crate::plan;
use evidence::{Faults, Message, Place};
use geometry::{DVec2, heading_from_degrees};
use planning::{FieldSpec, Job};
use quantity::Dimension;

/// What is asked.
pub(super) struct Asked {
    /// Indexes of lifts, in the order of the job.
    pub(super) lifts: Vec<usize>,
    pub(super) spec: FieldSpec,
    /// Stands listed for each.
    pub(super) best: usize,
    /// Places.
    pub(super) at: Vec<DVec2>,
    /// Heading in those places, inside angle; `None`: boom at the landing.
    pub(super) heading: Option<f64>,
}

/// Largest radius, m, and smallest cell, m: beyond them nobody waits for an answer.
const FAR: f64 = 60.0;
const FINE: f64 = 0.05;

/// # Errors
/// Every argument that cannot be understood, and every id of a lift that the job does not have.
pub(super) fn asked(job: &Job, args: &StandsArgs) -> Result<Asked, Failure> {
    let mut wrong = Faults::default();
    for id in &args.lift {
        if !job.lifts.iter().any(|l| l.id == *id) {
            plan::unknown_lift(job, id, &mut wrong);
        }
    }
    let mut bad = |argument: &str, value: &str, hint: Message| {
        let message = text::BAD_ARGUMENT.with("argument", argument).with("value", value);
        wrong.error("cli::bad-argument", Place::default(), message, Some(hint));
    };
    let radius = length(&args.radius).filter(|r| *r > 0.0 && *r <= FAR);
    if radius.is_none() {
        bad("--radius", &args.radius, text::HINT_FIELD.message());
    }
    let cell = length(&args.cell).filter(|c| *c >= FINE && radius.is_none_or(|r| *c <= r));
    if cell.is_none() {
        bad("--cell", &args.cell, text::HINT_FIELD.message());
    }
    let mut at = Vec::new();
    for value in &args.at {
        match pair(value) {
            Some(place) => at.push(place),
            None => bad("--at", value, text::HINT_PLACE.message()),
        }
    }
    let heading = args.heading.as_deref().and_then(|value| {
        let read = quantity::parse(value, Dimension::Angle).ok().map(|q| heading_from_degrees(q.si.to_degrees()));
        let heading = read.filter(|angle| angle.is_finite());
        if heading.is_none() {
            bad("--heading", value, text::HINT_HEADING.message());
        }
        heading
    });
    let (Some(radius), Some(cell), false) = (radius, cell, wrong.any_error()) else {
        return Err(Failure::new(wrong, args.said));
    };
    let wanted = |id: &String| args.lift.is_empty() || args.lift.contains(id);
    let lifts = (0..job.lifts.len()).filter(|i| wanted(&job.lifts[*i].id)).collect();
    Ok(Asked { lifts, spec: FieldSpec { radius, cell }, best: usize::from(args.best), at, heading })
}

/// A length with its unit, m.
fn length(text: &str) -> Option<f64> {
    quantity::parse(text.trim(), Dimension::Length).ok().map(|q| q.si)
}

fn pair(text: &str) -> Option<DVec2> {
    let (east, north) = text.split_once(',')?;
    Some(DVec2::new(length(east)?, length(north)?)).filter(|at| at.is_finite())
}
