//! Overhead lines: the conductor and the circle that must stay free.

use super::frame::Frame;
use crate::hatch::{circle, clip_polygon, clip_segment, edges, hatch};
use crate::labels::{Placer, Rect};
use crate::style::Ink;
use crate::svg::{Pen, Px, Svg};
use planning::{ElevationScene, LineScene};

/// Sideways distance up to which a line counts as crossing the plane of the picture, m.
pub(crate) const IN_PLANE: f64 = 0.05;
/// How far to the side a line may pass beyond its required distance and still be drawn, m.
const NEAR: f64 = 2.0;
/// Distance taken for that where the required one is not known, m.
const UNKNOWN: f64 = 8.0;

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
