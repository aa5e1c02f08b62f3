//! Where a machine may stand for one lift, seen from above.

mod areas;
mod frame;
mod looks;
mod machine;
mod rows;

use crate::labels::{Placer, Rect};
use crate::marks::{block, block_size};
use crate::style::{Ink, Style};
use crate::svg::{Anchor, Pen, Px, Svg, Type};
use crate::words::Words;
use areas::Areas;
use frame::Frame;
use planning::{FieldScene, FieldState, LiftPlan, PlanViewScene};
use wording::{Wording, ui};

pub(crate) use looks::{FieldLook, swatch};

/// Size of labels, px.
const SIZE: f64 = 12.5;
/// Areas named in the picture itself.
const NAMED: usize = 5;

/// The ground around the landing of a lift by what a stand there would give, north up, as SVG: machine and stand with
/// heading, how far off it may be, other stands by number, landing with the way its loads come in, and the areas by what
/// refuses them.
///
/// One scale for both axes; the root carries it as `data-px-per-m`, with the picture position of the place `data-east0`,
/// `data-north0` (m) as `data-x0` and `data-y0`. Shown is what matters: ground where a stand would do, stands and landing,
/// with some margin. Areas in the key are those of the whole field. Where the ground was not looked at, the drawing says so.
pub fn stand_field(lift: &LiftPlan, wording: &Wording, style: &Style) -> String {
    let words = Words::new(wording);
    let heading = format!("{}: {}", words.say(ui::STAND_FIELD), lift.name);
    let subtitle = words.machine(lift);
    let instead = || crate::marks::instead(style, &heading, &subtitle, &words.say(ui::FIELD_NOT_LOOKED));
    let (Some(field), Some(view)) = (&lift.field, &lift.plan_view) else { return instead() };
    let width = style.width();
    let mut svg = Svg::new(style.theme);
    let top = crate::marks::title(&mut svg, &heading, &subtitle, 10.0, width - 20.0);
    let Some(frame) = Frame::fit(lift, field, view, width, top) else { return instead() };
    let areas = Areas::of(field, &frame);
    let mut placer = Placer::new(frame.plot);
    let corner = north_room(&mut placer, &frame, &words);

    areas.draw(&mut svg, &frame);
    let step = grid(&mut svg, &mut placer, &frame);
    landing(&mut svg, &mut placer, &frame, view);
    machine::others(&mut svg, &mut placer, &frame, lift, view);
    machine::chosen(&mut svg, &mut placer, &frame, lift, view, &words);
    names(&mut svg, &mut placer, &frame, lift, view, &areas, &words);
    machine::numbers(&mut svg, &frame, lift);
    svg.rect(frame.plot, None, Some(Pen::new(Ink::Main, 1.2)));
    crate::marks::north(&mut svg, frame.plot, &corner);

    let y = frame.scale_bar(&mut svg, &words);
    let rows = rows::rows(lift, field, view, step, &words);
    let columns = if width >= 640.0 { 2 } else { 1 };
    let bottom = crate::key::draw(&mut svg, &rows, 10.0, y + 8.0, width - 20.0, columns);
    let about = words.say(
        ui::STAND_FIELD_ALT
            .with("lift", lift.name.as_str())
            .with("go", crate::words::area(field.area_m2(FieldState::Go)))
            .with("condition", crate::words::area(field.area_m2(FieldState::Condition)))
            .with("others", lift.other_stands.len()),
    );
    let origin = frame.px(frame.south_west);
    let data = [
        ("px-per-m", frame.scale),
        ("x0", origin.0),
        ("y0", origin.1),
        ("east0", frame.south_west.0),
        ("north0", frame.south_west.1),
    ];
    svg.finish(width, bottom + 8.0, &style.font_family, &heading, &about, &data)
}

/// Keeps the upper right corner free for the arrow to the north; its word.
fn north_room(placer: &mut Placer, frame: &Frame, words: &Words<'_>) -> String {
    let text = words.say(ui::NORTH);
    let w = crate::labels::text_width(&text, 12.0, true) + 32.0;
    placer.text(Rect { x: frame.plot.right() - w, y: frame.plot.y, w, h: 46.0 });
    text
}

