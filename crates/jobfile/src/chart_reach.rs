//! Whether the boom gets to a zone of a chart at all.

use geometry::DVec2;
use machine::{Attachment, Chart, DRAWING, Machine, kinematics};

/// True if some point of the zone (its corners, the points between and the middle) lies within
/// reach, or nearer to it than a drawing error.
pub(crate) fn reaches(machine: &Machine, attachment: &Attachment, chart: &Chart, outline: &[DVec2]) -> bool {
    let to_tool = chart.tool_at(machine, attachment, DVec2::ZERO);
    let around = [DVec2::ZERO, DVec2::X, DVec2::Y, DVec2::NEG_X, DVec2::NEG_Y].map(|d| d * DRAWING);
    points(outline).any(|p| {
        around.iter().any(|d| kinematics::position_for(&machine.boom, attachment, p + to_tool + *d, 0.0).is_ok())
    })
}

/// Points over the zone: along each edge, and between each edge and the middle.
fn points(outline: &[DVec2]) -> impl Iterator<Item = DVec2> + '_ {
    const STEPS: usize = 12;
    let middle = outline.iter().copied().sum::<DVec2>() / outline.len().max(1) as f64;
    (0..outline.len()).flat_map(move |i| {
        let (a, b) = (outline[i], outline[(i + 1) % outline.len()]);
        (0..STEPS * STEPS).map(move |k| {
            let along = (k % STEPS) as f64 / STEPS as f64;
            let inward = (k / STEPS) as f64 / (STEPS - 1) as f64;
            a.lerp(b, along).lerp(middle, inward)
        })
    })
}
