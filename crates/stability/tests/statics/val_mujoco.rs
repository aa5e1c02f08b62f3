//! Onset of tipping in any direction, also aslant, against MuJoCo (`validation/statics/tipping_onset.py` and
//! its README): hard contacts, and tyres.

use crate::peers::{Peer, Row, peer, rows};
use geometry::DVec3;
use stability::wind::WindLoad;
use stability::{
    LEVEL, Loading, Masses, OnSprings, Springs, TipsOver, on_springs, onset, reactions, tilt_reserve_on_springs,
    tipping_lines,
};

const TABLE: &str = include_str!("../../../../validation/statics/tipping_onset.csv");
const ROWS: usize = 84;
/// Stiffness of the hard contacts there, N/m: they lean the machine by up to a quarter of a degree.
const HARD: f64 = 1e7;

fn over(name: &str) -> TipsOver {
    match name {
        "front" => TipsOver::Front,
        "rear" => TipsOver::Rear,
        "left" => TipsOver::Left,
        "right" => TipsOver::Right,
        other => panic!("unknown side {other}"),
    }
}

/// What tyres give under the level machine, m, and the masses over tyres that do not yet give: heights in the
/// table are those over loaded tyres, springs begin unloaded.
fn unloaded(p: &Peer, springs: Springs) -> ([f64; 4], Masses) {
    let level = reactions(&p.machine, p.stance, &p.masses, LEVEL).force;
    let give = [level[0] / springs.front, level[1] / springs.front, level[2] / springs.rear, level[3] / springs.rear];
    let (front, rear) = (f64::midpoint(give[0], give[1]), f64::midpoint(give[2], give[3]));
    let mut masses = p.masses;
    let share = masses.sprung_moment.x / masses.sprung / p.machine.rear.axle.x;
    masses.sprung_moment.z += masses.sprung * (front + share * (rear - front));
    masses.axle_moment.z += masses.axle * rear;
    (give, masses)
}

/// Tilt (°) up to which it stands on springs in the row's direction.
fn stands_until(row: &Row, p: &Peer, springs: Springs) -> f64 {
    let (give, masses) = unloaded(p, springs);
    let (sin, cos) = row.number("azimuth_deg").to_radians().sin_cos();
    let (mut low, mut high) = (0.0_f64, 1.2_f64);
    while high - low > 1e-5 {
        let tilt = f64::midpoint(low, high);
        let gravity = DVec3::new(tilt.sin() * cos, tilt.sin() * sin, -tilt.cos());
        // The ground stands higher by what each tyre gives: level to begin with, as the runs are.
        let found = on_springs(&p.machine, p.stance, &masses, gravity, springs, give);
        if matches!(found, OnSprings::Stands { .. }) { low = tilt } else { high = tilt }
    }
    low.to_degrees()
}

/// Rear axle locked, or free with only the front wheels held: nothing there depends on how the wheels share
/// what holds the machine along its length. Closed form of those lines against hard contacts. And of all
/// lines, the worse way of holding, whichever wheels are held there: never later.
#[test]
fn val_onset_aslant_on_hard_contacts() {
    let mut most = 0.0_f64;
    let mut seen = 0;
    for row in rows(TABLE, ROWS) {
        let p = peer(&row);
        let lines = tipping_lines(&p.machine, p.stance);
        let at = |lines| onset(&p.masses, lines, row.number("azimuth_deg").to_radians()).expect("it tips");
        let later = at(&lines).tilt.to_degrees() - row.number("hard_onset_deg");
        assert!(later < 0.35, "line {}: later by {later}°", row.number);
        if p.masses.axle > 0.0 && row.text("held_by") != "front" {
            continue;
        }
        let found = at(&lines[..4]);
        let later = found.tilt.to_degrees() - row.number("hard_onset_deg");
        most = most.max(later);
        assert!((-0.1..0.35).contains(&later), "line {}: later by {later}°", row.number);
        assert_eq!(found.over, over(row.text("hard_over")), "line {}", row.number);
        seen += 1;
    }
    assert!(seen >= 35, "{seen}");
    eprintln!("onset: {seen} rows, later by at most {most:.2}°");
}

/// Rear axle locked, on springs as hard and as soft as there.
#[test]
fn val_onset_aslant_on_springs() {
    let (mut hard_most, mut soft_most, mut late) = (0.0_f64, 0.0_f64, 0.0_f64);
    for row in rows(TABLE, ROWS) {
        let p = peer(&row);
        if p.masses.axle > 0.0 {
            continue;
        }
        let hard = stands_until(&row, &p, Springs { front: HARD, rear: HARD }) - row.number("hard_onset_deg");
        let soft = stands_until(&row, &p, p.springs) - row.number("tyres_onset_deg");
        late = late.max(hard).max(soft);
        hard_most = hard_most.max(hard.abs());
        soft_most = soft_most.max(soft.abs());
    }
    assert!(hard_most < 0.1 && soft_most < 0.35, "{hard_most} {soft_most}");
    assert!(late < 0.2, "stands {late}° longer than there");
    eprintln!("on springs: within {hard_most:.2}° hard, {soft_most:.2}° on tyres");
}

/// The least reserve of all lines on springs is never above the onset on tyres, whatever the axle, the
/// direction and the wheels that hold. A quarter of the rows tilt square to a side line, where it is nearest.
#[test]
fn val_reserve_on_springs_before_onset() {
    let mut nearest = f64::INFINITY;
    for row in rows(TABLE, ROWS) {
        let p = peer(&row);
        let (_, masses) = unloaded(&p, p.springs);
        let loading = Loading { masses, gravity: LEVEL, wind: WindLoad::NONE };
        let least = tipping_lines(&p.machine, p.stance)
            .map(|line| tilt_reserve_on_springs(&p.machine, p.stance, &loading, &line, p.springs).to_degrees())
            .into_iter()
            .fold(f64::INFINITY, f64::min);
        let onset = row.number("tyres_onset_deg");
        nearest = nearest.min(onset - least);
        assert!(least <= onset, "line {}: {least}, onset {onset}", row.number);
        assert!(least > 0.0, "line {}", row.number);
    }
    // And not so cautious that it says nothing.
    assert!(nearest < 1.0, "{nearest}");
    eprintln!("least reserve on springs: at least {nearest:.2}° before the onset");
}
