//! `[[chart]]` of a machine file.

use crate::limits::{CHART, MASS};
use crate::node::{Node, Value};
use crate::quantity_value::Bound::{UpTo, Within, ZeroTo};
use crate::table::Reader;
use crate::{chart_reach, text};
use evidence::{Certainty, Message};
use geometry::DVec2;
use machine::{
    AttachmentKind, Chart, ChartParts, ChartProblem, Datum, HeightTo, LevelTolerance, Machine, ReachFrom, ReachTo,
    SupportState, Zone, chart_problems,
};
use quantity::{Dimension as D, Quantity, kilograms, metres, radians};

const REACH_FROM: [(&str, ReachFrom); 2] =
    [("front-tyre-face", ReachFrom::FrontTyreFace), ("front-axle", ReachFrom::FrontAxle)];
const REACH_TO: [(&str, ReachTo); 3] =
    [("load-centre", ReachTo::LoadCentre), ("fork-heel", ReachTo::ForkHeel), ("hook", ReachTo::Hook)];
const HEIGHT_TO: [(&str, HeightTo); 2] = [("fork-top", HeightTo::ForkTop), ("hook", HeightTo::Hook)];

/// A support state; "tires" is read as well.
pub(crate) fn support(t: &Reader<'_>) -> Option<SupportState> {
    match t.optional("support").map(|node| &node.value) {
        Some(Value::Text(word)) if word == "tires" => Some(SupportState::Tyres),
        _ => t.choice("support", &SupportState::WORDS),
    }
}

