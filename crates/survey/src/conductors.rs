//! Likely conductors: points high above the ground that hang in a line, as a suggestion.
//!
//! No open cloud with a real overhead line was at hand: the rule is proven on clouds made here, and
//! on real clouds without a line, where it must find nothing. What it does not find may be there
//! all the same: thin wires are often missed by a survey, tight ones show no sag, and a line that
//! crosses a tree is torn apart. Finding nothing is never an answer to "is there a line?".

use crate::cloud_header::count;
use crate::cloud_raster::RasterPlan;
use crate::cloud_stream::{open_all, visit_all};
use crate::conductor_fit::{HighPoints, SpanFit};
use crate::conductor_seeds;
use crate::notes::{Notes, Refused};
use crate::options::GroundOptions;
use crate::raster_opening::fill_from_nearest;
use crate::text;
use evidence::Faults;
use geometry::DVec3;
use site::{Span, Terrain};

/// Side of the cells in which the ground is taken, m.
const GROUND_CELL: f64 = 1.0;
/// Most cells and most high points that are kept: 24 bytes a point.
const MOST_CELLS: u64 = 8_000_000;
const MOST_POINTS: u64 = 5_000_000;
/// The class of ground points (LAS 1.4 R15, table 17).
const GROUND: u8 = 2;

/// What counts as a likely conductor. Values are ours.
#[derive(Debug, Clone, PartialEq)]
pub struct ConductorOptions {
    /// Points lower than this above the ground are no conductors, m.
    pub lowest: f64,
    /// Shortest span, m.
    pub shortest: f64,
    /// Points up to this from the curve belong to it, vertically, m.
    pub tolerance: f64,
    /// Units, window and the rest, as for the ground.
    pub cloud: GroundOptions,
}

impl Default for ConductorOptions {
    fn default() -> Self {
        Self { lowest: 4.0, shortest: 15.0, tolerance: 0.2, cloud: GroundOptions::default() }
    }
}

/// What may be conductors.
#[derive(Debug, Clone, PartialEq)]
pub struct LikelyConductors {
    /// The spans, longest first. Each is a suggestion that a person confirms or refuses.
    pub spans: Vec<LikelySpan>,
    /// Warnings; none of them an error.
    pub notes: Faults,
}

/// Points that hang like a conductor.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LikelySpan {
    /// First point that was seen, on the curve, m. The support may stand further out.
    pub from: DVec3,
    /// Last point that was seen, m.
    pub to: DVec3,
    /// Sag below the chord at the middle of what was seen, m (parabola).
    pub sag: f64,
    /// Root mean square of the vertical distances of the points to the curve, m.
    pub rms: f64,
    /// Number of points on it.
    pub points: u64,
}

impl LikelySpan {
    /// As a span of an overhead line, once a person has confirmed it.
    pub fn span(&self) -> Span {
        Span { from: self.from, to: self.to, sag: self.sag }
    }
}

