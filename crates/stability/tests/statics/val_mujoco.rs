use crate::peers::{peer, rows};
use evidence::Silent;
use geometry::DVec3;
use stability::wind::WindLoad;
use stability::*;
const TABLE: &str = include_str!("../../../../validation/statics/tipping_onset.csv");

#[test]
fn val_onset_aslant() {
    for row in rows(TABLE, 60) {
        let p = peer(&row);
        let lines = tipping_lines(&p.machine, p.stance);
        let azimuth = row.number("azimuth_deg").to_radians();
        let rigid = onset(&p.masses, &lines, azimuth).unwrap();
        let g = |t: f64| DVec3::new(t.sin() * azimuth.cos(), t.sin() * azimuth.sin(), -t.cos());
        let level = reactions(&p.machine, p.stance, &p.masses, LEVEL).force;
        let bis = |s: Springs| {
            let heights = [level[0] / s.front, level[1] / s.front, level[2] / s.rear, level[3] / s.rear];
            let (mut low, mut high) = (0.0, 1.2);
            while high - low > 1e-5 {
                let m = 0.5 * (low + high);
                if matches!(on_springs(&p.machine, p.stance, &p.masses, g(m), s, heights), OnSprings::Stands { .. }) { low = m } else { high = m }
            }
            f64::to_degrees(low)
        };
        let soft = bis(p.springs);
        let hard = bis(Springs { front: 1e7, rear: 1e7 });
        let loading = Loading { masses: p.masses, gravity: LEVEL, wind: WindLoad::NONE };
        let worst = lines.iter().map(|l| tilt_reserve_on_springs(&p.machine, p.stance, &loading, l, p.springs).to_degrees()).fold(99.0, f64::min);
        // reactions rigid onset
        let (mut low, mut high) = (0.0, 1.3);
        while high - low > 1e-5 {
            let m = 0.5 * (low + high);
            if reactions(&p.machine, p.stance, &p.masses, g(m)).stands { low = m } else { high = m }
        }
        let _ = &Silent;
        eprintln!("{:>2} {} {} az {:.0}: mj hard {:.2} {} ours rigid {:+.2} {:?} springs-hard {:+.2} reactions {:+.2} | mj tyres {:.2} springs {:+.2} worst {:.2}", row.number, row.text("rear_axle"), row.text("held_by"), row.number("azimuth_deg"),
            row.number("hard_onset_deg"), row.text("hard_over"), rigid.tilt.to_degrees() - row.number("hard_onset_deg"), rigid.over, hard - row.number("hard_onset_deg"), low.to_degrees() - row.number("hard_onset_deg"),
            row.number("tyres_onset_deg"), soft - row.number("tyres_onset_deg"), worst);
    }
}
