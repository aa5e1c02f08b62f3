//! Distances to things against parry3d-f64, what lies above a path, what hides a point.
#![allow(clippy::disallowed_methods, reason = "tests use the platform's sines")]

use geometry::{Capsule, DVec2, DVec3, OrientedBox, Pose, Segment, Solid};
use parry3d_f64::math::{Pose as Isometry, Vector};
use parry3d_f64::query;
use parry3d_f64::shape::{ConvexPolyhedron, Segment as ParrySegment};
use site::{
    Body, Columns, Distance, Grid, Ground, GroundSource, Hidden, Opening, Overhead, PlanArea, PlanShape, PowerLine,
    Span, Terrain, Thing, ThingIndex, ThingKind, Things, distance_thing, headroom, profile, sight,
};

/// GJK stops at about this, m.
const GJK: f64 = 1e-5;

struct Seeded(u64);
impl Seeded {
    fn next(&mut self) -> f64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        ((z ^ (z >> 31)) >> 11) as f64 / (1u64 << 53) as f64
    }
    fn point(&mut self, size: f64) -> DVec3 {
        DVec3::new(self.next() - 0.5, self.next() - 0.5, self.next() - 0.5) * (2.0 * size)
    }
    fn solid(&mut self) -> Solid {
        if self.next() < 0.5 {
            let axis = Segment { a: self.point(12.0), b: self.point(12.0) };
            Solid::Capsule(Capsule { axis, radius: 0.5 * self.next() })
        } else {
            let pose = Pose::from_axes(self.point(1.0), self.point(1.0), self.point(10.0));
            let half = DVec3::new(0.1 + 3.0 * self.next(), 0.1 + 2.0 * self.next(), 0.1 + self.next());
            Solid::Box(OrientedBox { outer_from_box: pose, half })
        }
    }
}

fn thing(body: Body) -> Thing {
    let (id, name) = (String::from("t"), String::from("thing"));
    Thing {
        id,
        name,
        kind: ThingKind::Building,
        body,
        openings: Vec::new(),
        accuracy: 0.0,
        source: String::from("test"),
    }
}

fn upright(outer: &[(f64, f64)], base: Option<f64>, top: Option<f64>) -> Thing {
    let outer = outer.iter().map(|&(x, y)| DVec2::new(x, y)).collect();
    thing(Body::Upright { shape: PlanShape::Area(PlanArea { outer, holes: Vec::new() }), base, top })
}

fn theirs(solid: &Solid, hull: &ConvexPolyhedron) -> f64 {
    let v = |p: DVec3| Vector::new(p.x, p.y, p.z);
    let still = Isometry::IDENTITY;
    match solid {
        Solid::Capsule(c) => {
            let segment = ParrySegment::new(v(c.axis.a), v(c.axis.b));
            (query::distance(&still, &segment, &still, hull).map_or(f64::NAN, |d| d.distance) - c.radius).max(0.0)
        }
        Solid::Box(b) => {
            let other = ConvexPolyhedron::from_convex_hull(&b.corners().map(v)).unwrap();
            query::distance(&still, &other, &still, hull).map_or(f64::NAN, |d| d.distance)
        }
    }
}

#[test]
fn val_distance_to_an_upright_prism_against_parry() {
    let mut random = Seeded(31);
    let (mut crossing, mut apart) = (0, 0);
    for _ in 0..4_000 {
        // Corners on a circle in order: convex.
        let n = 3 + (random.next() * 5.0) as usize;
        let mut turns: Vec<f64> = (0..n).map(|_| random.next() * std::f64::consts::TAU).collect();
        turns.sort_by(f64::total_cmp);
        let r = 1.0 + 4.0 * random.next();
        let outer: Vec<(f64, f64)> = turns.iter().map(|t| (r * t.cos(), r * t.sin())).collect();
        if turns.windows(2).any(|w| w[1] - w[0] < 0.05) || turns[0] + std::f64::consts::TAU - turns[n - 1] < 0.05 {
            continue; // Slivers are the peer's trouble, not ours.
        }
        let base = -4.0 + 4.0 * random.next();
        let top = base + 0.1 + 6.0 * random.next();
        let corners: Vec<Vector> =
            outer.iter().flat_map(|&(x, y)| [Vector::new(x, y, base), Vector::new(x, y, top)]).collect();
        let hull = ConvexPolyhedron::from_convex_hull(&corners).unwrap();
        let solid = random.solid();
        let ours = distance_thing(&solid, &upright(&outer, Some(base), Some(top)));
        let theirs = theirs(&solid, &hull);
        let Distance::Metres(ours) = ours else { panic!("the height is known") };
        assert!((ours - theirs).abs() < GJK, "{outer:?} {base} to {top}, {solid:?}: {ours} against {theirs}");
        if ours == 0.0 { crossing += 1 } else { apart += 1 }
    }
    assert!(crossing > 150 && apart > 1000, "{crossing} cross, {apart} apart");
}

