//! `calc edge`: how near to an edge wheels may stand, and how the ground would slip where they are to stand.

use super::edge_print::print;
use super::ground_input;
use super::input::Input;
use super::soil_input::soil;
use crate::args::Said;
use crate::{Outcome, Run, terminal};
use evidence::Working;
use ground::Profile;
use ground::edge_rules::{Drop, ENGINEER_DEPTH, EdgeGround, NamedSlope};
use ground::edge_strength::{Drainage, Exposure, edge_layers};
use ground::lateral::{LateralMethod, WallLoad, WallMovement, lateral_load};
use ground::set_back::{Edge, SetBack, SetBackGoverns, Side, Unknown, edge_factor, set_back};
use ground::slip_circle::Slice;
use ground::slip_search::{WorstSlip, worst_slip};
use ground::slope_section::SlopeSection;
use ground::wedge::worst_wedge;
use ground::wheel_row::WheelRow;
use jobfile::{Bound, Reader};
use quantity::Dimension;
use serde::{Deserialize, Serialize};

pub(crate) const EXAMPLE: &str = r#"# How near to an edge wheels may stand.
depth = "2.00 m"             # from toe to crest
batter = "0 m"               # level, from toe to crest; 0: upright face
ground = "firm"              # "rock"; or "poor": soft, wet, backfilled, unknown
side = "open"                # or "supported": shored, sheeted, walled
people_below = false
open_for = "4"               # hours since it was cut
undrained_for = "24"         # hours that a named person lets undrained
#                              strength count; left out: it does not count
wetted = false               # rain, thaw or water since it was cut
# firm_base = "6 m"          # below the crest; no slip goes deeper
# slope = "1.0"              # steeper line, level per upright, in the name of
# slope_by = "A. Invented"   # a competent person
stands = "3.20 m"            # outer edge of the nearest tyre or mat from crest
# Soil as calc bearing --example has it: water below the crest or "unknown",
# state, layers from the crest down; the last, without a thickness, goes on.
water = "2.50 m"
state = "as-stated"
[[layer]]
unit_weight = "19 kN/m³"
cohesion = "8 kPa"           # drained
friction = "28°"
undrained_strength = "35 kPa"
# Wheels: how much farther from the edge than the nearest row, breadth and
# length of the contact, place along the edge, force.
[[contact]]
behind = "0 m"
across = "0.40 m"
along = "0.35 m"
at = "0 m"
force = "48 kN"
[[contact]]
behind = "1.80 m"
across = "0.40 m"
along = "0.35 m"
at = "0 m"
force = "31 kN"
"#;

/// Answer of the calculation. SI; angles in degrees, as their names say.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct EdgeResult {
    /// What is told of the edge.
    pub(crate) told: EdgeTold,
    /// Where the wheels are to stand, m from the crest.
    pub(crate) stands_m: f64,
    /// Least distance from the crest, m; `null`: none is told.
    pub(crate) from_crest_m: Option<f64>,
    /// The same by the line from the toe alone, m.
    pub(crate) by_line_m: Option<f64>,
    /// The same by equilibrium alone, m.
    pub(crate) by_equilibrium_m: Option<f64>,
    /// What decides.
    pub(crate) governs: Option<EdgeGoverns>,
    /// Factor of safety that is required.
    pub(crate) required: f64,
    /// Factor where the wheels are to stand, the lower of wedge and circle; `null`: not told.
    pub(crate) factor: Option<f64>,
    /// True where undrained strength counts.
    pub(crate) undrained: bool,
    /// Hours until it no longer does, and the answer ends.
    pub(crate) ends_after_h: Option<f64>,
    /// The wedge that holds worst where the wheels are to stand.
    pub(crate) wedge: Option<EdgeWedge>,
    /// The slip circle that holds worst there.
    pub(crate) circle: Option<EdgeCircle>,
    /// The slip circle that holds worst where they may come nearest, at `from_crest_m`.
    pub(crate) circle_at_distance: Option<EdgeCircle>,
    /// What is not known.
    pub(crate) missing: Vec<EdgeMissing>,
    /// Supported side: sideways force per metre on a wall that does not give, for its designer, N/m.
    pub(crate) support_n_m: Option<f64>,
    /// Height of that force above the toe, m.
    pub(crate) support_height_m: Option<f64>,
}

/// What is told of an edge.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub(crate) enum EdgeTold {
    /// The distance is kept.
    Kept,
    /// The wheels stand nearer than they may.
    TooNear,
    /// The face does not stand with the required factor.
    FaceFails,
    /// The support's designer decides.
    Supported,
    /// Something is not known.
    CannotTell,
}

/// What decides a distance.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub(crate) enum EdgeGoverns {
    /// Line from the toe, or the least distance.
    Rule,
    /// Plane wedge.
    Wedge,
    /// Slip circle.
    Circle,
}

