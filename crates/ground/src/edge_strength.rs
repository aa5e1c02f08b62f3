//! Which strength of the soil counts beside an edge, and until when.
//!
//! Undrained strength holds an open face for a while and is lost as the clay takes up water: after rain, and after
//! the time that somebody stated. Then, and where nobody stated a time, it may only take away: the face is solved with
//! the drained strength and with the undrained one as it was stated, an upper bound that has only become less, and
//! the worse counts. Where no drained strength is known nothing can be told.

use crate::edge_text as text;
use crate::input_fault::InputFaults;
use crate::slope_section::{PoreWater, SlopeLayer};
use crate::{GroundState, Layer, Profile, Strength};
use quantity::Dimension;

/// A layer with both strengths, as far as they are known.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct EdgeLayer {
    /// Depth of its underside below the crest, m; the last goes on.
    pub bottom: f64,
    /// Unit weight, N/m³.
    pub unit_weight: f64,
    /// Drained: `c′` Pa and `φ′` rad.
    pub drained: Option<[f64; 2]>,
    /// Undrained: `c_u` Pa, as it was stated. Sand has none.
    pub undrained: Option<f64>,
}

/// Layers as an edge asks for them: drained strength as it counts in the profile's state, undrained as it was stated.
/// What the state takes of that is for [`Exposure::in_state`].
pub fn edge_layers(profile: &Profile) -> Vec<EdgeLayer> {
    let one = |layer: &Layer| {
        let drained = layer.stated.counted(profile.state).find_map(|strength| match strength {
            Strength::Drained { cohesion, friction } => Some([cohesion, friction]),
            Strength::Undrained { .. } => None,
        });
        EdgeLayer { bottom: layer.bottom(), unit_weight: layer.unit_weight, drained, undrained: layer.stated.undrained }
    };
    profile.layers.iter().map(one).collect()
}

/// How long the face has stood, and what befell it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Exposure {
    /// Hours since it was cut.
    pub open_for: f64,
    /// Hours for which a named person lets undrained strength count; none where nobody did.
    pub undrained_for: Option<f64>,
    /// Rain, thaw or standing water since it was cut.
    pub wetted: bool,
}

/// Which strength counts.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Drainage {
    /// Undrained where a layer has such a strength.
    Undrained,
    /// Drained everywhere.
    Drained,
}

impl Exposure {
    /// The same beside soil in that state: whatever has changed since its strength was stated is as rain.
    #[must_use]
    pub fn in_state(self, state: GroundState) -> Self {
        Self { wetted: self.wetted || state != GroundState::AsStated, ..self }
    }

    /// Which strengths are solved, the one that counts first; the worse of their answers holds.
    pub fn solved(&self, layers: &[EdgeLayer]) -> Vec<Drainage> {
        match self.drainage() {
            Drainage::Undrained => vec![Drainage::Undrained],
            Drainage::Drained if layers.iter().any(|l| l.undrained.is_some()) => {
                vec![Drainage::Drained, Drainage::Undrained]
            }
            Drainage::Drained => vec![Drainage::Drained],
        }
    }

    /// Which strength counts now.
    pub fn drainage(&self) -> Drainage {
        let lasts = self.undrained_for.is_some_and(|hours| self.open_for <= hours);
        if lasts && !self.wetted { Drainage::Undrained } else { Drainage::Drained }
    }

    /// Hours for which undrained strength still counts; none where it does not.
    pub fn left(&self) -> Option<f64> {
        (self.drainage() == Drainage::Undrained).then(|| self.undrained_for.unwrap_or(0.0) - self.open_for)
    }

    /// Takes everything that is wrong.
    pub(crate) fn look(&self, faults: &mut InputFaults) {
        faults.range(text::NAME_HOURS, self.open_for, Dimension::Number, [0.0, 1e6]);
        if let Some(hours) = self.undrained_for {
            faults.range(text::NAME_HOURS, hours, Dimension::Number, [0.0, 720.0]);
        }
    }
}

/// The layers as slip calculations take them; none where a layer lacks the strength that counts.
pub fn layers_of(layers: &[EdgeLayer], drainage: Drainage) -> Option<Vec<SlopeLayer>> {
    layers
        .iter()
        .map(|l| {
            let undrained = l.undrained.filter(|_| drainage == Drainage::Undrained).map(|c| [c, 0.0]);
            let [cohesion, friction] = undrained.or(l.drained)?;
            Some(SlopeLayer { bottom: l.bottom, unit_weight: l.unit_weight, cohesion, friction })
        })
        .collect()
}

/// The water table behind an open face that stands `height` above the toe in the ground, m: level behind the crest,
/// straight down to the toe in the face.
pub fn water_behind(depth: f64, batter: f64, height: f64) -> PoreWater {
    if height <= 0.0 {
        return PoreWater::Table(vec![[0.0, -depth + height]]);
    }
    // It comes out at the toe and reaches its height one depth behind the crest (ours); a straight line.
    PoreWater::Table(vec![[-batter - 1e-6 * depth, -depth], [depth, height - depth]])
}
