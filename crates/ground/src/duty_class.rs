//! Duty classes of scaffold platforms. They rate the platform for work and its material by hand; none of them rates
//! a loading bay for pallets, so a class alone never answers for one.

/// Loads of a class, EN 12811-1:2003, table 3: even loads second hand, the others from memory.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DutyClass {
    /// 1 to 6.
    pub number: u8,
    /// Even load, Pa.
    pub even: f64,
    /// On 0.5 m × 0.5 m, N.
    pub on_half_metre: f64,
    /// On 0.2 m × 0.2 m, N.
    pub on_fifth_metre: f64,
    /// Even load on a part of the bay (Pa), and how large a share of the bay; classes 4 to 6.
    pub on_part: Option<(f64, f64)>,
}

const fn row(number: u8, even: f64, half: f64, on_part: Option<(f64, f64)>) -> DutyClass {
    DutyClass { number, even, on_half_metre: half, on_fifth_metre: 1000.0, on_part }
}

const CLASSES: [DutyClass; 6] = [
    row(1, 750.0, 1500.0, None),
    row(2, 1500.0, 1500.0, None),
    row(3, 2000.0, 1500.0, None),
    row(4, 3000.0, 3000.0, Some((5000.0, 0.4))),
    row(5, 4500.0, 3000.0, Some((7500.0, 0.4))),
    row(6, 6000.0, 3000.0, Some((10_000.0, 0.5))),
];

impl DutyClass {
    /// The class of that number.
    pub fn of(number: u8) -> Option<&'static Self> {
        CLASSES.iter().find(|c| c.number == number)
    }
}
