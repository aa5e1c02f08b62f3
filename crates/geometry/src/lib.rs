//! Frames, poses, solids and exact distances. Pure. Metres and radians.
//!
//! Site frame: x east, y north, z up. Machine frame (ISO 8855 axes): x forward, y left, z up,
//! origin on the ground plane under the middle of the front axle. Transforms are named
//! `site_from_machine`: `site_from_machine * point_in_machine` is a point in the site frame.
//!
//! - [`Pose`]: a rigid transform
//! - [`Segment`], [`Capsule`], [`OrientedBox`]: solids that stand for conductors, booms, loads
//! - [`distance_point_segment`], [`distance_segment_segment`], [`distance_segment_box`],
//!   [`distance_box_box`], [`distance_solid_solid`]: closed form, exact to round-off

mod distance_point_segment;
mod distance_segment_box;
mod distance_segment_segment;
mod distance_solid_solid;
mod pose;
mod solid;

pub use distance_point_segment::{distance_point_segment, nearest_on_segment};
pub use distance_segment_box::distance_segment_box;
pub use distance_segment_segment::distance_segment_segment;
pub use distance_solid_solid::{distance_box_box, distance_solid_solid};
pub use glam::{DMat3, DVec2, DVec3};
pub use pose::{Pose, heading_from_degrees, heading_to_degrees, wrapped};
pub use solid::{Capsule, OrientedBox, Segment, Solid, distance_segment_solid};
