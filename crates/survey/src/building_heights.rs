//! Heights of a building: its roof inside an outline, the ground around it.

use crate::class_heights::{ClassHeights, contains};
use crate::cloud_stream::{open_all, visit_all};
use crate::notes::Notes;
use crate::options::GroundOptions;
use crate::text;
use evidence::Faults;
use geometry::DVec2;

/// Points nearer to the outline than this are eaves, walls and neighbours, m (ours).
const MARGIN: f64 = 0.5;
/// The ground around a building is looked for up to here, m (ours).
const AROUND: f64 = 5.0;
/// The classes of ground and of buildings (LAS 1.4 R15, table 17).
const GROUND: u8 = 2;
const BUILDING: u8 = 6;

/// Heights of a building, m.
#[derive(Debug, Clone, PartialEq)]
pub struct BuildingHeights {
    /// Points of class 6 inside the outline, at least 0.5 m from it.
    pub roof: ClassHeights,
    /// Points of class 2 outside, 0.5 to 5 m from the outline.
    pub ground: ClassHeights,
    /// Warnings; none of them an error.
    pub notes: Faults,
}

impl BuildingHeights {
    /// Highest roof point above the median of the ground around, m; `None` without either.
    pub fn highest_above_ground(&self) -> Option<f64> {
        Some(self.roof.highest()? - self.ground.median()?)
    }
}

/// Roof and ground of the building with this outline (corners in order, m, closed by itself), from
/// one or several clouds. Withheld points are left out.
///
/// # Errors
/// Every fault of every tile; an outline that is none. No points inside is not a fault.
pub fn building_heights(
    tiles: &[(&str, &[u8])],
    outline: &[DVec2],
    options: &GroundOptions,
) -> Result<BuildingHeights, Faults> {
    if outline.len() < 3 || outline.iter().any(|p| !p.is_finite()) {
        let mut notes = Notes::new(tiles.first().map_or("", |t| t.0));
        let refused = notes.refuse("survey::outline", text::OUTLINE_ABSURD, text::DO_GIVE_OUTLINE);
        notes.finish::<()>(Err(refused))?;
    }
    let (opened, mut notes) = open_all(tiles, options)?;
    let low = outline.iter().copied().fold(DVec2::INFINITY, DVec2::min) - DVec2::splat(AROUND);
    let high = outline.iter().copied().fold(DVec2::NEG_INFINITY, DVec2::max) + DVec2::splat(AROUND);
    let (mut roof, mut ground) = (Vec::new(), Vec::new());
    visit_all(&opened, &mut notes, |_, frame, sample| {
        if sample.withheld || !matches!(sample.class, GROUND | BUILDING) {
            return;
        }
        let point = frame.metres(sample.stored);
        let at = point.truncate();
        if !(at.cmpge(low).all() && at.cmple(high).all()) {
            return;
        }
        let distance = distance_to_outline(outline, at);
        let inside = contains(outline, at);
        if sample.class == BUILDING && inside && distance >= MARGIN {
            roof.push(point.z);
        } else if sample.class == GROUND && !inside && (MARGIN..=AROUND).contains(&distance) {
            ground.push(point.z);
        }
    })?;
    Ok(BuildingHeights { roof: ClassHeights::of(roof), ground: ClassHeights::of(ground), notes })
}

fn distance_to_outline(outline: &[DVec2], at: DVec2) -> f64 {
    let edges = outline.iter().enumerate().map(|(i, a)| {
        let along = outline[(i + 1) % outline.len()] - *a;
        let length = along.length_squared();
        let share = if length > 0.0 { ((at - *a).dot(along) / length).clamp(0.0, 1.0) } else { 0.0 };
        (at - *a - along * share).length_squared()
    });
    edges.fold(f64::INFINITY, f64::min).sqrt()
}
