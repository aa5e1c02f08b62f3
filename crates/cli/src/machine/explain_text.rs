//! What a machine file says, on the terminal.

use super::explain::{Empty, Explained, Group, ValueSaid};
use super::missing::{counts, heading, print_checks, print_faults};
use super::said_charts::{ChartSaid, ZoneSaid};
use super::text;
use crate::terminal;
use evidence::Message;
use quantity::{Dimension, Quantity};
use wording::{Wording, ui};

/// Lists whose entries have at most so many values are printed one line an entry.
const SHORT: usize = 6;

pub(super) fn print(explained: &Explained, w: Wording) {
    let title = match &explained.name {
        Some(name) => name.clone(),
        None => w.render(&text::EXPLAIN_UNNAMED.with("file", &explained.file)),
    };
    terminal::paragraph(&title, "", "");
    if explained.invented {
        terminal::paragraph(&w.text(ui::INVENTED_DATA), "  ", "  ");
    }
    if !explained.usable {
        terminal::paragraph(&w.text(text::EXPLAIN_BROKEN), "  ", "  ");
    }
    for group in &explained.groups {
        print_group(group, w);
    }
    print_empty(&explained.empty, w);
    print_charts(explained, w);
    print_faults(&explained.missing.faults, w);
    heading(&w.text(text::EXPLAIN_MISSING));
    terminal::paragraph(&counts(&explained.missing, w), "  ", "  ");
    print_checks(&explained.missing, w);
    if !explained.missing.values.is_empty() {
        terminal::paragraph(&w.text(text::EXPLAIN_MORE), "  ", "  ");
        // A command is for copying: never broken.
        terminal::line(&format!("  counterpoise machine missing {}", explained.file));
    }
    terminal::line("");
    terminal::paragraph(&w.text(text::EXPLAIN_GOVERNS), "", "");
}

fn print_group(group: &Group, w: Wording) {
    let usual = group.sources.first();
    let sources = group.sources.iter().map(|s| w.certainty(*s)).collect::<Vec<_>>().join(", ");
    let title = group.title.to_uppercase();
    terminal::line("");
    terminal::paragraph(&if sources.is_empty() { title } else { format!("{title} ({sources})") }, "", "");
    let mut at = 0;
    let mut columns: Vec<&ValueSaid> = Vec::new();
    while let Some(value) = group.values.get(at) {
        let entry = entry(&value.key);
        let rest = &group.values[at..];
        let count = rest.iter().take_while(|v| self::entry(&v.key) == entry).count();
        let values = &rest[..count];
        let short = !entry.is_empty() && count <= SHORT;
        if short {
            let first = at == 0 || !same_list(&group.values[at - 1].key, entry);
            // The columns are found once a list, at its first entry.
            if first {
                columns = fullest(&group.values, entry);
            }
            print_short(values, &columns, usual, first, w);
        } else {
            print_long(values, entry, usual, w);
        }
        at += count;
    }
}

/// The entry of a list that a value stands in: `body[2]` of `body[2].mass`; "" outside of lists.
fn entry(key: &str) -> &str {
    key.rfind(']').map_or("", |at| &key[..=at])
}

/// True where a value stands in an entry of the same list.
fn same_list(key: &str, entry: &str) -> bool {
    let list = |path: &str| path.rfind('[').map(|at| path[..at].to_owned());
    !self::entry(key).is_empty() && list(self::entry(key)) == list(entry)
}

/// The measured values of the entry of the same list that has most of them: what the columns are.
fn fullest<'v>(all: &'v [ValueSaid], entry: &str) -> Vec<&'v ValueSaid> {
    let mut best: Vec<&ValueSaid> = Vec::new();
    let mut entries: Vec<&str> = Vec::new();
    for v in all.iter().filter(|v| same_list(&v.key, entry)) {
        let this = self::entry(&v.key);
        if entries.contains(&this) {
            continue;
        }
        entries.push(this);
        let of: Vec<&ValueSaid> = all.iter().filter(|o| self::entry(&o.key) == this && !is_name(o)).collect();
        if of.len() > best.len() {
            best = of;
        }
    }
    best
}

