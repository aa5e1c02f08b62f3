//! An invented site with one of everything, known and not known. Only sums and products: the same bits everywhere.
#![allow(dead_code, reason = "shared by tests and the example that writes the files; each uses a part")]

use evidence::Ranged;
use exchange::About;
use geometry::{DVec2, DVec3};
use quantity::{kilograms, kilovolts, metres};
use site::{
    ApproachDirection, Body, Buried, BuriedKind, Columns, DayTime, DeadConfirmation, Excavation, Gate, Grid, Ground,
    GroundSource, Insulation, Landing, LandingRating, Opening, PlanArea, PlanShape, PowerLine, Site, SoilType, Span,
    Support, Surroundings, Terrain, Thing, ThingKind, Tin, Zone, ZoneRule,
};

/// South-west corner of the site.
pub(crate) const CORNER: DVec2 = DVec2::new(431_250.0, 5_703_500.0);

/// A name that troubles every format.
pub(crate) const ODD_NAME: &str = "Gerüst \"Süd\" 塔 🏗\nzwei\\U+0041 50%%d ^J <b>&";

pub(crate) fn about() -> About {
    About {
        invented: true,
        attribution: vec!["Survey office of Nowhere (invented), open data".into()],
        ..About::default()
    }
}

pub(crate) fn p(x: f64, y: f64) -> DVec2 {
    CORNER + DVec2::new(x, y)
}

pub(crate) fn ring(points: &[(f64, f64)]) -> Vec<DVec2> {
    points.iter().map(|(x, y)| p(*x, *y)).collect()
}

pub(crate) fn area(points: &[(f64, f64)]) -> PlanShape {
    PlanShape::Area(PlanArea { outer: ring(points), holes: Vec::new() })
}

/// Height of the invented ground.
pub(crate) fn height(x: f64, y: f64) -> f64 {
    250.0 + 0.02 * x - 0.01 * y + 0.0005 * x * y
}

/// 30 m × 25 m every 0.5 m, with a hole of 3 × 4 heights.
pub(crate) fn grid() -> Grid {
    let (rows, cols) = (51, 61);
    let at = |i: usize| {
        let (row, col) = (i / cols, i % cols);
        let hole = (10..13).contains(&row) && (40..44).contains(&col);
        let z = height(col as f64 * 0.5, (rows - 1 - row) as f64 * 0.5);
        if hole { f32::NAN } else { z as f32 }
    };
    Grid { north_west: p(0.0, 25.0), cell: DVec2::splat(0.5), rows, cols, heights: (0..rows * cols).map(at).collect() }
}

fn tin() -> Tin {
    let point = |i: usize| {
        let (x, y) = (31.0 + (i % 5) as f64 * 4.0, (i / 5) as f64 * 4.0);
        p(x, y).extend(height(x, y) + (i * i % 7) as f64 * 0.05)
    };
    Tin::new(&(0..30).map(point).collect::<Vec<DVec3>>(), 7.0).unwrap()
}

pub(crate) fn thing(id: &str, kind: ThingKind, shape: PlanShape, base: Option<f64>, top: Option<f64>) -> Thing {
    Thing {
        id: id.into(),
        name: format!("{id} (invented)"),
        kind,
        body: Body::Upright { shape, base, top },
        openings: Vec::new(),
        accuracy: 0.05,
        source: "drawing A-101 (invented)".into(),
    }
}

