//! The working of driving: how hard, the pull that a machine feels, what its tyres give, kerb, rut and stop.

use crate::tip_energy::curve;
use crate::{Acceleration, LineOnSprings, Loading, Moving, SUDDEN, Sudden, TripSpeed, text, tilt_reserve};
use evidence::{Reading, Silent, Source, Step, Trace};
use quantity::{Dimension, Quantity, STANDARD_GRAVITY as G};

fn number(v: f64) -> Quantity {
    Quantity::number(v)
}
fn angle(v: f64) -> Quantity {
    Quantity::new(v, Dimension::Angle)
}
fn speed(v: f64) -> Quantity {
    Quantity::new(v, Dimension::Speed)
}
fn energy(joules: f64) -> Quantity {
    // A joule is a newton metre.
    Quantity::new(joules, Dimension::Moment)
}

/// `a = v²/R` over gravity.
pub fn turning_step(at: f64, radius: f64, trace: &mut impl Trace) {
    trace.step(|| Step {
        title: text::STEP_TURNING.message(),
        formula: "a_y/g = v² / (g · R)".into(),
        values: vec![
            ("v".into(), speed(at)),
            ("R".into(), Quantity::new(radius, Dimension::Length)),
            ("g".into(), number(G)),
        ],
        result: ("a_y/g".into(), number(at * at / (G * radius))),
        source: Source::Mechanics,
    });
}

/// What is counted of an acceleration `a`, as it may begin suddenly, and the pull that the machine then feels.
pub fn moving_steps(loading: &Loading, a: Acceleration, trace: &mut impl Trace) {
    let size = libm::hypot(a.ahead, a.left);
    if size > 0.0 {
        trace.step(|| Step {
            title: text::STEP_SUDDEN.message(),
            formula: "a_s/g = 4/3 · a/g".into(),
            values: vec![("a/g".into(), number(size / G))],
            result: ("a_s/g".into(), number(SUDDEN * size / G)),
            source: Source::CommonPractice,
        });
    }
    trace.step(|| {
        let a = a.times(SUDDEN);
        let Moving { heavier, .. } = crate::moving(loading, a);
        Step {
            title: text::STEP_APPARENT.message(),
            formula: "g′/g = |ĝ − a_s/g|,  ĝ′ = (ĝ − a_s/g) / |ĝ − a_s/g|".into(),
            values: vec![
                ("ĝ_x".into(), number(loading.gravity.x)),
                ("ĝ_y".into(), number(loading.gravity.y)),
                ("ĝ_z".into(), number(loading.gravity.z)),
                ("a_s,x/g".into(), number(a.ahead / G)),
                ("a_s,y/g".into(), number(a.left / G)),
            ],
            result: ("g′/g".into(), number(heavier)),
            source: Source::Mechanics,
        }
    });
}

impl LineOnSprings {
    /// Working of [`LineOnSprings::tilt`]: that on rigid contacts, then what the contacts give.
    pub fn tilt_steps(&self, loading: &Loading, trace: &mut impl Trace) {
        let rigid = tilt_reserve(loading, &self.rigid, trace);
        trace.step(|| {
            let ([first, second], lean) = self.given(loading);
            Step {
                title: text::STEP_TILT_SOFT.message(),
                formula: "δ_s = min(δ, δ(P_i + s_i · n · cos δ) − 1.15 · φ · cos(δ − φ))".into(),
                values: vec![
                    ("δ".into(), angle(rigid)),
                    ("s_1".into(), Quantity::new(first, Dimension::Length)),
                    ("s_2".into(), Quantity::new(second, Dimension::Length)),
                    ("φ".into(), angle(lean)),
                ],
                result: ("δ_s".into(), angle(self.tilt(loading))),
                source: Source::Mechanics,
            }
        });
    }
}

/// Energy to tip over a line on contacts that give, and the speed that a kerb may stop at once.
pub fn trip_steps(loading: &Loading, soft: &LineOnSprings, trip: TripSpeed, trace: &mut impl Trace) {
    energy_step(loading, soft, trace);
    trace.step(|| Step {
        title: text::STEP_TRIP.message(),
        formula: "v = √(2 E / m)".into(),
        values: vec![
            ("E".into(), energy(soft.energy_to_tip(loading))),
            ("m".into(), Quantity::new(loading.masses.total(), Dimension::Mass)),
        ],
        result: ("v".into(), speed(trip.energy)),
        source: Source::Mechanics,
    });
}

/// What a drop leaves over a line: by twice the static change, and by energy.
pub fn drop_steps(loading: &Loading, soft: &LineOnSprings, drop: f64, left: &Sudden, trace: &mut impl Trace) {
    energy_step(loading, soft, trace);
    trace.step(|| Step {
        title: text::STEP_DROP.message(),
        formula: "δ_2 = δ_s(ĝ turned by 2 · ψ(h))".into(),
        values: vec![
            ("h".into(), Quantity::new(drop, Dimension::Length)),
            ("δ_s(ĝ)".into(), angle(soft.tilt(loading))),
        ],
        result: ("δ_2".into(), angle(left.tilt)),
        source: Source::Mechanics,
    });
    trace.step(|| Step {
        title: text::STEP_DROP_ENERGY.message(),
        formula: "E_2 = E − W · Δh".into(),
        values: vec![("E".into(), energy(soft.energy_to_tip(loading)))],
        result: ("E_2".into(), energy(left.energy)),
        source: Source::Mechanics,
    });
}

fn energy_step(loading: &Loading, soft: &LineOnSprings, trace: &mut impl Trace) {
    trace.step(|| {
        let c = curve(loading, &soft.rigid);
        Step {
            title: text::STEP_ENERGY.message(),
            formula: "E = A · (cos α* − cos α_s) − M_w · (α_s − α*),  sin α_s = sin(asin(p · sin α) − λ) / p".into(),
            values: vec![
                ("A".into(), energy(c.amplitude)),
                ("α".into(), angle(c.alpha)),
                ("α*".into(), angle(c.balance)),
                ("p".into(), number(c.amplitude / (G * crate::tipping::arm(&loading.masses, &soft.rigid).1.length()))),
                ("λ".into(), angle(tilt_reserve(loading, &soft.rigid, &mut Silent) - soft.tilt(loading))),
                ("M_w".into(), energy(c.wind)),
            ],
            result: ("E".into(), energy(soft.energy_to_tip(loading))),
            source: Source::Mechanics,
        }
    });
}

/// `d = v t + v²/(2 g (f + G))`, as [`crate::stopping_distance`].
pub fn stopping_step(at: f64, reaction: f64, friction: f64, grade: f64, trace: &mut impl Trace) {
    trace.step(|| Step {
        title: text::STEP_STOPPING.message(),
        formula: "d = v · t + v² / (2 · g · (f + G))".into(),
        values: vec![
            ("v".into(), speed(at)),
            ("t/s".into(), number(reaction)),
            ("g".into(), number(G)),
            ("f".into(), number(friction)),
            ("G".into(), number(grade)),
        ],
        result: ("d".into(), Quantity::new(crate::stopping_distance(at, reaction, friction, grade), Dimension::Length)),
        source: Source::Published { citation: "AASHTO, stopping sight distance".into(), read: Reading::SecondHand },
    });
}
