//! What every shell tells of stand and way, as facts: a name and a sentence.

use crate::checks::metres;
use crate::route::{RoutePlan, RouteRefusal};
use crate::{LiftPlan, LiftWay, StandFrom, StandTolerance, text};
use driving::Gear;
use evidence::Message;
use quantity::{Dimension, Quantity};

/// A name and what is said of it.
pub type Fact = [Message; 2];

impl LiftPlan {
    /// Where its stand comes from.
    pub fn stand_from_told(&self) -> Message {
        if let Some(lift) = &self.shares_stand_with {
            return text::STAND_FROM_SHARED.with("lift", lift.as_str());
        }
        match self.stand_from {
            StandFrom::Stated => text::STAND_FROM_STATED.message(),
            StandFrom::Found => text::STAND_FROM_FOUND.message(),
            StandFrom::Nowhere => text::STAND_FROM_NOWHERE.message(),
            StandFrom::NotSought => text::STAND_NONE_STATED.message(),
        }
    }

    /// How far off the stand may be, and what refuses beyond; nothing for a lift that is refused.
    pub fn stand_off_told(&self) -> Vec<Fact> {
        self.stand_tolerance.as_ref().map_or_else(Vec::new, StandTolerance::told)
    }
}

impl StandTolerance {
    /// Place and heading.
    pub fn told(&self) -> Vec<Fact> {
        let disc = metres(self.disc_m);
        let disc = match (self.disc_by, &self.disc_way) {
            (Some(by), Some(way)) => {
                text::OFF_PLACE_WAY.with("disc", disc).with("reason", by.name()).with("way", way.clone())
            }
            (Some(by), None) => text::OFF_PLACE_BY.with("disc", disc).with("reason", by.name()),
            (None, _) => text::OFF_PLACE.with("disc", disc),
        };
        let turn = Quantity::new(self.turn_rad, Dimension::Angle);
        let turn = match self.turn_by {
            Some(by) => text::OFF_HEADING_BY.with("turn", turn).with("reason", by.name()),
            None => text::OFF_HEADING.with("turn", turn),
        };
        vec![[text::OFF_PLACE_NAME.message(), disc], [text::OFF_HEADING_NAME.message(), turn]]
    }
}

impl LiftWay {
    /// The way in, the way out, and what comes nearest on each.
    pub fn told(&self) -> Vec<Fact> {
        let ways = [
            (text::WAY_IN_NAME, text::WAY_IN_TOLD, text::WAY_IN_RUNS, &self.way_in, false),
            (text::WAY_OUT_NAME, text::WAY_OUT_TOLD, text::WAY_OUT_RUNS, &self.way_out, true),
        ];
        let mut out = Vec::new();
        for (name, whole, runs, way, is_out) in ways {
            let Some(way) = way else {
                let refused = self.refused.as_ref().filter(|_| self.refused_out == is_out);
                let why = refused.map_or_else(|| text::WAY_NOT_THERE.message(), refusal);
                out.push([name.message(), why]);
                continue;
            };
            let said = whole.with("from", self.from.as_str()).with("length", metres(way.length_m));
            out.push([name.message(), said.with("time", minutes(way.time_s))]);
            if way.gear_changes > 0 {
                let said = text::WAY_RUNS.with("changes", way.gear_changes).with("runs", chain(way));
                out.push([runs.message(), said]);
            }
            if let Some(least) = way.margins.iter().find(|m| m.left.dimension == Dimension::Length) {
                let said = text::WAY_NEAREST.with("of", least.of.clone()).with("left", least.left);
                out.push([text::WAY_NEAREST_NAME.message(), said]);
            }
        }
        out
    }

    /// What a way that was found rests on, and what was not looked at; for one that was not, what to do.
    pub fn notes(&self) -> Vec<Message> {
        let mut out: Vec<Message> = Vec::new();
        let found = [&self.way_in, &self.way_out].into_iter().flatten();
        for note in found.flat_map(|way| &way.notes) {
            if !out.contains(note) {
                out.push(note.clone());
            }
        }
        out.extend(self.refused.iter().map(|r| r.remedy.clone()));
        out
    }
}

fn refusal(refused: &RouteRefusal) -> Message {
    text::WAY_REFUSED.with("what", refused.message.clone()).with("why", refused.why())
}

/// Whole minutes, begun ones counted.
pub(crate) fn minutes(seconds: f64) -> usize {
    (seconds / 60.0).ceil().clamp(1.0, 1e6) as usize
}

/// Forward and backward in turn, each as far as it goes.
fn chain(way: &RoutePlan) -> Message {
    let mut runs: Vec<(Gear, f64)> = Vec::new();
    for leg in &way.legs {
        match runs.last_mut() {
            Some((gear, length)) if *gear == leg.gear => *length += leg.length_m,
            _ => runs.push((leg.gear, leg.length_m)),
        }
    }
    let told = |(gear, length): (Gear, f64)| match gear {
        Gear::Forward => text::WAY_FORWARD.with("length", metres(length)),
        Gear::Reverse => text::WAY_BACKWARD.with("length", metres(length)),
    };
    let mut runs = runs.into_iter().map(told);
    let first = runs.next().unwrap_or_else(|| text::WAY_NO_REASON.message());
    runs.fold(first, |so_far, next| text::WAY_THEN.with("first", so_far).with("next", next))
}
