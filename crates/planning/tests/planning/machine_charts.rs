//! The charts of the invented machines follow from their own statics and stated limits.
//!
//! The reachable area of the chart's point is cut into columns of reach and rows of height. A cell's capacity is the least, over points 10 cm apart in it, of
//! - the machine's and the attachment's greatest capacity,
//! - the load at which the load factor is 1.33,
//! - the load that leaves 7 % of tilt fore and aft and 12 % sideways when the machine already stands
//!   out of level by the chart's own tolerance, with the boom's flex outward and the rear axle free,
//!
//! rounded down to the step of the chart. Cells of one capacity are joined to zones. The test
//! computes the charts anew and compares them with the files to the letter; with
//! `COUNTERPOISE_WRITE_CHARTS` set it writes them.

use crate::workspace;
use evidence::Silent;
use geo::{BooleanOps, Coord, LineString, MultiPolygon, Polygon, Simplify};
use geometry::{DVec2, DVec3};
use machine::{Attachment, AttachmentKind, BodyKind, BoomPosition, Machine, SupportState, kinematics};
use quantity::Si;
use stability::wind::WindLoad;
use stability::{
    LoadOnBoom, Loading, Masses, RearAxleState, Support, TippingLine, TipsOver, gravity_for_slopes, load_factor,
    tilt_reserve, tipping_lines,
};
use std::collections::BTreeMap;
use std::fmt::Write as _;

const MARKER: &str = "# charts: made by validation (see docs)";
const LOWEST: f64 = -0.6;
const TOLERANCE_DEG: f64 = 2.0;

struct Wanted {
    attachment: &'static str,
    support: SupportState,
    /// Load centre it is made for, m; 0 for a hook.
    centre: f64,
    /// Size of a cell, (reach, height), m.
    cell: DVec2,
    /// Capacities are rounded down to this, kg.
    step: f64,
    /// Below this nothing is charted, kg.
    least: f64,
}

#[test]
fn charts_of_the_machines_follow_from_their_statics() {
    use SupportState::{Outriggers, Stabilizers, Tyres};
    let chart = |attachment, support, centre, cell: [f64; 2], step, least| Wanted {
        attachment,
        support,
        centre,
        cell: DVec2::from_array(cell),
        step,
        least,
    };
    let cases: [(&str, Vec<Wanted>); 7] = [
        ("examples/demo-job/machines/demo-7.toml", vec![chart("forks", Tyres, 0.61, [0.5, 4.0], 100.0, 300.0)]),
        (
            "examples/demo-job/machines/demo-14.toml",
            vec![
                chart("forks", Tyres, 0.61, [1.0, 5.0], 250.0, 250.0),
                chart("forks", Stabilizers, 0.61, [1.0, 5.0], 250.0, 500.0),
                chart("jib", Tyres, 0.0, [1.0, 5.0], 100.0, 200.0),
            ],
        ),
        ("examples/machines/wren-6.toml", vec![chart("forks", Tyres, 0.5, [0.5, 2.0], 100.0, 300.0)]),
        ("examples/machines/bittern-8.toml", vec![chart("forks", Tyres, 0.61, [0.5, 2.0], 250.0, 500.0)]),
        (
            "examples/machines/stork-18.toml",
            vec![
                chart("forks", Tyres, 0.61, [1.0, 5.0], 250.0, 250.0),
                chart("forks", Stabilizers, 0.61, [1.0, 5.0], 250.0, 250.0),
                chart("jib", Stabilizers, 0.0, [1.0, 5.0], 100.0, 200.0),
            ],
        ),
        (
            "examples/machines/pelican-12t.toml",
            vec![
                chart("forks", Tyres, 0.61, [0.5, 2.0], 500.0, 1000.0),
                chart("forks", Tyres, 1.2, [0.5, 2.0], 500.0, 1000.0),
            ],
        ),
        (
            "examples/machines/ibis-21r.toml",
            vec![
                chart("forks", Outriggers, 0.61, [1.0, 5.0], 250.0, 250.0),
                chart("jib", Outriggers, 0.0, [1.0, 5.0], 100.0, 200.0),
            ],
        ),
    ];
    for (file, charts) in cases {
        let text = String::from_utf8(workspace::read(file)).unwrap();
        let head = text.split(MARKER).next().unwrap();
        let machine = match jobfile::read_machine(file, head.as_bytes()) {
            Ok((m, _)) => m,
            Err(f) => panic!("{file} without its charts: {f:#?}"),
        };
        let mut made = format!("{head}{MARKER}\n");
        for wanted in &charts {
            made.push_str(&chart_text(&machine, wanted));
        }
        if let Err(faults) = jobfile::read_machine(file, made.as_bytes()) {
            panic!("{file}: {faults:#?}");
        }
        if std::env::var_os("COUNTERPOISE_WRITE_CHARTS").is_some() {
            std::fs::write(workspace::path(file), &made).unwrap();
        } else {
            assert!(text == made, "{file}: its charts do not follow from its statics; set COUNTERPOISE_WRITE_CHARTS");
        }
    }
}

