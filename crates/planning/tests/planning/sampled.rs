//! One sample of everything that is uncertain in a lift, and what statics say of it: by the public
//! functions of `stability`, `machine` and `site` alone, with nothing of the plan's own search.

use evidence::{Ranged, Silent};
use geometry::{DVec2, DVec3, Pose};
use machine::{Attachment, BoomPosition, Machine, SupportState, kinematics};
use planning::{Job, Lift};
use quantity::Si;
use site::footing::{Contacts, Footing, Heights, heights, on_heights};
use stability::wind::WindLoad;
use stability::{
    LineOnSprings, LoadFaces, LoadOnBoom, Loading, Masses, RearAxleState, Springs, Stance, Support, TipsOver,
    gravity_for_slopes, load_factor, load_factor_on_springs, tilt_reserve, tipping_lines, wind_parts,
};

/// A small generator with a seed (splitmix64): the same samples every time.
pub(crate) struct Seeded(pub(crate) u64);

impl Seeded {
    pub(crate) fn share(&mut self) -> f64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        ((z ^ (z >> 31)) >> 11) as f64 / (1_u64 << 53) as f64
    }
    pub(crate) fn within(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.share()
    }
    /// As [`Seeded::within`], but every other time at one of the ends, where the worst is sought.
    pub(crate) fn or_end(&mut self, low: f64, high: f64) -> f64 {
        match self.index(4) {
            0 => low,
            1 => high,
            _ => self.within(low, high),
        }
    }
    pub(crate) fn range(&mut self, r: Ranged) -> f64 {
        self.or_end(r.low, r.high)
    }
    pub(crate) fn index(&mut self, count: usize) -> usize {
        ((self.share() * count as f64) as usize).min(count - 1)
    }
}

/// How samples are drawn beyond what a plan counts today.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Beyond {
    /// Every contact's height off by up to the accuracy, all at once; a plan takes them as independent,
    /// so that the root of their squares' sum is the accuracy.
    pub(crate) every_height: bool,
    /// The boom reaches for the landing from the frame as it really stands, pitched by the ground's error.
    pub(crate) pitched_reach: bool,
}

impl Beyond {
    /// What a plan counts.
    pub(crate) const NONE: Self = Self { every_height: false, pitched_reach: false };
}

/// What statics say of a sample. Tilt over the tilt required, of the worst line.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Sample {
    pub(crate) tilt_rigid: f64,
    pub(crate) tilt: f64,
    /// Infinite without load, or where no load tips it.
    pub(crate) factor_rigid: f64,
    pub(crate) factor: f64,
    /// The line that is worst on springs, and the leg of the movement.
    pub(crate) over: TipsOver,
    #[expect(dead_code, reason = "told where a sample falls short")]
    pub(crate) leg: usize,
    #[expect(dead_code, reason = "told where a sample falls short")]
    pub(crate) boom: BoomPosition,
}

/// How the machine stands: its axles, against the frame, and gravity in the frame. A levelled frame is upright
/// within the indicator's error, as far as its range goes; a locked axle keeps the roll of the ground under it.
fn stands(job: &Job, lift: &Lift, footing: &Footing, random: &mut Seeded) -> (Stance, DVec3) {
    let unit = &job.machines[lift.machine];
    let locked = lift.axle_locked && (unit.lock_tried.is_some() || random.index(2) == 0);
    let rear = if locked { RearAxleState::Locked } else { RearAxleState::Free };
    let [front, back] = [footing.across, footing.rear_across].map(|s| s.nominal.atan());
    let levelling = unit.machine.levelling.filter(|_| lift.levelled && lift.support == SupportState::Tyres);
    let roll = levelling.map_or(front, |by| {
        let (range, error) = (by.range.si(), by.indicator_error.si());
        let stays = random.or_end(-error, error);
        // No further than to the stop.
        front - (front - stays).clamp(-range, range)
    });
    let stance =
        Stance { support: Support { state: lift.support, rear }, front_roll: front - roll, rear_roll: back - roll };
    // The front axle is rigid to a frame that is not levelled.
    (stance, gravity_for_slopes(footing.along.nominal, roll.tan()))
}

/// The frame turned upright about the pin of its front axle, as far as that goes.
fn upright(machine: &Machine, lift: &Lift, footing: &Footing) -> Pose {
    let lies = footing.site_from_machine;
    let Some(by) = machine.levelling.filter(|_| lift.levelled && lift.support == SupportState::Tyres) else {
        return lies;
    };
    let roll = footing.across.nominal.atan();
    let stays = roll - roll.clamp(-by.range.si(), by.range.si());
    let ahead = lies.turn(DVec3::X);
    let level_left = DVec3::Z.cross(ahead).normalize();
    let stands = Pose::from_axes(ahead, level_left - DVec3::Z * stays.tan(), DVec3::ZERO);
    let pin = DVec3::Z * by.pin_height;
    Pose { translation: lies * pin - stands.turn(pin), ..stands }
}

