//! Faults of job files and of what they name.

use crate::folder::{demo, text};
use crate::shown;
use evidence::{Faults, Severity};
use std::collections::BTreeMap;

fn faults(folder: &BTreeMap<String, Vec<u8>>) -> Faults {
    match jobfile::read_job(folder) {
        Ok((_, warnings)) => warnings,
        Err(faults) => faults,
    }
}

/// Replaces `from` (its first place) in the demo job by `to`, and expects exactly the errors
/// `expected`: "code `text it points at`", with " : " and the message's arguments where given.
pub(crate) fn check(from: &str, to: &str, expected: &[&str]) {
    let mut folder = demo();
    let whole = text(&folder, "job.toml");
    assert!(whole.contains(from), "nothing to replace: {from}");
    let changed = whole.replacen(from, to, 1);
    folder.insert(String::from("job.toml"), changed.clone().into_bytes());
    let found = faults(&folder);
    let errors = found.list.iter().filter(|f| f.severity == Severity::Error);
    let shown: Vec<String> = errors
        .zip(expected.iter().map(Some).chain(std::iter::repeat(None)))
        .map(|(f, wanted)| {
            let line = shown::fault(f, &changed);
            let line = line.split_once(' ').unwrap().1.to_owned();
            if wanted.is_some_and(|w| w.contains(" : ")) {
                format!("{line} : {}", shown::args(&f.message))
            } else {
                line
            }
        })
        .collect();
    assert_eq!(shown, expected, "after {from} -> {to}");
}

#[test]
fn files_and_format() {
    let empty = faults(&BTreeMap::new());
    assert_eq!(empty.list.len(), 1);
    assert_eq!(empty.list[0].code, "jobfile::missing-file");
    check(
        "counterpoise-job/1",
        "counterpoise-job/2",
        &["jobfile::format-unknown `\"counterpoise-job/2\"` : format=counterpoise-job/2"],
    );
    check("survey/levels.csv", "survey/level.csv", &["jobfile::missing-file `\"survey/level.csv\"`"]);
    check("survey/levels.csv", "../levels.csv", &["jobfile::bad-path `\"../levels.csv\"`"]);
    check("survey/levels.csv", "/srv/levels.csv", &["jobfile::bad-path `\"/srv/levels.csv\"`"]);
    check("file = \"survey/levels.csv\"", "file = 7", &["jobfile::wrong-type `7`"]);
}

#[test]
fn heads() {
    check("name = \"Demo: Orchard Row, week 15\"\n", "", &["jobfile::missing-key `` : key=name"]);
    check("date = \"2027-04-12\"", "date = 2027-04-12", &[]);
    check("date = \"2027-04-12\"", "date = \"12 April\"", &["jobfile::bad-date `\"12 April\"`"]);
    check("date = \"2027-04-12\"", "date = \"2027-02-30\"", &["jobfile::bad-date `\"2027-02-30\"`"]);
    check(
        "planner = \"P. Lindqvist (invented), lift supervisor\"",
        "planner = \" \"",
        &["jobfile::empty-text `\" \"`"],
    );
    check(
        "source = \"measured\"",
        "sources = \"measured\"\nsource = \"measured\"",
        &["jobfile::unknown-key `sources`"],
    );
}

#[test]
fn references() {
    check(
        "machine = \"H14\"",
        "machine = \"H41\"",
        &["jobfile::unknown-reference `\"H41\"` : kind=jobfile-kind-machine id=H41"],
    );
    check("load = \"blocks\"", "load = \"block\"", &["jobfile::unknown-reference `\"block\"`"]);
    check("landing = \"bay\"", "landing = \"bayy\"", &["jobfile::unknown-reference `\"bayy\"`"]);
    check(
        "id = \"H7\"",
        "id = \"H14\"",
        &[
            "jobfile::duplicate-id `\"H14\"`",
            "jobfile::unknown-reference `\"H7\"`",
            "jobfile::unknown-reference `\"H7\"`",
            "jobfile::unknown-reference `\"H7\"`",
            "jobfile::unknown-reference `\"H7\"`",
        ],
    );
    check("[[lift]]\nid = \"2\"", "[[lift]]\nid = \"1\"", &["jobfile::duplicate-id `\"1\"`"]);
    // An attachment that the machine does not have is a finding of the plan, not a fault of the file.
    check("attachment = \"jib\"", "attachment = \"bucket\"", &[]);
    check("locks = { forks = \"locked\" }", "locks = { fork = \"locked\" }", &["jobfile::unknown-key `fork`"]);
    check("locks = { forks = \"locked\" }", "locks = { forks = \"closed\" }", &["jobfile::bad-choice `\"closed\"`"]);
}

