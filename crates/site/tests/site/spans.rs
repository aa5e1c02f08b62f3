//! Spans with sag: never drawn higher than the conductor hangs.

use geometry::DVec3;
use site::Span;

/// W26, Mehta & Mehta, Principles of Power System, Example 8.23, p. 193: span 500 m, tension
/// 1,600 kg, conductor 1.5 kg/m, supports at 30 m and 90 m: 30.70 m at mid-span, lowest 23.02 m at
/// 128 m from the lower support. As a parabola the sag at mid-span below the chord is wl²/8T = 29.30 m.
#[test]
fn val_river_crossing() {
    let sag = 1.5 * 500.0 * 500.0 / (8.0 * 1600.0);
    let span = Span { from: DVec3::new(0.0, 0.0, 30.0), to: DVec3::new(500.0, 0.0, 90.0), sag };
    let pieces = 1000;
    let chords = span.chords(pieces);
    let lowest = chords.iter().map(|c| c.a.z.min(c.b.z)).fold(f64::INFINITY, f64::min);
    assert!((lowest - 23.02).abs() < 0.01, "lowest {lowest}");
    let middle = chords[pieces / 2].a.z;
    assert!((middle - 30.70).abs() < 0.01, "mid-span {middle}");
}

#[test]
fn chords_lie_on_or_below_the_curve() {
    let span = Span { from: DVec3::new(0.0, 0.0, 10.0), to: DVec3::new(40.0, 9.0, 12.0), sag: 1.2 };
    for pieces in [1, 2, 5, 8] {
        for chord in span.chords(pieces) {
            for i in 0..=20 {
                let p = chord.a.lerp(chord.b, f64::from(i) / 20.0);
                let t = p.x / 40.0;
                let curve = 10.0 + 2.0 * t - 4.0 * 1.2 * t * (1.0 - t);
                assert!(p.z <= curve + 1e-12, "{pieces} pieces at {t}: {} above {curve}", p.z);
                assert!(p.z >= curve - 1.2 * 1.02, "and not absurdly low");
            }
        }
    }
}
