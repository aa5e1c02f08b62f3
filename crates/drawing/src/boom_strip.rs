//! The boom's movement as a strip of small side views, one for each position where the motion changes.

use crate::hatch::{clip_segment, hatch};
use crate::labels::{Rect, line_height, wrap};
use crate::style::{Ink, Style};
use crate::svg::{Anchor, Pen, Px, Svg, Type};
use crate::words::Words;
use planning::{BoomMovement, BoomStep, ElevationScene, LiftPlan, SmallestReserve};
use wording::{Wording, ui};

/// Text under a picture, px.
const SIZE: f64 = 13.0;
/// Lines that an instruction may take.
const MOST_LINES: usize = 16;
/// Between pictures, px.
const GAP: f64 = 14.0;
/// Narrowest picture, px.
const NARROW: f64 = 150.0;

/// The boom's movement of a lift as SVG: in every picture the machine on its ground with boom and load where a step ends, in
/// broken line where it began; below it what the angle indicator and the extension marks read, and what is done. Where on
/// the way the least is left carries a mark.
///
/// One scale for all pictures, on the root as `data-px-per-m`. Where no movement is planned, the drawing says so.
pub fn boom_strip(lift: &LiftPlan, wording: &Wording, style: &Style) -> String {
    let words = Words::new(wording);
    let heading = format!("{}: {}", words.say(ui::BOOM_MOVEMENT), lift.name);
    let subtitle = words.machine(lift);
    let instead = || crate::marks::instead(style, &heading, &subtitle, &words.say(ui::STRIP_NONE));
    let Some(movement) = lift.movement.as_ref().map(finite).filter(|m| !m.steps.is_empty()) else { return instead() };
    let scene = lift.elevation.as_ref().map(crate::elevation::finite);
    let width = style.width();
    let mut svg = Svg::new(style.theme);
    let mut top = crate::marks::title(&mut svg, &heading, &subtitle, 10.0, width - 20.0);
    let columns = ((width - 20.0 + GAP) / (NARROW + GAP)).floor().clamp(1.0, 4.0) as usize;
    let columns = columns.min(movement.steps.len());
    let w = (width - 20.0 - GAP * (columns - 1) as f64) / columns as f64;
    let Some(frame) = Frame::fit(&movement, scene.as_ref(), w) else { return instead() };

    let least = movement.smallest.as_ref().and_then(|s| Some((where_least(&movement, s)?, s)));
    if let Some((step, smallest)) = least {
        let said = ui::STRIP_LEAST
            .with("check", words.check(&smallest.check))
            .with("reserve", words.reserve(smallest.reserve))
            .with("step", step + 1);
        least_mark(&mut svg, (20.0, top + line_height(SIZE) - 8.0));
        for line in wrap(&words.say(said), SIZE, true, width - 44.0, 3) {
            top += line_height(SIZE);
            svg.text((34.0, top - 4.0), &line, Type::plain(SIZE).bold());
        }
        top += 6.0;
    }
    for (row, steps) in movement.steps.chunks(columns).enumerate() {
        let mut bottom = top;
        for (k, step) in steps.iter().enumerate() {
            let number = row * columns + k;
            let at = (10.0 + k as f64 * (w + GAP), top);
            let before = number.checked_sub(1).and_then(|i| movement.steps.get(i));
            let here = least.filter(|(i, _)| *i == number).map(|(_, s)| s);
            svg.open("step");
            picture(&mut svg, &frame, at, scene.as_ref(), step, before, here);
            number_at(&mut svg, (at.0 + 14.0, at.1 + 14.0), number + 1);
            bottom = bottom.max(under(&mut svg, (at.0, at.1 + frame.h), w, step, &words));
            svg.close();
        }
        top = bottom + 10.0;
    }
    for line in wrap(&words.say(ui::STRIP_NOTE), 12.5, false, width - 20.0, 4) {
        top += line_height(12.5);
        svg.text((10.0, top - 4.0), &line, Type::plain(12.5).soft());
    }
    let about = words.say(ui::STRIP_ALT.with("lift", lift.name.as_str()).with("steps", movement.steps.len()));
    svg.finish(width, top + 8.0, &style.font_family, &heading, &about, &[("px-per-m", frame.scale)])
}

/// The same scale and the same piece of the site in every picture.
struct Frame {
    w: f64,
    h: f64,
    scale: f64,
    /// Scene (s, z) at the lower left corner.
    corner: (f64, f64),
}

