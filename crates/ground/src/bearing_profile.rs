//! A pad on layered ground as it was stated: every strength that counts, every layer, the least of all.

use crate::step_values::{area, force, pressure};
use crate::two_layer::{Sides, TWO_TO_ONE, TwoLayers};
use crate::{
    Bearing, BearingCase, Footprint, Layer, Load, Profile, Refusal, Strength, least_bearing, text, weight_in_wedge,
};
use evidence::{Silent, Source, Step, Trace};

/// How deep the ground has to be known below a base, in its shorter sides: failing wedges go down about one to one and a
/// half (ours). What is stated deeper is asked too.
pub const REACH: f64 = 2.0;

/// A base on a profile.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PadOnProfile {
    /// The base.
    pub base: Footprint,
    /// Forces.
    pub load: Load,
    /// Depth of the base below the surface, m.
    pub depth: f64,
    /// Slope of the ground, rad.
    pub slope: f64,
}

/// What governs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TwoStrengths {
    /// Strength of the layer under the base that governs.
    pub upper: Strength,
    /// The lower layer that governs, from 0 at the surface, with its strength; none where the upper alone does.
    pub lower: Option<(usize, Strength)>,
    /// Pressure at failure on the effective area, Pa.
    pub ultimate: f64,
    /// Vertical force at failure, N.
    pub resistance: f64,
}

impl PadOnProfile {
    fn case(&self, profile: &Profile, layer: &Layer, strength: Strength, width: f64) -> BearingCase {
        BearingCase {
            base: self.base,
            load: self.load,
            strength,
            unit_weight: weight_in_wedge(layer.unit_weight, self.depth, profile.water_depth(), width),
            overburden: profile.overburden(self.depth, strength),
            // Soil beside a pad is dug away more easily than under it.
            credited_depth: 0.0,
            slope: self.slope,
        }
    }
}

/// Bearing of a pad on a profile without [`Profile::faults`]: for each strength that counts of the layer under it, alone and over
/// each lower layer that is stated, however deep. No depth factors; the sides of a punched layer are not credited beyond
/// [`Sides::NotStated`]. The working is that of what governs.
///
/// # Errors
/// [`Refusal::NoStrength`] where a layer has none that counts, [`Refusal::NotExplored`] where the ground is not known to
/// [`REACH`], and what [`least_bearing`] refuses.
pub fn bearing_on_profile(
    pad: &PadOnProfile,
    profile: &Profile,
    trace: &mut impl Trace,
) -> Result<TwoStrengths, Refusal> {
    let effective = pad.base.effective(&pad.load)?;
    let width = effective.full_width;
    let layers = profile.below(pad.depth, REACH * width)?;
    let first = layers.first().ok_or(Refusal::NoStrength)?;
    let mut governs: Option<TwoStrengths> = None;
    let mut take = |one: TwoStrengths| {
        if governs.is_none_or(|g| one.resistance < g.resistance) {
            governs = Some(one);
        }
    };
    for upper in first.stated.bounds(profile.state) {
        let case = pad.case(profile, first, upper, width);
        let Bearing { ultimate, resistance, .. } = least_bearing(&case, &mut Silent)?;
        take(TwoStrengths { upper, lower: None, ultimate, resistance });
        for (i, layer) in layers.iter().enumerate().skip(1) {
            let mut counts = false;
            for lower in layer.stated.bounds(profile.state) {
                counts = true;
                let two = over(pad, profile, &case, layer, lower).bearing(&mut Silent)?;
                let (ultimate, resistance) = (two.ultimate, two.resistance);
                take(TwoStrengths { upper, lower: Some((i, lower)), ultimate, resistance });
            }
            if !counts {
                return Err(Refusal::NoStrength);
            }
        }
    }
    let mut governs = governs.ok_or(Refusal::NoStrength)?;
    let case = pad.case(profile, first, governs.upper, width);
    match governs.lower {
        None => {
            least_bearing(&case, trace)?;
        }
        Some((i, lower)) => {
            over(pad, profile, &case, &layers[i], lower).bearing(trace)?;
            resistance_step("R = q_ult·A′", &governs, effective.area, trace);
            // Counted from the surface, not from the layer under the base.
            let above = profile.layers.iter().position(|l| l.top == first.top).unwrap_or(0);
            governs.lower = Some((above + i, lower));
        }
    }
    Ok(governs)
}

