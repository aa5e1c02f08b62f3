//! Single calculations.

use crate::support::{root, run, run_in};

/// The whole table of the reference machine through the program: `../shared/reference-machine/tipping.csv`
/// beside the project; left out without it, unless CI is set.
#[test]
fn val_r1_table_through_the_program() {
    let Ok(table) = std::fs::read_to_string(root().join("../shared/reference-machine/tipping.csv")) else {
        assert!(std::env::var_os("CI").is_none(), "reference data missing");
        eprintln!("left out: needs the reference data folder beside the project");
        return;
    };
    let mut rows = 0;
    for line in table.lines().skip(1) {
        let c: Vec<&str> = line.split(',').map(str::trim).collect();
        let (support, rear) = match c[5] {
            "free" => ("tyres", "free"),
            "locked" => ("tyres", "locked"),
            other => (other, "locked"),
        };
        let input = format!(
            "machine = \"validation/machines/r1.toml\"\nattachment = \"forks\"\nboom_angle = \"{}°\"\nextension = \"{} m\"\n\
             load = \"{} kg\"\nload_left = \"{} m\"\nload_ahead = \"0.61 m\"\nload_up = \"0.50 m\"\nsupport = \"{support}\"\n\
             rear_axle = \"{rear}\"\ndescent = \"{}°\"\n",
            c[1], c[2], c[3], c[4], c[6]
        );
        let said = run_in(&root(), &["calc", "stability", "--format", "json"], Some(&input));
        assert_eq!(said.code, 0, "case {}: {}", c[0], said.err);
        let json: serde_json::Value = serde_json::from_str(&said.out).unwrap();
        let close = |key: &str, column: usize, tolerance: f64| {
            let (got, want) = (json[key].as_f64().unwrap(), c[column].parse::<f64>().unwrap());
            assert!((got - want).abs() < tolerance, "case {}: {key} {got}, table {want}", c[0]);
        };
        close("reach_m", 7, 1e-4);
        close("lift_height_m", 8, 1e-4);
        close("level_tipping_load_kg", 9, 0.01);
        close("tilt_at_onset_deg", 10, 0.01);
        assert_eq!(json["tips_over"], c[11], "case {}", c[0]);
        rows += 1;
    }
    assert_eq!(rows, 16, "a reference case went missing");
}

/// The levelled table through the program: `../shared/reference-machine/levelled.csv` beside the project;
/// left out without it, unless CI is set.
#[test]
fn val_r1_levelled_table_through_the_program() {
    let Ok(table) = std::fs::read_to_string(root().join("../shared/reference-machine/levelled.csv")) else {
        assert!(std::env::var_os("CI").is_none(), "reference data missing");
        eprintln!("left out: needs the reference data folder beside the project");
        return;
    };
    let mut rows = 0;
    for line in table.lines().skip(1) {
        let c: Vec<&str> = line.split(',').map(str::trim).collect();
        let input = format!(
            "machine = \"validation/machines/r1.toml\"\nattachment = \"forks\"\nboom_angle = \"{}°\"\nextension = \"{} m\"\n\
             load = \"{} kg\"\nload_left = \"{} m\"\nload_ahead = \"0.61 m\"\nload_up = \"0.50 m\"\nsupport = \"tyres\"\n\
             rear_axle = \"{}\"\ndescent = \"90°\"\nlevelled_on = \"{}°\"\n",
            c[1], c[2], c[3], c[4], c[6], c[5]
        );
        let said = run_in(&root(), &["calc", "stability", "--format", "json"], Some(&input));
        assert_eq!(said.code, 0, "case {}: {}", c[0], said.err);
        let json: serde_json::Value = serde_json::from_str(&said.out).unwrap();
        let (tilt, want) = (json["tilt_at_onset_deg"].as_f64().unwrap(), c[7].parse::<f64>().unwrap());
        assert!((tilt - want).abs() < 0.01, "case {}: {tilt}, table {want}", c[0]);
        assert_eq!(json["tips_over"], c[8], "case {}", c[0]);
        rows += 1;
    }
    assert_eq!(rows, 5, "a reference case went missing");
    let said = run_in(
        &root(),
        &["calc", "stability"],
        Some(&run(&["calc", "stability", "--example"]).out.replace("# levelled_on = \"8°\"", "levelled_on = \"14°\"")),
    );
    assert_eq!(said.code, 1);
    assert!(said.err.contains("12.0°"), "names the machine's own range: {}", said.err);
}

