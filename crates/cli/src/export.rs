//! A site or a plan for other programs, in the format that the file's ending names.

use crate::args::Said;
use crate::failure::Failure;
use crate::outputs::beside;
use crate::survey::text;
use exchange::{About, Format};
use planning::{Job, Plan};
use site::Site;
use std::fs;
use std::path::Path;

/// Where an export goes and in which format; known before anything is computed.
pub(crate) struct Target<'a> {
    path: &'a Path,
    format: Format,
}

/// An export, not yet written.
pub(crate) struct Exported<'a> {
    pub(crate) path: &'a Path,
    bytes: Vec<u8>,
}

impl<'a> Target<'a> {
    /// Refuses an ending that names no format.
    pub(crate) fn of(path: &'a Path, said: Said) -> Result<Self, Failure> {
        let format = path.extension().and_then(|e| e.to_str()).and_then(Format::of_extension);
        let shown = path.display().to_string();
        let refused = || Failure::one(said, "cli::bad-format", &shown, text::BAD_FORMAT.with("file", &shown), None);
        Ok(Self { path, format: format.ok_or_else(refused)? })
    }

    pub(crate) fn bytes_of_site(self, site: &Site, said: Said) -> Result<Exported<'a>, Failure> {
        let made = exchange::export(site, self.format, &about(said));
        self.made(made, said)
    }

    pub(crate) fn bytes_of_plan(self, job: &Job, plan: &Plan, said: Said) -> Result<Exported<'a>, Failure> {
        let made = exchange::export_plan(job, plan, self.format, &about(said));
        self.made(made, said)
    }

    fn made(self, made: Result<Vec<u8>, evidence::Faults>, said: Said) -> Result<Exported<'a>, Failure> {
        let bytes = made.map_err(|faults| Failure::new(faults, said))?;
        Ok(Exported { path: self.path, bytes })
    }
}

impl Exported<'_> {
    pub(crate) fn write(&self, said: Said) -> Result<(), Failure> {
        let fail = |e: std::io::Error| Failure::cannot_write(said, &self.path.display().to_string(), &e.to_string());
        write(self.path, &self.bytes).map_err(fail)
    }
}

fn about(said: Said) -> About {
    About { wording: said.wording(), ..About::default() }
}

/// Beside it first, then in its place: an interrupted write leaves what was there.
pub(crate) fn write(path: &Path, bytes: &[u8]) -> std::io::Result<()> {
    let temporary = beside(path, "writing");
    fs::write(&temporary, bytes).and_then(|()| fs::rename(&temporary, path)).inspect_err(|_| {
        let _ = fs::remove_file(&temporary);
    })
}
