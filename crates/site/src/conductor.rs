//! How a conductor hangs: parabola and catenary.

/// Sag at mid-span of a conductor between supports, as a parabola, m below the chord:
/// `s = w·L² / (8·H)`.
///
/// `span`: m in plan; `weight`: N/m; `tension`: horizontal part, N. Source: Mehta and Mehta,
/// Principles of Power System, 8.16 (second hand; worked examples 8.17, 8.23).
pub fn parabolic_sag(span: f64, weight: f64, tension: f64) -> f64 {
    weight * span * span / (8.0 * tension)
}

/// Sag of a conductor that wind pushes sideways.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WindSag {
    /// Along the plane in which it hangs, m.
    pub slant: f64,
    /// Straight down, m.
    pub vertical: f64,
    /// Sideways, m.
    pub sideways: f64,
}

/// Sag with wind across the span: the resultant of weight and wind takes the place of the weight.
///
/// `weight`, `wind`: N/m; `tension`: N. Source: Mehta and Mehta, example 8.18 (second hand).
pub fn sag_with_wind(span: f64, weight: f64, wind: f64, tension: f64) -> WindSag {
    let resultant = libm::hypot(weight, wind);
    let slant = parabolic_sag(span, resultant, tension);
    WindSag { slant, vertical: slant * weight / resultant, sideways: slant * wind / resultant }
}

/// A catenary `z = c·cosh((x − x₀)/c) + k` between two supports; x runs in plan from the first.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Catenary {
    /// `c`: horizontal tension over weight, m.
    pub parameter: f64,
    /// Plan distance of the supports, m.
    pub span: f64,
    lowest_at: f64,
    offset: f64,
}

impl Catenary {
    /// The catenary of parameter `c` whose second support is `rise` m higher than the first (at 0).
    ///
    /// `x₀ = L/2 − c·asinh(h / (2c·sinh(L/2c)))`, from the two ends on the curve.
    pub fn with_parameter(parameter: f64, span: f64, rise: f64) -> Self {
        let c = parameter;
        let lowest_at = span * 0.5 - c * libm::asinh(rise / (2.0 * c * libm::sinh(span / (2.0 * c))));
        Self { parameter, span, lowest_at, offset: -c * libm::cosh(lowest_at / c) }
    }

    /// The catenary that hangs `sag` below the chord at mid-span; `None` unless span and sag are
    /// positive and the sag is at most the span.
    ///
    /// There is no closed inverse: the sag falls steadily with `c`, and Newton's steps from the
    /// parabola's `c = L²/8s` settle in a few.
    pub fn with_sag(span: f64, rise: f64, sag: f64) -> Option<Self> {
        if !(span > 0.0 && sag > 0.0 && sag <= span && rise.is_finite()) {
            return None;
        }
        let sag_of = |c: f64| rise * 0.5 - Self::with_parameter(c, span, rise).height(span * 0.5);
        let mut c = span * span / (8.0 * sag);
        for _ in 0..40 {
            let miss = sag_of(c) - sag;
            if miss.abs() <= 1e-12 * span {
                break;
            }
            let step = 1e-6 * c;
            let slope = (sag_of(c + step) - sag_of(c - step)) / (2.0 * step);
            let next = c - miss / slope;
            c = if next.is_finite() && next > 0.0 { next } else { c * 0.5 };
        }
        let found = Self::with_parameter(c, span, rise);
        // The residual of a curve that did not settle is no curve to trust.
        ((sag_of(c) - sag).abs() <= 1e-6 * span).then_some(found)
    }

    /// Height over the first support at `x`, m.
    pub fn height(&self, x: f64) -> f64 {
        self.parameter * libm::cosh((x - self.lowest_at) / self.parameter) + self.offset
    }

    /// Place of the lowest point, m from the first support; may lie outside the span.
    pub fn lowest_at(&self) -> f64 {
        self.lowest_at
    }

    /// Greatest bend `d²z/dx² = cosh((x − x₀)/c)/c` in the span, 1/m.
    pub fn greatest_bend(&self) -> f64 {
        let far = self.lowest_at.abs().max((self.span - self.lowest_at).abs());
        libm::cosh(far / self.parameter) / self.parameter
    }
}
