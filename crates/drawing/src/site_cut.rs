//! A cut through a site along a course: ground with its accuracy, things, distances and heights.

mod frame;
mod things;

use crate::hatch::hatch;
use crate::key::{Row, Swatch, draw as draw_key};
use crate::labels::{Placer, Rect};
use crate::site_plan::{SiteMark, kind_name, round_step};
use crate::style::{Ink, Style};
use crate::svg::{Anchor, Pen, Px, Svg, Type};
use crate::words::{Words, length};
use frame::Frame;
use quantity::Quantity;
use site::{Cut, Station, Thing};
use wording::{Wording, ui};

/// A cut as SVG, with the things that its stations name.
///
/// Heights are drawn to the scale of the lengths, or larger by a factor that the drawing states. The
/// root carries `data-px-per-m` (along) and `data-px-per-m-up`. Where the ground is not known the cut
/// is hatched, and a thing whose top is not known reaches to the upper edge with an open end.
pub fn site_cut(cut: &Cut, things: &[Thing], wording: &Wording, style: &Style) -> String {
    let words = Words::new(wording);
    let heading = words.say(ui::SITE_CUT);
    let width = style.width();
    let Some(frame) = Frame::fit(cut, width) else {
        return crate::marks::instead(style, &heading, "", &words.say(ui::SITE_CUT_EMPTY));
    };
    let mut svg = Svg::new(style.theme);
    let scale = if frame.factor == 1.0 {
        words.say(ui::SITE_CUT_TRUE)
    } else {
        words.say(ui::SITE_CUT_FACTOR.with("factor", Quantity::number(frame.factor)))
    };
    let top = crate::marks::title(&mut svg, &heading, &scale, 10.0, width - 20.0);
    let frame = frame.below(top);
    let mut placer = Placer::new(frame.plot);

    axes(&mut svg, &mut placer, &frame, &words);
    let mut rows = ground(&mut svg, &mut placer, &frame, &cut.stations, &words);
    let kinds = things::draw(&mut svg, &mut placer, &frame, &cut.stations, things, &words);
    for kind in kinds {
        rows.push(Row::new(Swatch::Site(SiteMark::Thing(kind)), words.say(kind_name(kind))));
    }
    let columns = if width >= 560.0 { 2 } else { 1 };
    let bottom = draw_key(&mut svg, &rows, 10.0, frame.plot.bottom() + 42.0, width - 20.0, columns);
    let about = words.say(
        ui::SITE_CUT_ALT
            .with("length", length(frame.length))
            .with("low", length(frame.heights.0))
            .with("high", length(frame.heights.1)),
    );
    let data = [("px-per-m", frame.scale), ("px-per-m-up", frame.scale * frame.factor)];
    svg.finish(width, bottom + 8.0, &style.font_family, &heading, &about, &data)
}

/// Level lines with their heights, distances along the course.
fn axes(svg: &mut Svg, placer: &mut Placer, frame: &Frame, words: &Words<'_>) {
    let unit = words.metres_per_unit;
    let kind = Type::plain(11.5).soft();
    svg.open("axes");
    let step = round_step(34.0 / (frame.scale * frame.factor * unit)) * unit;
    let (low, high) = frame.shown();
    for z in site::round_levels(low, high, step, 60) {
        let (_, y) = frame.px((0.0, z));
        svg.line((frame.plot.x, y), (frame.plot.right(), y), Pen::new(Ink::Faint, 0.8));
        svg.text((frame.plot.x - 5.0, y + 4.0), &words.figure(z, step), kind.at(Anchor::End));
    }
    svg.text((frame.plot.x - 5.0, frame.plot.y - 6.0), words.unit, kind.at(Anchor::End));
    let step = round_step(62.0 / (frame.scale * unit)) * unit;
    let base = frame.plot.bottom();
    for s in site::round_levels(0.0, frame.length, step, 60) {
        let (x, _) = frame.px((s, low));
        svg.line((x, base), (x, base + 5.0), Pen::new(Ink::Main, 1.0));
        svg.text((x, base + 17.0), &words.figure(s, step), kind.at(Anchor::Middle));
    }
    svg.line((frame.plot.x, base), (frame.plot.right(), base), Pen::new(Ink::Main, 1.0));
    let text = format!("{} ({})", words.say(ui::SITE_CUT_ALONG), words.unit);
    svg.text((frame.plot.x + frame.plot.w / 2.0, base + 33.0), &text, kind.at(Anchor::Middle));
    svg.close();
    placer.text(Rect { x: frame.plot.x, y: base, w: frame.plot.w, h: 40.0 });
}

