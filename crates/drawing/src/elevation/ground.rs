//! The ground profile: what is known as a full line with earth below, what is not as a dashed one.

use super::frame::Frame;
use crate::hatch::hatch;
use crate::labels::Placer;
use crate::style::Ink;
use crate::svg::{Pen, Svg};
use planning::ElevationScene;

/// A stretch of the profile.
pub(crate) struct Stretch {
    /// True where heights are known.
    pub known: bool,
    /// Corners (s, z), m; where not known, the ends carry the nearest known height.
    pub points: Vec<(f64, f64)>,
}

/// Cuts the profile to the picture and into known and unknown stretches.
pub(crate) fn stretches(scene: &ElevationScene, from: f64, to: f64) -> Vec<Stretch> {
    let fallback = scene.datum.1;
    let mut out: Vec<Stretch> = Vec::new();
    let mut add = |a: (f64, Option<f64>), b: (f64, Option<f64>), last: f64| {
        let known = a.1.is_some() && b.1.is_some();
        let (za, zb) = (a.1.unwrap_or(last), b.1.or(a.1).unwrap_or(last));
        let (lo, hi) = (a.0.max(from), b.0.min(to));
        if hi <= lo {
            return;
        }
        let at = |s: f64| if b.0 > a.0 { za + (zb - za) * (s - a.0) / (b.0 - a.0) } else { za };
        match out.last_mut() {
            Some(stretch) if stretch.known == known => stretch.points.push((hi, at(hi))),
            _ => out.push(Stretch { known, points: vec![(lo, at(lo)), (hi, at(hi))] }),
        }
    };
    let first = scene.ground.iter().find_map(|g| g.1).unwrap_or(fallback);
    let mut last = first;
    let mut before = (from.min(scene.ground.first().map_or(from, |g| g.0)), None);
    for g in &scene.ground {
        add(before, *g, last);
        last = g.1.unwrap_or(last);
        before = *g;
    }
    add((before.0, None), (to.max(before.0), None), last);
    out
}

pub(crate) fn draw(svg: &mut Svg, placer: &mut Placer, frame: &Frame, scene: &ElevationScene) {
    let (from, to) = frame.span();
    svg.open("ground");
    for stretch in stretches(scene, from, to) {
        let line = frame.all(&stretch.points);
        if stretch.known {
            let mut band = line.clone();
            band.extend(line.iter().rev().map(|p| (p.0, p.1 + 11.0)));
            svg.polygon(&band, Some(Ink::Ground), None);
            svg.lines(&hatch(&band, -45.0, 8.0), Pen::new(Ink::Soft, 0.8));
            svg.polyline(&line, Pen::new(Ink::Main, 2.0));
        } else {
            svg.polyline(&line, Pen::dashed(Ink::Main, 2.0, "6 5"));
        }
        for pair in line.windows(2) {
            placer.line(pair[0], pair[1]);
        }
    }
    svg.close();
}
