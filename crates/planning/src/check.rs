//! Every check of one lift in fixed order: numbers and status.

use crate::boom_movement::boom_movement;
use crate::checks::line::LineOutcome;
use crate::checks::obstacle::Obstacles;
use crate::checks::statics::Statics;
use crate::checks::zones::Met;
use crate::checks::{
    approach, attachment, axle, bearing, buried, chart, contacts, edges, fitted, forks, gates, ground, identity,
    landing, landing_edge, landing_room, level, line, load, load_shape, machine_fit, matters, movement, obstacle,
    rigging, rutting, settlement, settlement_finding, sight, slewing, statics, steering, stops, sudden, tool, tyres,
    wind, zones,
};
use crate::context::Context;
use crate::posed::{NotPosed, Posed, pose};
use crate::set_backs::SetBacks;
use crate::{BoomMovement, Job, Lift, boom_path, text};
use evidence::{Finding, Status, Verdict};

/// Id of the check against the maker's wind limit.
pub(crate) const WIND_LIMIT: &str = "wind";

/// What the checks of one lift found: enough to decide, no text and no working.
pub struct LiftCheck<'a> {
    pub(crate) ctx: Context<'a>,
    pub(crate) posed: Result<Posed, NotPosed>,
    pub(crate) statics: Option<Statics>,
    pub(crate) lines: Vec<LineOutcome>,
    obstacles: Obstacles,
    zones: Vec<Met>,
    soil: Option<bearing::OnSoil<'a>>,
    settling: Option<settlement::Settling<'a>>,
    rutted: Option<rutting::Rutted<'a>>,
    edges: Vec<edges::EdgeMet<'a>>,
    buried: Vec<buried::BuriedMet<'a>>,
    /// Of each check that goes with the stand, by the id that its findings carry.
    statuses: Vec<(&'static str, Status)>,
    /// Of every other.
    everywhere: Vec<(&'static str, Status)>,
    /// Worst of the checks that place and weight can change.
    placed: Status,
    /// How the boom's movement came about.
    pub(crate) way: movement::Outcome,
}

/// Checks one lift. Every check runs, whatever the others say.
///
/// `None` if the lift refers to a machine, load or landing that the job does not have.
pub fn check_lift<'a>(job: &'a Job, lift: &'a Lift) -> Option<LiftCheck<'a>> {
    check_lift_with(job, lift, &mut SetBacks::default())
}

/// The same with set-backs that are kept from check to check: what was solved beside an excavation is looked up. The
/// answer is that of [`check_lift`], whatever was checked before.
///
/// `None` if the lift refers to a machine, load or landing that the job does not have.
pub fn check_lift_with<'a>(job: &'a Job, lift: &'a Lift, set_backs: &mut SetBacks) -> Option<LiftCheck<'a>> {
    let ctx = Context::new(job, lift)?;
    let mut check = with_another_way(&ctx, check_context(ctx, set_backs), set_backs);
    let sudden = sudden_status(&check);
    check.statuses.extend(sudden.map(|s| ("sudden", s)));
    Some(check)
}

/// The same with the plain movement of the boom alone: no other is looked for. What a field of stands asks of every place.
///
/// `None` if the lift refers to a machine, load or landing that the job does not have.
pub fn check_plain_movement<'a>(job: &'a Job, lift: &'a Lift, set_backs: &mut SetBacks) -> Option<LiftCheck<'a>> {
    let mut check = check_context(Context::new(job, lift)?, set_backs);
    let sudden = sudden_status(&check);
    check.statuses.extend(sudden.map(|s| ("sudden", s)));
    Some(check)
}

/// What happens all at once, of a check that left it out.
pub(crate) fn sudden_status(check: &LiftCheck<'_>) -> Option<Status> {
    sudden::status(&check.ctx, check.statics.as_ref(), check.posed.as_ref().ok())
}

/// The check with another movement of the boom, where the plain one is refused and another passes; else the check as it
/// is, whose findings name what is in the way.
pub(crate) fn with_another_way<'a>(
    ctx: &Context<'a>,
    mut plain: LiftCheck<'a>,
    set_backs: &mut SetBacks,
) -> LiftCheck<'a> {
    let (Ok(posed), Some(attachment), true) = (&plain.posed, ctx.attachment, plain.movement_refused()) else {
        return plain;
    };
    match boom_path::look_for(&plain.ctx, posed, attachment) {
        Ok(turns) => {
            let mut other = check_context(Context { turns: Some(turns), ..*ctx }, set_backs);
            // The other movement is a condition itself: one more (a light wheel) is no reason against it.
            if !other.movement_refused() && other.worst_of_rest() <= plain.worst_of_rest().max(Status::Condition) {
                other.way = movement::Outcome::Other(plain.in_the_way());
                other.statuses.extend(other.way.status().map(|s| ("movement", s)));
                return other;
            }
            plain.way = movement::Outcome::None(boom_path::NoWay::Loaded);
        }
        Err(why) => plain.way = movement::Outcome::None(why),
    }
    plain.statuses.extend(plain.way.status().map(|s| ("movement", s)));
    plain
}

