//! A small plan written by hand: one lift of each verdict, every value invented. For tests of what
//! serves a plan, and for the example that serves one.

use driving::{Gear, Steering};
use evidence::{Certainty, Finding, Message, Ranged, Source, Status, Step, Verdict, Working};
use machine::SupportState;
use planning::route::{RefusalKind, RouteLeg, RouteMargin, RoutePlan, RouteRefusal};
use planning::{
    BoomMovement, BoomStep, ChartScene, ChartZoneScene, ElevationScene, FieldKind, FieldScene, FieldState, FoundStand,
    InputLine, LiftPlan, LiftWay, LineScene, LoadSummary, Plan, PlanHead, PlanViewScene, PolygonScene, Reason,
    StandSummary, StandTolerance, Task, WheelForce, text,
};
use quantity::{Quantity, degrees, kilograms, metres};

/// The plan.
pub fn plan() -> Plan {
    let lifts = vec![no_go(), go(), conditions()];
    Plan {
        schema: "counterpoise-plan/1".to_owned(),
        engine: "0.0.0-handmade".to_owned(),
        digest: "0123456789abcdef0123456789abcdef0123456789abcdef0123456789abcdef".to_owned(),
        head: PlanHead {
            job: "Three pallets".to_owned(),
            site: "Invented yard".to_owned(),
            date: "2026-11-24".to_owned(),
            planner: "R. Invented".to_owned(),
            invented: true,
        },
        verdict: Plan::worst(&lifts),
        lifts,
        routines: Vec::new(),
        inputs: vec![InputLine {
            name: "machine Test 7".to_owned(),
            place: "machines/test-7.toml".to_owned(),
            value: "3500 kg".to_owned(),
            certainty: Certainty::Invented,
        }],
        warnings: vec![text::WARN_INVENTED.with("name", "Test 7")],
        cautions: vec![
            text::CAUTION_MANUAL.into(),
            text::CAUTION_COMPETENT.into(),
            text::CAUTION_INPUTS.into(),
            text::CAUTION_NEVER.into(),
            text::CAUTION_TRIAL.into(),
        ],
        ends_when: vec![text::ENDS_RAIN.into()],
        emergency: vec![text::EMERGENCY_TIP.into(), text::EMERGENCY_LINE.into()],
    }
}

fn no_go() -> LiftPlan {
    let working = Working {
        steps: vec![Step {
            title: text::CHECK_CHART.into(),
            formula: "b = x_T ⊕ c₀ < by hand".into(),
            values: vec![("x_T".into(), kilograms(1925.0).into()), ("c₀".into(), kilograms(1500.0).into())],
            result: ("b_max".into(), Quantity::ratio(-0.283)),
            source: Source::read("test source, clause 1"),
        }],
    };
    let chart = text::CHART_EXCEEDED
        .with("mass", kilograms(1925.0))
        .with("capacity", kilograms(1500.0))
        .with("zone", "C")
        .with("reach", metres(7.4))
        .with("height", metres(5.9));
    let findings = vec![
        inspected(),
        Finding::new("chart", Status::NoGo, chart)
            .measured(kilograms(1925.0), kilograms(1500.0), -0.283)
            .remedy(text::DO_NEARER.with("distance", metres(1.6)))
            .remedy(text::DO_LIGHTEN.with("mass", kilograms(1425.0)))
            .source(Source::Input { place: "machines/test-7.toml".to_owned(), certainty: Certainty::Chart })
            .working(working),
        open_matter(),
    ];
    let mut lift = lift("L1", "Bricks to the second floor", Verdict::NoGo, 1, findings);
    lift.changes = vec![text::CHANGE_HALF_LOAD.with("mass", kilograms(875.0))];
    lift
}

fn go() -> LiftPlan {
    let tilt =
        text::TILT_ENOUGH.with("tilt", degrees(8.2)).with("required", degrees(6.8)).with("side", text::SIDE_LEFT);
    let findings = vec![
        inspected(),
        Finding::new("tilt", Status::Go, tilt).at_least(degrees(6.8), degrees(8.2), 0.17).source(Source::Mechanics),
    ];
    let mut lift = lift("L2", "Mortar to the deck", Verdict::Go, 1, findings);
    let tolerance = |disc_m, disc_by| StandTolerance {
        disc_m,
        disc_by,
        disc_way: Some(text::WAY_LEFT.into()),
        turn_rad: 3.0_f64.to_radians(),
        turn_by: None,
    };
    lift.stand_from = planning::StandFrom::Found;
    lift.stand_tolerance = Some(tolerance(0.4, Some(Reason::Edges)));
    lift.other_stands = vec![FoundStand {
        east_m: 14.2,
        north_m: 9.3,
        heading_deg: 180.0,
        verdict: Verdict::GoWithConditions,
        reserve: Some(0.17),
        governing: "chart".to_owned(),
        tolerance: tolerance(0.25, None),
    }];
    lift.field = Some(field());
    lift.plan_view = Some(plan_view());
    lift.movement = Some(movement());
    lift.way = Some(LiftWay {
        from: "Gate by the lane".to_owned(),
        begins: vec![[0.0, 0.0], [0.0, 4.0]],
        around: Vec::new(),
        way_in: Some(route(&[(Gear::Forward, 12.0), (Gear::Forward, 8.0), (Gear::Reverse, 5.0)])),
        way_out: None,
        refused_out: true,
        refused: Some(RouteRefusal {
            kind: RefusalKind::Narrow,
            message: text::DRIVE_TARGET_BARRED.into(),
            because: vec![text::DRIVE_OUTSIDE.into()],
            at: None,
            remedy: text::DO_DRIVE_CLEAR.into(),
        }),
    });
    lift
}

