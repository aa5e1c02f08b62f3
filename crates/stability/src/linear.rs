//! Linear programmes in boxed variables, small and dense, with bounds that hold whatever rounding did.
//!
//! Least of `c·q` under `0 ≤ q ≤ cap` and `low ≤ A·q ≤ high`, by the dual simplex method. As every
//! variable has a finite box, putting each at the end that its cost prefers is feasible for the dual
//! from the start: one phase, no artificial variables. Ties go to the larger pivot, and after many
//! steps to the lower index, which ends every cycle (Bland's rule).
//!
//! The value handed out is not that of the point found but the bound that its multipliers `y` prove
//! (weak duality): `c·q ≥ Σ min(y·low, y·high) + Σ min(0, (c − Aᵀy)·cap)`, summed from the original
//! rows. An inexact `y` makes it a little lower, never wrong.
//!
//! Libraries for this were looked at: those in use read the clock, which a pure room may not. One of
//! them is the measure in the tests.

/// A constraint `low ≤ of·q ≤ high`; ends may be infinite.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Row {
    pub(crate) of: Vec<f64>,
    pub(crate) low: f64,
    pub(crate) high: f64,
}

/// What a search found.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Least {
    /// Nothing allowed is less than `bound`.
    Found {
        /// Proven lower bound.
        bound: f64,
        /// True if the bound stands on a cap: without caps there may be none.
        on_caps: bool,
        /// Where it is reached, to rounding.
        at: Vec<f64>,
    },
    /// The rows contradict each other.
    Contradiction,
    /// The search did not end, or met a number that is none.
    CannotTell,
}

/// A row counts as kept to this, after its largest factor was made 1.
const KEPT: f64 = 1e-9;
/// Smaller factors are rounding and no pivots.
const PIVOT: f64 = 1e-9;
/// A bound that caps move by more than this stands on them.
const BY_CAPS: f64 = 1e-4;

/// The least of `cost·q`.
pub(crate) fn minimise(rows: &[Row], cap: &[f64], cost: &[f64]) -> Least {
    let finite = |v: &[f64]| v.iter().all(|x| x.is_finite());
    let sound = |r: &Row| r.of.len() == cap.len() && finite(&r.of) && !r.low.is_nan() && !r.high.is_nan();
    if cost.len() != cap.len() || !finite(cost) || !finite(cap) || !rows.iter().all(sound) {
        return Least::CannotTell;
    }
    if rows.iter().any(|r| r.low > r.high) || cap.iter().any(|c| *c < 0.0) {
        return Least::Contradiction;
    }
    let scaled: Vec<Row> = rows.iter().map(Row::scaled).collect();
    let mut tableau = Tableau::new(&scaled, cap, cost);
    match tableau.run() {
        End::Reached => tableau.proven(&scaled, cap, cost),
        End::NoPivot => Least::Contradiction,
        End::Unended => Least::CannotTell,
    }
}

impl Row {
    fn scaled(&self) -> Self {
        let most = self.of.iter().fold(0.0_f64, |m, x| m.max(x.abs()));
        let by = if most > 0.0 { 1.0 / most } else { 1.0 };
        Self { of: self.of.iter().map(|x| x * by).collect(), low: self.low * by, high: self.high * by }
    }

    fn value(&self, q: &[f64]) -> f64 {
        dot(&self.of, q)
    }
}

pub(crate) fn dot(a: &[f64], b: &[f64]) -> f64 {
    a.iter().zip(b).map(|(a, b)| a * b).sum()
}

enum End {
    Reached,
    NoPivot,
    Unended,
}

/// Variables `0..n` are the programme's, `n..n + m` the values of its rows.
struct Tableau {
    n: usize,
    low: Vec<f64>,
    high: Vec<f64>,
    /// Variables that are expressed by the others.
    basic: Vec<usize>,
    /// The others, and whether each stands at its upper end.
    free: Vec<(usize, bool)>,
    /// Factors: basic variable `i` = `Σ rows[i][j] · free[j]`.
    rows: Vec<Vec<f64>>,
    /// The same for the cost.
    cost: Vec<f64>,
}

impl Tableau {
    fn new(rows: &[Row], cap: &[f64], cost: &[f64]) -> Self {
        let n = cap.len();
        Self {
            n,
            low: std::iter::repeat_n(0.0, n).chain(rows.iter().map(|r| r.low)).collect(),
            high: cap.iter().copied().chain(rows.iter().map(|r| r.high)).collect(),
            basic: (n..n + rows.len()).collect(),
            free: cost.iter().enumerate().map(|(j, c)| (j, *c < 0.0)).collect(),
            rows: rows.iter().map(|r| r.of.clone()).collect(),
            cost: cost.to_vec(),
        }
    }