/// Ground line with its accuracy band, and hatching where it is not known; rows of the key.
fn ground(svg: &mut Svg, placer: &mut Placer, frame: &Frame, stations: &[Station], words: &Words<'_>) -> Vec<Row> {
    let mut rows = Vec::new();
    let known = |s: &&Station| s.along.is_finite() && s.ground.is_some_and(f64::is_finite);
    let mut accuracies: Vec<f64> = Vec::new();
    svg.open("ground");
    for stretch in stations.chunk_by(|a, b| known(&a) == known(&b)).filter(|c| known(&&c[0])) {
        let accuracy = |s: &Station| s.accuracy.filter(|a| a.is_finite() && *a >= 0.0).unwrap_or(0.0);
        let at = |s: &Station, by: f64| frame.px((s.along, s.ground.unwrap_or(0.0) + by));
        let line: Vec<Px> = stretch.iter().map(|s| at(s, 0.0)).collect();
        let mut below: Vec<Px> = line.clone();
        below.extend([(line[line.len() - 1].0, frame.plot.bottom()), (line[0].0, frame.plot.bottom())]);
        svg.polygon(&below, Some(Ink::Ground), None);
        let upper: Vec<Px> = stretch.iter().map(|s| at(s, accuracy(s))).collect();
        let lower: Vec<Px> = stretch.iter().map(|s| at(s, -accuracy(s))).collect();
        for edge in [&upper, &lower] {
            svg.polyline(edge, Pen::dashed(Ink::Soft, 0.9, "3 3"));
        }
        svg.polyline(&line, Pen::new(Ink::Main, 2.0));
        if let [only] = line[..] {
            svg.circle(only, 2.0, Some(Ink::Main), None);
        }
        for pair in line.windows(2) {
            placer.line(pair[0], pair[1]);
        }
        accuracies.extend(stretch.iter().map(accuracy));
    }
    if !accuracies.is_empty() {
        let widest = accuracies.iter().copied().fold(0.0, f64::max);
        rows.push(Row::new(Swatch::CutGround, words.say(ui::SITE_CUT_GROUND.with("accuracy", length(widest)))));
    }
    let holes = holes(stations, frame.length);
    for (from, to) in &holes {
        let (a, b) = (frame.px((*from, 0.0)).0, frame.px((*to, 0.0)).0);
        let (y, h) = (frame.plot.bottom() - 26.0, 26.0);
        let band = [(a, y), (b, y), (b, y + h), (a, y + h)];
        svg.lines(&hatch(&band, 0.0, 7.0), Pen::new(Ink::Soft, 0.9));
        for x in [a, b] {
            svg.line((x, y), (x, y + h), Pen::dashed(Ink::Soft, 0.9, "2 2"));
        }
    }
    if !holes.is_empty() {
        rows.push(Row::new(Swatch::Site(SiteMark::NoGround), words.say(ui::GROUND_NOT_KNOWN)));
    }
    svg.close();
    rows
}

/// Stretches of the course without known ground, from the last station that has it to the next.
fn holes(stations: &[Station], length: f64) -> Vec<(f64, f64)> {
    let mut out: Vec<(f64, f64)> = Vec::new();
    let mut last_known = 0.0;
    let mut open = None;
    for s in stations.iter().filter(|s| s.along.is_finite()) {
        if s.ground.is_some_and(f64::is_finite) {
            if let Some(from) = open.take() {
                out.push((from, s.along));
            }
            last_known = s.along;
        } else if open.is_none() {
            open = Some(last_known);
        }
    }
    out.extend(open.map(|from| (from, length)));
    out
}
