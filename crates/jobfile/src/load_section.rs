//! `[[load]]`: loads from parts, a pallet or a tank, from a ticket, weighed or estimated.

use crate::certainty::{beside_the_mass, of_a_factor};
use crate::feet_section::feet;
use crate::hanging_section::hanging;
use crate::ids::Ids;
use crate::job_file::{all, at_least_one};
use crate::limits::LOAD;
use crate::load_mass::{self, MassRead};
use crate::quantity_value::Bound::{UpTo, Within, ZeroTo};
use crate::table::Reader;
use crate::text;
use evidence::{Certainty, Ranged, TextId};
use geometry::DVec3;
use ground::pallet_feet::Feet;
use machine::{Defect, Load};
use quantity::{Dimension as D, metres};

/// Shape factor of sheets and panels (from memory), taken where the job states none.
pub const SHEET_WIND_FACTOR: f64 = 1.8;

const CONDITIONS: [(&str, Option<bool>); 3] = [("sound", Some(true)), ("unsound", Some(false)), ("not-seen", None)];

/// The loads of the job file, and behind them those of a list.
pub(crate) fn loads(root: &Reader<'_>, list: Option<&Reader<'_>>, ids: &mut Ids) -> Option<Vec<(Load, Option<Feet>)>> {
    if list.is_none() {
        at_least_one(root, "load");
    }
    let mut tables = root.tables("load");
    tables.extend(list.map(|list| list.tables("load")).unwrap_or_default());
    all(tables.iter().map(|t| load(t, ids)).collect())
}

/// Depth, width, height of a box, m.
pub(crate) fn size(t: &Reader<'_>, key: &str) -> Option<DVec3> {
    let example = format!("{key} = {{ depth = \"1.20 m\", width = \"1.00 m\", height = \"0.90 m\" }}");
    let s = t.table(key, &example)?;
    let depth = s.si("depth", D::Length, UpTo(LOAD));
    let width = s.si("width", D::Length, UpTo(LOAD));
    let height = s.si("height", D::Length, UpTo(LOAD));
    s.done();
    Some(DVec3::new(depth?, width?, height?))
}

fn load(t: &Reader<'_>, ids: &mut Ids) -> Option<(Load, Option<Feet>)> {
    let id = ids.add(t);
    let name = t.text("name", "name = \"Pallet of blocks\"");
    // A pallet that is built up knows its size.
    let stated_size = (t.has("size") || !t.has("pallet")).then(|| t.aside(beside_the_mass, |t| size(t, "size")));
    let mass = load_mass::read(t);
    let centre_error = t.aside(beside_the_mass, |t| t.si("centre_error", D::Length, ZeroTo(LOAD)));
    let sag = t.aside(beside_the_mass, |t| t.si_or_none("sag", D::Length, ZeroTo(SAG)));
    let condition_seen = t.choice("condition", &CONDITIONS);
    let defects = defects(t);
    let wind_factor = t.aside(of_a_factor, |t| t.si_or_none("wind_factor", D::Number, Within(0.1, 3.0)));
    let hanging = t.aside(beside_the_mass, |t| t.table_or_none("hanging").map(hanging));
    let feet_table = t.aside(beside_the_mass, |t| t.table_or_none("feet"));
    t.done();

    let hanging = match hanging {
        None => None,
        Some(read) => Some(read?),
    };
    let (id, mass) = (id?, mass?);
    let size = match (stated_size, mass.stacked) {
        (Some(size), stacked) => {
            let size = size?;
            if let Some(stacked) = stacked {
                holds(t, size, stacked);
            }
            size
        }
        (None, stacked) => stacked?,
    };
    let MassRead { mut mass_kg, certainty, centre, parts, source, base_width, overhangs, liquid, .. } = mass;
    if let Some(h) = &hanging {
        mass_kg = mass_kg + h.hanging.rigging_kg;
    }
    inside(t, DVec3::from_array(centre.map(|c| c.nominal)), size, hanging.is_some());
    let wind_factor = wind_factor.unwrap_or_else(|| assumed_wind_factor(t, &id));
    let error = centre_error?;
    let [centre_ahead, centre_left, centre_up] = centre.map(|c| c + Ranged::plus_minus(0.0, error));
    if let Some(h) = &hanging {
        h.check_reach(h.hanging.drop + size.z - centre_up.low);
    }
    let feet = match feet_table {
        None => None,
        Some(f) => Some(feet(&f, [size.x, size.y])?),
    };
    let load = Load {
        id,
        name: name?,
        mass_kg,
        certainty,
        centre_ahead,
        centre_left,
        centre_up,
        depth: size.x,
        width: size.y,
        height: size.z,
        base_width,
        parts,
        source,
        hanging: hanging.map(|read| read.hanging),
        condition_seen: condition_seen?,
        defects: defects?,
        overhangs,
        liquid,
        sag,
        wind_factor,
    };
    Some((load, feet))
}