/// What is not known.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub(crate) enum EdgeMissing {
    /// No layer.
    Soil,
    /// A drained strength.
    DrainedStrength,
    /// An undrained strength.
    UndrainedStrength,
    /// Water table.
    Water,
    /// The design of an engineer, so deep.
    Engineer,
}

/// A plane wedge.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct EdgeWedge {
    /// Factor of safety.
    pub(crate) factor: f64,
    /// Slope of the plane, degrees.
    pub(crate) angle_deg: f64,
    /// Where it leaves the face, m below the crest.
    pub(crate) exit_m: f64,
}

/// A slip circle with its slices.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct EdgeCircle {
    /// Factor of safety.
    pub(crate) factor: f64,
    /// Centre from the crest: into the ground, up; m.
    pub(crate) centre_m: [f64; 2],
    /// Radius, m.
    pub(crate) radius_m: f64,
    /// Circles tried.
    pub(crate) tried: usize,
    /// Slices from the exit up.
    pub(crate) slices: Vec<EdgeSlice>,
}

/// A slice, per metre along the edge.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct EdgeSlice {
    /// Middle from the crest, m.
    pub(crate) x_m: f64,
    /// Width, m.
    pub(crate) width_m: f64,
    /// Weight, N/m.
    pub(crate) weight_n_m: f64,
    /// Load, N/m.
    pub(crate) load_n_m: f64,
    /// Slope of its base, degrees.
    pub(crate) slope_deg: f64,
    /// Pore pressure at its base, Pa.
    pub(crate) pore_pa: f64,
    /// Cohesion at its base, Pa.
    pub(crate) cohesion_pa: f64,
    /// Angle of friction at its base, degrees.
    pub(crate) friction_deg: f64,
    /// `cos α + sin α·tan φ / F`.
    pub(crate) m_alpha: f64,
}

/// What is read.
struct Asked {
    edge: Edge,
    rows: Vec<WheelRow>,
    stands: f64,
    /// Of strengths that come from tests.
    steps: Working,
}

pub(crate) fn run(input: &Input, said: Said) -> Run {
    let Asked { edge, rows, stands, mut steps } = ground_input::read(input, said, asked)?;
    let found = set_back(&edge, &rows, &mut steps).map_err(|f| ground_input::refused(input, said, &f))?;
    let result = answer(&edge, &rows, stands, &found, &mut steps);
    if said.json() {
        terminal::print_json(&result);
    } else {
        print(&result, &steps, said);
    }
    Ok(if result.told == EdgeTold::Kept { Outcome::Done } else { Outcome::Outside })
}

fn asked(root: &Reader<'_>) -> Option<Asked> {
    let length = |key| root.decision(key, Dimension::Length, Bound::ZeroTo(300.0));
    let depth = root.decision("depth", Dimension::Length, Bound::UpTo(300.0));
    let (batter, stands) = (length("batter"), length("stands"));
    let ground =
        root.choice("ground", &[("rock", EdgeGround::Rock), ("firm", EdgeGround::Firm), ("poor", EdgeGround::Poor)]);
    let side = root.choice("side", &[("open", Side::Open), ("supported", Side::Supported)]);
    let must = |key: &str, example: &str| {
        if !root.has(key) {
            root.missing(key, example);
        }
        root.yes_no(key)
    };
    let people_below = must("people_below", "people_below = true");
    let wetted = must("wetted", "wetted = false");
    let open_for = root.decision("open_for", Dimension::Number, Bound::NotNegative);
    let undrained_for = root.decision_or_none("undrained_for", Dimension::Number, Bound::NotNegative);
    let firm_base = root.decision_or_none("firm_base", Dimension::Length, Bound::Positive);
    let ratio = root.decision_or_none("slope", Dimension::Number, Bound::ZeroTo(10.0));
    let person = root.text_or_none("slope_by");
    if person.is_some() && ratio.is_none() {
        root.missing("slope", "slope = \"1.0\"");
    }
    let named = ratio.map(|ratio| NamedSlope { ratio, person: person.unwrap_or_default() });
    let mut steps = Working::default();
    // Without layers nothing is known of the soil, which is an answer.
    let profile = if root.has("layer") {
        soil(root, &mut steps)
    } else {
        let _ = (root.has("water"), root.has("state"));
        Some(Profile::default())
    };
    let rows = ground_input::rows(root);
    let (depth, profile) = (depth?, profile?);
    Some(Asked {
        edge: Edge {
            drop: Drop { depth, batter: batter?, ground: ground?, named },
            side: side?,
            layers: edge_layers(&profile),
            // Above the toe.
            water: profile.water.map(|below| depth - below),
            firm_base,
            exposure: Exposure { open_for: open_for?, undrained_for, wetted: wetted? }.in_state(profile.state),
            people_below: people_below?,
        },
        rows,
        stands: stands?,
        steps,
    })
}

