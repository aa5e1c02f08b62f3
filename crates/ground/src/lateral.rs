//! Sideways pressure that loads on the surface put on a wall or a supported side, for its designer.
//!
//! Coordinates: the wall is the plane at distance 0, distances (m) count away from it into the ground that carries
//! the loads, `along` along it; depth `z` m from the loaded surface. Pressures are of the loads alone: earth,
//! water and what compaction left come on top. No function here says that a wall is strong enough.
//!
//! [`LateralMethod::Elastic`] is Boussinesq with Poisson's ratio ½. A wall that does not give doubles it: a mirror
//! load on the other side keeps the plane of the wall where it is (exact for a smooth one). The methods differ
//! close to the wall: below 0.4 of the height Terzaghi's forms no longer grow.

use crate::edge_text as text;
use crate::lateral_forms::{elastic_patch, elastic_strip, terzaghi_line, terzaghi_point};
use evidence::{Source, Step, Trace};
use libm::{atan, sqrt};
use quantity::{Dimension, Quantity};
use std::f64::consts::{PI, TAU};

/// A load on the surface beside a wall.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum WallLoad {
    /// A force at one point.
    Point {
        /// Force, N.
        force: f64,
        /// Distance from the wall, m.
        off: f64,
        /// Place along the wall, m.
        along: f64,
    },
    /// An endless line along the wall.
    Line {
        /// Force per metre, N/m.
        per_metre: f64,
        /// Distance from the wall, m.
        off: f64,
    },
    /// An endless strip along the wall.
    Strip {
        /// Pressure, Pa.
        pressure: f64,
        /// Distances of its edges from the wall, nearer and farther, m.
        off: [f64; 2],
    },
    /// A rectangle with sides along and square to the wall.
    Patch {
        /// Pressure, Pa.
        pressure: f64,
        /// Distances of its edges from the wall, nearer and farther, m.
        off: [f64; 2],
        /// Where it begins and ends along the wall, m.
        along: [f64; 2],
    },
}

/// Whether the wall gives.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum WallMovement {
    /// Gives enough for elastic pressure as in open ground: a flexible, cantilevered support.
    Yielding,
    /// Does not give: basement wall, propped or anchored support. Elastic pressure is doubled.
    Unyielding,
}

/// How the pressure is found.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LateralMethod {
    /// Boussinesq; doubled for a wall that does not give.
    Elastic,
    /// Terzaghi 1954 (from memory): tests on walls that do not give, points and lines only; strips and patches are
    /// taken as their lines and points. Already doubled.
    Terzaghi,
}

/// What the loads put on the wall, at one place along it.
#[derive(Debug, Clone, PartialEq)]
pub struct LateralLoad {
    /// Depth and pressure, m and Pa, from the top, evenly spaced.
    pub profile: Vec<[f64; 2]>,
    /// Resultant over the height, N per metre of wall.
    pub resultant: f64,
    /// Height of the resultant above the base, m; half the height where there is none.
    pub height: f64,
    /// Greatest pressure of the profile, Pa.
    pub greatest: f64,
}

/// Intervals of the printed profile, and of the quadrature (four points each).
const INTERVALS: usize = 40;

/// Pressure of one load on the wall at depth `z` and place `along`, Pa; `height` is that of the wall.
pub fn lateral_pressure(
    load: WallLoad,
    movement: WallMovement,
    method: LateralMethod,
    height: f64,
    along: f64,
    z: f64,
) -> f64 {
    if z <= 0.0 {
        return 0.0;
    }
    if method == LateralMethod::Terzaghi {
        return match load {
            WallLoad::Point { force, off, along: at } => terzaghi_point(force, off, along - at, height, z),
            WallLoad::Line { per_metre, off } => terzaghi_line(per_metre, off, height, z),
            WallLoad::Strip { pressure, off } => pieces(off)
                .map(|[from, to]| terzaghi_line(pressure * (to - from), f64::midpoint(from, to), height, z))
                .sum(),
            WallLoad::Patch { pressure, off, along: [y0, y1] } => pieces(off)
                .flat_map(|x| pieces([y0, y1]).map(move |y| (x, y)))
                .map(|(x, y)| {
                    let force = pressure * (x[1] - x[0]) * (y[1] - y[0]);
                    terzaghi_point(force, f64::midpoint(x[0], x[1]), along - f64::midpoint(y[0], y[1]), height, z)
                })
                .sum(),
        };
    }
    let once = match load {
        WallLoad::Point { force, off, along: at } => {
            let square = off * off + (along - at) * (along - at) + z * z;
            3.0 * force * off * off * z / (TAU * square * square * sqrt(square))
        }
        WallLoad::Line { per_metre, off } => {
            let square = off * off + z * z;
            2.0 * per_metre * off * off * z / (PI * square * square)
        }
        WallLoad::Strip { pressure, off } => elastic_strip(pressure, off, z),
        WallLoad::Patch { pressure, off, along: [y0, y1] } => elastic_patch(pressure, off, [y0 - along, y1 - along], z),
    };
    match movement {
        WallMovement::Yielding => once,
        WallMovement::Unyielding => 2.0 * once,
    }
}

