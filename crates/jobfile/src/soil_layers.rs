//! Soil as every file states it: `water`, `state`, and `[[layer]]` tables from the surface down.

use crate::limits::SITE;
use crate::plan_shape_keys::{Known, or_unknown};
use crate::quantity_value::Bound::{Any, UpTo, ZeroTo};
use crate::soil_strength::{PLATE, plate, strength};
use crate::table::Reader;
use crate::text;
use evidence::Trace;
use ground::{GroundState, Layer, Profile, Stated, Stiffness};
use quantity::Dimension as D;

const STATES: [(&str, GroundState); 4] = [
    ("as-stated", GroundState::AsStated),
    ("wetted", GroundState::Wetted),
    ("thawing", GroundState::Thawing),
    ("measured-frozen", GroundState::MeasuredFrozen),
];

/// Poisson's ratio of a soil that nobody has measured (usual; from memory).
const USUAL_POISSON: f64 = 0.3;

/// Reads `water`, `state` and every `[[layer]]` of a table, with the steps of strengths that come from tests.
///
/// SI. Layers follow each other from depth 0; the last goes on for ever where it has no thickness. Every fault of every layer
/// is noted at once; none where there is one.
pub fn soil_profile(t: &Reader<'_>, trace: &mut impl Trace) -> Option<Profile> {
    let water = or_unknown(t, "water", "water = \"1.20 m\" or water = \"unknown\"", ZeroTo(SITE));
    let state = t.optional("state").map_or(Some(GroundState::AsStated), |node| t.as_choice(node, "state", &STATES));
    let tables = t.tables("layer");
    if tables.is_empty() {
        t.fault("layer", text::SOIL_WITHOUT_LAYER, None);
        return None;
    }
    let mut top = 0.0;
    let mut known: Vec<(&Reader<'_>, Layer)> = Vec::with_capacity(tables.len());
    for (i, table) in tables.iter().enumerate() {
        if let Some(layer) = layer(table, top, i + 1 == tables.len(), trace) {
            top = layer.bottom();
            known.push((table, layer));
        }
    }
    let all_read = known.len() == tables.len();
    let profile = Profile {
        layers: known.iter().map(|(_, layer)| *layer).collect(),
        // What can be judged is, even where water or another layer could not be read.
        water: water.as_ref().ok().and_then(|depth| depth.as_ref().map(|Known(depth)| *depth)),
        state: state.unwrap_or_default(),
    };
    let faults = if known.is_empty() { evidence::Faults::default() } else { profile.faults("") };
    for fault in &faults.list {
        let key = fault.place.key.clone().unwrap_or_default();
        let of_layer = key.strip_prefix("layer[").and_then(|rest| rest.split_once("]."));
        match of_layer.and_then(|(i, key)| Some((known.get(i.parse::<usize>().ok()?)?.0, key))) {
            Some((table, key)) => table.fault(key, fault.message.clone(), fault.hint.clone()),
            None => t.fault(&key, fault.message.clone(), fault.hint.clone()),
        }
    }
    let sound = all_read && !faults.any_error() && water.is_ok() && state.is_some();
    sound.then_some(profile)
}

/// One layer; none where a key is missing or cannot be read. Ranges are judged with all layers together.
fn layer(t: &Reader<'_>, top: f64, last: bool, trace: &mut impl Trace) -> Option<Layer> {
    // The last may go on: somebody answers for what is below.
    let thickness =
        if last && !t.has("thickness") { Some(f64::INFINITY) } else { t.si("thickness", D::Length, UpTo(100.0)) };
    let unit_weight = t.si("unit_weight", D::UnitWeight, Any);
    let plate = plate(t);
    let tested = plate.as_ref().ok().copied().flatten();
    let undrained = strength(t, tested, trace);
    let mut wrong = plate.is_err();
    let mut optional = |key: &str, dimension| {
        let value = t.si_or_none(key, dimension, Any);
        wrong |= t.has(key) && value.is_none();
        value
    };
    let cohesion = optional("cohesion", D::Pressure);
    let friction = optional("friction", D::Angle);
    let modulus = optional("modulus", D::Pressure);
    let poisson = optional("poisson", D::Number);
    t.done();
    wrong |= alone(t, "cohesion", &["friction"]) | alone(t, "poisson", &["modulus", PLATE]);
    if let (Some(test), Some(thickness)) = (tested, thickness)
        && thickness > test.depth()
    {
        let depth = quantity::Quantity::new(test.depth(), D::Length);
        t.fault(PLATE, text::PLATE_TOO_SMALL.with("depth", depth), None);
        wrong = true;
    }
    let nu = poisson.unwrap_or(USUAL_POISSON);
    let modulus = match (modulus, tested) {
        (None, Some(test)) if (0.0..=0.5).contains(&nu) => match test.modulus(nu, trace) {
            Ok(range) => Some(range.low),
            Err(refusal) => {
                t.fault(PLATE, refusal.message(), None);
                return None;
            }
        },
        (stated, _) => stated,
    };
    let stated = Stated {
        undrained: undrained.ok()?.map(|range| range.low),
        // Without a cohesion there is none.
        drained: friction.map(|friction| (cohesion.unwrap_or(0.0), friction)),
    };
    let stiffness = modulus.map(|modulus| Stiffness { modulus, poisson: nu });
    let layer = Layer { top, thickness: thickness?, unit_weight: unit_weight?, stated, stiffness };
    (!wrong).then_some(layer)
}

/// True, and a fault, where a key stands without any of those that give it a meaning.
pub(crate) fn alone(t: &Reader<'_>, key: &str, beside: &[&str]) -> bool {
    let there = t.has(key) && !beside.iter().any(|other| t.has(other));
    if there {
        let message = text::COUNTS_BESIDE.with("key", key).with("other", beside.join(", "));
        t.fault(key, message, None);
    }
    there
}
