//! An order for the terminal, at 80 columns.

use super::{clock, text};
use crate::terminal::{line, paragraph, width};
use evidence::Arg;
use planning::Job;
use planning::order::{JobOrder, LandingStep, OrderedLift};
use quantity::{Dimension, Quantity};
use wording::{Wording, ui};

pub(super) fn print(job: &Job, order: &JobOrder, changed: &[(usize, u8)], w: Wording) {
    paragraph(&format!("{}  ·  {}  ·  {}", job.name, job.site, job.date), "", "");
    if job.invented {
        paragraph(&w.text(ui::INVENTED_DATA_NOTE), "", "");
    }
    for (lift, priority) in changed {
        let message = text::CHANGED.with("lift", &job.lifts[*lift].id).with("priority", usize::from(*priority));
        paragraph(&w.render(&message), "", "");
    }
    let end = order.lifts.iter().map(|l| l.end_min.high).fold(f64::NEG_INFINITY, f64::max);
    let summary = if order.lifts.is_empty() {
        text::NOTHING.message()
    } else {
        text::SUMMARY.with("placed", order.lifts.len()).with("lifts", job.lifts.len()).with("end", said_time(end))
    };
    paragraph(&w.render(&summary), "", "");
    if !order.lifts.is_empty() {
        paragraph(&w.text(if order.exact { text::EXACT } else { text::GOOD }), "", "");
        paragraph(&w.text(text::ROWS), "", "");
    }
    for unit in &job.machines {
        let of_it: Vec<_> = order.lifts.iter().filter(|l| l.machine == unit.machine.id).collect();
        if of_it.is_empty() {
            continue;
        }
        line("");
        heading(&format!("{} {}", unit.machine.id, unit.machine.name));
        for lift in of_it {
            print_lift(job, lift, w);
        }
    }
    print_landings(job, order, w);
    if !order.left_out.is_empty() {
        line("");
        heading(&w.text(text::LEFT_OUT));
        for left in &order.left_out {
            let message = text::LEFT_OUT_LIFT
                .with("lift", &left.lift)
                .with("name", name(job, &left.lift))
                .with("reason", left.reason.clone());
            paragraph(&w.render(&message), "  x ", "    ");
            for remedy in &left.remedies {
                paragraph(&w.render(remedy), "    > ", "      ");
            }
        }
    }
    if !order.notes.is_empty() {
        line("");
    }
    for note in &order.notes {
        paragraph(&w.render(note), "- ", "  ");
    }
}

fn heading(title: &str) {
    paragraph(title, "", "  ");
    line(&"-".repeat(width()));
}

fn name<'j>(job: &'j Job, lift: &str) -> &'j str {
    job.lifts.iter().find(|l| l.id == lift).map_or("", |l| l.name.as_str())
}

/// A time; of the next day with that said.
fn said_time(minutes: f64) -> Arg {
    let (time, next_day) = clock(minutes);
    if next_day { text::NEXT_DAY.with("time", time).into() } else { time.into() }
}

fn print_lift(job: &Job, lift: &OrderedLift, w: Wording) {
    let time = |minutes: f64| match said_time(minutes) {
        Arg::Message(message) => w.render(&message),
        _ => clock(minutes).0,
    };
    let times = format!("{}  {}  {}", time(lift.start_min), time(lift.end_min.nominal), time(lift.end_min.high));
    let mut said = format!("{} {}", lift.lift, name(job, &lift.lift));
    let minutes = |value: f64| w.quantity(Quantity::new(value.ceil(), Dimension::Number));
    let mut more = Vec::new();
    if lift.stays {
        more.push(w.text(text::STAYS));
    } else if lift.way_min.high > 0.0 {
        let way = text::WAY.with("likely", minutes(lift.way_min.nominal)).with("most", minutes(lift.way_min.high));
        more.push(w.render(&way));
    }
    if lift.stated {
        more.push(w.text(text::STATED));
    }
    if !more.is_empty() {
        said = format!("{said} ({})", more.join("; "));
    }
    let indent = " ".repeat(times.chars().count() + 4);
    paragraph(&said, &format!("  {times}  "), &indent);
    for condition in &lift.conditions {
        paragraph(&w.render(condition), &format!("{indent}! "), &format!("{indent}  "));
    }
}

/// What lies on each landing that something is brought to or taken from, lift by lift.
fn print_landings(job: &Job, order: &JobOrder, w: Wording) {
    if order.landings.is_empty() {
        return;
    }
    line("");
    heading(&w.text(text::LANDINGS));
    for landing in &job.landings {
        let steps: Vec<&LandingStep> = order.landings.iter().filter(|s| s.landing == landing.id).collect();
        if steps.is_empty() {
            continue;
        }
        paragraph(&landing.name, "  ", "    ");
        for step in steps {
            let lies = Quantity::new(step.lies_kg, Dimension::Mass);
            let message = match step.may_lie_kg {
                Some(_) => text::LIES
                    .with("lift", &step.lift)
                    .with("lies", lies)
                    .with("may", Quantity::new(may(step), Dimension::Mass)),
                None => text::LIES_LESS.with("lift", &step.lift).with("lies", lies),
            };
            paragraph(&w.render(&message), "    ", "      ");
        }
    }
}

/// What may lie there with this load: what may lie when it comes, and the load itself, kg.
fn may(step: &LandingStep) -> f64 {
    step.may_lie_kg.map_or(f64::NAN, |may| may + (step.lies_kg - step.lay_kg))
}
