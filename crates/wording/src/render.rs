//! One reader's words.

use crate::{Language, catalogue, number, ui};
use evidence::{Arg, Message, TextId};
use fluent_bundle::{FluentArgs, FluentError, FluentValue};
use quantity::{Quantity, UnitSystem};

/// Texts in one language and one unit system. Cheap to make and to copy: the catalogues are read once a process.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Wording {
    language: Language,
    units: UnitSystem,
}

/// Messages within messages deeper than this are no texts of ours.
const DEEPEST: usize = 40;

impl Wording {
    /// Words for a reader of `language` who thinks in `units`.
    pub fn new(language: Language, units: UnitSystem) -> Self {
        Self { language, units }
    }
    /// The language.
    pub fn language(self) -> Language {
        self.language
    }
    /// The units.
    pub fn units(self) -> UnitSystem {
        self.units
    }

    /// The words of a message. What is missing stays visible: an id without text renders as `⟨id⟩`, an argument
    /// that was not given as `⟨name⟩`.
    pub fn render(self, message: &Message) -> String {
        self.render_within(message, DEEPEST)
    }

    /// The words of an id without arguments.
    pub fn text(self, id: TextId) -> String {
        self.render(&id.message())
    }

    /// A quantity in the reader's unit, digits and marks: `1,850 kg`, `12,5 kN`. Where it is not a finite number,
    /// the words for "not known".
    pub fn quantity(self, quantity: impl Into<Quantity>) -> String {
        let quantity = quantity.into();
        self.beside(quantity, quantity.si)
    }

    /// A quantity in the steps of a working: five significant digits, so that the next step can be repeated by hand.
    pub fn worked(self, quantity: impl Into<Quantity>) -> String {
        number::worked(quantity.into(), self.units, self.language).unwrap_or_else(|| self.text(ui::NOT_KNOWN))
    }

    /// Quantities that stand side by side, each as [`Wording::quantity`] but all of a dimension in one unit:
    /// `0.03 ft` beside `4.32 ft` and not `0.3 in`. The values of one message are rendered so too.
    pub fn alike(self, quantities: &[Quantity]) -> Vec<String> {
        let beside = |q: &Quantity| self.beside(*q, number::largest(quantities.iter().copied(), q.dimension));
        quantities.iter().map(beside).collect()
    }

    fn beside(self, quantity: Quantity, largest: f64) -> String {
        let text = number::quantity(quantity, largest, self.units, self.language);
        text.unwrap_or_else(|| self.text(ui::NOT_KNOWN))
    }

    /// Every id with a text in `language`, in the order of the catalogue.
    pub fn ids(language: Language) -> Vec<String> {
        catalogue::ids(language)
    }

    /// The arguments that the text of `id` uses in `language`, sorted. Without `$system` ("si" or "us"), which every
    /// text may use to state a figure of its own in the reader's units.
    pub fn variables(language: Language, id: &str) -> Vec<String> {
        catalogue::variables(language, id)
    }

    /// What cannot be read in the catalogue of `language`, and ids that stand twice there. Empty, or a test fails.
    pub fn problems(language: Language) -> Vec<String> {
        catalogue::problems(language)
    }

    fn render_within(self, message: &Message, deeper: usize) -> String {
        let bundle = catalogue::bundle(self.language, self.units);
        let Some(pattern) = bundle.get_message(&message.id).and_then(|m| m.value()) else {
            return format!("⟨{}⟩", message.id);
        };
        if deeper == 0 {
            return format!("⟨{}⟩", message.id);
        }
        let mut args = FluentArgs::with_capacity(message.args.len() + 1);
        args.set(catalogue::SYSTEM, if self.units == UnitSystem::Us { "us" } else { "si" });
        for (name, arg) in &message.args {
            args.set(name.as_ref(), self.argument(arg, message, deeper));
        }
        let mut errors: Vec<FluentError> = Vec::new();
        let text = bundle.format_pattern(pattern, Some(&args), &mut errors).into_owned();
        if errors.is_empty() {
            return text;
        }
        for name in catalogue::variables(self.language, &message.id) {
            if message.arg(&name).is_none() {
                let shown = format!("⟨{name}⟩");
                args.set(name, shown);
            }
        }
        errors.clear();
        let text = bundle.format_pattern(pattern, Some(&args), &mut errors).into_owned();
        if errors.is_empty() { text } else { format!("⟨{}⟩ {text}", message.id) }
    }

    fn argument(self, arg: &Arg, of: &Message, deeper: usize) -> FluentValue<'static> {
        match arg {
            Arg::Text(text) => text.clone().into(),
            Arg::Quantity(quantity) => {
                let all = of.args.iter().filter_map(|(_, a)| if let Arg::Quantity(q) = a { Some(*q) } else { None });
                self.beside(*quantity, number::largest(all, quantity.dimension)).into()
            }
            Arg::Count(n) => FluentValue::from(*n),
            Arg::Message(message) => self.render_within(message, deeper - 1).into(),
        }
    }
}
