//! Rings in plan that say where a surface ends.

use geometry::DVec2;

/// Bands of equal height that the edges of all rings are sorted into.
const BANDS: usize = 256;

/// A closed outline in plan, m; the first corner may be repeated at the end.
#[derive(Debug, Clone, PartialEq)]
pub struct Ring {
    /// What it bounds.
    pub kind: RingKind,
    /// Corners, either way round.
    pub corners: Vec<DVec2>,
}

/// What a ring bounds.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum RingKind {
    /// The surface ends here: outside of every outer ring is a hole.
    Outer,
    /// Inside is a hole.
    Void,
    /// Inside is surface again, also inside a void.
    Island,
}

/// Rings, ready for many questions.
pub(crate) struct Rings {
    has_outer: bool,
    low: f64,
    band: f64,
    /// Edges by band: from, to, kind.
    edges: Vec<Vec<(DVec2, DVec2, RingKind)>>,
}

impl Rings {
    pub(crate) fn new(rings: &[Ring]) -> Self {
        let heights = || rings.iter().flat_map(|r| r.corners.iter().map(|c| c.y));
        let (low, high) = heights().fold((f64::INFINITY, f64::NEG_INFINITY), |(l, h), y| (l.min(y), h.max(y)));
        let band = ((high - low) / BANDS as f64).max(f64::MIN_POSITIVE);
        let mut all = Self {
            has_outer: rings.iter().any(|r| r.kind == RingKind::Outer),
            low,
            band,
            edges: vec![Vec::new(); BANDS],
        };
        for ring in rings {
            for (i, &from) in ring.corners.iter().enumerate() {
                let to = ring.corners[(i + 1) % ring.corners.len()];
                let (first, last) = (all.band_of(from.y.min(to.y)), all.band_of(from.y.max(to.y)));
                for edges in &mut all.edges[first..=last] {
                    edges.push((from, to, ring.kind));
                }
            }
        }
        all
    }

    fn band_of(&self, y: f64) -> usize {
        (((y - self.low) / self.band).max(0.0) as usize).min(BANDS - 1)
    }

    /// True where there is surface: odd number of crossings to the east for each kind.
    pub(crate) fn keep(&self, at: DVec2) -> bool {
        let (mut outer, mut void, mut island) = (false, false, false);
        for &(from, to, kind) in &self.edges[self.band_of(at.y)] {
            let crosses =
                (from.y > at.y) != (to.y > at.y) && at.x < from.x + (at.y - from.y) / (to.y - from.y) * (to.x - from.x);
            if crosses {
                let state = match kind {
                    RingKind::Outer => &mut outer,
                    RingKind::Void => &mut void,
                    RingKind::Island => &mut island,
                };
                *state = !*state;
            }
        }
        island || ((outer || !self.has_outer) && !void)
    }
}
