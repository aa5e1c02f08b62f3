//! Tables in the code against the reference tables, row by row.

use crate::reference::reference;
use ground::duty_class::DutyClass;
use ground::forklift::{CLASSES, HORIZONTAL, PNEUMATIC, SOLID, WHEEL_PRINT};
use ground::plank::{Plank, longest_plank_span};

fn number(text: &str) -> f64 {
    text.parse().unwrap()
}

#[test]
fn val_forklift_classes_row_by_row() {
    let Some(rows) = reference("forklift_floor_classes_en1991.csv") else { return };
    assert_eq!(rows.len(), 6, "a reference case went missing");
    for (row, ours) in rows.iter().zip(CLASSES) {
        assert_eq!(row[0], ours.name);
        let kn = [ours.net_weight, ours.hoisting, ours.axle].map(|n| n / 1e3);
        let m = [ours.axle_width, ours.width, ours.length];
        for (theirs, ours) in row[1..7].iter().zip(kn.into_iter().chain(m)) {
            assert!((number(theirs) - ours).abs() < 1e-9, "{row:?}");
        }
        assert_eq!(row[7], format!("{0}x{0}", WHEEL_PRINT * 1e3));
        assert_eq!([number(&row[8]), number(&row[9]), number(&row[10])], [PNEUMATIC, SOLID, HORIZONTAL]);
        assert!((ours.horizontal() - 0.3 * ours.axle).abs() < 1e-9);
    }
}

#[test]
fn val_duty_classes_row_by_row() {
    let Some(rows) = reference("platform_duty_classes.csv") else { return };
    let rows: Vec<_> = rows.iter().filter(|r| r[0].starts_with("EN 12811")).collect();
    assert_eq!(rows.len(), 6, "a reference case went missing");
    for row in rows {
        let ours = DutyClass::of(row[1].parse().unwrap()).unwrap();
        let loads = [ours.even, ours.on_half_metre, ours.on_fifth_metre].map(|n| n / 1e3);
        assert_eq!(loads, [number(&row[2]), number(&row[4]), number(&row[5])]);
        match ours.on_part {
            Some((load, share)) => assert_eq!([load / 1e3, share], [number(&row[6]), number(&row[7])]),
            None => assert!(row[6].is_empty() && row[7].is_empty()),
        }
    }
}

#[test]
fn val_plank_spans_row_by_row() {
    let Some(rows) = reference("scaffold_plank_spans.csv") else { return };
    assert_eq!(rows.len(), 5, "a reference case went missing");
    for row in rows {
        let plank = if row[0].starts_with("full") { Plank::FullThickness } else { Plank::NominalThickness };
        let pascals = number(&row[1]) * 47.880_258_98;
        let span = longest_plank_span(plank, pascals).unwrap();
        assert!((span - number(&row[3])).abs() < 5e-4, "{row:?}");
        let heavier = longest_plank_span(plank, pascals * 1.01);
        assert!(heavier.is_none_or(|s| s < span), "nothing is read between rows");
    }
    assert_eq!(longest_plank_span(Plank::NominalThickness, 75.0 * 47.88), None);
    assert_eq!(longest_plank_span(Plank::NominalThickness, f64::NAN), None);
}
