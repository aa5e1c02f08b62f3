//! The steps of a calculation, recorded only when somebody wants to see them.

use crate::{Message, Source};
use quantity::Quantity;
use serde::{Deserialize, Serialize};
use std::borrow::Cow;

/// One step: what is computed, the formula in symbols, the values put in, the result, the source.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub struct Step {
    /// What this step computes, in words.
    pub title: Message,
    /// The formula in symbols, language-free: `"W_t = M_r / a"`.
    pub formula: Cow<'static, str>,
    /// The symbols of the formula with their values, in order.
    pub values: Vec<(Cow<'static, str>, Quantity)>,
    /// Symbol and value of the result.
    pub result: (Cow<'static, str>, Quantity),
    /// Where the formula or value comes from.
    pub source: Source,
}

/// The working of one check.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize, schemars::JsonSchema)]
pub struct Working {
    /// Steps in the order of the calculation.
    pub steps: Vec<Step>,
}

/// Receives steps. Calculations are generic over it, so that one formula serves the hot path
/// ([`Silent`]: the closure is never called) and the printed working ([`Working`]).
pub trait Trace {
    /// Takes a step, built only if it is wanted.
    fn step(&mut self, build: impl FnOnce() -> Step);
}

/// Records nothing and costs nothing.
#[derive(Debug, Clone, Copy, Default)]
pub struct Silent;

impl Trace for Silent {
    #[inline]
    fn step(&mut self, _build: impl FnOnce() -> Step) {}
}

impl Trace for Working {
    fn step(&mut self, build: impl FnOnce() -> Step) {
        self.steps.push(build());
    }
}

impl<T: Trace> Trace for &mut T {
    fn step(&mut self, build: impl FnOnce() -> Step) {
        (**self).step(build);
    }
}
