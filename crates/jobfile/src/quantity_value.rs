//! Quantities: "3.00 m", `{ value = "3.00 m", source = "measured" }`, points, ranges.

use crate::node::{Node, Value};
use crate::schema_notes::{Kind, SeenValue};
use crate::table::Reader;
use crate::{certainty, placeholder, text};
use evidence::{Certainty, Message, TextId};
use geometry::{DVec2, DVec3};
use quantity::{Dimension, ParseError, Quantity};

/// What a value may be.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Bound {
    /// Anything finite.
    Any,
    /// Zero or more.
    NotNegative,
    /// More than zero.
    Positive,
    /// More than zero, up to a greatest value in SI.
    UpTo(f64),
    /// Zero or more, up to a greatest value in SI.
    ZeroTo(f64),
    /// From a least to a greatest value, in SI.
    Within(f64, f64),
}

/// A value of the world with where it comes from.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Fact {
    /// The value in the coherent SI unit.
    pub si: f64,
    /// How sure it is.
    pub certainty: Certainty,
}

impl<'d> Reader<'d> {
    /// A value that the planner chooses: needs no source. Must be there.
    pub fn decision(&self, key: &str, dimension: Dimension, bound: Bound) -> Option<f64> {
        let node = self.required(key, &example(key, dimension))?;
        self.as_quantity(node, key, dimension, bound, None)
    }

    /// A value that the planner chooses and may leave out.
    pub fn decision_or_none(&self, key: &str, dimension: Dimension, bound: Bound) -> Option<f64> {
        self.optional(key).and_then(|node| self.as_quantity(node, key, dimension, bound, None))
    }

    /// A value of the world: needs a source, and goes to the input list. Must be there.
    pub fn fact(&self, key: &str, dimension: Dimension, bound: Bound) -> Option<Fact> {
        let node = self.required(key, &example(key, dimension))?;
        self.as_fact(node, key, dimension, bound)
    }

    /// A value of the world that may be left out.
    pub fn fact_or_none(&self, key: &str, dimension: Dimension, bound: Bound) -> Option<Fact> {
        self.optional(key).and_then(|node| self.as_fact(node, key, dimension, bound))
    }

    /// The SI value of a fact that must be there.
    pub fn si(&self, key: &str, dimension: Dimension, bound: Bound) -> Option<f64> {
        self.fact(key, dimension, bound).map(|f| f.si)
    }

    /// The SI value of a fact that may be left out.
    pub fn si_or_none(&self, key: &str, dimension: Dimension, bound: Bound) -> Option<f64> {
        self.fact_or_none(key, dimension, bound).map(|f| f.si)
    }

    /// A value as a fact: text, or a table with `value` and `source`.
    pub fn as_fact(&self, node: &'d Node, key: &str, dimension: Dimension, bound: Bound) -> Option<Fact> {
        self.expects(key, || Kind::Fact { dimension, bound });
        let seen = |si: f64| SeenValue::Quantities(vec![Quantity::new(si, dimension)]);
        if let Value::Table(_) = node.value {
            let inline = self.as_table(node, key)?;
            let value = inline.required("value", &example("value", dimension));
            inline.done();
            let value = value?;
            let certainty = inline.sourced(node, "value");
            let si = inline.quantity_of(value, "value", dimension, bound, None)?;
            let certainty = certainty?;
            self.found(key, || seen(si), Some(certainty));
            self.note(key, value, certainty);
            return Some(Fact { si, certainty });
        }
        let certainty = self.sourced(node, key);
        let si = self.quantity_of(node, key, dimension, bound, None)?;
        let certainty = certainty?;
        self.found(key, || seen(si), Some(certainty));
        self.note(key, node, certainty);
        Some(Fact { si, certainty })
    }

    /// The source that holds for a value; a fault where there is none.
    pub fn sourced(&self, node: &Node, key: &str) -> Option<Certainty> {
        if self.source().is_none() {
            let hint = text::HINT_SOURCE.with("known", certainty::words());
            self.fault_at(node, key, text::NO_SOURCE.with("key", key), Some(hint));
        }
        self.source()
    }

