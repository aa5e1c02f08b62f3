//! A floor slab that spans one way, under a pallet that may stand anywhere on it.

use crate::beam::{Beam, BeamLoad};
use crate::carried::{Carried, Part};
use crate::even_load::choices;
use crate::landing_range::Ranges;
use crate::pallet_feet::Feet;
use crate::section::Basis;
use crate::slab::{Section, control_perimeter, effective_width, effective_width_on_cantilever};
use crate::slab_steps;
use crate::text;
use crate::worst_place::{Effect, WorstPlace, greatest};
use evidence::{Faults, Trace};
use quantity::{Dimension, Quantity};

/// Where the bending strength of a slab comes from.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Bending {
    /// Design moments stated by its engineer, N·m a metre, at full strength of the concrete `f_ck` (Pa): before, they
    /// count by `f_ck(t)/f_ck`, which is less than what is left.
    Stated {
        /// Where it sags.
        sagging: f64,
        /// Over the supports.
        hogging: f64,
        /// Class of the concrete.
        full_strength: f64,
    },
    /// From the reinforcement, m² a metre.
    Reinforced {
        /// At the bottom.
        bottom: f64,
        /// At the top.
        top: f64,
    },
}

/// A slab.
#[derive(Debug, Clone, PartialEq)]
pub struct Slab {
    /// A strip 1 m wide.
    pub beam: Beam,
    /// The section now; `None`: strength at this age cannot be told.
    pub section: Option<Section>,
    /// Bending.
    pub bending: Bending,
    /// Reinforcement at the bottom across the span, m² a metre; 0 where not known.
    pub steel_across: f64,
    /// Own weight and finishes, Pa.
    pub own: f64,
    /// Even variable load beside the pallet, Pa.
    pub beside: f64,
    /// From the pallet to the nearest free edge along and across the span, m; `None`: none; 0: not known.
    pub to_edges: [Option<f64>; 2],
}

/// Share by which the proven bound of a worst place may exceed what is reached.
const TOLERANCE: f64 = 0.01;

impl Slab {
    /// The slab under a pallet of `load` (N, with the allowance for setting down) on `feet`, `along` the span.
    ///
    /// # Errors
    /// Every number out of its range; a pallet longer than the slab.
    pub fn under(&self, load: f64, feet: &Feet, trace: &mut impl Trace) -> Result<Vec<Carried>, Faults> {
        let mut ranges = Ranges::default();
        let [long, wide] = feet.size();
        ranges.within("load", load, Dimension::Force, 0.0, 1e6);
        ranges.within("pallet.along", long, Dimension::Length, 0.0, self.beam.length());
        ranges.within("spans", self.beam.spans().len() as f64, Dimension::Number, 0.0, 6.0);
        ranges.within("own", self.own, Dimension::Pressure, 0.0, 50e3);
        ranges.within("beside", self.beside, Dimension::Pressure, 0.0, 50e3);
        ranges.within("steel_across", self.steel_across, Dimension::Area, 0.0, 0.04);
        for (key, e) in ["to_edges[0]", "to_edges[1]"].into_iter().zip(self.to_edges) {
            ranges.within(key, e.unwrap_or(0.0), Dimension::Length, 0.0, 1000.0);
        }
        if let Bending::Stated { sagging, hogging, full_strength } = self.bending {
            ranges.within("bending.sagging", sagging, Dimension::Moment, 100.0, 1e7);
            ranges.within("bending.hogging", hogging, Dimension::Moment, 0.0, 1e7);
            ranges.within("bending.full_strength", full_strength, Dimension::Pressure, 8e6, 90e6);
        }
        ranges.done(())?;

        let [always, sometimes] = Basis::Design.factors();
        let design = sometimes * load;
        let even = choices(&self.beam, always * self.own, sometimes * self.beside);
        let simple = self.beam.is_simple();
        let (sagging, width) = self.worst(&even, design, feet, Effect::Sagging);
        let factored = [always * self.own, sometimes * self.beside];
        trace.step(|| slab_steps::bending(&self.beam, text::STEP_SLAB_SAGGING, factored, design, (sagging, width)));
        let sagging = sagging.bound;
        let hogging = if simple {
            0.0
        } else {
            let (hogging, width) = self.worst(&even, design, feet, Effect::Hogging);
            trace.step(|| slab_steps::bending(&self.beam, text::STEP_SLAB_HOGGING, factored, design, (hogging, width)));
            hogging.bound
        };
        let even_shear = even.iter().map(|l| self.beam.solved(l).shear().value.abs()).fold(0.0, f64::max);

        let (mut limits, mut depth) = ([None; 2], None);
        let (mut shear, mut punching, mut crushing) = (None, None, None);
        if let Some(s) = self.section {
            let moments = match self.bending {
                Bending::Stated { sagging, hogging, full_strength } => {
                    let left = (s.concrete / full_strength).min(1.0);
                    [left * sagging, left * hogging]
                }
                Bending::Reinforced { bottom, top } => [s.bending(bottom, trace)?, s.bending(top, trace)?],
            };
            limits = moments.map(Some);
            depth = Some(s.depth);
            let bottom = if let Bending::Reinforced { bottom, .. } = self.bending { bottom } else { 0.0 };
            let top = if let Bending::Reinforced { top, .. } = self.bending { top } else { 0.0 };
            let least = if self.beam.spans().len() > 1 { bottom.min(top) } else { bottom };
            shear = Some(s.shear_stress(least, trace)? * s.depth);
            punching = Some(s.shear_stress((bottom * self.steel_across).sqrt(), trace)?);
            crushing = Some(s.crushing_stress());
        }
        let q = Quantity::new;
        let of = |part, demand, limit: Option<f64>, dimension| Carried {
            part,
            demand: q(demand, dimension),
            limit: limit.map(|l| q(l, dimension)),
        };
        // The whole pallet may stand just beside a support, and all of it pass one section; at a free edge it spreads to
        // one side.
        let spreads = depth.unwrap_or(0.0);
        let spread = wide + spreads + self.to_edges[1].map_or(spreads, |e| e.clamp(0.0, spreads));
        let (foot_long, foot_wide, share) = feet.heaviest();
        let d = depth.unwrap_or(f64::NAN);
        let stress = |force: f64, size| force / (control_perimeter(size, d, self.to_edges) * d);
        let (foot, pallet) = (stress(share * design, [foot_long, foot_wide]), stress(design, [long, wide]));
        let edge = share * design / (2.0 * (foot_long + foot_wide) * d);
        let around = |size| control_perimeter(size, d, self.to_edges);
        trace.step(|| slab_steps::wide_shear(design, spread, even_shear));
        let foot_size = [foot_long, foot_wide];
        trace.step(|| slab_steps::punching(text::STEP_SLAB_PUNCHING, share * design, around(foot_size), d));
        trace.step(|| slab_steps::punching(text::STEP_PALLET_PUNCHING, design, around([long, wide]), d));
        trace.step(|| slab_steps::crushing(share * design, foot_size, d, edge));
        let over_supports = (!simple).then(|| of(Part::SlabHogging, hogging, limits[1], Dimension::Moment));
        let first = of(Part::SlabSagging, sagging, limits[0], Dimension::Moment);
        let others = [
            of(Part::SlabShear, design / spread + even_shear, shear, Dimension::Force),
            of(Part::FootPunching, foot, punching, Dimension::Pressure),
            of(Part::PalletPunching, pallet, punching, Dimension::Pressure),
            of(Part::FootCrushing, edge, crushing, Dimension::Pressure),
        ];
        Ok(std::iter::once(first).chain(over_supports).chain(others).collect())
    }

