//! Statics of which it is proven, without reckoning every corner in full, that it refuses nothing: for searches that ask many
//! stands.
//!
//! The same positions, stances, masses, loads, winds and directions of gravity as [`super::statics`] and [`super::sudden`]
//! ask, put together so that what does not change is worked out once. Nothing is said where it is not proven: then the full
//! check is asked. The forces are those of the full check but for round-off, which they are widened by.

use super::statics::{Tried, aside, load_at, required, shifted, stances, swung, tried, wind};
use super::{NEAR, contacts, fitted, sudden, tyres};
use crate::context::Context;
use crate::posed::{Posed, tool_point};
use evidence::{Ranged, Status};
use geometry::DVec3;
use machine::{Attachment, BoomPosition, Load, SupportState};
use quantity::Si;
use stability::wind::WindLoad;
use stability::{
    KeptTilt, LineOnSprings, LinearReactions, LoadOnBoom, Loading, Masses, RearAxleState, Stance, Support,
    load_dropped, load_factor_on_springs, lowered, surely_borne, surely_borne_by_all, tipping_lines,
};

/// More than the load factor asks for: it is found to within a ten-thousandth.
const FACTOR_FOUND: f64 = 1.001;
/// Forces are widened by this share of the heaviest contact.
const ROUND: f64 = 1e-9;

/// What is proven: nothing of it refuses.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Surely {
    /// No less than the greatest force on each contact, N.
    pub(crate) force: [f64; 4],
    /// The worst of load factor, tilt, light contacts and what happens all at once: go or a condition.
    pub(crate) status: Status,
}

/// One stance with what does not go with the boom.
struct Stood {
    stance: Stance,
    lines: [LineOnSprings; 6],
    gravities: Vec<DVec3>,
    /// Machine without boom, with every change of what is fitted.
    under: Vec<Masses>,
    forces: Vec<Forces>,
}

/// Forces on the contacts in one direction of gravity.
struct Forces {
    linear: LinearReactions,
    /// Of the rear axle's own weight, by what is fitted.
    axle: Vec<[f64; 4]>,
    /// True where a contact that would have to pull changes the forces: a locked axle.
    pushes_only: bool,
}

impl Stood {
    fn overturning(&self, winds: (WindLoad, WindLoad)) -> [f64; 6] {
        self.lines.map(|line| {
            let [a, b] = [winds.0, winds.1].map(|wind| wind.overturning(&line.rigid));
            // What is no number stays so.
            if a >= b || a.is_nan() { a } else { b }
        })
    }

    fn of(ctx: &Context<'_>, stance: Stance, gravities: Vec<DVec3>) -> Self {
        let springs = tyres::springs(ctx, stance.support.state);
        let lines =
            tipping_lines(ctx.machine, stance).map(|line| LineOnSprings::of(ctx.machine, stance, &line, springs));
        let described = Masses::under_boom(ctx.machine, stance);
        let under: Vec<_> = fitted::changes(ctx, stance).into_iter().map(|change| described.and(change)).collect();
        let mut forces = Vec::new();
        // Driven on its tyres to stand on pads: none of them.
        if stance.support.state == ctx.lift.support {
            let locked = stance.support.rear == RearAxleState::Locked;
            // A locked axle carries from before it locked on.
            let may_be_free = locked && stance.support.state != SupportState::Outriggers;
            let free = Stance { support: Support { rear: RearAxleState::Free, ..stance.support }, ..stance };
            for (on, pushes_only) in [(stance, locked)].into_iter().chain(may_be_free.then_some((free, false))) {
                forces.extend(gravities.iter().map(|gravity| {
                    let linear = LinearReactions::of(ctx.machine, on, *gravity);
                    let axle = under.iter().map(|m| linear.of_axle(m)).collect();
                    Forces { linear, axle, pushes_only }
                }));
            }
        }
        Self { stance, lines, gravities, under, forces }
    }
}

/// Greatest and least force on each contact so far, N.
struct Range {
    most: [f64; 4],
    least: [f64; 4],
    /// False once a locked axle would have to pull.
    pushes: bool,
}

impl Range {
    fn take(&mut self, by: &Forces, fitted: usize, masses: &Masses) {
        let force = by.linear.forces(masses, &by.axle[fitted]);
        for (i, force) in force.into_iter().enumerate() {
            self.most[i] = self.most[i].max(force);
            self.least[i] = self.least[i].min(force);
            self.pushes &= force.is_finite() && (!by.pushes_only || force > 0.0);
        }
    }
}

/// What must be kept over each tipping line: not to be refused, and to be more than a condition.
struct Asked {
    tilt: [Kept; 6],
    none: KeptTilt,
    /// Times the load: as required, and a quarter more.
    factor: [f64; 2],
}

