//! Two machines side by side, on the terminal.

use super::compare::{AtPlace, ChartsCompared, Comparison, Pair};
use super::missing::heading;
use super::said_charts::support;
use super::text;
use crate::terminal;
use evidence::TextId;
use quantity::{Dimension, Quantity};
use std::fmt::Write as _;
use wording::{Wording, ui};

/// Width of a value's column.
const VALUE: usize = 15;

pub(super) fn print(comparison: &Comparison, w: Wording) {
    let (a, b) = &comparison.names;
    terminal::paragraph(&w.render(&text::COMPARE_TITLE.with("a", a).with("b", b)), "", "");
    heading(&w.text(text::COMPARE_DIMENSIONS));
    columns("", "A", "B");
    for pair in &comparison.dimensions {
        print_pair(pair, text::COMPARE_NO_ATTACHMENT, w);
    }
    heading(&w.text(text::COMPARE_CAPACITIES));
    for pair in &comparison.capacities {
        print_pair(pair, text::COMPARE_NO_ATTACHMENT, w);
    }
    for charts in &comparison.charts {
        print_charts(charts, a, b, w);
    }
    if !comparison.not_comparable.is_empty() {
        terminal::line("");
        for why in &comparison.not_comparable {
            terminal::paragraph(why, "? ", "  ");
        }
    }
    terminal::line("");
    terminal::paragraph(&w.text(text::COMPARE_NOT_GO), "", "");
}

fn print_pair(pair: &Pair, instead: TextId, w: Wording) {
    let both: Vec<Quantity> = pair.a.into_iter().chain(pair.b).collect();
    let mut shown = w.alike(&both).into_iter();
    let mut say = |q: Option<Quantity>| match q {
        Some(_) => shown.next().unwrap_or_default(),
        None => w.text(instead),
    };
    let (a, b) = (say(pair.a), say(pair.b));
    columns(&pair.what, &a, &b);
}

/// A row: what it is, wrapped, and two values at the right.
fn columns(what: &str, a: &str, b: &str) {
    let room = terminal::width().saturating_sub(2 * VALUE + 2).max(10);
    let lines = textwrap::wrap(what, textwrap::Options::new(room).subsequent_indent("  "));
    for (i, line) in lines.iter().enumerate() {
        if i + 1 < lines.len() {
            terminal::line(&format!("  {line}"));
        } else {
            let pad = room.saturating_sub(line.chars().count());
            terminal::line(&format!("  {line}{}{a:>VALUE$}{b:>VALUE$}", " ".repeat(pad)));
        }
    }
}

fn print_charts(charts: &ChartsCompared, a: &str, b: &str, w: Wording) {
    let length = |si: f64| Quantity::new(si, Dimension::Length);
    heading(&format!("{}: {}", w.text(text::COMPARE_AT), support(charts.support, w)));
    let datum = text::COMPARE_DATUM.with("centre", length(charts.load_centre_m));
    terminal::paragraph(&w.render(&datum), "  ", "  ");
    for difference in &charts.differences {
        terminal::paragraph(difference, "! ", "  ");
    }
    columns("", "A", "B");
    for at in &charts.at {
        let place = text::COMPARE_PLACE.with("reach", length(at.reach_m)).with("height", length(at.height_m));
        let kg = |kg: Option<f64>| kg.map(|kg| Quantity::new(kg, Dimension::Mass));
        print_pair(&Pair { what: w.render(&place), a: kg(at.a_kg), b: kg(at.b_kg) }, ui::NOT_PERMITTED, w);
    }
    if charts.grid.is_empty() {
        return;
    }
    heading(&format!("{}: {}", w.text(text::COMPARE_GRID), support(charts.support, w)));
    print_grid(&charts.grid, w);
    terminal::paragraph(&w.render(&text::COMPARE_KEY.with("a", a).with("b", b)), "  ", "  ");
}

/// Heights downwards, reach to the right.
fn print_grid(grid: &[AtPlace], w: Wording) {
    let (per_metre, unit) = Dimension::Length.axis(w.units());
    let number = |si: f64| {
        let text = format!("{:.1}", si * per_metre);
        text.strip_suffix(".0").map_or(text.clone(), str::to_owned)
    };
    let mut rows: Vec<(f64, String)> = Vec::new();
    for place in grid {
        if rows.last().is_none_or(|(height, _)| *height != place.height_m) {
            rows.push((place.height_m, String::new()));
        }
        if let Some((_, row)) = rows.last_mut() {
            let _ = write!(row, "{:>4}", cell(place));
        }
    }
    for (height, row) in &rows {
        terminal::line(&format!("  {:>6} {unit} |{row}", number(*height)));
    }
    let reaches = grid.iter().filter(|p| p.height_m == grid[0].height_m);
    let mut marks = String::new();
    for place in reaches {
        let _ = write!(marks, "{:>4}", number(place.reach_m));
    }
    let pad = " ".repeat(7 + unit.chars().count() + 2);
    terminal::line(&format!("  {pad}{marks} {unit}"));
}

fn cell(place: &AtPlace) -> &'static str {
    match (place.a_kg, place.b_kg) {
        (None, None) => ".",
        (Some(_), None) => "A+",
        (None, Some(_)) => "B+",
        (Some(a), Some(b)) if (a - b).abs() < 0.5 => "=",
        (Some(a), Some(b)) if a > b => "A",
        _ => "B",
    }
}
