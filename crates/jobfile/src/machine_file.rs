//! Machine files.

use crate::document::{Document, read_table};
use crate::limits::{BOOM, MACHINE, MASS};
use crate::quantity_value::Bound::{UpTo, Within, ZeroTo};
use crate::schema_notes::Notes;
use crate::table::Reader;
use crate::{attachment_section, axle_section, body_section, boom_section, chart_section};
use crate::{format, identity_section, steering_section, text};
use evidence::Faults;
use geometry::DVec2;
use machine::{
    Axle, Body, BodyKind, CarryPosition, Levelling, Limits, Machine, Outline, Outriggers, Slew, Stabilizers, WindAreas,
    WindLimit, WindMeasure,
};
use planning::InputLine;
use quantity::{Dimension as D, kilograms, metres, metres_per_second, radians};

/// The format of machine files that this version reads.
pub const MACHINE_FORMAT: &str = "counterpoise-machine/1";

/// A machine from its file, with warnings.
///
/// # Errors
/// Every fault of the file.
pub fn read_machine(name: &str, bytes: &[u8]) -> Result<(Machine, Faults), Faults> {
    let Decoded { machine, faults, .. } = decode(name, bytes);
    match machine {
        Some(machine) if !faults.any_error() => Ok((machine, faults)),
        _ => Err(faults),
    }
}

/// A machine file as read.
pub(crate) struct Decoded {
    /// The machine, where everything in it could be read.
    pub(crate) machine: Option<Machine>,
    /// Every fault.
    pub(crate) faults: Faults,
    /// What goes on the input list.
    pub(crate) inputs: Vec<InputLine>,
    /// True while something in it is still to be filled in.
    pub(crate) open: bool,
    /// What was asked and found, where somebody wants to know.
    pub(crate) notes: Notes,
}

pub(crate) fn decode(name: &str, bytes: &[u8]) -> Decoded {
    decoded(&read_table(name, bytes))
}

/// The same, noting what is asked and found.
pub(crate) fn decode_with_notes(name: &str, bytes: &[u8]) -> Decoded {
    let mut document = read_table(name, bytes);
    document.take_notes();
    decoded(&document)
}

fn decoded(document: &Document) -> Decoded {
    document.drafts.set(Some(text::HINT_FILL_IN_MACHINE));
    let root = document.root();
    let machine = if format::check(&root, MACHINE_FORMAT) { machine(&root) } else { None };
    let inputs = inputs(document, &root, machine.as_ref());
    Decoded { machine, faults: document.faults(), inputs, open: document.open.get() > 0, notes: document.notes() }
}

/// One line for the file, and one for each value that is known otherwise than the file as a whole.
fn inputs(document: &Document, root: &Reader<'_>, machine: Option<&Machine>) -> Vec<InputLine> {
    let mut lines = Vec::new();
    let Some(machine) = machine else { return lines };
    if let Some(certainty) = root.source() {
        lines.push(InputLine {
            name: format!("machine[{}]", machine.id),
            place: document.file().to_owned(),
            value: machine.name.clone(),
            certainty,
        });
    }
    let own = |line: &InputLine| Some(line.certainty) != root.source();
    lines.extend(document.inputs().into_iter().filter(own));
    lines
}

fn machine(root: &Reader<'_>) -> Option<Machine> {
    let id = root.text("id", "id = \"heron-7\"");
    let name = root.text("name", "name = \"Heron 7\"");
    let invented = root.yes_no("invented").unwrap_or(false);
    let serial = root.text_or_none("serial");
    let tyres = root.text_or_none("tyres");
    let counterweight = root.text_or_none("counterweight");
    let options = identity_section::options(root);
    let chart_number = root.text_or_none("chart_number");
    let greatest_capacity = root.si("greatest_capacity", D::Mass, UpTo(MASS));
    let bodies = body_section::bodies(root);
    let front = root.table("front_axle", "[front_axle]").map(|t| axle_section::front_axle(&t));
    let rear_axle = root.table("rear_axle", "[rear_axle]");
    let rear = rear_axle.as_ref().map(axle_section::rear_axle);
    let stabilizers = root.table_or_none("stabilizers").map(|t| stabilizers(&t));
    let outriggers = root.table_or_none("outriggers").map(|t| outriggers(&t));
    let slew = root.table_or_none("slew").map(|t| slew(&t));
    let levelling = root.table_or_none("levelling").map(|t| levelling(&t));
    let boom = root.table("boom", "[boom]").map(|t| boom_section::boom(&t));
    let attachments = attachment_section::attachments(root);
    let limits = root.table("limits", "[limits]").map(|t| limits(&t));
    let outline = root.table("outline", "[outline]").map(|t| outline(&t));
    let wind_areas = root.table("wind_areas", "[wind_areas]").map(|t| wind_areas(&t));
    let steering = root.table_or_none("steering").map(|t| steering_section::steering(&t));
    let charts = root.tables("chart");
    root.done();

    let (stabilizers, outriggers, slew) = (if_any(stabilizers)?, if_any(outriggers)?, if_any(slew)?);
    let levelling = if_any(levelling)?;
    upper_bodies(root, slew.is_some(), bodies.as_deref());
    let mut machine = Machine {
        id: id?,
        name: name?,
        invented,
        serial,
        tyres,
        counterweight,
        options: options.ok()?,
        chart_number,
        greatest_capacity: kilograms(greatest_capacity?),
        bodies: bodies?,
        front: front??,
        rear: rear??,
        stabilizers,
        outriggers,
        slew,
        levelling,
        boom: boom??,
        attachments: attachments?,
        charts: Vec::new(),
        limits: limits??,
        outline: outline??,
        wind_areas: wind_areas??,
        steering,
    };
    steering_section::can_turn(root, &machine);
    let stands = standing(root, &machine) && crate::machine_carried::carried(root, &machine);
    around_tyres(root, &machine);
    if let Some(t) = &rear_axle {
        axle_section::lock_within_boom(t, &machine);
    }
    if charts.is_empty() {
        root.warning("chart", text::NO_CHARTS.with("machine", &machine.id), None);
    }
    machine.charts = chart_section::charts(&charts, &machine, stands);
    Some(machine)
}

