//! The load chart: lowest capacity in the box, load centre rule, no chart = no-go.
//!
//! For a load centre beyond the rated one the maker's derating table counts, where the chart has one;
//! else the excess is added to the reach and the attachment's moment caps.

use super::{kilograms, level, metres, reserve, within};
use crate::context::Context;
use crate::movement::Passed;
use crate::posed::{NotPosed, Posed, tool_point};
use crate::{remedies, text};
use evidence::{Finding, Silent, Source, Status, Step, Trace, Working};
use geometry::{DVec2, DVec3};
use machine::{Attachment, CentreRule, Chart, ChartPoint, Reading};
use quantity::{Quantity, Si};

/// What the chart says of one pose.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct ChartReading {
    pub(crate) point: ChartPoint,
    pub(crate) reading: Reading,
    /// How the load's centre counts.
    pub(crate) centre: Centre,
    /// Capacity that counts, kg; `None`: not permitted.
    pub(crate) capacity: Option<f64>,
    /// True for a position passed on the way, not at the landing.
    pub(crate) on_the_way: bool,
}

/// How a load's centre counts against a chart.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Centre {
    rule: CentreRule,
    /// Cap by moment on carriage and forks where the load centre is beyond the attachment's rated one,
    /// kg. A maker's derating table replaces it.
    pub(crate) cap: Option<f64>,
}

impl Centre {
    /// Hung loads act at the hook: no load centre.
    pub(crate) fn of(chart: &Chart, attachment: &Attachment, centre: f64, hung: bool) -> Self {
        if hung {
            return Self { rule: CentreRule::Rated, cap: None };
        }
        let rule = chart.centre_rule(centre);
        let own = matches!(rule, CentreRule::Rated | CentreRule::Excess(_));
        let beyond = attachment.rated_load_centre().is_some_and(|rated| centre > rated);
        Self { rule, cap: (own && beyond).then(|| attachment.capacity_at_kg(centre)) }
    }

    /// Load centre beyond the rated one that is added to the reach, m.
    pub(crate) fn excess(&self) -> f64 {
        if let CentreRule::Excess(excess) = self.rule { excess } else { 0.0 }
    }

    /// What counts of a charted capacity, kg; `None`: not permitted.
    pub(crate) fn counted(&self, chart: &Chart, capacity_kg: f64) -> Option<f64> {
        let derated = chart.derated_kg(capacity_kg, self.rule)?;
        Some(self.cap.map_or(derated, |cap| cap.min(derated)))
    }
}

/// The chart for the load on the ground at the stand; with no pose the one that holds farthest out
/// of level.
pub(crate) fn choose<'a>(ctx: &Context<'a>, posed: Option<&Posed>) -> Option<&'a Chart> {
    let (attachment, support) = (ctx.lift.attachment.as_str(), ctx.lift.support);
    let centre = ctx.load.centre_ahead.high;
    match posed {
        Some(posed) => ctx.machine.chart_on(attachment, support, centre, level::out_of_level(posed)),
        None => ctx.machine.chart_for(attachment, support, centre),
    }
}

/// Where a chart is read: a tool point in the machine frame, at the landing or on the way to it.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Place {
    pub(crate) tool: DVec3,
    /// Where the piece of the way ends that is read; the same point where one point is read.
    pub(crate) until: DVec3,
    /// How far the piece may lie off the straight line between both, m.
    pub(crate) off: f64,
    pub(crate) on_the_way: bool,
}

impl Place {
    /// At the landing.
    pub(crate) fn landing(tool: DVec3) -> Self {
        Self { tool, until: tool, off: 0.0, on_the_way: false }
    }

    /// A piece of the way.
    pub(crate) fn passed(ctx: &Context<'_>, attachment: &Attachment, by: &Passed) -> Self {
        let tool = |boom| tool_point(ctx, attachment, boom);
        Self { tool: tool(by.boom), until: tool(by.until), off: by.off, on_the_way: true }
    }
}

