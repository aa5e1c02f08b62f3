//! What each kind of tool asks besides its plate and its lock: side shift, hook latch, bucket, clamp.

use super::{kilograms, metres, reserve, within};
use crate::context::Context;
use crate::{BulkDensity, text};
use evidence::{Finding, Source, Status, Step, TextId, Trace, Working};
use machine::{AttachmentKind, Carriage, Clamp, HOLD_RESERVE, Hold, LatchSeen};
use quantity::{Dimension, Quantity};

/// One thing that is not plainly in order, with its numbers.
#[derive(Debug, Clone, Copy)]
enum Point<'a> {
    /// Side shift stated, m, and what the carriage has.
    ShiftTooFar(f64, f64),
    /// Side shift stated, m, within what the carriage has.
    Shifted(f64),
    /// What the carriage can do is not stated.
    CarriageUnknown,
    /// The carriage tilts or rotates.
    LeavesLevel,
    LatchFaulty,
    LatchNotSeen,
    /// Loose material on something that is no bucket.
    BulkNoBucket,
    /// Volume of the bucket; what is in it is not stated.
    BulkNotStated(f64),
    /// Volume stated and the bucket's, m³.
    BulkWithin(f64, f64),
    BulkTooMuch(f64, f64),
    /// What the material weighs is not stated; volume, m³.
    BulkUnweighed(f64),
    /// Volume, m³, and what it weighs: its mass by volume against the load's mass.
    BulkMass(f64, &'a BulkDensity),
    /// What another tool asks is not known here.
    OtherAsks,
    /// Width of the load and the grip, m.
    GripMisses(f64, (f64, f64)),
    /// What friction holds.
    GripHolds(Hold, bool),
    /// Both arms on sound material, nothing loose.
    GripSound,
    /// Force or friction not known.
    GripUnknown,
}

impl Point<'_> {
    fn status(self, ctx: &Context<'_>) -> Status {
        match self {
            Self::ShiftTooFar(..)
            | Self::LatchFaulty
            | Self::BulkNoBucket
            | Self::BulkTooMuch(..)
            | Self::GripMisses(..) => Status::NoGo,
            Self::BulkNotStated(_) | Self::BulkUnweighed(_) => Status::CannotTell,
            Self::Shifted(_)
            | Self::CarriageUnknown
            | Self::LeavesLevel
            | Self::LatchNotSeen
            | Self::GripSound
            | Self::GripUnknown
            | Self::OtherAsks => Status::Condition,
            Self::BulkWithin(..) => Status::Go,
            Self::BulkMass(volume, bulk) => within(volume * bulk.high, ctx.load.mass_kg.high + 1e-9),
            Self::GripHolds(hold, _) => within(ctx.load.mass_kg.high, hold.mass_kg()),
        }
    }
}

fn points<'a>(ctx: &Context<'a>) -> Vec<Point<'a>> {
    let Some(attachment) = ctx.attachment else { return Vec::new() };
    let mut out = Vec::new();
    let shift = ctx.lift.side_shift;
    let range = attachment.side_shift();
    if shift.is_nan() || shift.abs() > range + 1e-9 {
        out.push(Point::ShiftTooFar(shift, range));
    } else if shift != 0.0 {
        out.push(Point::Shifted(shift));
    }
    match (&attachment.kind, ctx.lift.bulk_volume) {
        (AttachmentKind::Bucket(b), None) => out.push(Point::BulkNotStated(b.volume)),
        (AttachmentKind::Bucket(b), Some(v)) if v <= b.volume + 1e-9 => out.push(Point::BulkWithin(v, b.volume)),
        (AttachmentKind::Bucket(b), Some(v)) => out.push(Point::BulkTooMuch(v, b.volume)),
        (_, Some(_)) => out.push(Point::BulkNoBucket),
        (_, None) if ctx.lift.bulk_density.is_some() => out.push(Point::BulkNoBucket),
        (_, None) => {}
    }
    if let (AttachmentKind::Bucket(_), Some(volume)) = (&attachment.kind, ctx.lift.bulk_volume) {
        out.push(match &ctx.lift.bulk_density {
            None => Point::BulkUnweighed(volume),
            Some(bulk) => Point::BulkMass(volume, bulk),
        });
    }
    match &attachment.kind {
        AttachmentKind::Forks(f) => match f.carriage {
            None => out.push(Point::CarriageUnknown),
            Some(c) if Carriage::leaves_level(c) => out.push(Point::LeavesLevel),
            Some(_) => {}
        },
        AttachmentKind::Jib(_) => {
            let seen = ctx.unit.latches.iter().find(|(id, _)| *id == attachment.id);
            match seen.map_or(LatchSeen::NotSeen, |(_, seen)| *seen) {
                LatchSeen::Closes => {}
                LatchSeen::Faulty => out.push(Point::LatchFaulty),
                LatchSeen::NotSeen => out.push(Point::LatchNotSeen),
            }
        }
        AttachmentKind::Clamp(c) => clamp(ctx, c, &mut out),
        AttachmentKind::Other(_) => out.push(Point::OtherAsks),
        AttachmentKind::Bucket(_) | AttachmentKind::Platform(_) => {}
    }
    out
}

