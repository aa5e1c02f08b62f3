//! Drawings (DXF, text and binary): shapes in plan, and ground on the layers that the job names.
//!
//! Memory: the bytes are never copied. Places of entities take at most 16 times the file (32 bytes
//! for 4, doubled while the list grows), one entity's pairs at most 20 times; shapes are bounded in
//! `dxf_shapes` at 128 MB and 16 times the file. Together at most 128 MB and some fifty times.

use crate::crs::{CrsStatements, LARGEST_COORDINATE};
use crate::dxf_index::{self, Drawing};
use crate::dxf_shapes::{Artist, Drawn};
use crate::feature::{Feature, PlanFacts, PlanPoint, Shape};
use crate::notes::{Notes, Refused};
use crate::options::GroundOptions;
use crate::placement::{Placement, Settled};
use crate::reading::UnitFacts;
use crate::units::UnitStatement;
use crate::{FileKind, dxf_geodata, dxf_join, dxf_units, text};
use geometry::{DVec2, DVec3};
use quantity::Quantity;
use std::collections::BTreeMap;

/// Shapes of a drawing in the site frame, m.
pub(crate) fn plan(
    bytes: &[u8],
    options: &GroundOptions,
    notes: &mut Notes<'_>,
) -> Result<(Vec<Feature>, PlanFacts), Refused> {
    let (features, facts, _) = shapes(bytes, options, notes)?;
    Ok((features, facts))
}

/// The same with the units of heights.
pub(crate) fn shapes(
    bytes: &[u8],
    options: &GroundOptions,
    notes: &mut Notes<'_>,
) -> Result<(Vec<Feature>, PlanFacts, UnitFacts), Refused> {
    let drawing = dxf_index::index(bytes, notes)?;
    let said = dxf_units::said(drawing.unit_code);
    let metres = dxf_units::unit(said, options).map_or(1.0, crate::LengthUnit::metres);
    // What is said of small shapes depends on the unit, so it waits until that is settled.
    let mut of_shapes = notes.apart();
    let mut artist = Artist::new(&drawing, bytes.len(), metres, &mut of_shapes);
    let result = artist.draw_model();
    let (near, least, mut tests) = (artist.near, artist.least_area(), artist.crossing_tests);
    let Artist { drawn, mut left_out, repeats, .. } = artist;
    if drawing.on_sheets > 0 {
        *left_out.entry("PAPER SPACE".to_owned()).or_default() += drawing.on_sheets;
    }
    if result.is_err() || of_shapes.any_error() {
        notes.append(of_shapes);
        return Err(Refused);
    }
    let Some((min, max)) = extents(&drawn) else {
        let message = text::DRAWING_NO_SHAPES.with("left_out", listed(&left_out));
        return Err(notes.refuse("survey::no-shapes", message, text::DO_EXPORT_DXF));
    };
    let units = dxf_units::resolve(said, (max - min).max_element(), options, notes)?;
    notes.append(of_shapes);
    let farthest = drawn
        .iter()
        .flat_map(|d| d.feature.shape.points())
        .fold(DVec3::ZERO, |m, p| m.max(p.at.abs().extend(p.height.unwrap_or(0.0).abs())));
    if farthest.max_element() * metres > LARGEST_COORDINATE {
        let message =
            text::NOT_ON_EARTH.with("east", Quantity::number(farthest.x)).with("north", Quantity::number(farthest.y));
        return Err(notes.refuse("survey::not-on-earth", message, text::DO_EXPORT_DXF));
    }
    let joined = dxf_join::joined(drawn, dxf_join::JOIN / metres, least.max(near * near), &mut tests);
    let flat = farthest.z == 0.0;
    let Settled { placement, crs, .. } = placed(units, (min, max), options, notes)?;
    let place = |p: &mut PlanPoint| {
        p.height = p.height.filter(|_| !flat).map(|h| placement.height(h));
        p.at = placement.plan(p.at);
    };
    let mut features: Vec<Feature> = joined.drawn.into_iter().map(|d| d.feature).collect();
    for feature in &mut features {
        each_point(&mut feature.shape, place);
    }
    for &line in joined.split.iter().take(20) {
        let message = text::JOINED_SPLIT;
        notes.warn_line("survey::outline-split", line as u64, message, text::DO_CHECK_DRAWING);
    }
    if joined.count > 0 {
        let message = text::LINES_JOINED.with("count", joined.count);
        notes.warn("survey::lines-joined", message, text::DO_CHECK_DRAWING);
    }
    say(&drawing, &features, &left_out, repeats, notes);
    dxf_geodata::offered(&drawing, notes);
    let mut layers = BTreeMap::new();
    let (mut low, mut high) = (DVec2::INFINITY, DVec2::NEG_INFINITY);
    for feature in &features {
        *layers.entry(feature.layer.clone()).or_default() += 1;
        for p in feature.shape.points() {
            (low, high) = (low.min(p.at), high.max(p.at));
        }
    }
    let facts = PlanFacts {
        kind: FileKind::Dxf,
        unit: Some((units.horizontal, units.horizontal_source)),
        crs,
        min: low.to_array(),
        max: high.to_array(),
        layers,
        left_out,
    };
    Ok((features, facts, units))
}

