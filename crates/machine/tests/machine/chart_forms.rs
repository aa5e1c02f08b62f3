//! Tables and nested load lines, against what they say read off by other means.

use crate::chart_reading::{chart, square, zone};
use geometry::DVec2;
use machine::{
    Chart, ChartPoint, ChartTable, NestedFault, Reading, Sector, TableAxes, TableLine, Zone, chart_problems,
    nested_zones, table_areas, table_zones,
};
use proptest::prelude::*;

fn kg(chart: &Chart, at: DVec2) -> Option<f64> {
    match chart.read(&ChartPoint::exact(at)) {
        Reading::Within { capacity_kg, .. } => Some(capacity_kg),
        Reading::Outside => None,
    }
}

fn lines(at: &[f64]) -> Vec<TableLine> {
    at.iter().map(|at| TableLine { at: *at, label: at.to_string() }).collect()
}

/// Lines that rise from a start by random steps.
fn rising(start: f64, least: f64, most: f64) -> impl Strategy<Value = Vec<f64>> {
    prop::collection::vec(least..most, 1..6).prop_map(move |steps| {
        let mut at = start;
        std::iter::once(start)
            .chain(steps.into_iter().map(|s| {
                at += s;
                at
            }))
            .collect()
    })
}

fn entries(rows: usize, columns: usize) -> impl Strategy<Value = Vec<Vec<Option<f64>>>> {
    let entry = prop_oneof![1 => Just(None), 6 => (1..6_i32).prop_map(|k| Some(f64::from(k) * 500.0))];
    prop::collection::vec(prop::collection::vec(entry, columns), rows)
}

fn any_table(axes: TableAxes) -> impl Strategy<Value = ChartTable> {
    let (rows, columns) = match axes {
        TableAxes::HeightReach => (rising(-0.5, 0.4, 3.0), rising(0.3, 0.4, 3.0)),
        TableAxes::AngleExtension(_) => (rising(-0.1, 0.05, 0.35), rising(0.0, 0.3, 2.5)),
    };
    (rows, columns).prop_flat_map(move |(rows, columns)| {
        entries(rows.len(), columns.len()).prop_map(move |capacity_kg| ChartTable {
            rows: lines(&rows),
            columns: lines(&columns),
            capacity_kg,
            axes,
        })
    })
}

/// Lowest of the four entries around (row value, column value); `None` where one is missing.
fn lowest_around(table: &ChartTable, row: f64, column: f64) -> Option<f64> {
    let below = |lines: &[TableLine], at: f64| lines.windows(2).position(|w| w[0].at <= at && at <= w[1].at);
    let (r, c) = (below(&table.rows, row)?, below(&table.columns, column)?);
    let around = [(r, c), (r + 1, c), (r, c + 1), (r + 1, c + 1)].map(|(i, k)| table.capacity_kg[i][k]);
    around.into_iter().try_fold(f64::INFINITY, |least, entry| Some(least.min(entry?)))
}

fn as_chart(table: &ChartTable) -> Option<Chart> {
    let zones: Vec<Zone> = table_zones(table).into_iter().map(|z| z.zone).collect();
    (!zones.is_empty()).then(|| chart(zones, table_areas(table)))
}

const SECTOR: Sector = Sector { centre: DVec2::new(-2.4, 1.3), along: 4.1, below: 0.32 };

