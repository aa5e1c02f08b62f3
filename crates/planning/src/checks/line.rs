//! Overhead lines: distance of every part over the whole movement, against the distance required.

use super::parts::{moving, standing};
use super::{metres, spare};
use crate::context::Context;
use crate::posed::{NotPosed, Posed, tool_point, why_not};
use crate::text;
use evidence::{Finding, Message, Source, Status, Step, Trace, Working};
use geometry::{DVec2, DVec3, Segment, Solid, distance_segment_solid};
use machine::{Attachment, BoomPosition};
use quantity::Si;
use site::PowerLine;
use site::clearance::{self, Regime};

/// Chords a span is cut into.
const CHORDS: usize = 8;
/// The movement is searched until the nearest distance is known this well, m; it is then taken off.
const RESOLUTION: f64 = 0.01;
/// Widest distance that any rule asks up to 1,000 kV: 50 ft of 29 CFR 1926.1409, m.
const FAR: f64 = 15.24;

/// What a line asks and what it gets.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) enum LineOutcome {
    /// Confirmed dead and grounded.
    Dead,
    /// In plan farther than any rule asks, m.
    Far(f64),
    /// Voltage not known.
    NoVoltage,
    /// Heights not known.
    NoHeight,
    /// No distance in the table.
    AboveTable,
    /// Nearest distance and required distance, m; place of the nearest point, site frame.
    Measured { distance: f64, required: f64, at: DVec3 },
    /// The machine cannot be posed.
    NotChecked,
}

/// Distance required from every part: legal or site rule, and everything that may be wrong.
pub(crate) fn required(ctx: &Context<'_>, line: &PowerLine, trace: &mut impl Trace) -> Option<f64> {
    let voltage = line.voltage?;
    let regime = regime(ctx);
    let legal = clearance::required(voltage, regime)?;
    let policy = &ctx.job.policy;
    let base = legal.max(policy.line_site_rule);
    let (error, swing, flex) = (line.survey_error.si(), line.swing.si(), ctx.machine.boom.flex);
    let total = base + error + swing + flex + policy.line_allowance + policy.stand_error;
    trace.step(|| Step {
        title: text::WORKING_LINE_LEGAL.message(),
        formula: match regime {
            Regime::Forks => "d_0 = 10 ft + 0.4 in · max(0, U − 50 kV) / kV".into(),
            Regime::HungLoad => "d_0 = Table A(U)".into(),
        },
        values: vec![("U".into(), voltage.into())],
        result: ("d_0".into(), metres(legal)),
        source: clearance::source(regime),
    });
    trace.step(|| Step {
        title: text::WORKING_LINE_REQUIRED.message(),
        formula: "d = max(d_0, d_s) + e + w + f + a + p".into(),
        values: vec![
            ("d_0".into(), metres(legal)),
            ("d_s".into(), metres(policy.line_site_rule)),
            ("e".into(), metres(error)),
            ("w".into(), metres(swing)),
            ("f".into(), metres(flex)),
            ("a".into(), metres(policy.line_allowance)),
            ("p".into(), metres(policy.stand_error)),
        ],
        result: ("d".into(), metres(total)),
        source: Source::CommonPractice,
    });
    Some(total)
}

fn regime(ctx: &Context<'_>) -> Regime {
    if ctx.hung() { Regime::HungLoad } else { Regime::Forks }
}

pub(crate) fn outcome(
    ctx: &Context<'_>,
    posed: Option<&Posed>,
    attachment: Option<&Attachment>,
    line: &PowerLine,
) -> LineOutcome {
    if line.dead.as_ref().is_some_and(|d| d.visibly_grounded) {
        return LineOutcome::Dead;
    }
    let aside = plan_distance(ctx, line);
    // Every part stays inside this radius about the foot of the boom, whatever the boom does.
    let radius = reach_radius(ctx);
    let extra = line.survey_error.si() + line.swing.si() + ctx.job.policy.line_allowance + ctx.job.policy.stand_error;
    let far = ctx.job.policy.line_site_rule.max(FAR) + extra;
    if aside.is_finite() && aside - radius > far {
        return LineOutcome::Far(aside - radius);
    }
    if line.voltage.is_none() {
        return LineOutcome::NoVoltage;
    }
    if line.spans.is_empty() {
        return LineOutcome::NoHeight;
    }
    let Some(required) = required(ctx, line, &mut evidence::Silent) else { return LineOutcome::AboveTable };
    let (Some(posed), Some(attachment)) = (posed, attachment) else { return LineOutcome::NotChecked };
    match nearest(ctx, posed, attachment, line, required) {
        Some((distance, at)) => LineOutcome::Measured { distance, required, at },
        None => LineOutcome::NotChecked,
    }
}

