//! `calc fit`, `calc platform`, `machine reserve`.

use crate::support::{Said, Scratch, root, run, run_in};
use serde_json::Value;

fn example(name: &str) -> String {
    run(&["calc", name, "--example"]).out
}

fn calc(name: &str, input: &str) -> Said {
    run_in(&root(), &["calc", name], Some(input))
}

fn json(name: &str, input: &str) -> Value {
    let said = run_in(&root(), &["calc", name, "--format", "json"], Some(input));
    serde_json::from_str(&said.out).unwrap_or_else(|e| panic!("{e}: {}{}", said.out, said.err))
}

/// Load at which R1 tips at the example's place, by `calc stability`.
fn true_tipping_load() -> f64 {
    let input = example("stability").replace("60°", "30°").replace("\"3.00 m\"", "\"5.00 m\"");
    json("stability", &input)["level_tipping_load_kg"].as_f64().unwrap()
}

#[test]
fn the_example_bounds_the_machine_that_it_was_weighed_on() {
    let said = calc("fit", &example("fit"));
    assert_eq!(said.code, 0, "{}", said.err);
    for words in ["over the scaffold", "no less than", "Measure next", "weighbridge, boom in", "competent person"] {
        assert!(said.out.contains(words), "{words}:\n{}", said.out);
    }
    let result = json("fit", &example("fit"));
    let asked = &result["asked"][0];
    let (lower, upper) = (asked["lower_kg"].as_f64().unwrap(), asked["upper_kg"].as_f64().unwrap());
    let truth = true_tipping_load();
    assert!(lower < truth && truth < upper && upper - lower < 0.3 * truth, "{lower} {truth} {upper}");
    assert_eq!(result["residuals"].as_array().unwrap().len(), 5);
    // What it proposes narrows.
    assert!(asked["measure_next"][0]["leaves_kg"].as_f64().unwrap() < 0.3 * (upper - lower));
    let spanish = run_in(&root(), &["calc", "fit", "--lang", "es"], Some(&example("fit")));
    assert!(spanish.out.contains("no menos de") && spanish.out.contains("tabla de la cabina"), "{}", spanish.out);
}

#[test]
fn contradicting_weighings_are_refused_by_their_names() {
    let input = example("fit").replace("mass = \"12600 kg\"", "mass = \"13600 kg\"");
    let said = calc("fit", &input);
    assert_eq!(said.code, 1, "{}", said.out);
    let said_plainly: String = said.err.split_whitespace().collect::<Vec<_>>().join(" ");
    for words in ["contradict", "operating mass in the manual", "weighbridge"] {
        assert!(said_plainly.contains(words), "{words}:\n{}", said.err);
    }
    assert!(!said_plainly.contains("“plate on the forks"), "{}", said.err);
}

#[test]
fn faults_of_a_fit_are_said_all_at_once() {
    let input = example("fit")
        .replace("rear = \"5740 kg\"\nuncertainty = \"1 %\"", "rear = \"-5740 kg\"")
        .replace("boom_angle = \"30°\"", "boom_angle = \"95°\"")
        .replace("of = \"attachment\"", "of = \"forks\"")
        .replace("extension = \"6.00 m\"", "extention = \"6.00 m\"");
    let said = calc("fit", &input);
    assert_eq!(said.code, 1);
    for words in ["-5740", "uncertainty", "70.0°", "chassis", "extention"] {
        assert!(said.err.contains(words), "{words}:\n{}", said.err);
    }
    let empty = "machine = \"validation/machines/r1.toml\"\nattachment = \"forks\"\n[[ask]]\nboom_angle = \"0°\"\n\
                 extension = \"0 m\"\nsupport = \"tyres\"\nload_ahead = \"0.61 m\"\n";
    let said = calc("fit", empty);
    assert!(said.code == 1 && said.err.contains("nothing is stated"), "{}", said.err);
    let said = calc("fit", &example("fit").replace("[\"370 kg\", \"390 kg\"]", "[\"390 kg\", \"370 kg\"]"));
    assert!(said.code == 1 && said.err.contains("ends before it begins"), "{}", said.err);
}

#[test]
fn the_side_is_not_identifiable_until_heights_are_stated() {
    let asked = example("fit")
        .replace("# load = \"800 kg\" ", "load_up = \"0.5 m\"\nrear_axle = \"free\"\nload = \"800 kg\" #");
    let result = json("fit", &asked);
    assert_eq!(result["asked"][0]["not_identifiable"], serde_json::json!(["height", "sideways"]));
    assert!(result["asked"][0]["side_tilt_deg"].is_null());
    let said = calc("fit", &asked);
    assert!(said.code == 0 && said.out.contains("not identifiable"), "{}", said.out);
    let stated = asked.replace(
        "[[charted]]",
        "[[part]]\nof = \"chassis\"\nup = [\"0.9 m\", \"1.0 m\"]\nleft = [\"-0.02 m\", \"0.02 m\"]\n\
         [[part]]\nof = \"rear-axle\"\nmass = [\"950 kg\", \"1050 kg\"]\n[[charted]]",
    );
    let result = json("fit", &stated);
    let tilt = result["asked"][0]["side_tilt_deg"].as_array().unwrap_or_else(|| panic!("{result}"));
    let (least, most) = (tilt[0].as_f64().unwrap(), tilt[1].as_f64().unwrap());
    // The true machine, by `calc stability` in the direction of the test's tilting edge.
    let platform =
        example("platform").replace("60°", "30°").replace("\"3.00 m\"", "\"5.00 m\"").replace("1500 kg", "800 kg");
    let slope = json("platform", &platform)["worst_slope"].as_f64().unwrap();
    let truth = slope.atan().to_degrees();
    assert!(least < truth && truth < most, "{least} {truth} {most}");
}

