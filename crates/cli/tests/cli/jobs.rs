//! Planning a job.

use crate::support::{Scratch, run, run_in};

#[test]
fn the_demo_gives_a_verdict_for_every_lift_and_exit_code_three() {
    let said = run(&["plan", "examples/demo-job"]);
    assert_eq!(said.code, 3, "{}", said.err);
    for word in ["GO WITH CONDITIONS", "NO-GO", "Load chart:", "Overhead lines:", "Level:"] {
        assert!(said.out.contains(word), "{word} missing:\n{}", said.out);
    }
    assert!(said.out.lines().all(|l| l.chars().count() <= 80), "80 columns");
    let job = run(&["plan", "examples/demo-job/job.toml"]);
    assert_eq!(job.out, said.out, "folder or file, the same job");
}

#[test]
fn spanish_and_us_units_change_words_and_numbers_but_no_verdict() {
    let (si, us) =
        (run(&["plan", "examples/demo-job"]), run(&["plan", "examples/demo-job", "--units", "us", "--lang", "es"]));
    assert_eq!((si.code, us.code), (3, 3));
    assert!(us.out.contains("lb") && !us.out.contains(" kg"), "{}", us.out);
    assert!(us.out.contains("Tabla de cargas"), "{}", us.out);
    let json = |args: &[&str]| run(args).out;
    let (a, b) = (
        json(&["plan", "examples/demo-job", "--format", "json"]),
        json(&["plan", "examples/demo-job", "--format", "json", "--units", "us", "--lang", "es"]),
    );
    assert_eq!(a, b, "the plan for programs is the same in every language");
    let plan: planning::Plan = serde_json::from_str(&a).unwrap();
    assert_eq!(planning::digest(&plan), plan.digest);
}

#[test]
fn exit_codes_are_those_of_the_worst_lift() {
    let scratch = Scratch::with_demo("codes");
    let keep = |ids: &[&str]| {
        let text = std::fs::read_to_string(crate::support::root().join("examples/demo-job/job.toml")).unwrap();
        let (head, rest) = text.split_at(text.find("[[lift]]").unwrap());
        let (lifts, tail) = rest.split_at(rest.find("# What named persons").unwrap());
        let wanted = |l: &&str| ids.iter().any(|id| l.contains(&format!("id = \"{id}\"")));
        let kept = lifts.split("[[lift]]").filter(wanted).fold(String::new(), |all, l| all + "[[lift]]" + l);
        std::fs::write(scratch.0.join("job/job.toml"), format!("{head}{kept}{tail}")).unwrap();
        run_in(&scratch.0, &["plan", "job"], None)
    };
    assert_eq!(keep(&["1"]).code, 0);
    assert_eq!(keep(&["1", "6"]).code, 4);
    assert_eq!(keep(&["1", "6", "2"]).code, 3);
}

#[test]
fn a_new_job_reads_plans_to_an_honest_no_go_and_is_never_overwritten() {
    let scratch = Scratch::new("new");
    let made = run_in(&scratch.0, &["new", "yard"], None);
    assert_eq!(made.code, 0, "{}", made.err);
    let planned = run_in(&scratch.0, &["plan", "yard"], None);
    assert_eq!(planned.code, 3, "{}{}", planned.out, planned.err);
    let again = run_in(&scratch.0, &["new", "yard"], None);
    assert_eq!(again.code, 1);
    assert!(again.err.contains("not empty"), "{}", again.err);
}

#[test]
fn help_teaches_and_wrong_usage_is_two() {
    let help = run(&["--help"]);
    assert_eq!(help.code, 0);
    for word in ["plan", "check", "calc", "new", "serve", "Exit codes", "manual"] {
        assert!(help.out.contains(word), "{word}");
    }
    for args in [&["plan"][..], &["plann", "x"], &["check", "m.toml"], &[]] {
        assert_eq!(run(args).code, 2, "{args:?}");
    }
    let completions = run(&["completions", "bash"]);
    assert!(completions.code == 0 && completions.out.contains("counterpoise"));
}