/// Contacts that give tip sooner, hard ones as rigid ones, and one stiffness alone is a fault.
#[test]
fn stiffnesses_say_how_much_sooner_it_tips() {
    let example = run(&["calc", "stability", "--example"]).out;
    let ask = |front: &str| {
        let input = example
            .replace("# front_stiffness = \"900 kN/m\"", &format!("front_stiffness = \"{front} kN/m\""))
            .replace("# rear_stiffness = \"900 kN/m\"", &format!("rear_stiffness = \"{front} kN/m\""));
        let said = run_in(&root(), &["calc", "stability", "--format", "json"], Some(&input));
        assert_eq!(said.code, 0, "{}", said.err);
        serde_json::from_str::<serde_json::Value>(&said.out).unwrap()
    };
    let tilt = |json: &serde_json::Value| json["least_tilt_on_springs_deg"].as_f64().unwrap();
    let (soft, harder, hard) = (ask("700"), ask("1400"), ask("9000000"));
    assert!(tilt(&soft) + 0.5 < tilt(&harder) && tilt(&harder) < tilt(&hard));
    let force: Vec<f64> = hard["forces_on_springs_n"].as_array().unwrap().iter().map(|f| f.as_f64().unwrap()).collect();
    // R1 with 3,000 kg: its own 12,600 kg and the load.
    assert!((force.iter().sum::<f64>() - 15_600.0 * 9.806_65).abs() < 1.0, "{force:?}");
    let alone = example.replace("# front_stiffness", "front_stiffness");
    let said = run_in(&root(), &["calc", "stability"], Some(&alone));
    assert!(said.code == 1 && said.err.contains("rear_stiffness"), "{}", said.err);
}

#[test]
fn json_in_gives_the_same_as_toml_in() {
    let toml = run(&["calc", "stability", "--example"]).out;
    let from_toml = run_in(&root(), &["calc", "stability", "--format", "json"], Some(&toml));
    assert_eq!(from_toml.code, 0, "{}", from_toml.err);
    let json = r#"{"machine": "validation/machines/r1.toml", "attachment": "forks", "boom_angle": "60 deg",
        "extension": "3 m", "load": "3000 kg", "load_left": "0 m", "load_ahead": "0.61 m", "load_up": "0.5 m",
        "support": "tyres", "rear_axle": "locked", "descent": "0 deg"}"#;
    let from_json = run_in(&root(), &["calc", "stability", "--format", "json"], Some(json));
    assert_eq!(from_json.out, from_toml.out, "{}", from_json.err);
}

#[test]
fn wrong_inputs_are_said_all_at_once_with_their_places() {
    let input = "machine = \"validation/machines/r1.toml\"\nattachment = \"forks\"\nboom_angle = \"60\"\nextention = \"3 m\"\n\
                 load = \"-5 kg\"\nload_left = \"0 m\"\nload_ahead = \"0.61 m\"\nload_up = \"0.5 m\"\nsupport = \"wheels\"\n\
                 rear_axle = \"free\"\ndescent = \"0°\"\n";
    let said = run_in(&root(), &["calc", "stability"], Some(input));
    assert_eq!(said.code, 1);
    for word in ["input.toml:3", "input.toml:4", "extension", "input.toml:5", "input.toml:9", "tyres"] {
        assert!(said.err.contains(word), "{word}:\n{}", said.err);
    }
}

#[test]
fn beyond_the_boom_is_refused_and_the_chart_example_runs() {
    let far = run(&["calc", "stability", "--example"]).out.replace("3.00 m\"", "30.00 m\"");
    let said = run_in(&root(), &["calc", "stability"], Some(&far));
    assert_eq!(said.code, 1);
    assert!(said.err.contains("7.00"), "names the boom's own range: {}", said.err);
    let chart = run(&["calc", "chart", "--example"]).out;
    let said = run_in(&root(), &["calc", "chart"], Some(&chart));
    assert!([0, 3].contains(&said.code), "{}", said.err);
    assert!(said.out.contains("zone"), "{}", said.out);
}

fn example(name: &str) -> String {
    run(&["calc", name, "--example"]).out
}

fn answer(name: &str, input: &str) -> (i32, serde_json::Value) {
    let said = run_in(&root(), &["calc", name, "--format", "json"], Some(input));
    assert!([0, 3].contains(&said.code), "{}", said.err);
    (said.code, serde_json::from_str(&said.out).unwrap())
}

