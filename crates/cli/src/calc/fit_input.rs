//! The input of `calc fit`: statements and what is asked.

use super::standing::HEAVIEST;
use super::text as words;
use crate::text;
use evidence::Message;
use jobfile::{Bound, Reader};
use machine::{BoomPosition, Machine, SupportState};
use quantity::{Dimension, Quantity, Si};
use stability::RearAxleState;
use stability::fit::{
    Ask, Between, Charted, FitAxis, FitFault, FitLoad, FitPart, FitPose, Known, Margin, SideAsk, Statement,
};
use std::rc::Rc;
use wording::Wording;

/// A statement with the table it stands in.
pub(super) struct Read<'d> {
    pub(super) statement: Statement,
    pub(super) table: Rc<Reader<'d>>,
}

/// What is asked of a place.
pub(super) struct Asked {
    pub(super) name: String,
    pub(super) ask: Ask,
    pub(super) side: Option<SideAsk>,
}

const REAR: [(&str, RearAxleState); 2] = [("free", RearAxleState::Free), ("locked", RearAxleState::Locked)];

#[derive(Clone, Copy)]
enum PartWord {
    Chassis,
    RearAxle,
    Section,
    Carriage,
    Attachment,
}

const PARTS: [(&str, PartWord); 5] = [
    ("chassis", PartWord::Chassis),
    ("rear-axle", PartWord::RearAxle),
    ("section", PartWord::Section),
    ("carriage", PartWord::Carriage),
    ("attachment", PartWord::Attachment),
];

/// Reads a table of one kind.
type ReadOne<'m> = fn(&Reading<'m>, &Reader<'_>) -> Option<Known>;

/// Reads tables against a machine; faults go to the document.
pub(super) struct Reading<'m> {
    pub(super) machine: &'m Machine,
    /// The attachment where a table names none.
    pub(super) attachment: usize,
    pub(super) wording: Wording,
}

