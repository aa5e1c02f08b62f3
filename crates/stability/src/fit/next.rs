//! What to measure next: each measurement is tried on machines that are still possible.

use super::statements::{FitLoad, FitPose, Known, Statement, Whose, front_line, held, load_at};
use super::{Answer, Ask, Between, Bounds, Fit, FitPart, PerMass, TONNE, in_range};
use crate::linear::dot;
use machine::{BoomPosition, SupportState};
use quantity::Si;

/// What may be measured.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Measurement {
    /// Both axle loads on level ground, no load on the boom.
    AxleLoads(BoomPosition),
    /// A tipping test at a boom position, by the maker or with a competent person.
    TippingTest(BoomPosition),
    /// Weighing the attachment alone.
    Attachment,
}

/// How it would be measured.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Weighing {
    /// Uncertainty to either side, as a share.
    pub share: f64,
}

/// What a measurement would leave.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Next {
    /// The measurement.
    pub measurement: Measurement,
    /// What it would leave between the bounds, kg: the most over the machines tried; infinite where it
    /// would not bound them.
    pub width: f64,
}

impl Fit<'_> {
    /// Tries measurements for an asked pose, best first. Each is simulated on a machine in the middle of
    /// what is possible and on those half way from it to both bounds. Boom positions in which the empty machine may tip forward are not proposed.
    pub fn next(&self, ask: Ask, weighing: Weighing) -> Answer<Vec<Next>> {
        let (machines, now) = match self.tipping_span(ask) {
            Answer::Known(Some((bounds, at))) => (self.possible(ask, at, bounds), bounds),
            Answer::Known(None) => return Answer::Known(Vec::new()),
            Answer::Contradiction(c) => return Answer::Contradiction(c),
            Answer::CannotTell => return Answer::CannotTell,
        };
        let mut out: Vec<Next> = Vec::new();
        for measurement in self.candidates(ask) {
            let mut width = 0.0_f64;
            for q in &machines {
                let known = self.simulated(measurement, ask, q, weighing);
                let left = known.map_or(now, |known| {
                    let more = self.with(Statement { name: String::new(), known });
                    match more.tipping_span(ask) {
                        Answer::Known(Some((bounds, _))) => bounds,
                        _ => now,
                    }
                });
                width = width.max(left.width());
            }
            out.push(Next { measurement, width });
        }
        out.sort_by(|a, b| a.width.total_cmp(&b.width));
        Answer::Known(out)
    }

    /// Machines to try measurements on, as far as there are bounds. The middle is the mean of those that
    /// bear least and most at positions all over the boom's range.
    fn possible(&self, ask: Ask, [low, high]: [Vec<f64>; 2], bounds: Bounds) -> Vec<Vec<f64>> {
        let mut found = vec![low.clone()];
        if bounds.upper.is_some() {
            found.push(high.clone());
        }
        for boom in self.positions(ask) {
            let whose = Whose::Machine(FitPose { boom, ..ask.pose }, true);
            let cost = self.spread(whose, held(self.machine, ask.pose.support));
            for sign in [1.0, -1.0] {
                let cost: Vec<f64> = cost.iter().map(|c| sign * c).collect();
                if let Answer::Known((_, false, at)) = self.least(&self.all_rows(), &cost) {
                    found.push(at);
                }
            }
        }
        let mean = |of: &[&Vec<f64>]| -> Vec<f64> {
            (0..low.len()).map(|j| of.iter().map(|q| q[j]).sum::<f64>() / of.len() as f64).collect()
        };
        let middle = mean(&found.iter().collect::<Vec<_>>());
        let mut out = vec![mean(&[&middle, &low])];
        if bounds.upper.is_some() {
            out.push(mean(&[&middle, &high]));
        }
        out.push(middle);
        out
    }

    /// Boom positions all over its range, and the asked one.
    fn positions(&self, ask: Ask) -> Vec<BoomPosition> {
        let b = &self.machine.boom;
        let (low, high, out) = (b.angle_min.si(), b.angle_max.si(), b.extension_max.si());
        let flat = 0.0_f64.clamp(low, high);
        let angles = [flat, f64::midpoint(flat, high), high];
        let grid = angles.into_iter().flat_map(|a| [0.0, 0.5, 1.0].map(|share| BoomPosition::level(a, share * out)));
        grid.chain([ask.pose.boom]).collect()
    }

    fn candidates(&self, ask: Ask) -> Vec<Measurement> {
        let poses = self.positions(ask);
        let mut all: Vec<Measurement> = poses
            .iter()
            .filter(|p| in_range(self.machine, **p) && self.stands(ask.pose.attachment, **p))
            .map(|p| Measurement::AxleLoads(*p))
            .collect();
        all.push(Measurement::TippingTest(ask.pose.boom));
        all.push(Measurement::Attachment);
        all
    }

    /// True if no possible machine tips forward there without load.
    fn stands(&self, attachment: usize, boom: BoomPosition) -> bool {
        let pose = FitPose { attachment, boom, support: SupportState::Tyres };
        let cost = self.spread(Whose::Machine(pose, true), held(self.machine, pose.support));
        matches!(self.least(&self.all_rows(), &cost), Answer::Known((least, _, _)) if least > 0.0)
    }

    /// The statement that a measurement makes on a machine.
    fn simulated(&self, measurement: Measurement, ask: Ask, q: &[f64], w: Weighing) -> Option<Known> {
        let sum = |whose, per| dot(&self.spread(whose, per), q) * TONNE;
        // A scale that shows less than a kilogram says nothing.
        let about = |kg: f64| (kg > 1.0).then(|| Between::about(kg, w.share));
        match measurement {
            Measurement::AxleLoads(boom) => {
                let pose = FitPose { boom, support: SupportState::Tyres, ..ask.pose };
                let probe = Between { low: 0.0, high: 0.0 };
                let asked = Known::Axles { pose, front: Some(probe), rear: Some(probe), load: None, pitch: 0.0 };
                let sums = asked.sums(self.machine);
                let [front, rear] = [sums.first()?, sums.get(1)?].map(|s| about(sum(s.whose, s.per)));
                (front.is_some() || rear.is_some()).then_some(Known::Axles {
                    pose,
                    front,
                    rear,
                    load: None,
                    pitch: 0.0,
                })
            }
            Measurement::TippingTest(boom) => {
                let pose = FitPose { boom, ..ask.pose };
                let arm = load_at(self.machine, pose, ask.ahead, 0.0).x - front_line(self.machine, pose.support);
                let kg = sum(Whose::Machine(pose, true), held(self.machine, pose.support)) / arm;
                about(kg).map(|mass| Known::TippingTest { pose, load: FitLoad { mass, ahead: ask.ahead, up: 0.0 } })
            }
            Measurement::Attachment => {
                let part = FitPart::Attachment(ask.pose.attachment);
                about(sum(Whose::Part(part, None), PerMass::ONE)).map(|mass| Known::Mass(part, mass))
            }
        }
    }
}
