//! The onset of tipping on rigid contacts.

use crate::setting::{Tally, cases, masses, ours};
use stability::{RearAxleState, TipsOver, reactions};
use witness::draw::{Drawn, Kind};
use witness::{HeldBy, gravity, rigid};

/// Largest difference either way, degrees. The witness' own error: half its last interval, 0.011°; its
/// contacts give by up to 0.2 mm, 0.01°; a jolt or a slow fall, seen as up to 0.05° where the closed form
/// is beyond doubt (four contacts, one body). And the closed form's: a free axle's pull along the machine
/// acts beside its pin, 0.08°.
const ONSET: f64 = 0.15;
/// Share of the weight on the rear wheels at which a free rear axle may leave the ground first, with the
/// machine going over its front wheels.
const LAST_REAR_WHEEL: f64 = 0.005;

/// Which wheels hold it so that it tips soonest: those of the lower axle; for the front and rear lines,
/// which no friction on the ground changes, all of them.
fn soonest(case: &Drawn, over: TipsOver) -> HeldBy {
    match over {
        TipsOver::Front | TipsOver::Rear => HeldBy::EveryWheel,
        TipsOver::Left | TipsOver::Right if case.azimuth.cos() >= 0.0 => HeldBy::Front,
        TipsOver::Left | TipsOver::Right => HeldBy::Rear,
    }
}

/// Share of the weight on the rear wheels at a tilt.
fn rear_share(case: &Drawn, tilt: f64) -> f64 {
    let force = reactions(&case.machine, case.stance, &masses(case), gravity(tilt, case.azimuth)).force;
    (force[2] + force[3]) / force.iter().sum::<f64>()
}

fn compare(kind: Kind, count: usize) {
    let (mut tally, mut last) = (Tally::NONE, Tally::NONE);
    for case in cases(kind, count) {
        let found = ours(&case, case.azimuth).unwrap();
        let seen = rigid::onset(&case.question(), soonest(&case, found.over), case.azimuth).unwrap();
        let difference = (found.tilt - seen).to_degrees();
        let about = || {
            let (tilt, id, azimuth) = (found.tilt.to_degrees(), &case.machine.id, case.azimuth.to_degrees());
            format!(
                "{kind:?} {id} {:?}: {tilt:.3}° {:?}, witness {difference:+.3}°, descent {azimuth:.1}°",
                case.stance, found.over
            )
        };
        assert!(difference > -ONSET, "too cautious: {}", about());
        let free = case.stance.support.rear == RearAxleState::Free;
        if difference > ONSET && free && found.over == TipsOver::Front {
            // Hardly anything is left on the rear wheels: the axle rolls about one of them, and the rest
            // of it no longer holds the frame back. Not in the closed form; a share, not a tilt, bounds it.
            let share = rear_share(&case, seen);
            assert!(share < LAST_REAR_WHEEL, "{} at {share} on the rear: {}", found.tilt, about());
            last.take(100.0 * share);
            println!("{}", about());
            continue;
        }
        assert!(difference < ONSET, "less cautious: {}", about());
        tally.take(difference);
    }
    tally.say(&format!("onset, {kind:?}"), "degrees");
    if last.count > 0 {
        last.say(&format!("onset, {kind:?}, last rear wheel"), "% of the weight");
    }
}

#[test]
fn val_witness_onset_free() {
    compare(Kind::Free, 40);
}

#[test]
fn val_witness_onset_locked() {
    compare(Kind::Locked, 30);
}

#[test]
fn val_witness_onset_locked_twisted() {
    compare(Kind::Twisted, 30);
}

#[test]
fn val_witness_onset_uneven_ground() {
    compare(Kind::Uneven, 24);
}

#[test]
fn val_witness_onset_levelled() {
    compare(Kind::Levelled, 30);
}

#[test]
fn val_witness_onset_on_pads() {
    compare(Kind::Pads, 24);
}

#[test]
fn val_witness_onset_load_aside() {
    compare(Kind::Aside, 24);
}

/// Every wheel braked by itself: turning the frame over its oblique line scrubs a rear wheel, and that
/// only ever holds it longer. The statics never counts on it.
#[test]
fn val_witness_scrubbing_never_tips_sooner() {
    let mut tally = Tally::NONE;
    let all = cases(Kind::Free, 40);
    for case in all
        .iter()
        .filter(|c| matches!(ours(c, c.azimuth).map(|o| o.over), Some(TipsOver::Left | TipsOver::Right)))
        .take(8)
    {
        let found = ours(case, case.azimuth).unwrap();
        let seen = rigid::onset(&case.question(), HeldBy::EveryWheel, case.azimuth);
        let difference = (found.tilt - seen.unwrap_or(0.8)).to_degrees();
        assert!(difference < ONSET, "{} {difference}", case.machine.id);
        tally.take(difference);
    }
    tally.say("onset, every wheel braked", "degrees");
}
