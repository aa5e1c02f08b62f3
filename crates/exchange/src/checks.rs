//! What cannot be written, found before anything is.

use crate::scene::View;
use crate::{ring, text};
use evidence::{Faults, Place, TextId};
use geometry::{DVec2, DVec3};
use site::{Body, PlanArea, PlanShape, Terrain};

/// Farthest that a coordinate may lie from the origin of its frame, m: about the way round the earth (ours).
const FARTHEST: f64 = 4e7;

/// Outlines smaller than this are lines, m² (ours).
const LEAST_AREA: f64 = 1e-9;

/// Every fault of a site, each with the thing it is found in.
pub(crate) fn faults(view: &View<'_>) -> Faults {
    let mut out = Faults::default();
    for (i, s) in view.ground.surfaces.iter().enumerate() {
        if let Terrain::Grid(g) = &s.terrain {
            let whole = g.heights.len() == g.rows.saturating_mul(g.cols);
            let far = g.cell * DVec2::new(g.cols as f64, g.rows as f64);
            let heights = g.heights.iter().all(|z| z.is_nan() || f64::from(z.abs()) <= FARTHEST);
            let good = all(&[g.north_west, far]) && g.cell.min_element() > 0.0 && whole && heights;
            number(&mut out, good, ("ground", i), &s.name);
        }
    }
    let around = view.surroundings;
    for (i, z) in around.zones.iter().enumerate() {
        shape(&mut out, &z.shape, ("zone", i), &z.name);
    }
    for (i, e) in around.excavations.iter().enumerate() {
        area(&mut out, &e.outline, ("excavation", i), &e.name);
        number(&mut out, e.depth.is_none_or(|d| here(d.nominal)), ("excavation", i), &e.name);
    }
    for (i, b) in around.buried.iter().enumerate() {
        shape(&mut out, &b.shape, ("buried", i), &b.name);
        number(&mut out, b.cover.is_none_or(|c| here(c.nominal)), ("buried", i), &b.name);
    }
    for (i, t) in around.things.iter().enumerate() {
        match &t.body {
            Body::Upright { shape: of, base, top } => {
                shape(&mut out, of, ("thing", i), &t.name);
                number(&mut out, [base, top].into_iter().flatten().all(|z| here(*z)), ("thing", i), &t.name);
            }
            Body::Columns(c) => {
                let wanted = c.rows.saturating_mul(c.cols);
                if c.tops.len() != wanted {
                    let message = text::COLUMNS_WRONG
                        .with("name", t.name.as_str())
                        .with("found", c.tops.len())
                        .with("wanted", wanted);
                    out.error("exchange::columns-wrong", place(("thing", i)), message, None);
                }
                let far = DVec2::new(c.cols as f64, c.rows as f64) * c.cell;
                let tops = c.tops.iter().all(|z| z.is_nan() || f64::from(z.abs()) <= FARTHEST);
                number(&mut out, all(&[c.south_west, far]) && tops, ("thing", i), &t.name);
                extent(&mut out, c.cell > 0.0, ("thing", i), &t.name);
            }
        }
        let openings = t.openings.iter().all(|o| all(&[o.from, o.to]) && here(o.sill) && here(o.head));
        number(&mut out, openings, ("thing", i), &t.name);
    }
    for (i, l) in view.lines.iter().enumerate() {
        let spans = l.spans.iter().all(|s| place_in_space(s.from) && place_in_space(s.to) && here(s.sag));
        number(&mut out, spans && all(&l.course), ("line", i), &l.name);
    }
    for (i, l) in view.landings.iter().enumerate() {
        let heading = l.approach.is_none_or(|a| a.heading.is_finite());
        number(&mut out, all(&[l.at, l.size]) && here(l.level) && heading, ("landing", i), &l.name);
    }
    out
}

fn here(value: f64) -> bool {
    value.abs() <= FARTHEST
}
fn all(points: &[DVec2]) -> bool {
    points.iter().all(|p| here(p.x) && here(p.y))
}
fn place_in_space(p: DVec3) -> bool {
    here(p.x) && here(p.y) && here(p.z)
}

fn shape(out: &mut Faults, shape: &PlanShape, at: (&str, usize), name: &str) {
    match shape {
        PlanShape::Area(of) => area(out, of, at, name),
        PlanShape::Strip { course, width } => {
            let good = all(course) && here(*width);
            number(out, good, at, name);
            let long = course.windows(2).any(|w| w[0] != w[1]);
            extent(out, !good || (long && *width > 0.0), at, name);
        }
        PlanShape::Round { centre, radius } => {
            let good = all(&[*centre]) && here(*radius);
            number(out, good, at, name);
            extent(out, !good || *radius > 0.0, at, name);
        }
    }
}

fn area(out: &mut Faults, area: &PlanArea, at: (&str, usize), name: &str) {
    let good = area.rings().all(all);
    number(out, good, at, name);
    // A ring that crosses itself may have as much on either side: it has an extent all the same.
    let wide = |ring: &[DVec2]| {
        ring.len() >= 3
            && (ring::signed_area(ring).abs() > LEAST_AREA
                || ring.iter().any(|p| (*p - ring[0]).perp_dot(ring[1] - ring[0]).abs() > LEAST_AREA))
    };
    extent(out, !good || area.rings().all(wide), at, name);
}

fn number(out: &mut Faults, good: bool, at: (&str, usize), name: &str) {
    fault(out, good, "exchange::not-finite", at, text::NOT_FINITE, text::NOT_FINITE_HINT, name);
}

fn extent(out: &mut Faults, good: bool, at: (&str, usize), name: &str) {
    fault(out, good, "exchange::no-extent", at, text::NO_EXTENT, text::NO_EXTENT_HINT, name);
}

fn fault(out: &mut Faults, good: bool, code: &str, at: (&str, usize), what: TextId, hint: TextId, name: &str) {
    if !good {
        out.error(code, place(at), what.with("name", name), Some(hint.message()));
    }
}

/// `thing[2]`: lists count from 1.
fn place((list, index): (&str, usize)) -> Place {
    Place { key: Some(format!("{list}[{}]", index + 1)), ..Place::default() }
}
