//! Distance from an edge by rule.

use crate::tables::{number, shared};
use evidence::{Silent, Source, Working};
use ground::edge_rules::{Drop, EdgeGround, LineGoverns, NamedSlope, planning_line};
use ground::input_fault::InputFault;

fn drop(depth: f64, batter: f64, ground: EdgeGround) -> Drop {
    Drop { depth, batter, ground, named: None }
}

#[test]
fn the_line_rises_from_the_toe_and_a_metre_stays_in_rock() {
    let line = |d: &Drop| planning_line(d, &mut Silent).unwrap();
    let firm = line(&drop(3.0, 0.0, EdgeGround::Firm));
    assert_eq!((firm.from_crest, firm.governs), (4.5, LineGoverns::Line));
    let poor = line(&drop(3.0, 1.0, EdgeGround::Poor));
    assert_eq!((poor.from_crest, poor.from_toe), (5.0, 6.0));
    let rock = line(&drop(3.0, 0.0, EdgeGround::Rock));
    assert_eq!((rock.from_crest, rock.governs), (1.0, LineGoverns::Least));
    let flat = line(&drop(1.0, 3.0, EdgeGround::Firm));
    assert_eq!((flat.from_crest, flat.governs), (1.0, LineGoverns::Least));
    let kerb = line(&drop(0.3, 0.0, EdgeGround::Rock));
    assert_eq!((kerb.from_crest, kerb.governs), (0.0, LineGoverns::Nothing));
    assert_eq!(line(&drop(0.4, 0.0, EdgeGround::Rock)).from_crest, 1.0);
    assert!(line(&drop(6.2, 0.0, EdgeGround::Rock)).engineer && !firm.engineer);
}

#[test]
fn a_steeper_line_needs_a_name_and_keeps_the_metre() {
    let named = |ratio, person: &str| Drop {
        named: Some(NamedSlope { ratio, person: person.into() }),
        ..drop(3.0, 0.0, EdgeGround::Firm)
    };
    let mut working = Working::default();
    let steep = planning_line(&named(0.25, "M. Invented"), &mut working).unwrap();
    assert_eq!(steep.from_crest, 1.0);
    assert!(matches!(&working.steps[0].source, Source::Person { name, .. } if name == "M. Invented"));
    assert_eq!(working.steps[0].result.1.si, 1.0);
    let faults = planning_line(&named(f64::NAN, " "), &mut Silent).unwrap_err();
    assert_eq!(faults.len(), 2, "all at once");
    assert!(faults.iter().any(|f| matches!(f, InputFault::NoName { .. })));
}

#[test]
fn nothing_is_told_of_a_drop_without_depth() {
    for depth in [0.0, -2.0, f64::NAN, f64::INFINITY, 300.0] {
        assert!(planning_line(&drop(depth, 0.0, EdgeGround::Firm), &mut Silent).is_err(), "{depth}");
    }
}

/// The rule for excavations without a load is nowhere steeper than the line here for the same soil.
#[test]
fn val_planning_line_against_the_slopes_of_table_b_1() {
    let Some(rows) = shared("excavation_slopes.csv") else { return };
    assert_eq!(rows.len(), 5);
    for row in rows {
        let ground = if row[0] == "stable rock" { EdgeGround::Rock } else { EdgeGround::Firm };
        let (ratio, depth) = (number(&row, 1), number(&row, 5));
        let ours = planning_line(&drop(depth, 0.0, ground), &mut Silent).unwrap();
        assert!(ours.from_toe >= ratio * depth - 1e-9, "{}: {} of {}", row[0], ours.from_toe, ratio * depth);
        assert!(ours.engineer == (depth > 6.096), "20 ft, printed as 6.1 m: {depth}");
    }
    let Some(rules) = shared("excavation_edge_rules.csv") else { return };
    let rule = rules.iter().find(|r| r[0].starts_with("planning rule")).unwrap();
    assert!(rule[1].starts_with("depth x slope ratio"), "the rule this is");
    let deep = rules.iter().find(|r| r[0].starts_with("excavation deeper")).unwrap();
    assert!((number(deep, 1) * 0.3048 - ground::edge_rules::ENGINEER_DEPTH).abs() < 1e-9);
}
