//! Names on the map: gathered while it is drawn, set at the end, the most needed first. Where a name finds
//! no room, a number in a circle stands for it, and the key below has the name.

use super::map::Map;
use crate::key::{Row, Swatch};
use crate::labels::{Placed, Placer, Rect, wrap};
use crate::marks::{block, block_size};
use crate::style::Ink;
use crate::svg::{Anchor, Pen, Px, Svg, Type};

/// Size of names, px.
pub(crate) const SIZE: f64 = 11.5;

/// Maps below this width are narrow, px: a telephone held upright.
const NARROW: f64 = 460.0;

/// So many names have room beside what they name on a narrow map, too.
const FEW: usize = 5;

/// Most numbers that stand for names: a list that is still read.
const MOST_NUMBERS: usize = 40;

/// How much a label is needed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum Need {
    /// Never left out: overhead lines.
    Must,
    /// Landings, stands, excavations.
    High,
    /// Things, larger ones first, and zones.
    Usual,
    /// Buried things.
    Low,
}

/// Across the circle of a number, px.
const NUMBER_EDGE: f64 = 18.0;

/// A number in a circle, as on the map and in the key.
pub(crate) fn number(svg: &mut Svg, middle: Px, number: usize) {
    svg.circle(middle, NUMBER_EDGE / 2.0, Some(Ink::Sheet), Some(Pen::new(Ink::Main, 1.2)));
    let kind = Type::plain(12.0).bold().at(Anchor::Middle);
    svg.text((middle.0, middle.1 + kind.size * 0.36), &number.to_string(), kind);
}

struct Label {
    at: Px,
    text: Vec<String>,
    /// Name and facts uncut, for the key.
    whole: String,
    need: Need,
    /// Area of what is named, px².
    area: f64,
    ink: Ink,
}

/// Labels to be placed.
pub(crate) struct Labels {
    placer: Placer,
    waiting: Vec<Label>,
    /// Figures of contours: places where each may stand, the best first.
    figures: Vec<(Vec<Px>, String)>,
    widest: f64,
    /// On a narrow map many names beside what they name would hide the rest of it: numbers stand there instead.
    narrow: bool,
}

impl Labels {
    pub(crate) fn new(map: &Map, width: f64) -> Self {
        // A name takes no more than a good quarter of a narrow picture.
        Self {
            placer: Placer::new(map.plot),
            waiting: Vec::new(),
            figures: Vec::new(),
            widest: (width * 0.28).clamp(96.0, 170.0),
            narrow: map.plot.w < NARROW,
        }
    }
    /// A label about `at`: a name, cut where it is long, and lines that are never cut short of two.
    pub(crate) fn add(&mut self, at: Px, name: &str, facts: &[String], need: Need, area: f64, ink: Ink) {
        let mut text = wrap(name, SIZE, false, self.widest, 2);
        for fact in facts {
            text.extend(wrap(fact, SIZE, false, self.widest, 3));
        }
        if !text.is_empty() {
            let whole = std::iter::once(name).chain(facts.iter().map(String::as_str));
            let whole = whole.filter(|part| !part.trim().is_empty()).collect::<Vec<_>>().join(", ");
            self.waiting.push(Label { at, text, whole, need, area, ink });
        }
    }
    /// A figure on a line, set at the first of the places that no name takes.
    pub(crate) fn figure(&mut self, places: Vec<Px>, text: String) {
        self.figures.push((places, text));
    }
    /// A mark that names should not cover.
    pub(crate) fn mark(&mut self, at: Px, size: f64) {
        self.placer.solid(Rect::around(at, size, size));
    }
    /// Keeps a place free.
    pub(crate) fn reserve(&mut self, rect: Rect) {
        self.placer.text(rect);
    }
    /// A line that names should not lie on.
    pub(crate) fn line(&mut self, a: Px, b: Px) {
        self.placer.line(a, b);
    }

