//! Accidents other than overturns, for the same test as those: power lines, edges, people raised, under or beside the
//! load, wind, the attachment's lock, a beam in the boom's way, the seat left.
//!
//! A stop is said by who writes the plan: these rows show that no number mends it, not that somebody will say it.

use crate::boom_rig::Rig;
use crate::boom_ways::block;
use crate::carried::trench;
use crate::incident_site::{LEVEL, Slope, distances, ditch, hangs, hooked, lift, line, line_across, place, weighs};
use crate::incidents::{
    BEYOND_CHART, BOOM_UP, NOT_LEVEL, PEOPLE, POUND, RIDES, Reason, SEAT, SLUNG, Story, UNDER, raised,
};
use crate::sampled::Seeded;
use evidence::Ranged;
use geometry::{DVec2, DVec3};
use machine::LockSeen;
use planning::{Job, StopKind, WindInput};
use quantity::metres_per_second;
use site::{OpenSides, PlanShape, Support, Zone, ZoneRule};

const LINE: Reason = ("line", &["line-near"]);
const DITCH: Reason = ("edges", &["near-excavation", "near-excavation-unknown", "stands-in-excavation"]);
const BELT: Reason = ("stops", &["stop-belt"]);
const HAND: Reason = ("stops", &["stop-hand"]);
const DRAGS: Reason = ("stops", &["stop-drag"]);
const OPEN: Reason = ("attachment", &["attachment-open"]);
const WIND: Reason = ("wind", &["wind-above", "wind-not-stated", "wind-turns"]);
const SOMEBODY: Reason = ("people", &["zone-people"]);
const HITS: Reason = ("obstacles", &["thing-near"]);
const NO_WAY_FOR_BOOM: Reason = (
    "movement",
    &["movement-landing", "movement-none", "movement-none-touches", "movement-none-low", "movement-none-back"],
);

const FOOT: f64 = 0.3048;
const INCH: f64 = 0.0254;

