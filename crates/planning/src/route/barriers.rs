//! Everything that keeps a machine away from a part of the site, with the distance it asks.

use super::RouteAsk;
use super::bar::Bar;
use super::carried::Carried;
use crate::{Job, Matter, planning_lines};
use geometry::{DVec2, DVec3, Segment, distance_segment_segment, distance_segment_solid};
use machine::Machine;
use quantity::Si;
use site::clearance::{self, Regime};
use site::{Body, Opening, PlanArea, PowerLine, Thing, ZoneRule, distance_thing};
use std::borrow::Cow;

/// Chords that a span is cut into.
const CHORDS: usize = 16;

/// Distance that a line asks of which voltage or heights are not known, m: more than any rule asks up to 1,000 kV
/// (50 ft, 29 CFR 1926.1409).
const UNKNOWN_LINE: f64 = 15.24;

/// Something to keep away from.
#[derive(Debug, Clone)]
pub(crate) struct Barrier<'a> {
    pub(crate) bar: Bar,
    /// Distance that must stay, m.
    pub(crate) distance: f64,
    /// True if only wheels must keep it.
    pub(crate) wheels: bool,
    pub(crate) what: What<'a>,
}

/// Where it is.
#[derive(Debug, Clone)]
pub(crate) enum What<'a> {
    /// In plan, at any height.
    Plan(Vec<PlanArea>),
    /// A thing that reaches from the ground up, or a part of one: in plan first, then in space.
    Thing(Cow<'a, Thing>, Vec<PlanArea>),
    /// Conductors.
    Chords(Vec<Segment>),
}

impl What<'_> {
    /// True if every corner, level and jamb is a number.
    fn has_its_place(&self) -> bool {
        let whole = |areas: &[PlanArea]| areas.iter().flat_map(PlanArea::rings).flatten().all(|p| p.is_finite());
        match self {
            Self::Plan(areas) => whole(areas),
            Self::Thing(thing, areas) => {
                let levels = match thing.body {
                    Body::Upright { base, top, .. } => [base, top],
                    Body::Columns(_) => [None, None],
                };
                let opens =
                    |o: &Opening| o.from.is_finite() && o.to.is_finite() && !o.sill.is_nan() && o.head.is_finite();
                whole(areas) && levels.iter().flatten().all(|z| z.is_finite()) && thing.openings.iter().all(opens)
            }
            Self::Chords(chords) => chords.iter().all(|c| c.a.is_finite() && c.b.is_finite()),
        }
    }
}

/// All of a job for one machine with its load.
pub(crate) fn barriers<'a>(job: &'a Job, ask: &RouteAsk, machine: &Machine) -> Vec<Barrier<'a>> {
    let mut out = Vec::new();
    let drift = ask.rules.drift;
    let around = &job.surroundings;
    let mut push = |bar, distance: f64, wheels, what: What<'a>| {
        // What has no place may be anywhere: no distance is enough.
        let distance = if what.has_its_place() { distance } else { f64::NAN };
        out.push(Barrier { bar, distance, wheels, what });
    };

    let lines = planning_lines(&around.excavations, &job.soils);
    for (i, dig) in around.excavations.iter().enumerate() {
        let asked = lines.iter().filter(|l| l.excavation == i).map(|l| l.distance).reduce(f64::max);
        let (bar, distance) = match asked.filter(|d| d.is_finite()) {
            Some(distance) => (Bar::Excavation(i), distance),
            None => (Bar::UnknownDepth(i), ask.rules.unknown_depth),
        };
        push(bar, distance + drift, true, What::Plan(vec![dig.outline.clone()]));
    }
    for (i, thing) in around.things.iter().enumerate() {
        let outlines = match &thing.body {
            Body::Upright { shape, .. } => shape.outlines(),
            Body::Columns(columns) => columns
                .iter()
                .map(|(c, _)| {
                    let e = columns.cell;
                    let outer = [(0.0, 0.0), (e, 0.0), (e, e), (0.0, e)].map(|(x, y)| c + DVec2::new(x, y)).to_vec();
                    PlanArea { outer, holes: Vec::new() }
                })
                .collect(),
        };
        push(Bar::Thing(i), ask.rules.room + drift + thing.accuracy, false, What::Thing(flush(job, thing), outlines));
    }
    for (i, line) in job.lines.iter().enumerate() {
        if line.dead.as_ref().is_some_and(|d| d.visibly_grounded) {
            continue;
        }
        let extra = line.survey_error.si() + line.swing.si() + job.policy.line_allowance + machine.boom.flex + drift;
        if let Some(legal) = legal(job, ask, line).filter(|_| !line.spans.is_empty()) {
            let chords = line.spans.iter().flat_map(|s| s.chords(CHORDS)).collect();
            push(Bar::Line(i), legal.max(job.policy.line_site_rule) + extra, false, What::Chords(chords));
            continue;
        }
        let spans = line.spans.iter().map(|s| [s.from.truncate(), s.to.truncate()]);
        let course = line.course.windows(2).map(|w| [w[0], w[1]]);
        let outlines = spans.chain(course).map(|ends| sliver(ends[0], ends[1])).collect();
        let distance = UNKNOWN_LINE.max(job.policy.line_site_rule) + extra;
        push(Bar::UnknownLine(i), distance, false, What::Plan(outlines));
    }
    for (i, zone) in around.zones.iter().enumerate().filter(|(_, z)| z.applies(ask.at)) {
        match zone.rule {
            ZoneRule::NoGo | ZoneRule::People => {
                push(Bar::Zone(i), drift, false, What::Plan(zone.shape.outlines()));
            }
            ZoneRule::Soft if !accepted(job) => {
                push(Bar::Soft(i), drift, true, What::Plan(zone.shape.outlines()));
            }
            _ => {}
        }
    }
    out
}

