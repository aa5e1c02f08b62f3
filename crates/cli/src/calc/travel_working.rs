//! The working of `calc travel-stability`, case by case.

use super::standing::Standing;
use super::travel_cases::{Asked, TravelCase, TravelLine, drops, motions, trips};
use evidence::Working;
use serde::{Deserialize, Serialize};
use stability::{
    LineOnSprings, SUDDEN, TipsOver, drop_steps, moving, moving_steps, stopping_step, trip_steps, turning_step,
};

/// Steps of a case.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct CaseWorking {
    /// The case; `null`: the stop.
    pub(crate) case: Option<TravelCase>,
    /// The line that they are of; `null`: none.
    pub(crate) over: Option<TipsOver>,
    /// The steps.
    pub(crate) working: Working,
}

/// Steps over the line with least left of each case, and of the stop that is braked with `held` of the weight
/// on `grade`.
pub(super) fn workings(
    s: &Standing,
    asked: &Asked,
    cases: &[TravelLine],
    (held, grade): (f64, f64),
) -> Vec<CaseWorking> {
    let mut all = Vec::new();
    for group in cases.chunk_by(|a, b| a.case == b.case) {
        let Some(least) = group.iter().min_by(|a, b| a.reserve.total_cmp(&b.reserve)) else { continue };
        let working = one(s, asked, least);
        all.push(CaseWorking { case: Some(least.case), over: Some(least.over), working });
    }
    let mut working = Working::default();
    stopping_step(asked.speed, asked.reaction, held, grade, &mut working);
    all.push(CaseWorking { case: None, over: None, working });
    all
}

fn one(s: &Standing, asked: &Asked, least: &TravelLine) -> Working {
    let mut working = Working::default();
    let lines = s.soft_lines(s.springs());
    let of_side = || (0..lines.len()).filter(|i| lines[*i].rigid.over == least.over);
    let motion = motions(asked).into_iter().find(|(case, _)| *case == least.case);
    if let Some((case, a)) = motion {
        let turns = !matches!(case, TravelCase::AtRest | TravelCase::Braking | TravelCase::Starting);
        if let Some(radius) = asked.radius.filter(|_| turns) {
            turning_step(asked.speed, radius, &mut working);
        }
        moving_steps(&s.loading, a, &mut working);
        let m = moving(&s.loading, a.times(SUDDEN));
        let soft = s.soft_lines(m.springs(s.springs()));
        let tilt = |i: &usize| soft[*i].tilt(&m.loading);
        if let Some(i) = of_side().min_by(|a, b| tilt(a).total_cmp(&tilt(b))) {
            soft[i].tilt_steps(&m.loading, &mut working);
        }
        return working;
    }
    let line = |i: usize| -> &LineOnSprings { &lines[i] };
    if least.case == TravelCase::Kerb {
        let trips = trips(s);
        if let Some(i) = of_side().min_by(|a, b| trips[*a].energy.total_cmp(&trips[*b].energy)) {
            trip_steps(&s.loading, line(i), trips[i], &mut working);
        }
    } else {
        let drops = drops(s, asked.drop);
        if let Some(i) = of_side().min_by(|a, b| drops[*a].reserve.total_cmp(&drops[*b].reserve)) {
            drop_steps(&s.loading, line(i), asked.drop, &drops[i], &mut working);
        }
    }
    working
}
