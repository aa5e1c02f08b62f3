//! What a landing is made of: `deck`, `slab` or `props` of a table.

use crate::landing_strength::noted;
use crate::quantity_value::Bound::{UpTo, Within, ZeroTo};
use crate::table::{Faulty, Reader};
use crate::text;
use evidence::{Silent, Trace};
use ground::bay::Propped;
use ground::beam::{Beam, Span};
use ground::concrete_age::{Age, Cement, strength_at};
use ground::deck::{Boards, Deck, Joists};
use ground::landing_carries::Structure;
use ground::section::{Capacity, Rectangle, timber_capacity};
use ground::slab::Section;
use ground::slab_check::{Bending, Slab};
use ground::timber::{Duration, Moisture, Timber, TimberUse};
use quantity::Dimension as D;

const MOISTURE: [(&str, Moisture); 2] = [("covered", Moisture::Covered), ("weather", Moisture::Weather)];
const CEMENT: [(&str, Cement); 3] = [("rapid", Cement::Rapid), ("normal", Cement::Normal), ("slow", Cement::Slow)];

/// Young's modulus that stands for any slab: of equal spans no moment depends on it.
const ANY_STIFFNESS: f64 = 1e7;

/// The structure of a landing and who answers for it. The steps of strengths go to `trace`.
pub(crate) fn structure(t: &Reader<'_>, trace: &mut impl Trace) -> Result<(Structure, Option<String>), Faulty> {
    let deck = t.table_or_none("deck").map(|d| deck(&d, trace));
    let slab = t.table_or_none("slab").map(|s| slab(&s, trace));
    let props = t.table_or_none("props").map(|p| props(&p));
    let there: Vec<&str> = ["deck", "slab", "props"].into_iter().filter(|key| t.has(key)).collect();
    if let [first, second, ..] = there[..] {
        t.fault(second, text::EITHER_OR.with("first", first).with("second", second), None);
        return Err(Faulty);
    }
    let found = [deck, slab, props].into_iter().flatten().next();
    match (found, there.is_empty()) {
        (Some(read), _) => read.map(|(structure, by)| (structure, Some(by))).ok_or(Faulty),
        (None, true) => Ok((Structure::NotStated, None)),
        (None, false) => Err(Faulty),
    }
}

fn stated_by(t: &Reader<'_>) -> Option<String> {
    t.text("by", "by = \"M. Engineer, drawing S-12\"")
}

fn timber(t: &Reader<'_>, key: &str) -> Option<Timber> {
    let classes: Vec<(&str, Timber)> = Timber::classes().filter_map(|c| Some((c, Timber::class(c)?))).collect();
    t.choice(key, &classes)
}

fn deck(t: &Reader<'_>, trace: &mut impl Trace) -> Option<(Structure, String)> {
    let by = stated_by(t);
    let used = t.choice("moisture", &MOISTURE).map(|m| TimberUse::solid(m, Duration::Medium));
    let member = |name: &str, bears: &mut dyn FnMut(Rectangle, Timber, TimberUse) -> Option<Capacity>| {
        let [breadth, depth] = ["breadth", "depth"].map(|k| t.si(&format!("{name}_{k}"), D::Length, Within(0.01, 2.0)));
        let timber = timber(t, &format!("{name}_timber"));
        let section = Rectangle { breadth: breadth?, depth: depth? };
        let capacity = bears(section, timber?, used?)?;
        Some((section, capacity, timber?.stiffness * section.second_moment()))
    };
    let mut silent = |s, w, u| noted(t, timber_capacity(s, w, u, &mut Silent));
    let board = member("board", &mut silent);
    let mut told = |s, w, u| noted(t, timber_capacity(s, w, u, &mut *trace));
    let joist = member("joist", &mut told);
    let board_spans = t.count_within("board_spans", "board_spans = 2", (1, 6));
    let spans = t.count_within("joist_spans", "joist_spans = 1", (1, 6));
    let span = t.si("joist_span", D::Length, Within(0.2, 30.0));
    let spacing = t.si("joist_spacing", D::Length, Within(0.1, 5.0));
    let own = t.si("own", D::Pressure, ZeroTo(20e3));
    let beside = t.si("beside", D::Pressure, ZeroTo(50e3));
    let held = t.yes_no("joists_held_sideways");
    t.done();
    let (board_section, board_capacity, board_stiffness) = board?;
    let (_, capacity, stiffness) = joist?;
    let beam = noted(t, Beam::equal(usize::try_from(spans?).ok()?, Span { length: span?, stiffness }))?;
    let boards = Boards {
        capacity: board_capacity,
        stiffness: board_stiffness,
        breadth: board_section.breadth,
        spans: usize::try_from(board_spans?).ok()?,
    };
    let joists = Joists { beam, capacity, spacing: spacing? };
    let deck = Deck { boards, joists, own: own?, beside: beside? };
    Some((Structure::Deck { deck: Box::new(deck), held: held == Some(true) }, by?))
}

fn slab(t: &Reader<'_>, trace: &mut impl Trace) -> Option<(Structure, String)> {
    let by = stated_by(t);
    let span = t.si("span", D::Length, Within(0.5, 30.0));
    let spans = t.count_within("spans", "spans = 1", (1, 6));
    let depth = t.si("depth", D::Length, Within(0.03, 2.0));
    let class = t.si("concrete", D::Pressure, Within(8e6, 90e6));
    let cement = t.choice("cement", &CEMENT);
    let days = t.si_or_none("age_days", D::Number, ZeroTo(100_000.0));
    let celsius = t.si_or_none("mean_celsius", D::Number, Within(-40.0, 80.0));
    let yield_strength = t.si("reinforcement", D::Pressure, Within(200e6, 700e6));
    let [bottom, top, across] =
        ["bottom_a_metre", "top_a_metre", "across_a_metre"].map(|k| t.si(k, D::Area, ZeroTo(0.04)));
    let own = t.si("own", D::Pressure, ZeroTo(50e3));
    let beside = t.si("beside", D::Pressure, ZeroTo(50e3));
    // Left out: not known, so the edge may be right there.
    let to_edges =
        ["edge_along", "edge_across"].map(|k| Some(t.si_or_none(k, D::Length, ZeroTo(1000.0)).unwrap_or(0.0)));
    t.done();
    let age = days.map(|days| Age { days, celsius });
    let now = noted(t, strength_at(class?, cement?, age, trace))?;
    let (depth, yield_strength) = (depth?, yield_strength?);
    let span = Span { length: span?, stiffness: ANY_STIFFNESS };
    let slab = Slab {
        beam: noted(t, Beam::equal(usize::try_from(spans?).ok()?, span))?,
        section: now.map(|concrete| Section { depth, concrete, yield_strength }),
        bending: Bending::Reinforced { bottom: bottom?, top: top? },
        steel_across: across?,
        own: own?,
        beside: beside?,
        to_edges,
    };
    Some((Structure::Slab(Box::new(slab)), by?))
}

/// A slab on props: what their engineer allows, nothing else.
fn props(t: &Reader<'_>) -> Option<(Structure, String)> {
    let by = t.text("by", "by = \"who designed the props\"");
    let allows = t.si_or_none("allows", D::Force, UpTo(1e7));
    t.done();
    let by = by?;
    Some((Structure::Propped(Propped { by: by.clone(), allows }), by))
}
