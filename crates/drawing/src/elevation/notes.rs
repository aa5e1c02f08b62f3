//! Labels, scale bar and key of the side elevation.

use super::frame::Frame;
use super::{dimensions, ground, overhead};
use crate::key::{Row, Swatch};
use crate::labels::{Placed, Placer, Rect};
use crate::marks::{block, block_size};
use crate::style::Ink;
use crate::svg::{Anchor, Pen, Px, Svg, Type};
use crate::words::{Words, length};
use planning::{ElevationScene, LiftPlan, LineScene};
use wording::ui;

/// The plan's reach, or the drawn one where the plan has none, m.
pub(crate) fn reach(lift: &LiftPlan, scene: &ElevationScene) -> f64 {
    lift.stand.reach_m.filter(|v| v.is_finite()).unwrap_or(scene.chart_point.0 - scene.datum.0)
}
/// The plan's lift height, or the drawn one, m.
pub(crate) fn height(lift: &LiftPlan, scene: &ElevationScene) -> f64 {
    lift.stand.height_m.filter(|v| v.is_finite()).unwrap_or(scene.chart_point.1 - scene.datum.1)
}

/// Places a block of text near `anchor`, wherever there is most room.
pub(crate) fn place(svg: &mut Svg, placer: &mut Placer, anchor: Px, text: &[String], prefer: f64, kind: Type) {
    let (w, h) = block_size(text, kind.size, kind.bold);
    let placed = placer.place(anchor, w, h, 7.0, prefer);
    set(svg, anchor, text, placed, kind);
}

/// The same, but left out where it would cover something; the key says it too.
pub(crate) fn place_if_clear(svg: &mut Svg, placer: &mut Placer, anchor: Px, text: &[String], prefer: f64, kind: Type) {
    let (w, h) = block_size(text, kind.size, kind.bold);
    if let Some(placed) = placer.place_if_clear(anchor, w, h, 7.0, prefer) {
        set(svg, anchor, text, placed, kind);
    }
}

fn set(svg: &mut Svg, anchor: Px, text: &[String], placed: Placed, kind: Type) {
    if placed.far {
        svg.line(anchor, placed.rect.nearest(anchor), Pen::new(Ink::Soft, 0.9));
    }
    block(svg, text, placed.rect, kind.halo());
}

pub(crate) fn labels(
    svg: &mut Svg,
    placer: &mut Placer,
    frame: &Frame,
    scene: &ElevationScene,
    lift: &LiftPlan,
    words: &Words<'_>,
) {
    let kind = Type::plain(12.5);
    // A narrow picture leaves to the key what the key says anyway.
    let roomy = frame.plot.w >= 460.0;
    svg.open("labels");
    for (i, line) in scene.lines.iter().enumerate().filter(|(_, l)| overhead::drawn(l) && frame.shows(l.at)) {
        // The dimension names the line already.
        if !roomy && overhead::dimensioned(line) {
            continue;
        }
        let mut text = vec![words.say(ui::LINE_NUMBER.with("number", i + 1))];
        text.push(match line.required_m {
            Some(required) => words.say(ui::LINE_KEEP.with("distance", length(required))),
            None => words.say(ui::VOLTAGE_NOT_KNOWN),
        });
        if roomy && line.aside_m.abs() >= overhead::IN_PLANE {
            text.push(words.say(ui::LINE_ASIDE.with("distance", length(line.aside_m.abs()))));
        }
        place(svg, placer, frame.px(line.at), &text, 90.0, kind.ink(Ink::Danger));
    }
    let load =
        Rect::of(&frame.all(&scene.load)).map_or_else(|| frame.px(scene.load_centre), |r| (r.x + r.w / 2.0, r.y));
    place_if_clear(svg, placer, load, &[words.say(ui::LOAD), words.load(lift)], 80.0, kind);
    let (left, right) = frame.span();
    let (from, to) = (scene.landing.0.min(scene.landing.1).max(left), scene.landing.0.max(scene.landing.1).min(right));
    if roomy && to > from && scene.landing.2.is_finite() {
        let under = frame.px((f64::midpoint(from, to), scene.landing.2));
        place_if_clear(svg, placer, (under.0, under.1 + 6.0), &[words.place(lift)], -90.0, kind);
    }
    for stretch in ground::stretches(scene, left, right).iter().filter(|s| !s.known) {
        let line = frame.all(&stretch.points);
        let (Some(a), Some(b)) = (line.first(), line.last()) else { continue };
        if b.0 - a.0 > 6.0 {
            let middle = (f64::midpoint(a.0, b.0), f64::midpoint(a.1, b.1));
            place_if_clear(svg, placer, middle, &[words.say(ui::GROUND_NOT_KNOWN)], -90.0, kind);
        }
    }
    svg.close();
}