fn clamp(ctx: &Context<'_>, clamp: &Clamp, out: &mut Vec<Point<'_>>) {
    let (low, high) = clamp.grip;
    let width = ctx.load.width;
    if !(low - 1e-9..=high + 1e-9).contains(&width) {
        out.push(Point::GripMisses(width, clamp.grip));
    }
    match clamp.hold {
        None => out.push(Point::GripUnknown),
        Some(hold) => {
            let holds = within(ctx.load.mass_kg.high, hold.mass_kg()) == Status::Go;
            out.push(Point::GripHolds(hold, holds));
        }
    }
    out.push(Point::GripSound);
}

pub(crate) fn status(ctx: &Context<'_>) -> Status {
    points(ctx).into_iter().map(|p| p.status(ctx)).max().unwrap_or(Status::Go)
}

pub(crate) fn findings(ctx: &Context<'_>) -> Vec<Finding> {
    points(ctx).into_iter().map(|p| finding(ctx, p)).collect()
}

fn volume(si: f64) -> Quantity {
    Quantity::new(si, Dimension::Volume)
}

fn finding(ctx: &Context<'_>, point: Point<'_>) -> Finding {
    let status = point.status(ctx);
    let name = ctx.attachment.map_or("", |a| a.name.as_str());
    let new = |message: evidence::Message| Finding::new("attachment", status, message);
    let named = |id: TextId| new(id.with("attachment", name));
    let practice = Source::CommonPractice;
    match point {
        Point::ShiftTooFar(shift, range) => {
            let message = text::SHIFT_TOO_FAR
                .with("attachment", name)
                .with("shift", metres(shift.abs()))
                .with("range", metres(range));
            new(message)
                .measured(metres(shift.abs()), metres(range), reserve(shift.abs(), range))
                .remedy(text::DO_LESS_SHIFT)
                .source(Source::Input {
                    place: format!("{} {}", ctx.machine.id, ctx.lift.attachment),
                    certainty: evidence::Certainty::Manual,
                })
        }
        Point::Shifted(shift) => {
            let side = if shift > 0.0 { text::SIDE_LEFT } else { text::SIDE_RIGHT };
            new(text::SHIFT_STATED.with("shift", metres(shift.abs())).with("side", side))
                .remedy(text::DO_SHIFT_AT_LANDING)
                .source(practice)
        }
        Point::CarriageUnknown => named(text::CARRIAGE_UNKNOWN).remedy(text::DO_STATE_CARRIAGE).source(practice),
        Point::LeavesLevel => named(text::CARRIAGE_LEAVES_LEVEL).remedy(text::DO_LOCK_LEVEL).source(practice),
        Point::LatchFaulty => named(text::LATCH_FAULTY).remedy(text::DO_NEW_LATCH).source(practice),
        Point::LatchNotSeen => named(text::LATCH_NOT_SEEN).remedy(text::DO_SEE_LATCH).source(practice),
        Point::BulkNoBucket => named(text::BULK_NO_BUCKET).remedy(text::DO_BUCKET).source(practice),
        Point::BulkNotStated(holds) => {
            new(text::BULK_NOT_STATED.with("attachment", name).with("volume", volume(holds)))
                .remedy(text::DO_STATE_BULK)
                .source(practice)
        }
        Point::BulkWithin(bulk, holds) | Point::BulkTooMuch(bulk, holds) => {
            let id = if status == Status::Go { text::BULK_WITHIN } else { text::BULK_TOO_MUCH };
            let message = id.with("attachment", name).with("bulk", volume(bulk)).with("volume", volume(holds));
            let f = new(message).measured(volume(bulk), volume(holds), reserve(bulk, holds)).source(practice);
            if status == Status::Go { f } else { f.remedy(text::DO_LESS_BULK) }
        }
        Point::BulkUnweighed(bulk) => {
            new(text::BULK_UNWEIGHED.with("bulk", volume(bulk))).remedy(text::DO_STATE_BULK_DENSITY).source(practice)
        }
        Point::BulkMass(bulk, density) => bulk_mass(ctx, status, bulk, density),
        Point::OtherAsks => named(text::OTHER_ASKS).remedy(text::DO_OTHER_MANUAL).source(practice),
        Point::GripMisses(width, (low, high)) => {
            let message = text::GRIP_MISSES
                .with("attachment", name)
                .with("width", metres(width))
                .with("low", metres(low))
                .with("high", metres(high));
            new(message).remedy(text::DO_OTHER_GRIP).source(practice)
        }
        Point::GripHolds(hold, holds) => grip_holds(ctx, status, hold, holds),
        Point::GripSound => named(text::GRIP_SOUND).remedy(text::DO_GRIP_SOUND).source(practice),
        Point::GripUnknown => named(text::GRIP_UNKNOWN).remedy(text::DO_STATE_GRIP).source(practice),
    }
}