/// At the gust that `calc wind` names as the limit, the tilt asked for is what remains.
#[test]
fn wind_names_the_gust_at_which_the_tilt_runs_out() {
    let (code, calm) = answer("wind", &example("wind"));
    assert_eq!(code, 0);
    for i in 0..4 {
        let limit = calm["lines"][i]["gust_at_limit_m_s"].as_f64().unwrap();
        let input = example("wind").replace("gust = \"12.5 m/s\"", &format!("gust = \"{limit} m/s\""));
        let (_, windy) = answer("wind", &input);
        let line = &windy["lines"][i];
        let (tilt, required) = (line["tilt_deg"].as_f64().unwrap(), line["required_deg"].as_f64().unwrap());
        // The search on tyres ends within 0.01 % of the speed, on the side where the tilt is left.
        assert!((0.0..0.005).contains(&(tilt - required)), "{line}");
        let mean = line["mean_at_limit_m_s"].as_f64().unwrap();
        // 8.8 m up in open country: √c_e is near 1.5.
        assert!((limit / mean - 1.5).abs() < 0.02, "{limit} {mean}");
    }
    let stormy = example("wind").replace("12.5 m/s", "45 m/s");
    assert_eq!(answer("wind", &stormy).0, 3, "too much wind is no success");
    // More that the wind sees takes more of the reserve, and is named.
    let with_sign = with_sign();
    let (_, more) = answer("wind", &with_sign);
    assert_eq!(more["parts"][5]["name"], "sign on the boom");
    assert!(more["greatest_force_n"].as_f64().unwrap() > calm["greatest_force_n"].as_f64().unwrap());
}

/// The example with its part no longer a comment.
fn with_sign() -> String {
    uncommented(&example("wind"))
}

fn uncommented(input: &str) -> String {
    let (before, part) = input.split_once("# [[part]]").unwrap();
    format!("{before}[[part]]{}", part.replace("\n# ", "\n"))
}

#[test]
fn wind_says_all_faults_at_once() {
    let input = example("wind")
        .replace("gust = \"12.5 m/s\"", "gust = \"-3 m/s\"")
        .replace("terrain = \"open\"", "terrain = \"moon\"")
        .replace("load_depth", "load_dept")
        .replace("# front = \"0.5 m²\"", "# front = \"0.5 m\"");
    let input = uncommented(&input);
    let said = run_in(&root(), &["calc", "wind"], Some(&input));
    assert_eq!(said.code, 1);
    for word in ["gust", "moon", "load_depth", "0.5 m"] {
        assert!(said.err.contains(word), "{word}:\n{}", said.err);
    }
}

/// What the boom's place and the load's hang forbid is no success, whatever is left; and what tips in one
/// case only is said to tip first.
#[test]
fn driving_with_the_boom_up_or_a_hung_load_is_stopped_and_a_turn_can_tip_first() {
    let ask = |pairs: &[(&str, &str)]| {
        let mut input = example("travel-stability")
            .replace("\"-8 %\"", "\"0 %\"")
            .replace("\"3 %\"", "\"0 %\"")
            .replace("retardation = \"50 %\"", "retardation = \"10 %\"")
            .replace("\"8 km/h\"", "\"2 km/h\"")
            .replace("rut_depth = \"0.10 m\"", "rut_depth = \"0 m\"");
        for (from, to) in pairs {
            assert!(input.contains(from), "{from}");
            input = input.replace(from, to);
        }
        run_in(&root(), &["calc", "travel-stability"], Some(&input))
    };
    assert_eq!(ask(&[]).code, 0, "{}", ask(&[]).out);
    let raised = ask(&[("boom_angle = \"5°\"", "boom_angle = \"12°\"")]);
    assert!(raised.code == 3 && raised.out.contains("never drive"), "{}", raised.out);
    let hung = ask(&[
        ("validation/machines/r1.toml", "examples/machines/stork-18.toml"),
        ("attachment = \"forks\"", "attachment = \"jib\""),
        ("boom_angle = \"5°\"", "boom_angle = \"0°\""),
        ("\"2000 kg\"", "\"300 kg\""),
    ]);
    assert!(hung.code == 3 && hung.out.contains("swings"), "{}{}", hung.out, hung.err);
    // Fast round a tight turn an empty machine with the boom up tips on ground that holds its tyres, though
    // braking asks most of them.
    let turn = ask(&[
        ("validation/machines/r1.toml", "examples/machines/wren-6.toml"),
        ("boom_angle = \"5°\"", "boom_angle = \"68°\""),
        ("extension = \"0 m\"", "extension = \"3.05 m\""),
        ("fork_tilt = \"8°\"", "fork_tilt = \"0°\""),
        ("\"2000 kg\"", "\"0 kg\""),
        ("retardation = \"10 %\"", "retardation = \"30 %\""),
        ("\"2 km/h\"", "\"9 km/h\""),
        ("\"6.0 m\"", "\"4.0 m\""),
        ("ground_friction = \"0.6\"", "ground_friction = \"0.45\""),
    ]);
    let said = turn.out.split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(said.contains("would tip before they slide"), "{said}");
}

