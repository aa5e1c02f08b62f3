//! Mats under pads: which part of a mat works, what presses the ground, bending and shear at the pad's edge.
//!
//! A mat is two cantilevers beyond the pad (common practice). How far they may be counted is limited three ways, and the
//! least counts: by bending and by shear under the pressure that then acts, and by stiffness: the end gives no more than
//! a share of the cantilever, else it no longer presses the ground.

use crate::Refusal;
use crate::mat_material::{MatMaterial, Spreads};
use evidence::Trace;

/// A cantilever may give that share of its length at its end (0.75 %: published practice for mats under outriggers, from
/// memory).
pub const GIVE: f64 = 0.0075;

/// A pad on a mat.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PadOnMat {
    /// Sides of the pad along and across the mat, m.
    pub pad: [f64; 2],
    /// How far its middle is from the mat's, along and across, m.
    pub offset: [f64; 2],
    /// Force, N.
    pub force: f64,
}

/// A mat. Planks run along the first side.
#[derive(Debug, Clone, PartialEq)]
pub struct Mat {
    /// Length along the planks, width across, m.
    pub size: [f64; 2],
    /// Thickness, m.
    pub thickness: f64,
    /// What it is made of.
    pub material: MatMaterial,
}

/// What limits the part that works.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum MatLimit {
    /// The mat's own size, or the pad's where planks do not spread across.
    Size,
    /// Bending at the pad's edge.
    Bending,
    /// Shear at the pad's edge.
    Shear,
    /// It gives too much.
    Stiffness,
}

/// What a mat does.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MatAnswer {
    /// The part that works, along and across, m.
    pub works: [f64; 2],
    /// What limits it along the planks.
    pub limit: MatLimit,
    /// Pressure under that part, Pa.
    pub pressure: f64,
    /// Bending moment at the pad's edge, for a metre of width, N·m/m.
    pub moment: f64,
    /// Bending stress there, Pa.
    pub bending: f64,
    /// Shear stress there, Pa.
    pub shear: f64,
}

impl Mat {
    /// What of the mat works, and the pressure under it.
    ///
    /// A part symmetrical about the force is counted, so a force off the middle costs twice its offset. The part is the
    /// largest that the mat can bend to; its pressure is for the caller to compare with what the ground carries: a smaller
    /// part would press harder.
    ///
    /// # Errors
    /// [`Refusal::NoNumber`]; [`Refusal::OffMat`] where the pad reaches over the mat's edge.
    pub fn under(&self, pad: &PadOnMat, trace: &mut impl Trace) -> Result<MatAnswer, Refusal> {
        let around = self.around(pad)?;
        let across = match self.material.spreads {
            Spreads::AlongPlanks => [around[0], pad.pad[1]],
            Spreads::BothWays => around,
        };
        let stiff = self.stiff_reach(pad, across);
        let (reach, limit) = self.reach(pad, across, stiff);
        let works = self.works(pad, across, reach);
        let p = pad.force / (works[0] * works[1]);
        let (moment, across_edge) = self.at_edge(pad, works, p);
        let t = self.thickness;
        let answer = MatAnswer {
            works,
            limit,
            pressure: p,
            moment,
            bending: 6.0 * moment / (t * t),
            shear: 1.5 * across_edge / t,
        };
        self.steps(pad, self.works(pad, across, stiff), stiff, &answer, trace);
        Ok(answer)
    }

    /// How far the mat reaches along its planks beyond the pad (m), and what ends it. Moment, shear and what it gives grow
    /// with the reach, so each limit is met once.
    fn reach(&self, pad: &PadOnMat, across: [f64; 2], stiff: f64) -> (f64, MatLimit) {
        let (mut low, mut high) = (0.0, 0.5 * (across[0] - pad.pad[0]));
        let Some(mut ends) = self.limit(pad, across, high, stiff) else { return (high, MatLimit::Size) };
        for _ in 0..60 {
            let middle = 0.5 * (low + high);
            match self.limit(pad, across, middle, stiff) {
                None => low = middle,
                Some(limit) => (high, ends) = (middle, limit),
            }
        }
        (low, ends)
    }

    /// What is symmetrical about the force and on the mat, along and across, m.
    fn around(&self, pad: &PadOnMat) -> Result<[f64; 2], Refusal> {
        let sizes = [self.size[0], self.size[1], self.thickness, pad.pad[0], pad.pad[1], pad.force];
        let sound = sizes.iter().all(|v| *v > 0.0 && v.is_finite()) && pad.offset.iter().all(|v| v.is_finite());
        if !sound {
            return Err(Refusal::NoNumber);
        }
        let around = [0, 1].map(|i| self.size[i] - 2.0 * pad.offset[i].abs());
        if around[0] < pad.pad[0] || around[1] < pad.pad[1] { Err(Refusal::OffMat) } else { Ok(around) }
    }

