//! Every check of one lift in fixed order: numbers and status.

use crate::checks::line::LineOutcome;
use crate::checks::statics::Statics;
use crate::checks::{
    approach, attachment, axle, chart, fitted, forks, gates, ground, identity, landing, level, line, load, load_shape,
    machine_fit, matters, rigging, slewing, statics, stops, tool, tyres, wind,
};
use crate::context::Context;
use crate::posed::{NotPosed, Posed, pose};
use crate::{Job, Lift};
use evidence::{Finding, Status, Verdict};

/// What the checks of one lift found: enough to decide, no text and no working.
pub struct LiftCheck<'a> {
    pub(crate) ctx: Context<'a>,
    pub(crate) posed: Result<Posed, NotPosed>,
    pub(crate) statics: Option<Statics>,
    pub(crate) lines: Vec<LineOutcome>,
    statuses: Vec<Status>,
    /// Worst of the checks that place and weight can change.
    placed: Status,
}

/// Checks one lift. Every check runs, whatever the others say.
///
/// `None` if the lift refers to a machine, load or landing that the job does not have.
pub fn check_lift<'a>(job: &'a Job, lift: &'a Lift) -> Option<LiftCheck<'a>> {
    Some(check_context(Context::new(job, lift)?))
}

/// Checks what a context refers to.
pub(crate) fn check_context(ctx: Context<'_>) -> LiftCheck<'_> {
    let job = ctx.job;
    let posed = pose(&ctx);
    let level = posed.as_ref().ok().and_then(|p| level::level(&ctx, p));
    let statics = match (&posed, ctx.attachment) {
        (Ok(p), Some(a)) => statics::statics(&ctx, p, a),
        _ => None,
    };
    let lines: Vec<_> = job.lines.iter().map(|l| line::outcome(&ctx, posed.as_ref().ok(), ctx.attachment, l)).collect();

    let placed = [
        chart::status(&ctx, posed.as_ref()),
        level.map_or(Status::CannotTell, |l| l.status(&ctx)),
        statics.as_ref().map_or(Status::CannotTell, |s| s.factor_status(&ctx)),
        statics.as_ref().map_or(Status::CannotTell, Statics::tilt_status),
        posed.as_ref().map_or(Status::CannotTell, |p| approach::approach(&ctx, p).status()),
        load_shape::tilted(&ctx, posed.as_ref().ok()).map_or(Status::Go, |s| s.status()),
    ];
    let mut statuses = vec![
        machine_fit::status(&ctx),
        fitted::status(&ctx),
        tyres::status(&ctx),
        axle::status(&ctx),
        identity::status(&ctx),
        stops::status(&ctx),
        load::status(&ctx, posed.as_ref().ok()),
        attachment::status(&ctx),
        tool::status(&ctx),
        wind::status(&ctx),
        ground::status(&ctx, statics.as_ref()),
        landing::status(&ctx),
        matters::status(&ctx),
    ];
    statuses.extend(placed);
    statuses.extend(forks::status(&ctx));
    statuses.extend(rigging::status(&ctx));
    statuses.extend(gates::status(&ctx));
    statuses.extend(slewing::status(&ctx));
    statuses.extend(lines.iter().zip(&job.lines).map(|(o, l)| o.status(&ctx, l)));
    if job.lines_complete.is_none() {
        statuses.push(Status::CannotTell);
    }
    // Lines and ground count where they refuse; what they cannot tell, no other place tells either.
    let refusing =
        lines.iter().zip(&job.lines).map(|(o, l)| o.status(&ctx, l)).chain([ground::status(&ctx, statics.as_ref())]);
    let refusing = refusing.filter(|s| *s >= Status::NoGo);
    let placed = placed.into_iter().chain(refusing).max().unwrap_or(Status::CannotTell);
    LiftCheck { ctx, posed, statics, lines, statuses, placed }
}

impl LiftCheck<'_> {
    /// The worst status of all checks decides.
    pub fn verdict(&self) -> Verdict {
        self.statuses.iter().max().map_or(Verdict::NoGo, |s| (*s).into())
    }

    /// Worst status of the checks that place and weight can change: chart, level, tipping, approach,
    /// and lines and ground where they refuse.
    pub(crate) fn placed(&self) -> Status {
        self.placed
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
        out.push(wind::finding(ctx));
        out.extend(self.lines.iter().zip(&ctx.job.lines).map(|(o, l)| line::finding(ctx, l, o, posed)));
        out.push(line::completeness(ctx));
        out.push(ground::finding(ctx, self.statics.as_ref(), posed));
        out.push(approach::finding(ctx, posed));
        out.push(landing::finding(ctx));
        out.extend(gates::findings(ctx));
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