/// The load's mass against what the volume weighs: nothing else checks a mass that is written too low.
fn bulk_mass(ctx: &Context<'_>, status: Status, bulk: f64, density: &BulkDensity) -> Finding {
    let (stated, by_volume) = (ctx.load.mass_kg.high, bulk * density.high);
    let mut working = Working::default();
    working.step(|| Step {
        title: text::WORKING_BULK_MASS.message(),
        formula: "m = V · ρ".into(),
        values: vec![("V".into(), volume(bulk)), ("ρ".into(), Quantity::new(density.high, Dimension::Density))],
        result: ("m".into(), kilograms(by_volume)),
        source: density.source.clone(),
    });
    let id = if status == Status::Go { text::BULK_MASS_COVERS } else { text::BULK_MASS_SHORT };
    let message = id.with("bulk", volume(bulk)).with("mass", kilograms(by_volume)).with("stated", kilograms(stated));
    let f = Finding::new("attachment", status, message)
        .measured(kilograms(by_volume), kilograms(stated), reserve(by_volume, stated))
        .source(density.source.clone())
        .working(working);
    if status == Status::Go { f } else { f.remedy(text::DO_BULK_MASS.with("mass", kilograms(by_volume))) }
}

fn grip_holds(ctx: &Context<'_>, status: Status, hold: Hold, holds: bool) -> Finding {
    let (mass, held) = (ctx.load.mass_kg.high, hold.mass_kg());
    let mut working = Working::default();
    working.step(|| Step {
        title: machine::text::STEP_CLAMP_HOLD.message(),
        formula: "W_h = 2·μ·F / (n·g)".into(),
        values: vec![
            ("μ".into(), Quantity::number(hold.friction)),
            ("F".into(), super::newtons(hold.force)),
            ("n".into(), Quantity::number(HOLD_RESERVE)),
        ],
        result: ("W_h".into(), kilograms(held)),
        source: Source::CommonPractice,
    });
    let id = if holds { text::GRIP_HOLDS } else { text::GRIP_SLIPS };
    let f = Finding::new("attachment", status, id.with("mass", kilograms(mass)).with("held", kilograms(held)))
        .measured(kilograms(mass), kilograms(held), reserve(mass, held))
        .source(Source::CommonPractice)
        .working(working);
    if status == Status::Go {
        f
    } else {
        f.remedy(text::DO_LIGHTEN.with("mass", kilograms(held * ctx.load.mass_kg.nominal / mass)))
    }
}
