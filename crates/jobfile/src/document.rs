//! One file being read: its values, its places, and what was found wrong so far.

use crate::line_index::LineIndex;
use crate::node::{Entry, Node, Table, Value};
use crate::schema_notes::Notes;
use crate::table::Reader;
use crate::{parse_json, parse_toml, text};
use evidence::{Certainty, Fault, Faults, Message, Place, Severity, TextId};
use planning::InputLine;
use std::cell::{Cell, RefCell};

/// Larger files are not job or machine files.
const LARGEST: usize = 8 << 20;

/// A file parsed to values. Faults gather in it while it is decoded through [`Document::root`].
#[derive(Debug)]
pub struct Document {
    file: String,
    text: String,
    lines: LineIndex,
    root: Node,
    /// Lines that break the grammar: what else is wrong there follows from that.
    broken_lines: Vec<usize>,
    faults: RefCell<Faults>,
    inputs: RefCell<Vec<InputLine>>,
    /// Hint at what is still to be filled in; `None`: such a value is a fault.
    pub(crate) drafts: Cell<Option<TextId>>,
    /// Number of values still to be filled in.
    pub(crate) open: Cell<usize>,
    /// What reading asks and finds, where somebody wants to know.
    notes: Option<RefCell<Notes>>,
}

/// Parses bytes: JSON where the name ends in `.json`, TOML otherwise. Never fails: what is wrong
/// stands in [`Document::faults`], and what could be read can still be decoded. TOML is read on behind
/// an error of its grammar; JSON only up to the first one, which is then the only fault.
pub fn read_table(name: &str, bytes: &[u8]) -> Document {
    let (text, early) = as_text(name, bytes);
    let unreadable = early.any_error();
    let json = std::path::Path::new(name).extension().is_some_and(|e| e.eq_ignore_ascii_case("json"));
    let (root, errors) = if json && !unreadable { parse_json::parse(&text) } else { parse_toml::parse(&text) };
    let lines = LineIndex::new(&text);
    let mut document = Document {
        file: name.to_owned(),
        text,
        lines,
        root,
        broken_lines: if unreadable { vec![0] } else { Vec::new() },
        faults: RefCell::new(early),
        inputs: RefCell::default(),
        drafts: Cell::new(None),
        open: Cell::new(0),
        notes: None,
    };
    for e in errors {
        let message =
            if e.duplicate_key { text::DUPLICATE_KEY.message() } else { text::SYNTAX.with("detail", e.detail) };
        document.report(Severity::Error, e.span, None, message, None);
        document.broken_lines.push(document.lines.at(&document.text, e.span.0).0);
    }
    document
}

impl Document {
    /// A file of cells: its values are given to it later, see [`Document::set_root`].
    pub(crate) fn of_text(name: &str, bytes: &[u8]) -> Self {
        let (text, early) = as_text(name, bytes);
        let broken_lines = if early.any_error() { vec![0] } else { Vec::new() };
        let lines = LineIndex::new(&text);
        let root = Node { value: Value::Table(Table::default()), span: (0, text.len()) };
        Self {
            file: name.to_owned(),
            text,
            lines,
            root,
            broken_lines,
            faults: RefCell::new(early),
            inputs: RefCell::default(),
            drafts: Cell::new(None),
            open: Cell::new(0),
            notes: None,
        }
    }

    /// The values of a file of cells.
    pub(crate) fn set_root(&mut self, entries: Vec<Entry>) {
        self.root.value = Value::Table(Table { entries });
    }

    /// Name of the file.
    pub fn file(&self) -> &str {
        &self.file
    }

    /// The file's text ("" where it is none), for a caret under a place.
    pub fn text(&self) -> &str {
        &self.text
    }

    /// From now on notes what is asked for and what is found.
    pub(crate) fn take_notes(&mut self) {
        self.notes = Some(RefCell::default());
    }

    /// What was noted so far; nothing where nobody asked for notes.
    pub(crate) fn notes(&self) -> Notes {
        self.notes.as_ref().map(|notes| notes.borrow().clone()).unwrap_or_default()
    }

    pub(crate) fn note(&self, write: impl FnOnce(&mut Notes)) {
        if let Some(notes) = &self.notes {
            write(&mut notes.borrow_mut());
        }
    }

    /// The outermost value, as parsed.
    pub fn node(&self) -> &Node {
        &self.root
    }

