//! Forces of the poses that press the contacts most unevenly, and of those that press an axle or all of them most: what
//! settles a machine crooked, and what deep ground is pressed with. Each set of four is that of
//! one pose, not the greatest of each contact from different ones.

/// What is greatest in a pose: one contact, one against the other of its axle, one axle against the other,
/// each axle, all of them.
const OF: [[f64; 4]; 13] = [
    [1.0, 0.0, 0.0, 0.0],
    [0.0, 1.0, 0.0, 0.0],
    [0.0, 0.0, 1.0, 0.0],
    [0.0, 0.0, 0.0, 1.0],
    [1.0, -1.0, 0.0, 0.0],
    [-1.0, 1.0, 0.0, 0.0],
    [0.0, 0.0, 1.0, -1.0],
    [0.0, 0.0, -1.0, 1.0],
    [1.0, 1.0, -1.0, -1.0],
    [-1.0, -1.0, 1.0, 1.0],
    [1.0, 1.0, 0.0, 0.0],
    [0.0, 0.0, 1.0, 1.0],
    [1.0; 4],
];

/// The poses by their forces on the contacts, N.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Uneven {
    most: [f64; OF.len()],
    force: [[f64; 4]; OF.len()],
}

impl Uneven {
    /// Before any pose.
    pub(crate) const NONE: Self = Self { most: [f64::NEG_INFINITY; OF.len()], force: [[0.0; 4]; OF.len()] };

    /// Forces of one more pose.
    pub(super) fn forces(&mut self, force: [f64; 4]) {
        for (i, of) in OF.iter().enumerate() {
            let value: f64 = of.iter().zip(force).map(|(a, f)| a * f).sum();
            // What is no number stays so.
            if value > self.most[i] || (value.is_nan() && !self.most[i].is_nan()) {
                (self.most[i], self.force[i]) = (value, force);
            }
        }
    }

    /// Presses by the wind's greatest share (N) where it makes a pose worse, and takes it off where that does.
    pub(super) fn wind(&mut self, share: [f64; 4]) {
        for (force, of) in self.force.iter_mut().zip(OF) {
            for i in 0..4 {
                force[i] += of[i] * share[i];
            }
        }
    }

    /// The forces of each pose, N.
    pub(super) fn poses(&self) -> &[[f64; 4]] {
        &self.force
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_pose_that_is_worst_for_each_is_kept_whole() {
        let mut u = Uneven::NONE;
        let (level, aside, ahead) = ([30.0, 30.0, 30.0, 30.0], [45.0, 15.0, 30.0, 30.0], [50.0, 50.0, 10.0, 10.0]);
        for pose in [level, aside, ahead] {
            u.forces(pose);
        }
        assert_eq!(u.poses()[4], aside);
        assert_eq!(u.poses()[8], ahead);
        assert_eq!(u.poses()[2], level);
        u.wind([2.0, 2.0, 1.0, 1.0]);
        assert_eq!(u.poses()[4], [47.0, 13.0, 30.0, 30.0]);
        assert_eq!(u.poses()[8], [52.0, 52.0, 9.0, 9.0]);
        u.forces([f64::NAN, 0.0, 0.0, 0.0]);
        assert!(u.poses()[8][0].is_nan());
        u.forces(ahead);
        assert!(u.poses()[8][0].is_nan(), "no number stays none");
    }
}
