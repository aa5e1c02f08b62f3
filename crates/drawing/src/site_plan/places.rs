//! Landings and stands.

use super::labels::Need;
use super::looks::{self, SiteMark};
use super::map::{Map, sound};
use super::{Sheet, SiteStand};
use crate::style::Ink;
use crate::svg::Pen;
use crate::words::{Words, length, mass};
use geometry::DVec2;
use site::Site;
use wording::ui;

pub(crate) fn landings(sheet: &mut Sheet, map: &Map, site: &Site, words: &Words<'_>) {
    sheet.svg.open("landings");
    for landing in site.landings.iter().filter(|l| sound(l.at)) {
        let heading = landing.approach.map_or(0.0, |a| a.heading);
        let (sin, cos) = libm::sincos(if heading.is_finite() { heading } else { 0.0 });
        let (along, across) = (DVec2::new(cos, sin), DVec2::new(-sin, cos));
        let half = if sound(landing.size) { landing.size * 0.5 } else { DVec2::ZERO };
        // A landing is seen at every scale.
        let half = half.max(DVec2::splat(4.0 / map.scale));
        let corner = |s: f64, t: f64| map.px(landing.at + along * (half.x * s) + across * (half.y * t));
        let ring = vec![corner(-1.0, -1.0), corner(1.0, -1.0), corner(1.0, 1.0), corner(-1.0, 1.0)];
        looks::draw(&mut sheet.svg, &[ring], SiteMark::Landing);
        if landing.approach.is_some() {
            // Carried in the direction of the arrow, from outside.
            let (tip, tail) = (corner(-0.2, 0.0), map.px(landing.at - along * (half.x + 26.0 / map.scale)));
            sheet.svg.line(tail, tip, Pen::new(Ink::Main, 1.6));
            let (x, y) = (tip.0 - cos * 7.0, tip.1 + sin * 7.0);
            sheet.svg.polygon(
                &[tip, (x - sin * 3.5, y - cos * 3.5), (x + sin * 3.5, y + cos * 3.5)],
                Some(Ink::Main),
                None,
            );
        }
        sheet.labels.mark(map.px(landing.at), 14.0);
        sheet.marks.insert(SiteMark::Landing);
        let rating = match landing.rating.as_ref().map(|r| (r.mass, &r.by)) {
            Some((Some(rated), _)) => words.say(ui::SITE_CARRIES.with("mass", mass(quantity::Si::si(&rated)))),
            Some((None, by)) => words.say(ui::SITE_RATED_BY.with("by", by)),
            None => words.say(ui::SITE_CARRIES_NOT_KNOWN),
        };
        let level = words.say(ui::SITE_LEVEL.with("level", length(landing.level)));
        let area = 4.0 * half.x * half.y * map.scale * map.scale;
        sheet.labels.add(map.px(landing.at), &landing.name, &[level, rating], Need::High, area, Ink::Main);
    }
    sheet.svg.close();
}

pub(crate) fn stands(sheet: &mut Sheet, map: &Map, stands: &[SiteStand], words: &Words<'_>) {
    sheet.svg.open("stands");
    for stand in stands.iter().filter(|s| sound(s.at)) {
        let heading = stand.heading.filter(|h| h.is_finite());
        looks::stand(&mut sheet.svg, map.px(stand.at), heading);
        sheet.labels.mark(map.px(stand.at), 22.0);
        sheet.marks.insert(SiteMark::Stand);
        let facts = if heading.is_none() { vec![words.say(ui::SITE_HEADING_NOT_GIVEN)] } else { Vec::new() };
        sheet.labels.add(map.px(stand.at), &stand.name, &facts, Need::High, 0.0, Ink::Main);
    }
    sheet.svg.close();
}
