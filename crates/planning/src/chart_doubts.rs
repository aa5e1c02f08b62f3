//! What the machine's own statics say against a chart: capacities that tip it, and zones in another
//! unit than the rest.
//!
//! For each zone the load is computed that brings the level machine to the point of tipping, least over
//! the zone's corners, at the rated load centre, rear axle free (mechanics). No chart that keeps any
//! reserve gives that much. The share that a chart gives of it changes little from zone to zone; a zone
//! whose share jumps by about 2.2, and whose capacity rises out of the row at that place, was typed in
//! pounds among kilograms or the other way round.

use geometry::{DVec2, DVec3};
use machine::{Attachment, Chart, Machine, Rise, kinematics};
use quantity::Si;
use stability::wind::WindLoad;
use stability::{LEVEL, LoadOnBoom, Loading, Masses, RearAxleState, Support, load_factor, tipping_lines};

/// A zone that the machine's statics contradict.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum ChartDoubt {
    /// More than tips the machine.
    Tips {
        /// Zone index.
        zone: usize,
        /// Load that tips it at `at`, kg; 0 where it tips without.
        tipping_kg: f64,
        /// Where, (reach, height), m.
        at: DVec2,
        /// True if the same figure in pounds would not tip it.
        fits_in_pounds: bool,
    },
    /// The figure fits the others if it was meant in the other unit.
    OtherUnit {
        /// Zone index.
        zone: usize,
        /// The capacity by the other reading, kg.
        other_kg: f64,
        /// True if the figure is too high: pounds typed as kilograms.
        pounds: bool,
    },
}

/// Pound, kg.
const POUND: f64 = 0.453_592_37;
/// Jump of the share that looks like a mix-up of pounds and kilograms (2.2), from and to.
const JUMP: (f64, f64) = (1.85, 2.65);

/// Everything that the machine's statics say against the zones of a chart; `rises` as
/// [`machine::rises`] found them.
pub fn chart_doubts(machine: &Machine, attachment: &Attachment, chart: &Chart, rises: &[Rise]) -> Vec<ChartDoubt> {
    let tipping: Vec<Option<(f64, DVec2)>> =
        chart.zones.iter().map(|z| tipping_load(machine, attachment, chart, &z.outline)).collect();
    let mut out = Vec::new();
    let mut shares: Vec<Option<f64>> = Vec::new();
    for (zone, (z, tipping)) in chart.zones.iter().zip(&tipping).enumerate() {
        let kg = z.capacity.si();
        shares.push(tipping.filter(|(t, _)| *t > 0.0).map(|(t, _)| kg / t));
        if let Some((tipping_kg, at)) = *tipping
            && kg > tipping_kg
        {
            let fits_in_pounds = kg * POUND < tipping_kg;
            out.push(ChartDoubt::Tips { zone, tipping_kg: tipping_kg.max(0.0), at, fits_in_pounds });
        }
    }
    for zone in 0..chart.zones.len() {
        let said = out.iter().any(|d| matches!(d, ChartDoubt::Tips { zone: z, .. } if *z == zone));
        let (Some(share), false) = (shares[zone], said) else { continue };
        let mut others: Vec<f64> =
            shares.iter().enumerate().filter(|(i, _)| *i != zone).filter_map(|(_, s)| *s).collect();
        if others.len() < 2 {
            continue;
        }
        others.sort_by(f64::total_cmp);
        let jump = share / others[others.len() / 2];
        let kg = chart.zones[zone].capacity.si();
        let mixed = |jump: f64| jump > JUMP.0 && jump < JUMP.1;
        if mixed(jump) && rises.iter().any(|r| r.to == zone) {
            out.push(ChartDoubt::OtherUnit { zone, other_kg: kg * POUND, pounds: true });
        } else if mixed(1.0 / jump) && rises.iter().any(|r| r.from == zone) {
            out.push(ChartDoubt::OtherUnit { zone, other_kg: kg / POUND, pounds: false });
        }
    }
    out
}

/// Steps from a corner to the middle of its zone.
const STEPS: u32 = 50;
/// Points along a side.
const SIDE: u32 = 16;

/// Least load that tips the level machine in a zone, kg, and where: at its corners, or where the boom
/// ends on the way from a corner to the zone's middle, and to the middle of each side where it gets
/// to none of those; `None` where the boom gets nowhere in it or no load tips it.
fn tipping_load(machine: &Machine, attachment: &Attachment, chart: &Chart, outline: &[DVec2]) -> Option<(f64, DVec2)> {
    let lines = tipping_lines(machine, Support { state: chart.support, rear: RearAxleState::Free });
    let middle = outline.iter().copied().sum::<DVec2>() / outline.len().max(1) as f64;
    let centre = chart.load_centre.si();
    let up = chart.load_centre_height.map_or(centre, |h| h.si());
    let at_corner = |corner: &DVec2| {
        let reached = (0..=STEPS).find_map(|step| {
            let at = corner.lerp(middle, f64::from(step) / f64::from(STEPS));
            let tool = chart.tool_at(machine, attachment, at);
            kinematics::position_for(&machine.boom, attachment, tool, 0.0).ok().map(|boom| (at, tool, boom))
        });
        let (at, tool, boom) = reached?;
        let masses = Masses::of(machine, attachment, boom);
        let load = LoadOnBoom { mass: 1.0, at: DVec3::new(tool.x + centre, 0.0, tool.y + up) };
        let loading = Loading { masses, gravity: LEVEL, wind: WindLoad::NONE };
        load_factor(&loading, load, &lines, &mut evidence::Silent).map(|(kg, _)| (kg, at))
    };
    let least = |points: &[DVec2]| points.iter().filter_map(at_corner).min_by(|a, b| a.0.total_cmp(&b.0));
    least(outline).or_else(|| {
        let sides = (0..outline.len()).flat_map(|i| {
            let (a, b) = (outline[i], outline[(i + 1) % outline.len()]);
            (1..SIDE).map(move |k| a.lerp(b, f64::from(k) / f64::from(SIDE)))
        });
        least(&sides.collect::<Vec<_>>())
    })
}
