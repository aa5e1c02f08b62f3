//! Machine, tool, load and landing.

use super::frame::Frame;
use crate::hatch::hatch;
use crate::labels::{Placer, Rect};
use crate::style::Ink;
use crate::svg::{Pen, Px, Svg};
use planning::ElevationScene;

pub(crate) fn landing(svg: &mut Svg, placer: &mut Placer, frame: &Frame, scene: &ElevationScene) {
    let (from, to, z) = scene.landing;
    if !(from.is_finite() && to.is_finite() && z.is_finite()) {
        return;
    }
    let (left, right) = frame.span();
    let (from, to) = (from.min(to).max(left), from.max(to).min(right));
    if to <= from {
        return;
    }
    let (a, b) = (frame.px((from, z)), frame.px((to, z)));
    svg.open("landing");
    crate::marks::landing(svg, a, b);
    svg.close();
    placer.solid(Rect { x: a.0, y: a.1, w: b.0 - a.0, h: 8.0 });
}

pub(crate) fn machine(svg: &mut Svg, placer: &mut Placer, frame: &Frame, scene: &ElevationScene) {
    svg.open("machine");
    for part in &scene.machine {
        let outline = frame.all(&part.outline);
        let fill = if part.kind == "cab" { Ink::Glass } else { Ink::Body };
        svg.polygon(&outline, Some(fill), Some(Pen::new(Ink::Main, 1.5)));
        if let Some(rect) = Rect::of(&outline) {
            placer.solid(rect);
        }
    }
    for (s, z, r) in &scene.wheels {
        let (c, r) = (frame.px((*s, *z)), r * frame.scale);
        svg.circle(c, r, Some(Ink::Soft), Some(Pen::new(Ink::Main, 1.5)));
        svg.circle(c, r * 0.52, Some(Ink::Glass), Some(Pen::new(Ink::Main, 1.0)));
        svg.circle(c, 1.5, Some(Ink::Main), None);
        placer.solid(Rect::around(c, 2.0 * r, 2.0 * r));
    }
    svg.close();
    svg.open("boom");
    // Tip first: each section slides inside the one before it.
    for (s0, z0, s1, z1, depth) in scene.boom.iter().rev() {
        let (a, b, d) = (frame.px((*s0, *z0)), frame.px((*s1, *z1)), (depth * frame.scale).max(3.0));
        svg.polygon(&beam(a, b, d), Some(Ink::Body), Some(Pen::new(Ink::Main, 1.5)));
        placer.beam(a, b, d);
    }
    if let Some((s0, z0, ..)) = scene.boom.first() {
        svg.circle(frame.px((*s0, *z0)), 3.0, Some(Ink::Sheet), Some(Pen::new(Ink::Main, 1.5)));
    }
    svg.close();
    svg.open("tool");
    // The head reaches from the end of the boom line to the attachment's pin.
    let mut tool: Vec<Px> = scene.boom.last().map(|b| frame.px((b.2, b.3))).into_iter().collect();
    tool.extend(frame.all(&scene.tool));
    svg.polyline(&tool, Pen::new(Ink::Main, 3.0));
    for pair in tool.windows(2) {
        placer.line(pair[0], pair[1]);
    }
    svg.close();
}

pub(crate) fn load(svg: &mut Svg, placer: &mut Placer, frame: &Frame, scene: &ElevationScene) {
    svg.open("load");
    if let Some((s0, z0, s1, z1)) = scene.sling {
        let (hook, top) = (frame.px((s0, z0)), frame.px((s1, z1)));
        // Legs to the edges of the load's top, where that is wider than a point.
        let outline = frame.all(&scene.load);
        if let Some(r) = Rect::of(&outline) {
            svg.lines(
                &[(hook, (r.x + r.w * 0.08, r.y)), (hook, (r.right() - r.w * 0.08, r.y))],
                Pen::new(Ink::Main, 1.4),
            );
        } else {
            svg.line(hook, top, Pen::new(Ink::Main, 1.4));
        }
        svg.circle(hook, 3.5, Some(Ink::Sheet), Some(Pen::new(Ink::Main, 2.0)));
        placer.line(hook, top);
    }
    let outline = frame.all(&scene.load);
    svg.polygon(&outline, Some(Ink::Load), None);
    // Light level lines tell the load from the machine without colour.
    svg.lines(&hatch(&outline, 0.0, 6.0), Pen::new(Ink::Soft, 0.6));
    svg.polygon(&outline, None, Some(Pen::new(Ink::Main, 1.8)));
    // No label may hide the load.
    if let Some(rect) = Rect::of(&outline) {
        placer.text(rect);
    }
    svg.close();
    if scene.load_centre.0.is_finite() && scene.load_centre.1.is_finite() {
        svg.open("load-centre");
        let c = frame.px(scene.load_centre);
        crate::marks::centre_of_gravity(svg, c, 6.0);
        placer.solid(Rect::around(c, 14.0, 14.0));
        svg.close();
    }
}

/// A rectangle about a line.
fn beam(a: Px, b: Px, depth: f64) -> [Px; 4] {
    let length = libm::hypot(b.0 - a.0, b.1 - a.1).max(1e-9);
    let (nx, ny) = (-(b.1 - a.1) / length * depth / 2.0, (b.0 - a.0) / length * depth / 2.0);
    [(a.0 + nx, a.1 + ny), (b.0 + nx, b.1 + ny), (b.0 - nx, b.1 - ny), (a.0 - nx, a.1 - ny)]
}
