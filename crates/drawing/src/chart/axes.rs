//! Axes of the chart in the reader's units.

use super::extent;
use crate::labels::{Rect, text_width};
use crate::style::Ink;
use crate::svg::{Anchor, Pen, Px, Svg, Type};
use crate::words::Words;
use planning::ChartScene;
use wording::ui;

const SIZE: f64 = 12.0;
/// Room left of the plot for the height's marks, below for the reach's, px.
const LEFT: f64 = 44.0;
const BELOW: f64 = 40.0;

/// Where reach and height lie in the picture.
pub(crate) struct Axes {
    /// The plot's rectangle, px.
    pub plot: Rect,
    /// Pixels per metre, on both axes.
    pub scale: f64,
    /// Reach and height at the plot's lower left corner, m.
    low: (f64, f64),
    /// Distance of the marks, in the reader's unit.
    step: f64,
}

impl Axes {
    /// Fits the scene into `width`, below `top`. `None` if it has no extent.
    pub(crate) fn fit(scene: &ChartScene, width: f64, top: f64, words: &Words<'_>) -> Option<Self> {
        let r = extent(scene)?;
        let unit = words.metres_per_unit;
        // Whole steps around everything, 0 included on both axes.
        let span = (r.right().max(0.0) - r.x.min(0.0)).max(r.bottom().max(0.0) - r.y.min(0.0)) / unit;
        let step = [1.0, 2.0, 5.0, 10.0, 20.0, 50.0].into_iter().find(|s| span / s <= 12.0).unwrap_or(100.0);
        let down = |v: f64| (v.min(0.0) / unit / step).floor() * step * unit;
        let up = |v: f64| ((v.max(0.0) / unit + 0.02 * span) / step).ceil() * step * unit;
        let (low, high) = ((down(r.x), down(r.y)), (up(r.right()), up(r.bottom())));
        let most_h = if width < 600.0 { width * 1.25 } else { 560.0 };
        let plot_w = width - LEFT - 22.0;
        let scale = (plot_w / (high.0 - low.0)).min(most_h / (high.1 - low.1));
        if !(scale.is_finite() && scale > 0.0) {
            return None;
        }
        let plot = Rect { x: LEFT, y: top + 24.0, w: (high.0 - low.0) * scale, h: (high.1 - low.1) * scale };
        Some(Self { plot, scale, low, step })
    }
    /// Where (reach, height) lies.
    pub(crate) fn px(&self, p: (f64, f64)) -> Px {
        (self.plot.x + (p.0 - self.low.0) * self.scale, self.plot.bottom() - (p.1 - self.low.1) * self.scale)
    }
    pub(crate) fn all(&self, points: &[(f64, f64)]) -> Vec<Px> {
        points.iter().map(|p| self.px(*p)).collect()
    }
    /// End of the axis titles.
    pub(crate) fn bottom(&self) -> f64 {
        self.plot.bottom() + BELOW + 4.0
    }
    /// Grid, marks and axis names.
    pub(crate) fn grid(&self, svg: &mut Svg, words: &Words<'_>) {
        let step_px = self.step * words.metres_per_unit * self.scale;
        let first = |low: f64| low / words.metres_per_unit;
        let kind = Type::plain(SIZE).soft();
        svg.open("axes");
        let mut grid = Vec::new();
        let across = (self.plot.w / step_px).round() as usize;
        // Numbers are thinned where they would touch.
        let widest = text_width("−88", SIZE, false) + 8.0;
        let every = (widest / step_px).ceil().max(1.0) as usize;
        for i in 0..=across {
            let x = self.plot.x + i as f64 * step_px;
            grid.push(((x, self.plot.y), (x, self.plot.bottom())));
            if i % every == 0 {
                let value = first(self.low.0) + i as f64 * self.step;
                svg.text((x, self.plot.bottom() + 16.0), &number(value), kind.at(Anchor::Middle));
            }
        }
        for i in 0..=(self.plot.h / step_px).round() as usize {
            let y = self.plot.bottom() - i as f64 * step_px;
            grid.push(((self.plot.x, y), (self.plot.right(), y)));
            let value = first(self.low.1) + i as f64 * self.step;
            if step_px >= 16.0 || i % 2 == 0 {
                svg.text((self.plot.x - 7.0, y + 4.0), &number(value), kind.at(Anchor::End));
            }
        }
        svg.lines(&grid, Pen::new(Ink::Faint, 0.8));
        let (x0, y0) = self.px((0.0, 0.0));
        svg.lines(
            &[((x0, self.plot.y), (x0, self.plot.bottom())), ((self.plot.x, y0), (self.plot.right(), y0))],
            Pen::new(Ink::Soft, 1.6),
        );
        let reach = format!("{} ({})", words.say(ui::REACH), words.unit);
        let height = format!("{} ({})", words.say(ui::LIFT_HEIGHT), words.unit);
        svg.text((self.plot.x + self.plot.w / 2.0, self.plot.bottom() + 35.0), &reach, kind.at(Anchor::Middle));
        svg.text((10.0, self.plot.y - 11.0), &height, kind);
        svg.close();
    }
}

/// A whole number for an axis, with a true minus.
fn number(value: f64) -> String {
    let text = format!("{:.0}", value.abs());
    if value < -0.5 { format!("−{text}") } else { text }
}
