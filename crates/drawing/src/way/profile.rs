//! The profile: ground, slopes and speed over the way driven.

use super::course::{Change, Course, Place};
use super::looks;
use crate::labels::{Rect, text_width};
use crate::site_plan::round_step;
use crate::style::Ink;
use crate::svg::{Anchor, Pen, Px, Svg, Type};
use crate::words::Words;
use quantity::{Dimension, Quantity};
use wording::ui;

/// From this slope along on it counts which way the load faces (29 CFR 1910.178(n)(7)(i)).
pub(super) const STEEP: f64 = 0.10;

/// Room for figures left of the axes, px.
const LEFT: f64 = 52.0;
/// Size of figures and titles, px.
const SIZE: f64 = 12.0;

/// Height of the strip of numbers and letters, px.
const STRIP_H: f64 = 30.0;
/// Heights of the three panels, px.
const GROUND_H: f64 = 92.0;
const SLOPE_H: f64 = 96.0;
const SPEED_H: f64 = 46.0;

struct Axis {
    x: f64,
    scale: f64,
}

impl Axis {
    fn px(&self, along: f64) -> f64 {
        self.x + along * self.scale
    }
}

/// Draws the panels below `room`'s top; returns where they end.
pub(super) fn draw(svg: &mut Svg, room: Rect, course: &Course, words: &Words<'_>) -> f64 {
    let (Some(first), Some(last)) = (course.places.first(), course.places.last()) else { return room.y };
    let (from, to) = (first.along, last.along);
    let w = room.w - LEFT - 10.0;
    let axis = Axis { x: room.x + LEFT - from * w / (to - from).max(1e-3), scale: w / (to - from).max(1e-3) };
    svg.open("profile");
    let mut y = room.y + 6.0;
    let flags = flags(course, &axis);
    let ground = panel(svg, &mut y, room, w, (STRIP_H, GROUND_H), &title_of_ground(course, &axis, words));
    strip(svg, Rect { y: ground.y - STRIP_H, h: STRIP_H, ..ground }, &flags);
    guides(svg, ground, &flags);
    ground_panel(svg, ground, &axis, course, words);
    let slope = panel(svg, &mut y, room, w, (0.0, SLOPE_H), &words.say(ui::WAY_SLOPES));
    guides(svg, slope, &flags);
    slope_panel(svg, slope, &axis, course, words);
    let speed = panel(svg, &mut y, room, w, (0.0, SPEED_H), &words.say(ui::WAY_SPEED));
    guides(svg, speed, &flags);
    speed_panel(svg, speed, &axis, course, words);
    y = figures(svg, speed, &axis, (from, to), words);
    svg.close();
    y
}

/// A panel with its title above it, and between them a strip for marks.
fn panel(svg: &mut Svg, y: &mut f64, room: Rect, w: f64, (strip, h): (f64, f64), title: &str) -> Rect {
    for line in crate::labels::wrap(title, SIZE, true, room.w, 3) {
        *y += 15.0;
        svg.text((room.x, *y - 3.0), &line, Type::plain(SIZE).bold());
    }
    let rect = Rect { x: room.x + LEFT, y: *y + 3.0 + strip, w, h };
    *y = rect.bottom() + 8.0;
    rect
}

/// Heights of the ground panel: lowest, and pixels a metre.
fn heights(course: &Course, axis: &Axis) -> (f64, f64) {
    let low = course.places.iter().map(|p| p.height).fold(f64::INFINITY, f64::min);
    let high = course.places.iter().map(|p| p.height).fold(f64::NEG_INFINITY, f64::max);
    // Half a metre at least, or as much as fits at the scale along: nothing is flattened that need not be.
    let span = (high - low).max((GROUND_H - 44.0) / axis.scale).min((high - low).max(0.5));
    (f64::midpoint(low, high) - span / 2.0, (GROUND_H - 44.0) / span)
}

fn title_of_ground(course: &Course, axis: &Axis, words: &Words<'_>) -> String {
    let times = heights(course, axis).1 / axis.scale;
    let text = if times >= 10.0 {
        format!("{times:.0}")
    } else {
        words.figure(times * words.metres_per_unit, 0.1 * words.metres_per_unit)
    };
    words.say(ui::WAY_GROUND.with("times", text))
}

