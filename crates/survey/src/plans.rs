//! Shapes of one plan file.

use crate::dxf;
use crate::feature::PlanReading;
use crate::kind::{self, FileKind};
use crate::notes::Notes;
use crate::options::GroundOptions;
use crate::text;
use evidence::Faults;

/// Reads a plan file of any kind into shapes.
///
/// `name`: file name relative to the job folder, for faults and for the kind where the first bytes
/// do not tell it. Of the options, units and coordinate system count here.
///
/// # Errors
/// Every fault found; see `docs/survey-files.md`. Warnings of a usable file are in
/// [`PlanReading::notes`].
pub fn read_plan(name: &str, bytes: &[u8], options: &GroundOptions) -> Result<PlanReading, Faults> {
    let mut notes = Notes::new(name);
    let result = kind::sniff(name, bytes, &mut notes).and_then(|kind| match kind {
        FileKind::Dxf => dxf::plan(bytes, options, &mut notes),
        _ => Err(notes.refuse("survey::no-plan", text::NO_PLAN, text::DO_GIVE_PLAN)),
    });
    let ((features, facts), notes) = notes.finish(result)?;
    Ok(PlanReading { features, facts, notes })
}
