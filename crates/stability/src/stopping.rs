//! Stopping and coasting on a grade, and the load on the forks while it brakes.

use geometry::DVec3;
use quantity::STANDARD_GRAVITY as G;

/// Retardation that wet ground still gives, over gravity: 11.2 ft/s² (AASHTO, stopping sight distance;
/// second hand). Where less is worse.
pub const SURE_BRAKING: f64 = 11.2 / 32.2;
/// Time until the brake takes hold, s (AASHTO, stopping sight distance; second hand).
pub const REACTION: f64 = 2.5;

/// Friction of sawn wood on smooth steel sheet, clean, dry or wet (EN 12195-1:2010, annex B; from memory).
pub const WOOD_ON_STEEL: f64 = 0.3;
/// Friction of a steel crate on smooth steel sheet (EN 12195-1:2010, annex B; from memory).
pub const STEEL_ON_STEEL: f64 = 0.2;

/// Distance (m) to a stop from `speed` (m/s): `d = v t + v² / (2 g (f + G))`, with `friction` the braking
/// force over the weight (`f`) and `grade` the rise over run ahead in the direction of travel, downhill
/// negative.
///
/// Infinite where the grade pulls as much as the brakes hold. Not a number for a speed, time or friction
/// below zero.
pub fn stopping_distance(speed: f64, reaction: f64, friction: f64, grade: f64) -> f64 {
    let valid = speed >= 0.0 && reaction >= 0.0 && friction >= 0.0 && grade.is_finite();
    if !valid {
        return f64::NAN;
    }
    if speed == 0.0 {
        return 0.0;
    }
    let held = friction + grade;
    if held > 0.0 { speed * reaction + speed * speed / (2.0 * G * held) } else { f64::INFINITY }
}

/// Distance (m) in which a machine coasts to rest up a grade, with `resistance` over weight.
pub fn coasting_distance(speed: f64, resistance: f64, grade: f64) -> f64 {
    stopping_distance(speed, 0.0, resistance, grade)
}

/// Friction that a load on forks tilted up by `fork_tilt` (rad) needs so as not to slide off them ahead or
/// sideways, under the apparent gravity `gravity` (any size, machine frame). The backrest holds it
/// backward. Infinite where nothing presses it on the forks.
pub fn friction_for_load(gravity: DVec3, fork_tilt: f64) -> f64 {
    let (sin, cos) = libm::sincos(fork_tilt);
    let along = gravity.dot(DVec3::new(cos, 0.0, sin));
    let pressed = -gravity.dot(DVec3::new(-sin, 0.0, cos));
    let ahead = if along < 0.0 { 0.0 } else { along };
    let pull = libm::hypot(ahead, gravity.y);
    if pressed <= 0.0 { f64::INFINITY } else { pull / pressed }
}
