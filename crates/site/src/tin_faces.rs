//! A surface as its designer gives it: points and faces.

use crate::tin::{LARGEST, MOST, covers_ground};
use crate::tin_points::origin_of;
use crate::{Tin, TinDoubts, TinError, tin_overlap};
use geometry::DVec3;
use std::collections::BTreeSet;

impl Tin {
    /// A surface of given faces, whatever their shape and the way they run.
    ///
    /// `points`: x, y, z in m. `faces`: indices of three points each. Left out and counted in
    /// [`Tin::doubts`]: faces that cover no ground in plan (a corner named twice, three corners in
    /// line, upright walls), and faces with the same three points as an earlier one. Faces that
    /// cover part of another are kept and counted; where two disagree by more than 1 cm,
    /// [`Tin::height`] knows no height.
    ///
    /// # Errors
    /// [`TinError::BadCoordinate`], [`TinError::BadFace`] for a point that is not there,
    /// [`TinError::NoFaces`] if no face is left, [`TinError::TooMany`].
    pub fn from_faces(points: &[DVec3], faces: &[[u32; 3]]) -> Result<Self, TinError> {
        if points.len().max(faces.len()) > MOST {
            return Err(TinError::TooMany);
        }
        let bad = |p: &DVec3| !p.is_finite() || p.abs().max_element() > LARGEST;
        if let Some(index) = points.iter().position(bad) {
            return Err(TinError::BadCoordinate { index });
        }
        if let Some(index) = faces.iter().position(|f| f.iter().any(|&i| i as usize >= points.len())) {
            return Err(TinError::BadFace { index });
        }
        let origin = origin_of(points);
        let points: Vec<DVec3> = points.iter().map(|p| *p - origin.extend(0.0)).collect();
        let mut doubts = TinDoubts::default();
        let mut seen = BTreeSet::new();
        let mut triangles = Vec::with_capacity(faces.len());
        for &[a, b, c] in faces {
            let Some(triangle) = [[a, b, c], [a, c, b]].into_iter().find(|t| covers_ground(&points, *t)) else {
                doubts.upright += 1;
                continue;
            };
            let mut same = triangle;
            same.sort_unstable();
            if seen.insert(same) {
                triangles.push(triangle);
            } else {
                doubts.repeated += 1;
            }
        }
        if triangles.is_empty() {
            return Err(TinError::NoFaces);
        }
        let mut tin = Self::of(origin, points, triangles, doubts);
        (tin.doubts.overlapping, tin.doubts.overlaps_uncounted) = tin_overlap::count(&tin);
        Ok(tin)
    }
}
