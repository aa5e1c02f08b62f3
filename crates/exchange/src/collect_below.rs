//! What is dug or lies in the ground, as items.

use crate::collect_site::keyed;
use crate::collect_things::{placed, size, word};
use crate::item::{Drawn, Item, Position, Properties, Shape};
use crate::scene::{Under, rings};
use crate::{layer, text};
use serde_json::Value;
use site::{Buried, Excavation, PlanShape, Support};

pub(crate) fn excavation(index: usize, dug: &Excavation, under: &Under<'_>) -> Item {
    let shape = PlanShape::Area(dug.outline.clone());
    let mut properties = Properties::default();
    properties.add("kind", "excavation");
    properties.add("id", dug.id.as_str());
    properties.add("name", dug.name.as_str());
    properties.ranged(["depth_m", "depth_low_m", "depth_high_m"], dug.depth);
    properties.add("soil", dug.soil.map_or(Value::Null, word));
    let (support, by) = match &dug.support {
        Support::None => (Some("none"), None),
        Support::Supported { by } => (Some("supported"), by.clone()),
        Support::NotKnown => (None, None),
    };
    properties.add("support", support);
    properties.add("support_by", by);
    properties.add("source", dug.source.as_str());
    let mut doubts = Vec::new();
    let ground = under.lowest(&shape);
    if ground.is_none() {
        doubts.push(text::GROUND_NOT_KNOWN);
    }
    let edge = ground.unwrap_or(under.floor);
    let (known, of) = placed(&shape, None, under);
    properties.add("heights_are", of);
    let mut drawn = vec![Drawn::Draped { shape, otherwise: edge }];
    match dug.depth {
        Some(depth) => {
            drawn.push(Drawn::Pit { area: dug.outline.clone(), floor: edge - depth.nominal.max(0.0), edge });
        }
        None => doubts.push(text::DEPTH_NOT_KNOWN),
    }
    Item {
        layer: layer::EXCAVATION,
        key: keyed("excavation", index, &dug.id),
        name: dug.name.clone(),
        doubts,
        properties,
        shape: known,
        drawn,
    }
}

pub(crate) fn buried(index: usize, buried: &Buried, under: &Under<'_>) -> Item {
    let mut properties = Properties::default();
    properties.add("kind", word(buried.kind));
    properties.add("id", buried.id.as_str());
    properties.add("name", buried.name.as_str());
    properties.ranged(["cover_m", "cover_low_m", "cover_high_m"], buried.cover);
    properties.number("allowed_pressure_pa", buried.allowed_pressure);
    properties.add("source", buried.source.as_str());
    let mut doubts = Vec::new();
    let ground = under.lowest(&buried.shape);
    if ground.is_none() {
        doubts.push(text::GROUND_NOT_KNOWN);
    }
    let level = ground.unwrap_or(under.floor);
    let (known, of, drawn) = if let Some(cover) = buried.cover {
        // Each place of the crown lies under the ground over it.
        let down = |points: &[geometry::DVec2]| under.positions(points, -cover.nominal);
        let shape = match &buried.shape {
            PlanShape::Strip { course, .. } => Shape::Line(down(course)),
            other => other.outlines().first().map_or(Shape::Nowhere, |a| Shape::Area(rings(a, down))),
        };
        let of = all_known(&shape).then_some("crown, by the cover as given");
        (shape, of, Drawn::Level { shape: buried.shape.clone(), at: level - cover.nominal })
    } else {
        doubts.push(text::DEPTH_NOT_KNOWN);
        let (shape, of) = placed(&buried.shape, None, under);
        (shape, of, Drawn::Draped { shape: buried.shape.clone(), otherwise: level })
    };
    properties.add("heights_are", of);
    size(&mut properties, &buried.shape);
    Item {
        layer: layer::of_buried(buried.kind),
        key: keyed("buried", index, &buried.id),
        name: buried.name.clone(),
        doubts,
        properties,
        shape: known,
        drawn: vec![drawn],
    }
}

fn all_known(shape: &Shape) -> bool {
    let known = |p: &Position| p.1.is_some();
    match shape {
        Shape::Line(points) => points.iter().all(known),
        Shape::Area(rings) => rings.iter().flatten().all(known),
        _ => false,
    }
}
