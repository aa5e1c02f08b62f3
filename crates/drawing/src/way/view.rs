//! The way from above, among what stands, is dug, closed or overhead.

use super::course::{Change, Course};
use super::looks;
use crate::hatch::{clip_polygon, clip_segment};
use crate::labels::{Placer, Rect, wrap};
use crate::marks::{block, block_size};
use crate::site_plan::{Map, SiteMark, sound};
use crate::style::Ink;
use crate::svg::{Pen, Px, Svg, Type};
use crate::words::Words;
use geometry::DVec2;
use planning::{LiftPlan, LiftWay, WayThing, WayThingKind};
use site::{PlanArea, ThingKind};
use std::collections::BTreeSet;
use wording::ui;

/// Ground shown around the way, m.
const AROUND: f64 = 2.5;
/// Least width and height shown, m.
const LEAST: f64 = 12.0;
/// Size of labels, px.
const SIZE: f64 = 12.5;

/// The picture's map; `None` if nothing has a place.
pub(super) fn fit(lift: &LiftPlan, way: &LiftWay, course: Option<&Course>, width: f64, top: f64) -> Option<Map> {
    let mut points: Vec<DVec2> = way.begins.iter().map(|p| DVec2::from(*p)).collect();
    points.push(DVec2::new(lift.stand.east_m, lift.stand.north_m));
    if let Some(course) = course {
        points.extend(course.places.iter().map(|p| p.at));
        points.extend(course.swept.iter().flatten());
        points.extend(course.places.first().into_iter().flat_map(|p| course.machine_at(p)).flatten());
        points.extend(course.places.last().into_iter().flat_map(|p| course.machine_at(p)).flatten());
    } else {
        points.extend(way.refused.as_ref().and_then(|r| r.at).map(DVec2::from));
    }
    points.retain(|p| sound(*p));
    let (low, high) = points.iter().map(|p| (*p, *p)).reduce(|a, b| (a.0.min(b.0), a.1.max(b.1)))?;
    // Where nothing is driven there is room for what is said.
    let aside = if course.is_some() { AROUND } else { 3.0 * AROUND };
    let extent = (low - DVec2::splat(aside), high + DVec2::splat(aside));
    let middle = (low + high) * 0.5;
    let span = (extent.1 - extent.0).max(DVec2::splat(LEAST));
    let plot_w = (width - 20.0).floor();
    let most_h = if width < 600.0 { width * 1.25 } else { (width * 0.62).min(620.0) };
    let scale = (plot_w / span.x).min(most_h / span.y);
    if !(scale.is_finite() && scale > 0.0) {
        return None;
    }
    let plot = Rect { x: 10.0, y: top.ceil(), w: plot_w, h: (span.y * scale).ceil().max(150.0) };
    let south_west = middle - DVec2::new(plot.w, plot.h) / (2.0 * scale);
    Some(Map { plot, scale, south_west, extent })
}

