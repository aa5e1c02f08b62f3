//! `job.toml` and everything it names.

use crate::document::{Document, read_table};
use crate::folder::{Folder, stays_inside};
use crate::ids::Ids;
use crate::node::{Node, Value};
use crate::schema_notes::{Kind, Notes, SeenValue};
use crate::table::Reader;
use crate::{
    accept_section, below_section, format, gate_section, ground_section, landing_section, lift_section, line_section,
    load_section,
};
use crate::{
    crane_section, lift_wishes, load_list, machine_section, pickup_section, placeholder, policy_section,
    routine_section, site_section, soil_section, text, thing_section, zone_section,
};
use evidence::{Faults, Place};
use planning::{InputLine, Job};
use site::{Ground, Surroundings};

/// Name of the job's own file.
pub const JOB_FILE: &str = "job.toml";

/// The format of job files that this version reads.
pub const JOB_FORMAT: &str = "counterpoise-job/1";

/// A job from its folder, with warnings.
///
/// # Errors
/// Every fault of every file, those of `job.toml` first.
pub fn read_job(folder: &dyn Folder) -> Result<(Job, Faults), Faults> {
    let bytes = match folder.read(JOB_FILE) {
        Some(Ok(bytes)) => bytes,
        other => {
            let mut faults = Faults::default();
            let message = match other {
                Some(Err(reason)) => text::UNREADABLE_FILE.with("file", JOB_FILE).with("reason", reason),
                _ => text::MISSING_FILE.with("file", JOB_FILE),
            };
            let code = message.id.replacen('-', "::", 1);
            faults.error(&code, Place::file(JOB_FILE), message, None);
            return Err(faults);
        }
    };
    read(folder, &read_table(JOB_FILE, &bytes)).0
}

/// What reading asks of a job and finds in it.
pub(crate) fn notes(folder: &dyn Folder) -> Notes {
    let Some(Ok(bytes)) = folder.read(JOB_FILE) else { return Notes::default() };
    let mut document = read_table(JOB_FILE, &bytes);
    document.take_notes();
    read(folder, &document).1
}

fn read(folder: &dyn Folder, document: &Document) -> (Result<(Job, Faults), Faults>, Notes) {
    document.drafts.set(Some(text::HINT_FILL_IN_JOB));
    let root = document.root();
    if !format::check(&root, JOB_FORMAT) {
        return (Err(document.faults()), document.notes());
    }
    let mut files = Files { folder, faults: Faults::default(), inputs: Vec::new() };
    let job = job(&root, &mut files);
    let mut faults = document.faults();
    faults.append(files.faults);
    let notes = document.notes();
    let read = match job {
        Some(mut job) if !faults.any_error() => {
            job.inputs = document.inputs();
            job.inputs.append(&mut files.inputs);
            job.warnings = faults.clone();
            if document.open.get() > 0 {
                nothing_stated(&mut job);
            }
            Ok((job, faults))
        }
        _ => Err(faults),
    };
    (read, notes)
}

/// While the job is not yet written, nobody's statement can be about it.
fn nothing_stated(job: &mut Job) {
    job.lines_complete = None;
    job.acceptances.clear();
    for lift in &mut job.lifts {
        lift.acceptances.clear();
    }
    for routine in &mut job.routines {
        routine.approved_by = None;
    }
}

/// The other files of the job: their faults and inputs gather here.
pub(crate) struct Files<'f> {
    folder: &'f dyn Folder,
    pub(crate) faults: Faults,
    pub(crate) inputs: Vec<InputLine>,
}

