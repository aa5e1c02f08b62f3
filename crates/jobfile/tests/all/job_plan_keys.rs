//! Keys that a plan of the whole job needs: what may be chosen, where loads wait, when, beside whom, and how machines steer.

use crate::faults_job::check;
use crate::folder::{demo, text};
use planning::{Choose, RoutineLandings, RoutineLoad, Stand, check_lift};
use site::DayTime;
use std::collections::BTreeMap;

fn read(changes: &[(&str, &str)]) -> planning::Job {
    let mut folder = demo();
    let mut job = text(&folder, "job.toml");
    for (from, to) in changes {
        assert!(job.contains(from), "{from}");
        job = job.replacen(from, to, 1);
    }
    folder.insert("job.toml".into(), job.into_bytes());
    jobfile::read_job(&folder).unwrap_or_else(|f| panic!("{f:#?}")).0
}

fn complete() -> planning::Job {
    let mut folder: BTreeMap<String, Vec<u8>> =
        jobfile::complete_job().map(|(path, text)| (path.to_owned(), text.as_bytes().to_vec())).into();
    folder.insert(jobfile::COMPLETE_SITE.0.to_owned(), jobfile::COMPLETE_SITE.1.to_vec());
    jobfile::read_job(&folder).unwrap_or_else(|f| panic!("{f:#?}")).0
}

#[test]
fn nothing_of_it_is_there_unless_it_is_stated() {
    let mut folder = demo();
    let job = text(&folder, "job.toml");
    // The demo without what it says of pick-ups, deliveries and routines, and its first four lifts, which wish for nothing.
    let without = |kind: &str, job: String| -> String {
        let mut parts = job.split("\n[[").map(str::to_owned);
        let first = parts.next().unwrap();
        parts.filter(|part| !part.starts_with(kind)).fold(first, |all, part| all + "\n[[" + &part)
    };
    let job = ["pickup", "delivery", "routine"].into_iter().fold(job, |job, kind| without(kind, job));
    let (head, rest) = job.split_at(job.find("[[lift]]\nid = \"5\"").unwrap());
    let job = format!("{head}{}", &rest[rest.find("[[accept]]").unwrap()..]);
    folder.insert("job.toml".into(), job.into_bytes());
    let job = jobfile::read_job(&folder).unwrap_or_else(|f| panic!("{f:#?}")).0;
    assert!(job.pickups.is_empty() && job.cranes.is_empty() && job.deliveries.is_empty() && job.routines.is_empty());
    assert_eq!((job.hours, job.lifts.len()), (None, 4));
    for lift in &job.lifts {
        assert_eq!((lift.choose, lift.from, lift.window), (Choose::default(), None, None));
        assert_eq!((lift.priority, lift.minutes, lift.after.len()), (None, None, 0));
        assert!(lift.stand.is_chosen());
    }
}

#[test]
fn all_of_it_is_read() {
    let job = complete();
    assert_eq!(job.hours, Some(DayTime { from: 420, to: 1020 }));
    let truck = &job.pickups[0];
    assert_eq!((truck.id.as_str(), truck.at.to_array(), truck.level), ("truck-place", [20.0, 4.0], Some(101.2)));
    assert!(truck.heading.unwrap().abs() < 1e-12, "90° is east");
    let lift = &job.lifts[2];
    assert_eq!((lift.choose, lift.from), (Choose::ALL, Some(0)));
    assert!(!lift.stand.is_chosen() && lift.machine == 0 && lift.attachment == "forks");
    assert_eq!(lift.support, machine::SupportState::Tyres);
    assert_eq!(lift.window, Some(DayTime { from: 450, to: 540 }));
    assert_eq!((lift.after.as_slice(), lift.priority, lift.minutes), ([0].as_slice(), Some(2), Some(12)));
    let crane = &job.cranes[0];
    assert_eq!((crane.radius, crane.tail, crane.heights), (45.0, Some(12.0), (112.0, 140.0)));
    assert_eq!(crane.times, [DayTime { from: 480, to: 720 }]);
    assert_eq!(job.gates[0].posts.unwrap().map(|p| p.to_array()), [[20.0, -4.0], [24.0, -4.0]]);
    let [bricks, boxes] = &job.routines[..] else { panic!("two routines") };
    assert_eq!((&bricks.load, &bricks.landings), (&RoutineLoad::Like(1), &RoutineLandings::Named(vec![0])));
    assert_eq!(bricks.approved_by.as_deref(), Some("A. Planner, lift supervisor"));
    assert_eq!(bricks.ground, 0.03);
    assert_eq!(boxes.load, RoutineLoad::UpTo { mass: 400.0, size: [1.2, 1.0, 1.0] });
    assert!(matches!(&boxes.landings, RoutineLandings::Within(area) if area.outer.len() == 4));
    assert_eq!(boxes.approved_by, None, "nobody is named");
    assert_eq!(job.deliveries.len(), 2);
    assert_eq!((&job.deliveries[0].loads, job.deliveries[0].place), (&vec![0, 1], Some(0)));
}

/// The circle over the outer front tyre, walked back to the machine's middle, and forth again by its wheels.
#[test]
fn turning_radii_lead_to_the_machines_middle() {
    let machine = complete().machines.remove(0).machine;
    let steering = machine.steering.unwrap();
    assert_eq!((steering.crab, steering.travel_speed), (Some(true), Some(15.0 / 3.6)));
    let over_tyres = |middle: f64, behind: f64| {
        let outer = middle + machine.front.half_track;
        (outer * outer + behind * behind).sqrt() + quantity::Si::si(&machine.front.tyre.width) / 2.0
    };
    let wheelbase = -machine.rear.axle.x;
    let two = steering.rear_axle_radius(&machine).unwrap();
    let four = steering.four_wheel_middle_radius(&machine).unwrap();
    assert!((over_tyres(two, wheelbase) - 4.10).abs() < 1e-12 && two > 0.0);
    assert!((over_tyres(four, wheelbase / 2.0) - 3.20).abs() < 1e-12 && four > 0.0);
    assert!(four < two, "it turns tighter on four wheels");
}

