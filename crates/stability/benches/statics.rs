//! Forces on rigid contacts, a whole set of reserves, and forces on tyres that give, each against a plain dense
//! solve of the same question in the same run: rigid and locked by trying all 16 sets of contacts that carry,
//! rigid and free by elimination of the axle's and the whole's balance; reserves by halving the tilt of the
//! ground in its worst direction and the load; tyres by damped Newton on the potential, derivatives by
//! differences, from flat. Prints times and ratios; the answers of both are compared.
#![allow(missing_docs, clippy::unwrap_used, clippy::print_stdout, clippy::panic, reason = "a bench prints")]
#![allow(clippy::disallowed_methods, reason = "a bench reads the clock")]

use evidence::Silent;
use geometry::{DVec2, DVec3};
use machine::{BoomPosition, Machine, SupportState};
use quantity::STANDARD_GRAVITY as G;
use stability::wind::WindLoad;
use stability::{
    LEVEL, LoadOnBoom, Loading, Masses, OnSprings, RearAxleState, Springs, Stance, Support, TippingLine,
    gravity_for_slopes, load_factor, on_springs, reactions, restoring_moment, tilt_reserve, tipping_lines,
};
use std::hint::black_box;
use std::time::Instant;

/// A question: bare masses, load, gravity.
type Case = (Masses, LoadOnBoom, DVec3);

fn support(rear: RearAxleState) -> Stance {
    Support { state: SupportState::Tyres, rear }.into()
}

/// 64 loads and attitudes that R1 stands with.
fn cases(machine: &Machine) -> Vec<Case> {
    let forks = machine.attachment("forks").unwrap();
    (0..64)
        .map(|i| {
            let t = f64::from(i) / 63.0;
            let boom = BoomPosition::level(0.2 + 0.6 * t, 2.0 * t);
            let tool = machine::kinematics::tool_point(&machine.boom, forks, boom);
            let load = LoadOnBoom { mass: 500.0 + 1000.0 * t, at: tool + DVec3::new(0.6, 0.2 - 0.4 * t, 0.5) };
            let gravity = gravity_for_slopes(0.04 * (t - 0.5), 0.06 * (0.5 - t * t));
            (Masses::of(machine, forks, boom), load, gravity)
        })
        .collect()
}

/// Median time of one case, µs.
fn micros(cases: &[Case], mut one: impl FnMut(&Case)) -> f64 {
    let rounds = {
        let start = Instant::now();
        cases.iter().for_each(&mut one);
        let all = start.elapsed().as_secs_f64().max(1e-9);
        (0.01 / all).clamp(1.0, 2000.0) as usize
    };
    let mut times: Vec<f64> = (0..15)
        .map(|_| {
            let start = Instant::now();
            for _ in 0..rounds {
                for case in cases {
                    one(black_box(case));
                }
            }
            start.elapsed().as_secs_f64() * 1e6 / (rounds * cases.len()) as f64
        })
        .collect();
    times.sort_by(f64::total_cmp);
    times[7]
}

/// Gauss with pivoting; rows of `n` numbers and a right side.
fn solve(m: &mut [Vec<f64>]) -> Option<Vec<f64>> {
    let n = m.len();
    for c in 0..n {
        let pivot = (c..n).max_by(|a, b| m[*a][c].abs().total_cmp(&m[*b][c].abs()))?;
        m.swap(c, pivot);
        if m[c][c].abs() < 1e-12 {
            return None;
        }
        for r in 0..n {
            if r != c {
                let f = m[r][c] / m[c][c];
                let pivot = m[c].clone();
                m[r].iter_mut().zip(pivot).for_each(|(v, p)| *v -= f * p);
            }
        }
    }
    Some((0..n).map(|i| m[i][n] / m[i][i]).collect())
}

fn seen(p: DVec3, g: DVec3) -> DVec2 {
    (p - g * (p.z / g.z)).truncate()
}

fn contacts(machine: &Machine) -> [DVec3; 4] {
    let [f, r] = machine.contacts(SupportState::Tyres);
    [DVec3::new(f.x, f.y, 0.0), DVec3::new(f.x, -f.y, 0.0), DVec3::new(r.x, r.y, 0.0), DVec3::new(r.x, -r.y, 0.0)]
}

/// Equal springs that push only: the one set of carrying contacts whose others do not press.
fn by_sets(at: &[DVec3; 4], masses: &Masses, g: DVec3) -> Option<[f64; 4]> {
    let w = masses.total() * G;
    let at = at.map(|p| seen(p, g));
    let centre = seen(masses.centre(), g);
    for set in (0_u32..16).rev() {
        let used: Vec<usize> = (0..4).filter(|i| set & (1 << i) != 0).collect();
        let mut m = vec![vec![0.0; 4]; 3];
        for i in &used {
            let v = [1.0, at[*i].x, at[*i].y];
            for r in 0..3 {
                for c in 0..3 {
                    m[r][c] += v[r] * v[c];
                }
            }
        }
        for (r, v) in [1.0, centre.x, centre.y].into_iter().enumerate() {
            m[r][3] = v * w;
        }
        let Some(k) = solve(&mut m) else { continue };
        let press = at.map(|p| k[0] + k[1] * p.x + k[2] * p.y);
        let right = (0..4).all(|i| if used.contains(&i) { press[i] >= -1e-6 } else { press[i] <= 1e-6 });
        if right {
            return Some([0, 1, 2, 3].map(|i| if used.contains(&i) { press[i] } else { 0.0 }));
        }
    }
    None
}

