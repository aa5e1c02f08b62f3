//! Ground of a cloud that nobody classified: the progressive morphological filter of Zhang, Chen,
//! Whitman, Shyu, Yan and Zhang 2003, IEEE Transactions on Geoscience and Remote Sensing 41(4),
//! 872-882. Chosen over cloth simulation because every step is a count of cells: the same on every
//! platform, without iteration that may or may not have settled, and bounded in time.

use crate::cloud_raster::RasterPlan;
use crate::notes::{Notes, Refused};
use crate::raster_opening::{fill_from_nearest, neighbours, opened};
use crate::text;
use geometry::DVec3;

/// Parameters of the ground filter. The symbols are those of the paper.
///
/// The lowest points of cells are opened by windows of `w_k = 2·2^k + 1` cells (its equation 4);
/// a cell that loses more than `dh_k` becomes no ground, with `dh_1 = dh_0` and
/// `dh_k = s·(w_k − w_(k−1))·c + dh_0`, at most `dh_max` (its equations 5 to 7).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct GroundFilter {
    /// Side of a cell `c`, m.
    pub cell: f64,
    /// Steepest ground `s` as rise over run.
    pub slope: f64,
    /// Smallest step `dh_0` that is no ground, m.
    pub smallest_step: f64,
    /// Largest step `dh_max` that may still be ground, m.
    pub largest_step: f64,
    /// Widest thing that is no ground, m: windows grow until they are wider. A larger building
    /// stays in the ground.
    pub widest: f64,
    /// Points up to this above the lowest point of a ground cell are ground, m (ours: the paper
    /// decides over lowest points only).
    pub thickness: f64,
}

impl Default for GroundFilter {
    /// Ours, for building sites in towns and on hills; see `docs/survey-files.md` for what they
    /// get right and wrong on four real clouds.
    fn default() -> Self {
        Self { cell: 1.0, slope: 0.3, smallest_step: 0.3, largest_step: 2.0, widest: 40.0, thickness: 0.2 }
    }
}

/// A cell that lies this much below all its neighbours is a false echo, m (ours).
const PIT: f32 = 1.0;

impl GroundFilter {
    /// Parameters that can be: all positive, in the ranges of the docs.
    pub(crate) fn check(&self, notes: &mut Notes<'_>) -> Result<(), Refused> {
        let good = (0.1..=10.0).contains(&self.cell)
            && (0.0..=5.0).contains(&self.slope)
            && (0.01..=10.0).contains(&self.smallest_step)
            && (self.smallest_step..=100.0).contains(&self.largest_step)
            && (self.cell..=500.0).contains(&self.widest)
            && (0.0..=2.0).contains(&self.thickness);
        if good { Ok(()) } else { Err(notes.refuse("survey::ground-filter", text::FILTER_ABSURD, text::DO_FILTER)) }
    }

    /// Windows as reach in cells, with the step that each allows, m.
    fn windows(&self) -> Vec<(usize, f64)> {
        let mut out = Vec::new();
        let mut before = 1.0;
        for k in 0..16 {
            let reach = 1_usize << k;
            let width = (2 * reach + 1) as f64;
            let step = self.slope * (width - before) * self.cell + self.smallest_step;
            out.push((reach, if k == 0 { self.smallest_step } else { step.min(self.largest_step) }));
            if width * self.cell > self.widest {
                break;
            }
            before = width;
        }
        out
    }
}

/// The lowest ground of every cell after filtering.
#[derive(Debug)]
pub(crate) struct FilteredGround {
    plan: RasterPlan,
    /// Highest height that is still ground in a cell, m; NaN where no ground is.
    up_to: Vec<f32>,
}

impl FilteredGround {
    /// Filters the lowest points of cells (NaN: none).
    pub(crate) fn of(plan: RasterPlan, lowest: Vec<f32>, filter: &GroundFilter) -> Self {
        let (rows, cols) = (plan.rows, plan.cols);
        let known: Vec<bool> = lowest.iter().map(|z| !z.is_nan()).collect();
        let mut surface = lowest;
        if !fill_from_nearest(&mut surface, rows, cols) {
            return Self { plan, up_to: surface };
        }
        let bottom = without_pits(&surface, rows, cols);
        surface.clone_from(&bottom);
        let mut ground = known;
        for (reach, step) in filter.windows() {
            let cut = opened(&surface, rows, cols, reach);
            for (i, ground) in ground.iter_mut().enumerate() {
                *ground &= f64::from(surface[i] - cut[i]) <= step;
            }
            surface = cut;
        }
        let up_to = (0..bottom.len())
            .map(|i| {
                if !ground[i] {
                    return f32::NAN;
                }
                // On a slope the highest ground of a cell lies above its lowest.
                let fall = neighbours(i, rows, cols)
                    .filter(|&j| ground[j])
                    .map(|j| (bottom[i] - bottom[j]).abs())
                    .fold(0.0, f32::max);
                let most = (filter.slope * filter.cell) as f32;
                bottom[i] + filter.thickness as f32 + fall.min(most)
            })
            .collect();
        Self { plan, up_to }
    }

    /// True for a point that is ground.
    #[inline]
    pub(crate) fn is_ground(&self, at: DVec3) -> bool {
        self.plan.index(at.truncate()).is_some_and(|i| at.z <= f64::from(self.up_to[i]))
    }
}

/// Cells far below all their neighbours are raised to the lowest of these.
fn without_pits(surface: &[f32], rows: usize, cols: usize) -> Vec<f32> {
    (0..surface.len())
        .map(|i| {
            let around = neighbours(i, rows, cols).map(|j| surface[j]).fold(f32::INFINITY, f32::min);
            if around.is_finite() && surface[i] < around - PIT { around } else { surface[i] }
        })
        .collect()
}
