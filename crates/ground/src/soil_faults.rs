//! Everything wrong with a stated profile, at once.

use crate::{Layer, Profile, text};
use evidence::{Faults, Place, TextId};
use quantity::{Dimension, Quantity};

/// A value with what is sensible for it. Ranges: common practice.
struct Range {
    name: TextId,
    dimension: Dimension,
    low: f64,
    high: f64,
}

const DEGREE: f64 = core::f64::consts::PI / 180.0;
const UNIT_WEIGHT: Range =
    Range { name: text::SOIL_UNIT_WEIGHT, dimension: Dimension::UnitWeight, low: 8e3, high: 27e3 };
const FRICTION: Range =
    Range { name: text::SOIL_FRICTION, dimension: Dimension::Angle, low: 5.0 * DEGREE, high: 50.0 * DEGREE };
const COHESION: Range = Range { name: text::SOIL_COHESION, dimension: Dimension::Pressure, low: 0.0, high: 200e3 };
const UNDRAINED: Range = Range { name: text::SOIL_UNDRAINED, dimension: Dimension::Pressure, low: 2e3, high: 500e3 };
const MODULUS: Range = Range { name: text::SOIL_MODULUS, dimension: Dimension::Pressure, low: 2e5, high: 2e9 };
const POISSON: Range = Range { name: text::SOIL_POISSON, dimension: Dimension::Number, low: 0.0, high: 0.5 };
const THICKNESS: Range = Range { name: text::SOIL_THICKNESS, dimension: Dimension::Length, low: 0.01, high: 100.0 };
const WATER_DEPTH: Range = Range { name: text::SOIL_WATER_DEPTH, dimension: Dimension::Length, low: 0.0, high: 200.0 };

/// Two depths this near are the same, m (ours: nobody logs a millimetre).
const SAME_DEPTH: f64 = 1e-3;

impl Profile {
    /// Every fault: unit weights in another unit, angles and strengths that no soil has, layers out of order, water
    /// above ground, thickness zero, what is no number. Places are keys such as `layer[1].unit_weight`, in `file`.
    pub fn faults(&self, file: &str) -> Faults {
        let mut faults = Faults::default();
        let place = |key: String| Place { key: Some(key), ..Place::file(file) };
        if self.layers.is_empty() {
            faults.error("ground::no-layers", place("layer".into()), text::SOIL_NO_LAYERS, None);
        }
        let mut below = 0.0;
        for (i, layer) in self.layers.iter().enumerate() {
            let last = i + 1 == self.layers.len();
            layer_faults(layer, last, &|key| place(format!("layer[{i}].{key}")), &mut faults);
            let follows = (layer.top - below).abs() <= SAME_DEPTH;
            if !follows {
                let m = |v| Quantity::new(v, Dimension::Length);
                let message = text::SOIL_OUT_OF_ORDER.with("given", m(layer.top)).with("expected", m(below));
                let hint = Some(text::SOIL_ORDER_HINT.message());
                faults.error("ground::layer-order", place(format!("layer[{i}].top")), message, hint);
            }
            below = layer.bottom();
        }
        if let Some(depth) = self.water {
            WATER_DEPTH.check(depth, place("water".into()), None, &mut faults);
        }
        faults
    }
}

fn layer_faults(layer: &Layer, last: bool, place: &impl Fn(&str) -> Place, faults: &mut Faults) {
    if !(last && layer.thickness == f64::INFINITY) {
        THICKNESS.check(layer.thickness, place("thickness"), None, faults);
    }
    // 18 (meant kN/m³) and 1800 (meant kg/m³) are the usual slips.
    let hint = (layer.unit_weight > 0.0 && layer.unit_weight < 3e3).then(|| text::SOIL_WEIGHT_HINT.message());
    UNIT_WEIGHT.check(layer.unit_weight, place("unit_weight"), hint, faults);
    if let Some(c_u) = layer.stated.undrained {
        UNDRAINED.check(c_u, place("undrained_strength"), None, faults);
    }
    if let Some((cohesion, friction)) = layer.stated.drained {
        COHESION.check(cohesion, place("cohesion"), None, faults);
        FRICTION.check(friction, place("friction"), None, faults);
    }
    if let Some(stiffness) = layer.stiffness {
        MODULUS.check(stiffness.modulus, place("modulus"), None, faults);
        POISSON.check(stiffness.poisson, place("poisson"), None, faults);
    }
}

impl Range {
    fn check(&self, given: f64, place: Place, hint: Option<evidence::Message>, faults: &mut Faults) {
        if given >= self.low && given <= self.high {
            return;
        }
        let q = |v| Quantity::new(v, self.dimension);
        let message = text::SOIL_OUT_OF_RANGE
            .with("what", self.name)
            .with("given", q(given))
            .with("low", q(self.low))
            .with("high", q(self.high));
        faults.error("ground::out-of-range", place, message, hint);
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{GroundState, Stated, Stiffness};

    fn sand() -> Layer {
        Layer {
            top: 0.0,
            thickness: 2.0,
            unit_weight: 18e3,
            stated: Stated { undrained: None, drained: Some((0.0, 32.0 * DEGREE)) },
            stiffness: None,
        }
    }

    fn keys(layers: Vec<Layer>, water: Option<f64>) -> Vec<String> {
        let faults = Profile { layers, water, state: GroundState::AsStated }.faults("ground.toml");
        assert!(faults.list.iter().all(|f| f.place.file == "ground.toml"));
        faults.list.into_iter().filter_map(|f| f.place.key).collect()
    }

    #[test]
    fn sound_ground_has_no_fault() {
        let below = Layer { top: 2.0, thickness: f64::INFINITY, ..sand() };
        assert!(keys(vec![sand(), below], Some(1.0)).is_empty());
    }

    #[test]
    fn all_faults_come_at_once_each_with_its_place() {
        let bad = Layer {
            top: 0.5,
            thickness: 0.0,
            unit_weight: 18.0,
            stated: Stated { undrained: Some(f64::NAN), drained: Some((-1e3, 60.0 * DEGREE)) },
            stiffness: Some(Stiffness { modulus: 0.0, poisson: 0.6 }),
        };
        let kilograms = Layer { top: 2.0, unit_weight: 1800.0, ..sand() };
        assert_eq!(
            keys(vec![bad, kilograms], Some(-0.2)),
            [
                "layer[0].thickness",
                "layer[0].unit_weight",
                "layer[0].undrained_strength",
                "layer[0].cohesion",
                "layer[0].friction",
                "layer[0].modulus",
                "layer[0].poisson",
                "layer[0].top",
                "layer[1].unit_weight",
                "layer[1].top",
                "water",
            ]
        );
        assert_eq!(keys(vec![], None), ["layer"]);
    }

    #[test]
    fn a_weight_in_another_unit_gets_a_hint() {
        for slip in [18.0, 1800.0] {
            let profile = Profile { layers: vec![Layer { unit_weight: slip, ..sand() }], ..Profile::default() };
            assert!(profile.faults("").list[0].hint.is_some(), "{slip}");
        }
    }
}
