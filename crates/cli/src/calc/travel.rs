//! `calc travel-stability`: what driving leaves of a machine's stability.

use super::input::Input;
use super::standing::{Asks, Standing, failure, given, side};
use super::text as words;
use super::travel_cases::{Asked, AskedWind, TravelCase, TravelResult, answer};
use super::working;
use crate::args::Said;
use crate::{Outcome, Run, terminal, text};
use evidence::{Message, Silent, TextId};
use jobfile::{Bound, Reader};
use machine::SupportState;
use quantity::{Dimension, Quantity, STANDARD_GRAVITY as G};
use stability::wind::WindLoad;
use stability::{Criterion, FULL_BRAKING, First, LoadFaces, REACTION, Travel, wind_parts};

pub(crate) const EXAMPLE: &str = r#"# Driving with a load: what braking, starting, turning, a kerb and a rut leave
# before it tips, whether it slides first, and how far it takes to stop. On its
# tyres. The boom as carried.
machine = "validation/machines/r1.toml"   # relative to this file
attachment = "forks"
boom_angle = "5°"
extension = "0 m"
fork_tilt = "8°"             # tilted back; may be left out: level
load = "2000 kg"             # 0 kg: unladen
load_ahead = "0.61 m"        # centre from the fork face; 0 for a hook
load_left = "0 m"
load_up = "0.60 m"           # centre above the forks; 0 for a hook
rear_axle = "free"           # may oscillate; or "locked"
slope_along = "-8 %"         # ground rises ahead; here it falls
slope_across = "3 %"         # ground falls to the left
travel = "ahead"             # boom first; or "back"
speed = "8 km/h"
radius = "6.0 m"             # of the turn, to the middle of the machine; left
#                              out: straight
retardation = "50 %"         # of gravity, by the brakes; left out: 51 %, full
#                              braking on dry ground
reaction_time = "2.5 s"      # until the brake takes hold; left out: 2.5 s
rut_depth = "0.10 m"         # one or two wheels drop so far at once; 0 m: none
ground_friction = "0.6"      # tyres on ground: dry earth 0.65, wet earth 0.4 to
#                              0.5, snow 0.15
fork_friction = "0.3"        # load on forks: wood on steel 0.3, steel on steel
#                              0.2
tilt_fore_aft = "7 %"        # tilt that must remain
tilt_sideways = "12 %"
# gust = "9 m/s"             # at the height of load and boom; left out: no
#                              wind. With a load also what the wind sees of it:
# load_depth = "1.20 m"
# load_width = "1.20 m"
# load_height = "1.20 m"
# wind_factor = "1.4"        # shape factor of the load; 1.8 for sheets
"#;

const TRAVEL: [(&str, Travel); 2] = [("ahead", Travel::Ahead), ("back", Travel::Back)];

pub(crate) fn run(input: &Input, said: Said) -> Run {
    let asks = Asks { state: Some(SupportState::Tyres), ..Asks::default() };
    let (mut standing, asked) = given(input, said, asks, asked)?;
    let root = input.document.root();
    if let Some(wind) = &asked.wind {
        if standing.load.mass > 0.0 && wind.load.is_none() {
            root.missing("load_depth", "load_depth = \"1.20 m\"");
            return Err(failure(input, said));
        }
        standing.loading.wind = wind_load(&standing, wind);
    }
    let Some(result) = answer(&standing, &asked) else {
        root.fault("machine", text::TRAVEL_CANNOT_TELL.message(), None);
        return Err(failure(input, said));
    };
    if said.json() {
        terminal::print_json(&result);
    } else {
        print(&result, &standing, &asked, said);
    }
    let holds = !result.slides && !result.load_slides && result.stopping_distance_m.is_some();
    Ok(if result.enough && result.carried && !result.load_swings && holds { Outcome::Done } else { Outcome::Outside })
}

/// The gust on all that it sees.
fn wind_load(s: &Standing, wind: &AskedWind) -> WindLoad {
    let hangs = s.attachment.hangs();
    let faces = wind.load.filter(|_| s.load.mass > 0.0).map(|([depth, width, height], factor)| LoadFaces {
        depth,
        width,
        height,
        factor,
        hangs,
    });
    WindLoad::of(wind.gust, &wind_parts(&s.machine, &s.attachment, s.boom, faces), &mut Silent)
}

