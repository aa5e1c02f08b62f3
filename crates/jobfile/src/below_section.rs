//! `[[excavation]]` and `[[buried]]`: what is dug and what lies in the ground.

use crate::buried_keys::{BuriedKeys, buried_keys};
use crate::ids::Ids;
use crate::job_file::all;
use crate::node::Value;
use crate::plan_shape_keys::{depth, outline, shape};
use crate::quantity_value::Bound::{Within, ZeroTo};
use crate::schema_notes::Kind;
use crate::table::{Faulty, Reader};
use quantity::Dimension as D;
use site::{Buried, Excavation, OpenSides, SoilType, Support};

const SOILS: [(&str, SoilType); 4] = [
    ("stable-rock", SoilType::StableRock),
    ("type-a", SoilType::TypeA),
    ("type-b", SoilType::TypeB),
    ("type-c", SoilType::TypeC),
];

pub(crate) fn excavations(root: &Reader<'_>) -> Option<Vec<Excavation>> {
    let mut ids = Ids::default();
    all(root.tables("excavation").iter().map(|t| excavation(t, &mut ids)).collect())
}

fn excavation(t: &Reader<'_>, ids: &mut Ids) -> Option<Excavation> {
    let id = ids.add(t);
    let name = t.text("name", "name = \"Drain trench\"");
    let outline = outline(t);
    let depth = depth(t, "depth", "depth = \"1.80 m\" or depth = \"unknown\"");
    let soil = t.optional("soil").map(|node| t.as_choice(node, "soil", &SOILS));
    let support = support(t);
    let standing = open_sides(t);
    let source = t.text("by", "by = \"D. Digger, competent person\"");
    t.done();
    let soil = match soil {
        None => None,
        Some(read) => Some(read?),
    };
    Some(Excavation {
        id: id?,
        name: name?,
        outline: outline?,
        depth: depth.ok()?,
        soil,
        support: support.ok()?,
        standing: standing?,
        source: source?,
    })
}

/// How its open sides stand; what is left out counts as the worse.
fn open_sides(t: &Reader<'_>) -> Option<OpenSides> {
    let usual = OpenSides::default();
    let batter = t.si_or_none("batter", D::Length, ZeroTo(300.0));
    let line = t.table_or_none("line").map(|l| {
        let slope = l.decision("slope", D::Number, Within(0.0, 5.0));
        let by = l.text("by", "by = \"D. Digger, competent person\"");
        l.done();
        Some((slope?, by?))
    });
    let open_for = t.decision_or_none("open_hours", D::Number, ZeroTo(1e5));
    let undrained_for = t.decision_or_none("undrained_hours", D::Number, ZeroTo(720.0));
    let wetted = t.yes_no("wetted");
    let people_below = t.yes_no("people_below");
    let line = match line {
        None => None,
        Some(read) => Some(read?),
    };
    Some(OpenSides {
        batter: batter.unwrap_or(usual.batter),
        line,
        open_for: open_for.unwrap_or(usual.open_for),
        undrained_for,
        wetted: wetted.unwrap_or(usual.wetted),
        people_below: people_below.unwrap_or(usual.people_below),
    })
}

/// `"none"`, `"unknown"`, or `{ by = "…" }`: who designed it for loads beside the edge.
fn support(t: &Reader<'_>) -> Result<Support, Faulty> {
    let node = t.required("support", "support = \"none\"").ok_or(Faulty)?;
    t.expects("support", || Kind::Words(vec!["none".into(), "unknown".into(), "supported".into()]));
    if let Value::Table(_) = node.value {
        let s = t.as_table(node, "support").ok_or(Faulty)?;
        let by = s.text("by", "by = \"E. Engineer, temporary works\"");
        s.done();
        return Ok(Support::Supported { by: Some(by.ok_or(Faulty)?) });
    }
    let words = [("none", 0), ("unknown", 1), ("supported", 2)];
    Ok(match t.as_choice(node, "support", &words).ok_or(Faulty)? {
        0 => Support::None,
        1 => Support::NotKnown,
        _ => Support::Supported { by: None },
    })
}

pub(crate) fn buried(root: &Reader<'_>) -> Option<Vec<Buried>> {
    let mut ids = Ids::default();
    all(root.tables("buried").iter().map(|t| buried_one(t, &mut ids)).collect())
}

fn buried_one(t: &Reader<'_>, ids: &mut Ids) -> Option<Buried> {
    let id = ids.add(t);
    let name = t.text("name", "name = \"Storm drain\"");
    let shape = shape(t);
    let keys = buried_keys(t);
    let source = t.text("by", "by = \"F. Water, owner's plan of 3 March\"");
    t.done();
    let BuriedKeys { kind, cover, allowed_pressure, wall, around } = keys?;
    Some(Buried { id: id?, name: name?, kind, shape: shape?, cover, allowed_pressure, wall, around, source: source? })
}
