//! Routes on seeded maps: free by brute force, ending where they should, alike in every run.

use crate::maps::{CELL, Case, case, vehicle};
use crate::seeded::SplitMix64;
use driving::{
    DriveMap, Gear, Going, GridMap, Margin, Motion, NoRoute, PlanBox, PlanPose, Progress, Raster, RasterFrame, Route,
    Settings, Spread, Steering, TargetField, Underway, Vehicle, route, swept,
};
use geometry::{DVec2, wrapped};
use std::ops::ControlFlow;

fn find(case: &Case) -> Result<Route, NoRoute<u8>> {
    let field = TargetField::prepare(&case.map, &case.vehicle, case.to);
    route(&case.map, &case.vehicle, &field, case.from, &Settings::default(), &mut |_| ControlFlow::Continue(()))
}

/// Every closed cell's square against every rectangle: axes of both separate them or they meet.
fn meets_brute(raster: &Raster<u8>, body: &PlanBox, pose: &PlanPose) -> bool {
    let frame = raster.frame();
    let corners = body.corners_at(pose);
    let outside = |p: &DVec2| frame.index(*p).is_none();
    corners.iter().any(outside)
        || (0..frame.len()).filter(|i| raster.cell(*i).is_some()).any(|i| {
            let half = 0.5 * frame.cell;
            let square = [(-1.0, -1.0), (1.0, -1.0), (1.0, 1.0), (-1.0, 1.0)]
                .map(|(x, y)| frame.centre(i) + half * DVec2::new(x, y));
            let (s, c) = pose.heading.sin_cos();
            let axes = [DVec2::X, DVec2::Y, DVec2::new(c, s), DVec2::new(-s, c)];
            axes.iter().all(|axis| {
                let range = |of: &[DVec2]| {
                    let along = of.iter().map(|p| p.dot(*axis));
                    (along.clone().fold(f64::INFINITY, f64::min), along.fold(f64::NEG_INFINITY, f64::max))
                };
                let (a, b) = (range(&square), range(&corners));
                a.0 <= b.1 && b.0 <= a.1
            })
        })
}

#[test]
fn a_rectangle_meets_the_cells_that_brute_force_says() {
    let mut rng = SplitMix64(3);
    let case = case(5, 160, false);
    let (mut met, mut clear) = (0, 0);
    for _ in 0..3000 {
        let pose = PlanPose::new(rng.within(-2.0, 42.0), rng.within(-2.0, 42.0), rng.within(-4.0, 4.0));
        let rear = rng.within(-4.0, 0.0);
        let body = PlanBox { rear, front: rear + rng.within(0.1, 7.0), half_width: rng.within(0.05, 2.0) };
        let expected = meets_brute(case.map.closed(), &body, &pose);
        assert_eq!(case.map.closed().meets(&body, &pose).is_some(), expected, "{body:?} at {pose:?}");
        if expected { met += 1 } else { clear += 1 }
    }
    assert!(met > 300 && clear > 300, "{met} met, {clear} clear");
}

/// A rectangle or a pose that is no number meets something on a map without anything closed.
#[test]
fn what_is_no_number_is_never_clear() {
    let frame = driving::RasterFrame { corner: DVec2::ZERO, cell: 0.5, cols: 80, rows: 80 };
    let open = driving::Raster::new(frame, vec![None; frame.len()], 1_u8);
    let (body, at) = (PlanBox { rear: -2.0, front: 2.0, half_width: 1.0 }, PlanPose::new(20.0, 20.0, 0.3));
    assert_eq!(open.meets(&body, &at), None);
    for odd in [
        PlanBox { rear: f64::NAN, ..body },
        PlanBox { front: f64::NAN, ..body },
        PlanBox { half_width: f64::NAN, ..body },
    ] {
        assert_eq!(open.meets(&odd, &at), Some(1), "{odd:?}");
    }
    for odd in
        [PlanPose::new(f64::NAN, 20.0, 0.3), PlanPose::new(20.0, f64::NAN, 0.3), PlanPose::new(20.0, 20.0, f64::NAN)]
    {
        assert_eq!(open.meets(&body, &odd), Some(1), "{odd:?}");
    }
}

