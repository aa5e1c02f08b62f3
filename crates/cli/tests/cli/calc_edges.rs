//! `calc stress`, `calc edge`, `calc buried` through the program.

use crate::support::{root, run, run_in};

fn example(name: &str) -> String {
    run(&["calc", name, "--example"]).out
}

fn answer(name: &str, input: &str) -> (i32, serde_json::Value) {
    let said = run_in(&root(), &["calc", name, "--format", "json"], Some(input));
    (said.code, serde_json::from_str(&said.out).unwrap_or_else(|_| panic!("{name}: {}", said.err)))
}

fn with(input: &str, pairs: &[(&str, &str)]) -> String {
    pairs.iter().fold(input.to_owned(), |text, (from, to)| {
        assert!(text.contains(from), "{from}");
        text.replace(from, to)
    })
}

#[test]
fn stress_of_one_contact_alone_is_the_worked_example() {
    // W13: 5 ft × 10 ft, 2000 lbf/ft² in all 100 kip (444.8 kN), 12.5 ft below the middle: 262.4 lbf/ft².
    let input = "at = [\"0 ft\", \"0 ft\"]\ndepth = \"12.5 ft\"\n[[contact]]\nat = [\"0 ft\", \"0 ft\"]\n\
                 size = [\"5 ft\", \"10 ft\"]\nforce = \"444.822 kN\"\n";
    let (code, json) = answer("stress", input);
    assert_eq!(code, 0);
    let psf = json["elastic_pa"].as_f64().unwrap() / 47.880_26;
    assert!((psf - 262.4).abs() < 0.1, "{psf}");
    assert_eq!(run_in(&root(), &["calc", "stress"], Some("depth = \"1 m\"\nat = [\"0 m\", \"0 m\"]\n")).code, 1);
}

#[test]
fn an_edge_is_kept_too_near_supported_or_not_told() {
    let edge = example("edge");
    let (code, kept) = answer("edge", &edge);
    assert_eq!((code, kept["told"].as_str()), (0, Some("kept")), "{kept}");
    assert_eq!(kept["by_line_m"], 3.0);
    assert!(kept["factor"].as_f64().unwrap() >= 1.3);
    assert!(kept["circle"]["slices"].as_array().unwrap().len() >= 20);
    let told = |pairs: &[(&str, &str)]| {
        let (code, json) = answer("edge", &with(&edge, pairs));
        (code, json["told"].as_str().unwrap().to_owned(), json)
    };
    let near = told(&[("stands = \"3.20 m\"", "stands = \"0.40 m\"")]);
    assert_eq!((near.0, near.1.as_str()), (3, "too-near"));
    let supported = told(&[("side = \"open\"", "side = \"supported\"")]);
    assert_eq!((supported.0, supported.1.as_str()), (3, "supported"));
    assert!(supported.2["support_n_m"].as_f64().unwrap() > 0.0);
    let dry = told(&[("water = \"2.50 m\"", "water = \"unknown\"")]);
    assert_eq!((dry.1.as_str(), dry.2["missing"][0].as_str()), ("cannot-tell", Some("water")));
    let none = edge.split("[[layer]]").next().unwrap().to_owned()
        + "[[contact]]\n"
        + edge.split_once("[[contact]]\n").unwrap().1;
    let (code, json) = answer("edge", &none);
    assert_eq!((code, json["told"].as_str(), json["missing"][0].as_str()), (3, Some("cannot-tell"), Some("soil")));
    // The same strength by a test stands as if it were stated, with its step.
    let by_test = |strength: &str| told(&[("undrained_strength = \"35 kPa\"", strength)]).2["factor"].as_f64();
    assert_eq!(by_test("cone_index = \"525 kPa\""), kept["factor"].as_f64());
    let cone = with(&edge, &[("undrained_strength = \"35 kPa\"", "cone_index = \"525 kPa\"")]);
    assert!(run_in(&root(), &["calc", "edge"], Some(&cone)).out.contains("c_u = CI / 15"));
    let thawing = told(&[("\"as-stated\"", "\"thawing\"")]);
    assert_eq!((thawing.0, thawing.1.as_str()), (3, "face-fails"), "no cohesion, no undrained strength");
    let rained = told(&[("wetted = false", "wetted = true"), ("cohesion = \"8 kPa\"", "cohesion = \"0 kPa\"")]);
    assert_eq!((rained.0, rained.1.as_str()), (3, "face-fails"));
    let lapsed = told(&[
        ("open_for = \"4\"", "open_for = \"25\""),
        ("cohesion = \"8 kPa\"", "# "),
        ("friction = \"28°\"", "# "),
    ]);
    assert_eq!(lapsed.2["missing"][0], "drained-strength");
    // So deep an engineer designs, however far they stand.
    let deep = [("depth = \"2.00 m\"", "depth = \"6.30 m\""), ("stands = \"3.20 m\"", "stands = \"18 m\"")];
    let deep = told(
        &[&deep[..], &[("cohesion = \"8 kPa\"", "cohesion = \"80 kPa\""), ("\"35 kPa\"", "\"250 kPa\"")]].concat(),
    );
    assert_eq!(
        (deep.0, deep.1.as_str(), deep.2["missing"][0].as_str()),
        (3, "cannot-tell", Some("engineer")),
        "{}",
        deep.2
    );
    // A weak undrained strength does not go away by rain or without its hours.
    for less in [("wetted = false", "wetted = true"), ("undrained_for = \"24\"", "#"), ("\"as-stated\"", "\"wetted\"")]
    {
        let weak = told(&[("\"35 kPa\"", "\"9 kPa\""), ("cohesion = \"8 kPa\"", "cohesion = \"30 kPa\""), less]);
        assert_eq!(
            (weak.1.as_str(), weak.2["undrained"].as_bool()),
            ("face-fails", Some(true)),
            "{less:?}: {}",
            weak.2
        );
    }
}

