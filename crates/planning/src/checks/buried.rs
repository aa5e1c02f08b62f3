//! Buried things under and beside the machine: what all wheels together put on their crowns, and what their owner allows.
//!
//! A thing counts where the machine stands over it, or where a wheel stands so near that its spread load reaches it: within
//! one and a half covers of the crown (ours; 2:1 spread reaches half a cover, elastic stress beyond one and a half is
//! under 5 % of that below the wheel). What nobody knows of it is a condition in somebody's name, never a pass.

use super::patches;
use super::{pascals, reserve};
use crate::context::Context;
use crate::posed::Posed;
use crate::{Matter, SoilArea, text};
use evidence::{Finding, Message, Silent, Source, Status, Trace, Working};
use geometry::DVec2;
use ground::buried::{Buried as Under, BuriedCondition, BuriedStress, buried_stress};
use ground::cover::Cover;
use ground::stress::Patch;
use quantity::Quantity;
use site::{Buried, BuriedKind, PipeWall, PlanArea, PlanShape};

/// Unit weight of cover that nobody has stated, N/m³: wet gravel (EN 1991-1-1:2002, Table A.5, from memory).
const COVER_WEIGHT: f64 = 21e3;

/// How far beside a thing a wheel still counts, in covers.
const BESIDE: f64 = 1.5;

/// Where the cover is not known, m: a cover of two metres.
const BESIDE_UNKNOWN: f64 = 3.0;

/// What was found of one buried thing.
#[derive(Debug, Clone)]
pub(crate) struct BuriedMet<'a> {
    thing: &'a Buried,
    /// `None`: its numbers cannot be used.
    found: Option<BuriedStress>,
    accepted: bool,
}

impl BuriedMet<'_> {
    pub(crate) fn status(&self) -> Status {
        let Some(found) = &self.found else { return Status::CannotTell };
        if found.reserve.is_some_and(|r| r < 0.0) {
            return Status::NoGo;
        }
        if found.conditions.is_empty() {
            return match found.reserve {
                Some(r) if r >= 0.0 => Status::Go,
                _ => Status::CannotTell,
            };
        }
        if self.accepted && self.own_keys(found) { Status::Condition } else { Status::CannotTell }
    }
}

impl BuriedMet<'_> {
    /// True if what is still open of a listed thing is no more than a person's general word for what is buried here can
    /// carry: its owner's figures; of a cable, filled ground or a void, which have none, all once somebody has said of that
    /// very place that nothing is fresh or hollow there. Wall, cover and ground around a thing are its own keys' to state.
    fn own_keys(&self, found: &BuriedStress) -> bool {
        let said = self.thing.around.as_ref().is_some_and(|a| a.fresh_fill == Some(false) && a.voids == Some(false));
        let kind = self.thing.kind;
        found.conditions.iter().all(|c| match c {
            BuriedCondition::Allowable | BuriedCondition::Deflection => true,
            BuriedCondition::Kind => kind.has_no_wall() && said,
            BuriedCondition::RecentBackfill | BuriedCondition::Voids => {
                matches!(kind, BuriedKind::Backfill | BuriedKind::Void) && said
            }
            // Filled ground begins at the surface.
            BuriedCondition::Cover => kind == BuriedKind::Backfill && said,
        })
    }
}

/// Every buried thing that is near enough to matter. `force`: worst on each contact, N.
pub(crate) fn met<'a>(ctx: &Context<'a>, posed: Option<&Posed>, force: [f64; 4]) -> Vec<BuriedMet<'a>> {
    let Some(posed) = posed else { return Vec::new() };
    let things = &ctx.job.surroundings.buried;
    if things.is_empty() {
        return Vec::new();
    }
    let patches = patches::patches(ctx, posed, force);
    let accepted = ctx.accepted(Matter::Buried).is_some();
    things
        .iter()
        .filter(|thing| reaches(ctx, thing, &patches))
        .map(|thing| BuriedMet { thing, found: stress(ctx, thing, &patches, &mut Silent), accepted })
        .collect()
}

