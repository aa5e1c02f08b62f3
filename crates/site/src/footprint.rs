//! The ground under a rectangle: heights, slopes and roughness, with how far each may be off.

use crate::plane_fit::Leverage;
use crate::{Ground, fit_plane};
use evidence::Ranged;
use geometry::{DVec2, DVec3};

/// Longest step between two places that are read, m. Ours: less than a wheel's width.
const STEP: f64 = 0.25;

/// Most places along one side; the steps grow beyond it.
const MOST: usize = 41;

/// A rectangle in plan, in the site frame.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Footprint {
    /// Its middle, m.
    pub at: DVec2,
    /// Direction of its length, inside angle (rad counter-clockwise from east).
    pub heading: f64,
    /// Along the heading, m.
    pub length: f64,
    /// Across it, m.
    pub width: f64,
}

/// What the ground under a footprint is like. Every range holds whatever the errors of the heights are, each within
/// its surface's accuracy; what lies between the places that were read is not in it.
#[derive(Debug, Clone, PartialEq)]
pub struct FootprintGround {
    /// Places read, edges included.
    pub places: usize,
    /// Greatest distance between neighbours among them, m.
    pub step: f64,
    /// Places where no ground is known, m.
    pub holes: Vec<DVec2>,
    /// Names of the surfaces that answered, in order of priority.
    pub surfaces: Vec<String>,
    /// Lowest and highest place, m; `None` where no ground is known at all.
    pub heights: Option<[Ranged; 2]>,
    /// What the places where ground is known make together; `None` where they make no plane.
    pub plane: Option<FootprintPlane>,
}

/// The plane nearest to the ground that is known under a footprint, and how far that ground is from it.
#[derive(Debug, Clone, PartialEq)]
pub struct FootprintPlane {
    /// Rise over run along the heading; positive: uphill ahead.
    pub along: Ranged,
    /// Rise over run across it; positive: uphill to the left.
    pub across: Ranged,
    /// Steepest rise over run.
    pub slope: Ranged,
    /// Direction in which it falls, degrees clockwise from north; `None` if it is level.
    pub downhill_azimuth: Option<f64>,
    /// Root mean square of the vertical distances to it, m.
    pub roughness: Ranged,
    /// Highest above it, m.
    pub above: Ranged,
    /// Deepest below it, m.
    pub below: Ranged,
}

/// Reads the ground under a footprint in a raster along its sides, no wider than 0.25 m up to 10 m of length.
/// `None` for a rectangle without length or width, or with a number that is none.
///
/// The plane is the least-squares one of [`fit_plane`]. A slope is linear in the heights, `s = Σ wᵢ·zᵢ`, so it is
/// off by at most `Σ |wᵢ|·aᵢ` with the accuracies `a`; a distance to the plane likewise (interval arithmetic).
///
/// ```
/// # use geometry::DVec2;
/// # use site::{Footprint, Grid, Ground, GroundSource, Terrain, footprint_ground};
/// let heights = (0..49).map(|i| 100.0 + 0.05 * (i % 7) as f32).collect();
/// let grid = Grid { north_west: DVec2::new(0.0, 6.0), cell: DVec2::ONE, rows: 7, cols: 7, heights };
/// let source = GroundSource { name: "yard".into(), terrain: Terrain::Grid(grid), accuracy: 0.02, date: None };
/// let ground = Ground { surfaces: vec![source] };
/// let under = Footprint { at: DVec2::splat(3.0), heading: 0.0, length: 4.0, width: 2.0 };
/// let found = footprint_ground(&ground, &under).unwrap();
/// let plane = found.plane.unwrap();
/// assert!(found.holes.is_empty() && (plane.along.nominal - 0.05).abs() < 1e-6); // 5 % uphill to the east
/// assert!(plane.along.low < 0.05 - 0.01 && plane.across.nominal.abs() < 1e-6);
/// ```
pub fn footprint_ground(ground: &Ground, under: &Footprint) -> Option<FootprintGround> {
    let size = DVec2::new(under.length, under.width);
    if !(size.is_finite() && size.min_element() > 0.0 && under.at.is_finite() && under.heading.is_finite()) {
        return None;
    }
    let ahead = DVec2::new(libm::cos(under.heading), libm::sin(under.heading));
    let left = ahead.perp();
    let pieces = |side: f64| ((side / STEP).ceil() as usize).clamp(1, MOST - 1);
    let (n, m) = (pieces(size.x), pieces(size.y));
    let (mut points, mut errors, mut holes) = (Vec::new(), Vec::new(), Vec::new());
    let mut answered = vec![false; ground.surfaces.len()];
    for i in 0..=n {
        for k in 0..=m {
            let share = DVec2::new(i as f64 / n as f64, k as f64 / m as f64) - 0.5;
            let at = under.at + ahead * (share.x * size.x) + left * (share.y * size.y);
            match ground.height(at) {
                Some((z, source)) => {
                    points.push(at.extend(z));
                    errors.push(source.accuracy);
                    for (seen, surface) in answered.iter_mut().zip(&ground.surfaces) {
                        *seen |= std::ptr::eq(surface, source);
                    }
                }
                None => holes.push(at),
            }
        }
    }
    let seen = ground.surfaces.iter().zip(&answered).filter(|(_, seen)| **seen);
    Some(FootprintGround {
        places: (n + 1) * (m + 1),
        step: (size.x / n as f64).max(size.y / m as f64),
        holes,
        surfaces: seen.map(|(surface, _)| surface.name.clone()).collect(),
        heights: heights(&points, &errors),
        plane: plane(&points, &errors, ahead, left),
    })
}

