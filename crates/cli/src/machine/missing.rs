//! `machine missing`: which checks the file is enough for, what is missing, and where to find it.

use super::{review, text};
use crate::args::{MachineFileArgs, Said};
use crate::{Outcome, Run, terminal};
use evidence::{Faults, Severity};
use jobfile::{Lack, MachineReview, Need, Ready};
use serde::{Deserialize, Serialize};
use wording::Wording;

/// What a machine file is enough for, and what it lacks.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct Missing {
    /// The file.
    pub(crate) file: String,
    /// True where nothing must be added and nothing is wrong.
    pub(crate) complete: bool,
    /// The checks that take something from a machine file.
    pub(crate) checks: Vec<Enough>,
    /// What is missing, the most needed first.
    pub(crate) values: Vec<MissingValue>,
    /// Everything else that is wrong.
    pub(crate) faults: Faults,
}

/// A check of a lift.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct Enough {
    /// Its id, as findings carry it.
    pub(crate) check: String,
    /// Its name.
    pub(crate) name: String,
    /// Whether the machine file is enough for it.
    pub(crate) state: HowFar,
    /// Numbers of what it still waits for, from 1.
    pub(crate) needs: Vec<usize>,
    /// True where a fault of the file stands in the way.
    pub(crate) faulty: bool,
}

/// Whether a machine file is enough for a check.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub(crate) enum HowFar {
    /// It is.
    Enough,
    /// It is, and more would help.
    Partly,
    /// Not yet.
    NotYet,
}

/// How much a missing value matters.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub(crate) enum Matters {
    /// The file cannot be read without it.
    Mandatory,
    /// The file reads, but the checks cannot be made.
    ForCheck,
    /// A placeholder stands there.
    FillIn,
    /// May be left out.
    Useful,
}

/// A value that is missing.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct MissingValue {
    /// Its number, from 1.
    pub(crate) number: usize,
    /// Path in the file; lists count from 1.
    pub(crate) key: String,
    /// What it is.
    pub(crate) what: String,
    /// Where it is found.
    pub(crate) found: Option<String>,
    /// How much it matters.
    pub(crate) matters: Matters,
    /// What is so without it.
    pub(crate) without: Option<String>,
    /// Names of the checks it counts for.
    pub(crate) checks: Vec<String>,
}

pub(super) fn run(args: &MachineFileArgs) -> Run {
    let review = review(&args.file, args.said)?;
    let w = args.said.wording();
    let missing = Missing::new(&args.file.display().to_string(), &review, w);
    if args.said.json() {
        terminal::print_json(&missing);
    } else {
        print(&missing, args.said);
    }
    Ok(if missing.complete { Outcome::Done } else { Outcome::Faulty })
}

impl Missing {
    pub(super) fn new(file: &str, review: &MachineReview, w: Wording) -> Self {
        let checks = review.checks.iter().map(|c| Enough {
            check: c.check.to_owned(),
            name: w.check(c.check),
            state: match c.ready {
                Ready::Yes => HowFar::Enough,
                Ready::Partly => HowFar::Partly,
                Ready::NotYet => HowFar::NotYet,
            },
            needs: c.lacks.iter().map(|i| i + 1).collect(),
            faulty: c.faulty,
        });
        Self {
            file: file.to_owned(),
            complete: review.complete(),
            checks: checks.collect(),
            values: review.lacks.iter().enumerate().map(|(i, lack)| value(i + 1, lack, w)).collect(),
            faults: review.faults.clone(),
        }
    }

    pub(super) fn count(&self, matters: Matters) -> usize {
        self.values.iter().filter(|m| m.matters == matters).count()
    }
}

fn value(number: usize, lack: &Lack, w: Wording) -> MissingValue {
    MissingValue {
        number,
        key: lack.path.clone(),
        what: lack.what.map(|id| w.text(id)).unwrap_or_default(),
        found: lack.place.map(|id| w.text(id)),
        matters: match lack.need {
            Need::Mandatory => Matters::Mandatory,
            Need::ForCheck => Matters::ForCheck,
            Need::FillIn => Matters::FillIn,
            Need::Useful => Matters::Useful,
        },
        without: lack.without.map(|id| w.text(id)),
        checks: lack.checks.iter().map(|c| w.check(c)).collect(),
    }
}

fn print(missing: &Missing, said: Said) {
    let w = said.wording();
    terminal::paragraph(&w.render(&text::MISSING_TITLE.with("file", &missing.file)), "", "");
    terminal::paragraph(&counts(missing, w), "  ", "  ");
    print_checks(missing, w);
    for matters in [Matters::Mandatory, Matters::ForCheck, Matters::FillIn, Matters::Useful] {
        print_values(missing, matters, w);
    }
    print_faults(&missing.faults, w);
}

