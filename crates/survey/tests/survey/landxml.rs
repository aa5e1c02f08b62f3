//! LandXML files made here: surfaces, choice, units, encodings, faults, hostile files.

use crate::reference::codes;
use geometry::DVec2;
use survey::{GroundOptions, GroundReading, LengthUnit, Shape, Window, landxml_plan, landxml_surfaces, read_ground};

/// A square of 10 m, 100 m above datum, rising 1 m to the north; in two faces.
const SQUARE: &str = r#"<Surface name="EG"><Definition surfType="TIN"><Pnts>
<P id="1">0 0 100</P><P id="2">0 10 100</P><P id="3">10 10 101</P><P id="4">10 0 101</P>
</Pnts><Faces><F>1 2 3</F><F>1 3 4</F></Faces></Definition></Surface>"#;

const METRIC: &str = r#"<Units><Metric linearUnit="meter" areaUnit="squareMeter"/></Units>"#;

fn file(inside: &str) -> String {
    format!(
        "<?xml version=\"1.0\"?>\n<LandXML xmlns=\"http://www.landxml.org/schema/LandXML-1.2\" version=\"1.2\">\n{inside}\n</LandXML>\n"
    )
}
fn with_surfaces(surfaces: &str) -> String {
    file(&format!("{METRIC}<Surfaces>{surfaces}</Surfaces>"))
}
fn read(xml: &str, options: &GroundOptions) -> Result<GroundReading, Vec<String>> {
    read_ground("site.xml", xml.as_bytes(), options).map_err(|f| {
        assert!(f.list.iter().all(|f| f.hint.is_some() && f.place.file == "site.xml"));
        codes(&f).into_iter().map(str::to_owned).collect()
    })
}
fn plain(xml: &str) -> Result<GroundReading, Vec<String>> {
    read(xml, &GroundOptions::default())
}
fn refused(xml: &str) -> Vec<String> {
    plain(xml).map(|r| r.facts).unwrap_err()
}
fn named(name: &str) -> GroundOptions {
    GroundOptions { surface: Some(name.to_owned()), ..GroundOptions::default() }
}
fn height(reading: &GroundReading, east: f64, north: f64) -> Option<f64> {
    reading.terrain.height(DVec2::new(east, north))
}

#[test]
fn faces_stand_as_given_north_before_east() {
    let reading = plain(&with_surfaces(SQUARE)).unwrap();
    assert!(reading.notes.list.is_empty());
    assert_eq!(height(&reading, 2.0, 5.0), Some(100.5));
    assert_eq!(height(&reading, 11.0, 5.0), None);
    assert_eq!((reading.facts.points, reading.facts.max), (4, [10.0, 10.0, 101.0]));
}

#[test]
fn a_prefix_and_another_namespace_change_nothing() {
    let plainly = with_surfaces(SQUARE);
    let inside = plainly.split_once("version=\"1.2\">").unwrap().1.replace("</LandXML>", "");
    let prefixed = inside.replace("</", "\u{1}").replace('<', "<lx:").replace('\u{1}', "</lx:");
    let foreign = "<im:P id=\"1\">7 7 7</im:P><P id=\"1\">8 8 8</P>";
    let xml = format!("<lx:LandXML xmlns:lx=\"urn:other\" xmlns:im=\"urn:im\">{prefixed}{foreign}</lx:LandXML>");
    assert_eq!(height(&plain(&xml).unwrap(), 2.0, 5.0), Some(100.5));
}

#[test]
fn a_job_chooses_among_several_surfaces() {
    let second = SQUARE.replace("EG", "FG").replace(" 100<", " 200<").replace(" 101<", " 201<");
    let both = with_surfaces(&format!("{SQUARE}{second}"));
    let offered =
        ["survey::which-surface", "survey::surface-offered", "survey::surface-offered", "survey::surfaces-apart"];
    assert_eq!(refused(&both), offered);
    let reading = read(&both, &named("FG")).unwrap();
    assert_eq!((height(&reading, 2.0, 5.0), codes(&reading.notes)), (Some(200.5), vec!["survey::surfaces-apart"]));
    assert_eq!(read(&both, &named("Existing")).map(|r| r.facts).unwrap_err(), offered);
    let twins = with_surfaces(&format!("{SQUARE}{SQUARE}"));
    assert_eq!(read(&twins, &named("EG")).map(|r| r.facts).unwrap_err(), &offered[..3]);
    let facts = landxml_surfaces("site.xml", both.as_bytes()).unwrap();
    let listed: Vec<_> = facts.iter().map(|f| (f.name.as_str(), f.points, f.faces, f.plan_area)).collect();
    assert_eq!(listed, [("EG", 4, 2, 100.0), ("FG", 4, 2, 100.0)]);
    assert!((facts[0].mean_slope.unwrap() - 0.1).abs() < 1e-12);
    // An empty one is no choice.
    let old = with_surfaces(&format!("<Surface name=\"old\"/>{SQUARE}"));
    assert!(plain(&old).is_ok());
    assert_eq!(landxml_surfaces("site.xml", old.as_bytes()).unwrap().len(), 1);
}

