//! The wind at which this lift stops, against the maker's limit. The force of that gust is in the
//! statics; here is only the limit.

use super::within;
use crate::check::LiftCheck;
use crate::context::Context;
use crate::posed::tool_point;
use crate::text;
use crate::{Tolerance, ToleranceOf};
use evidence::{Finding, Source, Status};
use machine::WindMeasure;
use quantity::{Dimension, Quantity, Si};
use stability::exposure::{GUST_OVER_MEAN, HIGHEST, Terrain};

/// The maker's limit as a gust at height, m/s.
fn limit(ctx: &Context<'_>) -> Option<f64> {
    ctx.machine.limits.wind.map(|w| match w.measure {
        WindMeasure::GustAtHeight => w.speed.si(),
        WindMeasure::ForecastMean => w.speed.si() * GUST_OVER_MEAN,
    })
}

pub(crate) fn status(ctx: &Context<'_>) -> Status {
    match (ctx.lift.wind, limit(ctx)) {
        (None, _) => Status::CannotTell,
        (Some(_), None) => Status::Condition,
        (Some(w), Some(limit)) => within(w.gust.si(), limit),
    }
}

pub(crate) fn finding(ctx: &Context<'_>) -> Finding {
    let status = status(ctx);
    let speed = |v: f64| Quantity::new(v, Dimension::Speed);
    let manual =
        || Source::Input { place: format!("{} limits.wind", ctx.machine.id), certainty: evidence::Certainty::Manual };
    match (ctx.lift.wind, limit(ctx)) {
        (None, _) => Finding::new("wind", status, text::WIND_NOT_STATED)
            .remedy(text::DO_STATE_WIND)
            .source(Source::CommonPractice),
        (Some(w), None) => Finding::new("wind", status, text::WIND_NO_LIMIT.with("gust", w.gust))
            .remedy(text::DO_ASK_WIND)
            .source(Source::CommonPractice),
        (Some(w), Some(limit)) => {
            let id = if status == Status::Go { text::WIND_WITHIN } else { text::WIND_ABOVE };
            let mut f = Finding::new("wind", status, id.with("gust", w.gust).with("limit", speed(limit)))
                .measured(w.gust, speed(limit), super::reserve(w.gust.si(), limit))
                .source(manual());
            if status == Status::Go {
                // Where to stop is a decision within the limit: no reserve is to be read into it.
                f.reserve = None;
                f
            } else {
                f.remedy(text::DO_LOWER_WIND.with("limit", speed(limit)))
            }
        }
    }
}

/// Adds to the wind finding the gust at which weight and wind turn the verdict at the worst corner, at
/// height and as forecast mean.
pub(crate) fn add_turn(findings: &mut [Finding], tolerances: &[Tolerance]) {
    let Some(gust) = tolerances.iter().find(|t| t.what == ToleranceOf::Gust) else { return };
    let (Some(planned), Some(mean), Some(_)) = (gust.planned, gust.at_worst.mean, &gust.at_worst.turned_by) else {
        return;
    };
    let speed = |v: f64| Quantity::new(v, Dimension::Speed);
    let turn = planned + gust.at_worst.most;
    for f in findings.iter_mut().filter(|f| f.check == "wind" && turn.is_finite() && mean.is_finite()) {
        let what = f.message.clone();
        f.message = text::WIND_TURNS.with("what", what).with("gust", speed(turn)).with("mean", speed(mean));
    }
}

/// Forecast mean (m/s, ten minutes, at 10 m) whose gust at the load may be `gust`: what lies upwind is not
/// known, so open water, where a gust is most over the mean; at the top of the load, at least 10 m up.
pub(crate) fn forecast_mean(check: &LiftCheck<'_>, gust: f64) -> f64 {
    let ctx = &check.ctx;
    let top = match (&check.posed, ctx.attachment) {
        (Ok(posed), Some(attachment)) => posed.reach.ok().map(|poses| {
            let tools = poses.map(|boom| tool_point(ctx, attachment, boom).z + ctx.load.height);
            tools.into_iter().fold(10.0, f64::max)
        }),
        _ => None,
    };
    Terrain::Sea.forecast_mean(gust, top.unwrap_or(HIGHEST))
}
