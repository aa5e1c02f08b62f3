//! Pads that stand on a kerb or over an edge with part of their area.

use crate::{Footprint, Load, Refusal};

/// A rectangle pad whose contact is a strip of it: from `from` to `to` (m) along its width, measured from its middle, over
/// its whole length.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PartialContact {
    /// Width, across which contact is partial, m.
    pub width: f64,
    /// Length, m.
    pub length: f64,
    /// Where contact begins, from the middle, m.
    pub from: f64,
    /// Where it ends, m.
    pub to: f64,
}

impl PartialContact {
    /// What presses the ground, for [`crate::ultimate_bearing`]: the strip as base, the force off its middle.
    ///
    /// # Errors
    /// [`Refusal::OffMat`] where the pad's middle, and with it the force, is not over what it stands on: the pad tips;
    /// [`Refusal::NoNumber`].
    pub fn base(&self, vertical: f64) -> Result<(Footprint, Load), Refusal> {
        let half = 0.5 * self.width;
        let sound = self.width > 0.0 && self.length > 0.0 && self.from < self.to && vertical >= 0.0;
        if !(sound && self.width.is_finite() && self.length.is_finite() && self.from.is_finite() && self.to.is_finite())
        {
            return Err(Refusal::NoNumber);
        }
        let (from, to) = (self.from.max(-half), self.to.min(half));
        if !(from < 0.0 && to > 0.0) {
            return Err(Refusal::OffMat);
        }
        let base = Footprint::Rectangle { width: to - from, length: self.length };
        let load = Load { vertical, eccentricity: [0.5 * (from + to).abs(), 0.0], ..Load::default() };
        Ok((base, load))
    }

    /// Greatest pressure (Pa) of a stiff pad: even over what is symmetrical about the force.
    ///
    /// # Errors
    /// As [`PartialContact::base`].
    pub fn pressure(&self, vertical: f64) -> Result<f64, Refusal> {
        let (base, load) = self.base(vertical)?;
        Ok(vertical / base.effective(&load)?.area)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn half_a_pad_on_a_kerb_presses_harder_and_less_than_half_tips() {
        let whole = PartialContact { width: 0.6, length: 0.5, from: -0.3, to: 0.3 };
        assert!(whole.pressure(60e3).is_ok_and(|p| (p - 200e3).abs() < 1e-6));
        let kerb = PartialContact { from: -0.3, to: 0.1, ..whole };
        // 0.2 m about the force carry it.
        assert!(kerb.pressure(60e3).is_ok_and(|p| (p - 600e3).abs() < 1e-6));
        let tips = PartialContact { from: -0.3, to: -0.05, ..whole };
        assert_eq!(tips.pressure(60e3), Err(Refusal::OffMat));
        assert_eq!(PartialContact { to: f64::NAN, ..whole }.pressure(60e3), Err(Refusal::NoNumber));
    }
}
