//! Zones with their rule, excavations with their depth, buried things with their cover.

use super::Sheet;
use super::labels::Need;
use super::looks::{self, SiteMark, zone_mark};
use super::map::Map;
use super::set_backs::SetBack;
use crate::labels::Rect;
use crate::style::Ink;
use crate::svg::Px;
use crate::words::{Words, length};
use quantity::{Dimension, Quantity};
use site::{PlanShape, Site, ZoneRule};
use wording::ui;

/// Draws a shape's outlines and returns where its name belongs and its area, px and px².
pub(crate) fn shape(sheet: &mut Sheet, map: &Map, shape: &PlanShape, mark: SiteMark) -> Option<(Px, f64)> {
    let outlines: Vec<Vec<Vec<Px>>> =
        shape.outlines().iter().map(|o| map.rings(o)).filter(|rings| !rings.is_empty()).collect();
    for rings in &outlines {
        looks::draw(&mut sheet.svg, rings, mark);
    }
    // Of a strip, the middle piece carries the name.
    let rings = outlines.get(outlines.len() / 2)?;
    let inside = Rect::of(&rings[0])?;
    sheet.marks.insert(mark);
    let middle = (inside.x + inside.w / 2.0, inside.y + inside.h / 2.0);
    let hollow =
        !crate::hatch::contains(&rings[0], middle) || rings[1..].iter().any(|h| crate::hatch::contains(h, middle));
    let at = if hollow { rings[0][0] } else { middle };
    Some((at, if hollow { 0.0 } else { inside.w * inside.h }))
}

pub(crate) fn zones(sheet: &mut Sheet, map: &Map, site: &Site, words: &Words<'_>) {
    sheet.svg.open("zones");
    for zone in &site.surroundings.zones {
        let mark = zone_mark(zone.rule);
        let Some((at, area)) = shape(sheet, map, &zone.shape, mark) else { continue };
        let mut facts = vec![rule(zone.rule, words)];
        if !zone.times.is_empty() {
            let clock = |m: u16| format!("{}:{:02}", m / 60, m % 60);
            facts.push(
                zone.times.iter().map(|t| format!("{}–{}", clock(t.from), clock(t.to))).collect::<Vec<_>>().join(", "),
            );
        }
        let ink = if mark == SiteMark::NoGo { Ink::Danger } else { Ink::Main };
        sheet.labels.add(at, &zone.name, &facts, Need::High, area, ink);
    }
    sheet.svg.close();
}

fn rule(rule: ZoneRule, words: &Words<'_>) -> String {
    match rule {
        ZoneRule::NoGo => words.say(ui::SITE_ZONE_NO_GO),
        ZoneRule::People => words.say(ui::SITE_ZONE_PEOPLE),
        ZoneRule::OneWay { heading } => words.say(ui::SITE_ZONE_ONE_WAY.with("direction", compass(heading))),
        ZoneRule::Speed { most } => words.say(ui::SITE_ZONE_SPEED.with("speed", Quantity::new(most, Dimension::Speed))),
        ZoneRule::Soft => words.say(ui::SITE_ZONE_SOFT),
        ZoneRule::SlopeLimit { most } => words.say(ui::SITE_ZONE_SLOPE.with("slope", Quantity::slope(most))),
    }
}

/// The nearest of eight compass points to a heading from east, counter-clockwise.
fn compass(heading: f64) -> evidence::Message {
    let names = [
        ui::COMPASS_EAST,
        ui::COMPASS_NORTH_EAST,
        ui::COMPASS_NORTH,
        ui::COMPASS_NORTH_WEST,
        ui::COMPASS_WEST,
        ui::COMPASS_SOUTH_WEST,
        ui::COMPASS_SOUTH,
        ui::COMPASS_SOUTH_EAST,
    ];
    let eighth = (heading / std::f64::consts::FRAC_PI_4).round().rem_euclid(8.0);
    names[(eighth as usize).min(7)].message()
}

pub(crate) fn buried(sheet: &mut Sheet, map: &Map, site: &Site, words: &Words<'_>) {
    sheet.svg.open("buried");
    for thing in &site.surroundings.buried {
        let Some((at, area)) = shape(sheet, map, &thing.shape, SiteMark::Buried) else { continue };
        let cover = match thing.cover.filter(|c| c.low.is_finite()) {
            Some(cover) => words.say(ui::SITE_COVER.with("cover", length(cover.low))),
            None => words.say(ui::SITE_COVER_NOT_KNOWN),
        };
        sheet.labels.add(at, &thing.name, &[cover], Need::Low, area, Ink::Main);
    }
    sheet.svg.close();
}

pub(crate) fn excavations(sheet: &mut Sheet, map: &Map, site: &Site, set_backs: &[SetBack<'_>], words: &Words<'_>) {
    sheet.svg.open("excavations");
    for (i, dug) in site.surroundings.excavations.iter().enumerate() {
        let outline = PlanShape::Area(dug.outline.clone());
        let Some((at, area)) = shape(sheet, map, &outline, SiteMark::Excavation) else { continue };
        let depth = match dug.depth.filter(|d| d.high.is_finite()) {
            Some(depth) => words.say(ui::SITE_DEPTH.with("depth", length(depth.high))),
            None => words.say(ui::SITE_DEPTH_NOT_KNOWN),
        };
        let asked = set_backs.iter().filter(|s| s.line.excavation == i).map(|s| s.said(words));
        let facts: Vec<String> = std::iter::once(depth).chain(asked).collect();
        sheet.labels.add(at, &dug.name, &facts, Need::High, area, Ink::Main);
    }
    sheet.svg.close();
}
