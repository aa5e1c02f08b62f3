//! Entity by entity: from group codes to points.

use crate::dxf_curves as curves;
use crate::dxf_frame::Frame;
use crate::dxf_groups::{Groups, point_in, real_in};
use crate::dxf_hatch;
use crate::dxf_shapes::{Artist, By, Stop, plan_points};
use crate::dxf_words;
use crate::feature::Shape;
use core::f64::consts::TAU;
use geometry::DVec3;
use std::ops::Range;

impl<'a> Artist<'_, 'a, '_, '_> {
    /// Entities of one part.
    pub(crate) fn simple(&mut self, i: usize, groups: &Groups<'a>, by: &By) -> Result<(), Stop> {
        let point = |code| groups.point(code).ok_or(Stop::Unusable);
        let real = |code| groups.real(code).ok_or(Stop::Unusable);
        // Axes of what faces somewhere, and of what does not.
        let flat = || Some(by.frame.after(&Frame::facing(groups.facing())?));
        let world = &by.frame;
        match self.drawing.entries[i].kind {
            b"POINT" => self.spot(i, groups, by, world.point(point(10)?), None),
            b"LINE" => self.line(i, groups, by, world, &[point(10)?, point(11)?], false),
            b"LWPOLYLINE" => {
                let height = groups.real(38).unwrap_or(0.0);
                let mut corners = Vec::new();
                for run in groups.runs(10).filter(|r| r.iter().any(|p| p.code == 10)) {
                    let at = point_in(run, 10).ok_or(Stop::Unusable)?.truncate().extend(height);
                    corners.push((at, real_in(run, 42).unwrap_or(0.0)));
                }
                let frame = flat().ok_or(Stop::Unusable)?;
                self.bulged(i, groups, by, &frame, &corners, groups.flag(70, 1))
            }
            b"ARC" | b"CIRCLE" => {
                let (centre, radius) = (point(10)?, real(40)?);
                if radius <= 0.0 {
                    return Err(Stop::Unusable);
                }
                let frame = flat().ok_or(Stop::Unusable)?;
                let arc = self.drawing.entries[i].kind == b"ARC";
                let (start, sweep) = if arc {
                    let start = real(50)?.to_radians();
                    (start, curves::sweep(start, real(51)?.to_radians()))
                } else {
                    (0.0, TAU)
                };
                let tolerance = self.tolerance / frame.stretch();
                let points = curves::arc(centre, DVec3::X * radius, DVec3::Y * radius, start, sweep, tolerance);
                self.line(i, groups, by, &frame, &points, !arc)
            }
            b"ELLIPSE" => {
                let (centre, x) = (point(10)?, point(11)?);
                let across = groups.facing().try_normalize().ok_or(Stop::Unusable)?.cross(x) * real(40)?;
                let (start, end) = (groups.real(41).unwrap_or(0.0), groups.real(42).unwrap_or(TAU));
                let sweep = curves::sweep(start, end);
                let points = curves::arc(centre, x, across, start, sweep, self.tolerance / world.stretch());
                self.line(i, groups, by, world, &points, TAU - sweep < 1e-6)
            }
            b"SPLINE" => {
                let all = |code| groups.pairs.iter().filter(move |p| p.code == code).filter_map(|p| p.value.real());
                let knots: Vec<f64> = all(40).collect();
                let weights: Vec<f64> = all(41).collect();
                let controls: Option<Vec<DVec3>> =
                    groups.runs(10).filter(|r| r[0].code == 10).map(|r| point_in(r, 10)).collect();
                let degree = usize::try_from(groups.int(71).unwrap_or(0)).map_err(|_| Stop::Unusable)?;
                let controls = controls.ok_or(Stop::Unusable)?;
                let tolerance = self.tolerance / world.stretch();
                let most = self.may_draw();
                // Splines given by points on them only are not read: their curve is the writer's own.
                let points =
                    curves::spline(degree, &knots, &controls, &weights, (tolerance, most)).ok_or(Stop::NotRead)?;
                self.charge(points.len() as u64 * 8)?;
                self.line(i, groups, by, world, &points, groups.flag(70, 1))
            }
            b"3DFACE" => {
                let mut corners = vec![point(10)?, point(11)?, point(12)?];
                corners.extend(groups.point(13));
                self.face(i, groups, by, &corners)
            }
            b"SOLID" | b"TRACE" => {
                // The third and fourth corner stand crosswise.
                let (a, b, c) = (point(10)?, point(11)?, point(12)?);
                let frame = flat().ok_or(Stop::Unusable)?;
                self.line(i, groups, by, &frame, &[a, b, groups.point(13).unwrap_or(c), c], true)
            }
            b"TEXT" => {
                // The second point counts for texts that are not set from the left.
                let set = groups.int(72).unwrap_or(0) != 0 || groups.int(73).unwrap_or(0) != 0;
                let at = groups.point(11).filter(|_| set).or(groups.point(10)).ok_or(Stop::Unusable)?;
                let words = dxf_words::single_line(groups.text(1).unwrap_or_default());
                let frame = flat().ok_or(Stop::Unusable)?;
                self.spot(i, groups, by, frame.point(at), Some(words))
            }
            b"MTEXT" => {
                let words: Vec<u8> = groups
                    .pairs
                    .iter()
                    .filter(|p| p.code == 3 || p.code == 1)
                    .filter_map(|p| p.value.text())
                    .flatten()
                    .copied()
                    .collect();
                self.spot(i, groups, by, world.point(point(10)?), Some(dxf_words::formatted(&words)))
            }
            b"HATCH" => {
                let frame = flat().ok_or(Stop::Unusable)?;
                let near = 50.0 * self.near / frame.stretch();
                let areas = dxf_hatch::areas(groups, self.tolerance / frame.stretch(), near).ok_or(Stop::NotRead)?;
                for (outer, holes) in areas {
                    let mapped = |points: Vec<DVec3>| points.into_iter().map(|p| frame.point(p)).collect::<Vec<_>>();
                    let outer = mapped(outer);
                    if outer.iter().chain(holes.iter().flatten()).any(|p| !p.is_finite()) {
                        return Err(Stop::Unusable);
                    }
                    let mut shapes = self.areas(i, outer)?;
                    // An outline that had to be cut apart loses its holes: what is in them counts as area.
                    if let [Shape::Area { holes: kept, .. }] = &mut shapes[..] {
                        for hole in holes {
                            for shape in self.areas(i, mapped(hole))? {
                                if let Shape::Area { outer, .. } = shape {
                                    kept.push(outer);
                                }
                            }
                        }
                    }
                    for shape in shapes {
                        self.emit(i, groups, by, shape, false)?;
                    }
                }
                Ok(())
            }
            _ => Err(Stop::NotRead),
        }
    }

    fn spot(&mut self, i: usize, groups: &Groups<'a>, by: &By, at: DVec3, words: Option<String>) -> Result<(), Stop> {
        if !at.is_finite() {
            return Err(Stop::Unusable);
        }
        let at = plan_points(&[at])[0];
        let shape = match words {
            Some(words) => Shape::Text { at, words },
            None => Shape::Point(at),
        };
        self.emit(i, groups, by, shape, false)
    }

    fn face(&mut self, i: usize, groups: &Groups<'a>, by: &By, corners: &[DVec3]) -> Result<(), Stop> {
        let mut corners: Vec<DVec3> = corners.iter().map(|&p| by.frame.point(p)).collect();
        corners.dedup();
        while corners.len() > 1 && corners.first() == corners.last() {
            corners.pop();
        }
        if corners.len() < 3 || corners.iter().any(|p| !p.is_finite()) {
            return Err(Stop::Unusable);
        }
        self.emit(i, groups, by, Shape::Face(plan_points(&corners)), false)
    }

    fn bulged(
        &mut self,
        i: usize,
        groups: &Groups<'a>,
        by: &By,
        frame: &Frame,
        corners: &[(DVec3, f64)],
        closed: bool,
    ) -> Result<(), Stop> {
        let Some(&(first, _)) = corners.first() else { return Err(Stop::Unusable) };
        let tolerance = self.tolerance / frame.stretch();
        let mut points = vec![first];
        for (k, &(at, bulge)) in corners.iter().enumerate() {
            let to = match corners.get(k + 1) {
                Some(next) => next.0,
                None if closed => first,
                None => break,
            };
            let chords = curves::bulge(at, to, bulge, tolerance);
            self.charge(chords.len() as u64)?;
            points.extend(chords);
        }
        self.line(i, groups, by, frame, &points, closed)
    }

    /// A POLYLINE with its vertices: flat, in space, a mesh, or faces.
    pub(crate) fn polyline(&mut self, i: usize, groups: &Groups<'a>, parts: Range<usize>, by: &By) -> Result<(), Stop> {
        let mut places = Vec::new();
        let mut faces: Vec<[i64; 4]> = Vec::new();
        for part in parts {
            let vertex = self.groups(part)?;
            self.charge(1)?;
            let flags = vertex.int(70).unwrap_or(0);
            if flags & 128 != 0 && flags & 64 == 0 {
                faces.push([71, 72, 73, 74].map(|code| vertex.int(code).unwrap_or(0)));
            } else if flags & 16 == 0 {
                // Bit 16 marks the frame of a smoothed line, which is not drawn.
                let at = vertex.point(10).ok_or(Stop::Unusable)?;
                places.push((at, vertex.real(42).unwrap_or(0.0)));
            }
        }
        if groups.flag(70, 64) {
            for face in faces {
                // From 1; negative where the edge is hidden; 0 where there is no fourth.
                let corner = |n: i64| places.get(usize::try_from(n.unsigned_abs()).ok()?.checked_sub(1)?).map(|p| p.0);
                let corners: Vec<DVec3> = face.iter().filter(|&&n| n != 0).map_while(|&n| corner(n)).collect();
                self.face(i, groups, by, &corners)?;
            }
            return Ok(());
        }
        if groups.flag(70, 16) {
            return self.mesh(i, groups, by, &places);
        }
        let closed = groups.flag(70, 1);
        if groups.flag(70, 8) {
            let points: Vec<DVec3> = places.iter().map(|p| p.0).collect();
            return self.line(i, groups, by, &by.frame, &points, closed);
        }
        // A flat one lies at one height, stated at the line or at its vertices.
        let height = groups.real(30).filter(|&z| z != 0.0);
        for (at, _) in &mut places {
            at.z = height.unwrap_or(at.z);
        }
        let frame = by.frame.after(&Frame::facing(groups.facing()).ok_or(Stop::Unusable)?);
        self.bulged(i, groups, by, &frame, &places, closed)
    }

    /// A net of M × N vertices; smoothed ones, which bring more, are not read.
    fn mesh(&mut self, i: usize, groups: &Groups<'a>, by: &By, places: &[(DVec3, f64)]) -> Result<(), Stop> {
        let count = |code| usize::try_from(groups.int(code).unwrap_or(0)).unwrap_or(0);
        let (m, n) = (count(71), count(72));
        if m < 2 || n < 2 || m.checked_mul(n) != Some(places.len()) {
            return Err(Stop::NotRead);
        }
        // Bits 1 and 32: the last row, or column, joins the first.
        let (rows, columns) = (m - usize::from(!groups.flag(70, 1)), n - usize::from(!groups.flag(70, 32)));
        let corner = |r: usize, c: usize| places[(r % m) * n + c % n].0;
        for r in 0..rows {
            for c in 0..columns {
                let corners = [corner(r, c), corner(r, c + 1), corner(r + 1, c + 1), corner(r + 1, c)];
                match self.face(i, groups, by, &corners) {
                    // At a pole two corners are one.
                    Ok(()) | Err(Stop::Unusable) => {}
                    stop => return stop,
                }
            }
        }
        Ok(())
    }
}
