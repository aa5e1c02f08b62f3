//! One cell: what the single check says there, as soon as it is certain.

use super::FieldCell;
use super::reason::{Reason, of_check};
use crate::Stand;
use crate::check::{WIND_LIMIT, check_context, everywhere, sudden_status};
use crate::checks::chart::Leaves;
use crate::checks::settlement::Settling;
use crate::checks::statics::Statics;
use crate::checks::surely::{Surely, surely, surely_all};
use crate::checks::{
    approach, bearing, buried, chart, edges, ground, level, line, load_shape, mat_stack, matters, obstacle, rutting,
    settlement, sight, statics, steering, zones,
};
use crate::context::Context;
use crate::posed::{Aimed, Posed, aim, contacts, posed};
use crate::set_backs::SetBacks;
use evidence::Status;
use machine::Attachment;

/// What refuses, and how.
type Refusal = (Reason, Status);

/// True for a status that refuses.
fn refuses(status: Status) -> bool {
    status > Status::Condition
}

/// The status so far together with the next one; what refuses ends it.
fn with(so_far: Status, by: Reason, status: Status) -> Result<Status, Refusal> {
    if refuses(status) { Err((by, status)) } else { Ok(so_far.max(status)) }
}

/// What a stand gives. Cheap checks come first and end it where they refuse: each is the same function that the single
/// check asks, with the same numbers, and comes before the later ones in [`super::ORDER`].
///
/// `aimed`: the boom aimed from there, where that is known. `floor`: the worst status of what no stand can mend. From a
/// condition on a stand counts as no better than a condition.
pub(super) fn answer(
    ctx: &mut Context<'_>,
    aimed: Option<Aimed>,
    floor: Status,
    set_backs: &mut SetBacks,
) -> FieldCell {
    afresh(ctx);
    let known = early(ctx, aimed).and_then(|mut place| {
        let so_far = place.bears(ctx)?;
        late(ctx, &mut place, (so_far, floor), set_backs)
    });
    told(ctx, known, floor, set_backs)
}

/// The same where it was asked before and nothing but the load's weight differs. `point`: points the machine and aims its
/// boom.
pub(super) fn answer_again<'a>(
    ctx: &mut Context<'a>,
    point: impl Fn(&mut Context<'a>) -> Option<Aimed>,
    kept: &mut Kept,
    floor: Status,
    set_backs: &mut SetBacks,
) -> FieldCell {
    afresh(ctx);
    let known = kept.bears(ctx, point).and_then(|(place, so_far)| late(ctx, place, (so_far, floor), set_backs));
    told(ctx, known, floor, set_backs)
}

/// The cell of what is known of a stand; where that is not enough, of the whole check.
fn told(
    ctx: &Context<'_>,
    known: Result<Option<Status>, Refusal>,
    floor: Status,
    set_backs: &mut SetBacks,
) -> FieldCell {
    let mut cell = match known {
        Err((by, status)) => FieldCell::refused(by, status),
        Ok(Some(placed)) => FieldCell { placed: Some(placed), by: None },
        Ok(None) => whole(ctx, set_backs),
    };
    // What is accepted for the lift's own place leaves matters open at any other.
    let open = if ctx.lift.own_place(ctx.stand) { Status::Go } else { matters::status(ctx) };
    if cell.by.is_none() && refuses(open) {
        cell = FieldCell::refused(Reason::Everywhere, open);
    }
    // The better of the two would go with how it was found out.
    if floor > Status::Go && cell.placed == Some(Status::Go) {
        cell.placed = Some(Status::Condition);
    }
    cell
}

/// Without what is known of how the ground gave where the machine stood before.
fn afresh(ctx: &mut Context<'_>) {
    (ctx.gives, ctx.leans) = ([0.0; 2], 0.0);
}

/// A machine as it stands, with its boom where the landing wants it: what goes with the place and not with the load's weight.
#[derive(Debug, Clone)]
pub(super) struct Place {
    posed: Posed,
    /// Worst status of what is asked before the chart.
    before: Status,
    leaves: Leaves,
    /// What stands around, where it was asked: on no soil that gives.
    around: Option<Result<Around, Refusal>>,
    /// True where it is kept for other weights of the load.
    kept: bool,
    /// For every load up to some mass: that the statics refuse nothing, and that they are go.
    proven: [UpTo; 2],
}

