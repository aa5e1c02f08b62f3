//! Looking for stands.

use crate::support::{Scratch, run, run_in};
use serde_json::Value;

fn json(args: &[&str]) -> Value {
    let mut all = args.to_vec();
    all.extend(["--format", "json"]);
    serde_json::from_str(&run(&all).out).unwrap()
}

/// Coarser than usual: a test asks for little.
const COARSE: [&str; 4] = ["--radius", "9 m", "--cell", "0.3 m"];

fn with<'a>(args: &[&'a str]) -> Vec<&'a str> {
    let mut all = vec!["stands", "examples/demo-job"];
    all.extend(args);
    all.extend(COARSE);
    all
}

#[test]
fn the_best_stands_are_printed_and_hold() {
    let said = run(&with(&["--lift", "1"]));
    assert_eq!(said.code, 0, "{}{}", said.out, said.err);
    for word in ["A stand passes on", "Best stands", "1. ", "GO", "May be off by", "Why not elsewhere", "Load chart"] {
        assert!(said.out.contains(word), "{word}:\n{}", said.out);
    }
    assert!(said.out.lines().all(|l| l.chars().count() <= 80), "80 columns:\n{}", said.out);
    let found = json(&with(&["--lift", "1"]));
    let lift = &found["lifts"][0];
    let areas: f64 = lift["why_not"].as_array().unwrap().iter().map(|w| w["area_m2"].as_f64().unwrap()).sum();
    let (all, passing) = (lift["area_m2"].as_f64().unwrap(), lift["passing_m2"].as_f64().unwrap());
    assert!(passing > 0.0 && (areas + passing - all).abs() < 1e-6, "every cell is counted: {areas} {passing} {all}");
    // Each of them asked for again as a place gives the same verdict.
    for best in lift["best"].as_array().unwrap() {
        let at = format!("{} m, {} m", best["east_m"], best["north_m"]);
        let heading = format!("{} deg", best["heading_deg"]);
        let again = json(&with(&["--lift", "1", "--at", &at, "--heading", &heading]));
        let there = &again["lifts"][0]["at"][0];
        assert_ne!(there["verdict"], "no-go");
        assert_eq!(there["by"], Value::Null);
    }
}

#[test]
fn a_place_that_is_refused_says_why_and_what_is_nearest() {
    let said = run(&with(&["--lift", "1", "--at", "30.0 m, 12.0 m"]));
    assert_eq!(said.code, 3, "{}", said.err);
    for word in ["Standing at", "NO-GO", "Nearest place that passes", "away"] {
        assert!(said.out.contains(word), "{word}:\n{}", said.out);
    }
    let found = json(&with(&["--lift", "1", "--at", "30.0 m, 12.0 m"]));
    let there = &found["lifts"][0]["at"][0];
    assert_eq!(there["by"], "reach");
    let near = &there["nearest"];
    let at = format!("{} m, {} m", near["east_m"], near["north_m"]);
    let heading = format!("{} deg", near["heading_deg"]);
    let again = json(&with(&["--lift", "1", "--at", &at, "--heading", &heading]));
    assert_ne!(again["lifts"][0]["at"][0]["verdict"], "no-go", "the nearest place passes");
    // Beyond the survey.
    let hole = json(&with(&["--lift", "1", "--at", "30.0 m, 200.0 m"]));
    assert_eq!(hole["lifts"][0]["at"][0]["by"], "survey");
}

#[test]
fn the_stated_stand_gives_what_the_plan_says_of_it() {
    let plan = json(&["plan", "examples/demo-job"]);
    for (i, verdict) in plan["lifts"].as_array().unwrap().iter().map(|l| &l["verdict"]).enumerate() {
        let lift = &plan["lifts"][i];
        let stand = &lift["stand"];
        let at = format!("{} m, {} m", stand["east_m"], stand["north_m"]);
        let heading = format!("{} deg", stand["heading_deg"]);
        let id = lift["id"].as_str().unwrap();
        let found = json(&[
            "stands",
            "examples/demo-job",
            "--lift",
            id,
            "--at",
            &at,
            "--heading",
            &heading,
            "--radius",
            "4 m",
            "--cell",
            "1 m",
        ]);
        let there = &found["lifts"][0]["at"][0]["verdict"];
        // A plan makes a stand that must be set out by tape a condition.
        assert_eq!(there == "no-go", verdict == "no-go", "lift {id}: {there} against {verdict}");
    }
}

#[test]
fn a_lift_that_passes_nowhere_says_so() {
    let scratch = Scratch::with_demo("wall");
    // A wall around the landing, higher than the boom.
    let wall = "[[thing]]\nid = \"wall\"\nname = \"Fire wall\"\nkind = \"wall\"\noutline = [[28.0, 30.0], [32.0, 30.0], \
                [32.0, 34.5], [28.0, 34.5]]\nunit = \"m\"\ntop = \"125 m\"\naccuracy = \"0.05 m\"\nsource = \"measured\"\n\n";
    scratch.edit("job/job.toml", "[[landing]]\nid = \"bay\"", &format!("{wall}[[landing]]\nid = \"bay\""));
    let args = ["stands", "job", "--lift", "1", "--at", "30.0 m, 28.9 m", "--radius", "9 m", "--cell", "0.5 m"];
    let said = run_in(&scratch.0, &args, None);
    assert_eq!(said.code, 3, "{}{}", said.out, said.err);
    for word in ["No stand passes", "Fire wall", "Nowhere that was looked at passes", "Obstacles"] {
        assert!(said.out.contains(word), "{word}:\n{}", said.out);
    }
}

#[test]
fn wrong_arguments_are_all_said_at_once() {
    let said = run(&[
        "stands",
        "examples/demo-job",
        "--lift",
        "zz",
        "--lift",
        "1",
        "--radius",
        "200 m",
        "--cell",
        "1 mm",
        "--at",
        "30",
        "--at",
        "1 m, 2 kg",
        "--heading",
        "north",
    ]);
    assert_eq!(said.code, 1);
    for word in ["“zz”", "1, 2, 3, 4, 5, 6, 7, 8, 9", "200 m", "1 mm", "“30”", "1 m, 2 kg", "north", "--cell"] {
        assert!(said.err.contains(word), "{word}:\n{}", said.err);
    }
    assert_eq!(run(&["stands", "examples/demo-job", "--heading", "3°"]).code, 2, "a heading of no place");
}

#[test]
fn spanish_and_us_units_change_no_answer() {
    let (en, es) = (
        run(&with(&["--lift", "5", "--format", "json"])),
        run(&with(&["--lift", "5", "--format", "json", "--lang", "es", "--units", "us"])),
    );
    assert_eq!(en.out, es.out);
    let text = run(&with(&["--lift", "5", "--lang", "es", "--units", "us"]));
    assert!(text.out.contains("Mejores emplazamientos") && text.out.contains("ft"), "{}", text.out);
}
