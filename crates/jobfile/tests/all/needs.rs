//! What a machine file lacks, and which checks wait for it.

use crate::folder::project;
use jobfile::{MachineReview, Need, Ready, review_machine};

fn review(text: &str) -> MachineReview {
    review_machine("machine.toml", text.as_bytes())
}

fn whole() -> String {
    std::fs::read_to_string(project().join("examples/demo-job/machines/demo-14.toml")).unwrap()
}

fn lacks(review: &MachineReview, need: Need) -> Vec<&str> {
    review.lacks.iter().filter(|l| l.need == need).map(|l| l.path.as_str()).collect()
}

fn ready(review: &MachineReview, check: &str) -> Ready {
    review.checks.iter().find(|c| c.check == check).unwrap().ready
}

#[test]
fn every_machine_of_the_project_lacks_nothing_that_must_be_there() {
    for folder in ["examples/machines", "examples/demo-job/machines"] {
        for entry in std::fs::read_dir(project().join(folder)).unwrap() {
            let path = entry.unwrap().path();
            if path.extension().is_none_or(|e| e != "toml") {
                continue;
            }
            let review = review(&std::fs::read_to_string(&path).unwrap());
            let name = path.display();
            assert!(review.machine.is_some(), "{name}: {:?}", review.faults);
            assert!(lacks(&review, Need::Mandatory).is_empty(), "{name}: {:?}", review.lacks);
        }
    }
}

/// Reading is the measure: each line taken out that makes a missing-key fault is a lack, and no other is mandatory.
#[test]
fn what_reading_misses_is_what_is_missing() {
    let whole = whole();
    let lines: Vec<&str> = whole.lines().collect();
    let mut missed = 0;
    for (i, line) in lines.iter().enumerate().filter(|(_, l)| l.contains(" = ") && !l.starts_with('#')) {
        let rest: Vec<&str> = lines.iter().enumerate().filter(|(k, _)| *k != i).map(|(_, l)| *l).collect();
        let text = rest.join("\n");
        let said = match jobfile::read_machine("machine.toml", text.as_bytes()) {
            Ok(_) => Vec::new(),
            Err(faults) => faults.list.into_iter().filter(|f| f.code == "jobfile::missing-key").collect(),
        };
        let review = review(&text);
        let mandatory = lacks(&review, Need::Mandatory);
        // A table that is missing as a whole is told by the keys it must have.
        let inside = |path: &str, table: &str| path == table || path.starts_with(&format!("{table}."));
        for fault in &said {
            let key = fault.place.key.as_deref().unwrap();
            assert!(mandatory.iter().any(|p| inside(p, key)), "{line}: {key} is not among {mandatory:?}");
        }
        let told = |path: &str| said.iter().any(|f| inside(path, f.place.key.as_deref().unwrap()));
        let more: Vec<_> = mandatory.iter().filter(|p| **p != "format" && !told(p)).collect();
        assert!(more.is_empty(), "{line}: {more:?} against {said:#?}");
        missed += said.len();
    }
    assert!(missed > 100, "{missed}");
}

#[test]
fn an_empty_file_and_no_file_at_all_say_the_same() {
    let (empty, format) = (review(""), review("format = \"counterpoise-machine/1\"\n"));
    assert_eq!(lacks(&empty, Need::Mandatory)[0], "format");
    assert_eq!(lacks(&empty, Need::Mandatory)[1..], lacks(&format, Need::Mandatory)[..]);
    assert!(lacks(&format, Need::Mandatory).len() > 40, "{:?}", format.lacks);
    assert!(format.checks.iter().all(|c| c.ready != Ready::Yes));
    for lack in &format.lacks {
        assert!(lack.what.is_some() && !lack.checks.is_empty(), "{}", lack.path);
        assert!(lack.place.is_some(), "{}: nobody says where it is found", lack.path);
    }
}

#[test]
fn unknown_is_said_and_told() {
    let review = review(&whole().replacen("pressure = \"4.5 bar\"", "pressure = \"unknown\"", 1));
    assert_eq!(lacks(&review, Need::ForCheck), ["front_axle.tyre.pressure"]);
    assert_eq!(ready(&review, "ground"), Ready::NotYet);
    assert_eq!(ready(&review, "tilt"), Ready::Yes);
}

#[test]
fn an_attachment_without_a_chart_is_named() {
    let text = whole();
    let (before, _) = text.split_once("[[chart]]\nattachment = \"jib\"").unwrap();
    let review = review(before);
    assert_eq!(lacks(&review, Need::ForCheck), ["chart[jib]"]);
    assert_eq!(ready(&review, "chart"), Ready::NotYet);
}

#[test]
fn a_fault_stands_in_the_way_of_the_checks_that_rest_on_it() {
    let review = review(&whole().replacen("side = \"6.4 m²\"", "side = \"6.4 kg\"", 1));
    assert_eq!(ready(&review, "wind"), Ready::NotYet);
    assert_eq!(ready(&review, "forks"), Ready::Yes);
    assert!(!review.complete() && review.machine.is_none());
    // What the charts say is told although reading stopped before them.
    assert!(review.seen.iter().any(|s| s.path == "chart[1].zone[1].outline"), "{:#?}", review.seen);
}

/// Whatever the bytes, there is an answer.
#[test]
fn broken_bytes_are_reviewed_too() {
    let whole = whole();
    for cut in (0..whole.len()).step_by(97) {
        let text = whole.get(..cut).unwrap_or_default();
        let review = review(text);
        assert!(!review.complete() || review.machine.is_some());
    }
    for text in ["[[[", "body = 3\nchart = {}\nforks = [1, 2]\n", "format = 1\nboom = []", "\u{0}"] {
        assert!(!review(text).complete(), "{text:?}");
    }
}
