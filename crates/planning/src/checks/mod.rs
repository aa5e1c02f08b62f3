//! The checks of a lift. Each module has an outcome that is numbers and status only, the function
//! that computes it, and the function that says it as a finding.

pub(crate) mod approach;
pub(crate) mod attachment;
pub(crate) mod axle;
pub(crate) mod bearing;
pub(crate) mod blades;
pub(crate) mod buried;
pub(crate) mod chart;
pub(crate) mod contacts;
mod edge_rows;
pub(crate) mod edges;
pub(crate) mod fitted;
pub(crate) mod forks;
pub(crate) mod gates;
pub(crate) mod ground;
mod group;
pub(crate) mod identity;
pub(crate) mod landing;
pub(crate) mod landing_edge;
pub(crate) mod landing_room;
pub(crate) mod level;
pub(crate) mod line;
pub(crate) mod load;
pub(crate) mod load_advice;
pub(crate) mod load_shape;
pub(crate) mod lock;
pub(crate) mod machine_fit;
pub(crate) mod mat_stack;
pub(crate) mod matters;
pub(crate) mod movement;
pub(crate) mod obstacle;
pub(crate) mod parts;
pub(crate) mod patches;
pub(crate) mod rigging;
pub(crate) mod rutting;
pub(crate) mod search;
pub(crate) mod settlement;
pub(crate) mod settlement_finding;
pub(crate) mod sight;
pub(crate) mod slewing;
pub(crate) mod statics;
pub(crate) mod steering;
pub(crate) mod stops;
pub(crate) mod sudden;
pub(crate) mod surely;
pub(crate) mod swept;
pub(crate) mod tool;
pub(crate) mod tyres;
pub(crate) mod under;
pub(crate) mod uneven;
pub(crate) mod wind;
pub(crate) mod zones;

use evidence::Status;
use quantity::{Dimension, Quantity};

/// Reserve below which a passed check is a condition: a quarter more than required.
pub(crate) const NEAR: f64 = 1.25;

pub(crate) fn metres(si: f64) -> Quantity {
    Quantity::new(si, Dimension::Length)
}
pub(crate) fn kilograms(si: f64) -> Quantity {
    Quantity::new(si, Dimension::Mass)
}
pub(crate) fn angle(si: f64) -> Quantity {
    Quantity::new(si, Dimension::Angle)
}
pub(crate) fn newtons(si: f64) -> Quantity {
    Quantity::new(si, Dimension::Force)
}
pub(crate) fn pascals(si: f64) -> Quantity {
    Quantity::new(si, Dimension::Pressure)
}

/// Reserve of a demand against a limit: 0 at the limit, negative beyond.
pub(crate) fn reserve(demand: f64, limit: f64) -> f64 {
    if limit > 0.0 { 1.0 - demand / limit } else { -1.0 }
}

/// Reserve of what is there over what is required at least: the share of it that is spare, or, where
/// it falls short, the share of the requirement that is missing. 0 at the limit, −1 to 1.
pub(crate) fn spare(required: f64, there: f64) -> f64 {
    if there >= required && there > 0.0 {
        1.0 - required / there
    } else if required > 0.0 {
        (there / required - 1.0).max(-1.0)
    } else {
        0.0
    }
}

/// Go within the limit, no-go beyond; NaN is "cannot tell".
pub(crate) fn within(demand: f64, limit: f64) -> Status {
    if demand.is_nan() || limit.is_nan() {
        Status::CannotTell
    } else if demand <= limit {
        Status::Go
    } else {
        Status::NoGo
    }
}
