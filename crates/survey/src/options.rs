//! What the job states about a survey file.

use crate::{Epsg, GroundFilter, LengthUnit, LevelColumns, LocalGrid};
use geometry::DVec2;

/// Longest triangle edge in a point cloud, m; longer ones are holes. Ours: ground points of
/// airborne and drone surveys lie closer than 1 m, and under a wheel nothing wider may be guessed.
pub const LONGEST_EDGE_CLOUD: f64 = 2.0;

/// Longest triangle edge between level points, m; longer ones are holes. Ours: levels are taken
/// by hand at breaks of slope, on sites in a raster of 10 to 20 m, so neighbours lie within 30 m.
pub const LONGEST_EDGE_LEVELS: f64 = 30.0;

/// What the job states about a survey file. Everything is optional; a statement of the job counts
/// more than one of the file, and a warning tells where they differ.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct GroundOptions {
    /// Unit of eastings and northings, and of heights too unless `height_units` says otherwise.
    pub units: Option<LengthUnit>,
    /// Unit of the heights.
    pub height_units: Option<LengthUnit>,
    /// Coordinate system in the user's words; only shown.
    pub crs: Option<String>,
    /// Coordinate system that the file is in; counts more than what the file says.
    pub file_crs: Option<Epsg>,
    /// Coordinate system that the site frame is in. With it, every file must be known to be in some
    /// system, and is converted if that is another one; without it, numbers are taken as they are.
    pub site_crs: Option<Epsg>,
    /// The site's own grid on top of that system.
    pub local: Option<LocalGrid>,
    /// Which columns of a CSV file hold what.
    pub columns: Option<LevelColumns>,
    /// Longest triangle edge, m, instead of [`LONGEST_EDGE_CLOUD`] or [`LONGEST_EDGE_LEVELS`].
    pub longest_edge: Option<f64>,
    /// Which surface of a LandXML file, by its name.
    pub surface: Option<String>,
    /// Take the survey points of a LandXML file as ground instead of a surface.
    pub survey_points: bool,
    /// Only the ground in and just around this rectangle is kept.
    pub window: Option<Window>,
    /// Ground of a cloud by a filter instead of its classes; only where the job asks for it.
    pub ground_filter: Option<GroundFilter>,
    /// Layers of a drawing that are ground; without them no drawing is ground.
    pub layers: Option<Vec<String>>,
}

/// A rectangle in the site frame, m.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Window {
    /// South-west corner.
    pub min: DVec2,
    /// North-east corner.
    pub max: DVec2,
}

impl Window {
    /// The same with a margin all around, m.
    #[must_use]
    pub fn grown(self, margin: f64) -> Self {
        Self { min: self.min - DVec2::splat(margin), max: self.max + DVec2::splat(margin) }
    }

    /// True on the edge too.
    pub fn contains(self, at: DVec2) -> bool {
        at.x >= self.min.x && at.x <= self.max.x && at.y >= self.min.y && at.y <= self.max.y
    }
}
