//! Weight of the ground over a buried thing.

/// Layers over a thing, from the surface down, and what goes on below them.
#[derive(Debug, Clone, PartialEq)]
pub struct Cover {
    /// Thickness (m) and unit weight (N/m³) of each layer; the last may be endless.
    pub layers: Vec<[f64; 2]>,
    /// Unit weight below them, N/m³.
    pub below: f64,
}

impl Cover {
    /// One soil all the way down.
    pub fn even(unit_weight: f64) -> Self {
        Self { layers: Vec::new(), below: unit_weight }
    }

    /// Total vertical stress at `depth` (m), Pa.
    pub fn stress(&self, depth: f64) -> f64 {
        let (mut left, mut sum) = (depth, 0.0);
        for [thickness, unit_weight] in &self.layers {
            let part = left.min(*thickness);
            sum += part * unit_weight;
            left -= part;
        }
        sum + left * self.below
    }
}
