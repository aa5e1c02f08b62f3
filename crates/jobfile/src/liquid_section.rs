//! `[load.liquid]`: what runs when its tank tilts.

use crate::answered::choice_or_usual;
use crate::certainty::beside_the_mass;
use crate::limits::LOAD;
use crate::load_mass::{Stated, shares};
use crate::load_part_section::{certainty_of, named};
use crate::quantity_value::Bound::{UpTo, Within};
use crate::table::Reader;
use crate::text;
use evidence::{Certainty, Ranged};
use geometry::DVec3;
use machine::{ByVolume, Liquid, LoadPart, PartMass, Water, liquid};
use quantity::{Dimension as D, kilograms, metres};

/// A liquid with its part of the load.
pub(crate) struct LiquidRead {
    pub(crate) liquid: Liquid,
    pub(crate) part: LoadPart,
    pub(crate) certainty: Certainty,
}

/// `stated`: shares by which masses may be off, where the load states them.
pub(crate) fn liquid(t: &Reader<'_>, stated: Option<&Stated>) -> Option<LiquidRead> {
    let name = t.text("name", "name = \"diesel\"");
    let density = density(t, stated);
    let inside = ["depth", "width", "height"].map(|key| t.aside(beside_the_mass, |t| t.si(key, D::Length, UpTo(LOAD))));
    let fill = t.aside(beside_the_mass, |t| t.si("fill", D::Length, UpTo(LOAD)));
    let at = t.aside(beside_the_mass, |t| t.fact_point_3("at", "at = [\"0.60 m\", \"0 m\", \"0.15 m\"]", LOAD));
    let baffled = t.required("baffled", "baffled = false").and_then(|_| t.yes_no("baffled"));
    let closed = t.required("closed", "closed = true").and_then(|_| t.yes_no("closed"));
    let tilt = choice_or_usual(t, "tilt", D::Angle, Within(0.0, 45_f64.to_radians()), liquid::USUAL_TILT);
    t.done();
    let [depth, width, height] = inside;
    let tank = DVec3::new(depth?, width?, height?);
    let fill = fill?;
    if fill > tank.z {
        t.fault("fill", text::FILL_TOO_HIGH.with("fill", metres(fill)).with("height", metres(tank.z)), None);
        return None;
    }
    let (density, (below, above), source, certainty) = density?;
    let volume = tank.x * tank.y * fill;
    let by = ByVolume { volume, density, packing: 1.0, moisture: 0.0, soaked: 0.0, count: 1.0, source };
    let mass_kg = by.mass_kg(below, above);
    let at = at?;
    let part = LoadPart {
        name: name?,
        mass: kilograms(mass_kg.nominal),
        mass_kg,
        centre: at + DVec3::Z * (fill / 2.0),
        how: PartMass::Volume(by),
        water: Water::NoMatter,
    };
    let liquid = Liquid { mass_kg, tank, at, fill, baffled: baffled?, closed: closed?, tilt: tilt? };
    Some(LiquidRead { liquid, part, certainty })
}

type Density = (Ranged, (f64, f64), evidence::Source, Certainty);

/// By `material` or by `density`.
fn density(t: &Reader<'_>, stated: Option<&Stated>) -> Option<Density> {
    match (t.has("material"), t.has("density")) {
        (true, true) => {
            t.fault("density", text::EITHER_OR.with("first", "material").with("second", "density"), None);
            None
        }
        (false, false) => {
            t.fault("material", text::ONE_OF.with("first", "material").with("second", "density"), None);
            None
        }
        (true, false) => {
            let material = named(t)?;
            let shares = shares(t, "material", stated, Certainty::BuiltUp)?;
            Some((material.density(), shares, material.source(), certainty_of(material)))
        }
        (false, true) => {
            let density = t.fact("density", D::Density, UpTo(25_000.0))?;
            let shares = shares(t, "density", stated, density.certainty)?;
            let place = format!("{} {}", t.document().file(), t.path_of("density"));
            let source = evidence::Source::Input { place, certainty: density.certainty };
            Some((Ranged::exact(density.si), shares, source, density.certainty))
        }
    }
}
