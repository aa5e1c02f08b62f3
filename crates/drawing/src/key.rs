//! The key below a drawing: a swatch and a sentence a row, in one or two columns.

use crate::hatch::hatch;
use crate::labels::{Rect, line_height, wrap};
use crate::site_plan::SiteMark;
use crate::stand_field::FieldLook;
use crate::style::Ink;
use crate::svg::{Pen, Px, Svg, Type};
use crate::way::WayMark;

/// Size of the key's text, px.
pub(crate) const KEY_SIZE: f64 = 12.5;
const SWATCH_W: f64 = 26.0;
const GAP: f64 = 8.0;

/// What the swatch of a row shows.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Swatch {
    /// No swatch, text over the whole width.
    None,
    /// No swatch, text in bold.
    Strong,
    Load,
    LoadCentre,
    Landing,
    Line,
    GroundUnknown,
    Point,
    Dot,
    PointBox,
    ZoneCarries,
    ZoneTooHeavy,
    NotPermitted,
    /// The number that stands for a name on the map.
    Number(usize),
    /// A mark of a site seen from above.
    Site(SiteMark),
    Contour,
    CutGround,
    /// Ground around a landing, by what a stand there would give.
    Field(FieldLook),
    /// A landing seen from above.
    LandingFromAbove,
    Arrow,
    /// How far off a stand may be.
    Disc,
    /// A mark of a way.
    Way(WayMark),
}

/// A row of the key.
pub(crate) struct Row {
    pub swatch: Swatch,
    pub text: String,
}

impl Row {
    pub(crate) fn new(swatch: Swatch, text: String) -> Self {
        Self { swatch, text }
    }
}

/// Draws rows below `top` and returns where they end.
pub(crate) fn draw(svg: &mut Svg, rows: &[Row], x: f64, top: f64, width: f64, columns: usize) -> f64 {
    let columns = columns.max(1);
    let column_w = (width - (columns - 1) as f64 * 20.0) / columns as f64;
    let set: Vec<Vec<String>> = rows.iter().map(|r| lines(r, column_w)).collect();
    let heights: Vec<f64> = set.iter().map(|l| l.len() as f64 * line_height(KEY_SIZE) + 5.0).collect();
    let share = heights.iter().sum::<f64>() / columns as f64;
    let (mut column, mut y, mut bottom) = (0, top, top);
    svg.open("key");
    for ((row, text), height) in rows.iter().zip(&set).zip(&heights) {
        if y > top && y - top + height / 2.0 > share && column + 1 < columns {
            column += 1;
            y = top;
        }
        let left = x + column as f64 * (column_w + 20.0);
        draw_row(svg, row.swatch, text, (left, y));
        y += height;
        bottom = bottom.max(y);
    }
    svg.close();
    bottom
}

fn lines(row: &Row, width: f64) -> Vec<String> {
    let room = width - indent(row.swatch);
    wrap(&row.text, KEY_SIZE, row.swatch == Swatch::Strong, room, 4)
}

fn indent(swatch: Swatch) -> f64 {
    if matches!(swatch, Swatch::None | Swatch::Strong) { 0.0 } else { SWATCH_W + GAP }
}

fn draw_row(svg: &mut Svg, swatch: Swatch, text: &[String], at: Px) {
    let step = line_height(KEY_SIZE);
    draw_swatch(svg, swatch, Rect { x: at.0, y: at.1 + 1.0, w: SWATCH_W, h: 13.0 });
    let mut kind = Type::plain(KEY_SIZE);
    if swatch == Swatch::Strong {
        kind = kind.bold();
    }
    for (i, line) in text.iter().enumerate() {
        svg.text((at.0 + indent(swatch), at.1 + 11.5 + i as f64 * step), line, kind);
    }
}

fn draw_swatch(svg: &mut Svg, swatch: Swatch, r: Rect) {
    let c = (r.x + r.w / 2.0, r.y + r.h / 2.0);
    let thin = Pen::new(Ink::Main, 1.0);
    match swatch {
        Swatch::None | Swatch::Strong => {}
        Swatch::Load => svg.rect(r, Some(Ink::Load), Some(Pen::new(Ink::Main, 1.5))),
        Swatch::LoadCentre => crate::marks::centre_of_gravity(svg, c, 6.0),
        Swatch::Landing => crate::marks::landing(svg, (r.x, c.1 - 2.0), (r.right(), c.1 - 2.0)),
        Swatch::Line => crate::marks::conductor(svg, c),
        Swatch::GroundUnknown => svg.line((r.x, c.1), (r.right(), c.1), Pen::dashed(Ink::Main, 2.0, "5 4")),
        Swatch::Point => crate::marks::cross(svg, c),
        Swatch::Dot => crate::marks::dot(svg, c),
        Swatch::PointBox => svg.rect(r, Some(Ink::Sheet), Some(Pen::new(Ink::Main, 2.2))),
        Swatch::ZoneCarries => svg.rect(r, Some(Ink::Carries), Some(thin)),
        Swatch::ZoneTooHeavy => hatched(svg, r, Ink::Sheet, &[(-45.0, 3.5)], Ink::Main),
        Swatch::Number(number) => crate::site_plan::draw_number(svg, c, number),
        Swatch::Site(mark) => crate::site_plan::swatch(svg, mark, r),
        Swatch::Way(mark) => crate::way::swatch(svg, mark, r),
        Swatch::Field(look) => crate::stand_field::swatch(svg, look, r),
        Swatch::LandingFromAbove => {
            svg.rect(r, Some(Ink::Load), Some(Pen::new(Ink::Main, 1.8)));
            svg.lines(&[((r.x, r.y), (r.right(), r.bottom())), ((r.x, r.bottom()), (r.right(), r.y))], thin);
        }
        Swatch::Arrow => crate::marks::arrow(svg, (r.x, c.1), (r.right(), c.1), Ink::Main, 2.4),
        Swatch::Disc => {
            svg.circle(c, 6.5, None, Some(Pen::new(Ink::Main, 2.0)));
            svg.lines(&[((c.0 - 3.0, c.1), (c.0 + 3.0, c.1)), ((c.0, c.1 - 3.0), (c.0, c.1 + 3.0))], thin);
        }
        Swatch::Contour => {
            let bow = [(r.x, r.bottom() - 2.0), (c.0 - 4.0, c.1), (c.0 + 4.0, c.1), (r.right(), r.y + 2.0)];
            svg.polyline(&bow, Pen::new(Ink::Soft, 0.9));
        }
        Swatch::CutGround => {
            svg.rect(Rect { y: c.1, h: r.h / 2.0, ..r }, Some(Ink::Ground), None);
            for dy in [-4.0, 4.0] {
                svg.line((r.x, c.1 + dy), (r.right(), c.1 + dy), Pen::dashed(Ink::Soft, 0.9, "3 3"));
            }
            svg.line((r.x, c.1), (r.right(), c.1), Pen::new(Ink::Main, 2.0));
        }
        Swatch::NotPermitted => hatched(svg, r, Ink::Sheet, &[(45.0, 5.0), (-45.0, 5.0)], Ink::Danger),
    }
}

fn hatched(svg: &mut Svg, r: Rect, fill: Ink, families: &[(f64, f64)], ink: Ink) {
    let outline = [(r.x, r.y), (r.right(), r.y), (r.right(), r.bottom()), (r.x, r.bottom())];
    svg.rect(r, Some(fill), None);
    for (degrees, spacing) in families {
        svg.lines(&hatch(&outline, *degrees, *spacing), Pen::new(ink, 0.9));
    }
    svg.rect(r, None, Some(Pen::new(Ink::Main, 1.0)));
}
