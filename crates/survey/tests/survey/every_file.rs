//! Every cloud, grid and LandXML file of the reference data, one row each: read with these facts and
//! warnings, or refused with this fault. A file that has no row fails.

use crate::reference::{bytes, codes, files, present};
use survey::{GroundOptions, LengthUnit, read_ground};

/// What a file must give.
enum Outcome {
    /// Read: points (or cells), of these with ground, codes of the warnings.
    Read(u64, u64, &'static [&'static str]),
    /// Refused with exactly these codes.
    Refused(&'static [&'static str]),
}
use Outcome::{Read, Refused};

/// The unit that the job states, if any.
const M: Option<LengthUnit> = Some(LengthUnit::Metre);
const FT: Option<LengthUnit> = Some(LengthUnit::Foot);
const NO: Option<LengthUnit> = None;

const UNKNOWN: Outcome = Refused(&["survey::units-unknown"]);
const THIN: &[&str] = &["survey::thin-cloud"];

#[rustfmt::skip]
const FILES: &[(&str, Option<LengthUnit>, Outcome)] = &[
    ("pointcloud/broken/bad_vlr_count.las", NO, Read(10, 10, &["survey::records-missing"])),
    ("pointcloud/broken/derived_truncated_at_60pct.laz", NO, Refused(&["survey::truncated"])),
    ("pointcloud/broken/derived_truncated_at_60pct.laz", M, Refused(&["survey::truncated"])),
    ("pointcloud/broken/derived_truncated_mid_record.las", NO, Refused(&["survey::truncated"])),
    ("pointcloud/broken/franche_comte_corrupt.laz", NO, Refused(&["survey::damaged"])),
    ("pointcloud/broken/franche_comte_same_tile_good.laz", NO, Read(64_572, 4820, THIN)),
    ("pointcloud/broken/garbage_vlr_count.las", NO, Refused(&["survey::record-count"])),
    ("pointcloud/broken/gps_time_nan.las", NO, Refused(&["survey::too-few-points"])),
    ("pointcloud/broken/laszip_1_2r0_no_chunk_table.laz", NO, UNKNOWN),
    ("pointcloud/broken/laszip_1_2r0_no_chunk_table.laz", FT, Read(1065, 276, THIN)),
    ("pointcloud/broken/zero_points.las", NO, Refused(&["survey::no-points"])),
    ("pointcloud/delft_ahn3_east.laz", NO, UNKNOWN),
    ("pointcloud/delft_ahn3_east.laz", M, Read(208_432, 87_130, &[])),
    ("pointcloud/delft_ahn3_west.laz", NO, UNKNOWN),
    ("pointcloud/delft_ahn3_west.laz", M, Read(640_510, 195_988, &[])),
    ("pointcloud/formats/autzen_1065pts.copc.laz", NO, Refused(&["survey::units-contradict"])),
    ("pointcloud/formats/autzen_1065pts.copc.laz", FT,
        Read(1065, 276, &["survey::units-overridden", "survey::units-overridden", "survey::thin-cloud"])),
    ("pointcloud/formats/autzen_trim_feet_rgb.laz", NO,
        Read(110_000, 26_107, &["survey::height-units-assumed", "survey::thin-cloud"])),
    ("pointcloud/formats/autzen_trim_feet_rgb.laz", FT, Read(110_000, 26_107, THIN)),
    ("pointcloud/formats/autzen_utm10.las", NO, Read(1065, 276, THIN)),
    ("pointcloud/formats/degrees_epsg4326.las", NO, Refused(&["survey::degrees"])),
    ("pointcloud/formats/degrees_epsg4326.las", M, Refused(&["survey::degrees"])),
    ("pointcloud/formats/mountain_293m_utm42.las", NO, Read(38_367, 35_318, THIN)),
    ("pointcloud/formats/nebraska_usft_house_wkt_and_geotiff_vlrs.las", NO, Read(25_408, 9808, &[])),
    ("pointcloud/formats/no_crs_class14_on_roof.las", NO, UNKNOWN),
    ("pointcloud/formats/no_crs_class14_on_roof.las", M, Read(14_408, 1368, &[])),
    ("pointcloud/hillside_370m_extrabytes.laz", NO, Read(697_721, 683_023, &[])),
    ("pointcloud/lone_star_tls_unclassified.laz", NO, Refused(&["survey::crs-impossible"])),
    ("pointcloud/lone_star_tls_unclassified.laz", M, Refused(&["survey::crs-overridden", "survey::unclassified"])),
    ("pointcloud/montpellier_block/tile_77050_627755.laz", NO, Read(84_524, 21_172, &[])),
    ("pointcloud/montpellier_block/tile_77050_627760.laz", NO, Read(56_035, 33_568, &[])),
    ("pointcloud/montpellier_block/tile_77055_627755.laz", NO, Read(72_770, 39_468, &[])),
    ("pointcloud/montpellier_block/tile_77055_627760.laz", NO, Read(60_653, 22_343, &[])),
    ("pointcloud/montpellier_block/tile_77060_627755.laz", NO, Read(83_518, 32_663, &[])),
    ("pointcloud/montpellier_block/tile_77060_627760.laz", NO, Read(59_606, 21_975, &[])),
    ("pointcloud/stbarth_building_site_100m.laz", NO, UNKNOWN),
    ("pointcloud/stbarth_building_site_100m.laz", M, Read(249_120, 30_825, &[])),
    ("pointcloud/town_1km_decimated.laz", NO, Read(289_055, 152_678, &["survey::thin-cloud",
        "survey::doubtful-ground", "survey::doubtful-ground", "survey::doubtful-ground", "survey::doubtful-ground",
        "survey::doubtful-ground", "survey::doubtful-ground"])),
    ("survey/partridge_survey_lxml11_ft.xml", NO, Refused(&["survey::no-surface"])),
    ("terrain/alexandria_dsm_2m.tif", NO, Read(73_297, 73_297, &[])),
    ("terrain/alexandria_dtm_2m.tif", NO, Read(73_297, 73_021, &[])),
    ("terrain/alexandria_height_above_ground_2m.tif", NO, Read(73_297, 73_297, &[])),
    ("terrain/bilbao_building_heights_2m5.tif", NO,
        Read(1_846_881, 1_846_881, &["survey::whole-heights", "survey::coarse-cells"])),
    ("terrain/bilbao_dem_5m.tif", NO, Read(462_400, 462_400, &["survey::whole-heights", "survey::coarse-cells"])),
    ("terrain/derived_autzen_ground_5ft.tif", NO, Read(27_018, 11_829, &[])),
    ("terrain/derived_delft_ground_1m.tif", NO, Read(60_950, 34_182, &[])),
    ("terrain/landxml/landfill_tin_lxml12_usft_164pts.xml", NO, Read(164, 164, &[])),
    ("terrain/landxml/landfill_tin_lxml12_usft_1657pts.xml", NO, Read(1657, 1657, &[])),
    ("terrain/landxml/landfill_tin_lxml12_usft_1657pts.xml", FT, Read(1657, 1657, &["survey::units-overridden", "survey::units-overridden"])),
    ("terrain/landxml/olympus_design_tin_lxml20_ft.xml", NO, Read(12_390, 12_390, &[])),
    ("terrain/landxml/subdivision_eg_fg_lxml11_ft.xml", NO, Refused(&["survey::which-surface", "survey::surface-offered",
        "survey::surface-offered", "survey::surfaces-apart"])),
    ("terrain/landxml/toivola_road_inframodel404_m.xml", NO, Read(2309, 2309, &["survey::upright-faces"])),
    ("terrain/montpellier_tile_77055_627760_dsm_50cm.tif", NO, Read(10_000, 9993, &[])),
    ("terrain/montpellier_tile_77055_627760_dtm_50cm.tif", NO, Read(10_000, 9995, &[])),
    ("terrain/odd/bridge_surface_20cm_nodata_plus9999.tif", NO, Read(107_840, 107_840, &[])),
    ("terrain/odd/corrupt.tif", NO, Refused(&["survey::truncated"])),
    ("terrain/odd/float_nan_tiny.tif", NO, UNKNOWN),
    ("terrain/odd/float_nan_tiny.tif", M, Read(6, 5, &["survey::coarse-cells"])),
    ("terrain/odd/rotated_geotransform.tif", M, Refused(&["survey::rotated"])),
    ("terrain/odd/southup_undeclared_minus9999.tif", NO, Read(2500, 2394, &["survey::implausible-heights"])),
    ("terrain/odd/town_surface_5m_nodata_plus9999.tif", NO, Read(40_000, 39_849, &["survey::coarse-cells"])),
    ("terrain/odd/zurich_dem_25m_int16_no_crs.tif", NO, UNKNOWN),
    ("terrain/odd/zurich_dem_25m_int16_no_crs.tif", M,
        Read(146_034, 146_034, &["survey::whole-heights", "survey::coarse-cells"])),
    ("terrain/slovenia_dtm_1m.tif", NO, Read(1_000_000, 1_000_000, &[])),
    ("terrain/slovenia_dtm_1m_nan_nodata.tif", NO, Read(1_000_000, 999_500, &[])),
];

