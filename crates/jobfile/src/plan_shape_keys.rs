//! Where something lies in plan: an outline, a course with a width, or a circle.

use crate::limits::SITE;
use crate::node::{Node, Value};
use crate::quantity_value::{Bound, Bound::UpTo};
use crate::schema_notes::Kind;
use crate::table::{Faulty, Reader};
use crate::text;
use evidence::Ranged;
use quantity::Dimension as D;
use site::{PlanArea, PlanShape};

/// Greatest width or radius, m.
const WIDEST: f64 = 1000.0;

/// `outline`, or `course` and `width`, or `at` and `radius`: one of the three.
pub(crate) fn shape(t: &Reader<'_>) -> Option<PlanShape> {
    let unit = t.list_unit();
    let outline = t.optional("outline").map(|node| points(t, node, "outline", unit.as_deref(), 3));
    let course = t.optional("course").map(|node| points(t, node, "course", unit.as_deref(), 2));
    let width = t.si_or_none("width", D::Length, UpTo(WIDEST));
    let at = t.has("at").then(|| t.fact_point("at", "at = [\"12.0 m\", \"30.0 m\"]", SITE));
    let radius = t.si_or_none("radius", D::Length, UpTo(WIDEST));
    match (outline, course, at) {
        (Some(outline), None, None) => area(t, outline?).map(PlanShape::Area),
        (None, Some(course), None) => {
            let course = course?;
            if width.is_none() && !t.has("width") {
                t.missing("width", "width = \"0.30 m\"");
            }
            Some(PlanShape::Strip { course, width: width? })
        }
        (None, None, Some(at)) => {
            if radius.is_none() && !t.has("radius") {
                t.missing("radius", "radius = \"1.50 m\"");
            }
            Some(PlanShape::Round { centre: at?, radius: radius? })
        }
        (None, None, None) => {
            t.missing("outline", "outline = [[\"0 m\", \"0 m\"], [\"8 m\", \"0 m\"], [\"8 m\", \"6 m\"]]");
            None
        }
        (Some(_), Some(_), _) => {
            t.fault("course", text::EITHER_OR.with("first", "outline").with("second", "course"), None);
            None
        }
        (Some(_), _, Some(_)) => {
            t.fault("at", text::EITHER_OR.with("first", "outline").with("second", "at"), None);
            None
        }
        (_, Some(_), Some(_)) => {
            t.fault("at", text::EITHER_OR.with("first", "course").with("second", "at"), None);
            None
        }
    }
}

/// The outline that must be there.
pub(crate) fn outline(t: &Reader<'_>) -> Option<PlanArea> {
    let unit = t.list_unit();
    let node = t.required("outline", "outline = [[\"0 m\", \"0 m\"], [\"8 m\", \"0 m\"], [\"8 m\", \"6 m\"]]")?;
    area(t, points(t, node, "outline", unit.as_deref(), 3)?)
}

/// The outline under another key, which is there.
pub(crate) fn area_of(t: &Reader<'_>, node: &Node, key: &str) -> Option<PlanArea> {
    let unit = t.list_unit();
    enclosed(t, key, points(t, node, key, unit.as_deref(), 3)?)
}

fn points(t: &Reader<'_>, node: &Node, key: &str, unit: Option<&str>, least: usize) -> Option<Vec<geometry::DVec2>> {
    let certainty = t.sourced(node, key);
    let points = t.as_points(t.optional(key)?, key, unit, least, SITE)?;
    t.note(key, node, certainty?);
    Some(points)
}

/// An outline that crosses itself encloses nobody knows what.
fn area(t: &Reader<'_>, outer: Vec<geometry::DVec2>) -> Option<PlanArea> {
    enclosed(t, "outline", outer)
}

fn enclosed(t: &Reader<'_>, key: &str, mut outer: Vec<geometry::DVec2>) -> Option<PlanArea> {
    outer.dedup();
    if outer.len() > 1 && outer.first() == outer.last() {
        outer.pop();
    }
    let area = PlanArea { outer, holes: Vec::new() };
    if area.check().is_err() {
        t.fault(key, text::OUTLINE_CROSSES, Some(text::HINT_CORNERS_IN_ORDER.message()));
        return None;
    }
    Some(area)
}

/// A quantity, or the word "unknown". Left out is a fault: not known must be said.
pub(crate) fn or_unknown(t: &Reader<'_>, key: &str, example: &str, bound: Bound) -> Result<Option<Known>, Faulty> {
    let node = t.required(key, example).ok_or(Faulty)?;
    t.expects(key, || Kind::Words(vec![String::from("unknown")]));
    if node.value == Value::Text(String::from("unknown")) {
        return Ok(None);
    }
    let fact = t.as_fact(node, key, D::Length, bound).ok_or(Faulty)?;
    Ok(Some(Known(fact.si)))
}

/// A length that is known, m.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Known(pub(crate) f64);

/// A depth with the half range stated beside it.
pub(crate) fn depth(t: &Reader<'_>, key: &str, example: &str) -> Result<Option<Ranged>, Faulty> {
    let depth = or_unknown(t, key, example, UpTo(100.0));
    let give = t.si_or_none("give_or_take", D::Length, Bound::ZeroTo(20.0)).unwrap_or(0.0);
    Ok(depth?.map(|Known(d)| Ranged { low: (d - give).max(0.0), nominal: d, high: d + give }))
}
