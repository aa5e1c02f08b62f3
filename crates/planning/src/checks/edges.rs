//! Excavations and drops beside the machine: how near the outer edge of each tyre or pad comes, and how near it may.
//!
//! The planning line from the toe always asks its distance; where the soil beside the excavation is stated, equilibrium
//! with the wheels as load is asked too, and the larger distance counts. Ground that falls away close to a wheel counts
//! as a drop though nobody drew one.

use super::{edge_rows, metres, patches, spare};
use crate::check::LiftCheck;
use crate::context::Context;
use crate::posed::Posed;
use crate::set_backs::{self, LineOf, SetBackLine, SetBacks};
use crate::{SoilArea, text};
use evidence::{Finding, Message, Silent, Source, Status, Working};
use geometry::DVec2;
use ground::edge_rules;
use ground::set_back::{SetBack, SetBackGoverns, Unknown};
use ground::set_back_store::Solved;
use ground::stress::Patch;
use ground::wheel_row::WheelRow;
use site::{Excavation, PlanArea, Support};
use std::sync::Arc;

/// Beside an excavation of unknown depth nothing is told within this, m: the deepest that is dug without an engineer, at the
/// line of soil that nobody has classed, 2 to 1 from 6.1 m (20 ft). Deeper ones are an engineer's, whose depth is known.
const UNKNOWN_DEPTH: f64 = 2.0 * edge_rules::ENGINEER_DEPTH;

/// How far beyond three depths an excavation is still spoken of where all is well with it, m (ours).
const SPOKEN_OF: f64 = 10.0;

/// What was found of one excavation, or of the ground's own drop.
#[derive(Debug, Clone)]
pub(crate) struct EdgeMet<'a> {
    /// `None`: the ground itself falls away.
    dig: Option<&'a Excavation>,
    /// Distance of the nearest outer edge, the stand's error taken off, m.
    aside: f64,
    told: BySoil,
}

/// An answer, and where soil was asked, what was solved for it.
#[derive(Debug, Clone)]
struct BySoil {
    answer: Answer,
    working: Option<Arc<Solved>>,
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
    /// Deeper than is dug without an engineer, and nobody is named who designed it; by all else so far would do.
    Engineer { needed: f64, depth: f64 },
    /// A named designer counts on a load beside it.
    Designed { needed: f64 },
    /// The soil is stated, but not what equilibrium needs of it.
    NotKnown { needed: f64, what: Unknown },
    /// The ground falls by so much within the least distance.
    Falls { by: f64 },
}

impl EdgeMet<'_> {
    pub(crate) fn status(&self) -> Status {
        match &self.told.answer {
            Answer::Inside | Answer::FaceFails { .. } | Answer::Falls { .. } => Status::NoGo,
            Answer::UnknownDepth | Answer::Engineer { .. } => Status::CannotTell,
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
pub(crate) fn met<'a>(
    ctx: &Context<'a>,
    posed: Option<&Posed>,
    force: [f64; 4],
    set_backs: &mut SetBacks,
) -> Vec<EdgeMet<'a>> {
    let digs = &ctx.job.surroundings.excavations;
    let Some(posed) = posed else { return Vec::new() };
    let patches = patches::patches(ctx, posed, force);
    let error = ctx.policy.stand_error;
    let outer = patches.map(|p| PlanArea { outer: patches::corners(&with_mat(ctx, p)).to_vec(), holes: Vec::new() });
    let mut out: Vec<_> = digs
        .iter()
        .filter_map(|dig| {
            let aside = outer.iter().map(|o| dig.outline.distance_to_area(o)).fold(f64::INFINITY, f64::min) - error;
            let told = answer(ctx, dig, &patches, aside, set_backs)?;
            Some(EdgeMet { dig: Some(dig), aside: aside.max(0.0), told })
        })
        .collect();
    let told = |by| BySoil { answer: Answer::Falls { by }, working: None };
    out.extend(falls(ctx, &patches).map(|by| EdgeMet { dig: None, aside: 0.0, told: told(by) }));
    out
}

/// A contact as far as its mat reaches: the edge that comes nearest. Loads stay on the contact itself, as if the mat did not
/// spread them.
fn with_mat(ctx: &Context<'_>, mut patch: Patch) -> Patch {
    if let Some(mat) = super::mat_stack::outline(ctx) {
        let own = patch.size;
        patch.size = std::array::from_fn(|i| own[i].max(mat[i]));
    }
    patch
}

