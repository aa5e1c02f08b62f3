//! Bounds of the tilt at which the machine tips sideways, where heights are known well enough.
//!
//! For a direction of descent `d` tipping over a line with `a = u × Σm(r − P)` starts at
//! `tan θ = −a_z / (−a·d)` ([`crate::onset`]): a quotient of two sums that are linear in the point
//! masses. Its least over all possible machines is found by Dinkelbach's iteration: with
//! `t = N(q)/D(q)` of the last machine minimise `N − t·D`, until that is zero. The worst direction is
//! searched all round; between two tried directions the least is less by `cos` of half the step at most.

use super::bodies::{FitAxis, FitPart, PerMass};
use super::statements::{FitPose, Known, Whose, load_at};
use super::{Answer, Fit, FitLoad, TONNE};
use crate::linear::dot;
use crate::{RearAxleState, Support, TippingLine, TipsOver, tipping_lines};
use geometry::DVec3;

/// A pose with a load whose tilt sideways is asked for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SideAsk {
    /// Boom, attachment, support.
    pub pose: FitPose,
    /// The load; its upper mass counts.
    pub load: FitLoad,
    /// Rear axle.
    pub rear: RearAxleState,
}

/// Why nothing is said of the tilt sideways. A level weighing is the same for a high and a low centre.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum NotIdentifiable {
    /// No tilted weighing and no range of the chassis' height.
    Height,
    /// No range of the chassis' centre sideways.
    Sideways,
}

const DIRECTIONS: u32 = 72;
const ITERATIONS: usize = 60;