/// Errors of the four heights, m.
fn survey_errors(random: &mut Seeded, accuracy: f64, beyond: Beyond) -> [f64; 4] {
    if beyond.every_height {
        return [0; 4].map(|_| random.or_end(-accuracy, accuracy));
    }
    let h = std::f64::consts::FRAC_1_SQRT_2;
    // Straight to a side, straight ahead, or anyhow.
    let way = match random.index(3) {
        0 => [h, -h, 0.0, 0.0],
        1 => [0.5, 0.5, -0.5, -0.5],
        _ => [0; 4].map(|_| random.within(-1.0, 1.0)),
    };
    let size = way.iter().map(|x| x * x).sum::<f64>().sqrt();
    let by = random.or_end(-accuracy, accuracy) / size.max(1.0);
    way.map(|x| x * by)
}

/// Machine with every body whose mass has a range somewhere in it.
fn as_heavy(machine: &Machine, random: &mut Seeded) -> Option<Machine> {
    if machine.bodies.iter().all(|b| b.least.is_none()) {
        return None;
    }
    let mut m = machine.clone();
    for body in &mut m.bodies {
        if let Some(least) = body.least.take() {
            body.mass = quantity::kilograms(random.or_end(least.si(), body.mass.si()));
        }
    }
    Some(m)
}

/// Boom on the way of a lift, and whether it carries the load. Legs: raised, run out, lowered to the landing,
/// pulled out, run in, lowered to carry.
fn on_the_way(
    random: &mut Seeded,
    (machine, attachment): (&Machine, &Attachment),
    to: impl Fn(f64) -> DVec3,
    (clear, depth, leg): (f64, f64, usize),
    fork_tilt: f64,
) -> Option<(BoomPosition, bool)> {
    let flat = |p: DVec3| DVec2::new(p.x, p.z);
    let reach = |p: DVec2| kinematics::position_for(&machine.boom, attachment, p, fork_tilt).ok();
    let (above, down) = (flat(to(clear)), flat(to(0.0)));
    let high = reach(above)?;
    let carry = BoomPosition { angle: machine.limits.carry.angle.si(), extension: 0.0, fork_tilt };
    let raised = BoomPosition { extension: 0.0, ..high };
    let even = |a: BoomPosition, b: BoomPosition, t: f64| BoomPosition {
        angle: a.angle + (b.angle - a.angle) * t,
        extension: a.extension + (b.extension - a.extension) * t,
        fork_tilt,
    };
    let t = random.or_end(0.0, 1.0);
    let back = down - DVec2::new(fork_tilt.cos(), fork_tilt.sin()) * depth;
    let boom = match leg {
        0 => even(carry, raised, t),
        1 => even(raised, high, t),
        2 => reach(above.lerp(down, t))?,
        3 => reach(down.lerp(back, t))?,
        4 => {
            let free = reach(back)?;
            even(free, BoomPosition { extension: 0.0, ..free }, t)
        }
        _ => {
            let free = BoomPosition { extension: 0.0, ..reach(back)? };
            even(free, carry, t)
        }
    };
    // Set down and taken away in between: without load anywhere.
    Some((boom, leg < LEGS / 2 && random.index(6) > 0))
}

const LEGS: usize = 6;