/// Share of the way between the first and the last line, kept off the lines themselves.
fn between(lines: &[TableLine], share: f64) -> f64 {
    let (first, last) = (lines[0].at, lines[lines.len() - 1].at);
    first + (last - first) * share
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(300))]

    #[test]
    fn a_table_of_height_and_reach_is_the_lowest_of_the_entries_around(
        table in any_table(TableAxes::HeightReach), points in prop::collection::vec((0.0..1.0_f64, 0.0..1.0_f64), 30),
    ) {
        let Some(c) = as_chart(&table) else { return Ok(()) };
        for (r, k) in points {
            let (row, column) = (between(&table.rows, r), between(&table.columns, k));
            prop_assert_eq!(kg(&c, DVec2::new(column, row)), lowest_around(&table, row, column));
        }
    }

    #[test]
    fn a_table_of_angle_and_extension_is_the_lowest_of_the_entries_around(
        table in any_table(TableAxes::AngleExtension(SECTOR)),
        points in prop::collection::vec((0.0..1.0_f64, 0.0..1.0_f64), 30),
    ) {
        let Some(c) = as_chart(&table) else { return Ok(()) };
        let sound = chart_problems(&c).into_iter().all(|p| {
            matches!(p, machine::ChartProblem::Pieces { .. } | machine::ChartProblem::Hole { .. })
        });
        prop_assert!(sound, "{:?}", chart_problems(&c));
        for (r, k) in points {
            let (row, column) = (between(&table.rows, r), between(&table.columns, k));
            let at = SECTOR.at(row, column);
            let (read, right) = (kg(&c, at), lowest_around(&table, row, column));
            prop_assert!(read.unwrap_or(0.0) <= right.unwrap_or(0.0), "arcs err on the side of less: {:?} {:?}", read, right);
            // Away from the arcs by more than their error, and exactly between them.
            if table.columns.iter().all(|l| (l.at - column).abs() > 0.006) {
                prop_assert_eq!(read, right, "angle {} extension {}", row, column);
            }
        }
    }

    #[test]
    fn nested_lines_read_as_the_highest_line_around_the_point(
        radii in prop::collection::vec(2.0..5.0_f64, 5..12),
        inward in prop::collection::vec(prop::collection::vec(prop_oneof![Just(1.0), 0.3..0.95_f64], 12), 1..4),
        points in prop::collection::vec((-5.0..5.0_f64, -5.0..5.0_f64), 60),
    ) {
        let ring = |radii: &[f64]| -> Vec<DVec2> {
            let turn = std::f64::consts::TAU / radii.len() as f64;
            radii.iter().enumerate().map(|(i, r)| DVec2::from_angle(turn * i as f64) * *r).collect()
        };
        let mut lines = vec![Zone { name: "0".into(), capacity: quantity::kilograms(500.0), outline: ring(&radii) }];
        let mut radii = radii;
        for (shares, i) in inward.iter().zip(1..) {
            radii.iter_mut().zip(shares).for_each(|(r, s)| *r *= s);
            lines.push(Zone {
                name: i.to_string(),
                capacity: quantity::kilograms(500.0 + 500.0 * f64::from(i)),
                outline: ring(&radii),
            });
        }
        let zones = match nested_zones(&lines) {
            Ok(zones) => zones,
            Err(faults) => return Err(TestCaseError::fail(format!("{faults:?}"))),
        };
        prop_assert!(zones.iter().all(|(line, z)| lines[*line].capacity == z.capacity));
        let c = chart(zones.into_iter().map(|(_, z)| z).collect(), vec![]);
        for (x, y) in points {
            let p = DVec2::new(x, y);
            // Slivers below the drawing error may be left to either side.
            if lines.iter().any(|l| near_edge(&l.outline, p)) {
                continue;
            }
            let inside = lines.iter().rfind(|l| crossing_number(&l.outline, p));
            prop_assert_eq!(kg(&c, p), inside.map(|l| l.capacity.value), "{}", p);
        }
        // On a line the lower counts.
        for (line, lower) in lines.iter().skip(1).zip(&lines) {
            for p in &line.outline {
                if crossing_number(&lower.outline, *p) && !near_edge(&lower.outline, *p) {
                    prop_assert!(kg(&c, *p).unwrap_or(0.0) <= lower.capacity.value, "on the line at {}", p);
                }
            }
        }
    }
}

fn near_edge(outline: &[DVec2], p: DVec2) -> bool {
    (0..outline.len()).any(|i| {
        let (a, d) = (outline[i], outline[(i + 1) % outline.len()] - outline[i]);
        (a + d * ((p - a).dot(d) / d.length_squared()).clamp(0.0, 1.0)).distance(p) < 0.025
    })
}

fn crossing_number(outline: &[DVec2], p: DVec2) -> bool {
    (0..outline.len())
        .filter(|i| {
            let (a, b) = (outline[*i], outline[(i + 1) % outline.len()]);
            (a.y > p.y) != (b.y > p.y) && p.x < a.x + (p.y - a.y) / (b.y - a.y) * (b.x - a.x)
        })
        .count()
        % 2
        == 1
}

#[test]
fn a_ring_between_two_lines_has_no_hole_and_no_gap() {
    let lines = [zone("1 t", 1000.0, &square(0.0, 0.0, 8.0, 8.0)), zone("2 t", 2000.0, &square(2.0, 2.0, 5.0, 6.0))];
    let zones = nested_zones(&lines).unwrap();
    let names: Vec<&str> = zones.iter().map(|(_, z)| z.name.as_str()).collect();
    assert_eq!(names, ["1 t (1)", "1 t (2)", "2 t"]);
    let c = chart(zones.into_iter().map(|(_, z)| z).collect(), vec![]);
    assert!(chart_problems(&c).is_empty(), "{:?}", chart_problems(&c));
    assert_eq!(kg(&c, DVec2::new(3.0, 3.0)), Some(2000.0));
    assert_eq!(kg(&c, DVec2::new(2.0, 3.0)), Some(1000.0), "on the inner line");
    assert_eq!(kg(&c, DVec2::new(5.0, 6.0)), Some(1000.0), "on its corner");
    for (x, y) in [(1.0, 1.0), (7.0, 7.0), (3.5, 1.0), (3.5, 7.0), (1.0, 4.0), (6.0, 4.0)] {
        assert_eq!(kg(&c, DVec2::new(x, y)), Some(1000.0), "({x}, {y})");
    }
}

