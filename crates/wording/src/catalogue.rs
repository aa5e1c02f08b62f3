//! The compiled-in catalogues, read once.

use crate::{Language, number};
use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentResource, FluentValue};
use fluent_syntax::ast;
use quantity::UnitSystem;
use std::borrow::Cow;
use std::collections::BTreeSet;
use std::sync::OnceLock;
use unic_langid::{LanguageIdentifier, langid};

/// The argument that every text has without asking: "si" or "us".
pub(crate) const SYSTEM: &str = "system";

pub(crate) type Bundle = FluentBundle<FluentResource>;

/// The text of a catalogue.
pub(crate) fn text(language: Language) -> &'static str {
    match language {
        Language::English => include_str!("../catalogues/en.ftl"),
        Language::Spanish => include_str!("../catalogues/es.ftl"),
    }
}

/// The catalogue ready to render. Entries that cannot be read are left out (and shown as `⟨id⟩`);
/// [`problems`] names them.
pub(crate) fn bundle(language: Language, units: UnitSystem) -> &'static Bundle {
    static BUNDLES: [OnceLock<Bundle>; 3] = [const { OnceLock::new() }; 3];
    match (language, units) {
        (Language::English, UnitSystem::Si) => BUNDLES[0].get_or_init(|| build(language, langid!("en"))),
        (Language::English, UnitSystem::Us) => BUNDLES[1].get_or_init(|| {
            let mut bundle = build(language, langid!("en-US"));
            bundle.set_transform(Some(american_spelling));
            bundle
        }),
        (Language::Spanish, _) => BUNDLES[2].get_or_init(|| build(language, langid!("es"))),
    }
}

fn build(language: Language, id: LanguageIdentifier) -> Bundle {
    let mut bundle = Bundle::new_concurrent(vec![id]);
    bundle.set_use_isolating(false);
    bundle.set_formatter(Some(match language {
        Language::English => |value, _| count(value, Language::English),
        Language::Spanish => |value, _| count(value, Language::Spanish),
    }));
    // A doubled id keeps its first text; `problems` reports both kinds of error.
    let _ = bundle.add_resource(resource(language).0);
    bundle
}

/// The catalogue's own words as readers of US units spell them. Arguments, which are the user's words, stay.
fn american_spelling(text: &str) -> Cow<'_, str> {
    const SPELLINGS: [(&str, &str); 8] = [
        ("tyre", "tire"),
        ("Tyre", "Tire"),
        ("centre", "center"),
        ("Centre", "Center"),
        ("metre", "meter"),
        ("colour", "color"),
        ("evelling", "eveling"),
        ("grey", "gray"),
    ];
    SPELLINGS
        .iter()
        .filter(|(from, _)| text.contains(from))
        .fold(Cow::Borrowed(text), |text, (from, to)| Cow::Owned(text.replace(from, to)))
}

fn count(value: &FluentValue, language: Language) -> Option<String> {
    match value {
        FluentValue::Number(n) => Some(number::localise(&format!("{:.0}", n.value), language)),
        _ => None,
    }
}

fn resource(language: Language) -> (FluentResource, Vec<String>) {
    match FluentResource::try_new(text(language).to_owned()) {
        Ok(resource) => (resource, Vec::new()),
        Err((resource, errors)) => (resource, errors.iter().map(ToString::to_string).collect()),
    }
}

/// What cannot be read in a catalogue, and ids that stand twice.
pub(crate) fn problems(language: Language) -> Vec<String> {
    let (resource, mut problems) = resource(language);
    let mut seen = BTreeSet::new();
    for message in messages(&resource) {
        if !seen.insert(message.id.name) {
            problems.push(format!("{} stands twice", message.id.name));
        }
    }
    problems
}

fn messages(resource: &FluentResource) -> impl Iterator<Item = &ast::Message<&str>> {
    resource.entries().filter_map(|entry| match entry {
        ast::Entry::Message(message) => Some(message),
        _ => None,
    })
}

/// Every id of a catalogue, in its order.
pub(crate) fn ids(language: Language) -> Vec<String> {
    messages(&resource(language).0).map(|m| m.id.name.to_owned()).collect()
}

/// The arguments that the text of `id` uses, sorted; empty where there is no such text.
pub(crate) fn variables(language: Language, id: &str) -> Vec<String> {
    let mut found = BTreeSet::new();
    if let Some(pattern) = bundle(language, UnitSystem::Si).get_message(id).and_then(|m| m.value()) {
        in_pattern(pattern, &mut found);
    }
    found.remove(SYSTEM);
    found.into_iter().collect()
}

fn in_pattern(pattern: &ast::Pattern<&str>, found: &mut BTreeSet<String>) {
    for element in &pattern.elements {
        if let ast::PatternElement::Placeable { expression } = element {
            in_expression(expression, found);
        }
    }
}

fn in_expression(expression: &ast::Expression<&str>, found: &mut BTreeSet<String>) {
    match expression {
        ast::Expression::Inline(inline) => in_inline(inline, found),
        ast::Expression::Select { selector, variants } => {
            in_inline(selector, found);
            for variant in variants {
                in_pattern(&variant.value, found);
            }
        }
    }
}

fn in_inline(inline: &ast::InlineExpression<&str>, found: &mut BTreeSet<String>) {
    match inline {
        ast::InlineExpression::VariableReference { id } => {
            found.insert(id.name.to_owned());
        }
        ast::InlineExpression::Placeable { expression } => in_expression(expression, found),
        // The catalogues use no functions, terms or references to other messages; a test holds that.
        _ => {}
    }
}
