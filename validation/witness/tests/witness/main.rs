//! x
#[test] fn explore() {
    use stability::*; use machine::*; use witness::*;
    let root = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../machines/r1.toml");
    let bytes = std::fs::read(root).unwrap();
    let m = jobfile::read_machine("r1", &bytes).map_err(|e| format!("{:?}", e.list)).unwrap().0;
    let a = &m.attachments[0];
    for (ang, ext, mass) in [(60.0f64, 3.0, 3000.0), (30.0, 4.0, 1500.0)] {
        let boom = BoomPosition::level(ang.to_radians(), ext);
        let at = kinematics::tool_point(&m.boom, a, boom) + geometry::DVec3::new(0.61, 0.2, 0.5);
        let load = LoadOnBoom { mass, at };
        for rear in [RearAxleState::Locked, RearAxleState::Free] {
            let stance = Stance::from(Support { state: SupportState::Tyres, rear });
            let q = Question { machine: &m, attachment: a, boom, load: Some(load), stance };
            let masses = Masses::standing(&m, a, boom, stance).with(load);
            let k = Springs { front: 1.2e6, rear: 0.9e6 };
            for kk in [1e6; 0] { let give = soft::Give { front: kk, rear: kk, heights: [0.0; 4] }; let s = Springs { front: kk, rear: kk };
 for t in [0.0, 0.1] { println!("{kk:e} {t} {:?} {:?} {:?}", reactions(&m, stance, &masses, gravity(t, 1.5708)).force.map(f64::round), on_springs(&m, stance, &masses, gravity(t, 1.5708), s, [0.0;4]), soft::rest(&q, give, soft::Hold::ByWeight, t, 1.5708)); } }
            let give = soft::Give { front: k.front, rear: k.rear, heights: [0.0, 0.02, 0.03, 0.0] };
            for az in [0.0f64, 90.0] {
                let az = az.to_radians();
                let stands = |t: f64| matches!(on_springs(&m, stance, &masses, gravity(t, az), k, give.heights), OnSprings::Stands{..});
                let (mut l, mut h) = (0.0, 1.0);
                if !stands(l) { h = 0.0 }
                while h-l > 1e-5 { let mid = (l+h)/2.0; if stands(mid) { l = mid } else { h = mid } }
                if az == 0.0 { for k2 in 0..8 { let t = l - 0.004 + 0.002 * k2 as f64; println!("   {:.3} {:?} {:?}", t.to_degrees(), on_springs(&m, stance, &masses, gravity(t, az), k, give.heights), soft::rest(&q, give, soft::Hold::ByWeight, t, az)); } }
                let lines = tipping_lines(&m, stance);
                let ours = onset(&masses, &lines, az).unwrap();
                let t = std::time::Instant::now();
                let w: Vec<_> = [soft::Hold::ByWeight, soft::Hold::Front, soft::Hold::Rear].iter().map(|h|
                    soft::onset(&q, give, *h, az).map(|x| (x.to_degrees()*1000.0).round()/1000.0)).collect();
                println!("{ang} {rear:?} az {:.0}: rigid {:.3} {:?} springs {:.3} engine {:?}  {:.2} s", az.to_degrees(), ours.tilt.to_degrees(), ours.over, l.to_degrees(), w, t.elapsed().as_secs_f64());
                let tilt = 0.6 * l;
                let OnSprings::Stands { force, roll, pitch } = on_springs(&m, stance, &masses, gravity(tilt, az), k, give.heights) else { continue };
                println!("    {:?} {:.4}", force.map(f64::round), roll.hypot(pitch).to_degrees());
                for h in [soft::Hold::ByWeight, soft::Hold::Front, soft::Hold::Rear] {
                    println!("    {:?}", soft::rest(&q, give, h, tilt, az).map(|r| (r.force.map(f64::round), r.turned.to_degrees())));
                }
            }
        }
    }
}
