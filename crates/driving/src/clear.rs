//! Whether a motion is free, with no gap between samples, and what it costs.

use crate::{DriveMap, Gear, Going, Motion, PlanPose, Spread, Underway, Vehicle};

/// Pieces no longer than this are not split further, m: what bars them within their spread bars them.
pub(crate) const FINEST: f64 = 0.05;

/// How often a piece may be halved.
const HALVINGS: usize = 10;

/// A motion with the spreads of its halvings.
#[derive(Debug, Clone)]
pub(crate) struct Spreaded {
    pub(crate) motion: Motion,
    /// Pieces at which the check begins.
    pieces: usize,
    /// Spread of a piece halved as often as the index says.
    spreads: [Spread; HALVINGS],
    /// The finest halving.
    finest: usize,
}

impl Spreaded {
    /// Begins with pieces no longer than `piece` m.
    pub(crate) fn new<M: DriveMap>(map: &M, vehicle: &Vehicle, motion: Motion, piece: f64) -> Self {
        let length = motion.length.abs();
        let pieces = (length / piece).ceil().max(1.0) as usize;
        let mut spreads = [Spread::default(); HALVINGS];
        let mut size = length / pieces as f64;
        let mut finest = 0;
        for (k, spread) in spreads.iter_mut().enumerate() {
            *spread = motion.spread(vehicle, map.outline(), 0.5 * size);
            finest = k;
            if size <= FINEST {
                break;
            }
            size *= 0.5;
        }
        Self { motion, pieces, spreads, finest }
    }

    /// What bars it first, driven from a pose; `None`: at no pose between its ends does anything.
    pub(crate) fn barred<M: DriveMap>(&self, map: &M, vehicle: &Vehicle, from: &PlanPose) -> Option<M::What> {
        let size = self.motion.length / self.pieces as f64;
        (0..self.pieces).find_map(|k| {
            let start = size * k as f64;
            self.piece(map, vehicle, from, (start, start + size), 0)
        })
    }

    fn piece<M: DriveMap>(
        &self,
        map: &M,
        vehicle: &Vehicle,
        from: &PlanPose,
        (a, b): (f64, f64),
        halved: usize,
    ) -> Option<M::What> {
        let middle = f64::midpoint(a, b);
        let pose = self.motion.at(vehicle, from, middle);
        let what = map.barred(&pose, self.spreads[halved])?;
        if halved >= self.finest {
            return Some(what);
        }
        if let Some(what) = map.barred(&pose, Spread::default()) {
            return Some(what);
        }
        self.piece(map, vehicle, from, (a, middle), halved + 1)
            .or_else(|| self.piece(map, vehicle, from, (middle, b), halved + 1))
    }
}

/// A motion's pose at `length`, underway.
pub(crate) fn underway(vehicle: &Vehicle, from: &PlanPose, motion: &Motion, length: f64) -> Underway {
    let pose = motion.at(vehicle, from, length);
    let gear = motion.gear();
    let back = if gear == Gear::Reverse { core::f64::consts::PI } else { 0.0 };
    let course = pose.heading + motion.slant + back;
    Underway { pose, gear, steering: motion.steering, curvature: motion.curvature, course }
}

/// Calls `take` with the going at stations along a motion, and the length each stands for, m. Both ends are asked too, with
/// this motion's curvature: there the next motion begins.
///
/// # Errors
/// What forbids driving there.
pub(crate) fn along<M: DriveMap>(
    map: &M,
    vehicle: &Vehicle,
    from: &PlanPose,
    motion: &Motion,
    mut take: impl FnMut(&Underway, Going, f64),
) -> Result<(), M::What> {
    let stations = (motion.length.abs() / map.stations()).ceil().max(1.0) as usize;
    let part = motion.length / stations as f64;
    for k in 0..stations {
        let underway = underway(vehicle, from, motion, part * (k as f64 + 0.5));
        take(&underway, map.going(&underway)?, part.abs());
    }
    for end in [0.0, motion.length] {
        map.going(&underway(vehicle, from, motion, end))?;
    }
    Ok(())
}

/// Metres that a motion counts as, without its gear and changes.
///
/// # Errors
/// What forbids it.
pub(crate) fn cost<M: DriveMap>(map: &M, vehicle: &Vehicle, from: &PlanPose, motion: &Motion) -> Result<f64, M::What> {
    let mut cost = 0.0;
    along(map, vehicle, from, motion, |_, going, part| cost += part * going.cost)?;
    Ok(cost)
}
