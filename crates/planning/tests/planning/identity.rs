//! Own, rented or unknown machine against what is the same, differs or is missing on it.

use crate::never_pass::demo;
use evidence::{Finding, Status};
use planning::{Examination, Job, Kept, Seen, check_lift};

fn clean() -> Job {
    let mut job = demo();
    job.lifts.truncate(1);
    job
}

fn identity(job: &Job) -> Vec<Finding> {
    let findings = check_lift(job, &job.lifts[0]).unwrap().findings();
    findings.into_iter().filter(|f| f.check == "identity").collect()
}

fn worst(job: &Job) -> Status {
    identity(job).iter().map(|f| f.status).max().unwrap()
}

type Change = fn(&mut Seen);

/// What is read on the machine: name, spoilt, left out.
const MARKS: [(&str, Change, Change); 7] = [
    ("serial", |s| s.serial = Some("INVENTED-0041".into()), |s| s.serial = None),
    ("tyres", |s| s.tyres = Some("IT 15-24 S (invented)".into()), |s| s.tyres = None),
    ("counterweight", |s| s.counterweight = Some("CW 90-0".into()), |s| s.counterweight = None),
    ("options", |s| s.options = Some(vec!["winch".into()]), |s| s.options = None),
    ("chart", |s| s.chart = Some("H14-L rev 3".into()), |s| s.chart = None),
    ("chart in the cab", |s| s.chart_in_cab = Some(false), |s| s.chart_in_cab = None),
    ("manual in the cab", |s| s.manual_in_cab = Some(false), |s| s.manual_in_cab = None),
];

#[test]
fn whose_machine_against_what_was_read_on_it() {
    let kept = [
        (Some(Kept::Own), Status::Go, Status::Condition),
        (Some(Kept::Rented), Status::Go, Status::CannotTell),
        (Some(Kept::Unknown), Status::Go, Status::CannotTell),
        (None, Status::CannotTell, Status::CannotTell),
    ];
    let mut cases = 0;
    for (kept, agrees, open) in kept {
        let with = |change: &dyn Fn(&mut Job)| {
            let mut job = clean();
            job.machines[0].kept = kept;
            change(&mut job);
            job
        };
        assert_eq!(worst(&with(&|_| {})), agrees, "{kept:?}");
        assert_eq!(worst(&with(&|j| j.machines[0].seen = None)), open, "{kept:?}, nobody read anything");
        for (name, spoilt, left_out) in MARKS {
            let differs = with(&|j| spoilt(j.machines[0].seen.as_mut().unwrap()));
            assert_eq!(worst(&differs), Status::NoGo, "{kept:?}, {name} differs");
            let missing = with(&|j| left_out(j.machines[0].seen.as_mut().unwrap()));
            assert_eq!(worst(&missing), open, "{kept:?}, {name} missing");
            for f in identity(&differs).iter().chain(&identity(&missing)).filter(|f| f.status > Status::Go) {
                assert!(!f.remedies.is_empty(), "{name}: says what to do");
            }
            cases += 2;
        }
        // Missing in the machine's file instead of on the machine.
        let no_file = with(&|j| {
            let m = &mut j.machines[0].machine;
            (m.serial, m.tyres, m.counterweight, m.options, m.chart_number) = (None, None, None, None, None);
        });
        assert_eq!(worst(&no_file), open, "{kept:?}, the file says nothing");
        let listed = identity(&no_file);
        assert_eq!(listed.iter().filter(|f| f.status == open).count(), 1, "one finding names everything open");
    }
    assert_eq!(cases, 56);
}

#[test]
fn both_values_of_a_difference_are_shown() {
    let mut job = clean();
    job.machines[0].seen.as_mut().unwrap().serial = Some("INVENTED-0041".into());
    let all = identity(&job);
    let [finding] = &all[..] else { panic!("{all:#?}") };
    let shown = format!("{:?}", finding.message);
    assert!(shown.contains("INVENTED-0014") && shown.contains("INVENTED-0041"), "{shown}");
}

#[test]
fn examinations_end_with_their_day() {
    let on = |examined: Option<(&str, &str)>, kept| {
        let mut job = clean();
        job.machines[0].kept = Some(kept);
        job.machines[0].examined =
            examined.map(|(date, next)| Examination { date: date.into(), next: next.into(), by: "x".into() });
        worst(&job)
    };
    for kept in [Kept::Own, Kept::Rented, Kept::Unknown] {
        let open = Status::CannotTell;
        assert_eq!(on(Some(("2026-11-16", "2027-04-12")), kept), Status::Go, "the last day");
        assert_eq!(on(Some(("2026-11-16", "2027-04-11")), kept), Status::NoGo, "one day over");
        assert_eq!(on(Some(("2027-04-13", "2028-04-13")), kept), open, "not made yet");
        assert_eq!(on(None, kept), open);
    }
}

/// The work is on 12 April 2027.
#[test]
fn a_reading_holds_for_a_week_and_never_comes_after_the_work() {
    let read = |date: &str, on: &str, kept| {
        let mut job = clean();
        job.machines[0].kept = Some(kept);
        job.machines[0].seen.as_mut().unwrap().date = date.into();
        on.clone_into(&mut job.date);
        job.machines[0].examined =
            Some(Examination { date: "1990-01-01".into(), next: "2099-01-01".into(), by: "x".into() });
        worst(&job)
    };
    for kept in [Kept::Own, Kept::Rented, Kept::Unknown] {
        let old = if kept == Kept::Own { Status::Condition } else { Status::CannotTell };
        let day = |date| read(date, "2027-04-12", kept);
        assert_eq!([day("2027-04-12"), day("2027-04-05")], [Status::Go; 2]);
        assert_eq!([day("2027-04-04"), day("2026-04-12"), day("1999-01-01")], [old; 3]);
        assert_eq!([day("2027-04-13"), day("2028-01-01")], [Status::NoGo; 2]);
        assert_eq!([day("last week"), day("2027-13-01"), day("")], [old; 3], "no day");
        // Over the ends of months, years and Februaries.
        assert_eq!(read("2027-12-28", "2028-01-04", kept), Status::Go);
        assert_eq!(read("2027-12-28", "2028-01-05", kept), old);
        assert_eq!(read("2028-02-23", "2028-03-01", kept), Status::Go, "a leap year: 7 days");
        assert_eq!(read("2028-02-22", "2028-03-01", kept), old);
        assert_eq!(read("2027-02-22", "2027-03-01", kept), Status::Go);
        assert_eq!(read("2027-02-21", "2027-03-01", kept), old);
    }
}
