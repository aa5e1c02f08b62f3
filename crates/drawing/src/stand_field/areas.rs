//! The field's cells as areas with an outline each.
#![allow(clippy::cast_possible_wrap, reason = "rows and columns of a picture")]

use super::frame::Frame;
use super::looks::{self, FieldLook};
use crate::labels::{Placer, Rect};
use crate::svg::{Px, Svg};
use planning::FieldScene;
use std::collections::{BTreeMap, BTreeSet};

/// Cells in the picture, and what each is.
pub(super) struct Areas {
    cells: Vec<Option<FieldLook>>,
    side: usize,
    /// First and last column, first and last row in the picture.
    columns: (usize, usize),
    rows: (usize, usize),
    /// Corner of the first cell, m, and side of a cell, m.
    corner: (f64, f64),
    cell: f64,
}

/// A corner of the grid of cells: column, row.
type Corner = (usize, usize);

impl Areas {
    pub(super) fn of(field: &FieldScene, frame: &Frame) -> Self {
        let (side, cell) = (field.side, field.cell_m);
        let half = cell * side as f64 / 2.0;
        let corner = (field.centre.0 - half, field.centre.1 - half);
        let (low, high) = (frame.south_west, frame.at((frame.plot.right(), frame.plot.y)));
        // Every cell that reaches into the picture; drawn, it is cut at the rim.
        let range = |low: f64, high: f64, corner: f64| {
            let first = ((low - corner) / cell + 1e-9).floor().clamp(0.0, side as f64) as usize;
            let last = ((high - corner) / cell - 1e-9).ceil().clamp(first as f64, side as f64) as usize;
            (first, last)
        };
        Self {
            cells: super::cells(field),
            side,
            columns: range(low.0, high.0, corner.0),
            rows: range(low.1, high.1, corner.1),
            corner,
            cell,
        }
    }

    fn look(&self, column: usize, row: usize) -> Option<FieldLook> {
        let inside = (self.columns.0..self.columns.1).contains(&column) && (self.rows.0..self.rows.1).contains(&row);
        if inside { self.cells.get(row * self.side + column).copied().flatten() } else { None }
    }

    fn place(&self, corner: (f64, f64)) -> (f64, f64) {
        (self.corner.0 + corner.0 * self.cell, self.corner.1 + corner.1 * self.cell)
    }

    /// What is in the picture.
    fn looks(&self) -> BTreeSet<FieldLook> {
        let rows = self.rows.0..self.rows.1;
        rows.flat_map(|row| (self.columns.0..self.columns.1).filter_map(move |c| self.look(c, row))).collect()
    }

    pub(super) fn draw(&self, svg: &mut Svg, frame: &Frame) {
        svg.open("areas");
        // Ground where a stand would do comes last, so that its edge is whole.
        for look in self.looks().into_iter().rev() {
            // Sides run along the rim or square to it: to cut them is to hold every corner inside.
            let px = |c: &Corner| frame.plot.nearest(frame.px(self.place((c.0 as f64, c.1 as f64))));
            let rings: Vec<Vec<Px>> = self.outlines(look).iter().map(|ring| ring.iter().map(px).collect()).collect();
            looks::draw(svg, &rings, look);
        }
        svg.close();
    }

    /// Rings around all cells of a kind, corners only (even-odd rule).
    fn outlines(&self, look: FieldLook) -> Vec<Vec<Corner>> {
        // Edges between a cell of the kind and one that is none, with the kind to the left.
        let mut edges: BTreeMap<Corner, Vec<Corner>> = BTreeMap::new();
        let is = |c: usize, r: usize| self.look(c, r) == Some(look);
        let before = |v: usize| v.wrapping_sub(1);
        for r in self.rows.0..self.rows.1 {
            for c in (self.columns.0..self.columns.1).filter(|c| is(*c, r)) {
                let mut put = |free: bool, from: Corner, to: Corner| {
                    if free {
                        edges.entry(from).or_default().push(to);
                    }
                };
                put(!is(c, before(r)), (c, r), (c + 1, r));
                put(!is(c + 1, r), (c + 1, r), (c + 1, r + 1));
                put(!is(c, r + 1), (c + 1, r + 1), (c, r + 1));
                put(!is(before(c), r), (c, r + 1), (c, r));
            }
        }
        let mut rings = Vec::new();
        while let Some(start) = edges.keys().next().copied() {
            let mut ring = vec![start];
            let mut at = start;
            while let Some(next) = take(&mut edges, at) {
                if next == start {
                    break;
                }
                ring.push(next);
                at = next;
            }
            rings.push(corners_of(&ring));
        }
        rings
    }

