//! The mats under the contacts of a lift: one, or several on each other, the top one first. Each lies turned by a quarter
//! against the one above it, the top one with its planks along the machine.

use crate::SiteMat;
use crate::context::Context;
use evidence::Trace;
use ground::mats::{Mat, MatAnswer, PadOnMat, stacked};
use ground::{FactorSet, Refusal};

/// How far off its middle a mat may come to lie, m, each way (ours).
pub(crate) const MAT_OFF_MIDDLE: f64 = 0.05;

/// True if mats lie under the contacts.
pub(crate) fn there(ctx: &Context<'_>) -> bool {
    !ctx.lift.mats.is_empty()
}

fn mats<'a>(ctx: &Context<'a>) -> impl Iterator<Item = &'a SiteMat> + use<'a> {
    let job = ctx.job;
    ctx.lift.mats.iter().filter_map(|i| job.mats.get(*i))
}

/// Along and across the machine, m, of the mat that lies on the ground, wherever within [`MAT_OFF_MIDDLE`] it comes to lie;
/// `None` without mats.
pub(crate) fn outline(ctx: &Context<'_>) -> Option<[f64; 2]> {
    let all: Vec<_> = mats(ctx).collect();
    let lowest = all.last()?;
    let around = lowest.mat.size.map(|side| side + 2.0 * MAT_OFF_MIDDLE);
    Some(in_machine(around, all.len()))
}

/// Sides along and across the machine of the part that presses the ground under a pad of those sides (m) and a force (N);
/// `None` without mats. A factor set divides the mats' strength.
pub(crate) fn works(
    ctx: &Context<'_>,
    pad: [f64; 2],
    force: f64,
    set: Option<FactorSet>,
    trace: &mut impl Trace,
) -> Option<Result<[f64; 2], Refusal>> {
    let mats: Vec<Mat> = mats(ctx)
        .map(|kind| Mat {
            material: set.map_or_else(|| kind.mat.material.clone(), |set| set.on_mat(&kind.mat.material)),
            ..kind.mat.clone()
        })
        .collect();
    if mats.is_empty() {
        return None;
    }
    let on = PadOnMat { pad, offset: [MAT_OFF_MIDDLE; 2], force };
    let lowest = |answers: Vec<MatAnswer>| answers.last().map_or([0.0; 2], |a| in_machine(a.works, answers.len()));
    Some(stacked(&mats, &on, trace).map(lowest))
}

/// Sides of the `number`th mat, along its planks and across, as along and across the machine.
fn in_machine([along, across]: [f64; 2], number: usize) -> [f64; 2] {
    if number.is_multiple_of(2) { [across, along] } else { [along, across] }
}
