//! Exported files, read back: by small readers of our own, and against what general tools found in them.
#![allow(
    missing_docs,
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::disallowed_methods,
    reason = "tests"
)]

mod content;
mod dxf_file;
mod geojson_file;
mod glb_file;
mod hostile;
mod outside;
mod plans;
mod random;
mod read_dxf;
mod read_glb;
mod sample;
