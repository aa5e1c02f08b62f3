//! Set-backs solved once and kept: by kind of edge and by what stands beside it, both rounded to the safe side.
//!
//! What wheels ask of an edge changes with every pose of the boom and every stand, and a distance takes milliseconds. So
//! it is asked of **rungs**: each row's pressure goes up to the next of [`RUNGS`] steps to a doubling (at most 9 % more),
//! and its strip is widened outward to whole [`GRID`]. A single check and a field of stands both read the rung, never the
//! exact load beside it: one place has one answer, whoever asks.
//!
//! Rounding up is safe, because distances are found without load that helps ([`crate::set_back`]): for every slip the
//! margin against the required factor is the soil's own, less what each piece of load takes. More pressure on the same
//! strip, and pressure on a wider strip, leave no slip better off, so that the distance of the rung is no less than that
//! of the load itself, but for what the search for the worst slip is out by. Edges are rounded as in
//! [`crate::set_back_map`].
//!
//! The store is handed about as `&mut`: it fills where it is asked, and what it answers depends on nothing but the
//! question, so that neither the order of asking nor what was asked before can be seen in an answer. To solve every rung
//! beforehand would cost seconds for loads that never come; a cell that fills behind a shared reference would hide that
//! in types which claim to be plain data. Threads take a store each.

use crate::edge_rules::planning_line;
use crate::input_fault::{InputFault, InputFaults};
use crate::set_back::{Edge, SetBack, of_strips};
use crate::slip_search::REACH;
use crate::slope_section::Surcharge;
use crate::wheel_row::{self, WheelRow};
use evidence::{Silent, Working};
use libm::{exp2, log2};
use std::collections::BTreeMap;
use std::sync::Arc;

/// Depth, batter and water table of edges are rounded to this, m.
pub const ROUNDING: f64 = 0.05;
/// Strips of load are widened to multiples of this, m.
pub const GRID: f64 = 0.02;
/// Steps of pressure to a doubling.
pub const RUNGS: f64 = 8.0;

/// An answer with its working; both are those of the rounded edge and rung.
#[derive(Debug, Clone, PartialEq)]
pub struct Solved {
    /// The edge as it was rounded.
    pub edge: Edge,
    /// What it comes to.
    pub answer: SetBack,
    /// Its steps.
    pub working: Working,
}

/// A kind of edge of a store, with the depth of the edge that asked: what a wheel presses per metre depends on it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct EdgeKind {
    index: usize,
    depth: f64,
}

/// One row as a rung: where its strip begins and ends, in [`GRID`], and its pressure, in [`RUNGS`] above 1 Pa.
type Rung = [i32; 3];

/// Answers that were found so far.
#[derive(Debug, Clone, Default)]
pub struct SetBackStore {
    kinds: Vec<Kind>,
}

/// A rounded edge with what was asked of it.
#[derive(Debug, Clone)]
struct Kind {
    edge: Edge,
    solved: BTreeMap<Vec<Rung>, Arc<Solved>>,
}

impl Solved {
    /// Least distance from the crest, m. Where none is told, everything counts as too near that its soil might feel.
    pub fn needed(&self) -> f64 {
        match &self.answer {
            SetBack::Distance(d) => d.from_crest,
            SetBack::FaceFails { .. } | SetBack::Supported | SetBack::Unknown(_) => {
                let line = planning_line(&self.edge.drop, &mut Silent).map_or(f64::INFINITY, |l| l.from_crest);
                line.max(REACH * self.edge.drop.depth + 1.0)
            }
        }
    }
}

impl SetBackStore {
    /// The kind of an edge, new or known.
    ///
    /// # Errors
    /// Every fault of the edge.
    pub fn kind(&mut self, edge: &Edge) -> Result<EdgeKind, Vec<InputFault>> {
        let rounded = rounded(edge);
        let known = self.kinds.iter().position(|kind| kind.edge == rounded);
        let index = if let Some(index) = known {
            index
        } else {
            // Of the edge itself: rounding keeps within the ranges, and would hide what is a hair beside one.
            let faults = edge.own_faults();
            if !faults.is_empty() {
                return Err(faults);
            }
            self.kinds.push(Kind { edge: rounded, solved: BTreeMap::new() });
            self.kinds.len() - 1
        };
        Ok(EdgeKind { index, depth: edge.drop.depth })
    }

    /// What these rows ask of an edge of that kind: known, or solved now. `kind` is of this store.
    ///
    /// # Errors
    /// Every fault of the rows, and of the edge where no kind of this store is meant.
    pub fn ask(&mut self, kind: EdgeKind, rows: &[WheelRow]) -> Result<Arc<Solved>, Vec<InputFault>> {
        let mut faults = InputFaults::default();
        wheel_row::look_at(rows, &mut faults);
        faults.done()?;
        self.solve(kind, rungs(kind, rows))
    }

