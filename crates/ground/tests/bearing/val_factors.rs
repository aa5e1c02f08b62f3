//! Bearing capacity factors against tables in the reference data folder and against groundhog.

use crate::tables::{numbers, reference, rows};
use ground::terzaghi_tables::{CHART, KUMBHOJKAR};
use ground::{Prandtl, TerzaghiFactors, n_gamma_en1997, n_gamma_hansen, n_gamma_meyerhof, n_gamma_vesic};

/// Half a unit of the last digit printed, and a little for its rounding.
const LAST_DIGIT: f64 = 0.000_51;

#[test]
fn val_bearing_factors_by_author_all_rows() {
    let Some(text) = reference("bearing_capacity_factors.csv") else { return };
    let rows = numbers(&text);
    assert_eq!(rows.len(), 51, "a row went missing");
    for row in rows {
        let p = Prandtl::of(row["phi_deg"].to_radians());
        let mut all = vec![
            ("nc_prandtl", p.n_c),
            ("nq_reissner", p.n_q),
            ("ngamma_meyerhof_1963", n_gamma_meyerhof(&p)),
            ("ngamma_hansen_1970", n_gamma_hansen(&p)),
            ("ngamma_vesic_1973", n_gamma_vesic(&p)),
            ("ngamma_en1997_annex_d", n_gamma_en1997(&p)),
        ];
        match TerzaghiFactors::of(&p) {
            Some(t) => all.extend([("nc_terzaghi_1943", t.n_c), ("nq_terzaghi_1943", t.n_q)]),
            None => assert!(row["phi_deg"] > 45.0),
        }
        for (column, got) in all {
            assert!((got - row[column]).abs() <= LAST_DIGIT, "{column} at {}: {got}", row["phi_deg"]);
        }
    }
}

/// Both families of tables, every row; the lower of them is what counts. The value that Gunaratne quotes at 15° lies between.
#[test]
fn val_terzaghi_n_gamma_tables_all_rows() {
    let Some(text) = reference("terzaghi_ngamma.csv") else { return };
    let mut seen = 0;
    for row in rows(&text) {
        let (degrees, n): (f64, f64) = (row["phi_deg"].parse().unwrap(), row["ngamma"].parse().unwrap());
        let p = Prandtl::of(degrees.to_radians());
        let counted = TerzaghiFactors::of(&p).unwrap().n_gamma;
        let table = match row["table"].as_str() {
            t if t.starts_with("Kumbhojkar") => KUMBHOJKAR,
            t if t.starts_with("Terzaghi chart") => CHART,
            _ => {
                assert!(counted < n, "{degrees}: {counted}");
                continue;
            }
        };
        seen += 1;
        assert!((table.n_gamma(&p).unwrap() - n).abs() < 1e-9, "{degrees}");
        assert!(counted <= n + 1e-9, "{degrees}: {counted}");
    }
    assert_eq!(seen, 21, "a row went missing");
}

#[test]
fn val_bearing_factors_groundhog() {
    let rows = numbers(include_str!("../../../../validation/ground/bearing/factors.csv"));
    assert_eq!(rows.len(), 61);
    for row in rows {
        let p = Prandtl::of(row["friction_deg"].to_radians());
        let pairs = [
            (p.n_q, row["n_q"]),
            (n_gamma_vesic(&p), row["n_gamma_vesic"]),
            (n_gamma_meyerhof(&p), row["n_gamma_meyerhof"]),
        ];
        for (got, there) in pairs {
            assert!((got / there - 1.0).abs() < 1e-8, "{}: {got} {there}", row["friction_deg"]);
        }
    }
}
