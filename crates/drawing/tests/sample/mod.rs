//! Plans made by hand for the tests of the drawings and of the report. Everything in them is
//! invented.
#![allow(dead_code, clippy::disallowed_methods, reason = "shared by several tests, each uses a part")]

use evidence::{Certainty, Finding, Message, Ranged, Source, Status, Step, Verdict, Working};
use machine::SupportState;
use planning::route::{Gear, RefusalKind, RouteLeg, RouteMargin, RoutePlan, RouteRefusal, RouteStation, Steering};
use planning::{
    BoomMovement, BoomStep, ChartScene, ChartZoneScene, ElevationScene, FieldKind, FieldScene, FieldState, FoundStand,
    InputLine, LiftPlan, LiftWay, LineScene, LoadSummary, Plan, PlanHead, PlanViewScene, PolygonScene, Reason,
    SmallestReserve, StandSummary, StandTolerance, Task, WayThing, WayThingKind, WheelForce, text,
};
use quantity::{Dimension, Quantity};

fn q(si: f64, dimension: Dimension) -> Quantity {
    Quantity::new(si, dimension)
}
fn m(si: f64) -> Quantity {
    q(si, Dimension::Length)
}
fn kg(si: f64) -> Quantity {
    q(si, Dimension::Mass)
}
fn deg(d: f64) -> Quantity {
    q(d.to_radians(), Dimension::Angle)
}

/// A way of 24 m: forward to the east and up a bank of 12 %, a stop, and 6 m back to the north-east.
pub(crate) fn way() -> LiftWay {
    let begin = (412_272.0, 5_611_994.0);
    let station = |along: f64| {
        let forward = along <= 18.0;
        let (x, y, heading) = if forward {
            (begin.0 + along, begin.1, 90.0)
        } else {
            // Tail first to the north-east: the boom points south-west.
            let back = along - 18.0;
            (begin.0 + 18.0 + back * 0.6, begin.1 + back * 0.8, 216.87)
        };
        let steep = (6.0..12.0).contains(&along);
        RouteStation {
            along_m: along,
            at: [x, y],
            heading_deg: heading,
            height_m: 100.0 + 0.12 * (along.clamp(6.0, 12.0) - 6.0),
            slope_along: Ranged::plus_minus(if steep { 0.12 } else { 0.01 }, 0.01),
            slope_across: Ranged::plus_minus(-0.02, 0.01),
            speed_m_s: if forward { 1.4 } else { 0.7 },
            gear: if forward { Gear::Forward } else { Gear::Reverse },
        }
    };
    let leg = |gear, length_m, speed_m_s| RouteLeg {
        gear,
        steering: Steering::FourWheel,
        length_m,
        radius_m: None,
        slant_deg: 0.0,
        speed_m_s,
    };
    let square = |x: f64, y: f64, w: f64, h: f64| {
        let (x, y) = (begin.0 + x, begin.1 + y);
        vec![[x, y], [x + w, y], [x + w, y + h], [x, y + h]]
    };
    let margin = |of: Message, left, along_m: f64| RouteMargin { of, left, along_m, at: station(along_m).at };
    let there = RoutePlan {
        machine: "M".into(),
        load: Some("Pallet of bricks".into()),
        legs: vec![leg(Gear::Forward, 18.0, 1.4), leg(Gear::Reverse, 6.0, 0.7)],
        length_m: 24.0,
        reversed_m: 6.0,
        gear_changes: 1,
        steering_changes: 0,
        time_s: 34.0,
        profile: (0..=48).map(|i| station(f64::from(i) * 0.5)).collect(),
        margins: vec![
            margin(text::DRIVE_ACROSS.message(), Quantity::slope(0.03), 9.0),
            margin(text::DRIVE_THING.with("name", "Hut"), m(0.42), 16.0),
        ],
        outline: vec![
            vec![[-4.0, -1.2], [0.6, -1.2], [0.6, 1.2], [-4.0, 1.2]],
            vec![[0.6, -0.6], [3.0, -0.6], [3.0, 0.6], [0.6, 0.6]],
        ],
        swept: vec![square(-4.0, -1.2, 25.0, 2.4)],
        notes: vec![text::DRIVE_NOTE_NOT_LOOKED_AT.message()],
    };
    let thing = |name: &str, kind, thing, outline| WayThing {
        name: name.to_owned(),
        kind,
        thing,
        outlines: vec![outline],
        set_back_m: (kind == WayThingKind::Excavation).then_some(1.5),
    };
    LiftWay {
        from: "East gate (invented)".into(),
        begins: vec![[begin.0, begin.1 - 2.5], [begin.0, begin.1 + 2.5]],
        around: vec![
            thing("Hut", WayThingKind::Thing, Some(planning::ThingKind::Building), square(14.0, 2.2, 4.0, 3.0)),
            thing("Trench", WayThingKind::Excavation, None, square(4.0, -8.0, 6.0, 2.0)),
            thing("Footpath", WayThingKind::People, None, square(20.0, -9.0, 3.0, 5.0)),
            thing("Line over the gate", WayThingKind::Line, None, square(1.0, -9.0, 0.5, 19.0)[1..3].to_vec()),
        ],
        way_in: Some(there),
        way_out: None,
        refused_out: true,
        refused: Some(RouteRefusal {
            kind: RefusalKind::Narrow,
            message: text::DRIVE_NARROW
                .with("width", Quantity::new(2.9, Dimension::Length))
                .with("needed", Quantity::new(3.3, Dimension::Length))
                .with("lacking", Quantity::new(0.4, Dimension::Length)),
            because: vec![text::DRIVE_THING.with("name", "Hut")],
            at: Some([begin.0 + 10.0, begin.1]),
            remedy: text::DO_DRIVE_STATE.message(),
        }),
    }
}

