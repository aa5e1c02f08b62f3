//! Schemas of job and machine files: made from what reading asks for, true of every file in the project.

use crate::folder::project;
use crate::shown;
use jobfile::{FileKind, Kind, Node, Value, file_schema, read_table};
use serde_json::json;
use std::collections::{BTreeMap, BTreeSet};

/// Descriptions are checked for being there, not for their words: those are `wording`'s.
fn say(message: &evidence::Message) -> String {
    message.id.to_string()
}

fn folder(files: impl IntoIterator<Item = (String, String)>) -> BTreeMap<String, Vec<u8>> {
    files.into_iter().map(|(path, text)| (path, text.into_bytes())).collect()
}

fn complete() -> BTreeMap<String, Vec<u8>> {
    let mut files = folder(jobfile::complete_job().map(|(path, text)| (path.to_owned(), text.to_owned())));
    files.insert(jobfile::COMPLETE_SITE.0.to_owned(), jobfile::COMPLETE_SITE.1.to_vec());
    files
}

#[test]
fn complete_files_read_without_faults() {
    let folder = complete();
    let text = std::str::from_utf8(&folder["job.toml"]).unwrap();
    let (job, warnings) = jobfile::read_job(&folder).unwrap_or_else(|f| panic!("{:#?}", shown::all(&f, text)));
    assert!(warnings.list.is_empty(), "{:#?}", shown::all(&warnings, text));
    assert!(job.invented && job.machines[0].machine.invented);
}

/// A key that reading asks for, of which the complete files say nothing, has no place in the schema.
#[test]
fn the_complete_files_hold_every_key_that_reading_asks_for() {
    for (file, notes) in [("machine.toml", jobfile::machine_shapes()), ("job.toml", jobfile::job_shapes())] {
        let mut unmet = Vec::new();
        for (path, table) in &notes.shapes {
            let inside_a_fact = path.rsplit_once('.').map_or(("", path.as_str()), |(around, key)| (around, key));
            let fact = notes.shapes.get(inside_a_fact.0).and_then(|t| t.key(inside_a_fact.1));
            if fact.is_some_and(|k| k.kinds.iter().any(|kind| matches!(kind, Kind::Fact { .. }))) {
                continue;
            }
            if table.keys_are_ids && table.keys.iter().any(|k| k.key != "source" && !k.kinds.is_empty()) {
                continue;
            }
            for key in table.keys.iter().filter(|k| k.kinds.is_empty() || k.kinds == [Kind::List]) {
                unmet.push(jobfile::join(path, &key.key));
            }
        }
        assert!(unmet.is_empty(), "crates/jobfile/complete has no {unmet:?} in its {file}");
        assert!(notes.open.is_empty());
    }
}

#[test]
fn every_key_is_in_the_catalogue_and_the_catalogue_holds_nothing_else() {
    let files = [(FileKind::Machine, jobfile::machine_shapes()), (FileKind::Job, jobfile::job_shapes())];
    for (kind, notes) in files {
        let schema = file_schema(kind, &say);
        let mut met = BTreeSet::new();
        described(kind, &schema, "", &mut met);
        let known: BTreeSet<&str> = jobfile::fields(kind).map(|f| f.path).collect();
        let unused: Vec<_> = known.difference(&met).collect();
        assert!(unused.is_empty(), "{kind:?}: the catalogue has {unused:?}, which nothing reads");
        for (path, table) in &notes.shapes {
            for key in &table.keys {
                let path = jobfile::join(path, &key.key);
                if key.key == "value" {
                    continue;
                }
                let field = jobfile::field(kind, &path);
                assert!(field.is_some(), "{kind:?}: {path} is not in the catalogue (schema_fields.rs)");
            }
        }
    }
}

/// Every property has a description; notes the catalogue's entries that were used.
fn described(kind: FileKind, schema: &serde_json::Value, path: &str, met: &mut BTreeSet<&'static str>) {
    let serde_json::Value::Object(map) = schema else { return };
    if let Some(serde_json::Value::Object(properties)) = map.get("properties") {
        assert_eq!(map["type"], "object", "{path}");
        for (key, property) in properties {
            let inside = jobfile::join(path, key);
            if let Some(field) = jobfile::field(kind, &inside) {
                met.insert(field.path);
            }
            let fact = properties.len() == 2 && properties.contains_key("value");
            assert!(fact || property["description"].is_string(), "{inside} has no description");
            described(kind, property, &inside, met);
        }
        let others = &map["additionalProperties"];
        if let serde_json::Value::Object(_) = others {
            let inside = format!("{path}.x");
            met.extend(jobfile::field(kind, &inside).map(|f| f.path));
        } else {
            assert_eq!(others, &json!(false), "{path}: unknown keys are refused");
        }
    }
    if let Some(items) = map.get("items") {
        described(kind, items, &format!("{path}[]"), met);
    }
    if let Some(serde_json::Value::Array(options)) = map.get("anyOf") {
        for option in options {
            described(kind, option, path, met);
        }
    }
}

