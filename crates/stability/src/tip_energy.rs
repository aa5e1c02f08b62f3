//! Energy that it takes to turn a machine over a tipping line, and how fast it may hit a kerb.
//!
//! About the line the moment is `A sin(α − θ) − M_w` with `A = g·|a|·p`, `p = √(1 − (ĝ·u)²)` and
//! `sin α = ĝ·a / (|a| p)`: gravity along the line does not turn. Where the rear wheels hold the machine
//! along its length `a` has a part along `u` ([`crate::TippingLine::held`]): `A` has it without, and
//! `g (ĝ·u)(a·u)`, which stays, goes with the wind's moment. What lies under that curve up to the
//! balance at `sin α* = M_w / A` is the barrier
//!
//! `E = A (cos α* − cos α) − M_w (α − α*)` (mechanics; the wind's moment as it stands).
//!
//! On contacts that give ([`LineOnSprings::energy_to_tip`]) the far wheels come free with the body leaning
//! already. The tilt that the springs take, `λ = δ − δ_s`, is a turn about the line by `sin α_s = sin(asin(p sin α)
//! − λ) / p`, and `α_s` takes the place of `α`: never more. The work until the wheels come free is not credited.

use crate::tipping::arm;
use crate::{LineOnSprings, Loading, Masses, Stance, TippingLine, tilt_reserve};
use evidence::Silent;
use geometry::DVec3;
use machine::{Attachment, BodyKind, BoomPosition, Machine, kinematics};
use quantity::{STANDARD_GRAVITY as G, Si};

/// The moment curve about a line.
pub(crate) struct Curve {
    /// Greatest moment of weight, N·m.
    pub(crate) amplitude: f64,
    /// Angle from here to straight above the line, rad.
    pub(crate) alpha: f64,
    /// The same at the balance against the wind, rad.
    pub(crate) balance: f64,
    /// Moment of the wind, and what of the weight's stays however far it turns, N·m.
    pub(crate) wind: f64,
}

pub(crate) fn curve(loading: &Loading, line: &TippingLine) -> Curve {
    let (_, a) = arm(&loading.masses, line);
    let along = loading.gravity.dot(line.along);
    let p = (1.0 - along * along).sqrt();
    let stays = G * along * a.dot(line.along);
    let amplitude = G * (a - line.along * a.dot(line.along)).length() * p;
    let alpha = libm::asin(((G * loading.gravity.dot(a) - stays) / amplitude).clamp(-1.0, 1.0));
    let wind = loading.wind.overturning(line) - stays;
    let balance = libm::asin((wind / amplitude).clamp(-1.0, 1.0));
    Curve { amplitude, alpha, balance, wind }
}

/// Energy (J) to turn the machine over `line`; 0 where it tips already; not a number where a mass or
/// the attitude is none.
pub fn energy_to_tip(loading: &Loading, line: &TippingLine) -> f64 {
    let c = curve(loading, line);
    let energy = c.amplitude * (libm::cos(c.balance) - libm::cos(c.alpha)) - c.wind * (c.alpha - c.balance);
    if c.alpha <= c.balance { 0.0 } else { energy }
}

impl LineOnSprings {
    /// Energy (J) to turn the machine over the line on contacts that give, at least; never more than
    /// [`energy_to_tip`]. 0 where it tips already or a spring is no positive number.
    pub fn energy_to_tip(&self, loading: &Loading) -> f64 {
        let c = curve(loading, &self.rigid);
        let (_, a) = arm(&loading.masses, &self.rigid);
        let p = c.amplitude / (G * a.length());
        let soft = self.tilt(loading);
        let taken = tilt_reserve(loading, &self.rigid, &mut Silent) - soft;
        let from = libm::asin((libm::sin(libm::asin(p * libm::sin(c.alpha)) - taken) / p).clamp(-1.0, 1.0));
        let from = if from > c.alpha { c.alpha } else { from };
        let energy = c.amplitude * (libm::cos(c.balance) - libm::cos(from)) - c.wind * (from - c.balance);
        if soft <= 0.0 || from <= c.balance { 0.0 } else { energy }
    }
}

/// Moment of inertia (kg·m²) about `line` of everything that counts for it, its bodies as points:
/// `I = Σ m_i d_i²`. A lower bound: what the bodies have about their own centres is left out, which
/// is the safe side where more inertia takes up more of a blow.
pub fn inertia_at_least(
    machine: &Machine,
    attachment: &Attachment,
    boom: BoomPosition,
    stance: Stance,
    load: Option<crate::LoadOnBoom>,
    line: &TippingLine,
) -> f64 {
    let about = |m: f64, at: DVec3| m * line.along.cross(at - line.point).length_squared();
    let bodies = machine
        .bodies
        .iter()
        .filter(|b| line.with_rear_axle || b.kind != BodyKind::RearAxle)
        .map(|b| about(b.mass.si(), stance.moved(machine, b.kind, b.centre)));
    let boom = kinematics::boom_masses(&machine.boom, attachment, boom).map(|(m, at)| about(m, at));
    bodies.chain(boom).chain(load.map(|l| about(l.mass, l.at))).sum()
}

/// Speeds at which a machine that is stopped dead at a tipping line goes over it, m/s.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TripSpeed {
    /// All of its motion is spent on tipping: `v = √(2E / m)`. Below it nothing tips, whatever gives.
    pub energy: f64,
    /// The blow takes up what it can (an inelastic impact about the line): `v = √(2 I_o E) / ℓ`, with
    /// the momentum's lever `ℓ = |u × Σm(r − P)|` in the horizontal. Kerbs and tyres that spring back tip
    /// sooner, so this is not to be relied on.
    pub impact: f64,
}

/// How fast the machine may hit a kerb, a rut's edge or a post along `line` (its contacts stopped at
/// once, travelling or sliding in any horizontal direction).
///
/// The kerb's own height earns no credit: a higher stop lies nearer to the centre's height and tips
/// later. The critical sliding velocity of roll-over texts (from memory) is `impact`; tests against time
/// runs show that springy contact tips below it, never below `energy`. Not a number for what is none, and
/// for an inertia that is not positive.
pub fn trip_speed(loading: &Loading, line: &TippingLine, inertia: f64) -> TripSpeed {
    trip(energy_to_tip(loading, line), loading, line, inertia)
}

/// The same on contacts that give, never faster.
pub fn trip_speed_on_springs(loading: &Loading, line: &LineOnSprings, inertia: f64) -> TripSpeed {
    trip(line.energy_to_tip(loading), loading, &line.rigid, inertia)
}

fn trip(barrier: f64, loading: &Loading, line: &TippingLine, inertia: f64) -> TripSpeed {
    let (_, a) = arm(&loading.masses, line);
    let lever = libm::hypot(a.x, a.y);
    if inertia.is_nan() || inertia <= 0.0 {
        return TripSpeed { energy: f64::NAN, impact: f64::NAN };
    }
    TripSpeed {
        energy: (2.0 * barrier / loading.masses.total()).sqrt(),
        impact: (2.0 * inertia * barrier).sqrt() / lever,
    }
}

impl Masses {
    /// The same with a part's weight counted `times` more (a part that presses more than it weighs;
    /// less than 0: less).
    #[must_use]
    pub fn pressing(mut self, mass: f64, moment: DVec3, times: f64) -> Self {
        self.sprung += mass * times;
        self.sprung_moment += moment * times;
        self
    }
}
