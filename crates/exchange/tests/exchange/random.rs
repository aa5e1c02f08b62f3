//! Any shape is written or refused; nothing panics, and what is written can be read and has its size.

use crate::{read_dxf, read_glb, sample};
use exchange::{About, Format, export};
use geometry::DVec2;
use proptest::prelude::*;
use site::{Grid, PlanArea, PlanShape, Site, Terrain, ThingKind};

fn any_number() -> impl Strategy<Value = f64> {
    prop_oneof![
        8 => -50.0..50.0_f64,
        2 => (0..6_i32).prop_map(f64::from),
        1 => prop_oneof![Just(f64::NAN), Just(f64::INFINITY), Just(-0.0), Just(1e300), Just(1e-300), Just(4e7)],
    ]
}

fn any_ring() -> impl Strategy<Value = Vec<DVec2>> {
    prop::collection::vec((any_number(), any_number()).prop_map(|(x, y)| DVec2::new(x, y)), 0..9)
}

fn any_shape() -> impl Strategy<Value = PlanShape> {
    prop_oneof![
        (any_ring(), prop::collection::vec(any_ring(), 0..3))
            .prop_map(|(outer, holes)| PlanShape::Area(PlanArea { outer, holes })),
        (any_ring(), any_number()).prop_map(|(course, width)| PlanShape::Strip { course, width }),
        (any_number(), any_number(), any_number())
            .prop_map(|(x, y, radius)| PlanShape::Round { centre: DVec2::new(x, y), radius }),
    ]
}

/// 8 m × 8 m around the origin.
fn small_ground() -> Grid {
    let heights = (0..81_u8).map(|i| if i == 40 { f32::NAN } else { f32::from(i % 5) }).collect();
    Grid { north_west: DVec2::new(-4.0, 4.0), cell: DVec2::ONE, rows: 9, cols: 9, heights }
}

fn readable(site: &Site) {
    for format in Format::ALL {
        let Ok(bytes) = export(site, format, &About::default()) else { continue };
        match format {
            Format::GeoJson => {
                let file: serde_json::Value = serde_json::from_slice(&bytes).unwrap();
                assert_eq!(file["type"], "FeatureCollection");
            }
            Format::Dxf => {
                read_dxf::read(&bytes);
            }
            Format::Gltf => {
                let model = read_glb::read(&bytes);
                for node in model.json["nodes"].as_array().unwrap() {
                    model.corners(node, 4);
                }
            }
        }
    }
}

/// A star around a middle: a ring that never crosses itself.
fn star(radii: &[f64], middle: DVec2) -> Vec<DVec2> {
    let n = radii.len() as f64;
    let corner = |(i, r): (usize, &f64)| middle + DVec2::from_angle(std::f64::consts::TAU * i as f64 / n) * *r;
    radii.iter().enumerate().map(corner).collect()
}

fn area(ring: &[DVec2]) -> f64 {
    (0..ring.len()).map(|i| (ring[i] - ring[0]).perp_dot(ring[(i + 1) % ring.len()] - ring[0])).sum::<f64>() * 0.5
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 100, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn any_shape_is_written_or_refused(
        shapes in prop::collection::vec(any_shape(), 1..4),
        base in prop::option::of(any_number()),
        top in prop::option::of(any_number()),
        name in "\\PC{0,40}",
        ground in any::<bool>(),
    ) {
        let mut site = sample::empty();
        if ground {
            site.ground.surfaces = vec![sample::surface(Terrain::Grid(small_ground()), &name, None)];
        }
        site.surroundings.things =
            shapes.iter().map(|s| sample::thing(&name, ThingKind::Building, s.clone(), base, top)).collect();
        site.surroundings.zones = vec![site::Zone {
            id: name.clone(),
            name,
            shape: shapes[0].clone(),
            rule: site::ZoneRule::NoGo,
            times: Vec::new(),
            by: String::new(),
        }];
        readable(&site);
    }

    #[test]
    fn a_solid_has_its_area_times_its_height(
        outer in prop::collection::vec(2.0..9.0_f64, 3..20),
        hole in prop::collection::vec(0.1..0.9_f64, 3..12),
        tall in 0.5..20.0_f64,
        turned in any::<bool>(),
    ) {
        let middle = sample::CORNER;
        // A star of three corners comes as near to its middle as half its least radius.
        let (mut outer, hole) = (star(&outer, middle), star(&hole, middle));
        if turned {
            outer.reverse();
        }
        let expected = (area(&outer).abs() - area(&hole).abs()) * tall;
        let mut site = sample::empty();
        let shape = PlanShape::Area(PlanArea { outer, holes: vec![hole] });
        site.surroundings.things = vec![sample::thing("star", ThingKind::Building, shape, Some(1.0), Some(1.0 + tall))].into();
        let model = read_glb::read(&export(&site, Format::Gltf, &About::default()).unwrap());
        let volume = model.volume(model.node("star"));
        prop_assert!((volume - expected).abs() <= 1e-5 * expected + 1e-3, "{volume} {expected}");
    }
}
