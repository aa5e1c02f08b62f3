//! Long lists of a site as numbers.

use super::pack::{Numbers, push};
use geometry::DVec3;

/// Heights and tops are kept in whole millimetres.
const HEIGHT_STEP: f64 = 1e-3;
/// Places of triangles' corners are kept in whole tenths of a millimetre.
const PLACE_STEP: f64 = 1e-4;
/// Stands for "not known": no height is that low.
const UNKNOWN: i64 = i64::MIN / 4;

/// Heights with holes, each as the difference to the last one known.
pub(super) fn heights(list: &[f32]) -> Vec<u8> {
    let mut out = Vec::with_capacity(list.len() * 2);
    let mut last = 0;
    for h in list {
        if h.is_finite() {
            let now = (f64::from(*h) / HEIGHT_STEP).round() as i64;
            push(&mut out, now - last);
            last = now;
        } else {
            push(&mut out, UNKNOWN);
        }
    }
    out
}

pub(super) fn heights_back(bytes: &[u8], count: usize) -> Option<Vec<f32>> {
    let mut numbers = Numbers::new(bytes);
    // Every number is a byte at least: more are declared than there are, and nothing is allocated.
    if bytes.len() < count {
        return None;
    }
    let mut out = Vec::with_capacity(count);
    let mut last = 0_i64;
    for _ in 0..count {
        let step = numbers.next()?;
        if step == UNKNOWN {
            out.push(f32::NAN);
        } else {
            last = last.checked_add(step)?;
            out.push((last as f64 * HEIGHT_STEP) as f32);
        }
    }
    numbers.done().then_some(out)
}

fn rounded(p: &DVec3) -> [i64; 3] {
    [(p.x / PLACE_STEP).round() as i64, (p.y / PLACE_STEP).round() as i64, (p.z / HEIGHT_STEP).round() as i64]
}

fn placed([x, y, z]: [i64; 3]) -> DVec3 {
    DVec3::new(x as f64 * PLACE_STEP, y as f64 * PLACE_STEP, z as f64 * HEIGHT_STEP)
}

/// Points, each as the difference to the one before.
pub(super) fn points(list: &[DVec3]) -> Vec<u8> {
    let mut out = Vec::with_capacity(list.len() * 6);
    let mut last = [0; 3];
    for p in list {
        let now = rounded(p);
        (0..3).for_each(|i| push(&mut out, now[i] - last[i]));
        last = now;
    }
    out
}

pub(super) fn points_back(bytes: &[u8], count: usize) -> Option<Vec<DVec3>> {
    let mut numbers = Numbers::new(bytes);
    if bytes.len() / 3 < count {
        return None;
    }
    let mut out = Vec::with_capacity(count);
    let mut last = [0_i64; 3];
    for _ in 0..count {
        for part in &mut last {
            *part = part.checked_add(numbers.next()?)?;
        }
        out.push(placed(last));
    }
    numbers.done().then_some(out)
}

/// Triangles that still run counterclockwise after their corners are rounded.
pub(super) fn kept(points: &[DVec3], triangles: &[[u32; 3]]) -> Vec<[u32; 3]> {
    let at = |i: u32| placed(rounded(&points[i as usize])).truncate();
    let area = |t: &[u32; 3]| (at(t[1]) - at(t[0])).perp_dot(at(t[2]) - at(t[0]));
    // What `Tin::from_parts` takes: thicker than its slack.
    let thick = |t: &[u32; 3]| {
        let longest = (0..3).map(|i| at(t[i]).distance(at(t[(i + 1) % 3]))).fold(0.0, f64::max);
        area(t) > longest * PLACE_STEP
    };
    triangles.iter().filter(|t| thick(t)).copied().collect()
}

/// Triangles, each corner as the difference to the first of the triangle, that to the one before.
pub(super) fn triangles(list: &[[u32; 3]]) -> Vec<u8> {
    let mut out = Vec::with_capacity(list.len() * 5);
    let mut last = 0_i64;
    for t in list {
        let [a, b, c] = t.map(i64::from);
        push(&mut out, a - last);
        push(&mut out, b - a);
        push(&mut out, c - a);
        last = a;
    }
    out
}

pub(super) fn triangles_back(bytes: &[u8], count: usize) -> Option<Vec<[u32; 3]>> {
    let mut numbers = Numbers::new(bytes);
    if bytes.len() / 3 < count {
        return None;
    }
    let mut out = Vec::with_capacity(count);
    let mut last = 0_i64;
    for _ in 0..count {
        let a = last.checked_add(numbers.next()?)?;
        let b = a.checked_add(numbers.next()?)?;
        let c = a.checked_add(numbers.next()?)?;
        out.push([u32::try_from(a).ok()?, u32::try_from(b).ok()?, u32::try_from(c).ok()?]);
        last = a;
    }
    numbers.done().then_some(out)
}
