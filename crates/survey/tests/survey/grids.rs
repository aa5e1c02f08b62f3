//! Real height grids: values measured with GDAL, rasterio and numpy.

use crate::reference::{bytes, codes, expected, numbers, present};
use geometry::DVec2;
use site::{Grid, SlopeStatistics, Terrain};
use survey::{GroundOptions, GroundReading, Window, read_ground};

/// Heights are compared to a centimetre: what a wheel notices starts above that.
const CENTIMETRE: f64 = 0.01;
/// Slopes and shares are compared to 0.1 %.
const TENTH_OF_A_PERCENT: f64 = 0.001;

fn read(path: &str) -> GroundReading {
    read_ground(path, &bytes(path), &GroundOptions::default()).unwrap()
}

fn grid(reading: &GroundReading) -> &Grid {
    match &reading.terrain {
        Terrain::Grid(grid) => grid,
        Terrain::Tin(_) => panic!("a grid was expected"),
    }
}

fn near(got: f64, expected: f64, tolerance: f64, what: &str) {
    assert!((got - expected).abs() <= tolerance, "{what}: got {got}, expected {expected} ± {tolerance}");
}

#[test]
fn val_slovenia_heights_and_slopes() {
    if !present() {
        return;
    }
    let reading = read("terrain/slovenia_dtm_1m.tif");
    assert!(reading.notes.list.is_empty());
    assert_eq!(reading.facts.min[..2], [563_999.5, 145_999.5]);
    assert_eq!(reading.facts.max[..2], [564_999.5, 146_999.5]);
    near(reading.facts.min[2], 254.97, CENTIMETRE, "lowest");
    near(reading.facts.max[2], 325.05, CENTIMETRE, "highest");
    // These places are cell centres, so the nearest cell and the bilinear mean are one.
    for (x, y, z) in [(564_500.0, 146_500.0, 261.520), (564_100.0, 146_900.0, 293.610), (564_900.0, 146_050.0, 261.490)]
    {
        near(reading.terrain.height(DVec2::new(x, y)).unwrap(), z, CENTIMETRE, "spot");
    }
    let slopes = SlopeStatistics::of(grid(&reading)).unwrap();
    assert_eq!(slopes.cells(), 998 * 998);
    near(slopes.mean, 0.12727, TENTH_OF_A_PERCENT, "mean");
    near(slopes.deviation, 0.12530, TENTH_OF_A_PERCENT, "deviation");
    near(slopes.steepest(), 1.44326, TENTH_OF_A_PERCENT, "steepest");
    assert_eq!(slopes.steepest_at, (96, 417));
    near(slopes.median(), 0.08622, TENTH_OF_A_PERCENT, "median");
    near(slopes.share_up_to(0.05), 0.295, TENTH_OF_A_PERCENT, "share up to 5 %");
    near(slopes.share_up_to(0.10), 0.558, TENTH_OF_A_PERCENT, "share up to 10 %");
    near(1.0 - slopes.share_up_to(0.25), 0.129, TENTH_OF_A_PERCENT, "share above 25 %");
}

#[test]
fn val_slovenia_with_500_unknown_cells() {
    if !present() {
        return;
    }
    let reading = read("terrain/slovenia_dtm_1m_nan_nodata.tif");
    assert_eq!(reading.facts.unknown_cells, 500);
    near(reading.facts.min[2], 254.97, CENTIMETRE, "lowest");
    near(reading.facts.max[2], 325.05, CENTIMETRE, "highest");
    let slopes = SlopeStatistics::of(grid(&reading)).unwrap();
    near(slopes.mean, 0.127_276, TENTH_OF_A_PERCENT, "mean");
    near(slopes.deviation, 0.125_302, TENTH_OF_A_PERCENT, "deviation");
    // Every unknown cell stays unknown, and only its eight neighbours lose their slope.
    let grid = grid(&reading);
    let unknown = grid.heights.iter().filter(|z| z.is_nan()).count();
    assert_eq!(unknown, 500);
    assert!(slopes.cells() >= 998 * 998 - 9 * 500 && slopes.cells() < 998 * 998);
}