    /// For each kind in the picture, the largest first, the middle of its widest room that no text takes, px.
    pub(super) fn middles(&self, frame: &Frame, placer: &Placer) -> Vec<(FieldLook, Px)> {
        let mut out: Vec<(usize, FieldLook, Px)> = Vec::new();
        for look in self.looks() {
            let cells: Vec<(usize, usize)> = (self.rows.0..self.rows.1)
                .flat_map(|r| (self.columns.0..self.columns.1).map(move |c| (c, r)))
                .filter(|(c, r)| self.look(*c, *r) == Some(look))
                .collect();
            let middle = |(c, r): (usize, usize)| frame.px(self.place((c as f64 + 0.5, r as f64 + 0.5)));
            // How far it goes on in the four directions, at most as far as a label needs.
            let most = (40.0 / (self.cell * frame.scale)).ceil().clamp(1.0, 60.0) as usize;
            let room = |(c, r): (usize, usize)| {
                let free = |step: &dyn Fn(usize) -> (usize, usize)| {
                    (1..=most)
                        .take_while(|i| {
                            let (c, r) = step(*i);
                            self.look(c, r) == Some(look)
                        })
                        .count()
                };
                let across = free(&|i| (c + i, r)).min(free(&|i| (c.wrapping_sub(i), r)));
                let up = free(&|i| (c, r + i)).min(free(&|i| (c, r.wrapping_sub(i))));
                across.min(most) + 2 * up.min(most / 2)
            };
            let clear = |at: Px| placer.crowding(Rect::around(at, 84.0, 20.0)) == 0.0;
            let best = cells.iter().filter(|c| clear(middle(**c))).max_by_key(|c| room(**c));
            if let Some(best) = best.filter(|c| room(**c) * 2 >= most) {
                out.push((cells.len(), look, middle(*best)));
            }
        }
        // What a stand may use is named before what it may not.
        out.sort_by_key(|(size, look, _)| (!look.passes(), std::cmp::Reverse(*size)));
        out.into_iter().map(|(_, look, at)| (look, at)).collect()
    }
}

/// The next corner from one, used up.
fn take(edges: &mut BTreeMap<Corner, Vec<Corner>>, at: Corner) -> Option<Corner> {
    let ends = edges.get_mut(&at)?;
    let next = ends.pop();
    if ends.is_empty() {
        edges.remove(&at);
    }
    next
}

/// A ring without the corners that lie on a straight side.
fn corners_of(ring: &[Corner]) -> Vec<Corner> {
    let n = ring.len();
    let straight = |a: Corner, b: Corner, c: Corner| (a.0 == b.0 && b.0 == c.0) || (a.1 == b.1 && b.1 == c.1);
    let turns = (0..n).filter(|i| !straight(ring[(i + n - 1) % n], ring[*i], ring[(i + 1) % n]));
    turns.map(|i| ring[i]).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn areas(rows: [&str; 4]) -> Areas {
        let cells = rows.iter().rev().flat_map(|row| row.chars()).map(|c| match c {
            'g' => Some(FieldLook::Go),
            'c' => Some(FieldLook::Condition),
            _ => None,
        });
        let cells: Vec<_> = cells.collect();
        Areas { side: 4, columns: (0, 4), rows: (0, 4), corner: (0.0, 0.0), cell: 1.0, cells }
    }

    /// Twice the area inside the rings of a kind, by signed sums: holes count off.
    fn doubled(areas: &Areas, look: FieldLook) -> i64 {
        let i = |v: usize| v as i64;
        areas
            .outlines(look)
            .iter()
            .map(|ring| {
                (0..ring.len())
                    .map(|k| {
                        let (a, b) = (ring[k], ring[(k + 1) % ring.len()]);
                        i(a.0) * i(b.1) - i(b.0) * i(a.1)
                    })
                    .sum::<i64>()
            })
            .sum()
    }

    #[test]
    fn outlines_hold_as_much_as_their_cells() {
        for rows in [
            ["gggg", "g..g", "g.cg", "gggg"],
            ["g.g.", ".g.g", "g.g.", ".gc."],
            ["....", ".gg.", ".gg.", "...."],
            ["gggg", "gggg", "gccg", "gggg"],
        ] {
            let areas = areas(rows);
            for (look, sign) in [(FieldLook::Go, 'g'), (FieldLook::Condition, 'c')] {
                let cells = rows.iter().flat_map(|r| r.chars()).filter(|c| *c == sign).count();
                assert_eq!(doubled(&areas, look), 2 * cells as i64, "{rows:?}");
            }
        }
        // A whole field has four corners.
        assert_eq!(areas(["....", ".gg.", ".gg.", "...."]).outlines(FieldLook::Go)[0].len(), 4);
    }
}