fn stabilizers(t: &Reader<'_>) -> Option<Stabilizers> {
    // Not known counts as free.
    const REAR: [(&str, bool); 3] = [("free", true), ("locked", false), ("unknown", true)];
    let ahead = t.si("ahead", D::Length, Within(-MACHINE, MACHINE));
    let spread = t.si("spread", D::Length, UpTo(20.0));
    let pad_area = t.si("pad_area", D::Area, UpTo(25.0));
    let rear_axle_free = t.choice("rear_axle", &REAR);
    t.done();
    Some(Stabilizers { pad: DVec2::new(ahead?, spread? / 2.0), pad_area: pad_area?, rear_axle_free: rear_axle_free? })
}

fn outriggers(t: &Reader<'_>) -> Option<Outriggers> {
    let front = t.si("front_ahead", D::Length, Within(-MACHINE, MACHINE));
    let front_spread = t.si("front_spread", D::Length, UpTo(20.0));
    let rear = t.si("rear_ahead", D::Length, Within(-MACHINE, MACHINE));
    let rear_spread = t.si("rear_spread", D::Length, UpTo(20.0));
    let pad_area = t.si("pad_area", D::Area, UpTo(25.0));
    t.done();
    if let (Some(low), Some(high)) = (rear, front)
        && low >= high
    {
        let message = text::ORDER.with("key", "rear_ahead").with("low", metres(low)).with("high", metres(high));
        t.fault("rear_ahead", message, None);
    }
    Some(Outriggers {
        front: DVec2::new(front?, front_spread? / 2.0),
        rear: DVec2::new(rear?, rear_spread? / 2.0),
        pad_area: pad_area?,
    })
}

/// Frame levelling on the front axle. The indicator's error is asked for: 0.5° to 1° is usual.
fn levelling(t: &Reader<'_>) -> Option<Levelling> {
    let pin_height = t.si("pin_height", D::Length, UpTo(5.0));
    let range = t.si("range", D::Angle, Within(0.0, 20_f64.to_radians()));
    let error = t.si("indicator_error", D::Angle, Within(0.0, 5_f64.to_radians()));
    t.done();
    Some(Levelling { pin_height: pin_height?, range: radians(range?), indicator_error: radians(error?) })
}

fn slew(t: &Reader<'_>) -> Option<Slew> {
    let axis = t.si("axis", D::Length, Within(-MACHINE, MACHINE));
    let range = t.si("range", D::Angle, Within(0.0, std::f64::consts::PI));
    t.done();
    Some(Slew { axis: axis?, range: radians(range?) })
}

/// A part that may be left out, read: `None` where it is there and could not be read.
#[expect(clippy::option_option, reason = "left out, read, or there and unreadable")]
fn if_any<T>(read: Option<Option<T>>) -> Option<Option<T>> {
    read.map_or(Some(None), |read| read.map(Some))
}

/// Upper bodies and a slew belong together.
fn upper_bodies(root: &Reader<'_>, slews: bool, bodies: Option<&[Body]>) {
    let Some(bodies) = bodies else { return };
    let upper = bodies.iter().any(|b| b.kind == BodyKind::Upper);
    if slews && !upper {
        root.fault("slew", text::NO_BODY.with("kind", "upper"), None);
    }
    if upper && !slews {
        root.fault("body", text::UPPER_WITHOUT_SLEW, Some(text::HINT_EXAMPLE.with("example", "[slew]")));
    }
}

