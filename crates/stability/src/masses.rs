//! What weighs and where.

use crate::Stance;
use geometry::DVec3;
use machine::{Attachment, Body, BodyKind, BoomPosition, Machine, kinematics};
use quantity::Si;

/// Sums of mass and first moment, with and without the rear axle. kg, kg·m, machine frame.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Masses {
    /// Everything but the rear axle, kg.
    pub sprung: f64,
    /// First moment of that, kg·m.
    pub sprung_moment: DVec3,
    /// Rear axle with wheels, kg.
    pub axle: f64,
    /// First moment of that, kg·m.
    pub axle_moment: DVec3,
}

/// A load on the boom.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LoadOnBoom {
    /// Its mass, kg.
    pub mass: f64,
    /// Its centre of gravity; for a hung load the hook, where its weight acts. m.
    pub at: DVec3,
}

impl Masses {
    /// The machine with its attachment and boom in a position, without load.
    pub fn of(machine: &Machine, attachment: &Attachment, boom: BoomPosition) -> Self {
        Self::at(machine, attachment, boom, None)
    }

    /// The same with the axles rolled under the frame.
    pub fn standing(machine: &Machine, attachment: &Attachment, boom: BoomPosition, stance: Stance) -> Self {
        Self::at(machine, attachment, boom, Some(stance))
    }

    fn at(machine: &Machine, attachment: &Attachment, boom: BoomPosition, stance: Option<Stance>) -> Self {
        Self::bodies(machine, stance).with_boom(machine, attachment, boom)
    }

    /// Boom, carriage and attachment alone.
    pub fn of_boom(machine: &Machine, attachment: &Attachment, boom: BoomPosition) -> Self {
        Self::default().with_boom(machine, attachment, boom)
    }

    /// Everything that the boom does not move, with the axles rolled under the frame.
    pub fn under_boom(machine: &Machine, stance: Stance) -> Self {
        Self::bodies(machine, Some(stance))
    }

    /// What the boom does not move: everything but boom, carriage and attachment.
    pub(crate) fn without_boom(machine: &Machine) -> Self {
        Self::bodies(machine, None)
    }

    /// The same with boom, carriage and attachment.
    pub(crate) fn with_boom(mut self, machine: &Machine, attachment: &Attachment, boom: BoomPosition) -> Self {
        for (m, at) in kinematics::boom_masses(&machine.boom, attachment, boom) {
            self.add(m, at);
        }
        self
    }

    fn bodies(machine: &Machine, stance: Option<Stance>) -> Self {
        let mut sums = Self::default();
        for body in &machine.bodies {
            let m = body.mass.si();
            let centre = stance.map_or(body.centre, |s| s.moved(machine, body.kind, body.centre));
            sums.add_body(body.kind, centre, m);
        }
        sums
    }

    /// The same with a load.
    #[must_use]
    pub fn with(mut self, load: LoadOnBoom) -> Self {
        self.add(load.mass, load.at);
        self
    }

    /// The same with `kg` more of a body where it stands, or less where negative.
    #[must_use]
    pub fn changed(mut self, machine: &Machine, stance: Stance, body: &Body, kg: f64) -> Self {
        self.add_body(body.kind, stance.moved(machine, body.kind, body.centre), kg);
        self
    }

    /// Both together.
    #[must_use]
    pub fn and(self, other: Self) -> Self {
        Self {
            sprung: self.sprung + other.sprung,
            sprung_moment: self.sprung_moment + other.sprung_moment,
            axle: self.axle + other.axle,
            axle_moment: self.axle_moment + other.axle_moment,
        }
    }

    fn add_body(&mut self, kind: BodyKind, centre: DVec3, mass: f64) {
        if kind == BodyKind::RearAxle {
            self.axle += mass;
            self.axle_moment += centre * mass;
        } else {
            self.add(mass, centre);
        }
    }

    fn add(&mut self, mass: f64, at: DVec3) {
        self.sprung += mass;
        self.sprung_moment += at * mass;
    }

    /// Mass (kg) and first moment (kg·m) that count for a tipping line.
    pub fn counted(&self, with_rear_axle: bool) -> (f64, DVec3) {
        if with_rear_axle {
            (self.sprung + self.axle, self.sprung_moment + self.axle_moment)
        } else {
            (self.sprung, self.sprung_moment)
        }
    }

    /// Total mass, kg.
    pub fn total(&self) -> f64 {
        self.sprung + self.axle
    }

    /// Centre of gravity of everything, m.
    pub fn centre(&self) -> DVec3 {
        (self.sprung_moment + self.axle_moment) / self.total()
    }
}
