//! What `survey` says: what was read, what is on the site, what is not known.

use super::options::word;
use super::text;
use crate::terminal;
use quantity::{Dimension, Quantity};
use survey::{Epsg, LikelySpan, Placed, SettledTops, SourceRecord, StoredSite, Used, known_area};
use wording::Wording;

fn metres(value: f64) -> Quantity {
    Quantity::new(value, Dimension::Length)
}

/// At most this many entries of a list are said; the file has them all.
const MOST: usize = 12;

/// Warnings that say why the coordinate system that a file names is not that of its numbers.
const REJECTED: [&str; 3] = ["survey::crs-overridden", "survey::crs-replaced", "survey::drawing-place"];

/// Names of the kinds of files, alike in every language.
fn kind(written: &str) -> &str {
    const KINDS: [(&str, &str); 9] = [
        ("las", "LAS"),
        ("laz", "LAZ"),
        ("geo-tiff", "GeoTIFF"),
        ("levels", "CSV"),
        ("land-xml", "LandXML"),
        ("dxf", "DXF"),
        ("geo-json", "GeoJSON"),
        ("shapefile", "Shapefile"),
        ("stored-site", "site"),
    ];
    KINDS.iter().find(|(word, _)| *word == written).map_or(written, |(_, name)| name)
}

/// What was left out, in words; layers and entities keep their names.
fn left_out(why: &str, wording: Wording) -> String {
    let known: [(&str, evidence::TextId); 14] = [
        ("not-ground", text::WHY_NOT_GROUND),
        ("unknown-cells", text::WHY_UNKNOWN_CELLS),
        ("withheld", text::WHY_WITHHELD),
        ("lone-points", text::WHY_LONE),
        ("left-out-as-stated", text::WHY_STATED),
        ("point-without-size", text::WHY_NO_SIZE),
        ("text", text::WHY_TEXT),
        ("line-without-course", text::WHY_NO_COURSE),
        ("line-far-from-the-site", text::WHY_FAR),
        ("excavation-without-outline", text::WHY_NO_OUTLINE),
        ("support-of-a-line", text::WHY_SUPPORT),
        ("voltage-not-plausible", text::WHY_VOLTAGE),
        ("top-below-ground", text::WHY_BELOW),
        ("outside-window", text::WHY_OUTSIDE),
    ];
    match known.iter().find(|(word, _)| *word == why) {
        Some((_, id)) => wording.render(&id.message()),
        None => why.to_owned(),
    }
}

fn list(entries: &std::collections::BTreeMap<String, u64>) -> String {
    let mut all: Vec<(&String, &u64)> = entries.iter().collect();
    all.sort_by(|a, b| b.1.cmp(a.1).then(a.0.cmp(b.0)));
    let more = if all.len() > MOST { ", …" } else { "" };
    let name = |n: &str| if n.is_empty() { "\"\"".to_owned() } else { n.to_owned() };
    all.iter().take(MOST).map(|(n, c)| format!("{} {c}", name(n))).collect::<Vec<_>>().join(", ") + more
}

/// What was read from one file.
pub(super) fn record(record: &SourceRecord, wording: Wording) {
    let say = |message: &evidence::Message| terminal::paragraph(&wording.render(message), "  ", "  ");
    let heading = text::READ_FILE.with("file", &record.file).with("kind", kind(&record.kind));
    if record.used == Used::Above {
        let heading = text::ABOVE.with("file", &record.file).with("count", record.count as usize);
        terminal::paragraph(&wording.render(&heading), "", "  ");
    } else {
        terminal::paragraph(&wording.render(&heading), "", "  ");
        say(&text::HOLDS.with("count", record.count as usize));
    }
    if let ([west, south, ..], [east, north, ..]) = (&record.min[..], &record.max[..]) {
        say(&text::EXTENT
            .with("width", metres(east - west))
            .with("depth", metres(north - south))
            .with("east", metres(*west))
            .with("north", metres(*south)));
    }
    if let ([_, _, low], [_, _, high]) = (&record.min[..], &record.max[..]) {
        say(&text::HEIGHTS.with("low", metres(*low)).with("high", metres(*high)));
    }
    if let Some(unit) = &record.unit {
        say(&text::UNIT.with("unit", unit));
    }
    if let Some(crs) = &record.crs {
        say(&text::SYSTEM.with("crs", crs));
    }
    let rejected: Vec<_> = record.notes.iter().filter(|n| REJECTED.contains(&n.code.as_str())).collect();
    if record.crs.is_none() && !rejected.is_empty() {
        say(&text::SYSTEM_NOT_KNOWN.message());
    }
    for note in rejected {
        say(&text::SYSTEM_REJECTED.with("why", note.message.clone()));
    }
    if !record.holds.is_empty() {
        say(&text::BY_KIND.with("list", list(&record.holds)));
    }
    if !record.left_out.is_empty() {
        let named = record.left_out.iter().map(|(why, n)| (left_out(why, wording), *n)).collect();
        say(&text::LEFT_OUT.with("list", list(&named)));
    }
    if !record.notes.is_empty() {
        say(&text::DOUBTS.with("count", record.notes.len()));
    }
}

