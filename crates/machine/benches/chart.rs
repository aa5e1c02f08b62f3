//! Reading a chart, against the search through all of its edges and the target of 100 ns. Prints
//! nanoseconds and the ratio of one run. The answers of both are compared on every point.
#![allow(missing_docs, clippy::unwrap_used, clippy::print_stdout, clippy::panic, reason = "a bench prints")]
#![allow(clippy::disallowed_methods, reason = "a bench reads the clock")]

use geometry::DVec2;
use machine::{Chart, ChartPoint};
use std::hint::black_box;
use std::time::Instant;

/// Pseudo-random numbers from 0 to 1: the same points in every run.
struct Numbers(u64);

impl Numbers {
    fn next(&mut self) -> f64 {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 11) as f64 / (1_u64 << 53) as f64
    }
}

/// Boxes of the size that a lift's uncertainty has, and points, over the chart and a little beyond.
fn points(chart: &Chart) -> Vec<ChartPoint> {
    let corners = || chart.zones.iter().flat_map(|z| z.outline.iter().copied());
    let (low, high) = (corners().fold(DVec2::INFINITY, DVec2::min), corners().fold(DVec2::NEG_INFINITY, DVec2::max));
    let mut numbers = Numbers(7);
    (0..4096)
        .map(|_| {
            let at = low - 0.3 + (high - low + 0.6) * DVec2::new(numbers.next(), numbers.next());
            let size = DVec2::new(0.1 + 0.4 * numbers.next(), 0.1 + 0.2 * numbers.next());
            ChartPoint { at, low: at - 0.1, high: at + size }
        })
        .collect()
}

/// Nanoseconds a reading, median of 31 runs over all points.
fn nanoseconds(points: &[ChartPoint], read: impl Fn(&ChartPoint) -> machine::Reading) -> f64 {
    let mut times: Vec<f64> = (0..31)
        .map(|_| {
            let start = Instant::now();
            for p in points {
                black_box(read(black_box(p)));
            }
            start.elapsed().as_secs_f64() * 1e9 / points.len() as f64
        })
        .collect();
    times.sort_by(f64::total_cmp);
    times[times.len() / 2]
}

fn main() {
    let root = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../../examples/demo-job/machines");
    println!("reading a box on a chart, median of 31 runs over 4096 boxes; target 100 ns");
    for file in ["demo-7.toml", "demo-14.toml"] {
        let bytes = std::fs::read(root.join(file)).unwrap();
        let (machine, _) = jobfile::read_machine(file, &bytes).unwrap_or_else(|f| panic!("{:?}", f.list));
        for chart in &machine.charts {
            let boxes = points(chart);
            let exact: Vec<_> = boxes.iter().map(|b| ChartPoint::exact(b.at)).collect();
            for (what, points) in [("boxes", &boxes), ("points", &exact)] {
                assert!(points.iter().all(|p| chart.read(p) == chart.read_by_search(p)), "{file}: answers differ");
                let (read, search) =
                    (nanoseconds(points, |p| chart.read(p)), nanoseconds(points, |p| chart.read_by_search(p)));
                println!(
                    "  {file:<13} {:<6} {:?}, {:>2} zones, {what:<6}: {read:>6.1} ns, {:.2} of the target; the search {search:>7.1} ns, {:.1} times",
                    chart.attachment,
                    chart.support,
                    chart.zones.len(),
                    read / 100.0,
                    search / read,
                );
            }
            let start = Instant::now();
            for _ in 0..50 {
                black_box(Chart::new((**chart).clone()));
            }
            println!("    preparing it for reading: {:.0} µs", start.elapsed().as_secs_f64() * 1e6 / 50.0);
        }
    }
}
