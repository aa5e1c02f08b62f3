//! Load factor, tilt that remains, and wheel forces, over all corners of the uncertain inputs.
//!
//! The rear axle counts as free in every support state: neither a lock nor levelling is credited.
//! The load is also taken away (set down, boom still up): it is never counted on to steady.

use super::parts::wind_parts;
use super::{NEAR, angle, spare};
use crate::context::Context;
use crate::posed::{NotPosed, Posed, why_not};
use crate::text;
use evidence::{Finding, Message, Silent, Source, Status, Trace, Working};
use geometry::DVec3;
use machine::{Attachment, BoomPosition};
use quantity::{Quantity, Si};
use stability::wind::WindLoad;
use stability::{
    LoadOnBoom, Loading, Masses, RearAxleState, Support, TippingLine, TipsOver, gravity_for_slopes, load_factor,
    reactions, tilt_reserve, tipping_lines,
};

/// Worst of everything.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Statics {
    /// Smallest load factor with its line; `None`: no load tips it.
    pub(crate) factor: Option<(f64, TipsOver)>,
    factor_corner: Option<(Loading, LoadOnBoom)>,
    /// Smallest ratio of remaining to required tilt.
    pub(crate) tilt: f64,
    pub(crate) tilt_required: f64,
    pub(crate) over: TipsOver,
    tilt_corner: Loading,
    tilt_line: TippingLine,
    /// Greatest force on each contact, N.
    pub(crate) force: [f64; 4],
    /// Smallest force on each contact, N.
    pub(crate) least: [f64; 4],
    /// Gust used, m/s; `None`: none stated, so no wind in the numbers.
    pub(crate) gust: Option<f64>,
}

/// Statics credit neither lock nor levelling.
pub(crate) fn support(ctx: &Context<'_>) -> Support {
    Support { state: ctx.lift.support, rear: RearAxleState::Free }
}

fn required(ctx: &Context<'_>, over: TipsOver) -> f64 {
    let p = &ctx.job.policy;
    libm::atan(match over {
        TipsOver::Front | TipsOver::Rear => p.tilt_fore_aft,
        TipsOver::Left | TipsOver::Right => p.tilt_sideways,
    })
}

/// Place of the load's weight for a tool point: offsets along the forks, left and up; a hung load
/// acts at its hook.
fn load_at(ctx: &Context<'_>, tool: DVec3, boom: BoomPosition, ahead: f64, left: f64) -> DVec3 {
    if ctx.load.hanging.is_some() {
        return tool + DVec3::X * ahead;
    }
    let carriage = Posed::carriage(tool, boom);
    carriage * DVec3::new(ahead, left, ctx.load.centre_up.high)
}

/// `None` if the boom does not get there.
pub(crate) fn statics(ctx: &Context<'_>, posed: &Posed, attachment: &Attachment) -> Option<Statics> {
    let poses = posed.reach.ok()?;
    let lines = tipping_lines(ctx.machine, support(ctx));
    let load = ctx.load;
    let flex = ctx.machine.boom.flex;
    let aheads =
        if load.hanging.is_some() { [0.0, flex] } else { [load.centre_ahead.low, load.centre_ahead.high + flex] };
    let gust = ctx.lift.wind.map(|w| w.gust.si());
    let mut found: Option<Statics> = None;
    for boom in poses {
        let bare = Masses::of(ctx.machine, attachment, boom);
        let tool = posed.tool(ctx, attachment, boom);
        let with_load =
            gust.map_or(WindLoad::NONE, |v| WindLoad::of(v, &wind_parts(ctx, tool, boom, true), &mut Silent));
        let without =
            gust.map_or(WindLoad::NONE, |v| WindLoad::of(v, &wind_parts(ctx, tool, boom, false), &mut Silent));
        for along in [posed.footing.along.low, posed.footing.along.high] {
            for across in [posed.footing.across.low, posed.footing.across.high] {
                let gravity = gravity_for_slopes(along, across);
                let mut take = |loading: Loading, load: Option<LoadOnBoom>| {
                    corner(ctx, &lines, loading, bare, load, gust, &mut found);
                };
                take(Loading { masses: bare, gravity, wind: without }, None);
                for mass in [load.mass_kg.low, load.mass_kg.high] {
                    for ahead in aheads {
                        for left in [load.centre_left.low, load.centre_left.high] {
                            let on = LoadOnBoom { mass, at: load_at(ctx, tool, boom, ahead, left) };
                            take(Loading { masses: bare.with(on), gravity, wind: with_load }, Some(on));
                        }
                    }
                }
            }
        }
    }
    found
}

