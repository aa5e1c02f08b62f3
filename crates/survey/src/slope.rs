//! Slope of a grid by Horn's 3 × 3 weights (Horn 1981, Proc. IEEE 69(1), 14-47).

use site::Grid;

/// Slope of every cell as rise over run (0.07 is 7 %), rows × cols as in the grid; NaN at the rim
/// and where any of the nine cells is unknown.
///
/// `∂z/∂x = ((c + 2f + i) − (a + 2d + g)) / 8Δx` with a b c / d e f / g h i from the north-west,
/// `∂z/∂y` alike; slope `= √((∂z/∂x)² + (∂z/∂y)²)`.
pub fn slopes(grid: &Grid) -> Vec<f64> {
    let mut out = vec![f64::NAN; grid.rows * grid.cols];
    if grid.rows < 3 || grid.cols < 3 {
        return out;
    }
    for row in 1..grid.rows - 1 {
        let line = |r: usize| &grid.heights[r * grid.cols..(r + 1) * grid.cols];
        let (north, here, south) = (line(row - 1), line(row), line(row + 1));
        for col in 1..grid.cols - 1 {
            let z = |line: &[f32], c: usize| f64::from(line[c]);
            let (a, b, c) = (z(north, col - 1), z(north, col), z(north, col + 1));
            let (d, e, f) = (z(here, col - 1), z(here, col), z(here, col + 1));
            let (g, h, i) = (z(south, col - 1), z(south, col), z(south, col + 1));
            let dx = ((c + 2.0 * f + i) - (a + 2.0 * d + g)) / (8.0 * grid.cell.x);
            let dy = ((g + 2.0 * h + i) - (a + 2.0 * b + c)) / (8.0 * grid.cell.y);
            if e.is_finite() {
                out[row * grid.cols + col] = (dx * dx + dy * dy).sqrt();
            }
        }
    }
    out
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
        let mut sorted: Vec<f64> = all.into_iter().filter(|s| s.is_finite()).collect();
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

/// Quantile of sorted values, linear between neighbours: rank `q·(n − 1)`.
pub(crate) fn quantile(sorted: &[f64], q: f64) -> Option<f64> {
    let rank = q.clamp(0.0, 1.0) * (sorted.len().checked_sub(1)?) as f64;
    let (low, share) = (rank.floor() as usize, rank.fract());
    let (a, b) = (sorted[low], sorted[(low + 1).min(sorted.len() - 1)]);
    Some(a + share * (b - a))
}
