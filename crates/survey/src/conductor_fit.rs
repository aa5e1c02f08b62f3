//! A hanging parabola along a line in plan, grown from a seed to its ends.

use crate::conductor_seeds::Seed;
use crate::conductors::LikelySpan;
use geometry::{DVec2, DVec3};
use std::collections::{BTreeMap, BTreeSet};

/// Side of the buckets in which points are looked up, m.
const BUCKET: f64 = 2.0;
/// Half width of the corridor around a seed and around a fitted line, m.
const SEED_WIDTH: f64 = 0.8;
const LINE_WIDTH: f64 = 0.3;
/// Longest stretch without points, m; also how far a line is grown at a time.
const GAP: f64 = 6.0;
/// Most steps of growing, so that every search ends: 6 km.
const MOST_STEPS: usize = 1000;
/// Parabolas tried on a seed.
const TRIALS: usize = 300;
/// Least number of points on a span.
const LEAST: usize = 15;
/// Largest slope of the curve and largest curvature `a` of `a·s²`, 1/m: sag a sixth of 40 m.
const STEEPEST: f64 = 0.7;
const MOST_CURVED: f64 = 0.02;
/// Share of 2 m stretches that hold points.
const COVERED: f64 = 0.7;
/// Least sag, m and as a share of the length; the parabola must also be this much closer than a chord.
const LEAST_SAG: f64 = 0.1;
const LEAST_SAG_SHARE: f64 = 0.005;
const CLOSER: f64 = 1.3;
/// Beside a conductor there is air: strips of this width up to this far, within this height.
const STRIP: f64 = 0.25;
const BESIDE: f64 = 2.0;
const BESIDE_HEIGHT: f64 = 1.0;

/// Rings around a conductor: where they begin, their width, m, how many, and how many must be empty.
const FIRST_RING: f64 = 0.3;
const RING: f64 = 0.15;
const RINGS: usize = 5;
const EMPTY_RINGS: usize = 2;

/// High points, m from a corner of their own.
pub(crate) struct HighPoints {
    pub(crate) list: Vec<DVec3>,
    origin: DVec3,
    used: Vec<bool>,
    buckets: BTreeMap<(i64, i64), Vec<u32>>,
}

impl HighPoints {
    pub(crate) fn of(mut list: Vec<DVec3>) -> Option<Self> {
        let origin = list.iter().copied().reduce(DVec3::min)?.floor();
        let mut buckets: BTreeMap<_, Vec<u32>> = BTreeMap::new();
        for (i, point) in list.iter_mut().enumerate() {
            *point -= origin;
            buckets.entry(bucket(point.truncate())).or_default().push(i as u32);
        }
        let used = vec![false; list.len()];
        Some(Self { list, origin, used, buckets })
    }

    pub(crate) fn is_used(&self, point: usize) -> bool {
        self.used[point]
    }

    pub(crate) fn use_up(&mut self, points: &[usize]) {
        for &i in points {
            self.used[i] = true;
        }
    }

    /// Points along a line from `low` to `high`, up to `width` beside it: number, place along,
    /// place beside (to the left), height. Sorted by place along.
    fn along(&self, line: &Line, low: f64, high: f64, width: f64) -> Vec<(usize, DVec3)> {
        let mut near = BTreeSet::new();
        let reach = (width / BUCKET).ceil() as i64;
        let steps = ((high - low) / BUCKET).ceil().max(0.0) as usize;
        for step in 0..=steps {
            let (x, y) = bucket(line.at + line.along * (low + step as f64 * BUCKET));
            for dx in -reach..=reach {
                for dy in -reach..=reach {
                    near.insert((x + dx, y + dy));
                }
            }
        }
        let left = DVec2::new(-line.along.y, line.along.x);
        let mut out: Vec<(usize, DVec3)> = near
            .iter()
            .filter_map(|key| self.buckets.get(key))
            .flatten()
            .map(|&i| {
                let point = self.list[i as usize];
                let offset = point.truncate() - line.at;
                (i as usize, DVec3::new(line.along.dot(offset), left.dot(offset), point.z))
            })
            .filter(|(_, p)| p.x >= low && p.x <= high && p.y.abs() <= width)
            .collect();
        out.sort_by(|a, b| a.1.x.total_cmp(&b.1.x).then(a.0.cmp(&b.0)));
        out
    }
}

