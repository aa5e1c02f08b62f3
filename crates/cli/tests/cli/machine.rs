//! `counterpoise machine`: a machine file for people.

use crate::support::{Said, Scratch, root};
use serde_json::Value;
use std::path::Path;

const LARGE: &str = "examples/demo-job/machines/demo-14.toml";
const SMALL: &str = "examples/demo-job/machines/demo-7.toml";

/// What a command says, with ordinary spaces between numbers and units.
fn run_in(folder: &Path, args: &[&str], input: Option<&str>) -> Said {
    let said = crate::support::run_in(folder, args, input);
    Said { out: said.out.replace('\u{a0}', " "), ..said }
}

fn run(args: &[&str]) -> Said {
    run_in(&root(), args, None)
}

fn json(args: &[&str]) -> Value {
    let said = run(&[args, &["--format", "json"]].concat());
    serde_json::from_str(&said.out).unwrap_or_else(|e| panic!("{e}: {}{}", said.out, said.err))
}

fn narrow(text: &str) {
    let wide: Vec<_> = text.lines().filter(|l| l.chars().count() > 80).collect();
    assert!(wide.is_empty(), "wider than 80: {wide:#?}");
}

#[test]
fn explain_says_what_the_file_says_and_what_follows() {
    let said = run(&["machine", "explain", LARGE]);
    assert_eq!(said.code, 0, "{}", said.err);
    narrow(&said.out);
    for words in [
        "Heron 14",
        "counterweight, on the frame: 1,600 kg; −3.38 m, 0.00 m, 0.98 m",
        "What is fitted besides and changes mass or charts: none",
        "Wheelbase: middle of front axle to middle of rear axle: 3.00 m",
        "What locks the rear axle against oscillation: nothing locks it",
        "from the front face of the front tyres to the load centre",
        "from the\n      ground to the hook",
        "Zones: 12. Greatest capacity 4,000 kg: zone A",
        "Least capacity 500 kg: zone J",
        "The maker’s manual and the chart in the cab govern",
    ] {
        assert!(said.out.contains(words), "{words}:\n{}", said.out);
    }
    let explained = json(&["machine", "explain", LARGE]);
    // Both axles carry the whole machine: its bodies, boom, carriage and attachment.
    let empty = &explained["empty"][0];
    let kg = |key: &str| empty[key].as_f64().unwrap();
    assert!((kg("mass_kg") - 10_840.0).abs() < 1e-6);
    assert!((kg("front_axle_kg") + kg("rear_axle_kg") - kg("mass_kg")).abs() < 1e-6);
    assert_eq!(explained["charts"].as_array().unwrap().len(), 3);
}

#[test]
fn a_faulty_file_is_explained_as_far_as_it_reads_with_all_that_is_wrong() {
    let scratch = Scratch::with_demo("explain");
    let file = "job/machines/demo-14.toml";
    scratch.edit(file, "mass = \"4650 kg\"", "mass = \"4650\"");
    scratch.edit(file, "pin_height = \"0.72 m\"\n", "");
    scratch.edit(file, "lock = \"never\"", "lock = \"sometimes\"");
    let said = run_in(&scratch.0, &["machine", "explain", file], None);
    assert_eq!(said.code, 1, "{}", said.err);
    narrow(&said.out);
    for words in [
        "cannot be used yet",
        "frame, cab, engine, fuel, on the frame: ?; −1.98 m",
        "counterweight, on the frame: 1,600 kg",
        "Zones: 12. Greatest capacity 4,000 kg: zone A",
        "“4650” has no unit",
        "sometimes",
        "Must be there: 1.",
    ] {
        assert!(said.out.contains(words), "{words}:\n{}", said.out);
    }
}

#[test]
fn spanish_and_us_units_change_words_and_numbers() {
    let said = run(&["machine", "explain", SMALL, "--lang", "es", "--units", "us"]);
    assert_eq!(said.code, 0);
    narrow(&said.out);
    assert!(said.out.contains("lb") && !said.out.contains(" kg"), "{}", said.out);
    assert!(said.out.contains("TABLAS DE CARGAS") && said.out.contains("Distancia entre ejes"), "{}", said.out);
}

#[test]
fn an_empty_file_says_everything_in_one_go_and_where_to_find_it() {
    let scratch = Scratch::new("missing");
    std::fs::write(scratch.0.join("new.toml"), "format = \"counterpoise-machine/1\"\n").unwrap();
    let said = run_in(&scratch.0, &["machine", "missing", "new.toml"], None);
    assert_eq!(said.code, 1, "{}", said.err);
    narrow(&said.out);
    for words in ["rear_axle.pin_height", "weighbridge", "On the machine’s plate", "serial", "chart[1].zone[1].outline"]
    {
        assert!(said.out.contains(words), "{words}:\n{}", said.out);
    }
    let json = run_in(&scratch.0, &["machine", "missing", "new.toml", "--format", "json"], None);
    let missing: Value = serde_json::from_str(&json.out).unwrap();
    let values = missing["values"].as_array().unwrap();
    let of = |key: &str| values.iter().find(|v| v["key"] == key).unwrap_or_else(|| panic!("{key}: {values:#?}"));
    assert_eq!(of("rear_axle.wheelbase")["matters"], "mandatory");
    assert_eq!(of("chart")["matters"], "for-check");
    assert_eq!(of("serial")["matters"], "useful");
    assert!(values.iter().all(|v| v["what"].as_str().is_some_and(|w| !w.is_empty())), "{values:#?}");
    assert!(missing["checks"].as_array().unwrap().iter().all(|c| c["state"] != "enough"), "{missing}");
}

