//! What speeds up the reading of a chart: a grid over it, each cell with what lies in it.
//!
//! Most cells lie whole in one zone and hold nothing else: reading them is one look-up. The others
//! list the edges that pass them, and only those are tried. A point is inside a zone by the edges of
//! its row of cells. The answers are those of the search through all edges, to the last bit: the
//! same tests are made on the same edges, fewer of them (a property test holds the two together).

use crate::Zone;
use crate::chart_polygon::{Edge, ON_EDGE, Window, bounds, edges, within_edges};
use geometry::DVec2;
use std::ops::Range;

/// Size of a cell, m, where the chart is not larger than [`MOST`] of them.
const CELL: f64 = 0.3;
/// Cells in one direction at most.
const MOST: usize = 48;
/// Edges this near to a cell count as in it: far more than [`ON_EDGE`] and any rounding, m.
const MARGIN: f64 = 1e-6;
/// Marks a cell that lies whole in one zone; the rest of the number is the zone's rank.
const PLAIN: u32 = 1 << 31;

/// A polygon's part of a cell or a row.
#[derive(Debug, Clone)]
struct Part {
    /// Rank of a zone, or index of an area.
    id: u32,
    /// True if the whole cell lies in it.
    whole: bool,
    /// Its edges there.
    edges: Range<u32>,
}

/// What lies in a cell, or in a row.
#[derive(Debug, Clone, Default)]
struct Content {
    zones: Range<u32>,
    areas: Range<u32>,
    border: Range<u32>,
}

/// Zones, declared areas and the border of a chart, cell by cell.
#[derive(Debug, Clone, Default)]
pub(crate) struct Index {
    low: DVec2,
    high: DVec2,
    per_metre: DVec2,
    columns: usize,
    rows: usize,
    /// Row by row from below: plain with rank, or number of a content.
    cells: Vec<u32>,
    contents: Vec<Content>,
    row_contents: Vec<Content>,
    parts: Vec<Part>,
    edges: Vec<Edge>,
    /// Zone by rank: from the lowest capacity up, by their order where equal.
    zone_of: Vec<u32>,
}

/// An edge of a polygon, or that a polygon covers a cell whole, on its way into the index.
#[derive(Clone, Copy)]
struct Found {
    cell: u32,
    id: u32,
    /// Number of the edge among those of its list; [`WHOLE`]: none, the polygon covers the cell.
    edge: u32,
}

const WHOLE: u32 = u32::MAX;

/// What was found in each cell or row, cell by cell, in the order in which it was found.
struct Sorted {
    found: Vec<Found>,
    /// The edges that `found` counts.
    edges: Vec<Edge>,
    next: usize,
}

impl Sorted {
    /// By counting: there are far more entries than cells, and their order within a cell is to stay.
    fn new(found: &[Found], edges: Vec<Edge>, cells: usize) -> Self {
        let mut start = vec![0_usize; cells + 1];
        for f in found {
            start[f.cell as usize + 1] += 1;
        }
        for i in 0..cells {
            start[i + 1] += start[i];
        }
        let mut sorted = vec![Found { cell: 0, id: 0, edge: WHOLE }; found.len()];
        for f in found {
            let at = &mut start[f.cell as usize];
            sorted[*at] = *f;
            *at += 1;
        }
        Self { found: sorted, edges, next: 0 }
    }

    /// The next entry, if it is of that cell (and polygon).
    fn next_in(&mut self, cell: u32, id: Option<u32>) -> Option<Found> {
        let f = *self.found.get(self.next).filter(|f| f.cell == cell && id.is_none_or(|id| f.id == id))?;
        self.next += 1;
        Some(f)
    }
}

