//! Points of one or several clouds, one after the other: nothing is stored.

use crate::cloud::{self, RecordFrame};
use crate::cloud_header::CloudHeader;
use crate::cloud_records;
use crate::crs::is_plausible;
use crate::kind::{self, FileKind};
use crate::notes::{Notes, Refused};
use crate::options::GroundOptions;
use crate::placement::Settled;
use crate::reading::{Facts, UnitFacts};
use crate::text;
use evidence::Faults;
use geometry::{DVec2, DVec3};
use std::collections::BTreeMap;

/// Classes of points that are nothing: low noise and high noise (LAS 1.4 R15, table 17).
const NOISE: [u8; 2] = [7, 18];

/// A cloud whose header holds and whose units are known.
#[derive(Debug)]
pub(crate) struct Tile<'a> {
    pub(crate) name: &'a str,
    bytes: &'a [u8],
    kind: FileKind,
    header: CloudHeader,
    pub(crate) units: UnitFacts,
    pub(crate) frame: RecordFrame,
    crs: Option<String>,
}

/// One point as it stands in the file.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Sample {
    pub(crate) stored: [i32; 3],
    pub(crate) class: u8,
    pub(crate) withheld: bool,
}

impl Sample {
    /// Neither withheld nor noise, with a height that something on earth can have.
    pub(crate) fn is_something(&self, at: DVec3) -> bool {
        !self.withheld && !NOISE.contains(&self.class) && at.is_finite() && is_plausible(at.z)
    }
}

/// What was met while all points of a tile went by.
#[derive(Debug)]
pub(crate) struct Seen {
    low: [i32; 3],
    high: [i32; 3],
    classes: [u64; 256],
    withheld: u64,
}

impl<'a> Tile<'a> {
    /// Header, units and coordinates, before any point is decoded.
    pub(crate) fn open(
        name: &'a str,
        bytes: &'a [u8],
        options: &GroundOptions,
        notes: &mut Notes<'_>,
    ) -> Result<Self, Refused> {
        let kind = kind::sniff(name, bytes, notes)?;
        if !matches!(kind, FileKind::Las | FileKind::Laz) {
            return Err(notes.refuse("survey::not-a-cloud", text::NOT_A_CLOUD, text::DO_GIVE_KNOWN_KIND));
        }
        let (header, Settled { placement, units, crs }) = cloud::open(bytes, options, notes)?;
        let frame = RecordFrame::new(&header, units, &placement);
        Ok(Self { name, bytes, kind, header, units, frame, crs })
    }

    /// Hands over every point in file order; what the header declares is held against them.
    pub(crate) fn visit(
        &self,
        notes: &mut Notes<'_>,
        mut each: impl FnMut(&RecordFrame, Sample),
    ) -> Result<Seen, Refused> {
        let mut seen = Seen { low: [i32::MAX; 3], high: [i32::MIN; 3], classes: [0; 256], withheld: 0 };
        let frame = &self.frame;
        cloud_records::visit(&self.header, self.bytes, notes, |block| {
            // Kept apart from `seen` over the block, so that they stay in registers.
            let (mut low, mut high, mut held) = (seen.low, seen.high, 0);
            for record in block.chunks_exact(self.header.record_length) {
                let stored = RecordFrame::stored(record);
                low = std::array::from_fn(|i| low[i].min(stored[i]));
                high = std::array::from_fn(|i| high[i].max(stored[i]));
                let (class, withheld) = frame.class(record);
                seen.classes[usize::from(class)] += 1;
                held += u64::from(withheld);
                each(frame, Sample { stored, class, withheld });
            }
            (seen.low, seen.high, seen.withheld) = (low, high, seen.withheld + held);
        })?;
        let corners = (frame.of_file(seen.low), frame.of_file(seen.high));
        cloud::check_bounds(&self.header, self.units, corners, notes)?;
        Ok(seen)
    }

    /// Number of points that the header declares; checked against the bytes when opened.
    pub(crate) fn points(&self) -> u64 {
        self.header.points
    }

