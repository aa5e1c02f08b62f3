//! A timber deck: boards over joists, joists over bearers, a pallet on its feet anywhere on it.
//!
//! The pallet's feet are a grid, so a board gets one row of them times the share of the load that stands on its
//! width, and a joist one row times the share that the boards bring to it: both greatest shares are found first,
//! then the worst place along the member. Boards count as one span and as continuous, whichever is worse, since
//! nobody knows whether their far ends are held down.

use crate::beam::{Beam, BeamLoad, Span};
use crate::carried::{Carried, Part};
use crate::even_load::choices;
use crate::landing_range::Ranges;
use crate::pallet_feet::{Feet, Foot};
use crate::section::Capacity;
use crate::text;
use crate::worst_place::{Effect, MovingStrip, WorstPlace, greatest, worst_place};
use evidence::{Faults, Source, Step, Trace};
use quantity::{Dimension, Quantity};

/// Sag of a platform is at most this share of its span: 29 CFR 1926.451(f)(16), read.
pub const SAG_SHARE: f64 = 1.0 / 60.0;
/// Share by which the proven bound of a worst place may exceed what is reached.
const TOLERANCE: f64 = 0.005;
/// More spans than this are refused: the variable load is tried on every choice of spans.
const MOST_SPANS: usize = 6;

/// Boards across the joists.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Boards {
    /// Of one board.
    pub capacity: Capacity,
    /// `EI` of one board, N·m².
    pub stiffness: f64,
    /// Width of one board, m.
    pub breadth: f64,
    /// Spans that a board runs over at most; 1: joint over every joist.
    pub spans: usize,
}

/// Joists under the boards.
#[derive(Debug, Clone, PartialEq)]
pub struct Joists {
    /// One joist on its bearers.
    pub beam: Beam,
    /// Of one joist.
    pub capacity: Capacity,
    /// From middle to middle, m.
    pub spacing: f64,
}

/// A deck and what lies on it besides the pallet.
#[derive(Debug, Clone, PartialEq)]
pub struct Deck {
    /// The boards.
    pub boards: Boards,
    /// The joists.
    pub joists: Joists,
    /// Own weight, Pa.
    pub own: f64,
    /// Even variable load beside the pallet: stored goods, people, Pa.
    pub beside: f64,
}

/// What a deck makes of a pallet.
#[derive(Debug, Clone, PartialEq)]
pub struct DeckAnswer {
    /// Every part.
    pub carried: Vec<Carried>,
    /// Greatest force that a support of a joist would have to hold it down with, N; 0: it rests everywhere.
    pub hold_down: f64,
    /// Greatest share of the pallet that one joist gets.
    pub joist_share: f64,
}

