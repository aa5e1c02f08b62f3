//! Set-back lines around excavations: how near the outer edge of a tyre, pad or mat may come.
//!
//! A line runs at one distance from the outline: parallel to its sides, and round its outward corners. Pieces that come
//! nearer to another part of the outline are left out, so that slots and inward corners need no case of their own.

use super::looks::{self, SiteMark};
use super::map::{Map, sound};
use super::{Sheet, SiteStand};
use crate::svg::Px;
use crate::words::{Words, length};
use geometry::DVec2;
use planning::{LineOf, SetBackLine, planning_lines};
use site::{PlanArea, Site};
use wording::ui;

/// Length of a stroke towards the excavation, px.
pub(super) const STROKE: f64 = 5.0;
/// Between two strokes along the line, px.
const APART: f64 = 9.0;
/// Between two places at which a line is looked at, px.
const STEP: f64 = 2.0;
/// Lines nearer to the outline than this cannot be told from it, px: their distance is told in words alone.
const LEAST: f64 = 3.0;

/// A line, and for whose wheels.
pub(crate) struct SetBack<'a> {
    pub(crate) line: SetBackLine,
    stand: Option<&'a SiteStand>,
}

impl SetBack<'_> {
    /// Its distance in words, for the excavation's label.
    pub(crate) fn said(&self, words: &Words<'_>) -> String {
        let distance = length(self.line.distance);
        match (self.line.of, self.stand) {
            (LineOf::Face, _) => words.say(ui::SITE_SET_BACK_FACE.with("distance", distance)),
            (LineOf::Wheels, Some(stand)) => {
                words.say(ui::SITE_SET_BACK_FOR.with("stand", stand.name.as_str()).with("distance", distance))
            }
            _ => words.say(ui::SITE_SET_BACK.with("distance", distance)),
        }
    }
}

/// The planning line of every excavation, and what the wheels of each stand ask.
pub(crate) fn lines<'a>(site: &Site, stands: &'a [SiteStand]) -> Vec<SetBack<'a>> {
    // A site alone has no soil; what water in it asks comes with the stands.
    let planning = planning_lines(&site.surroundings.excavations, &[]);
    let planning = planning.into_iter().map(|line| SetBack { line, stand: None });
    let of = |stand: &'a SiteStand| stand.set_backs.iter().map(move |line| SetBack { line: *line, stand: Some(stand) });
    let all = planning.chain(stands.iter().flat_map(of));
    all.filter(|s| s.line.distance.is_finite() && s.line.distance > 0.0).collect()
}

