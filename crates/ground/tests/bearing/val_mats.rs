//! A beam on springs against finite differences (`validation/ground/bearing/outside.py`).

use crate::tables::numbers;
use ground::BeamOnGround;

/// The force acts at a point, differences of a 400th of the length spread it over one of them; more of them would drown in round-off.
const DIFFERENCES: f64 = 2e-3;

#[test]
fn val_beam_on_ground_by_finite_differences() {
    let rows = numbers(include_str!("../../../../validation/ground/bearing/beams.csv"));
    assert_eq!(rows.len(), 40);
    for row in rows {
        let beam = BeamOnGround {
            force: row["force_n"],
            length: row["length_m"],
            width: row["width_m"],
            stiffness: row["ei_nm2"],
            modulus: row["k_pa_m"],
        };
        let settles = beam.middle();
        assert!((settles / row["middle_m"] - 1.0).abs() < DIFFERENCES, "{row:?}: {settles}");
        // Ends may hardly move: measured by the middle.
        assert!((beam.ends() - row["ends_m"]).abs() < DIFFERENCES * settles, "{row:?}: {}", beam.ends());
        assert!((beam.moment() / row["moment_nm"] - 1.0).abs() < DIFFERENCES, "{row:?}: {}", beam.moment());
    }
}
