//! Survey points, plan features, parcels and alignments of a LandXML file as shapes.

use crate::arc_chords;
use crate::crs::is_on_earth;
use crate::feature::{Attribute, Feature, PlanFacts, PlanPoint, PlanReading, Shape};
use crate::kind::FileKind;
use crate::landxml::resolve;
use crate::landxml_document::{Document, Figure, Piece, Problems};
use crate::landxml_points::{Places, note_zeros};
use crate::landxml_reader;
use crate::notes::{Notes, Refused};
use crate::options::GroundOptions;
use crate::placement::{Placement, Settled};
use crate::text;
use crate::xml_scan::shown;
use evidence::Faults;
use geometry::{DVec2, DVec3};
use std::collections::BTreeMap;

/// Ends this near to each other are one point, m (ours: coordinates are written to the millimetre).
const JOINED: f64 = 0.002;

/// Chords leave an arc by no more than this, m.
const CHORD: f64 = 0.01;

/// Reads the survey points, plan features, parcels and alignments of a LandXML file. Of `options`
/// only units and coordinate system count.
///
/// # Errors
/// Every fault found: numbers that are none, references to points that are not there.
pub fn landxml_plan(name: &str, bytes: &[u8], options: &GroundOptions) -> Result<PlanReading, Faults> {
    let mut notes = Notes::new(name);
    let result = plan(bytes, options, &mut notes);
    let ((features, facts), notes) = notes.finish(result)?;
    Ok(PlanReading { features, facts, notes })
}

/// The shapes, in file order: points first. Layers are `CgPoint`, `PlanFeature`, `Parcel` and
/// `Alignment`; what the file says of each stands in its attributes.
pub(crate) fn plan(
    bytes: &[u8],
    options: &GroundOptions,
    notes: &mut Notes<'_>,
) -> Result<(Vec<Feature>, PlanFacts), Refused> {
    let mut document = landxml_reader::read(bytes, notes)?;
    let Settled { placement, units, crs } = resolve(&document, options, notes)?;
    let places = Places::new(&document);
    note_zeros(&document, &places, notes);
    let mut problems = std::mem::take(&mut document.point_problems);
    let mut features = points(&document, &places, &mut problems);
    problems.report(notes);
    let mut problems = std::mem::take(&mut document.figure_problems);
    for figure in &document.figures {
        let drawn = Drawn { places: &places, unit: units.horizontal.metres(), left_out: &mut document.left_out };
        features.extend(drawn.figure(figure, &mut problems));
    }
    let (mut low, mut high) = (DVec2::INFINITY, DVec2::NEG_INFINITY);
    let mut layers: BTreeMap<String, u64> = BTreeMap::new();
    for feature in &mut features {
        *layers.entry(feature.layer.clone()).or_default() += 1;
        place(&mut feature.shape, &placement);
        for p in feature.shape.points() {
            let at = p.at.extend(p.height.unwrap_or(0.0));
            if is_on_earth(at) {
                (low, high) = (low.min(p.at), high.max(p.at));
            } else {
                let message = text::ROW_IMPLAUSIBLE.with("height", quantity::metres(at.z));
                problems.add("survey::bad-point", feature.place as u64, message, text::DO_MEND_AT_SOURCE);
            }
        }
    }
    problems.report(notes);
    if features.is_empty() && !notes.any_error() {
        return Err(notes.refuse("survey::no-shapes", text::NO_SHAPES, text::DO_EXPORT_AGAIN));
    }
    let facts = PlanFacts {
        kind: FileKind::LandXml,
        unit: Some((units.horizontal, units.horizontal_source)),
        crs,
        min: low.to_array(),
        max: high.to_array(),
        layers,
        left_out: document.left_out,
    };
    Ok((features, facts))
}

fn points(document: &Document, places: &Places, problems: &mut Problems) -> Vec<Feature> {
    let one = |point: &crate::landxml_document::SurveyPoint| {
        let (at, height) = places.find(point.at.as_ref()?, problems)?;
        let mut attributes = words(&point.attributes);
        attributes.extend(point.group.clone().map(|g| ("group".to_owned(), Attribute::Text(g))));
        Some(Feature {
            layer: "CgPoint".to_owned(),
            name: point.name.clone(),
            shape: Shape::Point(PlanPoint { at, height }),
            attributes,
            place: line(point.line),
        })
    };
    document.points.iter().filter_map(one).collect()
}

