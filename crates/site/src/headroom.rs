//! Room above a path.

use crate::{Ground, PowerLine, Thing, profile};
use geometry::{DVec2, Segment, distance_segment_segment};

/// The least room above a path.
#[derive(Debug, Clone, PartialEq)]
pub struct Headroom {
    /// Least height between ground and what is above, m; `None` where nothing is above, or where a
    /// height is not known (then [`Headroom::unknown`] is not empty).
    pub least: Option<f64>,
    /// Where, m.
    pub at: Option<DVec2>,
    /// What is above there.
    pub by: Option<Overhead>,
    /// Places where the ground, or the height of what is above, is not known.
    pub unknown: Vec<DVec2>,
    /// Things that stand in the way on the ground, by index.
    pub blocked: Vec<usize>,
}

/// What is above a path.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Overhead {
    /// A thing, by index.
    Thing(usize),
    /// A line, by index.
    Line(usize),
}

/// Chords that a span is taken as.
const CHORDS: usize = 32;

/// Least room above a strip of `width` along `course`, looked at every `step` m and across in steps
/// no wider. Lines count their survey error downward and their swing sideways; things their accuracy.
/// The legal distance to a line is not taken off: it is a matter of its check.
pub fn headroom(
    ground: &Ground,
    things: &[Thing],
    lines: &[PowerLine],
    course: &[DVec2],
    width: f64,
    step: f64,
) -> Headroom {
    let mut out = Headroom { least: None, at: None, by: None, unknown: Vec::new(), blocked: Vec::new() };
    let half = width * 0.5;
    let across = (width / step.max(0.01)).ceil().clamp(1.0, 1000.0) as usize;
    let chords: Vec<Vec<Segment>> =
        lines.iter().map(|l| l.spans.iter().flat_map(|s| s.chords(CHORDS)).collect()).collect();
    for w in course.windows(2) {
        let left = (w[1] - w[0]).normalize_or_zero().perp();
        for k in 0..=across {
            let shift = left * (-half + width * k as f64 / across as f64);
            for station in profile(ground, things, &[w[0] + shift, w[1] + shift], step).stations {
                let Some(ground) = station.ground else {
                    out.unknown.push(station.at);
                    continue;
                };
                let accuracy = station.accuracy.unwrap_or(0.0);
                for (index, base, _) in station.things {
                    match base {
                        Some(base) => {
                            let room = base - ground - accuracy - things[index].accuracy;
                            out.take(room, station.at, Overhead::Thing(index));
                        }
                        None if !out.blocked.contains(&index) => out.blocked.push(index),
                        None => {}
                    }
                }
                for (index, line) in lines.iter().enumerate() {
                    let near = line.swing.value + line.survey_error.value + step.max(0.01);
                    if line.spans.is_empty() && course_within(&line.course, station.at, near) {
                        out.unknown.push(station.at);
                    }
                    for chord in &chords[index] {
                        if let Some(z) = lowest_over(chord, station.at, near) {
                            let room = z - line.survey_error.value - ground - accuracy;
                            out.take(room, station.at, Overhead::Line(index));
                        }
                    }
                }
            }
        }
    }
    out.blocked.sort_unstable();
    out
}

impl Headroom {
    fn take(&mut self, room: f64, at: DVec2, by: Overhead) {
        if self.least.is_none_or(|least| room < least) {
            (self.least, self.at, self.by) = (Some(room), Some(at), Some(by));
        }
    }
}

fn course_within(course: &[DVec2], at: DVec2, near: f64) -> bool {
    let point = Segment { a: at.extend(0.0), b: at.extend(0.0) };
    course
        .windows(2)
        .any(|w| distance_segment_segment(&point, &Segment { a: w[0].extend(0.0), b: w[1].extend(0.0) }) <= near)
}

/// Lowest height of a chord where it passes within `near` of a place in plan, m.
fn lowest_over(chord: &Segment, at: DVec2, near: f64) -> Option<f64> {
    let (a, b) = (chord.a.truncate(), chord.b.truncate());
    let d = b - a;
    let length = d.length();
    let (along, off) = if length > 0.0 {
        ((at - a).dot(d) / length, (at - a).perp_dot(d).abs() / length)
    } else {
        (0.0, at.distance(a))
    };
    if off > near {
        return None;
    }
    let reach = (near * near - off * off).max(0.0).sqrt();
    let (t0, t1) = ((along - reach).max(0.0), (along + reach).min(length));
    let z = |t: f64| if length > 0.0 { chord.a.lerp(chord.b, t / length).z } else { chord.a.z.min(chord.b.z) };
    (t0 <= t1).then(|| z(t0).min(z(t1)))
}
