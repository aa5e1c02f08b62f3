//! A virtual tilting platform: the slope at which a machine tips on a platform that tilts under it, turned as
//! stability tests turn it and turned the worst way.
//!
//! Lengthwise tests tilt it nose down. Sideways tests turn the machine so that the tilting edge, the line from a front contact to the ground projection of
//! the oscillating axle's centre, or to the rear contact where that axle is locked, lies across the
//! fall (orientations as in ISO 22915-14, read in an excerpt; the required slopes are from memory and of low
//! confidence). With the line's point at the pin's height the worst direction is a little beside that.
//!
//! For a line with `a = u × Σm(r − P)` and descent `d`: `tan θ = −a_z/(−a·d)`, least where `d` points
//! along `−(a_x, a_y)`: `tan θ = −a_z/│a_xy│` (mechanics).

use crate::tipping::arm;
use crate::wind::WindLoad;
use crate::{LEVEL, LineOnSprings, Loading, Masses, Onset, TippingLine, TipsOver, onset, tilt_reserve};
use evidence::Silent;
use geometry::DVec2;

/// How the machine is turned on the platform.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Turned {
    /// Nose downhill.
    NoseDown,
    /// Tail downhill.
    TailDown,
    /// Left tilting edge across the fall, left side downhill.
    LeftEdge,
    /// Right tilting edge across the fall, right side downhill.
    RightEdge,
}

/// Tests for rough-terrain variable-reach trucks, with the slopes they ask for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PlatformTest {
    /// Number of the test in the standard.
    pub number: u32,
    /// Boom and load: true for stacking, boom raised; false for travelling, load or forks low.
    pub stacking: bool,
    /// Lengthwise or sideways.
    pub lengthwise: bool,
    /// True where it is made without load.
    pub unladen: bool,
    /// Slope it asks for, rise over run: least and most that are remembered.
    pub slope: [f64; 2],
}

/// Standard of the tests; what is remembered of its slopes was not checked.
pub const PLATFORM_STANDARD: &str = "ISO 22915-14";

/// The tests. Slopes from memory, low confidence: obtain the standard before use.
pub const PLATFORM_TESTS: [PlatformTest; 4] = [
    PlatformTest { number: 1, stacking: true, lengthwise: true, unladen: false, slope: [0.07, 0.07] },
    PlatformTest { number: 2, stacking: false, lengthwise: true, unladen: false, slope: [0.18, 0.22] },
    PlatformTest { number: 3, stacking: true, lengthwise: false, unladen: false, slope: [0.12, 0.12] },
    PlatformTest { number: 4, stacking: false, lengthwise: false, unladen: true, slope: [0.40, 0.50] },
];

/// Where it tips.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OnPlatform {
    /// Direction of descent as the test turns it, rad: 0 nose downhill, π/2 left side downhill.
    pub azimuth: f64,
    /// Onset there; `None`: not before 90°.
    pub turned: Option<Onset>,
    /// Direction in which it tips soonest, rad.
    pub worst_azimuth: f64,
    /// Onset there: never later than `turned`.
    pub worst: Option<Onset>,
}

/// Direction of descent of an orientation, rad. `None` where a number is none.
pub fn descent(lines: &[TippingLine], turned: Turned) -> Option<f64> {
    let over = match turned {
        Turned::NoseDown => return Some(0.0),
        Turned::TailDown => return Some(std::f64::consts::PI),
        Turned::LeftEdge => TipsOver::Left,
        Turned::RightEdge => TipsOver::Right,
    };
    let line = lines.iter().find(|l| l.over == over)?;
    // The machine lies to the right of a line's direction: downhill is to its left.
    let out = DVec2::new(-line.along.y, line.along.x);
    let azimuth = libm::atan2(out.y, out.x);
    azimuth.is_finite().then_some(azimuth)
}

/// How much sooner it tips over each line than on rigid contacts, rad, in the order of the lines: what the
/// lean takes of the tilt that remains on level ground.
pub fn leans(masses: &Masses, lines: &[LineOnSprings]) -> Vec<f64> {
    let level = Loading { masses: *masses, gravity: LEVEL, wind: WindLoad::NONE };
    lines.iter().map(|l| tilt_reserve(&level, &l.rigid, &mut Silent) - l.tilt(&level)).collect()
}

/// The slope at which it tips, as turned and turned the worst way; `leans` are those of the lines
/// ([`leans`]), or zeros for rigid contacts.
pub fn on_platform(masses: &Masses, lines: &[TippingLine], leans: &[f64], turned: Turned) -> Option<OnPlatform> {
    let azimuth = descent(lines, turned)?;
    let (worst_azimuth, worst) = worst_orientation(masses, lines, leans)?;
    let there = |(line, lean): (&TippingLine, &f64)| {
        let o = onset(masses, core::slice::from_ref(line), azimuth)?;
        Some(Onset { tilt: (o.tilt - lean).max(0.0), ..o })
    };
    let turned = lines.iter().zip(leans).filter_map(there).min_by(|a, b| a.tilt.total_cmp(&b.tilt));
    Some(OnPlatform { azimuth, turned, worst_azimuth, worst })
}

/// Direction of descent in which it tips soonest, and the onset there; `None` in the second place: not before 90°.
pub fn worst_orientation(masses: &Masses, lines: &[TippingLine], leans: &[f64]) -> Option<(f64, Option<Onset>)> {
    let mut worst: Option<(f64, Onset)> = None;
    for (line, lean) in lines.iter().zip(leans) {
        let (_, a) = arm(masses, line);
        if !a.is_finite() || !lean.is_finite() {
            return None;
        }
        let azimuth = libm::atan2(-a.y, -a.x);
        let tilt = (libm::atan2(-a.z, a.truncate().length()) - lean).max(0.0);
        if worst.is_none_or(|(_, o)| tilt < o.tilt) {
            worst = Some((azimuth, Onset { tilt, over: line.over }));
        }
    }
    let (azimuth, found) = worst?;
    Some((azimuth, (found.tilt < std::f64::consts::FRAC_PI_2).then_some(found)))
}