/// Resultant of a line load over the height `h` of a wall that gives, N/m: `P = (q/π)·h² / (x² + h²)`, and its
/// moment about the top, N·m/m: `M = (q/π)·(x·atan(h/x) − h·x²/(x² + h²))`; the elastic pressure, integrated.
pub fn line_resultant(per_metre: f64, off: f64, h: f64) -> [f64; 2] {
    let square = off * off + h * h;
    let lever = if off > 0.0 { off * atan(h / off) } else { 0.0 };
    [per_metre / PI * h * h / square, per_metre / PI * (lever - h * off * off / square)]
}

/// What `loads` put on a wall of `height` at the place `along`, with its steps.
pub fn lateral_load(
    loads: &[WallLoad],
    movement: WallMovement,
    method: LateralMethod,
    height: f64,
    along: f64,
    trace: &mut impl Trace,
) -> LateralLoad {
    let pressure =
        |z: f64| -> f64 { loads.iter().map(|load| lateral_pressure(*load, movement, method, height, along, z)).sum() };
    let step = height / INTERVALS as f64;
    let profile: Vec<[f64; 2]> = (0..=INTERVALS).map(|i| i as f64 * step).map(|z| [z, pressure(z)]).collect();
    let (mut resultant, mut moment) = (0.0, 0.0);
    // Close to the wall all happens near the top: intervals halve towards it.
    let mut lower = height;
    for i in 0..INTERVALS {
        let upper = if i + 1 == INTERVALS { 0.0 } else { lower * 0.75 };
        let (mid, half) = (f64::midpoint(upper, lower), (lower - upper) / 2.0);
        for (at, weight) in GAUSS {
            let z = mid + half * at;
            let p = pressure(z) * weight * half;
            resultant += p;
            moment += p * z;
        }
        lower = upper;
    }
    let height_of_it = if resultant > 0.0 { height - moment / resultant } else { height / 2.0 };
    let greatest = profile.iter().map(|p| p[1]).fold(0.0, f64::max);
    let source = || match method {
        LateralMethod::Elastic => Source::from_memory("Boussinesq 1885, Poisson's ratio 1/2; doubled by mirror load"),
        LateralMethod::Terzaghi => Source::from_memory("Terzaghi 1954, Anchored bulkheads"),
    };
    let values = || {
        vec![("n".into(), Quantity::number(loads.len() as f64)), ("H".into(), Quantity::new(height, Dimension::Length))]
    };
    trace.step(|| Step {
        title: text::STEP_LATERAL_RESULTANT.message(),
        formula: "P = ∫₀ᴴ σ_h dz".into(),
        values: values(),
        result: ("P".into(), Quantity::new(resultant, Dimension::Stiffness)),
        source: source(),
    });
    trace.step(|| Step {
        title: text::STEP_LATERAL_HEIGHT.message(),
        formula: "h_P = H − ∫₀ᴴ σ_h·z dz / P".into(),
        values: values(),
        result: ("h_P".into(), Quantity::new(height_of_it, Dimension::Length)),
        source: Source::Mechanics,
    });
    LateralLoad { profile, resultant, height: height_of_it, greatest }
}

/// Gauss-Legendre with four points: abscissa and weight.
const GAUSS: [(f64, f64); 4] = [
    (-0.861_136_311_594_052_6, 0.347_854_845_137_453_86),
    (-0.339_981_043_584_856_3, 0.652_145_154_862_546_1),
    (0.339_981_043_584_856_3, 0.652_145_154_862_546_1),
    (0.861_136_311_594_052_6, 0.347_854_845_137_453_86),
];

/// A range in eight pieces.
fn pieces([from, to]: [f64; 2]) -> impl Iterator<Item = [f64; 2]> {
    let step = (to - from) / 8.0;
    (0..8).map(move |i| [from + step * f64::from(i), from + step * f64::from(i + 1)])
}