    /// The outermost table. A file that is not a table is a fault, and reads as an empty one.
    pub fn root(&self) -> Reader<'_> {
        static EMPTY: Table = Table { entries: Vec::new() };
        let table = if let Value::Table(table) = &self.root.value {
            table
        } else {
            let message = text::WRONG_TYPE
                .with("key", "")
                .with("expected", text::TYPE_TABLE)
                .with("found", self.root.value.kind());
            self.error(self.root.span, None, message, None);
            &EMPTY
        };
        Reader::new(self, table, self.root.span, String::new(), None)
    }

    /// What was found wrong so far, in the order of the file.
    pub fn faults(&self) -> Faults {
        let mut faults = self.faults.borrow().clone();
        let syntax = code(text::SYNTAX);
        let duplicate = code(text::DUPLICATE_KEY);
        faults.list.retain(|f| {
            f.code == syntax
                || f.code == duplicate
                || f.place.line.is_none_or(|line| !self.broken_lines.contains(&line))
        });
        faults.list.sort_by_key(|f| f.place.span);
        faults
    }

    /// The sourced values read so far, for the input list of documents.
    pub fn inputs(&self) -> Vec<InputLine> {
        self.inputs.borrow().clone()
    }

    /// True where a missing key may only be hidden behind a grammar error.
    pub(crate) fn is_broken(&self) -> bool {
        !self.broken_lines.is_empty()
    }

    pub(crate) fn place(&self, span: (usize, usize), key: Option<&str>) -> Place {
        let (line, column) = self.lines.at(&self.text, span.0);
        Place {
            file: self.file.clone(),
            key: key.filter(|k| !k.is_empty()).map(str::to_owned),
            line: Some(line),
            column: Some(column),
            span: Some(span),
        }
    }

    pub(crate) fn line(&self, span: (usize, usize)) -> usize {
        self.lines.at(&self.text, span.0).0
    }

    pub(crate) fn error(&self, span: (usize, usize), key: Option<&str>, message: Message, hint: Option<Message>) {
        self.report(Severity::Error, span, key, message, hint);
    }

    /// An error with a code of another crate.
    pub(crate) fn report_as(&self, code: &str, span: (usize, usize), key: &str, message: Message, hint: Message) {
        let place = self.place(span, Some(key));
        self.faults.borrow_mut().error(code, place, message, Some(hint));
    }

    /// The part of a text value that an error is about; the whole value where it has escapes.
    pub(crate) fn inside(&self, span: (usize, usize), value: &str, part: std::ops::Range<usize>) -> (usize, usize) {
        let raw = self.text.get(span.0..span.1).unwrap_or_default();
        let plain = [1, 0].into_iter().find(|&q| raw.get(q..raw.len().saturating_sub(q)) == Some(value));
        match plain {
            Some(quote) if !part.is_empty() => (span.0 + quote + part.start, span.0 + quote + part.end),
            _ => span,
        }
    }

    pub(crate) fn report(
        &self,
        severity: Severity,
        span: (usize, usize),
        key: Option<&str>,
        message: Message,
        hint: Option<Message>,
    ) {
        let code = message.id.replacen('-', "::", 1);
        let place = self.place(span, key);
        self.faults.borrow_mut().push(Fault { code, severity, place, message, hint });
    }

    /// Puts a value as written on the input list.
    pub(crate) fn record(&self, name: String, path: &str, span: (usize, usize), certainty: Certainty) {
        self.record_as(name, path, span, self.written(span), certainty);
    }

    /// Puts a value that stands nowhere as such on the input list.
    pub(crate) fn record_as(
        &self,
        name: String,
        path: &str,
        span: (usize, usize),
        value: String,
        certainty: Certainty,
    ) {
        let place = format!("{}:{} {path}", self.file, self.line(span));
        self.inputs.borrow_mut().push(InputLine { name, place, value, certainty });
    }

    /// The bytes of a span as written, without the quotes of text.
    fn written(&self, span: (usize, usize)) -> String {
        let raw = self.text.get(span.0..span.1).unwrap_or_default();
        raw.trim_matches('"').split_whitespace().collect::<Vec<_>>().join(" ")
    }
}

/// The bytes as text; "" with what is wrong where they are none.
fn as_text(name: &str, bytes: &[u8]) -> (String, Faults) {
    let mut early = Faults::default();
    let text = if bytes.len() > LARGEST {
        let message = text::TOO_LARGE.with("limit", LARGEST);
        early.error(&code(text::TOO_LARGE), Place::file(name), message, None);
        String::new()
    } else {
        match std::str::from_utf8(bytes) {
            Ok(text) => text.trim_start_matches('\u{feff}').to_owned(),
            Err(e) => {
                let line = bytes[..e.valid_up_to()].split(|&b| b == b'\n').count();
                let place = Place { line: Some(line), ..Place::file(name) };
                early.error(&code(text::NOT_TEXT), place, text::NOT_TEXT, None);
                String::new()
            }
        }
    };
    (text, early)
}

/// The stable code of a text of this crate: `jobfile-unknown-key` is `jobfile::unknown-key`.
pub(crate) fn code(id: TextId) -> String {
    id.id.replacen('-', "::", 1)
}
