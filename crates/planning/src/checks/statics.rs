//! Load factor, tilt that remains, and wheel forces, over all corners of the uncertain inputs.
//!
//! The frame counts as levelled and the rear axle as locked as far as [`crate::standing`] says; where a lock
//! is not sure both states are asked and the worse counts. The load is also taken away (set down, boom
//! still up): it is never counted on to steady.

use super::contacts::Least;
use super::parts::wind_parts;
use super::search::Search;
use super::uneven::Uneven;
use super::{NEAR, angle, fitted, spare};
use crate::context::Context;
use crate::movement::Passed;
use crate::posed::{NotPosed, Posed, tool_point, why_not};
use crate::standing::{Levelled, attitudes, lock};
use crate::text;
use evidence::{Finding, Message, Silent, Source, Status, Step, Trace, Working};
use geometry::{DVec2, DVec3};
use machine::{Attachment, BoomPosition, SupportState, kinematics};
use quantity::{Dimension, Quantity, Si};
use stability::wind::WindLoad;
use stability::{
    LineOnSprings, LoadOnBoom, Loading, Masses, RearAxleState, Springs, Stance, TippingLine, TipsOver, load_factor,
    tilt_reserve, tipping_lines,
};

/// Worst of everything.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Statics {
    /// Smallest load factor with its line; `None`: no load tips it.
    pub(crate) factor: Option<(f64, TipsOver)>,
    pub(super) factor_corner: Option<(Corner, LoadOnBoom)>,
    /// Remaining and required tilt of the line with the smallest ratio of the two, rad.
    pub(crate) tilt: f64,
    pub(crate) tilt_required: f64,
    pub(crate) over: TipsOver,
    pub(super) tilt_corner: Corner,
    pub(super) tilt_line: TippingLine,
    /// Greatest force on each contact, N, the wind's share included.
    pub(crate) force: [f64; 4],
    /// Least force on each contact, and the worst corner over each side.
    pub(crate) least: Least,
    /// Forces of the poses that press the contacts most unevenly.
    pub(crate) uneven: Uneven,
    /// Gust used, m/s; `None`: none stated, so no wind in the numbers.
    pub(super) gust: Option<f64>,
}

/// One corner of the uncertain inputs, with what its working needs.
#[derive(Debug, Clone, Copy)]
pub(super) struct Corner {
    pub(super) loading: Loading,
    pub(super) boom: BoomPosition,
    /// How the axles stand under the frame.
    pub(super) stance: Stance,
    /// Which of the search's stands that is.
    pub(super) stand: u16,
    /// Load on the boom, or taken away.
    pub(super) loaded: bool,
    /// Moment of the wind about each line, N·m.
    pub(super) overturning: [f64; 6],
}

/// What the contacts give: pads and tyres.
pub(super) fn springs(ctx: &Context<'_>) -> Springs {
    super::tyres::springs(ctx, ctx.lift.support)
}

pub(super) fn required(ctx: &Context<'_>, over: TipsOver) -> f64 {
    let p = &ctx.policy;
    let slope = match over {
        TipsOver::Front | TipsOver::Rear => p.tilt_fore_aft,
        TipsOver::Left | TipsOver::Right => p.tilt_sideways,
    };
    // A policy that asks for nothing, or for what is not a number, is no policy: nothing passes it.
    if slope > 0.0 { libm::atan(slope) } else { core::f64::consts::FRAC_PI_2 }
}

/// How far a hung load that swings pulls its weight out on the ground, m: it pulls at the hook along the
/// sling, whose line meets the ground so far beside the hook (quasi-static; mechanics).
pub(super) fn swung(ctx: &Context<'_>, tool: DVec3) -> f64 {
    if ctx.load.hanging.is_some() { ctx.load.swing_slope() * tool.z.max(0.0) } else { 0.0 }
}

/// How far the load's weight may lie to the left of the boom's plane, m, lowest and highest: its own
/// centre, with the side shift in or out; for a hung load the shift and what swinging pulls it out.
pub(super) fn aside(ctx: &Context<'_>, tool: DVec3) -> [f64; 2] {
    let shift = ctx.lift.side_shift;
    let own = ctx.load.centre_left;
    if ctx.load.hanging.is_some() {
        let swung = swung(ctx, tool);
        return [shift.min(0.0) - swung, shift.max(0.0) + swung];
    }
    [own.low + shift.min(0.0), own.high + shift.max(0.0)]
}

