//! Excavation outlines in plan, and how much farther from each a wheel stands than it must.
//!
//! Plan coordinates, m. An outline is the crest, closed from its last point to its first, and each of its sides names
//! its edge. Edges are rounded to [`ROUNDING`] on the safe side (deeper, steeper, wetter), wheels to the rung above, and
//! alike ones are solved once, in a [`SetBackStore`]: a trench costs as many searches as it has kinds of sides, whatever
//! its length and the raster; the next map of the same store costs none for loads that were met before.
//!
//! One number is read everywhere: the **spare** distance, from the outer edge of tyre or mat to the nearest place it
//! may not pass, by single checks ([`SetBackMap::at`]) and by fields of stands ([`SetBackMap::raster`]) alike.
//! Below zero: not there. Ends of an outline hold as its sides do; that corners brace each other is not credited.

use crate::edge_text as text;
use crate::input_fault::{InputFault, InputFaults};
use crate::set_back::{Edge, SetBack};
pub use crate::set_back_store::ROUNDING;
use crate::set_back_store::{SetBackStore, Solved};
use crate::wheel_row::WheelRow;
use libm::hypot;
use quantity::Dimension;
use std::sync::Arc;

/// The crest of an excavation.
#[derive(Debug, Clone, PartialEq)]
pub struct Outline {
    /// Corners in order, m.
    pub points: Vec<[f64; 2]>,
    /// For the side from each corner to the next: index of its edge.
    pub edges: Vec<usize>,
}

/// A side of an outline: index of the outline, and of the corner it starts at.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct SideOf {
    /// Outline.
    pub outline: usize,
    /// Corner.
    pub corner: usize,
}

/// How a place stands to the outlines.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Reading {
    /// Spare distance, m; below zero the wheel may not stand there.
    pub spare: f64,
    /// Distance from the crest of that side, m; 0 inside an outline.
    pub distance: f64,
    /// The side that decides.
    pub side: SideOf,
    /// Index of that side's answer in [`SetBackMap::answers`].
    pub answer: usize,
}

/// A wrong input, by what it belongs to.
#[derive(Debug, Clone, PartialEq)]
pub enum MapFault {
    /// An edge, with the wheels.
    Edge {
        /// Its index.
        edge: usize,
        /// What is wrong.
        fault: InputFault,
    },
    /// An outline.
    Outline {
        /// Its index.
        outline: usize,
        /// What is wrong.
        fault: InputFault,
    },
}

/// One side, ready to be measured to.
#[derive(Debug, Clone, Copy)]
struct Segment {
    from: [f64; 2],
    to: [f64; 2],
    needed: f64,
    answer: usize,
    side: SideOf,
}

/// Outlines with what each side asks.
#[derive(Debug, Clone)]
pub struct SetBackMap {
    segments: Vec<Segment>,
    outlines: Vec<Vec<[f64; 2]>>,
    answers: Vec<Arc<Solved>>,
}

/// Spare distances on a raster, row by row from the first row up.
#[derive(Debug, Clone, PartialEq)]
pub struct SpareRaster {
    /// Middle of the first cell, m.
    pub origin: [f64; 2],
    /// Size of a cell, m.
    pub cell: f64,
    /// Columns and rows.
    pub size: [usize; 2],
    /// Spare distance of each cell's middle, m; columns of a row together. Without any outline endless.
    pub spare: Vec<f64>,
}

impl SetBackMap {
    /// Asks the store of every side, so that every kind is solved once.
    ///
    /// # Errors
    /// Every fault of every edge, wheel row and outline.
    pub fn new(
        outlines: &[Outline],
        edges: &[Edge],
        rows: &[WheelRow],
        store: &mut SetBackStore,
    ) -> Result<Self, Vec<MapFault>> {
        let mut faults = Vec::new();
        for (edge, e) in edges.iter().enumerate() {
            faults.extend(e.faults(rows).into_iter().map(|fault| MapFault::Edge { edge, fault }));
        }
        for (outline, o) in outlines.iter().enumerate() {
            faults.extend(o.faults(edges.len()).into_iter().map(|fault| MapFault::Outline { outline, fault }));
        }
        if !faults.is_empty() {
            return Err(faults);
        }
        let mut map = Self { segments: Vec::new(), outlines: Vec::new(), answers: Vec::new() };
        for (i, outline) in outlines.iter().enumerate() {
            let n = outline.points.len();
            for corner in 0..n {
                let edge = outline.edges[corner];
                let asked = store.kind(&edges[edge]).and_then(|kind| store.ask(kind, rows));
                let solved =
                    asked.map_err(|f| f.into_iter().map(|fault| MapFault::Edge { edge, fault }).collect::<Vec<_>>())?;
                let known = map.answers.iter().position(|known| Arc::ptr_eq(known, &solved));
                let answer = known.unwrap_or(map.answers.len());
                let needed = solved.needed();
                if known.is_none() {
                    map.answers.push(solved);
                }
                let side = SideOf { outline: i, corner };
                let (from, to) = (outline.points[corner], outline.points[(corner + 1) % n]);
                map.segments.push(Segment { from, to, needed, answer, side });
            }
            map.outlines.push(outline.points.clone());
        }
        Ok(map)
    }

