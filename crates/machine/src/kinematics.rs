//! Where head, forks and load are for a boom position, and back. Closed form, machine frame.
//!
//! The boom moves in the middle plane (x, z) of the machine. Along the boom line from the foot
//! pin lie the section centres; the head pin is `head_along + extension` along it and
//! `head_below` below it, at right angles.

use crate::boom::in_plane;
use crate::{Attachment, Boom, BoomPosition};
use geometry::{DVec2, DVec3};
use quantity::Si;

/// Unit vectors along the boom and at right angles below it, (x, z).
fn axes(angle: f64) -> (DVec2, DVec2) {
    let (s, c) = libm::sincos(angle);
    (DVec2::new(c, s), DVec2::new(s, -c))
}

/// Turns an offset (ahead, above) of the carriage by the fork tilt.
pub(crate) fn tilted(offset: DVec2, tilt: f64) -> DVec2 {
    let (s, c) = libm::sincos(tilt);
    DVec2::new(offset.x * c - offset.y * s, offset.x * s + offset.y * c)
}

/// Head pin, m.
pub fn head(boom: &Boom, at: BoomPosition) -> DVec3 {
    let (u, n) = axes(at.angle);
    in_plane(boom.foot + u * (boom.head_along + at.extension) + n * boom.head_below)
}

/// A point of carriage or attachment given relative to the head pin (ahead, above, forks level), m.
pub fn on_carriage(boom: &Boom, at: BoomPosition, offset: DVec2) -> DVec3 {
    head(boom, at) + in_plane(tilted(offset, at.fork_tilt))
}

/// Fork heel or hook, m.
pub fn tool_point(boom: &Boom, attachment: &Attachment, at: BoomPosition) -> DVec3 {
    on_carriage(boom, at, attachment.tool_point())
}

/// Centre of a boom section, m.
pub fn section_centre(boom: &Boom, at: BoomPosition, index: usize) -> DVec3 {
    let (u, _) = axes(at.angle);
    let section = &boom.sections[index];
    in_plane(boom.foot + u * (section.centre_along + section.share * at.extension))
}

/// Masses (kg) and centres (m) of boom sections, carriage and attachment.
pub fn boom_masses(boom: &Boom, attachment: &Attachment, at: BoomPosition) -> impl Iterator<Item = (f64, DVec3)> {
    (0..boom.sections.len()).map(move |i| (boom.sections[i].mass.si(), section_centre(boom, at, i))).chain([
        (boom.carriage_mass.si(), on_carriage(boom, at, boom.carriage_centre)),
        (attachment.mass.si(), on_carriage(boom, at, attachment.centre)),
    ])
}

/// Why the boom does not get to a point.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum OutOfReach {
    /// Too far or too near: the extension it would take, m.
    Extension(f64),
    /// The angle it would take, rad.
    Angle(f64),
}

/// Boom position that brings the tool point to (x, z) of the middle plane with the given fork tilt.
///
/// The head pin lies at `v` from the foot pin; `|v|² = (head_along + e)² + head_below²` gives the
/// extension, and the angle is that of `v` plus `atan2(head_below, head_along + e)`.
pub fn position_for(
    boom: &Boom,
    attachment: &Attachment,
    target: DVec2,
    fork_tilt: f64,
) -> Result<BoomPosition, OutOfReach> {
    const SLACK: f64 = 1e-9;
    let v = target - tilted(attachment.tool_point(), fork_tilt) - boom.foot;
    let along_squared = v.length_squared() - boom.head_below * boom.head_below;
    if along_squared <= 0.0 {
        return Err(OutOfReach::Extension(-boom.head_along));
    }
    let along = along_squared.sqrt();
    let extension = along - boom.head_along;
    let angle = libm::atan2(v.y, v.x) + libm::atan2(boom.head_below, along);
    if extension < -SLACK || extension > boom.extension_max.si() + SLACK {
        return Err(OutOfReach::Extension(extension));
    }
    if angle < boom.angle_min.si() - SLACK || angle > boom.angle_max.si() + SLACK {
        return Err(OutOfReach::Angle(angle));
    }
    Ok(BoomPosition { angle, extension: extension.clamp(0.0, boom.extension_max.si()), fork_tilt })
}
