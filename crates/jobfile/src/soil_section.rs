//! `[[soil]]`: layers under a part of the site, and `[[mat]]`: mats that lie ready.

use crate::ids::Ids;
use crate::job_file::all;
use crate::limits::SITE;
use crate::plan_shape_keys::{Known, or_unknown, outline};
use crate::quantity_value::Bound::{Any, UpTo, Within, ZeroTo};
use crate::table::{Faulty, Reader};
use crate::text;
use evidence::{Ranged, Silent, Source};
use ground::mat_material::{MatMaterial, Spreads, TimberClass};
use ground::mats::Mat;
use ground::{GroundState, Layer, Profile, Refusal, Stated, Stiffness, site_tests};
use planning::{SiteMat, SoilArea};
use quantity::Dimension as D;

const STATES: [(&str, GroundState); 4] = [
    ("as-stated", GroundState::AsStated),
    ("wetted", GroundState::Wetted),
    ("thawing", GroundState::Thawing),
    ("measured-frozen", GroundState::MeasuredFrozen),
];

pub(crate) fn soils(root: &Reader<'_>) -> Option<Vec<SoilArea>> {
    let mut ids = Ids::default();
    all(root.tables("soil").iter().map(|t| soil(t, &mut ids)).collect())
}

fn soil(t: &Reader<'_>, ids: &mut Ids) -> Option<SoilArea> {
    let id = ids.add(t);
    let name = t.text("name", "name = \"Made ground at the gate\"");
    let area = if t.has("outline") { outline(t).map(Some) } else { Some(None) };
    let water = or_unknown(t, "water", "water = \"1.20 m\" or water = \"unknown\"", ZeroTo(SITE));
    let state = t.optional("state").map_or(Some(GroundState::AsStated), |node| t.as_choice(node, "state", &STATES));
    let tables = t.tables("layer");
    if tables.is_empty() {
        t.fault("layer", text::SOIL_WITHOUT_LAYER, None);
    }
    let mut top = 0.0;
    let layers: Vec<Option<Layer>> = tables
        .iter()
        .enumerate()
        .map(|(i, l)| {
            let layer = layer(l, top, i + 1 == tables.len())?;
            top = layer.bottom();
            Some(layer)
        })
        .collect();
    let by = t.text("by", "by = \"G. Soil, trial pit 3\"");
    t.done();
    let layers = all(layers)?;
    let profile = Profile { layers, water: water.ok()?.map(|Known(depth)| depth), state: state? };
    let faults = profile.faults("");
    for fault in &faults.list {
        let key = fault.place.key.clone().unwrap_or_default();
        let (number, key) = key.strip_prefix("layer[").and_then(|k| k.split_once("].")).unwrap_or(("", &key));
        let at = number.parse().ok().and_then(|i: usize| tables.get(i)).unwrap_or(t);
        at.fault(job_key(key), fault.message.clone(), fault.hint.clone());
    }
    (!faults.any_error()).then_some(())?;
    (!tables.is_empty()).then_some(())?;
    Some(SoilArea { id: id?, name: name?, area: area?, profile, by: by? })
}

/// The key of a job file by that of the engine.
fn job_key(key: &str) -> &str {
    match key {
        "water_depth" => "water",
        "friction_angle" => "friction",
        other => other,
    }
}

fn layer(t: &Reader<'_>, top: f64, last: bool) -> Option<Layer> {
    // The last may go on: somebody answers for what is below.
    let thickness =
        if last && !t.has("thickness") { Some(f64::INFINITY) } else { t.si("thickness", D::Length, UpTo(100.0)) };
    let unit_weight = t.si("unit_weight", D::UnitWeight, Any);
    let undrained = strength(t);
    let cohesion = t.si_or_none("cohesion", D::Pressure, Any);
    let friction = t.si_or_none("friction", D::Angle, Any);
    let modulus = t.si_or_none("modulus", D::Pressure, Any);
    let poisson = t.si_or_none("poisson", D::Number, Within(0.0, 0.5));
    if cohesion.is_some() && friction.is_none() && !t.has("friction") {
        t.fault("cohesion", text::COHESION_ALONE, None);
    }
    t.done();
    let drained = friction.map(|f| (cohesion.unwrap_or(0.0), f));
    // Poisson's ratio of soils that nobody has measured: 0.5 undrained settles least, 0.3 is usual (from memory).
    let stiffness = modulus.map(|modulus| Stiffness { modulus, poisson: poisson.unwrap_or(0.3) });
    let stated = Stated { undrained: undrained.ok()?, drained };
    Some(Layer { top, thickness: thickness?, unit_weight: unit_weight?, stated, stiffness })
}

