//! Distances that are solved once and kept: never less than the exact one, the same whoever asks.

use crate::set_back_scan::{Dice, made_edge, made_rows, told};
use ground::set_back::{PRECISION, SetBack};
use ground::set_back_store::SetBackStore;
use ground::wheel_row::WheelRow;
use std::sync::Arc;

/// Rows with their forces times so much.
fn times(rows: &[WheelRow], share: f64) -> Vec<WheelRow> {
    let row = |r: &WheelRow| {
        let contacts = r.contacts.iter().map(|[at, force]| [*at, force * share]).collect();
        WheelRow { contacts, ..r.clone() }
    };
    rows.iter().map(row).collect()
}

/// More load on the same contacts never asks for less, nor does a row more.
#[test]
fn distances_grow_with_the_load() {
    let mut dice = Dice::new(3);
    let mut grown = 0;
    for _ in 0..12 {
        let (edge, rows) = (made_edge(&mut dice), made_rows(&mut dice));
        let mut last = 0.0;
        for share in [0.3, 0.7, 1.0, 1.5] {
            let Some(d) = told(&edge, &times(&rows, share)) else { break };
            // Found to a centimetre.
            assert!(d.equilibrium >= last - PRECISION, "{share}: {} {last} {edge:?} {rows:?}", d.equilibrium);
            grown += usize::from(d.equilibrium > last + 0.05);
            last = d.equilibrium;
        }
        let Some(one) = told(&edge, &rows[..1]) else { continue };
        let all = told(&edge, &rows).map_or(f64::INFINITY, |d| d.equilibrium);
        assert!(all >= one.equilibrium - PRECISION, "{all} {} {edge:?} {rows:?}", one.equilibrium);
    }
    assert!(grown > 10, "{grown}");
}

/// The kept distance against that of the load and edge as they are.
#[test]
fn what_is_kept_asks_no_less_than_the_exact_load_and_little_more() {
    let mut dice = Dice::new(8);
    let mut store = SetBackStore::default();
    let mut more = Vec::new();
    while more.len() < 24 {
        let (edge, rows) = (made_edge(&mut dice), made_rows(&mut dice));
        let Some(exact) = told(&edge, &rows) else { continue };
        let kind = store.kind(&edge).unwrap();
        match &store.ask(kind, &rows).unwrap().answer {
            SetBack::Distance(d) => {
                assert!(d.equilibrium >= exact.equilibrium - PRECISION, "{edge:?} {rows:?}");
                more.push(d.equilibrium - exact.equilibrium);
            }
            // A face that just stood, in an edge a shade deeper.
            SetBack::FaceFails { factor, required, .. } => assert!(factor / required > 0.97 || exact.factor < 1.55),
            other => panic!("{other:?}"),
        }
    }
    more.sort_by(f64::total_cmp);
    assert!(more[12] < 0.15 && more[23] < 1.0, "{more:?}");
}

#[test]
fn alike_loads_and_edges_are_solved_once_and_what_was_asked_before_does_not_show() {
    let mut dice = Dice::new(1);
    let (edge, rows) = loop {
        let (edge, rows) = (made_edge(&mut dice), made_rows(&mut dice));
        if rows.len() > 1 && told(&edge, &rows).is_some_and(|d| d.equilibrium > 0.1) {
            break (edge, rows);
        }
    };
    let mut store = SetBackStore::default();
    let kind = store.kind(&edge).unwrap();
    let first = store.ask(kind, &rows).unwrap();
    let again = store.ask(kind, &rows).unwrap();
    assert!(Arc::ptr_eq(&first, &again));
    // The same along another stretch of the edge.
    let mut along = rows.clone();
    along.iter_mut().flat_map(|r| &mut r.contacts).for_each(|c| c[0] += 7.0);
    assert!(Arc::ptr_eq(&first, &store.ask(kind, &along).unwrap()));
    assert_eq!(store.solved(), 1);
    let heavier = store.ask(kind, &times(&rows, 1.3)).unwrap();
    assert!(store.solved() == 2 && heavier.needed() >= first.needed());
    let mut deeper = edge.clone();
    deeper.drop.depth = first.edge.drop.depth;
    assert_eq!(store.kind(&deeper).unwrap(), store.kind(&deeper).unwrap());
    let mut other = SetBackStore::default();
    let kind = other.kind(&edge).unwrap();
    other.ask(kind, &times(&rows, 1.3)).unwrap();
    assert_eq!(*other.ask(kind, &rows).unwrap(), *first);
    assert_eq!(first.working.steps.last().unwrap().result.1.si, first.needed());
}

#[test]
fn faults_of_edges_and_rows_are_told_and_nothing_is_kept_of_them() {
    let mut dice = Dice::new(2);
    let (edge, rows) = (made_edge(&mut dice), made_rows(&mut dice));
    let mut store = SetBackStore::default();
    let mut broken = edge.clone();
    broken.drop.depth = f64::NAN;
    assert!(!store.kind(&broken).unwrap_err().is_empty());
    let kind = store.kind(&edge).unwrap();
    assert_eq!(store.ask(kind, &[]).unwrap_err().len(), 1);
    let mut row = rows[0].clone();
    row.contacts[0][1] = f64::NAN;
    row.across = -1.0;
    assert_eq!(store.ask(kind, &[row]).unwrap_err().len(), 2);
    assert_eq!(store.solved(), 0);
    // Wheels that carry nothing ask for nothing beyond the rule.
    let light = times(&rows, 0.0);
    if let SetBack::Distance(d) = &store.ask(kind, &light).unwrap().answer {
        assert_eq!(d.equilibrium, 0.0);
    }
}

/// Asked only whether, the answer is that of the exact question at every distance, whatever was asked before; and a load that
/// changes little is not solved anew.
#[test]
fn whether_they_may_stand_there_is_told_as_by_the_exact_question() {
    let mut dice = Dice::new(21);
    let (mut let_stand, mut refused, mut asked) = (0, 0, 0);
    let (mut whether, mut exact) = (SetBackStore::default(), SetBackStore::default());
    for _ in 0..6 {
        let (edge, rows) = (made_edge(&mut dice), made_rows(&mut dice));
        let (quick, kind) = (whether.kind(&edge).unwrap(), exact.kind(&edge).unwrap());
        for share in [1.0, 0.95, 1.07, 0.4] {
            let rows = times(&rows, share);
            let may = |answer: &SetBack, aside: f64| matches!(answer, SetBack::Distance(d) if d.from_crest <= aside);
            let known = exact.ask(kind, &rows).unwrap();
            let needed = if let SetBack::Distance(d) = &known.answer { d.from_crest } else { 1.0 };
            for aside in [0.5 * needed, needed - 0.02, needed + 1e-9, 1.4 * needed, 4.0 * needed] {
                let told = whether.ask_whether(quick, &rows, aside).unwrap();
                assert_eq!(may(&told.answer, aside), may(&known.answer, aside), "{aside} of {needed} {edge:?}");
                asked += 1;
                if may(&told.answer, aside) { let_stand += 1 } else { refused += 1 }
            }
        }
    }
    assert!(let_stand > 20 && refused > 20, "{let_stand} {refused}");
    assert!(whether.solved() < asked / 2, "{} of {asked}", whether.solved());
}
