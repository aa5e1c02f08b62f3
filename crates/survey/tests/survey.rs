//! The survey readers against reference data, against files made here, and against mutations.

#![allow(clippy::unwrap_used, clippy::expect_used, clippy::disallowed_methods, reason = "tests")]

#[path = "survey/bringing_in.rs"]
mod bringing_in;
#[path = "survey/cloud_ground.rs"]
mod cloud_ground;
#[path = "survey/cloud_things.rs"]
mod cloud_things;
#[path = "survey/clouds.rs"]
mod clouds;
#[path = "survey/coordinates.rs"]
mod coordinates;
#[path = "survey/corpus.rs"]
mod corpus;
#[path = "survey/drawing_files.rs"]
mod drawing_files;
#[path = "survey/drawing_mutations.rs"]
mod drawing_mutations;
#[path = "survey/drawings.rs"]
mod drawings;
#[path = "survey/drawings_ezdxf.rs"]
mod drawings_ezdxf;
#[path = "survey/every_file.rs"]
mod every_file;
#[path = "survey/grids.rs"]
mod grids;
#[path = "survey/landxml.rs"]
mod landxml;
#[path = "survey/landxml_files.rs"]
mod landxml_files;
#[path = "survey/levels.rs"]
mod levels;
#[path = "survey/made.rs"]
mod made;
#[path = "survey/made_clouds.rs"]
mod made_clouds;
#[path = "survey/made_grids.rs"]
mod made_grids;
#[path = "survey/made_shapes.rs"]
mod made_shapes;
#[path = "survey/mutations.rs"]
mod mutations;
#[path = "survey/other_files.rs"]
mod other_files;
#[path = "survey/plain_cloud.rs"]
mod plain_cloud;
#[path = "survey/reference.rs"]
mod reference;
#[path = "survey/relief.rs"]
mod relief;
#[path = "survey/shapes.rs"]
mod shapes;
#[path = "survey/stored.rs"]
mod stored;
#[path = "survey/texts.rs"]
mod texts;
#[path = "survey/written_corpus.rs"]
mod written_corpus;
