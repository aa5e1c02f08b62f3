//! `hanging` of a load: its rigging, seen or stated.

use crate::answered::{below_usual, choice, choice_or_usual};
use crate::limits::{BOOM, LOAD, MASS};
use crate::load_mass::usual_uncertainty;
use crate::node::Value;
use crate::quantity_value::Bound::{UpTo, Within, ZeroTo};
use crate::schema_notes::Kind;
use crate::table::Reader;
use crate::text;
use evidence::{Certainty, Ranged};
use machine::{Edges, Fitting, Hanging, Hitch, Swing, USUAL_SWING};
use quantity::{Dimension as D, kilograms, radians};

const HITCHES: [(&str, Hitch); 3] =
    [("vertical", Hitch::Vertical), ("choker", Hitch::Choker), ("basket", Hitch::Basket)];
const EDGES: [(&str, Edges); 3] = [("smooth", Edges::Smooth), ("protected", Edges::Protected), ("bare", Edges::Bare)];
const TAKES: [(&str, bool); 2] = [("leg", false), ("whole", true)];

/// Rigging as read.
pub(crate) struct HangingRead<'d> {
    pub(crate) hanging: Hanging,
    table: Reader<'d>,
    /// Somebody answers for the swing.
    answered: bool,
}

impl HangingRead<'_> {
    /// A swing stated as a distance is compared with what the usual angle makes of it, the centre `below`
    /// m under the hook.
    pub(crate) fn check_reach(&self, below: f64) {
        if let Swing::Reach(reach) = self.hanging.swing {
            let usual = Hanging { swing: Swing::Angle(radians(USUAL_SWING)), ..self.hanging.clone() }
                .swing_reach(below, &mut evidence::Silent);
            below_usual(&self.table, "swing_reach", reach, usual, D::Length, self.answered);
        }
    }
}

pub(crate) fn hanging(t: Reader<'_>) -> Option<HangingRead<'_>> {
    let (hanging, answered) = read(&t)?;
    Some(HangingRead { hanging, table: t, answered })
}

fn read(t: &Reader<'_>) -> Option<(Hanging, bool)> {
    let rigging = t.fact("rigging", D::Mass, ZeroTo(MASS));
    let drop = t.si("drop", D::Length, UpTo(BOOM));
    let legs = t.count("legs", "legs = 2", 1);
    // Read up to nearly flat: a sling spread too far is a finding of the plan, not a fault of the file.
    let leg_angle = t.si("leg_angle", D::Angle, Within(0.0, 89_f64.to_radians()));
    let picks = t.si_or_none("picks", D::Length, UpTo(LOAD));
    let leg_limit = t.si("leg_limit", D::Mass, UpTo(MASS));
    let hitch = t.optional("hitch").map(|node| t.as_choice(node, "hitch", &HITCHES));
    let edges = t.optional("edges").map(|node| t.as_choice(node, "edges", &EDGES));
    let tag_lines = tag_lines(t);
    let fittings: Vec<Option<Fitting>> = t.tables("fittings").iter().map(fitting).collect();
    let swing = swing(t);
    t.done();
    // Its own range by its source; 10 % where a source says nothing of it (from memory).
    let rigging = rigging?;
    let share = usual_uncertainty(rigging.certainty).or(usual_uncertainty(Certainty::BuiltUp)).unwrap_or_default();
    let (swing, answered) = swing?;
    let hanging = Hanging {
        rigging_kg: Ranged::shares(rigging.si, share, share),
        drop: drop?,
        legs: u32::try_from(legs?).unwrap_or(1),
        leg_angle: radians(leg_angle?),
        picks,
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
        swing,
    };
    Some((hanging, answered))
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
fn swing(t: &Reader<'_>) -> Option<(Swing, bool)> {
    let (angle, reach) = (t.has("swing"), t.has("swing_reach"));
    match (angle, reach) {
        (true, true) => {
            t.fault("swing_reach", text::EITHER_OR.with("first", "swing").with("second", "swing_reach"), None);
            None
        }
        (true, false) => choice_or_usual(t, "swing", D::Angle, Within(0.0, 45_f64.to_radians()), USUAL_SWING)
            .map(|a| (Swing::Angle(radians(a)), true)),
        (false, true) => {
            choice(t, "swing_reach", D::Length, ZeroTo(BOOM)).map(|(r, answered)| (Swing::Reach(r), answered))
        }
        (false, false) => Some((Swing::Angle(radians(USUAL_SWING)), true)),
    }
}
