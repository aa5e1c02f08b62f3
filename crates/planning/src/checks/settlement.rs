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

use super::level::{self, contact_names};
use super::statics::Statics;
use super::under::{self, Foot, Gives, LARGEST_MAT, Under, on_pad};
use super::{angle, metres, newtons, reserve, within};
use crate::context::Context;
use crate::posed::{Posed, tool_point};
use crate::standing::lock;
use crate::text;
use evidence::{Finding, Message, Source, Status, Step, TextId, Trace, Working};
use ground::Refusal;
use ground::settlement::head_moves;
use machine::LevelTolerance;
use quantity::{Dimension, Quantity, Si};
use stability::RearAxleState;

/// What the ground gives under a lift.
#[derive(Debug, Clone)]
pub(crate) struct Settling<'a> {
    /// Under one front and one rear contact, m/N.
    pub(crate) gives: [f64; 2],
    /// How the machine leans by it; or the contact of which it cannot be told and why, or nothing where only tyres
    /// stand on what is not known.
    lean: Result<Lean<'a>, Option<(usize, Why<'a>)>>,
}

/// Why a settlement is not known.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Why<'a> {
    /// No soil is stated there, but elsewhere.
    NoSoil,
    /// The soil, by name.
    Soil(&'a str, Refusal),
}

/// The leaning machine.
#[derive(Debug, Clone)]
struct Lean<'a> {
    feet: [Foot; 4],
    gives: [Gives<'a>; 4],
    sides: Sides,
}

/// Worst of both directions, and the contact that settles most.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Sides {
    across: Apart,
    along: Apart,
    /// The contact, its settlement, m.
    most: (usize, f64),
    /// The forces of that pose, N.
    force: [f64; 4],
}

/// Two settlements, how far apart, and the angle between.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Apart {
    settles: [f64; 2],
    apart: f64,
    tilt: f64,
}

impl Apart {
    const NONE: Self = Self { settles: [0.0; 2], apart: 1.0, tilt: 0.0 };

    /// The greater, or what is no number.
    fn or(self, settles: [f64; 2], apart: f64) -> Self {
        let tilt = libm::atan2((settles[0] - settles[1]).abs(), apart);
        if tilt > self.tilt || (tilt.is_nan() && !self.tilt.is_nan()) { Self { settles, apart, tilt } } else { self }
    }
}

/// Both directions under every pose that presses unevenly.
fn sides(ctx: &Context<'_>, statics: &Statics, posed: &Posed, gives: &[Gives<'_>; 4]) -> Sides {
    let on = crate::posed::contacts(ctx);
    let (front, rear, base) = (2.0 * on.front_half, 2.0 * on.rear_half, on.front_x - on.rear_x);
    let angles = posed.reach.ok().into_iter().flatten().map(|b| b.angle);
    // A free axle follows its wheels and leaves the frame where it is.
    let held = angles.flat_map(|a| lock(ctx, a).states()).any(|s| *s == RearAxleState::Locked);
    let mut out = Sides { across: Apart::NONE, along: Apart::NONE, most: (0, 0.0), force: [0.0; 4] };
    for &force in statics.uneven.poses() {
        let [a, b, c, d] = gives.each_ref().map(|g| g.settles(force));
        for (i, s) in [a, b, c, d].into_iter().enumerate() {
            if s[0] > out.most.1 || s[0].is_nan() {
                (out.most, out.force) = ((i, s[0]), force);
            }
        }
        // Greatest against least, both ways round.
        let mut across = |a: [f64; 2], b: [f64; 2], track: f64| {
            out.across = out.across.or([a[0], b[1]], track).or([a[1], b[0]], track);
        };
        across(a, b, front);
        if held {
            across(c, d, rear);
        }
        let mean = |i: usize, a: [f64; 2], b: [f64; 2]| f64::midpoint(a[i], b[i]);
        out.along = out.along.or([mean(0, a, b), mean(1, c, d)], base).or([mean(1, a, b), mean(0, c, d)], base);
    }
    out
}

