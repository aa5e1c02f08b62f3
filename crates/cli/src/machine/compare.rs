//! `machine compare`: two machines side by side, and which lifts more where.

use super::explain::empty;
use super::said_charts::support;
use super::{compare_text, text};
use crate::args::CompareArgs;
use crate::check::{argument, read_machine};
use crate::failure::Failure;
use crate::{Outcome, Run, terminal};
use evidence::{Fault, Faults, Message, Place, Severity, TextId};
use jobfile::schema_words as field;
use machine::{AttachmentKind, Chart, Machine, SupportState};
use planning::{DistanceQuestion, MeasuredFrom, MeasuredTo, distance_check};
use quantity::{Dimension, Quantity, Si, UnitSystem};
use serde::{Deserialize, Serialize};
use wording::Wording;

/// Two machines side by side. SI.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct Comparison {
    /// Names of the machines, A and B.
    pub(crate) names: (String, String),
    /// Dimensions and masses.
    pub(crate) dimensions: Vec<Pair>,
    /// Capacities on plates.
    pub(crate) capacities: Vec<Pair>,
    /// Charts with forks, for each support state that both machines have one for.
    pub(crate) charts: Vec<ChartsCompared>,
    /// Where nothing can be compared, and why.
    pub(crate) not_comparable: Vec<String>,
}

/// A value of both machines.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct Pair {
    /// What it is.
    pub(crate) what: String,
    /// Of A; `null`: it has none.
    pub(crate) a: Option<Quantity>,
    /// Of B; `null`: it has none.
    pub(crate) b: Option<Quantity>,
}

/// The charts of both machines with forks in one support state.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct ChartsCompared {
    /// What the machines stand on.
    pub(crate) support: SupportState,
    /// Distance of the load's centre from the fork face for which both were read, m.
    pub(crate) load_centre_m: f64,
    /// In what the charts do not measure alike.
    pub(crate) differences: Vec<String>,
    /// Greatest loads at the places asked for.
    pub(crate) at: Vec<AtPlace>,
    /// Greatest loads over a grid of places.
    pub(crate) grid: Vec<AtPlace>,
}

/// Greatest loads at a place: reach from the front face of the front tyres to the load's centre, and
/// height of the fork top.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct AtPlace {
    /// Reach, m.
    pub(crate) reach_m: f64,
    /// Height, m.
    pub(crate) height_m: f64,
    /// Of A, kg; `null`: not permitted there.
    pub(crate) a_kg: Option<f64>,
    /// Of B, kg; `null`: not permitted there.
    pub(crate) b_kg: Option<f64>,
}

/// Most columns and rows of a grid.
const MOST: f64 = 15.0;

pub(super) fn run(args: &CompareArgs) -> Run {
    let said = args.said;
    let (a, b) = both(args)?;
    let mut faults = Faults::default();
    let places: Vec<(f64, f64)> = args.at.iter().filter_map(|at| place(&mut faults, at)).collect();
    let centre = args.load_centre.as_ref().map(|c| argument(&mut faults, "--load-centre", c, Dimension::Length));
    if faults.any_error() {
        return Err(Failure::new(faults, said));
    }
    let comparison = Comparison::new(&a, &b, &places, centre, said.wording());
    if said.json() {
        terminal::print_json(&comparison);
    } else {
        compare_text::print(&comparison, said.wording());
    }
    Ok(Outcome::Done)
}

/// Both machines, or the faults of both files at once.
fn both(args: &CompareArgs) -> Result<(Machine, Machine), Failure> {
    match (read_machine(&args.a, args.said), read_machine(&args.b, args.said)) {
        (Ok(a), Ok(b)) => Ok((a, b)),
        (Err(mut a), Err(b)) => {
            a.faults.append(b.faults);
            a.files.extend(b.files);
            Err(a)
        }
        (Err(fault), Ok(_)) | (Ok(_), Err(fault)) => Err(fault),
    }
}

/// "4 m,6 m" as reach and height. A decimal comma may stand in either: the comma that leaves two lengths divides.
fn place(faults: &mut Faults, at: &str) -> Option<(f64, f64)> {
    let length = |text: &str| quantity::parse(text, Dimension::Length).ok().map(|q| q.si);
    let found = at.match_indices(',').find_map(|(i, _)| length(&at[..i]).zip(length(&at[i + 1..])));
    if found.is_none() {
        faults.push(Fault {
            code: "cli::place".to_owned(),
            severity: Severity::Error,
            place: Place { key: Some(String::from("--at")), ..Place::default() },
            message: text::COMPARE_BAD_AT.with("found", at),
            hint: None,
        });
    }
    found
}

