//! Parts of a built-up load, and what they make together.

use crate::text;
use evidence::{Ranged, Source, Step, Trace};
use geometry::DVec3;
use quantity::{Dimension as D, Mass, Quantity, Si};
use std::borrow::Cow;

/// A part of a built-up load.
#[derive(Debug, Clone)]
pub struct LoadPart {
    /// Name for people.
    pub name: String,
    /// Its mass.
    pub mass: Mass,
    /// Its mass with the range it may have, kg.
    pub mass_kg: Ranged,
    /// Its centre in the load's frame, m.
    pub centre: DVec3,
    /// How the mass came about.
    pub how: PartMass,
    /// Whether water in it is in the mass.
    pub water: Water,
}

/// Whether water in a part is in its mass.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Water {
    /// Nobody stated any, and the part may take it up: the mass is that of a dry part.
    NotStated,
    /// Stated and counted, or weighed with the part.
    Counted,
    /// The part is a liquid, or too small a thing to matter: base, bands, film.
    NoMatter,
}

/// How the mass of a part came about.
#[derive(Debug, Clone, PartialEq)]
pub enum PartMass {
    /// Stated whole.
    Stated,
    /// Volume times density.
    Volume(ByVolume),
    /// Pieces, counted.
    Pieces {
        /// How many.
        count: f64,
        /// Mass of one, kg.
        each_kg: f64,
    },
}

/// Volume times density.
#[derive(Debug, Clone, PartialEq)]
pub struct ByVolume {
    /// Volume of the box, m³.
    pub volume: f64,
    /// Density of the material, kg/m³.
    pub density: Ranged,
    /// Share of the box that is material; more than 1 where it is pressed together.
    pub packing: f64,
    /// Share by which water may make it heavier, at most.
    pub moisture: f64,
    /// Share of the box's own volume that water may fill besides, at most.
    pub soaked: f64,
    /// How many such boxes.
    pub count: f64,
    /// Where the density comes from.
    pub source: Source,
}

/// Density of water, kg/m³.
pub const WATER: f64 = 1000.0;

impl ByVolume {
    /// Mass, kg: `m = ρ · V · p · n`, with shares `below` and `above` by which it may be off besides.
    /// Water widens it upward only: by a share of the mass, or by [`WATER`] in a share of the volume.
    pub fn mass_kg(&self, below: f64, above: f64) -> Ranged {
        let amount = self.volume * self.packing * self.count;
        Ranged {
            low: self.density.low * amount * (1.0 - below),
            nominal: self.density.nominal * amount,
            high: self.density.high * amount * (1.0 + above) * (1.0 + self.moisture)
                + WATER * self.soaked * self.volume * self.count,
        }
    }
}

impl LoadPart {
    /// A mass at a point, known exactly.
    pub fn point(mass: Mass, centre: DVec3) -> Self {
        Self {
            name: String::new(),
            mass,
            mass_kg: Ranged::exact(mass.si()),
            centre,
            how: PartMass::Stated,
            water: Water::NotStated,
        }
    }
}

/// Mass and centre of parts: weighted means. (kg, m); a zero centre where nothing weighs.
pub fn combine(parts: &[LoadPart]) -> (f64, DVec3) {
    let mass: f64 = parts.iter().map(|p| p.mass.si()).sum();
    let moment = parts.iter().fold(DVec3::ZERO, |sum, p| sum + p.centre * p.mass.si());
    (mass, if mass > 0.0 { moment / mass } else { DVec3::ZERO })
}

/// Where the combined centre may lie along each axis while each part weighs anything in its range:
/// ahead, left, up, m.
///
/// `Σmᵢxᵢ / Σmᵢ` is monotone in each mass, so that its extremes lie where every part beyond the
/// centre weighs most and every other least, or the other way round (mechanics).
pub fn centre_range(parts: &[LoadPart]) -> [Ranged; 3] {
    let (_, nominal) = combine(parts);
    [0, 1, 2].map(|axis| {
        let far = |sign: f64| sign * farthest(parts.iter().map(|p| (sign * p.centre[axis], p.mass_kg)));
        Ranged { low: far(-1.0).min(nominal[axis]), nominal: nominal[axis], high: far(1.0).max(nominal[axis]) }
    })
}

