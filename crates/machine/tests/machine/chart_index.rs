//! The index reads what the search through every edge reads, and readings only fall where less is known.

use crate::chart_reading::{chart, square, zone};
use geometry::DVec2;
use machine::{Chart, ChartPoint, Reading, Zone};
use proptest::prelude::*;

/// A chart of a few polygons that may overlap, leave gaps, share edges or lie apart.
fn any_chart() -> impl Strategy<Value = (Vec<Zone>, Vec<Vec<DVec2>>)> {
    let corner = (0..13_i32, 0..13_i32).prop_map(|(x, y)| DVec2::new(f64::from(x) * 0.8, f64::from(y) * 0.8));
    let free = (0.0..10.0_f64, 0.0..10.0_f64).prop_map(|(x, y)| DVec2::new(x, y));
    let triangle = prop::collection::vec(prop_oneof![corner, free], 3..6);
    let on_grid = (0..10_i32, 0..10_i32, 1..6_i32, 1..6_i32).prop_map(|(x, y, w, h)| {
        let at = |i: i32| f64::from(i) * 0.8;
        square(at(x), at(y), at(x + w), at(y + h)).map(DVec2::from_array).to_vec()
    });
    let outline = prop_oneof![2 => on_grid.clone(), 1 => triangle];
    let zones = prop::collection::vec((outline, 1..8_i32), 1..9).prop_map(|list| {
        let zone = |(i, (outline, kg)): (usize, (Vec<DVec2>, i32))| Zone {
            name: i.to_string(),
            capacity: quantity::kilograms(f64::from(kg) * 500.0),
            outline,
        };
        list.into_iter().enumerate().map(zone).collect()
    });
    (zones, prop::collection::vec(on_grid, 0..2))
}

/// A box anywhere, often with corners on the grid of the outlines, and often a point or a line.
fn any_box() -> impl Strategy<Value = ChartPoint> {
    let at = prop_oneof![(-1.0..12.0_f64), (-1..14_i32).prop_map(|i| f64::from(i) * 0.8)];
    let size = prop_oneof![2 => Just(0.0), 2 => 0.0..1.0_f64, 1 => (0..5_i32).prop_map(|i| f64::from(i) * 0.8), 1 => 0.0..6.0_f64];
    (at.clone(), at, size.clone(), size).prop_map(|(x, y, w, h)| {
        let low = DVec2::new(x, y);
        ChartPoint { at: low, low, high: low + DVec2::new(w, h) }
    })
}

fn kg(chart: &Chart, point: &ChartPoint) -> f64 {
    match chart.read(point) {
        Reading::Within { capacity_kg, .. } => capacity_kg,
        Reading::Outside => 0.0,
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(600))]

    #[test]
    fn the_index_reads_what_the_search_reads(
        (zones, areas) in any_chart(), points in prop::collection::vec(any_box(), 40),
    ) {
        let c = chart(zones, areas);
        for p in &points {
            prop_assert_eq!(c.read(p), c.read_by_search(p), "{:?}", p);
        }
    }

    #[test]
    fn never_more_than_a_zone_that_holds_the_point((zones, areas) in any_chart(), p in any_box()) {
        let c = chart(zones.clone(), areas);
        let read = kg(&c, &p);
        for z in zones {
            let alone = chart(vec![z], vec![]);
            if let Reading::Within { capacity_kg, .. } = alone.read(&ChartPoint::exact(p.low.midpoint(p.high))) {
                prop_assert!(read <= capacity_kg);
            }
        }
    }

    #[test]
    fn less_in_the_file_or_more_doubt_never_reads_more(
        (zones, areas) in any_chart(), p in any_box(), grow in 0.0..1.5_f64, which in 0..9_usize, share in 0.1..1.0_f64,
        area in any_box(),
    ) {
        let before = chart(zones.clone(), areas.clone());
        let read = kg(&before, &p);
        let grown = ChartPoint { at: p.at, low: p.low - grow, high: p.high + grow };
        prop_assert!(kg(&before, &grown) <= read, "a larger box");

        let which = which % zones.len();
        let mut lower = zones.clone();
        lower[which].capacity *= share;
        prop_assert!(kg(&chart(lower, areas.clone()), &p) <= read, "a lower capacity");

        let mut forbidden = areas.clone();
        forbidden.push(square(area.low.x, area.low.y, area.high.x + 0.1, area.high.y + 0.1).map(DVec2::from_array).to_vec());
        prop_assert!(kg(&chart(zones.clone(), forbidden), &p) <= read, "an area not permitted");

        // A zone that shares no ground with another, read by a box that does not end on its border: there
        // the neighbour alone would be read. Nor one so narrow that its gap counts as a drawing error.
        let gone = zones[which].clone();
        let mut fewer = zones;
        fewer.remove(which);
        let plain = !before.zones.iter().any(|z| machine::outline_is_bad(&z.outline));
        if plain && is_wide(&gone.outline) && fewer.iter().all(|z| apart(z, &gone)) {
            let off = ChartPoint { at: p.at, low: p.low + 0.0137, high: p.high + 0.0191 };
            prop_assert!(kg(&chart(fewer, areas), &off) <= kg(&before, &off), "a zone taken out");
        }
    }
}

