//! Ground points of a cloud.

use crate::cloud_header::{self, CloudHeader, count};
use crate::crs::{is_on_earth, is_plausible};
use crate::kind::FileKind;
use crate::notes::{Notes, Refused};
use crate::options::{GroundOptions, LONGEST_EDGE_CLOUD};
use crate::placement::{Placement, Settled};
use crate::reading::{Facts, UnitFacts};
use crate::{cloud_records, kind, text};
use evidence::Faults;
use geometry::{DVec2, DVec3};
use quantity::Quantity;
use std::collections::BTreeMap;

/// The class of ground points (LAS 1.4 R15, tables 9 and 17).
const GROUND: u8 = 2;

/// Most ground points that are kept: their triangulation takes about 150 bytes a point, so this
/// stays well under a gigabyte. A larger survey needs a window.
pub(crate) const MOST_GROUND_POINTS: u64 = 4_000_000;

/// Fewer ground points per square metre than this leave holes under a machine. Ours: one wheel
/// track apart.
const THIN: f64 = 1.0;

/// Ground points of a cloud with its facts.
#[derive(Debug, Clone, PartialEq)]
pub struct CloudPoints {
    /// Points of class 2 that are not withheld, in and just around the window, m.
    pub ground: Vec<DVec3>,
    /// What was found.
    pub facts: Facts,
    /// Warnings.
    pub notes: Faults,
}

/// Reads the ground points of a LAS or LAZ file without triangulating them.
///
/// # Errors
/// Every fault of the file; see `docs/survey-files.md`.
pub fn read_cloud(name: &str, bytes: &[u8], options: &GroundOptions) -> Result<CloudPoints, Faults> {
    let mut notes = Notes::new(name);
    let result = kind::sniff(name, bytes, &mut notes).and_then(|kind| match kind {
        FileKind::Las | FileKind::Laz => ground(kind, bytes, options, &mut notes),
        _ => Err(notes.refuse("survey::not-a-cloud", text::NOT_A_CLOUD, text::DO_GIVE_KNOWN_KIND)),
    });
    let ((ground, facts), notes) = notes.finish(result)?;
    Ok(CloudPoints { ground, facts, notes })
}

/// Header and placement of a cloud, before any point is decoded.
pub(crate) fn open(
    bytes: &[u8],
    options: &GroundOptions,
    notes: &mut Notes<'_>,
) -> Result<(CloudHeader, Settled), Refused> {
    let header = cloud_header::read(bytes, notes)?;
    cloud_records::check_chunks(&header, bytes, notes)?;
    let (min, max) = header.declared;
    if !(min.is_finite() && max.is_finite()) {
        return Err(notes.refuse("survey::damaged", text::HEADER_ABSURD, text::DO_EXPORT_AGAIN));
    }
    let settled = Placement::settle(&header.crs, (min.truncate(), max.truncate()), options, notes)?;
    Ok((header, settled))
}

/// Turns record coordinates into metres (or degrees) of the file's own system; [`Placement`] does the rest.
#[derive(Debug, Clone, Copy)]
pub(crate) struct RecordFrame {
    scale: DVec3,
    offset: DVec3,
    /// Position of the byte that holds the class, and its layout.
    class_at: usize,
    extended: bool,
}

impl RecordFrame {
    pub(crate) fn new(header: &CloudHeader, units: UnitFacts) -> Self {
        let factor = factor(units);
        let extended = header.format >= 6;
        Self {
            scale: header.scale * factor,
            offset: header.offset * factor,
            class_at: if extended { 16 } else { 15 },
            extended,
        }
    }

    /// Coordinates as stored.
    #[inline]
    pub(crate) fn stored(record: &[u8]) -> [i32; 3] {
        let at = |i: usize| i32::from_le_bytes([record[i], record[i + 1], record[i + 2], record[i + 3]]);
        [at(0), at(4), at(8)]
    }