/// A slope is the tangent of the tilt that `calc stability` gives in the same direction on rigid contacts, less
/// what R1 leans on its tyres.
#[test]
fn the_platform_agrees_with_the_onset() {
    let result = json("platform", &example("platform"));
    let ways = result["turned"].as_array().unwrap();
    assert_eq!(ways.len(), 4);
    for way in ways {
        let azimuth = way["azimuth_deg"].as_f64().unwrap();
        let input = example("stability")
            .replace("3000 kg", "1500 kg")
            .replace("rear_axle = \"locked\"", "rear_axle = \"free\"")
            .replace("descent = \"0°\"", &format!("descent = \"{azimuth}°\""));
        let onset = json("stability", &input)["tilt_at_onset_deg"].as_f64().unwrap();
        let slope = way["slope"].as_f64().unwrap();
        let lean = onset - slope.atan().to_degrees();
        assert!((0.0..6.0).contains(&lean), "{way} {onset}");
        assert!(result["worst_slope"].as_f64().unwrap() <= slope + 1e-12);
    }
    assert_eq!(result["reached"], true);
    let said = calc("platform", &example("platform"));
    assert!(said.code == 0 && said.out.contains("low confidence"), "{}", said.out);
    let heavy = calc(
        "platform",
        &example("platform").replace("1500 kg", "4300 kg").replace("load_left = \"0 m\"", "load_left = \"2 m\""),
    );
    assert!(heavy.code == 3 && heavy.out.contains("less than what test 3"), "{}{}", heavy.out, heavy.err);
    // A test made otherwise than it is made is no test.
    let low = example("platform").replace("60°", "5°").replace("\"3.00 m\"", "\"0 m\"");
    let bare = calc("platform", &low.replace("1500 kg", "0 kg"));
    assert!(bare.code == 1 && bare.err.contains("with a load") && bare.err.contains("above the carry"), "{}", bare.err);
    let laden = calc("platform", &example("platform").replace("\"3\"", "\"4\""));
    assert!(laden.code == 1 && laden.err.contains("without load"), "{}", laden.err);
}

#[test]
fn the_reserve_of_a_chart_is_said_and_the_impossible_is_flagged() {
    let file = "examples/machines/wren-6.toml";
    let said = run(&["machine", "reserve", file]);
    assert_eq!(said.code, 0, "{}", said.err);
    for words in ["Least ratio", "fore and aft", "sideways", "not judged", "in the cab govern"] {
        assert!(said.out.contains(words), "{words}:\n{}", said.out);
    }
    let json = run(&["machine", "reserve", file, "--margin", "1.33", "--cells", "25", "--format", "json"]);
    assert_eq!(json.code, 0, "{}", json.err);
    let result: Value = serde_json::from_str(&json.out).unwrap();
    let chart = &result["charts"][0];
    let cells = chart["cells"].as_array().unwrap();
    assert_eq!(cells.len(), 625);
    let ratios: Vec<f64> = cells.iter().filter_map(|c| c["ratio"].as_f64()).collect();
    assert!(ratios.len() > 200 && ratios.iter().all(|r| *r >= 1.33), "{}", ratios.len());
    let strict = run(&["machine", "reserve", file, "--margin", "2.5"]);
    assert!(strict.code == 3 && strict.out.contains("Less than 2.5"), "{}", strict.out);
    let none = run(&["machine", "reserve", file, "--support", "stabilizers"]);
    assert!(none.code == 1 && none.err.contains("forks (tyres)"), "{}", none.err);
    // A frame that weighs far less than the chart was made for.
    let scratch = Scratch::new("reserve");
    std::fs::copy(root().join(file), scratch.0.join("wren.toml")).unwrap();
    let text = std::fs::read_to_string(scratch.0.join("wren.toml")).unwrap();
    let low = text.find("[[body]]").unwrap();
    let from = low + text[low..].find("mass = \"").unwrap();
    let line = text[from..].lines().next().unwrap().to_owned();
    scratch.edit("wren.toml", &line, "mass = \"900 kg\"");
    let light = run_in(&scratch.0, &["machine", "reserve", "wren.toml"], None);
    assert!(light.code == 3 && light.out.contains("Impossible") || light.code == 1, "{}{}", light.out, light.err);
}