/// A tilt that is required, and a quarter more.
#[derive(Clone, Copy)]
struct Kept {
    required: KeptTilt,
    near: KeptTilt,
    /// The same in rad.
    required_tilt: f64,
    near_tilt: f64,
}

impl Asked {
    fn of(ctx: &Context<'_>) -> Option<Self> {
        use stability::TipsOver::{Front, Left, Rear, Right};
        let kept = |over| {
            let required = required(ctx, over);
            let of = |tilt: f64| KeptTilt::of(tilt * (1.0 + ROUND));
            Some(Kept {
                required: of(required)?,
                near: of(required * NEAR)?,
                required_tilt: required,
                near_tilt: required * NEAR,
            })
        };
        let [front, rear, left, right] = [kept(Front)?, kept(Rear)?, kept(Left)?, kept(Right)?];
        let required = ctx.policy.load_factor;
        let factor = [required, required * NEAR].map(|f| f * FACTOR_FOUND);
        let tilt = [front, rear, left, right, left, right];
        (required >= 1.0).then_some(Self { tilt, none: KeptTilt::of(0.0)?, factor })
    }
}

/// A number against what is required and what is more than a condition.
#[derive(Clone, Copy, PartialEq)]
enum Told {
    Go,
    Condition,
}

/// `None`: refused, or so near to a limit that round-off decides, or not a number.
fn told(value: f64, required: f64, near: f64) -> Option<Told> {
    let clear = |limit: f64| (value - limit).abs() > ROUND * limit.abs();
    if !(value >= required && clear(required) && clear(near)) {
        return None;
    }
    Some(if value < near { Told::Condition } else { Told::Go })
}

/// Proves of one lift that load factor and tilt refuse nothing, or says nothing.
///
/// `graded` false: whether it is go or a condition is not asked.
pub(crate) fn surely(ctx: &Context<'_>, posed: &Posed, attachment: &Attachment, graded: bool) -> Option<Surely> {
    proven(ctx, posed, attachment, graded, false)
}

/// Proves it of every load from none to one of that mass (kg) at its place: go, unless `graded` is false. The forces are no
/// less than under any of them.
///
/// Every moment and force is linear in the load's mass, and what is proven at both ends holds between; where only a single
/// load's numbers would tell, nothing is said.
pub(crate) fn surely_all(
    ctx: &Context<'_>,
    posed: &Posed,
    attachment: &Attachment,
    graded: bool,
    mass_kg: f64,
) -> Option<Surely> {
    let load = Load { mass_kg: Ranged { low: 0.0, nominal: mass_kg, high: mass_kg }, ..ctx.load.clone() };
    // Another movement passes places that go with the weight.
    if ctx.turns.is_some() || !mass_kg.is_finite() {
        return None;
    }
    let proven = proven(&Context { load: &load, ..*ctx }, posed, attachment, graded, true)?;
    (!graded || proven.status == Status::Go).then_some(proven)
}

fn proven(ctx: &Context<'_>, posed: &Posed, attachment: &Attachment, graded: bool, every: bool) -> Option<Surely> {
    let asked = Asked::of(ctx)?;
    let gust = ctx.lift.wind.map(|w| w.gust.si());
    let heavy = ctx.load.mass_kg.high;
    if !(0.0..=heavy).contains(&ctx.load.mass_kg.low) {
        return None;
    }
    let mut grade = if graded { Told::Go } else { Told::Condition };
    let mut stood: Vec<Stood> = Vec::with_capacity(8);
    let mut range = Range { most: [f64::NEG_INFINITY; 4], least: [f64::INFINITY; 4], pushes: true };
    let mut wind_moment = 0.0_f64;
    for Tried { boom, ahead, loaded, landing, up } in tried(ctx, posed, attachment)? {
        // How far such a place lies off goes with the weight.
        if every && up != 0.0 {
            return None;
        }
        let winds = wind(ctx, gust, boom);
        wind_moment = wind_moment.max(winds.0.about_ground());
        let places = if loaded { places(ctx, attachment, boom, (ahead, up)) } else { Vec::new() };
        let of_boom = Masses::of_boom(ctx.machine, attachment, boom);
        for (stance, gravities) in stances(ctx, posed, boom) {
            let known = stood.iter().position(|s| s.stance == stance && s.gravities == gravities);
            let i = known.unwrap_or(stood.len());
            if known.is_none() {
                stood.push(Stood::of(ctx, stance, gravities));
            }
            let on = &stood[i];
            let at = OnBoom { ctx, attachment, boom, on, winds, overturning: on.overturning(winds), every };
            // As [`super::sudden`] asks it: the load at rest, the carriage not shifted.
            let at_rest = if landing { at_rest(ctx, attachment, boom, ahead) } else { Vec::new() };
            for (fitted, under) in on.under.iter().enumerate() {
                for place in &at_rest {
                    let load = LoadOnBoom { mass: heavy, at: *place };
                    at.all_at_once(&under.and(of_boom), load, &mut grade)?;
                }
                for bare in shifted(under.and(of_boom), attachment, ctx.lift.side_shift) {
                    on.forces.iter().for_each(|by| range.take(by, fitted, &bare));
                    if places.is_empty() {
                        at.bare(&asked, &bare, &mut grade)?;
                    }
                    for place in &places {
                        let load = LoadOnBoom { mass: heavy, at: *place };
                        at.loaded(&asked, &bare, load, &mut grade)?;
                        on.forces.iter().for_each(|by| range.take(by, fitted, &bare.with(load)));
                    }
                }
            }
        }
    }
    carried(ctx, posed, attachment, &stood, range, wind_moment, grade)
}

