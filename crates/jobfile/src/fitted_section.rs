//! How a machine of a job stands there today: axle lock tried, tyres flat or measured, bodies taken off
//! or added.

use crate::body_section::{self, needed};
use crate::node::{Node, Value};
use crate::quantity_value::Bound::ZeroTo;
use crate::table::Reader;
use crate::{placeholder, text};
use machine::{Body, BodyKind, Lock, Machine};
use quantity::{Dimension as D, Pressure, pascals};

/// The wheels by their words, in the order of contacts.
const WHEELS: [(&str, usize); 4] = [("front-left", 0), ("front-right", 1), ("rear-left", 2), ("rear-right", 3)];

/// What could be read; what could not is a fault that was said.
pub(crate) struct Fitted {
    pub(crate) lock_tried: Option<String>,
    pub(crate) flat: [bool; 4],
    pub(crate) pressures: [Option<Pressure>; 4],
    pub(crate) without: Vec<String>,
    pub(crate) added: Vec<Body>,
}

/// `machine`: its description, where that could be read.
pub(crate) fn fitted(t: &Reader<'_>, machine: Option<&Machine>) -> Fitted {
    let lock_tried = lock_tried(t, machine);
    let flat = flat(t);
    let pressures = pressures(t);
    let without = without(t, machine);
    let tables = t.tables("added");
    let read: Vec<Option<Body>> = tables.iter().map(body_section::added).collect();
    let whole = read.iter().all(Option::is_some);
    for (table, body) in tables.iter().zip(&read) {
        let upper = body.as_ref().is_some_and(|b| b.kind == BodyKind::Upper);
        if upper && machine.is_some_and(|m| m.slew.is_none()) {
            let hint = text::HINT_EXAMPLE.with("example", "part = \"frame\"");
            table.fault("part", text::UPPER_WITHOUT_SLEW, Some(hint));
        }
    }
    let added: Vec<Body> = read.into_iter().flatten().collect();
    if let Some(machine) = machine.filter(|_| whole) {
        all_parts(t, machine, &without, &added);
    }
    Fitted { lock_tried, flat, pressures, without, added }
}

/// `axle_lock_tried`: who tried the rear axle's lock and found that it holds.
fn lock_tried(t: &Reader<'_>, machine: Option<&Machine>) -> Option<String> {
    let (by, nobody) = t.not_given_while_open(|t| t.text_or_none("axle_lock_tried"));
    if by.is_some()
        && let Some(machine) =
            machine.filter(|m| m.rear.lock == Lock::Never && m.stabilizers.as_ref().is_none_or(|s| s.rear_axle_free))
    {
        let message = text::AXLE_NEVER_LOCKS.with("machine", &machine.name);
        t.fault("axle_lock_tried", message, Some(text::HINT_AXLE_NEVER_LOCKS.message()));
    }
    by.filter(|_| !nobody)
}

/// The words of a list that are written, each once: what is still to be filled in is said and left out.
fn written<'d>(t: &Reader<'d>, key: &str) -> Vec<&'d Node> {
    let Some(node) = t.optional(key) else { return Vec::new() };
    let Some(items) = t.as_list(node, key) else { return Vec::new() };
    let mut met: Vec<&str> = Vec::new();
    let mut out = Vec::new();
    for item in items {
        if let Value::Text(word) = &item.value {
            if placeholder::is_open(word) {
                t.left_open(item, key);
                continue;
            }
            if met.contains(&word.as_str()) {
                let message = text::LISTED_TWICE.with("key", key).with("word", word);
                t.fault_at(item, key, message, Some(text::HINT_LISTED_TWICE.message()));
                continue;
            }
            met.push(word);
        }
        out.push(item);
    }
    out
}

/// `flat`: tyres found flat. Left out: none.
fn flat(t: &Reader<'_>) -> [bool; 4] {
    let mut flat = [false; 4];
    for item in written(t, "flat") {
        if let Some(wheel) = t.as_choice(item, "flat", &WHEELS) {
            flat[wheel] = true;
        }
    }
    flat
}

/// `measured_pressures`: what a gauge said today, by wheel. Measured is what the key says of its values.
fn pressures(t: &Reader<'_>) -> [Option<Pressure>; 4] {
    let mut pressures = [None; 4];
    let Some(p) = t.table_or_none("measured_pressures") else { return pressures };
    p.measured();
    for (word, wheel) in WHEELS {
        let Some(fact) = p.fact_or_none(word, D::Pressure, ZeroTo(5e6)) else { continue };
        if fact.si > 0.0 {
            pressures[wheel] = Some(pascals(fact.si));
        } else {
            let hint = text::HINT_EXAMPLE.with("example", format!("flat = [\"{word}\"]"));
            p.fault(word, text::NO_AIR.with("wheel", word), Some(hint));
        }
    }
    p.done();
    pressures
}

/// `without`: names of bodies of the description that are not on the machine today.
fn without(t: &Reader<'_>, machine: Option<&Machine>) -> Vec<String> {
    let mut names = Vec::new();
    for item in written(t, "without") {
        let Some(name) = t.as_text(item, "without") else { continue };
        let Some(machine) = machine else { continue };
        match machine.bodies.iter().filter(|b| b.name == name).count() {
            0 => {
                let known: Vec<String> = machine.bodies.iter().map(|b| format!("\"{}\"", b.name)).collect();
                let message = text::NO_BODY_OF_THAT_NAME.with("name", name).with("machine", &machine.name);
                t.fault_at(item, "without", message, Some(text::HINT_KNOWN.with("known", known.join(", "))));
            }
            1 => names.push(name.to_owned()),
            count => {
                let message = text::BODIES_OF_ONE_NAME.with("name", name).with("count", count);
                t.fault_at(item, "without", message, Some(text::HINT_BODIES_OF_ONE_NAME.message()));
            }
        }
    }
    names
}

/// What is taken off leaves, with what is added, every part that a machine has.
fn all_parts(t: &Reader<'_>, machine: &Machine, without: &[String], added: &[Body]) {
    if without.is_empty() {
        return;
    }
    let upper = machine.slew.map(|_| ("upper", BodyKind::Upper));
    for (word, kind) in needed().chain(upper) {
        let stays = |b: &&Body| !without.contains(&b.name);
        if !machine.bodies.iter().filter(stays).chain(added).any(|b| b.kind == kind) {
            t.fault("without", text::NO_BODY_LEFT.with("kind", word), Some(text::HINT_NO_BODY_LEFT.message()));
        }
    }
}
