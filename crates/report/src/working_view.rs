//! The working of a lift, check by check; a step that stands under an earlier check is named, not
//! printed again.

use crate::lift_view::Say;
use evidence::Step;
use planning::LiftPlan;
use quantity::Quantity;
use serde::Serialize;
use wording::ui;

/// Working of one check.
#[derive(Serialize)]
pub(crate) struct WorkingView {
    check: String,
    steps: Vec<StepView>,
    /// Runs of steps that stand under earlier checks: "Air pressure … as under “Load factor”".
    again: Vec<String>,
}

#[derive(Serialize)]
struct StepView {
    title: String,
    formula: String,
    values: Vec<String>,
    result: String,
    source: String,
}

/// The working of a lift.
pub(crate) fn workings(lift: &LiftPlan, say: &Say) -> Vec<WorkingView> {
    let mut seen: Vec<(&Step, String)> = Vec::new();
    let mut out = Vec::new();
    for finding in &lift.findings {
        let Some(working) = finding.working.as_ref().filter(|w| !w.steps.is_empty()) else { continue };
        let check = say.check(finding);
        let mut view = WorkingView { check: check.clone(), steps: Vec::new(), again: Vec::new() };
        let mut earlier: Vec<(String, Vec<String>)> = Vec::new();
        for step in &working.steps {
            match seen.iter().find(|(s, _)| *s == step) {
                Some((_, first)) if *first != check => {
                    let title = say.message(&step.title);
                    match earlier.iter_mut().find(|(c, _)| c == first) {
                        Some((_, titles)) if titles.contains(&title) => {}
                        Some((_, titles)) => titles.push(title),
                        None => earlier.push((first.clone(), vec![title])),
                    }
                }
                _ => {
                    seen.push((step, check.clone()));
                    view.steps.push(shown(step, say));
                }
            }
        }
        for (first, titles) in earlier {
            let place = say.message(&ui::WORKING_AS.with("check", first));
            view.again.push(format!("{}: {place}", titles.join("; ")));
        }
        out.push(view);
    }
    out
}

fn shown(step: &Step, say: &Say) -> StepView {
    let equal = |name: &str, q: Quantity| format!("{name}\u{a0}=\u{a0}{}", say.0.worked(q));
    StepView {
        title: say.message(&step.title),
        formula: step.formula.to_string(),
        values: step.values.iter().map(|(name, q)| equal(name, *q)).collect(),
        result: equal(&step.result.0, step.result.1),
        source: say.source(&step.source),
    }
}
