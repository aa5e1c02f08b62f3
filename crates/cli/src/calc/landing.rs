//! `calc landing`: what a loading bay, a deck or a slab carries of a pallet, and the largest load that fits.

use super::input::Input;
use super::landing_input::read;
use super::standing::failure;
use super::text as words;
use super::working;
use crate::args::Said;
use crate::{Outcome, Run, terminal};
use evidence::{Message, Silent, Status, Working};
use ground::carried::{Carried, Part, governing, largest_that_fits};
use jobfile::note_faults;
use quantity::{Dimension, Quantity};
use serde::{Deserialize, Serialize};

pub(crate) const EXAMPLE: &str = r#"# What a landing carries of a pallet: its own rating with what lies there, and
# the deck or slab that it is made of. The keys of a landing are those of a job.
load = "1100 kg"             # with its pallet, at the most
setting_down = "1.4"         # factor while it is set down; left out: 1.4
area = "6.0 m²"
stands = "scaffold"          # sways under the push of the forks; or "building",
#                              "vehicle", "ground"; left out counts as scaffold
people = 1                   # left out: two count
runs = "along"               # joists, or the slab's span: along the way in, or
#                              "across"
lying = [{ what = "mortar tub", mass = "250 kg" }]

[pallet]
along = "1.20 m"             # along the way in
across = "1.00 m"

[pallet.feet]                # runners: one foot along as long as the pallet
along = 1
foot_along = "1.20 m"
across = 3
foot_across = "0.10 m"
sharing = "by-width"         # limp load: the middle runner takes half; "even"

[rating]                     # left out: not known
by = "Ana Ruiz, scaffold designer"   # invented
mass = "2000 kg"             # all that may lie on it
# pallet = "1500 kg"         # one pallet
# even = "6 kN/m²"           # even load
# duty_class = 4             # is no rating for pallets
# part = "10 kN/m²"          # even load on a part of it
# part_area = "3 m²"
# point = "5 kN"             # on a square
# point_side = "0.10 m"
push = "4 kN"                # horizontal
includes_setting_down = true # has the designer allowed for it?

[deck]                       # or [slab], or [props]
by = "Ana Ruiz, drawing 7"   # who answers for these numbers; invented
moisture = "weather"         # or "covered"
board_breadth = "225 mm"
board_depth = "50 mm"
board_timber = "C24"
board_spans = 2              # spans that a board runs over
joist_breadth = "100 mm"
joist_depth = "250 mm"
joist_timber = "C24"
joist_span = "2.40 m"
joist_spans = 1
joist_spacing = "0.40 m"
joists_held_sideways = true  # their upper edges cannot go sideways
own = "0.5 kPa"              # weight of the deck
beside = "0.75 kPa"          # even load beside the pallet: people, goods

# [slab]                     # spans one way
# by = "M. Sato, drawing S-12"
# span = "4.0 m"
# spans = 2
# depth = "150 mm"           # from the pressed face to the reinforcement
# concrete = "25 MPa"        # cylinder strength at 28 days
# cement = "slow"            # "normal", "rapid"; not known counts as slow
# age_days = "14"
# mean_celsius = "12"        # since it was cast
# reinforcement = "500 MPa"
# bottom_a_metre = "524 mm²"
# top_a_metre = "524 mm²"
# across_a_metre = "262 mm²"
# own = "4.5 kPa"
# beside = "1 kPa"
# edge_along = "3 m"         # from the pallet to a free edge; left out: none
# edge_across = "3 m"        # known, so it may be right there
# [props]                    # a slab on props: what their engineer allows,
# by = "engineer"            # nothing else
# allows = "20 kN"
"#;

/// Answer of the calculation. SI.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct LandingResult {
    /// The worst of all parts.
    pub(crate) status: Status,
    /// Text id of the part that governs.
    pub(crate) governs: String,
    /// Each part.
    pub(crate) parts: Vec<LandingPart>,
    /// Largest load of this shape that fits, kg, rounded down to a thousandth of the load; `null`: none, or not
    /// known.
    pub(crate) largest_kg: Option<f64>,
    /// Whether half the load fits.
    pub(crate) half_fits: bool,
    /// Force that a support of a joist has to hold it down with, N.
    pub(crate) hold_down_n: f64,
}