/// Place of the load's weight for a tool point: offsets along the forks, left and up; a hung load
/// acts at its hook.
pub(super) fn load_at(ctx: &Context<'_>, tool: DVec3, boom: BoomPosition, ahead: f64, left: f64) -> DVec3 {
    if ctx.load.hanging.is_some() {
        return tool + DVec3::X * ahead + DVec3::Y * left;
    }
    let carriage = Posed::carriage(tool, boom);
    carriage * DVec3::new(ahead, left, ctx.load.centre_up.high)
}

/// A boom position to be tried, with the load's offset along the forks, m.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Tried {
    pub(super) boom: BoomPosition,
    pub(super) ahead: f64,
    /// False where the boom is only ever without load: forks pulled out, or not yet in.
    pub(super) loaded: bool,
    /// At the landing, clear above it or set down.
    pub(super) landing: bool,
    /// How much higher the load may be than the boom position says, m.
    pub(super) up: f64,
}

/// Every position tried: clear above the landing and set down, each nearer by the stand error with
/// the nearest centre (boom steeper: worse sideways), and farther out by stand error and flex with
/// the farthest (worse forward); the positions on the way with both; and the forks pulled out, nearer and
/// farther by the stand error.
pub(super) fn tried(ctx: &Context<'_>, posed: &Posed, attachment: &Attachment) -> Option<Vec<Tried>> {
    let poses = posed.reach.ok()?;
    let movement = posed.movement.as_ref()?;
    let (low, high) =
        if ctx.load.hanging.is_some() { (0.0, 0.0) } else { (ctx.load.centre_ahead.low, ctx.load.centre_ahead.high) };
    let (flex, error) = (ctx.machine.boom.flex, ctx.policy.stand_error);
    let mut all = Vec::with_capacity(20);
    for boom in poses {
        for (moved, ahead) in [(-error, low), (error + flex, high)] {
            all.extend(moved_by(ctx, attachment, boom, moved).map(|(boom, rest)| Tried {
                boom,
                ahead: ahead + rest,
                loaded: true,
                landing: true,
                up: 0.0,
            }));
        }
    }
    // Raised retracted as steep as any of those needs it.
    let steepest = all.iter().map(|t| t.boom.angle).fold(f64::NEG_INFINITY, f64::max);
    let raised = BoomPosition { angle: steepest, extension: 0.0, fork_tilt: posed.carry.fork_tilt };
    for passed in movement.on_the_way.iter().chain([&Passed::alone(raised)]) {
        all.extend(with_load(ctx, passed));
    }
    all.extend(movement.bare.iter().flat_map(Passed::weighed).map(bare));
    for moved in [-error, error] {
        for (boom, _) in moved_by(ctx, attachment, movement.free, moved) {
            all.extend([boom, BoomPosition { extension: 0.0, ..boom }].map(bare));
        }
    }
    Some(all)
}

/// A position without load.
pub(crate) fn bare(boom: BoomPosition) -> Tried {
    Tried { boom, ahead: 0.0, loaded: false, landing: false, up: 0.0 }
}

/// A position passed with the load, and where its piece ends: nearest and farthest centre, each farther and higher by
/// what boom and load may lie off between the ends, as a moment of the load.
pub(crate) fn with_load(ctx: &Context<'_>, passed: &Passed) -> impl Iterator<Item = Tried> + use<> {
    let centre = ctx.load.centre_ahead;
    let (low, high) = if ctx.load.hanging.is_some() { (0.0, 0.0) } else { (centre.low, centre.high) };
    let off = if passed.off > 0.0 {
        let boom = &ctx.machine.boom;
        let tool = ctx.attachment.map_or(0.0, |a| a.mass.si());
        let moving = boom.sections.iter().map(|s| s.mass.si()).sum::<f64>() + boom.carriage_mass.si() + tool;
        passed.off * (1.0 + moving / ctx.load.mass_kg.low.max(1.0))
    } else {
        0.0
    };
    let aheads = [low - off, high + ctx.machine.boom.flex + off];
    passed
        .weighed()
        .flat_map(move |boom| aheads.map(|ahead| Tried { boom, ahead, loaded: true, landing: false, up: off }))
}

