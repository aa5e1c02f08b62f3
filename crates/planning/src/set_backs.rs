//! What excavations ask of wheels, solved once for a job: read by a single check, by every change that a tolerance tries,
//! by a search over stands, and drawn as lines around the excavations.
//!
//! Every reader asks the rung above the wheels' load (`ground::set_back_store`), also where only the rung is no-go and the
//! load itself would pass: a check that refined at the limit would allow a stand that a search had refused. What that
//! gives away is at most 9 % of load and 4 cm of tyre.

use crate::check::LiftCheck;
use crate::checks::edges;
use crate::{Job, Lift, SoilArea};
use evidence::Trace;
use ground::GroundState;
use ground::edge_rules::{self, Drop, EdgeGround, NamedSlope, planning_line};
use ground::edge_strength::{Exposure, edge_layers};
use ground::set_back::{Edge, Side};
use ground::set_back_store::{SetBackStore, Solved};
use ground::wheel_row::WheelRow;
use site::{Excavation, SoilType};
use std::sync::Arc;

/// Set-backs that are kept from check to check. It holds answers only, by what was asked: one store serves any number
/// of jobs, and an empty one gives the same answers, later.
#[derive(Debug, Clone, Default)]
pub struct SetBacks {
    store: SetBackStore,
    /// True while only whether the wheels may stand where they do is asked, not how near they could.
    whether: bool,
}

impl SetBacks {
    /// What these rows of wheels, `aside` m from its outline, ask beside an excavation in that soil; `None` where soil or
    /// wheels have faults, or nobody knows how deep it is.
    pub(crate) fn ask(
        &mut self,
        soil: &SoilArea,
        dig: &Excavation,
        rows: &[WheelRow],
        aside: f64,
    ) -> Option<Arc<Solved>> {
        let kind = self.store.kind(&edge(soil, dig)?).ok()?;
        if self.whether { self.store.ask_whether(kind, rows, aside).ok() } else { self.store.ask(kind, rows).ok() }
    }

    /// From now on only whether the wheels may stand where they do is asked, or again how near they could: the verdict is
    /// the same.
    pub fn only_whether(&mut self, whether: bool) {
        self.whether = whether;
    }

    /// True while only whether is asked.
    pub(crate) fn asks_only_whether(&self) -> bool {
        self.whether
    }

    /// How many answers were solved.
    pub fn solved(&self) -> usize {
        self.store.solved()
    }
}

/// A line around an excavation that no outer edge of tyre, pad or mat may pass.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SetBackLine {
    /// Index of the excavation among the site's.
    pub excavation: usize,
    /// Distance from its top edge, m.
    pub distance: f64,
    /// What asks it.
    pub of: LineOf,
}

/// What a line rests on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum LineOf {
    /// The planning line from the toe, or the least distance.
    Planning,
    /// Equilibrium in the stated soil with the wheels of a lift, as they stand.
    Wheels,
    /// The face does not stand even without load: nothing near it.
    Face,
}

/// The planning lines of excavations beside these soils; none for one of unknown depth.
pub fn planning_lines(excavations: &[Excavation], soils: &[SoilArea]) -> Vec<SetBackLine> {
    let line = |(excavation, dig)| {
        let distance = self::line(dig, soils, &mut evidence::Silent)?;
        Some(SetBackLine { excavation, distance, of: LineOf::Planning })
    };
    excavations.iter().enumerate().filter_map(line).collect()
}

/// The lines that one lift's wheels ask where soil is stated beside an open excavation, and ask more than the planning
/// line, and planning lines that the soil's water takes farther out; measured as its check measures. None where the machine could not be posed.
pub fn lift_lines(job: &Job, lift: &Lift, set_backs: &mut SetBacks) -> Vec<SetBackLine> {
    let check: Option<LiftCheck<'_>> = crate::check::check_lift_with(job, lift, set_backs);
    check.map_or_else(Vec::new, |check| edges::lines(&check, set_backs))
}

/// Distance that the planning line asks beside these soils, m; `None` where the depth is not known.
pub(crate) fn line(dig: &Excavation, soils: &[SoilArea], trace: &mut impl Trace) -> Option<f64> {
    let drop = drop(dig, soils)?;
    Some(match planning_line(&drop, trace) {
        Ok(line) => line.from_crest,
        // Deeper or flatter than the rule was made for: the line alone, at its default.
        Err(_) => (drop.ground.default_ratio() * drop.depth - drop.batter).max(edge_rules::LEAST_DISTANCE),
    })
}

/// True if the soil reaches to the excavation, within a metre (ours: nobody draws an area closer).
pub(crate) fn beside(soil: &SoilArea, dig: &Excavation) -> bool {
    soil.area.as_ref().is_none_or(|area| area.distance_to_area(&dig.outline) <= 1.0)
}

/// The excavation as the rule asks for it. Soil that nobody has classed counts as soft, and so does type A or B that has
/// been wetted since it was cut, or where water stands above the toe.
fn drop(dig: &Excavation, soils: &[SoilArea]) -> Option<Drop> {
    let depth = dig.depth?.high;
    // Without a stated water table it stands at the surface; soil that is only described states none.
    let seeps = |soil: &SoilArea| {
        let stated = !soil.profile.layers.is_empty();
        stated && (soil.profile.water_depth() < depth || soil.profile.state != GroundState::AsStated)
    };
    let wet = dig.standing.wetted || soils.iter().any(|soil| beside(soil, dig) && seeps(soil));
    let ground = match dig.soil {
        Some(SoilType::StableRock) => EdgeGround::Rock,
        Some(SoilType::TypeA | SoilType::TypeB) if !wet => EdgeGround::Firm,
        _ => EdgeGround::Poor,
    };
    let named = dig.standing.line.as_ref().map(|(ratio, by)| NamedSlope { ratio: *ratio, person: by.clone() });
    Some(Drop { depth, batter: dig.standing.batter, ground, named })
}

fn edge(soil: &SoilArea, dig: &Excavation) -> Option<Edge> {
    let drop = drop(dig, std::slice::from_ref(soil))?;
    // Without a stated water table it stands at the surface.
    let water = (drop.depth - soil.profile.water_depth()).max(0.0);
    Some(Edge {
        drop,
        side: Side::Open,
        layers: edge_layers(&soil.profile),
        water: Some(water),
        firm_base: None,
        exposure: Exposure {
            open_for: dig.standing.open_for,
            undrained_for: dig.standing.undrained_for,
            wetted: dig.standing.wetted,
        }
        .in_state(soil.profile.state),
        people_below: dig.standing.people_below,
    })
}
