//! Trials of the fit: machines whose masses are withheld, weighed with noise.

use crate::r1::r1;
use geometry::DVec3;
use machine::{BoomPosition, Machine, SupportState, kinematics};
use quantity::Si;
use stability::fit::{
    Answer, Ask, Between, Charted, Fit, FitAxis, FitFault, FitLoad, FitPart, FitPose, Known, Margin, Measurement, Next,
    RowOf, SideAsk, Statement, Weighing, charted_zones,
};
use stability::{
    LEVEL, LoadOnBoom, Loading, Masses, RearAxleState, Support, TipsOver, level_tipping_load, tilt_reserve,
    tipping_lines,
};

/// Pseudo-random numbers: the same in every run.
struct Numbers(u64);

impl Numbers {
    fn next(&mut self) -> f64 {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 11) as f64 / (1_u64 << 53) as f64
    }
    fn within(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.next()
    }
    fn normal(&mut self) -> f64 {
        // Box and Muller.
        let (a, b) = (self.next().max(1e-12), self.next());
        (-2.0 * a.ln()).sqrt() * (std::f64::consts::TAU * b).cos()
    }
}

const FILES: [&str; 7] = [
    "examples/machines/wren-6.toml",
    "examples/machines/bittern-8.toml",
    "examples/machines/stork-18.toml",
    "examples/machines/pelican-12t.toml",
    "examples/machines/ibis-21r.toml",
    "examples/demo-job/machines/demo-7.toml",
    "examples/demo-job/machines/demo-14.toml",
];

pub(crate) fn machines() -> Vec<(String, Machine)> {
    let root = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../..");
    let read = |file: &&str| {
        let bytes = std::fs::read(root.join(file)).unwrap();
        (file.rsplit('/').next().unwrap().to_owned(), jobfile::read_machine(file, &bytes).unwrap().0)
    };
    std::iter::once(("R1".to_owned(), r1())).chain(FILES.iter().map(read)).collect()
}

fn pose(machine: &Machine, along: f64, out: f64) -> FitPose {
    let b = &machine.boom;
    let (low, high) = (b.angle_min.si().max(0.0), b.angle_max.si());
    let boom = BoomPosition::level(low + along * (high - low), out * b.extension_max.si());
    FitPose { attachment: 0, boom, support: SupportState::Tyres }
}

/// Front and rear axle load without load, kg.
fn axles(machine: &Machine, pose: FitPose) -> (f64, f64) {
    let m = Masses::of(machine, &machine.attachments[pose.attachment], pose.boom);
    let rear = m.total() * (machine.front.x - m.centre().x) / (machine.front.x - machine.rear.axle.x);
    (m.total() - rear, rear)
}

/// Level forward tipping load, kg, where the load is ahead of the front line.
fn truth(machine: &Machine, ask: Ask) -> Option<f64> {
    let attachment = &machine.attachments[ask.pose.attachment];
    let masses = Masses::of(machine, attachment, ask.pose.boom);
    let lines = tipping_lines(machine, Support { state: ask.pose.support, rear: RearAxleState::Locked });
    let at = kinematics::tool_point(&machine.boom, attachment, ask.pose.boom) + DVec3::new(ask.ahead, 0.0, 0.0);
    level_tipping_load(&masses, &lines[0], at)
}

fn said(name: &str, known: Known) -> Statement {
    Statement { name: name.to_owned(), known }
}

/// Axle loads at a pose, each off by `noise`, stated with an uncertainty.
fn weighed(machine: &Machine, pose: FitPose, share: f64, mut noise: impl FnMut() -> f64) -> Statement {
    let (front, rear) = axles(machine, pose);
    let mut about = |kg: f64| Some(Between::about(kg * (1.0 + noise()), share));
    let (front, rear) = (about(front), about(rear));
    said("axle loads", Known::Axles { pose, front, rear, load: None, pitch: 0.0 })
}

/// A charted capacity that keeps 1.33 and no more, rounded down to 50 kg.
fn charted(machine: &Machine, pose: FitPose) -> Option<Statement> {
    let kg = truth(machine, Ask { pose, ahead: 0.61 })? / 1.33;
    let kg = (kg / 50.0).floor() * 50.0;
    let load = FitLoad { mass: Between { low: kg, high: kg }, ahead: 0.61, up: 0.61 };
    let point = Charted { pose, load, margin: Margin::Factor(1.33), governs: Some(50.0) };
    (kg > 0.0).then(|| said("charted", Known::Charted(vec![point])))
}

struct Trials {
    asked: u32,
    held: u32,
    refused: u32,
    bounded: u32,
    /// Largest difference of the middle from the truth, as a share.
    off: f64,
    widest: f64,
}

