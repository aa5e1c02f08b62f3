//! The onset of tipping in closed form against stepping the same machine through the engine until it
//! falls. Prints microseconds and ratios of one run.
#![allow(missing_docs, clippy::unwrap_used, clippy::print_stdout, reason = "a bench prints")]

use machine::{BoomPosition, SupportState, kinematics};
use stability::{
    LoadOnBoom, Masses, OnSprings, RearAxleState, Springs, Stance, Support, on_springs, onset, tipping_lines,
};
use std::hint::black_box;
use std::time::Instant;
use witness::{HeldBy, Question, gravity, rigid, soft};

fn seconds<T>(times: u32, mut run: impl FnMut() -> T) -> f64 {
    let start = Instant::now();
    for _ in 0..times {
        black_box(run());
    }
    start.elapsed().as_secs_f64() / f64::from(times)
}

fn main() {
    let path = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../machines/r1.toml");
    let (machine, _) =
        jobfile::read_machine("r1.toml", &std::fs::read(path).unwrap()).unwrap_or_else(|f| panic!("{:?}", f.list));
    let attachment = &machine.attachments[0];
    let boom = BoomPosition::level(60_f64.to_radians(), 3.0);
    let at = kinematics::tool_point(&machine.boom, attachment, boom) + geometry::DVec3::new(0.61, 0.1, 0.5);
    let load = LoadOnBoom { mass: 3000.0, at };
    let azimuth = 110_f64.to_radians();
    println!("R1 with 3000 kg at 60°, 3 m out, ground falling to the left and a little to the rear");
    for rear in [RearAxleState::Free, RearAxleState::Locked] {
        let stance = Stance::from(Support { state: SupportState::Tyres, rear });
        let question = Question { machine: &machine, attachment, boom, load: Some(load), stance };
        let masses = || Masses::standing(&machine, attachment, boom, stance).with(load);
        let ours = || onset(&masses(), &tipping_lines(&machine, stance), black_box(azimuth)).unwrap().tilt;
        let theirs = || rigid::onset(&question, HeldBy::Rear, azimuth).unwrap();
        let (fast, slow) = (seconds(100_000, ours), seconds(5, theirs));
        println!(
            "  rear axle {rear:?}, rigid: {:.3}° in {:.3} µs; engine {:.3}° in {:.0} µs: {:.0} times as long",
            ours().to_degrees(),
            fast * 1e6,
            theirs().to_degrees(),
            slow * 1e6,
            slow / fast
        );

        let springs = Springs { front: 1.2e6, rear: 0.9e6 };
        let give = soft::Give { front: springs.front, rear: springs.rear, heights: [0.0; 4] };
        let search = || {
            let (mut low, mut high) = (0.0, 0.8);
            while high - low > 4e-4 {
                let middle = f64::midpoint(low, high);
                let found = on_springs(&machine, stance, &masses(), gravity(middle, azimuth), springs, [0.0; 4]);
                if matches!(found, OnSprings::Stands { .. }) { low = middle } else { high = middle }
            }
            low
        };
        let theirs = || soft::onset(&question, give, soft::Hold::ByWeight, azimuth).unwrap();
        let (fast, slow) = (seconds(200, search), seconds(3, theirs));
        println!(
            "  rear axle {rear:?}, on springs: {:.3}° in {:.0} µs; engine {:.3}° in {:.0} µs: {:.0} times as long",
            search().to_degrees(),
            fast * 1e6,
            theirs().to_degrees(),
            slow * 1e6,
            slow / fast
        );
    }
}
