//! `counterpoise survey`: survey files and drawings to a stored site, with what was read and thrown away.

mod options;
mod said;
mod summary;
pub(crate) mod text;
mod under;

use crate::args::SurveyArgs;
use crate::export::{Target, write};
use crate::failure::{Failure, print_faults};
use crate::{Outcome, Run, terminal};
use drawing::Style;
use std::collections::BTreeMap;
use std::fs;
use std::path::Path;
use survey::{BringOptions, ConductorOptions, StoredSite, bring_in, read_stored, write_stored};

/// Larger files are not survey files of a building site; guards memory.
const LARGEST: u64 = 4 << 30;

pub(crate) fn run(args: &SurveyArgs) -> Run {
    let said = args.said;
    let options = options::options(args)?;
    let footprints = options::footprints(args)?;
    let target = args.export.as_ref().map(|path| Target::of(path, said)).transpose()?;
    // Every file that cannot be read is said, not the first.
    let mut unread = evidence::Faults::default();
    let mut read = Vec::new();
    for path in &args.files {
        match self::read(path, args) {
            Ok(file) => read.push(file),
            Err(failure) => unread.append(failure.faults),
        }
    }
    if unread.any_error() {
        return Err(Failure::new(unread, said));
    }
    let files: Vec<(&str, &[u8])> = read.iter().map(|(n, b)| (n.as_str(), b.as_slice())).collect();
    let before = match &args.into {
        Some(path) if path.exists() => {
            let (name, bytes) = self::read(path, args)?;
            read_stored(&name, &bytes).map_err(|faults| Failure::new(faults, said))?
        }
        _ => StoredSite::default(),
    };
    let mut brought = bring_in(&before, &files, &options).map_err(|faults| Failure::new(faults, said))?;
    if let Some(name) = &args.name {
        brought.stored.site.name.clone_from(name);
    }
    let likely = if args.above { likely(&brought.stored, &files, &options) } else { Vec::new() };
    let under = under::measured(&footprints, &brought.stored);

    // Everything is made before anything is written.
    let wording = said.wording();
    let picture = args.picture.as_ref().map(|path| {
        let style = Style::paper(f64::from(args.picture_width));
        (path, drawing::site_plan(&brought.stored.site, &[], &wording, &style).into_bytes())
    });
    let exported = target.map(|target| target.bytes_of_site(&brought.stored.site, said)).transpose()?;
    let kept = match &args.into {
        None => None,
        Some(path) => {
            let bytes = write_stored(&brought.stored).map_err(|_| {
                Failure::one(said, "cli::not-stored", &path.display().to_string(), text::NOT_STORED.message(), None)
            })?;
            Some((path, bytes))
        }
    };
    if let Some(exported) = &exported {
        exported.write(said)?;
    }
    for (path, bytes) in picture.iter().chain(&kept) {
        write(path, bytes).map_err(|e| Failure::cannot_write(said, &path.display().to_string(), &e.to_string()))?;
    }

    if said.json() {
        terminal::print_json(&summary::summary(&brought, &under));
        return Ok(Outcome::Done);
    }
    print_faults(&brought.notes, said, &BTreeMap::new());
    let only_sites = files.iter().all(|(_, b)| is_site(b));
    let given = |file: &str| files.iter().any(|(name, _)| file.contains(name) || same_stem(file, name));
    for record in brought.stored.records.iter().filter(|r| only_sites || given(&r.file)) {
        said::record(record, wording);
        if let Some((_, placed)) = brought.plans.iter().find(|(name, _)| *name == record.file) {
            said::placed(placed, wording);
        }
    }
    said::settled(brought.settled, wording);
    said::likely(&likely, wording);
    said::site(&brought.stored, wording);
    for under in &under {
        under::say(under, wording);
    }
    terminal::line("");
    match &kept {
        Some((path, bytes)) => {
            let kb = format!("{:.0} kB", bytes.len() as f64 / 1000.0);
            let name = path.file_name().map_or_else(String::new, |n| n.to_string_lossy().into_owned());
            let message = text::KEPT.with("file", path.display().to_string()).with("size", kb).with("name", name);
            terminal::paragraph(&wording.render(&message), "", "");
        }
        None if !only_sites => {
            terminal::paragraph(&wording.render(&text::NOT_KEPT.message()), "", "");
        }
        None => {}
    }
    for path in picture.iter().map(|p| p.0.as_path()).chain(exported.iter().map(|e| e.path)) {
        let message = text::WROTE.with("file", path.display().to_string());
        terminal::paragraph(&wording.render(&message), "", "");
    }
    terminal::paragraph(&wording.render(&text::CAUTION.message()), "", "");
    Ok(Outcome::Done)
}

/// Parts of one Shapefile.
fn same_stem(a: &str, b: &str) -> bool {
    let stem = |name: &str| name.rsplit_once('.').map(|(stem, _)| stem.to_lowercase());
    stem(a).is_some() && stem(a) == stem(b)
}

fn is_site(bytes: &[u8]) -> bool {
    bytes.starts_with(b"\x89CPSITE\n")
}

/// Name without folders, and bytes.
fn read(path: &Path, args: &SurveyArgs) -> Result<(String, Vec<u8>), Failure> {
    let shown = path.display().to_string();
    let fail = |reason: &str| Failure::cannot_read(args.said, &shown, reason);
    let meta = fs::metadata(path).map_err(|e| fail(&e.to_string()))?;
    if !meta.is_file() {
        return Err(fail("not a file"));
    }
    if meta.len() > LARGEST {
        return Err(fail(&format!("{} GiB is more than the 4 GiB that are read", meta.len() >> 30)));
    }
    let bytes = fs::read(path).map_err(|e| fail(&e.to_string()))?;
    let name = path.file_name().map_or_else(|| shown.clone(), |n| n.to_string_lossy().into_owned());
    Ok((name, bytes))
}

fn likely(stored: &StoredSite, files: &[(&str, &[u8])], options: &BringOptions) -> Vec<survey::LikelySpan> {
    let clouds: Vec<(&str, &[u8])> = files.iter().filter(|(_, b)| b.starts_with(b"LASF")).copied().collect();
    if clouds.is_empty() {
        return Vec::new();
    }
    let mut names: Vec<&str> = clouds.iter().map(|f| f.0).collect();
    names.sort_unstable();
    let name = names.join(", ");
    let Some(ground) = stored.site.ground.surfaces.iter().find(|s| s.name == name) else { return Vec::new() };
    let asked = ConductorOptions { cloud: options.ground.clone(), ..ConductorOptions::default() };
    survey::likely_conductors(&clouds, &ground.terrain, &asked).map(|found| found.spans).unwrap_or_default()
}
