//! From scene metres to picture pixels, one scale for both axes.

use crate::labels::Rect;
use crate::svg::Px;
use planning::ElevationScene;

/// Room right of the plot for the lift height's dimension, px.
const RIGHT: f64 = 62.0;
/// Room below the ground for the reach dimension, px.
pub(crate) const BELOW: f64 = 62.0;

/// The least and greatest of points taken.
#[derive(Clone, Copy)]
struct Bounds {
    low: (f64, f64),
    high: (f64, f64),
}

impl Bounds {
    fn take(&mut self, p: (f64, f64)) {
        self.low = (self.low.0.min(p.0), self.low.1.min(p.1));
        self.high = (self.high.0.max(p.0), self.high.1.max(p.1));
    }
}

/// The plot: where it lies and how metres map into it.
pub(crate) struct Frame {
    /// The plot's rectangle, px.
    pub plot: Rect,
    /// Pixels per metre.
    pub scale: f64,
    /// Scene s at the plot's left edge.
    left: f64,
    /// Scene z at the plot's lower edge.
    low: f64,
}

impl Frame {
    /// The scale at which the whole scene fits below `top`. `None` if nothing has an extent.
    pub(crate) fn fit(scene: &ElevationScene, width: f64, top: f64) -> Option<Self> {
        let points = solid_points(scene);
        let mut seen = Bounds { low: *points.first()?, high: *points.first()? };
        for p in &points {
            seen.take(*p);
        }
        // The landing may be long: its near edge and a little more are enough.
        let landing = scene.landing;
        for s in [landing.0, landing.1] {
            seen.take((s.clamp(scene.load_centre.0 - 2.5, scene.load_centre.0 + 2.5), landing.2));
        }
        let machine = seen;
        for line in scene.lines.iter().filter(|l| super::overhead::drawn(l)) {
            let (s, z) = line.at;
            if s > machine.low.0 - 4.0 && s < machine.high.0 + 4.0 && z < machine.high.1 + 7.0 && z > machine.low.1 {
                let ring = line.required_m.unwrap_or(0.0).clamp(0.0, 1.2);
                seen.take((s - ring, z));
                seen.take((s + ring, z + ring));
            }
        }
        for (s, z) in &scene.ground {
            if let Some(z) = z
                && *s >= machine.low.0 - 0.8
                && *s <= machine.high.0 + 0.8
            {
                seen.take((*s, *z));
            }
        }
        let low = (seen.low.0 - 0.8, seen.low.1 - 0.1);
        let high = (seen.high.0 + 0.8, seen.high.1 + 0.8);
        let (across, up) = (high.0 - low.0, high.1 - low.1);
        let plot_w = width - 20.0 - RIGHT;
        let most_h = if width < 600.0 { width * 1.15 } else { (width * 0.62).min(620.0) };
        let scale = (plot_w / across).min(most_h / up);
        if !(scale.is_finite() && scale > 0.0) {
            return None;
        }
        let spare = plot_w / scale - across;
        let plot = Rect { x: 10.0, y: top, w: plot_w, h: up * scale + BELOW };
        Some(Self { plot, scale, left: low.0 - spare / 2.0, low: low.1 - BELOW / scale })
    }
    /// Where a scene point lies in the picture.
    pub(crate) fn px(&self, p: (f64, f64)) -> Px {
        (self.plot.x + (p.0 - self.left) * self.scale, self.plot.bottom() - (p.1 - self.low) * self.scale)
    }
    pub(crate) fn all(&self, points: &[(f64, f64)]) -> Vec<Px> {
        points.iter().map(|p| self.px(*p)).collect()
    }
    /// Scene s at the left and right edge.
    pub(crate) fn span(&self) -> (f64, f64) {
        (self.left, self.left + self.plot.w / self.scale)
    }
    /// True if a scene point lies in the plot.
    pub(crate) fn shows(&self, p: (f64, f64)) -> bool {
        let (x, y) = self.px(p);
        x >= self.plot.x && x <= self.plot.right() && y >= self.plot.y && y <= self.plot.bottom()
    }
}

/// Points of everything that must be seen whole.
fn solid_points(scene: &ElevationScene) -> Vec<(f64, f64)> {
    let mut points: Vec<(f64, f64)> = scene.machine.iter().flat_map(|p| p.outline.iter().copied()).collect();
    for (s, z, r) in &scene.wheels {
        points.extend([(s - r, z - r), (s + r, z + r)]);
    }
    for (s0, z0, s1, z1, d) in &scene.boom {
        points.extend([(*s0, z0 + d / 2.0), (*s1, z1 + d / 2.0)]);
    }
    points.extend(&scene.tool);
    points.extend(&scene.load);
    points.extend([scene.load_centre, scene.datum, scene.chart_point]);
    points
}

/// The scene without points that are not numbers; nothing is drawn in their stead.
pub(crate) fn finite(scene: &ElevationScene) -> ElevationScene {
    let ok = |p: &(f64, f64)| p.0.is_finite() && p.1.is_finite();
    let mut scene = scene.clone();
    scene.ground.retain(|(s, _)| s.is_finite());
    for (_, z) in &mut scene.ground {
        *z = z.filter(|z| z.is_finite());
    }
    for part in &mut scene.machine {
        part.outline.retain(ok);
    }
    scene.wheels.retain(|w| w.0.is_finite() && w.1.is_finite() && w.2.is_finite());
    scene.boom.retain(|b| [b.0, b.1, b.2, b.3, b.4].iter().all(|v| v.is_finite()));
    scene.tool.retain(ok);
    scene.load.retain(ok);
    scene.sling = scene.sling.filter(|s| [s.0, s.1, s.2, s.3].iter().all(|v| v.is_finite()));
    scene.lines.retain(|l| ok(&l.at) && l.aside_m.is_finite());
    for line in &mut scene.lines {
        line.required_m = line.required_m.filter(|r| r.is_finite());
        line.nearest_m = line.nearest_m.filter(|r| r.is_finite());
    }
    scene
}