impl<'m> Reading<'m> {
    pub(super) fn statements<'d>(&self, root: &Reader<'d>) -> Vec<Read<'d>> {
        let mut out = Vec::new();
        let kinds: [(&str, evidence::TextId, ReadOne<'m>); 4] = [
            ("axle_loads", words::FIT_WHAT_AXLES, Self::axle_loads),
            ("total", words::FIT_WHAT_TOTAL, Self::total),
            ("tipping_test", words::FIT_WHAT_TIPPING, Self::tipping_test),
            ("charted", words::FIT_WHAT_CHARTED, Self::charted),
        ];
        for (key, what, one) in kinds {
            for (i, table) in root.tables(key).into_iter().enumerate() {
                let name = self.name(&table, what, i);
                let known = one(self, &table);
                table.done();
                if let Some(known) = known {
                    out.push(Read { statement: Statement { name, known }, table: Rc::new(table) });
                }
            }
        }
        for (i, table) in root.tables("part").into_iter().enumerate() {
            let name = self.name(&table, words::FIT_WHAT_PART, i);
            self.part(&name, table, &mut out);
        }
        out
    }

    fn name(&self, table: &Reader<'_>, what: evidence::TextId, i: usize) -> String {
        let unnamed = || self.wording.render(&words::FIT_UNNAMED.with("what", what).with("number", i + 1));
        table.text_or_none("name").unwrap_or_else(unnamed)
    }

    fn attachment(&self, table: &Reader<'_>) -> usize {
        let Some(id) = table.text_or_none("attachment") else { return self.attachment };
        attachment(table, self.machine, &id).unwrap_or(self.attachment)
    }

    fn pose(&self, table: &Reader<'_>, support: bool) -> Option<FitPose> {
        let attachment = self.attachment(table);
        let angle = table.decision("boom_angle", Dimension::Angle, Bound::Any);
        let extension = table.decision("extension", Dimension::Length, Bound::NotNegative);
        let support = if support { table.choice("support", &SupportState::WORDS) } else { Some(SupportState::Tyres) };
        Some(FitPose { attachment, boom: BoomPosition::level(angle?, extension?), support: support? })
    }

    fn load(table: &Reader<'_>, key: &str, share: f64) -> Option<FitLoad> {
        let mass = table.decision(key, Dimension::Mass, Bound::UpTo(HEAVIEST));
        let ahead = table.decision("load_ahead", Dimension::Length, Bound::Any);
        let up = table.decision_or_none("load_up", Dimension::Length, Bound::Any).unwrap_or(0.0);
        Some(FitLoad { mass: Between::about(mass?, share), ahead: ahead?, up })
    }

    fn share(table: &Reader<'_>, key: &str) -> Option<f64> {
        table.decision(key, Dimension::Ratio, Bound::ZeroTo(0.5))
    }

    fn axle_loads(&self, table: &Reader<'_>) -> Option<Known> {
        let pose = self.pose(table, false);
        let share = Self::share(table, "uncertainty");
        let axle = |key| table.decision_or_none(key, Dimension::Mass, Bound::UpTo(HEAVIEST));
        let (front, rear) = (axle("front"), axle("rear"));
        if front.is_none() && !table.has("front") && !table.has("rear") {
            table.missing("front", "front = \"6200 kg\"");
        }
        let pitch = table.decision_or_none("nose_up", Dimension::Angle, Bound::Any).unwrap_or(0.0);
        let load = if table.has("load") {
            Some(Self::load(table, "load", Self::share(table, "load_uncertainty").unwrap_or(0.0))?)
        } else {
            None
        };
        let share = share?;
        let about = |kg: Option<f64>| kg.map(|kg| Between::about(kg, share));
        (front.is_some() || rear.is_some()).then_some(Known::Axles {
            pose: pose?,
            front: about(front),
            rear: about(rear),
            load,
            pitch,
        })
    }

    fn total(&self, table: &Reader<'_>) -> Option<Known> {
        let attachment = self.attachment(table);
        let mass = table.decision("mass", Dimension::Mass, Bound::UpTo(HEAVIEST));
        let share = Self::share(table, "uncertainty");
        Some(Known::Total { attachment, mass: Between::about(mass?, share?) })
    }

    fn tipping_test(&self, table: &Reader<'_>) -> Option<Known> {
        let pose = self.pose(table, true);
        let share = Self::share(table, "uncertainty");
        let load = Self::load(table, "load", share.unwrap_or(0.0));
        share?;
        Some(Known::TippingTest { pose: pose?, load: load? })
    }

    fn charted(&self, table: &Reader<'_>) -> Option<Known> {
        let pose = self.pose(table, true);
        let load = Self::load(table, "capacity", 0.0);
        let factor = table.decision_or_none("factor", Dimension::Number, Bound::Within(1.0, 10.0));
        let slope = table.decision_or_none("slope", Dimension::Slope, Bound::ZeroTo(1.0));
        let governs = table.yes_no("governs").unwrap_or(false);
        let step = table.decision_or_none("rounded_to", Dimension::Mass, Bound::NotNegative);
        let margin = match (factor, slope) {
            (Some(k), _) => Margin::Factor(k),
            (None, Some(t)) => Margin::Slope(t),
            (None, None) => Margin::None,
        };
        if governs && margin == Margin::None && !table.has("factor") && !table.has("slope") {
            table.missing("factor", "factor = 1.33");
        }
        if governs && step.is_none() && !table.has("rounded_to") {
            table.missing("rounded_to", "rounded_to = \"50 kg\"");
        }
        if table.has("factor") && table.has("slope") {
            table.fault("slope", words::FIT_BAD_RANGE.message(), None);
        }
        let governs = if governs { Some(step?) } else { None };
        Some(Known::Charted(vec![Charted { pose: pose?, load: load?, margin, governs }]))
    }

    fn part<'d>(&self, name: &str, table: Reader<'d>, out: &mut Vec<Read<'d>>) {
        let word = table.choice("of", &PARTS);
        let part = word.and_then(|word| {
            Some(match word {
                PartWord::Chassis => FitPart::Chassis,
                PartWord::RearAxle => FitPart::RearAxle,
                PartWord::Section => {
                    let number = table.count("number", "number = 1", 1)?;
                    FitPart::Section(usize::try_from(number - 1).unwrap_or(usize::MAX))
                }
                PartWord::Carriage => FitPart::Carriage,
                PartWord::Attachment => FitPart::Attachment(self.attachment(&table)),
            })
        });
        let range = |key: &str, dimension, bound| {
            let node = table.optional(key)?;
            let [low, high] = table.as_numbers::<2>(node, key, dimension, bound, None)?;
            Some(Between { low, high })
        };
        let mass = range("mass", Dimension::Mass, Bound::ZeroTo(HEAVIEST));
        let axes = [
            ("ahead", FitAxis::Ahead, words::FIT_WORD_AHEAD),
            ("left", FitAxis::Left, words::FIT_WORD_LEFT),
            ("up", FitAxis::Up, words::FIT_WORD_UP),
        ]
        .map(|(key, axis, word)| (range(key, Dimension::Length, Bound::Any), axis, word));
        if !["mass", "ahead", "left", "up"].iter().any(|k| table.has(k)) {
            table.missing("mass", "mass = [\"370 kg\", \"390 kg\"]");
        }
        table.done();
        let Some(part) = part else { return };
        let mut known = Vec::new();
        if let Some(mass) = mass {
            known.push((Known::Mass(part, mass), words::FIT_WORD_MASS));
        }
        for (range, axis, word) in axes {
            if let Some(range) = range {
                known.push((Known::Centre(part, axis, range), word));
            }
        }
        // One statement a range, so that a contradiction names the one that is in it.
        let table = Rc::new(table);
        for (known, word) in known {
            let name = self.wording.render(&words::FIT_PART_RANGE.with("name", name).with("what", word));
            out.push(Read { statement: Statement { name, known }, table: Rc::clone(&table) });
        }
    }

    /// What is asked.
    pub(super) fn asked(&self, root: &Reader<'_>) -> Vec<Asked> {
        let tables = root.tables("ask");
        if tables.is_empty() && !root.has("ask") {
            let hint = jobfile_example();
            root.fault("ask", words::FIT_NO_ASK.message(), Some(hint));
        }
        let one = |(i, table): (usize, Reader<'_>)| {
            let name = self.name(&table, words::FIT_WHAT_ASK, i);
            let pose = self.pose(&table, true);
            let ahead = table.decision("load_ahead", Dimension::Length, Bound::Any);
            let mass = table.decision_or_none("load", Dimension::Mass, Bound::ZeroTo(HEAVIEST));
            let up = table.decision_or_none("load_up", Dimension::Length, Bound::Any);
            let rear = table.optional("rear_axle").and_then(|n| table.as_choice(n, "rear_axle", &REAR));
            for key in ["load_up", "rear_axle"] {
                if table.has("load") && !table.has(key) {
                    table.fault("load", words::FIT_SIDE_NEEDS.with("key", key), None);
                }
            }
            table.done();
            let (pose, ahead) = (pose?, ahead?);
            if !within(self.machine, pose.boom) {
                table.fault("boom_angle", boom(self.machine), None);
            }
            if !self.machine.has(pose.support) {
                let support = planning::support_name(pose.support);
                table.fault("support", text::NO_SUCH_SUPPORT.with("support", support), None);
            }
            let side = mass.zip(up).zip(rear).map(|((kg, up), rear)| {
                let load = FitLoad { mass: Between { low: kg, high: kg }, ahead, up };
                SideAsk { pose, load, rear }
            });
            Some(Asked { name, ask: Ask { pose, ahead }, side })
        };
        tables.into_iter().enumerate().filter_map(one).collect()
    }
}

