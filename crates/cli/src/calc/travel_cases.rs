//! The cases of `calc travel-stability`, and which of them governs.

use super::standing::{Standing, one_a_side};
use super::travel_working::{CaseWorking, workings};
use serde::{Deserialize, Serialize};
use stability::{
    Acceleration, Criterion, First, LineOnSprings, Loading, Moving, SUDDEN, SURE_BRAKING, Sliding, Sudden, TipsOver,
    Travel, TripSpeed, Turn, first_as_it_grows, friction_for_load, greatest_retardation, inertia_at_least, moving,
    rear_share, sliding, stopping_distance, tipping_lines, trip_speed_on_springs, worst_wheel_drop_on_springs,
};

/// Answer of the calculation. SI; angles in degrees, as their names say.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct TravelResult {
    /// Each case over each tipping line.
    pub(crate) cases: Vec<TravelLine>,
    /// The case that leaves least; `null`: something is no number, and nothing can be told.
    pub(crate) governs: Option<TravelLine>,
    /// Every case leaves something, and the tilt asked for where tilt counts.
    pub(crate) enough: bool,
    /// The boom is within the maker's carry position.
    pub(crate) carried: bool,
    /// A load hangs: it swings, and that is not reckoned.
    pub(crate) load_swings: bool,
    /// Speed below which nothing that stops it dead can tip it on its tyres, m/s, the least of all lines.
    pub(crate) kerb_trip_speed_m_s: f64,
    /// The same if kerb and tyres gave nothing back, m/s: not to be relied on.
    pub(crate) kerb_trip_speed_without_rebound_m_s: f64,
    /// Share of the weight on the rear axle, which steers: at rest.
    pub(crate) rear_share_at_rest: f64,
    /// The same, least of all cases.
    pub(crate) rear_share_least: f64,
    /// Distance to a stop with the brake that is sure, m; `null`: the grade pulls as much as it holds.
    pub(crate) stopping_distance_m: Option<f64>,
    /// Friction that tyres need, most of all cases.
    pub(crate) friction_needed: f64,
    /// Friction needed at the onset of tipping in that direction; `null`: it does not tip that way.
    pub(crate) friction_at_tipping: Option<f64>,
    /// What comes first as any of the cases grows: tipping if it does in one of them.
    pub(crate) first: First,
    /// It slides in that case.
    pub(crate) slides: bool,
    /// Friction that the load needs on the forks, most of all cases; `null`: none on them, or nothing
    /// presses it on.
    pub(crate) load_friction_needed: Option<f64>,
    /// The load slides off.
    pub(crate) load_slides: bool,
    /// The steps of the calculation, over the line that has least left in each case, and of the stop.
    pub(crate) working: Vec<CaseWorking>,
}

/// What a case leaves over a tipping line.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct TravelLine {
    /// What happens.
    pub(crate) case: TravelCase,
    /// Which way it would go over.
    pub(crate) over: TipsOver,
    /// Tilt that remains on its tyres, degrees, a third more of the acceleration counted as it may begin
    /// suddenly; below zero it tips. `null` for a kerb, where energy counts.
    pub(crate) tilt_deg: Option<f64>,
    /// Tilt asked for, degrees; `null` for what is sudden of itself, where the reserve counts.
    pub(crate) required_deg: Option<f64>,
    /// Share left of what there is at rest on the same ground without wind: 0 at the onset, −1 where it tips at
    /// rest. For wheels that drop: of what there is before, with wind.
    pub(crate) reserve: f64,
    /// For what is sudden: what the reserve comes from.
    pub(crate) criterion: Option<Criterion>,
}

/// What happens while driving.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub(crate) enum TravelCase {
    /// Nothing.
    AtRest,
    /// Braking.
    Braking,
    /// Starting as hard as it brakes.
    Starting,
    /// A turn to the left.
    TurningLeft,
    /// A turn to the right.
    TurningRight,
    /// Braking in a turn to the left.
    BrakingLeft,
    /// Braking in a turn to the right.
    BrakingRight,
    /// Stopped dead by a kerb or an edge.
    Kerb,
    /// One or two wheels drop.
    WheelDrop,
}