/// What is proven of every load up to some mass.
#[derive(Debug, Clone, Copy)]
struct UpTo {
    /// The mass, kg, and what is proven.
    proven: Option<(f64, Surely)>,
    /// The least mass for which it could not be proven, kg.
    not: f64,
}

impl Default for UpTo {
    fn default() -> Self {
        Self { proven: None, not: f64::INFINITY }
    }
}

/// Times its weight that a load is taken for, so that the next heavier ones are proven with it.
const AHEAD: f64 = 1.1;

impl UpTo {
    /// For a load of that mass, kg, that the chart carries; `most`: what it carries at all.
    fn of(&mut self, mass: f64, most: f64, prove: impl Fn(f64) -> Option<Surely>) -> Option<Surely> {
        if let Some((known, proven)) = self.proven
            && mass <= known
        {
            return Some(proven);
        }
        let more = (mass * AHEAD).min(most);
        if more >= self.not {
            return None;
        }
        let proven = prove(more);
        match proven {
            Some(proven) => self.proven = Some((more, proven)),
            None => self.not = more,
        }
        proven
    }
}

/// Lines, things and zones about a machine that the ground does not lower.
#[derive(Debug, Clone)]
struct Around {
    status: Status,
    /// Of each zone of soft ground that it stands in.
    soft: Vec<Status>,
}

/// What is known of a cell, whatever the load weighs.
#[derive(Debug, Clone, Default)]
pub(super) enum Kept {
    /// Not asked yet.
    #[default]
    Nothing,
    /// Refused before the weight matters.
    Refused(Stand, Refusal),
    /// The chart refused what was asked before.
    Charted(Stand, Leaves),
    /// The machine as it stands there.
    Place(Stand, Box<Place>),
}

impl Kept {
    /// The place, where the chart carries the load, and the worst status so far.
    fn bears<'a>(
        &mut self,
        ctx: &mut Context<'a>,
        point: impl Fn(&mut Context<'a>) -> Option<Aimed>,
    ) -> Result<(&mut Place, Status), Refusal> {
        match self {
            Self::Refused(stand, refusal) => {
                ctx.stand = *stand;
                return Err(*refusal);
            }
            Self::Charted(stand, leaves) if refuses(leaves.status(ctx.load.mass_kg.high)) => {
                ctx.stand = *stand;
                return Err((Reason::Chart, leaves.status(ctx.load.mass_kg.high)));
            }
            Self::Place(stand, _) => ctx.stand = *stand,
            Self::Nothing | Self::Charted(..) => {
                let aimed = point(ctx);
                *self = match early(ctx, aimed) {
                    Err(refusal) => Self::Refused(ctx.stand, refusal),
                    Ok(place) if refuses(place.leaves.status(ctx.load.mass_kg.high)) => {
                        Self::Charted(ctx.stand, place.leaves)
                    }
                    Ok(place) => Self::Place(ctx.stand, Box::new(Place { kept: true, ..place })),
                };
            }
        }
        match self {
            Self::Refused(_, refusal) => Err(*refusal),
            Self::Charted(_, leaves) => Err((Reason::Chart, leaves.status(ctx.load.mass_kg.high))),
            Self::Place(_, place) => {
                let so_far = place.bears(ctx)?;
                Ok((place, so_far))
            }
            Self::Nothing => Err(NOT_SURVEYED),
        }
    }
}

const NOT_SURVEYED: Refusal = (Reason::Survey, Status::CannotTell);

/// What is asked before the movement and the forces.
///
/// How far the ground gives is not counted yet: it makes the box that is read in the chart larger, so what the chart refuses
/// without it, it refuses with it.
fn early(ctx: &Context<'_>, aimed: Option<Aimed>) -> Result<Place, Refusal> {
    let aimed = aimed.map_or_else(|| aim(ctx), Ok).map_err(|_| NOT_SURVEYED)?;
    with(Status::Go, Reason::Approach, approach::pointed(ctx, aimed.target(), None).status())?;
    if !aimed.reaches() {
        return Err((Reason::Reach, Status::NoGo));
    }
    let posed = posed(ctx, aimed).map_err(|_| NOT_SURVEYED)?;
    let so_far = with(Status::Go, Reason::Approach, approach::approach(ctx, &posed).status())?;
    let level = level::level(ctx, &posed).map_or(Status::CannotTell, |l| l.status(ctx));
    let before = with(so_far, Reason::Level, level)?;
    let leaves = chart::leaves(ctx, &posed);
    Ok(Place { posed, before, leaves, around: None, kept: false, proven: [UpTo::default(); 2] })
}

