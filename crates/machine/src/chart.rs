//! Load charts: capacity zones in (reach, height).

use geometry::DVec2;
use quantity::{Angle, Length, Mass};
use serde::{Deserialize, Serialize};

/// A load chart: for one attachment, support state and rated load centre.
#[derive(Debug, Clone)]
pub struct Chart {
    /// Id of the attachment it belongs to.
    pub attachment: String,
    /// Support state it belongs to.
    pub support: crate::SupportState,
    /// Rated load centre from the fork face (0 for a hook).
    pub load_centre: Length,
    /// Height of the test load's centre above the forks, where the maker states it.
    pub load_centre_height: Option<Length>,
    /// What reach and height are measured between. No default.
    pub datum: Datum,
    /// How far out of level the chart still holds.
    pub level: LevelTolerance,
    /// Zones with their capacities.
    pub zones: Vec<Zone>,
    /// Areas declared "not permitted": they are not gaps.
    pub not_permitted: Vec<Vec<DVec2>>,
    /// Where it comes from, in words of the file ("plate in the cab").
    pub certainty: evidence::Certainty,
    index: ChartIndex,
}

/// What a chart's reach and height are measured between.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Datum {
    /// Where reach starts.
    pub reach_from: ReachFrom,
    /// What point of the load reach is measured to.
    pub reach_to: ReachTo,
    /// What height is measured to (from the ground).
    pub height_to: HeightTo,
}

/// Where reach is measured from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum ReachFrom {
    /// Front face of the front tyres, free radius.
    FrontTyreFace,
    /// Middle of the front axle.
    FrontAxle,
}

/// What point of the load reach is measured to.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum ReachTo {
    /// The fork heel.
    ForkHeel,
    /// The point at the rated load centre.
    LoadCentre,
    /// The hook.
    Hook,
}

/// What height is measured to.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum HeightTo {
    /// Top face of the forks.
    ForkTop,
    /// The hook.
    Hook,
}

/// How far out of level a chart still holds.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LevelTolerance {
    /// Sideways.
    pub sideways: Angle,
    /// Fore and aft.
    pub fore_aft: Angle,
}

/// A zone of a chart.
#[derive(Debug, Clone, PartialEq)]
pub struct Zone {
    /// Name for people ("A", "3 t").
    pub name: String,
    /// Capacity anywhere in it.
    pub capacity: Mass,
    /// Corners in order, (reach, height), m. Closed by itself.
    pub outline: Vec<DVec2>,
}

/// A point to be read, with the box it may lie in.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ChartPoint {
    /// Nominal (reach, height), m.
    pub at: DVec2,
    /// Lower corner of the box.
    pub low: DVec2,
    /// Upper corner of the box.
    pub high: DVec2,
}

/// What a chart says of a box.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Reading {
    /// The whole box is covered; the lowest capacity in it and the zone that has it.
    Within {
        /// Lowest capacity, kg.
        capacity_kg: f64,
        /// Index of the zone that governs.
        zone: usize,
    },
    /// Some of the box lies in no zone: not permitted.
    Outside,
}
#[derive(Debug, Clone, Default)]
struct ChartIndex {
    boxes: Vec<(DVec2, DVec2)>,
    border: Vec<(DVec2, DVec2)>,
}