/// Balance of the whole (force, both moments) and of the axle about its pin, for the four forces and that of the
/// pin.
fn by_elimination(machine: &Machine, masses: &Masses, g: DVec3) -> Option<[f64; 4]> {
    let at = contacts(machine).map(|p| seen(p, g));
    let pin = seen(DVec3::new(machine.rear.axle.x, 0.0, machine.rear.pin_height), g);
    let (w, axle) = (masses.total() * G, masses.axle * G);
    let (centre, own) = (seen(masses.centre(), g), seen(masses.axle_moment / masses.axle, g));
    let mut m = vec![
        vec![1.0, 1.0, 1.0, 1.0, 0.0, w],
        vec![at[0].x, at[1].x, at[2].x, at[3].x, 0.0, w * centre.x],
        vec![at[0].y, at[1].y, at[2].y, at[3].y, 0.0, w * centre.y],
        vec![0.0, 0.0, 1.0, 1.0, -1.0, axle],
        vec![0.0, 0.0, at[2].y, at[3].y, -pin.y, axle * own.y],
    ];
    let x = solve(&mut m)?;
    Some([x[0], x[1], x[2], x[3]])
}

fn halve(mut low: f64, mut high: f64, holds: impl Fn(f64) -> bool) -> f64 {
    for _ in 0..40 {
        let middle = f64::midpoint(low, high);
        if holds(middle) { low = middle } else { high = middle }
    }
    low
}

/// Least tilt and load factor, the long way: for each line the ground is tilted in each of 72 directions.
fn reserves_by_halving(bare: &Masses, load: LoadOnBoom, g: DVec3, lines: &[TippingLine]) -> (f64, f64) {
    let (mut tilt, mut factor) = (f64::INFINITY, f64::INFINITY);
    for line in lines {
        let at = |mass: f64, gravity: DVec3| {
            let masses = bare.with(LoadOnBoom { mass, at: load.at });
            restoring_moment(&Loading { masses, gravity, wind: WindLoad::NONE }, line) >= 0.0
        };
        for i in 0..72 {
            let (sin, cos) = (f64::from(i) * 5.0_f64).to_radians().sin_cos();
            let axis = DVec3::new(-sin, cos, 0.0);
            let across = (axis - g * axis.dot(g)).normalize();
            let turned = |by: f64| g * by.cos() + across.cross(g) * by.sin();
            if !at(load.mass, turned(1.4)) {
                tilt = tilt.min(halve(0.0, 1.4, |by| at(load.mass, turned(by))));
            }
        }
        if !at(load.mass * 50.0, g) {
            factor = factor.min(halve(0.0, 50.0, |k| at(load.mass * k, g)));
        }
    }
    (tilt, factor)
}

fn reserves(bare: &Masses, load: LoadOnBoom, gravity: DVec3, lines: &[TippingLine; 6]) -> (f64, f64) {
    let wind = WindLoad::NONE;
    let full = Loading { masses: bare.with(load), gravity, wind };
    let tilt = lines.iter().map(|l| tilt_reserve(&full, l, &mut Silent)).fold(f64::INFINITY, f64::min);
    let bare = Loading { masses: *bare, gravity, wind };
    (tilt, load_factor(&bare, load, lines, &mut Silent).map_or(f64::INFINITY, |(k, _)| k))
}

/// Step of the differences, m or rad.
const H: f64 = 1e-5;

