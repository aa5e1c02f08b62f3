//! Dimension lines: reach, lift height, boom angle, extension.

use super::frame::{BELOW, Frame};
use super::notes;
use crate::labels::{Placer, Rect};
use crate::marks::{block, block_size, dimension};
use crate::style::Ink;
use crate::svg::{Pen, Px, Svg, Type, n};
use crate::words::Words;
use planning::{ElevationScene, LiftPlan};
use wording::ui;

/// Size of dimension text, px.
const SIZE: f64 = 13.0;

pub(crate) fn draw(
    svg: &mut Svg,
    placer: &mut Placer,
    frame: &Frame,
    scene: &ElevationScene,
    lift: &LiftPlan,
    words: &Words<'_>,
) {
    let finite = |p: (f64, f64)| p.0.is_finite() && p.1.is_finite();
    if finite(scene.datum) && finite(scene.chart_point) {
        reach(svg, placer, frame, scene, &[words.pair(ui::REACH, &words.length(notes::reach(lift, scene)))]);
        let text = [words.say(ui::HEIGHT), words.length(notes::height(lift, scene))];
        height(svg, placer, frame, scene, &text);
        svg.open("chart-point");
        crate::marks::cross(svg, frame.px(scene.chart_point));
        svg.close();
    }
    boom_angle(svg, placer, frame, scene, words);
    extension(svg, placer, frame, scene, words);
}

fn reach(svg: &mut Svg, placer: &mut Placer, frame: &Frame, scene: &ElevationScene, text: &[String]) {
    let (datum, point) = (frame.px(scene.datum), frame.px(scene.chart_point));
    let y = frame.plot.bottom() - BELOW + 40.0;
    svg.open("reach");
    let thin = Pen::dashed(Ink::Soft, 0.9, "7 3");
    svg.lines(&[(datum, (datum.0, y + 5.0)), (point, (point.0, y + 5.0))], thin);
    dimension(svg, (datum.0, y), (point.0, y));
    let (w, h) = block_size(text, SIZE, true);
    let middle = f64::midpoint(datum.0, point.0).clamp(frame.plot.x + w / 2.0, frame.plot.right() - w / 2.0);
    // Below the line where it is too short to be broken by the text.
    let inside = (point.0 - datum.0).abs() > w + 30.0;
    let rect = Rect::around((middle, if inside { y } else { y + 14.0 }), w, h);
    on_sheet(svg, text, rect);
    svg.close();
    placer.text(rect);
    placer.line(datum, (datum.0, y));
    placer.line(point, (point.0, y));
}

fn height(svg: &mut Svg, placer: &mut Placer, frame: &Frame, scene: &ElevationScene, text: &[String]) {
    let (datum, point) = (frame.px(scene.datum), frame.px(scene.chart_point));
    let (w, h) = block_size(text, SIZE, true);
    let x = frame.plot.right() + 6.0 + w.min(50.0) / 2.0;
    svg.open("height");
    let thin = Pen::dashed(Ink::Soft, 0.9, "7 3");
    svg.lines(&[(datum, (x + 5.0, datum.1)), (point, (x + 5.0, point.1))], thin);
    dimension(svg, (x, datum.1), (x, point.1));
    let centre = f64::midpoint(datum.1, point.1);
    let inside = (datum.1 - point.1).abs() > h + 24.0;
    let y = if inside { centre } else { datum.1.min(point.1) - h / 2.0 - 20.0 };
    let rect = Rect::around((x, y), w, h);
    on_sheet(svg, text, rect);
    svg.close();
    placer.text(rect);
    placer.line(point, (x, point.1));
}

fn boom_angle(svg: &mut Svg, placer: &mut Placer, frame: &Frame, scene: &ElevationScene, words: &Words<'_>) {
    let Some(first) = scene.boom.first() else { return };
    let along = libm::atan2(first.3 - first.1, first.2 - first.0);
    let angle = along - pitch(scene);
    let pivot = frame.px((first.0, first.1));
    let length = libm::hypot(first.2 - first.0, first.3 - first.1) * frame.scale;
    let r = (length * 0.55).clamp(24.0, 70.0);
    // The angle is counted from the machine's own longitudinal axis.
    let base = along - angle;
    let at = |a: f64, r: f64| (pivot.0 + r * libm::cos(a), pivot.1 - r * libm::sin(a));
    let (from, to) = (at(base, r), at(along, r));
    svg.open("boom-angle");
    svg.line(pivot, at(base, r + 14.0), Pen::dashed(Ink::Main, 0.9, "7 3"));
    let sweep = i32::from(angle < 0.0);
    let large = i32::from(angle.abs() > core::f64::consts::PI);
    svg.path(
        &format!("M{} {}A{r} {r} 0 {large} {sweep} {} {}", n(from.0), n(from.1), n(to.0), n(to.1), r = n(r)),
        None,
        Some(Pen::new(Ink::Main, 1.1)),
    );
    let text = [words.say(ui::BOOM_ANGLE), words.angle(angle)];
    label(svg, placer, at(base + angle / 2.0, r), &text, (base + angle / 2.0).to_degrees());
    svg.close();
}

