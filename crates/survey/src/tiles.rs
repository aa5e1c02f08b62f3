//! One surface from one file or from several.

use crate::cloud;
use crate::dxf_ground::{self, DrawnGround};
use crate::geotiff;
use crate::kind::{self, FileKind};
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
    let mut notes = Notes::new(name);
    let result = kind::sniff(name, bytes, &mut notes).and_then(|kind| {
        if kind == FileKind::GeoTiff {
            let (grid, facts) = geotiff::grid(bytes, options, &mut notes)?;
            return Ok((Terrain::Grid(grid), facts));
        }
        if kind == FileKind::Dxf {
            let (ground, facts) = dxf_ground::ground(bytes, options, &mut notes)?;
            return Ok((drawn_surface(&ground, options, &mut notes)?, facts));
        }
        if matches!(kind, FileKind::GeoJson | FileKind::Shapefile) {
            return Err(notes.refuse("survey::no-ground", text::NO_GROUND_IN_PLAN, text::DO_GIVE_GROUND));
        }
        let (points, facts) = points(kind, bytes, options, &mut notes)?;
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
    let mut faults = Faults::default();
    let mut all = Vec::new();
    let mut together: Option<Facts> = None;
    let mut empty = Faults::default();
    for (name, bytes) in tiles {
        let mut notes = Notes::new(name);
        let result = kind::sniff(name, bytes, &mut notes).and_then(|kind| {
            if kind == FileKind::GeoTiff {
                return Err(notes.refuse("survey::tiles-of-grids", text::TILES_OF_GRIDS, text::DO_GIVE_GRIDS_APART));
            }
            points(kind, bytes, options, &mut notes)
        });
        match notes.finish(result) {
            Ok(((points, facts), notes)) => {
                all.extend(points);
                faults.append(notes);
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
    let result = triangulate(&all, facts.kind, options, &mut notes);
    let (terrain, more) = notes.finish(result)?;
    faults.append(more);
    Ok(GroundReading { terrain, facts, notes: faults })
}

fn points(
    kind: FileKind,
    bytes: &[u8],
    options: &GroundOptions,
    notes: &mut Notes<'_>,
) -> Result<(Vec<DVec3>, Facts), Refused> {
    match kind {
        FileKind::Levels => levels::points(bytes, options, notes),
        FileKind::Las | FileKind::Laz => cloud::ground(kind, bytes, options, notes),
        FileKind::Dxf => dxf_ground::ground(bytes, options, notes).map(|(ground, facts)| (ground.points, facts)),
        _ => Err(notes.refuse("survey::no-ground", text::NO_GROUND_IN_PLAN, text::DO_GIVE_GROUND)),
    }
}

/// The surface of a drawing: over all its points. Its lines and faces are not followed edge by edge.
fn drawn_surface(ground: &DrawnGround, options: &GroundOptions, notes: &mut Notes<'_>) -> Result<Terrain, Refused> {
    if !ground.breaklines.is_empty() || !ground.faces.is_empty() {
        let message = text::EDGES_NOT_FOLLOWED.with("lines", ground.breaklines.len()).with("faces", ground.faces.len());
        notes.warn("survey::edges-not-followed", message, text::DO_DENSER);
    }
    triangulate(&ground.points, FileKind::Dxf, options, notes)
}

fn triangulate(
    points: &[DVec3],
    kind: FileKind,
    options: &GroundOptions,
    notes: &mut Notes<'_>,
) -> Result<Terrain, Refused> {
    let usual = if matches!(kind, FileKind::Levels | FileKind::Dxf) { LONGEST_EDGE_LEVELS } else { LONGEST_EDGE_CLOUD };
    match Tin::new(points, options.longest_edge.unwrap_or(usual)) {
        Ok(tin) => Ok(Terrain::Tin(tin)),
        Err(TinError::TooFewPoints) => {
            let message = text::TOO_FEW_POINTS.with("points", points.len());
            Err(notes.refuse("survey::too-few-points", message, text::DO_MORE_POINTS))
        }
        Err(TinError::BadCoordinate { .. }) => {
            Err(notes.refuse("survey::damaged", text::HEADER_ABSURD, text::DO_EXPORT_AGAIN))
        }
    }
}

fn joined(mut sum: Facts, more: &Facts) -> Facts {
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
