//! What `calc edge` says to people: the answer, the slices of the circle, the working.

use super::edge::{EdgeCircle, EdgeGoverns, EdgeMissing, EdgeResult, EdgeTold};
use super::{ground_text as words, working};
use crate::args::Said;
use crate::terminal;
use evidence::{Message, TextId, Working};
use quantity::{Dimension, Quantity};

pub(super) fn print(r: &EdgeResult, steps: &Working, said: Said) {
    let w = said.wording();
    let say = |m: &Message| terminal::paragraph(&w.render(m), "", "  ");
    let length = |v: f64| Quantity::new(v, Dimension::Length);
    let number = |v: f64| w.worked(Quantity::number(v));
    let told: TextId = match r.told {
        EdgeTold::Kept => words::EDGE_KEPT,
        EdgeTold::TooNear => words::EDGE_TOO_NEAR,
        EdgeTold::FaceFails => words::EDGE_FACE_FAILS,
        EdgeTold::Supported => words::EDGE_SUPPORTED,
        EdgeTold::CannotTell => words::EDGE_CANNOT_TELL,
    };
    say(&told.message());
    for missing in &r.missing {
        say(&match missing {
            EdgeMissing::Soil => words::EDGE_NO_SOIL.message(),
            EdgeMissing::DrainedStrength => words::EDGE_NO_DRAINED.message(),
            EdgeMissing::UndrainedStrength => words::EDGE_NO_UNDRAINED.message(),
            EdgeMissing::Water => words::EDGE_NO_WATER.message(),
            EdgeMissing::Engineer => words::EDGE_NO_ENGINEER.message(),
        });
    }
    if let (Some(from), Some(line), Some(equilibrium), Some(governs)) =
        (r.from_crest_m, r.by_line_m, r.by_equilibrium_m, r.governs)
    {
        let governs = match governs {
            EdgeGoverns::Rule => words::EDGE_BY_RULE,
            EdgeGoverns::Wedge => words::EDGE_BY_WEDGE,
            EdgeGoverns::Circle => words::EDGE_BY_CIRCLE,
        };
        say(&words::EDGE_DISTANCE
            .with("distance", length(from))
            .with("governs", governs)
            .with("line", length(line))
            .with("equilibrium", length(equilibrium))
            .with("stands", length(r.stands_m)));
    }
    if let Some(factor) = r.factor {
        let strength = if r.undrained { words::EDGE_UNDRAINED } else { words::EDGE_DRAINED };
        say(&words::EDGE_FACTOR
            .with("factor", number(factor))
            .with("required", number(r.required))
            .with("strength", strength));
    }
    if let Some(hours) = r.ends_after_h {
        say(&words::EDGE_ENDS.with("hours", number(hours)));
    }
    if let (Some(force), Some(height)) = (r.support_n_m, r.support_height_m) {
        say(&words::EDGE_SUPPORT
            .with("force", Quantity::new(force, Dimension::Stiffness))
            .with("height", length(height)));
    }
    say(&words::EDGE_NOTE.message());
    if let Some(circle) = &r.circle {
        slices(circle, &words::EDGE_SLICES.message(), said);
    }
    if let (Some(circle), Some(from)) = (&r.circle_at_distance, r.from_crest_m) {
        slices(circle, &words::EDGE_SLICES_AT.with("distance", length(from)), said);
    }
    working::print(steps, None, said);
}

/// The slices of a circle under a heading, with the digits of a working: what its factor can be added up from.
fn slices(circle: &EdgeCircle, heading: &Message, said: Said) {
    let w = said.wording();
    let of = |value: f64, dimension: Dimension| w.worked(Quantity::new(value, dimension));
    terminal::line("");
    terminal::paragraph(&w.render(heading), "", "  ");
    for s in &circle.slices {
        let line = [
            ("x", of(s.x_m, Dimension::Length)),
            ("b", of(s.width_m, Dimension::Length)),
            ("W", of(s.weight_n_m, Dimension::Stiffness)),
            ("Q", of(s.load_n_m, Dimension::Stiffness)),
            ("α", of(s.slope_deg.to_radians(), Dimension::Angle)),
            ("u", of(s.pore_pa, Dimension::Pressure)),
            ("c", of(s.cohesion_pa, Dimension::Pressure)),
            ("φ", of(s.friction_deg.to_radians(), Dimension::Angle)),
            ("m_α", w.worked(Quantity::number(s.m_alpha))),
        ];
        let line: Vec<_> = line.iter().map(|(name, value)| format!("{name} = {value}")).collect();
        terminal::paragraph(&line.join(", "), "  ", "    ");
    }
}
