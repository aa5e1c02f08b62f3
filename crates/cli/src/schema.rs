//! `counterpoise schema`.

use crate::args::{Form, SchemaArgs};
use crate::calc::{
    BearingResult, BuriedResult, ChartResult, EdgeResult, FitResult, GranularResult, LandingResult, MatResult,
    PlatformResult, PresumedResult, ReactionsResult, RutResult, SettlementResult, StabilityResult, StressResult,
    TravelResult, WindResult,
};
use crate::machine::{Comparison, Explained, Missing, Reserves};
use crate::{Outcome, Run, terminal};
use jobfile::FileKind;
use schemars::{Schema, schema_for};

#[expect(clippy::unnecessary_wraps, reason = "every command has one form")]
pub(crate) fn run(args: &SchemaArgs) -> Run {
    terminal::print_json(&schema(args.form));
    Ok(Outcome::Done)
}

/// The JSON Schema of an output or a file.
pub(crate) fn schema(form: Form) -> Schema {
    match form {
        Form::MachineFile => file_schema(FileKind::Machine),
        Form::JobFile => file_schema(FileKind::Job),
        Form::Plan => schema_for!(planning::Plan),
        Form::Stands => schema_for!(crate::stands::StandsAnswer),
        Form::Order => schema_for!(planning::order::JobOrder),
        Form::Check => schema_for!(planning::DistanceAnswer),
        Form::CalcChart => schema_for!(ChartResult),
        Form::CalcReactions => schema_for!(ReactionsResult),
        Form::CalcStability => schema_for!(StabilityResult),
        Form::CalcTravelStability => schema_for!(TravelResult),
        Form::CalcWind => schema_for!(WindResult),
        Form::CalcFit => schema_for!(FitResult),
        Form::CalcPlatform => schema_for!(PlatformResult),
        Form::CalcBearing => schema_for!(BearingResult),
        Form::CalcMat => schema_for!(MatResult),
        Form::CalcSettlement => schema_for!(SettlementResult),
        Form::CalcPresumed => schema_for!(PresumedResult),
        Form::CalcRut => schema_for!(RutResult),
        Form::CalcWorkingPlatform => schema_for!(GranularResult),
        Form::CalcStress => schema_for!(StressResult),
        Form::CalcEdge => schema_for!(EdgeResult),
        Form::CalcBuried => schema_for!(BuriedResult),
        Form::CalcLanding => schema_for!(LandingResult),
        Form::Faults => schema_for!(evidence::Faults),
        Form::MachineExplain => schema_for!(Explained),
        Form::MachineCompare => schema_for!(Comparison),
        Form::MachineMissing => schema_for!(Missing),
        Form::MachineReserve => schema_for!(Reserves),
    }
}

fn file_schema(kind: FileKind) -> Schema {
    // Published schemas have one language; the files themselves are the same in all.
    let english = wording::Wording::new(wording::Language::English, quantity::UnitSystem::Si);
    let schema = jobfile::file_schema(kind, &|message| english.render(message));
    // Always an object, which is a schema.
    Schema::try_from(schema).unwrap_or_default()
}