/// The thing with every sill taken away that lies no higher than the ground in its opening: wheels roll over it. Where the
/// ground is not known, it stays.
fn flush<'a>(job: &Job, thing: &'a Thing) -> Cow<'a, Thing> {
    let level = |o: &Opening| {
        let places = [o.from, (o.from + o.to) * 0.5, o.to];
        places.iter().all(|p| job.ground.height(*p).is_some_and(|(z, _)| o.sill <= z))
    };
    let mut thing = Cow::Borrowed(thing);
    for i in 0..thing.openings.len() {
        if level(&thing.openings[i]) {
            thing.to_mut().openings[i].sill = f64::NEG_INFINITY;
        }
    }
    thing
}

/// True if somebody answers for the ground's strength in the whole job.
fn accepted(job: &Job) -> bool {
    job.acceptances.iter().any(|a| a.matter == Matter::GroundStrength)
}

/// Legal distance, m; `None`: voltage not known, or above the table. Transit distances, which are less, are for machines
/// without load and with the boom down only, and are not used.
fn legal(job: &Job, ask: &RouteAsk, line: &PowerLine) -> Option<f64> {
    let hung = ask.load.and_then(|i| job.loads.get(i)).is_some_and(|l| l.hanging.is_some());
    clearance::required(line.voltage?, if hung { Regime::HungLoad } else { Regime::Forks })
}

/// A segment as an outline with next to no width.
fn sliver(a: DVec2, b: DVec2) -> PlanArea {
    let aside = (b - a).normalize_or(DVec2::X).perp() * 1e-3;
    PlanArea { outer: vec![a - aside, b - aside, b + aside, a + aside], holes: Vec::new() }
}

impl Barrier<'_> {
    /// Smallest and largest corner in plan of what is there; `None`: it can be anywhere.
    pub(crate) fn bounds(&self) -> Option<(DVec2, DVec2)> {
        let join = |a: (DVec2, DVec2), b: (DVec2, DVec2)| (a.0.min(b.0), a.1.max(b.1));
        let found = match &self.what {
            What::Plan(areas) | What::Thing(_, areas) => areas.iter().filter_map(PlanArea::bounds).reduce(join),
            What::Chords(chords) => {
                let of = |c: &Segment| (c.a.truncate().min(c.b.truncate()), c.a.truncate().max(c.b.truncate()));
                chords.iter().map(of).reduce(join)
            }
        };
        found.filter(|(low, high)| low.is_finite() && high.is_finite() && self.distance.is_finite())
    }

    /// True if something passes through it: a wall with openings.
    pub(crate) fn has_openings(&self) -> bool {
        matches!(&self.what, What::Thing(thing, _) if !thing.openings.is_empty())
    }

    /// What is there, piece by piece: the nearest one counts.
    pub(crate) fn pieces(&self) -> impl Iterator<Item = Piece<'_>> {
        let (areas, chords): (&[PlanArea], &[Segment]) = match &self.what {
            What::Plan(areas) | What::Thing(_, areas) => (areas, &[]),
            What::Chords(chords) => (&[], chords),
        };
        let base = match &self.what {
            What::Thing(thing, _) => match thing.body {
                Body::Upright { base, .. } => base,
                Body::Columns(_) => None,
            },
            _ => None,
        };
        areas.iter().map(move |area| Piece::Area { area, base }).chain(chords.iter().map(Piece::Chord))
    }

    /// True if, wherever the ground is, nothing passes over or under it.
    pub(crate) fn stands_on_the_ground(&self) -> bool {
        match &self.what {
            What::Plan(_) => true,
            What::Thing(thing, _) => {
                matches!(thing.body, Body::Upright { base: None, .. }) && thing.openings.is_empty()
            }
            What::Chords(_) => false,
        }
    }

    /// Distance from rectangles in plan (corners in order) to what is there, m.
    pub(crate) fn to_rectangles(&self, rectangles: &[[DVec2; 4]]) -> f64 {
        let areas = match &self.what {
            What::Plan(areas) | What::Thing(_, areas) => areas,
            What::Chords(_) => return f64::INFINITY,
        };
        let mut least = f64::INFINITY;
        for corners in rectangles {
            let body = PlanArea { outer: corners.to_vec(), holes: Vec::new() };
            let low = corners.iter().copied().fold(corners[0], DVec2::min);
            let high = corners.iter().copied().fold(corners[0], DVec2::max);
            for area in areas {
                // Boxes that hold both tell which of many areas can be the nearest.
                let aside = area.bounds().map_or(0.0, |(l, h)| (l - high).max(low - h).max(DVec2::ZERO).length());
                if aside < least {
                    least = least.min(area.distance_to_area(&body));
                }
            }
        }
        least
    }

    /// Distance in space from the machine posed on the ground, m.
    pub(crate) fn to_machine(
        &self,
        carried: &Carried,
        site_from_machine: geometry::Pose,
        (along, across, up): (f64, f64, f64),
    ) -> f64 {
        let solids = carried.solids(along, across, up).map(|s| s.moved(site_from_machine));
        match &self.what {
            What::Plan(_) => f64::INFINITY,
            What::Thing(thing, _) => solids.map(|s| distance_thing(&s, thing).metres()).fold(f64::INFINITY, least),
            What::Chords(chords) => solids
                .flat_map(|s| chords.iter().map(move |c| distance_segment_solid(c, &s)))
                .fold(f64::INFINITY, least),
        }
    }
}

