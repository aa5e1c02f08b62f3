//! `[policy]`: required reserves that differ from the usual ones.

use crate::quantity_value::Bound::{NotNegative, Within};
use crate::table::Reader;
use planning::Policy;
use quantity::Dimension as D;

/// The job's policy: the usual one, with what the file says instead.
pub(crate) fn policy(root: &Reader<'_>) -> Option<Policy> {
    let mut policy = Policy::default();
    let Some(t) = root.table_or_none("policy") else {
        // A key that is no table has been said to be wrong.
        return if root.has("policy") { None } else { Some(policy) };
    };
    let set = |key: &str, dimension, bound, value: &mut f64| {
        if let Some(stated) = t.decision_or_none(key, dimension, bound) {
            *value = stated;
        }
    };
    set("tilt_fore_aft", D::Slope, Within(0.0, 1.0), &mut policy.tilt_fore_aft);
    set("tilt_sideways", D::Slope, Within(0.0, 1.0), &mut policy.tilt_sideways);
    set("load_factor", D::Number, Within(1.0, 10.0), &mut policy.load_factor);
    set("stand_error", D::Length, Within(0.0, 2.0), &mut policy.stand_error);
    set("line_allowance", D::Length, NotNegative, &mut policy.line_allowance);
    set("line_site_rule", D::Length, NotNegative, &mut policy.line_site_rule);
    t.done();
    Some(policy)
}
