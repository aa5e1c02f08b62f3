//! A machine with its dimensions: side and front view, to scale.

mod front;
mod sheet;
mod side;

use crate::labels::Rect;
use crate::style::{Ink, Style};
use crate::svg::{Pen, Svg};
use machine::Machine;
use sheet::Sheet;
use wording::Wording;

/// Side view of a machine as SVG, boom lowest and retracted, with its dimensions in metres or feet as
/// the reader has them. Equal scale on both axes; the root carries it as `data-px-per-m`, with the
/// picture position of the ground under the front axle as `data-x0` and `data-y0`.
pub fn machine_side(machine: &Machine, wording: &Wording, style: &Style) -> String {
    Sheet::draw(machine, &side::view(machine), *wording, style)
}

/// Front view of a machine as SVG, as [`machine_side`].
pub fn machine_front(machine: &Machine, wording: &Wording, style: &Style) -> String {
    Sheet::draw(machine, &front::view(machine), *wording, style)
}

/// A part of the machine in the picture, m.
pub(crate) enum Part {
    /// A filled outline.
    Outline(Vec<(f64, f64)>, Ink),
    /// An outline of which not everything is known.
    Dashed(Vec<(f64, f64)>),
    /// A wheel from the side: centre and radius.
    Wheel((f64, f64), f64),
    /// A thick line: forks or jib.
    Line(Vec<(f64, f64)>),
    /// A pin.
    Pin((f64, f64)),
}

/// A rectangle as an outline.
pub(crate) fn rectangle(x: (f64, f64), z: (f64, f64)) -> Vec<(f64, f64)> {
    vec![(x.0, z.0), (x.1, z.0), (x.1, z.1), (x.0, z.1)]
}

fn part(svg: &mut Svg, sheet: &Sheet, part: &Part) {
    let pen = Pen::new(Ink::Main, 1.5);
    match part {
        Part::Outline(points, fill) => svg.polygon(&sheet.all(points), Some(*fill), Some(pen)),
        Part::Dashed(points) => svg.polygon(&sheet.all(points), None, Some(Pen::dashed(Ink::Main, 1.2, "6 4"))),
        Part::Wheel(centre, radius) => {
            let (c, r) = (sheet.px(*centre), radius * sheet.scale);
            svg.circle(c, r, Some(Ink::Soft), Some(pen));
            svg.circle(c, r * 0.52, Some(Ink::Glass), Some(Pen::new(Ink::Main, 1.0)));
            svg.circle(c, 1.5, Some(Ink::Main), None);
        }
        Part::Line(points) => svg.polyline(&sheet.all(points), Pen::new(Ink::Main, 3.5)),
        Part::Pin(at) => {
            let c = sheet.px(*at);
            svg.circle(c, 4.0, Some(Ink::Sheet), Some(pen));
            svg.circle(c, 1.2, Some(Ink::Main), None);
        }
    }
}

/// Ground under the whole picture.
fn ground(svg: &mut Svg, sheet: &Sheet, from: f64, to: f64) {
    let (a, b) = (sheet.px((from, 0.0)), sheet.px((to, 0.0)));
    let band = Rect { x: a.0, y: a.1, w: b.0 - a.0, h: 9.0 };
    svg.rect(band, Some(Ink::Ground), None);
    let outline = [(band.x, band.y), (band.right(), band.y), (band.right(), band.bottom()), (band.x, band.bottom())];
    svg.lines(&crate::hatch::hatch(&outline, 45.0, 6.0), Pen::new(Ink::Soft, 0.7));
    svg.line(a, b, Pen::new(Ink::Main, 2.0));
}
