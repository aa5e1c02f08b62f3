//! Force and pressure under each wheel or pad, against a strength that a named person states, and against the soil
//! where it is stated ([`super::bearing`]). Where both are there both must hold; one of them must be.

use super::bearing::OnSoil;
use super::level::contact_names;
use super::statics::Statics;
use super::{newtons, pascals, reserve, within};
use crate::context::Context;
use crate::posed::{NotPosed, Posed, why_not};
use crate::{Matter, WheelForce, text};
use evidence::{Finding, Source, Status, Working};
use quantity::Si;

/// Contact pressure under contact `i` for its worst force, Pa.
pub(crate) fn pressure(ctx: &Context<'_>, force: [f64; 4], i: usize) -> Option<f64> {
    // A force that is not a number gives no pressure, whatever the tyre.
    contact(ctx, i).map(|c| if force[i].is_nan() { f64::NAN } else { c.pressure(force[i]) })
}

/// True unless every contact is a tyre that presses with its inflation, whatever its force.
pub(crate) fn goes_with_force(ctx: &Context<'_>) -> bool {
    (0..4).any(|i| !matches!(contact(ctx, i), Some(ground::Contact::Tyre { .. })))
}

fn contact(ctx: &Context<'_>, i: usize) -> Option<ground::Contact> {
    if let Some(area) = ctx.machine.pad_area(ctx.lift.support, i) {
        return Some(ground::Contact::Pad { area });
    }
    super::tyres::highest(ctx, i).map(|inflation| ground::Contact::Tyre { inflation })
}

/// The contact that asks most of the ground: by pressure where all are known, else by force.
fn worst(ctx: &Context<'_>, force: [f64; 4]) -> usize {
    let measure = |i: usize| pressure(ctx, force, i).unwrap_or(f64::INFINITY);
    (0..4).max_by(|a, b| measure(*a).total_cmp(&measure(*b)).then(force[*a].total_cmp(&force[*b]))).unwrap_or(0)
}

pub(crate) fn status(
    ctx: &Context<'_>,
    statics: Option<&Statics>,
    posed: Option<&Posed>,
    soil: Option<&OnSoil<'_>>,
) -> Status {
    let accepted = ctx.accepted(Matter::GroundStrength).is_some();
    match soil {
        None => by_person(ctx, statics.map(|s| s.force)),
        // A part of the contacts on unknown soil: that part is for the person.
        Some(soil) if accepted || !known(ctx, statics, posed) => {
            soil.status().max(by_person(ctx, statics.map(|s| s.force)))
        }
        Some(soil) => soil.status(),
    }
}

/// True if soil is stated under everything that presses.
fn known(ctx: &Context<'_>, statics: Option<&Statics>, posed: Option<&Posed>) -> bool {
    matches!((statics, posed), (Some(s), Some(p)) if super::bearing::all_known(ctx, p, s.force))
}

/// What a named person's strength says to these forces (N); `None`: not known.
pub(crate) fn by_person(ctx: &Context<'_>, force: Option<[f64; 4]>) -> Status {
    let Some(force) = force else { return Status::CannotTell };
    let Some(strength) = ctx.accepted(Matter::GroundStrength).and_then(|a| a.strength) else {
        return Status::CannotTell;
    };
    match pressure(ctx, force, worst(ctx, force)) {
        None => Status::CannotTell,
        Some(p) => within(p, strength.si()),
    }
}

pub(crate) fn findings(
    ctx: &Context<'_>,
    statics: Option<&Statics>,
    posed: Result<&Posed, &NotPosed>,
    soil: Option<&OnSoil<'_>>,
) -> Vec<Finding> {
    let (Some(soil), Some(s), Ok(p)) = (soil, statics, posed) else { return vec![finding(ctx, statics, posed)] };
    let on_soil = super::bearing::finding(ctx, s, p, soil);
    if ctx.accepted(Matter::GroundStrength).is_none() && super::bearing::all_known(ctx, p, s.force) {
        return vec![on_soil];
    }
    vec![on_soil, finding(ctx, statics, posed)]
}

fn finding(ctx: &Context<'_>, statics: Option<&Statics>, posed: Result<&Posed, &NotPosed>) -> Finding {
    let status = by_person(ctx, statics.map(|s| s.force));
    let Some(s) = statics else {
        let (why, remedy) = why_not(posed);
        return Finding::new("ground", status, text::GROUND_NOT_CHECKED.with("why", why))
            .remedy(remedy)
            .source(Source::Mechanics);
    };
    let i = worst(ctx, s.force);
    let wheel = contact_names(ctx)[i];
    let force = newtons(s.force[i]);
    let mut working = Working::default();
    let found = contact(ctx, i).map(|c| c.traced_pressure(s.force[i], &mut working));
    let memory = Source::from_memory("tyre patch = wheel force / inflation pressure, handbook practice");
    let Some(p) = found else {
        return Finding::new("ground", status, text::GROUND_NO_PATCH.with("wheel", wheel).with("force", force))
            .remedy(text::DO_TYRE_PRESSURE)
            .source(memory);
    };
    let asked = pascals(p);
    let accepted = ctx.accepted(Matter::GroundStrength);
    let Some(accepted) = accepted else {
        let message = text::GROUND_UNKNOWN.with("wheel", wheel).with("force", force).with("pressure", asked);
        return Finding::new("ground", status, message)
            .remedy(text::DO_STATE_GROUND.with("pressure", asked))
            .source(memory)
            .working(working);
    };
    let person = Source::Person { name: accepted.by.clone(), statement: accepted.statement.clone() };
    let Some(strength) = accepted.strength else {
        return Finding::new("ground", status, text::GROUND_NO_STRENGTH.with("by", &accepted.by))
            .remedy(text::DO_STATE_GROUND.with("pressure", asked))
            .source(person)
            .working(working);
    };
    let id = if status == Status::Go { text::GROUND_CARRIES } else { text::GROUND_WEAK };
    let message = id.with("wheel", wheel).with("pressure", asked).with("strength", strength).with("by", &accepted.by);
    let f = Finding::new("ground", status, message)
        .measured(asked, strength, reserve(p, strength.si()))
        .source(person)
        .source(memory)
        .working(working);
    if status == Status::Go { f } else { f.remedy(text::DO_MATS) }
}

/// Forces for the plan, most loaded first.
pub(crate) fn wheel_forces(ctx: &Context<'_>, s: &Statics) -> Vec<WheelForce> {
    let mut out: Vec<_> = (0..4)
        .map(|i| {
            let contact = contact(ctx, i);
            WheelForce {
                name: contact_names(ctx)[i].message(),
                force_n: s.force[i],
                pressure_pa: contact.map(|c| c.pressure(s.force[i])),
                area_m2: contact.map(|c| c.area(s.force[i])),
            }
        })
        .collect();
    out.sort_by(|a, b| b.force_n.total_cmp(&a.force_n));
    out
}
