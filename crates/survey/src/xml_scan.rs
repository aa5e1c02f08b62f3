//! Walks through an XML file, element by element, on guard against files made to do harm.

use crate::notes::{Notes, Refused};
use crate::text;
use quick_xml::XmlVersion;
use quick_xml::events::{BytesStart, Event};
use std::borrow::Cow;

/// Most elements inside each other; LandXML needs a dozen.
const MOST_DEEP: usize = 64;

/// Most attributes of one element; LandXML has two dozen at most.
const MOST_ATTRIBUTES: usize = 200;

/// Longest name or value that is repeated in a fault.
const LONGEST_SHOWN: usize = 60;

/// An element as it opens.
pub(crate) struct Opened<'a> {
    /// Name without prefix; empty for an element of another namespace than the root's.
    pub(crate) name: &'a str,
    /// Line, from 1.
    pub(crate) line: u64,
    attributes: Vec<(&'a str, Cow<'a, str>)>,
}

impl Opened<'_> {
    /// An attribute's value without blanks around it; `None` where it is missing or empty.
    pub(crate) fn attribute(&self, name: &str) -> Option<&str> {
        self.attributes.iter().find(|(n, _)| *n == name).map(|(_, v)| v.trim()).filter(|v| !v.is_empty())
    }
    /// The same as owned text.
    pub(crate) fn owned(&self, name: &str) -> Option<String> {
        self.attribute(name).map(str::to_owned)
    }
    /// A finite number.
    pub(crate) fn number(&self, name: &str) -> Option<f64> {
        self.attribute(name)?.parse().ok().filter(|n: &f64| n.is_finite())
    }
}

/// What takes the elements.
pub(crate) trait Visitor {
    /// An element opens inside `parent` ("" for the root).
    fn open(&mut self, element: &Opened<'_>, parent: &str);
    /// It closes, with the text directly in it, on this line.
    fn close(&mut self, name: &str, parent: &str, text: &str, line: u64);
}

/// Walks through `text`.
///
/// # Errors
/// What is not XML, ends before its end, declares or uses entities of its own (they could swell
/// without limit, and nothing in a survey needs them), or is nested beyond sense. The root must be
/// named `root`.
pub(crate) fn scan(xml: &str, root: &str, visitor: &mut impl Visitor, notes: &mut Notes<'_>) -> Result<(), Refused> {
    let mut reader = quick_xml::Reader::from_str(xml);
    let mut place = Place { bytes: xml.as_bytes(), at: 0, line: 1 };
    // Names of the open elements, and where the text of each starts in `text`.
    let mut open: Vec<(String, usize)> = Vec::new();
    let mut text = String::new();
    let mut prefix = None;
    let mut seen_root = false;
    loop {
        let event = reader.read_event();
        let line = place.line_at(reader.buffer_position());
        let event = match event {
            Ok(event) => event,
            Err(error) => {
                let line = place.line_at(reader.error_position());
                return Err(broken(&error.to_string(), line, notes));
            }
        };
        let (start, closes) = match event {
            Event::Start(start) => (start, false),
            Event::Empty(start) => (start, true),
            Event::End(_) => {
                // The reader has seen to it that it closes the element opened last.
                if let Some((name, from)) = open.pop() {
                    let parent = open.last().map_or("", |o| o.0.as_str());
                    visitor.close(&name, parent, text[from..].trim(), line);
                    text.truncate(from);
                }
                continue;
            }
            Event::Text(part) => {
                text.push_str(&part);
                continue;
            }
            Event::CData(part) => {
                text.push_str(&part);
                continue;
            }
            Event::GeneralRef(reference) => {
                match known_reference(&reference) {
                    Some(character) => text.push(character),
                    None => return Err(entity(&reference, line, notes)),
                }
                continue;
            }
            Event::DocType(_) => return Err(entity("DOCTYPE", line, notes)),
            Event::Comment(_) | Event::Decl(_) | Event::PI(_) => continue,
            Event::Eof => break,
        };
        let full = start.name().into_inner();
        if open.is_empty() {
            if seen_root || full.rsplit(':').next() != Some(root) {
                let message = text::XML_ROOT.with("expected", root).with("found", shown(full));
                return Err(notes.refuse_line("survey::damaged", line, message, text::DO_EXPORT_AGAIN));
            }
            seen_root = true;
            prefix = full.rsplit_once(':').map(|(p, _)| p.to_owned());
        }
        let name = match full.rsplit_once(':') {
            Some((p, local)) if Some(p) == prefix.as_deref() => local,
            None if prefix.is_none() => full,
            _ => "",
        };
        if open.len() >= MOST_DEEP {
            let message = text::XML_DEEP.with("most", MOST_DEEP);
            return Err(notes.refuse_line("survey::damaged", line, message, text::DO_EXPORT_AGAIN));
        }
        let parent = open.last().map_or("", |o| o.0.as_str());
        let element = Opened { name, line, attributes: attributes(&start, line, notes)? };
        visitor.open(&element, parent);
        if closes {
            visitor.close(name, parent, "", line);
        } else {
            open.push((name.to_owned(), text.len()));
        }
    }
    if !open.is_empty() || !seen_root {
        let within = open.last().map_or(root, |o| o.0.as_str());
        let message = text::XML_CUT.with("element", within);
        return Err(notes.refuse_line("survey::truncated", place.line, message, text::DO_COPY_AGAIN));
    }
    Ok(())
}

fn attributes<'a>(
    start: &'a BytesStart<'_>,
    line: u64,
    notes: &mut Notes<'_>,
) -> Result<Vec<(&'a str, Cow<'a, str>)>, Refused> {
    let mut found = Vec::new();
    // The library's own check for repeats compares each with all before it.
    for attribute in start.attributes().with_checks(false) {
        let attribute = attribute.map_err(|e| broken(&e.to_string(), line, notes))?;
        if found.len() == MOST_ATTRIBUTES {
            let message = text::XML_ATTRIBUTES.with("most", MOST_ATTRIBUTES);
            return Err(notes.refuse_line("survey::damaged", line, message, text::DO_EXPORT_AGAIN));
        }
        let Ok(value) = attribute.normalized_value(XmlVersion::Implicit1_0) else {
            return Err(entity(&attribute.value, line, notes));
        };
        found.push((attribute.key.into_inner(), value));
    }
    Ok(found)
}

