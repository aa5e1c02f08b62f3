//! What `calc landing` reads: the load on its pallet, the landing's own rating, what it stands on.

use super::text as words;
use evidence::{Faults, Ranged, Silent, Trace};
use ground::bay::{Bay, BayRating, Lying, Propped, SETTING_DOWN};
use ground::beam::{Beam, Span};
use ground::concrete_age::{Age, Cement, strength_at};
use ground::deck::{Boards, Deck, Joists};
use ground::pallet_feet::{Feet, Sharing};
use ground::section::{Capacity, Rectangle, timber_capacity};
use ground::slab::Section;
use ground::slab_check::{Bending, Slab};
use ground::timber::{Duration, Moisture, Timber, TimberUse};
use jobfile::{Bound, Reader};
use quantity::Dimension as D;

const MOISTURE: [(&str, Moisture); 2] = [("covered", Moisture::Covered), ("weather", Moisture::Weather)];
const CEMENT: [(&str, Cement); 3] = [("rapid", Cement::Rapid), ("normal", Cement::Normal), ("slow", Cement::Slow)];
const SHARING: [(&str, Sharing); 2] = [("even", Sharing::Even), ("by-width", Sharing::ByWidth)];
/// Young's modulus that stands for any slab: of equal spans no moment depends on it.
const ANY_STIFFNESS: f64 = 1e7;

/// The whole input.
pub(super) struct Asked {
    pub(super) mass: f64,
    pub(super) setting_down: f64,
    pub(super) feet: Feet,
    pub(super) bay: Option<Bay>,
    pub(super) on: Structure,
}

/// What carries.
pub(super) enum Structure {
    /// Nothing but the rating is stated.
    Rated,
    /// Boards on joists; the second: whether the joists' pressed edges are held sideways is known.
    Deck(Box<Deck>, bool),
    /// A slab, with what else lies on it, N.
    Slab(Box<Slab>),
    /// A slab on props.
    Propped(Propped),
}

/// Reads everything; `None` with every fault noted. The steps of strengths go to `trace`.
pub(super) fn read(root: &Reader<'_>, trace: &mut impl Trace) -> Option<Asked> {
    let mass = root.decision("load", D::Mass, Bound::UpTo(50e3));
    let felt = root.decision_or_none("setting_down", D::Number, Bound::Within(1.0, 3.0)).unwrap_or(SETTING_DOWN);
    let feet = root.table("pallet", "[pallet]").and_then(|t| feet(&t));
    let rating = root.table_or_none("rating").map(|t| bay(&t, felt));
    let deck = root.table_or_none("deck").map(|t| deck(&t, trace));
    let slab = root.table_or_none("slab").map(|t| slab(&t, trace));
    root.done();
    if rating.is_none() && deck.is_none() && slab.is_none() {
        root.fault("rating", words::LANDING_NOTHING.message(), None);
        return None;
    }
    let on = match (deck, slab) {
        (Some(_), Some(_)) => {
            root.fault("slab", words::LANDING_ONE_STRUCTURE.message(), None);
            return None;
        }
        (Some(deck), None) => deck.map(|(d, held)| Structure::Deck(Box::new(d), held)),
        (None, Some(slab)) => slab,
        (None, None) => Some(Structure::Rated),
    };
    let bay = match rating {
        Some(bay) => Some(bay?),
        None => None,
    };
    Some(Asked { mass: mass?, setting_down: felt, feet: feet?, bay, on: on? })
}

/// Notes the faults of the library under the table they came from.
fn noted<T>(t: &Reader<'_>, made: Result<T, Faults>) -> Option<T> {
    made.map_err(|faults| note(t, faults)).ok()
}

/// The same for faults met later.
pub(super) fn note(t: &Reader<'_>, faults: Faults) {
    for f in faults.list {
        t.fault(f.place.key.as_deref().unwrap_or_default(), f.message, f.hint);
    }
}

fn feet(t: &Reader<'_>) -> Option<Feet> {
    let row = |name: &str| {
        let length = t.decision(name, D::Length, Bound::Within(0.2, 12.0));
        let count = t.count(&format!("feet_{name}"), &format!("feet_{name} = 3"), 1);
        let wide = t.decision(&format!("foot_{name}"), D::Length, Bound::Within(0.02, 12.0));
        Some((length?, usize::try_from(count?).ok()?, wide?))
    };
    let (along, across) = (row("along"), row("across"));
    let sharing = t.choice("sharing", &SHARING);
    t.done();
    noted(t, Feet::new(along?, across?, sharing?))
}

