//! `calc platform`: the slope at which a machine tips on a tilting platform, turned as stability tests turn it and
//! turned the worst way.

use super::input::Input;
use super::stance_input::Ground;
use super::standing::{Asks, failure, given, side};
use super::text as words;
use crate::args::Said;
use crate::{Outcome, Run, terminal};
use evidence::Message;
use jobfile::Reader;
use quantity::{Dimension, Quantity};
use serde::{Deserialize, Serialize};
use stability::{
    OnPlatform, PLATFORM_STANDARD, PLATFORM_TESTS, PlatformTest, TipsOver, Turned, leans, on_platform, tipping_lines,
};

pub(crate) const EXAMPLE: &str = r#"# The slope at which a machine tips on a tilting platform, on tyres that give.
machine = "validation/machines/r1.toml"   # relative to this file
attachment = "forks"
boom_angle = "60°"
extension = "3.00 m"
load = "1500 kg"
load_left = "0 m"            # centre of the load left of the middle
load_ahead = "0.61 m"        # from the fork face; 0 for a hook
load_up = "0.50 m"           # centre above the forks; 0 for a hook
support = "tyres"            # "stabilizers" or "outriggers"
rear_axle = "free"           # or "locked". Unknown counts as free
test = "3"                   # 1 lengthwise, stacking; 2 lengthwise, travelling;
#                              3 sideways, stacking; 4 sideways, travelling
#                              without load; left out: no slope is asked for
"#;

/// Answer of the calculation. Slopes as rise over run; angles in degrees.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct PlatformResult {
    /// Each way the machine is turned.
    pub(crate) turned: Vec<PlatformTurned>,
    /// Slope in the worst orientation; `null`: it does not tip before the platform stands upright.
    pub(crate) worst_slope: Option<f64>,
    /// Direction of descent there, degrees: 0 nose downhill, 90 left side downhill.
    pub(crate) worst_azimuth_deg: f64,
    /// Which way it goes over there.
    pub(crate) worst_tips_over: Option<TipsOver>,
    /// Slope that the test asks for, least and most remembered (from memory, low confidence); `null`: none asked.
    pub(crate) required_slope: Option<[f64; 2]>,
    /// True: every orientation of the test reaches the most that is remembered; false: one does not reach the
    /// least; `null`: cannot tell, or no test asked.
    pub(crate) reached: Option<bool>,
}

/// One orientation.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct PlatformTurned {
    /// How the machine is turned.
    pub(crate) way: PlatformWay,
    /// Direction of descent, degrees.
    pub(crate) azimuth_deg: f64,
    /// Slope at which it tips; `null`: not before the platform stands upright.
    pub(crate) slope: Option<f64>,
    /// Which way it goes over.
    pub(crate) tips_over: Option<TipsOver>,
}

/// How a machine is turned.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub(crate) enum PlatformWay {
    /// Nose downhill.
    NoseDown,
    /// Tail downhill.
    TailDown,
    /// Left tilting edge across the fall.
    LeftEdge,
    /// Right tilting edge across the fall.
    RightEdge,
}

const WAYS: [(PlatformWay, Turned); 4] = [
    (PlatformWay::NoseDown, Turned::NoseDown),
    (PlatformWay::TailDown, Turned::TailDown),
    (PlatformWay::LeftEdge, Turned::LeftEdge),
    (PlatformWay::RightEdge, Turned::RightEdge),
];
const TESTS: [(&str, PlatformTest); 4] =
    [("1", PLATFORM_TESTS[0]), ("2", PLATFORM_TESTS[1]), ("3", PLATFORM_TESTS[2]), ("4", PLATFORM_TESTS[3])];

