//! How each kind of mark looks, on the map and in the key. Hatching and line tell kinds apart; ink
//! only supports them.

use crate::hatch::hatch_rings;
use crate::key::{Row, Swatch};
use crate::labels::Rect;
use crate::style::Ink;
use crate::svg::{Pen, Px, Svg};
use crate::words::Words;
use evidence::TextId;
use site::{ThingKind, ZoneRule};
use wording::ui;

/// A mark of the map, in the order of the key.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum SiteMark {
    NoGround,
    Middling,
    Steep,
    Thing(ThingKind),
    Opening,
    Excavation,
    SetBack,
    SetBackWheels,
    Buried,
    NoGo,
    Zone,
    Line,
    Landing,
    Stand,
}

/// Fill, hatching (degrees, spacing in px) and outline.
struct Look {
    fill: Option<Ink>,
    hatching: &'static [(f64, f64)],
    ink: Ink,
    pen: Pen,
}

fn look(mark: SiteMark) -> Look {
    let plain = |fill, width| Look { fill, hatching: &[], ink: Ink::Main, pen: Pen::new(Ink::Main, width) };
    let hatched = |fill, hatching, width| Look { hatching, ..plain(fill, width) };
    let dashed = |look: Look, dash| Look { pen: Pen::dashed(look.pen.ink, look.pen.width, dash), ..look };
    let danger = |look: Look| Look { ink: Ink::Danger, pen: Pen { ink: Ink::Danger, ..look.pen }, ..look };
    match mark {
        SiteMark::Thing(kind) => match kind {
            ThingKind::Building => plain(Some(Ink::Body), 2.0),
            ThingKind::Wall => plain(Some(Ink::Main), 1.0),
            ThingKind::Fence => dashed(plain(Some(Ink::Sheet), 1.4), "2 2"),
            ThingKind::Scaffold => hatched(Some(Ink::Sheet), &[(0.0, 6.0), (90.0, 6.0)], 1.4),
            ThingKind::Floor => hatched(Some(Ink::Sheet), &[(90.0, 9.0)], 1.6),
            ThingKind::Bridge => hatched(Some(Ink::Sheet), &[(0.0, 3.5)], 1.6),
            ThingKind::Tree => dashed(plain(Some(Ink::Carries), 1.4), "6 2 1 2"),
            ThingKind::Mast => plain(Some(Ink::Sheet), 2.6),
            ThingKind::Plant => plain(Some(Ink::Glass), 1.4),
            ThingKind::Store => plain(Some(Ink::Load), 1.2),
            ThingKind::Fuel => danger(hatched(Some(Ink::Sheet), &[(45.0, 5.0), (-45.0, 5.0)], 2.0)),
            ThingKind::TruckBay => hatched(Some(Ink::Glass), &[(0.0, 9.0)], 1.2),
            ThingKind::Unnamed => dashed(plain(Some(Ink::Glass), 1.2), "4 3"),
        },
        SiteMark::Excavation => hatched(Some(Ink::Sheet), &[(-45.0, 4.0)], 2.2),
        SiteMark::Buried => dashed(plain(None, 1.6), "7 4"),
        SiteMark::NoGo => danger(dashed(hatched(None, &[(45.0, 11.0), (-45.0, 11.0)], 2.0), "10 4")),
        SiteMark::Zone => dashed(plain(None, 1.6), "10 3 2 3"),
        SiteMark::Opening | SiteMark::Landing | SiteMark::Stand => plain(Some(Ink::Sheet), 1.8),
        SiteMark::NoGround => Look { ink: Ink::Soft, ..hatched(Some(Ink::Sheet), &[(0.0, 7.0)], 1.0) },
        SiteMark::Middling => Look { ink: Ink::Soft, ..hatched(Some(Ink::Sheet), &[(-63.0, 10.0)], 1.0) },
        SiteMark::Steep => Look { ink: Ink::Soft, ..hatched(Some(Ink::Sheet), &[(-63.0, 5.0)], 1.0) },
        SiteMark::Line => danger(plain(None, 2.4)),
        SiteMark::SetBack => dashed(plain(None, 1.3), "14 4"),
        SiteMark::SetBackWheels => plain(None, 1.5),
    }
}

/// Draws outlines with a mark's look.
pub(crate) fn draw(svg: &mut Svg, rings: &[Vec<Px>], mark: SiteMark) {
    let look = look(mark);
    svg.rings(rings, look.fill, None);
    for (degrees, spacing) in look.hatching {
        svg.lines(&hatch_rings(rings, *degrees, *spacing), Pen::new(look.ink, 0.8));
    }
    svg.rings(rings, None, Some(look.pen));
}

/// The jambs of an opening and the clear way between them.
pub(crate) fn opening(svg: &mut Svg, a: Px, b: Px) {
    svg.line(a, b, Pen::new(Ink::Sheet, 6.0));
    svg.line(a, b, Pen::dashed(Ink::Main, 1.4, "3 2"));
    for jamb in [a, b] {
        svg.circle(jamb, 2.2, Some(Ink::Main), None);
    }
}

/// An overhead line from a to b: a line with cross strokes, told from all others without colour.
pub(crate) fn overhead(svg: &mut Svg, a: Px, b: Px) {
    let pen = Pen::new(Ink::Danger, 2.4);
    svg.line(a, b, Pen::new(Ink::Sheet, 5.0));
    svg.line(a, b, pen);
    let (dx, dy) = (b.0 - a.0, b.1 - a.1);
    let length = libm::hypot(dx, dy);
    let count = (length / 18.0).floor().clamp(0.0, 400.0) as usize;
    let (ux, uy) = (dx / length.max(1e-9), dy / length.max(1e-9));
    let stroke = |i: usize| {
        let t = (i as f64 + 0.5) / count as f64;
        let c = (a.0 + dx * t, a.1 + dy * t);
        let (sx, sy) = ((ux - uy) * 4.0, (ux + uy) * 4.0);
        [((c.0 - sx, c.1 - sy), (c.0 + sx, c.1 + sy)), ((c.0 - sy, c.1 + sx), (c.0 + sy, c.1 - sx))]
    };
    let strokes: Vec<(Px, Px)> = (0..count).flat_map(stroke).collect();
    svg.lines(&strokes, Pen::new(Ink::Danger, 1.4));
}