#[test]
fn two_islands_in_one_line() {
    let lines = [
        zone("1 t", 1000.0, &square(0.0, 0.0, 9.0, 4.0)),
        zone("2 t left", 2000.0, &square(1.0, 1.0, 3.0, 3.0)),
        zone("2 t right", 2000.0, &square(5.0, 1.0, 8.0, 3.0)),
        zone("3 t", 3000.0, &square(6.0, 1.5, 7.0, 2.0)),
    ];
    let c = chart(nested_zones(&lines).unwrap().into_iter().map(|(_, z)| z).collect(), vec![]);
    assert!(chart_problems(&c).is_empty(), "{:?}", chart_problems(&c));
    for (x, y, expected) in [(2.0, 2.0, 2000.0), (4.0, 2.0, 1000.0), (6.5, 1.7, 3000.0), (5.5, 1.7, 2000.0)] {
        assert_eq!(kg(&c, DVec2::new(x, y)), Some(expected));
    }
}

#[test]
fn a_line_that_leaves_the_lower_one_is_named_with_its_place() {
    let lines = [zone("1 t", 1000.0, &square(0.0, 0.0, 4.0, 4.0)), zone("2 t", 2000.0, &square(2.0, 1.0, 6.0, 3.0))];
    let faults = nested_zones(&lines).unwrap_err();
    assert!(matches!(
        faults[..],
        [NestedFault::Leaves { line: 1, lower: 0, area, at }]
            if (area - 4.0).abs() < 1e-6 && at.distance(DVec2::new(5.0, 2.0)) < 1e-6
    ));
    // A drawing error is none: it is cut off, and gives no reach.
    let lines = [zone("1 t", 1000.0, &square(0.0, 0.0, 4.0, 4.0)), zone("2 t", 2000.0, &square(2.0, 1.0, 4.01, 3.0))];
    let c = chart(nested_zones(&lines).unwrap().into_iter().map(|(_, z)| z).collect(), vec![]);
    assert_eq!(kg(&c, DVec2::new(3.9, 2.0)), Some(2000.0));
    assert_eq!(kg(&c, DVec2::new(4.005, 2.0)), None);
}

#[test]
fn joined_cells_keep_zones_few_and_say_their_entry() {
    let table = ChartTable {
        rows: lines(&[0.0, 2.0, 4.0, 6.0]),
        columns: lines(&[1.0, 2.0, 3.0]),
        capacity_kg: vec![
            vec![Some(2000.0), Some(2000.0), Some(1000.0)],
            vec![Some(2000.0), Some(2000.0), Some(1000.0)],
            vec![Some(2000.0), Some(2000.0), Some(1000.0)],
            vec![Some(2000.0), None, None],
        ],
        axes: TableAxes::HeightReach,
    };
    let zones = table_zones(&table);
    let said: Vec<_> = zones.iter().map(|z| (z.zone.name.as_str(), z.zone.capacity.value, z.entry)).collect();
    assert_eq!(said, [("0–4 / 1–2", 2000.0, (0, 0)), ("0–4 / 2–3", 1000.0, (0, 2))]);
}

/// With the retracted boom forbidden by the table, no movement begins.
#[test]
fn what_a_table_leaves_empty_is_not_passed_on_the_way() {
    let table = |first: Option<f64>| ChartTable {
        rows: lines(&[-0.2, 0.2, 0.6, 1.0]),
        columns: lines(&[0.0, 0.2, 2.0]),
        capacity_kg: vec![vec![first, Some(2000.0), Some(1500.0)]; 4],
        axes: TableAxes::AngleExtension(SECTOR),
    };
    let passed = |table: &ChartTable, boom: f64| {
        let c = as_chart(table).unwrap();
        let at = SECTOR.at(0.4, boom);
        c.read_on_the_way(&ChartPoint { at, low: at - 0.05, high: at + 0.05 }, at.x + 0.05)
    };
    assert!(matches!(passed(&table(Some(2000.0)), 0.0), Reading::Within { .. }));
    assert_eq!(table_areas(&table(Some(2000.0))), Vec::<Vec<DVec2>>::new());
    assert_eq!(table_areas(&table(None)).len(), 1, "neighbours are joined");
    for extension in [0.0, -0.1, 0.1] {
        assert_eq!(passed(&table(None), extension), Reading::Outside, "{extension}");
    }
    assert!(matches!(passed(&table(None), 1.0), Reading::Within { .. }));
}
