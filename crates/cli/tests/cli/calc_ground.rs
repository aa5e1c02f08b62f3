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
    let wet = dry.replace("\"as-stated\"", "\"thawing\"");
    let unknown = dry.replace("water = \"1.2 m\"", "water = \"unknown\"");
    assert!(carries(&wet) <= carries(&dry) && carries(&unknown) <= carries(&dry));
    let frozen = run_in(&root(), &["calc", "bearing"], Some(&dry.replace("\"as-stated\"", "\"measured-frozen\"")));
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
        .replacen("friction = \"25°\"", "friction = \"60°\"", 1)
        .replace("cohesion = \"3 kPa\"", "cohesion = \"-3 kPa\"")
        .replace("water = \"1.2 m\"", "water = \"-1 m\"");
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

/// The example with another source of strength in its first layer.
fn tested(strength: &str) -> String {
    example("bearing").replacen(
        "undrained_strength = \"60 kPa\"\ncohesion = \"3 kPa\"\nfriction = \"28°\"",
        strength,
        1,
    )
}

#[test]
fn strengths_from_tests_count_by_their_low_end_and_show_their_steps() {
    for (strength, formula, low) in [
        ("cbr = \"4 %\"", "c_u = k·CBR", 60e3),
        ("vane = \"90 kPa\"\nplasticity = \"100 %\"", "c_u = 0.7·μ·s_v", 0.7 * 0.62 * 90e3),
        ("cone_index = \"900 kPa\"", "c_u = CI / 15", 60e3),
        (
            "plate = { diameter = \"0.45 m\", pressure = \"300 kPa\", settlement = \"6 mm\" }",
            "c_u = 0.85·q",
            0.85 * 300e3 / (1.2 * (core::f64::consts::PI + 2.0)),
        ),
    ] {
        let (_, found) = answer("bearing", &tested(strength));
        let steps = found["working"]["steps"].as_array().unwrap();
        let step = steps.iter().find(|s| s["formula"].as_str().unwrap().starts_with(formula)).unwrap();
        let c_u = step["result"][1]["si"].as_f64().unwrap();
        assert!((c_u - low).abs() < 1e-6 * low, "{strength}: {c_u}");
        // The same ground with that strength stated carries the same.
        let (_, stated) = answer("bearing", &tested(&format!("undrained_strength = \"{c_u} Pa\"")));
        let (a, b) = (number(&found, "resistance_n"), number(&stated, "resistance_n"));
        assert!((a - b).abs() < 1e-9 * b, "{strength}: {a} {b}");
    }
    let (_, found) = answer("bearing", &tested("penetration_per_blow = \"30 mm\""));
    let formulas = found["working"].to_string();
    assert!(formulas.contains("292/x^1.12") && formulas.contains("k·CBR"), "both correlations: {formulas}");
}

#[test]
fn a_test_that_says_nothing_of_the_layer_is_refused_never_ignored() {
    for (strength, expected) in [
        ("plasticity = \"30 %\"\nfriction = \"28°\"", "plasticity counts only beside vane"),
        ("cohesion = \"3 kPa\"\nundrained_strength = \"60 kPa\"", "cohesion counts only beside friction"),
        ("cbr = \"4 %\"\nvane = \"90 kPa\"", "only one of cbr and vane"),
        ("cbr = \"30 %\"", "outside what this method was made for"),
        ("plate = { diameter = \"0.20 m\", pressure = \"300 kPa\", settlement = \"6 mm\" }", "twice its diameter"),
        ("plate = { diameter = \"0.45 m\", pressure = \"300 kPa\" }", "settlement"),
        ("friction_angle = \"28°\"", "friction"),
    ] {
        let said = run_in(&root(), &["calc", "bearing"], Some(&tested(strength)));
        assert_eq!(said.code, 1, "{strength}: {}", said.out);
        assert!(said.err.contains(expected), "{strength}: {}", said.err);
    }
    let alone = example("bearing").replacen("modulus = \"15 MPa\"           # for settlement only\n", "", 1);
    let said = run_in(&root(), &["calc", "bearing"], Some(&alone));
    assert!(said.code == 1 && said.err.contains("poisson counts only beside modulus"), "{}", said.err);
}
