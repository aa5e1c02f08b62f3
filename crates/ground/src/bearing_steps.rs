//! The working of a bearing capacity: one writing for all authors, since all have the same form.

use crate::bearing::{Given, Term};
use crate::step_values::{Value, angle, area, force, length, number, pressure, weight};
use crate::{Bearing, Method, Strength, text};
use crate::{bearing_en1997, bearing_hansen, bearing_meyerhof, bearing_terzaghi, bearing_vesic};
use evidence::{Source, Step, TextId, Trace};

/// Symbols of `N, s, d, i, g` for cohesion, overburden, weight.
const SYMBOLS: [[&str; 3]; 5] =
    [["N_c", "N_q", "N_γ"], ["s_c", "s_q", "s_γ"], ["d_c", "d_q", "d_γ"], ["i_c", "i_q", "i_γ"], ["g_c", "g_q", "g_γ"]];

const TITLES: [TextId; 5] = [
    text::STEP_BEARING_FACTOR,
    text::STEP_BEARING_SHAPE,
    text::STEP_BEARING_DEPTH,
    text::STEP_BEARING_INCLINATION,
    text::STEP_BEARING_GROUND,
];

pub(crate) fn steps(g: &Given<'_>, terms: &[Term; 3], bearing: &Bearing, trace: &mut impl Trace) {
    let e = g.effective;
    trace.step(|| Step {
        title: text::STEP_BEARING_AREA.message(),
        formula: if e.round {
            "A′ = 2·(R²·acos(e/R) − e·√(R² − e²))"
        } else {
            "A′ = B′·L′,  B′ = B − 2·e_B,  L′ = L − 2·e_L"
        }
        .into(),
        values: vec![length("B′", e.width), length("L′", e.length)],
        result: area("A′", e.area),
        source: Source::second_hand("Meyerhof 1953; FHWA-SA-02-054, equations 6-6, 6-7"),
    });
    for (kind, symbols) in SYMBOLS.iter().enumerate() {
        for (of, term) in terms.iter().enumerate() {
            let factor = [term.n, term.shape, term.depth, term.inclination, term.ground][kind];
            // Hansen's cohesion is made of the overburden's factors, so they are shown for it too.
            let used =
                bearing.terms[of] != 0.0 || (of == 1 && bearing.method == Method::Hansen && bearing.terms[0] != 0.0);
            // A factor of one, or of a term that is not there, says nothing.
            let idle = !used || (kind > 0 && factor == 1.0);
            if idle {
                continue;
            }
            trace.step(|| Step {
                title: TITLES[kind].message(),
                formula: formula(bearing.method, g.case.strength, kind, of).into(),
                values: values(g, kind),
                result: number(symbols[of], factor),
                source: source(bearing.method),
            });
        }
    }
    trace.step(|| {
        let [c, q, w] = bearing.terms;
        Step {
            title: text::STEP_BEARING_ULTIMATE.message(),
            formula: "q_ult = c·N_c·s_c·d_c·i_c·g_c + q·N_q·s_q·d_q·i_q·g_q + ½·γ·B′·N_γ·s_γ·d_γ·i_γ·g_γ".into(),
            values: vec![
                pressure("c", cohesion(g.case.strength)),
                pressure("q", g.case.overburden),
                weight("γ", g.case.unit_weight),
                pressure("q_c", c),
                pressure("q_q", q),
                pressure("q_γ", w),
            ],
            result: pressure("q_ult", bearing.ultimate),
            source: source(bearing.method),
        }
    });
    trace.step(|| Step {
        title: text::STEP_BEARING_RESISTANCE.message(),
        formula: "R = q_ult·A′".into(),
        values: vec![pressure("q_ult", bearing.ultimate), area("A′", e.area)],
        result: force("R", bearing.resistance),
        source: Source::Mechanics,
    });
}

