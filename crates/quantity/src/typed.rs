//! Statically typed quantities: uom's, with the names and short forms of this project.

use uom::si::f64::ElectricPotential;
pub use uom::si::f64::{
    Acceleration, Area, Force, Length, Mass, MassDensity as Density, Pressure, Torque as Moment, Velocity as Speed,
};

/// A plane angle. Radians inside.
pub type Angle = uom::si::f64::Angle;
/// An electric potential. Volts inside.
pub type Voltage = ElectricPotential;
/// A vertical stiffness, N/m.
pub type Stiffness = uom::si::f64::SurfaceTension;

/// The plain SI number of a quantity (m, kg, rad, N, Pa, …), for vector arithmetic.
pub trait Si {
    /// The value in the coherent SI unit.
    fn si(&self) -> f64;
}

macro_rules! si {
    ($($t:ty),*) => {$(impl Si for $t { fn si(&self) -> f64 { self.value } })*};
}
si!(Angle, Acceleration, Area, Force, Length, Mass, Density, Pressure, Moment, Speed, Voltage, Stiffness);

/// A length from metres.
pub fn metres(value: f64) -> Length {
    Length::new::<uom::si::length::meter>(value)
}
/// A mass from kilograms.
pub fn kilograms(value: f64) -> Mass {
    Mass::new::<uom::si::mass::kilogram>(value)
}
/// An angle from degrees.
pub fn degrees(value: f64) -> Angle {
    radians(value.to_radians())
}
/// An angle from radians.
pub fn radians(value: f64) -> Angle {
    Angle::new::<uom::si::angle::radian>(value)
}
/// A force from newtons.
pub fn newtons(value: f64) -> Force {
    Force::new::<uom::si::force::newton>(value)
}
/// A pressure from pascals.
pub fn pascals(value: f64) -> Pressure {
    Pressure::new::<uom::si::pressure::pascal>(value)
}
/// A speed from metres per second.
pub fn metres_per_second(value: f64) -> Speed {
    Speed::new::<uom::si::velocity::meter_per_second>(value)
}
/// A voltage from kilovolts.
pub fn kilovolts(value: f64) -> Voltage {
    Voltage::new::<uom::si::electric_potential::kilovolt>(value)
}