fn ground_panel(svg: &mut Svg, r: Rect, axis: &Axis, course: &Course, words: &Words<'_>) {
    let (low, scale) = heights(course, axis);
    let z = |height: f64| r.bottom() - 14.0 - (height - low) * scale;
    let line: Vec<Px> = course.places.iter().map(|p| (axis.px(p.along), z(p.height))).collect();
    let under = |line: &[Px]| {
        let mut ring = line.to_vec();
        if let (Some(a), Some(b)) = (line.first(), line.last()) {
            ring.extend([(b.0, r.bottom()), (a.0, r.bottom())]);
        }
        ring
    };
    svg.open("ground");
    svg.polygon(&under(&line), Some(Ink::Ground), None);
    let mut free = r.x;
    for (run, up) in steep_runs(course) {
        let part: Vec<Px> = run.iter().map(|p| (axis.px(p.along), z(p.height))).collect();
        svg.open(if up { "boom-uphill" } else { "boom-downhill" });
        looks::steep(svg, &under(&part));
        svg.close();
        // Above the ground, as near to its middle as the one before leaves room.
        let id = match (course.load.is_some(), up) {
            (true, true) => ui::WAY_LOAD_UPHILL,
            (true, false) => ui::WAY_LOAD_DOWNHILL,
            (false, true) => ui::WAY_BOOM_UPHILL,
            (false, false) => ui::WAY_BOOM_DOWNHILL,
        };
        let text = words.say(id);
        let w = text_width(&text, SIZE, true);
        let middle = f64::midpoint(part[0].0, part[part.len() - 1].0);
        let left = (middle - w / 2.0).max(free).min(r.right() - w);
        if left >= free - 0.5 {
            let top = part.iter().map(|p| p.1).fold(f64::INFINITY, f64::min);
            svg.text((left, (top - 8.0).max(r.y + 13.0)), &text, Type::plain(SIZE).bold().halo());
            free = left + w + 8.0;
        }
    }
    svg.polyline(&line, Pen::new(Ink::Main, 2.2));
    // Highest and lowest, as figures at the left.
    let height = |h: f64| words.figure(h, 0.1);
    let (lowest, highest) =
        course.places.iter().fold((f64::INFINITY, f64::NEG_INFINITY), |(a, b), p| (a.min(p.height), b.max(p.height)));
    let kind = Type::plain(SIZE).soft().at(Anchor::End);
    svg.text((r.x - 5.0, z(lowest) + 4.0), &height(lowest), kind);
    if z(lowest) - z(highest) > 15.0 {
        svg.text((r.x - 5.0, z(highest) + 4.0), &height(highest), kind);
    }
    svg.rect(r, None, Some(Pen::new(Ink::Soft, 1.0)));
    svg.close();
}

/// Runs of places that are steep along the machine, and whether its boom faces uphill.
fn steep_runs(course: &Course) -> Vec<(Vec<Place>, bool)> {
    let mut out: Vec<(Vec<Place>, bool)> = Vec::new();
    let mut open = false;
    for place in &course.places {
        let slope = place.slope_along[1];
        if slope.abs() <= STEEP {
            open = false;
            continue;
        }
        let up = slope > 0.0;
        match out.last_mut().filter(|(_, before)| open && *before == up) {
            Some((run, _)) => run.push(*place),
            None => out.push((vec![*place], up)),
        }
        open = true;
    }
    out.retain(|(run, _)| run.len() > 1);
    out
}

fn slope_panel(svg: &mut Svg, r: Rect, axis: &Axis, course: &Course, words: &Words<'_>) {
    let all = course.places.iter().flat_map(|p| p.slope_along.iter().chain(&p.slope_across));
    let most = all.fold(0.13_f64, |most, s| most.max(s.abs())).min(2.0);
    let step = if most > 0.4 {
        0.5
    } else if most > 0.2 {
        0.2
    } else {
        0.1
    };
    let most = (most / 0.05).ceil() * 0.05 + 0.01;
    let y = |slope: f64| r.y + r.h / 2.0 - slope.clamp(-most, most) * (r.h / 2.0) / most;
    svg.open("slopes");
    let kind = Type::plain(SIZE).soft().at(Anchor::End);
    for k in -4_i32..=4 {
        let slope = f64::from(k) * step;
        if slope.abs() > most {
            continue;
        }
        let pen = if k == 0 { Pen::new(Ink::Soft, 1.2) } else { Pen::new(Ink::Faint, 1.0) };
        svg.line((r.x, y(slope)), (r.right(), y(slope)), pen);
        svg.text((r.x - 5.0, y(slope) + 4.0), &words.quantity(Quantity::slope(slope)).replace('-', "−"), kind);
    }
    for (of, pen) in [(0, Pen::new(Ink::Main, 2.2)), (1, Pen::dashed(Ink::Main, 1.8, "2 3"))] {
        let slope = |p: &Place| if of == 0 { p.slope_along } else { p.slope_across };
        let upper = course.places.iter().map(|p| (axis.px(p.along), y(slope(p)[2])));
        let lower = course.places.iter().rev().map(|p| (axis.px(p.along), y(slope(p)[0])));
        let band: Vec<Px> = upper.chain(lower).collect();
        svg.polygon(&band, if of == 0 { Some(Ink::Carries) } else { None }, Some(Pen::new(Ink::Faint, 0.7)));
        let line: Vec<Px> = course.places.iter().map(|p| (axis.px(p.along), y(slope(p)[1]))).collect();
        svg.open(if of == 0 { "along" } else { "across" });
        svg.polyline(&line, pen);
        svg.close();
    }
    svg.rect(r, None, Some(Pen::new(Ink::Soft, 1.0)));
    svg.close();
}

