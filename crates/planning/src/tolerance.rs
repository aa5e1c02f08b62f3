//! How much more of one thing a lift bears until its verdict turns to no-go: a heavier load, a load centre
//! off to a side, a steeper ground, a stronger gust, one wheel lower.
//!
//! The whole check is made again with each change, as it is made for the plan. The first value at which it
//! turns is looked for from zero outward in even steps, then between the two steps by
//! halving: a check that turns and turns back farther out is found at its first turn, unless both lie
//! between two steps.
//!
//! *Alone*: every uncertain input at its nominal value (ranges, stand error, boom flex, the level
//! indicator's error and the survey's accuracy are nothing). *At the worst corner*: as the verdict is reckoned. What is stated and not
//! uncertain stays as it is in both: the gust at which work stops, the swing of a hung load, side shift,
//! the allowances over lines.

use crate::check::{LiftCheck, check_context, refused_at_once};
use crate::checks::level::contact_names;
use crate::checks::statics::side;
use crate::checks::{angle, kilograms, metres, wind};
use crate::context::Context;
use crate::posed::contacts;
use crate::set_backs::SetBacks;
use crate::stand_field::refuses_nothing;
use crate::{Lift, Policy, WindInput, text};
use evidence::{Message, Ranged, TextId, Verdict};
use geometry::DVec2;
use machine::{Load, Machine};
use quantity::{Dimension, Quantity, Si, metres_per_second, radians};
use serde::{Deserialize, Serialize};
use stability::TipsOver;

/// What is tried.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum ToleranceOf {
    /// Mass of the load, kg.
    LoadMass,
    /// Load centre off to the left or right, the worse, m.
    LoadAside,
    /// Slope of the ground in the worst of eight directions, rad, put on the surveyed one as rise over run.
    Slope,
    /// Gust at the height of load and boom, m/s. The maker's wind limit is not among what turns.
    Gust,
    /// Ground lower under one wheel or pad, the worst of the four, m.
    OneWheelLower,
    /// All five at once; 1 is one step of each ([`STEPS`]).
    Together,
}

/// How much a lift bears of one thing.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub struct Tolerance {
    /// What grows.
    pub what: ToleranceOf,
    /// What it grows from, where that is a number of the plan: load mass (kg), gust (m/s).
    pub planned: Option<f64>,
    /// With every other uncertain input at its nominal value; `null` where that is not asked.
    pub alone: Option<Borne>,
    /// With every other uncertain input at its worst.
    pub at_worst: Borne,
}

/// How much is borne.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub struct Borne {
    /// The most that is borne; where nothing turned, how far it was tried. Unit by what grows.
    pub most: f64,
    /// The check that turns just beyond, by its id; `null`: none does as far as it was tried.
    pub turned_by: Option<String>,
    /// The worst way: which side, which direction, which wheel.
    pub way: Option<Message>,
    /// For a gust: the forecast mean at 10 m (m/s) that brings planned gust and this, over open water.
    pub mean: Option<f64>,
}

/// One step of each for [`ToleranceOf::Together`]: share of the load's mass, load centre to a side (m),
/// slope (rad), gust (m/s), one wheel lower (m). Our own figures: what a site is out by on a usual day.
pub const STEPS: [f64; 5] = [0.05, 0.05, core::f64::consts::PI / 180.0, 2.0, 0.03];

/// How far each is tried: share of the load's mass, m, rad, m/s, m; and steps of all together. Our own
/// figures: beyond that it is another lift.
const FAR: [f64; 5] = [2.0, 1.0, 15.0 * core::f64::consts::PI / 180.0, 50.0, 0.5];
const FAR_TOGETHER: f64 = 4.0;
/// Steps of the scan to the far end.
const SCAN: u32 = 16;
/// Halving ends at this share of the far end.
const FINE: f64 = 1e-3;