    /// What each kind of side comes to.
    pub fn answers(&self) -> impl ExactSizeIterator<Item = &SetBack> {
        self.answers.iter().map(|solved| &solved.answer)
    }

    /// How a wheel's nearest point stands; none where there is no outline.
    pub fn at(&self, point: [f64; 2]) -> Option<Reading> {
        let mut worst: Option<Reading> = None;
        for s in &self.segments {
            let distance = distance_to(point, s.from, s.to);
            let spare = distance - s.needed;
            if worst.is_none_or(|w| spare < w.spare || spare.is_nan()) {
                worst = Some(Reading { spare, distance, side: s.side, answer: s.answer });
            }
        }
        let inside = self.outlines.iter().position(|o| contains(o, point));
        match (inside, worst) {
            // Over the excavation itself: out through the nearest side, and then as far as that asks.
            (Some(outline), Some(_)) => self
                .segments
                .iter()
                .filter(|s| s.side.outline == outline)
                .map(|s| {
                    let spare = -(distance_to(point, s.from, s.to) + s.needed);
                    Reading { spare, distance: 0.0, side: s.side, answer: s.answer }
                })
                .max_by(|a, b| a.spare.total_cmp(&b.spare)),
            (_, worst) => worst,
        }
    }

    /// The same for the middle of every cell.
    pub fn raster(&self, origin: [f64; 2], cell: f64, size: [usize; 2]) -> SpareRaster {
        let spare = (0..size[1])
            .flat_map(|row| (0..size[0]).map(move |col| [col, row]))
            .map(|[col, row]| {
                let point = [origin[0] + cell * col as f64, origin[1] + cell * row as f64];
                self.at(point).map_or(f64::INFINITY, |r| r.spare)
            })
            .collect();
        SpareRaster { origin, cell, size, spare }
    }
}

impl Outline {
    fn faults(&self, edges: usize) -> Vec<InputFault> {
        let mut out = InputFaults::default();
        if self.points.len() < 3 {
            out.push(InputFault::Missing { what: text::NAME_OUTLINE_CORNER });
        }
        for p in self.points.iter().flatten() {
            out.range(text::NAME_OUTLINE_CORNER, *p, Dimension::Length, [-1e8, 1e8]);
        }
        if self.edges.len() != self.points.len() || self.edges.iter().any(|e| *e >= edges) {
            out.push(InputFault::Missing { what: text::NAME_OUTLINE_EDGE });
        }
        out.done().err().unwrap_or_default()
    }
}

fn distance_to(p: [f64; 2], a: [f64; 2], b: [f64; 2]) -> f64 {
    let (d, v) = ([b[0] - a[0], b[1] - a[1]], [p[0] - a[0], p[1] - a[1]]);
    let length = d[0] * d[0] + d[1] * d[1];
    let t = if length > 0.0 { ((v[0] * d[0] + v[1] * d[1]) / length).clamp(0.0, 1.0) } else { 0.0 };
    hypot(v[0] - t * d[0], v[1] - t * d[1])
}

/// True if the point lies in the polygon: an upward or downward side passes to its right an odd number of times.
fn contains(polygon: &[[f64; 2]], p: [f64; 2]) -> bool {
    let n = polygon.len();
    let mut inside = false;
    for i in 0..n {
        let (a, b) = (polygon[i], polygon[(i + 1) % n]);
        if (a[1] > p[1]) != (b[1] > p[1]) && p[0] < a[0] + (p[1] - a[1]) / (b[1] - a[1]) * (b[0] - a[0]) {
            inside = !inside;
        }
    }
    inside
}