    fn at_end(&self) -> Vec<f64> {
        self.free.iter().map(|&(k, upper)| if upper { self.high[k] } else { self.low[k] }).collect()
    }

    fn run(&mut self) -> End {
        let size = self.basic.len() + self.n;
        for step in 0..60 * size + 600 {
            let careful = step > 8 * size + 100;
            let at = self.at_end();
            // The basic variable farthest outside its box, and whether it has to grow.
            let mut leaving: Option<(usize, bool, f64)> = None;
            for (i, row) in self.rows.iter().enumerate() {
                let (k, x) = (self.basic[i], dot(row, &at));
                let kept = KEPT * (1.0 + x.abs());
                for (short, grows) in [(self.low[k] - x, true), (x - self.high[k], false)] {
                    let worse =
                        leaving.is_none_or(|(l, _, most)| if careful { k < self.basic[l] } else { short > most });
                    if short > kept && worse {
                        leaving = Some((i, grows, short));
                    }
                }
            }
            let Some((i, grows, _)) = leaving else { return End::Reached };
            let Some(j) = self.entering(i, grows, careful) else { return End::NoPivot };
            self.pivot(i, j, !grows);
            if !self.cost.iter().all(|c| c.is_finite()) {
                return End::Unended;
            }
        }
        End::Unended
    }

    /// The free variable whose cost turns first as row `i` moves into its box.
    fn entering(&self, i: usize, grows: bool, careful: bool) -> Option<usize> {
        let mut best: Option<(usize, f64, f64)> = None;
        for (j, &(k, upper)) in self.free.iter().enumerate() {
            let factor = self.rows[i][j];
            let helps = (factor > 0.0) == (grows != upper);
            if factor.abs() <= PIVOT || !helps || self.low[k] == self.high[k] {
                continue;
            }
            let ratio = self.cost[j].abs() / factor.abs();
            let better = best.is_none_or(|(b, least, size)| {
                let tie = (ratio - least).abs() <= 1e-12 * (1.0 + least);
                if !tie {
                    ratio < least
                } else if careful {
                    k < self.free[b].0
                } else {
                    factor.abs() > size
                }
            });
            if better {
                best = Some((j, ratio, factor.abs()));
            }
        }
        best.map(|(j, ..)| j)
    }

    /// Swaps basic `i` with free `j`; what leaves stands at its upper or lower end.
    fn pivot(&mut self, i: usize, j: usize, at_upper: bool) {
        let p = 1.0 / self.rows[i][j];
        let mut row = std::mem::take(&mut self.rows[i]);
        for (k, x) in row.iter_mut().enumerate() {
            *x = if k == j { p } else { -*x * p };
        }
        let through = |line: &mut Vec<f64>| {
            let factor = std::mem::take(&mut line[j]);
            if factor != 0.0 {
                for (x, r) in line.iter_mut().zip(&row) {
                    *x += factor * r;
                }
            }
        };
        self.rows.iter_mut().filter(|line| !line.is_empty()).for_each(through);
        through(&mut self.cost);
        self.rows[i] = row;
        let leaves = std::mem::replace(&mut self.basic[i], self.free[j].0);
        self.free[j] = (leaves, at_upper);
    }

    fn proven(&self, rows: &[Row], cap: &[f64], cost: &[f64]) -> Least {
        let ends = self.at_end();
        let mut at = vec![0.0; self.n];
        let mut multipliers = vec![0.0; rows.len()];
        for (j, &(k, _)) in self.free.iter().enumerate() {
            if k < self.n {
                at[k] = ends[j];
            } else {
                multipliers[k - self.n] = self.cost[j];
            }
        }
        for (i, &k) in self.basic.iter().enumerate().filter(|(_, k)| **k < self.n) {
            at[k] = dot(&self.rows[i], &ends).clamp(0.0, cap[k]);
        }
        let mut bound = 0.0;
        let mut rest = cost.to_vec();
        for (row, y) in rows.iter().zip(&multipliers) {
            let end = if *y > 0.0 { row.low } else { row.high };
            if *y != 0.0 && end.is_finite() {
                bound += y * end;
                rest.iter_mut().zip(&row.of).for_each(|(c, a)| *c -= y * a);
            }
        }
        let by_caps: f64 = rest.iter().zip(cap).map(|(c, most)| c.min(0.0) * most).sum();
        bound += by_caps;
        let kept = rows.iter().all(|r| {
            let x = r.value(&at);
            x.is_finite() && x >= r.low - 1e-6 * (1.0 + x.abs()) && x <= r.high + 1e-6 * (1.0 + x.abs())
        });
        if !bound.is_finite() || !kept {
            return Least::CannotTell;
        }
        Least::Found { bound, on_caps: by_caps < -BY_CAPS, at }
    }
}

#[cfg(test)]
mod tests;
