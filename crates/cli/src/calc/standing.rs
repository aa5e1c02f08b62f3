//! What several calculations ask first: a machine with its attachment, boom position and load, standing
//! somewhere.

use super::input::Input;
use super::stance_input::{Ground, Placed, StanceKeys};
use crate::args::Said;
use crate::failure::Failure;
use crate::text;
use geometry::{DVec2, DVec3};
use jobfile::{Bound, Reader};
use machine::{Attachment, AttachmentKind, BoomPosition, Machine, SupportState, kinematics};
use quantity::{Dimension, Quantity, Si};
use stability::{
    LineOnSprings, LoadOnBoom, Loading, Masses, RearAxleState, Springs, Stance, TipsOver, tipping_lines, wind::WindLoad,
};

const REAR: [(&str, RearAxleState); 2] = [("free", RearAxleState::Free), ("locked", RearAxleState::Locked)];

/// Nothing heavier hangs on such a boom, kg: the same that machine and job files take at most.
pub(super) const HEAVIEST: f64 = 200_000.0;
/// No load's centre lies further from its fork face or hook, m.
const FARTHEST: f64 = 60.0;

/// Keys as read; none where missing or wrong.
struct Keys {
    file: Option<String>,
    attachment: Option<String>,
    angle: Option<f64>,
    extension: Option<f64>,
    tilt: f64,
    mass: Option<f64>,
    offset: [Option<f64>; 3],
    state: Option<SupportState>,
    rear: Option<RearAxleState>,
    stance: StanceKeys,
}

/// What a calculation leaves open of the keys.
#[derive(Debug, Clone, Copy, Default)]
pub(super) struct Asks {
    /// Set where it is for one support only.
    pub(super) state: Option<SupportState>,
    /// What is asked of the ground.
    pub(super) ground: Ground,
}

/// A machine as it stands.
pub(super) struct Standing {
    pub(super) machine: Machine,
    pub(super) attachment: Attachment,
    pub(super) boom: BoomPosition,
    pub(super) stance: Stance,
    pub(super) load: LoadOnBoom,
    /// With the load, without wind.
    pub(super) loading: Loading,
    /// Fork heel or hook, m.
    pub(super) tool: DVec3,
    /// Ground over its common plane under front left, front right, rear left, rear right, m.
    pub(super) heights: [f64; 4],
}

/// Reads the keys.
fn keys(root: &Reader<'_>, asks: Asks) -> Keys {
    Keys {
        file: root.text("machine", "machine = \"machine.toml\""),
        attachment: root.text("attachment", "attachment = \"forks\""),
        angle: root.decision("boom_angle", Dimension::Angle, Bound::Any),
        extension: root.decision("extension", Dimension::Length, Bound::NotNegative),
        tilt: root.decision_or_none("fork_tilt", Dimension::Angle, Bound::Within(-1.0, 1.0)).unwrap_or(0.0),
        mass: root.decision("load", Dimension::Mass, Bound::ZeroTo(HEAVIEST)),
        offset: [
            root.decision("load_ahead", Dimension::Length, Bound::ZeroTo(FARTHEST)),
            root.decision("load_left", Dimension::Length, Bound::Within(-FARTHEST, FARTHEST)),
            root.decision("load_up", Dimension::Length, Bound::ZeroTo(FARTHEST)),
        ],
        state: asks.state.or_else(|| root.choice("support", &SupportState::WORDS)),
        rear: root.choice("rear_axle", &REAR),
        stance: StanceKeys::read(root, asks.ground),
    }
}

