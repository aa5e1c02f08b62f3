//! Loads and deliveries from lists of cells.

use crate::folder::{demo, text};
use crate::shown;
use evidence::{Faults, Severity};
use planning::Choose;
use std::collections::BTreeMap;

/// Everything that rows need besides their cells.
const TABLE: &str = "[loads_from]\nfile = \"loads.csv\"\nsource = \"weighed\"\ncondition = \"sound\"\ncentre_error = \"0.05 m\"\nwind_factor = 1.4\nclear = \"0.30 m\"\nstop_gust = \"10 m/s\"\nstops = []\n";
const HEADER: &str =
    "id;name;mass (kg);depth (m);width (m);height (m);centre ahead (m);centre left (m);centre up (m);landing";
const ROW: &str = "c1;Cement;1012,5;1,20;1,00;0,90;0,60;0;0,45;bay-2";

fn folder(table: &str, list: &str) -> BTreeMap<String, Vec<u8>> {
    let mut folder = demo();
    let job = text(&folder, "job.toml").replacen("[[machine]]", &format!("{table}\n[[machine]]"), 1);
    folder.insert("job.toml".into(), job.into_bytes());
    folder.insert("loads.csv".into(), list.as_bytes().to_vec());
    folder
}

fn landing() -> String {
    let (job, _) = jobfile::read_job(&demo()).unwrap();
    job.landings[0].id.clone()
}

fn with_landing(list: &str) -> String {
    list.replace("bay-2", &landing())
}

fn read(list: &str) -> planning::Job {
    jobfile::read_job(&folder(TABLE, &with_landing(list))).unwrap_or_else(|f| panic!("{f:#?}")).0
}

/// Errors as `file line:column code `text``, in order.
fn errors(table: &str, list: &str) -> Vec<String> {
    let list = with_landing(list);
    let folder = folder(table, &list);
    let faults: Faults = jobfile::read_job(&folder).expect_err("it has a fault");
    let errors = faults.list.iter().filter(|f| f.severity == Severity::Error);
    errors.map(|f| format!("{} {}", f.place.file, shown::fault(f, &text(&folder, &f.place.file)))).collect()
}

#[test]
fn a_row_is_a_load_and_the_lift_that_brings_it() {
    let before = jobfile::read_job(&demo()).unwrap().0;
    let job = read(&format!(
        "{HEADER};priority;window;after\n{ROW};2;07:30-09:00;1\nc2;Lime;\"820 kg\";1,2;1;0,9;0,6;0;0,45;bay-2;;;c1|1\n"
    ));
    assert_eq!((job.loads.len(), job.lifts.len()), (before.loads.len() + 2, before.lifts.len() + 2));
    let (load, lift) = (&job.loads[before.loads.len()], &job.lifts[before.lifts.len()]);
    assert_eq!((load.id.as_str(), lift.id.as_str(), lift.load), ("c1", "c1", before.loads.len()));
    assert_eq!((load.mass_kg.nominal, load.mass_kg.high), (1012.5, 1012.5 * 1.02));
    assert_eq!((load.depth, load.width, load.height), (1.2, 1.0, 0.9));
    assert_eq!((load.centre_ahead.low, load.centre_ahead.high), (0.6 - 0.05, 0.6 + 0.05));
    assert_eq!((lift.choose, lift.landing, lift.priority), (Choose::ALL, 0, Some(2)));
    assert!(!lift.stand.is_chosen());
    assert_eq!(lift.window, Some(site::DayTime { from: 450, to: 540 }));
    let last = &job.lifts[before.lifts.len() + 1];
    assert_eq!(last.after, [before.lifts.len(), 0]);
    // The input list says the value with its unit, and the cell's line.
    let line = job.inputs.iter().find(|i| i.place == "loads.csv:2 load[1].mass").unwrap();
    assert_eq!((line.value.as_str(), line.certainty), ("1012,5 kg", evidence::Certainty::Weighed));
}

