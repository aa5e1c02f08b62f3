//! `[[gate]]`, and which of them a lift passes with its load.

use crate::answered::choice_or_usual;
use crate::ids::Ids;
use crate::job_file::all;
use crate::limits::SITE;
use crate::node::Value;
use crate::quantity_value::Bound::{UpTo, ZeroTo};
use crate::schema_notes::Kind;
use crate::table::{Faulty, Reader};
use crate::text;
use geometry::DVec2;
use quantity::{Dimension as D, metres};
use site::Gate;

/// Nothing wider or higher is a gate, m.
const WIDEST: f64 = 100.0;

/// Posts that are nearer or farther than the stated width by more than that are worth a second look, m.
const POSTS: f64 = 0.25;

pub(crate) fn gates(root: &Reader<'_>, ids: &mut Ids) -> Option<Vec<Gate>> {
    all(root.tables("gate").iter().map(|t| gate(t, ids)).collect())
}

fn gate(t: &Reader<'_>, ids: &mut Ids) -> Option<Gate> {
    let id = ids.add(t);
    let name = t.text("name", "name = \"North gate\"");
    let width = t.si("width", D::Length, UpTo(WIDEST));
    // No height is no statement: what is open above is said to be.
    t.expects("height", || Kind::Words(vec![String::from("open")]));
    let height = t.required("height", "height = \"4.20 m\" or height = \"open\"").and_then(|node| match &node.value {
        Value::Text(word) if word.trim() == "open" => Some(None),
        _ => t.as_fact(node, "height", D::Length, UpTo(WIDEST)).map(|fact| Some(fact.si)),
    });
    let room = |key, usual| choice_or_usual(t, key, D::Length, ZeroTo(WIDEST), usual);
    let clearance = room("clearance", site::USUAL_CLEARANCE);
    let above = room("clearance_above", site::USUAL_CLEARANCE_ABOVE);
    let posts = posts(t, width);
    t.done();
    Some(Gate {
        id: id?,
        name: name?,
        width: width?,
        height: height?,
        clearance: clearance?,
        clearance_above: above?,
        posts: posts.ok()?,
    })
}

/// `from` and `to`: the inner faces of its posts in plan; left out: its place is not stated.
fn posts(t: &Reader<'_>, width: Option<f64>) -> Result<Option<[DVec2; 2]>, Faulty> {
    let example = |key: &str| format!("{key} = [\"12.0 m\", \"30.0 m\"]");
    let (from, to) = (t.has("from"), t.has("to"));
    if !from && !to {
        return Ok(None);
    }
    let post = |key| t.fact_point(key, &example(key), SITE);
    let (from, to) = (post("from"), post("to"));
    let (from, to) = (from.ok_or(Faulty)?, to.ok_or(Faulty)?);
    let apart = from.distance(to);
    if let Some(width) = width.filter(|w| (apart - w).abs() > POSTS) {
        let message = text::POSTS_APART.with("apart", metres(apart)).with("width", metres(width));
        t.warning("from", message, None);
    }
    Ok(Some([from, to]))
}

/// `gates = ["north"]` of a lift: indexes of the gates it passes loaded. Outer `None`: a fault; inner:
/// not stated.
#[expect(clippy::option_option, reason = "a fault and a key left out are two things")]
pub(crate) fn passed(t: &Reader<'_>, gates: &Ids) -> Option<Option<Vec<usize>>> {
    let Some(node) = t.optional("gates") else { return Some(None) };
    let items = t.as_list(node, "gates")?;
    let found = items.iter().map(|item| {
        let id = t.as_text(item, "gates")?;
        gates.find(t, item, "gates", id, text::KIND_GATE)
    });
    all(found.collect()).map(Some)
}