pub(crate) fn run(input: &Input, said: Said) -> Run {
    let asks = Asks { ground: Ground::Level, ..Asks::default() };
    let test = |root: &Reader<'_>| Some(root.optional("test").and_then(|n| root.as_choice(n, "test", &TESTS)));
    let (s, test) = given(input, said, asks, test)?;
    let root = input.document.root();
    if let Some(test) = test {
        if test.unladen && s.load.mass > 0.0 {
            root.fault("load", words::PLATFORM_UNLADEN.message(), None);
        }
        if !test.unladen && s.load.mass <= 0.0 {
            root.fault("load", words::PLATFORM_LADEN.message(), None);
        }
        if test.stacking == s.carried() {
            let id = if test.stacking { words::PLATFORM_BOOM_UP } else { words::PLATFORM_BOOM_DOWN };
            root.fault("boom_angle", id.message(), None);
        }
    }
    if let Some(failure) = input.faults(said) {
        return Err(failure);
    }
    let lines = tipping_lines(&s.machine, s.stance);
    let leans = leans(&s.loading.masses, &s.soft_lines(s.springs()));
    let place = |(way, turned): &(PlatformWay, Turned)| {
        on_platform(&s.loading.masses, &lines, &leans, *turned).map(|p| (*way, p))
    };
    let places: Option<Vec<_>> = WAYS.iter().map(place).collect();
    let Some(places) = places else {
        root.fault("machine", words::FIT_CANNOT_TELL.message(), None);
        return Err(failure(input, said));
    };
    let Some(result) = PlatformResult::new(&places, test) else { return Err(failure(input, said)) };
    if said.json() {
        terminal::print_json(&result);
    } else {
        print(&result, test, s.machine.slew.is_some(), said);
    }
    // What cannot be told is not reached.
    Ok(if test.is_some() && result.reached != Some(true) { Outcome::Outside } else { Outcome::Done })
}

impl PlatformResult {
    fn new(places: &[(PlatformWay, OnPlatform)], test: Option<PlatformTest>) -> Option<Self> {
        let slope = |o: Option<stability::Onset>| o.map(|o| o.tilt.tan()).filter(|s| s.is_finite());
        let turned: Vec<_> = places
            .iter()
            .map(|(way, p)| PlatformTurned {
                way: *way,
                azimuth_deg: p.azimuth.to_degrees(),
                slope: slope(p.turned),
                tips_over: p.turned.map(|o| o.over),
            })
            .collect();
        let (_, first) = places.first()?;
        let reached = test.and_then(|t| {
            let of_test = turned.iter().filter(|x| match x.way {
                PlatformWay::NoseDown => t.lengthwise,
                PlatformWay::TailDown => false,
                PlatformWay::LeftEdge | PlatformWay::RightEdge => !t.lengthwise,
            });
            let least = of_test.filter_map(|x| x.slope).fold(f64::INFINITY, f64::min);
            if least >= t.slope[1] {
                Some(true)
            } else if least < t.slope[0] {
                Some(false)
            } else {
                None
            }
        });
        Some(Self {
            turned,
            worst_slope: slope(first.worst),
            worst_azimuth_deg: first.worst_azimuth.to_degrees(),
            worst_tips_over: first.worst.map(|o| o.over),
            required_slope: test.map(|t| t.slope),
            reached,
        })
    }
}

fn print(r: &PlatformResult, test: Option<PlatformTest>, turns: bool, said: Said) {
    let w = said.wording();
    let say = |m: &Message| terminal::paragraph(&w.render(m), "", "  ");
    let slope = |s: f64| w.worked(Quantity::new(s, Dimension::Slope));
    for turned in &r.turned {
        let way = match turned.way {
            PlatformWay::NoseDown => words::PLATFORM_NOSE_DOWN,
            PlatformWay::TailDown => words::PLATFORM_TAIL_DOWN,
            PlatformWay::LeftEdge => words::PLATFORM_LEFT_EDGE,
            PlatformWay::RightEdge => words::PLATFORM_RIGHT_EDGE,
        };
        match (turned.slope, turned.tips_over) {
            (Some(s), Some(over)) => {
                say(&words::PLATFORM_TIPS.with("turned", way).with("slope", slope(s)).with("side", side(over)));
            }
            _ => say(&words::PLATFORM_NEVER.with("turned", way)),
        }
    }
    if let (Some(s), Some(over)) = (r.worst_slope, r.worst_tips_over) {
        let azimuth = Quantity::new(r.worst_azimuth_deg.to_radians(), Dimension::Angle);
        say(&words::PLATFORM_WORST.with("slope", slope(s)).with("azimuth", azimuth).with("side", side(over)));
    }
    if turns {
        say(&words::RESERVE_AHEAD_ONLY.message());
    }
    if let Some(t) = test {
        let id = match r.reached {
            Some(true) => words::PLATFORM_MORE,
            Some(false) => words::PLATFORM_LESS,
            None => words::PLATFORM_BETWEEN,
        };
        let required = |s: f64| Quantity::new(s, Dimension::Slope);
        let number = i64::from(t.number);
        say(&id.with("number", number).with("low", required(t.slope[0])).with("high", required(t.slope[1])));
        say(&words::PLATFORM_NOTE.with("standard", PLATFORM_STANDARD));
    }
}
