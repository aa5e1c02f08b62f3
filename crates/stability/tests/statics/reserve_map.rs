//! The map against one cell at a time by the public functions, and what it flags.

use crate::fit::machines;
use geometry::DVec3;
use machine::{Chart, ChartParts, ChartPoint, Machine, Reading, kinematics};
use quantity::{Si, kilograms};
use stability::{
    CellFlag, LoadOnBoom, MapAsk, Masses, RearAxleState, Support, TipsOver, level_tipping_load, onset, reserve_map,
    tipping_lines,
};

/// The chart with all capacities so many times as large.
fn times(chart: &Chart, factor: f64) -> Chart {
    let parts: &ChartParts = chart;
    let mut parts = parts.clone();
    for zone in &mut parts.zones {
        zone.capacity = kilograms(zone.capacity.si() * factor);
    }
    Chart::new(parts)
}

fn charts(all: &[(String, Machine)]) -> impl Iterator<Item = (&str, &Machine, &Chart)> {
    all.iter().flat_map(|(name, m)| m.charts.iter().map(move |c| (name.as_str(), m, c)))
}

#[test]
fn every_cell_is_what_the_statics_say_there() {
    let all = machines();
    for (name, machine, chart) in charts(&all) {
        let attachment = machine.attachment(&chart.attachment).unwrap();
        for rear in [RearAxleState::Free, RearAxleState::Locked] {
            let ask = MapAsk { cells: [17, 13], rear, margin: None };
            let map = reserve_map(machine, attachment, chart, ask).unwrap();
            let lines = tipping_lines(machine, Support { state: chart.support, rear });
            let mut known = 0;
            for (i, cell) in map.values.iter().enumerate() {
                let at = map.middle(i);
                let charted = match chart.read_by_search(&ChartPoint::exact(at)) {
                    Reading::Within { capacity_kg, .. } => Some(capacity_kg),
                    Reading::Outside => None,
                };
                let tool = chart.tool_at(machine, attachment, at);
                let boom = kinematics::position_for(&machine.boom, attachment, tool, 0.0).ok();
                let (Some(charted), Some(boom)) = (charted, boom) else {
                    assert!(cell.is_none(), "{name} {at}");
                    continue;
                };
                let cell = cell.unwrap();
                known += 1;
                let centre = chart.load_centre.si();
                let up = chart.load_centre_height.map_or(centre, |h| h.si());
                let at = kinematics::tool_point(&machine.boom, attachment, boom) + DVec3::new(centre, 0.0, up);
                let bare = Masses::of(machine, attachment, boom);
                assert_eq!(cell.charted, charted);
                let tipping = level_tipping_load(&bare, &lines[0], at).unwrap_or(f64::INFINITY);
                assert!(tipping == cell.tipping || (tipping - cell.tipping).abs() < 1e-6 * tipping, "{name}");
                // The least over all directions, swept.
                let masses = bare.with(LoadOnBoom { mass: charted, at });
                let swept = |sides: [TipsOver; 2]| {
                    let lines: Vec<_> = lines.iter().copied().filter(|l| sides.contains(&l.over)).collect();
                    (0..720)
                        .filter_map(|k| onset(&masses, &lines, (f64::from(k) * 0.5).to_radians()))
                        .map(|o| o.tilt)
                        .fold(f64::INFINITY, f64::min)
                };
                for (got, swept) in [
                    (cell.fore_aft, swept([TipsOver::Front, TipsOver::Rear])),
                    (cell.sideways, swept([TipsOver::Left, TipsOver::Right])),
                ] {
                    assert!(
                        got.max(0.0) <= swept + 1e-9 && swept < got.max(0.0) * 1.0001 + 1e-6,
                        "{name} {got} {swept}"
                    );
                }
            }
            assert!(known > 40, "{name}: {known}");
        }
    }
}

#[test]
fn a_capacity_that_tips_it_is_flagged_and_a_margin_only_where_stated() {
    let all = machines();
    for (name, machine, chart) in charts(&all) {
        let attachment = machine.attachment(&chart.attachment).unwrap();
        let flags = |chart: &Chart, margin| {
            let ask = MapAsk { cells: [30, 30], rear: RearAxleState::Free, margin };
            let map = reserve_map(machine, attachment, chart, ask).unwrap();
            let count = |flag| map.known().filter(|(_, c)| c.flag == flag).count();
            (count(CellFlag::None), count(CellFlag::BelowMargin), count(CellFlag::Tips))
        };
        // The charts keep 1.33 (validation), at most with what the boom's flex takes.
        let (none, below, tips) = flags(chart, Some(1.33));
        assert!(none > 100 && below == 0 && tips == 0, "{name}: {none} {below} {tips}");
        assert!(flags(chart, Some(30.0)).1 > 100, "{name}");
        assert_eq!(flags(&times(chart, 1.2), None).1, 0, "{name}");
        assert!(flags(&times(chart, 6.0), None).2 > 50, "{name}");
    }
}

#[test]
fn a_map_is_bounded_and_a_chart_without_zones_has_none() {
    let all = machines();
    let (_, machine, chart) = charts(&all).next().unwrap();
    let attachment = machine.attachment(&chart.attachment).unwrap();
    let ask = |cells| MapAsk { cells, rear: RearAxleState::Free, margin: None };
    let map = reserve_map(machine, attachment, chart, ask([0, 7])).unwrap();
    assert_eq!((map.cells, map.values.len()), ([1, 7], 7));
    assert_eq!(reserve_map(machine, attachment, chart, ask([usize::MAX, 1])).unwrap().cells, [1000, 1]);
    let mut parts = ChartParts::clone(chart);
    parts.zones.clear();
    assert!(reserve_map(machine, attachment, &Chart::new(parts), ask([9, 9])).is_none());
}