impl Fit<'_> {
    /// What keeps the tilt sideways from being bounded; empty: it can be.
    pub fn side_unknown(&self) -> Vec<NotIdentifiable> {
        let stated = |test: &dyn Fn(&Known) -> bool| self.statements().iter().any(|s| test(&s.known));
        let centre = |axis| stated(&move |k| matches!(k, Known::Centre(FitPart::Chassis, a, _) if *a == axis));
        let tilted = stated(&|k| matches!(k, Known::Axles { pitch, .. } if pitch.abs() > 0.01));
        let mut out = Vec::new();
        if !tilted && !centre(FitAxis::Up) {
            out.push(NotIdentifiable::Height);
        }
        if !centre(FitAxis::Left) {
            out.push(NotIdentifiable::Sideways);
        }
        out
    }

    /// Least and most tilt of the ground (rad) at which it starts to tip to a side, in the worst
    /// direction. What is not stated of heights lies anywhere that it can: ask [`Fit::side_unknown`] first.
    pub fn side_tilt(&self, ask: SideAsk) -> Answer<(f64, f64)> {
        let lines = tipping_lines(self.machine, Support { state: ask.pose.support, rear: ask.rear });
        let load = load_at(self.machine, ask.pose, ask.load.ahead, ask.load.up);
        let mut least = f64::INFINITY;
        let mut most = f64::INFINITY;
        for line in lines.iter().filter(|l| matches!(l.over, TipsOver::Left | TipsOver::Right)) {
            let whose = Whose::Machine(ask.pose, line.with_rear_axle);
            let parts = [DVec3::X, DVec3::Y, DVec3::Z].map(|axis| {
                let per = about_line(line, axis);
                // What the rear wheels hold goes with everything that weighs.
                let hold = PerMass { constant: line.held * axis.x, per: DVec3::ZERO };
                let all = self.spread(Whose::Machine(ask.pose, true), hold);
                let terms: Vec<f64> = self.spread(whose, per).iter().zip(all).map(|(a, b)| a + b).collect();
                (terms, (per.at(load) + hold.at(load)) * ask.load.mass.high / TONNE)
            });
            let upright: Vec<f64> = parts[2].0.iter().map(|x| -x).collect();
            match self.least(&self.all_rows(), &upright) {
                // Some possible machine lies over already, or nothing bounds it.
                Answer::Known((least_held, on_caps, _)) if on_caps || least_held <= parts[2].1 => least = 0.0,
                Answer::Known(_) => {}
                Answer::Contradiction(_) => return Answer::Contradiction(self.contradicting()),
                Answer::CannotTell => return Answer::CannotTell,
            }
            for k in 0..DIRECTIONS {
                let (s, c) = libm::sincos(std::f64::consts::TAU * f64::from(k) / f64::from(DIRECTIONS));
                let sum = |x: f64, y: f64, z: f64| {
                    let terms: Vec<f64> = (0..self.spots.len())
                        .map(|j| x * parts[0].0[j] + y * parts[1].0[j] + z * parts[2].0[j])
                        .collect();
                    (terms, x * parts[0].1 + y * parts[1].1 + z * parts[2].1)
                };
                let (holds, over) = (sum(0.0, 0.0, -1.0), sum(-c, -s, 0.0));
                for (sign, end) in [(1.0, &mut least), (-1.0, &mut most)] {
                    match self.quotient(&holds, &over, sign) {
                        Answer::Known(Some(tan)) => *end = end.min(tan),
                        Answer::Known(None) => {}
                        Answer::Contradiction(c) => return Answer::Contradiction(c),
                        Answer::CannotTell => return Answer::CannotTell,
                    }
                }
            }
        }
        // Half a step between directions, and the rest that the iteration leaves.
        let between = libm::cos(std::f64::consts::PI / f64::from(DIRECTIONS)) * (1.0 - 1e-6);
        let tilt = |tan: f64| libm::atan(tan.max(0.0));
        Answer::Known((tilt(least * between), tilt(most)))
    }

    /// Least (`sign` 1) or most (−1) of `holds/over` where `over` is above zero for every possible machine; for the
    /// least, where it is for any.
    fn quotient(&self, holds: &(Vec<f64>, f64), over: &(Vec<f64>, f64), sign: f64) -> Answer<Option<f64>> {
        let rows = self.all_rows();
        let value = |(of, constant): &(Vec<f64>, f64), q: &[f64]| dot(of, q) + constant;
        // The machine that tips easiest over it, or the one that does so hardest.
        let cost: Vec<f64> = over.0.iter().map(|x| -sign * x).collect();
        let start = match self.least(&rows, &cost) {
            Answer::Known((_, _, at)) => at,
            Answer::Contradiction(_) => return Answer::Contradiction(self.contradicting()),
            Answer::CannotTell => return Answer::CannotTell,
        };
        if value(over, &start) <= 1e-9 {
            return Answer::Known(None);
        }
        let mut t = value(holds, &start) / value(over, &start);
        for _ in 0..ITERATIONS {
            let cost: Vec<f64> = holds.0.iter().zip(&over.0).map(|(h, o)| sign * (h - t * o)).collect();
            let (bound, at) = match self.least(&rows, &cost) {
                Answer::Known((_, true, _)) => return Answer::Known((sign > 0.0).then_some(0.0)),
                Answer::Known((bound, false, at)) => (bound + sign * (holds.1 - t * over.1), at),
                Answer::Contradiction(_) => return Answer::Contradiction(self.contradicting()),
                Answer::CannotTell => return Answer::CannotTell,
            };
            if bound >= -1e-9 * (1.0 + t.abs()) || value(over, &at) <= 1e-9 {
                return Answer::Known(Some(t));
            }
            let better = value(holds, &at) / value(over, &at);
            if (better - t).abs() <= 1e-9 * (1.0 + t.abs()) {
                return Answer::Known(Some(better));
            }
            t = better;
        }
        Answer::CannotTell
    }
}

/// A component of `u × (r − P)` per mass.
fn about_line(line: &TippingLine, axis: DVec3) -> PerMass {
    // (u × r)·e = r·(e × u).
    let per = axis.cross(line.along);
    PerMass { constant: -per.dot(line.point), per }
}
