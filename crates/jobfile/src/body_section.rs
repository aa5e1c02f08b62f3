//! `[[body]]` of a machine file: what weighs, other than the boom; and bodies that a job adds.

use crate::limits::{MACHINE, MASS};
use crate::quantity_value::Bound::{UpTo, ZeroTo};
use crate::table::Reader;
use crate::text;
use machine::{Body, BodyKind};
use quantity::{Dimension as D, kilograms};

/// What carries a body, and the word for it.
pub(crate) const KINDS: [(&str, BodyKind); 4] = [
    ("frame", BodyKind::Frame),
    ("front-axle", BodyKind::FrontAxle),
    ("rear-axle", BodyKind::RearAxle),
    ("upper", BodyKind::Upper),
];

const CENTRE: &str = "centre = [\"-1.90 m\", \"0 m\", \"1.00 m\"]";

/// The kinds that every machine has. Only a slewing machine has an upper part.
pub(crate) fn needed() -> impl Iterator<Item = (&'static str, BodyKind)> {
    KINDS.into_iter().filter(|(_, kind)| *kind != BodyKind::Upper)
}

pub(crate) fn bodies(root: &Reader<'_>) -> Option<Vec<Body>> {
    root.required("body", "[[body]]")?;
    let tables = root.tables("body");
    let read: Vec<(Option<BodyKind>, Option<Body>)> = tables.iter().map(body).collect();
    // A body that could not be read may be the one that seems to be missing.
    if read.iter().all(|(kind, _)| kind.is_some()) {
        for (word, kind) in needed() {
            if !read.iter().any(|(k, _)| *k == Some(kind)) {
                root.fault("body", text::NO_BODY.with("kind", word), None);
            }
        }
    }
    read.into_iter().map(|(_, body)| body).collect()
}

fn body(t: &Reader<'_>) -> (Option<BodyKind>, Option<Body>) {
    let kind = t.choice("kind", &KINDS);
    let name = t.text("name", "name = \"counterweight\"");
    let mass = t.si("mass", D::Mass, UpTo(MASS));
    let least = t.si_or_none("least", D::Mass, ZeroTo(MASS));
    let centre = t.fact_point_3("centre", CENTRE, MACHINE);
    t.done();
    if let (Some(least), Some(mass)) = (least, mass)
        && least > mass
    {
        let message = text::LEAST_ABOVE_MASS.with("least", kilograms(least)).with("mass", kilograms(mass));
        t.fault("least", message, Some(text::HINT_LEAST.message()));
    }
    let least = least.map(kilograms);
    let read = || Some(Body { kind: kind?, name: name?, mass: kilograms(mass?), least, centre: centre? });
    (kind, read())
}

/// `[[machine.added]]` of a job: a body that is on the machine today besides its description.
pub(crate) fn added(t: &Reader<'_>) -> Option<Body> {
    let name = t.text("name", "name = \"tool box\"");
    let mass = t.si("mass", D::Mass, UpTo(MASS));
    let centre = t.fact_point_3("centre", CENTRE, MACHINE);
    let kind = t.choice("part", &KINDS);
    t.done();
    Some(Body { kind: kind?, name: name?, mass: kilograms(mass?), least: None, centre: centre? })
}