impl Files<'_> {
    /// Path and bytes of a file that a key names. What is wrong is said at the key.
    pub(crate) fn open(&self, t: &Reader<'_>, node: &Node, key: &str) -> Option<(String, Vec<u8>)> {
        let path = t.as_text(node, key)?.to_owned();
        let hint = || Some(text::HINT_PATH.message());
        if !stays_inside(&path) {
            t.fault_at(node, key, text::BAD_PATH.with("path", &path), hint());
            return None;
        }
        match self.folder.read(&path) {
            Some(Ok(bytes)) => Some((path, bytes)),
            Some(Err(reason)) => {
                t.fault_at(node, key, text::UNREADABLE_FILE.with("file", &path).with("reason", reason), None);
                None
            }
            None => {
                t.fault_at(node, key, text::MISSING_FILE.with("file", &path), hint());
                None
            }
        }
    }
}

fn job(root: &Reader<'_>, files: &mut Files<'_>) -> Option<Job> {
    let name = root.text("name", "name = \"Block C, week 14\"");
    let site = root.text("site", "site = \"Mill Lane 4\"");
    let date = date(root, "date");
    let planner = root.text("planner", "planner = \"A. Planner\"");
    let invented = root.yes_no("invented").unwrap_or(false);
    let policy = policy_section::policy(root);
    let stored = site_section::stored(root, files);
    let surfaces = ground_section::surfaces(root, files);
    let lines = line_section::lines(root);
    let (lines_complete, nobody) = root.not_given_while_open(|root| {
        let t = root.table_or_none("lines_complete")?;
        let by = t.text("by", "by = \"A. Planner, site manager\"");
        t.done();
        by
    });
    let lines_complete = lines_complete.filter(|_| !nobody);

    let mut machine_ids = Ids::default();
    let machines = machine_section::machines(root, files, &mut machine_ids);
    let mut load_ids = Ids::default();
    let load_list = load_list::loads(root, files);
    let rows = load_list.as_ref().map(|list| list.document.root());
    let loads = load_section::loads(root, rows.as_ref(), &mut load_ids);
    let mut landing_ids = Ids::default();
    let landings = landing_section::landings(root, &mut landing_ids);
    let (landings, strengths): (Option<Vec<_>>, Vec<_>) = match landings {
        Some(read) => {
            let (landings, strengths) = read.into_iter().unzip();
            (Some(landings), strengths)
        }
        None => (None, Vec::new()),
    };
    let mut gate_ids = Ids::default();
    let gates = gate_section::gates(root, &mut gate_ids);
    let things = thing_section::things(root);
    let excavations = below_section::excavations(root);
    let buried = below_section::buried(root);
    let zones = zone_section::zones(root);
    let soils = soil_section::soils(root);
    let mut mat_ids = Ids::default();
    let mats = soil_section::mats(root, &mut mat_ids);
    let mut pickup_ids = Ids::default();
    let pickups = pickup_section::pickups(root, &mut pickup_ids);
    let cranes = crane_section::cranes(root);
    let hours = lift_wishes::span_of_day(root, "hours", false);
    let lifts = lift_section::lifts(
        root,
        rows.as_ref(),
        &lift_section::Known {
            machines: &machine_ids,
            loads: &load_ids,
            landings: &landing_ids,
            gates: &gate_ids,
            mats: &mat_ids,
            pickups: &pickup_ids,
            places: landings.as_deref(),
            units: machines.as_deref(),
        },
    );
    let slot_list = load_list::slots(root, files);
    let mut delivery_ids = Ids::default();
    let arriving = pickup_section::Known { loads: &load_ids, pickups: &pickup_ids };
    let mut deliveries = pickup_section::deliveries(root, &arriving, &mut delivery_ids);
    if let Some(list) = &slot_list {
        let more = pickup_section::deliveries(&list.document.root(), &arriving, &mut delivery_ids);
        deliveries = deliveries.zip(more).map(|(all, more)| all.into_iter().chain(more).collect());
    }
    let of_routines = routine_section::Known { machines: &machine_ids, loads: &load_ids, landings: &landing_ids };
    let routines = routine_section::routines(root, &of_routines);
    let acceptances = accept_section::acceptances(root);
    drop(rows);
    for list in [load_list, slot_list].into_iter().flatten() {
        list.end(root, files);
    }
    if let (Some(lines), Some(lifts)) = (&lines, &lifts) {
        line_section::near(root, lines, lifts);
    }
    root.done();
    let (loads, feet) = loads?.into_iter().unzip();
    let mut job = Job {
        name: name?,
        site: site?,
        date: date?,
        invented,
        planner: planner?,
        machines: machines?,
        loads,
        feet,
        ground: Ground { surfaces: surfaces? },
        lines: lines?,
        lines_complete,
        landings: landings?,
        strengths,
        gates: gates?,
        surroundings: Surroundings {
            things: things?.into(),
            excavations: excavations?,
            buried: buried?,
            zones: zones?,
        },
        soils: soils?,
        mats: mats?,
        lifts: lifts?,
        pickups: pickups?,
        cranes: cranes?,
        deliveries: deliveries?,
        routines: routines?,
        hours: hours?,
        policy: policy?,
        acceptances: acceptances?,
        inputs: Vec::new(),
        warnings: Faults::default(),
    };
    site_section::join(root, &mut job, stored.ok()?);
    Some(job)
}

