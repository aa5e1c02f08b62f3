//! One surface from one file or from several.

use crate::cloud;
use crate::doubtful_ground;
use crate::dxf_ground::{self, DrawnGround};
use crate::epsg::Epsg;
use crate::geotiff;
use crate::ground_pick::GroundPick;
use crate::kind::{self, FileKind};
use crate::landxml;
use crate::levels;
use crate::notes::{Notes, Refused};
use crate::options::{GroundOptions, LONGEST_EDGE_CLOUD, LONGEST_EDGE_LEVELS};
use crate::reading::{Facts, GroundReading};
use crate::text;
use evidence::Faults;
use geometry::DVec3;
use site::{Terrain, Tin, TinError};

/// Reads a survey file of any kind into a surface.
///
/// `name`: file name relative to the job folder, for faults and for the kind where the first bytes
/// do not tell it. Clouds, levels and drawings become a triangulation,
/// GeoTIFF a grid.
///
/// # Errors
/// Every fault found; see `docs/survey-files.md`. Warnings of a usable file are in
/// [`GroundReading::notes`].
pub fn read_ground(name: &str, bytes: &[u8], options: &GroundOptions) -> Result<GroundReading, Faults> {
    let pick = GroundPick::of(&[(name, bytes)], options)?;
    let mut notes = Notes::new(name);
    let result = kind::sniff(name, bytes, &mut notes).and_then(|kind| {
        if kind == FileKind::GeoTiff {
            return geotiff::terrain(bytes, options, &mut notes);
        }
        if kind == FileKind::StoredSite {
            return Err(notes.refuse("survey::stored-site", text::STORED_SITE, text::DO_SITE_FROM));
        }
        if kind == FileKind::LandXml {
            return landxml::ground(bytes, options, &mut notes);
        }
        if kind == FileKind::Dxf {
            let (ground, facts) = dxf_ground::ground(bytes, options, &mut notes)?;
            return Ok((drawn_surface(&ground, options, &mut notes)?, facts));
        }
        if matches!(kind, FileKind::GeoJson | FileKind::Shapefile) {
            return Err(notes.refuse("survey::no-ground", text::NO_GROUND_IN_PLAN, text::DO_GIVE_GROUND));
        }
        let (mut points, facts) = points(kind, name, bytes, options, &pick, &mut notes)?;
        if facts.kind != FileKind::Levels {
            doubtful_ground::leave_out(&mut points, &mut notes);
        }
        Ok((triangulate(&points, facts.kind, options, &mut notes)?, facts))
    });
    let ((terrain, facts), notes) = notes.finish(result)?;
    Ok(GroundReading { terrain, facts, notes })
}

/// Reads several clouds, level files or drawings of one survey into one triangulation, so that no seam
/// between tiles stays unknown. Grids are surfaces of their own.
///
/// # Errors
/// Every fault of every file. Tiles without ground in the window are left out as long as one has.
pub fn read_tiles(tiles: &[(&str, &[u8])], options: &GroundOptions) -> Result<GroundReading, Faults> {
    let pick = GroundPick::of(tiles, options)?;
    let mut faults = Faults::default();
    let mut all = Vec::new();
    let mut together: Option<Facts> = None;
    let mut empty = Faults::default();
    for (name, bytes) in tiles {
        let mut notes = Notes::new(name);
        let result = kind::sniff(name, bytes, &mut notes).and_then(|kind| {
            if matches!(kind, FileKind::GeoTiff | FileKind::LandXml) {
                return Err(notes.refuse("survey::tiles-of-grids", text::TILES_OF_GRIDS, text::DO_GIVE_GRIDS_APART));
            }
            points(kind, name, bytes, options, &pick, &mut notes)
        });
        match notes.finish(result) {
            Ok(((points, facts), notes)) => {
                all.extend(points);
                faults.append(notes);
                if let Some(sum) = &together {
                    refuse_other_system(sum, &facts, name, &mut faults);
                }
                together = Some(match together {
                    None => facts,
                    Some(sum) => joined(sum, &facts),
                });
            }
            Err(found) if found.list.iter().any(|f| f.code == "survey::window-empty") => empty.append(found),
            Err(found) => faults.append(found),
        }
    }
    if faults.any_error() {
        return Err(faults);
    }
    let Some(facts) = together else {
        faults.append(empty);
        return Err(faults);
    };
    let mut notes = Notes::new(tiles.first().map_or("", |t| t.0));
    if facts.kind != FileKind::Levels {
        doubtful_ground::leave_out(&mut all, &mut notes);
    }
    let result = triangulate(&all, facts.kind, options, &mut notes);
    let (terrain, more) = notes.finish(result)?;
    faults.append(more);
    Ok(GroundReading { terrain, facts, notes: faults })
}

