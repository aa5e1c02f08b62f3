//! What is drawn, as triangles and lines in space.

use crate::ground_mesh::{self, Mesh};
use crate::item::Drawn;
use crate::ring::right_handed;
use crate::scene::{Scene, Under};
use crate::text;
use crate::triangulate::triangulate;
use evidence::{Faults, Place};
use geometry::{DVec2, DVec3};
use site::{Opening, PlanArea, PlanShape, walls};

/// How far above the ground a zone is laid, so that it is seen, m (ours).
pub(crate) const LIFT: f64 = 0.05;

/// Triangles and lines, m in the site frame.
#[derive(Debug, Clone, Default)]
pub(crate) struct Solid {
    /// Counter-clockwise seen from outside.
    pub(crate) triangles: Vec<[DVec3; 3]>,
    pub(crate) segments: Vec<[DVec3; 2]>,
}

/// A ground surface as drawn.
pub(crate) struct DrawnGround {
    pub(crate) name: String,
    pub(crate) mesh: Mesh,
    /// Every how many rows and columns it has.
    pub(crate) step: usize,
}

/// The ground's surfaces with at most `most` triangles in all, thinned where need be; a fault where
/// that cannot be, or where there are more than `most_columns` columns in all.
pub(crate) fn grounds(scene: &Scene<'_>, most: usize, most_columns: usize) -> Result<Vec<DrawnGround>, Faults> {
    let mut faults = Faults::default();
    let mut too_much = |list: &str, i: usize, name: &str, found: usize, most: usize| {
        let place = Place { key: Some(format!("{list}[{}]", i + 1)), ..Place::default() };
        let message = text::TOO_MUCH.with("name", name).with("found", found).with("most", most);
        faults.error("exchange::too-much", place, message, Some(text::TOO_MUCH_HINT.message()));
    };
    let surfaces = &scene.ground.surfaces;
    let share = most / surfaces.len().max(1);
    let mut out = Vec::new();
    for (i, s) in surfaces.iter().enumerate() {
        match ground_mesh::step_for(&s.terrain, share) {
            Some(step) => {
                let mesh = ground_mesh::thinned(&s.terrain, step);
                out.push(DrawnGround { name: s.name.clone(), mesh, step });
            }
            None => too_much("ground", i, &s.name, ground_mesh::most_triangles(&s.terrain), share),
        }
    }
    let columns = |drawn: &[Drawn]| drawn.iter().filter(|d| matches!(d, Drawn::Column { .. })).count();
    let all: usize = scene.items.iter().map(|item| columns(&item.drawn)).sum();
    // Said once, at the largest: the others would only repeat it.
    if all > most_columns
        && let Some(item) = scene.items.iter().max_by_key(|item| columns(&item.drawn))
    {
        too_much("thing", thing_index(&item.key), &item.name, all, most_columns);
    }
    if faults.any_error() { Err(faults) } else { Ok(out) }
}

/// The place in its list of the thing with that key: "thing/3/id".
fn thing_index(key: &str) -> usize {
    key.split('/').nth(1).and_then(|n| n.parse::<usize>().ok()).map_or(0, |n| n.saturating_sub(1))
}

/// The notes of a scene, with those about ground that was thinned.
pub(crate) fn notes(scene: &Scene<'_>, grounds: &[DrawnGround], wording: wording::Wording) -> Vec<String> {
    let thin = grounds.iter().filter(|g| g.step > 1);
    let said = thin.map(|g| wording.render(&text::NOTE_THINNED.with("name", g.name.as_str()).with("step", g.step)));
    scene.notes.iter().cloned().chain(said).collect()
}

