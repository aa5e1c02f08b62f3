//! What the drawings show, from the same numbers that the checks used.

use crate::check::LiftCheck;
use crate::checks::chart as chart_check;
use crate::checks::line::{LineOutcome, required};
use crate::checks::{metres, reserve};
use crate::posed::{Posed, tool_point};
use crate::{ChartScene, ChartZoneScene, ElevationScene, LineScene, PolygonScene, text};
use evidence::{Message, Silent};
use geometry::{DVec2, DVec3};
use machine::{AttachmentKind, BoomPosition, Chart, HeightTo, ReachFrom, ReachTo, Reading, kinematics};
use quantity::Si;

/// Points of the picture: forward distance along the heading from the stand, and site height.
pub(crate) struct View<'a> {
    posed: &'a Posed,
    at: DVec2,
    forward: DVec2,
}

impl<'a> View<'a> {
    pub(crate) fn of(ctx: &crate::context::Context<'_>, posed: &'a Posed) -> Self {
        let (s, c) = libm::sincos(ctx.stand.heading);
        Self { posed, at: ctx.stand.at, forward: DVec2::new(c, s) }
    }
    fn site(&self, p: DVec3) -> (f64, f64) {
        ((p.truncate() - self.at).dot(self.forward), p.z)
    }
    pub(crate) fn machine(&self, p: DVec3) -> (f64, f64) {
        self.site(self.posed.footing.site_from_machine * p)
    }
}

/// Side elevation with the load clear above the landing, or carried if the boom does not get there.
pub(crate) fn elevation(check: &LiftCheck<'_>, posed: &Posed) -> Option<ElevationScene> {
    let ctx = &check.ctx;
    let attachment = ctx.attachment?;
    let machine = ctx.machine;
    let view = View::of(ctx, posed);
    let boom = posed.reach.map_or(posed.carry, |[above, _]| above);
    let tool = tool_point(ctx, attachment, boom);

    let landing_s = (ctx.landing.at - view.at).dot(view.forward);
    let half = ctx.landing.size.x / 2.0;
    let (from, to) =
        (machine.outline.rear - 3.0, (landing_s + half + 3.0).max(machine.outline.front + 4.0).min(PICTURE));
    let steps = ((to - from) / 0.25).ceil() as usize;
    let ground = (0..=steps)
        .map(|i| {
            let s = from + (to - from) * i as f64 / steps as f64;
            (s, ctx.job.ground.height(view.at + view.forward * s).map(|(z, _)| z))
        })
        .collect();

    let o = &machine.outline;
    let rectangle = |x0: f64, x1: f64, z0: f64, z1: f64| {
        [(x0, z0), (x1, z0), (x1, z1), (x0, z1)]
            .iter()
            .map(|(x, z)| view.machine(DVec3::new(*x, 0.0, *z)))
            .collect::<Vec<_>>()
    };
    let mut polygons = vec![
        PolygonScene {
            kind: "frame".into(),
            outline: rectangle(o.rear, o.front - 0.25, o.ground_clearance, o.frame_top),
        },
        PolygonScene { kind: "cab".into(), outline: rectangle(o.cab.0, o.cab.1, o.frame_top, o.cab_top) },
    ];
    let contacts = machine.contacts(ctx.lift.support);
    let pads = [(0, contacts[0].x), (2, contacts[1].x)];
    for (x, area) in pads.iter().filter_map(|(i, x)| Some((x, machine.pad_area(ctx.lift.support, *i)?))) {
        let w = area.sqrt() / 2.0;
        polygons.push(PolygonScene { kind: "stabilizer".into(), outline: rectangle(x - w, x + w, 0.0, 0.12) });
    }
    let wheel = |axle: &machine::Axle| {
        let r = axle.tyre.free_radius.si();
        let (s, z) = view.machine(DVec3::new(axle.x, 0.0, r));
        (s, z, r)
    };

    let (load_outline, load_centre, sling) = load_picture(&view, ctx, tool, boom);
    let tool_line = match &attachment.kind {
        AttachmentKind::Forks(f) => {
            let length = f.longest();
            let carriage = Posed::carriage(tool, boom);
            let head = kinematics::head(&machine.boom, boom);
            // From the end of the boom line down to the head pin, level to the fork face, up the
            // face, down it to the heel and out along the blades.
            let level = (carriage.inverse() * head).z.clamp(0.0, FACE);
            vec![
                view.machine(boom_end(machine, boom)),
                view.machine(head),
                view.machine(carriage * DVec3::new(0.0, 0.0, level)),
                view.machine(carriage * DVec3::new(0.0, 0.0, FACE)),
                view.machine(tool),
                view.machine(carriage * DVec3::new(length, 0.0, 0.0)),
            ]
        }
        // Any other tool: to its tool point, and out along its floor or arms. A hook has none.
        _ => vec![
            view.machine(boom_end(machine, boom)),
            view.machine(kinematics::head(&machine.boom, boom)),
            view.machine(tool),
            view.machine(Posed::carriage(tool, boom) * DVec3::new(attachment.footprint().0, 0.0, 0.0)),
        ],
    };

    let chart = chart_check::choose(ctx, Some(posed));
    let datum_x = chart.map_or(machine.front_face(), |c| c.datum(machine).x);
    // Where the reach is read, at the height that is read.
    let chart_point = chart.map_or(tool, |c| {
        let measured = c.measured(attachment, boom.fork_tilt);
        tool + DVec3::new(measured.reach.x, 0.0, measured.height.y)
    });
    Some(ElevationScene {
        ground,
        machine: polygons,
        wheels: vec![wheel(&machine.rear.axle), wheel(&machine.front)],
        boom: boom_sections(&view, machine, boom),
        tool: tool_line,
        load: load_outline,
        sling,
        load_centre,
        landing: (landing_s - half, landing_s + half, ctx.landing.level),
        datum: view.machine(DVec3::new(datum_x, 0.0, 0.0)),
        chart_point: view.machine(chart_point),
        lines: line_scenes(check, &view),
    })
}

