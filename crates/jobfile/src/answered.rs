//! Values below the usual ones, for which somebody answers: `{ value = "0°", by = "name, function" }`.

use crate::node::Value;
use crate::quantity_value::Bound;
use crate::schema_notes::Kind;
use crate::table::Reader;
use crate::text;
use quantity::{Dimension, Quantity};

/// Less than the usual by no more than this is the usual, rounded.
const ROUNDED: f64 = 1e-9;

/// True if `by` of the table names somebody.
pub(crate) fn answered(t: &Reader<'_>) -> bool {
    let (by, nobody) = t.not_given_while_open(|t| t.text_or_none("by"));
    by.is_some() && !nobody
}

/// A fault where a value is less than the usual and nobody answers for it.
pub(crate) fn below_usual(t: &Reader<'_>, key: &str, stated: f64, usual: f64, dimension: Dimension, answered: bool) {
    if stated < usual - ROUNDED && !answered {
        let message = text::BELOW_USUAL.with("key", key).with("usual", Quantity::new(usual, dimension));
        let value = match dimension {
            Dimension::Angle => "2°",
            Dimension::Ratio => "1 %",
            Dimension::Number => "1.2",
            _ => "0.10 m",
        };
        let example = format!("{key} = {{ value = \"{value}\", by = \"A. Planner, lift supervisor\" }}");
        t.fault(key, message, Some(text::HINT_EXAMPLE.with("example", example)));
    }
}

/// A value that the planner chooses, and whether somebody answers for it: plain, or a table with
/// `value` and `by`.
pub(crate) fn choice(t: &Reader<'_>, key: &str, dimension: Dimension, bound: Bound) -> Option<(f64, bool)> {
    let node = t.optional(key)?;
    t.expects(key, || Kind::Quantity { dimension, bound });
    if let Value::Table(_) = node.value {
        let inline = t.as_table(node, key)?;
        let answered = answered(&inline);
        let value = inline.decision("value", dimension, bound);
        inline.done();
        return Some((value?, answered));
    }
    t.as_quantity(node, key, dimension, bound, None).map(|value| (value, false))
}

/// The same where it may be left out: then the usual. A fault where it is less and nobody answers.
pub(crate) fn choice_or_usual(
    t: &Reader<'_>,
    key: &str,
    dimension: Dimension,
    bound: Bound,
    usual: f64,
) -> Option<f64> {
    if !t.has(key) {
        return Some(usual);
    }
    let (value, answered) = choice(t, key, dimension, bound)?;
    below_usual(t, key, value, usual, dimension, answered);
    Some(value)
}