impl Deck {
    /// The deck under a pallet of `load` (N, as it acts: with the allowance for setting down) on `feet`, `along`
    /// being along the joists.
    ///
    /// # Errors
    /// Every number out of its range.
    pub fn under(&self, load: f64, feet: &Feet, trace: &mut impl Trace) -> Result<DeckAnswer, Faults> {
        self.check(load)?;
        let b = self.boards;
        let spacing = self.joists.spacing;
        let span = Span { length: spacing, stiffness: b.stiffness };
        let one = Beam::equal(1, span)?;
        let many = if b.spans > 1 { vec![one, Beam::equal(b.spans, span)?] } else { vec![one] };

        let on_board = share_on_width(&feet.along, b.breadth);
        let mut board = [WorstPlace::NOTHING; 3];
        for beam in &many {
            let member = Member { beam, capacity: b.capacity, width: b.breadth };
            let found = member.worst(self, load * on_board, &feet.across)?;
            board = [0, 1, 2].map(|i| board[i].or(found[i]));
        }

        let mut share = share_by_simple_boards(&feet.across, spacing);
        if let Some(beam) = many.get(1) {
            let row = moving(1.0, &feet.across);
            let end = feet.size()[1];
            for i in 1..b.spans {
                let at = worst_place(beam, &[], &row, (-end, beam.length()), Effect::Reaction(i), TOLERANCE)?;
                share = share.max(at.bound);
            }
        }
        // The inner support of two spans gets 5/4 of an even load.
        let carried_width = spacing * if b.spans > 1 { 1.25 } else { 1.0 };
        let member = Member { beam: &self.joists.beam, capacity: self.joists.capacity, width: carried_width };
        let joist = member.worst(self, load * share, &feet.along)?;
        let hold_down = member.hold_down(self, load * share, &feet.along)?;

        let ratio = |v: f64| Quantity::new(v, Dimension::Ratio);
        let shared = |title: evidence::TextId, symbol: &'static str, value: f64| Step {
            title: title.message(),
            formula: format!("F = {symbol} · W").into(),
            values: vec![(symbol.into(), ratio(value)), ("W".into(), Quantity::new(load, Dimension::Force))],
            result: ("F".into(), Quantity::new(value * load, Dimension::Force)),
            source: Source::Mechanics,
        };
        trace.step(|| shared(text::STEP_BOARD_SHARE, "s_b", on_board));
        let board_titles = [text::STEP_BOARD_MOMENT, text::STEP_BOARD_SHEAR];
        self.tell(board_titles, b.breadth, spacing, load * on_board, [board[0], board[1]], trace);
        trace.step(|| shared(text::STEP_JOIST_SHARE, "s_j", share));
        let longest = self.joists.beam.spans().iter().map(|s| s.length).fold(0.0, f64::max);
        let joist_titles = [text::STEP_JOIST_MOMENT, text::STEP_JOIST_SHEAR];
        self.tell(joist_titles, carried_width, longest, load * share, [joist[0], joist[1]], trace);
        let (board, joist) = (board.map(|w| w.bound), joist.map(|w| w.bound));
        let q = Quantity::new;
        let of = |part, demand, limit, dimension| Carried {
            part,
            demand: q(demand, dimension),
            limit: Some(q(limit, dimension)),
        };
        let carried = vec![
            of(Part::BoardMoment, board[0], b.capacity.moment, Dimension::Moment),
            of(Part::BoardShear, board[1], b.capacity.shear, Dimension::Force),
            of(Part::BoardSag, board[2], spacing * SAG_SHARE, Dimension::Length),
            of(Part::JoistMoment, joist[0], self.joists.capacity.moment, Dimension::Moment),
            of(Part::JoistShear, joist[1], self.joists.capacity.shear, Dimension::Force),
            of(Part::JoistSag, joist[2], longest * SAG_SHARE, Dimension::Length),
        ];
        Ok(DeckAnswer { carried, hold_down, joist_share: share })
    }

    /// Moment and shear of a member that carries so much width of deck, with the load (N) at its worst place. What counts is
    /// the bound, at most 0.5 % above what is reached.
    fn tell(
        &self,
        titles: [evidence::TextId; 2],
        width: f64,
        span: f64,
        load: f64,
        worst: [WorstPlace; 2],
        trace: &mut impl Trace,
    ) {
        let factors = self.joists.capacity.basis.factors();
        let symbols = [("M(u)", "M", Dimension::Moment), ("V(u)", "V", Dimension::Force)];
        for ((title, w), (reached, bound, dimension)) in titles.into_iter().zip(worst).zip(symbols) {
            let pressure = |pascals: f64| Quantity::new(pascals, Dimension::Pressure);
            trace.step(|| Step {
                title: title.message(),
                formula: "of g_d·b, q_d·b and F_d on the feet from u;  at most 0.5 % above what is reached".into(),
                values: vec![
                    ("l".into(), Quantity::new(span, Dimension::Length)),
                    ("b".into(), Quantity::new(width, Dimension::Length)),
                    ("g_d".into(), pressure(factors[0] * self.own)),
                    ("q_d".into(), pressure(factors[1] * self.beside)),
                    ("F_d".into(), Quantity::new(factors[1] * load, Dimension::Force)),
                    ("u".into(), Quantity::new(w.place, Dimension::Length)),
                    (reached.into(), Quantity::new(w.reached, dimension)),
                ],
                result: (bound.into(), Quantity::new(w.bound, dimension)),
                source: Source::Mechanics,
            });
        }
    }

    fn check(&self, load: f64) -> Result<(), Faults> {
        let mut ranges = Ranges::default();
        let b = &self.boards;
        ranges.within("load", load, Dimension::Force, 0.0, 1e6);
        ranges.within("boards.moment", b.capacity.moment, Dimension::Moment, 1.0, 1e6);
        ranges.within("boards.shear", b.capacity.shear, Dimension::Force, 1.0, 1e7);
        ranges.within("boards.stiffness", b.stiffness, Dimension::Number, 10.0, 1e9);
        ranges.within("boards.breadth", b.breadth, Dimension::Length, 0.03, 3.0);
        ranges.within("boards.spans", b.spans as f64, Dimension::Number, 1.0, MOST_SPANS as f64);
        ranges.within("joists.moment", self.joists.capacity.moment, Dimension::Moment, 10.0, 1e8);
        ranges.within("joists.shear", self.joists.capacity.shear, Dimension::Force, 10.0, 1e8);
        ranges.within("joists.spacing", self.joists.spacing, Dimension::Length, 0.1, 5.0);
        ranges.within("joists.spans", self.joists.beam.spans().len() as f64, Dimension::Number, 0.0, MOST_SPANS as f64);
        ranges.within("own", self.own, Dimension::Pressure, 0.0, 20e3);
        ranges.within("beside", self.beside, Dimension::Pressure, 0.0, 50e3);
        ranges.done(())
    }
}