fn speed_panel(svg: &mut Svg, r: Rect, axis: &Axis, course: &Course, words: &Words<'_>) {
    let most = course.places.iter().map(|p| p.speed).fold(0.1, f64::max);
    let y = |speed: f64| r.bottom() - speed.max(0.0) / most * (r.h - 12.0);
    let line: Vec<Px> = course.places.iter().map(|p| (axis.px(p.along), y(p.speed))).collect();
    svg.open("speed");
    svg.polyline(&line, Pen::new(Ink::Main, 2.0));
    let kind = Type::plain(SIZE).soft().at(Anchor::End);
    let figure = |v: f64| words.quantity(Quantity::new(v, Dimension::Speed));
    let (number, unit) = split(&figure(most));
    svg.text((r.x - 5.0, y(most) + 4.0), &number, kind);
    svg.text((r.x - 5.0, y(most) + 18.0), &unit, kind);
    svg.rect(r, None, Some(Pen::new(Ink::Soft, 1.0)));
    svg.close();
}

/// A figure and its unit.
fn split(text: &str) -> (String, String) {
    let at = text.find(|c: char| c.is_whitespace()).unwrap_or(text.len());
    (text[..at].to_owned(), text[at..].trim().to_owned())
}

/// What stands above the panels.
enum Flag {
    Number(usize),
    Least(char),
}

/// Where something changes and where the least is left: its place on the axis, and its mark.
fn flags(course: &Course, axis: &Axis) -> Vec<(f64, Flag)> {
    let number =
        |(i, (_, place)): (usize, &(Change, usize))| (axis.px(course.places[*place].along), Flag::Number(i + 1));
    let mut out: Vec<(f64, Flag)> = course.numbered.iter().enumerate().map(number).collect();
    let last = course.places.len() - 1;
    for (letter, least) in [('A', &course.room), ('B', &course.ground)] {
        let along = least.iter().map(|l| l.margin.along_m.clamp(course.places[0].along, course.places[last].along));
        out.extend(along.map(|along| (axis.px(along), Flag::Least(letter))));
    }
    out.sort_by(|a, b| a.0.total_cmp(&b.0));
    out
}

/// The numbers and letters in a strip above the panels, apart from each other, each joined to its place.
fn strip(svg: &mut Svg, r: Rect, flags: &[(f64, Flag)]) {
    let apart = 25.0_f64.min(r.w / flags.len().max(1) as f64);
    let mut at: Vec<f64> = Vec::with_capacity(flags.len());
    for (x, _) in flags {
        at.push(at.last().map_or(*x, |before: &f64| x.max(before + apart)));
    }
    // What was pushed beyond the end moves back.
    let mut most = r.right();
    for x in at.iter_mut().rev() {
        *x = x.min(most);
        most = *x - apart;
    }
    svg.open("flags");
    for ((x, flag), at) in flags.iter().zip(&at) {
        let c = (*at, r.y + 12.0);
        let ink = if matches!(flag, Flag::Least(_)) { Ink::Danger } else { Ink::Main };
        svg.line((*x, r.bottom()), c, Pen::new(ink, 1.0));
        match flag {
            Flag::Number(number) => crate::marks::numbered(svg, c, *number),
            Flag::Least(letter) => looks::least(svg, c, *letter),
        }
    }
    svg.close();
}

/// Lines down through a panel at those places.
fn guides(svg: &mut Svg, r: Rect, flags: &[(f64, Flag)]) {
    svg.open("guides");
    for (x, flag) in flags {
        let pen = match flag {
            Flag::Least(_) => Pen::new(Ink::Danger, 1.0),
            Flag::Number(_) => Pen::dashed(Ink::Main, 1.0, "5 3"),
        };
        if *x > r.x + 1.0 && *x < r.right() - 1.0 {
            svg.line((*x, r.y), (*x, r.bottom()), pen);
        }
    }
    svg.close();
}

/// Figures of the way driven below the last panel; returns where they end.
fn figures(svg: &mut Svg, r: Rect, axis: &Axis, (from, to): (f64, f64), words: &Words<'_>) -> f64 {
    let unit = words.metres_per_unit;
    let step = round_step(46.0 / axis.scale / unit) * unit;
    svg.open("distance");
    let kind = Type::plain(SIZE).at(Anchor::Middle);
    let mut along = (from / step).ceil() * step;
    while along <= to + 1e-9 {
        let x = axis.px(along);
        svg.line((x, r.bottom()), (x, r.bottom() + 5.0), Pen::new(Ink::Soft, 1.0));
        svg.text((x.min(r.right() - 8.0), r.bottom() + 18.0), &words.figure(along, step), kind);
        along += step;
    }
    let y = r.bottom() + 34.0;
    svg.text((r.right(), y), &words.say(ui::WAY_DRIVEN.with("unit", words.unit)), kind.at(Anchor::End));
    svg.close();
    y + 6.0
}