#[test]
fn lifts() {
    check("heading = \"0°\" }\nclear", "heading = \"400°\" }\nclear", &["jobfile::out-of-range `\"400°\"`"]);
    check("heading = \"0°\" }\nclear", "heading = \"N\" }\nclear", &["quantity::no-number `N`"]);
    check(
        "heading = \"0°\" }\nclear",
        "haeding = \"0°\" }\nclear",
        &[
            "jobfile::missing-key `{ at = [\"30.0 m\", \"28.9 m\"], haeding = \"0°\" }`",
            "jobfile::unknown-key `haeding`",
        ],
    );
    check("support = \"tyres\"", "support = \"tires\"", &[]);
    check("support = \"tyres\"", "support = \"tyers\"", &["jobfile::bad-choice `\"tyers\"`"]);
    check("stops = []\n", "", &["jobfile::missing-key `[[lift]]` : key=stops"]);
    check("stops = []", "stops = [\"drag\"]", &["jobfile::bad-choice `\"drag\"`"]);
    check("stop_gust = \"10 m/s\"", "stop_gust = \"0 m/s\"", &["jobfile::stop-gust-zero `\"0 m/s\"`"]);
    check("stop_gust = \"10 m/s\"", "stop_gust = \"-1 m/s\"", &["jobfile::negative `\"-1 m/s\"`"]);
    check("leg_angle = \"40°\"", "leg_angle = \"80°\"", &[]);
    check("leg_angle = \"40°\"", "leg_angle = \"90°\"", &["jobfile::out-of-range `\"90°\"`"]);
    check("stop_gust = \"10 m/s\"", "stop_gust = \"10\"", &["quantity::missing-unit `10`"]);
    check("at = [\"30.0 m\", \"28.9 m\"]", "at = [\"30.0 m\"]", &["jobfile::list-length `[\"30.0 m\"]`"]);
    check("clear = \"0.30 m\"", "clear = \"-0.30 m\"", &["jobfile::out-of-range `\"-0.30 m\"`"]);
}

#[test]
fn loads() {
    check("mass = \"1480 kg\"\n", "", &["jobfile::one-of `[[load]]` : first=mass second=part"]);
    check("ticket = \"ON-20871 (invented)\"\n", "", &["jobfile::ticket-incomplete `[[load]]` : key=ticket"]);
    check(
        "left_out = { value = \"35 kg\", source = \"estimated\" }\n",
        "",
        &["jobfile::ticket-incomplete `[[load]]` : key=left_out"],
    );
    check("source = \"weighed\"", "source = \"stated\"", &["jobfile::no-uncertainty `\"860 kg\"` : certainty=stated"]);
    check("source = \"weighed\"", "source = \"stated\"\nuncertainty = \"5 %\"", &[]);
    check(
        "source = \"weighed\"",
        "uncertainty = \"150 %\"",
        &["jobfile::out-of-range `\"150 %\"`", "jobfile::no-uncertainty `\"860 kg\"`"],
    );
    check(
        "centre = [\"0.60 m\", \"0 m\", \"0.52 m\"]",
        "centre = [\"1.60 m\", \"0 m\", \"0.52 m\"]",
        &[
            "jobfile::centre-outside-load `[\"1.60 m\", \"0 m\", \"0.52 m\"]` : axis=jobfile-axis-ahead centre=1.6000 m low=0.0000 m high=1.2000 m",
        ],
    );
    check("condition = \"sound\"", "condition = \"fine\"", &["jobfile::bad-choice `\"fine\"`"]);
    check("density = \"1200 kg/m³\"", "density = \"1200 kg\"", &["quantity::wrong-dimension `kg`"]);
    check("legs = 2", "legs = 2.5", &["jobfile::wrong-type `2.5`"]);
    check("legs = 2", "legs = 0", &["jobfile::out-of-range `0`"]);
    check("size = { depth = \"1.20 m\"", "size = { depth = \"nan m\"", &["quantity::not-finite `nan`"]);
}