fn answer(edge: &Edge, rows: &[WheelRow], stands: f64, found: &SetBack, steps: &mut Working) -> EdgeResult {
    let depth = edge.drop.depth;
    let loads: Vec<_> = rows.iter().map(|r| r.strip(stands, depth)).collect();
    let mut result = EdgeResult {
        told: EdgeTold::CannotTell,
        stands_m: stands,
        from_crest_m: None,
        by_line_m: None,
        by_equilibrium_m: None,
        governs: None,
        required: edge.required(),
        factor: None,
        undrained: edge.exposure.drainage() == Drainage::Undrained,
        ends_after_h: edge.exposure.left(),
        wedge: None,
        circle: None,
        circle_at_distance: None,
        missing: Vec::new(),
        support_n_m: None,
        support_height_m: None,
    };
    match found {
        SetBack::Distance(d) => {
            // Where they stand may be farther than the least; a factor that fell short there would be told too.
            result.told = if stands >= d.from_crest { EdgeTold::Kept } else { EdgeTold::TooNear };
            result.from_crest_m = Some(d.from_crest);
            result.by_line_m = Some(d.line.from_crest);
            result.by_equilibrium_m = Some(d.equilibrium);
            result.governs = Some(match d.governs {
                SetBackGoverns::Rule => EdgeGoverns::Rule,
                SetBackGoverns::Wedge => EdgeGoverns::Wedge,
                SetBackGoverns::Circle => EdgeGoverns::Circle,
            });
        }
        SetBack::FaceFails { .. } => result.told = EdgeTold::FaceFails,
        SetBack::Supported => {
            result.told = EdgeTold::Supported;
            let strip =
                |s: &ground::slope_section::Surcharge| WallLoad::Strip { pressure: s.pressure, off: [s.from, s.to] };
            let wall: Vec<_> = loads.iter().map(strip).collect();
            let on = lateral_load(&wall, WallMovement::Unyielding, LateralMethod::Elastic, depth, 0.0, steps);
            result.support_n_m = Some(on.resultant);
            result.support_height_m = Some(on.height);
        }
        SetBack::Unknown(missing) => {
            result.missing = missing
                .iter()
                .map(|m| match m {
                    Unknown::Soil => EdgeMissing::Soil,
                    Unknown::Strength(Drainage::Drained) => EdgeMissing::DrainedStrength,
                    Unknown::Strength(Drainage::Undrained) => EdgeMissing::UndrainedStrength,
                    Unknown::Water => EdgeMissing::Water,
                })
                .collect();
        }
    }
    if let (false, Ok(sections)) = (edge.side == Side::Supported, edge.sections()) {
        // With every strength that is solved, the worst where they stand; only its steps are printed.
        let at = |section: &SlopeSection| edge_factor(section, &loads).0;
        let worst = sections.iter().min_by(|a, b| at(&a.1).total_cmp(&at(&b.1)));
        let (wedge, circle) = worst.map_or((None, None), |(drainage, section)| {
            result.undrained = *drainage == Drainage::Undrained;
            let wedge = worst_wedge(section, &loads, steps).ok();
            (wedge, worst_slip(section, &loads, steps).ok().flatten())
        });
        result.factor = wedge.zip(circle.as_ref()).map(|(w, c)| w.factor.min(c.factor));
        if result.told == EdgeTold::Kept && result.factor.is_none_or(|f| f < result.required) {
            result.told = EdgeTold::TooNear;
        }
        result.wedge = wedge.map(|w| EdgeWedge { factor: w.factor, angle_deg: w.angle.to_degrees(), exit_m: w.exit });
        result.circle = circle.map(|c| drawn(&c));
        if let SetBack::Distance(d) = found {
            let there: Vec<_> = rows.iter().map(|r| r.strip(d.from_crest, depth)).collect();
            let section = sections.iter().find(|(drainage, _)| *drainage == d.drainage);
            // Its steps are among those of the distance.
            let slip = section.and_then(|(_, s)| worst_slip(s, &there, &mut evidence::Silent).ok().flatten());
            result.circle_at_distance = slip.map(|c| drawn(&c));
        }
    }
    // So deep an engineer designs: what falls short is told, what would do is not.
    if depth > ENGINEER_DEPTH && edge.side == Side::Open {
        result.missing.push(EdgeMissing::Engineer);
        if result.told == EdgeTold::Kept {
            result.told = EdgeTold::CannotTell;
        }
    }
    result
}

fn drawn(c: &WorstSlip) -> EdgeCircle {
    EdgeCircle {
        factor: c.factor,
        centre_m: c.circle.centre,
        radius_m: c.circle.radius,
        tried: c.tried,
        slices: c.slices.iter().map(|s| slice(s, c.factor)).collect(),
    }
}

fn slice(s: &Slice, factor: f64) -> EdgeSlice {
    EdgeSlice {
        x_m: s.x,
        width_m: s.width,
        weight_n_m: s.weight,
        load_n_m: s.load,
        slope_deg: libm::atan2(s.slope[0], s.slope[1]).to_degrees(),
        pore_pa: s.pore,
        cohesion_pa: s.cohesion,
        friction_deg: libm::atan(s.tan_phi).to_degrees(),
        m_alpha: s.m_alpha(factor),
    }
}