/// One part.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct LandingPart {
    /// Text id of its name.
    pub(crate) part: String,
    /// What it has to carry.
    pub(crate) demand: Quantity,
    /// What it bears; `null`: not known.
    pub(crate) limit: Option<Quantity>,
    /// Demand over limit; `null`: not known.
    pub(crate) utilisation: Option<f64>,
    /// Go, no-go or cannot tell.
    pub(crate) status: Status,
}

pub(crate) fn run(input: &Input, said: Said) -> Run {
    let root = input.document.root();
    let mut steps = Working::default();
    let asked = read(&root);
    if let Some(failure) = input.faults(said) {
        return Err(failure);
    }
    let Some(asked) = asked else { return Err(failure(input, said)) };
    steps.steps.clone_from(&asked.strength.steps.steps);
    let landing = asked.landing();
    let (all, hold_down) = match landing.under(&asked.load(asked.mass), &mut steps) {
        Ok(answer) => (answer.carried, answer.hold_down),
        Err(faults) => {
            note_faults(&root, faults);
            return Err(failure(input, said));
        }
    };
    let Some(worst) = governing(&all).copied() else { return Err(failure(input, said)) };
    let status = worst.status();
    let at = |mass: f64| landing.under(&asked.load(mass), &mut Silent).map(|a| a.carried).unwrap_or_default();
    let half = at(asked.mass / 2.0);
    let result = LandingResult {
        status,
        governs: worst.part.name().id.to_owned(),
        parts: all.iter().map(part).collect(),
        largest_kg: if status == Status::CannotTell { None } else { largest_that_fits(asked.mass, at) },
        half_fits: !half.is_empty() && half.iter().all(|c| c.status() == Status::Go),
        hold_down_n: hold_down,
    };
    if said.json() {
        terminal::print_json(&result);
    } else {
        print(&result, &all, worst.part, asked.mass, said);
        working::print(&steps, None, said);
    }
    Ok(if status == Status::Go { Outcome::Done } else { Outcome::Outside })
}

fn part(c: &Carried) -> LandingPart {
    let utilisation = Some(c.utilisation()).filter(|u| u.is_finite());
    LandingPart { part: c.part.name().id.to_owned(), demand: c.demand, limit: c.limit, utilisation, status: c.status() }
}

fn print(r: &LandingResult, all: &[Carried], governs: Part, mass: f64, said: Said) {
    let w = said.wording();
    let say = |m: &Message| terminal::paragraph(&w.render(m), "", "  ");
    for c in all {
        let head = |id: evidence::TextId| id.with("part", c.part.name()).with("demand", c.demand);
        let Some(limit) = c.limit else {
            say(&head(words::LANDING_NOT_KNOWN));
            continue;
        };
        let id = if c.status() == Status::Go { words::LANDING_CARRIES } else { words::LANDING_TOO_MUCH };
        say(&head(id).with("limit", limit).with("share", Quantity::ratio(c.utilisation())));
    }
    say(&words::LANDING_GOVERNS.with("part", governs.name()));
    let kilograms = |m: f64| Quantity::new(m, Dimension::Mass);
    if r.status != Status::Go {
        if let Some(most) = r.largest_kg {
            say(&words::LANDING_FITS.with("mass", kilograms(most)));
        }
        if r.status == Status::CannotTell {
            say(&words::LANDING_ASK.message());
        } else {
            let id = if r.half_fits { words::LANDING_HALF_FITS } else { words::LANDING_HALF_DOES_NOT };
            say(&id.with("mass", kilograms(mass / 2.0)));
        }
    }
    if r.hold_down_n > 1.0 {
        say(&words::LANDING_HOLD_DOWN.with("force", Quantity::new(r.hold_down_n, Dimension::Force)));
    }
    say(&words::LANDING_NOTE.message());
}