fn as_json(node: &Node) -> serde_json::Value {
    match &node.value {
        Value::Text(t) | Value::Date(t) => json!(t),
        Value::Number(n) => serde_json::from_str(n).unwrap_or_else(|_| json!(n)),
        Value::Bool(b) => json!(b),
        Value::Nothing => serde_json::Value::Null,
        Value::List(items) => items.iter().map(as_json).collect(),
        Value::Table(table) => {
            table.entries.iter().map(|e| (e.key.clone(), as_json(&e.node))).collect::<serde_json::Map<_, _>>().into()
        }
    }
}

/// Every job and machine file of the project: on disk, in the manual, the starter, the complete files.
fn all_files() -> Vec<(FileKind, String, String)> {
    let mut texts: Vec<(String, String)> = jobfile::starter_job();
    texts.extend(jobfile::complete_job().map(|(path, text)| (format!("complete/{path}"), text.to_owned())));
    let page = std::fs::read_to_string(project().join("docs/job-files.md")).unwrap();
    for (i, example) in page.split("```toml\n").skip(1).enumerate() {
        texts.push((format!("docs/job-files.md, example {i}"), example.split("```").next().unwrap().to_owned()));
    }
    let mut folders = vec![project().join("examples"), project().join("validation")];
    while let Some(folder) = folders.pop() {
        for entry in std::fs::read_dir(folder).unwrap() {
            let path = entry.unwrap().path();
            if path.is_dir() {
                folders.push(path);
            } else if path.extension().is_some_and(|e| e == "toml") {
                texts.push((path.display().to_string(), std::fs::read_to_string(&path).unwrap()));
            }
        }
    }
    let kind = |text: &str| {
        let says = |format: &str| text.contains(&format!("format = \"{format}\""));
        match (says(jobfile::MACHINE_FORMAT), says(jobfile::JOB_FORMAT)) {
            (true, false) => Some(FileKind::Machine),
            (false, true) => Some(FileKind::Job),
            _ => None,
        }
    };
    texts.into_iter().filter_map(|(name, text)| Some((kind(&text)?, name, text))).collect()
}

/// Checked by a validator of others, so that the schema says to an editor what it says to us.
#[test]
fn every_file_of_the_project_holds_to_its_schema() {
    let [machine, job] = [FileKind::Machine, FileKind::Job].map(|kind| {
        let schema = file_schema(kind, &say);
        assert!(jsonschema::meta::is_valid(&schema));
        jsonschema::validator_for(&schema).unwrap()
    });
    let files = all_files();
    assert!(files.len() >= 10, "{}", files.len());
    for (kind, name, text) in files {
        let document = read_table("file.toml", text.as_bytes());
        assert!(!document.faults().any_error(), "{name}");
        let value = as_json(document.node());
        let validator = if kind == FileKind::Machine { &machine } else { &job };
        let faults: Vec<String> =
            validator.iter_errors(&value).map(|e| format!("{}: {e}", e.instance_path())).collect();
        assert!(faults.is_empty(), "{name}: {faults:#?}");
    }
}

#[test]
fn what_reading_refuses_the_schema_refuses() {
    let schema = file_schema(FileKind::Machine, &say);
    let validator = jsonschema::validator_for(&schema).unwrap();
    let whole = jobfile::complete_job()[1].1;
    let faulty = |from: &str, to: &str| {
        let text = whole.replacen(from, to, 1);
        assert_ne!(text, whole, "{from}");
        assert!(jobfile::read_machine("machine.toml", text.as_bytes()).is_err(), "{to:?} reads");
        let value = as_json(read_table("machine.toml", text.as_bytes()).node());
        assert!(!validator.is_valid(&value), "{to:?} is valid");
    };
    faulty("wheelbase = \"2.45 m\"\n", "");
    faulty("wheelbase =", "wheel_base =");
    faulty("wheelbase = \"2.45 m\"", "wheelbase = 2.45");
    faulty("wheelbase = \"2.45 m\"", "wheelbase = \"2.45\"");
    faulty("lock = \"above-boom-angle\"", "lock = \"sometimes\"");
    faulty("lock_angle = \"40°\"", "lock_angle = \"40\"");
    faulty("stiffness = \"320 kN/m\"", "stiffness = \"320\"");
    faulty("kind = \"frame\"", "kind = \"boom\"");
    faulty("modified = false", "modified = \"no\"");
    faulty("share = 1\n", "share = 7\n");
    faulty("foot = [\"-2.05 m\", \"1.50 m\"]", "foot = [\"-2.05 m\"]");
    faulty("counterpoise-machine/1", "counterpoise-machine/9");
    faulty("outline = [[0.6, 0.0], [1.3, 0.0], [1.3, 3.0], [0.6, 3.0]]", "outline = [[0.6, 0.0]]");
}
