//! Attachments of a machine file: `[[forks]]`, `[[jib]]`, `[[bucket]]`, `[[clamp]]`, `[[other]]`, and
//! `[[platform]]`, which is read so that a lift with it can be refused.

use crate::boom_section::ahead_and_up;
use crate::fork_section;
use crate::ids::Ids;
use crate::limits::MASS;
use crate::quantity_value::Bound::{UpTo, Within};
use crate::table::Reader;
use crate::text;
use machine::{Attachment, AttachmentKind, Bucket, Clamp, Coupling, Hold, Jib, OtherTool, Platform};
use quantity::{Dimension as D, kilograms, metres};

/// How a kind of attachment is read.
type Kind = fn(&Reader<'_>) -> Option<AttachmentKind>;

/// The tables, in the order in which attachments are listed.
const TABLES: [(&str, Kind); 9] = [
    ("forks", |t| fork_section::pair(t).map(AttachmentKind::Forks)),
    ("jib", |t| ahead_and_up(t, "hook").map(|hook| AttachmentKind::Jib(Jib { hook }))),
    ("bucket", |t| bucket(t).map(AttachmentKind::Bucket)),
    ("clamp", |t| clamp(t).map(AttachmentKind::Clamp)),
    ("other", |t| other(t).map(AttachmentKind::Other)),
    // One thing by many names: for people, and never planned.
    ("platform", platform),
    ("basket", platform),
    ("cage", platform),
    ("work_platform", platform),
];

const COUPLINGS: [(&str, Coupling); 3] =
    [("quick", Coupling::Quick), ("pinned", Coupling::Pinned), ("fixed", Coupling::Fixed)];

pub(crate) fn attachments(root: &Reader<'_>) -> Option<Vec<Attachment>> {
    let tables: Vec<(Vec<Reader<'_>>, Kind)> = TABLES.iter().map(|(key, kind)| (root.tables(key), *kind)).collect();
    if tables.iter().all(|(list, _)| list.is_empty()) && !root.document().is_broken() {
        root.fault("forks", text::NO_ATTACHMENT, Some(text::HINT_EXAMPLE.with("example", "[[forks]]")));
    }
    let mut ids = Ids::default();
    let mut read = Vec::new();
    for (list, kind) in &tables {
        for t in list {
            let kind = kind(t);
            read.push(attachment(t, kind, &mut ids));
        }
    }
    read.into_iter().collect()
}

fn attachment(t: &Reader<'_>, kind: Option<AttachmentKind>, ids: &mut Ids) -> Option<Attachment> {
    let id = ids.add(t);
    let name = t.text("name", "name = \"Pallet forks\"");
    let mass = t.si("mass", D::Mass, UpTo(MASS));
    let centre = ahead_and_up(t, "centre");
    let capacity = t.si("capacity", D::Mass, UpTo(MASS));
    let coupling = match t.optional("coupling") {
        None => Some(None),
        Some(node) => t.as_choice(node, "coupling", &COUPLINGS).map(Some),
    };
    t.done();
    Some(Attachment {
        id: id?,
        name: name?,
        kind: kind?,
        mass: kilograms(mass?),
        centre: centre?,
        capacity: kilograms(capacity?),
        coupling: coupling?,
    })
}

fn bucket(t: &Reader<'_>) -> Option<Bucket> {
    let heel = ahead_and_up(t, "heel");
    let volume = t.si("volume", D::Volume, UpTo(50.0));
    let edge = t.si("edge", D::Length, UpTo(10.0));
    let rated = t.si("load_centre", D::Length, UpTo(10.0));
    Some(Bucket { heel: heel?, volume: volume?, edge: edge?, rated_load_centre: metres(rated?) })
}

fn clamp(t: &Reader<'_>) -> Option<Clamp> {
    let heel = ahead_and_up(t, "heel");
    let grip = range(t, "grip", "grip = [\"0.30 m\", \"1.20 m\"]");
    let rated = t.si("load_centre", D::Length, UpTo(10.0));
    let width = t.si_or_none("width", D::Length, UpTo(10.0));
    let force = t.si_or_none("grip_force", D::Force, UpTo(1e6));
    let friction = t.si_or_none("grip_friction", D::Ratio, Within(0.01, 1.5));
    for (here, key) in [("grip_force", "grip_friction"), ("grip_friction", "grip_force")] {
        if t.has(here) && !t.has(key) {
            t.missing(key, if key == "grip_force" { "grip_force = \"12 kN\"" } else { "grip_friction = 0.5" });
        }
    }
    let hold = force.zip(friction).map(|(force, friction)| Hold { force, friction });
    Some(Clamp { heel: heel?, grip: grip?, rated_load_centre: metres(rated?), width, hold })
}

fn other(t: &Reader<'_>) -> Option<OtherTool> {
    let heel = ahead_and_up(t, "heel");
    let rated = t.si("load_centre", D::Length, UpTo(10.0));
    let width = t.si_or_none("width", D::Length, UpTo(10.0));
    Some(OtherTool { heel: heel?, rated_load_centre: metres(rated?), width })
}

fn platform(t: &Reader<'_>) -> Option<AttachmentKind> {
    ahead_and_up(t, "floor").map(|floor| AttachmentKind::Platform(Platform { floor }))
}

/// A range of lengths: the first below the second, both more than zero.
pub(crate) fn range(t: &Reader<'_>, key: &str, example: &str) -> Option<(f64, f64)> {
    let node = t.required(key, example)?;
    let values = t.as_numbers::<2>(node, key, D::Length, UpTo(10.0), None);
    let certainty = t.sourced(node, key);
    let [low, high] = values?;
    if low >= high {
        t.fault(key, text::ORDER.with("key", key).with("low", metres(low)).with("high", metres(high)), None);
        return None;
    }
    t.note(key, node, certainty?);
    Some((low, high))
}