/// Slips of a number or a unit, and a landing in other coordinates than its stand.
#[test]
fn absurd_values() {
    check(
        "mass = \"860 kg\"",
        "mass = \"860 t\"",
        &["jobfile::too-much `\"860 t\"` : key=mass value=860 t high=200000.0000 kg"],
    );
    check("occupied = \"0 kg\"", "occupied = \"20000 t\"", &["jobfile::too-much `\"20000 t\"`"]);
    check(
        "depth = \"1.20 m\", width = \"1.00 m\", height = \"0.95 m\"",
        "depth = \"1200 m\", width = \"1.00 m\", height = \"0.95 m\"",
        &["jobfile::too-much `\"1200 m\"`"],
    );
    check("level = \"104.00 m\"", "level = \"104.00 km\"", &["jobfile::out-of-range `\"104.00 km\"`"]);
    check("level = \"104.00 m\"", "level = \"104000 m\"", &["jobfile::out-of-range `\"104000 m\"`"]);
    check("at = [\"30.0 m\", \"32.2 m\"]", "at = [\"30.0 m\", \"1e9 m\"]", &["jobfile::out-of-range `\"1e9 m\"`"]);
    check("\"105.90 m\"]", "\"1e6 m\"]", &["jobfile::too-much `[\"-12.0 m\", \"2.5 m\", \"1e6 m\"]`"]);
    check(
        "at = [\"30.0 m\", \"32.2 m\"]",
        "at = [\"500030.0 m\", \"5400032.2 m\"]",
        &[&format!(
            "jobfile::landing-far `{{ at = [\"30.0 m\", \"28.9 m\"], heading = \"0°\" }}` : east=30.0000 m north=28.9000 m \
             distance={:.4} m landing=Scaffold loading bay, south face landing_east=500030.0000 m landing_north=5400032.2000 m",
            geometry::DVec2::new(500_000.0, 5_400_003.3).length()
        )],
    );
}

/// Both readings of the very number that was written.
#[test]
fn a_thousands_mark_is_answered_with_both_readings() {
    for (written, hint) in [("3,900 kg", "first=3900 kg second=3.9 kg"), ("1,200 kg", "first=1200 kg second=1.2 kg")] {
        let mut folder = demo();
        let job = text(&folder, "job.toml").replacen("860 kg", written, 1);
        folder.insert(String::from("job.toml"), job.into_bytes());
        let found = faults(&folder);
        let errors: Vec<_> = found.list.iter().filter(|f| f.severity == Severity::Error).collect();
        assert_eq!(errors.len(), 1);
        assert_eq!(errors[0].code, "quantity::ambiguous-separator");
        assert_eq!(shown::hint(errors[0]), format!("jobfile-hint-either {hint}"));
    }
}

