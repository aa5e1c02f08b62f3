//! One lift as ready words and numbers.

use crate::breakable::breakable;
use crate::sheet::{Fact, LONG, VerdictView, kind, verdict_view};
use evidence::{Finding, Message, Ranged, Source, Status, Verdict, Working};
use planning::{LiftPlan, text};
use quantity::{Dimension, Quantity};
use serde::Serialize;
use wording::{Wording, ui};

/// A lift, as the template reads it.
#[derive(Serialize)]
#[serde(rename_all = "kebab-case")]
pub(crate) struct LiftView {
    name: String,
    title: String,
    subtitle: String,
    count: String,
    verdict: VerdictView,
    means: String,
    governing: Sentence,
    load_short: String,
    todo: Vec<ToDo>,
    elevation: String,
    elevation_alt: String,
    chart: String,
    chart_alt: String,
    steps: Vec<String>,
    load: Vec<Fact>,
    stand: Vec<Fact>,
    wheels: Vec<[String; 4]>,
    findings: Vec<FindingView>,
    workings: Vec<WorkingView>,
    long: bool,
    /// True where what to do fills the first page, so that the drawing goes to the next.
    crowded: bool,
}

/// A finding's sentence with its reserve.
#[derive(Serialize)]
struct Sentence {
    text: String,
    share: Option<f64>,
    reserve: String,
}

#[derive(Serialize)]
struct ToDo {
    kind: &'static str,
    check: String,
    text: String,
}

#[derive(Serialize)]
struct FindingView {
    check: String,
    kind: &'static str,
    status: String,
    text: String,
    remedies: Vec<String>,
    sources: Vec<String>,
    demand: String,
    limit: String,
    share: Option<f64>,
    reserve: String,
    long: bool,
}

#[derive(Serialize)]
struct WorkingView {
    check: String,
    steps: Vec<StepView>,
}

#[derive(Serialize)]
struct StepView {
    title: String,
    formula: String,
    values: Vec<String>,
    result: String,
    source: String,
}

/// Name of a lift's drawing on the desk.
pub(crate) fn drawing_name(index: usize, what: &str) -> String {
    format!("lift-{index}-{what}.svg")
}

/// The view of lift `index` of `lifts`.
pub(crate) fn lift_view(lift: &LiftPlan, index: usize, lifts: usize, wording: Wording) -> LiftView {
    let say = Say(wording);
    let machine = [lift.machine.as_str(), lift.attachment.as_str(), &say.support(lift)].join(" · ");
    let title = if lift.id.is_empty() { lift.name.clone() } else { format!("{}  {}", lift.id, lift.name) };
    let (elevation_alt, chart_alt) = alternatives(lift, &say);
    let todo = todo(lift, &say);
    // About 105 characters a line.
    let lines: usize = todo.iter().map(|t| 1 + (t.check.len() + t.text.len()) / 105).sum();
    LiftView {
        name: breakable(&lift.name),
        subtitle: breakable(&machine),
        count: wording.render(&ui::CONTENTS_LIFT.with("number", index + 1).with("lifts", lifts)),
        verdict: verdict_view(lift.verdict, wording),
        means: wording.verdict_means(lift.verdict),
        governing: governing(lift, &say),
        load_short: format!("{}, {}", breakable(&lift.load.name), say.mass(lift.load.mass_kg.nominal)),
        crowded: lines > 7,
        todo,
        elevation: drawing_name(index, "side-view"),
        elevation_alt,
        chart: drawing_name(index, "chart"),
        chart_alt,
        steps: lift.steps.iter().map(|s| say.message(s)).collect(),
        load: load(lift, &say),
        stand: stand(lift, &say),
        wheels: wheels(lift, &say),
        findings: lift.findings.iter().map(|f| finding(f, &say)).collect(),
        workings: lift.findings.iter().filter_map(|f| working(f, &say)).collect(),
        long: title.len() + machine.len() + lift.load.name.len() > LONG,
        title: breakable(&title),
    }
}

struct Say(Wording);

