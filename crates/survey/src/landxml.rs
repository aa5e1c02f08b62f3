//! LandXML, versions 1.0 to 2.0 and dialects in other namespaces, as ground.

use crate::cloud::refuse_empty_window;
use crate::kind::FileKind;
use crate::landxml_document::{Document, RawSurface, Spot};
use crate::landxml_surface::{AreaUnits, Made, SurfaceFacts, make};
use crate::notes::{Notes, Refused};
use crate::options::GroundOptions;
use crate::placement::{Placement, Settled};
use crate::reading::{Facts, UnitFacts};
use crate::xml_scan::shown;
use crate::{landxml_notes, landxml_points, landxml_reader, text};
use evidence::Faults;
use geometry::{DVec2, DVec3};
use site::{Terrain, Tin, TinDoubts};
use std::collections::BTreeMap;

/// Most points and most faces of a surface that are taken at once.
pub(crate) const MOST_POINTS: usize = 4_000_000;

/// What is inside of a LandXML file: every surface that has points, in metres, in file order.
///
/// # Errors
/// Every fault of the file and of all its surfaces; a file that does not state its unit.
pub fn landxml_surfaces(name: &str, bytes: &[u8]) -> Result<Vec<SurfaceFacts>, Faults> {
    let mut notes = Notes::new(name);
    let options = GroundOptions::default();
    let result = landxml_reader::read(bytes, &mut notes).and_then(|mut document| {
        let settled = resolve(&document, &options, &mut notes)?;
        document.surfaces.retain(has_content);
        let surfaces = std::mem::take(&mut document.surfaces);
        Ok(make_all(surfaces, &document, &settled, &options, &mut notes))
    });
    notes.finish(result).map(|(made, _)| made.into_iter().map(|m| m.facts).collect())
}

/// The surface that the job names, or the only one, or the survey points if the job says so.
pub(crate) fn ground(
    bytes: &[u8],
    options: &GroundOptions,
    notes: &mut Notes<'_>,
) -> Result<(Terrain, Facts), Refused> {
    let mut document = landxml_reader::read(bytes, notes)?;
    if options.survey_points && options.surface.is_none() {
        let settled = resolve(&document, options, notes)?;
        return landxml_points::ground(&mut document, &settled, options, notes);
    }
    document.surfaces.retain(has_content);
    if document.surfaces.is_empty() {
        let (message, hint) = match document.points.len() {
            0 => (text::NO_SURFACE.into(), text::DO_EXPORT_SURFACE),
            points => (text::NO_SURFACE_BUT_POINTS.with("points", points), text::DO_USE_SURVEY_POINTS),
        };
        return Err(notes.refuse("survey::no-surface", message, hint));
    }
    let settled = resolve(&document, options, notes)?;
    let surfaces = std::mem::take(&mut document.surfaces);
    let wanted = options.surface.as_deref().map(str::trim);
    let fits = |s: &RawSurface| wanted.is_none_or(|name| s.name.trim() == name);
    let (mut chosen, others): (Vec<RawSurface>, Vec<RawSurface>) = surfaces.into_iter().partition(fits);
    let count = chosen.len();
    let one = if count == 1 { chosen.pop() } else { None };
    let Some(raw) = one else {
        let message = match wanted {
            None => text::SURFACES_SEVERAL.with("count", count),
            Some(name) if count == 0 => text::SURFACE_NOT_THERE.with("name", shown(name)),
            Some(name) => text::SURFACE_NAME_TWICE.with("name", shown(name)).with("count", count),
        };
        notes.refuse("survey::which-surface", message, text::DO_NAME_SURFACE);
        chosen.extend(others);
        chosen.sort_by_key(|s| s.line);
        let made = make_all(chosen, &document, &settled, options, notes);
        landxml_notes::offer(&made, notes);
        return Err(Refused);
    };
    let heights: Vec<_> = others.iter().filter_map(|s| extent(s, &settled)).collect();
    let points = raw.points.len() + raw.data.len() + raw.breaklines.iter().map(Vec::len).sum::<usize>();
    let most = points.max(raw.faces.len());
    if most > MOST_POINTS {
        let message = text::TOO_MANY_POINTS.with("points", most).with("most", MOST_POINTS);
        return Err(notes.refuse("survey::too-many-points", message, text::DO_CUT_OUT));
    }
    let made = match make(raw, &settled.placement, area_units(&document, settled.units), options.longest_edge) {
        Ok(made) => made,
        Err(problems) => {
            problems.report(notes);
            return Err(Refused);
        }
    };
    landxml_notes::say(&made, &heights, notes);
    let facts = Facts {
        points: made.facts.points,
        ground_points: made.facts.points,
        min: made.facts.min,
        max: made.facts.max,
        ..facts(&settled)
    };
    let tin = cut_out(made, options, &facts, notes)?;
    Ok((Terrain::Tin(tin), facts))
}