fn bucket(at: DVec2) -> (i64, i64) {
    ((at.x / BUCKET).floor() as i64, (at.y / BUCKET).floor() as i64)
}

#[derive(Debug, Clone, Copy)]
struct Line {
    at: DVec2,
    along: DVec2,
}

/// `z = a·s² + b·s + c`.
#[derive(Debug, Clone, Copy)]
struct Parabola {
    a: f64,
    b: f64,
    c: f64,
}

impl Parabola {
    fn height(&self, s: f64) -> f64 {
        (self.a * s + self.b) * s + self.c
    }

    fn hangs(&self, low: f64, high: f64) -> bool {
        let slope = |s: f64| (2.0 * self.a * s + self.b).abs();
        self.a > 0.0 && self.a <= MOST_CURVED && slope(low) <= STEEPEST && slope(high) <= STEEPEST
    }

    /// Through three places (s, z).
    fn through(p: [DVec2; 3]) -> Option<Self> {
        let [p, q, r] = p;
        if (q.x - p.x).abs() < 1.0 || (r.x - q.x).abs() < 1.0 || (r.x - p.x).abs() < 2.0 {
            return None;
        }
        let first = (q.y - p.y) / (q.x - p.x);
        let second = (r.y - q.y) / (r.x - q.x);
        let a = (second - first) / (r.x - p.x);
        let b = first - a * (p.x + q.x);
        Some(Self { a, b, c: p.y - (a * p.x + b) * p.x })
    }

    /// Least squares over (s, _, z); centred, so that long lines cost no digits.
    fn least_squares(points: &[DVec3]) -> Option<Self> {
        let n = points.len() as f64;
        let m = points.iter().map(|p| p.x).sum::<f64>() / n;
        let (mut s2, mut s3, mut s4, mut z0, mut z1, mut z2) = (0.0, 0.0, 0.0, 0.0, 0.0, 0.0);
        for p in points {
            let s = p.x - m;
            (s2, s3, s4) = (s2 + s * s, s3 + s * s * s, s4 + s * s * s * s);
            (z0, z1, z2) = (z0 + p.z, z1 + s * p.z, z2 + s * s * p.z);
        }
        // Normal equations with Σs = 0: eliminate c, then b.
        let (k, mean) = (s4 - s2 * s2 / n - s3 * s3 / s2, z0 / n);
        let a = (z2 - s2 * mean - s3 * z1 / s2) / k;
        let b = (z1 - a * s3) / s2;
        let c = mean - a * s2 / n;
        let out = Self { a, b: b - 2.0 * a * m, c: c - b * m + a * m * m };
        (out.a.is_finite() && out.b.is_finite() && out.c.is_finite()).then_some(out)
    }
}

/// A parabola with the points on it.
pub(crate) struct SpanFit {
    line: Line,
    curve: Parabola,
    low: f64,
    high: f64,
    /// (along, beside, height) of the members.
    on_it: Vec<DVec3>,
    /// Numbers of the points on it.
    pub(crate) members: Vec<usize>,
}

