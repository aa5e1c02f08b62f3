//! GeoJSON, RFC 7946, in the coordinates of the site.
//!
//! RFC 7946 wants longitude and latitude (its clause 4). A site's coordinates are metres in a national or local grid
//! and stay so: projecting them back and forth costs more than the centimetres that matter here. The coordinate system
//! stands in the member `crs` of the 2008 form, which the general tools still read; where no EPSG code is known, the
//! member `coordinates` says that they are the site's own grid. All else is as RFC 7946 asks: rings closed, outer ones
//! counter-clockwise, features without a place with a `null` geometry.

use crate::about::{About, named};
use crate::item::{Item, Position, Properties, Shape};
use crate::scene::Scene;
use serde::Serialize;
use serde_json::Value;

#[derive(Serialize)]
struct Collection<'a> {
    r#type: &'static str,
    name: &'a str,
    #[serde(skip_serializing_if = "Option::is_none")]
    crs: Option<Crs>,
    #[serde(skip_serializing_if = "Option::is_none")]
    coordinates: Option<&'static str>,
    units: &'static str,
    invented: bool,
    notes: &'a [String],
    features: Vec<Feature<'a>>,
}

#[derive(Serialize)]
struct Crs {
    r#type: &'static str,
    properties: CrsName,
}

#[derive(Serialize)]
struct CrsName {
    name: String,
}

#[derive(Serialize)]
struct Feature<'a> {
    r#type: &'static str,
    id: &'a str,
    geometry: Option<Geometry<'a>>,
    properties: Properties,
}

#[derive(Serialize)]
#[serde(tag = "type", content = "coordinates")]
enum Geometry<'a> {
    Point(Position),
    MultiPoint(&'a [Position]),
    LineString(&'a [Position]),
    MultiLineString(&'a [Vec<Position>]),
    Polygon(Vec<Vec<Position>>),
}

/// The file.
pub(crate) fn write(scene: &Scene<'_>, about: &About) -> Vec<u8> {
    let collection = Collection {
        r#type: "FeatureCollection",
        name: &scene.name,
        crs: scene
            .epsg
            .map(|code| Crs { r#type: "name", properties: CrsName { name: format!("urn:ogc:def:crs:EPSG::{code}") } }),
        coordinates: scene.epsg.is_none().then_some("site grid, metres"),
        units: "m",
        invented: scene.invented,
        notes: &scene.notes,
        features: scene.items.iter().map(|item| feature(item, about)).collect(),
    };
    // Only maps with keys that are no text, and our own impls, could fail; there are none that do.
    let mut out = serde_json::to_vec(&collection).unwrap_or_default();
    out.push(b'\n');
    out
}

fn feature<'a>(item: &'a Item, about: &About) -> Feature<'a> {
    let mut properties = item.properties.clone();
    properties.add("layer", item.layer.name);
    let label = named(about, &item.name, &item.doubts);
    properties.add("label", Value::String(label));
    Feature { r#type: "Feature", id: &item.key, geometry: geometry(&item.shape), properties }
}

fn geometry(shape: &Shape) -> Option<Geometry<'_>> {
    let closed = |ring: &Vec<Position>| ring.iter().chain(ring.first()).copied().collect();
    match shape {
        Shape::Nowhere => None,
        Shape::Point(at) => Some(Geometry::Point(*at)),
        Shape::Points(points) => Some(Geometry::MultiPoint(points)),
        Shape::Line(points) => Some(Geometry::LineString(points)),
        Shape::Lines(lines) => Some(Geometry::MultiLineString(lines)),
        Shape::Area(rings) => Some(Geometry::Polygon(rings.iter().map(closed).collect())),
    }
}
