//! The map of a chart against statics, 200 × 200 cells, against one cell at a time by the public functions with
//! tilts swept by degrees, and the target of 0.5 s. Prints milliseconds and the ratio of one run; the
//! answers of both are compared.
#![allow(missing_docs, clippy::unwrap_used, clippy::print_stdout, clippy::panic, reason = "a bench prints")]
#![allow(clippy::disallowed_methods, reason = "a bench reads the clock")]

use geometry::DVec3;
use machine::{Attachment, Chart, ChartPoint, Machine, Reading, kinematics};
use quantity::Si;
use stability::{
    LoadOnBoom, MapAsk, Masses, RearAxleState, ReserveMap, Support, level_tipping_load, onset, reserve_map,
    tipping_lines,
};
use std::hint::black_box;
use std::time::Instant;

/// Tipping load (kg) and least tilt (rad) of a cell, the long way.
fn by_search(machine: &Machine, tool: &Attachment, chart: &Chart, map: &ReserveMap, i: usize) -> Option<(f64, f64)> {
    let at = map.middle(i);
    let Reading::Within { capacity_kg: mass, .. } = chart.read_by_search(&ChartPoint::exact(at)) else { return None };
    let target = chart.tool_at(machine, tool, at);
    let boom = kinematics::position_for(&machine.boom, tool, target, 0.0).ok()?;
    let lines = tipping_lines(machine, Support { state: chart.support, rear: RearAxleState::Free });
    let centre = chart.load_centre.si();
    let up = chart.load_centre_height.map_or(centre, |h| h.si());
    let at = kinematics::tool_point(&machine.boom, tool, boom) + DVec3::new(centre, 0.0, up);
    let bare = Masses::of(machine, tool, boom);
    let masses = bare.with(LoadOnBoom { mass, at });
    let tilt = (0..360)
        .filter_map(|k| onset(&masses, &lines, f64::from(k).to_radians()))
        .map(|o| o.tilt)
        .fold(f64::INFINITY, f64::min);
    Some((level_tipping_load(&bare, &lines[0], at).unwrap_or(f64::INFINITY), tilt))
}

fn main() {
    let root = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../../examples/machines");
    println!("a chart against statics, 200 × 200 cells, median of 9 runs; target 500 ms");
    for file in ["stork-18.toml", "pelican-12t.toml"] {
        let bytes = std::fs::read(root.join(file)).unwrap();
        let (machine, _) = jobfile::read_machine(file, &bytes).unwrap_or_else(|f| panic!("{:?}", f.list));
        for chart in &machine.charts {
            let tool = machine.attachment(&chart.attachment).unwrap();
            let ask = MapAsk { cells: [200, 200], rear: RearAxleState::Free, margin: Some(1.33) };
            let mut times: Vec<f64> = (0..9)
                .map(|_| {
                    let start = Instant::now();
                    black_box(reserve_map(&machine, tool, chart, ask));
                    start.elapsed().as_secs_f64() * 1e3
                })
                .collect();
            times.sort_by(f64::total_cmp);
            let map = reserve_map(&machine, tool, chart, ask).unwrap();
            let start = Instant::now();
            let searched: Vec<_> = (0..map.values.len()).map(|i| by_search(&machine, tool, chart, &map, i)).collect();
            let search = start.elapsed().as_secs_f64() * 1e3;
            for (cell, searched) in map.values.iter().zip(&searched) {
                assert_eq!(cell.is_some(), searched.is_some(), "{file}: answers differ");
                if let (Some(cell), Some((tipping, tilt))) = (cell, searched) {
                    let least = cell.fore_aft.min(cell.sideways).max(0.0);
                    let same = cell.tipping == *tipping || (cell.tipping - tipping).abs() <= 1e-9 * tipping;
                    assert!(same && least <= tilt + 1e-9 && *tilt <= least * 1.001 + 1e-6, "{file}: answers differ");
                }
            }
            println!(
                "  {file:<16} {:<6} {:?}, {} cells known: {:.1} ms, {:.3} of the target; the search {search:.0} ms, {:.0} times",
                chart.attachment,
                chart.support,
                map.known().count(),
                times[4],
                times[4] / 500.0,
                search / times[4],
            );
        }
    }
}
