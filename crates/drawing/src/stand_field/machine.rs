//! The machine at its stand, how far off it may be, and other stands.

use super::frame::Frame;
use crate::labels::{Placer, Rect};
use crate::marks::{arrow, block, block_size, dimension};
use crate::style::Ink;
use crate::svg::{Pen, Svg, Type};
use crate::words::Words;
use evidence::Verdict;
use planning::{LiftPlan, PlanViewScene};
use wording::ui;

/// A stand in the picture.
#[derive(Debug, Clone, Copy)]
pub(super) struct Placed {
    at: (f64, f64),
    /// Straight ahead, east and north.
    ahead: (f64, f64),
}

impl Placed {
    fn of(east: f64, north: f64, heading_deg: f64) -> Option<Self> {
        let (sin, cos) = libm::sincos(heading_deg.to_radians());
        let all = [east, north, sin, cos].iter().all(|v| v.is_finite());
        all.then_some(Self { at: (east, north), ahead: (sin, cos) })
    }
    /// A place of the machine's frame, east and north, m.
    pub(super) fn place(&self, p: (f64, f64)) -> (f64, f64) {
        let (sin, cos) = self.ahead;
        (self.at.0 + p.0 * sin - p.1 * cos, self.at.1 + p.0 * cos + p.1 * sin)
    }
    fn ring(&self, ring: &[(f64, f64)]) -> Vec<(f64, f64)> {
        ring.iter().map(|p| self.place(*p)).collect()
    }
}

/// The stand of a lift, where it has one.
fn stand(lift: &LiftPlan) -> Option<Placed> {
    Placed::of(lift.stand.east_m, lift.stand.north_m, lift.stand.heading_deg)
}

/// Every stand in the picture.
pub(super) fn stands(lift: &LiftPlan) -> Vec<Placed> {
    let others = lift.other_stands.iter().filter_map(|s| Placed::of(s.east_m, s.north_m, s.heading_deg));
    stand(lift).into_iter().chain(others).collect()
}

fn other_places(lift: &LiftPlan) -> impl Iterator<Item = (usize, Placed)> + '_ {
    let placed = |s: &planning::FoundStand| Placed::of(s.east_m, s.north_m, s.heading_deg);
    lift.other_stands.iter().enumerate().filter_map(move |(i, s)| Some((i + 1, placed(s)?)))
}

/// Other stands: their outline in broken line.
pub(super) fn others(svg: &mut Svg, placer: &mut Placer, frame: &Frame, lift: &LiftPlan, view: &PlanViewScene) {
    svg.open("other-outlines");
    for (_, at) in other_places(lift) {
        let body = frame.all(&at.ring(&view.body));
        svg.polygon(&body, None, Some(Pen::new(Ink::Sheet, 4.0)));
        svg.polygon(&body, None, Some(Pen::dashed(Ink::Main, 1.6, "7 4")));
        for k in 0..body.len() {
            placer.line(body[k], body[(k + 1) % body.len()]);
        }
        placer.text(Rect::around(frame.px(at.at), 22.0, 22.0));
    }
    svg.close();
}

/// Their numbers, each with where the machine heads: last, so that nothing lies on them.
pub(super) fn numbers(svg: &mut Svg, frame: &Frame, lift: &LiftPlan) {
    svg.open("other-stands");
    for (number, at) in other_places(lift) {
        let c = frame.px(at.at);
        let ahead = |px: f64| (c.0 + at.ahead.0 * px, c.1 - at.ahead.1 * px);
        arrow(svg, ahead(9.0), ahead(25.0), Ink::Main, 1.8);
        crate::marks::numbered(svg, c, number);
    }
    svg.close();
}

