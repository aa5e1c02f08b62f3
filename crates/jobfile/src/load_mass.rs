//! The mass of a load with its range, and its centre: from parts, a ticket, a scale or a guess.

use crate::certainty::{self, beside_the_mass};
use crate::limits::{LOAD, MASS};
use crate::load_section::size;
use crate::quantity_value::Bound::{UpTo, Within, ZeroTo};
use crate::quantity_value::Fact;
use crate::table::Reader;
use crate::text;
use evidence::{Certainty, Ranged};
use geometry::DVec3;
use machine::{Load, LoadPart, LoadSource};
use quantity::{Dimension as D, kilograms};

/// A mass as read.
pub(crate) struct MassRead {
    pub(crate) mass_kg: Ranged,
    pub(crate) certainty: Certainty,
    pub(crate) centre: DVec3,
    pub(crate) parts: Vec<LoadPart>,
    pub(crate) source: LoadSource,
}

/// Shares below and above by which a mass of that source may be off: weighed 2 %, ticket 5 %, built
/// up 10 %, estimated 25 % (from memory, editable). `None`: the source says nothing of it.
pub fn usual_uncertainty(certainty: Certainty) -> Option<f64> {
    match certainty {
        Certainty::Weighed => Some(0.02),
        Certainty::Ticket => Some(0.05),
        Certainty::BuiltUp => Some(0.10),
        Certainty::Estimated => Some(0.25),
        Certainty::Plate
        | Certainty::Manual
        | Certainty::Chart
        | Certainty::Measured
        | Certainty::Stated
        | Certainty::Invented => None,
    }
}

/// The mass of a load: either `mass` with `centre`, or `[[load.part]]`.
pub(crate) fn read(t: &Reader<'_>) -> Option<MassRead> {
    let stated = uncertainty(t);
    let (whole, parts) = (t.has("mass"), t.has("part"));
    // Asked for in both cases, so that a misplaced one is not called unknown.
    let ticket = t.text_or_none("ticket");
    // What a ticket leaves out is not on it.
    let left_out = t.aside(beside_the_mass, |t| t.fact_or_none("left_out", D::Mass, ZeroTo(MASS)));
    t.has("centre");
    match (whole, parts) {
        (true, true) => {
            t.fault("mass", text::EITHER_OR.with("first", "mass").with("second", "part"), None);
            None
        }
        (false, false) => {
            t.fault("mass", text::ONE_OF.with("first", "mass").with("second", "part"), None);
            None
        }
        (true, false) => from_mass(t, stated, ticket, left_out),
        (false, true) => {
            for key in ["ticket", "left_out", "centre"].into_iter().filter(|key| t.has(key)) {
                t.fault(key, text::EITHER_OR.with("first", key).with("second", "part"), None);
            }
            from_parts(t, stated)
        }
    }
}

/// `uncertainty = "5 %"`, or `{ below = "2 %", above = "8 %" }`.
fn uncertainty(t: &Reader<'_>) -> Option<(f64, f64)> {
    let node = t.optional("uncertainty")?;
    let share = Within(0.0, 1.0);
    if let crate::Value::Table(_) = node.value {
        let u = t.as_table(node, "uncertainty")?;
        let below = u.decision("below", D::Ratio, share);
        let above = u.decision("above", D::Ratio, share);
        u.done();
        return Some((below?, above?));
    }
    t.as_quantity(node, "uncertainty", D::Ratio, share, None).map(|both| (both, both))
}

/// The shares for a value at `key`: those stated, else the usual ones of its source; else a fault.
fn shares(t: &Reader<'_>, key: &str, stated: Option<(f64, f64)>, certainty: Certainty) -> Option<(f64, f64)> {
    let found = stated.or_else(|| usual_uncertainty(certainty).map(|s| (s, s)));
    if found.is_none() {
        let message = text::NO_UNCERTAINTY.with("certainty", certainty::word(certainty));
        t.fault(key, message, Some(text::HINT_EXAMPLE.with("example", "uncertainty = \"5 %\"")));
    }
    found
}

