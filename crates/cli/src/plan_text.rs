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
    crate::routine_text::print(&plan.routines, w);
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
        crate::plan_stand::print(lift, w);
        print_tolerances(lift, w);
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
    crate::plan_stand::print(lift, w);
    print_tolerances(lift, w);
}

/// A small table: what grows, how much of it is borne alone and at the worst corner, and what turns.
fn print_tolerances(lift: &LiftPlan, w: Wording) {
    if lift.tolerances.is_empty() {
        return;
    }
    line(&format!("  {}", w.text(ui::TOLERANCES)));
    let head = [ui::TOLERANCE_WHAT, ui::TOLERANCE_ALONE, ui::TOLERANCE_AT_WORST, ui::TOLERANCE_TURNS];
    let mut rows = vec![head.map(|id| w.text(id))];
    rows.extend(lift.tolerances.iter().map(|t| t.row().map(|m| w.render(&m))));
    // The name and what turns share what the two numbers leave.
    let widest = |k: usize| rows.iter().map(|r| r[k].chars().count()).max().unwrap_or(0).min(16);
    let numbers = [widest(1), widest(2)];
    let rest = width().saturating_sub(numbers[0] + numbers[1] + 4 + 6);
    let turns = rest * 11 / 20;
    let widths = [rest - turns, numbers[0], numbers[1], turns];
    for row in &rows {
        let cells: Vec<Vec<String>> = row
            .iter()
            .zip(widths)
            .map(|(cell, wide)| textwrap::wrap(cell, wide.max(8)).into_iter().map(String::from).collect())
            .collect();
        for k in 0..cells.iter().map(Vec::len).max().unwrap_or(0) {
            let mut set = String::from("    ");
            for (cell, wide) in cells.iter().zip(widths) {
                let part = cell.get(k).map_or("", String::as_str);
                set.push_str(part);
                set.extend(std::iter::repeat_n(' ', (wide + 2).saturating_sub(part.chars().count())));
            }
            line(set.trim_end());
        }
    }
    paragraph(&w.text(ui::TOLERANCE_NOTE), "    ", "    ");
}

pub(crate) fn print_finding(finding: &Finding, w: Wording) {
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