/// A lift of bricks onto a scaffold landing, on tyres, with an overhead line ahead.
pub(crate) fn bricks() -> LiftPlan {
    let (pivot, angle) = ((-3.1, 2.05), 38.0_f64.to_radians());
    // The machine stands 2.8 % nose up, and the boom's angle counts from it.
    let pitch = 0.028_f64.atan();
    let at = |l: f64| (pivot.0 + l * (angle + pitch).cos(), pivot.1 + l * (angle + pitch).sin());
    let (a, b, c, d) = (at(5.4), at(2.4), at(7.4), at(9.6));
    let tip = at(9.6);
    let heel = (tip.0 + 0.55, tip.1 - 0.5);
    let load = vec![(heel.0, heel.1), (heel.0 + 1.05, heel.1), (heel.0 + 1.05, heel.1 + 1.1), (heel.0, heel.1 + 1.1)];
    let datum = (0.62, 0.02);
    let point = (heel.0 + 0.5, heel.1);
    let (reach, height) = (point.0 - datum.0, point.1 - datum.1);
    LiftPlan {
        id: "L1".into(),
        name: "Facing bricks to scaffold lift 2".into(),
        machine: "Demo 14 m (invented)".into(),
        attachment: "Pallet forks 1.2 m".into(),
        support: SupportState::Tyres,
        landing: "Loading bay, north face".into(),
        task: Task::SetDown,
        load: LoadSummary {
            name: "Pack of facing bricks".into(),
            mass_kg: Ranged { low: 1665.0, nominal: 1850.0, high: 2035.0 },
            certainty: Certainty::BuiltUp,
            centre_ahead_m: Ranged::plus_minus(0.52, 0.03),
            centre_left_m: Ranged::plus_minus(0.0, 0.05),
            centre_up_m: Ranged::plus_minus(0.55, 0.05),
            size_m: [1.05, 1.0, 1.1],
        },
        stand: StandSummary {
            east_m: 412_310.25,
            north_m: 5_612_004.5,
            heading_deg: 47.0,
            wheel_heights_m: [Some(0.03), Some(0.05), Some(-0.08), Some(-0.04)],
            slope_along: Some(Ranged::plus_minus(0.028, 0.01)),
            slope_across: Some(Ranged::plus_minus(-0.009, 0.01)),
            face_to_landing_m: 3.26,
            passes_left_m: -0.12,
            ground: Some("survey/levels.csv".into()),
            boom_angle_rad: Some(angle),
            extension_m: Some(4.2),
            reach_m: Some(reach),
            height_m: Some(height),
        },
        verdict: Verdict::GoWithConditions,
        governing: 1,
        findings: findings(),
        steps: vec![
            text::STEP_DRIVE_IN.with("heading", deg(47.0)),
            text::STEP_READ_LEVEL.with("across", deg(0.5)).with("along", deg(1.6)),
            text::STEP_TRIAL_LIFT.message(),
            text::STEP_RAISE.with("angle", deg(38.0)),
            text::STEP_EXTEND.with("extension", m(4.2)),
            text::STEP_SET_DOWN.with("height", m(0.45)).with("angle", deg(36.5)).with("extension", m(4.1)),
            text::STEP_WITHDRAW.message(),
            text::STEP_STOP_WHEN.with("gust", q(10.0, Dimension::Speed)),
        ],
        tolerances: tolerances(),
        stand_from: planning::StandFrom::Found,
        shares_stand_with: None,
        stand_tolerance: Some(StandTolerance {
            disc_m: 0.35,
            disc_by: Some(Reason::Line),
            disc_way: Some(text::WAY_AHEAD.message()),
            turn_rad: 4.0_f64.to_radians(),
            turn_by: None,
        }),
        other_stands: vec![FoundStand {
            east_m: 412_308.5,
            north_m: 5_612_007.25,
            heading_deg: 58.0,
            verdict: Verdict::GoWithConditions,
            reserve: Some(0.06),
            governing: "chart".into(),
            tolerance: StandTolerance {
                disc_m: 0.2,
                disc_by: Some(Reason::Chart),
                disc_way: None,
                turn_rad: 0.1,
                turn_by: None,
            },
        }],
        field: Some(field()),
        way: Some(way()),
        plan_view: Some(plan_view()),
        changes: Vec::new(),
        movement: Some(movement()),
        wheels: [
            (text::WHEEL_FRONT_RIGHT, 58_200.0),
            (text::WHEEL_FRONT_LEFT, 54_900.0),
            (text::WHEEL_REAR_RIGHT, 14_300.0),
            (text::WHEEL_REAR_LEFT, 12_050.0),
        ]
        .map(|(name, force_n)| WheelForce {
            name: name.message(),
            force_n,
            pressure_pa: Some(force_n / 0.12),
            area_m2: Some(0.12),
        })
        .to_vec(),
        elevation: Some(ElevationScene {
            ground: (-60..=160)
                .map(|i| {
                    let s = f64::from(i) * 0.1;
                    (s, (!(3.0..5.2).contains(&s)).then(|| 0.028 * s + 0.04 * (s * 1.7).sin()))
                })
                .collect(),
            machine: vec![
                PolygonScene {
                    kind: "frame".into(),
                    outline: vec![
                        (-4.0, 0.55),
                        (0.9, 0.75),
                        (0.9, 1.15),
                        (-0.2, 1.35),
                        (-2.9, 1.45),
                        (-4.1, 1.9),
                        (-4.3, 1.2),
                    ],
                },
                PolygonScene {
                    kind: "cab".into(),
                    outline: vec![(-1.9, 0.9), (-0.55, 0.95), (-0.5, 1.6), (-0.85, 2.55), (-1.85, 2.5)],
                },
            ],
            wheels: vec![(0.0, 0.62, 0.62), (-3.0, 0.62 - 3.0 * 0.028, 0.62)],
            boom: vec![
                (pivot.0, pivot.1, a.0, a.1, 0.42),
                (b.0, b.1, c.0, c.1, 0.34),
                (at(4.6).0, at(4.6).1, d.0, d.1, 0.27),
            ],
            tool: vec![tip, (heel.0, heel.1 + 1.0), heel, (heel.0 + 1.2, heel.1)],
            load,
            sling: None,
            load_centre: (heel.0 + 0.52, heel.1 + 0.55),
            landing: (heel.0 - 0.1, heel.0 + 6.0, heel.1 - 0.15),
            datum,
            chart_point: point,
            lines: vec![LineScene {
                name: "11 kV feeder along the lane".into(),
                at: (9.5, 9.4),
                aside_m: 0.0,
                required_m: Some(4.05),
                nearest_m: Some(4.6),
            }],
        }),
        chart: Some(ChartScene {
            zones: zones(),
            not_permitted: vec![vec![(0.0, 0.0), (1.2, 0.0), (1.2, 2.0), (0.0, 2.0)]],
            at: (reach, height),
            low: (reach - 0.15, height - 0.12),
            high: (reach + 0.32, height + 0.15),
            load_kg: 2035.0,
            load_centre_m: 0.5,
            support: SupportState::Tyres,
            cap_kg: None,
            datum: text::DATUM_TYRE_LOAD_CENTRE.message(),
            zone: Some(2),
        }),
    }
}

