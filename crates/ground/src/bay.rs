//! A loading bay's own rating, with what already lies there.

use crate::carried::{Carried, Part};
use crate::duty_class::DutyClass;
use crate::forklift::HORIZONTAL;
use crate::landing_carries::StandingLoad;
use crate::landing_range::Ranges;
use crate::pallet_feet::Feet;
use crate::text;
use evidence::{Faults, Ranged, Source, Step, Trace};
use quantity::{Dimension, Quantity, STANDARD_GRAVITY};

/// Factor on the load while it is set down, where nobody states another: that of EN 1991-1-1:2002, 6.3.2.3, for a
/// truck on pneumatic tyres, from memory. Taking it for setting down is ours: a load let go at once would give 2,
/// one laid down without any jerk 1.
pub const SETTING_DOWN: f64 = 1.4;
/// A person with tools, kg: 250 lb, 29 CFR 1926 Subpart L, Appendix A, 1(c), from memory.
pub const PERSON: f64 = 113.398;
/// Push of the forks as a share of the load's weight: the share of EN 1991-1-1:2002, 6.3.2.3(5), from memory; taking it
/// for blades pulled out under a load is ours.
pub const PUSH: f64 = HORIZONTAL;

/// What its designer states of a bay. What is not stated is not known, except that one statement of total, pallet
/// or even load is enough to judge by.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct BayRating {
    /// Who states it.
    pub by: String,
    /// All that may lie on it, kg.
    pub total: Option<f64>,
    /// One pallet, kg.
    pub pallet: Option<f64>,
    /// Even load, Pa.
    pub even: Option<f64>,
    /// Even load on a part of it: Pa, and the area of that part, m².
    pub part: Option<(f64, f64)>,
    /// Load on a square: N, and the side of the square, m.
    pub point: Option<(f64, f64)>,
    /// Horizontal, N.
    pub push: Option<f64>,
    /// Whether the designer has allowed for setting down in total and pallet; `None`: not known, so it is added.
    pub allows_setting_down: Option<bool>,
    /// Duty class of the platform: says nothing of a pallet.
    pub class: Option<u8>,
}

/// Something that already lies there.
#[derive(Debug, Clone, PartialEq)]
pub struct Lying {
    /// What.
    pub what: String,
    /// Mass, kg.
    pub mass: Ranged,
}

/// A bay as it is when the load comes.
#[derive(Debug, Clone, PartialEq)]
pub struct Bay {
    /// Its rating.
    pub rating: BayRating,
    /// Area, m².
    pub area: f64,
    /// What already lies there.
    pub lying: Vec<Lying>,
    /// People on it while the load comes.
    pub people: usize,
    /// Factor while setting down, 1 to 3: [`SETTING_DOWN`] if nobody knows better.
    pub setting_down: f64,
    /// Whether a push matters: a scaffold and a free deck, not a slab of the building.
    pub can_sway: bool,
}

impl Bay {
    /// Mass of what already lies there and of the people, kg, at the most.
    pub fn there(&self) -> f64 {
        self.lying.iter().map(|l| l.mass.high).sum::<f64>() + self.people as f64 * PERSON
    }

