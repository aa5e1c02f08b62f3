//! Overhead lines: what is not known stays not known.

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
    /// Confirmed dead and visibly grounded.
    pub dead: Option<DeadConfirmation>,
}

/// One span of the lowest conductor.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Span {
    /// Conductor at one support, m.
    pub from: DVec3,
    /// Conductor at the other support, m.
    pub to: DVec3,
    /// Sag at mid-span below the chord, m (parabola).
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

impl Span {
    /// The parabola as `pieces` chords. Chords of a sagging curve lie above it: each is lowered by
    /// the largest gap between chord and parabola, `sag / pieces²`, so that none is too high.
    pub fn chords(&self, pieces: usize) -> Vec<Segment> {
        let n = pieces.max(1);
        let lower = DVec3::new(0.0, 0.0, self.sag / (n * n) as f64);
        let point = |i: usize| {
            let t = i as f64 / n as f64;
            let mut p = self.from.lerp(self.to, t);
            p.z -= 4.0 * self.sag * t * (1.0 - t);
            p
        };
        (0..n).map(|i| Segment { a: point(i) - lower, b: point(i + 1) - lower }).collect()
    }
}
