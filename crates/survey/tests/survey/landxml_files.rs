//! LandXML files of the reference data, against facts measured there with other programs.

use crate::reference::{bytes, codes, present};
use geometry::DVec2;
use site::Terrain;
use survey::{
    GroundOptions, GroundReading, LengthUnit, Shape, SurfaceFacts, landxml_plan, landxml_surfaces, read_ground,
};

const FOOT: f64 = 0.3048;
const US_FOOT: f64 = 1200.0 / 3937.0;

/// Of the last digit printed, 0.001 of the unit or its square.
const DIGIT: f64 = 0.000_51;

fn ground(path: &str, surface: Option<&str>) -> GroundReading {
    let options = GroundOptions { surface: surface.map(str::to_owned), ..GroundOptions::default() };
    read_ground(path, &bytes(path), &options).unwrap()
}
fn surfaces(path: &str) -> Vec<SurfaceFacts> {
    landxml_surfaces(path, &bytes(path)).unwrap()
}

/// Bounds (north, east, height) and areas in the file's unit.
fn compare(facts: &SurfaceFacts, unit: f64, bounds: [[f64; 2]; 3], plan: f64, space: f64) {
    for ([low, high], axis) in bounds.into_iter().zip([1, 0, 2]) {
        assert!((facts.min[axis] / unit - low).abs() < DIGIT, "{}: {} for {low}", facts.name, facts.min[axis] / unit);
        assert!((facts.max[axis] / unit - high).abs() < DIGIT, "{}: {} for {high}", facts.name, facts.max[axis] / unit);
    }
    let (got_plan, got_space) = (facts.plan_area / unit / unit, facts.surface_area / unit / unit);
    assert!((got_plan - plan).abs() < 2.0 * DIGIT, "{}: plan {got_plan} for {plan}", facts.name);
    assert!((got_space - space).abs() < 2.0 * DIGIT, "{}: surface {got_space} for {space}", facts.name);
}

#[test]
fn val_landxml_landfill_in_us_survey_feet() {
    if !present() {
        return;
    }
    let path = "terrain/landxml/landfill_tin_lxml12_usft_1657pts.xml";
    let facts = &surfaces(path)[0];
    assert_eq!((facts.points, facts.faces), (1657, 3199));
    let bounds = [[1_067_474.113, 1_069_606.113], [834_492.220, 836_626.508], [447.391, 548.918]];
    compare(facts, US_FOOT, bounds, 3_033_985.925, 3_047_007.907);
    assert!((facts.mean_slope.unwrap() - 0.078_10).abs() < 5.1e-6);
    let reading = ground(path, None);
    assert_eq!(reading.facts.units.horizontal, LengthUnit::UsSurveyFoot);
    // At 1.07 million feet the two kinds of foot differ by 0.65 m.
    assert!((reading.facts.max[1] - 1_069_606.113 * FOOT - 0.65).abs() < 0.01);
}

#[test]
fn val_landxml_landfill_thinned() {
    if !present() {
        return;
    }
    let path = "terrain/landxml/landfill_tin_lxml12_usft_164pts.xml";
    let facts = &surfaces(path)[0];
    assert_eq!((facts.points, facts.faces), (164, 300));
    assert!((facts.min[2] / US_FOOT - 447.391).abs() < DIGIT && (facts.max[2] / US_FOOT - 551.729).abs() < DIGIT);
    assert!((facts.plan_area / US_FOOT / US_FOOT - 3_031_776.118).abs() < 2.0 * DIGIT);
    assert!((facts.mean_slope.unwrap() - 0.082_67).abs() < 5.1e-6);
    // What a coarse surface hides: places where it lies metres off the fine one.
    let (fine, coarse) = (ground("terrain/landxml/landfill_tin_lxml12_usft_1657pts.xml", None), ground(path, None));
    let (low, high) = fine.terrain.bounds().unwrap();
    let mut worst: f64 = 0.0;
    let mut compared = 0;
    for i in 0..2500 {
        let at = low + (high - low) * DVec2::new(f64::from(i % 50) + 0.5, f64::from(i / 50) + 0.5) / 50.0;
        if let (Some(a), Some(b)) = (fine.terrain.height(at), coarse.terrain.height(at)) {
            worst = worst.max((a - b).abs());
            compared += 1;
        }
    }
    assert!(compared > 1500 && worst > 1.0 && worst < 10.0, "{compared} places, up to {worst} m");
}