fn answer(
    ctx: &Context<'_>,
    dig: &Excavation,
    patches: &[Patch; 4],
    aside: f64,
    set_backs: &mut SetBacks,
) -> Option<BySoil> {
    let plain = |answer| BySoil { answer, working: None };
    // Also what is not a number stands in it.
    if aside.is_nan() || aside <= 0.0 {
        return Some(plain(Answer::Inside));
    }
    let Some(line) = set_backs::line(dig, &ctx.job.soils, &mut Silent) else {
        let far = Answer::Distance { needed: UNKNOWN_DEPTH, equilibrium: None };
        let near = aside < UNKNOWN_DEPTH;
        return (aside < UNKNOWN_DEPTH + SPOKEN_OF).then_some(plain(if near { Answer::UnknownDepth } else { far }));
    };
    let depth = dig.depth.map_or(line, |d| d.high);
    let told = by_support(ctx, dig, patches, (aside, line), set_backs);
    let passes = match told.as_ref().map(|t| &t.answer) {
        None => Some(line),
        Some(Answer::Distance { needed, .. }) if aside >= *needed => Some(*needed),
        _ => None,
    };
    let designed = matches!(dig.support, Support::Supported { by: Some(_) });
    match passes {
        // An engineer designs whatever is deeper; without one no distance out to where slips reach is known to do.
        Some(needed)
            if depth > edge_rules::ENGINEER_DEPTH && !designed && aside < ground::slip_search::REACH * depth =>
        {
            let answer = Answer::Engineer { needed, depth };
            Some(BySoil { answer, working: told.and_then(|t| t.working) })
        }
        // What was looked at and is far enough is said.
        _ if told.is_none() && aside < ground::slip_search::REACH * depth + SPOKEN_OF => {
            Some(plain(Answer::Distance { needed: line, equilibrium: None }))
        }
        _ => told,
    }
}