#[test]
fn columns_are_the_boxes_that_they_look_like() {
    let mut random = Seeded(5);
    let tops = (0..36).map(|i| if i % 5 == 0 { f32::NAN } else { (i % 7) as f32 }).collect();
    let columns = Columns { south_west: DVec2::new(-3.0, -3.0), cell: 1.0, rows: 6, cols: 6, tops };
    let boxes: Vec<Thing> = columns
        .iter()
        .map(|(c, top)| {
            let (x, y) = (c.x, c.y);
            upright(&[(x, y), (x + 1.0, y), (x + 1.0, y + 1.0), (x, y + 1.0)], None, Some(top))
        })
        .collect();
    let whole = thing(Body::Columns(columns));
    for _ in 0..500 {
        let solid = random.solid();
        let one = distance_thing(&solid, &whole).metres();
        let many = boxes.iter().map(|b| distance_thing(&solid, b).metres()).fold(f64::INFINITY, f64::min);
        assert!((one - many).abs() < 1e-9, "{solid:?}: {one} against {many}");
    }
}

#[test]
fn the_index_finds_what_asking_everything_finds() {
    let mut random = Seeded(77);
    let things: Vec<Thing> = (0..400)
        .map(|i| {
            let at = random.point(60.0);
            let (x, y) = (at.x, at.y);
            let top = (i % 11 != 0).then_some(random.next() * 8.0);
            let mut t = upright(&[(x, y), (x + 2.0, y), (x + 1.0, y + 2.0)], None, top);
            t.accuracy = 0.1 * random.next();
            t
        })
        .collect();
    let index = ThingIndex::new(&things);
    let mut found = 0;
    for _ in 0..500 {
        let solids: Vec<Solid> = (0..3).map(|_| random.solid()).collect();
        let all = things
            .iter()
            .enumerate()
            .flat_map(|(i, t)| solids.iter().map(move |s| ((distance_thing(s, t).metres() - t.accuracy).max(0.0), i)))
            .min_by(|a, b| a.0.total_cmp(&b.0).then(a.1.cmp(&b.1)))
            .filter(|(d, _)| *d < 5.0);
        let asked = index.nearest(&things, &solids, 5.0).map(|(i, d)| (d.metres(), i));
        assert_eq!(asked, all);
        found += usize::from(asked.is_some());
    }
    assert!(found > 300, "{found}");
}

/// Near a place are those whose box is, with their accuracy, and whatever has no place; a thing that is
/// moved or added afterwards is found where it is then.
#[test]
fn the_things_near_a_place_are_found_wherever_they_are_moved_to() {
    let mut random = Seeded(79);
    let mut things = Things::default();
    for _ in 0..300 {
        let at = random.point(60.0);
        let mut t = upright(&[(at.x, at.y), (at.x + 2.0, at.y), (at.x + 1.0, at.y + 2.0)], None, None);
        t.accuracy = 0.5 * random.next();
        things.push(t);
    }
    things.push(upright(&[], None, None));
    let mut not_known = things[0].clone();
    not_known.accuracy = f64::NAN;
    things.push(not_known);
    things.push(upright(&[(f64::NAN, f64::NAN), (f64::NAN, f64::NAN)], None, Some(1.0)));
    let mut found = 0;
    for round in 0..200 {
        let i = (random.next() * 300.0) as usize;
        let to = random.point(60.0).truncate();
        let Body::Upright { shape: PlanShape::Area(area), .. } = &mut things[i].body else { panic!("an area") };
        area.outer = vec![to, to + DVec2::X, to + DVec2::Y];
        let (at, reach) = (random.point(60.0).truncate(), 20.0 * random.next());
        let is_near = |t: &Thing| {
            let Some((low, high)) = t.bounds() else { return true };
            let out = (low - at).max(at - high).max(DVec2::ZERO).length() > reach + t.accuracy;
            !out || t.accuracy.is_nan() || low.is_nan()
        };
        let all: Vec<usize> = (0..things.len()).filter(|i| is_near(&things[*i])).collect();
        assert_eq!(things.within(at, reach), all, "round {round}");
        assert!(all.ends_with(&[300, 301, 302]));
        found += all.len() - 3;
        assert_eq!(things.within(at, f64::NAN).len(), things.len(), "no number passes nothing by");
    }
    assert!(found > 1_000, "{found}");
}

