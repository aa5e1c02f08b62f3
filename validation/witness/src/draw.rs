//! Seeded machines and poses: a described machine with its masses, centres, tracks and pin moved a
//! little, a boom position, a load, a stance and a direction.

use crate::Question;
use geometry::{DVec2, DVec3};
use machine::{BodyKind, BoomPosition, Levelling, Machine, Stabilizers, SupportState, kinematics};
use quantity::{Si, degrees};
use stability::{LoadOnBoom, RearAxleState, Stance, Support};

/// What a case is about.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Kind {
    /// On tyres, rear axle free, even ground.
    Free,
    /// On tyres, rear axle locked straight.
    Locked,
    /// On tyres, rear axle locked at 5° on ground that is twisted so.
    Twisted,
    /// On tyres, rear axle free and following ground up to 6° out of the front axle's plane.
    Uneven,
    /// Frame made upright on a cross slope of up to 8°.
    Levelled,
    /// On stabilizers or outriggers.
    Pads,
    /// On tyres, load up to 0.6 m aside.
    Aside,
}

/// One case.
#[derive(Debug, Clone)]
pub struct Drawn {
    /// The machine as varied.
    pub machine: Machine,
    /// Place of the attachment in its list.
    pub attachment: usize,
    /// Where the boom is.
    pub boom: BoomPosition,
    /// The load; `None`: unladen.
    pub load: Option<LoadOnBoom>,
    /// What it stands on.
    pub stance: Stance,
    /// Direction of descent, rad.
    pub azimuth: f64,
}

impl Drawn {
    /// As the statics is asked.
    pub fn question(&self) -> Question<'_> {
        Question {
            machine: &self.machine,
            attachment: &self.machine.attachments[self.attachment],
            boom: self.boom,
            load: self.load,
            stance: self.stance,
        }
    }
}

/// Numbers that are always the same for a seed (SplitMix64).
#[derive(Debug, Clone)]
pub struct Dice(u64);

impl Dice {
    /// From a seed.
    pub fn new(seed: u64) -> Self {
        Self(seed)
    }
    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        z ^ (z >> 31)
    }
    /// Even between two values.
    pub fn between(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * (self.next() >> 11) as f64 / (1_u64 << 53) as f64
    }
    /// One of so many.
    pub fn one_of(&mut self, count: usize) -> usize {
        self.between(0.0, count as f64) as usize % count
    }
    /// Heads or tails.
    pub fn toss(&mut self) -> bool {
        self.one_of(2) == 1
    }
}

fn varied(machine: &Machine, dice: &mut Dice) -> Machine {
    let mut m = machine.clone();
    m.rear.axle.x *= dice.between(0.95, 1.1);
    for body in &mut m.bodies {
        body.mass *= dice.between(0.85, 1.15);
        let mut by = DVec3::new(dice.between(-0.1, 0.1), dice.between(-0.05, 0.05), dice.between(-0.1, 0.1));
        if body.kind == BodyKind::RearAxle {
            // An axle is as heavy to the left as to the right, and stays where it is.
            by = DVec3::new(m.rear.axle.x - body.centre.x, 0.0, by.z / 2.0);
        }
        body.centre += by;
    }
    for section in &mut m.boom.sections {
        section.mass *= dice.between(0.9, 1.1);
    }
    m.front.half_track *= dice.between(0.9, 1.1);
    m.rear.axle.half_track *= dice.between(0.9, 1.1);
    m.rear.pin_height *= dice.between(0.85, 1.15);
    m
}

/// A case of a kind from a list of machines.
pub fn draw(machines: &[Machine], kind: Kind, dice: &mut Dice) -> Drawn {
    let base = &machines[dice.one_of(machines.len())];
    let mut machine = varied(base, dice);
    let rear = if dice.toss() { RearAxleState::Free } else { RearAxleState::Locked };
    let tyres = |rear| Support { state: SupportState::Tyres, rear };
    let sign = if dice.toss() { 1.0 } else { -1.0 };
    let straight = |support| Stance { support, front_roll: 0.0, rear_roll: 0.0 };
    let stance = match kind {
        Kind::Free => straight(tyres(RearAxleState::Free)),
        Kind::Locked => straight(tyres(RearAxleState::Locked)),
        Kind::Aside => straight(tyres(rear)),
        Kind::Twisted => Stance { rear_roll: sign * 5_f64.to_radians(), ..straight(tyres(RearAxleState::Locked)) },
        Kind::Uneven => {
            let roll = dice.between(1.0, 6.0).to_radians();
            Stance { rear_roll: sign * roll, ..straight(tyres(RearAxleState::Free)) }
        }
        Kind::Levelled => {
            if machine.levelling.is_none() {
                let pin_height = machine.rear.pin_height * dice.between(0.8, 1.1);
                machine.levelling = Some(Levelling { pin_height, range: degrees(12.0), indicator_error: degrees(0.5) });
            }
            Stance::levelled(tyres(rear), sign * dice.between(2.0, 8.0).to_radians())
        }
        Kind::Pads if machine.has(SupportState::Outriggers) => {
            straight(Support { state: SupportState::Outriggers, rear: RearAxleState::Locked })
        }
        Kind::Pads => {
            let pad = DVec2::new(dice.between(0.2, 0.9), machine.front.half_track * dice.between(1.1, 1.5));
            machine.stabilizers = Some(Stabilizers { pad, pad_area: 0.16, rear_axle_free: true });
            straight(Support { state: SupportState::Stabilizers, rear })
        }
    };
    let b = &machine.boom;
    let boom =
        BoomPosition::level(dice.between(b.angle_min.si(), b.angle_max.si()), dice.between(0.0, b.extension_max.si()));
    let attachment = dice.one_of(machine.attachments.len());
    let load = (dice.one_of(4) > 0).then(|| {
        let aside = if kind == Kind::Aside { dice.between(-0.6, 0.6) } else { 0.0 };
        let tool = kinematics::tool_point(b, &machine.attachments[attachment], boom);
        let at = tool + DVec3::new(dice.between(0.0, 0.7), aside, dice.between(0.0, 0.8));
        LoadOnBoom { mass: machine.greatest_capacity.si() * dice.between(0.05, 0.9), at }
    });
    let azimuth = dice.between(0.0, core::f64::consts::TAU);
    Drawn { machine, attachment, boom, load, stance, azimuth }
}