/// A lift without a place never passes, whatever else it has; so does one whose place is half a number.
#[test]
fn a_stand_that_nobody_chose_is_never_a_go() {
    let mut job = read(&[("support = \"tyres\"", "support = \"tyres\"\nchoose = [\"stand\"]")]);
    assert!(job.lifts[0].choose.stand && job.lifts[0].stand.is_chosen(), "a stated stand stays");
    let nowhere = [
        Stand::NOT_CHOSEN,
        Stand { heading: f64::NAN, ..job.lifts[0].stand },
        Stand { at: geometry::DVec2::new(f64::NAN, 12.0), ..job.lifts[0].stand },
    ];
    for i in 0..job.lifts.len() {
        for stand in nowhere {
            job.lifts[i].stand = stand;
            assert!(!stand.is_chosen());
            let checked = check_lift(&job, &job.lifts[i]).unwrap();
            assert_eq!(checked.verdict(), evidence::Verdict::NoGo, "lift {i}, {stand:?}");
        }
    }
}

#[test]
fn a_lift_that_chooses_its_stand_needs_none() {
    let stand = "stand = { at = [";
    let whole = text(&demo(), "job.toml");
    let line = whole.lines().find(|l| l.starts_with(stand)).unwrap().to_owned();
    let job = read(&[(&line, "choose = [\"stand\"]")]);
    assert!(!job.lifts[0].stand.is_chosen());
    check(&line, "", &["jobfile::missing-key `[[lift]]` : key=stand"]);
    check(&line, "choose = [\"machine\"]", &["jobfile::missing-key `[[lift]]` : key=stand"]);
    // What could not be read asks for nothing more.
    check(&line, "choose = [\"stnd\"]", &["jobfile::bad-choice `\"stnd\"`"]);
}

#[test]
fn what_is_wrong_with_wishes_is_said_at_the_wish() {
    let at = "support = \"tyres\"";
    let with = |more: &str| format!("{at}\n{more}");
    check(
        at,
        &with("from = \"nowhere\""),
        &["jobfile::unknown-reference `\"nowhere\"` : kind=jobfile-kind-pickup id=nowhere"],
    );
    check(at, &with("window = [\"07:30\"]"), &["jobfile::bad-time `[\"07:30\"]`"]);
    check(at, &with("window = [\"09:30\", \"25:00\"]"), &["jobfile::bad-time `[\"09:30\", \"25:00\"]`"]);
    check(at, &with("window = \"07:30-09:00\""), &["jobfile::wrong-type `\"07:30-09:00\"`"]);
    check(at, &with("priority = 0"), &["jobfile::out-of-range `0` : key=priority value=0 low=1 high=9"]);
    check(at, &with("minutes = \"10\""), &["jobfile::wrong-type `\"10\"`"]);
    check(at, &with("after = [\"99\"]"), &["jobfile::unknown-reference `\"99\"` : kind=jobfile-kind-lift id=99"]);
    check(at, &with("after = [\"1\"]"), &["jobfile::after-itself `\"1\"` : id=1"]);
    check(
        at,
        &with("after = [\"99\"]\npriority = 10\nfrom = 3"),
        &["jobfile::unknown-reference `\"99\"`", "jobfile::out-of-range `10`", "jobfile::wrong-type `3`"],
    );
    // A lift further down may be waited for.
    assert_eq!(read(&[(at, &with("after = [\"3\", \"2\"]"))]).lifts[0].after, [2, 1]);
}

#[test]
fn what_is_wrong_with_cranes_and_routines_is_said() {
    let job = "hours = [\"07:00\", \"07:00\"]\nplanner";
    check("planner", job, &["jobfile::bad-time `[\"07:00\", \"07:00\"]`"]);
    let crane = |heights: &str| {
        format!(
            "[[crane]]\nid = \"t\"\nname = \"T\"\nsource = \"stated\"\nat = [\"1 m\", \"2 m\"]\nradius = \"40 m\"\n{heights}\nby = \"A\"\n\n[[lift]]"
        )
    };
    check(
        "[[lift]]",
        &crane("from_height = \"120 m\"\nto_height = \"110 m\"\nrule = \"x\""),
        &["jobfile::order `\"120 m\"`"],
    );
    check(
        "[[lift]]",
        &crane("to_height = \"110 m\""),
        &["jobfile::missing-key `[[crane]]` : key=from_height", "jobfile::missing-key `[[crane]]` : key=rule"],
    );
    let routine = |keys: &str| format!("[[routine]]\nid = \"r\"\nname = \"R\"\n{keys}\n\n[[lift]]");
    check(
        "[[lift]]",
        &routine(
            "support = \"tyres\"\nattachment = \"forks\"\nstop_gust = \"10 m/s\"\nground = \"3 %\"\nstands = [[\"0 m\", \"0 m\"], [\"1 m\", \"1 m\"], [\"1 m\", \"0 m\"], [\"0 m\", \"1 m\"]]",
        ),
        &[
            "jobfile::missing-key `[[routine]]` : key=machine",
            "jobfile::missing-key `[[routine]]` : key=load",
            "jobfile::missing-key `[[routine]]` : key=landings",
            "jobfile::outline-crosses `[[\"0 m\", \"0 m\"], [\"1 m\", \"1 m\"], [\"1 m\", \"0 m\"], [\"0 m\", \"1 m\"]]`",
        ],
    );
}