/// Load (kg) that the statics allow with the chart's point at (reach, height); `None`: not reachable.
fn allowed(machine: &Machine, attachment: &Attachment, wanted: &Wanted, point: DVec2) -> Option<f64> {
    let (centre, support) = (wanted.centre, wanted.support);
    let tool = point + DVec2::new(datum(machine) - centre, 0.0);
    let boom = kinematics::position_for(&machine.boom, attachment, tool, 0.0).ok()?;
    let lines = tipping_lines(machine, Support { state: support, rear: RearAxleState::Free });
    let at = DVec3::new(tool.x + centre + machine.boom.flex, 0.0, tool.y + centre);
    // A slewing machine is charted all round: the worst of 36 directions.
    let slews: &[f64] = if machine.slew.is_some() { &SLEWS } else { &[0.0] };
    let directions: Vec<_> = slews.iter().map(|s| slewed(machine, attachment, boom, at, s.to_radians())).collect();
    let slope = TOLERANCE_DEG.to_radians().tan();
    let holds = |mass: f64| directions.iter().all(|(bare, at)| holds_ahead(*bare, *at, mass, &lines, slope));
    let greatest = greatest(machine, attachment, wanted);
    if holds(greatest) {
        return Some(greatest);
    }
    let (mut low, mut high) = (0.0, greatest);
    if !holds(1.0) {
        return Some(0.0);
    }
    while high - low > 0.5 {
        let middle = f64::midpoint(low, high);
        if holds(middle) { low = middle } else { high = middle }
    }
    Some(low)
}

/// True if load factor and tilt reserves hold with that load.
fn holds_ahead(bare: Masses, at: DVec3, mass: f64, lines: &[TippingLine], slope: f64) -> bool {
    let load = LoadOnBoom { mass, at };
    let level = Loading { masses: bare, gravity: stability::LEVEL, wind: WindLoad::NONE };
    if load_factor(&level, load, lines, &mut Silent).is_some_and(|(k, _)| k < 1.33) {
        return false;
    }
    [(slope, slope), (slope, -slope), (-slope, slope), (-slope, -slope)].iter().all(|(along, across)| {
        let gravity = gravity_for_slopes(*along, *across);
        let loading = Loading { masses: bare.with(load), gravity, wind: WindLoad::NONE };
        lines.iter().all(|line| {
            let needed: f64 = match line.over {
                TipsOver::Front | TipsOver::Rear => 0.07,
                TipsOver::Left | TipsOver::Right => 0.12,
            };
            tilt_reserve(&loading, line, &mut Silent) >= needed.atan()
        })
    })
}

/// Directions of the boom of a slewing machine, degrees.
const SLEWS: [f64; 36] = {
    let mut all = [0.0; 36];
    let mut i = 0;
    while i < 36 {
        all[i] = 10.0 * i as f64;
        i += 1;
    }
    all
};

