//! The machine from behind where it leans: a sketch of the machine, with the lean drawn true.

use crate::hatch::hatch;
use crate::labels::{line_height, wrap};
use crate::style::Ink;
use crate::svg::{Pen, Px, Svg, Type, n};
use crate::words::Words;
use planning::LiftPlan;
use quantity::{Dimension, Quantity};
use wording::ui;

/// Lean from which the view is drawn, rad: one degree.
const LEAN: f64 = core::f64::consts::PI / 180.0;
/// Size of the sketch, px.
const WIDTH: f64 = 230.0;
const HEIGHT: f64 = 150.0;
/// Pixels a metre of the sketch.
const SCALE: f64 = 36.0;

/// Lean of the machine to the left, rad, and the most it may be by the survey's error; `None`
/// where it is not known or too small to be worth a picture.
fn lean(lift: &LiftPlan) -> Option<(f64, f64)> {
    let across = lift.stand.slope_across?;
    let angle = libm::atan(across.nominal);
    let most = if angle >= 0.0 { libm::atan(across.high) } else { libm::atan(across.low) };
    let governs = lift.governing_finding().is_some_and(|f| f.check == "level");
    let steeper = lift.stand.slope_along.is_none_or(|along| across.nominal.abs() >= along.nominal.abs());
    (most.is_finite() && (angle.abs() > LEAN || (governs && steeper))).then_some((angle, most))
}

/// Draws the view below `top` at `x` and returns where it ends and how wide it is, or nothing
/// where the machine stands level.
pub(crate) fn draw(svg: &mut Svg, lift: &LiftPlan, words: &Words<'_>, x: f64, top: f64) -> Option<(f64, f64)> {
    let (lean, most) = lean(lift)?;
    svg.open("rear-view");
    let kind = Type::plain(13.0).bold();
    let q = |a: f64| Quantity::new(a.abs(), Dimension::Angle);
    let says = if lean >= 0.0 { ui::LEANS_LEFT } else { ui::LEANS_RIGHT }.with("angle", q(lean)).with("most", q(most));
    let mut y = top;
    let heading = format!("{}: {}", words.say(ui::REAR_VIEW), words.say(says));
    for line in wrap(&heading, kind.size, true, WIDTH, 3) {
        y += line_height(kind.size);
        svg.text((x, y - 3.0), &line, kind);
    }
    machine(svg, (x + WIDTH / 2.0, y + HEIGHT - 34.0), lean);
    y += HEIGHT;
    for line in wrap(&words.say(ui::REAR_SKETCH), 12.0, false, WIDTH, 3) {
        y += line_height(12.0);
        svg.text((x, y - 4.0), &line, Type::plain(12.0).soft());
    }
    svg.close();
    Some((y + 6.0, WIDTH))
}

/// The machine on its ground about `foot`, the middle between the wheels.
fn machine(svg: &mut Svg, foot: Px, lean: f64) {
    // Left is left; left lower turns the picture against the clock.
    let (sin, cos) = (libm::sin(lean), libm::cos(lean));
    let at = |p: (f64, f64)| (foot.0 + SCALE * (p.0 * cos - p.1 * sin), foot.1 - SCALE * (p.0 * sin + p.1 * cos));
    let part = |svg: &mut Svg, x: (f64, f64), z: (f64, f64), fill: Ink| {
        let corners = [(x.0, z.0), (x.1, z.0), (x.1, z.1), (x.0, z.1)].map(at);
        svg.polygon(&corners, Some(fill), Some(Pen::new(Ink::Main, 1.4)));
    };
    let ground = [(-2.2, 0.0), (2.2, 0.0), (2.2, -0.22), (-2.2, -0.22)].map(at);
    svg.polygon(&ground, Some(Ink::Ground), None);
    svg.lines(&hatch(&ground, 45.0, 6.0), Pen::new(Ink::Soft, 0.7));
    svg.line(ground[0], ground[1], Pen::new(Ink::Main, 2.0));
    part(svg, (-1.15, -0.72), (0.0, 1.2), Ink::Soft);
    part(svg, (0.72, 1.15), (0.0, 1.2), Ink::Soft);
    part(svg, (-0.72, 0.72), (0.45, 1.3), Ink::Body);
    part(svg, (-1.05, -0.2), (1.3, 2.45), Ink::Glass);
    part(svg, (-0.15, 0.25), (1.3, 1.85), Ink::Body);
    // Level and lean at the lower wheel, plumb and lean at the middle.
    let low = if lean >= 0.0 { -2.2 } else { 2.2 };
    let corner = at((low, 0.0));
    let across = 4.4 * SCALE * if lean >= 0.0 { 1.0 } else { -1.0 };
    svg.line(corner, (corner.0 + across, corner.1), Pen::dashed(Ink::Main, 1.0, "7 3"));
    let r = 3.6 * SCALE;
    let (from, to) =
        ((corner.0 + r * across.signum(), corner.1), (corner.0 + r * across.signum() * cos, corner.1 - r * sin.abs()));
    let sweep = i32::from(lean < 0.0);
    svg.path(
        &format!("M{} {}A{r} {r} 0 0 {sweep} {} {}", n(from.0), n(from.1), n(to.0), n(to.1), r = n(r)),
        None,
        Some(Pen::new(Ink::Danger, 2.0)),
    );
    svg.line((foot.0, foot.1), (foot.0, foot.1 - 2.9 * SCALE), Pen::dashed(Ink::Main, 1.0, "7 3"));
    svg.line(foot, at((0.0, 2.9)), Pen::dashed(Ink::Danger, 1.4, "8 3 2 3"));
}