#[test]
fn val_landxml_olympus_design() {
    if !present() {
        return;
    }
    let path = "terrain/landxml/olympus_design_tin_lxml20_ft.xml";
    let facts = &surfaces(path)[0];
    assert_eq!((facts.name.as_str(), facts.points, facts.faces), ("proposed design surface", 12_390, 24_612));
    let bounds = [[2805.439, 5102.102], [3709.145, 5966.892], [570.302, 856.682]];
    compare(facts, FOOT, bounds, 3_455_033.583, 3_513_684.126);
    assert!((facts.plan_area - 320_983.1).abs() < 0.051);
    assert!((facts.mean_slope.unwrap() - 0.160_16).abs() < 5.1e-6);
    let plan = landxml_plan(path, &bytes(path), &GroundOptions::default()).unwrap();
    assert_eq!(plan.features.iter().filter(|f| f.layer == "Parcel").count(), 71);
    assert!(plan.features.iter().all(|f| matches!(f.shape, Shape::Area { .. })), "parcels are closed");
}

#[test]
fn val_landxml_subdivision_states_its_own_areas() {
    if !present() {
        return;
    }
    let path = "terrain/landxml/subdivision_eg_fg_lxml11_ft.xml";
    let both = surfaces(path);
    let [eg, fg] = &both[..] else { panic!("two surfaces") };
    assert_eq!((eg.name.as_str(), eg.points, eg.faces), ("EG", 713, 1284));
    assert_eq!((fg.name.as_str(), fg.points, fg.faces), ("FG", 2716, 5241));
    compare(eg, FOOT, [[54.891, 3601.876], [-1765.746, 3284.404], [230.0, 290.0]], 9_742_293.952, 9_752_293.970);
    compare(fg, FOOT, [[557.143, 2989.588], [-650.489, 2511.071], [1150.0, 1403.566]], 2_768_515.766, 3_348_805.635);
    for facts in [eg, fg] {
        let same = |declared: Option<f64>, computed: f64| (declared.unwrap() / computed - 1.0).abs() < 1e-8;
        assert!(
            same(facts.declared_plan_area, facts.plan_area) && same(facts.declared_surface_area, facts.surface_area)
        );
    }
    let reading = ground(path, Some("FG"));
    assert_eq!(codes(&reading.notes), ["survey::surfaces-apart"], "about 900 ft between them");
    let plan = landxml_plan(path, &bytes(path), &GroundOptions::default()).unwrap();
    assert_eq!(codes(&plan.notes), ["survey::zero-heights"]);
    let of = |layer: &str| plan.features.iter().filter(|f| f.layer == layer).collect::<Vec<_>>();
    assert_eq!((of("CgPoint").len(), of("Alignment").len(), of("Parcel").len()), (639, 6, 83));
    let heights: Vec<_> = of("CgPoint").iter().filter_map(|f| f.shape.points().next().unwrap().height).collect();
    assert_eq!(639 - heights.len(), 286, "written as 0");
    assert!(heights.iter().all(|z| *z > 229.0 * FOOT));
    assert_eq!((plan.facts.left_out["Pipe"], plan.facts.left_out["Struct"]), (5, 6));
    // Each alignment states its length, each parcel its area, in feet.
    let xml = String::from_utf8(bytes(path)).unwrap();
    let stated = |element: &str, name: &str, value: &str| -> f64 {
        let tag = xml.split(&format!("<{element} ")).find(|t| t.contains(&format!("name=\"{name}\""))).unwrap();
        tag.split_once(&format!(" {value}=\""))
            .or_else(|| tag.split_once(&format!("{value}=\"")))
            .unwrap()
            .1
            .split('"')
            .next()
            .unwrap()
            .parse()
            .unwrap()
    };
    for f in of("Alignment") {
        let points: Vec<_> = f.shape.points().map(|p| p.at).collect();
        let length: f64 = points.windows(2).map(|p| (p[1] - p[0]).length()).sum();
        let expected = stated("Alignment", f.name.as_deref().unwrap(), "length") * FOOT;
        assert!((length / expected - 1.0).abs() < 0.002, "{:?}: {length} m for {expected} m", f.name);
    }
    let mut areas = 0;
    for f in of("Parcel") {
        let Shape::Area { outer, .. } = &f.shape else { continue };
        let (first, n) = (outer[0].at, outer.len());
        let twice: f64 = (1..n - 1).map(|i| (outer[i].at - first).perp_dot(outer[i + 1].at - first)).sum();
        let expected = stated("Parcel", f.name.as_deref().unwrap(), "area") * FOOT * FOOT;
        assert!(
            (twice.abs() / 2.0 / expected - 1.0).abs() < 0.005,
            "{:?}: {} for {expected}",
            f.name,
            twice.abs() / 2.0
        );
        areas += 1;
    }
    assert_eq!(areas, 83);
}

