//! Distance from a part of a machine to a thing on the site.

use crate::{Body, Opening, PlanArea, Thing};
use geometry::{
    DMat3, DVec2, DVec3, OrientedBox, Pose, Segment, Solid, distance_point_segment, distance_segment_segment,
    distance_solid_solid,
};

/// How near a solid comes to a thing.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Distance {
    /// Distance in space, m; 0 where they touch or cross.
    Metres(f64),
    /// How high the thing is, is not known: this is the distance in plan, m, which holds for any height.
    HeightUnknown(f64),
}

impl Distance {
    /// The distance that can be relied on, m.
    pub fn metres(self) -> f64 {
        match self {
            Self::Metres(d) | Self::HeightUnknown(d) => d,
        }
    }
}

/// Distance from a solid to a thing, in the site frame. The thing's accuracy is not taken off.
///
/// An upright body is bounded by vertical rectangles and by level faces at base and top. The
/// nearest point of a convex solid lies on a rectangle (box against box, exact) or straight over or
/// under a level face, at one of the solid's corners; it crosses a level face where one of its edges
/// does. A body without a base reaches down without end. Openings are holes in the rectangles; an
/// outline with openings is a shell: what is inside it is not filled.
pub fn distance_thing(solid: &Solid, thing: &Thing) -> Distance {
    let (_, low, high) = extent(solid);
    match &thing.body {
        Body::Upright { shape, base, top } => {
            // Without a known end it goes on past the solid.
            let reach = top.unwrap_or_else(|| high.max(base.unwrap_or(high)) + 1.0);
            let base = base.unwrap_or(low.min(reach) - 1.0).min(reach);
            let least = shape
                .outlines()
                .iter()
                .map(|outline| prism(solid, outline, base, reach, &thing.openings))
                .fold(f64::INFINITY, f64::min);
            if top.is_some() { Distance::Metres(least) } else { Distance::HeightUnknown(least) }
        }
        Body::Columns(columns) => {
            let mut least = f64::INFINITY;
            for (corner, top) in columns.iter() {
                let base = low.min(top) - 1.0;
                let column = upright_box(corner, corner + DVec2::splat(columns.cell), base, top);
                if bound(solid, &column) < least {
                    least = least.min(distance_solid_solid(solid, &Solid::Box(column)));
                }
            }
            Distance::Metres(least)
        }
    }
}

/// A bound from below that costs next to nothing: spheres around both, in plan and height.
pub fn least_distance(solid: &Solid, low: DVec3, high: DVec3) -> f64 {
    let (centre, radius) = solid.bounding_sphere();
    let outside = (low - centre).max(centre - high).max(DVec3::ZERO);
    (outside.length() - radius).max(0.0)
}

fn bound(solid: &Solid, column: &OrientedBox) -> f64 {
    let centre = column.outer_from_box.translation;
    least_distance(solid, centre - column.half, centre + column.half)
}

/// A box with its edges along the axes.
fn upright_box(low: DVec2, high: DVec2, base: f64, top: f64) -> OrientedBox {
    let (low, high) = (low.extend(base), high.extend(top));
    OrientedBox {
        outer_from_box: Pose { rotation: DMat3::IDENTITY, translation: (low + high) * 0.5 },
        half: (high - low) * 0.5,
    }
}

/// Corners (of a capsule: the ends of its axis) with the radius around them; lowest and highest point.
fn extent(solid: &Solid) -> (Corners, f64, f64) {
    let corners = match solid {
        Solid::Capsule(c) => Corners { at: vec![c.axis.a, c.axis.b], edges: vec![c.axis], radius: c.radius },
        Solid::Box(b) => Corners { at: b.corners().to_vec(), edges: b.edges().to_vec(), radius: 0.0 },
    };
    let low = corners.at.iter().map(|p| p.z).fold(f64::INFINITY, f64::min) - corners.radius;
    let high = corners.at.iter().map(|p| p.z).fold(f64::NEG_INFINITY, f64::max) + corners.radius;
    (corners, low, high)
}

struct Corners {
    at: Vec<DVec3>,
    edges: Vec<Segment>,
    radius: f64,
}

fn prism(solid: &Solid, outline: &PlanArea, base: f64, top: f64, openings: &[Opening]) -> f64 {
    let mut least = f64::INFINITY;
    let mut shell = false;
    for (a, b) in outline.edges() {
        if a == b {
            continue;
        }
        for piece in pieces(a, b, base, top, openings, &mut shell) {
            if bound_of_wall(solid, &piece) < least {
                least = least.min(distance_solid_solid(solid, &Solid::Box(piece.solid())));
            }
        }
    }
    if least > 0.0 && !shell {
        least = least.min(over_or_under(solid, outline, base, top));
    }
    least
}