/// A drawing names no coordinate system: it is in the site's own, or in the one that the job states.
fn placed(
    units: UnitFacts,
    corners: (DVec2, DVec2),
    options: &GroundOptions,
    notes: &mut Notes<'_>,
) -> Result<Settled, Refused> {
    const PLACE: &str = "DXF";
    let statement = |unit: crate::LengthUnit| vec![UnitStatement { factor: unit.metres(), place: PLACE }];
    let statements = CrsStatements {
        horizontal: statement(units.horizontal),
        vertical: statement(units.vertical),
        ..CrsStatements::default()
    };
    Placement::settle(&statements, corners, options, notes)
}

fn each_point(shape: &mut Shape, mut act: impl FnMut(&mut PlanPoint)) {
    match shape {
        Shape::Point(p) | Shape::Text { at: p, .. } => act(p),
        Shape::Line(points) | Shape::Face(points) => points.iter_mut().for_each(act),
        Shape::Area { outer, holes } => outer.iter_mut().chain(holes.iter_mut().flatten()).for_each(act),
    }
}

/// Corners of all shapes; texts count only where there is nothing else.
fn extents(drawn: &[Drawn]) -> Option<(DVec2, DVec2)> {
    let only_texts = drawn.iter().all(|d| matches!(d.feature.shape, Shape::Text { .. }));
    drawn
        .iter()
        .filter(|d| only_texts || !matches!(d.feature.shape, Shape::Text { .. }))
        .flat_map(|d| d.feature.shape.points())
        .fold(None, |box_so_far, p| {
            let (low, high) = box_so_far.unwrap_or((p.at, p.at));
            Some((low.min(p.at), high.max(p.at)))
        })
}

/// What whoever uses the drawing should know of it.
fn say(
    drawing: &Drawing<'_>,
    features: &[Feature],
    left_out: &BTreeMap<String, u64>,
    repeats: u64,
    notes: &mut Notes<'_>,
) {
    if !left_out.is_empty() {
        let message = text::LEFT_OUT.with("left_out", listed(left_out));
        notes.warn("survey::left-out", message, text::DO_CHECK_LEFT_OUT);
    }
    let hidden: std::collections::BTreeSet<&str> =
        features.iter().map(|f| f.layer.as_str()).filter(|l| drawing.hidden.contains(*l)).collect();
    if !hidden.is_empty() {
        let layers: Vec<&str> = hidden.into_iter().take(20).collect();
        let message = text::LAYERS_HIDDEN.with("layers", layers.join(", "));
        notes.warn("survey::layers-hidden", message, text::DO_CHECK_DRAWING);
    }
    if repeats > 0 {
        let message = text::CORNERS_REPEATED.with("count", usize::try_from(repeats).unwrap_or(usize::MAX));
        notes.warn("survey::corners-repeated", message, text::DO_CHECK_DRAWING);
    }
}

/// "HATCH 13, LEADER 6", at most twenty.
fn listed(counts: &BTreeMap<String, u64>) -> String {
    counts.iter().take(20).map(|(kind, n)| format!("{kind} {n}")).collect::<Vec<_>>().join(", ")
}
