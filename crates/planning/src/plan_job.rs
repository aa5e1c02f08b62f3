//! The plan of a whole job.

use crate::check::{LiftCheck, check_lift_with, governing};
use crate::checks::{angle, chart, ground, metres, wind};
use crate::choosing::{Chosen, RADIUS, changes, equipped, look, settle};
use crate::plan::PLAN_SCHEMA;
use crate::plan_view::plan_view;
use crate::set_backs::SetBacks;
use crate::tolerance::tolerances;
use crate::{
    InputLine, Job, Lift, LiftPlan, LoadSummary, Plan, PlanHead, Reason, StandField, StandFrom, StandSummary,
    StandTolerance, check_routine, lift_way, scene, stand_field, steps, text,
};
use evidence::{Certainty, Finding, Message, Source, Status, TextId, Verdict};
use sha2::{Digest, Sha256};
use std::sync::OnceLock;

/// Does `work` for every number below the first, in any order, by any number of threads, and returns when all is done.
pub type ShareOut<'a> = dyn Fn(usize, &(dyn Fn(usize) + Sync)) + 'a;

/// Plans a job: every lift with what is chosen for it, the ground around its landing, how far off its stand may be. Same job,
/// same engine version, same plan.
pub fn plan(job: &Job) -> Plan {
    plan_shared_out(job, &|count, work| (0..count).for_each(work))
}

/// The same plan, its lifts shared out by the caller, who may start threads.
pub fn plan_shared_out(job: &Job, share_out: &ShareOut<'_>) -> Plan {
    // What was seen of an attachment goes with what is on the machine before and after: all are equipped first.
    let lifts = each(job.lifts.len(), share_out, |i| equipped(job, &job.lifts[i]));
    let job = &Job { lifts, ..job.clone() };
    let looked = each(job.lifts.len(), share_out, |i| look(job, &job.lifts[i]));
    let mut set_backs = SetBacks::default();
    let mut chosen: Vec<Chosen> = Vec::with_capacity(job.lifts.len());
    for looked in looked {
        chosen.push(settle(job, looked, &chosen, &mut set_backs));
    }
    // What was seen of an attachment holds from lift to lift on one machine: as they are done, not as they were stated.
    let done = Job { lifts: chosen.iter().map(|c| c.lift.clone()).collect(), ..job.clone() };
    let lifts = each(chosen.len(), share_out, |i| plan_lift(&done, chosen[i].clone(), true, &mut SetBacks::default()));
    let mut plan = of_lifts(&done, lifts);
    if !job.routines.is_empty() {
        // Whether a lift falls within a routine goes with how it is planned: as stated, or as chosen for it.
        let routines = each(job.routines.len(), share_out, |i| check_routine(job, &job.routines[i]));
        plan.routines = routines.into_iter().map(|r| r.plan(job, &done.lifts)).collect();
        plan.digest = digest(&plan);
    }
    plan
}

/// The answers in order.
fn each<T: Send + Sync>(count: usize, share_out: &ShareOut<'_>, answer: impl Fn(usize) -> T + Sync) -> Vec<T> {
    let answers: Vec<OnceLock<T>> = (0..count).map(|_| OnceLock::new()).collect();
    share_out(count, &|i| {
        if let Some(place) = answers.get(i) {
            place.get_or_init(|| answer(i));
        }
    });
    // What was left out is done here.
    answers.into_iter().enumerate().map(|(i, a)| a.into_inner().unwrap_or_else(|| answer(i))).collect()
}

/// The same as the job states it, without looking around: nothing is chosen, no other stand is sought, and how far off a
/// stand may be is not asked. A part of the time.
pub fn plan_as_stated(job: &Job) -> Plan {
    let mut set_backs = SetBacks::default();
    let as_stated = |lift: &Lift| plan_lift(job, Chosen::as_stated(lift), false, &mut set_backs);
    of_lifts(job, job.lifts.iter().map(as_stated).collect())
}