/// Directions of descent in the machine's frame (1 ahead, 1 to the left), and their names.
const DIAGONAL: f64 = core::f64::consts::FRAC_1_SQRT_2;
const DESCENTS: [(DVec2, TextId); 8] = [
    (DVec2::new(1.0, 0.0), text::DESCENT_AHEAD),
    (DVec2::new(DIAGONAL, DIAGONAL), text::DESCENT_AHEAD_LEFT),
    (DVec2::new(0.0, 1.0), text::DESCENT_LEFT),
    (DVec2::new(-DIAGONAL, DIAGONAL), text::DESCENT_BEHIND_LEFT),
    (DVec2::new(-1.0, 0.0), text::DESCENT_BEHIND),
    (DVec2::new(-DIAGONAL, -DIAGONAL), text::DESCENT_BEHIND_RIGHT),
    (DVec2::new(0.0, -1.0), text::DESCENT_RIGHT),
    (DVec2::new(DIAGONAL, -DIAGONAL), text::DESCENT_AHEAD_RIGHT),
];

impl ToleranceOf {
    /// What grows, in words.
    fn name(self) -> Message {
        match self {
            Self::LoadMass => text::TOLERANCE_LOAD_MASS.message(),
            Self::LoadAside => text::TOLERANCE_LOAD_ASIDE.message(),
            Self::Slope => text::TOLERANCE_SLOPE.message(),
            Self::Gust => text::TOLERANCE_GUST.message(),
            Self::OneWheelLower => text::TOLERANCE_WHEEL.message(),
            Self::Together => {
                let [share, aside, slope, gust, wheel] = STEPS;
                text::TOLERANCE_TOGETHER
                    .with("share", Quantity::ratio(share))
                    .with("aside", metres(aside))
                    .with("slope", angle(slope))
                    .with("gust", speed(gust))
                    .with("wheel", metres(wheel))
            }
        }
    }

    fn amount(self, borne: &Borne, planned: Option<f64>) -> Message {
        let most = borne.most;
        match self {
            Self::LoadMass => text::TOLERANCE_OF_MASS
                .with("amount", kilograms(most))
                .with("share", Quantity::ratio(planned.map_or(f64::NAN, |p| most / p))),
            Self::LoadAside | Self::OneWheelLower => text::TOLERANCE_PLAIN.with("amount", metres(most)),
            Self::Slope => text::TOLERANCE_PLAIN.with("amount", angle(most)),
            Self::Gust => {
                text::TOLERANCE_OF_GUST.with("amount", speed(most)).with("mean", speed(borne.mean.unwrap_or(f64::NAN)))
            }
            Self::Together => text::TOLERANCE_STEPS.with("amount", Quantity::ratio(most)),
        }
    }
}

impl Tolerance {
    /// A row of a table: what grows, how much is borne alone, how much at the worst corner, and what turns
    /// there.
    pub fn row(&self) -> [Message; 4] {
        let said = |b: &Borne| {
            let amount = self.what.amount(b, self.planned);
            if b.turned_by.is_some() { amount } else { text::TOLERANCE_NOT_BEFORE.with("amount", amount) }
        };
        let check =
            self.at_worst.turned_by.as_ref().map(|id| Message { id: format!("check-{id}").into(), args: Vec::new() });
        let turns = match (check, &self.at_worst.way) {
            (Some(check), Some(way)) => text::TOLERANCE_WAY.with("check", check).with("way", way.clone()),
            (Some(check), None) => text::TOLERANCE_NO_WAY.with("check", check),
            (None, _) => text::TOLERANCE_NOTHING.message(),
        };
        let alone = self.alone.as_ref().map_or_else(|| text::TOLERANCE_NOTHING.message(), said);
        [self.what.name(), alone, said(&self.at_worst), turns]
    }
}

impl Tolerance {
    /// What grows, and in one sentence how much of it is borne.
    pub fn fact(&self) -> [Message; 2] {
        let [name, alone, at_worst, turns] = self.row();
        let said = if self.alone.is_some() {
            text::TOLERANCE_FACT.with("alone", alone).with("at_worst", at_worst).with("turns", turns)
        } else {
            text::TOLERANCE_FACT_AT_WORST.with("at_worst", at_worst).with("turns", turns)
        };
        [name, said]
    }
}

fn speed(si: f64) -> Quantity {
    Quantity::new(si, Dimension::Speed)
}