fn corner(
    ctx: &Context<'_>,
    lines: &[TippingLine; 4],
    loading: Loading,
    bare: Masses,
    load: Option<LoadOnBoom>,
    gust: Option<f64>,
    found: &mut Option<Statics>,
) {
    let start = Statics {
        factor: None,
        factor_corner: None,
        tilt: f64::INFINITY,
        tilt_required: 1.0,
        over: TipsOver::Front,
        tilt_corner: loading,
        tilt_line: lines[0],
        force: [f64::NEG_INFINITY; 4],
        least: [f64::INFINITY; 4],
        gust,
    };
    let s = found.get_or_insert(start);
    for line in lines {
        let tilt = tilt_reserve(&loading, line, &mut Silent);
        let needed = required(ctx, line.over);
        // A tilt that is not a number must never pass: it becomes the worst.
        if tilt.is_nan() || tilt / needed < s.tilt / s.tilt_required {
            (s.tilt, s.tilt_required, s.over, s.tilt_corner, s.tilt_line) = (tilt, needed, line.over, loading, *line);
        }
    }
    if let Some(load) = load.filter(|l| l.mass > 0.0) {
        let at_rest = Loading { masses: bare, ..loading };
        if let Some(f) = load_factor(&at_rest, load, lines, &mut Silent)
            && s.factor.is_none_or(|(worst, _)| f.0 < worst)
        {
            s.factor = Some(f);
            s.factor_corner = Some((at_rest, load));
        }
    }
    let r = reactions(ctx.machine, support(ctx), &loading.masses, loading.gravity);
    for i in 0..4 {
        s.force[i] = s.force[i].max(r.force[i]);
        s.least[i] = s.least[i].min(r.force[i]);
    }
}

impl Statics {
    pub(crate) fn factor_status(&self, ctx: &Context<'_>) -> Status {
        let required = ctx.job.policy.load_factor;
        match self.factor {
            None => Status::Go,
            Some((f, _)) if f.is_nan() => Status::CannotTell,
            Some((f, _)) if f < required => Status::NoGo,
            Some((f, _)) if f < required * NEAR => Status::Condition,
            Some(_) => Status::Go,
        }
    }

    pub(crate) fn tilt_status(&self) -> Status {
        if self.tilt.is_nan() {
            Status::CannotTell
        } else if self.tilt < self.tilt_required {
            Status::NoGo
        } else if self.tilt < self.tilt_required * NEAR {
            Status::Condition
        } else {
            Status::Go
        }
    }
}

pub(crate) fn side(over: TipsOver) -> Message {
    match over {
        TipsOver::Front => text::SIDE_FRONT,
        TipsOver::Rear => text::SIDE_REAR,
        TipsOver::Left => text::SIDE_LEFT,
        TipsOver::Right => text::SIDE_RIGHT,
    }
    .message()
}

pub(crate) fn not_done(check: &'static str, posed: Result<&Posed, &NotPosed>) -> Finding {
    let (why, remedy) = why_not(posed);
    Finding::new(check, Status::CannotTell, text::STATICS_NOT_DONE.with("why", why))
        .remedy(remedy)
        .source(Source::Mechanics)
}

pub(crate) fn factor_finding(ctx: &Context<'_>, s: &Statics) -> Finding {
    let status = s.factor_status(ctx);
    let required = ctx.job.policy.load_factor;
    let (Some((factor, _)), Some((at_rest, load))) = (s.factor, s.factor_corner) else {
        let message = text::LOAD_FACTOR_NEVER.with("required", Quantity::number(required));
        return Finding::new("load-factor", status, message).source(Source::CommonPractice);
    };
    let mut working = Working::default();
    wind_steps(ctx, s, &mut working);
    load_factor(&at_rest, load, &tipping_lines(ctx.machine, support(ctx)), &mut working);
    let id = if factor < required { text::LOAD_FACTOR_SHORT } else { text::LOAD_FACTOR_ENOUGH };
    let message = id
        .with("factor", Quantity::number(factor))
        .with("required", Quantity::number(required))
        .with("tipping", super::kilograms(factor * load.mass));
    let mut finding = Finding::new("load-factor", status, message)
        .measured(Quantity::number(required), Quantity::number(factor), spare(required, factor))
        .source(Source::CommonPractice)
        .working(working);
    if status != Status::Go {
        finding = finding.remedy(text::DO_LESS_REACH);
    }
    finding
}

pub(crate) fn tilt_finding(ctx: &Context<'_>, s: &Statics) -> Finding {
    let status = s.tilt_status();
    let mut working = Working::default();
    wind_steps(ctx, s, &mut working);
    tilt_reserve(&s.tilt_corner, &s.tilt_line, &mut working);
    let said = |id: evidence::TextId| {
        id.with("tilt", angle(s.tilt)).with("required", angle(s.tilt_required)).with("side", side(s.over))
    };
    let message = if s.tilt <= 0.0 {
        text::TILT_TIPS.with("side", side(s.over))
    } else if status == Status::NoGo {
        said(text::TILT_SHORT)
    } else {
        said(text::TILT_ENOUGH)
    };
    let mut finding = Finding::new("tilt", status, message)
        .measured(angle(s.tilt_required), angle(s.tilt), spare(s.tilt_required, s.tilt))
        .source(Source::from_memory("ISO 22915-14 (kind of test; low confidence)"))
        .working(working);
    if status != Status::Go {
        finding = finding.remedy(text::DO_LESS_REACH).remedy(text::DO_LEVEL_STAND);
    }
    finding
}

fn wind_steps(ctx: &Context<'_>, s: &Statics, trace: &mut impl Trace) {
    let (Some(gust), Some(attachment)) = (s.gust, ctx.attachment) else { return };
    let Ok(posed) = crate::posed::pose(ctx) else { return };
    let Ok([above, _]) = posed.reach else { return };
    let tool = posed.tool(ctx, attachment, above);
    WindLoad::of(gust, &wind_parts(ctx, tool, above, true), trace);
}