/// A map on which nobody turns on stripes narrower than the poses asked lie apart.
struct NoTurning<'a>(&'a GridMap<u8>);

impl NoTurning<'_> {
    fn stripe(at: DVec2) -> bool {
        at.x.rem_euclid(2.0) < 0.3 || at.y.rem_euclid(2.0) < 0.3
    }
}

impl DriveMap for NoTurning<'_> {
    type What = u8;

    fn barred(&self, pose: &PlanPose, spread: Spread) -> Option<u8> {
        self.0.barred(pose, spread)
    }

    fn going(&self, underway: &Underway) -> Result<Going, u8> {
        let turns = underway.curvature != 0.0 && Self::stripe(underway.pose.at);
        if turns { Err(9) } else { self.0.going(underway) }
    }

    fn stations(&self) -> f64 {
        self.0.stations()
    }

    fn margins(&self, underway: &Underway) -> Vec<Margin<u8>> {
        self.0.margins(underway)
    }

    fn closed(&self) -> &Raster<u8> {
        self.0.closed()
    }

    fn least_cost(&self, cell: usize) -> f64 {
        self.0.least_cost(cell)
    }

    fn outline(&self) -> &[PlanBox] {
        self.0.outline()
    }
}

/// The map is asked at both ends of every leg, with the leg's own curvature: there the next one begins.
#[test]
fn the_ends_of_every_leg_are_asked() {
    let mut bends = 0;
    for seed in 1..=6 {
        let case = case(seed, 160, false);
        let map = NoTurning(&case.map);
        let field = TargetField::prepare(&map, &case.vehicle, case.to);
        let settings = Settings { most: 20_000, ..Settings::default() };
        let go = &mut |_| ControlFlow::Continue(());
        let Ok(found) = route(&map, &case.vehicle, &field, case.from, &settings, go) else { continue };
        for leg in &found.legs {
            if leg.motion.curvature == 0.0 {
                continue;
            }
            bends += 1;
            for length in [0.0, leg.motion.length] {
                let pose = leg.motion.at(&case.vehicle, &leg.from, length);
                assert!(!NoTurning::stripe(pose.at), "map {seed}: turns at {pose:?}");
            }
        }
    }
    assert!(bends > 3, "{bends}");
}

#[test]
fn every_pose_of_a_route_is_free_by_brute_force() {
    let mut ways = 0;
    for seed in 1..=12 {
        let case = case(seed, 160, seed % 2 == 0);
        let found = match find(&case) {
            Ok(found) => found,
            Err(NoRoute::Narrow(narrow)) if narrow.width < 2.4 => continue,
            Err(other) => panic!("map {seed}: {other:?}"),
        };
        ways += 1;
        let mut last = found.from;
        for on in found.poses(&case.vehicle, 0.02) {
            for body in case.map.outline() {
                assert!(!meets_brute(case.map.closed(), body, &on.pose), "map {seed} at {:?}", on.pose);
            }
            assert!(on.pose.at.distance(last.at) < 0.04, "map {seed}: a jump to {:?}", on.pose);
            last = on.pose;
        }
        let off = last.at.distance(case.to.at) + wrapped(last.heading - case.to.heading).abs();
        assert!(off < 1e-6, "map {seed} ends {off} away");
        assert!(found.length() >= case.from.at.distance(case.to.at) - 2.0 * case.vehicle.wheelbase);
        assert!(found.time >= found.length() / 1.5);
    }
    assert!(ways >= 10, "{ways} of 12 maps have a way");
}

