//! Sag against worked examples, and the catenary against its own definition.
#![allow(clippy::disallowed_methods, reason = "tests use the platform's sines")]

use site::conductor::{Catenary, parabolic_sag, sag_with_wind};

/// Mehta and Mehta, Principles of Power System, example 8.17 (second hand): sag and height.
#[test]
fn val_sag_mehta_8_17() {
    let sag = parabolic_sag(260.0, 0.680, 3100.0 / 2.0);
    assert!((sag - 3.707).abs() < 5e-4, "{sag}");
    assert!((10.0 + sag - 13.7).abs() < 0.05);
}

/// The same book, example 8.18: slant and vertical sag with wind.
#[test]
fn val_sag_with_wind_mehta_8_18() {
    let sag = sag_with_wind(150.0, 1.98, 1.5, 2000.0);
    assert!((sag.slant - 3.493).abs() < 5e-4 && (sag.vertical - 2.784).abs() < 5e-4, "{sag:?}");
    assert!((sag.slant - sag.vertical.hypot(sag.sideways)).abs() < 1e-12);
}

/// The same book, example 8.23: supports at 30 m and 90 m, 500 m apart. The book's parabola gives
/// 23.02 m at the lowest and 30.70 m at mid-span; the catenary of the same tension hangs a little lower.
#[test]
fn val_river_crossing_mehta_8_23() {
    let (span, weight, tension, rise) = (500.0_f64, 1.5_f64, 1600.0_f64, 60.0_f64);
    let lowest_at = span / 2.0 - tension * rise / (weight * span);
    assert!((lowest_at - 122.0).abs() < 1e-9);
    let lowest = 30.0 - weight * lowest_at * lowest_at / (2.0 * tension);
    assert!((lowest - 23.02).abs() < 5e-3);
    let sag = parabolic_sag(span, weight, tension);
    assert!((60.0 - sag - 30.70).abs() < 5e-3);
    let hung = Catenary::with_parameter(tension / weight, span, rise);
    let clearance = 30.0 + hung.height(hung.lowest_at());
    assert!(clearance < lowest && clearance > lowest - 0.30, "{clearance}");
    assert!((hung.height(0.0)).abs() < 1e-9 && (hung.height(span) - rise).abs() < 1e-9);
}

#[test]
fn a_catenary_of_a_given_sag_has_it() {
    for (span, rise, sag) in
        [(30.0, 0.0, 0.4), (230.7, 12.0, 8.0), (40.0, -10.0, 3.0), (10.0, 0.0, 9.0), (60.0, 45.0, 2.0)]
    {
        let hung = Catenary::with_sag(span, rise, sag).unwrap();
        assert!((rise / 2.0 - hung.height(span / 2.0) - sag).abs() < 1e-6, "{span} {rise} {sag}");
        assert!((hung.height(span) - rise).abs() < 1e-7 && hung.height(0.0).abs() < 1e-7);
    }
    for (span, sag) in [(0.0, 1.0), (10.0, 0.0), (10.0, -1.0), (10.0, f64::NAN), (10.0, 11.0)] {
        assert!(Catenary::with_sag(span, 0.0, sag).is_none());
    }
}

#[test]
fn no_chord_lies_above_parabola_or_catenary() {
    use geometry::DVec3;
    for (rise, sag) in [(0.0, 2.0), (15.0, 6.0), (-20.0, 12.0)] {
        let span = site::Span { from: DVec3::new(3.0, 4.0, 20.0), to: DVec3::new(63.0, 84.0, 20.0 + rise), sag };
        let hung = Catenary::with_sag(100.0, rise, sag).unwrap();
        for pieces in [1, 4, 16] {
            for (i, chord) in span.chords(pieces).iter().enumerate() {
                for k in 0..=20 {
                    let t = (i as f64 + f64::from(k) / 20.0) / pieces as f64;
                    let at = chord.a.lerp(chord.b, f64::from(k) / 20.0).z;
                    let parabola = 20.0 + rise * t - 4.0 * sag * t * (1.0 - t);
                    assert!(at <= parabola + 1e-9 && at <= 20.0 + hung.height(100.0 * t) + 1e-9, "{pieces} {t}");
                }
            }
        }
    }
}
