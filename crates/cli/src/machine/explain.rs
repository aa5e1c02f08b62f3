//! `machine explain`: what a machine file says, in plain words.

use super::missing::{Matters, Missing};
use super::said_charts::{ChartSaid, charts};
use super::{explain_text, review, text, values};
use crate::args::MachineFileArgs;
use crate::{Outcome, Run, terminal};
use evidence::Certainty;
use jobfile::{FileKind, MachineReview, Seen, SeenValue, field, pattern};
use machine::{BoomPosition, Machine, SupportState};
use quantity::{Quantity, STANDARD_GRAVITY, Si};
use serde::{Deserialize, Serialize};
use stability::{LEVEL, Masses, RearAxleState, Support, reactions};
use wording::Wording;

/// What a machine file says. Values in SI, words in the language asked for.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct Explained {
    /// The file.
    pub(crate) file: String,
    /// Name of the machine, where it could be read.
    pub(crate) name: Option<String>,
    /// True for machines that do not exist.
    pub(crate) invented: bool,
    /// True where the file can be planned with.
    pub(crate) usable: bool,
    /// The file's tables in its own order of meaning, but the charts.
    pub(crate) groups: Vec<Group>,
    /// The machine standing empty on level ground, one entry an attachment; empty while the file has faults.
    pub(crate) empty: Vec<Empty>,
    /// The load charts.
    pub(crate) charts: Vec<ChartSaid>,
    /// What is missing, and everything that is wrong.
    pub(crate) missing: Missing,
}

/// A table of the file.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct Group {
    /// Its key; "" for what stands above all tables.
    pub(crate) key: String,
    /// What it is.
    pub(crate) title: String,
    /// Where its values come from, the most usual first.
    pub(crate) sources: Vec<Certainty>,
    /// Its values.
    pub(crate) values: Vec<ValueSaid>,
}

/// A value of the file.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct ValueSaid {
    /// Path in the file; lists count from 1.
    pub(crate) key: String,
    /// What it is.
    pub(crate) what: String,
    /// The value in words and the reader's units.
    pub(crate) value: String,
    /// The same as quantities, SI.
    pub(crate) quantities: Vec<Quantity>,
    /// Where it comes from.
    pub(crate) source: Option<Certainty>,
    /// True for a made-up value that is still to be filled in.
    pub(crate) to_fill_in: bool,
}

/// The machine standing empty.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct Empty {
    /// Name of the attachment on it.
    pub(crate) attachment: String,
    /// Mass with it, kg.
    pub(crate) mass_kg: f64,
    /// Of it on the front axle, kg.
    pub(crate) front_axle_kg: f64,
    /// Of it on the rear axle, kg.
    pub(crate) rear_axle_kg: f64,
    /// Centre of gravity left of the middle, m.
    pub(crate) centre_left_m: f64,
    /// Boom angle, retracted, rad.
    pub(crate) boom_angle_rad: f64,
}

pub(super) fn run(args: &MachineFileArgs) -> Run {
    let review = review(&args.file, args.said)?;
    let w = args.said.wording();
    let explained = Explained::new(&args.file.display().to_string(), &review, w);
    if args.said.json() {
        terminal::print_json(&explained);
    } else {
        explain_text::print(&explained, w);
    }
    Ok(if explained.usable { Outcome::Done } else { Outcome::Faulty })
}

impl Explained {
    fn new(file: &str, review: &MachineReview, w: Wording) -> Self {
        let text = |path: &str| {
            review.seen.iter().find(|s| s.path == path).and_then(|s| match &s.value {
                SeenValue::Text(text) => Some(text.clone()),
                _ => None,
            })
        };
        let invented = review.seen.iter().any(|s| s.path == "invented" && s.value == SeenValue::YesNo(true));
        let missing = Missing::new(file, review, w);
        let mandatory = missing.count(Matters::Mandatory);
        Self {
            file: file.to_owned(),
            name: text("name"),
            invented,
            usable: review.machine.is_some() && !review.faults.any_error() && mandatory == 0,
            groups: groups(review, w),
            empty: review.machine.as_ref().map(empty).unwrap_or_default(),
            charts: charts(review, w),
            missing,
        }
    }
}

/// The machine standing empty with each attachment, boom lowest and retracted.
pub(super) fn empty(machine: &Machine) -> Vec<Empty> {
    let angle = machine.boom.angle_min.si();
    let support = Support { state: SupportState::Tyres, rear: RearAxleState::Free };
    let one = |attachment: &machine::Attachment| {
        let masses = Masses::of(machine, attachment, BoomPosition::level(angle, 0.0));
        let on = reactions(machine, support, &masses, LEVEL).force;
        Empty {
            attachment: attachment.name.clone(),
            mass_kg: masses.total(),
            front_axle_kg: (on[0] + on[1]) / STANDARD_GRAVITY,
            rear_axle_kg: (on[2] + on[3]) / STANDARD_GRAVITY,
            centre_left_m: masses.centre().y,
            boom_angle_rad: angle,
        }
    };
    machine.attachments.iter().map(one).collect()
}

/// Values by the outermost table they stand in.
fn groups(review: &MachineReview, w: Wording) -> Vec<Group> {
    let mut groups: Vec<Group> = Vec::new();
    for seen in &review.seen {
        let outermost = seen.path.split(['.', '[']).next().unwrap_or_default();
        let alone = outermost == seen.path;
        let quiet = seen.path == "format" || seen.path == "source" || seen.path.ends_with(".source");
        if quiet || outermost == "chart" {
            continue;
        }
        let key = if alone { "" } else { outermost };
        let value = said(seen, review, w);
        if let Some(group) = groups.iter_mut().find(|g| g.key == key) {
            group.values.push(value);
        } else {
            let title = if alone { Some(text::EXPLAIN_IDENTITY) } else { what(key) };
            let title = title.map_or_else(|| key.to_owned(), |id| w.text(id));
            groups.push(Group { key: key.to_owned(), title, sources: Vec::new(), values: vec![value] });
        }
    }
    for group in &mut groups {
        group.sources = sources(&group.values);
    }
    groups
}

fn what(key: &str) -> Option<evidence::TextId> {
    field(FileKind::Machine, key).map(|f| f.what)
}

fn said(seen: &Seen, review: &MachineReview, w: Wording) -> ValueSaid {
    let open = review.lacks.iter().any(|l| l.need == jobfile::Need::FillIn && l.path == seen.path);
    ValueSaid {
        key: seen.path.clone(),
        what: what(&pattern(&seen.path)).map(|id| w.text(id)).unwrap_or_default(),
        value: values::say(seen, w),
        quantities: match &seen.value {
            SeenValue::Quantities(values) => values.clone(),
            _ => Vec::new(),
        },
        source: seen.certainty,
        to_fill_in: open,
    }
}

/// Sources of the measured values, the most usual first.
fn sources(values: &[ValueSaid]) -> Vec<Certainty> {
    let mut counted: Vec<(Certainty, usize)> = Vec::new();
    for source in values.iter().filter(|v| !v.quantities.is_empty()).filter_map(|v| v.source) {
        match counted.iter_mut().find(|(known, _)| *known == source) {
            Some((_, count)) => *count += 1,
            None => counted.push((source, 1)),
        }
    }
    counted.sort_by_key(|(_, count)| std::cmp::Reverse(*count));
    counted.into_iter().map(|(source, _)| source).collect()
}
