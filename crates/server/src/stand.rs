//! Where the machine stands, as the operator sees it from the cab, and what the boom does there; where else it could stand,
//! and how it gets there.

use crate::render::{fact, messages, range, said, verdict};
use crate::wire::{FactView, OtherStandView};
use evidence::TextId;
use planning::{FoundStand, LiftPlan, StandSummary, Task};
use quantity::{Dimension, Quantity};
use wording::{Wording, ui};

/// Distances that round to no centimetre are none.
const NEXT_TO_NOTHING_M: f64 = 0.005;

/// Compass words clockwise from north, each for an eighth of the circle.
const COMPASS: [TextId; 8] = [
    ui::COMPASS_NORTH,
    ui::COMPASS_NORTH_EAST,
    ui::COMPASS_EAST,
    ui::COMPASS_SOUTH_EAST,
    ui::COMPASS_SOUTH,
    ui::COMPASS_SOUTH_WEST,
    ui::COMPASS_WEST,
    ui::COMPASS_NORTH_WEST,
];

/// Landing with the task, front tyres, aim, heading.
pub(crate) fn approach(w: Wording, lift: &LiftPlan) -> Vec<FactView> {
    let task = match lift.task {
        Task::SetDown => ui::TASK_SET_DOWN,
        Task::PickUp => ui::TASK_PICK_UP,
    };
    vec![
        fact(w, task, lift.landing.clone()),
        fact(w, ui::FRONT_TYRES, tyres(w, lift.stand.face_to_landing_m)),
        fact(w, ui::AIM, aim(w, lift.stand.passes_left_m)),
        fact(w, ui::HEADING, heading(w, lift.stand.heading_deg)),
    ]
}

/// East and north.
pub(crate) fn position(w: Wording, stand: &StandSummary) -> FactView {
    fact(w, ui::POSITION, place(w, stand.east_m, stand.north_m))
}

/// Whether the stand was stated or found, and how far off it may be.
pub(crate) fn told(w: Wording, lift: &LiftPlan) -> Vec<FactView> {
    let from = fact(w, ui::STAND_FROM, w.render(&lift.stand_from_told()));
    std::iter::once(from).chain(lift.stand_off_told().iter().map(|f| said(w, f))).collect()
}

/// Another stand that works.
pub(crate) fn other_stand(w: Wording, stand: &FoundStand) -> OtherStandView {
    let turn = Quantity::new(stand.tolerance.turn_rad, Dimension::Angle);
    let off = ui::STAND_OFF_BY.with("disc", metres(stand.tolerance.disc_m)).with("turn", turn);
    let at = ui::OTHER_AT.with("east", metres(stand.east_m)).with("north", metres(stand.north_m));
    let check = w.check(&stand.governing);
    let governs = match stand.reserve {
        Some(reserve) => ui::OTHER_GOVERNS_LEFT.with("check", check).with("reserve", w.reserve(reserve)),
        None => ui::OTHER_GOVERNS.with("check", check),
    };
    OtherStandView {
        at: w.render(&at.with("heading", heading(w, stand.heading_deg))),
        verdict: verdict(w, stand.verdict),
        governs: w.render(&governs),
        off: w.render(&off),
    }
}

/// The way in and out.
pub(crate) fn way(w: Wording, lift: &LiftPlan) -> Vec<FactView> {
    lift.way.iter().flat_map(planning::LiftWay::told).map(|f| said(w, &f)).collect()
}

/// What is to be done about the way, what it rests on.
pub(crate) fn way_notes(w: Wording, lift: &LiftPlan) -> Vec<String> {
    lift.way.as_ref().map_or_else(Vec::new, |way| messages(w, &way.notes()))
}

