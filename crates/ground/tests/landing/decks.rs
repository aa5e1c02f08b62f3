//! Pallets on timber decks.

use evidence::{Silent, Status};
use ground::beam::{Beam, Span};
use ground::carried::{Carried, Part, governing, largest_that_fits};
use ground::deck::{Boards, Deck, Joists};
use ground::pallet_feet::{Feet, Sharing};
use ground::section::{Rectangle, timber_capacity};
use ground::timber::{Timber, TimberUse};

fn deck(board_spans: usize, joist_spans: usize, beside: f64) -> Deck {
    let timber = Timber::class("C24").unwrap();
    let of = |breadth, depth| {
        let section = Rectangle { breadth, depth };
        let capacity = timber_capacity(section, timber, TimberUse::default(), &mut Silent).unwrap();
        (capacity, timber.stiffness * section.second_moment())
    };
    let (board, board_stiffness) = of(0.225, 0.038);
    let (joist, stiffness) = of(0.075, 0.225);
    Deck {
        boards: Boards { capacity: board, stiffness: board_stiffness, breadth: 0.225, spans: board_spans },
        joists: Joists {
            beam: Beam::equal(joist_spans, Span { length: 2.4, stiffness }).unwrap(),
            capacity: joist,
            spacing: 0.4,
        },
        own: 400.0,
        beside,
    }
}

fn pallet(sharing: Sharing) -> Feet {
    Feet::new((1.2, 1, 1.2), (1.0, 3, 0.1), sharing).unwrap()
}

fn of(all: &[Carried], part: Part) -> f64 {
    all.iter().find(|c| c.part == part).unwrap().demand.si
}

#[test]
fn a_runner_over_a_simple_board_is_a_strip_in_the_middle_of_its_span() {
    let deck = Deck { own: 0.0, ..deck(1, 1, 0.0) };
    let answer = deck.under(10e3, &pallet(Sharing::Even), &mut Silent).unwrap();
    // A third of the load, 225 of 1200 mm of the runner on one board, 100 mm wide over 400 mm: F/4 (l − c/2). The
    // next runner, 450 mm on, is then not on the board.
    let force = 1.5 * 10e3 / 3.0 * 0.225 / 1.2;
    let exact = force / 4.0 * (0.4 - 0.05);
    let got = of(&answer.carried, Part::BoardMoment);
    assert!((exact..exact * 1.006).contains(&got), "{got} {exact}");
}

#[test]
fn a_joist_gets_the_runner_over_it_and_what_its_neighbours_leave() {
    let deck = Deck { own: 0.0, ..deck(1, 1, 0.0) };
    let answer = deck.under(10e3, &pallet(Sharing::Even), &mut Silent).unwrap();
    // Middle runner over the joist: its mean under the tent is 1 − 25/400; the others, 400 to 500 mm off, but for
    // an edge of them, are on other joists.
    let exact = (1.0 - 0.025 / 0.4) / 3.0;
    assert!((exact..exact + 0.01).contains(&answer.joist_share), "{}", answer.joist_share);
    let force = 1.5 * 10e3 * answer.joist_share;
    let moment = force / 4.0 * (2.4 - 0.6);
    let got = of(&answer.carried, Part::JoistMoment);
    assert!((moment..moment * 1.006).contains(&got), "{got} {moment}");
    assert_eq!(answer.hold_down, 0.0, "a simple joist lifts nowhere");
}

#[test]
fn more_of_anything_is_never_less_for_the_deck() {
    let demands = |deck: &Deck, load: f64, sharing| deck.under(load, &pallet(sharing), &mut Silent).unwrap().carried;
    let base = demands(&deck(2, 2, 0.0), 8e3, Sharing::Even);
    let cases = [
        ("load", demands(&deck(2, 2, 0.0), 12e3, Sharing::Even)),
        ("beside", demands(&deck(2, 2, 2e3), 8e3, Sharing::Even)),
    ];
    for (what, more) in cases {
        for (a, b) in base.iter().zip(&more) {
            assert!(b.demand.si >= a.demand.si * (1.0 - 0.006), "{what}: {a:?} {b:?}");
        }
    }
    let limp = demands(&deck(2, 2, 0.0), 8e3, Sharing::ByWidth);
    assert!(of(&limp, Part::BoardMoment) > 1.4 * of(&base, Part::BoardMoment), "the middle runner takes half");
    let held = deck(2, 2, 0.0).under(8e3, &pallet(Sharing::Even), &mut Silent).unwrap().hold_down;
    assert!(held > 0.0, "two spans loaded on one lift at the far end");
}

#[test]
fn the_largest_load_fits_and_a_little_more_does_not() {
    let deck = deck(1, 1, 1e3);
    let carried = |load| deck.under(load, &pallet(Sharing::ByWidth), &mut Silent).unwrap().carried;
    let most = largest_that_fits(30e3, carried).unwrap();
    assert!(carried(most).iter().all(|c| c.status() == Status::Go));
    let beyond = carried(most + 31.0);
    assert_eq!(governing(&beyond).unwrap().status(), Status::NoGo, "{most}");
    assert!(most > 1e3 && most < 29e3, "{most}");
}

#[test]
fn every_fault_of_a_deck_is_told_at_once() {
    let mut wrong = deck(1, 1, 0.0);
    wrong.boards.breadth = 225.0;
    wrong.boards.spans = 0;
    wrong.joists.spacing = f64::NAN;
    wrong.own = -1.0;
    let faults = wrong.under(-5.0, &pallet(Sharing::Even), &mut Silent).unwrap_err();
    assert_eq!(faults.list.len(), 5, "{faults:?}");
}
