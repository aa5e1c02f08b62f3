//! A site to bytes.

use super::form::{self, Head, Point};
use super::pack::push_block;
use super::{StoredSite, VERSION, surfaces};
use crate::kind::STORED_MAGIC;
use geometry::DVec2;
use quantity::Si;
use site::{Body, PlanShape, Support, Terrain};

/// Why a site cannot be stored.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum StoreError {
    /// A number in it is not finite.
    NotFinite,
    /// A list is longer than the form can say.
    TooLarge,
}

/// The bytes of a site. The same site gives the same bytes.
///
/// # Errors
/// [`StoreError`].
pub fn write_stored(stored: &StoredSite) -> Result<Vec<u8>, StoreError> {
    let mut blocks = Vec::new();
    let block = |blocks: &mut Vec<u8>, plain: &[u8]| push_block(blocks, plain).ok_or(StoreError::TooLarge);
    let mut surfaces_of = Vec::new();
    for source in &stored.site.ground.surfaces {
        let terrain = match &source.terrain {
            Terrain::Grid(grid) => {
                block(&mut blocks, &surfaces::heights(&grid.heights))?;
                form::Terrain::Grid {
                    north_west: point(grid.north_west),
                    cell: point(grid.cell),
                    rows: count(grid.rows)?,
                    cols: count(grid.cols)?,
                }
            }
            Terrain::Tin(tin) => {
                let parts = tin.parts();
                let kept = surfaces::kept(parts.points, parts.triangles);
                block(&mut blocks, &surfaces::points(parts.points))?;
                block(&mut blocks, &surfaces::triangles(&kept))?;
                form::Terrain::Tin {
                    origin: point(parts.origin),
                    points: count(parts.points.len())?,
                    triangles: count(kept.len())?,
                }
            }
        };
        surfaces_of.push(form::Surface {
            name: source.name.clone(),
            accuracy: source.accuracy,
            date: source.date.clone(),
            terrain,
        });
    }
    let around = &stored.site.surroundings;
    let mut things = Vec::new();
    for thing in &around.things {
        let body = match &thing.body {
            Body::Upright { shape: s, base, top } => form::Body::Upright { shape: shape(s), base: *base, top: *top },
            Body::Columns(c) => {
                block(&mut blocks, &surfaces::heights(&c.tops))?;
                form::Body::Columns {
                    south_west: point(c.south_west),
                    cell: c.cell,
                    rows: count(c.rows)?,
                    cols: count(c.cols)?,
                }
            }
        };
        let opening =
            |o: &site::Opening| form::Opening { from: point(o.from), to: point(o.to), sill: o.sill, head: o.head };
        things.push(form::Thing {
            id: thing.id.clone(),
            name: thing.name.clone(),
            kind: thing.kind,
            body,
            openings: thing.openings.iter().map(opening).collect(),
            accuracy: thing.accuracy,
            source: thing.source.clone(),
        });
    }
    let head = Head {
        name: stored.site.name.clone(),
        epsg: stored.site.epsg,
        records: stored.records.clone(),
        waiting: stored.waiting.clone(),
        surfaces: surfaces_of,
        things,
        excavations: around.excavations.iter().map(excavation).collect(),
        buried: around.buried.iter().map(buried).collect(),
        zones: around.zones.iter().map(zone).collect(),
        lines: stored.site.lines.iter().map(line).collect(),
        landings: stored.site.landings.iter().map(landing).collect(),
        gates: stored.site.gates.iter().map(gate).collect(),
    };
    let value = serde_json::to_value(&head).map_err(|_| StoreError::NotFinite)?;
    // JSON has no word for what is not finite and would write "nothing", which means "not known".
    if !finite(stored) {
        return Err(StoreError::NotFinite);
    }
    let head = serde_json::to_vec(&value).map_err(|_| StoreError::NotFinite)?;
    let mut out = STORED_MAGIC.to_vec();
    out.extend(VERSION.to_le_bytes());
    push_block(&mut out, &head).ok_or(StoreError::TooLarge)?;
    out.extend(blocks);
    Ok(out)
}

fn count(n: usize) -> Result<u32, StoreError> {
    u32::try_from(n).map_err(|_| StoreError::TooLarge)
}

fn point(p: DVec2) -> Point {
    p.to_array()
}

fn ring(points: &[DVec2]) -> Vec<Point> {
    points.iter().map(|p| point(*p)).collect()
}

fn shape(shape: &PlanShape) -> form::Shape {
    match shape {
        PlanShape::Area(a) => {
            form::Shape::Area { outer: ring(&a.outer), holes: a.holes.iter().map(|h| ring(h)).collect() }
        }
        PlanShape::Strip { course, width } => form::Shape::Strip { course: ring(course), width: *width },
        PlanShape::Round { centre, radius } => form::Shape::Round { centre: point(*centre), radius: *radius },
    }
}

fn excavation(e: &site::Excavation) -> form::Excavation {
    form::Excavation {
        id: e.id.clone(),
        name: e.name.clone(),
        outer: ring(&e.outline.outer),
        holes: e.outline.holes.iter().map(|h| ring(h)).collect(),
        depth: e.depth,
        soil: e.soil,
        support: match &e.support {
            Support::None => form::Support::None,
            Support::NotKnown => form::Support::NotKnown,
            Support::Supported { by } => form::Support::Supported { by: by.clone() },
        },
        source: e.source.clone(),
    }
}

