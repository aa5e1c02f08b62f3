//! Ground: shade, slope classes, contours with their levels, and where no ground is known.

use super::Sheet;
use super::furniture::round_step;
use super::looks::SiteMark;
use super::map::Map;
use crate::key::{Row, Swatch};
use crate::style::Ink;
use crate::svg::{Pen, Px};
use crate::words::{Words, length};
use site::{Grid, Site, Sun, contours, hillshade, round_levels, slope_classes, slopes};
use wording::ui;

/// Slopes above which ground is hatched, rise over run.
pub(crate) const LIMITS: [f32; 2] = [0.05, 0.10];
/// Most cells of the raster.
const MOST_CELLS: usize = 90_000;
/// Contours of fewer pixels are left out: they are noise at this scale.
const SHORTEST: f64 = 14.0;
/// Light that is called level: that of flat ground, and a little about it.
const LEVEL: f32 = 0.035;

/// The raster that the ground is drawn in.
struct Raster {
    grid: Grid,
    /// Edge of a cell, px.
    px: f64,
}

impl Raster {
    fn of(site: &Site, map: &Map) -> Option<Self> {
        let mut px: f64 = if map.plot.w < 600.0 { 3.0 } else { 4.0 };
        while (map.plot.w / px) * (map.plot.h / px) > MOST_CELLS as f64 {
            px += 1.0;
        }
        let half = px / 2.0;
        let (cols, rows) = ((map.plot.w / px).floor(), (map.plot.h / px).floor());
        let first = map.at((map.plot.x + half, map.plot.y + half));
        let cell = px / map.scale;
        // A tenth of a cell more, so that rounding loses none of them.
        let last = first + geometry::DVec2::new(cols - 0.9, 0.9 - rows) * cell;
        let window = (geometry::DVec2::new(first.x, last.y), geometry::DVec2::new(last.x, first.y));
        let grid = Grid::from_ground(&site.ground, Some(window), cell, MOST_CELLS * 2)?;
        Some(Self { grid, px })
    }
    /// Middle of a cell, px.
    fn centre(&self, map: &Map, row: usize, col: usize) -> Px {
        (map.plot.x + (col as f64 + 0.5) * self.px, map.plot.y + (row as f64 + 0.5) * self.px)
    }
    /// Stretches of a row of cells that hold: x, y, length, px.
    fn runs(&self, map: &Map, holds: impl Fn(usize) -> bool) -> Vec<(f64, f64, f64)> {
        let mut out = Vec::new();
        for row in 0..self.grid.rows {
            let mut from = None;
            for col in 0..=self.grid.cols {
                let here = col < self.grid.cols && holds(row * self.grid.cols + col);
                match (here, from) {
                    (true, None) => from = Some(col),
                    (false, Some(first)) => {
                        let (x, y) = self.centre(map, row, first);
                        out.push((x - self.px / 2.0, y, (col - first) as f64 * self.px));
                        from = None;
                    }
                    _ => {}
                }
            }
        }
        out
    }
    /// Lines of a family `steps` cells apart inside the cells that hold: level ones (`rise` 0), or
    /// ones that rise `rise` cells for each to the right.
    fn hatching(&self, map: &Map, rise: usize, steps: usize, holds: impl Fn(usize) -> bool) -> Vec<(Px, Px)> {
        let (rows, cols) = (self.grid.rows, self.grid.cols);
        let mut out = Vec::new();
        for k in (steps / 2..rows + rise * cols).step_by(steps) {
            let mut from: Option<(usize, usize)> = None;
            // Runs through whole cells of a rising line: `rise` rows for each column.
            let mut last = (0, 0);
            for i in 0..=cols * rise.max(1) {
                let (row, col) = (k.checked_sub(i * rise.min(1)), i / rise.max(1));
                let here = row.is_some_and(|row| row < rows && col < cols && holds(row * cols + col));
                let row = row.unwrap_or(0);
                match (here, from) {
                    (true, None) => from = Some((row, i)),
                    (false, Some(first)) => {
                        let x = |i: usize| map.plot.x + (i as f64 + 0.5) / rise.max(1) as f64 * self.px;
                        let y = |row: usize| self.centre(map, row, 0).1;
                        let half = self.px / 2.0;
                        let (a, b): ((usize, usize), (usize, usize)) = (first, last);
                        let across = half / rise.max(1) as f64;
                        let up = if rise == 0 { 0.0 } else { half };
                        out.push(((x(a.1) - across, y(a.0) + up), (x(b.1) + across, y(b.0) - up)));
                        from = None;
                    }
                    _ => {}
                }
                if here {
                    last = (row, i);
                }
            }
        }
        out
    }
}