fn things() -> Vec<Thing> {
    let courtyard = PlanShape::Area(PlanArea {
        outer: ring(&[(2.0, 14.0), (2.0, 24.0), (14.0, 24.0), (14.0, 14.0)]),
        holes: vec![ring(&[(6.0, 17.0), (10.0, 17.0), (10.0, 21.0), (6.0, 21.0)])],
    });
    let course = PlanShape::Strip { course: ring(&[(17.0, 15.0), (23.0, 15.0), (23.0, 20.0)]), width: 0.3 };
    let mut wall = thing("wall", ThingKind::Wall, course, Some(250.0), Some(253.0));
    wall.openings = vec![
        Opening { from: p(18.0, 15.0), to: p(19.5, 15.0), sill: 251.0, head: 252.2 },
        Opening { from: p(23.0, 16.5), to: p(23.0, 18.0), sill: 250.0, head: 252.0 },
    ];
    let bay = area(&[(15.0, 23.0), (21.0, 23.0), (21.0, 24.2), (15.0, 24.2)]);
    let mut scaffold = thing("scaffold", ThingKind::Scaffold, bay, None, Some(262.0));
    scaffold.name = ODD_NAME.into();
    scaffold.openings = vec![Opening { from: p(16.0, 23.0), to: p(18.0, 23.0), sill: 252.0, head: 254.0 }];
    let round = |x: f64, y: f64, radius: f64| PlanShape::Round { centre: p(x, y), radius };
    let outline = [(24.0, 2.0), (29.0, 2.0), (29.0, 6.0), (27.0, 6.0), (27.0, 4.0), (24.0, 4.0)];
    let stack = |x: f64| area(&[(x, 9.0), (x + 0.8, 9.0), (x + 0.8, 10.2), (x, 10.2)]);
    let fence = PlanShape::Strip { course: ring(&[(-40.0, -5.0), (-30.0, -5.0)]), width: 0.1 };
    let columns = Columns {
        south_west: p(20.0, 20.5),
        cell: 0.5,
        rows: 3,
        cols: 4,
        tops: vec![253.0, 253.5, f32::NAN, 254.0, 253.25, f32::NAN, 253.0, 252.75, 253.0, 253.0, 254.25, f32::NAN],
    };
    vec![
        thing("block", ThingKind::Building, courtyard, None, Some(261.5)),
        wall,
        scaffold,
        thing("silo", ThingKind::Mast, round(26.0, 12.0, 1.25), Some(250.4), Some(258.0)),
        thing("oak", ThingKind::Tree, round(4.0, 4.0, 2.0), None, None),
        thing("far fence", ThingKind::Fence, fence, None, None),
        thing("deck", ThingKind::TruckBay, area(&outline), Some(250.5), Some(251.2)),
        thing("bridge", ThingKind::Bridge, stack(11.0), Some(255.0), Some(256.0)),
        thing("slab", ThingKind::Floor, stack(12.0), Some(253.0), Some(253.2)),
        thing("dumper", ThingKind::Plant, stack(13.0), None, Some(252.8)),
        thing("bricks", ThingKind::Store, stack(14.0), None, Some(251.6)),
        thing("diesel", ThingKind::Fuel, stack(15.0), None, Some(252.0)),
        Thing {
            id: "scan".into(),
            name: "Scan, not named".into(),
            kind: ThingKind::Unnamed,
            body: Body::Columns(columns),
            openings: Vec::new(),
            accuracy: 0.1,
            source: "cloud.laz (invented)".into(),
        },
    ]
}

fn below() -> (Vec<Excavation>, Vec<Buried>) {
    let dug = |id: &str, x: f64, depth, soil, support| Excavation {
        id: id.into(),
        name: format!("Trench {id}"),
        outline: PlanArea { outer: ring(&[(x, 1.0), (x + 1.2, 1.0), (x + 1.2, 6.0), (x, 6.0)]), holes: Vec::new() },
        depth,
        soil,
        support,
        standing: site::OpenSides::default(),
        source: "seen by A. Nkemelu (invented)".into(),
    };
    let lies = |id: &str, kind, shape, cover| Buried {
        id: id.into(),
        name: format!("Buried {id}"),
        kind,
        shape,
        cover,
        allowed_pressure: None,
        wall: None,
        around: None,
        source: "owner's plan (invented)".into(),
    };
    let pipe = PlanShape::Strip { course: ring(&[(0.5, 8.0), (12.0, 8.5), (28.0, 8.0)]), width: 0.6 };
    let cable = PlanShape::Strip { course: ring(&[(0.5, 11.0), (28.0, 11.0)]), width: 0.2 };
    let by = Some("B. Roux (invented)".into());
    (
        vec![
            dug("A", 10.0, Some(Ranged::plus_minus(1.8, 0.2)), Some(SoilType::TypeB), Support::Supported { by }),
            dug("B", 13.0, None, None, Support::NotKnown),
        ],
        vec![
            lies("pipe", BuriedKind::Pipe, pipe, Some(Ranged { low: 0.7, nominal: 0.9, high: 1.2 })),
            lies("cable", BuriedKind::Cable, cable, None),
            lies("tank", BuriedKind::Tank, PlanShape::Round { centre: p(20.0, 4.0), radius: 1.0 }, None),
        ],
    )
}

