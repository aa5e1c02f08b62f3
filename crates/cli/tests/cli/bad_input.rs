//! Broken inputs: every fault with its place and a hint, all at once; or an honest "cannot tell".

use crate::support::{Scratch, root, run_in};

#[test]
fn six_faults_in_two_files_come_together_with_lines_and_hints() {
    let scratch = Scratch::with_demo("six");
    scratch.edit("job/job.toml", "mass = \"860 kg\"", "mass = \"860\"");
    scratch.edit("job/job.toml", "voltage = { value = \"11 kV\"", "voltage = { value = \"11 kg\"");
    scratch.edit("job/job.toml", "load = \"beam\"", "load = \"beem\"");
    scratch.edit("job/job.toml", "planner =", "plannner =");
    scratch.edit("job/machines/demo-7.toml", "mass = \"330 kg\"", "mass = \"-330 kg\"");
    scratch.edit("job/machines/demo-7.toml", "depth = \"0.28 m\"", "depth = \"wide\"");
    let said = run_in(&scratch.0, &["plan", "job"], None);
    assert_eq!(said.code, 1);
    for word in ["job.toml:", "machines/demo-7.toml:", "860", "11 kg", "beem", "plannner", "planner", "-330 kg", "wide"]
    {
        assert!(said.err.contains(word), "{word}:\n{}", said.err);
    }
    assert!(said.err.matches("help:").count() >= 5, "hints:\n{}", said.err);
    let json = run_in(&scratch.0, &["plan", "job", "--format", "json"], None);
    let faults: evidence::Faults = serde_json::from_str(&json.out).unwrap();
    assert!(faults.list.len() >= 6 && faults.list.iter().all(|f| !f.place.file.is_empty()), "{faults:#?}");
    assert!(faults.list.iter().filter(|f| f.place.line.is_some()).count() >= 6);
}

#[test]
fn a_chart_with_a_hole_is_refused_with_its_place() {
    let scratch = Scratch::with_demo("hole");
    let path = scratch.0.join("job/machines/demo-7.toml");
    let text = std::fs::read_to_string(&path).unwrap();
    let head = text.split("[[chart.zone]]").next().unwrap();
    let zone = |name: &str, x0: f64, y0: f64, x1: f64, y1: f64| {
        format!(
            "[[chart.zone]]\nname = \"{name}\"\ncapacity = \"900 kg\"\noutline = [[{x0}, {y0}], [{x1}, {y0}], [{x1}, {y1}], [{x0}, {y1}]]\n"
        )
    };
    let ring = zone("A", 0.5, 0.0, 3.5, 1.0)
        + &zone("B", 0.5, 1.0, 1.5, 3.0)
        + &zone("C", 2.5, 1.0, 3.5, 3.0)
        + &zone("D", 0.5, 3.0, 3.5, 4.0);
    std::fs::write(&path, format!("{head}{ring}")).unwrap();
    let said = run_in(&scratch.0, &["plan", "job"], None);
    assert_eq!(said.code, 1);
    assert!(said.err.contains("jobfile::chart-hole") && said.err.contains("demo-7.toml"), "{}", said.err);
}

#[test]
fn nothing_known_under_a_wheel_is_cannot_tell() {
    let scratch = Scratch::with_demo("nodata");
    scratch.edit("job/job.toml", "stand = { at = [\"30.0 m\", \"28.9 m\"]", "stand = { at = [\"90.0 m\", \"28.9 m\"]");
    let said = run_in(&scratch.0, &["plan", "job", "--format", "json"], None);
    assert_eq!(said.code, 3, "{}", said.err);
    let plan: planning::Plan = serde_json::from_str(&said.out).unwrap();
    let level = plan.lifts[0].findings.iter().find(|f| f.check == "level").unwrap();
    assert_eq!(level.status, evidence::Status::CannotTell);
    assert_eq!(level.message.id, "level-no-ground");
}

