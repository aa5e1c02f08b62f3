//! Soil of a part of the site, and the factors that a job asks of the ground.

use geometry::DVec2;
use ground::mats::Mat;
use ground::presumed::Presumed;
use ground::{FactorSet, Profile};
use site::PlanArea;

/// Ground below a part of the site, as somebody states it: its layers, or a soil that a code presumes a value for.
#[derive(Debug, Clone, PartialEq)]
pub struct SoilArea {
    /// Short id.
    pub id: String,
    /// Name for people.
    pub name: String,
    /// Where, in plan, m; `None`: wherever the job works.
    pub area: Option<PlanArea>,
    /// Layers, water and state; no layers where the ground is only described.
    pub profile: Profile,
    /// What a code presumes for ground that is only described: for mats and pads, never for tyres.
    pub presumed: Option<&'static Presumed>,
    /// Who answers for it: a trial pit, a borehole, a test.
    pub by: String,
}

impl SoilArea {
    /// True if the place, off by up to `error` m, may lie on it.
    pub fn reaches(&self, at: DVec2, error: f64) -> bool {
        self.area.as_ref().is_none_or(|a| a.contains(at) || a.distance_to_point(at) <= error)
    }
}

/// A kind of mat that lies ready.
#[derive(Debug, Clone, PartialEq)]
pub struct SiteMat {
    /// Short id.
    pub id: String,
    /// Name for people.
    pub name: String,
    /// Size, thickness, material.
    pub mat: Mat,
}

/// What is asked of the ground beyond what the wheels press, chosen once for the job.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum GroundFactors {
    /// EN 1997-1, design approach 1: both combinations.
    Da1,
    /// EN 1997-1, design approach 2.
    Da2,
    /// EN 1997-1, design approach 3.
    Da3,
    /// One factor on the resistance.
    One(f64),
}

impl Default for GroundFactors {
    /// One factor of 3: the most cautious of the sets (Terzaghi and Peck's factor on bearing capacity; from memory).
    fn default() -> Self {
        Self::One(3.0)
    }
}

impl GroundFactors {
    /// Every set that must hold.
    pub fn sets(self) -> Vec<FactorSet> {
        match self {
            Self::Da1 => FactorSet::DA1.to_vec(),
            Self::Da2 => vec![FactorSet::Da2],
            Self::Da3 => vec![FactorSet::Da3],
            Self::One(factor) => vec![FactorSet::Global(factor)],
        }
    }
}
