//! Reading a chart errs on the side of less.

use geometry::DVec2;
use machine::{
    Chart, ChartParts, ChartPoint, ChartProblem, Datum, HeightTo, LevelTolerance, ReachFrom, ReachTo, Reading,
    SupportState, Zone, chart_problems,
};
use proptest::prelude::*;
use quantity::{degrees, kilograms, metres};

pub(crate) fn zone(name: &str, capacity: f64, outline: &[[f64; 2]]) -> Zone {
    let outline = outline.iter().map(|p| DVec2::from_array(*p)).collect();
    Zone { name: name.into(), capacity: kilograms(capacity), outline }
}

pub(crate) fn chart(zones: Vec<Zone>, not_permitted: Vec<Vec<DVec2>>) -> Chart {
    Chart::new(ChartParts {
        attachment: "forks".into(),
        support: SupportState::Tyres,
        tyres: None,
        load_centre: metres(0.61),
        load_centre_height: None,
        datum: Datum {
            reach_from: ReachFrom::FrontTyreFace,
            reach_to: ReachTo::LoadCentre,
            height_to: HeightTo::ForkTop,
        },
        level: LevelTolerance { sideways: degrees(2.0), fore_aft: degrees(2.0) },
        zones,
        not_permitted,
        derating: Vec::new(),
        certainty: evidence::Certainty::Invented,
    })
}

pub(crate) fn square(x0: f64, y0: f64, x1: f64, y1: f64) -> [[f64; 2]; 4] {
    [[x0, y0], [x1, y0], [x1, y1], [x0, y1]]
}

/// Four zones with a common corner at (2, 2), and a slanted one beyond.
pub(crate) fn sample() -> Chart {
    chart(
        vec![
            zone("A", 4000.0, &square(0.0, 0.0, 2.0, 2.0)),
            zone("B", 3000.0, &square(2.0, 0.0, 4.0, 2.0)),
            zone("C", 2000.0, &square(0.0, 2.0, 2.0, 4.0)),
            zone("D", 1000.0, &square(2.0, 2.0, 4.0, 4.0)),
            zone("E", 500.0, &[[4.0, 0.0], [6.0, 0.0], [4.0, 4.0]]),
        ],
        Vec::new(),
    )
}

fn capacity(chart: &Chart, at: [f64; 2], half: f64) -> Option<f64> {
    let at = DVec2::from_array(at);
    let point = ChartPoint { at, low: at - half, high: at + half };
    match chart.read(&point) {
        Reading::Within { capacity_kg, .. } => Some(capacity_kg),
        Reading::Outside => None,
    }
}

#[test]
fn a_point_on_an_edge_or_corner_takes_the_lowest() {
    let c = sample();
    assert_eq!(capacity(&c, [1.0, 1.0], 0.0), Some(4000.0));
    assert_eq!(capacity(&c, [2.0, 1.0], 0.0), Some(3000.0), "edge of A and B");
    assert_eq!(capacity(&c, [2.0, 2.0], 0.0), Some(1000.0), "corner of four");
    assert_eq!(capacity(&c, [1.8, 1.8], 0.3), Some(1000.0), "box over the corner");
    assert_eq!(capacity(&c, [0.0, 0.0], 0.0), Some(4000.0), "the border belongs to the chart");
}

#[test]
fn some_of_the_box_outside_is_outside() {
    let c = sample();
    assert_eq!(capacity(&c, [0.05, 1.0], 0.1), None);
    assert_eq!(capacity(&c, [6.5, 1.0], 0.0), None);
    assert_eq!(capacity(&c, [5.0, 2.0], 0.0), Some(500.0), "on the slanted border");
    assert_eq!(capacity(&c, [5.0, 2.1], 0.0), None);
    assert_eq!(capacity(&c, [f64::NAN, 1.0], 0.0), None);
}

/// A box without height or width is a line: the border of the chart cuts it all the same.
#[test]
fn a_line_of_points_that_leaves_the_chart_is_outside() {
    let c = sample();
    let line = |x0: f64, x1: f64, y: f64| {
        let (low, high) = (DVec2::new(x0, y), DVec2::new(x1, y));
        c.read(&ChartPoint { at: low, low, high })
    };
    assert!(matches!(line(1.0, 3.9, 1.0), Reading::Within { capacity_kg, .. } if capacity_kg == 3000.0));
    assert_eq!(line(1.0, 7.0, 1.0), Reading::Outside, "runs out of the chart");
    assert_eq!(line(4.5, 5.6, 1.0), Reading::Outside, "over the slanted border");
    assert!(matches!(line(0.5, 1.5, 0.0), Reading::Within { .. }), "along the border is on the chart");
    let upright = |x: f64, y0: f64, y1: f64| {
        let (low, high) = (DVec2::new(x, y0), DVec2::new(x, y1));
        c.read(&ChartPoint { at: low, low, high })
    };
    assert_eq!(upright(1.0, 1.0, 5.0), Reading::Outside);
    assert!(matches!(upright(1.0, 0.0, 4.0), Reading::Within { capacity_kg, .. } if capacity_kg == 2000.0));
}

/// On the way the near side may lie short of the chart, the far side may not lie beyond it.
#[test]
fn on_the_way_only_the_far_side_counts() {
    let c = sample();
    let read = |x0: f64, x1: f64, y: f64| {
        let (low, high) = (DVec2::new(x0, y - 0.05), DVec2::new(x1, y + 0.05));
        c.read_on_the_way(&ChartPoint { at: low, low, high }, 0.0)
    };
    assert!(matches!(read(-0.5, 0.3, 1.0), Reading::Within { capacity_kg, .. } if capacity_kg == 4000.0));
    assert!(matches!(read(-0.9, -0.4, 1.0), Reading::Within { capacity_kg, .. } if capacity_kg == 4000.0));
    assert!(matches!(read(-0.9, -0.4, 3.0), Reading::Within { capacity_kg, .. } if capacity_kg == 2000.0));
    assert_eq!(read(-0.9, -0.4, 5.0), Reading::Outside, "no zone at that height");
    assert_eq!(read(3.0, 6.5, 1.0), Reading::Outside, "beyond the chart");
    assert!(matches!(read(1.5, 2.5, 1.0), Reading::Within { capacity_kg, .. } if capacity_kg == 3000.0));
}

