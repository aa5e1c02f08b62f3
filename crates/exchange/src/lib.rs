//! A site or a plan as files that general tools open. Pure. Metres.
//!
//! - [`export`], [`export_plan`]: a [`Site`], or a [`Plan`] on the site of its [`Job`], as bytes in a [`Format`],
//!   or every fault at once
//! - [`site_geojson`], [`site_dxf`], [`site_gltf`], [`plan_geojson`], [`plan_dxf`], [`plan_gltf`]: the same by name
//! - [`About`]: what the file says of itself: language, invented or not, whose data
//! - [`ground_mesh`]: a ground surface as triangles
//! - [`text`]: the ids of every sentence said here
//!
//! What is not known is never written as a number: in properties it is `null`, in a drawing or model, which cannot leave
//! a height out, it is drawn to a stated height ([`DRAWN_HEIGHT`]) and its name ends in the words for "not known".

mod about;
mod checks;
mod collect_below;
mod collect_lines;
mod collect_plan;
mod collect_site;
mod collect_things;
mod collect_zones;
mod dxf;
mod geojson;
mod gltf;
mod ground_mesh;
mod item;
mod layer;
mod ring;
mod scene;
mod solids;
pub mod text;
mod triangulate;

pub use about::{About, DRAWN_HEIGHT, Format};
pub use ground_mesh::{Mesh, ground_mesh};

use evidence::{Faults, Place};
use planning::{Job, Plan};
use scene::{Scene, View};
use site::Site;

/// Most faces of ground, and most columns, in a drawing: more than that many no CAD program handles well (ours).
pub const MOST_FACES: usize = 500_000;

/// Most triangles of ground in a model (ours).
pub const MOST_TRIANGLES: usize = 2_000_000;

/// Most columns of surveyed things in a model: each is twelve triangles (ours).
pub const MOST_COLUMNS: usize = 250_000;

/// A site as bytes in a format.
///
/// # Errors
/// Every fault at once: coordinates or sizes that are no numbers (`exchange::not-finite`), shapes without extent
/// (`exchange::no-extent`), columns that do not agree with their rows (`exchange::columns-wrong`), more pieces than
/// the format bears and that cannot be thinned (`exchange::too-much`).
pub fn export(site: &Site, format: Format, about: &About) -> Result<Vec<u8>, Faults> {
    let view = View::from(site);
    no_error(checks::faults(&view))?;
    written(&collect_site::collect(&view, about), format, about)
}

/// A plan on the site of its job as bytes in a format. The plan must be the job's own, with its lifts in the same order.
///
/// # Errors
/// As [`export`], and `exchange::not-its-plan` where job and plan have different numbers of lifts.
pub fn export_plan(job: &Job, plan: &Plan, format: Format, about: &About) -> Result<Vec<u8>, Faults> {
    let mut faults = checks::faults(&collect_plan::site_of(job));
    if job.lifts.len() != plan.lifts.len() {
        let message = text::NOT_ITS_PLAN.with("plan", plan.lifts.len()).with("job", job.lifts.len());
        faults.error("exchange::not-its-plan", Place::default(), message, None);
    }
    no_error(faults)?;
    written(&collect_plan::collect(job, plan, about), format, about)
}

/// [`export`] as GeoJSON.
pub fn site_geojson(site: &Site, about: &About) -> Result<Vec<u8>, Faults> {
    export(site, Format::GeoJson, about)
}
/// [`export`] as DXF.
pub fn site_dxf(site: &Site, about: &About) -> Result<Vec<u8>, Faults> {
    export(site, Format::Dxf, about)
}
/// [`export`] as binary glTF.
pub fn site_gltf(site: &Site, about: &About) -> Result<Vec<u8>, Faults> {
    export(site, Format::Gltf, about)
}
/// [`export_plan`] as GeoJSON.
pub fn plan_geojson(job: &Job, plan: &Plan, about: &About) -> Result<Vec<u8>, Faults> {
    export_plan(job, plan, Format::GeoJson, about)
}
/// [`export_plan`] as DXF.
pub fn plan_dxf(job: &Job, plan: &Plan, about: &About) -> Result<Vec<u8>, Faults> {
    export_plan(job, plan, Format::Dxf, about)
}
/// [`export_plan`] as binary glTF.
pub fn plan_gltf(job: &Job, plan: &Plan, about: &About) -> Result<Vec<u8>, Faults> {
    export_plan(job, plan, Format::Gltf, about)
}

fn no_error(faults: Faults) -> Result<(), Faults> {
    if faults.any_error() { Err(faults) } else { Ok(()) }
}

fn written(scene: &Scene<'_>, format: Format, about: &About) -> Result<Vec<u8>, Faults> {
    match format {
        Format::GeoJson => Ok(geojson::write(scene, about)),
        Format::Dxf => dxf::write(scene, about),
        Format::Gltf => gltf::write(scene, about),
    }
}