    /// Worst moment of a strip of 1 m, as a proven bound: even loads as they are, the pallet over the width that
    /// bends with it where it stands.
    fn worst(&self, even: &[Vec<BeamLoad>], load: f64, feet: &Feet, effect: Effect) -> (WorstPlace, f64) {
        let [long, wide] = feet.size();
        let supports = self.beam.supports();
        let (first, last) = (supports[0], supports[supports.len() - 1]);
        let to_edge = self.to_edges[1].map(|e| e + wide / 2.0);
        let width = |u: f64| {
            let x = u + long / 2.0;
            if x < first {
                effective_width_on_cantilever(wide, first - x, to_edge)
            } else if x > last {
                effective_width_on_cantilever(wide, x - last, to_edge)
            } else {
                let after = supports.iter().position(|s| *s > x).unwrap_or(supports.len() - 1).max(1);
                let (a, b) = (supports[after - 1], supports[after]);
                effective_width(wide, (x - a).min(b - x), b - a, to_edge)
            }
        };
        // With the bounds of `worst_place`: no moment under a unit load exceeds 1.5 l, no width changes faster
        // than by 2.4 m a metre.
        let longest = self.beam.spans().iter().map(|s| s.length).fold(0.0, f64::max);
        let out = self.beam.overhangs().into_iter().flatten().map(|s| s.length).fold(0.0, f64::max);
        let size = (1.5 * longest).max(out);
        let steep = load * (3.0 / wide + size * 2.4 / (wide * wide));
        let reach = (0.0, (self.beam.length() - long).max(0.0));
        let mut most = WorstPlace::NOTHING;
        for fixed in even {
            let mut loads = fixed.clone();
            let mut value = |u: f64| {
                loads.truncate(fixed.len());
                let metre = load / width(u);
                loads.extend(feet.along.iter().map(|f| BeamLoad::Strip {
                    from: u + f.from,
                    to: (u + f.to).min(self.beam.length()),
                    intensity: metre * f.share / (f.to - f.from),
                }));
                let s = self.beam.solved(&loads);
                if effect == Effect::Sagging { s.sagging().value } else { -s.hogging().value }
            };
            most = most.or(greatest(&mut value, reach, steep, TOLERANCE, load * longest.max(out) / (4.0 * wide)));
        }
        (most, width(most.place))
    }
}
