//! Outlines, boxes and points in (reach, height), m.

use geometry::DVec2;

/// Points nearer than this to a border count as on it, m.
pub(crate) const ON_EDGE: f64 = 1e-9;

/// A straight piece of an outline.
pub(crate) type Edge = (DVec2, DVec2);

pub(crate) fn bounds(outline: &[DVec2]) -> (DVec2, DVec2) {
    outline.iter().fold((DVec2::INFINITY, DVec2::NEG_INFINITY), |(l, h), p| (l.min(*p), h.max(*p)))
}

/// Edges of an outline, closed by itself.
pub(crate) fn edges(outline: &[DVec2]) -> impl Iterator<Item = Edge> + Clone + '_ {
    (0..outline.len()).map(move |i| (outline[i], outline[(i + 1) % outline.len()]))
}

/// True inside or on the edge.
pub(crate) fn contains(outline: &[DVec2], p: DVec2) -> bool {
    within_edges(edges(outline), p)
}

/// True inside or on the edge: crossing number, and for points outside the distance to the edges.
/// Of an outline only those edges matter that come as near as [`ON_EDGE`] to the height of `p`.
pub(crate) fn within_edges(edges: impl Iterator<Item = Edge> + Clone, p: DVec2) -> bool {
    let right_of = |(a, b): Edge| (a.y > p.y) != (b.y > p.y) && p.x < a.x + (p.y - a.y) / (b.y - a.y) * (b.x - a.x);
    let inside = edges.clone().filter(|e| right_of(*e)).count() % 2 == 1;
    inside || edges.into_iter().any(|(a, b)| on_edge(a, b, p))
}

fn on_edge(a: DVec2, b: DVec2, p: DVec2) -> bool {
    let (low, high) = (a.min(b) - ON_EDGE, a.max(b) + ON_EDGE);
    if p.x < low.x || p.x > high.x || p.y < low.y || p.y > high.y {
        return false;
    }
    let d = b - a;
    let t = if d.length_squared() > 0.0 { ((p - a).dot(d) / d.length_squared()).clamp(0.0, 1.0) } else { 0.0 };
    (a + d * t).distance_squared(p) <= ON_EDGE * ON_EDGE
}

/// A closed box to be read, with what the tests against edges need of it.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Window {
    pub(crate) low: DVec2,
    pub(crate) high: DVec2,
    flat_x: bool,
    flat_y: bool,
    /// The inside that no border may cross.
    inner_low: DVec2,
    inner_high: DVec2,
}

impl Window {
    pub(crate) fn new(low: DVec2, high: DVec2) -> Self {
        let size = high - low;
        let flat = |extent: f64| extent <= 2.0 * ON_EDGE;
        let (flat_x, flat_y) = (flat(size.x), flat(size.y));
        let shrink = DVec2::new(if flat_x { 0.0 } else { ON_EDGE }, if flat_y { 0.0 } else { ON_EDGE });
        Self { low, high, flat_x, flat_y, inner_low: low + shrink, inner_high: high - shrink }
    }

    pub(crate) fn centre(&self) -> DVec2 {
        (self.low + self.high) * 0.5
    }

    /// True if the edge comes as near as [`ON_EDGE`] to the box.
    pub(crate) fn touches(&self, (a, b): Edge) -> bool {
        meets(a, b, self.low - ON_EDGE, self.high + ON_EDGE)
    }

    /// True if polygon and box share a point.
    pub(crate) fn meets(&self, outline: &[DVec2]) -> bool {
        edges(outline).any(|e| self.touches(e)) || contains(outline, self.low)
    }

    /// True if the edge of the chart runs through the box's inside, so that some of the box is not
    /// covered. A box without width or height is a line: an edge across it cuts it, one that lies
    /// along it is its border. A single point is covered by the zone it lies in or bounds.
    pub(crate) fn cut_by(&self, (a, b): Edge) -> bool {
        if self.flat_x && self.flat_y {
            return false;
        }
        let along = |p: f64, q: f64, at: f64| (p - at).abs() <= ON_EDGE && (q - at).abs() <= ON_EDGE;
        if (self.flat_y && along(a.y, b.y, self.low.y)) || (self.flat_x && along(a.x, b.x, self.low.x)) {
            return false;
        }
        meets(a, b, self.inner_low, self.inner_high)
    }
}

/// True if a segment and a closed box share a point (Liang–Barsky).
pub(crate) fn meets(a: DVec2, b: DVec2, low: DVec2, high: DVec2) -> bool {
    if a.x.max(b.x) < low.x || a.x.min(b.x) > high.x || a.y.max(b.y) < low.y || a.y.min(b.y) > high.y {
        return false;
    }
    let d = b - a;
    let (mut t0, mut t1) = (0.0_f64, 1.0_f64);
    for (p, q) in [(-d.x, a.x - low.x), (d.x, high.x - a.x), (-d.y, a.y - low.y), (d.y, high.y - a.y)] {
        if p == 0.0 {
            if q < 0.0 {
                return false;
            }
        } else {
            let r = q / p;
            if p < 0.0 {
                t0 = t0.max(r);
            } else {
                t1 = t1.min(r);
            }
        }
    }
    t0 <= t1
}