#[test]
fn an_edge_says_all_its_faults_at_once() {
    let bad = with(
        &example("edge"),
        &[
            ("depth = \"2.00 m\"", "depth = \"0 m\""),
            ("19 kN/m³", "18 N/m³"),
            ("friction = \"28°\"", "friction = \"55°\""),
        ],
    );
    let said = run_in(&root(), &["calc", "edge"], Some(&bad));
    assert_eq!(said.code, 1);
    for word in ["depth", "unit weight", "kN/m", "friction"] {
        assert!(said.err.contains(word), "{word}:\n{}", said.err);
    }
    let half = with(&example("edge"), &[("friction = \"28°\"", "# "), ("people_below = false", "# ")]);
    let said = run_in(&root(), &["calc", "edge"], Some(&half));
    assert!(said.code == 1 && said.err.contains("friction") && said.err.contains("people_below"), "{}", said.err);
}

#[test]
fn a_buried_thing_passes_only_with_everything_known() {
    let buried = example("buried");
    let (code, json) = answer("buried", &buried);
    assert_eq!(code, 0, "{json}");
    assert!((json["total_pa"].as_f64().unwrap() - json["wheels_pa"].as_f64().unwrap() - 22_800.0).abs() < 1.0);
    for (from, to) in [
        ("cover = \"1.20 m\"", "cover = \"unknown\""),
        ("cover = \"1.20 m\"", "give_or_take = \"1.20 m\"\ncover = \"1.20 m\""),
        ("allowed_pressure = \"120 kPa\"", "# "),
        ("voids = false, ", ""),
        ("fresh_fill = false, ", ""),
        ("fresh_fill = false", "fresh_fill = true"),
        ("wall = \"rigid\" ", "# "),
        ("kind = \"pipe\"                #", "kind = \"tank\" #"),
    ] {
        let tank = to.contains("tank");
        let input = if tank { with(&buried, &[("wall = \"rigid\" ", "# ")]) } else { buried.clone() };
        let (code, json) = answer("buried", &with(&input, &[(from, to)]));
        let open = json["conditions"].as_array().unwrap().len();
        assert_eq!((code, open), if tank { (0, 0) } else { (3, 1) }, "{from}: {json}");
    }
    let (code, json) = answer("buried", &with(&buried, &[("120 kPa", "40 kPa")]));
    assert!(code == 3 && json["reserve"].as_f64().unwrap() < 0.0);
    // The whole range of the cover: its weight at the least depth is not the most that is asked.
    let ranged = answer("buried", &with(&buried, &[("cover =", "give_or_take = \"0.6 m\"\ncover =")])).1;
    let ends = ["0.60 m", "1.80 m"].map(|c| answer("buried", &with(&buried, &[("\"1.20 m\"", &format!("\"{c}\""))])).1);
    let total = |json: &serde_json::Value| json["total_pa"].as_f64().unwrap();
    assert!(ends.iter().all(|e| total(&ranged) >= total(e) - 1e-6), "{ranged} {ends:?}");
    // A ring stiffness of 8 kPa is that of a plain wall of 13.74 mm and 1000 MPa at 0.30 m: t³/12·E/D³.
    let keys = ["[wall]", "diameter =", "ring_stiffness =", "soil_modulus =", "deflection =", "bedding =", "lag ="];
    let flexible = keys.iter().fold(with(&buried, &[("wall = \"rigid\" ", "# ")]), |text, key| {
        with(&text, &[(&format!("\n# {key}"), &format!("\n{key}"))])
    });
    let (code, json) = answer("buried", &flexible);
    let share = json["deflection"].as_f64().unwrap();
    assert!(code == 0 && share < 0.05 && share > 0.0, "{json}");
    let t = (8e3 * 12.0 / 1e9_f64).cbrt() * 0.30;
    let plain = with(
        &flexible,
        &[("ring_stiffness = \"8 kPa\"", &format!("thickness = \"{} mm\"\nmodulus = \"1000 MPa\"", t * 1e3))],
    );
    let other = answer("buried", &plain).1["deflection"].as_f64().unwrap();
    assert!((share - other).abs() < 1e-9 * share, "{share} {other}");
    let (code, json) = answer("buried", &with(&flexible, &[("\"5 %\"", "\"0.1 %\"")]));
    assert!(code == 3 && json["reserve"].as_f64().unwrap() < 0.0, "{json}");
    let (code, json) = answer("buried", &with(&flexible, &[("deflection = \"5 %\"", "# ")]));
    assert_eq!((code, json["conditions"][0].as_str()), (3, Some("deflection")));
    for (from, to, expected) in [
        ("ring_stiffness = \"8 kPa\"", "# ", "ring_stiffness"),
        ("ring_stiffness = \"8 kPa\"", "ring_stiffness = \"8 kPa\"\nmodulus = \"1000 MPa\" #", "only one of"),
        ("soil_modulus = \"3 MPa\"", "# ", "soil_modulus"),
        ("kind = \"pipe\"", "kind = \"tank\"", "pipes and culverts"),
        (", by = \"G. Soil, trial pit 4\"", "", "by"),
        ("cover = \"1.20 m\"", "", "cover"),
        ("fresh_fill = false", "fresh_fill = \"no\"", "fresh_fill"),
    ] {
        let said = run_in(&root(), &["calc", "buried"], Some(&with(&flexible, &[(from, to)])));
        assert!(said.code == 1 && said.err.contains(expected), "{from}: {}{}", said.out, said.err);
    }
}

#[test]
fn both_languages_and_units_are_printed_with_the_working() {
    for name in ["stress", "edge", "buried"] {
        for (language, units) in [("en", "si"), ("es", "si"), ("en", "us")] {
            let said = run_in(&root(), &["calc", name, "--lang", language, "--units", units], Some(&example(name)));
            assert_eq!(said.code, 0, "{name} {language}: {}", said.err);
            assert!(said.out.contains(if language == "en" { "Working" } else { "Cálculo" }), "{}", said.out);
        }
    }
}
