//! Rigging of a hung load: slings, fittings, edges, tag lines, swing.

use super::{angle, kilograms, metres, reserve, within};
use crate::context::Context;
use crate::text;
use evidence::{Finding, Silent, Source, Status, Working};
use machine::{CHOKE_ANGLE, CHOKER, Edges, Fitting, Hanging, Hitch, Lever, Load};
use quantity::{Quantity, Si};

/// Sling legs lean at most this far from the vertical, rad (60°; common practice).
const STEEPEST: f64 = core::f64::consts::FRAC_PI_3;

/// Loads longer than this need a tag line at either end, m (common practice).
const TWO_TAG_LINES: f64 = 3.0;

/// One thing to say of the rigging.
enum Aspect<'a> {
    Leg {
        mass: f64,
        limit: f64,
    },
    Lean(f64),
    Fitting {
        fitting: &'a Fitting,
        mass: f64,
    },
    /// The centre may not lie between the lifting points.
    Unbalanced(Lever),
    HitchNotStated,
    ChokeAngle,
    EdgesBare,
    EdgesNotStated,
    /// Number there are, and number there must be.
    TagLines(u32, u32),
    /// How far the load swings out, m.
    Swing(f64),
}

/// `None`: the load hangs, and nobody stated how.
fn aspects<'a>(ctx: &Context<'a>) -> Option<Vec<Aspect<'a>>> {
    let load = ctx.load;
    let hanging = load.hanging.as_ref()?;
    let lever = load.lever(hanging);
    let leg = hanging.leg_mass_kg(load.mass_kg.high, &lever, &mut Silent);
    let mut out = vec![Aspect::Leg { mass: leg, limit: hanging.hitched_limit_kg(&mut Silent) }];
    if lever.outside {
        out.push(Aspect::Unbalanced(lever));
    }
    let lean = hanging.leg_angle.si();
    if within(lean, STEEPEST + 1e-9) != Status::Go {
        out.push(Aspect::Lean(lean));
    }
    out.extend(
        hanging
            .fittings
            .iter()
            .map(|fitting| Aspect::Fitting { fitting, mass: if fitting.whole { load.mass_kg.high } else { leg } }),
    );
    match hanging.hitch {
        None => out.push(Aspect::HitchNotStated),
        Some(Hitch::Choker) => out.push(Aspect::ChokeAngle),
        Some(Hitch::Vertical | Hitch::Basket) => {}
    }
    match hanging.edges {
        Some(Edges::Smooth | Edges::Protected) => {}
        Some(Edges::Bare) => out.push(Aspect::EdgesBare),
        None => out.push(Aspect::EdgesNotStated),
    }
    let needed = if load.width.max(load.depth) > TWO_TAG_LINES { 2 } else { 1 };
    if hanging.tag_lines < needed {
        out.push(Aspect::TagLines(hanging.tag_lines, needed));
    }
    let swing = load.swing(&mut Silent);
    if swing > 0.0 {
        out.push(Aspect::Swing(swing));
    }
    Some(out)
}

