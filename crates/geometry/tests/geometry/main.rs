//! Closed-form distances against parry3d-f64 (GJK) on seeded random pairs.
#![allow(missing_docs, reason = "tests")]

use geometry::{
    DVec3, OrientedBox, Pose, Segment, distance_point_segment, distance_segment_box, distance_segment_segment,
};
use parry3d_f64::math::{Pose as Isometry, Vector};
use parry3d_f64::query;
use parry3d_f64::shape::{Cuboid, Segment as ParrySegment};

/// GJK stops at this accuracy.
const GJK: f64 = 1e-6;
const PAIRS: usize = 20_000;

/// A small generator with a seed (splitmix64): the same pairs every time.
struct Seeded(u64);
impl Seeded {
    fn next(&mut self) -> f64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        ((z ^ (z >> 31)) >> 11) as f64 / (1u64 << 53) as f64
    }
    fn point(&mut self, size: f64) -> DVec3 {
        DVec3::new(self.next() - 0.5, self.next() - 0.5, self.next() - 0.5) * (2.0 * size)
    }
}

fn parry(s: &Segment) -> ParrySegment {
    let p = |v: DVec3| Vector::new(v.x, v.y, v.z);
    ParrySegment::new(p(s.a), p(s.b))
}

#[test]
fn val_segment_to_segment_against_parry() {
    let mut random = Seeded(7);
    for _ in 0..PAIRS {
        let (p, q) = (
            Segment { a: random.point(10.0), b: random.point(10.0) },
            Segment { a: random.point(10.0), b: random.point(10.0) },
        );
        let ours = distance_segment_segment(&p, &q);
        let theirs = query::distance(&Isometry::IDENTITY, &parry(&p), &Isometry::IDENTITY, &parry(&q))
            .map_or(f64::NAN, |d| d.distance);
        assert!((ours - theirs).abs() < GJK, "{p:?} {q:?}: {ours} against {theirs}");
    }
}

#[test]
fn val_segment_to_box_against_parry() {
    let mut random = Seeded(11);
    let mut touching = 0;
    for _ in 0..PAIRS {
        let segment = Segment { a: random.point(6.0), b: random.point(6.0) };
        let half = DVec3::new(0.1 + 2.0 * random.next(), 0.1 + 2.0 * random.next(), 0.1 + 2.0 * random.next());
        let pose = Pose::from_axes(random.point(1.0), random.point(1.0), random.point(5.0));
        let ours = distance_segment_box(&segment, &OrientedBox { outer_from_box: pose, half });
        // In the box's own frame, so that both see the same numbers.
        let inverse = pose.inverse();
        let inside = Segment { a: inverse * segment.a, b: inverse * segment.b };
        let cuboid = Cuboid::new(Vector::new(half.x, half.y, half.z));
        let theirs = query::distance(&Isometry::IDENTITY, &parry(&inside), &Isometry::IDENTITY, &cuboid)
            .map_or(f64::NAN, |d| d.distance);
        assert!((ours - theirs).abs() < GJK, "{segment:?} {half}: {ours} against {theirs}");
        touching += usize::from(ours == 0.0);
    }
    assert!(touching > 100, "the set has crossing pairs too");
}

#[test]
fn a_point_is_a_segment_without_length() {
    let mut random = Seeded(13);
    for _ in 0..2_000 {
        let p = random.point(10.0);
        let s = Segment { a: random.point(10.0), b: random.point(10.0) };
        let as_segment = distance_segment_segment(&Segment { a: p, b: p }, &s);
        assert!((distance_point_segment(p, &s) - as_segment).abs() < 1e-12);
    }
}

#[test]
fn parallel_and_degenerate_segments() {
    let s = |a: [f64; 3], b: [f64; 3]| Segment { a: DVec3::from_array(a), b: DVec3::from_array(b) };
    let along = s([0.0, 0.0, 0.0], [10.0, 0.0, 0.0]);
    assert_eq!(distance_segment_segment(&along, &s([2.0, 3.0, 0.0], [8.0, 3.0, 0.0])), 3.0);
    assert_eq!(distance_segment_segment(&along, &s([13.0, 4.0, 0.0], [20.0, 4.0, 0.0])), 5.0);
    assert_eq!(distance_segment_segment(&along, &s([5.0, 0.0, 2.0], [5.0, 0.0, 2.0])), 2.0);
    assert_eq!(
        distance_segment_segment(&s([1.0, 1.0, 1.0], [1.0, 1.0, 1.0]), &s([1.0, 1.0, 4.0], [1.0, 1.0, 4.0])),
        3.0
    );
}
