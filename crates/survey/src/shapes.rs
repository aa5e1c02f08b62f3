//! From the shapes of a plan file, in its own numbers, to features in the site frame: small slips
//! are mended with a note, what cannot be mended is left out with a note or refused.

use crate::crs::{CrsStatements, is_on_earth};
use crate::feature::{Attribute, Feature, PlanFacts, PlanPoint, Shape};
use crate::kind::FileKind;
use crate::notes::{Notes, Refused};
use crate::options::GroundOptions;
use crate::placement::{Placement, Settled};
use crate::reading::UnitSource;
use crate::{shape_repair, text};
use geometry::DVec2;
use std::collections::BTreeMap;

/// Shapes that are reported one by one; the rest as a number.
const MOST_REPORTED: usize = 100;

/// Points nearer than this are one point, m: a tenth of a millimetre.
const SAME_PLACE: f64 = 1e-4;

/// Most bytes of attributes, counted once for each part of a collection.
const MOST_COPIED: usize = 400 << 20;

fn words_in(attributes: &BTreeMap<String, Attribute>) -> usize {
    let value = |value: &Attribute| if let Attribute::Text(text) = value { text.len() } else { 0 };
    attributes.iter().map(|(key, attribute)| 64 + key.len() + value(attribute)).sum()
}

/// A point in the numbers of the file.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct RawPoint {
    pub(crate) at: DVec2,
    pub(crate) height: Option<f64>,
}

/// A shape in the numbers of the file.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum RawShape {
    Point(RawPoint),
    Line(Vec<RawPoint>),
    /// Outer ring, then holes.
    Area(Vec<Vec<RawPoint>>),
}

/// What the file holds at one place: several shapes where it is a collection.
#[derive(Debug, Clone, PartialEq, Default)]
pub(crate) struct RawFeature {
    pub(crate) name: Option<String>,
    pub(crate) shapes: Vec<RawShape>,
    pub(crate) attributes: BTreeMap<String, Attribute>,
    /// Number of the feature or record, from 1.
    pub(crate) place: usize,
}

/// Counts problems of single shapes, and reports the first hundred.
#[derive(Debug, Default)]
pub(crate) struct ShapeNotes {
    reported: usize,
    more: usize,
    repeated: usize,
    unclosed: usize,
}

impl ShapeNotes {
    fn room(&mut self) -> bool {
        if self.reported < MOST_REPORTED {
            self.reported += 1;
            return true;
        }
        self.more += 1;
        false
    }

    /// Something at a place that makes the file unusable.
    pub(crate) fn refuse(&mut self, place: usize, message: evidence::TextId, notes: &mut Notes<'_>) {
        // The first error is always said: a file must not end as usable because a hundred warnings stood before it.
        if self.room() || !notes.any_error() {
            notes.refuse("survey::bad-shape", message.with("place", place), text::DO_MEND_SHAPE);
        }
    }

    /// Something that was left out or mended.
    fn warn(&mut self, code: &str, place: usize, message: evidence::TextId, notes: &mut Notes<'_>) {
        if self.room() {
            notes.warn(code, message.with("place", place), text::DO_MEND_SHAPE);
        }
    }

    fn finish(&self, notes: &mut Notes<'_>) {
        let sums = [
            (self.repeated, "survey::repeated-points", text::POINTS_REPEATED),
            (self.unclosed, "survey::open-rings", text::RINGS_UNCLOSED),
            (self.more, "survey::more-shapes", text::MORE_BAD_SHAPES),
        ];
        for (count, code, message) in sums.into_iter().filter(|s| s.0 > 0) {
            notes.warn(code, message.with("count", count), text::DO_MEND_SHAPE);
        }
    }
}

/// What a plan file says of itself.
pub(crate) struct PlanSource {
    pub(crate) kind: FileKind,
    pub(crate) crs: CrsStatements,
    /// By kind, what was not read.
    pub(crate) left_out: BTreeMap<String, u64>,
}

