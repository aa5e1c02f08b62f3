//! Seeded mutations of small drawings, text and binary: no panic, no hang, no answer without a
//! reason. `corpus/dxf` holds drawings that once did harm or nearly so.

use crate::drawings_ezdxf::made;
use crate::made::Dice;
use std::path::PathBuf;
use survey::{GroundOptions, LengthUnit, Shape, read_ground, read_plan};

/// What a fuzzer calls: any bytes.
pub(crate) fn target(bytes: &[u8]) {
    let stated = GroundOptions { units: Some(LengthUnit::Millimetre), ..GroundOptions::default() };
    for options in [&GroundOptions::default(), &stated] {
        match read_plan("plan.dxf", bytes, options) {
            Ok(reading) => {
                assert!(!reading.notes.any_error());
                for feature in &reading.features {
                    let least = match &feature.shape {
                        Shape::Point(_) | Shape::Text { .. } => 1,
                        Shape::Line(_) => 2,
                        Shape::Area { .. } | Shape::Face(_) => 3,
                    };
                    assert!(feature.shape.points().count() >= least && feature.place > 0);
                    assert!(feature.shape.points().all(|p| p.at.is_finite() && p.height.is_none_or(f64::is_finite)));
                }
                let layers: u64 = reading.facts.layers.values().sum();
                assert_eq!(layers, reading.features.len() as u64);
            }
            Err(faults) => {
                assert!(faults.any_error());
                assert!(faults.list.iter().all(|f| f.hint.is_some() && f.code.starts_with("survey::")));
                assert!(faults.list.len() < 300);
            }
        }
    }
    let layers = Some(vec!["PLAN".to_owned(), "faces".to_owned()]);
    match read_ground("plan.dxf", bytes, &GroundOptions { layers, ..stated }) {
        Ok(reading) => assert!(reading.terrain.bounds().is_some_and(|(a, b)| a.is_finite() && b.is_finite())),
        Err(faults) => assert!(faults.any_error()),
    }
}

/// Values that stand for trouble: no number, no end, no size, another kind.
const TROUBLE: &[&str] = &[
    "1e308",
    "-1e308",
    "nan",
    "inf",
    "0",
    "-1",
    "1e-320",
    "99999999999",
    "32767",
    "INNER",
    "OUTER",
    "INSERT",
    "ENDSEC",
    "SECTION",
    "EOF",
    "BLOCK",
    "ENDBLK",
    "VERTEX",
    "SPLINE",
    "HATCH",
    "10",
    "41",
    "70",
    "",
    "POLYLINE",
    "LWPOLYLINE",
    "ENTITIES",
    "BLOCKS",
    "1000",
    "101",
    "67",
    "ELLIPSE",
    "ARC",
    "0.5",
    "-360",
    "1e9",
    "1e5",
];

pub(crate) fn mutated(seed: &[u8], dice: &mut Dice) -> Vec<u8> {
    let mut bytes = seed.to_vec();
    // Only text has lines to move about.
    if !seed.starts_with(b"AutoCAD Binary") && dice.below(4) != 0 {
        let mut lines: Vec<Vec<u8>> = bytes.split(|&b| b == b'\n').map(<[u8]>::to_vec).collect();
        for _ in 0..=dice.below(5) {
            let n = lines.len();
            let at = dice.below(n);
            match dice.below(6) {
                0 | 1 => lines[at] = TROUBLE[dice.below(TROUBLE.len())].as_bytes().to_vec(),
                2 => {
                    lines.remove(at);
                }
                3 => {
                    // A stretch of lines stands elsewhere too.
                    let stretch: Vec<_> = lines[at..(at + 2 * dice.below(40)).min(n)].to_vec();
                    let to = dice.below(n);
                    lines.splice(to..to, stretch);
                }
                4 => lines.truncate(at.max(1)),
                _ => lines.swap(at, dice.below(n)),
            }
            if lines.is_empty() {
                break;
            }
        }
        return lines.join(&b'\n');
    }
    for _ in 0..=dice.below(5) {
        if bytes.len() < 40 {
            break;
        }
        let at = dice.below(bytes.len());
        match dice.below(6) {
            0 => bytes[at] ^= 1 << dice.below(8),
            1 => bytes[at] = dice.next() as u8,
            2 => bytes.truncate(at),
            3 => {
                let end = (at + 1 + dice.below(8)).min(bytes.len());
                bytes[at..end].fill([0, 1, 0x7F, 0x80, 0xFF][dice.below(5)]);
            }
            4 => {
                let from = dice.below(bytes.len());
                let n = (1 + dice.below(64)).min(bytes.len() - from.max(at));
                bytes.copy_within(from..from + n, at);
            }
            _ => {
                bytes.remove(at);
            }
        }
    }
    bytes
}

#[test]
fn no_mutation_of_a_drawing_panics_or_answers_without_a_reason() {
    let mut dice = Dice(0xD4A3_2026);
    for name in ["made_r2000.dxf", "made_r12.dxf", "made_binary.dxf"] {
        let seed = made(name);
        target(&seed);
        for _ in 0..250 {
            target(&mutated(&seed, &mut dice));
        }
    }
}

#[test]
fn every_start_of_a_drawing_is_refused() {
    for name in ["made_r12.dxf", "made_binary.dxf"] {
        let whole = made(name);
        let stated = GroundOptions { units: Some(LengthUnit::Millimetre), ..GroundOptions::default() };
        // The sections after the entities do not matter, nor does the end mark.
        let entities = whole.windows(8).rposition(|w| w == b"ENTITIES").unwrap();
        for end in (0..entities).step_by(97) {
            assert!(read_plan("plan.dxf", &whole[..end], &stated).is_err(), "{name} cut at {end}");
        }
    }
}

#[test]
fn the_corpus_does_no_harm() {
    let folder = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("tests/corpus/dxf");
    let mut seen = 0;
    for entry in std::fs::read_dir(folder).unwrap() {
        target(&std::fs::read(entry.unwrap().path()).unwrap());
        seen += 1;
    }
    assert!(seen >= 4, "drawings of the corpus went missing");
}
