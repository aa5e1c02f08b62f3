//! What the landing carries: its designer's rating and what it is made of, with what lies there, the people on it and
//! the push of the forks.
//!
//! A scaffold carries what its designer rates it for, nothing else; a floor may also be judged by what it is made of.
//! Of feet, direction of joists and people that nobody states the worse counts. A push that nobody rates is a condition.

use super::{kilograms, newtons, reserve};
use crate::context::Context;
use crate::landing_strength::EdgeGuard;
use crate::{Task, text};
use evidence::{Faults, Finding, Message, Silent, Source, Status, Trace, Working};
use ground::carried::{Carried, Part, governing, largest_that_fits};
use ground::landing_carries::{LandingCarries, StandingLoad, Structure};
use quantity::Si;

/// What the landing makes of a load.
struct Answer {
    /// Every part that could be reckoned.
    parts: Vec<Carried>,
    /// Nobody states a rating, where one is needed.
    unrated: bool,
    /// Numbers that cannot be used.
    refused: Faults,
}

/// What may change for a cure: the load's mass, and what of it lies there already, kg; the people.
#[derive(Clone, Copy)]
struct Case {
    mass: f64,
    lies_less: f64,
    people: usize,
}

impl Case {
    fn of(ctx: &Context<'_>) -> Self {
        Self { mass: ctx.load.mass_kg.high, lies_less: 0.0, people: ctx.strength().people_counted() }
    }
}

/// A part's status, as a lift sees it.
fn of_part(c: &Carried) -> Status {
    match c.status() {
        // Nobody rates a push: somebody has to answer for it, and the load is laid down without one.
        Status::CannotTell if c.part == Part::RatedPush => Status::Condition,
        other => other,
    }
}

impl Answer {
    fn status(&self) -> Status {
        let known = self.parts.iter().map(of_part).max();
        let unknown = (self.unrated || !self.refused.list.is_empty() || known.is_none()).then_some(Status::CannotTell);
        known.max(unknown).unwrap_or(Status::CannotTell)
    }
}

pub(crate) fn status(ctx: &Context<'_>) -> Status {
    if ctx.lift.task == Task::PickUp {
        return Status::Go;
    }
    let mass = ctx.load.mass_kg.high;
    if let Some((known, status)) = ctx.landing_known
        && known.to_bits() == mass.to_bits()
    {
        return status;
    }
    answer(ctx, Case::of(ctx), &mut Silent).status()
}

/// The status for the load as it is, where finding it is dear: the same at every stand.
pub(crate) fn known(ctx: &Context<'_>) -> Option<(f64, Status)> {
    let dear = matches!(ctx.strength().structure, Structure::Deck { .. } | Structure::Slab(_));
    dear.then(|| (ctx.load.mass_kg.high, status(ctx)))
}

fn answer(ctx: &Context<'_>, case: Case, trace: &mut impl Trace) -> Answer {
    let (l, s) = (ctx.landing, ctx.strength());
    let occupied = l.occupied.si() - case.lies_less;
    let mut landing = s.carries(l.rating.as_ref(), l.size.x * l.size.y, occupied, case.people);
    landing.to_near_edge = (s.edge != Some(EdgeGuard::NoDrop)).then(|| to_near_edge(ctx));
    if l.approach.is_none() {
        landing.runs = None;
    }
    let load = StandingLoad { mass: case.mass, size: [ctx.load.depth, ctx.load.width], feet: ctx.feet() };
    let unrated = l.rating.is_none() && (s.can_sway() || s.structure == Structure::NotStated);
    let mut answer = Answer { parts: Vec::new(), unrated, refused: Faults::default() };
    let made = |landing: &LandingCarries<'_>, trace| landing.made(&load, trace).map(|a| a.carried);
    for part in [landing.rated(&load, trace), made(&landing, trace)] {
        match part {
            Ok(parts) => answer.parts.extend(parts),
            Err(faults) => answer.refused.append(faults),
        }
    }
    answer
}

/// From the load in the landing's middle to the edge that it comes over, m; without a direction of approach that may be
/// any side.
fn to_near_edge(ctx: &Context<'_>) -> f64 {
    let size = ctx.landing.size;
    let (size, load) = match ctx.landing.approach {
        Some(_) => (size.x, ctx.load.depth),
        None => (size.min_element(), ctx.load.depth.max(ctx.load.width)),
    };
    ((size - load) / 2.0).max(0.0)
}

pub(crate) fn findings(ctx: &Context<'_>) -> Vec<Finding> {
    let name = &ctx.landing.name;
    if ctx.lift.task == Task::PickUp {
        let relieved = text::LANDING_RELIEVED.with("landing", name);
        return vec![Finding::new("landing", Status::Go, relieved).source(Source::Mechanics)];
    }
    let mut working = ctx.strength().steps.clone();
    let Answer { parts, unrated, refused } = answer(ctx, Case::of(ctx), &mut working);
    let cannot_tell = |m: Message| Finding::new("landing", Status::CannotTell, m).source(Source::CommonPractice);
    let mut out = Vec::new();
    if unrated {
        let message = text::LANDING_NO_RATING.with("landing", name).with("mass", kilograms(ctx.load.mass_kg.high));
        out.push(cannot_tell(message).remedy(text::DO_ASK_RATING));
    }
    let (push, rest): (Vec<_>, Vec<_>) = parts.into_iter().partition(|p| p.part == Part::RatedPush);
    out.extend(governing(&rest).map(|g| strength(ctx, g, working)));
    for fault in refused.list {
        let message = text::LANDING_NOT_JUDGED.with("landing", name).with("why", fault.message);
        out.push(cannot_tell(message).remedy(text::DO_CHECK_LANDING_NUMBERS));
    }
    out.extend(push.first().map(|p| pushed(ctx, p)));
    out
}

