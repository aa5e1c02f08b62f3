//! Drawings of a lift, made by `drawing` in the reader's words.

use crate::preference::{DrawingChoice, Preference};
use drawing::Style;
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

fn preference(asked: DrawingChoice) -> Preference {
    Preference { lang: asked.lang, units: asked.units }
}

fn style(asked: DrawingChoice) -> Style {
    Style::screen(f64::from(asked.width.unwrap_or(WIDTH)))
}