/// What became of the shapes of a plan.
pub(super) fn placed(placed: &Placed, wording: Wording) {
    let say = |message: &evidence::Message| terminal::paragraph(&wording.render(message), "  ", "  ");
    say(&text::PLACED.with("count", placed.placed as usize));
    if placed.height_from_cloud > 0 {
        say(&text::FROM_CLOUD.with("count", placed.height_from_cloud as usize));
    }
    if placed.without_ground > 0 {
        say(&text::WITHOUT_GROUND.with("count", placed.without_ground as usize));
    }
    for layer in &placed.idle_rules {
        say(&text::IDLE_RULE.with("layer", layer));
    }
    for (layer, becomes) in &placed.guessed {
        say(&text::GUESSED.with("layer", layer).with("kind", word(*becomes)));
    }
    if let Some(layer) = placed.unnamed.keys().next() {
        say(&text::UNNAMED.with("list", list(&placed.unnamed)));
        say(&text::HINT_UNNAMED.with("layer", layer));
    }
}

/// Likely conductors, to be confirmed.
pub(super) fn likely(spans: &[LikelySpan], wording: Wording) {
    for (i, span) in spans.iter().enumerate() {
        let message = text::LIKELY_LINE
            .with("number", i + 1)
            .with("length", metres(span.from.truncate().distance(span.to.truncate())))
            .with("low", metres(span.from.z.min(span.to.z) - span.sag))
            .with("sag", metres(span.sag))
            .with("east", metres(span.from.x))
            .with("north", metres(span.from.y));
        terminal::paragraph(&wording.render(&message), "", "  ");
    }
    if !spans.is_empty() {
        terminal::paragraph(&wording.render(&text::HINT_LIKELY.message()), "", "");
    }
}

/// What new ground and clouds settled of things that were there before.
pub(super) fn settled(settled: SettledTops, wording: Wording) {
    let said = [
        (text::SETTLED, settled.from_ground),
        (text::SETTLED_FROM_CLOUD, settled.from_cloud),
        (text::SETTLED_BELOW, settled.below_ground),
    ];
    for (id, count) in said.into_iter().filter(|(_, count)| *count > 0) {
        terminal::paragraph(&wording.render(&id.with("count", count as usize)), "", "  ");
    }
}

/// What is on the site, and what is not known of it.
pub(super) fn site(stored: &StoredSite, wording: Wording) {
    let site = &stored.site;
    let say = |message: &evidence::Message| terminal::paragraph(&wording.render(message), "  ", "  ");
    terminal::line("");
    let heading = if site.name.is_empty() { text::SITE_UNNAMED.message() } else { text::SITE.with("name", &site.name) };
    terminal::paragraph(&wording.render(&heading), "", "  ");
    say(&match site.epsg.and_then(|code| u16::try_from(code).ok()).map(Epsg) {
        Some(code) => {
            let name = code.name().map_or_else(|| code.to_string(), |name| format!("{name} ({code})"));
            text::SITE_SYSTEM.with("crs", name)
        }
        None => text::SITE_SYSTEM_NOT_STATED.message(),
    });
    if site.ground.surfaces.is_empty() {
        say(&text::NO_GROUND.message());
    }
    for surface in &site.ground.surfaces {
        let id = if surface.date.is_some() { text::SURFACE } else { text::SURFACE_UNDATED };
        let message = id.with("name", &surface.name).with("accuracy", metres(surface.accuracy));
        say(&match &surface.date {
            Some(date) => message.with("date", date),
            None => message,
        });
        let known = Quantity::new(known_area(&surface.terrain), Dimension::Area);
        say(&text::KNOWN.with("area", known));
    }
    let around = &site.surroundings;
    say(&text::THINGS.with("count", around.things.len()));
    let unknown = around.things.iter().filter(|t| t.top().is_none()).count();
    if unknown > 0 {
        say(&text::THINGS_UNKNOWN.with("count", unknown));
    }
    if !stored.waiting.is_empty() {
        say(&text::WAITING.with("count", stored.waiting.len()));
    }
    if site.lines.is_empty() {
        say(&text::NO_LINES.message());
    } else {
        let heights = site.lines.iter().filter(|l| l.spans.is_empty()).count();
        let voltages = site.lines.iter().filter(|l| l.voltage.is_none()).count();
        let message = text::LINES.with("count", site.lines.len()).with("heights", heights);
        say(&message.with("voltages", voltages));
    }
    let others = [around.excavations.len(), around.buried.len(), around.zones.len()];
    if others.iter().any(|n| *n > 0) {
        let [digs, buried, zones] = others;
        say(&text::OTHERS.with("digs", digs).with("buried", buried).with("zones", zones));
    }
}
