//! Machine and load of a job's first lift at any boom position, built beside the checks: kinematics written out again,
//! solids by their plain dimensions.

use geometry::{Capsule, DVec2, DVec3, OrientedBox, Pose, Segment, Solid};
use machine::{AttachmentKind, BACKREST, BoomPosition, CARRIAGE_HALF};
use planning::{BoomMovement, Job};
use quantity::Si;
use site::footing::{Contacts, footing};

pub(crate) struct Rig {
    /// Site from machine.
    pub(crate) pose: Pose,
    pub(crate) tilt: f64,
    pub(crate) foot: DVec2,
    pub(crate) along: f64,
    pub(crate) below: f64,
    pub(crate) longest: f64,
    /// Fork heel ahead of and above the head pin, forks level.
    pub(crate) heel: DVec2,
    depth: f64,
    load: DVec3,
    blades: DVec2,
}

impl Rig {
    pub(crate) fn new(job: &Job) -> Self {
        let lift = &job.lifts[0];
        let machine = &job.machines[lift.machine].machine;
        let attachment = machine.attachment(&lift.attachment).unwrap();
        let AttachmentKind::Forks(_) = &attachment.kind else { panic!("forks only") };
        let contacts = Contacts {
            front_x: machine.front.x,
            front_half: machine.front.half_track,
            rear_x: machine.rear.axle.x,
            rear_half: machine.rear.axle.half_track,
        };
        let stand = footing(&job.ground, lift.stand.at, lift.stand.heading, &contacts).unwrap();
        let load = &job.loads[lift.load];
        let (length, spread) = attachment.footprint();
        Self {
            tilt: -stand.along.nominal.atan(),
            pose: stand.site_from_machine,
            foot: machine.boom.foot,
            along: machine.boom.head_along,
            below: machine.boom.head_below,
            longest: machine.boom.extension_max.si(),
            heel: attachment.tool_point(),
            depth: machine.boom.depth,
            load: DVec3::new(load.depth, load.width, load.height),
            blades: DVec2::new(length, spread),
        }
    }

    /// Boom end, head pin and fork heel in the machine's middle plane.
    pub(crate) fn pins(&self, angle: f64, extension: f64) -> [DVec2; 3] {
        let end = self.foot + DVec2::from_angle(angle) * (self.along + extension);
        let head = end + DVec2::from_angle(angle - std::f64::consts::FRAC_PI_2) * self.below;
        [end, head, head + DVec2::from_angle(self.tilt).rotate(self.heel)]
    }

    /// Angle and extension with the heel there. Law of cosines, no code of the machine's.
    pub(crate) fn solve(&self, heel: DVec2) -> (f64, f64) {
        let v = heel - DVec2::from_angle(self.tilt).rotate(self.heel) - self.foot;
        let along = (v.length_squared() - self.below.powi(2)).sqrt();
        (v.to_angle() + (self.below / along).atan(), along - self.along)
    }

    /// Boom, head, carriage, load with blades, on the site.
    pub(crate) fn solids(&self, angle: f64, extension: f64) -> [Solid; 4] {
        let space = |p: DVec2| DVec3::new(p.x, 0.0, p.y);
        let [end, head, heel] = self.pins(angle, extension).map(space);
        let radius = self.depth / 2.0_f64.sqrt();
        let capsule = |a, b| Solid::Capsule(Capsule { axis: Segment { a, b }, radius });
        let (sin, cos) = self.tilt.sin_cos();
        let carriage = Pose::from_axes(DVec3::new(cos, 0.0, sin), DVec3::Y, heel);
        let between = |low: DVec3, high: DVec3| {
            let translation = carriage * ((low + high) / 2.0);
            let outer_from_box = Pose { rotation: carriage.rotation, translation };
            Solid::Box(OrientedBox { outer_from_box, half: (high - low) / 2.0 })
        };
        let back = (carriage.inverse() * head).x.min(-0.1);
        let half = CARRIAGE_HALF.max(self.blades.y / 2.0);
        let across = self.load.y.max(self.blades.y) / 2.0;
        [
            capsule(space(self.foot), end),
            capsule(end, head),
            between(DVec3::new(back, -half, -0.1), DVec3::new(0.0, half, BACKREST)),
            between(DVec3::new(0.0, -across, -0.1), DVec3::new(self.load.x.max(self.blades.x), across, self.load.z)),
        ]
        .map(|s| s.moved(self.pose))
    }

    /// Positions of a movement, `count` on each of its legs, with whether the load is on.
    pub(crate) fn sampled(&self, moves: &BoomMovement, count: usize) -> Vec<(BoomPosition, bool)> {
        let mut out = Vec::new();
        for pair in moves.steps.windows(2) {
            let ends = [&pair[0], &pair[1]].map(|s| (s.angle_rad, s.extension_m));
            let heels = ends.map(|(a, e)| self.pins(a, e)[2]);
            for i in 0..=count {
                let t = i as f64 / count as f64;
                let (angle, extension) = if pair[1].straight {
                    self.solve(heels[0].lerp(heels[1], t))
                } else {
                    (ends[0].0 + (ends[1].0 - ends[0].0) * t, ends[0].1 + (ends[1].1 - ends[0].1) * t)
                };
                out.push((BoomPosition { angle, extension, fork_tilt: self.tilt }, pair[0].loaded && pair[1].loaded));
            }
        }
        out
    }
}