#[test]
fn the_swept_ground_holds_the_machine_at_every_pose() {
    let case = case(4, 160, false);
    let found = find(&case).unwrap();
    let pieces = swept(&case.vehicle, &case.vehicle.outline, &found, 0.7);
    let inside = |p: DVec2, piece: &[DVec2]| {
        (0..piece.len()).all(|i| (piece[(i + 1) % piece.len()] - piece[i]).perp_dot(p - piece[i]) >= -1e-9)
    };
    for on in found.poses(&case.vehicle, 0.05) {
        for corner in case.vehicle.outline.iter().flat_map(|b| b.corners_at(&on.pose)) {
            assert!(pieces.iter().any(|piece| inside(corner, piece)), "{corner} at {:?}", on.pose);
        }
    }
}

#[test]
fn a_spread_outline_holds_all_of_a_motion() {
    let mut rng = SplitMix64(11);
    let mut vehicle = vehicle();
    vehicle.turning.two_wheel = Some(5.0);
    vehicle.turning.crab = Some(0.4);
    for k in 0..400 {
        let steering = Steering::ALL[k % 3];
        let (curvature, slant) = match vehicle.turning.radius(steering) {
            Some(r) => (rng.within(-1.0, 1.0) / r, 0.0),
            None => (0.0, rng.within(-0.4, 0.4)),
        };
        let length = rng.within(-4.0, 4.0);
        let motion = Motion { steering, curvature, slant, length };
        let from = PlanPose::new(rng.within(-5.0, 5.0), 3.0, rng.within(-3.0, 3.0));
        let middle = motion.at(&vehicle, &from, 0.5 * length);
        let spread = motion.spread(&vehicle, &vehicle.outline, 0.5 * length);
        for part in 0..=40 {
            let pose = motion.at(&vehicle, &from, length * f64::from(part) / 40.0);
            for body in &vehicle.outline {
                let larger = body.spread(Spread { along: spread.along + 1e-9, across: spread.across + 1e-9 });
                for corner in body.corners_at(&pose) {
                    assert!(larger.contains(middle.seen_from(corner)), "{motion:?} at part {part}");
                }
            }
        }
    }
}

/// The middle of no axle slips sideways: where it is steered straight it moves along the heading.
#[test]
fn pivots_move_along_the_heading_and_axles_as_steered() {
    let mut vehicle = vehicle();
    vehicle.turning.two_wheel = Some(5.6);
    let from = PlanPose::new(1.0, 2.0, 0.7);
    for (steering, radius) in [(Steering::TwoWheel, 5.6), (Steering::FourWheel, 2.8)] {
        let motion = Motion { steering, curvature: 1.0 / radius, slant: 0.0, length: 1e-4 };
        let moved = |x: f64| motion.end(&vehicle, &from).place(DVec2::new(x, 0.0)) - from.place(DVec2::new(x, 0.0));
        let angle = |x: f64| wrapped(moved(x).y.atan2(moved(x).x) - from.heading);
        assert!(angle(vehicle.pivot(steering)).abs() < 1e-4);
        // L = 3 m: tan δ = L/R with two wheels, (L/2)/R at either axle with four.
        let (front, rear) = match steering {
            Steering::TwoWheel => ((3.0 / radius).atan(), 0.0),
            _ => ((1.5 / radius).atan(), -(1.5 / radius).atan()),
        };
        assert!((angle(0.0) - front).abs() < 1e-4 && (angle(-3.0) - rear).abs() < 1e-4, "{steering:?}");
    }
}

#[test]
fn the_same_question_has_the_same_answer() {
    let case = case(7, 200, true);
    assert_eq!(find(&case), find(&case));
}

/// A wall across the map with an opening of so many cells.
fn walled(opening: usize) -> Case {
    let n = 120;
    let frame = RasterFrame { corner: DVec2::ZERO, cell: CELL, cols: n, rows: n };
    let mut why = vec![None; n * n];
    for col in 0..n {
        for row in 60..64 {
            if !(50..50 + opening).contains(&col) {
                why[row * n + col] = Some(7);
            }
        }
    }
    let vehicle = vehicle();
    let map = GridMap::new(Raster::new(frame, why, 0), &vehicle, 1.5);
    let (from, to) = (PlanPose::new(14.0, 7.0, 1.5), PlanPose::new(14.0, 24.0, 1.5));
    Case { map, vehicle, from, to }
}

