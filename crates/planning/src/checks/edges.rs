//! Excavations and drops beside the machine: how near the outer edge of each tyre or pad comes, and how near it may.
//!
//! The planning line from the toe always asks its distance; where the soil beside the excavation is stated, equilibrium
//! with the wheels as load is asked too, and the larger distance counts. Ground that falls away close to a wheel counts
//! as a drop though nobody drew one.

use super::patches;
use super::{metres, spare};
use crate::context::Context;
use crate::posed::Posed;
use crate::{SoilArea, text};
use evidence::{Finding, Message, Silent, Source, Status, Trace, Working};
use geometry::DVec2;
use ground::edge_rules::{self, Drop, EdgeGround, NamedSlope, planning_line};
use ground::edge_strength::{EdgeLayer, Exposure};
use ground::set_back::{Edge, SetBack, SetBackGoverns, Side, Unknown, set_back};
use ground::stress::Patch;
use ground::wheel_row::WheelRow;
use site::{Excavation, PlanArea, SoilType, Support};

/// Beside an excavation of unknown depth nothing is told within this, m: a basement of 4 m at the
/// planning line of 1.5 to 1.
const UNKNOWN_DEPTH: f64 = 6.0;

/// Wheels that stand so near to one line along the edge count as one row, m (ours: a tyre's width).
const ONE_ROW: f64 = 0.3;

/// What was found of one excavation, or of the ground's own drop.
#[derive(Debug, Clone)]
pub(crate) struct EdgeMet<'a> {
    /// `None`: the ground itself falls away.
    dig: Option<&'a Excavation>,
    /// Distance of the nearest outer edge, the stand's error taken off, m.
    aside: f64,
    answer: Answer,
}

#[derive(Debug, Clone)]
enum Answer {
    /// Over it.
    Inside,
    /// Nobody knows how deep it is.
    UnknownDepth,
    /// So far at least; by equilibrium too, or by the line alone.
    Distance { needed: f64, equilibrium: Option<SetBackGoverns> },
    /// The face does not stand even without load.
    FaceFails { factor: f64, required: f64 },
    /// A named designer counts on a load beside it.
    Designed { needed: f64 },
    /// The soil is stated, but not what equilibrium needs of it.
    NotKnown { needed: f64, what: Unknown },
    /// The ground falls by so much within the least distance.
    Falls { by: f64 },
}

impl EdgeMet<'_> {
    pub(crate) fn status(&self) -> Status {
        match &self.answer {
            Answer::Inside | Answer::FaceFails { .. } | Answer::Falls { .. } => Status::NoGo,
            Answer::UnknownDepth => Status::CannotTell,
            Answer::Distance { needed, .. } => {
                if self.aside >= *needed {
                    Status::Go
                } else {
                    Status::NoGo
                }
            }
            Answer::Designed { .. } => Status::Condition,
            Answer::NotKnown { needed, .. } => {
                if self.aside >= *needed {
                    Status::CannotTell
                } else {
                    Status::NoGo
                }
            }
        }
    }
}

/// Every excavation that is near enough to matter, and drops of the ground. `force`: worst on each contact, N.
pub(crate) fn met<'a>(ctx: &Context<'a>, posed: Option<&Posed>, force: [f64; 4]) -> Vec<EdgeMet<'a>> {
    let digs = &ctx.job.surroundings.excavations;
    let Some(posed) = posed else { return Vec::new() };
    let patches = patches::patches(ctx, posed, force);
    let error = ctx.policy.stand_error;
    let outer = patches.map(|p| PlanArea { outer: patches::corners(&with_mat(ctx, p)).to_vec(), holes: Vec::new() });
    let mut out: Vec<_> = digs
        .iter()
        .filter_map(|dig| {
            let aside = outer.iter().map(|o| dig.outline.distance_to_area(o)).fold(f64::INFINITY, f64::min) - error;
            let answer = answer(ctx, dig, &patches, aside, &mut Silent)?;
            Some(EdgeMet { dig: Some(dig), aside: aside.max(0.0), answer })
        })
        .collect();
    out.extend(falls(ctx, &patches).map(|by| EdgeMet { dig: None, aside: 0.0, answer: Answer::Falls { by } }));
    out
}