/// Checks that go with the way that the boom takes, by the ids of their findings.
const BY_MOVEMENT: [&str; 6] = ["chart", "load-factor", "tilt", "line", "obstacles", "people"];

/// Checks what a context refers to with the movement that it states, but for what happens all at once: that refuses
/// nothing.
pub(crate) fn check_context<'a>(mut ctx: Context<'a>, set_backs: &mut SetBacks) -> LiftCheck<'a> {
    // Of a changed lift nothing is kept of how the ground gave before.
    (ctx.gives, ctx.leans) = ([0.0; 2], 0.0);
    let job = ctx.job;
    let posed = pose(&ctx);
    let level = posed.as_ref().ok().and_then(|p| level::level(&ctx, p));
    let mut settling = None;
    if let (false, Ok(p), Some(a)) = (job.soils.is_empty(), &posed, ctx.attachment) {
        settling = statics::forces(&ctx, p, a).and_then(|s| settlement::settling(&ctx, &s, p));
        if let Some(by) = &settling {
            (ctx.gives, ctx.leans) = (by.gives, by.leans());
        }
    }
    let statics = match (&posed, ctx.attachment) {
        (Ok(p), Some(a)) => statics::statics(&ctx, p, a),
        _ => None,
    };
    let lines: Vec<_> = job.lines.iter().map(|l| line::outcome(&ctx, posed.as_ref().ok(), ctx.attachment, l)).collect();

    let placed = [
        ("chart", chart::status(&ctx, posed.as_ref())),
        ("level", level.map_or(Status::CannotTell, |l| l.status(&ctx))),
        ("load-factor", statics.as_ref().map_or(Status::CannotTell, |s| s.factor_status(&ctx))),
        ("tilt", statics.as_ref().map_or(Status::CannotTell, Statics::tilt_status)),
        ("approach", posed.as_ref().map_or(Status::CannotTell, |p| approach::approach(&ctx, p).status())),
        ("load", load_shape::tilted(&ctx, posed.as_ref().ok()).map_or(Status::Go, |s| s.status())),
    ];
    let of_lines = || lines.iter().zip(&job.lines).map(|(o, l)| ("line", o.status(&ctx, l)));
    let soil = match (&statics, &posed) {
        (Some(s), Ok(p)) => bearing::outcome(&ctx, s, p),
        _ => None,
    };
    let ground = ("ground", ground::status(&ctx, statics.as_ref(), posed.as_ref().ok(), soil.as_ref()));
    let settled = match (&settling, &posed) {
        (Some(by), Ok(p)) => by.status(&ctx, p).map(|s| ("settlement", s)),
        _ => None,
    };
    let rutted = match (&statics, &posed) {
        (Some(s), Ok(p)) => rutting::outcome(&ctx, s, p),
        _ => None,
    };
    let ruts = rutted.map(|r| ("rutting", r.status()));
    let mut statuses: Vec<(&'static str, Status)> = placed.to_vec();
    statuses.extend(settled);
    statuses.extend(ruts);
    statuses.extend(of_lines());
    statuses.push(ground);
    statuses.push(("contacts", contacts::status(&ctx, statics.as_ref(), posed.as_ref().ok())));
    statuses.extend(steering::status(&ctx, posed.as_ref().ok()).map(|s| ("steering", s)));
    statuses.extend(sight::status(&ctx, posed.as_ref().ok()).map(|s| ("sight", s)));
    let obstacles = obstacle::outcomes(&ctx, posed.as_ref().ok());
    let obstacle = obstacles.status().map(|s| ("obstacles", s));
    statuses.extend(obstacle);
    let zones = zones::met(&ctx, posed.as_ref().ok());
    let of_zones = || zones.iter().map(|m| (m.check, m.status));
    statuses.extend(of_zones());
    // Without statics nothing is known of the forces; the machine's places are.
    let force = statics.as_ref().map_or([0.0; 4], |s| s.force);
    let edges = edges::met(&ctx, posed.as_ref().ok(), force, set_backs);
    let of_edges = || edges.iter().map(|m| ("edges", m.status()));
    statuses.extend(of_edges());
    let buried = buried::met(&ctx, posed.as_ref().ok(), force);
    let of_buried = || buried.iter().map(|m| ("buried", m.status()));
    statuses.extend(of_buried());
    // Lines and ground count where they refuse; what they cannot tell, no other place tells either.
    let refusing = of_lines()
        .chain([ground])
        .chain(settled)
        .chain(ruts)
        .chain(obstacle)
        .chain(of_zones())
        .chain(of_edges())
        .chain(of_buried())
        .filter(|(_, s)| *s >= Status::NoGo);
    let placed = placed.into_iter().chain(refusing).map(|(_, s)| s).max().unwrap_or(Status::CannotTell);
    let everywhere = everywhere(&ctx);
    let way = movement::Outcome::Plain;
    LiftCheck {
        ctx,
        posed,
        statics,
        lines,
        obstacles,
        zones,
        soil,
        settling,
        rutted,
        edges,
        buried,
        statuses,
        everywhere,
        placed,
        way,
    }
}

