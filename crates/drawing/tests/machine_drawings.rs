//! Drawings of a machine: to scale, every dimension named, no text over another.
#![allow(clippy::unwrap_used, clippy::expect_used, reason = "tests")]

use drawing::{Style, machine_chart, machine_front, machine_side};
use machine::Machine;
use quantity::UnitSystem;
use roxmltree::{Document, Node};
use std::path::Path;
use wording::{Language, Wording};

/// Every machine of the project.
fn machines() -> Vec<(String, Machine)> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("../..");
    let mut out = Vec::new();
    for folder in ["examples/machines", "examples/demo-job/machines", "validation/machines"] {
        let mut files: Vec<_> = std::fs::read_dir(root.join(folder)).unwrap().map(|e| e.unwrap().path()).collect();
        files.sort();
        for file in files.into_iter().filter(|f| f.extension().is_some_and(|e| e == "toml")) {
            let name = file.display().to_string();
            let (machine, _) = jobfile::read_machine(&name, &std::fs::read(&file).unwrap()).unwrap();
            out.push((name, machine));
        }
    }
    assert!(out.len() >= 8, "{}", out.len());
    out
}

fn wordings() -> [Wording; 3] {
    [
        Wording::new(Language::English, UnitSystem::Si),
        Wording::new(Language::English, UnitSystem::Us),
        Wording::new(Language::Spanish, UnitSystem::Us),
    ]
}

fn number(node: Node<'_, '_>, name: &str) -> f64 {
    node.attribute(name).unwrap().parse().unwrap()
}

fn part<'a>(doc: &'a Document<'_>, name: &str) -> Node<'a, 'a> {
    doc.descendants().find(|n| n.attribute("data-part") == Some(name)).unwrap_or_else(|| panic!("no {name}"))
}

/// Boxes of the texts under a node: left, top, right, bottom; a little narrow, so that only true overlaps count.
fn boxes(node: Node<'_, '_>) -> Vec<(String, [f64; 4])> {
    let texts = node.descendants().filter(|n| n.tag_name().name() == "text");
    texts
        .map(|t| {
            let text = t.text().unwrap_or_default().to_owned();
            let (x, y, size) = (number(t, "x"), number(t, "y"), number(t, "font-size"));
            let w = text.chars().count() as f64 * size * 0.44;
            let left = match t.attribute("text-anchor") {
                Some("middle") => x - w / 2.0,
                Some("end") => x - w,
                _ => x,
            };
            (text, [left, y - size * 0.75, left + w, y])
        })
        .collect()
}

#[test]
fn every_view_is_to_scale_and_no_text_meets_another() {
    for (name, machine) in machines() {
        for wording in wordings() {
            for style in [Style::paper(960.0), Style::screen(360.0), Style::screen(700.0)] {
                for (view, svg) in [
                    ("side", machine_side(&machine, &wording, &style)),
                    ("front", machine_front(&machine, &wording, &style)),
                ] {
                    let label = format!("{name} {view} {}", style.width_px);
                    let doc = Document::parse(&svg).unwrap_or_else(|e| panic!("{label}: {e}"));
                    assert!(!svg.contains("NaN") && !svg.contains("inf\""), "{label}");
                    let root = doc.root_element();
                    let (w, h) = (number(root, "width"), number(root, "height"));
                    let texts = boxes(root);
                    for (i, (text, a)) in texts.iter().enumerate() {
                        assert!(a[0] >= -1.0 && a[2] <= w + 1.0 && a[1] >= -1.0 && a[3] <= h, "{label}: {text:?} out");
                        for (other, b) in &texts[..i] {
                            let over = a[0] < b[2] && b[0] < a[2] && a[1] < b[3] && b[1] < a[3];
                            assert!(!over, "{label}: {text:?} over {other:?}");
                        }
                    }
                    dimensions_are_named(&doc, &label);
                }
            }
        }
    }
}