fn reaches(ctx: &Context<'_>, thing: &Buried, patches: &[Patch; 4]) -> bool {
    let beside = thing.cover.map_or(BESIDE_UNKNOWN, |c| BESIDE * c.high) + ctx.policy.stand_error;
    let corners: Vec<DVec2> = patches.iter().flat_map(patches::corners).collect();
    // Also what is not a number counts.
    let near = |d: f64| d.is_nan() || d <= beside;
    if corners.iter().any(|c| near(thing.shape.distance(*c))) {
        return true;
    }
    let under = PlanArea { outer: hull(&corners), holes: Vec::new() };
    under.outer.len() >= 3 && thing.shape.outlines().iter().any(|o| under.distance_to_area(o) <= 0.0)
}

/// The ground between the contacts, m: what lies under the machine, not only under a wheel.
fn hull(corners: &[DVec2]) -> Vec<DVec2> {
    let middle = corners.iter().copied().fold(DVec2::ZERO, |a, b| a + b) / corners.len().max(1) as f64;
    let mut out = corners.to_vec();
    let turn = |p: &DVec2| libm::atan2(p.y - middle.y, p.x - middle.x);
    out.sort_by(|a, b| turn(a).total_cmp(&turn(b)));
    out
}

fn stress(ctx: &Context<'_>, thing: &Buried, patches: &[Patch; 4], trace: &mut impl Trace) -> Option<BuriedStress> {
    let (crown, half_breadth) = crown(&thing.shape, ctx.policy.stand_error)?;
    let around = thing.around.as_ref();
    let under = Under {
        kind: thing.kind.under_wheels(thing.wall),
        crown: crown.map(|p| p.to_array()),
        half_breadth,
        cover: thing.cover.map(|c| [c.low.max(0.0), c.high.max(0.0)]),
        soils: soils_over(ctx, thing),
        allowable: thing.allowed_pressure,
        // Until a named person says so of this thing, neither can be ruled out: who answers for what is buried here in
        // general speaks of what nobody has listed.
        recent_backfill: thing.kind == BuriedKind::Backfill || around.and_then(|a| a.fresh_fill).unwrap_or(true),
        voids_possible: thing.kind == BuriedKind::Void || around.and_then(|a| a.voids).unwrap_or(true),
    };
    buried_stress(&under, patches, trace).ok()
}

/// Every soil that may lie over the thing, and what counts where nobody has stated one.
fn soils_over(ctx: &Context<'_>, thing: &Buried) -> Vec<Cover> {
    let outlines = thing.shape.outlines();
    let reaches = |area: &PlanArea| outlines.iter().any(|o| near(o, area, ctx.policy.stand_error));
    let mut out = Vec::new();
    let mut whole = false;
    for soil in ctx.job.soils.iter().filter(|s| !s.profile.layers.is_empty()) {
        let Some(area) = &soil.area else {
            whole = true;
            out.push(cover_of(soil));
            continue;
        };
        if reaches(area) {
            out.push(cover_of(soil));
        }
    }
    if !whole {
        out.push(Cover::even(COVER_WEIGHT));
    }
    out
}

fn near(a: &PlanArea, b: &PlanArea, error: f64) -> bool {
    let d = a.distance_to_area(b);
    d.is_nan() || d <= error
}

/// Layers from the surface down; below the last what is heavier, it or what counts unstated.
fn cover_of(soil: &SoilArea) -> Cover {
    let layers: Vec<[f64; 2]> = soil.profile.layers.iter().map(|l| [l.thickness, l.unit_weight]).collect();
    let below = layers.last().map_or(COVER_WEIGHT, |l| l[1].max(COVER_WEIGHT));
    Cover { layers, below }
}

/// The middle line of a thing in plan and half its breadth, m: along the longer side of the box around an area. Larger by
/// the stand's error all round: where the wheels may be so far off, the thing may lie so far off from them.
fn crown(shape: &PlanShape, error: f64) -> Option<([DVec2; 2], f64)> {
    let (a, b, half) = match shape {
        PlanShape::Round { centre, radius } => (*centre, *centre, [*radius, *radius]),
        // A strip reaches half a width past its ends.
        PlanShape::Strip { course, width } if course.len() == 2 => (course[0], course[1], [width / 2.0; 2]),
        // A bent course, an area: the box around it holds all of it.
        _ => {
            let (low, high) = shape.bounds()?;
            let (size, middle) = (high - low, (low + high) / 2.0);
            let along = if size.x >= size.y { DVec2::X * size.x / 2.0 } else { DVec2::Y * size.y / 2.0 };
            (middle - along, middle + along, [0.0, size.min_element() / 2.0])
        }
    };
    let along = (b - a).normalize_or(DVec2::X) * (half[0] + error);
    Some(([a - along, b + along], half[1] + error))
}

