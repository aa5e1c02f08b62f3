//! `[[crane]]`: other machines whose arm or load crosses the airspace.

use crate::ids::Ids;
use crate::job_file::all;
use crate::limits::{HEIGHT, SITE};
use crate::quantity_value::Bound::{UpTo, Within};
use crate::table::Reader;
use crate::text;
use crate::zone_section::times;
use planning::Crane;
use quantity::{Dimension as D, metres};

/// No arm reaches farther, m.
const FARTHEST: f64 = 200.0;

pub(crate) fn cranes(root: &Reader<'_>) -> Option<Vec<Crane>> {
    let mut ids = Ids::default();
    all(root.tables("crane").iter().map(|t| crane(t, &mut ids)).collect())
}

fn crane(t: &Reader<'_>, ids: &mut Ids) -> Option<Crane> {
    let id = ids.add(t);
    let name = t.text("name", "name = \"Tower crane 1\"");
    let at = t.fact_point("at", "at = [\"12.0 m\", \"30.0 m\"]", SITE);
    let radius = t.si("radius", D::Length, UpTo(FARTHEST));
    let tail = t.si_or_none("tail", D::Length, UpTo(FARTHEST));
    let tail_read = tail.is_some() || !t.has("tail");
    let low = t.si("from_height", D::Length, Within(-HEIGHT, HEIGHT));
    let high = t.si("to_height", D::Length, Within(-HEIGHT, HEIGHT));
    let times = times(t);
    let rule = t.text("rule", "rule = \"Ours waits while its hook is below 115 m.\"");
    let by = t.text("by", "by = \"A. Planner, site manager\"");
    t.done();
    if let (Some(low), Some(high)) = (low, high)
        && low >= high
    {
        let message = text::ORDER.with("key", "from_height").with("low", metres(low)).with("high", metres(high));
        t.fault("from_height", message, None);
    }
    tail_read.then_some(())?;
    Some(Crane {
        id: id?,
        name: name?,
        at: at?,
        radius: radius?,
        tail,
        heights: (low?, high?),
        times: times?,
        rule: rule?,
        by: by?,
    })
}
