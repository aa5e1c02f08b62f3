//! Soil as calculations read it: `[[layer]]` tables from the surface down, `water_depth`, `state`.
//!
//! [`soil`] reads the keys of a table and notes every fault; it gives a [`Profile`] whose layers follow each other from depth
//! 0, or nothing where a fault was noted. [`SOIL_EXAMPLE`] shows the keys, for examples to end with: tables of a list come last
//! in such a file.

use ground::{GroundState, Layer, Profile, Stated, Stiffness};
use jobfile::{Bound, Reader};
use quantity::Dimension;

/// Keys of soil, commented.
pub(super) const SOIL_EXAMPLE: &str = r#"water_depth = "1.2 m"        # below the surface; left out: not known, and
#                              counted at the surface
state = "as stated"          # or "wetted", "thawing", "measured frozen"
# Layers from the surface down. State undrained_strength, or cohesion and
# friction_angle, or all; what is less counts. A named person answers for them.
[[layer]]
thickness = "0.50 m"
unit_weight = "19 kN/m³"
undrained_strength = "60 kPa"
cohesion = "3 kPa"
friction_angle = "28°"
modulus = "15 MPa"           # for settlement only
poisson = "0.4"
[[layer]]
thickness = "5 m"
unit_weight = "18 kN/m³"
undrained_strength = "45 kPa"
cohesion = "2 kPa"
friction_angle = "25°"
modulus = "8 MPa"
poisson = "0.4"
"#;

const STATES: [(&str, GroundState); 4] = [
    ("as stated", GroundState::AsStated),
    ("wetted", GroundState::Wetted),
    ("thawing", GroundState::Thawing),
    ("measured frozen", GroundState::MeasuredFrozen),
];

/// Reads the profile of a table; none where a fault was noted.
pub(super) fn soil(root: &Reader<'_>) -> Option<Profile> {
    let water = root.decision_or_none("water_depth", Dimension::Length, Bound::Any);
    let water_wrong = root.has("water_depth") && water.is_none();
    let state = root.choice("state", &STATES);
    let tables = root.tables("layer");
    let mut top = 0.0;
    let mut layers = Vec::with_capacity(tables.len());
    for table in &tables {
        let read = layer(table, top);
        table.done();
        top += read.map_or(0.0, |l| l.thickness);
        layers.push(read);
    }
    // What can be judged is, even where another layer could not be read.
    let readable = layers.iter().flatten().count() == layers.len();
    let known = layers.into_iter().flatten().collect();
    let profile = Profile { layers: known, water, state: state.unwrap_or_default() };
    let mut sound = readable && !water_wrong && state.is_some();
    if readable {
        for fault in profile.faults("").list {
            sound = false;
            let key = fault.place.key.unwrap_or_default();
            let of_layer = key.strip_prefix("layer[").and_then(|rest| rest.split_once("]."));
            match of_layer.and_then(|(i, key)| Some((tables.get(i.parse::<usize>().ok()?)?, key))) {
                Some((table, key)) => table.fault(key, fault.message, fault.hint),
                None => root.fault(&key, fault.message, fault.hint),
            }
        }
    }
    sound.then_some(profile)
}

/// One layer; none where a key is missing or cannot be read. Ranges are judged with all layers together.
fn layer(t: &Reader<'_>, top: f64) -> Option<Layer> {
    let thickness = t.decision("thickness", Dimension::Length, Bound::Any);
    let unit_weight = t.decision("unit_weight", Dimension::UnitWeight, Bound::Any);
    let mut wrong = false;
    let mut optional = |key: &str, dimension| {
        let value = t.decision_or_none(key, dimension, Bound::Any);
        wrong |= t.has(key) && value.is_none();
        value
    };
    let undrained = optional("undrained_strength", Dimension::Pressure);
    let cohesion = optional("cohesion", Dimension::Pressure);
    let friction = optional("friction_angle", Dimension::Angle);
    let modulus = optional("modulus", Dimension::Pressure);
    let poisson = optional("poisson", Dimension::Number);
    for (one, other) in
        [("cohesion", "friction_angle"), ("friction_angle", "cohesion"), ("modulus", "poisson"), ("poisson", "modulus")]
    {
        if t.has(one) && !t.has(other) {
            t.fault(one, super::text::SOIL_BOTH.with("other", other), None);
            wrong = true;
        }
    }
    let stated = Stated { undrained, drained: cohesion.zip(friction) };
    let stiffness = modulus.zip(poisson).map(|(modulus, poisson)| Stiffness { modulus, poisson });
    let layer = Layer { top, thickness: thickness?, unit_weight: unit_weight?, stated, stiffness };
    (!wrong).then_some(layer)
}
