//! Masses of a load's parts: stated, by material or density and size, or by pieces.

use crate::limits::MASS;
use crate::load_mass::{Stated, shares};
use crate::nearest::nearest;
use crate::node::Node;
use crate::quantity_value::Bound::{UpTo, Within};
use crate::schema_notes::Kind;
use crate::table::Reader;
use crate::text;
use evidence::{Certainty, Ranged, Reading};
use machine::{ByVolume, DAMP_SHARE, Form, Material, PartMass, Water, material, materials};
use quantity::Dimension as D;

/// A mass of several equal things, with how it came about.
pub(crate) struct PartRead {
    pub(crate) mass_kg: Ranged,
    pub(crate) how: PartMass,
    pub(crate) certainty: Certainty,
    pub(crate) water: Water,
}

/// Greatest density that is read, kg/m³.
pub(crate) const DENSITY: f64 = 25_000.0;

/// Water in a part by the word for its state: share added at most (common practice). In insulation it
/// is a share of the volume, and soaked is full of water (ours; the safe side).
const STATES: [(&str, State); 3] = [("dry", State::Dry), ("damp", State::Damp), ("soaked", State::Soaked)];
const DAMP: f64 = 0.10;
const SOAKED: f64 = 0.30;

/// What is stated by density alone and is lighter than this is taken as insulation, kg/m³ (ours).
const LIGHT: f64 = 300.0;

#[derive(Debug, Clone, Copy)]
enum State {
    Dry,
    Damp,
    Soaked,
}

/// Water in a part: shares of its mass and of its volume at most, and whether somebody stated it.
struct Moisture {
    share: f64,
    volume: f64,
    water: Water,
}

impl Moisture {
    fn stated(share: f64, volume: f64) -> Self {
        let water = if share + volume > 0.0 { Water::Counted } else { Water::NotStated };
        Self { share, volume, water }
    }
}

/// Keys of which a part has exactly one.
const WAYS: [&str; 4] = ["mass", "density", "material", "piece"];

/// The mass of `count` equal things of `volume` m³ each (`None`: size not stated, or with a fault).
pub(crate) fn part_mass(t: &Reader<'_>, stated: Option<&Stated>, volume: Option<f64>, count: f64) -> Option<PartRead> {
    let given: Vec<&str> = WAYS.into_iter().filter(|key| t.has(key)).collect();
    // Asked for in every case, so that a misplaced one is not called unknown.
    for key in ["packing", "moisture", "state", "pieces"] {
        t.has(key);
    }
    match given[..] {
        [] => {
            t.fault("mass", text::ONE_OF.with("first", "mass").with("second", "material"), None);
            None
        }
        ["mass"] => {
            let mass = t.fact("mass", D::Mass, UpTo(MASS))?;
            unused(t, "mass", &["packing", "moisture", "state", "pieces"]);
            let (below, above) = shares(t, "mass", stated, mass.certainty)?;
            Some(PartRead {
                mass_kg: Ranged::shares(mass.si * count, below, above),
                how: PartMass::Stated,
                certainty: mass.certainty,
                water: if mass.certainty == Certainty::Weighed { Water::Counted } else { Water::NotStated },
            })
        }
        ["piece"] => {
            let each = t.fact("piece", D::Mass, UpTo(MASS));
            let pieces = t.count("pieces", "pieces = 40", 1);
            unused(t, "piece", &["packing", "moisture", "state"]);
            let (each, pieces) = (each?, pieces? as f64);
            let (below, above) = shares(t, "piece", stated, each.certainty)?;
            Some(PartRead {
                mass_kg: Ranged::shares(each.si * pieces * count, below, above),
                how: PartMass::Pieces { count: pieces * count, each_kg: each.si },
                certainty: each.certainty,
                water: Water::NotStated,
            })
        }
        ["density"] => {
            let density = t.fact("density", D::Density, UpTo(DENSITY));
            unused(t, "density", &["pieces"]);
            let packing = packing(t, None);
            let density = density?;
            let moisture = moisture(t, None, density.si < LIGHT);
            let (below, above) = shares(t, "density", stated, density.certainty)?;
            let source = evidence::Source::Input {
                place: format!("{} {}", t.document().file(), t.path_of("density")),
                certainty: density.certainty,
            };
            let (packing, moisture, volume) = (packing?, moisture?, volume?);
            let (density_kg, Moisture { share: moisture, volume: soaked, water }) =
                (Ranged::exact(density.si), moisture);
            let box_of = ByVolume { volume, density: density_kg, packing, moisture, soaked, count, source };
            Some(PartRead::by_volume(box_of, (below, above), density.certainty, water))
        }
        // Exactly one, and none of those above.
        [_] => {
            let material = named(t);
            unused(t, "material", &["pieces"]);
            let packing = packing(t, material);
            let moisture = moisture(t, material, material.is_some_and(Material::fills_with_water));
            let material = material?;
            // The row's range is of the material; sizes and gaps come on top of it.
            let (below, above) = shares(t, "material", stated, Certainty::BuiltUp)?;
            let (packing, moisture, volume, source) = (packing?, moisture?, volume?, material.source());
            let (density, Moisture { share: moisture, volume: soaked, water }) = (material.density(), moisture);
            let box_of = ByVolume { volume, density, packing, moisture, soaked, count, source };
            Some(PartRead::by_volume(box_of, (below, above), certainty_of(material), water))
        }
        [first, second, ..] => {
            t.fault(second, text::EITHER_OR.with("first", first).with("second", second), None);
            None
        }
    }
}

