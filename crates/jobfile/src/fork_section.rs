//! `[[forks]]` of a machine file: carriage, sleeves, and the two blades as stamped and as measured.

use crate::attachment_section::range;
use crate::boom_section::ahead_and_up;
use crate::job_file::as_date;
use crate::limits::MASS;
use crate::node::Value;
use crate::quantity_value::Bound::{UpTo, Within, ZeroTo};
use crate::schema_notes::{Kind, SeenValue};
use crate::table::{Faulty, Reader};
use crate::text;
use machine::{Blade, Carriage, Extensions, Forks, Shank, USUAL_COVER};
use quantity::{Dimension as D, Mass, kilograms, metres, radians};

/// The words for a carriage.
#[derive(Clone, Copy)]
enum Word {
    Fixed,
    SideShift,
    Positioner,
    Tilting,
    Rotating,
}

const CARRIAGES: [(&str, Word); 5] = [
    ("fixed", Word::Fixed),
    ("side-shift", Word::SideShift),
    ("positioner", Word::Positioner),
    ("tilting", Word::Tilting),
    ("rotating", Word::Rotating),
];

pub(crate) fn pair(t: &Reader<'_>) -> Option<Forks> {
    let heel = ahead_and_up(t, "heel");
    let spread = t.si("spread", D::Length, UpTo(10.0));
    let rated = t.si("load_centre", D::Length, UpTo(10.0));
    let carriage = carriage(t, spread);
    let extensions = match t.table_or_none("extensions") {
        Some(e) => sleeves(&e).map(Some),
        None if t.has("extensions") => None,
        None => Some(None),
    };
    let tip_difference = t.si_or_none("tip_difference", D::Length, ZeroTo(1.0)).map(metres);
    let checked = match t.optional("checked") {
        None => Some(None),
        Some(node) => as_date(t, node, "checked").map(Some),
    };
    let left = blade(t, "left");
    let right = blade(t, "right");
    Some(Forks {
        heel: heel?,
        blades: [left?, right?],
        spread: spread?,
        rated_load_centre: metres(rated?),
        carriage: carriage.ok()?,
        extensions: extensions?,
        tip_difference,
        checked: checked?,
    })
}

/// What the carriage can do, with the keys that belong to it; left out: not stated.
fn carriage(t: &Reader<'_>, spread: Option<f64>) -> Result<Option<Carriage>, Faulty> {
    let Some(node) = t.optional("carriage") else { return Ok(None) };
    let shift_example = "side_shift = \"0.10 m\"";
    Ok(Some(match t.as_choice(node, "carriage", &CARRIAGES).ok_or(Faulty)? {
        Word::Fixed => Carriage::Fixed,
        Word::Tilting => Carriage::Tilting,
        Word::Rotating => Carriage::Rotating,
        Word::SideShift => {
            t.required("side_shift", shift_example).ok_or(Faulty)?;
            Carriage::SideShift(t.si("side_shift", D::Length, UpTo(2.0)).ok_or(Faulty)?)
        }
        Word::Positioner => {
            let reach = range(t, "spread_range", "spread_range = [\"0.40 m\", \"1.20 m\"]");
            let side_shift = t.si_or_none("side_shift", D::Length, UpTo(2.0)).unwrap_or(0.0);
            let (low, high) = reach.ok_or(Faulty)?;
            if let Some(spread) = spread.filter(|s| *s < low - 1e-9 || *s > high + 1e-9) {
                let message = text::OUT_OF_RANGE
                    .with("key", "spread")
                    .with("value", metres(spread))
                    .with("low", metres(low))
                    .with("high", metres(high));
                t.fault("spread", message, None);
            }
            Carriage::Positioner { spread: (low, high), side_shift }
        }
    }))
}

fn sleeves(t: &Reader<'_>) -> Option<Extensions> {
    let length = t.si("length", D::Length, UpTo(10.0));
    let capacity = t.si("capacity", D::Mass, UpTo(MASS));
    let load_centre = t.si("load_centre", D::Length, UpTo(10.0));
    let cover = t.si_or_none("cover", D::Ratio, Within(0.3, 1.0));
    let by = t.text("by", "by = \"maker of the sleeves, number on their plate\"");
    t.done();
    Some(Extensions {
        length: metres(length?),
        capacity: kilograms(capacity?),
        load_centre: metres(load_centre?),
        // Left out: what is usual. A word that cannot be read is a fault anyway.
        cover: cover.unwrap_or(USUAL_COVER),
        by: by?,
    })
}

/// A capacity that stands on the blade, or `"unknown"` where no stamp can be read.
fn stamp(b: &Reader<'_>) -> Result<Option<Mass>, Faulty> {
    let node = b.required("capacity", "capacity = \"2000 kg\"").ok_or(Faulty)?;
    b.expects("capacity", || Kind::Words(vec![String::from("unknown")]));
    match &node.value {
        Value::Text(word) if word == "unknown" => {
            b.found("capacity", || SeenValue::Word(word.clone()), b.source());
            Ok(None)
        }
        _ => b.as_fact(node, "capacity", D::Mass, UpTo(MASS)).map(|f| Some(kilograms(f.si))).ok_or(Faulty),
    }
}

fn blade(t: &Reader<'_>, side: &str) -> Option<Blade> {
    let example = "{ capacity = \"2000 kg\", load_centre = \"0.61 m\", length = \"1.20 m\" }";
    let b = t.table(side, &format!("{side} = {example}"))?;
    let capacity = stamp(&b);
    let load_centre = b.si("load_centre", D::Length, UpTo(10.0));
    let length = b.si("length", D::Length, UpTo(10.0));
    let new = b.si_or_none("thickness_new", D::Length, UpTo(0.5));
    let now = b.si_or_none("thickness_now", D::Length, UpTo(0.5));
    let modified = b.yes_no("modified");
    let angle = b.si_or_none("angle", D::Angle, Within(45_f64.to_radians(), 135_f64.to_radians()));
    let bent = b.si_or_none("bent", D::Length, ZeroTo(0.5));
    let shank_bent = b.si_or_none("shank_bent", D::Length, ZeroTo(0.5));
    let shank_length = b.si_or_none("shank_length", D::Length, UpTo(3.0));
    for (here, key) in [("shank_bent", "shank_length"), ("shank_length", "shank_bent")] {
        if b.has(here) && !b.has(key) {
            b.missing(key, if key == "shank_bent" { "shank_bent = \"1 mm\"" } else { "shank_length = \"0.50 m\"" });
        }
    }
    let crack = b.yes_no("crack");
    let lock = b.yes_no("lock");
    let proof_load = b.si_or_none("proof_load", D::Mass, UpTo(MASS));
    b.done();
    if let (Some(new), Some(now)) = (new, now)
        && now > new
    {
        b.fault("thickness_now", text::BLADE_GREW.with("now", metres(now)).with("new", metres(new)), None);
    }
    Some(Blade {
        capacity: capacity.ok()?,
        load_centre: metres(load_centre?),
        length: metres(length?),
        thickness_new: new.map(metres),
        thickness_now: now.map(metres),
        modified,
        angle: angle.map(radians),
        bent: bent.map(metres),
        shank: shank_bent.zip(shank_length).map(|(b, l)| Shank { bent: metres(b), length: metres(l) }),
        crack,
        lock,
        proof_load: proof_load.map(kilograms),
    })
}