/// Suggests spans of conductors: points of any class but ground and noise, high above `ground`, in
/// a line in plan, on a parabola that hangs, free on both sides.
///
/// Seeds are lines by Hough's transform over cells that have few neighbours of their own height;
/// a parabola through three points of a line that most of it agrees with (RANSAC, Fischler and
/// Bolles 1981, Communications of the ACM 24(6), 381-395, with a fixed sequence) is grown along the
/// line to its ends.
///
/// # Errors
/// Every fault of every tile; options that cannot be; too many cells or high points; a ground that
/// knows nothing where the cloud lies.
pub fn likely_conductors(
    tiles: &[(&str, &[u8])],
    ground: &Terrain,
    options: &ConductorOptions,
) -> Result<LikelyConductors, Faults> {
    let mut notes = Notes::new(tiles.first().map_or("", |t| t.0));
    let result = check(options, &mut notes);
    notes.finish(result)?;
    let (opened, mut faults) = open_all(tiles, &options.cloud)?;
    let mut notes = Notes::new(tiles.first().map_or("", |t| t.0));
    let window = options.cloud.window;
    let result = RasterPlan::of(&opened, window, GROUND_CELL, MOST_CELLS, &mut notes).and_then(|plan| match plan {
        Some(plan) => heights(&plan, ground, &mut notes).map(|heights| Some((plan, heights))),
        None => Ok(None),
    });
    let (found, _) = notes.finish(result)?;
    let mut high = Vec::new();
    let mut met = 0;
    visit_all(&opened, &mut faults, |_, frame, sample| {
        let point = frame.metres(sample.stored);
        let at = point.truncate();
        if sample.class == GROUND || !sample.is_something(point) || window.is_some_and(|w| !w.contains(at)) {
            return;
        }
        let under = found.as_ref().and_then(|(plan, heights)| Some(heights[plan.index(at)?]));
        if under.is_some_and(|z| point.z - f64::from(z) >= options.lowest) {
            met += 1;
            if met <= MOST_POINTS {
                high.push(point);
            }
        }
    })?;
    let mut notes = Notes::new(tiles.first().map_or("", |t| t.0));
    let result = if met > MOST_POINTS {
        let message = text::TOO_MANY_POINTS.with("points", count(met)).with("most", count(MOST_POINTS));
        Err(notes.refuse("survey::too-many-points", message, text::DO_STATE_WINDOW))
    } else {
        Ok(spans(high, options))
    };
    if let Ok(spans) = &result
        && !spans.is_empty()
    {
        let message = text::CONDUCTORS_LIKELY.with("count", spans.len());
        notes.warn("survey::likely-conductors", message, text::DO_CONFIRM_LINE);
    }
    let (spans, more) = notes.finish(result)?;
    faults.append(more);
    Ok(LikelyConductors { spans, notes: faults })
}

fn check(options: &ConductorOptions, notes: &mut Notes<'_>) -> Result<(), Refused> {
    let good = (0.0..=1000.0).contains(&options.lowest)
        && (5.0..=2000.0).contains(&options.shortest)
        && (0.01..=1.0).contains(&options.tolerance);
    if good { Ok(()) } else { Err(notes.refuse("survey::option", text::OPTION_ABSURD, text::DO_STATE_OPTION)) }
}

fn heights(plan: &RasterPlan, ground: &Terrain, notes: &mut Notes<'_>) -> Result<Vec<f32>, Refused> {
    let height = |i: usize| ground.height(plan.centre(i / plan.cols, i % plan.cols)).map_or(f32::NAN, |z| z as f32);
    let mut heights: Vec<f32> = (0..plan.cells()).map(height).collect();
    if fill_from_nearest(&mut heights, plan.rows, plan.cols) {
        Ok(heights)
    } else {
        Err(notes.refuse("survey::no-ground-under", text::NO_GROUND_UNDER, text::DO_GIVE_GROUND_THERE))
    }
}

/// Most conductors one above another on one seed.
const MOST_ON_A_LINE: usize = 8;

fn spans(high: Vec<DVec3>, options: &ConductorOptions) -> Vec<LikelySpan> {
    let Some(mut points) = HighPoints::of(high) else { return Vec::new() };
    let mut found: Vec<SpanFit> = Vec::new();
    conductor_seeds::each(&mut points, |points, seed| {
        for _ in 0..MOST_ON_A_LINE {
            let Some(fit) = SpanFit::grown(points, seed, options.tolerance) else { break };
            // Used up whether it counts or not, so that every search ends.
            points.use_up(&fit.members);
            if fit.is_likely(points, options.shortest) {
                found.push(fit);
            }
        }
    });
    let mut spans: Vec<LikelySpan> = found.iter().map(|fit| fit.span(&points)).collect();
    let length = |s: &LikelySpan| s.from.distance(s.to);
    spans.sort_by(|a, b| length(b).total_cmp(&length(a)));
    spans
}
