//! Contacts close together press what lies deep below as one: an axle's, and the whole machine's, as a rectangle over their
//! outlines with the force of each pose and how far off its middle it acts.

use super::bearing::base;
use super::metres;
use super::statics::Statics;
use crate::SoilArea;
use crate::context::Context;
use crate::text;
use evidence::{Silent, Source, Step, TextId, Trace};
use ground::{FactorSet, Footprint, Load, Loads, PadOnProfile, Refusal};
use quantity::{Dimension, Quantity};

/// Which contacts count as one.
const GROUPS: [([bool; 4], TextId); 3] = [
    ([true, true, false, false], text::GROUP_FRONT),
    ([false, false, true, true], text::GROUP_REAR),
    ([true; 4], text::GROUP_ALL),
];

/// Several contacts in one pose.
#[derive(Debug, Clone, Copy)]
pub(super) struct Group {
    /// Which of them.
    of: [bool; 4],
    name: TextId,
    /// Forces of that pose, N.
    force: [f64; 4],
}

/// Every group of two or more contacts that may stand on the soil, in every pose that presses unevenly or hardest. None
/// where the soil has no second layer.
pub(super) fn groups<'a>(statics: &'a Statics, on: [bool; 4], soil: &SoilArea) -> impl Iterator<Item = Group> + 'a {
    let layered = soil.profile.layers.len() > 1;
    let of = GROUPS.into_iter().map(move |(of, name)| (core::array::from_fn(|i| of[i] && on[i]), name));
    let several = of.filter(move |(of, _): &([bool; 4], _)| layered && of.iter().filter(|o| **o).count() > 1);
    several.flat_map(|(of, name)| statics.uneven.poses().iter().map(move |&force| Group { of, name, force }))
}

impl Group {
    pub(super) fn name(&self) -> TextId {
        self.name
    }

    /// One rectangle over the outlines, with the design force; `None` where nothing presses.
    pub(super) fn pad(
        &self,
        ctx: &Context<'_>,
        set: FactorSet,
        slope: f64,
        trace: &mut impl Trace,
    ) -> Result<Option<PadOnProfile>, Refusal> {
        let on = crate::posed::contacts(ctx);
        let places = [
            [on.front_x, on.front_half],
            [on.front_x, -on.front_half],
            [on.rear_x, on.rear_half],
            [on.rear_x, -on.rear_half],
        ];
        let (mut low, mut high) = ([f64::INFINITY; 2], [f64::NEG_INFINITY; 2]);
        let (mut sum, mut moment) = (0.0, [0.0; 2]);
        for i in (0..4).filter(|i| self.of[*i]) {
            let force = self.force[i];
            if force.is_nan() {
                return Err(Refusal::NoNumber);
            }
            let force = force.max(0.0);
            let action = set.action(Loads { permanent: 0.0, variable: force }, &mut Silent);
            // A contact in the air presses nothing and spreads nothing.
            if action <= 0.0 {
                continue;
            }
            let sides = base(ctx, i, force, action, set, &mut Silent)?;
            for k in 0..2 {
                low[k] = low[k].min(places[i][k] - 0.5 * sides[k]);
                high[k] = high[k].max(places[i][k] + 0.5 * sides[k]);
                moment[k] += force * places[i][k];
            }
            sum += force;
        }
        if sum <= 0.0 {
            return Ok(None);
        }
        let vertical = set.action(Loads { permanent: 0.0, variable: sum }, trace);
        let off = |k: usize| moment[k] / sum - 0.5 * (low[k] + high[k]);
        let (width, length) = (high[1] - low[1], high[0] - low[0]);
        let base = Footprint::Rectangle { width, length };
        let load = Load { vertical, eccentricity: [off(1), off(0)], ..Load::default() };
        trace.step(|| {
            let value = |symbol: &'static str, si: f64| (symbol.into(), metres(si));
            Step {
                title: text::WORKING_GROUP.message(),
                formula: "B′ = B − 2·|e_B|,  L′ = L − 2·|e_L|,  A′ = B′·L′".into(),
                values: vec![value("B", width), value("L", length), value("e_B", off(1)), value("e_L", off(0))],
                result: (
                    "A′".into(),
                    Quantity::new((width - 2.0 * off(1).abs()) * (length - 2.0 * off(0).abs()), Dimension::Area),
                ),
                source: Source::CommonPractice,
            }
        });
        Ok(Some(PadOnProfile { base, load, depth: 0.0, slope }))
    }
}