impl Index {
    pub(crate) fn new(zones: &[Zone], not_permitted: &[Vec<DVec2>], border: &[Edge]) -> Self {
        let (low, high) = zones
            .iter()
            .map(|z| bounds(&z.outline))
            .fold((DVec2::INFINITY, DVec2::NEG_INFINITY), |(l, h), (zl, zh)| (l.min(zl), h.max(zh)));
        // Nothing is inside of what has no bounds.
        let finite = zones.iter().flat_map(|z| &z.outline).all(|p| p.is_finite());
        if zones.is_empty() || !finite || !(low.is_finite() && high.is_finite()) {
            return Self { low: DVec2::INFINITY, high: DVec2::NEG_INFINITY, ..Self::default() };
        }
        let size = (high - low).max(DVec2::splat(CELL));
        let count = |extent: f64| ((extent / CELL).ceil() as usize).clamp(1, MOST);
        let (columns, rows) = (count(size.x), count(size.y));
        let per_metre = DVec2::new(columns as f64, rows as f64) / size;
        let mut rank: Vec<u32> = (0..zones.len() as u32).collect();
        rank.sort_by(|a, b| {
            zones[*a as usize].capacity.value.total_cmp(&zones[*b as usize].capacity.value).then(a.cmp(b))
        });
        let mut index = Self { low, high, per_metre, columns, rows, zone_of: rank, ..Self::default() };
        index.fill(zones, not_permitted, border);
        index
    }

    fn fill(&mut self, zones: &[Zone], not_permitted: &[Vec<DVec2>], border: &[Edge]) {
        let zones: Vec<&[DVec2]> = self.zone_of.iter().map(|&z| zones[z as usize].outline.as_slice()).collect();
        let areas: Vec<&[DVec2]> = not_permitted.iter().map(Vec::as_slice).collect();
        let count = self.columns * self.rows;
        let [mut zone_cells, mut zone_rows] = self.polygons(&zones);
        let [mut area_cells, mut area_rows] = self.polygons(&areas);
        let mut crossed = Vec::new();
        for (edge, i) in border.iter().zip(0..) {
            self.pass(*edge, |cell| crossed.push(Found { cell, id: 0, edge: i }));
        }
        let mut border_cells = Sorted::new(&crossed, border.to_vec(), count);
        self.cells.reserve(count);
        for cell in 0..(self.columns * self.rows) as u32 {
            let content = Content {
                zones: self.take(&mut zone_cells, cell),
                areas: self.take(&mut area_cells, cell),
                border: self.take_border(&mut border_cells, cell),
            };
            let parts = &self.parts[content.zones.start as usize..content.zones.end as usize];
            let only_whole = content.areas.is_empty() && content.border.is_empty() && parts.iter().all(|p| p.whole);
            let code = match parts.first() {
                Some(lowest) if only_whole => PLAIN | lowest.id,
                _ => {
                    self.contents.push(content);
                    self.contents.len() as u32 - 1
                }
            };
            self.cells.push(code);
        }
        for row in 0..self.rows as u32 {
            let zones = self.take(&mut zone_rows, row);
            let areas = self.take(&mut area_rows, row);
            self.row_contents.push(Content { zones, areas, border: 0..0 });
        }
    }

    /// The polygons cell by cell: edges that pass a cell, and whether they cover it whole; and their
    /// edges row by row.
    fn polygons(&self, polygons: &[&[DVec2]]) -> [Sorted; 2] {
        let (mut in_cells, mut in_rows, mut all) = (Vec::new(), Vec::new(), Vec::new());
        let mut passed = vec![u32::MAX; self.columns * self.rows];
        let mut crossings: Vec<Vec<f64>> = vec![Vec::new(); self.rows];
        for (outline, id) in polygons.iter().zip(0..) {
            for edge in edges(outline) {
                let number = all.len() as u32;
                all.push(edge);
                self.pass(edge, |cell| {
                    passed[cell as usize] = id;
                    in_cells.push(Found { cell, id, edge: number });
                });
                let (a, b) = edge;
                let rows = self.row(a.y.min(b.y) - MARGIN)..=self.row(a.y.max(b.y) + MARGIN);
                for (row, crossed) in rows.clone().zip(&mut crossings[rows]) {
                    in_rows.push(Found { cell: row as u32, id, edge: number });
                    // Where it crosses the middle of the row.
                    let y = self.low.y + (row as f64 + 0.5) / self.per_metre.y;
                    if (a.y > y) != (b.y > y) {
                        crossed.push(a.x + (y - a.y) / (b.y - a.y) * (b.x - a.x));
                    }
                }
            }
            for (row, crossed) in crossings.iter_mut().enumerate() {
                self.covered(crossed, |column| {
                    let cell = row * self.columns + column;
                    if passed[cell] != id {
                        in_cells.push(Found { cell: cell as u32, id, edge: WHOLE });
                    }
                });
                crossed.clear();
            }
        }
        let cells = Sorted::new(&in_cells, all.clone(), self.columns * self.rows);
        [cells, Sorted::new(&in_rows, all, self.rows)]
    }

