//! The machine on the real ground: four contacts, slope along and across, pose.

use crate::Ground;
use evidence::Ranged;
use geometry::{DVec2, DVec3, Pose};

/// Where the supports are under a machine, m in the machine frame.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Contacts {
    /// x of the front supports (tyres or pads).
    pub front_x: f64,
    /// Half the distance between the front supports.
    pub front_half: f64,
    /// x of the rear wheels (negative).
    pub rear_x: f64,
    /// Half the rear track.
    pub rear_half: f64,
}

/// The machine on the ground. The front supports give the roll; the rear axle oscillates, so only
/// the middle of its two wheels counts.
#[derive(Debug, Clone, PartialEq)]
pub struct Footing {
    /// Pose of the machine frame in the site frame.
    pub site_from_machine: Pose,
    /// Ground heights front left, front right, rear left, rear right, m.
    pub heights: [f64; 4],
    /// Slope along: rise over run, positive nose up, with the ground's accuracy.
    pub along: Ranged,
    /// Slope across: rise over run, positive falling to the left, with the ground's accuracy.
    pub across: Ranged,
    /// Slope across under the rear supports, as `across`.
    pub rear_across: Ranged,
    /// Turn of the rear axle against the front, rad, with accuracy added to its size.
    pub twist: f64,
    /// Index of the surface under the front left support.
    pub surface: usize,
    /// Worst accuracy of the surfaces used, m.
    pub accuracy: f64,
}

impl Footing {
    /// Counts the slopes of another footing besides, where the machine may stand as well. Heights and pose stay.
    pub fn widen(&mut self, other: &Self) {
        let both = |a: Ranged, b: Ranged| Ranged { low: a.low.min(b.low), high: a.high.max(b.high), ..a };
        self.along = both(self.along, other.along);
        self.across = both(self.across, other.across);
        self.rear_across = both(self.rear_across, other.rear_across);
        self.twist = self.twist.max(other.twist);
        self.accuracy = self.accuracy.max(other.accuracy);
    }
}

/// Ground heights where known; at least one is not.
pub type Unknown = [Option<f64>; 4];

/// Ground heights under the four supports.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Heights {
    /// Front left, front right, rear left, rear right, m.
    pub at: [f64; 4],
    /// Worst accuracy of the surfaces used, m.
    pub accuracy: f64,
    /// Index of the surface under the front left support.
    pub surface: usize,
}

/// Plan places of the supports of a machine with its front axle's middle at `at`: front left, front right,
/// rear left, rear right.
fn places(at: DVec2, heading: f64, contacts: &Contacts) -> [DVec2; 4] {
    let (s, c) = libm::sincos(heading);
    let (forward, left) = (DVec2::new(c, s), DVec2::new(-s, c));
    let place = |x: f64, y: f64| at + forward * x + left * y;
    [
        place(contacts.front_x, contacts.front_half),
        place(contacts.front_x, -contacts.front_half),
        place(contacts.rear_x, contacts.rear_half),
        place(contacts.rear_x, -contacts.rear_half),
    ]
}

/// Ground heights at the plan positions of the supports.
///
/// # Errors
/// The heights that are known, if any is missing: nothing is filled in.
pub fn heights(ground: &Ground, at: DVec2, heading: f64, contacts: &Contacts) -> Result<Heights, Unknown> {
    let found = places(at, heading, contacts).map(|p| ground.height_on(p));
    let [Some(fl), Some(fr), Some(rl), Some(rr)] = found else {
        return Err(found.map(|f| f.map(|(z, _)| z)));
    };
    let accuracy = [fl, fr, rl, rr].iter().map(|(_, i)| ground.surfaces[*i].accuracy).fold(0.0, f64::max);
    Ok(Heights { at: [fl.0, fr.0, rl.0, rr.0], accuracy, surface: fl.1 })
}

/// Poses a machine with its front axle's middle at `at` (site frame) and `heading` (radians
/// counter-clockwise from east).
///
/// Heights are taken at the plan positions of the supports. Accuracy: independent errors `a` under
/// two wheels `t` apart give a slope error of `√2 · a / t` (3 cm on a 2 m track: 1.2°).
///
/// # Errors
/// The heights that are known, if any is missing: nothing is filled in.
pub fn footing(ground: &Ground, at: DVec2, heading: f64, contacts: &Contacts) -> Result<Footing, Unknown> {
    Ok(on_heights(at, heading, contacts, heights(ground, at, heading, contacts)?))
}

