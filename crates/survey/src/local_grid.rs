//! The grid of a site: turned, scaled and shifted against the plane of the coordinate system.

use geometry::DVec2;

/// A site grid. `site = R(θ) · (plan · scale) + shift`, with `plan` east and north in the plane of
/// the coordinate system, `site` east and north (x and y) in the site grid, all in m.
///
/// `R(θ)` turns counter-clockwise as seen from above, from east towards north: with θ = 90° a point
/// 10 m east of the origin lies 10 m north of it in the site grid. The site's own axes are
/// therefore turned by θ clockwise against the plane's. Heights stay as they are.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LocalGrid {
    /// θ, radians.
    pub rotation: f64,
    /// Metres in the site grid per metre in the plane; 1 for most sites, the inverse of the
    /// combined scale factor for grids in true lengths.
    pub scale: f64,
    /// Where the origin of the plane lies in the site grid, m.
    pub shift: DVec2,
}

/// Why known points give no site grid.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LocalGridError {
    /// Two points are needed.
    TooFew,
    /// All points lie at one place, in one of the two systems.
    OnePlace,
    /// A coordinate is no number.
    NotFinite,
    /// The points fit when east and north of one system are swapped: one list has its columns the
    /// other way round.
    Mirrored,
}

impl LocalGrid {
    /// A point of the plane (m) in the site grid.
    pub fn site(&self, plan: DVec2) -> DVec2 {
        let (cos, sin) = self.turn();
        let p = plan * self.scale;
        DVec2::new(cos * p.x - sin * p.y, sin * p.x + cos * p.y) + self.shift
    }

    /// A point of the site grid (m) in the plane.
    pub fn plan(&self, site: DVec2) -> DVec2 {
        let (cos, sin) = self.turn();
        let s = (site - self.shift) / self.scale;
        DVec2::new(cos * s.x + sin * s.y, cos * s.y - sin * s.x)
    }

    /// True if rows and columns along east and north stay so.
    pub fn keeps_axes(&self) -> bool {
        self.rotation == 0.0
    }

    /// A usable grid: finite, and scaled by something positive.
    pub fn is_usable(&self) -> bool {
        self.rotation.is_finite() && self.shift.is_finite() && self.scale.is_finite() && self.scale > 0.0
    }

    /// Cosine and sine of θ.
    fn turn(&self) -> (f64, f64) {
        let (sin, cos) = libm::sincos(self.rotation);
        (cos, sin)
    }

    /// The grid that fits pairs of (plan, site) best by least squares, and for each pair what is
    /// left (site as given minus site as fitted, m). Four unknowns, two equations a point: with two
    /// points nothing is left, and a mistake in one of them does not show; use three or more.
    ///
    /// Closed form of the plane similarity: with coordinates from the centroids,
    /// `scale·cos θ = Σ p·s / Σ p·p` and `scale·sin θ = Σ p×s / Σ p·p`.
    ///
    /// # Errors
    /// [`LocalGridError`]; a grid that fits badly is no error, look at the residuals.
    pub fn from_points(pairs: &[(DVec2, DVec2)]) -> Result<(Self, Vec<DVec2>), LocalGridError> {
        if pairs.iter().any(|(p, s)| !p.is_finite() || !s.is_finite()) {
            return Err(LocalGridError::NotFinite);
        }
        if pairs.len() < 2 {
            return Err(LocalGridError::TooFew);
        }
        let (grid, residuals) = fit(pairs)?;
        if pairs.len() > 2 {
            let swapped: Vec<(DVec2, DVec2)> = pairs.iter().map(|(p, s)| (DVec2::new(p.y, p.x), *s)).collect();
            let (_, other) = fit(&swapped)?;
            let rms = |r: &[DVec2]| (r.iter().map(|d| d.length_squared()).sum::<f64>() / r.len() as f64).sqrt();
            if rms(&residuals) > 1.0 && rms(&other) < 0.1 * rms(&residuals) {
                return Err(LocalGridError::Mirrored);
            }
        }
        Ok((grid, residuals))
    }
}

