//! Ground points of a cloud.

use crate::cloud_header::{self, CloudHeader, count};
use crate::cloud_stream::Tile;
use crate::crs::{is_on_earth, is_plausible};
use crate::ground_pick::GroundPick;
use crate::notes::{Notes, Refused};
use crate::options::{GroundOptions, LONGEST_EDGE_CLOUD};
use crate::placement::{Placement, Settled};
use crate::reading::{Facts, UnitFacts};
use crate::{cloud_records, text};
use evidence::Faults;
use geometry::{DVec2, DVec3};
use quantity::Quantity;

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
    let pick = GroundPick::of(&[(name, bytes)], options)?;
    let result = ground(name, bytes, options, &pick, &mut notes);
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

/// Turns record coordinates into metres in the site frame.
#[derive(Debug, Clone)]
pub(crate) struct RecordFrame {
    scale: DVec3,
    offset: DVec3,
    /// Position of the byte that holds the class, and its layout.
    class_at: usize,
    extended: bool,
    /// From metres (or degrees) of the file's system; `None`: they are the site's.
    placement: Option<Placement>,
}

impl RecordFrame {
    pub(crate) fn new(header: &CloudHeader, units: UnitFacts, placement: &Placement) -> Self {
        let factor = factor(units);
        let extended = header.format >= 6;
        Self {
            scale: header.scale * factor,
            offset: header.offset * factor,
            class_at: if extended { 16 } else { 15 },
            extended,
            placement: (!placement.is_plain()).then(|| placement.clone()),
        }
    }

    /// Coordinates as stored.
    #[inline]
    pub(crate) fn stored(record: &[u8]) -> [i32; 3] {
        let at = |i: usize| i32::from_le_bytes([record[i], record[i + 1], record[i + 2], record[i + 3]]);
        [at(0), at(4), at(8)]
    }

    /// Metres (or degrees) of stored coordinates in the file's own system.
    #[inline]
    pub(crate) fn of_file(&self, [x, y, z]: [i32; 3]) -> DVec3 {
        DVec3::new(f64::from(x), f64::from(y), f64::from(z)) * self.scale + self.offset
    }

    /// Metres of stored coordinates in the site frame; NaN where the projection has no answer.
    #[inline]
    pub(crate) fn metres(&self, stored: [i32; 3]) -> DVec3 {
        let at = self.of_file(stored);
        match &self.placement {
            None => at,
            Some(placement) => placement.of_metres(at.truncate()).extend(at.z),
        }
    }

    /// True if the file's own system is the site's: [`Self::of_file`] is then all there is to do.
    #[inline]
    pub(crate) fn is_plain(&self) -> bool {
        self.placement.is_none()
    }

    /// A box of the file's own system in the site frame.
    pub(crate) fn bounds(&self, low: DVec3, high: DVec3) -> (DVec3, DVec3) {
        self.placement.as_ref().map_or((low, high), |placement| placement.bounds_of_metres(low, high))
    }

    /// Class, and whether the point is withheld.
    #[inline]
    pub(crate) fn class(&self, record: &[u8]) -> (u8, bool) {
        let class = record[self.class_at];
        if self.extended { (class, record[15] & 0x04 != 0) } else { (class & 0x1F, class & 0x80 != 0) }
    }
}

/// Ground points and facts; `pick` says which points are ground.
pub(crate) fn ground(
    name: &str,
    bytes: &[u8],
    options: &GroundOptions,
    pick: &GroundPick,
    notes: &mut Notes<'_>,
) -> Result<(Vec<DVec3>, Facts), Refused> {
    let tile = Tile::open(name, bytes, options, notes)?;
    let window = options.window.map(|w| w.grown(options.longest_edge.unwrap_or(LONGEST_EDGE_CLOUD)));
    let mut tally = GroundTally::default();
    let mut ground = Vec::new();
    let seen = tile.visit(notes, |frame, sample| {
        let Some(point) = pick.ground(frame, sample) else { return };
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
    })?;
    let facts = tile.facts(&seen, tally.ground);
    tally.check(&facts, notes)?;
    if tally.kept > MOST_GROUND_POINTS {
        let message = text::TOO_MANY_POINTS.with("points", count(tally.kept)).with("most", count(MOST_GROUND_POINTS));
        return Err(notes.refuse("survey::too-many-points", message, text::DO_STATE_WINDOW));
    }
    pick.warn(&facts, notes);
    if tally.implausible + tally.without_place < tally.ground {
        refuse_empty_window(&ground, &facts, notes)?;
    }
    warn_thin(&ground, notes);
    Ok((ground, facts))
}

/// Ground points that went by.
#[derive(Debug, Default, Clone, Copy)]
pub(crate) struct GroundTally {
    /// All of them.
    pub(crate) ground: u64,
    /// With heights that no ground can have.
    pub(crate) implausible: u64,
    /// Where the projection has no answer.
    pub(crate) without_place: u64,
    /// In the window and usable.
    pub(crate) kept: u64,
}

impl GroundTally {
    /// A cloud without ground is refused, points that cannot be are told.
    pub(crate) fn check(&self, facts: &Facts, notes: &mut Notes<'_>) -> Result<(), Refused> {
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
        Ok(())
    }
}

/// Points exist, but none in the window.
pub(crate) fn refuse_empty_window(ground: &[DVec3], facts: &Facts, notes: &mut Notes<'_>) -> Result<(), Refused> {
    if ground.is_empty() { Err(refuse_window(facts, notes)) } else { Ok(()) }
}

/// No ground in the window.
pub(crate) fn refuse_window(facts: &Facts, notes: &mut Notes<'_>) -> Refused {
    let message = text::WINDOW_EMPTY
        .with("west", quantity::metres(facts.min[0]))
        .with("south", quantity::metres(facts.min[1]))
        .with("east", quantity::metres(facts.max[0]))
        .with("north", quantity::metres(facts.max[1]));
    notes.refuse("survey::window-empty", message, text::DO_CHECK_WINDOW)
}

fn warn_thin(ground: &[DVec3], notes: &mut Notes<'_>) {
    let corner = |pick: fn(DVec2, DVec2) -> DVec2| ground.iter().map(|p| p.truncate()).reduce(pick);
    let (Some(low), Some(high)) = (corner(DVec2::min), corner(DVec2::max)) else { return };
    warn_thin_area(ground.len() as f64, high - low, notes);
}

/// Warns of too few points on a rectangle of this size, m.
pub(crate) fn warn_thin_area(points: f64, size: DVec2, notes: &mut Notes<'_>) {
    let density = points / (size.x * size.y);
    if density < THIN {
        let message = text::CLOUD_THIN.with("density", Quantity::number(density));
        notes.warn("survey::thin-cloud", message, text::DO_DENSER);
    }
}

/// Metres in the file's numbers; 1 for degrees.
pub(crate) fn factor(units: UnitFacts) -> DVec3 {
    let horizontal = units.horizontal.metres();
    DVec3::new(horizontal, horizontal, units.vertical.metres())
}

/// Points against the box that the header declares. Compressed data carry no checksum, and points
/// outside the box are the one sign of damage; plain data are only reported.
pub(crate) fn check_bounds(
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
    let slack = bounds_slack(header, units);
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

/// What points may lie outside the declared box, m: writers round it, some to two digits.
pub(crate) fn bounds_slack(header: &CloudHeader, units: UnitFacts) -> DVec3 {
    let factor = DVec3::new(units.horizontal.metres(), units.horizontal.metres(), units.vertical.metres());
    (header.scale * factor * 2.0).max(DVec3::splat(0.02))
}
