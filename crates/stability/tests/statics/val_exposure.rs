//! Exposure factors of EN 1991-1-4:2005 (4.5, figure 4.2), worked by hand from the formulas; values
//! from memory, as printed in handbooks to two or three digits.

use stability::exposure::{GUST_OVER_MEAN, Terrain};

/// One unit of the last digit worked by hand.
const DIGIT: f64 = 0.001;

/// Terrain, height (m), `c_e` by hand: `k_r`, `ln(z/z_0)`, `c_r`, `I_v` to five digits.
const BY_HAND: [(Terrain, f64, f64); 10] = [
    // k_r 0.19: ln 80 = 4.38203, c_r 0.83259, I_v 0.22820
    (Terrain::Open, 4.0, 1.8005),
    // ln 100 = 4.60517, c_r 0.87498, I_v 0.21715
    (Terrain::Open, 5.0, 1.9293),
    // ln 200 = 5.29832, c_r 1.00668, I_v 0.18874
    (Terrain::Open, 10.0, 2.3523),
    // ln 400 = 5.99146, c_r 1.13838, I_v 0.16690
    (Terrain::Open, 20.0, 2.8099),
    // below z_min 2 m as there: ln 40 = 3.68888, c_r 0.70089, I_v 0.27108
    (Terrain::Open, 0.5, 1.4235),
    // k_r 0.15604: ln 3333 = 8.11173, c_r 1.26573, I_v 0.12328
    (Terrain::Sea, 10.0, 2.9847),
    // k_r 0.16976: ln 1000 = 6.90776, c_r 1.17266, I_v 0.14476
    (Terrain::Flat, 10.0, 2.7687),
    // k_r 0.21539: ln 33.33 = 3.50656, c_r 0.75528, I_v 0.28518
    (Terrain::Suburb, 10.0, 1.7092),
    // k_r 0.23433: ln 10 = 2.30259, c_r 0.53957, I_v 0.43429
    (Terrain::Town, 10.0, 1.1762),
    // z_min of a town is 10 m
    (Terrain::Town, 3.0, 1.1762),
];

#[test]
fn val_exposure() {
    for (terrain, height, by_hand) in BY_HAND {
        let got = terrain.exposure(height);
        assert!((got - by_hand).abs() < DIGIT, "{terrain:?} {height} m: {got}, by hand {by_hand}");
    }
    // The figure that handbooks print: 2.35 in open country at 10 m.
    assert!((Terrain::Open.exposure(10.0) - 2.35).abs() < 0.005);
    let least = Terrain::WORDS
        .iter()
        .flat_map(|(_, terrain)| (0..=200).map(|z| terrain.gust(1.0, f64::from(z))))
        .fold(f64::INFINITY, f64::min);
    assert!(GUST_OVER_MEAN <= least && least - GUST_OVER_MEAN < 0.01, "rounded down: {least}");
}

#[test]
fn gust_and_mean_are_each_others_inverse_and_nothing_is_said_beyond_the_profile() {
    for (_, terrain) in Terrain::WORDS {
        for height in [0.0, 2.0, 7.5, 31.0, 200.0] {
            assert!((terrain.forecast_mean(terrain.gust(7.0, height), height) - 7.0).abs() < 1e-12);
        }
        for height in [-0.1, 200.1, f64::NAN] {
            assert!(terrain.gust(7.0, height).is_nan() && terrain.forecast_mean(7.0, height).is_nan());
        }
        assert!(terrain.exposure(40.0) > terrain.exposure(12.0), "higher is windier");
    }
}