fn from_mass(
    t: &Reader<'_>,
    stated: Option<(f64, f64)>,
    ticket: Option<String>,
    left_out: Option<Fact>,
) -> Option<MassRead> {
    let mass = t.fact("mass", D::Mass, UpTo(MASS));
    let centre =
        t.aside(beside_the_mass, |t| t.fact_point_3("centre", "centre = [\"0.60 m\", \"0 m\", \"0.45 m\"]", LOAD));
    let mass = mass?;
    let by_ticket = mass.certainty == Certainty::Ticket;
    if by_ticket {
        // Tickets leave out the pallet, packing and rain water.
        for (key, example) in [("ticket", "ticket = \"DN-4711\""), ("left_out", "left_out = \"25 kg\"")] {
            if !t.has(key) && !t.document().is_broken() {
                let hint = text::HINT_EXAMPLE.with("example", example);
                t.fault(key, text::TICKET_INCOMPLETE.with("key", key), Some(hint));
            }
        }
    }
    let (below, above) = shares(t, "mass", stated, mass.certainty)?;
    let mass_kg = Ranged::shares(mass.si + left_out.map_or(0.0, |m| m.si), below, above);
    let source = if by_ticket { LoadSource::Ticket(ticket?) } else { LoadSource::Typed };
    Some(MassRead { mass_kg, certainty: mass.certainty, centre: centre?, parts: Vec::new(), source })
}

fn from_parts(t: &Reader<'_>, stated: Option<(f64, f64)>) -> Option<MassRead> {
    let read: Vec<Option<(LoadPart, Ranged, Certainty)>> = t.tables("part").iter().map(|p| part(p, stated)).collect();
    let read: Option<Vec<_>> = read.into_iter().collect();
    let read = read?;
    if read.is_empty() {
        t.fault("part", text::LIST_TOO_SHORT.with("key", "part").with("least", 1_usize).with("found", 0_usize), None);
        return None;
    }
    let mass_kg = read.iter().fold(Ranged::exact(0.0), |sum, (_, mass, _)| sum + *mass);
    let estimated = read.iter().any(|(_, _, c)| *c == Certainty::Estimated);
    let parts: Vec<LoadPart> = read.into_iter().map(|(part, _, _)| part).collect();
    let (_, centre) = Load::combine(&parts);
    let certainty = if estimated { Certainty::Estimated } else { Certainty::BuiltUp };
    Some(MassRead { mass_kg, certainty, centre, parts, source: LoadSource::Parts })
}

/// A part: `mass`, or `density` with `size`; `count` of them on one place.
fn part(t: &Reader<'_>, stated: Option<(f64, f64)>) -> Option<(LoadPart, Ranged, Certainty)> {
    let name = t.text("name", "name = \"blocks, layer 1\"");
    let centre = t.fact_point_3("centre", "centre = [\"0.60 m\", \"0 m\", \"0.30 m\"]", LOAD);
    let count = if t.has("count") { t.count("count", "count = 1", 1) } else { Some(1) };
    let (with_mass, with_density) = (t.has("mass"), t.has("density"));
    let box_size = if t.has("size") { size(t, "size") } else { None };
    let mass: Option<Fact> = match (with_mass, with_density) {
        (true, true) => {
            t.fault("density", text::EITHER_OR.with("first", "mass").with("second", "density"), None);
            None
        }
        (false, false) => {
            t.fault("mass", text::ONE_OF.with("first", "mass").with("second", "density"), None);
            None
        }
        (true, false) => t.fact("mass", D::Mass, UpTo(MASS)),
        (false, true) => {
            let density = t.fact("density", D::Density, UpTo(25_000.0));
            if !t.has("size") {
                t.missing("size", "size = { depth = \"1.20 m\", width = \"1.00 m\", height = \"0.20 m\" }");
            }
            density.and_then(|d| box_size.map(|s| Fact { si: d.si * s.x * s.y * s.z, certainty: d.certainty }))
        }
    };
    t.done();
    let mass = mass?;
    let (below, above) = shares(t, if with_mass { "mass" } else { "density" }, stated, mass.certainty)?;
    let total = mass.si * count? as f64;
    let part = LoadPart { name: name?, mass: kilograms(total), centre: centre? };
    Some((part, Ranged::shares(total, below, above), mass.certainty))
}
