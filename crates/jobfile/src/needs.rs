//! What a machine file holds and lacks, for any file however incomplete.

use crate::complete::machine_shapes;
use crate::document::code;
use crate::machine_file::decode_with_notes;
use crate::needs_checks::{MACHINE_CHECKS, checks_of};
use crate::node::{Node, Table, Value};
use crate::schema_fields::{FileKind, field};
use crate::schema_notes::{Kind, Seen, Shapes, join, pattern};
use crate::{needs_rest, schema_words as words, text};
use evidence::{Faults, Severity, TextId};
use machine::Machine;

/// How much a lack matters.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Need {
    /// The file cannot be read without it.
    Mandatory,
    /// The file reads, but the checks it counts for cannot be made.
    ForCheck,
    /// A placeholder stands there: it reads, and is never a go.
    FillIn,
    /// May be left out; with it more can be told.
    Useful,
}

/// A value that a machine file lacks.
#[derive(Debug, Clone, PartialEq)]
pub struct Lack {
    /// Path in the file; lists count from 1.
    pub path: String,
    /// How much it matters.
    pub need: Need,
    /// What it is.
    pub what: Option<TextId>,
    /// Where it is found.
    pub place: Option<TextId>,
    /// What is so without it.
    pub without: Option<TextId>,
    /// The checks it counts for.
    pub checks: &'static [&'static str],
}

/// Whether a check can be made with what the file has.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Ready {
    /// Everything it takes from the machine file is there.
    Yes,
    /// It can be made, and some of what would help is not there.
    Partly,
    /// It cannot be made yet.
    NotYet,
}

/// A check, and what it still waits for.
#[derive(Debug, Clone, PartialEq)]
pub struct CheckNeeds {
    /// Id as findings carry it.
    pub check: &'static str,
    /// Whether it can be made.
    pub ready: Ready,
    /// Indexes of the lacks that count for it.
    pub lacks: Vec<usize>,
    /// True where a fault of the file stands in the way.
    pub faulty: bool,
}

/// Everything that can be told of a machine file.
#[derive(Debug, Clone)]
pub struct MachineReview {
    /// The machine, where the file reads without an error.
    pub machine: Option<Machine>,
    /// What was read, in the order of reading.
    pub seen: Vec<Seen>,
    /// Everything wrong with the file but what is missing.
    pub faults: Faults,
    /// What is missing.
    pub lacks: Vec<Lack>,
    /// Which checks can be made.
    pub checks: Vec<CheckNeeds>,
}

/// Optional keys that are no lack: they say something by being there.
const NO_LACK: [&str; 21] = [
    "source",
    "format",
    "invented",
    "stabilizers",
    "outriggers",
    "levelling",
    "slew",
    "body[].least",
    "rim",
    "stiffness",
    "chart[].unit",
    "chart[].not_permitted",
    "chart[].nested",
    "chart[].rises",
    "chart[].table",
    "chart[].tyres",
    "forks[].extensions",
    "forks[].extensions.cover",
    "forks[].side_shift",
    "forks[].spread_range",
    "proof_load",
];

/// Optional keys without which a check cannot tell.
const DECISIVE: [&str; 3] = ["thickness_new", "thickness_now", "crack"];

/// True for an optional key that is no lack. A table has one pair of axes, a derating row one limit or both.
fn no_lack(key: &str) -> bool {
    NO_LACK.contains(&key) || key.starts_with("chart[].table.") || key.starts_with("chart[].derating[].")
}

/// Reads a machine file and says what it holds and what it lacks, whatever is wrong with it.
pub fn review_machine(name: &str, bytes: &[u8]) -> MachineReview {
    let decoded = decode_with_notes(name, bytes);
    let shapes = machine_shapes().shapes;
    let root = crate::read_table(name, bytes);
    let mut seen = decoded.notes.seen.clone();
    let mut walk = Walk { shapes: &shapes, open: &decoded.notes.open, must: Need::Mandatory, lacks: Vec::new() };
    if let Value::Table(table) = &root.node().value {
        if table.get("format").is_none() {
            walk.lack("format", Need::Mandatory, None);
        }
        walk.table("", "", Some(table));
        walk.charts(table);
        // Charts wait for the rest of the machine; what they say is said before.
        let read = |s: &Seen| seen.iter().any(|known| known.path == s.path);
        let rest: Vec<Seen> = needs_rest::list(&shapes, table, "chart").into_iter().filter(|s| !read(s)).collect();
        seen.extend(rest);
    }
    let missing = [text::MISSING_KEY, text::FORMAT_MISSING, text::NO_CHARTS, text::PLACEHOLDER].map(code);
    for (id, path) in [(text::NO_ATTACHMENT, "forks"), (text::NO_BODY, "body")] {
        if decoded.faults.list.iter().any(|f| f.code == code(id)) {
            walk.missing_list(path, path, Need::Mandatory);
        }
    }
    let mut lacks = walk.lacks;
    lacks.sort_by_key(|l| l.need);
    let told = [text::NO_ATTACHMENT, text::NO_BODY].map(code);
    let mut faults = decoded.faults;
    let any_error = faults.any_error();
    faults.list.retain(|f| !missing.contains(&f.code) && !told.contains(&f.code));
    let checks = checks(&lacks, &faults, decoded.machine.as_ref(), &seen);
    let machine = decoded.machine.filter(|_| !any_error);
    MachineReview { machine, seen, faults, lacks, checks }
}