impl LineOutcome {
    pub(crate) fn status(&self, ctx: &Context<'_>, line: &PowerLine) -> Status {
        match *self {
            Self::Far(_) => Status::Go,
            Self::Dead => Status::Condition,
            Self::NoVoltage | Self::NoHeight | Self::AboveTable | Self::NotChecked => Status::CannotTell,
            Self::Measured { distance, required, .. } => {
                if distance.is_nan() || distance < required {
                    Status::NoGo
                } else if in_planning_zone(ctx, line, distance) {
                    Status::Condition
                } else {
                    Status::Go
                }
            }
        }
    }
}

fn in_planning_zone(ctx: &Context<'_>, line: &PowerLine, distance: f64) -> bool {
    regime(ctx) == Regime::HungLoad && line.voltage.is_some_and(|v| distance <= clearance::planning_zone(v))
}

/// Distance in plan from the stand to the line's course, m; infinite without any course.
fn plan_distance(ctx: &Context<'_>, line: &PowerLine) -> f64 {
    let at = ctx.lift.stand.at.extend(0.0);
    let flat = |p: DVec3| DVec3::new(p.x, p.y, 0.0);
    let here = Segment { a: at, b: at };
    let spans = line.spans.iter().map(|s| Segment { a: flat(s.from), b: flat(s.to) });
    let course = line.course.windows(2).map(|w| Segment { a: w[0].extend(0.0), b: w[1].extend(0.0) });
    spans.chain(course).map(|s| geometry::distance_segment_segment(&here, &s)).fold(f64::INFINITY, f64::min)
}

/// Greatest distance in plan of any part from the middle of the front axle, m.
fn reach_radius(ctx: &Context<'_>) -> f64 {
    let b = &ctx.machine.boom;
    let o = &ctx.machine.outline;
    let tool = ctx.attachment.map_or(DVec2::ZERO, Attachment::tool_point);
    let load = libm::hypot(ctx.load.depth, ctx.load.width);
    let boom = b.foot.x.abs() + libm::hypot(b.head_along + b.extension_max.si(), b.head_below) + tool.length() + load;
    boom.max(libm::hypot(o.rear.abs().max(o.front), o.half_width)) + b.flex + b.depth
}

/// The movement from carry to landing: raise retracted, extend, lower to set down; and back the
/// same way. `t` runs from 0 to 3.
fn position(posed: &Posed, t: f64) -> Option<BoomPosition> {
    let [above, down] = posed.reach.ok()?;
    let mix = |a: f64, b: f64, t: f64| a + (b - a) * t;
    let position = |angle, extension| BoomPosition { angle, extension, fork_tilt: posed.carry.fork_tilt };
    Some(if t <= 1.0 {
        position(mix(posed.carry.angle, above.angle, t), mix(posed.carry.extension, 0.0, t))
    } else if t <= 2.0 {
        position(above.angle, mix(0.0, above.extension, t - 1.0))
    } else {
        position(mix(above.angle, down.angle, t - 2.0), mix(above.extension, down.extension, t - 2.0))
    })
}

