//! The program as people and programs use it: what it prints, writes and returns.
#![allow(missing_docs, clippy::unwrap_used, clippy::expect_used, clippy::panic, clippy::print_stderr, reason = "tests")]

mod bad_input;
mod calc;
mod calc_edges;
mod calc_ground;
mod calc_soil;
mod check;
mod fit;
mod jobs;
mod landing;
mod machine;
mod order;
mod outputs;
mod schemas;
mod stands;
mod support;
mod survey;
