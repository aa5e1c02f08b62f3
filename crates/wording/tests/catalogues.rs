//! Every id that any room declares has its text in every language, with the declared arguments and no others;
//! and the catalogues hold nothing else.

#![allow(clippy::unwrap_used, clippy::expect_used, reason = "tests")]

use evidence::{Message, TextId};
use quantity::UnitSystem;
use std::collections::{BTreeMap, BTreeSet};
use wording::{Language, Wording};

#[path = "../../cli/src/calc/ground_text.rs"]
mod cli_calc_ground_text;
#[path = "../../cli/src/calc/soil_text.rs"]
mod cli_calc_soil_text;
#[path = "../../cli/src/calc/text.rs"]
mod cli_calc_text;
#[path = "../../cli/src/machine/text.rs"]
mod cli_machine_text;
#[path = "../../cli/src/order/text.rs"]
mod cli_order_text;
#[path = "../../cli/src/stands/text.rs"]
mod cli_stands_text;
#[path = "../../cli/src/survey/text.rs"]
mod cli_survey_text;
/// The command line is a program, not a library that a test could name; its ids stand in a file of their own.
#[path = "../../cli/src/text.rs"]
mod cli_text;

/// Every room with texts, and its ids.
const ROOMS: [(&str, &[TextId]); 20] = [
    ("wording::ui", wording::ui::ALL),
    ("wording::entry", wording::entry::ALL),
    ("machine", machine::text::ALL),
    ("machine::material_names", machine::material_names::ALL),
    ("stability", stability::text::ALL),
    ("ground", ground::text::ALL),
    ("ground edges", ground::edge_text::ALL),
    ("planning", planning::text::ALL),
    ("survey", survey::text::ALL),
    ("jobfile", jobfile::text::ALL),
    ("exchange", exchange::text::ALL),
    ("jobfile keys", jobfile::schema_words::ALL),
    ("cli", cli_text::ALL),
    ("cli machine", cli_machine_text::ALL),
    ("cli calc", cli_calc_text::ALL),
    ("cli calc soil", cli_calc_soil_text::ALL),
    ("cli calc ground", cli_calc_ground_text::ALL),
    ("cli survey", cli_survey_text::ALL),
    ("cli order", cli_order_text::ALL),
    ("cli stands", cli_stands_text::ALL),
];

fn declared() -> impl Iterator<Item = (&'static str, TextId)> {
    ROOMS.into_iter().flat_map(|(room, ids)| ids.iter().map(move |id| (room, *id)))
}

/// A message with a mark for each argument, and the marks.
fn sample(id: TextId) -> (Message, Vec<String>) {
    let marks: Vec<String> = (0..id.args.len()).map(|i| format!("MARK{i}")).collect();
    let message = id.args.iter().zip(&marks).fold(id.message(), |m, (name, mark)| m.with(name, mark));
    (message, marks)
}

fn fail_on(problems: &[String]) {
    assert!(problems.is_empty(), "{} problems:\n{}", problems.len(), problems.join("\n"));
}

#[test]
fn catalogues_can_be_read_whole() {
    for language in Language::ALL {
        fail_on(&Wording::problems(language));
    }
}

#[test]
fn every_declared_id_has_its_text_in_every_language() {
    let mut problems = Vec::new();
    for language in Language::ALL {
        let present: BTreeSet<String> = Wording::ids(language).into_iter().collect();
        for (room, id) in declared() {
            if !present.contains(id.id) {
                problems.push(format!("{language}: {room} declares {}, which has no text", id.id));
            }
        }
    }
    fail_on(&problems);
}

#[test]
fn every_text_belongs_to_a_declared_id() {
    let known: BTreeSet<&str> = declared().map(|(_, id)| id.id).collect();
    let mut problems = Vec::new();
    for language in Language::ALL {
        for id in Wording::ids(language) {
            if !known.contains(id.as_str()) {
                problems.push(format!("{language}: {id} is declared nowhere"));
            }
        }
    }
    fail_on(&problems);
}

#[test]
fn every_id_is_declared_once() {
    let mut rooms: BTreeMap<&str, Vec<&str>> = BTreeMap::new();
    for (room, id) in declared() {
        rooms.entry(id.id).or_default().push(room);
    }
    let twice: Vec<String> =
        rooms.iter().filter(|(_, r)| r.len() > 1).map(|(id, r)| format!("{id}: {}", r.join(", "))).collect();
    fail_on(&twice);
}

#[test]
fn texts_use_the_declared_arguments_and_no_others() {
    let mut problems = Vec::new();
    for language in Language::ALL {
        for (room, id) in declared() {
            let used = Wording::variables(language, id.id);
            let mut wanted: Vec<&str> = id.args.to_vec();
            wanted.sort_unstable();
            if used != wanted {
                problems.push(format!("{language}: {room} {}: text uses {used:?}, declared are {wanted:?}", id.id));
            }
        }
    }
    fail_on(&problems);
}

