//! Level points from text.

use crate::reference::{bytes, codes, present};
use geometry::DVec2;
use survey::{Column, GroundOptions, GroundReading, LengthUnit, LevelColumns, read_ground};

fn in_metres() -> GroundOptions {
    GroundOptions { units: Some(LengthUnit::Metre), ..GroundOptions::default() }
}

fn read(text: &str, options: &GroundOptions) -> Result<GroundReading, Vec<(String, Option<usize>)>> {
    read_ground("levels.csv", text.as_bytes(), options).map_err(|faults| {
        assert!(faults.list.iter().all(|f| f.hint.is_some()));
        faults.list.iter().map(|f| (f.code.clone(), f.place.line)).collect()
    })
}

fn refused(text: &str) -> Vec<(String, Option<usize>)> {
    read(text, &in_metres()).map(|r| r.facts).unwrap_err()
}

fn at(code: &str, line: usize) -> (String, Option<usize>) {
    (code.to_owned(), Some(line))
}

#[test]
fn header_in_several_hands() {
    let texts = [
        "point,x,y,z\n1,0,0,10\n2,10,0,11\n3,0,10,12\n",
        "\u{feff}Easting;Northing;Level\r\n0,0;0,0;10,0\r\n10,0;0,0;11,0\r\n0,0;10,0;12,0\r\n",
        "e [m]\tn [m]\tz [m]\n\n0\t0\t10\n10\t0\t11\n0\t10\t12\n",
        "\"N\", \"Elevation\", \"E\", \"remark, free\"\n0,10,0,\"a, b\"\n0,11,10,\n10,12,0,x\n",
    ];
    for text in texts {
        let reading = read(text, &in_metres()).unwrap();
        assert_eq!(reading.facts.ground_points, 3, "{text}");
        let height = reading.terrain.height(DVec2::new(4.0, 2.0)).unwrap();
        assert!((height - 10.8).abs() < 1e-9, "{text}: {height}");
    }
}

#[test]
fn units_from_the_header_or_the_job_or_refused() {
    let feet = "x [ft],y [ft],z [ft]\n0,0,10\n10,0,11\n0,10,12\n";
    let reading = read(feet, &GroundOptions::default()).unwrap();
    assert!((reading.facts.max[0] - 3.048).abs() < 1e-12 && (reading.facts.max[2] - 3.6576).abs() < 1e-12);
    let codes: Vec<String> = read(feet, &in_metres()).unwrap().notes.list.into_iter().map(|f| f.code).collect();
    assert_eq!(codes, ["survey::units-overridden", "survey::units-overridden"]);
    let plain = "x,y,z\n0,0,10\n10,0,11\n0,10,12\n";
    assert_eq!(read(plain, &GroundOptions::default()).unwrap_err()[0].0, "survey::units-unknown");
    let mixed = "x [ft],y [m],z [m]\n0,0,10\n10,0,11\n0,10,12\n";
    assert_eq!(read(mixed, &GroundOptions::default()).unwrap_err()[0].0, "survey::units-contradict");
}

#[test]
fn every_bad_row_is_reported_with_its_line() {
    let text = "point,x,y,z\n1,0,0,10\n2,10,zero,11\n3,0,10,\n4,5\n5,1,1,NaN\n6,2,2,inf\n7,1,2,3\n8,2,9,99999\n";
    let expected: Vec<_> = [3, 4, 5, 6, 7, 9].map(|line| at("survey::bad-row", line)).to_vec();
    assert_eq!(refused(text), expected);
}

#[test]
fn very_many_bad_rows_end_in_a_count() {
    let text = format!("x,y,z\n{}", "a,b,c\n".repeat(5000));
    let found = refused(&text);
    assert_eq!(found.len(), 101);
    assert_eq!(found.last().unwrap(), &("survey::bad-row".to_owned(), None));
}

#[test]
fn repeated_rows_names_and_heights() {
    let text = "point,x,y,z\n1,0,0,10\n2,10,0,11\n3,0,10,12\n3,10,10,13\n5,0,0,10.004\n";
    let reading = read(text, &in_metres()).unwrap();
    let found: Vec<_> = reading.notes.list.iter().map(|f| (f.code.as_str(), f.place.line)).collect();
    assert_eq!(found, [("survey::name-twice", Some(5)), ("survey::repeated-rows", None)]);
    assert_eq!(reading.facts.ground_points, 4);
    let text = "x,y,z\n0,0,10\n10,0,11\n0,10,12\n0,0,10.5\n";
    assert_eq!(refused(text), [at("survey::two-heights", 5)]);
}