#[test]
fn separators_quotes_and_units_as_people_write_them() {
    let want = read(&format!("{HEADER}\n{ROW}\n")).loads.pop().unwrap();
    for list in [
        format!("{}\n{}\n", HEADER.replace(';', "\t"), ROW.replace(';', "\t")),
        format!("{}\n{}\n", HEADER.replace(';', ","), "c1,Cement,1012.5,1.20,1.00,0.90,0.60,0,0.45,bay-2"),
        format!(
            "{}\n{}\n",
            HEADER.replace(';', ","),
            "c1,\"Cement\",\"1012,5\",\"1,20\",1,\"0,90\",\"0,60\",0,\"0,45\",bay-2"
        ),
        format!("\u{feff}{}\r\n\r\n{}\r\n", HEADER.to_uppercase().replace("(KG)", "[kg]").replace("(M)", "[m]"), ROW),
        format!(
            "{}\nc1;Cement;1012,5 kg;120 cm;1,00 m;0,90 m;0,60 m;0 m;45 cm;bay-2\n",
            HEADER.replace(" (m)", "").replace(" (kg)", "")
        ),
        format!("{HEADER}\nc1;Cement;1,0125 t;1,20;1,00;0,90;0,60;0;0,45;bay-2\n"),
    ] {
        let load = read(&list).loads.pop().unwrap();
        assert!((load.mass_kg.nominal - want.mass_kg.nominal).abs() < 1e-9, "{list}");
        assert!(
            (load.depth - want.depth).abs() < 1e-12 && (load.centre_up.nominal - want.centre_up.nominal).abs() < 1e-12,
            "{list}"
        );
    }
}

#[test]
fn every_fault_of_a_list_is_told_with_its_row_and_column() {
    // A wrong number, an unknown landing, a missing cell, a wrong word, in three rows at once.
    let list = format!(
        "{HEADER};condition\n{ROW};\nc2;Lime;heavy;1,2;1;0,9;0,6;0;0,45;attic;rotten\nc3;;820;1,2;1;;0,6;0;0,45;bay-2;\n"
    );
    assert_eq!(
        errors(TABLE, &list),
        [
            "loads.csv 3:9 quantity::no-number `heavy`",
            "loads.csv 3:36 jobfile::unknown-reference `attic`",
            "loads.csv 3:42 jobfile::bad-choice `rotten`",
            "loads.csv 4:1 jobfile::list-cell-missing `c3;;820;1,2;1;;0,6;0;0,45;bay-2;`",
            "loads.csv 4:1 jobfile::list-cell-missing `c3;;820;1,2;1;;0,6;0;0,45;bay-2;`",
        ]
        .map(|line| line.replace("bay-2", &landing())),
    );
}

#[test]
fn what_cannot_be_read_in_one_way_is_refused() {
    let row = |row: &str| errors(TABLE, &format!("{HEADER}\n{row}\n"));
    assert_eq!(
        row("c1;Cement;1,200;1,20;1,00;0,90;0,60;0;0,45;bay-2"),
        ["loads.csv 2:11 quantity::ambiguous-separator `1,200`"]
    );
    // Decimal commas among commas make more cells than names.
    let commas = HEADER.replace(';', ",");
    assert_eq!(
        errors(TABLE, &format!("{commas}\nc1,Cement,1012,5,1,20,1,0,90,0,60,0,0,45,bay-2\n"))[0]
            .split('`')
            .next()
            .unwrap(),
        "loads.csv 2:1 jobfile::list-row-cells "
    );
    let no_unit = HEADER.replace("mass (kg)", "mass");
    assert_eq!(errors(TABLE, &format!("{no_unit}\n{ROW}\n")), ["loads.csv 2:11 quantity::missing-unit `1012,5`"]);
    assert_eq!(
        errors(TABLE, &format!("{HEADER};colour;mass\n{ROW};red;\n")),
        ["loads.csv 1:110 jobfile::list-column-unknown `colour`", "loads.csv 1:117 jobfile::list-column-twice `mass`"]
            .map(|l| l.replace("110", &(HEADER.len() + 2).to_string()).replace("117", &(HEADER.len() + 9).to_string()))
    );
    assert_eq!(errors(TABLE, HEADER)[0].split('`').next().unwrap(), "loads.csv 1:1 jobfile::list-empty ");
    assert_eq!(errors(TABLE, "")[0].split('`').next().unwrap(), "loads.csv 1:1 jobfile::list-empty ");
    assert_eq!(
        errors(TABLE, &format!("{HEADER}\nc1;\"Cement;1\n"))[0].split('`').next().unwrap(),
        "loads.csv 2:4 jobfile::list-quote "
    );
    assert_eq!(errors(TABLE, &format!("{HEADER}\n{ROW}\n{ROW}\n")), ["loads.csv 3:1 jobfile::duplicate-id `c1`"; 2]);
}

