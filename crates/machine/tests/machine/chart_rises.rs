//! Rising capacity is found, with its place, and falling capacity is not.

use crate::chart_reading::{sample, square, zone};
use geometry::DVec2;
use machine::{RisesWith, rises};

#[test]
fn a_chart_that_falls_has_no_rises() {
    assert_eq!(rises(&sample().zones), []);
}

#[test]
fn rises_with_reach_and_height_are_named_once_with_their_place() {
    let zones = [
        zone("A", 2000.0, &square(0.0, 0.0, 2.0, 2.0)),
        zone("B", 2500.0, &square(2.0, 0.0, 4.0, 2.0)),
        zone("C", 1000.0, &square(0.0, 2.0, 4.0, 4.0)),
        zone("D", 1200.0, &square(1.0, 5.0, 3.0, 6.0)),
    ];
    let found = rises(&zones);
    assert_eq!(found.len(), 2, "{found:?}");
    let (reach, height) = (found[0], found[1]);
    assert_eq!((reach.from, reach.to, reach.with), (0, 1, RisesWith::Reach));
    assert!(reach.at.distance(DVec2::new(2.0, 1.0)) < 1e-12);
    assert_eq!((height.from, height.to, height.with), (2, 3, RisesWith::Height), "also across a gap");
    assert_eq!(height.at.y, 5.0);
}

#[test]
fn a_sliver_of_drawing_error_is_no_rise() {
    let zones = [
        zone("A", 2000.0, &square(0.0, 0.0, 2.0, 2.0)),
        zone("B", 1000.0, &[[2.0, 0.0], [4.0, 0.0], [4.0, 2.005], [2.0, 2.005]]),
        zone("C", 1500.0, &square(0.0, 2.0, 2.0, 4.0)),
        zone("D", 900.0, &square(2.0, 2.005, 4.0, 4.0)),
    ];
    assert_eq!(rises(&zones), []);
}
