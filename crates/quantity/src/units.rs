//! Every unit that can be typed or printed, with its exact factor to the coherent SI unit.
//!
//! Factors are the definitions: NIST Special Publication 811 (2008), annex B.8, where bold factors are exact;
//! the international foot and pound of 1959; CGPM 1901 for standard gravity. Each is checked in
//! `tests/conversions.rs` and against `uom`.

use crate::{Dimension, STANDARD_GRAVITY};
use core::f64::consts::PI;

/// International foot, m (NIST SP 811 B.8; exact).
pub const FOOT: f64 = 0.3048;
/// International inch, m (exact).
pub const INCH: f64 = 0.0254;
/// US survey foot, m: 1200/3937 (NIST SP 811 B.6; deprecated since 2023, but older surveys are in it).
pub const US_SURVEY_FOOT: f64 = 1200.0 / 3937.0;
/// Avoirdupois pound, kg (exact).
pub const POUND: f64 = 0.453_592_37;
/// Pound-force, N: one pound under standard gravity (exact).
pub const POUND_FORCE: f64 = POUND * STANDARD_GRAVITY;

/// How a number in a unit becomes a number in SI.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) enum Conversion {
    /// `si = factor · value`.
    Factor(f64),
    /// A slope from an angle: `si = tan(factor · value)`.
    Tangent(f64),
    /// An angle from a slope: `si = atan(factor · value)`.
    ArcTangent(f64),
}

/// One unit of one dimension.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Unit {
    pub(crate) dimension: Dimension,
    pub(crate) conversion: Conversion,
    /// A thousandth of this unit is never written in this trade, so that `1.200` with it is more likely
    /// one thousand two hundred, written by a reader of the decimal comma.
    pub(crate) coarse: bool,
    /// How it is written; the first is the one we suggest. Normalised: see [`normalise`].
    pub(crate) spellings: &'static [&'static str],
}

const fn unit(dimension: Dimension, factor: f64, spellings: &'static [&'static str]) -> Unit {
    Unit { dimension, conversion: Conversion::Factor(factor), coarse: false, spellings }
}

const fn coarse(dimension: Dimension, factor: f64, spellings: &'static [&'static str]) -> Unit {
    Unit { dimension, conversion: Conversion::Factor(factor), coarse: true, spellings }
}

use Dimension as D;

