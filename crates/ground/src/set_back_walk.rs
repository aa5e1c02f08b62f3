//! The walk inward to the nearest place at which wheels may stand beside an edge.
//!
//! A span of distances is passed by one look at the strip that covers the load wherever it stands in the span: where load
//! that helps is not counted, less load and narrower strips hold at least as well, so that no dip hides between two
//! looks. A span that fails is halved, down to [`PRECISION`] (of cuts deeper than 3 m a thousandth of the whole walk):
//! so short a span is passed by its nearer end.

use crate::set_back::{PRECISION, SetBackGoverns};
use crate::slip_search::{self, REACH};
use crate::slope_section::{SlopeSection, Surcharge};
use crate::wedge;

/// Where the walk begins, m from the crest.
pub(crate) fn far(section: &SlopeSection) -> f64 {
    REACH * section.depth + 1.0
}

/// Strips that cover every place of `strips` from `near` to `far` from the crest, with their full pressure.
pub(crate) fn spread(strips: &[Surcharge], near: f64, far: f64) -> Vec<Surcharge> {
    strips.iter().map(|s| Surcharge { from: s.from + near, to: s.to + far, pressure: s.pressure }).collect()
}

/// Walks inward until the factor falls short; the distance on the safe side, and what fell short.
pub(crate) fn nearest(section: &SlopeSection, required: f64, strips: &[Surcharge]) -> (Option<f64>, SetBackGoverns) {
    let far = far(section);
    let finest = PRECISION.max(far / 1000.0);
    let look = |near: f64, far: f64| factor_without_help(section, &spread(strips, near, far), required);
    let (factor, short) = look(far, far);
    if factor.is_nan() || factor < required {
        return (None, short);
    }
    let (mut safe, mut span, mut again) = (far, far / 8.0, false);
    while safe > 0.0 {
        let near = (safe - span).max(0.0);
        let fine = span <= finest;
        let (factor, short) = look(near, if fine { near } else { safe });
        if factor >= required {
            safe = near;
            // One pass may be the other half of what failed just before; two ask for more.
            if again {
                span *= 2.0;
            }
            again = !again;
        } else if fine {
            return (Some(safe), short);
        } else {
            (span, again) = ((span / 2.0).max(finest), false);
        }
    }
    (Some(0.0), SetBackGoverns::Circle)
}

/// Lower factor of wedge and circle where load that helps to hold is left out; below `required` any such factor, not the
/// least. Of a plane such load never decides: all of it lies on one slope, and where it helps, the wedge without load,
/// which was looked at before, holds less.
fn factor_without_help(section: &SlopeSection, loads: &[Surcharge], required: f64) -> (f64, SetBackGoverns) {
    let plane = wedge::worst_of_sound(section, loads).factor;
    if plane < required {
        return (plane, SetBackGoverns::Wedge);
    }
    let circle = slip_search::least_without_help(section, loads, required);
    if circle.is_nan() || plane.is_nan() {
        (f64::NAN, SetBackGoverns::Circle)
    } else {
        (plane.min(circle), SetBackGoverns::Circle)
    }
}
