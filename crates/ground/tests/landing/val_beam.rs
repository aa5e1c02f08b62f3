//! Beams against two general-purpose packages and two textbooks.

use ground::beam::{Beam, BeamLoad, End, Span};
use serde_json::Value;

/// The packages differ from each other by up to 1.2e-6 of the load.
const SOLVED_ELSEWHERE: f64 = 5e-6;
/// PyCBA gives moments, shears and deflections at 20,000 places a member: what is missed between them.
const SAMPLED: f64 = 2e-4;

fn end(v: &Value, next: Span) -> End {
    match (v.as_str(), v.as_f64()) {
        (Some("clamped"), _) => End::Clamped,
        (Some("simple"), _) => End::Simple,
        (_, Some(length)) => End::Overhang(Span { length, stiffness: next.stiffness }),
        _ => panic!("{v}"),
    }
}

fn numbers(v: &Value) -> Vec<f64> {
    v.as_array().unwrap().iter().map(|n| n.as_f64().unwrap()).collect()
}

#[test]
fn val_beams_against_pycba_and_anastruct() {
    let path = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../../validation/ground/landing/beams.json");
    let cases: Vec<Value> = serde_json::from_str(&std::fs::read_to_string(path).unwrap()).unwrap();
    assert_eq!(cases.len(), 150, "a reference case went missing");
    for (i, case) in cases.iter().enumerate() {
        let spans: Vec<Span> = case["spans"]
            .as_array()
            .unwrap()
            .iter()
            .map(numbers)
            .map(|s| Span { length: s[0], stiffness: s[1] })
            .collect();
        let (first, last) = (spans[0], *spans.last().unwrap());
        let ends = &case["ends"];
        let beam = Beam::new(end(&ends[0], first), spans, end(&ends[1], last)).unwrap();
        let load = |l: &Value| {
            let n = |k: usize| l[k].as_f64().unwrap();
            match l[0].as_str().unwrap() {
                "point" => BeamLoad::Point { at: n(1), force: n(2) },
                _ => BeamLoad::Strip { from: n(1), to: n(2).min(beam.length()), intensity: n(3) },
            }
        };
        let loads: Vec<BeamLoad> = case["loads"].as_array().unwrap().iter().map(load).collect();
        let s = beam.solve(&loads).unwrap();
        let near = |what: &str, ours: f64, theirs: f64, allowed: f64| {
            assert!((ours - theirs).abs() <= allowed, "case {i}, {what}: ours {ours}, theirs {theirs}");
        };
        let reactions = numbers(&case["reactions"]);
        let size: f64 = reactions.iter().map(|r| r.abs()).sum();
        assert_eq!(reactions.len(), s.reactions.len(), "case {i}");
        for (ours, theirs) in s.reactions.iter().zip(&reactions) {
            near("reaction", ours.force, *theirs, SOLVED_ELSEWHERE * size);
        }
        let (low, high) = (case["hogging"].as_f64().unwrap(), case["sagging"].as_f64().unwrap());
        let moment = high.max(-low);
        for (name, ours) in [("left", s.reactions[0]), ("right", *s.reactions.last().unwrap())] {
            if let Some(theirs) = case["clamps"][name].as_f64() {
                near("clamp", ours.moment.abs(), theirs, SOLVED_ELSEWHERE * moment.max(size));
            }
        }
        near("sagging", s.sagging().value, high, SAMPLED * moment);
        near("hogging", s.hogging().value, low, SAMPLED * moment);
        near("shear", s.shear().value.abs(), case["shear"].as_f64().unwrap(), SAMPLED * size);
        let sags = numbers(&case["up_and_down"]);
        let most = sags[1].max(-sags[0]);
        near("sag", s.sag().value, -sags[0], SAMPLED * most);
        near("rise", s.rise().value, -sags[1], SAMPLED * most);
    }
}

#[test]
fn val_beam_under_three_points_levinson_4_4() {
    // 30 in between supports, loads after 6, 15 and 25 in.
    const INCH: f64 = 0.0254;
    let beam = Beam::equal(1, Span { length: 30.0 * INCH, stiffness: 1e6 }).unwrap();
    let points = [(6.0, 7000.0), (15.0, 1000.0), (25.0, 3000.0)];
    let loads = points.map(|(x, p)| BeamLoad::Point { at: x * INCH, force: p });
    let s = beam.solve(&loads).unwrap();
    assert!((s.reactions[0].force - 6600.0).abs() < 1e-6, "{s:?}");
    assert!((s.reactions[1].force - 4400.0).abs() < 1e-6, "{s:?}");
}

#[test]
fn val_cantilever_joist_sarkar_5_1() {
    // 100 × 200 mm timber, 3 m out, 5 kN/m³, 7 N/mm²: the load at the tip, to the digits printed.
    let out = Span { length: 3.0, stiffness: 6e5 };
    let beam = Beam::new(End::Clamped, vec![], End::Overhang(out)).unwrap();
    let own = BeamLoad::Strip { from: 0.0, to: 3.0, intensity: 5e3 * 0.1 * 0.2 };
    let s = beam.solve(&[own, BeamLoad::Point { at: 3.0, force: 1405.56 }]).unwrap();
    let stress = -s.hogging().value / (0.1 * 0.2 * 0.2 / 6.0);
    assert!((stress - 7e6).abs() < 7e6 * 1e-5, "{stress}");
    assert_eq!(s.hogging().at, 0.0);
}
