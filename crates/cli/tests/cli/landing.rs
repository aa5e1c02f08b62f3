//! `calc landing`.

use crate::support::{Said, root, run, run_in};
use serde_json::Value;

fn example() -> String {
    run(&["calc", "landing", "--example"]).out
}

fn calc(input: &str, more: &[&str]) -> Said {
    run_in(&root(), &[&["calc", "landing"], more].concat(), Some(input))
}

fn json(input: &str) -> (i32, Value) {
    let said = calc(input, &["--format", "json"]);
    (said.code, serde_json::from_str(&said.out).unwrap_or_else(|e| panic!("{e}: {}{}", said.out, said.err)))
}

fn part<'a>(json: &'a Value, name: &str) -> &'a Value {
    json["parts"].as_array().unwrap().iter().find(|p| p["part"] == name).unwrap_or_else(|| panic!("{name}: {json}"))
}

/// The commented slab in place of the deck.
fn on_a_slab() -> String {
    let example = example();
    let (before, after) = example.split_once("[deck]").unwrap();
    let slab = after.split_once("# [slab]").unwrap().1.split_once("# [props]").unwrap().0;
    let lines = slab.lines().skip(1).map(|l| l.trim_start_matches("# ")).filter(|l| l.contains('='));
    format!("{before}[slab]\n{}\n", lines.collect::<Vec<_>>().join("\n")).replace("\"scaffold\"", "\"building\"")
}

#[test]
fn the_example_fits_and_shows_its_working() {
    let said = calc(&example(), &[]);
    assert_eq!(said.code, 0, "{}{}", said.out, said.err);
    for words in ["rated total", "bending of a board", "What governs", "EN 1995-1-1", "from memory", "k_mod"] {
        assert!(said.out.contains(words), "{words}:\n{}", said.out);
    }
    let (_, json) = json(&example());
    // 250 kg there, a person of 113.4 kg, and a rating that includes setting down.
    let total = part(&json, "landing-part-rated-total")["demand"]["si"].as_f64().unwrap();
    assert!((total - (1100.0 + 250.0 + 113.398)).abs() < 1e-6, "{total}");
    let spanish = calc(&example(), &["--lang", "es", "--units", "us"]);
    assert!(
        spanish.code == 0 && spanish.out.contains("Lo que manda") && spanish.out.contains("\u{a0}lb"),
        "{}",
        spanish.out
    );
}

#[test]
fn too_heavy_a_load_is_told_what_fits_instead() {
    let heavy =
        example().replace("1100 kg", "2400 kg").replace("joist_spacing = \"0.40 m\"", "joist_spacing = \"0.30 m\"");
    let (code, answer) = json(&heavy);
    assert_eq!((code, answer["status"].as_str()), (3, Some("no-go")));
    let most = answer["largest_kg"].as_f64().unwrap();
    let again = json(&heavy.replace("2400 kg", &format!("{most} kg")));
    assert_eq!(again.0, 0, "{}", again.1);
    assert_eq!(json(&heavy.replace("2400 kg", &format!("{} kg", most + 2.5))).0, 3);
    let said = calc(&heavy, &[]);
    assert!(said.out.contains("largest load") && said.out.to_lowercase().contains("half the pallet"), "{}", said.out);
}

#[test]
fn what_is_not_stated_cannot_be_told() {
    let told = |from: &str, to: &str| json(&example().replace(from, to)).1["status"].clone();
    assert_eq!(told("push = \"4 kN\"", ""), "cannot-tell");
    assert_eq!(told("joists_held_sideways = true", ""), "cannot-tell");
    assert_eq!(told("mass = \"2000 kg\"", "duty_class = 6"), "cannot-tell");
    let (code, json) = json(&on_a_slab().replace("age_days = \"14\"", ""));
    assert_eq!((code, json["status"].as_str(), &json["largest_kg"]), (3, Some("cannot-tell"), &Value::Null));
}

#[test]
fn a_slab_bears_more_as_it_hardens() {
    let limit = |days: &str| {
        let (_, json) = json(&on_a_slab().replace("age_days = \"14\"", &format!("age_days = \"{days}\"")));
        part(&json, "landing-part-slab-sagging")["limit"]["si"].as_f64()
    };
    let (young, old) = (limit("14").unwrap(), limit("60").unwrap());
    assert!(young < old, "{young} {old}");
    assert_eq!(limit("3"), None);
    let props =
        format!("{}[props]\nby = \"Ana Ruiz\"\nallows = \"20 kN\"\n", on_a_slab().split("[slab]").next().unwrap());
    let (_, json) = json(&props);
    assert_eq!(part(&json, "landing-part-propped")["limit"]["si"], 20e3);
}

#[test]
fn every_fault_is_told_at_once() {
    let bad = example()
        .replace("joist_span = \"2.40 m\"", "joist_span = \"-2 m\"")
        .replace("\"C24\"", "\"C99\"")
        .replace("mass = \"2000 kg\"", "mass = \"2000\"");
    let said = calc(&bad, &[]);
    assert_eq!(said.code, 1, "{}", said.out);
    for words in ["joist_span", "board_timber", "joist_timber", "“2000” has no unit"] {
        assert!(said.err.contains(words), "{words}:\n{}", said.err);
    }
    let megapascals = on_a_slab().replace("25 MPa", "25 Pa");
    assert!(calc(&megapascals, &[]).err.contains("concrete"));
    assert_eq!(calc("load = \"100 kg\"\n", &[]).code, 1);
}

/// Which way the joists run decides; not stated, the worse counts, as in a plan. What lies there has to lie on it.
#[test]
fn joists_that_run_either_way_count_as_the_worse() {
    let share = |runs: &str| {
        let (_, json) = json(&example().replace("runs = \"along\"", runs));
        part(&json, "landing-part-board-shear")["utilisation"].as_f64().unwrap()
    };
    let (along, across) = (share("runs = \"along\""), share("runs = \"across\""));
    assert!(along != across);
    assert_eq!(share(""), along.max(across));
    let tub = "mass = \"250 kg\"";
    let placed = |side: &str| {
        let place = format!("from_edge = \"0 m\", from_right = \"0 m\", along = \"{side}\", across = \"{side}\"");
        json(&example().replace(tub, &format!("{tub}, {place}")))
    };
    // On 0.36 m² it presses more than is counted beside the pallet.
    assert_eq!(placed("0.60 m").1["governs"], "landing-part-beside");
    let said = calc(
        &example().replace(
            tub,
            &format!("{tub}, from_edge = \"0 m\", from_right = \"0 m\", along = \"9 m\", across = \"9 m\""),
        ),
        &[],
    );
    assert!(said.code == 1 && said.err.contains("larger than the landing"), "{}{}", said.out, said.err);
}