/// The same on heights that are at hand.
pub fn on_heights(at: DVec2, heading: f64, contacts: &Contacts, heights: Heights) -> Footing {
    let (s, c) = libm::sincos(heading);
    let (forward, left) = (DVec2::new(c, s), DVec2::new(-s, c));
    let Heights { at: z, accuracy, surface } = heights;
    let [fl, fr, rl, rr] = z;
    let (front, rear) = (f64::midpoint(fl, fr), f64::midpoint(rl, rr));
    let base = contacts.front_x - contacts.rear_x;
    let track = 2.0 * contacts.front_half;
    let along = (front - rear) / base;
    let across = (fr - fl) / track;

    let rear_across = (rr - rl) / (2.0 * contacts.rear_half);
    let twist_error = core::f64::consts::SQRT_2 * accuracy * (1.0 / track + 0.5 / contacts.rear_half);
    let twist = (libm::atan(rear_across) - libm::atan(across)).abs() + libm::atan(twist_error);

    let x_axis = DVec3::new(forward.x, forward.y, along);
    let y_axis = DVec3::new(left.x, left.y, -across);
    let level = Pose::from_axes(x_axis, y_axis, DVec3::ZERO);
    let front_middle = (at + forward * contacts.front_x).extend(front);
    let origin = front_middle - level.turn(DVec3::new(contacts.front_x, 0.0, 0.0));
    let error = |track: f64| core::f64::consts::SQRT_2 * accuracy / track;
    Footing {
        site_from_machine: Pose { translation: origin, ..level },
        heights: z,
        along: Ranged::plus_minus(along, accuracy / base),
        across: Ranged::plus_minus(across, error(track)),
        rear_across: Ranged::plus_minus(rear_across, error(2.0 * contacts.rear_half)),
        twist,
        surface,
        accuracy,
    }
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used, clippy::disallowed_methods, reason = "tests")]
    use super::*;
    use crate::{Grid, GroundSource, Terrain};

    fn plane(slope_east: f64, slope_north: f64) -> Ground {
        let heights = (0..41 * 41)
            .map(|i| {
                let (row, col) = (i / 41, i % 41);
                (10.0 + slope_east * (f64::from(col) - 20.0) + slope_north * (20.0 - f64::from(row))) as f32
            })
            .collect();
        let grid = Grid { north_west: DVec2::new(-20.0, 20.0), cell: DVec2::ONE, rows: 41, cols: 41, heights };
        let source = GroundSource { name: "plane".into(), terrain: Terrain::Grid(grid), accuracy: 0.03, date: None };
        Ground { surfaces: vec![source] }
    }
    const ON: Contacts = Contacts { front_x: 0.0, front_half: 1.0, rear_x: -3.0, rear_half: 1.0 };

    #[test]
    fn a_plane_gives_its_slopes_in_every_heading() {
        let ground = plane(0.05, -0.02);
        for k in 0..16 {
            let heading = f64::from(k) * 0.4;
            let f = footing(&ground, DVec2::new(0.3, -0.7), heading, &ON).unwrap();
            let (s, c) = heading.sin_cos();
            // Heights are stored as f32: 1e-6 of slope is their last digit over the track.
            assert!((f.along.nominal - (0.05 * c - 0.02 * s)).abs() < 1e-5);
            assert!((f.across.nominal - -(-0.05 * s - 0.02 * c)).abs() < 1e-5);
            let left_front = f.site_from_machine * DVec3::new(0.0, 1.0, 0.0);
            assert!((left_front.z - f.heights[0]).abs() < 5e-3, "contact lies on the ground");
        }
    }

    #[test]
    fn three_centimetres_are_one_point_two_degrees() {
        let f = footing(&plane(0.0, 0.0), DVec2::ZERO, 0.0, &ON).unwrap();
        assert!((libm::atan(f.across.high).to_degrees() - 1.2).abs() < 0.05);
    }

    #[test]
    fn a_wheel_off_the_survey_is_said_by_wheel() {
        let unknown = footing(&plane(0.0, 0.0), DVec2::new(18.5, 19.5), 0.0, &ON).unwrap_err();
        assert_eq!(unknown.map(|z| z.is_some()), [false, true, false, true]);
    }
}
