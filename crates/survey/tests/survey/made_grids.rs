//! Grids made here.

use crate::made::Raster;
use crate::reference::codes;
use geometry::DVec2;
use site::{SlopeStatistics, Terrain, slopes};
use survey::{GroundOptions, GroundReading, LengthUnit, read_ground};
use tiff::encoder::{Compression, DeflateLevel, TiffEncoder, colortype};

fn read(raster: &Raster) -> Result<GroundReading, Vec<String>> {
    read_ground("grid.tif", &raster.bytes(), &GroundOptions::default()).map_err(|faults| {
        assert!(faults.list.iter().all(|f| f.hint.is_some()));
        codes(&faults).into_iter().map(str::to_owned).collect()
    })
}

fn refused(raster: &Raster) -> Vec<String> {
    read(raster).map(|r| r.facts).unwrap_err()
}

#[test]
fn heights_belong_to_cell_centres() {
    for compression in
        [Compression::Uncompressed, Compression::Lzw, Compression::Deflate(DeflateLevel::Best), Compression::Packbits]
    {
        let reading = read(&Raster { compression, ..Raster::default() }).unwrap();
        assert!(reading.notes.list.is_empty());
        let height = |x, y| reading.terrain.height(DVec2::new(x, y));
        assert_eq!(height(1000.5, 1999.5), Some(100.25));
        assert_eq!(height(1002.0, 1998.5), Some(102.0));
        assert_eq!(height(1008.5, 1993.5), Some(109.75));
        assert_eq!(height(1008.6, 1993.5), None);
        assert_eq!(reading.facts.min[..2], [1000.0, 1993.0]);
    }
}

#[test]
fn coordinates_that_belong_to_centres_are_not_moved() {
    let mut keys = Raster::default().keys;
    keys[11] = 2;
    let reading = read(&Raster { keys, ..Raster::default() }).unwrap();
    assert_eq!(reading.terrain.height(DVec2::new(1000.0, 2000.0)), Some(100.25));
}

