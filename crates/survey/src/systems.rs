//! Which coordinate system a file is in, and what has to be done to bring it into that of the site.

use crate::crs::{CrsStatements, refuse_degrees};
use crate::epsg::{Epsg, System};
use crate::notes::{Notes, Refused};
use crate::options::GroundOptions;
use crate::projection::{NotConvertible, Projection};
use crate::text;
use crate::units::UnitStatement;
use geometry::DVec2;
use quantity::Quantity;

/// A system is used beyond its area of use, by neighbours of its zone; further out, by mistake.
/// Degrees east and north. Ours: one zone to each side.
const MARGIN: DVec2 = DVec2::new(6.0, 2.0);

/// What has to be done with the numbers of a file.
#[derive(Debug)]
pub(crate) struct Conversion {
    /// The numbers are longitude and latitude, in degrees.
    pub(crate) degrees: bool,
    /// What the file says of its units, completed by the definition of its system.
    pub(crate) statements: CrsStatements,
    /// To the system of the site, where it is another one.
    pub(crate) projection: Option<Projection>,
    /// As shown.
    pub(crate) crs: Option<String>,
    /// The systems of file and site, where the site's is stated and both are known here.
    systems: Option<(System, System)>,
}

/// A point of one system in another: east and north (m), or longitude and latitude (degrees).
///
/// # Errors
/// [`ConvertError`]: a system that is not converted here, datums without a known shift, or a place
/// where the projection has no answer.
///
/// ```
/// # use survey::{Epsg, convert};
/// # use geometry::DVec2;
/// let delft = convert(Epsg(28992), Epsg(4326), DVec2::new(84_967.573, 447_497.445)).unwrap();
/// assert!((delft - DVec2::new(4.367_109, 52.011_415)).length() < 1e-5);
/// ```
pub fn convert(from: Epsg, to: Epsg, at: DVec2) -> Result<DVec2, ConvertError> {
    let system = |code: Epsg| code.system().ok_or(ConvertError::Unknown(code));
    let (a, b) = (system(from)?, system(to)?);
    let projection = Projection::new(&a, &b).map_err(|reason| match reason {
        NotConvertible::NoShift => ConvertError::NoShift,
        NotConvertible::Unknown => ConvertError::Unknown(from),
    })?;
    projection.apply(at).ok_or(ConvertError::NoPlace)
}

/// Why a point is not converted.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ConvertError {
    /// This system is not converted here.
    Unknown(Epsg),
    /// The datums differ, and no shift without a grid file is known.
    NoShift,
    /// The projection has no answer there.
    NoPlace,
}

/// A site grid must be made of numbers, and scaled by something near one.
pub(crate) fn check_local(options: &GroundOptions, notes: &mut Notes<'_>) -> Result<(), Refused> {
    if options.local.is_some_and(|grid| !grid.is_usable()) {
        return Err(notes.refuse("survey::local-grid", text::LOCAL_GRID, text::DO_LOCAL_GRID));
    }
    Ok(())
}

/// Settles the systems. Files in different systems refuse to mix: with a system stated for the
/// site, a file must have one too, by its own word or the job's.
pub(crate) fn conversion(
    statements: &CrsStatements,
    corners: (DVec2, DVec2),
    options: &GroundOptions,
    notes: &mut Notes<'_>,
) -> Result<Conversion, Refused> {
    let own = statements.epsg.map(Epsg);
    let named = statements.name.clone().or_else(|| options.crs.clone());
    let mut statements = statements.clone();
    if let (Some(stated), Some(own)) = (options.file_crs, own)
        && stated != own
    {
        let message = text::CRS_REPLACED.with("found", own.words()).with("stated", stated.words());
        notes.warn("survey::crs-replaced", message, text::DO_CHECK_CRS);
        statements.not_a_plane = None;
    }
    let Some(site) = options.site_crs else {
        if let Some(file) = options.file_crs {
            let message = text::SITE_CRS_UNKNOWN.with("crs", file.words());
            return Err(notes.refuse("survey::site-crs-unknown", message, text::DO_STATE_SITE_CRS));
        }
        statements.complete();
        refuse_degrees(&statements, corners.0, corners.1, options, notes)?;
        // Longitude and latitude that got past the check were overruled: what the file says is not its system.
        let crs = if statements.not_a_plane.is_some() { options.crs.clone() } else { named };
        return Ok(Conversion { degrees: false, statements, projection: None, crs, systems: None });
    };
    if let (None, Some(first), Some(second)) = (options.file_crs, own, statements.other_epsg) {
        let message = text::CRS_CONTRADICTS.with("first", first.words()).with("second", Epsg(second).words());
        return Err(notes.refuse("survey::crs-contradicts", message, text::DO_STATE_FILE_CRS));
    }
    let Some(file) = options.file_crs.or(own) else {
        let message = match named {
            Some(name) => text::FILE_CRS_NOT_KNOWN.with("crs", name).with("site", site.words()),
            None => text::FILE_CRS_UNKNOWN.with("site", site.words()),
        };
        return Err(notes.refuse("survey::file-crs-unknown", message, text::DO_STATE_FILE_CRS));
    };
    let (from, to) = (file.system(), site.system());
    if let Some(site) = to.as_ref().filter(|s| s.unit.is_none()) {
        let message = text::SITE_IN_DEGREES.with("crs", site.code.words());
        return Err(notes.refuse("survey::site-in-degrees", message, text::DO_PLANE_SITE_CRS));
    }
    statements.epsg = Some(file.0);
    if file == site {
        statements.complete();
        refuse_degrees(&statements, corners.0, corners.1, options, notes)?;
        let crs = Some(site.words());
        return Ok(Conversion { degrees: false, statements, projection: None, crs, systems: from.zip(to) });
    }
    let (Some(from), Some(to)) = (from, to) else {
        let unknown = if file.system().is_none() { file } else { site };
        let message = text::CRS_NOT_CONVERTED.with("crs", unknown.to_string());
        return Err(notes.refuse("survey::crs-not-converted", message, text::DO_CONVERT_OUTSIDE));
    };
    let projection = match Projection::new(&from, &to) {
        Ok(projection) => projection,
        Err(reason) => {
            let message = match reason {
                NotConvertible::NoShift => text::NO_DATUM_SHIFT,
                NotConvertible::Unknown => text::NO_CONVERSION,
            };
            let message = message.with("from", file.words()).with("to", site.words());
            return Err(notes.refuse("survey::crs-not-converted", message, text::DO_CONVERT_OUTSIDE));
        }
    };
    let degrees = from.unit.is_none();
    if degrees {
        refuse_no_degrees(&from, corners, notes)?;
    } else {
        statements.not_a_plane = None;
        if statements.horizontal.is_empty() {
            let factor = from.unit.map_or(f64::NAN, crate::LengthUnit::metres);
            statements.horizontal.push(UnitStatement { factor, place: "EPSG" });
        }
    }
    let crs = Some(format!("{} → {}", file.words(), site.words()));
    Ok(Conversion { degrees, statements, projection: Some(projection), crs, systems: Some((from, to)) })
}

