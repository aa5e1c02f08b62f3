//! Marks of a way, in picture and key: told apart by line and shape.

use crate::hatch::hatch;
use crate::labels::Rect;
use crate::style::Ink;
use crate::svg::{Anchor, Pen, Px, Svg, Type};
use planning::route::Gear;

/// A mark of a way.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum WayMark {
    Driven(WayGear),
    Swept,
    Machine,
    Load,
    Gate,
    /// Least left, with its letter.
    Least(char),
    Steep,
    Along,
    Across,
    Blocked,
}

/// A gear that can be ordered with the other marks.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum WayGear {
    Forward,
    Reverse,
}

impl From<Gear> for WayGear {
    fn from(gear: Gear) -> Self {
        match gear {
            Gear::Forward => Self::Forward,
            Gear::Reverse => Self::Reverse,
        }
    }
}

/// Between two arrows on the way, px.
const APART: f64 = 64.0;

/// A stretch: forward a full line with filled heads, in reverse a broken one with double bars behind open heads.
pub(super) fn stretch(svg: &mut Svg, points: &[Px], gear: WayGear) {
    let pen = match gear {
        WayGear::Forward => Pen::new(Ink::Main, 3.0),
        WayGear::Reverse => Pen::dashed(Ink::Main, 3.0, "8 5"),
    };
    svg.polyline(points, Pen::new(Ink::Sheet, 6.5));
    svg.polyline(points, pen);
    let total: f64 = points.windows(2).map(|w| away(w[0], w[1])).sum();
    if total < 14.0 {
        return;
    }
    let count = (total / APART).round().clamp(1.0, 400.0) as usize;
    for i in 0..count {
        if let Some((at, u)) = along(points, total * (i as f64 + 0.5) / count as f64) {
            head(svg, at, u, gear);
        }
    }
}

fn head(svg: &mut Svg, c: Px, u: (f64, f64), gear: WayGear) {
    let at = |ahead: f64, aside: f64| (c.0 + u.0 * ahead - u.1 * aside, c.1 + u.1 * ahead + u.0 * aside);
    let ring = [at(9.0, 0.0), at(-6.0, 7.0), at(-6.0, -7.0)];
    match gear {
        WayGear::Forward => svg.polygon(&ring, Some(Ink::Main), Some(Pen::new(Ink::Sheet, 1.6))),
        WayGear::Reverse => {
            svg.polygon(&ring, Some(Ink::Sheet), Some(Pen::new(Ink::Main, 2.0)));
            let bars = [(at(-10.0, 6.0), at(-10.0, -6.0)), (at(-14.0, 6.0), at(-14.0, -6.0))];
            svg.lines(&bars, Pen::new(Ink::Sheet, 4.5));
            svg.lines(&bars, Pen::new(Ink::Main, 2.0));
        }
    }
}

fn away(a: Px, b: Px) -> f64 {
    libm::hypot(b.0 - a.0, b.1 - a.1)
}

/// The point so far along a line, and the direction there.
fn along(points: &[Px], mut far: f64) -> Option<(Px, (f64, f64))> {
    for w in points.windows(2) {
        let long = away(w[0], w[1]);
        if long > 1e-6 && far <= long {
            let u = ((w[1].0 - w[0].0) / long, (w[1].1 - w[0].1) / long);
            return Some(((w[0].0 + u.0 * far, w[0].1 + u.1 * far), u));
        }
        far -= long;
    }
    None
}

/// A lozenge with a letter: where the least is left.
pub(super) fn least(svg: &mut Svg, c: Px, letter: char) {
    let ring = [(c.0, c.1 - 12.0), (c.0 + 12.0, c.1), (c.0, c.1 + 12.0), (c.0 - 12.0, c.1)];
    svg.polygon(&ring, Some(Ink::Sheet), Some(Pen::new(Ink::Danger, 2.4)));
    svg.text((c.0, c.1 + 4.2), &letter.to_string(), Type::plain(12.0).bold().at(Anchor::Middle).ink(Ink::Danger));
}

