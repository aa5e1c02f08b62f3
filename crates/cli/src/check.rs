//! `counterpoise check`: one look into a load chart. Never says go.

use crate::args::{CheckArgs, FromArg, Said, SupportArg, ToArg};
use crate::failure::Failure;
use crate::{Outcome, Run, terminal, text};
use evidence::{Faults, Message, Place, Severity};
use machine::{Machine, SupportState};
use planning::{DistanceAnswer, DistanceQuestion, MeasuredFrom, MeasuredTo, NoAnswer, distance_check};
use quantity::{Dimension, Quantity};
use std::collections::BTreeMap;
use std::path::Path;

pub(crate) fn run(args: &CheckArgs) -> Run {
    let said = args.said;
    let machine = read_machine(&args.machine, said)?;
    let mut faults = Faults::default();
    let mass = argument(&mut faults, "--load", &args.load, Dimension::Mass);
    let distance = argument(&mut faults, "--distance", &args.distance, Dimension::Length);
    let height = argument(&mut faults, "--height", &args.height, Dimension::Length);
    let given = args.load_centre.as_ref().map(|c| argument(&mut faults, "--load-centre", c, Dimension::Length));
    if faults.any_error() {
        return Err(Failure::new(faults, said));
    }
    let support = support(args.support);
    let forks = machine.attachment(&args.attachment).is_some_and(|a| a.rated_load_centre().is_some());
    if forks && given.is_none() {
        let hint = Some(text::HINT_LOAD_CENTRE.message());
        return Err(Failure::one(said, "cli::no-load-centre", "", text::NO_LOAD_CENTRE.message(), hint));
    }
    let load_centre = given.unwrap_or(0.0);
    let question = DistanceQuestion {
        machine: &machine,
        attachment: &args.attachment,
        support,
        mass,
        load_centre,
        distance,
        from: match args.from {
            FromArg::FrontTyreFace => MeasuredFrom::FrontTyreFace,
            FromArg::FrontAxle => MeasuredFrom::FrontAxle,
        },
        to: match args.to {
            ToArg::ForkHeel => MeasuredTo::ForkHeel,
            ToArg::LoadCentre => MeasuredTo::LoadCentre,
            ToArg::Hook => MeasuredTo::Hook,
        },
        height,
    };
    let answer = distance_check(&question).map_err(|why| no_answer(why, args, &machine))?;
    if said.json() {
        terminal::print_json(&answer);
    } else {
        print(&answer, &machine, mass, height, said);
    }
    Ok(if answer.inside { Outcome::Done } else { Outcome::Outside })
}

pub(crate) fn support(arg: SupportArg) -> SupportState {
    match arg {
        SupportArg::Tyres => SupportState::Tyres,
        SupportArg::Stabilizers => SupportState::Stabilizers,
        SupportArg::Outriggers => SupportState::Outriggers,
    }
}

/// A machine file from disk.
pub(crate) fn read_machine(path: &Path, said: Said) -> Result<Machine, Failure> {
    let name = path.display().to_string();
    let bytes = std::fs::read(path).map_err(|e| Failure::cannot_read(said, &name, &e.to_string()))?;
    match jobfile::read_machine(&name, &bytes) {
        Ok((machine, warnings)) => {
            if !warnings.list.is_empty() {
                let files = BTreeMap::from([(name, String::from_utf8_lossy(&bytes).into_owned())]);
                crate::failure::print_faults(&warnings, said, &files);
            }
            Ok(machine)
        }
        Err(faults) => {
            let files = BTreeMap::from([(name, String::from_utf8_lossy(&bytes).into_owned())]);
            Err(Failure { faults, said, files })
        }
    }
}

/// A quantity of the command line; what is wrong with it goes to `faults`.
pub(crate) fn argument(faults: &mut Faults, name: &str, value: &str, dimension: Dimension) -> f64 {
    let parsed = if dimension == Dimension::Mass {
        quantity::parse_non_negative(value, dimension)
    } else {
        quantity::parse(value, dimension)
    };
    match parsed {
        Ok(q) => q.si,
        Err(e) => {
            let (message, hint) = wording::explain(&e, value);
            faults.push(evidence::Fault {
                code: "cli::argument".to_owned(),
                severity: Severity::Error,
                place: Place { key: Some(format!("{name} \"{value}\"")), ..Place::default() },
                message,
                hint,
            });
            f64::NAN
        }
    }
}

fn no_answer(why: NoAnswer, args: &CheckArgs, machine: &Machine) -> Failure {
    let file = args.machine.display().to_string();
    let (code, message, hint) = match why {
        NoAnswer::Attachment => {
            let known: Vec<_> = machine.attachments.iter().map(|a| a.id.as_str()).collect();
            let message = text::NO_ATTACHMENT.with("attachment", &args.attachment).with("known", known.join(", "));
            ("cli::no-attachment", message, None)
        }
        NoAnswer::People => ("cli::people", text::NO_PEOPLE.message(), Some(text::HINT_NO_PEOPLE.message())),
        NoAnswer::Chart => ("cli::no-chart", text::NO_CHART.with("attachment", &args.attachment), None),
        NoAnswer::Point => ("cli::wrong-point", text::WRONG_POINT.message(), Some(text::HINT_WRONG_POINT.message())),
    };
    Failure::one(args.said, code, &file, message, hint)
}

fn print(answer: &DistanceAnswer, machine: &Machine, mass: f64, height: f64, said: Said) {
    let w = said.wording();
    let length = |si: f64| Quantity::new(si, Dimension::Length);
    let kg = |si: f64| Quantity::new(si, Dimension::Mass);
    let say = |m: &Message| terminal::paragraph(&w.render(m), "  ", "  ");
    terminal::line(&w.text(if answer.inside { text::CHECK_INSIDE } else { text::CHECK_OUTSIDE }));
    match (answer.capacity_kg, &answer.zone) {
        (Some(capacity), Some(zone)) => {
            say(&text::CHECK_GOVERNS
                .with("capacity", kg(capacity))
                .with("zone", zone)
                .with("reach", length(answer.reach_m))
                .with("height", length(height)));
            if capacity < mass {
                say(&text::CHECK_OVER.with("over", kg(mass - capacity)));
            }
        }
        _ => say(&text::CHECK_NOTHING.with("reach", length(answer.reach_m)).with("height", length(height))),
    }
    if answer.inside {
        say(&text::CHECK_ROOM
            .with("further", length(answer.further_m))
            .with("higher", length(answer.higher_m))
            .with("heavier", kg(answer.heavier_kg)));
    }
    if answer.excess_m > 0.0 {
        say(&text::CHECK_EXCESS.with("excess", length(answer.excess_m)));
    }
    terminal::line(&w.text(text::CHECK_NOT_MADE));
    let names: Vec<_> = planning::checks_not_in_the_chart(machine).iter().map(|id| w.text(*id)).collect();
    terminal::paragraph(&names.join(" · "), "  ", "  ");
    terminal::paragraph(&w.text(text::CHECK_NOT_GO), "", "");
}
