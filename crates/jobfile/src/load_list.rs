//! `[loads_from]`: a list of loads, one row a load and the lift that brings it; `slots_from`: a list of deliveries.
//!
//! A row becomes the tables that somebody would have written for it, each value with the place of its cell. It is then
//! read by the very rules of `[[load]]`, `[[lift]]` and `[[delivery]]`.

use crate::csv_cells::{Cell, Row, SEPARATORS, rows};
use crate::document::{Document, code};
use crate::job_file::Files;
use crate::list_columns::{Column, Form, LOADS, SLOTS, column, splits};
use crate::node::{Entry, Node, Table, Value};
use crate::quantity_value::Bound::{Within, ZeroTo};
use crate::table::Reader;
use crate::text;
use evidence::{Faults, Message};
use quantity::Dimension as D;

/// Words that all rows may share, from the table in the job file: key and value.
type Shared = Vec<(&'static str, Node)>;

/// Keys of `[loads_from]` that hold for every row that says nothing else.
const SHARED: [&str; 7] = ["condition", "centre_error", "wind_factor", "left_out", "clear", "stop_gust", "stops"];

/// A list as read: its tables.
pub(crate) struct List {
    pub(crate) document: Document,
}

/// The list of loads that the job names; `None`: it names none. What is wrong is said.
pub(crate) fn loads(root: &Reader<'_>, files: &mut Files<'_>) -> Option<List> {
    let t = root.table_or_none("loads_from")?;
    let file = t.required("file", "file = \"loads.csv\"").and_then(|node| files.open(&t, node, "file"));
    let shared = shared(&t);
    t.done();
    let (path, bytes) = file?;
    let list = List::new(&path, &bytes, &LOADS, &shared, root);
    Some(list)
}

/// The list of deliveries that the job names.
pub(crate) fn slots(root: &Reader<'_>, files: &mut Files<'_>) -> Option<List> {
    let node = root.optional("slots_from")?;
    let (path, bytes) = files.open(root, node, "slots_from")?;
    Some(List::new(&path, &bytes, &SLOTS, &Vec::new(), root))
}

/// Each is read here, so that a fault in it is said where it stands, once.
fn shared(t: &Reader<'_>) -> Shared {
    const CONDITIONS: [(&str, ()); 3] = [("sound", ()), ("unsound", ()), ("not-seen", ())];
    let mut good = Vec::new();
    let mut keep = |key: &'static str, read: bool| {
        if let (true, Some(node)) = (read, t.optional(key)) {
            good.push((key, node.clone()));
        }
    };
    keep("condition", t.optional("condition").is_some_and(|n| t.as_choice(n, "condition", &CONDITIONS).is_some()));
    let most = crate::limits::LOAD;
    keep("centre_error", t.decision_or_none("centre_error", D::Length, ZeroTo(most)).is_some());
    keep("wind_factor", t.decision_or_none("wind_factor", D::Number, Within(0.1, 3.0)).is_some());
    keep("left_out", t.decision_or_none("left_out", D::Mass, ZeroTo(crate::limits::MASS)).is_some());
    keep("clear", t.decision_or_none("clear", D::Length, Within(0.0, 5.0)).is_some());
    keep("stop_gust", t.decision_or_none("stop_gust", D::Speed, ZeroTo(60.0)).is_some());
    keep("stops", t.has("stops") && crate::lift_section::stops(t).is_some());
    if let Some(word) = t.source().map(crate::certainty::word) {
        good.push(("source", Node { value: Value::Text(word.to_owned()), span: (0, 0) }));
    }
    debug_assert!(good.iter().all(|(key, _)| *key == "source" || SHARED.contains(key)));
    good
}

impl List {
    fn new(path: &str, bytes: &[u8], columns: &[Column], shared: &Shared, root: &Reader<'_>) -> Self {
        let mut document = Document::of_text(path, bytes);
        document.drafts.set(root.document().drafts.get());
        let read = if document.is_broken() { Ok(Vec::new()) } else { read_rows(document.text(), columns) };
        let nodes = match read {
            Ok(rows) => made(&document, &rows, columns, shared),
            Err(span) => {
                document.error(span, None, text::LIST_QUOTE.message(), Some(text::HINT_LIST_QUOTE.message()));
                Vec::new()
            }
        };
        document.set_root(nodes);
        Self { document }
    }

