//! `[[chart.zone]]` and `not_permitted`: outlines, side by side or one inside the other.

use crate::chart_report::Places;
use crate::limits::{CHART, MASS};
use crate::quantity_value::Bound::UpTo;
use crate::table::Reader;
use crate::text;
use geometry::DVec2;
use machine::{NestedFault, Zone, nested_zones, outline_is_bad};
use quantity::{Dimension as D, Quantity, kilograms, metres};

/// A zone with where its outline and its capacity stand.
pub(crate) type ZoneRead = (Zone, Places);

/// The zones; of nested load lines those that follow from them.
pub(crate) fn zones(t: &Reader<'_>, unit: Option<&str>, nested: bool) -> Option<Vec<ZoneRead>> {
    if !t.has("zone") {
        t.missing("zone", "[[chart.zone]]");
        return None;
    }
    let read: Vec<Option<ZoneRead>> = t.tables("zone").iter().map(|z| zone(z, unit)).collect();
    let lines: Vec<ZoneRead> = read.into_iter().collect::<Option<_>>()?;
    if nested { in_each_other(t, lines) } else { Some(lines) }
}

fn zone(z: &Reader<'_>, unit: Option<&str>) -> Option<ZoneRead> {
    let name = z.text("name", "name = \"A\"");
    let capacity = z.si("capacity", D::Mass, UpTo(MASS));
    let node = z.required("outline", "outline = [[0.0, 0.0], [2.0, 0.0], [2.0, 3.0], [0.0, 3.0]]");
    let outline = node.and_then(|n| z.as_points(n, "outline", unit, 3, CHART));
    z.done();
    let zone = Zone { name: name?, capacity: kilograms(capacity?), outline: outline? };
    Some((zone, Places { outline: node?.span, capacity: z.optional("capacity")?.span }))
}

fn in_each_other(t: &Reader<'_>, lines: Vec<ZoneRead>) -> Option<Vec<ZoneRead>> {
    let (lines, places): (Vec<Zone>, Vec<Places>) = lines.into_iter().unzip();
    let fault = |line: usize, message, hint| {
        t.document().error(places[line].outline, Some(&t.path_of("zone")), message, hint);
    };
    let bad: Vec<usize> = (0..lines.len()).filter(|i| outline_is_bad(&lines[*i].outline)).collect();
    if !bad.is_empty() {
        for i in bad {
            fault(i, text::CHART_BAD_OUTLINE.with("zone", &lines[i].name), None);
        }
        return None;
    }
    match nested_zones(&lines) {
        Ok(zones) => Some(zones.into_iter().map(|(line, zone)| (zone, places[line])).collect()),
        Err(faults) => {
            for f in faults {
                match f {
                    NestedFault::Leaves { line, lower, area, at } => {
                        let message = text::CHART_LINE_LEAVES
                            .with("zone", &lines[line].name)
                            .with("lower", &lines[lower].name)
                            .with("area", Quantity::new(area, D::Area))
                            .with("reach", metres(at.x))
                            .with("height", metres(at.y));
                        fault(line, message, Some(text::HINT_LINE_LEAVES.message()));
                    }
                    NestedFault::Uncut { line } => {
                        fault(line, text::CHART_UNCUT.with("zone", &lines[line].name), None);
                    }
                }
            }
            None
        }
    }
}

/// Outlines of what the chart declares as not permitted.
pub(crate) fn areas(t: &Reader<'_>, unit: Option<&str>) -> Option<Vec<Vec<DVec2>>> {
    let Some(node) = t.optional("not_permitted") else { return Some(Vec::new()) };
    let read: Vec<Option<Vec<DVec2>>> = t
        .as_list(node, "not_permitted")?
        .iter()
        .map(|item| {
            let outline = t.as_points(item, "not_permitted", unit, 3, CHART)?;
            if outline_is_bad(&outline) {
                t.fault_at(item, "not_permitted", text::CHART_BAD_AREA.message(), None);
                return None;
            }
            Some(outline)
        })
        .collect();
    read.into_iter().collect()
}
