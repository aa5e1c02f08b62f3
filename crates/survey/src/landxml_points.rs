//! Survey points of a LandXML file: where they are, which have heights, and as ground.

use crate::crs::{is_on_earth, is_plausible};
use crate::landxml::{self, MOST_POINTS};
use crate::landxml_document::{Document, Problems, Spot};
use crate::levels::drop_repeated;
use crate::notes::{Notes, Refused};
use crate::options::{GroundOptions, LONGEST_EDGE_LEVELS};
use crate::placement::Settled;
use crate::reading::Facts;
use crate::xml_scan::shown;
use crate::{cloud, text};
use geometry::{DVec2, DVec3};
use site::{Terrain, Tin};
use std::collections::BTreeMap;

/// A height of 0 farther than this from every other height of the file is none (ours), in the
/// file's unit: no ground has such a step, and writers put 0 where nothing was measured.
const FAR_FROM_ZERO: f64 = 10.0;

/// Survey points by name.
pub(crate) struct Places {
    by_name: BTreeMap<String, Vec<(DVec2, Option<f64>)>>,
    /// Heights of 0 mean "no height".
    pub(crate) zero_is_none: bool,
}

impl Places {
    pub(crate) fn new(document: &Document) -> Self {
        let mut by_name: BTreeMap<String, Vec<(DVec2, Option<f64>)>> = BTreeMap::new();
        for point in &document.points {
            if let (Some(name), Some(Spot::At(at, height))) = (&point.name, &point.at) {
                let all = by_name.entry(name.clone()).or_default();
                // A name that stands ten times is as unclear as one that stands twice.
                if all.len() < 10 && !all.contains(&(*at, *height)) {
                    all.push((*at, *height));
                }
            }
        }
        let of_points = document.points.iter().filter_map(|p| match p.at {
            Some(Spot::At(_, height)) => height.filter(|z| *z != 0.0),
            _ => None,
        });
        let of_surfaces = document.surfaces.iter().flat_map(|s| s.all_points().map(|p| p.z));
        let (low, high) = of_points
            .chain(of_surfaces)
            .fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), z| (low.min(z), high.max(z)));
        // Without any other height this holds too: a flat drawing has no heights.
        let zero_is_none = low > FAR_FROM_ZERO || high < -FAR_FROM_ZERO;
        Self { by_name, zero_is_none }
    }

    /// Where it is, in the file's numbers; a name that is unknown or unclear is a problem.
    pub(crate) fn find(&self, spot: &Spot, problems: &mut Problems) -> Option<(DVec2, Option<f64>)> {
        let (at, height) = match spot {
            Spot::At(at, height) => (*at, *height),
            Spot::Named(name, line) => match self.by_name.get(name).map(Vec::as_slice) {
                Some([one]) => *one,
                found => {
                    let id = if found.is_some() { text::REFERENCE_UNCLEAR } else { text::REFERENCE_UNKNOWN };
                    let message = id.with("name", shown(name));
                    problems.add("survey::bad-reference", *line, message, text::DO_MEND_AT_SOURCE);
                    return None;
                }
            },
        };
        Some((at, height.filter(|z| !(self.zero_is_none && *z == 0.0))))
    }
}

/// Says how many survey points have a 0 for a height that is none.
pub(crate) fn note_zeros(document: &Document, places: &Places, notes: &mut Notes<'_>) {
    let is_zero = |p: &&crate::landxml_document::SurveyPoint| matches!(p.at, Some(Spot::At(_, Some(0.0))));
    let zeros = document.points.iter().filter(is_zero).count();
    if places.zero_is_none && zeros > 0 {
        notes.warn("survey::zero-heights", text::ZERO_HEIGHTS.with("count", zeros), text::DO_CHECK_HEIGHTS);
    }
}

/// The survey points as levels.
pub(crate) fn ground(
    document: &mut Document,
    settled: &Settled,
    options: &GroundOptions,
    notes: &mut Notes<'_>,
) -> Result<(Terrain, Facts), Refused> {
    let placement = &settled.placement;
    let places = Places::new(document);
    note_zeros(document, &places, notes);
    let mut problems = Problems::default();
    let mut points: Vec<(DVec3, u64)> = Vec::new();
    for point in &document.points {
        let found = point.at.as_ref().and_then(|spot| places.find(spot, &mut problems));
        let Some((at, Some(height))) = found else { continue };
        let at = placement.point(at.extend(height));
        if is_on_earth(at) && is_plausible(at.z) {
            points.push((at, point.line));
        } else {
            let message = text::ROW_IMPLAUSIBLE.with("height", quantity::metres(at.z));
            problems.add("survey::bad-point", point.line, message, text::DO_MEND_AT_SOURCE);
        }
    }
    std::mem::take(&mut document.point_problems).report(notes);
    problems.report(notes);
    drop_repeated(&mut points, notes);
    if notes.any_error() {
        return Err(Refused);
    }
    if points.len() > MOST_POINTS {
        let message = text::TOO_MANY_POINTS.with("points", points.len()).with("most", MOST_POINTS);
        return Err(notes.refuse("survey::too-many-points", message, text::DO_CUT_OUT));
    }
    let (min, max) =
        points.iter().fold((DVec3::INFINITY, DVec3::NEG_INFINITY), |(low, high), (p, _)| (low.min(*p), high.max(*p)));
    let too_few = |notes: &mut Notes<'_>, points: usize| {
        let message = text::TOO_FEW_POINTS.with("points", points);
        notes.refuse("survey::too-few-points", message, text::DO_MORE_POINTS)
    };
    if points.len() < 3 {
        return Err(too_few(notes, points.len()));
    }
    let facts = Facts {
        points: document.points.len() as u64,
        ground_points: points.len() as u64,
        min: min.to_array(),
        max: max.to_array(),
        ..landxml::facts(settled)
    };
    let longest = options.longest_edge.unwrap_or(LONGEST_EDGE_LEVELS);
    let window = options.window.map(|w| w.grown(longest));
    let kept: Vec<DVec3> =
        points.into_iter().map(|p| p.0).filter(|p| window.is_none_or(|w| w.contains(p.truncate()))).collect();
    cloud::refuse_empty_window(&kept, &facts, notes)?;
    let tin = Tin::new(&kept, longest).map_err(|_| too_few(notes, kept.len()))?;
    Ok((Terrain::Tin(tin), facts))
}
