//! Tests of what is typed and what is shown.

#![allow(clippy::unwrap_used, clippy::expect_used, reason = "tests")]

mod conversions;
mod display;
mod parsing;
mod pint;
mod round_trip;