/// What the layers below the one under the base bear of it: asked of several bases close together, as one rectangle over
/// their outlines, whose loads meet farther down. The least of load spread and punching over every layer that is stated;
/// `None` where there is none.
///
/// # Errors
/// As [`bearing_on_profile`]; nothing has to be known to any depth.
pub fn bearing_below_top(
    pad: &PadOnProfile,
    profile: &Profile,
    trace: &mut impl Trace,
) -> Result<Option<TwoStrengths>, Refusal> {
    let effective = pad.base.effective(&pad.load)?;
    let layers = profile.below(pad.depth, 0.0)?;
    let Some((first, deeper)) = layers.split_first() else { return Err(Refusal::NoStrength) };
    let above = profile.layers.len() - deeper.len();
    let mut governs: Option<(TwoStrengths, TwoLayers)> = None;
    for (i, layer) in deeper.iter().enumerate() {
        for upper in first.stated.bounds(profile.state) {
            let case = pad.case(profile, first, upper, effective.full_width);
            for lower in layer.stated.bounds(profile.state) {
                let two = over(pad, profile, &case, layer, lower);
                let ultimate = two.lower_bearing(&mut Silent)?;
                let resistance = ultimate * effective.area;
                if governs.is_none_or(|(g, _)| resistance < g.resistance) {
                    governs =
                        Some((TwoStrengths { upper, lower: Some((above + i, lower)), ultimate, resistance }, two));
                }
            }
        }
        if layer.stated.bounds(profile.state).next().is_none() {
            return Err(Refusal::NoStrength);
        }
    }
    let Some((governs, two)) = governs else {
        return if deeper.is_empty() { Ok(None) } else { Err(Refusal::NoStrength) };
    };
    two.lower_bearing(trace)?;
    resistance_step("R = q_ult·A′,  q_ult = min(q_2, q_3)", &governs, effective.area, trace);
    Ok(Some(governs))
}

fn resistance_step(formula: &'static str, governs: &TwoStrengths, of: f64, trace: &mut impl Trace) {
    trace.step(|| Step {
        title: text::STEP_BEARING_RESISTANCE.message(),
        formula: formula.into(),
        values: vec![pressure("q_ult", governs.ultimate), area("A′", of)],
        result: force("R", governs.resistance),
        source: Source::Mechanics,
    });
}

fn over(pad: &PadOnProfile, profile: &Profile, case: &BearingCase, layer: &Layer, lower: Strength) -> TwoLayers {
    let thickness = (layer.top - pad.depth).max(0.0);
    let base_stress = profile.overburden(pad.depth, lower);
    let width = match pad.base {
        Footprint::Rectangle { width, length } => width.min(length),
        Footprint::Round { diameter } => diameter,
    };
    let below = weight_in_wedge(layer.unit_weight, layer.top, profile.water_depth(), width + thickness);
    TwoLayers {
        upper: *case,
        thickness,
        base_depth: pad.depth,
        base_stress,
        between: (profile.overburden(layer.top, lower) - base_stress).max(0.0),
        lower,
        lower_weight: below,
        spread: TWO_TO_ONE,
        sides: Sides::NotStated,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{GroundState, Stated};

    fn layer(top: f64, thickness: f64, undrained: Option<f64>, drained: Option<(f64, f64)>) -> Layer {
        Layer { top, thickness, unit_weight: 18e3, stated: Stated { undrained, drained }, stiffness: None }
    }

    const PAD: PadOnProfile = PadOnProfile {
        base: Footprint::Rectangle { width: 0.6, length: 0.6 },
        load: Load { vertical: 60e3, horizontal: [0.0; 2], eccentricity: [0.0; 2] },
        depth: 0.0,
        slope: 0.0,
    };

    fn ask(layers: Vec<Layer>, state: GroundState) -> Result<TwoStrengths, Refusal> {
        bearing_on_profile(&PAD, &Profile { layers, water: Some(3.0), state }, &mut Silent)
    }

    #[test]
    fn soft_ground_below_governs_under_a_thin_crust_and_not_under_a_thick_one() {
        let crust = |t: f64| {
            let crust = layer(0.0, t, Some(100e3), None);
            ask(vec![crust, layer(t, 10.0, Some(15e3), None)], GroundState::AsStated)
        };
        let bare = ask(vec![layer(0.0, 10.0, Some(15e3), None)], GroundState::AsStated);
        let resistance = |r: Result<TwoStrengths, Refusal>| r.map_or(f64::NAN, |b| b.resistance);
        assert!(crust(0.3).is_ok_and(|b| b.lower.is_some()));
        assert!(crust(9.0).is_ok_and(|b| b.lower.is_none()), "so deep the crust itself is the weaker");
        assert!(resistance(bare) < resistance(crust(0.3)) && resistance(crust(0.3)) < resistance(crust(0.6)));
    }

    #[test]
    fn what_is_not_known_below_gives_no_number() {
        assert_eq!(
            ask(vec![layer(0.0, 0.5, Some(100e3), None)], GroundState::AsStated),
            Err(Refusal::NotExplored { known: 0.5, needed: 1.2 })
        );
        let dark = vec![layer(0.0, 0.5, Some(100e3), None), layer(0.5, 5.0, None, None)];
        assert_eq!(ask(dark, GroundState::AsStated), Err(Refusal::NoStrength));
        let clay = || vec![layer(0.0, 5.0, Some(100e3), Some((2e3, 0.4)))];
        assert!(matches!(ask(clay(), GroundState::Wetted), Ok(b) if b.resistance > 0.0));
        assert_eq!(ask(clay(), GroundState::MeasuredFrozen), Err(Refusal::NoStrength));
    }
}