/// A contact as far as its mat reaches: the edge that comes nearest. Loads stay on the contact itself, as if the mat did not
/// spread them.
fn with_mat(ctx: &Context<'_>, mut patch: Patch) -> Patch {
    if let Some(kind) = ctx.lift.mat.and_then(|i| ctx.job.mats.get(i)) {
        let own = patch.size;
        patch.size = std::array::from_fn(|i| own[i].max(kind.mat.size[i] + 2.0 * super::bearing::MAT_OFF_MIDDLE));
    }
    patch
}

fn answer(
    ctx: &Context<'_>,
    dig: &Excavation,
    patches: &[Patch; 4],
    aside: f64,
    trace: &mut impl Trace,
) -> Option<Answer> {
    // Also what is not a number stands in it.
    if aside.is_nan() || aside <= 0.0 {
        return Some(Answer::Inside);
    }
    let Some(depth) = dig.depth.map(|d| d.high) else {
        return (aside < UNKNOWN_DEPTH).then_some(Answer::UnknownDepth);
    };
    let drop = drop(dig, depth);
    let line = match planning_line(&drop, trace) {
        Ok(line) => line.from_crest,
        // Deeper or flatter than the rule was made for: the line alone, at its default.
        Err(_) => (drop.ground.default_ratio() * depth - drop.batter).max(edge_rules::LEAST_DISTANCE),
    };
    let by_line = Answer::Distance { needed: line, equilibrium: None };
    let near = aside < line;
    match &dig.support {
        Support::Supported { by: Some(_) } => return near.then_some(Answer::Designed { needed: line }),
        Support::Supported { by: None } | Support::NotKnown => return near.then_some(by_line),
        Support::None => {}
    }
    let soils: Vec<&SoilArea> = ctx.job.soils.iter().filter(|soil| beside(soil, dig)).collect();
    if soils.is_empty() {
        return near.then_some(by_line);
    }
    if aside > ground::slip_search::REACH * depth.max(line) {
        return None;
    }
    // Of every soil that reaches the edge the worst; the working is of that one.
    let worst = if let [one] = soils[..] {
        Some(one)
    } else {
        let asks = |soil: &SoilArea| harshness(&by_soil(soil, dig, &drop, patches, line, &mut Silent), aside);
        soils.into_iter().map(|soil| (asks(soil), soil)).max_by(|a, b| a.0.total_cmp(&b.0)).map(|(_, soil)| soil)
    };
    worst.map(|soil| by_soil(soil, dig, &drop, patches, line, trace))
}

/// How much an answer asks, for the worst of several: what refuses whatever the distance, then what is not known, then the
/// distance itself.
fn harshness(answer: &Answer, aside: f64) -> f64 {
    match answer {
        Answer::Distance { needed, .. } if aside >= *needed => *needed,
        Answer::NotKnown { needed, .. } if aside >= *needed => 1e6,
        Answer::Distance { needed, .. } | Answer::NotKnown { needed, .. } => 1e7 + needed,
        _ => f64::INFINITY,
    }
}

fn by_soil(
    soil: &SoilArea,
    dig: &Excavation,
    drop: &Drop,
    patches: &[Patch; 4],
    line: f64,
    trace: &mut impl Trace,
) -> Answer {
    // Without a stated water table it stands at the surface.
    let water = (drop.depth - soil.profile.water_depth()).max(0.0);
    let edge = Edge {
        drop: drop.clone(),
        side: Side::Open,
        layers: layers(soil),
        water: Some(water),
        firm_base: None,
        exposure: Exposure {
            open_for: dig.standing.open_for,
            undrained_for: dig.standing.undrained_for,
            wetted: dig.standing.wetted,
        },
        people_below: dig.standing.people_below,
    };
    let rows = rows(dig, patches);
    match set_back(&edge, &rows, trace) {
        Ok(SetBack::Distance(d)) => {
            let equilibrium = (d.governs != SetBackGoverns::Rule).then_some(d.governs);
            Answer::Distance { needed: d.from_crest, equilibrium }
        }
        Ok(SetBack::FaceFails { factor, required, .. }) => Answer::FaceFails { factor, required },
        Ok(SetBack::Unknown(what)) => {
            Answer::NotKnown { needed: line, what: what.first().copied().unwrap_or(Unknown::Soil) }
        }
        // An open side is never answered so; and what has faults is not known.
        Ok(SetBack::Supported) | Err(_) => Answer::NotKnown { needed: line, what: Unknown::Soil },
    }
}