fn of_lifts(job: &Job, lifts: Vec<LiftPlan>) -> Plan {
    let mut plan = Plan {
        schema: PLAN_SCHEMA.to_owned(),
        engine: env!("CARGO_PKG_VERSION").to_owned(),
        digest: String::new(),
        head: PlanHead {
            job: job.name.clone(),
            site: job.site.clone(),
            date: job.date.clone(),
            planner: job.planner.clone(),
            invented: job.invented,
        },
        verdict: Plan::worst(&lifts),
        lifts,
        routines: Vec::new(),
        inputs: inputs(job),
        warnings: warnings(job),
        cautions: [
            text::CAUTION_MANUAL,
            text::CAUTION_COMPETENT,
            text::CAUTION_INPUTS,
            text::CAUTION_NEVER,
            text::CAUTION_TRIAL,
            text::CAUTION_NOT_COMPUTED,
        ]
        .map(Message::from)
        .to_vec(),
        ends_when: text::ENDS.map(Message::from).to_vec(),
        emergency: [text::EMERGENCY_TIP, text::EMERGENCY_LINE].map(Message::from).to_vec(),
    };
    plan.digest = digest(&plan);
    plan
}

/// SHA-256 over the plan's JSON with an empty digest: keys in the order of the form, floats in
/// their shortest form.
pub fn digest(plan: &Plan) -> String {
    let mut bare = plan.clone();
    bare.digest = String::new();
    // A plan holds only numbers, texts and lists: it always serialises.
    let bytes = serde_json::to_vec(&bare).unwrap_or_default();
    Sha256::digest(&bytes).iter().fold(String::new(), |mut hex, byte| {
        use std::fmt::Write as _;
        let _ = write!(hex, "{byte:02x}");
        hex
    })
}

fn inputs(job: &Job) -> Vec<InputLine> {
    job.inputs.clone()
}

fn warnings(job: &Job) -> Vec<Message> {
    let mut out: Vec<Message> = job.warnings.list.iter().map(warning_at).collect();
    for unit in job.machines.iter().filter(|u| u.machine.invented) {
        out.push(text::WARN_INVENTED.with("name", &unit.machine.name));
    }
    for load in &job.loads {
        // The middle of the pack lies half its depth ahead: a centre beyond it means heavy parts outside.
        if load.hanging.is_none() && load.centre_ahead.nominal > load.depth / 2.0 + 0.05 {
            out.push(text::WARN_HEAVY_OUTSIDE.with("load", &load.name));
        }
    }
    out
}

/// A doubtful input with its file and line.
fn warning_at(fault: &evidence::Fault) -> Message {
    let place = &fault.place;
    let at = match place.line {
        Some(line) => format!("{}:{line}", place.file),
        None => place.file.clone(),
    };
    if at.is_empty() {
        fault.message.clone()
    } else {
        text::WARN_AT.with("what", fault.message.clone()).with("place", at)
    }
}