/// Places the shapes in the site frame.
pub(crate) fn place(
    raw: Vec<RawFeature>,
    source: PlanSource,
    mut shape_notes: ShapeNotes,
    options: &GroundOptions,
    notes: &mut Notes<'_>,
) -> Result<(Vec<Feature>, PlanFacts), Refused> {
    let points = || raw.iter().flat_map(|f| &f.shapes).flat_map(RawShape::points);
    let (low, high) =
        points().map(|p| p.at).fold((DVec2::INFINITY, DVec2::NEG_INFINITY), |(l, h), p| (l.min(p), h.max(p)));
    if !low.is_finite() || !high.is_finite() {
        if !notes.any_error() {
            notes.refuse("survey::no-shapes", text::NO_SHAPES, text::DO_EXPORT_AGAIN);
        }
        return Err(Refused);
    }
    let flat = points().all(|p| p.height.is_none_or(|h| h == 0.0));
    let Settled { placement, units, crs } = Placement::settle(&source.crs, (low, high), options, notes)?;
    // A collection of many parts has its attributes copied to each; a file could make that grow without end.
    let copies: usize = raw.iter().map(|f| words_in(&f.attributes).saturating_mul(f.shapes.len())).sum();
    if copies > MOST_COPIED {
        let message = text::TOO_MANY_BYTES.with("found", copies).with("most", MOST_COPIED);
        return Err(notes.refuse("survey::too-large", message, text::DO_CUT_OUT));
    }
    let layer = notes.stem();
    let (mut features, mut layers) = (Vec::new(), BTreeMap::new());
    let (mut min, mut max) = (DVec2::INFINITY, DVec2::NEG_INFINITY);
    for feature in raw {
        for shape in feature.shapes {
            for shape in placed(shape, feature.place, &placement, flat, &mut shape_notes, notes) {
                for p in shape.points() {
                    (min, max) = (min.min(p.at), max.max(p.at));
                }
                *layers.entry(layer.clone()).or_default() += 1;
                let (name, attributes) = (feature.name.clone(), feature.attributes.clone());
                features.push(Feature { layer: layer.clone(), name, shape, attributes, place: feature.place });
            }
        }
    }
    shape_notes.finish(notes);
    if notes.any_error() {
        return Err(Refused);
    }
    if features.is_empty() {
        return Err(notes.refuse("survey::no-shapes", text::NO_SHAPES, text::DO_EXPORT_AGAIN));
    }
    let unit =
        (units.horizontal_source != UnitSource::Projected).then_some((units.horizontal, units.horizontal_source));
    let facts = PlanFacts {
        kind: source.kind,
        unit,
        crs,
        min: min.to_array(),
        max: max.to_array(),
        layers,
        left_out: source.left_out,
    };
    Ok((features, facts))
}

impl RawShape {
    pub(crate) fn points(&self) -> Box<dyn Iterator<Item = &RawPoint> + '_> {
        match self {
            Self::Point(p) => Box::new(std::iter::once(p)),
            Self::Line(points) => Box::new(points.iter()),
            Self::Area(rings) => Box::new(rings.iter().flatten()),
        }
    }
}

fn placed(
    shape: RawShape,
    place: usize,
    placement: &Placement,
    flat: bool,
    shape_notes: &mut ShapeNotes,
    notes: &mut Notes<'_>,
) -> Vec<Shape> {
    let carry = |p: &RawPoint| PlanPoint {
        at: placement.plan(p.at),
        height: p.height.filter(|h| !flat && h.is_finite()).map(|h| placement.height(h)),
    };
    if shape.points().any(|p| !is_on_earth(carry(p).at.extend(0.0))) {
        shape_notes.refuse(place, text::SHAPE_WITHOUT_PLACE, notes);
        return Vec::new();
    }
    let apart = |points: Vec<RawPoint>, shape_notes: &mut ShapeNotes| -> Vec<PlanPoint> {
        let mut all: Vec<PlanPoint> = points.iter().map(carry).collect();
        let before = all.len();
        all.dedup_by(|a, b| a.at.distance(b.at) < SAME_PLACE);
        shape_notes.repeated += before - all.len();
        all
    };
    match shape {
        RawShape::Point(p) => vec![Shape::Point(carry(&p))],
        RawShape::Line(points) => {
            let line = apart(points, shape_notes);
            if line.len() < 2 {
                shape_notes.warn("survey::shape-left-out", place, text::LINE_WITHOUT_LENGTH, notes);
                return Vec::new();
            }
            vec![Shape::Line(line)]
        }
        RawShape::Area(rings) => {
            let mut rings = rings.into_iter().map(|ring| {
                let mut ring = apart(ring, shape_notes);
                if ring.len() > 1 && ring[0].at.distance(ring[ring.len() - 1].at) < SAME_PLACE {
                    ring.pop();
                } else {
                    shape_notes.unclosed += 1;
                }
                ring
            });
            let outer = rings.next().unwrap_or_default();
            let rest: Vec<Vec<PlanPoint>> = rings.collect();
            if outer.len() < 3 {
                shape_notes.warn("survey::shape-left-out", place, text::RING_TOO_SHORT, notes);
                return Vec::new();
            }
            let (holes, bad): (Vec<_>, Vec<_>) = rest.into_iter().partition(|hole| hole.len() >= 3);
            for _ in bad {
                shape_notes.warn("survey::shape-left-out", place, text::HOLE_TOO_SHORT, notes);
            }
            if shape_repair::is_valid(&outer, &holes) {
                return vec![Shape::Area { outer, holes }];
            }
            let mended = shape_repair::mend(&outer, &holes);
            if mended.is_empty() {
                shape_notes.warn("survey::shape-left-out", place, text::AREA_OF_NOTHING, notes);
            } else {
                shape_notes.warn("survey::shape-mended", place, text::AREA_CROSSES_ITSELF, notes);
            }
            mended
        }
    }
}
