//! Drawings of a lift, made by `drawing` in the reader's words.

use crate::preference::{DrawingChoice, Preference};
use drawing::{Style, WayDirection};
use planning::LiftPlan;

/// Width for readers that do not say theirs, CSS pixels.
pub(crate) const WIDTH: u16 = 720;

/// The side view; `None` where the machine could not be posed.
pub(crate) fn elevation(lift: &LiftPlan, asked: DrawingChoice) -> Option<String> {
    lift.elevation.as_ref()?;
    Some(drawing::elevation(lift, &preference(asked).wording(), &style(asked)))
}

/// The load chart; `None` where there is none for this combination.
pub(crate) fn chart(lift: &LiftPlan, asked: DrawingChoice) -> Option<String> {
    lift.chart.as_ref()?;
    Some(drawing::chart(lift, &preference(asked).wording(), &style(asked)))
}

/// The ground around the landing by what a stand there would give; `None` where it was not looked at.
pub(crate) fn stands(lift: &LiftPlan, asked: DrawingChoice) -> Option<String> {
    has_stands(lift).then(|| drawing::stand_field(lift, &preference(asked).wording(), &style(asked)))
}

/// The boom's movement; `None` where none is planned.
pub(crate) fn movement(lift: &LiftPlan, asked: DrawingChoice) -> Option<String> {
    has_movement(lift).then(|| drawing::boom_strip(lift, &preference(asked).wording(), &style(asked)))
}

/// The way to the stand; `None` where nobody states from where.
pub(crate) fn way_in(lift: &LiftPlan, asked: DrawingChoice) -> Option<String> {
    has_way_in(lift).then(|| drawing::way(lift, WayDirection::In, &preference(asked).wording(), &style(asked)))
}

/// The way back from the stand; `None` where there is none.
pub(crate) fn way_out(lift: &LiftPlan, asked: DrawingChoice) -> Option<String> {
    has_way_out(lift).then(|| drawing::way(lift, WayDirection::Out, &preference(asked).wording(), &style(asked)))
}

/// True if there is a picture of the way to the stand, or of why there is none.
pub(crate) fn has_way_in(lift: &LiftPlan) -> bool {
    lift.way.is_some()
}

/// True if there is a picture of the way back.
pub(crate) fn has_way_out(lift: &LiftPlan) -> bool {
    lift.way.as_ref().is_some_and(|w| w.way_out.is_some())
}

/// True if there is a picture of the stand field.
pub(crate) fn has_stands(lift: &LiftPlan) -> bool {
    lift.field.is_some() && lift.plan_view.is_some()
}

/// True if there is a picture of the boom's movement.
pub(crate) fn has_movement(lift: &LiftPlan) -> bool {
    lift.movement.as_ref().is_some_and(|m| !m.steps.is_empty())
}

fn preference(asked: DrawingChoice) -> Preference {
    Preference { lang: asked.lang, units: asked.units }
}

fn style(asked: DrawingChoice) -> Style {
    Style::screen(f64::from(asked.width.unwrap_or(WIDTH)))
}
