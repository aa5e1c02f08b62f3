//! `[[chart]]` of a machine file: what it belongs to, and its parts put together.

use crate::chart_grid::Grid;
use crate::chart_report::Places;
use crate::chart_zones::ZoneRead;
use crate::node::{Node, Value};
use crate::quantity_value::Bound::{Within, ZeroTo};
use crate::schema_notes::{Kind, SeenValue};
use crate::table::Reader;
use crate::{chart_datum, chart_derating, chart_grid, chart_report, chart_zones, placeholder, text};
use evidence::Certainty;
use machine::{Attachment, Chart, ChartClash, ChartParts, LevelTolerance, Machine, SupportState};
use quantity::{Dimension as D, metres, radians};

/// A support state; "tires" is read as well.
pub(crate) fn support(t: &Reader<'_>) -> Option<SupportState> {
    t.expects("support", || Kind::Words(vec![String::from("tires")]));
    match t.optional("support").map(|node| &node.value) {
        Some(Value::Text(word)) if word == "tires" => {
            t.found("support", || SeenValue::Word(String::from("tyres")), t.source());
            Some(SupportState::Tyres)
        }
        _ => t.choice("support", &SupportState::WORDS),
    }
}

/// The charts of a machine whose other parts are known; `stands`: its masses can be right.
pub(crate) fn charts(tables: &[Reader<'_>], machine: &Machine, stands: bool) -> Vec<Chart> {
    let mut out: Vec<Chart> = Vec::new();
    for t in tables {
        let Some(chart) = chart(t, machine, stands) else { continue };
        if let Some(clash) = out.iter().find_map(|c| c.clash(&chart)) {
            let id = match clash {
                ChartClash::Twins => text::CHART_TWICE,
                ChartClash::Levels => text::CHART_LEVELS_CROSS,
            };
            let message =
                id.with("attachment", &chart.attachment).with("support", planning::support_name(chart.support));
            t.fault("attachment", message, Some(text::HINT_TELL_APART.message()));
        }
        for other in &out {
            chart_report::against_level(t, machine, other, &chart);
        }
        out.push(chart);
    }
    out
}

/// What a chart's capacities are printed as.
enum Printed {
    Zones(Vec<ZoneRead>),
    Table(Grid),
}

fn chart(t: &Reader<'_>, machine: &Machine, stands: bool) -> Option<Chart> {
    let attachment = t.text("attachment", "attachment = \"forks\"");
    let support = support(t);
    let tyres = t.text_or_none("tyres");
    let load_centre = t.si("load_centre", D::Length, ZeroTo(10.0));
    let load_centre_height = t.si_or_none("load_centre_height", D::Length, ZeroTo(10.0));
    let datum = chart_datum::datum(t);
    let sideways = t.si("level_sideways", D::Angle, Within(0.0, 15_f64.to_radians()));
    let fore_aft = t.si("level_fore_aft", D::Angle, Within(0.0, 15_f64.to_radians()));
    let certainty = certainty(t);
    let unit = t.list_unit();
    let not_permitted = chart_zones::areas(t, unit.as_deref());
    let nested = t.yes_no("nested").unwrap_or(false);
    let printed = if t.has("table") {
        for (key, there) in [("zone", t.has("zone")), ("nested", nested)] {
            if there {
                t.fault(key, text::EITHER_OR.with("first", key).with("second", "table"), None);
            }
        }
        t.table_or_none("table").and_then(|grid| chart_grid::grid(&grid, unit.as_deref())).map(Printed::Table)
    } else {
        chart_zones::zones(t, unit.as_deref(), nested).map(Printed::Zones)
    };
    let derating = chart_derating::derating(t, load_centre);
    // A confirmation still to be filled in is none.
    let confirmed = t.text_or_none("rises").is_some_and(|who| !placeholder::is_open(&who));
    t.done();

    let (attachment, support) = (attachment?, support?);
    let known = known_attachment(t, machine, &attachment);
    if !machine.has(support) {
        t.fault("support", text::CHART_NO_SUCH_SUPPORT.with("support", planning::support_name(support)), None);
    }
    let fits = match (known, &datum) {
        (Some(known), Some(datum)) => chart_datum::fits(t, datum, machine, known, load_centre_height.is_some()),
        _ => false,
    };
    let (datum, load_centre) = (datum?, load_centre?);
    let table = matches!(printed, Some(Printed::Table(_)));
    let mut not_permitted = not_permitted;
    let read = match printed? {
        Printed::Zones(zones) => zones,
        Printed::Table(grid) => {
            let (zones, empty) = grid.zones(t, machine, known?, &datum, load_centre, load_centre_height)?;
            not_permitted = not_permitted.map(|declared| declared.into_iter().chain(empty).collect());
            zones
        }
    };
    let (zones, places): (Vec<_>, Vec<Places>) = read.into_iter().unzip();
    let chart = Chart::new(ChartParts {
        attachment,
        support,
        tyres,
        load_centre: metres(load_centre),
        load_centre_height: load_centre_height.map(metres),
        datum,
        level: LevelTolerance { sideways: radians(sideways?), fore_aft: radians(fore_aft?) },
        zones,
        not_permitted: not_permitted?,
        derating: derating?,
        certainty: certainty?,
    });
    let sound = table || chart_report::problems(t, &chart, &places);
    if !machine.tyres_fit(&chart) {
        chart_report::other_tyres(t, machine, &chart);
    }
    if let Some(known) = known {
        chart_report::against_machine(t, machine, known, &chart, &places);
        // What follows from a fault said already is not said again.
        if sound && fits && stands {
            chart_report::doubts(t, machine, known, &chart, &places, confirmed);
        }
    }
    Some(chart)
}

fn certainty(t: &Reader<'_>) -> Option<Certainty> {
    let here = Node { value: Value::Nothing, span: t.span() };
    t.sourced(&here, "zone")
}

fn known_attachment<'m>(t: &Reader<'_>, machine: &'m Machine, id: &str) -> Option<&'m Attachment> {
    let known = machine.attachment(id);
    if known.is_none() {
        let ids: Vec<&str> = machine.attachments.iter().map(|a| a.id.as_str()).collect();
        let hint = text::HINT_KNOWN.with("known", ids.join(", "));
        let message = text::UNKNOWN_REFERENCE.with("kind", text::KIND_ATTACHMENT).with("id", id);
        t.fault("attachment", message, Some(hint));
    }
    known
}
