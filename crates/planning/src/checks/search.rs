//! The worst of many corners of the uncertain inputs: few of them are reckoned in full.

use super::contacts::{self, Least};
use super::statics::{Corner, Statics, required};
use super::uneven::Uneven;
use crate::context::Context;
use machine::SupportState;
use stability::{
    LineOnSprings, LoadOnBoom, RearAxleState, Stance, Support, TippingLine, TipsOver, load_factor_on_springs,
    load_factor_with, reactions, tipping_lines,
};

/// One stance with its tipping lines.
pub(super) struct Stand {
    pub(super) stance: Stance,
    lines: [TippingLine; 6],
    /// The same lines where tyres and pads give.
    soft: [LineOnSprings; 6],
}

/// Keeps the worst of all corners.
pub(super) struct Search<'c, 'a> {
    ctx: &'c Context<'a>,
    pub(super) stands: Vec<Stand>,
    /// Required tilt for each line, rad.
    required: [f64; 6],
    /// Every corner, with the least sine of the tilt that can remain over each line.
    corners: Vec<(Corner, [f64; 6])>,
    /// Corners without load, with the load to be put on, and how much of it tips them on rigid contacts.
    factors: Vec<(Corner, LoadOnBoom, f64, TipsOver)>,
    /// Sine of the tilt below which a line becomes the worst so far.
    threshold: [f64; 6],
    gust: Option<f64>,
    pub(super) found: Option<Statics>,
}

impl<'c, 'a> Search<'c, 'a> {
    pub(super) fn new(ctx: &'c Context<'a>, gust: Option<f64>) -> Self {
        let over = [TipsOver::Front, TipsOver::Rear, TipsOver::Left, TipsOver::Right, TipsOver::Left, TipsOver::Right];
        Self {
            ctx,
            stands: Vec::new(),
            required: over.map(|over| required(ctx, over)),
            corners: Vec::with_capacity(256),
            factors: Vec::with_capacity(128),
            threshold: [f64::INFINITY; 6],
            gust,
            found: None,
        }
    }

    /// Index of a stance, reckoned once.
    pub(super) fn stand(&mut self, stance: Stance) -> u16 {
        if let Some(known) = self.stands.iter().position(|s| s.stance == stance) {
            return known as u16;
        }
        let lines = tipping_lines(self.ctx.machine, stance);
        let springs = super::tyres::springs(self.ctx, stance.support.state);
        let soft = lines.map(|line| LineOnSprings::of(self.ctx.machine, stance, &line, springs));
        self.stands.push(Stand { stance, lines, soft });
        (self.stands.len() - 1) as u16
    }

    /// Tipping lines of a stance.
    pub(super) fn lines(&self, stand: u16) -> [TippingLine; 6] {
        self.stands[usize::from(stand)].lines
    }

    fn found(&mut self, corner: Corner) -> &mut Statics {
        let (gust, line) = (self.gust, self.stands[usize::from(corner.stand)].lines[0]);
        self.found.get_or_insert(Statics {
            factor: None,
            factor_corner: None,
            tilt: f64::INFINITY,
            tilt_required: 1.0,
            over: TipsOver::Front,
            tilt_corner: corner,
            tilt_line: line,
            force: [f64::NEG_INFINITY; 4],
            least: Least::NONE,
            uneven: Uneven::NONE,
            gust,
        })
    }

    pub(super) fn take(&mut self, corner: Corner, load: Option<LoadOnBoom>) {
        let loading = &corner.loading;
        let soft = &self.stands[usize::from(corner.stand)].soft;
        let least = core::array::from_fn(|i| soft[i].sine_at_very_least(loading, corner.overturning[i]));
        self.corners.push((corner, least));
        let lines = &self.stands[usize::from(corner.stand)].lines;
        let looks = core::array::from_fn(|i| contacts::looks(&corner, least[i], &lines[i]));
        let forces = self.forces(&corner);
        let s = self.found(corner);
        s.least.looks(looks, corner, load);
        for force in forces.into_iter().flatten() {
            s.least.forces(force);
            s.uneven.forces(force);
            for (most, force) in s.force.iter_mut().zip(force) {
                // A force that is not a number stays one.
                if force > *most || force.is_nan() {
                    *most = force;
                }
            }
        }
    }

