//! `calc wind`: what a gust does to a machine in one position, from its worst direction, and the gust at
//! which it is too much.

use super::input::Input;
use super::standing::{Asks, Standing, given, one_a_side, side};
use crate::args::Said;
use crate::{Outcome, Run, terminal, text};
use evidence::Silent;
use jobfile::{Bound, Reader};
use quantity::{Dimension, Quantity};
use serde::{Deserialize, Serialize};
use stability::exposure::{HIGHEST, Terrain};
use stability::wind::{Part, WindLoad, gust_pressure};
use stability::{LoadFaces, Loading, TipsOver, gust_at_limit_on_springs, wind_parts};

pub(crate) const EXAMPLE: &str = r#"# Wind on a machine in one boom position: force, worst direction for each
# tipping line, and the gust at which the tilt asked for is just left.
machine = "validation/machines/r1.toml"   # relative to this file
attachment = "forks"
boom_angle = "55°"
extension = "3.00 m"
load = "800 kg"
load_ahead = "0.61 m"        # centre from the fork face; 0 for a hook
load_left = "0 m"
load_up = "0.60 m"           # centre above the forks; 0 for a hook
load_depth = "1.20 m"        # what the wind sees of it
load_width = "1.20 m"
load_height = "1.20 m"
wind_factor = "1.4"          # shape factor of the load; 1.8 for sheets
support = "tyres"            # "stabilizers" or "outriggers"
rear_axle = "free"           # may oscillate; or "locked"
slope_along = "0 %"          # ground rises ahead
slope_across = "0 %"         # ground falls to the left
gust = "12.5 m/s"            # at the height of load and boom
terrain = "open"             # upwind: "sea", "flat", "open", "suburb" or "town"
tilt_fore_aft = "7 %"        # tilt that must remain
tilt_sideways = "12 %"
# More that the wind sees, seen along and across the machine, with its middle in
# the machine's frame:
# [[part]]
# name = "sign on the boom"
# front = "0.5 m²"
# side = "1.0 m²"
# factor = "1.8"
# at = ["2 m", "0 m", "4 m"]
"#;

/// Answer of the calculation. SI; angles in degrees, as their names say.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct WindResult {
    /// Pressure of the gust, Pa.
    pub(crate) pressure_pa: f64,
    /// Greatest force of all directions, N.
    pub(crate) greatest_force_n: f64,
    /// Height that the gust is taken at: the highest of load and boom, m.
    pub(crate) height_m: f64,
    /// What the wind sees.
    pub(crate) parts: Vec<WindPart>,
    /// Each tipping line.
    pub(crate) lines: Vec<WindLine>,
    /// The line that runs out first.
    pub(crate) governs: TipsOver,
}

/// A part that the wind sees.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct WindPart {
    /// Text id of the machine's own parts, or the name stated.
    pub(crate) name: String,
    /// Force of wind along the machine, N.
    pub(crate) along_n: f64,
    /// Force of wind across the machine, N.
    pub(crate) across_n: f64,
}

/// What the gust does over one tipping line.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct WindLine {
    /// Which way it would go over.
    pub(crate) over: TipsOver,
    /// Greatest overturning moment, N·m.
    pub(crate) overturning_nm: f64,
    /// Where that wind pushes to, degrees from straight ahead towards the left.
    pub(crate) pushes_towards_deg: f64,
    /// Tilt that remains on tyres and pads that give, degrees; below zero it tips.
    pub(crate) tilt_deg: f64,
    /// Tilt asked for, degrees.
    pub(crate) required_deg: f64,
    /// Gust at the height above at which the tilt asked for is just left, m/s; 0: not there without wind;
    /// `null`: no wind overturns it that way.
    pub(crate) gust_at_limit_m_s: Option<f64>,
    /// Forecast mean (ten minutes, 10 m up, open country) of that gust, m/s; `null` as above, or where the
    /// height is beyond the wind profile.
    pub(crate) mean_at_limit_m_s: Option<f64>,
}

