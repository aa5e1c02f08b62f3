//! Overhead lines: distance of every part over the whole movement, against the distance required.

use super::swept::{self, Parts};
use super::{metres, spare};
use crate::context::Context;
use crate::posed::{NotPosed, Posed, why_not};
use crate::text;
use evidence::{Finding, Message, Source, Status, Step, Trace, Working};
use geometry::{DVec2, DVec3, Segment, Solid, distance_point_segment, distance_segment_solid, nearest_on_segment};
use machine::Attachment;
use quantity::Si;
use site::PowerLine;
use site::clearance::{self, Regime};

/// Chords a span is cut into.
const CHORDS: usize = 8;
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
pub(crate) fn required(
    ctx: &Context<'_>,
    posed: Option<&Posed>,
    line: &PowerLine,
    trace: &mut impl Trace,
) -> Option<f64> {
    let voltage = line.voltage?;
    let regime = regime(ctx);
    let legal = clearance::required(voltage, regime)?;
    let policy = &ctx.policy;
    let base = legal.max(policy.line_site_rule);
    let (error, swing, flex) = (line.survey_error.si(), line.swing.si(), ctx.machine.boom.flex);
    let lean = lean_error(ctx, posed);
    let total = base + error + swing + flex + lean + policy.line_allowance + policy.stand_error;
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
        formula: "d = max(d_0, d_s) + e + w + f + l + a + p".into(),
        values: vec![
            ("d_0".into(), metres(legal)),
            ("d_s".into(), metres(policy.line_site_rule)),
            ("e".into(), metres(error)),
            ("w".into(), metres(swing)),
            ("f".into(), metres(flex)),
            ("l".into(), metres(lean)),
            ("a".into(), metres(policy.line_allowance)),
            ("p".into(), metres(policy.stand_error)),
        ],
        result: ("d".into(), metres(total)),
        source: Source::CommonPractice,
    });
    Some(total)
}

/// How far the survey's error under the wheels and their settlement may lean the boom's tip over, m.
pub(crate) fn lean_error(ctx: &Context<'_>, posed: Option<&Posed>) -> f64 {
    posed.map_or(0.0, |p| {
        let half = |r: evidence::Ranged| (r.high - r.low) / 2.0;
        (libm::hypot(half(p.footing.along), half(p.footing.across)) + ctx.leans) * boom_radius(ctx)
    })
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
    let required = match asked(ctx, posed, line) {
        LineOutcome::Measured { required, .. } => required,
        other => return other,
    };
    let (Some(posed), Some(attachment)) = (posed, attachment) else { return LineOutcome::NotChecked };
    match nearest(ctx, posed, attachment, line, required) {
        Some((distance, at)) => LineOutcome::Measured { distance, required, at },
        None => LineOutcome::NotChecked,
    }
}