/// What each author gives, and that the least counts.
pub(crate) fn working_of_least(g: &Given<'_>, least: Method, trace: &mut impl Trace) {
    trace.step(|| {
        let all = Method::ALL.into_iter().filter_map(|m| Some((m, g.bearing(m).ok()?.0)));
        let (mut values, mut result) = (Vec::new(), pressure(symbol(least), f64::NAN));
        for (method, bearing) in all {
            let value = pressure(symbol(method), bearing.ultimate);
            if method == least {
                result = value.clone();
            }
            values.push(value);
        }
        Step {
            title: text::STEP_BEARING_LEAST.with("author", least.citation()),
            formula: "q_ult = min(q_EN, q_V, q_H, q_M, q_T)".into(),
            values,
            result,
            source: Source::CommonPractice,
        }
    });
}

fn symbol(method: Method) -> &'static str {
    match method {
        Method::En1997 => "q_EN",
        Method::Vesic => "q_V",
        Method::Hansen => "q_H",
        Method::Meyerhof => "q_M",
        Method::Terzaghi => "q_T",
    }
}

fn cohesion(strength: Strength) -> f64 {
    match strength {
        Strength::Undrained { c_u } => c_u,
        Strength::Drained { cohesion, .. } => cohesion,
    }
}

/// The values that a kind of factor is made of.
fn values(g: &Given<'_>, kind: usize) -> Vec<Value> {
    let e = g.effective;
    let mut values = vec![angle("φ", g.prandtl.friction)];
    match kind {
        1 => values.extend([length("B′", e.width), length("L′", e.length)]),
        2 => values.extend([length("D", g.case.credited_depth), length("B", e.full_width), number("k", g.k)]),
        3 => values.extend([
            force("H", g.push),
            force("V", g.case.load.vertical),
            area("A′", e.area),
            pressure("c", cohesion(g.case.strength)),
            number("m", e.exponent()),
        ]),
        4 => values.push(angle("β", g.case.slope)),
        _ => {}
    }
    values
}

fn source(method: Method) -> Source {
    match method {
        Method::En1997 => Source::second_hand(bearing_en1997::CITATION),
        Method::Vesic => Source::second_hand(bearing_vesic::CITATION),
        Method::Hansen => Source::from_memory(bearing_hansen::CITATION),
        Method::Meyerhof => Source::from_memory(bearing_meyerhof::CITATION),
        Method::Terzaghi => Source::second_hand(bearing_terzaghi::CITATION),
    }
}

