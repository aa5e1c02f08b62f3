//! Ruts of wheels on soft ground. All from memory; such rules scatter by half and more, so they tell good ground from
//! bad and no more.

use crate::step_values::{force, length, number, pressure};
use crate::{Refusal, text};
use core::f64::consts::PI;
use evidence::{Ranged, Source, Step, Trace};

/// How deep ruts may become, by how often it is driven. Factors of the shear strength without a separating fabric
/// (Steward, Williamson & Mohney 1977, US Forest Service; from memory).
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Ruts {
    /// Under 5 cm after more than 1000 passes: `2.8·c_u`.
    Small,
    /// About 10 cm after fewer than 100 passes: `3.3·c_u`.
    Deep,
}

impl Ruts {
    /// Factor of the undrained strength.
    pub fn factor(self) -> f64 {
        match self {
            Self::Small => 2.8,
            Self::Deep => 3.3,
        }
    }
}

/// What a wheel does to the ground.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Rutting {
    /// Ruts stay as small as asked.
    Stays,
    /// Ruts become deeper with every pass.
    Deepens,
    /// More than `(π + 2)·c_u`: the wheel sinks.
    Sinks,
}

/// Pressure (Pa) up to which ruts stay as asked, on ground of the undrained strength `c_u` (Pa).
pub fn rut_pressure(c_u: f64, ruts: Ruts, trace: &mut impl Trace) -> f64 {
    let p = ruts.factor() * c_u;
    trace.step(|| Step {
        title: text::STEP_RUT_PRESSURE.message(),
        formula: "p = k·c_u".into(),
        values: vec![number("k", ruts.factor()), pressure("c_u", c_u)],
        result: pressure("p", p),
        source: Source::from_memory("Steward, Williamson & Mohney 1977, US Forest Service"),
    });
    p
}

/// Pressure (Pa) from which a wheel sinks, on ground of the undrained strength `c_u` (Pa): `(π + 2)·c_u`, bearing of a strip on
/// clay (Prandtl 1920).
pub fn sinking_pressure(c_u: f64) -> f64 {
    (PI + 2.0) * c_u
}

/// What a wheel of that contact pressure (Pa) does, by the low end of the strength. Not known is the worst.
pub fn rutting(contact_pressure: f64, c_u: Ranged, ruts: Ruts, trace: &mut impl Trace) -> Rutting {
    if contact_pressure <= rut_pressure(c_u.low, ruts, trace) {
        Rutting::Stays
    } else if contact_pressure <= sinking_pressure(c_u.low) {
        Rutting::Deepens
    } else {
        Rutting::Sinks
    }
}

/// A tyre for the cone-index rule.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SoftTyre {
    /// Force on it, N.
    pub force: f64,
    /// Width, m.
    pub width: f64,
    /// Diameter, m.
    pub diameter: f64,
    /// Height of its section, m.
    pub section: f64,
    /// How far it is pressed in by the force on hard ground, m.
    pub deflection: f64,
}

impl SoftTyre {
    /// Mobility number `N = CI·b·d/W·√(δ/h)/(1 + b/(2·d))` (Waterways Experiment Station; from memory), with the cone
    /// index `CI` in Pa.
    ///
    /// # Errors
    /// [`Refusal::NoNumber`].
    pub fn mobility(&self, cone_index: f64, trace: &mut impl Trace) -> Result<f64, Refusal> {
        let all = [self.force, self.width, self.diameter, self.section, self.deflection, cone_index];
        if !all.iter().all(|v| *v > 0.0 && v.is_finite()) {
            return Err(Refusal::NoNumber);
        }
        let give = libm::sqrt(self.deflection / self.section) / (1.0 + self.width / (2.0 * self.diameter));
        let n = cone_index * self.width * self.diameter / self.force * give;
        trace.step(|| Step {
            title: text::STEP_RUT_NUMBER.message(),
            formula: "N = CI·b·d/W·√(δ/h) / (1 + b/(2·d))".into(),
            values: vec![
                pressure("CI", cone_index),
                length("b", self.width),
                length("d", self.diameter),
                force("W", self.force),
                length("δ", self.deflection),
                length("h", self.section),
            ],
            result: number("N", n),
            source: Source::from_memory("wheel mobility number, US Army Waterways Experiment Station"),
        });
        Ok(n)
    }

    /// Depth of the rut after one pass, m: `z = 0.224·d/N^1.25` (Maclaurin 1990; from memory), half to twice of it.
    ///
    /// # Errors
    /// [`Refusal::NoNumber`]; [`Refusal::OutsideMethod`] where the rut would be deeper than a fifth of the diameter:
    /// such a wheel is stuck, not rolling.
    pub fn rut(&self, cone_index: f64, trace: &mut impl Trace) -> Result<Ranged, Refusal> {
        let n = self.mobility(cone_index, trace)?;
        let z = 0.224 * self.diameter / libm::pow(n, 1.25);
        if z > 0.2 * self.diameter {
            return Err(Refusal::OutsideMethod);
        }
        trace.step(|| Step {
            title: text::STEP_RUT_DEPTH.message(),
            formula: "z = 0.224·d / N^1.25".into(),
            values: vec![number("N", n), length("d", self.diameter)],
            result: length("z", z),
            source: Source::from_memory("Maclaurin 1990"),
        });
        Ok(Ranged { low: 0.5 * z, nominal: z, high: 2.0 * z })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use evidence::Silent;

    #[test]
    fn soft_ground_is_told_from_firm_by_the_low_end() {
        let say = |c: Ranged| rutting(300e3, c, Ruts::Small, &mut Silent);
        assert_eq!(say(Ranged::exact(120e3)), Rutting::Stays);
        assert_eq!(say(Ranged::exact(80e3)), Rutting::Deepens);
        assert_eq!(say(Ranged::exact(40e3)), Rutting::Sinks);
        assert_eq!(say(Ranged { low: 40e3, nominal: 120e3, high: 200e3 }), Rutting::Sinks);
        assert_eq!(rutting(f64::NAN, Ranged::exact(120e3), Ruts::Deep, &mut Silent), Rutting::Sinks);
        assert_eq!(say(Ranged::exact(f64::NAN)), Rutting::Sinks);
    }

    #[test]
    fn ruts_grow_with_force_and_shrink_with_cone_index() {
        let tyre = SoftTyre { force: 30e3, width: 0.4, diameter: 1.3, section: 0.3, deflection: 0.05 };
        let z = |t: SoftTyre, ci| t.rut(ci, &mut Silent).map_or(f64::NAN, |r| r.high);
        assert!(z(tyre, 800e3) < z(tyre, 500e3));
        assert!(z(SoftTyre { force: 40e3, ..tyre }, 800e3) > z(tyre, 800e3));
        assert_eq!(tyre.rut(20e3, &mut Silent), Err(Refusal::OutsideMethod));
        assert_eq!(tyre.rut(f64::NAN, &mut Silent), Err(Refusal::NoNumber));
    }
}
