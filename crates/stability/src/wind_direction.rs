//! The wind's worst direction for a tipping line. Closed form.
//!
//! With `L_f = u × (Σ F_i r_i − P Σ F_i)` over the faces seen along the machine and `L_s` over those
//! seen across it, wind that pushes along `(cos φ, sin φ, 0)` overturns by
//!
//! `M(φ) = −(|cos φ| L_f + |sin φ| L_s) · (cos φ, sin φ, 0)`.
//!
//! In each quadrant that is a quadratic form `A c² + B cs + C s²` of `(|cos φ|, |sin φ|)`, which with
//! the double angle is `(A + C)/2 + (A − C)/2 · cos 2φ + B/2 · sin 2φ`: its greatest and least value are
//! at a quadrant's ends or `(A + C)/2 ± ½√((A − C)² + B²)`, where that direction lies in the quadrant.
//! The ends alone (wind square to the machine) do not suffice. Opposite winds differ by the sign only,
//! so two quadrants tell all.

use crate::TippingLine;
use crate::wind::WindLoad;
use geometry::{DVec2, DVec3};

/// A direction of wind and what it does.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WorstWind {
    /// Where the wind pushes to, rad: 0 ahead, π/2 to the left. Machine frame.
    pub towards: f64,
    /// Its overturning moment about the line, N·m.
    pub overturning: f64,
}

/// `A c² + B cs + C s²` for `c`, `s` ≥ 0, `c² + s²` = 1.
#[derive(Clone, Copy)]
struct Form {
    a: f64,
    b: f64,
    c: f64,
}

impl Form {
    /// Greatest size over the quadrant; not a number if any coefficient is none.
    fn greatest(self) -> f64 {
        let Self { a, b, c } = self;
        let ends = if a.abs() >= c.abs() { a.abs() } else { c.abs() };
        let middle = f64::midpoint(a, c);
        let swing = 0.5 * ((a - c) * (a - c) + b * b).sqrt();
        // The greatest value lies inside for B > 0, the least for B < 0.
        let inside = if b >= 0.0 { (middle + swing).abs() } else { (middle - swing).abs() };
        // A comparison with what is no number takes it.
        if inside <= ends { ends } else { inside }
    }

    /// Signed value and (c, s) where the size is greatest.
    fn greatest_at(self) -> (f64, DVec2) {
        let Self { a, b, c } = self;
        let double = libm::atan2(b, a - c);
        let inside = if b >= 0.0 { 0.5 * double } else { 0.5 * (double + core::f64::consts::PI) };
        let (sin, cos) = libm::sincos(inside);
        let at = |v: DVec2| (a * v.x * v.x + b * v.x * v.y + c * v.y * v.y, v);
        [at(DVec2::X), at(DVec2::Y), at(DVec2::new(cos, sin))]
            .into_iter()
            .max_by(|p, q| p.0.abs().total_cmp(&q.0.abs()))
            .unwrap_or((f64::NAN, DVec2::X))
    }
}

impl WindLoad {
    /// `L_f` and `L_s` of a line, N·m.
    pub(crate) fn levers(&self, line: &TippingLine) -> [DVec3; 2] {
        [(self.front_moment, self.front), (self.side_moment, self.side)]
            // What holds the machine along its length holds against the wind too.
            .map(|(moment, force)| line.along.cross(moment - line.point * force) + DVec3::X * (force * line.held))
    }

    /// The forms for wind that pushes ahead and left, and ahead and right; overturning is positive.
    fn forms(&self, line: &TippingLine) -> [Form; 2] {
        let [f, s] = self.levers(line);
        [Form { a: -f.x, b: -f.y - s.x, c: -s.y }, Form { a: -f.x, b: f.y - s.x, c: s.y }]
    }

    /// Greatest overturning moment about a line over all horizontal wind directions, N·m; not a number
    /// where a force or place is none.
    pub fn overturning(&self, line: &TippingLine) -> f64 {
        let [left, right] = self.forms(line).map(Form::greatest);
        if right <= left { left } else { right }
    }

    /// Overturning moment (N·m, negative: it holds) about a line of wind that pushes towards `towards`
    /// (rad, 0 ahead, π/2 left).
    pub fn overturning_towards(&self, line: &TippingLine, towards: f64) -> f64 {
        let (sin, cos) = libm::sincos(towards);
        let [left, right] = self.forms(line);
        let form = if sin * cos >= 0.0 { left } else { right };
        let (x, y) = (cos.abs(), sin.abs());
        let size = form.a * x * x + form.b * x * y + form.c * y * y;
        // The forms are for wind that pushes ahead; the opposite wind has the opposite moment.
        let ahead = if cos == 0.0 { sin > 0.0 } else { cos > 0.0 };
        if ahead { size } else { -size }
    }

    /// The direction that [`WindLoad::overturning`] is of.
    pub fn worst_direction(&self, line: &TippingLine) -> WorstWind {
        let [left, right] = self.forms(line).map(Form::greatest_at);
        let (value, at) =
            if right.0.abs() > left.0.abs() { (right.0, DVec2::new(right.1.x, -right.1.y)) } else { left };
        let at = if value < 0.0 { -at } else { at };
        WorstWind { towards: libm::atan2(at.y, at.x), overturning: value.abs() }
    }
}