/// The last key of a path.
fn last(path: &str) -> &str {
    path.rsplit('.').next().unwrap_or(path)
}

/// Names of an entry, which stand before its values.
fn is_name(value: &ValueSaid) -> bool {
    value.quantities.is_empty() && ["name", "id", "kind"].contains(&value.key.rsplit('.').next().unwrap_or_default())
}

/// One line an entry; before the first one what the values are.
fn print_short(
    values: &[ValueSaid],
    keys: &[&ValueSaid],
    usual: Option<&evidence::Certainty>,
    first: bool,
    w: Wording,
) {
    let measured: Vec<&ValueSaid> = values.iter().filter(|v| !is_name(v)).collect();
    if first {
        let what: Vec<String> = keys.iter().map(|v| lower(&v.what)).collect();
        terminal::paragraph(&w.render(&text::EXPLAIN_EACH.with("what", what.join("; "))), "  ", "  ");
    }
    let mut names: Vec<&ValueSaid> = values.iter().filter(|v| is_name(v)).collect();
    names.sort_by_key(|v| last(&v.key) != "name");
    if names.first().is_some_and(|v| last(&v.key) == "name") {
        names.retain(|v| last(&v.key) != "id");
    }
    let names = names.iter().map(|v| v.value.as_str()).collect::<Vec<_>>().join(", ");
    let said: Vec<String> = keys
        .iter()
        .map(|key| {
            measured
                .iter()
                .find(|v| last(&v.key) == last(&key.key))
                .map_or_else(|| "?".to_owned(), |v| value(v, usual, w))
        })
        .collect();
    let number = entry(&values[0].key).rsplit('[').next().unwrap_or_default().trim_end_matches(']');
    let names = if names.is_empty() { number.to_owned() } else { names };
    terminal::paragraph(&format!("{names}: {}", said.join("; ")), "  ", "    ");
}

/// A value a line, under the name of its entry.
fn print_long(values: &[ValueSaid], entry: &str, usual: Option<&evidence::Certainty>, w: Wording) {
    let indent = if entry.is_empty() {
        "  "
    } else {
        let name = values.iter().find(|v| v.key.ends_with("].name")).map_or(entry, |v| v.value.as_str());
        terminal::paragraph(name, "  ", "  ");
        "    "
    };
    let mut around = String::new();
    let mut titled = false;
    for v in values {
        // Tables in tables have a name of their own: left and right blade.
        let inner = v.key[entry.len()..].trim_start_matches('.').rsplit_once('.').map_or("", |(t, _)| t);
        let table = inner.rsplit('.').next().unwrap_or_default();
        if !inner.is_empty() && inner != around && values.iter().any(|o| o.what == v.what && o.key != v.key) {
            let path = jobfile::pattern(&format!("{entry}.{inner}"));
            let path = path.trim_start_matches('.');
            let title = jobfile::field(jobfile::FileKind::Machine, path).map(|f| w.text(f.what));
            terminal::paragraph(&title.unwrap_or_else(|| table.to_owned()), indent, indent);
            titled = true;
        } else if inner != around {
            titled = false;
        }
        inner.clone_into(&mut around);
        let indent = if titled { format!("{indent}  ") } else { indent.to_owned() };
        let what = if v.what.is_empty() { v.key.clone() } else { v.what.clone() };
        let rest = format!("{indent}  ");
        terminal::paragraph(&format!("{what}: {}", value(v, usual, w)), &indent, &rest);
    }
}

/// A value, with its source where it is not the usual one of its table.
fn value(v: &ValueSaid, usual: Option<&evidence::Certainty>, w: Wording) -> String {
    let mut notes = Vec::new();
    if v.to_fill_in {
        notes.push(lower(&w.text(text::MISSING_FILL_IN)));
    }
    if let Some(source) = v.source.filter(|s| !v.quantities.is_empty() && Some(s) != usual) {
        notes.push(w.certainty(source));
    }
    if notes.is_empty() { v.value.clone() } else { format!("{} ({})", v.value, notes.join(", ")) }
}

