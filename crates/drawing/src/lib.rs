//! SVG drawings from a plan; one code for screen and paper. Pure: text out, nothing else.
//!
//! - [`elevation`]: side elevation of a lift, to scale and dimensioned
//! - [`chart`]: the load chart as we draw it, with the point read
//! - [`stand_field`]: the ground around a landing by what a stand there would give
//! - [`boom_strip`]: the boom's movement, one small picture a step
//! - [`way`]: a lift's way to its stand or back, from above and in profile
//! - [`machine_side`], [`machine_front`]: a machine with its dimensions
//! - [`machine_chart`]: a load chart without a lift
//! - [`chart_capacity_kg`]: what that chart gives at the point, for words beside it
//! - [`site_plan`], [`site_cut`]: a site from above, and a cut through it
//! - [`Style`], [`Theme`]: width, screen or paper, font
//!
//! Meaning is carried by words, hatching and line weight; colour only supports it. Every drawing is
//! one `<svg>` with a view box, a `<title>` and a `<desc>`, no script and nothing from outside.

mod boom_strip;
mod chart;
mod dimensions;
mod elevation;
mod hatch;
mod key;
mod labels;
mod marks;
mod site_cut;
mod site_plan;
mod stand_field;
mod style;
mod svg;
mod way;
mod words;

pub use boom_strip::boom_strip;
pub use chart::{chart, chart_capacity_kg, machine_chart};
pub use dimensions::{machine_front, machine_side};
pub use elevation::elevation;
pub use site_cut::site_cut;
pub use site_plan::{SiteStand, site_plan};
pub use stand_field::stand_field;
pub use style::{FONT_FAMILY, Style, Theme};
pub use way::{WayDirection, way};
