//! Vertical stiffness of a tyre that nobody measured, from its size and pressure.
//!
//! Two published fits are asked and the softer one counts, less a fifth for the spread between tyres
//! (our own figure): a softer tyre makes the machine lean more and tip sooner.

use crate::Tyre;
use quantity::{Pressure, Si};

/// Share of the fit that counts (our own figure).
const SURE: f64 = 0.8;
/// Height of the sidewall over the section width, where the rim is not known (common practice for
/// tyres of rough-terrain machines).
const SIDEWALL: f64 = 0.8;
/// Pressure where none is known, Pa: low for such a machine (our own figure). A solid tyre is stiffer.
const UNKNOWN_PRESSURE: f64 = 2e5;

/// N/m for one tyre. NaN or not positive where the tyre's own measures are.
pub fn tyre_stiffness(tyre: &Tyre) -> f64 {
    if let Some(stated) = tyre.stiffness {
        return stated;
    }
    let (radius, width) = (tyre.free_radius.si(), tyre.width.si());
    let pressure = tyre.pressure.map_or(UNKNOWN_PRESSURE, |p| p.si());
    let rim = rim(tyre);
    rhyne(radius, width, rim, pressure).min(lines_murphy(width, rim, pressure)) * SURE
}

/// Diameter of the rim, m.
fn rim(tyre: &Tyre) -> f64 {
    let (radius, width) = (tyre.free_radius.si(), tyre.width.si());
    // Never less than a third of the radius: narrow measures of wide tyres are no rim.
    let usual = || (2.0 * (radius - SIDEWALL * width)).max(radius * 2.0 / 3.0);
    tyre.rim.map_or_else(usual, |rim| rim.si())
}

/// Height of the sidewall, m: by as much a wheel stands lower when its tyre is flat.
pub fn sidewall(tyre: &Tyre) -> f64 {
    tyre.free_radius.si() - rim(tyre) / 2.0
}

impl Tyre {
    /// The same tyre at another pressure. A stiffness that its maker gives goes with the pressure (handbook
    /// practice, from memory: the carcass bears a small part only).
    #[must_use]
    pub fn at(&self, pressure: Pressure) -> Self {
        let share = self.pressure.map_or(1.0, |asked| pressure.si() / asked.si());
        Self { pressure: Some(pressure), stiffness: self.stiffness.map(|k| k * share), ..self.clone() }
    }
}

/// Belted radial tyres: `K = 0.00028 · p · √((−0.004 · AR + 1.03) · SN · (SN · AR / 50 + DR)) + 3.45`
/// in kg/mm with kPa and mm (Rhyne, Tire Science and Technology 33(3), 2005; from memory).
fn rhyne(radius: f64, width: f64, rim: f64, pressure: f64) -> f64 {
    let (section, rim_mm) = (width * 1e3, rim * 1e3);
    let aspect = 100.0 * (radius - rim / 2.0) / width;
    let under = (1.03 - 0.004 * aspect) * section * (section * aspect / 50.0 + rim_mm);
    (0.00028 * pressure * 1e-3 * under.sqrt() + 3.45) * quantity::STANDARD_GRAVITY * 1e3
}

/// Tyres of farm and rough-terrain machines, new: `K = 172 − 1.77 · D + 0.34 · W · D · p` in kN/m with
/// rim diameter and width in inches and bar (Lines and Murphy, Journal of Terramechanics 28, 1991;
/// from memory).
fn lines_murphy(width: f64, rim: f64, pressure: f64) -> f64 {
    const INCH: f64 = 0.0254;
    let (rim, width) = (rim / INCH, width / INCH);
    (172.0 - 1.77 * rim + 0.34 * width * rim * pressure * 1e-5) * 1e3
}

#[cfg(test)]
mod tests {
    use super::*;
    use quantity::{metres, pascals};

    fn tyre(radius: f64, width: f64, bar: f64) -> Tyre {
        Tyre {
            free_radius: metres(radius),
            width: metres(width),
            pressure: Some(pascals(bar * 1e5)),
            rim: None,
            stiffness: None,
        }
    }

    #[test]
    fn two_fits_for_a_common_size_agree_within_a_quarter() {
        let (radius, width, rim, p) = (0.60, 0.40, 0.56, 4e5);
        let (a, b) = (rhyne(radius, width, rim, p), lines_murphy(width, rim, p));
        assert!((a / b - 1.0).abs() < 0.25, "{a} {b}");
        // By hand: 172 − 1.77·22.05 + 0.34·15.75·22.05·4 = 605 kN/m.
        assert!((b - 605e3).abs() < 1e3, "{b}");
    }

    #[test]
    fn more_air_and_a_larger_tyre_are_stiffer() {
        assert!(tyre_stiffness(&tyre(0.6, 0.4, 4.0)) > tyre_stiffness(&tyre(0.6, 0.4, 2.0)));
        assert!(tyre_stiffness(&tyre(0.6, 0.4, 4.0)) > tyre_stiffness(&tyre(0.42, 0.3, 4.0)));
        let unknown = Tyre { pressure: None, ..tyre(0.6, 0.4, 4.0) };
        assert!((tyre_stiffness(&unknown) - tyre_stiffness(&tyre(0.6, 0.4, 2.0))).abs() < 1e-6);
    }
}
