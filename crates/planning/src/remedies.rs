//! Cures that cure: a nearer stand or a lighter load is proposed only after the whole check was made
//! again with it.

use crate::check::check_context;
use crate::context::Context;
use crate::set_backs::SetBacks;
use crate::{Lift, Stand};
use evidence::Status;
use quantity::Si;

/// How far nearer along the heading the machine would have to stand for chart, statics, level,
/// ground and approach to pass, in steps of 0.1 m (at least 0.1 m between tyres and landing);
/// `None`: nowhere.
pub(crate) fn nearer(ctx: &Context<'_>) -> Option<f64> {
    const STEP: f64 = 0.1;
    let (sin, cos) = libm::sincos(ctx.stand.heading);
    let forward = geometry::DVec2::new(cos, sin);
    let gap = (ctx.landing.at - ctx.stand.at).dot(forward)
        - ctx.landing.size.x / 2.0
        - ctx.machine.front_face().max(ctx.machine.outline.front);
    let mut set_backs = SetBacks::default();
    set_backs.only_whether(true);
    let steps = ((gap - STEP) / STEP).clamp(0.0, 200.0) as usize;
    (1..=steps).map(|i| i as f64 * STEP).find(|distance| {
        let stand = Stand { at: ctx.stand.at + forward * *distance, ..ctx.stand };
        passes(&Context { stand, ..*ctx }, &mut set_backs)
    })
}

/// Nominal mass (by ticket or scales, kg) of the same load that would pass, in steps of 2 %, down to
/// a fifth; `None`: none does.
pub(crate) fn lighter(ctx: &Context<'_>) -> Option<f64> {
    let mass = ctx.load.mass_kg;
    let mut load = ctx.load.clone();
    let mut set_backs = SetBacks::default();
    set_backs.only_whether(true);
    let share = (1..40).map(|i| 1.0 - 0.02 * f64::from(i)).find(|share| {
        load.mass_kg.low = mass.low * share;
        load.mass_kg.nominal = mass.nominal * share;
        load.mass_kg.high = mass.high * share;
        passes(&Context { load: &load, ..*ctx }, &mut set_backs)
    })?;
    Some((mass.nominal * share / 5.0).floor() * 5.0)
}

/// True if nothing that place or weight can change stands against the lift.
fn passes(ctx: &Context<'_>, set_backs: &mut SetBacks) -> bool {
    check_context(*ctx, set_backs).placed() <= Status::Condition
}

/// Stop gust of a lift, m/s.
pub(crate) fn stop_gust(lift: &Lift) -> Option<f64> {
    lift.wind.map(|w| w.gust.si())
}
