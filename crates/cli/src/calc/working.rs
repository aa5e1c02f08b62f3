//! The working of a calculation, printed step by step.

use crate::args::Said;
use crate::terminal;
use evidence::{Message, Working};
use quantity::Quantity;

/// Prints steps under a heading; `of`: what they are of, where there is more than one thing.
pub(super) fn print(working: &Working, of: Option<&Message>, said: Said) {
    if working.steps.is_empty() {
        return;
    }
    let w = said.wording();
    let heading = w.text(wording::ui::WORKING);
    terminal::line("");
    match of {
        Some(of) => terminal::paragraph(&format!("{heading}: {}", w.render(of)), "", "  "),
        None => terminal::paragraph(&heading, "", "  "),
    }
    // No break between a symbol and its value.
    let equal = |name: &str, q: Quantity| format!("{name} = {}", w.worked(q)).replace(' ', "\u{a0}");
    for step in &working.steps {
        terminal::paragraph(&w.render(&step.title), "  ", "    ");
        terminal::paragraph(&step.formula, "    ", "      ");
        if !step.values.is_empty() {
            let values: Vec<_> = step.values.iter().map(|(name, q)| equal(name, *q)).collect();
            terminal::paragraph(&values.join(", "), "    ", "      ");
        }
        let (symbol, value) = &step.result;
        let result = format!("{} ({})", equal(symbol, *value), w.source(&step.source));
        terminal::paragraph(&result, "    ", "      ");
    }
}