/// x that reach is measured from: the front face of the front tyres, or the slew axis.
fn datum(machine: &Machine) -> f64 {
    machine.slew.map_or(machine.front_face(), |slew| slew.axis)
}

/// Masses without load, and where the load is, with the upper part turned by `slew` rad.
fn slewed(machine: &Machine, tool: &Attachment, boom: BoomPosition, at: DVec3, slew: f64) -> (Masses, DVec3) {
    let mut masses = Masses::of(machine, tool, boom);
    let Some(axis) = machine.slew.map(|s| s.axis) else { return (masses, at) };
    let (s, c) = libm::sincos(slew);
    let turned = |p: DVec3| {
        let from = p.x - axis;
        DVec3::new(axis + from * c - p.y * s, from * s + p.y * c, p.z)
    };
    let upper = machine.bodies.iter().filter(|b| b.kind == BodyKind::Upper).map(|b| (b.mass.si(), b.centre));
    for (mass, centre) in upper.chain(kinematics::boom_masses(&machine.boom, tool, boom)) {
        masses.sprung_moment += (turned(centre) - centre) * mass;
    }
    (masses, turned(at))
}

/// What plate and attachment carry at the chart's load centre, kg.
fn greatest(machine: &Machine, attachment: &Attachment, wanted: &Wanted) -> f64 {
    machine.greatest_capacity.si().min(attachment.capacity_at_kg(wanted.centre))
}

/// Outline of all points the boom reaches, in (reach, height).
fn reachable(machine: &Machine, attachment: &Attachment, centre: f64) -> Polygon<f64> {
    let b = &machine.boom;
    let shift = centre - datum(machine);
    let point = |angle: f64, extension: f64| {
        let p = kinematics::tool_point(b, attachment, BoomPosition::level(angle, extension));
        Coord { x: p.x + shift, y: p.z }
    };
    let (a0, a1, e1) = (b.angle_min.si(), b.angle_max.si(), b.extension_max.si());
    let mut ring = Vec::new();
    let turns = 60;
    for i in 0..=turns {
        ring.push(point(a0 + (a1 - a0) * f64::from(i) / f64::from(turns), e1));
    }
    for i in (0..=turns).rev() {
        ring.push(point(a0 + (a1 - a0) * f64::from(i) / f64::from(turns), 0.0));
    }
    Polygon::new(LineString::new(ring), Vec::new())
}

/// A cell by (column, row), with its part within reach.
type Cell = ((i64, i64), MultiPolygon<f64>);

/// Cells that share an edge as one polygon each; cells that touch only at a corner stay apart.
fn joined(mut cells: Vec<Cell>) -> Vec<Polygon<f64>> {
    let mut out = Vec::new();
    while let Some(first) = cells.pop() {
        let mut piece = vec![first];
        let mut next = 0;
        while next < piece.len() {
            let (c, r) = piece[next].0;
            let (near, rest) = cells.into_iter().partition(|((i, k), _)| (i - c).abs() + (k - r).abs() == 1);
            cells = rest;
            piece.extend::<Vec<Cell>>(near);
            next += 1;
        }
        out.extend(geo::unary_union(piece.iter().flat_map(|(_, m)| m.iter())).0);
    }
    out.reverse();
    out
}