/// Locked and level: heave, roll and pitch of least potential, by damped Newton.
fn by_newton(at: &[DVec3; 4], masses: &Masses, k: f64) -> Option<[f64; 4]> {
    let w = masses.total() * G;
    let centre = masses.centre();
    let placed = |q: &[f64; 3], p: DVec3| {
        let ((s, c), (sp, cp)) = (q[1].sin_cos(), q[2].sin_cos());
        let (x, z) = (p.x, p.z * c - p.y * s);
        q[0] + z * cp - x * sp
    };
    let force = |q: &[f64; 3]| at.map(|p| k * (-placed(q, p)).max(0.0));
    let energy = |q: &[f64; 3]| {
        w * placed(q, centre) + at.iter().map(|p| 0.5 * k * (-placed(q, *p)).max(0.0).powi(2)).sum::<f64>()
    };
    let moved = |q: &[f64; 3], i: usize, by: f64| {
        let mut to = *q;
        to[i] += by;
        to
    };
    let slope = |q: &[f64; 3]| [0, 1, 2].map(|i| (energy(&moved(q, i, H)) - energy(&moved(q, i, -H))) / (2.0 * H));
    let mut q = [0.0; 3];
    for _ in 0..200 {
        let d = slope(&q);
        let columns = [0, 1, 2].map(|i| {
            let (a, b) = (slope(&moved(&q, i, H)), slope(&moved(&q, i, -H)));
            [0, 1, 2].map(|r| (a[r] - b[r]) / (2.0 * H))
        });
        let mut m: Vec<Vec<f64>> = (0..3)
            .map(|r| (0..3).map(|c| columns[c][r] + if r == c { 1e-9 * k } else { 0.0 }).chain([-d[r]]).collect())
            .collect();
        let step = solve(&mut m)?;
        let most = step.iter().fold(0.0_f64, |a, b| a.max(b.abs()));
        let length = (0.03 / most).min(1.0);
        for i in 0..3 {
            q[i] += step[i] * length;
        }
        if most < 1e-7 {
            return Some(force(&q));
        }
    }
    None
}

fn same(a: [f64; 4], b: [f64; 4], within: f64) -> bool {
    a.iter().zip(b).all(|(a, b)| (a - b).abs() <= within)
}

fn say(what: &str, micros: f64, target: f64, long: f64, peer: &str) {
    println!(
        "  {what:<40} {micros:9.3} µs, {:6.3} of the target; {peer} {long:.1} µs, {:.0} times",
        micros / target,
        long / micros
    );
}

fn main() {
    let file = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../../validation/machines/r1.toml");
    let (machine, _) =
        jobfile::read_machine("r1.toml", &std::fs::read(file).unwrap()).unwrap_or_else(|f| panic!("{:?}", f.list));
    let cases = cases(&machine);
    let at = contacts(&machine);
    let weight = 15_000.0 * G;
    println!("statics of R1, 64 loads and attitudes, median of 15 runs");
    let (free, locked) = (support(RearAxleState::Free), support(RearAxleState::Locked));
    for (bare, load, g) in &cases {
        let masses = bare.with(*load);
        let (r, long) = (reactions(&machine, locked, &masses, *g), by_sets(&at, &masses, *g).unwrap());
        assert!(r.stands && same(r.force, long, 1e-6 * weight), "{r:?} {long:?}");
        let (r, long) = (reactions(&machine, free, &masses, *g), by_elimination(&machine, &masses, *g).unwrap());
        assert!(r.stands && same(r.force, long, 1e-6 * weight), "{r:?} {long:?}");
    }
    let rigid = |stance: Stance| {
        micros(&cases, |(bare, load, g)| {
            black_box(reactions(&machine, stance, &bare.with(*load), *g));
        })
    };
    let long = micros(&cases, |(bare, load, g)| {
        black_box(by_sets(&at, &bare.with(*load), *g));
    });
    say("forces, rigid contacts, locked", rigid(locked), 1.0, long, "all 16 sets");
    let long = micros(&cases, |(bare, load, g)| {
        black_box(by_elimination(&machine, &bare.with(*load), *g));
    });
    say("forces, rigid contacts, free", rigid(free), 1.0, long, "elimination");

    let lines = tipping_lines(&machine, free);
    for (bare, load, g) in &cases {
        let (short, long) = (reserves(bare, *load, *g, &lines), reserves_by_halving(bare, *load, *g, &lines));
        assert!(short.0 <= long.0 + 1e-9 && long.0 < short.0 * 1.01, "{short:?} {long:?}");
        assert!((short.1 - long.1).abs() < 1e-6 * short.1, "{short:?} {long:?}");
    }
    let set = micros(&cases, |(bare, load, g)| {
        let lines = tipping_lines(&machine, free);
        black_box(reserves(bare, *load, *g, &lines));
    });
    let long = micros(&cases[..8], |(bare, load, g)| {
        black_box(reserves_by_halving(bare, *load, *g, &lines));
    });
    say("six lines: tilt and load factor", set, 10.0, long, "halving");

    let springs = Springs { front: 9e5, rear: 9e5 };
    for (bare, load, _) in &cases {
        let masses = bare.with(*load);
        let OnSprings::Stands { force, .. } = on_springs(&machine, locked, &masses, LEVEL, springs, [0.0; 4]) else {
            panic!("tips")
        };
        let long = by_newton(&at, &masses, 9e5).unwrap();
        assert!(same(force, long, 1e-4 * weight), "{force:?} {long:?}");
    }
    let long = micros(&cases, |(bare, load, _)| {
        black_box(by_newton(&at, &bare.with(*load), 9e5));
    });
    for (what, stance) in [("forces, tyres that give, locked", locked), ("forces, tyres that give, free", free)] {
        let one = micros(&cases, |(bare, load, _)| {
            black_box(on_springs(&machine, stance, &bare.with(*load), LEVEL, springs, [0.0; 4]));
        });
        say(what, one, 100.0, long, "Newton, locked");
    }
}
