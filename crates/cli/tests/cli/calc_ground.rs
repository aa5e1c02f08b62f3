//! `calc bearing` and `calc mat` through the program.

use crate::support::{root, run, run_in};

fn example(name: &str) -> String {
    run(&["calc", name, "--example"]).out
}

fn answer(name: &str, input: &str) -> (i32, serde_json::Value) {
    let said = run_in(&root(), &["calc", name, "--format", "json"], Some(input));
    assert!([0, 3].contains(&said.code), "{}", said.err);
    (said.code, serde_json::from_str(&said.out).unwrap())
}

fn number(value: &serde_json::Value, key: &str) -> f64 {
    value[key].as_f64().unwrap()
}

#[test]
fn bearing_says_what_the_ground_carries_and_a_heavier_force_is_no_success() {
    let input = example("bearing");
    let (code, light) = answer("bearing", &input.replace("\"45 kN\"", "\"5 kN\"").replace("\"30 kN\"", "\"5 kN\""));
    assert_eq!((code, light["carries"].as_bool()), (0, Some(true)), "{light}");
    let (code, heavy) = answer("bearing", &input.replace("\"45 kN\"", "\"300 kN\""));
    assert_eq!((code, heavy["carries"].as_bool()), (3, Some(false)));
    // The steps end in the force that is compared.
    let last = heavy["working"]["steps"].as_array().unwrap().last().unwrap();
    assert_eq!(last["result"][1]["si"], heavy["resistance_n"]);
    assert!((number(&heavy, "used") - 330e3 / number(&heavy, "resistance_n")).abs() < 1e-9);
}

#[test]
fn rain_and_unknown_water_never_carry_more() {
    let dry = example("bearing");
    let carries = |input: &str| number(&answer("bearing", input).1, "resistance_n");
    let wet = dry.replace("\"as stated\"", "\"thawing\"");
    let unknown = dry.lines().filter(|l| !l.starts_with("water_depth")).collect::<Vec<_>>().join("\n");
    assert!(carries(&wet) <= carries(&dry) && carries(&unknown) <= carries(&dry));
    let frozen = run_in(&root(), &["calc", "bearing"], Some(&dry.replace("\"as stated\"", "\"measured frozen\"")));
    assert_eq!(frozen.code, 1);
    assert!(frozen.err.contains("that counts in this state of the ground"), "{}", frozen.err);
}

#[test]
fn a_tyre_is_asked_by_its_patch_and_every_factor_set_answers() {
    let tyre = example("bearing")
        .replace("pad_width = \"0.60 m\"", "tyre_pressure = \"4.5 bar\"")
        .replace("pad_length = \"0.60 m\"", "tyre_width = \"0.40 m\"");
    let (code, one) = answer("bearing", &tyre);
    assert_eq!(code, 3, "450 kPa on such ground: {one}");
    for set in ["DA1", "DA2", "DA3"] {
        let input = tyre.replace("factors = \"one\"", &format!("factors = \"{set}\"")).replace("factor = \"2.0\"", "");
        assert!(number(&answer("bearing", &input).1, "used") > 1.0, "{set}");
    }
}

#[test]
fn bearing_says_all_faults_at_once_each_with_its_layer() {
    let input = example("bearing")
        .replace("permanent = \"45 kN\"", "permanent = \"-1 kN\"")
        .replacen("unit_weight = \"19 kN/m³\"", "unit_weight = \"1800 N/m³\"", 1)
        .replacen("friction_angle = \"25°\"", "friction_angle = \"60°\"", 1)
        .replace("cohesion = \"3 kPa\"", "cohesion = \"-3 kPa\"")
        .replace("water_depth = \"1.2 m\"", "water_depth = \"-1 m\"");
    let said = run_in(&root(), &["calc", "bearing"], Some(&input));
    assert_eq!(said.code, 1);
    for word in ["permanent", "1800", "60", "cohesion", "water", "kg/m³"] {
        assert!(said.err.contains(word), "{word}:\n{}", said.err);
    }
    let shallow = example("bearing").replace("thickness = \"5 m\"", "thickness = \"0.3 m\"");
    let said = run_in(&root(), &["calc", "bearing"], Some(&shallow));
    assert_eq!(said.code, 1);
    assert!(said.err.contains("0.80"), "how deep it is known: {}", said.err);
}

#[test]
fn a_mat_is_judged_and_the_smallest_found() {
    let input = example("mat");
    let (_, given) = answer("mat", &input);
    assert!(number(&given, "pressure_pa") > 0.0 && given["works_m"][1] == 0.4, "planks do not spread across: {given}");
    let sized = |line: &&str| !line.starts_with("mat_a") && !line.starts_with("off_");
    let search = input.lines().filter(sized).collect::<Vec<_>>().join("\n");
    let steel = search
        .replace("material = \"timber\"", "material = \"steel\"\nyield_strength = \"355 MPa\"")
        .replace("class = \"D40\"", "")
        .replace("thickness = \"0.15 m\"", "thickness = \"0.06 m\"");
    let (code, found) = answer("mat", &steel);
    assert_eq!((code, found["carries"].as_bool()), (0, Some(true)), "{found}");
    assert!(number(&found, "pressure_pa") <= number(&found, "carries_pa"));
    let none = run_in(&root(), &["calc", "mat"], Some(&steel.replace("\"45 kN\"", "\"4 MN\"")));
    assert_eq!(none.code, 1);
    assert!(none.err.contains("No square mat"), "{}", none.err);
}

#[test]
fn both_say_it_in_spanish_and_us_units() {
    for (name, word) in [("bearing", "terreno"), ("mat", "placa de apoyo")] {
        let said = run_in(&root(), &["calc", name, "--lang", "es"], Some(&example(name)));
        assert!([0, 3].contains(&said.code), "{}", said.err);
        assert!(said.out.contains(word) && !said.out.contains('⟨'), "{}", said.out);
        let us = run_in(&root(), &["calc", name, "--units", "us"], Some(&example(name)));
        assert!(us.out.contains("ft") && !us.out.contains("kPa"), "{}", us.out);
    }
}
