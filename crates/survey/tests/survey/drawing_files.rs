//! Every drawing of the reference data, one row each, and what its README says of it.

use crate::drawings_ezdxf::sums;
use crate::reference::{bytes, codes, files, present};
use std::collections::BTreeSet;
use survey::{Attribute, GroundOptions, LengthUnit, PlanReading, Shape, UnitSource, read_ground, read_plan};

/// What a drawing must give.
enum Outcome {
    /// Points, lines, areas, texts; kinds left out; codes of the warnings, each once.
    Read([usize; 4], &'static [(&'static str, u64)], &'static [&'static str]),
    /// Refused with exactly these codes.
    Refused(&'static [&'static str]),
}
use Outcome::{Read, Refused};

const NO: Option<LengthUnit> = None;
const M: Option<LengthUnit> = Some(LengthUnit::Metre);
const IN: Option<LengthUnit> = Some(LengthUnit::Inch);
const UNKNOWN: Outcome = Refused(&["survey::units-unknown"]);

#[rustfmt::skip]
const FILES: &[(&str, Option<LengthUnit>, Outcome)] = &[
    ("plans/delft_site_plan_local_mm.dxf", NO, Read([0, 0, 413, 0], &[], &[])),
    ("plans/delft_site_plan_rd_metres.dxf", NO, Read([0, 0, 413, 0], &[], &[])),
    ("plans/house_floorplan_units_lie.dxf", NO, Refused(&["survey::drawing-size"])),
    ("plans/house_floorplan_units_lie.dxf", IN, Read([0, 603, 149, 98],
        &[("DIMENSION", 63), ("LEADER", 6), ("LINE", 4), ("PAPER SPACE", 3)],
        &["survey::corners-repeated", "survey::entity-unusable", "survey::left-out", "survey::lines-joined",
            "survey::units-overridden"])),
    ("plans/dxf_odd/binary_r13.dxf", NO, UNKNOWN),
    ("plans/dxf_odd/binary_r13.dxf", M, Read([0, 3, 0, 0], &[], &[])),
    // Nine lines and two arcs: one outline that crosses itself once.
    ("plans/dxf_odd/closed_loop_with_arcs.dxf", NO, Read([0, 0, 2, 0], &[], &["survey::lines-joined", "survey::outline-split"])),
    ("plans/dxf_odd/disto_measured_points_r12.dxf", NO, UNKNOWN),
    ("plans/dxf_odd/disto_measured_points_r12.dxf", M, Read([11, 10, 0, 11], &[], &["survey::drawing-size"])),
    ("plans/dxf_odd/georeferenced_geodata.dxf", NO, Read([0, 0, 1, 0], &[], &["survey::drawing-place"])),
    ("plans/dxf_odd/lines_452_r12.dxf", NO, UNKNOWN),
    ("plans/dxf_odd/lines_452_r12.dxf", M, Read([0, 0, 10, 0], &[], &["survey::lines-joined"])),
    ("plans/dxf_odd/needs_recovery.dxf", NO, Refused(&["survey::no-end", "survey::units-unknown"])),
    ("plans/dxf_odd/needs_recovery.dxf", M, Read([0, 1210, 50, 63], &[("LINE", 20)],
        &["survey::entity-unusable", "survey::left-out", "survey::lines-joined", "survey::no-end"])),
    ("plans/dxf_odd/nested_blocks_with_attribs.dxf", NO, Read([0, 25, 25, 0], &[], &[])),
    ("plans/dxf_odd/trash_beyond_eof_r12.dxf", NO, UNKNOWN),
    ("plans/dxf_odd/trash_beyond_eof_r12.dxf", M, Read([0, 0, 1, 0], &[], &[])),
    ("plans/dxf_odd/unreadable_block_scale_zero.dxf", NO, UNKNOWN),
    ("plans/dxf_odd/unreadable_block_scale_zero.dxf", M, Read([0, 5, 2, 3], &[], &["survey::lines-joined", "survey::scale-zero"])),
];

fn read(path: &str, units: Option<LengthUnit>) -> PlanReading {
    read_plan(path, &bytes(path), &GroundOptions { units, ..GroundOptions::default() }).unwrap()
}

