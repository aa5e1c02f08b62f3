//! Load factor, tilt that remains, and wheel forces, over all corners of the uncertain inputs.
//!
//! The rear axle counts as free in every support state: neither a lock nor levelling is credited.
//! The load is also taken away (set down, boom still up): it is never counted on to steady.

use super::parts::wind_parts;
use super::{NEAR, angle, spare};
use crate::context::Context;
use crate::posed::{NotPosed, Posed, tool_point, why_not};
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
    let (along, across) = (posed.footing.along, posed.footing.across);
    let attitudes = [
        gravity_for_slopes(along.low, across.low),
        gravity_for_slopes(along.low, across.high),
        gravity_for_slopes(along.high, across.low),
        gravity_for_slopes(along.high, across.high),
    ];
    let gust = ctx.lift.wind.map(|w| w.gust.si());
    let wind = |tool: DVec3, boom: BoomPosition, with_load: bool| {
        gust.map_or(WindLoad::NONE, |v| WindLoad::of(v, &wind_parts(ctx, tool, boom, with_load), &mut Silent))
    };
    let mut search = Search::new(ctx, lines, gust);
    for boom in poses {
        let bare = Masses::of(ctx.machine, attachment, boom);
        let tool = tool_point(ctx, attachment, boom);
        let (with_load, without) = (wind(tool, boom, true), wind(tool, boom, false));
        // The load is also taken away: set down, boom still up.
        for gravity in attitudes {
            search.take(Loading { masses: bare, gravity, wind: without });
        }
        for ahead in aheads {
            for left in [load.centre_left.low, load.centre_left.high] {
                let at = load_at(ctx, tool, boom, ahead, left);
                let heaviest = LoadOnBoom { mass: load.mass_kg.high, at };
                for gravity in attitudes {
                    search.take(Loading { masses: bare.with(heaviest), gravity, wind: with_load });
                    let lightest = LoadOnBoom { mass: load.mass_kg.low, at };
                    search.take(Loading { masses: bare.with(lightest), gravity, wind: with_load });
                    // The factor goes with one over the mass: the heaviest is the worst.
                    search.factor(Loading { masses: bare, gravity, wind: with_load }, heaviest);
                }
            }
        }
    }
    search.found
}

/// Keeps the worst of all corners.
struct Search<'c, 'a> {
    ctx: &'c Context<'a>,
    lines: [TippingLine; 4],
    /// Required tilt for each line, rad.
    required: [f64; 4],
    /// Sine of the tilt below which a line becomes the worst so far.
    threshold: [f64; 4],
    gust: Option<f64>,
    found: Option<Statics>,
}

impl<'c, 'a> Search<'c, 'a> {
    fn new(ctx: &'c Context<'a>, lines: [TippingLine; 4], gust: Option<f64>) -> Self {
        let required = lines.map(|l| required(ctx, l.over));
        Self { ctx, lines, required, threshold: [f64::INFINITY; 4], gust, found: None }
    }

    fn found(&mut self, loading: Loading) -> &mut Statics {
        let (gust, line) = (self.gust, self.lines[0]);
        self.found.get_or_insert(Statics {
            factor: None,
            factor_corner: None,
            tilt: f64::INFINITY,
            tilt_required: 1.0,
            over: TipsOver::Front,
            tilt_corner: loading,
            tilt_line: line,
            force: [f64::NEG_INFINITY; 4],
            least: [f64::INFINITY; 4],
            gust,
        })
    }

    fn take(&mut self, loading: Loading) {
        for i in 0..4 {
            // Proven not to be worse: no arcsine needed. A comparison with NaN goes on to the full one.
            if stability::sine_of_tilt_at_least(&loading, &self.lines[i]) >= self.threshold[i] {
                continue;
            }
            let (line, needed) = (self.lines[i], self.required[i]);
            let tilt = tilt_reserve(&loading, &line, &mut Silent);
            let s = self.found(loading);
            // A tilt that is not a number must never pass: it becomes the worst and stays it.
            if tilt.is_nan() || tilt / needed < s.tilt / s.tilt_required {
                (s.tilt, s.tilt_required, s.over, s.tilt_corner, s.tilt_line) =
                    (tilt, needed, line.over, loading, line);
                let ratio = tilt / needed;
                for k in 0..4 {
                    self.threshold[k] = libm::sin((ratio * self.required[k]).clamp(-1.5, 1.5));
                }
            }
        }
        let r = reactions(self.ctx.machine, support(self.ctx), &loading.masses, loading.gravity);
        let s = self.found(loading);
        for i in 0..4 {
            s.force[i] = s.force[i].max(r.force[i]);
            s.least[i] = s.least[i].min(r.force[i]);
        }
    }

    fn factor(&mut self, at_rest: Loading, load: LoadOnBoom) {
        let lines = self.lines;
        let Some(f) = load_factor(&at_rest, load, &lines, &mut Silent) else { return };
        let s = self.found(at_rest);
        if f.0.is_nan() || s.factor.is_none_or(|(worst, _)| f.0 < worst) {
            s.factor = Some(f);
            s.factor_corner = Some((at_rest, load));
        }
    }
}

impl Statics {
    pub(crate) fn factor_status(&self, ctx: &Context<'_>) -> Status {
        let required = ctx.job.policy.load_factor;
        match self.factor {
            Some((f, _)) if f.is_nan() => Status::CannotTell,
            Some((f, _)) if f < required => Status::NoGo,
            Some((f, _)) if f < required * NEAR => Status::Condition,
            // Enough, or no load tips it.
            Some(_) | None => Status::Go,
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
    let tool = tool_point(ctx, attachment, above);
    WindLoad::of(gust, &wind_parts(ctx, tool, above, true), trace);
}
