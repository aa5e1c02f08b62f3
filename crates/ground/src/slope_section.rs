//! The cut through an edge that slip calculations read: geometry, layers, water, crack, loads.
//!
//! Section coordinates, m: `x` from the crest into the loaded ground, `z` up from the crest. The surface is level at
//! `z = 0` for `x ≥ 0`, the face runs to the toe at `(−batter, −depth)`, the base is level from there.

use crate::edge_text as text;
use crate::input_fault::{InputFault, InputFaults};
use quantity::Dimension;

/// Unit weight of water, N/m³.
pub const WATER: f64 = 9810.0;

/// One level layer. Undrained soil has `cohesion = c_u` and no friction.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SlopeLayer {
    /// Depth of its underside below the crest, m; the last layer goes on without end whatever stands here.
    pub bottom: f64,
    /// Unit weight `γ`, N/m³, with the water it holds.
    pub unit_weight: f64,
    /// Cohesion `c′`, or undrained shear strength `c_u`, Pa.
    pub cohesion: f64,
    /// Angle of friction `φ′`, rad; 0 for undrained.
    pub friction: f64,
}

/// Pore water pressure on a slip. Water that stands in the excavation and props its face is not credited.
#[derive(Debug, Clone, PartialEq, Default)]
pub enum PoreWater {
    /// None.
    #[default]
    Dry,
    /// A share `r_u` of the weight of the soil above.
    Ratio(f64),
    /// The water table as points `[x, z]` in section coordinates, ascending in `x`; level beyond its ends. Pressure is
    /// that of the height up to it, straight above.
    Table(Vec<[f64; 2]>),
}

/// A tension crack at the upper end of a slip. Of a slip that leaves the face higher up it is no deeper than half the
/// depth of that exit ([`Crack::before`]): a crack as deep as the slip itself would leave nothing to slide.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Crack {
    /// Depth, m.
    pub depth: f64,
    /// How deep the water stands in it, m.
    pub water: f64,
}

impl Crack {
    /// The crack of a slip that leaves the face at `exit` (m below the crest): its depth, and the water in it.
    #[must_use]
    pub fn before(self, exit: f64) -> Self {
        let depth = self.depth.min(exit / 2.0);
        Self { depth, water: (self.water - (self.depth - depth)).max(0.0) }
    }
}

/// An endless strip of pressure on the surface behind the crest.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Surcharge {
    /// Edges, distances from the crest, m.
    pub from: f64,
    /// Farther edge, m.
    pub to: f64,
    /// Pressure, Pa.
    pub pressure: f64,
}

/// The cut.
#[derive(Debug, Clone, PartialEq)]
pub struct SlopeSection {
    /// Height from toe to crest, m.
    pub depth: f64,
    /// Level distance from toe to crest, m; 0 where the face is upright.
    pub batter: f64,
    /// From the top down; at least one.
    pub layers: Vec<SlopeLayer>,
    /// Depth below the crest that no slip goes beyond, m.
    pub firm_base: Option<f64>,
    /// Pore water.
    pub water: PoreWater,
    /// Crack.
    pub crack: Crack,
}