    /// The same for rows that stand so far from the crest (m), where only whether they may is asked: an answer to more load
    /// than theirs, if that lets them stand there, else their own. So a change of load that matters little costs nothing.
    ///
    /// # Errors
    /// As [`SetBackStore::ask`].
    pub fn ask_whether(
        &mut self,
        kind: EdgeKind,
        rows: &[WheelRow],
        aside: f64,
    ) -> Result<Arc<Solved>, Vec<InputFault>> {
        let mut faults = InputFaults::default();
        wheel_row::look_at(rows, &mut faults);
        faults.done()?;
        let asked = rungs(kind, rows);
        let lets = |solved: &Solved| matches!(&solved.answer, SetBack::Distance(d) if d.from_crest <= aside);
        let known = self.kinds.get(kind.index).and_then(|k| {
            let more = k.solved.iter().filter(|(rungs, solved)| covers(rungs, &asked) && lets(solved));
            more.map(|(_, solved)| Arc::clone(solved)).next()
        });
        if let Some(known) = known {
            return Ok(known);
        }
        // One strip under all of it lets most wheels stand that are not near, whichever way the machine is turned.
        if let Some(one) = under_all(&asked) {
            let solved = self.solve(kind, vec![one])?;
            if lets(&solved) {
                return Ok(solved);
            }
        }
        let rough = self.solve(kind, asked.iter().map(roughly).collect())?;
        if lets(&rough) { Ok(rough) } else { self.solve(kind, asked) }
    }

    fn solve(&mut self, kind: EdgeKind, rungs: Vec<Rung>) -> Result<Arc<Solved>, Vec<InputFault>> {
        let Some(Kind { edge, solved }) = self.kinds.get_mut(kind.index) else { return Err(Vec::new()) };
        if let Some(known) = solved.get(&rungs) {
            return Ok(Arc::clone(known));
        }
        let strips: Vec<Surcharge> = rungs.iter().map(strip).collect();
        let mut working = Working::default();
        let answer = of_strips(edge, &strips, &mut working)?;
        let found = Arc::new(Solved { edge: edge.clone(), answer, working });
        solved.insert(rungs, Arc::clone(&found));
        Ok(found)
    }

    /// How many answers were solved.
    pub fn solved(&self) -> usize {
        self.kinds.iter().map(|kind| kind.solved.len()).sum()
    }
}

fn rungs(kind: EdgeKind, rows: &[WheelRow]) -> Vec<Rung> {
    rows.iter().filter_map(|row| rung(&row.strip(0.0, kind.depth))).collect()
}

/// A wider strip of more pressure: to half metres and to a whole doubling.
fn roughly([from, to, pressure]: &Rung) -> Rung {
    const HALF_METRE: i32 = 25;
    const DOUBLING: i32 = RUNGS as i32;
    let up = |v: i32, step: i32| v.div_euclid(step) * step + if v.rem_euclid(step) == 0 { 0 } else { step };
    [from.div_euclid(HALF_METRE) * HALF_METRE, up(*to, HALF_METRE), up(*pressure, DOUBLING)]
}

/// One rough strip that reaches under all rows and presses as all of them would where they overlap; none without rows.
fn under_all(rows: &[Rung]) -> Option<Rung> {
    let from = rows.iter().map(|r| r[0]).min()?;
    let to = rows.iter().map(|r| r[1]).max()?;
    let pressure = rows.iter().map(|r| strip(r).pressure).sum();
    rung(&Surcharge { from: f64::from(from) * GRID, to: f64::from(to) * GRID, pressure }).map(|r| roughly(&r))
}

/// True if every row of `asked` lies within its row of `more` and presses no harder, or all within the one row of it that
/// presses as all of them together: then no slip is better off under more.
fn covers(more: &[Rung], asked: &[Rung]) -> bool {
    let within = |m: &Rung, a: &Rung| m[0] <= a[0] && m[1] >= a[1];
    let row = |(m, a): (&Rung, &Rung)| within(m, a) && m[2] >= a[2];
    if let ([one], true) = (more, asked.len() > 1) {
        let all: f64 = asked.iter().map(|a| strip(a).pressure).sum();
        return asked.iter().all(|a| within(one, a)) && strip(one).pressure >= all;
    }
    more.len() == asked.len() && more.iter().zip(asked).all(row)
}

/// The rung of a strip; none where nothing presses.
fn rung(strip: &Surcharge) -> Option<Rung> {
    if strip.pressure <= 0.0 {
        return None;
    }
    // A hair beyond a whole step is that step, however it was reckoned. What was looked at is far within an `i32`.
    let whole = |v: f64| v as i32;
    let pressure = whole((RUNGS * log2(strip.pressure.max(1.0)) - 1e-9).ceil());
    Some([whole((strip.from / GRID + 1e-6).floor()), whole((strip.to / GRID - 1e-6).ceil()), pressure])
}

/// The strip of a rung.
fn strip([from, to, pressure]: &Rung) -> Surcharge {
    Surcharge { from: f64::from(*from) * GRID, to: f64::from(*to) * GRID, pressure: exp2(f64::from(*pressure) / RUNGS) }
}

/// The edge rounded to the safe side.
fn rounded(edge: &Edge) -> Edge {
    // A hair less than a whole step is that step: 2.05 m is 41 steps however it was reckoned.
    let up = |v: f64| (v / ROUNDING - 1e-6).ceil() * ROUNDING;
    let down = |v: f64| (v / ROUNDING + 1e-6).floor() * ROUNDING;
    let mut out = edge.clone();
    out.drop.depth = up(edge.drop.depth).min(60.0);
    out.drop.batter = down(edge.drop.batter).max(0.0);
    out.water = edge.water.map(|w| up(w).min(out.drop.depth));
    out.firm_base = edge.firm_base.map(|b| b.max(out.drop.depth));
    out
}
