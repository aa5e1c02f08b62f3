//! When a fork blade goes out of service: ISO 5057, and the proof load of ISO 2330 (both second hand).

use crate::{Blade, Forks};
use quantity::Si;

/// Wear of the heel at which a blade goes out of service, as a share of its thickness (ISO 5057).
pub const WEAR_LIMIT: f64 = 0.10;
/// Angle between blade and shank beyond which it goes out of service, degrees (ISO 5057).
pub const ANGLE_LIMIT_DEG: f64 = 93.0;
/// Angle below which it goes out of service as well, degrees: as far below the square as the other
/// limit lies above it (ours; ISO 5057 as remembered speaks of the deviation from the original angle).
pub const CLOSED_LIMIT_DEG: f64 = 87.0;
/// Difference in height of the two tips, as a share of the blade's length (ISO 5057).
pub const TIP_LIMIT: f64 = 0.03;
/// Departure from straight of blade or shank, as a share of its own length (ISO 5057).
pub const BENT_LIMIT: f64 = 0.005;
/// Longest time between two thorough checks, months (ISO 5057); more often in hard use.
pub const INTERVAL_MONTHS: u32 = 12;
/// Capacity of a blade up to which the greater proof load holds, kg (ISO 2330; low confidence on the edge).
pub const PROOF_EDGE_KG: f64 = 5000.0;
/// Safety on yield that blades are made with (ISO 2330, from memory).
pub const YIELD_FACTOR: f64 = 3.0;

/// Proof load over rated capacity, at the load centre, for a blade of that capacity (ISO 2330).
pub fn proof_factor(capacity_kg: f64) -> f64 {
    if capacity_kg <= PROOF_EDGE_KG { 2.5 } else { 2.1 }
}

/// A blade.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Side {
    /// Left blade.
    Left,
    /// Right blade.
    Right,
}

/// Something about the blades that somebody has to look at or measure.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Look {
    /// Thickness at the heel.
    Wear,
    /// Welds, holes, bends: changed from the maker's state.
    Modified,
    /// Cracks at the heel and the hooks.
    Cracks,
    /// Angle of blade and shank.
    Angle,
    /// Straightness of the blade.
    Straight,
    /// Straightness of the shank.
    Shank,
    /// Height of the two tips.
    Tips,
    /// Lock of the blade's place on the carriage.
    Lock,
    /// Day of the last thorough check.
    Checked,
}

/// What is wrong with a blade before any load.
#[derive(Debug, Clone, PartialEq)]
pub enum BladeProblem {
    /// Modified.
    Modified(Side),
    /// Cracked.
    Cracked(Side),
    /// Worn by this share of the thickness.
    Worn(Side, f64),
    /// Opened: angle between blade and shank, rad.
    Opened(Side, f64),
    /// Closed: angle between blade and shank, rad.
    Closed(Side, f64),
    /// Blade off straight by this share of its length.
    Bent(Side, f64),
    /// Shank off straight by this share of its length.
    ShankBent(Side, f64),
    /// Tips apart in height by this share of the length.
    TipsApart(f64),
    /// The lock of its place does not work.
    LockFails(Side),
    /// Proof load on its papers and the one that its stamp asks for, kg.
    ProofShort(Side, f64, f64),
    /// No stamp that can be read.
    NoStamp(Side),
    /// The two blades carry different stamps: not a pair.
    StampsDiffer,
    /// Wear or cracks, on one blade or both: without them nothing can be told of what the pair carries.
    Unknown(Vec<Look>),
    /// Not looked at or not measured besides, on one blade or both.
    NotLookedAt(Vec<Look>),
}

/// A measured value just at its limit still passes: measured values have round numbers.
const AT_LIMIT: f64 = 1e-9;

/// Problems of the blades, worst first.
pub fn blade_problems(forks: &Forks) -> Vec<BladeProblem> {
    let mut out = Vec::new();
    let sides = || [Side::Left, Side::Right].into_iter().zip(&forks.blades);
    out.extend(sides().filter(|(_, b)| b.modified == Some(true)).map(|(s, _)| BladeProblem::Modified(s)));
    for (side, blade) in sides() {
        one_blade(side, blade, &mut out);
    }
    let shorter = forks.shorter_blade();
    if let Some(apart) = forks.tip_difference.map(|d| d.si() / shorter).filter(|share| beyond(*share, TIP_LIMIT)) {
        out.push(BladeProblem::TipsApart(apart));
    }
    out.extend(sides().filter(|(_, b)| b.capacity.is_none()).map(|(s, _)| BladeProblem::NoStamp(s)));
    let [left, right] = &forks.blades;
    if let (Some(l), Some(r)) = (left.capacity, right.capacity)
        && (differ(l.si(), r.si()) || differ(left.load_centre.si(), right.load_centre.si()))
    {
        out.push(BladeProblem::StampsDiffer);
    }
    let (decisive, besides): (Vec<Look>, Vec<Look>) =
        not_looked_at(forks).into_iter().partition(|look| matches!(look, Look::Wear | Look::Cracks));
    if !decisive.is_empty() {
        out.push(BladeProblem::Unknown(decisive));
    }
    if !besides.is_empty() {
        out.push(BladeProblem::NotLookedAt(besides));
    }
    out
}

