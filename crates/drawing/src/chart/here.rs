//! The point read: its box, its label, and what it says.

use super::Read;
use super::axes::Axes;
use crate::key::{Row, Swatch};
use crate::labels::{Placer, Rect, text_width};
use crate::marks::{block, block_size, dot};
use crate::style::Ink;
use crate::svg::{Anchor, Pen, Px, Svg, Type};
use crate::words::{Words, length, mass};
use planning::{ChartScene, LiftPlan};
use quantity::Quantity;
use wording::ui;

const SIZE: f64 = 13.0;

/// The box the point may lie in, px; at least as large as can be seen.
fn box_px(axes: &Axes, scene: &ChartScene) -> Option<Rect> {
    let ok = |p: (f64, f64)| p.0.is_finite() && p.1.is_finite();
    (ok(scene.low) && ok(scene.high) && ok(scene.at)).then_some(())?;
    let (a, b) = (axes.px(scene.low), axes.px(scene.high));
    Rect::of(&[a, b])
}

/// Keeps zone names off the point and off the values on the axes.
pub(crate) fn reserve_places(placer: &mut Placer, axes: &Axes, scene: &ChartScene, words: &Words<'_>) {
    let Some(rect) = box_px(axes, scene) else { return };
    placer.text(rect.grown(8.0));
    let (reach, height) = values(axes, scene, words);
    placer.text(reach.1);
    placer.text(height.1);
    let at = axes.px(scene.at);
    placer.text(Rect { x: at.0 - 1.0, y: at.1, w: 2.0, h: axes.plot.bottom() - at.1 });
    placer.text(Rect { x: axes.plot.x, y: at.1 - 1.0, w: at.0 - axes.plot.x, h: 2.0 });
}

/// Texts of reach and height at the axes, inside the plot.
fn values(axes: &Axes, scene: &ChartScene, words: &Words<'_>) -> ((String, Rect), (String, Rect)) {
    let at = axes.px(scene.at);
    let (reach, height) = (words.length(scene.at.0), words.length(scene.at.1));
    let (rw, hw) = (text_width(&reach, SIZE, true), text_width(&height, SIZE, true));
    let x = at.0.clamp(axes.plot.x + rw / 2.0 + 3.0, axes.plot.right() - rw / 2.0);
    let y = at.1.clamp(axes.plot.y + 9.0, axes.plot.bottom() - 30.0);
    (
        (reach, Rect::around((x, axes.plot.bottom() - 11.0), rw, 16.0)),
        (height, Rect { x: axes.plot.x + 5.0, y: y - 8.0, w: hw, h: 16.0 }),
    )
}

pub(crate) fn draw(svg: &mut Svg, placer: &mut Placer, axes: &Axes, scene: &ChartScene, words: &Words<'_>) {
    let Some(rect) = box_px(axes, scene) else { return };
    let at: Px = axes.px(scene.at);
    svg.open("here");
    svg.lines(&[((axes.plot.x, at.1), at), ((at.0, axes.plot.bottom()), at)], Pen::dashed(Ink::Main, 1.2, "8 3 2 3"));
    svg.rect(rect, None, Some(Pen::new(Ink::Sheet, 5.0)));
    svg.rect(rect, None, Some(Pen::new(Ink::Main, 2.2)));
    dot(svg, at);
    let ((reach, reach_box), (height, height_box)) = values(axes, scene, words);
    block(svg, &[reach], reach_box, Type::plain(SIZE).bold().halo());
    let kind = Type::plain(SIZE).bold().halo().at(Anchor::Start);
    svg.text((height_box.x, height_box.bottom() - 4.0), &height, kind);

    let mut text = vec![words.say(ui::THIS_LIFT)];
    text.push(match scene.capacity() {
        Some(capacity) => {
            let capacity = mass(capacity);
            words.say(ui::LOAD_OF_CAPACITY.with("load", mass(scene.load_kg)).with("capacity", capacity))
        }
        None => words.say(ui::NOT_PERMITTED),
    });
    let kind = Type::plain(SIZE).bold();
    let (w, h) = block_size(&text, SIZE, true);
    let placed = placer.place(at, w + 12.0, h + 6.0, 12.0, 45.0);
    svg.line(at, placed.rect.nearest(at), Pen::new(Ink::Main, 1.4));
    svg.rect(placed.rect, Some(Ink::Sheet), Some(Pen::new(Ink::Main, 1.4)));
    block(svg, &text, Rect { y: placed.rect.y + 3.0, ..placed.rect }, kind);
    svg.close();
}

/// Key: what was read, and on what it rests.
pub(crate) fn rows(lift: &LiftPlan, scene: &ChartScene, words: &Words<'_>) -> Vec<Row> {
    let mut rows = Vec::new();
    let load = format!("{}: {}", words.say(ui::LOAD_UP_TO), words.mass(scene.load_kg));
    rows.push(Row::new(Swatch::Strong, format!("{load} ({})", lift.load.name)));
    match scene.zone.and_then(|z| scene.zones.get(z)) {
        Some(zone) => {
            let capacity = mass(zone.counted_kg);
            let capacity = ui::ZONE_CAPACITY.with("zone", zone.name.as_str()).with("capacity", capacity);
            let share = Quantity::ratio(zone.reserve.abs());
            let left = if zone.reserve >= 0.0 { ui::RESERVE_OF } else { ui::RESERVE_OVER }.with("share", share);
            rows.push(Row::new(Swatch::Strong, format!("{}; {}", words.say(capacity), words.say(left))));
        }
        None => rows.push(Row::new(Swatch::Strong, words.say(ui::NO_ZONE))),
    }
    rows.push(Row::new(Swatch::Dot, words.say(ui::CHART_POINT)));
    rows.push(Row::new(Swatch::PointBox, words.say(ui::POINT_BOX)));
    rows.push(Row::new(Swatch::None, words.pair(ui::REACH, &words.say(scene.datum.clone()))));
    rows.push(Row::new(Swatch::None, words.say(ui::RATED_LOAD_CENTRE.with("distance", length(scene.load_centre_m)))));
    if let Some(cap) = scene.cap_kg {
        rows.push(Row::new(Swatch::None, words.say(ui::CAPACITY_CAP.with("capacity", mass(cap)))));
    }
    rows
}
