//! North, scale bar, and what the key says of the whole: sources, extent, gates.

use super::Sheet;
use super::map::Map;
use crate::key::{Row, Swatch};
use crate::labels::Rect;
use crate::style::Ink;
use crate::svg::{Anchor, Pen, Svg, Type};
use crate::words::{Words, length};
use site::Site;
use wording::ui;

/// The least of 1, 2, 5 times a power of ten that is no less than `least`; 1 where that is no number.
pub(crate) fn round_step(least: f64) -> f64 {
    if !(least.is_finite() && least > 0.0) {
        return 1.0;
    }
    let mut power = 1.0;
    while power > least {
        power /= 10.0;
    }
    while power * 10.0 <= least {
        power *= 10.0;
    }
    [1.0, 2.0, 5.0, 10.0].map(|f| f * power).into_iter().find(|s| *s >= least * (1.0 - 1e-9)).unwrap_or(power * 10.0)
}

/// Keeps the upper right corner free for the arrow to the north; its word.
pub(crate) fn north_room(sheet: &mut Sheet, map: &Map, words: &Words<'_>) -> String {
    let text = words.say(ui::NORTH);
    let w = crate::labels::text_width(&text, 12.0, true);
    sheet.labels.reserve(Rect { x: map.plot.right() - 32.0 - w, y: map.plot.y, w: w + 32.0, h: 46.0 });
    text
}

/// Scale bar in round numbers of the reader's unit, and where it ends.
pub(crate) fn scale_bar(svg: &mut Svg, map: &Map, words: &Words<'_>) -> f64 {
    let y = map.plot.bottom() + 7.0;
    let unit_px = map.scale * words.metres_per_unit;
    let room = (map.plot.w * 0.42).max(90.0);
    // Halves of the bar are round too.
    let mut half = round_step(room / 2.0 / unit_px);
    while half * 2.0 * unit_px > room {
        half = round_step(half / 2.6);
    }
    let x = map.plot.x + 4.0;
    svg.open("scale-bar");
    for i in 0..2 {
        let r = Rect { x: x + f64::from(i) * half * unit_px, y, w: half * unit_px, h: 6.0 };
        svg.rect(r, Some(if i == 0 { Ink::Main } else { Ink::Sheet }), Some(Pen::new(Ink::Main, 1.0)));
    }
    let kind = Type::plain(12.0).at(Anchor::Middle);
    svg.text((x + 2.0, y + 20.0), "0", kind);
    svg.text((x + 2.0 * half * unit_px, y + 20.0), &format!("{:.0} {}", 2.0 * half, words.unit), kind);
    svg.close();
    y + 26.0
}

/// Rows of the key that no mark stands for.
pub(crate) fn rows(site: &Site, map: &Map, left_out: usize, words: &Words<'_>) -> Vec<Row> {
    let mut rows = Vec::new();
    if left_out > 0 {
        rows.push(Row::new(Swatch::Strong, words.say(ui::SITE_NAMES_LEFT_OUT.with("count", left_out))));
    }
    for gate in &site.gates {
        let text = match gate.height {
            Some(height) => words.say(
                ui::SITE_GATE
                    .with("name", gate.name.as_str())
                    .with("width", length(gate.width))
                    .with("height", length(height)),
            ),
            None => words.say(ui::SITE_GATE_OPEN.with("name", gate.name.as_str()).with("width", length(gate.width))),
        };
        rows.push(Row::new(Swatch::None, text));
    }
    for surface in &site.ground.surfaces {
        let date = surface.date.clone().unwrap_or_else(|| words.say(ui::SITE_DATE_NOT_KNOWN));
        let text = ui::SITE_SOURCE
            .with("name", surface.name.as_str())
            .with("date", date)
            .with("accuracy", length(surface.accuracy));
        rows.push(Row::new(Swatch::None, words.say(text)));
    }
    let (low, high) = map.extent;
    let span = high - low;
    rows.push(Row::new(
        Swatch::None,
        words.say(ui::SITE_EXTENT.with("width", length(span.x)).with("height", length(span.y))),
    ));
    // Grid coordinates are written without marks between thousands.
    let number = |v: f64| format!("{:.0}", v.round() + 0.0).replace('-', "−");
    rows.push(Row::new(
        Swatch::None,
        words.say(
            ui::SITE_CORNERS
                .with("west", number(low.x))
                .with("south", number(low.y))
                .with("east", number(high.x))
                .with("north", number(high.y)),
        ),
    ));
    let frame = match site.epsg {
        Some(code) => words.say(ui::SITE_EPSG.with("code", code.to_string())),
        None => words.say(ui::SITE_EPSG_NONE),
    };
    rows.push(Row::new(Swatch::None, frame));
    rows
}