/// Places of the load's weight for a boom position while it does not swing ahead or back.
fn at_rest(ctx: &Context<'_>, attachment: &Attachment, boom: BoomPosition, ahead: f64) -> Vec<DVec3> {
    let tool = tool_point(ctx, attachment, boom);
    aside(ctx, tool).map(|left| load_at(ctx, tool, boom, ahead, left)).to_vec()
}

/// Places of the load's weight for a boom position, each once.
fn places(ctx: &Context<'_>, attachment: &Attachment, boom: BoomPosition, (ahead, up): (f64, f64)) -> Vec<DVec3> {
    let tool = tool_point(ctx, attachment, boom);
    let swung = swung(ctx, tool);
    let ends: &[f64] = if swung > 0.0 { &[-1.0, 1.0] } else { &[0.0] };
    let mut places: Vec<DVec3> = Vec::with_capacity(4);
    for left in aside(ctx, tool) {
        for end in ends {
            let at = load_at(ctx, tool, boom, ahead + end * swung, left) + DVec3::Z * up;
            if !places.contains(&at) {
                places.push(at);
            }
        }
    }
    places
}

/// One position of the boom on one stance.
struct OnBoom<'c, 'a> {
    ctx: &'c Context<'a>,
    attachment: &'c Attachment,
    boom: BoomPosition,
    on: &'c Stood,
    /// With the load, and without.
    winds: (WindLoad, WindLoad),
    /// Moment of either wind about each line, the greater, N·m.
    overturning: [f64; 6],
    /// Every load from none to the heaviest is asked.
    every: bool,
}

impl OnBoom<'_, '_> {
    /// True if every load from none to the one of `ends` keeps its tilt over a line: cheap, and false says nothing.
    fn keeps(&self, ends: [&Masses; 2], k: usize, kept: KeptTilt) -> bool {
        self.on.lines[k].surely_keeps(ends, &self.on.gravities, self.overturning[k], kept)
    }

    /// The tilt of one loading over a line against what is asked, exactly. `None` ends the proof.
    fn tilts(&self, masses: &Masses, wind: WindLoad, k: usize, kept: &Kept, grade: &mut Told) -> Option<()> {
        let line = &self.on.lines[k];
        let overturning = wind.overturning(&line.rigid);
        for gravity in &self.on.gravities {
            let loading = Loading { masses: *masses, gravity: *gravity, wind };
            let asked = if *grade == Told::Go { kept.near } else { kept.required };
            if line.sine_at_least(&loading, overturning) >= asked.sine() {
                continue;
            }
            if told(line.tilt(&loading), kept.required_tilt, kept.near_tilt)? == Told::Condition {
                *grade = Told::Condition;
            }
        }
        Some(())
    }

    /// The machine without load.
    fn bare(&self, asked: &Asked, bare: &Masses, grade: &mut Told) -> Option<()> {
        for (k, kept) in asked.tilt.iter().enumerate() {
            let enough = if *grade == Told::Go { kept.near } else { kept.required };
            if !self.keeps([bare, bare], k, enough) {
                self.tilts(bare, self.winds.1, k, kept, grade)?;
            }
        }
        Some(())
    }

    /// The machine with no load, the lightest and the heaviest at its place, and how many times the heaviest tips it.
    fn loaded(&self, asked: &Asked, bare: &Masses, load: LoadOnBoom, grade: &mut Told) -> Option<()> {
        let with = bare.with(load);
        for (k, kept) in asked.tilt.iter().enumerate() {
            let enough = if *grade == Told::Go { kept.near } else { kept.required };
            if self.keeps([bare, &with], k, enough) {
                continue;
            }
            if self.every {
                return None;
            }
            self.tilts(bare, self.winds.1, k, kept, grade)?;
            self.tilts(&with, self.winds.0, k, kept, grade)?;
            let light = LoadOnBoom { mass: self.ctx.load.mass_kg.low, ..load };
            if light.mass < load.mass {
                self.tilts(&bare.with(light), self.winds.0, k, kept, grade)?;
            }
        }
        let enough = if *grade == Told::Go { asked.factor[1] } else { asked.factor[0] };
        let more = bare.with(LoadOnBoom { mass: load.mass * enough, ..load });
        let least = if self.every { bare } else { &more };
        if !(0..6).all(|k| self.keeps([least, &more], k, asked.none)) {
            if self.every {
                return None;
            }
            self.factor(asked, bare, load, grade)?;
        }
        Some(())
    }

