//! Meshes, their accessors and bytes.

use crate::ground_mesh::Mesh as GroundMesh;
use crate::layer::{self, Layer};
use geometry::DVec3;
use serde::Serialize;
use std::collections::BTreeMap;

const F32: u32 = 5126;
const U32: u32 = 5125;
const VERTICES: u32 = 34962;
const INDICES: u32 = 34963;
const LINES: u32 = 1;
const TRIANGLES: u32 = 4;

#[derive(Debug, Serialize)]
#[serde(rename_all = "camelCase")]
pub(super) struct BufferView {
    buffer: u32,
    byte_offset: usize,
    byte_length: usize,
    target: u32,
}

#[derive(Debug, Serialize)]
#[serde(rename_all = "camelCase")]
pub(super) struct Accessor {
    buffer_view: usize,
    component_type: u32,
    count: usize,
    r#type: &'static str,
    #[serde(skip_serializing_if = "Option::is_none")]
    min: Option<[f64; 3]>,
    #[serde(skip_serializing_if = "Option::is_none")]
    max: Option<[f64; 3]>,
}

#[derive(Debug, Serialize)]
pub(super) struct Mesh {
    name: String,
    primitives: Vec<Primitive>,
}

#[derive(Debug, Serialize)]
struct Primitive {
    attributes: Attributes,
    indices: usize,
    material: usize,
    mode: u32,
}

#[derive(Debug, Serialize)]
struct Attributes {
    #[serde(rename = "POSITION")]
    position: usize,
}

/// Collects meshes and the bytes they stand on.
#[derive(Debug)]
pub(super) struct Builder {
    origin: DVec3,
    pub(super) bytes: Vec<u8>,
    pub(super) views: Vec<BufferView>,
    pub(super) accessors: Vec<Accessor>,
    pub(super) meshes: Vec<Mesh>,
    /// Layers that have a material, by its index.
    pub(super) materials: Vec<Layer>,
}

/// Corners without repetition, and indexes into them.
#[derive(Default)]
struct Indexed {
    positions: Vec<[f32; 3]>,
    indices: Vec<u32>,
    seen: BTreeMap<[u32; 3], u32>,
}

impl Indexed {
    fn push(&mut self, p: [f32; 3]) {
        let index = *self.seen.entry(p.map(f32::to_bits)).or_insert_with(|| {
            self.positions.push(p);
            self.positions.len() as u32 - 1
        });
        self.indices.push(index);
    }
}

impl Builder {
    pub(super) fn new(origin: DVec3) -> Self {
        Self {
            origin,
            bytes: Vec::new(),
            views: Vec::new(),
            accessors: Vec::new(),
            meshes: Vec::new(),
            materials: Vec::new(),
        }
    }

    /// Mesh of triangles and lines; `None` where there are none.
    pub(super) fn mesh(
        &mut self,
        name: &str,
        layer: Layer,
        triangles: &[[DVec3; 3]],
        segments: &[[DVec3; 2]],
    ) -> Option<usize> {
        let mut faces = Indexed::default();
        for corners in triangles {
            let corners = corners.map(|p| self.place(p));
            // What falls together in f32 is no triangle.
            if corners[0] != corners[1] && corners[1] != corners[2] && corners[2] != corners[0] {
                for p in corners {
                    faces.push(p);
                }
            }
        }
        let mut lines = Indexed::default();
        for ends in segments {
            for p in ends {
                lines.push(self.place(*p));
            }
        }
        let parts = [(faces, TRIANGLES), (lines, LINES)].into_iter().filter(|(part, _)| !part.indices.is_empty());
        let primitives =
            parts.map(|(part, mode)| self.primitive(&part.positions, &part.indices, layer, mode)).collect();
        self.add(name, primitives)
    }

    /// Mesh of a ground surface.
    pub(super) fn ground(&mut self, name: &str, mesh: &GroundMesh) -> Option<usize> {
        if mesh.triangles.is_empty() {
            return None;
        }
        let at = |v: &[f32; 3]| self.place(mesh.origin + DVec3::from_array(v.map(f64::from)));
        let positions: Vec<_> = mesh.vertices.iter().map(at).collect();
        let part = self.primitive(&positions, mesh.triangles.as_flattened(), layer::GROUND, TRIANGLES);
        self.add(name, vec![part])
    }

    fn add(&mut self, name: &str, primitives: Vec<Primitive>) -> Option<usize> {
        (!primitives.is_empty()).then(|| {
            self.meshes.push(Mesh { name: name.to_owned(), primitives });
            self.meshes.len() - 1
        })
    }

    fn primitive(&mut self, positions: &[[f32; 3]], indices: &[u32], layer: Layer, mode: u32) -> Primitive {
        let range = positions.iter().map(|p| (*p, *p)).reduce(|(l, h), (p, _)| {
            (std::array::from_fn(|i| l[i].min(p[i])), std::array::from_fn(|i| h[i].max(p[i])))
        });
        let position = self.accessor(positions.as_flattened(), f32::to_le_bytes, VERTICES, F32, "VEC3", 3);
        if let Some((low, high)) = range {
            self.accessors[position].min = Some(low.map(f64::from));
            self.accessors[position].max = Some(high.map(f64::from));
        }
        let indices = self.accessor(indices, u32::to_le_bytes, INDICES, U32, "SCALAR", 1);
        let material = self.materials.iter().position(|l| *l == layer).unwrap_or_else(|| {
            self.materials.push(layer);
            self.materials.len() - 1
        });
        Primitive { attributes: Attributes { position }, indices, material, mode }
    }

    fn accessor<T: Copy>(
        &mut self,
        values: &[T],
        bytes: impl Fn(T) -> [u8; 4],
        target: u32,
        component_type: u32,
        kind: &'static str,
        per: usize,
    ) -> usize {
        let byte_offset = self.bytes.len();
        self.bytes.extend(values.iter().flat_map(|v| bytes(*v)));
        self.views.push(BufferView { buffer: 0, byte_offset, byte_length: values.len() * 4, target });
        self.accessors.push(Accessor {
            buffer_view: self.views.len() - 1,
            component_type,
            count: values.len() / per,
            r#type: kind,
            min: None,
            max: None,
        });
        self.accessors.len() - 1
    }

    /// x east, y up, z south, from the origin.
    fn place(&self, p: DVec3) -> [f32; 3] {
        let p = p - self.origin;
        // Without a negative nought, which would be another corner.
        [p.x, p.z, -p.y].map(|v| v as f32 + 0.0)
    }
}
