//! The statics against a rigid-body engine, case by case.
#![allow(missing_docs, clippy::unwrap_used, clippy::print_stdout, clippy::disallowed_methods, reason = "tests")]

mod forces;
mod rigid;
mod setting;
mod soft;
