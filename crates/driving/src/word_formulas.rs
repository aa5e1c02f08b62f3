//! The formulas of the words' families. Lengths in radii; start at the origin along x.

use crate::reeds_shepp::{Bend, Word};
use core::f64::consts::{FRAC_PI_2, PI};
use geometry::wrapped;

/// Round-off of an angle that is exactly 0 may fall below it; a piece that short is none.
const NOTHING: f64 = 1e-9;

/// What a formula is asked: where the end is, and sine and cosine of its heading.
#[derive(Clone, Copy)]
struct End {
    x: f64,
    y: f64,
    phi: f64,
    sin: f64,
    cos: f64,
}

impl End {
    /// The end as the formulas see it under time flip and reflection.
    fn under(self, flip: bool, mirror: bool) -> Self {
        let x = if flip { -self.x } else { self.x };
        let y = if mirror { -self.y } else { self.y };
        let turned = flip != mirror;
        let (phi, sin) = if turned { (-self.phi, -self.sin) } else { (self.phi, self.sin) };
        Self { x, y, phi, sin, ..self }
    }
    /// The end of the word driven from its end.
    fn backward(self) -> Self {
        let x = self.x * self.cos + self.y * self.sin;
        let y = self.x * self.sin - self.y * self.cos;
        Self { x, y, ..self }
    }
    /// Middle of the last turn to the left, seen from that of the first: `(x − sin φ, y − 1 + cos φ)`.
    fn same(self) -> (f64, f64) {
        (self.x - self.sin, self.y - 1.0 + self.cos)
    }
    /// Middle of the last turn to the right, seen from that of the first to the left:
    /// `(x + sin φ, y − 1 − cos φ)`.
    fn other(self) -> (f64, f64) {
        (self.x + self.sin, self.y - 1.0 - self.cos)
    }
}

/// Hands every word that may lead to the end to `take`: first a length below which it cannot be, then
/// what works it out (`None`: it does not lead there).
pub(crate) fn each(end: [f64; 3], take: &mut impl FnMut(f64, &dyn Fn() -> Option<Word>)) {
    let [x, y, phi] = end;
    let (sin, cos) = libm::sincos(phi);
    let forward = End { x, y, phi, sin, cos };
    let backward = forward.backward();
    for (flip, mirror) in [(false, false), (true, false), (false, true), (true, true)] {
        let e = forward.under(flip, mirror);
        let mut one = |back: bool, bound: f64, f: &dyn Fn() -> Option<Word>| {
            if bound.is_finite() {
                take(bound, &|| f().map(|w| w.under(flip, mirror, back)));
            }
        };
        let (same, other) = (e.same(), e.other());
        one(false, length(same), &|| left_straight_left(e, same));
        one(false, straight_between(other, 4.0), &|| left_straight_right(e, other));
        one(false, turns(same), &|| left_right_left(e, same));
        one(false, 0.0, &|| four_turns_outer(e, other));
        one(false, 0.0, &|| four_turns_inner(e, other));
        one(false, FRAC_PI_2 + straight_between(same, 4.0) - 2.0, &|| left_right_straight_left(e, same));
        one(false, FRAC_PI_2 + length(other) - 2.0, &|| left_right_straight_right(e, other));
        one(false, PI + straight_between(other, 4.0) - 4.0, &|| two_turns_straight_two_turns(e, other));
        let b = backward.under(flip, mirror);
        let (same, other) = (b.same(), b.other());
        one(true, turns(same), &|| left_right_left(b, same));
        one(true, FRAC_PI_2 + straight_between(same, 4.0) - 2.0, &|| left_right_straight_left(b, same));
        one(true, FRAC_PI_2 + length(other) - 2.0, &|| left_right_straight_right(b, other));
    }
}

fn length(v: (f64, f64)) -> f64 {
    (v.0 * v.0 + v.1 * v.1).sqrt()
}

/// `√(d² − within)`; infinite where there is none.
fn straight_between(v: (f64, f64), within: f64) -> f64 {
    let left = v.0 * v.0 + v.1 * v.1 - within;
    if left >= 0.0 { left.sqrt() } else { f64::INFINITY }
}

/// The middle turn of three is at least the chord between the outer ones' middles, over 2.
fn turns(v: (f64, f64)) -> f64 {
    let d = length(v);
    if d <= 4.0 { d * 0.5 } else { f64::INFINITY }
}

fn angle(v: (f64, f64)) -> f64 {
    libm::atan2(v.1, v.0)
}

fn ahead(t: f64) -> bool {
    t >= -NOTHING
}

fn astern(t: f64) -> bool {
    t <= NOTHING
}

use Bend::{Left as L, Right as R, Straight as S};

