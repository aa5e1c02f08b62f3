//! Draws a drawing: entities and the blocks they insert become shapes in file units.

use crate::dxf_curves as curves;
use crate::dxf_frame::Frame;
use crate::dxf_groups::Groups;
use crate::dxf_index::Drawing;
use crate::dxf_outline::{Outline, outline, without_repeats};
use crate::feature::{Attribute, Feature, PlanPoint, Shape};
use crate::notes::{Notes, Refused};
use crate::text;
use evidence::TextId;
use geometry::DVec3;
use std::collections::{BTreeMap, BTreeSet};
use std::ops::Range;

/// What may be drawn: this many units and one more for every two bytes of the file. A point is one
/// unit (32 bytes), a shape eight, 16 bytes read one. Blocks that insert blocks multiply what a
/// small file draws, and this is what stops them: at most 128 MB and 16 times the file.
const WORK: u64 = 4_000_000;

/// Blocks in blocks, at most.
const DEEPEST: usize = 16;

/// Pairs of edges compared in the search for outlines that cross themselves, in one file.
const CROSSING_TESTS: u64 = 50_000_000;

/// Entities spoken of one by one; the rest as a number.
const MOST_SAID: usize = 100;

/// A shape in file units with what joining asks for.
#[derive(Debug, Clone)]
pub(crate) struct Drawn {
    pub(crate) feature: Feature,
    /// The insert it came by; 0 for none.
    pub(crate) instance: u32,
    /// A LINE or an ARC, which may be part of an outline.
    pub(crate) chain: bool,
}

/// How the entities at hand come into the drawing.
#[derive(Debug, Clone)]
pub(crate) struct By {
    pub(crate) frame: Frame,
    /// Layer of the insert, for what lies on layer 0 of a block.
    layer: Option<String>,
    name: Option<String>,
    attributes: BTreeMap<String, Attribute>,
    instance: u32,
    depth: usize,
}

/// Draws, and collects what was drawn and what was not.
pub(crate) struct Artist<'d, 'a, 'n, 'f> {
    pub(crate) drawing: &'d Drawing<'a>,
    pub(crate) notes: &'n mut Notes<'f>,
    /// Farthest of a chord from its curve, file units.
    pub(crate) tolerance: f64,
    /// Corners closer than this are one, file units.
    pub(crate) near: f64,
    pub(crate) drawn: Vec<Drawn>,
    /// Entities not read, by kind, each counted once however often its block is inserted.
    pub(crate) left_out: BTreeMap<String, u64>,
    pub(crate) crossing_tests: u64,
    /// Corners left out because they repeat the one before.
    pub(crate) repeats: u64,
    skipped: BTreeSet<usize>,
    bad: BTreeSet<usize>,
    said: BTreeSet<usize>,
    work: u64,
    instances: u32,
    /// Blocks that are being drawn, from the outermost.
    open: Vec<String>,
}

/// Reading stops, or the entity is left out.
pub(crate) enum Stop {
    Refused,
    /// Something is missing or cannot be.
    Unusable,
    /// Of a kind that is not read.
    NotRead,
}

impl From<Refused> for Stop {
    fn from(_: Refused) -> Self {
        Self::Refused
    }
}

impl<'d, 'a, 'n, 'f> Artist<'d, 'a, 'n, 'f> {
    /// `metres`: metres in a file unit, for the tolerances.
    pub(crate) fn new(drawing: &'d Drawing<'a>, bytes: usize, metres: f64, notes: &'n mut Notes<'f>) -> Self {
        Self {
            drawing,
            notes,
            tolerance: curves::CHORD_TOLERANCE / metres,
            near: 1e-4 / metres,
            drawn: Vec::new(),
            left_out: BTreeMap::new(),
            crossing_tests: CROSSING_TESTS,
            repeats: 0,
            skipped: BTreeSet::new(),
            bad: BTreeSet::new(),
            said: BTreeSet::new(),
            work: WORK + bytes as u64 / 2,
            open: Vec::new(),
            instances: 0,
        }
    }

    /// Smallest area that is one: a square millimetre, file units squared.
    pub(crate) fn least_area(&self) -> f64 {
        100.0 * self.near * self.near
    }

