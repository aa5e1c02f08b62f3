//! `[boom]` of a machine file.

use crate::limits::{BOOM, MACHINE, MASS};
use crate::quantity_value::Bound::{self, UpTo, Within, ZeroTo};
use crate::table::Reader;
use crate::text;
use geometry::DVec2;
use machine::{Boom, Section};
use quantity::{Dimension as D, kilograms, metres, radians};

pub(crate) fn boom(t: &Reader<'_>) -> Option<Boom> {
    let foot = t.fact_point("foot", "foot = [\"-2.60 m\", \"1.90 m\"]", MACHINE);
    let angle = angles(t);
    let extension = t.si("extension", D::Length, ZeroTo(BOOM));
    let head_along = t.si("head_along", D::Length, UpTo(BOOM));
    let head_below = t.si("head_below", D::Length, Within(-5.0, 5.0));
    let carriage_mass = t.si("carriage_mass", D::Mass, UpTo(MASS));
    let carriage_centre = t.fact_point("carriage_centre", "carriage_centre = [\"0.25 m\", \"-0.30 m\"]", MACHINE);
    let depth = t.si("depth", D::Length, UpTo(5.0));
    let flex = t.si("flex", D::Length, ZeroTo(2.0));
    let sections = sections(t);
    t.done();
    if let (Some(along), Some(out)) = (head_along, extension)
        && along + out > BOOM
    {
        let message = text::BOOM_TOO_LONG.with("length", metres(along + out)).with("high", metres(BOOM));
        t.fault("extension", message, Some(text::HINT_UNIT_SLIP.message()));
    }
    let [low, high] = angle?;
    Some(Boom {
        foot: foot?,
        angle_min: radians(low),
        angle_max: radians(high),
        extension_max: metres(extension?),
        sections: sections?,
        head_along: head_along?,
        head_below: head_below?,
        carriage_mass: kilograms(carriage_mass?),
        carriage_centre: carriage_centre?,
        depth: depth?,
        flex: flex?,
    })
}

fn angles(t: &Reader<'_>) -> Option<[f64; 2]> {
    let node = t.required("angle", "angle = [\"-3°\", \"70°\"]")?;
    let certainty = t.sourced(node, "angle");
    let [low, high] = t.as_numbers::<2>(node, "angle", D::Angle, Bound::Any, None)?;
    t.note("angle", node, certainty?);
    let right = std::f64::consts::FRAC_PI_2;
    if !(low < high && low >= -right && high <= right) {
        let message = text::ANGLE_ORDER.with("low", radians(low)).with("high", radians(high));
        t.fault_at(node, "angle", message, None);
        return None;
    }
    Some([low, high])
}

fn sections(t: &Reader<'_>) -> Option<Vec<Section>> {
    t.required("section", "[[boom.section]]")?;
    let read: Option<Vec<Section>> = t
        .tables("section")
        .iter()
        .map(|s| {
            let mass = s.si("mass", D::Mass, UpTo(MASS));
            let centre_along = s.si("centre_along", D::Length, Within(-10.0, BOOM));
            let share = s.si("share", D::Ratio, Within(0.0, 1.0));
            s.done();
            Some(Section { mass: kilograms(mass?), centre_along: centre_along?, share: share? })
        })
        // All sections are read before one that is wrong ends it.
        .collect::<Vec<_>>()
        .into_iter()
        .collect();
    let read = read?;
    // The last section moves the whole extension, and none moves less than the one it slides in.
    let rises = read.windows(2).all(|w| w[0].share <= w[1].share);
    if !rises || read.last().is_none_or(|s| (s.share - 1.0).abs() > 1e-6) {
        t.fault("section", text::SECTION_SHARES, None);
    }
    Some(read)
}

/// A point ahead of and above another, m.
pub(crate) fn ahead_and_up(t: &Reader<'_>, key: &str) -> Option<DVec2> {
    t.fact_point(key, &format!("{key} = [\"0.40 m\", \"-0.65 m\"]"), MACHINE)
}
