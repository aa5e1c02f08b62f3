//! A pallet with what is stacked on it: heights, centres, what reaches over.
//!
//! Frame of the load: x forward from the rearmost face of base and layers, y left of the base's
//! middle (the forks go in about that), z up from the base's underside; m.

use crate::load_part::{LoadPart, Water};
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

/// A layer that reaches over the base, or over the layer below it.
#[derive(Debug, Clone, PartialEq)]
pub struct Overhang {
    /// Name of the layer.
    pub layer: String,
    /// The layer that it lies on and reaches over; `None`: the base.
    pub over: Option<String>,
    /// How far it reaches beyond that, m.
    pub by: f64,
    /// How far it may, m.
    pub allowed: f64,
    /// True where the layer's own middle is not over it: nothing but the wrap holds it.
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
    /// Layers that reach over the base, or over the layer below, by more than they may.
    pub overhangs: Vec<Overhang>,
}

/// What a layer lies over, seen from above.
struct Under<'a> {
    /// Name of the layer; `None`: the base.
    name: Option<&'a str>,
    size: DVec3,
    ahead: f64,
    left: f64,
}

impl Pallet {
    /// Stacks base, layers and wrap (geometry; the centre of each is its middle).
    pub fn stack(&self) -> Stack {
        let base = self.base_size;
        // From the base's middle: rearmost and foremost face, farthest side.
        let (mut rear, mut front, mut side, mut top) = (-base.x / 2.0, base.x / 2.0, base.y / 2.0, base.z);
        let mut placed = vec![(self.base.clone(), DVec3::new(0.0, 0.0, base.z / 2.0))];
        let mut overhangs = Vec::new();
        let mut below: Option<&Layer> = None;
        for layer in &self.layers {
            let height = layer.size.z * f64::from(layer.count);
            placed.push((layer.part.clone(), DVec3::new(layer.ahead, layer.left, top + height / 2.0)));
            rear = rear.min(layer.ahead - layer.size.x / 2.0);
            front = front.max(layer.ahead + layer.size.x / 2.0);
            side = side.max(layer.left.abs() + layer.size.y / 2.0);
            top += height;
            overhangs.extend(self.overhang_of(layer, &Under { name: None, size: base, ahead: 0.0, left: 0.0 }));
            if let Some(Layer { part, size, ahead, left, .. }) = below {
                let under = Under { name: Some(&part.name), size: *size, ahead: *ahead, left: *left };
                overhangs.extend(self.overhang_of(layer, &under));
            }
            below = Some(layer);
        }
        if let Some(wrap) = &self.wrap {
            let middle = DVec3::new(f64::midpoint(rear, front), 0.0, f64::midpoint(base.z, top));
            placed.push((wrap.clone(), middle));
        }
        let parts = placed.into_iter().map(|(part, at)| LoadPart { centre: at - DVec3::X * rear, ..part }).collect();
        Stack { parts, size: DVec3::new(front - rear, 2.0 * side, top), base_width: base.y, overhangs }
    }

    /// What of a layer reaches over what is under it by more than it may.
    fn overhang_of(&self, layer: &Layer, under: &Under<'_>) -> Option<Overhang> {
        let (ahead, left) = ((layer.ahead - under.ahead).abs(), (layer.left - under.left).abs());
        let along = ahead + (layer.size.x - under.size.x) / 2.0;
        let across = left + (layer.size.y - under.size.y) / 2.0;
        let past = |by: f64, side: f64| by - (self.overhang * side).max(FLUSH);
        let (by, side) = if past(along, under.size.x) >= past(across, under.size.y) {
            (along, under.size.x)
        } else {
            (across, under.size.y)
        };
        let unsupported = ahead > under.size.x / 2.0 || left > under.size.y / 2.0;
        (unsupported || past(by, side) > 1e-9).then(|| Overhang {
            layer: layer.part.name.clone(),
            over: under.name.map(str::to_owned),
            by,
            allowed: self.overhang * side,
            unsupported,
        })
    }
}

impl LoadPart {
    /// A part by name and mass, to be placed by a [`Pallet`].
    pub fn unplaced(name: impl Into<String>, mass_kg: Ranged) -> Self {
        let water = Water::NoMatter;
        Self { name: name.into(), mass_kg, water, ..Self::point(kilograms(mass_kg.nominal), DVec3::ZERO) }
    }
}
