//! Room on a landing.

use ground::room::{Area, Room};
use proptest::prelude::*;

fn room() -> Room {
    Room {
        size: [2.4, 3.0],
        taken: Vec::new(),
        load: [1.0, 1.2],
        clearance: 0.1,
        people: 2,
        forks_width: 1.2,
        withdrawal: 1.2,
        way_back: 2.0,
    }
}

#[test]
fn an_empty_landing_takes_load_and_people() {
    let found = room().find().unwrap();
    let (load, people) = (found.load.unwrap(), found.people.unwrap());
    assert_eq!(load.x.0, 0.0, "the nearest to the edge");
    assert!(!load.meets(people) && found.comes_out && found.load_alone);
}

#[test]
fn what_lies_in_the_way_of_the_forks_takes_the_place_behind_it() {
    let mut r = room();
    // A row of packs along the edge: behind it there is room, but no way in.
    r.taken = vec![Area { x: (0.0, 0.8), y: (0.0, 3.0) }];
    r.people = 0;
    assert!(r.find().unwrap().load.is_none());
    r.taken = vec![Area { x: (0.0, 0.8), y: (0.0, 1.5) }];
    assert!(r.find().unwrap().load.unwrap().y.0 >= 1.5);
}

#[test]
fn room_for_the_load_alone_is_told_apart_from_room_for_both() {
    let mut r = room();
    r.size = [1.1, 1.4];
    let found = r.find().unwrap();
    assert!(found.load_alone && found.load.is_none());
    r.people = 0;
    assert!(r.find().unwrap().load.is_some());
    r.way_back = 1.0;
    assert!(!r.find().unwrap().comes_out);
}

#[test]
fn every_fault_of_a_room_is_told_at_once() {
    let mut r = room();
    r.size = [-1.0, 3.0];
    r.clearance = f64::NAN;
    r.taken = vec![Area { x: (1.0, 0.5), y: (0.0, 1.0) }];
    assert!(r.find().unwrap_err().list.len() >= 3);
    let mut r = room();
    r.taken = vec![Area { x: (5.0, 6.0), y: (0.0, 1.0) }];
    assert_eq!(r.find().unwrap_err().list.len(), 1);
}

proptest! {
    /// Whatever a fine grid of places finds, the corners find as well.
    #[test]
    fn no_place_is_overlooked(taken in prop::collection::vec((0.0..2.2_f64, 0.0..2.8_f64, 0.1..1.5_f64, 0.1..1.5_f64), 0..5),
                              load in (0.4..1.8_f64, 0.4..1.8_f64)) {
        let mut r = room();
        r.people = 0;
        r.clearance = 0.0;
        r.load = [load.0, load.1];
        r.forks_width = 0.3;
        r.taken = taken.iter().map(|(x, y, a, b)| Area { x: (*x, x + a), y: (*y, y + b) }).collect();
        let found = r.find().unwrap();
        let free = |x: f64, y: f64| {
            let place = Area { x: (x, x + load.0), y: (y, y + load.1) };
            let middle = y + load.1 / 2.0;
            // The way in must be free for the whole load here: then it is for the forks of any place moved up to it.
            let lane = Area { x: (0.0, x), y: (y, y + load.1) };
            let _ = middle;
            place.x.1 <= 2.4 && place.y.1 <= 3.0 && r.taken.iter().all(|t| !t.meets(place) && !t.meets(lane))
        };
        let any = (0..60).any(|i| (0..75).any(|k| free(f64::from(i) * 0.04, f64::from(k) * 0.04)));
        prop_assert!(!any || found.load.is_some());
        if let Some(place) = found.load {
            prop_assert!(r.taken.iter().all(|t| !t.meets(place)));
            prop_assert!(place.x.1 <= 2.4 + 1e-5 && place.y.1 <= 3.0 + 1e-5);
        }
    }
}
