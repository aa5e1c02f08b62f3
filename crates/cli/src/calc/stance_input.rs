//! The ground that a machine stands on, and how its axles are rolled under it, as an input says.

use super::text as words;
use crate::text;
use geometry::DVec3;
use jobfile::{Bound, Reader};
use machine::{Machine, SupportState};
use quantity::{Dimension, Si};
use stability::{RearAxleState, Stance, Support, gravity_for_slopes};

/// What a calculation asks of the ground.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub(super) enum Ground {
    /// Slopes along and across.
    #[default]
    Slopes,
    /// Nothing: it is level.
    Level,
    /// Level, or the frame made upright by levelling.
    Levelled,
    /// Slopes, heights under the contacts, and how the axles are rolled.
    Uneven,
}

/// Keys as read; none where missing or wrong.
pub(super) struct StanceKeys {
    slopes: [Option<f64>; 2],
    levelled: Option<f64>,
    front_roll: Option<f64>,
    rear_roll: Option<f64>,
    heights: Option<[f64; 4]>,
}

/// Where a machine stands.
pub(super) struct Placed {
    pub(super) stance: Stance,
    /// Against the ground's common plane.
    pub(super) gravity: DVec3,
    pub(super) heights: [f64; 4],
}

/// No step or hole under one wheel is higher, m.
const HIGHEST: f64 = 2.0;

impl StanceKeys {
    pub(super) fn read(root: &Reader<'_>, ground: Ground) -> Self {
        let sloping = matches!(ground, Ground::Slopes | Ground::Uneven);
        let slopes = ["slope_along", "slope_across"].map(|key| {
            if sloping { root.decision(key, Dimension::Slope, Bound::Within(-1.0, 1.0)) } else { Some(0.0) }
        });
        let angle = |key: &str, asked: bool| {
            if asked { root.decision_or_none(key, Dimension::Angle, Bound::Within(-1.0, 1.0)) } else { None }
        };
        let uneven = ground == Ground::Uneven;
        let heights = || {
            let Some(node) = root.optional("ground_heights") else { return Some([0.0; 4]) };
            root.as_numbers::<4>(node, "ground_heights", Dimension::Length, Bound::Within(-HIGHEST, HIGHEST), None)
        };
        Self {
            slopes,
            levelled: angle("levelled_on", ground == Ground::Levelled),
            front_roll: angle("front_roll", uneven),
            rear_roll: angle("rear_roll", uneven),
            heights: if uneven { heights() } else { Some([0.0; 4]) },
        }
    }

    /// The stance on a machine; what it cannot do is a fault. `None` where a key is missing or wrong.
    pub(super) fn place(
        &self,
        root: &Reader<'_>,
        machine: &Machine,
        state: SupportState,
        rear: RearAxleState,
    ) -> Option<Placed> {
        can_level(root, machine, state, "levelled_on", self.levelled);
        can_level(root, machine, state, "front_roll", self.front_roll);
        turns(root, machine, "levelled_on", self.levelled);
        turns(root, machine, "rear_roll", self.rear_roll);
        if self.rear_roll.is_some() {
            if rear == RearAxleState::Free {
                root.fault("rear_roll", words::REAR_ROLL_FREE.message(), None);
            }
            if state == SupportState::Outriggers {
                root.fault("rear_roll", words::ROLL_ON_PADS.message(), None);
            }
        }
        let support = Support { state, rear };
        let stance = self.levelled.map_or_else(
            || Stance { support, front_roll: self.front_roll.unwrap_or(0.0), rear_roll: self.rear_roll.unwrap_or(0.0) },
            |by| Stance::levelled(support, by),
        );
        let [along, across] = self.slopes;
        Some(Placed { stance, gravity: gravity_for_slopes(along?, across?), heights: self.heights? })
    }
}

/// Levelling needs a machine that can, on its tyres, and so far.
fn can_level(root: &Reader<'_>, machine: &Machine, state: SupportState, key: &str, by: Option<f64>) {
    let Some(by) = by else { return };
    if state != SupportState::Tyres {
        root.fault(key, words::ROLL_ON_PADS.message(), None);
    }
    match machine.levelling {
        None => root.fault(key, text::NO_LEVELLING, None),
        Some(l) if by.abs() > l.range.si() + 1e-9 => root.fault(key, text::LEVELLED_OVER.with("range", l.range), None),
        Some(_) => {}
    }
}

/// The rear axle turns so far under the frame.
fn turns(root: &Reader<'_>, machine: &Machine, key: &str, by: Option<f64>) {
    let most = machine.rear.oscillation;
    if by.is_some_and(|by| by.abs() > most.si() + 1e-9) {
        root.fault(key, words::REAR_ROLL_OVER.with("range", most), None);
    }
}
