//! The load chart as we draw it: reach and height on rectangular axes, zones by what they leave
//! for this load, and the point read.

mod alone;
mod axes;
mod here;
mod zones;

pub use alone::machine_chart;

use crate::key::Row;
use crate::labels::{Placer, Rect};
use crate::style::Style;
use crate::svg::Svg;
use crate::words::{Words, length, mass};
use axes::Axes;
use planning::{ChartScene, LiftPlan};
use wording::{Wording, ui};

/// Width from which the key stands beside the plot, px.
const WIDE: f64 = 600.0;

/// The load chart of a lift as SVG. Equal scale on both axes; the root carries it as
/// `data-px-per-m`, with the picture position of reach 0, height 0 as `data-x0` and `data-y0`.
/// Without a chart the drawing says so.
pub fn chart(lift: &LiftPlan, wording: &Wording, style: &Style) -> String {
    let words = Words::new(wording);
    let heading = format!("{}: {}", words.say(ui::LOAD_CHART), lift.name);
    let subtitle = words.machine(lift);
    let Some(scene) = lift.chart.as_ref().map(finite) else {
        return crate::marks::instead(style, &heading, &subtitle, &words.say(ui::NO_CHART));
    };
    let width = style.width();
    let mut svg = Svg::new(style.theme);
    let top = crate::marks::title(&mut svg, &heading, &subtitle, 10.0, width - 20.0);
    let area = if width >= WIDE { width * 0.6 } else { width };
    let Some(axes) = Axes::fit(&scene, area, top, &words) else {
        return crate::marks::instead(style, &heading, &subtitle, &words.say(ui::NO_CHART));
    };
    let mut placer = Placer::new(axes.plot);

    axes.grid(&mut svg, &words);
    zones::fills(&mut svg, &axes, &scene);
    here::reserve_places(&mut placer, &axes, &scene, &words);
    let named = zones::names(&mut svg, &mut placer, &axes, &scene, &words);
    here::draw(&mut svg, &mut placer, &axes, &scene, &words);

    let mut rows = here::rows(lift, &scene, &words);
    rows.extend(zones::rows(&scene, &named, &words));
    let bottom = key(&mut svg, &axes, &rows, width, top);

    let about = words.say(
        ui::LOAD_CHART_ALT
            .with("lift", lift.name.as_str())
            .with("reach", length(scene.at.0))
            .with("height", length(scene.at.1))
            .with("capacity", scene.capacity().map_or(mass(0.0), mass)),
    );
    finish(svg, &axes, (width, bottom), style, &heading, &about)
}

/// The key beside the plot, below it where there is no room; returns where all ends.
fn key(svg: &mut Svg, axes: &Axes, rows: &[Row], width: f64, top: f64) -> f64 {
    let plot_bottom = axes.bottom();
    if width >= WIDE {
        let x = axes.plot.right() + 24.0;
        crate::key::draw(svg, rows, x, top + 8.0, width - 10.0 - x, 1).max(plot_bottom)
    } else {
        crate::key::draw(svg, rows, 10.0, plot_bottom + 6.0, width - 20.0, 1)
    }
}

fn finish(svg: Svg, axes: &Axes, size: (f64, f64), style: &Style, heading: &str, about: &str) -> String {
    let origin = axes.px((0.0, 0.0));
    let data = [("px-per-m", axes.scale), ("x0", origin.0), ("y0", origin.1)];
    svg.finish(size.0, size.1 + 8.0, &style.font_family, heading, about, &data)
}

/// Capacity that counts at the point read, kg, as the plan has it. `None` outside of all zones.
pub fn chart_capacity_kg(scene: &ChartScene) -> Option<f64> {
    scene.capacity()
}

/// Reading of a scene; every number is the plan's.
pub(crate) trait Read {
    /// Capacity that counts where the lift is read, kg. `None` outside all zones.
    fn capacity(&self) -> Option<f64>;
    /// True if a zone carries the load: its reserve is not below zero.
    fn carries(&self, zone: usize) -> bool;
}

impl Read for ChartScene {
    fn capacity(&self) -> Option<f64> {
        self.zones.get(self.zone?).map(|z| z.counted_kg)
    }
    fn carries(&self, zone: usize) -> bool {
        self.zones.get(zone).is_some_and(|z| z.reserve >= 0.0)
    }
}

/// The scene without corners that are not numbers.
fn finite(scene: &ChartScene) -> ChartScene {
    let ok = |p: &(f64, f64)| p.0.is_finite() && p.1.is_finite();
    let mut scene = scene.clone();
    for zone in &mut scene.zones {
        zone.outline.retain(ok);
    }
    for area in &mut scene.not_permitted {
        area.retain(ok);
    }
    scene
}

/// The smallest box about points of the scene.
pub(crate) fn extent(scene: &ChartScene) -> Option<Rect> {
    let mut points: Vec<(f64, f64)> = scene.zones.iter().flat_map(|z| z.outline.iter().copied()).collect();
    points.extend(scene.not_permitted.iter().flatten().copied());
    points.extend([scene.at, scene.low, scene.high].iter().filter(|p| p.0.is_finite() && p.1.is_finite()));
    Rect::of(&points)
}
