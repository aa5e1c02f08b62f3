//! `counterpoise plan`.

use crate::args::{PlanArgs, Said};
use crate::disk::DiskFolder;
use crate::failure::Failure;
use crate::threads::share_out;
use crate::{Outcome, Run, export, outputs, plan_text, terminal, text};
use jobfile::Folder;
use planning::Plan;
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

pub(crate) fn run(args: &PlanArgs) -> Run {
    let export = args.export.as_ref().map(|path| export::Target::of(path, args.said)).transpose()?;
    let (job, plan) = planned(&args.job, args.said)?;
    let exported = export.map(|target| target.bytes_of_plan(&job, &plan, args.said)).transpose()?;
    if let Some(out) = &args.out {
        outputs::write(&plan, out, args)?;
    }
    if let Some(exported) = &exported {
        exported.write(args.said)?;
    }
    if args.said.json() {
        terminal::print_json(&plan);
    } else {
        plan_text::print(&plan, args.said.wording(), args.findings);
        if let Some(out) = &args.out {
            let written = text::WRITTEN.with("folder", out.display().to_string());
            terminal::line(&args.said.wording().render(&written));
        }
        if let Some(path) = &args.export {
            let written = text::WRITTEN.with("folder", path.display().to_string());
            terminal::line(&args.said.wording().render(&written));
        }
    }
    Ok(Outcome::Verdict(plan.verdict))
}

/// Reads and plans the job of a folder.
pub(crate) fn plan_of(job: &Path, said: Said) -> Result<Plan, Failure> {
    planned(job, said).map(|(_, plan)| plan)
}

/// The same with the job.
fn planned(job: &Path, said: Said) -> Result<(planning::Job, Plan), Failure> {
    let job = job_of(job, said)?;
    let plan = planning::plan_shared_out(&job, &share_out);
    Ok((job, plan))
}

/// Reads the job of a folder. Warnings stand in the plan, wherever it is shown.
pub(crate) fn job_of(job: &Path, said: Said) -> Result<planning::Job, Failure> {
    let root = job_folder(job);
    let folder = DiskFolder::new(&root);
    if folder.read(jobfile::JOB_FILE).is_none() {
        let message = text::NO_JOB.with("file", root.join(jobfile::JOB_FILE).display().to_string());
        let hint = Some(text::HINT_NEW.message());
        return Err(Failure::one(said, "cli::no-job", &root.display().to_string(), message, hint));
    }
    match jobfile::read_job(&folder) {
        Ok((job, _)) => Ok(job),
        Err(faults) => {
            let files = texts(&folder, &faults);
            Err(Failure { faults, said, files })
        }
    }
}

/// Notes an id that no lift of the job has, with those that there are.
pub(crate) fn unknown_lift(job: &planning::Job, id: &str, wrong: &mut evidence::Faults) {
    let known = job.lifts.iter().map(|l| l.id.as_str()).collect::<Vec<_>>().join(", ");
    let message = text::NO_LIFT.with("lift", id);
    let hint = Some(text::HINT_NO_LIFT.with("known", known));
    wrong.error("cli::no-lift", evidence::Place::file(jobfile::JOB_FILE), message, hint);
}

/// The folder of a job, named by itself or by its job file.
fn job_folder(job: &Path) -> PathBuf {
    if job.file_name().is_some_and(|n| n == jobfile::JOB_FILE) && job.is_file() {
        match job.parent() {
            Some(parent) if !parent.as_os_str().is_empty() => parent.to_owned(),
            _ => PathBuf::from("."),
        }
    } else {
        job.to_owned()
    }
}

/// The texts of the files that faults point into.
fn texts(folder: &DiskFolder, faults: &evidence::Faults) -> BTreeMap<String, String> {
    let mut out = BTreeMap::new();
    for fault in faults.list.iter().filter(|f| f.place.span.is_some()) {
        let file = &fault.place.file;
        if !out.contains_key(file)
            && let Some(Ok(bytes)) = folder.read(file)
        {
            let text = String::from_utf8_lossy(&bytes).trim_start_matches('\u{feff}').to_owned();
            out.insert(file.clone(), text);
        }
    }
    out
}
