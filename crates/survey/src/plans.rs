//! Shapes from a plan file of any kind.

use crate::feature::{Feature, PlanFacts, PlanReading};
use crate::kind::{self, FileKind};
use crate::notes::{Notes, Refused};
use crate::options::GroundOptions;
use crate::shapefile::Parts;
use crate::{dxf, geojson_file, landxml_plan, shapefile, text};
use evidence::Faults;

/// Reads a plan file into shapes in the site frame.
///
/// `name`: file name relative to the job folder, for faults and for the layer. A Shapefile given
/// here is its `.shp` alone, without attributes and coordinate system; see [`read_shapefile`].
///
/// # Errors
/// Every fault of the file; see `docs/survey-files.md`. Warnings of a usable file are in
/// [`PlanReading::notes`].
pub fn read_plan(name: &str, bytes: &[u8], options: &GroundOptions) -> Result<PlanReading, Faults> {
    let mut notes = Notes::new(name);
    let result = kind::sniff(name, bytes, &mut notes).and_then(|kind| match kind {
        FileKind::Dxf => dxf::plan(bytes, options, &mut notes),
        FileKind::LandXml => landxml_plan::plan(bytes, options, &mut notes),
        FileKind::GeoJson => geojson_file::plan(bytes, options, &mut notes),
        FileKind::Shapefile => shapefile::plan(&Parts { shp: bytes, ..Parts::default() }, options, &mut notes),
        _ => Err(notes.refuse("survey::not-a-plan", text::NOT_A_PLAN, text::DO_GIVE_PLAN)),
    });
    reading(notes, result)
}

/// Reads the files of one Shapefile into shapes in the site frame: `.shp`, and if they are there
/// `.dbf` (attributes), `.prj` (coordinate system), `.cpg` (code page); others are not looked at.
///
/// `parts`: name relative to the job folder, and bytes, in any order.
///
/// # Errors
/// Every fault; no `.shp` among the parts, two of a kind, or parts of different Shapefiles.
pub fn read_shapefile(parts: &[(&str, &[u8])], options: &GroundOptions) -> Result<PlanReading, Faults> {
    let split = |name: &str| name.rsplit_once('.').map(|(stem, ending)| (stem.to_lowercase(), ending.to_lowercase()));
    let all = |ending: &str| -> Vec<&(&str, &[u8])> {
        parts.iter().filter(|p| split(p.0).is_some_and(|s| s.1 == ending)).collect()
    };
    let first = |ending: &str| all(ending).first().copied();
    let shown = first("shp").or(parts.first()).map_or("", |p| p.0);
    let mut notes = Notes::new(shown);
    let Some((name, shp)) = first("shp") else {
        let refused = notes.refuse("survey::no-shp", text::SHP_MISSING, text::DO_GIVE_PARTS);
        return reading(notes, Err(refused));
    };
    let stem = split(name).map(|s| s.0);
    for ending in ["shp", "dbf", "prj", "cpg"] {
        if all(ending).len() > 1 || all(ending).iter().any(|p| split(p.0).map(|s| s.0) != stem) {
            let message = text::PARTS_MIXED.with("ending", ending);
            notes.refuse("survey::parts-mixed", message, text::DO_GIVE_PARTS);
        }
    }
    if notes.any_error() {
        return reading(notes, Err(Refused));
    }
    let bytes = |ending: &str| first(ending).map(|p| p.1);
    let parts = Parts { shp, dbf: bytes("dbf"), prj: bytes("prj"), cpg: bytes("cpg") };
    let result = kind::sniff(name, shp, &mut notes).and_then(|kind| match kind {
        FileKind::Shapefile => shapefile::plan(&parts, options, &mut notes),
        _ => Err(notes.refuse("survey::not-a-plan", text::NOT_A_PLAN, text::DO_GIVE_PARTS)),
    });
    reading(notes, result)
}

fn reading(notes: Notes<'_>, result: Result<(Vec<Feature>, PlanFacts), Refused>) -> Result<PlanReading, Faults> {
    let ((features, facts), notes) = notes.finish(result)?;
    Ok(PlanReading { features, facts, notes })
}
