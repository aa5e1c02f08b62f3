//! The load chart: lowest capacity in the box, load centre rule, no chart = no-go.

use super::{kilograms, metres, reserve, within};
use crate::context::Context;
use crate::posed::{NotPosed, Posed, tool_point};
use crate::{remedies, text};
use evidence::{Finding, Silent, Source, Status, Step, Trace, Working};
use geometry::{DVec2, DVec3};
use machine::{Attachment, Chart, ChartPoint, Reading};
use quantity::{Quantity, Si};

/// What the chart says of one pose.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct ChartReading {
    pub(crate) point: ChartPoint,
    pub(crate) reading: Reading,
    /// Cap by moment on carriage and forks where the load centre is beyond the rated one, kg.
    pub(crate) cap: Option<f64>,
    /// Load centre beyond the rated one, m.
    pub(crate) excess: f64,
    /// True for a position passed on the way, not at the landing.
    pub(crate) on_the_way: bool,
}

impl ChartReading {
    /// Capacity that counts, kg; `None` outside.
    pub(crate) fn capacity(&self) -> Option<f64> {
        match self.reading {
            Reading::Within { capacity_kg, .. } => Some(self.cap.map_or(capacity_kg, |cap| cap.min(capacity_kg))),
            Reading::Outside => None,
        }
    }
}

/// The chart for the load.
pub(crate) fn choose<'a>(ctx: &Context<'a>) -> Option<&'a Chart> {
    ctx.machine.chart_for(&ctx.lift.attachment, ctx.lift.support, ctx.load.centre_ahead.high)
}

/// Where a chart is read: a tool point in the machine frame, at the landing or on the way to it.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Place {
    pub(crate) tool: DVec3,
    pub(crate) on_the_way: bool,
}

/// Reads the chart. The box holds the point in machine axes and in gravity axes, the stand error,
/// the ground's accuracy at the machine and, by the pitch it may cause, at the load, boom flex
/// outward, and the excess of the load centre.
pub(crate) fn read(
    ctx: &Context<'_>,
    posed: &Posed,
    chart: &Chart,
    attachment: &Attachment,
    place: Place,
    trace: &mut impl Trace,
) -> ChartReading {
    let datum = DVec3::new(chart.datum_x(ctx.machine), 0.0, 0.0);
    let ahead = chart.measured_ahead();
    let tilt = -libm::atan(posed.footing.along.nominal);
    let point = place.tool + DVec3::new(ahead * libm::cos(tilt), 0.0, ahead * libm::sin(tilt)) - datum;
    let in_machine = DVec2::new(point.x, point.z);
    // Gravity axes: the same vector from the datum on the ground, turned level.
    let turned = posed.footing.site_from_machine.turn(point);
    let (s, c) = libm::sincos(ctx.lift.stand.heading);
    let by_gravity = DVec2::new(turned.x * c + turned.y * s, turned.z);
    let hung = ctx.load.hanging.is_some();
    let centre = ctx.load.centre_ahead.high;
    let excess = if hung { 0.0 } else { (centre - chart.load_centre.si()).max(0.0) };
    let (error, flex, accuracy) = (ctx.job.policy.stand_error, ctx.machine.boom.flex, posed.footing.accuracy);
    let pitch = (posed.footing.along.high - posed.footing.along.low) / 2.0;
    let out = DVec2::new(error + pitch * by_gravity.y.abs(), accuracy + pitch * by_gravity.x.abs());
    let (nearest, farthest) = (in_machine.min(by_gravity), in_machine.max(by_gravity));
    let point =
        ChartPoint { at: by_gravity, low: nearest - out, high: farthest + out + DVec2::new(flex + excess, 0.0) };
    let reading = if place.on_the_way { chart.read_on_the_way(&point) } else { chart.read(&point) };
    let rated = attachment.rated_load_centre().filter(|rated| !hung && centre > *rated);
    let cap = rated.map(|_| attachment.capacity_at_kg(centre));

    let input = || Source::Input { place: format!("{} chart", ctx.machine.id), certainty: chart.certainty };
    trace.step(|| Step {
        title: machine::text::STEP_REACH.message(),
        formula: "r = max(r_m, r_g),  r_m = x_P − x_D".into(),
        values: vec![
            ("x_P".into(), metres(in_machine.x + datum.x)),
            ("x_D".into(), metres(datum.x)),
            ("r_m".into(), metres(in_machine.x)),
            ("z_m".into(), metres(in_machine.y)),
            ("r_g".into(), metres(by_gravity.x)),
            ("z_g".into(), metres(by_gravity.y)),
        ],
        result: ("r".into(), metres(farthest.x)),
        source: Source::Mechanics,
    });
    if excess > 0.0 {
        trace.step(|| Step {
            title: machine::text::STEP_EXCESS_REACH.message(),
            formula: "Δr = c − c₀".into(),
            values: vec![("c".into(), metres(centre)), ("c₀".into(), metres(chart.load_centre.si()))],
            result: ("Δr".into(), metres(excess)),
            source: Source::CommonPractice,
        });
    }
    trace.step(|| Step {
        title: machine::text::STEP_BOX.message(),
        formula: "r_max = r + e + p·z_g + f + Δr".into(),
        values: vec![
            ("r".into(), metres(farthest.x)),
            ("e".into(), metres(error)),
            ("p".into(), Quantity::number(pitch)),
            ("f".into(), metres(flex)),
            ("Δr".into(), metres(excess)),
            ("r_min".into(), metres(point.low.x)),
            ("z_min".into(), metres(point.low.y)),
            ("z_max".into(), metres(point.high.y)),
        ],
        result: ("r_max".into(), metres(point.high.x)),
        source: Source::CommonPractice,
    });
    if let Reading::Within { capacity_kg, zone } = reading {
        trace.step(|| Step {
            title: machine::text::STEP_CAPACITY.with("zone", &chart.zones[zone].name),
            formula: "C = min C_zone in [r_min, r_max] × [z_min, z_max]".into(),
            values: vec![
                ("r_min".into(), metres(point.low.x)),
                ("r_max".into(), metres(point.high.x)),
                ("z_min".into(), metres(point.low.y)),
                ("z_max".into(), metres(point.high.y)),
            ],
            result: ("C".into(), kilograms(capacity_kg)),
            source: input(),
        });
    }
    if let (Some(cap), Some(rated)) = (cap, rated) {
        trace.step(|| Step {
            title: machine::text::STEP_MOMENT_CAP.message(),
            formula: "C_m = C_a · c_a / c".into(),
            values: vec![
                ("C_a".into(), Quantity::from(attachment.capacity)),
                ("c_a".into(), metres(rated)),
                ("c".into(), metres(centre)),
            ],
            result: ("C_m".into(), kilograms(cap)),
            source: Source::Mechanics,
        });
    }
    ChartReading { point, reading, cap, excess, on_the_way: place.on_the_way }
}

