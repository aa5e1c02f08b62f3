//! `counterpoise calc`: one calculation alone, TOML or JSON in, text or JSON out.

mod chart;
mod fit;
mod fit_input;
mod fit_text;
mod input;
mod landing;
mod landing_input;
mod platform;
mod reactions;
mod reactions_print;
mod stability;
mod stance_input;
mod standing;
pub(crate) mod text;
mod travel;
mod travel_cases;
mod travel_working;
mod wind;
mod working;

pub(crate) use chart::ChartResult;
pub(crate) use fit::FitResult;
pub(crate) use landing::LandingResult;
pub(crate) use platform::PlatformResult;
pub(crate) use reactions::ReactionsResult;
pub(crate) use stability::StabilityResult;
pub(crate) use travel_cases::TravelResult;
pub(crate) use wind::WindResult;

use crate::args::{CalcArgs, Calculation};
use crate::{Outcome, Run, terminal};
use std::io::IsTerminal;

pub(crate) fn run(args: &CalcArgs) -> Run {
    let example = match args.name {
        Calculation::Chart => chart::EXAMPLE,
        Calculation::Reactions => reactions::EXAMPLE,
        Calculation::Stability => stability::EXAMPLE,
        Calculation::TravelStability => travel::EXAMPLE,
        Calculation::Wind => wind::EXAMPLE,
        Calculation::Fit => fit::EXAMPLE,
        Calculation::Platform => platform::EXAMPLE,
        Calculation::Landing => landing::EXAMPLE,
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
        Calculation::Landing => landing::run(&input, args.said),
    }
}
