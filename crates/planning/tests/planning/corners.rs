//! The worst corner is the worst: no sample of the uncertain inputs is less safe than reported.

use crate::never_pass::demo;
use evidence::{Finding, Ranged};
use planning::{Job, check_lift};

/// A small generator with a seed (splitmix64): the same samples every time.
struct Seeded(u64);
impl Seeded {
    fn within(&mut self, low: f64, high: f64) -> f64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        low + (high - low) * (((z ^ (z >> 31)) >> 11) as f64 / (1_u64 << 53) as f64)
    }
}

/// What the findings of one lift say: tilt there over tilt required, load factor, capacity read
/// (0 outside the chart), and the chart's sentence.
fn said(job: &Job) -> (f64, f64, f64, String) {
    let findings = check_lift(job, &job.lifts[0]).unwrap().findings();
    let find = |check: &str| findings.iter().find(|f| f.check == check).unwrap();
    let ratio = |f: &Finding| f.limit.unwrap().si / f.demand.unwrap().si;
    let chart = find("chart");
    let capacity = chart.limit.map_or(0.0, |l| l.si);
    (ratio(find("tilt")), ratio(find("load-factor")), capacity, format!("{:?}", chart.message))
}

#[test]
fn no_sample_of_the_uncertain_inputs_is_worse_than_the_worst_corner() {
    let mut random = Seeded(2027);
    let mut samples = 0;
    for index in [0, 1, 4] {
        let mut job = demo();
        job.lifts = vec![job.lifts[index].clone()];
        let lift = job.lifts[0].clone();
        let (tilt, factor, chart, _) = said(&job);
        let flex = job.machines[lift.machine].machine.boom.flex;
        let error = job.policy.stand_error;
        let forward = geometry::DVec2::new(lift.stand.heading.cos(), lift.stand.heading.sin());
        for _ in 0..150 {
            let mut exact = job.clone();
            // Stand error and flex as what they are: the load a little nearer or farther.
            let shift = random.within(-error, error + flex);
            exact.landings[lift.landing].at += forward * shift;
            exact.policy.stand_error = 0.0;
            exact.machines[lift.machine].machine.boom.flex = 0.0;
            let load = &mut exact.loads[lift.load];
            for range in [&mut load.mass_kg, &mut load.centre_ahead, &mut load.centre_left] {
                *range = Ranged::exact(random.within(range.low, range.high));
            }
            load.centre_up = Ranged::exact(load.centre_up.high);
            // Ratios, since another line may govern: the reported one has the least ratio.
            let sample = said(&exact);
            assert!(sample.0 >= tilt - 1e-9, "lift {index}: tilt {} below {tilt}", sample.0);
            assert!(sample.1 >= factor - 1e-9, "lift {index}: factor {} below {factor}", sample.1);
            assert!(sample.2 >= chart - 1e-9, "lift {index}: chart {} below {chart}: {}", sample.2, sample.3);
            samples += 1;
        }
    }
    assert_eq!(samples, 450);
}