    /// Sets the labels; returns the names that numbers stand for, as rows of the key, and how many found
    /// no room at all.
    pub(crate) fn draw(&mut self, svg: &mut Svg) -> (Vec<Row>, usize) {
        let mut crowded = Vec::new();
        let numbers = self.narrow && self.waiting.len() > FEW;
        self.waiting.sort_by(|a, b| a.need.cmp(&b.need).then(b.area.total_cmp(&a.area)));
        svg.open("labels");
        for label in std::mem::take(&mut self.waiting) {
            let (w, h) = block_size(&label.text, SIZE, false);
            // What is large enough carries its name inside.
            let gap = 5.0 + (label.area.max(0.0).sqrt() * 0.5).min(22.0);
            let inside = Rect::around(label.at, w + 4.0, h + 2.0);
            let roomy = label.area > 2.2 * w * h && self.placer.clash(inside) == 0.0 && self.placer.inside(inside);
            let (rect, far) = if roomy {
                self.placer.text(inside);
                (Rect::around(label.at, w, h), false)
            } else if label.need == Need::Must {
                let placed = self.placer.place(label.at, w, h, 6.0, 60.0);
                (placed.rect, placed.far)
            } else if let Some(placed) =
                (!numbers).then(|| self.placer.place_if_clear(label.at, w, h, gap, 20.0)).flatten()
            {
                (placed.rect, placed.far || gap > 9.0)
            } else {
                crowded.push(label);
                continue;
            };
            if far {
                svg.line(label.at, rect.nearest(label.at), Pen::new(Ink::Soft, 0.8));
            }
            block(svg, &label.text, rect, Type::plain(SIZE).ink(label.ink).halo());
        }
        svg.close();
        let numbered = self.set_numbers(svg, crowded);
        self.set_figures(svg);
        numbered
    }

    /// Numbers from the top of the map to its foot, as one looks for them.
    fn set_numbers(&mut self, svg: &mut Svg, crowded: Vec<Label>) -> (Vec<Row>, usize) {
        let all = crowded.len();
        let edge = NUMBER_EDGE + 2.0;
        let mut set: Vec<(Label, Placed)> = Vec::new();
        for label in crowded {
            if set.len() == MOST_NUMBERS {
                break;
            }
            let here = Rect::around(label.at, edge, edge);
            // On what it names, where that is not hidden by it.
            if label.area > 1.5 * edge * edge && self.placer.clash(here) == 0.0 && self.placer.inside(here) {
                self.placer.text(here);
                set.push((label, Placed { rect: here, away: 0.0, far: false }));
            } else if let Some(placed) = self.placer.place_if_clear(label.at, edge, edge, 4.0, 20.0) {
                set.push((label, placed));
            }
        }
        let left_out = all - set.len();
        set.sort_by(|a, b| a.1.rect.y.total_cmp(&b.1.rect.y).then(a.1.rect.x.total_cmp(&b.1.rect.x)));
        if set.is_empty() {
            return (Vec::new(), left_out);
        }
        svg.open("numbers");
        let mut rows = Vec::new();
        for (i, (label, placed)) in set.into_iter().enumerate() {
            let rect = placed.rect;
            let middle = (rect.x + rect.w / 2.0, rect.y + rect.h / 2.0);
            if rect.nearest(label.at) != label.at {
                svg.line(label.at, rect.nearest(label.at), Pen::new(Ink::Soft, 0.8));
            }
            number(svg, middle, i + 1);
            rows.push(Row::new(Swatch::Number(i + 1), label.whole));
        }
        svg.close();
        (rows, left_out)
    }

    fn set_figures(&mut self, svg: &mut Svg) {
        let kind = Type::plain(10.5).soft().at(Anchor::Middle).halo();
        svg.open("figures");
        for (places, text) in std::mem::take(&mut self.figures) {
            let (w, h) = block_size(std::slice::from_ref(&text), kind.size, false);
            let free = |at: &Px| {
                let rect = Rect::around(*at, w + 4.0, h);
                (self.placer.inside(rect) && self.placer.clash(rect) == 0.0).then_some((*at, rect))
            };
            if let Some((at, rect)) = places.iter().find_map(free) {
                self.placer.text(rect);
                svg.text((at.0, at.1 + kind.size * 0.36), &text, kind);
            }
        }
        svg.close();
    }
}
