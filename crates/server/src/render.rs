//! A plan in words: reads the plan, computes nothing.

use crate::drawings;
use crate::formula::pieces;
use crate::preference::Preference;
use crate::stand::{approach, other_stand, pose, position, told, way, way_notes};
use crate::wire::{
    ComparisonCode, FactView, FindingView, Governing, InputView, JobView, LiftLine, LiftView, Measure, ReserveView,
    StatusCode, StatusView, StepView, SymbolView, VerdictCode, VerdictView,
};
use evidence::{Comparison, Finding, Message, Ranged, Status, Step, TextId, Verdict};
use planning::{LiftPlan, LoadSummary, Plan, Task, WheelForce};
use quantity::{Dimension, Quantity};
use wording::{Wording, ui};

/// The overview of a job.
pub(crate) fn job(plan: &Plan, asked: Preference) -> JobView {
    let w = asked.wording();
    JobView {
        language: asked.lang,
        units: asked.units,
        job: plan.head.job.clone(),
        site: plan.head.site.clone(),
        date: plan.head.date.clone(),
        planner: plan.head.planner.clone(),
        invented: plan.head.invented,
        made_by: w.render(&ui::MADE_BY.with("version", &plan.engine).with("digest", &plan.digest)),
        digest: plan.digest.clone(),
        verdict: verdict(w, plan.verdict),
        summary: summary(w, plan),
        lifts: plan.lifts.iter().map(|l| lift_line(w, l)).collect(),
        inputs: plan.inputs.iter().map(|i| input(w, i)).collect(),
        warnings: messages(w, &plan.warnings),
        cautions: messages(w, plan.cautions.iter().chain(&plan.ends_when)),
        emergency: messages(w, &plan.emergency),
    }
}

/// How many lifts, and how many of each verdict.
fn summary(w: Wording, plan: &Plan) -> String {
    let of = |verdict: Verdict| plan.lifts.iter().filter(|l| l.verdict == verdict).count();
    let counted = ui::LIFTS_SUMMARY.with("lifts", plan.lifts.len()).with("go", of(Verdict::Go));
    let counted = counted.with("conditions", of(Verdict::GoWithConditions)).with("no_go", of(Verdict::NoGo));
    w.render(&counted)
}

/// A lift in full.
pub(crate) fn lift(plan: &Plan, lift: &LiftPlan, asked: Preference) -> LiftView {
    let w = asked.wording();
    LiftView {
        language: asked.lang,
        units: asked.units,
        id: lift.id.clone(),
        name: lift.name.clone(),
        invented: plan.head.invented,
        verdict: verdict(w, lift.verdict),
        governing: lift.governing_finding().map(|f| governing(w, f)),
        governing_index: lift.governing,
        approach: approach(w, lift),
        position: position(w, &lift.stand),
        pose: pose(w, &lift.stand),
        carried: carried(w, lift),
        wheels: lift.wheels.iter().map(|f| wheel(w, f)).collect(),
        tolerances: lift.tolerances.iter().map(|t| tolerance(w, t)).collect(),
        findings: lift.findings.iter().map(|f| finding(w, f)).collect(),
        steps: messages(w, &lift.steps),
        stand_told: told(w, lift),
        other_stands: lift.other_stands.iter().map(|s| other_stand(w, s)).collect(),
        changes: messages(w, &lift.changes),
        way: way(w, lift),
        way_notes: way_notes(w, lift),
        has_elevation: lift.elevation.is_some(),
        has_chart: lift.chart.is_some(),
        has_stands: drawings::has_stands(lift),
        has_movement: drawings::has_movement(lift),
        has_way_in: drawings::has_way_in(lift),
        has_way_out: drawings::has_way_out(lift),
        cautions: messages(w, plan.cautions.iter().chain(&plan.ends_when)),
        emergency: messages(w, &plan.emergency),
    }
}

pub(crate) fn messages<'m>(w: Wording, list: impl IntoIterator<Item = &'m Message>) -> Vec<String> {
    list.into_iter().map(|m| w.render(m)).collect()
}

pub(crate) fn verdict(w: Wording, verdict: Verdict) -> VerdictView {
    let code = match verdict {
        Verdict::Go => VerdictCode::Go,
        Verdict::GoWithConditions => VerdictCode::GoWithConditions,
        Verdict::NoGo => VerdictCode::NoGo,
    };
    VerdictView { code, word: w.verdict(verdict), means: w.verdict_means(verdict) }
}

fn status(w: Wording, status: Status) -> StatusView {
    let code = match status {
        Status::Go => StatusCode::Go,
        Status::Condition => StatusCode::Condition,
        Status::CannotTell => StatusCode::CannotTell,
        Status::NoGo => StatusCode::NoGo,
        Status::Stop => StatusCode::Stop,
    };
    StatusView { code, word: w.status(status) }
}

/// The name of a check, for people; the id itself for a check that this version does not know.
fn check_name(w: Wording, check: &str) -> String {
    planning::check_name(check).map_or_else(|| check.to_owned(), |id| w.text(id))
}

