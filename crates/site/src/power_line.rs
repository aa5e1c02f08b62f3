//! Overhead lines: what is not known stays not known.

use crate::conductor::Catenary;
use geometry::{DVec3, Segment};
use quantity::{Length, Voltage};

/// An overhead line.
#[derive(Debug, Clone)]
pub struct PowerLine {
    /// Name for people.
    pub name: String,
    /// Nominal voltage; `None`: not known, which is no-go within reach.
    pub voltage: Option<Voltage>,
    /// Spans; empty: heights not known, which is no-go within reach.
    pub spans: Vec<Span>,
    /// Course in plan where heights are not known, m.
    pub course: Vec<geometry::DVec2>,
    /// Survey error of conductor positions.
    pub survey_error: Length,
    /// Swing of the conductors sideways by wind.
    pub swing: Length,
    /// Where it comes from: a file with its place, or who says so.
    pub source: String,
    /// Confirmed dead and visibly grounded.
    pub dead: Option<DeadConfirmation>,
    /// Covered by its owner. Recorded and told; no distance gets shorter by it.
    pub insulated: Option<Insulation>,
}

/// One span of the lowest conductor.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Span {
    /// Conductor at one support, m.
    pub from: DVec3,
    /// Conductor at the other support, m.
    pub to: DVec3,
    /// Sag at mid-span below the chord, m.
    pub sag: f64,
}

/// Who confirmed that a line is dead. Both are needed.
#[derive(Debug, Clone)]
pub struct DeadConfirmation {
    /// The owner's person.
    pub owner: String,
    /// Permit number.
    pub permit: String,
    /// Visibly grounded at the work.
    pub visibly_grounded: bool,
}

/// Who says that a line is covered, and under which permit. Covers are no protection against contact by plant
/// (common practice), so the line counts as bare.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Insulation {
    /// The owner's person.
    pub by: String,
    /// Permit number.
    pub permit: String,
}

impl Span {
    /// The conductor as `pieces` chords. Parabola and catenary of the same sag at mid-span are both
    /// computed and the lower counts. Chords of a sagging curve lie above it: each is lowered by the
    /// largest gap between chord and curve, so that none is too high. For the parabola that is
    /// `sag / pieces²`, for the catenary at most its greatest bend times the piece squared over 8.
    pub fn chords(&self, pieces: usize) -> Vec<Segment> {
        let n = pieces.max(1);
        let plan = self.to.truncate().distance(self.from.truncate());
        let catenary = Catenary::with_sag(plan, self.to.z - self.from.z, self.sag);
        let piece = plan / n as f64;
        let gap = catenary.map_or(0.0, |c| c.greatest_bend() * piece * piece / 8.0);
        let lower = DVec3::new(0.0, 0.0, gap.max(self.sag / (n * n) as f64));
        let point = |i: usize| {
            let t = i as f64 / n as f64;
            let mut p = self.from.lerp(self.to, t);
            p.z -= 4.0 * self.sag * t * (1.0 - t);
            if let Some(c) = &catenary {
                p.z = p.z.min(self.from.z + c.height(t * plan));
            }
            p
        };
        (0..n).map(|i| Segment { a: point(i) - lower, b: point(i + 1) - lower }).collect()
    }
}
