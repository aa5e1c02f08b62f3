//! Ways over a site: what bars them, which way round, and that what is not known never passes.

use crate::never_pass::demo;
use driving::{Gear, SteeredAxle, Turning};
use geometry::{DVec2, heading_from_degrees};
use planning::route::{RefusalKind, RouteAsk, RoutePlan, RoutePose, RouteRefusal, TravelRules, route};
use planning::{Job, Stand};
use site::{
    Body, Excavation, Grid, Ground, GroundSource, OpenSides, PlanArea, PlanShape, Support, Terrain, Thing, ThingKind,
    Zone, ZoneRule,
};
use std::ops::ControlFlow;

/// Ground 80 m by 60 m rising to the east by `slope`, surveyed to 1 cm; nothing on it.
fn open_site(slope: f64) -> Job {
    let mut job = demo();
    let (rows, cols) = (61, 81);
    let heights = (0..rows * cols).map(|i| (slope * (i % cols) as f64) as f32).collect();
    let grid = Grid { north_west: DVec2::new(0.0, 60.0), cell: DVec2::ONE, rows, cols, heights };
    let source = GroundSource { name: "made".into(), terrain: Terrain::Grid(grid), accuracy: 0.01, date: None };
    job.ground = Ground { surfaces: vec![source] };
    job.lines.clear();
    job.surroundings = site::Surroundings::default();
    job
}

fn ask(job: &Job, loaded: bool) -> RouteAsk {
    let lift = &job.lifts[0];
    RouteAsk {
        machine: lift.machine,
        attachment: lift.attachment.clone(),
        load: loaded.then_some(lift.load),
        turning: Turning { steered: SteeredAxle::Front, two_wheel: Some(5.5), four_wheel: Some(2.8), crab: None },
        side_shift: 0.0,
        at: None,
        rules: TravelRules::default(),
    }
}

/// From the west end of the site to the east end.
const FROM: (f64, f64) = (15.0, 30.0);
const TO: (f64, f64) = (65.0, 30.0);

fn find(job: &Job, ask: &RouteAsk, headings: (f64, f64)) -> Result<RoutePlan, Box<RouteRefusal>> {
    let from = RoutePose { at: FROM.into(), heading: heading_from_degrees(headings.0) };
    let to = Stand { at: TO.into(), heading: heading_from_degrees(headings.1) };
    route(job, ask, from, to, &mut |_| ControlFlow::Continue(()))
}

fn block(low: (f64, f64), high: (f64, f64)) -> PlanArea {
    PlanArea { outer: vec![low.into(), (high.0, low.1).into(), high.into(), (low.0, high.1).into()], holes: vec![] }
}

fn thing(area: PlanArea, base: Option<f64>, top: Option<f64>) -> Thing {
    Thing {
        id: "hut".into(),
        name: "Hut".into(),
        kind: ThingKind::Building,
        body: Body::Upright { shape: PlanShape::Area(area), base, top },
        openings: Vec::new(),
        accuracy: 0.05,
        source: "made".into(),
    }
}

fn zone(area: PlanArea, rule: ZoneRule) -> Zone {
    let shape = PlanShape::Area(area);
    Zone { id: "z".into(), name: "Zone".into(), shape, rule, times: vec![], by: "planner".into() }
}

fn because(refusal: &RouteRefusal) -> Vec<&str> {
    refusal.because.iter().map(|m| m.id.as_ref()).collect()
}

#[test]
fn over_open_level_ground_it_drives_straight() {
    let job = open_site(0.0);
    let plan = find(&job, &ask(&job, true), (90.0, 90.0)).unwrap();
    assert_eq!((plan.legs.len(), plan.legs[0].gear, plan.gear_changes), (1, Gear::Forward, 0));
    assert!((plan.length_m - 50.0).abs() < 1e-6);
    // Walking pace of 1.4 m/s, gained and lost at 0.5 m/s².
    assert!((plan.time_s - (50.0 / 1.4 + 1.4 / 0.5)).abs() < 0.01, "{}", plan.time_s);
    assert!(plan.profile.iter().all(|s| s.height_m.abs() < 1e-6 && s.slope_along.nominal.abs() < 1e-6));
    assert!(plan.margins.iter().any(|m| m.of.id == "drive-tilt" && m.left.si > 0.0), "{:?}", plan.margins);
}

