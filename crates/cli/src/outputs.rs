//! `plan --out`: everything complete, or nothing.

use crate::args::{Paper, PlanArgs};
use crate::failure::Failure;
use crate::text;
use planning::{LiftPlan, Plan};
use std::fs;
use std::path::{Path, PathBuf};

/// Name of the plan in the folder.
const PLAN_FILE: &str = "plan.json";
const SHEET: &str = "plan-sheet.pdf";
const DRAWINGS: &str = "drawings";

/// Width of the drawings, CSS pixels.
pub(crate) const WIDTH: f64 = 960.0;

/// Writes plan, plan sheet and drawings to `out`: into a temporary folder beside it, renamed when
/// all is there. A folder that holds anything but an earlier plan is left alone.
pub(crate) fn write(plan: &Plan, out: &Path, args: &PlanArgs) -> Result<(), Failure> {
    let said = args.said;
    let fail = |e: &std::io::Error| Failure::cannot_write(said, &out.display().to_string(), &e.to_string());
    if out.exists() && !replaceable(out) {
        let message = text::OUT_NOT_OURS.with("folder", out.display().to_string());
        let hint = Some(text::HINT_OUT.message());
        return Err(Failure::one(said, "cli::out-not-ours", &out.display().to_string(), message, hint));
    }
    let wording = said.wording();
    let paper = match args.paper {
        Paper::A4 => report::PaperSize::A4,
        Paper::Letter => report::PaperSize::UsLetter,
    };
    let pdf = report::plan_sheet(plan, &wording, paper)
        .map_err(|e| Failure::one(said, "cli::no-sheet", "", text::NO_SHEET.with("reason", e.to_string()), None))?;
    let json = serde_json::to_vec_pretty(plan).map_err(|e| Failure::cannot_write(said, PLAN_FILE, &e.to_string()))?;

    let temporary = beside(out, "writing");
    let written = (|| -> std::io::Result<()> {
        let _ = fs::remove_dir_all(&temporary);
        fs::create_dir_all(temporary.join(DRAWINGS))?;
        fs::write(temporary.join(PLAN_FILE), &json)?;
        fs::write(temporary.join(SHEET), &pdf)?;
        for (i, lift) in plan.lifts.iter().enumerate() {
            let name = file_name(lift, i);
            let style = drawing::Style::paper(WIDTH);
            let drawings = temporary.join(DRAWINGS);
            let put = |what: &str, svg: String| fs::write(drawings.join(format!("{name}-{what}.svg")), svg);
            put("side-view", drawing::elevation(lift, &wording, &style))?;
            put("load-chart", drawing::chart(lift, &wording, &style))?;
            put("stand-field", drawing::stand_field(lift, &wording, &style))?;
            put("boom-movement", drawing::boom_strip(lift, &wording, &style))?;
            if lift.way.is_some() {
                put("way-in", drawing::way(lift, drawing::WayDirection::In, &wording, &style))?;
                put("way-out", drawing::way(lift, drawing::WayDirection::Out, &wording, &style))?;
            }
        }
        put_in_place(&temporary, out)
    })();
    if written.is_err() {
        let _ = fs::remove_dir_all(&temporary);
    }
    written.map_err(|e| fail(&e))
}

/// True for an empty folder, or one that holds an earlier plan of ours and nothing else.
fn replaceable(out: &Path) -> bool {
    let Ok(entries) = fs::read_dir(out) else { return false };
    let names: Vec<String> = entries.flatten().map(|e| e.file_name().to_string_lossy().into_owned()).collect();
    if names.is_empty() {
        return true;
    }
    let ours = names.iter().all(|n| [PLAN_FILE, SHEET, DRAWINGS].contains(&n.as_str()));
    let drawings = fs::read_dir(out.join(DRAWINGS))
        .map_or(true, |d| d.flatten().all(|e| Path::new(&e.file_name()).extension().is_some_and(|x| x == "svg")));
    let plan = fs::read(out.join(PLAN_FILE)).ok().and_then(|b| serde_json::from_slice::<serde_json::Value>(&b).ok());
    let schema = plan.as_ref().and_then(|p| p["schema"].as_str());
    ours && drawings && schema == Some(planning::PLAN_SCHEMA)
}

/// Swaps the new folder in; an earlier one goes only when the new one stands.
pub(crate) fn put_in_place(temporary: &Path, out: &Path) -> std::io::Result<()> {
    if !out.exists() {
        if let Some(parent) = out.parent().filter(|p| !p.as_os_str().is_empty()) {
            fs::create_dir_all(parent)?;
        }
        return fs::rename(temporary, out);
    }
    let old = beside(out, "before");
    let _ = fs::remove_dir_all(&old);
    fs::rename(out, &old)?;
    if let Err(e) = fs::rename(temporary, out) {
        fs::rename(&old, out)?;
        return Err(e);
    }
    fs::remove_dir_all(&old)
}

pub(crate) fn beside(out: &Path, word: &str) -> PathBuf {
    let name = out.file_name().map_or_else(|| "out".to_owned(), |n| n.to_string_lossy().into_owned());
    out.with_file_name(format!(".{name}.{word}-{}", std::process::id()))
}

/// A file name from a lift's id: plain characters only, numbered so that no two are alike.
fn file_name(lift: &LiftPlan, index: usize) -> String {
    let plain: String =
        lift.id.chars().map(|c| if c.is_ascii_alphanumeric() || c == '-' || c == '_' { c } else { '-' }).collect();
    format!("{:02}-{plain}", index + 1)
}