/// Ends of a load do not hang lower than that: more is a slip, m.
const SAG: f64 = 5.0;

/// `defects = ["wet"]`; left out: none were seen.
fn defects(t: &Reader<'_>) -> Option<Vec<Defect>> {
    let Some(node) = t.optional("defects") else { return Some(Vec::new()) };
    let items = t.as_list(node, "defects")?;
    all(items.iter().map(|item| t.as_choice(item, "defects", &Defect::ALL)).collect())
}

/// A pack that is larger than the size stated for it: one of them is wrong.
fn holds(t: &Reader<'_>, stated: DVec3, stacked: DVec3) {
    let axes = [(text::AXIS_AHEAD, 0), (text::AXIS_LEFT, 1), (text::AXIS_UP, 2)];
    for (axis, i) in axes.into_iter().filter(|(_, i)| stacked[*i] > stated[*i] + 1e-6) {
        let message = text::PALLET_LARGER
            .with("axis", axis)
            .with("stacked", metres(stacked[i]))
            .with("stated", metres(stated[i]));
        t.fault("size", message, None);
    }
}

/// Nothing silent: the assumption is a warning, and a line of the input list marked as estimated.
fn assumed_wind_factor(t: &Reader<'_>, id: &str) -> f64 {
    let factor = quantity::Quantity::number(SHEET_WIND_FACTOR);
    t.warning("wind_factor", text::WIND_FACTOR_ASSUMED.with("load", id).with("factor", factor), None);
    let path = t.path_of("wind_factor");
    let value = SHEET_WIND_FACTOR.to_string();
    t.document().record_as(t.label_of("wind_factor"), &path, t.span(), value, Certainty::Estimated);
    SHEET_WIND_FACTOR
}

/// A centre outside the load is a slip. Hung loads count ahead from the middle, others from the
/// face against the forks.
fn inside(t: &Reader<'_>, centre: DVec3, size: DVec3, hung: bool) {
    let half = size * 0.5;
    let ahead = if hung { (-half.x, half.x) } else { (0.0, size.x) };
    let axes: [(TextId, f64, (f64, f64)); 3] = [
        (text::AXIS_AHEAD, centre.x, ahead),
        (text::AXIS_LEFT, centre.y, (-half.y, half.y)),
        (text::AXIS_UP, centre.z, (0.0, size.z)),
    ];
    for (axis, value, (low, high)) in axes {
        // Parts placed flush with a face may be a rounding beyond it.
        if value < low - 1e-6 || value > high + 1e-6 {
            let message = text::CENTRE_OUTSIDE_LOAD
                .with("axis", axis)
                .with("centre", metres(value))
                .with("low", metres(low))
                .with("high", metres(high));
            let key = ["part", "pallet", "liquid"].into_iter().find(|key| t.has(key) && !t.has("centre"));
            let key = key.unwrap_or("centre");
            t.fault(key, message, None);
        }
    }
}