/// 200 trials of one machine. `normal`: noise with two standard deviations at the stated uncertainty,
/// else evenly within it.
fn trials(machine: &Machine, seed: u64, normal: bool, margins: bool) -> Trials {
    let mut numbers = Numbers(seed);
    let mut out = Trials { asked: 0, held: 0, refused: 0, bounded: 0, off: 0.0, widest: 0.0 };
    let zones: Vec<Statement> = machine
        .charts
        .iter()
        .flat_map(|c| charted_zones(machine, c, 1.0, |zone| format!("{} {zone}", c.attachment)))
        .collect();
    for _ in 0..200 {
        let share = numbers.within(0.01, 0.02);
        let mut statements = zones.clone();
        let mass = machine.attachments[0].mass.si();
        statements.push(said("attachment", Known::Mass(FitPart::Attachment(0), Between::about(mass, 0.02))));
        for (along, way) in [(0.0, 0.0), (0.0, 0.5), (numbers.next(), numbers.next())] {
            let noise = |n: &mut Numbers| if normal { n.normal() * share / 2.0 } else { n.within(-share, share) };
            // Where the empty machine would tip forward nobody weighs it.
            let at = pose(machine, along, way);
            if axles(machine, at).1 > 0.0 {
                statements.push(weighed(machine, at, share, || noise(&mut numbers)));
            }
        }
        if margins {
            for (along, way) in [(0.0, 0.2), (0.0, 0.6), (0.0, 1.0), (0.5, 0.5), (0.5, 1.0)] {
                statements.extend(charted(machine, pose(machine, along, way)));
            }
        }
        let fit = Fit::new(machine, true, statements).unwrap();
        for _ in 0..2 {
            let ask = Ask { pose: pose(machine, numbers.next() * 0.8, numbers.next()), ahead: 0.61 };
            let Some(true_load) = truth(machine, ask) else { continue };
            out.asked += 1;
            match fit.tipping(ask) {
                Answer::Known(Some(b)) => {
                    out.held += u32::from(true_load >= b.lower);
                    if let Some(middle) = b.middle() {
                        out.bounded += 1;
                        out.off = out.off.max((middle - true_load).abs() / true_load);
                        out.widest = out.widest.max(b.width() / true_load);
                    }
                }
                Answer::Contradiction(_) => out.refused += 1,
                other => panic!("{other:?}"),
            }
        }
    }
    out
}

#[test]
fn the_true_tipping_load_is_not_below_the_lower_bound() {
    for (i, (name, machine)) in machines().iter().enumerate() {
        for normal in [false, true] {
            for margins in [false, true] {
                let t = trials(machine, 40 + i as u64, normal, margins);
                let answered = t.asked - t.refused;
                eprintln!(
                    "{name}, {} noise, margins {margins}: {} of {answered} bounds hold, {} refused; middle off by {:.1} % at most",
                    if normal { "normal" } else { "even" },
                    t.held,
                    t.refused,
                    100.0 * t.off
                );
                assert!(t.asked >= 380 && t.bounded == answered, "{name}: {} asked, {} bounded", t.asked, t.bounded);
                if normal {
                    // Noise beyond what was stated: the statements contradict each other, and nothing is said.
                    assert!(f64::from(t.held) >= 0.95 * f64::from(answered), "{name}: {} of {answered}", t.held);
                    assert!(f64::from(t.refused) <= 0.06 * f64::from(t.asked), "{name}: {} refused", t.refused);
                } else {
                    assert!(t.held == t.asked && t.refused == 0, "{name}: {} of {}", t.held, t.asked);
                }
                if margins {
                    assert!(t.off <= 0.05, "{name}: {}", t.off);
                }
            }
        }
    }
}

/// Zones alone, no weighing: lower bounds only, and they hold.
#[test]
fn charts_alone_bound_from_below() {
    let mut numbers = Numbers(3);
    for (name, machine) in machines().iter().filter(|(_, m)| !m.charts.is_empty()) {
        let zones: Vec<_> =
            machine.charts.iter().flat_map(|c| charted_zones(machine, c, 1.33, ToOwned::to_owned)).collect();
        assert!(!zones.is_empty(), "{name}");
        let fit = Fit::new(machine, false, zones).unwrap();
        let mut above_zero = 0;
        for _ in 0..20 {
            let pose = FitPose { support: machine.charts[0].support, ..pose(machine, numbers.next(), numbers.next()) };
            let ask = Ask { pose, ahead: 0.61 };
            let Some(true_load) = truth(machine, ask) else { continue };
            let Answer::Known(Some(bounds)) = fit.tipping(ask) else { panic!("{name}") };
            assert!(bounds.upper.is_none() && bounds.lower <= true_load, "{name}: {bounds:?} {true_load}");
            above_zero += u32::from(bounds.lower > 0.0);
        }
        assert!(above_zero > 5, "{name}: {above_zero}");
    }
}

