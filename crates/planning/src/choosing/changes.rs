//! The smallest changes that would make a lift work for which no place does: each was tried by looking for stands again.

use super::choose::RADIUS;
use super::combinations::combinations;
use crate::stand_field::{FieldSpec, StandSearch};
use crate::{Choose, Job, Lift, text};
use core::ops::ControlFlow;
use evidence::{Message, Status};
use quantity::{Dimension, Quantity};

/// Cells of the looks, m.
const CELL: f64 = 0.5;

/// True if the lift works somewhere.
fn works(job: &Job, lift: &Lift) -> bool {
    let Some(search) = StandSearch::new(job, lift, FieldSpec { radius: RADIUS, cell: CELL }) else { return false };
    if search.field().floor() > Status::Condition {
        return false;
    }
    // One place is enough.
    let field = search.run(&mut |field, _, _| {
        if field.passing_area() > 0.0 { ControlFlow::Break(()) } else { ControlFlow::Continue(()) }
    });
    field.passing_area() > 0.0
}

/// Changes that do, one at a time, in this order: other equipment of the job, half the load, a mat that lies ready, another
/// side of the landing, each line switched off. For a lift that works nowhere as it is.
pub fn changes(job: &Job, lift: &Lift) -> Vec<Message> {
    let mut out = Vec::new();
    let any = Lift { choose: Choose::ALL, ..lift.clone() };
    if let Some(way) = combinations(job, &any).iter().skip(1).find(|way| works(job, way)) {
        let machine = &job.machines[way.machine].machine;
        let attachment = machine.attachment(&way.attachment).map_or(way.attachment.as_str(), |a| a.name.as_str());
        out.push(
            text::CHANGE_EQUIPMENT
                .with("machine", &machine.name)
                .with("attachment", attachment)
                .with("support", crate::support_name(way.support)),
        );
    }
    let mut other = job.clone();
    if let Some(load) = other.loads.get_mut(lift.load) {
        for mass in [&mut load.mass_kg.low, &mut load.mass_kg.nominal, &mut load.mass_kg.high] {
            *mass *= 0.5;
        }
        let half = load.mass_kg.nominal;
        if works(&other, lift) {
            out.push(text::CHANGE_HALF_LOAD.with("mass", Quantity::new(half, Dimension::Mass)));
        }
    }
    if lift.mats.is_empty() {
        for (i, mat) in job.mats.iter().enumerate() {
            let on_mat = Lift { mats: vec![i], ..lift.clone() };
            if works(job, &on_mat) {
                out.push(text::CHANGE_MAT.with("mat", &mat.name));
                break;
            }
        }
    }
    if job.landings.get(lift.landing).is_some_and(|l| l.approach.is_some()) {
        let mut other = job.clone();
        other.landings[lift.landing].approach = None;
        if works(&other, lift) {
            out.push(text::CHANGE_ANY_SIDE.message());
        }
    }
    for i in 0..job.lines.len() {
        let mut other = job.clone();
        let line = other.lines.remove(i);
        if works(&other, lift) {
            out.push(text::CHANGE_LINE_DEAD.with("line", &line.name));
        }
    }
    out
}
