//! Lift checks at a stand, the search for stands, boom movements and ways, the verdict, and the plan of a job. Pure.
//!
//! - [`Job`]: everything a plan is made from
//! - [`check_lift`]: every check of one lift in fixed order; numbers and status only
//! - [`StandSearch`], [`StandField`]: the ground around a landing by what a stand there would give
//! - [`SetBacks`]: what excavations ask of wheels, solved once; read by every check, and drawn
//! - [`plan`], [`plan_as_stated`]: the whole job: findings with working, verdicts, scenes for drawings
//! - [`Plan`]: what all later stages read; nothing downstream recomputes it
//! - [`check_routine`]: whether one plan for a family of alike lifts holds, and which lifts fall within it
//! - [`chart_doubts`]: what the machine's own statics say against a chart
//! - [`distance_check`]: the quick look-up: inside or outside the chart, never "go"
//! - [`order`]: which machine does which lift when, no landing stacked over its limit
//! - [`best_stands`], [`StandTolerance`]: the best of a field, and how far off they may be
//! - [`mod@route`], [`LiftWay`]: the way of a machine over the site, loaded or not
//! - [`text`]: the ids of every sentence said here

mod boom_movement;
mod boom_path;
mod chart_doubts;
mod check;
mod checks;
mod choosing;
mod context;
mod distance_check;
mod job;
mod landing_strength;
mod lift_way;
mod movement;
pub mod order;
mod plan;
mod plan_job;
mod plan_view;
mod posed;
mod remedies;
pub mod route;
mod routine;
mod scene;
mod set_backs;
mod soil_area;
mod stand_field;
mod standing;
mod steps;
pub mod text;
mod told;
mod tolerance;
mod way_around;
mod work;

pub use chart_doubts::{ChartDoubt, chart_doubts};
pub use check::{LiftCheck, check_lift, check_lift_with, check_plain_movement};
pub use choosing::{StandFrom, changes};
pub use distance_check::{DistanceAnswer, DistanceQuestion, MeasuredFrom, MeasuredTo, NoAnswer, distance_check};
pub use job::{
    Acceptance, BulkDensity, CabSeen, Examination, FrontTyres, Job, JobMachine, Kept, Lift, Matter, Policy, Seen,
    Stand, StopKind, Task, WindInput,
};
pub use landing_strength::{EdgeGuard, LandingStrength, LyingThere, PEOPLE, StandsOn};
pub use lift_way::LiftWay;
pub use plan::{
    BoomMovement, BoomStep, ChartScene, ChartZoneScene, ElevationScene, InputLine, LiftPlan, LineScene, LoadSummary,
    PLAN_SCHEMA, Plan, PlanHead, PolygonScene, SmallestReserve, StandSummary, WheelForce,
};
pub use plan_job::{digest, plan, plan_as_stated};
pub use plan_view::PlanViewScene;
pub use routine::{
    RoutineCheck, RoutineHolds, RoutineLandingPlan, RoutineLift, RoutinePlan, RoutineRefused, check_routine,
};
pub use scene::{datum_text, reach_text};
pub use set_backs::{LineOf, SetBackLine, SetBacks, lift_lines, planning_lines};
pub use soil_area::{GroundFactors, SiteMat, SoilArea};
pub use stand_field::{
    FieldCell, FieldGrid, FieldKind, FieldScene, FieldSpec, FieldState, FoundStand, ORDER, Reason, StandField,
    StandSearch, StandTolerance, WeighedField, Worker, best_stands, refused_first,
};
pub use told::Fact;
pub use tolerance::{Borne, STEPS, Tolerance, ToleranceOf};
pub use way_around::{WayThing, WayThingKind};
pub use work::{Choose, Crane, Delivery, Pickup, Routine, RoutineLandings, RoutineLoad};

/// Priority of a lift that states none: the middle of 1 to 9.
pub const USUAL_PRIORITY: u8 = 5;