fn is_wide(outline: &[DVec2]) -> bool {
    let edges = || (0..outline.len()).map(|i| (outline[i], outline[(i + 1) % outline.len()]));
    let area: f64 = edges().map(|(a, b)| a.perp_dot(b) / 2.0).sum();
    area.abs() > 0.02 * edges().map(|(a, b)| a.distance(b)).sum::<f64>()
}

/// True if the boxes around two zones share no ground.
fn apart(a: &Zone, b: &Zone) -> bool {
    let low = |z: &Zone| z.outline.iter().fold(DVec2::INFINITY, |l, q| l.min(*q));
    let high = |z: &Zone| z.outline.iter().fold(DVec2::NEG_INFINITY, |h, q| h.max(*q));
    let (from, to) = (low(a).max(low(b)), high(a).min(high(b)));
    from.x >= to.x || from.y >= to.y
}

/// Outlines may run either way round: the border of all together is the same.
#[test]
fn outlines_that_turn_right_count_as_those_that_turn_left() {
    let zones = [
        zone("A", 500.0, &[[0.0, 0.8], [0.0, 1.6], [1.0, 0.0]]),
        zone("B", 500.0, &square(4.0, 0.0, 5.6, 0.8)),
        zone("C", 500.0, &square(4.0, 0.0, 7.2, 0.8)),
    ];
    let beyond = ChartPoint { at: DVec2::new(4.2, 0.0), low: DVec2::new(4.198, 0.01), high: DVec2::new(4.21, 0.95) };
    assert_eq!(chart(zones.to_vec(), vec![]).read(&beyond), Reading::Outside);
    let turned = zones.map(|mut z| {
        z.outline.reverse();
        z
    });
    assert_eq!(chart(turned.to_vec(), vec![]).read(&beyond), Reading::Outside);
}

#[test]
fn thin_and_flat_outlines_do_not_lose_edges() {
    // An edge that rises by less than any rounding, and one longer than the grid's cells.
    let c = chart(
        vec![
            zone("A", 900.0, &[[0.0, 0.0], [40.0, 1e-300], [40.0, 30.0], [0.0, 30.0]]),
            zone("B", 500.0, &[[40.0, 1e-300], [80.0, 0.0], [80.0, 30.0], [40.0, 30.0]]),
        ],
        vec![],
    );
    for (x, y) in [(20.0, 0.0), (40.0, 1.0), (79.0, 29.5), (60.0, 0.0), (39.999, 30.0)] {
        for half in [0.0, 0.05, 0.7] {
            let at = DVec2::new(x, y);
            let p = ChartPoint { at, low: at - half, high: at + half };
            assert_eq!(c.read(&p), c.read_by_search(&p), "{at} ± {half}");
        }
    }
}