#[test]
fn contradicting_statements_are_named_and_no_others() {
    let machine = r1();
    let at = pose(&machine, 0.0, 0.0);
    let (front, rear) = axles(&machine, at);
    let exact = |kg: f64| Some(Between::about(kg, 0.005));
    let loads = Known::Axles { pose: at, front: exact(front), rear: exact(rear), load: None, pitch: 0.0 };
    let total = |kg: f64| Known::Total { attachment: 0, mass: Between::about(kg, 0.005) };
    let forks = Known::Mass(FitPart::Attachment(0), Between::about(380.0, 0.02));
    let good = vec![said("total", total(front + rear)), said("forks", forks.clone()), said("loads", loads.clone())];
    let fit = Fit::new(&machine, true, good).unwrap();
    let Answer::Known(residuals) = fit.residuals() else { panic!() };
    assert_eq!(residuals.iter().map(|r| r.of).collect::<Vec<_>>(), [RowOf::Total, RowOf::FrontAxle, RowOf::RearAxle]);
    assert!(residuals.iter().all(|r| r.share < 1e-6 && (r.stated - r.fitted).abs() < 0.01), "{residuals:?}");
    let bad =
        vec![said("total", total(front + rear + 800.0)), said("forks", forks.clone()), said("loads", loads.clone())];
    let fit = Fit::new(&machine, true, bad).unwrap();
    assert_eq!(fit.residuals(), Answer::Contradiction(vec![0, 2]));
    let ask = Ask { pose: at, ahead: 0.61 };
    assert_eq!(fit.tipping(ask), Answer::Contradiction(vec![0, 2]));
    assert_eq!(fit.next(ask, Weighing { share: 0.01 }), Answer::Contradiction(vec![0, 2]));
    // A charted capacity that the weighed machine cannot hold: 8 t where 4 t tip it.
    let far = pose(&machine, 0.0, 1.0);
    let load = FitLoad { mass: Between { low: 8000.0, high: 8000.0 }, ahead: 0.61, up: 0.61 };
    let point = Charted { pose: far, load, margin: Margin::None, governs: None };
    let chart = Known::Charted(vec![point]);
    let fit =
        Fit::new(&machine, true, vec![said("forks", forks), said("loads", loads), said("zone C", chart)]).unwrap();
    assert_eq!(fit.tipping(ask), Answer::Contradiction(vec![1, 2]));
}

/// Statements made from a machine never contradict it, and each one more narrows the bounds or leaves them.
#[test]
fn more_statements_never_widen() {
    let mut numbers = Numbers(11);
    for (name, machine) in machines() {
        let ask = Ask { pose: pose(&machine, 0.2, 0.7), ahead: 0.61 };
        let mut fit =
            Fit::new(&machine, true, vec![weighed(&machine, pose(&machine, 0.0, 0.0), 0.02, || 0.0)]).unwrap();
        let Answer::Known(Some(mut last)) = fit.tipping(ask) else { panic!("{name}") };
        for _ in 0..6 {
            let at = pose(&machine, numbers.next(), numbers.next());
            if axles(&machine, at).1 > 0.0 {
                fit = fit.with(weighed(&machine, at, 0.02, || 0.0));
            }
            let Answer::Known(Some(now)) = fit.tipping(ask) else { panic!("{name}") };
            assert!(now.lower >= last.lower - 1e-3 && now.width() <= last.width() + 1e-3, "{name}: {last:?} {now:?}");
            last = now;
        }
    }
}