#[test]
fn feet_in_plan_and_the_band_in_another_unit() {
    let mut keys = Raster::default().keys;
    keys[15] = 9002;
    let feet = read(&Raster { keys: keys.clone(), ..Raster::default() }).unwrap();
    assert_eq!(feet.facts.units.horizontal, LengthUnit::Foot);
    assert!((feet.facts.cell.unwrap()[0] - 0.3048).abs() < 1e-12);
    assert!((feet.facts.min[2] - 100.25 * 0.3048).abs() < 1e-6);
    assert_eq!(codes(&feet.notes), ["survey::height-units-assumed"]);
    let metadata =
        Some(r#"<GDALMetadata><Item name="UNITTYPE" sample="0" role="unittype">metre</Item></GDALMetadata>"#);
    let mixed = Raster { keys, metadata, ..Raster::default() };
    assert_eq!(refused(&mixed), ["survey::units-contradict"]);
    let options = GroundOptions {
        units: Some(LengthUnit::Foot),
        height_units: Some(LengthUnit::Metre),
        ..GroundOptions::default()
    };
    let stated = read_ground("grid.tif", &mixed.bytes(), &options).unwrap();
    assert!((stated.facts.min[2] - 100.25).abs() < 1e-6);
    assert!(stated.notes.list.is_empty());
}

#[test]
fn scale_and_offset_of_the_band_count() {
    let metadata = Some(
        r#"<GDALMetadata><Item name="OFFSET" sample="0" role="offset">50</Item><Item name="SCALE" sample="0" role="scale">0.1</Item></GDALMetadata>"#,
    );
    let reading = read(&Raster { metadata, ..Raster::default() }).unwrap();
    assert!((reading.facts.min[2] - 60.025).abs() < 1e-5);
}

#[test]
fn no_data_declared_not_a_number_and_undeclared() {
    let mut heights = vec![50.5_f32; 63];
    (heights[0], heights[1], heights[2]) = (-3.402_823_5e38, f32::NAN, -9999.0);
    let heights = Some(heights);
    let declared =
        read(&Raster { heights: heights.clone(), nodata: Some("-3.4028234663852886e+38"), ..Raster::default() })
            .unwrap();
    assert_eq!(declared.facts.unknown_cells, 3);
    assert_eq!(codes(&declared.notes), ["survey::implausible-heights"]);
    assert_eq!(declared.terrain.height(DVec2::new(1000.5, 1999.5)), None);
    let all = read(&Raster { heights: Some(vec![-9999.0; 63]), nodata: Some("-9999"), ..Raster::default() });
    assert_eq!(all.map(|r| r.facts).unwrap_err(), ["survey::no-heights"]);
}

#[test]
fn places_that_cannot_be_used() {
    assert_eq!(refused(&Raster { placed: false, ..Raster::default() }), ["survey::no-georeference"]);
    let mut matrix = [0.0; 16];
    (matrix[0], matrix[1], matrix[4], matrix[5]) = (0.9, 0.4, 0.4, -0.9);
    assert_eq!(refused(&Raster { matrix: Some(matrix), ..Raster::default() }), ["survey::rotated"]);
    assert_eq!(refused(&Raster { keys: vec![], ..Raster::default() }), ["survey::units-unknown"]);
    let geographic = vec![1, 1, 0, 2, 1024, 0, 1, 2, 2048, 0, 1, 4326];
    assert_eq!(refused(&Raster { keys: geographic, ..Raster::default() }), ["survey::crs-impossible"]);
}

#[test]
fn south_up_rows_are_turned() {
    let mut matrix = [0.0; 16];
    (matrix[0], matrix[3], matrix[5], matrix[7], matrix[15]) = (1.0, 1000.0, 1.0, 2000.0, 1.0);
    let reading = read(&Raster { matrix: Some(matrix), ..Raster::default() }).unwrap();
    assert_eq!(reading.terrain.height(DVec2::new(1000.5, 2000.5)), Some(100.25));
    assert_eq!(reading.terrain.height(DVec2::new(1000.5, 2006.5)), Some(101.75));
}

#[test]
fn pictures_are_no_heights() {
    let mut out = std::io::Cursor::new(Vec::new());
    let mut encoder = TiffEncoder::new(&mut out).unwrap();
    let mut image = encoder.new_image::<colortype::RGB8>(2, 2).unwrap();
    let tags = image.encoder();
    tags.write_tag(tiff::tags::Tag::Unknown(33550), &[1.0, 1.0, 0.0][..]).unwrap();
    tags.write_tag(tiff::tags::Tag::Unknown(33922), &[0.0, 0.0, 0.0, 500.0, 900.0, 0.0][..]).unwrap();
    image.write_data(&[0; 12]).unwrap();
    let options = GroundOptions { units: Some(LengthUnit::Metre), ..GroundOptions::default() };
    let faults = read_ground("photo.tif", &out.into_inner(), &options).map(|r| r.facts).unwrap_err();
    assert_eq!(codes(&faults), ["survey::not-heights"]);
}

#[test]
fn a_grid_cut_short_is_refused() {
    let bytes = Raster::default().bytes();
    let codes_of = |bytes: &[u8]| {
        let faults = read_ground("grid.tif", bytes, &GroundOptions::default()).map(|r| r.facts).unwrap_err();
        codes(&faults)[0].to_owned()
    };
    // The directory stands behind the cells here, so a cut file has lost it.
    assert_eq!(codes_of(&bytes[..bytes.len() / 2]), "survey::damaged");
    assert_eq!(codes_of(&bytes[..8]), "survey::damaged");
}

#[test]
fn horn_slope_of_a_plane_is_the_plane() {
    let reading = read(&Raster::default()).unwrap();
    let Terrain::Grid(grid) = &reading.terrain else { panic!("a grid was expected") };
    let all = slopes(grid);
    let inner: Vec<f64> = all.iter().filter(|s| s.is_finite()).map(|s| f64::from(*s)).collect();
    assert_eq!(inner.len(), 7 * 5);
    let expected = 1.0_f64.hypot(0.25);
    assert!(inner.iter().all(|s| (s - expected).abs() < 1e-5));
    let statistics = SlopeStatistics::of(grid).unwrap();
    assert!((statistics.mean - expected).abs() < 1e-5 && statistics.deviation < 1e-5);
    assert_eq!(statistics.share_up_to(2.0), 1.0);
}