/// A piece of a barrier.
#[derive(Debug, Clone, Copy)]
pub(crate) enum Piece<'a> {
    /// An area from its base up, or from the ground.
    Area {
        /// Where.
        area: &'a PlanArea,
        /// Level of the underside, m; `None`: from the ground.
        base: Option<f64>,
    },
    /// A part of a conductor.
    Chord(&'a Segment),
}

impl Piece<'_> {
    /// Smallest and largest corner in plan, m; `None`: it can be anywhere.
    pub(crate) fn bounds(&self) -> Option<(DVec2, DVec2)> {
        let found = match self {
            Self::Area { area, .. } => area.bounds(),
            Self::Chord(c) => {
                let (a, b) = (c.a.truncate(), c.b.truncate());
                Some((a.min(b), a.max(b)))
            }
        };
        found.filter(|(low, high)| low.is_finite() && high.is_finite())
    }

    /// Distance in plan from a place, m.
    pub(crate) fn plan_distance(&self, at: DVec2) -> f64 {
        match self {
            Self::Area { area, .. } if area.encloses(at) => 0.0,
            Self::Area { area, .. } => area.edges().map(|(p, q)| point_segment(at, p, q)).fold(f64::INFINITY, f64::min),
            Self::Chord(c) => point_segment(at, c.a.truncate(), c.b.truncate()),
        }
    }

    /// A bound from below of the distance to what stands on ground at `ground` m up to `height` m, anywhere within `aside` m
    /// of a place.
    pub(crate) fn over(&self, at: DVec2, ground: f64, height: f64, aside: f64) -> f64 {
        match self {
            Self::Area { base, .. } => {
                let above = base.map_or(f64::NEG_INFINITY, |base| base - ground - height);
                (self.plan_distance(at) - aside).max(above)
            }
            Self::Chord(c) => {
                let post = Segment { a: at.extend(ground), b: at.extend(ground + height) };
                distance_segment_segment(c, &post) - aside
            }
        }
    }
}

impl Piece<'_> {
    /// A bound from above of the distance of what hangs overhead to what stands on ground at `ground` m up to `height` m,
    /// anywhere within `aside` m of a place; infinite for what stands on the ground itself.
    pub(crate) fn surely(&self, at: DVec2, ground: f64, height: f64, aside: f64) -> f64 {
        match self {
            Self::Area { base: None, .. } => f64::INFINITY,
            // Beside or under it: the way around the edge is no shorter than both.
            Self::Area { base: Some(base), .. } => self.plan_distance(at) + aside + (base - ground - height).max(0.0),
            Self::Chord(_) => self.over(at, ground, height, 0.0) + aside,
        }
    }
}

/// The lesser; what is no number stays.
fn least(a: f64, b: f64) -> f64 {
    if a.is_nan() || a < b { a } else { b }
}

fn point_segment(at: DVec2, a: DVec2, b: DVec2) -> f64 {
    let flat = |p: DVec2| DVec3::new(p.x, p.y, 0.0);
    geometry::distance_point_segment(flat(at), &Segment { a: flat(a), b: flat(b) })
}
