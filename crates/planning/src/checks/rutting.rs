//! Ruts under bare tyres on soil with an undrained strength: how deep they become, and whether a wheel sinks.
//!
//! The wheels that carry in the lift are asked, by the pressure of their patch, which does not go with the force. A mat
//! leaves none; what is driven over on the way is for the way's check. Granular soil has no such rule: there bearing with
//! its factor decides.

use super::level::contact_names;
use super::statics::Statics;
use super::under::on_pad;
use super::{angle, metres, pascals, patches, reserve};
use crate::SoilArea;
use crate::context::Context;
use crate::posed::Posed;
use crate::text;
use evidence::{Finding, Ranged, Silent, Source, Status, Step, Trace, Working};
use geometry::DVec2;
use ground::GroundState;
use ground::rutting::{Ruts, Rutting, rutting};
use quantity::{Quantity, Si};

/// Ruts up to which nothing is said against them, m: those of [`Ruts::Small`].
const SMALL: f64 = 0.05;
/// Ruts up to which they are a condition, m: those of [`Ruts::Deep`].
const DEEP: f64 = 0.1;

/// The wheel and soil with the deepest ruts.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Rutted<'a> {
    wheel: usize,
    soil: &'a SoilArea,
    /// Contact pressure, Pa.
    pressure: f64,
    /// Least undrained strength stated, Pa.
    strength: f64,
    /// It counts no longer, but as an upper bound.
    lapsed: bool,
}

impl Rutted<'_> {
    fn does(&self, ruts: Ruts) -> Rutting {
        rutting(self.pressure, Ranged::exact(self.strength), ruts, &mut Silent)
    }

    pub(crate) fn status(&self) -> Status {
        let status = match (self.does(Ruts::Small), self.does(Ruts::Deep)) {
            _ if self.pressure.is_nan() => Status::CannotTell,
            (Rutting::Stays, _) => Status::Go,
            (_, Rutting::Stays) => Status::Condition,
            _ => Status::NoGo,
        };
        // Bearing asks what holds besides; how deep it is driven the eye sees.
        if self.lapsed { status.max(Status::Condition) } else { status }
    }
}

/// The least undrained strength stated within the tyre's width below the surface (ours: as deep as a rut's sides reach),
/// Pa, and whether it has lapsed. `None` where no layer there has one by its kind.
fn strength(soil: &SoilArea, width: f64) -> Option<(f64, bool)> {
    let near = soil.profile.layers.iter().filter(|l| l.top < width);
    let least = near.filter_map(|l| l.stated.undrained).reduce(|a, b| if b >= a { a } else { b })?;
    Some((least, soil.profile.state != GroundState::AsStated))
}

/// The worst wheel; `None` where no bare tyre carries on soil with an undrained strength.
pub(crate) fn outcome<'a>(ctx: &Context<'a>, statics: &Statics, posed: &Posed) -> Option<Rutted<'a>> {
    let places = patches::patches(ctx, posed, statics.force);
    let mut worst: Option<Rutted<'_>> = None;
    for wheel in (0..4).filter(|i| !on_pad(ctx, *i)) {
        let at = DVec2::from_array(places[wheel].middle);
        let [length, width] = places[wheel].size;
        let force = statics.force[wheel];
        // Without a pressure known the patch is short, so that it presses hard.
        let pressure = super::tyres::highest(ctx, wheel).unwrap_or(force / (length * width));
        for soil in ctx.job.soils.iter().filter(|s| s.reaches(at, ctx.policy.stand_error)) {
            let Some((strength, lapsed)) = strength(soil, super::tyres::tyre(ctx, wheel).width.si()) else { continue };
            let found = Rutted { wheel, soil, pressure, strength, lapsed };
            let key = |r: &Rutted<'_>| (r.status(), r.pressure / r.strength);
            let worse = worst.is_none_or(|w| {
                let ((a, x), (b, y)) = (key(&found), key(&w));
                a.cmp(&b).then(x.total_cmp(&y)).is_gt()
            });
            if worse {
                worst = Some(found);
            }
        }
    }
    worst
}

pub(crate) fn finding(ctx: &Context<'_>, found: &Rutted<'_>) -> Finding {
    let status = found.status();
    let wheel = contact_names(ctx)[found.wheel];
    let person = Source::Person { name: found.soil.by.clone(), statement: found.soil.name.clone() };
    let rule = Source::from_memory("Steward, Williamson & Mohney 1977, US Forest Service");
    // A bound that the wheel keeps tells nothing of how deep it sinks.
    let c_u = found.strength;
    if status == Status::CannotTell || (found.lapsed && status != Status::NoGo) {
        let message = text::RUTS_NOT_KNOWN.with("wheel", wheel).with("soil", &found.soil.name);
        return Finding::new("rutting", status, message)
            .remedy(text::DO_WATCH_RUTS.with("depth", metres(DEEP)))
            .source(person);
    }
    let mut working = Working::default();
    for ruts in [Ruts::Small, Ruts::Deep] {
        rutting(found.pressure, Ranged::exact(c_u), ruts, &mut working);
    }
    let limit = Ruts::Deep.factor() * c_u;
    let id = match (status, found.does(Ruts::Deep)) {
        (Status::Go, _) => text::RUTS_SMALL,
        (Status::Condition, _) => text::RUTS_DEEP,
        (_, Rutting::Sinks) => text::RUTS_SINKS,
        _ => text::RUTS_DEEPEN,
    };
    let depth = if status == Status::Go { SMALL } else { DEEP };
    let mut message = id
        .with("wheel", wheel)
        .with("soil", &found.soil.name)
        .with("pressure", pascals(found.pressure))
        .with("strength", pascals(c_u));
    if id != text::RUTS_SINKS {
        message = message.with("depth", metres(depth));
    }
    if status == Status::Condition {
        let on = crate::posed::contacts(ctx);
        let track = 2.0 * on.front_half.min(on.rear_half);
        let lean = libm::atan2(DEEP, track);
        working.step(|| Step {
            title: text::WORKING_RUT_LEANS.message(),
            formula: "tan θ = z/b".into(),
            values: vec![("z".into(), metres(DEEP)), ("b".into(), metres(track))],
            result: ("θ".into(), angle(lean)),
            source: Source::Mechanics,
        });
        message = message.with("lean", angle(lean));
    }
    let finding = Finding::new("rutting", status, message)
        .measured(pascals(found.pressure), pascals(limit), reserve(found.pressure, limit))
        .source(person)
        .source(rule)
        .working(working);
    match status {
        Status::Go => finding,
        Status::Condition => finding.remedy(text::DO_WATCH_RUTS.with("depth", metres(DEEP))),
        _ => finding.remedy(text::DO_MATS_AGAINST_RUTS.with("strength", needed(found.pressure))),
    }
}

/// Undrained strength on which ruts stay small, Pa.
fn needed(pressure: f64) -> Quantity {
    pascals(pressure / Ruts::Small.factor())
}
