//! The unit of a drawing: what it says, what the job says, and whether that can be.

use crate::notes::{Notes, Refused};
use crate::options::GroundOptions;
use crate::reading::{UnitFacts, UnitSource};
use crate::text;
use crate::units::LengthUnit;
use evidence::{Message, TextId};

/// Smallest and largest size of a drawing of a site or a building, m. Ours: nothing that a machine
/// works beside is smaller, and no site is larger.
pub(crate) const PLAUSIBLE_SIZES: (f64, f64) = (2.0, 20_000.0);

/// What `$INSUNITS` says.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) enum Said {
    /// Nothing, or "unitless".
    Nothing,
    Unit(LengthUnit),
    /// A unit that no site is drawn in, by its number.
    Odd(i64),
}

/// Codes of the DXF reference, header variable `$INSUNITS` (from memory).
pub(crate) fn said(code: Option<i64>) -> Said {
    match code {
        None | Some(0) => Said::Nothing,
        Some(1) => Said::Unit(LengthUnit::Inch),
        Some(2) => Said::Unit(LengthUnit::Foot),
        Some(4) => Said::Unit(LengthUnit::Millimetre),
        Some(5) => Said::Unit(LengthUnit::Centimetre),
        Some(6) => Said::Unit(LengthUnit::Metre),
        Some(21) => Said::Unit(LengthUnit::UsSurveyFoot),
        Some(code) => Said::Odd(code),
    }
}

/// The unit to draw with, before the size is known: that of the job, else that of the file.
pub(crate) fn unit(said: Said, options: &GroundOptions) -> Option<LengthUnit> {
    match (options.units, said) {
        (Some(stated), _) => Some(stated),
        (None, Said::Unit(unit)) => Some(unit),
        (None, _) => None,
    }
}

/// The units that count. `size`: the larger side of all that is drawn, file units.
///
/// The header is often a template's and wrong, so a size that no site has is refused; where the job
/// states the unit it is a warning.
pub(crate) fn resolve(
    said: Said,
    size: f64,
    options: &GroundOptions,
    notes: &mut Notes<'_>,
) -> Result<UnitFacts, Refused> {
    let (horizontal, horizontal_source) = match (options.units, said) {
        (Some(stated), said) => {
            let found = match said {
                Said::Unit(unit) if unit != stated => Some(format!("{} ($INSUNITS)", unit.symbol())),
                Said::Odd(code) => Some(format!("$INSUNITS {code}")),
                _ => None,
            };
            if let Some(found) = found {
                let message = text::UNITS_OVERRIDDEN.with("found", found).with("stated", stated.symbol());
                notes.warn("survey::units-overridden", message, text::DO_CHECK_UNITS);
            }
            (stated, UnitSource::Stated)
        }
        (None, Said::Unit(unit)) => (unit, UnitSource::File),
        (None, Said::Nothing) => {
            let message = sizes(text::DRAWING_UNITS_UNKNOWN, size);
            return Err(notes.refuse("survey::units-unknown", message, text::DO_STATE_DRAWING_UNITS));
        }
        (None, Said::Odd(code)) => {
            let message = text::UNIT_NOT_KNOWN.with("found", format!("$INSUNITS {code}"));
            return Err(notes.refuse("survey::unit-not-known", message, text::DO_STATE_DRAWING_UNITS));
        }
    };
    let metres = size * horizontal.metres();
    if !(PLAUSIBLE_SIZES.0..=PLAUSIBLE_SIZES.1).contains(&metres) {
        let message =
            sizes(text::DRAWING_SIZE, size).with("unit", horizontal.symbol()).with("size", quantity::metres(metres));
        if options.units.is_none() {
            return Err(notes.refuse("survey::drawing-size", message, text::DO_STATE_DRAWING_UNITS));
        }
        notes.warn("survey::drawing-size", message, text::DO_CHECK_UNITS);
    }
    let (vertical, vertical_source) = match options.height_units {
        Some(unit) => (unit, UnitSource::Stated),
        None => (horizontal, horizontal_source),
    };
    Ok(UnitFacts { horizontal, horizontal_source, vertical, vertical_source })
}

/// How large the drawing would be in each unit.
fn sizes(id: TextId, size: f64) -> Message {
    let as_if = |unit: LengthUnit| quantity::metres(size * unit.metres());
    id.with("mm", as_if(LengthUnit::Millimetre))
        .with("cm", as_if(LengthUnit::Centimetre))
        .with("m", as_if(LengthUnit::Metre))
        .with("in", as_if(LengthUnit::Inch))
        .with("ft", as_if(LengthUnit::Foot))
}
