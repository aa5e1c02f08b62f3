//! `calc fit`: what plate, weighings, charts and tests say of a machine of which only part is known.

use super::fit_input::{Asked, Read, Reading, attachment, report};
use super::fit_text;
use super::input::Input;
use super::text as words;
use crate::args::Said;
use crate::failure::Failure;
use crate::{Outcome, Run, terminal};
use jobfile::Bound;
use machine::{AttachmentKind, kinematics};
use quantity::Dimension;
use serde::{Deserialize, Serialize};
use stability::fit::{Answer, Fit, Measurement, NotIdentifiable, RowOf, Statement, Weighing, charted_zones};

pub(crate) const EXAMPLE: &str = r#"# Bounds of the tipping load of a machine of which only part is known.
# The machine file gives the geometry and the charts; masses and centres in it
# are not looked at.
machine = "validation/machines/r1.toml"   # relative to this file
attachment = "forks"         # where a statement names no other
boom_sections = "known"      # or "unknown": how sections share the extension
charts = "leave"             # "count": no charted capacity of the machine file
#                              tips it
# charts_factor = 1.33       # only if the maker states it: so many times each
#                              charted capacity does not tip it
weighing = "1 %"             # uncertainty of what you could measure next

# As many statements of each kind as there are. Forks level. A name of your own
# is used in the answer.
[[axle_loads]]
name = "weighbridge, boom in"
boom_angle = "0°"
extension = "0 m"
front = "6860 kg"            # one of both may be left out
rear = "5740 kg"
uncertainty = "1 %"
# load = "1500 kg"           # a load on the forks meanwhile, with
#                              load_uncertainty, load_ahead, load_up
# nose_up = "10°"            # one axle raised, every wheel on a level scale:
#                              this tells heights

[[axle_loads]]
name = "weighbridge, boom half out"
boom_angle = "0°"
extension = "3.50 m"
front = "8150 kg"
rear = "4450 kg"
uncertainty = "1 %"

[[total]]
name = "operating mass in the manual"
mass = "12600 kg"
uncertainty = "2 %"

[[part]]
name = "plate on the forks"
of = "attachment"            # "chassis", "rear-axle", "carriage", or "section"
#                              with number = 1
mass = ["370 kg", "390 kg"]  # and ahead, left, up: where its centre lies

[[charted]]
name = "chart at the far end"
boom_angle = "0°"
extension = "6.00 m"
support = "tyres"
capacity = "800 kg"
load_ahead = "0.61 m"
# factor = 1.33              # only if the maker states the margin; or
#                              slope = "7 %" of ground falling ahead
# governs = true             # only if the maker states that stability governs
#                              there, with rounded_to = "50 kg"

# [[tipping_test]]           # boom_angle, extension, support, load, load_ahead,
#                              uncertainty

[[ask]]
name = "over the scaffold"
boom_angle = "30°"
extension = "5.00 m"
support = "tyres"
load_ahead = "0.61 m"
# load = "800 kg"            # with load_up and rear_axle: tilt sideways too
"#;

/// Answer of the calculation. SI; angles in degrees, as their names say.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct FitResult {
    /// How each measured value fits in the machine that fits best.
    pub(crate) residuals: Vec<FitResidual>,
    /// What was asked.
    pub(crate) asked: Vec<FitAsked>,
}

/// A measured value.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct FitResidual {
    /// Name of the statement.
    pub(crate) statement: String,
    /// Which of its values.
    pub(crate) of: FitValue,
    /// As stated, what a load on the boom adds left out, kg.
    pub(crate) stated_kg: f64,
    /// In the machine that fits best, kg.
    pub(crate) fitted_kg: f64,
    /// Difference as a share of the stated uncertainty: at most 1.
    pub(crate) share_of_uncertainty: f64,
}

/// Which value.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub(crate) enum FitValue {
    /// Front axle load.
    FrontAxle,
    /// Rear axle load.
    RearAxle,
    /// Load at which it tips.
    TippingLoad,
    /// Mass of the whole.
    Total,
    /// Another.
    Other,
}

