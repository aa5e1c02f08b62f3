//! The plan as ready words and numbers, in the shape the template reads. Everything a person reads
//! is rendered here; the template only sets it.

use crate::PaperSize;
use crate::acceptance::Accepted;
use crate::breakable::breakable;
use crate::inputs_view::{InputFile, inputs};
use crate::lift_view::{LiftView, lift_view};
use crate::words::template_words;
use evidence::{Message, Verdict};
use planning::{Plan, text};
use serde::Serialize;
use std::collections::BTreeMap;
use wording::{Wording, ui};

/// Texts longer than this may be split over two pages.
pub(crate) const LONG: usize = 600;

/// All that the template reads.
#[derive(Serialize)]
#[serde(rename_all = "kebab-case")]
pub(crate) struct Sheet {
    title: String,
    language: &'static str,
    paper: &'static str,
    running: String,
    words: BTreeMap<&'static str, String>,
    head: Head,
    verdict: VerdictView,
    means: String,
    lifts: Vec<LiftView>,
    inputs: Vec<InputFile>,
    accepted: Accepted,
    warnings: Vec<String>,
    cautions: Vec<Signal>,
    emergency: Vec<Signal>,
    made_by: String,
    digest: String,
    /// Pieces of "page n of m": "page" and "pages" stand for the numbers.
    page: Vec<String>,
}

#[derive(Serialize)]
#[serde(rename_all = "kebab-case")]
struct Head {
    job: String,
    planner: String,
    planner_short: String,
    invented: bool,
    rows: Vec<Fact>,
}

/// A name with its value.
#[derive(Serialize)]
pub(crate) struct Fact {
    pub name: String,
    pub value: String,
}

/// A verdict: which shape, which word.
#[derive(Serialize)]
pub(crate) struct VerdictView {
    pub kind: &'static str,
    pub word: String,
}

/// A line under a signal word.
#[derive(Serialize)]
struct Signal {
    level: &'static str,
    word: String,
    text: String,
}

/// The sheet of a plan.
pub(crate) fn sheet(plan: &Plan, wording: Wording, paper: PaperSize) -> Sheet {
    let job = breakable(&plan.head.job);
    let fact = |id, value: &str| Fact { name: wording.text(id), value: breakable(value) };
    let short = plan.digest.chars().take(12).collect::<String>();
    let summary = |verdict| plan.lifts.iter().filter(|l| l.verdict == verdict).count();
    let counts = ui::LIFTS_SUMMARY
        .with("lifts", plan.lifts.len())
        .with("go", summary(Verdict::Go))
        .with("conditions", summary(Verdict::GoWithConditions))
        .with("no_go", summary(Verdict::NoGo));
    let running: Vec<String> = [&plan.head.job, &plan.head.site, &plan.head.date]
        .into_iter()
        .filter(|s| !s.trim().is_empty())
        .map(|s| breakable(&clip(s, 60)))
        .collect();
    let mut accepted = Accepted::default();
    let lifts = plan
        .lifts
        .iter()
        .enumerate()
        .map(|(i, lift)| {
            accepted.begin(&lift.id);
            lift_view(lift, (i, plan.lifts.len()), &mut accepted, wording)
        })
        .collect();
    Sheet {
        title: format!("{}: {}", wording.text(ui::PLAN_SHEET), plan.head.job),
        language: wording.language().code(),
        paper: paper.typst_name(),
        running: running.join(" · "),
        words: template_words(wording),
        head: Head {
            rows: vec![
                fact(ui::SITE, &plan.head.site),
                fact(ui::DATE, &plan.head.date),
                fact(ui::PLANNED_BY, &plan.head.planner),
            ],
            job,
            planner: plan.head.planner.clone(),
            planner_short: breakable(&clip(&plan.head.planner, 60)),
            invented: plan.head.invented,
        },
        verdict: verdict_view(plan.verdict, wording),
        means: wording.render(&counts),
        lifts,
        accepted,
        inputs: inputs(&plan.inputs, wording),
        warnings: plan.warnings.iter().map(|m| breakable(&wording.render(m))).collect(),
        cautions: signals(&plan.cautions, wording).into_iter().chain(ends(&plan.ends_when, wording)).collect(),
        emergency: signals(&plan.emergency, wording),
        made_by: wording.render(&ui::MADE_BY.with("version", plan.engine.as_str()).with("digest", short.as_str())),
        digest: breakable(&plan.digest),
        page: page_pieces(wording),
    }
}

/// A verdict's shape and word.
pub(crate) fn verdict_view(verdict: Verdict, wording: Wording) -> VerdictView {
    VerdictView { kind: kind(verdict), word: wording.verdict(verdict) }
}

/// The template's name for a verdict.
pub(crate) fn kind(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Go => "go",
        Verdict::GoWithConditions => "conditions",
        Verdict::NoGo => "no-go",
    }
}

/// A text cut to `most` characters.
pub(crate) fn clip(text: &str, most: usize) -> String {
    if text.chars().count() <= most {
        return text.to_owned();
    }
    let mut cut: String = text.chars().take(most).collect();
    cut.push('…');
    cut
}

/// Lines under their signal words, the gravest first, else in the plan's order.
fn signals(messages: &[Message], wording: Wording) -> Vec<Signal> {
    let mut signals: Vec<Signal> = messages.iter().map(|m| signal(m, wording)).collect();
    signals.sort_by_key(|s| ["danger", "warning", "caution", "notice"].iter().position(|l| *l == s.level));
    signals
}

/// What ends the plan, as one notice after the cautions.
fn ends(messages: &[Message], wording: Wording) -> Option<Signal> {
    let all: Vec<String> = messages.iter().map(|m| wording.render(m)).collect();
    let word = wording.text(ui::SIGNAL_NOTICE);
    (!all.is_empty()).then(|| Signal { level: "notice", word, text: breakable(&all.join(" ")) })
}

/// The signal word of a caution by what may happen (ANSI Z535.6, ISO 3864-2): danger where death
/// follows, warning where it may, notice where nobody is hurt at once.
fn signal(message: &Message, wording: Wording) -> Signal {
    let is = |id: evidence::TextId| message.id == id.id;
    let (level, word) = if is(text::CAUTION_NEVER) || is(text::EMERGENCY_LINE) || is(text::EMERGENCY_TIP) {
        ("danger", ui::SIGNAL_DANGER)
    } else if is(text::CAUTION_MANUAL) || is(text::CAUTION_TRIAL) {
        ("warning", ui::SIGNAL_WARNING)
    } else if is(text::CAUTION_COMPETENT) || is(text::CAUTION_INPUTS) {
        ("notice", ui::SIGNAL_NOTICE)
    } else {
        ("caution", ui::SIGNAL_CAUTION)
    };
    Signal { level, word: wording.text(word), text: breakable(&wording.render(message)) }
}

/// "Page", the number, "of", the number, as a language orders them.
fn page_pieces(wording: Wording) -> Vec<String> {
    const PAGE: &str = "\u{E000}";
    const PAGES: &str = "\u{E001}";
    let whole = wording.render(&ui::PAGE_OF.with("page", PAGE).with("pages", PAGES));
    let mut pieces = vec![String::new()];
    for c in whole.chars() {
        match c {
            '\u{E000}' => pieces.extend(["page".to_owned(), String::new()]),
            '\u{E001}' => pieces.extend(["pages".to_owned(), String::new()]),
            '\u{2066}'..='\u{2069}' => {}
            c => {
                if let Some(last) = pieces.last_mut() {
                    last.push(c);
                }
            }
        }
    }
    pieces
}
