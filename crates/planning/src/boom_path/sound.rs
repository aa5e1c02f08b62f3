//! Whether chart, load factor and tilt hold along an edge.
//!
//! The chart is read for every edge that is looked at: it costs little. Load factor and tilt are weighed only along a
//! way that is free and charted; where they fail the edge is refused and the search goes on, and from the third time
//! they too are weighed for every edge that is looked at.

use super::lattice::Lattice;
use super::pieces;
use crate::checks::chart::{self, Place};
use crate::checks::statics;
use crate::context::Context;
use crate::movement::{Leg, Passed};
use crate::posed::{Posed, tool_point};
use machine::{Attachment, BoomPosition, Chart};

/// How far the carriage may come back over the line on which it stood free of the load, m: round-off.
const TOUCHING: f64 = 1e-6;

/// What is known of an edge.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Known {
    Not,
    Charted,
    Holds,
    Fails,
}

/// Chart and tipping along edges.
pub(crate) struct Sound<'s> {
    ctx: &'s Context<'s>,
    posed: &'s Posed,
    attachment: &'s Attachment,
    chart: Option<&'s Chart>,
    /// With the load on.
    loaded: bool,
    /// How far ahead the tool point may be without load, m: the load stands there.
    ahead: f64,
    /// Weighed with every edge.
    pub(crate) weighs: bool,
    edges: Vec<Known>,
}

impl<'s> Sound<'s> {
    pub(crate) fn new(
        ctx: &'s Context<'s>,
        posed: &'s Posed,
        attachment: &'s Attachment,
        lattice: &Lattice,
        loaded: bool,
        free: BoomPosition,
    ) -> Self {
        let chart = chart::choose(ctx, Some(posed));
        let edges = vec![Known::Not; lattice.edges.len()];
        let ahead = if loaded { f64::INFINITY } else { tool_point(ctx, attachment, free).x + TOUCHING };
        Self { ctx, posed, attachment, chart, loaded, ahead, weighs: false, edges }
    }

    /// True if the edge is known to fail.
    pub(crate) fn refused(&self, edge: u32) -> bool {
        self.edges[edge as usize] == Known::Fails
    }

    /// True if an edge has been found good as far as it is asked now.
    pub(crate) fn known(&self, edge: u32) -> bool {
        match self.edges[edge as usize] {
            Known::Holds => true,
            Known::Charted => !self.weighs,
            Known::Not | Known::Fails => false,
        }
    }

    /// True if the edge holds, as far as it is asked now.
    pub(crate) fn edge(&mut self, lattice: &Lattice, edge: u32) -> bool {
        if self.refused(edge) {
            return false;
        }
        if self.known(edge) {
            return true;
        }
        let pieces = self.pieces(lattice, edge);
        let good = (self.edges[edge as usize] == Known::Charted || self.may_be_there(lattice, edge, &pieces))
            && (!self.weighs || self.weighed(&pieces));
        self.edges[edge as usize] = match (good, self.weighs) {
            (false, _) => Known::Fails,
            (true, true) => Known::Holds,
            (true, false) => Known::Charted,
        };
        good
    }

    /// True if load factor and tilt hold along all of the legs.
    pub(crate) fn weigh_legs(&self, legs: &[Leg]) -> bool {
        self.weighed(&pieces::of(self.ctx, self.attachment, legs))
    }

    /// Refuses an edge that was weighed with a whole way.
    pub(crate) fn weigh(&mut self, lattice: &Lattice, edge: u32) -> bool {
        let pieces = self.pieces(lattice, edge);
        let good = self.weighed(&pieces);
        self.edges[edge as usize] = if good { Known::Holds } else { Known::Fails };
        good
    }

    /// True if chart, tipping and what stands at the landing allow the leg.
    pub(crate) fn leg(&self, leg: &Leg) -> bool {
        let pieces = pieces::of(self.ctx, self.attachment, &[*leg]);
        let ends = pieces.iter().flat_map(|p| [p.boom, p.until]);
        self.behind(ends) && (!self.loaded || self.charted(&pieces)) && self.weighed(&pieces)
    }

    fn may_be_there(&self, lattice: &Lattice, edge: u32, pieces: &[Passed]) -> bool {
        let ends = lattice.edges[edge as usize].ends.map(|i| lattice.nodes[i as usize]);
        self.behind(ends.into_iter()) && (!self.loaded || self.charted(pieces))
    }

    /// True if the tool stays behind the load that is set down.
    fn behind(&self, mut booms: impl Iterator<Item = BoomPosition>) -> bool {
        booms.all(|boom| tool_point(self.ctx, self.attachment, boom).x <= self.ahead)
    }

    fn pieces(&self, lattice: &Lattice, edge: u32) -> Vec<Passed> {
        let leg = lattice.leg(self.ctx, self.attachment, &lattice.edges[edge as usize]);
        let ends = lattice.edges[edge as usize].ends.map(|i| lattice.nodes[i as usize]);
        // Retracted, only where it is level counts, which is asked of the whole movement.
        if ends.iter().all(|b| b.extension <= 0.0) {
            return Vec::new();
        }
        pieces::of(self.ctx, self.attachment, &[leg])
    }

    fn charted(&self, pieces: &[Passed]) -> bool {
        let Some(chart) = self.chart else { return false };
        let mass = self.ctx.load.mass_kg.high;
        pieces.iter().all(|piece| {
            let place = Place::passed(self.ctx, self.attachment, piece);
            let read = chart::read(self.ctx, self.posed, chart, self.attachment, place, &mut evidence::Silent);
            read.capacity.is_some_and(|capacity| mass <= capacity)
        })
    }

    fn weighed(&self, pieces: &[Passed]) -> bool {
        if pieces.is_empty() {
            return true;
        }
        let tried: Vec<_> = if self.loaded {
            pieces.iter().flat_map(|p| statics::with_load(self.ctx, p)).collect()
        } else {
            pieces.iter().flat_map(Passed::weighed).map(statics::bare).collect()
        };
        statics::hold(self.ctx, self.posed, self.attachment, tried)
    }
}