#[test]
fn what_is_missing_for_which_check() {
    let scratch = Scratch::with_demo("needs");
    let file = "job/machines/demo-7.toml";
    let missing = |scratch: &Scratch| -> (i32, Value) {
        let said = run_in(&scratch.0, &["machine", "missing", file, "--format", "json"], None);
        (said.code, serde_json::from_str(&said.out).unwrap())
    };
    let enough = |missing: &Value, check: &str| -> String {
        let checks = missing["checks"].as_array().unwrap();
        checks.iter().find(|c| c["check"] == check).unwrap()["state"].as_str().unwrap().to_owned()
    };
    let (code, whole) = missing(&scratch);
    assert_eq!(code, 0, "{whole}");
    assert_eq!(enough(&whole, "tilt"), "enough");
    scratch.edit(file, "\n[limits]\n", "\n[limits]\n# wind left out\n");
    let path = scratch.0.join(file);
    let text = std::fs::read_to_string(&path).unwrap();
    let rest: Vec<&str> = text.lines().filter(|l| !l.starts_with("wind =")).collect();
    std::fs::write(&path, rest.join("\n")).unwrap();
    let (code, no_wind) = missing(&scratch);
    assert_eq!((code, enough(&no_wind, "wind").as_str()), (0, "partly"));
    scratch.edit(file, "pin_height", "# pin_height");
    let (code, no_pin) = missing(&scratch);
    assert_eq!(code, 1);
    for (check, state) in [("tilt", "not-yet"), ("ground", "not-yet"), ("attachment", "enough"), ("wind", "partly")] {
        assert_eq!(enough(&no_pin, check), state, "{check}");
    }
}

#[test]
fn placeholders_of_the_starter_are_still_to_be_filled_in() {
    let scratch = Scratch::new("starter");
    assert_eq!(run_in(&scratch.0, &["new", "job"], None).code, 0);
    let said = run_in(&scratch.0, &["machine", "missing", "job/machines/my-machine.toml", "--format", "json"], None);
    assert_eq!(said.code, 1);
    let missing: Value = serde_json::from_str(&said.out).unwrap();
    let values = missing["values"].as_array().unwrap();
    let open = values.iter().filter(|v| v["matters"] == "fill-in").count();
    assert!(open >= 10, "{values:#?}");
    assert!(values.iter().all(|v| v["matters"] != "mandatory"), "{values:#?}");
}

#[test]
fn compare_says_which_lifts_more_and_where_charts_do_not_measure_alike() {
    let said = run(&["machine", "compare", LARGE, SMALL, "--at", "4 m,6 m", "--at", "2 m, 3 m"]);
    assert_eq!(said.code, 0, "{}", said.err);
    narrow(&said.out);
    for words in ["10,840 kg", "4.00 m out, 6.00 m up", "Not permitted", "WHICH LIFTS MORE", "not a go"] {
        assert!(said.out.contains(words), "{words}:\n{}", said.out);
    }
    // The same place by the quick look into each chart.
    let compared = json(&["machine", "compare", LARGE, SMALL, "--at", "2 m,3 m"]);
    let at = &compared["charts"][0]["at"][0];
    for (file, key) in [(LARGE, "a_kg"), (SMALL, "b_kg")] {
        let look = json(&[
            "check",
            file,
            "--attachment",
            "forks",
            "--support",
            "tyres",
            "--load",
            "1 kg",
            "--load-centre",
            "0.61 m",
            "--distance",
            "2 m",
            "--from",
            "front-tyre-face",
            "--to",
            "load-centre",
            "--height",
            "3 m",
        ]);
        assert_eq!(at[key], look["capacity_kg"], "{file}");
    }
    let scratch = Scratch::with_demo("compare");
    let edit = |from: &str, to: &str| scratch.edit("job/machines/demo-7.toml", from, to);
    edit("level_sideways = \"", "level_sideways = \"1");
    let (a, b) = ("job/machines/demo-14.toml", "job/machines/demo-7.toml");
    let said = run_in(&scratch.0, &["machine", "compare", a, b], None);
    assert!(said.out.contains("Not measured alike"), "{}{}", said.out, said.err);
}

