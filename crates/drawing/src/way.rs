//! A lift's way to its stand, or back from it: seen from above, and its profile below.

mod course;
mod looks;
mod profile;
mod rows;
mod view;

use crate::labels::Rect;
use crate::style::{Ink, Style};
use crate::svg::{Pen, Svg};
use crate::words::Words;
use course::Course;
use planning::{LiftPlan, LiftWay};
use wording::{Wording, ui};

pub(crate) use looks::{WayMark, swatch};

/// Which of a lift's two ways.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum WayDirection {
    /// To the stand.
    In,
    /// Back from the stand.
    Out,
}

/// A way of a lift as SVG: from above, north up, with what stands, is dug, closed or overhead beside it, the machine where
/// it begins, where gear or steering changes and where it ends, and where the least is left; below it, over the way driven,
/// the ground's height, its slope along and across the machine, and the speed allowed. Stretches driven forward and in
/// reverse differ in line and in arrow.
///
/// One scale for both axes of the view; the root carries it as `data-px-per-m`, with the picture position of the place
/// `data-east0`, `data-north0` (m) as `data-x0` and `data-y0`. Where no way was found, the view shows where it ends and the
/// drawing says why; where none was looked for, it says that.
pub fn way(lift: &LiftPlan, direction: WayDirection, wording: &Wording, style: &Style) -> String {
    let words = Words::new(wording);
    let name = match direction {
        WayDirection::In => ui::WAY_IN,
        WayDirection::Out => ui::WAY_OUT,
    };
    let heading = format!("{}: {}", words.say(name), lift.name);
    let Some(way) = &lift.way else {
        return crate::marks::instead(style, &heading, &words.machine(lift), &words.say(ui::WAY_NOT_LOOKED));
    };
    let route = match direction {
        WayDirection::In => way.way_in.as_ref(),
        WayDirection::Out => way.way_out.as_ref(),
    };
    let course = route.map(Course::of).filter(|c| c.places.len() > 1);
    let subtitle = subtitle(lift, course.as_ref(), &words);
    let width = style.width();
    let mut svg = Svg::new(style.theme);
    let top = crate::marks::title(&mut svg, &heading, &subtitle, 10.0, width - 20.0);
    let Some(map) = view::fit(lift, way, course.as_ref(), width, top) else {
        return crate::marks::instead(style, &heading, &subtitle, &why_not(way, &words));
    };
    let marks = view::draw(&mut svg, &map, lift, way, course.as_ref(), &words);
    let mut y = crate::site_plan::scale_bar(&mut svg, &map, &words);
    if let Some(course) = &course {
        y = profile::draw(&mut svg, Rect { x: 10.0, y: y + 4.0, w: width - 20.0, h: 0.0 }, course, &words);
    }
    let rows = rows::rows(way, course.as_ref(), direction, &marks, &words);
    let columns = if width >= 640.0 { 2 } else { 1 };
    let bottom = crate::key::draw(&mut svg, &rows, 10.0, y + 8.0, width - 20.0, columns);
    let about = match &course {
        Some(course) => words.say(
            ui::WAY_ALT
                .with("lift", lift.name.as_str())
                .with("length", crate::words::length(course.length))
                .with("reverse", crate::words::length(course.reversed))
                .with("changes", course.gear_changes),
        ),
        None => why_not(way, &words),
    };
    let origin = map.px(map.south_west);
    let data = [
        ("px-per-m", map.scale),
        ("x0", origin.0),
        ("y0", origin.1),
        ("east0", map.south_west.x),
        ("north0", map.south_west.y),
    ];
    svg.rect(map.plot, None, Some(Pen::new(Ink::Main, 1.2)));
    svg.finish(width, bottom + 8.0, &style.font_family, &heading, &about, &data)
}

/// Machine, attachment, and what is carried on this way.
fn subtitle(lift: &LiftPlan, course: Option<&Course>, words: &Words<'_>) -> String {
    let carried = match course.map(|c| c.load.as_deref()) {
        None => None,
        Some(Some(load)) => Some(load.to_owned()),
        Some(None) => Some(words.say(ui::WAY_EMPTY)),
    };
    let all = [Some(lift.machine.clone()), Some(lift.attachment.clone()), carried];
    all.into_iter().flatten().filter(|s| !s.trim().is_empty()).collect::<Vec<_>>().join(" · ")
}

/// Why there is no way, in words.
fn why_not(way: &LiftWay, words: &Words<'_>) -> String {
    match &way.refused {
        Some(refused) => words.say(refused.message.clone()),
        None => words.say(ui::WAY_NOT_LOOKED),
    }
}
