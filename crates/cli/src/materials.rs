//! `counterpoise materials`: what loads may be built from, with densities and where they come from.

use crate::args::MaterialsArgs;
use crate::failure::Failure;
use crate::machine::text;
use crate::{Outcome, Run, terminal};
use evidence::Source;
use machine::{Material, materials};
use quantity::{Dimension, Quantity};
use serde::{Deserialize, Serialize};
use wording::Wording;

/// A material of the lists. SI.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct MaterialSaid {
    /// Its id in job files.
    pub(crate) id: String,
    /// Its name.
    pub(crate) name: String,
    /// Lowest density, kg/m³.
    pub(crate) low_kg_per_m3: f64,
    /// Highest density, kg/m³.
    pub(crate) high_kg_per_m3: f64,
    /// Where the densities come from.
    pub(crate) source: Source,
    /// What to know before using it for a pack.
    pub(crate) note: Option<String>,
}

pub(crate) fn run(args: &MaterialsArgs) -> Run {
    let (said, w) = (args.said, args.said.wording());
    let words: Vec<String> = args.words.iter().map(|word| word.to_lowercase()).collect();
    let all = materials().iter().map(|m| MaterialSaid::new(m, w));
    let found: Vec<MaterialSaid> = all.filter(|m| words.iter().all(|word| m.has(word))).collect();
    if found.is_empty() {
        let message = text::MATERIALS_NONE.with("words", args.words.join(" "));
        let hint = Some(text::MATERIALS_HINT.message());
        return Err(Failure::one(said, "cli::no-material", "", message, hint));
    }
    if said.json() {
        terminal::print_json(&found);
    } else {
        print(&found, w);
    }
    Ok(Outcome::Done)
}

impl MaterialSaid {
    fn new(material: &Material, w: Wording) -> Self {
        Self {
            id: material.id.to_owned(),
            name: w.text(material.name),
            low_kg_per_m3: material.low,
            high_kg_per_m3: material.high,
            source: material.source(),
            note: material.note().map(|id| w.text(id)),
        }
    }

    fn has(&self, word: &str) -> bool {
        self.id.contains(word) || self.name.to_lowercase().contains(word)
    }

    fn density(&self, w: Wording) -> String {
        let q = |si| Quantity::new(si, Dimension::Density);
        if self.low_kg_per_m3 == self.high_kg_per_m3 {
            return w.quantity(q(self.low_kg_per_m3));
        }
        w.render(&text::MATERIALS_FROM_TO.with("low", q(self.low_kg_per_m3)).with("high", q(self.high_kg_per_m3)))
    }
}

/// By the list they stand in; the note once, under the last of those that share it.
fn print(found: &[MaterialSaid], w: Wording) {
    let mut at = 0;
    while let Some(first) = found.get(at) {
        let of = found[at..].iter().take_while(|m| m.source == first.source).count();
        if at > 0 {
            terminal::line("");
        }
        terminal::paragraph(&w.source(&first.source), "", "");
        for material in &found[at..at + of] {
            terminal::line(&format!("  {}", material.id));
            terminal::paragraph(&format!("{}: {}", material.name, material.density(w)), "      ", "      ");
            if let Some(note) = &material.note {
                terminal::paragraph(note, "      ", "      ");
            }
        }
        at += of;
    }
    terminal::line("");
    terminal::paragraph(&w.text(text::MATERIALS_BETTER), "", "");
}