#[test]
fn an_opening_is_passed_or_its_width_is_said() {
    // 2.4 m wide with spread between samples: 2.5 m is passed, 2.25 m is not.
    let found = find(&walled(10)).unwrap();
    assert!(found.length() > 15.0);
    let narrow = match find(&walled(9)) {
        Err(NoRoute::Narrow(narrow)) => narrow,
        other => panic!("2.25 m: {other:?}"),
    };
    assert!((narrow.width - 2.25).abs() < 0.02 && narrow.needed == 2.4, "{narrow:?}");
    assert!(narrow.at.distance(DVec2::new(13.6, 15.5)) < 1.0 && narrow.between == [7], "{narrow:?}");
    let Err(NoRoute::WalledIn { nearest, short, by }) = find(&walled(0)) else { panic!("passes a wall") };
    // The middle of the wheelbase stops 1.2 m before the wall at 15 m, whatever the heading.
    assert!(by == [7] && nearest.at.y < 15.5 && (8.0..13.0).contains(&short), "{nearest:?} {short} {by:?}");
}

#[test]
fn what_cannot_be_asked_is_said() {
    let start = Case { from: PlanPose::new(1.0, 15.0, 0.0), ..walled(20) };
    assert_eq!(find(&start), Err(NoRoute::StartBarred(vec![0])));
    let target = Case { to: PlanPose::new(5.0, 15.5, 0.0), ..walled(20) };
    assert_eq!(find(&target), Err(NoRoute::TargetBarred(vec![7])));
    let nowhere = Case { from: PlanPose::new(f64::NAN, 15.0, 0.0), ..walled(20) };
    assert_eq!(find(&nowhere), Err(NoRoute::NotANumber));
    let mut still = walled(20);
    still.vehicle.turning.four_wheel = None;
    assert_eq!(find(&still), Err(NoRoute::Vehicle(driving::VehicleError::NoTurning)));
    let mut nan = walled(20);
    nan.vehicle.outline[0].front = f64::NAN;
    assert_eq!(find(&nan), Err(NoRoute::Vehicle(driving::VehicleError::Outline)));
    let shut = walled(9);
    let field = TargetField::prepare(&shut.map, &shut.vehicle, shut.to);
    let mut asked = 0;
    let stop = &mut |_: Progress| {
        asked += 1;
        ControlFlow::Break(())
    };
    assert_eq!(route(&shut.map, &shut.vehicle, &field, shut.from, &Settings::default(), stop), Err(NoRoute::Stopped));
    assert_eq!(asked, 1);
}

#[test]
fn a_stand_behind_is_reached_in_reverse_and_crab_moves_aside() {
    let n = 120;
    let frame = RasterFrame { corner: DVec2::ZERO, cell: CELL, cols: n, rows: n };
    let mut vehicle = vehicle();
    let map = |v: &Vehicle| GridMap::new(Raster::new(frame, vec![None; n * n], 0_u8), v, 1.5);
    let (from, to) = (PlanPose::new(15.0, 15.0, 0.5), PlanPose::new(15.0, 15.0, 0.5));
    let behind = PlanPose { at: from.place(DVec2::new(-4.0, 0.0)), ..to };
    let case = Case { map: map(&vehicle), vehicle: vehicle.clone(), from, to: behind };
    let found = find(&case).unwrap();
    assert_eq!((found.legs.len(), found.legs[0].motion.gear()), (1, Gear::Reverse));
    assert!((found.length() - 4.0).abs() < 1e-9 && (found.cost - 6.0).abs() < 1e-9);

    vehicle.turning.crab = Some(0.5);
    let motion = Motion { steering: Steering::Crab, curvature: 0.0, slant: 0.5, length: 2.0 };
    let end = motion.end(&vehicle, &from);
    assert!(end.heading == 0.5 && (end.at - from.at - 2.0 * DVec2::new(1_f64.cos(), 1_f64.sin())).length() < 1e-12);
}
