//! The sheet: scale, dimension lines in rows and columns of their own, and the key.
//!
//! Each dimension has a row below the machine or a column beside it that no other one uses, so that no
//! two texts can meet; a letter leads to its name in the key.

use super::{Part, ground, part};
use crate::key::{Row, Swatch};
use crate::labels::{Rect, line_height, text_width};
use crate::marks::dimension;
use crate::style::{Ink, Style};
use crate::svg::{Anchor, Pen, Px, Svg, Type};
use crate::words::Words;
use evidence::{Message, TextId};
use machine::Machine;
use wording::{Wording, ui};

/// Size of dimension text, px.
const SIZE: f64 = 13.0;
/// Height of a row of a dimension below the machine, px.
const ROW: f64 = 26.0;
/// Least room for the machine itself, px.
const LEAST: f64 = 220.0;
/// From the machine to the first row or column, px.
const OFF: f64 = 22.0;

/// What a dimension runs along.
pub(crate) enum Along {
    /// From x to x, starting at heights z: below the machine.
    Level { from: (f64, f64), to: (f64, f64) },
    /// From the ground up to z at x: left of the machine.
    UpLeft { at: (f64, f64) },
    /// The same, right of the machine.
    UpRight { at: (f64, f64) },
}

/// A dimension: what it is, and where.
pub(crate) struct Dimension {
    pub(crate) name: TextId,
    pub(crate) along: Along,
}

impl Dimension {
    fn metres(&self) -> f64 {
        match self.along {
            Along::Level { from, to } => (to.0 - from.0).abs(),
            Along::UpLeft { at } | Along::UpRight { at } => at.1,
        }
    }
}

/// A view of the machine: parts in the order of drawing, dimensions, notes.
pub(crate) struct View {
    pub(crate) title: TextId,
    pub(crate) parts: Vec<Part>,
    pub(crate) dimensions: Vec<Dimension>,
    pub(crate) notes: Vec<Message>,
}

/// Metres to pixels.
pub(crate) struct Sheet {
    pub(crate) scale: f64,
    origin: Px,
}

impl Sheet {
    pub(crate) fn px(&self, p: (f64, f64)) -> Px {
        (self.origin.0 + p.0 * self.scale, self.origin.1 - p.1 * self.scale)
    }
    pub(crate) fn all(&self, points: &[(f64, f64)]) -> Vec<Px> {
        points.iter().map(|p| self.px(*p)).collect()
    }

    /// The whole drawing.
    pub(crate) fn draw(machine: &Machine, view: &View, wording: Wording, style: &Style) -> String {
        let words = Words::new(&wording);
        let heading = format!("{}: {}", words.say(view.title), machine.name);
        let width = style.width();
        let mut svg = Svg::new(style.theme);
        let serial = machine.serial.clone().unwrap_or_default();
        let top = crate::marks::title(&mut svg, &heading, &serial, 10.0, width - 20.0);

        // A dimension of nothing is none: an axle in the plane of another part.
        let shown: Vec<&Dimension> =
            view.dimensions.iter().filter(|d| d.metres().is_finite() && d.metres() > 0.005).collect();
        let texts: Vec<String> =
            shown.iter().enumerate().map(|(i, d)| format!("{} {}", letter(i), words.length(d.metres()))).collect();
        let column = texts.iter().map(|t| text_width(t, SIZE, true)).fold(0.0, f64::max) + 12.0;
        let count = |which: fn(&Along) -> bool| shown.iter().filter(|d| which(&d.along)).count() as f64;
        let left = count(|a| matches!(a, Along::UpLeft { .. })) * column + OFF + 10.0;
        let right = count(|a| matches!(a, Along::UpRight { .. })) * column + OFF + 10.0;
        // On a narrow screen the picture is wider than it, and shown smaller.
        let width = width.max(left + right + LEAST);
        let rows = count(|a| matches!(a, Along::Level { .. })) * ROW + OFF;

        let points: Vec<(f64, f64)> = view.parts.iter().flat_map(points).collect();
        let Some(extent) = Rect::of(&points).filter(|r| r.w > 0.0 && r.h > 0.0 && (r.w + r.h).is_finite()) else {
            return crate::marks::instead(style, &heading, &serial, &words.say(ui::NOT_POSED));
        };
        let (room_w, room_h) = (width - left - right, width * 0.55);
        let high = extent.bottom().max(0.1);
        let scale = (room_w / extent.w).min(room_h / high);
        let spare = (room_w - extent.w * scale) / 2.0;
        let above = line_height(SIZE) + 18.0;
        let origin = (left + spare - extent.x * scale, top + above + high * scale);
        let sheet = Self { scale, origin };

        ground(&mut svg, &sheet, extent.x - 0.4, extent.right() + 0.4);
        svg.open("machine");
        for p in &view.parts {
            part(&mut svg, &sheet, p);
        }
        svg.close();
        let edges = (origin.0 + extent.x * scale - OFF, origin.0 + extent.right() * scale + OFF);
        sheet.dimensions(&mut svg, &shown, &texts, edges, column);

        let mut key: Vec<Row> = shown
            .iter()
            .enumerate()
            .map(|(i, d)| {
                let text = words.pair(d.name, &words.length(d.metres()));
                Row::new(Swatch::None, format!("{} {text}", letter(i)))
            })
            .collect();
        key.extend(view.notes.iter().map(|note| Row::new(Swatch::None, words.say(note.clone()))));
        key.push(Row::new(Swatch::Strong, words.say(ui::MACHINE_DRAWN_FROM)));
        if machine.invented {
            key.push(Row::new(Swatch::None, words.say(ui::INVENTED_DATA)));
        }
        let columns = if width >= 560.0 { 2 } else { 1 };
        let bottom = crate::key::draw(&mut svg, &key, 10.0, origin.1 + rows + 16.0, width - 20.0, columns);
        let about = words.say(ui::MACHINE_ALT.with("machine", machine.name.as_str()).with("count", shown.len()));
        let data = [("px-per-m", scale), ("x0", origin.0), ("y0", origin.1)];
        svg.finish(width, bottom + 8.0, &style.font_family, &heading, &about, &data)
    }

