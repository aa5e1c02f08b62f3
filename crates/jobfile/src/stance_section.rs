//! How a machine stands in a lift: frame levelled, rear axle locked, front tyres on the ground.

use crate::axle_section::lock_word;
use crate::table::Reader;
use crate::text;
use machine::{Lock, Machine, SupportState};
use planning::FrontTyres;

const FRONT_TYRES: [(&str, FrontTyres); 2] = [("clear", FrontTyres::Clear), ("touching", FrontTyres::Touching)];

/// What could be read; what could not is a fault that was said.
pub(crate) struct Stance {
    pub(crate) levelled: bool,
    pub(crate) axle_locked: bool,
    pub(crate) front_tyres: Option<FrontTyres>,
}

/// `support`, `machine`: those of the lift, where they could be read.
pub(crate) fn stance(t: &Reader<'_>, support: Option<SupportState>, machine: Option<&Machine>) -> Stance {
    let levelled = t.yes_no("levelled") == Some(true);
    let axle_locked = t.yes_no("axle_locked") == Some(true);
    let front_tyres = t.optional("front_tyres").and_then(|node| t.as_choice(node, "front_tyres", &FRONT_TYRES));
    if levelled {
        can_level(t, support, machine);
    }
    if axle_locked && let Some(machine) = machine.filter(|m| m.rear.lock != Lock::Operator) {
        let message =
            text::AXLE_NOT_OPERATORS.with("machine", &machine.name).with("lock", lock_word(machine.rear.lock));
        t.fault("axle_locked", message, Some(text::HINT_AXLE_NOT_OPERATORS.message()));
    }
    if t.has("front_tyres") && support.is_some_and(|s| s != SupportState::Stabilizers) {
        let hint = text::HINT_FRONT_TYRES.message();
        t.fault("front_tyres", text::FRONT_TYRES_MISPLACED, Some(hint));
    }
    Stance { levelled, axle_locked, front_tyres }
}

/// Levelling rolls the frame on the front axle: it needs the machine's own levelling, and its tyres down.
fn can_level(t: &Reader<'_>, support: Option<SupportState>, machine: Option<&Machine>) {
    if let Some(pads) = support.filter(|s| *s != SupportState::Tyres) {
        let message = text::LEVELLED_ON_PADS.with("support", planning::support_name(pads));
        t.fault("levelled", message, Some(text::HINT_LEVELLED_ON_PADS.message()));
    } else if let Some(machine) = machine.filter(|m| m.levelling.is_none()) {
        let message = text::NO_LEVELLING.with("machine", &machine.name);
        t.fault("levelled", message, Some(text::HINT_NO_LEVELLING.message()));
    }
}