/// Distance straight up or down to the level faces; 0 inside or where an edge pierces one.
fn over_or_under(solid: &Solid, outline: &PlanArea, base: f64, top: f64) -> f64 {
    let (corners, ..) = extent(solid);
    let mut least = f64::INFINITY;
    for p in &corners.at {
        if outline.encloses(p.truncate()) {
            let gap = (p.z - top).max(base - p.z).max(0.0);
            least = least.min((gap - corners.radius).max(0.0));
        }
    }
    for edge in &corners.edges {
        for level in [base, top] {
            let (za, zb) = (edge.a.z - level, edge.b.z - level);
            if za * zb < 0.0 && outline.encloses(edge.a.lerp(edge.b, za / (za - zb)).truncate()) {
                return 0.0;
            }
        }
    }
    least
}

/// An upright rectangle: a piece of the side of something that stands, m.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Wall {
    /// One end in plan.
    pub a: DVec2,
    /// The other.
    pub b: DVec2,
    /// Lower edge.
    pub base: f64,
    /// Upper edge.
    pub top: f64,
}

/// The sides over an outline from `base` to `top`, with what the openings leave of them, in the order of its edges;
/// and whether an opening lies on any of them, so that it is a shell. The same rectangles that distances are taken to.
pub fn walls(outline: &PlanArea, base: f64, top: f64, openings: &[Opening]) -> (Vec<Wall>, bool) {
    let mut shell = false;
    let sides = outline.edges().filter(|(a, b)| a != b);
    let walls = sides.flat_map(|(a, b)| pieces(a, b, base, top, openings, &mut shell)).collect();
    (walls, shell)
}

impl Wall {
    fn solid(&self) -> OrientedBox {
        let along = (self.b - self.a).normalize_or_zero();
        let middle = ((self.a + self.b) * 0.5).extend(f64::midpoint(self.base, self.top));
        OrientedBox {
            outer_from_box: Pose::from_axes(along.extend(0.0), along.perp().extend(0.0), middle),
            half: DVec3::new(self.a.distance(self.b) * 0.5, 0.0, (self.top - self.base) * 0.5),
        }
    }
}

fn bound_of_wall(solid: &Solid, wall: &Wall) -> f64 {
    least_distance(solid, wall.a.min(wall.b).extend(wall.base), wall.a.max(wall.b).extend(wall.top))
}

/// How far a jamb may stand off an edge and still belong to it, m: half a thick wall.
const JAMB: f64 = 0.5;

/// The rectangle over an edge without its openings: beside, below and above each.
fn pieces(a: DVec2, b: DVec2, base: f64, top: f64, openings: &[Opening], shell: &mut bool) -> Vec<Wall> {
    let length = a.distance(b);
    let along = (b - a) / length;
    let mut holes: Vec<(f64, f64, f64, f64)> = openings
        .iter()
        .filter(|o| on_edge(a, b, o))
        .map(|o| {
            let (s, e) = ((o.from - a).dot(along), (o.to - a).dot(along));
            (s.min(e).clamp(0.0, length), s.max(e).clamp(0.0, length), o.sill, o.head)
        })
        .collect();
    *shell |= !holes.is_empty();
    holes.sort_by(|p, q| p.0.total_cmp(&q.0));
    let mut cuts: Vec<f64> = holes.iter().flat_map(|h| [h.0, h.1]).chain([0.0, length]).collect();
    cuts.sort_by(f64::total_cmp);
    cuts.dedup();
    if base == top {
        return vec![Wall { a, b, base, top }];
    }
    let mut out = Vec::new();
    for w in cuts.windows(2) {
        let middle = f64::midpoint(w[0], w[1]);
        // Openings one above the other: what is left between them, from below.
        let mut over: Vec<(f64, f64)> =
            holes.iter().filter(|h| h.0 <= middle && middle <= h.1).map(|h| (h.2, h.3)).collect();
        over.sort_by(|p, q| p.0.total_cmp(&q.0));
        let mut from = base;
        for (sill, head) in over.into_iter().chain([(top, top)]) {
            if sill.min(top) > from {
                out.push(Wall { a: a + along * w[0], b: a + along * w[1], base: from, top: sill.min(top) });
            }
            from = from.max(head);
        }
    }
    out
}

/// Both jambs lie on the edge.
fn on_edge(a: DVec2, b: DVec2, opening: &Opening) -> bool {
    let edge = Segment { a: a.extend(0.0), b: b.extend(0.0) };
    [opening.from, opening.to].iter().all(|p| distance_point_segment(p.extend(0.0), &edge) <= JAMB)
        && distance_segment_segment(&edge, &Segment { a: opening.from.extend(0.0), b: opening.to.extend(0.0) }) <= JAMB
}
