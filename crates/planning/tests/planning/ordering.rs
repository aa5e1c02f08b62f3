//! The order of tasks: against every order there is, against a solver of others, and what always holds of it.

use planning::order::{EXACT, Schedule, Task, Tasks, follow, solve, solve_by_rules};

/// xorshift64*, so that a seed always makes the same jobs (Vigna 2016, from memory).
pub(crate) struct Random(pub(crate) u64);

impl Random {
    pub(crate) fn below(&mut self, n: i64) -> i64 {
        self.0 ^= self.0 >> 12;
        self.0 ^= self.0 << 25;
        self.0 ^= self.0 >> 27;
        let high = self.0.wrapping_mul(0x2545_F491_4F6C_DD1D) >> 33;
        i64::try_from(high).unwrap() % n
    }
}

/// A made job: tight landings, some windows, some loads that go again.
fn made(random: &mut Random, n: usize) -> Tasks {
    let machines = 1 + usize::try_from(random.below(3)).unwrap();
    let landings = 1 + usize::try_from(random.below(3)).unwrap();
    let place: Vec<[i64; 2]> = (0..n).map(|_| [random.below(300), random.below(300)]).collect();
    let list: Vec<Task> = (0..n)
        .map(|i| {
            let release = if random.below(3) == 0 { random.below(3000) } else { 0 };
            let lasts = 200 + random.below(1000);
            let due = if random.below(2) == 0 { release + lasts + random.below(4000) } else { 100_000 };
            let goes = random.below(4) == 0;
            let mass = 200 + random.below(1000);
            Task {
                machine: usize::try_from(random.below(i64::try_from(machines).unwrap())).unwrap(),
                landing: usize::try_from(random.below(i64::try_from(landings).unwrap())).unwrap(),
                release,
                due,
                lasts,
                weight: 1 + random.below(9),
                after: (0..i).filter(|_| random.below(8) == 0).collect(),
                blocked: (0..random.below(2)).map(|_| (1000 + random.below(1000), 2500 + random.below(500))).collect(),
                brings: if goes { -mass } else { mass },
                room: if goes { i64::MAX } else { random.below(2500) },
                stock: None,
            }
        })
        .collect();
    let mut between = vec![vec![0; n]; n];
    let mut clash = vec![vec![false; n]; n];
    for i in 0..n {
        for k in 0..n {
            if list[i].machine == list[k].machine {
                between[i][k] = place[i].iter().zip(place[k]).map(|(a, b)| (a - b).abs()).sum();
            } else if i < k {
                clash[i][k] = random.below(3) == 0;
                clash[k][i] = clash[i][k];
            }
        }
    }
    Tasks { list, machines, lies: vec![0; landings], kinds: 0, between, clash }
}

/// Everything that an order has to keep, looked at from outside and in the order of time.
fn keeps_everything(tasks: &Tasks, schedule: &Schedule) {
    let placed: Vec<usize> = (0..tasks.list.len()).filter(|t| schedule.start[*t].is_some()).collect();
    let span = |t: usize| {
        let start = schedule.start[t].unwrap();
        (start, start + tasks.list[t].lasts)
    };
    let apart = |a: (i64, i64), b: (i64, i64)| a.1 <= b.0 || b.1 <= a.0;
    for &i in &placed {
        let t = &tasks.list[i];
        assert!(span(i).0 >= t.release && span(i).1 <= t.due, "window of {i}");
        assert!(t.after.iter().all(|b| schedule.start[*b].is_some() && span(*b).1 <= span(i).0), "after of {i}");
        assert!(t.blocked.iter().all(|b| apart(*b, span(i))), "crane of {i}");
        for &k in placed.iter().filter(|k| **k != i) {
            let other = &tasks.list[k];
            assert!(t.machine != other.machine || apart(span(i), span(k)), "{i} and {k} on one machine");
            assert!(t.landing != other.landing || apart(span(i), span(k)), "{i} and {k} on one landing");
            assert!(!tasks.clash[i][k] || apart(span(i), span(k)), "{i} and {k} beside each other");
        }
        // The way from the task before it on its machine.
        let before = placed.iter().filter(|k| tasks.list[**k].machine == t.machine && span(**k).0 < span(i).0);
        if let Some(last) = before.max_by_key(|k| span(**k).0) {
            assert!(span(i).0 >= span(*last).1 + tasks.between[*last][i], "way from {last} to {i}");
        }
    }
    let mut by_time = placed;
    by_time.sort_by_key(|t| span(*t));
    let mut lies = tasks.lies.clone();
    for t in by_time {
        let task = &tasks.list[t];
        assert!(
            lies[task.landing] <= task.room,
            "landing under {t}: {} on it, {} allowed",
            lies[task.landing],
            task.room
        );
        lies[task.landing] += task.brings;
    }
}

fn permutations(n: usize, each: &mut impl FnMut(&[usize])) {
    fn go(list: &mut Vec<usize>, from: usize, each: &mut impl FnMut(&[usize])) {
        if from == list.len() {
            return each(list);
        }
        for i in from..list.len() {
            list.swap(from, i);
            go(list, from + 1, each);
            list.swap(from, i);
        }
    }
    go(&mut (0..n).collect(), 0, each);
}