/// A field of half-metre cells: go in a disc about the stand, conditions around it, a line to the east, the rest out of
/// reach.
pub(crate) fn field() -> FieldScene {
    let (side, cell_m, centre) = (61_usize, 0.5, (412_313.6, 5_612_007.6));
    let of = |state, by| FieldKind { state, by, area_m2: 0.0 };
    let mut kinds = vec![
        of(FieldState::Outside, None),
        of(FieldState::Go, None),
        of(FieldState::Condition, None),
        of(FieldState::NoGo, Some(Reason::Line)),
        of(FieldState::NoGo, Some(Reason::Reach)),
        of(FieldState::CannotTell, Some(Reason::Survey)),
    ];
    let mut runs: Vec<(usize, usize)> = Vec::new();
    for i in 0..side * side {
        let at = |k: usize| (k as f64 - 30.0) * cell_m;
        let (x, y) = (at(i % side), at(i / side));
        let away = ((x + 3.35).powi(2) + (y + 3.1).powi(2)).sqrt();
        let kind = match (x.hypot(y), away) {
            (r, _) if r > 15.0 => 0,
            (_, a) if a < 2.0 => 1,
            (_, a) if a < 3.0 => 2,
            _ if x > 2.0 => 3,
            _ if y < -9.0 => 5,
            _ => 4,
        };
        kinds[kind].area_m2 += cell_m * cell_m;
        match runs.last_mut() {
            Some((last, count)) if *last == kind => *count += 1,
            _ => runs.push((kind, 1)),
        }
    }
    FieldScene { centre, cell_m, side, directed: true, kinds, runs, everywhere: Vec::new() }
}

