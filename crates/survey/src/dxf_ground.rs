//! Ground from a drawing: points, lines and faces in space on the layers that the job names.

use crate::FileKind;
use crate::crs::is_plausible;
use crate::dxf;
use crate::feature::{Feature, PlanPoint, Shape};
use crate::notes::{Notes, Refused};
use crate::options::{GroundOptions, LONGEST_EDGE_LEVELS};
use crate::reading::Facts;
use crate::text;
use geometry::DVec3;
use std::collections::BTreeMap;

/// What a drawing holds of the ground, m in the site frame.
#[derive(Debug, Clone, PartialEq, Default)]
pub(crate) struct DrawnGround {
    /// Every point with a height, each once: spots, corners of lines and of faces.
    pub(crate) points: Vec<DVec3>,
    /// Lines that the surface must follow.
    pub(crate) breaklines: Vec<Vec<DVec3>>,
    /// Faces as drawn, three or four corners.
    pub(crate) faces: Vec<Vec<DVec3>>,
    /// Single points among `points`.
    pub(crate) spots: usize,
}

/// Reads the ground on `options.layers`. Refused without named layers, with those that there are.
pub(crate) fn ground(
    bytes: &[u8],
    options: &GroundOptions,
    notes: &mut Notes<'_>,
) -> Result<(DrawnGround, Facts), Refused> {
    let (features, plan, units) = dxf::shapes(bytes, options, notes)?;
    let named: Vec<String> = options.layers.iter().flatten().map(|l| l.to_lowercase()).collect();
    let found = layers(&features);
    if named.is_empty() {
        let message = text::GROUND_LAYERS.with("layers", listed(&found));
        return Err(notes.refuse("survey::layers-not-named", message, text::DO_NAME_LAYERS));
    }
    let missing: Vec<&str> = (options.layers.iter().flatten().map(String::as_str))
        .filter(|l| !found.keys().any(|f| f.to_lowercase() == l.to_lowercase()))
        .collect();
    if !missing.is_empty() {
        let message = text::LAYERS_MISSING.with("missing", missing.join(", ")).with("layers", listed(&found));
        return Err(notes.refuse("survey::layers-missing", message, text::DO_NAME_LAYERS));
    }
    let mut ground = DrawnGround::default();
    let mut counted =
        Counted { with_height: 0, zero: 0, implausible: 0, min: DVec3::INFINITY, max: DVec3::NEG_INFINITY };
    for feature in features.iter().filter(|f| named.contains(&f.layer.to_lowercase())) {
        take(feature, options, &mut ground, &mut counted);
    }
    if counted.with_height == counted.implausible {
        let message = text::LAYERS_FLAT.with("layers", listed(&found));
        return Err(notes.refuse("survey::no-heights", message, text::DO_NAME_LAYERS));
    }
    if counted.implausible > 0 {
        let message = text::HEIGHTS_IMPLAUSIBLE.with("count", counted.implausible);
        notes.warn("survey::implausible-heights", message, text::DO_CHECK_HEIGHTS);
    }
    // In most drawings a height of exactly 0 is one that nobody gave.
    if counted.zero > 0 && counted.zero < counted.with_height {
        let message = text::HEIGHTS_ZERO.with("count", counted.zero);
        notes.warn("survey::heights-zero", message, text::DO_CHECK_HEIGHTS);
    }
    ground.points.sort_by(|a, b| a.x.total_cmp(&b.x).then(a.y.total_cmp(&b.y)).then(a.z.total_cmp(&b.z)));
    ground.points.dedup();
    let facts = Facts {
        kind: FileKind::Dxf,
        points: counted.with_height as u64,
        ground_points: ground.points.len() as u64,
        min: counted.min.to_array(),
        max: counted.max.to_array(),
        units,
        crs: plan.crs,
        unknown_cells: 0,
        cell: None,
        classes: BTreeMap::new(),
        withheld: 0,
    };
    if ground.points.is_empty() {
        crate::cloud::refuse_empty_window(&ground.points, &facts, notes)?;
    }
    Ok((ground, facts))
}

struct Counted {
    with_height: usize,
    zero: usize,
    implausible: usize,
    min: DVec3,
    max: DVec3,
}

fn take(feature: &Feature, options: &GroundOptions, ground: &mut DrawnGround, counted: &mut Counted) {
    let mut in_space = |points: &[PlanPoint]| -> Option<Vec<DVec3>> {
        let mut out = Vec::with_capacity(points.len());
        for p in points {
            let Some(height) = p.height else { continue };
            counted.with_height += 1;
            counted.zero += usize::from(height == 0.0);
            if is_plausible(height) {
                out.push(p.at.extend(height));
                counted.min = counted.min.min(p.at.extend(height));
                counted.max = counted.max.max(p.at.extend(height));
            } else {
                counted.implausible += 1;
            }
        }
        let kept = options.window.map(|w| w.grown(options.longest_edge.unwrap_or(LONGEST_EDGE_LEVELS)));
        // A line or face that reaches into the window is kept whole.
        let inside = kept.is_none_or(|w| out.iter().any(|p| w.contains(p.truncate())));
        (inside && !out.is_empty() && out.len() == points.len()).then_some(out)
    };
    match &feature.shape {
        Shape::Point(p) => {
            let spot: Vec<DVec3> = in_space(&[*p]).unwrap_or_default();
            ground.spots += spot.len();
            ground.points.extend(spot);
        }
        Shape::Line(points) => {
            if let Some(line) = in_space(points) {
                ground.points.extend(&line);
                ground.breaklines.push(line);
            }
        }
        Shape::Area { outer, holes } => {
            for ring in std::iter::once(outer).chain(holes) {
                if let Some(mut line) = in_space(ring) {
                    ground.points.extend(&line);
                    line.push(line[0]);
                    ground.breaklines.push(line);
                }
            }
        }
        Shape::Face(points) => {
            if let Some(face) = in_space(points) {
                ground.points.extend(&face);
                ground.faces.push(face);
            }
        }
        // A height written beside a point is not read: the words may be anything.
        Shape::Text { .. } => {}
    }
}

/// Number of shapes, lowest and highest height.
type OneLayer = (usize, Option<(f64, f64)>);
type Layers<'a> = BTreeMap<&'a str, OneLayer>;

fn layers(features: &[Feature]) -> Layers<'_> {
    let mut found: Layers<'_> = BTreeMap::new();
    for feature in features {
        let (count, heights) = found.entry(&feature.layer).or_default();
        *count += 1;
        if matches!(feature.shape, Shape::Text { .. }) {
            continue;
        }
        for h in feature.shape.points().filter_map(|p| p.height) {
            let (low, high) = heights.unwrap_or((h, h));
            *heights = Some((low.min(h), high.max(h)));
        }
    }
    found
}

/// "GROUND 120 (98.200..101.450 m), TEXT 14 (-)", at most forty.
fn listed(layers: &Layers<'_>) -> String {
    let one = |(layer, (count, heights)): (&&str, &OneLayer)| match heights {
        Some((low, high)) => format!("{layer} {count} ({low:.3}..{high:.3} m)"),
        None => format!("{layer} {count} (-)"),
    };
    layers.iter().take(40).map(one).collect::<Vec<_>>().join(", ")
}