    /// Corners in plan that hold every point, m: of plain data by looking, since their header may
    /// be wrong; of compressed data as declared, since points outside make them damaged.
    pub(crate) fn bounds(&self) -> (DVec2, DVec2) {
        if self.header.laz.is_none() {
            let start = self.header.data_start;
            let end = start + self.header.points as usize * self.header.record_length;
            let (mut low, mut high) = ([i32::MAX; 3], [i32::MIN; 3]);
            for record in self.bytes[start..end].chunks_exact(self.header.record_length) {
                let stored = RecordFrame::stored(record);
                low = std::array::from_fn(|i| low[i].min(stored[i]));
                high = std::array::from_fn(|i| high[i].max(stored[i]));
            }
            let (low, high) = self.frame.bounds(self.frame.of_file(low), self.frame.of_file(high));
            return (low.truncate(), high.truncate());
        }
        let (low, high) = self.header.declared;
        let factor = cloud::factor(self.units);
        let slack = cloud::bounds_slack(&self.header, self.units);
        let (low, high) = self.frame.bounds(low * factor - slack, high * factor + slack);
        (low.truncate(), high.truncate())
    }

    /// The facts of the tile, of which `ground_points` are ground.
    pub(crate) fn facts(&self, seen: &Seen, ground_points: u64) -> Facts {
        let (min, max) = self.frame.bounds(self.frame.of_file(seen.low), self.frame.of_file(seen.high));
        Facts {
            kind: self.kind,
            points: self.header.points,
            ground_points,
            min: min.to_array(),
            max: max.to_array(),
            units: self.units,
            crs: self.crs.clone(),
            unknown_cells: 0,
            cell: None,
            classes: seen.classes(),
            withheld: seen.withheld,
        }
    }
}

impl Seen {
    fn classes(&self) -> BTreeMap<u8, u64> {
        (0..=u8::MAX).zip(self.classes).filter(|c| c.1 > 0).collect()
    }
}

/// Opens all tiles.
///
/// # Errors
/// Every fault of every tile.
pub(crate) fn open_all<'a>(
    tiles: &[(&'a str, &'a [u8])],
    options: &GroundOptions,
) -> Result<(Vec<Tile<'a>>, Faults), Faults> {
    let mut faults = Faults::default();
    let mut opened = Vec::with_capacity(tiles.len());
    for (name, bytes) in tiles {
        let mut notes = Notes::new(name);
        let result = Tile::open(name, bytes, options, &mut notes);
        match notes.finish(result) {
            Ok((tile, notes)) => {
                opened.push(tile);
                faults.append(notes);
            }
            Err(found) => faults.append(found),
        }
    }
    if opened.is_empty() && !faults.any_error() {
        let mut notes = Notes::new("");
        let refused = notes.refuse("survey::no-points", text::NO_POINTS, text::DO_GIVE_KNOWN_KIND);
        if let Err(found) = notes.finish::<()>(Err(refused)) {
            faults.append(found);
        }
    }
    if faults.any_error() { Err(faults) } else { Ok((opened, faults)) }
}

/// Hands over every point of every tile, in order; the first argument is the number of the tile.
///
/// # Errors
/// Every fault of every tile; warnings go to `faults`.
pub(crate) fn visit_all(
    tiles: &[Tile<'_>],
    faults: &mut Faults,
    mut each: impl FnMut(usize, &RecordFrame, Sample),
) -> Result<Vec<Seen>, Faults> {
    let mut all = Vec::with_capacity(tiles.len());
    let mut refused = Faults::default();
    for (index, tile) in tiles.iter().enumerate() {
        let mut notes = Notes::new(tile.name);
        let result = tile.visit(&mut notes, |frame, sample| each(index, frame, sample));
        match notes.finish(result) {
            Ok((seen, notes)) => {
                all.push(seen);
                faults.append(notes);
            }
            Err(found) => refused.append(found),
        }
    }
    if refused.any_error() { Err(refused) } else { Ok(all) }
}
