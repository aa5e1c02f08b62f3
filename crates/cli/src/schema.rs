//! `counterpoise schema`.

use crate::args::{Form, SchemaArgs};
use crate::machine::{Comparison, Explained, Missing};
use crate::calc::{ChartResult, StabilityResult};
use crate::{Outcome, Run, terminal};
use jobfile::FileKind;
use schemars::{Schema, schema_for};
use serde_json::Value;

#[expect(clippy::unnecessary_wraps, reason = "every command has one form")]
pub(crate) fn run(args: &SchemaArgs) -> Run {
    terminal::print_json(&schema(args.form));
    Ok(Outcome::Done)
}

/// The JSON Schema of an output or a file.
pub(crate) fn schema(form: Form) -> Value {
    let output: Schema = match form {
        Form::MachineFile => return file_schema(FileKind::Machine),
        Form::JobFile => return file_schema(FileKind::Job),
        Form::Plan => schema_for!(planning::Plan),
        Form::Check => schema_for!(planning::DistanceAnswer),
        Form::CalcChart => schema_for!(ChartResult),
        Form::CalcStability => schema_for!(StabilityResult),
        Form::Faults => schema_for!(evidence::Faults),
        Form::MachineExplain => schema_for!(Explained),
        Form::MachineCompare => schema_for!(Comparison),
        Form::MachineMissing => schema_for!(Missing),
    };
    output.to_value()
}

fn file_schema(kind: FileKind) -> Value {
    // Published schemas have one language; the files themselves are the same in all.
    let english = wording::Wording::new(wording::Language::English, quantity::UnitSystem::Si);
    jobfile::file_schema(kind, &|message| english.render(message))
}