    /// Its faults, inputs and open values go to the job's.
    pub(crate) fn end(self, root: &Reader<'_>, files: &mut Files<'_>) {
        let open = &root.document().open;
        open.set(open.get() + self.document.open.get());
        files.faults.append(without_echoes(self.document.faults()));
        files.inputs.append(&mut self.document.inputs());
    }
}

/// What a row's empty cell leads to is not said again in the words of the job file's keys.
fn without_echoes(mut faults: Faults) -> Faults {
    let line_of = |code: &str| -> Vec<Option<usize>> {
        faults.list.iter().filter(|f| f.code == code).map(|f| f.place.line).collect()
    };
    let incomplete = line_of(&code(text::LIST_CELL_MISSING));
    let echoes = [text::MISSING_KEY, text::LIST_LENGTH, text::ONE_OF].map(code);
    faults.list.retain(|f| !(echoes.contains(&f.code) && incomplete.contains(&f.place.line)));
    faults
}

/// The rows by the separator under which most names of the first row are known.
fn read_rows(text: &str, columns: &[Column]) -> Result<Vec<Row>, (usize, usize)> {
    let first = text.lines().find(|l| !l.trim().is_empty()).unwrap_or_default();
    let known =
        |separator: char| first.split(separator).filter(|name| column(columns, name.trim_matches('"')).is_some());
    let best = SEPARATORS.into_iter().max_by_key(|s| (known(*s).count(), *s == ','));
    rows(text, best.unwrap_or(','))
}

/// The tables of all rows.
fn made(document: &Document, rows: &[Row], columns: &[Column], shared: &Shared) -> Vec<Entry> {
    let end = document.text().len();
    let Some((header, rows)) = rows.split_first().filter(|(_, rows)| !rows.is_empty()) else {
        document.error((0, end.min(1)), None, text::LIST_EMPTY.message(), Some(known_columns(columns)));
        return Vec::new();
    };
    let heads = heads(document, header, columns);
    let mut out: Vec<Entry> = Vec::new();
    for (number, row) in rows.iter().enumerate() {
        if row.cells.len() != header.cells.len() {
            let message = text::LIST_ROW_CELLS.with("found", row.cells.len()).with("expected", header.cells.len());
            document.error(row.span, None, message, Some(text::HINT_LIST_ROW_CELLS.message()));
            continue;
        }
        let made = MadeRow { document, heads: &heads, row, shared };
        for list in columns.iter().map(|c| c.list).fold(Vec::new(), with) {
            push(&mut out, list, made.table(list, columns, number));
        }
    }
    out
}

fn with(mut lists: Vec<&'static str>, list: &'static str) -> Vec<&'static str> {
    if !lists.contains(&list) {
        lists.push(list);
    }
    lists
}

fn push(out: &mut Vec<Entry>, list: &str, node: Node) {
    if let Some(entry) = out.iter_mut().find(|e| e.key == list)
        && let Value::List(items) = &mut entry.node.value
    {
        items.push(node);
    } else {
        let span = node.span;
        let node = Node { value: Value::List(vec![node]), span };
        out.push(Entry { key: list.to_owned(), key_span: span, node });
    }
}

/// What a column of the header holds, and the unit that stands behind its name.
struct Head<'c> {
    column: &'c Column,
    unit: Option<String>,
}

fn heads<'c>(document: &Document, header: &Row, columns: &'c [Column]) -> Vec<Option<Head<'c>>> {
    let mut out: Vec<Option<Head<'c>>> = Vec::new();
    for cell in &header.cells {
        let (name, unit) = splits(&cell.text);
        let found = column(columns, &cell.text);
        if found.is_none() {
            let message = text::LIST_COLUMN_UNKNOWN.with("column", &cell.text);
            let near = crate::nearest::nearest(&name, columns.iter().map(|c| c.name));
            let hint = near.map_or_else(|| known_columns(columns), |near| text::HINT_NEAREST.with("nearest", near));
            document.error(cell.span, None, message, Some(hint));
        }
        if let Some(c) = found
            && out.iter().flatten().any(|h| h.column.name == c.name)
        {
            document.error(cell.span, None, text::LIST_COLUMN_TWICE.with("column", c.name), None);
        }
        out.push(found.map(|column| Head { column, unit }));
    }
    out
}

fn known_columns(columns: &[Column]) -> Message {
    text::HINT_KNOWN.with("known", columns.iter().map(|c| c.name).collect::<Vec<_>>().join(", "))
}