/// The lowest and the highest place; another one may be it, within the errors.
fn heights(points: &[DVec3], errors: &[f64]) -> Option<[Ranged; 2]> {
    let all = |of: fn(f64, f64) -> f64, pick: fn(f64, f64) -> f64| {
        points.iter().zip(errors).map(|(p, a)| of(p.z, *a)).reduce(pick)
    };
    let end = |pick: fn(f64, f64) -> f64| {
        Some(Ranged { low: all(|z, a| z - a, pick)?, nominal: all(|z, _| z, pick)?, high: all(|z, a| z + a, pick)? })
    };
    Some([end(f64::min)?, end(f64::max)?])
}

fn plane(points: &[DVec3], errors: &[f64], ahead: DVec2, left: DVec2) -> Option<FootprintPlane> {
    let plane = fit_plane(points)?;
    let leverage = Leverage::of(points)?;
    let off = |direction: DVec2| leverage.rise_error(errors, direction);
    let towards = |direction: DVec2| Ranged::plus_minus(plane.rise.dot(direction), off(direction));
    let steepest = plane.slope();
    let slope_off = libm::hypot(off(ahead), off(left));
    let slope = Ranged { low: (steepest - slope_off).max(0.0), nominal: steepest, high: steepest + slope_off };
    let parts = points.iter().enumerate().map(|(i, p)| (p.z - plane.height(p.truncate()), leverage.off(errors, i)));
    let residuals: Vec<(f64, f64)> = parts.collect();
    let most = |of: &dyn Fn(&(f64, f64)) -> f64| residuals.iter().map(of).fold(0.0, f64::max);
    // What is left of errors beside the plane is no larger than they are: it is their part across it.
    let error = (errors.iter().map(|a| a * a).sum::<f64>() / errors.len() as f64).sqrt();
    let rough = plane.rms;
    Some(FootprintPlane {
        along: towards(ahead),
        across: towards(left),
        slope,
        downhill_azimuth: plane.downhill_azimuth(),
        roughness: Ranged { low: (rough - error).max(0.0), nominal: rough, high: rough + error },
        above: Ranged { low: most(&|(r, e)| r - e), nominal: most(&|(r, _)| *r), high: most(&|(r, e)| r + e) },
        below: Ranged { low: most(&|(r, e)| -r - e), nominal: most(&|(r, _)| -r), high: most(&|(r, e)| -r + e) },
    })
}

#[cfg(test)]
#[allow(clippy::unwrap_used, reason = "tests")]
mod tests {
    use super::*;
    use crate::{Grid, GroundSource, Terrain};
    use std::f64::consts::FRAC_PI_2;

    /// 20 m × 20 m of 0.5 m cells from the origin.
    fn yard(accuracy: f64, height: impl Fn(f64, f64) -> f64) -> Ground {
        let at = |i: usize| ((i % 41) as f64 * 0.5, 20.0 - (i / 41) as f64 * 0.5);
        let heights = (0..41 * 41).map(|i| height(at(i).0, at(i).1) as f32).collect();
        let (north_west, cell) = (DVec2::new(0.0, 20.0), DVec2::splat(0.5));
        let grid = Grid { north_west, cell, rows: 41, cols: 41, heights };
        let terrain = Terrain::Grid(grid);
        Ground { surfaces: vec![GroundSource { name: "yard".into(), terrain, accuracy, date: None }] }
    }

    fn under(heading: f64) -> Footprint {
        Footprint { at: DVec2::new(10.0, 10.0), heading, length: 4.0, width: 2.0 }
    }

    #[test]
    fn slopes_turn_with_the_heading() {
        let ground = yard(0.03, |x, y| 50.0 + 0.08 * x - 0.03 * y);
        for (heading, along, across) in [(0.0, 0.08, -0.03), (FRAC_PI_2, -0.03, -0.08), (2.0 * FRAC_PI_2, -0.08, 0.03)]
        {
            let plane = footprint_ground(&ground, &under(heading)).unwrap().plane.unwrap();
            assert!((plane.along.nominal - along).abs() < 1e-5, "{heading}: {:?}", plane.along);
            assert!((plane.across.nominal - across).abs() < 1e-5, "{heading}: {:?}", plane.across);
            assert!((plane.slope.nominal - 0.0854).abs() < 1e-4 && plane.roughness.nominal < 1e-4);
        }
    }