type Outline = Vec<(f64, f64)>;
type Sling = Option<(f64, f64, f64, f64)>;

pub(crate) fn load_picture(
    view: &View<'_>,
    ctx: &crate::context::Context<'_>,
    tool: DVec3,
    boom: BoomPosition,
) -> (Outline, (f64, f64), Sling) {
    let load = ctx.load;
    if let Some(h) = &load.hanging {
        // Hangs straight down by gravity, in the site frame.
        let hook = view.machine(tool);
        let top = (hook.0, hook.1 - h.drop);
        let half = load.depth / 2.0;
        let outline = vec![
            (top.0 - half, top.1),
            (top.0 + half, top.1),
            (top.0 + half, top.1 - load.height),
            (top.0 - half, top.1 - load.height),
        ];
        let centre = (top.0, top.1 - load.height + load.centre_up.nominal);
        return (outline, centre, Some((hook.0, hook.1, top.0, top.1)));
    }
    let carriage = Posed::carriage(tool, boom);
    let corner = |x: f64, z: f64| view.machine(carriage * DVec3::new(x, 0.0, z));
    let outline =
        vec![corner(0.0, 0.0), corner(load.depth, 0.0), corner(load.depth, load.height), corner(0.0, load.height)];
    (outline, corner(load.centre_ahead.nominal, load.centre_up.nominal), None)
}

/// Farthest that a picture reaches ahead of the stand, m: beyond any boom, short of any map.
const PICTURE: f64 = 60.0;

/// Height of the fork face in the picture, m.
const FACE: f64 = 0.9;

/// End of the boom line, machine frame, m.
pub(crate) fn boom_end(machine: &machine::Machine, at: BoomPosition) -> DVec3 {
    let (sin, cos) = libm::sincos(at.angle);
    let p = machine.boom.foot + DVec2::new(cos, sin) * (machine.boom.head_along + at.extension);
    DVec3::new(p.x, 0.0, p.y)
}

/// Sections of the boom from base to tip, each a little slimmer.
fn boom_sections(view: &View<'_>, machine: &machine::Machine, at: BoomPosition) -> Vec<(f64, f64, f64, f64, f64)> {
    let b = &machine.boom;
    let (sin, cos) = libm::sincos(at.angle);
    let point = |along: f64| {
        let p = b.foot + DVec2::new(cos, sin) * along;
        view.machine(DVec3::new(p.x, 0.0, p.y))
    };
    let total = b.head_along + at.extension;
    let n = b.sections.len().max(1);
    let shares: Vec<f64> = b.sections.iter().map(|s| s.share).collect();
    (0..n)
        .map(|i| {
            // Each section is as long as the retracted boom and slides out by its share.
            let out = shares.get(i).copied().unwrap_or(1.0) * at.extension;
            let (from, to) = (if i == 0 { 0.0 } else { out }, (b.head_along + out).min(total));
            let (p, q) = (point(from.min(to)), point(to));
            (p.0, p.1, q.0, q.1, b.depth * (1.0 - 0.18 * i as f64).max(0.4))
        })
        .collect()
}

fn line_scenes(check: &LiftCheck<'_>, view: &View<'_>) -> Vec<LineScene> {
    let ctx = &check.ctx;
    let left = DVec2::new(-view.forward.y, view.forward.x);
    check
        .lines
        .iter()
        .zip(&ctx.job.lines)
        .filter_map(|(outcome, line)| {
            let (at, nearest) = match *outcome {
                LineOutcome::Measured { distance, at, .. } => (at, Some(distance)),
                LineOutcome::NoVoltage => (nearest_span_point(line, view.at)?, None),
                _ => return None,
            };
            Some(LineScene {
                name: line.name.clone(),
                at: view.site(at),
                aside_m: (at.truncate() - view.at).dot(left),
                required_m: required(ctx, check.posed.as_ref().ok(), line, &mut Silent),
                nearest_m: nearest,
            })
        })
        .collect()
}

