//! Is this the machine that the file and the charts describe, and was it examined.

use crate::context::Context;
use crate::{Examination, Kept, Seen, text};
use evidence::{Finding, Message, Source, Status, TextId};
use machine::{Machine, same_mark, same_marks};

/// One thing about the machine's identity.
#[derive(Debug, Clone, PartialEq)]
enum Point {
    /// Not stated, not read, or nothing to compare with.
    Open(TextId),
    /// No examination is known: nobody can tell, whosever machine it is.
    Unexamined,
    /// Read on that day, too long before the work.
    SeenLongAgo(String),
    /// Read on that day, which lies after the work.
    SeenAhead(String),
    /// What is in the file and what is on the machine.
    Differs { what: TextId, file: String, seen: String },
    /// The chart or the manual is not in the cab.
    NotInCab(TextId),
    /// Thorough examination overdue since that day.
    Overdue(String),
}

impl Point {
    fn status(&self, ctx: &Context<'_>) -> Status {
        match self {
            Self::Differs { .. } | Self::NotInCab(_) | Self::Overdue(_) | Self::SeenAhead(_) => Status::NoGo,
            // The history of our own machine is known: to be looked at. Nobody knows another's.
            Self::Open(_) | Self::SeenLongAgo(_) if ctx.unit.kept == Some(Kept::Own) => Status::Condition,
            Self::Open(_) | Self::SeenLongAgo(_) | Self::Unexamined => Status::CannotTell,
        }
    }

    /// What is open, by its name in a list.
    fn open(&self) -> Option<TextId> {
        match self {
            Self::Open(what) => Some(*what),
            Self::Unexamined => Some(text::ITEM_EXAMINED),
            _ => None,
        }
    }
}

fn points(ctx: &Context<'_>) -> Vec<Point> {
    let mut out = Vec::new();
    if ctx.unit.kept.is_none() {
        out.push(Point::Open(text::ITEM_KEPT));
    }
    match &ctx.unit.seen {
        None => out.push(Point::Open(text::ITEM_SEEN)),
        Some(seen) => {
            out.extend(read_on(&seen.date, &ctx.job.date));
            compared(ctx.machine, seen, &mut out);
        }
    }
    out.extend(examination(ctx.unit.examined.as_ref(), &ctx.job.date));
    out
}

/// Longest time between the reading of a machine and the work, days (ours: machines change hands and
/// tyres between two weeks, not between two mornings).
const READ_DAYS: i64 = 7;

/// A reading counts for the week that follows it. A day that is none counts as long ago.
fn read_on(read: &str, on: &str) -> Option<Point> {
    match day_number(on).zip(day_number(read)).map(|(on, read)| on - read) {
        Some(days) if days < 0 => Some(Point::SeenAhead(read.to_owned())),
        Some(days) if days <= READ_DAYS => None,
        _ => Some(Point::SeenLongAgo(read.to_owned())),
    }
}

/// Days since the first of March of the year 0, for a day as year-month-day; `None` for what is no such
/// day. Months are counted from March, so that a leap day ends its year.
fn day_number(day: &str) -> Option<i64> {
    let parts: Vec<i64> = day.split('-').map(|part| part.parse().ok()).collect::<Option<_>>()?;
    let &[year, month, day] = &parts[..] else { return None };
    if !(0..=9999).contains(&year) || !(1..=12).contains(&month) || !(1..=31).contains(&day) {
        return None;
    }
    let from_march = (month + 9) % 12;
    let year = if month <= 2 { year - 1 } else { year };
    Some(
        year * 365 + year.div_euclid(4) - year.div_euclid(100)
            + year.div_euclid(400)
            + (from_march * 153 + 2) / 5
            + day,
    )
}

fn compared(machine: &Machine, seen: &Seen, out: &mut Vec<Point>) {
    let marks = [
        (text::ITEM_SERIAL, &machine.serial, &seen.serial),
        (text::ITEM_TYRES, &machine.tyres, &seen.tyres),
        (text::ITEM_COUNTERWEIGHT, &machine.counterweight, &seen.counterweight),
        (text::ITEM_CHART, &machine.chart_number, &seen.chart),
    ];
    for (what, file, seen) in marks {
        match (file, seen) {
            (Some(file), Some(seen)) if same_mark(file, seen) => {}
            (Some(file), Some(seen)) => {
                out.push(Point::Differs { what, file: file.clone(), seen: seen.clone() });
            }
            _ => out.push(Point::Open(what)),
        }
    }
    match (&machine.options, &seen.options) {
        (Some(file), Some(seen)) if same_marks(file, seen) => {}
        (Some(file), Some(seen)) => {
            let list = |marks: &[String]| if marks.is_empty() { "–".to_owned() } else { marks.join(", ") };
            out.push(Point::Differs { what: text::ITEM_OPTIONS, file: list(file), seen: list(seen) });
        }
        _ => out.push(Point::Open(text::ITEM_OPTIONS)),
    }
    for (what, there) in [(text::ITEM_CHART_IN_CAB, seen.chart_in_cab), (text::ITEM_MANUAL_IN_CAB, seen.manual_in_cab)]
    {
        match there {
            Some(true) => {}
            Some(false) => out.push(Point::NotInCab(what)),
            None => out.push(Point::Open(what)),
        }
    }
}

