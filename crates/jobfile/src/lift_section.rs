//! `[[lift]]`: one load to a landing from a stand.

use crate::accept_section;
use crate::chart_section;
use crate::gate_section;
use crate::ids::Ids;
use crate::job_file::{all, at_least_one};
use crate::landing_section::heading;
use crate::limits::{SITE, STAND_TO_LANDING};
use crate::load_part_section::{DENSITY, by_id};
use crate::node::{Node, Value};
use crate::quantity_value::Bound::{UpTo, Within, ZeroTo};
use crate::stance_section::stance;
use crate::table::{Faulty, Reader};
use crate::{lift_wishes, placeholder, text};
use evidence::Source;
use machine::{DAMP_SHARE, Form, SupportState};
use planning::{BulkDensity, JobMachine, Lift, Stand, StopKind, Task, WindInput};
use quantity::{Dimension as D, metres, metres_per_second};
use site::Landing;

/// The ids that lifts may name.
pub(crate) struct Known<'i> {
    pub(crate) machines: &'i Ids,
    pub(crate) loads: &'i Ids,
    pub(crate) landings: &'i Ids,
    pub(crate) gates: &'i Ids,
    pub(crate) mats: &'i Ids,
    pub(crate) pickups: &'i Ids,
    /// The landings themselves, where all could be read.
    pub(crate) places: Option<&'i [Landing]>,
    /// The machines themselves, where all could be read.
    pub(crate) units: Option<&'i [JobMachine]>,
}

const STOPS: [(&str, StopKind); 10] = [
    ("raises-people", StopKind::RaisesPeople),
    ("riders", StopKind::Riders),
    ("under-load", StopKind::UnderLoad),
    ("shared-load", StopKind::SharedLoad),
    ("drags", StopKind::Drags),
    ("drives-boom-up", StopKind::DrivesBoomUp),
    ("hand-steadied", StopKind::HandSteadied),
    ("leaves-seat", StopKind::LeavesSeat),
    ("no-belt", StopKind::NoBelt),
    ("thunderstorm", StopKind::Thunderstorm),
];

/// More layers of mats than that are a slip.
const MOST_MATS: usize = 4;

/// `mats = ["oak", "oak"]`: what lies under each wheel or pad, the top one first; left out: nothing.
fn mats(t: &Reader<'_>, known: &Known<'_>) -> Option<Vec<usize>> {
    let Some(node) = t.optional("mats") else { return Some(Vec::new()) };
    let items = t.as_list(node, "mats")?;
    if items.is_empty() || items.len() > MOST_MATS {
        t.fault_at(node, "mats", text::MATS_COUNT.with("most", MOST_MATS), None);
        return None;
    }
    let one = |item| {
        let id = t.as_text(item, "mats")?;
        known.mats.find(t, item, "mats", id, text::KIND_MAT)
    };
    all(items.iter().map(one).collect())
}

/// What loose material weighs: `bulk_material`, or `bulk_density`; neither: not stated.
fn bulk_density(t: &Reader<'_>) -> Result<Option<BulkDensity>, Faulty> {
    let stated = t.optional("bulk_density").map(|node| t.as_fact(node, "bulk_density", D::Density, UpTo(DENSITY)));
    let material = t.optional("bulk_material").map(|node| by_id(t, node, "bulk_material"));
    match (stated, material) {
        (Some(_), Some(_)) => {
            let message = text::EITHER_OR.with("first", "bulk_material").with("second", "bulk_density");
            t.fault("bulk_density", message, None);
            Err(Faulty)
        }
        (Some(stated), None) => {
            let place = format!("{} bulk_density", t.label_of("bulk_density"));
            let source = |certainty| Source::Input { place, certainty };
            stated.map(|f| Some(BulkDensity { high: f.si, source: source(f.certainty) })).ok_or(Faulty)
        }
        (None, Some(material)) => material.ok_or(Faulty).map(|m| {
            // Some come damp, whatever the list says of them dry.
            let damp = if m.form == Form::Damp { 1.0 + DAMP_SHARE } else { 1.0 };
            Some(BulkDensity { high: m.high * damp, source: m.source() })
        }),
        (None, None) => Ok(None),
    }
}

const TASKS: [(&str, Task); 2] = [("set-down", Task::SetDown), ("pick-up", Task::PickUp)];

/// The lifts of the job file, and behind them those of a list.
pub(crate) fn lifts(root: &Reader<'_>, list: Option<&Reader<'_>>, known: &Known<'_>) -> Option<Vec<Lift>> {
    if list.is_none() {
        at_least_one(root, "lift");
    }
    let mut ids = Ids::default();
    let mut tables = root.tables("lift");
    tables.extend(list.map(|list| list.tables("lift")).unwrap_or_default());
    let read: Vec<Option<Lift>> = tables.iter().map(|t| lift(t, known, &mut ids)).collect();
    // A lift may wait for one that stands behind it.
    let waits: Vec<_> = tables.iter().enumerate().map(|(i, t)| lift_wishes::after(t, &ids, i)).collect();
    let (mut lifts, waits) = (all(read)?, all(waits)?);
    for (lift, after) in lifts.iter_mut().zip(waits) {
        lift.after = after;
    }
    Some(lifts)
}