/// One row on its way into tables.
struct MadeRow<'r> {
    document: &'r Document,
    heads: &'r [Option<Head<'r>>],
    row: &'r Row,
    shared: &'r Shared,
}

impl MadeRow<'_> {
    /// The value of a column: its cell, or what all rows share.
    fn value(&self, column: &Column) -> Option<Node> {
        let cell = self.heads.iter().zip(&self.row.cells).find_map(|(head, cell)| {
            head.as_ref().filter(|h| h.column.name == column.name && !cell.text.is_empty()).map(|h| (h, cell))
        });
        if let Some((head, cell)) = cell {
            return Some(node(column.form, head.unit.as_deref(), cell));
        }
        let shared = self.shared.iter().find(|(key, _)| *key == column.name)?;
        Some(placed(&shared.1, self.row.span))
    }

    fn table(&self, list: &str, columns: &[Column], number: usize) -> Node {
        let span = self.row.span;
        let mut table = Table::default();
        for column in columns.iter().filter(|c| c.list == list) {
            let Some(node) = self.value(column) else {
                if column.needed {
                    let message = text::LIST_CELL_MISSING.with("column", column.name);
                    self.document.error(span, Some(column.name), message, Some(text::HINT_LIST_CELL_MISSING.message()));
                }
                continue;
            };
            let at = node.span;
            let entry = |key: &str, node| Entry { key: key.to_owned(), key_span: at, node };
            match column.inside {
                None => table.entries.push(entry(column.key, node)),
                Some(around) => match table.entries.iter_mut().find(|e| e.key == around) {
                    Some(Entry { node: Node { value: Value::Table(t), .. }, .. }) => {
                        t.entries.push(entry(column.key, node));
                    }
                    Some(Entry { node: Node { value: Value::List(l), .. }, .. }) => l.push(node),
                    _ if column.key.is_empty() => {
                        table.entries.push(entry(around, Node { value: Value::List(vec![node]), span }));
                    }
                    _ => {
                        let inner = Table { entries: vec![entry(column.key, node)] };
                        table.entries.push(entry(around, Node { value: Value::Table(inner), span }));
                    }
                },
            }
        }
        self.completed(list, &mut table, number);
        Node { value: Value::Table(table), span }
    }

    /// What no column says: that the planner chooses, which load it is, the name of a slot.
    fn completed(&self, list: &str, table: &mut Table, number: usize) {
        let span = self.row.span;
        let text = |word: &str| Node { value: Value::Text(word.to_owned()), span };
        let no_id = table.get("id").is_none();
        let mut add = |key: &str, value: Value| {
            let node = Node { value, span };
            table.entries.push(Entry { key: key.to_owned(), key_span: span, node });
        };
        match list {
            "lift" => {
                let all = ["stand", "machine", "attachment", "support"].map(text).to_vec();
                add("choose", Value::List(all));
            }
            "delivery" if no_id => add("id", Value::Text(format!("slot {}", number + 1))),
            _ => {}
        }
    }
}

/// A shared value in a row: faults that still turn up are said of the row.
fn placed(node: &Node, span: (usize, usize)) -> Node {
    let value = match &node.value {
        Value::List(items) => Value::List(items.iter().map(|n| placed(n, span)).collect()),
        other => other.clone(),
    };
    Node { value, span }
}

fn node(form: Form, unit: Option<&str>, cell: &Cell) -> Node {
    let text = |text: &str| Node { value: Value::Text(text.to_owned()), span: cell.span };
    match form {
        Form::Text => text(&cell.text),
        // Whoever writes the unit into the cell all the same means that one.
        Form::Quantity => match unit.filter(|_| cell.text.ends_with(|c: char| c.is_ascii_digit())) {
            Some(unit) => text(&format!("{} {unit}", cell.text)),
            None => text(&cell.text),
        },
        Form::Count => Node { value: Value::Number(cell.text.clone()), span: cell.span },
        Form::List => {
            let parts = cell.text.split([';', ',', '|']).map(str::trim).filter(|p| !p.is_empty());
            Node { value: Value::List(parts.map(text).collect()), span: cell.span }
        }
        Form::Span => {
            let parts: Vec<&str> = cell.text.split(['-', '–']).map(str::trim).collect();
            Node { value: Value::List(parts.into_iter().map(text).collect()), span: cell.span }
        }
    }
}
