//! What a landing carries: its designer's rating, what lies there, who stands there, how its edge is closed.

use crate::answered::choice_or_usual;
use crate::job_file::all;
use crate::landing_structure::structure;
use crate::limits::RATING;
use crate::quantity_value::Bound::{Positive, Within, ZeroTo};
use crate::table::{Faulty, Reader};
use crate::text;
use evidence::{Faults, Message, Ranged, Working};
use ground::bay::{BayRating, SETTING_DOWN};
use ground::landing_carries::Runs;
use ground::room::Area;
use planning::{EdgeGuard, LandingStrength, LyingThere, StandsOn};
use quantity::{Dimension as D, Quantity, kilograms};
use site::LandingRating;

const STANDS: [(&str, StandsOn); 4] = [
    ("scaffold", StandsOn::Scaffold),
    ("building", StandsOn::Building),
    ("vehicle", StandsOn::Vehicle),
    ("ground", StandsOn::Ground),
];
const GUARDS: [(&str, EdgeGuard); 4] = [
    ("always-closed", EdgeGuard::AlwaysClosed),
    ("opened", EdgeGuard::Opened),
    ("none", EdgeGuard::NoGuard),
    ("no-drop", EdgeGuard::NoDrop),
];
const RUNS: [(&str, Runs); 2] = [("along", Runs::Along), ("across", Runs::Across)];

/// More people than that on a landing are a slip.
const MOST_PEOPLE: i64 = 100;

/// A rating in its two parts: the mass and who states it, and what else it says.
pub struct RatingRead {
    /// Mass and name.
    pub rated: LandingRating,
    /// The rest; mass and name are left out here.
    pub further: BayRating,
}

/// Notes the faults of the library under the table they came from.
pub(crate) fn noted<T>(t: &Reader<'_>, made: Result<T, Faults>) -> Option<T> {
    made.map_err(|faults| note_faults(t, faults)).ok()
}

/// The same for faults met later.
pub fn note_faults(t: &Reader<'_>, faults: Faults) {
    for f in faults.list {
        t.fault(f.place.key.as_deref().unwrap_or_default(), f.message, f.hint);
    }
}

/// `rating = { … }`: at least one of mass, pallet, even load or duty class.
pub fn rating(r: &Reader<'_>) -> Option<RatingRead> {
    let by = r.text("by", "by = \"C. Scaffold, scaffold designer\"");
    let optional = |key: &str, dimension, bound| r.si_or_none(key, dimension, bound);
    let mass = optional("mass", D::Mass, Within(10.0, RATING));
    let pallet = optional("pallet", D::Mass, Within(10.0, 50e3));
    let even = optional("even", D::Pressure, Within(100.0, 100e3));
    let part = optional("part", D::Pressure, Within(100.0, 200e3));
    let part_area = optional("part_area", D::Area, Within(0.01, 1e4));
    let point = optional("point", D::Force, Within(100.0, 1e6));
    let point_side = optional("point_side", D::Length, Within(0.01, 2.0));
    let push = optional("push", D::Force, ZeroTo(1e6));
    let allows_setting_down = r.yes_no("includes_setting_down");
    let class = r.count_or_none("duty_class", (1, 6));
    r.done();
    let mut sound = true;
    let mut wrong = |key: &str, message: Message, example: &str| {
        r.fault(key, message, Some(text::HINT_EXAMPLE.with("example", example)));
        sound = false;
    };
    for (one, other) in [("part", "part_area"), ("part_area", "part"), ("point", "point_side"), ("point_side", "point")]
    {
        if r.has(one) && !r.has(other) {
            let example = match one {
                "part" | "part_area" => "part = \"10 kPa\", part_area = \"1.2 m²\"",
                _ => "point = \"5 kN\", point_side = \"0.10 m\"",
            };
            wrong(one, text::RATING_BOTH.with("other", other), example);
        }
    }
    if !["mass", "pallet", "even", "duty_class"].into_iter().any(|key| r.has(key)) {
        wrong("mass", text::RATING_OF_NOTHING.message(), "mass = \"2000 kg\"");
    }
    if !sound {
        return None;
    }
    let further = BayRating {
        by: String::new(),
        total: None,
        pallet,
        even,
        part: part.zip(part_area),
        point: point.zip(point_side),
        push,
        allows_setting_down,
        class: class.and_then(|n| u8::try_from(n).ok()),
    };
    Some(RatingRead { rated: LandingRating { mass: mass.map(kilograms), by: by? }, further })
}

