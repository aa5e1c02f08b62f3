//! `[[forks]]` and `[[jib]]` of a machine file.

use crate::boom_section::ahead_and_up;
use crate::ids::Ids;
use crate::limits::MASS;
use crate::quantity_value::Bound::UpTo;
use crate::table::Reader;
use crate::text;
use machine::{Attachment, AttachmentKind, Blade, Forks, Jib};
use quantity::{Dimension as D, kilograms, metres};

pub(crate) fn attachments(root: &Reader<'_>) -> Option<Vec<Attachment>> {
    let (forks, jibs) = (root.tables("forks"), root.tables("jib"));
    if forks.is_empty() && jibs.is_empty() && !root.document().is_broken() {
        root.fault("forks", text::NO_ATTACHMENT, Some(text::HINT_EXAMPLE.with("example", "[[forks]]")));
    }
    let mut ids = Ids::default();
    let mut read = Vec::new();
    for t in &forks {
        let kind = fork_pair(t).map(AttachmentKind::Forks);
        read.push(attachment(t, kind, &mut ids));
    }
    for t in &jibs {
        let kind = ahead_and_up(t, "hook").map(|hook| AttachmentKind::Jib(Jib { hook }));
        read.push(attachment(t, kind, &mut ids));
    }
    read.into_iter().collect()
}

fn attachment(t: &Reader<'_>, kind: Option<AttachmentKind>, ids: &mut Ids) -> Option<Attachment> {
    let id = ids.add(t);
    let name = t.text("name", "name = \"Pallet forks\"");
    let mass = t.si("mass", D::Mass, UpTo(MASS));
    let centre = ahead_and_up(t, "centre");
    let capacity = t.si("capacity", D::Mass, UpTo(MASS));
    t.done();
    Some(Attachment {
        id: id?,
        name: name?,
        kind: kind?,
        mass: kilograms(mass?),
        centre: centre?,
        capacity: kilograms(capacity?),
    })
}

fn fork_pair(t: &Reader<'_>) -> Option<Forks> {
    let heel = ahead_and_up(t, "heel");
    let spread = t.si("spread", D::Length, UpTo(10.0));
    let rated = t.si("load_centre", D::Length, UpTo(10.0));
    let left = blade(t, "left");
    let right = blade(t, "right");
    Some(Forks { heel: heel?, blades: [left?, right?], spread: spread?, rated_load_centre: metres(rated?) })
}

fn blade(t: &Reader<'_>, side: &str) -> Option<Blade> {
    let example = "{ capacity = \"2000 kg\", load_centre = \"0.61 m\", length = \"1.20 m\" }";
    let b = t.table(side, &format!("{side} = {example}"))?;
    let capacity = b.si("capacity", D::Mass, UpTo(MASS));
    let load_centre = b.si("load_centre", D::Length, UpTo(10.0));
    let length = b.si("length", D::Length, UpTo(10.0));
    let new = b.si_or_none("thickness_new", D::Length, UpTo(0.5));
    let now = b.si_or_none("thickness_now", D::Length, UpTo(0.5));
    let modified = b.yes_no("modified");
    b.done();
    if let (Some(new), Some(now)) = (new, now)
        && now > new
    {
        b.fault("thickness_now", text::BLADE_GREW.with("now", metres(now)).with("new", metres(new)), None);
    }
    Some(Blade {
        capacity: kilograms(capacity?),
        load_centre: metres(load_centre?),
        length: metres(length?),
        thickness_new: new.map(metres),
        thickness_now: now.map(metres),
        modified,
    })
}
