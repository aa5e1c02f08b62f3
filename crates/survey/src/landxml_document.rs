//! What stands in a LandXML file, in the file's own numbers; nothing is checked against anything.

use crate::crs::CrsStatements;
use evidence::{Message, TextId};
use geometry::{DVec2, DVec3};
use site::RingKind;
use std::collections::BTreeMap;

/// Problems that are reported one by one; the rest as a number.
pub(crate) const MOST_REPORTED: usize = 100;

/// A file as read. Coordinates are east, north, height: LandXML writes north first.
#[derive(Debug, Default)]
pub(crate) struct Document {
    pub(crate) crs: CrsStatements,
    /// A unit that is neither metre nor foot, as written.
    pub(crate) odd_unit: Option<String>,
    /// Area unit, m².
    pub(crate) area_unit: Option<f64>,
    pub(crate) surfaces: Vec<RawSurface>,
    pub(crate) points: Vec<SurveyPoint>,
    pub(crate) point_problems: Problems,
    pub(crate) figures: Vec<Figure>,
    pub(crate) figure_problems: Problems,
    /// Elements with geometry that are not read, by name.
    pub(crate) left_out: BTreeMap<String, u64>,
}

/// A surface.
#[derive(Debug, Default)]
pub(crate) struct RawSurface {
    pub(crate) name: String,
    pub(crate) line: u64,
    /// Points of the definition: id, place, line.
    pub(crate) points: Vec<(PointId, DVec3, u64)>,
    pub(crate) faces: Vec<([PointId; 3], u64)>,
    pub(crate) invisible: usize,
    /// Points of the source data.
    pub(crate) data: Vec<DVec3>,
    pub(crate) breaklines: Vec<Vec<DVec3>>,
    /// Rings with what they bound; and as lines where they have heights.
    pub(crate) boundaries: Vec<(RingKind, Vec<DVec2>, Option<Vec<DVec3>>)>,
    /// Breaklines and points of the source data without heights.
    pub(crate) without_height: usize,
    pub(crate) declared_plan_area: Option<f64>,
    pub(crate) declared_surface_area: Option<f64>,
    pub(crate) problems: Problems,
    /// Ids that are no numbers.
    pub(crate) words: BTreeMap<String, PointId>,
}

/// A point's id: its number, or a number above all of those for any other word.
pub(crate) type PointId = u64;

/// A survey point.
#[derive(Debug, Default)]
pub(crate) struct SurveyPoint {
    pub(crate) name: Option<String>,
    pub(crate) group: Option<String>,
    pub(crate) at: Option<Spot>,
    pub(crate) attributes: BTreeMap<&'static str, String>,
    pub(crate) line: u64,
}

/// A place: numbers, or the name of a survey point.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Spot {
    At(DVec2, Option<f64>),
    Named(String, u64),
}

/// A plan feature, a parcel or an alignment.
#[derive(Debug, Default)]
pub(crate) struct Figure {
    pub(crate) kind: &'static str,
    pub(crate) name: Option<String>,
    pub(crate) attributes: BTreeMap<&'static str, String>,
    pub(crate) line: u64,
    pub(crate) pieces: Vec<Piece>,
    /// A place without lines.
    pub(crate) location: Option<Spot>,
}

/// One piece of a figure's line.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Piece {
    Points(Vec<Spot>),
    Arc(Arc),
    /// Something that is not read: the line is interrupted.
    Gap,
}

/// A circular arc.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Arc {
    pub(crate) start: Spot,
    pub(crate) end: Spot,
    pub(crate) centre: Spot,
    pub(crate) clockwise: bool,
    pub(crate) length: Option<f64>,
}

/// One thing wrong, with its line.
#[derive(Debug)]
pub(crate) struct Problem {
    pub(crate) code: &'static str,
    pub(crate) line: u64,
    pub(crate) message: Message,
    pub(crate) hint: TextId,
}

/// Problems of one part of a file.
#[derive(Debug, Default)]
pub(crate) struct Problems {
    pub(crate) list: Vec<Problem>,
    pub(crate) total: usize,
}

impl Problems {
    pub(crate) fn add(&mut self, code: &'static str, line: u64, message: impl Into<Message>, hint: TextId) {
        self.total += 1;
        if self.list.len() < MOST_REPORTED {
            self.list.push(Problem { code, line, message: message.into(), hint });
        }
    }

    /// Turns them into faults; true if there was one.
    pub(crate) fn report(self, notes: &mut crate::notes::Notes<'_>) -> bool {
        let more = self.total - self.list.len();
        let any = self.total > 0;
        for p in self.list {
            notes.refuse_line(p.code, p.line, p.message, p.hint);
        }
        if more > 0 {
            let message = crate::text::MORE_PROBLEMS.with("count", more);
            notes.refuse("survey::more-problems", message, crate::text::DO_MEND_AT_SOURCE);
        }
        any
    }
}

impl RawSurface {
    /// The id of a word; words that are no numbers are numbered from the top.
    pub(crate) fn id(&mut self, word: &str) -> PointId {
        const WORDS: PointId = 1 << 63;
        match word.parse::<PointId>() {
            Ok(number) if number < WORDS => number,
            _ => {
                let next = WORDS + self.words.len() as PointId;
                *self.words.entry(word.to_owned()).or_insert(next)
            }
        }
    }

    /// The word of an id.
    pub(crate) fn word(&self, id: PointId) -> String {
        let word = self.words.iter().find(|(_, i)| **i == id).map(|(w, _)| crate::xml_scan::shown(w));
        word.unwrap_or_else(|| id.to_string())
    }

    /// True where there is nothing that a surface could be made of.
    pub(crate) fn is_empty(&self) -> bool {
        self.points.is_empty() && self.faces.is_empty() && self.data.is_empty() && self.breaklines.is_empty()
    }

    /// Every point of it.
    pub(crate) fn all_points(&self) -> impl Iterator<Item = DVec3> + '_ {
        let defined = self.points.iter().map(|p| p.1);
        defined.chain(self.data.iter().copied()).chain(self.breaklines.iter().flatten().copied())
    }
}