/// What the calculation asks besides the machine.
#[derive(Debug, Clone)]
pub(crate) struct Asked {
    pub(crate) travel: Travel,
    pub(crate) speed: f64,
    pub(crate) radius: Option<f64>,
    /// m/s².
    pub(crate) retardation: f64,
    pub(crate) drop: f64,
    pub(crate) wind: Option<AskedWind>,
    pub(crate) friction: f64,
    pub(crate) fork_friction: f64,
    pub(crate) along: f64,
    /// Time until the brake takes hold, s.
    pub(crate) reaction: f64,
    /// Tilts that must remain, rise over run.
    pub(crate) fore_aft: f64,
    pub(crate) sideways: f64,
}

/// A gust, with what it sees of the load.
#[derive(Debug, Clone)]
pub(crate) struct AskedWind {
    /// m/s.
    pub(crate) gust: f64,
    /// Depth, width, height (m) and shape factor of the load.
    pub(crate) load: Option<([f64; 3], f64)>,
}

impl TravelLine {
    /// Leaves nothing, or less tilt than is asked for. What is no number is short.
    pub(crate) fn short(&self) -> bool {
        let tilt = self.tilt_deg.unwrap_or(f64::INFINITY);
        let enough = self.reserve > 0.0 && self.required_deg.is_none_or(|required| tilt >= required);
        !enough
    }
}

/// Tilt that a moving machine has left over each line, on its tyres, rad.
fn tilts(s: &Standing, m: &Moving) -> [f64; 6] {
    s.soft_lines(m.springs(s.springs())).map(|line| line.tilt(&m.loading))
}

/// It goes over if the acceleration begins suddenly.
fn tips(s: &Standing, a: Acceleration) -> bool {
    !tilts(s, &moving(&s.loading, a.times(SUDDEN))).iter().all(|tilt| *tilt > 0.0)
}

/// All cases with their accelerations.
pub(super) fn motions(asked: &Asked) -> Vec<(TravelCase, Acceleration)> {
    let braking = Acceleration::braking(asked.travel, asked.retardation);
    let mut all = vec![
        (TravelCase::AtRest, Acceleration::default()),
        (TravelCase::Braking, braking),
        (TravelCase::Starting, Acceleration::starting(asked.travel, asked.retardation)),
    ];
    if let Some(radius) = asked.radius {
        let turning = |turn| Acceleration::turning(turn, asked.speed, radius);
        let (left, right) = (turning(Turn::Left), turning(Turn::Right));
        all.extend([
            (TravelCase::TurningLeft, left),
            (TravelCase::TurningRight, right),
            (TravelCase::BrakingLeft, left.and(braking)),
            (TravelCase::BrakingRight, right.and(braking)),
        ]);
    }
    all
}

/// A number that is none, or the greater.
fn most(a: f64, b: f64) -> f64 {
    if a.is_nan() || a >= b { a } else { b }
}

