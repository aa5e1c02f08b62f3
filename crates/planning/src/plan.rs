//! The plan: what all later stages read. Quantities are SI; angles in radians, headings in
//! degrees clockwise from north.

use evidence::{Certainty, Finding, Message, Ranged, Verdict};
use serde::{Deserialize, Serialize};

/// Version of the plan's JSON form.
pub const PLAN_SCHEMA: &str = "counterpoise-plan/1";

/// The plan of a job.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub struct Plan {
    /// Version of this form: "counterpoise-plan/1".
    pub schema: String,
    /// Version of the engine that made it.
    pub engine: String,
    /// Digest over the rest, as hexadecimal: same job, same version, same digest.
    pub digest: String,
    /// Job, site, date.
    pub head: PlanHead,
    /// Worst verdict of the lifts.
    pub verdict: Verdict,
    /// Lifts in the order of the job.
    pub lifts: Vec<LiftPlan>,
    /// Routines of the job: whether each holds where it says, and which lifts fall within it. Empty where nobody asked.
    #[serde(default)]
    pub routines: Vec<crate::RoutinePlan>,
    /// What was read, with its source and certainty.
    pub inputs: Vec<InputLine>,
    /// Warnings about the inputs.
    pub warnings: Vec<Message>,
    /// The usual cautions, to stand on every document and screen with a verdict.
    pub cautions: Vec<Message>,
    /// What ends this plan before its time; stands beside the cautions.
    #[serde(default)]
    pub ends_when: Vec<Message>,
    /// What to do in an emergency.
    pub emergency: Vec<Message>,
}

/// Head of a plan.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub struct PlanHead {
    /// Job name.
    pub job: String,
    /// Site name.
    pub site: String,
    /// Date of the work, as written in the job.
    pub date: String,
    /// Planner.
    pub planner: String,
    /// True for demonstrations with invented data.
    pub invented: bool,
}

/// An input with where it came from.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub struct InputLine {
    /// What it is ("machine MK7", "ground survey/levels.csv").
    pub name: String,
    /// File and key.
    pub place: String,
    /// The value as written.
    pub value: String,
    /// How sure.
    pub certainty: Certainty,
}

/// The plan of one lift.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub struct LiftPlan {
    /// Short id, unique in the job.
    pub id: String,
    /// Name for people.
    pub name: String,
    /// Machine, for people.
    pub machine: String,
    /// Attachment, for people.
    pub attachment: String,
    /// Support state.
    pub support: machine::SupportState,
    /// Landing, for people.
    pub landing: String,
    /// Set down there, or picked up from there.
    pub task: crate::Task,
    /// The load.
    pub load: LoadSummary,
    /// The stand.
    pub stand: StandSummary,
    /// Go, go with conditions, no-go.
    pub verdict: Verdict,
    /// The sentence that governs: index into `findings`.
    pub governing: usize,
    /// Every finding, in the fixed order of the checks.
    pub findings: Vec<Finding>,
    /// What the operator does, in order, in the terms of the cab; empty for a no-go.
    pub steps: Vec<Message>,
    /// Force on each wheel or pad at the end pose, most loaded first; empty where not computed.
    pub wheels: Vec<WheelForce>,
    /// How much more of one thing the lift bears until its verdict turns; empty for a no-go.
    #[serde(default)]
    pub tolerances: Vec<crate::Tolerance>,
    /// Whether the stand was stated or found.
    #[serde(default)]
    pub stand_from: crate::StandFrom,
    /// The lift before it, by its id, whose stand it shares; `null` for a stand of its own.
    #[serde(default)]
    pub shares_stand_with: Option<String>,
    /// How far off the stand may be; `null` for a no-go.
    #[serde(default)]
    pub stand_tolerance: Option<crate::StandTolerance>,
    /// Other stands that work, the best first.
    #[serde(default)]
    pub other_stands: Vec<crate::FoundStand>,
    /// The ground around the landing by what a stand there would give.
    #[serde(default)]
    pub field: Option<crate::FieldScene>,
    /// The way from where the load waits, or from a gate, and back, or why there is none; `null` where nobody states from
    /// where, and for a lift that is refused already.
    #[serde(default)]
    pub way: Option<crate::LiftWay>,
    /// Landing and machine seen from above; `null` for a lift that refers to what the job does not have.
    #[serde(default)]
    pub plan_view: Option<crate::PlanViewScene>,
    /// For a lift that works nowhere: changes that were tried and would do.
    #[serde(default)]
    pub changes: Vec<Message>,
    /// The boom's movement; `null` for a no-go.
    #[serde(default)]
    pub movement: Option<BoomMovement>,
    /// Side elevation, where the machine could be posed.
    pub elevation: Option<ElevationScene>,
    /// Chart picture, where a chart exists.
    pub chart: Option<ChartScene>,
}

