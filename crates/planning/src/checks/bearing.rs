//! What the soil under each wheel or pad carries, where the job states the soil.
//!
//! The worst force of the whole lift on each contact, all of it as a variable action (own weight too: wheeled plant is a
//! construction load, EN 1991-1-6:2005, 4.11.1, Table 4.1, from memory; and no set asks less of it), on its patch or through the mat, against every soil area that any
//! of it may lie on within the stand's error, with every factor set of the job. The contacts of an axle, and all four,
//! count as one as well on what lies below the top layer ([`super::group`]). The least of all counts.

use super::group::{self, Group};
use super::level::contact_names;
use super::mat_stack;
use super::patches;
use super::statics::Statics;
use super::{metres, newtons, reserve, within};
use crate::context::Context;
use crate::posed::Posed;
use crate::{SoilArea, text};
use core::f64::consts::FRAC_1_SQRT_2;
use evidence::{Finding, Message, Silent, Source, Status, Trace, Working};
use geometry::DVec2;
use ground::presumed::{Presumed, Under};
use ground::{FactorSet, Footprint, Loads, PadOnProfile, Profile, Refusal, bearing_below_top, bearing_on_profile};

/// What presses.
#[derive(Debug, Clone, Copy)]
enum Presses {
    One(usize),
    Together(Group),
}

/// The worst contact, or group of contacts, on stated soil.
#[derive(Debug, Clone, Copy)]
pub(crate) struct OnSoil<'a> {
    presses: Presses,
    soil: &'a SoilArea,
    set: FactorSet,
    /// Design force and design resistance, N, or why there is none.
    answer: Result<(f64, f64), Refusal>,
}

impl OnSoil<'_> {
    pub(crate) fn status(&self) -> Status {
        match self.answer {
            Ok((demand, limit)) => within(demand, limit),
            Err(Refusal::SlopeBeyondFriction { .. } | Refusal::Slides { .. } | Refusal::OffMat) => Status::NoGo,
            Err(_) => Status::CannotTell,
        }
    }

    fn share(&self) -> f64 {
        self.answer.map_or(f64::INFINITY, |(demand, limit)| demand / limit)
    }
}

/// The worst of all contacts, soils and factor sets; `None` where no soil is stated under any contact.
pub(crate) fn outcome<'a>(ctx: &Context<'a>, statics: &Statics, posed: &Posed) -> Option<OnSoil<'a>> {
    if ctx.job.soils.is_empty() {
        return None;
    }
    let outlines = outlines(ctx, posed, statics.force);
    let sets = ctx.policy.ground_factors.sets();
    let mut worst: Option<OnSoil<'_>> = None;
    let mut take = |found: OnSoil<'a>| {
        let key = |o: &OnSoil<'_>| (o.status(), o.share());
        let worse = worst.is_none_or(|w| {
            let ((a, x), (b, y)) = (key(&found), key(&w));
            a.cmp(&b).then(x.total_cmp(&y)).is_gt()
        });
        if worse {
            worst = Some(found);
        }
    };
    for soil in &ctx.job.soils {
        let on = outlines.each_ref().map(|o| o.iter().any(|at| soil.reaches(*at, ctx.policy.stand_error)));
        for &set in &sets {
            for contact in (0..4).filter(|i| on[*i]) {
                let answer = answer(ctx, posed, contact, statics.force[contact], soil, set, &mut Silent);
                take(OnSoil { presses: Presses::One(contact), soil, set, answer });
            }
            for group in group::groups(statics, on, soil) {
                let answer = together(ctx, posed, &group, soil, set, &mut Silent);
                // Nothing lies below the top layer, or a mat of one refuses, which is told of that one.
                if let Some(answer) = answer.transpose() {
                    take(OnSoil { presses: Presses::Together(group), soil, set, answer });
                }
            }
        }
    }
    worst
}

/// Middle, corners and middles of the sides of what lies on the ground under these forces (N): of each patch, or of the mat
/// under it wherever that may come to lie.
fn outlines(ctx: &Context<'_>, posed: &Posed, force: [f64; 4]) -> [[DVec2; 9]; 4] {
    let mat = mat_stack::outline(ctx);
    patches::patches(ctx, posed, force).map(|mut patch| {
        patch.size = mat.unwrap_or(patch.size);
        let [a, b, c, d] = patches::corners(&patch);
        let side = |a: DVec2, b: DVec2| 0.5 * (a + b);
        [DVec2::from_array(patch.middle), a, b, c, d, side(a, b), side(b, c), side(c, d), side(d, a)]
    })
}