/// A density from memory is no better than an estimate.
pub(crate) fn certainty_of(material: &Material) -> Certainty {
    if material.reading == Reading::FromMemory { Certainty::Estimated } else { Certainty::BuiltUp }
}

impl PartRead {
    fn by_volume(box_of: ByVolume, (below, above): (f64, f64), certainty: Certainty, water: Water) -> Self {
        Self { mass_kg: box_of.mass_kg(below, above), how: PartMass::Volume(box_of), certainty, water }
    }
}

/// The material under `material`, by its id; on the input list with its range and list.
pub(crate) fn named(t: &Reader<'_>) -> Option<&'static Material> {
    let node = t.required("material", "material = \"dense-aggregate-concrete-block\"")?;
    by_id(t, node, "material")
}

/// The material whose id stands at `key`.
pub(crate) fn by_id(t: &Reader<'_>, node: &Node, key: &str) -> Option<&'static Material> {
    t.expects(key, || Kind::Words(materials().iter().map(|m| m.id.to_owned()).collect()));
    let id = t.as_text(node, key)?;
    let Some(found) = material(id) else {
        let hint = match nearest(id, materials().iter().map(|m| m.id)) {
            Some(near) => text::HINT_NEAREST.with("nearest", near),
            None => text::HINT_MATERIALS.message(),
        };
        t.fault_at(node, key, text::UNKNOWN_MATERIAL.with("material", id), Some(hint));
        return None;
    };
    let citation = match found.source() {
        evidence::Source::Published { citation, .. } => citation,
        _ => std::borrow::Cow::Borrowed(""),
    };
    let value = format!("{id}: {}–{} kg/m³ ({citation})", found.low, found.high);
    t.document().record_as(t.label_of(key), &t.path_of(key), node.span, value, certainty_of(found));
    Some(found)
}

/// Share of the box that is material. Packs of bars and pipes must state it; what is pressed together
/// must state how many times.
fn packing(t: &Reader<'_>, material: Option<&Material>) -> Option<f64> {
    let form = material.map(|m| m.form);
    let bound = if form == Some(Form::Compressed) { Within(1.0, 20.0) } else { Within(0.01, 1.0) };
    if t.has("packing") {
        return t.si("packing", D::Ratio, bound);
    }
    let note = material.filter(|m| matches!(m.form, Form::Solid | Form::Compressed)).and_then(Material::note);
    match (note, material) {
        (Some(note), Some(material)) => {
            let message = text::NO_PACKING.with("material", material.name);
            t.fault("material", message, Some(note.message()));
            None
        }
        _ => Some(1.0),
    }
}

/// Water in it, at most: as stated, by its state, or what such blocks and timber come with. `fills`: it
/// takes water up by its volume.
fn moisture(t: &Reader<'_>, material: Option<&Material>, fills: bool) -> Option<Moisture> {
    match (t.has("moisture"), t.has("state")) {
        (true, true) => {
            t.fault("state", text::EITHER_OR.with("first", "moisture").with("second", "state"), None);
            None
        }
        (true, false) => t.si("moisture", D::Ratio, Within(0.0, 2.0)).map(|share| Moisture::stated(share, 0.0)),
        (false, true) => {
            let state = t.optional("state").and_then(|node| t.as_choice(node, "state", &STATES))?;
            Some(match (state, fills) {
                (State::Dry, _) => Moisture::stated(0.0, 0.0),
                (State::Damp, true) => Moisture::stated(0.0, DAMP),
                (State::Soaked, true) => Moisture::stated(0.0, 1.0),
                (State::Damp, false) => Moisture::stated(DAMP, 0.0),
                (State::Soaked, false) => Moisture::stated(SOAKED, 0.0),
            })
        }
        (false, false) => match material.filter(|m| m.comes_damp()) {
            None => Some(Moisture { share: 0.0, volume: 0.0, water: Water::NotStated }),
            Some(material) => {
                let share = quantity::Quantity::ratio(DAMP_SHARE);
                let message = text::MOISTURE_ASSUMED.with("material", material.name).with("share", share);
                t.warning("material", message, None);
                let path = t.path_of("moisture");
                let value = format!("{} %", DAMP_SHARE * 100.0);
                t.document().record_as(t.label_of("moisture"), &path, t.span(), value, Certainty::Estimated);
                Some(Moisture { share: DAMP_SHARE, volume: 0.0, water: Water::NotStated })
            }
        },
    }
}

/// Keys that say nothing beside `way` are slips.
fn unused(t: &Reader<'_>, way: &str, keys: &[&'static str]) {
    for key in keys.iter().filter(|key| t.has(key)) {
        t.fault(key, text::EITHER_OR.with("first", way).with("second", *key), None);
    }
}

/// Whether any part makes the whole an estimate.
pub(crate) fn of_all(certainties: impl IntoIterator<Item = Certainty>) -> Certainty {
    let estimated = certainties.into_iter().any(|c| c == Certainty::Estimated);
    if estimated { Certainty::Estimated } else { Certainty::BuiltUp }
}
