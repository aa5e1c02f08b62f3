//! A landing as a whole: its rating and what it is made of, under one load.

use crate::bay::{Bay, Propped};
use crate::carried::{Carried, Part};
use crate::deck::Deck;
use crate::pallet_feet::Feet;
use crate::slab_check::Slab;
use crate::text;
use evidence::{Faults, Source, Step, Trace};
use quantity::{Dimension, Quantity, STANDARD_GRAVITY as G};

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

/// Which way joists, or the span of a slab, run.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Runs {
    /// Along the way in.
    Along,
    /// Across it.
    Across,
}

/// A landing when the load comes.
#[derive(Debug, Clone, PartialEq)]
pub struct LandingCarries<'a> {
    /// Its rating; `None`: nobody states one.
    pub bay: Option<Bay>,
    /// What it is made of.
    pub structure: &'a Structure,
    /// Which way it runs; `None`: not known, both are reckoned and the worse counts.
    pub runs: Option<Runs>,
    /// From the load to the edge that it comes over, m: a slab is free there; `None`: nothing is known of an edge but
    /// what the slab states.
    pub to_near_edge: Option<f64>,
    /// Factor while setting down, 1 to 3.
    pub setting_down: f64,
    /// What already lies on it with the people, kg.
    pub there: f64,
    /// The same as an even load, Pa: of the whole on its area, or of the thing that presses most, whichever is more.
    pub presses: f64,
}

/// A load as it stands on a landing.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct StandingLoad<'a> {
    /// Mass with its pallet, kg.
    pub mass: f64,
    /// Size along and across the way in, m.
    pub size: [f64; 2],
    /// What it stands on; `None`: not known.
    pub feet: Option<&'a Feet>,
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
    /// Everything that a load asks of the landing.
    ///
    /// # Errors
    /// Every number out of its range.
    pub fn under(&self, load: &StandingLoad<'_>, trace: &mut impl Trace) -> Result<LandingAnswer, Faults> {
        let mut carried = self.rated(load, trace)?;
        let made = self.made(load, trace)?;
        carried.extend(made.carried);
        Ok(LandingAnswer { carried, hold_down: made.hold_down })
    }

    /// What it asks of the rating; nothing where there is none.
    ///
    /// # Errors
    /// Every number out of its range.
    pub fn rated(&self, load: &StandingLoad<'_>, trace: &mut impl Trace) -> Result<Vec<Carried>, Faults> {
        self.bay.as_ref().map_or(Ok(Vec::new()), |bay| bay.under(load, trace))
    }

    /// What it asks of deck, slab or props; nothing where they are not stated.
    ///
    /// # Errors
    /// Every number out of its range.
    pub fn made(&self, load: &StandingLoad<'_>, trace: &mut impl Trace) -> Result<LandingAnswer, Faults> {
        let force = load.mass * G * self.setting_down;
        let counted = match self.structure {
            Structure::NotStated => return Ok(LandingAnswer { carried: Vec::new(), hold_down: 0.0 }),
            Structure::Propped(props) => {
                return Ok(LandingAnswer { carried: vec![props.under(force + self.there * G)?], hold_down: 0.0 });
            }
            Structure::Deck { deck, .. } => deck.beside,
            Structure::Slab(slab) => slab.beside,
        };
        let beside = self.beside(counted, trace);
        let Some(feet) = load.feet else {
            let force = Quantity::new(force, Dimension::Force);
            return Ok(LandingAnswer {
                carried: vec![beside, Carried { part: Part::Feet, demand: force, limit: None }],
                hold_down: 0.0,
            });
        };
        let mut answer = match self.runs {
            Some(Runs::Across) => self.one_way(force, &feet.clone().turned(), Runs::Across, trace)?,
            Some(Runs::Along) | None => self.one_way(force, feet, Runs::Along, trace)?,
        };
        if self.runs.is_none() {
            let other = self.one_way(force, &feet.clone().turned(), Runs::Across, trace)?;
            answer.hold_down = answer.hold_down.max(other.hold_down);
            for c in other.carried {
                match answer.carried.iter_mut().find(|known| known.part == c.part) {
                    // A limit of one part may hang on the direction too: the share decides.
                    Some(known) if c.utilisation() > known.utilisation() || c.utilisation().is_nan() => *known = c,
                    Some(_) => {}
                    None => answer.carried.push(c),
                }
            }
        }
        answer.carried.push(beside);
        Ok(answer)
    }

    /// Deck or slab, feet `along` being along joists or span.
    fn one_way(&self, force: f64, feet: &Feet, runs: Runs, trace: &mut impl Trace) -> Result<LandingAnswer, Faults> {
        match self.structure {
            Structure::Deck { deck, held } => {
                let answer = deck.under(force, feet, trace)?;
                let known =
                    |c: Carried| if c.part == Part::JoistMoment && !held { Carried { limit: None, ..c } } else { c };
                let carried = answer.carried.into_iter().map(known).collect();
                Ok(LandingAnswer { carried, hold_down: answer.hold_down })
            }
            Structure::Slab(slab) => {
                let mut slab = slab.clone();
                if let Some(near) = self.to_near_edge {
                    let edge = &mut slab.to_edges[usize::from(runs == Runs::Across)];
                    *edge = Some(edge.map_or(near, |stated| stated.min(near)));
                }
                Ok(LandingAnswer { carried: slab.under(force, feet, trace)?, hold_down: 0.0 })
            }
            Structure::NotStated | Structure::Propped(_) => Ok(LandingAnswer { carried: Vec::new(), hold_down: 0.0 }),
        }
    }

    /// What lies there and people against the even load that deck or slab is reckoned with beside the pallet.
    fn beside(&self, counted: f64, trace: &mut impl Trace) -> Carried {
        let pressure = |pa| Quantity::new(pa, Dimension::Pressure);
        trace.step(|| Step {
            title: text::STEP_BESIDE.message(),
            formula: "p = max(m_there·g/A, m_i·g/A_i)".into(),
            values: vec![
                ("m_there".into(), Quantity::new(self.there, Dimension::Mass)),
                ("q".into(), pressure(counted)),
            ],
            result: ("p".into(), pressure(self.presses)),
            source: Source::Mechanics,
        });
        Carried { part: Part::Beside, demand: pressure(self.presses), limit: Some(pressure(counted)) }
    }
}
