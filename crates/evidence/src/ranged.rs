//! A value with its bounds.

use serde::{Deserialize, Serialize};

/// A nominal value with the lowest and highest it may be. SI inside, dimension by context.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub struct Ranged {
    /// The lowest it may be.
    pub low: f64,
    /// The value as given.
    pub nominal: f64,
    /// The highest it may be.
    pub high: f64,
}

impl Ranged {
    /// A value known exactly.
    pub fn exact(value: f64) -> Self {
        Self { low: value, nominal: value, high: value }
    }
    /// `nominal` ± `half`.
    pub fn plus_minus(nominal: f64, half: f64) -> Self {
        Self { low: nominal - half, nominal, high: nominal + half }
    }
    /// `nominal` with a share below and above it: `(0.05, 0.10)` is −5 % +10 %.
    pub fn shares(nominal: f64, below: f64, above: f64) -> Self {
        Self { low: nominal * (1.0 - below), nominal, high: nominal * (1.0 + above) }
    }
}

impl std::ops::Add for Ranged {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self { low: self.low + other.low, nominal: self.nominal + other.nominal, high: self.high + other.high }
    }
}
