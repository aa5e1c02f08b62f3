//! Entities, one after another, each with a handle.

use super::words;
use geometry::{DVec2, DVec3};
use std::fmt::Write as _;

/// First handle of an entity; the skeleton's own lie below.
pub(super) const FIRST_HANDLE: u32 = 0x100;

/// Handle of the block record of model space, the owner of every entity.
pub(super) const MODEL_SPACE: u32 = 0x1F;

/// Application name of extended data.
pub(super) const APPLICATION: &str = "COUNTERPOISE";

/// Most extended data of one entity, bytes; the format's own limit is 16 kB.
const MOST_TAGS: usize = 12_000;

/// Extended data, ready to stand behind an entity.
#[derive(Debug, Clone, Default)]
pub(super) struct Tags(String);

impl Tags {
    pub(super) fn new(lines: &[String]) -> Self {
        let mut out = String::new();
        pair(&mut out, 1001, APPLICATION);
        for piece in lines.iter().flat_map(|line| words::pieces(line)) {
            if out.len() + piece.len() > MOST_TAGS {
                break;
            }
            pair(&mut out, 1000, piece);
        }
        Self(out)
    }
}

/// All entities of a drawing.
#[derive(Debug, Default)]
pub(super) struct Entities {
    pub(super) text: String,
    pub(super) count: u32,
    pub(super) extent: Option<(DVec3, DVec3)>,
}

/// A group code with its value.
pub(super) fn pair(out: &mut String, code: u32, value: impl std::fmt::Display) {
    // Writing to a string cannot fail.
    let _ = writeln!(out, "{code:>3}\n{value}");
}

/// A number to a tenth of a millimetre, without a negative nought.
pub(super) fn number(value: f64) -> String {
    format!("{:.4}", crate::item::rounded(value))
}

impl Entities {
    pub(super) fn face(&mut self, layer: &str, corners: [DVec3; 3]) {
        self.begin("3DFACE", layer, "AcDbFace");
        for (i, p) in corners.iter().chain([&corners[2]]).enumerate() {
            self.at(i as u32, *p);
        }
    }

    /// A polyline in one level, with a width and a thickness upward.
    #[expect(clippy::too_many_arguments, reason = "what such a polyline has")]
    pub(super) fn flat(
        &mut self,
        layer: &str,
        points: &[DVec2],
        width: f64,
        level: f64,
        thickness: f64,
        closed: bool,
        tags: &Tags,
    ) {
        self.begin("LWPOLYLINE", layer, "AcDbPolyline");
        self.pair(90, points.len());
        self.pair(70, u32::from(closed));
        self.pair(43, number(width));
        self.pair(38, number(level));
        if thickness != 0.0 {
            self.pair(39, number(thickness));
        }
        for p in points {
            self.pair(10, number(p.x));
            self.pair(20, number(p.y));
            self.reach(p.extend(level));
            self.reach(p.extend(level + thickness));
        }
        self.text.push_str(&tags.0);
    }

    /// A polyline in space.
    pub(super) fn polyline(&mut self, layer: &str, points: &[DVec3], closed: bool, tags: &Tags) {
        self.begin("POLYLINE", layer, "AcDb3dPolyline");
        self.pair(66, 1);
        self.origin();
        self.pair(70, 8 + u32::from(closed));
        self.text.push_str(&tags.0);
        for p in points {
            self.begin("VERTEX", layer, "AcDbVertex");
            self.pair(100, "AcDb3dPolylineVertex");
            self.at(0, *p);
            self.pair(70, 32);
        }
        self.start("SEQEND", layer);
    }

    pub(super) fn circle(&mut self, layer: &str, centre: DVec3, radius: f64, thickness: f64, tags: &Tags) {
        self.begin("CIRCLE", layer, "AcDbCircle");
        if thickness != 0.0 {
            self.pair(39, number(thickness));
        }
        self.at(0, centre);
        self.pair(40, number(radius));
        let reach = DVec3::new(radius, radius, 0.0);
        self.reach(centre - reach);
        self.reach(centre + reach + DVec3::new(0.0, 0.0, thickness));
        self.text.push_str(&tags.0);
    }

    pub(super) fn point(&mut self, layer: &str, at: DVec3, tags: &Tags) {
        self.begin("POINT", layer, "AcDbPoint");
        self.at(0, at);
        self.text.push_str(&tags.0);
    }

    /// Text, of any length. As MTEXT: its coded letters are read by more tools than those of TEXT.
    pub(super) fn text(&mut self, layer: &str, at: DVec3, height: f64, text: &str, tags: &Tags) {
        let mut pieces = words::shown_pieces(text);
        let last = pieces.pop().unwrap_or_default();
        if pieces.is_empty() && last.trim().is_empty() {
            return;
        }
        self.begin("MTEXT", layer, "AcDbMText");
        self.at(0, at);
        self.pair(40, number(height));
        // No wrapping; at the lower left; from left to right.
        self.pair(41, number(0.0));
        self.pair(71, 7);
        self.pair(72, 1);
        for piece in pieces {
            self.pair(3, piece);
        }
        self.pair(1, last);
        self.pair(7, "Standard");
        self.text.push_str(&tags.0);
    }

    fn begin(&mut self, kind: &str, layer: &str, class: &str) {
        self.start(kind, layer);
        self.pair(100, class);
    }

    fn start(&mut self, kind: &str, layer: &str) {
        self.pair(0, kind);
        self.pair(5, format!("{:X}", FIRST_HANDLE + self.count));
        self.count += 1;
        self.pair(330, format!("{MODEL_SPACE:X}"));
        self.pair(100, "AcDbEntity");
        self.pair(8, layer);
    }

    fn pair(&mut self, code: u32, value: impl std::fmt::Display) {
        pair(&mut self.text, code, value);
    }

    fn origin(&mut self) {
        for code in [10, 20, 30] {
            self.pair(code, number(0.0));
        }
    }

    fn at(&mut self, corner: u32, p: DVec3) {
        self.pair(10 + corner, number(p.x));
        self.pair(20 + corner, number(p.y));
        self.pair(30 + corner, number(p.z));
        self.reach(p);
    }

    fn reach(&mut self, p: DVec3) {
        let (low, high) = self.extent.unwrap_or((p, p));
        self.extent = Some((low.min(p), high.max(p)));
    }
}