pub(crate) fn findings(
    ctx: &Context<'_>,
    met: &[BuriedMet<'_>],
    posed: Option<&Posed>,
    force: [f64; 4],
) -> Vec<Finding> {
    met.iter().map(|m| finding(ctx, m, posed, force)).collect()
}

fn condition(thing: &Buried, c: BuriedCondition) -> evidence::TextId {
    match c {
        BuriedCondition::Kind if matches!(thing.kind, BuriedKind::Pipe | BuriedKind::Culvert) => text::BURIED_WALL,
        BuriedCondition::Kind => text::BURIED_KIND,
        BuriedCondition::Cover => text::BURIED_COVER,
        BuriedCondition::Allowable => text::BURIED_ALLOWABLE,
        BuriedCondition::Deflection => text::BURIED_DEFLECTION,
        BuriedCondition::RecentBackfill => text::BURIED_BACKFILL,
        BuriedCondition::Voids => text::BURIED_VOIDS,
    }
}

fn finding(ctx: &Context<'_>, m: &BuriedMet<'_>, posed: Option<&Posed>, force: [f64; 4]) -> Finding {
    let status = m.status();
    let mut working = Working::default();
    if let Some(posed) = posed {
        let _ = stress(ctx, m.thing, &patches::patches(ctx, posed, force), &mut working);
    }
    let owner = Source::Person { name: m.thing.source.clone(), statement: m.thing.name.clone() };
    let named = |id: evidence::TextId| id.with("name", &m.thing.name).with("by", &m.thing.source);
    let Some(found) = &m.found else {
        return Finding::new("buried", status, named(text::STANDS_OVER_BURIED))
            .remedy(text::DO_CLEAR_BURIED)
            .source(owner)
            .working(working);
    };
    let total = found.stress.map(|s| s.total);
    let stress = total.zip(m.thing.allowed_pressure);
    let mut finding = match (deflection(m.thing, found), stress, total) {
        (Some((share, allowed)), stress, _) if stress.is_none_or(|(s, most)| share / allowed > s / most) => {
            let id = if share > allowed { text::BURIED_FLATTENED } else { text::BURIED_FLATTENS };
            let [share_, allowed_] = [share, allowed].map(Quantity::ratio);
            let message = named(id).with("share", share_).with("allowed", allowed_);
            Finding::new("buried", status, message).measured(share_, allowed_, reserve(share, allowed))
        }
        (_, Some((total, allowed)), _) => {
            let id = if status == Status::NoGo { text::BURIED_OVERLOADED } else { text::BURIED_BEARS };
            let message = named(id).with("stress", pascals(total)).with("allowed", pascals(allowed));
            Finding::new("buried", status, message).measured(pascals(total), pascals(allowed), reserve(total, allowed))
        }
        (_, None, Some(total)) => {
            Finding::new("buried", status, named(text::BURIED_PRESSED).with("stress", pascals(total)))
        }
        (_, None, None) => Finding::new("buried", status, named(text::STANDS_OVER_BURIED)),
    };
    if status == Status::NoGo {
        finding = finding.remedy(text::DO_SPREAD_OVER_BURIED);
    }
    for c in &found.conditions {
        let message: Message =
            text::DO_CLEAR_CONDITION.with("name", &m.thing.name).with("what", condition(m.thing, *c));
        finding = finding.remedy(message);
    }
    finding = finding.source(owner).working(working);
    match &m.thing.around {
        Some(around) => finding.source(Source::Person { name: around.by.clone(), statement: m.thing.name.clone() }),
        None => finding,
    }
}

/// Deflection of a flexible pipe and what its owner allows, as shares of its diameter.
fn deflection(thing: &Buried, found: &BuriedStress) -> Option<(f64, f64)> {
    match thing.wall {
        Some(PipeWall::Flexible(pipe)) => found.deflection.zip(pipe.allowable),
        _ => None,
    }
}
