//! The files of a new job.

/// Path and text of each file of a starter job. It reads without faults, and plans to an honest
/// no-go: its made-up values are marked, each is listed as a warning, and nothing in it is stated by anybody yet.
pub fn starter_job() -> Vec<(String, String)> {
    [
        ("job.toml", include_str!("../starter/job.toml")),
        ("machines/my-machine.toml", include_str!("../starter/machines/my-machine.toml")),
        ("survey/levels.csv", include_str!("../starter/survey/levels.csv")),
    ]
    .map(|(path, text)| (path.to_owned(), text.to_owned()))
    .to_vec()
}