#[test]
fn val_slopes_of_other_grids() {
    if !present() {
        return;
    }
    let cases = [
        ("terrain/alexandria_dtm_2m.tif", 0.05956, Some(2.32225)),
        ("terrain/bilbao_dem_5m.tif", 0.11380, Some(2.98369)),
        ("terrain/montpellier_tile_77055_627760_dtm_50cm.tif", 0.05719, None),
        ("terrain/derived_delft_ground_1m.tif", 0.04612, None),
        ("terrain/odd/town_surface_5m_nodata_plus9999.tif", 0.08009, Some(0.98239)),
    ];
    for (path, mean, steepest) in cases {
        let slopes = SlopeStatistics::of(grid(&read(path))).unwrap();
        near(slopes.mean, mean, TENTH_OF_A_PERCENT, path);
        if let Some(steepest) = steepest {
            near(slopes.steepest(), steepest, TENTH_OF_A_PERCENT, path);
        }
    }
}

#[test]
fn val_heights_at_and_between_cell_centres() {
    if !present() {
        return;
    }
    let expected = expected();
    let grids = expected["grids"].as_object().unwrap();
    assert_eq!(grids.len(), 5, "a reference grid went missing");
    for (path, samples) in grids {
        let reading = read(path);
        let mut checked = 0;
        for kind in ["centres", "between"] {
            for row in samples[kind].as_array().unwrap() {
                let [x, y, z] = numbers(row)[..] else { panic!("three numbers a row") };
                let got = reading.terrain.height(DVec2::new(x, y));
                near(got.unwrap_or(f64::NAN), z, CENTIMETRE, &format!("{path} {kind} {x} {y}"));
                checked += 1;
            }
        }
        assert!(checked >= 119, "{path}: {checked}");
    }
}

#[test]
fn val_feet_become_metres_in_plan_and_height() {
    if !present() {
        return;
    }
    let reading = read("terrain/derived_autzen_ground_5ft.tif");
    let facts = &reading.facts;
    assert_eq!(facts.ground_points, 11_829);
    assert_eq!(facts.cell, Some([1.524, 1.524]));
    near(facts.max[2] - facts.min[2], 8.461, CENTIMETRE, "range of heights");
    let grid = grid(&reading);
    let known: Vec<f64> = grid.heights.iter().filter(|z| z.is_finite()).map(|z| f64::from(*z)).collect();
    near(known.iter().sum::<f64>() / known.len() as f64, 129.055, CENTIMETRE, "mean");
}

#[test]
fn a_hole_is_unknown() {
    if !present() {
        return;
    }
    let reading = read("terrain/derived_delft_ground_1m.tif");
    assert_eq!(reading.facts.ground_points, 34_182);
    near(reading.facts.min[2], -0.472, CENTIMETRE, "lowest");
    near(reading.facts.max[2], 2.277, CENTIMETRE, "highest");
    // Middle of the largest building of the reference table.
    assert_eq!(reading.terrain.height(DVec2::new(85_022.1, 447_484.0)), None);
}

#[test]
fn rows_that_run_north_are_turned() {
    if !present() {
        return;
    }
    let reading = read("terrain/odd/southup_undeclared_minus9999.tif");
    assert_eq!(codes(&reading.notes), ["survey::implausible-heights"]);
    assert_eq!(reading.facts.ground_points, 2394);
    assert_eq!(reading.facts.min[..2], [770_500.0, 6_277_500.0]);
    assert_eq!(grid(&reading).north_west, DVec2::new(770_500.5, 6_277_549.5));
    let heights: Vec<f64> = grid(&reading).heights.iter().filter(|z| z.is_finite()).map(|z| f64::from(*z)).collect();
    near(heights.iter().sum::<f64>() / heights.len() as f64, 20.984, CENTIMETRE, "mean");
}

#[test]
fn a_window_keeps_the_heights_that_it_covers() {
    if !present() {
        return;
    }
    for path in
        ["terrain/slovenia_dtm_1m.tif", "terrain/alexandria_dtm_2m.tif", "terrain/odd/southup_undeclared_minus9999.tif"]
    {
        let whole = read(path);
        let (low, high) = whole.terrain.bounds().unwrap();
        let window = Window { min: low + (high - low) * 0.3, max: low + (high - low) * 0.6 };
        let options = GroundOptions { window: Some(window), ..GroundOptions::default() };
        let part = read_ground(path, &bytes(path), &options).unwrap();
        assert!(grid(&part).heights.len() * 5 < grid(&whole).heights.len(), "{path}");
        for i in 0..50 {
            let share = f64::from(i) / 49.0;
            let at = window.min + (window.max - window.min) * DVec2::new(share, (share * 7.0).fract());
            assert_eq!(part.terrain.height(at), whole.terrain.height(at), "{path} {at}");
        }
    }
}
