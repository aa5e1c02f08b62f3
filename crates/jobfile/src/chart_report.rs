//! What is said of a chart once it can be read: by itself, against its machine, and what is doubtful.

use crate::chart_reach;
use crate::table::Reader;
use crate::text;
use evidence::{Message, Severity};
use machine::{Attachment, Chart, ChartProblem, Machine, Rise, RisesWith, chart_problems, more_out_of_level, rises};
use planning::{ChartDoubt, chart_doubts};
use quantity::{Dimension as D, Quantity, Si, kilograms, metres};

/// Where a zone stands in the file.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Places {
    pub(crate) outline: (usize, usize),
    pub(crate) capacity: (usize, usize),
}

/// Says what is wrong with the zones; false if anything is. Not for those of a table: they cannot
/// overlap, and what it leaves empty is declared not permitted there, no gap.
pub(crate) fn problems(t: &Reader<'_>, chart: &Chart, places: &[Places]) -> bool {
    let name = |i: usize| chart.zones.get(i).map_or("", |z| z.name.as_str());
    let area = |si: f64| Quantity::new(si, D::Area);
    let mut sound = true;
    for problem in chart_problems(chart) {
        sound = false;
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
        let span = zone.and_then(|z| places.get(z)).map_or(t.span(), |s| s.outline);
        t.document().error(span, Some(&t.path_of("zone")), message, hint);
    }
    sound
}

/// Warns that a chart is for other tyres than the machine stands on, or that nobody says which those are.
pub(crate) fn other_tyres(t: &Reader<'_>, machine: &Machine, chart: &Chart) {
    let tyres = chart.tyres.as_deref().unwrap_or_default();
    if let Some(fitted) = &machine.tyres {
        t.warning("tyres", text::CHART_OTHER_TYRES.with("tyres", tyres).with("fitted", fitted), None);
    } else {
        let hint = text::HINT_EXAMPLE.with("example", format!("tyres = \"{tyres}\""));
        t.warning("tyres", text::CHART_TYRES_UNSAID.with("tyres", tyres), Some(hint));
    }
}

/// Zones with more than machine and attachment carry, and zones that the boom does not reach.
pub(crate) fn against_machine(t: &Reader<'_>, machine: &Machine, known: &Attachment, chart: &Chart, places: &[Places]) {
    let most = machine.greatest_capacity.si().min(known.capacity.si());
    for (zone, place) in chart.zones.iter().zip(places) {
        if zone.capacity.si() > most + 1e-6 {
            let message = text::CHART_ABOVE_PLATE
                .with("zone", &zone.name)
                .with("capacity", zone.capacity)
                .with("most", kilograms(most));
            let hint = Some(text::HINT_ABOVE_PLATE.message());
            t.document().error(place.capacity, Some(&t.path_of("zone")), message, hint);
        }
        if !chart_reach::reaches(machine, known, chart, &zone.outline) {
            let message = text::CHART_OUT_OF_REACH.with("zone", &zone.name);
            t.document().error(place.outline, Some(&t.path_of("zone")), message, None);
        }
    }
}

/// Refuses two charts that differ by level condition alone, and of which that for rougher ground allows
/// more somewhere.
pub(crate) fn against_level(t: &Reader<'_>, machine: &Machine, one: &Chart, other: &Chart) {
    let (strict, rough) = if one.is_stricter_than(other) {
        (one, other)
    } else if other.is_stricter_than(one) {
        (other, one)
    } else {
        return;
    };
    let Some(attachment) = machine.attachment(&strict.attachment) else { return };
    let start = |chart: &Chart| chart.point_of(machine, attachment, geometry::DVec2::ZERO);
    for more in more_out_of_level(strict, rough, start(strict) - start(rough)) {
        let zone = &rough.zones[more.zone];
        let less = more.less.map(|i| strict.zones[i].capacity);
        let id = if less.is_some() { text::CHART_LEVEL_MORE } else { text::CHART_LEVEL_NOWHERE };
        let message = id
            .with("zone", &zone.name)
            .with("capacity", zone.capacity)
            .with("reach", metres(more.at.x))
            .with("height", metres(more.at.y));
        let message = less.map_or(message.clone(), |less| message.with("less", less));
        t.fault("level_sideways", message, Some(text::HINT_LEVEL_MORE.message()));
    }
}

/// Capacities that tip the machine by its own statics, zones in another unit, and rising capacity
/// that nobody has confirmed.
pub(crate) fn doubts(
    t: &Reader<'_>,
    machine: &Machine,
    known: &Attachment,
    chart: &Chart,
    places: &[Places],
    confirmed: bool,
) {
    let rises = rises(&chart.zones);
    let key = t.path_of("zone");
    for doubt in chart_doubts(machine, known, chart, &rises) {
        match doubt {
            ChartDoubt::Tips { zone, tipping_kg, at, fits_in_pounds } => {
                let message = text::CHART_TIPS
                    .with("zone", &chart.zones[zone].name)
                    .with("capacity", chart.zones[zone].capacity)
                    .with("tipping", kilograms(tipping_kg))
                    .with("reach", metres(at.x))
                    .with("height", metres(at.y));
                let hint = if fits_in_pounds { text::HINT_TIPS_POUNDS } else { text::HINT_TIPS };
                t.document().error(places[zone].capacity, Some(&key), message, Some(hint.message()));
            }
            ChartDoubt::OtherUnit { zone, other_kg, pounds } => {
                let id = if pounds { text::CHART_PERHAPS_POUNDS } else { text::CHART_PERHAPS_KILOGRAMS };
                let message = id
                    .with("zone", &chart.zones[zone].name)
                    .with("capacity", chart.zones[zone].capacity)
                    .with("other", kilograms(other_kg));
                t.document().report(Severity::Warning, places[zone].capacity, Some(&key), message, None);
            }
        }
    }
    if !confirmed {
        unconfirmed(t, chart, places, &rises);
    }
}

/// One warning for each zone and direction, naming the neighbour with least.
fn unconfirmed(t: &Reader<'_>, chart: &Chart, places: &[Places], rises: &[Rise]) {
    let kg = |i: usize| chart.zones[i].capacity.si();
    let least_of = |rise: &&Rise| {
        rises.iter().filter(|r| r.to == rise.to && r.with == rise.with).all(|r| kg(rise.from) <= kg(r.from))
    };
    let mut said: Vec<(usize, RisesWith)> = Vec::new();
    for rise in rises.iter().filter(least_of) {
        if said.contains(&(rise.to, rise.with)) {
            continue;
        }
        said.push((rise.to, rise.with));
        let id = match rise.with {
            RisesWith::Reach => text::CHART_RISES_REACH,
            RisesWith::Height => text::CHART_RISES_HEIGHT,
        };
        let message = id
            .with("zone", &chart.zones[rise.to].name)
            .with("capacity", chart.zones[rise.to].capacity)
            .with("other", &chart.zones[rise.from].name)
            .with("less", chart.zones[rise.from].capacity)
            .with("reach", metres(rise.at.x))
            .with("height", metres(rise.at.y));
        let hint = Some(text::HINT_RISES.message());
        t.document().report(Severity::Warning, places[rise.to].capacity, Some(&t.path_of("zone")), message, hint);
    }
}
