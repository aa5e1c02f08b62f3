//! What the landing carries: its designer's rating and what it is made of, with what lies there, the people on it and
//! the push of the forks.
//!
//! A scaffold carries what its designer rates it for, nothing else; a floor may also be judged by what it is made of.
//! Of feet, direction of joists and people that nobody states the worse counts. A push that nobody rates is a condition.

use super::{kilograms, newtons, reserve};
use crate::context::Context;
use crate::landing_strength::{LandingStrength, Runs};
use crate::{Task, text};
use evidence::{Fault, Faults, Finding, Message, Silent, Source, Status, Trace, Working};
use ground::carried::{Carried, Part, governing, largest_that_fits};
use ground::landing_carries::{LandingCarries, Structure};
use ground::pallet_feet::{Feet, Sharing};
use quantity::Si;

/// What the landing makes of a load.
enum Answer {
    /// Nobody states a rating, where one is needed.
    NoRating,
    /// The structure is stated, but not what the load stands on.
    NoFeet,
    /// Its numbers cannot be used.
    Refused(Fault),
    /// Every part.
    Parts(Vec<Carried>),
}

/// A part's status, as a lift sees it.
fn of_part(c: &Carried) -> Status {
    match c.status() {
        // Nobody rates a push: somebody has to answer for it, and the load is laid down without one.
        Status::CannotTell if c.part == Part::RatedPush => Status::Condition,
        other => other,
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
    match answer(ctx, mass, &mut Silent) {
        Answer::NoRating | Answer::NoFeet | Answer::Refused(_) => Status::CannotTell,
        Answer::Parts(parts) => parts.iter().map(of_part).max().unwrap_or(Status::CannotTell),
    }
}

/// The status for the load as it is, where finding it is dear: the same at every stand.
pub(crate) fn known(ctx: &Context<'_>) -> Option<(f64, Status)> {
    let dear = matches!(ctx.strength().structure, Structure::Deck { .. } | Structure::Slab(_));
    dear.then(|| (ctx.load.mass_kg.high, status(ctx)))
}

fn answer(ctx: &Context<'_>, mass: f64, trace: &mut impl Trace) -> Answer {
    let s = ctx.strength();
    let rated = ctx.landing.rating.is_some();
    let made_known = s.structure != Structure::NotStated;
    if !rated && (s.can_sway() || !made_known) {
        return Answer::NoRating;
    }
    let stated = ctx.feet();
    let on_feet = matches!(s.structure, Structure::Deck { .. } | Structure::Slab(_));
    if on_feet && stated.is_none() {
        return Answer::NoFeet;
    }
    let flat = |length: f64| (length, 1, length);
    let feet = match stated {
        Some(feet) => Ok(feet.clone()),
        None => Feet::new(flat(ctx.load.depth), flat(ctx.load.width), Sharing::Even),
    };
    match feet.and_then(|feet| parts(ctx, s, &feet, mass, trace)) {
        Ok(mut parts) => {
            if stated.is_none() {
                // What one foot presses nobody knows.
                for part in parts.iter_mut().filter(|p| p.part == Part::RatedPoint) {
                    part.limit = None;
                }
            }
            Answer::Parts(parts)
        }
        Err(faults) => faults.list.into_iter().next().map_or(Answer::NoRating, Answer::Refused),
    }
}

/// Every part under a load on those feet.
fn parts(
    ctx: &Context<'_>,
    s: &LandingStrength,
    feet: &Feet,
    mass: f64,
    trace: &mut impl Trace,
) -> Result<Vec<Carried>, Faults> {
    let l = ctx.landing;
    let whole = s.carries(l.rating.as_ref(), l.size.x * l.size.y, l.occupied.si());
    // Which way the feet run under the joists is known only where both directions are.
    let both = ctx.landing.approach.is_none() || s.runs.is_none();
    let along = !matches!(s.runs, Some(Runs::Across)) || ctx.landing.approach.is_none();
    let one = if along { feet.clone() } else { feet.clone().turned() };
    let mut carried = whole.under(mass, &one, trace)?.carried;
    if both && matches!(s.structure, Structure::Deck { .. } | Structure::Slab(_)) {
        let other = LandingCarries { bay: None, ..whole }.under(mass, &one.turned(), trace)?.carried;
        for c in other {
            match carried.iter_mut().find(|known| known.part == c.part) {
                Some(known) if c.demand.si > known.demand.si => *known = c,
                Some(_) => {}
                None => carried.push(c),
            }
        }
    }
    Ok(carried)
}

pub(crate) fn findings(ctx: &Context<'_>) -> Vec<Finding> {
    let name = &ctx.landing.name;
    if ctx.lift.task == Task::PickUp {
        let relieved = text::LANDING_RELIEVED.with("landing", name);
        return vec![Finding::new("landing", Status::Go, relieved).source(Source::Mechanics)];
    }
    let mut working = ctx.strength().steps.clone();
    let mass = ctx.load.mass_kg.high;
    let cannot_tell = |m: Message, remedy| {
        Finding::new("landing", Status::CannotTell, m).remedy(remedy).source(Source::CommonPractice)
    };
    match answer(ctx, mass, &mut working) {
        Answer::NoRating => {
            let message = text::LANDING_NO_RATING.with("landing", name).with("mass", kilograms(mass));
            vec![cannot_tell(message, text::DO_ASK_RATING.message())]
        }
        Answer::NoFeet => {
            vec![cannot_tell(text::LANDING_NO_FEET.with("landing", name), text::DO_STATE_FEET.message())]
        }
        Answer::Refused(fault) => {
            let message = text::LANDING_NOT_JUDGED.with("landing", name).with("why", fault.message);
            vec![cannot_tell(message, text::DO_ASK_RATING.message())]
        }
        Answer::Parts(parts) => {
            let (push, rest): (Vec<_>, Vec<_>) = parts.into_iter().partition(|p| p.part == Part::RatedPush);
            let mut out: Vec<Finding> = governing(&rest).map(|g| strength(ctx, g, working)).into_iter().collect();
            out.extend(push.first().map(|p| pushed(ctx, p)));
            out
        }
    }
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
    let name = if of_rating { rated } else { ctx.strength().structure_by.as_deref() };
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
            (Part::RatedPoint, _) if ctx.feet().is_none() => {
                (text::LANDING_NO_FEET.with("landing", name), text::DO_STATE_FEET)
            }
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

/// What would make an overloaded landing carry: cleared, less at once, half of it. Each was reckoned.
fn mended(ctx: &Context<'_>, g: &Carried, mut finding: Finding) -> Finding {
    let s = ctx.strength();
    let mass = ctx.load.mass_kg.high;
    let lies = ctx.landing.occupied.si() + s.lying.iter().map(|l| l.mass.high).sum::<f64>();
    let excess = g.limit.map_or(f64::INFINITY, |l| g.demand.si - l.si);
    if g.part == Part::RatedTotal && excess <= lies {
        finding = finding.remedy(text::DO_CLEAR_LANDING.with("mass", kilograms(excess)));
    }
    let at = |mass: f64| match answer(ctx, mass, &mut Silent) {
        // Whether the push is rated does not hang on the mass.
        Answer::Parts(parts) => parts.into_iter().filter(|p| p.part != Part::RatedPush || p.limit.is_some()).collect(),
        _ => Vec::new(),
    };
    match largest_that_fits(mass, at) {
        Some(most) if most >= mass / 2.0 => {
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