impl SpanFit {
    /// The best parabola on a seed, grown to both ends; `None` if no unused points make one.
    pub(crate) fn grown(points: &HighPoints, seed: Seed, tolerance: f64) -> Option<Self> {
        let length = seed.from.distance(seed.to);
        let line = Line { at: seed.from, along: (seed.to - seed.from).try_normalize()? };
        let free = |list: Vec<(usize, DVec3)>| -> Vec<(usize, DVec3)> {
            list.into_iter().filter(|p| !points.used[p.0]).collect()
        };
        let near = free(points.along(&line, -GAP, length + GAP, SEED_WIDTH));
        let curve = best_parabola(&near, tolerance)?;
        let on = |p: &DVec3, curve: &Parabola| (p.z - curve.height(p.x)).abs() <= tolerance;
        let mut fit = Self { line, curve, low: 0.0, high: length, on_it: Vec::new(), members: Vec::new() };
        let first: Vec<(usize, DVec3)> = near.into_iter().filter(|p| on(&p.1, &curve)).collect();
        fit.take(longest_run(&first))?;
        for _ in 0..MOST_STEPS {
            fit.turn();
            let wider = free(points.along(&fit.line, fit.low - GAP, fit.high + GAP, LINE_WIDTH));
            let next: Vec<(usize, DVec3)> = wider.into_iter().filter(|p| on(&p.1, &fit.curve)).collect();
            let before = fit.members.len();
            fit.take(longest_run(&next))?;
            if fit.members.len() <= before {
                break;
            }
        }
        Some(fit)
    }

    fn take(&mut self, members: &[(usize, DVec3)]) -> Option<()> {
        let (first, last) = (members.first()?, members.last()?);
        if members.len() < LEAST {
            return None;
        }
        (self.low, self.high) = (first.1.x, last.1.x);
        self.members = members.iter().map(|m| m.0).collect();
        self.on_it = members.iter().map(|m| m.1).collect();
        self.curve = Parabola::least_squares(&self.on_it)?;
        self.curve.hangs(self.low, self.high).then_some(())
    }

    /// Turns the line so that its points lie evenly on both sides, and starts it at its low end.
    fn turn(&mut self) {
        let n = self.on_it.len() as f64;
        let mean = self.on_it.iter().sum::<DVec3>() / n;
        let (mut ss, mut st) = (0.0, 0.0);
        for p in &self.on_it {
            ss += (p.x - mean.x) * (p.x - mean.x);
            st += (p.x - mean.x) * (p.y - mean.y);
        }
        let slope = if ss > 0.0 { st / ss } else { 0.0 };
        let left = DVec2::new(-self.line.along.y, self.line.along.x);
        let offset = mean.y - slope * mean.x;
        let Some(along) = (self.line.along + left * slope).try_normalize() else { return };
        self.line = Line { at: self.line.at + left * offset, along };
    }

    fn length(&self) -> f64 {
        self.high - self.low
    }

    /// Long enough, covered, hanging visibly, with air on both sides.
    pub(crate) fn is_likely(&self, points: &HighPoints, shortest: f64) -> bool {
        let length = self.length();
        let sag = self.curve.a * length * length / 4.0;
        let stretches: BTreeSet<i64> = self.on_it.iter().map(|p| ((p.x - self.low) / 2.0).floor() as i64).collect();
        length >= shortest
            && stretches.len() as f64 >= COVERED * (length / 2.0).floor()
            && sag >= LEAST_SAG.max(LEAST_SAG_SHARE * length)
            && self.rms_of_chord() >= CLOSER * self.rms()
            && self.is_free(points)
    }

    fn rms(&self) -> f64 {
        let squares = self.on_it.iter().map(|p| (p.z - self.curve.height(p.x)) * (p.z - self.curve.height(p.x)));
        (squares.sum::<f64>() / self.on_it.len() as f64).sqrt()
    }

    /// The same with the best straight line instead of the parabola.
    fn rms_of_chord(&self) -> f64 {
        let n = self.on_it.len() as f64;
        let mean = self.on_it.iter().sum::<DVec3>() / n;
        let (mut ss, mut sz, mut zz) = (0.0, 0.0, 0.0);
        for p in &self.on_it {
            let d = *p - mean;
            (ss, sz, zz) = (ss + d.x * d.x, sz + d.x * d.z, zz + d.z * d.z);
        }
        ((zz - sz * sz / ss).max(0.0) / n).sqrt()
    }