/// Slowly and gently everything holds; faster, deeper, steeper and slippery each cost something.
#[test]
fn driving_gently_holds_and_everything_else_costs() {
    let gentle = example("travel-stability")
        .replace("\"8 km/h\"", "\"3 km/h\"")
        .replace("retardation = \"50 %\"", "retardation = \"15 %\"")
        .replace("rut_depth = \"0.10 m\"", "rut_depth = \"0.03 m\"")
        .replace("\"-8 %\"", "\"0 %\"");
    let (code, base) = answer("travel-stability", &gentle);
    assert_eq!(code, 0, "{base}");
    let reserve = |v: &serde_json::Value| v["governs"]["reserve"].as_f64().unwrap();
    let worse = |from: &str, to: &str| {
        assert!(gentle.contains(from));
        answer("travel-stability", &gentle.replace(from, to)).1
    };
    assert!(reserve(&worse("\"3 km/h\"", "\"5 km/h\"")) < reserve(&base));
    assert!(reserve(&worse("\"0.03 m\"", "\"0.20 m\"")) < reserve(&base));
    let icy = worse("ground_friction = \"0.6\"", "ground_friction = \"0.1\"");
    assert!(icy["slides"] == true && icy["first"] == "slides");
    assert!(icy["stopping_distance_m"].as_f64().unwrap() > base["stopping_distance_m"].as_f64().unwrap());
    let down = worse("slope_along = \"0 %\"", "slope_along = \"-40 %\"");
    assert!(down["stopping_distance_m"].is_null(), "wet ground does not hold on 40 %: {down}");
    // Straight on, no turn is among the cases; steering weight goes when it brakes.
    let straight = worse("radius =", "# radius =");
    assert_eq!(straight["cases"].as_array().unwrap().len(), 5 * 4);
    assert!(base["rear_share_least"].as_f64().unwrap() < base["rear_share_at_rest"].as_f64().unwrap());
    // The example itself brakes too hard downhill, and the text says which case governs.
    let said = run_in(&root(), &["calc", "travel-stability"], Some(&example("travel-stability")));
    assert_eq!(said.code, 3);
    assert!(said.out.contains("may go over: Stopped dead by a kerb"), "{}", said.out);
}

#[test]
fn driving_says_all_faults_at_once() {
    let input = example("travel-stability")
        .replace("\"8 km/h\"", "\"-8 km/h\"")
        .replace("\"6.0 m\"", "\"0 m\"")
        .replace("travel = \"ahead\"", "travel = \"up\"")
        .replace("fork_friction", "forks_friction");
    let said = run_in(&root(), &["calc", "travel-stability"], Some(&input));
    assert_eq!(said.code, 1);
    for word in ["speed", "radius", "ahead", "fork_friction"] {
        assert!(said.err.contains(word), "{word}:\n{}", said.err);
    }
    // An attachment that the machine has not.
    let missing = example("travel-stability").replace("attachment = \"forks\"", "attachment = \"claw\"");
    let said = run_in(&root(), &["calc", "travel-stability"], Some(&missing));
    assert!(said.code == 1 && said.err.contains("claw"), "{}", said.err);
}

/// Nothing in an example is wider than the terminal of 80 columns.
#[test]
fn examples_fit_in_80_columns() {
    let names = [
        "chart",
        "reactions",
        "stability",
        "travel-stability",
        "wind",
        "fit",
        "platform",
        "bearing",
        "mat",
        "settlement",
        "presumed",
        "rut",
        "working-platform",
        "stress",
        "edge",
        "buried",
        "landing",
    ];
    for name in names {
        for line in example(name).lines() {
            assert!(line.chars().count() <= 80, "{name}: {line}");
        }
    }
}

