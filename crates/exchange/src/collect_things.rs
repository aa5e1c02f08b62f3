//! Things that stand, as items.

use crate::about::DRAWN_HEIGHT;
use crate::collect_site::keyed;
use crate::item::{Drawn, Item, Position, Properties, Shape};
use crate::scene::{Under, rings};
use crate::{layer, text};
use geometry::DVec2;
use serde_json::Value;
use site::{Body, Columns, Opening, PlanShape, Thing};

pub(crate) fn thing(index: usize, thing: &Thing, under: &Under<'_>) -> Item {
    let mut properties = Properties::default();
    properties.add("kind", word(thing.kind));
    properties.add("id", thing.id.as_str());
    properties.add("name", thing.name.as_str());
    let mut doubts = Vec::new();
    let (shape, drawn) = match &thing.body {
        Body::Upright { shape, base, top } => {
            properties.number("base_m", *base);
            properties.number("top_m", *top);
            let ground = under.lowest(shape);
            let from = base.or(ground).unwrap_or_else(|| {
                doubts.push(text::GROUND_NOT_KNOWN);
                under.floor
            });
            let to = top.unwrap_or_else(|| {
                doubts.push(text::HEIGHT_NOT_KNOWN);
                from + DRAWN_HEIGHT
            });
            let (known, of) = placed(shape, *base, under);
            properties.add("heights_are", of);
            size(&mut properties, shape);
            let upright =
                Drawn::Upright { shape: shape.clone(), base: from.min(to), top: to, openings: thing.openings.clone() };
            (known, vec![upright])
        }
        Body::Columns(columns) => {
            properties.number("base_m", None);
            properties.number("top_m", columns.highest());
            properties.add("heights_are", "tops of columns");
            properties.number("cell_m", columns.cell);
            properties.add("columns", columns.iter().count());
            as_columns(columns, under, &mut doubts)
        }
    };
    properties.number("accuracy_m", thing.accuracy);
    properties.add("source", thing.source.as_str());
    if !thing.openings.is_empty() {
        properties.add("openings", Value::Array(thing.openings.iter().map(opening).collect()));
    }
    Item {
        layer: layer::of_thing(thing.kind),
        key: keyed("thing", index, &thing.id),
        name: thing.name.clone(),
        doubts,
        properties,
        shape,
        drawn,
    }
}

/// A shape with heights: those stated, those of the ground, or none; and which.
pub(crate) fn placed(shape: &PlanShape, level: Option<f64>, under: &Under<'_>) -> (Shape, Option<&'static str>) {
    let positions = |points: &[DVec2]| match level {
        Some(z) => points.iter().map(|p| Position(*p, Some(z))).collect(),
        None => under.positions(points, 0.0),
    };
    let out = match shape {
        PlanShape::Strip { course, .. } => Shape::Line(positions(course)),
        PlanShape::Area(area) => Shape::Area(rings(area, positions)),
        PlanShape::Round { .. } => match shape.outlines().first() {
            Some(area) => Shape::Area(rings(area, positions)),
            None => Shape::Nowhere,
        },
    };
    let known = match &out {
        Shape::Line(points) => points.iter().all(|p| p.1.is_some()),
        Shape::Area(rings) => rings.iter().flatten().all(|p| p.1.is_some()),
        _ => false,
    };
    let of = known.then_some(if level.is_some() { "base" } else { "ground" });
    (out, of)
}

/// What a line or a many-cornered ring does not say of a strip or a circle.
pub(crate) fn size(properties: &mut Properties, shape: &PlanShape) {
    match shape {
        PlanShape::Strip { width, .. } => properties.number("width_m", *width),
        PlanShape::Round { centre, radius } => {
            properties.number("centre_east_m", centre.x);
            properties.number("centre_north_m", centre.y);
            properties.number("radius_m", *radius);
        }
        PlanShape::Area(_) => {}
    }
}

/// The word for a kind in job files, as their own form writes it.
pub(crate) fn word(kind: impl serde::Serialize) -> Value {
    serde_json::to_value(kind).unwrap_or(Value::Null)
}

fn opening(o: &Opening) -> Value {
    // From, to, sill, head: a list keeps its order everywhere.
    Value::Array([o.from.x, o.from.y, o.to.x, o.to.y, o.sill, o.head].map(crate::item::number).to_vec())
}

fn as_columns(columns: &Columns, under: &Under<'_>, doubts: &mut Vec<evidence::TextId>) -> (Shape, Vec<Drawn>) {
    let side = DVec2::splat(columns.cell);
    let (mut tops, mut drawn, mut unknown) = (Vec::new(), Vec::new(), false);
    for (corner, top) in columns.iter() {
        let middle = corner + side * 0.5;
        tops.push(Position(middle, Some(top)));
        let ground = under.height(middle);
        unknown |= ground.is_none();
        let base = ground.unwrap_or(under.floor).min(top);
        drawn.push(Drawn::Column { low: corner.extend(base), high: (corner + side).extend(top) });
    }
    if unknown {
        doubts.push(text::GROUND_NOT_KNOWN);
    }
    (if tops.is_empty() { Shape::Nowhere } else { Shape::Points(tops) }, drawn)
}
