//! What an incident row leaves open, filled from the demo job: its first lift, which is a go, with its
//! machine, load, ground and landing changed in memory.

use crate::never_pass::demo;
use crate::sampled::Seeded;
use evidence::Ranged;
use geometry::DVec2;
use machine::Chart;
use planning::{Job, check_lift};
use quantity::{Si, kilograms, kilovolts};
use site::{Grid, Ground, GroundSource, Span, Terrain};

/// Falls of the ground under a stand, degrees: nose up, and down to the left.
#[derive(Debug, Clone, Copy, Default)]
pub(crate) struct Slope {
    pub(crate) nose_up: f64,
    pub(crate) left_down: f64,
}

impl Slope {
    /// As steep as nobody would notice: within half a degree.
    pub(crate) fn level(random: &mut Seeded) -> Self {
        Self { nose_up: random.within(-0.5, 0.5), left_down: random.within(-0.5, 0.5) }
    }
    /// So steep, falling any way.
    pub(crate) fn any_way(random: &mut Seeded, degrees: f64) -> Self {
        let (sin, cos) = random.within(0.0, std::f64::consts::TAU).sin_cos();
        Self { nose_up: degrees * cos, left_down: degrees * sin }
    }
}

/// A hole beside the rear left wheel, which has gone into it: so deep, m.
pub(crate) type Hole = f64;

/// One lift of the demo's larger machine with forks, heading north, all in order.
pub(crate) fn lift() -> Job {
    let mut job = demo();
    job.lifts.truncate(1);
    job.landings[0].rating.as_mut().unwrap().mass = Some(kilograms(20_000.0));
    job
}

/// Height of the ground where the front axle stands, m.
pub(crate) const LEVEL: f64 = 100.0;

/// Puts the machine `away` m short of the landing's middle, which is `up` m above the ground there.
pub(crate) fn place(job: &mut Job, slope: Slope, hole: Hole, up: f64, away: f64) {
    let landing = &mut job.landings[0];
    landing.level = LEVEL + up;
    let stand = landing.at - DVec2::new(0.0, away);
    job.lifts[0].stand.at = stand;
    let [along, across] = [slope.nose_up, slope.left_down].map(|d: f64| d.to_radians().tan());
    let (cell, half, count) = (0.25, 20.0, 161);
    let heights = (0..count * count)
        .map(|i| {
            let (east, north) = (f64::from(i % count) * cell - half, half - f64::from(i / count) * cell);
            let sunk = if east < -0.5 && north < -2.0 { hole } else { 0.0 };
            (LEVEL + along * north + across * east - sunk) as f32
        })
        .collect();
    let size = count as usize;
    let north_west = stand + DVec2::new(-half, half);
    let grid = Grid { north_west, cell: DVec2::splat(cell), rows: size, cols: size, heights };
    let source = GroundSource { name: "filler".into(), terrain: Terrain::Grid(grid), accuracy: 0.02, date: None };
    job.ground = Ground { surfaces: vec![source] };
}

/// The load weighs so much, known to 2 %.
pub(crate) fn weighs(job: &mut Job, kg: f64) {
    job.loads[0].mass_kg = Ranged::shares(kg, 0.02, 0.02);
}

/// The load hangs by slings that carry it, from whatever attachment the lift has.
pub(crate) fn hangs(job: &mut Job) {
    let mut hanging = job.loads.iter().find_map(|l| l.hanging.clone()).unwrap();
    hanging.leg_limit = kilograms(10_000.0);
    job.loads[0].hanging = Some(hanging);
}

/// The load hangs from the hook of the machine's jib, so far below it.
pub(crate) fn hooked(job: &mut Job, drop: f64) {
    hangs(job);
    job.loads[0].hanging.as_mut().unwrap().drop = drop;
    job.lifts[0].attachment = "jib".into();
}

/// The only overhead line, straight from one place to another, each east and north of the stand, and so high above
/// the ground at the stand, m; surveyed as the demo's line.
pub(crate) fn line(job: &mut Job, ends: [DVec2; 2], up: f64, kv: f64) {
    let at = job.lifts[0].stand.at;
    let [from, to] = ends.map(|e| (at + e).extend(LEVEL + up));
    let mut line = job.lines.remove(0);
    line.spans = vec![Span { from, to, sag: 0.0 }];
    line.voltage = Some(kilovolts(kv));
    job.lines = vec![line];
}

/// A line across the heading, so far ahead of the stand.
pub(crate) fn line_across(job: &mut Job, ahead: f64, up: f64, kv: f64) {
    line(job, [DVec2::new(-40.0, ahead), DVec2::new(40.0, ahead)], up, kv);
}

/// Every charted capacity and plate of the machine times `share`.
pub(crate) fn rated(job: &mut Job, share: f64) {
    let machine = &mut job.machines[0].machine;
    let more = |m: quantity::Mass| kilograms(m.si() * share);
    machine.greatest_capacity = more(machine.greatest_capacity);
    for attachment in &mut machine.attachments {
        attachment.capacity = more(attachment.capacity);
    }
    for chart in &mut machine.charts {
        let mut parts = (**chart).clone();
        for zone in &mut parts.zones {
            zone.capacity = more(zone.capacity);
        }
        *chart = Chart::new(parts);
    }
}

/// Distances of the stand, m, at which the chart that counts gives a capacity within `from` to `to` kg.
pub(crate) fn distances(job: &Job, slope: Slope, up: f64, from: f64, to: f64) -> Vec<f64> {
    let mut probe = job.clone();
    // A feather: whatever the chart gives is then said as its capacity.
    probe.loads[0].mass_kg = Ranged::exact(1.0);
    let mut charted = |away: f64| {
        place(&mut probe, slope, 0.0, up, away);
        let check = check_lift(&probe, &probe.lifts[0]).unwrap().findings();
        check.iter().find(|f| f.check == "chart").and_then(|f| f.limit).map_or(0.0, |l| l.si)
    };
    let all: Vec<(f64, f64)> = (0..56).map(|i| 2.4 + f64::from(i) * 0.1).map(|away| (away, charted(away))).collect();
    let there: Vec<f64> = all.iter().filter(|(_, kg)| (from..=to).contains(kg)).map(|(away, _)| *away).collect();
    assert!(!there.is_empty(), "no stand where the chart gives {from} to {to} kg {up} m up: {all:.1?}");
    there
}

/// The surveyed ground falls by `deep` m west of so far east of the stand.
pub(crate) fn ditch(job: &mut Job, east: f64, deep: f64) {
    let stand = job.lifts[0].stand.at;
    let Terrain::Grid(grid) = &mut job.ground.surfaces[0].terrain else { panic!("placed before") };
    for (i, height) in grid.heights.iter_mut().enumerate() {
        let at = grid.north_west.x + (i % grid.cols) as f64 * grid.cell.x;
        if at < stand.x + east {
            *height -= deep as f32;
        }
    }
}
