//! Grey-scale opening of a raster by a square window, and filling of unknown cells.

use std::collections::VecDeque;

/// Opening (lowest, then highest in a window of `2·reach + 1` cells square): what is narrower than
/// the window and stands up is cut off. Rows × cols, no NaN.
pub(crate) fn opened(heights: &[f32], rows: usize, cols: usize, reach: usize) -> Vec<f32> {
    let lowest = square(heights, rows, cols, reach, |a, b| a <= b);
    square(&lowest, rows, cols, reach, |a, b| a >= b)
}

/// The extreme in a square window; `wins(a, b)`: a stays before b.
fn square(heights: &[f32], rows: usize, cols: usize, reach: usize, wins: fn(f32, f32) -> bool) -> Vec<f32> {
    let mut along = vec![0.0; heights.len()];
    let mut queue = VecDeque::new();
    for row in 0..rows {
        slide(heights, &mut along, row * cols, 1, cols, reach, wins, &mut queue);
    }
    let mut out = vec![0.0; heights.len()];
    for col in 0..cols {
        slide(&along, &mut out, col, cols, rows, reach, wins, &mut queue);
    }
    out
}

/// One line with a queue of falling candidates, so that the window's width costs nothing.
#[expect(clippy::too_many_arguments, reason = "a line of a raster: where it starts, steps and ends")]
fn slide(
    from: &[f32],
    to: &mut [f32],
    start: usize,
    step: usize,
    length: usize,
    reach: usize,
    wins: fn(f32, f32) -> bool,
    queue: &mut VecDeque<(usize, f32)>,
) {
    queue.clear();
    for i in 0..length + reach {
        if i < length {
            let value = from[start + i * step];
            while queue.back().is_some_and(|&(_, last)| wins(value, last)) {
                queue.pop_back();
            }
            queue.push_back((i, value));
        }
        if let Some(at) = i.checked_sub(reach) {
            while queue.front().is_some_and(|&(k, _)| k + reach < at) {
                queue.pop_front();
            }
            if let Some(&(_, best)) = queue.front() {
                to[start + at * step] = best;
            }
        }
    }
}

/// Gives every unknown cell (NaN) the height of the nearest known one, by steps over the eight
/// neighbours; false if nothing is known.
pub(crate) fn fill_from_nearest(heights: &mut [f32], rows: usize, cols: usize) -> bool {
    let mut queue: VecDeque<usize> = (0..heights.len()).filter(|&i| !heights[i].is_nan()).collect();
    if queue.is_empty() {
        return false;
    }
    while let Some(i) = queue.pop_front() {
        for j in neighbours(i, rows, cols) {
            if heights[j].is_nan() {
                heights[j] = heights[i];
                queue.push_back(j);
            }
        }
    }
    true
}

/// The up to eight neighbours of a cell.
pub(crate) fn neighbours(i: usize, rows: usize, cols: usize) -> impl Iterator<Item = usize> {
    let (row, col) = (i / cols, i % cols);
    let (north, south) = (row.saturating_sub(1), (row + 1).min(rows - 1));
    let (west, east) = (col.saturating_sub(1), (col + 1).min(cols - 1));
    (north..=south).flat_map(move |r| (west..=east).map(move |c| r * cols + c)).filter(move |&j| j != i)
}

#[cfg(test)]
#[allow(clippy::unwrap_used, reason = "tests")]
mod tests {
    use super::*;

    /// By the definition, cell by cell.
    fn by_definition(h: &[f32], rows: usize, cols: usize, reach: usize) -> Vec<f32> {
        let around = |h: &[f32], i: usize, pick: fn(f32, f32) -> f32| {
            let (r, c) = (i / cols, i % cols);
            (0..h.len())
                .filter(|j| (j / cols).abs_diff(r) <= reach && (j % cols).abs_diff(c) <= reach)
                .map(|j| h[j])
                .reduce(pick)
                .unwrap()
        };
        let low: Vec<f32> = (0..h.len()).map(|i| around(h, i, f32::min)).collect();
        (0..rows * cols).map(|i| around(&low, i, f32::max)).collect()
    }

    #[test]
    fn opening_is_lowest_then_highest_in_the_window() {
        let (rows, cols) = (9, 13);
        let h: Vec<f32> = (0..rows * cols).map(|i| ((i * 7919) % 101) as f32).collect();
        for reach in [0, 1, 2, 4, 20] {
            assert_eq!(opened(&h, rows, cols, reach), by_definition(&h, rows, cols, reach), "{reach}");
        }
    }

    #[test]
    fn unknown_cells_take_the_nearest() {
        let mut h = vec![1.0, f32::NAN, f32::NAN, f32::NAN, 5.0];
        assert!(fill_from_nearest(&mut h, 1, 5));
        assert_eq!(h, [1.0, 1.0, 1.0, 5.0, 5.0]);
        assert!(!fill_from_nearest(&mut [f32::NAN; 4], 2, 2));
        assert!(!fill_from_nearest(&mut [], 0, 0));
    }
}