/// The load in a plan.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub struct LoadSummary {
    /// Name for people.
    pub name: String,
    /// Mass, kg.
    pub mass_kg: Ranged,
    /// How the mass is known.
    pub certainty: Certainty,
    /// Load centre ahead of the fork face (or hook), m.
    pub centre_ahead_m: Ranged,
    /// Centre left of the middle, m.
    pub centre_left_m: Ranged,
    /// Centre above the underside, m.
    pub centre_up_m: Ranged,
    /// Depth, width, height, m.
    pub size_m: [f64; 3],
}

/// The stand in a plan. A lift without a stand has none of its numbers: `null`, read back as not a number.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub struct StandSummary {
    /// East of the middle of the front axle, m.
    #[serde(deserialize_with = "not_known")]
    #[schemars(with = "Option<f64>")]
    pub east_m: f64,
    /// North, m.
    #[serde(deserialize_with = "not_known")]
    #[schemars(with = "Option<f64>")]
    pub north_m: f64,
    /// Heading, degrees clockwise from north.
    #[serde(deserialize_with = "not_known")]
    #[schemars(with = "Option<f64>")]
    pub heading_deg: f64,
    /// Ground height under front left, front right, rear left, rear right (`null`: not known), m.
    pub wheel_heights_m: [Option<f64>; 4],
    /// Slope along the machine, rise over run, positive nose up.
    pub slope_along: Option<Ranged>,
    /// Slope across, positive falling to the left... left wheel lower.
    pub slope_across: Option<Ranged>,
    /// From the front face of the front tyres straight ahead to the near edge of the landing, m.
    #[serde(deserialize_with = "not_known")]
    #[schemars(with = "Option<f64>")]
    pub face_to_landing_m: f64,
    /// How far the boom's line passes to the left of the landing's middle, m; negative: to the right.
    #[serde(deserialize_with = "not_known")]
    #[schemars(with = "Option<f64>")]
    pub passes_left_m: f64,
    /// Ground file that gave the heights.
    pub ground: Option<String>,
    /// Boom angle with the load clear above the landing, rad; the pictures show the same pose.
    pub boom_angle_rad: Option<f64>,
    /// Extension in that pose, m.
    pub extension_m: Option<f64>,
    /// Reach in that pose by the chart's datum, m.
    pub reach_m: Option<f64>,
    /// Height in that pose by the chart's datum, m.
    pub height_m: Option<f64>,
}

/// The boom's movement from carry to the landing and back, in the order in which it is made.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub struct BoomMovement {
    /// Every position where the motion changes: the first is carry.
    pub steps: Vec<BoomStep>,
    /// Where the least is left on the way.
    pub smallest: Option<SmallestReserve>,
    /// True for the plain movement: raise retracted, extend, set straight down, pull straight out, retract, lower.
    pub plain: bool,
}

/// A position of the boom where its motion changes. Places (s, z) as in [`ElevationScene`], m.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub struct BoomStep {
    /// Angle above the machine's x axis, rad.
    pub angle_rad: f64,
    /// Extension, m.
    pub extension_m: f64,
    /// Fork tilt above the machine's x axis, rad.
    pub tilt_rad: f64,
    /// Fork heel or hook (s, z).
    pub tool: (f64, f64),
    /// Boom line (s, z): foot pin, end, head pin.
    pub boom: Vec<(f64, f64)>,
    /// Outline of the load (s, z); empty where it is not on the boom.
    pub load: Vec<(f64, f64)>,
    /// True where the load is on the boom.
    pub loaded: bool,
    /// True where the tool point runs straight to here; else angle and extension run evenly from the step before.
    pub straight: bool,
    /// What is done to get here, in the terms of the cab.
    pub what: Message,
}

/// Where on the way the least is left.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub struct SmallestReserve {
    /// What is left: as the reserve of that check's findings.
    pub reserve: f64,
    /// The check, by the id of its findings: chart, load-factor, tilt, line, obstacles.
    pub check: String,
    /// Boom angle there, rad.
    pub angle_rad: f64,
    /// Extension there, m.
    pub extension_m: f64,
    /// Fork heel or hook there (s, z), m.
    pub tool: (f64, f64),
}

