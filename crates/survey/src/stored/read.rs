//! Bytes to a site.

use super::form::{self, Head, Point};
use super::pack::{BadBlock, take_block};
use super::{StoredSite, VERSION, surfaces};
use crate::kind::STORED_MAGIC;
use crate::notes::{Notes, Refused};
use crate::text;
use evidence::Faults;
use geometry::{DVec2, DVec3};
use quantity::{kilograms, kilovolts, metres};
use site::{Body, Columns, Grid, Ground, GroundSource, PlanArea, PlanShape, Support, Surroundings, Terrain, Tin};

/// Most cells, points or triangles in one list.
const MOST: u64 = 64_000_000;
/// Most bytes of a head: a site with a hundred thousand outlines.
const MOST_HEAD: usize = 256 << 20;
/// Bytes that one number takes at most.
const NUMBER: usize = 10;

/// Opens a stored site.
///
/// # Errors
/// What is wrong with the file: of another version, cut, damaged, or with lists that do not fit.
pub fn read_stored(name: &str, bytes: &[u8]) -> Result<StoredSite, Faults> {
    let mut notes = Notes::new(name);
    let read = read(bytes, &mut notes);
    notes.finish(read).map(|(site, _)| site)
}

fn read(bytes: &[u8], notes: &mut Notes<'_>) -> Result<StoredSite, Refused> {
    let Some(mut rest) = bytes.strip_prefix(STORED_MAGIC) else {
        return Err(notes.refuse("survey::not-a-site", text::NOT_A_SITE, text::DO_GIVE_SITE));
    };
    let Some((version, after)) = rest.split_first_chunk::<4>() else {
        return Err(notes.refuse("survey::truncated", text::HEADER_CUT, text::DO_COPY_AGAIN));
    };
    let version = u32::from_le_bytes(*version);
    if version != VERSION {
        let message = text::SITE_VERSION.with("found", version as usize).with("known", VERSION as usize);
        return Err(notes.refuse("survey::site-version", message, text::DO_BRING_IN_AGAIN));
    }
    rest = after;
    // Packed text grows a thousandfold at most: what the file cannot hold is not allocated.
    let most = MOST_HEAD.min(bytes.len().saturating_mul(1032));
    let head = take_block(&mut rest, most).map_err(|bad| refuse(bad, notes))?;
    let head: Head = match serde_json::from_slice(&head) {
        Ok(head) => head,
        Err(error) => {
            let message = text::DECODE_FAILED.with("detail", error.to_string());
            return Err(notes.refuse("survey::damaged", message, text::DO_COPY_AGAIN));
        }
    };
    let mut surfaces_of = Vec::new();
    for surface in head.surfaces {
        surfaces_of.push(open_surface(surface, &mut rest, notes)?);
    }
    let mut things = Vec::new();
    for thing in head.things {
        things.push(open_thing(thing, &mut rest, notes)?);
    }
    if !rest.is_empty() {
        return Err(refuse(BadBlock::Damaged, notes));
    }
    let surroundings = Surroundings {
        things: things.into(),
        excavations: head.excavations.into_iter().map(excavation).collect(),
        buried: head.buried.into_iter().map(buried).collect(),
        zones: head.zones.into_iter().map(zone).collect(),
    };
    let site = site::Site {
        name: head.name,
        epsg: head.epsg,
        ground: Ground { surfaces: surfaces_of },
        lines: head.lines.into_iter().map(line).collect(),
        landings: head.landings.into_iter().map(landing).collect(),
        gates: head.gates.into_iter().map(gate).collect(),
        surroundings,
    };
    Ok(StoredSite { site, records: head.records, waiting: head.waiting })
}

fn refuse(bad: BadBlock, notes: &mut Notes<'_>) -> Refused {
    match bad {
        BadBlock::Cut => notes.refuse("survey::truncated", text::SITE_CUT, text::DO_COPY_AGAIN),
        BadBlock::Damaged => notes.refuse("survey::damaged", text::SITE_DAMAGED, text::DO_COPY_AGAIN),
    }
}

/// A list of `count` entries of `each` numbers from the next block.
fn list<T>(
    rest: &mut &[u8],
    count: u64,
    each: usize,
    notes: &mut Notes<'_>,
    back: impl FnOnce(&[u8], usize) -> Option<T>,
) -> Result<T, Refused> {
    let count = usize::try_from(count).ok().filter(|n| *n as u64 <= MOST);
    let Some(count) = count else { return Err(refuse(BadBlock::Damaged, notes)) };
    let most = count.saturating_mul(each * NUMBER).min(rest.len().saturating_mul(1032));
    let plain = take_block(rest, most).map_err(|bad| refuse(bad, notes))?;
    back(&plain, count).ok_or_else(|| refuse(BadBlock::Damaged, notes))
}