/// Lines of the site's grid with their coordinates; returns how far apart, m.
fn grid(svg: &mut Svg, placer: &mut Placer, frame: &Frame) -> f64 {
    let step = crate::site_plan::round_step(70.0 / frame.scale).max(1.0);
    let (low, high) = (frame.south_west, frame.at((frame.plot.right(), frame.plot.y)));
    let kind = Type::plain(12.0).soft().halo();
    let figure = |v: f64| format!("{:.0}", v + 0.0).replace('-', "−");
    svg.open("grid");
    let mut lines = Vec::new();
    let mut figures: Vec<(Px, String, Anchor)> = Vec::new();
    let mut east = (low.0 / step).ceil() * step;
    while east < high.0 {
        let x = frame.px((east, low.1)).0;
        lines.push(((x, frame.plot.y), (x, frame.plot.bottom())));
        if x > frame.plot.x + 40.0 && x < frame.plot.right() - 30.0 {
            figures.push(((x, frame.plot.bottom() - 5.0), figure(east), Anchor::Middle));
        }
        east += step;
    }
    let mut north = (low.1 / step).ceil() * step;
    while north < high.1 {
        let y = frame.px((low.0, north)).1;
        lines.push(((frame.plot.x, y), (frame.plot.right(), y)));
        if y < frame.plot.bottom() - 26.0 && y > frame.plot.y + 14.0 {
            figures.push(((frame.plot.x + 4.0, y + 4.0), figure(north), Anchor::Start));
        }
        north += step;
    }
    svg.lines(&lines, Pen::new(Ink::Faint, 0.8));
    for (at, text, anchor) in figures {
        svg.text(at, &text, kind.at(anchor));
        let w = crate::labels::text_width(&text, 12.0, false);
        let left = if anchor == Anchor::Middle { at.0 - w / 2.0 } else { at.0 };
        placer.text(Rect { x: left, y: at.1 - 11.0, w, h: 14.0 });
    }
    svg.close();
    step
}

/// The landing, and from where its loads come in.
fn landing(svg: &mut Svg, placer: &mut Placer, frame: &Frame, view: &PlanViewScene) {
    let ring = frame.all(&view.landing);
    svg.open("landing");
    svg.polygon(&ring, Some(Ink::Load), Some(Pen::new(Ink::Main, 2.6)));
    if ring.len() == 4 {
        svg.lines(&[(ring[0], ring[2]), (ring[1], ring[3])], Pen::new(Ink::Main, 0.9));
    }
    if let Some(bounds) = Rect::of(&ring) {
        placer.solid(bounds);
    }
    if let Some((heading, _)) = view.approach.filter(|(h, _)| h.is_finite()) {
        let (sin, cos) = libm::sincos(heading.to_radians());
        let deep = |p: &(f64, f64)| (p.0 - view.landing_at.0) * sin + (p.1 - view.landing_at.1) * cos;
        let near = view.landing.iter().map(deep).fold(0.0, f64::min) * frame.scale;
        let c = frame.px(view.landing_at);
        let at = |ahead: f64| (c.0 + sin * ahead, c.1 - cos * ahead);
        // From its near edge inward: before it there is the distance to the tyres.
        let tip = near + (-1.5 * near).clamp(14.0, 30.0);
        crate::marks::arrow(svg, at(near + 3.0), at(tip), Ink::Main, 3.0);
    }
    svg.close();
}

/// Names of landing and stand, and of the largest areas.
fn names(
    svg: &mut Svg,
    placer: &mut Placer,
    frame: &Frame,
    lift: &LiftPlan,
    view: &PlanViewScene,
    areas: &Areas,
    words: &Words<'_>,
) {
    let widest = (frame.plot.w * 0.34).clamp(96.0, 190.0);
    svg.open("labels");
    let named = crate::labels::wrap(&lift.landing, SIZE, true, widest, 4);
    label(svg, placer, frame.px(view.landing_at), &named, Type::plain(SIZE).bold().halo(), 16.0);
    for (look, at) in areas.middles(frame, placer).into_iter().take(NAMED) {
        let text = crate::labels::wrap(&words.say(look.name()), SIZE, look.passes(), widest * 0.8, 3);
        let (w, h) = block_size(&text, SIZE, look.passes());
        let rect = Rect::around(at, w + 4.0, h);
        if placer.inside(rect) && placer.clash(rect.grown(4.0)) == 0.0 {
            placer.text(rect);
            let kind = Type::plain(SIZE).halo();
            block(svg, &text, rect, if look.passes() { kind.bold() } else { kind });
        }
    }
    svg.close();
}

/// A label beside a place, with a leader where it had to go further.
fn label(svg: &mut Svg, placer: &mut Placer, at: Px, text: &[String], kind: Type, gap: f64) {
    let (w, h) = block_size(text, kind.size, kind.bold);
    let placed = placer.place(at, w, h, gap, 60.0);
    if placed.far {
        svg.line(at, placed.rect.nearest(at), Pen::new(Ink::Main, 1.0));
    }
    block(svg, text, placed.rect, kind);
}

/// The field's cells as a grid: kind of each, row by row from the south; `None` where the field does not say.
fn cells(field: &FieldScene) -> Vec<Option<FieldLook>> {
    let mut out = vec![None; field.side.saturating_mul(field.side)];
    for (kind, row, column, count) in field.strips() {
        let look = field.kinds.get(kind).and_then(FieldLook::of);
        for i in column..column + count {
            if let Some(cell) = out.get_mut(row * field.side + i) {
                *cell = look;
            }
        }
    }
    out
}