/// Longitudes end at 180 (some count to 360) and latitudes at 90.
fn refuse_no_degrees(from: &System, (low, high): (DVec2, DVec2), notes: &mut Notes<'_>) -> Result<(), Refused> {
    let largest = low.abs().max(high.abs());
    if largest.x <= 360.0 && largest.y <= 90.0 {
        return Ok(());
    }
    let message = if largest.x <= 90.0 && largest.y <= 360.0 { text::LATITUDE_SECOND } else { text::NOT_DEGREES };
    let message = message
        .with("crs", from.code.words())
        .with("first", Quantity::number(high.x))
        .with("second", Quantity::number(high.y));
    Err(notes.refuse("survey::axes-swapped", message, text::DO_EAST_FIRST))
}

impl Conversion {
    /// Heights are never transformed, and a datum step is only as good as its parameters.
    pub(crate) fn warn_datum(&self, notes: &mut Notes<'_>) {
        let Some((from, to)) = self.systems.as_ref().filter(|(from, to)| from.datum != to.datum) else { return };
        let (known, unknown) = if same_shift(from, to) {
            (text::DATUMS_TAKEN_AS_ONE, text::DATUMS_TAKEN_AS_ONE_UNKNOWN)
        } else {
            (text::DATUMS_DIFFER, text::DATUMS_DIFFER_UNKNOWN)
        };
        let message = match (from.accuracy, to.accuracy) {
            (Some(a), Some(b)) => known.with("accuracy", quantity::metres(a + b)),
            _ => unknown.into(),
        };
        let message = message.with("from", from.datum).with("to", to.datum);
        notes.warn("survey::datums-differ", message, text::DO_CHECK_DATUM);
    }

    /// The middle of the file must lie in the area of use of its system and of the site's; where it
    /// lies there with its axes swapped, they are. `corners` in metres (or degrees) of the file's system.
    ///
    /// A file whose two numbers are both plausible either way round cannot be told.
    pub(crate) fn check_area(&self, (low, high): (DVec2, DVec2), notes: &mut Notes<'_>) -> Result<(), Refused> {
        let Some((from, to)) = &self.systems else { return Ok(()) };
        let size = high - low;
        // A box of no numbers, or of no size, is one that its writer left empty.
        if !size.is_finite() || size.max_element() < 0.0 || (size == DVec2::ZERO && low == DVec2::ZERO) {
            return Ok(());
        }
        let Some(earth) = earth_of(from) else { return Ok(()) };
        let middle = (low + high) / 2.0;
        let fits = |at: DVec2, margin: DVec2| {
            let on_earth = if self.degrees { Some(at) } else { earth.apply(at) };
            on_earth.is_some_and(|p| p.y.abs() <= 90.0 && from.area.contains(p, margin) && to.area.contains(p, margin))
        };
        let swapped = DVec2::new(middle.y, middle.x);
        if fits(middle, DVec2::ZERO) {
            return Ok(());
        }
        let numbers = |message: evidence::TextId| {
            message
                .with("file", from.code.words())
                .with("site", to.code.words())
                .with("first", Quantity::number(middle.x))
                .with("second", Quantity::number(middle.y))
        };
        if fits(swapped, DVec2::ZERO) {
            return Err(notes.refuse("survey::axes-swapped", numbers(text::AXES_SWAPPED), text::DO_EAST_FIRST));
        }
        if fits(middle, MARGIN) {
            return Ok(());
        }
        Err(notes.refuse("survey::outside-area", numbers(text::OUTSIDE_AREA), text::DO_CHECK_SYSTEMS))
    }
}

/// True where both datums lie alike to WGS 84, so that going from one to the other moves nothing.
fn same_shift(from: &System, to: &System) -> bool {
    let numbers = |system: &System| -> Option<Vec<f64>> {
        system.shift.as_deref()?.split([',', ' ']).map(|n| n.parse().ok()).collect()
    };
    numbers(from).is_some_and(|a| numbers(to) == Some(a))
}

/// From a plane to longitude and latitude of its own datum: near enough for an area of use.
fn earth_of(system: &System) -> Option<Projection> {
    let mut earth = Epsg(4326).system()?;
    earth.datum = system.datum;
    Projection::new(system, &earth).ok()
}
