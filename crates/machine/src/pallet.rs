//! A pallet with what is stacked on it: heights, centres, what reaches over.
//!
//! Frame of the load: x forward from the rearmost face of base and layers, y left of the base's
//! middle (the forks go in about that), z up from the base's underside; m.

use crate::load_part::LoadPart;
use evidence::Ranged;
use geometry::DVec3;
use quantity::kilograms;

/// Overhang below which layer and base count as flush, m: half a centimetre (ours).
pub const FLUSH: f64 = 0.005;

/// A pallet as built up.
#[derive(Debug, Clone)]
pub struct Pallet {
    /// Base: mass, and its size (depth, width, height), m. The centre of its part is not used.
    pub base: LoadPart,
    /// Size of the base: depth, width, height, m.
    pub base_size: DVec3,
    /// Layers from the base upward.
    pub layers: Vec<Layer>,
    /// Film, bands, boards: spread evenly over the space above the base.
    pub wrap: Option<LoadPart>,
    /// Share of the base's side by which layers may reach over it.
    pub overhang: f64,
}

/// Layers of one kind on each other.
#[derive(Debug, Clone)]
pub struct Layer {
    /// Name and mass of all of them; the centre of this part is not used.
    pub part: LoadPart,
    /// Size of one: depth, width, height, m.
    pub size: DVec3,
    /// How many.
    pub count: u32,
    /// Middle ahead of the base's middle, m.
    pub ahead: f64,
    /// Middle left of the base's middle, m.
    pub left: f64,
}

/// A layer that reaches over the base.
#[derive(Debug, Clone, PartialEq)]
pub struct Overhang {
    /// Name of the layer.
    pub layer: String,
    /// How far it reaches beyond the base, m.
    pub by: f64,
    /// How far it may, m.
    pub allowed: f64,
    /// True where the layer's own middle is not over the base: nothing but the wrap holds it.
    pub unsupported: bool,
}

/// A pallet stacked.
#[derive(Debug, Clone)]
pub struct Stack {
    /// Base, layers and wrap with their centres.
    pub parts: Vec<LoadPart>,
    /// Depth, width, height of the whole, m. The width is twice the farther side from the middle.
    pub size: DVec3,
    /// Width of the base: what stands on the forks, m.
    pub base_width: f64,
    /// Layers that reach over the base by more than they may.
    pub overhangs: Vec<Overhang>,
}

impl Pallet {
    /// Stacks base, layers and wrap (geometry; the centre of each is its middle).
    pub fn stack(&self) -> Stack {
        let base = self.base_size;
        // From the base's middle: rearmost and foremost face, farthest side.
        let (mut rear, mut front, mut side, mut top) = (-base.x / 2.0, base.x / 2.0, base.y / 2.0, base.z);
        let mut placed = vec![(self.base.clone(), DVec3::new(0.0, 0.0, base.z / 2.0))];
        let mut overhangs = Vec::new();
        for layer in &self.layers {
            let height = layer.size.z * f64::from(layer.count);
            placed.push((layer.part.clone(), DVec3::new(layer.ahead, layer.left, top + height / 2.0)));
            rear = rear.min(layer.ahead - layer.size.x / 2.0);
            front = front.max(layer.ahead + layer.size.x / 2.0);
            side = side.max(layer.left.abs() + layer.size.y / 2.0);
            top += height;
            overhangs.extend(self.overhang_of(layer));
        }
        if let Some(wrap) = &self.wrap {
            let middle = DVec3::new(f64::midpoint(rear, front), 0.0, f64::midpoint(base.z, top));
            placed.push((wrap.clone(), middle));
        }
        let parts = placed.into_iter().map(|(part, at)| LoadPart { centre: at - DVec3::X * rear, ..part }).collect();
        Stack { parts, size: DVec3::new(front - rear, 2.0 * side, top), base_width: base.y, overhangs }
    }

    /// What of a layer reaches over the base by more than it may.
    fn overhang_of(&self, layer: &Layer) -> Option<Overhang> {
        let along = layer.ahead.abs() + (layer.size.x - self.base_size.x) / 2.0;
        let across = layer.left.abs() + (layer.size.y - self.base_size.y) / 2.0;
        let past = |by: f64, side: f64| by - (self.overhang * side).max(FLUSH);
        let (by, side) = if past(along, self.base_size.x) >= past(across, self.base_size.y) {
            (along, self.base_size.x)
        } else {
            (across, self.base_size.y)
        };
        let unsupported = layer.ahead.abs() > self.base_size.x / 2.0 || layer.left.abs() > self.base_size.y / 2.0;
        (unsupported || past(by, side) > 1e-9).then(|| Overhang {
            layer: layer.part.name.clone(),
            by,
            allowed: self.overhang * side,
            unsupported,
        })
    }
}

impl LoadPart {
    /// A part by name and mass, to be placed by a [`Pallet`].
    pub fn unplaced(name: impl Into<String>, mass_kg: Ranged) -> Self {
        Self { name: name.into(), mass_kg, ..Self::point(kilograms(mass_kg.nominal), DVec3::ZERO) }
    }
}