/// Statuses of what no stand can mend, by the id of their findings: machine, load, attachment, wind, landing.
pub(crate) fn everywhere(ctx: &Context<'_>) -> Vec<(&'static str, Status)> {
    let mut out = vec![
        ("machine", machine_fit::status(ctx)),
        ("machine", fitted::status(ctx)),
        ("tyres", tyres::status(ctx)),
        ("axle", axle::status(ctx)),
        ("identity", identity::status(ctx)),
        ("stops", stops::status(ctx)),
        ("load", load::status(ctx, None)),
        ("attachment", attachment::status(ctx)),
        ("attachment", tool::status(ctx)),
        (WIND_LIMIT, wind::status(ctx)),
        ("landing", landing::status(ctx)),
        ("people", matters::status(ctx)),
    ];
    out.extend(forks::status(ctx).map(|s| ("forks", s)));
    out.extend(rigging::status(ctx).map(|s| ("rigging", s)));
    out.extend(landing_edge::status(ctx).map(|s| ("landing-edge", s)));
    out.extend(landing_room::status(ctx).map(|s| ("landing-room", s)));
    out.extend(gates::status(ctx).map(|s| ("gate", s)));
    out.extend(slewing::status(ctx).map(|s| ("slewing", s)));
    if ctx.job.lines_complete.is_none() {
        out.push(("line", Status::CannotTell));
    }
    out
}