    /// Sides of the part that works for a reach along the planks. A plate reaches as far across, where there is mat.
    fn works(&self, pad: &PadOnMat, across: [f64; 2], reach: f64) -> [f64; 2] {
        let along = pad.pad[0] + 2.0 * reach;
        match self.material.spreads {
            Spreads::AlongPlanks => [along, across[1]],
            Spreads::BothWays => [along, (pad.pad[1] + 2.0 * reach).min(across[1])],
        }
    }

    /// The two edges of the pad that lie across the first and the second side.
    pub(crate) fn edges(&self, pad: &PadOnMat, works: [f64; 2], p: f64) -> [PadEdge; 2] {
        [0, 1].map(|i| {
            let reach = |i: usize| 0.5 * (works[i] - pad.pad[i]);
            // No more of the corners than the other reach leaves.
            let corner = match self.material.spreads {
                Spreads::AlongPlanks => 0.0,
                Spreads::BothWays => reach(i).min(reach(1 - i)).max(0.0),
            };
            PadEdge { reach: reach(i), corner, side: pad.pad[1 - i], pressure: p }
        })
    }

    /// The greatest moment (N·m/m) and shear (N/m) of both.
    fn at_edge(&self, pad: &PadOnMat, works: [f64; 2], p: f64) -> (f64, f64) {
        let [a, b] = self.edges(pad, works, p);
        (a.moment().max(b.moment()), a.shear().max(b.shear()))
    }

    /// Reach (m) at which the end of a cantilever under the mean pressure gives [`GIVE`] of it: `p·c⁴/(8·E·I) = GIVE·c`,
    /// with the pressure that the reach itself makes.
    fn stiff_reach(&self, pad: &PadOnMat, across: [f64; 2]) -> f64 {
        let t = self.thickness;
        let stiffness = self.material.modulus * t * t * t / 12.0;
        let gives = |c: f64| {
            let works = self.works(pad, across, c);
            let p = pad.force / (works[0] * works[1]);
            p * c * c * c / (8.0 * stiffness) > GIVE
        };
        let full = 0.5 * (across[0] - pad.pad[0]);
        if !gives(full) {
            return f64::INFINITY;
        }
        let (mut low, mut high) = (0.0, full);
        for _ in 0..60 {
            let middle = 0.5 * (low + high);
            if gives(middle) { high = middle } else { low = middle }
        }
        low
    }

    fn limit(&self, pad: &PadOnMat, across: [f64; 2], reach: f64, stiff: f64) -> Option<MatLimit> {
        let works = self.works(pad, across, reach);
        let p = pad.force / (works[0] * works[1]);
        let (moment, edge) = self.at_edge(pad, works, p);
        let t = self.thickness;
        if reach > stiff {
            Some(MatLimit::Stiffness)
        } else if 6.0 * moment / (t * t) > self.material.bending {
            Some(MatLimit::Bending)
        } else if 1.5 * edge / t > self.material.shear {
            Some(MatLimit::Shear)
        } else {
            None
        }
    }
}

/// A cantilever of the mat at an edge of the pad. Of a plate the corners hang on the edge too: it carries a trapezoid
/// between lines at 45°, cut off where the other reach ends.
#[derive(Debug, Clone, Copy)]
pub(crate) struct PadEdge {
    /// `c`, m.
    pub(crate) reach: f64,
    /// `k`: how far the corners reach along the edge, m; 0 without.
    pub(crate) corner: f64,
    /// `a`: the edge, m.
    pub(crate) side: f64,
    pressure: f64,
}

impl PadEdge {
    /// `m = p·(c²/2 + 2·k·c²/(3·a))`, for a metre of the edge, N·m/m.
    pub(crate) fn moment(&self) -> f64 {
        let c = self.reach;
        self.pressure * (0.5 * c * c + self.corner * c / self.side * c * 2.0 / 3.0)
    }

    /// `v = p·(c + k·c/a)`, for a metre of the edge, N/m.
    pub(crate) fn shear(&self) -> f64 {
        self.pressure * (self.reach + self.corner * self.reach / self.side)
    }
}

/// Mats on mats, the top one first: what of each works is the pad of the next. Planks of each run across those above,
/// and no layer helps another bend. The last answer is what presses the ground.
///
/// # Errors
/// As [`Mat::under`], for any of them; [`Refusal::NoNumber`] for none.
pub fn stacked(mats: &[Mat], pad: &PadOnMat, trace: &mut impl Trace) -> Result<Vec<MatAnswer>, Refusal> {
    let mut answers = Vec::with_capacity(mats.len());
    let mut on = *pad;
    for mat in mats {
        let answer = mat.under(&on, trace)?;
        answers.push(answer);
        // The next lies turned by a quarter: its planks run across.
        on =
            PadOnMat { pad: [answer.works[1], answer.works[0]], offset: [on.offset[1], on.offset[0]], force: on.force };
    }
    if answers.is_empty() { Err(Refusal::NoNumber) } else { Ok(answers) }
}