impl Place {
    /// The worst status, with the chart for the load's weight.
    fn bears(&self, ctx: &Context<'_>) -> Result<Status, Refusal> {
        let so_far = with(self.before, Reason::Chart, self.leaves.status(ctx.load.mass_kg.high))?;
        let tilted = load_shape::tilted(ctx, Some(&self.posed)).map_or(Status::Go, |s| s.status());
        with(so_far, Reason::Load, tilted)
    }
}

/// What stands about a machine.
fn around(ctx: &Context<'_>, posed: &Posed, attachment: &Attachment) -> Result<Around, Refusal> {
    let mut so_far = Status::Go;
    for l in &ctx.job.lines {
        so_far = with(so_far, Reason::Line, line::outcome(ctx, Some(posed), Some(attachment), l).status(ctx, l))?;
    }
    if let Some(status) = obstacle::outcomes(ctx, Some(posed)).status() {
        so_far = with(so_far, Reason::Obstacles, status)?;
    }
    let zones = zones::met(ctx, Some(posed));
    for asked in [Reason::Obstacles, Reason::People] {
        for met in zones.iter().filter(|m| of_check(m.check) == asked) {
            so_far = with(so_far, asked, met.status)?;
        }
    }
    let soft = zones.iter().filter(|m| of_check(m.check) == Reason::Ground).map(|m| m.status).collect();
    Ok(Around { status: so_far, soft })
}

/// Everything else, where the statics are proven to refuse nothing; `None` where the whole check has to tell.
fn late(
    ctx: &Context<'_>,
    place: &mut Place,
    (mut so_far, floor): (Status, Status),
    set_backs: &mut SetBacks,
) -> Result<Option<Status>, Refusal> {
    let Some(attachment) = ctx.attachment else { return Ok(None) };
    let Place { posed, around: known, leaves, kept, proven, .. } = place;
    let posed = &*posed;
    let given;
    let mut ctx = ctx;
    let soil = on_soil(ctx, posed);
    let mut pressed = None;
    if soil {
        // How far the soil gives moves the machine, and what it carries goes with the forces: these are reckoned in full.
        let Some(forces) = statics::forces(ctx, posed, attachment) else { return Ok(None) };
        let settling = settlement::settling(ctx, &forces, posed);
        if let Some(by) = &settling {
            given = Context { gives: by.gives, leans: by.leans(), ..*ctx };
            ctx = &given;
            so_far = with(so_far, Reason::Chart, chart::status(ctx, Ok(posed)))?;
        }
        pressed = Some((forces, settling));
    }
    let met = if soil {
        around(ctx, posed, attachment)?
    } else {
        known.get_or_insert_with(|| around(ctx, posed, attachment)).clone()?
    };
    so_far = so_far.max(met.status);
    // Whether it is go or a condition is asked only where nothing is a condition already.
    let graded = so_far == Status::Go && floor == Status::Go;
    let mass = ctx.load.mass_kg;
    if *kept
        && !soil
        && (0.0..=mass.high).contains(&mass.low)
        && let Some(most) = leaves.capacity()
        && let Some(proven) = proven[usize::from(graded)]
            .of(ctx.load.mass_kg.high, most, |mass| surely_all(ctx, posed, attachment, graded, mass))
    {
        // Forces under a heavier load may ask too much of the ground: then those under this one are asked.
        let known = stood(ctx, posed, (so_far, &met.soft), (proven, None), set_backs);
        if !matches!(known, Ok(None)) {
            return known;
        }
    }
    let Some(proven) = surely(ctx, posed, attachment, graded) else { return Ok(None) };
    stood(ctx, posed, (so_far, &met.soft), (proven, pressed), set_backs)
}