/// The boom with its tool moved ahead by so much, m. Where it has no range left for all of it: as far as it
/// goes, and where it is; with each what is left to move the load by.
fn moved_by(
    ctx: &Context<'_>,
    attachment: &Attachment,
    boom: BoomPosition,
    moved: f64,
) -> impl Iterator<Item = (BoomPosition, f64)> + use<> {
    let tool = tool_point(ctx, attachment, boom);
    let to = |by: f64| {
        kinematics::position_for(&ctx.machine.boom, attachment, DVec2::new(tool.x + by, tool.z), boom.fork_tilt)
    };
    if let Ok(there) = to(moved) {
        return core::iter::once((there, 0.0)).chain(None);
    }
    let (mut good, mut bad) = (0.0, moved);
    while libm::fabs(bad - good) > 0.001 {
        let middle = f64::midpoint(good, bad);
        if to(middle).is_ok() { good = middle } else { bad = middle }
    }
    let last = to(good).unwrap_or(boom);
    core::iter::once((boom, moved)).chain(Some((last, moved - good)))
}

/// `None` if the boom does not get there.
pub(crate) fn statics(ctx: &Context<'_>, posed: &Posed, attachment: &Attachment) -> Option<Statics> {
    let (mut search, wind_moment) = corners(ctx, posed, attachment)?;
    search.tilts();
    search.least_factor();
    with_wind(ctx, &search, wind_moment)
}

/// The forces on the contacts alone, which do not go with what the contacts give: no tilt and no load factor is in it.
pub(crate) fn forces(ctx: &Context<'_>, posed: &Posed, attachment: &Attachment) -> Option<Statics> {
    let (search, wind_moment) = corners(ctx, posed, attachment)?;
    with_wind(ctx, &search, wind_moment)
}

/// Every corner, and the greatest moment of the wind about the ground, N·m.
fn corners<'c, 'a>(ctx: &'c Context<'a>, posed: &Posed, attachment: &Attachment) -> Option<(Search<'c, 'a>, f64)> {
    Some(corners_of(ctx, posed, attachment, tried(ctx, posed, attachment)?))
}

/// The same of these positions alone.
fn corners_of<'c, 'a>(
    ctx: &'c Context<'a>,
    posed: &Posed,
    attachment: &Attachment,
    tried: impl IntoIterator<Item = Tried>,
) -> (Search<'c, 'a>, f64) {
    let load = ctx.load;
    let gust = ctx.lift.wind.map(|w| w.gust.si());
    let mut search = Search::new(ctx, gust);
    let mut wind_moment = 0.0_f64;
    for Tried { boom, ahead, loaded, up, .. } in tried {
        let tool = tool_point(ctx, attachment, boom);
        let (with_load, without) = wind(ctx, gust, boom);
        wind_moment = wind_moment.max(with_load.about_ground());
        let swung = swung(ctx, tool);
        let ends: &[f64] = if swung > 0.0 { &[-1.0, 1.0] } else { &[0.0] };
        let places: Vec<DVec3> = aside(ctx, tool)
            .into_iter()
            .flat_map(|left| ends.iter().map(move |end| (left, end)))
            .map(|(left, end)| load_at(ctx, tool, boom, ahead + end * swung, left) + DVec3::Z * up)
            .collect();
        for (stance, gravities) in stances(ctx, posed, boom) {
            let stand = search.stand(stance);
            let lines = search.lines(stand);
            let about = |wind: WindLoad| lines.map(|line| wind.overturning(&line));
            let (about_loaded, about_bare) = (about(with_load), about(without));
            let corner = |masses, gravity, loaded| {
                let (wind, overturning) = if loaded { (with_load, about_loaded) } else { (without, about_bare) };
                Corner { loading: Loading { masses, gravity, wind }, boom, stance, stand, loaded, overturning }
            };
            let described = Masses::standing(ctx.machine, attachment, boom, stance);
            for fitted in fitted::changes(ctx, stance).into_iter().map(|change| described.and(change)) {
                // Not stated how much of the attachment a side shift takes along: nothing, and all of it.
                for bare in shifted(fitted, attachment, ctx.lift.side_shift) {
                    // The load is also taken away: set down, boom still up.
                    for gravity in &gravities {
                        search.take(corner(bare, *gravity, false), None);
                    }
                    if !loaded {
                        continue;
                    }
                    for at in &places {
                        let heaviest = LoadOnBoom { mass: load.mass_kg.high, at: *at };
                        let lightest = LoadOnBoom { mass: load.mass_kg.low, at: *at };
                        for gravity in &gravities {
                            search.take(corner(bare.with(heaviest), *gravity, true), Some(heaviest));
                            search.take(corner(bare.with(lightest), *gravity, true), Some(lightest));
                            // The factor goes with one over the mass: the heaviest is the worst.
                            search.factor(corner(bare, *gravity, true), heaviest);
                        }
                    }
                }
            }
        }
    }
    (search, wind_moment)
}