/// One board or one joist and the width of deck it carries.
struct Member<'a> {
    beam: &'a Beam,
    capacity: Capacity,
    width: f64,
}

impl Member<'_> {
    /// Even loads with their factors: the permanent one everywhere, the variable one on each choice of members.
    fn even(&self, deck: &Deck, factors: [f64; 2]) -> Vec<Vec<BeamLoad>> {
        choices(self.beam, factors[0] * deck.own * self.width, factors[1] * deck.beside * self.width)
    }

    /// Worst moment, shear (with factors) and sag (without), as proven bounds.
    fn worst(&self, deck: &Deck, load: f64, row: &[Foot]) -> Result<[WorstPlace; 3], Faults> {
        let factors = self.capacity.basis.factors();
        let strength = self.even(deck, factors);
        let moment = self.most(&strength, factors[1] * load, row, Effect::Sagging)?;
        let hogging = if self.beam.is_simple() {
            WorstPlace::NOTHING
        } else {
            self.most(&strength, factors[1] * load, row, Effect::Hogging)?
        };
        let shear = self.most(&strength, factors[1] * load, row, Effect::Shear)?;
        let sag = self.most(&self.even(deck, [1.0, 1.0]), load, row, Effect::Sag)?;
        Ok([moment.or(hogging), shear, sag])
    }

    /// What a support must hold down: the permanent load helps, the variable one does not where it does.
    fn hold_down(&self, deck: &Deck, load: f64, row: &[Foot]) -> Result<f64, Faults> {
        if self.beam.is_simple() {
            return Ok(0.0);
        }
        let even = self.even(deck, [1.0, 1.0]);
        let mut most = 0.0_f64;
        for i in 0..self.beam.supports().len() {
            most = most.max(self.most(&even, load, row, Effect::Lift(i))?.bound);
        }
        Ok(most)
    }

    fn most(&self, even: &[Vec<BeamLoad>], load: f64, row: &[Foot], effect: Effect) -> Result<WorstPlace, Faults> {
        let end = row.last().map_or(0.0, |f| f.to);
        let row = moving(load, row);
        let mut most = WorstPlace::NOTHING;
        for fixed in even {
            most = most.or(worst_place(self.beam, fixed, &row, (-end, self.beam.length()), effect, TOLERANCE)?);
        }
        Ok(most)
    }
}

fn moving(load: f64, row: &[Foot]) -> Vec<MovingStrip> {
    row.iter().map(|f| MovingStrip { from: f.from, to: f.to, force: load * f.share }).collect()
}

/// Greatest share of a row of feet on one board of that width: the share is linear in the board's place between
/// the places where an edge of the board meets an edge of a foot, so one of these is the worst.
fn share_on_width(row: &[Foot], width: f64) -> f64 {
    let on = |t: f64| {
        let one = |f: &Foot| f.share * ((f.to.min(t + width) - f.from.max(t)).max(0.0) / (f.to - f.from));
        row.iter().map(one).sum::<f64>()
    };
    row.iter().flat_map(|f| [f.from, f.to, f.from - width, f.to - width]).map(on).fold(0.0, f64::max)
}

/// Greatest share that simple boards bring to one joist: each foot by its mean height under a tent of the joists'
/// spacing to either side.
fn share_by_simple_boards(row: &[Foot], spacing: f64) -> f64 {
    // Integral of the tent from its foot at −spacing to x.
    let area = |x: f64| {
        let x = x.clamp(-spacing, spacing);
        if x < 0.0 {
            (x + spacing) * (x + spacing) / (2.0 * spacing)
        } else {
            spacing / 2.0 + x - x * x / (2.0 * spacing)
        }
    };
    let mut share =
        |u: f64| row.iter().map(|f| f.share * (area(f.to - u) - area(f.from - u)) / (f.to - f.from)).sum::<f64>();
    let end = row.last().map_or(0.0, |f| f.to);
    greatest(&mut share, (0.0, end), 1.0 / spacing, TOLERANCE, 1.0).bound
}
