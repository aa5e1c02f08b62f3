//! `feet = { … }`: what a load stands on.

use crate::landing_strength::noted;
use crate::quantity_value::Bound::Within;
use crate::table::Reader;
use ground::pallet_feet::{Feet, Sharing};
use quantity::Dimension as D;

const SHARING: [(&str, Sharing); 2] = [("even", Sharing::Even), ("by-width", Sharing::ByWidth)];

/// An example of the key.
pub const FEET_EXAMPLE: &str = "feet = { along = 1, foot_along = \"1.20 m\", across = 3, foot_across = \"0.10 m\", \
                                sharing = \"by-width\" }";

/// Feet of a load of that size along and across the forks, m; nothing where a fault was noted.
pub fn feet(t: &Reader<'_>, size: [f64; 2]) -> Option<Feet> {
    let row = |name: &str, length: f64| {
        let count = t.count_within(name, FEET_EXAMPLE, (1, 20));
        let wide = t.si(&format!("foot_{name}"), D::Length, Within(0.02, length.max(0.02)));
        Some((length, usize::try_from(count?).ok()?, wide?))
    };
    let (along, across) = (row("along", size[0]), row("across", size[1]));
    let sharing = t.choice("sharing", &SHARING);
    t.done();
    noted(t, Feet::new(along?, across?, sharing?))
}
