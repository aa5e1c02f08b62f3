//! One slip circle through a section: Bishop's simplified method (Bishop 1955, from memory).
//!
//! `F = Σ [(c·b + (W + Q − u·b)·tan φ) / m_α] / (Σ (W + Q)·sin α + V·a/R)`, `m_α = cos α + sin α·tan φ / F`
//!
//! per metre along the edge, solved by Newton's method; undrained soil has `φ = 0` and needs none. Weights are exact under
//! the arc: slices end where the ground bends, at strips' edges, and where arc or face pass from layer to layer.
//! A circle is refused, and counted as refused, where the arc leaves the ground, where nothing drives it, where
//! `m_α` falls below [`LEAST_M_ALPHA`] in soil with friction, and where the repetition does not settle.

use crate::slope_section::{PoreWater, SlopeSection, Surcharge, WATER};
use libm::{asin, atan2, cos, hypot, sin, sqrt, tan};

/// `m_α` below which Bishop's forces mean nothing any more; common practice, from memory (Whitman & Bailey 1967).
pub const LEAST_M_ALPHA: f64 = 0.2;
/// Slices of a whole circle, about; a few more where the ground bends.
const SLICES: f64 = 30.0;
/// Repetitions at most, and the change of the factor that ends them.
const REPEATS: usize = 60;
const SETTLED: f64 = 1e-7;

/// A circular slip, in section coordinates.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SlipCircle {
    /// Centre `[x, z]`, m.
    pub centre: [f64; 2],
    /// Radius, m.
    pub radius: f64,
    /// Where it leaves the ground: on the face or before the toe.
    pub exit: [f64; 2],
    /// Its upper end: on the surface, or at the foot of the crack.
    pub entry: [f64; 2],
}

/// One slice, per metre along the edge.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Slice {
    /// Middle, m from the crest.
    pub x: f64,
    /// Width, m.
    pub width: f64,
    /// Weight of the soil, N/m.
    pub weight: f64,
    /// Load on top, N/m.
    pub load: f64,
    /// Sine and cosine of the base's slope, positive rising away from the edge.
    pub slope: [f64; 2],
    /// Pore pressure at the base, Pa.
    pub pore: f64,
    /// Cohesion at the base, Pa.
    pub cohesion: f64,
    /// Tangent of the angle of friction at the base.
    pub tan_phi: f64,
}

/// Why a circle gives no factor.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Refused {
    /// The arc leaves the ground, or goes below the firm base.
    Geometry,
    /// Nothing drives it.
    NotDriven,
    /// `m_α` too small.
    MAlpha,
    /// The repetition did not settle.
    NotSettled,
}

impl SlipCircle {
    /// The circle through `exit` and `entry` that turns by twice `half` (rad, 0 to π/2) between them.
    pub fn through(exit: [f64; 2], entry: [f64; 2], half: f64) -> Self {
        let (dx, dz) = (entry[0] - exit[0], entry[1] - exit[1]);
        let chord = hypot(dx, dz);
        let radius = chord / (2.0 * sin(half));
        let up = radius * cos(half) / chord;
        let middle = [f64::midpoint(exit[0], entry[0]), f64::midpoint(exit[1], entry[1])];
        Self { centre: [middle[0] - dz * up, middle[1] + dx * up], radius, exit, entry }
    }
}

impl SlipCircle {
    /// The circle of stated centre and radius, with the places where it cuts the section; none where it does not run
    /// from the surface behind the crest to face or base.
    pub fn cutting(section: &SlopeSection, centre: [f64; 2], radius: f64) -> Option<Self> {
        let [cx, cz] = centre;
        let (w, h) = (section.batter, section.depth);
        let at_height = |z: f64| {
            let d = radius * radius - (cz - z) * (cz - z);
            (d >= 0.0).then(|| sqrt(d))
        };
        // Points of the face are `s·(−w, −h)`. Coming down from behind, the lower arc leaves by the first it meets.
        let (a, b, c) = (w * w + h * h, w * cx + h * cz, cx * cx + cz * cz - radius * radius);
        let half = sqrt((b * b - a * c).max(0.0)) / a;
        let on_face = [-b / a - half, -b / a + half].into_iter().find(|s| *s > 1e-5 && *s <= 1.0 && -h * s < cz);
        let on_face = on_face.filter(|_| b * b >= a * c).map(|s| [-w * s, -h * s]);
        let on_base = || at_height(-h).map(|half| [cx - half, -h]).filter(|p| p[0] <= -w);
        let exit = on_face.or_else(on_base)?;
        let foot = -section.crack.before(-exit[1]).depth;
        let entry = at_height(foot).map(|half| [cx + half, foot]).filter(|p| p[0] > -1e-5 * h)?;
        Some(Self { centre, radius, exit, entry })
    }
}