/// The axle loads named first narrow the bounds of the true machine more than those named last.
#[test]
fn what_to_measure_next_narrows_most() {
    for (name, machine) in machines() {
        let ask = Ask { pose: pose(&machine, 0.1, 0.9), ahead: 0.61 };
        let mass = machine.attachments[0].mass.si();
        let start = vec![
            weighed(&machine, pose(&machine, 0.0, 0.0), 0.01, || 0.0),
            weighed(&machine, pose(&machine, 1.0, 0.3), 0.01, || 0.0),
            said("forks", Known::Mass(FitPart::Attachment(0), Between::about(mass, 0.02))),
        ];
        let fit = Fit::new(&machine, true, start).unwrap();
        let Answer::Known(Some(before)) = fit.tipping(ask) else { panic!("{name}") };
        let Answer::Known(next) = fit.next(ask, Weighing { share: 0.01 }) else { panic!("{name}") };
        assert!(next.windows(2).all(|w| w[0].width <= w[1].width), "{name}");
        let after = |n: &Next| {
            let Measurement::AxleLoads(boom) = n.measurement else { return None };
            let more = fit.with(weighed(&machine, FitPose { boom, ..ask.pose }, 0.01, || 0.0));
            let Answer::Known(Some(bounds)) = more.tipping(ask) else { panic!("{name}") };
            Some((bounds.width(), n.width))
        };
        let (best, promised) = next.iter().find_map(after).unwrap();
        let (last, _) = next.iter().rev().find_map(after).unwrap();
        eprintln!("{name}: {:.0} kg wide; best {promised:.0} kg, then {best:.0} kg; last {last:.0} kg", before.width());
        assert!(best <= last + 1.0 && best < 0.8 * before.width(), "{name}: {best} {last} of {}", before.width());
    }
}

#[test]
fn heights_are_not_identifiable_until_weighed_tilted_or_stated() {
    for (name, machine) in machines() {
        let level = weighed(&machine, pose(&machine, 0.0, 0.0), 0.005, || 0.0);
        let more = weighed(&machine, pose(&machine, 0.0, 0.5), 0.005, || 0.0);
        let narrow = |of, axis, at: f64, by: f64| {
            said("range", Known::Centre(of, axis, Between { low: at - by, high: at + by }))
        };
        let mass = |kind: fn(machine::BodyKind) -> bool| -> (f64, DVec3) {
            let of = machine.bodies.iter().filter(|b| kind(b.kind));
            let sum = of.fold((0.0, DVec3::ZERO), |(m, s), b| (m + b.mass.si(), s + b.centre * b.mass.si()));
            (sum.0, sum.1 / sum.0)
        };
        let (axle, axle_at) = mass(|k| k == machine::BodyKind::RearAxle);
        let (_, chassis) = mass(|k| k != machine::BodyKind::RearAxle);
        let mut statements = vec![
            level,
            more,
            said("axle", Known::Mass(FitPart::RearAxle, Between::about(axle, 0.02))),
            narrow(FitPart::RearAxle, FitAxis::Up, axle_at.z, 0.02),
            said("forks", Known::Mass(FitPart::Attachment(0), Between::about(machine.attachments[0].mass.si(), 0.02))),
        ];
        let unknown = |s: &[Statement]| Fit::new(&machine, true, s.to_vec()).unwrap().side_unknown().len();
        assert_eq!(unknown(&statements), 2, "{name}");
        statements.push(narrow(FitPart::Chassis, FitAxis::Left, chassis.y, 0.02));
        assert_eq!(unknown(&statements), 1, "{name}");
        statements.push(narrow(FitPart::Chassis, FitAxis::Up, chassis.z, 0.1));
        assert_eq!(unknown(&statements), 0, "{name}");
        for rear in [RearAxleState::Free, RearAxleState::Locked] {
            let at = pose(&machine, 0.5, 0.2);
            let load = FitLoad { mass: Between { low: 500.0, high: 500.0 }, ahead: 0.61, up: 0.61 };
            let true_tilt = side_tilt(&machine, at, load, rear);
            let fit = Fit::new(&machine, true, statements.clone()).unwrap();
            let side = fit.side_tilt(SideAsk { pose: at, load, rear });
            let Answer::Known((low, high)) = side else { panic!("{name} {side:?}") };
            assert!(low <= true_tilt && true_tilt <= high && high > low, "{name}: {low} {true_tilt} {high}");
            assert!(low > 0.35 * true_tilt && high < 1.8 * true_tilt, "{name}: {low} {true_tilt} {high}");
            // A higher chassis lowers both ends: the worst end of the range governs.
            let mut higher = statements.clone();
            higher.push(narrow(FitPart::Chassis, FitAxis::Up, chassis.z + 0.08, 0.02));
            let Answer::Known((worse, _)) =
                Fit::new(&machine, true, higher).unwrap().side_tilt(SideAsk { pose: at, load, rear })
            else {
                panic!("{name}")
            };
            assert!(worse >= low - 1e-9 && worse - low < 0.3 * low, "{name}: {low} {worse}");
        }
    }
}

