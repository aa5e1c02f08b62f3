//! `[[line]]`: overhead lines.

use crate::job_file::all;
use crate::limits::{HEIGHT, SITE, STAND_TO_LINE};
use crate::node::Value;
use crate::quantity_value::Bound::{UpTo, ZeroTo};
use crate::schema_notes::Kind;
use crate::table::{Faulty, Reader};
use crate::text;
use geometry::{DVec3, Segment, distance_point_segment};
use planning::Lift;
use quantity::{Dimension as D, Voltage, kilovolts, metres};
use site::{DeadConfirmation, Insulation, PowerLine, Span};

pub(crate) fn lines(root: &Reader<'_>) -> Option<Vec<PowerLine>> {
    all(root.tables("line").iter().map(line).collect())
}

/// Lines far from every stand would pass as "far" in other coordinates: they are refused.
pub(crate) fn near(root: &Reader<'_>, lines: &[PowerLine], lifts: &[Lift]) {
    let flat = |p: DVec3| DVec3::new(p.x, p.y, 0.0);
    for line in lines {
        let spans = line.spans.iter().map(|s| Segment { a: flat(s.from), b: flat(s.to) });
        let course = line.course.windows(2).map(|w| Segment { a: w[0].extend(0.0), b: w[1].extend(0.0) });
        let distance = spans
            .chain(course)
            .flat_map(|s| {
                lifts
                    .iter()
                    .filter(|l| l.stand.is_chosen())
                    .map(move |l| distance_point_segment(l.stand.at.extend(0.0), &s))
            })
            .fold(f64::INFINITY, f64::min);
        if distance.is_finite() && distance > STAND_TO_LINE {
            let message = text::LINE_FAR.with("line", &line.name).with("distance", metres(distance));
            root.fault("line", message, Some(text::HINT_ONE_SYSTEM.message()));
        }
    }
}

fn line(t: &Reader<'_>) -> Option<PowerLine> {
    let name = t.text("name", "name = \"Line along the road\"");
    let voltage = voltage(t);
    let spans = spans(t);
    let unit = t.list_unit();
    let course = t.optional("course").map(|node| {
        let certainty = t.sourced(node, "course");
        let points = t.as_points(node, "course", unit.as_deref(), 2, SITE)?;
        t.note("course", node, certainty?);
        Some(points)
    });
    let survey_error = t.si("survey_error", D::Length, ZeroTo(50.0));
    let swing = t.si("swing", D::Length, ZeroTo(50.0));
    let (dead, nobody) = t.not_given_while_open(|t| t.table_or_none("dead").map(|d| confirmation(&d)));
    let (covered, unnamed) = t.not_given_while_open(|t| t.table_or_none("insulated").map(|i| insulation(&i)));
    t.done();

    let course = match course {
        None => Vec::new(),
        Some(read) => read?,
    };
    let spans = spans?;
    let name = name?;
    if spans.is_empty() && course.is_empty() {
        t.fault(
            "span",
            text::LINE_NOWHERE.with("line", &name),
            Some(text::HINT_EXAMPLE.with("example", "[[line.span]]")),
        );
        return None;
    }
    let dead = match dead {
        None => None,
        // Live while nobody is named.
        Some(read) => Some(read?).filter(|_| !nobody),
    };
    let insulated = match covered {
        None => None,
        Some(read) => Some(read?).filter(|_| !unnamed),
    };
    Some(PowerLine {
        name,
        voltage: voltage.ok()?,
        spans,
        course,
        survey_error: metres(survey_error?),
        swing: metres(swing?),
        source: crate::thing_section::said_by(t, None),
        dead,
        insulated,
    })
}

/// A voltage, or the word "unknown". Left out is a fault: not known must be said.
fn voltage(t: &Reader<'_>) -> Result<Option<Voltage>, Faulty> {
    let node = t.required("voltage", "voltage = \"11 kV\" or voltage = \"unknown\"").ok_or(Faulty)?;
    t.expects("voltage", || Kind::Words(vec![String::from("unknown")]));
    if node.value == Value::Text(String::from("unknown")) {
        return Ok(None);
    }
    let fact = t.as_fact(node, "voltage", D::Voltage, UpTo(2e6)).ok_or(Faulty)?;
    Ok(Some(kilovolts(fact.si / 1000.0)))
}

fn spans(t: &Reader<'_>) -> Option<Vec<Span>> {
    all(t.tables("span").iter().map(span).collect())
}

fn span(t: &Reader<'_>) -> Option<Span> {
    let from = t.fact_point_3("from", "from = [\"0 m\", \"0 m\", \"9.20 m\"]", SITE);
    let to = t.fact_point_3("to", "to = [\"40 m\", \"0 m\", \"9.00 m\"]", SITE);
    let sag = t.si("sag", D::Length, ZeroTo(200.0));
    t.done();
    let (from, to, sag) = (from?, to?, sag?);
    for (key, end) in [("from", from), ("to", to)] {
        if end.z.abs() > HEIGHT {
            let message = text::TOO_MUCH.with("key", key).with("value", metres(end.z)).with("high", metres(HEIGHT));
            t.fault(key, message, Some(text::HINT_UNIT_SLIP.message()));
        }
    }
    let length = libm::hypot(to.x - from.x, to.y - from.y);
    if length < 0.01 {
        t.fault("to", text::SPAN_NO_LENGTH, None);
        return None;
    }
    // A conductor hangs a few hundredths of its span; half of it is a slip of the pen.
    if sag > 0.5 * length {
        t.fault("sag", text::SAG_TOO_LARGE.with("sag", metres(sag)).with("length", metres(length)), None);
    }
    Some(Span { from, to, sag })
}

fn insulation(t: &Reader<'_>) -> Option<Insulation> {
    let by = t.text("by", "by = \"B. Network, line owner's engineer\"");
    let permit = t.text("permit", "permit = \"P-119\"");
    t.done();
    Some(Insulation { by: by?, permit: permit? })
}

fn confirmation(t: &Reader<'_>) -> Option<DeadConfirmation> {
    let owner = t.text("owner", "owner = \"B. Network, line owner's engineer\"");
    let permit = t.text("permit", "permit = \"P-118\"");
    let grounded = t.required("visibly_grounded", "visibly_grounded = true");
    let grounded = grounded.and_then(|_| t.yes_no("visibly_grounded"));
    t.done();
    Some(DeadConfirmation { owner: owner?, permit: permit?, visibly_grounded: grounded? })
}
