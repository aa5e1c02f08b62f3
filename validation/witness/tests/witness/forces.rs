//! Forces on wheels and pads, of a machine that stands at about half the tilt at which it tips.

use crate::setting::{Tally, cases, masses, ours};
use machine::SupportState;
use quantity::STANDARD_GRAVITY as G;
use stability::{RearAxleState, reactions};
use witness::draw::{Drawn, Kind};
use witness::{Bodies, HeldBy, gravity, rigid, soft};

/// Both wheels of an axle together, % of the weight: what the engine's contacts give and what a second
/// of settling leaves over.
const AXLE: f64 = 0.1;
/// One wheel, % of the weight. `reactions` lets every contact use its friction alike; the witness holds
/// the machine by one axle alone, and what holds it at one axle turns the frame a little about the pin.
const WHEEL: f64 = 0.6;
/// Equal springs of 30 MN/m for rigid contacts, % of the weight: the lean that they still allow.
const FOUR: f64 = 0.5;

/// Tilt to ask at, and the forces of the statics square to the ground with the weight, N.
fn asked(case: &Drawn) -> (f64, [f64; 4], f64) {
    let masses = masses(case);
    let tilt = 0.5 * ours(case, case.azimuth).unwrap().tilt.min(0.35);
    let pull = gravity(tilt, case.azimuth);
    let found = reactions(&case.machine, case.stance, &masses, pull);
    assert!(found.stands);
    let square = -pull.dot(Bodies::of(&case.question()).normal);
    (tilt, found.force.map(|f| f * square), masses.total() * G)
}

fn is_free(case: &Drawn) -> bool {
    case.stance.support.rear == RearAxleState::Free && case.stance.support.state != SupportState::Outriggers
}

#[test]
fn val_witness_forces_free() {
    for held in [HeldBy::Front, HeldBy::Rear] {
        let (mut axles, mut wheels, mut count) = (Tally::NONE, Tally::NONE, 0);
        for kind in [Kind::Free, Kind::Uneven, Kind::Pads, Kind::Levelled] {
            for case in cases(kind, 16).iter().filter(|c| is_free(c)) {
                let (tilt, force, weight) = asked(case);
                let seen = rigid::forces(&case.question(), held, tilt, case.azimuth).unwrap();
                let share = |i: usize| 100.0 * (force[i] - seen[i]) / weight;
                axles.take(share(0) + share(1));
                axles.take(share(2) + share(3));
                // Rear wheels at different heights jam against each other by friction sideways: how they
                // share their axle's force is then not a matter of statics.
                for i in 0..if kind == Kind::Uneven { 2 } else { 4 } {
                    wheels.take(share(i));
                }
                count += 1;
            }
        }
        axles.say(&format!("force on an axle, held by {held:?}, {count} machines"), "% of the weight");
        wheels.say(&format!("force on a wheel, held by {held:?}, {count} machines"), "% of the weight");
        assert!(axles.least > -AXLE && axles.most < AXLE, "{axles:?}");
        assert!(wheels.least > -WHEEL && wheels.most < WHEEL, "{wheels:?}");
    }
}

#[test]
fn val_witness_forces_locked() {
    let mut tally = Tally::NONE;
    for kind in [Kind::Locked, Kind::Twisted, Kind::Aside] {
        for case in cases(kind, 16).iter().filter(|c| !is_free(c)) {
            let (tilt, force, weight) = asked(case);
            let heights = Bodies::of(&case.question()).contacts.map(|c| c.z);
            let hard = soft::Give { front: 3e7, rear: 3e7, heights };
            let seen = soft::rest(&case.question(), hard, soft::Hold::ByWeight, tilt, case.azimuth).unwrap();
            for (ours, theirs) in force.into_iter().zip(seen.force) {
                tally.take(100.0 * (ours - theirs) / weight);
            }
        }
    }
    tally.say("force on a wheel, locked", "% of the weight");
    assert!(tally.least > -FOUR && tally.most < FOUR, "{tally:?}");
}
