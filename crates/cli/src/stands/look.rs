//! Looking for the stands of one lift, on as many threads as there are.

use super::answer::{LiftStands, NearestPlace, PlaceAnswer, RefusedArea};
use super::asked::Asked;
use evidence::{Status, Verdict};
use geometry::DVec2;
use planning::{
    FieldGrid, FieldScene, FieldSpec, Job, Lift, SetBacks, Stand, StandField, StandSearch, Worker, best_stands,
    changes, check_lift_with, refused_first,
};

/// Looks around the landing of a lift, and at the places that were asked for.
pub(super) fn look(job: &Job, lift: usize, asked: &Asked) -> LiftStands {
    let lift = &job.lifts[lift];
    let mut set_backs = SetBacks::default();
    let search = StandSearch::new(job, lift, asked.spec);
    let field = search.as_ref().map(by_threads);
    let mut best = Vec::new();
    if let (Some(search), Some(field)) = (&search, &field)
        && field.floor() <= Status::Condition
    {
        best = best_stands(job, lift, search, field, &mut set_backs, asked.best);
    }
    let passes = !best.is_empty() || field.as_ref().is_some_and(passes_somewhere);
    let places = asked.at.iter();
    let at = places
        .filter_map(|at| place(job, lift, *at, asked.heading, field.as_ref(), search.as_ref(), &mut set_backs))
        .collect();
    let unit = job.machines.get(lift.machine);
    let attachment = unit.and_then(|u| u.machine.attachment(&lift.attachment));
    let load = job.loads.get(lift.load);
    let why_not = field.as_ref().map_or_else(Vec::new, StandField::why_not);
    LiftStands {
        lift: lift.id.clone(),
        name: lift.name.clone(),
        machine: unit.map_or_else(String::new, |u| u.machine.name.clone()),
        attachment: attachment.map_or_else(|| lift.attachment.clone(), |a| a.name.clone()),
        support: lift.support,
        load: load.map_or_else(String::new, |l| l.name.clone()),
        load_kg: load.map_or(f64::NAN, |l| l.mass_kg.high),
        landing: job.landings.get(lift.landing).map_or_else(String::new, |l| l.name.clone()),
        radius_m: asked.spec.radius,
        area_m2: field.as_ref().map_or(0.0, |f| f.grid.count() as f64 * f.grid.cell * f.grid.cell),
        passing_m2: field.as_ref().filter(|f| f.floor() <= Status::Condition).map_or(0.0, StandField::passing_area),
        everywhere: field.as_ref().map_or_else(Vec::new, refusing_everywhere),
        why_not: why_not.into_iter().map(|(by, area_m2)| RefusedArea { by, area_m2 }).collect(),
        best,
        changes: if passes || field.is_none() { Vec::new() } else { changes(job, lift) },
        at,
        field: field.as_ref().map(FieldScene::from),
    }
}

/// Checks that refuse any stand, each once.
fn refusing_everywhere(field: &StandField) -> Vec<String> {
    let mut out: Vec<String> = Vec::new();
    for (id, _) in field.everywhere.iter().filter(|(_, s)| *s > Status::Condition) {
        if !out.iter().any(|o| o == id) {
            out.push((*id).to_owned());
        }
    }
    out
}

fn passes_somewhere(field: &StandField) -> bool {
    field.floor() <= Status::Condition && field.passing_area() > 0.0
}

/// The whole field, each thread with every so-manieth cell. How many threads there are changes no answer.
fn by_threads(search: &StandSearch<'_>) -> StandField {
    let threads = std::thread::available_parallelism().map_or(2, std::num::NonZero::get).clamp(1, 8);
    let order = search.coarse_to_fine();
    let mut field = search.field();
    let answers: Vec<Vec<_>> = std::thread::scope(|scope| {
        let start = |k: usize| {
            let order = &order;
            scope.spawn(move || {
                let mut worker = Worker::new();
                order.iter().skip(k).step_by(threads).map(|i| (*i, search.ask(*i, &mut worker))).collect::<Vec<_>>()
            })
        };
        let handles: Vec<_> = (0..threads).map(start).collect();
        // A thread that panics leaves its cells not yet known.
        handles.into_iter().map(|h| h.join().unwrap_or_default()).collect()
    });
    for some in answers {
        field.fill(some);
    }
    field
}

/// The whole check in one place. `None` if the lift refers to what the job does not have.
fn place(
    job: &Job,
    lift: &Lift,
    at: DVec2,
    heading: Option<f64>,
    field: Option<&StandField>,
    search: Option<&StandSearch<'_>>,
    set_backs: &mut SetBacks,
) -> Option<PlaceAnswer> {
    let heading = heading.or_else(|| aimed(job, lift, at)).unwrap_or(f64::NAN);
    let there = lift.from_stand(Stand { at, heading });
    let check = check_lift_with(job, &there, set_backs)?;
    let verdict = check.verdict();
    let nearest = match (field, search) {
        (Some(field), Some(search)) if verdict == Verdict::NoGo => nearest(field, search, at),
        _ => None,
    };
    Some(PlaceAnswer {
        east_m: at.x,
        north_m: at.y,
        heading_deg: geometry::heading_to_degrees(heading),
        verdict,
        by: refused_first(&check),
        findings: check.findings(),
        nearest,
    })
}

/// Cells between a place and its landing whose size makes it the middle of one, to about a centimetre.
const STEPS: f64 = 900.0;
const LEAST_CELL: f64 = 0.01;

/// The heading that a cell of a field would have there.
fn aimed(job: &Job, lift: &Lift, at: DVec2) -> Option<f64> {
    let centre = job.landings.get(lift.landing)?.at;
    let away = at.distance(centre);
    let cell = (away / STEPS).max(LEAST_CELL);
    let radius = away + 2.0 * cell;
    let search = StandSearch::new(job, lift, FieldSpec { radius, cell })?;
    let half = (radius / cell + 1e-9).floor() as usize;
    let grid = FieldGrid { centre, cell, half };
    Some(search.stand(grid.cell_at(at)?).heading)
}

/// The nearest cell that passes.
fn nearest(field: &StandField, search: &StandSearch<'_>, at: DVec2) -> Option<NearestPlace> {
    let passing = field.cells().filter(|(i, _)| field.verdict(*i).is_some_and(|v| v != Verdict::NoGo));
    let away = |i: usize| field.grid.at(i).distance(at);
    let (i, _) = passing.min_by(|(a, _), (b, _)| away(*a).total_cmp(&away(*b)))?;
    let stand = search.stand(i);
    Some(NearestPlace {
        east_m: stand.at.x,
        north_m: stand.at.y,
        heading_deg: geometry::heading_to_degrees(stand.heading),
        distance_m: away(i),
    })
}
