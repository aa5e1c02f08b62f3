//! Digest of what a file holds, without the notes and the version in it: these may change their words without the need
//! to ask the outside tools again.
#![allow(dead_code, reason = "shared by tests and the example that writes the files; each uses a part")]

use super::{read_dxf, read_glb};
use exchange::Format;
use serde_json::Value;
use sha2::{Digest, Sha256};
use std::fmt::Write as _;

/// SHA-256 as hexadecimal.
pub(crate) fn digest(format: Format, bytes: &[u8]) -> String {
    let content = match format {
        Format::GeoJson => {
            let mut json: Value = serde_json::from_slice(bytes).unwrap();
            json.as_object_mut().unwrap().remove("notes");
            json.to_string().into_bytes()
        }
        Format::Dxf => {
            let drawing = read_dxf::read(bytes);
            let mut text = format!("{:?}", drawing.layers);
            for e in drawing.entities.iter().filter(|e| e.layer() != "Notes") {
                let told: Vec<_> = e.pairs.iter().filter(|(code, _)| ![5, 330].contains(code)).collect();
                writeln!(text, "{} {told:?}", e.kind).unwrap();
            }
            text.into_bytes()
        }
        Format::Gltf => {
            let model = read_glb::read(bytes);
            let mut json = model.json;
            json["asset"] = Value::Null;
            json["nodes"][0]["extras"]["notes"] = Value::Null;
            [json.to_string().into_bytes(), model.bin].concat()
        }
    };
    Sha256::digest(&content).iter().fold(String::new(), |mut text, byte| {
        write!(text, "{byte:02x}").unwrap();
        text
    })
}