fn plan_lift(job: &Job, mut chosen: Chosen, looks_around: bool, set_backs: &mut SetBacks) -> LiftPlan {
    let known_way = chosen.way.take();
    let lift = &chosen.lift;
    let stand = StandSummary {
        east_m: lift.stand.at.x,
        north_m: lift.stand.at.y,
        heading_deg: geometry::heading_to_degrees(lift.stand.heading),
        wheel_heights_m: [None; 4],
        slope_along: None,
        slope_across: None,
        face_to_landing_m: 0.0,
        passes_left_m: 0.0,
        ground: None,
        boom_angle_rad: None,
        extension_m: None,
        reach_m: None,
        height_m: None,
    };
    let Some(check) = check_lift_with(job, lift, set_backs) else {
        return unresolved(job, lift, stand);
    };
    let ctx = &check.ctx;
    let tolerances = tolerances(&check, set_backs);
    let mut findings = check.findings();
    wind::add_turn(&mut findings, &tolerances);
    let asks = looks_around && check.verdict() != Verdict::NoGo;
    let stand_tolerance = asks.then(|| stand_field::tolerance(&check.ctx, set_backs));
    let way = if asks { known_way.or_else(|| lift_way::way(&check.ctx)) } else { None };
    findings.extend(way.as_ref().map(|w| lift_way::finding(&check.ctx, w)));
    findings.extend(stand_finding(&check, &chosen, stand_tolerance.as_ref()));
    let verdict = findings.iter().map(|f| f.status).max().map_or(Verdict::NoGo, Into::into).max(check.verdict());
    // What would help a stand does not open a way.
    let nowhere = looks_around && check.verdict() == Verdict::NoGo && chosen.others.is_empty();
    let changes = if nowhere { changes(job, lift) } else { Vec::new() };
    let refused = verdict == Verdict::NoGo;
    let posed = check.posed.as_ref().ok();
    // Nobody is told how to make a lift that must not be made.
    let to_be_made = posed.filter(|_| !refused);
    let movement = if refused { None } else { check.movement() };
    LiftPlan {
        id: lift.id.clone(),
        name: lift.name.clone(),
        machine: ctx.machine.name.clone(),
        attachment: ctx.attachment.map_or_else(|| lift.attachment.clone(), |a| a.name.clone()),
        support: lift.support,
        landing: ctx.landing.name.clone(),
        task: lift.task,
        load: LoadSummary {
            name: ctx.load.name.clone(),
            mass_kg: ctx.load.mass_kg,
            certainty: ctx.load.certainty,
            centre_ahead_m: ctx.load.centre_ahead,
            centre_left_m: ctx.load.centre_left,
            centre_up_m: ctx.load.centre_up,
            size_m: [ctx.load.depth, ctx.load.width, ctx.load.height],
        },
        stand: posed_stand(&check, stand),
        verdict,
        governing: governing(&findings),
        steps: to_be_made.map_or_else(Vec::new, |p| steps::steps(ctx, p, movement.as_ref())),
        wheels: check.statics.as_ref().map_or_else(Vec::new, |s| ground::wheel_forces(ctx, s)),
        tolerances: if refused { Vec::new() } else { tolerances },
        stand_from: chosen.from,
        shares_stand_with: chosen.shared.and_then(|i| job.lifts.get(i)).map(|l| l.id.clone()),
        stand_tolerance: stand_tolerance.filter(|_| !refused),
        field: chosen.scene(),
        plan_view: Some(plan_view(ctx)),
        other_stands: chosen.others,
        way,
        changes,
        movement,
        elevation: posed.and_then(|p| scene::elevation(&check, p)),
        chart: posed.and_then(|p| scene::chart(&check, p)),
        findings,
    }
}

/// Ground refused by a reason that tells more than reach and side, m² (ours).
const TELLING: f64 = 1.0;

/// How far off the stand may be, or that there is none.
fn stand_finding(check: &LiftCheck<'_>, chosen: &Chosen, tolerance: Option<&StandTolerance>) -> Option<Finding> {
    if chosen.from == StandFrom::NotSought {
        let message = text::STAND_NONE_STATED.message();
        return Some(Finding::new("stand", Status::CannotTell, message).source(Source::CommonPractice));
    }
    if chosen.from == StandFrom::Nowhere {
        let reason = |id: TextId| text::STAND_NOT_SOUGHT.with("reason", id);
        let field = chosen.field.as_ref();
        let everywhere = field.and_then(|f| f.everywhere.iter().find(|(_, s)| *s > Status::Condition));
        let message = if let Some((check, _)) = everywhere {
            reason(crate::check_name(check).unwrap_or(text::REASON_EVERYWHERE))
        } else {
            // What lies out of reach, or on another side, tells nobody anything.
            let plain = |r: &Reason| matches!(r, Reason::Approach | Reason::Reach);
            let why = field.map_or_else(Vec::new, StandField::why_not);
            let telling = why.iter().find(|(r, area)| !plain(r) && *area >= TELLING).or_else(|| why.first());
            let by = telling.map(|(r, _)| *r);
            text::STAND_NOWHERE
                .with("radius", metres(RADIUS))
                .with("reason", by.map_or(text::REASON_SURVEY, Reason::name))
        };
        return Some(Finding::new("stand", Status::NoGo, message).source(Source::Mechanics));
    }
    let t = tolerance?;
    let (disc, turn) = (metres(t.disc_m), angle(t.turn_rad));
    let practice = Source::CommonPractice;
    if stand_field::led(&check.ctx, t) {
        let message = text::STAND_BY_EYE.with("disc", disc).with("turn", turn);
        return Some(Finding::new("stand", Status::Go, message).source(practice));
    }
    let (asked, asked_turn) = stand_field::by_eye();
    let message = text::STAND_BY_TAPE
        .with("disc", disc)
        .with("turn", turn)
        .with("asked", metres(asked))
        .with("asked_turn", angle(asked_turn));
    Some(Finding::new("stand", Status::Condition, message).remedy(text::DO_SET_OUT).source(practice))
}

