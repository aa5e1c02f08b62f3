//! `site_from`: a stored site, taken whole.

use crate::job_file::Files;
use crate::table::{Faulty, Reader};
use crate::text;
use evidence::Certainty;
use geometry::DVec2;
use planning::{InputLine, Job, Stand};
use quantity::metres;
use site::Site;

/// A stand farther than this from the ground of the site is in other coordinates, or the site is another, m.
const NEAR: f64 = 200.0;

/// The site of the file that `site_from` names; `None` where the job has none.
pub(crate) fn stored(root: &Reader<'_>, files: &mut Files<'_>) -> Result<Option<Site>, Faulty> {
    let Some(node) = root.optional("site_from") else { return Ok(None) };
    let (name, bytes) = files.open(root, node, "site_from").ok_or(Faulty)?;
    let stored = match survey::read_stored(&name, &bytes) {
        Ok(stored) => stored,
        Err(faults) => {
            files.faults.append(faults);
            return Err(Faulty);
        }
    };
    for record in &stored.records {
        let said = record.date.iter().cloned().chain([record.count.to_string()]).collect::<Vec<_>>();
        files.inputs.push(InputLine {
            name: format!("site[{}]", record.file),
            place: format!("{}:{} site_from", root.document().file(), root.document().line(node.span)),
            value: said.join("; "),
            certainty: Certainty::Measured,
        });
        // What was doubtful when it was brought in is doubtful still.
        files.faults.list.extend(record.notes.iter().cloned());
    }
    Ok(Some(stored.site))
}

/// Puts a stored site behind what the job itself has: own levels answer before the survey's.
pub(crate) fn join(root: &Reader<'_>, job: &mut Job, site: Option<Site>) {
    let Some(site) = site else { return };
    let bounds = site.ground.surfaces.iter().filter_map(|s| s.terrain.bounds());
    if let Some((low, high)) = bounds.reduce(|(l, h), (l2, h2)| (l.min(l2), h.max(h2))) {
        let near = |p: DVec2| (low - p).max(p - high).max(DVec2::ZERO).length() <= NEAR;
        let mut stands = job.lifts.iter().map(|l| l.stand).filter(Stand::is_chosen).peekable();
        if stands.peek().is_some() && !stands.any(|s| near(s.at)) {
            let message = text::SITE_FAR
                .with("west", metres(low.x))
                .with("east", metres(high.x))
                .with("south", metres(low.y))
                .with("north", metres(high.y));
            root.warning("site_from", message, Some(text::HINT_ONE_SYSTEM.message()));
        }
    }
    job.ground.surfaces.extend(site.ground.surfaces);
    job.lines.extend(site.lines);
    let (to, from) = (&mut job.surroundings, site.surroundings);
    to.things.extend(from.things);
    to.excavations.extend(from.excavations);
    to.buried.extend(from.buried);
    to.zones.extend(from.zones);
}