/// Three cells by three: go in the middle, around it out of reach.
fn field() -> FieldScene {
    let kind = |state, by, area_m2| FieldKind { state, by, area_m2 };
    FieldScene {
        centre: (12.4, 8.1),
        cell_m: 2.0,
        side: 3,
        directed: false,
        kinds: vec![kind(FieldState::NoGo, Some(Reason::Reach), 32.0), kind(FieldState::Go, None, 4.0)],
        runs: vec![(0, 4), (1, 1), (0, 4)],
        everywhere: Vec::new(),
    }
}

fn plan_view() -> PlanViewScene {
    let ring = |x0: f64, x1: f64, y0: f64, y1: f64| vec![(x0, y0), (x1, y0), (x1, y1), (x0, y1)];
    PlanViewScene {
        landing_at: (18.9, 8.0),
        landing: ring(18.0, 19.8, 7.0, 9.0),
        approach: None,
        body: ring(-4.2, 0.9, -1.1, 1.1),
        contacts: vec![ring(-0.6, 0.6, 0.8, 1.1), ring(-0.6, 0.6, -1.1, -0.8)],
        front_face_m: 0.62,
    }
}

fn movement() -> BoomMovement {
    let step = |angle_deg: f64, tool: (f64, f64), what: Message| BoomStep {
        angle_rad: angle_deg.to_radians(),
        extension_m: 0.0,
        tilt_rad: 0.0,
        tool,
        boom: vec![(-3.4, 1.9), tool],
        load: Vec::new(),
        loaded: false,
        straight: false,
        what,
    };
    let steps = vec![
        step(4.0, (2.2, 1.6), text::STEP_WAY_CARRY.into()),
        step(41.3, (2.0, 5.4), text::STEP_RAISE.with("angle", degrees(41.3))),
    ];
    BoomMovement { steps, smallest: None, plain: true }
}

fn route(legs: &[(Gear, f64)]) -> RoutePlan {
    let leg = |(gear, length_m): &(Gear, f64)| RouteLeg {
        gear: *gear,
        steering: Steering::TwoWheel,
        length_m: *length_m,
        radius_m: None,
        slant_deg: 0.0,
        speed_m_s: 1.0,
    };
    RoutePlan {
        machine: "test-7".to_owned(),
        load: None,
        legs: legs.iter().map(leg).collect(),
        length_m: legs.iter().map(|l| l.1).sum(),
        reversed_m: legs.iter().filter(|l| l.0 == Gear::Reverse).map(|l| l.1).sum(),
        gear_changes: 1,
        steering_changes: 0,
        time_s: 61.0,
        profile: Vec::new(),
        margins: vec![RouteMargin {
            of: text::DRIVE_OUTSIDE.into(),
            left: metres(0.35).into(),
            along_m: 3.0,
            at: [12.0, 8.0],
        }],
        outline: Vec::new(),
        swept: Vec::new(),
        notes: vec![text::DRIVE_NOTE_NOT_LOOKED_AT.into()],
    }
}

fn conditions() -> LiftPlan {
    let level = text::LEVEL_WITHIN
        .with("across", degrees(1.1))
        .with("along", degrees(0.6))
        .with("tolerance_across", degrees(2.0))
        .with("tolerance_along", degrees(3.0));
    let wind = text::WIND_NO_LIMIT.with("gust", quantity::metres_per_second(9.8));
    let findings = vec![
        inspected(),
        Finding::new("level", Status::Go, level).measured(degrees(1.1), degrees(2.0), 0.45),
        Finding::new("wind", Status::Condition, wind).remedy(text::DO_ASK_WIND).source(Source::CommonPractice),
    ];
    let mut lift = lift("L3", "Windows to the bay", Verdict::GoWithConditions, 2, findings);
    lift.elevation = None;
    lift.chart = None;
    lift
}

fn inspected() -> Finding {
    let said = text::MACHINE_INSPECTED.with("machine", "Test 7").with("by", "A. Invented, operator");
    Finding::new("machine", Status::Go, said)
        .source(Source::Person { name: "A. Invented".to_owned(), statement: "walked round it at 6:40".to_owned() })
}

fn open_matter() -> Finding {
    let said = text::MATTER_OPEN.with("matter", text::CHECK_EDGES);
    Finding::new("edges", Status::CannotTell, said).remedy(text::DO_STATE_MATTER)
}

