//! What happens all at once: a wheel that drops, lowering that is stopped, a load that falls off.
//!
//! Two criteria, and the one that leaves less counts:
//!
//! - **twice the static change**: what is put on suddenly swings to twice what it does slowly (linear
//!   spring without damping; any text on strength of materials, from memory);
//! - **energy**: all that is set free, without loss, against what it takes to tip
//!   ([`crate::energy_to_tip`]; mechanics).
//!
//! Rigid contacts, but for [`worst_wheel_drop_on_springs`]. Twice the static change holds for what stays on its tyres; where a wheel is in the air
//! the energy counts.

use crate::lean::{least_held, turn};
use crate::support::{Points, points};
use crate::tip_energy::curve;
use crate::tipping::arm;
use crate::{
    LineOnSprings, LoadOnBoom, Loading, Masses, RearAxleState, Springs, Stance, TippingLine, TipsOver, energy_to_tip,
    tilt_reserve, tipping_lines,
};
use evidence::Silent;
use geometry::DVec3;
use machine::{Machine, SupportState};
use quantity::STANDARD_GRAVITY as G;

/// What a reserve comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, serde::Serialize, serde::Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Criterion {
    /// Twice the static change.
    TwiceStatic,
    /// Energy against the barrier.
    Energy,
}

/// What a sudden event leaves over one tipping line.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sudden {
    /// Which way.
    pub over: TipsOver,
    /// Share left of what was there before: 1 nothing lost, 0 at the onset, below it goes over. −1 where it
    /// tips before the event. Not a number: nothing can be told.
    pub reserve: f64,
    /// Which criterion leaves that.
    pub criterion: Criterion,
    /// Tilt left at twice the static change, rad.
    pub tilt: f64,
    /// Energy left below the barrier, J.
    pub energy: f64,
}

fn sudden(before: &Loading, line: &TippingLine, tilt: f64, energy: f64) -> Sudden {
    of_what_was(line.over, tilt_reserve(before, line, &mut Silent), energy_to_tip(before, line), tilt, energy)
}

/// What is left of a tilt (rad) and a barrier (J) before.
fn of_what_was(over: TipsOver, tilt_before: f64, barrier: f64, tilt: f64, energy: f64) -> Sudden {
    let share = |left: f64, of: f64| if of <= 0.0 { -1.0 } else { left / of };
    let (by_tilt, by_energy) = (share(tilt, tilt_before), share(energy, barrier));
    // What is no number is never the better one.
    let tilt_governs = by_tilt.is_nan() || by_tilt <= by_energy;
    let (reserve, criterion) =
        if tilt_governs { (by_tilt, Criterion::TwiceStatic) } else { (by_energy, Criterion::Energy) };
    Sudden { over, reserve, criterion, tilt, energy }
}

/// The lesser; what is no number is the least.
fn least(a: f64, b: f64) -> f64 {
    if a.is_nan() || a <= b { a } else { b }
}

/// Lowering with speed `speed` (m/s, of the load) that is stopped in `time` (s; 0: at once).
///
/// `moving` is what is lowered: load, boom, carriage and attachment, kg and kg·m; it is counted
/// in `loading` already. While it is stopped it presses with `1 + 2 v/(g t)` times its weight, at most
/// twice (a load put on suddenly): what is shorter is a blow, and its energy `½ m v²` counts, all of
/// `moving` at the load's speed. Not a number for a speed or time below zero.
pub fn stop_of_lowering(loading: &Loading, moving: (f64, DVec3), speed: f64, time: f64, line: &TippingLine) -> Sudden {
    let valid = speed >= 0.0 && time >= 0.0 && speed.is_finite();
    let more = if !valid {
        f64::NAN
    } else if speed == 0.0 {
        0.0
    } else {
        let short = 2.0 * speed / (G * time);
        if short < 1.0 { short } else { 1.0 }
    };
    let pressed = |more: f64| {
        let masses = loading.masses.pressing(moving.0, moving.1, more);
        tilt_reserve(&Loading { masses, ..*loading }, line, &mut Silent)
    };
    // It springs back by as much: over the rear that is the worse.
    let tilt = least(pressed(more), pressed(-more));
    let set_free = if valid { 0.5 * moving.0 * speed * speed } else { f64::NAN };
    sudden(loading, line, tilt, energy_to_tip(loading, line) - set_free)
}