#[test]
fn units_come_from_the_file_or_the_job() {
    let with_units = |units: &str| file(&format!("{units}<Surfaces>{SQUARE}</Surfaces>"));
    let east = |units: &str, options: &GroundOptions| read(&with_units(units), options).map(|r| r.facts.max[0]);
    let no = GroundOptions::default();
    let feet = GroundOptions { units: Some(LengthUnit::Foot), ..no.clone() };
    assert_eq!(east(r#"<Units><Imperial linearUnit="foot"/></Units>"#, &no), Ok(3.048));
    assert_eq!(
        east(r#"<Units><Imperial linearUnit="USSurveyFoot" elevationUnit="feet"/></Units>"#, &no),
        Ok(12000.0 / 3937.0)
    );
    let refused: &[(&str, &str)] = &[
        ("", "survey::units-unknown"),
        ("<Units/>", "survey::units-unknown"),
        (r#"<Units><Metric linearUnit="foot"/></Units>"#, "survey::units-contradict"),
        (r#"<Units><Metric linearUnit="meter"/><Imperial linearUnit="foot"/></Units>"#, "survey::units-contradict"),
        (r#"<Units><Metric linearUnit="meter" elevationUnit="feet"/></Units>"#, "survey::units-contradict"),
        (r#"<Units><Metric linearUnit="league"/></Units>"#, "survey::unit-not-known"),
    ];
    for (units, code) in refused {
        assert_eq!(east(units, &no).unwrap_err(), [*code], "{units}");
        assert_eq!(east(units, &feet), Ok(3.048), "{units}");
    }
    let utm = r#"<CoordinateSystem epsgCode="25832" desc="zone 32"/>"#;
    let reading = plain(&with_units(utm)).unwrap();
    assert_eq!(reading.facts.crs.as_deref(), Some("zone 32 (EPSG:25832)"));
}

#[test]
fn encodings_are_read_or_refused() {
    let xml = with_surfaces(&SQUARE.replace("EG", "Gelände"));
    let utf16: Vec<u8> = xml.encode_utf16().flat_map(u16::to_le_bytes).collect();
    let marked: Vec<u8> = [0xFE, 0xFF].into_iter().chain(xml.encode_utf16().flat_map(u16::to_be_bytes)).collect();
    let latin = |label: &str| -> Vec<u8> {
        let declared = xml.replace("version=\"1.0\"?", &format!("version=\"1.0\" encoding='{label}' ?"));
        declared.chars().map(|c| c as u8).collect()
    };
    let name = |bytes: &[u8]| landxml_surfaces("site.xml", bytes).map(|f| f[0].name.clone());
    for bytes in [xml.clone().into_bytes(), utf16, marked, latin("ISO-8859-1"), latin("windows-1252")] {
        assert_eq!(name(&bytes).unwrap(), "Gelände");
        assert!(read_ground("site.xml", &bytes, &GroundOptions::default()).is_ok(), "told apart");
    }
    for bytes in [latin("UTF-8"), latin("EBCDIC-XY")] {
        assert_eq!(codes(&name(&bytes).unwrap_err()), ["survey::text-encoding"]);
    }
}

#[test]
fn every_fault_of_a_surface_with_its_line() {
    let xml = with_surfaces(
        "<Surface name=\"EG\"><Definition><Pnts>\n<P id=\"1\">0 0 100</P>\n<P id=\"2\">0 10</P>\n<P id=\"3\">10 10 NaN</P>\n\
         <P id=\"4\">10 0 101</P>\n<P id=\"4\">11 0 101</P>\n<P id=\"5\">0 10 99999</P>\n<P id=\"1\">0 0 100</P>\n</Pnts><Faces>\n\
         <F>1 4 9</F>\n<F>1 4</F>\n<F>x 4 5</F></Faces></Definition></Surface>",
    );
    let faults = read_ground("site.xml", xml.as_bytes(), &GroundOptions::default()).map(|r| r.facts).unwrap_err();
    let mut found: Vec<_> = faults.list.iter().map(|f| (f.place.line.unwrap(), f.code.as_str())).collect();
    found.sort_unstable();
    let (point, face) = ("survey::bad-point", "survey::bad-face");
    assert_eq!(found, [(5, point), (6, point), (8, point), (9, point), (12, face), (13, face), (14, face)]);
}

#[test]
fn very_many_faults_end_in_a_count() {
    let surface = format!(
        "<Surface name=\"EG\"><Definition><Pnts>{}</Pnts></Definition></Surface>",
        "<P id=\"1\">a b c</P>\n".repeat(500)
    );
    let found = refused(&with_surfaces(&surface));
    assert_eq!((found.len(), found[100].as_str()), (101, "survey::more-problems"));
}

#[test]
fn odd_faces_are_left_out_and_counted() {
    let extra = r#"<F i="1">1 2 4</F><F i="0" n="1 0 2">2 1 3</F><F>1 1 2</F></Faces>"#;
    let reading = plain(&with_surfaces(&SQUARE.replace("</Faces>", extra))).unwrap();
    let expected = ["survey::invisible-faces", "survey::upright-faces", "survey::repeated-faces"];
    assert_eq!(codes(&reading.notes), expected);
    let quad = SQUARE.replace("<F>1 2 3</F><F>1 3 4</F>", "<F>1 2 3 4</F>");
    assert_eq!(height(&plain(&with_surfaces(&quad)).unwrap(), 2.0, 5.0), Some(100.5));
    let over = SQUARE
        .replace("</Pnts>", "<P id=\"5\">1 2 100.1</P><P id=\"6\">1 8 103</P><P id=\"7\">9 8 103</P></Pnts>")
        .replace("</Faces>", "<F>5 6 7</F></Faces>");
    let reading = plain(&with_surfaces(&over)).unwrap();
    assert_eq!((codes(&reading.notes), height(&reading, 7.0, 4.0)), (vec!["survey::overlapping-faces"], None));
    let upright = SQUARE.replace("<F>1 2 3</F><F>1 3 4</F>", "<F>1 1 2</F>");
    assert_eq!(refused(&with_surfaces(&upright)), ["survey::surface-empty"]);
}

#[test]
fn stated_areas_are_compared() {
    let stating = |plan: &str, unit: &str| {
        let surface =
            SQUARE.replace("surfType=\"TIN\"", &format!("surfType=\"TIN\" area2DSurf=\"{plan}\" area3DSurf=\"100.5\""));
        let xml = with_surfaces(&surface).replace("squareMeter", unit);
        codes(&plain(&xml).unwrap().notes).join(" ")
    };
    assert_eq!(stating("100.5", "squareMeter"), "");
    assert_eq!(stating("102", "squareMeter"), "survey::area-differs");
    assert_eq!(stating("0.01", "hectare"), "");
    assert_eq!(stating("100", "hectare"), "", "written as squared lengths all the same");
}

#[test]
fn source_data_without_faces_is_triangulated_with_breaklines_and_boundaries() {
    let points: String = (0..11).flat_map(|n| (0..11).map(move |e| format!("{n} {e} 100 "))).collect();
    let source = format!(
        "<Surface name=\"EG\"><SourceData><DataPoints><PntList3D>{points}</PntList3D></DataPoints>
<Breaklines><Breakline brkType=\"standard\"><PntList3D>0 4.5 101 10 4.5 101</PntList3D></Breakline>
<Breakline><PntList2D>0 1 10 1</PntList2D></Breakline><Breakline><PntList3D>5 0 99 5 10 99</PntList3D></Breakline></Breaklines>
<Boundaries><Boundary bndType=\"outer\"><PntList2D>0 0 0 10 8 10 8 0</PntList2D></Boundary>
<Boundary bndType=\"void\"><PntList3D>1 7 100 1 9 100 3 9 100 3 7 100 1 7 100</PntList3D></Boundary></Boundaries>
</SourceData></Surface>"
    );
    let reading = plain(&with_surfaces(&source)).unwrap();
    assert_eq!(codes(&reading.notes), ["survey::crossing-breaklines", "survey::lines-without-height"]);
    assert_eq!(height(&reading, 4.5, 3.3), Some(101.0), "along the breakline");
    assert_eq!(height(&reading, 2.0, 9.0), None, "outside");
    assert_eq!(height(&reading, 8.0, 2.2), None, "in the void");
    let contours =
        "<Surface name=\"EG\"><SourceData><Contours><Contour elev=\"100\"><PntList2D>0 0 0 10</PntList2D></Contour>
<Contour elev=\"101\"><PntList2D>10 0 10 10</PntList2D></Contour></Contours></SourceData></Surface>";
    assert_eq!(height(&plain(&with_surfaces(contours)).unwrap(), 5.0, 5.0), Some(100.5));
}

#[test]
fn window_and_longest_edge_cut_faces_out() {
    let far = SQUARE.replace("</Pnts>", "<P id=\"8\">0 500 100</P></Pnts>").replace("</Faces>", "<F>2 8 3</F></Faces>");
    let xml = with_surfaces(&far);
    assert!(height(&plain(&xml).unwrap(), 30.0, 0.5).is_some(), "as designed");
    let short = GroundOptions { longest_edge: Some(50.0), ..GroundOptions::default() };
    assert!(height(&read(&xml, &short).unwrap(), 30.0, 0.5).is_none());
    let window = |east: f64| GroundOptions {
        window: Some(Window { min: DVec2::new(east, 0.0), max: DVec2::new(east + 5.0, 5.0) }),
        ..GroundOptions::default()
    };
    let reading = read(&xml, &window(0.0)).unwrap();
    assert_eq!((height(&reading, 2.0, 1.0), height(&reading, 30.0, 0.5)), (Some(100.1), None));
    assert_eq!(read(&xml, &window(900.0)).map(|r| r.facts).unwrap_err(), ["survey::window-empty"]);
}

const POINTS: &str = r#"<CgPoints name="book"><CgPoint name="1" code="PEG">0 0 50.0</CgPoint><CgPoint name="2">0 10 50.5</CgPoint>
<CgPoint name="3">10 10 51</CgPoint><CgPoint name="4" desc="nail &amp; disc">10 0 0.0</CgPoint><CgPoint name="5">5 5</CgPoint></CgPoints>"#;

#[test]
fn survey_points_are_ground_only_where_the_job_says_so() {
    let xml = file(&format!("{METRIC}{POINTS}"));
    assert_eq!(refused(&xml), ["survey::no-surface"]);
    let options = GroundOptions { survey_points: true, ..GroundOptions::default() };
    let reading = read(&xml, &options).unwrap();
    assert_eq!(codes(&reading.notes), ["survey::zero-heights"]);
    assert_eq!((reading.facts.points, reading.facts.ground_points), (5, 3), "0 and nothing are no heights");
    assert_eq!(height(&reading, 8.0, 2.0), Some(50.5));
    let twice = xml.replace("</CgPoints>", "<CgPoint name=\"9\">0 0 55</CgPoint></CgPoints>");
    assert_eq!(read(&twice, &options).map(|r| r.facts).unwrap_err(), ["survey::zero-heights", "survey::two-heights"]);
    assert_eq!(refused(&file(METRIC)), ["survey::no-surface"]);
}

#[test]
fn points_lines_arcs_and_parcels_become_shapes() {
    let lines = r#"<PlanFeatures><PlanFeature name="kerb"><CoordGeom>
<Line><Start pntRef="1"/><End pntRef="2"/></Line><Line><Start>0 10 50.5</Start><End>10 10</End></Line>
<Spiral><Start>10 10</Start></Spiral><IrregularLine><Start>20 0</Start><End>20 30</End><PntList2D>20 10 21 20</PntList2D></IrregularLine>
</CoordGeom></PlanFeature></PlanFeatures>
<Parcels><Parcel name="lot 1" area="12"><CoordGeom><Line><Start>0 0</Start><End>0 20</End></Line>
<Curve rot="ccw"><Start>0 20</Start><Center>0 10</Center><End>0 0</End></Curve></CoordGeom></Parcel></Parcels>
<Alignments><Alignment name="axis"><CoordGeom><Curve rot="cw"><Start>0 0</Start><End>3 3</End></Curve></CoordGeom></Alignment></Alignments>"#;
    let xml = file(&format!("{METRIC}{POINTS}{lines}"));
    let plan = landxml_plan("site.xml", xml.as_bytes(), &GroundOptions::default()).unwrap();
    assert_eq!(codes(&plan.notes), ["survey::zero-heights"]);
    let of = |layer: &str| plan.features.iter().filter(|f| f.layer == layer).collect::<Vec<_>>();
    let heights: Vec<_> = of("CgPoint").iter().map(|f| f.shape.points().next().unwrap().height).collect();
    assert_eq!(heights, [Some(50.0), Some(50.5), Some(51.0), None, None]);
    let kerb = of("PlanFeature");
    let counts: Vec<_> = kerb.iter().map(|f| f.shape.points().count()).collect();
    assert_eq!(counts, [3, 4], "interrupted by the spiral");
    assert_eq!(kerb[0].shape.points().map(|p| p.height).collect::<Vec<_>>(), [Some(50.0), Some(50.5), None]);
    let Shape::Area { outer, holes } = &of("Parcel")[0].shape else { panic!("a parcel is an area") };
    assert!(holes.is_empty() && outer.len() > 20);
    let area: f64 = (0..outer.len()).map(|i| outer[i].at.perp_dot(outer[(i + 1) % outer.len()].at) / 2.0).sum();
    assert!((area.abs() - 50.0 * std::f64::consts::PI).abs() < 0.3, "half a circle: {area}");
    let left: Vec<_> = plan.facts.left_out.iter().map(|(k, n)| (k.as_str(), *n)).collect();
    assert_eq!(left, [("Alignment without lines", 1), ("Curve", 1), ("Spiral", 1)]);
    assert_eq!((plan.facts.min, plan.facts.max), ([0.0, 0.0], [30.0, 21.0]));
    let broken = xml.replace("pntRef=\"1\"", "pntRef=\"77\"").replace("10 10</End>", "10 ten</End>");
    let faults = landxml_plan("site.xml", broken.as_bytes(), &GroundOptions::default()).unwrap_err();
    assert_eq!(codes(&faults), ["survey::zero-heights", "survey::bad-point", "survey::bad-reference"]);
}

#[test]
fn degrees_are_refused() {
    let degrees =
        SQUARE.replace("0 10 100", "0 0.1 100").replace("10 10 101", "0.1 0.1 101").replace("10 0 101", "0.1 0 101");
    assert_eq!(refused(&file(&format!("<Surfaces>{degrees}</Surfaces>"))), ["survey::degrees"]);
}

#[test]
fn hostile_files_are_refused_at_once() {
    let laughs = format!(
        "<!DOCTYPE LandXML [<!ENTITY a \"ha\"><!ENTITY b \"&a;&a;\">]>{}",
        with_surfaces(SQUARE).replace("<?xml version=\"1.0\"?>", "")
    );
    assert_eq!(refused(&laughs), ["survey::xml-entity"]);
    assert_eq!(refused(&with_surfaces(&SQUARE.replace("0 0 100<", "0 0 &z;<"))), ["survey::xml-entity"]);
    assert_eq!(refused(&with_surfaces(&SQUARE.replace("\"EG\"", "\"&z;\""))), ["survey::xml-entity"]);
    assert_eq!(refused(&with_surfaces(&"<a>".repeat(100_000))), ["survey::damaged"]);
    let many = (0..100_000).map(|i| format!(" a{i}=\"\"")).collect::<Vec<_>>().concat();
    assert_eq!(refused(&with_surfaces(&format!("<Surface{many}/>"))), ["survey::damaged"]);
    let whole = with_surfaces(SQUARE);
    for end in [whole.len() - 3, whole.len() / 2, whole.len() - 12] {
        let code = refused(&whole[..end])[0].clone();
        assert!(["survey::truncated", "survey::damaged"].contains(&code.as_str()), "{code}");
    }
    assert_eq!(refused(&whole.replace("</Faces>", "</Pnts>")), ["survey::damaged"]);
    let other = "<?xml version=\"1.0\"?><gml xmlns=\"LandXML\"></gml>";
    assert_eq!(refused(other), ["survey::damaged"]);
    // Thousands of faces on one spot: slow to compare one by one.
    let faces = (100..5100).map(|i| format!("<F>{i} 2 3</F>")).collect::<Vec<_>>().concat();
    let points = (0..5000).map(|i| format!("<P id=\"{}\">0 0.{i:04} 100</P>", 100 + i)).collect::<Vec<_>>().concat();
    let crowd = SQUARE.replace("</Faces>", &format!("{faces}</Faces>")).replace("</Pnts>", &format!("{points}</Pnts>"));
    assert!(codes(&plain(&with_surfaces(&crowd)).unwrap().notes).contains(&"survey::overlapping-faces"));
}
