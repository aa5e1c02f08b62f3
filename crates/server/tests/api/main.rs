//! The whole service, asked as a browser would ask.
#![allow(clippy::unwrap_used, clippy::expect_used, reason = "tests")]
#![allow(unreachable_pub, reason = "one test binary of several files")]

mod answers;
mod asking;
mod client_texts;
mod guarding;
mod handmade;
mod plain_page;
