//! Ground as triangles. A hole stays a hole.

use geometry::{DVec2, DVec3};
use site::{Grid, Terrain, Tin};

/// Triangles of a ground surface.
#[derive(Debug, Clone, PartialEq)]
pub struct Mesh {
    /// What `vertices` count from, m in the site frame.
    pub origin: DVec3,
    /// Corners (east, north, height), m from `origin`.
    pub vertices: Vec<[f32; 3]>,
    /// Indexes of the corners, counter-clockwise seen from above.
    pub triangles: Vec<[u32; 3]>,
}

/// A ground surface as triangles, exact where `step` is 1: a grid's cells, each as two triangles over its four
/// heights; a triangulation's own triangles.
pub fn ground_mesh(terrain: &Terrain) -> Mesh {
    thinned(terrain, 1)
}

/// Number of triangles that [`ground_mesh`] would make at most, without making them.
pub(crate) fn most_triangles(terrain: &Terrain) -> usize {
    match terrain {
        Terrain::Grid(g) => g.rows.saturating_sub(1).saturating_mul(g.cols.saturating_sub(1)).saturating_mul(2),
        Terrain::Tin(t) => t.triangles().count(),
    }
}

/// What is known of the heights of a surface.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub(crate) struct Heights {
    /// How many are known.
    pub(crate) known: usize,
    /// Lowest and highest, m.
    pub(crate) ends: Option<(f64, f64)>,
    total: f64,
}

impl Heights {
    /// Mean of the known heights, m.
    pub(crate) fn mean(&self) -> Option<f64> {
        (self.known > 0).then(|| self.total / self.known as f64)
    }

    fn with(self, z: f64) -> Self {
        let (low, high) = self.ends.unwrap_or((z, z));
        Self { known: self.known + 1, ends: Some((low.min(z), high.max(z))), total: self.total + z }
    }
}

/// Heights of a grid's cells, or of the corners of a triangulation's triangles.
pub(crate) fn heights(terrain: &Terrain) -> Heights {
    match terrain {
        Terrain::Grid(g) => {
            let known = g.heights.iter().filter(|z| z.is_finite());
            known.fold(Heights::default(), |so_far, z| so_far.with(f64::from(*z)))
        }
        Terrain::Tin(t) => {
            let corners = t.triangles().flatten().map(|p| ([p.x.to_bits(), p.y.to_bits()], p.z));
            let once: std::collections::BTreeMap<_, _> = corners.collect();
            once.into_values().fold(Heights::default(), Heights::with)
        }
    }
}

/// Every how many rows and columns of a grid count so that no more than `most` triangles come out; `None` where
/// that cannot be: a triangulation is not thinned.
pub(crate) fn step_for(terrain: &Terrain, most: usize) -> Option<usize> {
    if most_triangles(terrain) <= most {
        return Some(1);
    }
    let Terrain::Grid(g) = terrain else { return None };
    let cells = |count: usize, step: usize| count.saturating_sub(1).div_ceil(step);
    (2..g.rows.max(g.cols)).find(|step| cells(g.rows, *step).saturating_mul(cells(g.cols, *step)) * 2 <= most)
}

/// As [`ground_mesh`], over every `step`-th row and column of a grid and its last ones. Over a cell so made there are
/// triangles only if every height in it is known.
pub(crate) fn thinned(terrain: &Terrain, step: usize) -> Mesh {
    match terrain {
        Terrain::Grid(g) => of_grid(g, step.max(1)),
        Terrain::Tin(t) => of_tin(t),
    }
}

fn of_grid(grid: &Grid, step: usize) -> Mesh {
    let (low, _) = grid.bounds();
    let lowest = grid.heights.iter().copied().filter(|z| z.is_finite()).fold(f32::INFINITY, f32::min);
    let level = if lowest.is_finite() { f64::from(lowest).floor() } else { 0.0 };
    let origin = low.floor().extend(level);
    let (rows, cols) = (picked(grid.rows, step), picked(grid.cols, step));
    let mut mesh = Mesh { origin, vertices: Vec::new(), triangles: Vec::new() };
    let mut index = vec![u32::MAX; rows.len() * cols.len()];
    let mut vertex = |mesh: &mut Mesh, r: usize, c: usize| {
        let slot = &mut index[r * cols.len() + c];
        if *slot == u32::MAX {
            *slot = mesh.vertices.len() as u32;
            let at = grid.north_west + DVec2::new(cols[c] as f64 * grid.cell.x, -(rows[r] as f64) * grid.cell.y);
            let z = grid.cell(rows[r], cols[c]).unwrap_or(level);
            mesh.vertices.push(near(at.extend(z) - origin));
        }
        *slot
    };
    for r in 1..rows.len() {
        for c in 1..cols.len() {
            let known =
                (rows[r - 1]..=rows[r]).all(|row| (cols[c - 1]..=cols[c]).all(|col| grid.cell(row, col).is_some()));
            if known {
                let [nw, ne] = [vertex(&mut mesh, r - 1, c - 1), vertex(&mut mesh, r - 1, c)];
                let [sw, se] = [vertex(&mut mesh, r, c - 1), vertex(&mut mesh, r, c)];
                mesh.triangles.extend([[sw, se, ne], [sw, ne, nw]]);
            }
        }
    }
    mesh
}

