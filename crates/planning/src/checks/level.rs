//! Is the machine level enough for the chart: the frame as it stands, levelled where that is asked.

use super::{angle, reserve};
use crate::context::Context;
use crate::posed::{NotPosed, Posed};
use crate::standing::{self, Levelled};
use crate::text;
use evidence::{Finding, Ranged, Source, Status, TextId};
use machine::{LevelTolerance, OutOfLevel};
use quantity::Si;

/// Numbers of the level check.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Level {
    /// Worst roll with the ground's accuracy, rad, always positive.
    pub(crate) roll: f64,
    /// Worst pitch, rad, always positive.
    pub(crate) pitch: f64,
    pub(crate) twist: f64,
    pub(crate) tolerance: LevelTolerance,
    /// The frame levelled, where it is.
    levelled: Option<Levelled>,
}

fn worst(slope: Ranged) -> f64 {
    libm::atan(slope.low.abs().max(slope.high.abs()))
}

/// How far out of level the machine stands at worst.
pub(crate) fn out_of_level(posed: &Posed) -> OutOfLevel {
    OutOfLevel { sideways: worst(posed.footing.across), fore_aft: worst(posed.footing.along) }
}

/// `None` where there is no chart, so no tolerance.
pub(crate) fn level(ctx: &Context<'_>, posed: &Posed) -> Option<Level> {
    let chart = super::chart::choose(ctx, Some(posed))?;
    let stands = out_of_level(posed);
    Some(Level {
        roll: stands.sideways,
        pitch: stands.fore_aft,
        twist: posed.footing.twist,
        tolerance: chart.level,
        levelled: posed.levelled,
    })
}

impl Level {
    pub(crate) fn status(&self, ctx: &Context<'_>) -> Status {
        let within = self.roll <= self.tolerance.sideways.si()
            && self.pitch <= self.tolerance.fore_aft.si()
            && self.twist <= ctx.machine.rear.oscillation.si();
        match (within, self.levelled) {
            (false, _) => Status::NoGo,
            // It rests on what the operator does first.
            (true, Some(_)) => Status::Condition,
            (true, None) => Status::Go,
        }
    }
}

const CONTACTS: [[TextId; 4]; 3] = [
    [text::WHEEL_FRONT_LEFT, text::WHEEL_FRONT_RIGHT, text::WHEEL_REAR_LEFT, text::WHEEL_REAR_RIGHT],
    [text::PAD_LEFT, text::PAD_RIGHT, text::WHEEL_REAR_LEFT, text::WHEEL_REAR_RIGHT],
    [text::PAD_LEFT, text::PAD_RIGHT, text::PAD_REAR_LEFT, text::PAD_REAR_RIGHT],
];

/// Names of the four contacts.
pub(crate) fn contact_names(ctx: &Context<'_>) -> [TextId; 4] {
    CONTACTS[match ctx.lift.support {
        machine::SupportState::Tyres => 0,
        machine::SupportState::Stabilizers => 1,
        machine::SupportState::Outriggers => 2,
    }]
}

pub(crate) fn finding(ctx: &Context<'_>, posed: Result<&Posed, &NotPosed>) -> Finding {
    let posed = match posed {
        Ok(p) => p,
        Err(NotPosed::Ground(heights)) => {
            let missing = heights.iter().position(Option::is_none).unwrap_or(0);
            let message = text::LEVEL_NO_GROUND.with("wheel", contact_names(ctx)[missing]);
            return Finding::new("level", Status::CannotTell, message)
                .remedy(text::DO_SURVEY)
                .source(Source::Mechanics);
        }
        Err(NotPosed::Attachment) => {
            return Finding::new("level", Status::CannotTell, text::LEVEL_NO_TOLERANCE)
                .remedy(text::DO_LISTED_ATTACHMENT)
                .source(Source::CommonPractice);
        }
    };
    let Some(l) = level(ctx, posed) else {
        return Finding::new("level", Status::CannotTell, text::LEVEL_NO_TOLERANCE)
            .remedy(text::DO_OTHER_MACHINE)
            .source(Source::CommonPractice);
    };
    let chart = Source::Input { place: format!("{} chart", ctx.machine.id), certainty: evidence::Certainty::Chart };
    let (side, fore) = (l.tolerance.sideways.si(), l.tolerance.fore_aft.si());
    if l.roll > side {
        let message = match &l.levelled {
            Some(by) => text::LEVEL_FRAME_STILL
                .with("ground", angle(by.ground))
                .with("range", angle(by.range))
                .with("across", angle(l.roll)),
            None => text::LEVEL_SIDEWAYS.with("across", angle(l.roll)),
        };
        return Finding::new("level", Status::NoGo, message.with("tolerance", angle(side)))
            .measured(angle(l.roll), angle(side), reserve(l.roll, side))
            .remedy(if levelling_would_do(ctx, posed, side) { text::DO_LEVEL_FRAME } else { text::DO_LEVEL_STAND })
            .source(chart);
    }
    if l.pitch > fore {
        let message = text::LEVEL_FORE_AFT.with("along", angle(l.pitch)).with("tolerance", angle(fore));
        return Finding::new("level", Status::NoGo, message)
            .measured(angle(l.pitch), angle(fore), reserve(l.pitch, fore))
            .remedy(text::DO_LEVEL_STAND)
            .source(chart);
    }
    let limit = ctx.machine.rear.oscillation.si();
    if l.twist > limit {
        let message = text::LEVEL_TWIST.with("twist", angle(l.twist)).with("limit", angle(limit));
        return Finding::new("level", Status::NoGo, message)
            .measured(angle(l.twist), angle(limit), reserve(l.twist, limit))
            .remedy(text::DO_LEVEL_STAND)
            .source(Source::Mechanics);
    }
    let message = match &l.levelled {
        Some(by) => text::LEVEL_FRAME.with("ground", angle(by.ground)).with("range", angle(by.range)),
        None => text::LEVEL_WITHIN.message(),
    };
    let message = message
        .with("across", angle(l.roll))
        .with("along", angle(l.pitch))
        .with("tolerance_across", angle(side))
        .with("tolerance_along", angle(fore));
    // The direction with less reserve is the one shown as a length.
    let (demand, bound) =
        if reserve(l.roll, side) <= reserve(l.pitch, fore) { (l.roll, side) } else { (l.pitch, fore) };
    let finding = Finding::new("level", l.status(ctx), message)
        .measured(angle(demand), angle(bound), reserve(demand, bound))
        .source(chart);
    if l.levelled.is_some() { finding.remedy(text::STEP_LEVEL_FRAME) } else { finding }
}

/// True if levelling the frame, which is not asked, would bring it within the tolerance.
fn levelling_would_do(ctx: &Context<'_>, posed: &Posed, tolerance: f64) -> bool {
    let lift = crate::Lift { levelled: true, ..ctx.lift.clone() };
    let asked = Context { lift: &lift, ..*ctx };
    let by = standing::levelled(&asked, &posed.ground).filter(|_| posed.levelled.is_none());
    by.is_some_and(|by| by.residual.into_iter().all(|roll| roll.abs() <= tolerance))
}
