//! What the cells of a ground grid are made of.

/// Cells of a grid with their ground points; rows × cols, row-major from the north-west.
///
/// Memory that the system hands out zeroed is a grid without points already, so that stretches in
/// which no point lies are never touched.
#[derive(Debug, Clone, Default)]
pub struct GroundCells {
    /// Sum, number, lowest and highest; what stands in a cell of no points says nothing.
    cells: Vec<Cell>,
    /// For every stretch of cells, whether it was written to.
    touched: Vec<bool>,
}

type Cell = (f64, u32, f32, f32);

/// As the system hands it out, and as a first point needs it.
const ZERO: Cell = (0.0, 0, 0.0, 0.0);
const READY: Cell = (0.0, 0, f32::INFINITY, f32::NEG_INFINITY);

/// Cells of a stretch: about a page of memory.
const STRETCH: usize = 128;

/// The ground points of a cell.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct GroundCell {
    sum: f64,
    /// Number of ground points.
    pub points: u32,
    /// Lowest of them, m; infinite without points.
    pub lowest: f32,
    /// Highest of them, m; minus infinite without points.
    pub highest: f32,
}

impl GroundCell {
    pub(crate) const EMPTY: Self = Self { sum: 0.0, points: 0, lowest: f32::INFINITY, highest: f32::NEG_INFINITY };

    /// Mean height, m; `None` without points.
    pub fn mean(&self) -> Option<f64> {
        (self.points > 0).then(|| self.sum / f64::from(self.points))
    }

    /// Highest less lowest, m; `None` without points. On a slope this is the fall within the cell;
    /// a step, a kerb or a shrub taken for ground shows in it.
    pub fn spread(&self) -> Option<f64> {
        (self.points > 0).then(|| f64::from(self.highest) - f64::from(self.lowest))
    }

    /// The points of both.
    pub(crate) fn gather(&mut self, other: &Self) {
        self.sum += other.sum;
        self.points = self.points.saturating_add(other.points);
        self.lowest = self.lowest.min(other.lowest);
        self.highest = self.highest.max(other.highest);
    }
}

impl GroundCells {
    /// So many cells without points.
    pub(crate) fn empty(count: usize) -> Self {
        Self { cells: vec![ZERO; count], touched: vec![false; count.div_ceil(STRETCH)] }
    }

    /// Number of cells.
    pub fn len(&self) -> usize {
        self.cells.len()
    }

    /// True if there is no cell.
    pub fn is_empty(&self) -> bool {
        self.cells.is_empty()
    }

    /// The cell at a row-major index; `None` beyond the grid.
    pub fn get(&self, index: usize) -> Option<GroundCell> {
        self.cells.get(index).map(opened)
    }

    /// All cells, row by row.
    pub fn iter(&self) -> impl Iterator<Item = GroundCell> {
        self.cells.iter().map(opened)
    }

    /// The cells of row after row.
    pub(crate) fn rows(&self, cols: usize) -> impl Iterator<Item = impl Iterator<Item = GroundCell>> {
        self.cells.chunks(cols).map(|row| row.iter().map(opened))
    }

    /// Adds a ground point, m (a number), to the cell at an index of the grid.
    #[inline]
    pub(crate) fn add(&mut self, index: usize, z: f64) {
        let touched = &mut self.touched[index / STRETCH];
        if !*touched {
            *touched = true;
            // Memory that is read before it is written costs the system two faults a page.
            let first = index / STRETCH * STRETCH;
            let end = self.cells.len().min(first + STRETCH);
            self.cells[first..end].fill(READY);
        }
        let (sum, points, lowest, highest) = &mut self.cells[index];
        let height = z as f32;
        // Not `min` and `max`, which also look whether something is no number.
        *lowest = if height < *lowest { height } else { *lowest };
        *highest = if height > *highest { height } else { *highest };
        *sum += z;
        *points += 1;
    }

    /// Takes the points of a cell away.
    pub(crate) fn clear(&mut self, index: usize) {
        self.cells[index] = READY;
    }
}

#[inline]
fn opened(&(sum, points, lowest, highest): &Cell) -> GroundCell {
    if points == 0 { GroundCell::EMPTY } else { GroundCell { sum, points, lowest, highest } }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_cell_is_the_sum_of_its_points_also_below_zero() {
        let mut cells = GroundCells::empty(3);
        assert!(cells.iter().all(|c| c == GroundCell::EMPTY && c.mean().is_none() && c.spread().is_none()));
        for z in [-3.5, -1.0, -2.25] {
            cells.add(1, z);
        }
        cells.add(2, 7.0);
        let cell = cells.get(1).map(|c| (c.points, c.lowest, c.highest, c.mean(), c.spread()));
        assert_eq!(cell, Some((3, -3.5, -1.0, Some(-2.25), Some(2.5))));
        assert_eq!((cells.len(), cells.is_empty(), cells.get(3)), (3, false, None));
        let known: Vec<Vec<u32>> = cells.rows(2).map(|row| row.map(|c| c.points).collect()).collect();
        assert_eq!(known, [vec![0, 3], vec![1]]);
        cells.clear(1);
        assert_eq!(cells.get(1), Some(GroundCell::EMPTY));
    }
}