/// Scale bar at the lower left, and where it ends.
pub(crate) fn scale_bar(svg: &mut Svg, frame: &Frame, words: &Words<'_>) -> f64 {
    let y = frame.plot.bottom() + 6.0;
    let unit_px = frame.scale * words.metres_per_unit;
    let room = (frame.plot.w * 0.32).max(60.0);
    let step = [20.0, 10.0, 5.0, 2.0, 1.0, 0.5].into_iter().find(|s| s * unit_px * 2.0 <= room).unwrap_or(0.5);
    let x = frame.plot.x + 4.0;
    svg.open("scale-bar");
    for i in 0..2 {
        let r = Rect { x: x + f64::from(i) * step * unit_px, y, w: step * unit_px, h: 6.0 };
        svg.rect(r, Some(if i == 0 { Ink::Main } else { Ink::Sheet }), Some(Pen::new(Ink::Main, 1.0)));
    }
    let kind = Type::plain(12.0).at(Anchor::Middle);
    svg.text((x + 2.0, y + 20.0), "0", kind);
    // With a unit per half the middle mark is a whole number.
    if step >= 1.0 && step * unit_px > 26.0 {
        svg.text((x + step * unit_px, y + 20.0), &format!("{step:.0}"), kind);
    }
    svg.text((x + 2.0 * step * unit_px, y + 20.0), &format!("{:.0} {}", 2.0 * step, words.unit), kind);
    svg.close();
    y + 26.0
}

/// Rows of the key.
pub(crate) fn rows(lift: &LiftPlan, scene: &ElevationScene, frame: &Frame, words: &Words<'_>) -> Vec<Row> {
    let mut rows = Vec::new();
    let mass = words.load(lift);
    rows.push(Row::new(Swatch::Load, format!("{}: {}, {mass}", words.say(ui::LOAD), lift.load.name)));
    rows.push(Row::new(Swatch::LoadCentre, words.say(ui::LOAD_GRAVITY)));
    rows.push(Row::new(Swatch::Landing, format!("{}: {}", words.place(lift), lift.landing)));
    rows.push(Row::new(Swatch::Point, words.say(ui::CHART_POINT)));
    if let Some((angle, extension)) = dimensions::boom_as_drawn(scene) {
        let angle = words.pair(ui::BOOM_ANGLE, &words.angle(angle));
        let extension = words.pair(ui::EXTENSION, &words.length(extension));
        rows.push(Row::new(Swatch::None, format!("{angle}; {extension}")));
    }
    for (i, line) in scene.lines.iter().enumerate() {
        rows.push(Row::new(Swatch::Line, line_text(i, line, frame, words)));
    }
    let (left, right) = frame.span();
    if ground::stretches(scene, left, right).iter().any(|s| !s.known) {
        rows.push(Row::new(Swatch::GroundUnknown, words.say(ui::GROUND_NOT_KNOWN)));
    }
    if let Some(chart) = &lift.chart {
        rows.push(Row::new(Swatch::None, words.pair(ui::REACH, &words.say(chart.datum.clone()))));
    }
    rows.push(Row::new(Swatch::None, slope_text(lift, words)));
    rows.push(Row::new(Swatch::None, format!("{} {}", words.say(ui::SHOWN_CLEAR), words.say(ui::SEEN_FROM_RIGHT))));
    rows
}

fn line_text(i: usize, line: &LineScene, frame: &Frame, words: &Words<'_>) -> String {
    let mut parts = vec![format!("{}: {}", words.say(ui::LINE_NUMBER.with("number", i + 1)), line.name)];
    parts.push(match line.required_m {
        Some(required) => words.say(ui::LINE_KEEP.with("distance", length(required))),
        None => words.say(ui::LINE_NO_REQUIRED),
    });
    if let Some(nearest) = line.nearest_m {
        parts.push(words.say(ui::LINE_NEAREST.with("distance", length(nearest))));
    }
    if line.aside_m.abs() >= overhead::IN_PLANE {
        parts.push(words.say(ui::LINE_ASIDE.with("distance", length(line.aside_m.abs()))));
    }
    if !(overhead::drawn(line) && frame.shows(line.at)) {
        parts.push(words.say(ui::OUTSIDE_PICTURE));
    }
    parts.join("; ")
}

/// Slopes of the stand in words, or that they are not known.
fn slope_text(lift: &LiftPlan, words: &Words<'_>) -> String {
    let slope = |r: evidence::Ranged| quantity::Quantity::slope(r.nominal.abs());
    let (Some(along), Some(across)) = (lift.stand.slope_along, lift.stand.slope_across) else {
        return words.say(ui::SLOPE_NOT_KNOWN);
    };
    let along = if along.nominal >= 0.0 { ui::NOSE_UP } else { ui::NOSE_DOWN }.with("slope", slope(along));
    let across = if across.nominal >= 0.0 { ui::LEFT_LOW } else { ui::RIGHT_LOW }.with("slope", slope(across));
    format!("{}, {}.", words.say(along), words.say(across))
}