/// Answer for a place.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct FitAsked {
    /// Its name.
    pub(crate) name: String,
    /// From the front face of the front tyres to the load's centre, m.
    pub(crate) reach_m: f64,
    /// Height of the fork top or hook above level ground, m.
    pub(crate) lift_height_m: f64,
    /// False: a load there is not ahead of the front line and tips nothing forward.
    pub(crate) tips_forward: bool,
    /// Level forward tipping load, at least, kg; 0: it may tip without load.
    pub(crate) lower_kg: f64,
    /// At most, kg; `null`: nothing stated bounds it.
    pub(crate) upper_kg: Option<f64>,
    /// Half way between, kg: an estimate, no bound.
    pub(crate) middle_kg: Option<f64>,
    /// With a load asked: tilt of the ground at which it tips to a side, worst direction, degrees: at least and at
    /// most; `null`: not asked or not identifiable.
    pub(crate) side_tilt_deg: Option<[f64; 2]>,
    /// Why the tilt sideways is not identifiable; empty: it is, or it was not asked.
    pub(crate) not_identifiable: Vec<FitUnknown>,
    /// What to measure next, what narrows most first.
    pub(crate) measure_next: Vec<FitNext>,
}

/// What is not identifiable.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub(crate) enum FitUnknown {
    /// The height of the chassis' centre: needs a weighing with one axle raised, or a range.
    Height,
    /// Where it lies sideways: needs a range.
    Sideways,
}

/// A measurement.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct FitNext {
    /// What.
    pub(crate) measure: FitMeasure,
    /// Boom angle, degrees, where it matters.
    pub(crate) boom_angle_deg: Option<f64>,
    /// Extension, m.
    pub(crate) extension_m: Option<f64>,
    /// What it would leave between the bounds, kg; `null`: it would not bound them.
    pub(crate) leaves_kg: Option<f64>,
}

/// Kinds of measurement.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub(crate) enum FitMeasure {
    /// Both axle loads, level, without load.
    AxleLoads,
    /// A tipping test by the maker or with a competent person.
    TippingTest,
    /// Weigh the attachment.
    Attachment,
}

const SECTIONS: [(&str, bool); 2] = [("known", true), ("unknown", false)];
const CHARTS: [(&str, bool); 2] = [("leave", false), ("count", true)];

pub(crate) fn run(input: &Input, said: Said) -> Run {
    let root = input.document.root();
    let file = root.text("machine", "machine = \"machine.toml\"");
    let id = root.text("attachment", "attachment = \"forks\"");
    let sections = root.optional("boom_sections").and_then(|n| root.as_choice(n, "boom_sections", &SECTIONS));
    let charts = root.optional("charts").and_then(|n| root.as_choice(n, "charts", &CHARTS)).unwrap_or(false);
    let factor = root.decision_or_none("charts_factor", Dimension::Number, Bound::Within(1.0, 10.0)).unwrap_or(1.0);
    let weighing = root.decision_or_none("weighing", Dimension::Ratio, Bound::UpTo(0.5)).unwrap_or(0.01);
    let failure = || input.faults(said).unwrap_or_else(|| Failure::new(input.document.faults(), said));
    let (Some(file), Some(id)) = (file, id) else {
        return Err(failure());
    };
    let machine = input.machine(&file, said)?;
    let usual = attachment(&root, &machine, &id).unwrap_or(0);
    let w = said.wording();
    let reading = Reading { machine: &machine, attachment: usual, wording: w };
    let read = reading.statements(&root);
    let asked = reading.asked(&root);
    root.done();
    if let Some(failure) = input.faults(said) {
        return Err(failure);
    }
    let mut statements: Vec<Statement> = read.iter().map(|r| r.statement.clone()).collect();
    for chart in machine.charts.iter().filter(|_| charts) {
        let name =
            |zone: &str| w.render(&words::FIT_ZONE.with("attachment", chart.attachment.as_str()).with("zone", zone));
        statements.extend(charted_zones(&machine, chart, factor, name));
    }
    let fit = match Fit::new(&machine, sections.unwrap_or(true), statements) {
        Ok(fit) => fit,
        Err(faults) => {
            for fault in faults {
                report(fault, &read, &root, &machine);
            }
            return Err(failure());
        }
    };
    let solved = residuals(&fit).and_then(|residuals| {
        let asked = asked.iter().map(|a| answer(&fit, a, Weighing { share: weighing }, &machine));
        Ok(FitResult { residuals, asked: asked.collect::<Result<_, _>>()? })
    });
    match solved {
        Ok(result) => {
            if said.json() {
                terminal::print_json(&result);
            } else {
                fit_text::print(&result, &asked, w);
            }
            Ok(Outcome::Done)
        }
        Err(contradicting) => {
            unsolved(&fit, &contradicting, &read, &root);
            Err(failure())
        }
    }
}

