//! The working of a mat: every number that is in a formula stands beside it.

use crate::mat_material::Spreads;
use crate::mats::{GIVE, Mat, MatAnswer, PadEdge, PadOnMat};
use crate::step_values::{Value, force, length, moment, number, pressure};
use crate::text;
use evidence::{Source, Step, Trace};

impl Mat {
    /// `stiff_works`: sides of the part that a reach of `stiff` makes, m.
    pub(crate) fn steps(
        &self,
        pad: &PadOnMat,
        stiff_works: [f64; 2],
        stiff: f64,
        a: &MatAnswer,
        trace: &mut impl Trace,
    ) {
        self.material.steps(trace);
        if stiff.is_finite() {
            trace.step(|| Step {
                title: text::STEP_MAT_STIFF.message(),
                formula: "c_s: p_s·c_s³/(8·E·t³/12) = g,  p_s = F/(L_s·B_s)".into(),
                values: vec![
                    force("F", pad.force),
                    length("L_s", stiff_works[0]),
                    length("B_s", stiff_works[1]),
                    pressure("E", self.material.modulus),
                    length("t", self.thickness),
                    number("g", GIVE),
                ],
                result: length("c_s", stiff),
                source: Source::from_memory("mats under outriggers, published practice"),
            });
        }
        trace.step(|| Step {
            title: text::STEP_MAT_PRESSURE.message(),
            formula: "p = F/(L′·B′)".into(),
            values: vec![force("F", pad.force), length("L′", a.works[0]), length("B′", a.works[1])],
            result: pressure("p", a.pressure),
            source: Source::Mechanics,
        });
        let plate = self.material.spreads == Spreads::BothWays;
        let edges = self.edges(pad, a.works, a.pressure);
        let at = |edge: PadEdge| -> Vec<Value> {
            let mut values = vec![pressure("p", a.pressure), length("c", edge.reach)];
            if plate {
                values.extend([length("k", edge.corner), length("a", edge.side)]);
            }
            values.push(length("t", self.thickness));
            values
        };
        trace.step(|| Step {
            title: text::STEP_MAT_BENDING.message(),
            formula: if plate {
                "σ = 6·M_1/(1 m·t²) ≤ f_m,  M_1 = 1 m·p·(c²/2 + 2·k·c²/(3·a))"
            } else {
                "σ = 6·M_1/(1 m·t²) ≤ f_m,  M_1 = 1 m·p·c²/2"
            }
            .into(),
            values: {
                let mut values = at(if edges[1].moment() > edges[0].moment() { edges[1] } else { edges[0] });
                values.extend([moment("M_1", a.moment), pressure("f_m", self.material.bending)]);
                values
            },
            result: pressure("σ", a.bending),
            source: self.material.source.clone(),
        });
        trace.step(|| Step {
            title: text::STEP_MAT_SHEAR.message(),
            formula: if plate { "τ = 1.5·p·(c + k·c/a)/t ≤ f_v" } else { "τ = 1.5·p·c/t ≤ f_v" }.into(),
            values: {
                let mut values = at(if edges[1].shear() > edges[0].shear() { edges[1] } else { edges[0] });
                values.push(pressure("f_v", self.material.shear));
                values
            },
            result: pressure("τ", a.shear),
            source: self.material.source.clone(),
        });
    }
}