/// The machine as it stands, and what else the calculation asks; every fault at once.
pub(super) fn given<T>(
    input: &Input,
    said: Said,
    asks: Asks,
    asked: impl FnOnce(&Reader<'_>) -> Option<T>,
) -> Result<(Standing, T), Failure> {
    let root = input.document.root();
    let keys = keys(&root, asks);
    let asked = asked(&root);
    root.done();
    if let Some(failure) = input.faults(said) {
        return Err(failure);
    }
    let (Some(asked), Some(standing)) = (asked, keys.stand(input, &root, said)?) else {
        return Err(failure(input, said));
    };
    input.faults(said).map_or(Ok((standing, asked)), Err)
}

/// All faults of the input, which has one.
pub(super) fn failure(input: &Input, said: Said) -> Failure {
    input.faults(said).unwrap_or_else(|| Failure::new(input.document.faults(), said))
}

/// Stiffness of front and rear contacts: both or none; `None` with a fault noted where one is missing or wrong.
#[expect(clippy::option_option, reason = "faulty, left out, or stated")]
pub(super) fn stiffnesses(root: &Reader<'_>) -> Option<Option<Springs>> {
    let [front, rear] = ["front_stiffness", "rear_stiffness"]
        .map(|key| root.decision_or_none(key, Dimension::Stiffness, Bound::Positive));
    for (key, here, other, there) in
        [("front_stiffness", front, "rear_stiffness", rear), ("rear_stiffness", rear, "front_stiffness", front)]
    {
        if here.is_some() && there.is_none() && !root.has(other) {
            root.fault(key, text::BOTH_STIFFNESSES.with("other", other), None);
        }
    }
    if root.has("front_stiffness") || root.has("rear_stiffness") {
        return front.zip(rear).map(|(front, rear)| Some(Springs { front, rear }));
    }
    Some(None)
}

/// Name of a side.
pub(super) fn side(over: TipsOver) -> evidence::TextId {
    match over {
        TipsOver::Front => planning::text::SIDE_FRONT,
        TipsOver::Rear => planning::text::SIDE_REAR,
        TipsOver::Left => planning::text::SIDE_LEFT,
        TipsOver::Right => planning::text::SIDE_RIGHT,
    }
}

impl Standing {
    /// What its tyres and pads give.
    pub(super) fn springs(&self) -> Springs {
        Springs::of(&self.machine, self.stance.support.state)
    }

    /// Its tipping lines on contacts that give.
    pub(super) fn soft_lines(&self, springs: Springs) -> [LineOnSprings; 6] {
        tipping_lines(&self.machine, self.stance)
            .map(|line| LineOnSprings::of(&self.machine, self.stance, &line, springs))
    }

    /// Without the load, as it stands.
    pub(super) fn bare(&self) -> Masses {
        Masses::standing(&self.machine, &self.attachment, self.boom, self.stance)
    }

    /// Boom angle and extension at most as the maker has them for driving.
    pub(super) fn carried(&self) -> bool {
        let carry = &self.machine.limits.carry;
        let slack = 1e-9;
        self.boom.angle <= carry.angle.si() + slack && self.boom.extension <= carry.extension.si() + slack
    }
}

impl Keys {
    /// The machine that they name, as it stands. `None` where a key is missing: its fault is noted already.
    fn stand(self, input: &Input, root: &Reader<'_>, said: Said) -> Result<Option<Standing>, Failure> {
        let [ahead, left, up] = self.offset;
        let (Some(file), Some(attachment), Some(angle), Some(extension), Some(mass)) =
            (self.file, self.attachment, self.angle, self.extension, self.mass)
        else {
            return Ok(None);
        };
        let (Some(ahead), Some(left), Some(up), Some(state), Some(rear)) = (ahead, left, up, self.state, self.rear)
        else {
            return Ok(None);
        };
        let machine = input.machine(&file, said)?;
        in_range(root, &machine, angle, extension, state);
        let placed = self.stance.place(root, &machine, state, rear);
        let Some(found) = machine.attachment(&attachment).cloned() else {
            let known: Vec<_> = machine.attachments.iter().map(|a| a.id.as_str()).collect();
            let message = text::NO_ATTACHMENT.with("attachment", &attachment).with("known", known.join(", "));
            root.fault("attachment", message, None);
            return Err(failure(input, said));
        };
        if matches!(found.kind, AttachmentKind::Platform(_)) {
            root.fault("attachment", text::NO_PEOPLE.message(), Some(text::HINT_NO_PEOPLE.message()));
            return Err(failure(input, said));
        }
        let Some(Placed { stance, gravity, heights }) = placed else { return Err(failure(input, said)) };
        let boom = BoomPosition { angle, extension, fork_tilt: self.tilt };
        let tool = kinematics::tool_point(&machine.boom, &found, boom);
        // A hung load acts at its hook, wherever its centre is below.
        let offset = if found.hangs() { DVec2::ZERO } else { DVec2::new(ahead, up) };
        let at = kinematics::on_carriage(&machine.boom, boom, found.tool_point() + offset) + DVec3::Y * left;
        let load = LoadOnBoom { mass, at };
        let masses = Masses::standing(&machine, &found, boom, stance).with(load);
        let loading = Loading { masses, gravity, wind: WindLoad::NONE };
        Ok(Some(Standing { machine, attachment: found, boom, stance, load, loading, tool, heights }))
    }
}

/// The boom gets there, and the machine has what it is said to stand on.
fn in_range(root: &Reader<'_>, machine: &Machine, angle: f64, extension: f64, state: SupportState) {
    let b = &machine.boom;
    let slack = 1e-9;
    if angle < b.angle_min.si() - slack || angle > b.angle_max.si() + slack {
        let message = text::BOOM_RANGE
            .with("what", "boom_angle")
            .with("value", Quantity::new(angle, Dimension::Angle))
            .with("low", b.angle_min)
            .with("high", b.angle_max);
        root.fault("boom_angle", message, None);
    }
    if extension > b.extension_max.si() + slack {
        let message = text::BOOM_RANGE
            .with("what", "extension")
            .with("value", Quantity::new(extension, Dimension::Length))
            .with("low", Quantity::new(0.0, Dimension::Length))
            .with("high", b.extension_max);
        root.fault("extension", message, None);
    }
    if !machine.has(state) {
        root.fault("support", text::NO_SUCH_SUPPORT.with("support", planning::support_name(state)), None);
    }
}

/// One answer for each way it goes over, of those in the order of [`stability::tipping_lines`]: for either
/// side the worse of the two ways in which wheels may hold the machine along its length.
pub(crate) fn one_a_side<T>(lines: impl IntoIterator<Item = T>, worse: impl Fn(T, T) -> T) -> Vec<T> {
    let mut all: Vec<T> = lines.into_iter().collect();
    while all.len() > 4 {
        let i = all.len() - 3;
        if let Some(last) = all.pop() {
            let first = all.remove(i);
            all.insert(i, worse(first, last));
        }
    }
    all
}
