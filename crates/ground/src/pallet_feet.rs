//! Where a pallet stands on: a grid of strips along by strips across, each with its share of the load.

use crate::landing_range::Ranges;
use evidence::Faults;
use quantity::Dimension;

/// A strip of contact in one direction.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Foot {
    /// Where it begins, m from the pallet's edge.
    pub from: f64,
    /// Where it ends, m.
    pub to: f64,
    /// Its share of the load; all shares of a direction add up to 1.
    pub share: f64,
}

/// How the load is shared between feet.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Sharing {
    /// Every foot the same: a stiff load.
    Even,
    /// By the width each carries, its neighbours' halves: a limp load. The inner of three takes half.
    ByWidth,
}

/// Feet as the product of two rows: runners along are one long strip along and several across, blocks are
/// several both ways, a flat base is one strip both ways.
#[derive(Debug, Clone, PartialEq)]
pub struct Feet {
    /// Strips along the joists or the slab's span.
    pub along: Vec<Foot>,
    /// Strips across.
    pub across: Vec<Foot>,
}

impl Feet {
    /// `along` and `across`: length of the pallet, number of strips, width of each (m).
    ///
    /// # Errors
    /// Pallets outside 0.2 to 12 m, strips that do not fit beside each other.
    pub fn new(along: (f64, usize, f64), across: (f64, usize, f64), sharing: Sharing) -> Result<Self, Faults> {
        let mut ranges = Ranges::default();
        let mut row = |name: &str, (length, count, wide): (f64, usize, f64)| {
            ranges.within(&format!("{name}.length"), length, Dimension::Length, 0.2, 12.0);
            ranges.within(&format!("{name}.count"), count as f64, Dimension::Number, 1.0, 20.0);
            let most = length / count.max(1) as f64;
            ranges.within(&format!("{name}.width"), wide, Dimension::Length, 0.02, most);
            strips(length, count, wide, sharing)
        };
        let feet = Self { along: row("along", along), across: row("across", across) };
        ranges.done(feet)
    }

    /// The same turned a quarter.
    #[must_use]
    pub fn turned(self) -> Self {
        Self { along: self.across, across: self.along }
    }

    /// Length along and across, m.
    pub fn size(&self) -> [f64; 2] {
        [&self.along, &self.across].map(|row| row.last().map_or(0.0, |f| f.to))
    }

    /// The foot that takes most: length along, length across (m), share of the load.
    pub fn heaviest(&self) -> (f64, f64, f64) {
        let most = |row: &[Foot]| {
            row.iter().fold((0.0, 0.0), |b: (f64, f64), f| if f.share > b.1 { (f.to - f.from, f.share) } else { b })
        };
        let (a, b) = (most(&self.along), most(&self.across));
        (a.0, b.0, a.1 * b.1)
    }
}

fn strips(length: f64, count: usize, wide: f64, sharing: Sharing) -> Vec<Foot> {
    let gap = if count > 1 { (length - wide) / (count - 1) as f64 } else { 0.0 };
    let start = if count > 1 { 0.0 } else { (length - wide) / 2.0 };
    let one = |i: usize| {
        let from = start + gap * i as f64;
        let share = match sharing {
            Sharing::ByWidth if count > 1 => {
                let outer = i == 0 || i + 1 == count;
                if outer { 0.5 / (count - 1) as f64 } else { 1.0 / (count - 1) as f64 }
            }
            Sharing::Even | Sharing::ByWidth => 1.0 / count as f64,
        };
        Foot { from, to: from + wide, share }
    };
    (0..count).map(one).collect()
}