/// Each dimension's text stands with its name in the key.
fn dimensions_are_named(doc: &Document<'_>, label: &str) {
    let dimensions = boxes(part(doc, "dimensions"));
    let key: Vec<String> = boxes(part(doc, "key")).into_iter().map(|(text, _)| text).collect();
    assert!(dimensions.len() >= 8, "{label}: {dimensions:?}");
    for (text, _) in &dimensions {
        let (letter, value) = text.split_once(' ').unwrap();
        let named = key.iter().any(|row| row.starts_with(&format!("{letter} ")));
        let valued = key.iter().any(|row| row.ends_with(value));
        assert!(named && valued, "{label}: {text:?} is not in {key:?}");
    }
}

#[test]
fn the_wheelbase_is_drawn_at_its_length() {
    for (name, machine) in machines() {
        let svg = machine_side(&machine, &wordings()[0], &Style::paper(960.0));
        let doc = Document::parse(&svg).unwrap();
        let scale = number(doc.root_element(), "data-px-per-m");
        let lines = part(&doc, "dimensions").descendants().filter(|n| n.tag_name().name() == "line");
        // Its dimension is the first; its line follows the extension lines.
        let first = lines.map(|l| number(l, "x2") - number(l, "x1")).next().unwrap();
        let wheelbase = -machine.rear.axle.x;
        assert!((first.abs() - wheelbase * scale).abs() < 0.05, "{name}: {first} px for {wheelbase} m");
        let wheels: Vec<f64> = part(&doc, "machine")
            .descendants()
            .filter(|n| n.tag_name().name() == "circle" && n.attribute("r").unwrap().parse::<f64>().unwrap() > 20.0)
            .map(|n| number(n, "cx"))
            .collect();
        let apart = wheels.iter().copied().fold(f64::MIN, f64::max) - wheels.iter().copied().fold(f64::MAX, f64::min);
        assert!((apart - wheelbase * scale).abs() < 0.05, "{name}: wheels {apart} px apart");
    }
}

#[test]
fn a_chart_alone_shows_every_zone_and_no_load() {
    let mut drawn = 0;
    for (name, machine) in machines() {
        for chart in &machine.charts {
            let svg = machine_chart(&machine, chart, &wordings()[0], &Style::paper(900.0));
            let doc = Document::parse(&svg).unwrap_or_else(|e| panic!("{name}: {e}"));
            let zones = doc.descendants().filter(|n| n.attribute("data-part") == Some("zone")).count();
            assert_eq!(zones, chart.zones.len(), "{name}");
            assert!(!svg.contains("NaN") && !svg.contains("data-part=\"here\""), "{name}");
            let all: String = doc.descendants().filter_map(|n| n.text()).collect::<Vec<_>>().join(" ");
            for zone in &chart.zones {
                assert!(all.contains(&zone.name), "{name}: zone {} is not named", zone.name);
            }
            assert!(!all.contains("left") && !all.contains("carries this"), "{name}: speaks of a load");
            drawn += 1;
        }
    }
    assert!(drawn >= 10, "{drawn}");
}

#[test]
fn hostile_names_stay_text() {
    let (_, mut machine) = machines().remove(0);
    machine.name = "<script>alert(1)</script> & \"quotes\" \u{1} שלום ".repeat(6);
    machine.serial = Some("]]>&amp;<g onload='x'>".into());
    for a in &mut machine.attachments {
        a.name = "\"/><image href='http://example.invalid/x'/>".into();
    }
    let (w, style) = (wordings()[0], Style::screen(700.0));
    let mut all = vec![machine_side(&machine, &w, &style), machine_front(&machine, &w, &style)];
    all.extend(machine.charts.iter().map(|c| machine_chart(&machine, c, &w, &style)));
    for svg in all {
        let doc = Document::parse(&svg).unwrap();
        let names = ["svg", "title", "desc", "g", "rect", "polygon", "polyline", "line", "path", "circle", "text"];
        assert!(doc.descendants().filter(Node::is_element).all(|n| names.contains(&n.tag_name().name())));
    }
}
