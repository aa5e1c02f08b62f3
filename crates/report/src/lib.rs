//! PDF plan sheet from a plan and its drawings, set by Typst with our own template and fonts.
//!
//! - [`Printer`], [`plan_sheet`]: a plan as PDF; a second document reuses what the first prepared
//! - [`PaperSize`]: A4 or US Letter
//! - [`font_files`]: the faces, so that a server can offer the same family to the web
//!
//! Same plan, same words, same paper: same bytes. No clock, no files, no network. Texts of users
//! reach the template as data, never as source.

mod acceptance;
mod breakable;
mod fonts;
mod inputs_view;
#[cfg(test)]
mod layout_tests;
mod lift_view;
mod printer;
mod sheet;
mod words;
mod working_view;
mod world;

pub use fonts::{FAMILY, FontFile, font_files};
pub use printer::{PaperSize, Printed, Printer, ReportError, plan_sheet};