/// True if load factor and tilt are enough with the load at the landing.
pub(crate) fn landing_holds(ctx: &Context<'_>, posed: &Posed, attachment: &Attachment) -> bool {
    let Some(tried) = tried(ctx, posed, attachment) else { return false };
    hold(ctx, posed, attachment, tried.into_iter().filter(|t| t.landing))
}

/// True if load factor and tilt are enough at all of these positions.
pub(crate) fn hold(
    ctx: &Context<'_>,
    posed: &Posed,
    attachment: &Attachment,
    tried: impl IntoIterator<Item = Tried>,
) -> bool {
    let (mut search, _) = corners_of(ctx, posed, attachment, tried);
    search.tilts();
    search.least_factor();
    let passes = |s: &Statics| s.factor_status(ctx).max(s.tilt_status()) <= Status::Condition;
    search.found.as_ref().is_some_and(passes)
}

fn with_wind(ctx: &Context<'_>, search: &Search<'_, '_>, wind_moment: f64) -> Option<Statics> {
    let mut found = search.found?;
    // Wind presses on the lee contacts besides; its greatest share on any of them, from any side.
    let shares = search
        .stands
        .iter()
        .filter(|s| s.stance.support.state == ctx.lift.support)
        .map(|s| stability::wind_on_contacts(ctx.machine, s.stance.support));
    let share = shares.fold([0.0; 4], |most: [f64; 4], s| core::array::from_fn(|i| most[i].max(s[i])));
    for (i, share) in share.into_iter().enumerate() {
        found.force[i] += wind_moment * share;
        found.least.force[i] -= wind_moment * share;
    }
    found.uneven.wind(share.map(|s| wind_moment * s));
    Some(found)
}

/// How the machine may stand with the boom there: each stance with every direction of gravity that may go
/// with it. Carried, the frame is not levelled yet, the axle not locked, and no pad is down.
pub(super) fn stances(ctx: &Context<'_>, posed: &Posed, boom: BoomPosition) -> Vec<(Stance, Vec<DVec3>)> {
    let mut all: Vec<(Stance, Vec<DVec3>)> = Vec::new();
    let mut take = |levelled: Option<&Levelled>, support: SupportState, states: &[RearAxleState]| {
        for attitude in attitudes(&posed.ground, levelled) {
            for state in states {
                let stance = attitude.stance(support, *state);
                match all.iter_mut().find(|(known, _)| *known == stance) {
                    Some((_, gravities)) => gravities.push(attitude.gravity),
                    None => all.push((stance, vec![attitude.gravity])),
                }
            }
        }
    };
    take(posed.levelled.as_ref(), ctx.lift.support, lock(ctx, boom.angle).states());
    if boom.angle <= posed.carry.angle && boom.extension <= posed.carry.extension {
        take(None, SupportState::Tyres, &[RearAxleState::Free]);
    }
    all
}

/// The machine with the attachment where it is, and shifted sideways where a shift is stated.
pub(super) fn shifted(bare: Masses, attachment: &Attachment, shift: f64) -> impl Iterator<Item = Masses> {
    let mut moved = bare;
    moved.sprung_moment.y += attachment.mass.si() * shift;
    core::iter::once(bare).chain((shift != 0.0).then_some(moved))
}

/// The gust on everything, and on everything but the load.
pub(super) fn wind(ctx: &Context<'_>, gust: Option<f64>, boom: BoomPosition) -> (WindLoad, WindLoad) {
    let (Some(gust), Some(attachment)) = (gust, ctx.attachment) else { return (WindLoad::NONE, WindLoad::NONE) };
    let parts = wind_parts(ctx, attachment, boom, true);
    let (load, rest) =
        parts.split_last().map_or((&parts[..], &parts[..]), |(l, rest)| (core::slice::from_ref(l), rest));
    let without = WindLoad::of(gust, rest, &mut Silent);
    (without.and(WindLoad::of(gust, load, &mut Silent)), without)
}

