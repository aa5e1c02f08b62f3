//! Soil as somebody states it: layers from the surface down, water, and what state the ground is in.

use crate::Refusal;
use quantity::STANDARD_GRAVITY;

/// Unit weight of water, N/m³.
pub const WATER: f64 = 1000.0 * STANDARD_GRAVITY;

/// One strength, as a calculation takes it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Strength {
    /// Loaded faster than water can leave.
    Undrained {
        /// Undrained shear strength `c_u`, Pa.
        c_u: f64,
    },
    /// Water has left, or there is none.
    Drained {
        /// Cohesion `c′`, Pa.
        cohesion: f64,
        /// Angle of friction `φ′`, rad.
        friction: f64,
    },
}

/// What is stated of a soil's strength. Both may be known: then both are calculated, and the less counts.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Stated {
    /// Undrained shear strength `c_u`, Pa.
    pub undrained: Option<f64>,
    /// Cohesion `c′` (Pa) and angle of friction `φ′` (rad).
    pub drained: Option<(f64, f64)>,
}

/// The ground's state against that in which its strength was stated.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum GroundState {
    /// As it was when the strength was stated.
    #[default]
    AsStated,
    /// Rained on, flooded or long since: an undrained strength no longer holds.
    Wetted,
    /// Thawing: neither an undrained strength nor cohesion holds.
    Thawing,
    /// The strength was found in frozen ground: nothing of it counts.
    MeasuredFrozen,
}

/// Elastic stiffness of a soil.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Stiffness {
    /// Modulus of elasticity `E`, Pa.
    pub modulus: f64,
    /// Poisson's ratio `ν`, 0 to 0.5.
    pub poisson: f64,
}

/// One layer.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Layer {
    /// Depth of its top below the surface, m.
    pub top: f64,
    /// Thickness, m. The last may be infinite: then somebody answers for what is below.
    pub thickness: f64,
    /// Unit weight with the water in it, N/m³.
    pub unit_weight: f64,
    /// Strength.
    pub stated: Stated,
    /// Stiffness, where it is known.
    pub stiffness: Option<Stiffness>,
}

/// Layers from the surface down.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Profile {
    /// The layers, each beginning where the one above ends.
    pub layers: Vec<Layer>,
    /// Depth of the water table, m. Not known: counted at the surface, which is the worst.
    pub water: Option<f64>,
    /// State of the ground.
    pub state: GroundState,
}

impl Stated {
    /// What holds of it in that state: undrained and drained, each where it does.
    ///
    /// Rules: ours, the safe side. Rain and time take an undrained strength; thaw takes cohesion too, since the
    /// ice that opened the soil leaves it loose and full of water; frozen ground is as strong as its ice.
    pub fn counted(self, state: GroundState) -> impl Iterator<Item = Strength> {
        let undrained =
            self.undrained.filter(|_| state == GroundState::AsStated).map(|c_u| Strength::Undrained { c_u });
        let drained = self.drained.and_then(|(cohesion, friction)| match state {
            GroundState::AsStated | GroundState::Wetted => Some(Strength::Drained { cohesion, friction }),
            GroundState::Thawing => Some(Strength::Drained { cohesion: 0.0, friction }),
            GroundState::MeasuredFrozen => None,
        });
        undrained.into_iter().chain(drained)
    }

    /// What a bearing is asked with in that state, the least of what each gives: what holds, and beside a drained strength
    /// an undrained one that has lapsed, as an upper bound. What lapses only takes away; alone it counts for nothing.
    pub fn bounds(self, state: GroundState) -> impl Iterator<Item = Strength> {
        let lapsed = matches!(state, GroundState::Wetted | GroundState::Thawing) && self.drained.is_some();
        let bound = self.undrained.filter(|_| lapsed).map(|c_u| Strength::Undrained { c_u });
        bound.into_iter().chain(self.counted(state))
    }
}

impl Layer {
    /// Depth of its underside, m.
    pub fn bottom(&self) -> f64 {
        self.top + self.thickness
    }
}

impl Profile {
    /// Depth of the water that is counted, m.
    pub fn water_depth(&self) -> f64 {
        self.water.unwrap_or(0.0)
    }

    /// Total vertical stress at `depth` (m) under level ground, Pa. Not a number below what is known.
    pub fn total_stress(&self, depth: f64) -> f64 {
        let mut stress = 0.0;
        for layer in &self.layers {
            if depth <= layer.bottom() {
                return stress + layer.unit_weight * (depth - layer.top);
            }
            stress += layer.unit_weight * layer.thickness;
        }
        f64::NAN
    }

    /// Effective vertical stress at `depth` (m), Pa.
    pub fn effective_stress(&self, depth: f64) -> f64 {
        let stress = self.total_stress(depth) - WATER * (depth - self.water_depth()).max(0.0);
        if stress < 0.0 { 0.0 } else { stress }
    }

    /// Overburden beside a base at `depth`: total for undrained, effective for drained strength, Pa.
    pub fn overburden(&self, depth: f64, strength: Strength) -> f64 {
        match strength {
            Strength::Undrained { .. } => self.total_stress(depth),
            Strength::Drained { .. } => self.effective_stress(depth),
        }
    }

