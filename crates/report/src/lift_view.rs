//! One lift as ready words and numbers.

use crate::acceptance::Accepted;
use crate::breakable::breakable;
use crate::sheet::{Fact, LONG, VerdictView, verdict_view};
use crate::working_view::{WorkingView, workings};
use evidence::{Comparison, Finding, Message, Ranged, Source, Status};
use planning::{FieldState, FoundStand, LiftPlan, text};
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
    place: Vec<Fact>,
    todo: Vec<ToDo>,
    elevation: String,
    elevation_alt: String,
    chart: String,
    chart_alt: String,
    field: String,
    field_alt: String,
    strip: String,
    strip_alt: String,
    way_in: String,
    way_in_alt: String,
    told: Vec<Fact>,
    others: Vec<[String; 4]>,
    changes: Vec<String>,
    way: Vec<Fact>,
    way_notes: Vec<String>,
    steps: Vec<String>,
    load: Vec<Fact>,
    stand: Vec<Fact>,
    wheels: Vec<[String; 4]>,
    tolerances: Vec<Fact>,
    findings: Vec<FindingView>,
    workings: Vec<WorkingView>,
    long: bool,
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
    figures: String,
    share: Option<f64>,
    reserve: String,
    long: bool,
}

/// Name of a lift's drawing on the desk.
pub(crate) fn drawing_name(index: usize, what: &str) -> String {
    format!("lift-{index}-{what}.svg")
}

/// The view of lift `index` of `lifts`.
pub(crate) fn lift_view(
    lift: &LiftPlan,
    (index, lifts): (usize, usize),
    accepted: &mut Accepted,
    wording: Wording,
) -> LiftView {
    let say = Say(wording);
    let machine = [lift.machine.as_str(), lift.attachment.as_str(), &say.support(lift)].join(" · ");
    let title = if lift.id.is_empty() { lift.name.clone() } else { format!("{}  {}", lift.id, lift.name) };
    let (elevation_alt, chart_alt) = alternatives(lift, &say);
    LiftView {
        name: breakable(&lift.name),
        subtitle: breakable(&machine),
        count: wording.render(&ui::CONTENTS_LIFT.with("number", index + 1).with("lifts", lifts)),
        verdict: verdict_view(lift.verdict, wording),
        means: wording.verdict_means(lift.verdict),
        governing: governing(lift, &say),
        load_short: format!("{}, {}", breakable(&lift.load.name), say.load(lift)),
        place: place(lift, &say),
        todo: todo(lift, &say),
        elevation: drawing_name(index, "side-view"),
        elevation_alt,
        chart: drawing_name(index, "chart"),
        chart_alt,
        field: if has_field(lift) { drawing_name(index, "stand-field") } else { String::new() },
        field_alt: field_alternative(lift, &say),
        strip: if has_strip(lift) { drawing_name(index, "boom-movement") } else { String::new() },
        strip_alt: strip_alternative(lift, &say),
        way_in: if has_way(lift) { drawing_name(index, "way-in") } else { String::new() },
        way_in_alt: format!("{}: {}", say.0.text(ui::WAY_IN), lift.name),
        told: told(lift, &say),
        others: lift.other_stands.iter().enumerate().map(|(i, s)| other_stand(i + 1, s, &say)).collect(),
        changes: lift.changes.iter().map(|m| say.message(m)).collect(),
        way: lift.way.iter().flat_map(planning::LiftWay::told).map(|f| said_fact(&f, &say)).collect(),
        way_notes: lift.way.iter().flat_map(planning::LiftWay::notes).map(|m| say.message(&m)).collect(),
        steps: lift.steps.iter().map(|s| say.message(s)).collect(),
        load: load(lift, &say),
        stand: stand(lift, &say),
        wheels: wheels(lift, &say),
        tolerances: lift.tolerances.iter().map(|t| tolerance(t, &say)).collect(),
        findings: lift.findings.iter().map(|f| finding(f, accepted, &say)).collect(),
        workings: workings(lift, &say),
        long: title.len() + machine.len() + lift.load.name.len() > LONG,
        title: breakable(&title),
    }
}

/// Shorthand over [`Wording`].
pub(crate) struct Say(pub Wording);

