//! What a file says about its coordinate system, gathered from all the places that say something.

use crate::epsg::Epsg;
use crate::geo_keys::GeoKeys;
use crate::notes::{Notes, Refused};
use crate::options::GroundOptions;
use crate::text;
use crate::units::{LengthUnit, UnitStatement};
use crate::well_known_text as wkt;
use geometry::{DVec2, DVec3};
use quantity::Quantity;

/// Statements of a file about its coordinates.
#[derive(Debug, Clone, PartialEq, Default)]
pub(crate) struct CrsStatements {
    /// Units of eastings and northings.
    pub(crate) horizontal: Vec<UnitStatement>,
    /// Units of heights.
    pub(crate) vertical: Vec<UnitStatement>,
    /// A statement that the coordinates are longitude and latitude, or earth-centred.
    pub(crate) not_a_plane: Option<&'static str>,
    /// Name of the system, as written.
    pub(crate) name: Option<String>,
    /// The system by its EPSG code.
    pub(crate) epsg: Option<u16>,
    /// A second code that the file gives, different from the first.
    pub(crate) other_epsg: Option<u16>,
}

impl CrsStatements {
    /// Adds what GeoTIFF keys say.
    pub(crate) fn add_keys(&mut self, keys: &GeoKeys) {
        const PLACE: &str = "GeoTIFF keys";
        let unit = |code: Option<u16>, size: Option<f64>| match code {
            // 32767 is "user defined": its size stands in a key of its own.
            Some(32767) => size,
            Some(code) => LengthUnit::of_epsg(code).map(LengthUnit::metres).or(Some(f64::NAN)),
            None => None,
        };
        if let Some(factor) = unit(keys.short(3076), keys.double(3077)) {
            self.horizontal.push(UnitStatement { factor, place: PLACE });
        }
        if let Some(factor) = unit(keys.short(4099), None) {
            self.vertical.push(UnitStatement { factor, place: PLACE });
        } else if let Some(known) = keys.short(4096).and_then(vertical_unit_of_epsg) {
            self.vertical.push(UnitStatement { factor: known.metres(), place: PLACE });
        }
        let projected = keys.short(3072);
        match (keys.short(1024), projected) {
            (Some(1), _) => {}
            (Some(2 | 3), _) => self.not_a_plane = Some(PLACE),
            (_, None) if keys.short(2048).is_some() => self.not_a_plane = Some(PLACE),
            _ => {}
        }
        let geographic = keys.short(2048).filter(|_| self.not_a_plane.is_some());
        self.add_code(projected.or(geographic).filter(|&c| c != 32767));
        let coded = projected.or(geographic).filter(|&c| c != 32767).map(|c| format!("EPSG:{c}"));
        let cited = keys.text(1026).or_else(|| keys.text(3073)).or_else(|| keys.text(2049));
        self.add_name(match (coded, cited) {
            (Some(code), Some(name)) => Some(format!("{name} ({code})")),
            (code, name) => code.or(name),
        });
    }

    /// Adds what a well-known text says. A text that cannot be taken apart says nothing.
    pub(crate) fn add_text(&mut self, text: &str) {
        const PLACE: &str = "WKT";
        let Some(found) = wkt::read(text) else { return };
        self.horizontal.extend(found.horizontal.into_iter().map(|factor| UnitStatement { factor, place: PLACE }));
        self.vertical.extend(found.vertical.into_iter().map(|factor| UnitStatement { factor, place: PLACE }));
        if found.not_a_plane {
            self.not_a_plane = Some(PLACE);
        }
        self.add_code(found.epsg.or_else(|| found.plane.as_deref().and_then(Epsg::of_name).map(|e| e.0)));
        self.add_name(found.name);
    }

    fn add_code(&mut self, code: Option<u16>) {
        if self.epsg.is_some() && code.is_some() && code != self.epsg {
            self.other_epsg = code;
        }
        self.epsg = self.epsg.or(code);
    }

