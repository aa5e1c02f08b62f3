//! The machines, the cases, and a tally of differences.

use machine::Machine;
use stability::{Masses, Onset, onset, tipping_lines};
use witness::draw::{Dice, Drawn, Kind, draw};

/// R1 and the invented machines of the examples.
pub(crate) fn machines() -> Vec<Machine> {
    let root = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../..");
    [
        "validation/machines/r1.toml",
        "examples/machines/wren-6.toml",
        "examples/machines/bittern-8.toml",
        "examples/machines/stork-18.toml",
        "examples/machines/pelican-12t.toml",
        "examples/machines/ibis-21r.toml",
    ]
    .map(|path| {
        let bytes = std::fs::read(root.join(path)).unwrap();
        jobfile::read_machine(path, &bytes).unwrap_or_else(|f| panic!("{path}: {:?}", f.list)).0
    })
    .into()
}

/// Masses as the statics takes them.
pub(crate) fn masses(case: &Drawn) -> Masses {
    let bare = Masses::standing(&case.machine, &case.machine.attachments[case.attachment], case.boom, case.stance);
    case.load.map_or(bare, |load| bare.with(load))
}

/// Where the statics sees it tip in a direction.
pub(crate) fn ours(case: &Drawn, azimuth: f64) -> Option<Onset> {
    onset(&masses(case), &tipping_lines(&case.machine, case.stance), azimuth)
}

/// The direction in which the statics sees it tip first, rad.
pub(crate) fn worst_direction(case: &Drawn) -> f64 {
    let tilt = |azimuth: f64| ours(case, azimuth).map_or(f64::INFINITY, |o| o.tilt);
    (0..720).map(|i| (f64::from(i) * 0.5).to_radians()).min_by(|a, b| tilt(*a).total_cmp(&tilt(*b))).unwrap()
}

/// Seeded cases of a kind that tip between 3° and 35°; every other one in its worst direction.
pub(crate) fn cases(kind: Kind, count: usize) -> Vec<Drawn> {
    let machines = machines();
    let mut dice = Dice::new(2_000 + kind as u64);
    let mut out = Vec::new();
    while out.len() < count {
        let mut case = draw(&machines, kind, &mut dice);
        if out.len() % 2 == 0 {
            case.azimuth = worst_direction(&case);
        }
        if ours(&case, case.azimuth).is_some_and(|o| o.tilt > 0.05 && o.tilt < 0.6) {
            out.push(case);
        }
    }
    out
}

/// Smallest and largest of differences; positive: the statics is later, or larger.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Tally {
    pub(crate) count: usize,
    pub(crate) least: f64,
    pub(crate) most: f64,
}

impl Tally {
    pub(crate) const NONE: Self = Self { count: 0, least: f64::INFINITY, most: f64::NEG_INFINITY };

    pub(crate) fn take(&mut self, difference: f64) {
        self.count += 1;
        self.least = self.least.min(difference);
        self.most = self.most.max(difference);
    }

    /// Says it, for whoever asks the tests for what they print.
    pub(crate) fn say(&self, of: &str, unit: &str) {
        println!("{of}: {} cases, from {:+.3} to {:+.3} {unit}", self.count, self.least, self.most);
    }
}
