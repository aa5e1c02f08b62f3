//! Room on the landing: nothing lies where the load comes down, nothing in the way of the forks, room beside it for the
//! people who stay. Whether the load fits at all, and whether the forks come out, the approach tells.

use super::metres;
use crate::context::Context;
use crate::landing_strength::StandsOn;
use crate::{Task, text};
use evidence::{Finding, Message, Source, Status};
use ground::room::{Area, PERSON_SPACE, Room};

/// What was found.
enum Found<'a> {
    /// The load has its place; so many people have theirs.
    Place { people: usize },
    /// That lies where the load comes down.
    TakenBy(&'a str),
    /// That lies where the forks come in.
    InTheWay(&'a str),
    /// That lies there, nobody says where.
    Somewhere(&'a str),
    /// So much lies there, nobody says where, kg.
    Occupied(f64),
    /// So many people have no room beside the load.
    NoRoom { people: usize },
}

/// `None`: there is nothing to say, since nothing lies there and nobody stands there.
fn found<'a>(ctx: &Context<'a>) -> Option<Found<'a>> {
    if ctx.lift.task == Task::PickUp {
        return None;
    }
    let s = ctx.strength();
    // On a floor people step aside; a bay ends at its edges.
    let bounded = s.stands == Some(StandsOn::Scaffold) || s.stands.is_none() && s.people.is_some();
    let people = if bounded { s.people_counted() } else { 0 };
    let room = room(ctx, people);
    let load = load(ctx, &room);
    let half = room.forks_width / 2.0;
    let middle = f64::midpoint(load.y.0, load.y.1);
    let lane = Area { x: (0.0, load.x.0), y: (middle - half, middle + half) };
    // Without a direction of approach nobody knows which edge a place counts from.
    let known = ctx.landing.approach.is_some();
    let placed = || s.lying.iter().filter_map(|l| Some((l, l.place.filter(|_| known)?)));
    if let Some((l, _)) = placed().find(|(_, a)| a.meets(load)) {
        return Some(Found::TakenBy(&l.what));
    }
    if !ctx.hung()
        && let Some((l, _)) = placed().find(|(_, a)| a.meets(lane))
    {
        return Some(Found::InTheWay(&l.what));
    }
    if people > 0 {
        let mut full: Vec<Area> = placed().map(|(_, a)| a).collect();
        full.push(load);
        if room.stand(&full).is_none() {
            return Some(Found::NoRoom { people });
        }
    }
    if let Some(l) = s.lying.iter().find(|l| l.place.is_none() || !known) {
        return Some(Found::Somewhere(&l.what));
    }
    // Mass that is there without a name is somewhere too. A truck's deck is seen from the cab.
    let occupied = quantity::Si::si(&ctx.landing.occupied);
    if occupied > 0.0 && s.stands != Some(StandsOn::Vehicle) {
        return Some(Found::Occupied(occupied));
    }
    (people > 0 || !s.lying.is_empty()).then_some(Found::Place { people })
}

fn room(ctx: &Context<'_>, people: usize) -> Room {
    Room {
        size: [ctx.landing.size.x, ctx.landing.size.y],
        taken: Vec::new(),
        load: [ctx.load.depth, ctx.load.width],
        clearance: 0.0,
        people,
        forks_width: ctx.attachment.and_then(machine::Attachment::width).unwrap_or(ctx.load.width),
        withdrawal: 0.0,
        way_back: 0.0,
    }
}

/// Where the load comes to lie: its middle in the landing's.
fn load(ctx: &Context<'_>, room: &Room) -> Area {
    // Without a direction of approach either side may come first.
    let [x, y] = if ctx.landing.approach.is_some() { room.load } else { [room.load[0].max(room.load[1]); 2] };
    let span = |whole: f64, part: f64| ((whole - part) / 2.0, f64::midpoint(whole, part));
    Area { x: span(room.size[0], x), y: span(room.size[1], y) }
}

pub(crate) fn status(ctx: &Context<'_>) -> Option<Status> {
    found(ctx).map(|f| of(ctx, &f))
}

fn of(ctx: &Context<'_>, found: &Found<'_>) -> Status {
    match found {
        Found::Place { .. } => Status::Go,
        Found::TakenBy(_) | Found::InTheWay(_) => Status::NoGo,
        Found::NoRoom { .. } if ctx.strength().people.is_some() => Status::NoGo,
        Found::NoRoom { .. } | Found::Somewhere(_) | Found::Occupied(_) => Status::Condition,
    }
}

pub(crate) fn finding(ctx: &Context<'_>) -> Option<Finding> {
    let found = found(ctx)?;
    let status = of(ctx, &found);
    let name = &ctx.landing.name;
    let (message, remedy): (Message, _) = match &found {
        Found::Place { people: 0 } => (text::LANDING_ROOM.with("landing", name), None),
        Found::Place { people } => {
            (text::LANDING_ROOM_PEOPLE.with("landing", name).with("people", people.to_string()), None)
        }
        Found::TakenBy(what) => {
            (text::LANDING_TAKEN.with("landing", name).with("what", *what), Some(text::DO_CLEAR_PLACE))
        }
        Found::InTheWay(what) => {
            (text::LANDING_IN_THE_WAY.with("landing", name).with("what", *what), Some(text::DO_CLEAR_PLACE))
        }
        Found::Somewhere(what) => {
            (text::LANDING_SOMEWHERE.with("landing", name).with("what", *what), Some(text::DO_SEE_PLACE_CLEAR))
        }
        Found::Occupied(mass) => (
            text::LANDING_OCCUPIED_SOMEWHERE.with("landing", name).with("mass", super::kilograms(*mass)),
            Some(text::DO_SEE_PLACE_CLEAR),
        ),
        Found::NoRoom { people } => (
            text::LANDING_NO_ROOM
                .with("landing", name)
                .with("people", people.to_string())
                .with("space", metres(PERSON_SPACE)),
            Some(text::DO_NOBODY_ON_LANDING),
        ),
    };
    let finding = Finding::new("landing-room", status, message).source(Source::from_memory("EN 12811-1:2003"));
    Some(remedy.into_iter().fold(finding, Finding::remedy))
}
