//! Invented sites.

use evidence::Ranged;
use geometry::{DVec2, DVec3};
use quantity::{kilograms, kilovolts, metres};
use site::{
    ApproachDirection, Body, Buried, BuriedKind, Columns, DayTime, Excavation, Gate, Grid, Ground, GroundSource,
    Landing, LandingRating, Opening, PlanArea, PlanShape, PowerLine, Site, SoilType, Span, Support, Terrain, Thing,
    ThingKind, Zone, ZoneRule,
};

fn v(x: f64, y: f64) -> DVec2 {
    DVec2::new(x, y)
}

fn rectangle(x: f64, y: f64, w: f64, h: f64) -> PlanArea {
    PlanArea { outer: vec![v(x, y), v(x + w, y), v(x + w, y + h), v(x, y + h)], holes: Vec::new() }
}

fn thing(name: &str, kind: ThingKind, shape: PlanShape, top: Option<f64>) -> Thing {
    let body = Body::Upright { shape, base: None, top };
    let openings = Vec::new();
    Thing { id: name.into(), name: name.into(), kind, body, openings, accuracy: 0.1, source: "invented".into() }
}

/// Rolling ground of 41 × 41 cells with a hole in it, `side` m wide.
fn ground(side: f64, hole: bool) -> Ground {
    let cells = 41;
    let cell = side / 40.0;
    let z = |i: usize| {
        let (x, y) = ((i % cells) as f64 / 40.0, 1.0 - (i / cells) as f64 / 40.0);
        let hidden = hole && (x - 0.12).abs() < 0.09 && (y - 0.5).abs() < 0.12;
        let roll =
            100.0 + side * (0.02 * x + 0.01 * (x * 7.0).sin() * (y * 5.0).cos()) + side * 0.03 * (y - 0.7).max(0.0);
        if hidden { f32::NAN } else { roll as f32 }
    };
    let heights = (0..cells * cells).map(z).collect();
    let grid = Grid { north_west: v(0.0, side), cell: DVec2::splat(cell), rows: cells, cols: cells, heights };
    let name = "Invented terrain".to_owned();
    let source = GroundSource { name, terrain: Terrain::Grid(grid), accuracy: 0.05, date: Some("2026-05-04".into()) };
    Ground { surfaces: vec![source] }
}

/// Nothing at all.
pub(crate) fn bare() -> Site {
    Site { name: "Bare".into(), ..Site::default() }
}

/// Ground and nothing else.
pub(crate) fn yard(side: f64) -> Site {
    Site { name: "Yard".into(), ground: ground(side, false), ..Site::default() }
}

/// Ground of which no height is known, and a shed.
pub(crate) fn only_holes() -> Site {
    let mut site = yard(30.0);
    if let Terrain::Grid(grid) = &mut site.ground.surfaces[0].terrain {
        grid.heights.fill(f32::NAN);
    }
    site
}

/// One landing, no size.
pub(crate) fn one_point() -> Site {
    let landing = Landing {
        id: "l".into(),
        name: "Landing A".into(),
        at: v(12.0, 7.0),
        level: 3.0,
        size: DVec2::ZERO,
        approach: None,
        rating: None,
        occupied: kilograms(0.0),
        upstand: 0.0,
    };
    Site { name: "One point".into(), landings: vec![landing], ..Site::default() }
}