#[test]
fn sites() {
    check(
        "voltage = { value = \"11 kV\", source = \"stated\" }\n",
        "",
        &["jobfile::missing-key `[[line]]` : key=voltage"],
    );
    check("{ value = \"11 kV\", source = \"stated\" }", "\"unknown\"", &[]);
    check("{ value = \"11 kV\", source = \"stated\" }", "\"11 km\"", &["quantity::wrong-dimension `km`"]);
    check("sag = \"0.60 m\"", "sag = \"30 m\"", &["jobfile::sag-too-large `\"30 m\"`"]);
    check(
        "to = [\"31.0 m\", \"2.5 m\", \"105.70 m\"]",
        "to = [\"-12.0 m\", \"2.5 m\", \"105.70 m\"]",
        &["jobfile::span-no-length `[\"-12.0 m\", \"2.5 m\", \"105.70 m\"]`"],
    );
    check(
        "approach = { heading = \"0°\", tolerance = \"8°\" }",
        "approach = \"all\"",
        &["jobfile::bad-choice `\"all\"`"],
    );
    check("approach = { heading = \"0°\", tolerance = \"8°\" }", "approach = 0", &["jobfile::wrong-type `0`"]);
    check("tolerance = \"8°\"", "tolerance = \"95°\"", &["jobfile::out-of-range `\"95°\"`"]);
    check(
        "approach = { heading = \"0°\", tolerance = \"8°\" }\n",
        "",
        &["jobfile::missing-key `[[landing]]` : key=approach"],
    );
    check("occupied = \"0 kg\"", "occupied = \"-1 kg\"", &["jobfile::negative `\"-1 kg\"` : key=occupied value=-1 kg"]);
    check("units = \"m\"", "units = \"yd\"", &["jobfile::bad-choice `\"yd\"`"]);
    check("accuracy = \"0.02 m\"\n", "", &["jobfile::missing-key `[[ground]]` : key=accuracy"]);
    check(
        "matter = \"edges\"",
        "matter = \"edges\"\nstrength = \"200 kPa\"",
        &["jobfile::strength-misplaced `\"200 kPa\"`"],
    );
    check(
        "[[ground]]",
        "[policy]\ntilt_sideways = \"150 %\"\nload_factor = 0.8\nline_allowance = \"2 m\"\n[[ground]]",
        &["jobfile::too-much `\"150 %\"`", "jobfile::out-of-range `0.8`"],
    );
}

/// Less than the usual needs a name, and every value of the policy stands on the input list.
#[test]
fn policies() {
    let with = |lines: &str| format!("[policy]\n{lines}\n[[ground]]");
    check("[[ground]]", &with("tilt_fore_aft = \"0 %\""), &["jobfile::not-positive `\"0 %\"`"]);
    for (below, shown) in [
        ("tilt_fore_aft = \"6 %\"", "\"6 %\""),
        ("tilt_sideways = \"11 %\"", "\"11 %\""),
        ("load_factor = 1.2", "1.2"),
        ("stand_error = \"0 m\"", "\"0 m\""),
        ("line_allowance = \"0.5 m\"", "\"0.5 m\""),
    ] {
        check("[[ground]]", &with(below), &[&format!("jobfile::policy-below-usual `{shown}`")]);
        check(
            "[[ground]]",
            &with(&format!("by = \"FILL IN: name\"\n{below}")),
            &[&format!("jobfile::policy-below-usual `{shown}`")],
        );
        check("[[ground]]", &with(&format!("{below}\nby = \"A. Planner, lift supervisor\"")), &[]);
    }
    let mut folder = demo();
    let job =
        text(&folder, "job.toml").replacen("[[ground]]", &with("tilt_sideways = \"15 %\"\nload_factor = 1.33"), 1);
    folder.insert(String::from("job.toml"), job.into_bytes());
    let (job, _) = jobfile::read_job(&folder).unwrap();
    assert_eq!((job.policy.tilt_sideways, job.policy.by), (0.15, None));
    let listed: Vec<_> =
        job.inputs.iter().filter(|i| i.name.starts_with("policy.")).map(|i| i.value.as_str()).collect();
    assert_eq!(listed, ["15 %", "1.33"]);
}

#[test]
fn no_source_around_a_load_is_said_at_the_value() {
    let mut folder = demo();
    let job = text(&folder, "job.toml").replacen("source = \"measured\"\n", "", 1);
    folder.insert(String::from("job.toml"), job.clone().into_bytes());
    let found = faults(&folder);
    let others = found.list.iter().filter(|f| f.severity == Severity::Error && f.code != "jobfile::no-source");
    let others: Vec<_> = others.map(|f| shown::fault(f, &job)).collect();
    assert!(others.is_empty(), "{others:#?}");
    let first = &found.list[0];
    assert_eq!(shown::fault(first, &job).split_once(' ').unwrap().1, "jobfile::no-source `[[ground]]`");
    assert!(shown::hint(first).contains("measured"), "the hint names the words");
}