/// Draws the view; returns the marks of the site that the key has to explain.
pub(super) fn draw(
    svg: &mut Svg,
    map: &Map,
    lift: &LiftPlan,
    way: &LiftWay,
    course: Option<&Course>,
    words: &Words<'_>,
) -> BTreeSet<SiteMark> {
    let mut marks = BTreeSet::new();
    let mut placer = Placer::new(map.plot);
    let north = words.say(ui::NORTH);
    let w = crate::labels::text_width(&north, 12.0, true) + 32.0;
    placer.text(Rect { x: map.plot.right() - w, y: map.plot.y, w, h: 46.0 });

    if let Some(course) = course {
        svg.open("swept");
        for ring in &course.swept {
            let ring: Vec<Px> = ring.iter().map(|p| map.px(*p)).collect();
            svg.polygon(&clip_polygon(&ring, map.plot), Some(Ink::Carries), Some(Pen::new(Ink::Carries, 0.8)));
        }
        svg.close();
    }
    let mut names = Vec::new();
    svg.open("around");
    for thing in &way.around {
        names.extend(around(svg, &mut placer, map, thing, &mut marks));
    }
    svg.close();
    let begins: Vec<Px> = way.begins.iter().map(|p| DVec2::from(*p)).filter(|p| sound(*p)).map(|p| map.px(p)).collect();
    if let Some(course) = course {
        machines(svg, &mut placer, map, course);
        path(svg, &mut placer, map, course);
    }
    svg.open("begins");
    match begins[..] {
        [a, b] => looks::gate(svg, a, b),
        [a] => looks::load(svg, a),
        _ => {}
    }
    begins.iter().for_each(|p| placer.solid(Rect::around(*p, 14.0, 14.0)));
    svg.close();
    let stand = DVec2::new(lift.stand.east_m, lift.stand.north_m);
    if course.is_none() {
        if let Some(at) = way.refused.as_ref().and_then(|r| r.at).map(DVec2::from).filter(|p| sound(*p)) {
            svg.open("blocked");
            looks::blocked(svg, map.px(at));
            svg.close();
            placer.solid(Rect::around(map.px(at), 22.0, 22.0));
        }
        if sound(stand) {
            crate::marks::cross(svg, map.px(stand));
            placer.solid(Rect::around(map.px(stand), 16.0, 16.0));
        }
    }
    if let Some(course) = course {
        numbers(svg, &mut placer, map, course);
    }
    labels(svg, &mut placer, map, way, stand, &begins, words);
    least_marks(svg, &mut placer, map, course, words);
    svg.open("names");
    for (at, name) in names {
        let text = wrap(&name, 12.0, false, (map.plot.w * 0.3).clamp(110.0, 230.0), 2);
        let (w, h) = block_size(&text, 12.0, false);
        if let Some(placed) = placer.place_if_clear(at, w + 2.0, h, 4.0, 90.0).filter(|p| placer.inside(p.rect)) {
            block(svg, &text, placed.rect, Type::plain(12.0).soft().halo());
        }
    }
    svg.close();
    crate::marks::north(svg, map.plot, &north);
    marks
}

/// Something beside the way; returns where its name belongs.
fn around(
    svg: &mut Svg,
    placer: &mut Placer,
    map: &Map,
    thing: &WayThing,
    marks: &mut BTreeSet<SiteMark>,
) -> Option<(Px, String)> {
    let mark = match thing.kind {
        WayThingKind::Thing => SiteMark::Thing(thing.thing.unwrap_or(ThingKind::Unnamed)),
        WayThingKind::Excavation => SiteMark::Excavation,
        WayThingKind::Closed | WayThingKind::People => SiteMark::NoGo,
        WayThingKind::Zone => SiteMark::Zone,
        WayThingKind::Line => SiteMark::Line,
    };
    let mut at = None;
    for outline in &thing.outlines {
        let points: Vec<DVec2> = outline.iter().map(|p| DVec2::from(*p)).collect();
        if !points.iter().all(|p| sound(*p)) {
            continue;
        }
        let px: Vec<Px> = points.iter().map(|p| map.px(*p)).collect();
        if mark == SiteMark::Line {
            for pair in px.windows(2) {
                if let Some((a, b)) = clip_segment(pair[0], pair[1], map.plot) {
                    crate::site_plan::overhead(svg, a, b);
                    placer.line(a, b);
                    marks.insert(mark);
                    at = at.or(Some(((a.0 + b.0) / 2.0, (a.1 + b.1) / 2.0)));
                }
            }
            continue;
        }
        let ring = clip_polygon(&px, map.plot);
        let Some(bounds) = Rect::of(&ring).filter(|_| ring.len() > 2) else { continue };
        crate::site_plan::draw_mark(svg, &[ring], mark);
        marks.insert(mark);
        at = at.or(Some((bounds.x + bounds.w / 2.0, bounds.y + bounds.h / 2.0)));
        if let Some(distance) = thing.set_back_m.filter(|d| d.is_finite() && *d > 0.0 && *d < 1e3) {
            let area = PlanArea { outer: points, holes: Vec::new() };
            if crate::site_plan::set_back_line(svg, map, &area, distance) {
                marks.insert(SiteMark::SetBack);
            }
        }
    }
    at.map(|at| (at, thing.name.clone()))
}

/// The machine where the way begins, changes and ends.
fn machines(svg: &mut Svg, placer: &mut Placer, map: &Map, course: &Course) {
    svg.open("machines");
    for (i, (change, place)) in course.numbered.iter().enumerate() {
        let place = &course.places[*place];
        let parts: Vec<Vec<Px>> =
            course.machine_at(place).iter().map(|ring| ring.iter().map(|p| map.px(*p)).collect()).collect();
        let ends = matches!(change, Change::Begins | Change::Ends);
        svg.open(&format!("machine-{}", i + 1));
        looks::machine(svg, &parts, ends, course.load.is_some());
        svg.close();
        for ring in &parts {
            for k in 0..ring.len() {
                placer.line(ring[k], ring[(k + 1) % ring.len()]);
            }
        }
    }
    svg.close();
}

