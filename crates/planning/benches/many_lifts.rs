//! A job whose lifts leave machine, attachment, support state and stand to the planner: time a lift for three sizes, and
//! against looking closely at every way to equip each lift. Prints ratios of one run.
#![allow(
    missing_docs,
    clippy::unwrap_used,
    clippy::print_stdout,
    clippy::disallowed_methods,
    reason = "a bench reads the clock"
)]

use planning::{Choose, FieldSpec, Job, JobMachine, SetBacks, Stand, StandSearch, best_stands, plan, plan_as_stated};
use std::collections::BTreeMap;
use std::ops::ControlFlow;
use std::time::Instant;

/// The demo with more machines, and so many lifts of its blocks, tiles and mortar to its landings.
fn job(lifts: usize) -> Job {
    let mut folder: BTreeMap<String, Vec<u8>> = BTreeMap::new();
    let examples = std::path::PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../../examples");
    for file in ["job.toml", "survey/levels.csv", "machines/demo-7.toml", "machines/demo-14.toml"] {
        folder.insert(file.to_owned(), std::fs::read(examples.join("demo-job").join(file)).unwrap());
    }
    let mut job = jobfile::read_job(&folder).unwrap().0;
    job.soils.clear();
    job.mats.clear();
    job.surroundings = site::Surroundings::default();
    job.routines.clear();
    job.gates.clear();
    for name in ["stork-18", "bittern-8", "wren-6"] {
        let bytes = std::fs::read(examples.join(format!("machines/{name}.toml"))).unwrap();
        let machine = jobfile::read_machine(&format!("{name}.toml"), &bytes).unwrap().0;
        let like: &JobMachine = &job.machines[0];
        job.machines.push(JobMachine { machine, ..like.clone() });
    }
    let upward: Vec<_> = job.lifts.iter().filter(|l| l.task == planning::Task::SetDown).take(3).cloned().collect();
    job.lifts = (0..lifts)
        .map(|i| {
            let mut lift = upward[i % upward.len()].clone();
            lift.id = format!("{i}");
            (lift.stand, lift.from, lift.gates) = (Stand::NOT_CHOSEN, None, None);
            lift.choose = Choose::ALL;
            let mut load = job.loads[lift.load].clone();
            let share = 0.5 + 0.05 * (i % 13) as f64;
            let mass = load.mass_kg;
            load.mass_kg =
                evidence::Ranged { low: mass.low * share, nominal: mass.nominal * share, high: mass.high * share };
            job.loads.push(load);
            lift.load = job.loads.len() - 1;
            lift
        })
        .collect();
    job
}

/// Every machine, attachment and support state of every lift looked at closely: how many of them, and the time.
fn every_way(job: &Job) -> (usize, f64) {
    let mut kept = SetBacks::default();
    let mut ways = 0;
    let start = Instant::now();
    for lift in &job.lifts {
        for (machine, unit) in job.machines.iter().enumerate() {
            for attachment in unit.machine.attachments.iter().filter(|a| !a.hangs()) {
                for (_, support) in machine::SupportState::WORDS {
                    if !unit.machine.has(support) {
                        continue;
                    }
                    let way = planning::Lift { machine, attachment: attachment.id.clone(), support, ..lift.clone() };
                    let spec = FieldSpec { radius: 15.0, cell: 0.2 };
                    let search = StandSearch::new(job, &way, spec).unwrap();
                    let field = search.run(&mut |_, _, _| ControlFlow::Continue(()));
                    best_stands(job, &way, &search, &field, &mut kept, 1);
                    ways += 1;
                }
            }
        }
    }
    (ways, start.elapsed().as_secs_f64())
}

fn main() {
    for lifts in [10, 20, 40] {
        let job = job(lifts);
        let start = Instant::now();
        let whole = plan(&job);
        let planned = start.elapsed().as_secs_f64();
        let start = Instant::now();
        plan_as_stated(&job);
        let stated = start.elapsed().as_secs_f64();
        let found = whole.lifts.iter().filter(|l| l.verdict != evidence::Verdict::NoGo).count();
        print!(
            "{lifts} lifts, {found} of them can be done: {planned:.2} s, {:.0} ms a lift; as stated {:.2} s",
            planned / lifts as f64 * 1e3,
            stated
        );
        if lifts == 10 {
            let (ways, all) = every_way(&job);
            print!(
                "; every one of {ways} ways looked at closely {all:.2} s, {:.1} times the whole plan",
                all / planned
            );
        }
        println!();
    }
}
