//! Rows of `validation/statics/*.csv`, and the machine that a row describes.

use crate::r1::r1;
use geometry::DVec3;
use machine::{Levelling, Machine, SupportState};
use quantity::metres;
use stability::{Masses, RearAxleState, Springs, Stance, Support};
use std::collections::HashMap;

/// A row by the names of its columns.
pub(crate) struct Row {
    pub(crate) number: usize,
    cells: HashMap<&'static str, &'static str>,
}

impl Row {
    pub(crate) fn text(&self, column: &str) -> &'static str {
        self.cells.get(column).unwrap_or_else(|| panic!("no column {column}"))
    }

    pub(crate) fn number(&self, column: &str) -> f64 {
        self.maybe(column).unwrap_or_else(|| panic!("line {}: {column} is empty", self.number))
    }

    /// `None` where the cell is empty.
    pub(crate) fn maybe(&self, column: &str) -> Option<f64> {
        let cell = self.text(column);
        (!cell.is_empty()).then(|| cell.parse().unwrap_or_else(|e| panic!("{column}: {cell}: {e}")))
    }
}

/// All rows of a table, in as many as are expected.
pub(crate) fn rows(table: &'static str, expected: usize) -> Vec<Row> {
    let mut lines = table.lines();
    let names: Vec<&str> = lines.next().expect("a header").split(',').collect();
    let rows: Vec<Row> = lines
        .enumerate()
        .map(|(i, line)| Row { number: i + 2, cells: names.iter().copied().zip(line.split(',')).collect() })
        .collect();
    assert_eq!(rows.len(), expected, "a row went missing");
    rows
}

/// A machine on tyres that stands as a row says: both tracks the same, no boom or body of its own.
pub(crate) struct Peer {
    pub(crate) machine: Machine,
    pub(crate) stance: Stance,
    pub(crate) masses: Masses,
    pub(crate) springs: Springs,
}

pub(crate) fn peer(row: &Row) -> Peer {
    let at = |x: &str, y: &str, z: &str| DVec3::new(row.number(x), row.number(y), row.number(z));
    let axle = row.number("free_axle_mass_kg");
    let (half, rear) = (row.number("half_track_m"), row.number("rear_x_m"));
    let machine = standing((0.0, half), (rear, half), row.number("pin_height_m"));
    let body = row.number("body_mass_kg");
    let masses = Masses {
        sprung: body,
        sprung_moment: at("centre_x_m", "centre_y_m", "centre_z_m") * body,
        axle,
        axle_moment: DVec3::new(rear, 0.0, row.number("axle_centre_z_m")) * axle,
    };
    let springs = Springs { front: row.number("front_tyre_n_per_m"), rear: row.number("rear_tyre_n_per_m") };
    Peer { machine, stance: tyres(axle > 0.0), masses, springs }
}

/// On tyres, the rear axle free or locked straight.
pub(crate) fn tyres(free: bool) -> Stance {
    let rear = if free { RearAxleState::Free } else { RearAxleState::Locked };
    Stance::from(Support { state: SupportState::Tyres, rear })
}

/// R1 with other contacts: (x, half track) in front and behind, m.
pub(crate) fn standing(front: (f64, f64), rear: (f64, f64), pin: f64) -> Machine {
    let mut machine = r1();
    machine.bodies.clear();
    (machine.front.x, machine.front.half_track) = front;
    (machine.rear.axle.x, machine.rear.axle.half_track) = rear;
    machine.rear.pin_height = pin;
    machine.levelling = None::<Levelling>;
    machine.front.tyre.free_radius = metres(0.6);
    machine
}
