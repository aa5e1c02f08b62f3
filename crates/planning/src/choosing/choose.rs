//! The best that a job allows for one lift.

use super::combinations::combinations;
use crate::check::check_lift_with;
use crate::context::Context;
use crate::lift_way::{self, LiftWay};
use crate::stand_field::{FieldScene, FieldSpec, FoundStand, StandField, StandSearch, best_stands, found_at};
use crate::{Job, Lift, SetBacks, Stand};
use core::ops::ControlFlow;
use evidence::{Status, Verdict};
use geometry::DVec2;
use serde::{Deserialize, Serialize};

/// Where a plan's stand comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum StandFrom {
    /// The job states it.
    #[default]
    Stated,
    /// It was looked for and found.
    Found,
    /// It was looked for, and none was found.
    Nowhere,
    /// None is stated, and none was looked for.
    NotSought,
}

/// A lift with what was chosen for it.
#[derive(Clone)]
pub(crate) struct Chosen {
    pub(crate) lift: Lift,
    pub(crate) from: StandFrom,
    /// The ground around its landing; `None` where it cannot be looked at.
    pub(crate) field: Option<StandField>,
    /// Stands that work with the chosen equipment, the best first; the chosen one is not among them.
    pub(crate) others: Vec<FoundStand>,
    /// Index of the lift before it whose stand it is too.
    pub(crate) shared: Option<usize>,
    /// Its way, where that was looked for already.
    pub(crate) way: Option<LiftWay>,
    /// Nothing refuses its stand, as far as was asked: another lift may share it.
    sound: bool,
}

/// Radius that is looked at, m.
pub(crate) const RADIUS: f64 = 15.0;
/// Cells of a plan's field, and of the first look at every way to equip a lift, m.
const CELL: f64 = 0.2;
const FIRST_LOOK: f64 = 0.6;
/// Ways that are looked at closely, of those that pass somewhere.
const CLOSELY: usize = 3;
/// Stands kept for each lift.
const KEPT: usize = 3;
/// Stands nearer to each other than this are one, m.
const APART: f64 = 1.0;

/// The whole field of a lift in cells of that size, m.
fn field<'a>(job: &'a Job, lift: &'a Lift, cell: f64) -> Option<(StandSearch<'a>, StandField)> {
    let search = StandSearch::new(job, lift, FieldSpec { radius: RADIUS, cell })?;
    let field = search.run(&mut |_, _, _| ControlFlow::Continue(()));
    Some((search, field))
}

/// What was found around a lift's landing, before other lifts are looked at.
pub(crate) struct Looked {
    lift: Lift,
    field: Option<StandField>,
    /// Stands that work, the best first.
    found: Vec<FoundStand>,
    /// Nothing refuses its stated stand.
    passes: bool,
}

/// Looks around the landing of a lift whose equipment is chosen.
pub(crate) fn look(job: &Job, lift: &Lift) -> Looked {
    let set_backs = &mut SetBacks::default();
    let looked = field(job, lift, CELL);
    let found = match &looked {
        Some((search, field)) if field.floor() <= Status::Condition => {
            best_stands(job, lift, search, field, set_backs, KEPT)
        }
        _ => Vec::new(),
    };
    let field = looked.map(|(_, field)| field);
    let passes = lift.stand.is_chosen() && passes(job, lift, set_backs);
    Looked { lift: lift.clone(), field, found, passes }
}

/// Chooses the stand of a lift. What the lift states it keeps, also where a better one is found, unless it is left to the
/// planner and does not work, or no way leads there.
///
/// `before`: what was chosen for the lifts before it. Where one of their stands is as good as the best, it is taken, so that
/// fewer places are to be set out and looked after. Of stands to which no way leads the next best is taken.
pub(crate) fn settle(job: &Job, looked: Looked, before: &[Chosen], set_backs: &mut SetBacks) -> Chosen {
    let Looked { lift, field, mut found, passes } = looked;
    let lift = &lift;
    let stated = lift.stand.is_chosen();
    let stated_way = (stated && passes && lift.choose.stand).then(|| way(job, lift)).flatten();
    let keeps = stated && (!lift.choose.stand || (passes && !stated_way.as_ref().is_some_and(closed)));
    let chosen = |lift: Lift, from: StandFrom, others: Vec<FoundStand>| Chosen {
        lift,
        from,
        field,
        others,
        shared: None,
        way: None,
        sound: false,
    };
    if keeps {
        let apart = |f: &FoundStand| DVec2::new(f.east_m, f.north_m).distance(lift.stand.at) >= APART;
        found.retain(apart);
        return Chosen { way: stated_way, sound: passes, ..chosen(lift.clone(), StandFrom::Stated, found) };
    }
    let Some(best) = found.first() else { return chosen(lift.clone(), StandFrom::Nowhere, found) };
    let mut shared: Option<(usize, FoundStand)> = None;
    for (i, other) in before.iter().enumerate().filter(|(_, other)| other.sound) {
        let there = &other.lift;
        if (there.machine, there.support, &there.mats) != (lift.machine, lift.support, &lift.mats) {
            continue;
        }
        let Some(found) = found_at(job, lift, there.stand, set_backs).filter(|f| f.as_good_as(best)) else { continue };
        if shared.as_ref().is_none_or(|(_, known)| found.better_than(known)) {
            shared = Some((i, found));
        }
    }
    let of = shared.as_ref().map(|(i, _)| *i);
    if let Some((_, there)) = shared {
        let at = there.stand().at;
        found.retain(|f| f.stand().at.distance(at) >= APART);
        found.insert(0, there);
        found.truncate(KEPT);
    }
    let (taken, way) = reached(job, lift, &found);
    // Those before it are the ones to which no way was found; where none leads to any, none is another to take.
    let mut others = found.split_off(taken);
    let stand = others.remove(0).stand();
    let barred = way.as_ref().is_some_and(closed);
    if barred {
        others.clear();
    }
    Chosen {
        shared: of.filter(|_| taken == 0),
        sound: !barred,
        way,
        ..chosen(lift.from_stand(stand), StandFrom::Found, others)
    }
}