fn plan_view() -> PlanViewScene {
    let ring = |x0: f64, x1: f64, y0: f64, y1: f64| vec![(x0, y0), (x1, y0), (x1, y1), (x0, y1)];
    let (e, n) = (412_313.6, 5_612_007.6);
    PlanViewScene {
        landing_at: (e, n),
        landing: ring(e - 1.0, e + 1.0, n - 0.8, n + 0.8),
        approach: Some((47.0, 15.0)),
        body: ring(-4.3, 0.9, -1.15, 1.15),
        contacts: [(0.0, 0.95), (0.0, -0.95), (-3.0, 0.95), (-3.0, -0.95)]
            .map(|(x, y)| ring(x - 0.62, x + 0.62, y - 0.2, y + 0.2))
            .to_vec(),
        front_face_m: 0.62,
    }
}

fn movement() -> BoomMovement {
    let foot = (-3.1, 2.05);
    let step = |degrees: f64, extension_m: f64, loaded: bool, what: Message| {
        let (s, c) = degrees.to_radians().sin_cos();
        let end = (foot.0 + (5.4 + extension_m) * c, foot.1 + (5.4 + extension_m) * s);
        let tool = (end.0 + 0.55, end.1 - 0.5);
        let load = [(0.0, 0.0), (1.05, 0.0), (1.05, 1.1), (0.0, 1.1)].map(|(x, z)| (tool.0 + x, tool.1 + z));
        BoomStep {
            angle_rad: degrees.to_radians(),
            extension_m,
            tilt_rad: 0.0,
            tool,
            boom: vec![foot, end, (end.0 + 0.1, end.1 - 0.3)],
            load: if loaded { load.to_vec() } else { Vec::new() },
            loaded,
            straight: false,
            what,
        }
    };
    let steps = vec![
        step(4.0, 0.0, true, text::STEP_WAY_CARRY.message()),
        step(38.0, 0.0, true, text::STEP_RAISE.with("angle", deg(38.0))),
        step(38.0, 4.2, true, text::STEP_WAY_EXTEND.with("extension", m(4.2))),
        step(
            36.5,
            4.1,
            true,
            text::STEP_SET_DOWN.with("height", m(0.45)).with("angle", deg(36.5)).with("extension", m(4.1)),
        ),
        step(36.5, 3.0, false, text::STEP_WAY_WITHDRAW.message()),
        step(4.0, 0.0, false, text::STEP_WAY_LOWER.with("angle", deg(4.0))),
    ];
    let smallest = SmallestReserve {
        reserve: 0.06,
        check: "chart".into(),
        angle_rad: steps[2].angle_rad,
        extension_m: steps[2].extension_m,
        tool: steps[2].tool,
    };
    BoomMovement { steps, smallest: Some(smallest), plain: true }
}

