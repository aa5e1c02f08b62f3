//! Wheels and pads beside an edge as an endless strip of pressure, by an effective length along the edge.
//!
//! A slip is reckoned per metre of an endless edge; a wheel is not endless. Its force is spread along the edge over
//! its own length and half the depth of the cut, which is 2:1 spread at half the depth (ours): `l_e = l + h/2`. A body
//! that comes down under one wheel is longer than that, and its ends hold, which is not credited. Wheels in one line
//! along the edge count together where their lengths meet: the group with most force per metre governs.

use crate::edge_text as text;
use crate::input_fault::InputFaults;
use crate::slope_section::Surcharge;
use quantity::Dimension;

/// Contacts in one line along the edge: the wheels of one side, two pads.
#[derive(Debug, Clone, PartialEq)]
pub struct WheelRow {
    /// How much farther from the edge than the outermost row its outer edge stands, m; 0 for that row.
    pub behind: f64,
    /// Breadth of the contact square to the edge, m.
    pub across: f64,
    /// Length of the contact along the edge, m.
    pub along: f64,
    /// Place along the edge (m) and force (N) of each contact.
    pub contacts: Vec<[f64; 2]>,
}

impl WheelRow {
    /// Length along the edge over which one contact's force counts, m, beside a cut of `depth`.
    pub fn effective_length(&self, depth: f64) -> f64 {
        self.along + depth / 2.0
    }

    /// Most force per metre of edge of any contact or group of neighbours, N/m.
    pub fn per_metre(&self, depth: f64) -> f64 {
        let length = self.effective_length(depth);
        let mut row: Vec<[f64; 2]> =
            self.contacts.iter().map(|[at, f]| [*at, if *f < 0.0 { 0.0 } else { *f }]).collect();
        row.sort_by(|a, b| a[0].total_cmp(&b[0]));
        let mut most = 0.0_f64;
        for i in 0..row.len() {
            let mut sum = 0.0;
            for j in i..row.len() {
                sum += row[j][1];
                let line = sum / (row[j][0] - row[i][0] + length);
                // What is not a number stays so.
                most = if line.is_nan() || most.is_nan() { f64::NAN } else { most.max(line) };
            }
        }
        most
    }

    /// The strip where the outermost row's outer edge stands `distance` from the crest.
    pub fn strip(&self, distance: f64, depth: f64) -> Surcharge {
        let from = distance + self.behind;
        Surcharge { from, to: from + self.across, pressure: self.per_metre(depth) / self.across }
    }

    /// Takes everything that is wrong with the row.
    pub(crate) fn look(&self, faults: &mut InputFaults) {
        faults.range(text::NAME_LOAD_PLACE, self.behind, Dimension::Length, [0.0, 30.0]);
        faults.range(text::NAME_CONTACT_SIZE, self.across, Dimension::Length, [0.01, 20.0]);
        faults.range(text::NAME_CONTACT_SIZE, self.along, Dimension::Length, [0.01, 20.0]);
        if self.contacts.is_empty() {
            faults.push(crate::input_fault::InputFault::Missing { what: text::NAME_CONTACT_FORCE });
        }
        for [at, force] in &self.contacts {
            faults.range(text::NAME_LOAD_PLACE, *at, Dimension::Length, [-100.0, 100.0]);
            faults.range(text::NAME_CONTACT_FORCE, *force, Dimension::Force, [-1e6, 1e6]);
        }
    }
}

/// Takes everything that is wrong with rows; without any row there is nothing to ask of.
pub(crate) fn look_at(rows: &[WheelRow], faults: &mut InputFaults) {
    if rows.is_empty() {
        faults.push(crate::input_fault::InputFault::Missing { what: text::NAME_CONTACT_FORCE });
    }
    for row in rows {
        row.look(faults);
    }
}