#[test]
fn too_few_and_collinear_points() {
    assert_eq!(refused("x,y,z\n0,0,10\n10,0,11\n")[0].0, "survey::too-few-points");
    assert_eq!(refused("x,y,z\n0,0,10\n10,0,11\n20,0,12\n")[0].0, "survey::too-few-points");
    assert_eq!(refused("\n\n")[0].0, "survey::no-points");
    assert_eq!(refused("x,y,z\n")[0].0, "survey::too-few-points");
}

#[test]
fn degrees_and_foreign_encodings() {
    let degrees = "x,y,z\n-94.68,31.04,40\n-94.67,31.04,41\n-94.68,31.05,42\n";
    assert_eq!(refused(degrees)[0].0, "survey::degrees");
    let utf16: Vec<u8> = [0xFF, 0xFE].into_iter().chain("x,y,z\n".encode_utf16().flat_map(u16::to_le_bytes)).collect();
    let faults = read_ground("levels.csv", &utf16, &in_metres()).map(|r| r.facts).unwrap_err();
    assert_eq!(codes(&faults), ["survey::text-encoding"]);
    // A remark in Latin-1 does no harm.
    let latin = b"x,y,z,remark\n0,0,10,stra\xDFe\n10,0,11,\n0,10,12,\n";
    assert!(read_ground("levels.csv", latin, &in_metres()).is_ok());
}

#[test]
fn columns_as_the_job_states_them() {
    let text = "0,0,10\n10,0,11\n0,10,12\n";
    assert_eq!(refused(text), [at("survey::columns-unknown", 1)]);
    let columns =
        LevelColumns { point: None, east: Column::Number(1), north: Column::Number(2), height: Column::Number(3) };
    let options = GroundOptions { columns: Some(columns), ..in_metres() };
    assert_eq!(read(text, &options).unwrap().facts.ground_points, 3);
    let name = |n: &str| Column::Name(n.to_owned());
    let columns = LevelColumns { point: None, east: name("Rechts"), north: name("hoch"), height: name("NN Höhe") };
    let options = GroundOptions { columns: Some(columns), ..in_metres() };
    let reading = read("hoch,Rechts,NN-Höhe\n0,0,10\n0,10,11\n10,0,12\n", &options).unwrap();
    assert!((reading.terrain.height(DVec2::new(4.0, 2.0)).unwrap() - 10.8).abs() < 1e-9);
    assert_eq!(read("hoch,Rechts\n0,0\n", &options).unwrap_err(), [at("survey::column-missing", 1)]);
}

#[test]
fn long_triangles_are_holes() {
    let text = "x,y,z\n0,0,10\n20,0,11\n0,20,12\n200,200,13\n";
    let reading = read(text, &in_metres()).unwrap();
    assert!(reading.terrain.height(DVec2::new(4.0, 4.0)).is_some());
    assert_eq!(reading.terrain.height(DVec2::new(100.0, 100.0)), None);
}

#[test]
fn val_partridge_data_collector_file() {
    if !present() {
        return;
    }
    let path = "survey/derived_partridge_pnezd_ft.csv";
    let options = GroundOptions { units: Some(LengthUnit::Foot), ..GroundOptions::default() };
    let reading = read_ground(path, &bytes(path), &options).unwrap();
    assert_eq!(codes(&reading.notes), ["survey::order-assumed"]);
    let facts = &reading.facts;
    assert_eq!(facts.points, 2896);
    // East 27682.476..33182.697 ft, north 32450.194..43689.748 ft: 1.68 km wide, 3.43 km deep.
    assert!((facts.max[0] - facts.min[0] - 1676.5).abs() < 1.0);
    assert!((facts.max[1] - facts.min[1] - 3425.8).abs() < 1.0);
    // Point 1 carries its own height in metres in its description: BAR[245.538].
    let at = DVec2::new(32423.2513, 33268.2185) * 0.3048;
    assert!((reading.terrain.height(at).unwrap() - 245.538).abs() < 0.0005);
}
