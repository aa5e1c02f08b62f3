//! What is known of a machine, and the rows it makes.
//!
//! - axle load, machine nose up by `α` (0: level), each wheel on a level scale: moments about the other
//!   axle's contact, `D = L·cos α − (r_f − r_r)·sin α`:
//!   `F = Σm((x − x_r)·cos α − (z − r_r)·sin α)/D`, `R = Σm((x_f − x)·cos α + (z − r_f)·sin α)/D`
//! - tipping test with load `W`: `Σm(P − x) = W·(x_L − P)` about the front line at `P`
//! - charted capacity `C`: `Σm(P − x) ≥ k·C·(x_L − P)`, or on a slope of `t` falling ahead
//!   `Σm((P − x) − t·z) ≥ C·((x_L − P) + t·z_L)`; where it governs, at most the same with the next
//!   step of the chart's figures
//!
//! (mechanics; `Σm` over the machine without load)

use super::bodies::{Between, FitAxis, FitPart, PerMass};
use geometry::DVec3;
use machine::{BoomPosition, Machine, SupportState, kinematics};
use quantity::Si;

/// Where the boom is, with which attachment, and on what the machine stands.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FitPose {
    /// Attachment, by its place among those of the machine.
    pub attachment: usize,
    /// Boom, forks level.
    pub boom: BoomPosition,
    /// Support state.
    pub support: SupportState,
}

/// A load in the middle plane, from the tool point (fork heel or hook).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FitLoad {
    /// Its mass, kg.
    pub mass: Between,
    /// Centre ahead of the tool point, m.
    pub ahead: f64,
    /// Centre above it, m.
    pub up: f64,
}

/// What a charted capacity is known to keep.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Margin {
    /// No more than tips it: nobody says how much it keeps.
    None,
    /// So many times the capacity does not tip the level machine.
    Factor(f64),
    /// It does not tip on ground that falls so much ahead, rise over run.
    Slope(f64),
}

/// A point of a chart.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Charted {
    /// Boom, attachment, support.
    pub pose: FitPose,
    /// Capacity (kg, both ends alike) and where its centre is.
    pub load: FitLoad,
    /// What it keeps.
    pub margin: Margin,
    /// Stated that the margin governs there: the next step of the chart's figures, kg, would no longer
    /// keep it. `None`: what governs is not known.
    pub governs: Option<f64>,
}

/// What a statement says.
#[derive(Debug, Clone, PartialEq)]
pub enum Known {
    /// Mass of a part, kg.
    Mass(FitPart, Between),
    /// A coordinate of a part's centre, m.
    Centre(FitPart, FitAxis, Between),
    /// Mass of the machine with an attachment, kg.
    Total {
        /// The attachment.
        attachment: usize,
        /// Mass, kg.
        mass: Between,
    },
    /// Axle loads on tyres, kg.
    Axles {
        /// Boom and attachment; on tyres.
        pose: FitPose,
        /// Front axle.
        front: Option<Between>,
        /// Rear axle.
        rear: Option<Between>,
        /// Load on the boom meanwhile.
        load: Option<FitLoad>,
        /// How far the machine was nose up, rad.
        pitch: f64,
    },
    /// The level machine began to tip forward with a load.
    TippingTest {
        /// Boom, attachment, support.
        pose: FitPose,
        /// The load.
        load: FitLoad,
    },
    /// Points of a chart that stand or fall together.
    Charted(Vec<Charted>),
}

/// Something known, with its name for people.
#[derive(Debug, Clone, PartialEq)]
pub struct Statement {
    /// Its name.
    pub name: String,
    /// What it says.
    pub known: Known,
}

/// What a row is of.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum RowOf {
    /// Load of the front axle.
    FrontAxle,
    /// Load of the rear axle.
    RearAxle,
    /// Load at which it tips.
    TippingLoad,
    /// Mass of the whole.
    Total,
    /// Anything else.
    Other,
}

/// A row before it is spread over the point masses. Kg, kg·m.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Sum {
    pub(crate) of: RowOf,
    pub(crate) whose: Whose,
    pub(crate) per: PerMass,
    pub(crate) low: f64,
    pub(crate) high: f64,
    /// What one kilogram of the stated value is of the row, for residuals.
    pub(crate) per_kg: f64,
}

/// Whose mass a row sums.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) enum Whose {
    /// The machine's in a pose, with or without the rear axle.
    Machine(FitPose, bool),
    /// A part's, counted by a coordinate of its own.
    Part(FitPart, Option<FitAxis>),
}

/// x of the front tipping line, m.
pub(crate) fn front_line(machine: &Machine, support: SupportState) -> f64 {
    machine.contacts(support)[0].x
}

