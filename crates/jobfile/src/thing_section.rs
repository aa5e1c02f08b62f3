//! `[[thing]]`: what stands on the site.

use crate::ids::Ids;
use crate::job_file::all;
use crate::limits::{HEIGHT, SITE};
use crate::plan_shape_keys::{Known, or_unknown, shape};
use crate::quantity_value::Bound::{Within, ZeroTo};
use crate::table::Reader;
use crate::text;
use evidence::Certainty;
use quantity::{Dimension as D, metres};
use site::{Body, Opening, Thing, ThingKind};

/// Kinds of things as written in files.
pub(crate) const KINDS: [(&str, ThingKind); 13] = [
    ("building", ThingKind::Building),
    ("wall", ThingKind::Wall),
    ("fence", ThingKind::Fence),
    ("scaffold", ThingKind::Scaffold),
    ("floor", ThingKind::Floor),
    ("bridge", ThingKind::Bridge),
    ("tree", ThingKind::Tree),
    ("mast", ThingKind::Mast),
    ("plant", ThingKind::Plant),
    ("store", ThingKind::Store),
    ("fuel", ThingKind::Fuel),
    ("truck-bay", ThingKind::TruckBay),
    ("unnamed", ThingKind::Unnamed),
];

pub(crate) fn things(root: &Reader<'_>) -> Option<Vec<Thing>> {
    let mut ids = Ids::default();
    all(root.tables("thing").iter().map(|t| thing(t, &mut ids)).collect())
}

fn thing(t: &Reader<'_>, ids: &mut Ids) -> Option<Thing> {
    let id = ids.add(t);
    let name = t.text("name", "name = \"Gable of number 6\"");
    let kind = t.choice("kind", &KINDS);
    let shape = shape(t);
    let base = t.si_or_none("base", D::Length, Within(-HEIGHT, HEIGHT));
    let top = or_unknown(t, "top", "top = \"112.40 m\" or top = \"unknown\"", Within(-HEIGHT, HEIGHT));
    let accuracy = t.si("accuracy", D::Length, ZeroTo(20.0));
    let openings = openings(t);
    let source = t.source();
    t.done();
    let top = top.ok()?.map(|Known(top)| top);
    if let (Some(base), Some(top)) = (base, top)
        && base > top
    {
        let message = text::ORDER.with("key", "top").with("low", metres(base)).with("high", metres(top));
        t.fault("top", message, None);
        return None;
    }
    let (id, name) = (id?, name?);
    Some(Thing {
        source: said_by(t, source),
        id,
        name,
        kind: kind?,
        body: Body::Upright { shape: shape?, base, top },
        openings: openings?,
        accuracy: accuracy?,
    })
}

/// File and line, with how sure it is.
pub(crate) fn said_by(t: &Reader<'_>, source: Option<Certainty>) -> String {
    let place = format!("{}:{}", t.document().file(), t.document().line(t.span()));
    match source {
        Some(Certainty::Invented) => format!("{place} (invented)"),
        _ => place,
    }
}

fn openings(t: &Reader<'_>) -> Option<Vec<Opening>> {
    all(t.tables("opening").iter().map(opening).collect())
}

fn opening(t: &Reader<'_>) -> Option<Opening> {
    let from = t.fact_point("from", "from = [\"2.0 m\", \"0 m\"]", SITE);
    let to = t.fact_point("to", "to = [\"4.0 m\", \"0 m\"]", SITE);
    let sill = t.si("sill", D::Length, Within(-HEIGHT, HEIGHT));
    let head = t.si("head", D::Length, Within(-HEIGHT, HEIGHT));
    t.done();
    let (from, to, sill, head) = (from?, to?, sill?, head?);
    if head <= sill {
        let message = text::ORDER.with("key", "head").with("low", metres(sill)).with("high", metres(head));
        t.fault("head", message, None);
        return None;
    }
    if from.distance(to) < 0.01 {
        t.fault("to", text::SPAN_NO_LENGTH, None);
        return None;
    }
    Some(Opening { from, to, sill, head })
}
