//! A map that is nothing but cells: some closed, the others with a cost.

use crate::target_field::guide;
use crate::{DriveMap, Going, Margin, PlanBox, PlanPose, Raster, Spread, Underway, Vehicle};
use core::fmt::Debug;
use core::hash::Hash;
use geometry::DVec2;

/// A map of cells.
#[derive(Debug, Clone)]
pub struct GridMap<W> {
    raster: Raster<W>,
    outline: Vec<PlanBox>,
    guide: f64,
    /// Cost of a metre by cell; nothing: 1 everywhere.
    costs: Vec<f32>,
    /// Speed everywhere, m/s.
    speed: f64,
}

impl<W: Copy + Ord + Hash + Debug> GridMap<W> {
    /// For a vehicle; the same speed everywhere.
    pub fn new(raster: Raster<W>, vehicle: &Vehicle, speed: f64) -> Self {
        Self { raster, outline: vehicle.outline.clone(), guide: guide(vehicle), costs: Vec::new(), speed }
    }

    /// With the cost of a metre in each cell, taken where the vehicle's pivot is; below 1 counts as 1.
    ///
    /// # Panics
    /// If there are not as many as cells.
    #[must_use]
    pub fn with_costs(mut self, costs: Vec<f32>) -> Self {
        assert_eq!(costs.len(), self.raster.frame().len(), "one cost for each cell");
        self.costs = costs;
        self
    }

    /// With metres near what is closed made dearer: up to `more` times at its edge, none from `reach` m on.
    #[must_use]
    pub fn dearer_near(mut self, reach: f64, more: f64) -> Self {
        let near = |i: usize| (1.0 - self.raster.distance(i) / reach).max(0.0);
        let cells = self.raster.frame().len();
        self.costs = (0..cells).map(|i| (self.least_cost(i) * (1.0 + more * near(i))) as f32).collect();
        self
    }
}

impl<W: Copy + Ord + Hash + Debug> DriveMap for GridMap<W> {
    type What = W;

    fn barred(&self, pose: &PlanPose, spread: Spread) -> Option<W> {
        self.outline.iter().find_map(|b| self.raster.meets(&b.spread(spread), pose))
    }

    fn going(&self, underway: &Underway) -> Result<Going, W> {
        let at = underway.pose.place(DVec2::new(self.guide, 0.0));
        let cell = self.raster.frame().index(at);
        Ok(Going { cost: cell.map_or(1.0, |i| self.least_cost(i)), speed: self.speed })
    }

    fn stations(&self) -> f64 {
        0.5
    }

    fn margins(&self, underway: &Underway) -> Vec<Margin<W>> {
        let at = underway.pose.place(DVec2::new(self.guide, 0.0));
        let (least, _) = self.raster.clearance(at);
        let nearest = self.raster.nearest(at).and_then(|cell| self.raster.cell(cell));
        nearest.map(|of| Margin { of, left: least }).into_iter().collect()
    }

    fn closed(&self) -> &Raster<W> {
        &self.raster
    }

    fn least_cost(&self, cell: usize) -> f64 {
        self.costs.get(cell).map_or(1.0, |c| f64::from(*c).max(1.0))
    }

    fn outline(&self) -> &[PlanBox] {
        &self.outline
    }
}