pub(crate) fn draw(sheet: &mut Sheet, map: &Map, site: &Site, set_backs: &[SetBack<'_>], words: &Words<'_>) {
    sheet.svg.open("set-backs");
    for set_back in set_backs {
        let line = set_back.line;
        let Some(dug) = site.surroundings.excavations.get(line.excavation) else { continue };
        let mark = if line.of == LineOf::Planning { SiteMark::SetBack } else { SiteMark::SetBackWheels };
        if line.distance * map.scale < LEAST || !dug.outline.rings().flatten().all(|p| sound(*p)) {
            continue;
        }
        let mut longest: Vec<Px> = Vec::new();
        for run in runs(&dug.outline, line.distance, map) {
            let points: Vec<Px> = run.iter().map(|p| p.0).collect();
            let strokes = if mark == SiteMark::SetBackWheels { strokes(&run) } else { Vec::new() };
            looks::set_back(&mut sheet.svg, &points, &strokes, mark);
            sheet.marks.insert(mark);
            if points.len() > longest.len() {
                longest = points;
            }
        }
        let share = |share: f64| longest.get((longest.len() as f64 * share) as usize).copied();
        let places = [0.12, 0.37, 0.62, 0.87, 0.25, 0.5, 0.75, 0.02].into_iter().filter_map(share).collect();
        sheet.labels.figure(places, words.length(line.distance));
    }
    sheet.svg.close();
}

/// The planning line at `distance` (m) around an outline; true where some of it is in the picture.
pub(crate) fn set_back_line(svg: &mut crate::svg::Svg, map: &Map, area: &PlanArea, distance: f64) -> bool {
    if distance * map.scale < LEAST {
        return false;
    }
    let runs = runs(area, distance, map);
    for run in &runs {
        let points: Vec<Px> = run.iter().map(|p| p.0).collect();
        looks::set_back(svg, &points, &[], SiteMark::SetBack);
    }
    !runs.is_empty()
}

/// A place of a line in the picture, and the direction to the outline there.
type Place = (Px, Px);

/// Whole pieces of the line at `distance` (m) from the outline, within the plot.
fn runs(area: &PlanArea, distance: f64, map: &Map) -> Vec<Vec<Place>> {
    let mut out = Vec::new();
    let step = STEP / map.scale;
    // A hair less, or the line would be nearer than itself.
    let free =
        |p: DVec2| !area.encloses(p) && !area.contains(p) && area.distance_to_point(p) >= distance * (1.0 - 1e-6);
    for ring in area.rings().filter(|ring| ring.len() > 2) {
        let n = ring.len();
        let normal = |i: usize| (ring[(i + 1) % n] - ring[i % n]).normalize_or_zero().perp();
        for side in [distance, -distance] {
            let mut run: Vec<Place> = Vec::new();
            let mut put = |p: DVec2, base: DVec2| {
                let (at, to) = (map.px(p), map.px(base));
                let inside =
                    at.0 > map.plot.x && at.0 < map.plot.right() && at.1 > map.plot.y && at.1 < map.plot.bottom();
                if inside && free(p) {
                    let away = libm::hypot(to.0 - at.0, to.1 - at.1).max(1e-9);
                    run.push((at, ((to.0 - at.0) / away, (to.1 - at.1) / away)));
                } else if !run.is_empty() {
                    out.push(std::mem::take(&mut run));
                }
            };
            for i in 0..n {
                let (a, b, off) = (ring[i], ring[(i + 1) % n], normal(i) * side);
                let pieces = ((b - a).length() / step).ceil().clamp(1.0, 2000.0);
                for k in 0..=pieces as usize {
                    let base = a + (b - a) * (k as f64 / pieces);
                    put(base + off, base);
                }
                // Round the corner, the short way to the next side.
                let (from, next) = (normal(i), normal(i + 1));
                let turn = libm::atan2(from.perp_dot(next), from.dot(next));
                let pieces = (turn.abs() * distance / step).ceil().clamp(1.0, 400.0);
                for k in 1..pieces as usize {
                    let (sin, cos) = libm::sincos(turn * k as f64 / pieces);
                    put(b + DVec2::new(cos, sin).rotate(off), b);
                }
            }
            // The ring closes where it began.
            if !run.is_empty() {
                put_last(&mut out, run, map.px(ring[0] + normal(0) * side));
            }
        }
    }
    out.retain(|run| run.len() > 1);
    out
}

/// The last run of a ring goes on to where the ring began, where it was not broken there.
fn put_last(out: &mut Vec<Vec<Place>>, mut run: Vec<Place>, first: Px) {
    let near = |p: Px| libm::hypot(p.0 - first.0, p.1 - first.1) <= 2.0 * STEP;
    if let Some(last) = run.last().copied().filter(|last| near(last.0)) {
        run.push((first, last.1));
    }
    out.push(run);
}

/// Strokes from the line towards the outline, evenly spaced.
fn strokes(run: &[Place]) -> Vec<(Px, Px)> {
    let (mut out, mut since) = (Vec::new(), 0.0);
    for pair in run.windows(2) {
        let [(a, _), (b, to)] = [pair[0], pair[1]];
        since += libm::hypot(b.0 - a.0, b.1 - a.1);
        if since >= APART {
            since = 0.0;
            out.push((b, (b.0 + to.0 * STROKE, b.1 + to.1 * STROKE)));
        }
    }
    out
}
