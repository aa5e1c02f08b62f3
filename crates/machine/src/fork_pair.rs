//! A pair of fork blades on its carriage, as stamped and as measured.

use geometry::DVec2;
use quantity::{Angle, Length, Mass};

/// Pallet forks.
#[derive(Debug, Clone)]
pub struct Forks {
    /// Fork heel (top face of the blades at the fork face), ahead of and above the head pin, level, m.
    pub heel: DVec2,
    /// The two blades, left then right.
    pub blades: [Blade; 2],
    /// Distance between the middles of the blades, m.
    pub spread: f64,
    /// Rated load centre from the fork face, m.
    pub rated_load_centre: Length,
    /// What the carriage can do besides carrying; `None`: nobody stated it.
    pub carriage: Option<Carriage>,
    /// Sleeves pushed over the blades, where these forks have any. Mass, centre and charts of the
    /// attachment are then those with the sleeves on.
    pub extensions: Option<Extensions>,
    /// How much higher one tip stands than the other; `None`: not measured.
    pub tip_difference: Option<Length>,
    /// Day of the last thorough check of the blades, year-month-day; `None`: not known.
    pub checked: Option<String>,
}

/// One fork blade as stamped and as measured.
#[derive(Debug, Clone)]
pub struct Blade {
    /// Capacity stamped on this blade; `None`: the stamp is missing or cannot be read.
    pub capacity: Option<Mass>,
    /// Load centre stamped with it.
    pub load_centre: Length,
    /// Length of the blade.
    pub length: Length,
    /// Thickness at the heel when new.
    pub thickness_new: Option<Length>,
    /// Thickness at the heel as measured; `None` when not measured.
    pub thickness_now: Option<Length>,
    /// True if welded, drilled or otherwise changed from the maker's state; `None`: nobody looked.
    pub modified: Option<bool>,
    /// Angle between blade and shank; `None`: not measured.
    pub angle: Option<Angle>,
    /// How far the blade is off straight, over its own length; `None`: not measured.
    pub bent: Option<Length>,
    /// How far the shank is off straight, and over what length of it; `None`: not measured.
    pub shank: Option<Shank>,
    /// True if a crack was found; `None`: nobody looked.
    pub crack: Option<bool>,
    /// True if the lock that holds the blade in its place on the carriage works; `None`: nobody tried.
    pub lock: Option<bool>,
    /// Load of a proof test on the blade's papers, where there is one.
    pub proof_load: Option<Mass>,
}

/// The upright part of a blade as measured.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Shank {
    /// How far it is off straight.
    pub bent: Length,
    /// Its length.
    pub length: Length,
}

/// Sleeves that make the blades longer, as their own plate declares them.
#[derive(Debug, Clone)]
pub struct Extensions {
    /// Length of a sleeve from the fork face.
    pub length: Length,
    /// Capacity of the pair of sleeves on their own plate.
    pub capacity: Mass,
    /// Farthest load centre from the fork face that the plate allows.
    pub load_centre: Length,
    /// Share of the sleeve's length that the blade must fill at least.
    pub cover: f64,
    /// Whose plate it is: maker and number.
    pub by: String,
}

/// Share of a sleeve that the blade usually has to fill (common practice, from memory).
pub const USUAL_COVER: f64 = 0.6;

/// What the carriage under the forks can do besides carrying them.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Carriage {
    /// Nothing: the blades are set by hand.
    Fixed,
    /// Shifts sideways by at most this to either side, m.
    SideShift(f64),
    /// Sets the spread of the blades from the cab, within this range of their middles, m; some shift
    /// sideways besides, by at most `side_shift` to either side.
    Positioner {
        /// Least and greatest spread, m.
        spread: (f64, f64),
        /// Side shift to either side, m; 0 for none.
        side_shift: f64,
    },
    /// Tilts sideways.
    Tilting,
    /// Turns round its long axis.
    Rotating,
}

impl Carriage {
    /// Side shift to either side, m.
    pub fn side_shift(self) -> f64 {
        match self {
            Self::SideShift(range) => range,
            Self::Positioner { side_shift, .. } => side_shift,
            Self::Fixed | Self::Tilting | Self::Rotating => 0.0,
        }
    }
    /// True if it can be off level sideways, and must be locked level for a pallet.
    pub fn leaves_level(self) -> bool {
        matches!(self, Self::Tilting | Self::Rotating)
    }
}

/// Breadth of one blade, m: reckoned with because blades do not state theirs (common practice).
pub const BLADE_BREADTH: f64 = 0.10;

impl Forks {
    /// From the outer edge of one blade to that of the other, m: what stands on the pair reaches at
    /// least so far. Blades of [`BLADE_BREADTH`].
    pub fn over_both(&self) -> f64 {
        self.spread + BLADE_BREADTH
    }
    /// Length that carries, m: the shorter blade, or the sleeves over them.
    pub fn length(&self) -> f64 {
        self.extensions.as_ref().map_or_else(|| self.shorter_blade(), |e| e.length.value)
    }
    /// The shorter of the two blades, m.
    pub fn shorter_blade(&self) -> f64 {
        self.blades[0].length.value.min(self.blades[1].length.value)
    }
    /// The farthest that blades or sleeves reach, m.
    pub fn longest(&self) -> f64 {
        let sleeve = self.extensions.as_ref().map_or(0.0, |e| e.length.value);
        self.blades.iter().map(|b| b.length.value).fold(sleeve, f64::max)
    }
}