impl Say {
    fn message(&self, message: &Message) -> String {
        breakable(&self.0.render(message))
    }
    fn length(&self, metres: f64) -> String {
        self.0.quantity(Quantity::new(metres, Dimension::Length))
    }
    fn mass(&self, kg: f64) -> String {
        self.0.quantity(Quantity::new(kg, Dimension::Mass))
    }
    fn or_not_known(&self, value: Option<f64>, dimension: Dimension) -> String {
        value.map_or_else(|| self.0.text(ui::NOT_KNOWN), |v| self.0.quantity(Quantity::new(v, dimension)))
    }
    /// "1,850 kg (1,665 kg to 2,035 kg)", or the value alone where it is exact.
    fn ranged(&self, range: Ranged, dimension: Dimension) -> String {
        let q = |v| Quantity::new(v, dimension);
        if range.low == range.high {
            return self.0.quantity(q(range.nominal));
        }
        let message = ui::FROM_TO.with("value", q(range.nominal)).with("low", q(range.low)).with("high", q(range.high));
        self.0.render(&message)
    }
    fn support(&self, lift: &LiftPlan) -> String {
        self.0.text(match lift.support {
            machine::SupportState::Tyres => text::SUPPORT_TYRES,
            machine::SupportState::Stabilizers => text::SUPPORT_STABILIZERS,
        })
    }
    /// Name of a check from its stable id.
    fn check(&self, finding: &Finding) -> String {
        self.message(&Message { id: format!("check-{}", finding.check).into(), args: Vec::new() })
    }
    fn source(&self, source: &Source) -> String {
        breakable(&self.0.source(source))
    }
    fn fact(&self, id: evidence::TextId, value: String) -> Fact {
        Fact { name: self.0.text(id), value }
    }
}

fn governing(lift: &LiftPlan, say: &Say) -> Sentence {
    let Some(finding) = lift.governing_finding() else {
        return Sentence { text: say.0.verdict_means(lift.verdict), share: None, reserve: String::new() };
    };
    let (share, reserve) = reserve(finding, say);
    Sentence { text: format!("{}: {}", say.check(finding), say.message(&finding.message)), share, reserve }
}

fn reserve(finding: &Finding, say: &Say) -> (Option<f64>, String) {
    let share = finding.reserve.filter(|r| r.is_finite());
    // A bar beyond ten times the limit shows no more than one at ten.
    (share.map(|r| r.clamp(-9.0, 1.0)), share.map_or_else(String::new, |r| say.0.reserve(r)))
}

/// What stands between this lift and "go", worst first.
fn todo(lift: &LiftPlan, say: &Say) -> Vec<ToDo> {
    let mut open: Vec<&Finding> =
        lift.findings.iter().filter(|f| f.status != Status::Go && !f.remedies.is_empty()).collect();
    open.sort_by_key(|f| std::cmp::Reverse(f.status));
    open.into_iter()
        .map(|f| ToDo {
            kind: kind(Verdict::from(f.status)),
            check: say.check(f),
            text: f.remedies.iter().map(|m| say.message(m)).collect::<Vec<_>>().join(" "),
        })
        .collect()
}

fn alternatives(lift: &LiftPlan, say: &Say) -> (String, String) {
    let length = |v: Option<f64>| Quantity::new(v.unwrap_or(f64::NAN), Dimension::Length);
    let (reach, height) = (length(lift.stand.reach_m), length(lift.stand.height_m));
    let elevation = ui::SIDE_VIEW_ALT.with("lift", lift.name.as_str()).with("reach", reach).with("height", height);
    let capacity = lift.chart.as_ref().and_then(drawing::chart_capacity_kg);
    let capacity = Quantity::new(capacity.unwrap_or(f64::NAN), Dimension::Mass);
    let chart = ui::LOAD_CHART_ALT
        .with("lift", lift.name.as_str())
        .with("reach", reach)
        .with("height", height)
        .with("capacity", capacity);
    let or = |there: bool, message: Message, id: evidence::TextId| {
        if there { say.0.render(&message) } else { say.0.text(id) }
    };
    (or(lift.elevation.is_some(), elevation, ui::NOT_POSED), or(lift.chart.is_some(), chart, ui::NO_CHART))
}

fn load(lift: &LiftPlan, say: &Say) -> Vec<Fact> {
    let load = &lift.load;
    let mass = format!("{}, {}", say.ranged(load.mass_kg, Dimension::Mass), say.0.certainty(load.certainty));
    let size = load.size_m.map(|v| say.length(v)).join(" × ");
    let centre = say.ranged(load.centre_ahead_m, Dimension::Length);
    let place = match lift.task {
        planning::Task::SetDown => ui::LANDING,
        planning::Task::PickUp => ui::PICK_UP,
    };
    vec![
        say.fact(ui::NAME, breakable(&load.name)),
        say.fact(ui::MASS, mass),
        say.fact(ui::LOAD_CENTRE, centre),
        say.fact(ui::SIZE, size),
        say.fact(place, breakable(&lift.landing)),
    ]
}

