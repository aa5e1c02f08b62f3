//! Routines: one plan for a family of alike lifts, proven at the family's corners.
//!
//! - [`check_routine`]: whether it holds, cell by cell of its area, for each of its landings
//! - [`RoutineCheck::fits`]: whether a lift falls within it, with every reason why not
//! - [`RoutinePlan`]: what a plan keeps of it
//!
//! What is asked of every cell is the single check ([`crate::StandSearch::ask`]) with the routine's machine, its stop gust and
//! every gate of the job, the boom pointed at the landing and turned off it by 1° to either side; and that the ground is no
//! steeper than the routine allows.
//!
//! **Proven and sampled.** Over the front, a load that is lighter, or whose centre is nearer or lower, is never worse: moments
//! over the front line, the chart's reading and the landing's burden grow with each. To the sides and to the rear a lighter
//! load can be worse, as it holds the machine less, and the wind pushes as hard on it: there three loads of the family's
//! largest size are asked (none, the lightest that is stated, the heaviest), and what lies between them is not proven.
//! Places between the middles of cells are not proven either: a lift falls within a routine only where every cell around its
//! stand holds. What goes with a lift's own load and landing alone (packing, slings, feet, edge) is asked of that lift
//! itself.

mod area;
mod corners;
mod fits;
mod result;

pub use area::{RoutineCheck, check_routine};
pub use result::{RoutineHolds, RoutineLandingPlan, RoutineLift, RoutinePlan, RoutineRefused};
