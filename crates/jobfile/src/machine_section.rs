//! `[[machine]]`: the machines of a job and their state today.

use crate::fitted_section::fitted;
use crate::identity_section as identity;
use crate::ids::Ids;
use crate::job_file::{Files, all, at_least_one};
use crate::machine_file::{self, Decoded};
use crate::table::Reader;
use machine::{Attachment, LatchSeen, LockSeen, Machine};
use planning::JobMachine;

const LOCKS: [(&str, LockSeen); 3] =
    [("locked", LockSeen::Locked), ("open", LockSeen::Open), ("not-seen", LockSeen::NotSeen)];
const LATCHES: [(&str, LatchSeen); 3] =
    [("closes", LatchSeen::Closes), ("faulty", LatchSeen::Faulty), ("not-seen", LatchSeen::NotSeen)];

pub(crate) fn machines(root: &Reader<'_>, files: &mut Files<'_>, ids: &mut Ids) -> Option<Vec<JobMachine>> {
    at_least_one(root, "machine");
    // A file that two machines share says its faults once.
    let mut told: Vec<String> = Vec::new();
    all(root.tables("machine").iter().map(|t| machine(t, files, ids, &mut told)).collect())
}

fn machine(t: &Reader<'_>, files: &mut Files<'_>, ids: &mut Ids, told: &mut Vec<String>) -> Option<JobMachine> {
    let id = ids.add(t);
    let file = t.required("file", "file = \"machines/heron-7.toml\"");
    let opened = file.and_then(|node| files.open(t, node, "file"));
    let (inspected_by, nobody) = t.not_given_while_open(|t| t.text_or_none("inspected_by"));
    let mut inspected_by = inspected_by.filter(|_| !nobody);
    let tagged_out = t.text_or_none("tagged_out");
    let mut draft = false;
    let described = opened.and_then(|(path, bytes)| {
        let Decoded { machine, faults, mut inputs, open, .. } = machine_file::decode(&path, &bytes);
        if open {
            // What somebody looked at is not yet the machine of this file.
            inspected_by = None;
            draft = true;
        }
        let usable = !faults.any_error();
        if !told.contains(&path) {
            files.faults.append(faults);
            files.inputs.append(&mut inputs);
            told.push(path);
        }
        machine.filter(|_| usable)
    });
    let attachment_lock = by_attachment(t, "locks", described.as_ref(), |_| true, &LOCKS);
    let latches = by_attachment(t, "latches", described.as_ref(), Attachment::hangs, &LATCHES);
    let kept = identity::kept(t);
    let seen = identity::seen(t);
    let examined = identity::examined(t);
    let cab = identity::cab(t);
    let fitted = fitted(t, described.as_ref());
    t.done();
    let mut machine = described?;
    // Lifts and documents call it by the job's id.
    machine.id = id?;
    Some(JobMachine {
        machine,
        inspected_by,
        tagged_out,
        attachment_lock: attachment_lock?,
        latches: latches?,
        kept: kept.ok()?,
        seen: seen.ok()?,
        examined: examined.ok()?,
        cab: cab?,
        lock_tried: fitted.lock_tried.filter(|_| !draft),
        flat: fitted.flat,
        pressures: fitted.pressures,
        without: fitted.without,
        added: fitted.added,
    })
}

/// `locks = { forks = "locked" }`, `latches = { jib = "closes" }`: keys are ids of the machine's
/// attachments that have such a thing.
fn by_attachment<S: Copy>(
    t: &Reader<'_>,
    key: &str,
    machine: Option<&Machine>,
    has: fn(&Attachment) -> bool,
    words: &[(&str, S)],
) -> Option<Vec<(String, S)>> {
    let Some(l) = t.table_or_none(key) else {
        return if t.has(key) { None } else { Some(Vec::new()) };
    };
    let Some(machine) = machine else {
        // Without its file nobody knows which attachments it has.
        return None;
    };
    l.keys_are_ids();
    let mut seen = Vec::new();
    for attachment in machine.attachments.iter().filter(|a| has(a)) {
        if let Some(node) = l.optional(&attachment.id) {
            seen.push((attachment.id.clone(), l.as_choice(node, &attachment.id, words)?));
        }
    }
    l.done();
    Some(seen)
}
