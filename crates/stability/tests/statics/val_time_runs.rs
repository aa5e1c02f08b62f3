//! What sudden events do to a machine on tyres, run through time by MuJoCo (`validation/statics/time_runs.py`
//! and its README): whatever goes over there must have nothing left here.

use crate::peers::{Peer, Row, peer, rows};
use evidence::Silent;
use geometry::DVec3;
use quantity::STANDARD_GRAVITY as G;
use stability::wind::WindLoad;
use stability::*;

macro_rules! table {
    ($name:literal) => {
        include_str!(concat!("../../../../validation/statics/time_", $name, ".csv"))
    };
}

/// Share by which a bisected run may lie beside the true value.
const BISECTED: f64 = 0.01;

fn loading(p: &Peer, gravity: DVec3) -> Loading {
    Loading { masses: p.masses, gravity, wind: WindLoad::NONE }
}

/// On ground that falls to the left.
fn falling_left(row: &Row) -> DVec3 {
    let (s, c) = row.number("slope_left_deg").to_radians().sin_cos();
    DVec3::new(0.0, s, -c)
}

fn dropped(row: &Row, by: f64) -> [f64; 4] {
    match row.text("wheels") {
        "front-left" => [by, 0.0, 0.0, 0.0],
        "rear-left" => [0.0, 0.0, by, 0.0],
        "both-left" => [by, 0.0, by, 0.0],
        other => panic!("unknown wheels {other}"),
    }
}

/// The value up to which `left` stays above zero, by bisection; it falls.
fn until(left: impl Fn(f64) -> f64, most: f64) -> f64 {
    let (mut low, mut high) = (0.0, most);
    while high - low > 1e-5 {
        let middle = f64::midpoint(low, high);
        if left(middle) > 0.0 { low = middle } else { high = middle }
    }
    low
}

fn springs_of(p: &Peer) -> [f64; 4] {
    [p.springs.front, p.springs.front, p.springs.rear, p.springs.rear]
}

/// 40 wheels let down slowly, some machines with a free axle, some until a wheel hangs: how the machine then
/// stands, on springs.
#[test]
fn val_wheel_let_down_slowly() {
    let mut most = 0.0_f64;
    for row in rows(table!("wheel_drop"), 40) {
        let p = peer(&row);
        let k = springs_of(&p);
        // Level to begin with, as the runs are: the ground stands higher by what each tyre gives.
        let names = ["front_left", "front_right", "rear_left", "rear_right"];
        let give: [f64; 4] = core::array::from_fn(|i| row.number(&format!("before_{}_n", names[i])) / k[i]);
        let down = dropped(&row, row.number("drop_m"));
        let at = |heights: [f64; 4]| match on_springs(
            &p.machine,
            p.stance,
            &p.masses,
            falling_left(&row),
            p.springs,
            heights,
        ) {
            OnSprings::Stands { roll, pitch, .. } => (roll.to_degrees(), pitch.to_degrees()),
            other => panic!("line {}: {other:?}", row.number),
        };
        let (before, after) = (at(give), at(core::array::from_fn(|i| give[i] - down[i])));
        let (roll, pitch) = (after.0 - before.0, after.1 - before.1);
        for (got, want) in [(roll, row.number("slow_roll_deg")), (pitch, row.number("slow_pitch_deg"))] {
            most = most.max((got - want).abs());
            // A free axle that rolls by 10° carries the pin aside; feet there take it up a little otherwise.
            let share = if p.masses.axle > 0.0 { 0.07 } else { 0.02 };
            assert!((got - want).abs() < share * want.abs() + 0.05, "line {}: {got}, expected {want}", row.number);
        }
    }
    eprintln!("let down slowly: greatest difference {most:.2}°");
}