    /// Lines first, then texts on a patch of the sheet.
    fn dimensions(&self, svg: &mut Svg, shown: &[&Dimension], texts: &[String], edges: (f64, f64), column: f64) {
        let thin = Pen::dashed(Ink::Soft, 0.9, "7 3");
        let (mut row, mut left, mut right) = (0.0, 0.0, 0.0);
        let mut placed: Vec<(Px, Px, Rect)> = Vec::new();
        svg.open("dimensions");
        for (d, text) in shown.iter().zip(texts) {
            let (w, h) = (text_width(text, SIZE, true), line_height(SIZE));
            match d.along {
                Along::Level { from, to } => {
                    let y = self.px((0.0, 0.0)).1 + OFF + ROW * row + 6.0;
                    row += 1.0;
                    let (a, b) = (self.px(from), self.px(to));
                    svg.lines(&[(a, (a.0, y + 5.0)), (b, (b.0, y + 5.0))], thin);
                    let inside = (b.0 - a.0).abs() > w + 34.0;
                    let x = if inside { f64::midpoint(a.0, b.0) } else { a.0.max(b.0) + 24.0 + w / 2.0 };
                    placed.push(((a.0, y), (b.0, y), Rect::around((x, y), w, h)));
                }
                Along::UpLeft { at } | Along::UpRight { at } => {
                    let x = if matches!(d.along, Along::UpLeft { .. }) {
                        left += 1.0;
                        edges.0 - column * (left - 0.5)
                    } else {
                        right += 1.0;
                        edges.1 + column * (right - 0.5)
                    };
                    let (low, high) = (self.px((at.0, 0.0)), self.px(at));
                    svg.lines(&[(low, (x, low.1)), (high, (x, high.1))], thin);
                    let inside = low.1 - high.1 > h + 24.0;
                    let y = if inside { f64::midpoint(low.1, high.1) } else { high.1 - h / 2.0 - 18.0 };
                    placed.push(((x, low.1), (x, high.1), Rect::around((x, y), w, h)));
                }
            }
        }
        for (a, b, _) in &placed {
            dimension(svg, *a, *b);
        }
        for ((_, _, rect), text) in placed.iter().zip(texts) {
            svg.rect(rect.grown(1.0), Some(Ink::Sheet), None);
            let kind = Type::plain(SIZE).bold().at(Anchor::Middle);
            svg.text((rect.x + rect.w / 2.0, rect.y + rect.h * 0.78), text, kind);
        }
        svg.close();
    }
}

fn points(part: &Part) -> Vec<(f64, f64)> {
    match part {
        Part::Outline(points, _) | Part::Dashed(points) | Part::Line(points) => points.clone(),
        Part::Wheel(c, r) => vec![(c.0 - r, c.1 - r), (c.0 + r, c.1 + r)],
        Part::Pin(at) => vec![*at],
    }
}

/// The letter of a dimension: a, b, … z, then aa.
fn letter(i: usize) -> String {
    let one = |i: usize| char::from(b'a' + u8::try_from(i % 26).unwrap_or_default());
    if i < 26 { one(i).to_string() } else { format!("{}{}", one(i / 26 - 1), one(i)) }
}