/// Forces of R1 by hand, boom level and retracted, empty: its parts' masses and centres as the machine file has
/// them, moments about the front contacts. `Σ m x = −8200·1.90 − 1000·3.00 + 900·(2.40 − 2.60) +
/// 600·(2.80 − 2.60) + 420·(3.60 − 2.60) + 380·(5.00 + 0.25 − 2.60) = −17 213 kg m` of 12 600 kg, so
/// that the rear axle carries `17 213/3.00 = 5737.67 kg`, each of its wheels half.
#[test]
fn forces_of_the_level_machine_are_those_reckoned_by_hand() {
    let input = example("reactions")
        .replace("boom_angle = \"30°\"", "boom_angle = \"0°\"")
        .replace("extension = \"2.00 m\"", "extension = \"0 m\"")
        .replace("load = \"2000 kg\"", "load = \"0 kg\"");
    let (rear, all) = (17_213.0 / 3.0 * 9.806_65, 12_600.0 * 9.806_65);
    for axle in ["free", "locked"] {
        let (code, json) =
            answer("reactions", &input.replace("rear_axle = \"free\"", &format!("rear_axle = \"{axle}\"")));
        assert_eq!(code, 0, "{json}");
        let by_hand = [(all - rear) / 2.0, (all - rear) / 2.0, rear / 2.0, rear / 2.0];
        for (i, want) in by_hand.into_iter().enumerate() {
            let got = json["rigid"]["contacts"][i]["force_n"].as_f64().unwrap();
            assert!((got - want).abs() < 0.5, "{axle} {i}: {got} {want}");
            // On tyres the body leans by a degree at most: a little of the weight moves.
            let soft = json["on_tyres"]["contacts"][i]["force_n"].as_f64().unwrap();
            assert!((soft - want).abs() < 0.01 * all, "{axle} {i}: {soft} {want}");
        }
        assert!((json["weight_n"].as_f64().unwrap() - all).abs() < 1e-6);
        assert!((json["rigid"]["steered_share"].as_f64().unwrap() - rear / all).abs() < 1e-9);
        // Over the front: 380·2.65 kg m and 420·1.00 overturn... only what is ahead of the contacts does:
        // 600·0.20 + 420·1.00 + 380·2.65 = 1547; the rest holds: 17 213 + 1547.
        let front = &json["lines"][0];
        assert!((front["ratio"].as_f64().unwrap() - 18_760.0 / 1547.0).abs() < 1e-6, "{front}");
        let difference = front["restoring_nm"].as_f64().unwrap() - front["overturning_nm"].as_f64().unwrap();
        assert!((difference - 17_213.0 * 9.806_65).abs() < 0.1);
    }
}

/// At the load that `calc stability` names as the level tipping load the ratio over the front goes through 1.
#[test]
fn the_ratio_of_moments_is_one_at_the_tipping_load() {
    let place = example("stability").replace("60°", "30°").replace("3.00 m", "2.00 m");
    let tips = answer("stability", &place).1["level_tipping_load_kg"].as_f64().unwrap();
    let at = |kg: f64| {
        let input = example("reactions").replace("load = \"2000 kg\"", &format!("load = \"{kg} kg\""));
        answer("reactions", &input)
    };
    let (code, before) = at(tips * 0.999);
    let ratio = before["lines"][0]["ratio"].as_f64().unwrap();
    assert!(ratio > 1.0 && ratio < 1.01, "{ratio}");
    assert_eq!(before["rigid"]["contacts"][2]["carries"], "light", "{before}");
    // On its tyres it tips sooner.
    assert!(code == 3 && before["on_tyres"]["finding"] == "tips", "{before}");
    let (code, beyond) = at(tips * 1.001);
    assert!(code == 3 && beyond["rigid"]["finding"] == "tips" && beyond["stands"] == false, "{beyond}");
    assert!(beyond["lines"][0]["ratio"].as_f64().unwrap() < 1.0);
}

