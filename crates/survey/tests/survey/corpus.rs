//! Replays `corpus`: made files that the fuzzer (`examples/fuzz.rs`) changed until the readers answered
//! in a way that no file before them did. Drawings are replayed in `drawing_mutations`.

use std::collections::BTreeMap;
use std::path::PathBuf;
use survey::{
    BringOptions, ConductorOptions, GroundFilter, GroundOptions, LengthUnit, StoredSite, bring_in, grid_cloud,
    likely_conductors, read_stored, write_stored,
};

/// Files of a folder by what they are given with: the parts of a shapefile together, every other alone.
fn inputs(folder: &str) -> Vec<Vec<(String, Vec<u8>)>> {
    let folder = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("tests/corpus").join(folder);
    let mut out: BTreeMap<String, Vec<(String, Vec<u8>)>> = BTreeMap::new();
    for entry in std::fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        let name = path.file_name().unwrap().to_string_lossy().into_owned();
        let (stem, extension) = name.split_once('.').unwrap();
        let key = if ["shp", "dbf", "prj", "cpg"].contains(&extension) { stem } else { &name };
        out.entry(key.to_owned()).or_default().push((name.clone(), std::fs::read(path).unwrap()));
    }
    out.into_values().collect()
}

fn refused(faults: &evidence::Faults, what: &str) {
    assert!(faults.any_error(), "{what}: refused without an error");
    for fault in &faults.list {
        assert!(fault.hint.is_some() && fault.code.starts_with("survey::"), "{what}: {fault:?}");
    }
}

/// Reads the files in every way; true if one of them was a site.
fn read(files: &[(String, Vec<u8>)]) -> bool {
    let given: Vec<(&str, &[u8])> = files.iter().map(|(name, bytes)| (name.as_str(), &bytes[..])).collect();
    let what = given[0].0;
    let mut any = false;
    for (units, filtered, above) in
        [(None, false, false), (Some(LengthUnit::Metre), false, true), (Some(LengthUnit::Metre), true, true)]
    {
        // Larger cells than usual: the boxes that changed headers declare are wide.
        let filter = GroundFilter { cell: 5.0, ..GroundFilter::default() };
        let ground = GroundOptions { units, ground_filter: filtered.then_some(filter), ..GroundOptions::default() };
        let options = BringOptions {
            ground: ground.clone(),
            accuracy: Some(0.05),
            plan_accuracy: 0.1,
            above,
            as_ground: filtered,
            ..BringOptions::default()
        };
        match bring_in(&StoredSite::default(), &given, &options) {
            Ok(brought) => {
                any = true;
                assert!(!brought.notes.any_error(), "{what}");
                let bytes = write_stored(&brought.stored).unwrap_or_else(|e| panic!("{what} is not stored: {e:?}"));
                let again = read_stored("again.site", &bytes).unwrap_or_else(|e| panic!("{what} does not open: {e:?}"));
                assert_eq!(again.records.len(), brought.stored.records.len(), "{what}");
                if let Some(surface) = again.site.ground.surfaces.first().filter(|_| what.contains(".la")) {
                    let lines = ConductorOptions { cloud: ground.clone(), ..ConductorOptions::default() };
                    if let Err(faults) = likely_conductors(&given, &surface.terrain, &lines) {
                        refused(&faults, what);
                    }
                }
            }
            Err(faults) => refused(&faults, what),
        }
        if what.contains(".la")
            && let Err(faults) = grid_cloud(&given, &ground, 5.0)
        {
            refused(&faults, what);
        }
    }
    any
}

#[test]
fn what_once_was_a_new_answer_does_no_harm() {
    for (folder, most) in [
        ("clouds", 30),
        ("grids", 18),
        ("landxml", 12),
        ("levels", 18),
        ("geojson", 12),
        ("shapefiles", 18),
        ("sites", 5),
    ] {
        let inputs = inputs(folder);
        assert_eq!(inputs.len(), most, "inputs of {folder} went missing");
        let sites = inputs.iter().filter(|files| read(files)).count();
        assert!(sites < most, "{folder}: some are damaged beyond reading");
    }
}