fn fit(pairs: &[(DVec2, DVec2)]) -> Result<(LocalGrid, Vec<DVec2>), LocalGridError> {
    let n = pairs.len() as f64;
    let plan_middle = pairs.iter().map(|p| p.0).sum::<DVec2>() / n;
    let site_middle = pairs.iter().map(|p| p.1).sum::<DVec2>() / n;
    let (mut along, mut across, mut spread) = (0.0, 0.0, 0.0);
    for (p, s) in pairs {
        let (p, s) = (*p - plan_middle, *s - site_middle);
        along += p.dot(s);
        across += p.perp_dot(s);
        spread += p.length_squared();
    }
    let scale = (along * along + across * across).sqrt() / spread;
    // A millimetre apart is one place.
    if spread.sqrt() < 1e-3 || scale.is_nan() || scale <= 1e-9 {
        return Err(LocalGridError::OnePlace);
    }
    let mut grid = LocalGrid { rotation: libm::atan2(across, along), scale, shift: DVec2::ZERO };
    grid.shift = site_middle - grid.site(plan_middle);
    let residuals = pairs.iter().map(|(p, s)| *s - grid.site(*p)).collect();
    Ok((grid, residuals))
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used, reason = "tests")]
    use super::*;

    const GRID: LocalGrid = LocalGrid { rotation: 0.3, scale: 1.0004, shift: DVec2::new(-80_000.0, -440_000.0) };

    #[test]
    fn a_quarter_turn_takes_east_to_north() {
        let grid = LocalGrid { rotation: std::f64::consts::FRAC_PI_2, scale: 1.0, shift: DVec2::new(5.0, 0.0) };
        assert!(grid.site(DVec2::new(10.0, 0.0)).distance(DVec2::new(5.0, 10.0)) < 1e-12);
        assert!(grid.plan(DVec2::new(5.0, 10.0)).distance(DVec2::new(10.0, 0.0)) < 1e-12);
    }

    #[test]
    fn points_give_the_grid_back() {
        let plan = [(85_000.0, 447_400.0), (85_120.0, 447_390.0), (85_060.0, 447_510.0), (85_010.0, 447_480.0)];
        let plan = plan.map(|(e, n)| DVec2::new(e, n));
        let pairs: Vec<(DVec2, DVec2)> = plan.iter().map(|p| (*p, GRID.site(*p))).collect();
        let (found, residuals) = LocalGrid::from_points(&pairs).unwrap();
        assert!((found.rotation - GRID.rotation).abs() < 1e-9 && (found.scale - GRID.scale).abs() < 1e-9);
        assert!(residuals.iter().all(|r| r.length() < 1e-6));
        for p in plan {
            assert!(found.site(p).distance(GRID.site(p)) < 1e-6);
            assert!(found.plan(found.site(p)).distance(p) < 1e-6);
        }
        let (two, rest) = LocalGrid::from_points(&pairs[..2]).unwrap();
        assert!(two.site(plan[3]).distance(GRID.site(plan[3])) < 1e-6);
        assert!(rest.iter().all(|r| r.length() < 1e-6));
    }

    #[test]
    fn a_wrong_point_shows_in_the_residuals() {
        let corners = [(0.0, 0.0), (100.0, 0.0), (100.0, 100.0), (0.0, 100.0)].map(|(x, y)| DVec2::new(x, y));
        let mut pairs: Vec<(DVec2, DVec2)> = corners.iter().map(|p| (*p, *p)).collect();
        pairs[2].1.x += 0.4;
        let (_, residuals) = LocalGrid::from_points(&pairs).unwrap();
        let sum = residuals.iter().copied().sum::<DVec2>();
        assert!(sum.length() < 1e-9, "residuals of a least-squares fit with a free shift sum to nothing");
        assert!(residuals[2].x > 0.1 && residuals[2].length() >= residuals[1].length());
    }

    #[test]
    fn points_that_give_no_grid() {
        let at = DVec2::new(3.0, 4.0);
        assert_eq!(LocalGrid::from_points(&[(at, at)]), Err(LocalGridError::TooFew));
        assert_eq!(LocalGrid::from_points(&[(at, at), (at, at)]), Err(LocalGridError::OnePlace));
        assert_eq!(
            LocalGrid::from_points(&[(at, at), (DVec2::new(f64::NAN, 0.0), at)]),
            Err(LocalGridError::NotFinite)
        );
        let swapped: Vec<(DVec2, DVec2)> =
            [(0.0, 0.0), (80.0, 10.0), (20.0, 70.0)].map(|(x, y)| (DVec2::new(x, y), DVec2::new(y, x))).to_vec();
        assert_eq!(LocalGrid::from_points(&swapped), Err(LocalGridError::Mirrored));
    }
}
