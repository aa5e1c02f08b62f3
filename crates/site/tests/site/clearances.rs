//! Distances to lines in both regimes, in feet as the rules print them.

use quantity::kilovolts;
use site::clearance::{Regime, planning_zone, required};

const FOOT: f64 = 0.3048;

/// 29 CFR 1926.600(a)(6): 10 ft up to 50 kV, 0.4 in more for each kV above. By hand:
/// 69 kV: 10 ft + 7.6 in; 132 kV: 10 ft + 32.8 in; 345 kV: 10 ft + 118 in; 500 kV: 10 ft + 180 in.
/// 29 CFR 1926.1408, Table A, as printed in feet.
#[test]
fn val_clearance_of_both_regimes() {
    let rows: [(f64, f64, f64); 6] = [
        (11.0, 10.0, 10.0),
        (33.0, 10.0, 10.0),
        (69.0, 10.0 + 7.6 / 12.0, 15.0),
        (132.0, 10.0 + 32.8 / 12.0, 15.0),
        (345.0, 10.0 + 118.0 / 12.0, 20.0),
        (500.0, 10.0 + 180.0 / 12.0, 25.0),
    ];
    for (kv, forks, hung) in rows {
        assert!((required(kilovolts(kv), Regime::Forks).unwrap() / FOOT - forks).abs() < 1e-9, "{kv} kV, forks");
        assert!((required(kilovolts(kv), Regime::HungLoad).unwrap() / FOOT - hung).abs() < 1e-9, "{kv} kV, hung");
    }
}

/// Every operating row of the two clauses in `../shared/reference/power_line_clearance.csv`.
#[test]
fn val_clearance_rows_of_the_reference_table() {
    let file =
        std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../../../shared/reference/power_line_clearance.csv");
    let Ok(text) = std::fs::read_to_string(file) else {
        assert!(std::env::var_os("CI").is_none(), "reference data missing");
        eprintln!("left out: needs the reference data folder beside the project");
        return;
    };
    let mut rows = 0;
    for line in text.lines().skip(1) {
        let regime = if line.starts_with("29 CFR 1926.600(a)(6)(i),") || line.starts_with("29 CFR 1926.600(a)(6)(ii),")
        {
            Regime::Forks
        } else if line.starts_with("29 CFR 1926.1408 Table A") {
            Regime::HungLoad
        } else {
            continue;
        };
        // Columns from `operating` on hold no quotes in these rows.
        let tail: Vec<&str> = line.split("operating,").nth(1).unwrap().split(',').collect();
        let over: f64 = tail[0].parse().unwrap();
        let base: f64 = tail[2].parse::<f64>().unwrap() * FOOT;
        let per_kv: f64 = tail[3].parse::<f64>().unwrap() * 0.0254;
        let up_to = tail[1].parse().unwrap_or(over + 700.0);
        for kv in [over + 0.5, f64::midpoint(over, up_to), up_to] {
            let want = base + per_kv * (kv - 50.0).max(0.0);
            let got = required(kilovolts(kv), regime).unwrap();
            assert!((got - want).abs() < 1e-3, "{kv} kV {regime:?}: {got} against {want}");
        }
        rows += 1;
    }
    assert_eq!(rows, 8, "a row went missing");
}

#[test]
fn nothing_is_invented_beyond_the_table() {
    assert_eq!(required(kilovolts(1000.1), Regime::HungLoad), None);
    assert_eq!(required(kilovolts(f64::NAN), Regime::Forks), None);
    assert_eq!(required(kilovolts(-1.0), Regime::Forks), None);
    assert!((planning_zone(kilovolts(350.0)) / FOOT - 20.0).abs() < 1e-9);
    assert!((planning_zone(kilovolts(351.0)) / FOOT - 50.0).abs() < 1e-9);
}
