//! `tests/corpus/written`: small files written by hand, each a lie or a limit that some reader met. Whatever options they are
//! brought in with, they are read or refused with a reason; none panics, hangs, or asks for memory first.

use std::path::{Path, PathBuf};
use survey::{BringOptions, GroundFilter, GroundOptions, LengthUnit, StoredSite, bring_in};

fn files(folder: &Path, out: &mut Vec<PathBuf>) {
    for entry in std::fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() { files(&path, out) } else { out.push(path) }
    }
}

fn options() -> Vec<BringOptions> {
    let stated = GroundOptions { units: Some(LengthUnit::Metre), ..GroundOptions::default() };
    let filtered = GroundOptions { ground_filter: Some(GroundFilter::default()), ..stated.clone() };
    [GroundOptions::default(), stated, filtered]
        .into_iter()
        .flat_map(|ground| {
            [false, true].map(|other| BringOptions {
                ground: ground.clone(),
                accuracy: Some(0.05),
                plan_accuracy: 0.1,
                above: other,
                as_ground: other,
                ..BringOptions::default()
            })
        })
        .collect()
}

#[test]
fn every_written_file_is_read_or_refused_with_a_reason() {
    let mut all = Vec::new();
    files(&PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("tests/corpus/written"), &mut all);
    all.sort();
    assert!(all.len() >= 41, "files of the corpus went missing");
    let mut refused = 0;
    for path in &all {
        let (name, bytes) = (path.file_name().unwrap().to_string_lossy(), std::fs::read(path).unwrap());
        for options in options() {
            match bring_in(&StoredSite::default(), &[(&*name, bytes.as_slice())], &options) {
                Ok(brought) => assert!(!brought.notes.any_error(), "{name}"),
                Err(faults) => {
                    refused += 1;
                    assert!(faults.any_error(), "{name}");
                    assert!(faults.list.iter().all(|f| f.hint.is_some()), "{name}: {faults:?}");
                }
            }
        }
    }
    // Most of them are lies; a reader that took them all would have stopped looking.
    assert!(refused > all.len() * 3, "{refused} of {}", all.len() * 6);
}
