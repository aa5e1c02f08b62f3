//! Which points of a cloud are ground: those that the file classes so, or those that a filter finds.

use crate::cloud::RecordFrame;
use crate::cloud_header::count;
use crate::cloud_raster::{MOST_CELLS, RasterPlan};
use crate::cloud_stream::{self, Sample, Tile};
use crate::ground_filter::FilteredGround;
use crate::notes::Notes;
use crate::options::GroundOptions;
use crate::reading::Facts;
use crate::text;
use evidence::Faults;
use geometry::DVec3;
use quantity::Quantity;

/// Cells that the filter takes for every point (ours): with fewer points there is no ground to find.
const CELLS_A_POINT: u64 = 64;

/// Cells that it takes at least.
const FEWEST_CELLS: u64 = 1_000_000;

/// The class of ground points (LAS 1.4 R15, tables 9 and 17).
const GROUND: u8 = 2;

/// Who says what is ground.
#[derive(Debug)]
pub(crate) enum GroundPick {
    /// The file: class 2, not withheld.
    Class,
    /// The filter that the job asks for.
    Filter(FilteredGround),
}

impl GroundPick {
    /// By class, unless the options ask for the filter: it then sees all tiles at once, so that
    /// what lies across a seam is one thing. Tiles that cannot be read are left to the reader
    /// that comes after, which reports them.
    ///
    /// # Errors
    /// Options of the filter that cannot be, and clouds too large for it.
    pub(crate) fn of(tiles: &[(&str, &[u8])], options: &GroundOptions) -> Result<Self, Faults> {
        let Some(filter) = &options.ground_filter else { return Ok(Self::Class) };
        let mut notes = Notes::new(tiles.first().map_or("", |t| t.0));
        let result = filter.check(&mut notes);
        let ((), _) = notes.finish(result)?;
        let opened: Vec<Tile<'_>> = tiles
            .iter()
            .filter_map(|(name, bytes)| Tile::open(name, bytes, options, &mut Notes::new(name)).ok())
            .collect();
        let window = options.window.map(|w| w.grown(filter.widest));
        let mut notes = Notes::new(tiles.first().map_or("", |t| t.0));
        // A box far wider than its points is a stray point or a damaged header: time goes with the cells.
        let points: u64 = opened.iter().map(Tile::points).sum();
        let most = MOST_CELLS.min(FEWEST_CELLS + CELLS_A_POINT * points);
        let result = RasterPlan::of(&opened, window, filter.cell, most, &mut notes);
        let (plan, _) = notes.finish(result)?;
        let Some(plan) = plan else { return Ok(Self::Class) };
        let mut lowest = vec![f32::NAN; plan.cells()];
        let visited = cloud_stream::visit_all(&opened, &mut Faults::default(), |_, frame, sample| {
            let at = frame.metres(sample.stored);
            if let Some(i) = plan.index(at.truncate()).filter(|_| sample.is_something(at)) {
                lowest[i] = lowest[i].min(at.z as f32);
            }
        });
        // A damaged tile is reported by the reader that comes after.
        let _ = visited;
        Ok(Self::Filter(FilteredGround::of(plan, lowest, filter)))
    }

    /// True for a point that the file says is ground.
    #[inline]
    pub(crate) fn is_ground_class(sample: Sample) -> bool {
        sample.class == GROUND && !sample.withheld
    }

    /// The point in metres if it is ground.
    #[inline]
    pub(crate) fn ground(&self, frame: &RecordFrame, sample: Sample) -> Option<DVec3> {
        match self {
            Self::Class => Self::is_ground_class(sample).then(|| frame.metres(sample.stored)),
            Self::Filter(filtered) => {
                let at = frame.metres(sample.stored);
                (sample.is_something(at) && filtered.is_ground(at)).then_some(at)
            }
        }
    }

    /// A filtered ground is never silent: which share of the points was taken.
    pub(crate) fn warn(&self, facts: &Facts, notes: &mut Notes<'_>) {
        if matches!(self, Self::Filter(_)) {
            let share = facts.ground_points as f64 / facts.points.max(1) as f64 * 100.0;
            let message = text::GROUND_FILTERED
                .with("ground", count(facts.ground_points))
                .with("points", count(facts.points))
                .with("share", Quantity::number(share));
            notes.warn("survey::ground-filtered", message, text::DO_CHECK_FILTERED);
        }
    }
}