    /// Columns whose cell has its middle between two crossings of a row's middle.
    fn covered(&self, crossings: &mut [f64], mut say: impl FnMut(usize)) {
        crossings.sort_by(f64::total_cmp);
        for pair in crossings.chunks_exact(2) {
            let first = ((pair[0] - self.low.x) * self.per_metre.x - 0.5).ceil().max(0.0) as usize;
            let last = ((pair[1] - self.low.x) * self.per_metre.x - 0.5).floor().min(self.columns as f64 - 1.0);
            if last >= 0.0 {
                (first..=last as usize).for_each(&mut say);
            }
        }
    }

    /// Cells that an edge passes, [`MARGIN`] included.
    fn pass(&self, (a, b): Edge, mut say: impl FnMut(u32)) {
        let (below, above) = if a.y <= b.y { (a, b) } else { (b, a) };
        for row in self.row(below.y - MARGIN)..=self.row(above.y + MARGIN) {
            // The part of the edge in this row; the outermost rows take all beyond them.
            let height = |line: usize| self.low.y + line as f64 / self.per_metre.y;
            let from = if row == 0 { below.y } else { (height(row) - MARGIN).max(below.y) };
            let to = if row + 1 == self.rows { above.y } else { (height(row + 1) + MARGIN).min(above.y) };
            let x = |y: f64| below.x + (y - below.y) / (above.y - below.y) * (above.x - below.x);
            let (p, q) = if above.y > below.y { (x(from), x(to)) } else { (below.x, above.x) };
            for column in self.column(p.min(q) - MARGIN)..=self.column(p.max(q) + MARGIN) {
                say((row * self.columns + column) as u32);
            }
        }
    }

    fn take(&mut self, from: &mut Sorted, cell: u32) -> Range<u32> {
        let start = self.parts.len() as u32;
        while let Some(first) = from.next_in(cell, None) {
            let edges = self.edges.len() as u32;
            let (mut whole, mut next) = (false, Some(first));
            while let Some(f) = next {
                whole |= f.edge == WHOLE;
                self.edges.extend(from.edges.get(f.edge as usize));
                next = from.next_in(cell, Some(first.id));
            }
            self.parts.push(Part { id: first.id, whole, edges: edges..self.edges.len() as u32 });
        }
        start..self.parts.len() as u32
    }

    fn take_border(&mut self, from: &mut Sorted, cell: u32) -> Range<u32> {
        let start = self.edges.len() as u32;
        while let Some(f) = from.next_in(cell, None) {
            self.edges.extend(from.edges.get(f.edge as usize));
        }
        start..self.edges.len() as u32
    }

    fn column(&self, x: f64) -> usize {
        (((x - self.low.x) * self.per_metre.x).max(0.0) as usize).min(self.columns - 1)
    }

    fn row(&self, y: f64) -> usize {
        (((y - self.low.y) * self.per_metre.y).max(0.0) as usize).min(self.rows - 1)
    }

    fn parts(&self, range: &Range<u32>) -> &[Part] {
        &self.parts[range.start as usize..range.end as usize]
    }

    fn edges(&self, range: &Range<u32>) -> &[Edge] {
        &self.edges[range.start as usize..range.end as usize]
    }

    /// True if the box keeps within the bounds of all zones, and anything at all is inside of them.
    pub(crate) fn bounds_hold(&self, window: &Window) -> bool {
        let (low, high) = (self.low - ON_EDGE, self.high + ON_EDGE);
        window.low.x >= low.x && window.low.y >= low.y && window.high.x <= high.x && window.high.y <= high.y
    }