#[test]
fn forks_go_through_a_window_and_not_through_the_wall() {
    // A wall of 0.3 m along x, 0 to 10 m long, 6 m high, with a window from 4 to 6 m, sill 1, head 3.
    let course = vec![DVec2::new(0.0, 0.0), DVec2::new(10.0, 0.0)];
    let shape = PlanShape::Strip { course, width: 0.3 };
    let mut wall = thing(Body::Upright { shape, base: None, top: Some(6.0) });
    wall.openings.push(Opening { from: DVec2::new(4.0, 0.0), to: DVec2::new(6.0, 0.0), sill: 1.0, head: 3.0 });
    let through = |x: f64, z: f64| {
        let axis = Segment { a: DVec3::new(x, -2.0, z), b: DVec3::new(x, 2.0, z) };
        distance_thing(&Solid::Capsule(Capsule { axis, radius: 0.1 }), &wall).metres()
    };
    assert!((through(5.0, 2.0) - 0.9).abs() < 1e-9, "one metre to sill, head and jambs, less the radius");
    assert!((through(4.5, 2.0) - 0.4).abs() < 1e-9, "half a metre to the jamb");
    assert_eq!(through(4.05, 2.0), 0.0);
    assert_eq!(through(5.0, 3.5), 0.0);
    assert_eq!(through(2.0, 2.0), 0.0);
    assert!((through(5.0, 7.0) - 0.9).abs() < 1e-9, "over the wall");
}

#[test]
fn a_top_that_is_not_known_never_lets_anything_over() {
    let house = upright(&[(0.0, 0.0), (4.0, 0.0), (4.0, 4.0), (0.0, 4.0)], None, None);
    let high = Solid::Capsule(Capsule {
        axis: Segment { a: DVec3::new(-5.0, 2.0, 500.0), b: DVec3::new(9.0, 2.0, 500.0) },
        radius: 0.1,
    });
    assert_eq!(distance_thing(&high, &house), Distance::HeightUnknown(0.0));
    let beside = Solid::Capsule(Capsule {
        axis: Segment { a: DVec3::new(-3.0, 0.0, 2.0), b: DVec3::new(-3.0, 4.0, 2.0) },
        radius: 0.5,
    });
    assert_eq!(distance_thing(&beside, &house), Distance::HeightUnknown(2.5));
}

#[test]
fn a_solid_far_over_a_thing_is_as_far_as_it_is() {
    let slab = upright(&[(0.0, 0.0), (4.0, 0.0), (4.0, 4.0), (0.0, 4.0)], Some(2.8), Some(3.0));
    let pin = |z: f64| {
        let axis = Segment { a: DVec3::new(2.0, 2.0, z), b: DVec3::new(2.0, 2.0, z + 1.0) };
        distance_thing(&Solid::Capsule(Capsule { axis, radius: 0.0 }), &slab).metres()
    };
    assert!((pin(20.0) - 17.0).abs() < 1e-12);
    assert!((pin(0.0) - 1.8).abs() < 1e-12, "under the slab");
    assert_eq!(pin(2.5), 0.0, "through it");
}

fn flat(level: f32) -> Ground {
    let grid =
        Grid { north_west: DVec2::new(-20.0, 20.0), cell: DVec2::ONE, rows: 41, cols: 41, heights: vec![level; 1681] };
    let source = GroundSource { name: "flat".into(), terrain: Terrain::Grid(grid), accuracy: 0.05, date: None };
    Ground { surfaces: vec![source] }
}

