//! Shapes from GeoJSON (RFC 7946, and the older form with a `crs` member).

use crate::crs::CrsStatements;
use crate::epsg::Epsg;
use crate::feature::{Attribute, Feature, PlanFacts};
use crate::kind::{self, FileKind};
use crate::notes::{Notes, Refused};
use crate::options::GroundOptions;
use crate::shapes::{self, PlanSource, RawFeature, RawPoint, RawShape, ShapeNotes};
use crate::text;
use crate::units::UnitStatement;
use geometry::DVec2;
use serde_json::Value;
use std::collections::BTreeMap;

/// Most bytes of a file; read, they take about ten times as much for a moment.
const MOST_BYTES: usize = 200 << 20;

/// Collections inside collections; a real file has one.
const DEEPEST: usize = 8;

/// Members that name a feature, in this order, in any case; its own `id` comes first.
pub(crate) const NAME_KEYS: [&str; 7] = ["id", "@id", "name", "fid", "gml_id", "objectid", "osm_id"];

/// Reads every shape. Layer is the file name without its ending; the name is the `id` of the
/// feature, else the first of its properties that is one of `id`, `@id`, `name`, `fid`, `gml_id`,
/// `objectid`, `osm_id`. Parts of a `Multi…` or a collection become features of their own.
pub(crate) fn plan(
    bytes: &[u8],
    options: &GroundOptions,
    notes: &mut Notes<'_>,
) -> Result<(Vec<Feature>, PlanFacts), Refused> {
    if kind::is_utf16(bytes) {
        return Err(notes.refuse("survey::text-encoding", text::TEXT_UTF16, text::DO_SAVE_UTF8));
    }
    if bytes.len() > MOST_BYTES {
        let message = text::TOO_MANY_BYTES.with("found", bytes.len()).with("most", MOST_BYTES);
        return Err(notes.refuse("survey::too-large", message, text::DO_CUT_OUT));
    }
    let bytes = bytes.strip_prefix(b"\xEF\xBB\xBF").unwrap_or(bytes);
    let root: Value = serde_json::from_slice(bytes).map_err(|error| {
        let message = text::JSON_BROKEN.with("detail", error.to_string());
        notes.refuse_line("survey::json", error.line() as u64, message, text::DO_COPY_AGAIN)
    })?;
    let mut reader = Reader { shape_notes: ShapeNotes::default(), left_out: BTreeMap::new(), notes };
    let features = reader.root(&root)?;
    let Reader { shape_notes, left_out, notes } = reader;
    if let Some(without) = left_out.get(NULL) {
        let count = i64::try_from(*without).unwrap_or(i64::MAX);
        notes.warn("survey::without-shape", text::WITHOUT_SHAPE.with("count", count), text::DO_MEND_SHAPE);
    }
    let crs = statements(&root, &features, options);
    shapes::place(features, PlanSource { kind: FileKind::GeoJson, crs, left_out }, shape_notes, options, notes)
}

/// Left out: features whose geometry is null.
const NULL: &str = "null";

/// What the file says of its system: the `crs` member of old files; without one, longitude and
/// latitude on WGS 84 (RFC 7946, section 4), unless the numbers or a unit stated by the job speak
/// against it.
fn statements(root: &Value, features: &[RawFeature], options: &GroundOptions) -> CrsStatements {
    let mut crs = CrsStatements::default();
    match root.get("crs") {
        Some(Value::Null) => {}
        Some(member) => {
            let properties = &member["properties"];
            let text = match &properties["name"] {
                Value::String(name) => Some(name.clone()),
                _ => properties["code"].as_u64().map(|code| format!("EPSG:{code}")),
            };
            let code = text.as_deref().and_then(Epsg::of_text);
            crs.epsg = code.map(|c| c.0);
            crs.name = code.map(Epsg::words).or(text);
            if code.and_then(Epsg::is_degrees) == Some(true) {
                crs.not_a_plane = Some("crs");
            }
        }
        None => {
            let largest = features
                .iter()
                .flat_map(|f| &f.shapes)
                .flat_map(RawShape::points)
                .fold(DVec2::ZERO, |largest, p| largest.max(p.at.abs()));
            // A latitude beyond 90 beside a first number below 90 is a swapped pair, and is said so.
            let could_be_degrees = largest.max_element() <= 180.0;
            if could_be_degrees && options.units.is_none() {
                crs.not_a_plane = Some("RFC 7946");
                crs.epsg = Some(4326);
                crs.name = Some(Epsg(4326).words());
            } else if could_be_degrees && options.site_crs.is_some() {
                crs.epsg = Some(4326);
            }
        }
    }
    let degrees = options.file_crs.or(crs.epsg.map(Epsg)).and_then(Epsg::is_degrees);
    if degrees == Some(true) && options.height_units.or(options.units).is_none() {
        crs.vertical.push(UnitStatement { factor: 1.0, place: "RFC 7946" });
    }
    crs
}