/// `None` where no soil is stated under any contact.
pub(crate) fn settling<'a>(ctx: &Context<'a>, statics: &Statics, posed: &Posed) -> Option<Settling<'a>> {
    if ctx.job.soils.is_empty() {
        return None;
    }
    let force = statics.force;
    let feet = match under::feet(ctx, force) {
        Ok(feet) => feet,
        // A mat that the pad overhangs: the ground's finding refuses it.
        Err(why) => {
            return Some(Settling { gives: [0.0; 2], lean: Err(Some((0, Why::Soil("", why)))) });
        }
    };
    let under = under::all(ctx, posed, &feet, force);
    if under.iter().all(|u| *u == Under::NoSoil) {
        return None;
    }
    let mut gives = [0.0_f64; 2];
    for (i, under) in under.iter().enumerate() {
        if let Under::Known(g) = under
            && force[i] > 0.0
        {
            gives[i / 2] = gives[i / 2].max(g.settles(force)[0] / force[i]);
        }
    }
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
struct Held {
    demand: f64,
    limit: f64,
    by: Apart,
    /// How the stand lies.
    lies: f64,
}

fn held(posed: &Posed, tolerance: LevelTolerance, sides: &Sides) -> Held {
    let lies = level::out_of_level(posed);
    let of = |lies: f64, by: Apart, limit: f64| Held { demand: lies + by.tilt, limit, by, lies };
    let across = of(lies.sideways, sides.across, tolerance.sideways.si());
    let along = of(lies.fore_aft, sides.along, tolerance.fore_aft.si());
    let left = |h: &Held| reserve(h.demand, h.limit);
    if across.demand.is_nan() || left(&across) <= left(&along) { across } else { along }
}