/// What the calculation asks besides the machine.
struct Asked {
    size: [f64; 3],
    factor: f64,
    gust: f64,
    terrain: Terrain,
    fore_aft: f64,
    sideways: f64,
}

pub(crate) fn run(input: &Input, said: Said) -> Run {
    let both = |root: &Reader<'_>| {
        let (asked, more) = (asked(root), more_parts(root));
        asked.map(|asked| (asked, more))
    };
    let (standing, (asked, more)) = given(input, said, Asks::default(), both)?;
    let result = answer(&standing, &asked, more);
    if said.json() {
        terminal::print_json(&result);
    } else {
        print(&result, asked.gust, standing.machine.slew.is_some(), said);
    }
    Ok(if result.lines.iter().all(|l| l.tilt_deg >= l.required_deg) { Outcome::Done } else { Outcome::Outside })
}

fn asked(root: &Reader<'_>) -> Option<Asked> {
    let size = ["load_depth", "load_width", "load_height"]
        .map(|key| root.decision(key, Dimension::Length, Bound::ZeroTo(100.0)));
    let factor = root.decision("wind_factor", Dimension::Number, Bound::Within(0.1, 3.0));
    let gust = root.decision("gust", Dimension::Speed, Bound::UpTo(100.0));
    let terrain = root.choice("terrain", &Terrain::WORDS);
    let [fore_aft, sideways] =
        ["tilt_fore_aft", "tilt_sideways"].map(|key| root.decision(key, Dimension::Slope, Bound::UpTo(1.0)));
    let [depth, width, height] = size;
    Some(Asked {
        size: [depth?, width?, height?],
        factor: factor?,
        gust: gust?,
        terrain: terrain?,
        fore_aft: fore_aft?,
        sideways: sideways?,
    })
}

/// `part = [{ … }]`; a faulty one has its fault noted.
fn more_parts(root: &Reader<'_>) -> Vec<Part> {
    let one = |t: Reader<'_>| {
        let name = t.text("name", "name = \"sign\"");
        let [front, side] = ["front", "side"].map(|key| t.decision(key, Dimension::Area, Bound::ZeroTo(1000.0)));
        let factor = t.decision("factor", Dimension::Number, Bound::Within(0.1, 3.0));
        let at = t.point_3("at", "at = [\"2 m\", \"0 m\", \"4 m\"]", 100.0);
        t.done();
        Some(Part::new(text::WIND_NAMED.with("name", name?), front?, side?, factor?, at?))
    };
    root.tables("part").into_iter().filter_map(one).collect()
}

fn answer(s: &Standing, asked: &Asked, more: Vec<Part>) -> WindResult {
    let [depth, width, height] = asked.size;
    let faces = LoadFaces { depth, width, height, factor: asked.factor, hangs: s.attachment.hangs() };
    let mut parts = wind_parts(&s.machine, &s.attachment, s.boom, Some(faces));
    parts.extend(more);
    let wind = WindLoad::of(asked.gust, &parts, &mut Silent);
    let loading = Loading { wind, ..s.loading };
    let head = machine::kinematics::head(&s.machine.boom, s.boom).z;
    // Nothing lower than the load's top or the boom's; a hung load hangs below its hook.
    let top = s.tool.z + if s.attachment.hangs() { 0.0 } else { height };
    let at = parts.iter().map(|p| p.front.at.z.max(p.side.at.z)).fold(head.max(top), f64::max);
    let lines = s.soft_lines(s.springs()).map(|soft| {
        let line = soft.rigid;
        let slope = match line.over {
            TipsOver::Front | TipsOver::Rear => asked.fore_aft,
            TipsOver::Left | TipsOver::Right => asked.sideways,
        };
        let required = libm::atan(slope);
        let worst = wind.worst_direction(&line);
        let gust = gust_at_limit_on_springs(&loading, asked.gust, &soft, required);
        let known = |v: f64| v.is_finite().then_some(v);
        WindLine {
            over: line.over,
            overturning_nm: worst.overturning,
            pushes_towards_deg: worst.towards.to_degrees(),
            tilt_deg: soft.tilt(&loading).to_degrees(),
            required_deg: required.to_degrees(),
            gust_at_limit_m_s: known(gust),
            mean_at_limit_m_s: known(asked.terrain.forecast_mean(gust, at)),
        }
    });
    let lines = one_a_side(lines, worse);
    let gust = |l: &WindLine| l.gust_at_limit_m_s.unwrap_or(f64::INFINITY);
    let share = |l: &WindLine| l.tilt_deg / l.required_deg;
    let least = |l: &&WindLine, m: &&WindLine| gust(l).total_cmp(&gust(m)).then(share(l).total_cmp(&share(m)));
    WindResult {
        pressure_pa: gust_pressure(asked.gust),
        greatest_force_n: wind.greatest_force(),
        height_m: at,
        parts: parts.iter().map(|p| part(p, asked.gust)).collect(),
        governs: lines.iter().min_by(least).map_or(TipsOver::Front, |l| l.over),
        lines,
    }
}