fn zones() -> Vec<Zone> {
    let zone = |id: &str, x: f64, rule, times| Zone {
        id: id.into(),
        name: format!("Zone {id}"),
        shape: area(&[(x, 0.5), (x, 3.0), (x + 2.0, 3.0), (x + 2.0, 0.5)]),
        rule,
        times,
        by: "C. Lund (invented)".into(),
    };
    let morning = DayTime { from: 7 * 60, to: 9 * 60 + 30 };
    vec![
        zone("no-go", 16.0, ZoneRule::NoGo, Vec::new()),
        zone("people", 18.5, ZoneRule::People, vec![morning, DayTime { from: 960, to: 60 }]),
        zone("one-way", 21.0, ZoneRule::OneWay { heading: 0.0 }, Vec::new()),
        zone("speed", 0.5, ZoneRule::Speed { most: 1.5 }, Vec::new()),
        zone("soft", 7.0, ZoneRule::Soft, Vec::new()),
        zone("slope", 32.0, ZoneRule::SlopeLimit { most: 0.08 }, Vec::new()),
    ]
}

fn lines() -> Vec<PowerLine> {
    let line = |name: &str, voltage, spans, course| PowerLine {
        name: name.into(),
        voltage,
        spans,
        course,
        survey_error: metres(0.2),
        swing: metres(0.3),
        source: String::from("made:1"),
        dead: None,
        insulated: None,
    };
    let at = |x: f64, z: f64| p(x, -3.0).extend(z);
    let spans = vec![
        Span { from: at(-20.0, 259.0), to: at(25.0, 260.5), sag: 0.8 },
        Span { from: at(25.0, 260.5), to: at(70.0, 258.0), sag: 0.9 },
    ];
    let mut dead = line("Line nobody has measured", None, Vec::new(), ring(&[(-5.0, 26.0), (35.0, 27.0)]));
    dead.dead =
        Some(DeadConfirmation { owner: "Grid (invented)".into(), permit: "P-7".into(), visibly_grounded: true });
    let mut road = line("Road line", Some(kilovolts(11.0)), spans, Vec::new());
    road.insulated = Some(Insulation { by: "Grid (invented)".into(), permit: "P-8".into() });
    vec![road, dead, line("Line somewhere", Some(kilovolts(0.4)), Vec::new(), Vec::new())]
}

fn landings() -> Vec<Landing> {
    let landing = |id: &str, x: f64, approach| Landing {
        id: id.into(),
        name: format!("Landing {id}"),
        at: p(x, 22.0),
        level: 256.25,
        size: DVec2::new(1.4, 2.6),
        approach,
        rating: Some(LandingRating { mass: Some(kilograms(2000.0)), by: "D. Ferrari (invented)".into() }),
        occupied: kilograms(150.0),
        upstand: 0.15,
    };
    let north = ApproachDirection { heading: std::f64::consts::FRAC_PI_2, tolerance: 0.1 };
    vec![landing("bay", 17.0, Some(north)), landing("any way", 12.5, None)]
}

pub(crate) fn surface(terrain: Terrain, name: &str, date: Option<&str>) -> GroundSource {
    GroundSource { name: name.into(), terrain, accuracy: 0.03, date: date.map(str::to_owned) }
}

/// The site.
pub(crate) fn site() -> Site {
    let (excavations, buried) = below();
    let surfaces = vec![
        surface(Terrain::Grid(grid()), "terrain.tif", Some("2027-03-01")),
        surface(Terrain::Tin(tin()), "levels.csv", None),
    ];
    Site {
        name: "Invented yard, Wörth".into(),
        epsg: Some(25832),
        ground: Ground { surfaces },
        lines: lines(),
        landings: landings(),
        gates: vec![Gate {
            id: "main".into(),
            name: "Main gate".into(),
            width: 4.5,
            height: None,
            clearance: 0.3,
            clearance_above: 0.2,
            posts: None,
        }],
        surroundings: Surroundings { things: things().into(), excavations, buried, zones: zones() },
    }
}

/// A site with nothing in it.
pub(crate) fn empty() -> Site {
    Site { name: "Empty".into(), ..Site::default() }
}