    /// Puts a value on the input list.
    pub fn note(&self, key: &str, node: &Node, certainty: Certainty) {
        let path = self.path_of(key);
        match &node.value {
            // In a list the unit stands over the column: as read, not as written in the cell.
            Value::Text(read) => {
                let value = read.split_whitespace().collect::<Vec<_>>().join(" ");
                self.document().record_as(self.label_of(key), &path, node.span, value, certainty);
            }
            _ => self.document().record(self.label_of(key), &path, node.span, certainty),
        }
    }

    /// A point of two lengths (a decision), each at most `most` m either way.
    pub fn point(&self, key: &str, example: &str, most: f64) -> Option<DVec2> {
        let node = self.required(key, example)?;
        self.as_numbers::<2>(node, key, Dimension::Length, Bound::Within(-most, most), None).map(DVec2::from_array)
    }

    /// A point of two lengths that is a fact, each at most `most` m either way.
    pub fn fact_point(&self, key: &str, example: &str, most: f64) -> Option<DVec2> {
        let node = self.required(key, example)?;
        let certainty = self.sourced(node, key);
        let point = self
            .as_numbers::<2>(node, key, Dimension::Length, Bound::Within(-most, most), None)
            .map(DVec2::from_array)?;
        self.note(key, node, certainty?);
        Some(point)
    }

    /// A point of three lengths (a decision), each at most `most` m either way.
    pub fn point_3(&self, key: &str, example: &str, most: f64) -> Option<DVec3> {
        let node = self.required(key, example)?;
        self.as_numbers::<3>(node, key, Dimension::Length, Bound::Within(-most, most), None).map(DVec3::from_array)
    }

    /// A point of three lengths that is a fact, each at most `most` m either way.
    pub fn fact_point_3(&self, key: &str, example: &str, most: f64) -> Option<DVec3> {
        let node = self.required(key, example)?;
        let certainty = self.sourced(node, key);
        let point = self
            .as_numbers::<3>(node, key, Dimension::Length, Bound::Within(-most, most), None)
            .map(DVec3::from_array)?;
        self.note(key, node, certainty?);
        Some(point)
    }

    /// A list of exactly `N` quantities, each within its bound. Plain numbers take `unit`, where one is stated.
    pub fn as_numbers<const N: usize>(
        &self,
        node: &'d Node,
        key: &str,
        dimension: Dimension,
        bound: Bound,
        unit: Option<&str>,
    ) -> Option<[f64; N]> {
        self.expects(key, || Kind::Numbers { count: N, dimension, bound });
        let values = self.numbers::<N>(node, key, dimension, bound, unit)?;
        let seen = || SeenValue::Quantities(values.iter().map(|v| Quantity::new(*v, dimension)).collect());
        self.found(key, seen, self.source());
        Some(values)
    }

    fn numbers<const N: usize>(
        &self,
        node: &'d Node,
        key: &str,
        dimension: Dimension,
        bound: Bound,
        unit: Option<&str>,
    ) -> Option<[f64; N]> {
        let items = self.entries(node, key)?;
        if items.len() != N {
            let message = text::LIST_LENGTH.with("key", key).with("expected", N).with("found", items.len());
            self.fault_at(node, key, message, None);
            return None;
        }
        let mut values = [Some(0.0); N];
        for (value, item) in values.iter_mut().zip(items) {
            *value = self.quantity_of(item, key, dimension, bound, unit);
        }
        values.iter().all(Option::is_some).then(|| values.map(Option::unwrap_or_default))
    }

    /// A list of at least `least` points, each length at most `most` m either way. Plain numbers take `unit`; without one they are faults.
    pub fn as_points(
        &self,
        node: &'d Node,
        key: &str,
        unit: Option<&str>,
        least: usize,
        most: f64,
    ) -> Option<Vec<DVec2>> {
        self.expects(key, || Kind::Points { least, most });
        let items = self.entries(node, key)?;
        if items.len() < least {
            let message = text::LIST_TOO_SHORT.with("key", key).with("least", least).with("found", items.len());
            self.fault_at(node, key, message, None);
            return None;
        }
        if unit.is_none()
            && let Some((number, written)) = plain_number(items)
        {
            // Said once a list: the unit of all its numbers is missing, not that of each.
            let message = text::VALUE_MISSING_UNIT.with("value", written).with("dimension", text::DIMENSION_LENGTH);
            let hint = text::HINT_LIST_UNIT.message();
            self.document().report_as("quantity::missing-unit", number.span, &self.path_of(key), message, hint);
            return None;
        }
        let points: Vec<Option<DVec2>> = items
            .iter()
            .map(|item| {
                self.numbers::<2>(item, key, Dimension::Length, Bound::Within(-most, most), unit).map(DVec2::from_array)
            })
            .collect();
        let points: Vec<DVec2> = points.into_iter().collect::<Option<_>>()?;
        self.found(key, || SeenValue::Points(points.clone()), self.source());
        Some(points)
    }

