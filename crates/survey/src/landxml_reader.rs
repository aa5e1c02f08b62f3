//! From the elements of a LandXML file to a [`Document`].

use crate::landxml_document::{Arc, Document, Figure, Piece, RawSurface, Spot, SurveyPoint};
use crate::notes::{Notes, Refused};
use crate::units::{LengthUnit, UnitStatement};
use crate::xml_scan::{Opened, Visitor, scan, shown};
use crate::{text, xml_text};
use geometry::{DVec2, DVec3};
use site::RingKind;
use std::collections::BTreeMap;

/// Elements that hold geometry and are not read; counted.
const NOT_READ: &[&str] = &[
    "Pipe",
    "Struct",
    "Roadway",
    "ProfAlign",
    "ProfSurf",
    "CrossSect",
    "GradeSurface",
    "Spiral",
    "Monument",
    "PointFile",
    "PlanFeature3D",
    "RawObservation",
    "GPSVector",
];

/// Attributes of points and figures that are passed on.
const PASSED_ON: &[&str] =
    &["code", "desc", "oID", "state", "pntSurv", "surveyOrder", "area", "parcelType", "staStart"];

/// Reads the whole file.
pub(crate) fn read(bytes: &[u8], notes: &mut Notes<'_>) -> Result<Document, Refused> {
    let xml = xml_text::decode(bytes, notes)?;
    let mut reader = Reader::default();
    scan(&xml, "LandXML", &mut reader, notes)?;
    reader.document.crs.complete();
    Ok(reader.document)
}

#[derive(Default)]
struct Reader {
    document: Document,
    surface: Option<RawSurface>,
    /// Id of the point, or invisible face, that is open.
    id: Option<String>,
    invisible: bool,
    boundary: Option<RingKind>,
    contour: Option<f64>,
    groups: Vec<Option<String>>,
    point: Option<SurveyPoint>,
    figures: Vec<Figure>,
    piece: Option<Open>,
}

/// A piece of a line that is open.
#[derive(Default)]
struct Open {
    line: u64,
    reference: Option<String>,
    start: Option<Spot>,
    end: Option<Spot>,
    centre: Option<Spot>,
    between: Vec<Spot>,
    clockwise: Option<bool>,
    length: Option<f64>,
}

impl Visitor for Reader {
    fn open(&mut self, e: &Opened<'_>, parent: &str) {
        if NOT_READ.contains(&e.name) {
            *self.document.left_out.entry(e.name.to_owned()).or_default() += 1;
        }
        match e.name {
            "Metric" | "Imperial" if parent == "Units" => self.units(e),
            "CoordinateSystem" if parent == "LandXML" => self.coordinate_system(e),
            "Surface" if parent == "Surfaces" => {
                let name = e.owned("name").unwrap_or_default();
                self.surface = Some(RawSurface { name, line: e.line, ..RawSurface::default() });
            }
            "Definition" => {
                if let Some(s) = &mut self.surface {
                    s.declared_plan_area = e.number("area2DSurf").filter(|a| *a > 0.0);
                    s.declared_surface_area = e.number("area3DSurf").filter(|a| *a > 0.0);
                }
            }
            "P" => self.id = e.owned("id"),
            "F" => self.invisible = e.attribute("i") == Some("1"),
            "Boundary" => {
                self.boundary = match e.attribute("bndType") {
                    Some("outer") | None => Some(RingKind::Outer),
                    Some("void" | "hole") => Some(RingKind::Void),
                    Some("island") => Some(RingKind::Island),
                    // Others, such as textures, bound no surface.
                    Some(_) => None,
                };
            }
            "Contour" => self.contour = e.number("elev"),
            "CgPoints" => self.groups.push(e.owned("name").or_else(|| self.groups.last().cloned().flatten())),
            "CgPoint" if parent == "CgPoints" => {
                self.point = Some(SurveyPoint {
                    name: e.owned("name"),
                    group: self.groups.last().cloned().flatten(),
                    at: e.owned("pntRef").map(|name| Spot::Named(name, e.line)),
                    attributes: passed_on(e),
                    line: e.line,
                });
            }
            "PlanFeature" | "Parcel" | "Alignment" => {
                let kind = ["PlanFeature", "Parcel", "Alignment"].into_iter().find(|k| *k == e.name).unwrap_or("");
                let (name, attributes) = (e.owned("name"), passed_on(e));
                self.figures.push(Figure { kind, name, attributes, line: e.line, ..Figure::default() });
            }
            "CoordGeom" => self.add_piece(Piece::Gap),
            "Line" | "Curve" | "IrregularLine" | "Chain" if parent == "CoordGeom" => {
                self.piece = Some(Open {
                    line: e.line,
                    clockwise: e.attribute("rot").map(|r| r == "cw"),
                    length: e.number("length").filter(|l| *l > 0.0),
                    ..Open::default()
                });
            }
            "Spiral" if parent == "CoordGeom" => self.add_piece(Piece::Gap),
            "Start" | "End" | "Center" | "Location" => {
                if let Some(piece) = &mut self.piece {
                    piece.reference = e.owned("pntRef");
                } else {
                    self.id = e.owned("pntRef");
                }
            }
            _ => {}
        }
    }