/// Nearest distance over the movement and where on the line: a proven lower bound, exact to
/// [`RESOLUTION`] near the required distance and to a fifth of the margin far from it.
///
/// No tunnelling: between two poses no point moves farther than the boom's turn times its radius
/// plus the extension, so the distance in between cannot fall below the mean of both ends less half
/// of that. Intervals are halved until that bound is close enough to the least found; what may be
/// missing is taken off.
fn nearest(
    ctx: &Context<'_>,
    posed: &Posed,
    attachment: &Attachment,
    line: &PowerLine,
    required: f64,
) -> Option<(f64, DVec3)> {
    let site_from_machine = posed.footing.site_from_machine;
    let foot = site_from_machine * DVec3::new(ctx.machine.boom.foot.x, 0.0, ctx.machine.boom.foot.y);
    let radius = reach_radius(ctx) + ctx.load.height + ctx.load.hanging.as_ref().map_or(0.0, |h| h.drop);
    let here = Segment { a: foot, b: foot };
    let mut chords: Vec<(f64, Segment)> = line
        .spans
        .iter()
        .flat_map(|s| s.chords(CHORDS))
        .map(|c| (geometry::distance_segment_segment(&here, &c) - radius, c))
        .collect();
    chords.sort_by(|a, b| a.0.total_cmp(&b.0));
    let (bound, first) = *chords.first()?;
    // Proven bound: no part gets nearer than this. Beyond what is asked nothing more exact is needed.
    if bound > required.max(FAR) {
        return Some((bound, midpoint(&first)));
    }
    // Frame and cab stand still: once is enough.
    let mut best = Least { distance: f64::INFINITY, at: DVec3::ZERO };
    for solid in standing(ctx) {
        best.take(&solid.moved(site_from_machine), &chords, f64::INFINITY);
    }
    let at = |t: f64, best: &mut Least| -> Option<f64> {
        let boom = position(posed, t)?;
        let tool = tool_point(ctx, attachment, boom);
        let mut least = f64::INFINITY;
        for solid in moving(ctx, tool, boom) {
            least = least.min(best.take(&solid.moved(site_from_machine), &chords, least));
        }
        Some(least)
    };
    let ends = [0.0, 1.0, 2.0, 3.0];
    let mut found = [0.0; 4];
    for (slot, t) in found.iter_mut().zip(ends) {
        *slot = at(t, &mut best)?;
    }
    let slack = |best: &Least| RESOLUTION.max((best.distance - required) * 0.2);
    let mut stack: Vec<(f64, f64, f64, f64)> = (0..3).map(|i| (ends[i], found[i], ends[i + 1], found[i + 1])).collect();
    let mut proven = best.distance;
    while let Some((t0, d0, t1, d1)) = stack.pop() {
        let bound = (d0 + d1 - travel(posed, t0, t1, radius)?) / 2.0;
        if bound >= best.distance - slack(&best) || t1 - t0 < 1e-9 {
            proven = proven.min(bound);
            continue;
        }
        let middle = f64::midpoint(t0, t1);
        let d = at(middle, &mut best)?;
        stack.push((t0, d0, middle, d));
        stack.push((middle, d, t1, d1));
    }
    Some((proven.min(best.distance).max(0.0), best.at))
}

/// Least distance found so far and the place on the line.
struct Least {
    distance: f64,
    at: DVec3,
}

impl Least {
    /// Distance of a solid to the nearest chord, as far as it is below `least`.
    fn take(&mut self, solid: &Solid, chords: &[(f64, Segment)], mut least: f64) -> f64 {
        let (centre, sphere) = solid.bounding_sphere();
        let here = Segment { a: centre, b: centre };
        for (_, chord) in chords {
            if geometry::distance_segment_segment(&here, chord) - sphere >= least {
                continue;
            }
            let d = distance_segment_solid(chord, solid);
            least = least.min(d);
            if d < self.distance {
                *self = Self { distance: d, at: nearest_on(chord, centre) };
            }
        }
        least
    }
}

/// Farthest that any point may move between two poses of the movement, m.
fn travel(posed: &Posed, t0: f64, t1: f64, radius: f64) -> Option<f64> {
    let (a, b) = (position(posed, t0)?, position(posed, t1)?);
    Some((a.angle - b.angle).abs() * radius + (a.extension - b.extension).abs())
}

