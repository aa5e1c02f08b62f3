//! The part of a base that an eccentric force presses evenly.

use crate::Refusal;

/// A base on the ground.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Footprint {
    /// A rectangle, m. A strip is a rectangle of infinite length: capacities are then per metre of it.
    Rectangle {
        /// One side, m.
        width: f64,
        /// The other side, m.
        length: f64,
    },
    /// A round pad.
    Round {
        /// Diameter, m.
        diameter: f64,
    },
}

/// Forces on a base, in the directions of its sides.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Load {
    /// Down, N.
    pub vertical: f64,
    /// Along width and along length, N; signs do not matter.
    pub horizontal: [f64; 2],
    /// How far the force falls from the middle, along width and length, m; signs do not matter.
    pub eccentricity: [f64; 2],
}

/// The even part: the shorter side is the width.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Effective {
    /// `B′`, m.
    pub width: f64,
    /// `L′`, m; infinite for a strip.
    pub length: f64,
    /// `A′`, m²; of a strip, for a metre of it.
    pub area: f64,
    /// `B′/L′`; 0 for a strip.
    pub ratio: f64,
    /// Shorter side of the whole base, m.
    pub full_width: f64,
    /// Horizontal force along `B′` and along `L′`, N.
    pub horizontal: [f64; 2],
    /// True for a round base.
    pub round: bool,
}

impl Footprint {
    /// A tyre's patch of that area (m²) under a tyre of that width (m).
    pub fn patch(area: f64, tyre_width: f64) -> Self {
        Self::Rectangle { width: tyre_width, length: area / tyre_width }
    }

    /// Its area, m².
    pub fn area(self) -> f64 {
        match self {
            Self::Rectangle { width, length } => width * length,
            Self::Round { diameter } => core::f64::consts::FRAC_PI_4 * diameter * diameter,
        }
    }

    /// Effective dimensions: `B′ = B − 2·e_B`, `L′ = L − 2·e_L` (Meyerhof 1953; FHWA-SA-02-054, equations 6-6 and
    /// 6-7, read); of a round base the lens that is symmetrical about the force, as a rectangle of the same area
    /// and the same proportion of its axes (API RP 2GEO 2011, A.7; second hand).
    ///
    /// # Errors
    /// [`Refusal::NoNumber`]; [`Refusal::OffBase`] where nothing is left.
    pub fn effective(self, load: &Load) -> Result<Effective, Refusal> {
        let [push_b, push_l] = load.horizontal.map(f64::abs);
        let [e_b, e_l] = load.eccentricity.map(f64::abs);
        match self {
            Self::Rectangle { width, length } => {
                let (b, l) = (width - 2.0 * e_b, length - 2.0 * e_l);
                let sound = width > 0.0 && width.is_finite() && length > 0.0 && e_b.is_finite() && e_l.is_finite();
                if !sound {
                    return Err(Refusal::NoNumber);
                }
                if b <= 0.0 || l <= 0.0 {
                    return Err(Refusal::OffBase);
                }
                let area = if l.is_finite() { b * l } else { b };
                let (width_, length_, horizontal) =
                    if b <= l { (b, l, [push_b, push_l]) } else { (l, b, [push_l, push_b]) };
                let full_width = width.min(length);
                Ok(Effective {
                    width: width_,
                    length: length_,
                    area,
                    ratio: width_ / length_,
                    full_width,
                    horizontal,
                    round: false,
                })
            }
            Self::Round { diameter } => {
                let (r, e) = (0.5 * diameter, libm::hypot(e_b, e_l));
                if !(r > 0.0 && r.is_finite() && e.is_finite()) {
                    return Err(Refusal::NoNumber);
                }
                if e >= r {
                    return Err(Refusal::OffBase);
                }
                let area = 2.0 * (r * r * libm::acos(e / r) - e * libm::sqrt(r * r - e * e));
                let axes = libm::sqrt((r - e) / (r + e));
                let length = libm::sqrt(area / axes);
                let push = libm::hypot(push_b, push_l);
                Ok(Effective {
                    width: length * axes,
                    length,
                    area,
                    ratio: axes,
                    full_width: diameter,
                    // Which way it pushes does not show on a round base: the shorter side is the worse.
                    horizontal: [push, 0.0],
                    round: true,
                })
            }
        }
    }
}

impl Effective {
    /// The whole horizontal force, N.
    pub fn push(&self) -> f64 {
        libm::hypot(self.horizontal[0], self.horizontal[1])
    }

    /// Exponent of the inclination factors: `m_B = (2 + B′/L′)/(1 + B′/L′)`, `m_L` alike, and between them by
    /// `m = m_L·cos²θ + m_B·sin²θ` with `θ` from the long side (EN 1997-1:2004, D.4; Vesić 1973; second hand).
    pub fn exponent(&self) -> f64 {
        let m = |r: f64| (2.0 + r) / (1.0 + r);
        let (m_b, m_l) = (m(self.ratio), if self.ratio > 0.0 { m(1.0 / self.ratio) } else { 1.0 });
        let push = self.push();
        if push > 0.0 {
            let sine = self.horizontal[0] / push;
            m_l + (m_b - m_l) * sine * sine
        } else {
            m_b
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn eccentricity_takes_both_sides_and_the_shorter_becomes_the_width() {
        let base = Footprint::Rectangle { width: 1.0, length: 1.2 };
        let load = Load { vertical: 1.0, horizontal: [3.0, 4.0], eccentricity: [-0.1, 0.3] };
        let e = base.effective(&load).unwrap_or_else(|r| unreachable!("{r:?}"));
        assert!((e.width - 0.6).abs() < 1e-12 && (e.length - 0.8).abs() < 1e-12);
        assert_eq!(e.horizontal, [4.0, 3.0], "pushes turn with the sides");
        let off = Load { eccentricity: [0.5, 0.0], ..load };
        assert_eq!(base.effective(&off), Err(Refusal::OffBase));
        let none = Load { eccentricity: [f64::NAN, 0.0], ..load };
        assert_eq!(base.effective(&none), Err(Refusal::NoNumber));
    }

    #[test]
    fn a_round_base_without_eccentricity_is_whole() {
        let base = Footprint::Round { diameter: 0.5 };
        let e = base.effective(&Load::default()).unwrap_or_else(|r| unreachable!("{r:?}"));
        assert!((e.area - base.area()).abs() < 1e-12 && (e.ratio - 1.0).abs() < 1e-12);
    }
}