/// A load that comes off suddenly. `loading` has it still; `flex` (m) is how far the machine gives under
/// it (boom and tyres, at the load), which springs back.
///
/// The weight is not only taken off but swings to once more the other way; the energy set free is
/// `½ W · flex`. Not a number for a mass or flex below zero.
pub fn load_dropped(loading: &Loading, load: LoadOnBoom, flex: f64, line: &TippingLine) -> Sudden {
    let valid = load.mass >= 0.0 && flex >= 0.0 && flex.is_finite();
    let mass = if valid { load.mass } else { f64::NAN };
    let off = |times: f64| Loading { masses: loading.masses.pressing(mass, load.at * mass, -times), ..*loading };
    let without = off(1.0);
    // The moment at the swing, with the arm of what is there: a weight taken off twice is not one that
    // lowers the centre of gravity twice.
    let swung = G * off(2.0).gravity.dot(arm(&off(2.0).masses, line).1) - without.wind.overturning(line);
    let size = G * arm(&without.masses, line).1.length();
    let tilt = least(libm::asin((swung / size).clamp(-1.0, 1.0)), tilt_reserve(&without, line, &mut Silent));
    let set_free = 0.5 * mass * G * flex;
    // Against what is there without the load: the load is never counted on to steady.
    sudden(&without, line, tilt, energy_to_tip(&without, line) - set_free)
}

/// A proof holds although the numbers are rounded.
const ROUND: f64 = 1.0 + 1e-9;

/// True where it is proven that a stop of lowering which presses with `1 + more` times the weight leaves a tilt
/// ([`stop_of_lowering`]), and that a load gone at once leaves a reserve ([`load_dropped`]), in each of these directions of
/// gravity with no more of the wind's moment than `overturning` (N·m). False says nothing.
///
/// `loaded` has the load; `moving` is what is lowered. The barrier is at least `M² / 2G|a|`: the moment that holds falls by
/// no more than `G|a|` for each radian.
pub fn surely_borne(
    loaded: &Masses,
    gravities: &[DVec3],
    overturning: f64,
    (load, flex): (LoadOnBoom, f64),
    (moving, more): ((f64, DVec3), f64),
    line: &TippingLine,
) -> bool {
    let wind = overturning / G * ROUND;
    let left = |masses: &Masses| left(masses, gravities, wind, line);
    let stopped = |more: f64| left(&loaded.pressing(moving.0, moving.1, more)).0 > 0.0;
    let off = |times: f64| left(&loaded.pressing(load.mass, load.at * load.mass, -times));
    let (held, size) = off(1.0);
    // Comparisons with what is no number are false.
    load.mass >= 0.0
        && flex >= 0.0
        && more >= 0.0
        && stopped(more)
        && stopped(-more)
        && off(2.0).0 > 0.0
        && held > 0.0
        && held * held > size * load.mass * flex * ROUND
}

/// The least moment that holds, without the wind's, and the arm's length.
fn left(masses: &Masses, gravities: &[DVec3], wind: f64, line: &TippingLine) -> (f64, f64) {
    let a = arm(masses, line).1;
    (least_held(gravities, a) - wind, a.length())
}

/// True where [`surely_borne`] holds for every load from none to that one at its place, with no more than `flex` under each.
/// `loaded` and the second of `moving` are with all of it, `bare` and the first without. False says nothing.
///
/// The moment that holds is linear in the load's mass, and the least of several is concave: what is left at both ends is left
/// between. Without the load at once the machine is the same whatever it weighed, and what it sets free grows with it.
pub fn surely_borne_by_all(
    [bare, loaded]: [&Masses; 2],
    gravities: &[DVec3],
    overturning: f64,
    load: (LoadOnBoom, f64),
    (moving, more): ([(f64, DVec3); 2], f64),
    line: &TippingLine,
) -> bool {
    let wind = overturning / G * ROUND;
    let stopped = |more: f64| left(&bare.pressing(moving[0].0, moving[0].1, more), gravities, wind, line).0 > 0.0;
    surely_borne(loaded, gravities, overturning, load, (moving[1], more), line) && stopped(more) && stopped(-more)
}

