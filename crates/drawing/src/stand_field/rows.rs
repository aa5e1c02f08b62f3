//! The key: what governs, areas by what they give, marks.

use super::looks::FieldLook;
use crate::key::{Row, Swatch};
use crate::words::{Words, area};
use evidence::{Status, Verdict};
use planning::{FieldScene, LiftPlan, PlanViewScene, StandFrom};
use quantity::{Dimension, Quantity};
use wording::ui;

/// Areas smaller than this are in the picture only, m².
const SMALL: f64 = 0.05;

pub(super) fn rows(
    lift: &LiftPlan,
    field: &FieldScene,
    view: &PlanViewScene,
    step: f64,
    words: &Words<'_>,
) -> Vec<Row> {
    let mut rows = Vec::new();
    if let Some(stand) = lift.findings.iter().find(|f| f.check == "stand") {
        rows.push(Row::new(Swatch::Strong, words.say(stand.message.clone())));
    }
    if lift.stand.east_m.is_finite() {
        let id = match (lift.verdict, lift.stand_from) {
            (Verdict::NoGo, _) => ui::FIELD_STAND_REFUSED,
            (_, StandFrom::Found) => ui::FIELD_STAND_FOUND,
            _ => ui::FIELD_STAND_STATED,
        };
        let at = id
            .with("east", crate::words::length(lift.stand.east_m))
            .with("north", crate::words::length(lift.stand.north_m))
            .with("heading", quantity::degrees(lift.stand.heading_deg));
        rows.push(Row::new(Swatch::Point, words.say(at)));
    }
    for (i, stand) in lift.other_stands.iter().enumerate() {
        rows.push(Row::new(Swatch::Number(i + 1), words.other_stand(stand)));
    }
    if !field.everywhere.is_empty() {
        let names: Vec<String> = field.everywhere.iter().map(|check| words.check(check)).collect();
        rows.push(Row::new(Swatch::Strong, words.say(ui::FIELD_EVERYWHERE.with("checks", names.join(", ")))));
    }
    if lift.findings.iter().any(|f| f.check == "movement" && f.status == Status::Condition) {
        rows.push(Row::new(Swatch::None, words.say(ui::FIELD_PLAIN)));
    }
    let mut kinds: Vec<(FieldLook, planning::FieldKind)> =
        field.kinds.iter().filter_map(|k| Some((FieldLook::of(k)?, *k))).filter(|(_, k)| k.area_m2 > SMALL).collect();
    // What passes, what is dangerous, and last what is only the wrong place.
    let rank = |look: &FieldLook| (!look.passes(), look.elsewhere(), if look.passes() { Some(*look) } else { None });
    kinds.sort_by(|a, b| rank(&a.0).cmp(&rank(&b.0)).then(b.1.area_m2.total_cmp(&a.1.area_m2)));
    for (look, kind) in kinds {
        let state = words.say(kind.state.name());
        let text = match kind.by {
            Some(reason) => ui::FIELD_AREA_BY
                .with("state", state)
                .with("reason", words.say(reason.name()))
                .with("area", area(kind.area_m2)),
            None => ui::FIELD_AREA.with("state", state).with("area", area(kind.area_m2)),
        };
        rows.push(Row::new(Swatch::Field(look), words.say(text)));
    }
    rows.push(Row::new(Swatch::LandingFromAbove, words.pair(words.place_id(lift), &lift.landing)));
    if let Some((heading, tolerance)) = view.approach {
        let text = ui::FIELD_APPROACH
            .with("heading", quantity::degrees(heading))
            .with("tolerance", Quantity::new(tolerance.to_radians(), Dimension::Angle));
        rows.push(Row::new(Swatch::Arrow, words.say(text)));
    }
    if let Some(t) = &lift.stand_tolerance {
        let text = ui::FIELD_DISC.with("distance", crate::words::length(t.disc_m));
        rows.push(Row::new(Swatch::Disc, words.say(text)));
    }
    rows.push(Row::new(Swatch::None, words.say(ui::FIELD_GRID.with("step", format!("{step:.0}")))));
    rows
}