/// Of everything something, `side` m wide.
pub(crate) fn busy(side: f64) -> Site {
    let f = side / 60.0;
    let area = |x: f64, y: f64, w: f64, h: f64| PlanShape::Area(rectangle(x * f, y * f, w * f, h * f));
    let strip = |points: &[(f64, f64)], width: f64| PlanShape::Strip {
        course: points.iter().map(|p| v(p.0 * f, p.1 * f)).collect(),
        width: width * f,
    };
    let round = |x: f64, y: f64, r: f64| PlanShape::Round { centre: v(x * f, y * f), radius: r * f };
    let mut hall = thing("Hall B", ThingKind::Building, area(32.0, 26.0, 18.0, 14.0), Some(108.0));
    hall.openings = vec![Opening { from: v(36.0 * f, 26.0 * f), to: v(40.0 * f, 26.0 * f), sill: 101.0, head: 105.0 }];
    let columns = Columns {
        south_west: v(4.0 * f, 46.0 * f),
        cell: 0.5 * f,
        rows: 12,
        cols: 16,
        tops: (0..192).map(|i| if (i * 7) % 11 < 8 { 104.0 + (i % 5) as f32 } else { f32::NAN }).collect(),
    };
    let mut surveyed = thing("Unsorted", ThingKind::Unnamed, area(0.0, 0.0, 1.0, 1.0), None);
    surveyed.body = Body::Columns(columns);
    let things = vec![
        hall,
        thing("Shed", ThingKind::Building, area(16.0, 6.0, 7.0, 5.0), None),
        thing("Garden wall", ThingKind::Wall, strip(&[(2.0, 2.0), (2.0, 16.0), (12.0, 16.0)], 0.5), Some(103.0)),
        thing("Hoarding", ThingKind::Fence, strip(&[(0.5, 59.0), (59.0, 59.0), (59.0, 1.0)], 0.4), Some(103.2)),
        thing("Scaffold south", ThingKind::Scaffold, strip(&[(32.0, 24.6), (50.0, 24.6)], 1.6), Some(107.0)),
        thing("Slab", ThingKind::Floor, area(51.0, 28.0, 6.0, 9.0), Some(103.5)),
        thing("Pipe bridge", ThingKind::Bridge, strip(&[(18.0, 44.0), (32.0, 50.0)], 1.4), Some(106.5)),
        thing("Lime", ThingKind::Tree, round(25.0, 18.0, 2.4), Some(112.0)),
        thing("Light mast", ThingKind::Mast, round(29.0, 54.0, 0.5), Some(116.0)),
        thing("Roller", ThingKind::Plant, area(44.0, 8.0, 4.0, 2.0), Some(102.6)),
        thing("Bricks", ThingKind::Store, area(52.0, 8.0, 3.0, 3.0), Some(102.0)),
        thing("Diesel", ThingKind::Fuel, area(36.0, 4.0, 3.0, 2.0), Some(102.0)),
        thing("Bay", ThingKind::TruckBay, area(44.0, 13.0, 12.0, 3.5), Some(101.6)),
        surveyed,
    ];
    let excavation = |name: &str, outline, depth| Excavation {
        id: name.into(),
        name: name.into(),
        outline,
        depth,
        soil: Some(SoilType::TypeC),
        support: Support::None,
        standing: site::OpenSides::default(),
        source: "invented".into(),
    };
    let mut pit = rectangle(33.0 * f, 44.0 * f, 12.0 * f, 9.0 * f);
    pit.holes.push(rectangle(37.0 * f, 47.0 * f, 3.0 * f, 3.0 * f).outer);
    let excavations = vec![
        excavation("Basement dig", pit, Some(Ranged { low: 2.2, nominal: 2.4, high: 2.6 })),
        excavation("Trench", rectangle(24.0 * f, 24.0 * f, 1.2 * f, 14.0 * f), None),
    ];
    let sewer = |name: &str, shape, cover| Buried {
        id: name.into(),
        name: name.into(),
        kind: BuriedKind::Pipe,
        shape,
        cover,
        allowed_pressure: None,
        wall: None,
        around: None,
        source: "invented".into(),
    };
    let buried = vec![
        sewer(
            "Sewer",
            strip(&[(6.0, 20.0), (28.0, 42.0), (58.0, 42.0)], 0.6),
            Some(Ranged { low: 0.8, nominal: 1.0, high: 1.2 }),
        ),
        sewer("Old tank", round(10.0, 38.0, 2.0), None),
    ];
    let zone = |name: &str, shape, rule, times| Zone {
        id: name.into(),
        name: name.into(),
        shape,
        rule,
        times,
        by: "invented".into(),
    };
    let zones = vec![
        zone("School fence", area(48.0, 50.0, 10.0, 8.0), ZoneRule::NoGo, Vec::new()),
        zone("Canteen way", area(14.0, 12.5, 16.0, 3.0), ZoneRule::People, vec![DayTime { from: 720, to: 780 }]),
        zone("Haul road", strip(&[(40.0, 19.5), (57.0, 19.5)], 5.0), ZoneRule::OneWay { heading: 0.0 }, Vec::new()),
        zone("Soft corner", area(3.0, 4.0, 9.0, 8.0), ZoneRule::Soft, Vec::new()),
    ];
    let mut landing = one_point().landings.remove(0);
    landing.at = v(41.0 * f, 37.0 * f);
    landing.size = v(2.0 * f, 3.0 * f);
    landing.level = 108.0;
    landing.approach = Some(ApproachDirection { heading: 1.57, tolerance: 0.2 });
    let mut bay = landing.clone();
    (bay.name, bay.at, bay.level) = ("Landing B".into(), v(54.0 * f, 33.0 * f), 103.5);
    bay.rating = Some(LandingRating { mass: Some(kilograms(2000.0)), by: "invented".into() });
    bay.approach = Some(ApproachDirection { heading: 3.4, tolerance: 0.2 });
    let span = |a: (f64, f64), b: (f64, f64)| Span {
        from: DVec3::new(a.0 * f, a.1 * f, 112.0),
        to: DVec3::new(b.0 * f, b.1 * f, 112.0),
        sag: 0.8,
    };
    let line = |name: &str, voltage, spans, course| PowerLine {
        name: String::from(name),
        voltage,
        spans,
        course,
        survey_error: metres(0.2),
        swing: metres(0.0),
        source: String::from("made:1"),
        dead: None,
        insulated: None,
    };
    let lines = vec![
        line(
            "Feeder 7",
            Some(kilovolts(20.0)),
            vec![span((-40.0, 20.0), (14.0, 30.0)), span((14.0, 30.0), (30.0, 90.0))],
            Vec::new(),
        ),
        line("Service drop", None, Vec::new(), vec![v(14.0 * f, 30.0 * f), v(32.0 * f, 34.0 * f)]),
    ];
    let gate = |name: &str, height| Gate {
        id: name.into(),
        name: name.into(),
        width: 4.0,
        height,
        clearance: 0.3,
        clearance_above: 0.2,
        posts: None,
    };
    Site {
        name: "Invented site".into(),
        epsg: Some(2154),
        ground: ground(side, true),
        lines,
        landings: vec![landing, bay],
        gates: vec![gate("North gate", None), gate("Arch", Some(3.4))],
        surroundings: site::Surroundings { things: things.into(), excavations, buried, zones },
    }
}

