//! Where in a DXF file what stands: header, layers, blocks and entities. Nothing is drawn yet, and
//! nothing is copied: an entity is its kind and the place of its first pair (40 bytes for at least
//! 4 of the file).

use crate::dxf_pairs::Pairs;
use crate::dxf_words::decoded;
use crate::notes::{Notes, Refused};
use crate::text;
use geometry::DVec3;
use std::collections::{BTreeMap, BTreeSet};
use std::ops::Range;

/// An entity that has not been read yet.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Entry<'a> {
    pub(crate) kind: &'a [u8],
    /// Offset of the pair after the kind.
    at: usize,
    /// Line of the kind.
    pub(crate) line: usize,
}

/// Entities to be drawn wherever an INSERT asks for them.
#[derive(Debug, Clone, Default)]
pub(crate) struct Block {
    pub(crate) name: String,
    pub(crate) base: DVec3,
    /// It stands for another file.
    pub(crate) external: bool,
    pub(crate) entries: Range<usize>,
}

/// A file taken apart.
#[derive(Debug)]
pub(crate) struct Drawing<'a> {
    pairs: Pairs<'a>,
    pub(crate) entries: Vec<Entry<'a>>,
    /// Entities that are drawn themselves.
    pub(crate) model: Vec<Range<usize>>,
    /// By name in lower case: names differ by more than case.
    pub(crate) blocks: BTreeMap<String, Block>,
    /// Layers that are switched off or frozen.
    pub(crate) hidden: BTreeSet<String>,
    /// `$INSUNITS`, if the header has it.
    pub(crate) unit_code: Option<i64>,
    /// Where the drawing lies on the earth, if it says so.
    pub(crate) geodata: Option<Entry<'a>>,
    /// Entities of sheets, which show the drawing and are no part of it.
    pub(crate) on_sheets: u64,
}

