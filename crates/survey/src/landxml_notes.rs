//! What is said of a surface that was read, and of those to choose from.

use crate::landxml_document::MOST_REPORTED;
use crate::landxml_surface::Made;
use crate::notes::Notes;
use crate::text;
use crate::xml_scan::shown;
use geometry::DVec3;
use quantity::{Dimension, Quantity};

/// Surfaces over the same ground whose height ranges lie farther apart than this do not belong
/// together, m (ours: deeper than the excavations of ordinary sites).
const APART: f64 = 30.0;

/// A stated area that differs by a larger share than this comes from another surface.
const AREA_DIFFERS: f64 = 0.01;

/// Warnings of the surface that was taken; `others`: name and box of the rest.
pub(crate) fn say(made: &Made, others: &[(String, DVec3, DVec3)], notes: &mut Notes<'_>) {
    let facts = &made.facts;
    let doubts = made.tin.doubts();
    let counts = [
        ("survey::invisible-faces", text::FACES_INVISIBLE, facts.invisible as usize, text::DO_CHECK_HOLES),
        ("survey::upright-faces", text::FACES_UPRIGHT, doubts.upright, text::DO_CHECK_SURFACE),
        ("survey::repeated-faces", text::FACES_REPEATED, doubts.repeated, text::DO_CHECK_SURFACE),
        ("survey::overlapping-faces", text::FACES_OVERLAP, doubts.overlapping, text::DO_CHECK_SURFACE),
        ("survey::crossing-breaklines", text::BREAKLINES_CROSS, doubts.crossing, text::DO_CHECK_SURFACE),
        (
            "survey::lines-without-height",
            text::LINES_WITHOUT_HEIGHT,
            if made.has_faces { 0 } else { made.without_height },
            text::DO_CHECK_SURFACE,
        ),
    ];
    for (code, message, count, hint) in counts {
        if count > 0 {
            notes.warn(code, message.with("count", count), hint);
        }
    }
    if doubts.overlaps_uncounted {
        notes.warn("survey::overlapping-faces", text::FACES_OVERLAP_UNCOUNTED, text::DO_CHECK_SURFACE);
    }
    let areas = [
        (text::PLAN_AREA_DIFFERS, facts.declared_plan_area, facts.plan_area),
        (text::SURFACE_AREA_DIFFERS, facts.declared_surface_area, facts.surface_area),
    ];
    for (message, declared, computed) in areas {
        if let Some(declared) = declared.filter(|d| (d - computed).abs() > AREA_DIFFERS * computed) {
            let message = message.with("declared", area(declared)).with("computed", area(computed));
            notes.warn("survey::area-differs", message, text::DO_CHECK_SURFACE);
        }
    }
    let own = (facts.name.clone(), DVec3::from_array(facts.min), DVec3::from_array(facts.max));
    for other in others.iter().take(MOST_REPORTED) {
        warn_apart(&own, other, notes);
    }
}

/// Lists the surfaces to choose from, each on its line.
pub(crate) fn offer(made: &[Made], notes: &mut Notes<'_>) {
    let shown_ones = &made[..made.len().min(MOST_REPORTED)];
    for m in shown_ones {
        let f = &m.facts;
        let message = text::SURFACE_OFFERED
            .with("name", shown(&f.name))
            .with("points", usize::try_from(f.points).unwrap_or(usize::MAX))
            .with("low", quantity::metres(f.min[2]))
            .with("high", quantity::metres(f.max[2]))
            .with("area", area(f.plan_area));
        notes.refuse_line("survey::surface-offered", f.line, message, text::DO_NAME_SURFACE);
    }
    let boxes: Vec<_> = shown_ones
        .iter()
        .map(|m| (m.facts.name.clone(), DVec3::from_array(m.facts.min), DVec3::from_array(m.facts.max)))
        .collect();
    for (i, one) in boxes.iter().enumerate() {
        for other in &boxes[i + 1..] {
            warn_apart(one, other, notes);
        }
    }
}

fn warn_apart(one: &(String, DVec3, DVec3), other: &(String, DVec3, DVec3), notes: &mut Notes<'_>) {
    let common = one.2.min(other.2) - one.1.max(other.1);
    if common.x > 0.0 && common.y > 0.0 && common.z < -APART {
        let message = text::SURFACES_APART
            .with("first", shown(&one.0))
            .with("second", shown(&other.0))
            .with("gap", quantity::metres(-common.z));
        notes.warn("survey::surfaces-apart", message, text::DO_CHECK_HEIGHTS);
    }
}

fn area(square_metres: f64) -> Quantity {
    Quantity::new(square_metres, Dimension::Area)
}
