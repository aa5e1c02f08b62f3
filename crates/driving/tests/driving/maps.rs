//! Seeded maps that `validation/driving/ompl_routes.cpp` makes too: whole numbers only, so that both are alike.

use crate::seeded::SplitMix64;
use driving::{GridMap, PlanBox, PlanPose, Raster, RasterFrame, SteeredAxle, Turning, Vehicle};
use geometry::DVec2;

pub(crate) const CELL: f64 = 0.25;

/// A map with start and target.
pub(crate) struct Case {
    pub(crate) map: GridMap<u8>,
    pub(crate) vehicle: Vehicle,
    pub(crate) from: PlanPose,
    pub(crate) to: PlanPose,
}

/// An invented machine: 3 m between the axles, 6.3 m long with forks and load.
pub(crate) fn vehicle() -> Vehicle {
    Vehicle {
        wheelbase: 3.0,
        turning: Turning { steered: SteeredAxle::Front, two_wheel: None, four_wheel: Some(2.8), crab: None },
        outline: vec![
            PlanBox { rear: -3.9, front: 0.8, half_width: 1.2 },
            PlanBox { rear: 0.8, front: 2.4, half_width: 0.6 },
        ],
    }
}

/// A square of `n` cells a side: boxes of 1 to 8 m, none within 6 m of start and target; with hills, and what is
/// near boxes, dearer.
pub(crate) fn case(seed: u64, n: usize, hills: bool) -> Case {
    let mut rng = SplitMix64(seed);
    let mut below = |most: usize| (rng.next() % most as u64) as usize;
    let eighth = n / 8;
    let ends = [eighth, 6 * eighth].map(|base| {
        let (col, row) = (base + below(eighth), base + below(eighth));
        (col, row, below(360))
    });
    let mut why = vec![None; n * n];
    for _ in 0..n * n * 3 / 5000 {
        let (w, h) = (4 + below(29), 4 + below(29));
        let (c0, r0) = (below(n - w), below(n - h));
        let near =
            |&(c, r, _): &(usize, usize, usize)| c + 24 >= c0 && c <= c0 + w + 24 && r + 24 >= r0 && r <= r0 + h + 24;
        if ends.iter().any(near) {
            continue;
        }
        for row in r0..r0 + h {
            why[row * n + c0..row * n + c0 + w].fill(Some(1));
        }
    }
    let mut costs = vec![1.0_f32; n * n];
    if hills {
        for _ in 0..12 {
            let (c, r, size) = (below(n), below(n), n / 16 + below(n / 8));
            for (i, cost) in costs.iter_mut().enumerate() {
                let (dc, dr) = ((i % n).abs_diff(c), (i / n).abs_diff(r));
                let share = (dc * dc + dr * dr) as f64 / (size * size) as f64;
                *cost += (1.5 * (1.0 - share).max(0.0)) as f32;
            }
        }
    }
    let frame = RasterFrame { corner: DVec2::ZERO, cell: CELL, cols: n, rows: n };
    let vehicle = vehicle();
    let map = GridMap::new(Raster::new(frame, why, 0), &vehicle, 1.5);
    let map = if hills { map.with_costs(costs).dearer_near(3.0, 1.0) } else { map };
    let pose = |(col, row, degrees): (usize, usize, usize)| {
        PlanPose::new((col as f64 + 0.5) * CELL, (row as f64 + 0.5) * CELL, (degrees as f64).to_radians())
    };
    Case { map, vehicle, from: pose(ends[0]), to: pose(ends[1]) }
}