/// Everywhere the chart is read for a lift: clear above the landing, set down, and on the way.
fn places(ctx: &Context<'_>, posed: &Posed, attachment: &Attachment) -> Option<Vec<Place>> {
    let poses = posed.reach.ok()?;
    let movement = posed.movement.as_ref()?;
    let place = |boom, on_the_way| Place { tool: tool_point(ctx, attachment, boom), on_the_way };
    let at_landing = poses.iter().map(|b| place(*b, false));
    Some(at_landing.chain(movement.on_the_way.iter().map(|b| place(*b, true))).collect())
}

/// The worst reading over the movement.
pub(crate) fn worst(ctx: &Context<'_>, posed: &Posed, chart: &Chart) -> Option<ChartReading> {
    worst_place(ctx, posed, chart).map(|(_, reading)| reading)
}

fn worst_place(ctx: &Context<'_>, posed: &Posed, chart: &Chart) -> Option<(Place, ChartReading)> {
    let attachment = ctx.attachment?;
    places(ctx, posed, attachment)?
        .into_iter()
        .map(|p| (p, read(ctx, posed, chart, attachment, p, &mut Silent)))
        .min_by(|(_, a), (_, b)| a.capacity().unwrap_or(-1.0).total_cmp(&b.capacity().unwrap_or(-1.0)))
}

pub(crate) fn status(ctx: &Context<'_>, posed: Result<&Posed, &NotPosed>) -> Status {
    let Some(chart) = choose(ctx) else { return Status::NoGo };
    let Ok(posed) = posed else { return Status::CannotTell };
    match worst(ctx, posed, chart) {
        None => Status::NoGo,
        Some(r) => match r.capacity() {
            None => Status::NoGo,
            Some(capacity) => {
                let status = within(ctx.load.mass_kg.high, capacity);
                if status == Status::Go && load_is_high(ctx, chart) { Status::Condition } else { status }
            }
        },
    }
}

/// Test load's centre height: as stated, else equal to the load centre (a cube; ISO 22915-1, from memory).
fn tested_height(chart: &Chart) -> f64 {
    chart.load_centre_height.map_or(chart.load_centre.si(), |h| h.si())
}

fn load_is_high(ctx: &Context<'_>, chart: &Chart) -> bool {
    ctx.load.hanging.is_none() && ctx.load.centre_up.high > tested_height(chart) + 1e-9
}

