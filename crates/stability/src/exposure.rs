//! From the mean that forecasts give to the gust at a height, by terrain. EN 1991-1-4:2005, 4.3 to 4.5
//! and table 4.1, from memory; recommended values, flat ground (`c_o` = 1), turbulence factor 1.
//!
//! - `k_r = 0.19 · (z_0 / 0.05 m)^0.07`, `c_r(z) = k_r · ln(z / z_0)`
//! - `I_v(z) = 1 / ln(z / z_0)`
//! - `q_p(z) = (1 + 7 I_v) · ½ ρ (c_r v_b)² = c_e(z) · ½ ρ v_b²`
//!
//! below `z_min` as at `z_min`. `v_b` is the ten-minute mean at 10 m over open country, which is what
//! a forecast states; the gust is that of the peak pressure, `√c_e · v_b`. Hills, and gusts around
//! buildings, are not in it.

/// Roughness of the ground upwind (EN 1991-1-4, table 4.1).
#[derive(Debug, Clone, Copy, PartialEq, Eq, serde::Serialize, serde::Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Terrain {
    /// 0: open sea, coast.
    Sea,
    /// I: lakes, flat ground without obstacles.
    Flat,
    /// II: low vegetation, single obstacles far apart.
    Open,
    /// III: villages, suburbs, woods.
    Suburb,
    /// IV: towns, most of the ground built on.
    Town,
}

/// Greatest height that the profile is given for, m.
pub const HIGHEST: f64 = 200.0;

/// Gust at the load over ten-minute mean at 10 m in open country, at least, whatever the ground upwind and
/// the height: `√c_e` of terrain IV up to its `z_min` of 10 m, 1.084, rounded down. Where a limit given as
/// a mean is turned into the gust that it allows, and the ground is not known.
pub const GUST_OVER_MEAN: f64 = 1.08;

impl Terrain {
    /// Words of files.
    pub const WORDS: [(&'static str, Self); 5] = [
        ("sea", Self::Sea),
        ("flat", Self::Flat),
        ("open", Self::Open),
        ("suburb", Self::Suburb),
        ("town", Self::Town),
    ];

    /// Roughness length `z_0` and least height `z_min`, m.
    pub fn roughness(self) -> (f64, f64) {
        match self {
            Self::Sea => (0.003, 1.0),
            Self::Flat => (0.01, 1.0),
            Self::Open => (0.05, 2.0),
            Self::Suburb => (0.3, 5.0),
            Self::Town => (1.0, 10.0),
        }
    }

    /// `ln(z / z_0)` at a height, m.
    fn log_height(self, height: f64) -> f64 {
        let (rough, least) = self.roughness();
        let known = (0.0..=HIGHEST).contains(&height);
        if known { libm::log(if height < least { least } else { height } / rough) } else { f64::NAN }
    }

    /// Mean at `height` (m) over the mean at 10 m in open country, `c_r`; not a number below 0 and
    /// above 200 m.
    pub fn mean_factor(self, height: f64) -> f64 {
        let (rough, _) = self.roughness();
        0.19 * libm::pow(rough / 0.05, 0.07) * self.log_height(height)
    }

    /// Intensity of turbulence at `height` (m), `I_v`; not a number below 0 and above 200 m.
    pub fn turbulence(self, height: f64) -> f64 {
        1.0 / self.log_height(height)
    }

    /// Peak pressure at `height` (m) over the pressure of the mean at 10 m in open country, `c_e`; not a
    /// number below 0 and above 200 m.
    pub fn exposure(self, height: f64) -> f64 {
        let mean = self.mean_factor(height);
        (1.0 + 7.0 * self.turbulence(height)) * mean * mean
    }

    /// Gust (m/s) at `height` (m) over this ground for a forecast mean (m/s).
    pub fn gust(self, mean: f64, height: f64) -> f64 {
        mean * self.exposure(height).sqrt()
    }

    /// Forecast mean (m/s, ten minutes, at 10 m over open country) whose gust at `height` (m) over this
    /// ground is `gust` (m/s).
    pub fn forecast_mean(self, gust: f64, height: f64) -> f64 {
        gust / self.exposure(height).sqrt()
    }
}