impl Statics {
    pub(crate) fn factor_status(&self, ctx: &Context<'_>) -> Status {
        let required = ctx.policy.load_factor;
        match self.factor {
            Some((f, _)) if f.is_nan() => Status::CannotTell,
            Some((f, _)) if f < required => Status::NoGo,
            Some((f, _)) if f < required * NEAR => Status::Condition,
            // Enough, or no load tips it.
            Some(_) | None => Status::Go,
        }
    }

    /// What is left of load factor and tilt, with the check and the boom position of each.
    pub(crate) fn least_reserves(&self, ctx: &Context<'_>) -> impl Iterator<Item = (f64, &'static str, BoomPosition)> {
        let factor = self.factor.zip(self.factor_corner);
        let factor = factor.map(|((f, _), (c, _))| (spare(ctx.policy.load_factor, f), "load-factor", c.boom));
        let tilt = (spare(self.tilt_required, self.tilt), "tilt", self.tilt_corner.boom);
        factor.into_iter().chain([tilt])
    }

    pub(crate) fn tilt_status(&self) -> Status {
        if self.tilt.is_nan() {
            Status::CannotTell
        } else if self.tilt < self.tilt_required {
            Status::NoGo
        } else if self.tilt < self.tilt_required * NEAR {
            Status::Condition
        } else {
            Status::Go
        }
    }
}

pub(crate) fn side(over: TipsOver) -> Message {
    match over {
        TipsOver::Front => text::SIDE_FRONT,
        TipsOver::Rear => text::SIDE_REAR,
        TipsOver::Left => text::SIDE_LEFT,
        TipsOver::Right => text::SIDE_RIGHT,
    }
    .message()
}

pub(crate) fn not_done(check: &'static str, posed: Result<&Posed, &NotPosed>) -> Finding {
    let (why, remedy) = why_not(posed);
    Finding::new(check, Status::CannotTell, text::STATICS_NOT_DONE.with("why", why))
        .remedy(remedy)
        .source(Source::Mechanics)
}

pub(crate) fn factor_finding(ctx: &Context<'_>, s: &Statics) -> Finding {
    let status = s.factor_status(ctx);
    let required = ctx.policy.load_factor;
    let (Some((factor, _)), Some((at_rest, load))) = (s.factor, s.factor_corner) else {
        let message = text::LOAD_FACTOR_NEVER.with("required", Quantity::number(required));
        return Finding::new("load-factor", status, message).source(Source::CommonPractice);
    };
    let mut working = Working::default();
    corner_steps(ctx, s.gust, &at_rest, &mut working);
    let rigid = load_factor(&at_rest.loading, load, &tipping_lines(ctx.machine, at_rest.stance), &mut working);
    working.step(|| {
        let rigid = Quantity::number(rigid.map_or(f64::NAN, |(k, _)| k));
        let soft = ("k_s", Quantity::number(factor));
        on_tyres(ctx, text::WORKING_FACTOR_ON_TYRES, "δ_s(k_s · W) = 0", ("k", rigid), soft)
    });
    let id = if factor < required { text::LOAD_FACTOR_SHORT } else { text::LOAD_FACTOR_ENOUGH };
    let message = id
        .with("factor", Quantity::number(factor))
        .with("required", Quantity::number(required))
        .with("tipping", super::kilograms(factor * load.mass));
    let mut finding = Finding::new("load-factor", status, message)
        .at_least(Quantity::number(required), Quantity::number(factor), spare(required, factor))
        .source(Source::CommonPractice)
        .working(working);
    if status != Status::Go {
        finding = finding.remedy(text::DO_LESS_REACH);
    }
    finding
}

