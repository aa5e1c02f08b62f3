//! What is known of a landing's strength besides the mass it is rated for.

use evidence::{Ranged, Working};
use ground::bay::{Bay, BayRating, Lying, SETTING_DOWN};
use ground::landing_carries::{LandingCarries, Runs, Structure};
use ground::room::Area;
use quantity::{STANDARD_GRAVITY as G, Si};
use site::LandingRating;

/// What a landing is rated for besides a mass, what it is made of, what and who is on it when the load comes.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct LandingStrength {
    /// Its rating; mass and name stand in [`site::LandingRating`].
    pub rating: BayRating,
    /// What it stands on; `None`: not stated, which counts as a scaffold.
    pub stands: Option<StandsOn>,
    /// People on it while the load comes; `None`: not stated, see [`PEOPLE`].
    pub people: Option<usize>,
    /// Factor while setting down; `None`: the usual one.
    pub setting_down: Option<f64>,
    /// What lies there, besides [`site::Landing::occupied`].
    pub lying: Vec<LyingThere>,
    /// How its edge is closed; `None`: not stated.
    pub edge: Option<EdgeGuard>,
    /// What it is made of.
    pub structure: Structure,
    /// Who answers for the structure's numbers.
    pub structure_by: Option<String>,
    /// Which way joists or span run; `None`: not stated, both are tried.
    pub runs: Option<Runs>,
    /// How strengths followed from what is stated: concrete by its age, timber by its class.
    pub steps: Working,
}

/// People that count on a landing of which nobody says how many are there (ours: one who receives, one who helps).
pub const PEOPLE: usize = 2;

/// What a landing stands on.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum StandsOn {
    /// A scaffold or free deck: sways.
    Scaffold,
    /// The building itself.
    Building,
    /// A truck or trailer.
    Vehicle,
    /// The ground.
    Ground,
}

/// How the edge that the load comes over is closed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum EdgeGuard {
    /// By something that is closed also while the load comes in.
    AlwaysClosed,
    /// By something that is opened for the load and closed again.
    Opened,
    /// By nothing.
    NoGuard,
    /// There is no drop to fall down.
    NoDrop,
}

/// Something that lies on the landing.
#[derive(Debug, Clone, PartialEq)]
pub struct LyingThere {
    /// What.
    pub what: String,
    /// Mass, kg.
    pub mass: Ranged,
    /// Where, from the edge that the load comes over (x inwards, m) and from the landing's right side (y to the left,
    /// m), looking the way the load comes in; `None`: not stated.
    pub place: Option<Area>,
}

/// A landing of which nothing is stated.
pub(crate) static NOTHING_STATED: LandingStrength = LandingStrength {
    rating: BayRating {
        by: String::new(),
        total: None,
        pallet: None,
        even: None,
        part: None,
        point: None,
        push: None,
        allows_setting_down: None,
        class: None,
    },
    stands: None,
    people: None,
    setting_down: None,
    lying: Vec::new(),
    edge: None,
    structure: Structure::NotStated,
    structure_by: None,
    runs: None,
    steps: Working { steps: Vec::new() },
};

impl LandingStrength {
    /// People that count.
    pub fn people_counted(&self) -> usize {
        self.people.unwrap_or(PEOPLE)
    }

    /// The landing when the load comes: rated so, of that area (m²), with a mass that lies there besides what is listed, kg,
    /// and so many people.
    pub fn carries(
        &self,
        rated: Option<&LandingRating>,
        area: f64,
        occupied: f64,
        people: usize,
    ) -> LandingCarries<'_> {
        let mut lying: Vec<Lying> = self.lying.iter().map(|l| Lying { what: l.what.clone(), mass: l.mass }).collect();
        if occupied != 0.0 {
            lying.push(Lying { what: String::new(), mass: Ranged::exact(occupied) });
        }
        let setting_down = self.setting_down.unwrap_or(SETTING_DOWN);
        let rating =
            rated.map(|r| BayRating { by: r.by.clone(), total: r.mass.map(|m| m.si()), ..self.rating.clone() });
        let known = rating.is_some();
        let bay =
            Bay { rating: rating.unwrap_or_default(), area, lying, people, setting_down, can_sway: self.can_sway() };
        let there = bay.there();
        let own = self.lying.iter().filter_map(|l| Some(l.mass.high * G / l.place?.size()));
        let presses = if there > 0.0 { own.fold(there * G / area, f64::max) } else { 0.0 };
        LandingCarries {
            bay: known.then_some(bay),
            structure: &self.structure,
            runs: self.runs,
            to_near_edge: None,
            setting_down,
            there,
            presses,
        }
    }

    /// True if a push of the forks matters.
    pub fn can_sway(&self) -> bool {
        matches!(self.stands, None | Some(StandsOn::Scaffold))
    }
}