    /// `unit = "m"` of a table, for its lists of plain numbers. Only the unit of a length is possible.
    pub fn list_unit(&self) -> Option<String> {
        self.unit_of("unit", Dimension::Length, "m")
    }

    /// A unit of that dimension under `key`, for lists of plain numbers.
    pub(crate) fn unit_of(&self, key: &str, dimension: Dimension, instead: &str) -> Option<String> {
        let node = self.optional(key)?;
        let unit = self.as_text(node, key)?;
        // After a wrong one reading goes on with another: its numbers have no faults of their own.
        let right = self.parsed(&format!("1 {unit}"), node, key, dimension).is_some();
        Some(if right { unit } else { instead }.to_owned())
    }

    /// A value as a quantity in SI, within its bound. `unit`: of plain numbers in a list.
    pub fn as_quantity(
        &self,
        node: &'d Node,
        key: &str,
        dimension: Dimension,
        bound: Bound,
        unit: Option<&str>,
    ) -> Option<f64> {
        self.expects(key, || Kind::Quantity { dimension, bound });
        if unit.is_some() {
            self.expects(key, || Kind::Plain);
        }
        let si = self.quantity_of(node, key, dimension, bound, unit)?;
        self.found(key, || SeenValue::Quantities(vec![Quantity::new(si, dimension)]), None);
        Some(si)
    }

    fn quantity_of(
        &self,
        node: &'d Node,
        key: &str,
        dimension: Dimension,
        bound: Bound,
        unit: Option<&str>,
    ) -> Option<f64> {
        if let (Value::Number(n), Some("m"), Dimension::Length) = (&node.value, unit, dimension)
            && let Some(metres) = plain_metres(n, bound)
        {
            return Some(metres);
        }
        let plain = matches!(dimension, Dimension::Number | Dimension::Ratio);
        let written = match (&node.value, unit) {
            (Value::Text(t), _) => match placeholder::behind(t) {
                Some(made_up) if self.left_open(node, key) => made_up.to_owned(),
                Some(_) => return None,
                None => t.clone(),
            },
            (Value::Number(n), Some(unit)) => format!("{n} {unit}"),
            (Value::Number(n), None) if plain => n.clone(),
            (Value::Number(n), None) => {
                let message = text::VALUE_MISSING_UNIT.with("value", n).with("dimension", name(dimension));
                let hint = text::HINT_EXAMPLE.with("example", format!("\"{n} {}\"", unit_example(dimension)));
                self.document().report_as("quantity::missing-unit", node.span, &self.path_of(key), message, hint);
                return None;
            }
            _ => {
                self.wrong_type(node, key, if plain { text::TYPE_NUMBER } else { text::TYPE_QUANTITY });
                return None;
            }
        };
        // A share as a plain number, 0.5, is as good as "50 %".
        let read_as = if matches!(node.value, Value::Number(_)) && plain { Dimension::Number } else { dimension };
        let quantity = self.parsed(&written, node, key, read_as)?;
        let si = quantity.si;
        let message = match bound {
            Bound::Any => return Some(si),
            Bound::NotNegative if si >= 0.0 => return Some(si),
            Bound::Positive if si > 0.0 => return Some(si),
            Bound::UpTo(high) if si > 0.0 && si <= high => return Some(si),
            Bound::ZeroTo(high) if si >= 0.0 && si <= high => return Some(si),
            Bound::Within(low, high) if si >= low && si <= high => return Some(si),
            Bound::UpTo(high) | Bound::ZeroTo(high) if si > high => {
                let message =
                    text::TOO_MUCH.with("key", key).with("value", written).with("high", Quantity::new(high, dimension));
                self.fault_at(node, key, message, Some(text::HINT_UNIT_SLIP.message()));
                return None;
            }
            Bound::NotNegative | Bound::ZeroTo(_) => text::NEGATIVE.with("key", key).with("value", written),
            Bound::Positive | Bound::UpTo(_) => text::NOT_POSITIVE.with("key", key).with("value", written),
            Bound::Within(low, high) => text::OUT_OF_RANGE
                .with("key", key)
                .with("value", written)
                .with("low", Quantity::new(low, dimension))
                .with("high", Quantity::new(high, dimension)),
        };
        self.fault_at(node, key, message, None);
        None
    }

