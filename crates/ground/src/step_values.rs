//! Symbols with their values, as a step of a working takes them.

use quantity::{Dimension, Quantity};
use std::borrow::Cow;

pub(crate) type Value = (Cow<'static, str>, Quantity);

fn value(symbol: &'static str, si: f64, dimension: Dimension) -> Value {
    (symbol.into(), Quantity::new(si, dimension))
}
pub(crate) fn length(symbol: &'static str, m: f64) -> Value {
    value(symbol, m, Dimension::Length)
}
pub(crate) fn area(symbol: &'static str, m2: f64) -> Value {
    value(symbol, m2, Dimension::Area)
}
pub(crate) fn force(symbol: &'static str, n: f64) -> Value {
    value(symbol, n, Dimension::Force)
}
pub(crate) fn pressure(symbol: &'static str, pa: f64) -> Value {
    value(symbol, pa, Dimension::Pressure)
}
pub(crate) fn weight(symbol: &'static str, n_m3: f64) -> Value {
    value(symbol, n_m3, Dimension::UnitWeight)
}
pub(crate) fn angle(symbol: &'static str, rad: f64) -> Value {
    value(symbol, rad, Dimension::Angle)
}
pub(crate) fn number(symbol: &'static str, n: f64) -> Value {
    value(symbol, n, Dimension::Number)
}
pub(crate) fn moment(symbol: &'static str, nm: f64) -> Value {
    value(symbol, nm, Dimension::Moment)
}
