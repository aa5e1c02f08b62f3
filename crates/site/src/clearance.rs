//! Required distance to overhead lines, by voltage and by the rule that applies.
//!
//! Two regimes of US federal construction law: trucks with forks come under 29 CFR 1926.600(a)(6);
//! any hung load, also one slung from forks, is treated under 29 CFR 1926.1408 and its Table A.
//! The legal distance is to *every* part of machine, boom and load. Survey error, swing, boom flex
//! and the operator's allowance come on top. Local law may ask for more.

use evidence::Source;
use quantity::{Si, Voltage};

const FOOT: f64 = 0.3048;
const INCH: f64 = 0.0254;

/// Which rule applies.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Regime {
    /// Forks: 29 CFR 1926.600(a)(6)(i), (ii).
    Forks,
    /// Hung load: 29 CFR 1926.1408, Table A.
    HungLoad,
}

/// Legal distance, m; `None` above the table (hung load over 1,000 kV: the owner or a registered
/// engineer states it).
///
/// - Forks: 10 ft up to 50 kV, then 10 ft and 0.4 in for each kV above 50 kV.
/// - Hung load: Table A, upper bounds inclusive.
///
/// ```
/// use site::clearance::{required, Regime};
/// let at = |kv| quantity::kilovolts(kv);
/// assert!((required(at(132.0), Regime::Forks).unwrap() - 3.8811).abs() < 1e-4);
/// assert!((required(at(132.0), Regime::HungLoad).unwrap() - 4.572).abs() < 1e-9);
/// ```
pub fn required(voltage: Voltage, regime: Regime) -> Option<f64> {
    let kv = voltage.si() / 1000.0;
    if !(kv.is_finite() && kv >= 0.0) {
        return None;
    }
    match regime {
        Regime::Forks => Some(10.0 * FOOT + 0.4 * INCH * (kv - 50.0).max(0.0)),
        Regime::HungLoad => {
            const TABLE_A: [(f64, f64); 6] =
                [(50.0, 10.0), (200.0, 15.0), (350.0, 20.0), (500.0, 25.0), (750.0, 35.0), (1000.0, 45.0)];
            TABLE_A.iter().find(|(up_to, _)| kv <= *up_to).map(|(_, feet)| feet * FOOT)
        }
    }
}

/// Distance within which a hung load needs the further actions of the rule, m: 20 ft
/// (1926.1408(a)), 50 ft above 350 kV (1926.1409).
pub fn planning_zone(voltage: Voltage) -> f64 {
    if voltage.si() > 350_000.0 { 50.0 * FOOT } else { 20.0 * FOOT }
}

/// The clause of a regime.
pub fn source(regime: Regime) -> Source {
    match regime {
        Regime::Forks => Source::second_hand("29 CFR 1926.600(a)(6)"),
        Regime::HungLoad => Source::read("29 CFR 1926.1408, Table A"),
    }
}