#[test]
fn of_few_lifts_the_best_order_is_found() {
    let mut random = Random(0x5EED_0001);
    let (mut equal, mut cases, mut lost) = (0, 0, 0);
    for n in [1, 2, 3, 4, 5, 6, 6, 6] {
        for _ in 0..40 {
            let tasks = made(&mut random, n);
            let found = solve(&tasks);
            assert!(found.exact);
            keeps_everything(&tasks, &found);
            let mut best = (i64::MAX, i64::MAX);
            permutations(n, &mut |list| best = best.min(follow(&tasks, list).cost(&tasks)));
            assert_eq!(found.cost(&tasks), best, "{tasks:#?}");
            let quick = solve_by_rules(&tasks);
            keeps_everything(&tasks, &quick);
            assert!(quick.cost(&tasks) >= best);
            cases += 1;
            equal += usize::from(quick.cost(&tasks) == best);
            lost += usize::from(best.0 > 0);
        }
    }
    // The cases are hard enough: in many something has to be left out. The rules find the best of nearly all.
    assert!(lost > cases / 5 && lost < cases, "{lost} of {cases} lose something");
    assert!(equal * 100 >= cases * 95, "rules find the best in {equal} of {cases}");
}

#[test]
fn of_many_lifts_every_order_keeps_every_limit() {
    let mut random = Random(0x5EED_0002);
    for n in [9, 20, 40, 100] {
        for _ in 0..3 {
            let mut tasks = made(&mut random, n);
            for (i, t) in tasks.list.iter_mut().enumerate() {
                t.due = t.due.max(20_000) * 4;
                t.after.retain(|b| (b + i) % 9 == 0);
                t.room = t.room.saturating_mul(8);
            }
            let found = solve(&tasks);
            assert_eq!(found.exact, n <= EXACT);
            keeps_everything(&tasks, &found);
            assert_eq!(found, solve(&tasks), "the same lifts, the same order");
            let plain: Vec<usize> = (0..n).collect();
            assert!(found.cost(&tasks) <= follow(&tasks, &plain).cost(&tasks), "worse than the order of the file");
            assert!(found.sequence.len() > n / 4);
        }
    }
}

#[test]
fn what_cannot_come_says_why() {
    let task =
        |landing, brings, room| Task { landing, brings, room, due: 10_000, lasts: 600, weight: 5, ..Task::default() };
    let mut tasks = Tasks {
        list: vec![task(0, 900, 1000), task(0, 900, 500), task(1, 1, 0), task(1, -1, i64::MAX)],
        machines: 1,
        lies: vec![0, 0],
        kinds: 1,
        between: vec![vec![0; 4]; 4],
        clash: vec![vec![false; 4]; 4],
    };
    tasks.list[3].stock = Some((0, -1));
    let found = solve(&tasks);
    keeps_everything(&tasks, &found);
    assert_eq!(found.start[3], None, "nobody brings what it takes");
    // The one that stands less comes first, then both fit: 0 before the second, 900 before the first.
    assert!(found.start[1].unwrap() < found.start[0].unwrap());
    tasks.list[2].stock = Some((0, 1));
    let found = solve(&tasks);
    assert!(found.start[3].unwrap() >= found.start[2].unwrap() + 600);
}

/// Mixed-integer programming of others: `validation/order/order.py`.
#[test]
fn val_best_orders_of_small_jobs() {
    let path = crate::workspace::path("validation/order/cases.json");
    let file: serde_json::Value = serde_json::from_str(&std::fs::read_to_string(path).unwrap()).unwrap();
    let cases = file["cases"].as_array().unwrap();
    assert_eq!(cases.len(), 60, "a reference case went missing");
    let int = |v: &serde_json::Value| v.as_i64().unwrap();
    let index = |v: &serde_json::Value| usize::try_from(int(v)).unwrap();
    let mut whole = 0;
    for (number, case) in cases.iter().enumerate() {
        let list = case["tasks"].as_array().unwrap().iter().map(|t| Task {
            machine: index(&t["machine"]),
            landing: index(&t["landing"]),
            release: int(&t["release"]),
            due: int(&t["due"]),
            lasts: int(&t["lasts"]),
            weight: int(&t["weight"]),
            after: t["after"].as_array().unwrap().iter().map(index).collect(),
            blocked: t["blocked"].as_array().unwrap().iter().map(|b| (int(&b[0]), int(&b[1]))).collect(),
            brings: int(&t["brings"]),
            room: t["room"].as_i64().unwrap_or(i64::MAX),
            stock: None,
        });
        let tasks = Tasks {
            list: list.collect(),
            machines: index(&case["machines"]),
            lies: vec![0; index(&case["landings"])],
            kinds: 0,
            between: serde_json::from_value(case["between"].clone()).unwrap(),
            clash: serde_json::from_value(case["clash"].clone()).unwrap(),
        };
        let found = solve(&tasks);
        keeps_everything(&tasks, &found);
        let (lost, cost) = found.cost(&tasks);
        match case["least"].as_i64() {
            Some(least) => {
                whole += 1;
                assert_eq!((lost, cost), (0, least), "case {number}");
            }
            None => assert!(lost > 0, "case {number}: an order of all, where the solver found none"),
        }
    }
    assert_eq!(whole, 48);
}