impl Aspect<'_> {
    fn status(&self, hanging: &Hanging) -> Status {
        match self {
            Self::Unbalanced(_) if hanging.picks.is_some() => Status::NoGo,
            Self::Unbalanced(_) => Status::CannotTell,
            Self::Leg { mass, limit } => within(*mass, *limit),
            Self::Lean(lean) => within(*lean, STEEPEST + 1e-9),
            Self::Fitting { fitting, mass } => within(*mass, fitting.limit.si()),
            Self::EdgesBare => Status::NoGo,
            Self::HitchNotStated | Self::ChokeAngle | Self::EdgesNotStated | Self::TagLines(..) | Self::Swing(_) => {
                Status::Condition
            }
        }
    }

    fn finding(&self, load: &Load, hanging: &Hanging) -> Finding {
        let status = self.status(hanging);
        let new = |message: evidence::Message| Finding::new("rigging", status, message);
        let practice = |f: Finding| f.source(Source::CommonPractice);
        match self {
            Self::Leg { mass, limit } => {
                let mut working = Working::default();
                hanging.leg_mass_kg(load.mass_kg.high, &load.lever(hanging), &mut working);
                hanging.hitched_limit_kg(&mut working);
                let id = if status == Status::Go { text::RIGGING_WITHIN } else { text::RIGGING_OVERLOADED };
                // Both ways of saying it: riggers and tables differ in which they mean.
                let lean = hanging.leg_angle.si();
                let message = id
                    .with("force", kilograms(*mass))
                    .with("limit", kilograms(*limit))
                    .with("angle", angle(lean))
                    .with("flat", angle(core::f64::consts::FRAC_PI_2 - lean));
                let f = new(message)
                    .measured(kilograms(*mass), kilograms(*limit), reserve(*mass, *limit))
                    .source(Source::Mechanics)
                    .working(working);
                let f = match hanging.hitch {
                    Some(Hitch::Choker) | None => f.source(Source::from_memory("ASME B30.9")),
                    Some(Hitch::Vertical | Hitch::Basket) => f,
                };
                if status == Status::Go { f } else { f.remedy(text::DO_STRONGER_SLINGS) }
            }
            Self::Lean(lean) => {
                let message = text::RIGGING_ANGLE.with("angle", angle(*lean)).with("limit", angle(STEEPEST));
                practice(new(message).measured(angle(*lean), angle(STEEPEST), reserve(*lean, STEEPEST)))
                    .remedy(text::DO_STRONGER_SLINGS)
            }
            Self::Fitting { fitting, mass } => {
                let limit = fitting.limit.si();
                let id =
                    if status == Status::Go { text::RIGGING_FITTING_WITHIN } else { text::RIGGING_FITTING_OVERLOADED };
                let message =
                    id.with("fitting", &fitting.name).with("force", kilograms(*mass)).with("limit", kilograms(limit));
                let f = new(message)
                    .measured(kilograms(*mass), kilograms(limit), reserve(*mass, limit))
                    .source(Source::Mechanics);
                if status == Status::Go { f } else { f.remedy(text::DO_STRONGER_SLINGS) }
            }
            Self::Unbalanced(lever) => {
                let (off, half) = (metres(lever.off), metres(lever.spread / 2.0));
                let id = if status == Status::NoGo { text::RIGGING_TIPS } else { text::RIGGING_PICKS_UNKNOWN };
                let remedy = if status == Status::NoGo { text::DO_HOOK_OVER_CENTRE } else { text::DO_STATE_PICKS };
                new(id.with("off", off).with("half", half)).remedy(remedy).source(Source::Mechanics)
            }
            Self::ChokeAngle => {
                let message =
                    text::RIGGING_CHOKED.with("angle", angle(CHOKE_ANGLE)).with("factor", Quantity::number(CHOKER));
                new(message).remedy(text::DO_CHECK_CHOKE).source(Source::from_memory("ASME B30.9"))
            }
            Self::HitchNotStated => practice(
                new(text::RIGGING_NO_HITCH.with("factor", Quantity::number(CHOKER))).remedy(text::DO_STATE_HITCH),
            ),
            Self::EdgesBare => practice(new(text::RIGGING_EDGES_BARE.message()).remedy(text::DO_PROTECT_EDGES)),
            Self::EdgesNotStated => {
                practice(new(text::RIGGING_EDGES_NOT_STATED.message()).remedy(text::DO_PROTECT_EDGES))
            }
            Self::TagLines(0, _) => practice(new(text::RIGGING_NO_TAG_LINES.message()).remedy(text::DO_TAG_LINES)),
            Self::TagLines(there, needed) => {
                let message = text::RIGGING_FEW_TAG_LINES
                    .with("there", i64::from(*there))
                    .with("needed", i64::from(*needed))
                    .with("length", metres(load.width.max(load.depth)));
                practice(new(message).remedy(text::DO_TAG_LINES))
            }
            Self::Swing(reach) => {
                let mut working = Working::default();
                load.swing(&mut working);
                practice(new(text::RIGGING_SWINGS.with("distance", metres(*reach))).remedy(text::DO_KEEP_PLUMB))
                    .working(working)
            }
        }
    }
}

/// `None` where nothing hangs.
pub(crate) fn status(ctx: &Context<'_>) -> Option<Status> {
    if !ctx.hung() {
        return None;
    }
    Some(match (aspects(ctx), &ctx.load.hanging) {
        (Some(all), Some(hanging)) => all.iter().map(|a| a.status(hanging)).max().unwrap_or(Status::CannotTell),
        _ => Status::CannotTell,
    })
}

pub(crate) fn findings(ctx: &Context<'_>) -> Vec<Finding> {
    if !ctx.hung() {
        return Vec::new();
    }
    match (aspects(ctx), &ctx.load.hanging) {
        (Some(aspects), Some(hanging)) => aspects.iter().map(|a| a.finding(ctx.load, hanging)).collect(),
        _ => vec![
            Finding::new("rigging", Status::CannotTell, text::RIGGING_NONE)
                .remedy(text::DO_STATE_RIGGING)
                .source(Source::CommonPractice),
        ],
    }
}
