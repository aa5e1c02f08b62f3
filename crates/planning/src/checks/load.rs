//! The load itself: sound, on a tool that fits it, and how it is best taken up.

use super::load_shape::{self, Shape};
use super::{load_advice, metres, reserve};
use crate::context::Context;
use crate::posed::Posed;
use crate::text;
use evidence::{Finding, Source, Status, TextId, Working};
use machine::{Attachment, Defect, Overhang};

/// One thing to say of a load.
enum Aspect<'a> {
    /// Hung load on forks, or the other way round.
    WrongTool(&'a str),
    /// Whether somebody looked at it, and found it sound.
    Seen(Option<bool>),
    Defect(Defect),
    /// Wet, and the water is not in its mass.
    WaterNotCounted,
    Overhang(&'a Overhang),
    Shape(Shape),
}

pub(crate) fn wrong_tool(ctx: &Context<'_>) -> bool {
    // Slung from forks is not planned here: a hung load needs its own attachment and chart.
    ctx.attachment.is_some_and(|a: &Attachment| a.hangs() != ctx.load.hanging.is_some())
}

/// What there is to say, the look at it first.
fn aspects<'a>(ctx: &Context<'a>, posed: Option<&Posed>) -> Vec<Aspect<'a>> {
    let load = ctx.load;
    let first = match ctx.attachment.filter(|_| wrong_tool(ctx)) {
        Some(a) => Aspect::WrongTool(&a.name),
        None => Aspect::Seen(load.condition_seen),
    };
    let mut out = vec![first];
    out.extend(load.defects.iter().map(|d| match d {
        Defect::Wet if !load.water_counted() => Aspect::WaterNotCounted,
        other => Aspect::Defect(*other),
    }));
    out.extend(load.overhangs.iter().map(Aspect::Overhang));
    out.extend(load_shape::shapes(ctx, posed).into_iter().map(Aspect::Shape));
    out
}

impl Aspect<'_> {
    fn status(&self) -> Status {
        match self {
            Self::WrongTool(_) | Self::Seen(Some(false)) => Status::NoGo,
            Self::Seen(Some(true)) => Status::Go,
            Self::Defect(defect) => defect.status(),
            Self::WaterNotCounted => Status::CannotTell,
            Self::Overhang(over) if over.unsupported => Status::NoGo,
            Self::Seen(None) | Self::Overhang(_) => Status::Condition,
            Self::Shape(shape) => shape.status(),
        }
    }

    fn finding(&self) -> Finding {
        let status = self.status();
        let new = |id: TextId, remedy: TextId| Finding::new("load", status, id).remedy(remedy);
        let finding = match self {
            Self::WrongTool(name) => Finding::new("load", status, text::LOAD_WRONG_TOOL.with("attachment", *name))
                .remedy(text::DO_FITTING_TOOL),
            Self::Seen(Some(true)) => Finding::new("load", status, text::LOAD_SOUND),
            Self::Seen(Some(false)) => new(text::LOAD_UNSOUND, text::DO_REPACK),
            Self::Seen(None) => new(text::LOAD_NOT_SEEN, text::DO_LOOK_AT_LOAD),
            Self::Defect(defect) => {
                let (said, remedy) = of_defect(*defect);
                new(said, remedy)
            }
            Self::WaterNotCounted => new(text::DEFECT_WET_NOT_COUNTED, text::DO_WEIGH_WET),
            Self::Overhang(over) => {
                let message = match (&over.over, over.unsupported) {
                    (None, true) => text::LOAD_LAYER_UNSUPPORTED.message(),
                    (None, false) => text::LOAD_LAYER_OVERHANGS.message(),
                    (Some(below), true) => text::LOAD_LAYER_NOT_ON_LAYER.with("below", below),
                    (Some(below), false) => text::LOAD_LAYER_OVER_LAYER.with("below", below),
                };
                let message = message
                    .with("layer", &over.layer)
                    .with("distance", metres(over.by))
                    .with("allowed", metres(over.allowed));
                Finding::new("load", status, message)
                    .measured(metres(over.by), metres(over.allowed), reserve(over.by, over.allowed).max(-1.0))
                    .remedy(text::DO_RESTACK)
            }
            Self::Shape(shape) => return shape.finding(),
        };
        finding.source(Source::CommonPractice)
    }
}

/// What a defect says, and what to do.
fn of_defect(defect: Defect) -> (TextId, TextId) {
    match defect {
        Defect::BrokenPallet => (text::DEFECT_BROKEN_PALLET, text::DO_REPACK),
        Defect::LooseBands => (text::DEFECT_LOOSE_BANDS, text::DO_REPACK),
        Defect::TornWrap => (text::DEFECT_TORN_WRAP, text::DO_REWRAP),
        Defect::DoubleStacked => (text::DEFECT_DOUBLE_STACKED, text::DO_ONE_PACK),
        Defect::Leaning => (text::DEFECT_LEANING, text::DO_REPACK),
        Defect::Overhanging => (text::DEFECT_OVERHANGING, text::DO_MIND_OVERHANG),
        Defect::LoosePieces => (text::DEFECT_LOOSE_PIECES, text::DO_REPACK),
        Defect::Frozen => (text::DEFECT_FROZEN, text::DO_BREAK_FREE),
        Defect::Wet => (text::DEFECT_WET, text::DO_COUNT_WATER),
        Defect::IceOrSnow => (text::DEFECT_ICE_OR_SNOW, text::DO_CLEAR_ICE),
        Defect::UnknownContents => (text::DEFECT_UNKNOWN_CONTENTS, text::DO_OPEN_OR_WEIGH),
        Defect::Leaking => (text::DEFECT_LEAKING, text::DO_STOP_LEAK),
        Defect::Bulging => (text::DEFECT_BULGING, text::DO_REPACK),
    }
}

pub(crate) fn status(ctx: &Context<'_>, posed: Option<&Posed>) -> Status {
    aspects(ctx, posed).iter().map(Aspect::status).max().unwrap_or(Status::CannotTell)
}

/// Everything there is to say of the load. The first has the working of mass and centre, and how the
/// load is best taken up.
pub(crate) fn findings(ctx: &Context<'_>, posed: Option<&Posed>) -> Vec<Finding> {
    let mut out: Vec<Finding> = aspects(ctx, posed).iter().map(Aspect::finding).collect();
    if let Some(first) = out.first_mut() {
        let mut working = Working::default();
        ctx.load.trace(&mut working);
        if !working.steps.is_empty() {
            first.working = Some(working);
        }
        first.remedies.extend(load_advice::advice(ctx));
    }
    out
}
