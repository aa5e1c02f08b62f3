//! Strength classes of timber and how long and how wet it is loaded.

/// Characteristic strength and mean stiffness of timber.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Timber {
    /// Bending strength `f_m,k`, Pa.
    pub bending: f64,
    /// Shear strength `f_v,k`, Pa.
    pub shear: f64,
    /// Mean modulus of elasticity along the grain `E_0,mean`, Pa.
    pub stiffness: f64,
}

/// Name, `f_m,k` and `f_v,k` in N/mm², `E_0,mean` in kN/mm²: EN 338:2016, tables 1 and 3, from memory.
const CLASSES: [(&str, f64, f64, f64); 18] = [
    ("C14", 14.0, 3.0, 7.0),
    ("C16", 16.0, 3.2, 8.0),
    ("C18", 18.0, 3.4, 9.0),
    ("C20", 20.0, 3.6, 9.5),
    ("C22", 22.0, 3.8, 10.0),
    ("C24", 24.0, 4.0, 11.0),
    ("C27", 27.0, 4.0, 11.5),
    ("C30", 30.0, 4.0, 12.0),
    ("C35", 35.0, 4.0, 13.0),
    ("C40", 40.0, 4.0, 14.0),
    ("D18", 18.0, 3.5, 9.5),
    ("D24", 24.0, 3.7, 10.0),
    ("D30", 30.0, 3.9, 11.0),
    ("D35", 35.0, 4.1, 12.0),
    ("D40", 40.0, 4.2, 13.0),
    ("D50", 50.0, 4.5, 14.0),
    ("D60", 60.0, 4.8, 17.0),
    ("D70", 70.0, 5.0, 20.0),
];

impl Timber {
    /// The class of that name, `C14` to `C40` softwood, `D18` to `D70` hardwood.
    pub fn class(name: &str) -> Option<Self> {
        let row = CLASSES.iter().find(|c| c.0 == name)?;
        Some(Self { bending: row.1 * 1e6, shear: row.2 * 1e6, stiffness: row.3 * 1e9 })
    }

    /// The names known, softwood first.
    pub fn classes() -> impl Iterator<Item = &'static str> {
        CLASSES.iter().map(|c| c.0)
    }
}

/// How long the load lies, of all that act together the shortest (EN 1995-1-1:2004, 2.3.1.2, from memory).
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Duration {
    /// More than ten years.
    Permanent,
    /// Six months to ten years: a store.
    Long,
    /// A week to six months: pallets on a landing.
    Medium,
    /// Less than a week.
    Short,
}

/// How wet the timber gets.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Moisture {
    /// Under cover: service classes 1 and 2.
    Covered,
    /// In the weather: service class 3.
    Weather,
}

/// Factors on the strength of timber.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TimberUse {
    /// Duration and moisture.
    pub k_mod: f64,
    /// Material.
    pub gamma_m: f64,
    /// Cracks, in shear.
    pub k_cr: f64,
}

impl TimberUse {
    /// Solid timber: `k_mod` by table 3.1, `γ_M = 1.3` by table 2.3, `k_cr = 0.67` by 6.1.7(2) of EN 1995-1-1:2004
    /// with A1:2008, all from memory.
    pub fn solid(moisture: Moisture, duration: Duration) -> Self {
        let k_mod = match (moisture, duration) {
            (Moisture::Covered, Duration::Permanent) => 0.60,
            (Moisture::Covered, Duration::Long) | (Moisture::Weather, Duration::Short) => 0.70,
            (Moisture::Covered, Duration::Medium) => 0.80,
            (Moisture::Covered, Duration::Short) => 0.90,
            (Moisture::Weather, Duration::Permanent) => 0.50,
            (Moisture::Weather, Duration::Long) => 0.55,
            (Moisture::Weather, Duration::Medium) => 0.65,
        };
        Self { k_mod, gamma_m: 1.3, k_cr: 0.67 }
    }
}

impl Default for TimberUse {
    /// In the weather, for weeks: what a landing on a site is.
    fn default() -> Self {
        Self::solid(Moisture::Weather, Duration::Medium)
    }
}