impl<'a> Drawing<'a> {
    /// The pairs of one entity, without its kind.
    pub(crate) fn pairs_of(&self, entry: &Entry<'a>) -> Pairs<'a> {
        self.pairs.from((entry.at, entry.line + self.pairs.lines_each()))
    }
}

#[derive(Clone, Copy, PartialEq)]
enum Section {
    None,
    Header,
    Tables,
    Blocks,
    Entities,
    Objects,
    Other,
}

/// Takes the file apart.
pub(crate) fn index<'a>(bytes: &'a [u8], notes: &mut Notes<'_>) -> Result<Drawing<'a>, Refused> {
    let mut pairs = Pairs::new(bytes);
    let mut drawing = Drawing {
        pairs: pairs.clone(),
        entries: Vec::new(),
        model: Vec::new(),
        blocks: BTreeMap::new(),
        hidden: BTreeSet::new(),
        unit_code: None,
        geodata: None,
        on_sheets: 0,
    };
    let mut section = Section::None;
    let mut sections = 0;
    let mut entities_seen = false;
    let mut ended = false;
    let mut read = 0_usize;
    // The block that is open, and whether its header is over.
    let mut block: Option<(Block, bool)> = None;
    let mut variable: &[u8] = b"";
    let mut layer = Layer::default();
    let mut of_layer = false;
    while let Some(pair) = pairs.next() {
        read += 1;
        let (value, line) = (pair.value, pair.line);
        if pair.code == 0 {
            let kind = value.text().unwrap_or_default();
            if std::mem::take(&mut of_layer) {
                std::mem::take(&mut layer).keep(&mut drawing.hidden);
            }
            if let Some((_, over)) = &mut block {
                *over = true;
            }
            match kind {
                b"EOF" => {
                    ended = true;
                    break;
                }
                b"SECTION" | b"ENDSEC" => {
                    close_block(&mut block, &mut drawing);
                    section = Section::None;
                    if kind == b"SECTION" {
                        sections += 1;
                        section = Section::Other;
                        let mut ahead = pairs.clone();
                        if let Some(name) = ahead.next().filter(|p| p.code == 2).and_then(|p| p.value.text()) {
                            pairs = ahead;
                            section = named(name);
                        }
                    }
                    if section == Section::Entities {
                        entities_seen = true;
                        drawing.model.push(drawing.entries.len()..drawing.entries.len());
                    }
                }
                b"BLOCK" if section == Section::Blocks => {
                    close_block(&mut block, &mut drawing);
                    let start = drawing.entries.len();
                    block = Some((Block { entries: start..start, ..Block::default() }, false));
                }
                b"ENDBLK" if section == Section::Blocks => close_block(&mut block, &mut drawing),
                b"LAYER" if section == Section::Tables => of_layer = true,
                b"GEODATA" if section == Section::Objects => {
                    drawing.geodata = Some(Entry { kind, at: pairs.place().0, line });
                }
                _ => {
                    let entry = Entry { kind, at: pairs.place().0, line };
                    if section == Section::Entities {
                        drawing.entries.push(entry);
                        if let Some(last) = drawing.model.last_mut() {
                            last.end = drawing.entries.len();
                        }
                    } else if let (Section::Blocks, Some((open, _))) = (section, &mut block) {
                        drawing.entries.push(entry);
                        open.entries.end = drawing.entries.len();
                    }
                }
            }
            continue;
        }
        match section {
            Section::Header if pair.code == 9 => variable = value.text().unwrap_or_default(),
            Section::Header if variable == b"$INSUNITS" && pair.code == 70 => drawing.unit_code = value.int(),
            Section::Tables if of_layer => layer.take(pair.code, value),
            Section::Blocks => {
                if let Some((open, false)) = &mut block {
                    match pair.code {
                        2 => open.name = decoded(value.text().unwrap_or_default()),
                        10 => open.base.x = value.real().unwrap_or(f64::NAN),
                        20 => open.base.y = value.real().unwrap_or(f64::NAN),
                        30 => open.base.z = value.real().unwrap_or(f64::NAN),
                        // Bits: 4 an external reference, 8 one laid over.
                        70 => open.external = value.int().unwrap_or(0) & 0b1100 != 0,
                        _ => {}
                    }
                }
            }
            _ => {}
        }
    }
    let open = section != Section::None;
    close_block(&mut block, &mut drawing);
    if sections == 0 {
        return Err(notes.refuse("survey::not-a-drawing", text::NOT_A_DRAWING, text::DO_EXPORT_DXF));
    }
    if !ended && (open || pairs.cut || !entities_seen) {
        return Err(notes.refuse("survey::truncated", text::DRAWING_CUT, text::DO_COPY_AGAIN));
    }
    if pairs.skipped > 20.max(read / 50) {
        let message = text::DRAWING_GARBLED.with("count", pairs.skipped);
        return Err(notes.refuse("survey::damaged", message, text::DO_EXPORT_DXF));
    }
    if let Some(line) = pairs.first_skipped {
        let message = text::LINES_SKIPPED.with("count", pairs.skipped);
        notes.warn_line("survey::lines-skipped", line as u64, message, text::DO_CHECK_DRAWING);
    }
    if !ended {
        notes.warn("survey::no-end", text::DRAWING_NO_END, text::DO_CHECK_DRAWING);
    }
    if !entities_seen {
        return Err(notes.refuse("survey::no-shapes", text::DRAWING_EMPTY, text::DO_EXPORT_DXF));
    }
    Ok(drawing)
}

fn named(name: &[u8]) -> Section {
    match name {
        b"HEADER" => Section::Header,
        b"TABLES" => Section::Tables,
        b"BLOCKS" => Section::Blocks,
        b"ENTITIES" => Section::Entities,
        b"OBJECTS" => Section::Objects,
        _ => Section::Other,
    }
}

fn close_block(block: &mut Option<(Block, bool)>, drawing: &mut Drawing<'_>) {
    let Some((block, _)) = block.take() else { return };
    let key = block.name.to_lowercase();
    if key.starts_with("*paper_space") || key.starts_with("$paper_space") {
        drawing.on_sheets += block.entries.len() as u64;
    } else {
        drawing.blocks.insert(key, block);
    }
}

#[derive(Default)]
struct Layer {
    name: String,
    hidden: bool,
}

impl Layer {
    fn take(&mut self, code: i32, value: crate::dxf_pairs::Value<'_>) {
        match code {
            2 => self.name = decoded(value.text().unwrap_or_default()),
            // Bit 1: frozen. A negative colour: off.
            70 => self.hidden |= value.int().unwrap_or(0) & 1 != 0,
            62 => self.hidden |= value.int().unwrap_or(0) < 0,
            _ => {}
        }
    }

    fn keep(self, hidden: &mut BTreeSet<String>) {
        if self.hidden && !self.name.is_empty() {
            hidden.insert(self.name);
        }
    }
}