/// A long wall with a gap, wide enough or not, and a hut that is driven around.
#[test]
fn things_are_driven_around_or_named() {
    let mut job = open_site(0.0);
    job.surroundings.things = vec![thing(block((38.0, 20.0), (42.0, 40.0)), None, Some(3.0))].into();
    let plan = find(&job, &ask(&job, true), (90.0, 90.0)).unwrap();
    assert!(plan.length_m > 52.0 && plan.length_m < 70.0, "{}", plan.length_m);
    let least = plan.margins.iter().find(|m| m.of.id == "drive-thing").unwrap();
    assert!(least.left.si >= 0.0 && least.left.si < 3.0, "{least:?}");
    let wall = |gap: f64| {
        let mut job = open_site(0.0);
        let (south, north) = (block((38.0, 0.0), (39.0, 30.0)), block((38.0, 30.0 + gap), (39.0, 60.0)));
        job.surroundings.things = vec![thing(south, None, None), thing(north, None, None)].into();
        find(&job, &ask(&job, true), (90.0, 90.0))
    };
    let wide = wall(5.0).unwrap();
    assert!(wide.length_m > 50.0);
    for gap in [1.5, 0.0] {
        let refusal = wall(gap).unwrap_err();
        assert!(["drive-narrow", "drive-walled-in"].contains(&refusal.message.id.as_ref()), "{refusal:?}");
        assert!(because(&refusal).contains(&"drive-thing"), "{refusal:?}");
        assert!((refusal.at.unwrap()[0] - 38.0).abs() < 6.0, "{refusal:?}");
    }
}

#[test]
fn a_bridge_is_passed_under_where_it_is_high_enough() {
    let under = |base: f64| {
        let mut job = open_site(0.0);
        let deck = thing(block((38.0, 0.0), (42.0, 60.0)), Some(base), Some(base + 1.0));
        job.surroundings.things = vec![deck].into();
        find(&job, &ask(&job, true), (90.0, 90.0))
    };
    assert!((under(9.0).unwrap().length_m - 50.0).abs() < 1e-6);
    assert!(because(&under(2.0).unwrap_err()).contains(&"drive-thing"));
}

/// 11 kV asks 10 ft (29 CFR 1926.600(a)(6)), and errors, swing and allowances on top.
#[test]
fn a_line_is_passed_under_where_it_is_high_enough() {
    let under = |height: f64, known: bool| {
        let mut job = open_site(0.0);
        let mut line = demo().lines[0].clone();
        let at = |north: f64| geometry::DVec3::new(40.0, north, height);
        line.spans = vec![site::Span { from: at(-10.0), to: at(70.0), sag: 0.5 }];
        line.voltage = line.voltage.filter(|_| known);
        job.lines = vec![line];
        find(&job, &ask(&job, true), (90.0, 90.0))
    };
    let high = under(15.0, true).unwrap();
    assert!((high.length_m - 50.0).abs() < 1e-6);
    assert!(because(&under(6.0, true).unwrap_err()).contains(&"drive-line"));
    assert!(because(&under(15.0, false).unwrap_err()).contains(&"drive-unknown-line"));
}

#[test]
fn excavations_keep_their_set_back_and_unknown_depth_keeps_far_away() {
    let with = |depth: Option<f64>| {
        let mut job = open_site(0.0);
        job.surroundings.excavations = vec![Excavation {
            id: "t".into(),
            name: "Trench".into(),
            outline: block((39.0, 27.0), (41.0, 60.0)),
            depth: depth.map(evidence::Ranged::exact),
            soil: None,
            support: Support::NotKnown,
            standing: OpenSides::default(),
            source: "made".into(),
        }];
        find(&job, &ask(&job, true), (90.0, 90.0)).unwrap()
    };
    let (shallow, deep, unknown) = (with(Some(1.0)), with(Some(4.0)), with(None));
    assert!(shallow.length_m < deep.length_m && deep.length_m < unknown.length_m);
    for (plan, id) in [(&shallow, "drive-excavation"), (&deep, "drive-excavation"), (&unknown, "drive-unknown-depth")] {
        let margin = plan.margins.iter().find(|m| m.of.id == id).unwrap();
        assert!(margin.left.si >= 0.0, "{margin:?}");
    }
}

