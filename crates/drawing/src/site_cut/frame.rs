//! From metres along and up to picture pixels.

use crate::labels::Rect;
use crate::svg::Px;
use site::Cut;

/// Room for height figures left of the plot, px.
const LEFT: f64 = 58.0;
/// A cut at least this high in pixels needs no exaggeration.
const HIGH_ENOUGH: f64 = 110.0;
/// Room above for a thing without a known top, and for labels, px.
const ABOVE: f64 = 54.0;
/// Room below the lowest ground, px.
const BELOW: f64 = 30.0;

/// The plot and its two scales.
pub(crate) struct Frame {
    pub plot: Rect,
    /// Pixels per metre along.
    pub scale: f64,
    /// How much larger heights are drawn.
    pub factor: f64,
    /// Length of the course, m.
    pub length: f64,
    /// Lowest and highest of what is known, m.
    pub heights: (f64, f64),
}

impl Frame {
    /// `None` without two stations apart, or where nothing has a height.
    pub(crate) fn fit(cut: &Cut, width: f64) -> Option<Self> {
        let alongs = cut.stations.iter().map(|s| s.along).filter(|a| a.is_finite() && a.abs() < 1e9);
        let length = alongs.reduce(f64::max)?;
        let heights = cut.stations.iter().flat_map(|s| {
            let reach = s.accuracy.filter(|a| a.is_finite()).unwrap_or(0.0);
            let ground = s.ground.into_iter().flat_map(move |z| [z - reach, z + reach]);
            ground.chain(s.things.iter().flat_map(|t| t.1.into_iter().chain(t.2)))
        });
        let (low, high) = heights
            .filter(|z| z.is_finite() && z.abs() < 1e6)
            .map(|z| (z, z))
            .reduce(|(low, high), (l, h)| (low.min(l), high.max(h)))?;
        let plot_w = width - LEFT - 14.0;
        let most_h = if width < 600.0 { width * 1.1 } else { width * 0.5 };
        let rise = (high - low).max(0.2);
        let scale = (plot_w / length).min(most_h / rise);
        if !(scale.is_finite() && scale > 0.0 && length > 0.0) {
            return None;
        }
        let true_h = rise * scale;
        let factor = [1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0, 200.0, 500.0]
            .into_iter()
            .take_while(|f| *f == 1.0 || (true_h < HIGH_ENOUGH && true_h * f <= HIGH_ENOUGH * 2.0))
            .last()
            .unwrap_or(1.0);
        let plot = Rect { x: LEFT, y: 0.0, w: length * scale, h: (true_h * factor).max(40.0) + ABOVE + BELOW };
        Some(Self { plot, scale, factor, length, heights: (low, high) })
    }
    /// The same with its plot below `top`.
    pub(crate) fn below(mut self, top: f64) -> Self {
        self.plot.y = top + 12.0;
        self
    }
    /// The picture point of a distance along and a height.
    pub(crate) fn px(&self, (along, z): (f64, f64)) -> Px {
        let up = (z - self.heights.0) * self.scale * self.factor;
        (self.plot.x + along * self.scale, self.plot.bottom() - BELOW - up)
    }
    /// Heights at the lower and the upper edge, m.
    pub(crate) fn shown(&self) -> (f64, f64) {
        let per_m = self.scale * self.factor;
        (self.heights.0 - BELOW / per_m, self.heights.0 + (self.plot.h - BELOW) / per_m)
    }
}
