//! Elastic statics of simple and continuous beams, exact: three-moment equation, then each stretch between
//! loads and supports as a polynomial. Bernoulli beams, small deflections, supports that do not sink.

use crate::beam_member::Part;
use crate::beam_piece::Piece;
use crate::landing_range::Ranges;
use crate::text;
use evidence::Faults;
use quantity::Dimension;

/// A stretch of beam between two supports, or beyond the last one.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Span {
    /// Length, m.
    pub length: f64,
    /// Bending stiffness `EI`, N·m².
    pub stiffness: f64,
}

/// What is at an end of a beam.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum End {
    /// Rests on its last support, free to turn.
    Simple,
    /// Held against turning at its last support.
    Clamped,
    /// Reaches beyond its last support.
    Overhang(Span),
}

/// A load on a beam. Positions from the beam's left tip, m; forces down positive.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum BeamLoad {
    /// At one point.
    Point {
        /// Where, m.
        at: f64,
        /// How much, N.
        force: f64,
    },
    /// Spread evenly over a length.
    Strip {
        /// Where it begins, m.
        from: f64,
        /// Where it ends, m.
        to: f64,
        /// Force per length, N/m.
        intensity: f64,
    },
}

impl BeamLoad {
    /// Its whole force, N.
    pub fn force(self) -> f64 {
        match self {
            Self::Point { force, .. } => force,
            Self::Strip { from, to, intensity } => intensity * (to - from),
        }
    }
}

/// A beam of any number of spans, each of constant stiffness.
#[derive(Debug, Clone, PartialEq)]
pub struct Beam {
    left: End,
    spans: Vec<Span>,
    right: End,
}

/// What a support gives.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Reaction {
    /// Where, m from the left tip.
    pub at: f64,
    /// Force up, N; below zero the support would have to hold the beam down.
    pub force: f64,
    /// Moment of a clamped end, N·m: the beam's own moment there (sagging positive); 0 elsewhere.
    pub moment: f64,
}

/// A value and where along the beam it stands.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct At {
    /// The value.
    pub value: f64,
    /// Where, m from the left tip.
    pub at: f64,
}

/// A beam under its loads.
#[derive(Debug, Clone, PartialEq)]
pub struct Solved {
    /// Supports from left to right.
    pub reactions: Vec<Reaction>,
    pub(crate) pieces: Vec<Piece>,
}

impl Beam {
    /// A beam.
    ///
    /// # Errors
    /// Lengths outside 1 mm to 100 m, stiffness outside 1 to 1e12 N·m², and a beam that would turn over: no
    /// span, and not one end clamped with the other reaching out.
    pub fn new(left: End, spans: Vec<Span>, right: End) -> Result<Self, Faults> {
        let mut ranges = Ranges::default();
        let named = |i: usize| format!("spans[{i}]");
        let all = spans.iter().enumerate().map(|(i, s)| (named(i), *s));
        let ends = [("left", left), ("right", right)].into_iter().filter_map(|(name, end)| match end {
            End::Overhang(s) => Some((name.to_owned(), s)),
            End::Simple | End::Clamped => None,
        });
        for (name, s) in all.chain(ends) {
            ranges.within(&format!("{name}.length"), s.length, Dimension::Length, 0.001, 100.0);
            ranges.within(&format!("{name}.stiffness"), s.stiffness, Dimension::Number, 1.0, 1e12);
        }
        let stands = matches!((left, right), (End::Clamped, End::Overhang(_)) | (End::Overhang(_), End::Clamped));
        if spans.is_empty() && !stands {
            ranges.wrong("landing::beam", "spans", text::LANDING_BEAM_TURNS_OVER.message());
        }
        ranges.done(Self { left, spans, right })
    }

    /// `count` equal spans on simple supports.
    pub fn equal(count: usize, span: Span) -> Result<Self, Faults> {
        Self::new(End::Simple, vec![span; count], End::Simple)
    }

    /// Whole length, m.
    pub fn length(&self) -> f64 {
        self.members().map(|s| s.length).sum()
    }

    /// The spans between supports.
    pub fn spans(&self) -> &[Span] {
        &self.spans
    }

    /// Stretches that reach beyond the supports, left and right.
    pub fn overhangs(&self) -> [Option<Span>; 2] {
        [self.left, self.right].map(|end| if let End::Overhang(s) = end { Some(s) } else { None })
    }

    /// One span on two supports that nothing reaches beyond: it hogs nowhere and lifts nowhere under loads down.
    pub fn is_simple(&self) -> bool {
        self.spans.len() == 1 && self.left == End::Simple && self.right == End::Simple
    }

    /// Positions of the supports, m from the left tip.
    pub fn supports(&self) -> Vec<f64> {
        let first = self.overhangs()[0].map_or(0.0, |s| s.length);
        let later = self.spans.iter().scan(first, |x, s| {
            *x += s.length;
            Some(*x)
        });
        std::iter::once(first).chain(later).collect()
    }

    fn members(&self) -> impl Iterator<Item = Span> {
        let [left, right] = self.overhangs();
        left.into_iter().chain(self.spans.iter().copied()).chain(right)
    }

