//! The words that the template itself sets, by the names it uses.

use evidence::TextId;
use std::collections::BTreeMap;
use wording::{Wording, ui};

/// Name in the template and text id.
const NAMES: [(&str, TextId); 49] = [
    ("accepted", ui::ACCEPTED),
    ("assumed", ui::ASSUMED),
    ("area", ui::AREA),
    ("bearing-pressure", ui::BEARING_PRESSURE),
    ("briefed-operator", ui::BRIEFED_OPERATOR),
    ("cautions", ui::CAUTIONS),
    ("certainty", ui::CERTAINTY),
    ("changes", ui::CHANGES),
    ("changes-note", ui::CHANGES_NOTE),
    ("check", ui::CHECK),
    ("checked-by", ui::CHECKED_BY),
    ("date", ui::DATE),
    ("digest", ui::DIGEST),
    ("emergency", ui::EMERGENCY),
    ("figures", ui::FIGURES),
    ("findings", ui::FINDINGS),
    ("force", ui::FORCE),
    ("governs", ui::GOVERNS),
    ("inputs", ui::INPUTS),
    ("invented-data", ui::INVENTED_DATA),
    ("invented-data-note", ui::INVENTED_DATA_NOTE),
    ("lift", ui::LIFT),
    ("lifts", ui::LIFTS),
    ("load", ui::LOAD),
    ("name", ui::NAME),
    ("no-lifts", ui::NO_LIFTS),
    ("other-stands", ui::OTHER_STANDS),
    ("other-stands-note", ui::OTHER_STANDS_NOTE),
    ("plan-sheet", ui::PLAN_SHEET),
    ("planned-by", ui::PLANNED_BY),
    ("result", ui::RESULT),
    ("sign-off", ui::SIGN_OFF),
    ("sign-off-note", ui::SIGN_OFF_NOTE),
    ("signature", ui::SIGNATURE),
    ("stand", ui::STAND),
    ("steps", ui::STEPS),
    ("tolerance", ui::TOLERANCE),
    ("tolerance-note", ui::TOLERANCE_NOTE),
    ("tolerances", ui::TOLERANCES),
    ("value", ui::VALUE),
    ("verdict", ui::VERDICT),
    ("warnings", ui::WARNINGS),
    ("way", ui::WAY),
    ("what-to-do", ui::WHAT_TO_DO),
    ("where", ui::WHERE),
    ("wheel", ui::WHEEL),
    ("wheel-forces", ui::WHEEL_FORCES),
    ("working", ui::WORKING),
    ("working-note", ui::WORKING_NOTE),
];

/// Every word of the template in the reader's language.
pub(crate) fn template_words(wording: Wording) -> BTreeMap<&'static str, String> {
    NAMES.iter().map(|(name, id)| (*name, wording.text(*id))).collect()
}
