//! Forces and the factors on them and on the ground: `permanent`, `variable`, `factors`, `factor`.

use ground::{FactorSet, Loads, Profile};
use jobfile::{Bound, Reader};
use quantity::Dimension;

/// No contact of such a machine presses with more, N.
const HEAVIEST: f64 = 5e6;

#[derive(Debug, Clone, Copy)]
enum Choice {
    One,
    Da1,
    Da2,
    Da3,
}

const SETS: [(&str, Choice); 4] =
    [("one", Choice::One), ("DA1", Choice::Da1), ("DA2", Choice::Da2), ("DA3", Choice::Da3)];

/// Forces and the sets of factors that must all hold.
pub(super) struct Safety {
    pub(super) loads: Loads,
    pub(super) sets: Vec<FactorSet>,
}

/// Reads the keys; none where a fault was noted.
pub(super) fn safety(root: &Reader<'_>) -> Option<Safety> {
    let loads = loads(root);
    let set = root.choice("factors", &SETS);
    let sets = match set {
        Some(Choice::One) => {
            let factor = root.decision("factor", Dimension::Number, Bound::Within(1.0, 10.0));
            factor.map(|f| vec![FactorSet::Global(f)])
        }
        Some(Choice::Da1) => Some(FactorSet::DA1.to_vec()),
        Some(Choice::Da2) => Some(vec![FactorSet::Da2]),
        Some(Choice::Da3) => Some(vec![FactorSet::Da3]),
        None => None,
    };
    Some(Safety { loads: loads?, sets: sets? })
}

/// Both forces; none where a fault was noted, as where both are 0.
pub(super) fn loads(root: &Reader<'_>) -> Option<Loads> {
    let [permanent, variable] =
        ["permanent", "variable"].map(|key| root.decision(key, Dimension::Force, Bound::ZeroTo(HEAVIEST)));
    let loads = Loads { permanent: permanent?, variable: variable? };
    if loads.permanent + loads.variable <= 0.0 {
        root.fault("permanent", super::text::NO_FORCE.message(), None);
        return None;
    }
    Some(loads)
}

/// The profile with design strengths.
pub(super) fn design(profile: &Profile, set: FactorSet) -> Profile {
    let mut design = profile.clone();
    for layer in &mut design.layers {
        layer.stated = set.stated(layer.stated);
    }
    design
}
