//! Words and numbers of a drawing, from the reader's language and units.

use evidence::Message;
use planning::LiftPlan;
use quantity::{Dimension, Quantity, UnitSystem};
use wording::{Wording, ui};

/// Shorthand over [`Wording`].
pub(crate) struct Words<'a> {
    wording: &'a Wording,
    /// The reader's unit of length for axes and scale bars: metres in one of it.
    pub metres_per_unit: f64,
    /// Its symbol.
    pub unit: &'static str,
}

impl<'a> Words<'a> {
    pub(crate) fn new(wording: &'a Wording) -> Self {
        let (metres_per_unit, unit) = match wording.units() {
            UnitSystem::Si => (1.0, "m"),
            UnitSystem::Us => (0.3048, "ft"),
        };
        Self { wording, metres_per_unit, unit }
    }
    pub(crate) fn say(&self, message: impl Into<Message>) -> String {
        self.wording.render(&message.into())
    }
    pub(crate) fn length(&self, metres: f64) -> String {
        self.wording.quantity(length(metres))
    }
    pub(crate) fn quantity(&self, quantity: Quantity) -> String {
        self.wording.quantity(quantity)
    }
    /// Metres as a figure of an axis in the reader's unit, with the decimals that `step` (m) needs.
    pub(crate) fn figure(&self, metres: f64, step: f64) -> String {
        let decimals =
            usize::from(step / self.metres_per_unit < 0.999) + usize::from(step / self.metres_per_unit < 0.0999);
        let text = format!("{:.decimals$}", metres / self.metres_per_unit);
        let text = if text.trim_start_matches(['-', '0', '.']).is_empty() { text.replace('-', "") } else { text };
        match self.wording.language() {
            wording::Language::English => text,
            wording::Language::Spanish => text.replace('.', ","),
        }
    }
    pub(crate) fn mass(&self, kg: f64) -> String {
        self.wording.quantity(mass(kg))
    }
    /// Mass of the load, and the mass that the checks counted where that is more.
    pub(crate) fn load(&self, lift: &LiftPlan) -> String {
        let m = lift.load.mass_kg;
        if m.high > m.nominal {
            self.say(ui::MASS_COUNTED.with("mass", mass(m.nominal)).with("counted", mass(m.high)))
        } else {
            self.mass(m.nominal)
        }
    }
    pub(crate) fn angle(&self, radians: f64) -> String {
        self.wording.quantity(Quantity::new(radians, Dimension::Angle))
    }
    pub(crate) fn ratio(&self, ratio: f64) -> String {
        self.wording.quantity(Quantity::ratio(ratio))
    }
    /// "Tyres", "stabilizers down".
    pub(crate) fn support(&self, support: machine::SupportState) -> String {
        self.say(planning::support_name(support))
    }
    /// What the lift's place is to it: where the load goes, or where it comes from.
    pub(crate) fn place(&self, lift: &LiftPlan) -> String {
        self.say(self.place_id(lift))
    }
    #[expect(clippy::unused_self, reason = "a word of the drawing like the others")]
    pub(crate) fn place_id(&self, lift: &LiftPlan) -> evidence::TextId {
        match lift.task {
            planning::Task::SetDown => ui::LANDING,
            planning::Task::PickUp => ui::PICK_UP,
        }
    }
    pub(crate) fn verdict(&self, verdict: evidence::Verdict) -> String {
        self.wording.verdict(verdict)
    }
    /// Name of a check by the id of its findings.
    pub(crate) fn check(&self, check: &str) -> String {
        self.wording.check(check)
    }
    pub(crate) fn reserve(&self, reserve: f64) -> String {
        self.wording.reserve(reserve)
    }
    /// Another stand: where, and what it gives.
    pub(crate) fn other_stand(&self, stand: &planning::FoundStand) -> String {
        let at = ui::FIELD_OTHER
            .with("east", length(stand.east_m))
            .with("north", length(stand.north_m))
            .with("heading", quantity::degrees(stand.heading_deg))
            .with("verdict", self.verdict(stand.verdict));
        self.say(at)
    }
    /// Machine, attachment, support in one line.
    pub(crate) fn machine(&self, lift: &LiftPlan) -> String {
        [lift.machine.clone(), lift.attachment.clone(), self.support(lift.support)]
            .into_iter()
            .filter(|s| !s.trim().is_empty())
            .collect::<Vec<_>>()
            .join(" · ")
    }
    /// "Name: text".
    pub(crate) fn pair(&self, name: impl Into<Message>, value: &str) -> String {
        format!("{}: {value}", self.say(name))
    }
}

/// Metres as a quantity.
pub(crate) fn length(metres: f64) -> Quantity {
    Quantity::new(metres, Dimension::Length)
}
/// Square metres as a quantity.
pub(crate) fn area(square_metres: f64) -> Quantity {
    Quantity::new(square_metres, Dimension::Area)
}
/// Kilograms as a quantity.
pub(crate) fn mass(kg: f64) -> Quantity {
    Quantity::new(kg, Dimension::Mass)
}
