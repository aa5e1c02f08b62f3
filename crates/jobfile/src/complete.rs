//! Files that hold every key there is: from what reading them asks for, the schemas follow.

use crate::schema_notes::Notes;
use crate::{job_file, machine_file};
use std::collections::BTreeMap;

/// Path and text of the files of a job with every key. Everything in it is invented.
pub fn complete_job() -> [(&'static str, &'static str); 6] {
    [
        (job_file::JOB_FILE, include_str!("../complete/job.toml")),
        (MACHINE, include_str!("../complete/machines/machine.toml")),
        ("survey/levels.csv", include_str!("../complete/survey/levels.csv")),
        ("loads.csv", include_str!("../complete/loads.csv")),
        ("slots.csv", include_str!("../complete/slots.csv")),
        ("survey/levels-utm.csv", include_str!("../complete/survey/levels-utm.csv")),
    ]
}

/// The stored site of it.
pub const COMPLETE_SITE: (&str, &[u8]) = ("survey/plot.site", include_bytes!("../complete/survey/plot.site"));

/// The machine file of it.
const MACHINE: &str = "machines/machine.toml";

/// What reading asks of a machine file.
pub fn machine_shapes() -> Notes {
    let bytes = include_bytes!("../complete/machines/machine.toml");
    machine_file::decode_with_notes(MACHINE, bytes).notes
}

/// What reading asks of a job file.
pub fn job_shapes() -> Notes {
    let mut folder: BTreeMap<String, Vec<u8>> =
        complete_job().into_iter().map(|(path, text)| (path.to_owned(), text.as_bytes().to_vec())).collect();
    folder.insert(COMPLETE_SITE.0.to_owned(), COMPLETE_SITE.1.to_vec());
    job_file::notes(&folder)
}