    /// Draws all that stands in the model.
    pub(crate) fn draw_model(&mut self) -> Result<(), Refused> {
        let by =
            By { frame: Frame::WORLD, layer: None, name: None, attributes: BTreeMap::new(), instance: 0, depth: 0 };
        for range in self.drawing.model.clone() {
            self.draw(range, &by)?;
        }
        let more = self.said.len().saturating_sub(MOST_SAID);
        if more > 0 {
            self.notes.warn("survey::more-entities", text::MORE_ENTITIES.with("count", more), text::DO_CHECK_DRAWING);
        }
        Ok(())
    }

    fn draw(&mut self, range: Range<usize>, by: &By) -> Result<(), Refused> {
        let mut i = range.start;
        while i < range.end {
            let kind = self.drawing.entries[i].kind;
            // What belongs to the entity and follows it.
            let part: &[u8] = match kind {
                b"POLYLINE" => b"VERTEX",
                b"INSERT" => b"ATTRIB",
                _ => b"",
            };
            let entries = &self.drawing.entries[i + 1..range.end];
            let parts = if part.is_empty() { 0 } else { entries.iter().take_while(|e| e.kind == part).count() };
            let parts = i + 1..i + 1 + parts;
            self.charge(1)?;
            let next = parts.end;
            match self.entity(i, parts, by) {
                Ok(()) => {}
                Err(Stop::Refused) => return Err(Refused),
                Err(Stop::NotRead) => self.leave_out(i),
                Err(Stop::Unusable) => {
                    self.leave_out(i);
                    self.say(i, "survey::entity-unusable", text::ENTITY_UNUSABLE);
                }
            }
            i = next;
        }
        Ok(())
    }

    fn entity(&mut self, i: usize, parts: Range<usize>, by: &By) -> Result<(), Stop> {
        let entry = self.drawing.entries[i];
        // Ends of lists, and templates of attributes: nothing to draw.
        if matches!(entry.kind, b"SEQEND" | b"ATTDEF") {
            return Ok(());
        }
        let groups = self.groups(i)?;
        if by.depth == 0 && groups.flag(67, 1) {
            if self.skipped.insert(i) {
                *self.left_out.entry("PAPER SPACE".to_owned()).or_default() += 1;
            }
            return Ok(());
        }
        match entry.kind {
            b"INSERT" => self.insert(i, &groups, parts, by),
            b"POLYLINE" => self.polyline(i, &groups, parts, by),
            _ => self.simple(i, &groups, by),
        }
    }

