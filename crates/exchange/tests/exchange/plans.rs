//! The demo job's plan, written and read back.

use crate::{read_dxf, read_glb, sample};
use exchange::{About, Format, export_plan};
use planning::{Job, Plan};
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

fn demo() -> (Job, Plan) {
    let root = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../../examples/demo-job");
    let mut files = BTreeMap::new();
    read_folder(&root, &root, &mut files);
    let (job, _) = jobfile::read_job(&files).unwrap();
    let plan = planning::plan(&job);
    (job, plan)
}

fn read_folder(root: &Path, folder: &Path, files: &mut BTreeMap<String, Vec<u8>>) {
    for entry in std::fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            read_folder(root, &path, files);
        } else {
            let name = path.strip_prefix(root).unwrap().to_string_lossy().replace('\\', "/");
            files.insert(name, std::fs::read(&path).unwrap());
        }
    }
}

#[test]
fn every_lift_has_its_stand_its_machine_and_its_way() {
    let (job, plan) = demo();
    let get = |format| export_plan(&job, &plan, format, &About::default()).unwrap();
    let file: serde_json::Value = serde_json::from_slice(&get(Format::GeoJson)).unwrap();
    let of = |kind: &str| {
        let all = file["features"].as_array().unwrap().iter();
        all.filter(|f| f["properties"]["kind"] == kind).cloned().collect::<Vec<_>>()
    };
    assert_eq!((of("stand").len(), of("machine").len(), of("load-way").len()), (9, 9, 9));
    assert_eq!(file["invented"], true, "the plan says so");
    for ((stand, machine), lift) in of("stand").iter().zip(of("machine")).zip(&plan.lifts) {
        assert_eq!(stand["geometry"]["coordinates"][0], lift.stand.east_m);
        assert!(!stand["properties"]["governed_by"].as_str().unwrap().is_empty());
        let outline =
            &job.machines[job.lifts.iter().position(|l| l.id == lift.id).map(|i| job.lifts[i].machine).unwrap()];
        let o = &outline.machine.outline;
        let ring: Vec<(f64, f64)> = machine["geometry"]["coordinates"][0]
            .as_array()
            .unwrap()
            .iter()
            .map(|p| (p[0].as_f64().unwrap(), p[1].as_f64().unwrap()))
            .collect();
        let area: f64 = ring.windows(2).map(|w| (w[0].0 * w[1].1 - w[1].0 * w[0].1) * 0.5).sum();
        assert!((area - (o.front - o.rear) * 2.0 * o.half_width).abs() < 0.01);
    }
    let verdicts: Vec<String> = of("stand").iter().map(|f| f["properties"]["verdict"].to_string()).collect();
    assert!(verdicts.contains(&"\"no-go\"".to_owned()) && verdicts.contains(&"\"go\"".to_owned()), "{verdicts:?}");
    let notes = file["notes"].to_string();
    assert!(notes.contains(&plan.digest) && notes.contains("The maker's manual"), "{notes}");

    let drawing = read_dxf::read(&get(Format::Dxf));
    assert_eq!((drawing.of("POINT", "Stand").len(), drawing.of("LWPOLYLINE", "Machine").len()), (9, 9));
    let model = read_glb::read(&get(Format::Gltf));
    assert!(
        model
            .volume(model.json["nodes"].as_array().unwrap().iter().find(|n| n["extras"]["kind"] == "machine").unwrap())
            > 5.0
    );
}

#[test]
fn a_plan_of_another_job_is_refused() {
    let (mut job, plan) = demo();
    job.lifts.pop();
    let refused = export_plan(&job, &plan, Format::Dxf, &sample::about()).unwrap_err();
    assert_eq!(refused.list[0].code, "exchange::not-its-plan");
}
