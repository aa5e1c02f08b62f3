//! The mass of a load with its range, and its centre: from parts, a ticket, a scale or a guess.

use crate::answered::{answered, below_usual};
use crate::certainty::{self, beside_the_mass};
use crate::limits::{LOAD, MASS};
use crate::liquid_section::{LiquidRead, liquid};
use crate::load_part_section::{of_all, part_mass};
use crate::load_section::size;
use crate::pallet_section::{PalletRead, pallet};
use crate::quantity_value::Bound::{UpTo, Within, ZeroTo};
use crate::quantity_value::Fact;
use crate::schema_notes::Kind;
use crate::table::Reader;
use crate::text;
use evidence::{Certainty, Ranged};
use geometry::DVec3;
use machine::{Liquid, LoadPart, LoadSource, Overhang, load_part};
use quantity::{Dimension as D, kilograms};
use std::cell::Cell;

/// A mass as read.
pub(crate) struct MassRead {
    pub(crate) mass_kg: Ranged,
    pub(crate) certainty: Certainty,
    /// Centre ahead, left, up, with what the ranges of parts and a running liquid make of it, m.
    pub(crate) centre: [Ranged; 3],
    pub(crate) parts: Vec<LoadPart>,
    pub(crate) source: LoadSource,
    /// Size of a pallet as stacked, m.
    pub(crate) stacked: Option<DVec3>,
    /// Width of a pallet's base, m.
    pub(crate) base_width: Option<f64>,
    pub(crate) overhangs: Vec<Overhang>,
    pub(crate) liquid: Option<Liquid>,
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

/// The mass of a load: either `mass` with `centre`, or `[[load.part]]`, `[load.pallet]` and
/// `[load.liquid]` in any mixture. A liquid beside `mass` is part of it.
pub(crate) fn read(t: &Reader<'_>) -> Option<MassRead> {
    let stated = uncertainty(t);
    let read = read_with(t, stated.as_ref());
    if let Some(s) = &stated {
        let usual = s.usual.get();
        below_usual(t, "uncertainty", s.below.min(s.above), usual, D::Ratio, s.answered);
    }
    read
}

fn read_with(t: &Reader<'_>, stated: Option<&Stated>) -> Option<MassRead> {
    let whole = t.has("mass");
    let built = ["part", "pallet", "liquid"].into_iter().find(|key| t.has(key) && !(whole && *key == "liquid"));
    // Asked for in both cases, so that a misplaced one is not called unknown.
    let ticket = t.text_or_none("ticket");
    // What a ticket leaves out is not on it.
    let left_out = t.aside(beside_the_mass, |t| t.fact_or_none("left_out", D::Mass, ZeroTo(MASS)));
    t.has("centre");
    match (whole, built) {
        (true, Some(built)) => {
            t.fault("mass", text::EITHER_OR.with("first", "mass").with("second", built), None);
            None
        }
        (false, None) => {
            t.fault("mass", text::ONE_OF.with("first", "mass").with("second", "part"), None);
            None
        }
        (true, None) => from_mass(t, stated, ticket, left_out),
        (false, Some(built)) => {
            for key in ["ticket", "left_out", "centre"].into_iter().filter(|key| t.has(key)) {
                t.fault(key, text::EITHER_OR.with("first", key).with("second", built), None);
            }
            from_parts(t, stated)
        }
    }
}

/// The `uncertainty` of a load.
pub(crate) struct Stated {
    below: f64,
    above: f64,
    /// Somebody answers for less than the usual.
    answered: bool,
    /// The greatest usual share of the masses that it was taken for.
    usual: Cell<f64>,
}

/// `uncertainty = "5 %"`, or `{ value = "1 %", by = "…" }`, or `{ below = "2 %", above = "8 %" }`, with
/// `by` where less than usual.
fn uncertainty(t: &Reader<'_>) -> Option<Stated> {
    let node = t.optional("uncertainty")?;
    let share = Within(0.0, 1.0);
    let usual = Cell::new(0.0);
    t.expects("uncertainty", || Kind::Quantity { dimension: D::Ratio, bound: share });
    if let crate::Value::Table(_) = node.value {
        let u = t.as_table(node, "uncertainty")?;
        let answered = answered(&u);
        let (below, above) = if u.has("value") {
            let both = u.decision("value", D::Ratio, share);
            for key in ["below", "above"].into_iter().filter(|key| u.has(key)) {
                u.fault(key, text::EITHER_OR.with("first", "value").with("second", key), None);
            }
            (both, both)
        } else {
            (u.decision("below", D::Ratio, share), u.decision("above", D::Ratio, share))
        };
        u.done();
        return Some(Stated { below: below?, above: above?, answered, usual });
    }
    let both = t.as_quantity(node, "uncertainty", D::Ratio, share, None)?;
    Some(Stated { below: both, above: both, answered: false, usual })
}

/// The shares for a value at `key`: those stated, else the usual ones of its source; else a fault.
pub(crate) fn shares(t: &Reader<'_>, key: &str, stated: Option<&Stated>, certainty: Certainty) -> Option<(f64, f64)> {
    let usual = usual_uncertainty(certainty);
    if let (Some(stated), Some(usual)) = (stated, usual) {
        stated.usual.set(stated.usual.get().max(usual));
    }
    let found = stated.map(|s| (s.below, s.above)).or_else(|| usual.map(|s| (s, s)));
    if found.is_none() {
        let message = text::NO_UNCERTAINTY.with("certainty", certainty::word(certainty));
        t.fault(key, message, Some(text::HINT_EXAMPLE.with("example", "uncertainty = \"5 %\"")));
    }
    found
}

fn from_mass(
    t: &Reader<'_>,
    stated: Option<&Stated>,
    ticket: Option<String>,
    left_out: Option<Fact>,
) -> Option<MassRead> {
    let mass = t.fact("mass", D::Mass, UpTo(MASS));
    let centre =
        t.aside(beside_the_mass, |t| t.fact_point_3("centre", "centre = [\"0.60 m\", \"0 m\", \"0.45 m\"]", LOAD));
    let liquid = read_liquid(t, stated);
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
    let liquid = liquid.ok()?.map(|read| read.liquid);
    if let Some(liquid) = liquid.as_ref().filter(|l| l.mass_kg.low > mass_kg.high) {
        let message = text::LIQUID_HEAVIER
            .with("liquid", kilograms(liquid.mass_kg.nominal))
            .with("mass", kilograms(mass_kg.nominal));
        t.fault("liquid", message, None);
        return None;
    }
    let mut centre = centre?.to_array().map(Ranged::exact);
    // Of a mass stated as a whole the rest is least where the whole weighs least and the liquid most.
    let rest = liquid.as_ref().map_or(0.0, |l| (mass_kg.low - l.mass_kg.high).max(0.0));
    widen(&mut centre, liquid.as_ref(), rest);
    Some(MassRead {
        mass_kg,
        certainty: mass.certainty,
        centre,
        parts: Vec::new(),
        source,
        stacked: None,
        base_width: None,
        overhangs: Vec::new(),
        liquid,
    })
}

/// `Err` where it is there and has a fault.
fn read_liquid(t: &Reader<'_>, stated: Option<&Stated>) -> Result<Option<LiquidRead>, crate::table::Faulty> {
    if !t.has("liquid") {
        return Ok(None);
    }
    t.table_or_none("liquid").and_then(|l| liquid(&l, stated)).map(Some).ok_or(crate::table::Faulty)
}

fn from_parts(t: &Reader<'_>, stated: Option<&Stated>) -> Option<MassRead> {
    let parts: Vec<Option<(LoadPart, Certainty)>> = t.tables("part").iter().map(|p| part(p, stated)).collect();
    let pallet: Option<Option<PalletRead>> =
        t.has("pallet").then(|| t.table_or_none("pallet").and_then(|p| pallet(&p, stated)));
    let liquid = read_liquid(t, stated);
    if t.has("part") && parts.is_empty() {
        t.fault("part", text::LIST_TOO_SHORT.with("key", "part").with("least", 1_usize).with("found", 0_usize), None);
        return None;
    }
    let (mut parts, mut certainties): (Vec<_>, Vec<_>) =
        parts.into_iter().collect::<Option<Vec<_>>>()?.into_iter().unzip();
    let (mut stacked, mut base_width, mut overhangs) = (None, None, Vec::new());
    if let Some(read) = pallet {
        let PalletRead { mut stack, certainties: of_pallet } = read?;
        certainties.extend(of_pallet);
        if t.has("hanging") {
            // Hung loads count ahead from the middle of the load.
            for part in &mut stack.parts {
                part.centre.x -= stack.size.x / 2.0;
            }
        }
        parts.append(&mut stack.parts);
        stacked = Some(stack.size);
        base_width = Some(stack.base_width);
        overhangs = stack.overhangs;
    }
    let liquid = liquid.ok()?.map(|read| {
        parts.push(read.part);
        certainties.push(read.certainty);
        read.liquid
    });
    let mass_kg = parts.iter().fold(Ranged::exact(0.0), |sum, p| sum + p.mass_kg);
    if mass_kg.high > MASS {
        let message = text::TOO_MUCH
            .with("key", "mass")
            .with("value", quantity::Quantity::from(kilograms(mass_kg.nominal)))
            .with("high", kilograms(MASS));
        let key = ["part", "pallet", "liquid"].into_iter().find(|key| t.has(key)).unwrap_or("part");
        t.fault(key, message, Some(text::HINT_UNIT_SLIP.message()));
        return None;
    }
    let mut centre = load_part::centre_range(&parts);
    let rest = liquid.as_ref().map_or(0.0, |l| (mass_kg.low - l.mass_kg.low).max(0.0));
    widen(&mut centre, liquid.as_ref(), rest);
    Some(MassRead {
        mass_kg,
        certainty: of_all(certainties),
        centre,
        parts,
        source: LoadSource::Parts,
        stacked,
        base_width,
        overhangs,
        liquid,
    })
}

/// What a running liquid adds to where the centre may lie: its shift times its greatest share of the
/// mass, beside the least that everything else may weigh, kg.
fn widen(centre: &mut [Ranged; 3], liquid: Option<&Liquid>, rest: f64) {
    let Some(liquid) = liquid else { return };
    let share = liquid.mass_kg.high / (liquid.mass_kg.high + rest);
    let [ahead, left] = liquid.shifts();
    for (range, shift) in centre.iter_mut().zip([ahead.along, left.along]) {
        range.low -= shift * share;
        range.high += shift * share;
    }
    centre[2].high += (ahead.up + left.up) * share;
}

/// A part: `mass`, or `material` or `density` with `size`; `count` of them on one place.
fn part(t: &Reader<'_>, stated: Option<&Stated>) -> Option<(LoadPart, Certainty)> {
    let name = t.text("name", "name = \"blocks, layer 1\"");
    let centre = t.fact_point_3("centre", "centre = [\"0.60 m\", \"0 m\", \"0.30 m\"]", LOAD);
    let count = if t.has("count") { t.count("count", "count = 1", 1) } else { Some(1) };
    let box_size = if t.has("size") { size(t, "size") } else { None };
    if (t.has("density") || t.has("material")) && !t.has("size") {
        t.missing("size", "size = { depth = \"1.20 m\", width = \"1.00 m\", height = \"0.20 m\" }");
    }
    let mass = part_mass(t, stated, box_size.map(|s| s.x * s.y * s.z), count.unwrap_or(1) as f64);
    t.done();
    let (mass, _) = (mass?, count?);
    let part = LoadPart {
        name: name?,
        mass: kilograms(mass.mass_kg.nominal),
        mass_kg: mass.mass_kg,
        centre: centre?,
        how: mass.how,
        water: mass.water,
    };
    Some((part, mass.certainty))
}