/// The machine's parts, the body first; the last is the load, where there is one.
pub(super) fn machine(svg: &mut Svg, parts: &[Vec<Px>], strong: bool, loaded: bool) {
    let pen = if strong { Pen::new(Ink::Main, 1.8) } else { Pen::dashed(Ink::Main, 1.3, "5 3") };
    for ring in parts {
        svg.polygon(ring, None, Some(Pen::new(Ink::Sheet, 4.0)));
    }
    for (i, ring) in parts.iter().enumerate() {
        let load = loaded && i > 0 && i + 1 == parts.len();
        let fill = if load { Ink::Load } else { Ink::Body };
        svg.polygon(ring, Some(fill).filter(|_| strong && (load || i == 0)), Some(pen));
    }
}

/// Where a load waits: a square with a diagonal.
pub(super) fn load(svg: &mut Svg, c: Px) {
    let r = Rect::around(c, 14.0, 14.0);
    svg.rect(r, Some(Ink::Load), Some(Pen::new(Ink::Main, 2.0)));
    svg.line((r.x, r.bottom()), (r.right(), r.y), Pen::new(Ink::Main, 1.4));
}

/// A gate: its two posts and what is between them.
pub(super) fn gate(svg: &mut Svg, a: Px, b: Px) {
    svg.line(a, b, Pen::new(Ink::Sheet, 5.0));
    svg.line(a, b, Pen::dashed(Ink::Main, 1.6, "1.5 4"));
    for post in [a, b] {
        svg.rect(Rect::around(post, 8.0, 8.0), Some(Ink::Main), Some(Pen::new(Ink::Sheet, 1.2)));
    }
}

/// Where a way ends that does not reach its end.
pub(super) fn blocked(svg: &mut Svg, c: Px) {
    let arms = [((c.0 - 9.0, c.1 - 9.0), (c.0 + 9.0, c.1 + 9.0)), ((c.0 - 9.0, c.1 + 9.0), (c.0 + 9.0, c.1 - 9.0))];
    svg.lines(&arms, Pen::new(Ink::Sheet, 8.0));
    svg.lines(&arms, Pen::new(Ink::Danger, 4.0));
}

/// Ground in the profile that is steep along the machine.
pub(super) fn steep(svg: &mut Svg, ring: &[Px]) {
    svg.lines(&hatch(ring, -63.0, 6.0), Pen::new(Ink::Main, 1.0));
}

/// The swatch of a mark.
pub(crate) fn swatch(svg: &mut Svg, mark: WayMark, r: Rect) {
    let c = (r.x + r.w / 2.0, r.y + r.h / 2.0);
    let ring = [(r.x, r.y), (r.right(), r.y), (r.right(), r.bottom()), (r.x, r.bottom())];
    match mark {
        WayMark::Driven(gear) => stretch(svg, &[(r.x, c.1), (r.right(), c.1)], gear),
        WayMark::Swept => svg.rect(r, Some(Ink::Carries), Some(Pen::new(Ink::Faint, 1.0))),
        WayMark::Machine => machine(svg, &[ring.to_vec()], true, false),
        WayMark::Load => load(svg, c),
        WayMark::Gate => gate(svg, (r.x + 4.0, c.1), (r.right() - 4.0, c.1)),
        WayMark::Least(letter) => least(svg, c, letter),
        WayMark::Steep => {
            svg.rect(r, Some(Ink::Ground), None);
            steep(svg, &ring);
            svg.line((r.x, r.y), (r.right(), r.y), Pen::new(Ink::Main, 2.0));
        }
        WayMark::Along => svg.line((r.x, c.1), (r.right(), c.1), Pen::new(Ink::Main, 2.2)),
        WayMark::Across => svg.line((r.x, c.1), (r.right(), c.1), Pen::dashed(Ink::Main, 1.8, "2 3")),
        WayMark::Blocked => blocked(svg, c),
    }
}
