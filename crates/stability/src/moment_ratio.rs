//! Restoring over overturning moment about a tipping line, part by part.
//!
//! Each part of the machine and the load pulls with `g·m·ĝ` at its centre; about the line through `P` along
//! `u` that is `g·m·ĝ·(u × (r − P))`. What is above zero holds, what is below overturns (mechanics; the
//! ratio is common practice). Their difference is [`crate::restoring_moment`] without wind. What a free rear axle
//! hands on through its pin is a part of its own. On a slope a part counts by where its weight meets the
//! ground's plane, so that the ratio goes to 1 at the onset.

use crate::tipping::through_the_pin;
use crate::wind::WindLoad;
use crate::{LoadOnBoom, Loading, Masses, Stance, TippingLine, restoring_moment, text};
use evidence::{Source, Step, Trace};
use geometry::DVec3;
use machine::{Attachment, BodyKind, BoomPosition, Machine, kinematics};
use quantity::{Dimension, Quantity, STANDARD_GRAVITY as G, Si};

/// Moments about a line, N·m, neither below zero.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Moments {
    /// Of all that holds.
    pub restoring: f64,
    /// Of all that overturns.
    pub overturning: f64,
}

impl Moments {
    /// Restoring over overturning: 1 at the onset; infinite where nothing overturns.
    pub fn ratio(&self) -> f64 {
        if self.overturning == 0.0 { f64::INFINITY } else { self.restoring / self.overturning }
    }
}

/// A machine with its boom in a position and a load, as [`Masses::standing`] sums it.
#[derive(Debug, Clone, Copy)]
pub struct Parts<'m> {
    /// Machine.
    pub machine: &'m Machine,
    /// What is on the boom.
    pub attachment: &'m Attachment,
    /// Boom.
    pub boom: BoomPosition,
    /// How the axles stand under the frame.
    pub stance: Stance,
    /// Load.
    pub load: LoadOnBoom,
}

/// The moments of all parts about a line under gravity alone, `gravity` its unit vector in the machine frame.
pub fn moments(parts: &Parts<'_>, gravity: DVec3, line: &TippingLine, trace: &mut impl Trace) -> Moments {
    let Parts { machine, attachment, boom, stance, load } = *parts;
    let mut sum = Moments { restoring: 0.0, overturning: 0.0 };
    let mut add = |arm: DVec3| {
        let moment = G * gravity.dot(arm);
        // What is no number spoils both.
        if moment < 0.0 { sum.overturning -= moment } else { sum.restoring += moment }
    };
    let bodies = machine
        .bodies
        .iter()
        .filter(|b| line.with_rear_axle || b.kind != BodyKind::RearAxle)
        .map(|b| (b.mass.si(), stance.moved(machine, b.kind, b.centre)));
    let on_boom = kinematics::boom_masses(&machine.boom, attachment, boom);
    for (mass, at) in bodies.chain(on_boom).chain([(load.mass, load.at)]) {
        add(line.along.cross(at - line.point) * mass);
    }
    if !line.with_rear_axle {
        add(through_the_pin(&Masses::standing(machine, attachment, boom, stance).with(load), line));
    }
    steps(&sum, gravity, line, trace);
    sum
}

/// The moments of machine and load as two parts, wind among what overturns; of the weight of each what presses
/// on the ground's plane and what pulls along it apart: each counts where it helps (mechanics).
///
/// `load` is the one in `loading`, `None` where it carries none.
pub fn machine_and_load(loading: &Loading, load: Option<LoadOnBoom>, line: &TippingLine) -> Moments {
    let alone = load.map(|l| Masses::default().with(l));
    let bare = load.map_or(loading.masses, |l| loading.masses.with(LoadOnBoom { mass: -l.mass, ..l }));
    let g = loading.gravity;
    let pulls = [DVec3::new(0.0, 0.0, g.z), DVec3::new(g.x, g.y, 0.0)];
    let mut sum = Moments { restoring: 0.0, overturning: loading.wind.overturning(line) };
    for masses in core::iter::once(bare).chain(alone) {
        for gravity in pulls {
            let moment = restoring_moment(&Loading { masses, gravity, wind: WindLoad::NONE }, line);
            if moment < 0.0 { sum.overturning -= moment } else { sum.restoring += moment }
        }
    }
    sum
}

fn steps(sum: &Moments, gravity: DVec3, line: &TippingLine, trace: &mut impl Trace) {
    let moment = |v: f64| Quantity::new(v, Dimension::Moment);
    trace.step(|| Step {
        title: text::STEP_HOLDS.message(),
        formula: "M_h = Σ max(g · m_i · ĝ·(u × (r_i − P)), 0)".into(),
        values: vec![
            ("P_x".into(), Quantity::new(line.point.x, Dimension::Length)),
            ("P_y".into(), Quantity::new(line.point.y, Dimension::Length)),
            ("P_z".into(), Quantity::new(line.point.z, Dimension::Length)),
            ("u_x".into(), Quantity::number(line.along.x)),
            ("u_y".into(), Quantity::number(line.along.y)),
            ("u_z".into(), Quantity::number(line.along.z)),
            ("ĝ_x".into(), Quantity::number(gravity.x)),
            ("ĝ_y".into(), Quantity::number(gravity.y)),
            ("ĝ_z".into(), Quantity::number(gravity.z)),
        ],
        result: ("M_h".into(), moment(sum.restoring)),
        source: Source::Mechanics,
    });
    trace.step(|| Step {
        title: text::STEP_OVERTURNS.message(),
        formula: "M_o = −Σ min(g · m_i · ĝ·(u × (r_i − P)), 0)".into(),
        values: Vec::new(),
        result: ("M_o".into(), moment(sum.overturning)),
        source: Source::Mechanics,
    });
    if sum.overturning != 0.0 {
        trace.step(|| Step {
            title: text::STEP_MOMENT_RATIO.message(),
            formula: "k_M = M_h / M_o".into(),
            values: vec![("M_h".into(), moment(sum.restoring)), ("M_o".into(), moment(sum.overturning))],
            result: ("k_M".into(), Quantity::number(sum.ratio())),
            source: Source::CommonPractice,
        });
    }
}
