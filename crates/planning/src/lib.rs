//! Lift checks at a stated stand, the verdict, and the plan of a job. Pure.
//!
//! - [`Job`]: everything a plan is made from
//! - [`check_lift`]: every check of one lift in fixed order; numbers and status only
//! - [`plan`]: the whole job: findings with working, verdicts, scenes for drawings
//! - [`Plan`]: what all later stages read; nothing downstream recomputes it
//! - [`distance_check`]: the quick look-up: inside or outside the chart, never "go"
//! - [`text`]: the ids of every sentence said here

mod job;
mod plan;
pub mod text;

pub use job::{Acceptance, Job, JobMachine, Lift, Matter, Policy, Stand, WindInput};
pub use plan::{
    ChartScene, ChartZoneScene, ElevationScene, InputLine, LiftPlan, LineScene, Plan, PlanHead, PolygonScene, StandSummary, LoadSummary, WheelForce,
};
