//! The JSON chunk, and both chunks as bytes.

use super::mesh::{Accessor, BufferView, Builder, Mesh};
use crate::about::About;
use crate::item::Properties;
use crate::layer::Layer;
use crate::scene::Scene;
use geometry::DVec3;
use serde::Serialize;

#[derive(Debug, Serialize)]
#[serde(rename_all = "camelCase")]
pub(super) struct Document {
    asset: Asset,
    scene: usize,
    scenes: [SceneJson; 1],
    nodes: Vec<Node>,
    #[serde(skip_serializing_if = "Vec::is_empty")]
    meshes: Vec<Mesh>,
    #[serde(skip_serializing_if = "Vec::is_empty")]
    materials: Vec<Material>,
    #[serde(skip_serializing_if = "Vec::is_empty")]
    accessors: Vec<Accessor>,
    #[serde(skip_serializing_if = "Vec::is_empty")]
    buffer_views: Vec<BufferView>,
    #[serde(skip_serializing_if = "Vec::is_empty")]
    buffers: Vec<Buffer>,
    #[serde(skip)]
    bytes: Vec<u8>,
}

#[derive(Debug, Serialize)]
struct Asset {
    version: &'static str,
    generator: &'static str,
    #[serde(skip_serializing_if = "Option::is_none")]
    copyright: Option<String>,
    extras: Whole,
}

/// What holds for the whole file.
#[derive(Debug, Clone, Serialize)]
pub(super) struct Whole {
    /// East, north, height of the point that all coordinates count from, m.
    origin: [f64; 3],
    epsg: Option<u32>,
    units: &'static str,
    invented: bool,
    notes: Vec<String>,
}

#[derive(Debug, Serialize)]
struct SceneJson {
    name: String,
    nodes: [usize; 1],
}

#[derive(Debug, Serialize)]
pub(super) struct Node {
    name: String,
    #[serde(skip_serializing_if = "Option::is_none")]
    mesh: Option<usize>,
    #[serde(skip_serializing_if = "Vec::is_empty")]
    children: Vec<usize>,
    #[serde(skip_serializing_if = "Option::is_none")]
    extras: Option<Extras>,
}

#[derive(Debug, Serialize)]
#[serde(untagged)]
pub(super) enum Extras {
    Item(Properties),
    Whole(Whole),
}

#[derive(Debug, Serialize)]
#[serde(rename_all = "camelCase")]
struct Material {
    name: &'static str,
    pbr_metallic_roughness: Surface,
    #[serde(skip_serializing_if = "Option::is_none")]
    alpha_mode: Option<&'static str>,
    double_sided: bool,
}

#[derive(Debug, Serialize)]
#[serde(rename_all = "camelCase")]
#[expect(clippy::struct_field_names, reason = "names of the format")]
struct Surface {
    base_color_factor: [f64; 4],
    metallic_factor: f64,
    roughness_factor: f64,
}

#[derive(Debug, Serialize)]
#[serde(rename_all = "camelCase")]
struct Buffer {
    byte_length: usize,
}

impl Node {
    pub(super) fn of_item(name: String, mesh: Option<usize>, extras: Extras) -> Self {
        Self { name, mesh, children: Vec::new(), extras: Some(extras) }
    }
}

impl Document {
    pub(super) fn new(
        scene: &Scene<'_>,
        about: &About,
        origin: DVec3,
        notes: Vec<String>,
        groups: Vec<(Layer, Vec<Node>)>,
        builder: Builder,
    ) -> Self {
        let whole = Whole { origin: origin.to_array(), epsg: scene.epsg, units: "m", invented: scene.invented, notes };
        let mut nodes = vec![Node {
            name: scene.name.clone(),
            mesh: None,
            children: Vec::new(),
            extras: Some(Extras::Whole(whole.clone())),
        }];
        for (layer, items) in groups {
            let group = nodes.len();
            nodes[0].children.push(group);
            let children = group + 1..=group + items.len();
            nodes.push(Node { name: layer.name.to_owned(), mesh: None, children: children.collect(), extras: None });
            nodes.extend(items);
        }
        let copyright = (!about.attribution.is_empty()).then(|| about.attribution.join("; "));
        let buffers =
            if builder.bytes.is_empty() { Vec::new() } else { vec![Buffer { byte_length: builder.bytes.len() }] };
        Self {
            asset: Asset {
                version: "2.0",
                generator: concat!("Counterpoise ", env!("CARGO_PKG_VERSION")),
                copyright,
                extras: whole,
            },
            scene: 0,
            scenes: [SceneJson { name: scene.name.clone(), nodes: [0] }],
            nodes,
            meshes: builder.meshes,
            materials: builder.materials.into_iter().map(material).collect(),
            accessors: builder.accessors,
            buffer_views: builder.views,
            buffers,
            bytes: builder.bytes,
        }
    }

    /// Header and chunks, each padded to four bytes.
    pub(super) fn into_bytes(mut self) -> Vec<u8> {
        let mut json = serde_json::to_vec(&self).unwrap_or_default();
        json.resize(json.len().next_multiple_of(4), b' ');
        let mut body = chunk(*b"JSON", &json);
        if !self.bytes.is_empty() {
            self.bytes.resize(self.bytes.len().next_multiple_of(4), 0);
            body.extend(chunk(*b"BIN\0", &self.bytes));
        }
        let mut out = b"glTF".to_vec();
        out.extend(2_u32.to_le_bytes());
        out.extend((body.len() as u32 + 12).to_le_bytes());
        out.extend(body);
        out
    }
}

fn chunk(kind: [u8; 4], data: &[u8]) -> Vec<u8> {
    let mut out = (data.len() as u32).to_le_bytes().to_vec();
    out.extend(kind);
    out.extend(data);
    out
}

fn material(layer: Layer) -> Material {
    // What lies on the ground lets it be seen.
    let over_ground = layer.name.starts_with("Zone-") || layer == crate::layer::EXCAVATION;
    let alpha = if over_ground { 0.5 } else { 1.0 };
    let [r, g, b] = layer.rgb.map(linear);
    Material {
        name: layer.name,
        pbr_metallic_roughness: Surface {
            base_color_factor: [r, g, b, alpha],
            metallic_factor: 0.0,
            roughness_factor: 1.0,
        },
        alpha_mode: over_ground.then_some("BLEND"),
        double_sided: true,
    }
}

/// A screen colour as the share of light that the format wants, near enough: the square (the exact exponent of sRGB is
/// about 2.2).
fn linear(screen: u8) -> f64 {
    let share = f64::from(screen) / 255.0;
    (share * share * 1e4).round() / 1e4
}
