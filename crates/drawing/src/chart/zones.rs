//! Zones: outlines, hatching by what they leave, names where they fit.

use super::Read;
use super::axes::Axes;
use crate::hatch::{clip_segment, contains, edges, hatch};
use crate::key::{Row, Swatch};
use crate::labels::{Placer, Rect};
use crate::marks::{block, block_size};
use crate::style::Ink;
use crate::svg::{Pen, Px, Svg, Type};
use crate::words::{Words, mass};
use planning::ChartScene;
use wording::ui;

/// Zones in the order of drawing: highest capacity first, so that where two overlap the lower one,
/// which governs, is seen.
fn order(scene: &ChartScene) -> Vec<usize> {
    let mut order: Vec<usize> = (0..scene.zones.len()).collect();
    order.sort_by(|a, b| scene.zones[*b].capacity_kg.total_cmp(&scene.zones[*a].capacity_kg));
    order
}

pub(crate) fn fills(svg: &mut Svg, axes: &Axes, scene: &ChartScene) {
    svg.open("zones");
    for zone in order(scene) {
        let outline = axes.all(&scene.zones[zone].outline);
        let carries = scene.carries(zone);
        let (fill, family) = if carries { (Ink::Carries, None) } else { (Ink::Sheet, Some((-45.0, 5.0))) };
        svg.open("zone");
        svg.polygon(&outline, Some(fill), None);
        if let Some((degrees, spacing)) = family {
            svg.lines(&hatch(&outline, degrees, spacing), Pen::new(Ink::Soft, 0.8));
        }
        svg.polygon(&outline, None, Some(Pen::new(Ink::Main, 1.2)));
        svg.close();
    }
    if let Some(zone) = scene.zone.and_then(|z| scene.zones.get(z)) {
        svg.polygon(&axes.all(&zone.outline), None, Some(Pen::new(Ink::Main, 2.8)));
    }
    for area in &scene.not_permitted {
        let outline = axes.all(area);
        svg.open("not-permitted");
        svg.polygon(&outline, Some(Ink::Sheet), None);
        for degrees in [45.0, -45.0] {
            svg.lines(&hatch(&outline, degrees, 7.0), Pen::new(Ink::Danger, 0.8));
        }
        svg.polygon(&outline, None, Some(Pen::new(Ink::Danger, 1.6)));
        svg.close();
    }
    svg.close();
}

/// Writes each zone's name, capacity and reserve into it where they fit; returns which zones got
/// all of it.
pub(crate) fn names(
    svg: &mut Svg,
    placer: &mut Placer,
    axes: &Axes,
    scene: &ChartScene,
    words: &Words<'_>,
) -> Vec<bool> {
    let outlines: Vec<Vec<Px>> = scene.zones.iter().map(|z| axes.all(&z.outline)).collect();
    let closed: Vec<Vec<Px>> = scene.not_permitted.iter().map(|a| axes.all(a)).collect();
    // The zone that is seen at a place: the lowest capacity there, unless declared not permitted.
    let seen = |p: Px| {
        if closed.iter().any(|a| contains(a, p)) {
            return None;
        }
        (0..outlines.len())
            .filter(|z| contains(&outlines[*z], p))
            .min_by(|a, b| scene.zones[*a].capacity_kg.total_cmp(&scene.zones[*b].capacity_kg))
    };
    let mut whole = vec![false; scene.zones.len()];
    svg.open("zone-names");
    for zone in order(scene) {
        let name = scene.zones[zone].name.trim();
        let capacity = words.mass(scene.zones[zone].counted_kg);
        let loaded = scene.load_kg > 0.0;
        let word = if scene.carries(zone) {
            words.say(ui::SHARE_LEFT.with("share", words.ratio(scene.zones[zone].reserve)))
        } else {
            words.say(ui::TOO_HEAVY_SHORT)
        };
        let mut forms = vec![
            vec![name.to_owned(), capacity.clone(), word],
            vec![name.to_owned(), capacity.clone()],
            vec![capacity],
            vec![name.to_owned()],
        ];
        if !loaded {
            // Without a load nothing is left of anything.
            forms.remove(0);
        }
        for (i, text) in forms.iter().enumerate() {
            let kind = Type::plain(12.5).bold();
            let (w, h) = block_size(text, kind.size, true);
            let room = Rect { x: 0.0, y: 0.0, w: w + 2.0, h };
            let last = i + 1 == forms.len();
            let Some(rect) = roomiest(placer, &outlines[zone], room, &|p| seen(p) == Some(zone), last) else {
                continue;
            };
            let mut at = rect;
            for (k, line) in text.iter().enumerate() {
                let one = block_size(std::slice::from_ref(line), kind.size, true).1;
                let set = if k == 0 { kind } else { Type::plain(12.0) };
                block(svg, std::slice::from_ref(line), Rect { h: one, ..at }, set.halo());
                at.y += one;
            }
            placer.text(rect);
            whole[zone] = i == 0;
            break;
        }
    }
    svg.close();
    whole
}