/// The five characters that XML itself names, and characters by number.
fn known_reference(name: &quick_xml::events::BytesRef<'_>) -> Option<char> {
    match &**name {
        "lt" => Some('<'),
        "gt" => Some('>'),
        "amp" => Some('&'),
        "quot" => Some('"'),
        "apos" => Some('\''),
        _ => name.resolve_char_ref().ok().flatten(),
    }
}

fn broken(detail: &str, line: u64, notes: &mut Notes<'_>) -> Refused {
    let message = text::XML_BROKEN.with("detail", shown(detail));
    notes.refuse_line("survey::damaged", line, message, text::DO_COPY_AGAIN)
}

fn entity(name: &str, line: u64, notes: &mut Notes<'_>) -> Refused {
    let message = text::XML_ENTITY.with("name", shown(name));
    notes.refuse_line("survey::xml-entity", line, message, text::DO_EXPORT_AGAIN)
}

/// So much of a text as fits into a fault.
pub(crate) fn shown(text: &str) -> String {
    let mut start: String = text.chars().take(LONGEST_SHOWN).collect();
    if start.len() < text.len() {
        start.push('…');
    }
    start
}

/// Line of a byte, counted on from the last one asked for.
struct Place<'a> {
    bytes: &'a [u8],
    at: usize,
    line: u64,
}
impl Place<'_> {
    fn line_at(&mut self, at: u64) -> u64 {
        let at = usize::try_from(at).unwrap_or(usize::MAX).min(self.bytes.len());
        if at > self.at {
            self.line += self.bytes[self.at..at].split(|b| *b == b'\n').count() as u64 - 1;
            self.at = at;
        }
        self.line
    }
}
