//! The starter job: honest while it is not filled in, to its last placeholder.

use crate::shown;
use evidence::{Severity, Verdict};
use std::collections::BTreeMap;

type Folder = BTreeMap<String, String>;

/// The starter with its commented examples taken in (all but the machine out of service).
fn starter() -> Folder {
    let example = |line: &str| {
        line.strip_prefix("# ").is_some_and(|rest| {
            let key = rest.split(" = ").next().unwrap_or_default();
            let is_key = rest.contains(" = ") && key.chars().all(|c| c.is_ascii_lowercase() || c == '_');
            rest.starts_with("[[") || is_key
        }) && !line.contains("tagged_out")
    };
    jobfile::starter_job()
        .into_iter()
        .map(|(path, text)| {
            let lines = text.lines().map(|l| if example(l) { l.replacen("# ", "", 1) } else { l.to_owned() });
            (path, lines.map(|l| l + "\n").collect())
        })
        .collect()
}

/// Every placeholder outside of comments: path, and byte range of the text in its quotes (of the remark in the levels).
fn placeholders(folder: &Folder) -> Vec<(String, std::ops::Range<usize>)> {
    let mut found = Vec::new();
    for (path, text) in folder {
        let close = if path.ends_with("csv") { '\n' } else { '"' };
        let open = if path.ends_with("csv") { "," } else { "\"" };
        for (at, _) in text.match_indices(&format!("{open}{}", jobfile::PLACEHOLDER)) {
            let start = at + 1;
            if text[..start].rsplit('\n').next().unwrap().starts_with('#') {
                continue;
            }
            found.push((path.clone(), start..start + text[start..].find(close).unwrap()));
        }
    }
    found
}

/// What a filled-in file says there: the made-up value, or words; sources as they should be.
fn filled(line: &str, placeholder: &str) -> String {
    let rest = placeholder.strip_prefix(jobfile::PLACEHOLDER).unwrap().trim_start_matches([':', ' ']);
    match line.split([' ', '=']).next().unwrap() {
        "date" | "next" => "2031-05-06".into(),
        "source" => rest.split(',').next().unwrap().into(),
        "mass" if rest == "1200 kg" => "400 kg".into(),
        "strength" => "600 kPa".into(),
        "stops" => String::new(),
        _ if placeholder.starts_with("FILL IN: ") => format!("somebody's {}", rest.len()),
        _ => rest.into(),
    }
}

/// All filled in, but the placeholders for which `keep` is true.
fn fill(folder: &Folder, keep: impl Fn(usize) -> bool) -> BTreeMap<String, Vec<u8>> {
    let mut out = folder.clone();
    for (_, (path, range)) in placeholders(folder).into_iter().enumerate().rev().filter(|(i, _)| !keep(*i)) {
        let text = &folder[&path];
        let line = text[..range.start].rsplit('\n').next().unwrap().to_owned();
        let value = if path.ends_with("csv") { String::new() } else { filled(&line, &text[range.clone()]) };
        out.get_mut(&path).unwrap().replace_range(range, &value);
    }
    let machine = out.get_mut("machines/my-machine.toml").unwrap();
    *machine = machine.replace(
        "thickness_new = \"40 mm\"",
        "thickness_new = \"40 mm\", thickness_now = \"39 mm\", crack = false, modified = false",
    );
    let job = out.get_mut("job.toml").unwrap();
    *job =
        job.replace("stops = [\"\"]", "stops = []").replace("\"not-seen\"                # \"sound\"", "\"sound\" # ");
    out.into_iter().map(|(path, text)| (path, text.into_bytes())).collect()
}

fn verdict(folder: &BTreeMap<String, Vec<u8>>) -> (planning::Plan, evidence::Faults) {
    match jobfile::read_job(folder) {
        Ok((job, warnings)) => (planning::plan(&job), warnings),
        Err(faults) => panic!("{:#?}", shown::all(&faults, std::str::from_utf8(&folder["job.toml"]).unwrap())),
    }
}

#[test]
fn everything_filled_in_may_be_made() {
    let (plan, warnings) = verdict(&fill(&starter(), |_| false));
    let open: Vec<_> = warnings.list.iter().filter(|f| f.code == "jobfile::placeholder").collect();
    assert!(open.is_empty(), "{open:#?}");
    let stops = plan.lifts[0].findings.iter().filter(|f| f.status >= evidence::Status::CannotTell);
    let why: Vec<_> = stops.map(|f| format!("{} {}", f.message.id, shown::args(&f.message))).collect();
    // The lock is not seen yet: a condition, not a go.
    assert_eq!(plan.verdict, Verdict::GoWithConditions, "{why:#?}");
}

#[test]
fn one_placeholder_left_is_never_a_go_and_is_listed_with_its_line() {
    let starter = starter();
    let all = placeholders(&starter);
    assert!(all.len() > 50, "{}", all.len());
    for (i, (path, range)) in all.iter().enumerate() {
        let folder = fill(&starter, |k| k == i);
        let (plan, warnings) = verdict(&folder);
        let what = format!("{path}: {}", &starter[path][range.clone()]);
        assert_eq!(plan.verdict, Verdict::NoGo, "{what}");
        assert!(plan.lifts[0].steps.is_empty(), "{what}");
        let said: Vec<_> = warnings.list.iter().filter(|f| f.code == "jobfile::placeholder").collect();
        assert_eq!(said.len(), 1, "{what}: {said:#?}");
        let line = 1 + starter[path][..range.start].matches('\n').count();
        assert_eq!((said[0].place.file.as_str(), said[0].place.line), (path.as_str(), Some(line)), "{what}");
        assert_eq!(said[0].severity, Severity::Warning);
        assert!(said[0].hint.is_some());
    }
}

#[test]
fn the_untouched_starter_plans_to_an_honest_no_go() {
    let untouched: Folder = jobfile::starter_job().into_iter().collect();
    let bytes = untouched.iter().map(|(path, text)| (path.clone(), text.clone().into_bytes())).collect();
    let (plan, warnings) = verdict(&bytes);
    assert_eq!(plan.verdict, Verdict::NoGo);
    let expected = placeholders(&untouched).len();
    let said = warnings.list.iter().filter(|f| f.code == "jobfile::placeholder").count();
    assert_eq!(said, expected);
    assert!(plan.inputs.iter().any(|i| i.certainty == evidence::Certainty::Estimated));
}

/// Outside of jobs and machine files, where nothing would come of a warning, it is a fault.
#[test]
fn a_calculation_takes_no_placeholder() {
    let text = "load = \"FILL IN 1200 kg\"\nname = \"FILL IN\"\n";
    let document = jobfile::read_table("calc.toml", text.as_bytes());
    let root = document.root();
    assert_eq!(root.decision("load", quantity::Dimension::Mass, jobfile::Bound::Positive), None);
    assert_eq!(root.text_or_none("name"), None);
    let found = document.faults();
    assert_eq!(found.list.len(), 2);
    assert!(found.list.iter().all(|f| f.severity == Severity::Error && f.code == "jobfile::placeholder"));
}
