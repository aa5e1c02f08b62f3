//! A site or a plan as a list of items, with what holds for all of them.

use crate::ground_mesh::heights;
use crate::item::{Item, Position};
use geometry::DVec2;
use site::{Gate, Ground, Landing, PlanArea, PlanShape, PowerLine, Surroundings};

/// What is read of a site; a job's site has the same parts.
#[derive(Debug, Clone, Copy)]
pub(crate) struct View<'a> {
    pub(crate) name: &'a str,
    pub(crate) epsg: Option<u32>,
    pub(crate) ground: &'a Ground,
    pub(crate) lines: &'a [PowerLine],
    pub(crate) landings: &'a [Landing],
    pub(crate) gates: &'a [Gate],
    pub(crate) surroundings: &'a Surroundings,
}

/// Everything that goes into a file.
#[derive(Debug, Clone)]
pub(crate) struct Scene<'a> {
    pub(crate) name: String,
    pub(crate) epsg: Option<u32>,
    pub(crate) invented: bool,
    pub(crate) ground: &'a Ground,
    /// Each a line for people.
    pub(crate) notes: Vec<String>,
    pub(crate) items: Vec<Item>,
    /// What is drawn where no level is known at all, m: the lowest that is known anywhere, or 0.
    pub(crate) floor: f64,
}

/// Heights of the ground under shapes.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Under<'a> {
    pub(crate) ground: &'a Ground,
    pub(crate) floor: f64,
}

impl Under<'_> {
    /// Height of the ground, m; `None`: not known there.
    pub(crate) fn height(&self, at: DVec2) -> Option<f64> {
        self.ground.height(at).map(|(z, _)| z)
    }

    /// Lowest known ground under the corners of a shape, m; `None`: known under none.
    pub(crate) fn lowest(&self, shape: &PlanShape) -> Option<f64> {
        let outlines = shape.outlines();
        let corners = outlines.iter().flat_map(|o| &o.outer);
        corners.filter_map(|p| self.height(*p)).reduce(f64::min)
    }

    /// Places with the ground's height, moved by `by`: all of them, or none.
    pub(crate) fn positions(&self, points: &[DVec2], by: f64) -> Vec<Position> {
        let heights: Option<Vec<f64>> = points.iter().map(|p| self.height(*p)).collect();
        match heights {
            Some(z) => points.iter().zip(z).map(|(p, z)| Position(*p, Some(z + by))).collect(),
            None => flat(points),
        }
    }
}

/// Places without heights.
pub(crate) fn flat(points: &[DVec2]) -> Vec<Position> {
    points.iter().map(|p| Position(*p, None)).collect()
}

/// Rings of an outline, right-handed, with heights by `positions`: all of them, or none.
pub(crate) fn rings(area: &PlanArea, positions: impl Fn(&[DVec2]) -> Vec<Position>) -> Vec<Vec<Position>> {
    let area = crate::ring::right_handed(area);
    let with: Vec<_> = area.rings().map(&positions).collect();
    let whole = with.iter().flatten().all(|p| p.1.is_some());
    if whole { with } else { area.rings().map(flat).collect() }
}

/// The lowest level that is known anywhere, m; 0 where none is.
pub(crate) fn floor(view: &View<'_>) -> f64 {
    let ground = view.ground.surfaces.iter().filter_map(|s| heights(&s.terrain).ends.map(|(low, _)| low));
    let landings = view.landings.iter().map(|l| l.level);
    let spans = view.lines.iter().flat_map(|l| l.spans.iter().flat_map(|s| [s.from.z, s.to.z]));
    let bases = view.surroundings.things.iter().filter_map(|t| match &t.body {
        site::Body::Upright { base, .. } => *base,
        site::Body::Columns(columns) => columns.iter().map(|c| c.1).reduce(f64::min),
    });
    // Ground first: a conductor's height is no floor where anything better is known.
    let first = ground.reduce(f64::min).or_else(|| bases.chain(landings).reduce(f64::min));
    first.or_else(|| spans.reduce(f64::min)).filter(|z| z.is_finite()).unwrap_or(0.0)
}
