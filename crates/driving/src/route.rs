//! A way that was found.

use crate::{Gear, Motion, PlanPose, Settings, Steering, Vehicle};

/// A way from a pose to a target.
#[derive(Debug, Clone, PartialEq)]
pub struct Route {
    /// Stretches in order; consecutive ones differ in gear, steering or curvature.
    pub legs: Vec<Leg>,
    /// Where it begins.
    pub from: PlanPose,
    /// Where it ends.
    pub to: PlanPose,
    /// What it counts as, m.
    pub cost: f64,
    /// Time, s; infinite where the map bars a pose of the whole legs that it did not bar when asked piece by piece.
    pub time: f64,
    /// Poses that the search looked at.
    pub looked_at: usize,
}

/// A stretch with the wheels held.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Leg {
    /// Pose where it begins.
    pub from: PlanPose,
    /// How it is driven.
    pub motion: Motion,
}

/// A pose on the way.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OnWay {
    /// Way driven up to here, m.
    pub along: f64,
    /// The pose.
    pub pose: PlanPose,
    /// Index of its leg.
    pub leg: usize,
    /// Way within the leg, signed as the leg's length, m.
    pub within: f64,
}

impl Route {
    /// Length of the pivot's way, m.
    pub fn length(&self) -> f64 {
        self.legs.iter().map(|l| l.motion.length.abs()).sum()
    }

    /// Length driven in reverse, m.
    pub fn reversed(&self) -> f64 {
        self.legs.iter().map(|l| (-l.motion.length).max(0.0)).sum()
    }

    /// How often the gear changes on the way.
    pub fn gear_changes(&self) -> usize {
        self.legs.windows(2).filter(|w| w[0].motion.gear() != w[1].motion.gear()).count()
    }

    /// How often the steering mode changes on the way.
    pub fn steering_changes(&self) -> usize {
        self.legs.windows(2).filter(|w| w[0].motion.steering != w[1].motion.steering).count()
    }

    /// Poses no further apart than `step` m, both ends of each leg among them.
    pub fn poses(&self, vehicle: &Vehicle, step: f64) -> Vec<OnWay> {
        let mut out = vec![OnWay { along: 0.0, pose: self.from, leg: 0, within: 0.0 }];
        let mut along = 0.0;
        for (index, leg) in self.legs.iter().enumerate() {
            let length = leg.motion.length.abs();
            let parts = (length / step).ceil().max(1.0);
            for k in 1..=parts as usize {
                let within = leg.motion.length * (k as f64 / parts);
                let pose = leg.motion.at(vehicle, &leg.from, within);
                out.push(OnWay { along: along + within.abs(), pose, leg: index, within });
            }
            along += length;
        }
        out
    }

    /// Time for a way whose stretches (length m, speed at most m/s, gear, steering) are given: no faster than
    /// allowed, gaining and losing speed no quicker than stated, standing at both ends and at each change.
    pub(crate) fn time_of(stretches: &[(f64, f64, Gear, Steering)], settings: &Settings) -> f64 {
        let n = stretches.len();
        let mut speed = vec![0.0_f64; n + 1];
        let changes = |i: usize| (stretches[i - 1].2, stretches[i - 1].3) != (stretches[i].2, stretches[i].3);
        for i in 1..n {
            speed[i] = if changes(i) { 0.0 } else { stretches[i - 1].1.min(stretches[i].1) };
        }
        let gained = |v: f64, length: f64| (v * v + 2.0 * settings.acceleration * length).sqrt();
        for i in 1..=n {
            speed[i] = speed[i].min(gained(speed[i - 1], stretches[i - 1].0));
        }
        for i in (0..n).rev() {
            speed[i] = speed[i].min(gained(speed[i + 1], stretches[i].0));
        }
        let driven: f64 = (0..n).map(|i| stretch_time(stretches[i], speed[i], speed[i + 1], settings)).sum();
        driven + settings.pause * (1..n).filter(|i| changes(*i)).count() as f64
    }
}

/// Time over a stretch from one speed to another, at most its own in between, s.
fn stretch_time((length, most, ..): (f64, f64, Gear, Steering), v0: f64, v1: f64, settings: &Settings) -> f64 {
    let a = settings.acceleration;
    // Gains up to the top speed, holds it, loses again.
    let top = (a * length + 0.5 * (v0 * v0 + v1 * v1)).sqrt().min(most.max(v0).max(v1));
    let turned = (2.0 * top * top - v0 * v0 - v1 * v1) / (2.0 * a);
    let held = (length - turned).max(0.0);
    (2.0 * top - v0 - v1) / a + if held > 0.0 { held / top } else { 0.0 }
}