fn zones() -> Vec<ChartZoneScene> {
    let ring = |name: &str, capacity_kg: f64, r0: f64, r1: f64| {
        let (cx, cy) = (-3.6, 1.9);
        let steps = 14;
        let arc = |r: f64| {
            (0..=steps).map(move |i| {
                let a = (-14.0 + 80.0 * f64::from(i) / f64::from(steps)).to_radians();
                (cx + r * a.cos(), (cy + r * a.sin()).max(0.0))
            })
        };
        let mut outline: Vec<(f64, f64)> = arc(r1).collect();
        outline.extend(arc(r0).collect::<Vec<_>>().into_iter().rev());
        for p in &mut outline {
            p.0 = p.0.max(0.0);
        }
        let reserve = 1.0 - 2035.0 / capacity_kg;
        ChartZoneScene { name: name.into(), capacity_kg, counted_kg: capacity_kg, reserve, outline }
    };
    vec![
        ring("A", 4000.0, 4.2, 6.2),
        ring("B", 3000.0, 6.2, 8.4),
        ring("C", 2208.0, 8.4, 10.6),
        ring("D", 1800.0, 10.6, 12.8),
        ring("E", 1250.0, 12.8, 15.2),
    ]
}

fn findings() -> Vec<Finding> {
    let working = Working {
        steps: vec![
            Step {
                title: Message { id: "working-capacity".into(), args: vec![("zone".into(), "C".into())] },
                formula: "Q = f · Q_zone".into(),
                values: vec![("f".into(), Quantity::number(0.96)), ("Q_zone".into(), kg(2300.0))],
                result: ("Q".into(), kg(2208.0)),
                source: Source::Input { place: "machines/demo-14.toml, chart[0]".into(), certainty: Certainty::Chart },
            },
            Step {
                title: Message { id: "working-reserve".into(), args: vec![] },
                formula: "R = 1 − W / Q".into(),
                values: vec![("W".into(), kg(2035.0)), ("Q".into(), kg(2208.0))],
                result: ("R".into(), Quantity::ratio(1.0 - 2035.0 / 2208.0)),
                source: Source::Mechanics,
            },
        ],
    };
    vec![
        Finding::new(
            "machine",
            Status::Go,
            text::MACHINE_INSPECTED.with("machine", "Demo 14 m").with("by", "J. Example"),
        ),
        Finding::new(
            "chart",
            Status::Condition,
            text::CHART_WITHIN
                .with("mass", kg(2035.0))
                .with("capacity", kg(2208.0))
                .with("zone", "C")
                .with("reach", m(5.0))
                .with("height", m(7.4)),
        )
        .measured(kg(2035.0), kg(2208.0), 1.0 - 2035.0 / 2208.0)
        .remedy(text::STEP_TRIAL_LIFT)
        .source(Source::read("29 CFR 1926.602(c)(1)(vi)"))
        .working(working.clone()),
        Finding::new(
            "load-factor",
            Status::Go,
            text::LOAD_FACTOR_ENOUGH
                .with("factor", Quantity::number(1.71))
                .with("required", Quantity::number(1.33))
                .with("tipping", kg(3480.0)),
        )
        .measured(Quantity::number(1.33), Quantity::number(1.71), 1.0 - 1.33 / 1.71)
        .source(Source::CommonPractice),
        Finding::new(
            "tilt",
            Status::Go,
            text::TILT_ENOUGH
                .with("tilt", Quantity::slope(0.19))
                .with("required", Quantity::slope(0.12))
                .with("side", text::SIDE_RIGHT),
        )
        .measured(Quantity::slope(0.12), Quantity::slope(0.19), 0.37)
        .source(Source::from_memory("ISO 22915-14")),
        Finding::new("wind", Status::CannotTell, text::WIND_NOT_STATED).remedy(text::DO_STATE_WIND),
        Finding::new(
            "line",
            Status::Go,
            text::LINE_CLEAR
                .with("line", "11 kV feeder along the lane")
                .with("distance", m(4.6))
                .with("required", m(4.05)),
        )
        .measured(m(4.05), m(4.6), 0.12)
        .source(Source::read("29 CFR 1926.1408, Table A")),
        Finding::new(
            "ground",
            Status::NoGo,
            text::GROUND_UNKNOWN
                .with("wheel", text::WHEEL_FRONT_RIGHT)
                .with("force", q(58_200.0, Dimension::Force))
                .with("pressure", q(485_000.0, Dimension::Pressure)),
        )
        .measured(q(485_000.0, Dimension::Pressure), q(400_000.0, Dimension::Pressure), -0.21)
        .remedy(text::DO_STATE_GROUND.with("pressure", q(485_000.0, Dimension::Pressure)))
        .remedy(text::DO_MATS)
        .working(working),
        Finding::new(
            "people",
            Status::Go,
            text::MATTER_ACCEPTED
                .with("matter", text::CHECK_PEOPLE)
                .with("by", "M. Sample, lift supervisor")
                .with("statement", "barriers and a banksman at both ends of the lane"),
        )
        .source(Source::Person {
            name: "M. Sample, lift supervisor".into(),
            statement: "barriers at both ends".into(),
        }),
    ]
}