/// The table. Order within a dimension: the most usual first.
pub(crate) const UNITS: &[Unit] = &[
    unit(D::Length, 1.0, &["m", "metre", "metres", "meter", "meters", "metro", "metros"]),
    coarse(D::Length, 1e-3, &["mm", "millimetre", "millimetres", "millimeter", "millimeters"]),
    unit(D::Length, 1e-2, &["cm", "centimetre", "centimetres", "centimeter", "centimeters"]),
    unit(D::Length, 1e3, &["km", "kilometre", "kilometres", "kilometer", "kilometers"]),
    unit(D::Length, FOOT, &["ft", "foot", "feet", "'", "′", "’"]),
    unit(D::Length, INCH, &["in", "inch", "inches", "\"", "″", "”", "''", "in."]),
    unit(D::Length, 3.0 * FOOT, &["yd", "yard", "yards"]),
    unit(D::Length, 5280.0 * FOOT, &["mi", "mile", "miles"]),
    unit(D::Length, US_SURVEY_FOOT, &["ftUS", "US survey foot", "US survey feet", "US survey ft", "us-ft"]),
    unit(D::Area, 1.0, &["m2", "sq m"]),
    coarse(D::Area, 1e-6, &["mm2", "sq mm"]),
    unit(D::Area, 1e-4, &["cm2", "sq cm"]),
    unit(D::Area, FOOT * FOOT, &["ft2", "sq ft", "sqft"]),
    unit(D::Area, INCH * INCH, &["in2", "sq in"]),
    unit(D::Area, 9.0 * FOOT * FOOT, &["yd2", "sq yd"]),
    unit(D::Volume, 1.0, &["m3", "cu m"]),
    unit(D::Volume, 1e-3, &["L", "l", "litre", "litres", "liter", "liters", "dm3"]),
    unit(D::Volume, 1e-6, &["cm3", "mL", "ml"]),
    unit(D::Volume, FOOT * FOOT * FOOT, &["ft3", "cu ft"]),
    unit(D::Volume, 27.0 * FOOT * FOOT * FOOT, &["yd3", "cu yd"]),
    unit(D::Volume, 231.0 * INCH * INCH * INCH, &["US gal", "US gallon", "US gallons"]),
    coarse(D::Mass, 1.0, &["kg", "kilogram", "kilograms", "kilo", "kilos"]),
    unit(D::Mass, 1e3, &["t", "tonne", "tonnes", "metric ton", "metric tons"]),
    coarse(D::Mass, 1e-3, &["g", "gram", "grams"]),
    coarse(D::Mass, POUND, &["lb", "lbs", "pound", "pounds", "lb.", "lbs.", "lbm"]),
    unit(D::Mass, POUND / 16.0, &["oz", "ounce", "ounces"]),
    unit(D::Mass, 2000.0 * POUND, &["short ton", "short tons", "US ton", "US tons"]),
    unit(D::Mass, 2240.0 * POUND, &["long ton", "long tons", "UK ton", "UK tons"]),
    unit(D::Angle, PI / 180.0, &["°", "deg", "degree", "degrees", "º"]),
    unit(D::Angle, 1.0, &["rad", "radian", "radians"]),
    unit(D::Angle, 1e-3, &["mrad"]),
    unit(D::Slope, 0.01, &["%", "percent"]),
    unit(D::Slope, 0.001, &["‰", "mm/m"]),
    Unit {
        dimension: D::Slope,
        conversion: Conversion::Tangent(PI / 180.0),
        coarse: false,
        spellings: &["°", "deg", "degree", "degrees", "º"],
    },
    Unit { dimension: D::Slope, conversion: Conversion::Tangent(1.0), coarse: false, spellings: &["rad"] },
    unit(D::Ratio, 0.01, &["%", "percent"]),
    unit(D::Ratio, 0.001, &["‰"]),
    Unit { dimension: D::Angle, conversion: Conversion::ArcTangent(0.01), coarse: false, spellings: &["%", "percent"] },
    coarse(D::Force, 1.0, &["N", "newton", "newtons"]),
    unit(D::Force, 1e3, &["kN", "kilonewton", "kilonewtons"]),
    unit(D::Force, 1e6, &["MN"]),
    coarse(D::Force, POUND_FORCE, &["lbf"]),
    unit(D::Force, 1000.0 * POUND_FORCE, &["kip", "kips", "kipf"]),
    coarse(D::Force, STANDARD_GRAVITY, &["kgf", "kp"]),
    unit(D::Force, 1000.0 * STANDARD_GRAVITY, &["tf"]),
    coarse(D::Moment, 1.0, &["N·m", "N m", "Nm", "N-m"]),
    unit(D::Moment, 1e3, &["kN·m", "kN m", "kNm", "kN-m"]),
    coarse(
        D::Moment,
        POUND_FORCE * FOOT,
        &[
            "lbf·ft", "lbf ft", "lbf-ft", "ft·lbf", "ft lbf", "ft-lbf", "lb·ft", "lb ft", "lb-ft", "ft·lb", "ft lb",
            "ft-lb",
        ],
    ),
    unit(D::Moment, 1000.0 * POUND_FORCE * FOOT, &["kip·ft", "kip ft", "kip-ft", "ft·kip", "ft-kip"]),
    coarse(D::Pressure, 1.0, &["Pa", "N/m2", "pascal", "pascals"]),
    unit(D::Pressure, 1e3, &["kPa", "kN/m2"]),
    unit(D::Pressure, 1e6, &["MPa", "N/mm2", "MN/m2"]),
    unit(D::Pressure, 1e5, &["bar"]),
    unit(D::Pressure, POUND_FORCE / (INCH * INCH), &["psi", "lbf/in2", "lb/in2"]),
    coarse(D::Pressure, POUND_FORCE / (FOOT * FOOT), &["lbf/ft2", "psf", "lb/ft2"]),
    unit(D::Pressure, 1000.0 * POUND_FORCE / (FOOT * FOOT), &["ksf", "kip/ft2"]),
    unit(D::Pressure, 1000.0 * POUND_FORCE / (INCH * INCH), &["ksi", "kip/in2"]),
    coarse(D::Pressure, STANDARD_GRAVITY, &["kgf/m2", "kg/m2"]),
    unit(D::Pressure, STANDARD_GRAVITY * 1e4, &["kgf/cm2", "kg/cm2"]),
    unit(D::Pressure, STANDARD_GRAVITY * 1e3, &["tf/m2", "t/m2"]),
    unit(D::Speed, 1.0, &["m/s"]),
    unit(D::Speed, 1.0 / 3.6, &["km/h", "kph", "kmh"]),
    unit(D::Speed, 5280.0 * FOOT / 3600.0, &["mph", "mi/h", "MPH", "Mph"]),
    unit(D::Speed, FOOT, &["ft/s", "fps"]),
    unit(D::Speed, 1852.0 / 3600.0, &["kn", "kt", "kts", "knot", "knots"]),
    coarse(D::Voltage, 1.0, &["V", "volt", "volts"]),
    unit(D::Voltage, 1e3, &["kV", "kilovolt", "kilovolts"]),
    unit(D::Density, 1.0, &["kg/m3"]),
    unit(D::Density, 1e3, &["t/m3", "g/cm3", "kg/L", "kg/l", "kg/dm3"]),
    unit(D::Density, POUND / (FOOT * FOOT * FOOT), &["lb/ft3", "pcf", "lbf/ft3"]),
    unit(D::Density, POUND / (27.0 * FOOT * FOOT * FOOT), &["lb/yd3"]),
    unit(D::Density, 1e3 / STANDARD_GRAVITY, &["kN/m3"]),
    unit(D::Density, 1.0 / STANDARD_GRAVITY, &["N/m3"]),
    unit(D::Stiffness, 1e3, &["kN/m", "N/mm"]),
    coarse(D::Stiffness, 1.0, &["N/m"]),
    unit(D::Stiffness, 1e6, &["kN/mm", "MN/m"]),
    unit(D::Stiffness, POUND_FORCE / FOOT, &["lbf/ft", "lb/ft"]),
    unit(D::Stiffness, POUND_FORCE / INCH, &["lbf/in", "lb/in"]),
    unit(D::UnitWeight, 1e3, &["kN/m3"]),
    unit(D::UnitWeight, 1.0, &["N/m3"]),
    unit(D::UnitWeight, POUND_FORCE / (FOOT * FOOT * FOOT), &["lbf/ft3", "pcf", "lb/ft3"]),
    unit(D::SecondMoment, 1.0, &["m4"]),
    unit(D::SecondMoment, 1e-8, &["cm4"]),
    unit(D::SecondMoment, 1e-12, &["mm4"]),
    unit(D::SecondMoment, INCH * INCH * INCH * INCH, &["in4"]),
];

