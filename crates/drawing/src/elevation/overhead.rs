//! Overhead lines: the conductor and the circle that must stay free.

use super::frame::Frame;
use crate::hatch::{circle, clip_polygon, clip_segment, edges, hatch};
use crate::labels::{Placer, Rect};
use crate::style::Ink;
use crate::svg::{Pen, Px, Svg, Type};
use crate::words::{Words, length};
use planning::{ElevationScene, LineScene};
use wording::ui;

/// Sideways distance up to which a line counts as crossing the plane of the picture, m.
pub(crate) const IN_PLANE: f64 = 0.05;
/// How far to the side a line may pass beyond its required distance and still be drawn, m.
const NEAR: f64 = 2.0;
/// Distance taken for that where the required one is not known, m.
const UNKNOWN: f64 = 8.0;

/// How far the drawn distance may be off the plan's for the dimension to end at a drawn part, as a
/// share of it.
const SAME: f64 = 0.03;

/// True if a line has a place in the picture. One that passes far to the side would look near in
/// it; the key says where it is.
pub(crate) fn drawn(line: &LineScene) -> bool {
    line.aside_m.abs() <= line.required_m.unwrap_or(UNKNOWN) + NEAR
}

/// True if the required distance about the line's nearest point reaches the plane of the picture.
fn cuts_plane(line: &LineScene) -> bool {
    line.required_m.is_some_and(|required| line.aside_m.abs() < required)
}

/// Hatched circles of the required distance, behind everything else. Where it does not
/// reach this plane it gets a broken outline only.
pub(crate) fn rings(svg: &mut Svg, placer: &mut Placer, frame: &Frame, scene: &ElevationScene) {
    svg.open("required-distance");
    for line in scene.lines.iter().filter(|l| drawn(l)) {
        let Some(required) = line.required_m else { continue };
        let ring = circle(frame.px(line.at), required * frame.scale, 96);
        if cuts_plane(line) {
            // Hatched along the inside of the circle only, so that what lies in it stays readable.
            let r = required * frame.scale;
            let mut band = ring.clone();
            band.push(ring[0]);
            let mut inner = circle(frame.px(line.at), r - (0.3 * r).min(22.0), 96);
            inner.push(inner[0]);
            band.extend(inner.into_iter().rev());
            svg.lines(&hatch(&clip_polygon(&band, frame.plot), 60.0, 6.0), Pen::new(Ink::Danger, 0.8));
        }
        let outline: Vec<(Px, Px)> = edges(&ring).filter_map(|(a, b)| clip_segment(a, b, frame.plot)).collect();
        // Every third piece left out makes it dashed, whatever it was cut to.
        let dashed: Vec<(Px, Px)> =
            outline.iter().enumerate().filter(|(i, _)| cuts_plane(line) || i % 3 != 2).map(|(_, s)| *s).collect();
        svg.lines(&dashed, Pen::new(Ink::Danger, if cuts_plane(line) { 1.8 } else { 1.0 }));
        for (a, b) in outline {
            placer.line(a, b);
        }
    }
    svg.close();
}

pub(crate) fn conductors(svg: &mut Svg, placer: &mut Placer, frame: &Frame, scene: &ElevationScene) {
    svg.open("lines");
    for line in scene.lines.iter().filter(|l| drawn(l) && frame.shows(l.at)) {
        let c = frame.px(line.at);
        crate::marks::conductor(svg, c);
        placer.solid(Rect::around(c, 16.0, 16.0));
    }
    svg.close();
}

/// True if the distance to a line is dimensioned: near the plane of the picture, and not far off.
pub(crate) fn dimensioned(line: &LineScene) -> bool {
    let (Some(distance), Some(required)) = (line.nearest_m, line.required_m) else { return false };
    line.aside_m.abs() <= 0.5 && distance <= 2.0 * required && distance >= 0.05
}

/// Dimension from each conductor near the plane of the picture to the part that comes nearest, as
/// long as the plan's nearest distance; it ends in the air where another pose of the movement
/// comes nearer than the one shown.
pub(crate) fn nearest(svg: &mut Svg, placer: &mut Placer, frame: &Frame, scene: &ElevationScene, words: &Words<'_>) {
    svg.open("nearest");
    for (i, line) in scene.lines.iter().enumerate() {
        let Some(distance) = line.nearest_m.filter(|_| dimensioned(line) && frame.shows(line.at)) else { continue };
        let Some(part) = nearest_part(scene, line.at) else { continue };
        let drawn = libm::hypot(part.0 - line.at.0, part.1 - line.at.1);
        if drawn < 0.05 {
            continue;
        }
        let share = if (drawn / distance - 1.0).abs() < SAME { 1.0 } else { distance / drawn };
        let end = (line.at.0 + (part.0 - line.at.0) * share, line.at.1 + (part.1 - line.at.1) * share);
        let (a, b) = (frame.px(line.at), frame.px(end));
        crate::marks::dimension(svg, a, b);
        placer.beam(a, b, 8.0);
        let text = [words.say(ui::TO_LINE.with("number", i + 1).with("distance", length(distance)))];
        let middle = (f64::midpoint(a.0, b.0), f64::midpoint(a.1, b.1));
        super::notes::place(svg, placer, middle, &text, 0.0, Type::plain(13.0).bold().ink(Ink::Danger));
    }
    svg.close();
}

/// The point of load, tool and boom nearest to `at`, scene metres.
fn nearest_part(scene: &ElevationScene, at: (f64, f64)) -> Option<(f64, f64)> {
    let on = |a: (f64, f64), b: (f64, f64)| {
        let (dx, dy) = (b.0 - a.0, b.1 - a.1);
        let len2 = dx * dx + dy * dy;
        let t = if len2 > 0.0 { (((at.0 - a.0) * dx + (at.1 - a.1) * dy) / len2).clamp(0.0, 1.0) } else { 0.0 };
        (a.0 + dx * t, a.1 + dy * t)
    };
    let away = |p: (f64, f64)| libm::hypot(p.0 - at.0, p.1 - at.1);
    let mut points: Vec<(f64, f64)> = edges(&scene.load).map(|(a, b)| on(a, b)).collect();
    points.extend(scene.tool.windows(2).map(|w| on(w[0], w[1])));
    points.extend(scene.boom.iter().map(|(s0, z0, s1, z1, depth)| {
        let p = on((*s0, *z0), (*s1, *z1));
        // On the boom's skin, not on its middle line.
        let share = (depth / 2.0 / away(p).max(depth / 2.0)).min(1.0);
        (p.0 + (at.0 - p.0) * share, p.1 + (at.1 - p.1) * share)
    }));
    points.into_iter().min_by(|a, b| away(*a).total_cmp(&away(*b)))
}
