//! Whether a lift falls within a routine.

use super::area::{OfLanding, RoutineCheck, TURNED, cells, steepest};
use super::corners::{CLEAR, lift_of};
use super::result::holds_in;
use crate::check::everywhere;
use crate::checks::{angle, kilograms, metres};
use crate::context::Context;
use crate::posed::pose;
use crate::stand_field::{FieldGrid, FieldSpec, StandSearch};
use crate::{Job, Lift, Reason, Task, check_name, support_name, text};
use evidence::{Message, Ranged, Status};
use geometry::wrapped;
use machine::Load;
use quantity::{Dimension, Quantity, Si};

/// Two values nearer than this are one, in their SI units.
const SAME: f64 = 1e-6;

impl RoutineCheck<'_> {
    /// Every reason why a lift does not fall within the routine; none: it does, and needs no plan of its own.
    pub fn fits(&self, job: &Job, lift: &Lift) -> Vec<Message> {
        let routine = self.routine;
        let mut out = Vec::new();
        if routine.approved_by.is_none() {
            out.push(text::ROUTINE_OFF_NOT_APPROVED.message());
        }
        equipment(job, routine, lift, &mut out);
        match (&self.corners, job.loads.get(lift.load)) {
            (Some(corners), Some(load)) => out.extend(load_within(&corners.loads[0], load)),
            _ => out.push(text::ROUTINE_NOT_KNOWN.message()),
        }
        match lift.wind {
            None => out.push(text::ROUTINE_OFF_NO_GUST.message()),
            // What is not a number is no such gust.
            Some(wind) if wind.gust.si() <= routine.stop_gust.si() + SAME => {}
            Some(wind) => out.push(text::ROUTINE_OFF_GUST.with("gust", wind.gust).with("most", routine.stop_gust)),
        }
        if let Some(of) = self.landings.iter().find(|l| l.landing == lift.landing) {
            self.stands_within(job, lift, of, &mut out);
        } else {
            let name = job.landings.get(lift.landing).map_or("", |l| l.name.as_str());
            out.push(text::ROUTINE_OFF_LANDING.with("landing", name));
        }
        own_checks(job, lift, &mut out);
        out
    }

    fn stands_within(&self, job: &Job, lift: &Lift, of: &OfLanding, out: &mut Vec<Message>) {
        let routine = self.routine;
        let stand = lift.stand;
        if !stand.is_chosen() {
            out.push(text::ROUTINE_OFF_NO_STAND.message());
            return;
        }
        if !routine.stands.contains(stand.at) {
            out.push(text::ROUTINE_OFF_STAND.with("distance", metres(routine.stands.distance_to_point(stand.at))));
            return;
        }
        let Some(field) = &of.field else {
            out.push(text::ROUTINE_OFF_NOWHERE.with("reason", of.first_reason()));
            return;
        };
        // Every asked cell whose middle lies within a cell's diagonal: the four around the place, and some more.
        let near = field.grid.cell * core::f64::consts::SQRT_2;
        let around: Vec<usize> =
            cells(routine, &field.grid).into_iter().filter(|i| field.grid.at(*i).distance(stand.at) <= near).collect();
        let refused = around.iter().find(|i| !holds_in(field, **i));
        if around.is_empty() || refused.is_some() {
            let reason = refused.and_then(|i| field.cell(*i).by);
            out.push(text::ROUTINE_OFF_HELD.with("reason", reason.map_or_else(|| of.first_reason(), Reason::name)));
        }
        match aimed(job, lift, &field.grid) {
            Some(straight) => {
                let off = wrapped(stand.heading - straight).abs();
                let points = off <= TURNED + SAME;
                if !points {
                    out.push(text::ROUTINE_OFF_TURNED.with("turn", angle(off)).with("most", angle(TURNED)));
                }
            }
            None => out.push(text::ROUTINE_OFF_NO_STAND.message()),
        }
        let posed = Context::new(job, lift).and_then(|ctx| pose(&ctx).ok());
        match posed.as_ref().map(steepest) {
            Some(slope) if slope <= routine.ground => {}
            Some(slope) if slope.is_finite() => out.push(
                text::ROUTINE_OFF_GROUND
                    .with("slope", Quantity::slope(slope))
                    .with("most", Quantity::slope(routine.ground)),
            ),
            _ => out.push(text::ROUTINE_OFF_NO_GROUND.message()),
        }
    }
}

/// The heading with which the boom points at the landing from where a lift stands, as a cell of a field has it there.
fn aimed(job: &Job, lift: &Lift, grid: &FieldGrid) -> Option<f64> {
    // So small a cell that its middle is the place.
    let away = lift.stand.at.distance(grid.centre);
    let cell = (away / 900.0).max(0.005);
    let radius = away + 2.0 * cell;
    let search = StandSearch::new(job, lift, FieldSpec { radius, cell })?;
    let half = (radius / cell + 1e-9).floor() as usize;
    let fine = FieldGrid { centre: grid.centre, cell, half };
    Some(search.stand(fine.cell_at(lift.stand.at)?).heading)
}