pub(crate) const MORE: [Story; 17] = [
    // A pump on 18 ft of rope under a line beside a rural road, slung from the forks.
    Story {
        id: "FACE-03IA055",
        expected: &[LINE, SLUNG],
        job: |_, random, was| {
            let mut job = lift();
            let slope = Slope::level(random);
            place(&mut job, slope, 0.0, random.within(-0.5, 0.5), random.within(3.8, 5.0));
            weighs(&mut job, random.within(80.0, 400.0));
            // Over where the pump comes to hang, as high as such lines are; safe, far from the work.
            let (over, off) = (random.within(2.0, 6.0), random.within(22.0, 26.0));
            let (up, kv) = (random.within(6.0, 9.0), random.within(7.2, 25.0));
            line_across(&mut job, if was { over } else { off }, up, kv);
            hooked(&mut job, 18.0 * FOOT);
            if was {
                job.lifts[0].attachment = "forks".into();
            }
            job
        },
    },
    // The rope alone: so long it takes the boom up to the line, short it stays under the same one.
    Story {
        id: "FACE-03IA055",
        expected: &[LINE],
        job: |_, random, was| {
            let mut job = lift();
            let slope = Slope::level(random);
            place(&mut job, slope, 0.0, random.within(-0.5, 0.0), random.within(4.0, 5.0));
            weighs(&mut job, random.within(80.0, 400.0));
            line_across(&mut job, random.within(2.0, 6.0), random.within(10.0, 10.8), random.within(7.2, 25.0));
            let short = random.within(0.6, 1.0);
            hooked(&mut job, if was { 18.0 * FOOT } else { short });
            job
        },
    },
    // A pig hut, and the boom at a line that runs over the farm.
    Story {
        id: "HSE-boom-contacts-ohpl",
        expected: &[LINE],
        job: |row, random, was| {
            let mut job = lift();
            pig_hut(&mut job, random);
            let (over, off) = (random.within(0.0, 4.0), random.within(20.0, 24.0));
            let ahead = if was { over } else { off };
            line_across(&mut job, ahead, random.within(5.2, 7.0), row.number("line_kv"));
            job
        },
    },
    // Roof sheets so long that their ends come to the line, which the machine with a short bundle stays off.
    Story {
        id: "OSHA-200330371",
        expected: &[LINE],
        job: |row, random, was| {
            let mut job = lift();
            let slope = Slope::level(random);
            let up = random.within(3.0, 6.0);
            place(&mut job, slope, 0.0, up, random.within(3.0, 5.0));
            weighs(&mut job, random.within(100.0, 400.0));
            let (aside, gap) = (random.within(7.0, 7.6), random.within(1.0, 2.4));
            let (high, short) = (up + random.within(-1.0, 1.5), random.within(1.2, 2.0));
            line(&mut job, [DVec2::new(aside, -40.0), DVec2::new(aside, 40.0)], high, row.number("line_kv"));
            job.loads[0].width = if was { 2.0 * (aside - gap) } else { short };
            job.loads[0].height = random.within(0.1, 0.3);
            job
        },
    },
    // Placed along a ditch full of water, into which it slid; no belt.
    Story {
        id: "FACE-95WI062",
        expected: &[DITCH, BELT],
        job: |_, random, was| {
            let mut job = lift();
            let slope = Slope::level(random);
            place(&mut job, slope, 0.0, random.within(0.2, 1.5), random.within(2.6, 4.0));
            let (near, far) = (random.within(0.3, 0.9), random.within(5.5, 7.0));
            let wet = OpenSides { wetted: true, people_below: false, ..OpenSides::default() };
            let mut dug = trench(&job, if was { near } else { far }, wet, Support::None);
            dug.soil = [None, Some(site::SoilType::TypeB), Some(site::SoilType::TypeC)][random.index(3)];
            dug.depth = Some(Ranged::plus_minus(random.within(0.8, 2.0), 0.1));
            if was && random.index(3) == 0 {
                // Nobody sees the bottom under the water.
                dug.depth = None;
            }
            job.surroundings.excavations = vec![dug];
            if was {
                job.lifts[0].stops = vec![StopKind::NoBelt];
            }
            job
        },
    },
    // Three in a loose box on the forks, nobody at the controls.
    Story {
        id: "NIOSH-FACE-2003-05",
        expected: &[PEOPLE, SEAT],
        job: |row, random, was| raised(row, random, was, &[StopKind::RaisesPeople, StopKind::LeavesSeat]),
    },
    // Driven along a wall with a man up in a basket and the boom out.
    Story {
        id: "OSHA-74165.015",
        expected: &[PEOPLE, BOOM_UP],
        job: |row, random, was| raised(row, random, was, &[StopKind::RaisesPeople, StopKind::DrivesBoomUp]),
    },
    // A man on the bare forks, the operator gone.
    Story {
        id: "NIOSH-FACE-9501",
        expected: &[PEOPLE, RIDES, SEAT],
        job: |row, random, was| {
            raised(row, random, was, &[StopKind::RaisesPeople, StopKind::Riders, StopKind::LeavesSeat])
        },
    },
    // A platform raised with the machine on a hill, which it rolled down backwards. Brakes are not reckoned: the stand is.
    Story {
        id: "OSHA-200626950",
        expected: &[PEOPLE, NOT_LEVEL],
        job: |row, random, was| {
            let mut job = raised(row, random, was, &[StopKind::RaisesPeople]);
            let hill = Slope { nose_up: random.within(3.5, 15.0), left_down: random.within(-2.0, 2.0) };
            let slope = if was { hill } else { Slope::level(random) };
            place(&mut job, slope, 0.0, row.number("fork_height_m"), random.within(2.6, 4.0));
            job
        },
    },
    // A heavy bar on a hook, the boom out beyond the chart, a man guiding it from beneath.
    Story {
        id: "WSBC-22021170630006",
        expected: &[BEYOND_CHART, UNDER, HAND],
        job: |_, random, was| {
            let mut job = lift();
            hooked(&mut job, random.within(0.6, 1.2));
            let slope = Slope::level(random);
            let (up, kg) = (random.within(0.5, 2.0), random.within(1150.0, 1350.0));
            let asked = if was { [0.4 * kg, 0.95 * kg] } else { [1.1 * kg, 1e9] };
            let all = distances(&job, slope, up, asked[0], asked[1]);
            place(&mut job, slope, 0.0, up, all[random.index(all.len())]);
            weighs(&mut job, kg);
            if was {
                job.lifts[0].stops = vec![StopKind::UnderLoad, StopKind::HandSteadied];
            }
            job
        },
    },
    // A tree pulled out of the ground, which nobody can weigh, by an attachment whose coupling was open.
    Story {
        id: "OSHA-201076155",
        expected: &[DRAGS, OPEN, BEYOND_CHART],
        job: |_, random, was| {
            let mut job = lift();
            let slope = Slope::level(random);
            place(&mut job, slope, 0.0, random.within(0.3, 2.0), random.within(2.6, 3.4));
            // Lying free it is weighed.
            weighs(&mut job, random.within(200.0, 900.0));
            if was {
                hangs(&mut job);
                job.loads[0].mass_kg = Ranged::exact(f64::NAN);
                for (_, seen) in &mut job.machines[0].attachment_lock {
                    *seen = LockSeen::Open;
                }
                job.lifts[0].stops = vec![StopKind::Drags];
            }
            job
        },
    },
    // A beam of 50 ft across the boom's way to a deck; safe, it lies beyond the deck.
    Story {
        id: "OSHA-202287520",
        expected: &[HITS, NO_WAY_FOR_BOOM],
        job: |row, random, was| {
            let mut job = lift();
            let slope = Slope::level(random);
            let away = random.within(5.0, 6.5);
            place(&mut job, slope, 0.0, row.number("fork_height_m"), away);
            weighs(&mut job, random.within(300.0, 900.0));
            // Its side, square, from 13000 lb of concrete of 2400 kg/m³.
            let half = (13_000.0 * POUND / (50.0 * FOOT) / 2400.0).sqrt() / 2.0;
            let hit = on_boom(&job, random.within(0.6, 0.9));
            let ahead = if was { hit.x } else { away + random.within(4.0, 8.0) };
            let beam = block(&job, "Beam", [ahead - half, ahead + half], 25.0 * FOOT, Some(hit.y - half), hit.y + half);
            job.surroundings.things = vec![beam].into();
            job
        },
    },
    // A window of 56 by 106 in fitted from the forks in gusts.
    Story {
        id: "OSHA-201408614",
        expected: &[WIND, PEOPLE],
        job: |row, random, was| {
            let mut job = raised(row, random, was, &[StopKind::RaisesPeople]);
            weighs(&mut job, random.within(100.0, 300.0));
            let load = &mut job.loads[0];
            (load.height, load.width, load.depth) = (56.0 * INCH, 106.0 * INCH, random.within(0.1, 0.4));
            assert!((load.height * load.width - 3.83).abs() < 0.01);
            // Above what the machine's maker allows at height, or nobody asked; safe, below it.
            let (gusty, calm) = (random.within(13.0, 25.0), random.within(2.0, 10.0));
            let gust = if was { gusty } else { calm };
            job.lifts[0].wind = Some(WindInput { gust: metres_per_second(gust) });
            if was && random.index(3) == 0 {
                job.lifts[0].wind = None;
            }
            job
        },
    },
    // Trusses hung beside a wall, driven so, a carpenter on the wall with his hands on them.
    Story {
        id: "OSHA-202251765",
        expected: &[HAND, BOOM_UP, SOMEBODY],
        job: |_, random, was| {
            let mut job = lift();
            hooked(&mut job, random.within(0.8, 2.0));
            let slope = Slope::level(random);
            place(&mut job, slope, 0.0, 10.0 * FOOT, random.within(4.0, 6.0));
            weighs(&mut job, random.within(100.0, 400.0));
            let load = &mut job.loads[0];
            (load.width, load.height, load.depth) =
                (random.within(6.0, 10.0), random.within(1.2, 2.4), random.within(0.1, 0.4));
            // Within reach of his hands; safe, beyond where trusses of that length come in any turn.
            let side = if random.index(2) == 0 { 1.0 } else { -1.0 };
            let (beside, off) = (random.within(0.3, 2.5), random.within(14.0, 18.0));
            let centre = job.landings[0].at + DVec2::X * side * if was { beside } else { off };
            job.surroundings.zones = vec![Zone {
                id: "wall".into(),
                name: "Top of the wall".into(),
                shape: PlanShape::Round { centre, radius: 0.4 },
                rule: ZoneRule::People,
                times: Vec::new(),
                by: "made".into(),
            }];
            if was {
                job.lifts[0].stops = vec![StopKind::HandSteadied, StopKind::DrivesBoomUp];
            }
            job
        },
    },
    // The seat left beside a skip with the attachment up. That it rolled no check reckons.
    Story { id: "OSHA-200758951", expected: &[SEAT], job: |_, random, was| seat_left(random, was, [150.0, 600.0]) },
    // Parked with more than it lifts, up, on ground that falls a little; likewise.
    Story {
        id: "WSBC-veneer-stack",
        expected: &[SEAT, BEYOND_CHART],
        job: |_, random, was| seat_left(random, was, if was { [4200.0, 5500.0] } else { [400.0, 1200.0] }),
    },
    // The ditch once more, drawn by the survey alone: the ground falls away beside the wheel.
    Story {
        id: "FACE-95WI062",
        expected: &[("edges", &["ground-falls"])],
        job: |_, random, was| {
            let mut job = lift();
            let slope = Slope::level(random);
            let (up, away) = (random.within(0.2, 1.5), random.within(2.6, 4.0));
            // Beside the outer edge of the left wheels.
            let deep = random.within(0.8, 2.0);
            place(&mut job, slope, 0.0, up, away);
            ditch(&mut job, if was { -1.6 } else { -9.0 }, deep);
            job
        },
    },
];