impl Comparison {
    fn new(a: &Machine, b: &Machine, places: &[(f64, f64)], centre: Option<f64>, w: Wording) -> Self {
        let mut not_comparable = Vec::new();
        let mut charts = Vec::new();
        let forks = [a, b].map(forks);
        for (machine, _) in [a, b].iter().zip(&forks).filter(|(_, forks)| forks.is_none()) {
            not_comparable.push(w.render(&text::COMPARE_NO_FORKS.with("machine", &machine.name)));
        }
        if let [Some(forks_a), Some(forks_b)] = forks {
            for (_, state) in SupportState::WORDS {
                let at = |centre: f64| [(a, forks_a), (b, forks_b)].map(|(m, f)| m.chart_for(f, state, centre));
                // Not asked for one centre: both at the larger of the two rated ones.
                let rated = at(0.0).into_iter().flatten().map(|c| c.load_centre.si()).fold(0.0, f64::max);
                let centre = centre.unwrap_or(rated);
                let found = at(centre);
                match found {
                    [Some(chart_a), Some(chart_b)] => {
                        let one = Compared { a: (a, forks_a, chart_a), b: (b, forks_b, chart_b), state };
                        charts.push(one.compare(places, Some(centre), w));
                    }
                    [None, None] => {}
                    [found_a, _] => {
                        let machine = if found_a.is_none() { a } else { b };
                        let message =
                            text::COMPARE_NO_CHART.with("machine", &machine.name).with("support", support(state, w));
                        not_comparable.push(w.render(&message));
                    }
                }
            }
        }
        Self {
            names: (a.name.clone(), b.name.clone()),
            dimensions: dimensions(a, b, w),
            capacities: capacities(a, b, w),
            charts,
            not_comparable,
        }
    }
}

/// The first attachment that carries its load on forks.
fn forks(machine: &Machine) -> Option<&str> {
    machine.attachments.iter().find(|a| matches!(a.kind, AttachmentKind::Forks(_))).map(|a| a.id.as_str())
}

fn dimensions(a: &Machine, b: &Machine, w: Wording) -> Vec<Pair> {
    type Get = fn(&Machine) -> Option<f64>;
    let empty_mass: Get = |m| empty(m).first().map(|e| e.mass_kg);
    let front: Get = |m| empty(m).first().map(|e| e.front_axle_kg);
    let rows: [(TextId, Dimension, Get); 13] = [
        (text::COMPARE_EMPTY, Dimension::Mass, empty_mass),
        (text::COMPARE_FRONT, Dimension::Mass, front),
        (field::FIELD_WHEELBASE, Dimension::Length, |m| Some(-m.rear.axle.x)),
        (field::FIELD_FRONT_TRACK, Dimension::Length, |m| Some(2.0 * m.front.half_track)),
        (field::FIELD_OUTLINE_WIDTH, Dimension::Length, |m| Some(2.0 * m.outline.half_width)),
        (field::FIELD_CAB_TOP, Dimension::Length, |m| Some(m.outline.cab_top)),
        (field::FIELD_GROUND_CLEARANCE, Dimension::Length, |m| Some(m.outline.ground_clearance)),
        (field::FIELD_TYRE_RADIUS, Dimension::Length, |m| Some(m.front.tyre.free_radius.si())),
        (field::FIELD_STABILIZER_SPREAD, Dimension::Length, |m| m.stabilizers.as_ref().map(|s| 2.0 * s.pad.y)),
        (field::FIELD_PIN_HEIGHT, Dimension::Length, |m| Some(m.rear.pin_height)),
        (field::FIELD_BOOM_EXTENSION, Dimension::Length, |m| Some(m.boom.extension_max.si())),
        (text::COMPARE_LONGEST, Dimension::Length, |m| Some(m.boom.head_along + m.boom.extension_max.si())),
        (text::COMPARE_HIGHEST, Dimension::Angle, |m| Some(m.boom.angle_max.si())),
    ];
    let pair = |(what, dimension, get): (TextId, Dimension, Get)| {
        let of = |m: &Machine| get(m).map(|si| Quantity::new(si, dimension));
        Pair { what: w.text(what), a: of(a), b: of(b) }
    };
    rows.into_iter().map(pair).collect()
}

/// The machine's plate, and each attachment's: those with the same id stand side by side.
fn capacities(a: &Machine, b: &Machine, w: Wording) -> Vec<Pair> {
    let mut ids: Vec<(&str, &str)> = Vec::new();
    for attachment in a.attachments.iter().chain(&b.attachments) {
        if !ids.iter().any(|(id, _)| *id == attachment.id) {
            ids.push((&attachment.id, &attachment.name));
        }
    }
    let plate = |m: &Machine| Some(Quantity::from(m.greatest_capacity));
    let mut out = vec![Pair { what: w.text(field::FIELD_MACHINE_GREATEST_CAPACITY), a: plate(a), b: plate(b) }];
    for (id, name) in ids {
        let of = |m: &Machine| m.attachment(id).map(|at| Quantity::from(at.capacity));
        out.push(Pair { what: name.to_owned(), a: of(a), b: of(b) });
    }
    out
}

