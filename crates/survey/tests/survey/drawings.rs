//! Small drawings made here: each fault, and what becomes of it.

use crate::reference::codes;
use evidence::Faults;
use survey::{FileKind, GroundOptions, LengthUnit, PlanReading, Shape, read_ground, read_plan};

/// "code value code value", with blanks between; `_` stands for a blank within a value.
fn pairs(text: &str) -> String {
    text.split_whitespace().map(|word| word.replace('_', " ") + "\n").collect()
}

/// A drawing in metres with these tables, blocks and entities.
fn drawing(tables: &str, blocks: &str, entities: &str) -> String {
    pairs(&format!(
        "0 SECTION 2 HEADER 9 $INSUNITS 70 6 0 ENDSEC 0 SECTION 2 TABLES {tables} 0 ENDSEC \
         0 SECTION 2 BLOCKS {blocks} 0 ENDSEC 0 SECTION 2 ENTITIES {entities} 0 ENDSEC 0 EOF"
    ))
}

fn of(entities: &str) -> PlanReading {
    read_plan("plan.dxf", drawing("", "", entities).as_bytes(), &GroundOptions::default()).unwrap()
}

fn refused(text: &str) -> Faults {
    let faults = read_plan("plan.dxf", text.as_bytes(), &GroundOptions::default()).map(|r| r.facts).unwrap_err();
    assert!(faults.list.iter().all(|f| f.hint.is_some()));
    faults
}

const LINE: &str = "0 LINE 8 WALLS 10 0 20 0 11 30 21 5";
const SQUARE: &str = "0 LWPOLYLINE 8 AREA 70 1 10 0 20 0 10 10 20 0 10 10 20 10 10 0 20 10";

fn area(shape: &Shape) -> f64 {
    let Shape::Area { outer, .. } = shape else { panic!("no area: {shape:?}") };
    let corner = |i: usize| outer[i % outer.len()].at;
    (0..outer.len()).map(|i| corner(i).perp_dot(corner(i + 1))).sum::<f64>().abs() / 2.0
}

#[test]
fn units_are_stated_by_file_or_job_or_the_drawing_is_refused() {
    let whole = drawing("", "", LINE);
    let with = |code: &str| whole.replacen("70\n6\n", &format!("70\n{code}\n"), 1);
    for (code, metres) in [("1", 0.0254), ("2", 0.3048), ("4", 0.001), ("5", 0.01), ("6", 1.0), ("21", 1200.0 / 3937.0)]
    {
        // A hundred times as large, so that every unit has a plausible size.
        let large = with(code).replace("\n30\n", "\n3000\n");
        let reading = read_plan("plan.dxf", large.as_bytes(), &GroundOptions::default()).unwrap();
        assert!((reading.facts.max[0] - 3000.0 * metres).abs() < 1e-9, "{code}");
    }
    assert_eq!(codes(&refused(&with("0"))), ["survey::units-unknown"]);
    assert_eq!(codes(&refused(&with("3"))), ["survey::unit-not-known"]);
    assert_eq!(codes(&refused(&with("4"))), ["survey::drawing-size"], "30 mm is no site");
    assert_eq!(codes(&refused(&whole.replace("\n30\n", "\n30000\n"))), ["survey::drawing-size"], "30 km is none");
    let stated = GroundOptions { units: Some(LengthUnit::Foot), ..GroundOptions::default() };
    let reading = read_plan("plan.dxf", with("4").as_bytes(), &stated).unwrap();
    assert!((reading.facts.max[0] - 9.144).abs() < 1e-9);
    assert_eq!(codes(&reading.notes), ["survey::units-overridden"]);
}

