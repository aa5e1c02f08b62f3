//! What is wrong with numbers handed in: which, what it is, what was expected, what to do; all of them at once.

use crate::edge_text as text;
use evidence::{Message, TextId};
use quantity::{Dimension, Quantity};

/// One number that cannot be used.
#[derive(Debug, Clone, PartialEq)]
pub enum InputFault {
    /// Not a number, or without end.
    NoNumber {
        /// Name of the value.
        what: TextId,
    },
    /// Outside of what it can be.
    Range {
        /// Name of the value.
        what: TextId,
        /// What was given.
        got: Quantity,
        /// Least and greatest it can be.
        between: [Quantity; 2],
    },
    /// A unit weight that looks as if it came in another unit.
    UnitWeightUnit {
        /// What was given, N/m³.
        got: Quantity,
        /// The same number read as kN/m³ or as kg/m³.
        meant: Quantity,
    },
    /// A second value that has to lie beyond a first, and does not.
    Order {
        /// Name of the value that should be the lesser.
        lesser: TextId,
        /// Name of the value that should be the greater.
        greater: TextId,
    },
    /// Something that needs one of two values, and has neither.
    Missing {
        /// Name of the value.
        what: TextId,
    },
    /// A value that holds only in somebody's name.
    NoName {
        /// Name of the value.
        what: TextId,
    },
}

impl InputFault {
    /// What is wrong and what was expected.
    pub fn message(&self) -> Message {
        match self {
            Self::NoNumber { what } => text::FAULT_NO_NUMBER.with("what", *what),
            Self::Range { what, got, between } => text::FAULT_RANGE
                .with("what", *what)
                .with("got", *got)
                .with("least", between[0])
                .with("most", between[1]),
            Self::UnitWeightUnit { got, meant } => text::FAULT_UNIT_WEIGHT.with("got", *got).with("meant", *meant),
            Self::Order { lesser, greater } => text::FAULT_ORDER.with("lesser", *lesser).with("greater", *greater),
            Self::Missing { what } => text::FAULT_MISSING.with("what", *what),
            Self::NoName { what } => text::FAULT_NO_NAME.with("what", *what),
        }
    }
}

/// Faults found so far.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct InputFaults {
    list: Vec<InputFault>,
}

/// Unit weight of any soil, N/m³: peat that floats almost, to heavy till.
pub(crate) const UNIT_WEIGHT: [f64; 2] = [9e3, 26e3];

impl InputFaults {
    /// One more.
    pub fn push(&mut self, fault: InputFault) {
        self.list.push(fault);
    }

    /// Takes a number that must lie in a range, its ends included.
    pub fn range(&mut self, what: TextId, value: f64, dimension: Dimension, [least, most]: [f64; 2]) {
        if !value.is_finite() {
            self.push(InputFault::NoNumber { what });
        } else if value < least || value > most {
            let q = |v| Quantity::new(v, dimension);
            self.push(InputFault::Range { what, got: q(value), between: [q(least), q(most)] });
        }
    }

    /// Takes a unit weight, N/m³. 18 is most likely kN/m³, 1800 most likely a density.
    pub fn unit_weight(&mut self, value: f64) {
        let meant = [1e3, quantity::STANDARD_GRAVITY]
            .into_iter()
            .map(|factor| value * factor)
            .find(|v| (UNIT_WEIGHT[0]..=UNIT_WEIGHT[1]).contains(v));
        let sound = (UNIT_WEIGHT[0]..=UNIT_WEIGHT[1]).contains(&value);
        match meant {
            Some(meant) if !sound => {
                let q = |v| Quantity::new(v, Dimension::UnitWeight);
                self.push(InputFault::UnitWeightUnit { got: q(value), meant: q(meant) });
            }
            _ => self.range(text::NAME_UNIT_WEIGHT, value, Dimension::UnitWeight, UNIT_WEIGHT),
        }
    }

    /// Takes two numbers in their order; equal is in order where `equal` says so.
    pub fn order(&mut self, [lesser, greater]: [TextId; 2], values: [f64; 2], equal: bool) {
        let sound = if equal { values[0] <= values[1] } else { values[0] < values[1] };
        if values.iter().all(|v| v.is_finite()) && !sound {
            self.push(InputFault::Order { lesser, greater });
        }
    }

    /// Takes all that another look found.
    pub fn append(&mut self, mut others: Vec<InputFault>) {
        self.list.append(&mut others);
    }

    /// Everything found, if anything was.
    pub fn done(self) -> Result<(), Vec<InputFault>> {
        if self.list.is_empty() { Ok(()) } else { Err(self.list) }
    }
}