#[test]
fn a_hole_in_the_survey_is_not_driven_over() {
    let mut job = open_site(0.0);
    let Terrain::Grid(grid) = &mut job.ground.surfaces[0].terrain else { panic!("a grid") };
    for row in 0..grid.rows {
        grid.heights[row * grid.cols + 40] = f32::NAN;
    }
    let refusal = find(&job, &ask(&job, true), (90.0, 90.0)).unwrap_err();
    assert!(because(&refusal).contains(&"drive-unknown-ground"), "{refusal:?}");
}

/// 29 CFR 1910.178(n)(7)(i): above 10 % the load faces uphill, up as well as down.
#[test]
fn on_a_grade_the_load_faces_uphill() {
    let job = open_site(0.13);
    let loaded = ask(&job, true);
    let up = find(&job, &loaded, (90.0, 90.0)).unwrap();
    assert!(up.reversed_m < 1e-9 && up.legs.len() == 1);
    // From the top down with the load uphill: in reverse.
    let mut down = loaded.clone();
    let route_down = |ask: &RouteAsk, heading: f64| {
        let from = RoutePose { at: TO.into(), heading: heading_from_degrees(heading) };
        let to = Stand { at: FROM.into(), heading: heading_from_degrees(heading) };
        route(&job, ask, from, to, &mut |_| ControlFlow::Continue(()))
    };
    let plan = route_down(&down, 90.0).unwrap();
    assert!((plan.reversed_m - 50.0).abs() < 1e-6, "{plan:?}");
    let refusal = route_down(&down, 270.0).unwrap_err();
    assert!(because(&refusal).contains(&"drive-load-downhill"), "{refusal:?}");
    down.load = None;
    assert!(route_down(&down, 270.0).unwrap().reversed_m < 1e-9, "empty, forks downhill");
    // Steeper than is driven at all.
    let steep = open_site(0.25);
    assert!(because(&find(&steep, &loaded, (90.0, 90.0)).unwrap_err()).contains(&"drive-along"));
}

#[test]
fn zones_are_kept() {
    let with = |rule: ZoneRule, loaded: bool| {
        let mut job = open_site(0.0);
        job.acceptances.clear();
        job.surroundings.zones = vec![zone(block((35.0, -5.0), (45.0, 65.0)), rule)];
        find(&job, &ask(&job, loaded), (90.0, 90.0))
    };
    for rule in [ZoneRule::NoGo, ZoneRule::People] {
        assert!(because(&with(rule, false).unwrap_err()).contains(&"drive-zone"), "{rule:?}");
    }
    assert!(because(&with(ZoneRule::Soft, true).unwrap_err()).contains(&"drive-soft"));
    // An empty machine sinks too; somebody may answer for the ground by name.
    assert!(because(&with(ZoneRule::Soft, false).unwrap_err()).contains(&"drive-soft"));
    let mut answered = open_site(0.0);
    answered.surroundings.zones = vec![zone(block((35.0, -5.0), (45.0, 65.0)), ZoneRule::Soft)];
    assert!(answered.acceptances.iter().any(|a| a.matter == planning::Matter::GroundStrength));
    assert!(find(&answered, &ask(&answered, false), (90.0, 90.0)).is_ok());
    let east = heading_from_degrees(90.0);
    assert!(with(ZoneRule::OneWay { heading: east }, true).is_ok());
    let against = with(ZoneRule::OneWay { heading: east + std::f64::consts::PI }, true).unwrap_err();
    assert!(because(&against).contains(&"drive-one-way"), "{against:?}");
    let slow = with(ZoneRule::Speed { most: 0.5 }, true).unwrap();
    let slowest = slow.profile.iter().map(|s| s.speed_m_s).fold(f64::INFINITY, f64::min);
    assert!(slowest == 0.5 && slow.time_s > 50.0 / 1.4 + 10.0 / 0.5 - 10.0 / 1.4, "{}", slow.time_s);
}

/// What is told of a way is read back as it was written; a pose on it at which nothing may be driven, between the places
/// that the search looks at, refuses it and never becomes a speed that is no number.
#[test]
fn a_route_is_read_back_as_it_was_written() {
    let open = open_site(0.0);
    let mut asked = ask(&open, true);
    let plan = find(&open, &asked, (90.0, 90.0)).unwrap();
    let again: RoutePlan = serde_json::from_str(&serde_json::to_string(&plan).unwrap()).unwrap();
    assert_eq!(again, plan);
    // A sliver under the front corners of the wheels' rectangle half-way, closed by a speed that is no number.
    asked.rules.drift = 0.0;
    let tyre = quantity::Si::si(&open.machines[asked.machine].machine.front.tyre.free_radius);
    let east = FROM.0 + 25.0 + tyre;
    let mut job = open_site(0.0);
    let sliver = block((east - 0.01, -5.0), (east + 0.01, 65.0));
    job.surroundings.zones = vec![zone(sliver, ZoneRule::Speed { most: f64::NAN })];
    let refusal = find(&job, &asked, (90.0, 90.0)).unwrap_err();
    assert_eq!((refusal.kind, because(&refusal)), (RefusalKind::GaveUp, vec!["drive-zone"]));
    let again: RouteRefusal = serde_json::from_str(&serde_json::to_string(&refusal).unwrap()).unwrap();
    assert_eq!(again, *refusal);
}

