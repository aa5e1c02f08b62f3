//! Derating tables, and charts that are told apart.

use crate::chart_reading::{chart, square, zone};
use geometry::DVec2;
use machine::{
    CentreRule, Chart, ChartClash, DeratingFault, DeratingRow, LevelTolerance, OutOfLevel, derating_fault,
    more_out_of_level,
};
use proptest::prelude::*;
use quantity::{degrees, kilograms, metres};

fn row(centre: f64, share: f64, at_most: Option<f64>) -> DeratingRow {
    DeratingRow { load_centre: metres(centre), share, at_most: at_most.map(kilograms) }
}

/// Rated at 0.61 m.
fn with(derating: Vec<DeratingRow>) -> Chart {
    let plain = chart(vec![zone("A", 2000.0, &square(0.0, 0.0, 5.0, 5.0))], vec![]);
    let mut parts = (*plain).clone();
    parts.derating = derating;
    Chart::new(parts)
}

#[test]
fn the_row_of_the_next_farther_load_centre_counts() {
    let c = with(vec![row(0.75, 0.8, None), row(0.90, 0.7, Some(1300.0))]);
    assert_eq!(c.centre_rule(0.61), CentreRule::Rated);
    assert_eq!(c.centre_rule(0.2), CentreRule::Rated, "nearer: no credit");
    assert_eq!(c.centre_rule(0.62), CentreRule::Row(0));
    assert_eq!(c.centre_rule(0.75), CentreRule::Row(0));
    assert_eq!(c.centre_rule(0.76), CentreRule::Row(1));
    assert_eq!(c.centre_rule(0.91), CentreRule::BeyondTable);
    assert_eq!(c.derated_kg(2000.0, CentreRule::Row(0)), Some(1600.0));
    assert_eq!(c.derated_kg(2000.0, CentreRule::Row(1)), Some(1300.0));
    assert_eq!(c.derated_kg(1000.0, CentreRule::Row(1)), Some(700.0));
    assert_eq!(c.derated_kg(2000.0, CentreRule::BeyondTable), None);
    assert!(matches!(with(vec![]).centre_rule(0.71), CentreRule::Excess(e) if (e - 0.1).abs() < 1e-12));
    assert_eq!(c.centre_rule(f64::NAN), CentreRule::BeyondTable);
}

#[test]
fn a_table_that_gives_more_farther_out_is_a_fault() {
    let check = |rows: &[DeratingRow]| derating_fault(metres(0.61), rows);
    assert_eq!(check(&[row(0.75, 0.8, None), row(0.90, 0.8, None)]), None);
    assert_eq!(check(&[row(0.61, 0.8, None)]), Some((0, DeratingFault::Order)));
    assert_eq!(check(&[row(0.75, 0.8, None), row(0.70, 0.7, None)]), Some((1, DeratingFault::Order)));
    assert_eq!(check(&[row(0.75, 0.8, None), row(0.90, 0.9, None)]), Some((1, DeratingFault::Rises)));
    assert_eq!(check(&[row(0.75, 0.8, Some(900.0)), row(0.90, 0.8, None)]), Some((1, DeratingFault::Rises)));
}

proptest! {
    #[test]
    fn a_farther_centre_or_a_tighter_table_never_gives_more(
        shares in prop::collection::vec(0.2..1.0_f64, 1..6), centre in 0.5..1.6_f64, more in 0.0..0.4_f64, tighter in 0.3..1.0_f64,
    ) {
        let mut shares = shares;
        shares.sort_by(|a, b| b.total_cmp(a));
        let rows = |by: f64| -> Vec<DeratingRow> {
            shares.iter().zip(1..).map(|(s, i)| row(0.61 + 0.15 * f64::from(i), s * by, None)).collect()
        };
        let kg = |c: &Chart, centre: f64| c.derated_kg(2000.0, c.centre_rule(centre)).unwrap_or(0.0);
        let (usual, tight) = (with(rows(1.0)), with(rows(tighter)));
        prop_assert!(derating_fault(metres(0.61), &usual.derating).is_none());
        prop_assert!(kg(&usual, centre + more) <= kg(&usual, centre));
        prop_assert!(kg(&tight, centre) <= kg(&usual, centre));
    }
}