    /// Metres of stored coordinates.
    #[inline]
    pub(crate) fn metres(&self, [x, y, z]: [i32; 3]) -> DVec3 {
        DVec3::new(f64::from(x), f64::from(y), f64::from(z)) * self.scale + self.offset
    }

    /// Class, and whether the point is withheld.
    #[inline]
    pub(crate) fn class(&self, record: &[u8]) -> (u8, bool) {
        let class = record[self.class_at];
        if self.extended { (class, record[15] & 0x04 != 0) } else { (class & 0x1F, class & 0x80 != 0) }
    }
}

/// Ground points and facts.
pub(crate) fn ground(
    kind: FileKind,
    bytes: &[u8],
    options: &GroundOptions,
    notes: &mut Notes<'_>,
) -> Result<(Vec<DVec3>, Facts), Refused> {
    let (header, Settled { placement, units, crs }) = open(bytes, options, notes)?;
    let frame = RecordFrame::new(&header, units);
    let as_stored = placement.is_plain();
    let window = options.window.map(|w| w.grown(options.longest_edge.unwrap_or(LONGEST_EDGE_CLOUD)));
    let mut tally = Tally::default();
    let mut ground = Vec::new();
    cloud_records::visit(&header, bytes, notes, |block| {
        for record in block.chunks_exact(header.record_length) {
            let stored = RecordFrame::stored(record);
            tally.low = std::array::from_fn(|i| tally.low[i].min(stored[i]));
            tally.high = std::array::from_fn(|i| tally.high[i].max(stored[i]));
            let (class, withheld) = frame.class(record);
            tally.classes[usize::from(class)] += 1;
            tally.withheld += u64::from(withheld);
            if class == GROUND && !withheld {
                let mut point = frame.metres(stored);
                if !as_stored {
                    point = placement.of_metres(point.truncate()).extend(point.z);
                }
                tally.ground += 1;
                if !is_plausible(point.z) {
                    tally.implausible += 1;
                } else if !point.is_finite() {
                    tally.without_place += 1;
                } else if window.is_none_or(|w| w.contains(point.truncate())) {
                    tally.kept += 1;
                    if tally.kept <= MOST_GROUND_POINTS {
                        ground.push(point);
                    }
                }
            }
        }
    })?;
    let (low, high) = (frame.metres(tally.low), frame.metres(tally.high));
    let (min, max) = if as_stored { (low, high) } else { placement.bounds_of_metres(low, high) };
    let facts = Facts {
        kind,
        points: header.points,
        ground_points: tally.ground,
        min: min.to_array(),
        max: max.to_array(),
        units,
        crs,
        unknown_cells: 0,
        cell: None,
        classes: tally.classes(),
        withheld: tally.withheld,
    };
    check_bounds(&header, units, (low, high), notes)?;
    tally.check(&facts, &ground, notes)?;
    Ok((ground, facts))
}

struct Tally {
    low: [i32; 3],
    high: [i32; 3],
    classes: [u64; 256],
    withheld: u64,
    ground: u64,
    implausible: u64,
    without_place: u64,
    kept: u64,
}

impl Default for Tally {
    fn default() -> Self {
        Self {
            low: [i32::MAX; 3],
            high: [i32::MIN; 3],
            classes: [0; 256],
            withheld: 0,
            ground: 0,
            implausible: 0,
            without_place: 0,
            kept: 0,
        }
    }
}

impl Tally {
    fn classes(&self) -> BTreeMap<u8, u64> {
        (0..=u8::MAX).zip(self.classes).filter(|c| c.1 > 0).collect()
    }