#[test]
fn val_landxml_toivola_far_east_in_another_namespace() {
    if !present() {
        return;
    }
    let path = "terrain/landxml/toivola_road_inframodel404_m.xml";
    let facts = &surfaces(path)[0];
    assert_eq!((facts.points, facts.faces, facts.breaklines), (2309, 4036, 38));
    let bounds = [[6_876_717.871, 6_876_949.143], [24_525_426.855, 24_525_798.575], [124.280, 127.653]];
    compare(facts, 1.0, bounds, 8257.007, 8608.946);
    let reading = ground(path, None);
    assert_eq!(reading.facts.crs.as_deref(), Some("GK24 (EPSG:3878)"));
    // Eastings of 24.5 million: every corner keeps its height.
    let Terrain::Tin(tin) = &reading.terrain else { panic!("triangles") };
    let mut far: f64 = 0.0;
    for corner in tin.triangles().flatten() {
        far = far.max((tin.height(corner.truncate()).unwrap() - corner.z).abs());
    }
    assert!(far < 1e-6, "{far}");
}

#[test]
fn val_landxml_partridge_points_carry_heights_in_metres() {
    if !present() {
        return;
    }
    let path = "survey/partridge_survey_lxml11_ft.xml";
    let plan = landxml_plan(path, &bytes(path), &GroundOptions::default()).unwrap();
    let points: Vec<_> = plan.features.iter().filter(|f| f.layer == "CgPoint").collect();
    assert_eq!((points.len(), plan.facts.left_out["RawObservation"]), (2896, 2945));
    assert_eq!(plan.features.iter().filter(|f| f.layer == "PlanFeature").count(), 118);
    // 15 descriptions carry the height in metres: BAR[245.538].
    let mut carried = 0;
    for f in &points {
        let Some(survey::Attribute::Text(desc)) = f.attributes.get("desc") else { continue };
        let Some(metres) = desc.strip_prefix("BAR[").and_then(|d| d.strip_suffix(']')) else { continue };
        let expected: f64 = metres.parse().unwrap();
        assert!((f.shape.points().next().unwrap().height.unwrap() - expected).abs() < 2e-5, "{desc}");
        carried += 1;
    }
    assert_eq!(carried, 15);
    let options = GroundOptions { survey_points: true, ..GroundOptions::default() };
    let reading = read_ground(path, &bytes(path), &options).unwrap();
    let bounds = [[32_450.194, 43_689.748], [27_682.476, 33_182.697], [800.199, 815.130]];
    for ([low, high], axis) in bounds.into_iter().zip([1, 0, 2]) {
        assert!((reading.facts.min[axis] / FOOT - low).abs() < DIGIT);
        assert!((reading.facts.max[axis] / FOOT - high).abs() < DIGIT);
    }
    // The same points as a list of levels make the same ground.
    let levels = "survey/derived_partridge_pnezd_ft.csv";
    let feet = GroundOptions { units: Some(LengthUnit::Foot), ..GroundOptions::default() };
    let listed = read_ground(levels, &bytes(levels), &feet).unwrap();
    let mut compared = 0;
    for f in points.iter().step_by(7) {
        let at = f.shape.points().next().unwrap().at;
        if let (Some(a), Some(b)) = (reading.terrain.height(at), listed.terrain.height(at)) {
            assert!((a - b).abs() < 0.001, "{at}: {a} for {b}"); // four decimals of a foot
            compared += 1;
        }
    }
    assert!(compared > 150, "{compared}");
}