/// A hung load on a jib, stabilizers down, no ground, a line of unknown voltage to the side.
pub(crate) fn hung() -> LiftPlan {
    let mut lift = bricks();
    lift.id = "L2".into();
    lift.name = "Roof light on the jib".into();
    lift.attachment = "Jib 2 m with hook".into();
    lift.support = SupportState::Stabilizers;
    lift.task = Task::PickUp;
    lift.verdict = Verdict::NoGo;
    lift.governing = 6;
    if let Some(scene) = &mut lift.elevation {
        let hook = scene.tool[0];
        let hook = (hook.0 + 1.6, hook.1 + 0.7);
        scene.ground.clear();
        scene.tool = vec![scene.tool[0], hook];
        let top = (hook.0, hook.1 - 1.5);
        scene.load =
            vec![(top.0 - 0.9, top.1), (top.0 + 0.9, top.1), (top.0 + 0.9, top.1 - 0.4), (top.0 - 0.9, top.1 - 0.4)];
        scene.load_centre = (top.0, top.1 - 0.2);
        scene.sling = Some((hook.0, hook.1, top.0, top.1));
        scene.chart_point = hook;
        scene.landing = (top.0 - 1.0, top.0 + 3.0, top.1 - 0.6);
        scene.machine.push(PolygonScene {
            kind: "stabilizer".into(),
            outline: vec![(0.7, 0.0), (1.3, 0.0), (1.1, 0.1), (0.95, 0.9), (0.75, 0.9)],
        });
        scene.lines = vec![
            LineScene {
                name: "Yard lighting".into(),
                at: (7.0, 9.0),
                aside_m: 3.4,
                required_m: None,
                nearest_m: Some(5.0),
            },
            LineScene {
                name: "20 kV".into(),
                at: (-3.0, 10.5),
                aside_m: 2.2,
                required_m: Some(3.05),
                nearest_m: Some(6.1),
            },
            LineScene {
                name: "Far line".into(),
                at: (60.0, 12.0),
                aside_m: 0.0,
                required_m: Some(3.05),
                nearest_m: Some(55.0),
            },
        ];
        lift.stand.reach_m = Some(hook.0 - scene.datum.0);
        lift.stand.height_m = Some(hook.1 - scene.datum.1);
    }
    lift.stand.slope_along = None;
    lift.stand.slope_across = None;
    lift.stand.wheel_heights_m = [None; 4];
    lift.stand.ground = None;
    if let Some(chart) = &mut lift.chart {
        chart.at = (11.9, 2.0);
        chart.low = (11.8, 1.9);
        chart.high = (12.3, 2.2);
        chart.zone = None;
        chart.datum = text::DATUM_TYRE_HOOK.message();
    }
    lift
}