/// Machine, attachment, support, task, and what else of a lift a routine leaves at its usual.
fn equipment(job: &Job, routine: &crate::Routine, lift: &Lift, out: &mut Vec<Message>) {
    if lift.machine != routine.machine {
        let name = job.machines.get(lift.machine).map_or("", |u| u.machine.name.as_str());
        out.push(text::ROUTINE_OFF_MACHINE.with("machine", name));
    }
    if lift.attachment != routine.attachment {
        out.push(text::ROUTINE_OFF_ATTACHMENT.with("attachment", &lift.attachment));
    }
    if lift.support != routine.support {
        out.push(text::ROUTINE_OFF_SUPPORT.with("support", support_name(lift.support)));
    }
    if lift.task != Task::SetDown {
        out.push(text::ROUTINE_OFF_TASK.message());
    }
    let usual = lift_of(job, routine, lift.load, lift.landing);
    let mut otherwise = |what: Message| out.push(text::ROUTINE_OFF_OTHERWISE.with("what", what));
    if !lift.mats.is_empty() {
        otherwise(text::ROUTINE_MATS.message());
    }
    if lift.side_shift != usual.side_shift {
        otherwise(text::ROUTINE_SHIFTED.message());
    }
    if lift.levelled || lift.axle_locked {
        otherwise(text::ROUTINE_LEVELLED.message());
    }
    let as_usual = (lift.clear.si() - CLEAR).abs() <= SAME;
    if !as_usual {
        otherwise(text::ROUTINE_CLEAR.with("clear", metres(CLEAR)));
    }
    if lift.extensions == Some(true) {
        otherwise(text::ROUTINE_SLEEVES.message());
    }
    if lift.bulk_volume.is_some() || lift.bulk_density.is_some() {
        otherwise(text::ROUTINE_BULK.message());
    }
}

/// Why a load is not within a family whose worst is `most`: all of its ranges count.
pub(super) fn load_within(most: &Load, load: &Load) -> Vec<Message> {
    let mut out = Vec::new();
    // Written so that what is not a number is outside.
    let within = |value: f64, limit: f64| value <= limit + SAME;
    if !within(load.mass_kg.high, most.mass_kg.high) || load.mass_kg.low.is_nan() {
        out.push(
            text::ROUTINE_OFF_MASS
                .with("mass", kilograms(load.mass_kg.high))
                .with("most", kilograms(most.mass_kg.high)),
        );
    }
    for (side, size, limit) in [
        (text::ROUTINE_DEPTH, load.depth, most.depth),
        (text::ROUTINE_WIDTH, load.width, most.width),
        (text::ROUTINE_HEIGHT, load.height, most.height),
    ] {
        if !within(size, limit) {
            out.push(text::ROUTINE_OFF_SIZE.with("side", side).with("size", metres(size)).with("most", metres(limit)));
        }
    }
    let far = |r: Ranged| if r.low.is_nan() { f64::NAN } else { r.high };
    let aside = |r: Ranged| if r.low.is_nan() || r.high.is_nan() { f64::NAN } else { r.low.abs().max(r.high.abs()) };
    for (way, centre, limit) in [
        (text::ROUTINE_AHEAD, far(load.centre_ahead), far(most.centre_ahead)),
        (text::ROUTINE_ASIDE, aside(load.centre_left), aside(most.centre_left)),
        (text::ROUTINE_UP, far(load.centre_up), far(most.centre_up)),
    ] {
        if !within(centre, limit) {
            let message = text::ROUTINE_OFF_CENTRE.with("way", way);
            out.push(message.with("centre", metres(centre)).with("most", metres(limit)));
        }
    }
    if !within(load.wind_factor, most.wind_factor) {
        let number = |value: f64| Quantity::new(value, Dimension::Number);
        let message = text::ROUTINE_OFF_WIND_FACTOR.with("factor", number(load.wind_factor));
        out.push(message.with("most", number(most.wind_factor)));
    }
    match (&most.hanging, &load.hanging) {
        (None, None) => {}
        // How it is slung goes into swing and reach: only the same counts as within.
        (Some(a), Some(b)) if a == b => {}
        (Some(_), Some(_)) => out.push(text::ROUTINE_OFF_RIGGING.message()),
        _ => out.push(text::ROUTINE_OFF_HANGING.message()),
    }
    if load.liquid.is_some() && most.liquid != load.liquid {
        out.push(text::ROUTINE_OFF_OTHERWISE.with("what", text::ROUTINE_BULK));
    }
    out
}

/// What goes with the lift's own load, machine and landing, whatever the stand.
fn own_checks(job: &Job, lift: &Lift, out: &mut Vec<Message>) {
    let Some(ctx) = Context::new(job, lift) else {
        out.push(text::ROUTINE_NOT_KNOWN.message());
        return;
    };
    let mut said: Vec<&str> = Vec::new();
    for (id, _) in everywhere(&ctx).into_iter().filter(|(_, s)| *s > Status::Condition) {
        if !said.contains(&id) {
            said.push(id);
            out.push(text::ROUTINE_OFF_CHECK.with("check", check_name(id).unwrap_or(text::REASON_EVERYWHERE)));
        }
    }
}