/// The rear axle runs on other ground than the front: it may not fall more across.
#[test]
fn the_rear_axle_is_looked_at() {
    let with = |across: &dyn Fn(f64) -> f64, oscillation: f64| {
        let mut job = open_site(0.0);
        let Terrain::Grid(grid) = &mut job.ground.surfaces[0].terrain else { panic!("a grid") };
        for i in 0..grid.heights.len() {
            let (row, col) = (i / grid.cols, i % grid.cols);
            grid.heights[i] = (across(col as f64) * (30.0 - row as f64)) as f32;
        }
        let asked = ask(&job, false);
        job.machines[asked.machine].machine.rear.oscillation = quantity::degrees(oscillation);
        find(&job, &asked, (90.0, 90.0))
    };
    // The front stands level where the way begins, the rear on ground that falls by 14 %.
    let falls = |x: f64| if x < 14.0 { 0.14 } else { 0.0 };
    let refusal = with(&falls, 20.0).unwrap_err();
    assert_eq!((refusal.kind, because(&refusal)), (RefusalKind::StartBarred, vec!["drive-across"]));
    // 5 % behind and level in front turn the axle by 2.9°: nothing where it swings by 9°, too much where by 2°.
    let turned = |x: f64| if x < 14.0 { 0.05 } else { 0.0 };
    let free = with(&turned, 9.0).unwrap();
    let least = free.margins.iter().find(|m| m.of.id == "drive-twist").unwrap();
    // What the survey may be wrong by turns it by another 0.8°.
    assert!((least.left.si.to_degrees() - (9.0 - 2.86 - 0.79)).abs() < 0.1, "{least:?}");
    let refusal = with(&turned, 2.0).unwrap_err();
    assert_eq!((refusal.kind, because(&refusal)), (RefusalKind::StartBarred, vec!["drive-twist"]));
    let refusal = with(&turned, f64::NAN).unwrap_err();
    assert!(because(&refusal).contains(&"drive-twist"), "{refusal:?}");
}

/// A wall right across with an opening: its sill is no road, its head is passed under.
#[test]
fn an_opening_is_driven_through_where_sill_head_and_jambs_leave_room() {
    let through = |sill: f64, head: f64, width: f64| {
        let mut job = open_site(0.0);
        let mut wall = thing(block((38.0, -5.0), (38.4, 65.0)), None, Some(9.0));
        // In both its faces.
        let jamb = |east: f64, north: f64| DVec2::new(east, north);
        let face = |east| site::Opening {
            from: jamb(east, 30.0 - width / 2.0),
            to: jamb(east, 30.0 + width / 2.0),
            sill,
            head,
        };
        wall.openings = vec![face(38.0), face(38.4)];
        // A yard around the start, so that a search that finds nothing ends soon.
        let closed =
            [block((18.0, 0.0), (24.0, 60.0)), block((24.0, 35.0), (38.0, 60.0)), block((24.0, 0.0), (38.0, 25.0))];
        let closed = closed.into_iter().map(|area| thing(area, None, Some(3.0)));
        job.surroundings.things = closed.chain([wall]).collect::<Vec<_>>().into();
        let heading = heading_from_degrees(90.0);
        let (from, to) =
            (RoutePose { at: DVec2::new(31.0, 30.0), heading }, Stand { at: DVec2::new(46.0, 30.0), heading });
        route(&job, &ask(&job, true), from, to, &mut |_| ControlFlow::Continue(()))
    };
    for sill in [0.0, -0.1] {
        assert!((through(sill, 6.0, 6.0).unwrap().length_m - 15.0).abs() < 1.0, "flush with the ground");
    }
    // Low heads and narrow gaps have their own tests; a search that ends without a way takes long.
    for (sill, head, width) in [(0.4, 6.0, 6.0), (f64::NAN, 6.0, 6.0)] {
        let refusal = through(sill, head, width).unwrap_err();
        assert!(because(&refusal).contains(&"drive-thing"), "{sill} {head} {width}: {refusal:?}");
    }
}