#[test]
fn charts_are_told_apart_by_tyres_and_level() {
    let of = |tyres: Option<&str>, sideways: f64, fore_aft: f64| {
        let mut parts = (*with(vec![])).clone();
        parts.tyres = tyres.map(str::to_owned);
        parts.level = LevelTolerance { sideways: degrees(sideways), fore_aft: degrees(fore_aft) };
        Chart::new(parts)
    };
    let clash = |a: &Chart, b: &Chart| {
        assert_eq!(a.clash(b), b.clash(a));
        a.clash(b)
    };
    assert_eq!(clash(&of(None, 2.0, 2.0), &of(None, 2.0, 2.0)), Some(ChartClash::Twins));
    assert_eq!(clash(&of(None, 2.0, 2.0), &of(Some("foam"), 2.0, 2.0)), Some(ChartClash::Twins));
    assert_eq!(clash(&of(Some("air"), 2.0, 2.0), &of(Some("foam"), 2.0, 2.0)), None);
    assert_eq!(clash(&of(None, 0.5, 0.5), &of(None, 2.0, 2.0)), None);
    assert_eq!(clash(&of(None, 0.5, 2.0), &of(None, 2.0, 2.0)), None, "stricter in one direction");
    assert_eq!(clash(&of(None, 0.5, 3.0), &of(None, 2.0, 2.0)), Some(ChartClash::Levels));
    let level = of(None, 2.0, 1.0).level;
    let at =
        |sideways: f64, fore_aft: f64| OutOfLevel { sideways: sideways.to_radians(), fore_aft: fore_aft.to_radians() };
    assert!(level.covers(at(1.9, 0.9)) && !level.covers(at(2.1, 0.5)) && !level.covers(at(0.5, 1.1)));
    assert!(!level.covers(at(f64::NAN, 0.0)), "an unknown slope is covered by no chart");
}

#[test]
fn a_chart_for_rougher_ground_that_allows_more_is_found() {
    let of = |sideways: f64, zones: Vec<machine::Zone>, none: Vec<Vec<DVec2>>| {
        let mut parts = (*chart(zones, none)).clone();
        parts.level = LevelTolerance { sideways: degrees(sideways), fore_aft: degrees(2.0) };
        Chart::new(parts)
    };
    let outline = |x0: f64, y0: f64, x1: f64, y1: f64| -> Vec<DVec2> {
        square(x0, y0, x1, y1).iter().map(|p| DVec2::from_array(*p)).collect()
    };
    let usual = |kg: [f64; 2]| {
        vec![zone("A", kg[0], &square(0.0, 0.0, 2.0, 4.0)), zone("B", kg[1], &square(2.0, 0.0, 4.0, 4.0))]
    };
    let strict = of(0.5, usual([3000.0, 1500.0]), vec![]);
    let more = |rough: &Chart| more_out_of_level(&strict, rough, DVec2::ZERO);
    let less = of(3.0, usual([2500.0, 1500.0]), vec![]);
    assert!(strict.is_stricter_than(&less) && !less.is_stricter_than(&strict));
    assert!(!strict.is_stricter_than(&strict), "twins");
    assert_eq!(more(&less), []);
    let found = more(&of(3.0, usual([3000.0, 1600.0]), vec![]));
    assert!(matches!(found[..], [m] if m.zone == 1 && m.less == Some(1) && m.at.distance(DVec2::new(3.0, 2.0)) < 1e-9));
    // Zones reach farther than in the stricter chart: beyond a drawing error it counts.
    let wider = |x: f64| of(3.0, vec![zone("A", 1000.0, &square(0.0, 0.0, x, 4.0))], vec![]);
    assert_eq!(more(&wider(4.01)), []);
    assert!(matches!(more(&wider(4.5))[..], [m] if m.less.is_none() && m.at.x > 4.0));
    // What the stricter one forbids, the other has to forbid.
    let hole = vec![outline(1.0, 1.0, 2.0, 2.0)];
    let forbids = of(0.5, usual([3000.0, 1500.0]), hole.clone());
    assert!(matches!(more_out_of_level(&forbids, &less, DVec2::ZERO)[..], [m] if m.zone == 0 && m.less.is_none()));
    assert_eq!(more_out_of_level(&forbids, &of(3.0, usual([2500.0, 1500.0]), hole), DVec2::ZERO), []);
    // Another datum: the same chart, moved.
    let moved = of(3.0, vec![zone("A", 1500.0, &square(1.0, 0.0, 5.0, 4.0))], vec![]);
    assert!(!more(&moved).is_empty());
    assert_eq!(more_out_of_level(&strict, &moved, DVec2::new(-1.0, 0.0)), []);
}