/// The least drop that tips, bisected over time runs: nothing may be left of the reserve there.
#[test]
fn val_wheel_drop_that_tips() {
    let mut most = 0.0_f64;
    for row in rows(table!("wheel_drop_critical"), 40) {
        let p = peer(&row);
        let before = loading(&p, falling_left(&row));
        let left = |by: f64| {
            wheel_drop(&p.machine, p.stance, &before, dropped(&row, by))
                .iter()
                .map(|s| s.reserve)
                .fold(f64::INFINITY, f64::min)
        };
        let Some(tips) = row.maybe("tips_at_m") else { continue };
        let ours = until(left, 1.5);
        most = most.max(ours / tips);
        assert!(left(0.0) > 0.0 && left(tips) <= 0.0 && ours <= tips, "line {}: {ours}, tips at {tips}", row.number);
        // And not so cautious that it says nothing.
        assert!(ours > 0.15 * tips, "line {}: {ours}, tips at {tips}", row.number);
    }
    eprintln!("wheel drop: at most {:.0} % of what tips", 100.0 * most);
}

/// The least speed of lowering that tips when it is stopped.
#[test]
fn val_stopped_lowering_that_tips() {
    let mut most = 0.0_f64;
    for row in rows(table!("stop_of_lowering_critical"), 30) {
        let p = peer(&row);
        let (mass, stop) = (row.number("load_kg"), row.number("stopped_in_s"));
        let at = DVec3::new(row.number("load_x_m"), 0.0, row.number("load_z_at_stop_m"));
        let loaded = Loading { masses: p.masses.with(LoadOnBoom { mass, at }), ..loading(&p, LEVEL) };
        let line = tipping_lines(&p.machine, p.stance)[0];
        let left = |speed: f64| stop_of_lowering(&loaded, (mass, at * mass), speed, stop, &line).reserve;
        assert!(left(0.0) > 0.0, "line {}", row.number);
        let Some(tips) = row.maybe("tips_at_m_per_s") else { continue };
        most = most.max(until(left, 8.0) / tips);
        assert!(left(tips) <= 0.0, "line {}: {} left at {tips} m/s", row.number, left(tips));
    }
    eprintln!("stopped lowering: at most {:.0} % of what tips", 100.0 * most);
}

/// Braking or swerving all at once and for long tips below the steady threshold: on its springs, a third more
/// of the acceleration covers every run.
#[test]
fn val_pulled_until_it_tips() {
    let (mut most, mut rigid) = (0.0_f64, 0.0_f64);
    for row in rows(table!("pulled_critical"), 40) {
        let p = peer(&row);
        let still = loading(&p, LEVEL);
        let side = row.text("way") == "side";
        let line = tipping_lines(&p.machine, p.stance)[if side { 2 } else { 0 }];
        let pull =
            |a: f64| if side { Acceleration { ahead: 0.0, left: -a } } else { Acceleration::braking(Travel::Ahead, a) };
        let steady = until(|a| tilt_reserve(&moving(&still, pull(a)).loading, &line, &mut Silent), 20.0);
        let Some(tips) = row.maybe("tips_at_m_per_s2") else { continue };
        rigid = rigid.max(steady / tips);
        let on_tyres = |a: f64| {
            let m = moving(&still, pull(a * SUDDEN));
            tilt_reserve_on_springs(&p.machine, p.stance, &m.loading, &line, m.springs(p.springs))
        };
        let ours = until(on_tyres, 20.0);
        most = most.max(ours / tips);
        assert!(ours <= tips, "line {}: {ours}, tips at {tips}", row.number);
        // And not so cautious that it says nothing: pulls that soon end tip later than steady ones.
        assert!(ours > 0.6 * steady, "line {}: {ours}, steady {steady}", row.number);
    }
    eprintln!("pulled suddenly: rigid and steady up to {rigid:.2} times what tips, on tyres and sudden {most:.2}");
}

