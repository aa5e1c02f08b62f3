//! What `calc landing` reads: the load on its feet, and a landing by the keys of a job's `[[landing]]`.

use super::text as words;
use ground::landing_carries::{LandingCarries, StandingLoad, Structure};
use ground::pallet_feet::Feet;
use jobfile::{Bound, FEET_EXAMPLE, Reader, feet, landing_rating, landing_strength};
use planning::LandingStrength;
use quantity::Dimension as D;
use site::LandingRating;

/// The whole input.
pub(super) struct Asked {
    pub(super) mass: f64,
    pub(super) feet: Feet,
    pub(super) rated: Option<LandingRating>,
    /// m²; 0 without a rating.
    pub(super) area: f64,
    pub(super) strength: LandingStrength,
}

/// Reads everything; `None` with every fault noted.
pub(super) fn read(root: &Reader<'_>) -> Option<Asked> {
    // Nothing of the input is anybody's guess: it is what is asked.
    root.measured();
    let mass = root.decision("load", D::Mass, Bound::UpTo(50e3));
    let feet = root.table("pallet", "[pallet]").and_then(|t| {
        let sides = ["along", "across"].map(|key| t.decision(key, D::Length, Bound::Within(0.2, 12.0)));
        let table = t.table("feet", FEET_EXAMPLE);
        t.done();
        feet(&table?, [sides[0]?, sides[1]?])
    });
    let stated = root.table_or_none("rating").map(|t| landing_rating(&t));
    let needs_area = ["rating", "deck", "slab", "area"].into_iter().any(|key| root.has(key));
    let area = if needs_area { root.decision("area", D::Area, Bound::Within(0.1, 1e5)).map(Some) } else { Some(None) };
    let strength = landing_strength(root);
    root.done();
    let stated = match stated {
        Some(read) => Some(read?),
        None => None,
    };
    let mut strength = strength?;
    if stated.is_none() && strength.structure == Structure::NotStated {
        root.fault("rating", words::LANDING_NOTHING.message(), None);
        return None;
    }
    let feet = feet?;
    let area = area?.unwrap_or(0.0);
    if strength.lying.iter().filter_map(|l| l.place).any(|place| place.size() > area) {
        root.fault("lying", words::LANDING_LYING_LARGER.message(), None);
        return None;
    }
    strength.rating = stated.as_ref().map(|read| read.further.clone()).unwrap_or_default();
    Some(Asked { mass: mass?, feet, rated: stated.map(|read| read.rated), area, strength })
}

impl Asked {
    /// The landing as it is when the load comes.
    pub(super) fn landing(&self) -> LandingCarries<'_> {
        self.strength.carries(self.rated.as_ref(), self.area, 0.0, self.strength.people_counted())
    }

    /// Its load with another mass, kg.
    pub(super) fn load(&self, mass: f64) -> StandingLoad<'_> {
        StandingLoad { mass, size: self.feet.size(), feet: Some(&self.feet) }
    }
}
