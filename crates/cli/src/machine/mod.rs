//! `counterpoise machine`: a machine file for people: explained, compared, drawn, and what is missing.

mod compare;
mod compare_text;
mod draw;
mod explain;
mod explain_text;
mod missing;
mod reserve;
mod said_charts;
pub(crate) mod text;
mod values;

pub(crate) use compare::Comparison;
pub(crate) use explain::Explained;
pub(crate) use missing::Missing;
pub(crate) use reserve::Reserves;

use crate::Run;
use crate::args::{MachineArgs, MachineCommand, Said};
use crate::failure::Failure;
use jobfile::MachineReview;
use std::path::Path;

pub(crate) fn run(args: &MachineArgs) -> Run {
    match &args.command {
        MachineCommand::Explain(args) => explain::run(args),
        MachineCommand::Compare(args) => compare::run(args),
        MachineCommand::Draw(args) => draw::run(args),
        MachineCommand::Missing(args) => missing::run(args),
        MachineCommand::Reserve(args) => reserve::run(args),
    }
}

/// A machine file from disk, however incomplete.
fn review(path: &Path, said: Said) -> Result<MachineReview, Failure> {
    let name = path.display().to_string();
    let bytes = std::fs::read(path).map_err(|e| Failure::cannot_read(said, &name, &e.to_string()))?;
    Ok(jobfile::review_machine(&name, &bytes))
}
