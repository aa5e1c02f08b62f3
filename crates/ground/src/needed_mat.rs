//! The smallest square mat that works, and the thickness that a mat of given size needs.

use crate::mat_material::MatMaterial;
use crate::mats::{Mat, MatAnswer, PadOnMat};
use crate::step_values::{force, length, pressure};
use crate::{Refusal, text};
use evidence::{Silent, Source, Step, Trace};

/// Sides are tried in steps of 5 cm (ours: nobody cuts closer).
pub const SIDE_STEP: f64 = 0.05;
/// Thickness in steps of 5 mm.
pub const THICKNESS_STEP: f64 = 0.005;

/// Smallest square mat of that thickness (m) under which the ground carries the force: `allowable` is what the ground
/// carries (Pa) under a rectangle of those sides (m). Sides up to `largest`.
///
/// # Errors
/// [`Refusal::NoMat`] where none works; what [`Mat::under`] or `allowable` refuses, but for
/// [`Refusal::TooNarrow`].
pub fn smallest_square(
    pad: [f64; 2],
    force_on_pad: f64,
    thickness: f64,
    material: &MatMaterial,
    largest: f64,
    allowable: impl Fn([f64; 2]) -> Result<f64, Refusal>,
    trace: &mut impl Trace,
) -> Result<(Mat, MatAnswer), Refusal> {
    if !(largest > 0.0 && largest <= 100.0) {
        return Err(Refusal::NoNumber);
    }
    let on = PadOnMat { pad, offset: [0.0; 2], force: force_on_pad };
    let first = libm::ceil(pad[0].max(pad[1]) / SIDE_STEP - 1e-9) as u32;
    let last = libm::floor(largest / SIDE_STEP + 1e-9) as u32;
    for k in first..=last {
        let side = f64::from(k) * SIDE_STEP;
        let mat = Mat { size: [side, side], thickness, material: material.clone() };
        let answer = mat.under(&on, &mut Silent)?;
        let carries = match allowable(answer.works) {
            // Presumed values hold from a width on: a larger mat may have it.
            Err(Refusal::TooNarrow { .. }) => continue,
            other => other?,
        };
        if answer.pressure <= carries {
            let answer = mat.under(&on, trace)?;
            trace.step(|| Step {
                title: text::STEP_MAT_SIDE.message(),
                formula: "p = F/(L′·B′) ≤ q".into(),
                values: vec![
                    force("F", force_on_pad),
                    length("L′", answer.works[0]),
                    length("B′", answer.works[1]),
                    pressure("q", carries),
                ],
                result: length("B", side),
                source: Source::Mechanics,
            });
            return Ok((mat, answer));
        }
    }
    Err(Refusal::NoMat { side: largest })
}

/// Least thickness (m, in steps, up to `thickest`) with which a mat of that size presses the ground with no more than
/// `allowable` (Pa).
///
/// # Errors
/// [`Refusal::NoMat`] where none does; what [`Mat::under`] refuses.
pub fn least_thickness(
    pad: &PadOnMat,
    size: [f64; 2],
    material: &MatMaterial,
    thickest: f64,
    allowable: f64,
) -> Result<(Mat, MatAnswer), Refusal> {
    if !(thickest > 0.0 && thickest <= 10.0) {
        return Err(Refusal::NoNumber);
    }
    let last = libm::floor(thickest / THICKNESS_STEP + 1e-9) as u32;
    for k in 1..=last {
        let mat = Mat { size, thickness: f64::from(k) * THICKNESS_STEP, material: material.clone() };
        let answer = mat.under(pad, &mut Silent)?;
        if answer.pressure <= allowable {
            return Ok((mat, answer));
        }
    }
    Err(Refusal::NoMat { side: size[0] })
}
