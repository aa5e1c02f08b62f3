//! Presumed bearing values against the reference data folder, row by row.

use crate::tables::{reference, rows};
use ground::Refusal;
use ground::presumed::{TABLE, Under};

/// Of a range the low end counts: "over 600" and "200 to 600" have one, "under 200" has none.
fn low_end(value: &str) -> Option<f64> {
    let number = value.strip_prefix("over ").or_else(|| value.split(" to ").next()).unwrap_or(value);
    number.parse().ok()
}

/// Rows for ground that nobody looked at, and for fill: refused, whatever they give.
const REFUSED: [&str; 2] = ["no determination made", "filled ground or loam"];

#[test]
fn val_presumed_values_all_rows() {
    let Some(text) = reference("presumed_bearing_values.csv") else { return };
    let rows = rows(&text);
    assert_eq!(rows.len(), TABLE.len(), "a row went missing");
    for row in rows {
        let ours = TABLE.iter().find(|p| p.code.citation() == row["code"] && p.soil == row["soil"]);
        let got = ours.unwrap().allowable(Under::PadOrMat { width: 1.0 }, &mut evidence::Silent);
        match low_end(&row["value_kpa"]) {
            Some(kpa) if kpa > 0.0 && !REFUSED.contains(&row["soil"].as_ref()) => {
                assert_eq!(got, Ok(1e3 * kpa), "{}", row["soil"]);
            }
            _ => assert_eq!(got, Err(Refusal::NothingPresumed), "{}", row["soil"]),
        }
    }
}