/// Survey files that are broken, through the program; from `../shared/data` beside the project, left
/// out without it, unless CI is set.
#[test]
fn broken_survey_files_are_named_with_what_to_do() {
    let data = root().join("../shared/data");
    if !data.is_dir() {
        assert!(std::env::var_os("CI").is_none(), "reference data missing");
        eprintln!("left out: needs the reference data folder beside the project");
        return;
    }
    for (file, word) in [
        ("pointcloud/broken/derived_truncated_at_60pct.laz", "survey::"),
        ("pointcloud/broken/garbage_vlr_count.las", "survey::"),
        ("terrain/odd/corrupt.tif", "survey::"),
        ("plots/synthetic_zones_fax_1bit.tif", "survey::"),
        ("terrain/odd/rotated_geotransform.tif", "survey::"),
    ] {
        let scratch = Scratch::with_demo("survey");
        let name = std::path::Path::new(file).file_name().unwrap().to_str().unwrap();
        std::fs::copy(data.join(file), scratch.0.join("job/survey").join(name)).unwrap();
        scratch.edit("job/job.toml", "survey/levels.csv", &format!("survey/{name}"));
        let said = run_in(&scratch.0, &["plan", "job", "--out", "out"], None);
        assert_eq!(said.code, 1, "{file}: {}{}", said.out, said.err);
        assert!(said.err.contains(word) && said.err.contains(name), "{file}: {}", said.err);
        assert!(said.err.contains("help:"), "{file} says what to do: {}", said.err);
        assert!(!scratch.0.join("out").exists());
    }
}

#[test]
fn no_job_there_says_how_to_make_one() {
    let scratch = Scratch::new("nojob");
    let said = run_in(&scratch.0, &["plan", "nowhere"], None);
    assert_eq!(said.code, 1);
    assert!(said.err.contains("counterpoise new"), "{}", said.err);
}

/// A line in other coordinates than the stands must not pass as "far".
#[test]
fn a_line_in_other_coordinates_is_refused() {
    let scratch = Scratch::with_demo("farline");
    let path = scratch.0.join("job/job.toml");
    let text = std::fs::read_to_string(&path).unwrap();
    let moved = text.replace("\"2.5 m\", \"10", "\"5543702.5 m\", \"10");
    assert_ne!(moved, text);
    std::fs::write(&path, moved).unwrap();
    let said = run_in(&scratch.0, &["plan", "job"], None);
    assert_eq!(said.code, 1, "{}", said.out);
    assert!(said.err.contains("jobfile::line-far") && said.err.contains("Line along the road"), "{}", said.err);
}

/// What a machine file says that cannot be is refused with the fact that contradicts it.
#[test]
fn impossible_machines_are_refused_with_what_contradicts_them() {
    let file = std::fs::read_to_string(root().join("validation/machines/r1.toml")).unwrap();
    let ask = |pairs: &[(&str, &str)]| {
        let mut text = file.clone();
        for (from, to) in pairs {
            assert!(text.contains(from), "{from}");
            text = text.replacen(from, to, 1);
        }
        let scratch = Scratch::new("impossible");
        std::fs::write(scratch.0.join("m.toml"), text).unwrap();
        let said = run_in(&scratch.0, &["machine", "explain", "m.toml"], None);
        assert_eq!(said.code, 1, "{pairs:?}: {}", said.out);
        let all = format!("{} {}", said.out, said.err);
        all.split_whitespace().collect::<Vec<_>>().join(" ")
    };
    for mass in ["0 kg", "-8200 kg", "nan kg", "201 t", "inf kg"] {
        let error = ask(&[("mass = \"8200 kg\"", &format!("mass = \"{mass}\""))]);
        assert!(error.contains("mass"), "{mass}: {error}");
    }
    for (key, bad) in [("track = \"2.00 m\"", "track = \"0 m\""), ("spread = \"2.40 m\"", "spread = \"0 m\"")] {
        assert!(ask(&[(key, bad)]).contains(&bad[..5]), "{key}");
    }
    // A frame of 2,000 kg cannot carry the boom; the boom as carried, out by 2 m, tips a light one forward.
    let forward = ask(&[
        ("mass = \"8200 kg\"", "mass = \"1200 kg\""),
        ("carry_extension = \"0 m\"", "carry_extension = \"7 m\""),
    ]);
    assert!(forward.contains("the rear axle would lift") && forward.contains("ahead of the front axle"), "{forward}");
    // Its frame's centre behind the rear axle tips it back.
    let back = ask(&[
        ("centre = [\"-1.90 m\", \"0 m\", \"1.00 m\"]", "centre = [\"-4.20 m\", \"0 m\", \"1.00 m\"]"),
        ("carry_angle = \"5°\"", "carry_angle = \"70°\""),
    ]);
    assert!(back.contains("the front axle would lift") && back.contains("behind the rear axle"), "{back}");
}
