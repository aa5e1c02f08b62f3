//! Rebuilds the crate when the built web client changes, appears or goes: it is part of the binary.

fn main() {
    println!("cargo:rerun-if-changed=build.rs");
    // While the folder is missing cargo runs this script every time, so that the client is taken
    // up as soon as it has been built.
    println!("cargo:rerun-if-changed=../../web/dist");
}