fn chart_text(machine: &Machine, wanted: &Wanted) -> String {
    let attachment = machine.attachment(wanted.attachment).unwrap();
    let whole = reachable(machine, attachment, wanted.centre);
    let (low, high) = whole.exterior().coords().fold((DVec2::INFINITY, DVec2::NEG_INFINITY), |(l, h), c| {
        (l.min(DVec2::new(c.x, c.y)), h.max(DVec2::new(c.x, c.y)))
    });
    let greatest = greatest(machine, attachment, wanted);
    let mut cells: BTreeMap<i64, Vec<Cell>> = BTreeMap::new();
    let DVec2 { x: column_width, y: row_height } = wanted.cell;
    let first = (low.x.max(0.0) / column_width).floor() as i64;
    let last = (high.x / column_width).ceil() as i64;
    let top = (high.y / row_height).ceil() as i64;
    for column in first..last {
        for row in -1..top {
            let (x0, x1) = (column as f64 * column_width, (column + 1) as f64 * column_width);
            let (y0, y1) = ((row as f64 * row_height).max(LOWEST), (row + 1) as f64 * row_height);
            let cell = Polygon::from(geo::Rect::new(Coord { x: x0, y: y0 }, Coord { x: x1, y: y1 }));
            let part = cell.intersection(&whole);
            if part.0.is_empty() {
                continue;
            }
            let mut least = f64::INFINITY;
            let n = 10;
            let rows = (10.0 * row_height) as i32;
            for i in 0..=n {
                for k in 0..=rows {
                    let p = DVec2::new(
                        x0 + (x1 - x0) * f64::from(i) / f64::from(n),
                        y0 + (y1 - y0) * f64::from(k) / f64::from(rows),
                    );
                    if let Some(load) = allowed(machine, attachment, wanted, p) {
                        least = least.min(load);
                    }
                }
            }
            for c in part.iter().flat_map(|p| p.exterior().coords()) {
                // Corners on the border may lie a rounding beyond reach: take them a little inside.
                let inside = DVec2::new(c.x, c.y).lerp(DVec2::new(f64::midpoint(x0, x1), f64::midpoint(y0, y1)), 0.01);
                if let Some(load) = allowed(machine, attachment, wanted, inside) {
                    least = least.min(load);
                }
            }
            let capacity = (least / wanted.step).floor() * wanted.step;
            let capacity = if least >= greatest { greatest } else { capacity };
            if least.is_finite() && capacity >= wanted.least {
                cells.entry(-(capacity as i64)).or_default().push(((column, row), part));
            }
        }
    }
    let mut out = String::new();
    let support = wanted.support.word();
    let (to, height_to) = match attachment.kind {
        AttachmentKind::Forks(_) => ("load-centre", "fork-top"),
        _ => ("hook", "hook"),
    };
    let from = if machine.slew.is_some() { "turntable-centre" } else { "front-tyre-face" };
    write!(
        out,
        "\n[[chart]]\nattachment = \"{}\"\nsupport = \"{support}\"\nload_centre = \"{} m\"\nreach_from = \"{from}\"\n\
         reach_to = \"{to}\"\nheight_to = \"{height_to}\"\nlevel_sideways = \"{TOLERANCE_DEG}°\"\nlevel_fore_aft = \"{TOLERANCE_DEG}°\"\n\
         unit = \"m\"\n",
        attachment.id,
        wanted.centre,
    )
    .unwrap();
    let mut made = Vec::new();
    let mut text = String::new();
    for (letter, (capacity, parts)) in ('A'..='Z').zip(&cells) {
        let zones = joined(parts.clone());
        for (i, zone) in zones.iter().enumerate() {
            let name = if zones.len() > 1 { format!("{letter}{}", i + 1) } else { letter.to_string() };
            write!(text, "\n[[chart.zone]]\nname = \"{name}\"\ncapacity = \"{} kg\"\noutline = [", -capacity).unwrap();
            let ring = zone.exterior().simplify(0.002);
            let mut before = String::new();
            let mut outline = Vec::new();
            for c in ring.coords().take(ring.0.len() - 1) {
                let corner = format!("[{:.2}, {:.2}]", c.x, c.y).replace("-0.00", "0.00");
                if corner != before {
                    write!(text, "{}{corner}", if before.is_empty() { "" } else { ", " }).unwrap();
                    outline.push(DVec2::new(c.x, c.y));
                }
                before = corner;
            }
            text.push_str("]\n");
            let capacity = quantity::kilograms(-*capacity as f64);
            made.push(machine::Zone { name, capacity, outline });
        }
    }
    // Capacity that rises is right here: it follows from the statics.
    if !machine::rises(&made).is_empty() {
        out.push_str("rises = \"machine_charts, the test that made it, against the machine's statics\"\n");
    }
    out + &text
}