/// A set-back line. `toward`: short strokes from it to the side that is kept free.
pub(crate) fn set_back(svg: &mut Svg, line: &[Px], toward: &[(Px, Px)], mark: SiteMark) {
    let pen = look(mark).pen;
    // Readable on hatching and hillshade.
    svg.polyline(line, Pen::new(Ink::Sheet, pen.width + 2.4));
    svg.polyline(line, pen);
    svg.lines(toward, Pen::new(pen.ink, 1.1));
}

/// A stand: a dart pointing where the machine does, or a square where no heading is given. `heading`
/// in the picture's turn: rad counter-clockwise from the right.
pub(crate) fn stand(svg: &mut Svg, c: Px, heading: Option<f64>) {
    let pen = Pen::new(Ink::Main, 1.8);
    let Some(heading) = heading else {
        svg.rect(Rect::around(c, 12.0, 12.0), Some(Ink::Sheet), Some(pen));
        return;
    };
    let (sin, cos) = libm::sincos(heading);
    let at = |ahead: f64, left: f64| (c.0 + ahead * cos - left * sin, c.1 - ahead * sin - left * cos);
    svg.polygon(&[at(13.0, 0.0), at(-8.0, 7.0), at(-4.0, 0.0), at(-8.0, -7.0)], Some(Ink::Sheet), Some(pen));
}

/// The swatch of a mark.
pub(crate) fn swatch(svg: &mut Svg, mark: SiteMark, r: Rect) {
    let (left, right) = ((r.x, r.y + r.h / 2.0), (r.right(), r.y + r.h / 2.0));
    match mark {
        SiteMark::Opening => opening(svg, left, right),
        SiteMark::Line => overhead(svg, left, right),
        SiteMark::SetBack => set_back(svg, &[left, right], &[], mark),
        SiteMark::SetBackWheels => {
            let toward: Vec<(Px, Px)> = (0..3)
                .map(|i| r.x + r.w * (f64::from(i) + 0.5) / 3.0)
                .map(|x| ((x, left.1), (x, left.1 + super::set_backs::STROKE)))
                .collect();
            set_back(svg, &[left, right], &toward, mark);
        }
        SiteMark::Stand => stand(svg, (r.x + r.w / 2.0 - 2.0, left.1), Some(0.0)),
        _ => {
            let ring = vec![(r.x, r.y), (r.right(), r.y), (r.right(), r.bottom()), (r.x, r.bottom())];
            draw(svg, &[ring], mark);
        }
    }
}

/// The row of the key that explains a mark.
pub(crate) fn row(mark: SiteMark, words: &Words<'_>) -> Row {
    let slope = |v: f32| quantity::Quantity::slope(f64::from(v));
    let [gentle, steep] = super::relief::LIMITS;
    let text = match mark {
        SiteMark::NoGround => words.say(ui::GROUND_NOT_KNOWN),
        SiteMark::Middling => words.say(ui::SITE_SLOPE_BETWEEN.with("low", slope(gentle)).with("high", slope(steep))),
        SiteMark::Steep => words.say(ui::SITE_SLOPE_OVER.with("limit", slope(steep))),
        SiteMark::Thing(kind) => words.say(kind_name(kind)),
        SiteMark::Opening => words.say(ui::SITE_OPENING),
        SiteMark::Excavation => words.say(ui::SITE_EXCAVATION),
        SiteMark::SetBack => words.say(ui::SITE_SET_BACK_LINE),
        SiteMark::SetBackWheels => words.say(ui::SITE_SET_BACK_WHEELS),
        SiteMark::Buried => words.say(ui::SITE_BURIED),
        SiteMark::NoGo => words.say(ui::SITE_ZONE_NO_GO),
        SiteMark::Zone => words.say(ui::SITE_ZONE),
        SiteMark::Line => words.say(ui::OVERHEAD_LINE),
        SiteMark::Landing => words.say(ui::LANDING),
        SiteMark::Stand => words.say(ui::SITE_STAND),
    };
    Row::new(Swatch::Site(mark), text)
}

/// The mark of a zone by its rule.
pub(crate) fn zone_mark(rule: ZoneRule) -> SiteMark {
    if rule == ZoneRule::NoGo { SiteMark::NoGo } else { SiteMark::Zone }
}

/// Words for a kind of thing.
pub(crate) fn kind_name(kind: ThingKind) -> TextId {
    match kind {
        ThingKind::Building => ui::SITE_BUILDING,
        ThingKind::Wall => ui::SITE_WALL,
        ThingKind::Fence => ui::SITE_FENCE,
        ThingKind::Scaffold => ui::SITE_SCAFFOLD,
        ThingKind::Floor => ui::SITE_FLOOR,
        ThingKind::Bridge => ui::SITE_BRIDGE,
        ThingKind::Tree => ui::SITE_TREE,
        ThingKind::Mast => ui::SITE_MAST,
        ThingKind::Plant => ui::SITE_PLANT,
        ThingKind::Store => ui::SITE_STORE,
        ThingKind::Fuel => ui::SITE_FUEL,
        ThingKind::TruckBay => ui::SITE_TRUCK_BAY,
        ThingKind::Unnamed => ui::SITE_UNNAMED,
    }
}