/// Two charts of one support state.
struct Compared<'m> {
    a: (&'m Machine, &'m str, &'m Chart),
    b: (&'m Machine, &'m str, &'m Chart),
    state: SupportState,
}

impl Compared<'_> {
    fn compare(&self, places: &[(f64, f64)], centre: Option<f64>, w: Wording) -> ChartsCompared {
        let rated = [self.a.2, self.b.2].map(|c| c.load_centre.si());
        let centre = centre.unwrap_or(rated[0].max(rated[1]));
        let at = |(reach_m, height_m): (f64, f64)| AtPlace {
            reach_m,
            height_m,
            a_kg: self.capacity(self.a, centre, reach_m, height_m),
            b_kg: self.capacity(self.b, centre, reach_m, height_m),
        };
        let grid: Vec<AtPlace> = self.grid(w.units()).into_iter().map(at).collect();
        let somewhere = |p: &AtPlace| p.a_kg.is_some() || p.b_kg.is_some();
        let asked: Vec<AtPlace> = if places.is_empty() {
            // Where nobody asks: near and low, half out, and as far as either goes.
            usual(&grid)
        } else {
            places.iter().copied().map(at).collect()
        };
        ChartsCompared {
            support: self.state,
            load_centre_m: centre,
            differences: self.differences(centre, w),
            at: asked,
            grid: if grid.iter().any(somewhere) { grid } else { Vec::new() },
        }
    }

    /// What the chart allows there, as the quick look into a chart reads it.
    fn capacity(&self, of: (&Machine, &str, &Chart), centre: f64, reach: f64, height: f64) -> Option<f64> {
        let question = DistanceQuestion {
            machine: of.0,
            attachment: of.1,
            support: self.state,
            mass: 0.0,
            load_centre: centre,
            distance: reach,
            from: MeasuredFrom::FrontTyreFace,
            to: MeasuredTo::LoadCentre,
            height,
        };
        distance_check(&question).ok().and_then(|answer| answer.capacity_kg)
    }

    /// Places on whole steps of the reader's unit that cover both charts.
    fn grid(&self, units: UnitSystem) -> Vec<(f64, f64)> {
        let (per_metre, _) = Dimension::Length.axis(units);
        let corners = || [self.a, self.b].into_iter().flat_map(|(_, _, c)| c.zones.iter().flat_map(|z| &z.outline));
        let most = |get: fn(&geometry::DVec2) -> f64| corners().map(get).fold(0.0, f64::max) * per_metre;
        let (reach, height) = (most(|p| p.x), most(|p| p.y));
        let step = |most: f64| [0.5, 1.0, 2.0, 5.0, 10.0, 20.0].into_iter().find(|s| most / s <= MOST).unwrap_or(50.0);
        let (across, up) = (step(reach), step(height));
        let (columns, rows) = ((reach / across).floor() as usize, (height / up).floor() as usize);
        let value = |i: usize, step: f64| i as f64 * step / per_metre;
        (0..=rows)
            .rev()
            .flat_map(|row| (0..=columns).map(move |column| (value(column, across), value(row, up))))
            .collect()
    }

    fn differences(&self, centre: f64, w: Wording) -> Vec<String> {
        let (a, b) = (self.a.2, self.b.2);
        // Half a centimetre, or half a hundredth of a radian, is no difference: 24 in is 0.61 m.
        let differ = |a: f64, b: f64| (a - b).abs() > 0.005;
        let mut out: Vec<Message> = Vec::new();
        if differ(a.load_centre.si(), b.load_centre.si()) {
            let centre = Quantity::new(centre, Dimension::Length);
            let message = text::COMPARE_OTHER_CENTRE.with("a", a.load_centre).with("b", b.load_centre);
            out.push(message.with("centre", centre));
        }
        if differ(a.level.sideways.si(), b.level.sideways.si()) {
            out.push(text::COMPARE_OTHER_LEVEL.with("a", a.level.sideways).with("b", b.level.sideways));
        }
        if differ(a.level.fore_aft.si(), b.level.fore_aft.si()) {
            out.push(text::COMPARE_OTHER_LEVEL_ALONG.with("a", a.level.fore_aft).with("b", b.level.fore_aft));
        }
        out.iter().map(|m| w.render(m)).collect()
    }
}

/// Three telling places of a grid: where both reach nearest and lowest, farthest, and highest.
fn usual(grid: &[AtPlace]) -> Vec<AtPlace> {
    let both = || grid.iter().filter(|p| p.a_kg.is_some() && p.b_kg.is_some());
    let near = both().min_by(|a, b| (a.height_m + a.reach_m).total_cmp(&(b.height_m + b.reach_m)));
    let far = both().max_by(|a, b| a.reach_m.total_cmp(&b.reach_m));
    let high = both().max_by(|a, b| a.height_m.total_cmp(&b.height_m));
    let mut out: Vec<AtPlace> = Vec::new();
    for place in [near, far, high].into_iter().flatten() {
        if !out.contains(place) {
            out.push(*place);
        }
    }
    out
}