/// Something far off the way of which one corner is no number may be anywhere.
#[test]
fn what_may_be_anywhere_bars_everywhere() {
    type Put = (&'static str, fn(&mut Job, f64));
    let puts: [Put; 5] = [
        ("drive-thing", |j, y| {
            let outer = vec![(70.0, 50.0).into(), (72.0, 50.0).into(), (72.0, y).into()];
            j.surroundings.things = vec![thing(PlanArea { outer, holes: vec![] }, None, Some(3.0))].into();
        }),
        ("drive-thing", |j, y| {
            let area = block((70.0, 50.0), (72.0, 52.0));
            j.surroundings.things = vec![thing(area, Some(y), Some(60.0))].into();
        }),
        ("drive-line", |j, y| {
            let mut line = demo().lines[0].clone();
            let (from, to) = (geometry::DVec3::new(70.0, 55.0, 30.0), geometry::DVec3::new(75.0, y, 30.0));
            line.spans = vec![site::Span { from, to, sag: 0.5 }];
            j.lines = vec![line];
        }),
        ("drive-zone", |j, y| {
            let outer = vec![(70.0, 50.0).into(), (72.0, 50.0).into(), (72.0, y).into()];
            j.surroundings.zones = vec![zone(PlanArea { outer, holes: vec![] }, ZoneRule::NoGo)];
        }),
        ("drive-soft", |j, y| {
            j.acceptances.clear();
            let outer = vec![(70.0, 50.0).into(), (72.0, 50.0).into(), (72.0, y).into()];
            j.surroundings.zones = vec![zone(PlanArea { outer, holes: vec![] }, ZoneRule::Soft)];
        }),
    ];
    let mut passed = Vec::new();
    for (i, (by, put)) in puts.into_iter().enumerate() {
        let with = |y: f64| {
            let mut job = open_site(0.0);
            put(&mut job, y);
            find(&job, &ask(&job, true), (90.0, 90.0))
        };
        assert!(with(54.0).is_ok(), "{by}: {:?}", with(54.0).unwrap_err());
        if !with(f64::NAN).is_err_and(|refusal| because(&refusal).contains(&by)) {
            passed.push((i, by));
        }
    }
    assert_eq!(passed, []);
}

/// A thing of which a corner or the accuracy is no number is never far.
#[test]
fn what_is_no_number_bars() {
    let mut odd = open_site(0.0);
    odd.surroundings.things = vec![thing(block((70.0, 50.0), (72.0, 52.0)), None, Some(3.0))].into();
    assert!(find(&odd, &ask(&odd, true), (90.0, 90.0)).is_ok());
    let mut hut = thing(block((70.0, 50.0), (72.0, 52.0)), None, Some(3.0));
    hut.accuracy = f64::NAN;
    odd.surroundings.things = vec![hut].into();
    let refusal = find(&odd, &ask(&odd, true), (90.0, 90.0)).unwrap_err();
    assert!(because(&refusal).contains(&"drive-thing"), "{refusal:?}");
}

#[test]
fn everything_that_is_missing_is_said_at_once() {
    let mut job = open_site(0.0);
    job.ground.surfaces.clear();
    let mut asked = ask(&job, true);
    asked.turning = Turning { two_wheel: None, four_wheel: Some(f64::NAN), ..asked.turning };
    asked.load = Some(999);
    asked.rules.pace = f64::NAN;
    job.machines[asked.machine].flat[2] = true;
    let mut line = demo().lines[0].clone();
    (line.spans, line.course, line.dead) = (Vec::new(), Vec::new(), None);
    job.lines.push(line);
    job.lines_complete = None;
    let refusal = find(&job, &asked, (90.0, f64::NAN)).unwrap_err();
    assert_eq!(refusal.kind, RefusalKind::Missing);
    let all = because(&refusal);
    for id in ["drive-lines-open", "drive-no-line-place"] {
        assert!(all.contains(&id), "{id} in {all:?}");
    }
    for id in ["drive-no-load", "drive-flat", "drive-no-turning", "drive-no-ground", "drive-rules", "drive-no-place"] {
        assert!(all.contains(&id), "{id} in {all:?}");
    }
}