/// A section made ready for many circles.
#[derive(Debug)]
pub struct SlipSolver<'a> {
    section: &'a SlopeSection,
    loads: &'a [Surcharge],
    /// The factor at which load that holds more than it drives is left out; `None`: all load counts.
    without_help: Option<f64>,
    /// Where slices end whatever the circle: strips' edges, crest, toe, bends of face and water table.
    bends: Vec<f64>,
    tangents: Vec<f64>,
    /// Places of this circle, and its slices; kept to be used again.
    angles: Vec<f64>,
    slices: Vec<Slice>,
}

impl<'a> SlipSolver<'a> {
    /// `section` and `loads` are free of faults.
    pub fn new(section: &'a SlopeSection, loads: &'a [Surcharge]) -> Self {
        let mut bends = vec![0.0, -section.batter];
        bends.extend(loads.iter().flat_map(|s| [s.from, s.to]));
        if section.batter > 0.0 {
            let face = |z: f64| section.batter * z / section.depth;
            bends.extend(section.boundaries().filter(|z| -z < section.depth).map(face));
        }
        if let PoreWater::Table(points) = &section.water {
            bends.extend(points.iter().map(|p| p[0]));
        }
        bends.sort_by(f64::total_cmp);
        bends.dedup();
        Self {
            section,
            loads,
            without_help: None,
            bends,
            tangents: section.layers.iter().map(|l| tan(l.friction)).collect(),
            angles: Vec::new(),
            slices: Vec::new(),
        }
    }

    /// The same, but load counts only where it drives more than it holds at the factor `required`: where
    /// `tan α > tan φ / F`. Whether a circle reaches `required` then never turns for the better with more load: less
    /// load anywhere, or a narrower strip of it, leaves it at least as well off.
    #[must_use]
    pub fn without_help(self, required: f64) -> Self {
        Self { without_help: Some(required), ..self }
    }

    /// Slices of the circle last asked for.
    pub fn slices(&self) -> &[Slice] {
        &self.slices
    }

    /// Factor of safety of a circle.
    pub fn factor(&mut self, circle: &SlipCircle) -> Result<f64, Refused> {
        self.cut(circle)?;
        let thrust = self.crack_moment(circle) / circle.radius;
        let driving: f64 = self.slices.iter().map(|s| (s.weight + s.load) * s.slope[0]).sum::<f64>() + thrust;
        let weight: f64 = self.slices.iter().map(|s| s.weight + s.load).sum();
        if driving.is_nan() || driving <= 1e-9 * weight {
            return Err(Refused::NotDriven);
        }
        let mut f = 1.0;
        for _ in 0..REPEATS {
            let (mut held, mut steeper) = (0.0, 0.0);
            let mut least = f64::INFINITY;
            for s in &self.slices {
                let rub = s.slope[0] * s.tan_phi / f;
                let m = s.slope[1] + rub;
                let part = s.cohesion_and_friction() / m;
                held += part;
                steeper += part * rub / m;
                // A frictionless base carries its cohesion along the arc, however steep.
                if s.tan_phi > 0.0 {
                    least = least.min(m);
                }
            }
            // Newton on `F − Σ/D`; its slope is near 1, and where it is not, plain repetition goes on.
            let (plain, slope) = (held / driving, 1.0 - steeper / (f * driving));
            let newton = f - (f - plain) / slope;
            let next = if slope > 0.2 && newton > 0.0 { newton } else { plain };
            let change = (next - f).abs();
            f = next;
            if f.is_nan() || f <= 0.0 {
                // Water may carry all that would rub; a negative `m_α` only pretends so.
                return match held <= 0.0 {
                    true if least < LEAST_M_ALPHA => Err(Refused::MAlpha),
                    true => Ok(0.0),
                    false => Err(Refused::NotSettled),
                };
            }
            if change < SETTLED * f.max(1.0) {
                return if least < LEAST_M_ALPHA { Err(Refused::MAlpha) } else { Ok(f) };
            }
        }
        Err(Refused::NotSettled)
    }

    /// Moment of the water in the crack about the centre, N·m per metre.
    fn crack_moment(&self, circle: &SlipCircle) -> f64 {
        let [push, arm] = self.crack_push(circle);
        push * arm
    }

    /// Level push of the water in the crack, N per metre, and its arm about the centre, m.
    pub fn crack_push(&self, circle: &SlipCircle) -> [f64; 2] {
        let crack = self.section.crack.before(-circle.exit[1]);
        [0.5 * WATER * crack.water * crack.water, circle.centre[1] + crack.depth - crack.water / 3.0]
    }

