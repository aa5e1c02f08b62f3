//! Where a machine could stand for a lift: every piece of ground around its landing, with what a stand there would give.
//!
//! The answer of each cell is that of the single check ([`crate::check_plain_movement`]) with the machine's stand in the middle of that cell: the same verdict,
//! and of what refuses the first in a fixed order ([`ORDER`]). What is proven without the whole check is not reckoned
//! further; nothing is filled in between cells. "Exact" means exact for the ground as surveyed: its accuracy and the
//! stand's error are in every cell as they are in the single check. The boom's movement is the plain one; whether another
//! one would do where that is refused is asked of the few places that are checked whole ([`best_stands`]).
//!
//! - [`StandSearch`]: what is asked, with the heading that each cell gets
//! - [`StandField`]: the answers, cell by cell, which may be filled in coarse steps first
//! - [`FieldCell`]: one answer; [`FieldCell::NOT_YET`] where nobody has asked yet
//! - [`StandTolerance`]: how far off a stand may be
//! - [`best_stands`]: the best of a field, checked whole
//! - [`WeighedField`]: a field that is asked again for other weights of its load
//! - [`FieldScene`]: the field as a plan keeps it
//! - [`Reason`]: what refuses a stand, in order

mod aim;
mod best;
mod cell_check;
mod field;
mod reason;
mod scene;
mod search;
mod tolerance;
mod weighed;

pub use best::{FoundStand, best_stands};
pub(crate) use best::{found_at, led};
pub(crate) use cell_check::refuses_nothing;
pub use field::{FieldCell, FieldGrid, StandField};
pub use reason::{ORDER, Reason, refused_first};
pub use scene::{FieldKind, FieldScene, FieldState};
pub use search::{FieldSpec, StandSearch, Worker};
pub use tolerance::StandTolerance;
pub(crate) use tolerance::{by_eye, tolerance};
pub use weighed::WeighedField;