impl Frame {
    fn fit(movement: &BoomMovement, scene: Option<&ElevationScene>, w: f64) -> Option<Self> {
        let mut points: Vec<(f64, f64)> = Vec::new();
        for step in &movement.steps {
            points.extend(step.boom.iter().chain(&step.load).chain([&step.tool]));
        }
        if let Some(scene) = scene {
            points.extend(scene.machine.iter().flat_map(|p| p.outline.iter().copied()));
            points.extend(scene.wheels.iter().flat_map(|(s, z, r)| [(s - r, z - r), (s + r, z + r)]));
        }
        let first = *points.first()?;
        let low = points.iter().fold(first, |a, p| (a.0.min(p.0), a.1.min(p.1)));
        let high = points.iter().fold(first, |a, p| (a.0.max(p.0), a.1.max(p.1)));
        let (across, up) = (high.0 - low.0 + 1.2, high.1 - low.1 + 1.2);
        let scale = (w / across).min(w * 1.1 / up);
        let h = (up * scale).max(w * 0.5);
        let ok = scale.is_finite() && scale > 0.0 && h.is_finite();
        let spare = w / scale - across;
        ok.then_some(Self { w, h, scale, corner: (low.0 - 0.6 - spare / 2.0, low.1 - 0.5) })
    }
    fn px(&self, at: Px, p: (f64, f64)) -> Px {
        (at.0 + (p.0 - self.corner.0) * self.scale, at.1 + self.h - (p.1 - self.corner.1) * self.scale)
    }
}

fn picture(
    svg: &mut Svg,
    frame: &Frame,
    at: Px,
    scene: Option<&ElevationScene>,
    step: &BoomStep,
    before: Option<&BoomStep>,
    least: Option<&SmallestReserve>,
) {
    let all = |points: &[(f64, f64)]| points.iter().map(|p| frame.px(at, *p)).collect::<Vec<Px>>();
    let rect = Rect { x: at.0, y: at.1, w: frame.w, h: frame.h };
    if let Some(scene) = scene {
        ground(svg, frame, at, scene, rect);
        for part in &scene.machine {
            let fill = if part.kind == "cab" { Ink::Glass } else { Ink::Body };
            svg.polygon(&all(&part.outline), Some(fill), Some(Pen::new(Ink::Main, 1.0)));
        }
        for (s, z, r) in &scene.wheels {
            let c = frame.px(at, (*s, *z));
            svg.circle(c, r * frame.scale, Some(Ink::Soft), Some(Pen::new(Ink::Main, 1.0)));
            svg.circle(c, r * frame.scale * 0.5, Some(Ink::Glass), None);
        }
        for line in scene.lines.iter().filter(|l| l.aside_m.abs() < 2.0) {
            let c = frame.px(at, line.at);
            if rect.grown(-7.0).nearest(c) == c {
                crate::marks::conductor(svg, c);
            }
        }
    }
    if let Some(before) = before {
        let line: Vec<Px> = all(&before.boom);
        svg.polyline(&line, Pen::dashed(Ink::Soft, 1.8, "5 4"));
        if let Some(head) = line.last() {
            svg.line(*head, frame.px(at, before.tool), Pen::dashed(Ink::Soft, 1.4, "5 4"));
        }
        let load = all(&before.load);
        // So small an outline would be two dashes.
        let small = Rect::of(&load).is_some_and(|b| b.w.max(b.h) < 14.0);
        svg.polygon(&load, None, Some(Pen::dashed(Ink::Soft, 1.2, if small { "1.5 1.5" } else { "4 3" })));
    }
    let boom = all(&step.boom);
    svg.polyline(&boom, Pen::new(Ink::Main, 6.0));
    svg.polyline(&boom, Pen::new(Ink::Body, 3.0));
    let tool = frame.px(at, step.tool);
    if let Some(head) = boom.last() {
        svg.line(*head, tool, Pen::new(Ink::Main, 2.4));
    }
    let blade = 0.9 * frame.scale;
    let (sin, cos) = libm::sincos(step.tilt_rad);
    let hung = scene.is_some_and(|s| s.sling.is_some());
    if step.load.is_empty() && hung {
        svg.circle((tool.0, tool.1 + 4.0), 3.2, None, Some(Pen::new(Ink::Main, 2.0)));
    } else if step.load.is_empty() {
        svg.line(tool, (tool.0 + blade * cos, tool.1 - blade * sin), Pen::new(Ink::Main, 2.4));
    } else {
        let load = all(&step.load);
        if hung && let Some(bounds) = Rect::of(&load) {
            svg.line(tool, (bounds.x + bounds.w / 2.0, bounds.y), Pen::new(Ink::Main, 1.4));
        }
        svg.polygon(&load, Some(Ink::Load), None);
        svg.lines(&hatch(&load, 0.0, 5.0), Pen::new(Ink::Soft, 0.6));
        svg.polygon(&load, None, Some(Pen::new(Ink::Main, 1.6)));
    }
    if let Some(smallest) = least {
        svg.open("least");
        least_mark(svg, frame.px(at, smallest.tool));
        svg.close();
    }
    svg.rect(
        rect,
        None,
        Some(Pen::new(if least.is_some() { Ink::Main } else { Ink::Faint }, if least.is_some() { 2.2 } else { 1.0 })),
    );
}