/// A gust, where one is stated. `None` with a fault noted where a key is missing or wrong.
#[expect(clippy::option_option, reason = "faulty, left out, or stated")]
fn gust(root: &Reader<'_>) -> Option<Option<AskedWind>> {
    const LOAD: [&str; 4] = ["load_depth", "load_width", "load_height", "wind_factor"];
    if !root.has("gust") {
        for key in LOAD.into_iter().filter(|key| root.has(key)) {
            let _ = root.optional(key);
            root.fault(key, words::TRAVEL_WIND_WITHOUT_GUST.message(), None);
        }
        return Some(None);
    }
    let gust = root.decision("gust", Dimension::Speed, Bound::UpTo(100.0));
    if !LOAD.iter().any(|key| root.has(key)) {
        return Some(Some(AskedWind { gust: gust?, load: None }));
    }
    let size = ["load_depth", "load_width", "load_height"]
        .map(|key| root.decision(key, Dimension::Length, Bound::ZeroTo(100.0)));
    let factor = root.decision("wind_factor", Dimension::Number, Bound::Within(0.1, 3.0));
    let [depth, width, height] = size;
    Some(Some(AskedWind { gust: gust?, load: Some(([depth?, width?, height?], factor?)) }))
}

/// No brake takes longer to take hold, s.
const LONGEST: f64 = 10.0;

/// Seconds until the brake takes hold.
fn reaction(root: &Reader<'_>) -> Option<f64> {
    if !root.has("reaction_time") {
        return Some(REACTION);
    }
    let written = root.text_or_none("reaction_time")?;
    let number = written.trim().strip_suffix('s').and_then(|n| n.trim().replace(',', ".").parse::<f64>().ok());
    let time = number.filter(|t| (0.0..=LONGEST).contains(t));
    if time.is_none() {
        root.fault("reaction_time", words::TRAVEL_BAD_TIME.with("found", written), None);
    }
    time
}

fn asked(root: &Reader<'_>) -> Option<Asked> {
    let travel = root.choice("travel", &TRAVEL);
    let speed = root.decision("speed", Dimension::Speed, Bound::ZeroTo(30.0));
    let radius = root.decision_or_none("radius", Dimension::Length, Bound::Positive);
    let retardation = root.decision_or_none("retardation", Dimension::Ratio, Bound::UpTo(1.5));
    let reaction = reaction(root);
    let wind = gust(root);
    let drop = root.decision("rut_depth", Dimension::Length, Bound::ZeroTo(3.0));
    let [friction, fork_friction] =
        ["ground_friction", "fork_friction"].map(|key| root.decision(key, Dimension::Number, Bound::Within(0.01, 1.5)));
    // Asked for with the machine already; a second look gives no second fault.
    let along = root.decision_or_none("slope_along", Dimension::Slope, Bound::Any);
    let [fore_aft, sideways] =
        ["tilt_fore_aft", "tilt_sideways"].map(|key| root.decision(key, Dimension::Slope, Bound::UpTo(1.0)));
    Some(Asked {
        travel: travel?,
        speed: speed?,
        radius,
        retardation: retardation.map_or(FULL_BRAKING, |share| share * G),
        drop: drop?,
        reaction: reaction?,
        wind: wind?,
        friction: friction?,
        fork_friction: fork_friction?,
        along: along?,
        fore_aft: fore_aft?,
        sideways: sideways?,
    })
}

fn name(case: TravelCase) -> TextId {
    match case {
        TravelCase::AtRest => text::CASE_AT_REST,
        TravelCase::Braking => text::CASE_BRAKING,
        TravelCase::Starting => text::CASE_STARTING,
        TravelCase::TurningLeft => text::CASE_TURNING_LEFT,
        TravelCase::TurningRight => text::CASE_TURNING_RIGHT,
        TravelCase::BrakingLeft => text::CASE_BRAKING_LEFT,
        TravelCase::BrakingRight => text::CASE_BRAKING_RIGHT,
        TravelCase::Kerb => text::CASE_KERB,
        TravelCase::WheelDrop => text::CASE_WHEEL_DROP,
    }
}

