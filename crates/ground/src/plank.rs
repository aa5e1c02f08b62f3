//! Planks of a scaffold: the longest span for an even load, by table.

/// How thick a 2 × 10 in plank really is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Plank {
    /// Rough sawn, 2 in.
    FullThickness,
    /// Planed, 1½ in.
    NominalThickness,
}

const FOOT: f64 = 0.3048;
const PSF: f64 = 4.448_221_615_260_5 / (FOOT * FOOT);

/// Load in lb/ft² and longest span in ft: 29 CFR 1926 Subpart L, Appendix A, 1(b), from memory.
const SPANS: [(Plank, f64, f64); 5] = [
    (Plank::FullThickness, 25.0, 10.0),
    (Plank::FullThickness, 50.0, 8.0),
    (Plank::FullThickness, 75.0, 6.0),
    (Plank::NominalThickness, 25.0, 8.0),
    (Plank::NominalThickness, 50.0, 6.0),
];

/// Longest span (m) of a plank under an even `load` (Pa), by the next heavier row: nothing is read between rows.
/// `None`: heavier than the table goes. A plank carries an even load; a pallet's foot is not one.
pub fn longest_plank_span(plank: Plank, load: f64) -> Option<f64> {
    // A load given in whole lb/ft² must meet its own row.
    let row = SPANS.iter().find(|(p, psf, _)| *p == plank && load >= 0.0 && load <= psf * PSF * (1.0 + 1e-6))?;
    Some(row.2 * FOOT)
}
