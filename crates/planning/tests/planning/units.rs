//! The same job written in kilograms and metres, and in pounds, feet, inches and pounds per square inch:
//! the same answers, all through the reading of job and machine files.

use crate::workspace;
use planning::{Plan, plan_as_stated as plan};
use std::collections::BTreeMap;

/// Metric unit, the other one, and how many of the metric make one of it (NIST SP 811, appendix B, from
/// memory: the foot, the inch and the pound are exact).
const UNITS: [(&str, &str, f64); 7] = [
    ("kg", "lb", 0.453_592_37),
    ("m", "ft", 0.3048),
    ("mm", "in", 25.4),
    ("m²", "ft²", 0.3048 * 0.3048),
    ("m/s", "ft/s", 0.3048),
    ("kg/m³", "lb/ft³", 0.453_592_37 / (0.3048 * 0.3048 * 0.3048)),
    ("kPa", "psi", 6.894_757_293_168),
];

/// A quoted value in the other unit; `None` where it is no quantity of those.
fn converted(quoted: &str) -> Option<String> {
    let (number, unit) = quoted.split_once(' ')?;
    let (_, other, size) = UNITS.iter().find(|(metric, ..)| *metric == unit)?;
    Some(format!("{} {other}", number.parse::<f64>().ok()? / size))
}

/// A row of a chart's outline, `[[x, y], ..]`, in feet.
fn outline(line: &str) -> String {
    let (key, list) = line.split_once('=').unwrap();
    let (mut out, mut number) = (String::new(), String::new());
    for c in list.chars() {
        if c.is_ascii_digit() || c == '.' || c == '-' {
            number.push(c);
            continue;
        }
        if !number.is_empty() {
            out += &(number.parse::<f64>().unwrap() / 0.3048).to_string();
            number.clear();
        }
        out.push(c);
    }
    format!("{key}={out}")
}

/// A file of the demo with every quantity in the other units; how many were changed.
fn us(text: &str) -> (String, usize) {
    let mut changed = 0;
    let mut lines = Vec::new();
    for line in text.lines() {
        if line.trim_start().starts_with('#') {
            lines.push(line.to_owned());
            continue;
        }
        if line.starts_with("outline = [[") || line.starts_with("course = [[") {
            lines.push(outline(line));
            changed += 1;
            continue;
        }
        if line == "unit = \"m\"" {
            lines.push("unit = \"ft\"".to_owned());
            continue;
        }
        // Every other piece between quotes is quoted.
        let pieces = line.split('"').enumerate().map(|(i, piece)| match (i % 2 == 1).then(|| converted(piece)) {
            Some(Some(other)) => {
                changed += 1;
                other
            }
            _ => piece.to_owned(),
        });
        lines.push(pieces.collect::<Vec<_>>().join("\""));
    }
    (lines.join("\n"), changed)
}

fn planned(units: impl Fn(&str) -> String) -> Plan {
    let mut folder: BTreeMap<String, Vec<u8>> = BTreeMap::new();
    for file in ["job.toml", "machines/demo-7.toml", "machines/demo-14.toml"] {
        let text = String::from_utf8(workspace::read(&format!("examples/demo-job/{file}"))).unwrap();
        folder.insert(file.to_owned(), units(&text).into_bytes());
    }
    folder.insert("survey/levels.csv".into(), workspace::read("examples/demo-job/survey/levels.csv"));
    match jobfile::read_job(&folder) {
        Ok((job, _)) => plan(&job),
        Err(faults) => panic!("{:#?}", faults.list),
    }
}

#[test]
fn pounds_and_feet_give_the_same_answers_as_kilograms_and_metres() {
    let machine = String::from_utf8(workspace::read("examples/demo-job/machines/demo-14.toml")).unwrap();
    assert!(us(&machine).1 > 100, "nearly every value was written anew");
    assert!(us("a = [\"1 kg\", \"2.54 mm\"]").0.starts_with("a = [\"2.2046"));
    assert_eq!(us("reach = \"3.048 m\"\nangle = \"5°\"").0, "reach = \"10 ft\"\nangle = \"5°\"");

    let (metric, other) = (planned(str::to_owned), planned(|text| us(text).0));
    assert_eq!(metric.verdict, other.verdict);
    assert_eq!(metric.lifts.len(), other.lifts.len());
    for (a, b) in metric.lifts.iter().zip(&other.lifts) {
        assert_eq!((a.verdict, a.findings.len()), (b.verdict, b.findings.len()), "lift {}", a.id);
        for (f, g) in a.findings.iter().zip(&b.findings) {
            assert_eq!((&f.check, f.status, &f.message.id), (&g.check, g.status, &g.message.id), "lift {}", a.id);
            for (x, y) in [(f.demand, g.demand), (f.limit, g.limit)] {
                let (x, y) = (x.map_or(0.0, |q| q.si), y.map_or(0.0, |q| q.si));
                // Load factors on tyres are searched for within 0.01 %.
                let slack = if f.check == "load-factor" { 1e-4 } else { 1e-9 };
                assert!((x - y).abs() <= slack * x.abs().max(1e-6), "lift {}, {}: {x} {y}", a.id, f.check);
            }
        }
    }
}
