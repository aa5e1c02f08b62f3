//! Length units of survey files, and which one counts.

use crate::crs::CrsStatements;
use crate::notes::{Notes, Refused};
use crate::options::GroundOptions;
use crate::reading::{UnitFacts, UnitSource};
use crate::text;
use serde::Serialize;

/// A length unit that survey files come in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum LengthUnit {
    /// Metre.
    Metre,
    /// International foot, 0.3048 m exactly.
    Foot,
    /// US survey foot, 1200/3937 m. At a million feet it is 0.6 m off the international one.
    UsSurveyFoot,
    /// Millimetre, as buildings are drawn.
    Millimetre,
    /// Centimetre.
    Centimetre,
    /// Inch, 0.0254 m exactly, as buildings are drawn in feet and inches.
    Inch,
}

impl LengthUnit {
    /// Every unit.
    pub const ALL: [Self; 6] =
        [Self::Metre, Self::Foot, Self::UsSurveyFoot, Self::Millimetre, Self::Centimetre, Self::Inch];

    /// Metres in one of this unit.
    pub fn metres(self) -> f64 {
        match self {
            Self::Metre => 1.0,
            Self::Foot => 0.3048,
            Self::UsSurveyFoot => 1200.0 / 3937.0,
            Self::Millimetre => 0.001,
            Self::Centimetre => 0.01,
            Self::Inch => 0.0254,
        }
    }

    /// The unit of a factor in metres, as files write it: between 8 and 17 digits. The two feet
    /// differ by 6e-7, so a factor is matched to 1e-8.
    pub fn of_factor(factor: f64) -> Option<Self> {
        Self::ALL.into_iter().find(|u| (u.metres() - factor).abs() <= 1e-8)
    }

    /// The unit of an EPSG unit code: 9001 metre, 9002 foot, 9003 US survey foot.
    pub(crate) fn of_epsg(code: u16) -> Option<Self> {
        match code {
            9001 => Some(Self::Metre),
            9002 => Some(Self::Foot),
            9003 => Some(Self::UsSurveyFoot),
            _ => None,
        }
    }

    /// The unit of a symbol or name: "m", "ft", "US ft", "us-survey-foot".
    pub fn of_name(name: &str) -> Option<Self> {
        let plain: String = name.to_lowercase().chars().filter(char::is_ascii_alphanumeric).collect();
        match plain.as_str() {
            "m" | "metre" | "metres" | "meter" | "meters" | "metro" | "metros" => Some(Self::Metre),
            "ft" | "foot" | "feet" | "internationalfoot" | "intft" | "ift" | "pie" | "pies" => Some(Self::Foot),
            "usft" | "ftus" | "footus" | "usfoot" | "usfeet" | "sft" | "ussurveyfoot" | "ussurveyfeet"
            | "surveyfoot" | "surveyfeet" => Some(Self::UsSurveyFoot),
            "mm" | "millimetre" | "millimetres" | "millimeter" | "millimeters" | "milimetro" | "milimetros" => {
                Some(Self::Millimetre)
            }
            "cm" | "centimetre" | "centimetres" | "centimeter" | "centimeters" | "centimetro" | "centimetros" => {
                Some(Self::Centimetre)
            }
            "in" | "inch" | "inches" | "pulgada" | "pulgadas" => Some(Self::Inch),
            _ => None,
        }
    }

    /// The symbol as users write it.
    pub fn symbol(self) -> &'static str {
        match self {
            Self::Metre => "m",
            Self::Foot => "ft",
            Self::UsSurveyFoot => "US ft",
            Self::Millimetre => "mm",
            Self::Centimetre => "cm",
            Self::Inch => "in",
        }
    }
}

/// One statement of a file: a length of so many metres, and where it says so.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct UnitStatement {
    /// Metres in the unit.
    pub(crate) factor: f64,
    /// The part of the file that says so.
    pub(crate) place: &'static str,
}

impl UnitStatement {
    fn words(&self) -> String {
        match LengthUnit::of_factor(self.factor) {
            Some(unit) => format!("{} ({})", unit.symbol(), self.place),
            None => format!("{} m ({})", self.factor, self.place),
        }
    }
}

fn words(statements: &[UnitStatement]) -> String {
    statements.iter().map(UnitStatement::words).collect::<Vec<_>>().join(", ")
}

