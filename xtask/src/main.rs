//! The commands.
fn main() {}