/// The excavation as the rule asks for it. Soil that nobody has classed counts as soft.
fn drop(dig: &Excavation, depth: f64) -> Drop {
    let ground = match dig.soil {
        Some(SoilType::StableRock) => EdgeGround::Rock,
        Some(SoilType::TypeA | SoilType::TypeB) => EdgeGround::Firm,
        Some(SoilType::TypeC) | None => EdgeGround::Poor,
    };
    let named = dig.standing.line.as_ref().map(|(ratio, by)| NamedSlope { ratio: *ratio, person: by.clone() });
    Drop { depth, batter: dig.standing.batter, ground, named }
}

/// True if the soil reaches to the excavation, within a metre (ours: nobody draws an area closer).
fn beside(soil: &SoilArea, dig: &Excavation) -> bool {
    soil.area.as_ref().is_none_or(|area| area.distance_to_area(&dig.outline) <= 1.0)
}

fn layers(soil: &SoilArea) -> Vec<EdgeLayer> {
    let layers = soil.profile.layers.iter().map(|l| {
        let counted = l.stated.counted(soil.profile.state);
        let (mut drained, mut undrained) = (None, None);
        for strength in counted {
            match strength {
                ground::Strength::Drained { cohesion, friction } => drained = Some([cohesion, friction]),
                ground::Strength::Undrained { c_u } => undrained = Some(c_u),
            }
        }
        EdgeLayer { bottom: l.bottom(), unit_weight: l.unit_weight, drained, undrained }
    });
    layers.collect()
}

/// The contacts in rows along the nearest side of the excavation.
fn rows(dig: &Excavation, patches: &[Patch; 4]) -> Vec<WheelRow> {
    let middle = |p: &Patch| DVec2::from_array(p.middle);
    let off = |(a, b): (DVec2, DVec2), p: DVec2| {
        let t = ((p - a).dot(b - a) / (b - a).length_squared().max(1e-12)).clamp(0.0, 1.0);
        (a + (b - a) * t - p).length()
    };
    let nearest = |side: (DVec2, DVec2)| patches.iter().map(|p| off(side, middle(p))).fold(f64::INFINITY, f64::min);
    let Some(side) = dig.outline.edges().min_by(|a, b| nearest(*a).total_cmp(&nearest(*b))) else {
        return Vec::new();
    };
    let along = (side.1 - side.0).normalize_or(DVec2::X);
    let square = along.perp();
    // Outer edge of each patch from the side's line, its breadth square to it, its length along it.
    let reach = |p: &Patch, direction: DVec2| {
        let corners = patches::corners(p).map(|c| (c - side.0).dot(direction));
        let (low, high) = corners.iter().fold((f64::INFINITY, f64::NEG_INFINITY), |(l, h), v| (l.min(*v), h.max(*v)));
        (low, high)
    };
    let sign = if patches.iter().map(|p| (middle(p) - side.0).dot(square)).sum::<f64>() < 0.0 { -1.0 } else { 1.0 };
    let mut placed: Vec<(f64, f64, f64, f64, f64)> = patches
        .iter()
        .map(|p| {
            let (near, far) = reach(p, square * sign);
            let (from, to) = reach(p, along);
            (near, far - near, to - from, f64::midpoint(from, to), p.force.max(0.0))
        })
        .collect();
    placed.sort_by(|a, b| a.0.total_cmp(&b.0));
    let first = placed.first().map_or(0.0, |p| p.0);
    let origin = placed.first().map_or(0.0, |p| p.3);
    let mut rows: Vec<WheelRow> = Vec::new();
    for (near, across, length, at, force) in placed {
        let behind = near - first;
        match rows.last_mut().filter(|r| behind - r.behind <= ONE_ROW) {
            Some(row) => {
                // The narrower and shorter of both presses harder.
                row.across = row.across.min(across);
                row.along = row.along.min(length);
                row.contacts.push([at - origin, force]);
            }
            None => rows.push(WheelRow { behind, across, along: length, contacts: vec![[at - origin, force]] }),
        }
    }
    rows
}

