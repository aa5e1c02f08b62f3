//! The outline of a set of raster cells.

use std::collections::{BTreeMap, BTreeSet};

/// A corner of cells: row and column of the cell to its south-east.
type Corner = (i64, i64);

/// The outer outline of cells (row from the north, column) grown by one cell all around: corners
/// counter-clockwise as seen on a map, without those on straight edges. If the grown cells fall
/// apart, the outline of the piece with the largest area.
pub(crate) fn grown_outline(cells: &[(i64, i64)]) -> Vec<Corner> {
    let grown: BTreeSet<(i64, i64)> = cells
        .iter()
        .flat_map(|&(r, c)| (-1..=1).flat_map(move |dr| (-1..=1).map(move |dc| (r + dr, c + dc))))
        .collect();
    // Edges with the cell on their left. A corner where two cells touch has two ways on.
    let mut next: BTreeMap<Corner, Vec<Corner>> = BTreeMap::new();
    for &(r, c) in &grown {
        for (beside, from, to) in [
            ((r + 1, c), (r + 1, c), (r + 1, c + 1)),
            ((r, c + 1), (r + 1, c + 1), (r, c + 1)),
            ((r - 1, c), (r, c + 1), (r, c)),
            ((r, c - 1), (r, c), (r + 1, c)),
        ] {
            if !grown.contains(&beside) {
                next.entry(from).or_default().push(to);
            }
        }
    }
    let mut largest = (0, Vec::new());
    while let Some((&start, _)) = next.iter().next() {
        let ring = walk(start, &mut next);
        let area = twice_area(&ring);
        if area > largest.0 {
            largest = (area, ring);
        }
    }
    without_straight_corners(&largest.1)
}

/// Follows edges until the start; at a touching corner to the left, so that pieces stay apart.
fn walk(start: Corner, next: &mut BTreeMap<Corner, Vec<Corner>>) -> Vec<Corner> {
    let mut ring = Vec::new();
    let mut came = (0, 0);
    let mut at = start;
    while let Some(ways) = next.get_mut(&at) {
        // Turning left is positive with rows that grow to the south.
        let turn = |to: &Corner| came.1 * (at.0 - to.0) - -came.0 * (to.1 - at.1);
        let best = (0..ways.len()).max_by_key(|&i| turn(&ways[i])).unwrap_or(0);
        let to = ways.swap_remove(best);
        if ways.is_empty() {
            next.remove(&at);
        }
        ring.push(at);
        came = (to.0 - at.0, to.1 - at.1);
        at = to;
        if at == start {
            break;
        }
    }
    ring
}

/// Twice the signed area, positive counter-clockwise as seen on a map.
fn twice_area(ring: &[Corner]) -> i64 {
    let pairs = ring.iter().zip(ring.iter().cycle().skip(1));
    pairs.map(|(a, b)| a.1 * -b.0 - b.1 * -a.0).sum()
}

fn without_straight_corners(ring: &[Corner]) -> Vec<Corner> {
    let n = ring.len();
    (0..n)
        .filter(|&i| {
            let (a, b, c) = (ring[(i + n - 1) % n], ring[i], ring[(i + 1) % n]);
            (b.0 - a.0) * (c.1 - b.1) != (b.1 - a.1) * (c.0 - b.0)
        })
        .map(|i| ring[i])
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn one_cell_grows_to_a_square_of_three() {
        let ring = grown_outline(&[(5, 7)]);
        assert_eq!(ring.len(), 4);
        assert_eq!(twice_area(&ring), 18);
        assert!(ring.contains(&(4, 6)) && ring.contains(&(7, 9)), "{ring:?}");
    }

    #[test]
    fn cells_two_apart_are_one_piece_and_holes_are_filled() {
        let ring = grown_outline(&[(0, 0), (2, 2), (4, 4)]);
        assert_eq!(twice_area(&ring), 2 * (9 + 8 + 8));
        // A ring of cells around a wide hole: the outer outline counts.
        let around: Vec<_> =
            (0..10).flat_map(|r| (0..10).map(move |c| (r, c))).filter(|&(r, c)| r % 9 == 0 || c % 9 == 0).collect();
        assert_eq!(twice_area(&grown_outline(&around)), 2 * 144);
        assert!(grown_outline(&[]).is_empty());
    }
}