/// Wheels that drop suddenly by `drop` (m, ≥ 0: front left, front right, rear left, rear right): a rut,
/// an edge, a flat tyre. Over each tipping line, in their order.
///
/// With the rear axle free, the frame follows its two front contacts and the pin, which goes down by
/// half of what its wheels do. Locked, it comes to lie on three of the four lowered contacts; the worst
/// three count. The static turn counts twice; the energy is the whole height lost down to the lowered
/// line. Not a number where a drop is below zero or none.
pub fn wheel_drop(machine: &Machine, stance: impl Into<Stance>, loading: &Loading, drop: [f64; 4]) -> [Sudden; 6] {
    dropped(machine, stance.into(), loading, drop, None)
}

/// On springs the tilt is that on springs before and after, and the barrier is lower by what they take of it
/// ([`LineOnSprings::energy_to_tip`]); never more is left than on rigid contacts.
fn dropped(
    machine: &Machine,
    stance: Stance,
    loading: &Loading,
    drop: [f64; 4],
    springs: Option<Springs>,
) -> [Sudden; 6] {
    let p = points(machine, stance);
    let free = stance.support.rear == RearAxleState::Free && stance.support.state != SupportState::Outriggers;
    let valid = drop.iter().all(|d| *d >= 0.0 && d.is_finite());
    let drop = if valid { drop } else { [f64::NAN; 4] };
    let turns = turns(&p, drop, free);
    tipping_lines(machine, stance).map(|line| {
        let mut worst: Option<Sudden> = None;
        for turned in turns.iter().flatten() {
            let tilted = Loading { gravity: turned_back(loading.gravity, *turned * 2.0), ..*loading };
            let tilt = tilt_reserve(&tilted, &line, &mut Silent);
            let energy = energy_left(&p, loading, &line, drop, free, turned.length());
            let mut s = sudden(loading, &line, tilt, energy);
            if let Some(springs) = springs {
                let soft = LineOnSprings::of(machine, stance, &line, springs);
                let barrier = soft.energy_to_tip(loading);
                let energy = energy - (energy_to_tip(loading, &line) - barrier);
                let on = of_what_was(line.over, soft.tilt(loading), barrier, soft.tilt(&tilted), energy);
                if on.reserve.is_nan() || on.reserve <= s.reserve {
                    s = on;
                }
            }
            if worst.is_none_or(|w| s.reserve.is_nan() || s.reserve < w.reserve) {
                worst = Some(s);
            }
        }
        worst.unwrap_or_else(|| sudden(loading, &line, f64::NAN, f64::NAN))
    })
}

/// The worst over any one wheel, and any two of a side or an axle, that drop by `height` (m).
pub fn worst_wheel_drop(machine: &Machine, stance: impl Into<Stance>, loading: &Loading, height: f64) -> [Sudden; 6] {
    worst_dropped(machine, stance.into(), loading, height, None)
}

/// The same on contacts that give; never more is left.
pub fn worst_wheel_drop_on_springs(
    machine: &Machine,
    stance: impl Into<Stance>,
    loading: &Loading,
    height: f64,
    springs: Springs,
) -> [Sudden; 6] {
    worst_dropped(machine, stance.into(), loading, height, Some(springs))
}

fn worst_dropped(
    machine: &Machine,
    stance: Stance,
    loading: &Loading,
    height: f64,
    springs: Option<Springs>,
) -> [Sudden; 6] {
    const CASES: [[f64; 4]; 8] = [
        [1.0, 0.0, 0.0, 0.0],
        [0.0, 1.0, 0.0, 0.0],
        [0.0, 0.0, 1.0, 0.0],
        [0.0, 0.0, 0.0, 1.0],
        [1.0, 0.0, 1.0, 0.0],
        [0.0, 1.0, 0.0, 1.0],
        [1.0, 1.0, 0.0, 0.0],
        [0.0, 0.0, 1.0, 1.0],
    ];
    let mut worst = dropped(machine, stance, loading, CASES[0].map(|c| c * height), springs);
    for case in &CASES[1..] {
        let next = dropped(machine, stance, loading, case.map(|c| c * height), springs);
        for (w, n) in worst.iter_mut().zip(next) {
            if n.reserve.is_nan() || n.reserve < w.reserve {
                *w = n;
            }
        }
    }
    worst
}

