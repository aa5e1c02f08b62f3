//! All rows of `../shared/reference-machine/levelled.csv`: a frame made upright on a cross slope, then
//! tilted further to the left with levelling fixed. Closed form, made outside the project. The
//! reference data folder lies beside the project; without it this test is left out, unless CI is set.

use crate::r1::r1;
use crate::val_tipping::reference;
use geometry::DVec3;
use machine::{BoomPosition, SupportState, kinematics};
use stability::{LoadOnBoom, Masses, RearAxleState, Stance, Support, TipsOver, onset, tipping_lines};

#[test]
fn val_r1_levelled_all_rows() {
    let Some(text) = reference("reference-machine/levelled.csv") else { return };
    let machine = r1();
    let attachment = machine.attachment("forks").unwrap();
    let mut rows = 0;
    for line in text.lines().skip(1) {
        let c: Vec<&str> = line.split(',').collect();
        let n = |i: usize| c[i].parse::<f64>().unwrap();
        let rear = if c[6] == "free" { RearAxleState::Free } else { RearAxleState::Locked };
        let stance = Stance::levelled(Support { state: SupportState::Tyres, rear }, n(5).to_radians());
        let boom = BoomPosition::level(n(1).to_radians(), n(2));
        let at = kinematics::tool_point(&machine.boom, attachment, boom) + DVec3::new(0.61, n(4), 0.5);
        let masses = Masses::standing(&machine, attachment, boom, stance).with(LoadOnBoom { mass: n(3), at });
        let found = onset(&masses, &tipping_lines(&machine, stance), 90_f64.to_radians()).unwrap();
        let tilt = found.tilt.to_degrees();
        assert!((tilt - n(7)).abs() < 0.01, "case {}: tilt {tilt}, table {}", c[0], n(7));
        assert_eq!((found.over, c[8].trim()), (TipsOver::Left, "left"), "case {}", c[0]);
        rows += 1;
    }
    assert_eq!(rows, 5, "a reference case went missing");
}
