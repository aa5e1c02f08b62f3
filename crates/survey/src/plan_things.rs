//! Shapes of a plan to things, digs, buried things, zones and lines on the site.

use crate::plan_rules::{Becomes, HEIGHT_NAMES, HeightFrom, LayerRule, guess};
use crate::{Attribute, Feature, Shape, Window};
use geometry::DVec2;
use quantity::{kilovolts, metres};
use site::{Body, Buried, Excavation, Ground, PlanArea, PlanShape, PowerLine, Site, Support, Thing, Zone, ZoneRule};
use std::collections::{BTreeMap, BTreeSet};

/// Width of a line that nobody has said, m: a wall or a fence.
const LINE_WIDTH: f64 = 0.30;

/// A line farther than this from the site is cut off, m: its spans end at supports outside the site.
const AROUND: f64 = 250.0;

/// A top this far below the ground at its outline is none, m (ours: more than a step or a light well).
const BELOW_GROUND: f64 = 2.0;

/// Longest piece between two looks at the ground along an outline, m.
const LOOK: f64 = 2.0;

/// What became of the shapes of a plan.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Placed {
    /// Layers whose meaning was guessed from their names, with what they were taken as.
    pub guessed: BTreeMap<String, Becomes>,
    /// Shapes that were left out, by why, with how many.
    pub left_out: BTreeMap<&'static str, u64>,
    /// Layers that nothing speaks of, with how many shapes.
    pub unnamed: BTreeMap<String, u64>,
    /// Shapes that were placed.
    pub placed: u64,
    /// Things among them whose height is not known.
    pub height_unknown: u64,
    /// Things among them with no known ground at their outline.
    pub without_ground: u64,
    /// Rules that spoke of no shape.
    pub idle_rules: Vec<String>,
    /// Things among them whose top was taken from what a cloud shows above the ground there.
    pub height_from_cloud: u64,
}

/// Where the shapes come from.
#[derive(Debug, Clone, Copy)]
pub struct PlanSource<'a> {
    /// File, for the source of each.
    pub file: &'a str,
    /// How far the shapes may be off, m.
    pub accuracy: f64,
}

/// Puts the shapes of a plan on the site: each as the first rule that speaks of its layer says, else as
/// its layer's name suggests (which is then in [`Placed::guessed`]). Nothing is dropped unsaid.
pub fn place(site: &mut Site, features: &[Feature], rules: &[LayerRule], source: PlanSource<'_>) -> Placed {
    let mut out = Placed::default();
    let around = extent(&site.ground);
    let mut ids = Names::of(site);
    let speaks = |rule: &LayerRule| features.iter().any(|f| rule.speaks_of(&f.layer));
    out.idle_rules = rules.iter().filter(|r| !speaks(r)).map(|r| r.layer.clone()).collect();
    for feature in features {
        let stated = rules.iter().find(|r| r.speaks_of(&feature.layer));
        let becomes = if let Some(rule) = stated {
            rule.becomes
        } else {
            let Some(becomes) = guess(&feature.layer).or_else(|| guess(source.file)) else {
                *out.unnamed.entry(feature.layer.clone()).or_default() += 1;
                continue;
            };
            out.guessed.insert(feature.layer.clone(), becomes);
            becomes
        };
        let mut put = Put { site, ids: &mut ids, out: &mut out, feature, rule: stated, source };
        put.put(becomes, around);
    }
    out
}

struct Put<'a, 'b> {
    site: &'a mut Site,
    ids: &'a mut Names,
    out: &'a mut Placed,
    feature: &'b Feature,
    rule: Option<&'b LayerRule>,
    source: PlanSource<'b>,
}

