//! Whose a machine of the job is, what was read on it, and when it was examined.

use crate::job_file::date;
use crate::placeholder::is_open;
use crate::table::{Faulty, Reader};
use crate::text;
use planning::{CabSeen, Examination, Kept, Seen};

const KEPT: [(&str, Kept); 3] = [("own", Kept::Own), ("rented", Kept::Rented), ("unknown", Kept::Unknown)];
const CAB: [(&str, CabSeen); 3] =
    [("sound", CabSeen::Sound), ("faulty", CabSeen::Faulty), ("not-seen", CabSeen::NotSeen)];

/// `kept`; left out: not stated.
pub(crate) fn kept(t: &Reader<'_>) -> Result<Option<Kept>, Faulty> {
    t.optional("kept").map(|node| t.as_choice(node, "kept", &KEPT).ok_or(Faulty)).transpose()
}

/// `cab`; left out: not seen.
pub(crate) fn cab(t: &Reader<'_>) -> Option<CabSeen> {
    t.optional("cab").map_or(Some(CabSeen::NotSeen), |node| t.as_choice(node, "cab", &CAB))
}

/// `seen`: what was read on the machine itself. Keys left out: not read.
pub(crate) fn seen(t: &Reader<'_>) -> Result<Option<Seen>, Faulty> {
    let Some(s) = t.table_or_none("seen") else { return if t.has("seen") { Err(Faulty) } else { Ok(None) } };
    let by = s.text("by", "by = \"J. Operator\"");
    let date = date(&s, "date");
    let serial = s.text_or_none("serial");
    let tyres = s.text_or_none("tyres");
    let counterweight = s.text_or_none("counterweight");
    let options = options(&s);
    let chart_in_cab = s.yes_no("chart_in_cab");
    let manual_in_cab = s.yes_no("manual_in_cab");
    let chart = s.text_or_none("chart");
    s.done();
    Ok(Some(Seen {
        by: by.ok_or(Faulty)?,
        date: date.ok_or(Faulty)?,
        serial,
        tyres,
        counterweight,
        options: options?,
        chart_in_cab,
        manual_in_cab,
        chart,
    }))
}

/// `options`: a list of texts; left out: not stated.
pub(crate) fn options(t: &Reader<'_>) -> Result<Option<Vec<String>>, Faulty> {
    let Some(node) = t.optional("options") else { return Ok(None) };
    let items = t.as_list(node, "options").ok_or(Faulty)?;
    items
        .iter()
        .map(|item| t.as_text(item, "options").map(str::to_owned).ok_or(Faulty))
        .collect::<Result<_, _>>()
        .map(Some)
}

/// `examined`: the last thorough examination.
pub(crate) fn examined(t: &Reader<'_>) -> Result<Option<Examination>, Faulty> {
    let Some(e) = t.table_or_none("examined") else { return if t.has("examined") { Err(Faulty) } else { Ok(None) } };
    let made = date(&e, "date");
    let next = date(&e, "next");
    let by = e.text("by", "by = \"R. Examiner, inspection body\"");
    e.done();
    let (date, next) = (made.ok_or(Faulty)?, next.ok_or(Faulty)?);
    // Days as year-month-day stand in the order of their text.
    let written = !is_open(&date) && !is_open(&next);
    if written && next < date {
        e.fault("next", text::EXAMINED_ORDER.with("date", &date).with("next", &next), None);
        return Err(Faulty);
    }
    Ok(Some(Examination { date, next, by: by.ok_or(Faulty)? }))
}