pub(crate) fn draw(sheet: &mut Sheet, map: &Map, site: &Site, words: &Words<'_>) {
    if site.ground.surfaces.is_empty() {
        sheet.notes.push(Row::new(Swatch::Strong, words.say(ui::SITE_NO_GROUND)));
    }
    let Some(raster) = Raster::of(site, map) else { return };
    let known = raster.grid.heights.iter().filter(|z| z.is_finite()).count();
    if known > 0 {
        shade(sheet, map, &raster);
        steepness(sheet, map, &raster);
    }
    if known < raster.grid.heights.len() {
        sheet.svg.open("no-ground");
        let holes = raster.hatching(map, 0, if raster.px < 4.0 { 3 } else { 2 }, |i| raster.grid.heights[i].is_nan());
        sheet.svg.lines(&holes, Pen::new(Ink::Soft, 0.6));
        sheet.svg.close();
        sheet.marks.insert(SiteMark::NoGround);
    }
    if known > 0 {
        levels(sheet, map, &raster, words);
        sheet
            .notes
            .push(Row::new(Swatch::None, words.say(ui::SITE_READ_EVERY.with("cell", length(raster.grid.cell.x)))));
    }
}

/// Five shades about that of level ground: black laid on what is turned away, white on what is
/// turned to the light. Each sheet shows one of the two.
fn shade(sheet: &mut Sheet, map: &Map, raster: &Raster) {
    let light = hillshade(&raster.grid, Sun::default());
    let flat = libm::sinf(Sun::default().altitude as f32);
    let bands: [(Ink, f64, f32, f32); 5] = [
        (Ink::Shade, 0.07, flat - 0.10, flat - LEVEL),
        (Ink::Shade, 0.15, flat - 0.25, flat - 0.10),
        (Ink::Shade, 0.25, -1.0, flat - 0.25),
        (Ink::Light, 0.06, flat + LEVEL, flat + 0.12),
        (Ink::Light, 0.13, flat + 0.12, 2.0),
    ];
    sheet.svg.open("shade");
    for (ink, opacity, low, high) in bands {
        let runs = raster.runs(map, |i| light[i] >= low && light[i] < high);
        sheet.svg.runs(&runs, raster.px, ink, opacity);
    }
    sheet.svg.close();
}

fn steepness(sheet: &mut Sheet, map: &Map, raster: &Raster) {
    let classes = slope_classes(&slopes(&raster.grid), &LIMITS);
    sheet.svg.open("slopes");
    let wide = if raster.px < 4.0 { 7 } else { 6 };
    for (class, steps, mark) in [(1, wide * 2, SiteMark::Middling), (2, wide, SiteMark::Steep)] {
        // Every other line of the dense family runs on in the sparse one.
        let mut lines = raster.hatching(map, 2, steps, |i| classes[i] == Some(class));
        // Specks of one cell are noise, but for the steepest.
        if class == 1 {
            lines.retain(|(a, b)| (a.1 - b.1).abs() > 1.5 * raster.px);
        }
        if !lines.is_empty() {
            sheet.svg.lines(&lines, Pen::new(Ink::Soft, 0.55));
        }
        if classes.contains(&Some(class)) {
            sheet.marks.insert(mark);
        }
    }
    sheet.svg.close();
}

fn levels(sheet: &mut Sheet, map: &Map, raster: &Raster, words: &Words<'_>) {
    let Some((low, high)) = raster.grid.height_range() else { return };
    let most = if map.plot.w < 600.0 { 8.0 } else { 12.0 };
    // No finer than what surveys tell apart.
    let unit = words.metres_per_unit;
    let step = round_step(((high - low) / most / unit).max(0.1)) * unit;
    let levels = round_levels(low, high, step, 40);
    let mut drawn = false;
    sheet.svg.open("contours");
    for contour in contours(&raster.grid, &levels) {
        let mut longest: (f64, Vec<Px>) = (0.0, Vec::new());
        for line in contour.lines {
            let mut points: Vec<Px> = line.points.iter().map(|p| map.px(*p)).collect();
            if line.closed {
                points.push(points[0]);
            }
            let points = thinned(&points);
            let size = points.windows(2).map(|w| libm::hypot(w[1].0 - w[0].0, w[1].1 - w[0].1)).sum::<f64>();
            if size < SHORTEST {
                continue;
            }
            sheet.svg.polyline(&points, Pen::new(Ink::Soft, 0.9));
            drawn = true;
            if size > longest.0 {
                longest = (size, points);
            }
        }
        if longest.0 > 60.0 {
            let share = |share: f64| longest.1.get((longest.1.len() as f64 * share) as usize).copied();
            let places = [0.5, 0.3, 0.7, 0.15, 0.85, 0.4, 0.6].into_iter().filter_map(share).collect();
            sheet.labels.figure(places, words.length(contour.level));
        }
    }
    sheet.svg.close();
    if drawn {
        sheet.notes.push(Row::new(Swatch::Contour, words.say(ui::SITE_CONTOURS.with("step", length(step)))));
    }
}

/// A line without points nearer than a pixel and a half to the last; the ends stay.
fn thinned(points: &[Px]) -> Vec<Px> {
    let mut out: Vec<Px> = Vec::with_capacity(points.len() / 2 + 2);
    for (i, p) in points.iter().enumerate() {
        let near = out.last().is_some_and(|q| libm::hypot(p.0 - q.0, p.1 - q.1) < 1.5);
        if !near || i + 1 == points.len() {
            out.push(*p);
        }
    }
    out
}