#[test]
fn a_missing_wind_factor_is_assumed_and_marked() {
    let mut folder = demo();
    let job = text(&folder, "job.toml").replacen("wind_factor = 1.4\n", "", 1);
    folder.insert(String::from("job.toml"), job.into_bytes());
    let (job, warnings) = jobfile::read_job(&folder).unwrap();
    assert!(warnings.list.iter().any(|f| f.code == "jobfile::wind-factor-assumed"));
    assert_eq!(job.loads[0].wind_factor, jobfile::SHEET_WIND_FACTOR);
    let line = job.inputs.iter().find(|i| i.name == "load[blocks].wind_factor").unwrap();
    assert_eq!(line.certainty, evidence::Certainty::Estimated);
}

/// A scale says the mass and nothing else; what has its own source keeps it.
#[test]
fn values_beside_a_weighed_mass_are_not_weighed() {
    use evidence::Certainty::{Estimated, Measured, Plate, Ticket, Weighed};
    let folder = demo();
    let (job, _) = jobfile::read_job(&folder).unwrap();
    let certainty =
        |name: &str| job.inputs.iter().find(|i| i.name == name).unwrap_or_else(|| panic!("{name}")).certainty;
    assert_eq!(certainty("load[mortar].mass"), Weighed);
    assert_eq!(certainty("load[beam].mass"), Ticket);
    for key in ["centre", "centre_error", "wind_factor"] {
        assert_eq!(certainty(&format!("load[mortar].{key}")), Estimated, "{key}");
        assert_eq!(certainty(&format!("load[beam].{key}")), Estimated, "{key}");
    }
    assert_eq!(certainty("load[mortar].size.depth"), Measured);
    assert_eq!(certainty("load[beam].left_out"), Estimated);
    assert_eq!(certainty("load[beam].hanging.leg_angle"), Estimated);
    assert_eq!(certainty("load[beam].hanging.leg_limit"), Plate);
    assert_eq!(certainty("load[blocks].wind_factor"), Estimated);
}

/// One bad file hides nothing of another: six faults in three files, in one go, each with its place.
#[test]
fn all_at_once() {
    let mut folder = demo();
    let job = text(&folder, "job.toml")
        .replacen("heading = \"0°\" }\nclear", "heading = \"-5°\" }\nclear", 1)
        .replacen("load = \"tiles\"", "load = \"tile\"", 1);
    let machine = text(&folder, "machines/demo-7.toml").replacen("mass = \"2790 kg\"", "mass = \"2790\"", 1).replacen(
        "wheelbase",
        "wheel_base",
        1,
    );
    let levels = text(&folder, "survey/levels.csv").replacen("3,5.00,0.00,", "3,5.00,north,", 1);
    for (name, text) in [("job.toml", &job), ("machines/demo-7.toml", &machine), ("survey/levels.csv", &levels)] {
        folder.insert(name.to_owned(), text.clone().into_bytes());
    }
    let found = faults(&folder);
    let errors: Vec<String> = found
        .list
        .iter()
        .filter(|f| f.severity == Severity::Error)
        .map(|f| format!("{}:{} {}", f.place.file, f.place.line.unwrap_or(0), f.code))
        .collect();
    let line = |text: &str, piece: &str| text.lines().position(|l| l.contains(piece)).unwrap() + 1;
    let expected = [
        format!("job.toml:{} jobfile::out-of-range", line(&job, "heading = \"-5°\"")),
        format!("job.toml:{} jobfile::unknown-reference", line(&job, "load = \"tile\"")),
        String::from("survey/levels.csv:4 survey::bad-row"),
        format!("machines/demo-7.toml:{} quantity::missing-unit", line(&machine, "mass = \"2790\"")),
        format!("machines/demo-7.toml:{} jobfile::missing-key", line(&machine, "[rear_axle]")),
        format!("machines/demo-7.toml:{} jobfile::unknown-key", line(&machine, "wheel_base")),
    ];
    assert_eq!(errors, expected);
}

