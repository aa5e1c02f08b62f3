//! What is wrong with the blades and sleeves themselves, whatever the load: ISO 5057, ISO 2330.

use super::identity::listed;
use super::{angle, kilograms, metres, reserve, within};
use crate::context::Context;
use crate::text;
use evidence::{Finding, Source, Status, Step, TextId, Trace, Working};
use machine::Forks;
use machine::forks::{
    ANGLE_LIMIT_DEG, BENT_LIMIT, BladeProblem, CLOSED_LIMIT_DEG, Look, Side, TIP_LIMIT, WEAR_LIMIT, YIELD_FACTOR,
    blade_problems, check_overdue,
};
use quantity::{Quantity, Si};

/// Everything about the blades and what they wear.
pub(crate) enum Point {
    Blade(BladeProblem),
    /// Last thorough check longer ago than allowed.
    Overdue(String),
    /// Sleeves are on that the file does not declare.
    Undeclared,
    /// The file declares sleeves, and the lift is made without them.
    SleevesOff,
    /// The file declares sleeves, and nobody stated whether they are on.
    SleevesNotStated,
    /// Blade under the sleeve, sleeve, m, and the share that the blade must fill.
    CoverShort(f64, f64, f64),
}

pub(crate) fn points(ctx: &Context<'_>, forks: &Forks) -> Vec<Point> {
    let mut out: Vec<Point> = Vec::new();
    match (ctx.lift.extensions, &forks.extensions) {
        (Some(true), None) => out.push(Point::Undeclared),
        (Some(false), Some(_)) => out.push(Point::SleevesOff),
        (None, Some(_)) => out.push(Point::SleevesNotStated),
        (Some(true), Some(_)) | (Some(false) | None, None) => {}
    }
    out.extend(blade_problems(forks).into_iter().map(Point::Blade));
    if let Some(checked) = forks.checked.as_ref().filter(|day| check_overdue(day, &ctx.job.date)) {
        out.push(Point::Overdue(checked.clone()));
    }
    if let Some(sleeves) = &forks.extensions {
        let (blade, sleeve) = (forks.shorter_blade(), sleeves.length.si());
        if within(sleeves.cover * sleeve, blade + 1e-9) != Status::Go {
            out.push(Point::CoverShort(blade, sleeve, sleeves.cover));
        }
    }
    out
}

impl Point {
    pub(crate) fn status(&self) -> Status {
        match self {
            Self::Undeclared | Self::Blade(BladeProblem::Modified(_)) => Status::Stop,
            Self::Blade(BladeProblem::NoStamp(_) | BladeProblem::Unknown(_)) => Status::CannotTell,
            Self::Blade(BladeProblem::StampsDiffer | BladeProblem::NotLookedAt(_)) | Self::SleevesNotStated => {
                Status::Condition
            }
            Self::Blade(_) | Self::SleevesOff | Self::Overdue(_) | Self::CoverShort(..) => Status::NoGo,
        }
    }

    pub(crate) fn finding(&self, forks: &Forks) -> Finding {
        let iso = || Source::second_hand("ISO 5057");
        let rule = || Source::second_hand("29 CFR 1926.602(c)(1)");
        let status = self.status();
        let new = |message: evidence::Message| Finding::new("forks", status, message);
        match self {
            Self::Undeclared => new(text::SLEEVES_UNDECLARED.message()).remedy(text::DO_DECLARE_SLEEVES).source(rule()),
            Self::SleevesOff => {
                new(text::SLEEVES_OFF.message()).remedy(text::DO_ENTRY_WITHOUT_SLEEVES).source(Source::CommonPractice)
            }
            Self::SleevesNotStated => {
                new(text::SLEEVES_NOT_STATED.message()).remedy(text::DO_STATE_SLEEVES).source(Source::CommonPractice)
            }
            Self::Overdue(day) => new(text::FORKS_OVERDUE.with("date", day)).remedy(text::DO_CHECK_FORKS).source(iso()),
            Self::CoverShort(blade, sleeve, cover) => {
                let message = text::SLEEVES_LONG.with("blade", metres(*blade)).with("sleeve", metres(*sleeve));
                new(message)
                    .at_least(metres(cover * sleeve), metres(*blade), super::spare(cover * sleeve, *blade))
                    .remedy(text::DO_SHORTER_SLEEVES)
                    .source(Source::CommonPractice)
            }
            Self::Blade(problem) => blade(problem, status, forks),
        }
    }
}