/// Every `step`-th index, and the last.
fn picked(count: usize, step: usize) -> Vec<usize> {
    let mut out: Vec<usize> = (0..count).step_by(step).collect();
    if let (Some(last), Some(end)) = (out.last().copied(), count.checked_sub(1))
        && last != end
    {
        out.push(end);
    }
    out
}

fn of_tin(tin: &Tin) -> Mesh {
    let origin = tin.triangles().flatten().reduce(DVec3::min).map_or(DVec3::ZERO, DVec3::floor);
    let mut mesh = Mesh { origin, vertices: Vec::new(), triangles: Vec::new() };
    let mut index = std::collections::BTreeMap::new();
    for triangle in tin.triangles() {
        mesh.triangles.push(triangle.map(|p| {
            *index.entry([p.x, p.y].map(f64::to_bits)).or_insert_with(|| {
                mesh.vertices.push(near(p - origin));
                mesh.vertices.len() as u32 - 1
            })
        }));
    }
    mesh
}

#[expect(clippy::cast_possible_truncation, reason = "metres from a near origin: f32 keeps the millimetre")]
fn near(p: DVec3) -> [f32; 3] {
    [p.x as f32, p.y as f32, p.z as f32]
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used, reason = "tests")]
    use super::*;

    fn grid(rows: usize, cols: usize) -> Grid {
        let heights = (0..rows * cols).map(|i| 100.0 + (i % 7) as f32 * 0.1).collect();
        Grid { north_west: DVec2::new(431_000.25, 5_700_000.5), cell: DVec2::new(0.5, 0.25), rows, cols, heights }
    }

    fn area(mesh: &Mesh) -> f64 {
        let p = |i: u32| mesh.vertices[i as usize].map(f64::from);
        let plan = |[a, b, c]: [[f64; 3]; 3]| ((b[0] - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (b[1] - a[1])) * 0.5;
        mesh.triangles.iter().map(|t| plan(t.map(p))).sum()
    }

    #[test]
    fn a_grid_is_covered_once_and_upwards() {
        let mesh = ground_mesh(&Terrain::Grid(grid(5, 8)));
        assert_eq!((mesh.vertices.len(), mesh.triangles.len()), (40, 56));
        assert!((area(&mesh) - 3.5).abs() < 1e-6, "{}", area(&mesh));
    }

    #[test]
    fn holes_stay_holes_and_thinning_fills_none() {
        let mut g = grid(9, 9);
        g.heights[4 * 9 + 4] = f32::NAN;
        assert_eq!(ground_mesh(&Terrain::Grid(g.clone())).triangles.len(), 120);
        let thin = thinned(&Terrain::Grid(g.clone()), 3);
        assert_eq!(thin.triangles.len(), 16, "the middle of three by three is left out");
        assert_eq!(thinned(&Terrain::Grid(g.clone()), 5).triangles.len(), 6, "last rows and columns count");
        assert_eq!(step_for(&Terrain::Grid(g), 20), Some(3));
    }

    #[test]
    fn grids_without_cells_have_no_triangles() {
        for (rows, cols) in [(0, 0), (1, 9), (9, 1)] {
            assert!(ground_mesh(&Terrain::Grid(grid(rows, cols))).triangles.is_empty());
        }
    }

    #[test]
    fn a_triangulation_keeps_its_triangles_and_its_holes() {
        let points: Vec<DVec3> = [(0.0, 0.0), (1.0, 0.0), (1.0, 1.0), (0.0, 1.0), (9.0, 0.5)]
            .iter()
            .map(|(x, y)| DVec3::new(500_000.0 + x, 4_000_000.0 + y, 250.0 + x))
            .collect();
        let mesh = ground_mesh(&Terrain::Tin(Tin::new(&points, 2.0).unwrap()));
        assert_eq!((mesh.vertices.len(), mesh.triangles.len()), (4, 2));
        assert!((area(&mesh) - 1.0).abs() < 1e-9);
        assert_eq!(step_for(&Terrain::Tin(Tin::new(&points, 2.0).unwrap()), 1), None);
    }
}
