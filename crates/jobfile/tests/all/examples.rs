//! Every example reads without a fault, and says what it should.

use crate::folder::{OnDisk, demo, project};
use crate::shown;
use evidence::Certainty;
use quantity::Si;

fn machine(path: &str) -> machine::Machine {
    let bytes = std::fs::read(project().join(path)).unwrap();
    let text = String::from_utf8_lossy(&bytes).into_owned();
    match jobfile::read_machine(path, &bytes) {
        Ok((machine, _)) => machine,
        Err(faults) => panic!("{path}: {:#?}", shown::all(&faults, &text)),
    }
}

#[test]
fn machines_read_without_faults() {
    for path in [
        "validation/machines/r1.toml",
        "examples/demo-job/machines/demo-7.toml",
        "examples/demo-job/machines/demo-14.toml",
        "examples/machines/wren-6.toml",
        "examples/machines/bittern-8.toml",
        "examples/machines/stork-18.toml",
        "examples/machines/pelican-12t.toml",
        "examples/machines/ibis-21r.toml",
    ] {
        let m = machine(path);
        assert!(m.invented, "{path} is marked as invented");
    }
}

/// The reference machine, number by number from the reference data beside the project.
#[test]
fn r1_is_the_reference_machine() {
    let m = machine("validation/machines/r1.toml");
    let mass: f64 = m.bodies.iter().map(|b| b.mass.si()).sum();
    assert_eq!(mass, 10_300.0);
    assert_eq!(m.bodies[0].centre, geometry::DVec3::new(-1.9, 0.0, 1.0));
    assert_eq!(m.rear.axle.x, -3.0);
    assert_eq!((m.front.half_track, m.rear.axle.half_track, m.rear.pin_height), (1.0, 1.0, 0.7));
    assert!((m.rear.oscillation.si().to_degrees() - 10.0).abs() < 1e-9);
    let pads = m.stabilizers.as_ref().unwrap();
    assert_eq!(pads.pad, geometry::DVec2::new(0.45, 1.2));
    assert!(!pads.rear_axle_free);
    let b = &m.boom;
    assert_eq!((b.foot, b.head_along, b.head_below), (geometry::DVec2::new(-2.6, 1.9), 5.0, 0.35));
    let sections: Vec<_> = b.sections.iter().map(|s| (s.mass.si(), s.centre_along, s.share)).collect();
    assert_eq!(sections, [(900.0, 2.4, 0.0), (600.0, 2.8, 0.5), (420.0, 3.6, 1.0)]);
    assert_eq!(b.carriage_mass.si() + m.attachments[0].mass.si(), 380.0);
    assert_eq!(b.carriage_centre, m.attachments[0].centre);
    assert_eq!(m.attachments[0].tool_point(), geometry::DVec2::new(0.40, -0.65));
}

#[test]
fn demo_job_reads_without_faults() {
    let folder = OnDisk(project().join("examples/demo-job"));
    let text = std::fs::read_to_string(project().join("examples/demo-job/job.toml")).unwrap();
    let (job, warnings) = jobfile::read_job(&folder).unwrap_or_else(|f| panic!("{:#?}", shown::all(&f, &text)));
    assert!(!warnings.any_error());
    assert_eq!(job.lifts.len(), 9);
    assert!(job.invented);
    let (stated, left): (Vec<_>, Vec<_>) = job.lifts.iter().partition(|l| !l.choose.stand);
    assert_eq!(left.iter().map(|l| l.id.as_str()).collect::<Vec<_>>(), ["9"], "its stand is the planner's");
    for lift in stated {
        assert!(job.ground.height(lift.stand.at).is_some(), "ground is known under lift {}", lift.id);
    }
    // 25 kg of pallet and four layers of 1.2 × 1.0 × 0.2 m at 1200 kg/m³.
    let blocks = &job.loads[0];
    assert!((blocks.mass_kg.nominal - 1177.0).abs() < 1e-9);
    assert!((blocks.mass_kg.high - 1294.7).abs() < 1e-9, "built up: 10 %");
    assert_eq!(blocks.certainty, Certainty::BuiltUp);
    // Ticket and what it leaves out, 5 % of both.
    assert!((job.loads[1].mass_kg.high - 1515.0 * 1.05).abs() < 1e-9);
    // The hung beam carries its rigging.
    assert!((job.loads[4].mass_kg.nominal - 427.0).abs() < 1e-9);
    // 90° clockwise from north is east: zero inside.
    assert!(job.lifts[4].stand.heading.abs() < 1e-12);
    let estimated: Vec<_> =
        job.inputs.iter().filter(|i| i.certainty == Certainty::Estimated).map(|i| i.name.as_str()).collect();
    assert!(estimated.contains(&"load[mixed].pallet.base.mass"), "{estimated:?}");
    // A density from memory is an estimate.
    assert!(estimated.contains(&"load[mixed].pallet.layer[2].material"), "{estimated:?}");
    let row = text.lines().position(|l| l.starts_with("voltage =")).unwrap() + 1;
    let line = job.inputs.iter().find(|i| i.name == "line[1].voltage").unwrap();
    assert_eq!((line.place.clone(), line.value.as_str()), (format!("job.toml:{row} line[1].voltage"), "11 kV"));
}

#[test]
fn starter_job_reads_without_faults() {
    let files = jobfile::starter_job();
    let folder: std::collections::BTreeMap<String, Vec<u8>> =
        files.iter().map(|(path, text)| (path.clone(), text.clone().into_bytes())).collect();
    assert_eq!(folder.len(), files.len(), "no path twice");
    assert!(files.iter().all(|(path, _)| jobfile::stays_inside(path)));
    let text = &files.iter().find(|(path, _)| path == "job.toml").unwrap().1;
    let (job, _) = jobfile::read_job(&folder).unwrap_or_else(|f| panic!("{:#?}", shown::all(&f, text)));
    // Nothing in it may look like a pass before somebody filled it in.
    assert!(job.machines.iter().all(|m| m.inspected_by.is_none() && m.machine.charts.is_empty()));
    assert!(job.lines_complete.is_none() && job.acceptances.is_empty());
    assert!(job.inputs.iter().any(|i| i.certainty == Certainty::Estimated));
}

#[test]
fn levels_of_the_demo_are_those_of_its_script() {
    let levels = crate::folder::text(&demo(), "survey/levels.csv");
    assert_eq!(levels.lines().count(), 1 + 25 * 21, "one line a point, and the heading");
    assert!(levels.lines().nth(1).unwrap().contains("invented by validation/demo/levels.py"));
}