/// Triangles and lines of what is drawn.
pub(crate) fn solid(drawn: &[Drawn], under: &Under<'_>) -> Solid {
    let mut out = Solid::default();
    for one in drawn {
        match one {
            Drawn::Upright { shape, base, top, openings } => {
                for area in shape.outlines() {
                    upright(&mut out, &area, *base, *top, openings);
                }
            }
            Drawn::Pit { area, floor, edge } => {
                let area = right_handed(area);
                sides(&mut out, &area, *floor, *edge, &[], true);
                level(&mut out, &area, *floor, true);
            }
            Drawn::Level { shape, at } => {
                for area in shape.outlines() {
                    level(&mut out, &area, *at, true);
                }
            }
            Drawn::Draped { shape, otherwise } => {
                let height = |p: DVec2| under.height(p).unwrap_or(*otherwise) + LIFT;
                for area in shape.outlines() {
                    let corners = triangulate(&area, &spread(&area));
                    out.triangles.extend(corners.iter().map(|t| t.map(|p| p.extend(height(p)))));
                }
            }
            Drawn::Curve(points) => out.segments.extend(points.windows(2).map(|w| [w[0], w[1]])),
            Drawn::Cross { at, size } => {
                let half = size * 0.5;
                for way in [DVec3::X, DVec3::Y] {
                    out.segments.push([*at - way * half, *at + way * half]);
                }
            }
            Drawn::Column { low, high } => {
                let outer = vec![low.truncate(), DVec2::new(high.x, low.y), high.truncate(), DVec2::new(low.x, high.y)];
                upright(&mut out, &PlanArea { outer, holes: Vec::new() }, low.z, high.z, &[]);
            }
        }
    }
    out
}

/// Points of what is drawn, enough for its extent, m.
pub(crate) fn points(drawn: &Drawn) -> Vec<DVec3> {
    let over = |shape: &PlanShape, levels: [f64; 2]| {
        let (low, high) = shape.bounds().unwrap_or_default();
        vec![low.extend(levels[0]), high.extend(levels[1])]
    };
    match drawn {
        Drawn::Upright { shape, base, top, .. } => over(shape, [*base, *top]),
        Drawn::Pit { area, floor, edge } => over(&PlanShape::Area(area.clone()), [*floor, *edge]),
        Drawn::Level { shape, at } => over(shape, [*at; 2]),
        Drawn::Draped { shape, otherwise } => over(shape, [*otherwise; 2]),
        Drawn::Curve(points) => points.clone(),
        Drawn::Cross { at, .. } => vec![*at],
        Drawn::Column { low, high } => vec![*low, *high],
    }
}

fn upright(out: &mut Solid, area: &PlanArea, base: f64, top: f64, openings: &[Opening]) {
    let area = right_handed(area);
    // An outline with openings is a shell to distances as well; its top and underside are drawn all the same.
    if top > base {
        sides(out, &area, base, top, openings, false);
        level(out, &area, base, false);
    }
    level(out, &area, top, true);
}

fn sides(out: &mut Solid, area: &PlanArea, base: f64, top: f64, openings: &[Opening], inwards: bool) {
    if top <= base {
        return;
    }
    for w in walls(area, base, top, openings).0 {
        let (a, b) = if inwards { (w.b, w.a) } else { (w.a, w.b) };
        let [p, q, r, s] = [a.extend(w.base), b.extend(w.base), b.extend(w.top), a.extend(w.top)];
        out.triangles.extend([[p, q, r], [p, r, s]]);
    }
}

fn level(out: &mut Solid, area: &PlanArea, at: f64, up: bool) {
    for [a, b, c] in triangulate(area, &[]) {
        let corners = if up { [a, b, c] } else { [a, c, b] };
        out.triangles.push(corners.map(|p| p.extend(at)));
    }
}

/// Points inside an outline at which it is laid on the ground: 1 m apart, at most about forty to a side (ours).
fn spread(area: &PlanArea) -> Vec<DVec2> {
    let Some((low, high)) = area.bounds() else { return Vec::new() };
    let apart = ((high - low).max_element() / 40.0).max(1.0);
    let count = ((high - low) / apart).floor();
    let (cols, rows) = (count.x as usize, count.y as usize);
    let at = |r: usize, c: usize| low + DVec2::new(c as f64, r as f64) * apart;
    let all = (0..=rows).flat_map(|r| (0..=cols).map(move |c| at(r, c)));
    all.filter(|p| area.contains(*p)).collect()
}
