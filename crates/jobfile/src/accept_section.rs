//! `[[accept]]` and `[[lift.accept]]`: what named persons answer for.

use crate::job_file::all;
use crate::quantity_value::Bound::UpTo;
use crate::table::Reader;
use crate::text;
use planning::{Acceptance, Matter};
use quantity::{Dimension as D, pascals};

const MATTERS: [(&str, Matter); 6] = [
    ("ground-strength", Matter::GroundStrength),
    ("edges", Matter::Edges),
    ("buried", Matter::Buried),
    ("obstacles", Matter::Obstacles),
    ("people", Matter::People),
    ("route", Matter::Route),
];

pub(crate) fn acceptances(around: &Reader<'_>) -> Option<Vec<Acceptance>> {
    let read = around.tables("accept").iter().map(|t| t.not_given_while_open(acceptance)).collect::<Vec<_>>();
    all(read.into_iter().filter(|(read, open)| read.is_none() || !open).map(|(read, _)| read).collect())
}

fn acceptance(t: &Reader<'_>) -> Option<Acceptance> {
    let matter = t.choice("matter", &MATTERS);
    let by = t.text("by", "by = \"D. Ground, site engineer\"");
    let statement = t.text("statement", "statement = \"Plate load test of 3 March, 250 kPa.\"");
    let strength = t.decision_or_none("strength", D::Pressure, UpTo(1e8));
    t.done();
    if matter.is_some_and(|m| m != Matter::GroundStrength) && t.has("strength") {
        t.fault("strength", text::STRENGTH_MISPLACED, None);
    }
    Some(Acceptance { matter: matter?, by: by?, statement: statement?, strength: strength.map(pascals) })
}
