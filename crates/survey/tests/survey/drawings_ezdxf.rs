//! Drawings against ezdxf and shapely: `validation/dxf/plans.py` wrote the numbers and, with ezdxf,
//! the made drawings that hold every entity.

use crate::reference::{bytes, numbers, present};
use geometry::DVec2;
use std::collections::BTreeMap;
use std::path::PathBuf;
use survey::{GroundOptions, LengthUnit, PlanPoint, PlanReading, Shape, read_plan};

fn folder() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../../validation/dxf")
}

fn expected() -> serde_json::Value {
    serde_json::from_slice(&std::fs::read(folder().join("plans.json")).unwrap()).unwrap()
}

pub(crate) fn made(name: &str) -> Vec<u8> {
    std::fs::read(folder().join(name)).unwrap()
}

fn ring_area(ring: &[PlanPoint]) -> f64 {
    let corner = |i: usize| ring[i % ring.len()].at - ring[0].at;
    (0..ring.len()).map(|i| corner(i).perp_dot(corner(i + 1))).sum::<f64>().abs() / 2.0
}

fn way(points: &[PlanPoint], closed: bool) -> f64 {
    let open: f64 = points.windows(2).map(|w| (w[1].at - w[0].at).length()).sum();
    if closed { open + (points[0].at - points[points.len() - 1].at).length() } else { open }
}

/// Sums of a reading: areas and their perimeters by layer, length of everything, counts.
#[derive(Default)]
pub(crate) struct Sums {
    pub(crate) areas: BTreeMap<String, f64>,
    perimeter: f64,
    length: f64,
    points: u64,
    faces: u64,
    pub(crate) min: DVec2,
    pub(crate) max: DVec2,
    heights: (f64, f64),
}

pub(crate) fn sums(reading: &PlanReading) -> Sums {
    let mut s = Sums { min: DVec2::INFINITY, max: DVec2::NEG_INFINITY, ..Sums::default() };
    for feature in &reading.features {
        match &feature.shape {
            Shape::Text { .. } => continue,
            Shape::Point(_) => s.points += 1,
            Shape::Face(_) => s.faces += 1,
            Shape::Line(points) => s.length += way(points, false),
            Shape::Area { outer, holes } => {
                let area = ring_area(outer) - holes.iter().map(|h| ring_area(h)).sum::<f64>();
                *s.areas.entry(feature.layer.clone()).or_default() += area;
                let round = way(outer, true) + holes.iter().map(|h| way(h, true)).sum::<f64>();
                s.perimeter += round;
                s.length += round;
            }
        }
        for p in feature.shape.points() {
            (s.min, s.max) = (s.min.min(p.at), s.max.max(p.at));
            let z = p.height.unwrap_or(0.0);
            s.heights = (s.heights.0.min(z), s.heights.1.max(z));
        }
    }
    s
}

/// Chords lie within a centimetre of their curve, and in the script within a millimetre.
const CHORD: f64 = 0.0101;
/// The script puts the ends of lines on a grid of a millimetre before it joins them.
const SNAP: f64 = 0.001;
/// Numbers that no curve has a part in: only the last digits differ.
const DIGITS: f64 = 1e-6;

fn check(name: &str, bytes: &[u8], row: &serde_json::Value) {
    let unit = LengthUnit::of_factor(row["unit"].as_f64().unwrap()).unwrap();
    let reading = read_plan(name, bytes, &GroundOptions { units: Some(unit), ..GroundOptions::default() }).unwrap();
    let s = sums(&reading);
    let curves = ["ARC", "CIRCLE", "ELLIPSE", "SPLINE", "INSERT"].iter().any(|k| row["types"].get(k).is_some());
    let near = if curves { CHORD } else { DIGITS };
    assert_eq!(s.points, row["points"].as_u64().unwrap(), "{name}: points");
    assert_eq!(s.faces, row["faces"].as_u64().unwrap(), "{name}: faces");
    for (got, key) in [(s.min, "min"), (s.max, "max")] {
        let want = numbers(&row[key]);
        assert!((got - DVec2::new(want[0], want[1])).abs().max_element() <= near, "{name}: {key} {got} {want:?}");
    }
    let want = row["length"].as_f64().unwrap();
    // A chord within d of an arc of radius r is shorter by less than 4d/3r of its length.
    let shorter = if curves { 0.003 } else { 1e-9 };
    assert!((s.length - want).abs() <= shorter * want, "{name}: length {} {want}", s.length);
    let rings = row["rings"].as_f64().unwrap();
    let areas = row["areas"].as_object().unwrap();
    let total: f64 = areas.values().map(|v| v.as_f64().unwrap()).sum::<f64>() + rings;
    let got: f64 = s.areas.values().sum();
    let snapped = if rings > 0.0 { near.max(SNAP) } else { near };
    assert!((got - total).abs() <= snapped * s.perimeter.max(1.0), "{name}: area {got} {total}");
    if rings == 0.0 {
        for (layer, want) in areas {
            let (got, want) = (s.areas[layer], want.as_f64().unwrap());
            assert!((got - want).abs() <= near * s.perimeter.max(1.0), "{name} {layer}: area {got} {want}");
        }
    }
    let heights = numbers(&row["heights"]);
    assert!((s.heights.0 - heights[0]).abs() <= near && (s.heights.1 - heights[1]).abs() <= near, "{name}: heights");
}

#[test]
fn val_dxf_ezdxf_made_drawings() {
    for name in ["made_r2000.dxf", "made_r12.dxf", "made_binary.dxf"] {
        check(name, &made(name), &expected()[name]);
    }
}

#[test]
fn val_dxf_ezdxf_reference_drawings() {
    if !present() {
        return;
    }
    let expected = expected();
    let rows: Vec<_> = expected.as_object().unwrap().iter().filter(|(name, _)| name.starts_with("plans/")).collect();
    assert_eq!(rows.len(), 11, "a drawing went missing");
    for (name, row) in rows {
        check(name, &bytes(name), row);
    }
}