fn stand(lift: &LiftPlan, say: &Say) -> Vec<Fact> {
    let s = &lift.stand;
    let at = ui::EAST_NORTH
        .with("east", Quantity::new(s.east_m, Dimension::Length))
        .with("north", Quantity::new(s.north_m, Dimension::Length));
    let slope = |r: Option<Ranged>| r.map_or_else(|| say.0.text(ui::NOT_KNOWN), |r| say.ranged(r, Dimension::Slope));
    let wheels = s.wheel_heights_m.map(|h| say.or_not_known(h, Dimension::Length));
    let sides =
        |a: evidence::TextId, b: evidence::TextId| format!("{} {}", say.0.text(a), say.0.text(b).to_lowercase());
    let names = [
        sides(text::SIDE_FRONT, text::SIDE_LEFT),
        sides(text::SIDE_FRONT, text::SIDE_RIGHT),
        sides(text::SIDE_REAR, text::SIDE_LEFT),
        sides(text::SIDE_REAR, text::SIDE_RIGHT),
    ];
    let heights = names.iter().zip(&wheels).map(|(n, h)| format!("{n} {h}")).collect::<Vec<_>>().join("; ");
    let mut facts = vec![
        say.fact(ui::POSITION, say.message(&at)),
        say.fact(ui::HEADING, say.0.quantity(quantity::degrees(s.heading_deg))),
        say.fact(ui::WHEEL_HEIGHTS, heights),
        say.fact(ui::SLOPE_ALONG, slope(s.slope_along)),
        say.fact(ui::SLOPE_ACROSS, slope(s.slope_across)),
        say.fact(ui::REACH, say.or_not_known(s.reach_m, Dimension::Length)),
        say.fact(ui::LIFT_HEIGHT, say.or_not_known(s.height_m, Dimension::Length)),
        say.fact(ui::BOOM_ANGLE, say.or_not_known(s.boom_angle_rad, Dimension::Angle)),
        say.fact(ui::EXTENSION, say.or_not_known(s.extension_m, Dimension::Length)),
    ];
    let ground = s.ground.as_ref().map_or_else(|| say.0.text(ui::NOT_KNOWN), |g| breakable(g));
    facts.push(say.fact(ui::GROUND_FILE, ground));
    facts
}

fn wheels(lift: &LiftPlan, say: &Say) -> Vec<[String; 4]> {
    lift.wheels
        .iter()
        .map(|w| {
            [
                say.message(&w.name),
                say.0.quantity(Quantity::new(w.force_n, Dimension::Force)),
                say.or_not_known(w.pressure_pa, Dimension::Pressure),
                say.or_not_known(w.area_m2, Dimension::Area),
            ]
        })
        .collect()
}

fn finding(f: &Finding, say: &Say) -> FindingView {
    let quantity = |q: Option<Quantity>| q.map_or_else(String::new, |q| say.0.quantity(q));
    let (share, reserve) = reserve(f, say);
    let text = say.message(&f.message);
    FindingView {
        check: say.check(f),
        kind: kind(Verdict::from(f.status)),
        status: say.0.status(f.status),
        long: text.len() > LONG,
        text,
        remedies: f.remedies.iter().map(|m| say.message(m)).collect(),
        sources: f.sources.iter().map(|s| say.source(s)).collect(),
        demand: quantity(f.demand),
        limit: quantity(f.limit),
        share,
        reserve,
    }
}

fn working(f: &Finding, say: &Say) -> Option<WorkingView> {
    let Working { steps } = f.working.as_ref()?;
    if steps.is_empty() {
        return None;
    }
    let equal = |name: &str, q: Quantity| format!("{name}\u{a0}=\u{a0}{}", say.0.quantity(q));
    Some(WorkingView {
        check: say.check(f),
        steps: steps
            .iter()
            .map(|s| StepView {
                title: say.message(&s.title),
                formula: s.formula.to_string(),
                values: s.values.iter().map(|(name, q)| equal(name, *q)).collect(),
                result: equal(&s.result.0, s.result.1),
                source: say.source(&s.source),
            })
            .collect(),
    })
}