/// Ground under one wheel: a free axle turns by it and keeps its forces; a locked one lifts a wheel; heights that
/// are a slope are that slope.
#[test]
fn uneven_ground_turns_a_free_axle_and_lifts_a_wheel_of_a_locked_one() {
    let with = |heights: &str, more: &[(&str, &str)]| {
        let mut input = example("reactions").replace(
            "# ground_heights = [\"0 m\", \"0 m\", \"0.10 m\", \"0 m\"]",
            &format!("ground_heights = [{heights}]"),
        );
        for (from, to) in more {
            assert!(input.contains(from), "{from}");
            input = input.replace(from, to);
        }
        input
    };
    let flat = "\"0 m\", \"0 m\", \"0 m\", \"0 m\"";
    let bump = "\"0 m\", \"0 m\", \"0.10 m\", \"0 m\"";
    let (_, free) = answer("reactions", &with(bump, &[]));
    // 0.10 m over a track of 2.00 m: asin 0.05 = 2.87°, its right end down; the frame pitches and rolls not at all.
    let turn = free["rigid"]["rear_axle_turn_deg"].as_f64().unwrap();
    assert!((turn + 2.866).abs() < 0.01, "{free}");
    assert!(free["rigid"]["roll_deg"].as_f64().unwrap().abs() < 0.02, "{free}");
    // The pin goes up by half of it, less 0.70 m · (1 − cos 2.87°) that it loses by leaning: 0.0491 m over a
    // wheelbase of 3.00 m is 0.938° nose down.
    assert!((free["rigid"]["pitch_deg"].as_f64().unwrap() - 0.938).abs() < 0.002, "{free}");
    let locked = [("rear_axle = \"free\"", "rear_axle = \"locked\"")];
    let (_, bumped) = answer("reactions", &with(bump, &locked));
    let carries: Vec<_> = (0..4).map(|i| bumped["rigid"]["contacts"][i]["carries"].clone()).collect();
    assert_eq!(carries.iter().filter(|c| *c == "in-the-air").count(), 1, "{bumped}");
    assert!(carries[2] != "in-the-air", "{bumped}");
    // Left ground lower by a track's 5 %, stated by heights or as a slope.
    let heights = "\"0 m\", \"0.10 m\", \"0 m\", \"0.10 m\"";
    let sloping = ("slope_across = \"0 %\"", "slope_across = \"5.006 %\"");
    let (_, by_heights) = answer("reactions", &with(heights, &locked));
    let (_, by_slope) = answer("reactions", &with(flat, &[locked[0], sloping]));
    for key in ["rigid", "on_tyres"] {
        for i in 0..4 {
            let force = |v: &serde_json::Value| v[key]["contacts"][i]["force_n"].as_f64().unwrap();
            let (a, b) = (force(&by_heights), force(&by_slope));
            assert!((a - b).abs() < 0.003 * 150_000.0, "{key} {i}: {a} {b}");
        }
    }
    // Half a metre is beyond the 10° of the axle: it lies against its stop.
    let (_, high) = answer("reactions", &with("\"0 m\", \"0 m\", \"0.50 m\", \"0 m\"", &[]));
    assert_eq!(high["rigid"]["at_stop"], true, "{high}");
    assert!((high["rigid"]["rear_axle_turn_deg"].as_f64().unwrap() + 10.0).abs() < 1e-6);
}

/// The text fits in 80 columns, in both languages, and shows the working.
#[test]
fn reactions_are_printed_in_80_columns_with_their_working() {
    for (lang, word) in [("en", "Working"), ("es", "Cálculo")] {
        let said = run_in(&root(), &["calc", "reactions", "--lang", lang], Some(&example("reactions")));
        assert_eq!(said.code, 0, "{}", said.err);
        assert!(said.out.contains(word), "{}", said.out);
        for line in said.out.lines() {
            assert!(line.chars().count() <= 80, "{line}");
        }
    }
}

