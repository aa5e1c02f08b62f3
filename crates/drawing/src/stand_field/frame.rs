//! From site metres to picture pixels: what of the field is shown, and how large.

use super::looks::FieldLook;
use crate::labels::Rect;
use crate::style::Ink;
use crate::svg::{Anchor, Pen, Px, Svg, Type};
use crate::words::Words;
use planning::{FieldScene, LiftPlan, PlanViewScene};

/// Ground shown around what matters, m.
const AROUND: f64 = 1.5;
/// Where no stand would do, so far from the landing is shown, m.
const NEAR: f64 = 9.0;
/// Least width and height shown, m.
const LEAST: f64 = 10.0;

/// The picture's map.
pub(super) struct Frame {
    pub(super) plot: Rect,
    pub(super) scale: f64,
    /// What lies at its lower left corner, m.
    pub(super) south_west: (f64, f64),
}

impl Frame {
    /// `None` if nothing has a place.
    pub(super) fn fit(lift: &LiftPlan, field: &FieldScene, view: &PlanViewScene, width: f64, top: f64) -> Option<Self> {
        let sound = |p: &(f64, f64)| p.0.is_finite() && p.1.is_finite();
        if !(sound(&field.centre) && field.cell_m.is_finite() && field.cell_m > 0.0 && field.side > 0) {
            return None;
        }
        let mut points: Vec<(f64, f64)> = view.landing.iter().copied().filter(sound).collect();
        points.push(field.centre);
        for stand in super::machine::stands(lift) {
            points.extend(view.body.iter().map(|p| stand.place(*p)).filter(sound));
        }
        let half = field.side as f64 / 2.0;
        let at = |i: usize, centre: f64| centre + (i as f64 + 0.5 - half) * field.cell_m;
        let before = points.len();
        let cells = super::cells(field);
        let passing = cells
            .iter()
            .enumerate()
            .filter(|(_, look)| matches!(look, Some(FieldLook::Go | FieldLook::Condition | FieldLook::NotYet)));
        points.extend(passing.map(|(i, _)| (at(i % field.side, field.centre.0), at(i / field.side, field.centre.1))));
        if points.len() == before {
            let c = field.centre;
            points.extend([(c.0 - NEAR, c.1 - NEAR), (c.0 + NEAR, c.1 + NEAR)]);
        }
        let low = points.iter().fold((f64::INFINITY, f64::INFINITY), |a, p| (a.0.min(p.0), a.1.min(p.1)));
        let high = points.iter().fold((f64::NEG_INFINITY, f64::NEG_INFINITY), |a, p| (a.0.max(p.0), a.1.max(p.1)));
        let middle = (f64::midpoint(low.0, high.0), f64::midpoint(low.1, high.1));
        let span = [high.0 - low.0, high.1 - low.1].map(|s| (s + 2.0 * AROUND).max(LEAST));
        let plot_w = (width - 20.0).floor();
        let most_h = if width < 600.0 { width * 1.15 } else { (width * 0.66).min(640.0) };
        let scale = (plot_w / span[0]).min(most_h / span[1]);
        if !(scale.is_finite() && scale > 0.0) {
            return None;
        }
        // A tall picture shows more ground to its sides, as far as the sheet goes.
        let plot = Rect { x: 10.0, y: top.ceil(), w: plot_w, h: (span[1] * scale).ceil() };
        let south_west = (middle.0 - plot.w / scale / 2.0, middle.1 - plot.h / scale / 2.0);
        Some(Self { plot, scale, south_west })
    }

    pub(super) fn px(&self, p: (f64, f64)) -> Px {
        (
            self.plot.x + (p.0 - self.south_west.0) * self.scale,
            self.plot.bottom() - (p.1 - self.south_west.1) * self.scale,
        )
    }
    pub(super) fn all(&self, points: &[(f64, f64)]) -> Vec<Px> {
        points.iter().filter(|p| p.0.is_finite() && p.1.is_finite()).map(|p| self.px(*p)).collect()
    }
    /// The place of a picture point, m.
    pub(super) fn at(&self, px: Px) -> (f64, f64) {
        (
            self.south_west.0 + (px.0 - self.plot.x) / self.scale,
            self.south_west.1 + (self.plot.bottom() - px.1) / self.scale,
        )
    }

    /// Scale bar below the picture, and where it ends.
    pub(super) fn scale_bar(&self, svg: &mut Svg, words: &Words<'_>) -> f64 {
        let y = self.plot.bottom() + 7.0;
        let unit = self.scale * words.metres_per_unit;
        let room = (self.plot.w * 0.4).max(90.0);
        let half = [10.0, 5.0, 2.0, 1.0].into_iter().find(|s| s * 2.0 * unit <= room).unwrap_or(1.0);
        let x = self.plot.x + 4.0;
        svg.open("scale-bar");
        for i in 0..2 {
            let r = Rect { x: x + f64::from(i) * half * unit, y, w: half * unit, h: 6.0 };
            svg.rect(r, Some(if i == 0 { Ink::Main } else { Ink::Sheet }), Some(Pen::new(Ink::Main, 1.0)));
        }
        let kind = Type::plain(12.0).at(Anchor::Middle);
        svg.text((x + 2.0, y + 20.0), "0", kind);
        svg.text((x + 2.0 * half * unit, y + 20.0), &format!("{:.0} {}", 2.0 * half, words.unit), kind);
        svg.close();
        y + 26.0
    }
}
