//! The quick look into a chart.

use crate::support::run;

const DEMO: [&str; 12] = [
    "check",
    "examples/demo-job/machines/demo-7.toml",
    "--attachment",
    "forks",
    "--support",
    "tyres",
    "--load-centre",
    "24 in",
    "--from",
    "front-tyre-face",
    "--to",
    "load-centre",
];

fn look(load: &str, distance: &str, height: &str, more: &[&str]) -> crate::support::Said {
    let mut args = DEMO.to_vec();
    args.extend(["--load", load, "--distance", distance, "--height", height]);
    args.extend(more);
    run(&args)
}

#[test]
fn inside_says_what_governs_how_much_more_and_what_was_not_checked_but_never_go() {
    let said = look("900 kg", "2.2 m", "3.0 m", &[]);
    assert_eq!(said.code, 0, "{}{}", said.out, said.err);
    assert!(said.out.starts_with("INSIDE THE CHART"), "{}", said.out);
    for word in ["zone", "further", "NOT CHECKED", "Overhead lines", "This is not a go"] {
        assert!(said.out.contains(word), "{word}: {}", said.out);
    }
    let line_is_go = |l: &str| l.trim() == "GO" || l.contains("verdict");
    assert!(!said.out.lines().any(line_is_go));
}

#[test]
fn how_much_further_is_where_the_answer_turns() {
    let said = look("900 kg", "2.2 m", "3.0 m", &["--format", "json"]);
    let answer: planning::DistanceAnswer = serde_json::from_str(&said.out).unwrap();
    assert!(answer.inside && answer.further_m > 0.0 && answer.heavier_kg > 0.0);
    let turn = |d: f64| look("900 kg", &format!("{:.3} m", 2.2 + d), "3.0 m", &[]).code;
    assert_eq!(turn(answer.further_m - 0.002), 0);
    assert_eq!(turn(answer.further_m + 0.002), 3);
    let heavier = |kg: f64| look(&format!("{:.1} kg", 900.0 + kg), "2.2 m", "3.0 m", &[]).code;
    assert_eq!(heavier(answer.heavier_kg - 0.2), 0);
    assert_eq!(heavier(answer.heavier_kg + 0.2), 3);
}

#[test]
fn pounds_and_feet_are_the_same_look() {
    let (si, us) = (
        look("900 kg", "2.2 m", "3.0 m", &["--format", "json"]),
        look("1984.16 lb", "7.21785 ft", "9.84252 ft", &["--format", "json"]),
    );
    let answer = |s: &str| serde_json::from_str::<planning::DistanceAnswer>(s).unwrap();
    let (a, b) = (answer(&si.out), answer(&us.out));
    assert_eq!((a.inside, a.zone), (b.inside, b.zone));
    assert!((a.reach_m - b.reach_m).abs() < 1e-4);
}

#[test]
fn outside_and_too_heavy_are_outside() {
    let far = look("900 kg", "9 m", "3.0 m", &[]);
    assert_eq!(far.code, 3);
    assert!(far.out.starts_with("OUTSIDE THE CHART"), "{}", far.out);
    let heavy = look("2400 kg", "2.2 m", "3.0 m", &[]);
    assert_eq!(heavy.code, 3);
    assert!(heavy.out.starts_with("OUTSIDE THE CHART"), "{}", heavy.out);
}

#[test]
fn all_wrong_arguments_at_once() {
    let said = look("heavy", "2.2", "3 kg", &[]);
    assert_eq!(said.code, 1);
    for word in ["--load", "--distance", "--height"] {
        assert!(said.err.contains(word), "{word}: {}", said.err);
    }
    let wrong = run(&[
        "check",
        "examples/demo-job/machines/demo-7.toml",
        "--attachment",
        "grab",
        "--support",
        "tyres",
        "--load",
        "1 t",
        "--distance",
        "1 m",
        "--from",
        "front-axle",
        "--to",
        "fork-heel",
        "--height",
        "1 m",
    ]);
    assert_eq!(wrong.code, 1);
    assert!(wrong.err.contains("forks"), "names what there is: {}", wrong.err);
}

#[test]
fn a_turning_upper_part_is_named_and_a_platform_for_people_refused() {
    let one_line = |text: &str| text.split_whitespace().collect::<Vec<_>>().join(" ");
    let named = |said: &crate::support::Said| one_line(&said.out).contains("Turning upper part");
    assert!(!named(&look("900 kg", "2.2 m", "3.0 m", &[])));
    let ask = |file: &str, attachment: &str, support: &str| {
        let mut args = DEMO.to_vec();
        (args[1], args[3], args[5]) = (file, attachment, support);
        args.extend(["--load", "900 kg", "--distance", "5 m", "--height", "3.0 m"]);
        run(&args)
    };
    let turning = ask("examples/machines/ibis-21r.toml", "forks", "outriggers");
    assert!(named(&turning), "{}{}", turning.out, turning.err);
    let scratch = crate::support::Scratch::new("people");
    let file = scratch.0.join("m.toml");
    let demo = crate::support::root().join("examples/demo-job/machines/demo-7.toml");
    let text = std::fs::read_to_string(demo).unwrap();
    let basket = "\n[[platform]]\nid = \"basket\"\nname = \"Basket\"\nmass = \"220 kg\"\ncentre = [\"0.58 m\", \"-0.58 m\"]\n\
                  capacity = \"1000 kg\"\nfloor = [\"0.32 m\", \"-0.62 m\"]\n";
    std::fs::write(&file, text + basket).unwrap();
    let people = ask(file.to_str().unwrap(), "basket", "tyres");
    assert_eq!(people.code, 1, "{}{}", people.out, people.err);
    assert!(people.err.contains("cli::people") && !people.out.contains("INSIDE"), "{}", people.err);
}