/// Many stacks in rows, and a line.
pub(crate) fn crowded(count: usize) -> Site {
    let mut site = busy(60.0);
    site.surroundings = site::Surroundings::default();
    site.landings.clear();
    site.lines[1].name = "Feeder without voltage".into();
    for i in 0..count {
        let at = rectangle((i % 25) as f64 * 2.4, (i / 25) as f64 * 2.8, 1.4, 1.6);
        let name = format!("Stack {i:03}");
        site.surroundings.things.push(thing(
            &name,
            ThingKind::Store,
            PlanShape::Area(at),
            (i % 3 > 0).then_some(102.0),
        ));
    }
    site
}

/// Names that no sheet has room for, with characters that XML must escape.
pub(crate) fn long_names() -> Site {
    let mut site = busy(60.0);
    let long = |name: &str| {
        format!(
            "{name} <b>&\"'</b> \u{1} of the former and still not wholly demolished Rindfleischetikettierungsüberwachungsgebäude north-east of the canal, part two 🧱"
        )
    };
    site.name = long(&site.name);
    for t in &mut site.surroundings.things {
        t.name = long(&t.name);
    }
    for z in &mut site.surroundings.zones {
        z.name = long(&z.name);
    }
    for l in &mut site.lines {
        l.name = long(&l.name);
    }
    site.ground.surfaces[0].name = long("terrain");
    site
}

/// Numbers that are none, shapes without corners.
pub(crate) fn broken() -> Site {
    let mut site = busy(60.0);
    site.surroundings.things[0].body =
        Body::Upright { shape: PlanShape::Round { centre: DVec2::NAN, radius: 3.0 }, base: None, top: Some(f64::NAN) };
    site.surroundings.things[1].body = Body::Upright {
        shape: PlanShape::Area(PlanArea { outer: vec![v(1.0, f64::INFINITY)], holes: vec![Vec::new()] }),
        base: Some(f64::NAN),
        top: Some(f64::INFINITY),
    };
    site.surroundings.things[2].body =
        Body::Upright { shape: PlanShape::Strip { course: vec![v(1.0, 1.0); 3], width: 0.0 }, base: None, top: None };
    site.surroundings.things[3].body =
        Body::Columns(Columns { south_west: DVec2::NAN, cell: 0.0, rows: 2, cols: 2, tops: vec![1.0; 4] });
    site.surroundings.excavations[0].depth = Some(Ranged { low: f64::NAN, nominal: f64::NAN, high: f64::NAN });
    site.surroundings.excavations[1].outline.outer.clear();
    site.surroundings.zones[2].rule = ZoneRule::OneWay { heading: f64::NAN };
    site.landings[0].at = DVec2::NAN;
    site.landings[1].size = DVec2::INFINITY;
    site.lines[0].spans[0].to = DVec3::NAN;
    site.ground.surfaces[0].accuracy = f64::NAN;
    site
}

/// Overhead lines and nothing else.
pub(crate) fn lines_only() -> Site {
    Site { lines: busy(60.0).lines, ..bare() }
}

/// A site in the millions of a national grid, and one thing by mistake in none.
pub(crate) fn far_off() -> Site {
    let mut site = yard(50.0);
    if let Terrain::Grid(grid) = &mut site.ground.surfaces[0].terrain {
        grid.north_west += v(770_550.0, 6_277_550.0);
    }
    site.surroundings.things.push(thing(
        "Hut",
        ThingKind::Building,
        PlanShape::Area(rectangle(770_560.0, 6_277_560.0, 4.0, 3.0)),
        None,
    ));
    site.surroundings.things.push(thing(
        "Astray",
        ThingKind::Store,
        PlanShape::Area(rectangle(2e9, 1.0, 4.0, 3.0)),
        None,
    ));
    site
}
