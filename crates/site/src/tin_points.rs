//! Points on their way into a triangulation.

use crate::TinError;
use crate::tin::{LARGEST, MOST, index};
use geometry::{DVec2, DVec3};

/// Whole metres near the points: what is subtracted loses no digits.
pub(crate) fn origin_of(points: &[DVec3]) -> DVec2 {
    points.first().map_or(DVec2::ZERO, |p| p.truncate().floor())
}

/// A point as spade takes it.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Vertex {
    position: spade::Point2<f64>,
    z: f64,
}
impl Vertex {
    pub(crate) fn point(self) -> DVec3 {
        DVec3::new(self.position.x, self.position.y, self.z)
    }
}
impl spade::HasPosition for Vertex {
    type Scalar = f64;
    fn position(&self) -> spade::Point2<f64> {
        self.position
    }
}

/// Points relative to `origin`.
pub(crate) fn vertices(points: &[DVec3], origin: DVec2) -> Result<Vec<Vertex>, TinError> {
    if points.len() > MOST {
        return Err(TinError::TooMany);
    }
    let one = |(i, p): (usize, &DVec3)| {
        let v = Vertex { position: spade::Point2::new(p.x - origin.x, p.y - origin.y), z: p.z };
        let fits = p.is_finite() && p.abs().max_element() <= LARGEST && spade::validate_vertex(&v).is_ok();
        if fits { Ok(v) } else { Err(TinError::BadCoordinate { index: i }) }
    };
    points.iter().enumerate().map(one).collect()
}

/// Each place once, with the height of its last point, in the order of first mention; and where
/// every point went.
pub(crate) fn without_repeats(vertices: &[Vertex]) -> (Vec<Vertex>, Vec<u32>) {
    let mut order: Vec<u32> = (0..index(vertices.len())).collect();
    let key = |i: u32| {
        let p = vertices[i as usize].point();
        (p.x + 0.0, p.y + 0.0) // A negative zero is a zero.
    };
    order.sort_by(|&a, &b| {
        let ((ax, ay), (bx, by)) = (key(a), key(b));
        ax.total_cmp(&bx).then(ay.total_cmp(&by)).then(a.cmp(&b))
    });
    // First and last mention of each place.
    let mut first = vec![0; vertices.len()];
    let mut last = vec![0; vertices.len()];
    for same in order.chunk_by(|&a, &b| key(a) == key(b)) {
        for &i in same {
            first[i as usize] = same[0];
            last[i as usize] = same[same.len() - 1];
        }
    }
    let mut place = vec![0; vertices.len()];
    let mut unique = Vec::new();
    for i in 0..vertices.len() {
        if first[i] as usize == i {
            place[i] = index(unique.len());
            unique.push(vertices[last[i] as usize]);
        } else {
            place[i] = place[first[i] as usize];
        }
    }
    (unique, place)
}
