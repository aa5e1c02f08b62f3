//! A surface of a LandXML file, in metres.

use crate::crs::{is_on_earth, is_plausible};
use crate::landxml_document::{Problems, RawSurface};
use crate::options::LONGEST_EDGE_LEVELS;
use crate::placement::Placement;
use crate::text;
use crate::xml_scan::shown;
use geometry::{DVec2, DVec3};
use serde::Serialize;
use site::{Ring, Tin, TinError};
use std::collections::BTreeMap;

/// What a LandXML file says of one of its surfaces, and what was computed.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct SurfaceFacts {
    /// Name in the file.
    pub name: String,
    /// Line of the file, from 1.
    pub line: u64,
    /// Points: of the surface itself, or of its source data where it has no faces.
    pub points: u64,
    /// Faces that are shown.
    pub faces: u64,
    /// Faces that are marked as invisible; never used.
    pub invisible: u64,
    /// Breaklines and contours of the source data.
    pub breaklines: u64,
    /// Boundaries (outer, void, island) of the source data.
    pub boundaries: u64,
    /// Smallest corner (east, north, height), m.
    pub min: [f64; 3],
    /// Largest corner, m.
    pub max: [f64; 3],
    /// Area in plan, m².
    pub plan_area: f64,
    /// Area of the surface in space, m².
    pub surface_area: f64,
    /// Mean slope (rise over run), weighted by the area in plan.
    pub mean_slope: Option<f64>,
    /// Area in plan that the file states, m².
    pub declared_plan_area: Option<f64>,
    /// Area in space that the file states, m².
    pub declared_surface_area: Option<f64>,
}

/// A surface with what is known of it.
pub(crate) struct Made {
    pub(crate) tin: Tin,
    pub(crate) facts: SurfaceFacts,
    /// The file gives faces; else the surface was triangulated here.
    pub(crate) has_faces: bool,
    /// Breaklines and points of the source data without heights.
    pub(crate) without_height: usize,
}

/// Factors between a file's areas and square metres: a stated unit, and the square of its length.
#[derive(Clone, Copy)]
pub(crate) struct AreaUnits {
    pub(crate) stated: Option<f64>,
    pub(crate) of_length: f64,
}

/// Makes the surface, or says everything that is wrong with it.
///
/// With faces they stand as given, and source data and boundaries are not asked: whoever made the
/// faces used them. Without, points and breaklines are triangulated inside the boundaries.
pub(crate) fn make(
    mut raw: RawSurface,
    placement: &Placement,
    areas: AreaUnits,
    longest_edge: Option<f64>,
) -> Result<Made, Problems> {
    let mut problems = std::mem::take(&mut raw.problems);
    let line = raw.line;
    let (min, max) = raw.all_points().fold((DVec3::INFINITY, DVec3::NEG_INFINITY), |(low, high), p| {
        let p = placement.point(p);
        (low.min(p), high.max(p))
    });
    for (_, p, line) in &raw.points {
        let at = placement.point(*p);
        if !is_on_earth(at) || !is_plausible(at.z) {
            let message = text::ROW_IMPLAUSIBLE.with("height", quantity::metres(at.z));
            problems.add("survey::bad-point", *line, message, text::DO_MEND_AT_SOURCE);
        }
    }
    if problems.total == 0
        && !raw.is_empty()
        && !(is_on_earth(min) && is_on_earth(max) && is_plausible(min.z) && is_plausible(max.z))
    {
        let worst = if is_plausible(max.z) { min.z } else { max.z };
        let message = text::ROW_IMPLAUSIBLE.with("height", quantity::metres(worst));
        problems.add("survey::bad-point", line, message, text::DO_MEND_AT_SOURCE);
    }
    let has_faces = !raw.faces.is_empty();
    let faces = if has_faces { faces(&raw, &mut problems) } else { Vec::new() };
    if problems.total > 0 {
        return Err(problems);
    }
    let made = if has_faces {
        let points: Vec<DVec3> = raw.points.iter().map(|p| placement.point(p.1)).collect();
        Tin::from_faces(&points, &faces)
    } else {
        triangulated(&raw, placement, longest_edge)
    };
    let points = if has_faces { raw.points.len() } else { raw.all_points().count() };
    let tin = match made {
        Ok(tin) => tin,
        Err(error) => {
            let message = match error {
                TinError::TooFewPoints | TinError::NoFaces => {
                    text::SURFACE_EMPTY.with("name", shown(&raw.name)).with("points", points)
                }
                TinError::BadCoordinate { .. } | TinError::BadFace { .. } | TinError::TooMany => {
                    text::HEADER_ABSURD.into()
                }
            };
            problems.add("survey::surface-empty", line, message, text::DO_MEND_AT_SOURCE);
            return Err(problems);
        }
    };
    let declared = |value: Option<f64>, computed: f64| {
        // Writers disagree whether areas are in the unit stated for areas or in squared lengths.
        let choices =
            value.into_iter().flat_map(|v| areas.stated.into_iter().chain([areas.of_length]).map(move |u| v * u));
        choices.min_by(|a, b| (a - computed).abs().total_cmp(&(b - computed).abs()))
    };
    let (plan_area, surface_area) = (tin.plan_area(), tin.surface_area());
    let facts = SurfaceFacts {
        line,
        points: points as u64,
        faces: raw.faces.len() as u64,
        invisible: raw.invisible as u64,
        breaklines: raw.breaklines.len() as u64,
        boundaries: raw.boundaries.len() as u64,
        min: min.to_array(),
        max: max.to_array(),
        plan_area,
        surface_area,
        mean_slope: tin.mean_slope(),
        declared_plan_area: declared(raw.declared_plan_area, plan_area),
        declared_surface_area: declared(raw.declared_surface_area, surface_area),
        name: raw.name,
    };
    Ok(Made { tin, facts, has_faces, without_height: raw.without_height })
}

