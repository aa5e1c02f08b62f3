//! `[front_axle]` and `[rear_axle]` of a machine file: tracks, tyres, what locks the rear axle.

use crate::node::Value;
use crate::quantity_value::Bound::{UpTo, Within};
use crate::schema_notes::{Kind, SeenValue};
use crate::table::Reader;
use crate::text;
use machine::{Axle, Lock, Machine, RearAxle, Tyre};
use quantity::{Angle, Dimension as D, Length, Quantity, Si, metres, pascals, radians};

/// Stiffness of a tyre from the least to the greatest that is read, N/m: off-road tyres of such
/// machines have about 2e5 to 2e6 (common practice), solid ones more.
const STIFFNESS: (f64, f64) = (1e4, 2e7);

const LOCKS: [(&str, Lock); 4] = [
    ("never", Lock::Never),
    ("operator", Lock::Operator),
    ("above-boom-angle", Lock::AboveBoomAngle),
    ("unknown", Lock::Unknown),
];

/// The word of a lock in files.
pub(crate) fn lock_word(lock: Lock) -> &'static str {
    LOCKS.iter().find(|(_, known)| *known == lock).map_or("", |(word, _)| word)
}

pub(crate) fn front_axle(t: &Reader<'_>) -> Option<Axle> {
    let track = t.si("track", D::Length, Within(0.3, 10.0));
    let tyre = tyre(t);
    t.done();
    Some(Axle { x: 0.0, half_track: track? / 2.0, tyre: tyre? })
}

pub(crate) fn rear_axle(t: &Reader<'_>) -> Option<RearAxle> {
    let wheelbase = t.si("wheelbase", D::Length, UpTo(20.0));
    let track = t.si("track", D::Length, Within(0.3, 10.0));
    let tyre = tyre(t);
    let pin_height = t.si("pin_height", D::Length, UpTo(5.0));
    let oscillation = t.si("oscillation", D::Angle, Within(0.0, 30_f64.to_radians()));
    let lock = t.choice("lock", &LOCKS);
    let lock_angle = lock_angle(t, lock);
    t.done();
    if let (Some(pin), Some(track)) = (pin_height, track)
        && pin >= track / 2.0
    {
        let message = text::PIN_TOO_HIGH.with("pin", metres(pin)).with("half_track", metres(track / 2.0));
        t.fault("pin_height", message, None);
    }
    Some(RearAxle {
        axle: Axle { x: -wheelbase?, half_track: track? / 2.0, tyre: tyre? },
        pin_height: pin_height?,
        oscillation: radians(oscillation?),
        lock: lock?,
        lock_angle,
    })
}

/// `lock_angle`: only where the axle locks above a boom angle; `None` where it is not known.
fn lock_angle(t: &Reader<'_>, lock: Option<Lock>) -> Option<Angle> {
    t.expects("lock_angle", || Kind::Words(vec![String::from("unknown")]));
    let node = t.optional("lock_angle")?;
    if let Some(other) = lock.filter(|lock| *lock != Lock::AboveBoomAngle) {
        let message = text::LOCK_ANGLE_MISPLACED.with("lock", lock_word(other));
        t.fault("lock_angle", message, Some(text::HINT_LOCK_ANGLE.message()));
        return None;
    }
    match &node.value {
        Value::Text(word) if word == "unknown" => {
            t.found("lock_angle", || SeenValue::Word(word.clone()), t.source());
            None
        }
        _ => {
            let right_angle = std::f64::consts::FRAC_PI_2;
            t.as_fact(node, "lock_angle", D::Angle, Within(-right_angle, right_angle)).map(|f| radians(f.si))
        }
    }
}

/// An angle that the boom does not reach locks nothing, or always: a slip. `t`: the rear axle.
pub(crate) fn lock_within_boom(t: &Reader<'_>, machine: &Machine) {
    let Some(angle) = machine.rear.lock_angle else { return };
    let (low, high) = (machine.boom.angle_min, machine.boom.angle_max);
    if angle.si() < low.si() || angle.si() > high.si() {
        let message = text::LOCK_ANGLE_OUTSIDE_BOOM.with("angle", angle).with("low", low).with("high", high);
        t.fault("lock_angle", message, Some(text::HINT_UNIT_SLIP.message()));
    }
}

fn tyre(axle: &Reader<'_>) -> Option<Tyre> {
    let t = axle.table("tyre", "tyre = { radius = \"0.60 m\", width = \"0.40 m\", pressure = \"4 bar\" }")?;
    let radius = t.si("radius", D::Length, Within(0.1, 2.0));
    let width = t.si("width", D::Length, Within(0.05, 2.0));
    let mut unknown = false;
    t.expects("pressure", || Kind::Words(["solid", "unknown"].map(str::to_owned).to_vec()));
    let pressure = t.required("pressure", "pressure = \"4 bar\"").and_then(|node| {
        // Solid tyres have none, and not known is said, not left out.
        match &node.value {
            Value::Text(word) if word == "unknown" || word == "solid" => {
                unknown = word == "unknown";
                t.found("pressure", || SeenValue::Word(word.clone()), t.source());
                Some(None)
            }
            _ => t.as_fact(node, "pressure", D::Pressure, UpTo(5e6)).map(|f| Some(pascals(f.si))),
        }
    });
    let rim = t.si_or_none("rim", D::Length, UpTo(4.0)).map(metres);
    let stiffness = t.si_or_none("stiffness", D::Stiffness, Within(STIFFNESS.0, STIFFNESS.1));
    t.done();
    if let (Some(rim), Some(radius)) = (rim, radius) {
        within_tyre(&t, rim, metres(2.0 * radius));
    }
    if let Some(stiffness) = stiffness.filter(|_| unknown) {
        let message = text::STIFFNESS_OF_NO_PRESSURE.with("stiffness", Quantity::new(stiffness, D::Stiffness));
        t.fault("stiffness", message, Some(text::HINT_STIFFNESS.message()));
    }
    Some(Tyre { free_radius: metres(radius?), width: metres(width?), pressure: pressure?, rim, stiffness })
}

/// A rim is smaller than its tyre.
fn within_tyre(t: &Reader<'_>, rim: Length, tyre: Length) {
    if rim.si() >= tyre.si() {
        let message = text::RIM_TOO_LARGE.with("rim", rim).with("diameter", tyre);
        t.fault("rim", message, Some(text::HINT_RIM.message()));
    }
}
