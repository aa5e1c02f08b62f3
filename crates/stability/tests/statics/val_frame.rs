//! Wheel and pad forces over 200 random grounds, some with a contact in the air, against a grid of beams on
//! springs that only push: PyNiteFEA (`validation/statics/contact_forces.py`, `contact_forces.csv`).

use crate::peers::{Row, rows, standing, tyres};
use geometry::DVec3;
use stability::{LEVEL, Masses, OnSprings, Springs, on_springs};

const TABLE: &str = include_str!("../../../../validation/statics/contact_forces.csv");
/// Of the weight: the library turns by small angles, the project by whole ones, on leans of up to 5°.
const TOLERANCE: f64 = 0.005;
/// A force below this share of the weight counts as a contact in the air.
const IN_THE_AIR: f64 = 0.001;

fn four(row: &Row, what: &str, unit: &str) -> [f64; 4] {
    ["fl", "fr", "rl", "rr"].map(|w| row.number(&format!("{what}_{w}_{unit}")))
}

#[test]
fn val_contact_forces_over_200_grounds() {
    let mut greatest = 0.0_f64;
    let (mut free_rows, mut lifted_rows) = (0, 0);
    for row in rows(TABLE, 200) {
        let free = row.text("rear_axle") == "free";
        let pin = row.number("pin_height_m");
        let (front, rear) = (
            (row.number("front_x_m"), row.number("front_half_m")),
            (row.number("rear_x_m"), row.number("rear_half_m")),
        );
        let machine = standing(front, rear, pin);
        let (sprung, axle) = (row.number("mass_kg"), row.number("axle_mass_kg"));
        let centre = DVec3::new(row.number("centre_x_m"), row.number("centre_y_m"), row.number("centre_z_m"));
        let masses =
            Masses { sprung, sprung_moment: centre * sprung, axle, axle_moment: DVec3::new(rear.0, 0.0, pin) * axle };
        let springs = Springs { front: row.number("front_n_per_m"), rear: row.number("rear_n_per_m") };
        assert!((row.number("gravity_m_per_s2") - quantity::STANDARD_GRAVITY).abs() < 1e-12);
        let found = on_springs(&machine, tyres(free), &masses, LEVEL, springs, four(&row, "height", "m"));
        let OnSprings::Stands { force, .. } = found else { panic!("line {}: {found:?}", row.number) };
        let expected = four(&row, "force", "n");
        let weight = (sprung + axle) * quantity::STANDARD_GRAVITY;
        for (got, want) in force.iter().zip(expected) {
            let off = (got - want).abs() / weight;
            greatest = greatest.max(off);
            assert!(
                off < TOLERANCE,
                "line {}: {force:?}, expected {expected:?}, off by {off} of the weight",
                row.number
            );
            if want == 0.0 {
                assert!(*got < IN_THE_AIR * weight, "line {}: {force:?}, expected {expected:?}", row.number);
            }
            if want > TOLERANCE * weight {
                assert!(*got > 0.0, "line {}: {force:?}, expected {expected:?}", row.number);
            }
        }
        free_rows += usize::from(free);
        lifted_rows += usize::from(expected.contains(&0.0));
    }
    assert!(free_rows >= 20 && lifted_rows >= 80, "{free_rows} free, {lifted_rows} with a contact in the air");
    eprintln!("wheel forces: greatest difference {:.3} % of the weight", 100.0 * greatest);
}
