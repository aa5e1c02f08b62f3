//! `[[pickup]]`: where loads wait, and `[[delivery]]`: when they come there.

use crate::ids::Ids;
use crate::job_file::all;
use crate::landing_section::heading;
use crate::lift_wishes::span_of_day;
use crate::limits::{HEIGHT, SITE};
use crate::quantity_value::Bound::Within;
use crate::table::Reader;
use crate::text;
use planning::{Delivery, Pickup};
use quantity::Dimension as D;

pub(crate) fn pickups(root: &Reader<'_>, ids: &mut Ids) -> Option<Vec<Pickup>> {
    all(root.tables("pickup").iter().map(|t| pickup(t, ids)).collect())
}

fn pickup(t: &Reader<'_>, ids: &mut Ids) -> Option<Pickup> {
    let id = ids.add(t);
    let name = t.text("name", "name = \"Where trucks are unloaded\"");
    let at = t.fact_point("at", "at = [\"12.0 m\", \"30.0 m\"]", SITE);
    let heading = t.has("heading").then(|| heading(t, "heading"));
    let level = t.si_or_none("level", D::Length, Within(-HEIGHT, HEIGHT));
    let level_read = level.is_some() || !t.has("level");
    t.done();
    let heading = match heading {
        None => None,
        Some(read) => Some(read?),
    };
    level_read.then_some(())?;
    Some(Pickup { id: id?, name: name?, at: at?, heading, level })
}

/// The ids that deliveries name.
pub(crate) struct Known<'i> {
    pub(crate) loads: &'i Ids,
    pub(crate) pickups: &'i Ids,
}

pub(crate) fn deliveries(root: &Reader<'_>, known: &Known<'_>, ids: &mut Ids) -> Option<Vec<Delivery>> {
    all(root.tables("delivery").iter().map(|t| delivery(t, known, ids)).collect())
}

fn delivery(t: &Reader<'_>, known: &Known<'_>, ids: &mut Ids) -> Option<Delivery> {
    let id = ids.add(t);
    let loads = t.required("loads", "loads = [\"blocks\"]").and_then(|node| {
        let find = |item| known.loads.find(t, item, "loads", t.as_text(item, "loads")?, text::KIND_LOAD);
        all(t.as_list(node, "loads")?.iter().map(find).collect())
    });
    let slot = span_of_day(t, "slot", true);
    let place = t.optional("place").map(|node| {
        let id = t.as_text(node, "place")?;
        known.pickups.find(t, node, "place", id, text::KIND_PICKUP)
    });
    t.done();
    let place = match place {
        None => None,
        Some(read) => Some(read?),
    };
    Some(Delivery { id: id?, loads: loads?, slot: slot??, place })
}