fn lift(id: &str, name: &str, verdict: Verdict, governing: usize, findings: Vec<Finding>) -> LiftPlan {
    LiftPlan {
        id: id.to_owned(),
        name: name.to_owned(),
        machine: "Test 7 (invented)".to_owned(),
        attachment: "Forks 1200".to_owned(),
        support: SupportState::Stabilizers,
        landing: "Bay 2, second floor".to_owned(),
        task: Task::SetDown,
        load: LoadSummary {
            name: "Pallet of bricks".to_owned(),
            mass_kg: Ranged::shares(1750.0, 0.05, 0.10),
            certainty: Certainty::Ticket,
            centre_ahead_m: Ranged::exact(0.6),
            centre_left_m: Ranged::exact(0.0),
            centre_up_m: Ranged::exact(0.5),
            size_m: [1.2, 1.0, 1.0],
        },
        stand: StandSummary {
            east_m: 12.4,
            north_m: 8.1,
            heading_deg: 92.0,
            wheel_heights_m: [Some(0.0), Some(0.02), Some(0.03), None],
            slope_along: Some(Ranged::plus_minus(0.01, 0.004)),
            slope_across: None,
            face_to_landing_m: 5.88,
            passes_left_m: -0.07,
            ground: Some("survey/levels.csv".to_owned()),
            boom_angle_rad: Some(0.72),
            extension_m: Some(4.1),
            reach_m: Some(7.4),
            height_m: Some(5.9),
        },
        verdict,
        governing,
        findings,
        steps: vec![
            text::STEP_DRIVE_IN.with("heading", degrees(92.0)),
            text::STEP_TRIAL_LIFT.into(),
            text::STEP_RAISE.with("angle", degrees(41.3)),
            text::STEP_WITHDRAW.into(),
        ],
        tolerances: Vec::new(),
        stand_from: planning::StandFrom::Stated,
        shares_stand_with: None,
        stand_tolerance: None,
        other_stands: Vec::new(),
        field: None,
        way: None,
        plan_view: None,
        changes: Vec::new(),
        movement: None,
        wheels: vec![WheelForce {
            name: text::PAD_LEFT.into(),
            force_n: 61_200.0,
            pressure_pa: Some(340_000.0),
            area_m2: Some(0.18),
        }],
        elevation: Some(elevation()),
        chart: Some(chart()),
    }
}

fn elevation() -> ElevationScene {
    ElevationScene {
        ground: vec![(-6.0, Some(0.05)), (0.0, Some(0.0)), (6.0, Some(0.02)), (12.0, None)],
        machine: vec![
            PolygonScene { kind: "frame".to_owned(), outline: vec![(-4.2, 0.5), (0.9, 0.5), (0.9, 1.5), (-4.2, 1.9)] },
            PolygonScene { kind: "cab".to_owned(), outline: vec![(-2.2, 1.2), (-0.7, 1.2), (-0.9, 2.5), (-2.1, 2.5)] },
        ],
        wheels: vec![(0.0, 0.6, 0.6), (-3.0, 0.6, 0.6)],
        boom: vec![(-3.4, 1.9, 1.6, 4.6, 0.36), (1.2, 4.4, 5.6, 6.8, 0.28)],
        tool: vec![(6.9, 6.9), (6.9, 5.4), (8.1, 5.4)],
        load: vec![(6.9, 5.45), (8.1, 5.45), (8.1, 6.45), (6.9, 6.45)],
        sling: None,
        load_centre: (7.5, 5.95),
        landing: (6.8, 9.5, 5.4),
        datum: (0.62, 0.0),
        chart_point: (8.02, 5.9),
        lines: vec![LineScene {
            name: "Yard feeder".to_owned(),
            at: (10.5, 9.0),
            aside_m: 2.0,
            required_m: Some(4.1),
            nearest_m: Some(4.9),
        }],
    }
}

fn chart() -> ChartScene {
    let zone = |name: &str, [capacity_kg, counted_kg, reserve]: [f64; 3], from: f64, to: f64| ChartZoneScene {
        name: name.to_owned(),
        capacity_kg,
        counted_kg,
        reserve,
        outline: vec![(from, 0.0), (to, 0.0), (to, 9.0 - to / 2.0), (from, 9.0 - from / 2.0)],
    };
    ChartScene {
        zones: vec![
            zone("A", [3500.0, 3200.0, 0.4], 0.5, 3.0),
            zone("B", [2500.0, 2500.0, 0.23], 3.0, 5.5),
            zone("C", [1500.0, 1500.0, -0.283], 5.5, 8.5),
        ],
        not_permitted: Vec::new(),
        at: (7.4, 5.9),
        low: (7.2, 5.7),
        high: (7.6, 6.1),
        load_kg: 1925.0,
        load_centre_m: 0.6,
        support: SupportState::Stabilizers,
        cap_kg: Some(3200.0),
        datum: text::DATUM_TYRE_LOAD_CENTRE.into(),
        zone: Some(2),
    }
}

/// A message whose argument tries to be markup.
pub fn hostile() -> Message {
    text::MACHINE_TAGGED_OUT.with("machine", "<script>alert(1)</script>").with("reason", "\"><img src=x>")
}