/// By how much the surveyed ground falls within the least distance of a wheel, m, where that is a drop.
fn falls(ctx: &Context<'_>, patches: &[Patch; 4]) -> Option<f64> {
    const WAYS: usize = 8;
    let mut most = 0.0_f64;
    for patch in patches {
        let middle = DVec2::from_array(patch.middle);
        let Some((here, source)) = ctx.job.ground.height(middle) else { continue };
        let half = libm::hypot(patch.size[0], patch.size[1]) / 2.0;
        for i in 0..WAYS {
            let (sin, cos) = libm::sincos(i as f64 * core::f64::consts::TAU / WAYS as f64);
            let there = middle + DVec2::new(cos, sin) * (half + edge_rules::LEAST_DISTANCE);
            if let Some((z, _)) = ctx.job.ground.height(there) {
                most = most.max(here - z - 2.0 * source.accuracy);
            }
        }
    }
    // A slope that the machine stands on is no drop: what it may stand on at most falls less than this.
    (most >= edge_rules::LEAST_DROP).then_some(most)
}

pub(crate) fn findings(ctx: &Context<'_>, met: &[EdgeMet<'_>], posed: Option<&Posed>, force: [f64; 4]) -> Vec<Finding> {
    met.iter().map(|m| finding(ctx, m, posed, force)).collect()
}

fn finding(ctx: &Context<'_>, m: &EdgeMet<'_>, posed: Option<&Posed>, force: [f64; 4]) -> Finding {
    let status = m.status();
    let mut working = Working::default();
    if let (Some(dig), Some(posed)) = (m.dig, posed) {
        // The same with its steps.
        let _ = answer(ctx, dig, &patches::patches(ctx, posed, force), m.aside, &mut working);
    }
    let name = m.dig.map_or("", |d| d.name.as_str());
    let said = |id: evidence::TextId, needed: f64| {
        id.with("name", name).with("distance", metres(m.aside)).with("required", metres(needed))
    };
    let (message, remedy, needed): (Message, Message, Option<f64>) = match &m.answer {
        Answer::Inside => (text::STANDS_IN_EXCAVATION.with("name", name), text::DO_OTHER_STAND.message(), None),
        Answer::UnknownDepth => {
            (said(text::NEAR_EXCAVATION_UNKNOWN, UNKNOWN_DEPTH), text::DO_MEASURE_EXCAVATION.message(), None)
        }
        Answer::Distance { needed, equilibrium } if status == Status::Go => {
            let id = if equilibrium.is_some() { text::EDGE_STANDS } else { text::EDGE_FAR_ENOUGH };
            (said(id, *needed), text::DO_WATCH_EDGE.message(), Some(*needed))
        }
        Answer::Distance { needed, .. } => (
            said(text::NEAR_EXCAVATION, *needed),
            text::DO_MOVE_BACK.with("by", metres(needed - m.aside)),
            Some(*needed),
        ),
        Answer::FaceFails { factor, required } => {
            let number = |v: f64| quantity::Quantity::new(v, quantity::Dimension::Number);
            let message =
                text::FACE_FAILS.with("name", name).with("factor", number(*factor)).with("required", number(*required));
            (message, text::DO_SUPPORT_FACE.message(), None)
        }
        Answer::Designed { needed } => {
            (said(text::NEAR_SUPPORTED_EXCAVATION, *needed), text::DO_HAND_LOADS.message(), None)
        }
        Answer::NotKnown { needed, what } => {
            let what = match what {
                Unknown::Soil => text::UNKNOWN_SOIL,
                Unknown::Strength(_) => text::UNKNOWN_STRENGTH,
                Unknown::Water => text::UNKNOWN_WATER,
            };
            (said(text::EDGE_NOT_KNOWN, *needed).with("what", what), text::DO_EXPLORE.message(), None)
        }
        Answer::Falls { by } => (text::GROUND_FALLS.with("by", metres(*by)), text::DO_OTHER_STAND.message(), None),
    };
    let finding = Finding::new("edges", status, message).remedy(remedy).source(Source::CommonPractice).working(working);
    match needed {
        // At least the distance needed: demand and limit as the field reads them.
        Some(needed) => finding.at_least(metres(needed), metres(m.aside), spare(needed, m.aside)),
        None => finding,
    }
}
