//! One member of a beam, between two supports or beyond the last one: its own simple span, laid out from a known
//! state.

use crate::beam::{BeamLoad, Span};
use crate::beam_piece::Piece;

/// One member with the loads on it, positions from its own left end.
#[derive(Debug)]
pub(crate) struct Part {
    from: f64,
    pub(crate) length: f64,
    pub(crate) stiffness: f64,
    points: Vec<(f64, f64)>,
    strips: Vec<(f64, f64, f64)>,
}

/// State of the beam at a place.
pub(crate) struct Carried {
    pub(crate) shear: f64,
    pub(crate) slope: f64,
    pub(crate) sag: f64,
}

impl Part {
    /// The part of `loads` on a member that begins at `from`. A point over a support presses on the support
    /// alone and is on no member; one at a free tip is.
    pub(crate) fn cut(span: Span, from: f64, tips: [bool; 2], loads: &[BeamLoad]) -> Self {
        let (mut points, mut strips) = (Vec::new(), Vec::new());
        for load in loads {
            match *load {
                BeamLoad::Point { at, force } => {
                    let to = from + span.length;
                    if (at > from || tips[0] && at == from) && (at < to || tips[1] && at == to) {
                        points.push((at - from, force));
                    }
                }
                BeamLoad::Strip { from: a, to: b, intensity } => {
                    let (a, b) = ((a - from).max(0.0), (b - from).min(span.length));
                    if b > a {
                        strips.push((a, b, intensity));
                    }
                }
            }
        }
        Self { from, length: span.length, stiffness: span.stiffness, points, strips }
    }

    pub(crate) fn force(&self) -> f64 {
        self.points.iter().map(|p| p.1).sum::<f64>() + self.strips.iter().map(|(a, b, w)| w * (b - a)).sum::<f64>()
    }

    /// Sum of force times distance from `x`.
    pub(crate) fn moment_about(&self, x: f64) -> f64 {
        self.points.iter().map(|(at, p)| p * (at - x).abs()).sum::<f64>()
            + self.strips.iter().map(|(a, b, w)| w * (b - a) * ((a + b) / 2.0 - x).abs()).sum::<f64>()
    }

    /// Left reaction of the member alone on simple supports.
    pub(crate) fn simple_reaction(&self) -> f64 {
        self.moment_about(self.length) / self.length
    }

    /// `EI` times the slope of the member alone at its left support: for a point, `P x b (L + b)/6L` with
    /// `b = L − x`; for a strip its integral.
    pub(crate) fn turn_left(&self) -> f64 {
        let l = self.length;
        self.turn(|x| l - x, |a, b| (l - b, l - a))
    }

    /// The same at the right support, turning the other way.
    pub(crate) fn turn_right(&self) -> f64 {
        self.turn(|x| x, |a, b| (a, b))
    }

    fn turn(&self, point: impl Fn(f64) -> f64, strip: impl Fn(f64, f64) -> (f64, f64)) -> f64 {
        let l = self.length;
        let points = self.points.iter().map(|(x, p)| {
            let x = point(*x);
            p * x * (l - x) * (l + x) / (6.0 * l)
        });
        let strips = self.strips.iter().map(|(a, b, w)| {
            let (a, b) = strip(*a, *b);
            // ∫ x (L² − x²) dx, with the difference of squares taken out.
            w * (b - a) * (b + a) * (2.0 * l * l - a * a - b * b) / (24.0 * l)
        });
        points.sum::<f64>() + strips.sum::<f64>()
    }

    /// Appends the pieces from left to right and gives the state at the right end.
    pub(crate) fn lay(&self, shear: f64, moment: f64, slope: f64, sag: f64, pieces: &mut Vec<Piece>) -> Carried {
        let mut cuts: Vec<f64> = vec![0.0, self.length];
        cuts.extend(self.points.iter().map(|p| p.0));
        cuts.extend(self.strips.iter().flat_map(|(a, b, _)| [*a, *b]));
        cuts.sort_by(f64::total_cmp);
        cuts.dedup();
        let (mut v, mut m, mut t, mut y) = (shear, moment, slope, sag);
        for pair in cuts.windows(2) {
            let (a, b) = (pair[0], pair[1]);
            v -= self.points.iter().filter(|p| p.0 == a).map(|p| p.1).sum::<f64>();
            let middle = f64::midpoint(a, b);
            let w = self.strips.iter().filter(|s| s.0 < middle && middle < s.1).map(|s| s.2).sum();
            let from = self.from + a;
            let piece = Piece {
                from,
                length: b - a,
                load: w,
                shear: v,
                moment: m,
                slope: t,
                sag: y,
                stiffness: self.stiffness,
            };
            pieces.push(piece);
            (v, m, t, y) = piece.state(b - a);
        }
        Carried { shear: v, slope: t, sag: y }
    }
}
