//! Seeded mutations of small files: no reader panics, and none answers without a reason.

use crate::made::{Cloud, Dice, Raster};
use survey::{
    ConductorOptions, GroundFilter, GroundOptions, LengthUnit, ThingOptions, grid_cloud, landxml_plan,
    landxml_surfaces, likely_conductors, read_ground, things_above,
};

/// What a fuzzer calls: any bytes, under every name that chooses another reader.
fn target(bytes: &[u8]) {
    let options = GroundOptions { units: Some(LengthUnit::Metre), ..GroundOptions::default() };
    let of_points = GroundOptions { survey_points: true, ..GroundOptions::default() };
    if bytes.windows(7).any(|w| w == b"LandXML") {
        let _ = landxml_surfaces("file.xml", bytes);
        let _ = landxml_plan("file.xml", bytes, &options);
    }
    for (name, options) in [("file.csv", &options), ("file.csv", &GroundOptions::default()), ("file.xml", &of_points)] {
        match read_ground(name, bytes, options) {
            Ok(reading) => {
                assert!(!reading.notes.any_error());
                let (low, high) = reading.terrain.bounds().expect("a surface has bounds");
                assert!(low.is_finite() && high.is_finite());
                let _ = reading.terrain.height((low + high) / 2.0);
            }
            Err(faults) => {
                assert!(faults.any_error());
                assert!(faults.list.iter().all(|f| f.hint.is_some() && f.code.starts_with("survey::")));
            }
        }
    }
}

/// Everything that the reader knows, once.
const LANDXML: &[u8] = br#"<?xml version="1.0" encoding="UTF-8"?><LandXML xmlns="http://www.landxml.org/schema/LandXML-1.2">
<Units><Metric linearUnit="meter" areaUnit="squareMeter" elevationUnit="meter"/></Units><CoordinateSystem epsgCode="25832"/>
<CgPoints><CgPoint name="1">0 0 9</CgPoint><CgPoint name="2">0 9 9</CgPoint><CgPoint name="3">9 9 9</CgPoint></CgPoints>
<Surfaces><Surface name="EG"><SourceData><Breaklines><Breakline><PntList3D>0 0 10 9 9 11</PntList3D></Breakline></Breaklines>
<Boundaries><Boundary bndType="void"><PntList2D>1 1 1 2 2 2</PntList2D></Boundary></Boundaries></SourceData>
<Definition surfType="TIN" area2DSurf="81"><Pnts><P id="1">0 0 10</P><P id="2">0 9 10</P><P id="3">9 9 11</P><P id="4">9 0 11</P></Pnts>
<Faces><F>1 2 3</F><F>1 3 4</F><F i="1">1 2 4</F></Faces></Definition></Surface></Surfaces>
<PlanFeatures><PlanFeature name="f"><CoordGeom><Line><Start pntRef="1"/><End>5 5</End></Line><Curve rot="cw"><Start>5 5</Start>
<Center>5 6</Center><End>5 7</End></Curve></CoordGeom></PlanFeature></PlanFeatures></LandXML>"#;

pub(crate) fn mutated(seed: &[u8], dice: &mut Dice) -> Vec<u8> {
    let mut bytes = seed.to_vec();
    for _ in 0..=dice.below(4) {
        if bytes.len() < 8 {
            break;
        }
        // Headers are where the lies are.
        let reach = if dice.below(3) == 0 { bytes.len() } else { bytes.len().min(700) };
        let at = dice.below(reach);
        match dice.below(7) {
            0 => bytes[at] ^= 1 << dice.below(8),
            1 => bytes[at] = dice.next() as u8,
            2 => bytes.truncate(at),
            3 => {
                let extreme = [0, 1, 0x7F, 0x80, 0xFF][dice.below(5)];
                let end = (at + 1 + dice.below(8)).min(bytes.len());
                bytes[at..end].fill(extreme);
            }
            4 => {
                let from = dice.below(bytes.len());
                let n = (1 + dice.below(16)).min(bytes.len() - from.max(at));
                bytes.copy_within(from..from + n, at);
            }
            5 => {
                bytes.remove(at);
            }
            _ => bytes.insert(at, dice.next() as u8),
        }
    }
    bytes
}

