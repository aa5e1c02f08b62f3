//! Matters this version does not compute: open until a named person answers for them.

use crate::context::Context;
use crate::{Matter, text};
use evidence::{Finding, Source, Status, TextId};

/// Those listed as findings of their own; ground strength has its own check.
pub(crate) const LISTED: [(Matter, &str, TextId); 5] = [
    (Matter::Edges, "edges", text::CHECK_EDGES),
    (Matter::Buried, "buried", text::CHECK_BURIED),
    (Matter::Obstacles, "obstacles", text::CHECK_OBSTACLES),
    (Matter::People, "people", text::CHECK_PEOPLE),
    (Matter::Route, "route", text::CHECK_ROUTE),
];

pub(crate) fn status(ctx: &Context<'_>) -> Status {
    if LISTED.iter().all(|(m, ..)| ctx.accepted(*m).is_some()) { Status::Go } else { Status::CannotTell }
}

pub(crate) fn findings(ctx: &Context<'_>) -> Vec<Finding> {
    LISTED
        .iter()
        .map(|(matter, check, name)| match ctx.accepted(*matter) {
            Some(a) => {
                let message =
                    text::MATTER_ACCEPTED.with("matter", *name).with("by", &a.by).with("statement", &a.statement);
                Finding::new(check, Status::Go, message)
                    .source(Source::Person { name: a.by.clone(), statement: a.statement.clone() })
            }
            None => Finding::new(check, Status::CannotTell, text::MATTER_OPEN.with("matter", *name))
                .remedy(text::DO_STATE_MATTER)
                .source(Source::CommonPractice),
        })
        .collect()
}
