//! `counterpoise schema`.

use crate::args::{Form, SchemaArgs};
use crate::calc::{ChartResult, StabilityResult};
use crate::{Outcome, Run, terminal};
use schemars::{Schema, schema_for};

#[expect(clippy::unnecessary_wraps, reason = "every command has one form")]
pub(crate) fn run(args: &SchemaArgs) -> Run {
    terminal::print_json(&schema(args.form));
    Ok(Outcome::Done)
}

/// The JSON Schema of an output.
pub(crate) fn schema(form: Form) -> Schema {
    match form {
        Form::Plan => schema_for!(planning::Plan),
        Form::Check => schema_for!(planning::DistanceAnswer),
        Form::CalcChart => schema_for!(ChartResult),
        Form::CalcStability => schema_for!(StabilityResult),
        Form::Faults => schema_for!(evidence::Faults),
    }
}