#[test]
fn no_mutation_makes_a_reader_panic() {
    let wkt = r#"COMPD_CS["both",PROJCS["p",GEOGCS["g",UNIT["degree",0.0174]],UNIT["metre",1]],VERT_CS["v",UNIT["metre",1]]]"#;
    let seeds = [
        Cloud { side: 6, text: Some(wkt), ..Cloud::default() }.bytes(),
        Cloud { side: 6, format: 3, compressed: true, ..Cloud::default() }.bytes(),
        Cloud { side: 6, format: 7, compressed: true, ..Cloud::default() }.bytes(),
        Cloud { side: 6, format: 8, ..Cloud::default() }.bytes(),
        Raster { nodata: Some("-9999"), ..Raster::default() }.bytes(),
        Raster { compression: tiff::encoder::Compression::Lzw, ..Raster::default() }.bytes(),
        Raster {
            compression: tiff::encoder::Compression::Deflate(tiff::encoder::DeflateLevel::Balanced),
            ..Raster::default()
        }
        .bytes(),
        b"point,x [m],y [m],z [m],remark\n1,0,0,10,\"a, b\"\n2,10,0,11,\n3,0,10,12,peg\n4,9,9,13,\n".to_vec(),
        LANDXML.to_vec(),
        b"1;5000,1;1000,2;12,5;A\r\n2;5010,1;1000,2;12,6;B\r\n3;5000,1;1010,2;12,7;C\r\n".to_vec(),
    ];
    let mut dice = Dice(0x5EED_2026);
    for seed in &seeds {
        target(seed);
        for _ in 0..700 {
            target(&mutated(seed, &mut dice));
        }
    }
}

#[test]
fn no_mutation_makes_a_cloud_tool_panic() {
    let flat = site::Terrain::Grid(site::Grid {
        north_west: geometry::DVec2::new(-1e8, 1e8),
        cell: geometry::DVec2::splat(2e8),
        rows: 2,
        cols: 2,
        heights: vec![0.0; 4],
    });
    let cloud = GroundOptions { units: Some(LengthUnit::Metre), ..GroundOptions::default() };
    let filter = GroundFilter { cell: 5.0, ..GroundFilter::default() };
    let filtered = GroundOptions { ground_filter: Some(filter), ..cloud.clone() };
    let things = ThingOptions { cell: 5.0, cloud: cloud.clone(), ..ThingOptions::default() };
    let lines = ConductorOptions { cloud: cloud.clone(), ..ConductorOptions::default() };
    let seeds = [
        Cloud { side: 6, ..Cloud::default() }.bytes(),
        Cloud { side: 6, format: 3, compressed: true, ..Cloud::default() }.bytes(),
        Cloud { side: 6, format: 7, compressed: true, class: 5, ..Cloud::default() }.bytes(),
    ];
    let mut dice = Dice(0xC10D_5EED);
    for seed in &seeds {
        for round in 0..40 {
            let bytes = if round == 0 { seed.clone() } else { mutated(seed, &mut dice) };
            let tiles: [(&str, &[u8]); 1] = [("a.las", &bytes)];
            let faults = [
                grid_cloud(&tiles, &cloud, 5.0).err(),
                grid_cloud(&tiles, &filtered, 5.0).err(),
                things_above(&tiles, &flat, &things).err(),
                likely_conductors(&tiles, &flat, &lines).err(),
            ];
            for faults in faults.into_iter().flatten() {
                assert!(faults.any_error());
                assert!(faults.list.iter().all(|f| f.hint.is_some() && f.code.starts_with("survey::")));
            }
        }
    }
}
