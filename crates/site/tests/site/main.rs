//! Clearances against the published rules; surfaces and spans.
#![allow(missing_docs, clippy::unwrap_used, clippy::print_stderr, reason = "tests")]

mod clearances;
mod conductors;
mod relief;
mod spans;
mod surfaces;
mod things;
mod triangles;
