//! Undrained strength of a soil: stated, or from one test on site.

use crate::quantity_value::Bound::{Any, UpTo, ZeroTo};
use crate::soil_layers::alone;
use crate::table::{Faulty, Reader};
use crate::text;
use evidence::{Ranged, Trace};
use ground::site_tests::{self, PlateTest};
use quantity::Dimension as D;

/// Key of a plate load test.
pub(crate) const PLATE: &str = "plate";

/// Keys of which one gives the strength.
const SOURCES: [&str; 6] = ["undrained_strength", "cbr", "vane", "penetration_per_blow", "cone_index", PLATE];

/// A plate load test, where there is one.
///
/// # Errors
/// [`Faulty`] where it could not be read.
pub(crate) fn plate(t: &Reader<'_>) -> Result<Option<PlateTest>, Faulty> {
    let Some(p) = t.table_or_none(PLATE) else {
        return if t.has(PLATE) { Err(Faulty) } else { Ok(None) };
    };
    let diameter = p.si("diameter", D::Length, UpTo(2.0));
    let pressure = p.si("pressure", D::Pressure, UpTo(1e7));
    let settlement = p.si("settlement", D::Length, UpTo(0.5));
    p.done();
    match (diameter, pressure, settlement) {
        (Some(diameter), Some(pressure), Some(settlement)) => Ok(Some(PlateTest { diameter, pressure, settlement })),
        _ => Err(Faulty),
    }
}

/// `undrained_strength`, or one of `cbr`, `vane` with `plasticity`, `penetration_per_blow`, `cone_index` and the plate load test:
/// `c_u` as a range, Pa, with the steps of the correlation. Stated: that value alone. The low end counts.
///
/// # Errors
/// [`Faulty`] where a fault was noted: two of them, one that cannot be read, one outside its correlation.
pub fn undrained_strength(t: &Reader<'_>, trace: &mut impl Trace) -> Result<Option<Ranged>, Faulty> {
    let plate = plate(t);
    let found = strength(t, plate.as_ref().ok().copied().flatten(), trace);
    plate.and(found)
}

/// As [`undrained_strength`], of a table whose plate load test is read.
pub(crate) fn strength(
    t: &Reader<'_>,
    plate: Option<PlateTest>,
    trace: &mut impl Trace,
) -> Result<Option<Ranged>, Faulty> {
    let stated = t.si_or_none("undrained_strength", D::Pressure, Any);
    let cbr = t.si_or_none("cbr", D::Ratio, UpTo(1.0));
    let vane = t.si_or_none("vane", D::Pressure, UpTo(1e6));
    let plasticity = t.si_or_none("plasticity", D::Ratio, ZeroTo(2.0));
    let per_blow = t.si_or_none("penetration_per_blow", D::Length, UpTo(1.0));
    let cone = t.si_or_none("cone_index", D::Pressure, UpTo(1e7));
    // Without a vane it would be read and counted nowhere.
    let useless = alone(t, "plasticity", &["vane"]);
    let unread = t.has("plasticity") && plasticity.is_none();
    let there: Vec<&str> = SOURCES.into_iter().filter(|key| t.has(key)).collect();
    if let [first, second, ..] = there[..] {
        t.fault(second, text::EITHER_OR.with("first", first).with("second", second), None);
        return Err(Faulty);
    }
    if useless || unread {
        return Err(Faulty);
    }
    let Some(key) = there.first() else { return Ok(None) };
    let found = match (stated, cbr, vane, per_blow, cone, plate) {
        (Some(c_u), ..) => Ok(Ranged::exact(c_u)),
        // Correlations take shares in per cent.
        (_, Some(share), ..) => site_tests::cbr(share * 100.0, trace),
        (_, _, Some(reading), ..) => site_tests::hand_vane(reading, plasticity.map(|p| p * 100.0), trace),
        // Penetrometer to CBR, of that the low end to strength.
        (_, _, _, Some(per_blow), ..) => {
            site_tests::cone_penetrometer(per_blow, trace).and_then(|ratio| site_tests::cbr(ratio.low, trace))
        }
        (.., Some(index), _) => site_tests::cone_index(index, trace),
        (.., Some(test)) => test.undrained(trace),
        _ => return Err(Faulty),
    };
    found.map(Some).map_err(|refusal| {
        t.fault(key, refusal.message(), None);
        Faulty
    })
}