    /// Share of the accuracy that a height is off, by east, north and something random.
    type Pattern = Box<dyn Fn(f64, f64, f64) -> f64>;

    /// Whatever the errors are, what is measured from heights with them stays in the ranges.
    #[test]
    fn ranges_hold_whatever_the_errors_are() {
        const ACCURACY: f64 = 0.05;
        let truth = |x: f64, y: f64| 50.0 + 0.06 * x + 0.02 * y + if (x - 10.0).abs() < 0.6 { 0.04 } else { 0.0 };
        let said = footprint_ground(&yard(ACCURACY, truth), &under(0.4)).unwrap();
        let plane = said.plane.unwrap();
        let mut seed = 7_u64;
        let mut any = || {
            seed = seed.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
            (seed >> 33) as f64 / f64::from(1_u32 << 30) - 1.0
        };
        let mut patterns: Vec<Pattern> = vec![
            Box::new(|x, _, _| (x - 10.0).signum()),
            Box::new(|_, y, _| (y - 10.0).signum()),
            Box::new(|x, y, _| ((x - 10.0) * (y - 10.0)).signum()),
        ];
        patterns.extend((0..20).map(|_| Box::new(|_: f64, _: f64, r: f64| r) as Pattern));
        for pattern in patterns {
            let noise: Vec<f64> = (0..41 * 41).map(|_| any()).collect();
            let wrong = |x: f64, y: f64| {
                let i = ((20.0 - y) * 2.0).round() as usize * 41 + (x * 2.0).round() as usize;
                truth(x, y) + ACCURACY * pattern(x, y, noise[i])
            };
            let found = footprint_ground(&yard(0.0, wrong), &under(0.4)).unwrap();
            let p = found.plane.unwrap();
            let holds = |range: Ranged, value: f64| range.low - 1e-4 <= value && value <= range.high + 1e-4;
            assert!(holds(plane.along, p.along.nominal) && holds(plane.across, p.across.nominal));
            assert!(holds(plane.slope, p.slope.nominal) && holds(plane.roughness, p.roughness.nominal));
            assert!(holds(plane.above, p.above.nominal) && holds(plane.below, p.below.nominal));
            let [lowest, highest] = found.heights.unwrap();
            assert!(
                holds(said.heights.unwrap()[0], lowest.nominal) && holds(said.heights.unwrap()[1], highest.nominal)
            );
        }
        // An error that turns with the slope reaches most of the range: it is not drawn wide to be safe.
        let tipped = |x: f64, y: f64| truth(x, y) + ACCURACY * ((x - 10.0) * 0.921 + (y - 10.0) * 0.389).signum();
        let p = footprint_ground(&yard(0.0, tipped), &under(0.4)).unwrap().plane.unwrap();
        let share = (p.along.nominal - plane.along.nominal) / (plane.along.high - plane.along.nominal);
        assert!(share > 0.8, "{share}");
    }

    #[test]
    fn holes_are_told_and_nothing_is_filled_in() {
        let ground = yard(0.02, |x, _| if x > 10.0 { f64::NAN } else { 50.0 });
        let half = footprint_ground(&ground, &under(0.0)).unwrap();
        assert!(half.holes.len() * 2 < half.places && half.holes.iter().all(|p| p.x > 10.0));
        assert!(half.holes.len() * 5 > half.places * 2, "{} of {}", half.holes.len(), half.places);
        let nowhere = footprint_ground(&Ground::default(), &under(0.0)).unwrap();
        assert_eq!((nowhere.holes.len(), nowhere.heights, nowhere.plane), (nowhere.places, None, None));
        assert!(nowhere.surfaces.is_empty());
    }

    #[test]
    fn a_hump_is_seen_above_the_plane() {
        let ground = yard(0.01, |x, y| if (x - 10.0).abs() < 0.3 && (y - 10.0).abs() < 0.3 { 50.2 } else { 50.0 });
        let plane = footprint_ground(&ground, &under(0.0)).unwrap().plane.unwrap();
        assert!(plane.above.nominal > 0.17 && plane.above.nominal < 0.2, "{:?}", plane.above);
        assert!(plane.below.nominal < 0.03 && plane.above.low > 0.15, "{plane:?}");
    }

    #[test]
    fn rectangles_that_are_none_have_no_ground() {
        for (length, width) in [(0.0, 2.0), (4.0, -1.0), (f64::NAN, 2.0), (f64::INFINITY, 2.0)] {
            assert_eq!(footprint_ground(&Ground::default(), &Footprint { length, width, ..under(0.0) }), None);
        }
    }
}