/// What is changed at once. SI.
#[derive(Debug, Clone, Copy, Default)]
struct Change {
    mass: f64,
    left: f64,
    /// Rise over run, downhill.
    slope: DVec2,
    gust: f64,
    lowered: [f64; 4],
}

/// A lift to be tried with changes: at the worst corner or with all that is uncertain at its nominal value.
struct Trial<'a> {
    base: Context<'a>,
    load: Load,
    lift: Lift,
    machine: Machine,
    policy: Policy,
    /// Places of the contacts, machine frame, m.
    contacts: [DVec2; 4],
    /// The check that has turned before anything is changed.
    before: Option<&'static str>,
    /// Of the whole plan, while this trial goes on.
    set_backs: SetBacks,
}

impl<'a> Trial<'a> {
    fn at_worst(ctx: &Context<'a>, set_backs: SetBacks) -> Self {
        let c = contacts(ctx);
        let pair = |x: f64, y: f64| [DVec2::new(x, y), DVec2::new(x, -y)];
        let ([fl, fr], [rl, rr]) = (pair(c.front_x, c.front_half), pair(c.rear_x, c.rear_half));
        Self {
            base: *ctx,
            load: ctx.load.clone(),
            lift: ctx.lift.clone(),
            machine: ctx.machine.clone(),
            policy: ctx.policy.clone(),
            contacts: [fl, fr, rl, rr],
            before: None,
            set_backs,
        }
    }

    fn alone(ctx: &Context<'a>, set_backs: SetBacks) -> Self {
        let mut trial = Self::at_worst(ctx, set_backs);
        let load = &mut trial.load;
        for range in [&mut load.mass_kg, &mut load.centre_ahead, &mut load.centre_left, &mut load.centre_up] {
            *range = Ranged::exact(range.nominal);
        }
        trial.machine.boom.flex = 0.0;
        if let Some(levelling) = &mut trial.machine.levelling {
            levelling.indicator_error = radians(0.0);
        }
        trial.policy.stand_error = 0.0;
        trial.base.exact_ground = true;
        trial.before = trial.turned(&Change::default());
        trial
    }

    /// Where it first turns, as [`first_turn`] looks for it.
    fn first_turn(
        &mut self,
        ways: usize,
        far: f64,
        mut turned: impl FnMut(&mut Self, usize, f64) -> Option<&'static str>,
    ) -> Turn {
        match self.before {
            Some(check) => Turn { most: 0.0, found: Some((0, check)) },
            None => first_turn(ways, far, |way, by| turned(self, way, by)),
        }
    }

    /// The check that turns the verdict with a change.
    fn turned(&mut self, change: &Change) -> Option<&'static str> {
        let (mass, left) = (self.load.mass_kg, self.load.centre_left);
        let wind = self.lift.wind;
        self.load.mass_kg = moved(mass, change.mass);
        self.load.centre_left = moved(left, change.left);
        self.lift.wind = wind.map(|w| WindInput { gust: metres_per_second(w.gust.si() + change.gust) });
        let lowered =
            core::array::from_fn(|i| self.base.lowered[i] + change.lowered[i] + change.slope.dot(self.contacts[i]));
        let ctx = Context {
            load: &self.load,
            lift: &self.lift,
            machine: &self.machine,
            policy: &self.policy,
            lowered,
            ..self.base
        };
        // What is quickly told first.
        let turned = if refuses_nothing(&ctx, &mut self.set_backs) {
            None
        } else {
            refused_at_once(&ctx).or_else(|| check_context(ctx, &mut self.set_backs).refused_by())
        };
        (self.load.mass_kg, self.load.centre_left, self.lift.wind) = (mass, left, wind);
        turned
    }
}

fn moved(range: Ranged, by: f64) -> Ranged {
    Ranged { low: range.low + by, nominal: range.nominal + by, high: range.high + by }
}

