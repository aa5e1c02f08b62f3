//! Where else to stand, what would help, and the way there, for the terminal.

use crate::terminal::{line, paragraph};
use planning::{Fact, FoundStand, LiftPlan};
use quantity::{Dimension, Quantity};
use wording::{Wording, ui};

/// What a plan tells of stand and way besides its findings.
pub(crate) fn print(lift: &LiftPlan, w: Wording) {
    let off = lift.stand_off_told();
    if !off.is_empty() {
        heading(ui::STAND, w);
        paragraph(&w.render(&lift.stand_from_told()), "    ", "    ");
        facts(&off, w);
    }
    if !lift.other_stands.is_empty() {
        heading(ui::OTHER_STANDS, w);
        for (i, stand) in lift.other_stands.iter().enumerate() {
            other(i + 1, stand, w);
        }
        paragraph(&w.text(ui::OTHER_STANDS_NOTE), "    ", "    ");
    }
    if !lift.changes.is_empty() {
        heading(ui::CHANGES, w);
        for change in &lift.changes {
            paragraph(&w.render(change), "    > ", "      ");
        }
        paragraph(&w.text(ui::CHANGES_NOTE), "    ", "    ");
    }
    if let Some(way) = &lift.way {
        heading(ui::WAY, w);
        facts(&way.told(), w);
        for note in way.notes() {
            paragraph(&w.render(&note), "    - ", "      ");
        }
    }
}

fn heading(id: evidence::TextId, w: Wording) {
    line(&format!("  {}", w.text(id)));
}

fn facts(facts: &[Fact], w: Wording) {
    for [name, said] in facts {
        paragraph(&format!("{}: {}", w.render(name), w.render(said)), "    ", "      ");
    }
}

/// Place, heading, verdict; what governs there with what is left; how far off it may be.
fn other(number: usize, stand: &FoundStand, w: Wording) {
    let metres = |m: f64| Quantity::new(m, Dimension::Length);
    let at = ui::FIELD_OTHER
        .with("east", metres(stand.east_m))
        .with("north", metres(stand.north_m))
        .with("heading", quantity::degrees(stand.heading_deg))
        .with("verdict", w.verdict(stand.verdict));
    paragraph(&w.render(&at), &format!("    {number}. "), "       ");
    let check = w.check(&stand.governing);
    let governs = w.render(&match stand.reserve {
        Some(reserve) => ui::OTHER_GOVERNS_LEFT.with("check", check).with("reserve", w.reserve(reserve)),
        None => ui::OTHER_GOVERNS.with("check", check),
    });
    let turn = Quantity::new(stand.tolerance.turn_rad, Dimension::Angle);
    let off = w.render(&ui::STAND_OFF_BY.with("disc", metres(stand.tolerance.disc_m)).with("turn", turn));
    paragraph(&format!("{governs}; {off}"), "       ", "       ");
}
