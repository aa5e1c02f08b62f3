//! Clouds made here: what is read, what is refused before anything is decoded.

use crate::made::Cloud;
use crate::reference::codes;
use geometry::DVec2;
use survey::{FileKind, GroundOptions, LengthUnit, read_cloud, read_ground};

const METRES: GroundOptions = GroundOptions {
    units: Some(LengthUnit::Metre),
    height_units: None,
    crs: None,
    file_crs: None,
    site_crs: None,
    local: None,
    columns: None,
    longest_edge: None,
    surface: None,
    survey_points: false,
    window: None,
    ground_filter: None,
    layers: None,
};

fn refused(bytes: &[u8], options: &GroundOptions) -> Vec<String> {
    let faults = read_ground("cloud.las", bytes, options).map(|r| r.facts).unwrap_err();
    assert!(faults.list.iter().all(|f| f.hint.is_some()));
    codes(&faults).into_iter().map(str::to_owned).collect()
}

#[test]
fn every_point_format_plain_and_compressed() {
    for format in [0, 1, 2, 3, 6, 7, 8] {
        for compressed in [false, true] {
            let cloud = Cloud { format, compressed, ..Cloud::default() };
            let reading = read_ground("cloud", &cloud.bytes(), &GroundOptions::default())
                .unwrap_or_else(|f| panic!("{format} {compressed} {:?}", codes(&f)));
            assert_eq!(reading.facts.kind, if compressed { FileKind::Laz } else { FileKind::Las });
            assert_eq!((reading.facts.points, reading.facts.ground_points), (144, 144));
            assert_eq!(reading.facts.classes.into_iter().collect::<Vec<_>>(), [(2, 144)]);
            let height = reading.terrain.height(DVec2::new(1003.25, 2004.5)).unwrap();
            assert!((height - 10.325).abs() < 1e-9, "{height}");
            assert_eq!(reading.terrain.height(DVec2::new(999.0, 2004.5)), None);
        }
    }
}

#[test]
fn withheld_points_are_no_ground() {
    for (format, compressed) in [(1, false), (1, true), (6, false), (7, true)] {
        let cloud = Cloud { format, compressed, withheld: true, ..Cloud::default() };
        let got = read_cloud("c.las", &cloud.bytes(), &GroundOptions::default()).unwrap();
        assert_eq!((got.facts.withheld, got.facts.ground_points), (48, 96));
        assert!(got.ground.iter().all(|p| p.z < 20.0));
    }
}

