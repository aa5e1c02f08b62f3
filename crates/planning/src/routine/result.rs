//! What a plan keeps of a routine.

use super::area::{OfLanding, RoutineCheck, cells};
use crate::checks::kilograms;
use crate::stand_field::{FieldScene, FieldState, Reason, StandField};
use crate::{Job, Lift, text};
use evidence::{Message, Status, TextId, Verdict};
use quantity::{Dimension, Quantity};
use serde::{Deserialize, Serialize};

/// Where in its area a routine holds.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum RoutineHolds {
    /// On every cell of it, for every landing.
    Everywhere,
    /// On some.
    InPart,
    /// On none.
    Nowhere,
}

/// A routine in a plan.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub struct RoutinePlan {
    /// Short id.
    pub id: String,
    /// Name for people.
    pub name: String,
    /// Machine, for people.
    pub machine: String,
    /// Attachment, for people.
    pub attachment: String,
    /// Support state.
    pub support: machine::SupportState,
    /// Who approved it; `null`: nobody, and it allows nothing.
    pub approved_by: Option<String>,
    /// Where it holds.
    pub holds: RoutineHolds,
    /// True if it allows any lift: it holds somewhere, and somebody approved it.
    pub allows: bool,
    /// At each of its landings.
    pub landings: Vec<RoutineLandingPlan>,
    /// What it came to, in words.
    pub said: Vec<Message>,
    /// Each lift of the job, and why it is not within.
    pub lifts: Vec<RoutineLift>,
}

/// A routine at one of its landings.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub struct RoutineLandingPlan {
    /// Id of the landing.
    pub landing: String,
    /// Its name for people.
    pub name: String,
    /// Where it holds.
    pub holds: RoutineHolds,
    /// Area that was asked for, m².
    pub area_m2: f64,
    /// Area where it holds, m².
    pub holds_m2: f64,
    /// Area refused by each reason, the greatest first.
    pub why_not: Vec<RoutineRefused>,
    /// What it came to, in words.
    pub said: Message,
    /// The cells of its area; the rest counts as outside. `null` where nothing can be looked at.
    pub field: Option<FieldScene>,
}

/// Area of a routine that one reason refuses.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub struct RoutineRefused {
    /// What refuses first there. Ground steeper than the routine allows counts as not level.
    pub by: Reason,
    /// m².
    pub area_m2: f64,
}

/// A lift against a routine.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub struct RoutineLift {
    /// Id of the lift.
    pub lift: String,
    /// Every reason why it is not within; empty: it is.
    pub outside: Vec<Message>,
}

