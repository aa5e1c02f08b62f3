//! Side elevation of one lift, to scale and dimensioned.

mod dimensions;
mod frame;
mod ground;
mod notes;
mod overhead;
mod rear;
mod truck;

use crate::labels::Placer;
use crate::style::Style;
use crate::svg::Svg;
use crate::words::Words;
use frame::Frame;
pub(crate) use frame::finite;
use planning::LiftPlan;
use wording::{Wording, ui};

/// Side elevation of a lift as SVG: the machine posed on the ground as surveyed, load, landing,
/// overhead lines with their required distance, dimensions, scale bar and key.
///
/// Equal scale on both axes; the root carries it as `data-px-per-m`, with the picture position of
/// the scene's `s = 0, z = 0` as `data-x0` and `data-y0`. Where the machine could not be posed,
/// the drawing says so.
pub fn elevation(lift: &LiftPlan, wording: &Wording, style: &Style) -> String {
    let words = Words::new(wording);
    let heading = format!("{}: {}", words.say(ui::SIDE_VIEW), lift.name);
    let subtitle = words.machine(lift);
    let Some(scene) = lift.elevation.as_ref().map(frame::finite) else {
        return crate::marks::instead(style, &heading, &subtitle, &words.say(ui::NOT_POSED));
    };
    let width = style.width();
    let mut svg = Svg::new(style.theme);
    let top = crate::marks::title(&mut svg, &heading, &subtitle, 10.0, width - 20.0);
    let Some(frame) = Frame::fit(&scene, width, top) else {
        return crate::marks::instead(style, &heading, &subtitle, &words.say(ui::NOT_POSED));
    };
    let mut placer = Placer::new(frame.plot);

    overhead::rings(&mut svg, &mut placer, &frame, &scene);
    ground::draw(&mut svg, &mut placer, &frame, &scene);
    truck::landing(&mut svg, &mut placer, &frame, &scene);
    truck::machine(&mut svg, &mut placer, &frame, &scene);
    truck::load(&mut svg, &mut placer, &frame, &scene);
    overhead::conductors(&mut svg, &mut placer, &frame, &scene);
    overhead::nearest(&mut svg, &mut placer, &frame, &scene, &words);
    dimensions::draw(&mut svg, &mut placer, &frame, &scene, lift, &words);
    notes::labels(&mut svg, &mut placer, &frame, &scene, lift, &words);

    let y = notes::scale_bar(&mut svg, &frame, &words);
    let rows = notes::rows(lift, &scene, &frame, &words);
    let wide = width >= 560.0;
    let bottom = match rear::draw(&mut svg, lift, &words, 10.0, y + 8.0) {
        Some((end, w)) if wide => {
            let x = 10.0 + w + 24.0;
            crate::key::draw(&mut svg, &rows, x, y + 8.0, width - 10.0 - x, 1).max(end)
        }
        Some((end, _)) => crate::key::draw(&mut svg, &rows, 10.0, end + 4.0, width - 20.0, 1),
        None => crate::key::draw(&mut svg, &rows, 10.0, y + 8.0, width - 20.0, if wide { 2 } else { 1 }),
    };

    let about = words.say(
        ui::SIDE_VIEW_ALT
            .with("lift", lift.name.as_str())
            .with("reach", crate::words::length(notes::reach(lift, &scene)))
            .with("height", crate::words::length(notes::height(lift, &scene))),
    );
    let origin = frame.px((0.0, 0.0));
    let data = [("px-per-m", frame.scale), ("x0", origin.0), ("y0", origin.1)];
    svg.finish(width, bottom + 8.0, &style.font_family, &heading, &about, &data)
}