/// The name of a support state.
pub fn support_name(support: machine::SupportState) -> evidence::TextId {
    match support {
        machine::SupportState::Tyres => text::SUPPORT_TYRES,
        machine::SupportState::Stabilizers => text::SUPPORT_STABILIZERS,
        machine::SupportState::Outriggers => text::SUPPORT_OUTRIGGERS,
    }
}

/// Names of the checks that a look into the chart alone does not make. How a machine stands while its
/// upper part turns is among them where it turns.
pub fn checks_not_in_the_chart(machine: &machine::Machine) -> Vec<evidence::TextId> {
    let mut checks = vec![
        text::CHECK_MACHINE,
        text::CHECK_IDENTITY,
        text::CHECK_STOPS,
        text::CHECK_LOAD,
        text::CHECK_ATTACHMENT,
        text::CHECK_FORKS,
        text::CHECK_RIGGING,
        text::CHECK_LEVEL,
        text::CHECK_LOAD_FACTOR,
        text::CHECK_TILT,
        text::CHECK_TYRES,
        text::CHECK_AXLE,
        text::CHECK_CONTACTS,
        text::CHECK_STEERING,
        text::CHECK_SUDDEN,
        text::CHECK_WIND,
        text::CHECK_LINE,
        text::CHECK_GROUND,
        text::CHECK_SETTLEMENT,
        text::CHECK_RUTTING,
        text::CHECK_APPROACH,
        text::CHECK_LANDING,
        text::CHECK_LANDING_EDGE,
        text::CHECK_LANDING_ROOM,
        text::CHECK_SIGHT,
        text::CHECK_GATE,
        text::CHECK_EDGES,
        text::CHECK_BURIED,
        text::CHECK_OBSTACLES,
        text::CHECK_MOVEMENT,
        text::CHECK_PEOPLE,
        text::CHECK_ROUTE,
        text::CHECK_STAND,
    ];
    checks.extend(machine.slew.map(|_| text::CHECK_SLEWING));
    checks
}

/// Name of a check by the id that findings carry.
pub fn check_name(check: &str) -> Option<evidence::TextId> {
    Some(match check {
        "machine" => text::CHECK_MACHINE,
        "identity" => text::CHECK_IDENTITY,
        "stops" => text::CHECK_STOPS,
        "load" => text::CHECK_LOAD,
        "attachment" => text::CHECK_ATTACHMENT,
        "forks" => text::CHECK_FORKS,
        "rigging" => text::CHECK_RIGGING,
        "level" => text::CHECK_LEVEL,
        "chart" => text::CHECK_CHART,
        "load-factor" => text::CHECK_LOAD_FACTOR,
        "tilt" => text::CHECK_TILT,
        "tyres" => text::CHECK_TYRES,
        "axle" => text::CHECK_AXLE,
        "contacts" => text::CHECK_CONTACTS,
        "steering" => text::CHECK_STEERING,
        "sudden" => text::CHECK_SUDDEN,
        "wind" => text::CHECK_WIND,
        "line" => text::CHECK_LINE,
        "ground" => text::CHECK_GROUND,
        "settlement" => text::CHECK_SETTLEMENT,
        "rutting" => text::CHECK_RUTTING,
        "approach" => text::CHECK_APPROACH,
        "landing" => text::CHECK_LANDING,
        "landing-edge" => text::CHECK_LANDING_EDGE,
        "landing-room" => text::CHECK_LANDING_ROOM,
        "sight" => text::CHECK_SIGHT,
        "gate" => text::CHECK_GATE,
        "edges" => text::CHECK_EDGES,
        "buried" => text::CHECK_BURIED,
        "obstacles" => text::CHECK_OBSTACLES,
        "movement" => text::CHECK_MOVEMENT,
        "people" => text::CHECK_PEOPLE,
        "route" => text::CHECK_ROUTE,
        "slewing" => text::CHECK_SLEWING,
        "stand" => text::CHECK_STAND,
        _ => return None,
    })
}