impl SlopeSection {
    /// Everything wrong with section and loads.
    pub fn faults(&self, loads: &[Surcharge]) -> Vec<InputFault> {
        let mut out = InputFaults::default();
        out.range(text::NAME_EDGE_DEPTH, self.depth, Dimension::Length, [0.01, 60.0]);
        out.range(text::NAME_EDGE_BATTER, self.batter, Dimension::Length, [0.0, 300.0]);
        if self.layers.is_empty() {
            out.push(InputFault::Missing { what: text::NAME_LAYER });
        }
        let mut above = 0.0;
        for (i, layer) in self.layers.iter().enumerate() {
            out.unit_weight(layer.unit_weight);
            out.range(text::NAME_COHESION, layer.cohesion, Dimension::Pressure, [0.0, 1e6]);
            out.range(text::NAME_FRICTION, layer.friction, Dimension::Angle, [0.0, 50_f64.to_radians()]);
            if i + 1 < self.layers.len() {
                out.range(text::NAME_LAYER_BOTTOM, layer.bottom, Dimension::Length, [0.0, 200.0]);
                out.order([text::NAME_LAYER_TOP, text::NAME_LAYER_BOTTOM], [above, layer.bottom], false);
                above = layer.bottom;
            }
        }
        if let Some(base) = self.firm_base {
            out.range(text::NAME_FIRM_BASE, base, Dimension::Length, [0.01, 500.0]);
            out.order([text::NAME_EDGE_DEPTH, text::NAME_FIRM_BASE], [self.depth, base], true);
        }
        out.range(text::NAME_CRACK, self.crack.depth, Dimension::Length, [0.0, 30.0]);
        out.order([text::NAME_CRACK, text::NAME_HALF_DEPTH], [self.crack.depth, self.depth / 2.0], true);
        out.range(text::NAME_CRACK_WATER, self.crack.water, Dimension::Length, [0.0, 30.0]);
        out.order([text::NAME_CRACK_WATER, text::NAME_CRACK], [self.crack.water, self.crack.depth], true);
        match &self.water {
            PoreWater::Dry => {}
            PoreWater::Ratio(r) => out.range(text::NAME_PORE_RATIO, *r, Dimension::Number, [0.0, 0.9]),
            PoreWater::Table(points) => {
                if points.is_empty() {
                    out.push(InputFault::Missing { what: text::NAME_WATER_TABLE });
                }
                for p in points {
                    out.range(text::NAME_WATER_TABLE, p[0], Dimension::Length, [-1e3, 1e3]);
                    out.range(text::NAME_WATER_TABLE, p[1], Dimension::Length, [-500.0, 0.0]);
                    // Water above the ground: over the face, or standing in the excavation.
                    let over = p[1] - self.surface(p[0]);
                    if over > 1e-9 && p[0] < 0.0 {
                        out.push(InputFault::Order {
                            lesser: text::NAME_WATER_TABLE,
                            greater: text::NAME_GROUND_SURFACE,
                        });
                    }
                }
                for pair in points.windows(2) {
                    out.order([text::NAME_WATER_TABLE, text::NAME_WATER_TABLE], [pair[0][0], pair[1][0]], false);
                }
            }
        }
        for load in loads {
            out.range(text::NAME_LOAD_PLACE, load.from, Dimension::Length, [0.0, 500.0]);
            out.range(text::NAME_LOAD_PLACE, load.to, Dimension::Length, [0.0, 500.0]);
            out.order([text::NAME_LOAD_NEAR, text::NAME_LOAD_FAR], [load.from, load.to], false);
            out.range(text::NAME_LOAD_PRESSURE, load.pressure, Dimension::Pressure, [0.0, 5e6]);
        }
        out.done().err().unwrap_or_default()
    }

    /// Height of the ground at `x`, m: level behind the crest and before the toe.
    pub fn surface(&self, x: f64) -> f64 {
        if x >= 0.0 {
            0.0
        } else if x <= -self.batter {
            -self.depth
        } else {
            self.depth * x / self.batter
        }
    }

    /// Index of the layer that holds the height `z`.
    pub(crate) fn layer_at(&self, z: f64) -> usize {
        let last = self.layers.len().saturating_sub(1);
        self.layers[..last].iter().position(|l| -z < l.bottom).unwrap_or(last)
    }

    /// Undersides of all layers but the last, as heights.
    pub(crate) fn boundaries(&self) -> impl Iterator<Item = f64> + '_ {
        self.layers[..self.layers.len().saturating_sub(1)].iter().map(|l| -l.bottom)
    }
}

impl PoreWater {
    /// Height of the water table at `x`, if there is one.
    pub(crate) fn table_at(&self, x: f64) -> Option<f64> {
        let Self::Table(points) = self else { return None };
        let after = points.iter().position(|p| p[0] >= x);
        match after {
            None => points.last().map(|p| p[1]),
            Some(0) => points.first().map(|p| p[1]),
            Some(i) => {
                let (a, b) = (points[i - 1], points[i]);
                Some(a[1] + (b[1] - a[1]) * (x - a[0]) / (b[0] - a[0]))
            }
        }
    }
}
