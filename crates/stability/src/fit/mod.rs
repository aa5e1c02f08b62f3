//! Fit of a machine of which only part is known: what its plate, weighings, charts and tests leave
//! possible, and bounds that follow.
//!
//! Unknown are masses and centres of the parts; geometry is known. Every statement is a linear
//! row over point masses (`bodies`, `statements`), so a bound is the optimum of a linear programme, and
//! "no machine is like this" is a proof. Heights act on nothing that is weighed level: they and the
//! side stability stay unknown until a tilted weighing or a stated range says more.

mod bodies;
mod faults;
mod next;
mod side;
mod statements;
mod zones;

pub use bodies::{Between, FitAxis, FitPart};
pub use faults::FitFault;
pub use next::{Measurement, Next, Weighing};
pub use side::{NotIdentifiable, SideAsk};
pub use statements::{Charted, FitLoad, FitPose, Known, Margin, RowOf, Statement};
pub use zones::charted_zones;

use crate::linear::{Least, Row, dot, minimise};
use bodies::{PerMass, Spot, corners, parts, usual};
use machine::{BoomPosition, Machine};
use quantity::Si;
use statements::{Sum, Whose, front_line, held, load_at};

/// No part of such a machine weighs more, t. What stands on it counts as unbounded.
const CAP: f64 = 200.0;
/// Kilograms in a tonne.
const TONNE: f64 = 1000.0;

/// Least and most, as far as they are bounded.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bounds {
    /// Least, kg.
    pub lower: f64,
    /// Most, kg; `None`: nothing stated bounds it.
    pub upper: Option<f64>,
}

impl Bounds {
    /// Between them, kg.
    pub fn middle(&self) -> Option<f64> {
        self.upper.map(|u| f64::midpoint(self.lower, u))
    }
    /// From one to the other, kg; infinite where not bounded.
    pub fn width(&self) -> f64 {
        self.upper.map_or(f64::INFINITY, |u| u - self.lower)
    }
}

/// A pose whose level forward tipping load is asked for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Ask {
    /// Boom, attachment, support.
    pub pose: FitPose,
    /// Centre of the load ahead of the tool point, m.
    pub ahead: f64,
}

/// Answer of a search.
#[derive(Debug, Clone, PartialEq)]
pub enum Answer<T> {
    /// Found.
    Known(T),
    /// No machine is like that: these statements contradict each other, and without any one of them
    /// the others do not. Places in [`Fit::statements`].
    Contradiction(Vec<usize>),
    /// The search did not end.
    CannotTell,
}

/// How well a measured value fits all others.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Residual {
    /// Place of the statement.
    pub statement: usize,
    /// Which of its values.
    pub of: RowOf,
    /// As stated, kg: the middle of its range.
    pub stated: f64,
    /// As in the machine that fits best, kg.
    pub fitted: f64,
    /// Their difference as a share of the stated uncertainty: at most 1 where all agrees.
    pub share: f64,
}

/// A machine with what is stated of it.
#[derive(Debug, Clone)]
pub struct Fit<'m> {
    machine: &'m Machine,
    spots: Vec<Spot>,
    statements: Vec<Statement>,
    /// Rows by statement.
    rows: Vec<Vec<(Row, Sum)>>,
}

impl<'m> Fit<'m> {
    /// From the geometry of a machine (its masses and centres are not looked at) and what is stated.
    /// `sections`: the lengths that the sections take of the extension are known.
    pub fn new(machine: &'m Machine, sections: bool, statements: Vec<Statement>) -> Result<Self, Vec<FitFault>> {
        let faults = faults::faults(machine, sections, &statements);
        if !faults.is_empty() {
            return Err(faults);
        }
        let mut spots = Vec::new();
        for part in parts(machine, sections) {
            let mut bounds = usual(machine, part);
            // Where somebody says more of a part that moves, its box goes as far as that.
            if !matches!(part, FitPart::Chassis | FitPart::RearAxle) {
                for s in &statements {
                    if let Known::Centre(p, axis, b) = &s.known
                        && *p == part
                    {
                        let range = &mut bounds[axis_index(*axis)];
                        *range = Between { low: range.low.min(b.low), high: range.high.max(b.high) };
                    }
                }
            }
            corners(machine, part, sections, bounds, &mut spots);
        }
        let mut fit = Self { machine, spots, statements, rows: Vec::new() };
        fit.rows = fit.statements.iter().map(|s| fit.rows_of(&s.known)).collect();
        Ok(fit)
    }

