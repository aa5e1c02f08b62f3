//! Which of a machine's charts holds.

use crate::{Chart, LevelTolerance, Machine, SupportState};
use quantity::Si;

/// How far out of level the machine stands at worst, rad; both positive.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OutOfLevel {
    /// Sideways.
    pub sideways: f64,
    /// Fore and aft.
    pub fore_aft: f64,
}

impl LevelTolerance {
    /// True if the chart still holds so far out of level.
    pub fn covers(&self, level: OutOfLevel) -> bool {
        level.sideways <= self.sideways.si() && level.fore_aft <= self.fore_aft.si()
    }

    /// True if it allows no more than the other in either direction.
    fn within(&self, other: &Self) -> bool {
        self.sideways.si() <= other.sideways.si() && self.fore_aft.si() <= other.fore_aft.si()
    }
}

/// Why two charts of a machine cannot stand beside each other.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ChartClash {
    /// Nothing tells them apart.
    Twins,
    /// Each holds farther out of level than the other in one direction: neither is the stricter one.
    Levels,
}

impl Chart {
    /// True if both are for the same attachment, support state, rated load centre and tyres; one that
    /// names no tyres is for all.
    fn same_but_level(&self, other: &Self) -> bool {
        let tyres = match (&self.tyres, &other.tyres) {
            (Some(a), Some(b)) => crate::same_mark(a, b),
            _ => true,
        };
        let centre = (self.load_centre.si() - other.load_centre.si()).abs() <= SAME;
        self.attachment == other.attachment && self.support == other.support && centre && tyres
    }

    /// True if both can be told apart by level condition alone, and this one is for the more level ground.
    pub fn is_stricter_than(&self, other: &Self) -> bool {
        self.same_but_level(other) && self.level.within(&other.level) && !other.level.within(&self.level)
    }

    /// Whether two charts of one machine can be told apart: by attachment, support state, rated load
    /// centre, tyres, or how far out of level they hold.
    pub fn clash(&self, other: &Self) -> Option<ChartClash> {
        if !self.same_but_level(other) {
            return None;
        }
        match (self.level.within(&other.level), other.level.within(&self.level)) {
            (true, true) => Some(ChartClash::Twins),
            (false, false) => Some(ChartClash::Levels),
            _ => None,
        }
    }
}

/// Load centres nearer than this are the same, m.
const SAME: f64 = 1e-9;

impl Machine {
    /// True if the chart is for the tyres that the machine stands on: it names none, or the set that
    /// the machine's file describes.
    pub fn tyres_fit(&self, chart: &Chart) -> bool {
        match (&chart.tyres, &self.tyres) {
            (None, _) => true,
            (Some(chart), Some(fitted)) => crate::same_mark(chart, fitted),
            (Some(_), None) => false,
        }
    }

    /// Every chart for a load whose centre lies `centre` m ahead of the fork face: of several rated
    /// load centres those of the smallest that covers it, else of the largest; the strictest about
    /// level first. Charts for other tyres are never among them.
    pub fn charts_for(&self, attachment: &str, support: SupportState, centre: f64) -> Vec<&Chart> {
        let fits = |c: &&Chart| c.attachment == attachment && c.support == support && self.tyres_fit(c);
        let rated = |c: &Chart| c.load_centre.si();
        let all = || self.charts.iter().filter(fits);
        let covering = all().map(rated).filter(|r| *r >= centre - SAME).min_by(f64::total_cmp);
        let Some(chosen) = covering.or_else(|| all().map(rated).max_by(f64::total_cmp)) else { return Vec::new() };
        let mut charts: Vec<&Chart> = all().filter(|c| (rated(c) - chosen).abs() <= SAME).collect();
        let order = |c: &Chart| (c.level.sideways.si(), c.level.fore_aft.si());
        charts.sort_by(|a, b| order(a).0.total_cmp(&order(b).0).then(order(a).1.total_cmp(&order(b).1)));
        charts
    }

    /// The chart for a load whose centre lies `centre` m ahead of the fork face on ground so far out of
    /// level: of [`Machine::charts_for`] the strictest that still holds there. Where none does, the
    /// one that holds farthest, for the check of level to refuse.
    pub fn chart_on(&self, attachment: &str, support: SupportState, centre: f64, level: OutOfLevel) -> Option<&Chart> {
        let charts = self.charts_for(attachment, support, centre);
        charts.iter().find(|c| c.level.covers(level)).or(charts.last()).copied()
    }

    /// As [`Machine::chart_on`] where the ground is not known: the chart that holds farthest out of
    /// level.
    pub fn chart_for(&self, attachment: &str, support: SupportState, centre: f64) -> Option<&Chart> {
        self.charts_for(attachment, support, centre).last().copied()
    }
}