    fn close(&mut self, name: &str, parent: &str, content: &str, line: u64) {
        match name {
            "Surface" if parent == "Surfaces" => self.document.surfaces.extend(self.surface.take()),
            "P" if parent == "Pnts" => self.surface_point(content, line),
            "F" if parent == "Faces" => self.face(content, line),
            "Boundary" => self.boundary = None,
            "Contour" => self.contour = None,
            // Points by reference to others, or in a file of their own.
            "Chain" if parent == "Chains" => self.count_without_height(),
            "PointFile" => self.count_without_height(),
            "PntList3D" | "PntList2D" => self.list(name == "PntList3D", parent, content, line),
            "CgPoints" => {
                self.groups.pop();
            }
            "CgPoint" => {
                if let Some(mut point) = self.point.take() {
                    if !content.is_empty() || point.at.is_none() {
                        point.at = place(content, line, &mut self.document.point_problems, "CgPoint").or(point.at);
                    }
                    self.document.points.push(point);
                }
            }
            "PlanFeature" | "Parcel" | "Alignment" => self.document.figures.extend(self.figures.pop()),
            "Start" | "End" | "Center" if self.piece.is_some() => {
                let problems = &mut self.document.figure_problems;
                let Some(piece) = &mut self.piece else { return };
                let spot = match piece.reference.take() {
                    Some(reference) => Some(Spot::Named(reference, line)),
                    None => place(content, line, problems, name),
                };
                match name {
                    "Start" => piece.start = spot,
                    "End" => piece.end = spot,
                    _ => piece.centre = spot,
                }
            }
            "Location" if parent == "PlanFeature" => {
                let spot = match self.id.take() {
                    Some(reference) => Some(Spot::Named(reference, line)),
                    None => place(content, line, &mut self.document.figure_problems, name),
                };
                if let Some(figure) = self.figures.last_mut() {
                    figure.location = spot;
                }
            }
            "Line" | "IrregularLine" | "Curve" | "Chain" if parent == "CoordGeom" => self.end_piece(name, content),
            _ => {}
        }
    }
}

impl Reader {
    fn units(&mut self, e: &Opened<'_>) {
        const PLACE: &str = "LandXML Units";
        let statement = |factor: f64| UnitStatement { factor, place: PLACE };
        let Some(word) = e.attribute("linearUnit") else { return };
        let crs = &mut self.document.crs;
        let Some(factor) = length_unit(word) else {
            self.document.odd_unit = Some(shown(word));
            return;
        };
        crs.horizontal.push(statement(factor));
        // A metric block in feet, or the reverse, is a contradiction within one element.
        let is_metre = |f: f64| LengthUnit::of_factor(f) == Some(LengthUnit::Metre);
        let is_foot = |f: f64| matches!(LengthUnit::of_factor(f), Some(LengthUnit::Foot | LengthUnit::UsSurveyFoot));
        if e.name == "Metric" && is_foot(factor) {
            crs.horizontal.push(statement(1.0));
        } else if e.name == "Imperial" && is_metre(factor) {
            crs.horizontal.push(statement(LengthUnit::Foot.metres()));
        }
        // "feet" of the elevation unit does not tell the two feet apart.
        let vertical = match e.attribute("elevationUnit").map(length_unit) {
            Some(Some(height)) if !(is_foot(height) && is_foot(factor)) => height,
            Some(None) => f64::NAN,
            _ => factor,
        };
        crs.vertical.push(statement(vertical));
        self.document.area_unit = e.attribute("areaUnit").and_then(area_unit);
    }