/// Reach, height, boom, slopes; what is missing is said to be.
pub(crate) fn pose(w: Wording, stand: &StandSummary) -> Vec<FactView> {
    let known = |text: Option<String>| text.unwrap_or_else(|| w.text(ui::NOT_KNOWN));
    let length = |m: Option<f64>| known(m.map(|m| w.quantity(metres(m))));
    let angle = stand.boom_angle_rad.map(|rad| w.quantity(Quantity::new(rad, Dimension::Angle)));
    let slope = |slope: Option<evidence::Ranged>| known(slope.map(|r| range(w, r, Dimension::Slope)));
    vec![
        fact(w, ui::REACH, length(stand.reach_m)),
        fact(w, ui::LIFT_HEIGHT, length(stand.height_m)),
        fact(w, ui::BOOM_ANGLE, known(angle)),
        fact(w, ui::EXTENSION, length(stand.extension_m)),
        fact(w, ui::SLOPE_ACROSS, slope(stand.slope_across)),
        fact(w, ui::SLOPE_ALONG, slope(stand.slope_along)),
    ]
}

fn place(w: Wording, east_m: f64, north_m: f64) -> String {
    w.render(&ui::EAST_NORTH.with("east", metres(east_m)).with("north", metres(north_m)))
}

fn tyres(w: Wording, before_m: f64) -> String {
    let id = if before_m < 0.0 { ui::PAST_LANDING } else { ui::FROM_LANDING };
    w.render(&id.with("distance", metres(before_m.abs())))
}

fn aim(w: Wording, left_m: f64) -> String {
    if left_m.abs() < NEXT_TO_NOTHING_M {
        return w.text(ui::AIM_MIDDLE);
    }
    let id = if left_m > 0.0 { ui::AIM_LEFT } else { ui::AIM_RIGHT };
    w.render(&id.with("distance", metres(left_m.abs())))
}

fn heading(w: Wording, degrees: f64) -> String {
    let said = ui::HEADING_COMPASS.with("heading", quantity::degrees(degrees));
    w.render(&said.with("compass", w.text(compass(degrees))))
}

/// The compass word nearest to a heading in degrees clockwise from north.
fn compass(degrees: f64) -> TextId {
    let eighth = (degrees / 45.0).round().rem_euclid(8.0) as usize;
    COMPASS.get(eighth).copied().unwrap_or(ui::COMPASS_NORTH)
}

fn metres(m: f64) -> Quantity {
    Quantity::new(m, Dimension::Length)
}

#[cfg(test)]
mod tests {
    use super::{aim, compass, heading, tyres};
    use crate::preference::Preference;
    use wording::ui;

    #[test]
    fn a_heading_has_its_nearest_compass_word() {
        for (degrees, word) in [
            (0.0, ui::COMPASS_NORTH),
            (22.0, ui::COMPASS_NORTH),
            (23.0, ui::COMPASS_NORTH_EAST),
            (92.0, ui::COMPASS_EAST),
            (135.0, ui::COMPASS_SOUTH_EAST),
            (270.0, ui::COMPASS_WEST),
            (337.0, ui::COMPASS_NORTH_WEST),
            (338.0, ui::COMPASS_NORTH),
            (360.0, ui::COMPASS_NORTH),
            (-90.0, ui::COMPASS_WEST),
        ] {
            assert_eq!(compass(degrees).id, word.id, "{degrees}");
        }
        assert!(heading(Preference::default().wording(), 92.0).ends_with("(east)"));
    }

    #[test]
    fn sides_and_edges_are_told_apart() {
        let w = Preference::default().wording();
        assert_eq!(aim(w, 0.0), "at its middle");
        assert_eq!(aim(w, -0.004), "at its middle");
        assert!(aim(w, 0.03).ends_with("left of its middle"));
        assert!(aim(w, -0.03).ends_with("right of its middle") && !aim(w, -0.03).contains(['-', '−']));
        assert!(tyres(w, 1.85).ends_with("from the landing's edge"));
        assert!(tyres(w, -0.2).ends_with("past the landing's edge") && !tyres(w, -0.2).contains(['-', '−']));
    }
}