fn blade(problem: &BladeProblem, status: Status, forks: &Forks) -> Finding {
    let iso = || Source::second_hand("ISO 5057");
    let new = |message: evidence::Message| Finding::new("forks", status, message);
    let share = |f: Finding, there: f64, limit: f64| {
        f.measured(Quantity::ratio(there), Quantity::ratio(limit), reserve(there, limit))
    };
    match problem {
        BladeProblem::Modified(s) => new(text::FORKS_MODIFIED.with("side", side(*s)))
            .remedy(text::DO_NEW_FORKS)
            .source(Source::second_hand("29 CFR 1926.602(c)(1)")),
        BladeProblem::Cracked(s) => {
            new(text::FORKS_CRACKED.with("side", side(*s))).remedy(text::DO_NEW_FORKS).source(iso())
        }
        BladeProblem::Worn(s, wear) => {
            let message = text::FORKS_WORN.with("side", side(*s)).with("wear", Quantity::ratio(*wear));
            share(new(message), *wear, WEAR_LIMIT).remedy(text::DO_NEW_FORKS).source(iso()).working(worn(*wear))
        }
        BladeProblem::Opened(s, at) => {
            let limit = ANGLE_LIMIT_DEG.to_radians();
            new(text::FORKS_OPENED.with("side", side(*s)).with("angle", angle(*at)).with("limit", angle(limit)))
                .measured(angle(*at), angle(limit), reserve(*at, limit))
                .remedy(text::DO_NEW_FORKS)
                .source(iso())
        }
        BladeProblem::Closed(s, at) => {
            let limit = CLOSED_LIMIT_DEG.to_radians();
            new(text::FORKS_CLOSED.with("side", side(*s)).with("angle", angle(*at)).with("limit", angle(limit)))
                .at_least(angle(limit), angle(*at), super::spare(limit, *at))
                .remedy(text::DO_NEW_FORKS)
                .source(Source::CommonPractice)
        }
        BladeProblem::ShankBent(s, bent) => {
            let message = text::FORKS_SHANK_BENT.with("side", side(*s)).with("bent", Quantity::ratio(*bent));
            share(new(message), *bent, BENT_LIMIT).remedy(text::DO_NEW_FORKS).source(iso())
        }
        BladeProblem::Bent(s, bent) => {
            let message = text::FORKS_BENT.with("side", side(*s)).with("bent", Quantity::ratio(*bent));
            share(new(message), *bent, BENT_LIMIT).remedy(text::DO_NEW_FORKS).source(iso())
        }
        BladeProblem::TipsApart(apart) => {
            let f = new(text::FORKS_TIPS.with("apart", Quantity::ratio(*apart)));
            share(f, *apart, TIP_LIMIT).remedy(text::DO_NEW_FORKS).source(iso())
        }
        BladeProblem::LockFails(s) => {
            new(text::FORKS_LOCK_FAILS.with("side", side(*s))).remedy(text::DO_NEW_FORKS).source(iso())
        }
        BladeProblem::ProofShort(s, proof, needed) => {
            let message = text::FORKS_PROOF_SHORT
                .with("side", side(*s))
                .with("proof", kilograms(*proof))
                .with("needed", kilograms(*needed));
            new(message)
                .at_least(kilograms(*needed), kilograms(*proof), super::spare(*needed, *proof))
                .remedy(text::DO_STAMPED_FORKS)
                .source(Source::second_hand("ISO 2330"))
        }
        BladeProblem::NoStamp(s) => new(text::FORKS_NO_STAMP.with("side", side(*s)))
            .remedy(text::DO_STAMPED_FORKS)
            .source(Source::from_memory("ISO 2330")),
        BladeProblem::StampsDiffer => {
            let [l, r] = &forks.blades;
            let mut message = text::FORKS_STAMPS_DIFFER.message();
            for (name, at) in [("left", l), ("right", r)] {
                message = message.with(name, kilograms(at.capacity.map_or(f64::NAN, |c| c.si())));
            }
            let message = message
                .with("left_centre", metres(l.load_centre.si()))
                .with("right_centre", metres(r.load_centre.si()));
            new(message).remedy(text::DO_MATCHED_FORKS).source(Source::CommonPractice)
        }
        BladeProblem::Unknown(looks) => {
            let named = listed(looks.iter().map(|look| name(*look)));
            new(text::FORKS_WEAR_UNKNOWN.with("looks", named)).remedy(text::DO_LOOK_AT_FORKS).source(iso())
        }
        BladeProblem::NotLookedAt(looks) => {
            let named = listed(looks.iter().map(|look| name(*look)));
            new(text::FORKS_NOT_LOOKED_AT.with("looks", named)).remedy(text::DO_LOOK_AT_FORKS).source(iso())
        }
    }
}

fn worn(wear: f64) -> Working {
    let mut working = Working::default();
    let left = machine::forks::worn_capacity_share(wear);
    working.step(|| Step {
        title: machine::text::STEP_BLADE_WEAR.message(),
        formula: "s = (1 − w)²".into(),
        values: vec![("w".into(), Quantity::ratio(wear))],
        result: ("s".into(), Quantity::ratio(left)),
        source: Source::Mechanics,
    });
    working.step(|| Step {
        title: machine::text::STEP_YIELD_LEFT.message(),
        formula: "n = n₀ · s".into(),
        values: vec![("n₀".into(), Quantity::number(YIELD_FACTOR)), ("s".into(), Quantity::ratio(left))],
        result: ("n".into(), Quantity::number(YIELD_FACTOR * left)),
        source: Source::from_memory("ISO 2330"),
    });
    working
}

fn side(side: Side) -> TextId {
    if side == Side::Left { text::SIDE_LEFT } else { text::SIDE_RIGHT }
}

fn name(look: Look) -> TextId {
    match look {
        Look::Wear => text::LOOK_WEAR,
        Look::Modified => text::LOOK_MODIFIED,
        Look::Cracks => text::LOOK_CRACKS,
        Look::Angle => text::LOOK_ANGLE,
        Look::Straight => text::LOOK_STRAIGHT,
        Look::Shank => text::LOOK_SHANK,
        Look::Tips => text::LOOK_TIPS,
        Look::Lock => text::LOOK_LOCK,
        Look::Checked => text::LOOK_CHECKED,
    }
}
