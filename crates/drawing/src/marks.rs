//! Small marks that mean the same in every drawing and in its key.

use crate::hatch::hatch;
use crate::labels::{Rect, line_height, text_width};
use crate::style::Ink;
use crate::svg::{Anchor, Pen, Px, Svg, Type, n};

/// Centre of gravity: a circle with two opposite quarters filled.
pub(crate) fn centre_of_gravity(svg: &mut Svg, c: Px, r: f64) {
    svg.circle(c, r, Some(Ink::Sheet), Some(Pen::new(Ink::Main, 1.2)));
    let (x, y, r) = (n(c.0), n(c.1), r);
    let d = format!(
        "M{x} {y}L{} {y}A{r} {r} 0 0 0 {x} {}ZM{x} {y}L{} {y}A{r} {r} 0 0 0 {x} {}Z",
        n(c.0 + r),
        n(c.1 - r),
        n(c.0 - r),
        n(c.1 + r),
        r = n(r)
    );
    svg.path(&d, Some(Ink::Main), None);
}

/// A conductor seen along its length.
pub(crate) fn conductor(svg: &mut Svg, c: Px) {
    svg.circle(c, 6.0, Some(Ink::Sheet), Some(Pen::new(Ink::Danger, 2.0)));
    svg.circle(c, 2.4, Some(Ink::Danger), None);
}

/// A point read: a cross with a rim, readable over hatching.
pub(crate) fn cross(svg: &mut Svg, c: Px) {
    let arms = [((c.0 - 7.0, c.1), (c.0 + 7.0, c.1)), ((c.0, c.1 - 7.0), (c.0, c.1 + 7.0))];
    svg.lines(&arms, Pen::new(Ink::Sheet, 5.0));
    svg.lines(&arms, Pen::new(Ink::Main, 2.0));
}

/// A point in a chart: smaller than the box it may lie in should be.
pub(crate) fn dot(svg: &mut Svg, c: Px) {
    svg.circle(c, 3.4, Some(Ink::Main), Some(Pen::new(Ink::Sheet, 1.4)));
}

/// A landing's surface, from `a` to `b`: a heavy line with supports under it.
pub(crate) fn landing(svg: &mut Svg, a: Px, b: Px) {
    let band = [a, b, (b.0, b.1 + 6.0), (a.0, a.1 + 6.0)];
    svg.polygon(&band, Some(Ink::Sheet), None);
    svg.lines(&hatch(&band, -45.0, 5.0), Pen::new(Ink::Main, 0.9));
    svg.line(a, b, Pen::new(Ink::Main, 3.0));
}

/// A dimension line with arrowheads at both ends; heads turn outward where it is short.
pub(crate) fn dimension(svg: &mut Svg, a: Px, b: Px) {
    let pen = Pen::new(Ink::Main, 1.1);
    let length = libm::hypot(b.0 - a.0, b.1 - a.1);
    if length < 0.5 {
        return;
    }
    let u = ((b.0 - a.0) / length, (b.1 - a.1) / length);
    let outward = length < 22.0;
    if outward {
        svg.line((a.0 - u.0 * 16.0, a.1 - u.1 * 16.0), a, pen);
        svg.line(b, (b.0 + u.0 * 16.0, b.1 + u.1 * 16.0), pen);
    }
    svg.line(a, b, pen);
    let s = if outward { -1.0 } else { 1.0 };
    head(svg, a, (u.0 * s, u.1 * s));
    head(svg, b, (-u.0 * s, -u.1 * s));
}

fn head(svg: &mut Svg, tip: Px, u: (f64, f64)) {
    let base = (tip.0 + u.0 * 9.0, tip.1 + u.1 * 9.0);
    svg.polygon(
        &[tip, (base.0 - u.1 * 3.0, base.1 + u.0 * 3.0), (base.0 + u.1 * 3.0, base.1 - u.0 * 3.0)],
        Some(Ink::Main),
        None,
    );
}

