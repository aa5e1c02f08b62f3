//! What is wrong with the statements of a fit before anything is computed.

use super::bodies::{Between, FitPart, parts, usual};
use super::statements::{FitLoad, FitPose, Known, Margin, Statement, front_line, load_at};
use super::{CAP, TONNE, axis_index, in_range};
use machine::{Machine, SupportState};

/// What is wrong with the input of a fit, by the statement's place.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum FitFault {
    /// Nothing is stated.
    Nothing,
    /// An attachment, section or part that the machine does not have.
    NoSuchPart(usize),
    /// A range that ends before it begins, or a number that is none.
    BadRange(usize),
    /// A mass that is not above zero, or heavier than any such machine.
    ImpossibleMass(usize),
    /// A centre outside of the machine: its own range, and where it can lie, m.
    ImpossibleCentre(usize, Between, Between),
    /// The boom does not get there.
    BoomRange(usize),
    /// The machine has no such support.
    NoSupport(usize),
    /// A tipping test with the load behind the front line.
    LoadHolds(usize),
    /// The axles coincide, or a pitch beyond 45°.
    BadPitch(usize),
}

/// Everything wrong with the statements.
pub(super) fn faults(machine: &Machine, sections: bool, statements: &[Statement]) -> Vec<FitFault> {
    if statements.is_empty() {
        return vec![FitFault::Nothing];
    }
    let known = parts(machine, sections);
    let mut out = Vec::new();
    for (i, s) in statements.iter().enumerate() {
        let mass = |b: Between, out: &mut Vec<FitFault>| {
            if !b.sound() {
                out.push(FitFault::BadRange(i));
            } else if b.high <= 0.0 || b.low < 0.0 || b.high > CAP * TONNE {
                out.push(FitFault::ImpossibleMass(i));
            }
        };
        let pose = |p: FitPose, out: &mut Vec<FitFault>| {
            if p.attachment >= machine.attachments.len() {
                out.push(FitFault::NoSuchPart(i));
            }
            if !in_range(machine, p.boom) {
                out.push(FitFault::BoomRange(i));
            }
            if !machine.has(p.support) {
                out.push(FitFault::NoSupport(i));
            }
        };
        let place = |l: &FitLoad, out: &mut Vec<FitFault>| {
            if !(l.ahead.is_finite() && l.up.is_finite()) {
                out.push(FitFault::BadRange(i));
            }
        };
        match &s.known {
            Known::Mass(part, _) | Known::Centre(part, ..) if !known.contains(part) => {
                out.push(FitFault::NoSuchPart(i));
            }
            Known::Mass(_, b) => mass(*b, &mut out),
            Known::Centre(part, axis, b) => {
                let can = usual(machine, *part)[axis_index(*axis)];
                let fixed = matches!(part, FitPart::Chassis | FitPart::RearAxle) || can.low == can.high;
                if !b.sound() || b.low.abs().max(b.high.abs()) > 50.0 {
                    out.push(FitFault::BadRange(i));
                } else if fixed && (b.high < can.low || b.low > can.high) {
                    out.push(FitFault::ImpossibleCentre(i, *b, can));
                }
            }
            Known::Total { attachment, mass: b } => {
                if *attachment >= machine.attachments.len() {
                    out.push(FitFault::NoSuchPart(i));
                }
                mass(*b, &mut out);
            }
            Known::Axles { pose: p, front, rear, load, pitch } => {
                pose(FitPose { support: SupportState::Tyres, ..*p }, &mut out);
                [front, rear].into_iter().flatten().for_each(|b| mass(*b, &mut out));
                if let Some(l) = load {
                    mass(l.mass, &mut out);
                    place(l, &mut out);
                }
                let level = machine.front.x - machine.rear.axle.x;
                if pitch.is_nan() || pitch.abs() > std::f64::consts::FRAC_PI_4 || level.is_nan() || level <= 0.0 {
                    out.push(FitFault::BadPitch(i));
                }
                if front.is_none() && rear.is_none() {
                    out.push(FitFault::BadRange(i));
                }
            }
            Known::TippingTest { pose: p, load } => {
                pose(*p, &mut out);
                mass(load.mass, &mut out);
                place(load, &mut out);
                let arm = load_at(machine, *p, load.ahead, load.up).x - front_line(machine, p.support);
                if arm <= 0.0 {
                    out.push(FitFault::LoadHolds(i));
                }
            }
            Known::Charted(points) => {
                for c in points {
                    pose(c.pose, &mut out);
                    mass(c.load.mass, &mut out);
                    place(&c.load, &mut out);
                    let sound = match c.margin {
                        Margin::None => true,
                        Margin::Factor(k) => (1.0..=10.0).contains(&k),
                        Margin::Slope(t) => (0.0..=1.0).contains(&t),
                    };
                    if !sound || c.governs.is_some_and(|step| !(step >= 0.0 && step.is_finite())) {
                        out.push(FitFault::BadRange(i));
                    }
                }
            }
        }
    }
    out
}
