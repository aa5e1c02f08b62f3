//! Every text for people, rendered from ids in English and Spanish. Pure: the catalogues are compiled in.
//!
//! - [`Wording`]: one reader's language and units; renders messages, quantities, faults, verdicts, sources
//! - [`Language`]: the languages there are
//! - [`ui`]: ids of the words that documents, drawings and screens use around the findings
//! - [`entry`]: ids of what is wrong with a typed quantity
//!
//! The words stand in `catalogues/en.ftl` and `catalogues/es.ftl` (Fluent). A test proves that every id that any
//! room declares has its text in both, with the declared arguments and no others.
//!
//! ```
//! use evidence::Verdict;
//! use quantity::{Quantity, UnitSystem, kilograms};
//! use wording::{Language, Wording};
//! let english = Wording::new(Language::English, UnitSystem::Si);
//! assert_eq!(english.verdict(Verdict::GoWithConditions), "GO WITH CONDITIONS");
//! assert_eq!(english.quantity(kilograms(1850.0)), "1,850\u{a0}kg");
//! let spanish = Wording::new(Language::Spanish, UnitSystem::Si);
//! assert_eq!(spanish.quantity(Quantity::ratio(0.025)), "2,5\u{a0}%");
//! ```

mod catalogue;
pub mod entry;
mod fault;
mod language;
mod number;
mod render;
pub mod ui;
mod words;

pub use entry::explain;
pub use fault::RenderedFault;
pub use language::{Language, UnknownLanguage};
pub use render::Wording;

#[cfg(test)]
mod tests;