/// The charts of a machine whose other parts are known.
pub(crate) fn charts(tables: &[Reader<'_>], machine: &Machine) -> Vec<Chart> {
    let mut out: Vec<Chart> = Vec::new();
    for t in tables {
        let Some(chart) = chart(t, machine) else { continue };
        let twin = |c: &Chart| {
            c.attachment == chart.attachment && c.support == chart.support && c.load_centre == chart.load_centre
        };
        if out.iter().any(twin) {
            let support = chart.support.word();
            t.fault(
                "attachment",
                text::CHART_TWICE.with("attachment", &chart.attachment).with("support", support),
                None,
            );
        }
        out.push(chart);
    }
    out
}

fn chart(t: &Reader<'_>, machine: &Machine) -> Option<Chart> {
    let attachment = t.text("attachment", "attachment = \"forks\"");
    let support = support(t);
    let load_centre = t.si("load_centre", D::Length, ZeroTo(10.0));
    let load_centre_height = t.si_or_none("load_centre_height", D::Length, ZeroTo(10.0));
    let reach_from = t.choice("reach_from", &REACH_FROM);
    let reach_to = t.choice("reach_to", &REACH_TO);
    let height_to = t.choice("height_to", &HEIGHT_TO);
    let sideways = t.si("level_sideways", D::Angle, Within(0.0, 15_f64.to_radians()));
    let fore_aft = t.si("level_fore_aft", D::Angle, Within(0.0, 15_f64.to_radians()));
    let certainty = certainty(t);
    let unit = t.list_unit();
    let not_permitted = areas(t, unit.as_deref());
    let zones = zones(t, unit.as_deref());
    t.done();

    let attachment = attachment?;
    let support = support?;
    let known = known_attachment(t, machine, &attachment);
    if !machine.has(support) {
        t.fault("support", text::CHART_NO_SUCH_SUPPORT.with("support", planning::support_name(support)), None);
    }
    let datum = Datum { reach_from: reach_from?, reach_to: reach_to?, height_to: height_to? };
    if let Some(known) = known {
        datum_fits(t, datum, &known.kind, &attachment);
    }
    let (zones, spans): (Vec<Zone>, Vec<ZoneSpans>) = zones?.into_iter().unzip();
    let chart = Chart::new(ChartParts {
        attachment,
        support,
        load_centre: metres(load_centre?),
        load_centre_height: load_centre_height.map(metres),
        datum,
        level: LevelTolerance { sideways: radians(sideways?), fore_aft: radians(fore_aft?) },
        zones,
        not_permitted: not_permitted?,
        certainty: certainty?,
    });
    problems(t, &chart, &spans);
    if let Some(known) = known {
        let most = quantity::Si::si(&machine.greatest_capacity).min(quantity::Si::si(&known.capacity));
        for (zone, span) in chart.zones.iter().zip(&spans) {
            if quantity::Si::si(&zone.capacity) > most + 1e-6 {
                let message = text::CHART_ABOVE_PLATE
                    .with("zone", &zone.name)
                    .with("capacity", zone.capacity)
                    .with("most", kilograms(most));
                let hint = Some(text::HINT_ABOVE_PLATE.message());
                t.document().error(span.capacity, Some(&t.path_of("zone")), message, hint);
            }
            if !chart_reach::reaches(machine, known, &chart, &zone.outline) {
                let message = text::CHART_OUT_OF_REACH.with("zone", &zone.name);
                t.document().error(span.outline, Some(&t.path_of("zone")), message, None);
            }
        }
    }
    Some(chart)
}

fn certainty(t: &Reader<'_>) -> Option<Certainty> {
    let here = Node { value: Value::Nothing, span: t.span() };
    t.sourced(&here, "zone")
}

fn known_attachment<'m>(t: &Reader<'_>, machine: &'m Machine, id: &str) -> Option<&'m machine::Attachment> {
    let known = machine.attachment(id);
    if known.is_none() {
        let ids: Vec<&str> = machine.attachments.iter().map(|a| a.id.as_str()).collect();
        let hint = text::HINT_KNOWN.with("known", ids.join(", "));
        let message = text::UNKNOWN_REFERENCE.with("kind", text::KIND_ATTACHMENT).with("id", id);
        t.fault("attachment", message, Some(hint));
    }
    known
}

/// A hook has no fork heel, and forks have no hook.
fn datum_fits(t: &Reader<'_>, datum: Datum, kind: &AttachmentKind, attachment: &str) {
    let hangs = matches!(kind, AttachmentKind::Jib(_));
    let says = |key: &str, word: &str| {
        t.fault(key, text::DATUM_MISMATCH.with("datum", word).with("attachment", attachment), None);
    };
    if (datum.reach_to == ReachTo::Hook) != hangs {
        says("reach_to", if hangs { "hook" } else { "load-centre, fork-heel" });
    }
    if (datum.height_to == HeightTo::Hook) != hangs {
        says("height_to", if hangs { "hook" } else { "fork-top" });
    }
}

/// A zone with where its outline and its capacity stand.
type ZoneRead = (Zone, ZoneSpans);

#[derive(Clone, Copy)]
struct ZoneSpans {
    outline: (usize, usize),
    capacity: (usize, usize),
}

fn zones(t: &Reader<'_>, unit: Option<&str>) -> Option<Vec<ZoneRead>> {
    if !t.has("zone") {
        t.missing("zone", "[[chart.zone]]");
        return None;
    }
    let read: Vec<Option<ZoneRead>> = t
        .tables("zone")
        .iter()
        .map(|z| {
            let name = z.text("name", "name = \"A\"");
            let capacity = z.si("capacity", D::Mass, UpTo(MASS));
            let node = z.required("outline", "outline = [[0.0, 0.0], [2.0, 0.0], [2.0, 3.0], [0.0, 3.0]]");
            let outline = node.and_then(|n| z.as_points(n, "outline", unit, 3, CHART));
            z.done();
            let zone = Zone { name: name?, capacity: kilograms(capacity?), outline: outline? };
            let capacity = z.optional("capacity")?.span;
            Some((zone, ZoneSpans { outline: node?.span, capacity }))
        })
        .collect();
    read.into_iter().collect()
}

fn areas(t: &Reader<'_>, unit: Option<&str>) -> Option<Vec<Vec<DVec2>>> {
    let Some(node) = t.optional("not_permitted") else { return Some(Vec::new()) };
    let read: Vec<Option<Vec<DVec2>>> = t
        .as_list(node, "not_permitted")?
        .iter()
        .map(|item| t.as_points(item, "not_permitted", unit, 3, CHART))
        .collect();
    read.into_iter().collect()
}

fn problems(t: &Reader<'_>, chart: &Chart, spans: &[ZoneSpans]) {
    let name = |i: usize| chart.zones.get(i).map_or("", |z| z.name.as_str());
    let area = |si: f64| Quantity::new(si, D::Area);
    for problem in chart_problems(chart) {
        let hint = match problem {
            ChartProblem::Hole { .. } => Some(text::HINT_NOT_PERMITTED.message()),
            ChartProblem::Overlap { .. } => Some(text::HINT_OVERLAP.message()),
            _ => None,
        };
        let (zone, message): (Option<usize>, Message) = match problem {
            ChartProblem::NoZones => (None, text::MISSING_KEY.with("key", "zone")),
            ChartProblem::BadOutline { zone } => (Some(zone), text::CHART_BAD_OUTLINE.with("zone", name(zone))),
            ChartProblem::Overlap { first, second, area: shared, at } => (
                Some(second),
                text::CHART_OVERLAP
                    .with("zone", name(second))
                    .with("other", name(first))
                    .with("area", area(shared))
                    .with("reach", metres(at.x))
                    .with("height", metres(at.y)),
            ),
            ChartProblem::Hole { at, area: hole } => (
                None,
                text::CHART_HOLE.with("area", area(hole)).with("reach", metres(at.x)).with("height", metres(at.y)),
            ),
            ChartProblem::Pieces { count } => (None, text::CHART_PIECES.with("count", count)),
        };
        let span = zone.and_then(|z| spans.get(z)).map_or(t.span(), |s| s.outline);
        t.document().error(span, Some(&t.path_of("zone")), message, hint);
    }
}
