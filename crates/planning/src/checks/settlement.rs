//! How far the ground gives under the contacts, and what that does to a machine that was level.
//!
//! Elastic settlement goes straight with the force, so for statics the ground is a spring below each contact, one after
//! the other with the tyre or the pad and its leg: a secant at the greatest reaction, what the other contacts do there at
//! theirs included, which is more than they do together in any one pose. Reactions come from rigid contacts, so nothing
//! has to be repeated until it holds still. At the onset of tipping the supports of a line carry everything, and so they
//! settle by everything (`stability/lean.rs`).
//!
//! The finding asks about the attitude before that: the lean by the worst single pose, added to how the stand lies, against
//! what the chart allows.

use super::level;
use super::statics::Statics;
use super::under::{self, Foot, Gives, PATCH_AT, Under, on_pad};
use super::{reserve, within};
use crate::context::Context;
use crate::posed::Posed;
use crate::standing::lock;
use evidence::Status;
use ground::Refusal;
use machine::LevelTolerance;
use quantity::Si;
use stability::RearAxleState;

/// What the ground gives under a lift.
#[derive(Debug, Clone)]
pub(crate) struct Settling<'a> {
    /// Under one front and one rear contact, m/N.
    pub(crate) gives: [f64; 2],
    /// How the machine leans by it; or the contact of which it cannot be told and why, or nothing where only tyres
    /// stand on what is not known.
    pub(super) lean: Result<Lean<'a>, Option<(usize, Why<'a>)>>,
}

/// Why a settlement is not known.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Why<'a> {
    /// No soil is stated there, but elsewhere.
    NoSoil,
    /// The mat.
    Mat(Refusal),
    /// The soil, by name.
    Soil(&'a str, Refusal),
}

/// The leaning machine.
#[derive(Debug, Clone)]
pub(super) struct Lean<'a> {
    pub(super) feet: [Foot; 4],
    pub(super) gives: [Gives<'a>; 4],
    pub(super) sides: Sides,
}

/// Worst of both directions, and the contact that settles most.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Sides {
    pub(super) across: Apart,
    pub(super) along: Apart,
    /// The contact, its settlement, m, and the forces of that pose, N.
    pub(super) most: (usize, f64, [f64; 4]),
}

/// Two settlements (m; of an axle the mean), how far apart (m), the angle between (rad), and the forces of that pose (N).
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Apart {
    pub(super) settles: [f64; 2],
    pub(super) distance: f64,
    pub(super) tilt: f64,
    pub(super) force: [f64; 4],
}

impl Apart {
    const NONE: Self = Self { settles: [0.0; 2], distance: 1.0, tilt: 0.0, force: [0.0; 4] };

    /// The greater, or what is no number.
    fn or(self, force: [f64; 4], settles: [f64; 2], distance: f64) -> Self {
        let tilt = libm::atan2((settles[0] - settles[1]).abs(), distance);
        if tilt > self.tilt || (tilt.is_nan() && !self.tilt.is_nan()) {
            Self { settles, distance, tilt, force }
        } else {
            self
        }
    }
}

/// Both directions under every pose that presses unevenly.
pub(super) fn sides(ctx: &Context<'_>, statics: &Statics, posed: &Posed, gives: &[Gives<'_>; 4]) -> Sides {
    let on = crate::posed::contacts(ctx);
    let (front, rear, base) = (2.0 * on.front_half, 2.0 * on.rear_half, on.front_x - on.rear_x);
    let angles = posed.reach.ok().into_iter().flatten().map(|b| b.angle);
    // A free axle follows its wheels and leaves the frame where it is.
    let held = angles.flat_map(|a| lock(ctx, a).states()).any(|s| *s == RearAxleState::Locked);
    let mut out = Sides { across: Apart::NONE, along: Apart::NONE, most: (0, 0.0, [0.0; 4]) };
    for &force in statics.uneven.poses() {
        let [a, b, c, d] = gives.each_ref().map(|g| g.settles(force));
        for (i, s) in [a, b, c, d].into_iter().enumerate() {
            if s[0] > out.most.1 || s[0].is_nan() {
                out.most = (i, s[0], force);
            }
        }
        // Greatest against least, both ways round.
        let mut across = |a: [f64; 2], b: [f64; 2], track: f64| {
            out.across = out.across.or(force, [a[0], b[1]], track).or(force, [a[1], b[0]], track);
        };
        across(a, b, front);
        if held {
            across(c, d, rear);
        }
        let mean = |i: usize, a: [f64; 2], b: [f64; 2]| f64::midpoint(a[i], b[i]);
        out.along =
            out.along.or(force, [mean(0, a, b), mean(1, c, d)], base).or(force, [mean(1, a, b), mean(0, c, d)], base);
    }
    out
}

