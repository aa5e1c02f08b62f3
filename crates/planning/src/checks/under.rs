//! What the soil under each contact gives: metres of settlement for each newton on each of the four.
//!
//! Of every soil that a contact may stand on within the stand's error the one that gives most counts, and where two
//! settlements are held against each other, for the other the one that gives least.

use super::mat_stack;
use super::patches;
use crate::SoilArea;
use crate::context::Context;
use crate::posed::Posed;
use evidence::{Silent, Trace};
use geometry::DVec2;
use ground::Refusal;
use ground::mat_material::FORCE_FACTOR;
use ground::settlement::{PressedPad, RIGID, settlement_at, settlement_of};

/// Share of its greatest force at which a tyre's patch is taken for springs (ours): a shorter patch gives more for each
/// newton, and what a force below that share gives is little.
pub(super) const PATCH_AT: f64 = 0.5;

/// How much more than the greatest force a mat spreads when the machine is about to tip (ours): the more, the less of the
/// mat works. The same as comes off its strengths in bearing ([`ground::FactorSet::on_mat`]), so that no more of it is counted here.
const MAT_AT: f64 = FORCE_FACTOR;

/// Largest mat that is looked for, m (ours: what a machine lays out).
pub(super) const LARGEST_MAT: f64 = 3.0;

/// The base under a contact, machine frame.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Foot {
    /// Middle, ahead and left, m.
    pub(super) at: [f64; 2],
    /// Along and across, m.
    pub(super) sides: [f64; 2],
}

impl Foot {
    fn pressed(&self, force: f64) -> PressedPad {
        PressedPad { at: self.at, sides: self.sides, pressure: force.max(0.0) / (self.sides[0] * self.sides[1]) }
    }
}

/// What is known of the ground under one contact.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Under<'a> {
    /// No soil is stated there.
    NoSoil,
    /// What it gives cannot be told.
    Unknown(&'a SoilArea, Refusal),
    /// It can.
    Known(Gives<'a>),
}

/// m of settlement for each N on each of the four contacts.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Gives<'a> {
    /// The soil that gives most.
    pub(super) soil: &'a SoilArea,
    most: [f64; 4],
    least: [f64; 4],
}

fn under(row: [f64; 4], force: [f64; 4]) -> f64 {
    // A force that is not a number gives none.
    row.iter().zip(force).map(|(r, f)| r * if f < 0.0 { 0.0 } else { f }).sum()
}

impl<'a> Gives<'a> {
    /// One soil and no other, m/N.
    pub(super) fn of(soil: &'a SoilArea, row: [f64; 4]) -> Self {
        Self { soil, most: row, least: row }
    }

    /// Greatest and least settlement under these forces (N), m.
    pub(super) fn settles(&self, force: [f64; 4]) -> [f64; 2] {
        [under(self.most, force), under(self.least, force)]
    }
}

/// The bases under forces (N) on the contacts; a tyre's patch as long as that share of its force makes it.
pub(super) fn feet(ctx: &Context<'_>, force: [f64; 4], patch_at: f64) -> Result<[Foot; 4], Refusal> {
    let on = crate::posed::contacts(ctx);
    let places = [
        [on.front_x, on.front_half],
        [on.front_x, -on.front_half],
        [on.rear_x, on.rear_half],
        [on.rear_x, -on.rear_half],
    ];
    let mut feet = [Foot { at: [0.0; 2], sides: [0.0; 2] }; 4];
    for (i, foot) in feet.iter_mut().enumerate() {
        let pressed = force[i].max(1.0);
        foot.at = places[i];
        foot.sides = match mat_stack::works(ctx, patches::size(ctx, force[i], i), pressed * MAT_AT, None, &mut Silent) {
            Some(works) => works?,
            None => patches::size(ctx, pressed * patch_at, i),
        };
    }
    Ok(feet)
}

/// True where nothing that gives much more than soil stands between it and the frame: a pad, or a mat under whatever.
pub(super) fn on_pad(ctx: &Context<'_>, i: usize) -> bool {
    mat_stack::there(ctx) || ctx.machine.pad_area(ctx.lift.support, i).is_some()
}

/// Settlement of contact `i` for each newton on each of the four, m/N.
pub(super) fn row(feet: &[Foot; 4], i: usize, soil: &SoilArea) -> Result<[f64; 4], Refusal> {
    let mut row = [0.0; 4];
    for (j, foot) in feet.iter().enumerate() {
        let one = settlement_at(&[foot.pressed(1.0)], feet[i].at, &soil.profile)?;
        row[j] = if i == j { RIGID * one } else { one };
    }
    Ok(row)
}

/// What lies under each contact on these feet; `force` (N) says which of several soils gives most.
pub(super) fn all<'a>(ctx: &Context<'a>, posed: &Posed, feet: &[Foot; 4], force: [f64; 4]) -> [Under<'a>; 4] {
    let places = patches::patches(ctx, posed, [0.0; 4]);
    core::array::from_fn(|i| {
        let at = DVec2::from_array(places[i].middle);
        let mut found = Under::NoSoil;
        for soil in ctx.job.soils.iter().filter(|s| s.reaches(at, ctx.policy.stand_error)) {
            let row = match row(feet, i, soil) {
                Ok(row) => row,
                Err(why) => return Under::Unknown(soil, why),
            };
            found = Under::Known(match found {
                Under::Known(g) => Gives {
                    soil: if under(row, force) > under(g.most, force) { soil } else { g.soil },
                    most: if under(row, force) > under(g.most, force) { row } else { g.most },
                    least: if under(row, force) < under(g.least, force) { row } else { g.least },
                },
                _ => Gives::of(soil, row),
            });
        }
        found
    })
}

/// The settlement of contact `i` with its step, m.
pub(super) fn traced(
    feet: &[Foot; 4],
    i: usize,
    force: [f64; 4],
    soil: &SoilArea,
    trace: &mut impl Trace,
) -> Result<f64, Refusal> {
    let pads: Vec<PressedPad> = feet.iter().zip(force).map(|(foot, f)| foot.pressed(f)).collect();
    settlement_of(&pads, i, &soil.profile, trace)
}