    /// The beam under `loads`.
    ///
    /// # Errors
    /// Every load that is off the beam, turned about, or not a number.
    pub fn solve(&self, loads: &[BeamLoad]) -> Result<Solved, Faults> {
        let mut ranges = Ranges::default();
        let length = self.length();
        for (i, load) in loads.iter().enumerate() {
            let key = |name: &str| format!("loads[{i}].{name}");
            match *load {
                BeamLoad::Point { at, force } => {
                    ranges.within(&key("at"), at, Dimension::Length, 0.0, length);
                    ranges.within(&key("force"), force, Dimension::Force, -1e9, 1e9);
                }
                BeamLoad::Strip { from, to, intensity } => {
                    ranges.within(&key("from"), from, Dimension::Length, 0.0, length);
                    ranges.within(&key("to"), to, Dimension::Length, 0.0, length);
                    ranges.within(&key("intensity"), intensity, Dimension::Stiffness, -1e9, 1e9);
                    ranges.ordered(&key("to"), from, to);
                }
            }
        }
        ranges.done(()).map(|()| self.solved(loads))
    }

    /// [`Beam::solve`] for loads known to lie on the beam.
    pub(crate) fn solved(&self, loads: &[BeamLoad]) -> Solved {
        let supports = self.supports();
        let [left, right] = self.overhangs();
        let last = supports.len() - 1;
        let held = |(s, x): (&Span, &f64)| Part::cut(*s, *x, [false, false], loads);
        let parts: Vec<Part> = self.spans.iter().zip(&supports).map(held).collect();
        let left = left.map(|s| Part::cut(s, 0.0, [true, false], loads));
        let right = right.map(|s| Part::cut(s, supports[last], [false, true], loads));

        // Moments over the supports, sagging positive.
        let mut known = vec![None; supports.len()];
        let hangs = |part: &Option<Part>, from_right: bool| {
            part.as_ref().map(|p| -p.moment_about(if from_right { p.length } else { 0.0 }))
        };
        if !matches!(self.right, End::Clamped) {
            known[last] = Some(hangs(&right, false).unwrap_or(0.0));
        }
        if !matches!(self.left, End::Clamped) {
            known[0] = Some(hangs(&left, true).unwrap_or(0.0));
        }
        let moments = support_moments(&parts, &known);

        let mut pieces = Vec::new();
        let mut slopes = Vec::new();
        let mut steps = vec![0.0; supports.len()];
        for (i, p) in parts.iter().enumerate() {
            let (a, b) = (moments[i], moments[i + 1]);
            let shear = p.simple_reaction() + (b - a) / p.length;
            let slope = (p.turn_left() + p.length * (a / 3.0 + b / 6.0)) / p.stiffness;
            let end = p.lay(shear, a, slope, 0.0, &mut pieces);
            slopes.push((slope, end.slope));
            steps[i] += shear;
            steps[i + 1] -= end.shear;
        }
        if let Some(p) = &left {
            // Laid once from the tip with no slope, to see what slope the tip must have.
            let mut flat = Vec::new();
            let end = p.lay(0.0, 0.0, 0.0, 0.0, &mut flat);
            let tip = slopes.first().map_or(0.0, |s| s.0) - end.slope;
            let mut laid = Vec::new();
            p.lay(0.0, 0.0, tip, -tip * p.length - end.sag, &mut laid);
            steps[0] -= end.shear;
            laid.append(&mut pieces);
            pieces = laid;
        }
        if let Some(p) = &right {
            let slope = slopes.last().map_or(0.0, |s| s.1);
            p.lay(p.force(), moments[last], slope, 0.0, &mut pieces);
            steps[last] += p.force();
        }
        for load in loads {
            if let BeamLoad::Point { at, force } = *load
                && let Some(i) = supports.iter().position(|x| *x == at)
            {
                steps[i] += force;
            }
        }
        let clamp = |i: usize| match (i == 0, i == last) {
            (true, _) if matches!(self.left, End::Clamped) => moments[0],
            (_, true) if matches!(self.right, End::Clamped) => moments[last],
            _ => 0.0,
        };
        let reaction = |(i, (at, force)): (usize, (f64, f64))| Reaction { at, force, moment: clamp(i) };
        Solved { reactions: supports.into_iter().zip(steps).enumerate().map(reaction).collect(), pieces }
    }
}

/// Moments over the supports by the three-moment equation; `known` ones are taken over. The matrix is
/// tridiagonal and dominated by its diagonal, so that elimination without exchange is stable.
fn support_moments(parts: &[Part], known: &[Option<f64>]) -> Vec<f64> {
    let n = known.len();
    let (mut below, mut diagonal, mut above, mut right) = (vec![0.0; n], vec![1.0; n], vec![0.0; n], vec![0.0; n]);
    for i in 0..n {
        if let Some(m) = known[i] {
            right[i] = m;
            continue;
        }
        let (l, r) = (i.checked_sub(1).and_then(|k| parts.get(k)), parts.get(i));
        let soft = |p: Option<&Part>| p.map_or(0.0, |p| p.length / p.stiffness);
        below[i] = soft(l) / 6.0;
        above[i] = soft(r) / 6.0;
        diagonal[i] = (soft(l) + soft(r)) / 3.0;
        right[i] = -(l.map_or(0.0, |p| p.turn_right() / p.stiffness) + r.map_or(0.0, |p| p.turn_left() / p.stiffness));
    }
    for i in 1..n {
        let f = below[i] / diagonal[i - 1];
        diagonal[i] -= f * above[i - 1];
        right[i] -= f * right[i - 1];
    }
    let mut m = vec![0.0; n];
    for i in (0..n).rev() {
        let next = if i + 1 < n { above[i] * m[i + 1] } else { 0.0 };
        m[i] = (right[i] - next) / diagonal[i];
    }
    m
}