fn path(svg: &mut Svg, placer: &mut Placer, map: &Map, course: &Course) {
    svg.open("way");
    for (gear, run) in course.stretches() {
        let points: Vec<Px> = run.iter().map(|p| map.px(p.at)).collect();
        svg.open(if gear == planning::route::Gear::Forward { "forward" } else { "reverse" });
        looks::stretch(svg, &points, gear.into());
        svg.close();
        for pair in points.windows(2) {
            placer.line(pair[0], pair[1]);
        }
    }
    svg.close();
}

/// Numbers of the places where something changes, beside the way with a leader where there is no room on it.
fn numbers(svg: &mut Svg, placer: &mut Placer, map: &Map, course: &Course) {
    svg.open("numbers");
    for (i, (_, place)) in course.numbered.iter().enumerate() {
        let place = &course.places[*place];
        let c = map.px(place.at);
        let behind = libm::atan2(-place.ahead.y, -place.ahead.x).to_degrees();
        let placed = placer.place(c, 20.0, 20.0, 8.0, behind + 60.0);
        let middle = (placed.rect.x + 10.0, placed.rect.y + 10.0);
        svg.line(c, middle, Pen::new(Ink::Main, 1.2));
        svg.circle(c, 4.0, Some(Ink::Sheet), Some(Pen::new(Ink::Main, 1.8)));
        crate::marks::numbered(svg, middle, i + 1);
    }
    svg.close();
}

/// Where the way begins, and the stand.
fn labels(
    svg: &mut Svg,
    placer: &mut Placer,
    map: &Map,
    way: &LiftWay,
    stand: DVec2,
    begins: &[Px],
    words: &Words<'_>,
) {
    svg.open("labels");
    let widest = (map.plot.w * 0.34).clamp(96.0, 190.0);
    let mut label = |at: Px, text: &str, gap: f64| {
        let text = wrap(text, SIZE, true, widest, 2);
        let kind = Type::plain(SIZE).bold().halo();
        let (w, h) = block_size(&text, kind.size, true);
        let placed = placer.place(at, w + 2.0, h, gap, 60.0);
        if placed.far {
            svg.line(at, placed.rect.nearest(at), Pen::new(Ink::Main, 1.0));
        }
        block(svg, &text, placed.rect, kind);
    };
    if !begins.is_empty() {
        let n = begins.len() as f64;
        let at = (begins.iter().map(|p| p.0).sum::<f64>() / n, begins.iter().map(|p| p.1).sum::<f64>() / n);
        label(at, &way.from, 12.0);
    }
    if sound(stand) {
        label(map.px(stand), &words.say(ui::SITE_STAND), 14.0);
    }
    svg.close();
}

/// Where the least is left: a lozenge beside the place, with a leader, its letter and how much.
fn least_marks(svg: &mut Svg, placer: &mut Placer, map: &Map, course: Option<&Course>, words: &Words<'_>) {
    svg.open("least");
    for (letter, least) in course.iter().flat_map(|c| [('A', &c.room), ('B', &c.ground)]) {
        let Some(least) = least else { continue };
        let at = map.px(least.at);
        let text = [words.quantity(least.margin.left)];
        let kind = Type::plain(SIZE).bold().halo().ink(Ink::Danger);
        let (w, h) = block_size(&text, kind.size, true);
        let placed = placer.place(at, w + 28.0, h.max(26.0), 10.0, -60.0);
        let r = placed.rect;
        let c = (r.x + 12.0, r.y + r.h / 2.0);
        svg.line(at, r.nearest(at), Pen::new(Ink::Danger, 1.4));
        svg.circle(at, 3.4, Some(Ink::Danger), Some(Pen::new(Ink::Sheet, 1.4)));
        looks::least(svg, c, letter);
        block(svg, &text, Rect { x: r.x + 26.0, y: r.y + (r.h - h) / 2.0, w, h }, kind);
    }
    svg.close();
}
