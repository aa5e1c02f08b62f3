//! `counterpoise calc`: one calculation alone, TOML or JSON in, text or JSON out.

mod base_input;
mod bearing;
mod buried;
mod chart;
mod edge;
mod edge_print;
mod fit;
mod fit_input;
mod fit_text;
mod granular;
mod ground_input;
pub(crate) mod ground_text;
mod input;
mod landing;
mod landing_input;
mod mat;
mod on_ground;
mod platform;
mod presumed;
mod reactions;
mod reactions_print;
mod rut;
mod safety_input;
mod settlement;
mod settles;
mod soil_input;
pub(crate) mod soil_text;
mod stability;
mod stance_input;
mod standing;
mod stress;
pub(crate) mod text;
mod travel;
mod travel_cases;
mod travel_working;
mod wind;
mod working;

pub(crate) use bearing::BearingResult;
pub(crate) use buried::BuriedResult;
pub(crate) use chart::ChartResult;
pub(crate) use edge::EdgeResult;
pub(crate) use fit::FitResult;
pub(crate) use granular::GranularResult;
pub(crate) use landing::LandingResult;
pub(crate) use mat::MatResult;
pub(crate) use platform::PlatformResult;
pub(crate) use presumed::PresumedResult;
pub(crate) use reactions::ReactionsResult;
pub(crate) use rut::RutResult;
pub(crate) use settlement::SettlementResult;
pub(crate) use stability::StabilityResult;
pub(crate) use stress::StressResult;
pub(crate) use travel_cases::TravelResult;
pub(crate) use wind::WindResult;

use crate::args::{CalcArgs, Calculation};
use crate::{Outcome, Run, terminal};
use std::io::IsTerminal;

pub(crate) fn run(args: &CalcArgs) -> Run {
    let example: std::borrow::Cow<'static, str> = match args.name {
        Calculation::Chart => chart::EXAMPLE.into(),
        Calculation::Reactions => reactions::EXAMPLE.into(),
        Calculation::Stability => stability::EXAMPLE.into(),
        Calculation::TravelStability => travel::EXAMPLE.into(),
        Calculation::Wind => wind::EXAMPLE.into(),
        Calculation::Fit => fit::EXAMPLE.into(),
        Calculation::Platform => platform::EXAMPLE.into(),
        Calculation::Bearing => bearing::example().into(),
        Calculation::Mat => mat::example().into(),
        Calculation::Settlement => settlement::example().into(),
        Calculation::Presumed => presumed::EXAMPLE.into(),
        Calculation::Rut => rut::EXAMPLE.into(),
        Calculation::WorkingPlatform => granular::EXAMPLE.into(),
        Calculation::Stress => stress::EXAMPLE.into(),
        Calculation::Edge => edge::EXAMPLE.into(),
        Calculation::Buried => buried::EXAMPLE.into(),
        Calculation::Landing => landing::EXAMPLE.into(),
    };
    // Nothing to read: teach instead of waiting for somebody to type a file.
    if args.example || (args.file.is_none() && std::io::stdin().is_terminal()) {
        terminal::line(example.trim_end());
        return Ok(Outcome::Done);
    }
    let input = input::read(args)?;
    match args.name {
        Calculation::Chart => chart::run(&input, args.said),
        Calculation::Reactions => reactions::run(&input, args.said),
        Calculation::Stability => stability::run(&input, args.said),
        Calculation::TravelStability => travel::run(&input, args.said),
        Calculation::Wind => wind::run(&input, args.said),
        Calculation::Fit => fit::run(&input, args.said),
        Calculation::Platform => platform::run(&input, args.said),
        Calculation::Bearing => bearing::run(&input, args.said),
        Calculation::Mat => mat::run(&input, args.said),
        Calculation::Settlement => settlement::run(&input, args.said),
        Calculation::Presumed => presumed::run(&input, args.said),
        Calculation::Rut => rut::run(&input, args.said),
        Calculation::WorkingPlatform => granular::run(&input, args.said),
        Calculation::Stress => stress::run(&input, args.said),
        Calculation::Edge => edge::run(&input, args.said),
        Calculation::Buried => buried::run(&input, args.said),
        Calculation::Landing => landing::run(&input, args.said),
    }
}
