//! The greatest values that are read: nothing absurd gets as far as the statics. They are far above
//! what any such machine, load or site has (common sense, no standard), so that only slips of a
//! number or a unit meet them.

/// Mass of a machine's part, a load or a capacity, kg.
pub(crate) const MASS: f64 = 200_000.0;
/// Mass that a landing carries: floors and decks carry more than machines weigh, kg.
pub(crate) const RATING: f64 = 1e7;
/// Boom with its whole extension, m.
pub(crate) const BOOM: f64 = 60.0;
/// A place on a machine, from its front axle, m.
pub(crate) const MACHINE: f64 = 30.0;
/// Size of a load, and places in it, m.
pub(crate) const LOAD: f64 = 60.0;
/// Reach or height in a chart, m.
pub(crate) const CHART: f64 = 100.0;
/// Easting or northing: national grids have seven digits before the point, m.
pub(crate) const SITE: f64 = 1e8;
/// Height above or below a country's datum, m.
pub(crate) const HEIGHT: f64 = 10_000.0;
/// From a line to the nearest stand: a line that far off is no matter of the job, or in other
/// coordinates, m.
pub(crate) const STAND_TO_LINE: f64 = 2000.0;
/// From a stand to its landing: more is a mix-up of two systems of coordinates, m.
pub(crate) const STAND_TO_LANDING: f64 = 200.0;