/// How many of each kind, or that there are none.
pub(super) fn counts(missing: &Missing, w: Wording) -> String {
    if missing.values.is_empty() {
        return w.text(text::EXPLAIN_NOTHING_MISSING);
    }
    w.render(
        &text::EXPLAIN_MISSING_COUNTS
            .with("mandatory", missing.count(Matters::Mandatory))
            .with("for_check", missing.count(Matters::ForCheck))
            .with("fill_in", missing.count(Matters::FillIn))
            .with("useful", missing.count(Matters::Useful)),
    )
}

/// One line a check: sign, name, what it waits for.
pub(super) fn print_checks(missing: &Missing, w: Wording) {
    heading(&w.text(text::MISSING_CHECKS));
    let widest = missing.checks.iter().map(|c| c.name.chars().count()).max().unwrap_or(0);
    for check in &missing.checks {
        let numbers = ranges(&check.needs);
        let (sign, words) = match (check.state, check.faulty, numbers.is_empty()) {
            (HowFar::Enough, ..) => ('+', w.text(text::MISSING_READY)),
            (HowFar::Partly, ..) => ('!', w.render(&text::MISSING_PARTLY.with("numbers", numbers))),
            (HowFar::NotYet, false, _) => ('?', w.render(&text::MISSING_NOT_YET.with("numbers", numbers))),
            (HowFar::NotYet, true, true) => ('?', w.text(text::MISSING_FAULTY)),
            (HowFar::NotYet, true, false) => ('?', w.render(&text::MISSING_FAULTY_NEEDS.with("numbers", numbers))),
        };
        let pad = " ".repeat(widest - check.name.chars().count());
        let indent = " ".repeat(widest + 6);
        terminal::paragraph(&words, &format!("  {sign} {}{pad}  ", check.name), &indent);
    }
    terminal::paragraph(&w.text(text::MISSING_CHECKS_NOTE), "  ", "  ");
}

/// Missing values of a kind, by where they are found: one round at the machine.
fn print_values(missing: &Missing, matters: Matters, w: Wording) {
    let of_kind: Vec<&MissingValue> = missing.values.iter().filter(|m| m.matters == matters).collect();
    if of_kind.is_empty() {
        return;
    }
    heading(&w.text(match matters {
        Matters::Mandatory => text::MISSING_MANDATORY,
        Matters::ForCheck => text::MISSING_FOR_CHECK,
        Matters::FillIn => text::MISSING_FILL_IN,
        Matters::Useful => text::MISSING_USEFUL,
    }));
    let mut places: Vec<&Option<String>> = Vec::new();
    for value in &of_kind {
        if !places.contains(&&value.found) {
            places.push(&value.found);
        }
    }
    for place in places {
        if let Some(place) = place {
            terminal::paragraph(&format!("{place}:"), "  ", "  ");
        }
        for value in of_kind.iter().filter(|v| v.found == *place) {
            let number = format!("{:>5}  ", value.number);
            terminal::paragraph(&value.key, &number, "       ");
            let mut about = vec![value.what.clone()];
            about.extend(value.without.clone());
            let about = about.iter().filter(|s| !s.is_empty()).map(|s| format!("{s}.")).collect::<Vec<_>>().join(" ");
            terminal::paragraph(&about, "       ", "       ");
        }
    }
}

/// Faults and warnings, each with its place and what to do.
pub(super) fn print_faults(faults: &Faults, w: Wording) {
    for (severity, title, sign) in
        [(Severity::Error, text::EXPLAIN_FAULTS, 'x'), (Severity::Warning, text::EXPLAIN_WARNINGS, '!')]
    {
        let of_kind: Vec<_> = faults.list.iter().filter(|f| f.severity == severity).collect();
        if of_kind.is_empty() {
            continue;
        }
        heading(&w.text(title));
        for fault in of_kind {
            let said = w.fault(fault);
            terminal::paragraph(&said.title, &format!("  {sign} "), "    ");
            if !said.place.is_empty() {
                terminal::paragraph(&said.place, "    ", "    ");
            }
            if let Some(hint) = said.hint {
                terminal::paragraph(&w.render(&text::EXPLAIN_DO.with("what", hint)), "    ", "    ");
            }
        }
    }
}

/// A heading with a line before it.
pub(super) fn heading(text: &str) {
    terminal::line("");
    terminal::paragraph(&text.to_uppercase(), "", "");
}

/// Numbers as ranges: 1–3, 7.
fn ranges(numbers: &[usize]) -> String {
    let mut out: Vec<(usize, usize)> = Vec::new();
    for &n in numbers {
        match out.last_mut() {
            Some((_, to)) if *to + 1 == n => *to = n,
            _ => out.push((n, n)),
        }
    }
    let one = |(from, to): &(usize, usize)| match to - from {
        0 => from.to_string(),
        1 => format!("{from}, {to}"),
        _ => format!("{from}–{to}"),
    };
    out.iter().map(one).collect::<Vec<_>>().join(", ")
}

#[cfg(test)]
mod tests {
    use super::ranges;

    #[test]
    fn neighbours_join() {
        assert_eq!(ranges(&[1, 2, 3, 7, 9, 10]), "1–3, 7, 9, 10");
        assert_eq!(ranges(&[]), "");
    }
}
