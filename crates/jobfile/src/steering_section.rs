//! `[steering]` of a machine file: turning radii as its maker prints them, and how it drives.

use crate::quantity_value::Bound::UpTo;
use crate::table::Reader;
use crate::text;
use machine::{Machine, SteeringData};
use quantity::{Dimension as D, metres};

pub(crate) fn steering(t: &Reader<'_>) -> SteeringData {
    let two_wheel_radius = t.si_or_none("two_wheel_radius", D::Length, UpTo(50.0));
    let four_wheel_radius = t.si_or_none("four_wheel_radius", D::Length, UpTo(50.0));
    let crab = t.yes_no("crab");
    let travel_speed = t.si_or_none("travel_speed", D::Speed, UpTo(20.0));
    t.done();
    SteeringData { two_wheel_radius, four_wheel_radius, crab, travel_speed }
}

/// No machine turns about a place between its own wheels.
pub(crate) fn can_turn(root: &Reader<'_>, machine: &Machine) {
    let Some(steering) = machine.steering else { return };
    let radii = [
        ("two_wheel_radius", steering.two_wheel_radius, steering.rear_axle_radius(machine)),
        ("four_wheel_radius", steering.four_wheel_radius, steering.four_wheel_middle_radius(machine)),
    ];
    for (key, stated, middle) in radii {
        if let (Some(radius), None) = (stated, middle) {
            let message = text::TURNS_TOO_TIGHT.with("key", key).with("radius", metres(radius));
            root.fault("steering", message, Some(text::HINT_OVER_THE_TYRES.message()));
        }
    }
}
