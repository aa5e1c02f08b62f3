//! A bay's own rating.

use evidence::{Ranged, Silent, Status};
use ground::bay::{Bay, BayRating, Lying, PERSON, PUSH, Propped, SETTING_DOWN};
use ground::carried::{Carried, Part, governing, largest_that_fits};
use ground::landing_carries::StandingLoad;
use ground::pallet_feet::{Feet, Sharing};

fn bay(rating: BayRating) -> Bay {
    Bay { rating, area: 4.0, lying: Vec::new(), people: 0, setting_down: SETTING_DOWN, can_sway: false }
}

fn rated(total: f64) -> BayRating {
    BayRating { by: "Ana Ruiz".to_owned(), total: Some(total), ..BayRating::default() }
}

fn pallet() -> Feet {
    Feet::new((1.2, 3, 0.145), (1.0, 3, 0.1), Sharing::Even).unwrap()
}

fn under(bay: &Bay, mass: f64) -> Vec<Carried> {
    bay.under(&on(mass, &pallet()), &mut Silent).unwrap()
}

fn worst(bay: &Bay, mass: f64) -> Status {
    governing(&under(bay, mass)).unwrap().status()
}

#[test]
fn a_duty_class_alone_never_answers_for_a_pallet() {
    for class in 1..=6 {
        let rating = BayRating { by: "Ana Ruiz".to_owned(), class: Some(class), ..BayRating::default() };
        assert_eq!(worst(&bay(rating), 20.0), Status::CannotTell, "class {class}");
    }
    assert_eq!(worst(&bay(BayRating::default()), 20.0), Status::CannotTell);
}

#[test]
fn what_lies_there_and_who_stands_there_counts() {
    let mut b = bay(rated(2000.0));
    b.rating.allows_setting_down = Some(true);
    assert_eq!(worst(&b, 1500.0), Status::Go);
    b.lying.push(Lying { what: "bricks".to_owned(), mass: Ranged::plus_minus(400.0, 40.0) });
    b.people = 1;
    assert_eq!(worst(&b, 1500.0), Status::NoGo);
    let most = largest_that_fits(1500.0, |m| under(&b, m)).unwrap();
    assert!((most - (2000.0 - 440.0 - PERSON)).abs() <= 1.5, "{most}");
    assert_eq!(worst(&b, 750.0), Status::Go, "half the pallet");
}

#[test]
fn setting_down_counts_unless_the_designer_has_allowed_for_it() {
    let mut b = bay(rated(1500.0));
    assert_eq!(worst(&b, 1200.0), Status::NoGo);
    b.rating.allows_setting_down = Some(false);
    assert_eq!(worst(&b, 1200.0), Status::NoGo);
    b.rating.allows_setting_down = Some(true);
    assert_eq!(worst(&b, 1200.0), Status::Go);
}

#[test]
fn an_even_rating_is_held_against_the_pallets_own_footprint() {
    let even = BayRating { by: "Ana Ruiz".to_owned(), even: Some(6e3), ..BayRating::default() };
    let mut b = bay(even);
    // 10.1 kPa under the pallet while it is set down, though the bay as a whole would carry it.
    let all = under(&b, 880.0);
    assert_eq!(
        all.iter().map(|c| (c.part, c.status())).collect::<Vec<_>>(),
        [(Part::RatedEvenTotal, Status::Go), (Part::RatedEven, Status::NoGo)]
    );
    b.rating.part = Some((12e3, 1.5));
    assert_eq!(worst(&b, 880.0), Status::Go);
    b.rating.part = Some((12e3, 1.0));
    assert_eq!(worst(&b, 880.0), Status::NoGo, "the pallet is larger than the part");
}

#[test]
fn what_sways_needs_a_rating_for_the_push_and_a_small_foot_one_of_its_own() {
    let mut b = bay(rated(5000.0));
    b.can_sway = true;
    assert_eq!(worst(&b, 1000.0), Status::CannotTell);
    b.rating.push = Some(PUSH * 1000.0 * 9.81);
    assert_eq!(worst(&b, 1000.0), Status::Go);
    b.rating.point = Some((3e3, 0.5));
    assert_eq!(worst(&b, 1000.0), Status::CannotTell, "a foot of 100 mm under a rating for 500 mm");
    b.rating.point = Some((3e3, 0.1));
    assert_eq!(worst(&b, 1000.0), Status::Go);
    b.rating.point = Some((1e3, 0.1));
    assert_eq!(worst(&b, 1000.0), Status::NoGo);
}

#[test]
fn a_rating_a_pallet_says_nothing_of_what_else_lies_there() {
    let rating = BayRating {
        by: "Ana Ruiz".to_owned(),
        pallet: Some(1500.0),
        allows_setting_down: Some(true),
        ..BayRating::default()
    };
    let mut b = bay(rating);
    assert_eq!(worst(&b, 1400.0), Status::Go);
    b.lying.push(Lying { what: "blocks".to_owned(), mass: Ranged::exact(900.0) });
    assert_eq!(worst(&b, 1400.0), Status::CannotTell);
}

#[test]
fn nobodys_rating_and_nobodys_props_are_refused() {
    let mut b = bay(rated(2000.0));
    b.rating.by = " ".to_owned();
    b.area = f64::NAN;
    b.setting_down = 0.5;
    b.lying.push(Lying { what: "blocks".to_owned(), mass: Ranged::exact(-3.0) });
    let faults = b.under(&on(-1.0, &pallet()), &mut Silent).unwrap_err();
    assert_eq!(faults.list.len(), 5, "{faults:?}");
    let props = |by: &str, allows| Propped { by: by.to_owned(), allows }.under(20e3);
    assert!(props("", Some(30e3)).is_err());
    assert_eq!(props("Ana Ruiz", Some(30e3)).unwrap().status(), Status::Go);
    assert_eq!(props("Ana Ruiz", Some(10e3)).unwrap().status(), Status::NoGo);
    assert_eq!(props("Ana Ruiz", None).unwrap().status(), Status::CannotTell);
}

fn on(mass: f64, feet: &Feet) -> StandingLoad<'_> {
    StandingLoad { mass, size: feet.size(), feet: Some(feet) }
}