#[test]
fn broken_files_are_refused() {
    let whole = drawing("", "", LINE);
    assert_eq!(codes(&refused("not a drawing\nat all\n")), ["survey::not-a-drawing"]);
    assert_eq!(codes(&refused(whole.split("ENDSEC\n0\nEOF").next().unwrap())), ["survey::truncated"]);
    assert_eq!(codes(&refused(&whole.replace("\n30\n", "\n3o\n"))), ["survey::bad-number"]);
    assert_eq!(refused(&whole.replace("\n30\n", "\nnan\n")).list[0].place.line, Some(35));
    assert_eq!(codes(&refused(&whole.replace("\n30\n", "\n1e300\n"))), ["survey::drawing-size"]);
    assert_eq!(codes(&refused(&drawing("", "", ""))), ["survey::no-shapes"]);
    assert_eq!(codes(&refused(&drawing("", "", "0 3DSOLID 8 0"))), ["survey::no-shapes"]);
    // A stray line is skipped and said; many are too many.
    let stray = whole.replace("LINE\n", "LINE\nstray\n");
    let reading = read_plan("plan.dxf", stray.as_bytes(), &GroundOptions::default()).unwrap();
    assert_eq!((codes(&reading.notes), reading.features.len()), (vec!["survey::lines-skipped"], 1));
    let garbled = whole.replace("LINE\n", &format!("LINE\n{}", "stray\n".repeat(50)));
    assert_eq!(codes(&refused(&garbled)), ["survey::damaged"]);
    // Line ends of other systems.
    for ends in ["\r\n", "\r"] {
        assert!(read_plan("plan.dxf", whole.replace('\n', ends).as_bytes(), &GroundOptions::default()).is_ok());
    }
}

#[test]
fn odd_outlines_are_mended_or_said() {
    let cases: &[(&str, &str, usize)] = &[
        ("10 0 20 0 10 10 20 0 10 10 20 0 10 10 20 10", "", 1),
        ("10 0 20 0 10 10 20 10 10 10 20 0 10 0 20 10", "survey::outline-split", 2),
        ("10 0 20 0 10 10 20 10 10 5 20 5", "survey::outline-flat", 1),
        ("10 0 20 0 10 10 20 10", "survey::outline-flat", 1),
        ("10 3 20 3 10 3 20 3 10 3 20 3", "survey::entity-unusable", 0),
    ];
    for (corners, code, shapes) in cases {
        let reading = of(&format!("{LINE} 0 LWPOLYLINE 8 ODD 70 1 {corners}"));
        let odd = reading.features.iter().filter(|f| f.layer == "ODD").count();
        assert_eq!(odd, *shapes, "{corners}");
        let said = reading.notes.list.iter().find(|f| f.place.line.is_some());
        assert_eq!(said.map_or("", |f| f.code.as_str()), *code, "{corners}");
        if let Some(said) = said {
            assert!(format!("{:?}", said.message).contains("ODD"));
        }
    }
    let reading = of(&format!("{LINE} 0 LINE 8 WALLS 10 4 20 4 11 4 21 4"));
    assert_eq!(codes(&reading.notes), ["survey::entity-unusable", "survey::left-out"]);
    assert_eq!(reading.facts.left_out["LINE"], 1);
}

#[test]
fn lines_join_only_where_two_ends_meet() {
    let side = |a: (i32, i32), b: (i32, i32)| format!("0 LINE 8 L 10 {} 20 {} 11 {} 21 {} ", a.0, a.1, b.0, b.1);
    let triangle = [side((0, 0), (9, 0)), side((9, 9), (9, 0)), side((0, 0), (9, 9))].concat();
    let reading = of(&triangle);
    assert_eq!(reading.features.len(), 1);
    assert!((area(&reading.features[0].shape) - 40.5).abs() < 1e-9);
    assert_eq!(reading.features[0].layer, "L");
    // A line that leads to one corner does no harm.
    assert_eq!(of(&(triangle.clone() + &side((9, 9), (20, 20)))).features.len(), 2);
    // One across: which two belong together is not known.
    assert_eq!(of(&(triangle.clone() + &side((9, 9), (9, 0)))).features.len(), 4);
    // Another layer, or a gap of a centimetre.
    assert_eq!(of(&triangle.replacen("8 L", "8 K", 1)).features.len(), 3);
    assert_eq!(of(&triangle.replacen("10 0", "10 0.01", 1)).features.len(), 3);
    assert_eq!(of(&triangle.replacen("10 0", "10 0.004", 1)).features.len(), 1);
}

