//! `[load.pallet]`: base, layers from the ground up, wrap.

use crate::certainty::beside_the_mass;
use crate::limits::{LOAD, MASS};
use crate::load_mass::{Stated, shares};
use crate::load_part_section::part_mass;
use crate::load_section::size;
use crate::quantity_value::Bound::{UpTo, Within};
use crate::table::Reader;
use crate::text;
use evidence::{Certainty, Ranged};
use machine::{Layer, LoadPart, Pallet, Stack};
use quantity::Dimension as D;

/// A pallet stacked, and how sure its masses are.
pub(crate) struct PalletRead {
    pub(crate) stack: Stack,
    pub(crate) certainties: Vec<Certainty>,
}

/// `stated`: shares by which masses may be off, where the load states them.
pub(crate) fn pallet(t: &Reader<'_>, stated: Option<&Stated>) -> Option<PalletRead> {
    let base = t
        .table(
            "base",
            "base = { mass = \"25 kg\", size = { depth = \"1.20 m\", width = \"1.00 m\", height = \"0.15 m\" } }",
        )
        .map(|b| {
            let mass = weight(&b, "mass", stated);
            let size = b.aside(beside_the_mass, |b| size(b, "size"));
            b.done();
            Some((mass?, size?))
        });
    let wrap = t.has("wrap").then(|| weight(t, "wrap", stated));
    let overhang = t.decision_or_none("overhang", D::Ratio, Within(0.0, 0.25)).unwrap_or(0.0);
    t.needs("layer");
    let tables = t.tables("layer");
    if tables.is_empty() {
        t.missing("layer", "[[load.pallet.layer]]");
    }
    let layers: Vec<Option<(Layer, Certainty)>> = tables.iter().map(|l| layer(l, stated)).collect();
    t.done();
    let wrap = match wrap {
        None => None,
        Some(read) => Some(read?),
    };
    let ((base_mass, base_certainty), base_size) = base??;
    let layers: Vec<(Layer, Certainty)> = layers.into_iter().collect::<Option<_>>()?;
    if layers.is_empty() {
        return None;
    }
    let mut certainties = vec![base_certainty];
    certainties.extend(wrap.map(|(_, c)| c));
    certainties.extend(layers.iter().map(|(_, c)| *c));
    let pallet = Pallet {
        base: LoadPart::unplaced("", base_mass),
        base_size,
        layers: layers.into_iter().map(|(layer, _)| layer).collect(),
        wrap: wrap.map(|(mass, _)| LoadPart::unplaced("", mass)),
        overhang,
    };
    Some(PalletRead { stack: pallet.stack(), certainties })
}

/// A mass with its range.
fn weight(t: &Reader<'_>, key: &str, stated: Option<&Stated>) -> Option<(Ranged, Certainty)> {
    let mass = t.fact(key, D::Mass, UpTo(MASS))?;
    let (below, above) = shares(t, key, stated, mass.certainty)?;
    Some((Ranged::shares(mass.si, below, above), mass.certainty))
}

fn layer(t: &Reader<'_>, stated: Option<&Stated>) -> Option<(Layer, Certainty)> {
    let name = t.text("name", "name = \"blocks\"");
    let layers = if t.has("layers") { t.count("layers", "layers = 5", 1) } else { Some(1) };
    let size = t.aside(beside_the_mass, |t| size(t, "size"));
    let ahead = t.aside(beside_the_mass, |t| t.si_or_none("ahead", D::Length, Within(-LOAD, LOAD)));
    let left = t.aside(beside_the_mass, |t| t.si_or_none("left", D::Length, Within(-LOAD, LOAD)));
    let mass = part_mass(t, stated, size.map(|s| s.x * s.y * s.z), layers.unwrap_or(1) as f64);
    t.done();
    let (layers, size, mass) = (layers?, size?, mass?);
    if layers as f64 * size.z > LOAD {
        let most = quantity::metres(LOAD);
        t.fault(
            "layers",
            text::TOO_MUCH.with("key", "layers").with("value", layers.to_string()).with("high", most),
            None,
        );
        return None;
    }
    let part = LoadPart { how: mass.how, water: mass.water, ..LoadPart::unplaced(name?, mass.mass_kg) };
    let count = u32::try_from(layers).unwrap_or(1);
    Some((Layer { part, size, count, ahead: ahead.unwrap_or(0.0), left: left.unwrap_or(0.0) }, mass.certainty))
}
