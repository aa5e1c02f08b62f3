//! Faces that cover each other.

use crate::Tin;
use geometry::DVec2;

/// Faces that cover each other by less than this are neighbours, m (ours: surfaces joined from
/// parts have their common points rounded to the millimetre).
const DEPTH: f64 = 1e-3;

/// Pairs looked at, for each triangle; beyond, the count ends.
const PAIRS_A_TRIANGLE: usize = 200;

/// Number of triangles that cover part of an earlier one, and true if the count was cut short.
///
/// Two triangles cover each other unless some edge of one has the other beyond it (separating
/// axes). Each is compared with those of its own and of coarser buckets.
pub(crate) fn count(tin: &Tin) -> (usize, bool) {
    let mut covers = vec![false; tin.triangles.len()];
    let mut left = tin.triangles.len().saturating_mul(PAIRS_A_TRIANGLE);
    let corners = |t: u32| tin.triangles[t as usize].map(|i| tin.points[i as usize].truncate());
    for i in 0..crate::tin::index(tin.triangles.len()) {
        let own = corners(i);
        let (low, high) = bounds(own);
        let first = tin.buckets.level_for((high - low).max_element());
        for level in first..tin.buckets.levels() {
            for j in tin.buckets.in_box(level, low, high) {
                // On its own level each pair comes twice.
                if j == i || (level == first && j > i) {
                    continue;
                }
                if left == 0 {
                    return (covers.iter().filter(|c| **c).count(), true);
                }
                left -= 1;
                if !covers[i.max(j) as usize] && overlap(own, corners(j)) {
                    covers[i.max(j) as usize] = true;
                }
            }
        }
    }
    (covers.iter().filter(|c| **c).count(), false)
}

fn bounds([a, b, c]: [DVec2; 3]) -> (DVec2, DVec2) {
    (a.min(b).min(c), a.max(b).max(c))
}

/// Both counterclockwise.
fn overlap(one: [DVec2; 3], other: [DVec2; 3]) -> bool {
    let ((low, high), (low2, high2)) = (bounds(one), bounds(other));
    let common = high.min(high2) - low.max(low2);
    common.min_element() > DEPTH && deep(one, other) && deep(other, one)
}

/// No edge of `one` has all of `other` beyond it, or in it by less than [`DEPTH`].
fn deep(one: [DVec2; 3], other: [DVec2; 3]) -> bool {
    (0..3).all(|i| {
        let (from, along) = (one[i], one[(i + 1) % 3] - one[i]);
        let inmost = other.iter().map(|p| along.perp_dot(*p - from)).fold(f64::NEG_INFINITY, f64::max);
        inmost > DEPTH * along.length()
    })
}
