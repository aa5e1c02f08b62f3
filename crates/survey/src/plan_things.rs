//! Shapes of a plan to things, digs, buried things, zones and lines on the site.

use crate::late_ground::{Waiting, below, highest_ground, top_in_clouds};
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
    /// Things among them that ground brought in later settles.
    pub waiting: Vec<Waiting>,
}

/// How high a thing is, as rule or file say.
enum Top {
    Unknown,
    /// Level, m.
    At(f64),
    /// Above the highest ground at its outline, m.
    OverGround(f64),
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
    let speaks = |rule: &LayerRule| features.iter().any(|f| rule.speaks_of(f));
    let named = |rule: &LayerRule| match &rule.only {
        Some(only) => format!("{}, {}={}", rule.layer, only.attribute, only.value),
        None => rule.layer.clone(),
    };
    out.idle_rules = rules.iter().filter(|r| !speaks(r)).map(named).collect();
    for feature in features {
        let stated = rules.iter().find(|r| r.speaks_of(feature));
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
                let ground = highest_ground(&self.site.ground, &shape);
                let said = self.top();
                let mut top = match said {
                    Top::Unknown => None,
                    Top::At(level) => Some(level),
                    Top::OverGround(height) => ground.map(|z| z + height),
                };
                if top.is_none() {
                    top = top_in_clouds(&self.site.surroundings.things, &shape);
                    self.out.height_from_cloud += u64::from(top.is_some());
                }
                if below(top, ground) {
                    *self.out.left_out.entry("top-below-ground").or_default() += 1;
                    top = None;
                }
                if ground.is_none() && (top.is_some() || matches!(said, Top::OverGround(_))) {
                    let over_ground = if let Top::OverGround(height) = said { Some(height) } else { None };
                    self.out.waiting.push(Waiting { thing: id.clone(), source: source.clone(), over_ground });
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
                wall: None,
                around: None,
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

    /// The top, as rule or file say.
    fn top(&self) -> Top {
        let rule = self.rule.map_or(&HeightFrom::Unknown, |r| &r.height);
        let over_ground = |h: Option<f64>| h.map_or(Top::Unknown, Top::OverGround);
        let named = |name: &str| {
            let found = self.feature.attributes.iter().find(|(key, _)| key.to_lowercase() == name.to_lowercase());
            found.and_then(|(_, value)| value.number()).filter(|h| *h > 0.0 && *h < 1000.0)
        };
        match rule {
            HeightFrom::AboveGround(h) => Top::OverGround(*h),
            HeightFrom::Level(z) => Top::At(*z),
            HeightFrom::Attribute { name, metres } => over_ground(named(name).map(|h| h * metres)),
            HeightFrom::Shape => {
                let heights: Option<Vec<f64>> = self.feature.shape.points().map(|p| p.height).collect();
                heights.and_then(|h| h.into_iter().reduce(f64::max)).map_or(Top::Unknown, Top::At)
            }
            // Only what the file itself calls a height; a rule that says nothing leaves it at that.
            HeightFrom::Unknown => over_ground(HEIGHT_NAMES.iter().find_map(|n| named(n))),
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
                insulated: None,
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
