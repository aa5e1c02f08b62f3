//! A landing as a whole: its rating and what it is made of, under one load.

use crate::bay::{Bay, Propped};
use crate::carried::{Carried, Part};
use crate::deck::Deck;
use crate::pallet_feet::Feet;
use crate::slab_check::Slab;
use evidence::{Faults, Trace};
use quantity::STANDARD_GRAVITY as G;

/// What a landing is made of.
#[derive(Debug, Clone, PartialEq, Default)]
pub enum Structure {
    /// Nobody states it: only the rating speaks.
    #[default]
    NotStated,
    /// Boards on joists.
    Deck {
        /// The deck.
        deck: Box<Deck>,
        /// True if it is known that the joists' pressed edges are held sideways. Otherwise they bear less than their
        /// section, nobody knows how much.
        held: bool,
    },
    /// A slab that spans one way.
    Slab(Box<Slab>),
    /// A slab on props.
    Propped(Propped),
}

/// A landing when the load comes.
#[derive(Debug, Clone, PartialEq)]
pub struct LandingCarries<'a> {
    /// Its rating; `None`: nobody states one.
    pub bay: Option<Bay>,
    /// What it is made of.
    pub structure: &'a Structure,
    /// Factor while setting down, 1 to 3.
    pub setting_down: f64,
    /// What already lies on it with the people, kg: for props.
    pub there: f64,
}

/// What a landing makes of a load.
#[derive(Debug, Clone, PartialEq)]
pub struct LandingAnswer {
    /// Every part.
    pub carried: Vec<Carried>,
    /// Greatest force that a support of a joist would have to hold it down with, N; 0: it rests everywhere.
    pub hold_down: f64,
}

impl LandingCarries<'_> {
    /// Everything that a load of `mass` (kg, with its pallet) on `feet` asks of the landing; feet `along` run along
    /// joists or span.
    ///
    /// # Errors
    /// Every number out of its range.
    pub fn under(&self, mass: f64, feet: &Feet, trace: &mut impl Trace) -> Result<LandingAnswer, Faults> {
        let mut carried = Vec::new();
        let mut hold_down = 0.0;
        if let Some(bay) = &self.bay {
            carried.extend(bay.under(mass, feet, trace)?);
        }
        let force = mass * G * self.setting_down;
        match self.structure {
            Structure::NotStated => {}
            Structure::Deck { deck, held } => {
                let answer = deck.under(force, feet, trace)?;
                hold_down = answer.hold_down;
                let known =
                    |c: Carried| if c.part == Part::JoistMoment && !held { Carried { limit: None, ..c } } else { c };
                carried.extend(answer.carried.into_iter().map(known));
            }
            Structure::Slab(slab) => carried.extend(slab.under(force, feet, trace)?),
            Structure::Propped(props) => carried.push(props.under(force + self.there * G)?),
        }
        Ok(LandingAnswer { carried, hold_down })
    }
}