/// Undrained strength, stated or from one test: the low end of what the correlation gives. Pa.
fn strength(t: &Reader<'_>) -> Result<Option<f64>, Faulty> {
    let stated = t.si_or_none("undrained_strength", D::Pressure, Any);
    let cbr = t.si_or_none("cbr", D::Ratio, UpTo(1.0));
    let vane = t.si_or_none("vane", D::Pressure, UpTo(1e6));
    let plasticity = t.si_or_none("plasticity", D::Ratio, ZeroTo(2.0));
    let penetrometer = t.si_or_none("penetration_per_blow", D::Length, UpTo(1.0));
    let given = ["undrained_strength", "cbr", "vane", "penetration_per_blow"];
    let there: Vec<&str> = given.into_iter().filter(|key| t.has(key)).collect();
    if let [first, second, ..] = there[..] {
        t.fault(second, text::EITHER_OR.with("first", first).with("second", second), None);
        return Err(Faulty);
    }
    let from = |key: &str, found: Result<Ranged, Refusal>| match found {
        Ok(range) => Ok(Some(range.low)),
        Err(refusal) => {
            t.fault(key, refusal.message(), None);
            Err(Faulty)
        }
    };
    match (stated, cbr, vane, penetrometer) {
        (Some(c_u), ..) => Ok(Some(c_u)),
        // The correlation takes CBR in per cent.
        (_, Some(share), ..) => from("cbr", site_tests::cbr(share * 100.0, &mut Silent)),
        (_, _, Some(reading), _) => {
            let index = plasticity.map(|p| p * 100.0);
            from("vane", site_tests::hand_vane(reading, index, &mut Silent))
        }
        (_, _, _, Some(p)) => from("penetration_per_blow", penetrated(p)),
        _ if there.is_empty() => Ok(None),
        _ => Err(Faulty),
    }
}

/// Penetrometer to CBR, its low end to strength. `per_blow` in m.
fn penetrated(per_blow: f64) -> Result<Ranged, Refusal> {
    let ratio = site_tests::cone_penetrometer(per_blow, &mut Silent)?;
    site_tests::cbr(ratio.low, &mut Silent)
}

pub(crate) fn mats(root: &Reader<'_>, ids: &mut Ids) -> Option<Vec<SiteMat>> {
    all(root.tables("mat").iter().map(|t| mat(t, ids)).collect())
}

fn mat(t: &Reader<'_>, ids: &mut Ids) -> Option<SiteMat> {
    let id = ids.add(t);
    let name = t.text("name", "name = \"Oak mat\"");
    let length = t.si("length", D::Length, UpTo(10.0));
    let width = t.si("width", D::Length, UpTo(10.0));
    let thickness = t.si("thickness", D::Length, UpTo(0.5));
    let material = material(t);
    t.done();
    let mat = Mat { size: [length?, width?], thickness: thickness?, material: material.ok()? };
    Some(SiteMat { id: id?, name: name?, mat })
}

/// One of three: a strength class of timber, a yield strength of steel, or values that somebody declares.
fn material(t: &Reader<'_>) -> Result<MatMaterial, Faulty> {
    let timber = t.optional("timber").map(|node| t.as_choice(node, "timber", &TimberClass::NAMED).ok_or(Faulty));
    let steel = t.si_or_none("steel_yield", D::Pressure, UpTo(2e9));
    let declared = t.table_or_none("declared").map(|d| {
        let bending = d.si("bending", D::Pressure, UpTo(2e9));
        let shear = d.si("shear", D::Pressure, UpTo(2e9));
        let modulus = d.si("modulus", D::Pressure, UpTo(1e12));
        let by = d.text("by", "by = \"M. Mat, maker's declaration\"");
        d.done();
        let source = Source::Person { name: by.ok_or(Faulty)?, statement: String::new() };
        let values = [bending.ok_or(Faulty)?, shear.ok_or(Faulty)?, modulus.ok_or(Faulty)?];
        // Who declares design values has divided them.
        MatMaterial::declared(values, 1.0, Spreads::BothWays, source).map_err(|refusal| {
            t.fault("declared", refusal.message(), None);
            Faulty
        })
    });
    let there: Vec<&str> = ["timber", "steel_yield", "declared"].into_iter().filter(|key| t.has(key)).collect();
    match there[..] {
        [_] => {}
        [] => {
            t.fault("timber", text::MAT_OF_WHAT, None);
            return Err(Faulty);
        }
        [first, second, ..] => {
            t.fault(second, text::EITHER_OR.with("first", first).with("second", second), None);
            return Err(Faulty);
        }
    }
    match (timber, steel, declared) {
        (Some(class), ..) => Ok(MatMaterial::timber(class?)),
        (_, Some(yields), _) => MatMaterial::steel_plate(yields).map_err(|refusal| {
            t.fault("steel_yield", refusal.message(), None);
            Faulty
        }),
        (_, _, Some(declared)) => declared,
        _ => Err(Faulty),
    }
}