    fn parsed(&self, written: &str, node: &Node, key: &str, dimension: Dimension) -> Option<Quantity> {
        match quantity::parse(written, dimension) {
            Ok(q) => Some(q),
            Err(e) => {
                let (message, hint) = in_words(&e, written, key, dimension);
                let span = self.document().inside(node.span, written, e.span());
                self.document().report_as(e.code(), span, &self.path_of(key), message, hint);
                None
            }
        }
    }
}

/// A plain decimal number of metres within its bound: nearly all that charts and courses are made of.
/// Whatever else stands there goes the long way, which has the words for what is wrong.
fn plain_metres(written: &str, bound: Bound) -> Option<f64> {
    let digits = written.strip_prefix('-').unwrap_or(written);
    let plain = digits.bytes().all(|b| b.is_ascii_digit() || b == b'.') && digits.len() < 16;
    let metres: f64 = if plain { written.parse().ok()? } else { return None };
    let inside = match bound {
        Bound::Any => true,
        Bound::Within(low, high) => metres >= low && metres <= high,
        Bound::ZeroTo(high) => metres >= 0.0 && metres <= high,
        Bound::NotNegative | Bound::Positive | Bound::UpTo(_) => false,
    };
    inside.then_some(metres)
}

/// The first plain number in a list of points.
fn plain_number(items: &[Node]) -> Option<(&Node, &str)> {
    items.iter().find_map(|item| match &item.value {
        Value::Number(n) => Some((item, n.as_str())),
        Value::List(inner) => plain_number(inner),
        _ => None,
    })
}

/// What a quantity that could not be read says, and what to do.
fn in_words(error: &ParseError, value: &str, key: &str, wanted: Dimension) -> (Message, Message) {
    let example = text::HINT_EXAMPLE.with("example", example(key, wanted));
    let dimension = name(wanted);
    let message = match error {
        ParseError::Empty { .. } => text::VALUE_EMPTY.with("dimension", dimension),
        ParseError::NoNumber { .. } => text::VALUE_NO_NUMBER.with("value", value).with("dimension", dimension),
        ParseError::BadNumber { .. } => text::VALUE_BAD_NUMBER.with("value", value),
        ParseError::NotFinite { .. } => text::VALUE_NOT_FINITE.with("value", value),
        ParseError::AmbiguousSeparator { readings: [first, second], span } => {
            let message =
                text::VALUE_AMBIGUOUS_SEPARATOR.with("value", value).with("first", first).with("second", second);
            let whole = |reading: &str| {
                let (before, behind) = (value.get(..span.start), value.get(span.end..));
                format!("{}{reading}{}", before.unwrap_or_default(), behind.unwrap_or_default())
            };
            return (message, text::HINT_EITHER.with("first", whole(first)).with("second", whole(second)));
        }
        ParseError::MissingUnit { .. } => {
            let with_unit = format!("\"{} {}\"", value.trim(), unit_example(wanted));
            return (
                text::VALUE_MISSING_UNIT.with("value", value).with("dimension", dimension),
                text::HINT_EXAMPLE.with("example", with_unit),
            );
        }
        ParseError::UnknownUnit { unit, nearest, .. } => {
            let message = text::VALUE_UNKNOWN_UNIT.with("unit", unit).with("dimension", dimension);
            let hint = match nearest {
                Some(near) => text::HINT_NEAREST.with("nearest", *near),
                None => text::HINT_KNOWN.with("known", quantity::unit_examples(wanted).join(", ")),
            };
            return (message, hint);
        }
        ParseError::AmbiguousUnit { unit, choices, .. } => {
            text::VALUE_AMBIGUOUS_UNIT.with("unit", unit).with("choices", choices.join(", "))
        }
        ParseError::WrongDimension { found, .. } => {
            text::VALUE_WRONG_DIMENSION.with("value", value).with("found", name(*found)).with("expected", dimension)
        }
        ParseError::AmbiguousRatio { .. } => text::VALUE_AMBIGUOUS_RATIO.with("value", value),
        ParseError::TooSteep { .. } => text::VALUE_TOO_STEEP.with("value", value),
        ParseError::BadParts { .. } => text::VALUE_BAD_PARTS.with("value", value),
        ParseError::Trailing { text: rest, .. } => text::VALUE_TRAILING.with("value", value).with("rest", rest),
        ParseError::Negative { .. } => text::NEGATIVE.with("key", key).with("value", value),
        ParseError::Zero { .. } => text::NOT_POSITIVE.with("key", key).with("value", value),
    };
    (message, example)
}