impl Say {
    pub(crate) fn message(&self, message: &Message) -> String {
        breakable(&self.0.render(message))
    }
    fn length(&self, metres: f64) -> String {
        self.0.quantity(Quantity::new(metres, Dimension::Length))
    }
    fn mass(&self, kg: f64) -> String {
        self.0.quantity(Quantity::new(kg, Dimension::Mass))
    }
    /// Mass of the load, and the mass that the checks counted where that is more.
    fn load(&self, lift: &LiftPlan) -> String {
        let mass = lift.load.mass_kg;
        if mass.high <= mass.nominal {
            return self.mass(mass.nominal);
        }
        let q = |kg| Quantity::new(kg, Dimension::Mass);
        self.0.render(&ui::MASS_COUNTED.with("mass", q(mass.nominal)).with("counted", q(mass.high)))
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
        self.0.text(planning::support_name(lift.support))
    }
    /// Name of a check from its stable id.
    pub(crate) fn check(&self, finding: &Finding) -> String {
        self.message(&Message { id: format!("check-{}", finding.check).into(), args: Vec::new() })
    }
    pub(crate) fn source(&self, source: &Source) -> String {
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
            kind: sign(f.status),
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

/// True if there is a picture of the ground by what a stand there would give.
pub(crate) fn has_field(lift: &LiftPlan) -> bool {
    lift.field.is_some() && lift.plan_view.is_some()
}

/// True if there is a picture of the boom's movement.
pub(crate) fn has_strip(lift: &LiftPlan) -> bool {
    lift.movement.as_ref().is_some_and(|m| !m.steps.is_empty())
}

/// True if there is a picture of the way to the stand, or of why there is none.
pub(crate) fn has_way(lift: &LiftPlan) -> bool {
    lift.way.is_some()
}

fn field_alternative(lift: &LiftPlan, say: &Say) -> String {
    let Some(field) = &lift.field else { return say.0.text(ui::FIELD_NOT_LOOKED) };
    let area = |state| Quantity::new(field.area_m2(state), Dimension::Area);
    say.0.render(
        &ui::STAND_FIELD_ALT
            .with("lift", lift.name.as_str())
            .with("go", area(FieldState::Go))
            .with("condition", area(FieldState::Condition))
            .with("others", lift.other_stands.len()),
    )
}

fn strip_alternative(lift: &LiftPlan, say: &Say) -> String {
    let Some(movement) = &lift.movement else { return say.0.text(ui::STRIP_NONE) };
    say.0.render(&ui::STRIP_ALT.with("lift", lift.name.as_str()).with("steps", movement.steps.len()))
}

/// Whether the stand was stated or found, and how far off it may be; nothing for a lift that is refused.
fn told(lift: &LiftPlan, say: &Say) -> Vec<Fact> {
    let off = lift.stand_off_told();
    let from = (!off.is_empty()).then(|| say.fact(ui::STAND_FROM, say.message(&lift.stand_from_told())));
    from.into_iter().chain(off.iter().map(|f| said_fact(f, say))).collect()
}

/// Number, place with heading, verdict with what governs, how far off it may be.
fn other_stand(number: usize, stand: &FoundStand, say: &Say) -> [String; 4] {
    let length = |m: f64| Quantity::new(m, Dimension::Length);
    let at = ui::OTHER_AT.with("east", length(stand.east_m)).with("north", length(stand.north_m));
    let heading = ui::HEADING_COMPASS
        .with("heading", quantity::degrees(stand.heading_deg))
        .with("compass", compass(stand.heading_deg));
    let check = say.0.check(&stand.governing);
    let governs = match stand.reserve {
        Some(reserve) => ui::OTHER_GOVERNS_LEFT.with("check", check).with("reserve", say.0.reserve(reserve)),
        None => ui::OTHER_GOVERNS.with("check", check),
    };
    let turn = Quantity::new(stand.tolerance.turn_rad, Dimension::Angle);
    let off = ui::STAND_OFF_BY.with("disc", length(stand.tolerance.disc_m)).with("turn", turn);
    let at = say.message(&at.with("heading", heading));
    let worth = format!("{}: {}", say.0.verdict(stand.verdict), say.message(&governs));
    [number.to_string(), at, worth, say.message(&off)]
}

fn said_fact([name, value]: &planning::Fact, say: &Say) -> Fact {
    Fact { name: say.message(name), value: say.message(value) }
}

/// The sign of a status: one shape each, on paper as on screen.
fn sign(status: Status) -> &'static str {
    match status {
        Status::Go => "go",
        Status::Condition => "conditions",
        Status::CannotTell => "cannot-tell",
        Status::NoGo => "no-go",
        Status::Stop => "stop",
    }
}

/// Offset from the landing's middle below which the boom is in line with it, m.
const IN_LINE: f64 = 0.005;

/// Where the operator puts the machine, by what is seen on site: from tyres to landing, aim, compass.
fn place(lift: &LiftPlan, say: &Say) -> Vec<Fact> {
    let s = &lift.stand;
    let q = |m: f64| Quantity::new(m.abs(), Dimension::Length);
    let task = match lift.task {
        planning::Task::SetDown => ui::TASK_SET_DOWN,
        planning::Task::PickUp => ui::TASK_PICK_UP,
    };
    let tyres = if s.face_to_landing_m >= 0.0 { ui::FROM_LANDING } else { ui::PAST_LANDING };
    let aim = if s.passes_left_m.abs() < IN_LINE {
        ui::AIM_MIDDLE.message()
    } else {
        let side = if s.passes_left_m > 0.0 { ui::AIM_LEFT } else { ui::AIM_RIGHT };
        side.with("distance", q(s.passes_left_m))
    };
    let heading = quantity::degrees(s.heading_deg);
    let heading = ui::HEADING_COMPASS.with("heading", heading).with("compass", compass(s.heading_deg));
    let at = ui::EAST_NORTH
        .with("east", Quantity::new(s.east_m, Dimension::Length))
        .with("north", Quantity::new(s.north_m, Dimension::Length));
    vec![
        say.fact(task, breakable(&lift.landing)),
        say.fact(ui::LOAD, format!("{}, {}", breakable(&lift.load.name), say.load(lift))),
        say.fact(ui::FRONT_TYRES, say.message(&tyres.with("distance", q(s.face_to_landing_m)))),
        say.fact(ui::AIM, say.message(&aim)),
        say.fact(ui::HEADING, say.message(&heading)),
        say.fact(ui::POSITION, say.message(&at)),
    ]
}

/// Compass word of a heading, degrees clockwise from north.
fn compass(heading_deg: f64) -> evidence::TextId {
    const WORDS: [evidence::TextId; 8] = [
        ui::COMPASS_NORTH,
        ui::COMPASS_NORTH_EAST,
        ui::COMPASS_EAST,
        ui::COMPASS_SOUTH_EAST,
        ui::COMPASS_SOUTH,
        ui::COMPASS_SOUTH_WEST,
        ui::COMPASS_WEST,
        ui::COMPASS_NORTH_WEST,
    ];
    WORDS[(heading_deg.rem_euclid(360.0) / 45.0).round() as usize % 8]
}

fn load(lift: &LiftPlan, say: &Say) -> Vec<Fact> {
    let load = &lift.load;
    let mass = format!("{}, {}", say.ranged(load.mass_kg, Dimension::Mass), say.0.certainty(load.certainty));
    let size = load.size_m.map(|v| say.length(v)).join(" × ");
    let centre = say.ranged(load.centre_ahead_m, Dimension::Length);
    vec![say.fact(ui::MASS, mass), say.fact(ui::LOAD_CENTRE, centre), say.fact(ui::SIZE, size)]
}

fn stand(lift: &LiftPlan, say: &Say) -> Vec<Fact> {
    let s = &lift.stand;
    let slope = |r: Option<Ranged>| r.map_or_else(|| say.0.text(ui::NOT_KNOWN), |r| say.ranged(r, Dimension::Slope));
    let wheels = s.wheel_heights_m.map(|h| say.or_not_known(h, Dimension::Length));
    let names = [text::WHEEL_FRONT_LEFT, text::WHEEL_FRONT_RIGHT, text::WHEEL_REAR_LEFT, text::WHEEL_REAR_RIGHT]
        .map(|id| say.0.text(id));
    let heights = names.iter().zip(&wheels).map(|(n, h)| format!("{n} {h}")).collect::<Vec<_>>().join("; ");
    let mut facts = vec![
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

/// What grows, and how much of it is borne.
fn tolerance(tolerance: &planning::Tolerance, say: &Say) -> Fact {
    said_fact(&tolerance.fact(), say)
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

/// "needs 4.85 m, has 20.48 m" or "asks 1,295 kg, may be 2,250 kg"; empty without both numbers.
fn figures(f: &Finding, say: &Say) -> String {
    let (Some(demand), Some(limit)) = (f.demand, f.limit) else { return String::new() };
    say.message(&match f.comparison {
        Some(Comparison::AtLeast) => ui::NEEDS_HAS.with("required", demand).with("there", limit),
        Some(Comparison::AtMost) | None => ui::ASKS_MAY.with("demand", demand).with("limit", limit),
    })
}

fn finding(f: &Finding, accepted: &mut Accepted, say: &Say) -> FindingView {
    let (share, reserve) = reserve(f, say);
    let whole = say.message(&f.message);
    // A statement that a person gave stands once in the document; here is its number.
    let text = match accepted.number(f, say) {
        Some(number) => say.message(&ui::ACCEPTED_SEE.with("number", number)),
        None => whole.clone(),
    };
    FindingView {
        check: say.check(f),
        kind: sign(f.status),
        status: say.0.status(f.status),
        long: text.len() > LONG,
        text,
        remedies: f.remedies.iter().map(|m| say.message(m)).collect(),
        sources: f.sources.iter().filter(|s| !said(s, &whole)).map(|s| say.source(s)).collect(),
        figures: figures(f, say),
        share,
        reserve,
    }
}

/// True if a sentence already says who stated it and what.
fn said(source: &Source, sentence: &str) -> bool {
    match source {
        Source::Person { name, statement } => {
            let has = |part: &str| part.trim().is_empty() || sentence.contains(&breakable(part));
            has(name) && has(statement)
        }
        _ => false,
    }
}