#[test]
fn every_text_renders_with_its_arguments_in_it() {
    let mut problems = Vec::new();
    for language in Language::ALL {
        let wording = Wording::new(language, UnitSystem::Si);
        for (_, id) in declared() {
            let (message, marks) = sample(id);
            let text = wording.render(&message);
            if text.trim().is_empty() || text.contains(['⟨', '{', '}']) {
                problems.push(format!("{language}: {}: {text:?}", id.id));
            }
            for mark in marks.iter().filter(|m| !text.contains(m.as_str())) {
                problems.push(format!("{language}: {}: {mark} is not in {text:?}", id.id));
            }
        }
    }
    fail_on(&problems);
}

/// Texts that are rightly the same in both languages: add yours if it is.
const SAME_IN_BOTH: &[&str] = &[
    "ui-field-area",
    "cli-order-left-out-lift",
    "cli-stands-area",
    "ui-source-published",
    "ui-source-input",
    "ui-place-file",
    "ui-severity-error",
    "ui-no",
    "ui-zone-capacity",
    "ui-made-by",
    "ui-engine-version",
    "ui-paper-a4",
    "ui-heading-compass",
    "list-and-more",
    "tolerance-of-mass",
    "tolerance-plain",
    "tolerance-way",
    "tolerance-no-way",
    "tolerance-nothing",
];

/// "EE. UU." ends in a point that ends no sentence.
fn ends_a_sentence(text: &str) -> bool {
    text.ends_with('.') && !text.ends_with("EE. UU.")
}

#[test]
fn spanish_is_translated_and_keeps_its_own_marks() {
    let (english, spanish) =
        (Wording::new(Language::English, UnitSystem::Si), Wording::new(Language::Spanish, UnitSystem::Si));
    let mut problems = Vec::new();
    for (_, id) in declared() {
        let message = sample(id).0;
        let (en, es) = (english.render(&message), spanish.render(&message));
        if en == es && !SAME_IN_BOTH.contains(&id.id) {
            problems.push(format!("{}: not translated: {es:?}", id.id));
        }
        if es.contains(['“', '”']) || en.contains(['«', '»', '¿', '¡']) {
            problems.push(format!("{}: quotation marks of the other language: {en:?}, {es:?}", id.id));
        }
        let decimal = |text: &str, mark: char| {
            let chars: Vec<char> = text.chars().collect();
            chars.windows(3).any(|w| w[0].is_ascii_digit() && w[1] == mark && w[2].is_ascii_digit())
        };
        if decimal(&es, '.') {
            problems.push(format!("{}: decimal point in Spanish: {es:?}", id.id));
        }
        for text in [&en, &es] {
            if text.contains("  ") || *text != text.trim() {
                problems.push(format!("{}: stray spaces: {text:?}", id.id));
            }
        }
        if ends_a_sentence(&en) != ends_a_sentence(&es) {
            problems.push(format!("{}: a full stop in one language only: {en:?}, {es:?}", id.id));
        }
    }
    fail_on(&problems);
}

/// Spanish words for things that have another name here already.
const OTHER_NAMES: [(&str, &str); 10] = [
    ("maniobra", "izado"),
    ("implemento", "accesorio"),
    ("punto de descarga", "lugar de descarga"),
    ("palé", "palet"),
    ("albarán", "nota de entrega"),
    ("racha", "ráfaga"),
    ("cabos", "cuerdas guía"),
    ("conduzca", "circule"),
    ("aguant", "soporta"),
    ("apriet", "transmite"),
];

#[test]
fn in_spanish_one_thing_has_one_name() {
    let mut problems = Vec::new();
    for line in include_str!("../catalogues/es.ftl").lines() {
        let line_in_small = line.to_lowercase();
        // At the start of a word: "contrachapado" is no "racha".
        let has = |other: &str| {
            line_in_small
                .match_indices(other)
                .any(|(at, _)| !line_in_small[..at].chars().next_back().is_some_and(char::is_alphabetic))
        };
        for (other, name) in OTHER_NAMES.iter().filter(|(other, _)| has(other)) {
            problems.push(format!("{other:?} is called {name:?} here: {line}"));
        }
    }
    fail_on(&problems);
}

#[test]
fn catalogues_use_plain_arguments_only() {
    // No functions, terms or references, so that `Wording::variables` sees every argument.
    for text in [include_str!("../catalogues/en.ftl"), include_str!("../catalogues/es.ftl")] {
        for (at, _) in text.match_indices('{') {
            assert!(text[at..].starts_with("{ $"), "{:?}", text[at..].lines().next());
        }
    }
}