/// One sample; `None` where the boom does not get there with this error of the stand.
pub(crate) fn sample(job: &Job, lift: &Lift, random: &mut Seeded, beyond: Beyond) -> Option<Sample> {
    let described = &job.machines[lift.machine].machine;
    let weighed = as_heavy(described, random);
    let machine = weighed.as_ref().unwrap_or(described);
    let attachment = machine.attachment(&lift.attachment)?;
    let (load, landing) = (&job.loads[lift.load], &job.landings[lift.landing]);

    // The ground, and the machine on it.
    let [front, rear] = machine.contacts(lift.support);
    let contacts = Contacts { front_x: front.x, front_half: front.y, rear_x: rear.x, rear_half: rear.y };
    let (sin, cos) = lift.stand.heading.sin_cos();
    let (forward, left) = (DVec2::new(cos, sin), DVec2::new(-sin, cos));
    let error = job.policy.stand_error;
    let [ahead_by, left_by] = [0; 2].map(|_| random.or_end(-error, error));
    let leg = random.index(LEGS);
    let surveyed = lift.stand.at + forward * ahead_by + left * left_by;
    let Heights { at, accuracy, surface } = heights(&job.ground, surveyed, lift.stand.heading, &contacts).ok()?;
    let errors = survey_errors(random, accuracy, beyond);
    let posed = |by: [f64; 4], stand: DVec2| {
        let at = std::array::from_fn(|i| at[i] + by[i]);
        on_heights(stand, lift.stand.heading, &contacts, Heights { at, accuracy: 0.0, surface })
    };
    let (stance, gravity) = stands(job, lift, &posed(errors, surveyed), random);

    // The boom.
    let from = |stand: DVec2| if beyond.pitched_reach { posed(errors, stand) } else { posed([0.0; 4], stand) };
    let to = |footing: &Footing, up: f64| {
        let site = match &load.hanging {
            Some(h) => landing.at.extend(landing.level + load.height + h.drop + up),
            None => (landing.at - forward * (0.5 * load.depth)).extend(landing.level + up),
        };
        upright(machine, lift, footing).inverse() * site
    };
    let clear = lift.clear.si() + landing.upstand;
    let as_stated = from(lift.stand.at);
    let fork_tilt = -as_stated.along.nominal.atan();
    let stand = lift.stand.at + forward * ahead_by;
    let reached = from(stand);
    let under = if load.hanging.is_some() { 0.0 } else { load.depth };
    let target = |up: f64| to(&reached, up);
    let (boom, loaded) = on_the_way(random, (machine, attachment), target, (clear, under, leg), fork_tilt)?;

    // The load, pulled aside by shift and swing, pushed ahead by flex.
    let tool = kinematics::tool_point(&machine.boom, attachment, boom);
    let flex = random.or_end(0.0, machine.boom.flex);
    let shift = random.or_end(lift.side_shift.min(0.0), lift.side_shift.max(0.0));
    let at = if load.hanging.is_some() {
        let out = random.or_end(0.0, load.swing_slope() * tool.z.max(0.0));
        let (s, c) = random.within(0.0, std::f64::consts::TAU).sin_cos();
        tool + DVec3::new(flex + out * c, shift + out * s, 0.0)
    } else {
        let ahead = flex + random.range(load.centre_ahead);
        let (up, aside) = (random.range(load.centre_up), random.range(load.centre_left) + shift);
        let (s, c) = fork_tilt.sin_cos();
        tool + DVec3::new(c, 0.0, s) * ahead + DVec3::new(-s, 0.0, c) * up + DVec3::Y * aside
    };
    let load_on = LoadOnBoom { mass: random.range(load.mass_kg), at };
    let mut bare = Masses::standing(machine, attachment, boom, stance);
    bare.sprung_moment.y += attachment.mass.si() * random.or_end(0.0, 1.0) * lift.side_shift;

    // The wind, from the worst side for each line.
    let gust = lift.wind.map_or(0.0, |w| random.or_end(0.0, w.gust.si()));
    let (depth, width, height) = (load.depth, load.width, load.height);
    let faces = LoadFaces { depth, width, height, factor: load.wind_factor, hangs: load.hanging.is_some() };
    let wind = WindLoad::of(gust, &wind_parts(machine, attachment, boom, loaded.then_some(faces)), &mut Silent);

    let lines = tipping_lines(machine, stance);
    let blows = random.within(0.0, std::f64::consts::TAU);
    assert!(lines.iter().all(|l| wind.overturning_towards(l, blows) <= wind.overturning(l) + 1e-6), "gust from a side");
    let springs = Springs::of(machine, lift.support);
    let soft = lines.map(|l| LineOnSprings::of(machine, stance, &l, springs));
    let at_rest = Loading { masses: bare, gravity, wind };
    let loading = if loaded { Loading { masses: bare.with(load_on), ..at_rest } } else { at_rest };
    let required = |over| match over {
        TipsOver::Front | TipsOver::Rear => job.policy.tilt_fore_aft.atan(),
        TipsOver::Left | TipsOver::Right => job.policy.tilt_sideways.atan(),
    };
    let mut found = Sample {
        tilt_rigid: f64::INFINITY,
        tilt: f64::INFINITY,
        factor_rigid: f64::INFINITY,
        factor: f64::INFINITY,
        over: TipsOver::Front,
        leg,
        boom,
    };
    for (line, on) in lines.iter().zip(&soft) {
        found.tilt_rigid = found.tilt_rigid.min(tilt_reserve(&loading, line, &mut Silent) / required(line.over));
        let tilt = on.tilt(&loading) / required(line.over);
        if tilt < found.tilt {
            (found.tilt, found.over) = (tilt, line.over);
        }
    }
    if loaded && let Some((rigid, _)) = load_factor(&at_rest, load_on, &lines, &mut Silent) {
        let overturning = lines.map(|l| wind.overturning(&l));
        let soft = load_factor_on_springs(&soft, &overturning, &at_rest, load_on, rigid);
        (found.factor_rigid, found.factor) = (rigid, soft.map_or(rigid, |f| f.0));
    }
    Some(found)
}