fn buried(b: &site::Buried) -> form::Buried {
    form::Buried {
        id: b.id.clone(),
        name: b.name.clone(),
        kind: b.kind,
        shape: shape(&b.shape),
        cover: b.cover,
        allowed_pressure: b.allowed_pressure,
        source: b.source.clone(),
    }
}

fn zone(z: &site::Zone) -> form::Zone {
    form::Zone {
        id: z.id.clone(),
        name: z.name.clone(),
        shape: shape(&z.shape),
        rule: z.rule,
        times: z.times.iter().map(|t| [t.from, t.to]).collect(),
        by: z.by.clone(),
    }
}

fn line(l: &site::PowerLine) -> form::Line {
    form::Line {
        name: l.name.clone(),
        voltage: l.voltage.map(|v| v.si()),
        spans: l
            .spans
            .iter()
            .map(|s| form::Span { from: s.from.to_array(), to: s.to.to_array(), sag: s.sag })
            .collect(),
        course: ring(&l.course),
        survey_error: l.survey_error.si(),
        swing: l.swing.si(),
        source: l.source.clone(),
        dead: l.dead.as_ref().map(|d| form::Dead {
            owner: d.owner.clone(),
            permit: d.permit.clone(),
            visibly_grounded: d.visibly_grounded,
        }),
        insulated: l.insulated.as_ref().map(|i| form::Insulated { by: i.by.clone(), permit: i.permit.clone() }),
    }
}

fn landing(l: &site::Landing) -> form::Landing {
    form::Landing {
        id: l.id.clone(),
        name: l.name.clone(),
        at: point(l.at),
        level: l.level,
        size: point(l.size),
        approach: l.approach.map(|a| [a.heading, a.tolerance]),
        rating: l.rating.as_ref().map(|r| (r.mass.map(|m| m.si()), r.by.clone())),
        occupied: l.occupied.si(),
        upstand: l.upstand,
    }
}

fn gate(g: &site::Gate) -> form::Gate {
    form::Gate {
        id: g.id.clone(),
        name: g.name.clone(),
        width: g.width,
        height: g.height,
        clearance: g.clearance,
        clearance_above: g.clearance_above,
        posts: g.posts.map(|[a, b]| [point(a), point(b)]),
    }
}

/// Every number of the head is finite: what is optional and not finite would read as not known.
fn finite(stored: &StoredSite) -> bool {
    let flat = |p: &DVec2| p.is_finite();
    let of_shape = |s: &PlanShape| match s {
        PlanShape::Area(a) => a.rings().flatten().all(flat),
        PlanShape::Strip { course, width } => course.iter().all(flat) && width.is_finite(),
        PlanShape::Round { centre, radius } => flat(centre) && radius.is_finite(),
    };
    let ranged = |r: &Option<evidence::Ranged>| {
        r.is_none_or(|r| r.low.is_finite() && r.nominal.is_finite() && r.high.is_finite())
    };
    let known = |v: &Option<f64>| v.is_none_or(f64::is_finite);
    let site = &stored.site;
    let around = &site.surroundings;
    around.things.iter().all(|t| {
        t.accuracy.is_finite()
            && t.openings.iter().all(|o| flat(&o.from) && flat(&o.to) && o.sill.is_finite() && o.head.is_finite())
            && match &t.body {
                Body::Upright { shape, base, top } => of_shape(shape) && known(base) && known(top),
                Body::Columns(c) => flat(&c.south_west) && c.cell.is_finite(),
            }
    }) && around.excavations.iter().all(|e| e.outline.rings().flatten().all(flat) && ranged(&e.depth))
        && around.buried.iter().all(|b| of_shape(&b.shape) && ranged(&b.cover) && known(&b.allowed_pressure))
        && around.zones.iter().all(|z| {
            of_shape(&z.shape)
                && match z.rule {
                    site::ZoneRule::OneWay { heading: n }
                    | site::ZoneRule::Speed { most: n }
                    | site::ZoneRule::SlopeLimit { most: n } => n.is_finite(),
                    site::ZoneRule::NoGo | site::ZoneRule::People | site::ZoneRule::Soft => true,
                }
        })
        && site.lines.iter().all(|l| {
            l.voltage.is_none_or(|v| v.si().is_finite())
                && l.spans.iter().all(|s| s.from.is_finite() && s.to.is_finite() && s.sag.is_finite())
                && l.course.iter().all(flat)
                && l.survey_error.si().is_finite()
                && l.swing.si().is_finite()
        })
        && site.gates.iter().all(|g| known(&g.height) && g.width.is_finite() && g.posts.iter().flatten().all(flat))
        && site.landings.iter().all(|l| {
            flat(&l.at)
                && l.level.is_finite()
                && l.approach.is_none_or(|a| a.heading.is_finite() && a.tolerance.is_finite())
                && l.rating.as_ref().and_then(|r| r.mass).is_none_or(|m| m.si().is_finite())
        })
        && stored
            .records
            .iter()
            .all(|r| r.min.iter().chain(&r.max).all(|v| v.is_finite()) && r.accuracy.is_none_or(f64::is_finite))
        && site.ground.surfaces.iter().all(|s| s.accuracy.is_finite())
        && stored.waiting.iter().all(|w| known(&w.over_ground))
}
