//! What a chart gives for a load whose centre is farther out than the rated one.

use crate::Chart;
use quantity::{Length, Mass, Si};

/// A row of the maker's own derating table.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DeratingRow {
    /// Load centre up to which it holds.
    pub load_centre: Length,
    /// Share of the charted capacity; 1 where the table gives none.
    pub share: f64,
    /// Capacity at most, wherever the table gives one.
    pub at_most: Option<Mass>,
}

/// What rule a load centre falls under.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum CentreRule {
    /// Not beyond the rated load centre: the chart as it is.
    Rated,
    /// No derating table: this excess is added to the reach, and the attachment's moment caps.
    Excess(f64),
    /// Row of the maker's table, by index: it replaces the rules of [`CentreRule::Excess`].
    Row(usize),
    /// Beyond the last row of the maker's table: not permitted.
    BeyondTable,
}

/// Load centres nearer than this to each other are the same, m.
const SAME: f64 = 1e-9;

impl Chart {
    /// The rule for a load whose centre lies `centre` m ahead of the fork face. Of a derating table
    /// the row of the next farther load centre: nothing is interpolated.
    pub fn centre_rule(&self, centre: f64) -> CentreRule {
        let rated = self.load_centre.si();
        if centre <= rated + SAME {
            return CentreRule::Rated;
        }
        if self.derating.is_empty() {
            return CentreRule::Excess(centre - rated);
        }
        let farther = self.derating.iter().enumerate().filter(|(_, row)| centre <= row.load_centre.si() + SAME);
        let next = farther.min_by(|(_, a), (_, b)| a.load_centre.si().total_cmp(&b.load_centre.si()));
        next.map_or(CentreRule::BeyondTable, |(i, _)| CentreRule::Row(i))
    }

    /// Charted capacity under a rule, kg; `None`: not permitted. The cap by moment of
    /// [`CentreRule::Excess`] is the attachment's and not here.
    pub fn derated_kg(&self, capacity_kg: f64, rule: CentreRule) -> Option<f64> {
        match rule {
            CentreRule::Rated | CentreRule::Excess(_) => Some(capacity_kg),
            CentreRule::Row(i) => {
                let row = self.derating.get(i)?;
                Some((capacity_kg * row.share).min(row.at_most.map_or(f64::INFINITY, |m| m.si())))
            }
            CentreRule::BeyondTable => None,
        }
    }
}

/// Index of the first row that is not behind its predecessor: load centres must rise from the rated
/// one on, and neither share nor greatest capacity may.
pub fn derating_fault(rated: Length, rows: &[DeratingRow]) -> Option<(usize, DeratingFault)> {
    let most = |row: &DeratingRow| row.at_most.map_or(f64::INFINITY, |m| m.si());
    let mut before = DeratingRow { load_centre: rated, share: 1.0, at_most: None };
    for (i, row) in rows.iter().enumerate() {
        if row.load_centre.si() <= before.load_centre.si() + SAME {
            return Some((i, DeratingFault::Order));
        }
        if row.share > before.share + 1e-12 || most(row) > most(&before) + 1e-9 {
            return Some((i, DeratingFault::Rises));
        }
        before = *row;
    }
    None
}

/// What is wrong with a row of a derating table.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum DeratingFault {
    /// Its load centre does not lie beyond the one before (or the rated one).
    Order,
    /// It gives more than the row before.
    Rises,
}
