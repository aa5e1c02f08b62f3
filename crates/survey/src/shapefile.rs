//! Shapes from a Shapefile: the records of the `.shp` (ESRI white paper of July 1998), with the
//! table, coordinate system and code page beside it.

use crate::crs::CrsStatements;
use crate::feature::{Feature, PlanFacts};
use crate::geojson_file::name_of;
use crate::kind::FileKind;
use crate::notes::{Notes, Refused};
use crate::options::GroundOptions;
use crate::shapefile_rings::areas;
use crate::shapefile_table::{self, Table};
use crate::shapes::{self, PlanSource, RawFeature, RawPoint, RawShape, ShapeNotes};
use crate::text;
use crate::units::UnitStatement;
use geometry::DVec2;
use std::collections::BTreeMap;

/// The files of one Shapefile.
#[derive(Debug, Clone, Copy, Default)]
pub(crate) struct Parts<'a> {
    pub(crate) shp: &'a [u8],
    /// Attributes.
    pub(crate) dbf: Option<&'a [u8]>,
    /// Coordinate system as well-known text.
    pub(crate) prj: Option<&'a [u8]>,
    /// Code page of the table.
    pub(crate) cpg: Option<&'a [u8]>,
}

const HEADER: usize = 100;
/// Measures and heights below this are "no data".
const NO_DATA: f64 = -1e38;
/// Rings of one polygon: each is compared with each other.
const MOST_RINGS: usize = 5000;
const NULL: &str = "null";
const MULTIPATCH: &str = "MultiPatch";

/// Reads every shape. Layer is the file name without its ending; the name is the first field of the
/// table that is one of those that [`crate::geojson_file::NAME_KEYS`] lists.
pub(crate) fn plan(
    parts: &Parts<'_>,
    options: &GroundOptions,
    notes: &mut Notes<'_>,
) -> Result<(Vec<Feature>, PlanFacts), Refused> {
    let mut shape_notes = ShapeNotes::default();
    let mut left_out: BTreeMap<String, u64> = BTreeMap::new();
    let mut features = records(parts.shp, &mut shape_notes, &mut left_out, notes)?;
    if let Some(dbf) = parts.dbf {
        let table = shapefile_table::read(dbf, parts.cpg, notes)?;
        join(&mut features, table, notes)?;
    } else {
        notes.warn("survey::no-table", text::TABLE_MISSING, text::DO_GIVE_PARTS);
    }
    for (kind, code, message) in [
        (NULL, "survey::without-shape", text::WITHOUT_SHAPE),
        (MULTIPATCH, "survey::shapes-left-out", text::MULTIPATCH_LEFT_OUT),
    ] {
        if let Some(n) = left_out.get(kind) {
            notes.warn(code, message.with("count", i64::try_from(*n).unwrap_or(i64::MAX)), text::DO_MEND_SHAPE);
        }
    }
    let mut crs = CrsStatements::default();
    if let Some(prj) = parts.prj {
        crs.add_text(&String::from_utf8_lossy(prj));
    }
    let flat = features.iter().flat_map(|f| &f.shapes).flat_map(RawShape::points).all(|p| p.height.is_none());
    if flat && options.height_units.or(options.units).is_none() {
        // Without heights their unit is of no concern.
        crs.vertical.clear();
        let factor = crs.horizontal.first().map_or(1.0, |s| s.factor);
        crs.vertical.push(UnitStatement { factor, place: "prj" });
    }
    shapes::place(features, PlanSource { kind: FileKind::Shapefile, crs, left_out }, shape_notes, options, notes)
}

/// Attributes belong to shapes by their order alone, so the two counts must agree.
fn join(features: &mut [RawFeature], table: Table, notes: &mut Notes<'_>) -> Result<(), Refused> {
    if table.rows.len() != features.len() {
        let message = text::TABLE_DIFFERS.with("shapes", features.len()).with("rows", table.rows.len());
        return Err(notes.refuse("survey::table-differs", message, text::DO_GIVE_PARTS));
    }
    for (feature, row) in features.iter_mut().zip(table.rows) {
        feature.name = name_of(&row);
        feature.attributes = row;
    }
    Ok(())
}