fn lift(t: &Reader<'_>, known: &Known<'_>, ids: &mut Ids) -> Option<Lift> {
    let id = ids.add(t);
    let name = t.text("name", "name = \"Blocks to the bay\"");
    let (choose, choose_read) = lift_wishes::choose(t);
    // Left to the planner: the first there is, until one is chosen.
    let machine = if t.has("machine") || !choose.machine {
        known.machines.reference(t, "machine", text::KIND_MACHINE)
    } else {
        known.units.filter(|units| !units.is_empty()).map(|_| 0)
    };
    let unit = machine.and_then(|i| known.units?.get(i));
    let attachment = if t.has("attachment") || !choose.attachment {
        t.text("attachment", "attachment = \"forks\"")
    } else {
        unit.and_then(|u| Some(u.machine.attachments.first()?.id.clone()))
    };
    let support =
        if t.has("support") || !choose.support { chart_section::support(t) } else { Some(SupportState::Tyres) };
    let load = known.loads.reference(t, "load", text::KIND_LOAD);
    let landing = known.landings.reference(t, "landing", text::KIND_LANDING);
    let stand = if t.has("stand") || !choose.stand { stand(t) } else { Some(Stand::NOT_CHOSEN) };
    let task = t.optional("task").map_or(Some(Task::SetDown), |node| t.as_choice(node, "task", &TASKS));
    let clear = t.decision("clear", D::Length, Within(0.0, 5.0));
    let stop_gust = t.decision_or_none("stop_gust", D::Speed, ZeroTo(60.0));
    if stop_gust == Some(0.0) {
        let hint = text::HINT_EXAMPLE.with("example", "stop_gust = \"10 m/s\"");
        t.fault("stop_gust", text::STOP_GUST_ZERO, Some(hint));
    }
    let stops = stops(t);
    let (lock_seen, nobody) = t.not_given_while_open(|t| {
        let seen = t.table_or_none("lock_seen")?;
        let by = seen.text("by", "by = \"J. Operator\"");
        seen.done();
        by
    });
    let signaller = t.text_or_none("signaller");
    let side_shift = t.decision_or_none("side_shift", D::Length, Within(-2.0, 2.0));
    let extensions = t.yes_no("extensions");
    let stance = stance(t, support, unit.map(|u| &u.machine));
    let bulk_volume = t.decision_or_none("bulk_volume", D::Volume, UpTo(50.0));
    let bulk_density = bulk_density(t);
    let gates = gate_section::passed(t, known.gates);
    let mats = mats(t, known);
    let acceptances = accept_section::acceptances(t);
    let wishes = lift_wishes::wishes(t, known.pickups);
    t.done();
    if let (Some(stand), Some(landing)) = (&stand, landing.and_then(|i| known.places?.get(i))) {
        near(t, *stand, landing);
    }
    choose_read.then_some(())?;
    let wishes = wishes?;
    Some(Lift {
        mats: mats?,
        id: id?,
        name: name?,
        machine: machine?,
        attachment: attachment?,
        support: support?,
        load: load?,
        stand: stand?,
        landing: landing?,
        task: task?,
        clear: metres(clear?),
        wind: stop_gust.map(|gust| WindInput { gust: metres_per_second(gust) }),
        stops: stops?,
        lock_seen: lock_seen.filter(|_| !nobody),
        signaller,
        side_shift: side_shift.unwrap_or(0.0),
        extensions,
        levelled: stance.levelled,
        axle_locked: stance.axle_locked,
        front_tyres: stance.front_tyres,
        bulk_volume,
        bulk_density: bulk_density.ok()?,
        gates: gates?,
        acceptances: acceptances?,
        choose,
        from: wishes.from,
        window: wishes.window,
        after: Vec::new(),
        priority: wishes.priority,
        minutes: wishes.minutes,
    })
}

fn stand(t: &Reader<'_>) -> Option<Stand> {
    let s = t.table("stand", "stand = { at = [\"12.0 m\", \"20.0 m\"], heading = \"0°\" }")?;
    let at = s.point("at", "at = [\"12.0 m\", \"20.0 m\"]", SITE);
    let heading = heading(&s, "heading");
    s.done();
    Some(Stand { at: at?, heading: heading? })
}

/// A landing far from its stand: one of them is in other coordinates.
fn near(t: &Reader<'_>, stand: Stand, landing: &Landing) {
    let distance = stand.at.distance(landing.at);
    if distance > STAND_TO_LANDING {
        let message = text::LANDING_FAR
            .with("east", metres(stand.at.x))
            .with("north", metres(stand.at.y))
            .with("distance", metres(distance))
            .with("landing", &landing.name)
            .with("landing_east", metres(landing.at.x))
            .with("landing_north", metres(landing.at.y));
        t.fault("stand", message, Some(text::HINT_ONE_SYSTEM.message()));
    }
}

/// `stops = []` states that none of them happens. Left out is a fault: silence is no statement.
pub(crate) fn stops(t: &Reader<'_>) -> Option<Vec<StopKind>> {
    let node = t.required("stops", "stops = []")?;
    let still_open = |item: &Node| matches!(&item.value, Value::Text(word) if placeholder::is_open(word));
    let (open, words): (Vec<&Node>, Vec<&Node>) = t.as_list(node, "stops")?.iter().partition(|item| still_open(item));
    if open.iter().any(|item| !t.left_open(item, "stops")) {
        return None;
    }
    all(words.into_iter().map(|item| t.as_choice(item, "stops", &STOPS)).collect())
}
