//! Values of a machine file in plain words.

use super::text;
use evidence::TextId;
use jobfile::{Seen, SeenValue, pattern};
use quantity::Quantity;
use wording::{Wording, ui};

/// A value in the reader's words and units.
pub(super) fn say(seen: &Seen, w: Wording) -> String {
    match &seen.value {
        SeenValue::Text(text) if text.is_empty() => w.text(ui::NONE),
        SeenValue::Text(text) => text.clone(),
        SeenValue::Word(written) => {
            word(&pattern(&seen.path), written).map_or_else(|| written.clone(), |id| w.text(id))
        }
        SeenValue::YesNo(true) => w.text(ui::YES),
        SeenValue::YesNo(false) => w.text(ui::NO),
        SeenValue::Count(count) => count.to_string(),
        SeenValue::Quantities(values) => w.alike(values).join(", "),
        SeenValue::Points(points) => {
            let corner = |p: &geometry::DVec2| {
                let length = |si| Quantity::new(si, quantity::Dimension::Length);
                w.alike(&[length(p.x), length(p.y)]).join(", ")
            };
            points.iter().map(corner).collect::<Vec<_>>().join("; ")
        }
    }
}

/// The plain words for a word of the file format.
pub(super) fn word(path: &str, written: &str) -> Option<TextId> {
    let last = path.rsplit('.').next().unwrap_or(path);
    Some(match (last, written) {
        ("kind", "frame") => text::WORD_FRAME,
        ("kind", "front-axle") => text::WORD_FRONT_AXLE,
        ("kind", "rear-axle") => text::WORD_REAR_AXLE,
        ("kind", "upper") => text::WORD_UPPER,
        ("lock", "never") => text::WORD_NEVER,
        ("lock", "operator") => text::WORD_OPERATOR,
        ("lock", "above-boom-angle") => text::WORD_ABOVE_BOOM_ANGLE,
        (_, "unknown") => text::WORD_UNKNOWN,
        ("pressure", "solid") => text::WORD_SOLID,
        ("rear_axle", "free") => text::WORD_FREE,
        ("rear_axle", "locked") => text::WORD_LOCKED,
        ("coupling", "quick") => text::WORD_QUICK,
        ("coupling", "pinned") => text::WORD_PINNED,
        ("coupling", "fixed") => text::WORD_FIXED,
        ("carriage", "fixed") => text::WORD_CARRIAGE_FIXED,
        ("carriage", "side-shift") => text::WORD_SIDE_SHIFT,
        ("carriage", "positioner") => text::WORD_POSITIONER,
        ("carriage", "tilting") => text::WORD_TILTING,
        ("carriage", "rotating") => text::WORD_ROTATING,
        ("measure", "gust-at-height") => text::WORD_GUST,
        ("measure", "forecast-mean") => text::WORD_MEAN,
        ("support", word) => {
            let known = machine::SupportState::WORDS.iter().find(|(known, _)| *known == word)?;
            planning::support_name(known.1)
        }
        ("height_to", "fork-top") => text::EXPLAIN_HEIGHT_FORKS,
        ("height_to", "hook") => text::EXPLAIN_HEIGHT_HOOK,
        ("height_to", "load-centre") => text::EXPLAIN_HEIGHT_CENTRE,
        ("height_to", "head-pin") => text::EXPLAIN_HEIGHT_PIN,
        _ => return None,
    })
}