fn jobfile_example() -> Message {
    jobfile::text::HINT_EXAMPLE.with("example", "[[ask]]")
}

/// The attachment of that id, or a fault.
pub(super) fn attachment(table: &Reader<'_>, machine: &Machine, id: &str) -> Option<usize> {
    let found = machine.attachments.iter().position(|a| a.id == id);
    if found.is_none() {
        let known: Vec<_> = machine.attachments.iter().map(|a| a.id.as_str()).collect();
        let message = text::NO_ATTACHMENT.with("attachment", id).with("known", known.join(", "));
        table.fault("attachment", message, None);
    }
    found
}

fn within(machine: &Machine, at: BoomPosition) -> bool {
    let b = &machine.boom;
    let slack = 1e-9;
    at.angle >= b.angle_min.si() - slack
        && at.angle <= b.angle_max.si() + slack
        && at.extension <= b.extension_max.si() + slack
}

fn boom(machine: &Machine) -> Message {
    let b = &machine.boom;
    words::FIT_BOOM.with("low", b.angle_min).with("high", b.angle_max).with("longest", b.extension_max)
}

/// A fault of the fit, at the table of its statement.
pub(super) fn report(fault: FitFault, read: &[Read<'_>], root: &Reader<'_>, machine: &Machine) {
    let length = |si: f64| Quantity::new(si, Dimension::Length);
    let (at, key, message) = match fault {
        FitFault::Nothing => {
            root.fault("axle_loads", words::FIT_NOTHING.message(), Some(words::HINT_FIT_NOTHING.message()));
            return;
        }
        FitFault::NoSuchPart(i) => (i, "number", words::FIT_NO_PART.message()),
        FitFault::BadRange(i) => (i, "mass", words::FIT_BAD_RANGE.message()),
        FitFault::ImpossibleMass(i) => (i, "mass", words::FIT_IMPOSSIBLE_MASS.message()),
        FitFault::ImpossibleCentre(i, b, can) => {
            let message = words::FIT_IMPOSSIBLE_CENTRE
                .with("low", length(b.low))
                .with("high", length(b.high))
                .with("least", length(can.low))
                .with("most", length(can.high));
            (i, "ahead", message)
        }
        FitFault::BoomRange(i) => (i, "boom_angle", boom(machine)),
        FitFault::NoSupport(i) => {
            let support = read.get(i).map(|r| &r.statement.known);
            let support = match support {
                Some(Known::TippingTest { pose, .. }) => pose.support,
                Some(Known::Charted(points)) => points.first().map_or(SupportState::Tyres, |p| p.pose.support),
                _ => SupportState::Tyres,
            };
            (i, "support", text::NO_SUCH_SUPPORT.with("support", planning::support_name(support)))
        }
        FitFault::LoadHolds(i) => (i, "load_ahead", words::FIT_LOAD_HOLDS.message()),
        FitFault::BadPitch(i) => (i, "nose_up", words::FIT_BAD_PITCH.message()),
    };
    match read.get(at) {
        Some(read) => read.table.fault(key, message, None),
        None => root.fault("charts", message, None),
    }
}
