//! Fork-lift classes: what a truck that takes the pallet away puts on a floor.

/// A class by EN 1991-1-1:2002, tables 6.5 and 6.6, 6.3.2.3, from memory.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ForkliftClass {
    /// FL1 to FL6.
    pub name: &'static str,
    /// Net weight, N.
    pub net_weight: f64,
    /// Hoisting load, N.
    pub hoisting: f64,
    /// Axle load `Q_k`, N, standing.
    pub axle: f64,
    /// Wheels of that axle from middle to middle, m.
    pub axle_width: f64,
    /// Overall width, m.
    pub width: f64,
    /// Overall length, m.
    pub length: f64,
}

/// Side of a wheel's print, m.
pub const WHEEL_PRINT: f64 = 0.2;
/// Factor on the axle load of a moving truck on pneumatic tyres.
pub const PNEUMATIC: f64 = 1.4;
/// The same on solid tyres.
pub const SOLID: f64 = 2.0;
/// Horizontal force as a share of the vertical axle load.
pub const HORIZONTAL: f64 = 0.3;

const fn class(name: &'static str, kn: [f64; 3], m: [f64; 3]) -> ForkliftClass {
    let [net, hoist, axle] = kn;
    ForkliftClass {
        name,
        net_weight: net * 1e3,
        hoisting: hoist * 1e3,
        axle: axle * 1e3,
        axle_width: m[0],
        width: m[1],
        length: m[2],
    }
}

/// All classes, lightest first.
pub const CLASSES: [ForkliftClass; 6] = [
    class("FL1", [21.0, 10.0, 26.0], [0.85, 1.0, 2.6]),
    class("FL2", [31.0, 15.0, 40.0], [0.95, 1.1, 3.0]),
    class("FL3", [44.0, 25.0, 63.0], [1.0, 1.2, 3.3]),
    class("FL4", [60.0, 40.0, 90.0], [1.2, 1.4, 4.0]),
    class("FL5", [90.0, 60.0, 140.0], [1.5, 1.9, 4.6]),
    class("FL6", [110.0, 80.0, 170.0], [1.8, 2.3, 5.1]),
];

impl ForkliftClass {
    /// The lightest class that a truck of that net weight and hoisting load (N) belongs to; `None`: heavier than
    /// all, which the standard leaves to its designer.
    pub fn for_truck(net_weight: f64, hoisting: f64) -> Option<&'static Self> {
        CLASSES.iter().find(|c| net_weight <= c.net_weight && hoisting <= c.hoisting)
    }

    /// Force of one wheel of the loaded axle while it moves, N.
    pub fn wheel(&self, solid_tyres: bool) -> f64 {
        self.axle / 2.0 * if solid_tyres { SOLID } else { PNEUMATIC }
    }

    /// Horizontal force of the truck, N.
    pub fn horizontal(&self) -> f64 {
        HORIZONTAL * self.axle
    }
}