impl Put<'_, '_> {
    fn put(&mut self, becomes: Becomes, around: Option<Window>) {
        if becomes == Becomes::Nothing {
            return self.leave("left-out-as-stated");
        }
        if becomes == Becomes::Line {
            return self.line(around);
        }
        let shape = match self.shape() {
            Ok(shape) => shape,
            Err(why) => return self.leave(why),
        };
        let (id, name) = self.ids.new_for(self.feature, self.source.file);
        let source = format!("{}:{}", self.source.file, self.feature.place);
        match becomes {
            Becomes::Thing(kind) => {
                let mut top = self.top(&shape);
                if top.is_none() {
                    top = top_in_clouds(&self.site.surroundings.things, &shape);
                    self.out.height_from_cloud += u64::from(top.is_some());
                }
                // A top in the ground is in another datum or unit: it is no height at all.
                let ground = highest_ground(&self.site.ground, &shape);
                if let (Some(level), Some(ground)) = (top, ground)
                    && level <= ground - BELOW_GROUND
                {
                    *self.out.left_out.entry("top-below-ground").or_default() += 1;
                    top = None;
                }
                self.out.height_unknown += u64::from(top.is_none());
                self.out.without_ground += u64::from(ground.is_none());
                let accuracy = self.source.accuracy;
                let body = Body::Upright { shape, base: None, top };
                self.site.surroundings.things.push(Thing {
                    id,
                    name,
                    kind,
                    body,
                    openings: Vec::new(),
                    accuracy,
                    source,
                });
            }
            Becomes::Excavation => {
                let PlanShape::Area(outline) = shape else { return self.leave("excavation-without-outline") };
                self.site.surroundings.excavations.push(Excavation {
                    id,
                    name,
                    outline,
                    depth: None,
                    soil: None,
                    support: Support::NotKnown,
                    standing: site::OpenSides::default(),
                    source,
                });
            }
            Becomes::Buried(kind) => self.site.surroundings.buried.push(Buried {
                id,
                name,
                kind,
                shape,
                cover: None,
                allowed_pressure: None,
                source,
            }),
            Becomes::NoGo | Becomes::People | Becomes::Soft => {
                let rule = match becomes {
                    Becomes::NoGo => ZoneRule::NoGo,
                    Becomes::People => ZoneRule::People,
                    _ => ZoneRule::Soft,
                };
                self.site.surroundings.zones.push(Zone { id, name, shape, rule, times: Vec::new(), by: source });
            }
            Becomes::Line | Becomes::Nothing => {}
        }
        self.out.placed += 1;
    }

    fn leave(&mut self, why: &'static str) {
        *self.out.left_out.entry(why).or_default() += 1;
    }

    fn width(&self) -> Option<f64> {
        self.rule.and_then(|r| r.width)
    }

