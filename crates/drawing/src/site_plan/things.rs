//! Things that stand, by kind, with name and top, and their openings.

use super::Sheet;
use super::labels::Need;
use super::looks::{self, SiteMark};
use super::map::{Map, sound};
use super::rules::shape;
use crate::style::Ink;
use crate::svg::{Pen, Px};
use crate::words::{Words, length};
use site::{Body, Columns, Site, Thing};
use wording::ui;

/// Things smaller than this are covered by no name, px²: one could not tell whose name it is.
const SMALL: f64 = 2500.0;

/// Surveyed things smaller than this have a frame, px.
const FRAMED: f64 = 48.0;

pub(crate) fn draw(sheet: &mut Sheet, map: &Map, site: &Site, words: &Words<'_>) {
    sheet.svg.open("things");
    for thing in &site.surroundings.things {
        let mark = SiteMark::Thing(thing.kind);
        let placed = match &thing.body {
            Body::Upright { shape: outline, .. } => shape(sheet, map, outline, mark),
            Body::Columns(columns) => self::columns(sheet, map, thing, columns),
        };
        let Some((at, area)) = placed else { continue };
        if area < SMALL {
            sheet.labels.mark(at, area.max(64.0).sqrt());
        }
        for opening in thing.openings.iter().filter(|o| sound(o.from) && sound(o.to)) {
            looks::opening(&mut sheet.svg, map.px(opening.from), map.px(opening.to));
            sheet.marks.insert(SiteMark::Opening);
        }
        let facts = match thing.top().filter(|top| top.is_finite()) {
            None => vec![words.say(ui::SITE_HEIGHT_NOT_KNOWN)],
            Some(top) => {
                let middle = thing.bounds().map(|(low, high)| (low + high) * 0.5);
                let ground = middle.and_then(|at| site.ground.height(at)).map(|g| g.0);
                let level = words.say(ui::SITE_TOP.with("level", length(top)));
                let roomy = map.plot.w >= 460.0;
                let above =
                    ground.filter(|_| roomy).map(|z| words.say(ui::SITE_ABOVE_GROUND.with("height", length(top - z))));
                std::iter::once(level).chain(above).collect()
            }
        };
        sheet.labels.add(at, &thing.name, &facts, Need::Usual, area, Ink::Main);
    }
    sheet.svg.close();
}

/// Columns of a survey as runs of their rows; one column is often less than a pixel.
fn columns(sheet: &mut Sheet, map: &Map, thing: &Thing, columns: &Columns) -> Option<(Px, f64)> {
    let (low, high) = thing.bounds().filter(|(low, high)| sound(*low) && sound(*high))?;
    let edge = columns.cell * map.scale;
    let mut runs = Vec::new();
    for row in 0..columns.rows {
        let stands = |col: usize| columns.tops.get(row * columns.cols + col).is_some_and(|top| top.is_finite());
        let mut from = None;
        for col in 0..=columns.cols {
            match (col < columns.cols && stands(col), from) {
                (true, None) => from = Some(col),
                (false, Some(first)) => {
                    let at = columns.south_west + geometry::DVec2::new(first as f64, row as f64 + 0.5) * columns.cell;
                    let (x, y) = map.px(at);
                    runs.push((x, y, (col - first) as f64 * edge));
                    from = None;
                }
                _ => {}
            }
        }
    }
    let (a, b) = (map.px(low), map.px(high));
    sheet.svg.runs(&runs, edge.max(0.8), Ink::Body, 1.0);
    // Around a large one the frame would stand in other things' way, and its columns show it.
    if (b.0 - a.0).max(a.1 - b.1) < FRAMED {
        sheet.svg.polygon(&[a, (b.0, a.1), b, (a.0, b.1)], None, Some(Pen::dashed(Ink::Main, 1.2, "4 3")));
    }
    sheet.marks.insert(SiteMark::Thing(thing.kind));
    Some(((f64::midpoint(a.0, b.0), f64::midpoint(a.1, b.1)), (b.0 - a.0) * (a.1 - b.1)))
}