#[test]
fn a_load_centre_of_ones_own_counts_beyond_the_rated_one() {
    let at = |centre: &str| -> (f64, f64) {
        let args = ["machine", "compare", LARGE, LARGE, "--at", "2.5 m,3 m", "--load-centre", centre];
        let compared = json(&args);
        let at = &compared["charts"][0]["at"][0];
        (at["a_kg"].as_f64().unwrap(), at["b_kg"].as_f64().unwrap())
    };
    let (near, far) = (at("0.61 m"), at("1.5 m"));
    assert_eq!(near.0, near.1, "a machine lifts as much as itself");
    assert!(far.0 < near.0);
}

#[test]
fn faults_of_both_files_and_of_the_arguments_come_at_once() {
    let scratch = Scratch::with_demo("both");
    scratch.edit("job/machines/demo-14.toml", "wheelbase", "wheel_base");
    scratch.edit("job/machines/demo-7.toml", "wheelbase", "whealbase");
    let (a, b) = ("job/machines/demo-14.toml", "job/machines/demo-7.toml");
    let said = run_in(&scratch.0, &["machine", "compare", a, b], None);
    assert_eq!(said.code, 1);
    assert!(said.err.contains("wheel_base") && said.err.contains("whealbase"), "{}", said.err);
    let said = run(&["machine", "compare", LARGE, SMALL, "--at", "4 m", "--at", "6,6", "--load-centre", "far"]);
    assert_eq!(said.code, 1);
    for words in ["“4 m”", "“6,6”", "--load-centre"] {
        assert!(said.err.contains(words), "{words}: {}", said.err);
    }
    assert_eq!(run(&["machine", "compare", LARGE]).code, 2);
    assert_eq!(run(&["machine", "explain", "nowhere.toml"]).code, 1);
}

fn names(folder: &Path) -> Vec<String> {
    let mut out: Vec<_> =
        std::fs::read_dir(folder).unwrap().map(|e| e.unwrap().file_name().to_string_lossy().into_owned()).collect();
    out.sort();
    out
}

#[test]
fn draw_writes_views_and_charts_together_or_nothing() {
    let scratch = Scratch::with_demo("draw");
    let draw = |out: &str| run_in(&scratch.0, &["machine", "draw", "job/machines/demo-14.toml", "--out", out], None);
    let said = draw("drawings");
    assert_eq!(said.code, 0, "{}", said.err);
    let all = [
        "front-view.svg",
        "load-chart-01-forks-tyres.svg",
        "load-chart-02-forks-stabilizers.svg",
        "load-chart-03-jib-tyres.svg",
        "side-view.svg",
    ];
    assert_eq!(names(&scratch.0.join("drawings")), all);
    std::fs::write(scratch.0.join("drawings/load-chart-09-old-tyres.svg"), "old").unwrap();
    assert_eq!(draw("drawings").code, 0);
    assert_eq!(names(&scratch.0.join("drawings")), all, "earlier drawings are replaced whole");
    assert_eq!(draw("job").code, 1, "a folder with other things is left alone");
    assert!(scratch.0.join("job/job.toml").is_file());
    assert_eq!(names(&scratch.0), ["drawings", "job"]);
    scratch.edit("job/machines/demo-14.toml", "wheelbase", "wheel_base");
    assert_eq!(draw("more").code, 1);
    assert!(!scratch.0.join("more").exists());
}

/// Every machine of the project can be explained and drawn, and its file is enough for every check it has a part in.
#[test]
fn every_machine_of_the_project() {
    let folders = ["examples/machines", "examples/demo-job/machines"];
    let mut count = 0;
    for folder in folders {
        for name in names(&root().join(folder)) {
            let file = format!("{folder}/{name}");
            let said = run(&["machine", "explain", &file]);
            assert_eq!(said.code, 0, "{file}: {}{}", said.out, said.err);
            narrow(&said.out);
            let missing = json(&["machine", "missing", &file]);
            for value in missing["values"].as_array().unwrap() {
                assert!(value["matters"] == "useful" || value["matters"] == "for-check", "{file}: {value}");
            }
            count += 1;
        }
    }
    assert!(count >= 7, "{count}");
}

#[test]
fn materials_are_listed_with_density_and_source() {
    let all = run(&["materials"]);
    assert_eq!(all.code, 0, "{}", all.err);
    narrow(&all.out);
    let listed: Value = json(&["materials"]);
    assert_eq!(listed.as_array().unwrap().len(), machine::materials().len());
    let some = run(&["materials", "concrete", "block"]);
    assert!(some.out.contains("dense-aggregate-concrete-block") && some.out.contains("kg/m³"), "{}", some.out);
    assert!(some.out.lines().count() < all.out.lines().count());
    let spanish = run(&["materials", "acero", "--lang", "es", "--units", "us"]);
    assert!(spanish.code == 0 && spanish.out.contains("steel") && spanish.out.contains("lb/ft³"), "{}", spanish.out);
    let none = run(&["materials", "unobtainium"]);
    assert_eq!(none.code, 1);
    assert!(none.err.contains("unobtainium") && none.err.contains("counterpoise materials"), "{}", none.err);
}