#[test]
fn headroom_is_the_least_of_bridge_and_line() {
    let bridge = upright(&[(-2.0, -10.0), (0.0, -10.0), (0.0, 10.0), (-2.0, 10.0)], Some(4.5), Some(5.5));
    let wall = upright(&[(5.0, -0.2), (6.0, -0.2), (6.0, 0.2), (5.0, 0.2)], None, Some(2.0));
    let line = PowerLine {
        name: "line".into(),
        voltage: None,
        spans: vec![Span { from: DVec3::new(3.0, -20.0, 6.0), to: DVec3::new(3.0, 20.0, 6.0), sag: 1.0 }],
        course: Vec::new(),
        survey_error: quantity::metres(0.3),
        swing: quantity::metres(0.5),
        source: String::from("made:1"),
        dead: None,
        insulated: None,
    };
    let path = [DVec2::new(-10.0, 0.0), DVec2::new(10.0, 0.0)];
    let things = [bridge, wall];
    let room = headroom(&flat(0.0), &things, &[line], &path, 2.0, 0.25);
    assert_eq!(room.by, Some(Overhead::Thing(0)));
    assert!((room.least.unwrap() - (4.5 - 0.05)).abs() < 1e-6);
    assert_eq!(room.blocked, [1]);
    assert!(room.unknown.is_empty());
    let line = PowerLine {
        name: "low".into(),
        voltage: None,
        spans: vec![Span { from: DVec3::new(3.0, -20.0, 5.0), to: DVec3::new(3.0, 20.0, 5.0), sag: 1.0 }],
        course: Vec::new(),
        survey_error: quantity::metres(0.3),
        swing: quantity::metres(0.5),
        source: String::from("made:1"),
        dead: None,
        insulated: None,
    };
    let room = headroom(&flat(0.0), &things, &[line], &path, 2.0, 0.25);
    assert_eq!(room.by, Some(Overhead::Line(0)));
    // 4 m at the lowest, less survey error, less the ground's accuracy; chords lie up to 1 mm lower.
    let least = room.least.unwrap();
    assert!(least <= 3.65 + 1e-6 && least > 3.64, "{least}");
}

#[test]
fn a_line_of_unknown_height_leaves_headroom_unknown() {
    let line = PowerLine {
        name: "line".into(),
        voltage: None,
        spans: Vec::new(),
        course: vec![DVec2::new(0.0, -9.0), DVec2::new(0.0, 9.0)],
        survey_error: quantity::metres(0.0),
        swing: quantity::metres(0.0),
        source: String::from("made:1"),
        dead: None,
        insulated: None,
    };
    let path = [DVec2::new(-10.0, 0.0), DVec2::new(10.0, 0.0)];
    let room = headroom(&flat(0.0), &[], &[line], &path, 2.0, 0.5);
    assert_eq!(room.least, None);
    assert!(!room.unknown.is_empty());
}

#[test]
fn a_cut_shows_ground_and_what_stands_on_it() {
    let house = upright(&[(1.0, -1.0), (3.0, -1.0), (3.0, 1.0), (1.0, 1.0)], None, Some(4.0));
    let cut = profile(&flat(7.0), &[house], &[DVec2::new(-25.0, 0.0), DVec2::new(5.0, 0.0)], 0.5);
    assert_eq!(cut.stations.len(), 61);
    assert_eq!(cut.stations[0].ground, None, "beyond the survey");
    let inside: Vec<f64> = cut.stations.iter().filter(|s| !s.things.is_empty()).map(|s| s.at.x).collect();
    assert!(inside.iter().all(|x| (1.0..=3.0).contains(x)) && inside.len() >= 4, "{inside:?}");
    assert_eq!(cut.stations[60].along, 30.0);
}

#[test]
fn a_wall_hides_and_a_window_does_not() {
    let course = vec![DVec2::new(0.0, -5.0), DVec2::new(0.0, 5.0)];
    let mut wall = thing(Body::Upright { shape: PlanShape::Strip { course, width: 0.2 }, base: None, top: Some(4.0) });
    let (eye, low, high) = (DVec3::new(-6.0, 0.0, 2.2), DVec3::new(6.0, 0.0, 1.0), DVec3::new(6.0, 0.0, 9.0));
    let ground = flat(0.0);
    assert_eq!(sight(&ground, std::slice::from_ref(&wall), eye, low, 0.1), Some(Hidden::Thing(0)));
    assert_eq!(sight(&ground, std::slice::from_ref(&wall), eye, high, 0.1), None);
    wall.openings.push(Opening { from: DVec2::new(0.0, -1.0), to: DVec2::new(0.0, 1.0), sill: 1.0, head: 2.5 });
    assert_eq!(sight(&ground, &[wall], eye, low, 0.1), None);
    assert!(matches!(sight(&ground, &[], eye, DVec3::new(6.0, 0.0, -1.0), 0.1), Some(Hidden::Ground(_))));
    assert_eq!(
        sight(&ground, &[], eye, DVec3::new(40.0, 0.0, 3.0), 0.1),
        Some(Hidden::CannotTell(None)),
        "nobody knows the ground there"
    );
}
