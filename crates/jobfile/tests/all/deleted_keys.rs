//! Each key of the demo's files deleted in turn: a fault, or a plan that is no better in any lift.

use crate::folder::{demo, text};
use evidence::Verdict;
use jobfile::{Node, Value};
use planning::{Lift, SetBacks, check_lift_with};
use std::collections::BTreeMap;
use std::fmt::Write as _;

/// Deleting these is another statement, not a missing one: the file then says that there is no such
/// thing: overhead lines, which somebody states to be complete; what stands on the site, likewise ("obstacles").
const OTHER_STATEMENTS: [&str; 2] = ["line", "thing"];

/// A value as inline TOML.
fn print(node: &Node, out: &mut String) {
    match &node.value {
        Value::Text(t) => write!(out, "{t:?}").unwrap(),
        Value::Number(n) | Value::Date(n) => out.push_str(n),
        Value::Bool(b) => write!(out, "{b}").unwrap(),
        Value::Nothing => panic!("TOML has no nothing"),
        Value::List(items) => {
            out.push('[');
            for item in items {
                print(item, out);
                out.push(',');
            }
            out.push(']');
        }
        Value::Table(table) => {
            let entries = table.entries.iter().map(|e| {
                let mut entry = format!("{} = ", e.key);
                print(&e.node, &mut entry);
                entry
            });
            write!(out, "{{{}}}", entries.collect::<Vec<_>>().join(", ")).unwrap();
        }
    }
}

/// A file as TOML, one line a key of the outermost table.
fn file(root: &Node) -> String {
    let Value::Table(table) = &root.value else { panic!("a file is a table") };
    let mut out = String::new();
    for entry in &table.entries {
        write!(out, "{} = ", entry.key).unwrap();
        print(&entry.node, &mut out);
        out.push('\n');
    }
    out
}

/// Every key in a value, at any depth: its place as indexes into entries and items, and its path.
fn paths(node: &Node, path: &mut Vec<usize>, name: &str, into: &mut Vec<(Vec<usize>, String)>) {
    let children: Vec<(String, &Node, bool)> = match &node.value {
        Value::Table(t) => t.entries.iter().map(|e| (format!("{name}.{}", e.key), &e.node, true)).collect(),
        Value::List(items) => items.iter().enumerate().map(|(i, n)| (format!("{name}[{}]", i + 1), n, false)).collect(),
        _ => Vec::new(),
    };
    for (i, (name, child, is_key)) in children.into_iter().enumerate() {
        path.push(i);
        if is_key {
            into.push((path.clone(), name.trim_start_matches('.').to_owned()));
        }
        paths(child, path, &name, into);
        path.pop();
    }
}

fn without(root: &Node, path: &[usize]) -> Node {
    let mut changed = root.clone();
    let (last, way) = path.split_last().unwrap();
    let mut at = &mut changed;
    for i in way {
        at = match &mut at.value {
            Value::Table(t) => &mut t.entries[*i].node,
            Value::List(items) => &mut items[*i],
            _ => panic!("no way in"),
        };
    }
    let Value::Table(t) = &mut at.value else { panic!("keys stand in tables") };
    t.entries.remove(*last);
    changed
}

/// How far from a go: 0, 1, 2.
fn badness(verdict: Verdict) -> u8 {
    match verdict {
        Verdict::Go => 0,
        Verdict::GoWithConditions => 1,
        Verdict::NoGo => 2,
    }
}

/// Verdicts by lift id; `None` where the files have a fault. What excavations ask is solved once for all of them.
fn verdicts(folder: &BTreeMap<String, Vec<u8>>, set_backs: &mut SetBacks) -> Option<BTreeMap<String, u8>> {
    let (job, _) = jobfile::read_job(folder).ok()?;
    let of = |lift: &Lift, set_backs: &mut SetBacks| check_lift_with(&job, lift, set_backs).unwrap().verdict();
    Some(job.lifts.iter().map(|l| (l.id.clone(), badness(of(l, set_backs)))).collect())
}

fn each_key_of(path: &str) {
    let whole = demo();
    let mut set_backs = SetBacks::default();
    let before = verdicts(&whole, &mut set_backs).unwrap();
    let document = jobfile::read_table(path, text(&whole, path).as_bytes());
    let root = document.node();
    let with = |root: &Node| {
        let mut folder = whole.clone();
        folder.insert(path.to_owned(), file(root).into_bytes());
        folder
    };
    assert_eq!(verdicts(&with(root), &mut set_backs).as_ref(), Some(&before), "{path} says the same in one line a key");
    let mut keys = Vec::new();
    paths(root, &mut Vec::new(), "", &mut keys);
    assert!(keys.len() > 100, "{path}: only {} keys", keys.len());
    let mut better = Vec::new();
    let mut faults = 0;
    for (at, name) in keys.iter().filter(|(_, name)| !OTHER_STATEMENTS.contains(&name.as_str())) {
        let Some(after) = verdicts(&with(&without(root, at)), &mut set_backs) else {
            faults += 1;
            continue;
        };
        for (lift, now) in after {
            // A lift without its id is a fault; the ids stay.
            if now < before[&lift] {
                better.push(format!("without {name} lift {lift} is better"));
            }
        }
    }
    assert!(better.is_empty(), "{path}: {better:#?}");
    assert!(faults > keys.len() / 2, "{path}: {faults} of {} keys are needed", keys.len());
}

#[test]
fn no_key_of_the_job_is_better_left_out() {
    each_key_of("job.toml");
}

#[test]
fn no_key_of_the_large_machine_is_better_left_out() {
    each_key_of("machines/demo-14.toml");
}

#[test]
fn no_key_of_the_compact_machine_is_better_left_out() {
    each_key_of("machines/demo-7.toml");
}