/// Every statement names this unit; `None` if they differ or one is no unit that we know.
fn agreed(statements: &[UnitStatement]) -> Option<LengthUnit> {
    let unit = LengthUnit::of_factor(statements.first()?.factor)?;
    statements.iter().all(|s| LengthUnit::of_factor(s.factor) == Some(unit)).then_some(unit)
}

/// The units that count: what the job states, else what the file states if it does so in one voice.
///
/// Refused: no statement at all, statements that differ (among them horizontal against height: one
/// of the two is often wrong), a unit that is none of [`LengthUnit`].
pub(crate) fn resolve(
    statements: &CrsStatements,
    options: &GroundOptions,
    notes: &mut Notes<'_>,
) -> Result<UnitFacts, Refused> {
    let (plan, heights) = (&statements.horizontal, &statements.vertical);
    let (horizontal, horizontal_source) = if let Some(stated) = options.units {
        if plan.iter().any(|s| LengthUnit::of_factor(s.factor) != Some(stated)) {
            notes.warn(
                "survey::units-overridden",
                text::UNITS_OVERRIDDEN.with("found", words(plan)).with("stated", stated.symbol()),
                text::DO_CHECK_UNITS,
            );
        }
        (stated, UnitSource::Stated)
    } else if plan.is_empty() {
        let message = match statements.name.as_deref() {
            Some(name) => text::UNITS_UNKNOWN_CRS.with("crs", name),
            None => text::UNITS_UNKNOWN.into(),
        };
        return Err(notes.refuse("survey::units-unknown", message, text::DO_STATE_UNITS));
    } else {
        (one_voice(plan, notes)?, UnitSource::File)
    };
    let (vertical, vertical_source) = if let Some(stated) = options.height_units.or(options.units) {
        if heights.iter().any(|s| LengthUnit::of_factor(s.factor) != Some(stated)) {
            notes.warn(
                "survey::units-overridden",
                text::HEIGHT_UNITS_OVERRIDDEN.with("found", words(heights)).with("stated", stated.symbol()),
                text::DO_CHECK_UNITS,
            );
        }
        (stated, UnitSource::Stated)
    } else if heights.is_empty() {
        if horizontal != LengthUnit::Metre {
            notes.warn(
                "survey::height-units-assumed",
                text::HEIGHT_UNITS_ASSUMED.with("unit", horizontal.symbol()),
                text::DO_CHECK_UNITS,
            );
        }
        (horizontal, UnitSource::AsHorizontal)
    } else {
        let unit = one_voice(heights, notes)?;
        if unit != horizontal {
            return Err(notes.refuse(
                "survey::units-contradict",
                text::UNITS_DIFFER.with("plan", words(plan)).with("heights", words(heights)),
                text::DO_STATE_BOTH_UNITS,
            ));
        }
        (unit, UnitSource::File)
    };
    Ok(UnitFacts { horizontal, horizontal_source, vertical, vertical_source })
}

/// The unit of heights beside longitude and latitude: what the job states, else what the file states.
///
/// Refused where neither says it: degrees give no hint to the unit of heights.
pub(crate) fn of_heights(
    statements: &CrsStatements,
    options: &GroundOptions,
    notes: &mut Notes<'_>,
) -> Result<UnitFacts, Refused> {
    let heights = &statements.vertical;
    let (vertical, vertical_source) = match options.height_units.or(options.units) {
        Some(stated) => (stated, UnitSource::Stated),
        None if heights.is_empty() => {
            return Err(notes.refuse("survey::units-unknown", text::HEIGHT_UNITS_UNKNOWN, text::DO_STATE_UNITS));
        }
        None => (one_voice(heights, notes)?, UnitSource::File),
    };
    let horizontal = LengthUnit::Metre;
    Ok(UnitFacts { horizontal, horizontal_source: UnitSource::Projected, vertical, vertical_source })
}

fn one_voice(statements: &[UnitStatement], notes: &mut Notes<'_>) -> Result<LengthUnit, Refused> {
    if let Some(unit) = agreed(statements) {
        return Ok(unit);
    }
    if let Some(odd) = statements.iter().find(|s| LengthUnit::of_factor(s.factor).is_none()) {
        let message = text::UNIT_NOT_KNOWN.with("found", odd.words());
        return Err(notes.refuse("survey::unit-not-known", message, text::DO_EXPORT_METRES));
    }
    let message = text::UNITS_CONTRADICT.with("found", words(statements));
    Err(notes.refuse("survey::units-contradict", message, text::DO_STATE_UNITS))
}
