//! What a chart's reach and height are measured between: mandatory, no default.

use crate::limits::MACHINE;
use crate::node::Value;
use crate::quantity_value::Bound::Within;
use crate::table::Reader;
use crate::text;
use machine::{Attachment, AttachmentKind, Datum, HeightTo, Machine, ReachFrom, ReachTo};
use quantity::Dimension as D;

const REACH_FROM: [(&str, ReachFrom); 6] = [
    ("front-tyre-face", ReachFrom::FrontTyreFace),
    ("front-axle", ReachFrom::FrontAxle),
    ("frame-front", ReachFrom::FrameFront),
    ("stabilizer-pads", ReachFrom::StabilizerPads),
    ("boom-foot", ReachFrom::BoomFoot),
    ("turntable-centre", ReachFrom::TurntableCentre),
];
const REACH_TO: [(&str, ReachTo); 5] = [
    ("load-centre", ReachTo::LoadCentre),
    ("fork-heel", ReachTo::ForkHeel),
    ("fork-tip", ReachTo::ForkTip),
    ("hook", ReachTo::Hook),
    ("head-pin", ReachTo::HeadPin),
];
const HEIGHT_TO: [(&str, HeightTo); 4] = [
    ("fork-top", HeightTo::ForkTop),
    ("load-centre", HeightTo::LoadCentre),
    ("hook", HeightTo::Hook),
    ("head-pin", HeightTo::HeadPin),
];

/// The datum of a chart.
pub(crate) fn datum(t: &Reader<'_>) -> Option<Datum> {
    let reach_from = reach_from(t);
    let reach_to = t.choice("reach_to", &REACH_TO);
    let height_to = t.choice("height_to", &HEIGHT_TO);
    Some(Datum { reach_from: reach_from?, reach_to: reach_to?, height_to: height_to? })
}

/// A word, or `{ ahead_of_front_axle = "0.35 m" }`.
fn reach_from(t: &Reader<'_>) -> Option<ReachFrom> {
    t.needs("reach_from");
    let node = t.optional("reach_from");
    let Some(node) = node.filter(|n| matches!(n.value, Value::Table(_))) else {
        return t.choice("reach_from", &REACH_FROM);
    };
    let place = t.as_table(node, "reach_from")?;
    let ahead = place.si("ahead_of_front_axle", D::Length, Within(-MACHINE, MACHINE));
    place.done();
    ahead.map(ReachFrom::AheadOfFrontAxle)
}

/// A hook has no fork heel, and forks have no hook; pads and the load centre's height must be known.
/// False if the datum does not fit, and said.
pub(crate) fn fits(
    t: &Reader<'_>,
    datum: &Datum,
    machine: &Machine,
    attachment: &Attachment,
    height_known: bool,
) -> bool {
    let hangs = attachment.hangs();
    let reach = match datum.reach_to {
        ReachTo::HeadPin => true,
        ReachTo::Hook => hangs,
        ReachTo::ForkTip => matches!(attachment.kind, AttachmentKind::Forks(_)),
        ReachTo::LoadCentre | ReachTo::ForkHeel => !hangs,
    };
    let height = match datum.height_to {
        HeightTo::HeadPin => true,
        HeightTo::Hook => hangs,
        HeightTo::ForkTop | HeightTo::LoadCentre => !hangs,
    };
    let says = |key: &str, word: &str| {
        t.fault(key, text::DATUM_MISMATCH.with("datum", word).with("attachment", &attachment.id), None);
    };
    if !reach {
        says("reach_to", word(&REACH_TO, &datum.reach_to));
    }
    if !height {
        says("height_to", word(&HEIGHT_TO, &datum.height_to));
    }
    let known = datum.height_to != HeightTo::LoadCentre || height_known || !height;
    if !known {
        t.fault("height_to", text::CHART_HEIGHT_UNKNOWN, None);
    }
    let pads = datum.reach_from != ReachFrom::StabilizerPads || datum.start(machine).x.is_finite();
    if !pads {
        t.fault("reach_from", text::CHART_NO_PADS, None);
    }
    let turns = datum.reach_from != ReachFrom::TurntableCentre || machine.slew.is_some();
    if !turns {
        t.fault("reach_from", text::CHART_NO_TURNTABLE, None);
    }
    reach && height && known && pads && turns
}

fn word<T: PartialEq>(words: &[(&'static str, T)], of: &T) -> &'static str {
    words.iter().find(|(_, value)| value == of).map_or("", |(word, _)| word)
}
