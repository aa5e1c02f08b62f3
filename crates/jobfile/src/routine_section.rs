//! `[[routine]]`: one approved plan for a family of lifts that are alike.

use crate::chart_section;
use crate::ids::Ids;
use crate::job_file::all;
use crate::limits::{LOAD, MASS};
use crate::plan_shape_keys::area_of;
use crate::quantity_value::Bound::UpTo;
use crate::table::Reader;
use crate::text;
use planning::{Routine, RoutineLandings, RoutineLoad};
use quantity::{Dimension as D, metres_per_second};

/// The ids that routines name.
pub(crate) struct Known<'i> {
    pub(crate) machines: &'i Ids,
    pub(crate) loads: &'i Ids,
    pub(crate) landings: &'i Ids,
}

pub(crate) fn routines(root: &Reader<'_>, known: &Known<'_>) -> Option<Vec<Routine>> {
    let mut ids = Ids::default();
    all(root.tables("routine").iter().map(|t| routine(t, known, &mut ids)).collect())
}

fn routine(t: &Reader<'_>, known: &Known<'_>, ids: &mut Ids) -> Option<Routine> {
    let id = ids.add(t);
    let name = t.text("name", "name = \"Bricks to the bays of block C\"");
    let machine = known.machines.reference(t, "machine", text::KIND_MACHINE);
    let attachment = t.text("attachment", "attachment = \"forks\"");
    let support = chart_section::support(t);
    let load = load(t, known);
    let landings = landings(t, known);
    let corners = "[[\"0 m\", \"0 m\"], [\"8 m\", \"0 m\"], [\"8 m\", \"6 m\"]]";
    t.list_unit();
    let stands = t.required("stands", &format!("stands = {corners}")).and_then(|node| area_of(t, node, "stands"));
    let stop_gust = t.decision("stop_gust", D::Speed, UpTo(60.0));
    let ground = t.decision("ground", D::Slope, UpTo(1.0));
    let (approved_by, nobody) = t.not_given_while_open(|t| t.text_or_none("approved_by"));
    t.done();
    Some(Routine {
        id: id?,
        name: name?,
        machine: machine?,
        attachment: attachment?,
        support: support?,
        load: load?,
        landings: landings?,
        stands: stands?,
        stop_gust: metres_per_second(stop_gust?),
        ground: ground?,
        approved_by: approved_by.filter(|_| !nobody),
    })
}

/// `load = "blocks"`, the worst of the family, or `load_up_to` with a mass and a size.
fn load(t: &Reader<'_>, known: &Known<'_>) -> Option<RoutineLoad> {
    let up_to = t.table_or_none("load_up_to").map(|u| {
        let mass = u.decision("mass", D::Mass, UpTo(MASS));
        let [depth, width, height] = ["depth", "width", "height"].map(|key| u.decision(key, D::Length, UpTo(LOAD)));
        u.done();
        Some(RoutineLoad::UpTo { mass: mass?, size: [depth?, width?, height?] })
    });
    match (t.has("load"), t.has("load_up_to")) {
        (true, true) => {
            t.fault("load_up_to", text::EITHER_OR.with("first", "load").with("second", "load_up_to"), None);
            None
        }
        (_, true) => up_to?,
        (_, false) => known.loads.reference(t, "load", text::KIND_LOAD).map(RoutineLoad::Like),
    }
}

/// `landings = ["bay"]`, or `landing_area` with corners.
fn landings(t: &Reader<'_>, known: &Known<'_>) -> Option<RoutineLandings> {
    let area = t.optional("landing_area").map(|node| area_of(t, node, "landing_area"));
    match (t.has("landings"), area) {
        (true, Some(_)) => {
            t.fault("landing_area", text::EITHER_OR.with("first", "landings").with("second", "landing_area"), None);
            None
        }
        (_, Some(area)) => area.map(RoutineLandings::Within),
        (_, None) => {
            let node = t.required("landings", "landings = [\"bay\"]")?;
            let find =
                |item| known.landings.find(t, item, "landings", t.as_text(item, "landings")?, text::KIND_LANDING);
            all(t.as_list(node, "landings")?.iter().map(find).collect()).map(RoutineLandings::Named)
        }
    }
}