/// Where it first turns: most that is borne, the way and the check.
struct Turn {
    most: f64,
    found: Option<(usize, &'static str)>,
}

/// The first value up to `far` at which any of `ways` turns, none having turned at zero. `turned` tells for
/// a way and a value.
fn first_turn(ways: usize, far: f64, mut turned: impl FnMut(usize, f64) -> Option<&'static str>) -> Turn {
    let mut good = 0.0;
    for step in 1..=SCAN {
        let at = far * f64::from(step) / f64::from(SCAN);
        if let Some(found) = (0..ways).find_map(|way| turned(way, at).map(|check| (way, check))) {
            return between(ways, (good, at), far * FINE, found, &mut turned);
        }
        good = at;
    }
    Turn { most: far, found: None }
}

/// The same between a value at which none turns and one at which `found` does: halving along that way alone,
/// until no other turns where it ends.
fn between(
    ways: usize,
    (passed, mut bad): (f64, f64),
    fine: f64,
    mut found: (usize, &'static str),
    turned: &mut impl FnMut(usize, f64) -> Option<&'static str>,
) -> Turn {
    loop {
        let mut good = passed;
        while bad - good > fine {
            let middle = f64::midpoint(good, bad);
            match turned(found.0, middle) {
                Some(check) => (bad, found.1) = (middle, check),
                None => good = middle,
            }
        }
        let others = (0..ways).filter(|way| *way != found.0);
        let sooner = if good > passed {
            others.into_iter().find_map(|way| turned(way, good).map(|check| (way, check)))
        } else {
            None
        };
        match sooner {
            Some(other) => (bad, found) = (good, other),
            None => return Turn { most: good, found: Some(found) },
        }
    }
}

/// The tolerances of a lift; none for a lift that is no-go.
pub(crate) fn tolerances(check: &LiftCheck<'_>, set_backs: &mut SetBacks) -> Vec<Tolerance> {
    let ctx = &check.ctx;
    if check.verdict() == Verdict::NoGo {
        return Vec::new();
    }
    set_backs.only_whether(true);
    let mut alone = Trial::alone(ctx, std::mem::take(set_backs));
    let mut worst = Trial::at_worst(ctx, SetBacks::default());
    let mut out = Vec::with_capacity(6);
    for kind in Kind::ALL {
        // Its weight acts at the hook, wherever its centre is.
        if kind == Kind::LoadAside && ctx.load.hanging.is_some() {
            continue;
        }
        let planned = kind.planned(ctx);
        let borne = |trial: &mut Trial<'_>| {
            let mut borne = kind.borne(ctx, trial);
            if kind == Kind::Gust {
                borne.mean = planned.map(|gust| wind::forecast_mean(check, gust + borne.most));
            }
            borne
        };
        // Both read and fill one store.
        let of_alone = borne(&mut alone);
        std::mem::swap(&mut alone.set_backs, &mut worst.set_backs);
        let at_worst = borne(&mut worst);
        std::mem::swap(&mut alone.set_backs, &mut worst.set_backs);
        out.push(Tolerance { what: kind.what(), planned, alone: Some(of_alone), at_worst });
    }
    std::mem::swap(&mut alone.set_backs, &mut worst.set_backs);
    let at_worst = together(ctx, &mut worst);
    *set_backs = worst.set_backs;
    set_backs.only_whether(false);
    out.push(Tolerance { what: ToleranceOf::Together, planned: None, alone: None, at_worst });
    out
}

/// The five that are tried one by one.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Kind {
    LoadMass,
    LoadAside,
    Slope,
    Gust,
    OneWheelLower,
}

impl Kind {
    const ALL: [Self; 5] = [Self::LoadMass, Self::LoadAside, Self::Slope, Self::Gust, Self::OneWheelLower];

    fn what(self) -> ToleranceOf {
        match self {
            Self::LoadMass => ToleranceOf::LoadMass,
            Self::LoadAside => ToleranceOf::LoadAside,
            Self::Slope => ToleranceOf::Slope,
            Self::Gust => ToleranceOf::Gust,
            Self::OneWheelLower => ToleranceOf::OneWheelLower,
        }
    }

    fn planned(self, ctx: &Context<'_>) -> Option<f64> {
        match self {
            Self::LoadMass => Some(ctx.load.mass_kg.nominal),
            Self::Gust => ctx.lift.wind.map(|w| w.gust.si()),
            _ => None,
        }
    }

    fn ways(self) -> usize {
        match self {
            Self::LoadMass | Self::Gust => 1,
            Self::LoadAside => 2,
            Self::Slope => DESCENTS.len(),
            Self::OneWheelLower => 4,
        }
    }

