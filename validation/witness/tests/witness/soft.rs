//! Contacts that give: where it comes to rest, when it goes over, and the closed form that is never later.

use crate::setting::{Tally, cases, masses};
use quantity::STANDARD_GRAVITY as G;
use stability::wind::WindLoad;
use stability::{LEVEL, Loading, OnSprings, Springs, on_springs, tilt_reserve_on_springs, tipping_lines};
use witness::draw::{Dice, Drawn, Kind};
use witness::gravity;
use witness::soft::{Give, Hold, onset, rest};

/// Force on a wheel at half the onset, % of the weight: holds in the ground that give by a millimetre.
const FORCE: f64 = 0.1;
/// Onset, degrees: half the witness' last interval is 0.011°; a lean that grows slowly at the very onset
/// takes the rest.
const ONSET: f64 = 0.1;
/// Share of the weight on the rear wheels below which a free rear axle leaves the ground at a jolt: there
/// the search and the witness may part.
const LAST_REAR_WHEEL: f64 = 0.015;

struct Soft {
    case: Drawn,
    springs: Springs,
    heights: [f64; 4],
}

impl Soft {
    fn seen(&self, hold: Hold) -> f64 {
        onset(&self.case.question(), self.give(), hold, self.case.azimuth).unwrap()
    }

    fn give(&self) -> Give {
        Give { front: self.springs.front, rear: self.springs.rear, heights: self.heights }
    }

    fn ours(&self, tilt: f64) -> OnSprings {
        let pull = gravity(tilt, self.case.azimuth);
        on_springs(&self.case.machine, self.case.stance, &masses(&self.case), pull, self.springs, self.heights)
    }

    /// Tilt from which the search finds that it tips, rad; `None`: level already. Where it cannot tell,
    /// which nobody takes for standing, it is asked on.
    fn ours_onset(&self) -> Option<f64> {
        let stands = |tilt: f64| self.ours(tilt) != OnSprings::Tips;
        let (mut low, mut high) = (0.0, 0.8);
        if !stands(low) {
            return None;
        }
        while high - low > 1e-5 {
            let middle = f64::midpoint(low, high);
            if stands(middle) { low = middle } else { high = middle }
        }
        Some(low)
    }

    /// Share of the weight on the rear wheels.
    fn rear_share(&self, tilt: f64) -> f64 {
        match self.ours(tilt) {
            OnSprings::Stands { force, .. } => (force[2] + force[3]) / force.iter().sum::<f64>(),
            OnSprings::Tips | OnSprings::CannotTell => 0.0,
        }
    }

    /// Least tilt of all lines by the closed form, from level, rad.
    fn reserve(&self) -> f64 {
        let c = &self.case;
        let loading = Loading { masses: masses(c), gravity: LEVEL, wind: WindLoad::NONE };
        tipping_lines(&c.machine, c.stance)
            .map(|line| tilt_reserve_on_springs(&c.machine, c.stance, &loading, &line, self.springs))
            .into_iter()
            .fold(f64::INFINITY, f64::min)
    }
}

/// Cases on springs that a quarter to a half of the weight would press by 3 to 15 cm, with ground that is
/// so uneven.
fn drawn(kind: Kind, count: usize, uneven: f64) -> Vec<Soft> {
    let mut dice = Dice::new(77 + kind as u64);
    let give = |case: Drawn| {
        let weight = masses(&case).total() * G;
        let mut stiff = || weight / dice.between(0.1, 0.3);
        let springs = Springs { front: stiff(), rear: stiff() };
        let heights = [0; 4].map(|_| dice.between(-uneven, uneven));
        Soft { case, springs, heights }
    };
    cases(kind, count).into_iter().map(give).filter(|s| s.ours_onset().is_some()).collect()
}

fn compare(kind: Kind, count: usize, uneven: f64) {
    let (mut forces, mut tilts, mut light) = (Tally::NONE, Tally::NONE, Tally::NONE);
    let (mut other, mut reserves) = (Tally::NONE, Tally::NONE);
    for soft in drawn(kind, count, uneven) {
        let about = format!("{kind:?} {} descent {:.1}°", soft.case.machine.id, soft.case.azimuth.to_degrees());
        let found = soft.ours_onset().unwrap();
        let OnSprings::Stands { force, .. } = soft.ours(0.5 * found) else { panic!("{about}: does not stand") };
        let at_rest = rest(&soft.case.question(), soft.give(), Hold::ByWeight, 0.5 * found, soft.case.azimuth).unwrap();
        let weight = masses(&soft.case).total() * G;
        for (ours, theirs) in force.into_iter().zip(at_rest.force) {
            forces.take(100.0 * (ours - theirs) / weight);
        }
        let seen = soft.seen(Hold::ByWeight);
        let difference = (found - seen).to_degrees();
        if difference.abs() < ONSET {
            tilts.take(difference);
        } else {
            let share = soft.rear_share(found.min(seen));
            assert!(share < LAST_REAR_WHEEL, "{about}: {found} {difference:+}°, {share} on the rear wheels");
            light.take(difference);
        }
        if uneven == 0.0 {
            let lower = soft.seen(if soft.case.azimuth.cos() >= 0.0 { Hold::Front } else { Hold::Rear });
            other.take((found - lower).to_degrees());
            let late = (soft.reserve() - lower.min(seen)).to_degrees();
            assert!(late < ONSET, "{about}: the closed form is later by {late}°");
            reserves.take(late);
        }
    }
    let name = format!("springs, {kind:?}, ground ± {uneven} m");
    forces.say(&format!("{name}, forces"), "% of the weight");
    tilts.say(&format!("{name}, onset"), "degrees");
    for (tally, of) in [
        (light, "onset with light rear wheels"),
        (other, "onset, held by the lower axle alone"),
        (reserves, "closed form from level"),
    ] {
        if tally.count > 0 {
            tally.say(&format!("{name}, {of}"), "degrees");
        }
    }
    assert!(forces.least > -FORCE && forces.most < FORCE, "{forces:?}");
    assert!(2 * light.count <= tilts.count, "{light:?} {tilts:?}");
}

#[test]
fn val_witness_springs_free() {
    compare(Kind::Free, 8, 0.0);
}

#[test]
fn val_witness_springs_free_on_uneven_ground() {
    compare(Kind::Free, 8, 0.04);
}

#[test]
fn val_witness_springs_locked() {
    compare(Kind::Locked, 8, 0.0);
}

#[test]
fn val_witness_springs_locked_on_uneven_ground() {
    compare(Kind::Locked, 8, 0.04);
}

#[test]
fn val_witness_springs_load_aside() {
    compare(Kind::Aside, 8, 0.03);
}

#[test]
fn val_witness_springs_on_pads() {
    compare(Kind::Pads, 8, 0.02);
}