/// 8.1, L⁺S⁺L⁺.
fn left_straight_left(e: End, same: (f64, f64)) -> Option<Word> {
    let (u, t) = (length(same), angle(same));
    let v = wrapped(e.phi - t);
    (ahead(t) && ahead(v)).then(|| Word::of(&[(L, t), (S, u), (L, v)]))
}

/// 8.2, L⁺S⁺R⁺.
fn left_straight_right(e: End, other: (f64, f64)) -> Option<Word> {
    let u = straight_between(other, 4.0);
    let t = wrapped(angle(other) + libm::atan2(2.0, u));
    let v = wrapped(t - e.phi);
    (ahead(t) && ahead(v)).then(|| Word::of(&[(L, t), (S, u), (R, v)]))
}

/// 8.3 and 8.4, L⁺R⁻L⁺ and L⁺R⁻L⁻: the last turn either way.
fn left_right_left(e: End, same: (f64, f64)) -> Option<Word> {
    let u = -2.0 * libm::asin((length(same) * 0.25).min(1.0));
    let t = wrapped(angle(same) + 0.5 * u + PI);
    let v = wrapped(e.phi - t + u);
    (ahead(t) && astern(u)).then(|| Word::of(&[(L, t), (R, u), (L, v)]))
}

/// First and last turn of four, whose middle ones are `u` and `v`: formulas below 8.6.
fn first_and_last(u: f64, v: f64, other: (f64, f64), phi: f64) -> (f64, f64) {
    let (xi, eta) = other;
    let delta = wrapped(u - v);
    let (su, cu) = libm::sincos(u);
    let (sd, cd) = libm::sincos(delta);
    let a = su - sd;
    let b = cu - cd - 1.0;
    let t1 = libm::atan2(eta * a - xi * b, xi * a + eta * b);
    let t2 = 2.0 * (cd - libm::cos(v) - cu) + 3.0;
    let tau = if t2 < 0.0 { wrapped(t1 + PI) } else { wrapped(t1) };
    (tau, wrapped(tau - u + v - phi))
}

/// 8.7, L⁺R⁺ᵤL⁻ᵤR⁻.
fn four_turns_outer(e: End, other: (f64, f64)) -> Option<Word> {
    let rho = 0.25 * (2.0 + length(other));
    if rho > 1.0 {
        return None;
    }
    let u = libm::acos(rho);
    let (t, v) = first_and_last(u, -u, other, e.phi);
    (ahead(t) && astern(v)).then(|| Word::of(&[(L, t), (R, u), (L, -u), (R, v)]))
}

/// 8.8, L⁺R⁻ᵤL⁻ᵤR⁺.
fn four_turns_inner(e: End, other: (f64, f64)) -> Option<Word> {
    let rho = (20.0 - other.0 * other.0 - other.1 * other.1) / 16.0;
    if !(0.0..=1.0).contains(&rho) {
        return None;
    }
    let u = -libm::acos(rho);
    let (t, v) = first_and_last(u, u, other, e.phi);
    (ahead(t) && ahead(v)).then(|| Word::of(&[(L, t), (R, u), (L, u), (R, v)]))
}

/// 8.9, L⁺R⁻(π/2)S⁻L⁻.
fn left_right_straight_left(e: End, same: (f64, f64)) -> Option<Word> {
    let r = straight_between(same, 4.0);
    let u = 2.0 - r;
    let t = wrapped(angle(same) + libm::atan2(r, -2.0));
    let v = wrapped(e.phi - FRAC_PI_2 - t);
    (ahead(t) && astern(u) && astern(v)).then(|| Word::of(&[(L, t), (R, -FRAC_PI_2), (S, u), (L, v)]))
}

/// 8.10, L⁺R⁻(π/2)S⁻R⁻.
fn left_right_straight_right(e: End, other: (f64, f64)) -> Option<Word> {
    let u = 2.0 - length(other);
    let t = angle((-other.1, other.0));
    let v = wrapped(t + FRAC_PI_2 - e.phi);
    (ahead(t) && astern(u) && astern(v)).then(|| Word::of(&[(L, t), (R, -FRAC_PI_2), (S, u), (R, v)]))
}

/// 8.11, L⁺R⁻(π/2)S⁻L⁻(π/2)R⁺.
fn two_turns_straight_two_turns(e: End, other: (f64, f64)) -> Option<Word> {
    let (xi, eta) = other;
    let u = 4.0 - straight_between(other, 4.0);
    let t = wrapped(libm::atan2((4.0 - u) * xi - 2.0 * eta, -2.0 * xi + (u - 4.0) * eta));
    let v = wrapped(t - e.phi);
    (astern(u) && ahead(t) && ahead(v)).then(|| Word::of(&[(L, t), (R, -FRAC_PI_2), (S, u), (L, -FRAC_PI_2), (R, v)]))
}