/// `edge`: how the edge is closed that the load comes over.
pub(crate) fn edge(t: &Reader<'_>) -> Result<Option<EdgeGuard>, Faulty> {
    optional_word(t, "edge", &GUARDS)
}

/// Everything of a landing's strength but rating and edge. Steps of strengths that follow from others are kept with it.
pub fn strength(t: &Reader<'_>) -> Option<LandingStrength> {
    let stands = optional_word(t, "stands", &STANDS);
    let people = t.count_or_none("people", (0, MOST_PEOPLE));
    // Less than the usual only in somebody's name.
    let setting_down = t
        .has("setting_down")
        .then(|| choice_or_usual(t, "setting_down", D::Number, Within(1.0, 3.0), SETTING_DOWN))
        .flatten();
    let lying: Vec<Option<LyingThere>> = t.tables("lying").iter().map(lying).collect();
    let mut steps = Working::default();
    let structure = structure(t, &mut steps);
    let runs = optional_word(t, "runs", &RUNS);
    let lying = all(lying)?;
    let (structure, by) = structure.ok()?;
    Some(LandingStrength {
        rating: BayRating::default(),
        stands: stands.ok()?,
        people: people.and_then(|n| usize::try_from(n).ok()),
        setting_down,
        lying,
        edge: None,
        structure,
        structure_by: by,
        runs: runs.ok()?,
        steps,
    })
}

fn optional_word<T: Copy>(t: &Reader<'_>, key: &str, words: &[(&str, T)]) -> Result<Option<T>, Faulty> {
    match t.optional(key) {
        None => Ok(None),
        Some(node) => t.as_choice(node, key, words).map(Some).ok_or(Faulty),
    }
}

/// Says what lies beside a landing of that size, along and across the approach, m.
pub(crate) fn lies_on_it(t: &Reader<'_>, lying: &[LyingThere], size: [f64; 2]) {
    for (table, thing) in t.tables("lying").iter().zip(lying) {
        let Some(a) = thing.place else { continue };
        for (key, end, most) in [("from_edge", a.x.1, size[0]), ("from_right", a.y.1, size[1])] {
            // Sums of typed lengths meet at edges.
            if end > most + 1e-6 {
                let length = |m| Quantity::new(m, D::Length);
                table.fault(key, text::LYING_BESIDE.with("end", length(end)).with("size", length(most)), None);
            }
        }
    }
}

/// Something that lies there; where it lies is known or not, but not by half.
fn lying(t: &Reader<'_>) -> Option<LyingThere> {
    const PLACE: [&str; 4] = ["from_edge", "from_right", "along", "across"];
    let what = t.text("what", "what = \"mortar tub\"");
    let mass = t.si("mass", D::Mass, ZeroTo(100e3));
    let [from_edge, from_right] = [PLACE[0], PLACE[1]].map(|key| t.si_or_none(key, D::Length, ZeroTo(500.0)));
    let [along, across] = [PLACE[2], PLACE[3]].map(|key| t.si_or_none(key, D::Length, Positive));
    t.done();
    let there: Vec<&str> = PLACE.into_iter().filter(|key| t.has(key)).collect();
    let place = match (there.len(), from_edge, from_right, along, across) {
        (0, ..) => None,
        (4, Some(x), Some(y), Some(along), Some(across)) => Some(Area { x: (x, x + along), y: (y, y + across) }),
        (4, ..) => return None,
        _ => {
            let missing = PLACE.into_iter().find(|key| !there.contains(key)).unwrap_or_default();
            let example = "from_edge = \"0.90 m\", from_right = \"0 m\", along = \"0.50 m\", across = \"0.50 m\"";
            let hint = text::HINT_EXAMPLE.with("example", example);
            t.fault(there[0], text::LYING_BY_HALF.with("missing", missing), Some(hint));
            return None;
        }
    };
    Some(LyingThere { what: what?, mass: Ranged::exact(mass?), place })
}
