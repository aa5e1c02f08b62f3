//! A load chart by itself: no lift, no load.

use super::axes::Axes;
use super::{WIDE, finish, finite, key, zones};
use crate::key::{Row, Swatch};
use crate::labels::Placer;
use crate::style::Style;
use crate::svg::Svg;
use crate::words::{Words, length};
use machine::{Chart, Machine};
use planning::{ChartScene, ChartZoneScene};
use quantity::Si;
use wording::{Wording, ui};

/// A load chart of a machine as SVG, with the same axes and zones as the chart of a lift, and no point
/// read. Equal scale on both axes; the root carries it as [`crate::chart`] does.
pub fn machine_chart(machine: &Machine, chart: &Chart, wording: &Wording, style: &Style) -> String {
    let words = Words::new(wording);
    let attachment = machine.attachment(&chart.attachment);
    let name = attachment.map_or(chart.attachment.as_str(), |a| a.name.as_str());
    let support = words.support(chart.support);
    let heading = format!("{}: {}", words.say(ui::LOAD_CHART), machine.name);
    let subtitle = format!("{name} · {support}");
    let scene = finite(&scene(chart));
    let width = style.width();
    let mut svg = Svg::new(style.theme);
    let top = crate::marks::title(&mut svg, &heading, &subtitle, 10.0, width - 20.0);
    let Some(axes) = Axes::fit(&scene, if width >= WIDE { width * 0.6 } else { width }, top, &words) else {
        return crate::marks::instead(style, &heading, &subtitle, &words.say(ui::NO_CHART));
    };
    let mut placer = Placer::new(axes.plot);
    axes.grid(&mut svg, &words);
    zones::fills(&mut svg, &axes, &scene);
    let named = zones::names(&mut svg, &mut placer, &axes, &scene, &words);

    let mut rows = vec![Row::new(Swatch::None, words.pair(ui::REACH, &words.say(scene.datum.clone())))];
    if attachment.is_none_or(|a| !a.hangs()) {
        let rated = ui::RATED_LOAD_CENTRE.with("distance", length(scene.load_centre_m));
        rows.push(Row::new(Swatch::None, words.say(rated)));
    }
    rows.extend(zones::rows(&scene, &named, &words));
    rows.push(Row::new(Swatch::Strong, words.say(ui::MACHINE_DRAWN_FROM)));
    if machine.invented {
        rows.push(Row::new(Swatch::None, words.say(ui::INVENTED_DATA)));
    }
    let bottom = key(&mut svg, &axes, &rows, width, top);
    let about = words.say(
        ui::MACHINE_CHART_ALT
            .with("machine", machine.name.as_str())
            .with("attachment", name)
            .with("support", support)
            .with("count", chart.zones.len()),
    );
    finish(svg, &axes, (width, bottom), style, &heading, &about)
}

/// The chart as a scene without a point and without a load.
fn scene(chart: &Chart) -> ChartScene {
    let pair = |p: &geometry::DVec2| (p.x, p.y);
    let nowhere = (f64::NAN, f64::NAN);
    let zone = |z: &machine::Zone| ChartZoneScene {
        name: z.name.clone(),
        capacity_kg: z.capacity.si(),
        counted_kg: z.capacity.si(),
        reserve: 1.0,
        outline: z.outline.iter().map(pair).collect(),
    };
    ChartScene {
        zones: chart.zones.iter().map(zone).collect(),
        not_permitted: chart.not_permitted.iter().map(|a| a.iter().map(pair).collect()).collect(),
        at: nowhere,
        low: nowhere,
        high: nowhere,
        load_kg: 0.0,
        load_centre_m: chart.load_centre.si(),
        support: chart.support,
        cap_kg: None,
        datum: planning::datum_text(chart),
        zone: None,
    }
}
