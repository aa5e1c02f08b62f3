//! glTF 2.0 in its binary form (GLB), by hand: a JSON chunk and a binary chunk.
//!
//! Axes as the format asks: x east, y up, z south. Units metres. Coordinates are `f32` and count from an origin near the
//! site, so that they keep a tenth of a millimetre over a kilometre; the origin stands in the `extras` of the root node
//! and of the asset, not in a transform, which viewers would apply in `f32` again.

mod document;
mod mesh;

use crate::about::{About, named};
use crate::item::Properties;
use crate::layer::{self, Layer};
use crate::scene::{Scene, Under};
use crate::solids::{self, DrawnGround, Solid, solid};
use crate::text;
use document::{Document, Extras, Node};
use evidence::Faults;
use geometry::DVec3;
use mesh::Builder;
use quantity::metres;

/// The file.
pub(crate) fn write(scene: &Scene<'_>, about: &About) -> Result<Vec<u8>, Faults> {
    let grounds = solids::grounds(scene, crate::MOST_TRIANGLES, crate::MOST_COLUMNS)?;
    let origin = origin(scene, &grounds);
    let mut notes = solids::notes(scene, &grounds, about.wording);
    let [east, north, height] = [origin.x, origin.y, origin.z].map(metres);
    let said = text::NOTE_ORIGIN.with("east", east).with("north", north).with("height", height);
    notes.push(about.wording.render(&said));

    let mut builder = Builder::new(origin);
    // Groups in the order in which layers first appear; the ground first.
    let mut groups: Vec<(Layer, Vec<Node>)> = Vec::new();
    for ground in &grounds {
        let mut extras = Properties::default();
        extras.add("kind", "ground");
        extras.add("every_nth_row_and_column", ground.step);
        let mesh = builder.ground(&ground.name, &ground.mesh);
        group(&mut groups, layer::GROUND).push(Node::of_item(ground.name.clone(), mesh, Extras::Item(extras)));
    }
    let under = Under { ground: scene.ground, floor: scene.floor };
    for item in scene.items.iter().filter(|i| i.layer != layer::GROUND) {
        let name = named(about, &item.name, &item.doubts);
        let Solid { triangles, segments } = solid(&item.drawn, &under);
        let mesh = builder.mesh(&name, item.layer, &triangles, &segments);
        let mut extras = item.properties.clone();
        extras.add("key", item.key.as_str());
        group(&mut groups, item.layer).push(Node::of_item(name, mesh, Extras::Item(extras)));
    }
    Ok(Document::new(scene, about, origin, notes, groups, builder).into_bytes())
}

fn group(groups: &mut Vec<(Layer, Vec<Node>)>, layer: Layer) -> &mut Vec<Node> {
    let at = groups.iter().position(|(l, _)| *l == layer).unwrap_or_else(|| {
        groups.push((layer, Vec::new()));
        groups.len() - 1
    });
    &mut groups[at].1
}

/// Whole metres near the middle of all that is drawn.
fn origin(scene: &Scene<'_>, grounds: &[DrawnGround]) -> DVec3 {
    let ground = grounds.iter().filter_map(|g| {
        let at = |v: &[f32; 3]| g.mesh.origin + DVec3::from_array(v.map(f64::from));
        crate::ring::middle(g.mesh.vertices.iter().map(at))
    });
    let items = scene.items.iter().flat_map(|i| i.drawn.iter().flat_map(solids::points));
    let middle = crate::ring::middle(ground.chain(items)).unwrap_or(DVec3::ZERO).floor();
    DVec3::new(middle.x, middle.y, scene.floor.floor())
}
