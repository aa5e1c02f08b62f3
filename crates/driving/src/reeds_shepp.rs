//! Shortest ways of a car that drives forward and backward with a least radius.
//!
//! J. A. Reeds, L. A. Shepp: Optimal paths for a car that goes both forwards and backwards, Pacific
//! Journal of Mathematics 145 (1990) 367–393: the 48 words of section 8, formulas 8.1 to 8.11, with the
//! symmetries of section 8 (time flip, reflection, backward). Formulas from memory; the lengths are held
//! against an independent implementation (`validation/driving`).
//!
//! Inside, lengths are in radii and the start is the origin looking along x.

use crate::{PlanPose, word_formulas};
use geometry::wrapped;

/// What a piece of a word does.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Bend {
    /// Full lock to the left.
    Left,
    /// Straight on.
    Straight,
    /// Full lock to the right.
    Right,
}

impl Bend {
    /// Curvature in units of the greatest, left positive.
    pub fn sign(self) -> f64 {
        match self {
            Self::Left => 1.0,
            Self::Straight => 0.0,
            Self::Right => -1.0,
        }
    }
    fn mirrored(self) -> Self {
        match self {
            Self::Left => Self::Right,
            Self::Straight => Self::Straight,
            Self::Right => Self::Left,
        }
    }
}

/// A word: up to five pieces, driven in order.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Word {
    pieces: [(Bend, f64); 5],
    count: usize,
}

impl Word {
    pub(crate) const EMPTY: Self = Self { pieces: [(Bend::Straight, 0.0); 5], count: 0 };

    pub(crate) fn of(pieces: &[(Bend, f64)]) -> Self {
        let mut word = Self::EMPTY;
        for piece in pieces.iter().take(5) {
            word.pieces[word.count] = *piece;
            word.count += 1;
        }
        word
    }

    /// Pieces with their signed lengths in radii: negative is driven backward.
    pub fn pieces(&self) -> &[(Bend, f64)] {
        &self.pieces[..self.count]
    }

    /// Length in radii.
    pub fn length(&self) -> f64 {
        self.pieces().iter().map(|(_, l)| l.abs()).sum()
    }

    /// Length driven backward, in radii.
    pub fn backward(&self) -> f64 {
        self.pieces().iter().map(|(_, l)| (-l).max(0.0)).sum()
    }

    /// How often the direction of travel changes.
    pub fn cusps(&self) -> usize {
        let driven = self.pieces().iter().filter(|(_, l)| *l != 0.0);
        let mut last = 0.0;
        let mut cusps = 0;
        for (_, l) in driven {
            if last * l < 0.0 {
                cusps += 1;
            }
            last = *l;
        }
        cusps
    }

    /// The same word under the symmetries: time flipped, reflected, driven from its end.
    pub(crate) fn under(mut self, flip: bool, mirror: bool, back: bool) -> Self {
        for (bend, length) in &mut self.pieces[..self.count] {
            if flip {
                *length = -*length;
            }
            if mirror {
                *bend = bend.mirrored();
            }
        }
        if back {
            self.pieces[..self.count].reverse();
        }
        self
    }

    /// Where it ends, from the origin looking along x, in radii.
    pub fn end(&self) -> PlanPose {
        let mut at = PlanPose::new(0.0, 0.0, 0.0);
        for (bend, length) in self.pieces() {
            at = driven(at, *bend, *length);
        }
        at
    }
}

/// A pose after a piece, in radii.
fn driven(from: PlanPose, bend: Bend, length: f64) -> PlanPose {
    let (s0, c0) = libm::sincos(from.heading);
    let k = bend.sign();
    if k == 0.0 {
        return PlanPose::new(from.at.x + length * c0, from.at.y + length * s0, from.heading);
    }
    let heading = from.heading + k * length;
    let (s1, c1) = libm::sincos(heading);
    PlanPose::new(from.at.x + (s1 - s0) / k, from.at.y + (c0 - c1) / k, heading)
}

/// The pose `to` as seen from `from`, in radii.
fn relative(from: &PlanPose, to: &PlanPose, radius: f64) -> [f64; 3] {
    let d = from.seen_from(to.at) / radius;
    [d.x, d.y, wrapped(to.heading - from.heading)]
}

/// The shortest word from one pose to another for a least `radius` (m, above 0). The poses are those of
/// the point whose way has that radius.
pub fn shortest(from: &PlanPose, to: &PlanPose, radius: f64) -> Word {
    let mut best = Word::EMPTY;
    let mut least = f64::INFINITY;
    word_formulas::each(relative(from, to, radius), &mut |bound, word| {
        if bound < least {
            let found = word();
            if let Some(found) = found.filter(|w| w.length() < least) {
                (best, least) = (found, found.length());
            }
        }
    });
    best
}

/// Length of [`shortest`], m.
pub fn distance(from: &PlanPose, to: &PlanPose, radius: f64) -> f64 {
    shortest(from, to, radius).length() * radius
}

/// Every word that leads from one pose to another, in a fixed order.
pub fn words(from: &PlanPose, to: &PlanPose, radius: f64) -> Vec<Word> {
    let mut out = Vec::with_capacity(48);
    word_formulas::each(relative(from, to, radius), &mut |_, word| out.extend(word()));
    out
}