    /// The pairs of an entry; a coordinate that is no number is an error of the file.
    pub(crate) fn groups(&mut self, i: usize) -> Result<Groups<'a>, Stop> {
        if self.bad.contains(&i) {
            return Err(Stop::NotRead);
        }
        match Groups::of(self.drawing, &self.drawing.entries[i]) {
            Ok(groups) => {
                self.charge(groups.bytes as u64 / 16)?;
                Ok(groups)
            }
            Err(bad) => {
                self.bad.insert(i);
                if self.said.insert(i) && self.said.len() <= MOST_SAID {
                    let kind = self.kind(i);
                    let message = text::ENTITY_NUMBER.with("kind", kind);
                    self.notes.refuse_line("survey::bad-number", bad.line as u64, message, text::DO_EXPORT_DXF);
                }
                Err(Stop::NotRead)
            }
        }
    }

    fn insert(&mut self, i: usize, groups: &Groups<'a>, parts: Range<usize>, by: &By) -> Result<(), Stop> {
        let name = groups.words(2).ok_or(Stop::Unusable)?;
        let key = name.to_lowercase();
        let Some(block) = self.drawing.blocks.get(&key) else {
            self.say(i, "survey::block-missing", text::BLOCK_MISSING);
            return Err(Stop::NotRead);
        };
        if block.external && block.entries.is_empty() {
            if self.skipped.insert(i) {
                *self.left_out.entry("XREF".to_owned()).or_default() += 1;
            }
            self.say_with(i, "survey::external-drawing", text::EXTERNAL_DRAWING, &name, text::DO_BIND_DRAWINGS);
            return Ok(());
        }
        if by.depth >= DEEPEST || self.open.contains(&key) {
            self.say(i, "survey::blocks-deep", text::BLOCKS_DEEP);
            return Err(Stop::NotRead);
        }
        let scale =
            DVec3::new(groups.real(41).unwrap_or(1.0), groups.real(42).unwrap_or(1.0), groups.real(43).unwrap_or(1.0));
        if scale.x == 0.0 || scale.y == 0.0 {
            self.say(i, "survey::scale-zero", text::SCALE_ZERO);
            return Err(Stop::NotRead);
        }
        if scale.z == 0.0 {
            self.say(i, "survey::scale-zero", text::SCALE_ZERO_HEIGHT);
        }
        let turn = groups.real(50).unwrap_or(0.0).to_radians();
        let at = groups.point(10).unwrap_or(DVec3::ZERO);
        let facing = Frame::facing(groups.facing()).ok_or(Stop::Unusable)?;
        let mut attributes = by.attributes.clone();
        for part in parts {
            let attribute = self.groups(part)?;
            if let (Some(tag), Some(value)) = (attribute.words(2), attribute.text(1)) {
                let value = crate::dxf_words::single_line(value);
                attributes.insert(tag, if value.is_empty() { Attribute::Nothing } else { Attribute::Text(value) });
            }
        }
        let layer = layer_of(groups, by);
        let weight = (weight(&attributes) + layer.len() + name.len()) as u64 / 32;
        let grid = |count: i32| groups.int(count).unwrap_or(1).clamp(1, i64::from(i32::MAX));
        let (columns, rows) = (grid(70), grid(71));
        let spacing = DVec3::new(groups.real(44).unwrap_or(0.0), groups.real(45).unwrap_or(0.0), 0.0);
        let whole = by.frame.after(&facing).after(&Frame::placed(at, turn, DVec3::ONE));
        let base = Frame::placed(-block.base, 0.0, DVec3::ONE);
        self.open.push(key);
        for row in 0..rows {
            for column in 0..columns {
                self.charge(8 + weight)?;
                let offset = spacing * DVec3::new(column as f64, row as f64, 0.0);
                self.instances += 1;
                let inner = By {
                    frame: whole.after(&Frame::placed(offset, 0.0, scale)).after(&base),
                    layer: Some(layer.clone()),
                    name: Some(block.name.clone()),
                    attributes: attributes.clone(),
                    instance: self.instances,
                    depth: by.depth + 1,
                };
                self.draw(block.entries.clone(), &inner)?;
            }
        }
        self.open.pop();
        Ok(())
    }

    /// A shape from points in the axes of `frame`; `closed` ones become areas where they can.
    pub(crate) fn line(
        &mut self,
        i: usize,
        groups: &Groups<'a>,
        by: &By,
        frame: &Frame,
        points: &[DVec3],
        closed: bool,
    ) -> Result<(), Stop> {
        let mut points: Vec<DVec3> = points.iter().map(|&p| frame.point(p)).collect();
        if points.iter().any(|p| !p.is_finite()) {
            return Err(Stop::Unusable);
        }
        // An open line that ends where it starts is closed.
        let closed = closed || (points.len() > 3 && (points[0] - points[points.len() - 1]).length() <= self.near);
        if !closed {
            let repeats = without_repeats(&mut points, self.near);
            if points.len() < 2 {
                return Err(Stop::Unusable);
            }
            self.repeats += repeats;
            let chain = matches!(self.drawing.entries[i].kind, b"LINE" | b"ARC");
            return self.emit(i, groups, by, Shape::Line(plan_points(&points)), chain);
        }
        for shape in self.areas(i, points)? {
            self.emit(i, groups, by, shape, false)?;
        }
        Ok(())
    }

    /// The areas within an outline, or the line itself where there are none.
    pub(crate) fn areas(&mut self, i: usize, points: Vec<DVec3>) -> Result<Vec<Shape>, Stop> {
        let least = self.least_area();
        let line = match outline(points, self.near, least, &mut self.crossing_tests) {
            Outline::Area(corners) => return Ok(vec![area_of(&corners)]),
            Outline::Parts(parts) => {
                self.say(i, "survey::outline-split", text::OUTLINE_SPLIT);
                return Ok(parts.iter().map(|p| area_of(p)).collect());
            }
            Outline::Crossing(line) => {
                self.say(i, "survey::outline-crosses", text::OUTLINE_CROSSES);
                line
            }
            Outline::Unchecked(line) => {
                self.say(i, "survey::outline-unchecked", text::OUTLINE_UNCHECKED);
                line
            }
            Outline::Flat(line) => {
                self.say(i, "survey::outline-flat", text::OUTLINE_FLAT);
                line
            }
            Outline::Nothing => return Err(Stop::Unusable),
        };
        Ok(vec![Shape::Line(plan_points(&line))])
    }

    /// Keeps a shape whose points are in the drawing's axes.
    pub(crate) fn emit(
        &mut self,
        i: usize,
        groups: &Groups<'a>,
        by: &By,
        shape: Shape,
        chain: bool,
    ) -> Result<(), Stop> {
        let words = if let Shape::Text { words, .. } = &shape { words.len() } else { 0 };
        let layer = layer_of(groups, by);
        let extra = words + weight(&by.attributes) + layer.len() + by.name.as_ref().map_or(0, String::len);
        self.charge(8 + shape.points().count() as u64 + extra as u64 / 32)?;
        let feature = Feature {
            layer,
            name: by.name.clone(),
            shape,
            attributes: by.attributes.clone(),
            place: self.drawing.entries[i].line,
        };
        self.drawn.push(Drawn { feature, instance: by.instance, chain });
        Ok(())
    }

    pub(crate) fn charge(&mut self, units: u64) -> Result<(), Refused> {
        match self.work.checked_sub(units) {
            Some(left) => {
                self.work = left;
                Ok(())
            }
            None => Err(self.notes.refuse("survey::too-many-shapes", text::TOO_MANY_SHAPES, text::DO_CUT_OUT)),
        }
    }

    /// Chords that one curve may still have.
    pub(crate) fn may_draw(&self) -> usize {
        usize::try_from(self.work / 8).unwrap_or(usize::MAX)
    }

    fn kind(&self, i: usize) -> String {
        String::from_utf8_lossy(&self.drawing.entries[i].kind[..self.drawing.entries[i].kind.len().min(40)])
            .into_owned()
    }

    fn leave_out(&mut self, i: usize) {
        if self.skipped.insert(i) {
            *self.left_out.entry(self.kind(i)).or_default() += 1;
        }
    }

    /// A warning at an entity, once, with its kind and layer.
    pub(crate) fn say(&mut self, i: usize, code: &str, message: TextId) {
        if self.said.contains(&i) {
            return;
        }
        let layer = Groups::of(self.drawing, &self.drawing.entries[i]).map(|g| g.layer()).unwrap_or_default();
        self.say_with(i, code, message, &layer, text::DO_CHECK_DRAWING);
    }

    fn say_with(&mut self, i: usize, code: &str, message: TextId, layer: &str, hint: TextId) {
        if self.said.insert(i) && self.said.len() <= MOST_SAID {
            let message = message.with("kind", self.kind(i)).with("layer", layer);
            self.notes.warn_line(code, self.drawing.entries[i].line as u64, message, hint);
        }
    }
}

/// Bytes that attributes take, about.
fn weight(attributes: &BTreeMap<String, Attribute>) -> usize {
    let words = |value: &Attribute| if let Attribute::Text(text) = value { text.len() } else { 0 };
    attributes.iter().map(|(tag, value)| 100 + tag.len() + words(value)).sum()
}

/// What lies on layer 0 of a block lies on the layer of the insert.
fn layer_of(groups: &Groups<'_>, by: &By) -> String {
    match (groups.layer(), &by.layer) {
        (own, Some(outer)) if own == "0" => outer.clone(),
        (own, _) => own,
    }
}

pub(crate) fn area_of(corners: &[DVec3]) -> Shape {
    Shape::Area { outer: plan_points(corners), holes: Vec::new() }
}

pub(crate) fn plan_points(points: &[DVec3]) -> Vec<PlanPoint> {
    points.iter().map(|p| PlanPoint { at: p.truncate(), height: Some(p.z) }).collect()
}