fn open_surface(s: form::Surface, rest: &mut &[u8], notes: &mut Notes<'_>) -> Result<GroundSource, Refused> {
    let terrain = match s.terrain {
        form::Terrain::Grid { north_west, cell, rows, cols } => {
            let count = u64::from(rows) * u64::from(cols);
            let heights = list(rest, count, 1, notes, surfaces::heights_back)?;
            let grid = Grid {
                north_west: DVec2::from_array(north_west),
                cell: DVec2::from_array(cell),
                rows: rows as usize,
                cols: cols as usize,
                heights,
            };
            if !(grid.cell.cmpgt(DVec2::ZERO).all() && grid.cell.is_finite() && grid.north_west.is_finite()) {
                return Err(refuse(BadBlock::Damaged, notes));
            }
            Terrain::Grid(grid)
        }
        form::Terrain::Tin { origin, points, triangles } => {
            let points = list(rest, u64::from(points), 3, notes, surfaces::points_back)?;
            let triangles = list(rest, u64::from(triangles), 3, notes, surfaces::triangles_back)?;
            let opened = Tin::from_parts(DVec2::from_array(origin), points, triangles, site::TinDoubts::default());
            Terrain::Tin(opened.map_err(|_| refuse(BadBlock::Damaged, notes))?)
        }
    };
    if !(s.accuracy.is_finite() && s.accuracy >= 0.0) {
        return Err(refuse(BadBlock::Damaged, notes));
    }
    Ok(GroundSource { name: s.name, terrain, accuracy: s.accuracy, date: s.date })
}

fn open_thing(t: form::Thing, rest: &mut &[u8], notes: &mut Notes<'_>) -> Result<site::Thing, Refused> {
    let body = match t.body {
        form::Body::Upright { shape: s, base, top } => Body::Upright { shape: shape(s), base, top },
        form::Body::Columns { south_west, cell, rows, cols } => {
            let count = u64::from(rows) * u64::from(cols);
            let tops = list(rest, count, 1, notes, surfaces::heights_back)?;
            if !(cell.is_finite() && cell > 0.0) || rows == 0 || cols == 0 {
                return Err(refuse(BadBlock::Damaged, notes));
            }
            let south_west = DVec2::from_array(south_west);
            Body::Columns(Columns { south_west, cell, rows: rows as usize, cols: cols as usize, tops })
        }
    };
    let opening = |o: form::Opening| site::Opening { from: at(o.from), to: at(o.to), sill: o.sill, head: o.head };
    Ok(site::Thing {
        id: t.id,
        name: t.name,
        kind: t.kind,
        body,
        openings: t.openings.into_iter().map(opening).collect(),
        accuracy: t.accuracy,
        source: t.source,
    })
}

fn at(p: Point) -> DVec2 {
    DVec2::from_array(p)
}

fn ring(points: Vec<Point>) -> Vec<DVec2> {
    points.into_iter().map(at).collect()
}

fn shape(s: form::Shape) -> PlanShape {
    match s {
        form::Shape::Area { outer, holes } => {
            PlanShape::Area(PlanArea { outer: ring(outer), holes: holes.into_iter().map(ring).collect() })
        }
        form::Shape::Strip { course, width } => PlanShape::Strip { course: ring(course), width },
        form::Shape::Round { centre, radius } => PlanShape::Round { centre: at(centre), radius },
    }
}

fn excavation(e: form::Excavation) -> site::Excavation {
    site::Excavation {
        id: e.id,
        name: e.name,
        outline: PlanArea { outer: ring(e.outer), holes: e.holes.into_iter().map(ring).collect() },
        depth: e.depth,
        soil: e.soil,
        support: match e.support {
            form::Support::None => Support::None,
            form::Support::NotKnown => Support::NotKnown,
            form::Support::Supported { by } => Support::Supported { by },
        },
        // How the sides stand today is said by the job, not by a drawing.
        standing: site::OpenSides::default(),
        source: e.source,
    }
}

fn buried(b: form::Buried) -> site::Buried {
    site::Buried {
        id: b.id,
        name: b.name,
        kind: b.kind,
        shape: shape(b.shape),
        cover: b.cover,
        allowed_pressure: b.allowed_pressure,
        // What a wall is made of and who looked at the ground beside it is said by the job, not by a drawing.
        wall: None,
        around: None,
        source: b.source,
    }
}

fn zone(z: form::Zone) -> site::Zone {
    site::Zone {
        id: z.id,
        name: z.name,
        shape: shape(z.shape),
        rule: z.rule,
        times: z.times.into_iter().map(|[from, to]| site::DayTime { from, to }).collect(),
        by: z.by,
    }
}

fn line(l: form::Line) -> site::PowerLine {
    site::PowerLine {
        name: l.name,
        voltage: l.voltage.map(|v| kilovolts(v / 1000.0)),
        spans: l
            .spans
            .into_iter()
            .map(|s| site::Span { from: DVec3::from_array(s.from), to: DVec3::from_array(s.to), sag: s.sag })
            .collect(),
        course: ring(l.course),
        survey_error: metres(l.survey_error),
        swing: metres(l.swing),
        source: l.source,
        dead: l.dead.map(|d| site::DeadConfirmation {
            owner: d.owner,
            permit: d.permit,
            visibly_grounded: d.visibly_grounded,
        }),
        insulated: l.insulated.map(|i| site::Insulation { by: i.by, permit: i.permit }),
    }
}

fn landing(l: form::Landing) -> site::Landing {
    site::Landing {
        id: l.id,
        name: l.name,
        at: at(l.at),
        level: l.level,
        size: at(l.size),
        approach: l.approach.map(|[heading, tolerance]| site::ApproachDirection { heading, tolerance }),
        rating: l.rating.map(|(mass, by)| site::LandingRating { mass: mass.map(kilograms), by }),
        occupied: kilograms(l.occupied),
        upstand: l.upstand,
    }
}

fn gate(g: form::Gate) -> site::Gate {
    site::Gate {
        id: g.id,
        name: g.name,
        width: g.width,
        height: g.height,
        clearance: g.clearance,
        clearance_above: g.clearance_above,
        posts: g.posts.map(|[a, b]| [at(a), at(b)]),
    }
}
