//! An outline in plan with holes.

use geometry::DVec2;

/// An outline in plan, m in the site frame: corners in order, either way round, the first not repeated.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct PlanArea {
    /// Outer ring.
    pub outer: Vec<DVec2>,
    /// Holes in it.
    pub holes: Vec<Vec<DVec2>>,
}

impl PlanArea {
    /// Rings, the outer first.
    pub fn rings(&self) -> impl Iterator<Item = &[DVec2]> {
        std::iter::once(self.outer.as_slice()).chain(self.holes.iter().map(Vec::as_slice))
    }

    /// Edges of all rings.
    pub fn edges(&self) -> impl Iterator<Item = (DVec2, DVec2)> + '_ {
        self.rings().flat_map(|ring| (0..ring.len()).map(move |i| (ring[i], ring[(i + 1) % ring.len()])))
    }

    /// True inside, by crossings of a ray to the east counted even-odd; a point on the edge may fall on either side.
    pub fn contains(&self, at: DVec2) -> bool {
        let crosses = |&(a, b): &(DVec2, DVec2)| {
            (a.y > at.y) != (b.y > at.y) && at.x < a.x + (at.y - a.y) / (b.y - a.y) * (b.x - a.x)
        };
        self.edges().filter(crosses).count() % 2 == 1
    }

    /// Smallest and largest corner; `None` without corners.
    pub fn bounds(&self) -> Option<(DVec2, DVec2)> {
        let first = *self.outer.first()?;
        Some(self.outer.iter().fold((first, first), |(low, high), p| (low.min(*p), high.max(*p))))
    }

    /// True if two edges that are no neighbours meet: then nobody knows what it encloses.
    pub fn crosses_itself(&self) -> bool {
        let edges: Vec<(DVec2, DVec2)> = self.edges().collect();
        let meet = |(a, b): (DVec2, DVec2), (c, d): (DVec2, DVec2)| {
            let side = |p: DVec2, q: DVec2, r: DVec2| (q - p).perp_dot(r - p);
            let (s1, s2) = (side(a, b, c), side(a, b, d));
            let (s3, s4) = (side(c, d, a), side(c, d, b));
            s1 * s2 < 0.0 && s3 * s4 < 0.0
        };
        edges.iter().enumerate().any(|(i, e)| edges[i + 1..].iter().any(|f| meet(*e, *f)))
    }
}