/// Centre of a load, m.
pub(crate) fn load_at(machine: &Machine, pose: FitPose, ahead: f64, up: f64) -> DVec3 {
    let tool = machine.attachments.get(pose.attachment);
    let tool = tool.map_or(DVec3::NAN, |a| kinematics::tool_point(&machine.boom, a, pose.boom));
    tool + DVec3::new(ahead, 0.0, up)
}

/// What holds the machine against tipping forward, per mass.
pub(crate) fn held(machine: &Machine, support: SupportState) -> PerMass {
    PerMass { constant: front_line(machine, support), per: DVec3::new(-1.0, 0.0, 0.0) }
}

impl Known {
    /// The rows that it makes.
    pub(crate) fn sums(&self, machine: &Machine) -> Vec<Sum> {
        let part = |of, whose, per, b: Between| Sum { of, whose, per, low: b.low, high: b.high, per_kg: 1.0 };
        match self {
            Self::Mass(p, mass) => vec![part(RowOf::Other, Whose::Part(*p, None), PerMass::ONE, *mass)],
            Self::Centre(p, axis, between) => [(1.0, between.low), (-1.0, -between.high)]
                .map(|(sign, end)| {
                    // Σq·(c − low) ≥ 0 and Σq·(high − c) ≥ 0.
                    let per = PerMass { constant: -end, per: DVec3::new(sign, 0.0, 0.0) };
                    let free = Between { low: 0.0, high: f64::INFINITY };
                    part(RowOf::Other, Whose::Part(*p, Some(*axis)), per, free)
                })
                .to_vec(),
            Self::Total { attachment, mass } => {
                let boom = BoomPosition::level(0.0, 0.0);
                let pose = FitPose { attachment: *attachment, boom, support: SupportState::Tyres };
                vec![part(RowOf::Total, Whose::Machine(pose, true), PerMass::ONE, *mass)]
            }
            Self::Axles { pose, front, rear, load, pitch } => {
                let (s, c) = libm::sincos(*pitch);
                let (xf, xr) = (machine.front.x, machine.rear.axle.x);
                let (rf, rr) = (machine.front.tyre.free_radius.si(), machine.rear.axle.tyre.free_radius.si());
                let d = (xf - xr) * c - (rf - rr) * s;
                let on_front = PerMass { constant: (-xr * c + rr * s) / d, per: DVec3::new(c, 0.0, -s) / d };
                let on_rear = PerMass { constant: (xf * c - rf * s) / d, per: DVec3::new(-c, 0.0, s) / d };
                [(RowOf::FrontAxle, front, on_front), (RowOf::RearAxle, rear, on_rear)]
                    .into_iter()
                    .filter_map(|(of, value, per)| {
                        let mut sum = part(of, Whose::Machine(*pose, true), per, (*value)?);
                        if let Some(load) = load {
                            let each = per.at(load_at(machine, *pose, load.ahead, load.up));
                            let (a, b) = (each * load.mass.low, each * load.mass.high);
                            sum.low -= a.max(b);
                            sum.high -= a.min(b);
                        }
                        Some(sum)
                    })
                    .collect()
            }
            Self::TippingTest { pose, load } => {
                let arm = load_at(machine, *pose, load.ahead, load.up).x - front_line(machine, pose.support);
                vec![Sum {
                    of: RowOf::TippingLoad,
                    whose: Whose::Machine(*pose, true),
                    per: held(machine, pose.support),
                    low: load.mass.low * arm,
                    high: load.mass.high * arm,
                    per_kg: arm,
                }]
            }
            Self::Charted(points) => points.iter().map(|p| p.sum(machine)).collect(),
        }
    }

    /// True for what was measured, and has a residual.
    pub(crate) fn measured(&self) -> bool {
        matches!(self, Self::Axles { .. } | Self::Total { .. } | Self::TippingTest { .. })
    }
}

impl Charted {
    fn sum(&self, machine: &Machine) -> Sum {
        let at = load_at(machine, self.pose, self.load.ahead, self.load.up);
        let p = front_line(machine, self.pose.support);
        let mut per = held(machine, self.pose.support);
        let (slope, factor) = match self.margin {
            Margin::None => (0.0, 1.0),
            Margin::Factor(k) => (0.0, k),
            Margin::Slope(t) => (t, 1.0),
        };
        per.per.z = -slope;
        // Nearer than the line a load holds: it asks nothing.
        let asked = factor * ((at.x - p) + slope * at.z);
        let (low, high) = if asked > 0.0 {
            let next = self.governs.filter(|_| self.margin != Margin::None);
            (self.load.mass.low * asked, next.map_or(f64::INFINITY, |step| (self.load.mass.high + step) * asked))
        } else {
            (f64::NEG_INFINITY, f64::INFINITY)
        };
        Sum { of: RowOf::Other, whose: Whose::Machine(self.pose, true), per, low, high, per_kg: asked }
    }
}