    /// What is stated.
    pub fn statements(&self) -> &[Statement] {
        &self.statements
    }

    /// The same with one statement more.
    #[must_use]
    pub fn with(&self, statement: Statement) -> Self {
        let mut more = self.clone();
        more.rows.push(self.rows_of(&statement.known));
        more.statements.push(statement);
        more
    }

    fn rows_of(&self, known: &Known) -> Vec<(Row, Sum)> {
        known
            .sums(self.machine)
            .into_iter()
            .map(|sum| (Row { of: self.spread(sum.whose, sum.per), low: sum.low / TONNE, high: sum.high / TONNE }, sum))
            .collect()
    }

    /// A sum over masses as factors of the point masses.
    fn spread(&self, whose: Whose, per: PerMass) -> Vec<f64> {
        let factor = |s: &Spot| match whose {
            Whose::Part(part, _) if part != s.part => 0.0,
            Whose::Part(_, axis) => {
                let own = axis.map_or(0.0, |axis| s.coordinate(axis));
                per.at(geometry::DVec3::new(own, 0.0, 0.0))
            }
            Whose::Machine(pose, axle) => match s.part {
                FitPart::Attachment(i) if i != pose.attachment => 0.0,
                FitPart::RearAxle if !axle => 0.0,
                _ => per.at(s.at(self.machine, pose.boom)),
            },
        };
        self.spots.iter().map(factor).collect()
    }

    fn all_rows(&self) -> Vec<Row> {
        self.rows.iter().flatten().map(|(r, _)| r.clone()).collect()
    }

    fn caps(&self) -> Vec<f64> {
        vec![CAP; self.spots.len()]
    }

    fn least(&self, rows: &[Row], cost: &[f64]) -> Answer<(f64, bool, Vec<f64>)> {
        match minimise(rows, &self.caps(), cost) {
            Least::Found { bound, on_caps, at } => Answer::Known((bound, on_caps, at)),
            Least::Contradiction => Answer::Contradiction(Vec::new()),
            Least::CannotTell => Answer::CannotTell,
        }
    }

    /// Least and most of `cost`, with the machines that reach them. Tonnes.
    fn span(&self, cost: &[f64]) -> Answer<Span> {
        let rows = self.all_rows();
        let against: Vec<f64> = cost.iter().map(|c| -c).collect();
        match (self.least(&rows, cost), self.least(&rows, &against)) {
            (Answer::Known(low), Answer::Known(high)) => Answer::Known(Span {
                low: if low.1 { None } else { Some(low.0) },
                high: if high.1 { None } else { Some(-high.0) },
                at: [low.2, high.2],
            }),
            (Answer::Contradiction(_), _) | (_, Answer::Contradiction(_)) => {
                Answer::Contradiction(self.contradicting())
            }
            _ => Answer::CannotTell,
        }
    }

    /// Bounds of the level forward tipping load at a pose. `Known(None)`: a load there is not ahead of
    /// the front line and tips nothing forward. Never below zero.
    pub fn tipping(&self, ask: Ask) -> Answer<Option<Bounds>> {
        match self.tipping_span(ask) {
            Answer::Known(span) => Answer::Known(
                span.map(|(raw, _)| Bounds { lower: raw.lower.max(0.0), upper: raw.upper.map(|u| u.max(0.0)) }),
            ),
            Answer::Contradiction(c) => Answer::Contradiction(c),
            Answer::CannotTell => Answer::CannotTell,
        }
    }

    /// The same, below zero where the machine may tip without load; not bounded from below: minus infinity.
    fn tipping_span(&self, ask: Ask) -> Answer<Option<(Bounds, [Vec<f64>; 2])>> {
        let support = ask.pose.support;
        let arm = load_at(self.machine, ask.pose, ask.ahead, 0.0).x - front_line(self.machine, support);
        let reachable = in_range(self.machine, ask.pose.boom) && self.machine.has(support);
        if arm.is_nan() || !reachable {
            return Answer::CannotTell;
        }
        if arm <= 0.0 {
            return Answer::Known(None);
        }
        let cost = self.spread(Whose::Machine(ask.pose, true), held(self.machine, support));
        match self.span(&cost) {
            Answer::Known(span) => {
                let load = |held: f64| held * TONNE / arm;
                let bounds = Bounds { lower: span.low.map_or(f64::NEG_INFINITY, load), upper: span.high.map(load) };
                Answer::Known(Some((bounds, span.at)))
            }
            Answer::Contradiction(c) => Answer::Contradiction(c),
            Answer::CannotTell => Answer::CannotTell,
        }
    }