/// What the forces do to the ground, and what is asked last; `soft`: zones of soft ground, `pressed`: forces and what gives
/// on stated soil.
fn stood(
    ctx: &Context<'_>,
    posed: &Posed,
    (mut so_far, soft): (Status, &[Status]),
    (proven, pressed): (Surely, Option<(Statics, Option<Settling<'_>>)>),
    set_backs: &mut SetBacks,
) -> Result<Option<Status>, Refusal> {
    let Surely { force, status } = proven;
    let soil = pressed.is_some();
    so_far = so_far.max(status);
    for status in soft {
        so_far = with(so_far, Reason::Ground, *status)?;
    }
    let force = match &pressed {
        None => {
            let carried = ground::by_person(ctx, Some(force));
            if refuses(carried) && ground::goes_with_force(ctx) {
                return Ok(None);
            }
            so_far = with(so_far, Reason::Ground, carried)?;
            force
        }
        Some((forces, settling)) => {
            let outcome = bearing::outcome(ctx, forces, posed);
            let carried = ground::status(ctx, Some(forces), Some(posed), outcome.as_ref());
            so_far = with(so_far, Reason::Ground, carried)?;
            let settled = settling.as_ref().and_then(|by| by.status(ctx, posed));
            so_far = with(so_far, Reason::Settlement, settled.unwrap_or(Status::Go))?;
            let ruts = rutting::outcome(ctx, forces, posed).map_or(Status::Go, |r| r.status());
            so_far = with(so_far, Reason::Rutting, ruts)?;
            forces.force
        }
    };
    let by_edges = edges::met(ctx, Some(posed), force, set_backs).iter().map(edges::EdgeMet::status).max();
    let by_buried = buried::met(ctx, Some(posed), force).iter().map(buried::BuriedMet::status).max();
    if !soil && by_edges.max(by_buried).is_some_and(|s| s > Status::Go) {
        // With forces no less than the exact ones patches are no smaller: only what is go with them is certain.
        return Ok(None);
    }
    so_far = with(so_far, Reason::Edges, by_edges.unwrap_or(Status::Go))?;
    so_far = with(so_far, Reason::Buried, by_buried.unwrap_or(Status::Go))?;
    for status in [steering::status(ctx, Some(posed)), sight::status(ctx, Some(posed))].into_iter().flatten() {
        so_far = with(so_far, Reason::Other, status)?;
    }
    Ok(Some(so_far))
}

/// True unless no stated soil comes near the machine, mats and the stand's error counted: then none of it is asked.
fn on_soil(ctx: &Context<'_>, posed: &Posed) -> bool {
    let middle = posed.footing.site_from_machine.translation.truncate();
    let on = contacts(ctx);
    let far = libm::hypot(on.front_x.abs().max(on.rear_x.abs()), on.front_half.max(on.rear_half));
    let [length, width] = mat_stack::outline(ctx).unwrap_or([0.0; 2]);
    let reach = far + libm::hypot(length, width) + ctx.policy.stand_error + PATCH;
    ctx.job.soils.iter().any(|soil| soil.reaches(middle, reach))
}

/// More than any patch of a tyre or pad reaches from its middle, and than levelling moves the machine, m.
const PATCH: f64 = 2.0;

/// True where it is proven, without the whole check, that nothing refuses but the maker's wind limit, which is not asked.
pub(crate) fn refuses_nothing(ctx: &Context<'_>, set_backs: &mut SetBacks) -> bool {
    let ctx = &mut { *ctx };
    afresh(ctx);
    let placed = early(ctx, None).and_then(|mut place| {
        let so_far = place.bears(ctx)?;
        late(ctx, &mut place, (so_far, Status::Condition), set_backs)
    });
    matches!(placed, Ok(Some(_))) && everywhere(ctx).iter().all(|(id, s)| *id == WIND_LIMIT || !refuses(*s))
}

/// The single check.
fn whole(ctx: &Context<'_>, set_backs: &mut SetBacks) -> FieldCell {
    let check = check_context(*ctx, set_backs);
    let statuses = check.at_stand().iter().copied().chain(sudden_status(&check).map(|s| ("sudden", s)));
    let mut cell = FieldCell { placed: Some(Status::Go), by: None };
    for (id, status) in statuses {
        cell.placed = cell.placed.max(Some(status));
        if refuses(status) {
            let this = of_check(id);
            cell.by = Some(cell.by.map_or(this, |by| by.min(this)));
        }
    }
    cell
}