fn lower(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| first.to_lowercase().chain(letters).collect())
}

fn length(si: f64) -> Quantity {
    Quantity::new(si, Dimension::Length)
}

fn mass(si: f64) -> Quantity {
    Quantity::new(si, Dimension::Mass)
}

fn angle(si: f64) -> Quantity {
    Quantity::new(si, Dimension::Angle)
}

fn print_empty(empty: &[Empty], w: Wording) {
    if empty.is_empty() {
        return;
    }
    heading(&w.text(text::EXPLAIN_EMPTY));
    for e in empty {
        let line = text::EXPLAIN_EMPTY_LINE
            .with("attachment", &e.attachment)
            .with("angle", angle(e.boom_angle_rad))
            .with("mass", mass(e.mass_kg))
            .with("front", mass(e.front_axle_kg))
            .with("rear", mass(e.rear_axle_kg));
        let mut said = w.render(&line);
        // A hand's breadth is worth a word.
        if e.centre_left_m.abs() >= 0.005 {
            let side = if e.centre_left_m > 0.0 { planning::text::SIDE_LEFT } else { planning::text::SIDE_RIGHT };
            let side = text::EXPLAIN_EMPTY_SIDE.with("offset", length(e.centre_left_m.abs())).with("side", side);
            said = format!("{said} {}", w.render(&side));
        }
        terminal::paragraph(&said, "  ", "    ");
    }
    terminal::paragraph(&w.text(text::EXPLAIN_WEIGHBRIDGE), "  ", "  ");
}

fn print_charts(explained: &Explained, w: Wording) {
    heading(&w.text(text::EXPLAIN_CHARTS));
    if explained.charts.is_empty() {
        terminal::paragraph(&w.text(text::EXPLAIN_NO_CHARTS), "  ", "  ");
    }
    for chart in &explained.charts {
        print_chart(chart, w);
    }
}

fn print_chart(chart: &ChartSaid, w: Wording) {
    let source = chart.source.map(|s| format!(" ({})", w.certainty(s))).unwrap_or_default();
    let titles = [chart.attachment.as_str(), chart.support.as_str()];
    let title = titles.iter().filter(|t| !t.is_empty()).copied().collect::<Vec<_>>().join(", ");
    terminal::paragraph(&format!("{title}{source}"), "  ", "  ");
    let say = |message: Message| terminal::paragraph(&w.render(&message), "    ", "      ");
    if let (Some(reach), Some(height)) = (&chart.reach, &chart.height) {
        say(text::EXPLAIN_DATUM.with("reach", reach).with("height", height));
    }
    if let Some(centre) = chart.load_centre_m {
        say(text::EXPLAIN_RATED.with("centre", length(centre)));
    }
    if let Some((sideways, fore_aft)) = chart.level_rad {
        say(text::EXPLAIN_LEVEL.with("sideways", angle(sideways)).with("fore_aft", angle(fore_aft)));
    }
    let zone = |message: Message, z: &ZoneSaid| {
        message
            .with("capacity", mass(z.capacity_kg))
            .with("zone", &z.name)
            .with("reach_low", length(z.reach_m.0))
            .with("reach_high", length(z.reach_m.1))
            .with("height_low", length(z.height_m.0))
            .with("height_high", length(z.height_m.1))
    };
    if let Some(greatest) = &chart.greatest {
        say(zone(text::EXPLAIN_GREATEST.with("count", chart.zones), greatest));
    }
    if let Some(least) = &chart.least {
        say(zone(text::EXPLAIN_LEAST.message(), least));
    }
    if chart.not_permitted > 0 {
        say(text::EXPLAIN_NOT_PERMITTED.with("count", chart.not_permitted));
    }
}