    fn shape(&self) -> Result<PlanShape, &'static str> {
        let flat = |points: &[crate::PlanPoint]| points.iter().map(|p| p.at).collect::<Vec<DVec2>>();
        match &self.feature.shape {
            Shape::Area { outer, holes } => {
                Ok(PlanShape::Area(PlanArea { outer: flat(outer), holes: holes.iter().map(|h| flat(h)).collect() }))
            }
            Shape::Face(points) => Ok(PlanShape::Area(PlanArea { outer: flat(points), holes: Vec::new() })),
            Shape::Line(points) => {
                Ok(PlanShape::Strip { course: flat(points), width: self.width().unwrap_or(LINE_WIDTH) })
            }
            Shape::Point(p) => match self.width() {
                Some(width) => Ok(PlanShape::Round { centre: p.at, radius: width / 2.0 }),
                None => Err("point-without-size"),
            },
            Shape::Text { .. } => Err("text"),
        }
    }

    /// Level of the top, as rule or file say.
    fn top(&self, shape: &PlanShape) -> Option<f64> {
        let rule = self.rule.map_or(&HeightFrom::Unknown, |r| &r.height);
        let over_ground = |h: f64| highest_ground(&self.site.ground, shape).map(|z| z + h);
        let named = |name: &str| {
            let found = self.feature.attributes.iter().find(|(key, _)| key.to_lowercase() == name.to_lowercase());
            found.and_then(|(_, value)| value.number()).filter(|h| *h > 0.0 && *h < 1000.0)
        };
        match rule {
            HeightFrom::AboveGround(h) => over_ground(*h),
            HeightFrom::Level(z) => Some(*z),
            HeightFrom::Attribute { name, metres } => named(name).and_then(|h| over_ground(h * metres)),
            HeightFrom::Shape => {
                let heights: Option<Vec<f64>> = self.feature.shape.points().map(|p| p.height).collect();
                heights.and_then(|h| h.into_iter().reduce(f64::max))
            }
            // Only what the file itself calls a height; a rule that says nothing leaves it at that.
            HeightFrom::Unknown => HEIGHT_NAMES.iter().find_map(|n| named(n)).and_then(over_ground),
        }
    }

    /// Pieces of the course near the site, as lines of unknown height.
    fn line(&mut self, around: Option<Window>) {
        let Shape::Line(points) = &self.feature.shape else {
            return self.leave(if matches!(self.feature.shape, Shape::Point(_)) {
                "support-of-a-line"
            } else {
                "line-without-course"
            });
        };
        // Volts, as registers of lines write it, or with its unit; two systems on one support: the higher counts.
        let named = self.feature.attributes.iter().find(|(key, _)| key.eq_ignore_ascii_case("voltage"));
        let voltage = named.and_then(|(_, value)| match value {
            Attribute::Text(t) => {
                let all: Option<Vec<f64>> = t.split(';').map(volts).collect();
                all.and_then(|v| v.into_iter().reduce(f64::max))
            }
            Attribute::Number(n) => Some(*n),
            Attribute::YesNo(_) | Attribute::Nothing => None,
        });
        if voltage.is_some_and(|v| !(LEAST_VOLTS..2e6).contains(&v)) {
            *self.out.left_out.entry("voltage-not-plausible").or_default() += 1;
        }
        let voltage = voltage.filter(|v| (LEAST_VOLTS..2e6).contains(v));
        let course: Vec<DVec2> = points.iter().map(|p| p.at).collect();
        let pieces = match around {
            Some(window) => near(&course, window.grown(AROUND)),
            None => vec![course],
        };
        if pieces.is_empty() {
            return self.leave("line-far-from-the-site");
        }
        for course in pieces {
            let (_, name) = self.ids.new_for(self.feature, self.source.file);
            self.site.lines.push(PowerLine {
                name,
                voltage: voltage.map(|v| kilovolts(v / 1000.0)),
                spans: Vec::new(),
                course,
                survey_error: metres(self.source.accuracy),
                swing: metres(0.0),
                source: format!("{}:{}", self.source.file, self.feature.place),
                dead: None,
            });
        }
        self.out.placed += 1;
    }
}

/// A number below this is no voltage of an overhead line in volts: kilovolts without their unit, V.
const LEAST_VOLTS: f64 = 100.0;

/// "110000", "110 kV", "20kV", V.
fn volts(written: &str) -> Option<f64> {
    let plain = written.trim().to_lowercase();
    let (number, factor) = match plain.strip_suffix("kv") {
        Some(number) => (number, 1000.0),
        None => (plain.strip_suffix('v').unwrap_or(&plain), 1.0),
    };
    number.trim().parse::<f64>().ok().map(|v| v * factor)
}

/// Runs of segments that come into the window.
fn near(course: &[DVec2], window: Window) -> Vec<Vec<DVec2>> {
    let touches = |a: DVec2, b: DVec2| {
        // Separating axes of a segment and an upright rectangle.
        let (middle, half) = ((window.min + window.max) * 0.5, (window.max - window.min) * 0.5);
        let (centre, along) = ((a + b) * 0.5 - middle, (b - a) * 0.5);
        centre.x.abs() <= half.x + along.x.abs()
            && centre.y.abs() <= half.y + along.y.abs()
            && centre.perp_dot(along).abs() <= half.x * along.y.abs() + half.y * along.x.abs()
    };
    let mut out: Vec<Vec<DVec2>> = Vec::new();
    let mut open = false;
    for w in course.windows(2) {
        if touches(w[0], w[1]) {
            match out.last_mut().filter(|_| open) {
                Some(run) => run.push(w[1]),
                None => out.push(vec![w[0], w[1]]),
            }
            open = true;
        } else {
            open = false;
        }
    }
    out
}

/// The rectangle around all ground; `None` without ground.
fn extent(ground: &Ground) -> Option<Window> {
    let all = ground.surfaces.iter().filter_map(|s| s.terrain.bounds());
    all.reduce(|(l, h), (l2, h2)| (l.min(l2), h.max(h2))).map(|(min, max)| Window { min, max })
}