/// NaN is beyond every limit.
fn beyond(value: f64, limit: f64) -> bool {
    value.is_nan() || limit.is_nan() || value > limit + AT_LIMIT
}

fn differ(a: f64, b: f64) -> bool {
    let apart = (a - b).abs();
    apart.is_nan() || apart > 1e-6 * a.abs().max(b.abs())
}

fn one_blade(side: Side, blade: &Blade, out: &mut Vec<BladeProblem>) {
    if blade.crack == Some(true) {
        out.push(BladeProblem::Cracked(side));
    }
    if let (Some(new), Some(now)) = (blade.thickness_new, blade.thickness_now) {
        let wear = 1.0 - now.si() / new.si();
        if wear.is_nan() || wear >= WEAR_LIMIT - 1e-12 {
            out.push(BladeProblem::Worn(side, wear));
        }
    }
    if let Some(angle) = blade.angle.map(|a| a.si()).filter(|a| beyond(a.to_degrees(), ANGLE_LIMIT_DEG)) {
        out.push(BladeProblem::Opened(side, angle));
    }
    if let Some(angle) = blade.angle.map(|a| a.si()).filter(|a| a.to_degrees() < CLOSED_LIMIT_DEG - AT_LIMIT) {
        out.push(BladeProblem::Closed(side, angle));
    }
    if let Some(bent) = blade.bent.map(|b| b.si() / blade.length.si()).filter(|share| beyond(*share, BENT_LIMIT)) {
        out.push(BladeProblem::Bent(side, bent));
    }
    let shank = blade.shank.map(|s| s.bent.si() / s.length.si());
    if let Some(bent) = shank.filter(|share| beyond(*share, BENT_LIMIT)) {
        out.push(BladeProblem::ShankBent(side, bent));
    }
    if blade.lock == Some(false) {
        out.push(BladeProblem::LockFails(side));
    }
    if let (Some(proof), Some(capacity)) = (blade.proof_load, blade.capacity) {
        let needed = proof_factor(capacity.si()) * capacity.si();
        if beyond(needed, proof.si()) {
            out.push(BladeProblem::ProofShort(side, proof.si(), needed));
        }
    }
}

/// Everything of both blades that nobody looked at or measured.
fn not_looked_at(forks: &Forks) -> Vec<Look> {
    let any = |missing: fn(&Blade) -> bool| forks.blades.iter().any(missing);
    [
        (Look::Wear, any(|b| b.thickness_new.is_none() || b.thickness_now.is_none())),
        (Look::Modified, any(|b| b.modified.is_none())),
        (Look::Cracks, any(|b| b.crack.is_none())),
        (Look::Angle, any(|b| b.angle.is_none())),
        (Look::Straight, any(|b| b.bent.is_none())),
        (Look::Shank, any(|b| b.shank.is_none())),
        (Look::Tips, forks.tip_difference.is_none()),
        (Look::Lock, any(|b| b.lock.is_none())),
        (Look::Checked, forks.checked.is_none()),
    ]
    .into_iter()
    .filter(|(_, missing)| *missing)
    .map(|(look, _)| look)
    .collect()
}

/// True if on the day `on` the last thorough check, on the day `checked`, is longer ago than
/// [`INTERVAL_MONTHS`], or lies in the future. Days as year-month-day; what is no such day is overdue.
pub fn check_overdue(checked: &str, on: &str) -> bool {
    let day = |text: &str| -> Option<(u32, u32)> {
        let mut parts = text.splitn(3, '-').map(|part| part.parse::<u32>().ok());
        let (year, month, day) = (parts.next()??, parts.next()??, parts.next()??);
        Some((year.checked_mul(12)?.checked_add(month)?, day))
    };
    match (day(checked), day(on)) {
        (Some(checked), Some(on)) => on < checked || on > (checked.0.saturating_add(INTERVAL_MONTHS), checked.1),
        _ => true,
    }
}