#[test]
fn every_drawing_is_read_or_refused_as_stated() {
    if !present() {
        return;
    }
    let mut wrong = Vec::new();
    for (path, units, outcome) in FILES {
        let options = GroundOptions { units: *units, ..GroundOptions::default() };
        match (read_plan(path, &bytes(path), &options), outcome) {
            (Ok(got), Read(counts, left_out, warnings)) => {
                let count = |is: fn(&Shape) -> bool| got.features.iter().filter(|f| is(&f.shape)).count();
                let found = [
                    count(|s| matches!(s, Shape::Point(_))),
                    count(|s| matches!(s, Shape::Line(_))),
                    count(|s| matches!(s, Shape::Area { .. })),
                    count(|s| matches!(s, Shape::Text { .. })),
                ];
                let left: Vec<_> = got.facts.left_out.iter().map(|(k, n)| (k.as_str(), *n)).collect();
                let said: BTreeSet<_> = codes(&got.notes).into_iter().collect();
                if found != *counts || left != *left_out || said != warnings.iter().copied().collect() {
                    wrong.push(format!("{path}: {found:?} {left:?} {said:?}"));
                }
            }
            (Err(faults), Refused(expected)) => {
                assert_eq!(codes(&faults), *expected, "{path}");
                assert!(faults.list.iter().all(|f| f.hint.is_some() && f.place.file == *path), "{path}");
            }
            (Ok(_), Refused(_)) => wrong.push(format!("{path} with {units:?} was read")),
            (Err(faults), Read(..)) => wrong.push(format!("{path} with {units:?}: {:?}", codes(&faults))),
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
    let all: Vec<String> = ["plans", "plans/dxf_odd"].iter().flat_map(|f| files(f, &["dxf"])).collect();
    assert_eq!(all.len(), 12, "drawings came or went");
    assert!(all.iter().all(|path| FILES.iter().any(|row| row.0 == path)), "a drawing has no row");
}

#[test]
fn val_dxf_delft_areas_in_metres_and_in_local_millimetres() {
    if !present() {
        return;
    }
    // README of the reference data: areas, m², to the last digit given there.
    let stated = [
        ("SITE-BUILDINGS", 161, 8656.33),
        ("SITE-ROADS", 189, 7825.63),
        ("SITE-WATER", 3, 16065.53),
        ("SITE-BRIDGES", 3, 125.90),
        ("SITE-BARRIERS", 57, 379.37),
    ];
    let [metres, local] =
        ["plans/delft_site_plan_rd_metres.dxf", "plans/delft_site_plan_local_mm.dxf"].map(|p| read(p, NO));
    for reading in [&metres, &local] {
        let sums = sums(reading);
        for (layer, count, area) in stated {
            assert_eq!(reading.facts.layers[layer], count);
            assert!((sums.areas[layer] - area).abs() <= 0.005, "{layer}: {}", sums.areas[layer]);
        }
    }
    // The local drawing is moved by (84800, 447400) and is otherwise the same, corner by corner.
    for (a, b) in metres.features.iter().zip(&local.features) {
        for (p, q) in a.shape.points().zip(b.shape.points()) {
            let moved = q.at + geometry::DVec2::new(84800.0, 447_400.0);
            assert!((p.at - moved).length() < 1e-6, "{p:?} {q:?}");
        }
    }
    assert_eq!(local.facts.unit, Some((LengthUnit::Millimetre, UnitSource::File)));
}

#[test]
fn val_dxf_size_of_a_drawing_in_inches_that_says_where_it_lies() {
    if !present() {
        return;
    }
    let near = |got: f64, want: f64| assert!((got - want).abs() < 0.05, "{got} {want}");
    let parliament = read("plans/dxf_odd/georeferenced_geodata.dxf", NO);
    near(parliament.facts.max[0] - parliament.facts.min[0], 235.2);
    near(parliament.facts.max[1] - parliament.facts.min[1], 283.8);
    // Shown with where the drawing says that it lies, and not applied: it is not the system of its numbers.
    assert_eq!(parliament.facts.crs, None);
    let said = &parliament.notes.list[0].message;
    for (name, want) in [
        ("east", "23448.14"),
        ("site_east", "530207.56"),
        ("site_north", "179366.78"),
        ("crs", "OSGB1936.NationalGrid"),
    ] {
        assert!(format!("{:?}", said.arg(name)).contains(want), "{name}: {said:?}");
    }
}

#[test]
fn an_array_of_blocks_carries_its_attributes() {
    if !present() {
        return;
    }
    let flags = read("plans/dxf_odd/nested_blocks_with_attribs.dxf", NO);
    assert_eq!(flags.features.len(), 50, "25 copies of two shapes");
    for flag in &flags.features {
        assert_eq!((flag.name.as_deref(), flag.layer.as_str()), (Some("FLAG"), "FLAGS"));
        assert_eq!(flag.attributes["NAME"], Attribute::Text("Flag".to_owned()));
        assert_eq!(flag.attributes.len(), 3);
        assert!(flag.shape.points().all(|p| p.height.is_none()), "a flat drawing has no heights");
    }
}

#[test]
fn measured_points_are_ground_on_the_layer_that_the_job_names() {
    if !present() {
        return;
    }
    let path = "plans/dxf_odd/disto_measured_points_r12.dxf";
    let with = |layers: Option<&[&str]>| {
        let layers = layers.map(|l| l.iter().map(|&l| l.to_owned()).collect());
        read_ground(path, &bytes(path), &GroundOptions { units: M, layers, ..GroundOptions::default() })
    };
    let last = |r: Result<survey::GroundReading, evidence::Faults>| {
        r.map(|r| r.facts).unwrap_err().list.last().map(|f| (f.code.clone(), format!("{:?}", f.message))).unwrap()
    };
    let (code, message) = last(with(None));
    assert_eq!(code, "survey::layers-not-named");
    assert!(message.contains("LEICA_DISTO_POINT_ENTITY 11 (-1.078..0.286 m)"), "{message}");
    assert_eq!(last(with(Some(&["GROUND"]))).0, "survey::layers-missing");
    let ground = with(Some(&["leica_disto_point_entity"])).unwrap();
    assert_eq!(ground.facts.points, 11);
    assert!((ground.facts.min[2] + 1.078_038).abs() < 1e-9 && (ground.facts.max[2] - 0.286_172).abs() < 1e-9);
}
