//! The corners of a routine's family: its heaviest and largest load, the same as light as any that is stated, and none.

use crate::{Choose, Job, Lift, Routine, RoutineLandings, RoutineLoad, Stand, Task, WindInput};
use evidence::{Certainty, Ranged};
use machine::{Load, LoadSource};

/// What is left of a load's mass where there is none: a mass of zero has no centre, kg.
const NONE: f64 = 1.0;

/// How far from the middle the centre of an even pack is reckoned, as a share of each side (ours): loads whose centre lies
/// farther out are outside a routine that states mass and size only.
const EVEN: f64 = 0.05;

/// The same for its height: a pack whose heavy layers lie on top (ours).
const EVEN_UP: f64 = 0.15;

/// How high above a landing's surface and guard its loads are carried in and out, m (common practice).
pub(super) const CLEAR: f64 = 0.30;

/// Wind shape factor of a pack whose factor nobody states (a box in the wind: 1.2 to 1.4; common practice).
const BOX: f64 = 1.4;

/// The loads of a routine: the heaviest and largest first, then the lightest stated, then none.
pub(super) struct Corners {
    pub(super) loads: [Load; 3],
    /// kg, of the lightest.
    pub(super) lightest: f64,
    /// What the heaviest stands on.
    feet: Option<ground::pallet_feet::Feet>,
}

/// `None` if the routine's load is not in the job, or is no number.
pub(super) fn corners(job: &Job, routine: &Routine) -> Option<Corners> {
    let (heaviest, feet) = match routine.load {
        RoutineLoad::Like(i) => (job.loads.get(i)?.clone(), job.feet.get(i).cloned().flatten()),
        RoutineLoad::UpTo { mass, size } if !(mass.is_finite() && size.iter().all(|s| s.is_finite())) => return None,
        RoutineLoad::UpTo { mass, size } => (even_pack(routine, mass, size), None),
    };
    let within = job.loads.iter().filter(|l| super::fits::load_within(&heaviest, l).is_empty());
    let lightest = within.map(|l| l.mass_kg.low).fold(heaviest.mass_kg.low, f64::min);
    let as_light = |mass: f64| Load { mass_kg: Ranged::exact(mass), ..heaviest.clone() };
    let loads = [heaviest.clone(), as_light(lightest), as_light(NONE)];
    Some(Corners { loads, lightest, feet })
}

/// A pack of that mass and size on forks, its centre about the middle.
fn even_pack(routine: &Routine, mass: f64, [depth, width, height]: [f64; 3]) -> Load {
    let about = |middle: f64, side: f64| Ranged::plus_minus(middle, EVEN * side);
    Load {
        id: routine.id.clone(),
        name: routine.name.clone(),
        mass_kg: Ranged::exact(mass),
        certainty: Certainty::Stated,
        centre_ahead: about(depth / 2.0, depth),
        centre_left: about(0.0, width),
        centre_up: Ranged::plus_minus(height / 2.0, EVEN_UP * height),
        depth,
        width,
        height,
        base_width: None,
        parts: Vec::new(),
        source: LoadSource::Typed,
        hanging: None,
        // Every lift of the routine answers for its own load.
        condition_seen: Some(true),
        defects: Vec::new(),
        overhangs: Vec::new(),
        liquid: None,
        sag: None,
        wind_factor: BOX,
    }
}

impl Corners {
    /// The job with these loads behind its own, and the index of the first.
    pub(super) fn job(&self, job: &Job) -> (Job, usize) {
        let mut with = job.clone();
        let first = with.loads.len();
        with.feet.resize(first, None);
        for load in &self.loads {
            with.loads.push(load.clone());
            with.feet.push(self.feet.clone());
        }
        (with, first)
    }
}

/// The lift of a routine with one of its loads to one of its landings. It passes every gate of the job.
pub(super) fn lift_of(job: &Job, routine: &Routine, load: usize, landing: usize) -> Lift {
    Lift {
        // Not the id of any lift: locks are seen for lifts.
        id: format!("routine {}", routine.id),
        name: routine.name.clone(),
        machine: routine.machine,
        attachment: routine.attachment.clone(),
        support: routine.support,
        load,
        stand: Stand::NOT_CHOSEN,
        landing,
        task: Task::SetDown,
        clear: quantity::metres(CLEAR),
        wind: Some(WindInput { gust: routine.stop_gust }),
        stops: Vec::new(),
        lock_seen: None,
        signaller: None,
        side_shift: 0.0,
        extensions: None,
        mats: Vec::new(),
        levelled: false,
        axle_locked: false,
        front_tyres: None,
        bulk_volume: None,
        bulk_density: None,
        gates: Some((0..job.gates.len()).collect()),
        acceptances: Vec::new(),
        choose: Choose::default(),
        from: None,
        window: None,
        after: Vec::new(),
        priority: None,
        minutes: None,
    }
}

/// The landings of a routine by index in the job, each once, in the order of the job. Empty if one of those named is not
/// in the job.
pub(super) fn landings(job: &Job, routine: &Routine) -> Vec<usize> {
    let all = 0..job.landings.len();
    match &routine.landings {
        RoutineLandings::Named(named) if named.iter().any(|i| *i >= job.landings.len()) => Vec::new(),
        RoutineLandings::Named(named) => all.filter(|i| named.contains(i)).collect(),
        RoutineLandings::Within(area) => all.filter(|i| area.contains(job.landings[*i].at)).collect(),
    }
}