#[test]
fn units_from_keys_text_and_job() {
    let width = |cloud: &Cloud, options: &GroundOptions| {
        let facts = read_cloud("c.las", &cloud.bytes(), options).unwrap().facts;
        facts.max[0] - facts.min[0]
    };
    let feet = Cloud { keys: vec![(1024, 1), (3076, 9002)], ..Cloud::default() };
    assert!((width(&feet, &GroundOptions::default()) - 11.0 * 0.3048).abs() < 1e-9);
    let text = Cloud {
        keys: vec![],
        text: Some(r#"PROJCS["x",GEOGCS["g",UNIT["degree",0.0174]],UNIT["US survey foot",0.304800609601219]]"#),
        ..Cloud::default()
    };
    assert!((width(&text, &GroundOptions::default()) - 11.0 * 1200.0 / 3937.0).abs() < 1e-9);
    assert!((width(&feet, &METRES) - 11.0).abs() < 1e-9);
    // A known system has its unit by definition; an unknown code alone names none.
    let zone = Cloud { keys: vec![(1024, 1), (3072, 32633)], ..Cloud::default() };
    assert!((width(&zone, &GroundOptions::default()) - 11.0).abs() < 1e-9);
    let feet = Cloud { keys: vec![(1024, 1), (3072, 2994)], ..Cloud::default() };
    assert!((width(&feet, &GroundOptions::default()) - 11.0 * 0.3048).abs() < 1e-9);
    let code = Cloud { keys: vec![(1024, 1), (3072, 20_000)], ..Cloud::default() };
    assert_eq!(refused(&code.bytes(), &GroundOptions::default()), ["survey::units-unknown"]);
    let both = Cloud { text: text.text, ..Cloud::default() };
    assert_eq!(refused(&both.bytes(), &GroundOptions::default()), ["survey::units-contradict"]);
    let odd = Cloud { keys: vec![(1024, 1), (3076, 9005)], ..Cloud::default() };
    assert_eq!(refused(&odd.bytes(), &GroundOptions::default()), ["survey::unit-not-known"]);
    let none = Cloud { keys: vec![], ..Cloud::default() };
    assert_eq!(refused(&none.bytes(), &GroundOptions::default()), ["survey::units-unknown"]);
}

#[test]
fn degrees_are_refused_and_impossible_degrees_too() {
    let geographic = Cloud { keys: vec![(1024, 2), (2048, 4326)], ..Cloud::default() };
    assert_eq!(refused(&geographic.bytes(), &GroundOptions::default()), ["survey::crs-impossible"]);
    let got = read_cloud("c.las", &geographic.bytes(), &METRES).unwrap();
    assert_eq!(codes(&got.notes), ["survey::crs-overridden"]);
}

#[test]
fn a_cloud_without_ground_is_not_guessed() {
    for class in [0, 1, 6] {
        let cloud = Cloud { class, ..Cloud::default() };
        assert_eq!(refused(&cloud.bytes(), &GroundOptions::default()), ["survey::unclassified"]);
    }
}

#[test]
fn the_longest_edge_makes_holes() {
    let bytes = Cloud::default().bytes();
    let options = GroundOptions { longest_edge: Some(1.2), ..GroundOptions::default() };
    let reading = read_ground("c.las", &bytes, &options).unwrap();
    assert_eq!(reading.terrain.height(DVec2::new(1003.25, 2004.5)), None, "diagonals are 1.41 m");
}

#[test]
fn lies_of_a_header_are_refused_before_anything_is_decoded() {
    let plain = Cloud::default().bytes();
    let layered = Cloud { format: 6, compressed: true, ..Cloud::default() }.bytes();
    let pointwise = Cloud { compressed: true, ..Cloud::default() }.bytes();
    let put = |bytes: &[u8], at: usize, value: &[u8]| {
        let mut out = bytes.to_vec();
        out[at..at + value.len()].copy_from_slice(value);
        out
    };
    let u32s = |v: u32| v.to_le_bytes();
    let start = |b: &[u8]| u32::from_le_bytes(b[96..100].try_into().unwrap()) as usize;
    let table = |b: &[u8]| u64::from_le_bytes(b[start(b)..start(b) + 8].try_into().unwrap()) as usize;
    // Neither before the points nor in the last eight bytes.
    let without_table = put(&put(&pointwise, start(&pointwise), &[0; 8]), pointwise.len() - 8, &[0; 8]);
    let cases = [
        ("four billion points", put(&plain, 107, &u32s(u32::MAX)), "survey::truncated"),
        ("one point more than there is", put(&plain, 107, &u32s(145)), "survey::truncated"),
        ("four billion compressed points", put(&pointwise, 107, &u32s(u32::MAX)), "survey::truncated"),
        // Decoded they would take gigabytes, from a file of a few kilobytes.
        ("more points than its bytes hold", put(&pointwise, 107, &u32s(1_000_000 + 16 * 100_000)), "survey::truncated"),
        ("four billion records", put(&plain, 100, &u32s(u32::MAX)), "survey::record-count"),
        ("points start behind the end", put(&plain, 96, &u32s(u32::MAX)), "survey::truncated"),
        ("points start in the header", put(&plain, 96, &u32s(4)), "survey::damaged"),
        ("scale zero", put(&plain, 131, &0.0_f64.to_le_bytes()), "survey::damaged"),
        ("scale not a number", put(&plain, 131, &f64::NAN.to_le_bytes()), "survey::damaged"),
        ("offset infinite", put(&plain, 155, &f64::INFINITY.to_le_bytes()), "survey::damaged"),
        ("bounds not a number", put(&plain, 179, &f64::NAN.to_le_bytes()), "survey::damaged"),
        ("point format 50", put(&plain, 104, &[50]), "survey::point-format"),
        ("records of two bytes", put(&plain, 105, &2_u16.to_le_bytes()), "survey::point-format"),
        ("format 1 said to be 6", put(&pointwise, 104, &[0x86]), "survey::point-format"),
        ("no chunk table", without_table, "survey::no-chunk-table"),
        (
            "chunk table behind the end",
            put(&pointwise, start(&pointwise), &u64::MAX.to_le_bytes()[..7]),
            "survey::truncated",
        ),
        ("four billion chunks", put(&pointwise, table(&pointwise) + 4, &u32s(u32::MAX)), "survey::damaged"),
        ("no chunks", put(&pointwise, table(&pointwise) + 4, &u32s(0)), "survey::damaged"),
        ("a layer of four gigabytes", put(&layered, start(&layered) + 8 + 30 + 4, &u32s(u32::MAX)), "survey::damaged"),
        ("first half", plain[..plain.len() / 2].to_vec(), "survey::truncated"),
        ("first half, compressed", pointwise[..pointwise.len() / 2].to_vec(), "survey::truncated"),
        ("signature only", plain[..4].to_vec(), "survey::truncated"),
        ("nothing", vec![], "survey::empty"),
    ];
    for (what, bytes, code) in cases {
        assert_eq!(refused(&bytes, &METRES), [code], "{what}");
    }
}

#[test]
fn a_gap_between_chunks_is_refused_before_anything_is_decoded() {
    // Two chunks; the last layer of the first ends four bytes early. The decoder would look for the second
    // chunk there, and allocate what those bytes declare.
    let mut bytes = Cloud { side: 230, format: 6, compressed: true, ..Cloud::default() }.bytes();
    assert!(read_ground("c.laz", &bytes, &METRES).is_ok());
    let start = u32::from_le_bytes(bytes[96..100].try_into().unwrap()) as usize;
    // Behind the place of the table: a plain point of 30 bytes, the number of points, nine sizes.
    let last = start + 8 + 30 + 4 + 8 * 4;
    let size = u32::from_le_bytes(bytes[last..last + 4].try_into().unwrap());
    bytes[last..last + 4].copy_from_slice(&(size - 4).to_le_bytes());
    let faults = read_ground("c.laz", &bytes, &METRES).unwrap_err();
    assert_eq!((faults.list.len(), faults.list[0].message.id.as_ref()), (1, "survey-chunks-wrong"));
}

#[test]
fn points_outside_the_declared_box_show_damage() {
    // Shrink the box in the header by 3 m.
    let shrink = |mut bytes: Vec<u8>| {
        let max_x = f64::from_le_bytes(bytes[179..187].try_into().unwrap());
        bytes[179..187].copy_from_slice(&(max_x - 3.0).to_le_bytes());
        bytes
    };
    let plain = read_ground("c.las", &shrink(Cloud::default().bytes()), &GroundOptions::default()).unwrap();
    assert_eq!(codes(&plain.notes), ["survey::bounds-differ"]);
    let compressed = shrink(Cloud { compressed: true, ..Cloud::default() }.bytes());
    assert_eq!(refused(&compressed, &GroundOptions::default()), ["survey::damaged"]);
}

#[test]
fn a_box_left_empty_is_no_sign_of_degrees() {
    let mut bytes = Cloud { keys: vec![], ..Cloud::default() }.bytes();
    bytes[179..227].fill(0);
    let reading = read_ground("c.las", &bytes, &METRES).unwrap();
    assert_eq!(codes(&reading.notes), ["survey::bounds-differ"]);
}

#[test]
fn coordinates_beyond_the_earth_are_refused() {
    let mut bytes = Cloud::default().bytes();
    // Offset and box moved together, as a wrong export would.
    for at in [155, 179, 187] {
        let value = f64::from_le_bytes(bytes[at..at + 8].try_into().unwrap());
        bytes[at..at + 8].copy_from_slice(&(value + 1e9).to_le_bytes());
    }
    assert_eq!(refused(&bytes, &GroundOptions::default()), ["survey::coordinates-absurd"]);
}

#[test]
fn kinds_by_first_bytes_then_by_name() {
    let cloud = Cloud::default().bytes();
    assert!(read_ground("renamed.txt", &cloud, &GroundOptions::default()).is_ok());
    let code = |name: &str, bytes: &[u8]| {
        codes(&read_ground(name, bytes, &METRES).map(|r| r.facts).unwrap_err())[0].to_owned()
    };
    assert_eq!(code("cloud.laz", b"not a cloud"), "survey::not-the-kind");
    assert_eq!(code("grid.tif", b"x,y,z\n1,2,3\n"), "survey::not-the-kind");
    assert_eq!(code("surface.xml", b"<LandXML/>"), "survey::no-surface");
    assert_eq!(code("levels.csv", b"<LandXML/>"), "survey::no-surface");
    assert_eq!(code("levels.csv", b"\x00\x01\x02\x03"), "survey::kind-unknown");
    assert_eq!(code("levels.csv", b""), "survey::empty");
}

#[test]
fn tiles_join_without_a_seam() {
    let (west, east) = (Cloud::default(), Cloud { east: 1012.0, ..Cloud::default() });
    let (west, east) = (west.bytes(), east.bytes());
    let reading = survey::read_tiles(&[("west.las", &west), ("east.las", &east)], &GroundOptions::default()).unwrap();
    assert_eq!(reading.facts.points, 288);
    assert!(reading.terrain.height(DVec2::new(1011.5, 2005.5)).is_some());
    // Faults of every tile, each with its own name.
    let faults =
        survey::read_tiles(&[("a.las", &west[..100]), ("b.las", &east), ("c.las", &[])], &GroundOptions::default())
            .map(|r| r.facts)
            .unwrap_err();
    let found: Vec<_> = faults.list.iter().map(|f| (f.place.file.as_str(), f.code.as_str())).collect();
    assert_eq!(found, [("a.las", "survey::truncated"), ("c.las", "survey::empty")]);
}
