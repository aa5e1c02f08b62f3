//! The machine as its file describes it.

use crate::{Attachment, Boom, Chart};
use geometry::{DVec2, DVec3};
use quantity::{Angle, Length, Mass, Pressure, Speed};
use serde::{Deserialize, Serialize};

/// A telehandler, fully described. Positions in the machine frame.
#[derive(Debug, Clone)]
pub struct Machine {
    /// Short id used by jobs.
    pub id: String,
    /// Name for people.
    pub name: String,
    /// True for machines invented for demonstrations and tests; said on every document.
    pub invented: bool,
    /// Serial number as on the plate.
    pub serial: Option<String>,
    /// The set of tyres that the axles describe, by id or the mark on their sidewall.
    pub tyres: Option<String>,
    /// Counterweight fitted, by its mark or mass.
    pub counterweight: Option<String>,
    /// Options fitted that change mass or charts; empty: none; `None`: not stated.
    pub options: Option<Vec<String>>,
    /// Number and revision of the charts that the file was written from.
    pub chart_number: Option<String>,
    /// Greatest rated capacity on the plate.
    pub greatest_capacity: Mass,
    /// Masses other than the boom.
    pub bodies: Vec<Body>,
    /// Front axle: rigid to the frame.
    pub front: Axle,
    /// Rear axle.
    pub rear: RearAxle,
    /// Stabilizers, where fitted.
    pub stabilizers: Option<Stabilizers>,
    /// Outriggers at the four corners, where fitted.
    pub outriggers: Option<Outriggers>,
    /// The turning upper part, where the machine has one. Boom and outline are described with it
    /// straight ahead.
    pub slew: Option<Slew>,
    /// Frame levelling, where fitted.
    pub levelling: Option<Levelling>,
    /// Telescopic boom.
    pub boom: Boom,
    /// Attachments that the maker allows on this machine.
    pub attachments: Vec<Attachment>,
    /// Load charts, one per attachment, support state, load centre, set of tyres and level condition.
    pub charts: Vec<Chart>,
    /// The maker's limits.
    pub limits: Limits,
    /// Outer dimensions, for drawing and clearance.
    pub outline: Outline,
    /// Side areas that the wind sees.
    pub wind_areas: WindAreas,
    /// How it steers and drives; `None`: not stated.
    pub steering: Option<crate::SteeringData>,
}

/// A rigid part with mass.
#[derive(Debug, Clone)]
pub struct Body {
    /// What it belongs to: whether the side tipping line of a free rear axle counts it.
    pub kind: BodyKind,
    /// Name for people.
    pub name: String,
    /// Its mass at most.
    pub mass: Mass,
    /// Its mass at least, where it is not always the same: a tank that empties, an operator who may be
    /// light. `None`: always [`Body::mass`].
    pub least: Option<Mass>,
    /// Its centre of gravity, m.
    pub centre: DVec3,
}

/// Where a body's weight goes.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum BodyKind {
    /// Frame, cab, engine, counterweight, operator, fuel: carried by the front axle and the rear pin.
    Frame,
    /// Front axle with wheels, rigid to the frame.
    FrontAxle,
    /// Rear axle with wheels: hangs on the pin, does not help against side tipping while it is free.
    RearAxle,
    /// Turns with the boom on a slewing machine: upper frame, cab, counterweight, engine. Carried as
    /// the frame is.
    Upper,
}

/// An axle with two wheels.
#[derive(Debug, Clone)]
pub struct Axle {
    /// Position along the machine, m (0 for the front axle).
    pub x: f64,
    /// Half the track: distance of the patch centre from the middle, m.
    pub half_track: f64,
    /// The tyres.
    pub tyre: Tyre,
}

/// Tyres of an axle.
#[derive(Debug, Clone)]
pub struct Tyre {
    /// Free (unloaded) radius; the chart's datum is the front face at this radius.
    pub free_radius: Length,
    /// Section width.
    pub width: Length,
    /// Inflation pressure in use; `None` for solid or unknown tyres.
    pub pressure: Option<Pressure>,
    /// Diameter of the rim; `None`: not stated.
    pub rim: Option<Length>,
    /// Vertical stiffness at that pressure as the tyre's maker gives it, N/m; `None`: not stated, then
    /// [`crate::tyre_stiffness`] works it out.
    pub stiffness: Option<f64>,
}

/// The rear axle: it may oscillate about a longitudinal pin.
#[derive(Debug, Clone)]
pub struct RearAxle {
    /// Position, track, tyres.
    pub axle: Axle,
    /// Height of the oscillation pin above the ground, m.
    pub pin_height: f64,
    /// Largest oscillation to either side.
    pub oscillation: Angle,
    /// What locks it, as the manual says.
    pub lock: Lock,
    /// Boom angle above which it locks by itself, for [`Lock::AboveBoomAngle`]; `None`: not known.
    pub lock_angle: Option<Angle>,
}

/// What locks the rear axle against oscillation.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Lock {
    /// Nothing: always free.
    Never,
    /// The operator, by a control.
    Operator,
    /// Automatically, above a boom angle.
    AboveBoomAngle,
    /// Not known: taken as free.
    Unknown,
}

/// Frame levelling: the frame rolls against the front axle, about a longitudinal pin.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Levelling {
    /// Height of the pin above the ground, m.
    pub pin_height: f64,
    /// Largest roll to either side.
    pub range: Angle,
    /// How far the level indicator may be off.
    pub indicator_error: Angle,
}