    /// Every rating against a load. Without a rating of total, pallet or
    /// even load the total is not known.
    ///
    /// # Errors
    /// Every number out of its range, a rating without a name.
    pub fn under(&self, load: &StandingLoad<'_>, trace: &mut impl Trace) -> Result<Vec<Carried>, Faults> {
        let mass = load.mass;
        self.check(mass)?;
        let r = &self.rating;
        let g = STANDARD_GRAVITY;
        let felt = if r.allows_setting_down == Some(true) { 1.0 } else { self.setting_down };
        let total = self.there() + felt * mass;
        let weight = mass * g * self.setting_down;
        let footprint = load.size[0] * load.size[1];
        let q = Quantity::new;
        trace.step(|| Step {
            title: text::STEP_BAY_TOTAL.message(),
            formula: "m = m_there + φ · m_load".into(),
            values: vec![
                ("m_there".into(), q(self.there(), Dimension::Mass)),
                ("φ".into(), q(felt, Dimension::Number)),
                ("m_load".into(), q(mass, Dimension::Mass)),
            ],
            result: ("m".into(), q(total, Dimension::Mass)),
            source: if r.allows_setting_down == Some(true) {
                Source::Person { name: r.by.clone(), statement: String::new() }
            } else {
                Source::from_memory("EN 1991-1-1:2002, 6.3.2.3")
            },
        });
        let mut all = Vec::new();
        let mut push = |part, demand, limit: Option<f64>, dimension| {
            all.push(Carried { part, demand: q(demand, dimension), limit: limit.map(|l| q(l, dimension)) });
        };
        if r.total.is_some() || r.pallet.is_none() && r.even.is_none() {
            push(Part::RatedTotal, total, r.total, Dimension::Mass);
        }
        if r.pallet.is_some() {
            push(Part::RatedPallet, felt * mass, r.pallet, Dimension::Mass);
            // How many pallets, and what else: a rating a pallet does not say.
            if r.total.is_none() && r.even.is_none() && self.there() > 0.0 {
                push(Part::RatedTotal, total, None, Dimension::Mass);
            }
        }
        if let Some(even) = r.even {
            push(
                Part::RatedEvenTotal,
                (self.there() + self.setting_down * mass) * g,
                Some(even * self.area),
                Dimension::Force,
            );
            // A rating for a part of the bay speaks for a pallet that fits into that part.
            let under = r.part.filter(|p| footprint <= p.1).map_or(even, |p| p.0.max(even));
            if r.pallet.is_none() {
                push(Part::RatedEven, weight / footprint, Some(under), Dimension::Pressure);
            }
        }
        if let Some((force, side)) = r.point {
            match load.feet.map(Feet::heaviest) {
                // A foot smaller than the square it is rated for is not spoken for.
                Some((a, b, share)) => {
                    push(Part::RatedPoint, share * weight, (a.min(b) >= side).then_some(force), Dimension::Force);
                }
                None => push(Part::Feet, weight, None, Dimension::Force),
            }
        }
        if self.can_sway || r.push.is_some() {
            push(Part::RatedPush, PUSH * mass * g, r.push, Dimension::Force);
        }
        Ok(all)
    }

    fn check(&self, mass: f64) -> Result<(), Faults> {
        let mut ranges = Ranges::default();
        let r = &self.rating;
        ranges.within("mass", mass, Dimension::Mass, 0.0, 50e3);
        ranges.within("area", self.area, Dimension::Area, 1e-4, 1e6);
        ranges.within("people", self.people as f64, Dimension::Number, 0.0, 100.0);
        ranges.within("setting_down", self.setting_down, Dimension::Number, 1.0, 3.0);
        for (i, l) in self.lying.iter().enumerate() {
            ranges.within(&format!("lying[{i}].mass"), l.mass.high, Dimension::Mass, 0.0, 1e7);
        }
        let mut stated = false;
        let mut one = |key: &str, value: Option<f64>, dimension, low, high| {
            if let Some(value) = value {
                stated = true;
                ranges.within(&format!("rating.{key}"), value, dimension, low, high);
            }
        };
        one("total", r.total, Dimension::Mass, 10.0, 1e6);
        one("pallet", r.pallet, Dimension::Mass, 10.0, 50e3);
        one("even", r.even, Dimension::Pressure, 100.0, 100e3);
        one("part.load", r.part.map(|p| p.0), Dimension::Pressure, 100.0, 200e3);
        one("part.area", r.part.map(|p| p.1), Dimension::Area, 0.01, 1e4);
        one("point.force", r.point.map(|p| p.0), Dimension::Force, 100.0, 1e6);
        one("point.side", r.point.map(|p| p.1), Dimension::Length, 0.01, 2.0);
        one("push", r.push, Dimension::Force, 0.0, 1e6);
        if stated && r.by.trim().is_empty() {
            ranges.wrong("landing::name", "rating.by", text::LANDING_RATING_NEEDS_NAME.message());
        }
        if let Some(number) = r.class
            && DutyClass::of(number).is_none()
        {
            ranges.within("rating.class", f64::from(number), Dimension::Number, 1.0, 6.0);
        }
        ranges.done(())
    }
}

/// A slab that stands on props: only the engineer who designed them can say what it carries.
#[derive(Debug, Clone, PartialEq)]
pub struct Propped {
    /// Who designed the props.
    pub by: String,
    /// What this engineer allows on the slab in all, N; `None`: not stated.
    pub allows: Option<f64>,
}

impl Propped {
    /// All that comes to lie on it (N) against what its engineer allows.
    ///
    /// # Errors
    /// No name, or an allowance out of range.
    pub fn under(&self, all: f64) -> Result<Carried, Faults> {
        let mut ranges = Ranges::default();
        if self.by.trim().is_empty() {
            ranges.wrong("landing::name", "props.by", text::LANDING_PROPS_NEED_NAME.message());
        }
        ranges.within("props.load", all, Dimension::Force, 0.0, 1e7);
        if let Some(allows) = self.allows {
            ranges.within("props.allows", allows, Dimension::Force, 100.0, 1e7);
        }
        let force = |v| Quantity::new(v, Dimension::Force);
        ranges.done(Carried { part: Part::Propped, demand: force(all), limit: self.allows.map(force) })
    }
}
