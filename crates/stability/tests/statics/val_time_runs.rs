use crate::peers::{Peer, Row, peer, rows};
use evidence::Silent;
use geometry::DVec3;
use stability::wind::WindLoad;
use stability::*;
use quantity::STANDARD_GRAVITY as G;
const DROP_CRITICAL: &str = include_str!("../../../../validation/statics/time_wheel_drop_critical.csv");
const DROP: &str = include_str!("../../../../validation/statics/time_wheel_drop.csv");
const STOP: &str = include_str!("../../../../validation/statics/time_stop_of_lowering.csv");
const STOPC: &str = include_str!("../../../../validation/statics/time_stop_of_lowering_critical.csv");
const PULLED: &str = include_str!("../../../../validation/statics/time_pulled_critical.csv");
const BRAKE: &str = include_str!("../../../../validation/statics/time_braking.csv");
const KERB: &str = include_str!("../../../../validation/statics/time_kerb.csv");
const CORNER: &str = include_str!("../../../../validation/statics/time_cornering.csv");

fn drops(row: &Row, h: f64) -> [f64; 4] {
    match row.text("wheels") { "front-left" => [h,0.,0.,0.], "rear-left" => [0.,0.,h,0.], "both-left" => [h,0.,h,0.], "both-front" => [h,h,0.,0.], x => panic!("{x}") }
}
fn loading(p: &Peer, gravity: DVec3) -> Loading { Loading { masses: p.masses, gravity: gravity.normalize(), wind: WindLoad::NONE } }
#[test]
fn val_x() {
    for row in rows(DROP_CRITICAL, 40) {
        let p = peer(&row);
        let s = row.number("slope_left_deg").to_radians();
        let l = loading(&p, DVec3::new(0.0, s.sin(), -s.cos()));
        let least = |h: f64| wheel_drop(&p.machine, p.stance, &l, drops(&row, h)).iter().map(|s| s.reserve).fold(9.0, f64::min);
        let (mut a, mut b) = (0.0, 1.5);
        while b - a > 1e-4 { let m = 0.5*(a+b); if least(m) > 0.0 { a = m } else { b = m } }
        eprintln!("drop {} {} free {} sim tips {:.3} ours {:.3} ratio {:.2} {}", row.number, row.text("wheels"), p.masses.axle > 0.0, row.number("tips_at_m"), a, a/row.number("tips_at_m"), if a > row.number("tips_at_m") {"LESS CAUTIOUS"} else {""});
    }
    for row in rows(STOPC, 30) {
        let p = peer(&row);
        let load = row.number("load_kg"); let at = DVec3::new(row.number("load_x_m"), 0.0, row.number("load_z_at_stop_m"));
        let masses = p.masses.with(LoadOnBoom { mass: load, at });
        let l = Loading { masses, gravity: LEVEL, wind: WindLoad::NONE };
        let lines = tipping_lines(&p.machine, p.stance);
        let t = row.number("stopped_in_s");
        let least = |v: f64| stop_of_lowering(&l, (load, at*load), v, t, &lines[0]).reserve;
        let (mut a, mut b) = (0.0, 8.0);
        while b - a > 1e-4 { let m = 0.5*(a+b); if least(m) > 0.0 { a = m } else { b = m } }
        eprintln!("stop {} t {} f {} sim tips {:.3} ours {:.3} ratio {:.2} {:?} {}", row.number, t, row.number("boom_frequency_hz"), row.number("tips_at_m_per_s"), a, a/row.number("tips_at_m_per_s"), stop_of_lowering(&l, (load, at*load), a, t, &lines[0]).criterion, if a > row.number("tips_at_m_per_s") {"LESS CAUTIOUS"} else {""});
    }
    for row in rows(STOP, 40) {
        let p = peer(&row);
        let load = row.number("load_kg"); let at = DVec3::new(row.number("load_x_m"), 0.0, row.number("load_z_at_stop_m"));
        let masses = p.masses.with(LoadOnBoom { mass: load, at });
        let l = Loading { masses, gravity: LEVEL, wind: WindLoad::NONE };
        let lines = tipping_lines(&p.machine, p.stance);
        let t = row.number("stopped_in_s");
        let s = stop_of_lowering(&l, (load, at*load), row.number("speed_m_per_s"), t, &lines[0]);
        let lifts = row.number("least_rear_n") < 1.0;
        let more = if t > 0.0 { (2.0*row.number("speed_m_per_s")/(G*t)).min(1.0) } else { 1.0 };
        let m2 = masses.pressing(load, at*load, more);
        let r = reactions(&p.machine, p.stance, &m2, LEVEL);
        let rear = (r.force[2]+r.force[3]) * if r.stands {1.0} else {0.0};
        eprintln!("stopforce {} v {} t {} f {} more {more:.2} lifts {lifts} reserve {:.3} {:?} rear sim {:.0} ours {:.0} {}", row.number, row.number("speed_m_per_s"), t, row.number("boom_frequency_hz"), s.reserve, s.criterion, row.number("least_rear_n"), rear, if rear > row.number("least_rear_n") + 1.0 {"LESS CAUTIOUS"} else {""});
    }
    for row in rows(PULLED, 40) {
        let p = peer(&row);
        let l = loading(&p, LEVEL);
        let lines = tipping_lines(&p.machine, p.stance);
        let side = row.text("way") == "side";
        let line = &lines[if side {2} else {0}];
        let acc = |a: f64| if side { Acceleration { ahead: 0.0, left: -a } } else { Acceleration { ahead: -a, left: 0.0 } };
        let bis = |f: &dyn Fn(f64) -> f64| { let (mut a, mut b) = (0.0, 20.0); while b - a > 1e-4 { let m = 0.5*(a+b); if f(m) > 0.0 { a = m } else { b = m } } a };
        let rigid = bis(&|a| tilt_reserve(&moving(&l, acc(a)).loading, line, &mut Silent));
        let soft = bis(&|a| { let m = moving(&l, acc(a)); tilt_reserve_on_springs(&p.machine, p.stance, &m.loading, line, m.springs(p.springs)) });
        let tips = row.maybe("tips_at_m_per_s2").unwrap_or(15.0);
        eprintln!("pulled {} {} free {} builds {} lasts {} zeta {} sim {:.2} rigid {:.2} ({:.2}) springs {:.2} ({:.2}) half-rigid-> {}", row.number, row.text("way"), p.masses.axle > 0.0, row.number("builds_up_in_s"), row.number("lasts_s"), row.number("damping_ratio"), tips, rigid, rigid/tips, soft, soft/tips, if soft > tips {"LESS CAUTIOUS"} else {""});
    }
    for row in rows(BRAKE, 40) {
        let p = peer(&row);
        let s = row.number("slope_down_deg").to_radians();
        let l = loading(&p, DVec3::new(s.sin(), 0.0, -s.cos()));
        let f = |k: f64| { let m = moving(&l, Acceleration::braking(Travel::Ahead, k*row.number("deceleration_m_per_s2"))); let r = m.reactions(&p.machine, p.stance); if r.stands { (r.force[2]+r.force[3]) * -m.loading.gravity.z } else { 0.0 } };
        eprintln!("brake {} free {} steady {:?} ours {:.0} twice {:.0} sim least {:.0} {}", row.number, p.masses.axle > 0.0, row.maybe("steady_rear_n"), f(1.0), f(2.0), row.number("least_rear_n"), if f(2.0) > row.number("least_rear_n") + 1.0 {"LESS CAUTIOUS"} else {""});
    }
    for row in rows(KERB, 40) {
        let p = peer(&row);
        let l = loading(&p, LEVEL);
        let line = tipping_lines(&p.machine, p.stance)[if row.text("way") == "side" {2} else {0}];
        let t = trip_speed(&l, &line, 1.0);
        eprintln!("kerb {} {} give {} sim {:.2} ours {:.2} ratio {:.2} {}", row.number, row.text("way"), row.text("kerb_gives_n_per_m"), row.number("tips_at_m_per_s"), t.energy, t.energy/row.number("tips_at_m_per_s"), if t.energy > row.number("tips_at_m_per_s") {"LESS CAUTIOUS"} else {""});
    }
    for row in rows(CORNER, 30) {
        let p = peer(&row);
        let l = loading(&p, LEVEL);
        let lines = tipping_lines(&p.machine, p.stance);
        let acc = |a: f64| Acceleration { ahead: 0.0, left: -a };
        let bis = |f: &dyn Fn(f64) -> f64| { let (mut a, mut b) = (0.0, 20.0); while b - a > 1e-4 { let m = 0.5*(a+b); if f(m) > 0.0 { a = m } else { b = m } } a };
        let rigid = bis(&|a| tilt_reserve(&moving(&l, acc(a)).loading, &lines[2], &mut Silent));
        let line_onset = bis(&|a| restoring_moment(&moving(&l, acc(a)).loading, &lines[2]));
        let soft = bis(&|a| { let m = moving(&l, acc(a)); tilt_reserve_on_springs(&p.machine, p.stance, &m.loading, &lines[2], m.springs(p.springs)) });
        eprintln!("corner {} free {} {} sim {:.2} rigid {:.2} {:.2} springs {:.2} {}", row.number, p.masses.axle > 0.0, row.text("tyres"), row.number("tips_m_per_s2"), rigid, line_onset, soft, if soft > row.number("tips_m_per_s2") {"LESS CAUTIOUS"} else {""});
    }
    for row in rows(DROP, 40) {
        let p = peer(&row);
        let s = row.number("slope_left_deg").to_radians();
        let g = DVec3::new(0.0, s.sin(), -s.cos());
        let d = drops(&row, row.number("drop_m"));
        let k = [p.springs.front, p.springs.front, p.springs.rear, p.springs.rear];
        let b = ["front_left", "front_right", "rear_left", "rear_right"].map(|w| row.number(&format!("before_{w}_n")));
        let heights = [0,1,2,3].map(|i| b[i]/k[i]);
        let after = [0,1,2,3].map(|i| b[i]/k[i] - d[i]);
        let x = on_springs(&p.machine, p.stance, &p.masses, g, p.springs, heights);
        let y = on_springs(&p.machine, p.stance, &p.masses, g, p.springs, after);
        let (OnSprings::Stands { roll: r0, pitch: p0, .. }, OnSprings::Stands { roll: r1, pitch: p1, .. }) = (x, y) else { eprintln!("dropslow {} {x:?} {y:?} sim {:?}", row.number, row.maybe("slow_roll_deg")); continue };
        let peak = row.maybe("peak_roll_deg").unwrap_or(99.0);
        eprintln!("dropslow {} {} free {} sim {:?} {:?} ours {:.2} {:.2}  peak {:.2} geometric {:.2}", row.number, row.text("wheels"), p.masses.axle > 0.0, row.maybe("slow_roll_deg"), row.maybe("slow_pitch_deg"), (r1-r0).to_degrees(), (p1-p0).to_degrees(), peak, (row.number("drop_m")/2.0/row.number("half_track_m")).atan().to_degrees());
    }
}