fn limits(t: &Reader<'_>) -> Option<Limits> {
    let angle = t.si("carry_angle", D::Angle, Within(-90_f64.to_radians(), 90_f64.to_radians()));
    let extension = t.si("carry_extension", D::Length, ZeroTo(BOOM));
    let wind = t.table_or_none("wind").map(|w| wind_limit(&w));
    t.done();
    let wind = match wind {
        None => None,
        Some(read) => Some(read?),
    };
    Some(Limits { carry: CarryPosition { angle: radians(angle?), extension: metres(extension?) }, wind })
}

fn wind_limit(t: &Reader<'_>) -> Option<WindLimit> {
    const MEASURES: [(&str, WindMeasure); 2] =
        [("gust-at-height", WindMeasure::GustAtHeight), ("forecast-mean", WindMeasure::ForecastMean)];
    let speed = t.si("speed", D::Speed, UpTo(60.0));
    let measure = t.choice("measure", &MEASURES);
    t.done();
    Some(WindLimit { speed: metres_per_second(speed?), measure: measure? })
}

fn outline(t: &Reader<'_>) -> Option<Outline> {
    let front = t.si("front", D::Length, Within(-MACHINE, MACHINE));
    let rear = t.si("rear", D::Length, Within(-MACHINE, MACHINE));
    let width = t.si("width", D::Length, UpTo(10.0));
    let ground_clearance = t.si("ground_clearance", D::Length, ZeroTo(5.0));
    let frame_top = t.si("frame_top", D::Length, UpTo(10.0));
    let cab_top = t.si("cab_top", D::Length, UpTo(10.0));
    let cab = t
        .required("cab", "cab = [\"-2.0 m\", \"-0.6 m\"]")
        .and_then(|node| t.as_numbers::<2>(node, "cab", D::Length, Within(-MACHINE, MACHINE), None));
    t.done();
    for (key, low, high) in [("rear", rear, front), ("cab", cab.map(|c| c[0]), cab.map(|c| c[1]))] {
        if let (Some(low), Some(high)) = (low, high)
            && low >= high
        {
            t.fault(key, text::ORDER.with("key", key).with("low", metres(low)).with("high", metres(high)), None);
        }
    }
    let cab = cab?;
    Some(Outline {
        front: front?,
        rear: rear?,
        half_width: width? / 2.0,
        ground_clearance: ground_clearance?,
        frame_top: frame_top?,
        cab_top: cab_top?,
        cab: (cab[0], cab[1]),
    })
}

fn wind_areas(t: &Reader<'_>) -> Option<WindAreas> {
    let frame_side = t.si("side", D::Area, UpTo(200.0));
    let frame_front = t.si("front", D::Area, UpTo(200.0));
    let frame_height = t.si("height", D::Length, UpTo(10.0));
    t.done();
    Some(WindAreas { frame_side: frame_side?, frame_front: frame_front?, frame_height: frame_height? })
}

/// No machine is narrower than its tyres, or ends behind the front of its front tyres.
fn around_tyres(root: &Reader<'_>, machine: &Machine) {
    let over = |axle: &Axle| 2.0 * axle.half_track + quantity::Si::si(&axle.tyre.width);
    let (width, tyres) = (2.0 * machine.outline.half_width, over(&machine.front).max(over(&machine.rear.axle)));
    if width < tyres - 0.005 {
        let message = text::NARROWER_THAN_TYRES.with("width", metres(width)).with("tyres", metres(tyres));
        root.fault("outline", message, Some(text::HINT_OVER_TYRES.message()));
    }
    // A diameter typed as a radius moves the datum of the charts.
    let (front, face) = (machine.outline.front, machine.front_face());
    if front < face - 0.02 {
        let message = text::SHORTER_THAN_TYRES.with("front", metres(front)).with("tyres", metres(face));
        root.fault("outline", message, Some(text::HINT_RADIUS.message()));
    }
}

/// A machine that would tip standing empty, boom down, is described wrongly: false, and said.
fn standing(root: &Reader<'_>, machine: &Machine) -> bool {
    // Its first attachment on, boom at its lowest angle, retracted.
    let Some(first) = machine.attachments.first() else { return false };
    let lowest = machine::BoomPosition::level(quantity::Si::si(&machine.boom.angle_min), 0.0);
    let centre = stability::Masses::of(machine, first, lowest).centre();
    let wheelbase = -machine.rear.axle.x;
    let between_axles = centre.x < 0.0 && centre.x > -wheelbase;
    if !between_axles {
        let message =
            text::CENTRE_OUTSIDE_WHEELBASE.with("centre", metres(centre.x)).with("wheelbase", metres(wheelbase));
        root.fault("body", message, Some(text::HINT_CENTRES.message()));
    }
    let half_track = machine.front.half_track.min(machine.rear.axle.half_track);
    let between_wheels = centre.y.abs() < half_track;
    if !between_wheels {
        let message = text::CENTRE_OUTSIDE_TRACK.with("left", metres(centre.y)).with("half_track", metres(half_track));
        root.fault("body", message, Some(text::HINT_CENTRES.message()));
    }
    between_axles && between_wheels
}