    /// Most strips beside it are nearly empty at its height: a roof, a wall or a tree fills them.
    fn is_free(&self, points: &HighPoints) -> bool {
        let around = points.along(&self.line, self.low, self.high, BESIDE);
        let strips = (2.0 * BESIDE / STRIP) as usize;
        let mut counts = vec![0_usize; strips];
        for (_, p) in around.iter().filter(|(_, p)| (p.z - self.curve.height(p.x)).abs() <= BESIDE_HEIGHT) {
            counts[(((p.y + BESIDE) / STRIP).floor() as usize).min(strips - 1)] += 1;
        }
        let full = counts.iter().filter(|&&n| n * 10 > self.members.len()).count();
        let rings = self.rings(&around);
        let empty = rings.iter().filter(|&&n| n * 10 <= self.members.len()).count();
        full * 2 <= strips && empty >= EMPTY_RINGS
    }

    /// Points in rings around it, seen along the line. Between a conductor and the next there is
    /// air; a wall, a roof or a tree goes on without a gap.
    fn rings(&self, around: &[(usize, DVec3)]) -> [usize; RINGS] {
        let mut counts = [0; RINGS];
        for (_, p) in around {
            let off = DVec2::new(p.y, p.z - self.curve.height(p.x)).length();
            let ring = ((off - FIRST_RING) / RING).floor();
            if ring >= 0.0 && ring < RINGS as f64 {
                counts[ring as usize] += 1;
            }
        }
        counts
    }

    /// In the site frame.
    pub(crate) fn span(&self, points: &HighPoints) -> LikelySpan {
        let end = |s: f64| points.origin + (self.line.at + self.line.along * s).extend(self.curve.height(s));
        let length = self.length();
        LikelySpan {
            from: end(self.low),
            to: end(self.high),
            sag: self.curve.a * length * length / 4.0,
            rms: self.rms(),
            points: self.members.len() as u64,
        }
    }
}

/// The longest stretch without a gap of more than [`GAP`]; sorted by place along.
fn longest_run(points: &[(usize, DVec3)]) -> &[(usize, DVec3)] {
    let extent = |run: &[(usize, DVec3)]| run[run.len() - 1].1.x - run[0].1.x;
    points.chunk_by(|a, b| b.1.x - a.1.x <= GAP).max_by(|a, b| extent(a).total_cmp(&extent(b))).unwrap_or_default()
}

/// The hanging parabola through three of the points that fills most 2 m stretches with points.
fn best_parabola(points: &[(usize, DVec3)], tolerance: f64) -> Option<Parabola> {
    let (first, last) = (points.first()?.1.x, points.last()?.1.x);
    let mut best: Option<((usize, usize), Parabola)> = None;
    let mut state = 0x2545_F491_4F6C_DD1D_u64;
    let mut pick = || {
        state = state.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        let p = points[((state >> 33) % points.len() as u64) as usize].1;
        DVec2::new(p.x, p.z)
    };
    for _ in 0..TRIALS {
        let Some(curve) = Parabola::through([pick(), pick(), pick()]).filter(|c| c.hangs(first, last)) else {
            continue;
        };
        let mut stretch = i64::MIN;
        let (mut filled, mut on_it) = (0, 0);
        for (_, p) in points.iter().filter(|(_, p)| (p.z - curve.height(p.x)).abs() <= tolerance / 2.0) {
            on_it += 1;
            let here = (p.x / 2.0).floor() as i64;
            filled += usize::from(here != stretch);
            stretch = here;
        }
        if best.is_none_or(|(score, _)| (filled, on_it) > score) {
            best = Some(((filled, on_it), curve));
        }
    }
    best.filter(|(score, _)| score.1 >= LEAST).map(|(_, curve)| curve)
}