fn bay(t: &Reader<'_>, setting_down: f64) -> Option<Bay> {
    let by = t.text("by", "by = \"who designed it\"");
    let area = t.decision("area", D::Area, Bound::Within(0.1, 1e5));
    let part = t.decision_or_none("part", D::Pressure, Bound::Positive);
    let part_area = part.and_then(|_| t.decision("part_area", D::Area, Bound::Positive));
    let point = t.decision_or_none("point", D::Force, Bound::Positive);
    let point_side = point.and_then(|_| t.decision("point_side", D::Length, Bound::Positive));
    let people = t.count("people", "people = 1", 0);
    let can_sway = t.choice("stands", &[("scaffold", true), ("building", false)]);
    let class = if t.has("duty_class") { t.count("duty_class", "duty_class = 3", 1) } else { None };
    let one = |l: Reader<'_>| {
        let what = l.text("what", "what = \"bricks\"");
        let mass = l.decision("mass", D::Mass, Bound::ZeroTo(100e3));
        l.done();
        Some(Lying { what: what?, mass: Ranged::exact(mass?) })
    };
    let lying: Vec<Option<Lying>> = t.tables("lying").into_iter().map(one).collect();
    let rating = BayRating {
        by: by.unwrap_or_default(),
        total: t.decision_or_none("total", D::Mass, Bound::Positive),
        pallet: t.decision_or_none("pallet", D::Mass, Bound::Positive),
        even: t.decision_or_none("even", D::Pressure, Bound::Positive),
        part: part.zip(part_area),
        point: point.zip(point_side),
        push: t.decision_or_none("push", D::Force, Bound::NotNegative),
        allows_setting_down: t.yes_no("includes_setting_down"),
        class: class.and_then(|c| u8::try_from(c).ok()),
    };
    t.done();
    let lying: Option<Vec<Lying>> = lying.into_iter().collect();
    let people = usize::try_from(people?).ok()?;
    Some(Bay { rating, area: area?, lying: lying?, people, setting_down, can_sway: can_sway? })
}

fn timber(t: &Reader<'_>, key: &str) -> Option<Timber> {
    let classes: Vec<(&str, Timber)> = Timber::classes().filter_map(|c| Some((c, Timber::class(c)?))).collect();
    t.choice(key, &classes)
}

fn deck(t: &Reader<'_>, trace: &mut impl Trace) -> Option<(Deck, bool)> {
    let used = t.choice("moisture", &MOISTURE).map(|m| TimberUse::solid(m, Duration::Medium));
    let member = |name: &str, bears: &mut dyn FnMut(Rectangle, Timber, TimberUse) -> Option<Capacity>| {
        let [breadth, depth] =
            ["breadth", "depth"].map(|k| t.decision(&format!("{name}_{k}"), D::Length, Bound::Within(0.01, 2.0)));
        let timber = timber(t, &format!("{name}_timber"));
        let section = Rectangle { breadth: breadth?, depth: depth? };
        let capacity = bears(section, timber?, used?)?;
        Some((section, capacity, timber?.stiffness * section.second_moment()))
    };
    let mut silent = |s, w, u| noted(t, timber_capacity(s, w, u, &mut Silent));
    let board = member("board", &mut silent);
    let mut told = |s, w, u| noted(t, timber_capacity(s, w, u, &mut *trace));
    let joist = member("joist", &mut told);
    let board_spans = t.count("board_spans", "board_spans = 2", 1);
    let spans = t.count("joist_spans", "joist_spans = 1", 1);
    let span = t.decision("joist_span", D::Length, Bound::Within(0.2, 30.0));
    let spacing = t.decision("joist_spacing", D::Length, Bound::Within(0.1, 5.0));
    let own = t.decision("own", D::Pressure, Bound::ZeroTo(20e3));
    let beside = t.decision("beside", D::Pressure, Bound::ZeroTo(50e3));
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
    Some((Deck { boards, joists, own: own?, beside: beside? }, held == Some(true)))
}

fn slab(t: &Reader<'_>, trace: &mut impl Trace) -> Option<Structure> {
    if t.has("props_by") {
        let by = t.text("props_by", "props_by = \"who designed the props\"");
        let allows = t.decision_or_none("props_allow", D::Force, Bound::UpTo(1e7));
        return Some(Structure::Propped(Propped { by: by?, allows }));
    }
    let span = t.decision("span", D::Length, Bound::Within(0.5, 30.0));
    let spans = t.count("spans", "spans = 1", 1);
    let depth = t.decision("depth", D::Length, Bound::Within(0.03, 2.0));
    let class = t.decision("concrete", D::Pressure, Bound::Within(8e6, 90e6));
    let cement = t.choice("cement", &CEMENT);
    let days = t.decision_or_none("age_days", D::Number, Bound::ZeroTo(100_000.0));
    let celsius = t.decision_or_none("mean_celsius", D::Number, Bound::Within(-40.0, 80.0));
    let yield_strength = t.decision("reinforcement", D::Pressure, Bound::Within(200e6, 700e6));
    let [bottom, top, across] =
        ["bottom_a_metre", "top_a_metre", "across_a_metre"].map(|k| t.decision(k, D::Area, Bound::ZeroTo(0.04)));
    let own = t.decision("own", D::Pressure, Bound::ZeroTo(50e3));
    let beside = t.decision("beside", D::Pressure, Bound::ZeroTo(50e3));
    // Left out: not known, so the edge may be right there.
    let to_edges = ["edge_along", "edge_across"]
        .map(|k| Some(t.decision_or_none(k, D::Length, Bound::ZeroTo(1000.0)).unwrap_or(0.0)));
    t.done();
    let age = days.map(|days| Age { days, celsius });
    let now = noted(t, strength_at(class?, cement?, age, trace))?;
    let (depth, yield_strength) = (depth?, yield_strength?);
    let span = Span { length: span?, stiffness: ANY_STIFFNESS };
    Some(Structure::Slab(Box::new(Slab {
        beam: noted(t, Beam::equal(usize::try_from(spans?).ok()?, span))?,
        section: now.map(|concrete| Section { depth, concrete, yield_strength }),
        bending: Bending::Reinforced { bottom: bottom?, top: top? },
        steel_across: across?,
        own: own?,
        beside: beside?,
        to_edges,
    })))
}
