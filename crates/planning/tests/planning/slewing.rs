//! A machine that turns its upper part: described and charted, never a go.

use crate::workspace;
use evidence::{Status, Verdict};
use machine::SupportState;

/// The demo job with its first machine replaced by the slewing one, standing on its outriggers.
#[test]
fn a_slewing_machine_is_never_a_go_and_says_why() {
    let job = crate::never_pass::demo();
    let name = "examples/machines/ibis-21r.toml";
    let (slewing, _) = jobfile::read_machine(name, &workspace::read(name)).unwrap();
    assert_eq!(slewing.contacts(SupportState::Outriggers)[0].y, 2.45);
    let mut changed = job.clone();
    for unit in &mut changed.machines {
        unit.machine = slewing.clone();
    }
    for lift in &mut changed.lifts {
        lift.support = SupportState::Outriggers;
    }
    let plan = planning::plan(&changed);
    assert!(!plan.lifts.is_empty());
    for lift in &plan.lifts {
        assert_eq!(lift.verdict, Verdict::NoGo, "{}", lift.id);
        let said = lift.findings.iter().find(|f| f.check == "slewing").unwrap();
        assert_eq!(said.status, Status::CannotTell);
    }
    assert!(planning::plan(&job).lifts.iter().all(|l| l.findings.iter().all(|f| f.check != "slewing")));
}