/// True if whatever presses with these forces (N) lies on stated soil, wherever the stand's error puts it.
pub(crate) fn all_known(ctx: &Context<'_>, posed: &Posed, force: [f64; 4]) -> bool {
    let stated = |at: DVec2| ctx.job.soils.iter().any(|s| s.reaches(at, 0.0));
    let error = ctx.policy.stand_error;
    let slant = DVec2::splat(FRAC_1_SQRT_2);
    let ways = [DVec2::X, DVec2::Y, slant, slant.perp()];
    let around = |at: DVec2| ways.into_iter().flat_map(move |way| [at + way * error, at - way * error]);
    outlines(ctx, posed, force).iter().flatten().all(|at| stated(*at) && around(*at).all(stated))
}

fn design(profile: &Profile, set: FactorSet) -> Profile {
    let mut design = profile.clone();
    for layer in &mut design.layers {
        layer.stated = set.stated(layer.stated);
    }
    design
}

fn answer(
    ctx: &Context<'_>,
    posed: &Posed,
    contact: usize,
    force: f64,
    soil: &SoilArea,
    set: FactorSet,
    trace: &mut impl Trace,
) -> Result<(f64, f64), Refusal> {
    if force.is_nan() {
        return Err(Refusal::NoNumber);
    }
    let action = set.action(Loads { permanent: 0.0, variable: force.max(0.0) }, trace);
    if action <= 0.0 {
        return Ok((0.0, f64::INFINITY));
    }
    let [length, width] = base(ctx, contact, force, action, set, trace)?;
    let base = Footprint::Rectangle { width, length };
    let slope = slope(posed);
    if let Some(row) = soil.presumed {
        // Reserve is in the presumed value: the force counts without a factor.
        return presumed(ctx, contact, force, base, slope, row, trace);
    }
    let load = ground::Load { vertical: action, ..ground::Load::default() };
    let pad = PadOnProfile { base, load, depth: 0.0, slope };
    let resistance = bearing_on_profile(&pad, &design(&soil.profile, set), trace)?.resistance;
    Ok((action, set.resistance(resistance, trace)))
}

/// Sides of what presses the soil under a contact, along and across, m: of its patch, or of the part of its mat that works.
pub(super) fn base(
    ctx: &Context<'_>,
    contact: usize,
    force: f64,
    action: f64,
    set: FactorSet,
    trace: &mut impl Trace,
) -> Result<[f64; 2], Refusal> {
    let pad = patches::size(ctx, force, contact);
    mat_stack::works(ctx, pad, action, Some(set), trace).unwrap_or(Ok(pad))
}

/// Design force and design resistance of several contacts as one on what lies below the top layer; `None` where nothing does.
fn together(
    ctx: &Context<'_>,
    posed: &Posed,
    group: &Group,
    soil: &SoilArea,
    set: FactorSet,
    trace: &mut impl Trace,
) -> Result<Option<(f64, f64)>, Refusal> {
    let Some(pad) = group.pad(ctx, set, slope(posed), trace)? else { return Ok(None) };
    let Some(below) = bearing_below_top(&pad, &design(&soil.profile, set), trace)? else { return Ok(None) };
    Ok(Some((pad.load.vertical, set.resistance(below.resistance, trace))))
}

fn slope(posed: &Posed) -> f64 {
    libm::atan(libm::hypot(posed.ground.along.nominal, posed.ground.across.nominal))
}

/// Presumed values are for level ground: no steeper than this, rad (1 in 10; ours).
const LEVEL_ENOUGH: f64 = 0.1;

/// Force and what a code presumes under the base, N; a tyre without a mat gets no answer.
fn presumed(
    ctx: &Context<'_>,
    contact: usize,
    force: f64,
    base: Footprint,
    slope: f64,
    row: &Presumed,
    trace: &mut impl Trace,
) -> Result<(f64, f64), Refusal> {
    let pad = mat_stack::there(ctx) || ctx.machine.pad_area(ctx.lift.support, contact).is_some();
    let under = match base {
        Footprint::Rectangle { width, length } if pad => Under::PadOrMat { width: width.min(length) },
        _ => Under::Tyre,
    };
    let allowable = row.allowable(under, trace)?;
    // What is not a number is not level.
    if slope <= LEVEL_ENOUGH { Ok((force, allowable * base.area())) } else { Err(Refusal::OutsideMethod) }
}