/// The formula of a factor: kind as in [`SYMBOLS`], of which term.
fn formula(method: Method, strength: Strength, kind: usize, of: usize) -> &'static str {
    let undrained = matches!(strength, Strength::Undrained { .. });
    match (method, undrained, kind, of) {
        (Method::Terzaghi, true, 0, 0) => "N_c = 3π/2 + 1",
        (Method::Terzaghi, false, 0, 1) => "N_q = exp((3π/2 − φ)·tan φ) / (2·cos²(45° + φ/2))",
        (Method::Terzaghi, false, 0, 2) => "N_γ: min(Kumbhojkar, Terzaghi)",
        (Method::Terzaghi, _, 1, 0) => "s_c = 1 + 0.3·B′/L′",
        (Method::Terzaghi, _, 1, 2) => "s_γ = 1 − 0.2·B′/L′ (1 − 0.4·B′/L′: ○)",
        (Method::Vesic, true, 0, 2) => "N_γ = −2·sin β",
        (_, true, 0, 0) => "N_c = π + 2",
        (_, true, 0, 1) => "N_q = 1",
        (_, false, 0, 0) => "N_c = (N_q − 1)·cot φ",
        (_, false, 0, 1) => "N_q = exp(π·tan φ)·tan²(45° + φ/2)",
        (Method::En1997, _, 0, _) => "N_γ = 2·(N_q − 1)·tan φ",
        (Method::Vesic, _, 0, _) => "N_γ = 2·(N_q + 1)·tan φ",
        (Method::Hansen, _, 0, _) => "N_γ = 1.5·(N_q − 1)·tan φ",
        (Method::Meyerhof, _, 0, _) => "N_γ = (N_q − 1)·tan(1.4·φ)",
        (Method::En1997, true, 1, _) => "s_c = 1 + 0.2·B′/L′",
        (Method::En1997, false, 1, 0) => "s_c = (s_q·N_q − 1) / (N_q − 1)",
        (Method::En1997, false, 1, 1) => "s_q = 1 + B′/L′·sin φ",
        (Method::En1997, false, 1, _) => "s_γ = 1 − 0.3·B′/L′",
        (Method::En1997, true, 3, _) => "i_c = ½·(1 + √(1 − H/(A′·c_u)))",
        (Method::En1997 | Method::Vesic, false, 3, 0) => "i_c = i_q − (1 − i_q)/(N_c·tan φ)",
        (Method::En1997 | Method::Vesic, false, 3, 1) => "i_q = (1 − H/(V + A′·c·cot φ))^m",
        (Method::En1997 | Method::Vesic, false, 3, _) => "i_γ = (1 − H/(V + A′·c·cot φ))^(m + 1)",
        (Method::Vesic, _, 1, 0) => "s_c = 1 + B′/L′·N_q/N_c",
        (Method::Vesic, _, 1, 1) => "s_q = 1 + B′/L′·tan φ",
        (Method::Vesic, _, 1, _) => "s_γ = 1 − 0.4·B′/L′",
        (Method::Vesic, true, 2, _) => "d_c = 1 + 0.4·k",
        (Method::Vesic, false, 2, 0) => "d_c = d_q − (1 − d_q)/(N_c·tan φ)",
        (Method::Vesic | Method::Hansen, _, 2, _) => "d_q = 1 + 2·tan φ·(1 − sin φ)²·k",
        (Method::Vesic, true, 3, _) => "i_c = 1 − m·H/(A′·c_u·N_c)",
        (Method::Vesic, true, 4, 0) => "g_c = 1 − 2·β/(π + 2)",
        (Method::Vesic, false, 4, 0) => "g_c = g_q − (1 − g_q)/(N_c·tan φ)",
        (Method::Vesic, _, 4, _) => "g_q = g_γ = (1 − tan β)²",
        (Method::Hansen, true, 1, _) => {
            "s_c = 1 + 0.2·(1 − 2·i)·B′/L′ + 0.4·k − i − 2·β/(π + 2),  i = ½ − ½·√(1 − H/(A′·c_u))"
        }
        (Method::Hansen, false, 1, 0) => "s_c = (N_q·s_q·d_q·i_q·g_q − 1) / (N_q − 1)",
        (Method::Hansen, false, 1, 1) => "s_q = 1 + i_q·B′/L′·sin φ",
        (Method::Hansen, false, 1, _) => "s_γ = 1 − 0.4·i_γ·B′/L′",
        (Method::Hansen, _, 3, 2) => "i_γ = (1 − 0.7·H/(V + A′·c·cot φ))⁵",
        (Method::Hansen, _, 3, _) => "i_q = (1 − 0.5·H/(V + A′·c·cot φ))⁵",
        (Method::Hansen, _, 4, _) => "g_q = g_γ = (1 − 0.5·tan β)⁵",
        (Method::Meyerhof, _, 1, 0) => "s_c = 1 + 0.2·tan²(45° + φ/2)·B′/L′",
        (Method::Meyerhof, _, 1, _) => "s_q = s_γ = 1 + 0.1·tan²(45° + φ/2)·B′/L′·min(φ/10°, 1)",
        (Method::Meyerhof, _, 2, 0) => "d_c = 1 + 0.2·tan(45° + φ/2)·D/B",
        (Method::Meyerhof, _, 2, _) => "d_q = d_γ = 1 + 0.1·tan(45° + φ/2)·D/B·min(φ/10°, 1)",
        (Method::Meyerhof, _, 3, 2) => "i_γ = (1 − θ/φ)²,  tan θ = H/V",
        (Method::Meyerhof, _, 3, _) => "i_c = i_q = (1 − θ/90°)²,  tan θ = H/V",
        _ => "1",
    }
}
