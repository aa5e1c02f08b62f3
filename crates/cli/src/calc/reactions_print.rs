//! What `calc reactions` prints.

use super::reactions::{Carries, LIGHT, ReactionsResult, Stands, StandsOn};
use super::standing::{Standing, side};
use super::text as words;
use super::working;
use crate::args::Said;
use crate::terminal;
use evidence::{Message, TextId};
use machine::SupportState;
use planning::text as names;
use quantity::{Dimension, Quantity};

/// Names of the contacts.
fn contact_names(state: SupportState) -> [TextId; 4] {
    let wheels = [names::WHEEL_FRONT_LEFT, names::WHEEL_FRONT_RIGHT, names::WHEEL_REAR_LEFT, names::WHEEL_REAR_RIGHT];
    match state {
        SupportState::Tyres => wheels,
        SupportState::Stabilizers => [names::PAD_LEFT, names::PAD_RIGHT, wheels[2], wheels[3]],
        SupportState::Outriggers => [names::PAD_LEFT, names::PAD_RIGHT, names::PAD_REAR_LEFT, names::PAD_REAR_RIGHT],
    }
}

pub(super) fn print(r: &ReactionsResult, s: &Standing, said: Said) {
    let w = said.wording();
    let say = |m: &Message| terminal::paragraph(&w.render(m), "", "  ");
    say(&words::REACTIONS_WEIGHT.with("weight", w.worked(Quantity::new(r.weight_n, Dimension::Force))));
    say(&words::REACTIONS_RIGID.message());
    contacts(&r.rigid, s, said);
    say(&words::REACTIONS_SOFT.message());
    contacts(&r.on_tyres, s, said);
    for line in &r.lines {
        let side = side(line.over);
        say(&match line.ratio {
            // More is no margin that anybody reads.
            k if k.is_none_or(|k| k > 100.0) => words::REACTIONS_LINE_NONE.with("side", side),
            k => {
                let k = k.unwrap_or(f64::NAN);
                let holds = line.restoring_nm > line.overturning_nm;
                let id = if holds { words::REACTIONS_LINE } else { words::REACTIONS_LINE_TIPS };
                id.with("side", side).with("ratio", Quantity::number(k))
            }
        });
    }
    if s.machine.slew.is_some() {
        say(&words::RESERVE_AHEAD_ONLY.message());
    }
    say(&if r.stands { words::REACTIONS_STANDS } else { words::REACTIONS_NOT_STANDS }.message());
    say(&words::REACTIONS_NOTE.message());
    working::print(&r.working, None, said);
}

fn contacts(on: &StandsOn, s: &Standing, said: Said) {
    let w = said.wording();
    let say = |m: &Message| terminal::paragraph(&w.render(m), "  ", "    ");
    if on.at_stop {
        say(&words::REACTIONS_STOP.with("range", s.machine.rear.oscillation));
    }
    match on.finding {
        Stands::Holds => {}
        Stands::Tips => say(&words::REACTIONS_TIPS.message()),
        Stands::CannotTell => say(&words::REACTIONS_CANNOT_TELL.message()),
    }
    for (contact, name) in on.contacts.iter().zip(contact_names(s.stance.support.state)) {
        let id = match contact.carries {
            Carries::Enough => words::REACTIONS_CONTACT,
            Carries::Light => words::REACTIONS_LIGHT,
            Carries::InTheAir => words::REACTIONS_IN_THE_AIR,
        };
        let message = id.with("contact", name);
        say(&match contact.carries {
            Carries::InTheAir => message,
            Carries::Enough | Carries::Light => {
                let message = message
                    .with("force", w.worked(Quantity::new(contact.force_n, Dimension::Force)))
                    .with("share", Quantity::ratio(contact.share));
                if contact.carries == Carries::Light { message.with("limit", Quantity::ratio(LIGHT)) } else { message }
            }
        });
    }
    let degrees = |d: f64| w.worked(Quantity::new(d.to_radians(), Dimension::Angle));
    if let (Some(roll), Some(pitch)) = (on.roll_deg, on.pitch_deg) {
        let roll_id = if roll < 0.0 { words::ROLL_RIGHT } else { words::ROLL_LEFT };
        let pitch_id = if pitch < 0.0 { words::PITCH_UP } else { words::PITCH_DOWN };
        say(&words::REACTIONS_ATTITUDE
            .with("roll", roll_id.with("angle", degrees(roll.abs())))
            .with("pitch", pitch_id.with("angle", degrees(pitch.abs()))));
    }
    if let Some(turn) = on.rear_axle_turn_deg.filter(|t| t.abs() > 0.005) {
        let id = if turn < 0.0 { words::REACTIONS_TURN_RIGHT } else { words::REACTIONS_TURN_LEFT };
        say(&id.with("turn", degrees(turn.abs())));
    }
    if let Some(share) = on.steered_share {
        say(&words::REACTIONS_STEERS.with("share", Quantity::ratio(share)));
    }
}