/// The near border counts as where the boom stands only within a drawing error.
#[test]
fn on_the_way_a_chart_that_begins_far_beyond_the_boom_shows_nothing() {
    let c = sample();
    let at = |boom: f64, reach: f64| {
        let low = DVec2::new(reach - 0.1, 0.95);
        c.read_on_the_way(&ChartPoint { at: low, low, high: DVec2::new(reach + 0.1, 1.05) }, boom)
    };
    assert!(matches!(at(-0.24, -0.34), Reading::Within { capacity_kg, .. } if capacity_kg == 4000.0));
    assert_eq!(at(-0.26, -0.36), Reading::Outside);
    assert_eq!(at(-0.26, 1.0), Reading::Outside, "what the load adds to the reach does not bring the boom nearer");
    // An indentation at the upper side of the box only.
    let notched = chart(
        vec![zone("A", 4000.0, &square(0.0, 0.0, 4.0, 2.0)), zone("B", 2000.0, &square(1.0, 2.0, 4.0, 4.0))],
        vec![],
    );
    let over = |high: f64| {
        let low = DVec2::new(0.1, 1.5);
        notched.read_on_the_way(&ChartPoint { at: low, low, high: DVec2::new(0.3, high) }, 0.3)
    };
    assert!(matches!(over(1.9), Reading::Within { .. }));
    assert_eq!(over(2.2), Reading::Outside);
}

#[test]
fn a_hole_is_not_permitted_and_is_pointed_out() {
    let ring = vec![
        zone("A", 2000.0, &square(0.0, 0.0, 6.0, 1.0)),
        zone("B", 2000.0, &square(0.0, 1.0, 1.0, 5.0)),
        zone("C", 2000.0, &square(5.0, 1.0, 6.0, 5.0)),
        zone("D", 2000.0, &square(0.0, 5.0, 6.0, 6.0)),
    ];
    let c = chart(ring.clone(), Vec::new());
    assert_eq!(capacity(&c, [3.0, 3.0], 0.1), None, "inside the hole");
    assert_eq!(capacity(&c, [1.0, 3.0], 0.1), None, "half in the hole");
    assert_eq!(capacity(&c, [3.0, 3.0], 2.9), None, "around the hole");
    assert!(matches!(chart_problems(&c)[..], [ChartProblem::Hole { area, .. }] if (area - 16.0).abs() < 1e-6));
    let declared = vec![square(1.0, 1.0, 5.0, 5.0).iter().map(|p| DVec2::from_array(*p)).collect()];
    let c = chart(ring, declared);
    assert!(chart_problems(&c).is_empty(), "declared not permitted is no gap: {:?}", chart_problems(&c));
    assert_eq!(capacity(&c, [3.0, 3.0], 0.1), None);
}

#[test]
fn overlap_with_another_capacity_and_bad_outlines_are_found() {
    let c = chart(
        vec![zone("A", 2000.0, &square(0.0, 0.0, 2.0, 2.0)), zone("B", 1000.0, &square(1.0, 0.0, 3.0, 2.0))],
        vec![],
    );
    assert!(matches!(chart_problems(&c)[..], [ChartProblem::Overlap { first: 0, second: 1, .. }]));
    assert_eq!(capacity(&c, [1.5, 1.0], 0.0), Some(1000.0), "the lower governs all the same");
    let bow = chart(vec![zone("A", 2000.0, &[[0.0, 0.0], [2.0, 2.0], [2.0, 0.0], [0.0, 2.0]])], vec![]);
    assert!(matches!(chart_problems(&bow)[..], [ChartProblem::BadOutline { zone: 0 }]));
    assert!(matches!(chart_problems(&chart(vec![], vec![]))[..], [ChartProblem::NoZones]));
}

proptest! {
    #[test]
    fn never_more_than_any_zone_that_holds_the_point(x in -1.0..7.0_f64, y in -1.0..5.0_f64, half in 0.0..1.0_f64) {
        let c = sample();
        if let Some(read) = capacity(&c, [x, y], half) {
            for z in &c.zones {
                let single = chart(vec![z.clone()], vec![]);
                if let Some(alone) = capacity(&single, [x, y], 0.0) {
                    prop_assert!(read <= alone);
                }
            }
        }
    }

    #[test]
    fn a_larger_box_never_reads_more(x in -1.0..7.0_f64, y in -1.0..5.0_f64, half in 0.0..1.0_f64, more in 0.0..1.0_f64) {
        let c = sample();
        let (small, large) = (capacity(&c, [x, y], half), capacity(&c, [x, y], half + more));
        prop_assert!(large.unwrap_or(0.0) <= small.unwrap_or(0.0));
    }

    #[test]
    fn lowering_one_zone_never_raises_a_reading(
        x in -1.0..7.0_f64, y in -1.0..5.0_f64, half in 0.0..1.0_f64, which in 0usize..5, share in 0.1..1.0_f64,
    ) {
        let before = sample();
        let mut zones = before.zones.clone();
        zones[which].capacity *= share;
        let after = chart(zones, vec![]);
        prop_assert!(capacity(&after, [x, y], half).unwrap_or(0.0) <= capacity(&before, [x, y], half).unwrap_or(0.0));
    }
}
