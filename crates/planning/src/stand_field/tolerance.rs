//! How far off a stand may be: the largest disc about it, and the largest error of its heading, that do not turn the verdict.

use super::aim::Aim;
use super::cell_check;
use super::reason::Reason;
use crate::check::everywhere;
use crate::context::Context;
use crate::set_backs::SetBacks;
use crate::{Stand, text};
use evidence::{Message, Status, TextId};
use geometry::DVec2;
use serde::{Deserialize, Serialize};

/// How far off is tried, m and rad: beyond that nobody asks who sets out by eye.
const FAR: f64 = 0.5;
const FAR_TURNED: f64 = 10.0 * core::f64::consts::PI / 180.0;
/// Steps of the scan outward, m and rad, and how near it is told, m and rad.
const STEP: f64 = 0.1;
const STEP_TURNED: f64 = core::f64::consts::PI / 180.0;
const FINE: f64 = 0.01;
const FINE_TURNED: f64 = 0.1 * core::f64::consts::PI / 180.0;
/// Ways in which the place is off.
const WAYS: usize = 16;

/// Below these a stand is to be set out by tape, with a signaller, m and rad (common practice).
pub(super) const BY_EYE: f64 = 0.3;
pub(super) const BY_EYE_TURNED: f64 = 3.0 * core::f64::consts::PI / 180.0;

/// What a stand must bear to be found by eye, m and rad.
pub(crate) fn by_eye() -> (f64, f64) {
    (BY_EYE, BY_EYE_TURNED)
}

/// How far off a stand may be. The stand's error that the job states is counted besides, at every place tried.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub struct StandTolerance {
    /// Radius of the largest disc about the stand whose every place tried stays allowed, pointed at the landing again
    /// from there, m; no more than [`StandTolerance::TRIED`].
    pub disc_m: f64,
    /// What refuses just beyond it; `null`: nothing as far as it was tried.
    pub disc_by: Option<Reason>,
    /// Which way it refuses first.
    pub disc_way: Option<Message>,
    /// Largest error of the heading to either side, the place kept, rad; no more than [`StandTolerance::TRIED_TURNED`].
    pub turn_rad: f64,
    /// What refuses just beyond it; `null`: nothing as far as it was tried.
    pub turn_by: Option<Reason>,
}

impl StandTolerance {
    /// How far the place is tried, m.
    pub const TRIED: f64 = FAR;
    /// How far the heading is tried, rad.
    pub const TRIED_TURNED: f64 = FAR_TURNED;

    /// True where a stand may be found by eye.
    pub fn by_eye(&self) -> bool {
        // What is not a number is not enough.
        self.disc_m >= BY_EYE - 1e-9 && self.turn_rad >= BY_EYE_TURNED - 1e-9
    }
}

/// Which way of the machine an angle from straight ahead is, rad.
fn way(angle: f64) -> TextId {
    let (sin, cos) = libm::sincos(angle);
    if cos.abs() >= sin.abs() {
        if cos > 0.0 { text::WAY_AHEAD } else { text::WAY_BACK }
    } else if sin > 0.0 {
        text::WAY_LEFT
    } else {
        text::WAY_RIGHT
    }
}

/// The tolerance of the stand of a lift that is not refused.
pub(crate) fn tolerance(ctx: &Context<'_>, set_backs: &mut SetBacks) -> StandTolerance {
    let before = set_backs.asks_only_whether();
    set_backs.only_whether(true);
    let found = of_stand(ctx, set_backs);
    set_backs.only_whether(before);
    found
}

fn of_stand(ctx: &Context<'_>, set_backs: &mut SetBacks) -> StandTolerance {
    let floor = everywhere(ctx).into_iter().map(|(_, s)| s).max().unwrap_or(Status::Go);
    let aim = Aim::of(ctx);
    let Stand { at, heading } = ctx.stand;
    // As it is pointed, so it would be pointed from beside.
    let turned = heading - aim.heading(ctx, at);
    let mut refused = |stand: Stand| {
        let cell = cell_check::answer(&mut Context { stand, ..*ctx }, None, floor, set_backs);
        let refuses = cell.placed.is_none_or(|s| s > Status::Condition);
        refuses.then(|| cell.by.unwrap_or(Reason::Everywhere))
    };
    let mut disc = (FAR, None, None);
    for k in 0..WAYS {
        let angle = core::f64::consts::TAU * k as f64 / WAYS as f64;
        let (sin, cos) = libm::sincos(heading + angle);
        let out = |d: f64| {
            let there = at + DVec2::new(cos, sin) * d;
            refused(Stand { at: there, heading: aim.heading(ctx, there) + turned })
        };
        let (most, by) = first(disc.0, STEP, FINE, out);
        if by.is_some() && most < disc.0 {
            disc = (most, by, Some(way(angle).message()));
        }
    }
    let mut turn = (FAR_TURNED, None);
    for side in [1.0, -1.0] {
        let (most, by) =
            first(turn.0, STEP_TURNED, FINE_TURNED, |a| refused(Stand { at, heading: heading + side * a }));
        if by.is_some() && most < turn.0 {
            turn = (most, by);
        }
    }
    StandTolerance { disc_m: disc.0, disc_by: disc.1, disc_way: disc.2, turn_rad: turn.0, turn_by: turn.1 }
}

/// How far out nothing refuses, and what refuses just beyond, up to `far`: in even steps, then by halving the step that
/// turns.
fn first<T>(far: f64, step: f64, fine: f64, mut refused: impl FnMut(f64) -> Option<T>) -> (f64, Option<T>) {
    let steps = (far / step).ceil().clamp(1.0, 1e4) as usize;
    let mut good = 0.0;
    for k in 1..=steps {
        let out = (k as f64 * step).min(far);
        let Some(mut by) = refused(out) else {
            good = out;
            continue;
        };
        let mut bad = out;
        while bad - good > fine {
            let middle = f64::midpoint(good, bad);
            match refused(middle) {
                Some(nearer) => (bad, by) = (middle, nearer),
                None => good = middle,
            }
        }
        return (good, Some(by));
    }
    (far, None)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_first_turn_outward_is_found() {
        let at = |limit: f64| first(0.5, 0.1, 0.01, |d| (d > limit).then_some("x"));
        for limit in [0.0, 0.004, 0.05, 0.13, 0.3, 0.499] {
            let (most, by) = at(limit);
            assert!(most <= limit + 1e-12 && most > limit - 0.011 && by.is_some(), "{limit}: {most}");
        }
        assert_eq!(at(0.6), (0.5, None));
        // Refused, and allowed again farther out.
        let (most, by) = first(0.5, 0.1, 0.01, |d| (0.15..0.25).contains(&d).then_some("x"));
        assert!(by.is_some() && most < 0.15);
    }
}