/// Point of the line nearest to the stand in plan, at its height; `None` without heights.
fn nearest_span_point(line: &site::PowerLine, at: DVec2) -> Option<DVec3> {
    line.spans
        .iter()
        .flat_map(|s| s.chords(16))
        .map(|c| {
            let d = (c.b - c.a).truncate();
            let t = if d.length_squared() > 0.0 {
                ((at - c.a.truncate()).dot(d) / d.length_squared()).clamp(0.0, 1.0)
            } else {
                0.0
            };
            c.a + (c.b - c.a) * t
        })
        .min_by(|a, b| a.truncate().distance(at).total_cmp(&b.truncate().distance(at)))
}

/// The chart picture, where there is a chart and the boom gets there.
pub(crate) fn chart(check: &LiftCheck<'_>, posed: &Posed) -> Option<ChartScene> {
    let ctx = &check.ctx;
    let chart = chart_check::choose(ctx, Some(posed))?;
    let worst = chart_check::worst(ctx, posed, chart)?;
    let pair = |p: &DVec2| (p.x, p.y);
    Some(ChartScene {
        zones: chart
            .zones
            .iter()
            .map(|z| {
                let counted = worst.centre.counted(chart, z.capacity.si()).unwrap_or(0.0);
                ChartZoneScene {
                    name: z.name.clone(),
                    capacity_kg: z.capacity.si(),
                    counted_kg: counted,
                    reserve: reserve(ctx.load.mass_kg.high, counted),
                    outline: z.outline.iter().map(pair).collect(),
                }
            })
            .collect(),
        not_permitted: chart.not_permitted.iter().map(|a| a.iter().map(pair).collect()).collect(),
        at: pair(&worst.point.at),
        low: pair(&worst.point.low),
        high: pair(&worst.point.high),
        load_kg: ctx.load.mass_kg.high,
        load_centre_m: chart.load_centre.si(),
        support: chart.support,
        cap_kg: worst.centre.cap,
        datum: datum_text(chart),
        zone: match worst.reading {
            Reading::Within { zone, .. } => Some(zone),
            Reading::Outside => None,
        },
    })
}

/// From what and to what a chart's reach is measured, in words.
pub fn reach_text(chart: &Chart) -> Message {
    let (from, to) = (chart.datum.reach_from, chart.datum.reach_to);
    let usual = match (from, to) {
        (ReachFrom::FrontTyreFace, ReachTo::LoadCentre) => Some(text::DATUM_TYRE_LOAD_CENTRE),
        (ReachFrom::FrontTyreFace, ReachTo::ForkHeel) => Some(text::DATUM_TYRE_HEEL),
        (ReachFrom::FrontTyreFace, ReachTo::Hook) => Some(text::DATUM_TYRE_HOOK),
        (ReachFrom::FrontAxle, ReachTo::LoadCentre) => Some(text::DATUM_AXLE_LOAD_CENTRE),
        (ReachFrom::FrontAxle, ReachTo::ForkHeel) => Some(text::DATUM_AXLE_HEEL),
        (ReachFrom::FrontAxle, ReachTo::Hook) => Some(text::DATUM_AXLE_HOOK),
        _ => None,
    };
    usual.map_or_else(
        || {
            let from = match from {
                ReachFrom::FrontTyreFace => text::DATUM_FROM_TYRE_FACE.message(),
                ReachFrom::FrontAxle => text::DATUM_FROM_AXLE.message(),
                ReachFrom::FrameFront => text::DATUM_FROM_FRAME_FRONT.message(),
                ReachFrom::StabilizerPads => text::DATUM_FROM_PADS.message(),
                ReachFrom::BoomFoot => text::DATUM_FROM_BOOM_FOOT.message(),
                ReachFrom::TurntableCentre => text::DATUM_FROM_TURNTABLE.message(),
                ReachFrom::AheadOfFrontAxle(x) if x < 0.0 => text::DATUM_FROM_BEHIND_AXLE.with("distance", metres(-x)),
                ReachFrom::AheadOfFrontAxle(x) => text::DATUM_FROM_AHEAD_OF_AXLE.with("distance", metres(x)),
            };
            let to = match to {
                ReachTo::LoadCentre => text::DATUM_TO_LOAD_CENTRE,
                ReachTo::ForkHeel => text::DATUM_TO_HEEL,
                ReachTo::ForkTip => text::DATUM_TO_TIP,
                ReachTo::Hook => text::DATUM_TO_HOOK,
                ReachTo::HeadPin => text::DATUM_TO_HEAD_PIN,
            };
            text::DATUM_FROM_TO.with("from", from).with("to", to)
        },
        Message::from,
    )
}

/// What a chart's reach is measured between, and its height where that is not the usual.
pub fn datum_text(chart: &Chart) -> Message {
    let reach = reach_text(chart);
    match chart.datum.height_to {
        HeightTo::ForkTop | HeightTo::Hook => reach,
        HeightTo::LoadCentre => text::DATUM_HEIGHT_TO.with("reach", reach).with("to", text::DATUM_TO_LOAD_CENTRE),
        HeightTo::HeadPin => text::DATUM_HEIGHT_TO.with("reach", reach).with("to", text::DATUM_TO_HEAD_PIN),
    }
}