fn posed_stand(check: &LiftCheck<'_>, mut stand: StandSummary) -> StandSummary {
    let ctx = &check.ctx;
    let (sin, cos) = libm::sincos(ctx.stand.heading);
    let to_landing = ctx.landing.at - ctx.stand.at;
    let forward = geometry::DVec2::new(cos, sin);
    stand.face_to_landing_m = to_landing.dot(forward) - ctx.landing.size.x / 2.0 - ctx.machine.front_face();
    stand.passes_left_m = -to_landing.dot(forward.perp());
    match &check.posed {
        Err(crate::posed::NotPosed::Ground(heights)) => stand.wheel_heights_m = *heights,
        Err(crate::posed::NotPosed::Attachment) => {}
        Ok(posed) => {
            let f = &posed.ground;
            stand.wheel_heights_m = f.heights.map(Some);
            stand.slope_along = Some(f.along);
            stand.slope_across = Some(f.across);
            stand.ground = ctx.job.ground.surfaces.get(f.surface).map(|s| s.name.clone());
            if let Ok([above, _]) = posed.reach {
                stand.boom_angle_rad = Some(above.angle);
                stand.extension_m = Some(above.extension);
            }
            if let (Some(chart), Ok([above, _]), Some(a)) =
                (chart::choose(ctx, Some(posed)), posed.reach, ctx.attachment)
            {
                let tool = crate::posed::tool_point(ctx, a, above);
                let place = chart::Place::landing(tool);
                let at = chart::read(ctx, posed, chart, a, place, &mut evidence::Silent).point.at;
                stand.reach_m = Some(at.x);
                stand.height_m = Some(at.y);
            }
        }
    }
    stand
}

/// A lift whose machine, load or landing is not in the job: nothing can be told.
fn unresolved(job: &Job, lift: &Lift, stand: StandSummary) -> LiftPlan {
    let finding = Finding::new("chart", Status::CannotTell, text::LIFT_UNRESOLVED);
    let zero = evidence::Ranged::exact(0.0);
    LiftPlan {
        id: lift.id.clone(),
        name: lift.name.clone(),
        machine: job.machines.get(lift.machine).map_or_else(String::new, |m| m.machine.name.clone()),
        attachment: lift.attachment.clone(),
        support: lift.support,
        landing: job.landings.get(lift.landing).map_or_else(String::new, |l| l.name.clone()),
        task: lift.task,
        load: LoadSummary {
            name: job.loads.get(lift.load).map_or_else(String::new, |l| l.name.clone()),
            mass_kg: job.loads.get(lift.load).map_or(zero, |l| l.mass_kg),
            certainty: Certainty::Estimated,
            centre_ahead_m: zero,
            centre_left_m: zero,
            centre_up_m: zero,
            size_m: [0.0; 3],
        },
        stand,
        verdict: evidence::Verdict::NoGo,
        governing: 0,
        findings: vec![finding],
        steps: Vec::new(),
        wheels: Vec::new(),
        tolerances: Vec::new(),
        stand_from: crate::StandFrom::default(),
        shares_stand_with: None,
        stand_tolerance: None,
        field: None,
        plan_view: None,
        other_stands: Vec::new(),
        way: None,
        changes: Vec::new(),
        movement: None,
        elevation: None,
        chart: None,
    }
}