/// Days as year-month-day stand in the order of their text. An examination after the day of the work
/// has not been made yet.
fn examination(examined: Option<&Examination>, on: &str) -> Option<Point> {
    match examined {
        Some(e) if e.date.as_str() > on => Some(Point::Unexamined),
        Some(e) if e.next.as_str() < on => Some(Point::Overdue(e.next.clone())),
        Some(_) => None,
        None => Some(Point::Unexamined),
    }
}

pub(crate) fn status(ctx: &Context<'_>) -> Status {
    points(ctx).iter().map(|p| p.status(ctx)).max().unwrap_or(Status::Go)
}

/// One finding that names everything open, or says that all agrees, and one for each thing that is wrong.
pub(crate) fn findings(ctx: &Context<'_>) -> Vec<Finding> {
    let points = points(ctx);
    let rule = || Source::second_hand("29 CFR 1926.602(c)(1)");
    let mut out = Vec::new();
    let open = points.iter().filter(|p| p.open().is_some());
    if let Some(status) = open.clone().map(|p| p.status(ctx)).max() {
        let unexamined = points.contains(&Point::Unexamined);
        let named = open.filter_map(Point::open);
        let message = text::IDENTITY_OPEN.with("machine", &ctx.machine.name).with("open", listed(named));
        let mut f = Finding::new("identity", status, message).remedy(text::DO_SEE_MACHINE);
        if ctx.unit.kept.is_none() {
            f = f.remedy(text::DO_STATE_KEPT);
        }
        if unexamined {
            f = f.remedy(text::DO_EXAMINE);
        }
        out.push(f.source(Source::CommonPractice));
    }
    for point in &points {
        let status = point.status(ctx);
        out.push(match point {
            Point::Open(_) | Point::Unexamined => continue,
            Point::SeenLongAgo(day) | Point::SeenAhead(day) => {
                let ahead = matches!(point, Point::SeenAhead(_));
                let id = if ahead { text::IDENTITY_SEEN_AHEAD } else { text::IDENTITY_SEEN_LONG_AGO };
                Finding::new("identity", status, id.with("seen", day).with("date", &ctx.job.date))
                    .remedy(text::DO_SEE_MACHINE)
                    .source(Source::CommonPractice)
            }
            Point::Differs { what, file, seen } => {
                let message = text::IDENTITY_DIFFERS.with("what", *what).with("file", file).with("seen", seen);
                Finding::new("identity", status, message).remedy(text::DO_RIGHT_MACHINE).source(rule())
            }
            Point::NotInCab(what) => Finding::new("identity", status, text::IDENTITY_NOT_IN_CAB.with("what", *what))
                .remedy(text::DO_INTO_CAB)
                .source(rule()),
            Point::Overdue(next) => {
                Finding::new("identity", status, text::IDENTITY_OVERDUE.with("next", next).with("date", &ctx.job.date))
                    .remedy(text::DO_EXAMINE)
                    .source(Source::CommonPractice)
            }
        });
    }
    if out.is_empty() {
        let (by, date) = ctx.unit.seen.as_ref().map_or(("", ""), |s| (s.by.as_str(), s.date.as_str()));
        let message = text::IDENTITY_AGREES.with("machine", &ctx.machine.name).with("by", by).with("date", date);
        out.push(Finding::new("identity", Status::Go, message).source(rule()));
    }
    out
}

/// Several names as one text: each in front of the rest.
pub(crate) fn listed(names: impl DoubleEndedIterator<Item = TextId>) -> Message {
    let mut names = names.rev();
    let last = names.next().map_or_else(|| text::LIST_NOTHING.message(), TextId::message);
    names.fold(last, |rest, name| text::LIST_AND_MORE.with("first", name).with("rest", rest))
}