    /// Zone of the lowest capacity in a box that is covered whole; `None` if some of it is not
    /// permitted.
    pub(crate) fn lowest_covered(&self, window: &Window) -> Option<usize> {
        if !self.bounds_hold(window) {
            return None;
        }
        let lowest = self.lowest(window, true)?;
        let centre = window.centre();
        let code = self.cells[self.row(centre.y) * self.columns + self.column(centre.x)];
        let covered = code & PLAIN != 0 || {
            let parts = self.parts(&self.contents[code as usize].zones);
            parts.iter().any(|p| p.whole) || parts.iter().any(|p| self.zone_contains(p.id, centre))
        };
        covered.then_some(lowest)
    }

    /// Zone of the lowest capacity that the box touches; `None` if it touches none, or an area
    /// declared not permitted.
    pub(crate) fn lowest_touched(&self, window: &Window) -> Option<usize> {
        if self.cells.is_empty() { None } else { self.lowest(window, false) }
    }

    fn lowest(&self, window: &Window, uncut: bool) -> Option<usize> {
        let (from, to) = (window.low - ON_EDGE, window.high + ON_EDGE);
        let columns = self.column(from.x)..self.column(to.x) + 1;
        let rows = self.row(from.y)..self.row(to.y) + 1;
        let mut best = u32::MAX;
        for row in rows {
            for code in &self.cells[row * self.columns..][columns.clone()] {
                if code & PLAIN != 0 {
                    best = best.min(code & !PLAIN);
                    continue;
                }
                let content = &self.contents[*code as usize];
                if uncut && self.edges(&content.border).iter().any(|e| window.cut_by(*e)) {
                    return None;
                }
                let touches = |p: &Part| p.whole || self.edges(&p.edges).iter().any(|e| window.touches(*e));
                if self.parts(&content.areas).iter().any(touches) {
                    return None;
                }
                // From the lowest up: the first that is touched is the cell's lowest.
                let lower = self.parts(&content.zones).iter().take_while(|p| p.id < best).find(|p| touches(p));
                best = lower.map_or(best, |p| p.id);
            }
        }
        // What holds the low corner holds some of the box, even where none of its edges comes near.
        let code = self.cells[self.row(window.low.y) * self.columns + self.column(window.low.x)];
        if code & PLAIN == 0 {
            let content = &self.contents[code as usize];
            if self.parts(&content.areas).iter().any(|p| self.area_contains(p.id, window.low)) {
                return None;
            }
            let lower = self.parts(&content.zones).iter().take_while(|p| p.id < best);
            let holding = lower.filter(|p| !p.whole).find(|p| self.zone_contains(p.id, window.low));
            best = holding.map_or(best, |p| p.id);
        }
        self.zone_of.get(best as usize).map(|z| *z as usize)
    }

    /// What lies in the row at the height `y`; `None` only where nothing is in the index at all.
    fn row_content(&self, y: f64) -> Option<&Content> {
        if self.rows == 0 { None } else { self.row_contents.get(self.row(y)) }
    }

    fn zone_contains(&self, rank: u32, p: DVec2) -> bool {
        self.row_content(p.y).is_some_and(|row| self.row_contains(self.parts(&row.zones), rank, p))
    }

    fn area_contains(&self, area: u32, p: DVec2) -> bool {
        self.row_content(p.y).is_some_and(|row| self.row_contains(self.parts(&row.areas), area, p))
    }

    fn row_contains(&self, row: &[Part], id: u32, p: DVec2) -> bool {
        let Ok(at) = row.binary_search_by_key(&id, |part| part.id) else { return false };
        within_edges(self.edges(&row[at].edges).iter().copied(), p)
    }

    /// True if any zone holds the point.
    pub(crate) fn any_contains(&self, p: DVec2) -> bool {
        let Some(row) = self.row_content(p.y) else { return false };
        self.parts(&row.zones).iter().any(|part| within_edges(self.edges(&part.edges).iter().copied(), p))
    }

    /// Edges of zones as high as `y`, and some near that height.
    pub(crate) fn edges_at(&self, y: f64) -> impl Iterator<Item = Edge> + '_ {
        self.row_content(y).into_iter().flat_map(|r| self.parts(&r.zones)).flat_map(|p| self.edges(&p.edges)).copied()
    }
}