fn records(
    bytes: &[u8],
    shape_notes: &mut ShapeNotes,
    left_out: &mut BTreeMap<String, u64>,
    notes: &mut Notes<'_>,
) -> Result<Vec<RawFeature>, Refused> {
    if bytes.len() < HEADER {
        return Err(notes.refuse("survey::truncated", text::HEADER_CUT, text::DO_COPY_AGAIN));
    }
    let declared = (be(bytes, 24) as usize).saturating_mul(2);
    if be(bytes, 0) != 9994 || le(bytes, 28) != 1000 || declared < HEADER {
        return Err(notes.refuse("survey::damaged", text::HEADER_ABSURD, text::DO_COPY_AGAIN));
    }
    if declared > bytes.len() {
        let message = text::TRUNCATED.with("needed", declared).with("found", bytes.len());
        return Err(notes.refuse("survey::truncated", message, text::DO_COPY_AGAIN));
    }
    let mut features = Vec::new();
    let mut rest = &bytes[HEADER..declared];
    while !rest.is_empty() {
        let place = features.len() + 1;
        // The length counts words of two bytes.
        let length = if rest.len() < 8 { usize::MAX } else { (be(rest, 4) as usize).saturating_mul(2) };
        let Some(content) = rest.get(8..).and_then(|r| r.get(..length)).filter(|c| c.len() >= 4) else {
            let message = text::RECORD_ABSURD.with("place", place).with("length", length).with("room", rest.len());
            return Err(notes.refuse("survey::damaged", message, text::DO_COPY_AGAIN));
        };
        rest = &rest[8 + length..];
        let mut feature = RawFeature { place, ..RawFeature::default() };
        match le(content, 0) {
            0 => *left_out.entry(NULL.to_owned()).or_default() += 1,
            31 => *left_out.entry(MULTIPATCH.to_owned()).or_default() += 1,
            kind => match shapes_of(kind, content) {
                Some(shapes) => feature.shapes = shapes,
                None => shape_notes.refuse(place, text::SHAPE_UNREADABLE, notes),
            },
        }
        features.push(feature);
    }
    Ok(features)
}

/// Shapes of a record. Types 1, 3, 5, 8 are flat; 10 more have heights and perhaps measures, 20 more
/// only measures, which are not read.
fn shapes_of(kind: u32, content: &[u8]) -> Option<Vec<RawShape>> {
    let with_heights = (11..=18).contains(&kind);
    match kind % 10 {
        1 if kind <= 21 => {
            let at = DVec2::new(double(content, 4)?, double(content, 12)?);
            let height = if with_heights { known(double(content, 20)?) } else { None };
            finite(&at).map(|()| vec![RawShape::Point(RawPoint { at, height })])
        }
        8 if kind <= 28 => {
            let count = index(content, 36)?;
            let points = points(content, 40, count, with_heights)?;
            Some(points.into_iter().map(RawShape::Point).collect())
        }
        3 | 5 if kind <= 25 => {
            let (parts, count) = (index(content, 36)?, index(content, 40)?);
            if kind % 10 == 5 && parts > MOST_RINGS {
                return None;
            }
            let start = parts.checked_mul(4)?.checked_add(44)?;
            let starts: Vec<usize> =
                content.get(44..start)?.chunks_exact(4).map(|c| le(c, 0) as usize).chain([count]).collect();
            let points = points(content, start, count, with_heights)?;
            let pieces: Option<Vec<Vec<RawPoint>>> =
                starts.windows(2).map(|w| points.get(w[0]..w[1]).map(<[RawPoint]>::to_vec)).collect();
            let pieces = pieces?;
            if kind % 10 == 5 { Some(areas(pieces)) } else { Some(pieces.into_iter().map(RawShape::Line).collect()) }
        }
        _ => None,
    }
}

/// Points with their heights, which stand behind all of them after their smallest and largest.
fn points(content: &[u8], start: usize, count: usize, with_heights: bool) -> Option<Vec<RawPoint>> {
    let end = count.checked_mul(16)?.checked_add(start)?;
    let plan = content.get(start..end)?;
    let heights = if with_heights { content.get(end + 16..)?.get(..count * 8)? } else { &[] };
    let mut points = Vec::with_capacity(count);
    for (i, c) in plan.chunks_exact(16).enumerate() {
        let at = DVec2::new(double(c, 0)?, double(c, 8)?);
        finite(&at)?;
        let height = if with_heights { known(double(heights, i * 8)?) } else { None };
        points.push(RawPoint { at, height });
    }
    Some(points)
}

fn finite(at: &DVec2) -> Option<()> {
    at.is_finite().then_some(())
}

fn known(height: f64) -> Option<f64> {
    (height.is_finite() && height > NO_DATA).then_some(height)
}

/// A count; the slices that are taken by it check that the bytes are there.
fn index(bytes: &[u8], at: usize) -> Option<usize> {
    let value = u32::from_le_bytes(bytes.get(at..at + 4)?.try_into().ok()?);
    usize::try_from(value).ok().filter(|_| i32::try_from(value).is_ok())
}

fn double(bytes: &[u8], at: usize) -> Option<f64> {
    Some(f64::from_le_bytes(bytes.get(at..at + 8)?.try_into().ok()?))
}

fn le(bytes: &[u8], at: usize) -> u32 {
    u32::from_le_bytes([bytes[at], bytes[at + 1], bytes[at + 2], bytes[at + 3]])
}

fn be(bytes: &[u8], at: usize) -> u32 {
    le(bytes, at).swap_bytes()
}