/// What the ground gives under one front and one rear contact at the greatest forces (N), of an axle the more, m/N.
fn secants(under: &[Under<'_>; 4], force: [f64; 4]) -> [f64; 2] {
    let mut gives = [0.0_f64; 2];
    for (i, under) in under.iter().enumerate() {
        if let Under::Known(g) = under
            && force[i] > 0.0
        {
            gives[i / 2] = gives[i / 2].max(g.settles(force)[0] / force[i]);
        }
    }
    gives
}

/// `None` where no soil is stated under any contact.
pub(crate) fn settling<'a>(ctx: &Context<'a>, statics: &Statics, posed: &Posed) -> Option<Settling<'a>> {
    if ctx.job.soils.is_empty() {
        return None;
    }
    let force = statics.force;
    let feet = |patch_at| under::feet(ctx, force, patch_at);
    let (feet, short) = match feet(1.0).and_then(|whole| Ok((whole, feet(PATCH_AT)?))) {
        Ok(both) => both,
        // A mat that the pad overhangs: the ground's finding refuses it.
        Err(why) => {
            return Some(Settling { gives: [0.0; 2], lean: Err(Some((0, Why::Mat(why)))) });
        }
    };
    let under = under::all(ctx, posed, &feet, force);
    if under.iter().all(|u| *u == Under::NoSoil) {
        return None;
    }
    let gives = secants(&under::all(ctx, posed, &short, force), force);
    let unknown = under.iter().enumerate().find_map(|(i, u)| match u {
        Under::Known(_) => None,
        Under::NoSoil => Some((i, Why::NoSoil)),
        Under::Unknown(soil, why) => Some((i, Why::Soil(&soil.name, *why))),
    });
    let lean = match (unknown, under) {
        (None, [Under::Known(a), Under::Known(b), Under::Known(c), Under::Known(d)]) => {
            let gives = [a, b, c, d];
            Ok(Lean { feet, gives, sides: sides(ctx, statics, posed, &gives) })
        }
        (unknown, _) => Err(unknown.filter(|_| (0..4).any(|i| on_pad(ctx, i)))),
    };
    Some(Settling { gives, lean })
}

/// Demand and limit of the direction with less left, rad, and how far the machine leans in it by settlement.
pub(super) struct Held {
    pub(super) demand: f64,
    pub(super) limit: f64,
    pub(super) by: Apart,
    /// How the stand lies.
    pub(super) lies: f64,
}

pub(super) fn held(posed: &Posed, tolerance: LevelTolerance, sides: &Sides) -> Held {
    let lies = level::out_of_level(posed);
    let of = |lies: f64, by: Apart, limit: f64| Held { demand: lies + by.tilt, limit, by, lies };
    let across = of(lies.sideways, sides.across, tolerance.sideways.si());
    let along = of(lies.fore_aft, sides.along, tolerance.fore_aft.si());
    let left = |h: &Held| reserve(h.demand, h.limit);
    if across.demand.is_nan() || left(&across) <= left(&along) { across } else { along }
}

pub(super) fn tolerance(ctx: &Context<'_>, posed: &Posed) -> Option<LevelTolerance> {
    Some(level::level(ctx, posed)?.tolerance)
}