/// Highest known ground along the outlines of a shape, m, a little outside (under a roof nobody surveyed).
fn highest_ground(ground: &Ground, shape: &PlanShape) -> Option<f64> {
    let mut best: Option<f64> = None;
    for outline in shape.outlines() {
        let middle = outline.outer.iter().copied().fold(DVec2::ZERO, |a, b| a + b) / outline.outer.len().max(1) as f64;
        for (a, b) in outline.edges() {
            let pieces = (a.distance(b) / LOOK).ceil().clamp(1.0, 1000.0) as usize;
            for i in 0..pieces {
                let on = a.lerp(b, i as f64 / pieces as f64);
                let out = (on - middle).normalize_or_zero();
                for step in [0.0, 0.5, 1.0, 2.0] {
                    if let Some((z, source)) = ground.height(on + out * step) {
                        let z = z + source.accuracy;
                        best = Some(best.map_or(z, |b| b.max(z)));
                        break;
                    }
                }
            }
        }
    }
    best
}

/// Share of a shape that a cloud must show as standing, for its top to be taken from there. Ours: less
/// may be the edge of a neighbour.
const COVERED: f64 = 0.6;

/// The highest column of a cloud inside a shape, m, with the columns' accuracy added; `None` where the
/// cloud shows too little of it.
fn top_in_clouds(things: &[Thing], shape: &PlanShape) -> Option<f64> {
    let (low, high) = shape.bounds()?;
    let mut cells: Vec<(DVec2, f64, f64)> = Vec::new();
    let mut step = f64::INFINITY;
    for thing in things {
        let Body::Columns(columns) = &thing.body else { continue };
        let Some((l, h)) = thing.bounds() else { continue };
        if l.cmpgt(high).any() || h.cmplt(low).any() {
            continue;
        }
        step = step.min(columns.cell);
        let middle = DVec2::splat(columns.cell / 2.0);
        let inside = columns.iter().filter(|(corner, _)| shape.contains(*corner + middle));
        cells.extend(inside.map(|(corner, top)| (corner, top + thing.accuracy, columns.cell * columns.cell)));
    }
    let top = cells.iter().map(|c| c.1).reduce(f64::max)?;
    // Places of the same raster that lie in the shape: what a full cover would be.
    let size = ((high - low) / step).ceil();
    if size.x * size.y > 4e6 {
        return None;
    }
    let mut all = 0.0;
    for row in 0..size.y as usize {
        for col in 0..size.x as usize {
            let at = low + (DVec2::new(col as f64, row as f64) + 0.5) * step;
            all += f64::from(u8::from(shape.contains(at))) * step * step;
        }
    }
    // Cells of two things may lie over each other: each place counts once.
    cells.sort_by(|a, b| a.0.x.total_cmp(&b.0.x).then(a.0.y.total_cmp(&b.0.y)));
    cells.dedup_by(|a, b| a.0 == b.0);
    let covered: f64 = cells.iter().map(|c| c.2).sum();
    (all > 0.0 && covered >= COVERED * all).then_some(top)
}

/// Ids that are taken.
struct Names {
    taken: BTreeSet<String>,
    next: usize,
}

impl Names {
    fn of(site: &Site) -> Self {
        let s = &site.surroundings;
        let ids = s.things.iter().map(|t| &t.id).chain(s.excavations.iter().map(|e| &e.id));
        let ids = ids.chain(s.buried.iter().map(|b| &b.id)).chain(s.zones.iter().map(|z| &z.id));
        Self { taken: ids.cloned().collect(), next: 1 }
    }

    /// An id that is new, and a name for people: the file's own, else layer and number.
    fn new_for(&mut self, feature: &Feature, file: &str) -> (String, String) {
        let base = feature.name.clone().filter(|n| !n.trim().is_empty());
        let layer = if feature.layer.is_empty() { file } else { &feature.layer };
        let mut id = base.clone().unwrap_or_else(|| format!("{layer} {}", self.next));
        while self.taken.contains(&id) {
            self.next += 1;
            id = format!("{} {}", base.as_deref().unwrap_or(layer), self.next);
        }
        self.next += 1;
        self.taken.insert(id.clone());
        (id.clone(), id)
    }
}
