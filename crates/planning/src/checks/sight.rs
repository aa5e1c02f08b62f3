//! Whether the operator can see where the load comes down.
//!
//! The eye is below the cab's roof: a surface above that is not seen from the seat, whatever stands between. Then somebody at
//! the landing leads the load (common practice). That a lower one is seen is not said: boom and load stand in the way.

use super::metres;
use crate::context::Context;
use crate::posed::Posed;
use crate::text;
use evidence::{Finding, Source, Status};
use geometry::DVec3;

/// How much higher the landing's surface or guard lies than the cab's roof, m; `None`: lower.
fn above(ctx: &Context<'_>, posed: &Posed) -> Option<f64> {
    let o = &ctx.machine.outline;
    let roof = DVec3::new(f64::midpoint(o.cab.0, o.cab.1), 0.0, o.cab_top);
    let by = ctx.landing.level + ctx.landing.upstand - (posed.footing.site_from_machine * roof).z;
    // Also what is not a number counts as higher.
    let lower = by <= 0.0;
    (!lower).then_some(by)
}

/// `None`: there is nothing to say.
pub(crate) fn status(ctx: &Context<'_>, posed: Option<&Posed>) -> Option<Status> {
    above(ctx, posed?).map(|_| if ctx.lift.signaller.is_some() { Status::Go } else { Status::Condition })
}

pub(crate) fn finding(ctx: &Context<'_>, posed: Option<&Posed>) -> Option<Finding> {
    let by = metres(above(ctx, posed?)?);
    let status = status(ctx, posed)?;
    let message = match &ctx.lift.signaller {
        Some(name) => text::SIGHT_SIGNALLER.with("landing", &ctx.landing.name).with("height", by).with("name", name),
        None => text::SIGHT_HIDDEN.with("landing", &ctx.landing.name).with("height", by),
    };
    let finding = Finding::new("sight", status, message).source(Source::CommonPractice);
    Some(if status == Status::Go { finding } else { finding.remedy(text::DO_NAME_SIGNALLER) })
}
