//! What the machine stands on, and the lines it tips over.

use crate::Stance;
use crate::stance::{front_pin, rolled};
use geometry::{DVec2, DVec3};
use machine::{Machine, SupportState};
use serde::{Deserialize, Serialize};

/// Whether the rear axle may oscillate.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum RearAxleState {
    /// It may: the frame rests on the rear pin.
    Free,
    /// It may not: four contacts.
    Locked,
}

/// A support state in full.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Support {
    /// Tyres, stabilizers or outriggers.
    pub state: SupportState,
    /// Rear axle free or locked.
    pub rear: RearAxleState,
}

/// Which way it goes over.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum TipsOver {
    /// Forward.
    Front,
    /// Backward.
    Rear,
    /// To the left.
    Left,
    /// To the right.
    Right,
}

/// A tipping line: through two supports, through the middle of the patches.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TippingLine {
    /// Which way.
    pub over: TipsOver,
    /// A point on it, m.
    pub point: DVec3,
    /// Unit vector along it, so that a restoring moment about it is positive.
    pub along: DVec3,
    /// Whether the rear axle's weight counts.
    pub with_rear_axle: bool,
    /// The rear axle's pin, m.
    pub pin: DVec3,
    /// Lever about this line of what holds the machine along its length, m: 0 where the front wheels
    /// hold it, or where it makes no difference.
    pub held: f64,
}

/// Points that carry: front left, front right, rear left, rear right, and the rear pin, m.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Points {
    pub(crate) front: [DVec3; 2],
    pub(crate) rear: [DVec3; 2],
    pub(crate) pin: DVec3,
}

pub(crate) fn points(machine: &Machine, stance: Stance) -> Points {
    let state = stance.support.state;
    let pair = |at: DVec2| [DVec3::new(at.x, at.y, 0.0), DVec3::new(at.x, -at.y, 0.0)];
    let [mut front, mut rear] = machine.contacts(state).map(pair);
    // Pads are rigid to the frame; tyres roll with their axle.
    if state == SupportState::Tyres {
        front = front.map(|p| rolled(p, front_pin(machine), stance.front_roll));
    }
    if state != SupportState::Outriggers {
        rear = rear.map(|p| rolled(p, machine.rear.pin_height, stance.rear_roll));
    }
    Points { front, rear, pin: DVec3::new(machine.rear.axle.x, 0.0, machine.rear.pin_height) }
}

/// The tipping lines of a support state, in the order front, rear, left, right, and left and right once
/// more for a machine that its rear wheels hold along its length.
///
/// With the rear axle free the side lines run from a front support to the pin *at the pin's
/// height*, and the rear axle's own mass does not help; locked, they run from front to rear contact,
/// as they do from pad to pad on outriggers.
///
/// Where the rear wheels hold, their force along the machine acts at the ground below the pin, and the
/// pin, which turns about the machine's length alone, hands its moment to the frame. Aslant down to the
/// rear that tips the frame sooner (moment balance). Which wheels hold is not known: a front wheel that
/// has just come off the ground holds nothing, and through a differential neither does the other. So
/// both are asked, and the worse counts. Front and rear lines, and all lines of a locked axle, lie on
/// the ground where these forces act: there the last two are the third and fourth again.
pub fn tipping_lines(machine: &Machine, stance: impl Into<Stance>) -> [TippingLine; 6] {
    let stance = stance.into();
    let support = stance.support;
    let p = points(machine, stance);
    // On outriggers the frame rests on four pads and the axles hang from it.
    let free = support.rear == RearAxleState::Free && support.state != SupportState::Outriggers;
    let line = |over, from: DVec3, to: DVec3, with_rear_axle| TippingLine {
        over,
        point: from,
        along: (to - from).normalize(),
        with_rear_axle,
        pin: p.pin,
        held: 0.0,
    };
    let (rear_left, rear_right) = if free { (p.pin, p.pin) } else { (p.rear[0], p.rear[1]) };
    // Directions chosen so that weight inside the polygon gives a positive moment: the inside
    // lies to the right of the direction, seen from above.
    let left = line(TipsOver::Left, rear_left, p.front[0], !free);
    let right = line(TipsOver::Right, p.front[1], rear_right, !free);
    let below = (p.rear[0] + p.rear[1]) * 0.5 - p.pin;
    let by_the_rear = |l: TippingLine| TippingLine { held: if free { -l.along.cross(below).x } else { 0.0 }, ..l };
    [
        line(TipsOver::Front, p.front[0], p.front[1], true),
        line(TipsOver::Rear, p.rear[1], p.rear[0], true),
        left,
        right,
        by_the_rear(left),
        by_the_rear(right),
    ]
}