/// Stabilizers at the front.
#[derive(Debug, Clone)]
pub struct Stabilizers {
    /// Middle of the pads: (x, ± y), m.
    pub pad: DVec2,
    /// Area of one pad, m².
    pub pad_area: f64,
    /// True if the rear axle stays free to oscillate with the pads down. Unknown counts as free.
    pub rear_axle_free: bool,
}

/// Outriggers at the four corners: with them down no tyre carries.
#[derive(Debug, Clone)]
pub struct Outriggers {
    /// Middle of the front pads: (x, ± y), m.
    pub front: DVec2,
    /// Middle of the rear pads: (x, ± y), m.
    pub rear: DVec2,
    /// Area of one pad, m².
    pub pad_area: f64,
}

/// A turning upper part.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Slew {
    /// Its axis, x, m.
    pub axis: f64,
    /// How far it turns to either side of straight ahead; 180° is all round.
    pub range: Angle,
}

/// What the machine stands on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum SupportState {
    /// On its tyres.
    Tyres,
    /// Stabilizer pads down, front tyres carry nothing.
    Stabilizers,
    /// All four outriggers down, no tyre carries.
    Outriggers,
}

impl SupportState {
    /// The words for it in files and on the command line.
    pub const WORDS: [(&str, Self); 3] =
        [("tyres", Self::Tyres), ("stabilizers", Self::Stabilizers), ("outriggers", Self::Outriggers)];

    /// Its word in files.
    pub fn word(self) -> &'static str {
        Self::WORDS.iter().find(|(_, state)| *state == self).map_or("", |(word, _)| word)
    }
}

/// The maker's limits that a lift must keep.
#[derive(Debug, Clone)]
pub struct Limits {
    /// Carry position: boom angle and extension at most, for driving.
    pub carry: CarryPosition,
    /// Wind, where the maker gives a limit.
    pub wind: Option<WindLimit>,
}

/// How the boom is carried when driving.
#[derive(Debug, Clone, Copy)]
pub struct CarryPosition {
    /// Boom angle at most.
    pub angle: Angle,
    /// Extension at most.
    pub extension: Length,
}

/// The maker's wind limit.
#[derive(Debug, Clone, Copy)]
pub struct WindLimit {
    /// Speed at which work stops.
    pub speed: Speed,
    /// Whether a mean or a gust.
    pub measure: WindMeasure,
}

/// How a wind speed is meant.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum WindMeasure {
    /// Three-second gust at the height of the load and boom.
    GustAtHeight,
    /// Ten-minute mean at 10 m, as forecasts give.
    ForecastMean,
}

/// Outer dimensions, m.
#[derive(Debug, Clone, Copy)]
pub struct Outline {
    /// Foremost point of frame and wheels without attachment, x.
    pub front: f64,
    /// Rearmost point, x (negative).
    pub rear: f64,
    /// Half the overall width.
    pub half_width: f64,
    /// Underside of the frame.
    pub ground_clearance: f64,
    /// Top of the frame (without cab).
    pub frame_top: f64,
    /// Top of the cab.
    pub cab_top: f64,
    /// Cab from x to x.
    pub cab: (f64, f64),
}

/// Areas that the wind sees from the side, m².
#[derive(Debug, Clone, Copy)]
pub struct WindAreas {
    /// Frame, cab and wheels from the side.
    pub frame_side: f64,
    /// Frame, cab and wheels from the front.
    pub frame_front: f64,
    /// Height of the middle of those areas, m.
    pub frame_height: f64,
}

impl Machine {
    /// The attachment of that id.
    pub fn attachment(&self, id: &str) -> Option<&Attachment> {
        self.attachments.iter().find(|a| a.id == id)
    }
    /// True if the machine has what that support state needs.
    pub fn has(&self, support: SupportState) -> bool {
        match support {
            SupportState::Tyres => true,
            SupportState::Stabilizers => self.stabilizers.is_some(),
            SupportState::Outriggers => self.outriggers.is_some(),
        }
    }
    /// Where the four contacts stand in a support state: (x, half the width between them) of the
    /// front and of the rear ones, m.
    pub fn contacts(&self, support: SupportState) -> [DVec2; 2] {
        let tyres = |axle: &Axle| DVec2::new(axle.x, axle.half_track);
        let (front, rear) = (tyres(&self.front), tyres(&self.rear.axle));
        match (support, &self.stabilizers, &self.outriggers) {
            (SupportState::Stabilizers, Some(s), _) => [s.pad, rear],
            (SupportState::Outriggers, _, Some(o)) => [o.front, o.rear],
            _ => [front, rear],
        }
    }
    /// Area of the pad under contact `i` (front left, front right, rear left, rear right), m²;
    /// `None` where a tyre stands.
    pub fn pad_area(&self, support: SupportState, i: usize) -> Option<f64> {
        match support {
            SupportState::Tyres => None,
            SupportState::Stabilizers => self.stabilizers.as_ref().filter(|_| i < 2).map(|s| s.pad_area),
            SupportState::Outriggers => self.outriggers.as_ref().map(|o| o.pad_area),
        }
    }
    /// x of the front face of the front tyres at their free radius, m.
    pub fn front_face(&self) -> f64 {
        self.front.x + quantity::Si::si(&self.front.tyre.free_radius)
    }
}
