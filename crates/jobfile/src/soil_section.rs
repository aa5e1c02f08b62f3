//! `[[soil]]`: layers under a part of the site or what a code presumes there, and `[[mat]]`: mats that lie ready.

use crate::ids::Ids;
use crate::job_file::all;
use crate::plan_shape_keys::outline;
use crate::quantity_value::Bound::UpTo;
use crate::soil_layers::soil_profile;
use crate::soil_presumed::presumed_soil;
use crate::table::{Faulty, Reader};
use crate::text;
use evidence::{Silent, Source};
use ground::Profile;
use ground::mat_material::{MatMaterial, Spreads, TimberClass};
use ground::mats::Mat;
use planning::{SiteMat, SoilArea};
use quantity::Dimension as D;

pub(crate) fn soils(root: &Reader<'_>) -> Option<Vec<SoilArea>> {
    let mut ids = Ids::default();
    all(root.tables("soil").iter().map(|t| soil(t, &mut ids)).collect())
}

fn soil(t: &Reader<'_>, ids: &mut Ids) -> Option<SoilArea> {
    let id = ids.add(t);
    let name = t.text("name", "name = \"Made ground at the gate\"");
    let area = if t.has("outline") { outline(t).map(Some) } else { Some(None) };
    let presumed = presumed_soil(t);
    let described = t.has("presumed");
    if described && t.has("layer") {
        t.fault("layer", text::EITHER_OR.with("first", "presumed").with("second", "layer"), None);
        return None;
    }
    // Ground that is only described has no layers, no water and no state.
    let profile = if described { Some(Profile::default()) } else { soil_profile(t, &mut Silent) };
    let by = t.text("by", "by = \"G. Soil, trial pit 3\"");
    t.done();
    Some(SoilArea { id: id?, name: name?, area: area?, profile: profile?, presumed: presumed.ok()?, by: by? })
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

/// How a declared mat spreads a load, by the words of files.
pub const MAT_SPREADS: [(&str, Spreads); 2] = [("planks", Spreads::AlongPlanks), ("plate", Spreads::BothWays)];

/// One of three: a strength class of timber, a yield strength of steel, or values that somebody declares.
fn material(t: &Reader<'_>) -> Result<MatMaterial, Faulty> {
    let timber = t.optional("timber").map(|node| t.as_choice(node, "timber", &TimberClass::NAMED).ok_or(Faulty));
    let steel = t.si_or_none("steel_yield", D::Pressure, UpTo(2e9));
    let declared = t.table_or_none("declared").map(|d| {
        let bending = d.si("bending", D::Pressure, UpTo(2e9));
        let shear = d.si("shear", D::Pressure, UpTo(2e9));
        let modulus = d.si("modulus", D::Pressure, UpTo(1e12));
        // Nobody said that it is a plate.
        let spreads = match d.optional("spreads") {
            Some(node) => d.as_choice(node, "spreads", &MAT_SPREADS),
            None => Some(Spreads::AlongPlanks),
        };
        let by = d.text("by", "by = \"M. Mat, maker's declaration\"");
        d.done();
        let source = Source::Person { name: by.ok_or(Faulty)?, statement: String::new() };
        let values = [bending.ok_or(Faulty)?, shear.ok_or(Faulty)?, modulus.ok_or(Faulty)?];
        // Who declares design values has divided them.
        MatMaterial::declared(values, 1.0, spreads.ok_or(Faulty)?, source).map_err(|refusal| {
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
