//! `[[chart.derating]]`: what the maker gives for load centres beyond the rated one.

use crate::limits::MASS;
use crate::quantity_value::Bound::UpTo;
use crate::table::Reader;
use crate::text;
use machine::{DeratingFault, DeratingRow, derating_fault};
use quantity::{Dimension as D, kilograms, metres};

/// The rows; none where the chart has no such table.
pub(crate) fn derating(t: &Reader<'_>, rated: Option<f64>) -> Option<Vec<DeratingRow>> {
    let tables = t.tables("derating");
    let rows: Vec<Option<DeratingRow>> = tables.iter().map(row).collect();
    let rows: Vec<DeratingRow> = rows.into_iter().collect::<Option<_>>()?;
    if let Some((i, fault)) = derating_fault(metres(rated?), &rows) {
        let (key, message) = match fault {
            DeratingFault::Order => {
                let before = if i == 0 { metres(rated?) } else { rows[i - 1].load_centre };
                let message = text::DERATING_ORDER.with("centre", rows[i].load_centre).with("before", before);
                ("load_centre", message)
            }
            DeratingFault::Rises => ("share", text::DERATING_RISES.with("centre", rows[i].load_centre)),
        };
        tables[i].fault(key, message, None);
        return None;
    }
    Some(rows)
}

fn row(t: &Reader<'_>) -> Option<DeratingRow> {
    let load_centre = t.si("load_centre", D::Length, UpTo(10.0));
    let share = t.si_or_none("share", D::Ratio, UpTo(1.0));
    let at_most = t.si_or_none("capacity_at_most", D::Mass, UpTo(MASS));
    let given = t.has("share") || t.has("capacity_at_most");
    t.done();
    if !given {
        t.fault("share", text::ONE_OF.with("first", "share").with("second", "capacity_at_most"), None);
    }
    // What is there and could not be read is a fault, not a table that leaves it open.
    let unread = (t.has("share") && share.is_none()) || (t.has("capacity_at_most") && at_most.is_none());
    if unread || !given {
        return None;
    }
    Some(DeratingRow {
        load_centre: metres(load_centre?),
        share: share.unwrap_or(1.0),
        at_most: at_most.map(kilograms),
    })
}
