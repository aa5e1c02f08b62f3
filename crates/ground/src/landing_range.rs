//! Faults of the numbers that describe a landing: every one at once, with what was expected and, where a
//! thousand or a million is between them, the value that was probably meant.

use crate::text;
use evidence::{Faults, Place};
use quantity::{Dimension, Quantity};

/// Collects faults by the name of the input.
#[derive(Debug, Default)]
pub(crate) struct Ranges {
    faults: Faults,
}

impl Ranges {
    /// `value` must lie in `low ..= high`; what is not a number never does.
    pub(crate) fn within(&mut self, key: &str, value: f64, dimension: Dimension, low: f64, high: f64) {
        if (low..=high).contains(&value) {
            return;
        }
        let q = |v| Quantity::new(v, dimension);
        let message =
            text::LANDING_OUT_OF_RANGE.with("key", key).with("got", q(value)).with("low", q(low)).with("high", q(high));
        // 30 for a strength in pascals, 250 for a length in metres.
        let meant = [1e6, 1e3, 1e-3, 1e-6].map(|f| value * f).into_iter().find(|v| (low..=high).contains(v));
        let hint = meant.filter(|v| *v > 0.0).map(|v| text::LANDING_UNIT_SLIP.with("meant", q(v)));
        self.faults.error("landing::range", at(key), message, hint);
    }

    /// `to` must lie beyond `from`.
    pub(crate) fn ordered(&mut self, key: &str, from: f64, to: f64) {
        if to > from {
            return;
        }
        let q = |v| Quantity::new(v, Dimension::Length);
        let message = text::LANDING_ENDS_BEFORE_IT_BEGINS.with("from", q(from)).with("to", q(to));
        self.faults.error("landing::order", at(key), message, None);
    }

    /// Something that the range of one number does not show.
    pub(crate) fn wrong(&mut self, code: &str, key: &str, message: evidence::Message) {
        self.faults.error(code, at(key), message, None);
    }

    /// `value` if nothing was wrong.
    pub(crate) fn done<T>(self, value: T) -> Result<T, Faults> {
        if self.faults.any_error() { Err(self.faults) } else { Ok(value) }
    }

    /// Takes the faults of a part.
    pub(crate) fn take<T>(&mut self, part: Result<T, Faults>) -> Option<T> {
        part.map_err(|faults| self.faults.append(faults)).ok()
    }
}

fn at(key: &str) -> Place {
    Place { key: Some(key.to_owned()), ..Place::default() }
}
