//! Attachments: what is on the carriage.

use geometry::DVec2;
use quantity::{Length, Mass};
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
}

/// Kinds of attachment this version can plan.
#[derive(Debug, Clone)]
pub enum AttachmentKind {
    /// Pallet forks.
    Forks(Forks),
    /// Jib with a hook.
    Jib(Jib),
}

/// Pallet forks.
#[derive(Debug, Clone)]
pub struct Forks {
    /// Fork heel (top face of the blades at the fork face), ahead of and above the head pin, level, m.
    pub heel: DVec2,
    /// The two blades, left then right.
    pub blades: [Blade; 2],
    /// Distance between the middles of the blades, m.
    pub spread: f64,
    /// Rated load centre from the fork face, m.
    pub rated_load_centre: Length,
}

/// One fork blade as stamped and as measured.
#[derive(Debug, Clone)]
pub struct Blade {
    /// Capacity stamped on this blade.
    pub capacity: Mass,
    /// Load centre stamped with it.
    pub load_centre: Length,
    /// Length of the blade.
    pub length: Length,
    /// Thickness at the heel when new.
    pub thickness_new: Option<Length>,
    /// Thickness at the heel as measured; `None` when not measured.
    pub thickness_now: Option<Length>,
    /// True if welded, drilled or otherwise changed from the maker's state; `None`: nobody looked.
    pub modified: Option<bool>,
}

/// A jib with a hook.
#[derive(Debug, Clone)]
pub struct Jib {
    /// Hook (bearing point of the sling) ahead of and above the head pin, level, m.
    pub hook: DVec2,
}

impl Attachment {
    /// The point of the attachment that lifts are planned to: fork heel or hook, relative to the
    /// head pin, level, m.
    pub fn tool_point(&self) -> DVec2 {
        match &self.kind {
            AttachmentKind::Forks(f) => f.heel,
            AttachmentKind::Jib(j) => j.hook,
        }
    }
    /// Load centre that the attachment's own plate is rated at, m; `None` for a hook.
    pub fn rated_load_centre(&self) -> Option<f64> {
        match &self.kind {
            AttachmentKind::Forks(f) => Some(f.rated_load_centre.value),
            AttachmentKind::Jib(_) => None,
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
