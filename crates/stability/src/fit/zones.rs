//! The zones of a chart as statements: no capacity in them tips the machine.

use super::bodies::Between;
use super::statements::{Charted, FitLoad, FitPose, Known, Margin, Statement};
use machine::{Chart, Machine, kinematics};
use quantity::Si;

/// Steps from a corner to the middle of its zone.
const STEPS: u32 = 50;

/// One statement a zone, at its corners or where the boom ends on the way from a corner to the zone's
/// middle; zones that the boom gets nowhere in make none. `factor`: so many times each capacity does not tip it (1:
/// nothing more is known). `name` names a zone.
pub fn charted_zones(machine: &Machine, chart: &Chart, factor: f64, name: impl Fn(&str) -> String) -> Vec<Statement> {
    let Some(attachment) = machine.attachments.iter().position(|a| a.id == chart.attachment) else {
        return Vec::new();
    };
    let tool = &machine.attachments[attachment];
    let ahead = chart.load_centre.si();
    let up = chart.load_centre_height.map_or(ahead, |h| h.si());
    let margin = if factor > 1.0 { Margin::Factor(factor) } else { Margin::None };
    let mut out = Vec::new();
    for zone in &chart.zones {
        let middle = zone.outline.iter().sum::<geometry::DVec2>() / zone.outline.len().max(1) as f64;
        let kg = zone.capacity.si();
        let points: Vec<Charted> = zone
            .outline
            .iter()
            .filter_map(|corner| {
                let boom = (0..=STEPS).find_map(|step| {
                    let at = corner.lerp(middle, f64::from(step) / f64::from(STEPS));
                    kinematics::position_for(&machine.boom, tool, chart.tool_at(machine, tool, at), 0.0).ok()
                })?;
                let pose = FitPose { attachment, boom, support: chart.support };
                let load = FitLoad { mass: Between { low: kg, high: kg }, ahead, up };
                Some(Charted { pose, load, margin, governs: None })
            })
            .collect();
        if !points.is_empty() {
            out.push(Statement { name: name(&zone.name), known: Known::Charted(points) });
        }
    }
    out
}
