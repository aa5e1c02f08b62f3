//! How a machine steers and drives: turning radii as makers print them, and what follows for its middle.

use crate::Machine;
use quantity::Si;

/// What its maker says of steering and driving. What is not stated is `None`.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct SteeringData {
    /// Turning radius over tyres with the front wheels alone at full lock: radius of the circle that the outside of the
    /// outer front tyre runs on, m.
    pub two_wheel_radius: Option<f64>,
    /// The same with all four wheels at full lock, front and rear against each other, m.
    pub four_wheel_radius: Option<f64>,
    /// True if all four wheels can steer the same way, so that it moves aslant.
    pub crab: Option<bool>,
    /// Greatest speed with a load on, boom as carried, m/s.
    pub travel_speed: Option<f64>,
}

impl SteeringData {
    /// Radius that the middle of the rear axle runs on with the front wheels alone at full lock, m.
    ///
    /// The centre of the turn lies on the rear axle's line: `R = √((R_o − b/2)² − L²) − s/2`, with `R_o` over tyres, tyre
    /// width `b`, wheelbase `L`, front track `s` (plane geometry; tyres roll without slip, king pins in the tyres' middle).
    /// `None` where the radius is not stated, or so small that no machine with that wheelbase runs on it.
    pub fn rear_axle_radius(&self, machine: &Machine) -> Option<f64> {
        middle(machine, self.two_wheel_radius?, -machine.rear.axle.x)
    }

    /// Radius that the machine's middle between its axles runs on with all four wheels at full lock, m: as
    /// [`SteeringData::rear_axle_radius`] with half the wheelbase, front and rear wheels being turned alike.
    pub fn four_wheel_middle_radius(&self, machine: &Machine) -> Option<f64> {
        middle(machine, self.four_wheel_radius?, -machine.rear.axle.x / 2.0)
    }
}

/// From the circle of the outer front tyre to the one abeam of the centre of the turn, `ahead` behind the front axle, m.
fn middle(machine: &Machine, over_tyres: f64, ahead: f64) -> Option<f64> {
    let rolls = over_tyres - machine.front.tyre.width.si() / 2.0;
    let radius = (rolls * rolls - ahead * ahead).sqrt() - machine.front.half_track;
    // A turn about a place under the machine itself is no turn of wheels that steer.
    (rolls > ahead && radius > 0.0).then_some(radius)
}