impl RoutineCheck<'_> {
    /// Where it holds: the worst of its landings, and nowhere only if that is so at all of them.
    pub fn holds(&self) -> RoutineHolds {
        let of: Vec<RoutineHolds> = self.landings.iter().map(|l| self.tally(l).holds()).collect();
        if of.is_empty() || of.iter().all(|h| *h == RoutineHolds::Nowhere) {
            RoutineHolds::Nowhere
        } else if of.iter().all(|h| *h == RoutineHolds::Everywhere) {
            RoutineHolds::Everywhere
        } else {
            RoutineHolds::InPart
        }
    }

    /// What a plan keeps, with the lifts as they are planned.
    pub fn plan(&self, job: &Job, lifts: &[Lift]) -> RoutinePlan {
        let routine = self.routine;
        let holds = self.holds();
        let unit = job.machines.get(routine.machine);
        let attachment = unit.and_then(|u| u.machine.attachment(&routine.attachment));
        RoutinePlan {
            id: routine.id.clone(),
            name: routine.name.clone(),
            machine: unit.map_or_else(String::new, |u| u.machine.name.clone()),
            attachment: attachment.map_or_else(|| routine.attachment.clone(), |a| a.name.clone()),
            support: routine.support,
            approved_by: routine.approved_by.clone(),
            holds,
            allows: routine.approved_by.is_some() && holds != RoutineHolds::Nowhere,
            landings: self.landings.iter().map(|l| self.landing_plan(job, l)).collect(),
            said: self.said(),
            lifts: lifts
                .iter()
                .map(|lift| RoutineLift { lift: lift.id.clone(), outside: self.fits(job, lift) })
                .collect(),
        }
    }

    /// Approval, loads, and what is a condition wherever it holds.
    fn said(&self) -> Vec<Message> {
        let mut out = vec![match &self.routine.approved_by {
            Some(by) => text::ROUTINE_APPROVED.with("by", by),
            None => text::ROUTINE_NOT_APPROVED.message(),
        }];
        match &self.corners {
            Some(corners) if !self.landings.is_empty() => {
                let [heaviest, _, none] = &corners.loads;
                out.push(
                    text::ROUTINE_LOADS
                        .with("empty", kilograms(none.mass_kg.high))
                        .with("lightest", kilograms(corners.lightest))
                        .with("heaviest", kilograms(heaviest.mass_kg.high)),
                );
            }
            _ => out.push(text::ROUTINE_NOT_KNOWN.message()),
        }
        let mut open: Vec<&str> = Vec::new();
        let everywhere = self.landings.iter().filter_map(|l| l.field.as_ref()).flat_map(|f| &f.everywhere);
        for (id, _) in everywhere.filter(|(_, s)| *s == Status::Condition) {
            if !open.contains(id) {
                open.push(id);
            }
        }
        for id in open {
            out.push(text::ROUTINE_CONDITIONS.with("check", crate::check_name(id).unwrap_or(text::REASON_OTHER)));
        }
        out
    }

    fn landing_plan(&self, job: &Job, of: &OfLanding) -> RoutineLandingPlan {
        let tally = self.tally(of);
        let landing = job.landings.get(of.landing);
        let area = |m2: f64| Quantity::new(m2, Dimension::Area);
        let reason = of.first_reason();
        let said = match tally.holds() {
            _ if of.field.is_none() || tally.asked == 0.0 => text::ROUTINE_NO_AREA.message(),
            RoutineHolds::Everywhere => text::ROUTINE_EVERYWHERE.with("area", area(tally.asked)),
            RoutineHolds::InPart => text::ROUTINE_IN_PART
                .with("holds", area(tally.held))
                .with("area", area(tally.asked))
                .with("reason", reason),
            RoutineHolds::Nowhere => text::ROUTINE_NOWHERE.with("area", area(tally.asked)).with("reason", reason),
        };
        let why_not = of.field.as_ref().map_or_else(Vec::new, StandField::why_not);
        RoutineLandingPlan {
            landing: landing.map_or_else(String::new, |l| l.id.clone()),
            name: landing.map_or_else(String::new, |l| l.name.clone()),
            holds: tally.holds(),
            area_m2: tally.asked,
            holds_m2: tally.held,
            why_not: why_not.into_iter().map(|(by, area_m2)| RoutineRefused { by, area_m2 }).collect(),
            said,
            field: of.field.as_ref().map(clipped),
        }
    }

    /// Areas of one landing.
    fn tally(&self, of: &OfLanding) -> Tally {
        let Some(field) = &of.field else { return Tally { asked: 0.0, held: 0.0 } };
        let one = field.grid.cell * field.grid.cell;
        let cells = cells(self.routine, &field.grid);
        let held = cells.iter().filter(|i| holds_in(field, **i)).count();
        Tally { asked: cells.len() as f64 * one, held: held as f64 * one }
    }
}

/// True where a routine holds in a cell: nothing refuses there, nor everywhere. What was not asked does not hold.
pub(super) fn holds_in(field: &StandField, i: usize) -> bool {
    field.verdict(i).is_some_and(|v| v != Verdict::NoGo)
}

impl OfLanding {
    /// What no stand can mend, else what refuses most.
    pub(super) fn first_reason(&self) -> TextId {
        let Some(field) = &self.field else { return text::REASON_EVERYWHERE };
        if let Some((id, _)) = field.everywhere.iter().find(|(_, s)| *s > Status::Condition) {
            return crate::check_name(id).unwrap_or(text::REASON_EVERYWHERE);
        }
        field.why_not().first().map_or(text::REASON_SURVEY, |(reason, _)| reason.name())
    }
}

struct Tally {
    asked: f64,
    held: f64,
}

impl Tally {
    fn holds(&self) -> RoutineHolds {
        if self.held <= 0.0 {
            RoutineHolds::Nowhere
        } else if self.held < self.asked {
            RoutineHolds::InPart
        } else {
            RoutineHolds::Everywhere
        }
    }
}

/// The field as a picture of the routine's area: what was not asked lies outside.
fn clipped(field: &StandField) -> FieldScene {
    let mut scene = FieldScene::from(field);
    for kind in scene.kinds.iter_mut().filter(|k| k.state == FieldState::NotYet) {
        kind.state = FieldState::Outside;
    }
    scene
}
