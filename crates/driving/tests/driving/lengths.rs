//! Lengths of ways on seeded maps against OMPL's planners, and against a bound that no way is below.

use crate::maps::case;
use driving::{NoRoute, Settings, TargetField, route};
use std::ops::ControlFlow;

const LENGTHS: &str = include_str!("../../../../validation/driving/ompl_lengths.csv");
const MAPS: usize = 20;

/// Longest of ours over the best of theirs.
const MOST: f64 = 1.12;

/// OMPL 1.5.2, RRT* and BIT* for 20 s each (`validation/driving/ompl_routes.cpp`), with the same machine, maps and
/// collision test; the bound is Dijkstra's for the pivot on cells of half the size, by the same program. One of the
/// maps has no way, by that bound too.
#[test]
fn val_route_lengths_against_ompl() {
    let rows: Vec<Vec<f64>> = LENGTHS
        .lines()
        .filter(|l| !l.starts_with('#'))
        .map(|l| l.split(',').map(|v| v.parse().unwrap()).collect())
        .collect();
    assert_eq!(rows.len(), MAPS, "a reference case went missing");
    let by_length = Settings { reverse: 1.0, gear_change: 0.0, ..Settings::default() };
    let mut ratios = Vec::new();
    for row in rows {
        let (seed, bound, best) = (row[0] as u64, row[1], row[2].min(row[3]));
        let case = case(seed, 160, false);
        let field = TargetField::prepare(&case.map, &case.vehicle, case.to);
        let found = route(&case.map, &case.vehicle, &field, case.from, &by_length, &mut |_| ControlFlow::Continue(()));
        let Ok(found) = found else {
            assert!(matches!(found, Err(NoRoute::Narrow(_))) && bound.is_infinite(), "map {seed}: {found:?}");
            continue;
        };
        let length = found.length();
        assert!(length >= bound, "map {seed}: {length} m is below the bound of {bound} m");
        assert!(length <= MOST * best, "map {seed}: {length} m, OMPL {best} m");
        ratios.push(length / best);
    }
    ratios.sort_by(f64::total_cmp);
    assert!(ratios[ratios.len() / 2] <= 1.01, "least {:.3}, most {:.3}", ratios[0], ratios[ratios.len() - 1]);
}