fn tolerance(ctx: &Context<'_>, posed: &Posed) -> Option<LevelTolerance> {
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

/// How high above the contacts the tool comes, m.
fn height(ctx: &Context<'_>, posed: &Posed) -> f64 {
    let (Ok(poses), Some(attachment)) = (posed.reach, ctx.attachment) else { return 0.0 };
    poses.into_iter().map(|boom| tool_point(ctx, attachment, boom).z).fold(0.0, f64::max)
}

/// Side of the smallest square under every contact on which it leans no more than allowed, m.
fn needed_side(
    ctx: &Context<'_>,
    statics: &Statics,
    posed: &Posed,
    tolerance: LevelTolerance,
    feet: &[Foot; 4],
) -> Option<f64> {
    let steps = (LARGEST_MAT / ground::needed_mat::SIDE_STEP) as u32;
    (2..=steps).map(|k| f64::from(k) * ground::needed_mat::SIDE_STEP).find(|&side| {
        let wider = feet.map(|f| Foot { sides: f.sides.map(|s| s.max(side)), ..f });
        let under = under::all(ctx, posed, &wider, statics.force);
        let [Under::Known(a), Under::Known(b), Under::Known(c), Under::Known(d)] = under else { return false };
        let held = held(posed, tolerance, &sides(ctx, statics, posed, &[a, b, c, d]));
        held.demand <= held.limit
    })
}

fn why(why: Why<'_>) -> Message {
    match why {
        Why::NoSoil => text::SETTLEMENT_NO_SOIL.message(),
        Why::Soil(soil, Refusal::NoNumber) => text::SETTLEMENT_NO_STIFFNESS.with("soil", soil),
        Why::Soil(_, refusal) => refusal.message(),
    }
}

fn not_known(ctx: &Context<'_>, posed: &Posed, contact: usize, reason: Why<'_>) -> Finding {
    let wheel = contact_names(ctx)[contact];
    let message = text::SETTLEMENT_NOT_KNOWN.with("wheel", wheel).with("why", why(reason));
    let finding = Finding::new("settlement", Status::Condition, message).source(Source::CommonPractice);
    let Some(tolerance) = tolerance(ctx, posed) else { return finding };
    let lies = level::out_of_level(posed);
    let left = (tolerance.sideways.si() - lies.sideways).min(tolerance.fore_aft.si() - lies.fore_aft).max(0.0);
    finding.remedy(text::DO_WATCH_LEVEL.with("angle", angle(left)))
}

/// Nothing where no soil is stated, or only tyres stand on what is not known.
pub(crate) fn finding(
    ctx: &Context<'_>,
    statics: &Statics,
    posed: &Posed,
    settling: &Settling<'_>,
) -> Option<Finding> {
    let status = settling.status(ctx, posed)?;
    let lean = match &settling.lean {
        Ok(lean) => lean,
        Err(unknown) => return unknown.map(|(contact, reason)| not_known(ctx, posed, contact, reason)),
    };
    let (contact, settles) = lean.sides.most;
    let mut working = Working::default();
    for (i, gives) in lean.gives.iter().enumerate() {
        // Asked before without steps: it gives a number.
        let _ = under::traced(&lean.feet, i, lean.sides.force, gives.soil, &mut working);
    }
    let soil = lean.gives[contact].soil;
    let Some(tolerance) = tolerance(ctx, posed) else {
        let message = text::SETTLEMENT_NO_TOLERANCE
            .with("wheel", contact_names(ctx)[contact])
            .with("settles", metres(settles));
        return Some(Finding::new("settlement", status, message).remedy(text::DO_OTHER_MACHINE).working(working));
    };
    let held = held(posed, tolerance, &lean.sides);
    let moves =
        head_moves(held.by.settles, held.by.apart, height(ctx, posed), &mut working).map_or(f64::NAN, |(_, moves)| moves);
    working.step(|| Step {
        title: text::WORKING_SETTLED_LEVEL.message(),
        formula: "θ = θ_0 + ω".into(),
        values: vec![("θ_0".into(), angle(held.lies)), ("ω".into(), angle(held.by.tilt))],
        result: ("θ".into(), angle(held.demand)),
        source: Source::Mechanics,
    });
    springs_steps(ctx, statics, settling, &mut working);
    let id: TextId = if status == Status::Go { text::SETTLEMENT_WITHIN } else { text::SETTLEMENT_TOO_MUCH };
    let [a, b] = held.by.settles;
    let message = id
        .with("wheel", contact_names(ctx)[contact])
        .with("settles", metres(settles))
        .with("difference", metres((a - b).abs()))
        .with("tilt", angle(held.by.tilt))
        .with("moves", metres(moves))
        .with("total", angle(held.demand))
        .with("tolerance", angle(held.limit));
    let finding = Finding::new("settlement", status, message)
        .measured(angle(held.demand), angle(held.limit), reserve(held.demand, held.limit))
        .source(Source::Person { name: soil.by.clone(), statement: soil.name.clone() })
        .source(Source::from_memory("Steinbrenner 1934; rigid pads after Bowles"))
        .working(working);
    Some(match status {
        Status::Go => finding,
        // No mat makes the stand itself lie better.
        _ if held.lies > held.limit => finding.remedy(text::DO_LEVEL_STAND),
        _ => match needed_side(ctx, statics, posed, tolerance, &lean.feet) {
            Some(side) => finding.remedy(text::DO_MATS_SETTLE.with("side", metres(side))),
            None => finding.remedy(text::DO_BETTER_GROUND),
        },
    })
}

/// The springs that statics reckons with, ground included.
fn springs_steps(ctx: &Context<'_>, statics: &Statics, settling: &Settling<'_>, working: &mut Working) {
    let firm = super::tyres::springs(&Context { gives: [0.0; 2], ..*ctx }, ctx.lift.support);
    let soft = super::statics::springs(ctx);
    let stiffness = |si| Quantity::new(si, Dimension::Stiffness);
    let axles = [(firm.front, soft.front), (firm.rear, soft.rear)];
    for (axle, (alone, together)) in axles.into_iter().enumerate() {
        let wheels = [2 * axle, 2 * axle + 1];
        let most = if statics.force[wheels[0]] >= statics.force[wheels[1]] { wheels[0] } else { wheels[1] };
        let force = statics.force[most];
        working.step(|| Step {
            title: text::WORKING_GROUND_GIVES.with("wheel", contact_names(ctx)[most]),
            formula: "c = 1 / (1/c_0 + s/F)".into(),
            values: vec![
                ("c_0".into(), stiffness(alone)),
                ("s".into(), metres(settling.gives[axle] * force)),
                ("F".into(), newtons(force)),
            ],
            result: ("c".into(), stiffness(together)),
            source: Source::Mechanics,
        });
    }
}
