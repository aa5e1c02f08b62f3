//! Plan sheets as PDF: each made once, when it is first asked for, and kept. Same plan, same words,
//! same paper is the same document.

use crate::preference::{Language, Paper, Preference, SheetChoice, Units};
use crate::problem::Problem;
use crate::state::Shared;
use axum::body::Bytes;
use std::sync::Arc;
use tokio::sync::OnceCell;

/// Two languages, two unit systems, two papers.
const KINDS: usize = 8;

/// The sheets made so far.
#[derive(Debug, Default)]
pub(crate) struct Sheets {
    made: [OnceCell<Bytes>; KINDS],
}

/// The sheet of that kind. Of several who ask at once, one makes it and the others wait; after a
/// failure the next who asks tries again.
pub(crate) async fn sheet(served: &Shared, asked: SheetChoice) -> Result<Bytes, Problem> {
    let made = &served.sheets().made[kind(asked)];
    made.get_or_try_init(|| make(Arc::clone(served), asked)).await.cloned()
}

fn kind(asked: SheetChoice) -> usize {
    usize::from(asked.lang == Language::Es)
        + 2 * usize::from(asked.units == Units::Us)
        + 4 * usize::from(asked.paper == Paper::Letter)
}

async fn make(served: Shared, asked: SheetChoice) -> Result<Bytes, Problem> {
    let paper = match asked.paper {
        Paper::A4 => report::PaperSize::A4,
        Paper::Letter => report::PaperSize::UsLetter,
    };
    let wording = Preference { lang: asked.lang, units: asked.units }.wording();
    let set = tokio::task::spawn_blocking(move || report::plan_sheet(served.plan(), &wording, paper)).await;
    let pdf = set.map_err(|e| failed(&e))?.map_err(|e| failed(&e))?;
    Ok(Bytes::from(pdf))
}

#[expect(clippy::print_stderr, reason = "the reason belongs to whoever runs the server, not into the answer")]
fn failed(error: &dyn std::fmt::Display) -> Problem {
    eprintln!("the plan sheet could not be made: {error}");
    Problem::DocumentFailed
}