fn side_tilt(machine: &Machine, at: FitPose, load: FitLoad, rear: RearAxleState) -> f64 {
    let attachment = &machine.attachments[at.attachment];
    let centre = kinematics::tool_point(&machine.boom, attachment, at.boom) + DVec3::new(load.ahead, 0.0, load.up);
    let masses = Masses::of(machine, attachment, at.boom).with(LoadOnBoom { mass: load.mass.high, at: centre });
    let loading = Loading { masses, gravity: LEVEL, wind: stability::wind::WindLoad::NONE };
    tipping_lines(machine, Support { state: at.support, rear })
        .iter()
        .filter(|l| matches!(l.over, TipsOver::Left | TipsOver::Right))
        .map(|l| tilt_reserve(&loading, l, &mut evidence::Silent))
        .fold(f64::INFINITY, f64::min)
}

/// A weighing with the front axle raised narrows what a level one leaves of the height.
#[test]
fn a_tilted_weighing_tells_the_height() {
    let machine = r1();
    let at = pose(&machine, 0.0, 0.0);
    let masses = Masses::of(&machine, &machine.attachments[0], at.boom);
    let level = weighed(&machine, at, 0.002, || 0.0);
    let pitch = 15_f64.to_radians();
    // Independent of the fit: the centre turned about the rear wheel's centre, in world axes.
    let (s, c) = pitch.sin_cos();
    let from_rear = masses.centre() - DVec3::new(-3.0, 0.0, 0.6);
    let ahead = from_rear.x * c - from_rear.z * s;
    let front = masses.total() * ahead / (3.0 * c);
    let about = |kg: f64| Some(Between::about(kg, 0.002));
    let tilted = Known::Axles { pose: at, front: about(front), rear: about(masses.total() - front), load: None, pitch };
    let still = Known::Mass(FitPart::Attachment(0), Between::about(380.0, 0.02));
    let fit = |statements| Fit::new(&machine, true, statements).unwrap();
    let ask = SideAsk {
        pose: at,
        load: FitLoad { mass: Between { low: 0.0, high: 0.0 }, ahead: 0.61, up: 0.0 },
        rear: RearAxleState::Locked,
    };
    let middle = said("middle", Known::Centre(FitPart::Chassis, FitAxis::Left, Between { low: 0.0, high: 0.0 }));
    let without = fit(vec![level.clone(), middle.clone(), said("forks", still.clone())]);
    let with = fit(vec![level, middle, said("forks", still), said("tilted", tilted)]);
    assert_eq!((without.side_unknown().len(), with.side_unknown().len()), (1, 0));
    let (Answer::Known((a, b)), Answer::Known((c, d))) = (without.side_tilt(ask), with.side_tilt(ask)) else {
        panic!()
    };
    let true_tilt = side_tilt(&machine, at, ask.load, ask.rear);
    assert!(a <= c && c <= true_tilt && true_tilt <= d && d <= b, "{a} {c} {true_tilt} {d} {b}");
    assert!(d - c < 0.2 * true_tilt && d - c < 0.4 * (b - a), "{a} {c} {true_tilt} {d} {b}");
}

#[test]
fn impossible_input_is_refused_with_all_that_is_wrong() {
    let machine = r1();
    let at = pose(&machine, 0.0, 0.0);
    let between = |low, high| Between { low, high };
    assert_eq!(Fit::new(&machine, true, vec![]).unwrap_err(), [FitFault::Nothing]);
    let beyond = FitPose { boom: BoomPosition::level(0.0, 30.0), ..at };
    let statements = vec![
        said("a", Known::Mass(FitPart::Chassis, between(-5.0, -1.0))),
        said("b", Known::Mass(FitPart::Section(9), between(1.0, 2.0))),
        said("c", Known::Total { attachment: 0, mass: between(9.0, 8.0) }),
        said("d", Known::Centre(FitPart::Chassis, FitAxis::Ahead, between(3.0, 4.0))),
        said(
            "e",
            Known::Axles { pose: beyond, front: Some(between(1.0, f64::NAN)), rear: None, load: None, pitch: 0.0 },
        ),
        said(
            "f",
            Known::TippingTest {
                pose: FitPose { support: SupportState::Outriggers, ..at },
                load: FitLoad { mass: between(900.0, 900.0), ahead: -9.0, up: 0.0 },
            },
        ),
    ];
    let faults = Fit::new(&machine, true, statements).unwrap_err();
    assert!(
        matches!(
            faults[..],
            [
                FitFault::ImpossibleMass(0),
                FitFault::NoSuchPart(1),
                FitFault::BadRange(2),
                FitFault::ImpossibleCentre(3, ..),
                FitFault::BoomRange(4),
                FitFault::BadRange(4),
                FitFault::NoSupport(5),
                FitFault::LoadHolds(5)
            ]
        ),
        "{faults:?}"
    );
}