/// A date as year-month-day, in quotes or without.
pub(crate) fn date(t: &Reader<'_>, key: &str) -> Option<String> {
    let node = t.required(key, &format!("{key} = \"2027-04-12\""))?;
    as_date(t, node, key)
}

pub(crate) fn as_date(t: &Reader<'_>, node: &Node, key: &str) -> Option<String> {
    t.expects(key, || Kind::Date);
    let written = match &node.value {
        Value::Date(d) => d.clone(),
        Value::Text(s) if !s.trim().is_empty() => s.clone(),
        Value::Text(_) => {
            t.fault_at(node, key, text::EMPTY_TEXT.with("key", key), None);
            return None;
        }
        _ => {
            t.wrong_type(node, key, text::TYPE_DATE);
            return None;
        }
    };
    if placeholder::is_open(&written) {
        return t.left_open(node, key).then_some(written);
    }
    if is_date(&written) {
        t.found(key, || SeenValue::Text(written.clone()), None);
        return Some(written);
    }
    let hint = text::HINT_EXAMPLE.with("example", format!("{key} = \"2027-04-12\""));
    t.fault_at(node, key, text::BAD_DATE.with("date", written), Some(hint));
    None
}

/// True for a day of the Gregorian calendar as `YYYY-MM-DD`.
pub fn is_date(text: &str) -> bool {
    let parts: Vec<&str> = text.split('-').collect();
    let [y, m, d] = parts[..] else { return false };
    let digits = |s: &str, n: usize| s.len() == n && s.bytes().all(|b| b.is_ascii_digit());
    if !(digits(y, 4) && digits(m, 2) && digits(d, 2)) {
        return false;
    }
    let number = |s: &str| s.parse::<u32>().unwrap_or(0);
    let (y, m, d) = (number(y), number(m), number(d));
    let leap = (y % 4 == 0 && y % 100 != 0) || y % 400 == 0;
    let days = match m {
        4 | 6 | 9 | 11 => 30,
        2 => 28 + u32::from(leap),
        1..=12 => 31,
        _ => 0,
    };
    (1..=days).contains(&d)
}

/// All tables of a list read before one that is wrong ends it.
pub(crate) fn all<T>(read: Vec<Option<T>>) -> Option<Vec<T>> {
    read.into_iter().collect()
}

/// The list under a key must have at least one table.
pub(crate) fn at_least_one(root: &Reader<'_>, key: &str) {
    root.required(key, &format!("[[{key}]]"));
}

#[cfg(test)]
mod tests {
    use super::is_date;

    #[test]
    fn dates_are_days_of_the_calendar() {
        for good in ["2027-04-12", "2028-02-29", "2000-02-29"] {
            assert!(is_date(good), "{good}");
        }
        for bad in ["2027-02-29", "1900-02-29", "2027-13-01", "2027-4-12", "12.04.2027", "2027-04-31", "2027-04-00"] {
            assert!(!is_date(bad), "{bad}");
        }
    }
}