/// Largest mat that is looked for, m (ours: what a machine lays out).
const LARGEST_MAT: f64 = 3.0;

/// Side of the smallest square area that the soil carries the force on, m; `None` where none up to [`LARGEST_MAT`] does.
fn needed_side(posed: &Posed, found: &OnSoil<'_>, demand: f64) -> Option<f64> {
    let profile = design(&found.soil.profile, found.set);
    let slope = slope(posed);
    let load = ground::Load { vertical: demand, ..ground::Load::default() };
    (2..=(LARGEST_MAT / ground::needed_mat::SIDE_STEP) as u32)
        .map(|k| f64::from(k) * ground::needed_mat::SIDE_STEP)
        .find(|&side| {
            if let Some(row) = found.soil.presumed {
                let allowable = row.allowable(Under::PadOrMat { width: side }, &mut Silent);
                return allowable.is_ok_and(|pressure| pressure * side * side >= demand);
            }
            let base = Footprint::Rectangle { width: side, length: side };
            bearing_on_profile(&PadOnProfile { base, load, depth: 0.0, slope }, &profile, &mut Silent)
                .is_ok_and(|r| found.set.resistance(r.resistance, &mut Silent) >= demand)
        })
}

/// Name of a factor set, in words.
fn named(set: FactorSet) -> Message {
    match set {
        FactorSet::Da1Combination1 => text::FACTORS_DA1_1.message(),
        FactorSet::Da1Combination2 => text::FACTORS_DA1_2.message(),
        FactorSet::Da2 => text::FACTORS_DA2.message(),
        FactorSet::Da3 => text::FACTORS_DA3.message(),
        FactorSet::Global(f) => {
            text::FACTORS_ONE.with("factor", quantity::Quantity::new(f, quantity::Dimension::Number))
        }
    }
}

/// Whose table presumes it.
fn citation(row: &Presumed) -> Message {
    text::PRESUMED_BY.with("code", row.code.citation())
}

pub(crate) fn finding(ctx: &Context<'_>, statics: &Statics, posed: &Posed, found: &OnSoil<'_>) -> Finding {
    let status = found.status();
    let person = Source::Person { name: found.soil.by.clone(), statement: found.soil.name.clone() };
    let mut working = Working::default();
    // The same numbers with their steps.
    let (wheel, answer) = match &found.presses {
        Presses::One(contact) => {
            let force = statics.force[*contact];
            let answer = answer(ctx, posed, *contact, force, found.soil, found.set, &mut working);
            (contact_names(ctx)[*contact], answer)
        }
        Presses::Together(group) => {
            let answer = together(ctx, posed, group, found.soil, found.set, &mut working);
            (group.name(), answer.and_then(|a| a.ok_or(Refusal::NoNumber)))
        }
    };
    let (demand, limit) = match answer {
        Ok(both) => both,
        Err(refusal) => {
            let message = text::SOIL_CANNOT_TELL
                .with("wheel", wheel)
                .with("soil", &found.soil.name)
                .with("why", refusal.message());
            return Finding::new("ground", status, message).remedy(text::DO_EXPLORE).source(person).working(working);
        }
    };
    let (id, basis, source) = match (found.soil.presumed, status) {
        (None, Status::Go) => (text::SOIL_CARRIES, named(found.set), found.set.source()),
        (None, _) => (text::SOIL_WEAK, named(found.set), found.set.source()),
        (Some(row), Status::Go) => (text::SOIL_PRESUMED, citation(row), row.code.source()),
        (Some(row), _) => (text::SOIL_PRESUMED_WEAK, citation(row), row.code.source()),
    };
    let message = id
        .with("wheel", wheel)
        .with("soil", &found.soil.name)
        .with("by", &found.soil.by)
        .with("force", newtons(demand))
        .with("limit", newtons(limit))
        .with("factors", basis);
    let finding = Finding::new("ground", status, message)
        .measured(newtons(demand), newtons(limit), reserve(demand, limit))
        .source(person)
        .source(source)
        .working(working);
    if status == Status::Go {
        return finding;
    }
    // No mat keeps the loads of several contacts apart deep down.
    let side = match found.presses {
        Presses::One(_) => needed_side(posed, found, demand),
        Presses::Together(_) => None,
    };
    match side {
        Some(side) => finding.remedy(text::DO_MAT_AREA.with("side", metres(side))),
        None => finding.remedy(text::DO_BETTER_GROUND),
    }
}