/// Faces by index; ids that repeat or are missing are problems.
fn faces(raw: &RawSurface, problems: &mut Problems) -> Vec<[u32; 3]> {
    let mut index: BTreeMap<u64, u32> = BTreeMap::new();
    for (i, (id, at, line)) in raw.points.iter().enumerate() {
        let i = u32::try_from(i).unwrap_or(u32::MAX);
        if let Some(first) = index.insert(*id, i) {
            let (_, other, first_line) = raw.points[first as usize];
            if other != *at {
                let first = i64::try_from(first_line).unwrap_or(i64::MAX);
                let message = text::POINT_ID_TWICE.with("id", raw.word(*id)).with("first", first);
                problems.add("survey::bad-point", *line, message, text::DO_MEND_AT_SOURCE);
            }
        }
    }
    let mut faces = Vec::with_capacity(raw.faces.len());
    for (ids, line) in &raw.faces {
        let mut face = [0; 3];
        for (place, id) in face.iter_mut().zip(ids) {
            if let Some(i) = index.get(id) {
                *place = *i;
            } else {
                let message = text::FACE_POINT_MISSING.with("id", raw.word(*id));
                problems.add("survey::bad-face", *line, message, text::DO_MEND_AT_SOURCE);
            }
        }
        faces.push(face);
    }
    faces
}

fn triangulated(raw: &RawSurface, placement: &Placement, longest_edge: Option<f64>) -> Result<Tin, TinError> {
    let place = |points: &[DVec3]| points.iter().map(|p| placement.point(*p)).collect::<Vec<DVec3>>();
    let points: Vec<DVec3> =
        raw.points.iter().map(|p| p.1).chain(raw.data.iter().copied()).map(|p| placement.point(p)).collect();
    let mut lines: Vec<Vec<DVec3>> = raw.breaklines.iter().map(|l| place(l)).collect();
    let mut rings = Vec::new();
    for (kind, corners, line) in &raw.boundaries {
        let corners: Vec<DVec2> = corners.iter().map(|c| placement.plan(*c)).collect();
        if corners.len() >= 3 {
            rings.push(Ring { kind: *kind, corners });
        }
        if let Some(line) = line {
            let mut closed = place(line);
            closed.extend(closed.first().copied());
            lines.push(closed);
        }
    }
    Tin::with_rings(&points, &lines, &rings, longest_edge.unwrap_or(LONGEST_EDGE_LEVELS))
}