/// Silence is no statement: neither rows nor job say whether anything forbidden happens.
#[test]
fn what_rows_share_is_read_where_it_stands() {
    let list = format!("{HEADER}\n{ROW}\n");
    assert!(
        errors(&TABLE.replace("stops = []\n", ""), &list)[0].starts_with("loads.csv 2:1 jobfile::list-cell-missing")
    );
    assert_eq!(
        errors(&TABLE.replace("0.30 m", "9 m").replace("\"sound\"", "\"fine\""), &list)
            .iter()
            .map(|e| e.split_once(' ').unwrap().1.split_once(' ').unwrap().1.to_owned())
            .filter(|e| !e.contains("list-cell-missing"))
            .collect::<Vec<_>>(),
        ["jobfile::bad-choice `\"fine\"`", "jobfile::out-of-range `\"9 m\"`"]
    );
    let elsewhere = errors(&TABLE.replace("loads.csv", "other.csv"), &list);
    assert!(
        elsewhere[0].starts_with("job.toml ") && elsewhere[0].ends_with("missing-file `\"other.csv\"`"),
        "{elsewhere:?}"
    );
}

#[test]
fn a_job_may_have_loads_and_lifts_from_a_list_alone() {
    let job = text(&demo(), "job.toml");
    let head = job.split("[[load]]").next().unwrap().to_owned();
    let mut folder = folder(TABLE, &with_landing(&format!("{HEADER}\n{ROW}\n")));
    folder.insert("job.toml".into(), format!("{head}\n{TABLE}").into_bytes());
    match jobfile::read_job(&folder) {
        Ok((job, _)) => assert_eq!((job.loads.len(), job.lifts.len()), (1, 1)),
        Err(faults) => panic!("{faults:#?}"),
    }
    folder.insert("job.toml".into(), head.into_bytes());
    let faults = jobfile::read_job(&folder).expect_err("no loads, no lifts");
    let missing = faults.list.iter().filter(|f| f.code == "jobfile::missing-key").count();
    assert_eq!(missing, 2, "{faults:#?}");
}

#[test]
fn slots_are_deliveries() {
    let mut folder = demo();
    let job = text(&folder, "job.toml").replacen("planner", "slots_from = \"slots.csv\"\nplanner", 1);
    let load = jobfile::read_job(&folder).unwrap().0.loads[0].id.clone();
    folder.insert("job.toml".into(), job.into_bytes());
    folder.insert("slots.csv".into(), format!("loads,from,to\n{load},07:15,08:00\n").into_bytes());
    let read = jobfile::read_job(&folder).unwrap().0;
    let listed = read.deliveries.iter().find(|d| d.id == "slot 1").unwrap();
    assert_eq!(&listed.loads, &vec![0]);
    assert_eq!(listed.slot, site::DayTime { from: 435, to: 480 });
    folder.insert("slots.csv".into(), b"loads,from,to,place\nnothing,07:15,7:99,there\n".to_vec());
    let faults = jobfile::read_job(&folder).expect_err("three faults");
    let found = shown::all(&faults, "loads,from,to,place\nnothing,07:15,7:99,there\n");
    assert_eq!(
        found.iter().filter(|f| f.contains("unknown-reference") || f.contains("bad-time")).count(),
        3,
        "{found:?}"
    );
}