    fn count_without_height(&mut self) {
        if let Some(s) = &mut self.surface {
            s.without_height += 1;
        }
    }

    fn coordinate_system(&mut self, e: &Opened<'_>) {
        let crs = &mut self.document.crs;
        let code = e.attribute("epsgCode").map(|c| c.trim_start_matches(|c: char| !c.is_ascii_digit()));
        let code: Option<u16> = code.and_then(|c| c.parse().ok()).filter(|c| *c > 0);
        crs.epsg = crs.epsg.or(code);
        if let Some(text) = e.attribute("ogcWktCode") {
            crs.add_text(text);
        }
        let words = ["name", "desc", "horizontalCoordinateSystemName"].into_iter().find_map(|n| e.attribute(n));
        let name = match (words, code) {
            (Some(words), Some(code)) => Some(format!("{} (EPSG:{code})", shown(words))),
            (words, code) => words.map(shown).or_else(|| code.map(|c| format!("EPSG:{c}"))),
        };
        crs.name = crs.name.take().or(name);
    }

    fn surface_point(&mut self, content: &str, line: u64) {
        let id = self.id.take();
        let Some(s) = &mut self.surface else { return };
        let numbers = match numbers(content, Some(3)) {
            Ok(numbers) => numbers,
            Err(found) => {
                let message = text::NUMBERS_WRONG.with("element", "P").with("needed", 3_usize).with("found", found);
                return s.problems.add("survey::bad-point", line, message, text::DO_MEND_AT_SOURCE);
            }
        };
        let id = match id {
            Some(word) => s.id(&word),
            // Named by no face; a word with a blank cannot be another point's.
            None => s.id(&format!("line {line}")),
        };
        s.points.push((id, DVec3::new(numbers[1], numbers[0], numbers[2]), line));
    }

    fn face(&mut self, content: &str, line: u64) {
        let Some(s) = &mut self.surface else { return };
        if self.invisible {
            s.invisible += 1;
            return;
        }
        let words: Vec<&str> = content.split_ascii_whitespace().take(5).collect();
        let ids: Vec<u64> = words.iter().map(|w| s.id(w)).collect();
        match ids[..] {
            [a, b, c] => s.faces.push(([a, b, c], line)),
            // A face of four corners is folded along its first diagonal.
            [a, b, c, d] => s.faces.extend([([a, b, c], line), ([a, c, d], line)]),
            _ => {
                let message = text::FACE_WRONG.with("found", shown(content));
                s.problems.add("survey::bad-face", line, message, text::DO_MEND_AT_SOURCE);
            }
        }
    }

    /// A list of points: of a line's piece, or of a surface's source data.
    fn list(&mut self, has_height: bool, parent: &str, content: &str, line: u64) {
        let width = if has_height { 3 } else { 2 };
        let element = if has_height { "PntList3D" } else { "PntList2D" };
        let is_source = self.surface.is_some() && matches!(parent, "Breakline" | "Boundary" | "Contour" | "DataPoints");
        if !is_source && (self.piece.is_none() || parent != "IrregularLine") {
            return;
        }
        let problems = match &mut self.surface {
            Some(s) if is_source => &mut s.problems,
            _ => &mut self.document.figure_problems,
        };
        let found = match numbers(content, None) {
            Ok(numbers) if numbers.len() % width == 0 => numbers,
            other => {
                let found = other.map_or_else(|found| found, |numbers| numbers.len().to_string());
                let message = text::NUMBERS_WRONG.with("element", element).with("needed", width).with("found", found);
                return problems.add("survey::bad-point", line, message, text::DO_MEND_AT_SOURCE);
            }
        };
        let plan = || found.chunks_exact(width).map(|p| DVec2::new(p[1], p[0]));
        let solid = |height: Option<f64>| -> Option<Vec<DVec3>> {
            (has_height || height.is_some()).then(|| {
                let z = |p: &[f64]| if has_height { p[2] } else { height.unwrap_or_default() };
                found.chunks_exact(width).map(|p| DVec3::new(p[1], p[0], z(p))).collect()
            })
        };
        if let (Some(s), true) = (&mut self.surface, is_source) {
            match (parent, solid(self.contour)) {
                ("Boundary", line) => s.boundaries.extend(self.boundary.map(|kind| (kind, plan().collect(), line))),
                ("DataPoints", Some(points)) => s.data.extend(points),
                (_, Some(points)) => s.breaklines.push(points),
                (_, None) => s.without_height += 1,
            }
        } else if let Some(piece) = &mut self.piece {
            let spots = found.chunks_exact(width).map(|p| Spot::At(DVec2::new(p[1], p[0]), p.get(2).copied()));
            piece.between.extend(spots);
        }
    }

