//! Overhead lines: the conductor and the circle that must stay free.

use super::frame::Frame;
use crate::hatch::{circle, clip_polygon, clip_segment, edges, hatch};
use crate::labels::{Placer, Rect};
use crate::style::Ink;
use crate::svg::{Pen, Px, Svg};
use planning::{ElevationScene, LineScene};

/// Sideways distance up to which a line counts as crossing the plane of the picture, m.
pub(crate) const IN_PLANE: f64 = 0.05;

/// True if the required distance, as a tube about the line, cuts the picture's plane here.
fn cuts_plane(line: &LineScene) -> bool {
    line.aside_m.abs() < IN_PLANE
}

/// Hatched circles of the required distance, behind everything else. A line to the side gets the
/// outline only: the circle stands in another plane.
pub(crate) fn rings(svg: &mut Svg, placer: &mut Placer, frame: &Frame, scene: &ElevationScene) {
    svg.open("required-distance");
    for line in &scene.lines {
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
    for line in scene.lines.iter().filter(|l| frame.shows(l.at)) {
        let c = frame.px(line.at);
        crate::marks::conductor(svg, c);
        placer.solid(Rect::around(c, 16.0, 16.0));
    }
    svg.close();
}