/// Ground, as far as its height is known, and the landing.
fn ground(svg: &mut Svg, frame: &Frame, at: Px, scene: &ElevationScene, rect: Rect) {
    let known = |a: &(f64, Option<f64>)| a.1.map(|z| frame.px(at, (a.0, z)));
    let mut lines = Vec::new();
    for pair in scene.ground.windows(2) {
        if let (Some(a), Some(b)) = (known(&pair[0]), known(&pair[1]))
            && let Some(cut) = clip_segment(a, b, rect)
        {
            lines.push(cut);
        }
    }
    svg.lines(&lines, Pen::new(Ink::Main, 1.6));
    let (from, to, z) = scene.landing;
    if from.is_finite() && to.is_finite() && z.is_finite() {
        let (a, b) = (frame.px(at, (from.min(to), z)), frame.px(at, (from.max(to), z)));
        let inside = rect.grown(-1.0);
        if let Some((a, b)) = clip_segment(a, b, Rect { h: inside.h - 6.0, ..inside }) {
            crate::marks::landing(svg, a, b);
        }
    }
}

/// What angle indicator and extension marks read, and what is done; returns where it ends.
fn under(svg: &mut Svg, at: Px, w: f64, step: &BoomStep, words: &Words<'_>) -> f64 {
    let mut y = at.1 + 4.0;
    let reads = ui::STRIP_READS
        .with("angle", quantity::radians(step.angle_rad))
        .with("extension", crate::words::length(step.extension_m));
    for line in wrap(&words.say(reads), 14.0, true, w, 2) {
        y += line_height(14.0);
        svg.text((at.0, y - 4.0), &line, Type::plain(14.0).bold());
    }
    for line in wrap(&words.say(step.what.clone()), SIZE, false, w, MOST_LINES) {
        y += line_height(SIZE);
        svg.text((at.0, y - 4.0), &line, Type::plain(SIZE));
    }
    y
}

/// The step on whose way the least is left: whose line of the tool comes nearest to the place.
fn where_least(movement: &BoomMovement, smallest: &SmallestReserve) -> Option<usize> {
    let p = smallest.tool;
    if !(p.0.is_finite() && p.1.is_finite() && smallest.reserve.is_finite()) {
        return None;
    }
    let away = |i: usize| {
        let b = movement.steps[i].tool;
        let a = if i == 0 { b } else { movement.steps[i - 1].tool };
        let d = (b.0 - a.0, b.1 - a.1);
        let long = d.0 * d.0 + d.1 * d.1;
        let t = if long > 0.0 { (((p.0 - a.0) * d.0 + (p.1 - a.1) * d.1) / long).clamp(0.0, 1.0) } else { 0.0 };
        // Where one step ends and the next begins it belongs to the one that ends.
        libm::hypot(a.0 + d.0 * t - p.0, a.1 + d.1 * t - p.1) + i as f64 * 1e-6
    };
    (0..movement.steps.len()).min_by(|a, b| away(*a).total_cmp(&away(*b)))
}

/// A lozenge: where the least is left.
fn least_mark(svg: &mut Svg, c: Px) {
    let ring = |r: f64| [(c.0, c.1 - r), (c.0 + r, c.1), (c.0, c.1 + r), (c.0 - r, c.1)];
    svg.polygon(&ring(9.0), Some(Ink::Sheet), Some(Pen::new(Ink::Danger, 2.4)));
    svg.polygon(&ring(3.6), Some(Ink::Danger), None);
}

fn number_at(svg: &mut Svg, c: Px, number: usize) {
    svg.circle(c, 11.0, Some(Ink::Main), Some(Pen::new(Ink::Sheet, 1.5)));
    let kind = Type::plain(14.0).bold().at(Anchor::Middle).ink(Ink::Sheet);
    svg.text((c.0, c.1 + 5.0), &number.to_string(), kind);
}

/// The movement without what is not a number; a step without a place is left out.
fn finite(movement: &BoomMovement) -> BoomMovement {
    let ok = |p: &(f64, f64)| p.0.is_finite() && p.1.is_finite();
    let mut movement = movement.clone();
    movement.steps.retain(|s| ok(&s.tool) && s.tilt_rad.is_finite());
    for step in &mut movement.steps {
        step.boom.retain(ok);
        step.load.retain(ok);
    }
    movement
}
