//! Every kind of attachment that a machine file may list.

use evidence::{Status, Verdict};
use machine::{AttachmentKind, Carriage, Coupling};
use quantity::Si;

const LISTED: &str = r#"
[[forks]]
id = "long-forks"
name = "Forks with extensions"
coupling = "pinned"
mass = "290 kg"
centre = ["0.90 m", "-0.55 m"]
capacity = "4000 kg"
heel = ["0.32 m", "-0.62 m"]
spread = "0.80 m"
load_centre = "0.61 m"
carriage = "positioner"
spread_range = ["0.40 m", "1.10 m"]
side_shift = "0.10 m"
extensions = { length = "1.90 m", capacity = "1500 kg", load_centre = "0.90 m", by = "Invented Sleeves, 7" }
left = { capacity = "unknown", load_centre = "0.61 m", length = "1.20 m" }
right = { capacity = "2000 kg", load_centre = "0.61 m", length = "1.20 m", proof_load = "5000 kg" }
[[bucket]]
id = "bucket"
name = "Bucket"
mass = "380 kg"
centre = ["0.60 m", "-0.30 m"]
capacity = "1500 kg"
heel = ["0.40 m", "-0.50 m"]
load_centre = "0.50 m"
volume = "800 L"
edge = "2.00 m"
[[clamp]]
id = "clamp"
name = "Block clamp"
mass = "420 kg"
centre = ["0.60 m", "-0.30 m"]
capacity = "1500 kg"
heel = ["0.40 m", "-0.50 m"]
load_centre = "0.50 m"
grip = ["0.40 m", "1.20 m"]
grip_force = "20 kN"
grip_friction = 0.5
[[other]]
id = "pipe-tool"
name = "Tool for pipes"
coupling = "fixed"
mass = "300 kg"
centre = ["0.60 m", "-0.30 m"]
capacity = "1200 kg"
heel = ["0.40 m", "-0.50 m"]
load_centre = "0.50 m"
[[work_platform]]
id = "platform"
name = "Work platform"
mass = "350 kg"
centre = ["0.90 m", "-0.30 m"]
capacity = "300 kg"
floor = ["0.40 m", "-0.60 m"]
"#;

#[test]
fn every_kind_of_attachment_is_read() {
    let text = crate::faults_machine::plain() + LISTED;
    let (machine, _) = jobfile::read_machine("m.toml", text.as_bytes())
        .unwrap_or_else(|faults| panic!("{:#?}", crate::shown::all(&faults, &text)));
    let of = |id: &str| machine.attachment(id).unwrap();
    let AttachmentKind::Forks(forks) = &of("long-forks").kind else { panic!("forks") };
    assert_eq!(forks.carriage, Some(Carriage::Positioner { spread: (0.4, 1.1), side_shift: 0.1 }));
    assert_eq!(forks.length(), 1.9);
    assert_eq!(forks.extensions.as_ref().unwrap().cover, 0.6, "what is usual, where nothing is said");
    assert_eq!((forks.blades[0].capacity, forks.blades[1].proof_load.unwrap().si()), (None, 5000.0));
    assert_eq!((of("long-forks").coupling, of("pipe-tool").coupling), (Some(Coupling::Pinned), Some(Coupling::Fixed)));
    let AttachmentKind::Bucket(bucket) = &of("bucket").kind else { panic!("bucket") };
    assert!((bucket.volume - 0.8).abs() < 1e-12);
    let AttachmentKind::Clamp(clamp) = &of("clamp").kind else { panic!("clamp") };
    assert!((clamp.hold.unwrap().mass_kg() - 2.0 * 0.5 * 20_000.0 / (2.0 * 9.80665)).abs() < 1e-9);
    assert!(matches!(of("pipe-tool").kind, AttachmentKind::Other(_)));
    assert!(matches!(of("platform").kind, AttachmentKind::Platform(_)));
}

/// A platform may stand in the machine's file; a lift with it is refused, whatever it is called there.
#[test]
fn a_lift_with_a_platform_is_a_stop_and_no_fault_of_the_file() {
    for word in ["platform", "basket", "cage", "work_platform"] {
        let mut folder = crate::folder::demo();
        let machine = crate::folder::text(&folder, "machines/demo-14.toml");
        let listed = &LISTED[LISTED.find("[[work_platform]]").unwrap()..];
        let machine = machine + &listed.replace("work_platform", word);
        folder.insert("machines/demo-14.toml".into(), machine.into_bytes());
        let job =
            crate::folder::text(&folder, "job.toml").replacen("attachment = \"forks\"", "attachment = \"platform\"", 1);
        folder.insert("job.toml".into(), job.into_bytes());
        let (job, _) = jobfile::read_job(&folder).unwrap();
        let plan = planning::plan(&job);
        assert_eq!(plan.lifts[0].verdict, Verdict::NoGo, "{word}");
        let stop = plan.lifts[0].findings.iter().find(|f| f.message.id == "stop-platform").unwrap();
        assert_eq!(stop.status, Status::Stop);
    }
}
