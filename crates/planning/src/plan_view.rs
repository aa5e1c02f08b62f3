//! What a view of a lift from above shows besides the field: landing, and the machine's outline.

use crate::context::Context;
use geometry::DVec2;
use machine::Axle;
use quantity::Si;
use serde::{Deserialize, Serialize};

/// Landing and machine seen from above. The landing is on site, east and north; the machine in its own frame, x ahead of the
/// front axle and y to the left, so that it can be drawn at every stand; m.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub struct PlanViewScene {
    /// Middle of the landing.
    pub landing_at: (f64, f64),
    /// Corners of the landing, east and north. Without a stated approach they lie as the stand heads, or square to the grid.
    pub landing: Vec<(f64, f64)>,
    /// From where it takes loads: heading of the machine, degrees clockwise from north, and half the range allowed, degrees;
    /// `null` where nobody states it.
    pub approach: Option<(f64, f64)>,
    /// Corners of the body.
    pub body: Vec<(f64, f64)>,
    /// Corners of every tyre, and of every pad that is down.
    pub contacts: Vec<Vec<(f64, f64)>>,
    /// Front face of the front tyres, x.
    pub front_face_m: f64,
}

/// The view of a lift.
pub(crate) fn plan_view(ctx: &Context<'_>) -> PlanViewScene {
    let landing = ctx.landing;
    let chosen = ctx.stand.is_chosen();
    let heading = landing.approach.map_or(if chosen { ctx.stand.heading } else { 0.0 }, |a| a.heading);
    let (sin, cos) = libm::sincos(heading);
    let (along, across) = (DVec2::new(cos, sin), DVec2::new(-sin, cos));
    let half = landing.size * 0.5;
    let corners = [(-1.0, -1.0), (1.0, -1.0), (1.0, 1.0), (-1.0, 1.0)];
    let on_site = corners.map(|(s, t)| {
        let p = landing.at + along * (half.x * s) + across * (half.y * t);
        (p.x, p.y)
    });
    let o = &ctx.machine.outline;
    let rectangle = |middle: (f64, f64), half: (f64, f64)| {
        corners.map(|(s, t)| (middle.0 + half.0 * s, middle.1 + half.1 * t)).to_vec()
    };
    let tyres = |axle: &Axle| {
        let half = (axle.tyre.free_radius.si(), axle.tyre.width.si() / 2.0);
        [1.0, -1.0].map(|side| rectangle((axle.x, axle.half_track * side), half))
    };
    let mut contacts: Vec<_> = tyres(&ctx.machine.front).into_iter().chain(tyres(&ctx.machine.rear.axle)).collect();
    let places = ctx.machine.contacts(ctx.lift.support);
    for i in 0..4 {
        if let Some(area) = ctx.machine.pad_area(ctx.lift.support, i) {
            let (place, side) = (places[i / 2], if i % 2 == 0 { 1.0 } else { -1.0 });
            let half = area.sqrt() / 2.0;
            contacts.push(rectangle((place.x, place.y * side), (half, half)));
        }
    }
    PlanViewScene {
        landing_at: (landing.at.x, landing.at.y),
        landing: on_site.to_vec(),
        approach: landing.approach.map(|a| (geometry::heading_to_degrees(a.heading), a.tolerance.to_degrees())),
        body: rectangle((f64::midpoint(o.front, o.rear), 0.0), ((o.front - o.rear) / 2.0, o.half_width)),
        contacts,
        front_face_m: ctx.machine.front_face(),
    }
}