/// The way of a lift to its own stand; `None` where nobody states from where.
fn way(job: &Job, lift: &Lift) -> Option<LiftWay> {
    lift_way::way(&Context::new(job, lift)?)
}

/// True where it is proven that no way leads there, or none back.
fn closed(way: &LiftWay) -> bool {
    way.refused.as_ref().is_some_and(|r| !r.kind.open())
}

/// The first of some stands to which a way leads and back, and that way; where none does, the first of which that is not
/// proven, else the first of all.
fn reached(job: &Job, lift: &Lift, found: &[FoundStand]) -> (usize, Option<LiftWay>) {
    let mut first: Option<(usize, LiftWay)> = None;
    for (i, stand) in found.iter().enumerate() {
        let there = lift.from_stand(stand.stand());
        let Some(way) = way(job, &there) else { break };
        if way.refused.is_none() {
            return (i, Some(way));
        }
        if first.as_ref().is_none_or(|(_, known)| closed(known) && !closed(&way)) {
            first = Some((i, way));
        }
    }
    first.map_or((0, None), |(i, way)| (i, Some(way)))
}

/// The lift with the best machine, attachment and support state that it leaves to the planner; as it is stated, where that
/// does at its stated stand.
pub(crate) fn equipped(job: &Job, lift: &Lift) -> Lift {
    let set_backs = &mut SetBacks::default();
    let ways = combinations(job, lift);
    if ways.len() < 2 || (lift.stand.is_chosen() && lift.choose.stand && passes(job, lift, set_backs)) {
        return lift.clone();
    }
    if lift.stand.is_chosen() && !lift.choose.stand {
        // The place is stated: whatever does it best from there.
        let mut best: Option<(Verdict, &Lift)> = None;
        for way in &ways {
            let verdict = verdict_there(job, way, set_backs);
            if best.is_none_or(|(known, _)| verdict < known) {
                best = Some((verdict, way));
            }
        }
        return best.map_or_else(|| lift.clone(), |(_, way)| way.clone());
    }
    // A first look tells where each passes at all; the most ground first, the stated way before others as good.
    let mut passing: Vec<(StandField, &Lift)> = ways
        .iter()
        .filter_map(|way| {
            let (_, field) = field(job, way, FIRST_LOOK)?;
            (field.floor() <= Status::Condition && field.passing_area() > 0.0).then_some((field, way))
        })
        .collect();
    passing.sort_by(|a, b| b.0.passing_area().total_cmp(&a.0.passing_area()));
    let mut best: Option<(FoundStand, &Lift)> = None;
    for (coarse, way) in passing.into_iter().take(CLOSELY) {
        let Some(search) = StandSearch::new(job, way, FieldSpec { radius: RADIUS, cell: CELL }) else { continue };
        let field = search.near(&coarse);
        let Some(found) = best_stands(job, way, &search, &field, set_backs, 1).into_iter().next() else { continue };
        if best.as_ref().is_none_or(|(known, _)| found.better_than(known)) {
            best = Some((found, way));
        }
    }
    best.map_or_else(|| lift.clone(), |(_, way)| way.clone())
}

fn verdict_there(job: &Job, lift: &Lift, set_backs: &mut SetBacks) -> Verdict {
    check_lift_with(job, lift, set_backs).map_or(Verdict::NoGo, |check| check.verdict())
}

fn passes(job: &Job, lift: &Lift, set_backs: &mut SetBacks) -> bool {
    verdict_there(job, lift, set_backs) != Verdict::NoGo
}

impl Chosen {
    /// Nothing chosen, nothing looked at.
    pub(crate) fn as_stated(lift: &Lift) -> Self {
        let from = if lift.stand.is_chosen() { StandFrom::Stated } else { StandFrom::NotSought };
        Self { lift: lift.clone(), from, field: None, others: Vec::new(), shared: None, way: None, sound: false }
    }

    /// The field as the plan keeps it.
    pub(crate) fn scene(&self) -> Option<FieldScene> {
        self.field.as_ref().map(FieldScene::from)
    }
}

impl FoundStand {
    /// The place that the checks know.
    pub(crate) fn stand(&self) -> Stand {
        Stand { at: DVec2::new(self.east_m, self.north_m), heading: geometry::heading_from_degrees(self.heading_deg) }
    }
}