/// Answers all cases; `None` where something is no number.
pub(crate) fn answer(s: &Standing, asked: &Asked) -> Option<TravelResult> {
    let lines = tipping_lines(&s.machine, s.stance);
    // Wind takes from what there is without it.
    let calm = Loading { wind: stability::wind::WindLoad::NONE, ..s.loading };
    let at_rest = tilts(s, &moving(&calm, Acceleration::default()));
    let share = |left: f64, i: usize| if at_rest[i] <= 0.0 { -1.0 } else { left / at_rest[i] };
    let mut cases = Vec::new();
    let mut shares = Vec::new();
    let mut worst: Option<Sliding> = None;
    let mut tips_first = false;
    let mut load_needs = 0.0;
    for (case, a) in motions(asked) {
        let m = moving(&s.loading, a);
        let sudden = tilts(s, &moving(&s.loading, a.times(SUDDEN)));
        let left = lines.iter().enumerate().map(|(i, line)| {
            let slope = match line.over {
                TipsOver::Front | TipsOver::Rear => asked.fore_aft,
                TipsOver::Left | TipsOver::Right => asked.sideways,
            };
            TravelLine {
                case,
                over: line.over,
                tilt_deg: Some(sudden[i].to_degrees()),
                required_deg: Some(libm::atan(slope).to_degrees()),
                reserve: share(sudden[i], i),
                criterion: None,
            }
        });
        cases.extend(one_a_side(left, less_left));
        shares.push(rear_share(&m.reactions(&s.machine, s.stance)));
        let slides = sliding(&m.loading, &lines, asked.friction)?;
        let grown = first_as_it_grows(&s.loading, a, asked.friction, |_, a| tips(s, a));
        tips_first |= grown == Some(First::Tips);
        if worst.is_none_or(|w| slides.needed > w.needed) {
            worst = Some(slides);
        }
        load_needs = most(friction_for_load(m.loading.gravity, s.boom.fork_tilt), load_needs);
    }
    let trips = trips(s);
    let kerbs = lines.iter().zip(trips).map(|(line, trip)| {
        let used = asked.speed / trip.energy;
        let reserve = if trip.energy > 0.0 { 1.0 - used * used } else { -1.0 };
        let criterion = Some(Criterion::Energy);
        TravelLine { case: TravelCase::Kerb, over: line.over, tilt_deg: None, required_deg: None, reserve, criterion }
    });
    cases.extend(one_a_side(kerbs, less_left));
    if asked.drop > 0.0 {
        cases.extend(one_a_side(drops(s, asked.drop).iter().map(dropped), less_left));
    }
    let on_forks = s.load.mass > 0.0 && !s.attachment.hangs();
    // Nobody brakes harder than the machine stands and the load stays.
    let bearable = greatest_retardation(&s.loading, asked.travel, asked.retardation, |m, a| {
        let stays = friction_for_load(m.loading.gravity, s.boom.fork_tilt) <= asked.fork_friction;
        !tips(s, a) && (stays || !on_forks)
    });
    // Neither brake nor ground is counted on for more than what wet ground gives.
    let held = (bearable / quantity::STANDARD_GRAVITY).min(SURE_BRAKING).min(asked.friction);
    let grade = if asked.travel == Travel::Ahead { asked.along } else { -asked.along };
    let distance = stopping_distance(asked.speed, asked.reaction, held, grade);
    let worst = worst?;
    let known = cases.iter().all(|c| c.reserve.is_finite());
    let known = known && !distance.is_nan() && !load_needs.is_nan() && shares.iter().all(|s| s.is_finite());
    let mut result = known.then(|| TravelResult {
        governs: cases.iter().copied().min_by(|a, b| a.reserve.total_cmp(&b.reserve)),
        enough: !cases.iter().any(TravelLine::short),
        carried: s.carried(),
        load_swings: s.load.mass > 0.0 && s.attachment.hangs(),
        cases,
        kerb_trip_speed_m_s: trips.iter().map(|t| t.energy).fold(f64::INFINITY, f64::min),
        kerb_trip_speed_without_rebound_m_s: trips.iter().map(|t| t.impact).fold(f64::INFINITY, f64::min),
        rear_share_at_rest: shares.first().copied().unwrap_or(f64::NAN),
        rear_share_least: shares.iter().copied().fold(f64::INFINITY, f64::min),
        stopping_distance_m: distance.is_finite().then_some(distance),
        friction_needed: worst.needed,
        friction_at_tipping: worst.at_tipping.is_finite().then_some(worst.at_tipping),
        first: if tips_first || worst.first == First::Tips { First::Tips } else { First::Slides },
        slides: worst.slides,
        load_friction_needed: (on_forks && load_needs.is_finite()).then_some(load_needs),
        load_slides: on_forks && load_needs > asked.fork_friction,
        working: Vec::new(),
    })?;
    result.working = workings(s, asked, &result.cases, (held, grade));
    Some(result)
}

/// The one that leaves less, or is no number.
fn less_left(a: TravelLine, b: TravelLine) -> TravelLine {
    if a.reserve.is_nan() || a.reserve <= b.reserve { a } else { b }
}

/// What wheels that drop leave over each line, on its tyres.
pub(super) fn drops(s: &Standing, height: f64) -> [Sudden; 6] {
    worst_wheel_drop_on_springs(&s.machine, s.stance, &s.loading, height, s.springs())
}

fn dropped(d: &Sudden) -> TravelLine {
    TravelLine {
        case: TravelCase::WheelDrop,
        over: d.over,
        tilt_deg: Some(d.tilt.to_degrees()),
        required_deg: None,
        reserve: d.reserve,
        criterion: Some(d.criterion),
    }
}

/// Speeds at which it goes over each line when stopped dead, on its tyres.
pub(super) fn trips(s: &Standing) -> [TripSpeed; 6] {
    s.soft_lines(s.springs()).map(|line: LineOnSprings| {
        let inertia = inertia_at_least(&s.machine, &s.attachment, s.boom, s.stance, Some(s.load), &line.rigid);
        trip_speed_on_springs(&s.loading, &line, inertia)
    })
}
