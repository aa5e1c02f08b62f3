//! Slope of a grid, its statistics and classes.

use crate::Grid;
use crate::relief::over_cells;

/// Slope of every cell as rise over run (0.07 is 7 %), rows × cols as in the grid; NaN at the rim
/// and where any of the nine cells is unknown.
///
/// `√((∂z/∂x)² + (∂z/∂y)²)` with Horn's 3 × 3 weights (Horn 1981, Proc. IEEE 69(1), 14-47).
pub fn slopes(grid: &Grid) -> Vec<f32> {
    over_cells(grid, |east, north| (east * east + north * north).sqrt())
}

/// Class of every slope: how many of `limits` (rising, rise over run) it exceeds; `None` where the
/// slope is not known.
pub fn slope_classes(slopes: &[f32], limits: &[f32]) -> Vec<Option<u8>> {
    let class = |slope: f32| limits.iter().take(255).filter(|limit| slope > **limit).count() as u8;
    slopes.iter().map(|slope| slope.is_finite().then(|| class(*slope))).collect()
}

/// Statistics of the slopes that are known, as rise over run.
#[derive(Debug, Clone, PartialEq)]
pub struct SlopeStatistics {
    /// Mean.
    pub mean: f64,
    /// Standard deviation of the whole (not of a sample).
    pub deviation: f64,
    /// Steepest cell: row and column from the north-west, from 0.
    pub steepest_at: (usize, usize),
    sorted: Vec<f64>,
}

impl SlopeStatistics {
    /// Statistics of a grid; `None` if no cell has a slope.
    pub fn of(grid: &Grid) -> Option<Self> {
        let all = slopes(grid);
        let (at, _) = all.iter().enumerate().filter(|(_, s)| s.is_finite()).max_by(|a, b| a.1.total_cmp(b.1))?;
        let mut sorted: Vec<f64> = all.into_iter().filter(|s| s.is_finite()).map(f64::from).collect();
        sorted.sort_by(f64::total_cmp);
        let n = sorted.len() as f64;
        let mean = sorted.iter().sum::<f64>() / n;
        let variance = sorted.iter().map(|s| (s - mean) * (s - mean)).sum::<f64>() / n;
        Some(Self { mean, deviation: variance.sqrt(), steepest_at: (at / grid.cols, at % grid.cols), sorted })
    }

    /// Number of cells with a slope.
    pub fn cells(&self) -> usize {
        self.sorted.len()
    }
    /// Steepest slope.
    pub fn steepest(&self) -> f64 {
        self.sorted.last().copied().unwrap_or(f64::NAN)
    }
    /// Median slope.
    pub fn median(&self) -> f64 {
        quantile(&self.sorted, 0.5).unwrap_or(f64::NAN)
    }
    /// Share of the cells that are no steeper than `slope`, 0 to 1.
    pub fn share_up_to(&self, slope: f64) -> f64 {
        self.sorted.partition_point(|&s| s <= slope) as f64 / self.sorted.len() as f64
    }
}

/// Quantile of sorted values, linear between neighbours: rank `q·(n − 1)`; `None` without values.
pub fn quantile(sorted: &[f64], q: f64) -> Option<f64> {
    let rank = q.clamp(0.0, 1.0) * (sorted.len().checked_sub(1)?) as f64;
    let (low, share) = (rank.floor() as usize, rank.fract());
    let (a, b) = (sorted[low], sorted[(low + 1).min(sorted.len() - 1)]);
    Some(a + share * (b - a))
}