fn midpoint(s: &Segment) -> DVec3 {
    (s.a + s.b) / 2.0
}

fn nearest_on(s: &Segment, p: DVec3) -> DVec3 {
    let d = s.b - s.a;
    let t = if d.length_squared() > 0.0 { ((p - s.a).dot(d) / d.length_squared()).clamp(0.0, 1.0) } else { 0.0 };
    s.a + d * t
}

pub(crate) fn finding(
    ctx: &Context<'_>,
    line: &PowerLine,
    outcome: &LineOutcome,
    posed: Result<&Posed, &NotPosed>,
) -> Finding {
    let status = outcome.status(ctx, line);
    let rule = clearance::source(regime(ctx));
    let named = |id: evidence::TextId| id.with("line", &line.name);
    match *outcome {
        LineOutcome::Dead => {
            let (owner, permit) = line.dead.as_ref().map_or(("", ""), |d| (d.owner.as_str(), d.permit.as_str()));
            let message = named(text::LINE_DEAD).with("owner", owner).with("permit", permit);
            Finding::new("line", status, message)
                .remedy(text::DO_GROUND_LINE)
                .source(Source::Person { name: owner.to_owned(), statement: permit.to_owned() })
        }
        LineOutcome::Far(d) => {
            Finding::new("line", status, named(text::LINE_FAR).with("distance", metres(d))).source(rule)
        }
        LineOutcome::NoVoltage => {
            Finding::new("line", status, named(text::LINE_NO_VOLTAGE)).remedy(text::DO_ASK_VOLTAGE).source(rule)
        }
        LineOutcome::NoHeight => {
            Finding::new("line", status, named(text::LINE_NO_HEIGHT)).remedy(text::DO_MEASURE_LINE).source(rule)
        }
        LineOutcome::AboveTable => {
            let message = named(text::LINE_VOLTAGE_ABOVE_TABLE);
            let message = match line.voltage {
                Some(v) => message.with("voltage", v),
                None => message,
            };
            Finding::new("line", status, message).remedy(text::DO_ASK_VOLTAGE).source(rule)
        }
        LineOutcome::NotChecked => {
            let (why, remedy) = why_not(posed);
            Finding::new("line", status, named(text::LINE_NOT_CHECKED).with("why", why)).remedy(remedy).source(rule)
        }
        LineOutcome::Measured { distance, required: needed, .. } => {
            let mut working = Working::default();
            required(ctx, line, &mut working);
            working.step(|| Step {
                title: text::WORKING_LINE_NEAREST.message(),
                formula: "d_min = min over movement, parts and spans".into(),
                values: vec![("spans".into(), quantity::Quantity::number(line.spans.len() as f64))],
                result: ("d_min".into(), metres(distance)),
                source: Source::Mechanics,
            });
            let said =
                |id| -> Message { named(id).with("distance", metres(distance)).with("required", metres(needed)) };
            let f = match status {
                Status::Go => Finding::new("line", status, said(text::LINE_CLEAR)),
                Status::Condition => {
                    let zone = line.voltage.map_or(FAR, clearance::planning_zone);
                    Finding::new("line", status, said(text::LINE_PLANNING_ZONE).with("zone", metres(zone)))
                        .remedy(text::DO_PLANNING_ZONE)
                }
                _ => Finding::new("line", status, said(text::LINE_NEAR))
                    .remedy(text::DO_LINE_AWAY.with("distance", metres(needed - distance))),
            };
            f.measured(metres(needed), metres(distance), spare(needed, distance)).source(rule).working(working)
        }
    }
}

/// The finding about lines that nobody listed.
pub(crate) fn completeness(ctx: &Context<'_>) -> Finding {
    match &ctx.job.lines_complete {
        Some(by) => Finding::new("line", Status::Go, text::LINE_NONE.with("by", by))
            .source(Source::Person { name: by.clone(), statement: String::new() }),
        None => Finding::new("line", Status::CannotTell, text::LINE_NOT_STATED)
            .remedy(text::DO_LOOK_UP)
            .source(Source::CommonPractice),
    }
}
