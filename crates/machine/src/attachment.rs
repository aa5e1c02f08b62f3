//! Attachments: what is on the carriage.

use crate::{Bucket, Clamp, Forks, Jib, OtherTool, Platform, UNSTATED_WIDTH};
use geometry::DVec2;
use quantity::Mass;
use serde::{Deserialize, Serialize};

/// An attachment that the machine's maker allows.
#[derive(Debug, Clone)]
pub struct Attachment {
    /// Short id used by charts and lifts.
    pub id: String,
    /// Name for people.
    pub name: String,
    /// What it is.
    pub kind: AttachmentKind,
    /// Its mass.
    pub mass: Mass,
    /// Centre ahead of and above the head pin, level, m.
    pub centre: DVec2,
    /// Greatest load that the attachment's own plate allows.
    pub capacity: Mass,
    /// How it is held on the carriage; `None`: not stated, taken as [`Coupling::Quick`], the worst.
    pub coupling: Option<Coupling>,
}

/// Kinds of attachment this version can plan, and the one it refuses.
#[derive(Debug, Clone)]
#[expect(clippy::large_enum_variant, reason = "a machine has a handful of attachments, most of them forks")]
pub enum AttachmentKind {
    /// Pallet forks.
    Forks(Forks),
    /// Jib with a hook.
    Jib(Jib),
    /// Bucket for loose material.
    Bucket(Bucket),
    /// Clamp that grips blocks between two arms.
    Clamp(Clamp),
    /// Another tool of the maker's list.
    Other(OtherTool),
    /// Basket, cage or platform for people: every lift with it is an absolute stop.
    Platform(Platform),
}

/// Height of a load backrest or carriage above the forks, m (48 in; common practice).
pub const BACKREST: f64 = 1.22;
/// Half the width of a carriage at least, m (common practice).
pub const CARRIAGE_HALF: f64 = 0.65;

/// How an attachment is held on the carriage.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Coupling {
    /// Quick coupling, worked by lever or from the cab.
    Quick,
    /// Pins with clips.
    Pinned,
    /// Bolted: nothing that is changed between two lifts.
    Fixed,
}

impl Attachment {
    /// The point of the attachment that lifts are planned to, relative to the head pin, level, m:
    /// fork heel, hook, back of a bucket's floor, root of a clamp's arms, floor of a platform.
    pub fn tool_point(&self) -> DVec2 {
        match &self.kind {
            AttachmentKind::Forks(f) => f.heel,
            AttachmentKind::Jib(j) => j.hook,
            AttachmentKind::Bucket(b) => b.heel,
            AttachmentKind::Clamp(c) => c.heel,
            AttachmentKind::Other(o) => o.heel,
            AttachmentKind::Platform(p) => p.floor,
        }
    }
    /// Load centre that the attachment's own plate is rated at, m; `None` for a hook and for people.
    pub fn rated_load_centre(&self) -> Option<f64> {
        match &self.kind {
            AttachmentKind::Forks(f) => Some(f.rated_load_centre.value),
            AttachmentKind::Bucket(b) => Some(b.rated_load_centre.value),
            AttachmentKind::Clamp(c) => Some(c.rated_load_centre.value),
            AttachmentKind::Other(o) => Some(o.rated_load_centre.value),
            AttachmentKind::Jib(_) | AttachmentKind::Platform(_) => None,
        }
    }
    /// What the attachment carries with the load's centre at `centre`, m, kg: its plate, less by
    /// moment beyond its rated load centre (`C · c₀ / c`; mechanics). Nearer: no credit.
    pub fn capacity_at_kg(&self, centre: f64) -> f64 {
        match self.rated_load_centre() {
            Some(rated) if centre > rated => self.capacity.value * rated / centre,
            _ => self.capacity.value,
        }
    }
    /// How far the tool itself reaches ahead of its tool point, and how wide it is there, m; (0, 0) for
    /// a hook. A bucket, a clamp and another tool reach twice as far as their rated load centre. Where a
    /// clamp or another tool states no width, [`UNSTATED_WIDTH`]; a clamp is as wide at least as what it
    /// grips with an arm of 0.2 m on either side.
    pub fn footprint(&self) -> (f64, f64) {
        match &self.kind {
            AttachmentKind::Forks(f) => (f.longest(), f.spread + 0.2),
            AttachmentKind::Jib(_) => (0.0, 0.0),
            AttachmentKind::Bucket(b) => (2.0 * b.rated_load_centre.value, b.edge),
            AttachmentKind::Clamp(c) => {
                (2.0 * c.rated_load_centre.value, c.width.unwrap_or(UNSTATED_WIDTH).max(c.grip.1 + 0.4))
            }
            AttachmentKind::Other(o) => (2.0 * o.rated_load_centre.value, o.width.unwrap_or(UNSTATED_WIDTH)),
            AttachmentKind::Platform(_) => (2.0, 2.5),
        }
    }
    /// How wide the tool itself is, m; `None`: nobody stated it. 0 for a hook.
    pub fn width(&self) -> Option<f64> {
        match &self.kind {
            AttachmentKind::Clamp(Clamp { width, .. }) | AttachmentKind::Other(OtherTool { width, .. }) => {
                width.is_some().then(|| self.footprint().1)
            }
            _ => Some(self.footprint().1),
        }
    }
    /// How far the carriage shifts it to either side, m; 0 for what has no side shift.
    pub fn side_shift(&self) -> f64 {
        match &self.kind {
            AttachmentKind::Forks(f) => f.carriage.map_or(0.0, crate::Carriage::side_shift),
            _ => 0.0,
        }
    }
    /// True if the load hangs.
    pub fn hangs(&self) -> bool {
        matches!(self.kind, AttachmentKind::Jib(_))
    }
}

/// How an attachment was found on the machine before the lift.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum LockSeen {
    /// The lock was seen closed.
    Locked,
    /// The lock was seen open.
    Open,
    /// Nobody looked yet.
    NotSeen,
}

/// How the latch of a hook was found before the lift.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum LatchSeen {
    /// The latch is there and was seen to close.
    Closes,
    /// The latch is missing, bent or does not close.
    Faulty,
    /// Nobody looked yet.
    NotSeen,
}
