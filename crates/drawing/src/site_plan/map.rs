//! From site metres to picture pixels, north up, one scale for both axes.

use super::SiteStand;
use crate::labels::Rect;
use crate::svg::Px;
use geometry::DVec2;
use site::{PlanArea, Site};

/// Least width and height of what is shown, m: a single point is seen with what is around it.
const LEAST: f64 = 4.0;
/// Coordinates beyond this many metres are no places.
const FARTHEST: f64 = 1e9;

/// The picture's map.
pub(crate) struct Map {
    /// The plot's rectangle, px; whole numbers.
    pub plot: Rect,
    /// Pixels per metre.
    pub scale: f64,
    /// What lies at its lower left corner, m.
    pub south_west: DVec2,
    /// The part of the site that holds what is shown, without the margin: smallest and largest corner, m.
    pub extent: (DVec2, DVec2),
}

impl Map {
    /// The scale at which everything with a place fits below `top`; `None` if nothing has one.
    pub(crate) fn fit(site: &Site, stands: &[SiteStand], width: f64, top: f64) -> Option<Self> {
        let extent = extent(site, stands)?;
        let middle = (extent.0 + extent.1) * 0.5;
        let span = (extent.1 - extent.0).max(DVec2::splat(LEAST)) * 1.06;
        let plot_w = (width - 20.0).floor();
        let most_h = if width < 600.0 { width * 1.25 } else { width * 0.8 };
        let scale = (plot_w / span.x).min(most_h / span.y);
        if !(scale.is_finite() && scale > 0.0) {
            return None;
        }
        // A tall site leaves the rest of the sheet empty rather than hatched.
        let plot_w = (span.x * scale).max(300.0).min(plot_w).floor();
        let plot_h = (span.y * scale).max(140.0).ceil();
        let plot = Rect { x: 10.0, y: top.ceil(), w: plot_w, h: plot_h };
        let south_west = middle - DVec2::new(plot_w, plot_h) / (2.0 * scale);
        Some(Self { plot, scale, south_west, extent })
    }
    /// Where a place lies in the picture.
    pub(crate) fn px(&self, at: DVec2) -> Px {
        let from = (at - self.south_west) * self.scale;
        (self.plot.x + from.x, self.plot.bottom() - from.y)
    }
    /// The place of a picture point, m.
    pub(crate) fn at(&self, px: Px) -> DVec2 {
        self.south_west + DVec2::new(px.0 - self.plot.x, self.plot.bottom() - px.1) / self.scale
    }
    /// An outline's rings in the picture; holes with places that are not numbers are left out, and
    /// without a whole outer ring there are none.
    pub(crate) fn rings(&self, area: &PlanArea) -> Vec<Vec<Px>> {
        let whole = |ring: &&[DVec2]| ring.len() > 2 && ring.iter().all(|p| sound(*p));
        if !whole(&area.outer.as_slice()) {
            return Vec::new();
        }
        area.rings().filter(whole).map(|ring| ring.iter().map(|p| self.px(*p)).collect()).collect()
    }
}

/// True for a place that can be drawn.
pub(crate) fn sound(p: DVec2) -> bool {
    p.is_finite() && p.abs().max_element() < FARTHEST
}

/// Smallest and largest corner of everything with a place. Lines reach far beyond a site: they count
/// only where nothing else has a place.
fn extent(site: &Site, stands: &[SiteStand]) -> Option<(DVec2, DVec2)> {
    let s = &site.surroundings;
    let ground = site.ground.surfaces.iter().filter_map(|s| s.terrain.bounds());
    let things = s.things.iter().filter_map(site::Thing::bounds);
    let dug = s.excavations.iter().filter_map(|e| e.outline.bounds());
    let buried = s.buried.iter().filter_map(|b| b.shape.bounds());
    let zones = s.zones.iter().filter_map(|z| z.shape.bounds());
    let landings = site.landings.iter().map(|l| {
        let reach = DVec2::splat(0.5 * l.size.length());
        (l.at - reach, l.at + reach)
    });
    let stands = stands.iter().map(|s| (s.at - DVec2::splat(1.0), s.at + DVec2::splat(1.0)));
    let join = |a: (DVec2, DVec2), b: (DVec2, DVec2)| (a.0.min(b.0), a.1.max(b.1));
    let usable = |b: &(DVec2, DVec2)| sound(b.0) && sound(b.1);
    let all = ground.chain(things).chain(dug).chain(buried).chain(zones).chain(landings).chain(stands);
    all.filter(usable).reduce(join).or_else(|| {
        let spans = site.lines.iter().flat_map(|l| &l.spans).flat_map(|s| [s.from.truncate(), s.to.truncate()]);
        let courses = site.lines.iter().flat_map(|l| l.course.iter().copied());
        spans.chain(courses).filter(|p| sound(*p)).map(|p| (p, p)).reduce(join)
    })
}
