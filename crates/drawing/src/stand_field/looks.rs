//! How each kind of ground looks in the picture and in the key: told apart by hatching, supported by a tint.

use crate::hatch::hatch_rings;
use crate::labels::Rect;
use crate::style::Ink;
use crate::svg::{Pen, Px, Svg};
use evidence::TextId;
use planning::{FieldKind, FieldState, Reason};

/// A kind of ground.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum FieldLook {
    Go,
    Condition,
    NotYet,
    CannotTell,
    Refused(Reason),
}

/// Hatching: degrees, spacing in px, dash.
type Family = (f64, f64, &'static str);

/// An outline smaller than this has a thin edge only, px.
const SPECK: f64 = 16.0;

/// Rows of dots: nobody knows what is there.
const UNKNOWN: (Ink, &[Family]) = (Ink::Soft, &[(0.0, 8.0, "1.6 6.4")]);

impl FieldLook {
    /// `None`: outside of what was looked at.
    pub(crate) fn of(kind: &FieldKind) -> Option<Self> {
        Some(match kind.state {
            FieldState::Outside => return None,
            FieldState::NotYet => Self::NotYet,
            FieldState::Go => Self::Go,
            FieldState::Condition => Self::Condition,
            FieldState::CannotTell => Self::CannotTell,
            FieldState::NoGo => Self::Refused(kind.by.unwrap_or(Reason::Other)),
        })
    }

    /// Its word in the picture.
    pub(crate) fn name(self) -> TextId {
        match self {
            Self::Go => FieldState::Go.name(),
            Self::Condition => FieldState::Condition.name(),
            Self::NotYet => FieldState::NotYet.name(),
            Self::CannotTell => FieldState::CannotTell.name(),
            Self::Refused(reason) => reason.name(),
        }
    }

    /// True where a stand would do.
    pub(crate) fn passes(self) -> bool {
        matches!(self, Self::Go | Self::Condition)
    }

    /// True where nothing is dangerous: it is only the wrong place.
    pub(crate) fn elsewhere(self) -> bool {
        matches!(self, Self::Refused(Reason::Approach | Reason::Reach | Reason::Everywhere))
    }

    fn fill(self) -> Ink {
        match self {
            Self::Go => Ink::Passes,
            Self::Condition => Ink::OnCondition,
            Self::NotYet | Self::CannotTell => Ink::Sheet,
            Self::Refused(_) if self.elsewhere() => Ink::Sheet,
            Self::Refused(_) => Ink::Refused,
        }
    }

    /// Ink of its hatching, and the families of lines.
    fn hatching(self) -> (Ink, &'static [Family]) {
        match self {
            Self::Go => (Ink::Main, &[]),
            Self::Condition => (Ink::Main, &[(45.0, 10.0, "1.6 8")]),
            Self::NotYet => (Ink::Faint, &[(90.0, 9.0, "2 7")]),
            Self::CannotTell => UNKNOWN,
            Self::Refused(reason) => match reason {
                Reason::Survey => UNKNOWN,
                Reason::Approach => (Ink::Faint, &[(45.0, 15.0, "")]),
                Reason::Reach => (Ink::Faint, &[(-45.0, 15.0, "")]),
                Reason::Everywhere => (Ink::Faint, &[(45.0, 15.0, ""), (-45.0, 15.0, "")]),
                Reason::Level => (Ink::Main, &[(0.0, 5.0, "")]),
                Reason::Chart => (Ink::Main, &[(-45.0, 5.0, "")]),
                Reason::Load => (Ink::Main, &[(-45.0, 10.0, "")]),
                Reason::LoadFactor => (Ink::Main, &[(45.0, 5.0, "")]),
                Reason::Tilt => (Ink::Main, &[(45.0, 10.0, "")]),
                Reason::Line => (Ink::Danger, &[(45.0, 6.0, ""), (-45.0, 6.0, "")]),
                Reason::People => (Ink::Danger, &[(45.0, 12.0, ""), (-45.0, 12.0, "")]),
                Reason::Obstacles => (Ink::Main, &[(0.0, 7.0, ""), (90.0, 7.0, "")]),
                Reason::Ground => (Ink::Main, &[(90.0, 5.0, "")]),
                Reason::Settlement => (Ink::Main, &[(90.0, 10.0, "")]),
                Reason::Rutting => (Ink::Main, &[(90.0, 5.0, "5 3")]),
                Reason::Edges => (Ink::Danger, &[(90.0, 6.0, ""), (45.0, 6.0, "")]),
                Reason::Buried => (Ink::Main, &[(0.0, 5.0, "6 3")]),
                Reason::Other => (Ink::Main, &[(45.0, 6.0, "5 3")]),
            },
        }
    }
}

/// Draws outlines with a kind's look; ground where a stand would do has a strong edge.
pub(super) fn draw(svg: &mut Svg, rings: &[Vec<Px>], look: FieldLook) {
    svg.rings(rings, Some(look.fill()), None);
    let (ink, families) = look.hatching();
    for (degrees, spacing, dash) in families {
        let width = if dash.is_empty() { 0.9 } else { 1.6 };
        svg.lines(&hatch_rings(rings, *degrees, *spacing), Pen::dashed(ink, width, dash));
    }
    if !look.passes() {
        svg.rings(rings, None, Some(Pen::new(Ink::Soft, 0.7)));
        return;
    }
    // Specks would be nothing but edge.
    let speck = |ring: &&Vec<Px>| Rect::of(ring).is_none_or(|b| b.w.max(b.h) < SPECK);
    let (specks, whole): (Vec<_>, Vec<_>) = rings.iter().partition(speck);
    for (rings, width) in [(specks, 0.9), (whole, 2.2)] {
        let rings: Vec<Vec<Px>> = rings.into_iter().cloned().collect();
        if !rings.is_empty() {
            svg.rings(&rings, None, Some(Pen::new(Ink::Main, width)));
        }
    }
}

/// The swatch of a kind.
pub(crate) fn swatch(svg: &mut Svg, look: FieldLook, r: Rect) {
    let ring = vec![(r.x, r.y), (r.right(), r.y), (r.right(), r.bottom()), (r.x, r.bottom())];
    draw(svg, &[ring], look);
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Lines that are told apart without colour: faint or not, other directions, clearly other spacing, or broken otherwise.
    fn alike((a_ink, a): (Ink, &[Family]), (b_ink, b): (Ink, &[Family])) -> bool {
        (a_ink == Ink::Faint) == (b_ink == Ink::Faint)
            && a.len() == b.len()
            && a.iter().zip(b).all(|(a, b)| {
                (a.0 - b.0).abs() < 30.0 && a.1 / b.1 < 1.6 && b.1 / a.1 < 1.6 && a.2.is_empty() == b.2.is_empty()
            })
    }

    #[test]
    fn every_reason_has_lines_of_its_own() {
        let mut looks: Vec<FieldLook> = planning::ORDER.into_iter().map(FieldLook::Refused).collect();
        looks.extend([FieldLook::Go, FieldLook::Condition]);
        for (i, a) in looks.iter().enumerate() {
            for b in &looks[..i] {
                assert!(!alike(a.hatching(), b.hatching()), "{a:?} looks like {b:?}");
            }
        }
    }
}
