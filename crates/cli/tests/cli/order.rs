//! The order of a job's lifts.

use crate::support::{Scratch, run, run_in};
use planning::order::{JobOrder, WhyLeftOut};

fn order(said: &str) -> JobOrder {
    serde_json::from_str(said).unwrap()
}

fn starts(order: &JobOrder) -> Vec<(&str, f64)> {
    order.lifts.iter().map(|l| (l.lift.as_str(), l.start_min)).collect()
}

#[test]
fn the_demo_is_ordered_without_its_no_gos() {
    let said = run(&["order", "examples/demo-job"]);
    assert_eq!(said.code, 3, "three must not be done: {}", said.err);
    assert!(said.out.lines().all(|l| l.chars().count() <= 80), "80 columns:\n{}", said.out);
    let found = order(&run(&["order", "examples/demo-job", "--format", "json"]).out);
    let mut placed: Vec<&str> = found.lifts.iter().map(|l| l.lift.as_str()).collect();
    placed.sort_unstable();
    assert_eq!(placed, ["1", "5", "6", "7", "8", "9"]);
    let out: Vec<_> = found.left_out.iter().map(|l| (l.lift.as_str(), l.kind)).collect();
    assert_eq!(out, [("2", WhyLeftOut::NoGo), ("3", WhyLeftOut::NoGo), ("4", WhyLeftOut::NoGo)]);
    for lift in &found.lifts {
        assert!(said.out.contains(&format!("  {} ", lift.lift)), "{} missing:\n{}", lift.lift, said.out);
        let minutes = lift.start_min.ceil() as u32;
        let clock = format!("{:02}:{:02}", minutes / 60, minutes % 60);
        assert!(said.out.contains(&clock), "{clock} missing:\n{}", said.out);
    }
    // Both loads of blocks, each on its landing with what may lie there.
    assert!(said.out.contains("of at most"), "{}", said.out);
    let es = run(&["order", "examples/demo-job", "--lang", "es", "--units", "us"]);
    assert_eq!(es.code, 3);
    assert!(es.out.contains("Sin sitio en el orden") && es.out.contains("lb") && !es.out.contains(" kg"), "{}", es.out);
}

#[test]
fn another_priority_changes_who_comes_first() {
    let first = |args: &[&str]| {
        let mut all = vec!["order", "examples/demo-job", "--format", "json"];
        all.extend(args);
        let found = order(&run(&all).out);
        let of_h14: Vec<String> = found.lifts.iter().filter(|l| l.machine == "H14").map(|l| l.lift.clone()).collect();
        of_h14[0].clone()
    };
    for id in ["1", "6", "7"] {
        let others: Vec<String> =
            ["1", "6", "7"].iter().map(|o| format!("{o}={}", if *o == id { 1 } else { 9 })).collect();
        let args: Vec<&str> = others.iter().flat_map(|o| ["--priority", o.as_str()]).collect();
        assert_eq!(first(&args), id);
    }
    let said = run(&["order", "examples/demo-job", "--priority", "7=1"]);
    assert!(said.out.contains("As if lift 7 had priority 1"), "{}", said.out);
}

#[test]
fn wrong_priorities_are_all_said_at_once() {
    let said = run(&[
        "order",
        "examples/demo-job",
        "--priority",
        "7=0",
        "--priority",
        "zz=2",
        "--priority",
        "7",
        "--priority",
        "7=first",
    ]);
    assert_eq!(said.code, 1);
    for word in ["7=0", "“zz”", "“7”", "7=first", "1, 2, 3, 4, 5, 6, 7, 8, 9", "from 1 (first) to 9 (last)"] {
        assert!(said.err.contains(word), "{word}:\n{}", said.err);
    }
    assert!(said.out.is_empty());
}

#[test]
fn the_list_has_a_row_for_every_lift() {
    let scratch = Scratch::with_demo("orderlist");
    scratch.edit("job/job.toml", "name = \"Blocks to the loading bay\"", "name = \"Blocks, \\\"grey\\\", to the bay\"");
    let said = run_in(&scratch.0, &["order", "job", "--csv", "order.csv", "--format", "json"], None);
    assert_eq!(said.code, 3, "{}", said.err);
    let found = order(&said.out);
    let text = std::fs::read_to_string(scratch.0.join("order.csv")).unwrap();
    let rows: Vec<&str> = text.lines().collect();
    assert_eq!(rows.len(), 1 + 9);
    assert!(rows[0].starts_with("place,lift,name,machine,start,"));
    for (i, lift) in found.lifts.iter().enumerate() {
        assert!(rows[1 + i].starts_with(&format!("{},{},", i + 1, lift.lift)), "{}", rows[1 + i]);
    }
    assert!(text.contains("\"Blocks, \"\"grey\"\", to the bay\""), "{text}");
    assert_eq!(text.matches(",no-go,").count(), 3);
    let nowhere = run_in(&scratch.0, &["order", "job", "--csv", "none/order.csv"], None);
    assert_eq!(nowhere.code, 1);
    assert!(nowhere.err.contains("none/order.csv"), "{}", nowhere.err);
}

/// Windows and waiting that contradict each other: the lift is left out, with the reason and what was tried.
#[test]
fn contradictions_are_named() {
    let scratch = Scratch::with_demo("contradict");
    let lift = "id = \"1\"\nname = \"Blocks to the loading bay\"\n";
    scratch.edit("job/job.toml", lift, &format!("{lift}window = [\"18:00\", \"19:00\"]\n"));
    let beam = "id = \"6\"\nname = \"Beam to the first-floor slab, hung\"\n";
    scratch.edit("job/job.toml", beam, &format!("{beam}after = [\"7\"]\n"));
    let mats = "id = \"7\"\nname = \"Blocks to the stair tower, on mats\"\n";
    scratch.edit("job/job.toml", mats, &format!("{mats}after = [\"6\"]\n"));
    let said = run_in(&scratch.0, &["order", "job"], None);
    assert_eq!(said.code, 3, "{}", said.err);
    let json = run_in(&scratch.0, &["order", "job", "--format", "json"], None);
    let found = order(&json.out);
    let why = |id: &str| found.left_out.iter().find(|l| l.lift == id).unwrap();
    assert_eq!(why("1").kind, WhyLeftOut::WindowEmpty, "the usual hours end at 17:00");
    assert_eq!((why("6").kind, why("7").kind), (WhyLeftOut::Cycle, WhyLeftOut::Cycle));
    assert!(!why("6").remedies.is_empty());
    let left: Vec<&str> = starts(&found).iter().map(|s| s.0).collect();
    assert_eq!(left, ["5", "9", "8"], "the truck's lift, the one after it, and the one with a window of its own");
    for word in ["18:00", "17:00", "wait for each other"] {
        assert!(said.out.contains(word), "{word}:\n{}", said.out);
    }
}
