//! `hanging` of a load: its rigging, seen or stated.

use crate::limits::{BOOM, MASS};
use crate::node::Value;
use crate::quantity_value::Bound::{UpTo, Within, ZeroTo};
use crate::schema_notes::Kind;
use crate::table::Reader;
use crate::text;
use machine::{Edges, Fitting, Hanging, Hitch, Swing, USUAL_SWING};
use quantity::{Dimension as D, kilograms, radians};

const HITCHES: [(&str, Hitch); 3] =
    [("vertical", Hitch::Vertical), ("choker", Hitch::Choker), ("basket", Hitch::Basket)];
const EDGES: [(&str, Edges); 3] = [("smooth", Edges::Smooth), ("protected", Edges::Protected), ("bare", Edges::Bare)];
const TAKES: [(&str, bool); 2] = [("leg", false), ("whole", true)];

pub(crate) fn hanging(t: &Reader<'_>) -> Option<Hanging> {
    let rigging = t.si("rigging", D::Mass, ZeroTo(MASS));
    let drop = t.si("drop", D::Length, UpTo(BOOM));
    let legs = t.count("legs", "legs = 2", 1);
    // Read up to nearly flat: a sling spread too far is a finding of the plan, not a fault of the file.
    let leg_angle = t.si("leg_angle", D::Angle, Within(0.0, 89_f64.to_radians()));
    let leg_limit = t.si("leg_limit", D::Mass, UpTo(MASS));
    let hitch = t.optional("hitch").map(|node| t.as_choice(node, "hitch", &HITCHES));
    let edges = t.optional("edges").map(|node| t.as_choice(node, "edges", &EDGES));
    let tag_lines = tag_lines(t);
    let fittings: Vec<Option<Fitting>> = t.tables("fittings").iter().map(fitting).collect();
    let swing = swing(t);
    t.done();
    Some(Hanging {
        rigging: kilograms(rigging?),
        drop: drop?,
        legs: u32::try_from(legs?).unwrap_or(1),
        leg_angle: radians(leg_angle?),
        leg_limit: kilograms(leg_limit?),
        hitch: match hitch {
            None => None,
            Some(read) => Some(read?),
        },
        edges: match edges {
            None => None,
            Some(read) => Some(read?),
        },
        tag_lines: tag_lines?,
        fittings: fittings.into_iter().collect::<Option<_>>()?,
        swing: swing?,
    })
}

/// `tag_lines = 2`, or `true` for one at least.
fn tag_lines(t: &Reader<'_>) -> Option<u32> {
    t.expects("tag_lines", || Kind::YesNo);
    let node = t.required("tag_lines", "tag_lines = 2")?;
    if let Value::Bool(any) = node.value {
        return Some(u32::from(any));
    }
    t.count("tag_lines", "tag_lines = 2", 0).and_then(|n| u32::try_from(n).ok())
}

fn fitting(t: &Reader<'_>) -> Option<Fitting> {
    let name = t.text("name", "name = \"shackle\"");
    let limit = t.si("limit", D::Mass, UpTo(MASS));
    let whole = t.choice("takes", &TAKES);
    t.done();
    Some(Fitting { name: name?, limit: kilograms(limit?), whole: whole? })
}

/// `swing` as an angle or `swing_reach` as a distance; the usual angle where neither is stated.
fn swing(t: &Reader<'_>) -> Option<Swing> {
    let (angle, reach) = (t.has("swing"), t.has("swing_reach"));
    match (angle, reach) {
        (true, true) => {
            t.fault("swing_reach", text::EITHER_OR.with("first", "swing").with("second", "swing_reach"), None);
            None
        }
        (true, false) => {
            t.decision("swing", D::Angle, Within(0.0, 45_f64.to_radians())).map(|a| Swing::Angle(radians(a)))
        }
        (false, true) => t.decision("swing_reach", D::Length, ZeroTo(BOOM)).map(Swing::Reach),
        (false, false) => Some(Swing::Angle(radians(USUAL_SWING))),
    }
}