/// The one that leaves less tilt, with the lower gust of both.
fn worse(a: WindLine, b: WindLine) -> WindLine {
    let gusts = [&a, &b].map(|l| l.gust_at_limit_m_s.unwrap_or(f64::INFINITY));
    let (gust, mean) = if gusts[1] < gusts[0] {
        (b.gust_at_limit_m_s, b.mean_at_limit_m_s)
    } else {
        (a.gust_at_limit_m_s, a.mean_at_limit_m_s)
    };
    let line = if a.tilt_deg.is_nan() || a.tilt_deg <= b.tilt_deg { a } else { b };
    WindLine { gust_at_limit_m_s: gust, mean_at_limit_m_s: mean, ..line }
}

fn part(p: &Part, gust: f64) -> WindPart {
    let q = gust_pressure(gust);
    let name = match p.name.arg("name") {
        Some(evidence::Arg::Text(name)) => name.clone(),
        _ => p.name.id.to_string(),
    };
    WindPart { name, along_n: q * p.front.factor * p.front.area, across_n: q * p.side.factor * p.side.area }
}

fn print(r: &WindResult, gust: f64, turns: bool, said: Said) {
    let w = said.wording();
    let say = |m: &evidence::Message| terminal::paragraph(&w.render(m), "", "  ");
    let q = Quantity::new;
    say(&text::WIND_FORCE
        .with("gust", q(gust, Dimension::Speed))
        .with("pressure", q(r.pressure_pa, Dimension::Pressure))
        .with("force", q(r.greatest_force_n, Dimension::Force)));
    let degrees = |d: f64| q(d.to_radians(), Dimension::Angle);
    for l in &r.lines {
        say(&text::WIND_LINE
            .with("side", side(l.over))
            .with("moment", q(l.overturning_nm, Dimension::Moment))
            .with("towards", degrees(l.pushes_towards_deg))
            .with("tilt", degrees(l.tilt_deg))
            .with("required", degrees(l.required_deg)));
        match (l.gust_at_limit_m_s, l.mean_at_limit_m_s) {
            (Some(0.0), _) => say(&text::WIND_SHORT_CALM.with("side", side(l.over))),
            (Some(gust), Some(mean)) => say(&text::WIND_LIMIT
                .with("gust", q(gust, Dimension::Speed))
                .with("height", q(r.height_m, Dimension::Length))
                .with("mean", q(mean, Dimension::Speed))),
            (Some(gust), None) => say(&text::WIND_LIMIT_HIGH
                .with("gust", q(gust, Dimension::Speed))
                .with("height", q(HIGHEST, Dimension::Length))),
            (None, _) => say(&text::WIND_NO_LIMIT.message()),
        }
    }
    say(&text::CALC_GOVERNS.with("side", side(r.governs)));
    if turns {
        say(&super::text::RESERVE_AHEAD_ONLY.message());
    }
    say(&text::WIND_NOT_A_LIMIT.message());
}