/// Who answers for a part.
fn by<'a>(ctx: &Context<'a>, part: Part) -> &'a str {
    let of_rating = matches!(
        part,
        Part::RatedTotal
            | Part::RatedPallet
            | Part::RatedEven
            | Part::RatedEvenTotal
            | Part::RatedPoint
            | Part::RatedPush
    );
    let rated = ctx.landing.rating.as_ref().map(|r| r.by.as_str());
    let name = if of_rating { rated } else { ctx.strength().structure_by.as_deref().or(rated) };
    name.unwrap_or_default()
}

fn strength(ctx: &Context<'_>, g: &Carried, working: Working) -> Finding {
    let name = &ctx.landing.name;
    let status = g.status();
    let by = by(ctx, g.part);
    let person = Source::Person { name: by.to_owned(), statement: name.clone() };
    let Some(limit) = g.limit else {
        let (message, remedy) = match (g.part, ctx.strength().rating.class) {
            (Part::RatedTotal, Some(_)) => (text::LANDING_CLASS_ONLY.with("landing", name), text::DO_ASK_RATING),
            (Part::Feet, _) => (text::LANDING_NO_FEET.with("landing", name), text::DO_STATE_FEET),
            _ => {
                let message = text::LANDING_PART_UNKNOWN.with("landing", name).with("part", g.part.name());
                (message.with("demand", g.demand), text::DO_ASK_RATING)
            }
        };
        return Finding::new("landing", status, message).remedy(remedy.message()).source(person).working(working);
    };
    let fits = status == Status::Go;
    let message = if g.part == Part::RatedTotal {
        let id = if fits { text::LANDING_CARRIES } else { text::LANDING_OVERLOADED };
        id.with("landing", name).with("mass", g.demand).with("rating", limit).with("by", by)
    } else {
        let id = if fits { text::LANDING_PART_FITS } else { text::LANDING_PART_TOO_MUCH };
        let message = id.with("landing", name).with("part", g.part.name()).with("demand", g.demand);
        message.with("limit", limit).with("by", by)
    };
    let f = Finding::new("landing", status, message)
        .measured(g.demand, limit, reserve(g.demand.si, limit.si))
        .source(person)
        .working(working);
    if fits { f } else { mended(ctx, g, f) }
}

/// What would make an overloaded landing carry: cleared, without people, less at a time. Each was reckoned.
fn mended(ctx: &Context<'_>, g: &Carried, mut finding: Finding) -> Finding {
    let case = Case::of(ctx);
    let fits = |case: Case| answer(ctx, case, &mut Silent).status() <= Status::Condition;
    if case.people > 0 && fits(Case { people: 0, ..case }) {
        finding = finding.remedy(text::DO_NOBODY_ON_LANDING);
    }
    // What is listed by name is cleared as a whole; here the mass that lies there besides counts.
    let lies = ctx.landing.occupied.si();
    let excess = g.limit.map_or(f64::INFINITY, |l| g.demand.si - l.si);
    if g.part == Part::RatedTotal && excess <= lies && fits(Case { lies_less: excess, ..case }) {
        finding = finding.remedy(text::DO_CLEAR_LANDING.with("mass", kilograms(excess)));
    }
    if g.part == Part::Beside {
        return finding.remedy(text::DO_CLEAR_BESIDE);
    }
    let at = |mass: f64| {
        let answer = answer(ctx, Case { mass, ..case }, &mut Silent);
        if answer.unrated || !answer.refused.list.is_empty() {
            return Vec::new();
        }
        // Whether the push is rated does not hang on the mass.
        answer.parts.into_iter().filter(|p| p.part != Part::RatedPush || p.limit.is_some()).collect()
    };
    match largest_that_fits(case.mass, at) {
        Some(most) if most >= case.mass / 2.0 => {
            finding.remedy(text::DO_LESS_ON_LANDING.with("mass", kilograms(most))).remedy(text::DO_HALF_LOAD)
        }
        Some(most) => finding.remedy(text::DO_LESS_ON_LANDING.with("mass", kilograms(most))),
        None => finding.remedy(text::DO_OTHER_LANDING),
    }
}

fn pushed(ctx: &Context<'_>, p: &Carried) -> Finding {
    let name = &ctx.landing.name;
    let status = of_part(p);
    let said = |id: evidence::TextId| id.with("landing", name).with("push", newtons(p.demand.si));
    let source = Source::from_memory("EN 1991-1-1:2002, 6.3.2.3(5)");
    let Some(limit) = p.limit else {
        return Finding::new("landing", status, said(text::LANDING_PUSH_UNKNOWN))
            .remedy(text::DO_ASK_PUSH.with("push", newtons(p.demand.si)))
            .source(source);
    };
    let id = if status == Status::Go { text::LANDING_PUSH_FITS } else { text::LANDING_PUSH_TOO_MUCH };
    let message = said(id).with("limit", limit).with("by", by(ctx, p.part));
    let f = Finding::new("landing", status, message)
        .measured(p.demand, limit, reserve(p.demand.si, limit.si))
        .source(source);
    if status == Status::Go { f } else { f.remedy(text::DO_OTHER_LANDING) }
}