/// An arrow with a rim, readable over hatching.
pub(crate) fn arrow(svg: &mut Svg, tail: Px, tip: Px, ink: Ink, width: f64) {
    let length = libm::hypot(tip.0 - tail.0, tip.1 - tail.1);
    if length < 1.0 {
        return;
    }
    let u = ((tip.0 - tail.0) / length, (tip.1 - tail.1) / length);
    let (long, half) = ((6.0 + 2.4 * width).min(length), 3.0 + 1.2 * width);
    let base = (tip.0 - u.0 * long, tip.1 - u.1 * long);
    let head = [tip, (base.0 - u.1 * half, base.1 + u.0 * half), (base.0 + u.1 * half, base.1 - u.0 * half)];
    svg.line(tail, base, Pen::new(Ink::Sheet, width + 3.0));
    svg.polygon(&head, Some(ink), Some(Pen::new(Ink::Sheet, 3.0)));
    svg.line(tail, base, Pen::new(ink, width));
    svg.polygon(&head, Some(ink), None);
}

/// A number in a circle, as in a picture and in its key.
pub(crate) fn numbered(svg: &mut Svg, c: Px, number: usize) {
    svg.circle(c, 10.0, Some(Ink::Sheet), Some(Pen::new(Ink::Main, 1.8)));
    svg.text((c.0, c.1 + 4.6), &number.to_string(), Type::plain(13.0).bold().at(Anchor::Middle));
}

/// The arrow to the north in the upper right corner of a plan.
pub(crate) fn north(svg: &mut Svg, plot: Rect, word: &str) {
    let (x, y) = (plot.right() - 14.0, plot.y + 8.0);
    svg.open("north");
    svg.line((x, y + 32.0), (x, y + 8.0), Pen::new(Ink::Sheet, 5.0));
    svg.line((x, y + 32.0), (x, y + 8.0), Pen::new(Ink::Main, 1.8));
    svg.polygon(&[(x, y), (x + 5.0, y + 12.0), (x - 5.0, y + 12.0)], Some(Ink::Main), Some(Pen::new(Ink::Sheet, 1.0)));
    svg.text((x - 9.0, y + 12.0), word, Type::plain(12.0).bold().at(Anchor::End).halo());
    svg.close();
}

/// Size of a block of lines.
pub(crate) fn block_size(lines: &[String], size: f64, bold: bool) -> (f64, f64) {
    let w = lines.iter().map(|l| text_width(l, size, bold)).fold(0.0, f64::max);
    (w, lines.len() as f64 * line_height(size))
}

/// Sets a block of lines into a box, each line centred.
pub(crate) fn block(svg: &mut Svg, lines: &[String], rect: Rect, kind: Type) {
    let step = line_height(kind.size);
    for (i, line) in lines.iter().enumerate() {
        let y = rect.y + i as f64 * step + step * 0.78;
        svg.text((rect.x + rect.w / 2.0, y), line, kind.at(Anchor::Middle));
    }
}

/// Title and subtitle; returns where they end.
pub(crate) fn title(svg: &mut Svg, title: &str, subtitle: &str, x: f64, width: f64) -> f64 {
    let mut y = 8.0;
    svg.open("title");
    for (text, kind, most) in [(title, Type::plain(15.0).bold(), 2), (subtitle, Type::plain(12.5).soft(), 2)] {
        for line in crate::labels::wrap(text, kind.size, kind.bold, width, most) {
            y += line_height(kind.size);
            svg.text((x, y - 4.0), &line, kind);
        }
    }
    svg.close();
    y + 6.0
}

/// A text that says why there is no drawing.
pub(crate) fn instead(style: &crate::Style, heading: &str, subtitle: &str, why: &str) -> String {
    let width = style.width();
    let mut svg = Svg::new(style.theme);
    let mut y = title(&mut svg, heading, subtitle, 10.0, width - 20.0) + 6.0;
    for line in crate::labels::wrap(why, 13.0, false, width - 40.0, 6) {
        y += line_height(13.0);
        svg.text((20.0, y), &line, Type::plain(13.0));
    }
    let height = y + 20.0;
    svg.rect(Rect { x: 0.5, y: 0.5, w: width - 1.0, h: height - 1.0 }, None, Some(Pen::dashed(Ink::Soft, 1.0, "4 4")));
    svg.finish(width, height, &style.font_family, heading, why, &[])
}
