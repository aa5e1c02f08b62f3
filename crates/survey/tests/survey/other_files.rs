//! Every file of the reference data has its row: here, or in the table of its kind.

use crate::reference::{bytes, codes, present, root};
use std::path::Path;
use survey::{GroundOptions, read_ground, read_plan};

/// Files that are no survey: how they are refused, as ground and as plan.
const OTHERS: &[(&str, &str, &str)] = &[
    ("models/construction_schedule_ifc4_inches.ifc", "survey::model", "survey::model"),
    ("models/derived_duplex_from_ifc_yup.glb", "survey::model", "survey::model"),
    ("models/duplex_apartment_ifc2x3_m.ifc", "survey::model", "survey::model"),
    ("models/lyon_building_epsg3946_zup_swapped_minmax.glb", "survey::model", "survey::model"),
    ("models/simple_wall_ifc2x3_mm.ifc", "survey::model", "survey::model"),
    ("models/tall_building_ifc2x3_mm.ifc", "survey::model", "survey::model"),
    ("models/zurich_12buildings_cesium_rtc.glb", "survey::model", "survey::model"),
    ("plots/real_line_plot_4_series.png", "survey::picture", "survey::picture"),
    ("plots/real_slanted_axes_scatter.png", "survey::picture", "survey::picture"),
    ("plots/synthetic_zones_clean.png", "survey::picture", "survey::picture"),
    ("plots/synthetic_zones_photo.jpg", "survey::picture", "survey::picture"),
    ("plots/synthetic_zones_scan.jpg", "survey::picture", "survey::picture"),
    // A picture in the format of height grids, without a place.
    ("plots/synthetic_zones_fax_1bit.tif", "", "survey::not-a-plan"),
    ("plots/synthetic_zones_truth.json", "survey::kind-unknown", "survey::kind-unknown"),
];

/// Folders whose files stand in the tables beside this one, each of which fails if a file of its kind is missing.
const ELSEWHERE: &[(&str, &[&str])] = &[
    ("pointcloud", &["las", "laz"]),
    ("terrain", &["tif", "xml"]),
    ("survey", &["xml", "csv"]),
    ("plans", &["dxf", "geojson", "shp", "dbf", "shx", "prj", "cpg"]),
    ("lines", &["geojson"]),
];

fn walk(folder: &Path, into: &mut Vec<String>) {
    for entry in std::fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            walk(&path, into);
        } else {
            into.push(path.strip_prefix(root()).unwrap().to_string_lossy().replace('\\', "/"));
        }
    }
}

#[test]
fn every_file_of_the_reference_data_has_its_row() {
    if !present() {
        return;
    }
    let mut all = Vec::new();
    walk(&root(), &mut all);
    let missing: Vec<&String> = all
        .iter()
        .filter(|path| !path.ends_with("README.md"))
        .filter(|path| !OTHERS.iter().any(|o| o.0 == path.as_str()))
        .filter(|path| {
            let extension = path.rsplit_once('.').map_or("", |p| p.1);
            !ELSEWHERE
                .iter()
                .any(|(folder, kinds)| path.starts_with(&format!("{folder}/")) && kinds.contains(&extension))
        })
        .collect();
    assert!(missing.is_empty(), "{missing:?}");
    assert!(all.len() >= 90, "{}", all.len());
}

#[test]
fn models_and_pictures_are_refused_as_what_they_are() {
    if !present() {
        return;
    }
    for (path, as_ground, as_plan) in OTHERS {
        let raw = bytes(path);
        let ground = read_ground(path, &raw, &GroundOptions::default()).map(|r| r.facts).unwrap_err();
        let plan = read_plan(path, &raw, &GroundOptions::default()).map(|r| r.facts).unwrap_err();
        if !as_ground.is_empty() {
            assert_eq!(codes(&ground), [*as_ground], "{path}");
        }
        assert_eq!(codes(&plan), [*as_plan], "{path}");
    }
}