/// Greatest weighted mean of places whose weights may be anything in their range.
fn farthest(parts: impl Iterator<Item = (f64, Ranged)>) -> f64 {
    let mut parts: Vec<(f64, Ranged)> = parts.collect();
    parts.sort_by(|a, b| b.0.total_cmp(&a.0));
    let (mut mass, mut moment) = parts.iter().fold((0.0, 0.0), |(m, s), (x, w)| (m + w.low, s + w.low * x));
    let mut best = f64::NEG_INFINITY;
    // The farthest first: each in turn weighs most.
    for (x, weight) in parts {
        mass += weight.high - weight.low;
        moment += (weight.high - weight.low) * x;
        if mass > 0.0 {
            best = best.max(moment / mass);
        }
    }
    if best.is_finite() { best } else { 0.0 }
}

/// The working: each part that has a formula, then the whole.
pub fn trace(parts: &[LoadPart], trace: &mut impl Trace) {
    for part in parts {
        match &part.how {
            PartMass::Stated => {}
            PartMass::Volume(v) => trace.step(|| Step {
                title: text::STEP_PART_VOLUME.with("part", &part.name),
                formula: "m = ρ · V · p · n,  up to ρ_m and (1 + w), and 1000 kg/m³ · V · n · v".into(),
                values: vec![
                    ("ρ".into(), Quantity::new(v.density.nominal, D::Density)),
                    ("ρ_m".into(), Quantity::new(v.density.high, D::Density)),
                    ("V".into(), Quantity::new(v.volume, D::Volume)),
                    ("p".into(), Quantity::ratio(v.packing)),
                    ("n".into(), Quantity::number(v.count)),
                    ("w".into(), Quantity::ratio(v.moisture)),
                    ("v".into(), Quantity::ratio(v.soaked)),
                ],
                result: ("m".into(), Quantity::from(part.mass)),
                source: v.source.clone(),
            }),
            PartMass::Pieces { count, each_kg } => trace.step(|| Step {
                title: text::STEP_PART_PIECES.with("part", &part.name),
                formula: "m = n · m_1".into(),
                values: vec![("n".into(), Quantity::number(*count)), ("m_1".into(), Quantity::new(*each_kg, D::Mass))],
                result: ("m".into(), Quantity::from(part.mass)),
                source: Source::Mechanics,
            }),
        }
    }
    let (mass, centre) = combine(parts);
    for (title, axis, symbol) in
        [(text::STEP_CENTRE_AHEAD, 0, "x"), (text::STEP_CENTRE_LEFT, 1, "y"), (text::STEP_CENTRE_UP, 2, "z")]
    {
        // Where all lie on one line there is nothing to reckon.
        if parts.len() < 2 || parts.iter().all(|p| p.centre[axis] == parts[0].centre[axis]) {
            continue;
        }
        trace.step(|| Step {
            title: title.message(),
            formula: format!("{symbol} = Σ(m_i · {symbol}_i) / Σm_i").into(),
            values: centre_values(parts, axis, symbol, mass),
            result: (symbol.into(), Quantity::new(centre[axis], D::Length)),
            source: Source::Mechanics,
        });
    }
}

/// More parts than these are not listed one by one in a step.
const LISTED: usize = 10;

fn centre_values(parts: &[LoadPart], axis: usize, symbol: &str, mass: f64) -> Vec<(Cow<'static, str>, Quantity)> {
    let mut values = Vec::new();
    for (i, part) in parts.iter().enumerate().filter(|_| parts.len() <= LISTED) {
        values.push((format!("m_{}", i + 1).into(), Quantity::from(part.mass)));
        values.push((format!("{symbol}_{}", i + 1).into(), Quantity::new(part.centre[axis], D::Length)));
    }
    values.push(("Σm_i".into(), Quantity::new(mass, D::Mass)));
    values
}