    /// Cuts the sliding body into slices.
    fn cut(&mut self, circle: &SlipCircle) -> Result<(), Refused> {
        let section = self.section;
        let [cx, cz] = circle.centre;
        let r = circle.radius;
        let [first, last] = [circle.exit, circle.entry].map(|p| atan2(p[0] - cx, cz - p[1]));
        // Angles count from straight below the centre. Beyond a right angle the arc overhangs.
        if !(first < last && last <= std::f64::consts::FRAC_PI_2 + 1e-9 && first > -std::f64::consts::FRAC_PI_2) {
            return Err(Refused::Geometry);
        }
        let lowest = if first < 0.0 && last > 0.0 { cz - r } else { circle.exit[1] };
        if section.firm_base.is_some_and(|base| lowest < -base - 1e-9) {
            return Err(Refused::Geometry);
        }
        if circle.exit[0] < -section.batter - 1e-9 {
            // From before the toe the arc has to go down first, and pass below the toe.
            let d = -section.batter - cx;
            if first >= 0.0 || d.abs() >= r || cz - sqrt(r * r - d * d) > -section.depth + 1e-9 {
                return Err(Refused::Geometry);
            }
        }
        self.angles.clear();
        self.angles.push(first);
        for x in &self.bends {
            if *x > circle.exit[0] && *x < circle.entry[0] {
                self.angles.push(asin(((x - cx) / r).clamp(-1.0, 1.0)));
            }
        }
        for z in section.boundaries() {
            let share = (cz - z) / r;
            if share > 0.0 && share < 1.0 {
                let a = libm::acos(share);
                self.angles.extend([-a, a].into_iter().filter(|a| *a > first && *a < last));
            }
        }
        self.angles.push(last);
        self.angles.sort_by(f64::total_cmp);
        self.slices.clear();
        for i in 1..self.angles.len() {
            let (from, to) = (self.angles[i - 1], self.angles[i]);
            if to - from > 1e-12 {
                self.cut_piece(cx, cz, r, from, to, (to - from) / (last - first));
            }
        }
        if self.slices.is_empty() { Err(Refused::Geometry) } else { Ok(()) }
    }

    /// Slices of even angle between two places where something bends.
    fn cut_piece(&mut self, cx: f64, cz: f64, r: f64, from: f64, to: f64, share: f64) {
        let section = self.section;
        let n = (SLICES * share).round().max(1.0);
        let step = (to - from) / n;
        // Turning by half a step at a time needs no sine per slice.
        let (sh, ch) = (sin(step / 2.0), cos(step / 2.0));
        let turn = |[s, c]: [f64; 2]| [s * ch + c * sh, c * ch - s * sh];
        let mut left = [sin(from), cos(from)];
        let middle_angle = f64::midpoint(from, to);
        let layer = section.layer_at(cz - r * cos(middle_angle));
        let (soil, tan_phi) = (section.layers[layer], self.tangents[layer]);
        // Between chord and arc.
        let bulge = 0.5 * r * r * (step - sin(step));
        for _ in 0..n as usize {
            let middle = turn(left);
            let right = turn(middle);
            let (x0, x1) = (cx + r * left[0], cx + r * right[0]);
            let width = x1 - x0;
            let base = cz - r * f64::midpoint(left[1], right[1]) - if width > 0.0 { bulge / width } else { 0.0 };
            let top = f64::midpoint(section.surface(x0), section.surface(x1));
            let weight = (width * (self.overburden(layer, base) - self.overburden_at(top))).max(0.0);
            let helps = self.without_help.is_some_and(|f| f * middle[0] < tan_phi * middle[1]);
            let of_strip = |s: &Surcharge| s.pressure * (x1.min(s.to) - x0.max(s.from)).max(0.0);
            let load = if helps { 0.0 } else { self.loads.iter().map(of_strip).sum::<f64>() };
            let x = f64::midpoint(x0, x1);
            let pore = match &section.water {
                PoreWater::Dry => 0.0,
                PoreWater::Ratio(ru) => ru * weight / width,
                table @ PoreWater::Table(_) => {
                    let head = table.table_at(x).unwrap_or(f64::NAN).min(section.surface(x)) - (cz - r * middle[1]);
                    WATER * if head < 0.0 { 0.0 } else { head }
                }
            };
            self.slices.push(Slice { x, width, weight, load, slope: middle, pore, cohesion: soil.cohesion, tan_phi });
            left = right;
        }
    }

    /// Weight above the height `z` per area, Pa, as if the ground went up to the crest's level; `layer` holds `z`.
    fn overburden(&self, layer: usize, z: f64) -> f64 {
        let (mut sum, mut top) = (0.0, 0.0);
        for l in &self.section.layers[..layer] {
            sum += l.unit_weight * (top + l.bottom);
            top = -l.bottom;
        }
        sum + self.section.layers[layer].unit_weight * (top - z)
    }

    fn overburden_at(&self, z: f64) -> f64 {
        if z >= 0.0 { 0.0 } else { self.overburden(self.section.layer_at(z), z) }
    }
}

impl Slice {
    /// `m_α` at the factor `f`.
    pub fn m_alpha(&self, f: f64) -> f64 {
        self.slope[1] + self.slope[0] * self.tan_phi / f
    }

    /// `c·b + (W + Q − u·b)·tan φ`, N/m.
    pub fn cohesion_and_friction(&self) -> f64 {
        self.cohesion * self.width + (self.weight + self.load - self.pore * self.width) * self.tan_phi
    }
}
