//! Shortest words against an outside library; routes against brute force.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::disallowed_methods, reason = "tests")]

mod lengths;
mod maps;
mod routes;
mod seeded;
mod shortest_words;