/// Force on a wheel or pad.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub struct WheelForce {
    /// Which: text id with no arguments.
    pub name: Message,
    /// Force, worst over the checked poses and the load's range, N.
    pub force_n: f64,
    /// Contact pressure under it, Pa; `null` where the patch is not known.
    pub pressure_pa: Option<f64>,
    /// Patch area, m².
    pub area_m2: Option<f64>,
}

/// What the side elevation shows. Plane of the boom: `s` is distance forward along the heading
/// from the middle of the front axle, `z` the site's height; m.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub struct ElevationScene {
    /// Ground profile (s, z); `null` z where not known.
    pub ground: Vec<(f64, Option<f64>)>,
    /// Filled outlines of the machine, posed: frame, cab, wheels as polygons; each with a kind.
    pub machine: Vec<PolygonScene>,
    /// Wheels: centre (s, z) and radius.
    pub wheels: Vec<(f64, f64, f64)>,
    /// Boom sections from base to tip: (s0, z0, s1, z1, depth).
    pub boom: Vec<(f64, f64, f64, f64, f64)>,
    /// Forks or jib as a polyline (s, z).
    pub tool: Vec<(f64, f64)>,
    /// Load outline (s, z).
    pub load: Vec<(f64, f64)>,
    /// Sling from hook to load top, where hung.
    pub sling: Option<(f64, f64, f64, f64)>,
    /// Centre of gravity of the load (s, z).
    pub load_centre: (f64, f64),
    /// Landing surface: (s from, s to, z).
    pub landing: (f64, f64, f64),
    /// Datum of the chart: s of the reach datum and z of the ground there.
    pub datum: (f64, f64),
    /// Point read on the chart (s, z).
    pub chart_point: (f64, f64),
    /// Overhead lines near: see [`LineScene`].
    pub lines: Vec<LineScene>,
}

/// A named polygon.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub struct PolygonScene {
    /// "frame", "cab", "stabilizer".
    pub kind: String,
    /// Corners (s, z), m.
    pub outline: Vec<(f64, f64)>,
}

/// An overhead line in the elevation.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub struct LineScene {
    /// Name.
    pub name: String,
    /// Where the conductor's nearest point lies (s, z), seen along the heading.
    pub at: (f64, f64),
    /// Distance sideways from the boom plane, m (0: crosses the plane of the picture).
    pub aside_m: f64,
    /// Required distance, m; `null` when the voltage is not known.
    pub required_m: Option<f64>,
    /// Nearest distance found over the movement, m.
    pub nearest_m: Option<f64>,
}

/// What the chart picture shows. (reach, height) in the chart's datum, m.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub struct ChartScene {
    /// Zones.
    pub zones: Vec<ChartZoneScene>,
    /// Areas declared not permitted.
    pub not_permitted: Vec<Vec<(f64, f64)>>,
    /// The point read.
    pub at: (f64, f64),
    /// Lower corner of the box it may lie in.
    pub low: (f64, f64),
    /// Upper corner.
    pub high: (f64, f64),
    /// Upper value of the load's mass, kg.
    pub load_kg: f64,
    /// Rated load centre, m.
    pub load_centre_m: f64,
    /// Support state it belongs to.
    pub support: machine::SupportState,
    /// Cap on every zone by the moment of a load centre beyond the rated one, kg.
    pub cap_kg: Option<f64>,
    /// Text for the datum: what reach is measured from and to.
    pub datum: Message,
    /// Index of the zone that governs, where the point is within.
    pub zone: Option<usize>,
}

/// A zone of the chart picture.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub struct ChartZoneScene {
    /// Name.
    pub name: String,
    /// Capacity as the chart prints it, kg.
    pub capacity_kg: f64,
    /// Capacity that counts for this load: the smaller of the zone's and the cap, kg.
    pub counted_kg: f64,
    /// Reserve of the load in this zone: 1 − load / counted capacity.
    pub reserve: f64,
    /// Outline.
    pub outline: Vec<(f64, f64)>,
}

impl LiftPlan {
    /// The finding that governs.
    pub fn governing_finding(&self) -> Option<&Finding> {
        self.findings.get(self.governing)
    }
}

impl Plan {
    /// The worst verdict of the lifts; no-go for a job without lifts.
    pub fn worst(lifts: &[LiftPlan]) -> Verdict {
        lifts.iter().map(|l| l.verdict).max().unwrap_or(Verdict::NoGo)
    }
}

/// A number, or `null` for one that is not known.
fn not_known<'de, D: serde::Deserializer<'de>>(from: D) -> Result<f64, D::Error> {
    Ok(Option::<f64>::deserialize(from)?.unwrap_or(f64::NAN))
}
