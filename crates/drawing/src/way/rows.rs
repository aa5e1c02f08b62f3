//! The key of a way: what was found, what changes where, where the least is left, marks, and what it rests on.

use super::WayDirection;
use super::course::{Change, Course};
use super::looks::{WayGear, WayMark};
use super::profile::STEEP;
use crate::key::{Row, Swatch};
use crate::site_plan::SiteMark;
use crate::words::{Words, length};
use planning::LiftWay;
use planning::route::{Gear, Steering};
use quantity::Quantity;
use std::collections::BTreeSet;
use wording::ui;

pub(super) fn rows(
    way: &LiftWay,
    course: Option<&Course>,
    direction: WayDirection,
    marks: &BTreeSet<SiteMark>,
    words: &Words<'_>,
) -> Vec<Row> {
    let mut rows = Vec::new();
    match course {
        Some(course) => driven(&mut rows, way, course, direction, words),
        None => refused(&mut rows, way, words),
    }
    if way.begins.len() == 2 {
        rows.push(Row::new(Swatch::Way(WayMark::Gate), words.pair(ui::WAY_GATE, &way.from)));
    } else if way.begins.len() == 1 {
        // Where the way in is driven empty, the load is brought here.
        let fetched = way.way_in.as_ref().is_none_or(|w| w.load.is_some());
        let name = if fetched { ui::PICK_UP } else { ui::WAY_LOAD_GOES };
        rows.push(Row::new(Swatch::Way(WayMark::Load), words.pair(name, &way.from)));
    }
    rows.extend(marks.iter().map(|mark| crate::site_plan::row(*mark, words)));
    let route = match direction {
        WayDirection::In => way.way_in.as_ref(),
        WayDirection::Out => way.way_out.as_ref(),
    };
    rows.extend(route.iter().flat_map(|r| &r.notes).map(|note| Row::new(Swatch::None, words.say(note.clone()))));
    rows
}

fn driven(rows: &mut Vec<Row>, way: &LiftWay, course: &Course, direction: WayDirection, words: &Words<'_>) {
    let minutes = (course.time / 60.0).ceil().clamp(1.0, 1e6);
    let sum = ui::WAY_SUM
        .with("length", length(course.length))
        .with("time", format!("{minutes:.0}"))
        .with("changes", course.gear_changes);
    rows.push(Row::new(Swatch::Strong, words.say(sum)));
    for (letter, least, id) in [('A', &course.room, ui::WAY_LEAST_ROOM), ('B', &course.ground, ui::WAY_LEAST_GROUND)] {
        let Some(least) = least else { continue };
        let text = id
            .with("left", words.quantity(least.margin.left))
            .with("of", words.say(least.margin.of.clone()))
            .with("along", length(least.margin.along_m));
        rows.push(Row::new(Swatch::Way(WayMark::Least(letter)), words.say(text)));
    }
    let (from, to) = match direction {
        WayDirection::In => (way.from.clone(), words.say(ui::SITE_STAND)),
        WayDirection::Out => (words.say(ui::SITE_STAND), way.from.clone()),
    };
    for (i, (change, place)) in course.numbered.iter().enumerate() {
        let along = words.length(course.places[*place].along);
        let text = match change {
            Change::Begins => words.say(ui::WAY_BEGINS.with("place", from.as_str())),
            Change::Ends => words.say(ui::WAY_ENDS.with("place", to.as_str())),
            Change::Gear(Gear::Forward) => words.say(ui::WAY_ON_FORWARD.with("along", along)),
            Change::Gear(Gear::Reverse) => words.say(ui::WAY_ON_REVERSE.with("along", along)),
            Change::Steering(steering) => {
                let name = match steering {
                    Steering::TwoWheel => ui::WAY_STEER_TWO,
                    Steering::FourWheel => ui::WAY_STEER_FOUR,
                    Steering::Crab => ui::WAY_STEER_CRAB,
                };
                words.say(ui::WAY_ON_STEERING.with("along", along).with("steering", name))
            }
        };
        rows.push(Row::new(Swatch::Number(i + 1), text));
    }
    for (gear, far, id) in [
        (WayGear::Forward, course.length - course.reversed, ui::WAY_FORWARD),
        (WayGear::Reverse, course.reversed, ui::WAY_REVERSE),
    ] {
        if far > 0.01 {
            rows.push(Row::new(Swatch::Way(WayMark::Driven(gear)), words.say(id.with("length", length(far)))));
        }
    }
    let mut mark = |mark: WayMark, text: String| rows.push(Row::new(Swatch::Way(mark), text));
    mark(WayMark::Machine, words.say(ui::WAY_MACHINE));
    mark(WayMark::Swept, words.say(ui::WAY_SWEPT));
    mark(WayMark::Along, words.say(ui::WAY_ALONG));
    mark(WayMark::Across, words.say(ui::WAY_ACROSS));
    if course.places.iter().any(|p| p.slope_along[1].abs() > STEEP) {
        mark(WayMark::Steep, words.say(ui::WAY_STEEP.with("grade", Quantity::slope(STEEP))));
    }
}

/// Why there is none, what is in the way, what to do.
fn refused(rows: &mut Vec<Row>, way: &LiftWay, words: &Words<'_>) {
    let Some(refused) = &way.refused else {
        rows.push(Row::new(Swatch::Strong, words.say(ui::WAY_NOT_LOOKED)));
        return;
    };
    rows.push(Row::new(Swatch::Strong, words.say(refused.message.clone())));
    if refused.at.is_some() {
        rows.push(Row::new(Swatch::Way(WayMark::Blocked), words.say(ui::WAY_BLOCKED)));
    }
    rows.extend(refused.because.iter().map(|m| Row::new(Swatch::None, words.say(m.clone()))));
    rows.push(Row::new(Swatch::None, words.say(refused.remedy.clone())));
    rows.push(Row::new(Swatch::Point, words.say(ui::SITE_STAND)));
}
