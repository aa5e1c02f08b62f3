//! What job files and `calc buried` state alike of a buried thing: kind, cover, what its owner allows, wall, ground around it.

use crate::node::Value;
use crate::plan_shape_keys::depth;
use crate::quantity_value::Bound::{UpTo, Within};
use crate::schema_notes::Kind;
use crate::table::{Faulty, Reader};
use crate::text;
use evidence::Ranged;
use ground::buried::FlexiblePipe;
use quantity::Dimension as D;
use site::{BuriedKind, GroundAround, PipeWall};

/// Kinds of buried things as written in files.
pub(crate) const KINDS: [(&str, BuriedKind); 7] = [
    ("pipe", BuriedKind::Pipe),
    ("cable", BuriedKind::Cable),
    ("culvert", BuriedKind::Culvert),
    ("tank", BuriedKind::Tank),
    ("basement", BuriedKind::Basement),
    ("backfill", BuriedKind::Backfill),
    ("void", BuriedKind::Void),
];

/// Bedding factor where nobody states one: the worst of the usual 0.083 to 0.110 (from memory).
const BEDDING: f64 = 0.11;
/// Deflection lag factor where nobody states one: the worst of the usual 1.0 to 1.5 (from memory).
const LAG: f64 = 1.5;

/// What is known of a buried thing, wherever it lies. SI.
#[derive(Debug, Clone, PartialEq)]
pub struct BuriedKeys {
    /// What it is.
    pub kind: BuriedKind,
    /// Ground above its crown, m; `None`: not known.
    pub cover: Option<Ranged>,
    /// Pressure at its crown that its owner allows, Pa; `None`: not known.
    pub allowed_pressure: Option<f64>,
    /// How a pipe's or culvert's wall behaves; `None`: nobody has said.
    pub wall: Option<PipeWall>,
    /// What a named person says of the ground around it.
    pub around: Option<GroundAround>,
}

/// Reads `kind`, `cover`, `allowed_pressure`, `wall`, `around`; none where a fault was noted.
pub fn buried_keys(t: &Reader<'_>) -> Option<BuriedKeys> {
    let kind = t.choice("kind", &KINDS);
    let cover = depth(t, "cover", "cover = \"0.90 m\" or cover = \"unknown\"");
    let allowed_pressure = t.si_or_none("allowed_pressure", D::Pressure, UpTo(1e8));
    let unread = t.has("allowed_pressure") && allowed_pressure.is_none();
    let wall = wall(t);
    let around = around(t);
    let walled = matches!(kind, None | Some(BuriedKind::Pipe | BuriedKind::Culvert));
    if t.has("wall") && !walled {
        t.fault("wall", text::WALL_OF_WHAT, None);
        return None;
    }
    let keys = BuriedKeys { kind: kind?, cover: cover.ok()?, allowed_pressure, wall: wall.ok()?, around: around.ok()? };
    (!unread).then_some(keys)
}

/// `"rigid"`, or a table of what the deflection of a flexible pipe needs.
fn wall(t: &Reader<'_>) -> Result<Option<PipeWall>, Faulty> {
    let Some(node) = t.optional("wall") else { return Ok(None) };
    t.expects("wall", || Kind::Words(vec!["rigid".into()]));
    if let Value::Table(_) = node.value {
        let w = t.as_table(node, "wall").ok_or(Faulty)?;
        let pipe = flexible(&w);
        w.done();
        return pipe.map(|pipe| Some(PipeWall::Flexible(pipe)));
    }
    t.as_choice(node, "wall", &[("rigid", PipeWall::Rigid)]).map(Some).ok_or(Faulty)
}

fn flexible(w: &Reader<'_>) -> Result<FlexiblePipe, Faulty> {
    let diameter = w.si("diameter", D::Length, Within(0.02, 20.0));
    let ring = w.si_or_none("ring_stiffness", D::Pressure, Within(100.0, 1e7));
    let thickness = w.si_or_none("thickness", D::Length, UpTo(1.0));
    let modulus = w.si_or_none("modulus", D::Pressure, Within(1e7, 1e12));
    let soil = w.si("soil_modulus", D::Pressure, Within(0.0, 1e8));
    let deflection = w.si_or_none("deflection", D::Ratio, Within(1e-4, 0.3));
    let bedding = w.si_or_none("bedding", D::Number, Within(0.083, 0.11));
    let lag = w.si_or_none("lag", D::Number, Within(1.0, 2.0));
    let wrong = [("ring_stiffness", ring), ("thickness", thickness), ("modulus", modulus)]
        .into_iter()
        .chain([("deflection", deflection), ("bedding", bedding), ("lag", lag)])
        .any(|(key, value)| w.has(key) && value.is_none());
    let by_ring = w.has("ring_stiffness");
    if by_ring && (w.has("thickness") || w.has("modulus")) {
        let second = if w.has("thickness") { "thickness" } else { "modulus" };
        w.fault(second, text::EITHER_OR.with("first", "ring_stiffness").with("second", second), None);
        return Err(Faulty);
    }
    if !by_ring {
        if !w.has("thickness") {
            w.missing("thickness", "thickness = \"12 mm\" with modulus, or ring_stiffness = \"8 kPa\"");
        }
        if !w.has("modulus") {
            w.missing("modulus", "modulus = \"1000 MPa\" with thickness, or ring_stiffness = \"8 kPa\"");
        }
    }
    let diameter = diameter.ok_or(Faulty)?;
    let wall = match (ring, thickness.zip(modulus)) {
        // Ring stiffness S = E·I/D³ by the mean diameter (ISO 9969, from memory).
        (Some(ring), _) => ring * diameter * diameter * diameter,
        // A plain wall: I = t³/12 for each metre of pipe (mechanics).
        (None, Some((t, e))) => e * t * t * t / 12.0,
        (None, None) => return Err(Faulty),
    };
    if wrong {
        return Err(Faulty);
    }
    Ok(FlexiblePipe {
        radius: diameter / 2.0,
        wall,
        soil: soil.ok_or(Faulty)?,
        bedding: bedding.unwrap_or(BEDDING),
        lag: lag.unwrap_or(LAG),
        allowable: deflection,
    })
}

/// `{ fresh_fill = false, voids = false, by = "…" }`; what is left out is not said.
fn around(t: &Reader<'_>) -> Result<Option<GroundAround>, Faulty> {
    let Some(a) = t.table_or_none("around") else {
        return if t.has("around") { Err(Faulty) } else { Ok(None) };
    };
    let fresh_fill = a.yes_no("fresh_fill");
    let voids = a.yes_no("voids");
    let by = a.text("by", "by = \"G. Soil, trial pit 4\"");
    a.done();
    let wrong = (a.has("fresh_fill") && fresh_fill.is_none()) || (a.has("voids") && voids.is_none());
    if wrong { Err(Faulty) } else { Ok(Some(GroundAround { fresh_fill, voids, by: by.ok_or(Faulty)? })) }
}