#[test]
fn every_file_is_read_or_refused_as_stated() {
    if !present() {
        return;
    }
    for (path, units, outcome) in FILES {
        let options = GroundOptions { units: *units, ..GroundOptions::default() };
        match (read_ground(path, &bytes(path), &options), outcome) {
            (Ok(got), Read(points, ground, warnings)) => {
                assert_eq!((got.facts.points, got.facts.ground_points), (*points, *ground), "{path}");
                assert_eq!(codes(&got.notes), *warnings, "{path}");
            }
            (Err(faults), Refused(expected)) => {
                assert_eq!(codes(&faults), *expected, "{path}");
                assert!(faults.list.iter().all(|f| f.hint.is_some() && f.place.file == *path), "{path}");
            }
            (Ok(_), Refused(_)) => panic!("{path} with {units:?} was read"),
            (Err(faults), Read(..)) => panic!("{path} with {units:?}: {:?}", codes(&faults)),
        }
    }
}

#[test]
fn no_file_is_without_a_row() {
    if !present() {
        return;
    }
    let folders = [
        "pointcloud",
        "pointcloud/broken",
        "pointcloud/formats",
        "pointcloud/montpellier_block",
        "survey",
        "terrain",
        "terrain/landxml",
        "terrain/odd",
    ];
    let mut seen = 0;
    for path in folders.iter().flat_map(|f| files(f, &["las", "laz", "tif", "xml"])) {
        assert!(FILES.iter().any(|row| row.0 == path), "{path} has no row");
        seen += 1;
    }
    assert_eq!(seen, 52, "files came or went");
}