/// Statements that contradict each other; empty where the search did not end.
type Contradicting = Vec<usize>;

fn known<T>(answer: Answer<T>) -> Result<T, Contradicting> {
    match answer {
        Answer::Known(value) => Ok(value),
        Answer::Contradiction(places) => Err(places),
        Answer::CannotTell => Err(Vec::new()),
    }
}

fn unsolved(fit: &Fit<'_>, places: &[usize], read: &[Read<'_>], root: &jobfile::Reader<'_>) {
    let message = if places.is_empty() {
        words::FIT_CANNOT_TELL.message()
    } else {
        let names: Vec<_> = places.iter().map(|i| format!("“{}”", fit.statements()[*i].name)).collect();
        words::FIT_CONTRADICTION.with("names", names.join(", "))
    };
    let hint = (!places.is_empty()).then(|| words::HINT_FIT_CONTRADICTION.message());
    match places.first().and_then(|i| read.get(*i)) {
        Some(read) => read.table.fault("name", message, hint),
        None => root.fault("machine", message, hint),
    }
}

fn residuals(fit: &Fit<'_>) -> Result<Vec<FitResidual>, Contradicting> {
    let of = |row| match row {
        RowOf::FrontAxle => FitValue::FrontAxle,
        RowOf::RearAxle => FitValue::RearAxle,
        RowOf::TippingLoad => FitValue::TippingLoad,
        RowOf::Total => FitValue::Total,
        RowOf::Other => FitValue::Other,
    };
    let all = known(fit.residuals())?;
    Ok(all
        .into_iter()
        .map(|r| FitResidual {
            statement: fit.statements()[r.statement].name.clone(),
            of: of(r.of),
            stated_kg: r.stated,
            fitted_kg: r.fitted,
            share_of_uncertainty: r.share,
        })
        .collect())
}

fn answer(
    fit: &Fit<'_>,
    asked: &Asked,
    weighing: Weighing,
    machine: &machine::Machine,
) -> Result<FitAsked, Contradicting> {
    let ask = asked.ask;
    let bounds = known(fit.tipping(ask))?;
    let unknown = if asked.side.is_some() { fit.side_unknown() } else { Vec::new() };
    let side = match asked.side.filter(|_| unknown.is_empty()) {
        Some(side) => Some(known(fit.side_tilt(side))?),
        None => None,
    };
    let attachment = &machine.attachments[ask.pose.attachment];
    let tool = kinematics::tool_point(&machine.boom, attachment, ask.pose.boom);
    let hook = matches!(attachment.kind, AttachmentKind::Jib(_));
    let next = known(fit.next(ask, weighing))?;
    Ok(FitAsked {
        name: asked.name.clone(),
        reach_m: tool.x + if hook { 0.0 } else { ask.ahead } - machine.front_face(),
        lift_height_m: tool.z,
        tips_forward: bounds.is_some(),
        lower_kg: bounds.map_or(0.0, |b| b.lower),
        upper_kg: bounds.and_then(|b| b.upper),
        middle_kg: bounds.and_then(|b| b.middle()),
        side_tilt_deg: side.map(|(least, most)| [least.to_degrees(), most.to_degrees()]),
        not_identifiable: unknown
            .into_iter()
            .map(|u| match u {
                NotIdentifiable::Height => FitUnknown::Height,
                NotIdentifiable::Sideways => FitUnknown::Sideways,
            })
            .collect(),
        measure_next: next
            .into_iter()
            .map(|n| {
                let (measure, boom) = match n.measurement {
                    Measurement::AxleLoads(boom) => (FitMeasure::AxleLoads, Some(boom)),
                    Measurement::TippingTest(boom) => (FitMeasure::TippingTest, Some(boom)),
                    Measurement::Attachment => (FitMeasure::Attachment, None),
                };
                FitNext {
                    measure,
                    boom_angle_deg: boom.map(|b| b.angle.to_degrees()),
                    extension_m: boom.map(|b| b.extension),
                    leaves_kg: n.width.is_finite().then_some(n.width),
                }
            })
            .collect(),
    })
}