/// Rear axle while braking, steadily, also with a free axle and downhill; and its least force when the brakes
/// come on at once, against twice the deceleration.
#[test]
fn val_rear_axle_while_braking() {
    let mut over = 0.0_f64;
    for row in rows(table!("braking"), 40) {
        let p = peer(&row);
        let (s, c) = row.number("slope_down_deg").to_radians().sin_cos();
        let still = loading(&p, DVec3::new(s, 0.0, -c));
        let weight = p.masses.total() * G;
        let rear = |times: f64| {
            let m = moving(&still, Acceleration::braking(Travel::Ahead, times * row.number("deceleration_m_per_s2")));
            let r = m.reactions(&p.machine, p.stance);
            // Along the ground's normal, as the runs have it.
            if r.stands { (r.force[2] + r.force[3]) * -m.loading.gravity.z } else { 0.0 }
        };
        match row.maybe("steady_rear_n") {
            // Tyres lean the machine a little: less behind than on rigid contacts.
            Some(steady) => {
                let more = (rear(1.0) - steady) / weight;
                assert!((-0.001..0.025).contains(&more), "line {}: {} and {steady}", row.number, rear(1.0));
            }
            None => assert!(rear(1.0) == 0.0, "line {}", row.number),
        }
        over = over.max((rear(2.0) - row.number("least_rear_n")) / weight);
    }
    assert!(over < 0.025, "twice the deceleration leaves {over} of the weight more than the least of a run");
    eprintln!("braking at once: least rear force at most {:.1} % of the weight below twice", 100.0 * over);
}

/// Slid or driven against a kerb, rigid or springy.
#[test]
fn val_kerb_that_trips() {
    let (mut by_energy, mut by_impact) = (0.0_f64, 0.0_f64);
    for row in rows(table!("kerb"), 40) {
        let p = peer(&row);
        let side = row.text("way") == "side";
        let line = tipping_lines(&p.machine, p.stance)[if side { 2 } else { 0 }];
        let centre = p.masses.centre() - line.point;
        let away = if side { centre.y } else { centre.x };
        let inertia = row.number(if side { "inertia_roll_kg_m2" } else { "inertia_pitch_kg_m2" })
            + p.masses.total() * (away * away + centre.z * centre.z);
        let speed = trip_speed(&loading(&p, LEVEL), &line, inertia);
        let tips = row.number("tips_at_m_per_s");
        assert!(speed.energy <= tips, "line {}: {speed:?}, tips at {tips}", row.number);
        by_energy = by_energy.max(speed.energy / tips);
        by_impact = by_impact.max(speed.impact / tips);
        // Hard tyres against a rigid kerb are the closed form: sideways as well as ahead.
        if row.number("front_tyre_n_per_m") > 1e7 && row.number("kerb_gives_n_per_m") == 0.0 {
            let line_up = row.number("line_height_m");
            assert!((speed.impact / tips - 1.0).abs() < 0.06 + line_up, "line {}: {speed:?} {tips}", row.number);
        }
    }
    // A springy kerb tips below the speed of the inelastic impact: it must not be relied on.
    assert!(by_impact > 1.2, "{by_impact}");
    eprintln!("kerb: energy at most {:.0} %, impact {:.0} % of what tips", 100.0 * by_energy, 100.0 * by_impact);
}

/// Steady cornering, its acceleration growing slowly: rigid against hard contacts, springs against tyres.
#[test]
fn val_steady_cornering() {
    for row in rows(table!("cornering"), 30) {
        let p = peer(&row);
        let still = loading(&p, LEVEL);
        let line = tipping_lines(&p.machine, p.stance)[2];
        let turn = |a: f64| moving(&still, Acceleration { ahead: 0.0, left: -a });
        let tips = row.number("tips_m_per_s2");
        if row.text("tyres") == "hard" {
            let rigid = until(|a| restoring_moment(&turn(a).loading, &line), 20.0);
            assert!((rigid / tips - 1.0).abs() < 0.012, "line {}: {rigid}, tips at {tips}", row.number);
        } else {
            let soft = until(
                |a| {
                    let m = turn(a);
                    tilt_reserve_on_springs(&p.machine, p.stance, &m.loading, &line, m.springs(p.springs))
                },
                20.0,
            );
            assert!(
                soft <= tips * (1.0 + BISECTED) && soft > 0.9 * tips,
                "line {}: {soft}, tips at {tips}",
                row.number
            );
        }
    }
}