pub(crate) fn finding(ctx: &Context<'_>, posed: Result<&Posed, &NotPosed>) -> Finding {
    let status = status(ctx, posed);
    let Some(chart) = choose(ctx) else {
        let support = crate::support_name(ctx.lift.support);
        let name = ctx.attachment.map_or(ctx.lift.attachment.as_str(), |a| a.name.as_str());
        return Finding::new("chart", status, text::CHART_NONE.with("attachment", name).with("support", support))
            .remedy(text::DO_OTHER_MACHINE)
            .source(Source::second_hand("29 CFR 1926.602(c)(1)"));
    };
    let posed = match posed {
        Ok(posed) => posed,
        Err(not) => {
            return Finding::new("chart", status, text::CHART_NOT_READ.with("why", not.why()))
                .remedy(not.remedy())
                .source(Source::CommonPractice);
        }
    };
    let input = Source::Input { place: format!("{} chart", ctx.machine.id), certainty: chart.certainty };
    if posed.reach.is_err() {
        return out_of_reach(ctx, posed, chart).source(input);
    }
    let (Some((place, worst)), Some(attachment)) = (worst_place(ctx, posed, chart), ctx.attachment) else {
        let why = text::CHART_NOT_READ.with("why", text::WHY_NO_ATTACHMENT);
        return Finding::new("chart", Status::CannotTell, why).source(input);
    };
    let mut working = Working::default();
    read(ctx, posed, chart, attachment, place, &mut working);
    let at = worst.point.at;
    let mass = ctx.load.mass_kg.high;
    let (Some(capacity), Reading::Within { zone, .. }) = (worst.capacity(), worst.reading) else {
        let id = if worst.on_the_way { text::CHART_OUTSIDE_ON_THE_WAY } else { text::CHART_OUTSIDE };
        let message = id.with("reach", metres(at.x)).with("height", metres(at.y));
        return Finding::new("chart", status, message)
            .remedy(nearer(ctx).unwrap_or_else(|| text::DO_OTHER_MACHINE.message()))
            .source(input)
            .working(working);
    };
    working.step(|| Step {
        title: machine::text::STEP_RESERVE.message(),
        formula: "1 − W / C".into(),
        values: vec![("W".into(), kilograms(mass)), ("C".into(), kilograms(capacity))],
        result: ("R".into(), Quantity::ratio(reserve(mass, capacity))),
        source: Source::CommonPractice,
    });
    let said = |id: evidence::TextId| {
        id.with("mass", kilograms(mass))
            .with("capacity", kilograms(capacity))
            .with("zone", &chart.zones[zone].name)
            .with("reach", metres(at.x))
            .with("height", metres(at.y))
    };
    let finding = match status {
        Status::Go => Finding::new("chart", status, said(text::CHART_WITHIN)),
        Status::Condition => {
            let message = text::CHART_HIGH_LOAD
                .with("height", metres(ctx.load.centre_up.high))
                .with("tested", metres(tested_height(chart)));
            Finding::new("chart", status, message).remedy(text::DO_ASK_MAKER_HEIGHT)
        }
        _ => {
            let id = if worst.on_the_way { text::CHART_EXCEEDED_ON_THE_WAY } else { text::CHART_EXCEEDED };
            let mut f = Finding::new("chart", status, said(id));
            let cures = [remedies::lighter(ctx).map(|m| text::DO_LIGHTEN.with("mass", kilograms(m))), nearer(ctx)];
            let mut any = false;
            for cure in cures.into_iter().flatten() {
                f = f.remedy(cure);
                any = true;
            }
            if any { f } else { f.remedy(text::DO_OTHER_MACHINE) }
        }
    };
    let mut finding = finding.measured(kilograms(mass), kilograms(capacity), reserve(mass, capacity));
    if status == Status::Condition {
        // The chart does not cover this load's height: no reserve is to be read from it.
        finding.reserve = None;
    }
    finding.source(input).working(working)
}

fn nearer(ctx: &Context<'_>) -> Option<evidence::Message> {
    remedies::nearer(ctx).map(|d| text::DO_NEARER.with("distance", metres(d)))
}

fn out_of_reach(ctx: &Context<'_>, posed: &Posed, chart: &Chart) -> Finding {
    let at = posed.target.x - chart.datum_x(ctx.machine) + chart.measured_ahead();
    let message = text::CHART_OUT_OF_REACH.with("reach", metres(at)).with("height", metres(posed.target.z));
    let finding = Finding::new("chart", Status::NoGo, message);
    finding.remedy(nearer(ctx).unwrap_or_else(|| text::DO_OTHER_MACHINE.message()))
}