/// The machine at the stand of the lift: outline, tyres, the boom's line to the landing, how far off it may be, and from the
/// tyres' front to the landing.
pub(super) fn chosen(
    svg: &mut Svg,
    placer: &mut Placer,
    frame: &Frame,
    lift: &LiftPlan,
    view: &PlanViewScene,
    words: &Words<'_>,
) {
    let Some(at) = stand(lift) else { return };
    let refused = lift.verdict == Verdict::NoGo;
    let body = frame.all(&at.ring(&view.body));
    svg.open("machine");
    let edge = if refused { Pen::dashed(Ink::Danger, 2.6, "9 4") } else { Pen::new(Ink::Main, 2.4) };
    // The body is an outline only: the ground that matters most lies under it.
    for ring in &view.contacts {
        svg.polygon(&frame.all(&at.ring(ring)), Some(Ink::Body), Some(Pen::new(Ink::Main, 1.2)));
    }
    svg.polygon(&body, None, Some(Pen::new(Ink::Sheet, 5.5)));
    svg.polygon(&body, None, Some(edge));
    if let Some(bounds) = Rect::of(&body) {
        // A machine that stands askew fills about half of what bounds it.
        placer.solid(bounds.grown(-bounds.w.min(bounds.h) * 0.12));
    }
    for k in 0..body.len() {
        placer.line(body[k], body[(k + 1) % body.len()]);
    }
    svg.close();

    svg.open("heading");
    let rear = view.body.iter().map(|p| p.0).fold(0.0, f64::min);
    // Behind the front axle, where the place itself is marked.
    let (tail, tip) = (frame.px(at.place((rear * 0.9, 0.0))), frame.px(at.place((rear * 0.4, 0.0))));
    arrow(svg, tail, tip, if refused { Ink::Danger } else { Ink::Main }, 4.0);
    svg.close();

    let s = &lift.stand;
    if s.face_to_landing_m.is_finite() && s.face_to_landing_m > 0.05 {
        svg.open("face-to-landing");
        let (from, to) = (view.front_face_m, view.front_face_m + s.face_to_landing_m);
        let (a, b) = (frame.px(at.place((from, 0.0))), frame.px(at.place((to, 0.0))));
        svg.line(a, b, Pen::new(Ink::Sheet, 5.0));
        dimension(svg, a, b);
        placer.beam(a, b, 8.0);
        let text = [words.length(s.face_to_landing_m)];
        let kind = Type::plain(14.0).bold().halo();
        let (w, h) = block_size(&text, kind.size, true);
        let middle = (f64::midpoint(a.0, b.0), f64::midpoint(a.1, b.1));
        let placed = placer.place(middle, w, h, 7.0, 0.0);
        block(svg, &text, placed.rect, kind);
        svg.close();
    }

    if let Some(t) = lift.stand_tolerance.as_ref().filter(|t| t.disc_m.is_finite()) {
        svg.open("tolerance");
        let c = frame.px(at.at);
        let r = t.disc_m * frame.scale;
        svg.circle(c, r, None, Some(Pen::new(Ink::Sheet, 5.0)));
        svg.circle(c, r, None, Some(Pen::new(Ink::Main, 2.2)));
        let text = [format!("± {}", words.length(t.disc_m))];
        let kind = Type::plain(13.0).bold().halo();
        let (w, h) = block_size(&text, kind.size, true);
        let placed = placer.place(c, w, h, r + 8.0, 180.0);
        svg.line(placed.rect.nearest(c), c, Pen::new(Ink::Main, 1.0));
        block(svg, &text, placed.rect, kind);
        svg.close();
    }
    svg.open("stand");
    crate::marks::cross(svg, frame.px(at.at));
    svg.close();
    placer.solid(Rect::around(frame.px(at.at), 18.0, 18.0));

    svg.open("stand-name");
    let mut text = vec![words.verdict(lift.verdict)];
    if let Some(governing) = lift.governing_finding().filter(|_| refused) {
        text.extend(crate::labels::wrap(&words.check(&governing.check), 13.0, true, frame.plot.w * 0.42, 3));
    }
    text.push(words.pair(ui::HEADING, &words.quantity(quantity::degrees(s.heading_deg).into())));
    let kind = Type::plain(13.0).bold().halo().ink(if refused { Ink::Danger } else { Ink::Main });
    let back = frame.px(at.place((rear, 0.0)));
    let behind = libm::atan2(-at.ahead.1, -at.ahead.0).to_degrees();
    let (w, h) = block_size(&text, kind.size, true);
    let placed = placer.place(back, w, h, 6.0, behind);
    block(svg, &text, placed.rect, kind);
    svg.close();
}
