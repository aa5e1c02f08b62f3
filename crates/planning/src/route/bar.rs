//! What can be in the way of a drive, and the words for it.

use crate::{Job, text};
use evidence::{Message, TextId};
use site::Zone;
use stability::TipsOver;

/// What can be in the way. Numbers are indexes in the job's lists.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Bar {
    /// Beyond the area that was looked at.
    Outside,
    /// The ground is not known.
    UnknownGround,
    /// An excavation, within its set-back.
    Excavation(usize),
    /// An excavation of which nobody knows how deep it is.
    UnknownDepth(usize),
    /// A thing.
    Thing(usize),
    /// An overhead line, within the distance required.
    Line(usize),
    /// An overhead line of which voltage or heights are not known.
    UnknownLine(usize),
    /// A zone that is closed to machines, or where people are.
    Zone(usize),
    /// A zone driven one way only, against it.
    OneWay(usize),
    /// Soft ground that nobody accepted.
    Soft(usize),
    /// Steeper than a zone allows.
    ZoneSlope(usize),
    /// Steeper along the machine than is driven.
    Along,
    /// Steeper across the machine than is driven.
    Across,
    /// The rear axle turns against the front by more than it oscillates.
    Twist,
    /// Too steep across for turning.
    TurningAcross,
    /// Loaded, and the load faces downhill.
    LoadDownhill,
    /// Less tilt left than is required.
    Tilt(Over),
}

/// Which way it would tip.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Over {
    /// Forward.
    Front,
    /// Backward.
    Rear,
    /// To either side.
    Side,
}

impl From<TipsOver> for Over {
    fn from(over: TipsOver) -> Self {
        match over {
            TipsOver::Front => Self::Front,
            TipsOver::Rear => Self::Rear,
            TipsOver::Left | TipsOver::Right => Self::Side,
        }
    }
}

impl Bar {
    /// In words, with the name of what it is.
    pub fn message(self, job: &Job) -> Message {
        let around = &job.surroundings;
        let named = |id: TextId, name: Option<&String>| id.with("name", name.map_or("", String::as_str));
        let zone = |i: usize, id: TextId| {
            let zone: Option<&Zone> = around.zones.get(i);
            named(id, zone.map(|z| &z.name)).with("by", zone.map_or("", |z| z.by.as_str()))
        };
        let line = |i: usize, id| named(id, job.lines.get(i).map(|l| &l.name));
        let dig = |i: usize, id| named(id, around.excavations.get(i).map(|e| &e.name));
        match self {
            Self::Outside => text::DRIVE_OUTSIDE.message(),
            Self::UnknownGround => text::DRIVE_UNKNOWN_GROUND.message(),
            Self::Excavation(i) => dig(i, text::DRIVE_EXCAVATION),
            Self::UnknownDepth(i) => dig(i, text::DRIVE_UNKNOWN_DEPTH),
            Self::Thing(i) => named(text::DRIVE_THING, around.things.get(i).map(|t| &t.name)),
            Self::Line(i) => line(i, text::DRIVE_LINE),
            Self::UnknownLine(i) => line(i, text::DRIVE_UNKNOWN_LINE),
            Self::Zone(i) => zone(i, text::DRIVE_ZONE),
            Self::OneWay(i) => zone(i, text::DRIVE_ONE_WAY),
            Self::Soft(i) => zone(i, text::DRIVE_SOFT),
            Self::ZoneSlope(i) => zone(i, text::DRIVE_ZONE_SLOPE),
            Self::Along => text::DRIVE_ALONG.message(),
            Self::Across => text::DRIVE_ACROSS.message(),
            Self::Twist => text::DRIVE_TWIST.message(),
            Self::TurningAcross => text::DRIVE_TURNING_ACROSS.message(),
            Self::LoadDownhill => text::DRIVE_LOAD_DOWNHILL.message(),
            Self::Tilt(over) => {
                let side = match over {
                    Over::Front => text::DRIVE_OVER_FRONT,
                    Over::Rear => text::DRIVE_OVER_REAR,
                    Over::Side => text::DRIVE_OVER_SIDE,
                };
                text::DRIVE_TILT.with("over", side)
            }
        }
    }
}
