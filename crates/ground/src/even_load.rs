//! Even loads along a beam: what always lies there, and what may lie on any choice of its spans.

use crate::beam::{Beam, BeamLoad};

/// Loads (N/m) of every choice: `always` everywhere, `sometimes` on each set of stretches between supports and
/// tips. Effects are linear in the loads, so no other arrangement of whole stretches is worse.
pub(crate) fn choices(beam: &Beam, always: f64, sometimes: f64) -> Vec<Vec<BeamLoad>> {
    let mut edges = vec![0.0];
    edges.extend(beam.supports());
    edges.push(beam.length());
    edges.dedup();
    let stretches: Vec<(f64, f64)> = edges.windows(2).map(|p| (p[0], p[1])).collect();
    let strip = |from, to, intensity: f64| BeamLoad::Strip { from, to, intensity };
    let own = strip(0.0, beam.length(), always);
    let choice = |chosen: usize| {
        let on = stretches.iter().enumerate().filter(|(i, _)| chosen >> i & 1 == 1);
        std::iter::once(own).chain(on.map(|(_, (a, b))| strip(*a, *b, sometimes))).collect()
    };
    let choices = if sometimes == 0.0 { 1 } else { 1 << stretches.len() };
    (0..choices).map(choice).collect()
}