    /// The load factor against what is asked, exactly but for the step in which it is found.
    fn factor(&self, asked: &Asked, bare: &Masses, load: LoadOnBoom, grade: &mut Told) -> Option<()> {
        let overturning = self.on.lines.map(|line| self.winds.0.overturning(&line.rigid));
        for gravity in &self.on.gravities {
            let loading = Loading { masses: *bare, gravity: *gravity, wind: self.winds.0 };
            let least = |most: f64| load_factor_on_springs(&self.on.lines, &overturning, &loading, load, most);
            // Once it is a condition only the requirement is asked.
            let most = if *grade == Told::Go { asked.factor[1] } else { asked.factor[0] };
            let Some((factor, _)) = least(most) else { continue };
            let [required, near] = asked.factor;
            let down = |f: f64| f / FACTOR_FOUND / FACTOR_FOUND;
            let between = |limit: f64| !(factor < down(limit) || factor > limit);
            let enough = factor >= required;
            if !enough || between(required) || (*grade == Told::Go && between(near)) {
                return None;
            }
            if factor < near {
                *grade = Told::Condition;
            }
        }
        Some(())
    }

    /// What happens all at once refuses nothing: only go is told from a condition.
    fn all_at_once(&self, bare: &Masses, load: LoadOnBoom, grade: &mut Told) -> Option<()> {
        if *grade == Told::Condition {
            return Some(());
        }
        let with = &bare.with(load);
        let lowered = |load| lowered(self.ctx.machine, self.attachment, self.boom, load);
        let moving = lowered(Some(load));
        let flex = sudden::give(self.ctx, load);
        let stop = (moving, sudden::usual_stop());
        for k in 0..6 {
            let (line, gravities, overturning) = (&self.on.lines[k].rigid, &self.on.gravities, self.overturning[k]);
            if self.every {
                let stop = ([lowered(None), moving], stop.1);
                if !surely_borne_by_all([bare, with], gravities, overturning, (load, flex), stop, line) {
                    return None;
                }
                continue;
            }
            if surely_borne(with, gravities, overturning, (load, flex), stop, line) {
                continue;
            }
            for gravity in &self.on.gravities {
                let loading = Loading { masses: *with, gravity: *gravity, wind: self.winds.0 };
                let stopped = sudden::stopped(&loading, moving, stop.1, line);
                let left = load_dropped(&loading, load, flex, line).reserve;
                for left in [stopped, left] {
                    // What is no number, or so near to nothing that round-off decides, is for the whole check.
                    let clear = left.abs() > ROUND;
                    if !clear {
                        return None;
                    }
                    if left < 0.0 {
                        *grade = Told::Condition;
                        return Some(());
                    }
                }
            }
        }
        Some(())
    }
}

/// The forces with the wind's share, and the grade of all.
fn carried(
    ctx: &Context<'_>,
    posed: &Posed,
    attachment: &Attachment,
    stood: &[Stood],
    mut range: Range,
    wind_moment: f64,
    mut grade: Told,
) -> Option<Surely> {
    let shares = stood
        .iter()
        .filter(|s| s.stance.support.state == ctx.lift.support)
        .map(|s| stability::wind_on_contacts(ctx.machine, s.stance.support));
    let share = shares.fold([0.0; 4], |most: [f64; 4], s| core::array::from_fn(|i| most[i].max(s[i])));
    let round = ROUND * range.most.iter().copied().fold(0.0, f64::max);
    for (i, share) in share.into_iter().enumerate() {
        range.most[i] += wind_moment * share + round;
        range.least[i] -= wind_moment * share + round;
    }
    if !range.pushes {
        return None;
    }
    let level = contacts::level_forces(ctx, posed, attachment);
    for (least, level) in range.least.into_iter().zip(level) {
        // What is no number is neither.
        if !(level > 0.0 && least.is_finite()) {
            return None;
        }
        // A light contact refuses nothing.
        if told(least, f64::MIN, contacts::LIGHT * level)? == Told::Condition {
            grade = Told::Condition;
        }
    }
    let status = if grade == Told::Go { Status::Go } else { Status::Condition };
    Some(Surely { force: range.most, status })
}
