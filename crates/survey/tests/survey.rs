//! The survey readers against reference data, against files made here, and against mutations.

#![allow(clippy::unwrap_used, clippy::expect_used, clippy::disallowed_methods, reason = "tests")]

#[path = "survey/clouds.rs"]
mod clouds;
#[path = "survey/every_file.rs"]
mod every_file;
#[path = "survey/grids.rs"]
mod grids;
#[path = "survey/levels.rs"]
mod levels;
#[path = "survey/made.rs"]
mod made;
#[path = "survey/made_clouds.rs"]
mod made_clouds;
#[path = "survey/made_grids.rs"]
mod made_grids;
#[path = "survey/mutations.rs"]
mod mutations;
#[path = "survey/reference.rs"]
mod reference;
#[path = "survey/relief.rs"]
mod relief;
#[path = "survey/texts.rs"]
mod texts;