fn extension(svg: &mut Svg, placer: &mut Placer, frame: &Frame, scene: &ElevationScene, words: &Words<'_>) {
    let (Some(first), Some(last)) = (scene.boom.first(), scene.boom.last()) else { return };
    let extension = drawn_extension(*first, *last);
    let along = libm::atan2(last.3 - last.1, last.2 - last.0);
    let up = (-libm::sin(along), libm::cos(along));
    let deepest = scene.boom.iter().map(|b| b.4).fold(0.0, f64::max);
    let off = deepest / 2.0 + 14.0 / frame.scale;
    // Measured back from the tip along the boom: by so much it was run out.
    let back = (last.2 - extension * libm::cos(along), last.3 - extension * libm::sin(along));
    let shifted = |p: (f64, f64)| frame.px((p.0 + up.0 * off, p.1 + up.1 * off));
    let (a, b) = (shifted(back), shifted((last.2, last.3)));
    svg.open("extension");
    if extension * frame.scale > 2.0 {
        let foot = |p: (f64, f64)| frame.px((p.0 + up.0 * deepest / 2.0, p.1 + up.1 * deepest / 2.0));
        let over =
            |p: (f64, f64)| frame.px((p.0 + up.0 * (off + 4.0 / frame.scale), p.1 + up.1 * (off + 4.0 / frame.scale)));
        let tip = (last.2, last.3);
        svg.lines(&[(foot(back), over(back)), (foot(tip), over(tip))], Pen::new(Ink::Soft, 0.9));
        dimension(svg, a, b);
        placer.line(a, b);
    }
    let text = [words.say(ui::EXTENSION), words.length(extension)];
    let middle = (f64::midpoint(a.0, b.0), f64::midpoint(a.1, b.1));
    label(svg, placer, middle, &text, along.to_degrees() + 90.0);
    svg.close();
}

/// Pitch of the machine as drawn, rad: of the line through the bottoms of its wheels. 0 without
/// two wheels.
fn pitch(scene: &ElevationScene) -> f64 {
    let mut wheels = scene.wheels.clone();
    wheels.sort_by(|a, b| a.0.total_cmp(&b.0));
    let (Some(rear), Some(front)) = (wheels.first(), wheels.last()) else { return 0.0 };
    let between = libm::hypot(front.0 - rear.0, front.1 - rear.1);
    if between < 0.1 {
        return 0.0;
    }
    // The line of the hubs, less what it rises by because one wheel is larger.
    let larger = ((front.2 - rear.2) / between).clamp(-1.0, 1.0);
    libm::atan2(front.1 - rear.1, front.0 - rear.0) - libm::asin(larger)
}

/// How far the boom is run out as drawn, m: its length less that of the base section, in which
/// the others hide when retracted.
fn drawn_extension(base: Section, tip: Section) -> f64 {
    let length = |to: (f64, f64)| libm::hypot(to.0 - base.0, to.1 - base.1);
    (length((tip.2, tip.3)) - length((base.2, base.3))).max(0.0)
}

/// A boom section of the scene.
type Section = (f64, f64, f64, f64, f64);

/// Angle and extension of the boom in the picture, rad and m.
pub(crate) fn boom_as_drawn(scene: &ElevationScene) -> Option<(f64, f64)> {
    let (first, last) = (scene.boom.first()?, scene.boom.last()?);
    let along = libm::atan2(first.3 - first.1, first.2 - first.0);
    Some((along - pitch(scene), drawn_extension(*first, *last)))
}

/// A bold text in the gap of a dimension line.
fn on_sheet(svg: &mut Svg, text: &[String], rect: Rect) {
    svg.rect(rect.grown(1.0), Some(Ink::Sheet), None);
    block(svg, text, rect, Type::plain(SIZE).bold());
}

/// A bold label near `anchor`, with a leader where it had to go further.
fn label(svg: &mut Svg, placer: &mut Placer, anchor: Px, text: &[String], prefer: f64) {
    notes::place_if_clear(svg, placer, anchor, text, prefer, Type::plain(SIZE).bold());
}