/// False for a mere name, as some programs write it.
fn has_content(surface: &RawSurface) -> bool {
    !surface.is_empty() || surface.problems.total > 0
}

/// Facts without points yet.
pub(crate) fn facts(settled: &Settled) -> Facts {
    Facts {
        kind: FileKind::LandXml,
        points: 0,
        ground_points: 0,
        min: [0.0; 3],
        max: [0.0; 3],
        units: settled.units,
        crs: settled.crs.clone(),
        unknown_cells: 0,
        cell: None,
        classes: BTreeMap::new(),
        withheld: 0,
    }
}

/// Units and coordinate system, from the numbers of every point in the file.
pub(crate) fn resolve(document: &Document, options: &GroundOptions, notes: &mut Notes<'_>) -> Result<Settled, Refused> {
    if let (Some(found), None) = (&document.odd_unit, options.units) {
        let message = text::UNIT_NOT_KNOWN.with("found", found.as_str());
        return Err(notes.refuse("survey::unit-not-known", message, text::DO_EXPORT_METRES));
    }
    let spots = document.points.iter().filter_map(|p| match p.at {
        Some(Spot::At(at, _)) => Some(at),
        _ => None,
    });
    let all = document.surfaces.iter().flat_map(RawSurface::all_points).map(DVec3::truncate).chain(spots);
    let corners = all.filter(|p| p.is_finite()).fold(None, |around: Option<(DVec2, DVec2)>, p| {
        Some(around.map_or((p, p), |(low, high)| (low.min(p), high.max(p))))
    });
    Placement::settle(&document.crs, corners.unwrap_or_default(), options, notes)
}

fn area_units(document: &Document, units: UnitFacts) -> AreaUnits {
    let side = units.horizontal.metres();
    AreaUnits { stated: document.area_unit, of_length: side * side }
}

/// Every surface that can be made; faults of the others.
fn make_all(
    surfaces: Vec<RawSurface>,
    document: &Document,
    settled: &Settled,
    options: &GroundOptions,
    notes: &mut Notes<'_>,
) -> Vec<Made> {
    let mut all = Vec::new();
    for raw in surfaces {
        match make(raw, &settled.placement, area_units(document, settled.units), options.longest_edge) {
            Ok(made) => all.push(made),
            Err(problems) => {
                problems.report(notes);
            }
        }
    }
    all
}

/// Name and box of a surface, m.
fn extent(raw: &RawSurface, settled: &Settled) -> Option<(String, DVec3, DVec3)> {
    let placement = &settled.placement;
    let (low, high) = raw
        .all_points()
        .map(|p| placement.point(p))
        .fold((DVec3::INFINITY, DVec3::NEG_INFINITY), |(low, high), p| (low.min(p), high.max(p)));
    low.is_finite().then(|| (raw.name.clone(), low, high))
}

/// Only triangles that touch the window, and of given faces those with short enough edges, if the
/// job states either.
fn cut_out(made: Made, options: &GroundOptions, facts: &Facts, notes: &mut Notes<'_>) -> Result<Tin, Refused> {
    let longest = options.longest_edge.filter(|_| made.has_faces);
    if longest.is_none() && options.window.is_none() {
        return Ok(made.tin);
    }
    let parts = made.tin.parts();
    let corner = |i: u32| parts.points[i as usize].truncate() + parts.origin;
    let keep = |t: &[u32; 3]| {
        let [a, b, c] = t.map(corner);
        let edge = (b - a).length().max((c - b).length()).max((a - c).length());
        let (low, high) = (a.min(b).min(c), a.max(b).max(c));
        let inside = |w: crate::Window| low.x <= w.max.x && low.y <= w.max.y && high.x >= w.min.x && high.y >= w.min.y;
        longest.is_none_or(|l| edge <= l) && options.window.is_none_or(inside)
    };
    let mut place: BTreeMap<u32, u32> = BTreeMap::new();
    let mut points = Vec::new();
    let mut triangles = Vec::new();
    for t in parts.triangles.iter().filter(|t| keep(t)) {
        triangles.push(t.map(|i| {
            *place.entry(i).or_insert_with(|| {
                points.push(parts.points[i as usize]);
                u32::try_from(points.len() - 1).unwrap_or(u32::MAX)
            })
        }));
    }
    refuse_empty_window(&points, facts, notes)?;
    let doubts: TinDoubts = parts.doubts;
    Tin::from_parts(parts.origin, points, triangles, doubts)
        .map_err(|_| notes.refuse("survey::damaged", text::HEADER_ABSURD, text::DO_EXPORT_AGAIN))
}
