//! What one part of a landing has to carry against what it can.

use crate::text;
use evidence::{Status, TextId};
use quantity::Quantity;

/// Which part, and how.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Part {
    /// Bending of a board of the deck.
    BoardMoment,
    /// Shear of a board.
    BoardShear,
    /// Sag of a board between joists.
    BoardSag,
    /// Bending of a joist or beam.
    JoistMoment,
    /// Shear of a joist or beam.
    JoistShear,
    /// Sag of a joist or beam between supports.
    JoistSag,
    /// Bending of the slab where it sags.
    SlabSagging,
    /// Bending of the slab over its supports.
    SlabHogging,
    /// Shear of the slab as a wide beam.
    SlabShear,
    /// A foot punching through the slab.
    FootPunching,
    /// The whole pallet punching through the slab.
    PalletPunching,
    /// Crushing of the concrete at the edge of a foot.
    FootCrushing,
    /// The bay's rated total.
    RatedTotal,
    /// The bay's rated load a pallet.
    RatedPallet,
    /// The bay's rated even load, under the pallet.
    RatedEven,
    /// The bay's rated even load, over the whole bay.
    RatedEvenTotal,
    /// The bay's rated point load, under a foot.
    RatedPoint,
    /// The bay's rated push of the forks.
    RatedPush,
    /// The load that the engineer of the props allows.
    Propped,
    /// What one foot of the load presses, where nobody knows its feet.
    Feet,
    /// The even load that was counted on deck or slab beside the pallet, for what lies there and people.
    Beside,
}

impl Part {
    /// Its name.
    pub fn name(self) -> TextId {
        match self {
            Self::BoardMoment => text::PART_BOARD_MOMENT,
            Self::BoardShear => text::PART_BOARD_SHEAR,
            Self::BoardSag => text::PART_BOARD_SAG,
            Self::JoistMoment => text::PART_JOIST_MOMENT,
            Self::JoistShear => text::PART_JOIST_SHEAR,
            Self::JoistSag => text::PART_JOIST_SAG,
            Self::SlabSagging => text::PART_SLAB_SAGGING,
            Self::SlabHogging => text::PART_SLAB_HOGGING,
            Self::SlabShear => text::PART_SLAB_SHEAR,
            Self::FootPunching => text::PART_FOOT_PUNCHING,
            Self::PalletPunching => text::PART_PALLET_PUNCHING,
            Self::FootCrushing => text::PART_FOOT_CRUSHING,
            Self::RatedTotal => text::PART_RATED_TOTAL,
            Self::RatedPallet => text::PART_RATED_PALLET,
            Self::RatedEven => text::PART_RATED_EVEN,
            Self::RatedEvenTotal => text::PART_RATED_EVEN_TOTAL,
            Self::RatedPoint => text::PART_RATED_POINT,
            Self::RatedPush => text::PART_RATED_PUSH,
            Self::Propped => text::PART_PROPPED,
            Self::Feet => text::PART_FEET,
            Self::Beside => text::PART_BESIDE,
        }
    }
}

/// Demand and limit of one part.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Carried {
    /// Which.
    pub part: Part,
    /// What it has to carry, SI.
    pub demand: Quantity,
    /// What it can carry; `None`: not known.
    pub limit: Option<Quantity>,
}

impl Carried {
    /// Demand as a share of the limit; NaN where the limit is not known.
    pub fn utilisation(&self) -> f64 {
        self.limit.map_or(f64::NAN, |limit| self.demand.si / limit.si)
    }

    /// Go up to the limit; without a limit, or a number, cannot tell.
    pub fn status(&self) -> Status {
        match self.utilisation() {
            u if u.is_nan() => Status::CannotTell,
            u if u <= 1.0 => Status::Go,
            _ => Status::NoGo,
        }
    }
}

/// The part that governs: the worst status, of those the highest utilisation.
pub fn governing(all: &[Carried]) -> Option<&Carried> {
    let share = |c: &Carried| if c.utilisation().is_nan() { f64::INFINITY } else { c.utilisation() };
    all.iter().max_by(|a, b| a.status().cmp(&b.status()).then(share(a).total_cmp(&share(b))))
}

/// The largest load (N, to one part in a thousand of `most`, on the low side) up to `most` that every part still
/// carries: `carried` tells what it does. Effects grow with the load, so halving finds it. `None`: not even
/// an empty pallet, or something is not known.
pub fn largest_that_fits(most: f64, carried: impl Fn(f64) -> Vec<Carried>) -> Option<f64> {
    let fits = |load: f64| {
        let all = carried(load);
        !all.is_empty() && all.iter().all(|c| c.status() == Status::Go)
    };
    if fits(most) {
        return Some(most);
    }
    let (mut low, mut high) = (most * 1e-3, most);
    if !fits(low) {
        return None;
    }
    while high - low > most * 1e-3 {
        let middle = f64::midpoint(low, high);
        if fits(middle) { low = middle } else { high = middle }
    }
    Some(low)
}
