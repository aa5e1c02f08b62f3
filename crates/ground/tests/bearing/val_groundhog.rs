//! Bearing and effective areas against the Python library groundhog (`validation/ground/bearing/outside.py`).

use crate::cases::{by, drained, load, rectangle, undrained};
use crate::tables::numbers;
use ground::{BearingCase, Footprint, Load, Method};

/// Ten digits are kept.
const KEPT: f64 = 1e-8;

#[test]
fn val_bearing_drained_groundhog() {
    let rows = numbers(include_str!("../../../../validation/ground/bearing/drained.csv"));
    assert_eq!(rows.len(), 150);
    let (mut leaning, mut sloping) = (0, 0);
    for row in rows {
        let base = rectangle(row["width_m"], row["length_m"]);
        let strength = drained(0.0, row["friction_deg"]);
        let case = BearingCase {
            load: load(1e3 * row["vertical_kn"], [1e3 * row["horizontal_kn"], 0.0], [0.0; 2]),
            overburden: 1e3 * row["overburden_kpa"],
            slope: row["slope_deg"].to_radians(),
            ..BearingCase::on_the_surface(base, 0.0, strength, 1e3 * row["unit_weight_kn_m3"])
        };
        let got = by(&case, Method::Hansen).unwrap().ultimate / 1e3;
        assert!((got / row["ultimate_kpa"] - 1.0).abs() < KEPT, "{row:?}: {got}");
        leaning += usize::from(row["horizontal_kn"] > 0.0);
        sloping += usize::from(row["slope_deg"] > 0.0);
    }
    assert!(leaning > 40 && sloping > 40, "{leaning} {sloping}");
}

#[test]
fn val_bearing_undrained_groundhog() {
    let rows = numbers(include_str!("../../../../validation/ground/bearing/undrained.csv"));
    assert_eq!(rows.len(), 150);
    for row in rows {
        let base = rectangle(row["width_m"], row["length_m"]);
        let case = BearingCase {
            load: load(1e3, [0.0, 1e3 * row["horizontal_kn"]], [0.0; 2]),
            overburden: 1e3 * row["overburden_kpa"],
            slope: row["slope_deg"].to_radians(),
            ..BearingCase::on_the_surface(base, 0.0, undrained(1e3 * row["strength_kpa"]), 18e3)
        };
        let got = by(&case, Method::Hansen).unwrap().ultimate / 1e3;
        assert!((got / row["ultimate_kpa"] - 1.0).abs() < KEPT, "{row:?}: {got}");
        // EN 1997-1 has the same inclination: i_c there is one less ours.
        let level = BearingCase { slope: 0.0, overburden: 0.0, ..case };
        let i_c = by(&level, Method::En1997).unwrap().ultimate
            / by(&BearingCase { load: Load::default(), ..level }, Method::En1997).unwrap().ultimate;
        assert!((1.0 - i_c - row["i_c"]).abs() < KEPT, "{row:?}: {i_c}");
    }
}

#[test]
fn val_effective_areas_groundhog() {
    let rows = numbers(include_str!("../../../../validation/ground/bearing/areas.csv"));
    assert_eq!(rows.len(), 100);
    for row in rows {
        let e = rectangle(row["width_m"], row["length_m"])
            .effective(&load(1.0, [0.0; 2], [row["e_width_m"], -row["e_length_m"]]))
            .unwrap();
        assert!((e.area - row["area_m2"]).abs() < KEPT, "{row:?}");
        let round = Footprint::Round { diameter: 2.0 * row["radius_m"] };
        let e = round.effective(&load(1.0, [0.0; 2], [0.6 * row["e_m"], 0.8 * row["e_m"]])).unwrap();
        assert!((e.area - row["round_area_m2"]).abs() < KEPT, "{row:?}: {}", e.area);
        assert!((e.width - row["round_width_m"]).abs() < KEPT && (e.length - row["round_length_m"]).abs() < KEPT);
    }
}
