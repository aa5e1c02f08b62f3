//! Gates that a lift passes with its load: width and height carried against the clear opening.

use super::{metres, spare, within};
use crate::context::Context;
use crate::text;
use evidence::{Finding, Source, Status, Step, Trace, Working};
use machine::{BACKREST, BoomPosition, CARRIAGE_HALF, kinematics};
use quantity::Si;
use site::Gate;

/// What is asked of one gate.
struct Passage<'a> {
    gate: &'a Gate,
    /// Width of what passes, and with the room beside it, m.
    width: (f64, f64),
    /// True where the attachment's own width is not stated.
    tool_unknown: bool,
    /// Height of what passes, and with the room above it, m; `None`: not known.
    height: Option<(f64, f64)>,
}

/// Passages of the lift; `Err`: it cannot be told which there are.
fn passages<'a>(ctx: &Context<'a>) -> Result<Vec<Passage<'a>>, ()> {
    let gates = &ctx.job.gates;
    let Some(passed) = &ctx.lift.gates else {
        return if gates.is_empty() { Ok(Vec::new()) } else { Err(()) };
    };
    let width = width(ctx);
    let height = height(ctx);
    let passage = |i: &usize| {
        let gate = gates.get(*i).ok_or(())?;
        Ok(Passage {
            gate,
            width: (width, width + 2.0 * gate.clearance),
            tool_unknown: ctx.attachment.is_some_and(|a| a.width().is_none()),
            height: height.map(|h| (h, h + gate.clearance_above)),
        })
    };
    passed.iter().map(passage).collect()
}

/// Machine, load or attachment, whichever is wider, both shifted aside as the lift says; a hung load
/// turns and swings, m.
fn width(ctx: &Context<'_>) -> f64 {
    let load = ctx.load;
    let load = if ctx.hung() { 2.0 * (load.turning_radius() + load.swing_below()) } else { load.width };
    let tool = ctx.attachment.and_then(machine::Attachment::width).unwrap_or(0.0);
    (load.max(tool) + 2.0 * ctx.lift.side_shift.abs())
        .max(2.0 * ctx.machine.outline.half_width)
        .max(2.0 * CARRIAGE_HALF)
}

/// Highest of cab, boom, carriage and load in the maker's carry position on level ground, m. A hung
/// load is carried as its maker's manual says, which is not known here.
fn height(ctx: &Context<'_>) -> Option<f64> {
    if ctx.hung() {
        return None;
    }
    let machine = ctx.machine;
    let carry = BoomPosition { angle: machine.limits.carry.angle.si(), extension: 0.0, fork_tilt: 0.0 };
    let tool = kinematics::tool_point(&machine.boom, ctx.attachment?, carry);
    let end = machine.boom.foot.y + machine.boom.head_along * libm::sin(carry.angle);
    let boom = machine.boom.foot.y.max(end) + machine.boom.depth * core::f64::consts::FRAC_1_SQRT_2;
    let outline = &machine.outline;
    Some(outline.cab_top.max(outline.frame_top).max(boom).max(tool.z + ctx.load.height.max(BACKREST)))
}

impl Passage<'_> {
    fn narrow(&self) -> Status {
        let known = within(self.width.1, self.gate.width + 1e-9);
        if self.tool_unknown { known.max(Status::CannotTell) } else { known }
    }

    fn low(&self) -> Status {
        match (self.gate.height, self.height) {
            (None, _) => Status::Go,
            (Some(_), None) => Status::CannotTell,
            (Some(clear), Some((_, needed))) => within(needed, clear + 1e-9),
        }
    }

    fn findings(&self) -> Vec<Finding> {
        let gate = self.gate;
        let mut out = Vec::new();
        let mut working = Working::default();
        working.step(|| Step {
            title: text::WORKING_GATE_WIDTH.message(),
            formula: "B = b + 2 · c".into(),
            values: vec![("b".into(), metres(self.width.0)), ("c".into(), metres(gate.clearance))],
            result: ("B".into(), metres(self.width.1)),
            source: Source::CommonPractice,
        });
        let id = match self.narrow() {
            Status::Go => text::GATE_WIDE_ENOUGH,
            Status::CannotTell if self.tool_unknown => text::GATE_TOOL_UNKNOWN,
            _ => text::GATE_NARROW,
        };
        let message =
            id.with("gate", &gate.name).with("needed", metres(self.width.1)).with("width", metres(gate.width));
        let wide = Finding::new("gate", self.narrow(), message)
            .at_least(metres(self.width.1), metres(gate.width), spare(self.width.1, gate.width))
            .source(Source::CommonPractice)
            .working(working);
        out.push(match self.narrow() {
            Status::Go => wide,
            Status::CannotTell if self.tool_unknown => wide.remedy(text::DO_STATE_TOOL_WIDTH),
            _ => wide.remedy(text::DO_OTHER_GATE),
        });
        match (gate.height, self.height) {
            (None, _) => {}
            (Some(_), None) => out.push(
                Finding::new("gate", self.low(), text::GATE_HEIGHT_UNKNOWN.with("gate", &gate.name))
                    .remedy(text::DO_OTHER_GATE)
                    .source(Source::CommonPractice),
            ),
            (Some(clear), Some((high, needed))) => {
                let mut working = Working::default();
                working.step(|| Step {
                    title: text::WORKING_GATE_HEIGHT.message(),
                    formula: "H = h + c".into(),
                    values: vec![("h".into(), metres(high)), ("c".into(), metres(gate.clearance_above))],
                    result: ("H".into(), metres(needed)),
                    source: Source::CommonPractice,
                });
                let id = if self.low() == Status::Go { text::GATE_HIGH_ENOUGH } else { text::GATE_LOW };
                let message = id.with("gate", &gate.name).with("needed", metres(needed)).with("height", metres(clear));
                let high = Finding::new("gate", self.low(), message)
                    .at_least(metres(needed), metres(clear), spare(needed, clear))
                    .source(Source::CommonPractice)
                    .working(working);
                out.push(if self.low() == Status::Go { high } else { high.remedy(text::DO_OTHER_GATE) });
            }
        }
        out
    }
}

/// `None` where the job has no gates, or the lift passes none.
pub(crate) fn status(ctx: &Context<'_>) -> Option<Status> {
    match passages(ctx) {
        Err(()) => Some(Status::CannotTell),
        Ok(passages) => passages.iter().map(|p| p.narrow().max(p.low())).max(),
    }
}

pub(crate) fn findings(ctx: &Context<'_>) -> Vec<Finding> {
    match passages(ctx) {
        Err(()) => vec![
            Finding::new("gate", Status::CannotTell, text::GATE_NOT_STATED)
                .remedy(text::DO_STATE_GATES)
                .source(Source::CommonPractice),
        ],
        Ok(passages) => passages.iter().flat_map(Passage::findings).collect(),
    }
}