struct Drawn<'a> {
    places: &'a Places,
    /// Metres in the file's unit.
    unit: f64,
    left_out: &'a mut BTreeMap<String, u64>,
}

impl Drawn<'_> {
    /// Its lines, in the file's numbers: joined where one piece ends as the next begins.
    fn figure(self, figure: &Figure, problems: &mut Problems) -> Vec<Feature> {
        let mut runs: Vec<Vec<PlanPoint>> = Vec::new();
        let mut joins = false;
        for piece in &figure.pieces {
            let Some(points) = self.piece(piece, problems) else {
                joins = false;
                continue;
            };
            match runs.last_mut() {
                Some(run) if joins && run.last().zip(points.first()).is_some_and(|(a, b)| self.same(*a, *b)) => {
                    run.extend(&points[1..]);
                }
                _ => runs.push(points),
            }
            joins = true;
        }
        let feature = |shape| Feature {
            layer: figure.kind.to_owned(),
            name: figure.name.clone(),
            shape,
            attributes: words(&figure.attributes),
            place: line(figure.line),
        };
        let mut features: Vec<Feature> = Vec::new();
        for mut run in runs {
            run.dedup_by(|a, b| self.same(*a, *b));
            let closed = run.len() >= 4 && self.same(run[0], run[run.len() - 1]);
            if closed && figure.kind != "Alignment" {
                run.pop();
                features.push(feature(Shape::Area { outer: run, holes: Vec::new() }));
            } else if run.len() >= 2 {
                features.push(feature(Shape::Line(run)));
            }
        }
        if let Some((at, height)) = figure.location.as_ref().and_then(|spot| self.places.find(spot, problems)) {
            features.push(feature(Shape::Point(PlanPoint { at, height })));
        }
        if features.is_empty() {
            *self.left_out.entry(format!("{} without lines", figure.kind)).or_default() += 1;
        }
        features
    }

    fn same(&self, a: PlanPoint, b: PlanPoint) -> bool {
        (a.at - b.at).length() * self.unit <= JOINED
    }

    /// Its points; `None` interrupts the line.
    fn piece(&self, piece: &Piece, problems: &mut Problems) -> Option<Vec<PlanPoint>> {
        let mut find = |spot| self.places.find(spot, problems).map(|(at, height)| PlanPoint { at, height });
        match piece {
            Piece::Gap => None,
            Piece::Points(spots) => {
                let points: Vec<PlanPoint> = spots.iter().filter_map(find).collect();
                (!points.is_empty() && points.len() == spots.len()).then_some(points)
            }
            Piece::Arc(arc) => {
                let (start, end, centre) = (find(&arc.start), find(&arc.end), find(&arc.centre));
                let (start, end, centre) = (start?, end?, centre?);
                Some(arc_chords::chords(start, end, centre.at, arc.clockwise, arc.length, CHORD / self.unit))
            }
        }
    }
}

fn words(attributes: &BTreeMap<&'static str, String>) -> BTreeMap<String, Attribute> {
    attributes.iter().map(|(name, value)| ((*name).to_owned(), Attribute::Text(shown(value)))).collect()
}

fn line(n: u64) -> usize {
    usize::try_from(n).unwrap_or(usize::MAX)
}

fn place(shape: &mut Shape, placement: &Placement) {
    let one = |p: &mut PlanPoint| {
        let at: DVec3 = placement.point(p.at.extend(p.height.unwrap_or(0.0)));
        *p = PlanPoint { at: at.truncate(), height: p.height.map(|_| at.z) };
    };
    match shape {
        Shape::Point(p) | Shape::Text { at: p, .. } => one(p),
        Shape::Line(points) | Shape::Face(points) => points.iter_mut().for_each(one),
        Shape::Area { outer, holes } => outer.iter_mut().chain(holes.iter_mut().flatten()).for_each(one),
    }
}