impl MachineReview {
    /// True where nothing must be added and nothing is wrong.
    pub fn complete(&self) -> bool {
        !self.faults.any_error() && self.lacks.iter().all(|l| l.need == Need::Useful)
    }
}

fn checks(lacks: &[Lack], faults: &Faults, machine: Option<&Machine>, seen: &[Seen]) -> Vec<CheckNeeds> {
    let hook = machine.is_some_and(|m| m.attachments.iter().any(machine::Attachment::hangs))
        || seen.iter().any(|s| s.path.starts_with("jib["));
    let errors: Vec<&[&str]> = faults
        .list
        .iter()
        .filter(|f| f.severity == Severity::Error)
        .map(|f| f.place.key.as_deref().map_or(MACHINE_CHECKS.as_slice(), |key| checks_of(&pattern(key))))
        .collect();
    MACHINE_CHECKS
        .into_iter()
        // Slings belong to a hook.
        .filter(|check| *check != "rigging" || hook)
        .map(|check| {
            let counts: Vec<usize> = (0..lacks.len()).filter(|i| lacks[*i].checks.contains(&check)).collect();
            let faulty = errors.iter().any(|checks| checks.contains(&check));
            let ready = if faulty || counts.iter().any(|i| lacks[*i].need < Need::Useful) {
                Ready::NotYet
            } else if counts.is_empty() {
                Ready::Yes
            } else {
                Ready::Partly
            };
            CheckNeeds { check, ready, lacks: counts, faulty }
        })
        .collect()
}

struct Walk<'a> {
    shapes: &'a Shapes,
    open: &'a [String],
    /// How much a key that a table must have matters where it stands.
    must: Need,
    lacks: Vec<Lack>,
}