#[test]
fn blocks_that_cannot_be_drawn_are_said() {
    let block = |name: &str, flags: u32, body: &str| format!("0 BLOCK 2 {name} 70 {flags} 10 0 20 0 {body} 0 ENDBLK ");
    let blocks = block("B", 0, SQUARE) + &block("SELF", 0, "0 INSERT 8 0 2 SELF 10 1 20 0") + &block("OTHER", 4, "");
    let cases = [
        ("2 B 10 5 20 5 41 0", "survey::scale-zero", 0),
        ("2 B 10 5 20 5 43 0", "survey::scale-zero", 1),
        ("2 b 10 5 20 5 41 -2 50 30", "", 1),
        ("2 NONE 10 5 20 5", "survey::block-missing", 0),
        ("2 SELF 10 5 20 5", "survey::blocks-deep", 0),
        ("2 OTHER 10 5 20 5", "survey::external-drawing", 0),
        ("2 B 10 5 20 5 70 3 71 2 44 20 45 30", "", 6),
    ];
    for (insert, code, copies) in cases {
        let text = drawing("", &blocks, &format!("{LINE} 0 INSERT 8 X {insert}"));
        let reading = read_plan("plan.dxf", text.as_bytes(), &GroundOptions::default()).unwrap();
        assert_eq!(reading.features.len(), 1 + copies, "{insert}");
        assert_eq!(codes(&reading.notes).first().copied().unwrap_or(""), code, "{insert}");
    }
    let bomb = drawing("", &block("B", 0, SQUARE), "0 INSERT 8 X 2 B 10 0 20 0 70 30000 71 30000 44 1 45 1");
    assert_eq!(codes(&refused(&bomb)), ["survey::too-many-shapes"]);
}

#[test]
fn sheets_hidden_layers_and_kinds_not_read_are_said() {
    let tables = "0 TABLE 2 LAYER 0 LAYER 2 AREA 70 1 62 7 0 LAYER 2 WALLS 70 0 62 -7 0 ENDTAB";
    let entities = format!("{LINE} {SQUARE} 0 LINE 8 0 67 1 10 0 20 0 11 1 21 1 0 MLINE 8 0 0 DIMENSION 8 0");
    let reading = read_plan("plan.dxf", drawing(tables, "", &entities).as_bytes(), &GroundOptions::default()).unwrap();
    assert_eq!(reading.features.len(), 2);
    let left: Vec<_> = reading.facts.left_out.iter().map(|(k, n)| (k.as_str(), *n)).collect();
    assert_eq!(left, [("DIMENSION", 1), ("MLINE", 1), ("PAPER SPACE", 1)]);
    assert_eq!(codes(&reading.notes), ["survey::left-out", "survey::layers-hidden"]);
}

#[test]
fn heights_are_none_only_where_the_whole_drawing_is_flat() {
    let heights = |reading: &PlanReading| -> Vec<_> {
        reading.features.iter().flat_map(|f| f.shape.points()).map(|p| p.height).collect()
    };
    assert_eq!(heights(&of(LINE)), [None, None]);
    assert_eq!(heights(&of(&format!("{LINE} 31 2.5"))), [Some(0.0), Some(2.5)]);
    let text = of(&format!("{LINE} 0 TEXT 8 T 10 1 20 2 1 60%%d_slope"));
    let Shape::Text { words, .. } = &text.features[1].shape else { panic!() };
    assert_eq!(words, "60° slope");
}

#[test]
fn faces_and_points_on_named_layers_are_ground() {
    let face = "0 3DFACE 8 DTM 10 0 20 0 30 10 11 10 21 0 31 11 12 10 22 10 32 12 13 0 23 10 33 11";
    let point = "0 POINT 8 LEVELS 10 20 20 0 30 12 0 POINT 8 LEVELS 10 3 20 3 30 0";
    let text = drawing("", "", &format!("{face} {point} {LINE}"));
    let ground = |layers: &[&str]| {
        let layers = Some(layers.iter().map(|&l| l.to_owned()).collect());
        read_ground("dtm.dxf", text.as_bytes(), &GroundOptions { layers, ..GroundOptions::default() })
    };
    let reading = ground(&["dtm"]).unwrap();
    assert_eq!((reading.facts.kind, reading.facts.ground_points), (FileKind::Dxf, 4));
    let height = reading.terrain.height(geometry::DVec2::new(5.0, 0.0)).unwrap();
    assert!((height - 10.5).abs() < 1e-9);
    assert!(codes(&ground(&["DTM", "LEVELS"]).unwrap().notes).contains(&"survey::heights-zero"));
    assert_eq!(codes(&ground(&["LEVELS"]).map(|r| r.facts).unwrap_err()).last(), Some(&"survey::too-few-points"));
}

#[test]
fn other_kinds_of_files_are_no_plan() {
    let faults = read_plan("levels.csv", b"x,y,z\n0,0,1\n", &GroundOptions::default()).map(|r| r.facts).unwrap_err();
    assert_eq!(codes(&faults), ["survey::not-a-plan"]);
}