/// Each case with the line that has the least left, then the rest.
fn print(r: &TravelResult, s: &Standing, asked: &Asked, said: Said) {
    let w = said.wording();
    let say = |m: &Message| terminal::paragraph(&w.render(m), "", "  ");
    if !r.carried {
        say(&text::TRAVEL_BOOM_UP.message());
    }
    if r.load_swings {
        say(&text::TRAVEL_HUNG.message());
    }
    let (ratio, number) = (Quantity::ratio, Quantity::number);
    for group in r.cases.chunk_by(|a, b| a.case == b.case) {
        let Some(least) = group.iter().min_by(|a, b| a.reserve.total_cmp(&b.reserve)) else { continue };
        let with = |id: TextId| {
            id.with("case", name(least.case)).with("side", side(least.over)).with("share", ratio(least.reserve))
        };
        if least.reserve <= 0.0 {
            say(&text::TRAVEL_NONE_LEFT.with("case", name(least.case)).with("side", side(least.over)));
            continue;
        }
        say(&match least.tilt_deg.filter(|_| least.criterion != Some(Criterion::Energy)) {
            Some(tilt) => with(text::TRAVEL_LINE).with("tilt", Quantity::new(tilt.to_radians(), Dimension::Angle)),
            None => with(text::TRAVEL_ENERGY),
        });
    }
    if let Some(g) = r.governs {
        let id = if g.reserve > 0.0 { text::TRAVEL_GOVERNS } else { text::TRAVEL_TIPS };
        say(&id.with("case", name(g.case)).with("side", side(g.over)));
    }
    if let Some(l) = r.cases.iter().find(|l| l.short()) {
        let angle = |d: f64| Quantity::new(d.to_radians(), Dimension::Angle);
        let (tilt, required) = (l.tilt_deg.unwrap_or(f64::NAN), l.required_deg.unwrap_or(f64::NAN));
        let short = text::TRAVEL_SHORT.with("case", name(l.case)).with("side", side(l.over));
        say(&short.with("tilt", angle(tilt)).with("required", angle(required)));
    }
    if asked.radius.is_none() {
        say(&text::TRAVEL_STRAIGHT.message());
    }
    say(&text::TRAVEL_KERB_SPEED.with("speed", Quantity::new(r.kerb_trip_speed_m_s, Dimension::Speed)));
    let rest = ratio(r.rear_share_at_rest);
    say(&if r.rear_share_least > 0.0 {
        text::TRAVEL_REAR.with("rest", rest).with("least", ratio(r.rear_share_least))
    } else {
        text::TRAVEL_REAR_LIFTS.with("rest", rest)
    });
    match r.stopping_distance_m {
        Some(d) => say(&text::TRAVEL_STOPS
            .with("distance", Quantity::new(d, Dimension::Length))
            .with("time", number(asked.reaction))),
        None => say(&text::TRAVEL_NEVER_STOPS.message()),
    }
    let slides = if r.slides {
        text::TRAVEL_SLIDES
    } else if r.first == First::Slides {
        text::TRAVEL_SLIDES_FIRST
    } else {
        text::TRAVEL_TIPS_FIRST
    };
    say(&slides.with("needed", number(r.friction_needed)).with("friction", number(asked.friction)));
    if let Some(needed) = r.load_friction_needed {
        let id = if r.load_slides { text::TRAVEL_LOAD_SLIDES } else { text::TRAVEL_LOAD_STAYS };
        say(&id.with("needed", number(needed)).with("friction", number(asked.fork_friction)));
    } else if r.load_slides {
        say(&text::TRAVEL_LOAD_OFF.message());
    }
    if s.machine.slew.is_some() {
        say(&super::text::RESERVE_AHEAD_ONLY.message());
    }
    if asked.wind.is_none() {
        say(&words::TRAVEL_NO_WIND.message());
    }
    say(&text::TRAVEL_CARRY.message());
    for of in &r.working {
        // The case that governs, and the stop; all are in the JSON.
        match (of.case, r.governs) {
            (Some(case), Some(g)) if case == g.case => working::print(&of.working, Some(&name(case).message()), said),
            (None, _) => working::print(&of.working, None, said),
            _ => {}
        }
    }
}
