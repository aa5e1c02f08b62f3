//! How much tilt is left in carry position, for every slope that is driven; worked out once for a machine with its
//! load.

use super::bar::Over;
use super::carried::Carried;
use crate::{JobMachine, Policy};
use geometry::{DVec2, DVec3, Pose};
use machine::{Attachment, Load, SupportState};
use quantity::STANDARD_GRAVITY as G;
use stability::wind::WindLoad;
use stability::{
    LineOnSprings, LoadOnBoom, Loading, Masses, RearAxleState, SUDDEN, Springs, Stance, Support, TipsOver,
    gravity_for_slopes, tipping_lines,
};

/// Slopes of the table: this many to either side of level, rise over run.
const STEPS: usize = 40;
const STEP: f64 = 0.01;

/// Tilt left beyond what is required, over slopes along (nose up) and across (falling to the left).
#[derive(Debug, Clone)]
pub(crate) struct Steadiness {
    /// Rows along, columns across, both from the most negative; least margin, rad, and over which side.
    table: Vec<(f32, Over)>,
}

impl Steadiness {
    /// On tyres that give, rear axle free to oscillate, no wind. Counted with what is fitted or missing today, bodies that
    /// may be lighter at both their masses (all at once), the load at both ends of its mass and of its centre.
    pub(crate) fn new(
        unit: &JobMachine,
        attachment: &Attachment,
        load: Option<&Load>,
        carried: &Carried,
        side_shift: f64,
        policy: &Policy,
    ) -> Self {
        let stance = Stance::from(Support { state: SupportState::Tyres, rear: RearAxleState::Free });
        let mut machine = unit.machine.clone();
        machine.bodies.retain(|b| !unit.without.contains(&b.name));
        let mut light = machine.clone();
        for body in &mut light.bodies {
            if let Some(least) = body.least {
                body.mass = least;
            }
        }
        // What was added is no part of the plan's safety: with it and without.
        machine.bodies.extend(unit.added.iter().cloned());
        let springs = Springs::of(&machine, SupportState::Tyres);
        let lines = tipping_lines(&machine, stance).map(|l| (l, LineOnSprings::of(&machine, stance, &l, springs)));
        let mut masses = Vec::new();
        for machine in [&machine, &light] {
            let bare = Masses::standing(machine, attachment, carried.boom, stance);
            match load {
                None => masses.push(bare),
                Some(load) => masses.extend(places(load, carried, side_shift).map(|l| bare.with(l))),
            }
        }
        let table = nodes()
            .map(|slope| {
                let gravity = gravity_for_slopes(slope.x, slope.y);
                let mut least = (f32::INFINITY, Over::Front);
                for masses in &masses {
                    let loading = Loading { masses: *masses, gravity, wind: WindLoad::default() };
                    for (line, soft) in &lines {
                        let margin = (soft.tilt(&loading) - required(policy, line.over)) as f32;
                        // What is no number is the least.
                        if margin.is_nan() || margin < least.0 {
                            least = (if margin.is_nan() { f32::NEG_INFINITY } else { margin }, line.over.into());
                        }
                    }
                }
                least
            })
            .collect();
        Self { table }
    }

    /// Tilt left beyond what is required anywhere between two slopes along and two across, rad, and over which side: the
    /// least of the slopes of the table around them. Negative infinity beyond the table.
    pub(crate) fn margin(&self, along: (f64, f64), across: (f64, f64)) -> (f64, Over) {
        let (Some(rows), Some(cols)) = (around(along), around(across)) else {
            return (f64::NEG_INFINITY, Over::Side);
        };
        let cells = rows.flat_map(|r| cols.clone().map(move |c| r * (2 * STEPS + 1) + c));
        let found = cells.map(|i| self.table[i]).min_by(|a, b| a.0.total_cmp(&b.0));
        found.map_or((f64::NEG_INFINITY, Over::Side), |(m, over)| (f64::from(m), over))
    }

    /// Acceleration to one side (to the left: positive `side`) up to which enough is left, m/s²: it counts as ground that
    /// falls that much more to the other side (d'Alembert), and a third more since it may begin suddenly.
    pub(crate) fn sideways(&self, along: (f64, f64), across: (f64, f64), side: f64) -> f64 {
        let holds = |more: f64| {
            let moved = if side > 0.0 { (across.0 - more, across.1) } else { (across.0, across.1 + more) };
            self.margin(along, moved).0 >= 0.0
        };
        let most = (0..=2 * STEPS).map(|k| k as f64 * 0.5 * STEP).take_while(|more| holds(*more)).last();
        // Standing on a slope shortens gravity's part square to the ground, so that less acceleration does the same.
        let steep = along.0.abs().max(along.1.abs()) + across.0.abs().max(across.1.abs());
        most.map_or(0.0, |more| more * G / (SUDDEN * (1.0 + steep * steep).sqrt()))
    }
}

/// Slopes (along, across) of the table, row by row.
fn nodes() -> impl Iterator<Item = DVec2> {
    let slope = |k: usize| (k as f64 - STEPS as f64) * STEP;
    (0..=2 * STEPS).flat_map(move |r| (0..=2 * STEPS).map(move |c| DVec2::new(slope(r), slope(c))))
}

/// Indices of the table's slopes that hold a range; `None` beyond it, and where a number is none.
fn around(range: (f64, f64)) -> Option<std::ops::RangeInclusive<usize>> {
    let low = (range.0 / STEP).floor() + STEPS as f64;
    let high = (range.1 / STEP).ceil() + STEPS as f64;
    (low >= 0.0 && high <= 2.0 * STEPS as f64 && low <= high).then_some(low as usize..=high as usize)
}

/// Places of the load's weight in carry position, at both ends of its mass and centre.
fn places<'a>(load: &'a Load, carried: &Carried, side_shift: f64) -> impl Iterator<Item = LoadOnBoom> + 'a {
    let tool = Pose { rotation: geometry::DMat3::IDENTITY, translation: carried.tool };
    let shift = side_shift.abs();
    [load.mass_kg.low, load.mass_kg.high].into_iter().flat_map(move |mass| {
        [load.centre_ahead.low, load.centre_ahead.high].into_iter().flat_map(move |ahead| {
            [load.centre_left.low - shift, load.centre_left.high + shift]
                .into_iter()
                .map(move |left| LoadOnBoom { mass, at: tool * DVec3::new(ahead, left, load.centre_up.high) })
        })
    })
}

/// Tilt that must remain, rad; a policy that asks for nothing is none, and nothing passes it.
fn required(policy: &Policy, over: TipsOver) -> f64 {
    let slope = match over {
        TipsOver::Front | TipsOver::Rear => policy.tilt_fore_aft,
        TipsOver::Left | TipsOver::Right => policy.tilt_sideways,
    };
    if slope > 0.0 { libm::atan(slope) } else { core::f64::consts::FRAC_PI_2 }
}