    fn check(&self, facts: &Facts, ground: &[DVec3], notes: &mut Notes<'_>) -> Result<(), Refused> {
        if self.ground == 0 {
            let classes = facts.classes.iter().map(|(c, n)| format!("{c}: {n}")).collect::<Vec<_>>().join(", ");
            let message = text::UNCLASSIFIED.with("points", count(facts.points)).with("classes", classes);
            return Err(notes.refuse("survey::unclassified", message, text::DO_CLASSIFY));
        }
        if self.implausible > 0 {
            let message = text::HEIGHTS_IMPLAUSIBLE.with("count", count(self.implausible));
            notes.warn("survey::implausible-heights", message, text::DO_CHECK_HEIGHTS);
        }
        if self.without_place > 0 {
            let message = text::POINTS_WITHOUT_PLACE.with("count", count(self.without_place));
            notes.warn("survey::points-without-place", message, text::DO_CHECK_SYSTEMS);
        }
        if self.kept > MOST_GROUND_POINTS {
            let message =
                text::TOO_MANY_POINTS.with("points", count(self.kept)).with("most", count(MOST_GROUND_POINTS));
            return Err(notes.refuse("survey::too-many-points", message, text::DO_STATE_WINDOW));
        }
        if self.implausible + self.without_place < self.ground {
            refuse_empty_window(ground, facts, notes)?;
        }
        warn_thin(ground, notes);
        Ok(())
    }
}

/// Points exist, but none in the window.
pub(crate) fn refuse_empty_window(ground: &[DVec3], facts: &Facts, notes: &mut Notes<'_>) -> Result<(), Refused> {
    if !ground.is_empty() {
        return Ok(());
    }
    let message = text::WINDOW_EMPTY
        .with("west", quantity::metres(facts.min[0]))
        .with("south", quantity::metres(facts.min[1]))
        .with("east", quantity::metres(facts.max[0]))
        .with("north", quantity::metres(facts.max[1]));
    Err(notes.refuse("survey::window-empty", message, text::DO_CHECK_WINDOW))
}

fn warn_thin(ground: &[DVec3], notes: &mut Notes<'_>) {
    let corner = |pick: fn(DVec2, DVec2) -> DVec2| ground.iter().map(|p| p.truncate()).reduce(pick);
    let (Some(low), Some(high)) = (corner(DVec2::min), corner(DVec2::max)) else { return };
    let area = (high - low).x * (high - low).y;
    let density = ground.len() as f64 / area;
    if density < THIN {
        let message = text::CLOUD_THIN.with("density", Quantity::number(density));
        notes.warn("survey::thin-cloud", message, text::DO_DENSER);
    }
}

/// Metres in the file's numbers; 1 for degrees.
fn factor(units: UnitFacts) -> DVec3 {
    let horizontal = units.horizontal.metres();
    DVec3::new(horizontal, horizontal, units.vertical.metres())
}

/// Points against the box that the header declares. Compressed data carry no checksum, and points
/// outside the box are the one sign of damage; plain data are only reported.
fn check_bounds(
    header: &CloudHeader,
    units: UnitFacts,
    (min, max): (DVec3, DVec3),
    notes: &mut Notes<'_>,
) -> Result<(), Refused> {
    if !is_on_earth(min) || !is_on_earth(max) {
        let message = text::NOT_ON_EARTH.with("east", Quantity::number(max.x)).with("north", Quantity::number(max.y));
        return Err(notes.refuse("survey::coordinates-absurd", message, text::DO_EXPORT_AGAIN));
    }
    let factor = factor(units);
    let (low, high) = (header.declared.0 * factor, header.declared.1 * factor);
    // Writers round the box, some to two digits.
    let slack = (header.scale * factor * 2.0).max(DVec3::splat(0.02));
    let outside = (low - slack - min).max(max - high - slack).max_element();
    if outside <= 0.0 {
        return Ok(());
    }
    let message = text::BOUNDS_DIFFER.with("by", quantity::metres(outside));
    if header.laz.is_some() {
        return Err(notes.refuse("survey::damaged", message, text::DO_COPY_AGAIN));
    }
    notes.warn("survey::bounds-differ", message, text::DO_EXPORT_AGAIN);
    Ok(())
}