/// Input that contradicts the machine is refused with what the machine has.
#[test]
fn stances_that_the_machine_cannot_take_are_refused() {
    let ask = |from: &str, to: &str| {
        let input = example("reactions");
        assert!(input.contains(from), "{from}");
        let said = run_in(&root(), &["calc", "reactions"], Some(&input.replace(from, to)));
        assert_eq!(said.code, 1, "{from} {to}: {}", said.out);
        said.err.split_whitespace().collect::<Vec<_>>().join(" ")
    };
    let roll = "# rear_roll = \"2°\"";
    assert!(ask(roll, "rear_roll = \"2°\"").contains("follows the ground"));
    let locked = "rear_axle = \"locked\"\nrear_roll = \"11°\"";
    let error = ask("rear_axle = \"free\"", locked);
    assert!(error.contains("10.0°"), "{error}");
    let error = ask("# front_roll = \"3°\"", "front_roll = \"13°\"");
    assert!(error.contains("12.0°"), "{error}");
    let error = ask("support = \"tyres\"", "support = \"stabilizers\"\nfront_roll = \"3°\"");
    assert!(error.contains("on its tyres"), "{error}");
    assert!(ask("support = \"tyres\"", "support = \"outriggers\"").contains("cannot stand"));
    for (bad, word) in [("0 kN/m", "front_stiffness"), ("-900 kN/m", "-900"), ("nan kN/m", "nan")] {
        let to = format!("front_stiffness = \"{bad}\"\nrear_stiffness = \"900 kN/m\" #");
        let error = ask("# front_stiffness = \"900 kN/m\"", &to);
        assert!(error.contains(word), "{bad}: {error}");
    }
    for bad in ["-1 kg", "nan kg", "201 t", "inf kg"] {
        let error = ask("load = \"2000 kg\"", &format!("load = \"{bad}\""));
        assert!(error.contains("load"), "{bad}: {error}");
    }
    let error = ask(
        "# ground_heights = [\"0 m\", \"0 m\", \"0.10 m\", \"0 m\"]",
        "ground_heights = [\"0 m\", \"0 m\", \"3 m\"]",
    );
    assert!(error.contains("ground_heights"), "{error}");
}

/// Wind takes from what driving leaves, and the time until the brake takes hold goes into the distance.
#[test]
fn driving_counts_a_gust_and_the_stated_reaction() {
    let gust = "gust = \"14 m/s\"\nload_depth = \"1.2 m\"\nload_width = \"1.2 m\"\nload_height = \"1.2 m\"\nwind_factor = \"1.4\"\n";
    let calm = answer("travel-stability", &example("travel-stability")).1;
    let windy = answer("travel-stability", &format!("{}{gust}", example("travel-stability"))).1;
    let cases = calm["cases"].as_array().unwrap();
    for (i, before) in cases.iter().enumerate() {
        let (a, b) = (before["reserve"].as_f64().unwrap(), windy["cases"][i]["reserve"].as_f64().unwrap());
        assert!(b <= a + 1e-9, "{before} {}", windy["cases"][i]);
    }
    assert!(windy["cases"][0]["reserve"].as_f64().unwrap() < 1.0 - 1e-3);
    let quick = example("travel-stability").replace("\"2.5 s\"", "\"0.5 s\"");
    let (a, b) = (&calm["stopping_distance_m"], &answer("travel-stability", &quick).1["stopping_distance_m"]);
    // Two seconds at 8 km/h.
    assert!((a.as_f64().unwrap() - b.as_f64().unwrap() - 2.0 * 8.0 / 3.6).abs() < 1e-6, "{a} {b}");
    let left_out = example("travel-stability").replace("reaction_time = \"2.5 s\"", "# reaction_time");
    assert_eq!(&answer("travel-stability", &left_out).1["stopping_distance_m"], a);
    for bad in ["\"2.5\"", "\"-1 s\"", "\"nan s\"", "\"60 s\""] {
        let input = example("travel-stability").replace("\"2.5 s\"", bad);
        let said = run_in(&root(), &["calc", "travel-stability"], Some(&input));
        assert!(said.code == 1 && said.err.contains("reaction_time"), "{bad}: {}{}", said.out, said.err);
    }
    // A gust on a load that nobody measured is not reckoned as if it missed it.
    let unmeasured = format!("{}gust = \"9 m/s\"\n", example("travel-stability"));
    let said = run_in(&root(), &["calc", "travel-stability"], Some(&unmeasured));
    assert!(said.code == 1 && said.err.contains("load_depth"), "{}{}", said.out, said.err);
    // The working is there, of every case and of the stop, and of the governing case in the text.
    let working = calm["working"].as_array().unwrap();
    assert_eq!(working.len(), cases.len() / 4 + 1);
    assert!(working.iter().all(|w| !w["working"]["steps"].as_array().unwrap().is_empty()));
    let text = run_in(&root(), &["calc", "travel-stability"], Some(&example("travel-stability"))).out;
    assert!(text.contains("Working: Stopped dead by a kerb") && text.contains("(AASHTO"), "{text}");
}