/// Static turns of the body (rotation vectors, rad) that the lowered contacts allow.
fn turns(p: &Points, drop: [f64; 4], free: bool) -> [Option<DVec3>; 4] {
    let at = [p.front[0], p.front[1], p.rear[0], p.rear[1]];
    if free {
        let pin = f64::midpoint(drop[2], drop[3]);
        return [Some(turn([at[0], at[1], p.pin], [-drop[0], -drop[1], -pin])), None, None, None];
    }
    core::array::from_fn(|left_out| {
        let three = [0, 1, 2, 3].map(|k| (left_out + 1 + k) % 4);
        let [a, b, c, _] = three;
        let turned = turn([at[a], at[b], at[c]], [-drop[a], -drop[b], -drop[c]]);
        // The fourth may hang in the air, but not lie below its ground.
        let rise = -drop[a] + turned.cross(at[left_out] - at[a]).z;
        (rise.is_nan() || rise >= -drop[left_out] - 1e-9).then_some(turned)
    })
}

/// A direction seen from a body that turned by a rotation vector.
fn turned_back(direction: DVec3, turned: DVec3) -> DVec3 {
    let angle = turned.length();
    if angle == 0.0 {
        return direction;
    }
    let (sin, cos) = libm::sincos(-angle);
    let k = turned / angle;
    direction * cos + k.cross(direction) * sin + k * (k.dot(direction) * (1.0 - cos))
}

/// Energy (J) left below the crest over a line whose ends have dropped: the crest's height over the
/// lowered line less the centre's height before, times the weight, less the work of the wind.
fn energy_left(p: &Points, loading: &Loading, line: &TippingLine, drop: [f64; 4], free: bool, turned: f64) -> f64 {
    let pin = f64::midpoint(drop[2], drop[3]);
    let rear = |i: usize| if free { (p.pin, pin) } else { (p.rear[i], drop[2 + i]) };
    let front = |i: usize| (p.front[i], drop[i]);
    let (from, to) = match line.over {
        TipsOver::Front => (front(0), front(1)),
        // Over the rear the wheels themselves carry.
        TipsOver::Rear => ((p.rear[1], drop[3]), (p.rear[0], drop[2])),
        TipsOver::Left => (rear(0), front(0)),
        TipsOver::Right => (front(1), rear(1)),
    };
    let up = -loading.gravity;
    let (a, b) = (from.0 - DVec3::Z * from.1, to.0 - DVec3::Z * to.1);
    let along = (b - a).normalize();
    let (mass, moment) = loading.masses.counted(line.with_rear_axle);
    let centre = moment / mass;
    let arm = centre - from.0;
    let along_line = arm.dot(line.along);
    let radius = (arm - line.along * along_line).length();
    let slope = along.dot(up);
    let crest = a.dot(up) + along_line * slope;
    let weight = mass * G;
    let amplitude = weight * radius * (1.0 - slope * slope).sqrt();
    let c = curve(loading, line);
    let balance = libm::asin((c.wind / amplitude).clamp(-1.0, 1.0));
    weight * (crest - centre.dot(up)) + amplitude * libm::cos(balance) - c.wind * (c.alpha + turned - balance)
}

/// What is lowered with the boom: boom sections, carriage, attachment, and the load; kg and kg·m.
pub fn lowered(
    machine: &Machine,
    attachment: &machine::Attachment,
    boom: machine::BoomPosition,
    load: Option<LoadOnBoom>,
) -> (f64, DVec3) {
    let masses: Masses = machine::kinematics::boom_masses(&machine.boom, attachment, boom)
        .fold(Masses::default(), |sum, (m, at)| sum.pressing(m, at * m, 1.0));
    let all = load.map_or(masses, |l| masses.with(l));
    (all.sprung, all.sprung_moment)
}
