//! Distance of every cell of a raster to the nearest marked one: exact, in linear time.
//!
//! P. Felzenszwalb, D. Huttenlocher: Distance transforms of sampled functions, Theory of Computing 8 (2012)
//! 415–428: lower envelope of parabolas, along columns, then along rows.

/// Distance in cells from each cell's centre to the centre of the nearest marked one; infinite without any.
/// `marked`: row by row, `cols` a row.
pub(crate) fn distances(marked: impl Fn(usize) -> bool, rows: usize, cols: usize) -> Vec<f32> {
    let mut squared = vec![f32::INFINITY; rows * cols];
    // Along columns the distance is counted, not solved: down, then up.
    for row in 0..rows {
        for col in 0..cols {
            let i = row * cols + col;
            let above = if row > 0 { squared[i - cols] + 1.0 } else { f32::INFINITY };
            squared[i] = if marked(i) { 0.0 } else { above };
        }
    }
    for row in (0..rows.saturating_sub(1)).rev() {
        for col in 0..cols {
            let i = row * cols + col;
            squared[i] = squared[i].min(squared[i + cols] + 1.0);
        }
    }
    let mut line = vec![0.0; cols];
    let mut envelope = Envelope { at: vec![0; cols], from: vec![0.0; cols + 1] };
    for row in squared.chunks_mut(cols.max(1)) {
        for (to, steps) in line.iter_mut().zip(row.iter()) {
            *to = f64::from(*steps) * f64::from(*steps);
        }
        envelope.lower(&line, row);
    }
    squared
}

struct Envelope {
    /// Vertices of the parabolas of the envelope.
    at: Vec<usize>,
    /// Where each begins to be lowest.
    from: Vec<f64>,
}

impl Envelope {
    /// Square root of the least of `f(q) + (p − q)²` for each p.
    fn lower(&mut self, f: &[f64], out: &mut [f32]) {
        let mut count = 0;
        for q in (0..f.len()).filter(|q| f[*q].is_finite()) {
            let mut from = f64::NEG_INFINITY;
            while count > 0 {
                let v = self.at[count - 1];
                let square = |i: usize| (i * i) as f64;
                from = (f[q] + square(q) - f[v] - square(v)) / (2.0 * (q - v) as f64);
                if from > self.from[count - 1] {
                    break;
                }
                count -= 1;
                from = f64::NEG_INFINITY;
            }
            self.at[count] = q;
            self.from[count] = from;
            count += 1;
        }
        if count == 0 {
            out.fill(f32::INFINITY);
            return;
        }
        let mut k = 0;
        for (p, out) in out.iter_mut().enumerate() {
            while k + 1 < count && self.from[k + 1] <= p as f64 {
                k += 1;
            }
            let d = p.abs_diff(self.at[k]) as f64;
            *out = (d * d + f[self.at[k]]).sqrt() as f32;
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn as_far_as_every_marked_cell_says() {
        let mut state = 7_u64;
        for (rows, cols, share) in [(17, 23, 9), (40, 31, 100), (1, 50, 10), (50, 1, 10), (9, 9, 100_000)] {
            let marked: Vec<bool> = (0..rows * cols)
                .map(|_| {
                    state = state.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1);
                    (state >> 33).is_multiple_of(share)
                })
                .collect();
            let found = distances(|i| marked[i], rows, cols);
            for (i, found) in found.iter().enumerate() {
                let (r, c) = ((i / cols) as f64, (i % cols) as f64);
                let far = |j: usize| {
                    let (dr, dc) = (r - (j / cols) as f64, c - (j % cols) as f64);
                    (dr * dr + dc * dc).sqrt()
                };
                let least = (0..marked.len()).filter(|j| marked[*j]).map(far).fold(f64::INFINITY, f64::min);
                assert_eq!(*found, least as f32, "cell {i} of {rows} × {cols}");
            }
        }
    }
}