/// The text that names a dimension.
pub(crate) fn name(dimension: Dimension) -> TextId {
    match dimension {
        Dimension::Length => text::DIMENSION_LENGTH,
        Dimension::Area => text::DIMENSION_AREA,
        Dimension::Volume => text::DIMENSION_VOLUME,
        Dimension::Mass => text::DIMENSION_MASS,
        Dimension::Angle => text::DIMENSION_ANGLE,
        Dimension::Slope => text::DIMENSION_SLOPE,
        Dimension::Ratio => text::DIMENSION_RATIO,
        Dimension::Number => text::DIMENSION_NUMBER,
        Dimension::Force => text::DIMENSION_FORCE,
        Dimension::Moment => text::DIMENSION_MOMENT,
        Dimension::Pressure => text::DIMENSION_PRESSURE,
        Dimension::Speed => text::DIMENSION_SPEED,
        Dimension::Voltage => text::DIMENSION_VOLTAGE,
        Dimension::Density => text::DIMENSION_DENSITY,
        Dimension::Stiffness => text::DIMENSION_STIFFNESS,
        Dimension::UnitWeight => text::DIMENSION_UNIT_WEIGHT,
        Dimension::SecondMoment => text::DIMENSION_SECOND_MOMENT,
    }
}

fn unit_example(dimension: Dimension) -> &'static str {
    match dimension {
        Dimension::Length => "m",
        Dimension::Area => "m²",
        Dimension::Volume => "m³",
        Dimension::Mass => "kg",
        Dimension::Angle => "°",
        Dimension::Slope | Dimension::Ratio => "%",
        Dimension::Number => "",
        Dimension::Force => "kN",
        Dimension::Moment => "kN·m",
        Dimension::Pressure => "kPa",
        Dimension::Speed => "m/s",
        Dimension::Voltage => "kV",
        Dimension::Density => "kg/m³",
        Dimension::Stiffness => "kN/m",
        Dimension::UnitWeight => "kN/m³",
        Dimension::SecondMoment => "cm⁴",
    }
}

/// A line of a file with a value of that dimension.
fn example(key: &str, dimension: Dimension) -> String {
    let value = match dimension {
        Dimension::Length => "3.00 m",
        Dimension::Area => "0.16 m²",
        Dimension::Volume => "0.5 m³",
        Dimension::Mass => "1200 kg",
        Dimension::Angle => "4°",
        Dimension::Slope => "7 %",
        Dimension::Ratio => "10 %",
        Dimension::Number => "1.5",
        Dimension::Force => "12 kN",
        Dimension::Moment => "30 kN·m",
        Dimension::Pressure => "150 kPa",
        Dimension::Speed => "10 m/s",
        Dimension::Voltage => "11 kV",
        Dimension::Density => "1800 kg/m³",
        Dimension::Stiffness => "600 kN/m",
        Dimension::UnitWeight => "18 kN/m³",
        Dimension::SecondMoment => "800 cm⁴",
    };
    format!("{key} = \"{value}\"")
}