    /// The unit by definition of the system, if nothing names a unit.
    pub(crate) fn complete(&mut self) {
        let defined = self.epsg.and_then(|code| Epsg(code).system()).and_then(|system| system.unit);
        if let Some(unit) = defined.filter(|_| self.horizontal.is_empty()) {
            self.horizontal.push(UnitStatement { factor: unit.metres(), place: "EPSG" });
        }
    }

    fn add_name(&mut self, name: Option<String>) {
        if self.name.is_none() {
            self.name = name.filter(|n| !n.is_empty());
        }
    }
}

/// NAVD88 heights in their three units: 5703 metre, 6360 US survey foot, 8228 foot.
fn vertical_unit_of_epsg(code: u16) -> Option<LengthUnit> {
    match code {
        5703 => Some(LengthUnit::Metre),
        6360 => Some(LengthUnit::UsSurveyFoot),
        8228 => Some(LengthUnit::Foot),
        _ => None,
    }
}

/// Refuses degrees and systems that cannot be true; `min` and `max` as in the file.
///
/// Longitudes end at 180 and latitudes at 90, so larger numbers are no degrees, whatever the file
/// says; a job that states units overrules such a file. Without any statement, numbers in that
/// range that span less than one in both directions are degrees: in metres, the whole survey would
/// fit on a table.
pub(crate) fn refuse_degrees(
    statements: &CrsStatements,
    min: DVec2,
    max: DVec2,
    options: &GroundOptions,
    notes: &mut Notes<'_>,
) -> Result<(), Refused> {
    let largest = min.abs().max(max.abs());
    let could_be_degrees = largest.x <= 180.0 && largest.y <= 90.0;
    let name = statements.name.clone().unwrap_or_default();
    if let Some(place) = statements.not_a_plane {
        if could_be_degrees {
            let message = text::DEGREES.with("crs", name).with("place", place);
            return Err(notes.refuse("survey::degrees", message, text::DO_REPROJECT));
        }
        let message = text::CRS_IMPOSSIBLE
            .with("crs", name)
            .with("place", place)
            .with("east", Quantity::number(max.x))
            .with("north", Quantity::number(max.y));
        if options.units.is_none() {
            return Err(notes.refuse("survey::crs-impossible", message, text::DO_STATE_CRS_AND_UNITS));
        }
        notes.warn("survey::crs-overridden", message, text::DO_CHECK_UNITS);
    } else if statements.horizontal.is_empty() && could_be_degrees && spans_less_than_one(max - min) {
        let message =
            text::LOOKS_LIKE_DEGREES.with("east", Quantity::number(max.x)).with("north", Quantity::number(max.y));
        return Err(notes.refuse("survey::degrees", message, text::DO_REPROJECT));
    }
    Ok(())
}

/// A box of no size at all is one that its writer left empty.
fn spans_less_than_one(span: DVec2) -> bool {
    span.max_element() < 1.0 && span.max_element() > 0.0
}

/// Lowest and highest ground that is taken as true, m: below the shore of the Dead Sea (−430 m)
/// and above the highest mountain (8849 m) nobody stands with a machine.
pub(crate) const PLAUSIBLE_HEIGHTS: (f64, f64) = (-500.0, 9000.0);

/// True for a height that ground can have, m.
pub(crate) fn is_plausible(height: f64) -> bool {
    height >= PLAUSIBLE_HEIGHTS.0 && height <= PLAUSIBLE_HEIGHTS.1
}

/// Coordinates beyond this are no plane coordinates of the earth, m: the largest in use carry a
/// zone number before an easting (24.5 million in Finland, 60.5 million at most).
pub(crate) const LARGEST_COORDINATE: f64 = 1e8;

/// True for a point that can lie on the earth, m.
pub(crate) fn is_on_earth(point: DVec3) -> bool {
    point.is_finite() && point.x.abs() <= LARGEST_COORDINATE && point.y.abs() <= LARGEST_COORDINATE
}
