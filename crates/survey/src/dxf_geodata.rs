//! Where a drawing says that it lies on the earth. Only shown: what else the object may hold (scale
//! at sea level, a mesh of control points) is not understood well enough to move a site by it.

use crate::dxf_groups::Groups;
use crate::dxf_index::Drawing;
use crate::notes::Notes;
use crate::text;
use quantity::Quantity;

/// Says what the drawing offers.
pub(crate) fn offered(drawing: &Drawing<'_>, notes: &mut Notes<'_>) {
    let Some(entry) = drawing.geodata else { return };
    let line = entry.line as u64;
    // Group 11 is a place in the coordinate system, 10 the same place in the drawing.
    let found = Groups::of(drawing, &entry).ok();
    let points = found.as_ref().and_then(|g| Some((g.point(10)?, g.point(11)?)));
    let name = found.as_ref().and_then(system_name);
    let Some((design, reference)) = points else {
        notes.warn_line("survey::drawing-place", line, text::DRAWING_PLACE_UNREADABLE, text::DO_CHECK_CRS);
        return;
    };
    let message = text::DRAWING_PLACE
        .with("east", Quantity::number(design.x))
        .with("north", Quantity::number(design.y))
        .with("site_east", Quantity::number(reference.x))
        .with("site_north", Quantity::number(reference.y))
        .with("crs", name.unwrap_or_else(|| "?".to_owned()));
    notes.warn_line("survey::drawing-place", line, message, text::DO_STATE_SHIFT);
}

/// The `id` of the system in the XML of groups 303 and 301, at most 100 characters.
fn system_name(groups: &Groups<'_>) -> Option<String> {
    let xml: Vec<u8> = groups
        .pairs
        .iter()
        .filter(|p| p.code == 303 || p.code == 301)
        .filter_map(|p| p.value.text())
        .flatten()
        .copied()
        .take(4000)
        .collect();
    let xml = crate::dxf_words::decoded(&xml);
    let from = xml.find("CoordinateSystem id=\"")? + "CoordinateSystem id=\"".len();
    let name: String = xml[from..].chars().take_while(|&c| c != '"').take(100).collect();
    (!name.is_empty()).then_some(name)
}