    /// Forces on the contacts of the lift. A locked axle carries from before it locked on: as much as free, as
    /// locked, or between. Driven on its tyres to stand on pads, none of them.
    fn forces(&self, corner: &Corner) -> [Option<[f64; 4]>; 2] {
        let Corner { loading, stance, .. } = corner;
        let state = stance.support.state;
        if state != self.ctx.lift.support {
            return [None; 2];
        }
        let on = |stance: Stance| reactions(self.ctx.machine, stance, &loading.masses, loading.gravity).force;
        let may_be_free = stance.support.rear == RearAxleState::Locked && state != SupportState::Outriggers;
        let free = Stance { support: Support { rear: RearAxleState::Free, ..stance.support }, ..*stance };
        [Some(on(*stance)), may_be_free.then(|| on(free))]
    }

    /// Reckons the tilt of every corner over every line that is not proven to be no worse than the worst:
    /// first of the one that looks worst, so that few are left.
    pub(super) fn tilts(&mut self) {
        let corners = std::mem::take(&mut self.corners);
        let looks =
            |(_, least): &(Corner, [f64; 6])| (0..6).map(|i| least[i] / self.required[i]).fold(f64::INFINITY, f64::min);
        if let Some((corner, _)) = corners.iter().min_by(|a, b| looks(a).total_cmp(&looks(b))) {
            (0..6).for_each(|i| self.tilt(corner, i));
        }
        for (corner, least) in &corners {
            for (i, least) in least.iter().enumerate() {
                // A comparison with what is no number goes on to the full reckoning.
                if *least >= self.threshold[i] {
                    continue;
                }
                let nearer = self.stands[usize::from(corner.stand)].soft[i]
                    .sine_at_least(&corner.loading, corner.overturning[i]);
                if nearer >= self.threshold[i] {
                    continue;
                }
                self.tilt(corner, i);
            }
        }
    }

    fn tilt(&mut self, corner: &Corner, i: usize) {
        let stand = &self.stands[usize::from(corner.stand)];
        let (line, needed) = (stand.lines[i], self.required[i]);
        let tilt = stand.soft[i].tilt(&corner.loading);
        let s = self.found(*corner);
        // A tilt that is not a number must never pass: it becomes the worst and stays it.
        if tilt.is_nan() || tilt / needed < s.tilt / s.tilt_required {
            (s.tilt, s.tilt_required, s.over, s.tilt_corner, s.tilt_line) = (tilt, needed, line.over, *corner, line);
            let ratio = tilt / needed;
            for k in 0..6 {
                self.threshold[k] = libm::sin((ratio * self.required[k]).clamp(-1.5, 1.5));
            }
        }
    }

    pub(super) fn factor(&mut self, at_rest: Corner, load: LoadOnBoom) {
        if let Some((rigid, over)) = load_factor_with(
            &at_rest.loading,
            load,
            &self.stands[usize::from(at_rest.stand)].lines,
            &at_rest.overturning,
        ) {
            self.factors.push((at_rest, load, rigid, over));
        }
    }

    /// The least load factor of all corners, the one that is least on rigid contacts first.
    pub(super) fn least_factor(&mut self) {
        let mut factors = std::mem::take(&mut self.factors);
        if let Some(first) = (0..factors.len()).min_by(|a, b| factors[*a].2.total_cmp(&factors[*b].2)) {
            factors.swap(0, first);
        }
        for (at_rest, load, rigid, over) in factors {
            let worst = self.found.and_then(|s| s.factor).map_or(f64::INFINITY, |(worst, _)| worst);
            // On tyres that give it tips sooner. What is no worse than the worst so far needs no search.
            let most = rigid.min(worst);
            let lines = &self.stands[usize::from(at_rest.stand)].soft;
            let soft = load_factor_on_springs(lines, &at_rest.overturning, &at_rest.loading, load, most);
            let found = soft.map_or((rigid, over), |(factor, line)| (factor, line.over));
            let s = self.found(at_rest);
            if found.0.is_nan() || found.0 < worst {
                s.factor = Some(found);
                s.factor_corner = Some((at_rest, load));
            }
        }
    }
}
