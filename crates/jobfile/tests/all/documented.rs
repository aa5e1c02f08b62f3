//! `docs/job-files.md` is true: its examples read, and it knows every key of every example.

use crate::folder::project;
use crate::shown;
use jobfile::{Node, Value};
use std::collections::{BTreeMap, BTreeSet};

fn page() -> String {
    std::fs::read_to_string(project().join("docs/job-files.md")).unwrap()
}

/// The TOML examples of the page, in order.
fn examples(page: &str) -> Vec<&str> {
    page.split("```toml\n").skip(1).map(|rest| rest.split("```").next().unwrap()).collect()
}

#[test]
fn the_examples_of_the_page_read_without_faults() {
    let page = page();
    let [job, machine] = examples(&page)[..] else { panic!("the page has one job and one machine") };
    let (read, warnings) = jobfile::read_machine("machines/my-machine.toml", machine.as_bytes())
        .unwrap_or_else(|f| panic!("{:#?}", shown::all(&f, machine)));
    assert!(warnings.list.is_empty(), "{warnings:?}");
    assert_eq!((read.attachments.len(), read.charts.len()), (2, 1));
    let levels = jobfile::starter_job().into_iter().find(|(path, _)| path == "survey/levels.csv").unwrap().1;
    let folder: BTreeMap<String, Vec<u8>> = [
        ("job.toml", job.as_bytes().to_vec()),
        ("machines/my-machine.toml", machine.as_bytes().to_vec()),
        ("survey/levels.csv", levels.into_bytes()),
    ]
    .map(|(path, bytes)| (path.to_owned(), bytes))
    .into();
    let (read, _) = jobfile::read_job(&folder).unwrap_or_else(|f| panic!("{:#?}", shown::all(&f, job)));
    assert_eq!((read.lines.len(), read.loads.len(), read.lifts.len(), read.gates.len()), (2, 3, 1, 1));
    assert_eq!(read.policy.line_allowance, 2.0);
    // 1515 kg, 8 % above.
    assert!((read.loads[1].mass_kg.high - 1515.0 * 1.08).abs() < 1e-9);
}

/// The examples of charts read, each with the page's machine in place of its own chart.
#[test]
fn the_charts_of_the_page_read_without_faults() {
    let page = page();
    let [_, machine] = examples(&page)[..] else { panic!("the page has one job and one machine") };
    let head = machine.split("[[chart]]").next().unwrap();
    let charts: Vec<&str> =
        page.split("```toml chart\n").skip(1).map(|rest| rest.split("```").next().unwrap()).collect();
    assert_eq!(charts.len(), 4, "one of each form");
    for chart in charts {
        let text = format!("{head}{chart}");
        let (read, warnings) = jobfile::read_machine("machines/my-machine.toml", text.as_bytes())
            .unwrap_or_else(|f| panic!("{:#?}", shown::all(&f, &text)));
        assert!(warnings.list.is_empty(), "{:#?}", shown::all(&warnings, &text));
        assert_eq!(read.charts.len(), 1);
    }
}

fn keys(node: &Node, into: &mut BTreeSet<String>) {
    match &node.value {
        Value::Table(table) => {
            for entry in &table.entries {
                into.insert(entry.key.clone());
                keys(&entry.node, into);
            }
        }
        Value::List(items) => items.iter().for_each(|item| keys(item, into)),
        _ => {}
    }
}

#[test]
fn every_key_of_every_example_is_explained() {
    let root = project();
    let page = page();
    let mut files: Vec<(String, String)> = jobfile::starter_job();
    for path in ["examples/demo-job/job.toml", "examples/demo-job/machines/demo-14.toml", "validation/machines/r1.toml"]
    {
        files.push((path.to_owned(), std::fs::read_to_string(root.join(path)).unwrap()));
    }
    let mut all = BTreeSet::new();
    for (path, text) in files.iter().filter(|(path, _)| !path.starts_with("survey/")) {
        let document = jobfile::read_table(path, text.as_bytes());
        keys(document.node(), &mut all);
    }
    assert!(all.len() > 90, "only {} keys found", all.len());
    // Outside of its examples the page has each key in code marks.
    let prose: String = page.split("```").step_by(2).collect();
    let named = |key: &str| {
        prose
            .split('`')
            .skip(1)
            .step_by(2)
            .any(|code| code.split(|c: char| !(c.is_alphanumeric() || c == '_')).any(|word| word == key))
    };
    let missing: Vec<_> = all.iter().filter(|key| !named(key)).collect();
    assert!(missing.is_empty(), "docs/job-files.md does not explain {missing:?}");
}

/// The page lists every material with its densities, and none that does not exist.
#[test]
fn every_material_stands_on_the_page_with_its_densities() {
    let page = page();
    let rows: Vec<&str> = page
        .lines()
        .skip_while(|l| *l != "## Materials")
        .skip_while(|l| !l.starts_with("| ---"))
        .skip(1)
        .take_while(|l| l.starts_with('|'))
        .collect();
    let wanted: Vec<String> = machine::materials()
        .iter()
        .map(|m| {
            let density = if m.low == m.high { m.low.to_string() } else { format!("{} to {}", m.low, m.high) };
            format!("| `{}` | {density} | ", m.id)
        })
        .collect();
    assert_eq!(rows.len(), wanted.len());
    for (row, wanted) in rows.iter().zip(wanted) {
        assert!(row.starts_with(&wanted), "{row}: expected {wanted}");
        let remembered = machine::material(wanted.split('`').nth(1).unwrap()).unwrap().reading;
        assert_eq!(row.contains("from memory"), remembered == evidence::Reading::FromMemory, "{row}");
    }
}