/// Reads the chart. The box holds the point in machine axes and in gravity axes, the stand error,
/// the ground's accuracy at the machine and, by the pitch that it and settlement may cause, at the load, boom
/// flex outward, and the excess of the load centre.
pub(crate) fn read(
    ctx: &Context<'_>,
    posed: &Posed,
    chart: &Chart,
    attachment: &Attachment,
    place: Place,
    trace: &mut impl Trace,
) -> ChartReading {
    let start = chart.datum(ctx.machine);
    let measured = chart.measured(attachment, -libm::atan(posed.footing.along.nominal));
    let plane = |p: DVec2| DVec3::new(p.x, 0.0, p.y);
    let to_reach = place.tool + plane(measured.reach - start);
    let to_height = place.tool + plane(DVec2::new(measured.height.x - start.x, measured.height.y));
    let in_machine = DVec2::new(to_reach.x, to_height.z);
    // Gravity axes: the same vectors, to the height from the ground below the datum, turned level.
    let level = |p: DVec3| posed.footing.site_from_machine.turn(p);
    let (s, c) = libm::sincos(ctx.stand.heading);
    let turned = level(to_reach);
    let by_gravity = DVec2::new(turned.x * c + turned.y * s, level(to_height).z);
    let centre = ctx.load.centre_ahead.high;
    let counts = Centre::of(chart, attachment, centre, ctx.load.hanging.is_some());
    let (excess, swing) = (counts.excess(), ctx.load.swing(&mut Silent));
    let (error, flex, accuracy) = (ctx.policy.stand_error, ctx.machine.boom.flex, posed.footing.accuracy);
    let pitch = (posed.footing.along.high - posed.footing.along.low) / 2.0 + ctx.leans;
    let most = by_gravity.abs() + place.tool.distance(place.until);
    let out = DVec2::new(error + pitch * most.y, accuracy + pitch * most.x);
    // The other end of a piece: the same offsets from its tool point.
    let moved = place.until - place.tool;
    let turned_moved = level(moved);
    let end_in_machine = in_machine + DVec2::new(moved.x, moved.z);
    let end_by_gravity = by_gravity + DVec2::new(turned_moved.x * c + turned_moved.y * s, turned_moved.z);
    let nearest = in_machine.min(by_gravity).min(end_in_machine.min(end_by_gravity)) - place.off;
    let farthest = in_machine.max(by_gravity).max(end_in_machine.max(end_by_gravity)) + place.off;
    let point = ChartPoint {
        at: by_gravity,
        low: nearest - out,
        high: farthest + out + DVec2::new(flex + excess + swing, 0.0),
    };
    let reading = if place.on_the_way { chart.read_on_the_way(&point, farthest.x + out.x) } else { chart.read(&point) };

    let input = || Source::Input { place: format!("{} chart", ctx.machine.id), certainty: chart.certainty };
    trace.step(|| Step {
        title: machine::text::STEP_REACH.message(),
        formula: "r = max(r_m, r_g),  r_m = x_P − x_D".into(),
        values: vec![
            ("x_P".into(), metres(in_machine.x + start.x)),
            ("x_D".into(), metres(start.x)),
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
        formula: if swing > 0.0 {
            "r_max = r + e + p·z_g + f + Δr + r_s"
        } else {
            "r_max = r + e + p·z_g + f + Δr"
        }
        .into(),
        values: vec![
            ("r".into(), metres(farthest.x)),
            ("e".into(), metres(error)),
            ("p".into(), Quantity::number(pitch)),
            ("f".into(), metres(flex)),
            ("Δr".into(), metres(excess)),
            ("r_s".into(), metres(swing)),
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
    if let (Some(cap), Some(rated)) = (counts.cap, attachment.rated_load_centre()) {
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
    let capacity = match reading {
        Reading::Within { capacity_kg, .. } => counts.counted(chart, capacity_kg),
        Reading::Outside => None,
    };
    if let (CentreRule::Row(i), Some(capacity), Reading::Within { capacity_kg, .. }) = (counts.rule, capacity, reading)
    {
        let row = chart.derating[i];
        trace.step(|| Step {
            title: machine::text::STEP_DERATING.with("centre", metres(row.load_centre.si())),
            formula: if row.at_most.is_some() { "C_d = min(k · C, C_k)" } else { "C_d = k · C" }.into(),
            values: [
                ("c", Some(metres(centre))),
                ("c_k", Some(metres(row.load_centre.si()))),
                ("k", Some(Quantity::ratio(row.share))),
                ("C", Some(kilograms(capacity_kg))),
                ("C_k", row.at_most.map(|most| kilograms(most.si()))),
            ]
            .into_iter()
            .filter_map(|(name, value)| Some((name.into(), value?)))
            .collect(),
            result: ("C_d".into(), kilograms(capacity)),
            source: input(),
        });
    }
    ChartReading { point, reading, centre: counts, capacity, on_the_way: place.on_the_way }
}

/// Everywhere the chart is read for a lift: clear above the landing, set down, and on the way.
fn places(ctx: &Context<'_>, posed: &Posed, attachment: &Attachment) -> Option<Vec<Place>> {
    let poses = posed.reach.ok()?;
    let movement = posed.movement.as_ref()?;
    let at_landing = poses.iter().map(|b| Place::landing(tool_point(ctx, attachment, *b)));
    Some(at_landing.chain(movement.on_the_way.iter().map(|p| Place::passed(ctx, attachment, p))).collect())
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
        .min_by(|(_, a), (_, b)| a.capacity.unwrap_or(-1.0).total_cmp(&b.capacity.unwrap_or(-1.0)))
}

/// What the chart leaves for a load at a stand, whatever it weighs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Leaves {
    /// Least capacity that counts over the movement, kg; `None`: not permitted, no chart, or out of reach.
    capacity: Option<f64>,
    /// The load's centre lies higher than the chart's test load.
    high: bool,
}

impl Leaves {
    /// The greatest mass that it does not refuse, kg; `None`: it refuses any.
    pub(crate) fn capacity(self) -> Option<f64> {
        self.capacity
    }

    /// Its status for a load of that mass, kg.
    pub(crate) fn status(self, mass: f64) -> Status {
        let Some(capacity) = self.capacity else { return Status::NoGo };
        let status = within(mass, capacity);
        if status == Status::Go && self.high { Status::Condition } else { status }
    }
}

pub(crate) fn leaves(ctx: &Context<'_>, posed: &Posed) -> Leaves {
    let Some(chart) = choose(ctx, Some(posed)) else { return Leaves { capacity: None, high: false } };
    let capacity = worst(ctx, posed, chart).and_then(|r| r.capacity);
    Leaves { capacity, high: load_is_high(ctx, chart) }
}

pub(crate) fn status(ctx: &Context<'_>, posed: Result<&Posed, &NotPosed>) -> Status {
    match posed {
        Ok(posed) => leaves(ctx, posed).status(ctx.load.mass_kg.high),
        Err(_) if choose(ctx, None).is_none() => Status::NoGo,
        Err(_) => Status::CannotTell,
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
    let Some(chart) = choose(ctx, posed.ok()) else { return no_chart(ctx, status) };
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
    if worst.centre.rule == CentreRule::BeyondTable {
        let last = chart.derating.last().map_or(chart.load_centre.si(), |row| row.load_centre.si());
        let centre = ctx.load.centre_ahead.high;
        let message = text::CHART_BEYOND_TABLE.with("centre", metres(centre)).with("last", metres(last));
        return Finding::new("chart", status, message).remedy(text::DO_CENTRE_NEARER).source(input).working(working);
    }
    let (Some(capacity), Reading::Within { zone, .. }) = (worst.capacity, worst.reading) else {
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
        let message = id
            .with("mass", kilograms(mass))
            .with("capacity", kilograms(capacity))
            .with("zone", &chart.zones[zone].name)
            .with("reach", metres(at.x))
            .with("height", metres(at.y));
        // The figure named is not the one printed in the chart: say which table made it.
        match worst.centre.rule {
            CentreRule::Row(i) => {
                let row = metres(chart.derating[i].load_centre.si());
                text::CHART_DERATED.with("what", message).with("centre", row)
            }
            _ => message,
        }
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

/// No chart for the combination, or only for other tyres.
fn no_chart(ctx: &Context<'_>, status: Status) -> Finding {
    let name = ctx.attachment.map_or(ctx.lift.attachment.as_str(), |a| a.name.as_str());
    let fits = |c: &&Chart| c.attachment == ctx.lift.attachment && c.support == ctx.lift.support;
    let finding = if let Some(other) = ctx.machine.charts.iter().find(fits) {
        let tyres = other.tyres.as_deref().unwrap_or_default();
        let message = text::CHART_OTHER_TYRES.with("attachment", name).with("tyres", tyres);
        Finding::new("chart", status, message).remedy(text::DO_CHART_FOR_TYRES)
    } else {
        let support = crate::support_name(ctx.lift.support);
        let message = text::CHART_NONE.with("attachment", name).with("support", support);
        Finding::new("chart", status, message).remedy(text::DO_OTHER_MACHINE)
    };
    finding.source(Source::second_hand("29 CFR 1926.602(c)(1)"))
}

fn out_of_reach(ctx: &Context<'_>, posed: &Posed, chart: &Chart) -> Finding {
    let target = DVec2::new(posed.target.x, posed.target.z);
    let at = ctx.attachment.map_or(target, |a| chart.point_of(ctx.machine, a, target));
    let message = text::CHART_OUT_OF_REACH.with("reach", metres(at.x)).with("height", metres(at.y));
    let finding = Finding::new("chart", Status::NoGo, message);
    finding.remedy(nearer(ctx).unwrap_or_else(|| text::DO_OTHER_MACHINE.message()))
}
