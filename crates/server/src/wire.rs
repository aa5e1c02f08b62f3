//! The shapes of the answers. Every text is already in the reader's language and units.

use crate::preference::{Language, Units};
use serde::Serialize;
use std::collections::BTreeMap;
use utoipa::ToSchema;

/// A job's plan in short.
#[derive(Debug, Serialize, ToSchema)]
pub(crate) struct JobView {
    pub(crate) language: Language,
    pub(crate) units: Units,
    /// Job name.
    pub(crate) job: String,
    /// Site name.
    pub(crate) site: String,
    /// Date of the work, as written in the job.
    pub(crate) date: String,
    /// Planner.
    pub(crate) planner: String,
    /// True for demonstrations with invented data; to be said wherever a verdict is shown.
    pub(crate) invented: bool,
    /// What made the plan, and the digest of the plan, in words.
    pub(crate) made_by: String,
    /// Digest of the plan: changes with any change of the plan.
    pub(crate) digest: String,
    /// The worst verdict of the lifts.
    pub(crate) verdict: VerdictView,
    /// How many lifts, and how many of each verdict, in words.
    pub(crate) summary: String,
    /// Lifts in the order of the job.
    pub(crate) lifts: Vec<LiftLine>,
    /// What was read.
    pub(crate) inputs: Vec<InputView>,
    /// Warnings about the inputs.
    pub(crate) warnings: Vec<String>,
    /// Cautions that belong on every screen with a verdict.
    pub(crate) cautions: Vec<String>,
    /// What to do in an emergency.
    pub(crate) emergency: Vec<String>,
}

/// A lift in the overview.
#[derive(Debug, Serialize, ToSchema)]
pub(crate) struct LiftLine {
    /// Id, unique in the job.
    pub(crate) id: String,
    /// Name for people.
    pub(crate) name: String,
    /// Machine.
    pub(crate) machine: String,
    /// Load with its mass.
    pub(crate) load: String,
    /// Where it is set down or picked up, with the word for which.
    pub(crate) place: String,
    pub(crate) verdict: VerdictView,
    /// What decides the verdict.
    pub(crate) governing: Option<Governing>,
}

/// A verdict with its word.
#[derive(Debug, Serialize, ToSchema)]
pub(crate) struct VerdictView {
    pub(crate) code: VerdictCode,
    /// The verdict in words.
    pub(crate) word: String,
    /// What the verdict means, one sentence.
    pub(crate) means: String,
}

/// Go, go with conditions, no-go.
#[derive(Debug, Clone, Copy, Serialize, ToSchema)]
#[serde(rename_all = "kebab-case")]
pub(crate) enum VerdictCode {
    Go,
    GoWithConditions,
    NoGo,
}

/// A check's status with its word.
#[derive(Debug, Serialize, ToSchema)]
pub(crate) struct StatusView {
    pub(crate) code: StatusCode,
    /// The status in words.
    pub(crate) word: String,
}

/// What a check says, best to worst.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, ToSchema)]
#[serde(rename_all = "kebab-case")]
pub(crate) enum StatusCode {
    Go,
    Condition,
    CannotTell,
    NoGo,
    Stop,
}

/// The finding that decides a verdict, in short.
#[derive(Debug, Serialize, ToSchema)]
pub(crate) struct Governing {
    /// Name of the check.
    pub(crate) check: String,
    pub(crate) status: StatusView,
    /// The sentence.
    pub(crate) sentence: String,
    pub(crate) reserve: Option<ReserveView>,
}

/// How much is left before the limit.
#[derive(Debug, Serialize, ToSchema)]
pub(crate) struct ReserveView {
    /// Share of the limit: 0 at the limit, negative beyond.
    pub(crate) share: f64,
    /// In words, with the number.
    pub(crate) text: String,
}

/// A measured value.
#[derive(Debug, Serialize, ToSchema)]
pub(crate) struct Measure {
    /// With unit, in the reader's units.
    pub(crate) text: String,
    /// The value in the coherent SI unit.
    pub(crate) si: f64,
    /// Symbol of that unit; empty for shares and plain numbers.
    pub(crate) si_unit: String,
}