/// Units that people use for two different things, with what they may mean.
pub(crate) const AMBIGUOUS: &[(Dimension, &[&str], &[&str])] = &[
    (D::Mass, &["ton", "tons", "T", "tn"], &["t", "short ton", "long ton"]),
    (D::Volume, &["gal", "gallon", "gallons"], &["US gal", "L"]),
];

/// Units to show as examples where none was written or the one written is not known.
pub fn unit_examples(dimension: Dimension) -> &'static [&'static str] {
    match dimension {
        D::Length => &["m", "mm", "ft", "in"],
        D::Area => &["m²", "ft²"],
        D::Volume => &["m³", "L", "ft³"],
        D::Mass => &["kg", "t", "lb", "short ton"],
        D::Angle => &["deg", "rad", "%"],
        D::Slope => &["%", "1:8", "deg"],
        D::Ratio => &["%"],
        D::Number => &[],
        D::Force => &["kN", "N", "lbf"],
        D::Moment => &["kN·m", "lbf·ft"],
        D::Pressure => &["kPa", "bar", "psi", "psf"],
        D::Speed => &["m/s", "km/h", "mph"],
        D::Voltage => &["kV", "V"],
        D::Density => &["kg/m³", "kN/m³", "lb/ft³"],
        D::Stiffness => &["kN/m", "lbf/in"],
        D::UnitWeight => &["kN/m³", "lbf/ft³"],
        D::SecondMoment => &["cm⁴", "in⁴"],
    }
}