    fn end_piece(&mut self, kind: &str, content: &str) {
        let Some(open) = self.piece.take() else { return };
        let piece = match kind {
            "Curve" => {
                let ends = open.start.zip(open.end).zip(open.centre);
                if let Some((((start, end), centre), clockwise)) = ends.zip(open.clockwise) {
                    Piece::Arc(Arc { start, end, centre, clockwise, length: open.length })
                } else {
                    *self.document.left_out.entry("Curve".to_owned()).or_default() += 1;
                    Piece::Gap
                }
            }
            "Chain" => {
                Piece::Points(content.split_ascii_whitespace().map(|w| Spot::Named(w.to_owned(), open.line)).collect())
            }
            _ => Piece::Points(open.start.into_iter().chain(open.between).chain(open.end).collect()),
        };
        self.add_piece(piece);
    }

    fn add_piece(&mut self, piece: Piece) {
        if let Some(figure) = self.figures.last_mut() {
            figure.pieces.push(piece);
        }
    }
}

fn passed_on(e: &Opened<'_>) -> BTreeMap<&'static str, String> {
    PASSED_ON.iter().filter_map(|name| e.owned(name).map(|value| (*name, value))).collect()
}

/// Two or three numbers: north, east, height.
fn place(content: &str, line: u64, problems: &mut crate::landxml_document::Problems, element: &str) -> Option<Spot> {
    match numbers(content, None) {
        Ok(n) if n.len() == 2 || n.len() == 3 => Some(Spot::At(DVec2::new(n[1], n[0]), n.get(2).copied())),
        other => {
            let found = other.map_or_else(|found| found, |n| n.len().to_string());
            let message = text::NUMBERS_WRONG.with("element", element).with("needed", 3_usize).with("found", found);
            problems.add("survey::bad-point", line, message, text::DO_MEND_AT_SOURCE);
            None
        }
    }
}

/// The finite numbers of a text, `needed` of them if stated; else what was found.
fn numbers(content: &str, needed: Option<usize>) -> Result<Vec<f64>, String> {
    let mut all = Vec::new();
    for word in content.split_ascii_whitespace() {
        match word.parse::<f64>() {
            Ok(number) if number.is_finite() => all.push(number),
            _ => return Err(shown(word)),
        }
    }
    if needed.is_some_and(|n| n != all.len()) { Err(shown(content)) } else { Ok(all) }
}

/// Metres in a unit as the LandXML schema names it.
fn length_unit(word: &str) -> Option<f64> {
    match word {
        "millimeter" => Some(0.001),
        "centimeter" => Some(0.01),
        "kilometer" => Some(1000.0),
        "inch" => Some(0.0254),
        "mile" | "miles" => Some(1609.344),
        word => LengthUnit::of_name(word).map(LengthUnit::metres),
    }
}

/// Square metres in a unit as the LandXML schema names it.
fn area_unit(word: &str) -> Option<f64> {
    let square = |side: f64| Some(side * side);
    match word.to_lowercase().as_str() {
        "hectare" => Some(10_000.0),
        "acre" => Some(4_046.856_422_4),
        "squaremeter" => Some(1.0),
        "squaremillimeter" => square(0.001),
        "squarecentimeter" => square(0.01),
        "squarekilometer" => square(1000.0),
        "squarefoot" => square(0.3048),
        "squareinch" => square(0.0254),
        "squaremiles" => square(1609.344),
        _ => None,
    }
}
