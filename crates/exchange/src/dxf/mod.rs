//! DXF, ASCII, version R2000 (AC1015).
//!
//! R2000 and not R12, because `$INSUNITS`, the length unit of the numbers, was defined with it: without it a reader must
//! guess metres. Every tool that reads DXF today reads R2000. Units: metres, as in the site frame. Layers by kind.
//! Properties stand as extended data under the application name `COUNTERPOISE`.

mod entities;
mod skeleton;
mod words;

use crate::about::{About, named};
use crate::item::{Drawn, Item};
use crate::layer::{self, Layer};
use crate::scene::{Scene, Under};
use crate::solids;
use entities::{Entities, Tags};
use evidence::Faults;
use geometry::{DVec2, DVec3};
use serde_json::Value;
use site::PlanShape;
use std::collections::BTreeSet;
use wording::ui;

/// Height of names, m (ours).
const LETTERS: f64 = 0.5;

/// The file.
pub(crate) fn write(scene: &Scene<'_>, about: &About) -> Result<Vec<u8>, Faults> {
    let grounds = solids::grounds(scene, crate::MOST_FACES, crate::MOST_FACES)?;
    let under = Under { ground: scene.ground, floor: scene.floor };
    let mut out = Entities::default();
    let mut layers: BTreeSet<Layer> = [layer::NOTES].into();
    for ground in &grounds {
        layers.insert(layer::GROUND);
        let at = |i: u32| ground.mesh.origin + DVec3::from_array(ground.mesh.vertices[i as usize].map(f64::from));
        for triangle in &ground.mesh.triangles {
            out.face(layer::GROUND.name, triangle.map(at));
        }
    }
    for item in scene.items.iter().filter(|i| !i.drawn.is_empty()) {
        layers.insert(item.layer);
        if has_openings(item) {
            layers.insert(layer::OPENING);
        }
        draw(&mut out, item, about, &under);
    }
    let notes = solids::notes(scene, &grounds, about.wording);
    let corner = out.extent.map_or(DVec3::ZERO, |(low, _)| low);
    let lines = std::iter::once(scene.name.as_str()).chain(notes.iter().map(String::as_str));
    let wrapped: Vec<String> = lines.flat_map(words::wrapped).collect();
    for (i, line) in wrapped.iter().enumerate() {
        let at = corner - DVec3::new(0.0, 2.0 + i as f64, 0.0);
        out.text(layer::NOTES.name, at, 0.6, line, &Tags::default());
    }
    Ok(skeleton::file(&out, &layers, &wrapped).into_bytes())
}

fn has_openings(item: &Item) -> bool {
    item.drawn.iter().any(|d| matches!(d, Drawn::Upright { openings, .. } if !openings.is_empty()))
}

fn draw(out: &mut Entities, item: &Item, about: &About, under: &Under<'_>) {
    let tags = tags(item, about);
    let layer = item.layer.name;
    for drawn in &item.drawn {
        match drawn {
            Drawn::Upright { shape, base, top, openings } => {
                outline(out, layer, shape, *base, top - base, &tags);
                for o in openings {
                    let [a, b] = [o.from, o.to];
                    let frame = [a.extend(o.sill), b.extend(o.sill), b.extend(o.head), a.extend(o.head)];
                    out.polyline(layer::OPENING.name, &frame, true, &tags);
                }
            }
            Drawn::Pit { area, floor, edge } => {
                outline(out, layer, &PlanShape::Area(area.clone()), *floor, edge - floor, &tags);
            }
            Drawn::Level { shape, at } => outline(out, layer, shape, *at, 0.0, &tags),
            Drawn::Draped { shape, otherwise } => {
                let over = |p: &DVec2| p.extend(under.height(*p).unwrap_or(*otherwise));
                if let PlanShape::Strip { course, .. } = shape {
                    out.polyline(layer, &course.iter().map(over).collect::<Vec<_>>(), false, &tags);
                } else {
                    for ring in
                        shape.outlines().iter().flat_map(|o| o.rings().map(<[DVec2]>::to_vec).collect::<Vec<_>>())
                    {
                        out.polyline(layer, &ring.iter().map(over).collect::<Vec<_>>(), true, &tags);
                    }
                }
            }
            Drawn::Curve(points) => out.polyline(layer, points, false, &tags),
            Drawn::Cross { at, .. } => out.point(layer, *at, &tags),
            Drawn::Column { low, high } => {
                let ring = [low.truncate(), DVec2::new(high.x, low.y), high.truncate(), DVec2::new(low.x, high.y)];
                out.flat(layer, &ring, 0.0, low.z, high.z - low.z, true, &tags);
            }
        }
    }
    let name = named(about, &item.name, &item.doubts);
    if let Some(middle) = crate::ring::middle(item.drawn.iter().flat_map(solids::points)) {
        let top = item.drawn.iter().flat_map(solids::points).map(|p| p.z).fold(middle.z, f64::max);
        out.text(layer, middle.truncate().extend(top), LETTERS, &name, &tags);
    }
}

/// A shape at a level, with a thickness upward: rings as closed polylines, a strip as a polyline with a width, a
/// circle as a circle.
fn outline(out: &mut Entities, layer: &str, shape: &PlanShape, level: f64, thickness: f64, tags: &Tags) {
    match shape {
        PlanShape::Area(area) => {
            for ring in area.rings() {
                out.flat(layer, ring, 0.0, level, thickness, true, tags);
            }
        }
        PlanShape::Strip { course, width } => {
            out.flat(layer, &reaching(course, width * 0.5), *width, level, thickness, false, tags);
        }
        PlanShape::Round { centre, radius } => out.circle(layer, centre.extend(level), *radius, thickness, tags),
    }
}

/// A course that reaches half its width past both ends, as distances reckon it.
fn reaching(course: &[DVec2], by: f64) -> Vec<DVec2> {
    let mut out: Vec<DVec2> = Vec::with_capacity(course.len());
    for p in course {
        if out.last() != Some(p) {
            out.push(*p);
        }
    }
    if let [first, second, ..] = out[..] {
        out[0] = first - (second - first).normalize_or_zero() * by;
    }
    if let [.., before, last] = out[..] {
        let end = out.len() - 1;
        out[end] = last + (last - before).normalize_or_zero() * by;
    }
    out
}

/// What is known of an item, as extended data. Columns carry only whose they are.
fn tags(item: &Item, about: &About) -> Tags {
    let mut out = vec![format!("key={}", item.key)];
    let many = item.drawn.iter().any(|d| matches!(d, Drawn::Column { .. }));
    for (name, value) in item.properties.0.iter().filter(|_| !many) {
        let said = match value {
            Value::Null => about.wording.text(ui::NOT_KNOWN),
            Value::String(text) => text.clone(),
            Value::Number(number) => number.to_string(),
            Value::Bool(yes) => yes.to_string(),
            Value::Array(_) | Value::Object(_) => continue,
        };
        out.push(format!("{name}={said}"));
    }
    Tags::new(&out)
}
