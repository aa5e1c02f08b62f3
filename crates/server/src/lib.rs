//! HTTP service over one finished plan, and the embedded web client. Reads the plan, computes
//! nothing; loopback only, since there are no accounts yet.
//!
//! - [`run`]: serves a plan with its own runtime until asked to end; [`serve`]: inside a runtime
//! - [`router`]: every route, for tests and for embedding
//! - [`openapi`]: the OpenAPI 3.1 description that the client's types are generated from
//! - `/api/…`: JSON in the reader's language and units, drawings, plan sheet, text face
//! - `/`: the client, or the plain page where the client was not built; `/plain`: always the plain
//!   page, which works without scripts and on paper
//!
//! Errors are RFC 9457 problems. Absent on purpose: anything that writes, and any request to
//! another host.

mod api;
mod client;
mod drawings;
mod fonts;
mod formula;
mod guard;
mod html;
mod plain;
mod preference;
mod problem;
mod render;
mod router;
mod run;
mod sheet;
mod stand;
mod state;
mod wire;

pub use router::{openapi, router};
pub use run::{ServeError, ServeOptions, run, serve};
pub use state::Served;
