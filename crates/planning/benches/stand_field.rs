//! The stand field of 15 m in cells of 0.1 m (70,686 cells) against the single check asked cell by cell by one thread, and what a
//! change of the load's weight costs. Prints ratios of one run; every answer that is compared is asserted equal.
#![allow(
    missing_docs,
    clippy::unwrap_used,
    clippy::print_stdout,
    clippy::panic,
    clippy::disallowed_methods,
    reason = "a bench reads the clock"
)]

use planning::{FieldSpec, SetBacks, StandField, StandSearch, WeighedField, Worker, check_plain_movement};
use std::collections::BTreeMap;
use std::time::Instant;

/// The whole field by so many threads, each with its share of the cells.
fn by_threads(search: &StandSearch<'_>, threads: usize) -> StandField {
    let order = search.coarse_to_fine();
    let mut field = search.field();
    let parts: Vec<Vec<_>> = std::thread::scope(|scope| {
        let start = |k: usize| {
            let order = &order;
            scope.spawn(move || {
                let mut worker = Worker::new();
                order.iter().skip(k).step_by(threads).map(|i| (*i, search.ask(*i, &mut worker))).collect::<Vec<_>>()
            })
        };
        let handles: Vec<_> = (0..threads).map(start).collect();
        handles.into_iter().map(|h| h.join().unwrap()).collect()
    });
    for answers in parts {
        field.fill(answers);
    }
    field
}

/// The first answer of a field that keeps what weight does not change, and those for other weights.
fn again(job: &planning::Job, lift: usize) {
    let go_on = &mut |_: &StandField, _, _| std::ops::ControlFlow::Continue(());
    let mut kept = WeighedField::new(job, &job.lifts[lift], FieldSpec::default()).unwrap();
    let start = Instant::now();
    kept.run(go_on);
    let first = start.elapsed().as_secs_f64();
    let mut other = job.clone();
    let load = job.lifts[lift].load;
    let own = job.loads[load].mass_kg;
    for share in [0.95, 1.05, 0.7] {
        let mass = evidence::Ranged { low: own.low * share, nominal: own.nominal * share, high: own.high * share };
        kept.weigh(mass);
        other.loads[load].mass_kg = mass;
        let start = Instant::now();
        let field = kept.run(go_on);
        let again = start.elapsed().as_secs_f64();
        let search = StandSearch::new(&other, &other.lifts[lift], FieldSpec::default()).unwrap();
        assert_eq!(field, by_threads(&search, 2), "another field with the weight changed");
        println!(
            "    the load at {share}: {:.0} ms after a first answer of {:.0} ms: {:.1} times less",
            again * 1e3,
            first * 1e3,
            first / again
        );
    }
}

/// Three sizes of cells: time a cell.
fn growth(job: &planning::Job, lift: usize) {
    let mut of_finest = None;
    for cell in [0.05, 0.1, 0.2] {
        let search = StandSearch::new(job, &job.lifts[lift], FieldSpec { radius: 15.0, cell }).unwrap();
        let start = Instant::now();
        let field = by_threads(&search, 1);
        let each = start.elapsed().as_secs_f64() / field.grid.count() as f64;
        let finest = *of_finest.get_or_insert(each);
        println!(
            "    cells of {cell} m: {} cells, {:.2} µs each, {:.2} of the finest",
            field.grid.count(),
            each * 1e6,
            each / finest
        );
    }
}

fn main() {
    let mut folder: BTreeMap<String, Vec<u8>> = BTreeMap::new();
    let root = std::path::PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../../examples/demo-job");
    for file in ["job.toml", "survey/levels.csv", "machines/demo-7.toml", "machines/demo-14.toml"] {
        folder.insert(file.to_owned(), std::fs::read(root.join(file)).unwrap());
    }
    let (whole, _) = jobfile::read_job(&folder).unwrap();
    let mut plain = whole.clone();
    plain.soils.clear();
    plain.mats.clear();
    plain.surroundings = site::Surroundings::default();
    let mut among = plain.clone();
    among.surroundings.things.clone_from(&whole.surroundings.things);
    let mut any = plain.clone();
    any.landings.iter_mut().for_each(|l| l.approach = None);
    let only = std::env::args().nth(1).and_then(|a| a.parse::<usize>().ok());
    for (name, job, lift) in [
        ("bay", &plain, 0),
        ("bay from any side", &any, 0),
        ("truck", &plain, 4),
        ("hung", &plain, 5),
        ("bay among things", &among, 0),
        ("on mats by a trench", &whole, 6),
    ] {
        if only.is_some_and(|o| o != lift) {
            continue;
        }
        let search = StandSearch::new(job, &job.lifts[lift], FieldSpec::default()).unwrap();
        let start = Instant::now();
        let field = by_threads(&search, 1);
        let one = start.elapsed().as_secs_f64();
        let start = Instant::now();
        assert_eq!(by_threads(&search, 2), field, "two threads give another field");
        let two = start.elapsed().as_secs_f64();
        let asked: Vec<usize> = field.cells().map(|(i, _)| i).step_by(41).collect();
        let mut kept = SetBacks::default();
        kept.only_whether(true);
        let mut at = job.lifts[lift].clone();
        let start = Instant::now();
        for &i in &asked {
            at.stand = search.stand(i);
            let check = check_plain_movement(job, &at, &mut kept).unwrap();
            assert_eq!(Some(check.verdict()), field.verdict(i));
        }
        let each = start.elapsed().as_secs_f64() / asked.len() as f64;
        let cells = field.cells().count();
        println!(
            "{name}: {cells} cells, {:.1} m² pass: one thread {:.0} ms, two {:.0} ms; the single check on every 41st cell {:.0} µs \
             each, {:.1} s for all: {:.1} times as long as one thread, {:.1} as two",
            field.passing_area(),
            one * 1e3,
            two * 1e3,
            each * 1e6,
            each * cells as f64,
            each * cells as f64 / one,
            each * cells as f64 / two,
        );
        again(job, lift);
        growth(job, lift);
        for (reason, area) in field.why_not() {
            println!("    {reason:?} {area:.1} m²");
        }
        println!("    everywhere {:?}", field.everywhere);
    }
}
