//! Outlines of hatched areas: polylines, or edges that are lines, arcs and ellipses.

use crate::dxf_curves as curves;
use crate::dxf_groups::Groups;
use crate::dxf_outline::area;
use crate::dxf_pairs::Pair;
use geometry::DVec3;

/// Most outlines of one hatch; one with more is a pattern and no plan.
const MOST_LOOPS: usize = 64;

/// A hatched area: its outline and its holes, in the hatch's own axes.
pub(crate) type Hatched = (Vec<DVec3>, Vec<Vec<DVec3>>);

/// The outlines of a hatch. `None` where they cannot be followed: spline edges, edges that do not
/// join, numbers missing.
///
/// Outlines inside one another are by turns area and hole, as the usual hatch style draws them.
pub(crate) fn areas(groups: &Groups<'_>, tolerance: f64, near: f64) -> Option<Vec<Hatched>> {
    let pairs = &groups.pairs;
    let start = pairs.iter().position(|p| p.code == 91)?;
    let count = usize::try_from(pairs[start].value.int()?).ok()?;
    if !(1..=MOST_LOOPS).contains(&count) {
        return None;
    }
    let height = groups.real(30).unwrap_or(0.0);
    let mut cursor = Cursor { rest: &pairs[start + 1..], height };
    let mut loops = Vec::new();
    for _ in 0..count {
        let points = cursor.path(tolerance, near)?;
        if points.len() >= 3 && points.iter().all(|p| p.is_finite()) {
            loops.push(points);
        }
    }
    Some(nested(loops))
}

struct Cursor<'p, 'a> {
    rest: &'p [Pair<'a>],
    height: f64,
}

impl Cursor<'_, '_> {
    /// The next pair's number, if it has this code.
    fn next(&mut self, code: i32) -> Option<f64> {
        let first = self.rest.first().filter(|p| p.code == code)?;
        self.rest = &self.rest[1..];
        first.value.real()
    }

    fn count(&mut self, code: i32) -> Option<usize> {
        let n = self.next(code)?;
        // A declared number is checked against what is there before anything is made for it.
        (n >= 0.0 && n <= self.rest.len() as f64).then_some(n as usize)
    }

    fn point(&mut self, code: i32) -> Option<DVec3> {
        Some(DVec3::new(self.next(code)?, self.next(code + 10)?, self.height))
    }

    fn path(&mut self, tolerance: f64, near: f64) -> Option<Vec<DVec3>> {
        let kind = self.next(92)?;
        let mut points = Vec::new();
        // Bit 2: a polyline.
        if kind as i64 & 2 != 0 {
            let _has_bulge = self.next(72)?;
            let _closed = self.next(73)?;
            let n = self.count(93)?;
            let mut corners = Vec::with_capacity(n);
            for _ in 0..n {
                let at = self.point(10)?;
                corners.push((at, self.next(42).unwrap_or(0.0)));
            }
            let first = corners.first()?.0;
            points.push(first);
            for i in 0..corners.len() {
                let to = corners.get(i + 1).map_or(first, |c| c.0);
                points.extend(curves::bulge(corners[i].0, to, corners[i].1, tolerance));
            }
        } else {
            for _ in 0..self.count(93)? {
                let mut edge = self.edge(tolerance)?;
                if let Some(&last) = points.last() {
                    let last: DVec3 = last;
                    if (edge[edge.len() - 1] - last).length() < (edge[0] - last).length() {
                        edge.reverse();
                    }
                    if (edge[0] - last).length() > near {
                        return None;
                    }
                }
                points.extend(edge);
            }
            if (*points.first()? - *points.last()?).length() > near {
                return None;
            }
        }
        // What the outline was picked from does not matter.
        for _ in 0..self.count(97).unwrap_or(0) {
            self.rest = self.rest.get(1..)?;
        }
        Some(points)
    }

    fn edge(&mut self, tolerance: f64) -> Option<Vec<DVec3>> {
        match self.next(72)? as i64 {
            1 => Some(vec![self.point(10)?, self.point(11)?]),
            2 => {
                let centre = self.point(10)?;
                let radius = self.next(40)?;
                self.swept(centre, DVec3::X * radius, DVec3::Y * radius, tolerance)
            }
            3 => {
                let centre = self.point(10)?;
                let x = self.point(11)?.truncate().extend(0.0);
                let ratio = self.next(40)?;
                self.swept(centre, x, DVec3::new(-x.y, x.x, 0.0) * ratio, tolerance)
            }
            _ => None,
        }
    }

    /// Angles in degrees; those of a clockwise arc are counted clockwise.
    fn swept(&mut self, centre: DVec3, x: DVec3, y: DVec3, tolerance: f64) -> Option<Vec<DVec3>> {
        let (from, to) = (self.next(50)?.to_radians(), self.next(51)?.to_radians());
        let hand = if self.next(73)? == 0.0 { -1.0 } else { 1.0 };
        Some(curves::arc(centre, x, y, hand * from, hand * curves::sweep(from, to), tolerance))
    }
}

fn nested(mut loops: Vec<Vec<DVec3>>) -> Vec<Hatched> {
    loops.sort_by(|a, b| area(b).abs().total_cmp(&area(a).abs()));
    let mut out: Vec<Hatched> = Vec::new();
    // For each loop: how deep it lies, and the area it belongs to.
    let mut seen: Vec<(usize, usize, Vec<geometry::DVec2>)> = Vec::new();
    for points in loops {
        let flat: Vec<_> = points.iter().map(|p| p.truncate()).collect();
        let at = (flat[0] + flat[1]) / 2.0;
        let around = seen.iter().filter(|s| crate::class_heights::contains(&s.2, at)).max_by_key(|s| s.0);
        let (depth, owner) = match around {
            Some(&(depth, owner, _)) if depth % 2 == 0 => {
                out[owner].1.push(points);
                (depth + 1, owner)
            }
            around => {
                out.push((points, Vec::new()));
                (around.map_or(0, |a| a.0 + 1), out.len() - 1)
            }
        };
        seen.push((depth, owner, flat));
    }
    out
}