/// One way of writing a unit for one meaning: `m²`, `m^2` and `m 2` differ only here.
pub(crate) fn normalise(unit: &str) -> String {
    let mut out = String::with_capacity(unit.len());
    for c in unit.trim().chars() {
        match c {
            '²' => out.push('2'),
            '³' => out.push('3'),
            '⁴' => out.push('4'),
            '^' => {}
            '⋅' | '*' | '∙' | '•' => out.push('·'),
            '⁄' | '∕' => out.push('/'),
            c if c.is_whitespace() => {
                if !out.ends_with([' ', '/', '·']) {
                    out.push(' ');
                }
            }
            '/' | '·' if out.ends_with(' ') => {
                out.pop();
                out.push(c);
            }
            c => out.push(c),
        }
    }
    out
}

/// What a written unit turned out to be.
pub(crate) enum Found {
    /// The unit of the wanted dimension.
    Unit(&'static Unit),
    /// It may mean any of these.
    Ambiguous(&'static [&'static str]),
    /// It is a unit of another dimension.
    Other(Dimension),
    /// It is no unit that we know.
    Nothing,
}

/// Looks up a written unit. Upper and lower case may be mixed up where that cannot change the meaning:
/// not for single letters, and not after m or M (milli or mega).
pub(crate) fn find(written: &str, dimension: Dimension) -> Found {
    let wanted = normalise(written);
    if let Some(unit) = UNITS.iter().find(|u| u.dimension == dimension && u.spellings.contains(&wanted.as_str())) {
        return Found::Unit(unit);
    }
    if let Some((.., choices)) =
        AMBIGUOUS.iter().find(|(d, names, _)| *d == dimension && names.iter().any(|n| same(n, &wanted)))
    {
        return Found::Ambiguous(choices);
    }
    if let Some(unit) = UNITS.iter().find(|u| u.dimension == dimension && u.spellings.iter().any(|s| same(s, &wanted)))
    {
        return Found::Unit(unit);
    }
    if let Some(other) = UNITS.iter().find(|u| u.spellings.contains(&wanted.as_str())) {
        return Found::Other(other.dimension);
    }
    UNITS
        .iter()
        .find(|u| u.spellings.iter().any(|s| same(s, &wanted)))
        .map_or(Found::Nothing, |u| Found::Other(u.dimension))
}

fn same(spelling: &str, written: &str) -> bool {
    let folds = written.chars().count() > 1 && !written.starts_with(['m', 'M']);
    spelling == written || (folds && spelling.to_lowercase() == written.to_lowercase())
}

/// The known spelling of `dimension` nearest to what was written, if one is near enough to be meant.
pub(crate) fn nearest(written: &str, dimension: Dimension) -> Option<&'static str> {
    let wanted = normalise(written).to_lowercase();
    let length = wanted.chars().count();
    if length > 24 {
        return None;
    }
    let most = if length <= 2 { 1 } else { 2 };
    UNITS
        .iter()
        .filter(|u| u.dimension == dimension)
        .flat_map(|u| u.spellings.iter())
        .map(|s| (edits(&s.to_lowercase(), &wanted), *s))
        .filter(|(edits, s)| *edits <= most && *edits < length.max(s.chars().count()))
        .min_by_key(|(edits, _)| *edits)
        .map(|(_, s)| s)
}

/// Insertions, deletions, replacements and swaps of neighbours between two words
/// (restricted Damerau–Levenshtein distance).
fn edits(a: &str, b: &str) -> usize {
    let a: Vec<char> = a.chars().collect();
    let b: Vec<char> = b.chars().collect();
    let mut before = vec![0; b.len() + 1];
    let mut row: Vec<usize> = (0..=b.len()).collect();
    for i in 1..=a.len() {
        let mut next = vec![i; b.len() + 1];
        for j in 1..=b.len() {
            let replaced = row[j - 1] + usize::from(a[i - 1] != b[j - 1]);
            next[j] = replaced.min(row[j] + 1).min(next[j - 1] + 1);
            if i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1] {
                next[j] = next[j].min(before[j - 2] + 1);
            }
        }
        before = row;
        row = next;
    }
    row[b.len()]
}