#[test]
fn a_small_file_of_json_says_the_same_as_toml() {
    use quantity::Dimension as D;
    let read = |name: &str, text: &str| {
        let document = jobfile::read_table(name, text.as_bytes());
        let root = document.root();
        root.decision("load", D::Mass, jobfile::Bound::Positive);
        root.decision("reach", D::Length, jobfile::Bound::Any);
        root.done();
        shown::all(&document.faults(), text)
    };
    let toml = read("calc.toml", "load = \"1200\"\nraech = \"3 m\"\n");
    let json = read("calc.json", "{\n  \"load\": \"1200\",\n  \"raech\": \"3 m\"\n}\n");
    assert_eq!(
        toml,
        ["1:1 jobfile::missing-key ``", "1:9 quantity::missing-unit `1200`", "2:1 jobfile::unknown-key `raech`"]
    );
    assert_eq!(
        json,
        ["1:1 jobfile::missing-key `{`", "2:12 quantity::missing-unit `1200`", "3:3 jobfile::unknown-key `\"raech\"`"]
    );
    assert_eq!(
        read("calc.json", "{\"load\": \"1 kg\", \"reach\": \"2 m\", \"load\": \"2 kg\"}"),
        ["1:34 jobfile::duplicate-key `\"load\"`"]
    );
    assert_eq!(read("calc.json", "{\"load\": ")[0], "1:9 jobfile::syntax ``");
}

/// A landing's rating, what lies there, what it is made of: what is said by half is told, with every other fault.
#[test]
fn landings_stated_by_half_are_told() {
    check("push = \"5 kN\"", "part = \"10 kPa\"", &["jobfile::rating-both `\"10 kPa\"` : other=part_area"]);
    check("push = \"5 kN\"", "duty_class = 7", &["jobfile::out-of-range `7` : key=duty_class value=7 low=1 high=6"]);
    check("mass = \"2000 kg\"\n", "", &["jobfile::rating-of-nothing `[landing.rating]`"]);
    check("people = 1", "people = 101", &["jobfile::out-of-range `101`"]);
    check("people = 1", "people = 1\nsetting_down = 0.9", &["jobfile::out-of-range `0.9`"]);
    check("people = 1", "people = 1\nsetting_down = 1.1", &["jobfile::below-usual `1.1`"]);
    check("spans = 1", "spans = 7", &["jobfile::out-of-range `7`"]);
    check(
        "people = 1",
        "people = 1\nlying = [{ what = \"tub\", mass = \"80 kg\", from_edge = \"1 m\", from_right = \"0 m\", along = \"1 m\", across = \"1 m\" }]",
        &["jobfile::lying-beside `\"1 m\"`"],
    );
    check("edge = \"always-closed\"", "edge = \"shut\"", &["jobfile::bad-choice `\"shut\"`"]);
    check(
        "people = 1",
        "people = 1\nlying = [{ what = \"tub\", mass = \"80 kg\", from_edge = \"1 m\", along = \"1 m\" }]",
        &["jobfile::lying-by-half `\"1 m\"` : missing=from_right"],
    );
    check(
        "runs = \"along\"",
        "props = { by = \"E. Engineer\" }",
        &["jobfile::either-or `{ by = \"E. Engineer\" }` : first=slab second=props"],
    );
    check("concrete = \"25 MPa\"", "concrete = \"25 Pa\"", &["jobfile::out-of-range `\"25 Pa\"`"]);
    check(
        "feet = { along = 1, foot_along = \"0.20 m\", across = 2, foot_across = \"0.20 m\"",
        "feet = { along = 1, foot_along = \"0.20 m\", across = 2, foot_across = \"3.00 m\"",
        &[
            "landing::out-of-range `{ along = 1, foot_along = \"0.20 m\", across = 2, foot_across = \"3.00 m\", sharing = \"even\" }`",
        ],
    );
}
