//! Extremes of a beam under load. Between two cuts the load is even, so shear is linear, moment a parabola,
//! deflection of fourth order: extremes are found in closed form or as the root of a cubic, never sampled.

use crate::beam::{At, Solved};

/// A stretch of one member under an even load. State at its left end; `x` from there.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Piece {
    /// Where it begins, m from the beam's left tip.
    pub(crate) from: f64,
    /// Length, m.
    pub(crate) length: f64,
    /// Load, N/m.
    pub(crate) load: f64,
    /// Shear, N: what is left of the cut pushes up.
    pub(crate) shear: f64,
    /// Moment, N·m, sagging positive.
    pub(crate) moment: f64,
    /// Slope, falling to the right positive.
    pub(crate) slope: f64,
    /// Deflection, m, down positive.
    pub(crate) sag: f64,
    /// `EI`, N·m².
    pub(crate) stiffness: f64,
}

impl Piece {
    /// Shear, moment, slope, deflection at `x`.
    pub(crate) fn state(&self, x: f64) -> (f64, f64, f64, f64) {
        let Self { load: w, shear: v, moment: m, slope: t, sag: y, stiffness: ei, .. } = *self;
        (
            v - w * x,
            m + x * (v - x * w / 2.0),
            t - x * (m + x * (v / 2.0 - x * w / 6.0)) / ei,
            y + x * t - x * x * (m / 2.0 + x * (v / 6.0 - x * w / 24.0)) / ei,
        )
    }

    fn at(&self, x: f64, value: f64) -> At {
        At { value, at: self.from + x }
    }

    /// Moment at both ends and where the shear is nothing.
    fn moments(&self) -> impl Iterator<Item = At> {
        let crest = self.shear / self.load;
        let crest = (crest > 0.0 && crest < self.length).then_some(crest);
        [0.0, self.length].into_iter().chain(crest).map(|x| self.at(x, self.state(x).1))
    }

    /// Deflection at both ends and wherever the slope is nothing. The slope turns only where the moment is
    /// nothing, so between those places it has at most one root.
    fn sags(&self) -> impl Iterator<Item = At> {
        let (w, v, m) = (self.load, self.shear, self.moment);
        let mut turns: Vec<f64> = if w == 0.0 {
            vec![-m / v]
        } else {
            let root = (v * v + 2.0 * w * m).max(0.0).sqrt();
            vec![(v - root) / w, (v + root) / w]
        };
        turns.retain(|x| *x > 0.0 && *x < self.length);
        turns.extend([0.0, self.length]);
        turns.sort_by(f64::total_cmp);
        let flat: Vec<f64> = turns.windows(2).filter_map(|p| root_in(|x| self.state(x).2, p[0], p[1])).collect();
        flat.into_iter().chain([0.0, self.length]).map(|x| self.at(x, self.state(x).3))
    }
}

/// The root of a function that only rises or only falls from `a` to `b`, to the last bit of the place.
fn root_in(f: impl Fn(f64) -> f64, mut a: f64, mut b: f64) -> Option<f64> {
    let rises = f(b) > f(a);
    if f(a) * f(b) > 0.0 {
        return None;
    }
    for _ in 0..80 {
        let c = f64::midpoint(a, b);
        if (f(c) > 0.0) == rises { b = c } else { a = c }
    }
    Some(f64::midpoint(a, b))
}

/// The greatest by `rank`; a beam has at least one piece.
fn most(all: impl Iterator<Item = At>, rank: impl Fn(f64) -> f64) -> At {
    all.fold(At { value: 0.0, at: 0.0 }, |best, a| if rank(a.value) > rank(best.value) { a } else { best })
}

impl Solved {
    /// Greatest sagging moment, N·m; 0 where none sags.
    pub fn sagging(&self) -> At {
        most(self.pieces.iter().flat_map(Piece::moments), |m| m)
    }

    /// Greatest hogging moment, N·m, as a number below zero; 0 where none hogs.
    pub fn hogging(&self) -> At {
        most(self.pieces.iter().flat_map(Piece::moments), |m| -m)
    }

    /// Shear of the greatest size, N, with its sign.
    pub fn shear(&self) -> At {
        let ends = |p: &Piece| [0.0, p.length].map(|x| p.at(x, p.state(x).0));
        most(self.pieces.iter().flat_map(ends), f64::abs)
    }

    /// Greatest deflection down, m; 0 where none goes down.
    pub fn sag(&self) -> At {
        most(self.pieces.iter().flat_map(Piece::sags), |y| y)
    }

    /// Greatest deflection up, m, as a number below zero; 0 where none goes up.
    pub fn rise(&self) -> At {
        most(self.pieces.iter().flat_map(Piece::sags), |y| -y)
    }

    /// Moment at `x` from the left tip, N·m, sagging positive; `None` off the beam.
    pub fn moment_at(&self, x: f64) -> Option<f64> {
        self.state_at(x).map(|s| s.1)
    }

    /// Deflection at `x` from the left tip, m, down positive; `None` off the beam.
    pub fn sag_at(&self, x: f64) -> Option<f64> {
        self.state_at(x).map(|s| s.3)
    }

    /// Shear just right of `x`, N; at the right tip just left of it; `None` off the beam.
    pub fn shear_at(&self, x: f64) -> Option<f64> {
        self.state_at(x).map(|s| s.0)
    }

    fn state_at(&self, x: f64) -> Option<(f64, f64, f64, f64)> {
        let last = self.pieces.last()?;
        // Sums of lengths in another order may differ in the last bits.
        if !(x >= 0.0 && x <= (last.from + last.length) * (1.0 + 1e-12)) {
            return None;
        }
        let piece = self.pieces.iter().rev().find(|p| p.from <= x)?;
        Some(piece.state((x - piece.from).min(piece.length)))
    }

    /// Whether a support would have to hold the beam down.
    pub fn lifts(&self) -> bool {
        let all: f64 = self.reactions.iter().map(|r| r.force.abs()).sum();
        self.reactions.iter().any(|r| r.force < -1e-9 * all)
    }
}
