//! Load lines drawn in feet that share edges: whole rectangles within each other read as zones that
//! cover what they covered, whatever rounding the conversion leaves.

use crate::chart_reading::{chart, square, zone};
use geometry::DVec2;
use machine::Chart;
use machine::{ChartParts, chart_problems, nested_zones};

const FOOT: f64 = 0.3048;

#[test]
fn rectangles_in_feet_that_share_edges_are_cut_clean() {
    let mut cases = 0;
    for x in 1..8_i32 {
        for (w, h) in [(7, 9), (11, 24), (13, 17), (17, 36)] {
            for (dw, dh) in [(1, 0), (0, 1), (3, 5), (6, 8), (2, 7)] {
                let ft = |v: i32| f64::from(v) * FOOT;
                let outer = square(ft(x), 0.0, ft(x + w), ft(h));
                let inner = square(ft(x), 0.0, ft(x + w - dw), ft(h - dh));
                let lines = [zone("low", 680.0, &outer), zone("high", 1500.0, &inner)];
                let zones: Vec<_> = nested_zones(&lines).unwrap().into_iter().map(|(_, z)| z).collect();
                let made: Chart = chart(zones, vec![]);
                assert_eq!(chart_problems(&made), [], "{x} {w} {h} {dw} {dh}");
                let parts: &ChartParts = &made;
                let area: f64 = parts.zones.iter().map(|z| area(&z.outline)).sum();
                assert!((area - ft(w) * ft(h)).abs() < 1e-6, "{x} {w} {h} {dw} {dh}: {area}");
                cases += 1;
            }
        }
    }
    assert_eq!(cases, 140);
}

fn area(outline: &[DVec2]) -> f64 {
    let n = outline.len();
    ((0..n).map(|i| outline[i].perp_dot(outline[(i + 1) % n])).sum::<f64>() / 2.0).abs()
}
