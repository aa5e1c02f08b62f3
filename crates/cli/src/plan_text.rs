//! A plan for the terminal, at 80 columns.

use crate::terminal::{line, paragraph, width};
use evidence::{Finding, Status, Verdict};
use planning::{LiftPlan, Plan};
use wording::{Wording, ui};

/// A sign before a verdict or status that reads without colour.
fn sign(status: Status) -> &'static str {
    match status {
        Status::Go => "+",
        Status::Condition => "!",
        Status::CannotTell => "?",
        Status::NoGo => "x",
        Status::Stop => "X",
    }
}

pub(crate) fn print(plan: &Plan, w: Wording, all: bool) {
    let head = &plan.head;
    paragraph(&format!("{}  ·  {}  ·  {}", head.job, head.site, head.date), "", "");
    if head.invented {
        paragraph(&w.text(ui::INVENTED_DATA_NOTE), "", "");
    }
    let count = |v| plan.lifts.iter().filter(|l| l.verdict == v).count();
    let summary = ui::LIFTS_SUMMARY
        .with("lifts", plan.lifts.len())
        .with("go", count(Verdict::Go))
        .with("conditions", count(Verdict::GoWithConditions))
        .with("no_go", count(Verdict::NoGo));
    paragraph(&w.render(&summary), "", "");
    for lift in &plan.lifts {
        line("");
        print_lift(lift, w, all);
    }
    line("");
    for warning in &plan.warnings {
        paragraph(&w.render(warning), "! ", "  ");
    }
    line(&w.text(ui::CAUTIONS));
    for caution in plan.cautions.iter().chain(&plan.ends_when).chain(&plan.emergency) {
        paragraph(&w.render(caution), "- ", "  ");
    }
}

fn print_lift(lift: &LiftPlan, w: Wording, all: bool) {
    let verdict = w.verdict(lift.verdict);
    let title = format!("{} {}", lift.id, lift.name);
    let room = width().saturating_sub(verdict.chars().count() + 2);
    if title.chars().count() <= room {
        let gap = width() - title.chars().count() - verdict.chars().count();
        line(&format!("{title}{}{verdict}", " ".repeat(gap)));
    } else {
        paragraph(&title, "", "  ");
        line(&format!("{verdict:>w$}", w = width()));
    }
    line(&"-".repeat(width()));
    let summary = format!(
        "{} · {} · {} · {}",
        lift.machine,
        lift.attachment,
        lift.load.name,
        w.quantity(quantity::Quantity::new(lift.load.mass_kg.high, quantity::Dimension::Mass))
    );
    paragraph(&summary, "  ", "  ");
    if all {
        for finding in &lift.findings {
            print_finding(finding, w);
        }
        if !lift.steps.is_empty() {
            line(&format!("  {}", w.text(ui::STEPS)));
            for (i, step) in lift.steps.iter().enumerate() {
                paragraph(&w.render(step), &format!("  {}. ", i + 1), "     ");
            }
        }
        return;
    }
    // What governs first, then everything else that keeps it from go.
    if let Some(governing) = lift.governing_finding() {
        print_finding(governing, w);
    }
    let others = lift.findings.iter().enumerate().filter(|(i, f)| *i != lift.governing && f.status > Status::Go);
    for (_, finding) in others {
        print_finding(finding, w);
    }
}

fn print_finding(finding: &Finding, w: Wording) {
    let name = planning::check_name(&finding.check).map_or_else(|| finding.check.to_string(), |id| w.text(id));
    let mut said = format!("{name}: {}", w.render(&finding.message));
    if let Some(reserve) = finding.reserve {
        said = format!("{said} [{}]", w.reserve(reserve));
    }
    paragraph(&said, &format!("  {} ", sign(finding.status)), "    ");
    if finding.status > Status::Go {
        for remedy in &finding.remedies {
            paragraph(&w.render(remedy), "    > ", "      ");
        }
    }
}