fn points(
    kind: FileKind,
    name: &str,
    bytes: &[u8],
    options: &GroundOptions,
    pick: &GroundPick,
    notes: &mut Notes<'_>,
) -> Result<(Vec<DVec3>, Facts), Refused> {
    match kind {
        FileKind::Levels => levels::points(bytes, options, notes),
        FileKind::Las | FileKind::Laz => cloud::ground(name, bytes, options, pick, notes),
        FileKind::Dxf => dxf_ground::ground(bytes, options, notes).map(|(ground, facts)| (ground.points, facts)),
        _ => Err(notes.refuse("survey::no-ground", text::NO_GROUND_IN_PLAN, text::DO_GIVE_GROUND)),
    }
}

/// Tiles that name different systems would lie beside each other.
fn refuse_other_system(sum: &Facts, facts: &Facts, name: &str, faults: &mut Faults) {
    let code = |facts: &Facts| facts.crs.as_deref().and_then(Epsg::of_text);
    let (Some(first), Some(second)) = (code(sum), code(facts)) else { return };
    if first != second {
        let mut notes = Notes::new(name);
        let message = text::TILES_DIFFER.with("first", first.words()).with("second", second.words());
        notes.refuse("survey::tiles-differ", message, text::DO_ONE_SITE_CRS);
        faults.append(notes.into_faults());
    }
}

/// The surface of a drawing: its faces as drawn, where it has nothing else; else over all its points, along
/// its lines and the edges of its faces.
fn drawn_surface(ground: &DrawnGround, options: &GroundOptions, notes: &mut Notes<'_>) -> Result<Terrain, Refused> {
    let longest = options.longest_edge.unwrap_or(LONGEST_EDGE_LEVELS);
    let of_faces = ground.faces.iter().map(Vec::len).sum::<usize>();
    let made = if ground.breaklines.is_empty() && ground.faces.is_empty() {
        Tin::new(&ground.points, longest)
    } else if ground.breaklines.is_empty() && ground.spots == 0 {
        let mut corners = Vec::with_capacity(of_faces);
        let mut faces = Vec::new();
        for face in &ground.faces {
            let first = corners.len() as u32;
            corners.extend(face.iter().copied());
            faces.extend((2..face.len() as u32).map(|i| [first, first + i - 1, first + i]));
        }
        Tin::from_faces(&corners, &faces)
    } else {
        let closed = ground.faces.iter().map(|f| f.iter().chain(f.first()).copied().collect::<Vec<_>>());
        let lines: Vec<Vec<DVec3>> = ground.breaklines.iter().cloned().chain(closed).collect();
        Tin::with_breaklines(&ground.points, &lines, longest)
    };
    if let Ok(tin) = &made
        && tin.doubts().crossing > 0
    {
        let message = text::EDGES_NOT_FOLLOWED.with("lines", tin.doubts().crossing);
        notes.warn("survey::edges-not-followed", message, text::DO_CHECK_DRAWING);
    }
    surface(made, ground.points.len(), notes)
}

fn triangulate(
    points: &[DVec3],
    kind: FileKind,
    options: &GroundOptions,
    notes: &mut Notes<'_>,
) -> Result<Terrain, Refused> {
    let usual = if matches!(kind, FileKind::Levels | FileKind::Dxf) { LONGEST_EDGE_LEVELS } else { LONGEST_EDGE_CLOUD };
    joined_up(points, options.longest_edge.unwrap_or(usual), notes)
}

/// A triangulation without edges longer than `longest` (m).
pub(crate) fn joined_up(points: &[DVec3], longest: f64, notes: &mut Notes<'_>) -> Result<Terrain, Refused> {
    surface(Tin::new(points, longest), points.len(), notes)
}

/// What was made of so many points, or why it is no surface.
fn surface(made: Result<Tin, TinError>, points: usize, notes: &mut Notes<'_>) -> Result<Terrain, Refused> {
    match made {
        Ok(tin) => Ok(Terrain::Tin(tin)),
        Err(TinError::TooFewPoints | TinError::NoFaces) => {
            let message = text::TOO_FEW_POINTS.with("points", points);
            Err(notes.refuse("survey::too-few-points", message, text::DO_MORE_POINTS))
        }
        Err(TinError::BadCoordinate { .. } | TinError::BadFace { .. } | TinError::TooMany) => {
            Err(notes.refuse("survey::damaged", text::HEADER_ABSURD, text::DO_EXPORT_AGAIN))
        }
    }
}

pub(crate) fn joined(mut sum: Facts, more: &Facts) -> Facts {
    sum.points += more.points;
    sum.ground_points += more.ground_points;
    sum.withheld += more.withheld;
    for i in 0..3 {
        sum.min[i] = sum.min[i].min(more.min[i]);
        sum.max[i] = sum.max[i].max(more.max[i]);
    }
    for (class, n) in &more.classes {
        *sum.classes.entry(*class).or_default() += n;
    }
    if sum.crs.is_none() {
        sum.crs.clone_from(&more.crs);
    }
    sum
}