    /// How well what was measured fits, in the machine that all agrees with best: the largest share of
    /// its uncertainty that any value needs is made least. A contradiction where that exceeds 1.
    pub fn residuals(&self) -> Answer<Vec<Residual>> {
        // One variable more: the share `t`; rows of measured values widen with it.
        let n = self.spots.len();
        let mut rows = Vec::new();
        let mut measured = Vec::new();
        for (i, statement) in self.rows.iter().enumerate() {
            for (row, sum) in statement {
                if self.statements[i].known.measured() && row.low.is_finite() && row.high.is_finite() {
                    let (middle, half) = (f64::midpoint(row.low, row.high), 0.5 * (row.high - row.low));
                    for sign in [1.0, -1.0] {
                        let mut of = row.of.clone();
                        of.push(sign * half);
                        let (low, high) =
                            if sign > 0.0 { (middle, f64::INFINITY) } else { (f64::NEG_INFINITY, middle) };
                        rows.push(Row { of, low, high });
                    }
                    measured.push((i, row, sum, middle, half));
                } else {
                    let mut of = row.of.clone();
                    of.push(0.0);
                    rows.push(Row { of, ..*row });
                }
            }
        }
        let mut cost = vec![0.0; n + 1];
        cost[n] = 1.0;
        let mut caps = self.caps();
        caps.push(1.0);
        match minimise(&rows, &caps, &cost) {
            Least::Found { at, .. } => Answer::Known(
                measured
                    .into_iter()
                    .map(|(statement, row, sum, middle, half)| {
                        let kg = |x: f64| x * TONNE / sum.per_kg;
                        let off = (dot(&row.of, &at) - middle).abs();
                        Residual {
                            statement,
                            of: sum.of,
                            stated: kg(middle),
                            fitted: kg(dot(&row.of, &at)),
                            share: if half > 0.0 { off / half } else { 0.0 },
                        }
                    })
                    .collect(),
            ),
            Least::Contradiction => Answer::Contradiction(self.contradicting()),
            Least::CannotTell => Answer::CannotTell,
        }
    }

    /// A least set of contradicting statements: one after another is left out, and stays out where the
    /// rest contradicts still.
    fn contradicting(&self) -> Vec<usize> {
        let contradicts = |kept: &[bool]| {
            let rows: Vec<Row> = self
                .rows
                .iter()
                .zip(kept)
                .filter(|(_, kept)| **kept)
                .flat_map(|(rows, _)| rows.iter().map(|(r, _)| r.clone()))
                .collect();
            matches!(self.least(&rows, &vec![0.0; self.spots.len()]), Answer::Contradiction(_))
        };
        let mut kept = vec![true; self.statements.len()];
        if !contradicts(&kept) {
            return Vec::new();
        }
        for i in (0..kept.len()).rev() {
            kept[i] = false;
            kept[i] = !contradicts(&kept);
        }
        kept.iter().enumerate().filter(|(_, k)| **k).map(|(i, _)| i).collect()
    }
}

/// Ends of a sum, t; `None` where nothing bounds it.
struct Span {
    low: Option<f64>,
    high: Option<f64>,
    at: [Vec<f64>; 2],
}

fn axis_index(axis: FitAxis) -> usize {
    match axis {
        FitAxis::Ahead => 0,
        FitAxis::Left => 1,
        FitAxis::Up => 2,
    }
}

fn in_range(machine: &Machine, boom: BoomPosition) -> bool {
    let b = &machine.boom;
    let slack = 1e-9;
    boom.angle >= b.angle_min.si() - slack
        && boom.angle <= b.angle_max.si() + slack
        && boom.extension >= -slack
        && boom.extension <= b.extension_max.si() + slack
        && boom.fork_tilt == 0.0
}
