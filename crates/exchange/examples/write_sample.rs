//! Writes the sample files that `validation/exchange/outside.py` hands to general tools, into the folder given.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, reason = "used by hand and by that script")]

#[path = "../tests/exchange/content.rs"]
mod content;
#[path = "../tests/exchange/read_dxf.rs"]
mod read_dxf;
#[path = "../tests/exchange/read_glb.rs"]
mod read_glb;
#[path = "../tests/exchange/sample.rs"]
mod sample;

use exchange::{About, Format, export};
use std::collections::BTreeMap;
use std::path::PathBuf;

fn main() {
    let folder = PathBuf::from(std::env::args().nth(1).expect("a folder to write to"));
    let mut digests = BTreeMap::new();
    for (name, site, about) in [("site", sample::site(), sample::about()), ("empty", sample::empty(), About::default())]
    {
        for format in Format::ALL {
            let bytes = export(&site, format, &about).expect("the sample has no faults");
            let file = format!("{name}.{}", format.extension());
            digests.insert(file.clone(), content::digest(format, &bytes));
            std::fs::write(folder.join(file), bytes).unwrap();
        }
    }
    std::fs::write(folder.join("digests.json"), serde_json::to_string_pretty(&digests).unwrap()).unwrap();
}
