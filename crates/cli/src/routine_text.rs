//! The routines of a plan for the terminal: a few lines each.

use crate::terminal::{line, paragraph, width};
use planning::{RoutineHolds, RoutinePlan};
use wording::{Wording, ui};

pub(crate) fn print(routines: &[RoutinePlan], w: Wording) {
    for routine in routines {
        line("");
        paragraph(&format!("{}: {} {}", w.text(ui::ROUTINE), routine.id, routine.name), "", "  ");
        line(&"-".repeat(width()));
        let support = w.text(planning::support_name(routine.support));
        paragraph(&format!("{} · {} · {support}", routine.machine, routine.attachment), "  ", "  ");
        for landing in &routine.landings {
            let said = format!("{}: {}", landing.name, w.render(&landing.said));
            paragraph(&said, &format!("  {} ", sign(landing.holds)), "    ");
        }
        for said in &routine.said {
            paragraph(&w.render(said), "  ", "  ");
        }
        let within: Vec<&str> =
            routine.lifts.iter().filter(|l| l.outside.is_empty()).map(|l| l.lift.as_str()).collect();
        let summary = if within.is_empty() {
            w.text(ui::ROUTINE_NO_LIFTS)
        } else {
            w.render(&ui::ROUTINE_LIFTS.with("lifts", within.join(", ")))
        };
        paragraph(&summary, "  ", "  ");
        for lift in routine.lifts.iter().filter(|l| !l.outside.is_empty()) {
            let why = lift.outside.iter().map(|m| w.render(m)).collect::<Vec<_>>().join("; ");
            let outside = ui::ROUTINE_OUTSIDE.with("lift", &lift.lift).with("reasons", why);
            paragraph(&w.render(&outside), "    ", "      ");
        }
    }
}

/// A sign that reads without colour.
fn sign(holds: RoutineHolds) -> &'static str {
    match holds {
        RoutineHolds::Everywhere => "+",
        RoutineHolds::InPart => "!",
        RoutineHolds::Nowhere => "x",
    }
}
