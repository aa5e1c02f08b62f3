//! What stands on the ground: `pad_width` and `pad_length`, `pad_diameter`, or `tyre_pressure` and `tyre_width`.

use super::text as words;
use ground::Footprint;
use jobfile::{Bound, Reader};
use quantity::Dimension;

/// What stands there.
#[derive(Debug, Clone, Copy)]
pub(super) enum Stands {
    Pad(Footprint),
    Tyre { pressure: f64, width: f64 },
}

/// A rectangle, a round pad or a tyre: exactly one.
pub(super) fn stands(root: &Reader<'_>) -> Option<Stands> {
    let side = |key: &str| root.decision(key, Dimension::Length, Bound::Within(0.05, 20.0));
    let (round, tyre) = (root.has("pad_diameter"), root.has("tyre_pressure") || root.has("tyre_width"));
    let rectangle = root.has("pad_width") || root.has("pad_length");
    if usize::from(round) + usize::from(tyre) + usize::from(rectangle) > 1 {
        root.fault("pad_width", words::ONE_BASE.message(), None);
        return None;
    }
    if round {
        return Some(Stands::Pad(Footprint::Round { diameter: side("pad_diameter")? }));
    }
    if tyre {
        let pressure = root.decision("tyre_pressure", Dimension::Pressure, Bound::Within(2e4, 2e6));
        let width = root.decision("tyre_width", Dimension::Length, Bound::Within(0.05, 2.0));
        return Some(Stands::Tyre { pressure: pressure?, width: width? });
    }
    let (width, length) = (side("pad_width"), side("pad_length"));
    Some(Stands::Pad(Footprint::Rectangle { width: width?, length: length? }))
}