/// What its support, or the soil beside it, asks; none where it stands so far off that neither is asked.
fn by_support(
    ctx: &Context<'_>,
    dig: &Excavation,
    patches: &[Patch; 4],
    (aside, line): (f64, f64),
    set_backs: &mut SetBacks,
) -> Option<BySoil> {
    let plain = |answer| BySoil { answer, working: None };
    let by_line = Answer::Distance { needed: line, equilibrium: None };
    let near = aside < line;
    match &dig.support {
        Support::Supported { by: Some(_) } => return near.then_some(plain(Answer::Designed { needed: line })),
        Support::Supported { by: None } | Support::NotKnown => return near.then_some(plain(by_line)),
        Support::None => {}
    }
    let mut soils = ctx.job.soils.iter().filter(|soil| set_backs::beside(soil, dig)).peekable();
    if soils.peek().is_none() {
        return near.then_some(plain(by_line));
    }
    if aside > face_reach(dig, line) {
        return None;
    }
    // Of every soil that reaches the edge the worst; the working is of that one.
    let rows = edge_rows::rows(dig, patches);
    let told = soils.map(|soil| by_soil(soil, dig, &rows, (aside, line), set_backs));
    told.max_by(|a, b| harshness(&a.answer, aside).total_cmp(&harshness(&b.answer, aside)))
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

/// What the soil asks, as the job's set-backs have it.
fn by_soil(
    soil: &SoilArea,
    dig: &Excavation,
    rows: &[WheelRow],
    (aside, line): (f64, f64),
    set_backs: &mut SetBacks,
) -> BySoil {
    let unknown = |what| Answer::NotKnown { needed: line, what };
    let Some(solved) = set_backs.ask(soil, dig, rows, aside) else {
        // What has faults is not known.
        return BySoil { answer: unknown(Unknown::Soil), working: None };
    };
    let answer = match &solved.answer {
        SetBack::Distance(d) => {
            let equilibrium = (d.governs != SetBackGoverns::Rule).then_some(d.governs);
            Answer::Distance { needed: d.from_crest, equilibrium }
        }
        SetBack::FaceFails { factor, required, .. } => Answer::FaceFails { factor: *factor, required: *required },
        SetBack::Unknown(what) => unknown(what.first().copied().unwrap_or(Unknown::Soil)),
        // An open side is never answered so.
        SetBack::Supported => unknown(Unknown::Soil),
    };
    BySoil { answer, working: Some(solved) }
}

/// What this lift's wheels ask beyond the planning line, around every open excavation with stated soil.
pub(crate) fn lines(check: &LiftCheck<'_>, set_backs: &mut SetBacks) -> Vec<SetBackLine> {
    let ctx = &check.ctx;
    let Ok(posed) = &check.posed else { return Vec::new() };
    let patches = patches::patches(ctx, posed, check.statics.as_ref().map_or([0.0; 4], |s| s.force));
    let of = |(excavation, dig): (usize, &Excavation)| {
        let line = set_backs::line(dig, &ctx.job.soils, &mut Silent).filter(|_| dig.support == Support::None)?;
        let rows = edge_rows::rows(dig, &patches);
        let soils = ctx.job.soils.iter().filter(|soil| set_backs::beside(soil, dig));
        let asked = soils.filter_map(|soil| match by_soil(soil, dig, &rows, (0.0, line), set_backs).answer {
            Answer::Distance { needed, equilibrium: Some(_) } => Some((needed, LineOf::Wheels)),
            Answer::FaceFails { .. } => Some((face_reach(dig, line), LineOf::Face)),
            _ => None,
        });
        // Water in the soil may take the planning line itself farther out than a site alone has it.
        let dry = set_backs::line(dig, &[], &mut Silent).is_some_and(|dry| dry < line);
        let asked = asked.chain(dry.then_some((line, LineOf::Planning)));
        let (distance, of) = asked.max_by(|a, b| a.0.total_cmp(&b.0))?;
        Some(SetBackLine { excavation, distance, of })
    };
    ctx.job.surroundings.excavations.iter().enumerate().filter_map(of).collect()
}

/// How far from an excavation its soil is asked at all, m.
fn face_reach(dig: &Excavation, line: f64) -> f64 {
    ground::slip_search::REACH * dig.depth.map_or(line, |d| d.high.max(line))
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

pub(crate) fn findings(ctx: &Context<'_>, met: &[EdgeMet<'_>]) -> Vec<Finding> {
    met.iter().map(|m| finding(ctx, m)).collect()
}

fn finding(ctx: &Context<'_>, m: &EdgeMet<'_>) -> Finding {
    let status = m.status();
    let mut working = Working::default();
    match (&m.told.working, m.dig) {
        (Some(solved), _) => working = solved.working.clone(),
        (None, Some(dig)) if !matches!(m.told.answer, Answer::Inside) => {
            let _ = set_backs::line(dig, &ctx.job.soils, &mut working);
        }
        _ => {}
    }
    let name = m.dig.map_or("", |d| d.name.as_str());
    let said = |id: evidence::TextId, needed: f64| {
        id.with("name", name).with("distance", metres(m.aside)).with("required", metres(needed))
    };
    let (message, remedy, needed): (Message, Message, Option<f64>) = match &m.told.answer {
        Answer::Inside => (text::STANDS_IN_EXCAVATION.with("name", name), text::DO_OTHER_STAND.message(), None),
        Answer::UnknownDepth => {
            (said(text::NEAR_EXCAVATION_UNKNOWN, UNKNOWN_DEPTH), text::DO_MEASURE_EXCAVATION.message(), None)
        }
        Answer::Distance { needed, equilibrium } if status == Status::Go => {
            let id = if equilibrium.is_some() { text::EDGE_STANDS } else { text::EDGE_FAR_ENOUGH };
            (said(id, *needed), text::DO_WATCH_EDGE.message(), Some(*needed))
        }
        Answer::Distance { needed, equilibrium } => {
            let id = if equilibrium.is_some() { text::NEAR_EXCAVATION_SLIPS } else { text::NEAR_EXCAVATION };
            (said(id, *needed), text::DO_MOVE_BACK.with("by", metres(needed - m.aside)), Some(*needed))
        }
        Answer::FaceFails { factor, required } => {
            let number = |v: f64| quantity::Quantity::new(v, quantity::Dimension::Number);
            let message =
                text::FACE_FAILS.with("name", name).with("factor", number(*factor)).with("required", number(*required));
            (message, text::DO_SUPPORT_FACE.message(), None)
        }
        Answer::Engineer { needed, depth } => {
            let message = said(text::EDGE_NEEDS_ENGINEER, *needed).with("depth", metres(*depth));
            (message, text::DO_NAME_ENGINEER.message(), None)
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