pub(crate) fn tilt_finding(ctx: &Context<'_>, s: &Statics) -> Finding {
    let status = s.tilt_status();
    let mut working = Working::default();
    corner_steps(ctx, s.gust, &s.tilt_corner, &mut working);
    let rigid = tilt_reserve(&s.tilt_corner.loading, &s.tilt_line, &mut working);
    let on = super::tyres::springs(ctx, s.tilt_corner.stance.support.state);
    let line = LineOnSprings::of(ctx.machine, s.tilt_corner.stance, &s.tilt_line, on);
    working.step(|| {
        let ([first, second], lean) = line.given(&s.tilt_corner.loading);
        let formula = "δ_s = min(δ, δ(P_i + s_i · n · cos δ) − φ · (1.15 + 0.8 · φ) · cos(δ − φ))";
        let (rigid, soft) = (("δ", angle(rigid)), ("δ_s", angle(s.tilt)));
        let mut step = on_tyres(ctx, text::WORKING_TILT_ON_TYRES, formula, rigid, soft);
        step.values.extend([
            ("s_1".into(), super::metres(first)),
            ("s_2".into(), super::metres(second)),
            ("φ".into(), angle(lean)),
        ]);
        step
    });
    let said = |id: evidence::TextId| {
        id.with("tilt", angle(s.tilt)).with("required", angle(s.tilt_required)).with("side", side(s.over))
    };
    let message = if s.tilt <= 0.0 {
        text::TILT_TIPS.with("side", side(s.over))
    } else if status == Status::NoGo {
        said(text::TILT_SHORT)
    } else {
        said(text::TILT_ENOUGH)
    };
    let mut finding = Finding::new("tilt", status, message)
        .at_least(angle(s.tilt_required), angle(s.tilt), spare(s.tilt_required, s.tilt))
        .source(Source::from_memory("ISO 22915-14 (kind of test; low confidence)"))
        .working(working);
    if status != Status::Go {
        finding = finding.remedy(text::DO_LESS_REACH);
    }
    finding
}

/// What stood on rigid contacts, and what is left on contacts that give.
fn on_tyres(
    ctx: &Context<'_>,
    title: evidence::TextId,
    formula: &'static str,
    rigid: (&'static str, Quantity),
    soft: (&'static str, Quantity),
) -> Step {
    let springs = springs(ctx);
    let stiffness = |si| Quantity::new(si, Dimension::Stiffness);
    Step {
        title: title.message(),
        formula: formula.into(),
        values: vec![
            (rigid.0.into(), rigid.1),
            ("c_front".into(), stiffness(springs.front)),
            ("c_rear".into(), stiffness(springs.rear)),
        ],
        result: (soft.0.into(), soft.1),
        source: Source::from_memory("Rhyne 2005, Tire Science and Technology 33(3); Lines and Murphy 1991"),
    }
}

/// Which corner it is, and the wind on it part by part.
fn corner_steps(ctx: &Context<'_>, gust: Option<f64>, corner: &Corner, trace: &mut impl Trace) {
    trace.step(|| Step {
        title: if corner.loaded { text::WORKING_CORNER_LOADED } else { text::WORKING_CORNER_UNLADEN }.message(),
        formula: "ĝ = (−i_along, i_across, −1) / |…|".into(),
        values: vec![
            ("θ".into(), angle(corner.boom.angle)),
            ("e".into(), super::metres(corner.boom.extension)),
            ("ĝ_x".into(), Quantity::number(corner.loading.gravity.x)),
            ("ĝ_y".into(), Quantity::number(corner.loading.gravity.y)),
            ("ĝ_z".into(), Quantity::number(corner.loading.gravity.z)),
        ],
        result: ("Σm".into(), super::kilograms(corner.loading.masses.total())),
        source: Source::Mechanics,
    });
    let Stance { support, front_roll, rear_roll } = corner.stance;
    trace.step(|| Step {
        title: match support.rear {
            RearAxleState::Free => text::WORKING_STANDS_FREE,
            RearAxleState::Locked => text::WORKING_STANDS_LOCKED,
        }
        .message(),
        formula: "ρ_f = ρ_ground,f − ρ_frame,  ρ_r = ρ_ground,r − ρ_frame".into(),
        values: vec![("ρ_f".into(), angle(front_roll))],
        result: ("ρ_r".into(), angle(rear_roll)),
        source: Source::Mechanics,
    });
    let (Some(gust), Some(attachment)) = (gust, ctx.attachment) else { return };
    WindLoad::of(gust, &wind_parts(ctx, attachment, corner.boom, corner.loaded), trace);
}