    fn far(self, ctx: &Context<'_>) -> f64 {
        let far = FAR[self as usize];
        if self == Self::LoadMass { far * ctx.load.mass_kg.nominal } else { far }
    }

    /// The change that one way of it is.
    fn add(self, change: &mut Change, way: usize, by: f64) {
        match self {
            Self::LoadMass => change.mass = by,
            Self::LoadAside => change.left = if way == 0 { by } else { -by },
            Self::Slope => change.slope = DESCENTS[way].0 * libm::tan(by),
            Self::Gust => change.gust = by,
            Self::OneWheelLower => change.lowered[way] = by,
        }
    }

    fn name(self, ctx: &Context<'_>, way: usize) -> Option<Message> {
        match self {
            Self::LoadMass | Self::Gust => None,
            Self::LoadAside => Some(side([TipsOver::Left, TipsOver::Right][way])),
            Self::Slope => Some(DESCENTS[way].1.message()),
            Self::OneWheelLower => Some(contact_names(ctx)[way].message()),
        }
    }

    fn borne(self, ctx: &Context<'_>, trial: &mut Trial<'_>) -> Borne {
        let turn = trial.first_turn(self.ways(), self.far(ctx), |trial, way, by| {
            let mut change = Change::default();
            self.add(&mut change, way, by);
            trial.turned(&change)
        });
        Borne {
            most: turn.most,
            turned_by: turn.found.map(|(_, check)| check.to_owned()),
            way: turn.found.and_then(|(way, _)| self.name(ctx, way)),
            mean: None,
        }
    }
}

/// All five at once, each step by step, in every combination of side, descent and wheel that pulls one way:
/// load centre and wheel on the side of the descent, the lowest wheel. At the end every other wheel is tried
/// too.
fn together(ctx: &Context<'_>, worst: &mut Trial<'_>) -> Borne {
    let mass = ctx.load.mass_kg.nominal;
    let turned = |trial: &mut Trial<'_>, (aside, descent, wheel): (usize, usize, usize), steps: f64| {
        let mut change = Change::default();
        for (kind, way) in Kind::ALL.into_iter().zip([0, aside, descent, 0, wheel]) {
            let one = STEPS[kind as usize] * if kind == Kind::LoadMass { mass } else { 1.0 };
            kind.add(&mut change, way, one * steps);
        }
        trial.turned(&change)
    };
    // Front left, front right, rear left, rear right.
    let contacts = [DVec2::new(1.0, 1.0), DVec2::new(1.0, -1.0), DVec2::new(-1.0, 1.0), DVec2::new(-1.0, -1.0)];
    let sideways = |aside: usize| if aside == 0 { 1.0 } else { -1.0 };
    let one_way = |(aside, descent, wheel): &(usize, usize, usize)| {
        let downhill = DESCENTS[*descent].0;
        let lowest = contacts.iter().map(|c| c.dot(downhill)).fold(f64::NEG_INFINITY, f64::max);
        contacts[*wheel].dot(downhill) > lowest - 1e-9 && contacts[*wheel].y * sideways(*aside) > 0.0
    };
    let every = (0..2).flat_map(|a| (0..8).flat_map(move |d| (0..4).map(move |wheel| (a, d, wheel))));
    // A load off uphill holds back: not tried.
    let every = every.filter(|(aside, descent, _)| sideways(*aside) * DESCENTS[*descent].0.y >= -1e-9);
    let (pulling, other): (Vec<_>, Vec<_>) = every.partition(one_way);
    let first = worst.first_turn(pulling.len(), FAR_TOGETHER, |trial, way, by| turned(trial, pulling[way], by));
    let sooner = other.iter().any(|way| turned(worst, *way, first.most).is_some());
    // Rarely another combination has turned before. Then all of them from the start.
    let turn = if sooner {
        let all: Vec<_> = pulling.into_iter().chain(other).collect();
        worst.first_turn(all.len(), first.most, |trial, way, by| turned(trial, all[way], by))
    } else {
        first
    };
    Borne { most: turn.most, turned_by: turn.found.map(|(_, check)| check.to_owned()), way: None, mean: None }
}
