//! `[policy]`: required reserves that differ from the usual ones.

use crate::node::Value;
use crate::quantity_value::Bound::{self, UpTo, Within, ZeroTo};
use crate::schema_notes::Kind;
use crate::table::Reader;
use crate::text;
use evidence::Certainty;
use planning::{GroundFactors, Policy};
use quantity::{Dimension as D, Quantity};

/// The keys with what they may be: no reserve at all is not a policy.
const KEYS: [(&str, D, Bound); 6] = [
    ("tilt_fore_aft", D::Slope, UpTo(1.0)),
    ("tilt_sideways", D::Slope, UpTo(1.0)),
    ("load_factor", D::Number, Within(1.0, 10.0)),
    ("stand_error", D::Length, ZeroTo(2.0)),
    ("line_allowance", D::Length, ZeroTo(50.0)),
    ("line_site_rule", D::Length, ZeroTo(100.0)),
];

fn value<'p>(policy: &'p mut Policy, key: &str) -> &'p mut f64 {
    match key {
        "tilt_fore_aft" => &mut policy.tilt_fore_aft,
        "tilt_sideways" => &mut policy.tilt_sideways,
        "load_factor" => &mut policy.load_factor,
        "stand_error" => &mut policy.stand_error,
        "line_allowance" => &mut policy.line_allowance,
        _ => &mut policy.line_site_rule,
    }
}

const SETS: [(&str, GroundFactors); 3] =
    [("en1997-da1", GroundFactors::Da1), ("en1997-da2", GroundFactors::Da2), ("en1997-da3", GroundFactors::Da3)];

/// `ground_factors = "en1997-da1"`, or one factor, `ground_factors = 2.5`: somebody answers for less than the usual.
fn ground_factors(t: &Reader<'_>, policy: &mut Policy) {
    const KEY: &str = "ground_factors";
    let Some(node) = t.optional(KEY) else { return };
    let stated = if let Value::Text(_) = node.value {
        t.as_choice(node, KEY, &SETS)
    } else {
        t.as_quantity(node, KEY, D::Number, Within(1.0, 10.0), None).map(GroundFactors::One)
    };
    t.expects(KEY, || Kind::Words(SETS.iter().map(|(word, _)| String::from(*word)).collect()));
    t.expects(KEY, || Kind::Quantity { dimension: D::Number, bound: Within(1.0, 10.0) });
    let Some(stated) = stated else { return };
    t.note(KEY, node, Certainty::Stated);
    let usual = GroundFactors::default();
    let less = match (usual, stated) {
        (GroundFactors::One(usual), GroundFactors::One(factor)) => factor < usual,
        _ => stated != usual,
    };
    if less && policy.by.is_none() {
        let hint = text::HINT_EXAMPLE.with("example", "by = \"E. Engineer, geotechnical engineer\"");
        t.fault(KEY, text::GROUND_FACTORS_UNANSWERED, Some(hint));
    }
    policy.ground_factors = stated;
}

/// The job's policy: the usual one, with what the file says instead. Somebody must answer for
/// less than the usual; every value in the file goes on the input list.
pub(crate) fn policy(root: &Reader<'_>) -> Option<Policy> {
    let mut policy = Policy::default();
    let Some(t) = root.table_or_none("policy") else {
        // A key that is no table has been said to be wrong.
        return if root.has("policy") { None } else { Some(policy) };
    };
    let (by, nobody) = t.not_given_while_open(|t| t.text_or_none("by"));
    policy.by = by.filter(|_| !nobody);
    for (key, dimension, bound) in KEYS {
        let Some(node) = t.optional(key) else { continue };
        let Some(stated) = t.as_quantity(node, key, dimension, bound, None) else { continue };
        t.note(key, node, Certainty::Stated);
        let answered = policy.by.is_some();
        let usual = std::mem::replace(value(&mut policy, key), stated);
        if stated < usual - 1e-12 && !answered {
            let message = text::POLICY_BELOW_USUAL.with("key", key).with("usual", Quantity::new(usual, dimension));
            let hint = text::HINT_EXAMPLE.with("example", "by = \"A. Planner, lift supervisor\"");
            t.fault_at(node, key, message, Some(hint));
        }
    }
    ground_factors(&t, &mut policy);
    t.done();
    Some(policy)
}