/// A lift in full.
#[derive(Debug, Serialize, ToSchema)]
pub(crate) struct LiftView {
    pub(crate) language: Language,
    pub(crate) units: Units,
    /// Id, unique in the job.
    pub(crate) id: String,
    /// Name for people.
    pub(crate) name: String,
    /// True for demonstrations with invented data.
    pub(crate) invented: bool,
    pub(crate) verdict: VerdictView,
    /// What decides the verdict.
    pub(crate) governing: Option<Governing>,
    /// Index into `findings` of the finding that governs.
    pub(crate) governing_index: usize,
    /// Where to stop, as seen from the cab: landing and task, front tyres, aim, heading.
    pub(crate) approach: Vec<FactView>,
    /// East and north of the stand, for those who set it out.
    pub(crate) position: FactView,
    /// What the boom does there, and the slopes.
    pub(crate) pose: Vec<FactView>,
    /// Machine, attachment, load.
    pub(crate) carried: Vec<FactView>,
    /// Force on each wheel or pad, most loaded first.
    pub(crate) wheels: Vec<FactView>,
    /// How much more of one thing it bears until it is no-go; empty for a no-go.
    pub(crate) tolerances: Vec<FactView>,
    /// Every finding, in the order of the checks.
    pub(crate) findings: Vec<FindingView>,
    /// What the operator does, in order.
    pub(crate) steps: Vec<String>,
    /// Whether the stand was stated or found, and how far off it may be; only the first for a lift that is refused.
    pub(crate) stand_told: Vec<FactView>,
    /// Other stands that work, the best first.
    pub(crate) other_stands: Vec<OtherStandView>,
    /// For a lift that works nowhere: changes that were tried and would do.
    pub(crate) changes: Vec<String>,
    /// The way in and out, or why there is none; empty where none was looked for.
    pub(crate) way: Vec<FactView>,
    /// What is to be done about a way, what it rests on and what was not looked at.
    pub(crate) way_notes: Vec<String>,
    /// True if there is a side view.
    pub(crate) has_elevation: bool,
    /// True if there is a load chart.
    pub(crate) has_chart: bool,
    /// True if there is a picture of the ground by what a stand there would give.
    pub(crate) has_stands: bool,
    /// True if there is a picture of the boom's movement.
    pub(crate) has_movement: bool,
    /// True if there is a picture of the way to the stand, or of why there is none.
    pub(crate) has_way_in: bool,
    /// True if there is a picture of the way back.
    pub(crate) has_way_out: bool,
    /// Cautions that belong on every screen with a verdict.
    pub(crate) cautions: Vec<String>,
    /// What to do in an emergency.
    pub(crate) emergency: Vec<String>,
}

/// A named value.
#[derive(Debug, Serialize, ToSchema)]
pub(crate) struct FactView {
    /// What it is.
    pub(crate) name: String,
    /// Its value, with unit.
    pub(crate) text: String,
    /// How sure it is, where that is known.
    pub(crate) certainty: Option<String>,
}

/// Another stand that works for a lift. Its number is its place in the list, as in the picture.
#[derive(Debug, Serialize, ToSchema)]
pub(crate) struct OtherStandView {
    /// East and north of the middle of the front axle, and where the machine heads.
    pub(crate) at: String,
    pub(crate) verdict: VerdictView,
    /// The check that governs there, and the least that is left of those that go with the place.
    pub(crate) governs: String,
    /// How far off it may be.
    pub(crate) off: String,
}

/// One check's result.
#[derive(Debug, Serialize, ToSchema)]
pub(crate) struct FindingView {
    /// Stable id of the check.
    pub(crate) id: String,
    /// Name of the check.
    pub(crate) check: String,
    pub(crate) status: StatusView,
    /// What was found and by how much.
    pub(crate) sentence: String,
    /// What is asked of the machine, ground or line; with `at-least`: what is needed.
    pub(crate) demand: Option<Measure>,
    /// What it may be; with `at-least`: what is there.
    pub(crate) limit: Option<Measure>,
    /// How the two compare; nothing where there are no two.
    pub(crate) comparison: Option<ComparisonCode>,
    pub(crate) reserve: Option<ReserveView>,
    /// What to do.
    pub(crate) remedies: Vec<String>,
    /// Where the rule comes from.
    pub(crate) sources: Vec<String>,
    /// Steps of the calculation.
    pub(crate) working: Vec<StepView>,
}

/// How demand and limit of a finding stand to each other.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, ToSchema)]
#[serde(rename_all = "kebab-case")]
pub(crate) enum ComparisonCode {
    /// The demand may be at most the limit.
    AtMost,
    /// What is there (`limit`) must be at least what is needed (`demand`).
    AtLeast,
}

/// A piece of a formula or symbol.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, ToSchema)]
pub(crate) struct Piece {
    pub(crate) text: String,
    /// True for an index, set lowered.
    pub(crate) lowered: bool,
}

/// One step of a calculation.
#[derive(Debug, Serialize, ToSchema)]
pub(crate) struct StepView {
    /// What this step computes.
    pub(crate) title: String,
    /// Formula in symbols.
    pub(crate) formula: Vec<Piece>,
    /// Symbols with their values.
    pub(crate) values: Vec<SymbolView>,
    pub(crate) result: SymbolView,
    /// Where the formula comes from.
    pub(crate) source: String,
}

/// A symbol of a formula and its value.
#[derive(Debug, Serialize, ToSchema)]
pub(crate) struct SymbolView {
    pub(crate) symbol: Vec<Piece>,
    pub(crate) value: Measure,
}

/// An input with where it came from.
#[derive(Debug, Serialize, ToSchema)]
pub(crate) struct InputView {
    /// What it is.
    pub(crate) name: String,
    /// File and key.
    pub(crate) place: String,
    /// The value as written.
    pub(crate) value: String,
    /// How sure.
    pub(crate) certainty: String,
}

/// The words of the client's own buttons and headings.
#[derive(Debug, Serialize, ToSchema)]
pub(crate) struct TextsView {
    pub(crate) language: Language,
    /// Text by id; texts that need values are not among them.
    pub(crate) texts: BTreeMap<String, String>,
}

/// A sign of life.
#[derive(Debug, Serialize, ToSchema)]
pub(crate) struct AliveView {
    /// Version of the server.
    pub(crate) version: String,
    /// Digest of the plan now served.
    pub(crate) digest: String,
}
