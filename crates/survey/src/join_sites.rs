//! What joins files and sites to one: one coordinate system, each file once, the newest ground first.

use crate::bring_in::BringOptions;
use crate::notes::Notes;
use crate::stored::{SourceRecord, StoredSite, Used};
use crate::{Epsg, text};
use evidence::Faults;
use site::{GroundSource, Thing};

/// The options with the system that the site is in already; another one is refused.
pub(crate) fn in_the_sites_system(stored: &StoredSite, options: &BringOptions) -> Result<BringOptions, Faults> {
    let own = stored.site.epsg.and_then(|code| u16::try_from(code).ok()).map(Epsg);
    let mut options = options.clone();
    let empty = stored.records.is_empty();
    match (own, options.ground.site_crs) {
        (Some(own), None) => options.ground.site_crs = Some(own),
        (Some(own), Some(asked)) if own != asked => return Err(other_system("", own, asked)),
        // What is on the site already would be called something that nobody has checked.
        (None, Some(asked)) if !empty => {
            let codes = stored.records.iter().map(|r| r.crs.as_deref().and_then(Epsg::of_text));
            for found in codes {
                match found {
                    Some(found) if found == asked => {}
                    Some(found) => return Err(other_system("", found, asked)),
                    None => {
                        let mut notes = Notes::new("");
                        let message = text::SITE_SYSTEM_UNKNOWN.with("site", asked.words());
                        notes.refuse("survey::systems-differ", message, text::DO_BRING_IN_TOGETHER);
                        return Err(notes.into_faults());
                    }
                }
            }
        }
        _ => {}
    }
    Ok(options)
}

fn other_system(file: &str, first: Epsg, second: Epsg) -> Faults {
    let mut notes = Notes::new(file);
    let message = text::SYSTEMS_DIFFER.with("first", first.words()).with("second", second.words());
    notes.refuse("survey::systems-differ", message, text::DO_BRING_IN_TOGETHER);
    notes.into_faults()
}

/// Where the site has no system of its own, files that name different ones do not go on it together.
pub(crate) fn same_system(stored: &StoredSite, record: &SourceRecord) -> Result<(), Faults> {
    if stored.site.epsg.is_some() {
        return Ok(());
    }
    let Some(new) = record.crs.as_deref().and_then(Epsg::of_text) else { return Ok(()) };
    let others = stored.records.iter().filter(|r| r.file != record.file);
    match others.filter_map(|r| r.crs.as_deref().and_then(Epsg::of_text)).find(|old| *old != new) {
        Some(old) => Err(other_system(&record.file, old, new)),
        None => Ok(()),
    }
}

/// Takes off the site what came from a file by that use.
pub(crate) fn forget(stored: &mut StoredSite, file: &str, used: Used) {
    let had = stored.records.len();
    stored.records.retain(|r| !(r.file == file && r.used == used));
    if stored.records.len() == had {
        return;
    }
    let from = |source: &str| source.rsplit_once(':').is_some_and(|(f, _)| f == file);
    let around = &mut stored.site.surroundings;
    around.things.retain(|t| !from(&t.source));
    around.excavations.retain(|e| !from(&e.source));
    around.buried.retain(|b| !from(&b.source));
    around.zones.retain(|z| !from(&z.by));
    stored.site.lines.retain(|l| !from(&l.source));
    stored.waiting.retain(|w| !from(&w.source));
}

/// Everything of another stored site, after what is there; what is there already stays once.
pub(crate) fn join(stored: &mut StoredSite, other: StoredSite, file: &str) -> Result<(), Faults> {
    let code = |site: &site::Site| site.epsg.and_then(|code| u16::try_from(code).ok()).map(Epsg);
    if let (Some(first), Some(second)) = (code(&stored.site), code(&other.site))
        && first != second
    {
        return Err(other_system(file, first, second));
    }
    for record in &other.records {
        same_system(stored, record)?;
    }
    let site = &mut stored.site;
    if site.name.is_empty() {
        site.name = other.site.name;
    }
    site.epsg = site.epsg.or(other.site.epsg);
    for surface in other.site.ground.surfaces {
        if !site.ground.surfaces.iter().any(|s| s.name == surface.name) {
            site.ground.surfaces.push(surface);
        }
    }
    for line in other.site.lines {
        if !site.lines.iter().any(|l| l.source == line.source && l.course == line.course && l.spans == line.spans) {
            site.lines.push(line);
        }
    }
    site.landings.extend(other.site.landings);
    site.gates.extend(other.site.gates);
    let (to, from) = (&mut site.surroundings, other.site.surroundings);
    let things = from.things.into_iter().filter(|t| !to.things.iter().any(|o| o.id == t.id && o.source == t.source));
    let things: Vec<Thing> = things.collect();
    let new = |w: &crate::Waiting| things.iter().any(|t| t.id == w.thing && t.source == w.source);
    stored.waiting.extend(other.waiting.into_iter().filter(new));
    to.things.extend(things);
    let digs: Vec<_> = from.excavations.into_iter().filter(|e| !to.excavations.contains(e)).collect();
    to.excavations.extend(digs);
    let buried: Vec<_> = from.buried.into_iter().filter(|b| !to.buried.contains(b)).collect();
    to.buried.extend(buried);
    let zones: Vec<_> = from.zones.into_iter().filter(|z| !to.zones.contains(z)).collect();
    to.zones.extend(zones);
    for record in other.records {
        if !stored.records.contains(&record) {
            stored.records.push(record);
        }
    }
    Ok(())
}

/// A surface of the same file takes the place of the earlier one, with the things that were found over it.
/// A new one goes before older ones, so that the newest day answers first; without a day, behind all.
pub(crate) fn replace_ground(stored: &mut StoredSite, source: GroundSource, record: SourceRecord) -> Faults {
    let mut notes = Notes::new(&record.file);
    let same = |r: &SourceRecord| r.file == record.file && r.used == record.used;
    let surfaces = &mut stored.site.ground.surfaces;
    if let Some(i) = surfaces.iter().position(|s| s.name == source.name) {
        surfaces[i] = source;
    } else {
        let newer = |s: &GroundSource| match (&s.date, &source.date) {
            (Some(old), Some(new)) => old < new,
            (None, Some(_)) => true,
            (_, None) => false,
        };
        let at = surfaces.iter().position(newer).unwrap_or(surfaces.len());
        surfaces.insert(at, source);
    }
    let replaced = stored.records.iter().position(same);
    let moved = replaced.is_some_and(|i| {
        let old = &stored.records[i];
        old.min != record.min || old.max != record.max || old.count != record.count
    });
    if moved {
        let message = text::REPLACES_ANOTHER.with("file", &record.file);
        notes.warn("survey::replaces-another", message, text::DO_OTHER_NAME);
    }
    let faults = notes.into_faults();
    forget(stored, &record.file, Used::Above);
    match stored.records.iter().position(same) {
        Some(i) => stored.records[i] = record,
        None => stored.records.push(record),
    }
    faults
}
