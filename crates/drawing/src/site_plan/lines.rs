//! Overhead lines in plan, with their voltage.

use super::Sheet;
use super::labels::Need;
use super::looks::{self, SiteMark};
use super::map::{Map, sound};
use crate::hatch::clip_segment;
use crate::style::Ink;
use crate::svg::Px;
use crate::words::Words;
use geometry::DVec2;
use quantity::{Dimension, Quantity, Si as _};
use site::{PowerLine, Site};
use wording::ui;

pub(crate) fn draw(sheet: &mut Sheet, map: &Map, site: &Site, words: &Words<'_>) {
    sheet.svg.open("lines");
    for line in &site.lines {
        let mut longest: Option<(f64, Px)> = None;
        for (a, b) in pieces(line) {
            let Some((a, b)) = clip_segment(map.px(a), map.px(b), map.plot) else { continue };
            looks::overhead(&mut sheet.svg, a, b);
            sheet.labels.line(a, b);
            let length = libm::hypot(b.0 - a.0, b.1 - a.1);
            if longest.is_none_or(|(l, _)| length > l) {
                longest = Some((length, (f64::midpoint(a.0, b.0), f64::midpoint(a.1, b.1))));
            }
        }
        let voltage = match line.voltage {
            Some(voltage) => words.quantity(Quantity::new(voltage.si(), Dimension::Voltage)),
            None => words.say(ui::VOLTAGE_NOT_KNOWN),
        };
        let mut facts = vec![voltage];
        if line.spans.is_empty() {
            facts.push(words.say(ui::SITE_HEIGHT_NOT_KNOWN));
        }
        match longest {
            Some((_, at)) => {
                sheet.marks.insert(SiteMark::Line);
                sheet.labels.add(at, &line.name, &facts, Need::Must, 0.0, Ink::Danger);
            }
            // A line is never dropped without a word.
            None => sheet.notes.push(crate::key::Row::new(
                crate::key::Swatch::Strong,
                words.say(ui::SITE_LINE_OUTSIDE.with("line", line.name.as_str()).with("voltage", facts[0].as_str())),
            )),
        }
    }
    sheet.svg.close();
}

/// Its spans in plan, or its course where heights are not known.
fn pieces(line: &PowerLine) -> Vec<(DVec2, DVec2)> {
    let spans = line.spans.iter().map(|s| (s.from.truncate(), s.to.truncate()));
    let course = line.course.windows(2).map(|w| (w[0], w[1]));
    let all: Vec<(DVec2, DVec2)> = if line.spans.is_empty() { course.collect() } else { spans.collect() };
    all.into_iter().filter(|(a, b)| sound(*a) && sound(*b)).collect()
}