impl Walk<'_> {
    fn lack(&mut self, path: &str, need: Need, without: Option<TextId>) {
        if self.lacks.iter().any(|l| l.path == path) {
            return;
        }
        let place = pattern(path);
        let known = field(FileKind::Machine, &place);
        self.lacks.push(Lack {
            path: path.to_owned(),
            need,
            what: known.map(|f| f.what),
            place: known.and_then(|f| f.place),
            without: without.or_else(|| (need == Need::Useful).then(|| without_it(&place)).flatten()),
            checks: checks_of(&place),
        });
    }

    /// A table of the shape at `shape`, standing at `path`; `None` where it is missing as a whole.
    fn table(&mut self, shape: &str, path: &str, table: Option<&Table>) {
        let has = |key: &str| table.is_some_and(|t| t.get(key).is_some());
        if shape == "chart[]" && !has("zone") && !has("table") {
            self.missing_list("chart[].zone", &join(path, "zone"), self.must);
        }
        let Some(keys) = self.shapes.get(shape).map(|s| s.keys.clone()) else { return };
        for key in keys {
            let (shape_of, path_of) = (join(shape, &key.key), join(path, &key.key));
            let required = self.shapes.get(shape).is_some_and(|s| s.requires(&key.key));
            let ignored = no_lack(&key.key) || no_lack(&shape_of);
            let is_fact = key.kinds.iter().any(|k| matches!(k, Kind::Fact { .. }));
            let is_table = !is_fact && key.kinds.contains(&Kind::Table);
            match table.and_then(|t| t.get(&key.key)) {
                Some(node) => self.value(&shape_of, &path_of, node, is_fact),
                None if required && is_table => self.table(&shape_of, &path_of, None),
                None if required && key.kinds.contains(&Kind::Tables) => {
                    self.missing_list(&shape_of, &path_of, self.must);
                }
                None if required => self.lack(&path_of, self.must, None),
                None if ignored || key.kinds.contains(&Kind::Tables) => {}
                None if key.key == "load_centre_height" && hangs(table) => {}
                None if key.key == "lock_angle" && !locks_by_angle(table) => {}
                None if DECISIVE.contains(&key.key.as_str()) => {
                    self.lack(&path_of, Need::ForCheck, without_it(&pattern(&path_of)));
                }
                None => self.lack(&path_of, Need::Useful, None),
            }
        }
    }

    /// A list without any entry: what the first one must hold.
    fn missing_list(&mut self, shape: &str, path: &str, must: Need) {
        let without = (shape == "forks").then_some(words::WITHOUT_ATTACHMENT);
        self.lack(path, must, without.or_else(|| (shape == "chart").then_some(words::WITHOUT_CHART)));
        let around = std::mem::replace(&mut self.must, must);
        self.table(&format!("{shape}[]"), &format!("{path}[1]"), None);
        self.must = around;
    }

    fn value(&mut self, shape: &str, path: &str, node: &Node, is_fact: bool) {
        let value = format!("{path}.value");
        if self.open.iter().any(|open| open == path || *open == value) {
            self.lack(path, Need::FillIn, None);
            return;
        }
        match &node.value {
            Value::Text(word) if word == "unknown" => match pattern(path).as_str() {
                "front_axle.tyre.pressure" | "rear_axle.tyre.pressure" => {
                    self.lack(path, Need::ForCheck, Some(words::WITHOUT_PRESSURE));
                }
                "rear_axle.lock" | "rear_axle.lock_angle" | "stabilizers.rear_axle" => {
                    self.lack(path, Need::Useful, Some(words::WITHOUT_AXLE));
                }
                _ => self.lack(path, Need::ForCheck, None),
            },
            Value::Table(table) if !is_fact => self.table(shape, path, Some(table)),
            Value::List(items) if self.shapes.contains_key(&format!("{shape}[]")) => {
                for (i, item) in items.iter().enumerate() {
                    if let Value::Table(table) = &item.value {
                        self.table(&format!("{shape}[]"), &format!("{path}[{}]", i + 1), Some(table));
                    }
                }
            }
            _ => {}
        }
    }

    /// An attachment without any chart cannot lift.
    fn charts(&mut self, root: &Table) {
        let lists = |key: &str| match root.get(key).map(|n| &n.value) {
            Some(Value::List(items)) => items.as_slice(),
            _ => &[],
        };
        let word = |item: &Node, key: &str| match &item.value {
            Value::Table(t) => match t.get(key).map(|n| &n.value) {
                Some(Value::Text(word)) => Some(word.clone()),
                _ => None,
            },
            _ => None,
        };
        let charted: Vec<String> = lists("chart").iter().filter_map(|c| word(c, "attachment")).collect();
        if lists("chart").is_empty() {
            self.missing_list("chart", "chart", Need::ForCheck);
            return;
        }
        for entry in &root.entries {
            let attachments = self.shapes.get(&format!("{}[]", entry.key)).is_some_and(|s| s.key("capacity").is_some());
            if !attachments || entry.key == "chart" {
                continue;
            }
            for id in lists(&entry.key).iter().filter_map(|a| word(a, "id")).filter(|id| !charted.contains(id)) {
                let path = format!("chart[{id}]");
                self.lack(&path, Need::ForCheck, Some(words::WITHOUT_CHART));
            }
        }
    }
}

/// True for a chart to a hook: a hung load has no centre above forks.
fn hangs(chart: Option<&Table>) -> bool {
    matches!(chart.and_then(|t| t.get("height_to")).map(|n| &n.value), Some(Value::Text(word)) if word == "hook")
}

/// True for a rear axle that locks by itself above a boom angle: it should say which.
fn locks_by_angle(axle: Option<&Table>) -> bool {
    matches!(axle.and_then(|t| t.get("lock")).map(|n| &n.value), Some(Value::Text(word)) if word == "above-boom-angle")
}

/// What is so without a value that may be left out.
fn without_it(path: &str) -> Option<TextId> {
    let last = path.rsplit('.').next().unwrap_or(path);
    Some(match last {
        "serial" | "tyres" | "counterweight" | "options" | "chart_number" => words::WITHOUT_SERIAL,
        "wind" => words::WITHOUT_WIND,
        "thickness_new" | "thickness_now" => words::WITHOUT_WEAR,
        "crack" => words::WITHOUT_CRACK,
        "modified" => words::WITHOUT_MODIFIED,
        "angle" | "bent" | "shank_bent" | "shank_length" | "lock" | "tip_difference" | "checked" | "carriage" => {
            words::WITHOUT_BLADE
        }
        "grip_force" | "grip_friction" => words::WITHOUT_GRIP,
        "width" => words::WITHOUT_WIDTH,
        "lock_angle" => words::WITHOUT_AXLE,
        "coupling" => words::WITHOUT_COUPLING,
        "load_centre_height" => words::WITHOUT_CENTRE_HEIGHT,
        _ => return None,
    })
}
