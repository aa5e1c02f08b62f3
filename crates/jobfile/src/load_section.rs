//! `[[load]]`: loads from parts, from a ticket, weighed or estimated.

use crate::certainty::{beside_the_mass, of_a_factor};
use crate::ids::Ids;
use crate::job_file::{all, at_least_one};
use crate::limits::{BOOM, LOAD, MASS};
use crate::load_mass::{self, MassRead};
use crate::quantity_value::Bound::{UpTo, Within, ZeroTo};
use crate::table::Reader;
use crate::text;
use evidence::{Certainty, Ranged, TextId};
use geometry::DVec3;
use machine::{Hanging, Load};
use quantity::{Dimension as D, kilograms, metres, radians};

/// Shape factor of sheets and panels (from memory), taken where the job states none.
pub const SHEET_WIND_FACTOR: f64 = 1.8;

const CONDITIONS: [(&str, Option<bool>); 3] = [("sound", Some(true)), ("unsound", Some(false)), ("not-seen", None)];

pub(crate) fn loads(root: &Reader<'_>, ids: &mut Ids) -> Option<Vec<Load>> {
    at_least_one(root, "load");
    all(root.tables("load").iter().map(|t| load(t, ids)).collect())
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

fn load(t: &Reader<'_>, ids: &mut Ids) -> Option<Load> {
    let id = ids.add(t);
    let name = t.text("name", "name = \"Pallet of blocks\"");
    let size = t.aside(beside_the_mass, |t| size(t, "size"));
    let mass = load_mass::read(t);
    let centre_error = t.aside(beside_the_mass, |t| t.si("centre_error", D::Length, ZeroTo(LOAD)));
    let condition_seen = t.choice("condition", &CONDITIONS);
    let wind_factor = t.aside(of_a_factor, |t| t.si_or_none("wind_factor", D::Number, Within(0.1, 3.0)));
    let hanging = t.aside(beside_the_mass, |t| t.table_or_none("hanging").map(|h| hanging(&h)));
    t.done();

    let hanging = match hanging {
        None => None,
        Some(read) => Some(read?),
    };
    let (id, size, mass) = (id?, size?, mass?);
    let MassRead { mut mass_kg, certainty, centre, parts, source } = mass;
    if let Some(h) = &hanging {
        let rigging = quantity::Si::si(&h.rigging);
        mass_kg = mass_kg + Ranged::exact(rigging);
    }
    inside(t, centre, size, hanging.is_some());
    let wind_factor = wind_factor.unwrap_or_else(|| assumed_wind_factor(t, &id));
    let error = centre_error?;
    Some(Load {
        id,
        name: name?,
        mass_kg,
        certainty,
        centre_ahead: Ranged::plus_minus(centre.x, error),
        centre_left: Ranged::plus_minus(centre.y, error),
        centre_up: Ranged::plus_minus(centre.z, error),
        depth: size.x,
        width: size.y,
        height: size.z,
        parts,
        source,
        hanging,
        condition_seen: condition_seen?,
        wind_factor,
    })
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
            let key = if t.has("part") { "part" } else { "centre" };
            t.fault(key, message, None);
        }
    }
}

fn hanging(t: &Reader<'_>) -> Option<Hanging> {
    let rigging = t.si("rigging", D::Mass, ZeroTo(MASS));
    let drop = t.si("drop", D::Length, UpTo(BOOM));
    let legs = t.count("legs", "legs = 2", 1);
    // Read up to nearly flat: a sling spread too far is a finding of the plan, not a fault of the file.
    let leg_angle = t.si("leg_angle", D::Angle, Within(0.0, 89_f64.to_radians()));
    let leg_limit = t.si("leg_limit", D::Mass, UpTo(MASS));
    let tag_lines = t.required("tag_lines", "tag_lines = true").and_then(|_| t.yes_no("tag_lines"));
    t.done();
    Some(Hanging {
        rigging: kilograms(rigging?),
        drop: drop?,
        legs: u32::try_from(legs?).unwrap_or(1),
        leg_angle: radians(leg_angle?),
        leg_limit: kilograms(leg_limit?),
        tag_lines: tag_lines?,
    })
}