    /// Every layer stated below `depth`, where they are known to `reach` below it. What nobody stated farther down is not
    /// asked for; what somebody stated is, however deep.
    ///
    /// # Errors
    /// [`Refusal::NotExplored`] where the layers end higher.
    pub fn below(&self, depth: f64, reach: f64) -> Result<&[Layer], Refusal> {
        let needed = depth + reach;
        let known = self.layers.last().map_or(0.0, Layer::bottom);
        let enough = known >= needed;
        if !enough {
            return Err(Refusal::NotExplored { known, needed });
        }
        let first = self.layers.iter().position(|l| l.bottom() > depth).unwrap_or(0);
        Ok(&self.layers[first..])
    }
}

/// Unit weight that acts in the wedge under a base (N/m³): buoyant where water stands at the base or above,
/// the whole from 1.5 widths below it, straight between (after FHWA-SA-02-054, equation 5-10, which halves
/// instead of taking off the water's weight; read).
pub fn weight_in_wedge(unit_weight: f64, base_depth: f64, water_depth: f64, width: f64) -> f64 {
    let buoyant = (unit_weight - WATER).max(0.0);
    let share = ((water_depth - base_depth) / (1.5 * width)).clamp(0.0, 1.0);
    buoyant + share * (unit_weight - buoyant)
}

/// Water factors of FHWA-SA-02-054, equations 5-10 and 5-11 (read): `C_wγ = 0.5 + 0.5·D_w/(1.5·B + D_f)` and
/// `C_wq = 0.5 + 0.5·D_w/D_f`, each at most 1. Water at `water`, base at `depth`, both below the surface, m.
pub fn water_factors(water: f64, width: f64, depth: f64) -> (f64, f64) {
    let factor = |full: f64| if water >= full { 1.0 } else { 0.5 + 0.5 * water / full };
    (factor(1.5 * width + depth), factor(depth))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn clay(top: f64, thickness: f64) -> Layer {
        let stated = Stated { undrained: Some(40e3), drained: Some((5e3, 0.4)) };
        Layer { top, thickness, unit_weight: 19e3, stated, stiffness: None }
    }

    #[test]
    fn rain_takes_the_undrained_strength_thaw_cohesion_too_and_frost_counts_for_nothing() {
        let counted = |s| clay(0.0, 1.0).stated.counted(s).collect::<Vec<_>>();
        let drained = |cohesion| Strength::Drained { cohesion, friction: 0.4 };
        assert_eq!(counted(GroundState::AsStated), [Strength::Undrained { c_u: 40e3 }, drained(5e3)]);
        assert_eq!(counted(GroundState::Wetted), [drained(5e3)]);
        assert_eq!(counted(GroundState::Thawing), [drained(0.0)]);
        assert!(counted(GroundState::MeasuredFrozen).is_empty());
    }

    #[test]
    fn a_lapsed_strength_stays_as_a_bound_and_counts_for_nothing_alone() {
        let bounds = |s| clay(0.0, 1.0).stated.bounds(s).collect::<Vec<_>>();
        let (undrained, drained) =
            (Strength::Undrained { c_u: 40e3 }, |cohesion| Strength::Drained { cohesion, friction: 0.4 });
        assert_eq!(bounds(GroundState::AsStated), [undrained, drained(5e3)]);
        assert_eq!(bounds(GroundState::Wetted), [undrained, drained(5e3)]);
        assert_eq!(bounds(GroundState::Thawing), [undrained, drained(0.0)]);
        assert!(bounds(GroundState::MeasuredFrozen).is_empty());
        let alone = Stated { undrained: Some(40e3), drained: None };
        assert_eq!(alone.bounds(GroundState::Wetted).chain(alone.bounds(GroundState::Thawing)).count(), 0);
    }

    #[test]
    fn stresses_follow_layers_and_water() {
        let p =
            Profile { layers: vec![clay(0.0, 1.0), clay(1.0, 2.0)], water: Some(1.0), state: GroundState::AsStated };
        assert!((p.total_stress(2.0) - 38e3).abs() < 1e-9);
        assert!((p.effective_stress(2.0) - (38e3 - WATER)).abs() < 1e-9);
        assert!(p.total_stress(3.5).is_nan(), "below what is known");
        let unknown = Profile { water: None, ..p.clone() };
        assert!(unknown.effective_stress(2.0) < p.effective_stress(2.0), "water not known: at the surface");
        assert_eq!(p.below(0.0, 0.5).map(<[Layer]>::len), Ok(2), "what is stated counts below the reach too");
        assert_eq!(p.below(1.0, 1.0).map(<[Layer]>::len), Ok(1));
        assert_eq!(p.below(1.0, 3.0), Err(Refusal::NotExplored { known: 3.0, needed: 4.0 }));
    }

    #[test]
    fn water_takes_weight_from_the_wedge() {
        assert_eq!(weight_in_wedge(20e3, 1.0, 0.5, 1.0), 20e3 - WATER);
        assert_eq!(weight_in_wedge(20e3, 1.0, 2.5, 1.0), 20e3);
        let between = weight_in_wedge(20e3, 1.0, 1.75, 1.0);
        assert!((between - (20e3 - 0.5 * WATER)).abs() < 1e-9);
    }
}
