#[test]
fn dump() {
    let root = std::path::PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../../../shared/data");
    let mut files = vec![];
    for d in [
        "pointcloud",
        "pointcloud/broken",
        "pointcloud/formats",
        "pointcloud/montpellier_block",
        "terrain",
        "terrain/odd",
        "survey",
    ] {
        for e in std::fs::read_dir(root.join(d)).unwrap() {
            let p = e.unwrap().path();
            if p.is_file() {
                files.push(p);
            }
        }
    }
    files.sort();
    for p in files {
        let bytes = std::fs::read(&p).unwrap();
        let name = p.strip_prefix(&root).unwrap().to_string_lossy().into_owned();
        for units in [None, Some(survey::LengthUnit::Metre)] {
            let t = std::time::Instant::now();
            let r = survey::read_ground(&name, &bytes, &survey::GroundOptions { units, ..Default::default() });
            let codes = |f: &evidence::Faults| f.list.iter().map(|f| f.code.clone()).collect::<Vec<_>>();
            match r {
                Ok(r) => println!("{name} {units:?} OK {:?} {:?} {:?}", t.elapsed(), codes(&r.notes), r.facts),
                Err(f) => println!(
                    "{name} {units:?} ERR {:?} {:?} {:?}",
                    t.elapsed(),
                    codes(&f),
                    f.list.iter().map(|f| format!("{:?}", f.message.args)).collect::<String>()
                ),
            }
        }
    }
}
