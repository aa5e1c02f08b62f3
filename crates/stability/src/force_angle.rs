//! The force–angle stability measure over the tipping lines: a second opinion beside the tilt that remains.
//!
//! Papadopoulos and Rey, A new measure of tipover stability margin for mobile manipulators, ICRA
//! 1996, and Vehicle System Dynamics 33(1), 2000 (formulas from memory). The net force at the centre of gravity,
//! less its part along the line, with the couple of its moment, makes an angle `θ` with the shortest
//! way from the centre to the line; `θ` times that force times its distance from the line is the measure.
//! It is zero exactly where the moment about the line is.

use crate::{Loading, TippingLine};
use geometry::DVec3;
use quantity::STANDARD_GRAVITY as G;

/// The measure over one line.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ForceAngle {
    /// Angle between the net force and the way to the line, rad; below zero it goes over.
    pub angle: f64,
    /// `θ · |d| · |f|`, N·m: angle, distance of the force's line from the tipping line, force.
    pub measure: f64,
}

/// The measure for weight and the wind of the line's worst direction.
pub fn force_angle(loading: &Loading, line: &TippingLine) -> ForceAngle {
    let (mass, moment) = loading.masses.counted(line.with_rear_axle);
    let centre = moment / mass;
    let u = line.along;
    let across = |v: DVec3| v - u * v.dot(u);
    // Wind at the worst direction: its force, and its moment about the centre.
    let towards = loading.wind.worst_direction(line).towards;
    let (sin, cos) = libm::sincos(towards);
    let n = DVec3::new(cos, sin, 0.0);
    let (w, s) = loading.wind.in_direction(cos, sin);
    let net = loading.gravity * (mass * G) + n * w;
    // And what the rear wheels hold, through the pin.
    let held = line.held * (loading.masses.total() * G * loading.gravity.x + w * n.x);
    let couple = (s - centre * w).cross(n) + u * held;
    let way = across(line.point - centre);
    let length = way.length();
    let unit = way / length;
    // The couple about the line as a pair with the force at the centre.
    let force = across(net) + unit.cross(u * couple.dot(u)) / length;
    let direction = force.normalize();
    // Positive where the force passes inside the line.
    let angle = libm::atan2(direction.cross(unit).dot(u), unit.dot(direction));
    let d = (direction * way.dot(direction) - way).length();
    ForceAngle { angle, measure: angle * d * force.length() }
}