/// A hut on the forks, set on a trailer or on the ground.
fn pig_hut(job: &mut Job, random: &mut Seeded) {
    let slope = Slope::level(random);
    place(job, slope, 0.0, random.within(0.1, 1.2), random.within(3.0, 4.0));
    weighs(job, random.within(150.0, 400.0));
    let load = &mut job.loads[0];
    (load.depth, load.width, load.height) = (1.5, random.within(1.8, 2.4), random.within(1.0, 1.4));
}

/// Where on the boom's middle line from its foot to its end, with the load set down: ahead of the stand and above the
/// ground there, m.
fn on_boom(job: &Job, share: f64) -> DVec2 {
    let rig = Rig::new(job);
    let landing = &job.landings[0];
    let heel = rig.pose.inverse() * (landing.at - DVec2::Y * (job.loads[0].depth / 2.0)).extend(landing.level);
    let (angle, extension) = rig.solve(DVec2::new(heel.x, heel.z));
    let at = rig.foot.lerp(rig.pins(angle, extension)[0], share);
    let on_site = rig.pose * DVec3::new(at.x, 0.0, at.y);
    DVec2::new(on_site.y - job.lifts[0].stand.at.y, on_site.z - LEVEL)
}

/// The operator gets down with the load up.
fn seat_left(random: &mut Seeded, was: bool, kg: [f64; 2]) -> Job {
    let mut job = lift();
    let steep = random.within(0.5, 6.0);
    let slope = if was { Slope::any_way(random, steep) } else { Slope::level(random) };
    place(&mut job, slope, 0.0, random.within(1.0, 2.5), random.within(2.6, 3.4));
    weighs(&mut job, random.within(kg[0], kg[1]));
    if was {
        job.lifts[0].stops = vec![StopKind::LeavesSeat];
    }
    job
}
