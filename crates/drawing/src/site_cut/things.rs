//! Things that the cut passes through.

use super::frame::Frame;
use crate::labels::{Placer, Rect, wrap};
use crate::marks::{block, block_size};
use crate::site_plan::{SiteMark, draw_mark};
use crate::style::Ink;
use crate::svg::{Pen, Px, Svg, Type};
use crate::words::{Words, length};
use site::{Station, Thing, ThingKind};
use std::collections::BTreeSet;
use wording::ui;

/// One thing over neighbouring stations.
struct Stretch {
    thing: usize,
    from: f64,
    to: f64,
    /// Underside (the ground's, where it stands on it) and top at each station, m.
    pieces: Vec<(f64, Option<f64>, Option<f64>)>,
}

/// Draws them and returns the kinds that occur.
pub(crate) fn draw(
    svg: &mut Svg,
    placer: &mut Placer,
    frame: &Frame,
    stations: &[Station],
    things: &[Thing],
    words: &Words<'_>,
) -> BTreeSet<ThingKind> {
    let mut kinds = BTreeSet::new();
    let stretches = stretches(stations, things.len());
    svg.open("things");
    for stretch in &stretches {
        let thing = &things[stretch.thing];
        let outline = outline(frame, stretch);
        draw_mark(svg, std::slice::from_ref(&outline), SiteMark::Thing(thing.kind));
        if stretch.top().is_none() {
            // Open above: nobody knows where it ends.
            let (a, b) = (frame.px((stretch.from, 0.0)).0, frame.px((stretch.to, 0.0)).0);
            svg.line((a, frame.plot.y), (b, frame.plot.y), Pen::new(Ink::Sheet, 4.0));
            svg.line((a, frame.plot.y), (b, frame.plot.y), Pen::dashed(Ink::Main, 1.6, "2 4"));
        }
        if let Some(rect) = Rect::of(&outline) {
            placer.solid(rect);
        }
        kinds.insert(thing.kind);
    }
    for stretch in &stretches {
        let mut text = wrap(&things[stretch.thing].name, 11.5, false, 140.0, 2);
        text.push(match stretch.top() {
            Some(top) => words.say(ui::SITE_TOP.with("level", length(top))),
            None => words.say(ui::SITE_HEIGHT_NOT_KNOWN),
        });
        text.push(words.say(ui::SITE_CUT_AT.with("from", length(stretch.from)).with("to", length(stretch.to))));
        let (w, h) = block_size(&text, 11.5, false);
        let middle = frame.px((f64::midpoint(stretch.from, stretch.to), stretch.top().unwrap_or(frame.heights.1)));
        if let Some(placed) = placer.place_if_clear(middle, w, h, 5.0, 90.0) {
            if placed.far {
                svg.line(middle, placed.rect.nearest(middle), Pen::new(Ink::Soft, 0.8));
            }
            block(svg, &text, placed.rect, Type::plain(11.5).halo());
        }
    }
    svg.close();
    kinds
}

impl Stretch {
    /// Its highest top; `None` where any is not known.
    fn top(&self) -> Option<f64> {
        let tops = self.pieces.iter().map(|p| p.2.filter(|z| z.is_finite()));
        tops.reduce(|a, b| Some(a?.max(b?))).flatten()
    }
}

fn stretches(stations: &[Station], count: usize) -> Vec<Stretch> {
    let mut done: Vec<Stretch> = Vec::new();
    let mut open: Vec<Stretch> = Vec::new();
    let sound: Vec<&Station> = stations.iter().filter(|s| s.along.is_finite()).collect();
    for (i, station) in sound.iter().enumerate() {
        let half = |other: Option<&&Station>| other.map_or(0.0, |o| (o.along - station.along).abs() / 2.0);
        // A thing met at one station reaches halfway to its neighbours, no farther.
        let (before, after) = (half(i.checked_sub(1).and_then(|j| sound.get(j))), half(sound.get(i + 1)));
        let mut still = Vec::new();
        for (thing, base, top) in station.things.iter().filter(|t| t.0 < count) {
            let piece = (station.along, base.or(station.ground), *top);
            let mut stretch = match open.iter().position(|s| s.thing == *thing) {
                Some(at) => open.swap_remove(at),
                None => Stretch { thing: *thing, from: station.along - before, to: station.along, pieces: Vec::new() },
            };
            stretch.to = station.along + after;
            stretch.pieces.push(piece);
            still.push(stretch);
        }
        done.append(&mut open);
        open = still;
    }
    done.append(&mut open);
    done.sort_by(|a, b| a.from.total_cmp(&b.from).then(a.thing.cmp(&b.thing)));
    done
}

/// Up along the tops, back along the undersides.
fn outline(frame: &Frame, stretch: &Stretch) -> Vec<Px> {
    let ceiling = frame.plot.y;
    let floor = frame.plot.bottom();
    let at = |along: f64, z: Option<f64>, otherwise: f64| {
        let (x, y) = frame.px((along, z.unwrap_or(0.0)));
        (x, if z.is_some_and(f64::is_finite) { y.clamp(ceiling, floor) } else { otherwise })
    };
    let ends = |pieces: &[(f64, Option<f64>, Option<f64>)]| {
        let mut all = pieces.to_vec();
        let (mut first, mut last) = (all[0], all[all.len() - 1]);
        (first.0, last.0) = (stretch.from, stretch.to);
        all.insert(0, first);
        all.push(last);
        all
    };
    let pieces = ends(&stretch.pieces);
    let tops = pieces.iter().map(|p| at(p.0, p.2, ceiling));
    let feet = pieces.iter().rev().map(|p| at(p.0, p.1, floor));
    tops.chain(feet).collect()
}