struct Reader<'n, 'a> {
    shape_notes: ShapeNotes,
    left_out: BTreeMap<String, u64>,
    notes: &'n mut Notes<'a>,
}

impl Reader<'_, '_> {
    fn root(&mut self, root: &Value) -> Result<Vec<RawFeature>, Refused> {
        match root["type"].as_str() {
            Some("FeatureCollection") => {
                let Some(list) = root["features"].as_array() else {
                    return Err(self.not_geojson());
                };
                Ok(list.iter().enumerate().map(|(i, feature)| self.feature(feature, i + 1)).collect())
            }
            Some("Feature") => Ok(vec![self.feature(root, 1)]),
            Some(_) if root.get("coordinates").is_some() || root.get("geometries").is_some() => {
                let mut feature = RawFeature { place: 1, ..RawFeature::default() };
                self.geometry(root, 0, &mut feature);
                Ok(vec![feature])
            }
            _ => Err(self.not_geojson()),
        }
    }

    fn not_geojson(&mut self) -> Refused {
        self.notes.refuse("survey::not-geojson", text::NOT_GEOJSON, text::DO_GIVE_PLAN)
    }

    fn feature(&mut self, value: &Value, place: usize) -> RawFeature {
        let mut feature = RawFeature { place, ..RawFeature::default() };
        if let Some(properties) = value["properties"].as_object() {
            feature.attributes = properties.iter().map(|(k, v)| (k.clone(), attribute(v))).collect();
        }
        feature.name = words(&value["id"]).or_else(|| name_of(&feature.attributes));
        match &value["geometry"] {
            Value::Null if value["type"] == "Feature" => *self.left_out.entry(NULL.to_owned()).or_default() += 1,
            geometry => self.geometry(geometry, 0, &mut feature),
        }
        feature
    }

    fn geometry(&mut self, value: &Value, depth: usize, feature: &mut RawFeature) {
        let coordinates = &value["coordinates"];
        let kind = value["type"].as_str().unwrap_or_default();
        let found = match kind {
            "Point" => point(coordinates).map(|p| vec![RawShape::Point(p)]),
            "MultiPoint" => points(coordinates).map(|all| all.into_iter().map(RawShape::Point).collect()),
            "LineString" => points(coordinates).map(|line| vec![RawShape::Line(line)]),
            "MultiLineString" => each(coordinates, points).map(|all| all.into_iter().map(RawShape::Line).collect()),
            "Polygon" => each(coordinates, points).map(|rings| vec![RawShape::Area(rings)]),
            "MultiPolygon" => {
                each(coordinates, |v| each(v, points)).map(|all| all.into_iter().map(RawShape::Area).collect())
            }
            "GeometryCollection" if depth < DEEPEST => {
                if let Some(list) = value["geometries"].as_array() {
                    for part in list {
                        self.geometry(part, depth + 1, feature);
                    }
                    return;
                }
                None
            }
            _ => None,
        };
        match found {
            Some(shapes) => feature.shapes.extend(shapes),
            None => self.shape_notes.refuse(feature.place, text::SHAPE_UNREADABLE, self.notes),
        }
    }
}

fn each<T>(value: &Value, read: impl Fn(&Value) -> Option<T>) -> Option<Vec<T>> {
    value.as_array()?.iter().map(read).collect()
}

fn points(value: &Value) -> Option<Vec<RawPoint>> {
    each(value, point)
}

/// East and north, or longitude and latitude, then perhaps a height; more is not looked at.
fn point(value: &Value) -> Option<RawPoint> {
    let numbers = value.as_array()?;
    let number = |i: usize| numbers.get(i)?.as_f64().filter(|n| n.is_finite());
    let height = match numbers.get(2) {
        None | Some(Value::Null) => None,
        Some(_) => Some(number(2)?),
    };
    Some(RawPoint { at: DVec2::new(number(0)?, number(1)?), height })
}

fn attribute(value: &Value) -> Attribute {
    match value {
        Value::Null => Attribute::Nothing,
        Value::Bool(yes) => Attribute::YesNo(*yes),
        Value::Number(n) => n.as_f64().map_or(Attribute::Nothing, Attribute::Number),
        Value::String(text) => Attribute::Text(text.clone()),
        nested => Attribute::Text(nested.to_string()),
    }
}

fn words(value: &Value) -> Option<String> {
    match value {
        Value::String(text) if !text.is_empty() => Some(text.clone()),
        Value::Number(n) => Some(n.to_string()),
        _ => None,
    }
}

/// The first property that names a feature.
pub(crate) fn name_of(attributes: &BTreeMap<String, Attribute>) -> Option<String> {
    NAME_KEYS.iter().find_map(|key| {
        let (_, value) = attributes.iter().find(|(k, _)| k.eq_ignore_ascii_case(key))?;
        match value {
            Attribute::Text(text) if !text.trim().is_empty() => Some(text.trim().to_owned()),
            Attribute::Number(n) => Some(n.to_string()),
            _ => None,
        }
    })
}
