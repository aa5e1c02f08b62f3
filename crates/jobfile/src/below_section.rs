//! `[[excavation]]` and `[[buried]]`: what is dug and what lies in the ground.

use crate::ids::Ids;
use crate::job_file::all;
use crate::node::Value;
use crate::plan_shape_keys::{depth, outline, shape};
use crate::quantity_value::Bound::UpTo;
use crate::schema_notes::Kind;
use crate::table::{Faulty, Reader};
use quantity::Dimension as D;
use site::{Buried, BuriedKind, Excavation, SoilType, Support};

const SOILS: [(&str, SoilType); 4] = [
    ("stable-rock", SoilType::StableRock),
    ("type-a", SoilType::TypeA),
    ("type-b", SoilType::TypeB),
    ("type-c", SoilType::TypeC),
];

/// Kinds of buried things as written in files.
pub(crate) const KINDS: [(&str, BuriedKind); 7] = [
    ("pipe", BuriedKind::Pipe),
    ("cable", BuriedKind::Cable),
    ("culvert", BuriedKind::Culvert),
    ("tank", BuriedKind::Tank),
    ("basement", BuriedKind::Basement),
    ("backfill", BuriedKind::Backfill),
    ("void", BuriedKind::Void),
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
        source: source?,
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
    let kind = t.choice("kind", &KINDS);
    let shape = shape(t);
    let cover = depth(t, "cover", "cover = \"0.90 m\" or cover = \"unknown\"");
    let allowed_pressure = t.si_or_none("allowed_pressure", D::Pressure, UpTo(1e8));
    let source = t.text("by", "by = \"F. Water, owner's plan of 3 March\"");
    t.done();
    Some(Buried {
        id: id?,
        name: name?,
        kind: kind?,
        shape: shape?,
        cover: cover.ok()?,
        allowed_pressure,
        source: source?,
    })
}