/// A check that refuses at once, by its id: out of level, beyond the chart. Costs a part of all checks.
pub(crate) fn refused_at_once(ctx: &Context<'_>) -> Option<&'static str> {
    // Nothing is kept of how the ground gave before.
    let ctx = &Context { gives: [0.0; 2], leans: 0.0, ..*ctx };
    let posed = pose(ctx);
    let level = posed.as_ref().ok().and_then(|p| level::level(ctx, p));
    if level.is_some_and(|l| l.status(ctx) > Status::Condition) {
        return Some("level");
    }
    (chart::status(ctx, posed.as_ref()) > Status::Condition).then_some("chart")
}

impl LiftCheck<'_> {
    /// The worst status of all checks decides.
    pub fn verdict(&self) -> Verdict {
        self.all().map(|(_, s)| s).max().map_or(Verdict::NoGo, Into::into)
    }

    fn all(&self) -> impl Iterator<Item = (&'static str, Status)> {
        self.statuses.iter().chain(&self.everywhere).copied()
    }

    /// Statuses of the checks that go with the stand, by the id of their findings.
    pub(crate) fn at_stand(&self) -> &[(&'static str, Status)] {
        &self.statuses
    }

    /// The first check that makes the lift no-go, by the id of its findings; the maker's wind limit is not
    /// asked.
    pub(crate) fn refused_by(&self) -> Option<&'static str> {
        let mut asked = self.all().filter(|(check, _)| *check != WIND_LIMIT);
        asked.find(|(_, s)| *s > Status::Condition).map(|(check, _)| check)
    }

    /// True if a check that goes with the boom's movement refuses.
    fn movement_refused(&self) -> bool {
        let of_lines = self.lines.iter().zip(&self.ctx.job.lines).map(|(o, l)| o.status(&self.ctx, l));
        // What is not known of a line no movement tells.
        let lines = of_lines.filter(|s| *s >= Status::NoGo);
        let zones = self.zones.iter().filter(|m| BY_MOVEMENT.contains(&m.check)).map(|m| m.status);
        let weighed = self.statics.as_ref().map(|s| s.factor_status(&self.ctx).max(s.tilt_status()));
        let charted = chart::status(&self.ctx, self.posed.as_ref());
        let all = lines.chain(zones).chain(self.obstacles.status()).chain(weighed).chain([charted]);
        all.max().is_some_and(|s| s > Status::Condition)
    }

    /// Worst of the checks that do not go with the movement alone.
    fn worst_of_rest(&self) -> Status {
        let rest = self.statuses.iter().filter(|(check, _)| !BY_MOVEMENT.contains(check));
        rest.map(|(_, s)| *s).max().unwrap_or(Status::Go)
    }

    /// What refuses the movement, in words: the first thing, line or zone, else the check.
    fn in_the_way(&self) -> evidence::Message {
        let line = self.lines.iter().zip(&self.ctx.job.lines).find(|(o, l)| o.status(&self.ctx, l) >= Status::NoGo);
        let thing = || self.obstacles.refusing(self.ctx.job).map(|t| t.name.clone());
        let zone = || self.zones.iter().find(|m| m.status > Status::Condition).map(|m| m.zone.clone());
        let named = thing().or_else(|| line.map(|(_, l)| l.name.clone())).or_else(zone);
        named.map_or_else(|| text::MOVEMENT_CHART.message(), |name| text::MOVEMENT_PAST.with("thing", name))
    }

    /// Worst status of the checks that place and weight can change: chart, level, tipping, approach,
    /// and lines and ground where they refuse.
    pub(crate) fn placed(&self) -> Status {
        self.placed
    }

    /// The boom's movement; `None` for a no-go, which nobody is told how to make.
    pub fn movement(&self) -> Option<BoomMovement> {
        let posed = self.posed.as_ref().ok().filter(|_| self.verdict() != Verdict::NoGo)?;
        boom_movement(self, posed)
    }

    /// Every finding, with its working, in the fixed order of the checks.
    pub fn findings(&self) -> Vec<Finding> {
        let ctx = &self.ctx;
        let posed = self.posed.as_ref();
        let mut out = stops::findings(ctx);
        out.extend(machine_fit::findings(ctx));
        out.extend(fitted::findings(ctx));
        out.extend(identity::findings(ctx));
        out.extend(slewing::finding(ctx));
        out.extend(load::findings(ctx, posed.ok()));
        out.push(attachment::finding(ctx));
        out.extend(tool::findings(ctx));
        out.extend(forks::findings(ctx));
        out.extend(rigging::findings(ctx));
        out.extend(tyres::findings(ctx));
        out.push(level::finding(ctx, posed));
        out.extend(axle::finding(ctx, posed.ok()));
        out.push(chart::finding(ctx, posed));
        if let Some(s) = &self.statics {
            out.push(statics::factor_finding(ctx, s));
            out.push(statics::tilt_finding(ctx, s));
        } else {
            out.push(statics::not_done("load-factor", posed));
            out.push(statics::not_done("tilt", posed));
        }
        out.push(contacts::finding(ctx, self.statics.as_ref(), posed));
        out.extend(steering::finding(ctx, posed.ok()));
        out.extend(sudden::findings(ctx, self.statics.as_ref(), posed.ok()));
        out.push(wind::finding(ctx));
        for (outcome, l) in self.lines.iter().zip(&ctx.job.lines) {
            out.push(line::finding(ctx, l, outcome, posed));
            out.extend(line::insulated(l));
        }
        out.push(line::completeness(ctx));
        out.extend(ground::findings(ctx, self.statics.as_ref(), posed, self.soil.as_ref()));
        if let (Some(by), Some(s), Ok(p)) = (&self.settling, &self.statics, posed) {
            out.extend(settlement_finding::finding(ctx, s, p, by));
        }
        out.extend(self.rutted.as_ref().map(|r| rutting::finding(ctx, r)));
        out.push(approach::finding(ctx, posed));
        out.extend(landing::findings(ctx));
        out.extend(landing_edge::finding(ctx));
        out.extend(landing_room::finding(ctx));
        out.extend(sight::finding(ctx, posed.ok()));
        out.extend(gates::findings(ctx));
        out.extend(obstacle::findings(ctx, &self.obstacles, posed));
        out.extend(zones::findings(&self.zones));
        out.extend(movement::finding(self));
        out.extend(edges::findings(&self.ctx, &self.edges));
        let force = self.statics.as_ref().map_or([0.0; 4], |s| s.force);
        out.extend(buried::findings(ctx, &self.buried, posed.ok(), force));
        out.extend(matters::findings(ctx));
        out
    }
}

/// Index of the finding that governs: the worst status; among equals the least reserve, and a
/// finding with a number before one without.
pub(crate) fn governing(findings: &[Finding]) -> usize {
    let worst = findings.iter().map(|f| f.status).max();
    findings
        .iter()
        .enumerate()
        .filter(|(_, f)| Some(f.status) == worst)
        .min_by(|(_, a), (_, b)| a.reserve.unwrap_or(f64::INFINITY).total_cmp(&b.reserve.unwrap_or(f64::INFINITY)))
        .map_or(0, |(i, _)| i)
}