/// The place in an outline where a box fits with most room around it. With `force`, the deepest
/// place even where it does not fit.
fn roomiest(placer: &Placer, outline: &[Px], size: Rect, seen: &dyn Fn(Px) -> bool, force: bool) -> Option<Rect> {
    let bounds = Rect::of(outline)?;
    let steps = 28;
    let mut best: Option<(f64, Rect)> = None;
    for i in 1..steps {
        for j in 1..steps {
            let c = (
                bounds.x + bounds.w * f64::from(i) / f64::from(steps),
                bounds.y + bounds.h * f64::from(j) / f64::from(steps),
            );
            if !seen(c) {
                continue;
            }
            let rect = Rect::around(c, size.w, size.h);
            let corners = [
                (rect.x, rect.y),
                (rect.right(), rect.y),
                (rect.x, rect.bottom()),
                (rect.right(), rect.bottom()),
                (c.0, rect.y),
                (c.0, rect.bottom()),
            ];
            let inside =
                corners.iter().all(|p| seen(*p)) && !edges(outline).any(|(a, b)| clip_segment(a, b, rect).is_some());
            if !inside && !force {
                continue;
            }
            let depth = edges(outline).map(|(a, b)| distance(c, a, b)).fold(f64::INFINITY, f64::min);
            // Other texts push it away; being inside counts for more than depth.
            let score = depth.min(60.0) - placer.clash(rect) + if inside { 200.0 } else { 0.0 };
            if placer.clash(rect) > 0.0 && !force {
                continue;
            }
            if best.is_none_or(|(s, _)| score > s) {
                best = Some((score, rect));
            }
        }
    }
    best.map(|(_, rect)| rect)
}

fn distance(p: Px, a: Px, b: Px) -> f64 {
    let (dx, dy) = (b.0 - a.0, b.1 - a.1);
    let len2 = dx * dx + dy * dy;
    let t = if len2 > 0.0 { (((p.0 - a.0) * dx + (p.1 - a.1) * dy) / len2).clamp(0.0, 1.0) } else { 0.0 };
    libm::hypot(p.0 - a.0 - dx * t, p.1 - a.1 - dy * t)
}

/// Key: the classes that occur, and the zones whose name did not fit whole.
pub(crate) fn rows(scene: &ChartScene, named: &[bool], words: &Words<'_>) -> Vec<Row> {
    let has = |carries| (0..scene.zones.len()).any(|z| scene.carries(z) == carries);
    let mut rows = Vec::new();
    if has(true) {
        let zone = if scene.load_kg > 0.0 { ui::ZONE_CARRIES } else { ui::MACHINE_CHART_ZONE };
        rows.push(Row::new(Swatch::ZoneCarries, words.say(zone)));
    }
    if has(false) {
        rows.push(Row::new(Swatch::ZoneTooHeavy, words.say(ui::ZONE_TOO_HEAVY)));
    }
    if !scene.not_permitted.is_empty() {
        rows.push(Row::new(Swatch::NotPermitted, words.say(ui::NOT_PERMITTED)));
    }
    rows.push(Row::new(Swatch::None, words.say(ui::OUTSIDE_ZONES)));
    for (zone, _) in named.iter().enumerate().filter(|(_, whole)| !**whole) {
        let swatch = if scene.carries(zone) { Swatch::ZoneCarries } else { Swatch::ZoneTooHeavy };
        let capacity = mass(scene.zones[zone].counted_kg);
        let text =
            words.say(ui::ZONE_CAPACITY.with("zone", scene.zones[zone].name.as_str()).with("capacity", capacity));
        rows.push(Row::new(swatch, text));
    }
    rows
}
