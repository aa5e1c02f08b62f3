//! Reads what our GLB files hold: nodes with their triangles and lines.
#![allow(dead_code, reason = "shared by tests and the example that writes the files; each uses a part")]

use serde_json::Value;

pub(crate) struct Model {
    pub(crate) json: Value,
    pub(crate) bin: Vec<u8>,
}

pub(crate) fn read(bytes: &[u8]) -> Model {
    let u32_at = |at: usize| u32::from_le_bytes(bytes[at..at + 4].try_into().unwrap()) as usize;
    assert_eq!((&bytes[..4], u32_at(4), u32_at(8)), (b"glTF".as_slice(), 2, bytes.len()));
    let length = u32_at(12);
    assert_eq!(&bytes[16..20], b"JSON");
    let json = serde_json::from_slice(&bytes[20..20 + length]).unwrap();
    let rest = &bytes[20 + length..];
    let bin = if rest.is_empty() {
        Vec::new()
    } else {
        assert_eq!(&rest[4..8], b"BIN\0");
        assert_eq!(u32::from_le_bytes(rest[..4].try_into().unwrap()) as usize, rest.len() - 8);
        rest[8..].to_vec()
    };
    Model { json, bin }
}

impl Model {
    /// The place that coordinates count from: east, north, height.
    pub(crate) fn origin(&self) -> [f64; 3] {
        let list = self.json["nodes"][0]["extras"]["origin"].as_array().unwrap();
        std::array::from_fn(|i| list[i].as_f64().unwrap())
    }

    pub(crate) fn node(&self, start: &str) -> &Value {
        let named = |n: &&Value| n["name"].as_str().unwrap().starts_with(start);
        self.json["nodes"].as_array().unwrap().iter().find(named).unwrap_or_else(|| panic!("no node {start}"))
    }

    /// Triangles (mode 4) or line ends (mode 1) of a node, as east, north, height from the origin.
    pub(crate) fn corners(&self, node: &Value, mode: u64) -> Vec<[f64; 3]> {
        let Some(mesh) = node["mesh"].as_u64() else { return Vec::new() };
        let primitives = self.json["meshes"][mesh as usize]["primitives"].as_array().unwrap();
        let mut out = Vec::new();
        for primitive in primitives.iter().filter(|p| p["mode"] == mode) {
            let positions = self.positions(primitive["attributes"]["POSITION"].as_u64().unwrap() as usize);
            let indices = self.words(primitive["indices"].as_u64().unwrap() as usize);
            out.extend(indices.iter().map(|i| positions[u32::from_le_bytes(*i) as usize]));
        }
        out
    }

    /// Volume inside a node's triangles, by the divergence theorem; positive where they face outwards.
    pub(crate) fn volume(&self, node: &Value) -> f64 {
        let corners = self.corners(node, 4);
        let origin = corners.first().copied().unwrap_or_default();
        let off = |p: [f64; 3]| geometry::DVec3::from_array(p) - geometry::DVec3::from_array(origin);
        corners.chunks(3).map(|t| off(t[0]).dot(off(t[1]).cross(off(t[2]))) / 6.0).sum()
    }

    fn words(&self, accessor: usize) -> Vec<[u8; 4]> {
        let accessor = &self.json["accessors"][accessor];
        let view = &self.json["bufferViews"][accessor["bufferView"].as_u64().unwrap() as usize];
        let start = view["byteOffset"].as_u64().unwrap() as usize;
        let length = view["byteLength"].as_u64().unwrap() as usize;
        self.bin[start..start + length].chunks(4).map(|c| c.try_into().unwrap()).collect()
    }

    /// Positions as east, north, height; their stated bounds are proven.
    fn positions(&self, accessor: usize) -> Vec<[f64; 3]> {
        let values: Vec<f32> = self.words(accessor).into_iter().map(f32::from_le_bytes).collect();
        assert!(values.iter().all(|v| v.is_finite()));
        let json = &self.json["accessors"][accessor];
        assert_eq!(json["count"].as_u64().unwrap() as usize * 3, values.len());
        for (axis, name) in [(0, "min"), (1, "min"), (2, "min"), (0, "max"), (1, "max"), (2, "max")] {
            let all = values.iter().skip(axis).step_by(3).copied();
            let end = if name == "min" { all.reduce(f32::min) } else { all.reduce(f32::max) };
            assert_eq!(json[name][axis].as_f64().unwrap(), f64::from(end.unwrap()));
        }
        values.chunks(3).map(|v| [f64::from(v[0]), -f64::from(v[2]), f64::from(v[1])]).collect()
    }
}