/// A plan of these lifts.
pub(crate) fn plan(lifts: Vec<LiftPlan>) -> Plan {
    Plan {
        schema: planning::PLAN_SCHEMA.into(),
        engine: "0.1.0".into(),
        digest: "5d1f0c2a9be47733aa01".repeat(3),
        head: PlanHead {
            job: "Block B, week 14".into(),
            site: "Example Yard, Lower Lane".into(),
            date: "2026-04-07".into(),
            planner: "P. Planner".into(),
            invented: true,
        },
        verdict: Plan::worst(&lifts),
        lifts,
        routines: Vec::new(),
        inputs: vec![
            InputLine {
                name: "machine Demo 14".into(),
                place: "machines/demo-14.toml, machine".into(),
                value: "12,340 kg, 4 sections".into(),
                certainty: Certainty::Plate,
            },
            InputLine {
                name: "load: facing bricks".into(),
                place: "job.toml, load[0]".into(),
                value: "500 × 3.6 kg + pallet 25 kg".into(),
                certainty: Certainty::BuiltUp,
            },
            InputLine {
                name: "wind at which to stop".into(),
                place: "job.toml, lift[0].wind".into(),
                value: "9 m/s".into(),
                certainty: Certainty::Estimated,
            },
        ],
        warnings: vec![text::WARN_INVENTED.with("name", "machines/demo-14.toml")],
        cautions: [
            text::CAUTION_MANUAL,
            text::CAUTION_COMPETENT,
            text::CAUTION_INPUTS,
            text::CAUTION_NEVER,
            text::CAUTION_TRIAL,
        ]
        .map(Message::from)
        .to_vec(),
        ends_when: text::ENDS.map(Message::from).to_vec(),
        emergency: [text::EMERGENCY_TIP, text::EMERGENCY_LINE].map(Message::from).to_vec(),
    }
}

/// Numbers of every kind: what turns with and without a way, and what does not turn.
fn tolerances() -> Vec<planning::Tolerance> {
    use planning::{Borne, Tolerance, ToleranceOf};
    let borne = |most, turned_by: Option<&str>, way: Option<evidence::Message>, mean| Borne {
        most,
        turned_by: turned_by.map(str::to_owned),
        way,
        mean,
    };
    let row = |what, planned, alone, at_worst| Tolerance { what, planned, alone, at_worst };
    let front_left = Some(text::WHEEL_FRONT_LEFT.message());
    vec![
        row(
            ToleranceOf::LoadMass,
            Some(1200.0),
            Some(borne(2400.0, None, None, None)),
            borne(310.0, Some("load-factor"), None, None),
        ),
        row(
            ToleranceOf::Slope,
            None,
            Some(borne(0.04, Some("level"), Some(text::DESCENT_LEFT.message()), None)),
            borne(0.02, Some("level"), Some(text::DESCENT_BEHIND_RIGHT.message()), None),
        ),
        row(
            ToleranceOf::Gust,
            Some(10.0),
            Some(borne(14.2, Some("tilt"), None, Some(13.9))),
            borne(11.0, Some("tilt"), None, Some(12.1)),
        ),
        row(
            ToleranceOf::OneWheelLower,
            None,
            Some(borne(0.06, Some("level"), front_left.clone(), None)),
            borne(0.03, Some("level"), front_left, None),
        ),
        row(ToleranceOf::Together, None, None, borne(0.6, Some("level"), None, None)),
    ]
}