/// What a line asks before anything is measured: [`LineOutcome::Measured`] with no distance yet where it asks for one.
pub(crate) fn asked(ctx: &Context<'_>, posed: Option<&Posed>, line: &PowerLine) -> LineOutcome {
    if line.dead.as_ref().is_some_and(|d| d.visibly_grounded) {
        return LineOutcome::Dead;
    }
    let aside = plan_distance(ctx, line);
    // Every part stays inside this radius about the stand, whatever the boom does.
    let radius = plan_radius(ctx);
    let extra = line.survey_error.si() + line.swing.si() + ctx.policy.line_allowance + ctx.policy.stand_error;
    let far = ctx.policy.line_site_rule.max(FAR) + extra;
    if aside.is_finite() && aside - radius > far {
        return LineOutcome::Far(aside - radius);
    }
    if line.voltage.is_none() {
        return LineOutcome::NoVoltage;
    }
    if line.spans.is_empty() {
        return LineOutcome::NoHeight;
    }
    match required(ctx, posed, line, &mut evidence::Silent) {
        None => LineOutcome::AboveTable,
        Some(required) => LineOutcome::Measured { distance: f64::NAN, required, at: DVec3::ZERO },
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

/// True if a hung load needs the further actions of the crane rule: the machine, worked anywhere up
/// to its greatest radius, could come within the zone, with everything that may be wrong.
fn in_planning_zone(ctx: &Context<'_>, line: &PowerLine, distance: f64) -> bool {
    let Some(voltage) = line.voltage.filter(|_| regime(ctx) == Regime::HungLoad) else { return false };
    let errors = line.survey_error.si() + line.swing.si() + ctx.machine.boom.flex + ctx.policy.stand_error;
    let zone = clearance::planning_zone(voltage) + errors;
    distance <= zone || plan_distance(ctx, line) - plan_radius(ctx) <= zone
}

/// Distance in plan from the stand to the line's course, m; infinite without any course.
fn plan_distance(ctx: &Context<'_>, line: &PowerLine) -> f64 {
    let at = ctx.stand.at.extend(0.0);
    let flat = |p: DVec3| DVec3::new(p.x, p.y, 0.0);
    let spans = line.spans.iter().map(|s| Segment { a: flat(s.from), b: flat(s.to) });
    let course = line.course.windows(2).map(|w| Segment { a: w[0].extend(0.0), b: w[1].extend(0.0) });
    spans.chain(course).map(|s| distance_point_segment(at, &s)).fold(f64::INFINITY, f64::min)
}

/// Greatest distance of any moving part from the boom's foot pin, m, whatever the boom does.
pub(crate) fn boom_radius(ctx: &Context<'_>) -> f64 {
    let b = &ctx.machine.boom;
    let load = ctx.load;
    let tool = ctx.attachment.map_or(DVec2::ZERO, Attachment::tool_point);
    // Beyond the tool point: the load in any turn about its hook, or ahead of and above the forks.
    let beyond = if let Some(h) = &load.hanging {
        libm::hypot(load.turning_radius(), h.drop + load.height) + load.swing_below()
    } else {
        let (long, wide) = ctx.attachment.map_or((0.0, 0.0), Attachment::footprint);
        DVec3::new(load.depth.max(BLADE).max(long), load.width.max(BLADE).max(wide), load.height.max(BLADE)).length()
    };
    let shift = ctx.lift.side_shift.abs();
    libm::hypot(b.head_along + b.extension_max.si(), b.head_below) + tool.length() + beyond + b.flex + b.depth + shift
}

/// No blade, backrest or carriage is larger than this, m; longer loads count by their own size.
const BLADE: f64 = 2.5;

/// Greatest distance in plan of any part from the middle of the front axle, m. The foot pin lies
/// behind it and the boom never points backward.
fn plan_radius(ctx: &Context<'_>) -> f64 {
    let o = &ctx.machine.outline;
    let forward = ctx.machine.boom.foot.x + boom_radius(ctx);
    forward.max(libm::hypot(o.rear.abs().max(o.front.abs()), o.half_width))
}

/// Nearest distance over the movement ([`swept::least`]) and where on the line.
fn nearest(
    ctx: &Context<'_>,
    posed: &Posed,
    attachment: &Attachment,
    line: &PowerLine,
    required: f64,
) -> Option<(f64, DVec3)> {
    let foot = posed.footing.site_from_machine * DVec3::new(ctx.machine.boom.foot.x, 0.0, ctx.machine.boom.foot.y);
    let radius = boom_radius(ctx);
    let chords = chords(line, foot, radius);
    let (bound, first) = *chords.first()?;
    // Proven bound: no part gets nearer than this. Beyond what is asked nothing more exact is needed.
    if bound > required.max(FAR) {
        return Some((bound, midpoint(&first)));
    }
    let mut best = Least { distance: f64::INFINITY, at: DVec3::ZERO };
    let distance =
        swept::least(ctx, posed, attachment, Parts::All, required, |solid, least| best.take(solid, &chords, least))?;
    Some((distance, best.at))
}

/// Chords of the line with a bound of how near anything within `radius` of `foot` comes, the nearest first.
pub(crate) fn chords(line: &PowerLine, foot: DVec3, radius: f64) -> Vec<(f64, Segment)> {
    let spans = line.spans.iter().flat_map(|s| s.chords(CHORDS));
    let mut chords: Vec<_> = spans.map(|c| (distance_point_segment(foot, &c) - radius, c)).collect();
    chords.sort_by(|a, b| a.0.total_cmp(&b.0));
    chords
}

/// Distance of a solid to the nearest chord, as far as it is below `least`, m.
pub(crate) fn to_chords(solid: &Solid, chords: &[(f64, Segment)], least: f64) -> f64 {
    Least { distance: f64::INFINITY, at: DVec3::ZERO }.take(solid, chords, least)
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
        for (_, chord) in chords {
            if distance_point_segment(centre, chord) - sphere >= least {
                continue;
            }
            let d = distance_segment_solid(chord, solid);
            least = swept::worse(least, d);
            if d < self.distance {
                *self = Self { distance: d, at: nearest_on_segment(centre, chord) };
            }
        }
        least
    }
}

fn midpoint(s: &Segment) -> DVec3 {
    (s.a + s.b) / 2.0
}

/// What is told of a line that somebody covered: it is recorded, and it counts as bare.
pub(crate) fn insulated(line: &PowerLine) -> Option<Finding> {
    let covered = line.insulated.as_ref()?;
    let message = text::LINE_INSULATED.with("line", &line.name).with("by", &covered.by).with("permit", &covered.permit);
    let source = Source::Person { name: covered.by.clone(), statement: covered.permit.clone() };
    Some(Finding::new("line", Status::Go, message).source(source))
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
            required(ctx, posed.ok(), line, &mut working);
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
            f.at_least(metres(needed), metres(distance), spare(needed, distance)).source(rule).working(working)
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
