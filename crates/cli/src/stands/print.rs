//! Stands for the terminal, at 80 columns.

use super::answer::{LiftStands, PlaceAnswer, StandsAnswer};
use super::text;
use crate::plan_text;
use crate::terminal::{line, paragraph, width};
use evidence::{Message, Status, Verdict};
use planning::{FoundStand, Job};
use quantity::{Dimension, Quantity};
use wording::{Wording, ui};

pub(super) fn print(job: &Job, answer: &StandsAnswer, w: Wording) {
    paragraph(&format!("{}  ·  {}  ·  {}", job.name, job.site, job.date), "", "");
    if job.invented {
        paragraph(&w.text(ui::INVENTED_DATA_NOTE), "", "");
    }
    for lift in &answer.lifts {
        line("");
        print_lift(lift, w);
    }
}

fn metres(value: f64) -> Quantity {
    Quantity::new(value, Dimension::Length)
}

fn area(value: f64) -> Quantity {
    Quantity::new(value, Dimension::Area)
}

fn degrees(value: f64) -> Quantity {
    Quantity::new(value.to_radians(), Dimension::Angle)
}

fn print_lift(lift: &LiftStands, w: Wording) {
    paragraph(&format!("{} {}", lift.lift, lift.name), "", "  ");
    line(&"-".repeat(width()));
    let mass = w.quantity(Quantity::new(lift.load_kg, Dimension::Mass));
    let support = w.text(planning::support_name(lift.support));
    paragraph(&format!("{} · {} · {support} · {} · {mass}", lift.machine, lift.attachment, lift.load), "  ", "  ");
    for at in &lift.at {
        print_place(at, w);
    }
    if lift.field.is_none() {
        paragraph(&w.render(&text::CANNOT_LOOK.with("lift", &lift.lift)), "  ? ", "    ");
        return;
    }
    print_area(lift, w);
    if !lift.best.is_empty() {
        paragraph(&w.text(text::BEST), "  ", "  ");
    } else if lift.passing_m2 > 0.0 {
        paragraph(&w.text(text::NONE_WHOLE), "  x ", "    ");
    }
    for (i, found) in lift.best.iter().enumerate() {
        print_found(i + 1, found, w);
    }
    if !lift.why_not.is_empty() {
        paragraph(&w.text(text::WHY_NOT), "  ", "  ");
    }
    for refused in &lift.why_not {
        let message = text::AREA.with("area", area(refused.area_m2)).with("reason", refused.by.name());
        paragraph(&w.render(&message), "    ", "      ");
    }
    if !lift.changes.is_empty() {
        paragraph(&w.text(text::CHANGES), "  ", "  ");
    }
    for change in &lift.changes {
        paragraph(&w.render(change), "    > ", "      ");
    }
}

/// Where it passes, and what no stand can mend.
fn print_area(lift: &LiftStands, w: Wording) {
    let cell = lift.field.as_ref().map_or(f64::NAN, |f| f.cell_m);
    let id = if lift.passing_m2 > 0.0 { text::PASSES } else { text::PASSES_NOWHERE };
    let mut message = id.message();
    if lift.passing_m2 > 0.0 {
        message = message.with("area", area(lift.passing_m2));
    }
    let message = message
        .with("all", area(lift.area_m2))
        .with("radius", metres(lift.radius_m))
        .with("landing", &lift.landing)
        .with("cell", metres(cell));
    paragraph(&w.render(&message), "  ", "  ");
    if !lift.everywhere.is_empty() {
        let checks = lift.everywhere.iter().map(|id| w.check(id)).collect::<Vec<_>>().join("; ");
        paragraph(&w.render(&text::EVERYWHERE.with("checks", checks)), "  x ", "    ");
    }
}

fn print_found(number: usize, found: &FoundStand, w: Wording) {
    let stand = text::STAND
        .with("east", metres(found.east_m))
        .with("north", metres(found.north_m))
        .with("heading", degrees(found.heading_deg))
        .with("verdict", w.verdict(found.verdict));
    paragraph(&w.render(&stand), &format!("    {number}. "), "       ");
    let say = |message: &Message| paragraph(&w.render(message), "       ", "       ");
    let governs = w.check(&found.governing);
    say(&match found.reserve {
        Some(reserve) => text::GOVERNS_LEFT.with("check", governs).with("reserve", w.reserve(reserve)),
        None => text::GOVERNS.with("check", governs),
    });
    let off = &found.tolerance;
    let (disc, turn) = (metres(off.disc_m), Quantity::new(off.turn_rad, Dimension::Angle));
    say(&match off.disc_by {
        Some(by) => text::MAY_BE_OFF_BY.with("disc", disc).with("turn", turn).with("reason", by.name()),
        None => text::MAY_BE_OFF.with("disc", disc).with("turn", turn),
    });
}

/// The answer in one place: the verdict, and every finding that keeps it from go, with what to do.
fn print_place(place: &PlaceAnswer, w: Wording) {
    let at = text::AT
        .with("east", metres(place.east_m))
        .with("north", metres(place.north_m))
        .with("heading", degrees(place.heading_deg))
        .with("verdict", w.verdict(place.verdict));
    paragraph(&w.render(&at), "  ", "    ");
    // What refuses comes before what is only a condition.
    let mut open: Vec<_> = place.findings.iter().filter(|f| f.status > Status::Go).collect();
    open.sort_by_key(|f| std::cmp::Reverse(f.status));
    for finding in open {
        plan_text::print_finding(finding, w);
    }
    match &place.nearest {
        Some(near) => {
            let message = text::NEAREST
                .with("east", metres(near.east_m))
                .with("north", metres(near.north_m))
                .with("heading", degrees(near.heading_deg))
                .with("distance", metres(near.distance_m));
            paragraph(&w.render(&message), "  > ", "    ");
        }
        None if place.verdict == Verdict::NoGo => paragraph(&w.text(text::NO_NEAREST), "  > ", "    "),
        None => {}
    }
}