impl Settling<'_> {
    /// Lean of the machine at most, both directions together, rad; 0 where it is not known.
    pub(crate) fn leans(&self) -> f64 {
        self.lean.as_ref().map_or(0.0, |l| libm::hypot(l.sides.across.tilt, l.sides.along.tilt))
    }

    /// `None` where nothing is said.
    pub(crate) fn status(&self, ctx: &Context<'_>, posed: &Posed) -> Option<Status> {
        match &self.lean {
            Err(None) => None,
            // What the ground gives is not known: it is for the level, read twice.
            Err(Some(_)) => Some(Status::Condition),
            Ok(lean) => Some(tolerance(ctx, posed).map_or(Status::CannotTell, |t| {
                let held = held(posed, t, &lean.sides);
                within(held.demand, held.limit)
            })),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::SoilArea;
    use ground::{GroundState, Layer, Profile, Stated, Stiffness};

    fn soil(poisson: f64, crust: f64) -> SoilArea {
        let layer = |top: f64, thickness: f64, modulus: f64| Layer {
            top,
            thickness,
            unit_weight: 18e3,
            stated: Stated::default(),
            stiffness: Some(Stiffness { modulus, poisson }),
        };
        let layers = vec![layer(0.0, crust, 40e6), layer(crust, f64::INFINITY, 10e6)];
        let profile = Profile { layers, water: None, state: GroundState::AsStated };
        SoilArea { id: "s".into(), name: "s".into(), area: None, profile, presumed: None, by: "made".into() }
    }

    /// Ours against the plane of three settlements that feel each other: with all of the weight on two contacts the body
    /// turns no more against the two that have come free than with a spring under each.
    #[test]
    fn springs_turn_it_at_least_as_far_as_ground_that_is_pressed_all_round() {
        let mut tried = 0;
        for (poisson, crust) in [(0.0, 0.5), (0.3, 2.0), (0.5, 0.2)] {
            let soil = soil(poisson, crust);
            for (front, rear, base, side) in [(3.3, 1.9, 3.6, 0.45), (1.9, 1.9, 2.8, 0.3), (2.4, 2.0, 4.0, 1.5)] {
                let places = [(0.0, front / 2.0), (0.0, -front / 2.0), (-base, rear / 2.0), (-base, -rear / 2.0)];
                let feet = places.map(|(x, y)| Foot { at: [x, y], sides: [side; 2] });
                let rows = [0, 1, 2, 3].map(|i| under::row(&feet, i, &soil).unwrap_or([f64::NAN; 4]));
                let known = rows.map(|row| Under::Known(Gives::of(&soil, row)));
                for greatest in [[45e3, 45e3, 35e3, 35e3], [70e3, 50e3, 30e3, 25e3], [90e3, 90e3, 20e3, 20e3]] {
                    let gives = secants(&known, greatest);
                    for ends in [[0, 1], [2, 3], [0, 2], [1, 3]] {
                        for step in 0..=10 {
                            let share = f64::from(step) / 10.0;
                            let mut force = [0.0; 4];
                            (force[ends[0]], force[ends[1]]) = (120e3 * (1.0 - share), 120e3 * share);
                            let felt = |i: usize| rows[i].iter().zip(force).map(|(r, f)| r * f).sum::<f64>();
                            let sprung = |i: usize| gives[i / 2] * force[i];
                            let (a, b) = (turn(&places, ends, felt), turn(&places, ends, sprung));
                            assert!(a <= b * 1.001, "{places:?} {greatest:?} {ends:?} {share}: {a} {b}");
                            tried += 1;
                        }
                    }
                }
            }
        }
        assert_eq!(tried, 27 * 44);
    }

    /// Slope of the ground under the body from the line to the contact that comes free, the greater of both.
    fn turn(places: &[(f64, f64); 4], ends: [usize; 2], s: impl Fn(usize) -> f64) -> f64 {
        let [a, b] = ends.map(|i| geometry::DVec2::from(places[i]));
        let along = (b - a).normalize();
        let free = (0..4).filter(|i| !ends.contains(i));
        free.map(|i| {
            let to = geometry::DVec2::from(places[i]) - a;
            let foot = to.dot(along) / (b - a).length();
            let line = s(ends[0]) * (1.0 - foot) + s(ends[1]) * foot;
            (line - s(i)) / to.perp_dot(along).abs()
        })
        .fold(f64::NEG_INFINITY, f64::max)
    }
}
