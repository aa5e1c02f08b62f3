//! Terzaghi's `N_γ`, which has no closed form. Tables in print are of two families that differ by up to four times
//! at small angles and by a sixth at large ones; whoever quotes "Terzaghi" may mean either.

use crate::{Prandtl, n_gamma_meyerhof};
use std::sync::LazyLock;

/// A family of tables: degrees and `N_γ`, rising.
#[derive(Debug, Clone, Copy)]
pub struct Table {
    /// Who prints it.
    pub citation: &'static str,
    rows: &'static [(f64, f64)],
    /// Of each row the share of Meyerhof's closed form, worked out once.
    shares: fn() -> &'static [f64],
}

/// Values of Kumbhojkar, as Das prints them (20° and 35° second hand, else from memory).
pub const KUMBHOJKAR: Table = Table {
    citation: "Das, Principles of Foundation Engineering, Table 3.1 (Kumbhojkar)",
    rows: &[
        (0.0, 0.0),
        (5.0, 0.14),
        (10.0, 0.56),
        (15.0, 1.52),
        (20.0, 3.64),
        (25.0, 8.34),
        (30.0, 19.13),
        (35.0, 45.41),
        (40.0, 115.31),
        (45.0, 325.34),
    ],
    shares: || {
        static SHARES: LazyLock<Vec<f64>> = LazyLock::new(|| shares(KUMBHOJKAR.rows));
        &SHARES
    },
};

/// Values read off Terzaghi's chart, as Bowles prints them (from memory).
pub const CHART: Table = Table {
    citation: "Bowles, Foundation Analysis and Design, Table 4-2 (Terzaghi's chart)",
    rows: &[
        (0.0, 0.0),
        (5.0, 0.5),
        (10.0, 1.2),
        (15.0, 2.5),
        (20.0, 5.0),
        (25.0, 9.7),
        (30.0, 19.7),
        (34.0, 36.0),
        (35.0, 42.4),
        (40.0, 100.4),
        (45.0, 297.5),
    ],
    shares: || {
        static SHARES: LazyLock<Vec<f64>> = LazyLock::new(|| shares(CHART.rows));
        &SHARES
    },
};

impl Table {
    /// `N_γ` at an angle: between rows the share of Meyerhof's closed form runs straight, so that the curve bends as
    /// such curves do; a straight line between rows would lie above it. None outside the table.
    pub fn n_gamma(&self, p: &Prandtl) -> Option<f64> {
        let degrees = p.friction.to_degrees();
        // The last row holds for an angle that went to radians and back.
        let last = self.rows.last()?.0;
        let degrees = if degrees > last && degrees < last + 1e-9 { last } else { degrees };
        let above = self.rows.iter().position(|row| row.0 >= degrees)?.max(1);
        let (from, to) = (self.rows[above - 1].0, self.rows[above].0);
        let shares = (self.shares)();
        let t = (degrees - from) / (to - from);
        Some((shares[above - 1] + t * (shares[above] - shares[above - 1])) * n_gamma_meyerhof(p))
    }
}

/// At no friction both are zero: the share of the next row holds.
fn shares(rows: &[(f64, f64)]) -> Vec<f64> {
    let share = |&(degrees, n): &(f64, f64)| n / n_gamma_meyerhof(&Prandtl::of(f64::to_radians(degrees)));
    let mut all: Vec<f64> = rows.iter().map(share).collect();
    all[0] = all[1];
    all
}

/// The lower of both tables.
pub fn least(p: &Prandtl) -> Option<f64> {
    Some(KUMBHOJKAR.n_gamma(p)?.min(CHART.n_gamma(p)?))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_row_is_met_and_between_rows_it_rises() {
        for table in [KUMBHOJKAR, CHART] {
            for &(degrees, n) in table.rows {
                let got = table.n_gamma(&Prandtl::of(degrees.to_radians()));
                assert!(got.is_some_and(|g| (g - n).abs() < 1e-9), "{degrees}: {got:?}");
            }
            let at = |k: u32| table.n_gamma(&Prandtl::of(f64::from(k).to_radians() * 0.1));
            assert!((1..=450).all(|k| at(k) > at(k - 1)), "{}", table.citation);
            assert_eq!(table.n_gamma(&Prandtl::of(0.8)), None, "45.8° is off the table");
        }
    }
}