fn lift_line(w: Wording, lift: &LiftPlan) -> LiftLine {
    LiftLine {
        id: lift.id.clone(),
        name: lift.name.clone(),
        machine: lift.machine.clone(),
        load: format!("{}, {}", lift.load.name, mass(w, &lift.load)),
        place: format!("{}: {}", w.text(place_name(lift)), lift.landing),
        verdict: verdict(w, lift.verdict),
        governing: lift.governing_finding().map(|f| governing(w, f)),
    }
}

/// What the place of a lift is called: the load is brought there, or taken from there.
fn place_name(lift: &LiftPlan) -> TextId {
    match lift.task {
        Task::SetDown => ui::LANDING,
        Task::PickUp => ui::PICK_UP,
    }
}

fn governing(w: Wording, f: &Finding) -> Governing {
    Governing {
        check: check_name(w, &f.check),
        status: status(w, f.status),
        sentence: w.render(&f.message),
        reserve: f.reserve.and_then(|r| reserve(w, r)),
    }
}

/// `None` for a share that is not a number: it could be shown neither as a length nor in words.
fn reserve(w: Wording, share: f64) -> Option<ReserveView> {
    share.is_finite().then(|| ReserveView { share, text: w.reserve(share) })
}

fn finding(w: Wording, f: &Finding) -> FindingView {
    FindingView {
        id: f.check.to_string(),
        check: check_name(w, &f.check),
        status: status(w, f.status),
        sentence: w.render(&f.message),
        demand: f.demand.map(|q| measure(w, q)),
        limit: f.limit.map(|q| measure(w, q)),
        comparison: f.comparison.map(comparison),
        reserve: f.reserve.and_then(|r| reserve(w, r)),
        remedies: messages(w, &f.remedies),
        sources: f.sources.iter().map(|s| w.source(s)).collect(),
        working: f.working.iter().flat_map(|x| &x.steps).map(|s| step(w, s)).collect(),
    }
}

fn comparison(comparison: Comparison) -> ComparisonCode {
    match comparison {
        Comparison::AtMost => ComparisonCode::AtMost,
        Comparison::AtLeast => ComparisonCode::AtLeast,
    }
}

fn step(w: Wording, s: &Step) -> StepView {
    let worked = |q: Quantity| Measure { text: w.worked(q), si: q.si, si_unit: q.dimension.si_unit().to_owned() };
    let symbol = |name: &str, q: Quantity| SymbolView { symbol: pieces(name), value: worked(q) };
    StepView {
        title: w.render(&s.title),
        formula: pieces(&s.formula),
        values: s.values.iter().map(|(name, q)| symbol(name, *q)).collect(),
        result: symbol(&s.result.0, s.result.1),
        source: w.source(&s.source),
    }
}

fn measure(w: Wording, q: Quantity) -> Measure {
    Measure { text: w.quantity(q), si: q.si, si_unit: q.dimension.si_unit().to_owned() }
}

fn input(w: Wording, i: &planning::InputLine) -> InputView {
    InputView {
        name: i.name.clone(),
        place: i.place.clone(),
        value: i.value.clone(),
        certainty: w.certainty(i.certainty),
    }
}

pub(crate) fn fact(w: Wording, name: TextId, text: String) -> FactView {
    FactView { name: w.text(name), text, certainty: None }
}

fn mass(w: Wording, load: &LoadSummary) -> String {
    w.quantity(Quantity::new(load.mass_kg.nominal, Dimension::Mass))
}

pub(crate) fn range(w: Wording, r: Ranged, dimension: Dimension) -> String {
    let say = |si: f64| w.quantity(Quantity::new(si, dimension));
    if r.low == r.high {
        return say(r.nominal);
    }
    let id = ui::FROM_TO.with("value", say(r.nominal)).with("low", say(r.low)).with("high", say(r.high));
    w.render(&id)
}

fn carried(w: Wording, lift: &LiftPlan) -> Vec<FactView> {
    let support = planning::support_name(lift.support);
    let size = lift.load.size_m.map(|m| w.quantity(Quantity::new(m, Dimension::Length))).join(" × ");
    vec![
        fact(w, ui::LOAD, lift.load.name.clone()),
        FactView {
            name: w.text(ui::MASS),
            text: range(w, lift.load.mass_kg, Dimension::Mass),
            certainty: Some(w.certainty(lift.load.certainty)),
        },
        fact(w, ui::LOAD_CENTRE, range(w, lift.load.centre_ahead_m, Dimension::Length)),
        fact(w, ui::SIZE, size),
        fact(w, ui::MACHINE, lift.machine.clone()),
        fact(w, ui::ATTACHMENT, lift.attachment.clone()),
        fact(w, ui::SUPPORT, w.text(support)),
    ]
}

fn tolerance(w: Wording, tolerance: &planning::Tolerance) -> FactView {
    said(w, &tolerance.fact())
}

/// A fact that the plan tells itself.
pub(crate) fn said(w: Wording, [name, text]: &planning::Fact) -> FactView {
    FactView { name: w.render(name), text: w.render(text), certainty: None }
}

fn wheel(w: Wording, f: &WheelForce) -> FactView {
    let force = w.quantity(Quantity::new(f.force_n, Dimension::Force));
    let text = match f.pressure_pa {
        Some(pa) => format!("{force}, {}", w.quantity(Quantity::new(pa, Dimension::Pressure))),
        None => force,
    };
    FactView { name: w.render(&f.name), text, certainty: None }
}
