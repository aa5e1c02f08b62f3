//! A site seen from above: relief, what stands, is dug and lies in the ground, zones, lines, landings.
//!
//! The relief is drawn as runs of a raster of a few pixels, not as an embedded picture: five shades
//! and the theme's own sheet below them, readable on a dark screen, under a megabyte, and no encoder.

mod furniture;
mod labels;
mod lines;
mod looks;
mod map;
mod places;
mod relief;
mod rules;
mod set_backs;
mod things;

pub(crate) use furniture::{round_step, scale_bar};
pub(crate) use labels::number as draw_number;
pub(crate) use looks::{SiteMark, draw as draw_mark, kind_name, overhead, row, swatch};
pub(crate) use map::{Map, sound};
pub(crate) use set_backs::set_back_line;

use crate::key::Row;
use crate::style::Style;
use crate::svg::{Pen, Svg};
use crate::words::Words;
use geometry::DVec2;
use site::Site;
use std::collections::BTreeSet;
use wording::{Wording, ui};

/// A place where a machine stands or is meant to.
#[derive(Debug, Clone, PartialEq)]
pub struct SiteStand {
    /// Name for people.
    pub name: String,
    /// Where, m in the site frame.
    pub at: DVec2,
    /// Heading, inside angle (rad counter-clockwise from east); `None`: not given.
    pub heading: Option<f64>,
    /// What its wheels ask beside excavations ([`planning::lift_lines`]); empty: nothing beyond the planning lines.
    pub set_backs: Vec<planning::SetBackLine>,
}

/// A site from above as SVG, north up, with the stands given.
///
/// One scale for both axes; the root carries it as `data-px-per-m`, with the picture position of the
/// place `data-east0`, `data-north0` (m) as `data-x0` and `data-y0`. What is not known is said: ground
/// without heights is hatched, things without a height, lines without a voltage, excavations without
/// a depth say so. Around every excavation of known depth runs its planning line, and where a stand brings what its
/// wheels ask of the soil, that line too. A name without room is a number in a circle, and stands below. Where nothing on the site has a place, the drawing says that.
pub fn site_plan(site: &Site, stands: &[SiteStand], wording: &Wording, style: &Style) -> String {
    let words = Words::new(wording);
    let heading = words.say(ui::SITE_PLAN);
    let width = style.width();
    let mut svg = Svg::new(style.theme);
    let top = crate::marks::title(&mut svg, &heading, &site.name, 10.0, width - 20.0);
    let Some(map) = Map::fit(site, stands, width, top) else {
        return crate::marks::instead(style, &heading, &site.name, &words.say(ui::SITE_NO_EXTENT));
    };
    let mut sheet = Sheet { svg, labels: labels::Labels::new(&map, width), marks: BTreeSet::new(), notes: Vec::new() };

    let north = furniture::north_room(&mut sheet, &map, &words);
    relief::draw(&mut sheet, &map, site, &words);
    rules::zones(&mut sheet, &map, site, &words);
    rules::buried(&mut sheet, &map, site, &words);
    let set_backs = set_backs::lines(site, stands);
    set_backs::draw(&mut sheet, &map, site, &set_backs, &words);
    rules::excavations(&mut sheet, &map, site, &set_backs, &words);
    things::draw(&mut sheet, &map, site, &words);
    places::landings(&mut sheet, &map, site, &words);
    places::stands(&mut sheet, &map, stands, &words);
    lines::draw(&mut sheet, &map, site, &words);
    sheet.svg.rect(map.plot, None, Some(Pen::new(crate::style::Ink::Main, 1.2)));
    crate::marks::north(&mut sheet.svg, map.plot, &north);
    let (mut rows, left_out) = sheet.labels.draw(&mut sheet.svg);

    let y = furniture::scale_bar(&mut sheet.svg, &map, &words);
    rows.extend(sheet.marks.iter().map(|mark| looks::row(*mark, &words)));
    rows.append(&mut sheet.notes);
    rows.extend(furniture::rows(site, &map, left_out, &words));
    let columns = if width >= 900.0 { 3 } else { 1 + usize::from(width >= 560.0) };
    let bottom = crate::key::draw(&mut sheet.svg, &rows, 10.0, y + 8.0, width - 20.0, columns);

    let s = &site.surroundings;
    let about = words.say(
        ui::SITE_PLAN_ALT
            .with("site", site.name.as_str())
            .with("things", s.things.len())
            .with("excavations", s.excavations.len())
            .with("buried", s.buried.len())
            .with("zones", s.zones.len())
            .with("lines", site.lines.len()),
    );
    let origin = map.px(map.south_west);
    let data = [
        ("px-per-m", map.scale),
        ("x0", origin.0),
        ("y0", origin.1),
        ("east0", map.south_west.x),
        ("north0", map.south_west.y),
    ];
    sheet.svg.finish(width, bottom + 8.0, &style.font_family, &heading, &about, &data)
}

/// What is being drawn: the picture, labels to be placed, and what the key must explain.
pub(crate) struct Sheet {
    pub(crate) svg: Svg,
    pub(crate) labels: labels::Labels,
    pub(crate) marks: BTreeSet<SiteMark>,
    pub(crate) notes: Vec<Row>,
}
